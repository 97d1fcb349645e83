/** Writing a link: apart from reading, which needs much more and is needed later. */
import type { Joint, Swing } from '../core/design/joint.ts';
import { findDrive } from '../core/flexures/drives.ts';
import { findFamily } from '../core/flexures/known.ts';
import { asRad, degrees, radians, type Rad } from '../core/units.ts';
import { PART_VERSION } from './limits.ts';

/** The same as that of the part file, whose steps older links take too. */
export const LINK_VERSION = String(PART_VERSION);

export type Kind = 'text' | 'number' | 'yes or no';
export type Group = 'joint' | 'movement' | 'profile' | 'surroundings';

/** Every key of a link but the sizes, in the order in which they are written, and where its value belongs. */
export const KEYS = {
  id: ['joint', 'text'],
  name: ['joint', 'text'],
  measuredThickness: ['joint', 'number'],
  drive: ['movement', 'text'],
  ways: ['movement', 'text'],
  cycles: ['movement', 'number'],
  held: ['movement', 'yes or no'],
  heldHours: ['movement', 'number'],
  chance: ['movement', 'number'],
  effortAtMost: ['movement', 'number'],
  stays: ['movement', 'yes or no'],
  nozzle: ['profile', 'number'],
  lineWidth: ['profile', 'number'],
  layerHeight: ['profile', 'number'],
  firstLayerHeight: ['profile', 'number'],
  lying: ['profile', 'text'],
  fitRule: ['profile', 'text'],
  filament: ['profile', 'text'],
  temperatureC: ['surroundings', 'number'],
  moisture: ['surroundings', 'text'],
} as const satisfies Record<string, readonly [Group, Kind]>;

/**
 * Written apart from the others: the other end of the swing, the movements beside it, the user's own filament, and how far the
 * joint was shown moved. The last says nothing of the joint itself: a program that does not know it says so and opens the rest, so
 * that the version of links stays.
 */
export const MORE_KEYS = ['least', 'also', 'own', 'bent'] as const;

/**
 * How far a joint may be shown moved, as a share of the wanted amount; below 0 the other way. One that snaps is shown as far as its
 * second rest, which is many times what is wanted where that is little; the drawing itself goes no further than the joint does.
 */
export const BENT_LIMITS = { min: -1, max: 1000 } as const;

/**
 * A link that also says how far the joint was shown moved; one that was shown as far as wanted says nothing of it.
 *
 * @param link - as `writeJointLink` writes it
 * @param bent - share of the wanted amount
 */
export function withBent(link: string, bent: number): string {
  // What could not be read back is written as the nearest that can.
  const share = Number(Math.min(BENT_LIMITS.max, Math.max(BENT_LIMITS.min, bent)).toFixed(8));
  return share === 1 ? link : `${link}&bent=${share}`;
}

/** How far it is moved: one of these, as its drive measures. */
export const AMOUNTS = ['angleDeg', 'angleRad', 'travel'] as const;

/** Degrees as a person would write them, or undefined when no short figure gives exactly this angle back. */
function exactDegrees(angle: Rad): number | undefined {
  const full = degrees(angle);
  for (let places = 0; places <= 12; places += 1) {
    const short = Number(full.toFixed(places));
    if (radians(short) === angle) return short;
  }
  return radians(full) === angle ? full : undefined;
}

function amountOf({ family, movement: { drive, amount } }: Joint): [key: (typeof AMOUNTS)[number], text: string] {
  if (measureOf(family, drive) === 'travel') return ['travel', String(amount)];
  const angleDeg = exactDegrees(asRad(amount));
  return angleDeg === undefined ? ['angleRad', String(amount)] : ['angleDeg', String(angleDeg)];
}

/** An amount that is not the main one: `-5deg`, `0.3rad`, or bare where it is a travel. */
function figureOf(amount: number, { family, movement: { drive } }: Joint): string {
  if (measureOf(family, drive) === 'travel') return String(amount);
  const angleDeg = exactDegrees(asRad(amount));
  return angleDeg === undefined ? `${amount}rad` : `${angleDeg}deg`;
}

/** One movement beside the main one: `12deg_one way_500`, with its other end last where it has one. */
function swingOf({ amount, ways, cycles, least }: Swing, joint: Joint): string {
  return [figureOf(amount, joint), ways, cycles, ...(least === undefined ? [] : [figureOf(least, joint)])].join('_');
}

/** What the drive of a kind measures; undefined where there is no such kind or drive. */
export function measureOf(family: string, drive: string): 'turn' | 'travel' | undefined {
  const found = findFamily(family);
  return found && findDrive(found, drive)?.measure;
}

/**
 * The fragment, without `#`, of a link that opens this joint; a filament of the user's own is only named in it.
 *
 * @param joint - any joint that has been checked
 * @returns readable text; every number reads back equal
 */
export function writeJointLink(joint: Joint): string {
  const link = new URLSearchParams({ joint: LINK_VERSION, id: joint.id, name: joint.name, kind: joint.family });
  const known = Object.keys(findFamily(joint.family)?.parameters ?? joint.sizes);
  for (const size of known) link.set(size, String(joint.sizes[size]));
  link.set('drive', joint.movement.drive);
  link.set(...amountOf(joint));
  const { least, also } = joint.movement;
  if (least !== undefined) link.set('least', figureOf(least, joint));
  if (also !== undefined) link.set('also', also.map((swing) => swingOf(swing, joint)).join('*'));
  for (const [key, [group]] of Object.entries(KEYS)) {
    const from: object = (group === 'joint' ? joint : joint[group]) ?? {};
    const value = Reflect.get(from, key) as string | number | boolean | undefined;
    if (value !== undefined) link.set(key, String(value));
  }
  return link.toString();
}
