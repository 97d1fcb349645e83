import type { Assessment } from '../design/assessment.ts';
import type { Joint } from '../design/joint.ts';
import type { Room, Unsupported } from '../flexures/sought.ts';
import type { PrintProfile } from '../print/profile.ts';
import type { Figures } from './findAnswer.ts';
import type { Lot } from './lots.ts';
import type { Row } from './rows.ts';
import { shapeAt } from './shapes.ts';
import { airOfAll, roomOfAll } from './standing.ts';
import type { Wanted } from './wanted.ts';

/** Where a candidate stands in its lot. */
export interface Place {
  readonly at: number;
  readonly row: number;
  readonly depth: number;
  readonly side: number;
}

/** A candidate made into a joint, with the room that it takes. */
export interface Candidate {
  readonly joint: Joint;
  readonly room: Room;
  readonly air: Unsupported;
}

const NO_AIR: Unsupported = { bridge: 0, ledge: 0 };

/**
 * The joint that a candidate is.
 *
 * @param lot - kind, drive, lying and values [-]
 * @param row - its filament [-]
 * @param place - shape, depth and number side by side [-]
 * @param wanted - print profile and surroundings [-]
 * @returns the joint without a name, its room and what is laid over air [mm]
 */
export function candidateAt(lot: Lot, { filament }: Row, place: Place, wanted: Wanted): Candidate {
  const { family, sought, drive, lying, movement, free } = lot;
  const profile: PrintProfile = { ...wanted.profile, lying, filament: filament.id };
  const { sizes: one, section } = shapeAt(lot, profile, place.at);
  const alike = lot.sides[place.side] ?? 1;
  const sizes = {
    ...one,
    ...(free.depth === undefined ? {} : { [free.depth]: lot.depths[place.depth] ?? 1 }),
    ...(free.sideBySide === undefined ? {} : { [free.sideBySide]: alike }),
  };
  const room = sought.room(sizes, section.thickness);
  const air = sought.unsupported?.(sizes, section.thickness, lying) ?? NO_AIR;
  const { surroundings } = wanted;
  return {
    joint: {
      id: 'found',
      name: '',
      family: family.id,
      sizes,
      movement,
      profile,
      ...(surroundings === undefined ? {} : { surroundings }),
    },
    room: roomOfAll(room, alike, drive.measure),
    air: airOfAll(air, room.along, alike, drive.measure, lying),
  };
}

/**
 * What is told of a joint that has been found.
 *
 * @param a - the joint as assessed [-]
 * @param room - that it takes [mm]
 * @returns figures in the units of the assessment
 */
export function figuresOf(a: Assessment, room: Room): Figures {
  return {
    room,
    size: Math.max(room.along, room.across),
    chance: a.life.chance,
    median: a.life.median,
    pastCount: a.life.beyond !== 'no',
    strain: a.strain.peak,
    effort: a.effort.effort,
    set: a.set.amount,
    by: a.estimate ? 'estimate' : a.solved ? 'solver' : 'hand form',
  };
}
