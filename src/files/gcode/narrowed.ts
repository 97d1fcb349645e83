/** Text of two bytes a character, as one: what printers understand is the same in both. */
type Wide = 'low first' | 'high first';

const NOTHING = new Uint8Array(0);

export class Narrowed {
  #wide: Wide | undefined;
  #isFirst = true;
  /** Bytes before this piece. */
  #before = 0;

  /** The next piece as single bytes; the same piece where it is so already. */
  take(piece: Uint8Array): Uint8Array {
    if (this.#isFirst && piece.length > 0) this.#look(piece);
    if (this.#wide === undefined) return piece;
    const low = this.#wide === 'low first' ? 0 : 1;
    const narrow = new Uint8Array(piece.length);
    let count = 0;
    for (let i = 0; i < piece.length; i += 1) {
      const at = this.#before + i;
      // The mark at the head is two bytes.
      if (at >= 2 && at % 2 === low) {
        narrow[count] = piece[i]!;
        count += 1;
      }
    }
    this.#before += piece.length;
    return count > 0 ? narrow.subarray(0, count) : NOTHING;
  }

  #look([first, second]: Uint8Array): void {
    this.#isFirst = false;
    if (first === 0xff && second === 0xfe) this.#wide = 'low first';
    else if (first === 0xfe && second === 0xff) this.#wide = 'high first';
  }
}
