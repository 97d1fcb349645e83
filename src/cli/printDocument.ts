import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { inBlocks, jsonPieces } from './document.ts';

/** Writes one JSON document to standard output. */
export async function printDocument(document: object): Promise<void> {
  const text = Readable.from(inBlocks(jsonPieces(document)));
  try {
    await pipeline(text, process.stdout, { end: false });
  } catch (error) {
    // Whoever reads may stop when it has seen enough.
    if (!(error instanceof Error && 'code' in error && error.code === 'EPIPE')) throw error;
  }
}
