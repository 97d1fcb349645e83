/** Tallies of a file, put on the spool that is looked at in one step: each once, as the file has it. */
import type { Tally } from '../../core/material/tally.ts';
import type { Problem } from '../../core/problems.ts';
import type { Result } from '../../core/result.ts';
import { checkTests } from '../../core/tallies/checkTally.ts';
import { withTally, withTallyChanged } from '../../core/tallies/learnRow.ts';
import { sameValue } from '../../store/sameValue.ts';
import { changeFilament } from '../../store/shelf.ts';
import { sentence } from '../text/said.ts';
import { CSV } from '../text/testsText.ts';
import { addSpool, spoolOf, taught } from './spools.ts';
import { trialNow, type Spool } from './trial.ts';

/** More problems than this say no more than these. */
const MOST_TOLD = 5;

/** Problems of a file in its own words; of many the first. */
export function notesText(problems: readonly Problem[]): string {
  const told = problems.slice(0, MOST_TOLD).map(({ message }) => sentence(message));
  const rest = problems.length - told.length;
  return [...told, ...(rest > 0 ? [CSV.andMore(rest)] : [])].join(' ');
}

/** Puts them on the spool, or says why none can be. */
export function takeTallies(read: Result<readonly Tally[]>, file: string): string | undefined {
  if (!read.ok) return notesText(read.problems);
  const trial = trialNow();
  const base: Spool = trial.spool ?? spoolOf(trial);
  const { tallies } = base.own.tests;
  const known = (id: string) => tallies.find((one) => one.id === id);
  const news = read.value.filter((tally) => !sameValue(known(tally.id), tally));
  if (news.length === 0) return CSV.known(file);
  // What was put right in a spreadsheet takes the place of what it was.
  const put = (row: Spool, tally: Tally) =>
    (known(tally.id) ? withTallyChanged(row, tally) : withTally(row, tally)) as Spool;
  const full = news.reduce(put, base);
  const [problem] = checkTests(full.own.tests);
  if (problem) return sentence(problem.message);
  const [row, said] = [taught(full) as Spool, CSV.taken(news.length, file, base.name)];
  if (trial.spool) changeFilament(row, said);
  else addSpool(row, said);
  return undefined;
}
