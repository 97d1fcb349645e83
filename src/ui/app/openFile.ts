import { MAX_PART_BYTES } from '../../files/limits.ts';
import type { ProblemCode } from '../../core/problems.ts';
import { useMessages } from '../../store/messages.ts';
import { useSession } from '../../store/session.ts';
import { fetchKinds } from '../joints/fetchKinds.ts';
import { problemsText } from './problemsText.ts';
import { fileRefused, repairsText, SAID } from '../text/shellText.ts';

/** Notes that say what reading changed; cautions about the joints are shown with the joints. */
const REPAIRS: readonly ProblemCode[] = ['changed-name', 'repaired-id', 'unknown-field'];

/** Opens a part file in the place of the part on screen; whatever the file holds, nothing is lost. */
export async function openPartFile(file: File): Promise<void> {
  const { say, clear } = useMessages.getState();
  const refuse = (why: string) => say({ grade: 'fail', text: fileRefused(file.name, why) });
  // Judged before reading, so that a film dropped by mistake is not pulled into memory.
  if (file.size > MAX_PART_BYTES) return refuse(`It holds ${file.size} bytes, a part at most ${MAX_PART_BYTES}.`);
  const bytes = await file.arrayBuffer().catch(() => undefined);
  if (bytes === undefined) return refuse('The browser could not read it.');
  const [{ readPartBytes }] = await Promise.all([import('../../files/partFile.ts'), fetchKinds()]);
  const read = readPartBytes(new Uint8Array(bytes));
  if (!read.ok) return refuse(problemsText(read.problems));
  const { part, replacePart } = useSession.getState();
  replacePart(read.value, SAID.fileOpened(read.value.name, part.name));
  const repairs = read.notes.filter(({ code }) => REPAIRS.includes(code));
  if (repairs.length > 0) say({ grade: 'caution', text: repairsText(read.value.name, problemsText(repairs)) });
  else clear();
}
