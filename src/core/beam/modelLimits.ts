/** What the numbers of a network may be, and why. */
import type { BeamModel } from './model.ts';
import type { Range } from '../problems.ts';

/** Entries in each list of a network. */
export const MOST_ENTRIES = 200;
export const MOST_BECAUSE = 'so that an answer comes within seconds';

/** Lists of a network, as words for how many there are. */
export const LISTS = {
  nodes: 'nodes',
  members: 'members',
  pads: 'pads',
  supports: 'supports',
  motions: 'motions',
  loads: 'loads',
  springs: 'springs',
  ties: 'ties',
} as const satisfies Partial<Record<keyof BeamModel, string>>;

export const LONGEST_ID = 80;

const within = (most: number, because: string): Range => ({ min: -most, max: most, because });

export const LIMITS = {
  modulus: { min: 1e-3, max: 1e7, because: 'softer than any foam, or stiffer than any solid' },
  poisson: {
    min: 0,
    max: 0.5,
    because: 'no solid filament shrinks when pressed from the side or keeps more than its volume',
  },
  coordinate: within(1e5, 'further away, rounding is felt'),
  length: { min: 1e-3, max: 1e5, because: 'shorter is a point, longer is no printed part' },
  thickness: { min: 1e-3, max: 1e4, because: 'thinner than any layer, or thicker than any printed part' },
  width: { min: 1e-3, max: 1e4, because: 'narrower than any line, or wider than any printed part' },
  deep: { min: 0, max: 1e4, because: 'a notch is cut into a member, not added to it' },
  widthRatio: { min: 0.1, max: 10, because: 'it is 1 for a narrow strip and at most 4/3 for a wide one' },
  plane: within(1000, 'nothing printed has more members one above the other'),
  /** A spiral of more turns than this winds up like a watch spring, and its coils touch. */
  turns: within(20, 'more turns touch each other'),
  heading: within(1000, 'an angle is meant, in radians'),
  move: within(1e5, 'further away, rounding is felt'),
  turn: within(1000, 'an angle is meant, in radians'),
  load: within(1e9, 'no printed part carries more'),
  stiffness: { min: 0, max: 1e12, because: 'a spring pulls back; a stiffer one is a support' },
  factor: within(1e6, 'rounding is felt'),
} as const satisfies Readonly<Record<string, Range>>;

/** An arc that turns all the way round closes on itself and has no chord [rad]. */
export const FULL_TURN = 2 * Math.PI;

/** How far the end of a spiral may lie off its node, as an angle seen from the centre [rad]: twelve figures in a file. */
export const SPIRAL_MISS = 1e-6;

/** A line of members this many times thinner than it is long is a beam; thicker than it is long it is a block. */
export const SLENDER = 5;
export const THICKEST_SHARE = 10;
