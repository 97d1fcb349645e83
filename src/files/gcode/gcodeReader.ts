/**
 * Reads G-code piece by piece: words of a letter and a number, as the firmwares of common printers take them. Nothing is ever
 * fatal: what is not understood is counted and told. Source: iso-6983.
 */
import type { MoveSink } from '../../core/inspect/toolpath/moves.ts';
import type { Mm } from '../../core/units.ts';
import { BadLines } from './badLines.ts';
import type { GcodeText } from './gcodeText.ts';
import { Machine } from './machine.ts';
import { TENS } from './numbers.ts';
import { OddLines } from './oddLines.ts';
import { WholeLines } from './wholeLines.ts';
import { Words } from './words.ts';

export interface GcodeOptions {
  /** Of the filament that lengths are told in [mm]. */
  readonly filamentDiameter: Mm;
}

export class GcodeReader {
  readonly #words = new Words();
  readonly #machine: Machine;
  readonly #badLines = new BadLines();
  readonly #odd: OddLines;
  readonly #pieces: WholeLines;
  #bytes = 0;
  #lines = 0;
  #commands = 0;

  /** @param sink - takes in the moves */
  constructor({ filamentDiameter }: GcodeOptions, sink: MoveSink) {
    this.#machine = new Machine(this.#words, filamentDiameter, sink);
    this.#odd = new OddLines(this.#words, this.#machine, this.#badLines);
    this.#pieces = new WholeLines({
      lines: (bytes, from, to) => this.#read(bytes, from, to),
      tooLong: (beginning) => {
        this.#lines += 1;
        this.#badLines.add(beginning, 0, this.#lines, 'too-long');
      },
    });
  }

  /** Takes the next piece of the text, cut anywhere. */
  feed(piece: Uint8Array): void {
    this.#bytes += piece.length;
    this.#pieces.feed(piece);
  }

  /** After the last piece. */
  end(): GcodeText {
    this.#pieces.end();
    this.#machine.flush();
    const { commands, ...odd } = this.#odd.told;
    return {
      bytes: this.#bytes,
      lines: this.#lines,
      commands: this.#commands + commands,
      ...this.#machine.told(),
      ...odd,
      bad: this.#badLines.count,
      badLines: this.#badLines.told,
    };
  }

  /**
   * Whole lines. One loop over all bytes, though it is long: a call for each word would take as long as the word, and one that gives
   * a number puts it into a box. Digits are looked at four at once, which spares most of the guesses at how many there are. It
   * knows motions with their words and comments; a line with anything else is read again by `OddLines`, which knows all.
   */
  #read(bytes: Uint8Array, from: number, to: number): void {
    // In the function, since only there they are known to be constant: outside they would be looked up again for every byte.
    const LINE_END = 10;
    const BLANK = 32;
    const MINUS = 45;
    const POINT = 46;
    const ZERO = 48;
    const NINE = 57;
    const SEMICOLON = 59;
    // How most lines begin, as the lowest three bytes of four: G, 1 and a blank.
    const THREE = 0xff_ff_ff;
    const G1_BLANK = 0x20_31_47;
    // G, and all letters whose numbers are no lengths: G, M, N, T.
    const G = 7;
    const NO_LENGTH = (1 << 7) | (1 << 13) | (1 << 14) | (1 << 20);
    // With no more digits before and behind the point, both together make a whole number that is exact.
    const MOST_DIGITS = 7;
    const tenTo = TENS;
    const ZEROS = 0x30_30_30_30;
    const ONLY_LAST = 0x80_00_00_00 | 0;
    // Of four bytes less '0' each, the first in the lowest place: the highest bits of those that are no digits, right up to the first.
    // oxlint-disable-next-line unicorn/consistent-function-scoping
    const notDigits = (four: number): number => ((four + 0x76_76_76_76) | four) & (0x80_80_80_80 | 0);
    // What four digits make: pairs first, then both.
    // oxlint-disable-next-line unicorn/consistent-function-scoping
    const ofFourDigits = (four: number): number => {
      const pairs = (Math.imul(four, 10) + (four >>> 8)) & 0x00_ff_00_ff;
      return (Math.imul(pairs, 100) + (pairs >>> 16)) & 0xff_ff;
    };
    const { value } = this.#words;
    const machine = this.#machine;
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    let start = from;
    while (start < to) {
      let i = start;
      let seen = 0;
      let motion = -1;
      let isPlain = true;
      if ((view.getInt32(i, true) & THREE) === G1_BLANK) {
        motion = 1;
        i += 3;
      }
      let c = bytes[i]!;
      while (c !== LINE_END) {
        if (c <= BLANK) {
          i += 1;
          c = bytes[i]!;
          continue;
        }
        if ((c | 32) < 97 || (c | 32) > 122) {
          isPlain = c === SEMICOLON;
          break;
        }
        const place = c & 31;
        i += 1;
        c = bytes[i]!;
        const sign = c;
        if (sign === MINUS) {
          i += 1;
          c = bytes[i]!;
        }
        const first = i;
        let whole = 0;
        let four = view.getInt32(i, true) ^ ZEROS;
        if (notDigits(four) === ONLY_LAST) {
          whole = ofFourDigits(four << 8);
          i += 3;
          c = bytes[i]!;
        } else
          while (c >= ZERO && c <= NINE) {
            whole = (Math.imul(10, whole) + c - ZERO) | 0;
            i += 1;
            c = bytes[i]!;
          }
        const wholes = i - first;
        let decimals = 0;
        let part = 0;
        if (c === POINT) {
          i += 1;
          const point = i;
          four = view.getInt32(i, true) ^ ZEROS;
          const nots = notDigits(four);
          if (nots === ONLY_LAST) {
            part = ofFourDigits(four << 8);
            i += 3;
          } else if (nots === 0) {
            part = ofFourDigits(four);
            i += 4;
          }
          c = bytes[i]!;
          while (c >= ZERO && c <= NINE) {
            part = (Math.imul(10, part) + c - ZERO) | 0;
            i += 1;
            c = bytes[i]!;
          }
          decimals = i - point;
        }
        if (place === G && whole <= 3 && wholes > 0 && wholes < 3 && decimals === 0 && sign !== MINUS) {
          motion = whole;
          continue;
        }
        // No digits at all are too many, too.
        if ((wholes | decimals) > MOST_DIGITS || (wholes | decimals) === 0 || ((NO_LENGTH >> place) & 1) !== 0) {
          isPlain = false;
          break;
        }
        const tens = tenTo[decimals]!;
        const size = (whole * tens + part) / tens;
        value[place] = sign === MINUS ? -size : size;
        seen |= 1 << place;
        if (c === BLANK) {
          i += 1;
          c = bytes[i]!;
        }
      }
      if (c !== LINE_END) i = bytes.indexOf(LINE_END, i);
      this.#lines += 1;
      if (!isPlain) this.#odd.read(bytes, start, i, this.#lines);
      else if (motion >= 0 || machine.isMove(seen)) {
        this.#commands += 1;
        const why = motion < 0 ? machine.goOn(seen, this.#lines) : machine.move(seen, motion, this.#lines);
        if (why !== undefined) this.#badLines.add(bytes, start, this.#lines, why);
      }
      start = i + 1;
    }
  }
}
