/** Tallies that come in from a file of comma-separated values. */
import { MAX_PART_BYTES } from '../../files/limits.ts';
import { readTallies } from '../../files/tallyCsv.ts';
import { useMessages } from '../../store/messages.ts';
import { CSV } from '../text/testsText.ts';
import { takeTallies } from './takeTallies.ts';

/** Puts the tallies of a file on the spool that they are of, or on the one that is looked at; or says by line what is wrong. */
export async function takeCsv(file: File): Promise<void> {
  const refuse = (why: string) => useMessages.getState().say({ grade: 'fail', text: CSV.refused(file.name, why) });
  // Judged before reading, so that a film chosen by mistake is not pulled into memory.
  if (file.size > MAX_PART_BYTES) return refuse(CSV.tooLong(file.size, MAX_PART_BYTES));
  const text = await file.text().catch(() => undefined);
  if (text === undefined) return refuse(CSV.unread);
  const why = takeTallies(readTallies(text), file.name);
  if (why !== undefined) return refuse(why);
  useMessages.getState().clear();
  return undefined;
}
