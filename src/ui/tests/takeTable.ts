/** What comes in from a file of separated values: tallies, or the forces of one bar that a machine has pulled. */
import type { Tally } from '../../core/material/tally.ts';
import type { Problem } from '../../core/problems.ts';
import type { Result } from '../../core/result.ts';
import { saysForces } from '../../files/pullCurve.ts';
import { MAX_TABLE_BYTES } from '../../files/limits.ts';
import { readTallies } from '../../files/tallyCsv.ts';
import { useMessages } from '../../store/messages.ts';
import { CSV } from '../text/testsText.ts';
import { PULL } from '../text/testsTallyText.ts';
import { isPulling } from './pull/isPulling.ts';
import { putForces } from './pull/putForces.ts';
import { notesText, takeTallies } from './takeTallies.ts';

/** Lines that could not be read are told by number; the others are in. */
function sayLeftOut(name: string, notes: readonly Problem[]): void {
  const { say, clear } = useMessages.getState();
  if (notes.length === 0) clear();
  else say({ grade: 'caution', text: CSV.partly(name, notesText(notes)) });
}

function refuse(name: string, why: string): undefined {
  useMessages.getState().say({ grade: 'fail', text: CSV.refused(name, why) });
}

/** What a table holds; nothing where it cannot be read, which is said. */
async function bytesOf(file: File): Promise<Uint8Array | undefined> {
  // Judged before reading, so that a film chosen by mistake is not pulled into memory.
  if (file.size > MAX_TABLE_BYTES) return refuse(file.name, CSV.tooLong(file.size, MAX_TABLE_BYTES));
  const bytes = await file.arrayBuffer().catch(() => undefined);
  return bytes === undefined ? refuse(file.name, CSV.unread) : new Uint8Array(bytes);
}

/** Puts tallies on the spool that they are of, or on the one that is looked at; or says by line what is wrong. */
function putTallies(read: Result<readonly Tally[]>, name: string): void {
  const why = takeTallies(read, name);
  const notes = read.ok ? read.notes : [];
  if (why === undefined) sayLeftOut(name, notes);
  else refuse(name, [why, notesText(notes)].join(' ').trim());
}

/** Whether the head of a table is one of tallies, whatever stands below it. */
const isTallies = (read: Result<unknown>) => read.ok || read.problems.every(({ code }) => code !== 'unreadable');

/** Takes a table: forces where bars are pulled, and tallies anywhere. */
export async function takeTable(file: File): Promise<void> {
  const bytes = await bytesOf(file);
  if (bytes === undefined) return;
  const [read, forces] = [readTallies(bytes), saysForces(bytes)];
  if (isPulling() && (forces || !isTallies(read))) putForces(bytes, file.name);
  else if (forces) refuse(file.name, PULL.elsewhere);
  else putTallies(read, file.name);
}

/** Takes a table that was chosen as one of forces. */
export async function takeForces(file: File): Promise<void> {
  const bytes = await bytesOf(file);
  if (bytes !== undefined) putForces(bytes, file.name);
}
