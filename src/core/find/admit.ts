import type { Movement } from '../design/joint.ts';
import { MOVEMENT_LIMITS } from '../design/movementLimits.ts';
import type { Miss, Shortfall } from './findAnswer.ts';
import type { Wanted } from './wanted.ts';

/** To three figures outwards, so that what is said admits what it is said for: 11.0312 mm becomes 11.1. */
function outwards(value: number, way: 1 | -1): number {
  const step = 10 ** (Math.floor(Math.log10(value)) - 2);
  const steps = value / step;
  const whole = way > 0 ? Math.ceil(steps - 1e-6) : Math.floor(steps + 1e-6);
  return Number((whole * step).toPrecision(3));
}

/** A share as it is asked for: whole in a hundred, downwards. */
const wholeInAHundred = (chance: number) => Math.floor(100 * chance + 1e-9) / 100;

function admitted(wanted: Wanted, { reason, value }: Shortfall): Wanted | undefined {
  const moved = (change: Partial<Movement>): Wanted => ({ ...wanted, movement: { ...wanted.movement, ...change } });
  switch (reason) {
    case 'along':
    case 'across':
    case 'depth':
      return { ...wanted, room: { ...wanted.room, [reason]: outwards(value, 1) } };
    case 'overhang':
      return { ...wanted, supports: true };
    case 'hard':
      return moved({ effortAtMost: outwards(value, 1) });
    case 'soft':
      return { ...wanted, effortAtLeast: outwards(value, -1) };
    case 'set':
      return { ...wanted, setAtMost: outwards(value, 1) };
    case 'life': {
      const chance = wholeInAHundred(value);
      return chance >= MOVEMENT_LIMITS.chance.min ? moved({ chance }) : undefined;
    }
    case 'tall':
    case 'breaks':
    case 'uncounted':
    case 'sags':
    case 'bends for good':
    case 'warmth':
    case 'comes back':
    case 'stays':
    case 'touches':
      return undefined;
  }
}

/**
 * What is looked for, loosened so far that one that falls short meets it.
 *
 * @param wanted - what is looked for: room [mm], effort [N·mm] or [N], set [rad] or [mm]
 * @param miss - one that falls short, and in what [-]
 * @returns the loosened wish; undefined where no wish of its own stands in the way, such as breaking or softening
 */
export function admitting(wanted: Wanted, { short }: Pick<Miss, 'short'>): Wanted | undefined {
  return short.reduce<Wanted | undefined>((loosened, shortfall) => loosened && admitted(loosened, shortfall), wanted);
}
