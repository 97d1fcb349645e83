import { writeFilaments } from '../../files/filamentText.ts';
import { useTests } from '../../store/tests.ts';
import { download } from '../app/download.ts';
import { QuietButton } from '../app/QuietButton.tsx';
import { filamentFileName } from '../text/ownText.ts';
import { nextSpool, TESTS, TESTS_SAID } from '../text/testsText.ts';
import { addSpool, spoolOf } from './spools.ts';
import type { Trial } from './trial.ts';

function anotherSpool(trial: Trial): void {
  const { values, spool, prior } = trial;
  const name = nextSpool(spool?.own.tests.spool ?? values.spool);
  const printer = spool?.own.tests.printer ?? values.printer;
  const made = spoolOf({ prior, values: { ...values, spool: name, printer } });
  addSpool(made, TESTS_SAID.made(made.name, prior.name));
  useTests.getState().set({ counting: undefined });
}

/** What can be done with the spool as a whole: another begun, or the row with its tallies saved as a file. */
export function SpoolActions({ trial }: { readonly trial: Trial }) {
  const { spool } = trial;
  if (!spool) return null;
  const share = () => download(filamentFileName(spool.name), writeFilaments([spool]));
  return (
    <div className="own-actions">
      <QuietButton onClick={() => anotherSpool(trial)}>{TESTS.another}</QuietButton>
      <QuietButton onClick={share}>{TESTS.share}</QuietButton>
    </div>
  );
}
