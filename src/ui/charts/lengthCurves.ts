/** Strain against flexing length of one joint as plain figures: lengths [mm] and strains, nothing of the screen. */
import { allowableNamed } from '../../core/design/allowables.ts';
import type { Assessment } from '../../core/design/assessment.ts';
import { countsToShow } from '../../core/design/curves.ts';
import { familyOf } from '../../core/flexures/known.ts';
import type { Parameter } from '../../core/flexures/family.ts';
import type { Mm } from '../../core/units.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { lengthRange, lengthStops, strainTop, type LengthRange } from './domains.ts';
import { clamp, type Span } from './frame.ts';
import { strainByLength } from './strainByLength.ts';

export interface LengthDomain extends LengthRange {
  readonly top: number;
  /** Where a simple formula only estimates and carries the solved strain to other lengths: between which it can. */
  readonly byForm?: Span;
}

export interface LengthPoint {
  readonly length: Mm;
  readonly strain: number;
}

export interface LengthCurve {
  /** NaN for the own curve of a measured joint, whose thickness is of no whole count. */
  readonly count: number;
  /** The joint as it is. */
  readonly own: boolean;
  readonly strainAt: (length: Mm) => number;
}

const SAMPLES = 40;

/** Names of the sizes that a drag changes. */
export function dragged(a: Assessment): { readonly length: string; readonly count: string } {
  const { length, count } = familyOf(a.joint).roles;
  return { length, count };
}

function limitsOf(a: Assessment, role: 'length' | 'count'): Span {
  const family = familyOf(a.joint);
  const { min, max } = family.parameters[family.roles[role]] as Parameter;
  return [min, max];
}

export function lengthDomainOf(a: Assessment, unit: LengthUnit): LengthDomain {
  const yields = allowableNamed(a.allowables, 'yield').limit;
  return { ...lengthRange(a.length, unit), top: strainTop(yields, a.strain.peak) };
}

/** The shortest of these lengths at which the joint strains no more than that; undefined when none is long enough. */
export function shortestFor(a: Assessment, stops: readonly Mm[], strain: number): Mm | undefined {
  return stops.find((length) => strainByLength(a, length) <= strain);
}

/** Every length that a drag can stop at, whatever the paper shows. */
export function everyLength(a: Assessment, unit: LengthUnit): readonly Mm[] {
  return lengthStops(limitsOf(a, 'length'), unit);
}

/** Lengths that this kind of flexure may have and that are on the paper. */
export function lengthLimits(a: Assessment, { span, byForm }: Pick<LengthDomain, 'span' | 'byForm'>): Span {
  const limits = byForm ?? limitsOf(a, 'length');
  return [clamp(span[0], limits), clamp(span[1], limits)];
}

/** The whole count that the joint's section is; NaN for a measured one. */
export function ownCount(a: Assessment): number {
  return a.joint.measuredThickness === undefined ? a.section.count : Number.NaN;
}

/** The joint's own curve last, so that it is drawn over the others. */
export function lengthCurves(a: Assessment): readonly LengthCurve[] {
  const [fewest, most] = limitsOf(a, 'count');
  const own = ownCount(a);
  const others = countsToShow(a)
    .filter((count) => count >= fewest && count <= most && count !== own)
    .map((count) => ({ count, own: false, strainAt: (length: Mm) => strainByLength(a, length, count) }));
  return [...others, { count: own, own: true, strainAt: (length) => strainByLength(a, length) }];
}

/** The curve nearest to a strain at a length. */
export function nearestCurve(
  curves: readonly LengthCurve[],
  length: Mm,
  away: (strain: number) => number,
): LengthCurve {
  return curves.reduce((best, curve) => (away(curve.strainAt(length)) < away(best.strainAt(length)) ? curve : best));
}

/** The next curve up or down at a length; the last one stays. */
export function neighbour(curves: readonly LengthCurve[], from: LengthCurve, length: Mm, up: boolean): LengthCurve {
  const order = curves.toSorted((one, other) => one.strainAt(length) - other.strainAt(length));
  return order[order.indexOf(from) + (up ? 1 : -1)] ?? from;
}

/** Evenly by ratio, because strain falls as one over the length. */
export function sampled(curve: LengthCurve, [low, high]: Span): readonly LengthPoint[] {
  return Array.from({ length: SAMPLES + 1 }, (_, i) => {
    const length = low * (high / low) ** (i / SAMPLES);
    return { length, strain: curve.strainAt(length) };
  });
}

/** How many of the limits that the brief calls on a strain keeps. */
export function limitsKept(a: Assessment, strain: number): { readonly kept: number; readonly of: number } {
  const judged = a.allowables.filter(({ applies }) => applies);
  return { kept: judged.filter(({ limit }) => strain <= limit).length, of: judged.length };
}

/** The strain that it may be left bent at; undefined when it is not left bent, or stands more than the paper shows. */
export function heldLimit(a: Assessment, top: number): number | undefined {
  const { applies, limit } = allowableNamed(a.allowables, 'held');
  return applies && limit < top ? limit : undefined;
}

/** A stretch of the strain axis that one allowable begins. */
export interface StrainBand {
  readonly name: 'repeated' | 'few' | 'set' | 'broken';
  readonly from: number;
  readonly to: number;
}

/** What the filament does at each strain, from nought to the top of the paper. */
export function strainBands(a: Assessment, top: number): readonly StrainBand[] {
  const limit = (name: 'repeated' | 'yield' | 'break') => Math.min(allowableNamed(a.allowables, name).limit, top);
  const ends = [0, limit('repeated'), limit('yield'), limit('break'), top] as const;
  const names = ['repeated', 'few', 'set', 'broken'] as const;
  return names
    .map((name, i) => ({ name, from: ends[i] as number, to: ends[i + 1] as number }))
    .filter(({ from, to }) => to > from);
}
