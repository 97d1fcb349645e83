/** How much of the way each figure shows, and what is figured on its axes. */
import { format, ticks } from 'd3';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Measure } from '../../text/amountText.ts';
import { MM_PER_INCH, type LengthUnit } from '../../text/numbers.ts';
import { onAxis } from '../amountAxis.ts';
import type { Span } from '../frame.ts';
import { levelsOver, type Level } from '../levels.ts';
import type { Tick } from '../ticks.ts';
import type { Hollow, WayMark } from './marks.ts';
import { whole, type Way } from './way.ts';

const figure = format('~g');

/** From the end of the way back to the end of the way there [degrees or mm]. */
export function amountSpan({ forward, back }: Way, measure: Measure): Span {
  const behind = farthest(back);
  return [behind > 0 ? -onAxis(behind, measure) : 0, onAxis(farthest(forward), measure)];
}

function farthest(points: Way['forward']): number {
  return points.reduce((most, { amount }) => Math.max(most, Math.abs(amount)), 0);
}

const ANGLE_STEPS: readonly number[] = [0.5, 1, 2, 5, 10, 15, 30, 45, 60, 90, 180, 360];

/** Figures under an axis of amounts that may run both ways. */
export function amountMarks([low, high]: Span, measure: Measure, unit: LengthUnit, narrow: boolean): readonly Tick[] {
  const most = narrow ? 5 : 8;
  if (measure === 'travel') {
    const per = unit === 'mm' ? 1 : MM_PER_INCH;
    return ticks(low / per, high / per, most - 1).map((value) => ({ at: value * per, text: figure(value) }));
  }
  const step = ANGLE_STEPS.find((size) => (high - low) / size <= most) ?? 720;
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => {
    const at = (first + i) * step;
    return { at, text: `${figure(at)}${first + i === last ? '°' : ''}` };
  });
}

/** What is wanted at most is on the paper, unless it would press the curve flat. */
const PRESSED = 2;

/** A way that leads far past what is marked runs off the paper, so that the marks are not pressed flat. */
const PAST_MARKS = { effort: 2.5, energy: 1.8 } as const;

export function effortLevel(a: Assessment, way: Way, marks: readonly WayMark[]): Level {
  const efforts = whole(way).map(({ typical }) => typical);
  const marked = Math.max(...marks.map(({ effort }) => Math.abs(effort)));
  const most = marked > 0 ? marked * PAST_MARKS.effort : Number.POSITIVE_INFINITY;
  const low = Math.max(Math.min(0, ...efforts), -most);
  const high = Math.min(Math.max(...efforts, a.effort.high), most);
  const { effortAtMost = 0 } = a.joint.movement;
  const room = 1.05;
  const wanted = effortAtMost < PRESSED * high ? effortAtMost * 1.15 : 0;
  return levelsOver(low * room, Math.max(wanted, high * room));
}

export function energyLevel(way: Way, hollows: readonly Hollow[]): Level {
  const marked = Math.max(...hollows.flatMap(({ hill, rest }) => [hill.energy, rest.energy]));
  const most = Math.max(...whole(way).map(({ energy }) => energy));
  return levelsOver(0, Math.min(most * 1.12, marked * PAST_MARKS.energy));
}
