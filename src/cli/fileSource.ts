/** A file of the disk that is read piece by piece. */
import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import type { ByteSource } from '../files/gcode/byteSource.ts';

/**
 * Opens a file; whoever opens it closes it.
 *
 * @param path - of the file; what cannot be opened throws
 */
export function fileSource(path: string): ByteSource & { readonly close: () => void } {
  const handle = openSync(path, 'r');
  const { size } = fstatSync(handle);
  return {
    size,
    read: (from, to) => {
      const bytes = new Uint8Array(to - from);
      const count = readSync(handle, bytes, 0, to - from, from);
      return Promise.resolve(bytes.subarray(0, count));
    },
    close: () => closeSync(handle),
  };
}
