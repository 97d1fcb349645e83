/**
 * Lines of any kind: of more than a motion with its words. Where printers differ from ISO 6983 it is common practice, without a source:
 * letters in any case, blanks anywhere or nowhere, `E` a word and never an exponent, several G words in a line of which all but
 * motions hold at once, checksums that are compared but not insisted on, G words that are not known passed over, and after most M
 * words whatever follows, since names and texts do. Source: iso-6983.
 */
import type { BadLines } from './badLines.ts';
import { checksumOf, toldChecksum } from './checksum.ts';
import type { BadLineWhy } from './gcodeText.ts';
import type { Machine } from './machine.ts';
import { numberIn } from './numbers.ts';
import { G, M, N, T, type Words } from './words.ts';

const BLANK = 32;
const PER_CENT = 37;
const OPEN = 40;
const CLOSE = 41;
const STAR = 42;
const PLUS = 43;
const MINUS = 45;
const POINT = 46;
const SLASH = 47;
const SEMICOLON = 59;
const UNDERSCORE = 95;
/** The first byte of the mark at the head of UTF-8. */
const MARK = 0xef;

const isLetter = (code: number) => (code | 32) >= 97 && (code | 32) <= 122;
const isDigit = (code: number) => code >= 48 && code <= 57;

/** G words that have words of their own, ten times their number: beside one of them, those are not where to go. */
const DWELL = 40;
const DRAW_BACK = 100;
const RESTORE = 110;
const HOME = 280;
const RESET = 920;
const UNRESET = 921;
const ACTIONS: readonly number[] = [DWELL, DRAW_BACK, RESTORE, HOME, RESET, UNRESET];

/** M words that are obeyed. */
const ABSOLUTE_FEED = 82;
const RELATIVE_FEED = 83;
const VOLUMETRIC = 200;
const FLOW = 221;

export class OddLines {
  readonly told = { commands: 0, numbered: 0, checksums: 0, badChecksums: 0, named: 0 };
  readonly #words: Words;
  readonly #machine: Machine;
  readonly #badLines: BadLines;
  #bytes: Uint8Array = new Uint8Array(0);
  /** Where the line begins, and where it ends. */
  #start = 0;
  #end = 0;
  #line = 0;
  /** Of this line: whether it holds a command, and a number of its own; words with and without a number. */
  #isCommand = false;
  #isNumbered = false;
  #seen = 0;
  #bare = 0;
  /** Its motion, its other G word and the M word that is obeyed; −1 without. */
  #motion = -1;
  #action = -1;
  #amount = -1;
  #why: BadLineWhy | undefined;

  constructor(words: Words, machine: Machine, badLines: BadLines) {
    this.#words = words;
    this.#machine = machine;
    this.#badLines = badLines;
  }

  /**
   * Reads a line, and obeys it.
   *
   * @param start - where it begins in the bytes
   * @param end - where the new line stands that ends it
   * @param line - from 1
   */
  read(bytes: Uint8Array, start: number, end: number, line: number): void {
    this.#begin(bytes, start, end, line);
    let i = start;
    while (i < end) {
      const c = bytes[i]!;
      if (c <= BLANK) i += 1;
      else if (c === SEMICOLON) break;
      else if (isLetter(c)) i = this.#word(i);
      else i = this.#other(i);
    }
    this.#finish();
  }

  #begin(bytes: Uint8Array, start: number, end: number, line: number): void {
    this.#bytes = bytes;
    this.#start = start;
    this.#end = end;
    this.#line = line;
    this.#isCommand = false;
    this.#isNumbered = false;
    this.#seen = 0;
    this.#bare = 0;
    this.#motion = -1;
    this.#action = -1;
    this.#amount = -1;
    this.#why = undefined;
  }

  /** Whether nothing has been read but a number of the line. */
  #isHead(): boolean {
    return !this.#isCommand && this.#seen === 0 && this.#why === undefined;
  }

  #pastBlanks(at: number): number {
    let i = at;
    while (i < this.#end && this.#bytes[i]! <= BLANK) i += 1;
    return i;
  }

  /** A letter and its number, whatever stands between them; gives where to go on. */
  #word(at: number): number {
    const bytes = this.#bytes;
    const place = bytes[at]! & 31;
    let i = this.#pastBlanks(at + 1);
    const sign = bytes[i]!;
    if (sign === MINUS || sign === PLUS) i = this.#pastBlanks(i + 1);
    const first = i;
    while (isDigit(bytes[i]!)) i += 1;
    let digits = i - first;
    if (bytes[i] === POINT) {
      const point = i + 1;
      i = point;
      while (isDigit(bytes[i]!)) i += 1;
      digits += i - point;
    }
    const size = digits > 0 ? numberIn(bytes, first, i) : Number.NaN;
    return this.#take(place, sign === MINUS ? -size : size, at, i);
  }

  /** @param number - no number where there are no digits */
  #take(place: number, number: number, at: number, after: number): number {
    const hasNumber = !Number.isNaN(number);
    if (place === G) this.#g(number);
    else if (place === M) return this.#m(number) ? after : this.#rest(after);
    else if (place === N && hasNumber && this.#isHead()) this.#number();
    else if (place === T && hasNumber && this.#isHead()) {
      this.#isCommand = true;
      this.#machine.tool(number);
    } else if (this.#isHead() && isNamed(this.#bytes[at + 1]!)) {
      // A command by a name, of printers that know such: what follows is not in words of letters and numbers.
      this.#isCommand = true;
      this.told.named += 1;
      return this.#end;
    } else {
      this.#seen |= 1 << place;
      if (!hasNumber) this.#bare |= 1 << place;
      this.#words.value[place] = hasNumber ? number : 0;
    }
    return after;
  }

  #number(): void {
    this.#isNumbered = true;
    this.told.numbered += 1;
  }

  #g(number: number): void {
    const code = Math.round(10 * number);
    this.#isCommand = true;
    if (!(number >= 0)) this.#why ??= 'bad-number';
    else if (code <= 30 && code % 10 === 0) this.#motion = code / 10;
    else if (!this.#machine.hold(code) && !ACTIONS.includes(this.#action)) this.#action = code;
  }

  /** Tells whether the words beside it matter. */
  #m(number: number): boolean {
    this.#isCommand = true;
    if (number === ABSOLUTE_FEED || number === RELATIVE_FEED) this.#machine.holdFeed(number === RELATIVE_FEED);
    if (number !== VOLUMETRIC && number !== FLOW) return false;
    this.#amount = number;
    return true;
  }

  /** What is neither a letter nor a blank; gives where to go on. */
  #other(at: number): number {
    const c = this.#bytes[at]!;
    if (c === OPEN) {
      const close = this.#bytes.subarray(at, this.#end).indexOf(CLOSE);
      return close < 0 ? this.#end : at + close + 1;
    }
    if (c === STAR) this.#checksum(at);
    else if (c === MARK && this.#line === 1 && at === this.#start) return Math.min(at + 3, this.#end);
    else if (!(this.#isHead() && (c === PER_CENT || c === SLASH))) {
      this.#why ??= isDigit(c) || c === POINT || c === MINUS || c === PLUS ? 'bad-number' : 'no-word';
    }
    return this.#end;
  }

  /** Past words that do not matter, and text that is no words. */
  #rest(at: number): number {
    // A star may well be part of a text; of a line with a number it is the checksum.
    const star = this.#isNumbered ? this.#bytes.subarray(at, this.#end).lastIndexOf(STAR) : -1;
    if (star >= 0) this.#checksum(at + star);
    return this.#end;
  }

  #checksum(star: number): void {
    const isMarked = this.#line === 1 && this.#bytes[this.#start] === MARK;
    const sum = checksumOf(this.#bytes, isMarked ? this.#start + 3 : this.#start, star);
    this.told.checksums += 1;
    if (toldChecksum(this.#bytes, star + 1, this.#end) !== sum) this.told.badChecksums += 1;
  }

  #finish(): void {
    const isMove = this.#motion >= 0 || (this.#action < 0 && this.#amount < 0 && this.#machine.isMove(this.#seen));
    if (this.#why === undefined && (this.#isCommand || isMove)) {
      this.told.commands += 1;
      this.#why = this.#obey(isMove);
    }
    if (this.#why !== undefined) this.#badLines.add(this.#bytes, this.#start, this.#line, this.#why);
  }

  #obey(isMove: boolean): BadLineWhy | undefined {
    const machine = this.#machine;
    this.#words.seen = this.#seen;
    if (this.#amount === VOLUMETRIC) machine.volumetric();
    else if (this.#amount === FLOW) machine.flow();
    if (ACTIONS.includes(this.#action)) return this.#act();
    if (!isMove) return undefined;
    if (machine.isMove(this.#bare)) return 'bad-number';
    if (this.#motion < 0) return machine.goOn(this.#seen, this.#line);
    return machine.move(this.#seen, this.#motion, this.#line);
  }

  #act(): BadLineWhy | undefined {
    const machine = this.#machine;
    if (this.#action === RESET) return machine.reset();
    if (this.#action === HOME) machine.home(this.#line);
    else if (this.#action === UNRESET) machine.unreset();
    else if (this.#action !== DWELL) machine.firmwareFeed(this.#action === RESTORE);
    return undefined;
  }
}

const isNamed = (second: number) => isLetter(second) || second === UNDERSCORE;
