import { MAX_PART_BYTES } from '../../files/limits.ts';
import { useMessages } from '../../store/messages.ts';
import { fetchKinds } from '../joints/fetchKinds.ts';
import { fileRefused } from '../text/shellText.ts';

/**
 * Opens a part file in the place of the part on screen, or puts the filaments of a file with the user's; whatever the
 * file holds, nothing is lost. Gives the key of the first filament where it was a file of filaments.
 */
export async function openFile(file: File): Promise<string | undefined> {
  const refuse = (why: string): undefined => {
    useMessages.getState().say({ grade: 'fail', text: fileRefused(file.name, why) });
  };
  // Judged before reading, so that a film dropped by mistake is not pulled into memory.
  if (file.size > MAX_PART_BYTES) return refuse(`It holds ${file.size} bytes, a part at most ${MAX_PART_BYTES}.`);
  const bytes = await file.arrayBuffer().catch(() => undefined);
  if (bytes === undefined) return refuse('The browser could not read it.');
  const reader = await Promise.all([import('./openLate.ts'), fetchKinds()]).catch(() => undefined);
  if (reader === undefined) return refuse('What reads files did not come; load the page again.');
  return reader[0].openBytes(new Uint8Array(bytes), refuse);
}
