/** Walks through text as bytes, word by word and line by line, without making a string of what need not be one. */

const [TAB, LINE_FEED, COLUMN_FEED, FORM_FEED, RETURN, SPACE] = [9, 10, 11, 12, 13, 32];
const [PLUS, MINUS, POINT, SLASH, ZERO, NINE, BACKSLASH, SMALL_E] = [43, 45, 46, 47, 48, 57, 92, 101];
/** Bit that tells small letters from capital ones. */
const SMALL = 32;

/** Powers of ten that a double holds exactly. */
const POWERS = Array.from({ length: 23 }, (_, i) => Number(`1e${i}`));
/** Up to here a double holds every whole number. */
const EXACT = 2 ** 53;

/** Bytes of what goes into a name or a message. */
const MAX_WORD = 1000;
const names = new TextDecoder();

export class TextCursor {
  private readonly bytes: Uint8Array;
  private readonly continues: boolean;
  pos = 0;
  /** Number of the line, from 1. */
  line = 1;
  /** Where the word read last begins; it ends at `pos`. */
  start = 0;

  /** @param continues - whether a backslash at the end of a line carries it on in the next */
  constructor(bytes: Uint8Array, continues = false) {
    this.bytes = bytes;
    this.continues = continues;
  }

  get atEnd(): boolean {
    return this.pos >= this.bytes.length;
  }

  /** Goes to the next word of this line and over it; false at the end of the line. */
  nextInLine(): boolean {
    const { bytes } = this;
    for (;;) {
      while (isGap(bytes[this.pos])) this.pos += 1;
      if (!this.continues || bytes[this.pos] !== BACKSLASH || !isLineEnd(bytes[this.pos + 1])) break;
      this.pos += 1;
      this.passLineEnd();
    }
    this.start = this.pos;
    while (this.pos < bytes.length && !isBlank(bytes[this.pos]!) && !this.carriesOn()) this.pos += 1;
    return this.pos > this.start;
  }

  /** Goes to the next word, in whatever line it is, and over it; false at the end of the text. */
  next(): boolean {
    while (!this.nextInLine()) {
      if (this.atEnd) return false;
      this.passLineEnd();
    }
    return true;
  }

  /** @param carried - whether to skip what the line is carried on in as well */
  skipLine(carried = true): void {
    const { bytes } = this;
    while (!this.atEnd && !isLineEnd(bytes[this.pos])) {
      if (carried && this.carriesOn()) {
        this.pos += 1;
        this.passLineEnd();
      } else this.pos += 1;
    }
  }

  /** Whether the word read last is this one, in whatever letters; `word` in small ones. */
  is(word: string): boolean {
    if (this.pos - this.start !== word.length) return false;
    for (let i = 0; i < word.length; i += 1) {
      if ((this.bytes[this.start + i]! | SMALL) !== word.charCodeAt(i)) return false;
    }
    return true;
  }

  /** Whether the word read last begins with this character. */
  begins(code: number): boolean {
    return this.bytes[this.start] === code;
  }

  /** The word read last, or the beginning of one that is too long to be a word. */
  word(): string {
    return names.decode(this.bytes.subarray(this.start, Math.min(this.pos, this.start + MAX_WORD)));
  }

  /** What is left of the line, without the blanks round it; of a long one the beginning. */
  restOfLine(): string {
    const from = this.pos;
    this.skipLine();
    return names.decode(this.bytes.subarray(from, Math.min(this.pos, from + MAX_WORD))).trim();
  }

  /** The word read last as a decimal number; NaN where it is none. */
  number(): number {
    const { bytes, pos } = this;
    let at = this.start;
    const first = bytes[at];
    if (first === MINUS || first === PLUS) at += 1;
    let [digits, whole, places] = [0, 0, 0];
    for (let seenPoint = false; at < pos; at += 1) {
      const code = bytes[at]!;
      if (code >= ZERO && code <= NINE) {
        whole = 10 * whole + (code - ZERO);
        digits += 1;
        if (seenPoint) places += 1;
      } else if (code === POINT && !seenPoint) seenPoint = true;
      else break;
    }
    if (digits === 0) return Number.NaN;
    const exponent = at === pos ? 0 : this.exponent(at);
    if (Number.isNaN(exponent)) return Number.NaN;
    const size = scaled(whole, exponent - places) ?? Math.abs(this.rounded());
    return first === MINUS ? -size : size;
  }

  /** The word read last as a whole number that may have a sign; NaN where it is none. Stops at a slash. */
  index(): number {
    const { bytes, pos } = this;
    let at = this.start;
    const first = bytes[at];
    if (first === MINUS || first === PLUS) at += 1;
    const from = at;
    let whole = 0;
    for (; at < pos && bytes[at] !== SLASH; at += 1) {
      const code = bytes[at]!;
      if (code < ZERO || code > NINE) return Number.NaN;
      whole = 10 * whole + (code - ZERO);
    }
    if (at === from) return Number.NaN;
    return first === MINUS ? -whole : whole;
  }

  /** Every digit of the word, as the language rounds it. */
  private rounded(): number {
    return Number(names.decode(this.bytes.subarray(this.start, this.pos)));
  }

  private exponent(mark: number): number {
    const { bytes, pos } = this;
    if ((bytes[mark]! | SMALL) !== SMALL_E) return Number.NaN;
    const sign = bytes[mark + 1];
    const from = sign === MINUS || sign === PLUS ? mark + 2 : mark + 1;
    if (from >= pos) return Number.NaN;
    let exponent = 0;
    for (let at = from; at < pos; at += 1) {
      const code = bytes[at]!;
      if (code < ZERO || code > NINE) return Number.NaN;
      exponent = 10 * exponent + (code - ZERO);
    }
    return sign === MINUS ? -exponent : exponent;
  }

  private carriesOn(): boolean {
    return this.continues && this.bytes[this.pos] === BACKSLASH && isLineEnd(this.bytes[this.pos + 1]);
  }

  private passLineEnd(): void {
    if (this.bytes[this.pos] === RETURN && this.bytes[this.pos + 1] === LINE_FEED) this.pos += 1;
    this.pos += 1;
    this.line += 1;
  }
}

/**
 * A whole number times a power of ten, rounded once as the nearest double; undefined where that takes more than one step.
 * Both are exact below 2⁵³ and 10²², so that one multiplication or division rounds correctly.
 */
function scaled(whole: number, power: number): number | undefined {
  if (!(whole < EXACT) || Math.abs(power) >= POWERS.length) return undefined;
  return power < 0 ? whole / POWERS[-power]! : whole * POWERS[power]!;
}

function isGap(code: number | undefined): boolean {
  return code === SPACE || code === TAB || code === FORM_FEED || code === COLUMN_FEED;
}

function isLineEnd(code: number | undefined): boolean {
  return code === LINE_FEED || code === RETURN;
}

function isBlank(code: number): boolean {
  return code <= SPACE && (isGap(code) || isLineEnd(code));
}
