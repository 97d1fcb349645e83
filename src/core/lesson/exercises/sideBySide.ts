import { bendingStrain } from '../../closedForms/leafBending.ts';
import { leafTorque } from '../../closedForms/leafTorque.ts';
import type { Mm, NMm, Rad } from '../../units.ts';
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
import { measured, overLength, READING, worked } from './question.ts';

export interface SideBySide extends LinesAcross {
  readonly filament: FilamentFacts;
  readonly angle: Rad;
  readonly length: Mm;
  readonly depth: Mm;
  /** Leaves side by side, as drawn. */
  readonly count: number;
  /** Effort that is wanted in the end. */
  readonly wanted: NMm;
}

export const ROW_OR_ONE = ['row', 'one'] as const;
const FILAMENT_IDS = ['petg', 'pla', 'asa', 'abs', 'pa12', 'pc'] as const;

/** Each leaf is taken as narrow, E·b·t³/12. */
const torqueOfOne = ({ filament, depth, thickness, length, angle }: SideBySide) =>
  leafTorque(filament.modulus, depth, thickness, length, angle, 1);

/** One leaf that is as stiff as the row: n·t³ = t′³. */
const alikeThickness = ({ count, thickness }: SideBySide) => thickness * Math.cbrt(count);

const neededFor = (given: SideBySide, one: NMm) => Math.ceil(given.wanted / one - 1e-9);

/** Leaves side by side. */
export const sideBySide: PageMaker<SideBySide> = {
  seed: 7,
  draw: (pick) => {
    const given = {
      ...linesAcross(pick([2, 3]), pick(LINE_WIDTHS)),
      filament: factsOf(pick(FILAMENT_IDS)),
      angle: pick(anglesOf(20, 75)),
      length: pick(steps(16, 50)),
      depth: pick([3, 4, 5, 6]),
      count: pick(steps(3, 9)),
    };
    // A round torque between those of one count of leaves and the next.
    const one = torqueOfOne({ ...given, wanted: 0 });
    return { ...given, wanted: Math.round(((pick(steps(10, 20)) - 0.5) * one) / 10) * 10 };
  },
  isFit: (given) => {
    const { filament, thickness, length, angle, wanted } = given;
    const one = bendingStrain(thickness, length, angle);
    const alike = bendingStrain(alikeThickness(given), length, angle);
    const torque = torqueOfOne(given);
    const isFirm = [-READING, READING].every(
      (off) => neededFor(given, (torque * length) / (length + off)) === neededFor(given, torque),
    );
    return (
      one < filament.yields &&
      alike > filament.yields &&
      isClear(one, filament.yields, length) &&
      isClear(alike, filament.yields, length) &&
      torque >= 5 &&
      wanted > 0 &&
      isFirm
    );
  },
  ask: (given) => {
    const { thickness, length, angle, count } = given;
    const [torque, alike] = [torqueOfOne(given), alikeThickness(given)];
    return [
      { key: 'measure', figures: [worked('count', count), measured(length)] },
      { key: 'strain', figures: [overLength('strain', bendingStrain(thickness, length, angle), length)] },
      { key: 'one', figures: [overLength('torque', torque, length)] },
      { key: 'all', figures: [overLength('torque', count * torque, length)] },
      {
        key: 'thick',
        figures: [worked('width', alike), overLength('strain', bendingStrain(alike, length, angle), length)],
      },
      { key: 'back', figures: [], choice: { among: ROW_OR_ONE, right: ['row'] } },
      { key: 'needed', figures: [worked('count', neededFor(given, torque))] },
    ];
  },
};
