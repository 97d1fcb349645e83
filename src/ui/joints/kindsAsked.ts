/** Which kinds can do what the catalogue is asked for, by what the core knows of each, and how the others say no. */
import type { Drive, FlexureFamily } from '../../core/flexures/family.ts';
import type { Lying } from '../../core/print/profile.ts';
import { cannotLie, CANNOT, type Doing } from '../text/catalogueText.ts';

/** What is asked of a kind before one is chosen. */
export interface Asked {
  readonly doing: Doing;
  readonly lying: Lying | 'any';
}

export const ANYTHING: Asked = { doing: 'anything', lying: 'any' };

/** The way in which a kind would do what is asked: the first that measures the same, or else its usual one. */
export function driveFor({ drives }: FlexureFamily, { doing }: Asked): Drive {
  return drives.find(({ measure }) => measure === doing) ?? drives[0];
}

/** Why a kind cannot do what is asked, in words; undefined where it can. */
export function whyNot(family: FlexureFamily, { doing, lying }: Asked): string | undefined {
  const { drives, lyings, snaps } = family;
  if ((doing === 'turn' || doing === 'travel') && !drives.some(({ measure }) => measure === doing)) {
    return CANNOT[doing];
  }
  if (doing === 'stay' && !snaps) return CANNOT.stay;
  return lying === 'any' || lyings.includes(lying) ? undefined : cannotLie(family.id, lying, lyings);
}

type Step = 'left' | 'right' | 'up' | 'down' | 'first' | 'last';

/** Where a step leads in rows of so many; a step off the edge stays. */
export function stepTo(at: number, step: Step, count: number, columns: number): number {
  const to = {
    left: at % columns === 0 ? at : at - 1,
    right: at % columns === columns - 1 ? at : at + 1,
    up: at - columns,
    down: at + columns,
    first: 0,
    last: count - 1,
  }[step];
  return to < 0 || to >= count ? at : to;
}

/** The next name after this place that begins with a letter, round to the front; the same place when none does. */
export function letterTo(at: number, letter: string, names: readonly string[]): number {
  const order = names.map((_, i) => (at + 1 + i) % names.length);
  return order.find((i) => names[i]?.toLowerCase().startsWith(letter.toLowerCase())) ?? at;
}
