import { mechanicsOf } from '../flexures/networks.ts';
import { outsideRange } from '../problems.ts';
import { fail, ok, type Result } from '../result.ts';
import { asRad, degrees, radians } from '../units.ts';
import { askedOf, handResponse, isExactByHand, type Respond, type Response } from './response.ts';
import { leastOf } from './joint.ts';
import type { Solve } from './rememberSolved.ts';
import { setAlong } from './setAlong.ts';
import { solveJoint, type SolveDetail } from './solveJoint.ts';
import type { Solved } from './solved.ts';
import { effortUpTo, strainsUpTo } from './solvedPath.ts';
import type { Understood } from './understand.ts';

/**
 * The answer of the solver to a checked joint. Where a hand form is exact its figures stand, and the solver only adds
 * the way there.
 *
 * Problems: `above-maximum` where pads would have met, or a flexure would have to be longer than it is;
 * `no-convergence`, `over-budget`, `cancelled` where the way ends before the wanted amount.
 *
 * @param detail - how much of the way is needed [-]
 * @param solve - what solves: each time anew, or one that remembers [-]
 * @returns what answers a joint
 */
export function bySolver(detail: SolveDetail = {}, solve: Solve = solveJoint): Respond {
  return (understood) => {
    const beyond = beyondLimit(understood);
    if (beyond) return beyond;
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
  const hand = strainOutside(understood);
  const [, first] = solved.forward.points;
  const setLeft = hand > 0 ? undefined : setAlong(solved);
  return {
    nominalStrain: Math.max(within, atRoots, hand),
    strainWithin: Math.max(within, hand),
    strainAtRoots: atRoots,
    ...(hand > Math.max(within, atRoots) ? { strainByHand: true } : {}),
    effort: effortUpTo(solved, amount),
    stiffness: first && first.amount !== 0 ? first.effort / first.amount : 0,
    widthRatio: solved.widthRatio,
    exact: true,
    ...(setLeft ? { setLeft } : {}),
    solved,
  };
}

/** Strain that the network does not see because it stands for twisting strips by springs: a form tells it. */
function strainOutside(understood: Understood): number {
  const { family, drive, sizes, thickness, amount } = askedOf(understood);
  const form = family.handForms.find((one) => one.drive === drive && one.isStrainOutside === true);
  return form?.peakStrain?.(sizes, thickness, amount) ?? 0;
}

/** What pads or lengths forbid is refused, however well it could be solved. */
function beyondLimit({ joint, drive, family, sizes, section }: Understood): Result<never> | undefined {
  const { amount } = joint.movement;
  const limit = mechanicsOf(family.id).limit?.(sizes, section.thickness, drive.id) ?? Infinity;
  if (amount <= limit) return undefined;
  const isTurn = drive.measure === 'turn';
  // Rounded down, so that what is said can be asked for.
  const max = isTurn ? radians(Math.floor(10 * degrees(asRad(limit))) / 10) : Math.floor(100 * limit) / 100;
  const range = { min: 0, max, because: 'past it pads meet, or the flexure would have to be longer than it is' };
  const cures = { low: 'raise it', high: 'ask for less, or make the flexure longer' };
  const problem = outsideRange(
    'movement.amount',
    isTurn ? 'angle' : 'travel',
    amount,
    range,
    isTurn ? '°' : 'mm',
    cures,
  );
  return problem ? fail(problem) : undefined;
}

/** A way that ends before the wanted amount is no answer to the brief; how far it goes is. */
function endsShort({ joint, drive }: Understood, { forward, back }: Solved): Result<never> | undefined {
  const { movement } = joint;
  for (const [path, field, wanted] of [
    [forward, 'movement.amount', movement.amount],
    [back, movement.ways === 'between' ? 'movement.least' : 'movement.amount', leastOf(movement)],
  ] as const) {
    if (!path) continue;
    const far = path.points.reduce((most, point) => Math.max(most, Math.abs(point.amount)), 0);
    if (far < Math.abs(wanted) * (1 - 1e-6)) {
      const say = (size: number) =>
        drive.measure === 'turn' ? `${Number(degrees(asRad(size)).toFixed(1))}°` : `${Number(size.toFixed(2))} mm`;
      const message = `No equilibrium was found past ${say(far)} of the ${say(Math.abs(wanted))} asked for; ask for less, or make it longer or thinner`;
      const code = path.stopped?.code ?? 'no-convergence';
      return fail({ code, message, field, value: Math.abs(wanted), limit: far });
    }
  }
  return undefined;
}
