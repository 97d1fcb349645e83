/** Text as UTF-8 without its mark, whatever of the Unicode encodings it came in. */

/** How much of a wide text is turned at once: a string of a whole file would be as large as the file again. */
const PIECE = 1_000_000;
/** How far one looks for the empty halves that wide text has. */
const LOOK = 256;

export type WideText = 'utf-16le' | 'utf-16be';

/** Which wide encoding the text is in, by its mark or by the empty half of nearly every character; undefined for others. */
export function wideTextOf(bytes: Uint8Array): WideText | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  const pairs = Math.min(LOOK, bytes.length) >> 1;
  if (pairs < 4) return undefined;
  const empty = [0, 0];
  for (let i = 0; i < 2 * pairs; i += 1) if (bytes[i] === 0) empty[i % 2]! += 1;
  const [first = 0, second = 0] = empty;
  if (first === 0 && second > 0.8 * pairs) return 'utf-16le';
  if (second === 0 && first > 0.8 * pairs) return 'utf-16be';
  return undefined;
}

/** The same text in UTF-8, without a mark; the bytes themselves where they are so already. */
export function narrowText(bytes: Uint8Array): Uint8Array {
  const wide = wideTextOf(bytes);
  if (wide) return narrowed(bytes, wide);
  const isMarked = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  return isMarked ? bytes.subarray(3) : bytes;
}

function narrowed(bytes: Uint8Array, wide: WideText): Uint8Array {
  const [decoder, encoder] = [new TextDecoder(wide), new TextEncoder()];
  // Two bytes of UTF-16 become three of UTF-8 at most.
  const room = new Uint8Array(Math.ceil(1.5 * bytes.length) + 3);
  let length = 0;
  for (let at = 0; at < bytes.length; at += PIECE) {
    const text = decoder.decode(bytes.subarray(at, at + PIECE), { stream: at + PIECE < bytes.length });
    length += encoder.encodeInto(text, room.subarray(length)).written;
  }
  return room.subarray(0, length);
}
