import { unfoldedLength } from '../../closedForms/foldedLeafTurns.ts';
import type { FoldedSizes } from '../../flexures/foldedLeaf.ts';
import { modulusGiven } from '../asked.ts';
import type { HandAsked, HandSteps, KindWorking } from '../kindWorking.ts';
import { travelGiven } from '../movement.ts';
import { formula, given, type Given, type Step } from '../step.ts';
import { foldedMovedSteps } from './foldedMoved.ts';
import { inertiaStep, togetherGiven } from './turnedLeaf.ts';

type Folded = HandAsked<FoldedSizes>;

/** What a fold is measured by. */
function shapeGiven({ sizes }: Folded): readonly Given[] {
  return [
    given('n_f', sizes.runs, '', 'size'),
    given('L', sizes.length, 'mm', 'size'),
    given('d', sizes.spacing, 'mm', 'size'),
  ];
}

/** Runs and turns one after the other, as one long leaf: the symbol `L_u`. */
function lengthStep(asked: Folded): Step {
  return formula({
    id: 'unfolded',
    symbol: 'L_u',
    expression: 'n_f * L + (n_f - 1) * pi * d / 2',
    given: shapeGiven(asked),
    unit: 'mm',
    figure: unfoldedLength(asked.sizes),
    source: 'plane-bending',
  });
}

function effortStep(
  asked: Folded,
  written: { readonly id: string; readonly one: string } & Pick<Step, 'source'>,
): Step {
  const { sizes, assessment, byHand, understood } = asked;
  const { inputs, factor } = togetherGiven(sizes.sideBySide);
  const isTurn = understood.drive.measure === 'turn';
  return formula({
    id: written.id,
    symbol: isTurn ? 'M' : 'F',
    expression: `${factor}${written.one}`,
    given: [modulusGiven(asked), given('b', sizes.depth, 'mm', 'size'), ...inputs],
    unit: isTurn ? 'N mm' : 'N',
    figure: assessment.effort.modulus * byHand.effort,
    source: written.source,
  });
}

/** A pure moment is the same all along: ε = t·θ/(2·L), M = E·I·θ/L, of the whole length. */
const turnedSteps: HandSteps<FoldedSizes> = (asked) => [
  lengthStep(asked),
  formula({
    id: 'arc-strain',
    symbol: 'ε',
    expression: 't * θ / (2 * L_u)',
    unit: '',
    figure: asked.byHand.nominalStrain,
    source: 'plane-bending',
  }),
  inertiaStep(asked.sizes.depth),
  effortStep(asked, { id: 'arc-moment', one: 'E * I * θ / L_u', source: 'plane-bending' }),
];

/** A single run is a leaf with parallel ends when it is moved across, and a bar when it is stretched. */
function singleSteps(asked: Folded, way: 'across' | 'along'): readonly Step[] {
  const strain = formula({
    id: way === 'across' ? 'single-strain' : 'bar-strain',
    symbol: 'ε',
    expression: way === 'across' ? '3 * t * δ / L^2' : 'δ / L',
    given: [travelGiven(asked), given('L', asked.sizes.length, 'mm', 'size')],
    unit: '',
    figure: asked.byHand.nominalStrain,
    source: 'small-deflection',
  });
  if (way === 'along')
    return [strain, effortStep(asked, { id: 'bar-force', one: 'E * b * t * ε', source: 'unit-load-method' })];
  const force = effortStep(asked, { id: 'single-force', one: '12 * E * I * δ / L^3', source: 'small-deflection' });
  return [strain, inertiaStep(asked.sizes.depth), force];
}

function movedSteps(way: 'across' | 'along'): HandSteps<FoldedSizes> {
  return (asked) => {
    if (asked.sizes.runs === 1) return singleSteps(asked, way);
    const own = way === 'across' ? 'p_x' : 'p_y';
    return [
      lengthStep(asked),
      ...foldedMovedSteps(asked, way),
      effortStep(asked, { id: 'fold-force', one: `E * b * ${own} * δ`, source: 'unit-load-method' }),
    ];
  };
}

/** A leaf folded to and fro: pulled across its runs, shifted along them, turned. */
export const FOLDED_LEAF_WORKING: KindWorking<FoldedSizes> = {
  family: 'foldedLeaf',
  drives: { pulled: movedSteps('across'), shifted: movedSteps('along'), turned: turnedSteps },
};
