/** Where parts of a network come nearest, kept while a state is looked through. */
import type { Mm } from '../units.ts';
import type { Gap } from './gaps.ts';
import { halfAt, lengthOf, type Meeting, type Strand } from './strand.ts';

/** Places joined by less than this many thicknesses of material are one place, not two with a gap between them. */
export const LOCAL = 4;
/** A gap counts where the way round through the material is this much longer than the way across: past any square corner. */
export const DETOUR = 1.5;

/** What is near what in one state. */
export interface Gaps {
  /** The least gap; absent where nothing can touch. */
  readonly least?: Gap;
  /** Every two parts that are nearer than asked, where they are nearest: least first, and the least twelve at most. */
  readonly near: readonly Gap[];
}

/** More places than these would not be read one by one. */
const MOST_NEAR = 12;

/** What has been found in a state so far. */
export interface Findings {
  readonly within: Mm;
  /** The least gap so far [mm]. */
  least: Mm;
  readonly gaps: Gap[];
}

export function newFindings(within: Mm): Findings {
  return { within, least: Infinity, gaps: [] };
}

/** The nearest places of two parts so far; further ones than `gap` are not looked for. */
export interface Pair {
  gap: Mm;
  found?: Gap;
}

/** Two parts that are to be looked at: what is neither the least nor near is of no interest. */
export function pairOf({ least, within }: Findings): Pair {
  return { gap: Math.max(least, within) };
}

/** Adds what two parts have come to. */
export function take(findings: Findings, { found }: Pair): void {
  if (!found) return;
  findings.gaps.push(found);
  findings.least = Math.min(findings.least, found.gap);
}

/** The least of all, and those that are near. */
export function told({ gaps, within }: Findings): Gaps {
  if (gaps.length === 0) return { near: [] };
  const sorted = gaps.toSorted((a, b) => a.gap - b.gap);
  const [least] = sorted;
  return { ...(least ? { least } : {}), near: sorted.filter(({ gap }) => gap < within).slice(0, MOST_NEAR) };
}

interface Side {
  readonly what: string;
  readonly strand: Strand;
}

/** Keeps a meeting as the nearest so far, with its places moved from the middle lines out to the surfaces. */
export function keep(pair: Pair, { gap, i, u, j, v, ax, ay, bx, by }: Meeting, a: Side, b: Side): void {
  const apart = lengthOf(bx - ax, by - ay);
  const [dx, dy] = apart > 0 ? [(bx - ax) / apart, (by - ay) / apart] : [0, 0];
  const [outA, outB] = [halfAt(a.strand, i, u), halfAt(b.strand, j, v)];
  pair.gap = gap;
  pair.found = {
    gap,
    a: { what: a.what, at: { x: ax + outA * dx, y: ay + outA * dy } },
    b: { what: b.what, at: { x: bx - outB * dx, y: by - outB * dy } },
  };
}
