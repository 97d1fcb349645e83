/** Unpacks a file of a zip archive piece by piece and stops where it grows past what it said. */
import { Inflate } from 'fflate';
import { MAX_RATIO, RATIO_FROM_BYTES } from './meshLimits.ts';
import { count, FETCH_AGAIN, quoted, refuse } from './refusal.ts';
import type { ZipEntry } from './zipDirectory.ts';

/** A packed piece becomes a thousand times as much at most. */
const PIECE = 16_384;

/**
 * Hands on a file of an archive in pieces. Gives up where it is or grows too large, or is not what its list says.
 *
 * @param entry - as the list of the archive states it
 * @param take - is given each piece and the share of the packed file that is done
 */
export function unpack(entry: ZipEntry, take: (piece: Uint8Array, share: number) => void): void {
  checkStated(entry);
  let [crc, size] = [-1, 0];
  const check = (piece: Uint8Array, share: number): void => {
    size += piece.length;
    if (size > entry.size) refuseLie(entry);
    crc = crcOn(crc, piece);
    take(piece, share);
  };
  if (entry.isDeflated) inflate(entry, check);
  else eachPiece(entry, check);
  if (size !== entry.size || ~crc >>> 0 !== entry.crc) {
    refuse(
      'file-damaged',
      `${quoted(entry.name)} in the archive is not what was packed: its check sum is wrong; ${FETCH_AGAIN}`,
    );
  }
}

/** What the list says is judged before a byte is unpacked; the sum of all sizes was judged with the list. */
function checkStated(entry: ZipEntry): void {
  if (entry.size > RATIO_FROM_BYTES && entry.size > MAX_RATIO * entry.packed.length) {
    const message = `${quoted(entry.name)} in the archive would grow from ${count(entry.packed.length)} to ${count(entry.size)} bytes, more than ${MAX_RATIO} times; no mesh does, so it is not unpacked`;
    refuse('too-large', message, { value: entry.size, limit: MAX_RATIO * entry.packed.length });
  }
}

function inflate(entry: ZipEntry, take: (piece: Uint8Array, share: number) => void): void {
  const ready: Uint8Array[] = [];
  const inflater = new Inflate((piece) => {
    ready.push(piece);
  });
  eachPiece(entry, (packed, share) => {
    try {
      inflater.push(packed, share === 1);
    } catch {
      refuse(
        'file-damaged',
        `${quoted(entry.name)} in the archive cannot be unpacked, so it is damaged or cut off; ${FETCH_AGAIN}`,
      );
    }
    // Handed on outside of the package, which must not catch what the taker throws.
    for (const piece of ready.splice(0)) take(piece, share);
  });
}

function eachPiece({ packed }: ZipEntry, take: (piece: Uint8Array, share: number) => void): void {
  if (packed.length === 0) take(packed, 1);
  for (let at = 0; at < packed.length; at += PIECE) {
    take(packed.subarray(at, at + PIECE), Math.min(1, (at + PIECE) / packed.length));
  }
}

function refuseLie({ name, size }: ZipEntry): never {
  const message = `${quoted(name)} in the archive goes on past the ${count(size)} bytes that its list states; ${FETCH_AGAIN}`;
  return refuse('file-damaged', message, { limit: size });
}

/** Of the check sum that zip archives carry: what each byte does to it. */
const CRC = Uint32Array.from({ length: 256 }, (_, byte) => {
  let crc = byte;
  for (let bit = 0; bit < 8; bit += 1) crc = (crc & 1) === 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  return crc;
});

function crcOn(crc: number, piece: Uint8Array): number {
  let sum = crc;
  for (let i = 0; i < piece.length; i += 1) sum = CRC[(sum ^ piece[i]!) & 255]! ^ (sum >>> 8);
  return sum;
}
