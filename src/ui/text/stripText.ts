/** What a cell of the joint strip says under the joint's name: the verdict's word and the one number behind it. */
import type { Assessment, VerdictReason } from '../../core/design/assessment.ts';
import { effortText } from './amountText.ts';
import { inHundred, percent } from './numbers.ts';
import { gradeWord } from './verdictText.ts';

const chanceText = ({ life }: Assessment) => `${inHundred(life.chance)} in 100`;
const strainText = ({ strain }: Assessment) => `${percent(strain.peak, 1)} strain`;

const NUMBERS: Readonly<Record<VerdictReason, (assessment: Assessment) => string>> = {
  life: chanceText,
  'within all limits': chanceText,
  repeated: strainText,
  single: strainText,
  yield: strainText,
  break: strainText,
  held: strainText,
  printing: ({ fit }) => `${fit.exact.toFixed(2)} ${fit.countOf}`,
  'first flex': () => 'first flex',
  'beyond data': () => '',
  effort: ({ effort }) => effortText(effort.effort, effort.measure),
  stays: () => 'stays',
  'comes back': () => 'comes back',
  touches: () => 'touches itself',
};

/** “Caution, 87 in 100”; “Caution, about 87 in 100” of an estimate. */
export function stripText(assessment: Assessment): string {
  const { grade, reason } = assessment.verdict;
  const number = grade === 'beyond' ? '' : NUMBERS[reason](assessment);
  if (number === '') return gradeWord(grade);
  return `${gradeWord(grade)}, ${assessment.estimate && /\d/.test(number) ? 'about ' : ''}${number}`;
}

/** For a joint that cannot be assessed as it stands. */
export const REFUSED_TEXT = 'Cannot be assessed';
