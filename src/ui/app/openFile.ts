import { useMessages } from '../../store/messages.ts';
import { fetchKinds } from '../joints/fetchKinds.ts';
import { fileRefused } from '../text/shellText.ts';

/**
 * Opens a part file in the place of the part on screen, puts the filaments of a file with the user's, or takes a mesh to
 * where it is checked; whatever the file holds, nothing is lost. Gives the key of the first filament where it was a file of
 * filaments.
 */
export async function openFile(file: File): Promise<string | undefined> {
  const refuse = (why: string): undefined => {
    useMessages.getState().say({ grade: 'fail', text: fileRefused(file.name, why) });
  };
  const reader = await Promise.all([import('./openLate.ts'), fetchKinds()]).catch(() => undefined);
  if (reader === undefined) return refuse('What reads files did not come; load the page again.');
  return reader[0].openWhole(file, refuse);
}
