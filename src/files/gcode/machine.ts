/**
 * What a printer does with the words of a line: where it goes and what it pushes on. As the common firmwares do it; common
 * practice, no source: filament is relative where G91 or M83 holds and else absolute, all tools share one place of it, what has been
 * drawn back is pushed on again before anything comes out, homing is at 0, places called anew (G92) stay where they are, and
 * a flow (M221) changes what comes out and nothing else.
 */
import * as row from '../../core/inspect/toolpath/moves.ts';
import type { MoveSink } from '../../core/inspect/toolpath/moves.ts';
import type { Mm } from '../../core/units.ts';
import { arcOf, planeOf, type PlaneNumber } from './arcWords.ts';
import { chordsOf, lengthOf, placeAt } from './arcs.ts';
import type { BadLineWhy } from './gcodeText.ts';
import { AT, AT_FIRST } from './standing.ts';
import { Told } from './told.ts';
import { D, E, I, J, K, L, P, R, S, X, Y, Z, type Words } from './words.ts';

const MM_IN_INCH = 25.4;
/** Rows that are handed on at once. */
const BATCH = 1024;
/** No desktop printer reaches farther [mm]; what does is a slip of the file. */
const FARTHEST = 1e6;
/** Tools that are told apart. */
const MOST_TOOLS = 64;
/** More is a slip of the file [%]. */
const MOST_FLOW = 1000;

/** How filament is told, by bits. */
const ABSOLUTE_FEED = 1;
const RELATIVE_FEED = 2;

const bit = (place: number) => 1 << place;
const PLACES = bit(X) | bit(Y) | bit(Z);
const MOVES = PLACES | bit(E);
const MOVING = MOVES | bit(I) | bit(J) | bit(K) | bit(R);

/** Written so that what is no number is beyond, too. */
const isBeyond = (...places: readonly number[]) => places.some((place) => !(Math.abs(place) <= FARTHEST));

export class Machine {
  /** What it knows of the text. */
  readonly #told = new Told();
  readonly #sink: MoveSink;
  readonly #words: Words;
  readonly #value: Float64Array;
  readonly #filamentArea: number;
  readonly #rows = new Float64Array(BATCH * row.MOVE_SIZE);
  #count = 0;
  readonly #s = Float64Array.from(AT_FIRST);
  readonly #owed = new Float64Array(MOST_TOOLS);
  #isRelative = false;
  #isFeedRelative = false;
  #isCentreAbsolute = false;
  #isVolumetric = false;
  #plane = planeOf(17);
  #tool = 0;
  /** How filament has been told, by bits. */
  #feeds = 0;
  readonly #moves = this.#told.moves;
  /** Of moves that come without a word for how; −1 before any. */
  #motion = -1;

  constructor(words: Words, filamentDiameter: Mm, sink: MoveSink) {
    this.#words = words;
    this.#value = words.value;
    this.#sink = sink;
    this.#filamentArea = (Math.PI * filamentDiameter ** 2) / 4;
  }

  told() {
    const [isFeedAbsolute, isFeedRelative] = [ABSOLUTE_FEED, RELATIVE_FEED].map((way) => (this.#feeds & way) !== 0);
    return this.#told.all(isFeedAbsolute!, isFeedRelative!);
  }

  /** Takes a word that holds from now on; tells whether it is one. `code` is ten times its number. */
  hold(code: number): boolean {
    switch (code) {
      case 170:
      case 180:
      case 190:
        this.#plane = planeOf((code / 10) as PlaneNumber);
        return true;
      case 200:
        this.#told.isEver.inch = true;
        this.#units(MM_IN_INCH);
        return true;
      case 210:
        this.#units(1);
        return true;
      case 900:
      case 910:
        this.#isRelative = code === 910;
        this.#told.isEver.relative ||= this.#isRelative;
        return true;
      case 901:
      case 911:
        this.#isCentreAbsolute = code === 901;
        return true;
      default:
        return false;
    }
  }

  /** Inches are of lengths, never of volumes. */
  #units(scale: number): void {
    this.#s[AT.scale] = scale;
    this.#s[AT.feedUnit] = this.#isVolumetric ? 1 : scale;
    this.#s[AT.feedScale] = this.#isVolumetric ? 1 / this.#filamentArea : 1;
  }

  /** M82 and M83. */
  holdFeed(isRelative: boolean): void {
    this.#isFeedRelative = isRelative;
  }

  /** M200: filament in volumes; a diameter or a switch of 0 ends it. */
  volumetric(): void {
    const [diameter, isOn] = [D, S].map((place) => (this.#words.has(place) ? this.#value[place]! : 1));
    this.#isVolumetric = diameter! > 0 && isOn! > 0;
    this.#told.isEver.volumetric ||= this.#isVolumetric;
    this.#units(this.#s[AT.scale]!);
  }

  /** M221: more or less filament than the file says. */
  flow(): void {
    const percent = this.#words.has(S) ? this.#value[S]! : 100;
    if (!(percent >= 0 && percent <= MOST_FLOW)) return;
    this.#told.isEver.flow ||= percent !== 100;
    this.#s[AT.flow] = percent / 100;
  }

  /** T: the first is no change. */
  tool(number: number): void {
    if (!(number >= 0 && number < MOST_TOOLS && Number.isInteger(number))) return;
    if (this.#told.tools.size > 0 && number !== this.#tool) this.#told.counts.toolChanges += 1;
    this.#told.tools.add(number);
    this.#owed[this.#tool] = this.#s[AT.owed]!;
    this.#s[AT.owed] = this.#owed[number]!;
    this.#tool = number;
  }

  /** G28: the named axes, or all, are at their ends; that is where 0 is. */
  home(line: number): void {
    const all = (this.#words.seen & PLACES) === 0;
    for (const [k, place] of [X, Y, Z].entries()) {
      if (!all && !this.#words.has(place)) continue;
      this.#s[AT.x + k] = 0;
      this.#s[AT.offX + k] = 0;
    }
    this.#row(0, 0, 0, row.JUMP, line);
  }

  /** G92: places are called otherwise from here; all of them 0 where none is named. Tells what is wrong with it. */
  reset(): BadLineWhy | undefined {
    const { seen } = this.#words;
    const all = (seen & MOVES) === 0;
    const s = this.#s;
    const told = [X, Y, Z, E].map((place) =>
      all ? 0 : this.#value[place]! * s[place === E ? AT.feedUnit : AT.scale]!,
    );
    const named = [X, Y, Z, E].map((place) => all || this.#words.has(place));
    if (isBeyond(...told.filter((_, k) => named[k]))) return 'bad-number';
    for (let k = 0; k < 3; k += 1) if (named[k]) s[AT.offX + k] = s[AT.x + k]! - told[k]!;
    if (named[3]) s[AT.pushed] = told[3]!;
    this.#told.counts.resets += 1;
    if (named[3]) this.#told.counts.feedResets += 1;
    return undefined;
  }

  /** G92.1: places are called as they are again. */
  unreset(): void {
    this.#s.fill(0, AT.offX, AT.offX + 3);
  }

  /** G10 and G11, where no words make them something else. */
  firmwareFeed(isRestored: boolean): void {
    if ((this.#words.seen & (bit(P) | bit(L) | bit(R) | PLACES)) !== 0) return;
    if (isRestored) this.#told.counts.firmwareRestores += 1;
    else this.#told.counts.firmwareRetractions += 1;
  }

  /** A move without a word for how: as the one before. */
  goOn(seen: number, line: number): BadLineWhy | undefined {
    if (this.#motion < 0) return 'no-word';
    const why = this.move(seen, this.#motion, line);
    if (why !== 'bad-number') this.#told.counts.modal += 1;
    return why;
  }

  /** Whether such words ask for a move, by themselves. */
  isMove(seen: number): boolean {
    return (seen & MOVING) !== 0;
  }

  /**
   * A move by the words of the line; tells what is wrong with it.
   *
   * @param seen - bits of the words that it has
   * @param motion - 0 to 3
   */
  move(seen: number, motion: number, line: number): BadLineWhy | undefined {
    // In the function, since only there they are known to be constant: outside they would be read again for every move.
    const X_WORD = 24;
    const Y_WORD = 25;
    const Z_WORD = 26;
    const E_WORD = 5;
    const HAS_X = 1 << 24;
    const HAS_Y = 1 << 25;
    const HAS_Z = 1 << 26;
    const HAS_E = 1 << 5;
    const PX: typeof AT.x = 0;
    const PY: typeof AT.y = 1;
    const PZ: typeof AT.z = 2;
    const OFF_X: typeof AT.offX = 3;
    const OFF_Y: typeof AT.offY = 4;
    const OFF_Z: typeof AT.offZ = 5;
    const PE: typeof AT.pushed = 6;
    const SCALE: typeof AT.scale = 7;
    const FEED_UNIT: typeof AT.feedUnit = 8;
    const FEED_SCALE: typeof AT.feedScale = 9;
    const FLOW: typeof AT.flow = 10;
    const OWED: typeof AT.owed = 11;
    const TO_X: typeof row.X = 0;
    const TO_Y: typeof row.Y = 1;
    const TO_Z: typeof row.Z = 2;
    const FEED: typeof row.FEED = 3;
    const LAID: typeof row.LAID = 4;
    const LENGTH: typeof row.LENGTH = 5;
    const FLAGS: typeof row.FLAGS = 6;
    const LINE: typeof row.LINE = 7;
    const ROW: typeof row.MOVE_SIZE = 8;
    const RAPID: typeof row.RAPID = 8;
    const TOOL: typeof row.TOOL = 16;
    const MOST: typeof FARTHEST = 1e6;
    const ROWS: typeof BATCH = 1024;
    const TOLD_IN_ALL: typeof ABSOLUTE_FEED = 1;
    const value = this.#value;
    const s = this.#s;
    const scale = s[SCALE]!;
    let x = s[PX]!;
    let y = s[PY]!;
    let z = s[PZ]!;
    if (this.#isRelative) {
      if (seen & HAS_X) x += value[X_WORD]! * scale;
      if (seen & HAS_Y) y += value[Y_WORD]! * scale;
      if (seen & HAS_Z) z += value[Z_WORD]! * scale;
    } else {
      if (seen & HAS_X) x = value[X_WORD]! * scale + s[OFF_X]!;
      if (seen & HAS_Y) y = value[Y_WORD]! * scale + s[OFF_Y]!;
      if (seen & HAS_Z) z = value[Z_WORD]! * scale + s[OFF_Z]!;
    }
    let feed = 0;
    let pushed = s[PE]!;
    if (seen & HAS_E) {
      const amount = value[E_WORD]! * s[FEED_UNIT]!;
      if (this.#isRelative || this.#isFeedRelative) {
        pushed += amount;
        feed = amount * s[FEED_SCALE]!;
        if (this.#isFeedRelative) this.#feeds |= RELATIVE_FEED;
      } else {
        feed = (amount - pushed) * s[FEED_SCALE]!;
        pushed = amount;
        this.#feeds |= TOLD_IN_ALL;
      }
    }
    // Written so that what is no number fails too; the sum spares four comparisons where it is small, as it nearly always is.
    const far = Math.abs(x) + Math.abs(y) + Math.abs(z) + Math.abs(feed);
    if (!(far < MOST) && isBeyond(x, y, z, feed)) return 'bad-number';
    s[PE] = pushed;
    this.#motion = motion;
    this.#moves[motion]! += 1;
    let laid = feed * s[FLOW]!;
    const owed = s[OWED]!;
    if (feed < owed) {
      s[OWED] = owed - feed;
      laid = 0;
    } else if (owed > 0) {
      s[OWED] = 0;
      laid = (feed - owed) * s[FLOW]!;
    }
    if (motion > 1) {
      this.#words.seen = seen;
      return this.#arc([x, y, z], feed, laid, line);
    }
    const dx = x - s[PX]!;
    const dy = y - s[PY]!;
    const dz = z - s[PZ]!;
    s[PX] = x;
    s[PY] = y;
    s[PZ] = z;
    const rows = this.#rows;
    const at = this.#count * ROW;
    rows[at + TO_X] = x;
    rows[at + TO_Y] = y;
    rows[at + TO_Z] = z;
    rows[at + FEED] = feed;
    rows[at + LAID] = laid;
    rows[at + LENGTH] = Math.sqrt(dx * dx + dy * dy + dz * dz);
    rows[at + FLAGS] = motion === 0 ? TOOL * this.#tool + RAPID : TOOL * this.#tool;
    rows[at + LINE] = line;
    this.#count += 1;
    if (this.#count === ROWS) this.flush();
    return undefined;
  }

  #row(feed: number, laid: number, length: number, flags: number, line: number): void {
    const rows = this.#rows;
    const at = this.#count * row.MOVE_SIZE;
    rows[at + row.X] = this.#s[AT.x]!;
    rows[at + row.Y] = this.#s[AT.y]!;
    rows[at + row.Z] = this.#s[AT.z]!;
    rows[at + row.FEED] = feed;
    rows[at + row.LAID] = laid;
    rows[at + row.LENGTH] = length;
    rows[at + row.FLAGS] = row.TOOL * this.#tool + flags;
    rows[at + row.LINE] = line;
    this.#count += 1;
    if (this.#count === BATCH) this.flush();
  }

  /** As chords; straight to the end where the arc does not go with its ends. */
  #arc(end: readonly [x: Mm, y: Mm, z: Mm], feed: number, laid: number, line: number): BadLineWhy | undefined {
    const s = this.#s;
    const plane = this.#plane;
    const { a, b, c } = plane;
    const start = [s[AT.x]!, s[AT.y]!, s[AT.z]!];
    const origin = this.#isCentreAbsolute ? [s[AT.offX]!, s[AT.offY]!, s[AT.offZ]!] : undefined;
    const isClockwise = this.#motion === 2;
    const arc = arcOf(this.#words, { start, end, plane, isClockwise, scale: s[AT.scale]!, origin });
    const climb = end[c] - start[c]!;
    const straight = Math.hypot(...end.map((to, k) => to - start[k]!));
    const length = arc ? Math.hypot(lengthOf(arc), climb) : straight;
    const chords = arc ? chordsOf(arc) : 1;
    for (let i = 1; i <= chords; i += 1) {
      s.set(end, AT.x);
      if (arc && i < chords) {
        [s[AT.x + a], s[AT.x + b]] = placeAt(arc, i / chords);
        s[AT.x + c] = start[c]! + (i / chords) * climb;
      }
      const flags = (arc ? row.ON_ARC : 0) + (i > 1 ? row.GOES_ON : 0);
      this.#row(feed / chords, laid / chords, length / chords, flags, line);
    }
    return arc ? undefined : 'bad-arc';
  }

  /** Hands on what has been gathered. */
  flush(): void {
    if (this.#count > 0) this.#sink.take(this.#rows, this.#count);
    this.#count = 0;
  }
}
