/** How far each figure of a tally may go, and why: wide enough for any desktop print, narrow enough to catch a slip of unit. */
import type { Limits } from '../material/ownLimits.ts';
import type { Range } from '../problems.ts';

const mm = (what: string, min: number, max: number, because: string): Limits => ({
  what,
  units: ['mm'],
  min,
  max,
  because,
});

/** Figures in mm, N, h and MPa, and counts; keys are fields of tallies. */
export const TALLY_LIMITS = {
  // A layer of 0.05 mm is thin; the thick end is past what a hand bends.
  thickness: mm('thickness of the strip', 0.02, 20, 'no printer lays less, and no hand bends more'),
  radius: mm('radius of the bar', 0.1, 1000, 'a sharper one is an edge, and over a flatter one nothing bends'),
  length: mm('free length', 0.1, 1000, 'shorter is a crack, and longer than any plate'),
  depth: mm('width of the bar', 0.2, 200, 'narrower is less than a line, and wider than it is long'),
  set: mm('thickness as set', 0.02, 50, 'no printer lays less, and no ladder has thicker rungs'),
  measured: mm('thickness measured', 0.02, 50, 'no caliper reads less, and no ladder has thicker rungs'),
  sag: mm('sag', 0.1, 1000, 'less cannot be read by eye, and more is longer than any plate'),
  force: { what: 'weight', units: ['N'], min: 0.001, max: 1000, because: 'less is a tenth of a gram, more a person' },
  hours: { what: 'time held', units: ['h'], min: 0.01, max: 100_000, because: 'less is no hold, and more ten years' },
  strength: {
    what: 'stress at which it broke',
    units: ['MPa'],
    min: 0.1,
    max: 500,
    because: 'weaker tears by itself, and stronger is a metal',
  },
  modulus: {
    what: 'stiffness when pulled',
    units: ['MPa'],
    min: 1,
    max: 20_000,
    because: 'softer is foam, and stiffer no plastic without fibres',
  },
  count: { what: 'number of lines or layers', units: [''], min: 1, max: 200, because: 'a rung is made of some' },
  cycles: {
    what: 'number of flexes',
    units: [''],
    min: 1,
    max: 1e9,
    because: 'a test counts some flexes, and nobody counts for longer than thirty years',
  },
} as const satisfies Readonly<Record<string, Limits>>;

/** Angles, in rad; messages say them in degrees. */
export const ANGLE_LIMITS = {
  turn: { min: Math.PI / 180, max: 2 * Math.PI, because: 'less is no bend, and more than a full turn meets itself' },
  held: { min: Math.PI / 180, max: 2 * Math.PI, because: 'less is no bend, and more than a full turn meets itself' },
  left: { min: 0, max: 2 * Math.PI, because: 'what stays bent is a part of what was held' },
} as const satisfies Readonly<Record<string, Range>>;

/** Strain of a bend, as a fraction: the least is far below what any plastic feels; twice its own radius is a fold. */
export const BEND_STRAIN: Limits = {
  what: 'strain of this bend',
  units: [''],
  isShare: true,
  min: 0.0001,
  max: 2,
  because: 'at less nothing happens, and nothing folds tighter than flat',
};

/** Share of its length by which a bar may hang: further down the weight slides along it. */
export const MOST_SAG = 0.9;

/** So much thicker or thinner may a rung be through its first layer alone [mm]. Our judgement. */
export const FIRST_LAYER = 0.2;

/** Characters of a text: what fits into one line of a list. */
export const LONGEST_SAID = 200;
export const LONGEST_KEY = 60;

/** Years in which a print may have been tested: from before there were such printers until after anyone still reads this. */
export const YEARS = { min: 1980, max: 2200 } as const;
