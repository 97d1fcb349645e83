/**
 * Reads G-code piece by piece: words of a letter and a number (ISO 6983), as the firmwares of common printers take them.
 * Written for speed: each byte is looked at once, and nothing is made for a line but a row of numbers.
 */
import type { MoveSink } from '../../core/inspect/toolpath/moves.ts';
import type { Mm } from '../../core/units.ts';
import { MOST_TOLD, type BadLine, type BadLineWhy, type GcodeText } from './gcodeText.ts';
import { Machine } from './machine.ts';
import { E, G, I, J, K, M, N, R, T, Words, X, Y, Z } from './words.ts';

/** Longer lines are none that a printer takes [bytes]. */
const LONGEST = 65_536;
/** Of a line that is not understood so much is told [characters]. */
const TOLD = 80;
/** Digits that a whole number of 31 bits holds. */
const FAST_DIGITS = 9;
/** And one of 53 bits. */
const EXACT_DIGITS = 15;
const TENS = Float64Array.from({ length: EXACT_DIGITS + 1 }, (_, i) => 10 ** i);

const NEW_LINE = 10;
const RETURN = 13;
const MOVING = [X, Y, Z, E, I, J, K, R].reduce((bits, place) => bits | (1 << place), 0);

export interface GcodeOptions {
  /** Of the filament that lengths are told in [mm]. */
  readonly filamentDiameter: Mm;
}

/** Letters whose numbers are no lengths. */
const NO_LENGTH = [G, M, N, T].reduce((bits, place) => bits | (1 << place), 0);

const isLetter = (code: number) => (code >= 65 && code <= 90) || (code >= 97 && code <= 122);

export class GcodeReader {
  readonly #words = new Words();
  readonly #machine: Machine;
  readonly #badLines: BadLine[] = [];
  /** What of a line the piece before ended with. */
  #carried = new Uint8Array(0);
  /** In the rest of a line that is too long. */
  #isSkipping = false;
  #bytes = 0;
  #lines = 0;
  #commands = 0;
  #numbered = 0;
  #checksums = 0;
  #badChecksums = 0;
  #named = 0;
  #bad = 0;
  /** Of the line that is read: what else than to move, which amount to set (M200, M221), and what is wrong with it. */
  #action = -1;
  #amount = 0;
  #why: BadLineWhy | undefined;

  constructor({ filamentDiameter }: GcodeOptions, sink: MoveSink) {
    this.#machine = new Machine(this.#words, filamentDiameter, sink);
  }

  /** Takes the next piece of the text, cut anywhere. */
  feed(piece: Uint8Array): void {
    this.#bytes += piece.length;
    let from = 0;
    if (this.#isSkipping || this.#carried.length > 0) {
      const end = piece.indexOf(NEW_LINE);
      if (end < 0) {
        this.#carry(piece);
        return;
      }
      this.#joined(piece.subarray(0, end + 1));
      from = end + 1;
    }
    const last = piece.lastIndexOf(NEW_LINE) + 1;
    if (last > from) this.#read(piece, from, last);
    this.#carry(piece.subarray(Math.max(from, last)));
  }

  /** After the last piece. */
  end(): GcodeText {
    if (this.#isSkipping || this.#carried.length > 0) this.#joined(Uint8Array.of(NEW_LINE));
    this.#machine.flush();
    const { modal, isEver, tools } = this.#machine;
    const { resets, feedResets, firmwareRetractions, firmwareRestores, toolChanges } = this.#machine;
    return {
      bytes: this.#bytes,
      lines: this.#lines,
      commands: this.#commands,
      moves: this.#machine.moves(),
      modal,
      isEver: { ...isEver },
      numbered: this.#numbered,
      checksums: this.#checksums,
      badChecksums: this.#badChecksums,
      resets,
      feedResets,
      firmwareRetractions,
      firmwareRestores,
      toolChanges,
      tools: [...tools].toSorted((a, b) => a - b),
      named: this.#named,
      bad: this.#bad,
      badLines: this.#badLines,
    };
  }

  #carry(rest: Uint8Array): void {
    if (this.#isSkipping || rest.length === 0) return;
    if (this.#carried.length + rest.length > LONGEST) {
      this.#tell(rest.length > TOLD ? rest : this.#carried, 0, 'too-long', this.#lines + 1);
      this.#carried = new Uint8Array(0);
      this.#isSkipping = true;
      return;
    }
    const both = new Uint8Array(this.#carried.length + rest.length);
    both.set(this.#carried);
    both.set(rest, this.#carried.length);
    this.#carried = both;
  }

  /** A line that began in an earlier piece. */
  #joined(rest: Uint8Array): void {
    if (this.#isSkipping) {
      this.#isSkipping = false;
      this.#lines += 1;
      return;
    }
    const line = new Uint8Array(this.#carried.length + rest.length);
    line.set(this.#carried);
    line.set(rest, this.#carried.length);
    this.#carried = new Uint8Array(0);
    this.#read(line, 0, line.length);
  }

  /** Whole lines. One loop over all bytes: a call for each line would cost as much as the line. */
  #read(bytes: Uint8Array, from: number, to: number): void {
    const words = this.#words;
    const machine = this.#machine;
    const { value } = words;
    let start = from;
    while (start < to) {
      this.#lines += 1;
      let i = start;
      let seen = 0;
      let bare = 0;
      let motion = -1;
      // Another command than a motion, or words that hold from now on.
      let isOther = false;
      let c = bytes[i]!;
      while (c !== NEW_LINE) {
        if (c === 32) {
          i += 1;
          c = bytes[i]!;
          continue;
        }
        if ((c | 32) < 97 || (c | 32) > 122) {
          i = this.#other(bytes, start, i, seen !== 0 || motion >= 0 || isOther);
          c = bytes[i]!;
          continue;
        }
        const place = c & 31;
        i += 1;
        c = bytes[i]!;
        while (c === 32) {
          i += 1;
          c = bytes[i]!;
        }
        const sign = c;
        if (c === 45 || c === 43) {
          i += 1;
          c = bytes[i]!;
        }
        const first = i;
        let whole = 0;
        while (c >= 48 && c <= 57) {
          whole = (10 * whole + c - 48) | 0;
          i += 1;
          c = bytes[i]!;
        }
        let digits = i - first;
        let decimals = 0;
        if (c === 46) {
          i += 1;
          c = bytes[i]!;
          const point = i;
          while (c >= 48 && c <= 57) {
            whole = (10 * whole + c - 48) | 0;
            i += 1;
            c = bytes[i]!;
          }
          decimals = i - point;
          digits += decimals;
        }
        if (place === G && digits > 0 && digits < 3 && whole <= 3 && decimals === 0) {
          motion = whole;
          continue;
        }
        const size = digits > FAST_DIGITS ? longNumber(bytes, first, i) : whole / TENS[decimals]!;
        value[place] = sign === 45 ? -size : size;
        if (((NO_LENGTH >> place) & 1) === 0 && digits > 0) {
          seen |= 1 << place;
          continue;
        }
        const isFirst = seen === 0 && motion < 0 && !isOther;
        if (place === G || place === M || (isFirst && (place === N || place === T) && digits > 0)) {
          isOther ||= place !== N;
          const goesOn = this.#special(place, digits > 0 ? value[place] : -1);
          if (!goesOn) i = this.#rest(bytes, start, i);
          c = bytes[i]!;
          continue;
        }
        if (digits === 0 && isFirst && (isLetter(c) || c === 95)) {
          // A command by a word, of printers that know such: what follows is not in words of letters and numbers.
          this.#named += 1;
          isOther = true;
          i = bytes.indexOf(NEW_LINE, i);
          break;
        }
        if (digits === 0) bare |= 1 << place;
        seen |= 1 << place;
      }
      words.seen = seen;
      words.bare = bare;
      if (motion >= 0 && !isOther && this.#why === undefined) {
        this.#commands += 1;
        machine.motion = motion;
        const why = machine.move(this.#lines);
        if (why !== undefined) this.#tell(bytes, start, why, this.#lines);
      } else if (seen !== 0 || isOther || motion >= 0 || this.#why !== undefined) {
        this.#finish(bytes, start, motion, isOther);
      }
      start = i + 1;
    }
  }

  /** A word that is no length: tells whether the words after it are. A number below 0 is none. */
  #special(place: number, number: number): boolean {
    if (place === N) this.#numbered += 1;
    else if (place === T) this.#machine.tool(number);
    else if (place === G) this.#g(number);
    else return this.#m(number);
    return true;
  }

  #g(number: number): void {
    const code = Math.round(10 * number);
    if (number < 0) this.#why = 'bad-number';
    else if (!this.#machine.hold(code)) this.#action = code;
  }

  /** Tells whether the words beside it matter: after some come names and texts. */
  #m(number: number): boolean {
    if (number === 82 || number === 83) this.#machine.holdFeed(number === 83);
    if (number !== 200 && number !== 221) return false;
    this.#amount = number;
    return true;
  }

  /** A line that is not just a motion with its words. */
  #finish(bytes: Uint8Array, start: number, motion: number, isOther: boolean): void {
    const machine = this.#machine;
    const moves = motion >= 0 || (this.#action < 0 && this.#amount === 0 && (this.#words.seen & MOVING) !== 0);
    if (this.#why === undefined && (isOther || moves)) {
      this.#commands += 1;
      if (motion >= 0) machine.motion = motion;
      else if (moves) machine.modal += 1;
      if (this.#action >= 0) this.#act(this.#action);
      else if (this.#amount === 200) machine.volumetric();
      else if (this.#amount === 221) machine.flow();
      else if (moves) this.#why = machine.move(this.#lines);
    }
    if (this.#why !== undefined) this.#tell(bytes, start, this.#why, this.#lines);
    this.#action = -1;
    this.#amount = 0;
    this.#why = undefined;
  }

  /** What is neither a word nor a blank; gives where to go on. */
  #other(bytes: Uint8Array, start: number, at: number, isWithin: boolean): number {
    const c = bytes[at]!;
    if (c === RETURN || c === 9) return at + 1;
    const end = bytes.indexOf(NEW_LINE, at);
    if (c === 59) return end;
    if (c === 40) {
      const close = bytes.indexOf(41, at);
      return close >= 0 && close < end ? close + 1 : end;
    }
    if (c === 42) {
      this.#checksum(bytes, start, at, end);
      return end;
    }
    if (!isWithin && (c === 37 || c === 47)) return end;
    // A byte mark, at the very head.
    if (this.#lines === 1 && at === start && c === 0xef) return at + 3 <= end ? at + 3 : end;
    this.#why ??= c === 46 || (c >= 48 && c <= 57) || c === 45 || c === 43 ? 'bad-number' : 'no-word';
    return end;
  }

  /** Past words that do not matter, and text that is no words; gives where the line ends. */
  #rest(bytes: Uint8Array, start: number, at: number): number {
    const end = bytes.indexOf(NEW_LINE, at);
    const isNumbered = (bytes[start]! & 31) === N;
    const star = isNumbered ? bytes.lastIndexOf(42, end) : -1;
    if (star >= at) this.#checksum(bytes, start, star, end);
    return end;
  }

  #checksum(bytes: Uint8Array, start: number, at: number, end: number): void {
    this.#checksums += 1;
    let sum = 0;
    for (let i = start; i < at; i += 1) sum ^= bytes[i]!;
    let told = 0;
    for (let i = at + 1; i < end && bytes[i]! >= 48 && bytes[i]! <= 57; i += 1) told = 10 * told + bytes[i]! - 48;
    if (told !== sum) this.#badChecksums += 1;
  }

  #act(code: number): void {
    const machine = this.#machine;
    if (code === 280) machine.home(this.#lines);
    else if (code === 920) machine.reset();
    else if (code === 921) machine.unreset();
    else if (code === 100) machine.firmwareFeed(false);
    else if (code === 110) machine.firmwareFeed(true);
  }

  #tell(bytes: Uint8Array, start: number, why: BadLineWhy, line: number): void {
    this.#bad += 1;
    if (this.#badLines.length >= MOST_TOLD) return;
    const end = bytes.indexOf(NEW_LINE, start);
    const told = bytes.subarray(start, Math.min(end < 0 ? bytes.length : end, start + TOLD));
    this.#badLines.push({ line, text: new TextDecoder('utf-8').decode(told).trimEnd(), why });
  }
}

/** A number of more digits than whole numbers of 31 bits hold: exact up to 15, as near as can be beyond. */
function longNumber(bytes: Uint8Array, from: number, to: number): number {
  let whole = 0;
  let digits = 0;
  let decimals = -1;
  for (let i = from; i < to; i += 1) {
    const c = bytes[i]!;
    if (c === 46) decimals = 0;
    else {
      whole = 10 * whole + c - 48;
      digits += 1;
      if (decimals >= 0) decimals += 1;
    }
  }
  if (digits <= EXACT_DIGITS) return decimals > 0 ? whole / TENS[decimals]! : whole;
  return Number(new TextDecoder().decode(bytes.subarray(from, Math.min(to, from + 400))));
}
