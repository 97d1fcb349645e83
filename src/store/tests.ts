/**
 * What is tested: which piece, in which filament, how it is bent and for which joint, and the strip that is being counted. Kept
 * between visits; it changes nothing of the work, so undo leaves it alone. What was counted stands on the filament itself.
 */
import { create } from 'zustand';
import { PIECE_IDS, type PieceId, type PlateSize } from '../core/coupons/piece.ts';
import type { Bend, FlexTally, PullTally, TallyKind } from '../core/material/tally.ts';
import { LYINGS, type Lying } from '../core/print/profile.ts';
import { degrees, radians, type Mm, type Rad } from '../core/units.ts';
import { isObject } from '../files/shape.ts';
import { words } from '../files/names.ts';
import { isWithin, keptRecord, type Range } from './history.ts';
import { browserStorage, keepChoice, type PreferenceStorage } from './preferences.ts';

/** A strip under the hand. */
export interface Counting {
  readonly cycles: number;
  /** Id of the tally that it goes on with; absent for a fresh strip. */
  readonly from?: string;
}

/** What is done: with a piece of the plate, or with a bar that is pulled on a machine elsewhere, which is none of them. */
export type Doing = TallyKind;
type WithPiece = Exclude<Doing, 'pull'>;

/** What each piece is good for, the usual first. */
export const DOINGS: Readonly<Record<PieceId, readonly [WithPiece, ...WithPiece[]]>> = {
  ladder: ['thickness'],
  comb: ['flexes'],
  radii: ['mark', 'flexes'],
  bar: ['sag'],
  hold: ['hold'],
  creases: ['flexes'],
};

export interface TestValues {
  readonly piece: PieceId;
  readonly doing: Doing;
  /** Key of the filament or tested spool; absent until chosen: that of the joint stands for it. */
  readonly filament?: string | undefined;
  /** Key of what that spool is like, for when it is taken back. */
  readonly like?: string | undefined;
  /** Id of the joint; absent until chosen: the open one stands for it. */
  readonly joint?: string | undefined;
  readonly strips: number;
  /** Lines across the strips, or layers through them. */
  readonly count: number;
  readonly way: Bend['way'];
  readonly radius: Mm;
  readonly turn: Rad;
  readonly length: Mm;
  readonly ways: FlexTally['ways'];
  readonly lying: Lying;
  readonly depth: Mm;
  /** Of the bar. */
  readonly grams: number;
  readonly arm: Mm;
  /** Held bent so far, for so long. */
  readonly held: Rad;
  readonly hours: number;
  /** Of the bar that is pulled: how its lines run, and its narrow part. */
  readonly direction: PullTally['direction'];
  readonly barWidth: Mm;
  readonly barThickness: Mm;
  /** Whether the length is known over which its stretch is read, and how long that is. */
  readonly knowsGauge: boolean;
  readonly gaugeLength: Mm;
  /** Whether it is known how fast the grips part, and how fast that is [mm/min]. */
  readonly knowsSpeed: boolean;
  readonly speed: number;
  readonly plate: PlateSize;
  /** Where the next spool is tested, until a row of its own says so. */
  readonly printer: string;
  readonly spool: string;
  readonly counting?: Counting | undefined;
}

type Sized =
  | 'strips'
  | 'count'
  | 'radius'
  | 'turn'
  | 'length'
  | 'depth'
  | 'grams'
  | 'arm'
  | 'held'
  | 'hours'
  | 'barWidth'
  | 'barThickness'
  | 'gaugeLength'
  | 'speed'
  | 'plate'
  | 'cycles';

/** What each may be; chosen, wide enough for a desk, a desktop printer and a machine that pulls. Lengths in mm, turns in rad. */
export const TEST_LIMITS: Readonly<Record<Sized, Range>> = {
  strips: { min: 1, max: 50 },
  count: { min: 1, max: 8 },
  radius: { min: 0.5, max: 200 },
  turn: { min: radians(1), max: radians(360) },
  length: { min: 0.5, max: 200 },
  depth: { min: 1, max: 60 },
  grams: { min: 1, max: 5000 },
  arm: { min: 5, max: 400 },
  held: { min: radians(1), max: radians(360) },
  hours: { min: 0.1, max: 10_000 },
  barWidth: { min: 1, max: 100 },
  barThickness: { min: 0.2, max: 100 },
  gaugeLength: { min: 1, max: 1000 },
  speed: { min: 0.1, max: 1000 },
  plate: { min: 80, max: 1000 },
  cycles: { min: 0, max: 1e7 },
};

/**
 * Five strips of two lines over the first corner of the block; a day held; what kitchens have to weigh with. Chosen. A bar as wide
 * and as thick as the usual one of ISO 527-2, pulled over its 50 mm (from memory).
 */
export const FIRST_TESTS: TestValues = {
  piece: 'radii',
  doing: 'flexes',
  strips: 5,
  count: 2,
  way: 'over',
  radius: 5,
  turn: radians(90),
  length: 12,
  ways: 'one way',
  lying: 'flat',
  depth: 6,
  grams: 20,
  arm: 80,
  held: radians(90),
  hours: 24,
  direction: 'along lines',
  barWidth: 10,
  barThickness: 4,
  knowsGauge: false,
  gaugeLength: 50,
  knowsSpeed: false,
  speed: 5,
  plate: { x: 220, y: 220 },
  printer: '',
  spool: 'spool 1',
};

const KEY = 'bendbook.tests';

const oneOf = <T extends string>(all: readonly T[], value: unknown) => all.find((one) => one === value);
const text = (value: unknown) => (typeof value === 'string' && value !== '' ? words(value) : undefined);

function sized(kept: Readonly<Record<string, unknown>>): Partial<TestValues> {
  const names = (Object.keys(TEST_LIMITS) as Sized[]).filter((name) => name !== 'plate' && name !== 'cycles');
  const isWhole = (name: Sized, value: number) => (name !== 'strips' && name !== 'count') || Number.isInteger(value);
  return Object.fromEntries(
    names.flatMap((name) => {
      const value = kept[name];
      return isWithin(value, TEST_LIMITS[name]) && isWhole(name, value) ? [[name, value]] : [];
    }),
  );
}

function readCounting(value: unknown): Counting | undefined {
  if (!isObject(value)) return undefined;
  const { cycles, from } = value;
  if (!isWithin(cycles, TEST_LIMITS.cycles) || !Number.isInteger(cycles)) return undefined;
  return typeof from === 'string' ? { cycles, from } : { cycles };
}

function readPlate(value: unknown): PlateSize {
  if (!isObject(value)) return FIRST_TESTS.plate;
  const { x, y } = value;
  return isWithin(x, TEST_LIMITS.plate) && isWithin(y, TEST_LIMITS.plate) ? { x, y } : FIRST_TESTS.plate;
}

function readPiece(kept: Readonly<Record<string, unknown>>): Pick<TestValues, 'piece' | 'doing'> {
  const piece = oneOf(PIECE_IDS, kept['piece']) ?? FIRST_TESTS.piece;
  if (kept['doing'] === 'pull') return { piece, doing: 'pull' };
  return withPiece({ doing: oneOf(DOINGS[piece], kept['doing']) ?? FIRST_TESTS.doing }, piece);
}

/** The values of the last visit, each as far as it can still be used. */
export function readTestValues(storage: PreferenceStorage | undefined): TestValues {
  const kept = keptRecord(storage, KEY);
  const [filament, like, joint] = [text(kept['filament']), text(kept['like']), text(kept['joint'])];
  const counting = readCounting(kept['counting']);
  return {
    ...FIRST_TESTS,
    ...sized(kept),
    ...(filament && { filament }),
    ...(like && { like }),
    ...(joint && { joint }),
    ...(counting && { counting }),
    ...readPiece(kept),
    way: oneOf(['over', 'to'], kept['way']) ?? FIRST_TESTS.way,
    ways: oneOf(['one way', 'both ways'], kept['ways']) ?? FIRST_TESTS.ways,
    lying: oneOf(LYINGS, kept['lying']) ?? FIRST_TESTS.lying,
    direction: oneOf(['along lines', 'across layers'], kept['direction']) ?? FIRST_TESTS.direction,
    knowsGauge: kept['knowsGauge'] === true,
    knowsSpeed: kept['knowsSpeed'] === true,
    plate: readPlate(kept['plate']),
    printer: text(kept['printer']) ?? FIRST_TESTS.printer,
    spool: text(kept['spool']) ?? FIRST_TESTS.spool,
  };
}

interface TestStore {
  readonly values: TestValues;
  readonly set: (change: Partial<TestValues>) => void;
}

export const useTests = create<TestStore>()((put, get) => ({
  values: readTestValues(browserStorage()),
  set: (change) => {
    put({ values: { ...get().values, ...change } });
    keepChoice(browserStorage(), KEY, JSON.stringify(get().values));
  },
}));

/** The trial with this piece: what is done with it stays where it can be. Whoever takes a piece pulls no bar any more. */
export function withPiece({ doing }: Pick<TestValues, 'doing'>, piece: PieceId): Pick<TestValues, 'piece' | 'doing'> {
  const can = DOINGS[piece];
  return { piece, doing: oneOf(can, doing) ?? can[0] };
}

/** The trial with this done: with the same piece where that serves, else with the one made for it; the plate of one who pulls bars stays. */
export function withDoing({ piece }: Pick<TestValues, 'piece'>, doing: Doing): Pick<TestValues, 'piece' | 'doing'> {
  if (doing === 'pull' || DOINGS[piece].includes(doing)) return { piece, doing };
  const made = PIECE_IDS.find((one) => DOINGS[one][0] === doing);
  return { piece: doing === 'flexes' ? 'radii' : (made ?? piece), doing };
}

/** How a strip of the trial is bent. */
export function bendOf({ way, radius, turn, length }: Pick<TestValues, 'way' | 'radius' | 'turn' | 'length'>): Bend {
  return way === 'over' ? { way, radius } : { way, turn, length };
}

/** The trial bent like this. */
export function bentAs(bend: Bend): Partial<TestValues> {
  return bend.way === 'over' ? { way: 'over', radius: bend.radius } : { ...bend };
}

/** A fold is made of layers, whatever else is printed how. */
export function lyingOf({ piece, lying }: Pick<TestValues, 'piece' | 'lying'>): Lying {
  return piece === 'creases' ? 'crease' : lying;
}

/** One text for one bend, whatever digits it was worked out with. */
export function bendKey(bend: Bend): string {
  return bend.way === 'over'
    ? `over ${bend.radius.toFixed(3)}`
    : `to ${degrees(bend.turn).toFixed(2)} ${bend.length.toFixed(3)}`;
}
