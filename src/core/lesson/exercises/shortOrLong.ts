import { bendingStrain, minimumLength } from '../../closedForms/leafBending.ts';
import { chanceOfReaching, totalSigma } from '../../life/scatter.ts';
import { lifeAtStrain, strainAtLife } from '../../life/strainLife.ts';
import type { Mm, Rad } from '../../units.ts';
import type { PageMaker } from './exercise.ts';
import {
  anglesOf,
  factsOf,
  LINE_WIDTHS,
  linesAcross,
  rowOf,
  steps,
  type FilamentFacts,
  type LinesAcross,
} from './grids.ts';
import { measured, overLength, read, READING } from './question.ts';

/** A line of the small table on the page: how many of a hundred go on where half last so many times as long as is wanted. */
export interface ChanceAt {
  readonly times: number;
  readonly chance: number;
}

export interface ShortOrLong {
  readonly filament: FilamentFacts;
  readonly angle: Rad;
  /** Of leaves P, short and thick, and Q, long and thin. */
  readonly lengths: readonly [Mm, Mm];
  readonly across: readonly [LinesAcross, LinesAcross];
  /** Of leaf P, out of the plane of the page. */
  readonly depth: Mm;
  /** Bends that are wanted. */
  readonly wanted: number;
  /** Bends that half should last, for the leaf that is to be found. */
  readonly last: number;
}

export const LONG_LETTERS = ['P', 'Q'] as const;
const FILAMENT_IDS = ['petg', 'asa', 'pa12', 'pc', 'pa6'] as const;
const TIMES: readonly number[] = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50];
/** Axes of the page, bends. */
export const LIFE_AXIS = { from: 10, to: 1_000_000 } as const;
const POINTS = 60;

/** A life read off logarithmic paper may be off by this share; what follows from it, by as much. Judgement, no source. */
const OFF_PAPER = 0.3;
/** A chance read between two lines of the table may be off by so much. */
const OFF_TABLE = 0.05;
/** A strain read off that paper. */
const OFF_STRAIN = 0.06;

const strainsOf = ({ lengths, across: [thick, thin], angle }: ShortOrLong) => [
  bendingStrain(thick.thickness, lengths[0], angle),
  bendingStrain(thin.thickness, lengths[1], angle),
];

/** How deep Q must be to push as hard as P: b·t³/L is the same for both. */
export function depthAlike({ lengths, across: [thick, thin], depth }: ShortOrLong): Mm {
  return depth * (thick.thickness / thin.thickness) ** 3 * (lengths[1] / lengths[0]);
}

/** Length of a leaf as thick as Q of which half last what is asked. */
const neededFor = (given: ShortOrLong) =>
  minimumLength(given.across[1].thickness, given.angle, strainAtLife(given.last, curveOf(given)));

const curveOf = (given: ShortOrLong) => rowOf(given.filament.id).life;
/** Bent one way and let go, over and over: the peak strain is what the curve is drawn in. */
const livesOf = (given: ShortOrLong) => strainsOf(given).map((strain) => lifeAtStrain(strain, curveOf(given)));

/** The spread where half last as many as are wanted; it hardly changes beside that. */
export function chanceTable({ filament, wanted }: ShortOrLong): readonly ChanceAt[] {
  const sigma = totalSigma(rowOf(filament.id).life, wanted);
  return TIMES.map((times) => ({ times, chance: chanceOfReaching(times * wanted, wanted, sigma) }));
}

/** The curve on the page: half last so many bends at a strain, as a fraction. */
export function lifeCurve(given: ShortOrLong): readonly { readonly bends: number; readonly strain: number }[] {
  const { from, to } = LIFE_AXIS;
  const bends = Array.from({ length: POINTS + 1 }, (_, at) => from * (to / from) ** (at / POINTS));
  return bends.map((count) => ({ bends: count, strain: strainAtLife(count, curveOf(given)) }));
}

function chanceOf(given: ShortOrLong, median: number): number {
  return chanceOfReaching(median, given.wanted, totalSigma(curveOf(given), given.wanted));
}

/** A short leaf, or a long one: how long each lasts. */
export const shortOrLong: PageMaker<ShortOrLong> = {
  seed: 6,
  draw: (pick) => {
    const [id, wanted] = [pick(FILAMENT_IDS), pick([500, 1000, 2000, 5000, 10_000, 20_000])];
    const [lines, lineWidth] = [pick([2, 3]), pick(LINE_WIDTHS)];
    return {
      across: [linesAcross(lines + 1, lineWidth), linesAcross(lines, lineWidth)],
      depth: pick([3, 4, 5]),
      filament: factsOf(id),
      angle: pick(anglesOf(20, 75)),
      lengths: [pick(steps(8, 20)), pick(steps(18, 48))],
      wanted,
      last: pick([1000, 2000, 5000, 10_000, 20_000, 50_000, 100_000]),
    };
  },
  isFit: (given) => {
    const { lengths, wanted, last } = given;
    const lives = livesOf(given);
    const chances = lives.map((life) => chanceOf(given, life));
    const [least = 0, most = 0] = chances;
    const needed = neededFor(given);
    const { maxReportableCycles, firstFlexBreakStrain } = curveOf(given);
    return (
      lengths[1] - lengths[0] >= 8 &&
      lives.every((life) => life > 3 * LIFE_AXIS.from && life < Math.min(maxReportableCycles, LIFE_AXIS.to) / 2) &&
      strainsOf(given).every((strain) => strain < firstFlexBreakStrain) &&
      least < 0.6 &&
      most > 0.5 &&
      chances.every((chance) => chance > 0.03 && chance < 0.97) &&
      lives.every((life) => life / wanted >= 0.1 && life / wanted <= 50) &&
      needed >= 8 &&
      needed <= 60 &&
      last !== wanted
    );
  },
  ask: (given) => {
    const { lengths } = given;
    const [strains, lives] = [strainsOf(given), livesOf(given)];
    const deep = depthAlike(given);
    const each = <T>(some: readonly number[], of: (value: number, length: Mm, letter: string) => T) =>
      some.map((value, at) => of(value, lengths[at] ?? 1, LONG_LETTERS[at] ?? ''));
    const needed = neededFor(given);
    return [
      { key: 'measure', figures: each(lengths, (length, _, of) => measured(length, of)) },
      { key: 'strain', figures: each(strains, (strain, length, of) => overLength('strain', strain, length, of)) },
      { key: 'life', figures: each(lives, (life, _, of) => read('cycles', life, OFF_PAPER * life, of)) },
      { key: 'chance', figures: each(lives, (life, _, of) => read('hundred', chanceOf(given, life), OFF_TABLE, of)) },
      { key: 'needed', figures: [read('length', needed, OFF_STRAIN * needed)] },
      { key: 'deep', figures: [read('length', deep, deep * (READING / lengths[0] + READING / lengths[1]))] },
      { key: 'why', figures: [] },
    ];
  },
};
