/** The part that a first visit shows: a balcony weather station. Its figures are invented, and the screen says so. */
import type { Joint, Part } from '../core/design/joint.ts';
import { radians } from '../core/units.ts';
import { USUAL_PROFILE } from './newJoint.ts';

/** A leaf that opens to let water past: worked, and not quite good enough, so that the ways out are seen. */
const rainFlap: Joint = {
  id: 'rain-flap',
  name: 'Rain-flap hinge',
  family: 'straightLeaf',
  sizes: { lines: 2, length: 12, depth: 6, fillet: 0.8, pad: 4, inRow: 1, sideBySide: 1, taper: 1, centre: 0.5 },
  movement: { drive: 'turned', amount: radians(35), ways: 'one way', cycles: 5000, held: false, chance: 0.95 },
  profile: USUAL_PROFILE,
};

/** A fold along a lid, thin in the build direction. */
const batteryDoor: Joint = {
  id: 'battery-door',
  name: 'Battery-door hinge',
  family: 'crease',
  sizes: { layers: 2, length: 6, depth: 24, fillet: 0.8, pad: 2, inRow: 1, sideBySide: 1 },
  movement: { drive: 'turned', amount: radians(100), ways: 'one way', cycles: 600, held: false, chance: 0.95 },
  profile: { ...USUAL_PROFILE, lying: 'crease', filament: 'pp' },
};

/** The neck of a clip that someone else designed, measured with calipers: it is not a whole number of lines. */
const borrowedClip: Joint = {
  id: 'borrowed-clip',
  name: 'Borrowed clip neck',
  family: 'straightLeaf',
  sizes: { lines: 1, length: 6, depth: 5, fillet: 0.5, pad: 4, inRow: 1, sideBySide: 1, taper: 1, centre: 0.5 },
  movement: { drive: 'turned', amount: radians(20), ways: 'one way', cycles: 500, held: false, chance: 0.95 },
  profile: USUAL_PROFILE,
  measuredThickness: 0.63,
};

export function demoPart(): Part {
  return { name: 'Balcony weather station', invented: true, joints: [rainFlap, batteryDoor, borrowedClip] };
}
