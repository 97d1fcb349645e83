import { SHORTCOMINGS, type Shortcoming } from './findAnswer.ts';
import { BIT, type Cell, type Screened } from './cell.ts';
import { partFor } from './rows.ts';

/** A shortcoming that no change of size mends by degrees counts as being this many times off. */
const FAR_OFF = 10;

/**
 * How far off a candidate is in one way: what it has over what was asked, or the other way round where more is wanted.
 *
 * @param screened - limits of its filament, and what is looked for [-]
 * @param cell - the candidate [-]
 * @param reason - a way in which it falls short [-]
 * @returns ratio [-], above 1
 */
export function howFar({ shapes, rows, wanted }: Screened, cell: Cell, reason: Shortcoming): number {
  const row = rows[cell.row];
  if (row === undefined) return FAR_OFF;
  const side = partFor(shapes.thickness[cell.at] ?? 0);
  const { room, setAtMost = Infinity, effortAtLeast = 0, movement } = wanted;
  switch (reason) {
    case 'along':
      return cell.along / room.along;
    case 'across':
      return cell.across / room.across;
    case 'depth':
      return cell.deep / room.depth;
    case 'tall':
      return cell.tall;
    case 'overhang':
      return cell.air;
    case 'breaks':
      return cell.peak / Math.min(row.breaks, row.breaksAtOnce[side]);
    case 'life':
      return Math.max(cell.peak / row.lasts[side], cell.chance > 0 ? movement.chance / cell.chance : 1);
    case 'sags':
      return cell.peak / row.held;
    case 'bends for good':
      return cell.peak / row.bends;
    case 'set':
      return cell.set / setAtMost;
    case 'hard':
      return cell.effort / (movement.effortAtMost ?? Infinity);
    case 'soft':
      return effortAtLeast / cell.effort;
    case 'uncounted':
    case 'warmth':
    case 'comes back':
    case 'stays':
    case 'touches':
      return FAR_OFF;
  }
}

/**
 * How far off a candidate is altogether: the product of how far it is off in each way, as a logarithm.
 *
 * @param screened - limits of its filament, and what is looked for [-]
 * @param cell - the candidate [-]
 * @returns sum of logarithms [-], 0 where it falls short in nothing
 */
export function howFarInAll(screened: Screened, cell: Cell): number {
  let sum = 0;
  for (const reason of SHORTCOMINGS) {
    if ((cell.mask & BIT[reason]) !== 0) sum += Math.log(Math.max(1, howFar(screened, cell, reason)));
  }
  return sum;
}
