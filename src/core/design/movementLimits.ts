import { findDrive } from '../flexures/drives.ts';
import type { Drive, FlexureFamily } from '../flexures/family.ts';
import { outsideRange, type Problem, type Range } from '../problems.ts';
import type { Movement } from './joint.ts';

/** What a movement may ask for besides how far: number of flexes [-], share of prints [-], effort [N·mm] or [N]. */
export const MOVEMENT_LIMITS = {
  cycles: {
    min: 1,
    max: 1e9,
    because: 'a joint flexes at least once, and once a second for thirty years is 1e9',
  },
  chance: {
    min: 0.5,
    max: 0.99,
    because: 'below one half most prints fail, and past 99 in 100 nominal data know nothing',
  },
  effortAtMost: {
    min: 0.001,
    max: 1e6,
    because: 'less is felt by nobody, and nothing from a desktop printer pushes back so hard',
  },
} as const satisfies Record<'cycles' | 'chance' | 'effortAtMost', Range>;

type Drives = Pick<FlexureFamily, 'id' | 'drives'>;

function noSuchDrive({ id, drives }: Drives, drive: string): Problem {
  const possible = drives.map((one) => one.id).join(', ');
  const message = `A ${id} cannot be “${drive}”; choose from ${possible}`;
  return { code: 'not-one-of', message, field: 'movement.drive', value: drive, limit: possible };
}

/** Compared in the drive's own measure, said in degrees where that is an angle. */
function checkAmount(amount: number, drive: Drive): Problem | undefined {
  const isTurn = drive.measure === 'turn';
  return outsideRange('movement.amount', isTurn ? 'angle' : 'travel', amount, drive, isTurn ? '°' : 'mm');
}

function checkCycles(cycles: number): Problem | undefined {
  const field = 'movement.cycles';
  const outside = outsideRange(field, 'number of flexes', cycles, MOVEMENT_LIMITS.cycles, '');
  if (outside || Number.isInteger(cycles)) return outside;
  return { code: 'not-whole', message: `number of flexes ${cycles} is not whole; give a count`, field, value: cycles };
}

/**
 * What is wrong with the figures of a movement; empty when it can be assessed.
 *
 * Problems: `not-one-of` (no such drive), `not-a-number`, `below-minimum`, `above-maximum`, `not-whole`.
 *
 * @param movement - what is wanted: amount [rad] or [mm] within its drive's limits; cycles [-], whole, 1 to 1e9; chance [-], 0.5 to 0.99; effort [N·mm] or [N], 0.001 to 1e6
 * @param family - the kind of flexure, as far as its drives go [-]
 * @returns refusals [-] with fields `movement.drive`, `movement.amount`, `movement.cycles`, `movement.chance`, `movement.effortAtMost`
 */
export function checkMovement(movement: Movement, family: Drives): Problem[] {
  const { effortAtMost } = movement;
  const drive = findDrive(family, movement.drive);
  return [
    drive ? checkAmount(movement.amount, drive) : noSuchDrive(family, movement.drive),
    checkCycles(movement.cycles),
    outsideRange('movement.chance', 'chance', movement.chance, MOVEMENT_LIMITS.chance, ''),
    effortAtMost === undefined
      ? undefined
      : outsideRange('movement.effortAtMost', 'effort at most', effortAtMost, MOVEMENT_LIMITS.effortAtMost, ''),
  ].filter((problem) => problem !== undefined);
}
