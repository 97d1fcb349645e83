/** Tallies that come in from a file of comma-separated values. */
import type { Problem } from '../../core/problems.ts';
import { MAX_PART_BYTES } from '../../files/limits.ts';
import { readTallies } from '../../files/tallyCsv.ts';
import { useMessages } from '../../store/messages.ts';
import { CSV } from '../text/testsText.ts';
import { notesText, takeTallies } from './takeTallies.ts';

/** Lines that could not be read are told by number; the others are in. */
function sayLeftOut(name: string, notes: readonly Problem[]): void {
  const { say, clear } = useMessages.getState();
  if (notes.length === 0) clear();
  else say({ grade: 'caution', text: CSV.partly(name, notesText(notes)) });
}

/** Puts the tallies of a file on the spool that they are of, or on the one that is looked at; or says by line what is wrong. */
export async function takeCsv(file: File): Promise<void> {
  const refuse = (why: string) => useMessages.getState().say({ grade: 'fail', text: CSV.refused(file.name, why) });
  // Judged before reading, so that a film chosen by mistake is not pulled into memory.
  if (file.size > MAX_PART_BYTES) return refuse(CSV.tooLong(file.size, MAX_PART_BYTES));
  const bytes = await file.arrayBuffer().catch(() => undefined);
  if (bytes === undefined) return refuse(CSV.unread);
  const read = readTallies(new Uint8Array(bytes));
  const why = takeTallies(read, file.name);
  const notes = read.ok ? read.notes : [];
  if (why !== undefined) return refuse([why, notesText(notes)].join(' ').trim());
  sayLeftOut(file.name, notes);
  return undefined;
}
