/** Short ways to write the entries of a filament row. They add nothing to what the row says. */
import type { SourceKey } from '../sources.ts';
import type { Direction, Provenance, Quantity, StrainLifeCurve } from './types.ts';

/** A typical value alone, or typical, low, high. */
type Figures = number | readonly [typical: number, low: number, high: number];
type Inputs = Extract<Provenance, { kind: 'computed' }>['inputs'];

function quantity(
  figures: Figures,
  unit: string,
  direction: Direction,
  provenance: Provenance,
  note?: string,
): Quantity {
  const values = typeof figures === 'number' ? { typical: figures } : asRange(figures);
  return { ...values, unit, direction, provenance, ...(note === undefined ? {} : { note }) };
}

function asRange([typical, low, high]: readonly [number, number, number]) {
  return { typical, low, high };
}

/** Recalled, not looked up. */
export function memory(figures: Figures, unit: string, direction: Direction, note?: string): Quantity {
  return quantity(figures, unit, direction, { kind: 'memory' }, note);
}

/** The typical value stands in the source; low and high, where given, are recalled. */
export function published(
  source: SourceKey,
  place: string,
  figures: Figures,
  unit: string,
  direction: Direction,
  note?: string,
): Quantity {
  const value = quantity(figures, unit, direction, { kind: 'published', source, place }, note);
  return typeof figures === 'number' ? value : { ...value, range: 'memory' };
}

/** Typical, low and high all stand in the source. */
export function publishedRange(
  source: SourceKey,
  place: string,
  figures: readonly [typical: number, low: number, high: number],
  unit: string,
  direction: Direction,
  note?: string,
): Quantity {
  return { ...quantity(figures, unit, direction, { kind: 'published', source, place }, note), range: 'published' };
}

/** Worked out from other numbers; `inputs` says what those rest on. */
export function computed(
  from: string,
  inputs: Inputs,
  figures: Figures,
  unit: string,
  direction: Direction,
  note?: string,
): Quantity {
  return quantity(figures, unit, direction, { kind: 'computed', from, inputs }, note);
}

/**
 * Factor of N within which the true curve lies nine times in ten.
 * The curves differ between printers and spools by about 3; those that are weak, or rest on practice
 * instead of a test, may be off by 10.
 *
 * @param certainty - what the row says of its own curve [-]
 * @returns factor on cycles [-], 3 or 10
 *
 * Source: strain-life.
 * @example doubtFactor('weak at both ends') // → 10
 */
export function doubtFactor(certainty: string): number {
  return /weak|practice/i.test(certainty) ? 10 : 3;
}

/** A strain–life curve with its doubt set from its certainty. */
export function strainLife(curve: Omit<StrainLifeCurve, 'doubtFactor'>): StrainLifeCurve {
  return { ...curve, doubtFactor: doubtFactor(curve.certainty) };
}
