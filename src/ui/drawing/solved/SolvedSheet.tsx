import { memo, useId, useMemo } from 'react';
import { LegendPointer, LegendView } from '../LegendView.tsx';
import { MarksView } from '../MarksView.tsx';
import { SheetFrame, type SheetHandling } from '../SheetFrame.tsx';
import { CentreInset } from './CentreInset.tsx';
import { gripsOf } from './grips.ts';
import { movedAmount } from './movedAmount.ts';
import { MovedLayer } from './MovedLayer.tsx';
import { NearRing } from './NearRing.tsx';
import { PlanesView } from './PlanesView.tsx';
import { PrintedLayer } from './PrintedLayer.tsx';
import type { SolvedLayout } from './solvedLayout.ts';
import type { StateNow } from './state.ts';

interface Props extends SheetHandling {
  readonly layout: SolvedLayout;
  readonly state: StateNow;
  readonly strain: number;
  readonly label: string;
  readonly description: string;
}

/** The sheet with the joint as printed and as moved. What stays is drawn once; only what moves follows the state. */
export function SolvedSheet({ layout, state, strain, ...words }: Props) {
  const id = useId();
  const { sheet, scene, legend, unit } = layout;
  const handles = useMemo(() => gripsOf(layout), [layout]);
  const { marks, rest, moved } = movedAmount(scene, sheet, state, unit);
  const hasMoved = state.amount !== 0;
  return (
    <SheetFrame
      {...words}
      sheet={sheet}
      handles={handles}
      printed={<PrintedLayer scene={scene} sheet={sheet} id={id} />}
      moved={hasMoved && <MovedLayer scene={scene} sheet={sheet} state={state} stops={legend} />}
      still={
        <>
          <path className="C" d={rest} />
          <Still layout={layout} id={id} />
        </>
      }
      moving={
        <>
          {hasMoved && <path className="Ca" d={moved} />}
          <MarksView marks={marks} />
          <NearRing layout={layout} state={state} />
          <CentreInset layout={layout} amount={state.amount} unit={unit} />
          <LegendPointer layout={layout} strain={strain} />
        </>
      }
    />
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
