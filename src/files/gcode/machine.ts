/** What a printer does with the words of a line: where it goes and what it pushes on. As the common firmwares do it; common practice, no source. */
import {
  FEED,
  FLAGS,
  GOES_ON,
  JUMP,
  LAID,
  LENGTH,
  LINE,
  MOVE_SIZE,
  ON_ARC,
  RAPID,
  TOOL,
  X as TO_X,
  Y as TO_Y,
  Z as TO_Z,
  type MoveSink,
} from '../../core/inspect/toolpath/moves.ts';
import type { Mm } from '../../core/units.ts';
import { arcOfRadius, arcRound, chordsOf, lengthOf, placeAt, type Arc } from './arcs.ts';
import type { BadLineWhy } from './gcodeText.ts';
import { D, E, I, J, K, L, P, R, S, X, Y, Z, type Words } from './words.ts';

const MM_IN_INCH = 25.4;
/** Rows that are handed on at once. */
const BATCH = 1024;
/** No desktop printer reaches farther [mm]; what does is a slip of the file. */
const FARTHEST = 1e6;
/** Tools that are told apart. */
const MOST_TOOLS = 64;

const bit = (place: number) => 1 << place;
const HAS_X = bit(X);
const HAS_Y = bit(Y);
const HAS_Z = bit(Z);
const HAS_E = bit(E);
const PLACES = bit(X) | bit(Y) | bit(Z);
const MOVES = PLACES | bit(E);
const ARC_WORDS = bit(I) | bit(J) | bit(K) | bit(R);

/** Axes of each plane in which arcs run, and the one along which they climb; with the words of their centres. */
const PLANES = {
  17: { a: 0, b: 1, c: 2, i: I, j: J },
  18: { a: 2, b: 0, c: 1, i: K, j: I },
  19: { a: 1, b: 2, c: 0, i: J, j: K },
} as const;

/** Numbers of the state, in one array: fields of an object would each be boxed. */
const PX = 0;
const PY = 1;
const PZ = 2;
const OFF_X = 3;
const PE = 6;
const SCALE = 7;
const FEED_SCALE = 8;
const FLOW = 9;
/** Volumes are in mm³ in any unit. */
const FEED_UNIT = 10;

export class Machine {
  readonly #sink: MoveSink;
  readonly #words: Words;
  readonly #filamentArea: number;
  readonly #rows = new Float64Array(BATCH * MOVE_SIZE);
  #count = 0;
  readonly #s = Float64Array.from([0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1]);
  readonly #owed = new Float64Array(MOST_TOOLS);
  #isRelative = false;
  #isFeedRelative = false;
  #isCentreAbsolute = false;
  #plane: keyof typeof PLANES = 17;
  #tool = -1;
  /** Of moves that come without a word for how; −1 before any. */
  motion = -1;
  readonly #moves = new Float64Array(4);
  modal = 0;
  resets = 0;
  feedResets = 0;
  firmwareRetractions = 0;
  firmwareRestores = 0;
  toolChanges = 0;
  readonly tools = new Set<number>();
  readonly isEver = {
    inch: false,
    relative: false,
    relativeFeed: false,
    absoluteFeed: false,
    volumetric: false,
    flow: false,
  };

  constructor(words: Words, filamentDiameter: Mm, sink: MoveSink) {
    this.#words = words;
    this.#sink = sink;
    this.#filamentArea = (Math.PI * filamentDiameter ** 2) / 4;
  }

  /** Takes a word that holds from now on; tells whether it is one. `code` is ten times its number. */
  hold(code: number): boolean {
    switch (code) {
      case 170:
      case 180:
      case 190:
        this.#plane = (code / 10) as keyof typeof PLANES;
        return true;
      case 200:
        this.isEver.inch = true;
        this.#unit(MM_IN_INCH);
        return true;
      case 210:
        this.#unit(1);
        return true;
      case 900:
      case 910:
        this.#isRelative = code === 910;
        this.isEver.relative ||= this.#isRelative;
        return true;
      case 901:
      case 911:
        this.#isCentreAbsolute = code === 901;
        return true;
      default:
        return false;
    }
  }

  #unit(mm: number): void {
    const isVolume = this.#s[FEED_SCALE] !== 1;
    this.#s[SCALE] = mm;
    this.#s[FEED_UNIT] = isVolume ? 1 : mm;
  }

  /** M82 and M83. */
  holdFeed(isRelative: boolean): void {
    this.#isFeedRelative = isRelative;
  }

  /** M200: filament in volumes, of a diameter where one is told; 0 ends it. */
  volumetric(): void {
    const { value } = this.#words;
    const isOff = (this.#words.has(D) && !(value[D]! > 0)) || (this.#words.has(S) && !(value[S]! > 0));
    if (!isOff) this.isEver.volumetric = true;
    this.#s[FEED_SCALE] = isOff ? 1 : 1 / this.#filamentArea;
    this.#unit(this.#s[SCALE]!);
  }

  /** M221: more or less filament than the file says. */
  flow(): void {
    const percent = this.#words.has(S) ? this.#words.value[S]! : 100;
    if (!(percent >= 0 && percent <= 1000)) return;
    if (percent !== 100) this.isEver.flow = true;
    this.#s[FLOW] = percent / 100;
  }

  tool(number: number): void {
    if (!(number >= 0 && number < MOST_TOOLS && Number.isInteger(number))) return;
    if (this.#tool >= 0 && number !== this.#tool) this.toolChanges += 1;
    this.tools.add(number);
    this.#tool = number;
  }

  /** G28: the named axes, or all, are at their ends; that is where 0 is. */
  home(line: number): void {
    const all = (this.#words.seen & PLACES) === 0;
    for (const [k, place] of [X, Y, Z].entries()) {
      if (!all && !this.#words.has(place)) continue;
      this.#s[PX + k] = 0;
      this.#s[OFF_X + k] = 0;
    }
    this.#row(0, 0, 0, JUMP, line);
  }

  /** G92: places are called otherwise from here. */
  reset(): void {
    const { seen, value } = this.#words;
    const all = (seen & MOVES) === 0;
    this.resets += 1;
    if (all || this.#words.has(E)) this.feedResets += 1;
    const scale = this.#s[SCALE]!;
    for (const [k, place] of [X, Y, Z].entries()) {
      if (all || this.#words.has(place)) this.#s[OFF_X + k] = this.#s[PX + k]! - (all ? 0 : value[place]! * scale);
    }
    if (all || this.#words.has(E)) this.#s[PE] = all ? 0 : value[E]! * this.#s[FEED_UNIT]!;
  }

  /** G92.1: places are called as they are again. */
  unreset(): void {
    this.#s.fill(0, OFF_X, OFF_X + 3);
  }

  /** G10 and G11, where no words make them something else. */
  firmwareFeed(isRestored: boolean): void {
    if ((this.#words.seen & (bit(P) | bit(L) | bit(R) | PLACES)) !== 0) return;
    if (isRestored) this.firmwareRestores += 1;
    else this.firmwareRetractions += 1;
  }

  /** A move by the words of the line; tells what is wrong with it. */
  move(line: number): BadLineWhy | undefined {
    const { seen, value, bare } = this.#words;
    if ((bare & (MOVES | ARC_WORDS)) !== 0) return 'bad-number';
    const motion = this.motion;
    if (motion < 0) return 'no-word';
    const s = this.#s;
    const scale = s[SCALE]!;
    let x = s[PX]!;
    let y = s[PY]!;
    let z = s[PZ]!;
    if (this.#isRelative) {
      if (seen & HAS_X) x += value[X]! * scale;
      if (seen & HAS_Y) y += value[Y]! * scale;
      if (seen & HAS_Z) z += value[Z]! * scale;
    } else {
      if (seen & HAS_X) x = value[X]! * scale + s[OFF_X]!;
      if (seen & HAS_Y) y = value[Y]! * scale + s[OFF_X + 1]!;
      if (seen & HAS_Z) z = value[Z]! * scale + s[OFF_X + 2]!;
    }
    let feed = 0;
    let pushed = s[PE]!;
    if (seen & HAS_E) {
      const told = value[E]! * s[FEED_UNIT]!;
      if (this.#isRelative || this.#isFeedRelative) {
        pushed += told;
        feed = told * s[FEED_SCALE]!;
        this.isEver.relativeFeed ||= this.#isFeedRelative;
      } else {
        feed = (told - pushed) * s[FEED_SCALE]!;
        pushed = told;
        this.isEver.absoluteFeed = true;
      }
    }
    // Written so that what is no number fails too.
    if (!(Math.abs(x) < FARTHEST && Math.abs(y) < FARTHEST && Math.abs(z) < FARTHEST && Math.abs(feed) < FARTHEST)) {
      return 'bad-number';
    }
    s[PE] = pushed;
    this.#moves[motion]! += 1;
    let laid = 0;
    if (feed !== 0) {
      const tool = this.#tool < 0 ? 0 : this.#tool;
      const owed = this.#owed[tool]!;
      if (feed < 0) this.#owed[tool] = owed - feed;
      else if (owed > 0) {
        const back = owed < feed ? owed : feed;
        this.#owed[tool] = owed - back;
        laid = (feed - back) * s[FLOW]!;
      } else laid = feed * s[FLOW]!;
    }
    if (motion > 1) return this.#arc(x, y, z, feed, laid, line);
    const dx = x - s[PX]!;
    const dy = y - s[PY]!;
    const dz = z - s[PZ]!;
    s[PX] = x;
    s[PY] = y;
    s[PZ] = z;
    const rows = this.#rows;
    const at = this.#count * MOVE_SIZE;
    rows[at + TO_X] = x;
    rows[at + TO_Y] = y;
    rows[at + TO_Z] = z;
    rows[at + FEED] = feed;
    rows[at + LAID] = laid;
    rows[at + LENGTH] = Math.sqrt(dx * dx + dy * dy + dz * dz);
    rows[at + FLAGS] = (motion === 0 ? RAPID : 0) + TOOL * (this.#tool < 0 ? 0 : this.#tool);
    rows[at + LINE] = line;
    this.#count += 1;
    if (this.#count === BATCH) this.flush();
    return undefined;
  }

  #row(feed: number, laid: number, length: number, flags: number, line: number): void {
    const rows = this.#rows;
    const at = this.#count * MOVE_SIZE;
    rows[at + TO_X] = this.#s[PX]!;
    rows[at + TO_Y] = this.#s[PY]!;
    rows[at + TO_Z] = this.#s[PZ]!;
    rows[at + FEED] = feed;
    rows[at + LAID] = laid;
    rows[at + LENGTH] = length;
    rows[at + FLAGS] = flags + TOOL * Math.max(0, this.#tool);
    rows[at + LINE] = line;
    this.#count += 1;
    if (this.#count === BATCH) this.flush();
  }

  #arc(x: number, y: number, z: number, feed: number, laid: number, line: number): BadLineWhy | undefined {
    const plane = PLANES[this.#plane];
    const start = [this.#s[PX]!, this.#s[PY]!, this.#s[PZ]!];
    const end = [x, y, z];
    const arc = this.#arcTo(start, end);
    const climb = end[plane.c]! - start[plane.c]!;
    const turns = this.#words.has(P) ? Math.min(1000, Math.max(0, Math.floor(this.#words.value[P]!))) : 0;
    const whole = arc && { ...arc, turn: arc.turn + Math.sign(arc.turn) * turns * 2 * Math.PI };
    const straight = Math.hypot(x - start[0]!, y - start[1]!, z - start[2]!);
    const length = whole ? Math.hypot(lengthOf(whole), climb) : straight;
    const chords = whole ? chordsOf(whole) : 1;
    for (let i = 1; i <= chords; i += 1) {
      const share = i / chords;
      if (whole && i < chords) {
        const [a, b] = placeAt(whole, share);
        this.#s[PX + plane.a] = a;
        this.#s[PX + plane.b] = b;
        this.#s[PX + plane.c] = start[plane.c]! + share * climb;
      } else for (const [k, to] of end.entries()) this.#s[PX + k] = to;
      const flags = (whole ? ON_ARC : 0) + (i > 1 ? GOES_ON : 0);
      this.#row(feed / chords, laid / chords, length / chords, flags, line);
    }
    return whole ? undefined : 'bad-arc';
  }

  #arcTo(start: readonly number[], end: readonly number[]): Arc | undefined {
    const { a, b, i, j } = PLANES[this.#plane];
    const { value } = this.#words;
    const scale = this.#s[SCALE]!;
    const from = [start[a]!, start[b]!] as const;
    const to = [end[a]!, end[b]!] as const;
    const isClockwise = this.motion === 2;
    const hasCentre = this.#words.has(i) || this.#words.has(j);
    if (!hasCentre) return this.#words.has(R) ? arcOfRadius(from, to, value[R]! * scale, isClockwise) : undefined;
    const off = [this.#words.has(i) ? value[i]! * scale : 0, this.#words.has(j) ? value[j]! * scale : 0] as const;
    const centre = this.#isCentreAbsolute
      ? ([off[0] + this.#s[OFF_X + a]!, off[1] + this.#s[OFF_X + b]!] as const)
      : ([from[0] + off[0], from[1] + off[1]] as const);
    return arcRound(from, to, centre, isClockwise);
  }

  /** How many of each, from G0 to G3. */
  moves(): readonly [number, number, number, number] {
    const [g0, g1, g2, g3] = this.#moves;
    return [g0!, g1!, g2!, g3!];
  }

  /** Hands on what has been gathered. */
  flush(): void {
    if (this.#count > 0) this.#sink.take(this.#rows, this.#count);
    this.#count = 0;
  }
}
