/** Strain against life of one joint as plain figures: cycles and strains, nothing of the screen. */
import type { AllowableName, Assessment } from '../../core/design/assessment.ts';
import {
  countsToShow,
  firstFlexStrain,
  medianLifeAt,
  medianLifeFor,
  peakStrainFor,
  spreadOfCycles,
  strainAtCycles,
} from '../../core/design/curves.ts';
import type { Filament } from '../../core/material/types.ts';
import { lifeIn } from '../../core/design/lifeIn.ts';
import type { Mm } from '../../core/units.ts';
import { lifeDomain, type LifeDomain } from './domains.ts';
import type { Span } from './frame.ts';
import { ownCount } from './lengthCurves.ts';
import { strainByLength } from './strainByLength.ts';

export interface LifePoint {
  readonly cycles: number;
  readonly strain: number;
}

/** One height of a band: the cycles by which 10 and 90 of 100 have broken at a strain. */
export interface LifeBand {
  readonly strain: number;
  readonly low: number;
  readonly high: number;
}

export interface CountPoint extends LifePoint {
  readonly count: number;
}

export interface LifeCurves {
  readonly median: readonly LifePoint[];
  readonly scatter: readonly LifeBand[];
  readonly total: readonly LifeBand[];
}

const SAMPLES = 56;
/** The widest spread reaches less far than this to either side (decades of life). */
const REACH = 2;
/** A life of nought has no place on a log axis; this one is off any paper. */
const NO_LIFE = 1e-6;
/** Round-off must not push the end of the curve over the strain that breaks at once. */
const JUST_BELOW = 1 - 1e-9;

/** The curve must be seen where people count by hand, and where the counting ended. */
export function lifeDomainOf(a: Assessment): LifeDomain {
  const { maxReportableCycles } = a.filament.life;
  const curve = [1000, maxReportableCycles].map((cycles) => Math.min(strainAtCycles(a, cycles), firstFlexStrain(a)));
  return lifeDomain({
    cycles: [a.joint.movement.cycles, ...[jointPoint(a), wornPoint(a)].flatMap((point) => point?.cycles ?? [])],
    strains: [a.strain.peak, ...curve],
  });
}

function medians([low, high]: Span, end: number): readonly number[] {
  const from = Math.log10(low) - REACH;
  const to = Math.log10(high) + REACH;
  const even = Array.from({ length: SAMPLES }, (_, i) => 10 ** (from + ((to - from) * i) / (SAMPLES - 1)));
  return [end, ...even.filter((cycles) => cycles > end)];
}

/** The curve with both bands, from the strain that breaks at once down past the right edge of the paper. */
export function lifeCurves(a: Assessment, cycles: Span): LifeCurves {
  const top = firstFlexStrain(a) * JUST_BELOW;
  const median = medians(cycles, medianLifeAt(a, top)).map((n) => ({
    cycles: n,
    strain: Math.min(strainAtCycles(a, n), top),
  }));
  const band = (kind: 'scatter' | 'total'): readonly LifeBand[] =>
    median.map((point) => {
      const { p10, p90 } = spreadOfCycles(a, point.cycles)[kind];
      return { strain: point.strain, low: p10, high: p90 };
    });
  return { median, scatter: band('scatter'), total: band('total') };
}

/** Where the joint stands by its own swing alone: a point of the curve. */
export function jointPoint(a: Assessment): LifePoint {
  return { cycles: Math.max(a.life.wear[0].median, NO_LIFE), strain: a.strain.peak };
}

/** Where it stands while smaller movements wear it as well; absent where there are none. */
export function wornPoint(a: Assessment): LifePoint | undefined {
  if (a.life.wear.length === 1) return undefined;
  return { cycles: Math.max(a.life.median, NO_LIFE), strain: a.strain.peak };
}

/** Filaments at the strain that the joint has: where half of such prints would have broken by its own swing alone. */
export interface FilamentPoint extends LifePoint {
  readonly ids: readonly string[];
  readonly names: readonly string[];
  /** They last longer than anybody has counted: the point stands where counting ended. */
  readonly isPast: boolean;
}

/** A point for every other filament that prints; those that last past the same end of counting share one. */
export function filamentPoints(a: Assessment, filaments: readonly Filament[]): readonly FilamentPoint[] {
  const others = filaments.filter(({ id, printable }) => printable && id !== a.filament.id);
  const points = others.map((filament) => {
    const { wear, maxReportableCycles } = lifeIn(a, filament);
    const isPast = wear[0].median > maxReportableCycles;
    const cycles = isPast ? maxReportableCycles : Math.max(wear[0].median, NO_LIFE);
    return { ids: [filament.id], names: [filament.name], cycles, strain: a.strain.peak, isPast };
  });
  const ends = [...new Set(points.filter(({ isPast }) => isPast).map(({ cycles }) => cycles))];
  const together = ends.map((cycles): FilamentPoint => {
    const alike = points.filter((point) => point.isPast && point.cycles === cycles);
    const all = (of: 'ids' | 'names') => alike.flatMap((point) => point[of]);
    return { ids: all('ids'), names: all('names'), cycles, strain: a.strain.peak, isPast: true };
  });
  return [...points.filter(({ isPast }) => !isPast), ...together];
}

/** A point for each count that is not the joint's own; a measured joint is of no count, so every count gets one. */
export function countPoints(a: Assessment): readonly CountPoint[] {
  return countsToShow(a)
    .filter((count) => count !== ownCount(a))
    .map((count) => ({
      count,
      cycles: Math.max(medianLifeFor(a, { count }), NO_LIFE),
      strain: peakStrainFor(a, { count }),
    }));
}

export interface LengthLife extends LifePoint {
  readonly length: Mm;
}

/** Where the joint would stand at each of these lengths. */
export function lifeByLength(a: Assessment, lengths: readonly Mm[]): readonly LengthLife[] {
  return lengths.map((length) => {
    const strain = strainByLength(a, length);
    return { length, cycles: Math.max(medianLifeAt(a, strain), NO_LIFE), strain };
  });
}

/** A strain worth a dotted line: a limit that the brief calls on, or the one that breaks it at once. */
export interface LifeLimit {
  readonly name: AllowableName | 'first flex';
  readonly strain: number;
}

export function lifeLimits(a: Assessment, [low, high]: Span): readonly LifeLimit[] {
  const judged = a.allowables
    .filter(({ applies }) => applies)
    .map(({ name, limit }): LifeLimit => ({ name, strain: limit }));
  return [...judged, { name: 'first flex' as const, strain: firstFlexStrain(a) }].filter(
    ({ strain }) => strain > low && strain < high,
  );
}
