/** Hand forms of a leaf folded to and fro, its turns bending like its runs. */
import { foldedEffort, unfoldedLength } from '../closedForms/foldedLeafTurns.ts';
import { bendingStrain } from '../closedForms/leafBending.ts';
import { leafTorque } from '../closedForms/leafTorque.ts';
import { asRad, type Mm } from '../units.ts';
import type { HandForm } from './family.ts';
import type { FoldedSizes } from './foldedLeaf.ts';

/** Length of a run over thickness from which shear, which the form leaves out, is small. */
const SLENDER = 20;
/** Across: so far may the runs turn [rad], travel over the length of all of them. */
const OPENED = 0.04;
/** Along: travel over the width of all runs, and that times length over spacing, for long runs close together. */
const SLID = { wide: 0.01, close: 0.05 };

function moved(
  drive: 'pulled' | 'shifted',
  way: 'across' | 'along',
  small: (sizes: FoldedSizes) => Mm,
): HandForm<FoldedSizes> {
  return {
    drive,
    source: 'unit-load-method',
    // A single run is a leaf in a slide, which also stretches: that is no matter of little travel.
    appliesTo: (sizes, thickness, amount) =>
      sizes.runs > 1 && SLENDER * thickness <= sizes.length && amount <= small(sizes),
    peakStrain: (sizes, thickness, amount) => foldedEffort(sizes, thickness, way).strain * amount,
    effort: (sizes, thickness, amount) =>
      sizes.sideBySide * sizes.depth * foldedEffort(sizes, thickness, way).stiffness * amount,
    rel: 0.05,
    because: 'little travel: on the way the lever arms of the runs change by a few per cent; 1 % for shear at L = 20·t',
  };
}

export const FOLDED_FORMS: readonly HandForm<FoldedSizes>[] = [
  moved('pulled', 'across', ({ runs, length }) => OPENED * runs * length),
  moved(
    'shifted',
    'along',
    ({ runs, length, spacing }) => runs * spacing * Math.min(SLID.wide, (SLID.close * spacing) / length),
  ),
  {
    drive: 'turned',
    source: 'plane-bending',
    appliesTo: () => true,
    peakStrain: (sizes, thickness, amount) => bendingStrain(thickness, unfoldedLength(sizes), asRad(amount)),
    effort: (sizes, thickness, amount) =>
      sizes.sideBySide * leafTorque(1, sizes.depth, thickness, unfoldedLength(sizes), asRad(amount), 1),
    rel: 1e-6,
    because: 'a pure moment is the same all along runs and turns and changes every curvature alike, at any angle',
  },
];
