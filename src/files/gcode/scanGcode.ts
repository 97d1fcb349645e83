/** Reads a file of G-code from end to end. */
import type { MoveSink } from '../../core/inspect/toolpath/moves.ts';
import type { Problem } from '../../core/problems.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { ByteSource } from './byteSource.ts';
import { GcodeReader, type GcodeOptions } from './gcodeReader.ts';
import type { GcodeText } from './gcodeText.ts';
import { notGcode } from './notGcode.ts';
import { Narrowed } from './narrowed.ts';

/** Read at once; and looked through at once, between which whoever waits is told [bytes]. */
const READ = 4 << 20;
const LOOKED = 1 << 20;

/**
 * Reads a toolpath. It never stands in memory as a whole, however long it is.
 *
 * @param source - the file, read piece by piece
 * @param options - diameter of the filament [mm]
 * @param sink - takes in its moves
 * @param alive - hears the share that is done, every few milliseconds; may throw to give up
 * @returns what is told of its text; or what the file is, where it is no G-code
 *
 * Problems: `unreadable` (empty, or gone while it is read), `not-our-file`.
 */
export async function scanGcode(
  source: ByteSource,
  options: GcodeOptions,
  sink: MoveSink,
  alive: (share: number) => void = () => undefined,
): Promise<Result<GcodeText>> {
  const reader = new GcodeReader(options, sink);
  const narrowed = new Narrowed();
  for (let from = 0; from < source.size || from === 0; from += READ) {
    // One piece after the other: more at once would be more in memory.
    // oxlint-disable-next-line no-await-in-loop
    const piece = await pieceOf(source, from);
    if (!(piece instanceof Uint8Array)) return fail(piece);
    const problem = from === 0 ? notGcode(piece, source.size) : undefined;
    if (problem) return fail(problem);
    for (let at = 0; at < piece.length; at += LOOKED) {
      reader.feed(narrowed.take(piece.subarray(at, at + LOOKED)));
      alive(Math.min(1, (from + at + LOOKED) / source.size));
    }
  }
  return ok({ ...reader.end(), bytes: source.size });
}

/** What is read from there; a problem where it can no longer be read, as when the file has been moved or changed. */
async function pieceOf(source: ByteSource, from: number): Promise<Uint8Array | Problem> {
  try {
    return await source.read(from, Math.min(source.size, from + READ));
  } catch (error) {
    const reason = error instanceof Error ? error.message : 'unknown reason';
    return { code: 'unreadable', message: `The file can no longer be read (${reason}); choose it again` };
  }
}
