/** Cuts pieces of a text into whole lines. */

/** Longer lines are none that a printer takes [bytes]. */
const LONGEST = 65_536;
const NEW_LINE = 10;
const NOTHING = new Uint8Array(0);

/** After the last line that is handed on there are as many bytes at the least, so that four can be looked at at once. */
const SPARE = 3;

export interface LineTaker {
  /** Whole lines, from one place to after the end of the last; used again after the call. */
  readonly lines: (bytes: Uint8Array, from: number, to: number) => void;
  /** A line that is too long: its beginning. */
  readonly tooLong: (beginning: Uint8Array) => void;
}

export class WholeLines {
  readonly #taker: LineTaker;
  /** What of a line the piece before ended with. */
  #carried: Uint8Array = NOTHING;
  /** In the rest of a line that is too long. */
  #isSkipping = false;

  constructor(taker: LineTaker) {
    this.#taker = taker;
  }

  /** The next piece, cut anywhere. */
  feed(piece: Uint8Array): void {
    let from = 0;
    if (this.#isSkipping || this.#carried.length > 0) {
      from = piece.indexOf(NEW_LINE) + 1;
      if (from === 0) {
        this.#carry(piece);
        return;
      }
      if (!this.#isSkipping) this.#hand(joined(this.#carried, piece.subarray(0, from)));
      this.#isSkipping = false;
      this.#carried = NOTHING;
    }
    const last = Math.max(from, piece.lastIndexOf(NEW_LINE) + 1);
    const farthest = piece.length - 1 - SPARE;
    // From a place below 0 the search would begin at the end.
    const spared = farthest < 0 ? 0 : piece.lastIndexOf(NEW_LINE, farthest) + 1;
    const safe = Math.max(from, Math.min(last, spared));
    this.#hand(piece, from, safe);
    this.#hand(joined(piece.subarray(safe, last)));
    this.#carry(piece.subarray(last));
  }

  /** After the last piece: a line without an end is one too. */
  end(): void {
    if (this.#carried.length > 0) this.feed(Uint8Array.of(NEW_LINE));
    this.#isSkipping = false;
  }

  #carry(rest: Uint8Array): void {
    if (this.#isSkipping || rest.length === 0) return;
    this.#carried = joined(this.#carried, rest).subarray(0, this.#carried.length + rest.length);
    if (this.#carried.length <= LONGEST) return;
    this.#taker.tooLong(this.#carried);
    this.#carried = NOTHING;
    this.#isSkipping = true;
  }

  /** Hands on lines by as many as make the longest that may be, but those that are longer. */
  #hand(bytes: Uint8Array, from = 0, to = bytes.length - SPARE): void {
    let start = from;
    while (to - start > LONGEST + 1) {
      const next = bytes.lastIndexOf(NEW_LINE, start + LONGEST) + 1;
      if (next > start) {
        this.#taker.lines(bytes, start, next);
        start = next;
      } else {
        this.#taker.tooLong(bytes.subarray(start, start + LONGEST));
        start = bytes.indexOf(NEW_LINE, start) + 1;
      }
    }
    if (to > start) this.#taker.lines(bytes, start, to);
  }
}

/** One after the other, and some bytes to spare. */
function joined(one: Uint8Array, other: Uint8Array = NOTHING): Uint8Array {
  const both = new Uint8Array(one.length + other.length + SPARE);
  both.set(one);
  both.set(other, one.length);
  return both;
}
