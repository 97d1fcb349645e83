import { bendingStrain } from '../../closedForms/leafBending.ts';
import { leafTorque } from '../../closedForms/leafTorque.ts';
import type { Mm, Rad } from '../../units.ts';
import type { PageMaker } from './exercise.ts';
import { anglesOf, factsOf, linesAcross, steps, type FilamentFacts, type LinesAcross } from './grids.ts';
import { ENLARGED, read, READING, worked } from './question.ts';

export interface OneLineMore {
  readonly filament: FilamentFacts;
  readonly angle: Rad;
  readonly length: Mm;
  readonly depth: Mm;
  /** Leaf A, and leaf B with one line more. */
  readonly thin: LinesAcross;
  readonly thick: LinesAcross;
}

/** Reading a drawing ten times as large as the thing. */
const ENLARGED_READING = READING / ENLARGED;
/** As far apart as nozzles of 0.4 to 0.6 mm lay them, so that neighbours can tell theirs apart [mm]. */
const WIDTHS: readonly Mm[] = [0.38, 0.42, 0.45, 0.5, 0.55, 0.6];
const FILAMENT_IDS = ['petg', 'pla', 'asa', 'abs', 'pa12', 'pc'] as const;

/** The leaf is taken as narrow, E·b·t³/12: what a class can work out; a wide one is up to 1/(1 − ν²) stiffer. */
const torqueOf = ({ filament, depth, length, angle }: OneLineMore, { thickness }: LinesAcross) =>
  leafTorque(filament.modulus, depth, thickness, length, angle, 1);

/** One line more. */
export const oneLineMore: PageMaker<OneLineMore> = {
  seed: 1,
  draw: (pick) => {
    const [lines, lineWidth] = [pick([2, 3, 4, 5]), pick(WIDTHS)];
    return {
      filament: factsOf(pick(FILAMENT_IDS)),
      angle: pick(anglesOf(15, 50)),
      length: pick(steps(12, 36, 2)),
      depth: pick([4, 5, 6, 8, 10, 12]),
      thin: linesAcross(lines, lineWidth),
      thick: linesAcross(lines + 1, lineWidth),
    };
  },
  isFit: ({ filament, angle, length, thick }) => bendingStrain(thick.thickness, length, angle) < filament.yields,
  ask: (given) => {
    const { thin, thick, length, angle } = given;
    const leaves = [
      { of: 'A', ...thin },
      { of: 'B', ...thick },
    ];
    // Torque is worked out from thicknesses that are whole lines, which a class knows once it has counted.
    return [
      { key: 'measure', figures: leaves.map(({ of, thickness }) => read('width', thickness, ENLARGED_READING, of)) },
      { key: 'line', figures: [read('width', thin.lineWidth, ENLARGED_READING / thin.lines)] },
      { key: 'arc', figures: [worked('arc', angle)] },
      {
        key: 'strain',
        figures: leaves.map(({ of, thickness }) => worked('strain', bendingStrain(thickness, length, angle), of)),
      },
      { key: 'effort', figures: leaves.map((leaf) => worked('torque', torqueOf(given, leaf), leaf.of)) },
      { key: 'times', figures: [worked('times', torqueOf(given, thick) / torqueOf(given, thin))] },
      { key: 'grows', figures: [] },
    ];
  },
};
