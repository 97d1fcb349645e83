/** What a cell of the joint strip says under the joint's name: the verdict's word and the one number behind it. */
import type { Assessment, VerdictReason } from '../../core/design/assessment.ts';
import { effortText } from './amountText.ts';
import { inHundred, MINUS, NO_BREAK, percent } from './numbers.ts';
import { gradeWord } from './verdictText.ts';

const chanceText = ({ life }: Assessment) => `${inHundred(life.chance)} in 100`;
/** Without the word “strain”, for which a cell has no room: only strains stand in per cent. */
const strainText = ({ strain }: Assessment) => percent(strain.peak, 1);

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
  warmth: ({ warmth }) => `${warmth.temperatureC}${NO_BREAK}°C`.replace('-', MINUS),
};

/**
 * “Caution, 87 in 100”. Of an estimate the word alone: a cell has no room for “about”, and the solver’s figure follows.
 * How a section lands on lines is no estimate.
 */
export function stripText(assessment: Assessment): string {
  const { grade, reason } = assessment.verdict;
  const isKnown = !assessment.estimate || reason === 'printing';
  const number = grade === 'beyond' || !isKnown ? '' : NUMBERS[reason](assessment);
  return number === '' ? gradeWord(grade) : `${gradeWord(grade)}, ${number}`;
}

/** Of a joint whose kind is on its way, and of one whose kind did not come: opening it tries again. */
export const COMING_TEXT = '…';
export const NOT_COME_TEXT = 'Not loaded';

/** For a joint that cannot be assessed as it stands. */
export const REFUSED_TEXT = 'Cannot be assessed';
