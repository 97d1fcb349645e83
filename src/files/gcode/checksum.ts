/** Checksums of lines: what follows the star is all bytes before it by exclusive or. Common practice of printers, no source. */

/**
 * The checksum of bytes.
 *
 * @returns 0 to 255 [-]
 */
export function checksumOf(bytes: Uint8Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i += 1) sum ^= bytes[i]!;
  return sum;
}

/** The whole number that stands between two places, after blanks; −1 where none does. */
export function toldChecksum(bytes: Uint8Array, from: number, to: number): number {
  const digits = /^\s*(\d{1,3})/.exec(String.fromCharCode(...bytes.subarray(from, Math.min(to, from + 8))))?.[1];
  return digits === undefined ? -1 : Number(digits);
}
