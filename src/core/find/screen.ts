/** Every candidate of a lot, one after the other: what it falls short in, by what hand forms or estimates say of its shape. */
import { widthRatio } from '../closedForms/leafTorque.ts';
import { effortBeyondYield } from '../design/effortAnswer.ts';
import { flexesOf } from '../design/flexesOf.ts';
import { lifeGrade } from '../design/verdict.ts';
import { assessLife, THICK_SECTION, type Flex } from '../life/assessLife.ts';
import type { LifeAnswer } from '../life/lifeAnswer.ts';
import { setAfterOneBend } from '../strength/permanentSet.ts';
import { farthestOverAir, MOST_TALL, tallness } from '../print/printable.ts';
import { asRad } from '../units.ts';
import { SHORTCOMINGS, type Shortcoming } from './findAnswer.ts';
import type { Row } from './rows.ts';
import { ratioOf } from './rows.ts';
import { shapeAt, type Shapes } from './shapes.ts';
import { ROUND_OFF } from './shortfalls.ts';
import { airOfAll, BETWEEN, roomOfAll } from './standing.ts';
import type { Wanted } from './wanted.ts';

/** One bit for each shortcoming. */
export const BIT = Object.fromEntries(SHORTCOMINGS.map((reason, at) => [reason, 1 << at])) as Readonly<
  Record<Shortcoming, number>
>;

/** One candidate as it is screened: the same object for all of them, filled anew. */
export interface Cell {
  /** Number of the shape, and places in the rows, the depths and the numbers side by side. */
  at: number;
  row: number;
  depth: number;
  side: number;
  /** Bits of all that it falls short in. */
  mask: number;
  size: number;
  chance: number;
  effort: number;
  /** What its shortfalls are measured by. */
  along: number;
  across: number;
  deep: number;
  tall: number;
  air: number;
  peak: number;
  set: number;
}

export function emptyCell(): Cell {
  const zero = { at: 0, row: 0, depth: 0, side: 0, mask: 0, size: 0, chance: 0, effort: 0 };
  return { ...zero, along: 0, across: 0, deep: 0, tall: 0, air: 0, peak: 0, set: 0 };
}

/** Bits by shape that only a solved shape tells, or is expected to: where it stays, and that it touches. */
export type Moves = Int32Array;

/** What is screened: shapes, their filaments, and what is looked for. */
export interface Screened {
  readonly shapes: Shapes;
  readonly rows: readonly Row[];
  readonly wanted: Wanted;
  readonly moves: Moves;
}

/**
 * What is expected of shapes before any is solved: what is moved farther than makes sense runs into something, and what is not
 * likely to stay does not. Only of kinds that are solved before they are told.
 *
 * @param shapes - of a lot [-]
 * @returns bits by shape [-]
 */
export function movesExpected({ lot, count, exact, mayStay, mayClear }: Shapes): Moves {
  const { stays } = lot.movement;
  const wrong = stays === true ? BIT['comes back'] : BIT.stays;
  const moves = new Int32Array(count);
  for (let at = 0; at < count; at += 1) {
    const isLikely = stays === undefined || (mayStay[at] === 1) === stays;
    moves[at] = (isLikely ? 0 : wrong) | (exact[at] === 1 || mayClear[at] === 1 ? 0 : BIT.touches);
  }
  return moves;
}

/** What a shape falls short in whatever its filament and depth, by number side by side. */
interface Stand {
  readonly masks: Int32Array;
  readonly sizes: Float64Array;
  readonly acrosses: Float64Array;
  readonly airs: Float64Array;
}

function emptyStand({ lot: { sides } }: Shapes): Stand {
  const numbers = () => new Float64Array(sides.length);
  return { masks: new Int32Array(sides.length), sizes: numbers(), acrosses: numbers(), airs: numbers() };
}

const passesUp = (value: number, limit: number) => value <= limit * (1 + ROUND_OFF);

function standOf({ shapes, wanted, moves }: Screened, at: number, stand: Stand): void {
  const { lot } = shapes;
  const { measure } = lot.drive;
  const one = { along: shapes.along[at] ?? 0, across: shapes.across[at] ?? 0, depth: 1 };
  const air = { bridge: shapes.bridge[at] ?? 0, ledge: shapes.ledge[at] ?? 0 };
  lot.sides.forEach((side, place) => {
    const all = roomOfAll(one, side, measure);
    const { value, limit } = farthestOverAir(airOfAll(air, one.along, side, measure, lot.lying));
    const far = value / limit;
    stand.sizes[place] = Math.max(all.along, all.across);
    stand.acrosses[place] = all.across;
    stand.airs[place] = far;
    stand.masks[place] =
      (moves[at] ?? 0) |
      (passesUp(all.along, wanted.room.along) ? 0 : BIT.along) |
      (passesUp(all.across, wanted.room.across) ? 0 : BIT.across) |
      (wanted.supports || passesUp(far, 1) ? 0 : BIT.overhang);
  });
}

/**
 * Shapes that have room, and are not laid too far over air, at least where one stands alone: whatever their strain turns out to be.
 *
 * @param screened - shapes and what is looked for [-]
 * @returns their numbers [-]
 */
export function fitting(screened: Screened): Int32Array {
  const { shapes } = screened;
  const stand = emptyStand(shapes);
  const found: number[] = [];
  for (let at = 0; at < shapes.count; at += 1) {
    if (shapes.possible[at] === 0) continue;
    standOf(screened, at, stand);
    if (((stand.masks[0] ?? 0) & (BIT.along | BIT.across | BIT.overhang)) === 0) found.push(at);
  }
  return Int32Array.from(found);
}

/** What a shape in a filament falls short in, and its chance where that is known without it falling short in life. */
interface Lasting {
  mask: number;
  chance: number;
}

/** Every kind of flex of a shape at a peak strain of 1: by hand forms strains grow in proportion. */
function flexesAt({ shapes, wanted }: Screened, at: number): readonly [Flex, ...Flex[]] {
  const { lot } = shapes;
  const { movement, family } = lot;
  const { amount, cycles, also } = movement;
  const ratio = ratioOf(lot);
  if (also === undefined && ratio !== undefined) return [{ amount, peakStrain: 1, ratio, cycles }];
  const { sizes, section } = shapeAt(lot, wanted.profile, at);
  return flexesOf({ joint: { movement }, family, sizes, section }, {}, { peak: 1, rootFactor: 1 });
}

/** Flexes of shapes that have been looked up: a lot is screened again and again while it is solved. */
const flexesOfShapes = new WeakMap<Float64Array, Map<number, readonly [Flex, ...Flex[]]>>();

/** The same, remembered by the shapes as hand forms made them. */
function flexesKept(screened: Screened, at: number): readonly [Flex, ...Flex[]] {
  // What is corrected by solved ones shares this array with what it was made from.
  const key = screened.shapes.rootFactor;
  const kept = flexesOfShapes.get(key) ?? new Map<number, readonly [Flex, ...Flex[]]>();
  flexesOfShapes.set(key, kept);
  const flexes = kept.get(at) ?? flexesAt(screened, at);
  kept.set(at, flexes);
  return flexes;
}

/** The life of a shape by the same steps as `assess`. */
function lifeOf(screened: Screened, at: number, { filament }: Row): LifeAnswer {
  const { shapes } = screened;
  const flexes = flexesKept(screened, at);
  const peak = shapes.peak[at] ?? 0;
  const strained = (flex: Flex): Flex => ({ ...flex, peakStrain: peak * flex.peakStrain });
  const [own, ...rest] = flexes;
  return assessLife({
    flexes: [strained(own), ...rest.map(strained)],
    acrossLayers: shapes.lot.lying === 'upright',
    thickness: shapes.thickness[at] ?? 0,
    filament,
  });
}

function lastingOf(screened: Screened, at: number, row: Row, lasting: Lasting): void {
  const { shapes } = screened;
  const { movement } = shapes.lot;
  const peak = shapes.peak[at] ?? 0;
  const side = (shapes.thickness[at] ?? 0) > THICK_SECTION ? 'thick' : 'thin';
  let mask =
    (peak <= row.held ? 0 : BIT.sags) |
    (peak <= row.bends ? 0 : BIT['bends for good']) |
    (row.isWarm ? BIT.warmth : 0) |
    (row.sagsOut ? BIT['comes back'] : 0);
  lasting.chance = 0;
  if (peak > row.breaks || peak > row.breaksAtOnce[side] * (1 + ROUND_OFF)) mask |= BIT.breaks;
  else if (!row.isUncounted && peak > row.lasts[side] * (1 + ROUND_OFF)) mask |= BIT.life;
  else {
    const life = lifeOf(screened, at, row);
    lasting.chance = life.chance;
    if (life.breaksOnFirstFlex) mask |= BIT.breaks;
    else {
      const grade = lifeGrade(life, movement);
      if (grade === 'beyond') mask |= BIT.uncounted;
      else if (grade !== 'pass') mask |= BIT.life;
    }
  }
  lasting.mask = mask;
}

/** Which shapes are screened: those from one number to before another, or those listed between two places of a list. */
export interface Some {
  readonly from: number;
  readonly to: number;
  readonly only?: Int32Array | undefined;
}

/**
 * Screens every candidate of some shapes of a lot.
 *
 * @param screened - shapes with strains as fractions and efforts per MPa, filaments, what is looked for, what is known of moving [-]
 * @param visit - called for each candidate that can be made, always with the same object [-]
 * @param some - which shapes [-]; all when left out
 *
 * Source: plane-bending, wide-strip, elastic-plastic, strain-life.
 */
export function screen(
  screened: Screened,
  visit: (cell: Cell) => void,
  { from, to, only }: Some = { from: 0, to: screened.shapes.count },
): void {
  const { shapes, rows } = screened;
  const cell = emptyCell();
  const stand = emptyStand(shapes);
  const lasting: Lasting = { mask: 0, chance: 0 };
  for (let i = from; i < to; i += 1) {
    const at = only ? (only[i] ?? 0) : i;
    if (shapes.possible[at] === 0) continue;
    standOf(screened, at, stand);
    cell.at = at;
    cell.along = shapes.along[at] ?? 0;
    cell.peak = shapes.peak[at] ?? 0;
    for (let r = 0; r < rows.length; r += 1) {
      lastingOf(screened, at, rows[r] as Row, lasting);
      cell.row = r;
      cell.chance = lasting.chance;
      visitSized(screened, rows[r] as Row, stand, lasting.mask, cell, visit);
    }
  }
}

/** Whether strips of a kind stiffen with their width: not those whose strain no network sees. */
function widens({ family, drive }: Shapes['lot']): boolean {
  return !family.handForms.some((form) => form.drive === drive.id && form.isStrainOutside === true);
}

/** Every depth and number side by side of one shape in one filament. */
function visitSized(
  { shapes, wanted }: Screened,
  row: Row,
  stand: Stand,
  mask: number,
  cell: Cell,
  visit: (cell: Cell) => void,
): void {
  const { lot } = shapes;
  const { depths, sides, lying } = lot;
  const { at } = cell;
  const isTurn = lot.drive.measure === 'turn';
  const [thickness, length] = [shapes.thickness[at] ?? 0, shapes.length[at] ?? 0];
  const nominal = shapes.nominal[at] ?? 0;
  const arc = asRad((2 * nominal * length) / thickness);
  const { effortAtLeast, setAtMost, room } = wanted;
  const { effortAtMost, amount } = lot.movement;
  const perDepth = effortBeyondYield(row.modulus * (shapes.effort[at] ?? 0), nominal / row.onset);
  const isWide = widens(lot);
  const [deepFrom, deepTimes] = [shapes.depthFrom[at] ?? 0, shapes.depthTimes[at] ?? 0];
  cell.set = setAtMost === undefined ? 0 : amount * setAfterOneBend(nominal, 1, row.onset).fraction;
  const bent = setAtMost === undefined || passesUp(cell.set, setAtMost) ? mask : mask | BIT.set;
  for (let d = 0; d < depths.length; d += 1) {
    const depth = depths[d] ?? 0;
    const ratio = isWide ? widthRatio(depth, length, thickness, arc, row.poisson) : 1;
    const one = deepFrom + deepTimes * depth;
    cell.depth = d;
    cell.tall = tallness({ thickness, length, depth }, lying) / MOST_TALL[lying];
    const ofDepth = passesUp(cell.tall, 1) ? bent : bent | BIT.tall;
    for (let s = 0; s < sides.length; s += 1) {
      const side = sides[s] ?? 1;
      const deep = isTurn ? side * one + (side - 1) * BETWEEN : one;
      const effort = perDepth * ratio * depth * side;
      cell.side = s;
      cell.deep = deep;
      cell.effort = effort;
      cell.size = stand.sizes[s] ?? 0;
      cell.across = stand.acrosses[s] ?? 0;
      cell.air = stand.airs[s] ?? 0;
      cell.mask =
        ofDepth |
        (stand.masks[s] ?? 0) |
        (deep <= room.depth * (1 + ROUND_OFF) ? 0 : BIT.depth) |
        (effortAtMost !== undefined && effort > effortAtMost ? BIT.hard : 0) |
        (effortAtLeast !== undefined && effort < effortAtLeast * (1 - ROUND_OFF) ? BIT.soft : 0);
      visit(cell);
    }
  }
}
