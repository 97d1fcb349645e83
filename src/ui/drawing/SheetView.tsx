import { memo, useId, useMemo } from 'react';
import { handlesOf } from './handles.ts';
import type { Layout } from './layout.ts';
import { LegendPointer, LegendView } from './LegendView.tsx';
import { LifeSize } from './LifeSize.tsx';
import { MarksView } from './MarksView.tsx';
import { MovingLayer } from './MovingLayer.tsx';
import { RestLayer, RestLines } from './RestLayer.tsx';
import { SectionView } from './SectionView.tsx';
import { SheetFrame, type SheetHandling } from './SheetFrame.tsx';
import { Defs, StrainLayer } from './StrainLayer.tsx';

interface Props extends SheetHandling {
  readonly layout: Layout;
  /** How far it is bent, 0 to 1 of the wanted angle. */
  readonly fraction: number;
  readonly label: string;
  readonly description: string;
}

/** The sheet with the joint at rest and as bent. What stays is drawn once; only what moves follows `fraction`. */
export function SheetView({ layout, fraction, ...words }: Props) {
  const id = useId();
  const handles = useMemo(() => handlesOf(layout), [layout]);
  return (
    <SheetFrame
      {...words}
      sheet={layout.sheet}
      handles={handles}
      printed={
        <>
          <Defs layout={layout} id={id} />
          <RestLayer layout={layout} hatch={`${id}-hatch`} />
        </>
      }
      moved={<StrainLayer layout={layout} fraction={fraction} fade={id} />}
      still={
        <>
          <RestLines layout={layout} />
          <Still layout={layout} hatch={`${id}-hatch`} />
        </>
      }
      moving={
        <>
          <MovingLayer layout={layout} fraction={fraction} />
          <LifeSize layout={layout} fraction={fraction} />
          <LegendPointer layout={layout} strain={layout.a.strain.peak * fraction} />
        </>
      }
    />
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
