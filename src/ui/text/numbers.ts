/**
 * How numbers are said. Lengths come in mm and angles in rad; nothing else in `ui` formats a number.
 * Thousands are parted by a thin space; a number and its unit by a no-break space.
 */
import { degrees, type Mm, type Rad } from '../../core/units.ts';

export type LengthUnit = 'mm' | 'inch';

export const NO_BREAK = '\u00a0';
export const THIN = '\u2009';
export const MINUS = '\u2212';
export const MM_PER_INCH = 25.4;

/** `5000` → “5 000”. */
export function grouped(value: number): string {
  return String(Math.round(value)).replaceAll(/\B(?=(\d{3})+$)/g, THIN);
}

/** A life to two figures: `24404` → “24 000”. */
export function cycles(value: number): string {
  const unit = 10 ** Math.max(0, Math.floor(Math.log10(Math.max(value, 1))) - 1);
  return grouped(Math.round(value / unit) * unit);
}

/** A strain as a per cent: `0.0214` → “2.14 %”. */
export function percent(strain: number, places = 2): string {
  return `${(strain * 100).toFixed(places)}${NO_BREAK}%`;
}

/** The bare figure of a length in the chosen unit: two decimals in mm, four in inch (about 0.0025 mm). */
export function lengthFigure(value: Mm, unit: LengthUnit, places = unit === 'mm' ? 2 : 4): string {
  const shown = unit === 'mm' ? value : value / MM_PER_INCH;
  // Rounded half up before it is written, as values are when they are put in force; toFixed alone takes 0.4065 down.
  return (Math.round(shown * 10 ** places) / 10 ** places).toFixed(places);
}

/** A length with its unit: “12.00 mm”. */
export function length(value: Mm, unit: LengthUnit, places?: number): string {
  return `${lengthFigure(value, unit, places)}${NO_BREAK}${unit === 'mm' ? 'mm' : 'in'}`;
}

/** An angle in degrees with no more decimals than it needs, at most one: “35°”. */
export function angle(value: Rad, places = 1): string {
  return `${Number(degrees(value).toFixed(places))}°`;
}

/** An angle that must not be passed, rounded down to a tenth of a degree. */
export function angleWithin(value: Rad): string {
  // 35° comes back from radians a hair short of 35.
  return `${Math.floor(degrees(value) * 10 + 1e-6) / 10}°`;
}

/** Three figures of a torque or a force: “30.2”. `like` is the figure whose decimals it takes. */
export function effortFigure(value: number, like = value): string {
  const size = Math.abs(like);
  return value.toFixed(size >= 100 ? 0 : size >= 10 ? 1 : 2).replace('-', MINUS);
}

/** A chance as a count in a hundred, never 0 or 100: “over 99”, “87”, “under 1”. */
export function inHundred(chance: number): string {
  if (chance > 0.995) return 'over 99';
  if (chance < 0.01) return 'under 1';
  return String(Math.round(chance * 100));
}

/** “1 line”, “2 lines”. */
export function counted(count: number, one: string): string {
  return `${count} ${one}${count === 1 ? '' : 's'}`;
}

/**
 * A length that somebody set, with every decimal that is in force and no idle ones past the usual: 12 → “12.00”,
 * 11.525 → “11.525”. `least` is for lengths that are usually round: 6 → “6”.
 */
export function setLength(value: Mm, unit: LengthUnit, least = unit === 'mm' ? 2 : 3): string {
  const [whole = '', decimals = ''] = lengthFigure(value, unit, unit === 'mm' ? 3 : 4).split('.');
  const kept = decimals.slice(0, least) + decimals.slice(least).replace(/0+$/, '');
  return kept === '' ? whole : `${whole}.${kept}`;
}

/** The unit as it stands after a figure: “ mm”, with a no-break space. */
export function unitAfter(unit: LengthUnit): string {
  return `${NO_BREAK}${unit === 'mm' ? 'mm' : 'in'}`;
}

const SMALL = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** A count in words, for sentences: `2` → “two”. */
export function inWords(count: number): string {
  return SMALL[count] ?? grouped(count);
}

/** A share without decimals: `0.199` → “20 %”. */
export function share(fraction: number): string {
  return `${Math.round(fraction * 100)}${NO_BREAK}%`;
}
