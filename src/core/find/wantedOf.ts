/** What is looked for where a joint stands already: something that does the same, in about as much room. */
import { assess } from '../design/assess.ts';
import type { Joint } from '../design/joint.ts';
import { MOVEMENT_LIMITS } from '../design/movementLimits.ts';
import { sectionOf } from '../design/sectionOf.ts';
import { findDrive, sizesInForce } from '../flexures/drives.ts';
import { FAMILIES } from '../flexures/index.ts';
import { familyOf } from '../flexures/known.ts';
import type { Room } from '../flexures/sought.ts';
import { soughtOf } from '../flexures/soughts.ts';
import { everyFilament, findFilament } from '../material/shelf.ts';
import type { Lying } from '../print/profile.ts';
import type { Mm } from '../units.ts';
import type { Wanted } from './wanted.ts';

/** Half as large again as the joint itself, or hardly another kind would fit, nor a leaf that lasts longer; chosen, no source. */
const LARGER = 1.5;
/** A room is given in whole steps, and never so small that nothing is found in it for that alone [mm]. */
const STEP: Mm = 5;
const LEAST: Mm = 10;
/** Shallower ones push less, and not all of what is deep need be; chosen, no source. */
const SHALLOWEST = 1 / 2;
/** Lyings that lines or layers run along: what stands is pulled apart, and is tried only where it is asked for. */
const USUAL_LYINGS: readonly Lying[] = ['flat', 'crease'];

function roomier(side: Mm): Mm {
  // A product that is a whole step but for round-off is that step.
  const steps = Math.ceil((side * LARGER) / STEP - 1e-9);
  return Math.max(LEAST, steps * STEP);
}

/** It should feel about as it does now: from a third to three times the effort; chosen, no source. */
const ABOUT = 3;

/** To two figures: nobody asks for 10.0567 N·mm. */
const twoFigures = (value: number) => Number(value.toPrecision(2));

/**
 * How hard it should push, where the joint itself says nothing of that: about as it does by hand form. What snaps pushes hardest
 * where hand forms know least.
 */
function effortLike(joint: Joint): { readonly effortAtLeast?: number; readonly effortAtMost?: number } {
  if (joint.movement.effortAtMost !== undefined || familyOf(joint).snaps === true) return {};
  const assessed = assess(joint);
  if (!assessed.ok) return {};
  const { effort } = assessed.value.effort;
  const { min, max } = MOVEMENT_LIMITS.effortAtMost;
  if (!(effort >= ABOUT * min && effort * ABOUT <= max)) return {};
  return { effortAtLeast: twoFigures(effort / ABOUT), effortAtMost: twoFigures(effort * ABOUT) };
}

/** Room that the joint itself takes. */
function roomOf(joint: Joint): Room {
  const family = familyOf(joint);
  const filament = findFilament(joint.profile.filament) ?? {};
  const thickness = joint.measuredThickness ?? sectionOf(family, joint.sizes, joint.profile, filament).thickness;
  const sizes = sizesInForce(family, joint.sizes, joint.movement.drive);
  return soughtOf(family.id).room(sizes, thickness);
}

/**
 * What is looked for, to begin with, in the place of a joint: its movement, its surroundings and its printer as they are,
 * somewhat more room in the plane than it takes and no more depth, about as hard to push, any kind, any filament that prints.
 *
 * @param joint - one of a known family whose sizes can be drawn [-]
 * @returns room along and across in whole 5 mm, at least 10 [mm]; depth at most that of the joint and at least half of it [mm];
 *   lying flat, as a crease, and as the joint lies [-]
 */
export function wantedOf(joint: Joint): Wanted {
  const { profile, surroundings } = joint;
  const family = familyOf(joint);
  const { along, across, depth } = roomOf(joint);
  const { effortAtLeast, ...movement } = { ...effortLike(joint), ...joint.movement };
  return {
    movement,
    ...(effortAtLeast === undefined ? {} : { effortAtLeast }),
    measure: (findDrive(family, movement.drive) ?? family.drives[0]).measure,
    room: { along: roomier(along), across: roomier(across), depth },
    depthAtLeast: Math.min(depth, joint.sizes[family.roles.depth] ?? depth) * SHALLOWEST,
    supports: false,
    families: FAMILIES.map(({ id }) => id),
    filaments: everyFilament()
      .filter(({ printable }) => printable)
      .map(({ id }) => id),
    lyings: [...new Set([...USUAL_LYINGS, profile.lying])],
    profile,
    ...(surroundings && { surroundings }),
  };
}
