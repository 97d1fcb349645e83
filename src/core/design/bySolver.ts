import { fail, ok, type Result } from '../result.ts';
import { asRad, degrees } from '../units.ts';
import { askedOf, handResponse, isExactByHand, type Respond, type Response } from './response.ts';
import type { Solve } from './rememberSolved.ts';
import { solveJoint, type SolveDetail } from './solveJoint.ts';
import type { Solved } from './solved.ts';
import { effortUpTo, strainsUpTo } from './solvedPath.ts';
import type { Understood } from './understand.ts';

/**
 * The answer of the solver to a checked joint. Where a hand form is exact its figures stand, and the solver only adds
 * the way there.
 *
 * Problems: `no-convergence`, `over-budget`, `cancelled` where the way ends before the wanted amount.
 *
 * @param detail - how much of the way is needed [-]
 * @param solve - what solves: each time anew, or one that remembers [-]
 * @returns what answers a joint
 */
export function bySolver(detail: SolveDetail = {}, solve: Solve = solveJoint): Respond {
  return (understood) => {
    const asked = askedOf(understood);
    const isExact = isExactByHand(asked);
    if (isExact && detail.whole === false) return ok(handResponse(asked));
    const answered = solve(understood, detail);
    if (!answered.ok) return answered;
    const short = endsShort(understood, answered.value);
    if (short) return short;
    const solved = answered.value;
    return ok(isExact ? { ...handResponse(asked), strainByHand: true, solved } : solvedResponse(understood, solved));
  };
}

function solvedResponse(understood: Understood, solved: Solved): Response {
  const { amount } = understood.joint.movement;
  const { within, atRoots } = strainsUpTo(solved, amount);
  const hand = exactStrain(understood);
  const [, first] = solved.forward.points;
  return {
    nominalStrain: Math.max(within, atRoots, hand),
    strainWithin: Math.max(within, hand),
    strainAtRoots: atRoots,
    ...(hand > Math.max(within, atRoots) ? { strainByHand: true } : {}),
    effort: effortUpTo(solved, amount),
    stiffness: first && first.amount !== 0 ? first.effort / first.amount : 0,
    widthRatio: solved.widthRatio,
    exact: true,
    solved,
  };
}

/** Strain that the network does not see because it stands for twisting strips by springs: an exact form tells it. */
function exactStrain(understood: Understood): number {
  const { family, drive, sizes, thickness, amount } = askedOf(understood);
  const form = family.handForms.find((one) => one.drive === drive && one.peakStrain !== undefined && one.rel <= 1e-6);
  return form?.appliesTo(sizes, thickness, amount) === true ? (form.peakStrain?.(sizes, thickness, amount) ?? 0) : 0;
}

/** A way that ends before the wanted amount is no answer to the brief; how far it goes is. */
function endsShort({ joint, drive }: Understood, { amount, forward, back }: Solved): Result<never> | undefined {
  for (const path of [forward, ...(back ? [back] : [])]) {
    const far = path.points.reduce((most, point) => Math.max(most, Math.abs(point.amount)), 0);
    if (far < amount * (1 - 1e-6)) {
      const say = (size: number) =>
        drive.measure === 'turn' ? `${Number(degrees(asRad(size)).toFixed(1))}°` : `${Number(size.toFixed(2))} mm`;
      const message = `No equilibrium was found past ${say(far)} of the ${say(joint.movement.amount)} asked for; ask for less, or make it longer or thinner`;
      const code = path.stopped?.code ?? 'no-convergence';
      return fail({ code, message, field: 'movement.amount', value: joint.movement.amount, limit: far });
    }
  }
  return undefined;
}
