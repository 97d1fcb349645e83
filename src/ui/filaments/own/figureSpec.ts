/** A value field for one figure of a filament, in the unit in which it is said. */
import type { Limits } from '../../../core/material/ownLimits.ts';
import { cyclesStep } from '../../controls/settle.ts';
import type { ValueSpec } from '../../controls/valueSpec.ts';
import { grouped, NO_BREAK } from '../../text/numbers.ts';
import { EDITOR } from '../../text/ownText.ts';

interface FigureField {
  readonly key: string;
  readonly label: string;
  readonly value: number;
  readonly limits: Pick<Limits, 'min' | 'max' | 'isShare' | 'because'>;
  /** After the figure; a share has per cent. */
  readonly unit: string;
  /** Whether the unit is left to the figure after it. */
  readonly isBare?: boolean;
  /** Whether it counts flexes. */
  readonly isCount?: boolean;
  readonly take: (value: number, now: string, was: string, run?: string) => string | undefined;
}

/** Twelve figures, so that 14.7 of a hundred is 0.147. */
const exact = (value: number) => Number(value.toPrecision(12));

function say(shown: number): string {
  return Math.abs(shown) >= 1000 && Number.isInteger(shown) ? grouped(shown) : String(Number(shown.toPrecision(6)));
}

/** A twentieth of its decade: 1 900 steps by 50, 3.5 by 0.05; never finer than fields are. */
function stepOf(shown: number): number {
  const size = Math.abs(shown);
  return size === 0 ? 0.05 : Math.max(0.001, 10 ** Math.floor(Math.log10(size)) / 20);
}

/**
 * What the field shows and does. Its own value is in the unit in which it is said, so that a strain of 1.47 % can be
 * given to a thousandth of a per cent.
 */
export function figureSpec({
  key,
  label,
  value,
  limits,
  unit,
  isBare = false,
  isCount = false,
  take,
}: FigureField): ValueSpec {
  const times = limits.isShare ? 100 : 1;
  const shown = exact(value * times);
  const suffix = isBare ? '' : limits.isShare ? `${NO_BREAK}%` : unit === '' ? '' : `${NO_BREAK}${unit}`;
  const step = isCount ? cyclesStep : stepOf;
  return {
    key,
    label,
    kind: isCount ? 'count' : 'number',
    unit: 'mm',
    value: shown,
    say,
    shownNumber: shown,
    figure: say(shown),
    suffix,
    hint: EDITOR.hint(`${say(step(shown, true))}${suffix}`, limits.because),
    step,
    min: limits.min * times,
    max: limits.max * times,
    take: (next, was, run) => take(exact(next / times), `${say(next)}${suffix}`, say(was), run),
  };
}
