/** One pulled bar by the table of its forces, put on the spool that is looked at. */
import type { PullTally } from '../../../core/material/tally.ts';
import type { Problem } from '../../../core/problems.ts';
import type { PulledBar } from '../../../core/tallies/pulledBar.ts';
import { cleanName } from '../../../files/names.ts';
import { readPullCurve, type PulledSpecimen } from '../../../files/pullCurve.ts';
import { useChoices } from '../../../store/choices.ts';
import { useMessages } from '../../../store/messages.ts';
import type { TestValues } from '../../../store/tests.ts';
import { CSV } from '../../text/testsText.ts';
import { oneOf, PULL, SAID_OF, tallyText } from '../../text/testsTallyText.ts';
import { newTallyId, putTally, today } from '../spools.ts';
import { notesText } from '../takeTallies.ts';
import { trialNow, type Spool, type Trial } from '../trial.ts';

/** What the sentence and the form say of the bar. */
function specimenOf({
  barWidth,
  barThickness,
  knowsGauge,
  gaugeLength,
  knowsSpeed,
  speed,
}: TestValues): PulledSpecimen {
  return {
    area: barWidth * barThickness,
    ...(knowsGauge && { gaugeLength }),
    ...(knowsSpeed && { mmPerMinute: speed }),
  };
}

/** No load cell tells more figures than these. */
const inFour = (value: number) => Number(value.toPrecision(4));

function tallyOf({ values, spool }: Trial, { strength, modulus }: PulledBar, file: string): PullTally {
  return {
    kind: 'pull',
    id: newTallyId(spool),
    date: today(),
    // A name of a file may be longer than what was seen.
    seen: PULL.seen(cleanName(file)),
    direction: values.direction,
    strength: inFour(strength),
    ...(modulus !== undefined && { modulus: inFour(modulus) }),
  };
}

/** The number of the bar that is this one already; a file that is read again is no second bar. */
function alike(pulls: readonly PullTally[], tally: PullTally): number | undefined {
  const at = pulls.findIndex(
    ({ seen, direction, strength, modulus }) =>
      seen === tally.seen && direction === tally.direction && strength === tally.strength && modulus === tally.modulus,
  );
  return at < 0 ? undefined : at + 1;
}

function pullsOf(spool: Spool | undefined): readonly PullTally[] {
  return spool?.own.tests.tallies.filter((tally) => tally.kind === 'pull') ?? [];
}

/** A stress that no plastic has comes of a size or a unit that is not that of the bar. */
function refusalText(problems: readonly Problem[]): string {
  const isSize = problems.some(({ field }) => field === 'strength' || field === 'area');
  return `${notesText(problems)}${isSize ? ` ${PULL.check}` : ''}`;
}

/** Puts the bar in as one step to undo; or says why it cannot be. */
export function putForces(bytes: Uint8Array, file: string): void {
  const { say, clear } = useMessages.getState();
  const refuse = (why: string) => say({ grade: 'fail', text: CSV.refused(file, why) });
  const trial = trialNow();
  const read = readPullCurve(bytes, specimenOf(trial.values));
  if (!read.ok) return refuse(refusalText(read.problems));
  const tally = tallyOf(trial, read.value, file);
  const pulls = pullsOf(trial.spool);
  const twin = alike(pulls, tally);
  if (twin !== undefined) return refuse(PULL.again(file, oneOf('pull', twin)));
  const { unit } = useChoices.getState();
  const said = SAID_OF.put(oneOf('pull', pulls.length + 1), tallyText(tally, unit));
  const why = putTally(trial, tally, said, unit);
  if (why !== undefined) return refuse(why);
  if (read.notes.length > 0) say({ grade: 'caution', text: PULL.partly(file, notesText(read.notes)) });
  else clear();
  return undefined;
}
