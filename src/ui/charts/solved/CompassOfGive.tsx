import { useState } from 'react';
import type { ProvenanceKind } from '../../../core/material/types.ts';
import { SaidText } from '../../joints/SaidText.tsx';
import type { LengthUnit } from '../../text/numbers.ts';
import {
  compassReading,
  directionText,
  giveText,
  SOLVED_AIDS,
  SOLVED_HOW,
  SOLVED_NAMES,
  softStiffSaid,
  solvedTables,
  stiffnessText,
  TWIST_NOTE,
} from '../../text/solvedChartText.ts';
import { Caption } from '../Caption.tsx';
import type { Px } from '../frame.ts';
import { PointTable } from '../PointTable.tsx';
import { movedTo, moveOf } from '../stops.ts';
import { Surface } from '../Surface.tsx';
import { useSize } from '../useSize.ts';
import { compassLayout, nearestNeedle, type Compass } from './compass.ts';
import { CompassPlot } from './CompassPlot.tsx';

interface CompassOfGiveProps {
  readonly number: number;
  readonly compass: Compass;
  readonly unit: LengthUnit;
  /** Where the modulus comes from. */
  readonly kind: ProvenanceKind;
}

/** How far the moving pad gives in each of six directions: long is soft. */
export function CompassOfGive({ number, compass, unit, kind }: CompassOfGiveProps) {
  const [svg, size] = useSize<SVGSVGElement>();
  const [read, setRead] = useState<number>();
  const { needles, says, radius } = compass;
  const layout = size && compassLayout(size);
  const now = read ?? 0;
  const needle = needles[now];
  const text = needle ? compassReading(needle.direction, needle.give, needle.stiffness) : '';
  const leave = () => setRead(undefined);
  const point = (at: Px) => layout && setRead(nearestNeedle(needles, at, layout.centre));
  const key = (pressed: string, shift: boolean): boolean => {
    const move = moveOf(pressed, shift);
    if (pressed === 'Escape') leave();
    else if (move !== undefined) setRead(movedTo([...needles.keys()], now, move));
    return pressed === 'Escape' || move !== undefined;
  };
  return (
    <figure className="chart">
      <Caption
        number={number}
        name={SOLVED_NAMES.compass}
        aid={SOLVED_AIDS.compass(radius, unit)}
        reading={read === undefined ? undefined : text}
      />
      <Surface
        svg={svg}
        size={size}
        spoken={{ label: SOLVED_NAMES.compass, how: SOLVED_HOW.compass, min: 0, max: needles.length - 1, now, text }}
        onPoint={point}
        onLeave={leave}
        onRelease={() => undefined}
        onKey={key}
      >
        {layout && <CompassPlot compass={compass} layout={layout} read={read} />}
      </Surface>
      <p className="chart-note four">
        <SaidText said={softStiffSaid(says, kind)} /> {TWIST_NOTE}
      </p>
      <PointTable
        caption={solvedTables.compass}
        heads={solvedTables.compassHeads}
        rows={says.gives.map(({ direction, give }) => [
          directionText(direction),
          giveText(give),
          stiffnessText(needles.find((one) => one.direction === direction)?.stiffness ?? 0, direction),
        ])}
      />
    </figure>
  );
}
