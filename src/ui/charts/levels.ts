/** Upright axes of whole round steps. */
import { format } from 'd3';
import { grouped } from '../text/numbers.ts';
import { niceSteps } from './domains.ts';
import type { Span } from './frame.ts';
import type { Tick } from './ticks.ts';

const figure = format('~g');

export interface Level {
  readonly span: Span;
  readonly step: number;
  /** What one of the unit that is figured is. */
  readonly per: number;
}

/** An axis of whole round steps over a range that may lie on both sides of nought. */
export function levelsOver(low: number, high: number, per = 1): Level {
  const range = Math.max(high - low, Math.abs(low), Number.MIN_VALUE) / per;
  const step = niceSteps(range).step * per;
  const end = (value: number, way: 'floor' | 'ceil') =>
    Number((Math[way](value / step - (way === 'ceil' ? 1e-9 : -1e-9)) * step).toPrecision(12));
  return { span: [end(Math.min(low, 0), 'floor'), end(Math.max(high, 0), 'ceil')], step, per };
}

export function levelMarks({ span: [low, high], step, per }: Level): readonly Tick[] {
  const first = Math.round(low / step);
  const last = Math.round(high / step);
  return Array.from({ length: last - first + 1 }, (_, i) => {
    const at = (first + i) * step;
    const shown = Number((at / per).toPrecision(12));
    const text = Math.abs(shown) >= 1000 ? `${shown < 0 ? '−' : ''}${grouped(Math.abs(shown))}` : figure(shown);
    return { at, text };
  });
}
