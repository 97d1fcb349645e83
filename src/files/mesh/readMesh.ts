/** The door to all readers of part files. */
import { fail, ok, type Result } from '../../core/result.ts';
import { looksLike } from './looksLike.ts';
import type { MeshFile, ReadProgress } from './meshFile.ts';
import { MAX_FILE_BYTES } from './meshLimits.ts';
import { readObj } from './obj.ts';
import { count, refuse, Refusal } from './refusal.ts';
import { readBinaryStl } from './stlBinary.ts';
import { readTextStl } from './stlText.ts';
import { narrowText } from './textBytes.ts';
import { read3mf } from './threemf.ts';

const UNHEARD: ReadProgress = () => undefined;

/**
 * The mesh in a part file: STL as text or bytes, OBJ, or 3MF, told apart by what is in it. Never throws but what `progress` does.
 *
 * Problems: `not-our-file` (another kind of file), `too-large`, `unreadable` (a kind of 3MF that is not read),
 * `file-damaged`. What was left out or read with a caution comes back as notes, in the result and in its value.
 *
 * Source: 3mf-core, 3mf-production, part-files.
 *
 * @param bytes - the whole file
 * @param name - of the file; decides only where the bytes do not tell
 * @param progress - hears the share that is done, many times a second; may throw to give up
 */
export function readMesh(bytes: Uint8Array, name: string, progress: ReadProgress = UNHEARD): Result<MeshFile> {
  try {
    const file = read(bytes, name, progress);
    progress(1);
    return ok(file, file.notes);
  } catch (error) {
    if (error instanceof Refusal) return fail(error.problem);
    throw error;
  }
}

function read(bytes: Uint8Array, name: string, progress: ReadProgress): MeshFile {
  if (bytes.length === 0) refuse('unreadable', 'The file is empty; download or export it again');
  if (bytes.length > MAX_FILE_BYTES) refuseSize(bytes.length);
  const likeness = looksLike(bytes, name);
  if ('foreign' in likeness) return refuseForeign(likeness.foreign);
  switch (likeness.format) {
    case 'STL, binary':
      return readBinaryStl(bytes, progress);
    case 'STL, text':
      return readTextStl(narrowText(bytes), progress);
    case 'OBJ':
      return readObj(narrowText(bytes), progress);
    case '3MF':
      return read3mf(bytes, progress);
  }
}

function refuseForeign(foreign: string): never {
  return refuse('not-our-file', `The file looks like ${foreign}; parts are read from STL, OBJ and 3MF files`);
}

function refuseSize(size: number): never {
  const message = `The file holds ${count(size)} bytes, and a part file is read up to ${count(MAX_FILE_BYTES)}; export the part more coarsely, or as binary STL or 3MF`;
  return refuse('too-large', message, { value: size, limit: MAX_FILE_BYTES });
}
