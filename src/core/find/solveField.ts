/** Where hand forms only estimate: the most promising are solved, and what that shows corrects the estimate of the others. */
import { assess } from '../design/assess.ts';
import type { Assessment } from '../design/assessment.ts';
import { byHand } from '../design/response.ts';
import type { Candidate, Place } from './candidates.ts';
import type { Field, Met } from './field.ts';
import { BIT } from './cell.ts';
import type { Judges } from './search.ts';
import { shortfallsOf } from './shortfalls.ts';
import type { Wanted } from './wanted.ts';

/** So many are solved of one lot at a time; then all is estimated anew, so often: less often where a solve takes ten times as long. */
const AT_ONCE = 3;
const ROUNDS = { usual: 4, snaps: 2 } as const;
/** After one that touches itself the search goes on with those larger by this, until one is clear; then it halves the way back. */
const LARGER = 1.3;
const CLOSE_ENOUGH = 1.15;

interface SolveFieldAsked {
  readonly wanted: Wanted;
  /** Takes one as it is solved, and says whether it meets all that is wanted. */
  readonly take: (place: Place, candidate: Candidate, a: Assessment) => boolean;
  readonly beat: (done: number) => void;
}

/** Ways to fall short that are about how a joint moves. */
const MOVES = BIT['comes back'] | BIT.stays | BIT.touches;

/** Where the search of a lot stands. */
interface Standing {
  /** Shape and filament of those solved. */
  readonly done: Set<string>;
  /** Filaments of which one has been found. */
  readonly shown: Set<number>;
  /** The largest that touches itself, and the smallest that does not [mm]. */
  touching: number;
  clear: number;
}

/** What is worth a solve: of each filament that has shown nothing yet the smallest shape that is not solved yet. */
function promising(field: Field, { done, shown }: Standing): readonly Met[] {
  const next = new Map<number, Met>();
  for (const row of field.rows.keys()) {
    if (shown.has(row)) continue;
    const found = field.frontOf(row).find(({ at }) => !done.has(`${at}/${row}`) && !next.has(at));
    if (found) next.set(found.at, found);
  }
  return [...next.values()].toSorted((a, b) => a.size - b.size).slice(0, AT_ONCE);
}

/** How small the next may be [mm]. */
function leastSize({ touching, clear }: Standing): number {
  if (touching === 0) return 0;
  if (!Number.isFinite(clear)) return LARGER * touching;
  return clear > CLOSE_ENOUGH * touching ? Math.sqrt(touching * clear) : touching;
}

/** Solves one and notes what it tells of those beside it. */
function solveOne(
  field: Field,
  met: Met,
  { quick, solved: full }: Pick<Judges, 'quick' | 'solved'>,
  { wanted, take }: SolveFieldAsked,
  standing: Standing,
): boolean {
  const candidate = field.candidate(met);
  // An arch takes a quarter of a second, and mostly turns out not to do; others do, and are not worth solving twice.
  const isQuick = field.lot.family.snaps === true;
  const solved = (isQuick ? quick : full)(candidate.joint);
  const hand = assess(candidate.joint, byHand);
  const { estimates } = field;
  if (!solved.ok || !hand.ok) {
    estimates.drop(met.at);
    return false;
  }
  const [now, guess] = [solved.value, hand.value];
  const short = shortfallsOf(wanted, now, candidate.room, candidate.air);
  const moves = short.reduce((bits, { reason }) => bits | BIT[reason], 0) & MOVES;
  if ((moves & BIT.touches) === 0) standing.clear = Math.min(standing.clear, met.size);
  else standing.touching = Math.max(standing.touching, met.size);
  if (!estimates.has(met.at)) {
    estimates.add({
      at: met.at,
      nominal: now.strain.nominal / guess.strain.nominal,
      peak: now.strain.peak / guess.strain.peak,
      effort: now.effort.effort / guess.effort.effort,
      moves,
    });
  }
  // What is likely to be told is solved once more as any joint is.
  const told = short.length === 0 && isQuick ? full(candidate.joint) : solved;
  return told.ok && take(met, candidate, told.value);
}

/**
 * Solves the most promising of a lot, round by round.
 *
 * @param field - a lot that has been screened by hand forms [-]
 * @param judges - what solves: with few points on the way, and as any joint [-]
 * @param asked - what becomes of those solved [-]
 */
export function solveField(field: Field, judges: Pick<Judges, 'quick' | 'solved'>, asked: SolveFieldAsked): void {
  const standing: Standing = { done: new Set(), shown: new Set(), touching: 0, clear: Number.POSITIVE_INFINITY };
  const rounds = field.lot.family.snaps === true ? ROUNDS.snaps : ROUNDS.usual;
  for (let round = 0; round < rounds; round += 1) {
    const next = promising(field, standing);
    if (next.length === 0) return;
    next.forEach((met, i) => {
      standing.done.add(`${met.at}/${met.row}`);
      if (solveOne(field, met, judges, asked, standing)) standing.shown.add(met.row);
      asked.beat((round + (i + 1) / next.length) / rounds);
    });
    // What the last ones show is of no use to anyone.
    if (round + 1 < rounds) field.lookAgain(leastSize(standing), () => asked.beat((round + 1) / rounds));
  }
}
