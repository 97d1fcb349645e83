import { ok } from '../result.ts';
import type { Assessment } from './assessment.ts';
import { assess, type Judge } from './assess.ts';
import { askedOf, handResponse, type Respond } from './response.ts';
import { effortUpTo, strainsUpTo } from './solvedPath.ts';
import { understand } from './understand.ts';

/**
 * By how much a figure of a hand form grows. Forms of what snaps tell the push where it ends, which may be none, or be to the
 * other side: then nothing is known of it.
 */
function grown(there: number, here: number): number {
  const ratio = there / here;
  return ratio > 0 && Number.isFinite(ratio) ? ratio : 1;
}

/**
 * What assesses joints like one that the solver has answered without solving: its strain and effort, grown as the hand
 * form says. It does not know what only a solved way tells: where a joint rests, and whether it touches itself.
 *
 * For choosing what is worth a solve, never for an answer.
 *
 * @param known - a joint as solved [-]
 * @param hope - strains and efforts are taken this many times as large [-]; below 1 it lets doubtful ones through
 * @returns what assesses each joint of the same kind and drive, as an estimate
 */
export function nearJudge(known: Assessment, hope = 1): Judge {
  const own = understand(known.joint);
  if (!own.ok || !known.solved) throw new RangeError('only a solved joint tells what is near it');
  const { amount } = known.joint.movement;
  const hand = handResponse(askedOf(own.value));
  const seen = strainsUpTo(known.solved, amount);
  const { atRoots } = seen;
  // A strain that no member shows lies out of the network's sight, between the roots.
  const within = known.strain.nominal > Math.max(seen.within, atRoots) ? known.strain.nominal : seen.within;
  const effort = effortUpTo(known.solved, amount);
  const stiffness = known.effort.stiffness / known.effort.modulus;
  const respond: Respond = (understood) => {
    const there = handResponse(askedOf(understood));
    const strained = (hope * there.nominalStrain) / hand.nominalStrain;
    return ok({
      nominalStrain: known.strain.nominal * strained,
      strainWithin: within * strained,
      strainAtRoots: atRoots * strained,
      effort: hope * effort * grown(there.effort, hand.effort),
      stiffness: stiffness * grown(there.stiffness, hand.stiffness),
      widthRatio: known.effort.widthRatio,
      exact: false,
    });
  };
  return (joint) => assess(joint, respond);
}
