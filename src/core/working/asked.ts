/** What the working of a joint starts from. */
import type { Assessment } from '../design/assessment.ts';
import { askedOf, handResponse, isExactByHand, type Asked, type Response } from '../design/response.ts';
import { strainsUpTo } from '../design/solvedPath.ts';
import type { Solved } from '../design/solved.ts';
import { understand, type Understood } from '../design/understand.ts';
import { soundness } from '../material/choose.ts';
import { given, type Given } from './step.ts';

/** An assessed joint with what its hand forms say, and by whose figures the assessment goes on. */
export interface WorkingAsked {
  readonly assessment: Assessment;
  readonly understood: Understood;
  /** What hand forms are asked: sizes as they act [mm], thickness [mm], amount [rad] or [mm]. */
  readonly asked: Asked;
  /** What they answer, per MPa. */
  readonly byHand: Response;
  /** The solver's way, where its strain is what the assessment stands on; absent where hand forms are exact or alone. */
  readonly way?: Solved;
  /** The solver's way, where its effort is. */
  readonly effortWay?: Solved;
}

/**
 * An assessed joint as its working needs it.
 *
 * @param assessment - of a joint, by hand or with the solver's answer [-]
 * @returns what the working starts from [-]
 */
export function workingAsked(assessment: Assessment): WorkingAsked {
  const checked = understand(assessment.joint);
  if (!checked.ok) throw new RangeError('an assessment stands on a joint that is no longer understood');
  const understood = checked.value;
  const asked = askedOf(understood);
  const byHand = handResponse(asked);
  const { solved } = assessment;
  if (!solved || isExactByHand(asked)) return { assessment, understood, asked, byHand };
  return {
    assessment,
    understood,
    asked,
    byHand,
    effortWay: solved,
    ...(strainIsSolved(understood, byHand, solved) ? { way: solved } : {}),
  };
}

/** A form that knows a strain of which the network knows nothing tells it where it is the larger one. */
function strainIsSolved({ family, drive, joint }: Understood, { nominalStrain }: Response, solved: Solved): boolean {
  const isOutside = family.handForms.some((form) => form.drive === drive.id && form.isStrainOutside === true);
  const { within, atRoots } = strainsUpTo(solved, joint.movement.amount);
  return !isOutside || nominalStrain <= Math.max(within, atRoots);
}

/**
 * The modulus that the joint bends with.
 *
 * @param asked - what the working starts from [-]
 * @returns E [MPa]
 */
export function modulusGiven({ assessment: { effort } }: Pick<WorkingAsked, 'assessment'>): Given {
  return given('E', effort.modulus, 'MPa', 'filament', soundness(effort.provenance));
}
