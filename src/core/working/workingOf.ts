import type { Assessment } from '../design/assessment.ts';
import type { HandForm, Sizes } from '../flexures/family.ts';
import { workingAsked, type WorkingAsked } from './asked.ts';
import { chanceSteps } from './chance.ts';
import { effortSteps } from './effort.ts';
import { kindWorking } from './kinds.ts';
import { lifeSteps } from './life.ts';
import { movementSteps } from './movement.ts';
import { rootSteps } from './root.ts';
import { setSteps } from './set.ts';
import type { Step, WorkingSection } from './step.ts';
import { thinSectionSteps } from './thinSection.ts';

/** How a joint comes by its figures, formula by formula. */
export interface Working {
  readonly sections: readonly WorkingSection[];
  /** Where the solver's figures stand and hand forms only estimate: by how much they may differ, and why. */
  readonly estimate?: Pick<HandForm<Sizes>, 'rel' | 'because'> & {
    /** Whether these sizes lie within what the form was made for. */
    readonly applies: boolean;
    /** The solver's figure over the one by hand. */
    readonly strainRatio: number;
    readonly effortRatio: number;
  };
}

/**
 * The working of an assessed joint.
 *
 * @param assessment - of a joint, by hand or with the solver's answer [-]
 * @returns its formulas in the order of the argument: section, movement, hand forms, root, effort, set, life, chance
 *
 * Source: plane-bending, wide-strip, roark-17.1, elastic-plastic, strain-life.
 */
export function workingOf(assessment: Assessment): Working {
  const asked = workingAsked(assessment);
  const sections = [
    { id: 'section', steps: thinSectionSteps(asked) },
    { id: 'movement', steps: movementSteps(asked) },
    { id: 'hand', steps: handSteps(asked) },
    { id: 'root', steps: rootSteps(asked) },
    { id: 'effort', steps: effortSteps(asked) },
    { id: 'set', steps: setSteps(asked) },
    { id: 'life', steps: lifeSteps(asked) },
    { id: 'chance', steps: chanceSteps(asked) },
  ] as const satisfies readonly WorkingSection[];
  const estimate = estimateOf(asked);
  return { sections: sections.filter(({ steps }) => steps.length > 0), ...(estimate ? { estimate } : {}) };
}

function strainForm({ asked }: WorkingAsked): HandForm<Sizes> {
  const form = asked.family.handForms.find((one) => one.drive === asked.drive && one.peakStrain !== undefined);
  if (!form) throw new RangeError(`${asked.family.id} has no hand form for ${asked.drive}`);
  return form;
}

function handSteps(asked: WorkingAsked): readonly Step[] {
  const { sizes, thickness, amount, family, drive } = asked.asked;
  const steps = kindWorking(family.id)?.drives[drive];
  if (!steps) throw new RangeError(`${family.id} has no working for ${drive}`);
  return steps({ ...asked, sizes, thickness, amount, form: strainForm(asked) });
}

function estimateOf(asked: WorkingAsked): Working['estimate'] {
  const { effortWay, byHand, assessment } = asked;
  if (!effortWay) return undefined;
  const form = strainForm(asked);
  const { sizes, thickness, amount } = asked.asked;
  const narrow = byHand.widthRatio ?? effortWay.widthRatio;
  return {
    rel: form.rel,
    because: form.because,
    applies: form.appliesTo(sizes, thickness, amount),
    strainRatio: assessment.strain.nominal / byHand.nominalStrain,
    effortRatio: assessment.effort.effort / (narrow * assessment.effort.modulus * byHand.effort),
  };
}
