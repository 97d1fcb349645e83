import { angleAtStrain, bendingStrain } from '../../closedForms/leafBending.ts';
import { leafTorque } from '../../closedForms/leafTorque.ts';
import { radians, type Mm, type Rad } from '../../units.ts';
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
import { measured, overLength, read, READING } from './question.ts';

export interface FilamentAgainstFilament extends LinesAcross {
  readonly filaments: readonly FilamentFacts[];
  readonly angle: Rad;
  readonly length: Mm;
  readonly depth: Mm;
}

/** Letters of the four filaments, in the order of the table on the page. */
export const FILAMENT_LETTERS = ['A', 'B', 'C', 'D'] as const;
const IDS = ['pla', 'abs', 'asa', 'petg', 'pc', 'pa12', 'pa6'] as const;
/** Past half a turn nobody would lay it on a protractor. */
const FURTHEST = radians(180);

const furthestOf = ({ thickness, length }: FilamentAgainstFilament, { yields }: FilamentFacts) =>
  angleAtStrain(thickness, length, yields);

function torqueOf({ thickness, length, depth, angle }: FilamentAgainstFilament, { modulus }: FilamentFacts) {
  return leafTorque(modulus, depth, thickness, length, angle, 1);
}

function strainOf({ thickness, length, angle }: FilamentAgainstFilament): number {
  return bendingStrain(thickness, length, angle);
}

const lettered = (given: FilamentAgainstFilament) =>
  given.filaments.map((filament, at) => ({ filament, of: FILAMENT_LETTERS[at] ?? '' }));

/** One leaf in four filaments. */
export const filamentAgainstFilament: PageMaker<FilamentAgainstFilament> = {
  seed: 5,
  draw: (pick) => ({
    ...linesAcross(pick([2, 3, 4]), pick(LINE_WIDTHS)),
    filaments: [pick(IDS), pick(IDS), pick(IDS), pick(IDS)].map(factsOf),
    angle: pick(anglesOf(30, 90)),
    length: pick(steps(14, 36)),
    depth: pick([4, 5, 6, 8, 10, 12]),
  }),
  isFit: (given) => {
    const { filaments, length } = given;
    const strain = strainOf(given);
    const back = filaments.filter(({ yields }) => strain <= yields);
    const areOthers = new Set(filaments.map(({ id }) => id)).size === filaments.length;
    const [softest = 0, next = Infinity] = back.map(({ modulus }) => modulus).toSorted((a, b) => a - b);
    return (
      areOthers &&
      back.length >= 2 &&
      back.length < filaments.length &&
      softest < 0.97 * next &&
      filaments.every((filament) => isClear(strain, filament.yields, length) && furthestOf(given, filament) <= FURTHEST)
    );
  },
  ask: (given) => {
    const { length } = given;
    const strain = strainOf(given);
    const back = lettered(given).filter(({ filament }) => strain <= filament.yields);
    const softest = back.toSorted((a, b) => a.filament.modulus - b.filament.modulus).slice(0, 1);
    const letters = (some: typeof back) => some.map(({ of }) => of);
    return [
      { key: 'measure', figures: [measured(length)] },
      { key: 'strain', figures: [overLength('strain', strain, length)] },
      { key: 'back', figures: [], choice: { among: FILAMENT_LETTERS, right: letters(back) } },
      {
        key: 'furthest',
        figures: lettered(given).map(({ filament, of }) => {
          const furthest = furthestOf(given, filament);
          return read('angle', furthest, (furthest * READING) / length, of);
        }),
      },
      {
        key: 'effort',
        figures: lettered(given).map(({ filament, of }) => overLength('torque', torqueOf(given, filament), length, of)),
      },
      { key: 'choose', figures: [], choice: { among: FILAMENT_LETTERS, right: letters(softest) } },
    ];
  },
};
