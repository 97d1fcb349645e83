/** How the shapes of a lot stand: the room they take and what is laid over air, by number side by side. */
import { farthestOverAir } from '../print/printable.ts';
import { BIT, type Screened } from './cell.ts';
import type { Shapes } from './shapes.ts';
import { ROUND_OFF } from './shortfalls.ts';
import { airOfAll, roomOfAll } from './standing.ts';

/** What a shape falls short in whatever its filament and depth, by number side by side. */
export interface Stand {
  readonly masks: Int32Array;
  readonly sizes: Float64Array;
  readonly acrosses: Float64Array;
  readonly airs: Float64Array;
}

export function emptyStand({ lot: { sides } }: Shapes): Stand {
  const numbers = () => new Float64Array(sides.length);
  return { masks: new Int32Array(sides.length), sizes: numbers(), acrosses: numbers(), airs: numbers() };
}

/** Whether a figure keeps to a limit. */
export const keepsTo = (value: number, limit: number) => value <= limit * (1 + ROUND_OFF);

/** Fills in what a shape falls short in whatever its filament and depth. */
export function standOf({ shapes, wanted, moves }: Screened, at: number, stand: Stand): void {
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
      (keepsTo(all.along, wanted.room.along) ? 0 : BIT.along) |
      (keepsTo(all.across, wanted.room.across) ? 0 : BIT.across) |
      (wanted.supports || keepsTo(far, 1) ? 0 : BIT.overhang);
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
