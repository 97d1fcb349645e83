/** Where a joint first touches itself on its way, between the states that were solved. */
import { isTouching, TOUCHING } from '../geometry/touching.ts';
import type { GapFinder } from '../geometry/gaps.ts';
import type { Mm } from '../units.ts';
import { betweenStates, type Between } from './betweenStates.ts';
import type { MetGap, SolvedPoint } from './solved.ts';

/** A touch is told when it is known to so much of its amount: less than a protractor reads, and well within half a per cent. */
const CLOSE = 0.002;
/** Places between two states, as shares of the way from one to the next, where a gap that falls and rises is looked at. */
const WITHIN = [0.25, 0.5, 0.75] as const;

/** One look at an amount: how clear it is there for sure [mm], and where it is nearest. */
interface Look {
  readonly amount: number;
  readonly clear: Mm;
  readonly met?: MetGap;
}

/**
 * Where a way first comes to touch, on shapes drawn through the states next to it.
 *
 * It is looked for between the last clear state and the first that touches, and where the gap falls and rises again. Told
 * is the clear side of what is left, so never later than it is by more than those shapes are out; where the states leap,
 * as in a snap, it is the last state before.
 *
 * @param points - states in the order in which they are passed, with their gaps [mm]
 * @param gapsOf - finds the gaps of a state [mm]
 * @returns the amount [rad] or [mm] up to which it is clear, and where it touches then; undefined where it stays clear
 */
export function firstTouch(points: readonly SolvedPoint[], gapsOf: GapFinder): MetGap | undefined {
  const looks = points.map(lookOf);
  for (const [i, look] of looks.entries()) {
    const before = looks[i - 1];
    if (touches(look)) return before ? touchBetween(before, look, lookBetween(points, i, gapsOf)) : look.met;
    const found = dips(looks, i) ? touchInDip(points, looks, i, gapsOf) : undefined;
    if (found) return found;
  }
  return undefined;
}

function lookOf({ amount, gap }: SolvedPoint): Look {
  return gap ? { amount, clear: gap.gap, met: { ...gap, amount } } : { amount, clear: Number.POSITIVE_INFINITY };
}

const touches = ({ clear }: Look) => isTouching(clear);

type LookAt = (amount: number) => Look;

/** Looks at any amount between a state and the one before it; undefined where the states leap. */
function lookBetween(points: readonly SolvedPoint[], i: number, gapsOf: GapFinder): LookAt | undefined {
  const between: Between | undefined = betweenStates(points, i);
  if (!between) return undefined;
  return (amount) => {
    const { shapes, poses, doubt } = between(amount);
    const { least } = gapsOf(shapes, poses);
    if (!least) return { amount, clear: Number.POSITIVE_INFINITY };
    return { amount, clear: least.gap - doubt, met: { ...least, amount } };
  };
}

/** In a leap nothing is known but that it is still clear before. */
function touchBetween(clear: Look, met: Look, lookAt: LookAt | undefined): MetGap | undefined {
  if (lookAt) return closeIn(clear, met, lookAt);
  const told = clear.met ?? met.met;
  return told && { ...told, amount: clear.amount };
}

/** From both sides, by straight lines, and by halves where those make little headway. */
function closeIn(from: Look, to: Look, lookAt: LookAt): MetGap | undefined {
  let [clear, met] = [from, to];
  const close = CLOSE * Math.abs(to.amount);
  for (let looks = 1; Math.abs(met.amount - clear.amount) > close; looks += 1) {
    const share = looks % 3 === 0 ? 0.5 : shareBetween(clear, met);
    const least = close / 2 / Math.abs(met.amount - clear.amount);
    const inside = Math.min(1 - least, Math.max(least, share));
    const look = lookAt(clear.amount + inside * (met.amount - clear.amount));
    if (touches(look)) met = look;
    else clear = look;
  }
  return met.met && { ...met.met, amount: clear.amount };
}

function shareBetween(clear: Look, met: Look): number {
  return Number.isFinite(clear.clear) ? (clear.clear - TOUCHING) / (clear.clear - met.clear) : 0.5;
}

/** Whether the gap is least in a state, and so near nothing that it may be nothing beside it. */
function dips(looks: readonly Look[], i: number): boolean {
  const [before, at, after] = [looks[i - 1], looks[i], looks[i + 1]];
  if (!before || !at || !after || touches(after)) return false;
  const [fall, rise] = [before.clear - at.clear, after.clear - at.clear];
  return fall >= 0 && rise >= 0 && Number.isFinite(fall + rise) && isTouching(at.clear - Math.max(fall, rise) / 2);
}

function touchInDip(
  points: readonly SolvedPoint[],
  looks: readonly Look[],
  i: number,
  gapsOf: GapFinder,
): MetGap | undefined {
  for (const next of [i, i + 1]) {
    const lookAt = lookBetween(points, next, gapsOf);
    const [from, to] = [looks[next - 1], looks[next]];
    if (!lookAt || !from || !to) continue;
    let clear = from;
    for (const share of WITHIN) {
      const look = lookAt(from.amount + share * (to.amount - from.amount));
      if (touches(look)) return closeIn(clear, look, lookAt);
      clear = look;
    }
  }
  return undefined;
}
