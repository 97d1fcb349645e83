import { memo, useId, useMemo } from 'react';
import { Ground } from '../Ground.tsx';
import { Handle, type Phase } from '../Handle.tsx';
import { LegendPointer, LegendView } from '../LegendView.tsx';
import { MarksView } from '../MarksView.tsx';
import { CentreInset } from './CentreInset.tsx';
import { gripsOf } from './grips.ts';
import { movedAmount } from './movedAmount.ts';
import { MovedLayer } from './MovedLayer.tsx';
import { NearRing } from './NearRing.tsx';
import { PlanesView } from './PlanesView.tsx';
import { PrintedLayer } from './PrintedLayer.tsx';
import type { SolvedLayout } from './solvedLayout.ts';
import type { StateNow } from './state.ts';

interface Props {
  readonly layout: SolvedLayout;
  readonly state: StateNow;
  readonly strain: number;
  readonly label: string;
  readonly description: string;
  readonly onSize?: (parameter: string, value: number, phase: Phase) => void;
  readonly onHold?: (isHeld: boolean) => void;
}

/** The sheet with the joint as printed and as moved. What stays is drawn once; only what moves follows the state. */
export function SolvedSheet({ layout, state, strain, label, description, onSize, onHold }: Props) {
  const id = useId();
  const { sheet, scene, legend, unit } = layout;
  const height = sheet.bottom - sheet.top;
  const paper = { width: sheet.width, height, viewBox: `0 ${sheet.top} ${sheet.width} ${height}` };
  const { marks, rest, moved } = movedAmount(scene, sheet, state, unit);
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
        <Ground sheet={sheet} />
        <PrintedLayer scene={scene} sheet={sheet} id={id} />
      </svg>
      <svg {...paper} aria-hidden="true" className="moves">
        {state.amount !== 0 && <MovedLayer scene={scene} sheet={sheet} state={state} stops={legend} />}
      </svg>
      <svg {...paper} aria-hidden="true">
        <path className="C" d={rest} />
        <Still layout={layout} id={id} />
      </svg>
      <svg {...paper} className="moves">
        <g aria-hidden="true">
          {state.amount !== 0 && <path className="Ca" d={moved} />}
          <MarksView marks={marks} />
          <NearRing layout={layout} state={state} />
          <CentreInset layout={layout} amount={state.amount} unit={unit} />
          <LegendPointer layout={layout} strain={strain} />
        </g>
        {onSize && onHold && <Grips layout={layout} onSize={onSize} onHold={onHold} />}
      </svg>
    </div>
  );
}

/** Dimensions, legend and the view from the side. */
const Still = memo(function Still({ layout, id }: { readonly layout: SolvedLayout; readonly id: string }) {
  return (
    <g>
      <MarksView marks={layout.marks} />
      <PlanesView layout={layout} id={id} />
      <LegendView layout={layout} />
    </g>
  );
});

const Grips = memo(function Grips({
  layout,
  onSize,
  onHold,
}: {
  readonly layout: SolvedLayout;
  readonly onSize: NonNullable<Props['onSize']>;
  readonly onHold: NonNullable<Props['onHold']>;
}) {
  const specs = useMemo(() => gripsOf(layout), [layout]);
  const target = layout.sheet.small ? 22 : 12;
  return (
    <g>
      {specs.map((spec) => (
        <Handle key={spec.parameter} spec={spec} target={target} onSize={onSize} onHold={onHold} />
      ))}
    </g>
  );
});
