import { NO_BREAK, percent } from '../text/numbers.ts';
import type { Size } from './furniture.ts';
import { letteringWidth, type Box } from './lettering.ts';

/** The legend of strain, laid out from its own upper left corner [px]. */
export interface LegendPlan extends Size {
  readonly bar: Box;
  /** Strain at the right end of the bar. */
  readonly full: number;
  readonly repeated: number;
  readonly yield: number;
  readonly ticks: readonly {
    readonly x: number;
    readonly figure: string;
    readonly anchor: 'start' | 'middle' | 'end';
  }[];
  readonly words: readonly { readonly x: number; readonly text: string; readonly anchor: 'start' | 'middle' }[];
  readonly heading: string;
}

/** How much of the scale lies beyond yield. */
const BEYOND_YIELD = 1.6;

/** The scale of the legend: no strain at the left, 1.6 times yield at the right. */
export function legendPlan(repeated: number, atYield: number, small: boolean): LegendPlan {
  const bar = small ? { x: 2, y: 10, width: 124, height: 9 } : { x: 2, y: 24, width: 180, height: 9 };
  const full = BEYOND_YIELD * atYield;
  const x = (strain: number) => bar.x + bar.width * Math.min(1, strain / full);
  const figures = [percent(repeated), percent(atYield, 1)];
  const widths = figures.map((text) => letteringWidth(text, 12));
  const isTight = x(atYield) - x(repeated) < ((widths[0] ?? 0) + (widths[1] ?? 0)) / 2 + 6;
  const zeroFits = x(repeated) - (isTight ? (widths[0] ?? 0) : (widths[0] ?? 0) / 2) > bar.x + 14;
  const again = 'again and again';
  const againWidth = letteringWidth(again, 12);
  const againX = Math.max(bar.x, x(repeated) - againWidth / 2);
  const ticks = [
    ...(zeroFits ? [{ x: bar.x, figure: '0', anchor: 'start' as const }] : []),
    { x: x(repeated), figure: figures[0] ?? '', anchor: isTight ? ('end' as const) : ('middle' as const) },
    { x: x(atYield), figure: figures[1] ?? '', anchor: isTight ? ('start' as const) : ('middle' as const) },
  ];
  const words = [
    { x: againX, text: again, anchor: 'start' as const },
    { x: Math.max(againX + againWidth + 8, x(atYield) - 26), text: `stays${NO_BREAK}bent`, anchor: 'start' as const },
  ];
  return {
    bar,
    full,
    repeated,
    yield: atYield,
    ticks,
    words: small ? [] : words,
    heading: small ? '' : 'strain at the skin',
    width: bar.width + (small ? 14 : 22),
    height: small ? 38 : 66,
  };
}
