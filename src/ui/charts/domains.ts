/**
 * How much of the world each figure shows. All of these move in steps, so that a small change of the joint moves the
 * joint's point and not the paper under it.
 */
import type { Mm } from '../../core/units.ts';
import type { LengthUnit } from '../text/numbers.ts';
import type { Span } from './frame.ts';
import { evenStops } from './stops.ts';

/** What must be on the paper of strain against life. */
export interface LifeNeeds {
  readonly cycles: readonly number[];
  readonly strains: readonly number[];
}

export interface LifeDomain {
  readonly cycles: Span;
  readonly strain: Span;
  /** Lengths that a drag can stop at; every one that the kind may have when left out. */
  readonly lengths?: readonly Mm[];
}

const MOST_CYCLES = 1e7;
const STRAIN_FLOORS: readonly number[] = [0.003, 0.001, 0.0003, 0.0001];
const STRAIN_CEILINGS: readonly number[] = [0.3, 1, 3, 10];
/** A point this near to the edge would be cut by it (a share of its value, on log paper). */
const CLEARANCE = 1.15;

/** 10 to 10 million cycles and 0.3 to 30 %, stretched where something that matters lies outside. */
export function lifeDomain(needs: LifeNeeds): LifeDomain {
  const strains = needs.strains.filter((strain) => strain > 0);
  const least = Math.min(...strains) / CLEARANCE;
  const most = Math.max(...strains) * CLEARANCE;
  return {
    cycles: [needs.cycles.some((cycles) => cycles < 10 * CLEARANCE) ? 1 : 10, MOST_CYCLES],
    strain: [
      STRAIN_FLOORS.find((floor) => floor <= least) ?? (STRAIN_FLOORS.at(-1) as number),
      STRAIN_CEILINGS.find((ceiling) => ceiling >= most) ?? (STRAIN_CEILINGS.at(-1) as number),
    ],
  };
}

/** A range of flexing lengths, and how far apart the lengths are that a drag stops at [mm]. */
export interface LengthRange {
  readonly span: Span;
  readonly snap: Mm;
}

/** Round steps of an inch near to the steps in mm: 0.002, 0.005, 0.02 and 0.05 in. */
const INCH_SNAPS: Readonly<Record<number, Mm>> = { 0.05: 0.0508, 0.1: 0.127, 0.5: 0.508, 1: 1.27 };

const USUAL_RANGE: LengthRange = { span: [4, 30], snap: 0.5 };

/** Shorter than `below` is shown on this paper. */
const LENGTH_RANGES: readonly (LengthRange & { readonly below: Mm })[] = [
  { below: 0.5, span: [0.2, 1.6], snap: 0.05 },
  { below: 1.3, span: [0.5, 4], snap: 0.1 },
  { below: 6.5, span: [1, 8], snap: 0.1 },
  { below: 27, ...USUAL_RANGE },
  { below: 72, span: [10, 80], snap: 0.5 },
  { below: Infinity, span: [25, 200], snap: 1 },
];

function stepIn(unit: LengthUnit, snap: Mm): Mm {
  return unit === 'mm' ? snap : (INCH_SNAPS[snap] ?? snap);
}

/** The paper on which a joint of this length is shown, with steps that are round in the chosen unit. */
export function lengthRange(length: Mm, unit: LengthUnit): LengthRange {
  const { span, snap } = LENGTH_RANGES.find(({ below }) => length < below) ?? USUAL_RANGE;
  return { span, snap: stepIn(unit, snap) };
}

/** Every length that a drag can stop at between the limits: each range's own steps as far as it is the one shown. */
export function lengthStops([least, most]: Span, unit: LengthUnit): readonly Mm[] {
  const stops = LENGTH_RANGES.flatMap(({ below, snap }, i) => {
    const from = Math.max(least, LENGTH_RANGES[i - 1]?.below ?? 0);
    return evenStops([from, Math.min(most, below)], stepIn(unit, snap));
  });
  return [...new Set(stops)];
}

/**
 * 8, 16, 32 % and doubles of it. The two finer papers serve only where the usual one would leave everything at its foot.
 *
 * @param yields - strain from which it stays bent; its band must be seen
 * @param peak - strain of the joint, which must have room over it
 */
export function strainTop(yields: number, peak: number): number {
  const finer = [0.02, 0.04].find((top) => yields * 1.1 <= top && peak * 3.5 <= top);
  if (finer !== undefined) return finer;
  let top = 0.08;
  while (top < Math.max(yields * 1.1, peak * 1.2)) top *= 2;
  return top;
}

/** 60° or more in thirties, then in sixties; 30° for joints that move little [deg]. */
export function angleTopDeg(wantedDeg: number): number {
  if (wantedDeg <= 20) return 30;
  const most = wantedDeg * 1.15;
  const step = most > 210 ? 60 : 30;
  return Math.max(60, Math.ceil(most / step) * step);
}

/** A travel with half as much again beyond it, up to a round figure [mm]. */
export function travelTop(wanted: Mm): Mm {
  return niceSteps(wanted * 1.5).top;
}

/** Step and top of an axis that starts at nought: at most five steps of 1, 2 or 5 times a power of ten. */
export function niceSteps(most: number): { readonly step: number; readonly top: number } {
  if (!(most > 0)) return { step: 1, top: 5 };
  const power = 10 ** Math.floor(Math.log10(most / 5));
  const step = ([1, 2, 5, 10].find((digit) => most / (digit * power) <= 5) ?? 10) * power;
  return { step, top: Number((Math.ceil(most / step - 1e-9) * step).toPrecision(12)) };
}
