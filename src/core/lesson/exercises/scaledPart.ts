import { bendingStrain } from '../../closedForms/leafBending.ts';
import { scalingLaw } from '../../design/scalePart.ts';
import type { Mm, Rad } from '../../units.ts';
import type { PageMaker } from './exercise.ts';
import { anglesOf, factsOf, LINE_WIDTHS, linesAcross, steps, type FilamentFacts, type LinesAcross } from './grids.ts';
import { measured, read, READING, overLength, worked } from './question.ts';

export interface ScaledPart extends LinesAcross {
  readonly filament: FilamentFacts;
  readonly angle: Rad;
  /** Flexing length as it was, and of the part at its new size. */
  readonly length: Mm;
  readonly scale: number;
  readonly scaledLength: Mm;
}

const FILAMENT_IDS = ['petg', 'pla', 'asa', 'abs', 'pa12', 'pc'] as const;
const MOST_LENGTH: Mm = 60;

/** A part at another size. */
export const scaledPart: PageMaker<ScaledPart> = {
  seed: 2,
  draw: (pick) => {
    const [length, scale] = [pick(steps(12, 40)), pick([1.25, 1.5, 1.75, 2, 2.25, 2.5])];
    return {
      ...linesAcross(pick([2, 3, 4]), pick(LINE_WIDTHS)),
      filament: factsOf(pick(FILAMENT_IDS)),
      angle: pick(anglesOf(15, 80)),
      length,
      scale,
      scaledLength: length * scale,
    };
  },
  // Whole and half millimetres can be read off a ruler, quarters cannot.
  isFit: ({ filament, angle, thickness, length, scaledLength }) =>
    Number.isInteger(scaledLength * 2) &&
    scaledLength <= MOST_LENGTH &&
    bendingStrain(thickness, length, angle) < filament.breaks / 2,
  ask: ({ lines, lineWidth, thickness, angle, length, scale, scaledLength }) => {
    const scaledThickness = thickness * scale;
    const off = (READING / length) * scale + READING / length;
    return [
      { key: 'measure', figures: [measured(length, 'A'), measured(scaledLength, 'B')] },
      // Quarters: a class that rounds to the nearest has the scale itself.
      { key: 'scale', figures: [read('times', scale, Math.min(off, 0.12))] },
      { key: 'thick', figures: [worked('width', scaledThickness), worked('times', scaledThickness / lineWidth)] },
      {
        key: 'strain',
        figures: [
          overLength('strain', bendingStrain(thickness, length, angle), length, 'A'),
          overLength('strain', bendingStrain(scaledThickness, scaledLength, angle), scaledLength, 'B'),
        ],
      },
      { key: 'effort', figures: [worked('times', scalingLaw(scale).torque)] },
      {
        key: 'whole',
        figures: [worked('times', linesAcross(lines + 1, lineWidth).thickness / thickness)],
      },
      { key: 'longer', figures: [] },
    ];
  },
};
