import { MAX_PART_BYTES } from '../files/limits.ts';
import { useMessages } from './messages.ts';

/**
 * The text of a part or of filaments, when it could be read back; asked before it takes the place of what can. Otherwise says
 * why not in the words of the reader, and rejects as a storage does that is full.
 */
export async function readable(text: string): Promise<string> {
  const bytes = new TextEncoder().encode(text);
  if (bytes.length <= MAX_PART_BYTES) return text;
  const { readPartBytes } = await import('../files/partFile.ts');
  const read = readPartBytes(bytes);
  if (!read.ok) useMessages.getState().say({ grade: 'fail', text: `Not written. ${read.problems[0].message}.` });
  throw new DOMException('', 'QuotaExceededError');
}
