/** Reading a solved way: strain, effort and rests at an amount. */
import type { MetGap, Solved, SolvedEvent, SolvedPath, SolvedPoint } from './solved.ts';

/** Strain of the skin in one state with the root factor where members grow out of pads. */
function feltIn({ peakWithin, peakAtEnds }: SolvedPoint, rootFactor: number): number {
  return Math.max(peakWithin, peakAtEnds * rootFactor);
}

/** The ways that limits of the amount are looked up on; a shorter swing to the other side has limits of its own. */
function pathsOf({ forward, back, least }: Solved): readonly SolvedPath[] {
  return back && least === undefined ? [forward, back] : [forward];
}

/** Each way, and how far it goes while the other goes to an amount. */
function waysTo({ forward, back, least, amount: wanted }: Solved, amount: number) {
  const there = { path: forward, most: amount };
  return back ? [there, { path: back, most: least === undefined ? amount : (amount * least) / wanted }] : [there];
}

/** Whether something on a way lies up to an amount; amounts of the way back are negative. */
function isUpTo(amount: number): (place: { readonly amount: number }) => boolean {
  // A path that has leapt may come by an amount of the grid a digit early or late.
  const most = Math.abs(amount) * (1 + 1e-9);
  return (place) => Math.abs(place.amount) <= most;
}

function upTo(solved: Solved, amount: number): readonly SolvedPoint[] {
  return waysTo(solved, amount).flatMap(({ path, most }) => path.points.filter(isUpTo(most)));
}

/** Strain of the skin at an amount, as a magnitude, by a straight line between two states; at its end beyond the way. */
function strainAt({ points }: SolvedPath, amount: number, rootFactor: number): number {
  const isPassed = isUpTo(amount);
  const next = points.findIndex((point) => !isPassed(point));
  const [before, after] = [next < 0 ? points.at(-1) : points[next - 1], points[next]];
  const felt = before ? feltIn(before, rootFactor) : 0;
  if (!before || !after) return felt;
  const share = (amount - Math.abs(before.amount)) / Math.abs(after.amount - before.amount);
  return felt + share * (feltIn(after, rootFactor) - felt);
}

/**
 * How much the skin is strained on a part of one way.
 *
 * @param path - there or back [-]
 * @param from - nearer end, as a magnitude [rad] or [mm], ≥ 0
 * @param to - farther end [rad] or [mm], > `from`
 * @param rootFactor - factor on strains at the roots [-], ≥ 1
 * @returns strains as fractions, at both ends and in all states between
 */
export function strainsOver(path: SolvedPath, from: number, to: number, rootFactor: number): readonly number[] {
  const [isBefore, isPassed] = [isUpTo(from), isUpTo(to)];
  const between = path.points.filter((point) => isPassed(point) && !isBefore(point));
  const ends = [from, to].map((amount) => strainAt(path, amount, rootFactor));
  return [...ends, ...between.map((point) => feltIn(point, rootFactor))];
}

/** The largest of some figure of the states up to an amount. */
function mostUpTo(solved: Solved, amount: number, figure: (point: SolvedPoint) => number): number {
  return upTo(solved, amount).reduce((most, point) => Math.max(most, figure(point)), 0);
}

/**
 * The largest strains on the way to an amount, either way of the movement.
 *
 * @param solved - the whole way [-]
 * @param amount - how far [rad] or [mm], > 0
 * @returns between the roots and at the roots, as fractions, without root factors
 */
export function strainsUpTo(solved: Solved, amount: number): { readonly within: number; readonly atRoots: number } {
  return {
    within: mostUpTo(solved, amount, ({ peakWithin }) => peakWithin),
    atRoots: mostUpTo(solved, amount, ({ peakAtEnds }) => peakAtEnds),
  };
}

/** An effort per MPa on the way, with the largest strain of the skin there. */
interface Pushed {
  readonly effort: number;
  readonly strain: number;
}

/** The state that is felt most, and what is felt there. */
interface FeltMost extends Pushed {
  readonly felt: number;
}

/** Efforts on the way to an amount, counted along the movement: of states, and of limits between them. */
function pushedUpTo(solved: Solved, amount: number): readonly Pushed[] {
  return waysTo(solved, amount).flatMap(({ path: { points, events }, most }) => {
    const isPassed = isUpTo(most);
    const states = points
      .filter(isPassed)
      .map((point) => ({ effort: point.effort * Math.sign(point.amount), strain: feltIn(point, 1) }));
    const limits = events.filter(isPassed).map((event) => {
      const next = points.find((point) => Math.abs(point.amount) >= Math.abs(event.amount)) ?? points.at(-1);
      return { effort: event.effort * Math.sign(event.amount), strain: next ? feltIn(next, 1) : 0 };
    });
    return [...states, ...limits];
  });
}

/**
 * The largest effort on the way to an amount, either way of the movement, limits between points included.
 *
 * @param solved - the whole way [-]
 * @param amount - how far [rad] or [mm], > 0
 * @param felt - what is felt of an effort [mm³] or [mm²] at a strain of the skin [-]; the effort itself when left out
 * @returns effort per MPa: [mm³] for a moment, [mm²] for a force, or what is felt of it, ≥ 0
 */
export function effortUpTo(
  solved: Solved,
  amount: number,
  felt: (effort: number, strain: number) => number = (effort) => effort,
): number {
  return hardestUpTo(solved, amount, felt).felt;
}

/**
 * The state on the way to an amount in which it pushes back hardest.
 *
 * @param solved - the whole way [-]
 * @param amount - how far [rad] or [mm], > 0
 * @param felt - what is felt of an effort [mm³] or [mm²] at a strain of the skin [-]
 * @returns effort per MPa [mm³] or [mm²] and strain of the skin there as a fraction, and what is felt of it; all 0 where
 *   nothing pushes back
 */
export function hardestUpTo(
  solved: Solved,
  amount: number,
  felt: (effort: number, strain: number) => number,
): FeltMost {
  const start: FeltMost = { effort: 0, strain: 0, felt: 0 };
  return pushedUpTo(solved, amount).reduce<FeltMost>((most, pushed) => {
    const here = felt(pushed.effort, pushed.strain);
    return here > most.felt ? { ...pushed, felt: here } : most;
  }, start);
}

/**
 * The amount at which the skin first reaches a strain; past the end of the way in proportion to its last state.
 *
 * @param solved - the whole way [-]
 * @param strain - as a fraction [-], ≥ 0
 * @param rootFactor - factor on strains at the roots [-], ≥ 1
 * @returns amount [rad] or [mm], on the wanted side, or on either where it goes as far to both; Infinity where nothing strains
 */
export function amountAtStrain(solved: Solved, strain: number, rootFactor: number): number {
  return Math.min(...pathsOf(solved).map((path) => amountOn(path, strain, rootFactor)));
}

function amountOn({ points }: SolvedPath, strain: number, rootFactor: number): number {
  const felt = (point: SolvedPoint) => feltIn(point, rootFactor);
  const next = points.findIndex((point) => felt(point) >= strain);
  const [before, after] = [points[next - 1], points[next]];
  if (after && before) {
    const share = (strain - felt(before)) / (felt(after) - felt(before));
    return Math.abs(before.amount + share * (after.amount - before.amount));
  }
  const last = points.at(-1);
  if (after || !last) return 0;
  const most = points.reduce((largest, point) => Math.max(largest, felt(point)), 0);
  return most > 0 ? (Math.abs(last.amount) * strain) / most : Number.POSITIVE_INFINITY;
}

/**
 * The state at an amount on the way there, by straight lines between the points.
 *
 * @param solved - the whole way [-]
 * @param amount - [rad] or [mm]; negative for the way back
 * @returns effort per MPa, energy per MPa; those of the nearest end beyond the way
 */
export function readAt(solved: Solved, amount: number): { readonly effort: number; readonly energy: number } {
  const { points } = amount < 0 && solved.back ? solved.back : solved.forward;
  const size = Math.abs(amount);
  const next = points.findIndex((point) => Math.abs(point.amount) >= size);
  const [before, after] = [points[Math.max(0, next - 1)], points[next]];
  const last = points.at(-1);
  if (!before || !last) return { effort: 0, energy: 0 };
  if (!after) return { effort: last.effort, energy: last.energy };
  const span = Math.abs(after.amount) - Math.abs(before.amount);
  const share = span > 0 ? (size - Math.abs(before.amount)) / span : 1;
  const between = (of: (point: SolvedPoint) => number) => of(before) + share * (of(after) - of(before));
  return { effort: between((point) => point.effort), energy: between((point) => point.energy) };
}

/**
 * The second place in which a joint rests by itself.
 *
 * @param solved - the whole way [-]
 * @returns where it rests, or undefined when it always comes back
 */
export function secondRest({ forward }: Solved): SolvedEvent | undefined {
  return forward.events.find((event) => event.kind === 'rest' && event.stable);
}

/**
 * The least clear distance on the way to an amount, either way of the movement.
 *
 * @param solved - the whole way [-]
 * @param amount - how far [rad] or [mm], > 0
 * @returns the gap [mm] and where; undefined where nothing can touch
 */
export function leastGap(solved: Solved, amount: number): MetGap | undefined {
  const met = upTo(solved, amount).flatMap(({ gap, amount: at }) => (gap ? [{ ...gap, amount: at }] : []));
  // What touches between two states that are clear; at the very amount it is clear still.
  const between = waysTo(solved, amount).flatMap(({ path: { touches }, most }) =>
    touches && Math.abs(touches.amount) < Math.abs(most) * (1 - 1e-9) ? [touches] : [],
  );
  return [...met, ...between].reduce<MetGap | undefined>(
    (least, gap) => (least === undefined || gap.gap < least.gap ? gap : least),
    undefined,
  );
}

/**
 * The amount up to which a joint does not touch itself.
 *
 * @param solved - the whole way [-]
 * @returns amount [rad] or [mm], on the wanted side, or on either where it goes as far to both; Infinity where it stays clear
 */
export function touchesAt(solved: Solved): number {
  return Math.min(...pathsOf(solved).map(({ touches }) => Math.abs(touches?.amount ?? Number.POSITIVE_INFINITY)));
}

/**
 * How far a way is known, on the shorter side where it goes as far to both.
 *
 * @param solved - the whole way [-]
 * @returns amount [rad] or [mm], ≥ 0
 */
export function knownUpTo(solved: Solved): number {
  const ends = pathsOf(solved).map(({ points }) =>
    points.reduce((most, point) => Math.max(most, Math.abs(point.amount)), 0),
  );
  return Math.min(...ends);
}
