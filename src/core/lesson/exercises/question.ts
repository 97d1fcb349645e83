/** What an exercise page asks for: figures to find, each with how far an answer may be off, and letters to choose. */
import type { Mm } from '../../units.ts';

/**
 * How a figure is said. **arc** an angle as arc over radius, **angle** the same to be said in degrees, **times** a plain
 * ratio, **width** a length under a few millimetres, **hundred** a chance as a count in a hundred.
 */
export type FigureKind =
  | 'length'
  | 'width'
  | 'angle'
  | 'arc'
  | 'strain'
  | 'share'
  | 'torque'
  | 'force'
  | 'times'
  | 'count'
  | 'cycles'
  | 'hundred';

/** A number that a class is to find, in mm, N, rad or as a fraction. */
export interface Figure {
  /** Letter of what it is of; '' where there is one thing only. */
  readonly of: string;
  readonly kind: FigureKind;
  readonly value: number;
  /** How far an answer may be off, reading and rounding together. */
  readonly within: number;
  /** Whether it rests on something measured with a ruler or read off a curve. */
  readonly isRead: boolean;
}

export interface Question {
  readonly key: string;
  readonly figures: readonly Figure[];
  /** Letters that may be chosen from, and those that are right; absent where nothing is chosen. */
  readonly choice?: { readonly among: readonly string[]; readonly right: readonly string[] };
}

/** A ruler of a class is read to half a millimetre: judgement, no source. */
export const READING: Mm = 0.5;
/** Small things are drawn so many times as large as they are. */
export const ENLARGED = 10;

/** Whoever rounds to three figures on the way lands within a hundredth: two or three roundings of half a hundredth. */
const ON_THE_WAY = 0.01;

/** Half a unit in the last place that is asked for, in the unit of the core. */
const HALF_PLACE: Readonly<Record<FigureKind, number>> = {
  length: 0.05,
  width: 0.005,
  angle: Math.PI / 360,
  arc: 0.0005,
  strain: 0.00005,
  share: 0.005,
  torque: 0.05,
  force: 0.005,
  times: 0.005,
  count: 0,
  cycles: 0.5,
  hundred: 0.005,
};

/**
 * A figure worked out from numbers that are given.
 *
 * @param kind - how it is said [-]
 * @param value - the right answer, in the unit of its kind: [mm], [rad], [N·mm], [N] or [-]
 * @param of - letter of what it is of [-]
 * @returns the figure; a count must be met, any other may be off by rounding [as the value]
 *
 * @example worked('strain', 0.0428).within // → 0.000428
 */
export function worked(kind: FigureKind, value: number, of = ''): Figure {
  const rounding = kind === 'count' ? 0 : Math.max(HALF_PLACE[kind], ON_THE_WAY * Math.abs(value));
  return { of, kind, value, within: rounding, isRead: false };
}

/**
 * A figure that rests on a reading.
 *
 * @param kind - how it is said [-]
 * @param value - the right answer, as `worked`: [mm], [rad], [N·mm], [N] or [-]
 * @param off - by how much a reading that is off as far as may be puts it off [as the value], ≥ 0
 * @param of - letter of what it is of [-]
 * @returns the figure, whose tolerance takes in the reading [as the value]
 *
 * @example read('length', 12, 0.5).within // → 0.5
 */
export function read(kind: FigureKind, value: number, off: number, of = ''): Figure {
  const rounding = kind === 'length' ? 0 : worked(kind, value).within;
  return { of, kind, value, within: off + rounding, isRead: true };
}

/**
 * A length measured on the page.
 *
 * @param length - as drawn life size [mm], > 0
 * @param of - letter of what it is of [-]
 * @returns the figure [mm]
 *
 * @example measured(12, 'P').value // → 12
 */
export function measured(length: Mm, of = ''): Figure {
  return read('length', length, READING, of);
}

/**
 * A figure that is inversely as a measured length: strain, torque.
 *
 * @param kind - how it is said [-]
 * @param value - the right answer, as `worked`: [mm], [rad], [N·mm], [N] or [-]
 * @param length - what was measured [mm], > READING
 * @param of - letter of what it is of [-]
 * @returns the figure, off by value·READING/(length − READING) at most [as the value]
 *
 * @example overLength('strain', 0.04, 10.5).within // → 0.0024
 */
export function overLength(kind: FigureKind, value: number, length: Mm, of = ''): Figure {
  return read(kind, value, (Math.abs(value) * READING) / (length - READING), of);
}

/**
 * Whether an answer would be taken.
 *
 * @param figure - what was asked [-]
 * @param answer - what was found [as the value]
 * @returns within its tolerance or not
 */
export function isTaken({ value, within }: Figure, answer: number): boolean {
  return Math.abs(answer - value) <= within * (1 + 1e-9);
}
