/** Numbers that pages draw from, and what a page takes of a filament. */
import { limitsOf } from '../../design/allowables.ts';
import { bendingModulus } from '../../material/choose.ts';
import { FILAMENTS } from '../../material/filaments.ts';
import type { Filament } from '../../material/types.ts';
import { thicknessOfLines } from '../../print/wholeLines.ts';
import { radians, type Mm, type MPa, type Rad } from '../../units.ts';

/** Whole numbers from one to another, in steps. */
export function steps(from: number, to: number, step = 1): readonly number[] {
  return Array.from({ length: Math.floor((to - from) / step + 1e-9) + 1 }, (_, at) =>
    Number((from + at * step).toFixed(6)),
  );
}

/** What a nozzle of 0.4 mm lays well [mm]. */
export const LINE_WIDTHS: readonly Mm[] = [0.38, 0.4, 0.41, 0.42, 0.43, 0.44, 0.45, 0.46, 0.48, 0.5];

/** Angles in steps of 5°, as protractors are read. */
export const anglesOf = (fromDeg: number, toDeg: number, stepDeg = 5): readonly Rad[] =>
  steps(fromDeg, toDeg, stepDeg).map(radians);

/** A whole number of lines side by side and how thick they are, each n·w. */
export interface LinesAcross {
  readonly lines: number;
  readonly lineWidth: Mm;
  readonly thickness: Mm;
}

/** Exercises count lines as they are set: n lines are n times as thick as one. */
export function linesAcross(lines: number, lineWidth: Mm): LinesAcross {
  const thickness = thicknessOfLines(lines, { lineWidth, layerHeight: 0.2, fitRule: 'nominal' });
  // 3 × 0.4 mm should read 1.2 and not 1.2000000000000002.
  return { lines, lineWidth, thickness: Number(thickness.toFixed(6)) };
}

/** What a page says of a filament: strains as fractions, along the lines. */
export interface FilamentFacts {
  readonly id: string;
  readonly name: string;
  /** Past this it stays bent. */
  readonly yields: number;
  /** It stands this again and again. */
  readonly again: number;
  /** It stands this held bent. */
  readonly held: number;
  readonly breaks: number;
  readonly modulus: MPa;
}

/**
 * A row of the filament table as pages use it; the user's own rows do not count, so that a link opens the same page anywhere.
 *
 * @param id - key of a row [-]
 * @returns the row
 */
export function rowOf(id: string): Filament {
  const row = FILAMENTS.find((one) => one.id === id);
  if (!row) throw new RangeError(`there is no filament ${id}`);
  return row;
}

/**
 * What a page says of a filament.
 *
 * @param id - key of a row [-]
 * @returns strains as fractions [-] and modulus [MPa], along the lines
 *
 * @example factsOf('petg').yields // → 0.035
 */
export function factsOf(id: string): FilamentFacts {
  const row = rowOf(id);
  const limits = limitsOf(row, false);
  return {
    id,
    name: row.name,
    yields: limits.yield.value,
    again: limits.repeated.value,
    held: limits.held.value,
    breaks: limits.break.value,
    modulus: bendingModulus(row, false).typical,
  };
}

/** Whether a strain lies so far from a limit that half a millimetre of reading on a length cannot take it to the other side. */
export function isClear(strain: number, limit: number, length: Mm): boolean {
  return Math.abs(strain / limit - 1) > 0.05 + 0.6 / length;
}
