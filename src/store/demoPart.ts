/** The part that a first visit shows: a balcony weather station. Its figures are invented, and the screen says so. */
import type { Joint, Part } from '../core/design/joint.ts';
import { radians } from '../core/units.ts';
import { USUAL_PROFILE } from './newJoint.ts';

const RELEASED = { ways: 'one way', held: false, chance: 0.95 } as const;

/** A leaf that opens to let water past: worked, and not quite good enough, so that the ways out are seen. */
const rainFlap: Joint = {
  id: 'rain-flap',
  name: 'Rain-flap hinge',
  family: 'straightLeaf',
  sizes: { lines: 2, length: 12, depth: 6, fillet: 0.8, pad: 4, inRow: 1, sideBySide: 1, taper: 1, centre: 0.5 },
  movement: { ...RELEASED, drive: 'turned', amount: radians(35), cycles: 5000 },
  profile: USUAL_PROFILE,
};

/** A fold along a lid, thin in the build direction. */
const batteryDoor: Joint = {
  id: 'battery-door',
  name: 'Battery-door hinge',
  family: 'crease',
  sizes: { layers: 2, length: 6, depth: 24, fillet: 0.8, pad: 2, inRow: 1, sideBySide: 1 },
  movement: { ...RELEASED, drive: 'turned', amount: radians(100), cycles: 600 },
  profile: { ...USUAL_PROFILE, lying: 'crease', filament: 'pp' },
};

/** A bucket that tips with every spoonful of rain: a pivot whose centre stays, in two planes. */
const bucketPivot: Joint = {
  id: 'bucket-pivot',
  name: 'Bucket pivot',
  family: 'crossedLeaves',
  sizes: {
    lines: 1,
    length: 8,
    depth: 2.8,
    between: radians(90),
    crossing: 0.5,
    fused: 0,
    gap: 0.4,
    fillet: 0.5,
    pad: 4,
    sideBySide: 1,
  },
  movement: { ...RELEASED, drive: 'turned', amount: radians(12), ways: 'both ways', cycles: 200_000 },
  profile: { ...USUAL_PROFILE, filament: 'pa12' },
};

/**
 * Gusts turn it all the way and a breeze a good half; the wind holds it wound for hours: it nearly lasts, nearly sags, and
 * its arms come close to each other.
 */
const windVane: Joint = {
  id: 'wind-vane',
  name: 'Wind-vane return',
  family: 'spiral',
  sizes: { lines: 2, arms: 3, hub: 6, ring: 23, turns: 1.25, depth: 6, fillet: 0.6 },
  movement: {
    ...RELEASED,
    drive: 'centred',
    amount: radians(35),
    ways: 'both ways',
    cycles: 20_000,
    also: [{ amount: radians(20), ways: 'both ways', cycles: 200_000 }],
    held: true,
  },
  profile: USUAL_PROFILE,
};

/** A leaf that is pushed aside when a cable goes in. */
const gateClip: Joint = {
  id: 'gate-clip',
  name: 'Cable-gate clip',
  family: 'straightLeaf',
  sizes: { lines: 2, length: 16, depth: 5, fillet: 0.8, pad: 4, inRow: 1, sideBySide: 1, taper: 1, centre: 0.5 },
  movement: { ...RELEASED, drive: 'pushed', amount: 3, cycles: 200 },
  profile: USUAL_PROFILE,
};

/** A short double arch: it clicks and stays, but pushes too hard and breaks first. */
const modeButton: Joint = {
  id: 'mode-button',
  name: 'Mode button',
  family: 'snapArch',
  sizes: { lines: 2, arches: 2, span: 33, rise: 3, apart: 3, block: 3, depth: 6, fillet: 0.6, sideBySide: 1 },
  movement: { ...RELEASED, drive: 'pressed', amount: 5.7, cycles: 5000, effortAtMost: 20, stays: true },
  profile: USUAL_PROFILE,
};

/** A sensor that is carried to and fro behind its window. */
const sensorShuttle: Joint = {
  id: 'sensor-shuttle',
  name: 'Sensor shuttle',
  family: 'parallelLeaves',
  sizes: { lines: 2, length: 34, depth: 6, leaves: 2, spacing: 15, fillet: 0.8, pad: 4, sideBySide: 1 },
  movement: { ...RELEASED, drive: 'shifted', amount: 2, ways: 'both ways', cycles: 50_000, effortAtMost: 2.5 },
  profile: USUAL_PROFILE,
};

/** A cover that lies round a post of 25 mm radius. */
const trunkCover: Joint = {
  id: 'trunk-cover',
  name: 'Trunk cover',
  family: 'cellPanel',
  sizes: { lines: 2, cells: 14, cell: 5.6, leaf: 3.4, depth: 40, fillet: 0.5, pad: 3 },
  movement: { ...RELEASED, drive: 'wrapped', amount: radians(180), cycles: 300 },
  profile: { ...USUAL_PROFILE, filament: 'pp' },
};

/** Three necks that close round the pole it stands on and stay closed. */
const poleGrip: Joint = {
  id: 'pole-grip',
  name: 'Pole grip',
  family: 'neck',
  sizes: { lines: 2, along: 2.5, deep: 2, straight: 0, depth: 8, inRow: 3, sideBySide: 1 },
  movement: { ...RELEASED, drive: 'turned', amount: radians(9), cycles: 100, held: true },
  profile: { ...USUAL_PROFILE, filament: 'pa12' },
};

/** A fold that is pulled open as the battery tray is drawn out, and takes it home again. */
const traySpring: Joint = {
  id: 'tray-spring',
  name: 'Battery-tray spring',
  family: 'foldedLeaf',
  sizes: { lines: 2, runs: 6, length: 14, spacing: 4, depth: 6, fillet: 0.6, pad: 4, sideBySide: 1 },
  movement: { ...RELEASED, drive: 'pulled', amount: 8, cycles: 2000, effortAtMost: 2 },
  profile: USUAL_PROFILE,
};

/** Pressed past its middle it holds the lid shut; its short necks wear out a little too soon. */
const lidLock: Joint = {
  id: 'lid-lock',
  name: 'Lid lock',
  family: 'toggle',
  sizes: {
    lines: 1,
    springLines: 6,
    hinge: 4,
    link: 26,
    incline: radians(12),
    spring: 16,
    depth: 8,
    fillet: 0.6,
    pad: 4,
    sideBySide: 1,
  },
  movement: { ...RELEASED, drive: 'pressed', amount: 11, cycles: 1500, stays: true },
  profile: USUAL_PROFILE,
};

/** A blind that lies bent over the screen all summer: it lasts, and nearly sags. */
const sunBlind: Joint = {
  id: 'sun-blind',
  name: 'Sun blind',
  family: 'slitPanel',
  sizes: { layers: 6, rows: 24, pitch: 3, slitWidth: 0.8, slit: 20, bridge: 2, depth: 66 },
  movement: { ...RELEASED, drive: 'wrapped', amount: radians(120), cycles: 500, held: true },
  profile: { ...USUAL_PROFILE, lying: 'crease', filament: 'asa' },
};

/** The neck of a clip that someone else designed, measured with calipers: it is not a whole number of lines. */
const borrowedClip: Joint = {
  id: 'borrowed-clip',
  name: 'Borrowed clip neck',
  family: 'straightLeaf',
  sizes: { lines: 1, length: 6, depth: 5, fillet: 0.5, pad: 4, inRow: 1, sideBySide: 1, taper: 1, centre: 0.5 },
  movement: { ...RELEASED, drive: 'turned', amount: radians(20), cycles: 500 },
  profile: USUAL_PROFILE,
  measuredThickness: 0.63,
};

export function demoPart(): Part {
  return {
    name: 'Balcony weather station',
    invented: true,
    joints: [
      rainFlap,
      batteryDoor,
      bucketPivot,
      windVane,
      gateClip,
      modeButton,
      sensorShuttle,
      trunkCover,
      poleGrip,
      traySpring,
      lidLock,
      sunBlind,
      borrowedClip,
    ],
  };
}
