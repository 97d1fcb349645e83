import { asRad, degrees } from '../../../core/units.ts';
import type { Measure } from '../../text/amountText.ts';
import { MM_PER_INCH, type LengthUnit } from '../../text/numbers.ts';
import type { Scale } from '../draftingScale.ts';

/** The scale of a scrubber: ticks and figures from one end of the way to the other, zero where it rests as printed. */
export interface AmountScale extends Scale {
  /** Place of an amount [px]. */
  readonly x: (amount: number) => number;
}

/** Room for a figure, and for a tick [px]. */
const FIGURE = 46;
const TICK = 4;
const STEPS: Readonly<Record<Measure, readonly number[]>> = {
  turn: [0.5, 1, 2, 5, 10, 15, 30, 45, 90, 180, 360],
  travel: [0.05, 0.1, 0.25, 0.5, 1, 2, 5, 10, 20, 50, 100],
};

/** What the scale counts in: degrees, mm or inches. */
function shown(amount: number, measure: Measure, unit: LengthUnit): number {
  if (measure === 'turn') return degrees(asRad(amount));
  return unit === 'mm' ? amount : amount / MM_PER_INCH;
}

export function amountScale(
  { from, to }: { readonly from: number; readonly to: number },
  width: number,
  measure: Measure,
  unit: LengthUnit,
): AmountScale {
  const [low, high] = [shown(from, measure, unit), shown(to, measure, unit)];
  const x = (value: number) => ((value - low) / (high - low)) * width;
  const steps = measure === 'turn' || unit === 'mm' ? STEPS[measure] : STEPS[measure].map((step) => step / 20);
  const wide = (step: number, room: number) => (step / (high - low)) * width >= room;
  const figured = steps.find((step) => wide(step, FIGURE)) ?? steps.at(-1)!;
  const ticked = steps.find((step) => wide(step, TICK) && isMultiple(figured, step)) ?? figured;
  const places = (step: number) => {
    const first = Math.ceil(low / step - 1e-6);
    return Array.from({ length: Math.floor(high / step + 1e-6) - first + 1 }, (_, i) => (first + i) * step);
  };
  const ticks = places(ticked).map((value) => `M${x(value).toFixed(1)} 12v${isMultiple(value, figured) ? 11 : 5}`);
  const after = measure === 'turn' ? '°' : unit === 'mm' ? '\u2009mm' : '\u2009in';
  const figures = places(figured).map((value) => {
    const at = x(value);
    const anchor = at < 8 ? ('start' as const) : at > width - 8 ? ('end' as const) : ('middle' as const);
    const text = `${value < 0 ? '−' : ''}${Number(Math.abs(value).toFixed(4))}`;
    return {
      x: at,
      text: value === 0 || measure === 'turn' ? `${text}${value === 0 || measure === 'travel' ? after : ''}` : text,
      anchor,
    };
  });
  const ends = [low, high].map((value) => `M${x(value).toFixed(1)} 12v11`);
  return { ticks: [...ticks, ...ends].join(''), figures, x: (amount) => x(shown(amount, measure, unit)) };
}

function isMultiple(value: number, step: number): boolean {
  return Math.abs(value / step - Math.round(value / step)) < 1e-6;
}
