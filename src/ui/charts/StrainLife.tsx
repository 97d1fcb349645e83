import { useMemo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { FILAMENTS } from '../../core/material/filaments.ts';
import { ownFilaments } from '../../core/material/shelf.ts';
import { useCloud } from '../life/sure/doubtAnswers.ts';
import { AIDS, FIGURES, HOW_TO_READ, lengthReading, lifeReading, takesLength } from '../text/chartText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { Caption } from './Caption.tsx';
import { Crosshair } from './Crosshair.tsx';
import type { LifeDomain } from './domains.ts';
import { nearestStop } from './drag.ts';
import { draggedFigure } from './draggedFigure.ts';
import { frameOf, isNarrow, type Px } from './frame.ts';
import { JointMark } from './JointMark.tsx';
import { offChart } from './spots.ts';
import { everyLength, limitsKept, ownCount, shortestFor } from './lengthCurves.ts';
import { filamentPoints, jointPoint, lifeByLength, wornPoint } from './lifeCurves.ts';
import { LifeTable } from './LifeTable.tsx';
import { StrainLifePlot } from './StrainLifePlot.tsx';
import { Surface } from './Surface.tsx';
import { useLifeReading } from './useLifeReading.ts';
import { useSize } from './useSize.ts';
import { useSizing, type Sizing } from './useSizing.ts';
import { WornMark } from './WornMark.tsx';

interface StrainLifeProps {
  readonly assessment: Assessment;
  readonly unit: LengthUnit;
  readonly domain: LifeDomain;
  readonly sizing: Sizing;
}

/** Fig. 2: how long it lasts. Dragging the joint's point along the curve changes its length. */
export function StrainLife({ assessment: a, unit, domain, sizing }: StrainLifeProps) {
  const [svg, size] = useSize<SVGSVGElement>();
  const frame = useMemo(
    () => size && frameOf(size, { span: domain.cycles, kind: 'log' }, { span: domain.strain, kind: 'log' }),
    [size, domain],
  );
  const reading = useLifeReading(a, domain.cycles);
  const drags = useSizing(sizing);

  const from = { length: a.length, count: ownCount(a) };
  const lengths = domain.lengths ?? everyLength(a, unit);
  const joint = jointPoint(a);
  const worn = wornPoint(a);
  const cloud = useCloud(a);
  // Rows of the user's own change without the joint.
  const own = ownFilaments();
  const filaments = useMemo(() => filamentPoints(a, [...FILAMENTS, ...own]), [a, own]);
  const shortest = reading.spread && shortestFor(a, lengths, reading.spread.typical);
  const text = lifeReading(reading.cycles, reading.spread);
  const jointText = lengthReading(a.length, unit, undefined, a.strain.peak, limitsKept(a, a.strain.peak));
  const grab = (held: Px) => {
    if (!frame) return;
    const stops = lifeByLength(a, lengths).map(({ length, cycles, strain }) => ({
      length,
      x: frame.x(cycles),
      y: frame.y(strain),
    }));
    const at = { x: frame.x(joint.cycles), y: frame.y(joint.strain) };
    const mark = offChart(at, frame.box)?.at ?? at;
    drags.begin(from, (to) => {
      const stop = nearestStop(stops, { x: mark.x + to.x - held.x, y: mark.y + to.y - held.y });
      return to.x === held.x && to.y === held.y ? from : { ...from, length: stop?.length ?? a.length };
    });
  };
  const hands = draggedFigure(
    drags,
    reading,
    frame,
    from,
    shortest === undefined ? undefined : { ...from, length: shortest },
  );
  return (
    <figure className="chart">
      <Caption
        {...FIGURES.life}
        aid={AIDS.life(a.section.countOf)}
        reading={drags.dragging ? jointText : reading.active ? text : undefined}
      />
      <Surface
        svg={svg}
        size={size}
        spoken={{
          label: FIGURES.life.name,
          how: HOW_TO_READ.life,
          min: domain.cycles[0],
          max: domain.cycles[1],
          now: reading.cycles,
          text: reading.spread ? `${text}; ${takesLength(shortest, unit)}` : text,
        }}
        onGrab={grab}
        onLeave={reading.leave}
        onRelease={drags.end}
        {...hands}
      >
        {frame && (
          <>
            <StrainLifePlot {...{ a, domain, frame, filaments, cloud }} narrow={isNarrow(size)} />
            {reading.active && (
              <Crosshair
                at={{ x: frame.x(reading.cycles), y: frame.y(reading.spread?.typical ?? Number.NaN) }}
                box={frame.box}
              />
            )}
            {worn && <WornMark at={{ x: frame.x(worn.cycles), y: frame.y(worn.strain) }} box={frame.box} />}
            <JointMark at={{ x: frame.x(joint.cycles), y: frame.y(joint.strain) }} box={frame.box} grip />
          </>
        )}
      </Surface>
      <LifeTable a={a} filaments={filaments} cloud={cloud} />
    </figure>
  );
}
