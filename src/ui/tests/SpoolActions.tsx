import { writeFilaments } from '../../files/filamentText.ts';
import { writeTallies } from '../../files/tallyCsv.ts';
import { useTests } from '../../store/tests.ts';
import { download } from '../app/download.ts';
import { QuietButton } from '../app/QuietButton.tsx';
import { useChooser } from '../app/useChooser.tsx';
import { filamentFileName } from '../text/ownText.ts';
import { nameOfFile } from '../text/shellText.ts';
import { CSV, nextSpool, TESTS, TESTS_SAID } from '../text/testsText.ts';
import { addSpool, spoolOf } from './spools.ts';
import { takeCsv } from './takeCsv.ts';
import type { Spool, Trial } from './trial.ts';

function anotherSpool(trial: Trial): void {
  const { values, spool, prior } = trial;
  const name = nextSpool(spool?.own.tests.spool ?? values.spool);
  const printer = spool?.own.tests.printer ?? values.printer;
  const made = spoolOf({ prior, values: { ...values, spool: name, printer } });
  addSpool(made, TESTS_SAID.made(made.name, prior.name));
  useTests.getState().set({ counting: undefined });
}

function Outgoing({ spool }: { readonly spool: Spool }) {
  const csv = () => download(nameOfFile(spool.name, 'tallies', '.tallies.csv'), writeTallies(spool), 'text/csv');
  return (
    <>
      <QuietButton onClick={csv}>{CSV.out}</QuietButton>
      <QuietButton onClick={() => download(filamentFileName(spool.name), writeFilaments([spool]))}>
        {CSV.share}
      </QuietButton>
    </>
  );
}

/** What can be done with the spool as a whole: another begun, its tallies taken out and brought in. */
export function SpoolActions({ trial }: { readonly trial: Trial }) {
  const { chooser, open } = useChooser({ label: CSV.chooser, accept: '.csv,text/csv', take: takeCsv });
  return (
    <div className="own-actions">
      {trial.spool && <QuietButton onClick={() => anotherSpool(trial)}>{TESTS.another}</QuietButton>}
      <QuietButton onClick={open}>{CSV.into}</QuietButton>
      {chooser}
      {trial.spool && <Outgoing spool={trial.spool} />}
    </div>
  );
}
