import { memo, useId, useMemo } from 'react';
import { Ground } from './Ground.tsx';
import { Handle, type Phase } from './Handle.tsx';
import { handlesOf } from './handles.ts';
import type { Layout } from './layout.ts';
import { LegendPointer, LegendView } from './LegendView.tsx';
import { LifeSize } from './LifeSize.tsx';
import { MarksView } from './MarksView.tsx';
import { MovingLayer } from './MovingLayer.tsx';
import { RestLayer, RestLines } from './RestLayer.tsx';
import { SectionView } from './SectionView.tsx';
import { Defs, StrainLayer } from './StrainLayer.tsx';

interface Props {
  readonly layout: Layout;
  /** How far it is bent, 0 to 1 of the wanted angle. */
  readonly fraction: number;
  readonly label: string;
  readonly description: string;
  readonly onSize?: (parameter: string, value: number, phase: Phase) => void;
  readonly onHold?: (isHeld: boolean) => void;
}

/** The sheet with the joint at rest and as bent. What stays is drawn once; only what moves follows `fraction`. */
export function SheetView({ layout, fraction, label, description, onSize, onHold }: Props) {
  const id = useId();
  const { sheet, a } = layout;
  const height = sheet.bottom - sheet.top;
  const paper = { width: sheet.width, height, viewBox: `0 ${sheet.top} ${sheet.width} ${height}` };
  return (
    <div
      className="fig"
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- none of those tags is a drawing that holds sliders
      role="group"
      aria-label={label}
      aria-describedby={`${id}-words`}
      style={{ width: sheet.width, height }}
    >
      <p className="vh" id={`${id}-words`}>
        {description}
      </p>
      <svg {...paper} aria-hidden="true">
        <Defs layout={layout} id={id} />
        <Ground sheet={sheet} />
        <RestLayer layout={layout} hatch={`${id}-hatch`} />
      </svg>
      <svg {...paper} aria-hidden="true" className="moves">
        <StrainLayer layout={layout} fraction={fraction} fade={id} />
      </svg>
      <svg {...paper} aria-hidden="true">
        <RestLines layout={layout} />
        <Still layout={layout} hatch={`${id}-hatch`} />
      </svg>
      <svg {...paper} className="moves">
        <g aria-hidden="true">
          <MovingLayer layout={layout} fraction={fraction} />
          <LifeSize layout={layout} fraction={fraction} />
          <LegendPointer layout={layout} strain={a.strain.peak * fraction} />
        </g>
        {onSize && onHold && <Handles layout={layout} onSize={onSize} onHold={onHold} />}
      </svg>
    </div>
  );
}

/** Dimensions, section and legend. */
const Still = memo(function Still({ layout, hatch }: { readonly layout: Layout; readonly hatch: string }) {
  return (
    <g>
      <MarksView marks={layout.marks} />
      <SectionView layout={layout} hatch={hatch} />
      <LegendView layout={layout} />
    </g>
  );
});

const Handles = memo(function Handles({
  layout,
  onSize,
  onHold,
}: {
  readonly layout: Layout;
  readonly onSize: NonNullable<Props['onSize']>;
  readonly onHold: NonNullable<Props['onHold']>;
}) {
  const specs = useMemo(() => handlesOf(layout), [layout]);
  return (
    <g>
      {specs.map((spec) => (
        <Handle
          key={spec.parameter}
          spec={spec}
          target={layout.sheet.small ? 22 : 12}
          onSize={onSize}
          onHold={onHold}
        />
      ))}
    </g>
  );
});
