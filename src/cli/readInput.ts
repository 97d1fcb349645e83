import { createReadStream } from 'node:fs';
import { fail, type Result } from '../core/result.ts';

/** Reads no more than tells that it is too much, so that a wrong path cannot fill the memory. */
async function bytesOf(stream: AsyncIterable<Buffer>, most: number): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of stream) {
    chunks.push(chunk);
    size += chunk.length;
    if (size > most) break;
  }
  return Buffer.concat(chunks);
}

/**
 * What a file or standard input (`-`) holds, read by a reader of bytes.
 *
 * @param file - path, or `-`
 * @param most - bytes past which no more are read
 * @param reader - what makes a value of them
 */
export async function readInput<T>(
  file: string,
  most: number,
  reader: (bytes: Uint8Array) => Result<T>,
): Promise<Result<T>> {
  let bytes: Uint8Array;
  try {
    bytes = await bytesOf(file === '-' ? process.stdin : createReadStream(file), most);
  } catch (error) {
    const reason = error instanceof Error ? error.message : 'unknown reason';
    return fail({ code: 'unreadable', message: `The file cannot be opened: ${reason}` });
  }
  return reader(bytes);
}
