import { memo, useId, type ReactNode } from 'react';
import { Ground } from './Ground.tsx';
import { Handle, type Phase } from './Handle.tsx';
import type { HandleSpec } from './handles.ts';
import type { Sheet } from './sheet.ts';

/** What a sheet with handles is told of them; without, there are none. */
export interface SheetHandling {
  readonly onSize?: (parameter: string, value: number, phase: Phase) => void;
  readonly onHold?: (isHeld: boolean) => void;
}

interface Props extends SheetHandling {
  readonly sheet: Sheet;
  readonly label: string;
  /** The whole figure in words. */
  readonly description: string;
  /** As printed, on the grid; what has moved, over it; what stays in sight over that; and what moves over all. */
  readonly printed: ReactNode;
  readonly moved: ReactNode;
  readonly still: ReactNode;
  readonly moving: ReactNode;
  readonly handles: readonly HandleSpec[];
}

/** A sheet in four layers, so that a joint that moves redraws only two of them, with the handles over all. */
export function SheetFrame(props: Props) {
  const { sheet, label, description, printed, moved, still, moving, handles, onSize, onHold } = props;
  const words = useId();
  const height = sheet.bottom - sheet.top;
  const paper = { width: sheet.width, height, viewBox: `0 ${sheet.top} ${sheet.width} ${height}` };
  return (
    <div
      className="fig"
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- none of those tags is a drawing that holds sliders
      role="group"
      aria-label={label}
      aria-describedby={words}
      style={{ width: sheet.width, height }}
    >
      <p className="vh" id={words}>
        {description}
      </p>
      <svg {...paper} aria-hidden="true">
        <Ground sheet={sheet} />
        {printed}
      </svg>
      <svg {...paper} aria-hidden="true" className="moves">
        {moved}
      </svg>
      <svg {...paper} aria-hidden="true">
        {still}
      </svg>
      <svg {...paper} className="moves">
        <g aria-hidden="true">{moving}</g>
        {onSize && onHold && <Handles specs={handles} isSmall={sheet.small} onSize={onSize} onHold={onHold} />}
      </svg>
    </div>
  );
}

interface HandlesProps extends Required<SheetHandling> {
  readonly specs: readonly HandleSpec[];
  readonly isSmall: boolean;
}

const Handles = memo(function Handles({ specs, isSmall, onSize, onHold }: HandlesProps) {
  return (
    <g>
      {specs.map((spec) => (
        <Handle key={spec.parameter} spec={spec} target={isSmall ? 22 : 12} onSize={onSize} onHold={onHold} />
      ))}
    </g>
  );
});
