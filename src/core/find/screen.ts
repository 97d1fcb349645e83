/** Every candidate of a lot, one after the other: what it falls short in, by what hand forms or estimates say of its shape. */
import { widthRatio } from '../closedForms/leafTorque.ts';
import { effortBeyondYield } from '../design/effortAnswer.ts';
import { setAfterOneBend } from '../strength/permanentSet.ts';
import { MOST_TALL, tallness } from '../print/printable.ts';
import { asRad } from '../units.ts';
import { BIT, emptyCell, type Cell, type Screened } from './cell.ts';
import { lastingOf, type Lasting } from './lasting.ts';
import type { Row } from './rows.ts';
import type { Shapes } from './shapes.ts';
import { ROUND_OFF } from './shortfalls.ts';
import { emptyStand, keepsTo, standOf, type Stand } from './stand.ts';
import { BETWEEN } from './standing.ts';

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
  const bent = setAtMost === undefined || keepsTo(cell.set, setAtMost) ? mask : mask | BIT.set;
  for (let d = 0; d < depths.length; d += 1) {
    const depth = depths[d] ?? 0;
    const ratio = isWide ? widthRatio(depth, length, thickness, arc, row.poisson) : 1;
    const one = deepFrom + deepTimes * depth;
    cell.depth = d;
    cell.tall = tallness({ thickness, length, depth }, lying) / MOST_TALL[lying];
    const ofDepth = keepsTo(cell.tall, 1) ? bent : bent | BIT.tall;
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
