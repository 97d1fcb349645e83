/** Sentences of the working: what its parts are called, what came of working it out, and where numbers come from. */
import type { GivenFrom, WorkingSectionId } from '../../core/working/step.ts';
import type { Working } from '../../core/working/workingOf.ts';
import { counted, share } from './numbers.ts';

export const WORKING = {
  how: 'How',
  comesBy: 'comes by its figures, formula by formula.',
  joint: 'Joint',
  units:
    'Lengths in mm, forces in N, stresses in MPa, as the program works; every step goes on with all its figures and shows four.',
  putIn: 'Put in',
  program: 'The program says',
  alike: 'the same',
  bothSides: 'Both sides',
  noJoint: 'There is no joint to work out yet.',
  toJoints: 'Add one in Joints.',
  solving: 'The solver is at work; until it answers, the working is that of the hand forms.',
  title: 'Working',
  of: 'Of',
  caution: 'Estimates from nominal data, not a safety case. Every formula stands within the limits said beside it.',
  print: 'Print',
  openJoint: 'Back to the joint',
} as const;

export const WORKING_SECTIONS: Readonly<Record<WorkingSectionId, string>> = {
  section: 'The thin section',
  movement: 'The movement',
  hand: 'Strain and effort by hand',
  solved: 'By the solver',
  root: 'What the root adds',
  effort: 'Effort',
  set: 'What stays bent',
  life: 'Life',
  chance: 'How sure',
};

export const GIVEN_FROM: Readonly<Record<GivenFrom, string>> = {
  brief: 'the brief',
  size: 'a size',
  print: 'the print profile',
  filament: 'the filament',
  constant: 'the source',
  summed: 'found by the program',
  solver: 'the solver',
};

/** What came of all formulas. */
export function workedText(steps: number, failed: number, different: number): string {
  const all = `${counted(steps, 'formula')} worked out with units by computer algebra, from the very inputs`;
  if (failed + different === 0) return `${all}: to every figure shown they give what the program says.`;
  const faults = [
    ...(failed > 0 ? [`in ${failed} the units do not agree`] : []),
    ...(different > 0 ? [`${different} differ from what the program says`] : []),
  ];
  return `${all}: ${faults.join(' and ')}. Do not trust these figures; please tell us the joint.`;
}

function times(ratio: number): string {
  return `${ratio.toFixed(ratio < 10 ? 2 : 0)} times`;
}

/** What the solver adds to hand forms that only estimate. */
export function estimateText({
  applies,
  rel,
  because,
  strainRatio,
  effortRatio,
}: NonNullable<Working['estimate']>): string {
  const found = `The solver follows the true curve: it strains ${times(strainRatio)} what the hand form says, and pushes back ${times(effortRatio)} as hard.`;
  const trust = applies
    ? `Within its limits the hand form holds to ${share(rel)}: ${because}.`
    : `These sizes lie outside what the hand form was made for; inside it would hold to ${share(rel)}: ${because}.`;
  return `${found} ${trust}`;
}

export function failedText(why: string): string {
  return `The units do not agree: ${why}`;
}

export function differsText(off: number): string {
  return `differs by ${share(off)}`;
}
