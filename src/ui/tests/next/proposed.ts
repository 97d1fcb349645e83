/** What could be tested next for the joint, by how sure it is now. */
import type { Assessment } from '../../../core/design/assessment.ts';
import type { DoubtAnswer } from '../../../core/design/doubtAnswer.ts';
import { wholeRow } from '../../../core/material/wholeRow.ts';
import { nextTests, type NextTests } from '../../../core/tallies/nextTests.ts';
import type { Made } from '../pieces.ts';
import { isFlexes } from '../tally/counting.ts';
import type { Trial } from '../trial.ts';

/** Of densities: a row has [kg/m³]. */
const G_PER_MM3 = 1e-6;

export function proposed(
  { prior, spool }: Pick<Trial, 'prior' | 'spool'>,
  { pieces, asked }: Pick<Made, 'pieces' | 'asked'>,
  assessment: Assessment,
  doubt: DoubtAnswer,
): NextTests {
  const flexes = spool?.own.tests.tallies.filter(isFlexes).filter(({ leftOut }) => !leftOut) ?? [];
  const density = wholeRow(prior).properties.density.typical * G_PER_MM3;
  return nextTests({ assessment, doubt, prior, flexes, pieces, asked, density });
}
