import { bendingStrain } from '../../closedForms/leafBending.ts';
import { asRad, type Mm, type Rad } from '../../units.ts';
import type { PageMaker } from './exercise.ts';
import {
  anglesOf,
  factsOf,
  isClear,
  LINE_WIDTHS,
  linesAcross,
  steps,
  type FilamentFacts,
  type LinesAcross,
} from './grids.ts';
import { measured, overLength, READING, read, worked } from './question.ts';
import { LEAF_LETTERS } from './threeLengths.ts';

export interface OneOrManyBends extends LinesAcross {
  readonly filament: FilamentFacts;
  /** Of the whole strip. */
  readonly angle: Rad;
  /** Of one thin part; all are alike. */
  readonly length: Mm;
  /** Of one thick part between two thin ones. */
  readonly between: Mm;
  /** Thin parts of strips P, Q and R. */
  readonly bends: readonly [number, number, number];
  /** How many bends it takes to stand it again and again. */
  readonly fewest: number;
}

const FILAMENT_IDS = ['petg', 'asa', 'pa12', 'pc'] as const;
const MOST_BENDS = 16;

const strainsOf = ({ bends, thickness, length, angle }: OneOrManyBends) =>
  bends.map((count) => bendingStrain(thickness, length, asRad(angle / count)));

/** Bends that share an angle so that none strains past a limit. */
function fewestBends(thickness: Mm, length: Mm, angle: Rad, limit: number): number {
  return Math.ceil(bendingStrain(thickness, length, angle) / limit - 1e-9);
}

/** Length of a strip without its ends. */
const lengthOf = (count: number, { length, between }: OneOrManyBends) => count * length + (count - 1) * between;

/** One bend, or the same bend shared by many. */
export const oneOrManyBends: PageMaker<OneOrManyBends> = {
  seed: 3,
  draw: (pick) => {
    const across = linesAcross(pick([2, 3]), pick(LINE_WIDTHS));
    const filament = factsOf(pick(FILAMENT_IDS));
    const [angle, length] = [pick(anglesOf(50, 150)), pick(steps(6, 15, 0.5))];
    return {
      ...across,
      filament,
      angle,
      length,
      between: pick(steps(4, 8, 0.5)),
      bends: [1, pick([2, 3]), pick([4, 5, 6])],
      fewest: fewestBends(across.thickness, length, angle, filament.again),
    };
  },
  isFit: (given) => {
    const { filament, fewest, length, thickness, angle, bends } = given;
    const [one = 0, , many = 0] = strainsOf(given);
    const isFirm = [-READING, READING].every(
      (off) => fewestBends(thickness, length + off, angle, filament.again * (1 + off / 100)) === fewest,
    );
    return (
      one > filament.yields &&
      many < filament.yields &&
      strainsOf(given).every((strain) => isClear(strain, filament.yields, length)) &&
      isFirm &&
      fewest <= MOST_BENDS &&
      !bends.includes(fewest)
    );
  },
  ask: (given) => {
    const { bends, angle, length, filament, fewest } = given;
    const strains = strainsOf(given);
    return [
      { key: 'measure', figures: [measured(length)] },
      {
        key: 'share',
        figures: bends.slice(1).map((count, at) => worked('angle', angle / count, LEAF_LETTERS[at + 1])),
      },
      { key: 'strain', figures: strains.map((strain, at) => overLength('strain', strain, length, LEAF_LETTERS[at])) },
      {
        key: 'back',
        figures: [],
        choice: { among: LEAF_LETTERS, right: LEAF_LETTERS.filter((_, at) => (strains[at] ?? 0) <= filament.yields) },
      },
      { key: 'fewest', figures: [worked('count', fewest)] },
      { key: 'room', figures: [read('length', lengthOf(fewest, given), fewest * READING)] },
      { key: 'effort', figures: [] },
    ];
  },
};
