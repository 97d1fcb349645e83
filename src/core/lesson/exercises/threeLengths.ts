import { bendingStrain, minimumLength } from '../../closedForms/leafBending.ts';
import type { Mm, Rad } from '../../units.ts';
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
import { measured, overLength, read, worked } from './question.ts';

export const LEAF_LETTERS = ['P', 'Q', 'R'] as const;

export interface ThreeLengths extends LinesAcross {
  readonly filament: FilamentFacts;
  readonly angle: Rad;
  /** Of leaves P, Q and R, from the shortest. */
  readonly lengths: readonly [Mm, Mm, Mm];
  /** At which the strain is to be read off the curve that was drawn. */
  readonly readAt: Mm;
  /** Top of the blank axis, as a fraction. */
  readonly top: number;
}

/** A curve drawn by eye through three points is read to so much of what it shows: judgement, no source. */
const BY_EYE = 0.1;
const FILAMENT_IDS = ['petg', 'pla', 'asa', 'abs'] as const;

const strainsOf = ({ lengths, thickness, angle }: ThreeLengths) =>
  lengths.map((length) => bendingStrain(thickness, length, angle));

/** Same angle, three lengths. */
export const threeLengths: PageMaker<ThreeLengths> = {
  seed: 0,
  draw: (pick) => {
    const across = linesAcross(pick([2, 3]), pick(LINE_WIDTHS));
    const angle = pick(anglesOf(20, 60));
    const [short, middle, long] = [pick(steps(6, 14)), pick(steps(14, 28)), pick(steps(30, 48))];
    const lengths = [short, middle, long] as const;
    const top = Math.ceil(bendingStrain(across.thickness, short, angle) * 100) / 100;
    return { ...across, filament: factsOf(pick(FILAMENT_IDS)), angle, lengths, readAt: pick(steps(8, 26)), top };
  },
  isFit: (given) => {
    const { filament, lengths, readAt, thickness, angle, top } = given;
    const strains = strainsOf(given);
    const [short = 0, , long = 0] = strains;
    const isSorted = lengths[1] - lengths[0] >= 4 && lengths[2] - lengths[1] >= 6;
    const isNew = lengths.every((length) => Math.abs(length - readAt) >= 3) && readAt > lengths[0];
    const shortest = minimumLength(thickness, angle, filament.yields);
    return (
      isSorted &&
      isNew &&
      short > filament.yields &&
      long < filament.yields &&
      top <= 0.1 &&
      shortest >= 5 &&
      strains.every((strain, at) => isClear(strain, filament.yields, lengths[at] ?? 1))
    );
  },
  ask: (given) => {
    const { thickness, lengths, angle, filament, readAt } = given;
    const strains = strainsOf(given);
    const back = LEAF_LETTERS.filter((_, at) => (strains[at] ?? 0) <= filament.yields);
    const atReading = bendingStrain(thickness, readAt, angle);
    return [
      { key: 'measure', figures: lengths.map((length, at) => measured(length, LEAF_LETTERS[at])) },
      { key: 'arc', figures: [worked('arc', angle)] },
      {
        key: 'strain',
        figures: strains.map((strain, at) => overLength('strain', strain, lengths[at] ?? 1, LEAF_LETTERS[at])),
      },
      { key: 'back', figures: [], choice: { among: LEAF_LETTERS, right: back } },
      { key: 'shortest', figures: [worked('length', minimumLength(thickness, angle, filament.yields))] },
      { key: 'plot', figures: [read('strain', atReading, BY_EYE * atReading)] },
      { key: 'half', figures: [] },
    ];
  },
};
