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
const TENS = Float64Array.from({ length: FAST_DIGITS + 1 }, (_, i) => 10 ** i);

const NEW_LINE = 10;
const RETURN = 13;
const MOVING = [X, Y, Z, E, I, J, K, R].reduce((bits, place) => bits | (1 << place), 0);

export interface GcodeOptions {
  /** Of the filament that lengths are told in [mm]. */
  readonly filamentDiameter: Mm;
}

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
  /** Of the line that is read: its motion, another thing to do, and what is wrong with it. */
  #motion = -1;
  #action = -1;
  #why: BadLineWhy | undefined;
  /** An M word whose other words matter. */
  #held = 0;

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
    const { moves, modal, isEver, tools } = this.#machine;
    const { resets, feedResets, firmwareRetractions, firmwareRestores, toolChanges } = this.#machine;
    return {
      bytes: this.#bytes,
      lines: this.#lines,
      commands: this.#commands,
      moves: [...moves],
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

  /** Whole lines. */
  #read(bytes: Uint8Array, from: number, to: number): void {
    let at = from;
    while (at < to) at = this.#line(bytes, at);
  }

  /** One line; gives where the next begins. The last byte there is ends a line. */
  #line(bytes: Uint8Array, start: number): number {
    const words = this.#words;
    const { value } = words;
    this.#lines += 1;
    let i = start;
    let seen = 0;
    let isCommand = false;
    let isModal = true;
    words.bare = 0;
    let c = bytes[i]!;
    while (c !== NEW_LINE) {
      if (c === 32) {
        i += 1;
        c = bytes[i]!;
        continue;
      }
      const place = c & 31;
      if (!isLetter(c)) {
        i = this.#other(bytes, start, i, isCommand || seen !== 0);
        c = bytes[i]!;
        continue;
      }
      i += 1;
      c = bytes[i]!;
      while (c === 32) {
        i += 1;
        c = bytes[i]!;
      }
      let isBelow = false;
      if (c === 45 || c === 43) {
        isBelow = c === 45;
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
      let number = whole;
      if (c === 46) {
        i += 1;
        c = bytes[i]!;
        const point = i;
        while (c >= 48 && c <= 57) {
          whole = (10 * whole + c - 48) | 0;
          i += 1;
          c = bytes[i]!;
        }
        digits += i - point;
        number = digits > FAST_DIGITS ? 0 : whole / TENS[i - point]!;
      }
      if (digits > FAST_DIGITS) number = longNumber(bytes, first, i);
      if (digits === 0) {
        if (!isCommand && seen === 0 && (isLetter(c) || c === 95)) {
          // A command by a word, of printers that know such: what follows is not in words of letters and numbers.
          this.#named += 1;
          isCommand = true;
          isModal = false;
          i = bytes.indexOf(NEW_LINE, i);
          break;
        }
        words.bare |= 1 << place;
      }
      value[place] = isBelow ? -number : number;
      if (place === G) {
        if (!this.#g(digits === 0 ? -1 : number)) isModal = false;
        isCommand = true;
      } else if (place === M) {
        isCommand = true;
        isModal = false;
        if (!this.#m(digits === 0 ? -1 : number)) {
          i = this.#rest(bytes, start, i);
          break;
        }
      } else if (place === T && this.#action < 0 && this.#motion < 0) {
        // In other commands it names the tool that they are about.
        isCommand = true;
        isModal = false;
        if (digits > 0) this.#machine.tool(number);
      } else if (place === N && seen === 0 && !isCommand) this.#numbered += 1;
      else seen |= 1 << place;
    }
    words.seen = seen;
    if (this.#why === undefined && (isCommand || (seen !== 0 && isModal))) this.#do(seen, isCommand, isModal);
    if (this.#why !== undefined) this.#tell(bytes, start, this.#why, this.#lines);
    this.#motion = -1;
    this.#action = -1;
    this.#held = 0;
    this.#why = undefined;
    return i + 1;
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
    if (star > at) this.#checksum(bytes, start, star, end);
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

  /** A G word; tells whether a motion may still be meant by the words beside it. */
  #g(number: number): boolean {
    if (number >= 0 && number <= 3 && Number.isInteger(number)) {
      this.#motion = number;
      return false;
    }
    if (number < 0) this.#why = 'bad-number';
    const code = Math.round(10 * number);
    if (this.#machine.hold(code)) return true;
    this.#action = Math.max(0, code);
    return false;
  }

  /** An M word; tells whether the words beside it matter. */
  #m(number: number): boolean {
    if (number === 82 || number === 83) this.#machine.holdFeed(number === 83);
    if (number === 200 || number === 221) {
      this.#held = number;
      this.#action = 0;
      return true;
    }
    return false;
  }
  /** What the words of a line ask for. */
  #do(seen: number, isCommand: boolean, isModal: boolean): void {
    if (this.#held !== 0) {
      this.#commands += 1;
      if (this.#held === 200) this.#machine.volumetric();
      else this.#machine.flow();
      return;
    }
    const machine = this.#machine;
    if (this.#motion >= 0) {
      this.#commands += 1;
      machine.motion = this.#motion;
      this.#why = machine.move(this.#lines);
      return;
    }
    if (this.#action >= 0) {
      this.#commands += 1;
      this.#act(this.#action);
      return;
    }
    const moves = isModal && (seen & MOVING) !== 0;
    if (isCommand || moves) this.#commands += 1;
    if (!moves) return;
    machine.modal += 1;
    this.#why = machine.move(this.#lines);
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

/** A number of more digits than whole numbers of 31 bits hold. */
function longNumber(bytes: Uint8Array, from: number, to: number): number {
  let text = '';
  for (let i = from; i < Math.min(to, from + 400); i += 1) text += String.fromCharCode(bytes[i]!);
  return Number(text);
}
