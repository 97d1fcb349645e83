/** How the figures of a working are written. */
import type { WorkingUnit } from '../../../core/working/step.ts';
import { MINUS, NO_BREAK, THIN } from '../numbers.ts';

/** Figures of a result, and of what is put in, which keeps all that was set. */
export const PLACES = { result: 4, given: 6 } as const;

/** A figure as it stands on paper: digits, and a power of ten where it is very small or very large. */
export interface WrittenFigure {
  readonly digits: string;
  readonly power?: number;
}

const SMALLEST = 1e-3;
const LARGEST = 1e7;

/** A figure to so many places: 20949.79 → “20 950”, 0.0000213 → “2.13” with the power −5. */
export function writtenFigure(value: number, places: number): WrittenFigure {
  const rounded = Number(value.toPrecision(places));
  const size = Math.abs(rounded);
  if (size !== 0 && (size < SMALLEST || size >= LARGEST)) {
    const power = Math.floor(Math.log10(size));
    return { digits: plainDigits(Number((value / 10 ** power).toPrecision(places))), power };
  }
  return { digits: plainDigits(rounded) };
}

function plainDigits(value: number): string {
  const [whole = '', decimals] = String(Math.abs(value)).split('.');
  const parted = whole.length > 4 ? whole.replaceAll(/\B(?=(\d{3})+$)/g, THIN) : whole;
  return `${value < 0 ? MINUS : ''}${decimals === undefined ? parted : `${parted}.${decimals}`}`;
}

/** The same as words, for where nothing can be set above the line. */
export function figureText(value: number, places: number): string {
  const { digits, power } = writtenFigure(value, places);
  return power === undefined ? digits : `${digits}${NO_BREAK}×${NO_BREAK}10^${String(power).replace('-', MINUS)}`;
}

/** Whether two figures are written alike to the places of a result. */
export function isWrittenAlike(a: number, b: number): boolean {
  const [one, other] = [writtenFigure(a, PLACES.result), writtenFigure(b, PLACES.result)];
  return one.digits === other.digits && one.power === other.power;
}

/** A unit as it stands after a figure: letters with a power each; nothing for a plain number. */
export const UNIT_PARTS: Readonly<Record<WorkingUnit, readonly { readonly unit: string; readonly power?: number }[]>> =
  {
    '': [],
    deg: [{ unit: '°' }],
    mm: [{ unit: 'mm' }],
    '1/mm': [{ unit: 'mm', power: -1 }],
    'mm^2': [{ unit: 'mm', power: 2 }],
    '1/mm^2': [{ unit: 'mm', power: -2 }],
    'mm^3': [{ unit: 'mm', power: 3 }],
    '1/mm^3': [{ unit: 'mm', power: -3 }],
    'mm^4': [{ unit: 'mm', power: 4 }],
    MPa: [{ unit: 'MPa' }],
    N: [{ unit: 'N' }],
    'N/mm': [{ unit: 'N' }, { unit: 'mm', power: -1 }],
    'N mm': [{ unit: 'N' }, { unit: 'mm' }],
    '1/(N mm)': [
      { unit: 'N', power: -1 },
      { unit: 'mm', power: -1 },
    ],
    'mm/N': [{ unit: 'mm' }, { unit: 'N', power: -1 }],
  };
