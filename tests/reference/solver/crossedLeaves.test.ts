/**
 * Source [crossed-leaves]: two crossed leaves under a pure moment. Rows `G-exact` are both leaves as rods that neither
 * stretch nor shear, solved by shooting outside this program; `G-k`, `G-eps` and `G-shift` are the laws of
 * small turns, after J. A. Haringx 1949 and W. H. Wittrick 1951 (from memory, re-derived). checkvalues/G.json.
 *
 * The solver's two leaves hang on a pad that is turned and otherwise free, taken to the thin limit (`thinLimit`).
 */
import { describe, it } from 'vitest';
import { radians } from '../../../src/core/units.ts';
import { between } from '../../support/beamModels.ts';
import { checkValues, input } from '../../support/checkValues.ts';
import { endOf, expectSolved, poseOf, thinLimit } from '../../support/solved.ts';

const L = 100;
const C = Math.SQRT1_2;

/** Turned about their crossing: moment M·L/(E·I), shift along the axis of symmetry and across over L, and strain·L/t. */
function turned(crossing: number, angle: number, slenderness: number): readonly number[] {
  // The across of the rows is to the right of the axis that points from the held ends to the moving ones.
  const leaf = (side: 1 | -1) => ({
    from: { x: -crossing * L * C, y: -side * crossing * L * C },
    to: { x: (1 - crossing) * L * C, y: side * (1 - crossing) * L * C },
    plane: side,
  });
  const t = slenderness * L;
  const model = between(
    [leaf(1), leaf(-1)],
    { x: 0, y: 0 },
    { thickness: t, width: 1 },
    { modulus: 12, motions: [{ at: 'moving', turn: angle }] },
  );
  const end = endOf(model, { accuracy: 'refined' });
  const { x, y } = poseOf(end, 'moving');
  return [((end.effort / angle) * L) / t ** 3, x / L, -y / L, (Math.abs(end.peak.strain) * L) / t];
}

describe('crossed leaves turned far', () => {
  it.each(checkValues('G', 'G-exact-'))('$id', (row) => {
    const angle = radians(input(row, 'theta_deg'));
    const [moment = NaN, along = NaN, across = NaN] = thinLimit((s) => turned(input(row, 'lam'), angle, s));
    const places = { abs: 1e-9, because: 'places are aimed at to 1e-9 of the length' };
    const stated = { rel: 1e-9, because: 'what refined accuracy aims at, far within the 1e-5 that the rows state' };
    expectSolved(row, [stated, places, places], moment, along, across);
  });
});

/** A turn so small that its square is lost beside 1, but not so small that round-off shows. */
const SMALL = 1e-3;
const NEARLY = { rel: 1e-5, because: 'the angle is small, not nothing: its square counts' };

describe('crossed leaves turned a little', () => {
  it.each(checkValues('G', 'G-k-'))('$id', (row) => {
    const [moment = NaN] = thinLimit((s) => turned(input(row, 'lam'), SMALL, s));
    expectSolved(row, NEARLY, moment / SMALL);
  });

  it.each(checkValues('G', 'G-eps-'))('$id', (row) => {
    const strain = thinLimit((s) => turned(input(row, 'lam'), SMALL, s))[3]!;
    // Strain is half the thickness times the moment, M·L/(E·I·θ), over L; the pull in the leaves adds less than the angle.
    expectSolved(row, { rel: 1e-3, because: 'the pull in the leaves adds a part of the angle' }, (2 * strain) / SMALL);
  });

  it.each(checkValues('G', 'G-shift-'))('$id', (row) => {
    // Second order in the angle: two angles, taken to none.
    const [along = NaN] = thinLimit((angle) => {
      const shift = thinLimit((s) => turned(input(row, 'lam'), angle, s))[1]!;
      return [(shift * C) / angle ** 2];
    }, 0.02);
    expectSolved(row, { abs: 1e-6, because: 'a small place over a square of 4e-4' }, along);
  });
});
