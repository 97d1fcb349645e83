/** Text of two bytes a character, as one: what printers understand is the same in both. */

const NOTHING = new Uint8Array(0);
/** What stands for a character of another script: a printer understands none. */
const OTHER = 0x3f;

export class Narrowed {
  /** Which byte of two is the low one; undefined where characters are single bytes. */
  #low: 0 | 1 | undefined;
  #isFirst = true;
  /** First half of a character that the piece before ended with; −1 without. */
  #half = -1;
  /** Characters before this piece, the mark at the head among them. */
  #before = 0;

  /** The next piece as single bytes; the same piece where it is so already. */
  take(piece: Uint8Array): Uint8Array {
    if (this.#isFirst && piece.length > 0) this.#look(piece);
    if (this.#low === undefined) return piece;
    const narrow = new Uint8Array((piece.length + 1) >> 1);
    let count = 0;
    for (const byte of piece) {
      if (this.#half < 0) this.#half = byte;
      else {
        const [low, high] = this.#low === 0 ? [this.#half, byte] : [byte, this.#half];
        if (this.#before > 0) {
          narrow[count] = high === 0 ? low : OTHER;
          count += 1;
        }
        this.#before += 1;
        this.#half = -1;
      }
    }
    return count > 0 ? narrow.subarray(0, count) : NOTHING;
  }

  #look([first, second]: Uint8Array): void {
    this.#isFirst = false;
    if (first === 0xff && second === 0xfe) this.#low = 0;
    else if (first === 0xfe && second === 0xff) this.#low = 1;
  }
}
