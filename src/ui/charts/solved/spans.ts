/** How much of the way each figure shows, and what is figured on its axes. */
import { format, ticks } from 'd3';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Measure } from '../../text/amountText.ts';
import { grouped, MM_PER_INCH, type LengthUnit } from '../../text/numbers.ts';
import { niceSteps } from '../domains.ts';
import { fromAxis, onAxis } from '../effortCurve.ts';
import type { Span } from '../frame.ts';
import type { Tick } from '../ticks.ts';
import { whole, type Way } from './way.ts';

const figure = format('~g');

/** From the end of the way back to the end of the way there [degrees or mm]. */
function amountSpan({ forward, back }: Way, measure: Measure): Span {
  const far = (points: Way['forward']) => points.reduce((most, { amount }) => Math.max(most, Math.abs(amount)), 0);
  const back0 = far(back);
  return [back0 > 0 ? -onAxis(back0, measure) : 0, onAxis(far(forward), measure)];
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

export interface Level {
  readonly span: Span;
  readonly step: number;
}

/** An axis of whole round steps over a range that may lie on both sides of nought. */
export function levelsOver(low: number, high: number): Level {
  const { step } = niceSteps(Math.max(high - low, Math.abs(low), Number.MIN_VALUE));
  const whole = (value: number, way: 'floor' | 'ceil') => Number((Math[way](value / step) * step).toPrecision(12));
  return {
    span: [whole(Math.min(low, 0) + step * 1e-9, 'floor'), whole(Math.max(high, 0) - step * 1e-9, 'ceil')],
    step,
  };
}

export function levelMarks({ span: [low, high], step }: Level): readonly Tick[] {
  const first = Math.round(low / step);
  const last = Math.round(high / step);
  return Array.from({ length: last - first + 1 }, (_, i) => {
    const at = Number(((first + i) * step).toPrecision(12));
    return { at, text: Math.abs(at) >= 1000 ? `${at < 0 ? '−' : ''}${grouped(Math.abs(at))}` : figure(at) };
  });
}

/** A pointer reads to a tenth of a degree and keys go in halves [deg]; a hundredth and a twentieth of a mm. */
export const GRIDS = { turn: { fine: 0.1, step: 0.5 }, travel: { fine: 0.01, step: 0.05 } } as const;

/** The axis across, and the same ends as amounts [rad] or [mm]. */
export function wayAmounts(way: Way, measure: Measure): { readonly span: Span; readonly ends: Span } {
  const span = amountSpan(way, measure);
  return { span, ends: [fromAxis(span[0], measure), fromAxis(span[1], measure)] };
}

/** What is wanted at most is on the paper, unless it would press the curve flat. */
const PRESSED = 2;

export function effortLevel(a: Assessment, way: Way): Level {
  const efforts = whole(way).map(({ typical }) => typical);
  const [low, high] = [Math.min(0, ...efforts), Math.max(...efforts, a.effort.high)];
  const { effortAtMost = 0 } = a.joint.movement;
  const room = 1.05;
  return levelsOver(
    low * room,
    effortAtMost < PRESSED * high ? Math.max(effortAtMost * 1.15, high * room) : high * room,
  );
}

export function energyLevel(way: Way): Level {
  return levelsOver(0, Math.max(...whole(way).map(({ energy }) => energy)) * 1.12);
}
