import '../flexures/index.ts';
import { assess, type Judge } from '../design/assess.ts';
import { bySolver } from '../design/bySolver.ts';
import { byHand, type Respond } from '../design/response.ts';
import { rememberSolved, type Solve } from '../design/rememberSolved.ts';
import { failIfAny, ok, type Result } from '../result.ts';
import { checkWanted } from './checkWanted.ts';
import type { FindAnswer } from './findAnswer.ts';
import { lotsFor, noneCan } from './lots.ts';
import { Search } from './search.ts';
import type { Wanted } from './wanted.ts';

/** How a search tells what it does, and how much of what it finds. */
export interface FindAsked {
  /** Called every few milliseconds, with the share that is done. */
  readonly alive?: (share: number) => void;
  /** Called with all that has been found so far, a few times a second. */
  readonly tell?: (soFar: FindAnswer) => void;
  /** Milliseconds by any clock: says only when to tell. */
  readonly now?: () => number;
  /** What solves, where it is remembered from one search to the next. */
  readonly solve?: Solve;
}

/**
 * Joints that meet what is looked for: every ticked kind and filament, every combination of sizes on their rungs.
 *
 * Hand forms screen them all. Where these are exact, what they say stands, and those told are solved once more for what only
 * the solver sees. Where they only estimate, the most promising are solved, what that shows corrects the estimate of
 * the others, and in the end only solved ones are told; such a kind may hold more than is found.
 *
 * Problems: those of `checkWanted`; `none-can` where no ticked kind moves so at all.
 *
 * @param wanted - what is looked for: room [mm], effort [N·mm] or [N], amounts [rad] or [mm] [-]
 * @param asked - whom to tell on the way [-]
 * @returns designs than which nothing of their kind and filament is both smaller and surer, and why others fell short
 *
 * Source: plane-bending, strain-life, reissner-rod.
 */
export function find(wanted: Wanted, asked: FindAsked = {}): Result<FindAnswer> {
  const wrong = checkWanted(wanted);
  const cannot = wrong.length === 0 ? noneCan(wanted) : undefined;
  const refused = failIfAny([...wrong, ...(cannot ? [cannot] : [])]);
  if (refused) return refused;
  const { solve = rememberSolved(undefined, REMEMBERED) } = asked;
  // What lies beyond the wanted amount matters only where it is asked whether it stays.
  const beyond = wanted.movement.stays !== undefined;
  const search = new Search(lotsFor(wanted), wanted, {
    byHand: judge(byHand),
    quick: judge(bySolver({ beyond, parts: PARTS }, solve)),
    solved: judge(bySolver({ beyond }, solve)),
    ...asked,
  });
  search.run();
  return ok(search.answer(true));
}

function judge(respond: Respond): Judge {
  return (joint) => assess(joint, respond);
}

/** Points up to the wanted amount of those that are only tried: half as many as of a joint that is told or drawn. */
const PARTS = 12;
/** Solved ways are large, and hardly one comes up twice in a search. */
const REMEMBERED = 24;
