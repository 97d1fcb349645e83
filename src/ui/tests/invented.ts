/** Counts that nobody made, to show what counts do; they stand on a spool that is called so. */
import type { FlexTally } from '../../core/material/tally.ts';
import { radians } from '../../core/units.ts';
import { withTally } from '../../core/tallies/learnRow.ts';
import { useTests } from '../../store/tests.ts';
import { INVENTED, TESTS, TESTS_SAID } from '../text/testsText.ts';
import { addSpool, spoolOf, taught, today } from './spools.ts';
import type { Spool, Trial } from './trial.ts';

const COUNTS: readonly Pick<FlexTally, 'cycles' | 'ended' | 'seen'>[] = [
  { cycles: 900, ended: 'broke', seen: INVENTED.clean },
  { cycles: 1460, ended: 'broke', seen: INVENTED.whitened },
  { cycles: 2150, ended: 'broke', seen: INVENTED.beside },
  { cycles: 2500, ended: 'whole', seen: INVENTED.stopped },
  { cycles: 1137, ended: 'whole', seen: '' },
];

/** Two lines of a common nozzle over the first corner. */
const STRIP = {
  kind: 'flexes',
  bend: { way: 'over', radius: 5 },
  thickness: 0.84,
  lying: 'flat',
  ways: 'one way',
} as const;

/** Puts a spool with five invented counts beside the user's filaments, and looks at it. */
export function addInvented(trial: Trial): void {
  const values = { ...trial.values, spool: TESTS.inventedSpool, printer: '' };
  const made = spoolOf({ ...trial, values });
  const date = today();
  const full = COUNTS.reduce<Spool>(
    (row, count, at) => withTally(row, { ...STRIP, ...count, id: `invented-${at + 1}`, date }) as Spool,
    made,
  );
  addSpool(taught(full) as Spool, TESTS_SAID.made(made.name, trial.prior.name));
  useTests
    .getState()
    .set({ piece: 'radii', doing: 'flexes', way: 'over', radius: 5, turn: radians(90), ways: 'one way' });
}
