/** Reads a file of G-code from end to end. */
import type { MoveSink } from '../../core/inspect/toolpath/moves.ts';
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
 * Problems: `unreadable` (empty), `not-our-file`.
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
    const piece = await source.read(from, Math.min(source.size, from + READ));
    if (from === 0) {
      const problem = notGcode(piece, source.size);
      if (problem) return fail(problem);
    }
    for (let at = 0; at < piece.length; at += LOOKED) {
      reader.feed(narrowed.take(piece.subarray(at, at + LOOKED)));
      alive((from + at) / source.size);
    }
  }
  return ok(reader.end());
}
