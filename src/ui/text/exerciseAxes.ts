/** Names of the axes of exercise pages. */
const NO_BREAK = '\u00a0';

export const EXERCISE_AXES = {
  strain: 'skin strain, %',
  length: 'flexing length, mm',
  bends: 'bends that half last',
  held: 'held for',
  left: 'push left, %',
  parts: 'thin parts that share the bend',
  times: [
    { at: 1 / 60, text: `1${NO_BREAK}min` },
    { at: 10 / 60, text: `10${NO_BREAK}min` },
    { at: 1, text: `1${NO_BREAK}h` },
    { at: 6, text: `6${NO_BREAK}h` },
    { at: 24, text: `1${NO_BREAK}day` },
    { at: 168, text: `1${NO_BREAK}week` },
    { at: 720, text: `1${NO_BREAK}month` },
  ],
} as const;

export const AXES_LABEL = (x: string, y: string) => `Axes to draw on: ${y} over ${x}`;
export const CURVE_LABEL = (x: string, y: string) => `Curve to read: ${y} over ${x}`;

/** Heads of the small tables. */
export const EXERCISE_TABLES = {
  filaments: { name: 'The filaments', letter: '', filament: 'Filament', yields: 'stays bent past', modulus: 'E' },
  peaks: { name: 'Peaks at the root', fillet: 'radius', peak: 'peak' },
  chances: { name: 'How many of 100', times: 'half last ÷ wanted', chance: 'of 100 get there' },
} as const;
