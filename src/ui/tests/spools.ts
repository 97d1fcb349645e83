/** What is written on spools, each as one step to undo: a row learns anew from all of its tallies at every change of them. */
import type { OwnFilament } from '../../core/material/types.ts';
import type { Tally, Tests } from '../../core/material/tally.ts';
import { learnRow, newTests, priorOf, withoutTally, withTally, withTallyChanged } from '../../core/tallies/learnRow.ts';
import { checkTally } from '../../core/tallies/checkTally.ts';
import type { Learned } from '../../core/tallies/learned.ts';
import { useSession } from '../../store/session.ts';
import { addFilaments, changeFilament } from '../../store/shelf.ts';
import { useTests } from '../../store/tests.ts';
import { randomKey } from '../app/randomKey.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { problemText } from '../text/problemText.ts';
import { spoolName, TESTS_SAID } from '../text/testsText.ts';
import type { Spool, Trial } from './trial.ts';

const learnedOf = new WeakMap<Spool, Learned>();

/** What a spool has been taught; worked out once for each state of it. */
export function learned(spool: Spool): Learned {
  const known = learnedOf.get(spool);
  if (known) return known;
  const { learned: now } = learnRow(spool, priorOf(spool));
  learnedOf.set(spool, now);
  return now;
}

/** The row as its tallies teach it. */
export function taught(row: OwnFilament): OwnFilament {
  const { row: next, learned: now } = learnRow(row, priorOf(row));
  // What it has been taught is asked for as soon as it is shown.
  learnedOf.set(next as Spool, now);
  return next;
}

/** A key that no other tally of the spool has. */
export function newTallyId(spool: Spool | undefined): string {
  return randomKey('t', (key) => spool?.own.tests.tallies.some(({ id }) => id === key) ?? false);
}

const two = (value: number) => String(value).padStart(2, '0');

/** Today, as tallies are dated. */
export function today(now = new Date()): string {
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** A spool of a filament on which nothing is written yet; nothing is in force. */
export function spoolOf({ prior, values }: Pick<Trial, 'prior' | 'values'>): Spool {
  const { own } = useSession.getState();
  const id = randomKey('own', (key) => own.some((one) => one.id === key));
  const { printer, spool } = values;
  const taken = own.map((one) => one.name);
  return newTests(prior, spoolName(prior.name, spool, taken), id, printer, spool) as Spool;
}

/** From here on this spool is looked at. */
function lookAt(spool: Spool): void {
  const { like, printer, spool: name } = spool.own.tests;
  useTests.getState().set({ filament: spool.id, like, printer, spool: name });
}

/** Puts a spool with the user's filaments. */
export function addSpool(spool: Spool, said: string): void {
  addFilaments([spool], said);
  lookAt(spool);
}

/** Puts a tally on the spool that is looked at, or on one made for it in the same step; or says why it cannot be. */
export function putTally(trial: Trial, tally: Tally, said: string, unit: LengthUnit): string | undefined {
  const [problem] = checkTally(tally);
  if (problem) return problemText(problem, unit);
  const { spool } = trial;
  if (spool) {
    changeFilament(taught(withTally(spool, tally)), said);
    return undefined;
  }
  const made = spoolOf(trial);
  addSpool(taught(withTally(made, tally)) as Spool, TESTS_SAID.first(said, made.name));
  return undefined;
}

/** Puts a tally in the place of the one with its key, or says why it cannot be. */
export function changeTally(
  spool: Spool,
  tally: Tally,
  said: string,
  { unit, run }: { readonly unit: LengthUnit; readonly run?: string | undefined },
): string | undefined {
  const [problem] = checkTally(tally);
  if (problem) return problemText(problem, unit);
  changeFilament(taught(withTallyChanged(spool, tally)), said, run);
  return undefined;
}

export function removeTally(spool: Spool, id: string, said: string): void {
  changeFilament(taught(withoutTally(spool, id)), said);
}

/** Where a spool was tested, and which it is. */
export function describe(spool: Spool, change: Partial<Pick<Tests, 'printer' | 'spool'>>, said: string): void {
  changeFilament({ ...spool, own: { ...spool.own, tests: { ...spool.own.tests, ...change } } }, said);
}
