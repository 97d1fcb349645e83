import type { Parameter } from '../flexures/family.ts';
import { familyOf } from '../flexures/known.ts';
import { findRoot } from '../numeric/roots.ts';
import { asRad, degrees, radians } from '../units.ts';
import type { Gauge } from './effortAt.ts';
import type { Joint } from './joint.ts';
import { MATCHED } from './matchAnswer.ts';
import { understand } from './understand.ts';
import { withSize } from './withSize.ts';

/** So many efforts are asked for of one size. */
const MOST_ASKED = 8;
/** Nearer than this nobody feels it: the search ends [-]. */
const CLOSE = 0.002;
/** Lengths are told to a hundredth of a millimetre, short ones to a thousandth, where a hundredth is felt. */
const SHORT = 3;
/** The next guess goes a little further than it must, so that the wish comes to lie between two. */
const OVERSHOOT = 1.15;
/** A bracket narrower than this share is one value of a drawing [-]. */
const FINE = 1e-5;
/** So often a range is halved towards where a size is refused. */
const HALVINGS = 24;

/** One size that is to give an effort. */
export interface SizeAsked {
  readonly joint: Joint;
  /** Name of the size. */
  readonly size: string;
  /** [N·mm] or [N] */
  readonly effort: number;
  /** What tells efforts. */
  readonly gauge: Gauge;
  /** What tells roughly, and at once, how efforts go with the size. */
  readonly rough: Gauge;
  /** The effort of the joint as it is [N·mm] or [N]. */
  readonly now: number;
}

/** The nearest that a size comes to. */
export interface SizeFound {
  readonly joint: Joint;
  readonly effort: number;
  /** Whether that is the wish, as nearly as `MATCHED`. */
  readonly isMatched: boolean;
}

interface Tried {
  readonly at: number;
  readonly effort: number;
  /** ln of effort over wish. */
  readonly off: number;
}

function parameterOf(joint: Joint, size: string): Parameter {
  const parameter = familyOf(joint).parameters[size];
  if (!parameter) throw new RangeError(`${joint.family} has no size ${size}`);
  return parameter;
}

/** As a drawing would carry it. */
function drawn(value: number, { kind }: Parameter): number {
  if (kind === 'angle') return radians(Number(degrees(asRad(value)).toFixed(2)));
  return Number(value.toFixed(value >= SHORT ? 2 : 3));
}

/** The last value on the way to a limit that is not refused. */
function furthest(joint: Joint, size: string, from: number, limit: number): number {
  const isPossible = (value: number) => understand(withSize(joint, size, value)).ok;
  if (isPossible(limit)) return limit;
  let [good, bad] = [from, limit];
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (good + bad) / 2;
    if (isPossible(middle)) good = middle;
    else bad = middle;
  }
  return good;
}

/**
 * Least and most that a size may be while the others stay.
 *
 * @param joint - a joint that is not refused [-]
 * @param size - name of one of its sizes [-]
 * @returns values [mm], [rad] or [-]
 */
export function rangeOf(joint: Joint, size: string): { readonly min: number; readonly max: number } {
  const { min, max } = parameterOf(joint, size);
  const now = joint.sizes[size] ?? Number.NaN;
  return { min: furthest(joint, size, now, min), max: furthest(joint, size, now, max) };
}

/** Efforts of a joint by one of its sizes: each asked for once, and only so many. */
class Trials {
  readonly #asked: SizeAsked;
  readonly #parameter: Parameter;
  readonly #known = new Map<number, Tried | undefined>();
  readonly range: { readonly min: number; readonly max: number };

  constructor(asked: SizeAsked) {
    this.#asked = asked;
    this.#parameter = parameterOf(asked.joint, asked.size);
    this.range = rangeOf(asked.joint, asked.size);
    this.#known.set(this.start, { at: this.start, effort: asked.now, off: Math.log(asked.now / asked.effort) });
  }

  get start(): number {
    return this.#asked.joint.sizes[this.#asked.size] ?? Number.NaN;
  }

  /** As it is drawn, within the range. */
  #place(value: number): number {
    const { min, max } = this.range;
    const place = drawn(value, this.#parameter);
    return place < min || place > max ? Math.min(max, Math.max(min, value)) : place;
  }

  /** Undefined where it is refused, has no such effort, or too much has been asked. */
  at(value: number): Tried | undefined {
    const place = this.#place(value);
    if (!this.#known.has(place)) this.#known.set(place, this.#ask(place));
    return this.#known.get(place);
  }

  #ask(place: number): Tried | undefined {
    // What stands there already was not asked for.
    if (this.#known.size > MOST_ASKED) return undefined;
    const told = this.#asked.gauge(withSize(this.#asked.joint, this.#asked.size, place));
    if (!told.ok || !(told.value > 0)) return undefined;
    return { at: place, effort: told.value, off: Math.log(told.value / this.#asked.effort) };
  }

  nearest(): Tried {
    const tried = [...this.#known.values()].filter((one) => one !== undefined);
    return tried.reduce((best, one) => (Math.abs(one.off) < Math.abs(best.off) ? one : best));
  }
}

/** Where a rough effort, made right at a place that is known, is as wished; the end that comes nearest where it never is. */
function roughGuess({ joint, size, rough }: SizeAsked, { min, max }: Trials['range'], known: Tried): number {
  const roughAt = (value: number) => {
    const told = rough(withSize(joint, size, value));
    return told.ok && told.value > 0 ? Math.log(told.value) : Number.NaN;
  };
  const here = roughAt(known.at) - known.off;
  const off = (logOf: number) => roughAt(Math.exp(logOf)) - here;
  const found = findRoot(off, Math.log(min), Math.log(max), FINE);
  if (found.ok) return Math.exp(found.value.value);
  const [low, high] = [Math.abs(off(Math.log(min))), Math.abs(off(Math.log(max)))];
  if (Number.isNaN(low) || Number.isNaN(high)) return known.at * 1.1;
  return low < high ? min : max;
}

/** Where the wish lies if the effort goes on as between two places, a little further. */
function onwards(one: Tried, other: Tried): number {
  const slope = (other.off - one.off) / Math.log(other.at / one.at);
  return other.at * Math.exp((-OVERSHOOT * other.off) / slope);
}

const isClose = ({ off }: Tried) => Math.abs(off) <= CLOSE;

/** Goes on from guess to guess until the wish is met, or lies between the last two. */
function bracketed(trials: Trials, first: Tried, guess: number): readonly [Tried, Tried] | undefined {
  let [before, next] = [first, guess];
  for (let i = 0; i < MOST_ASKED; i += 1) {
    const now = trials.at(next);
    if (!now) next = Math.sqrt(next * before.at);
    else if (isClose(now) || now.at === before.at) return undefined;
    else if (now.off * before.off < 0) return [before, now];
    else [before, next] = [now, onwards(before, now)];
    // Nowhere to go on to: it does not depend on the size, or goes the other way.
    if (!(next > 0 && Number.isFinite(next))) return undefined;
  }
  return undefined;
}

/**
 * The size with which a joint has an effort. Rough figures make the first guess; efforts are taken to go by a power of the
 * size from one guess to the next, and where the wish lies between two it is closed in on.
 *
 * @param asked - joint, size and effort [N·mm] or [N], what tells efforts and what does so roughly [-]
 * @returns the nearest that was found, in a size that a drawing would carry [mm] or [rad]
 *
 * Source: chandrupatla.
 */
export function matchSize(asked: SizeAsked): SizeFound {
  const trials = new Trials(asked);
  const first = trials.at(trials.start);
  if (first && !isClose(first) && trials.range.max > trials.range.min) {
    const between = bracketed(trials, first, roughGuess(asked, trials.range, first));
    if (between) closeIn(trials, between);
  }
  const { at, effort, off } = trials.nearest();
  return {
    joint: withSize(asked.joint, asked.size, at),
    effort,
    isMatched: Math.abs(Math.expm1(off)) <= MATCHED,
  };
}

/** What it comes to is remembered by the trials. */
function closeIn(trials: Trials, [one, other]: readonly [Tried, Tried]): void {
  const off = (logOf: number) => {
    const tried = trials.at(Math.exp(logOf));
    return tried === undefined ? Number.NaN : isClose(tried) ? 0 : tried.off;
  };
  findRoot(off, Math.log(one.at), Math.log(other.at), FINE);
}
