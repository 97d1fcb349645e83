import { angleAtStrain, bendingStrain } from '../../closedForms/leafBending.ts';
import { NOTCH_SENSITIVITY, rootFactor } from '../../strength/rootFactor.ts';
import { shoulderConcentration } from '../../strength/stressConcentration.ts';
import type { Mm, Rad } from '../../units.ts';
import type { PageMaker } from './exercise.ts';
import { anglesOf, factsOf, LINE_WIDTHS, linesAcross, steps, type FilamentFacts, type LinesAcross } from './grids.ts';
import { ENLARGED, read, READING, worked } from './question.ts';

/** A line of the small table on the page. */
export interface PeakAt {
  readonly fillet: Mm;
  /** Stress concentration Kt in bending. */
  readonly peak: number;
}

export interface FilletOrCorner extends LinesAcross {
  readonly filament: FilamentFacts;
  readonly angle: Rad;
  readonly length: Mm;
  /** Thickness of the pad. */
  readonly pad: Mm;
  /** What a nozzle leaves where a corner is drawn, and the fillet of the other root. */
  readonly corner: Mm;
  readonly fillet: Mm;
  readonly table: readonly PeakAt[];
  /** Share of the peak that is felt. */
  readonly felt: number;
}

/** Half a nozzle of 0.4 mm: about what is left of a corner that is drawn sharp. Common practice, no source. */
const CORNER: Mm = 0.2;
const FILLETS: readonly Mm[] = [0.6, 0.8, 1, 1.2, 1.6];
const TABLE: readonly Mm[] = [CORNER, 0.4, ...FILLETS];
const FILAMENT_IDS = ['petg', 'pla', 'asa', 'abs', 'pa12', 'pa6', 'pc'] as const;
export const ROOT_LETTERS = ['A', 'B'] as const;

/** To two decimals, as the table on the page says it: whoever reads it has no more. */
const peakOf = (thickness: Mm, pad: Mm, fillet: Mm) =>
  Math.round(100 * shoulderConcentration('bending', thickness, pad, fillet).factor) / 100;

/** Both roots, with what their strain is multiplied by. */
function rootsOf({ thickness, pad, corner, fillet, felt }: FilletOrCorner) {
  return [corner, fillet].map((radius, at) => {
    const peak = peakOf(thickness, pad, radius);
    return { of: ROOT_LETTERS[at] ?? '', peak, factor: rootFactor(peak, felt) };
  });
}

/** A fillet, or a corner. */
export const filletOrCorner: PageMaker<FilletOrCorner> = {
  seed: 10,
  draw: (pick) => {
    const across = linesAcross(pick([2, 3, 4, 5]), pick(LINE_WIDTHS));
    const pad = pick(steps(5.5, 8, 0.5));
    return {
      ...across,
      filament: factsOf(pick(FILAMENT_IDS)),
      angle: pick(anglesOf(15, 60)),
      length: pick(steps(12, 40, 0.5)),
      pad,
      corner: CORNER,
      fillet: pick(FILLETS),
      table: TABLE.map((fillet) => ({ fillet, peak: peakOf(across.thickness, pad, fillet) })),
      felt: NOTCH_SENSITIVITY.value,
    };
  },
  // The corner is over what it stands again and again, the fillet under it: else there is nothing to choose.
  isFit: (given) => {
    const { filament, thickness, length, angle, pad } = given;
    const strain = bendingStrain(thickness, length, angle);
    const [corner = 0, fillet = 0] = rootsOf(given).map(({ factor }) => factor * strain);
    const isInTable = TABLE.every((radius) => !shoulderConcentration('bending', thickness, pad, radius).outsideTable);
    return isInTable && corner > 1.03 * filament.again && fillet < 0.97 * filament.again;
  },
  ask: (given) => {
    const { filament, thickness, length, angle, fillet } = given;
    const strain = bendingStrain(thickness, length, angle);
    const roots = rootsOf(given);
    const within = roots.filter(({ factor }) => factor * strain <= filament.again);
    return [
      { key: 'measure', figures: [read('width', fillet, READING / ENLARGED)] },
      { key: 'strain', figures: [worked('strain', strain)] },
      { key: 'table', figures: roots.map(({ of, peak }) => worked('times', peak, of)) },
      { key: 'felt', figures: roots.map(({ of, factor }) => worked('times', factor, of)) },
      { key: 'root', figures: roots.map(({ of, factor }) => worked('strain', factor * strain, of)) },
      { key: 'within', figures: [], choice: { among: ROOT_LETTERS, right: within.map(({ of }) => of) } },
      {
        key: 'furthest',
        figures: roots.map(({ of, factor }) =>
          worked('angle', angleAtStrain(thickness, length, filament.yields / factor), of),
        ),
      },
    ];
  },
};
