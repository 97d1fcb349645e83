/**
 * Source [notch-hinge]: J. M. Paros and L. Weisbord, Machine Design 27 (Nov 1965) 151–156, form from memory, paper not
 * opened; with the ellipse and the corner fillets that follow from it. The rows of checkvalues/D.json were computed
 * outside this program by direct quadrature.
 *
 * Under a moment alone the moment is the same all along, nothing shears or stretches, and the angle is moment times give
 * at any angle, so the solver and the rows speak of exactly the same thing; it is compared at half a radian.
 */
import { describe, expect, it } from 'vitest';
import { followPath, type SolveAsked } from '../../../src/core/beam/solve.ts';
import type { BeamModel, Profile } from '../../../src/core/beam/model.ts';
import { HELD, network } from '../../support/beamModels.ts';
import { checkValues, input } from '../../support/checkValues.ts';
import { endOf, expectSolved, poseOf } from '../../support/solved.ts';

const [E, WIDTH, ANGLE] = [2000, 6, 0.5];

interface Part {
  readonly length: number;
  readonly thickness: Profile;
}

/** Parts one behind the other along x, held at the first end. */
function rowOf(parts: readonly Part[]): BeamModel {
  const xs = parts.reduce<readonly number[]>((ends, { length }) => [...ends, ends.at(-1)! + length], [0]);
  return network({
    modulus: E,
    nodes: xs.map((x, i) => ({ id: `n${i}`, x, y: 0 })),
    members: parts.map(({ thickness }, i) => ({
      id: `part${i}`,
      from: `n${i}`,
      to: `n${i + 1}`,
      shape: { kind: 'straight' },
      thickness,
      width: WIDTH,
    })),
    supports: [{ at: 'n0', ...HELD }],
  });
}

function notch(along: number, deep: number, least: number): readonly Part[] {
  return [{ length: 2 * along, thickness: { kind: 'notch', least, deep, part: 'whole' } }];
}

/** Straight in the middle, a quarter circle growing into each end. */
function filleted(length: number, radius: number, t: number): readonly Part[] {
  const fillet = (part: 'opening' | 'closing'): Part => ({
    length: radius,
    thickness: { kind: 'notch', least: t, deep: radius, part },
  });
  return [fillet('opening'), { length: length - 2 * radius, thickness: t }, fillet('closing')];
}

/** Turned by half a radian at the last end and otherwise free there: E·b·angle/moment, and the strain on the way. */
function turned(parts: readonly Part[], asked: SolveAsked) {
  const end = endOf({ ...rowOf(parts), motions: [{ at: `n${parts.length}`, turn: ANGLE }] }, asked);
  const moment = end.effort / ANGLE;
  return { give: (E * WIDTH * ANGLE) / moment, strain: Math.abs(end.peak.strain) };
}

const ACCURACIES = [
  ['interactive', { rel: 1e-6, because: 'what interactive accuracy aims at' }],
  ['refined', { rel: 1e-9, because: 'what refined accuracy aims at' }],
] as const;

describe.each(ACCURACIES)('a notch hinge solved as a network, %s', (accuracy, allowance) => {
  it.each(checkValues('D', 'D-circ-'))('$id', (row) => {
    const t = 1;
    const R = t / input(row, 't_over_R');
    expectSolved(row, allowance, turned(notch(R, R, t), { accuracy }).give * t ** 2);
  });

  it.each(checkValues('D', 'D-ell-'))('$id', (row) => {
    const parts = notch(input(row, 'a_mm'), input(row, 'c_mm'), input(row, 't_mm'));
    expectSolved(row, allowance, turned(parts, { accuracy }).give);
  });

  it.each(checkValues('D', 'D-fil-'))('$id', (row) => {
    const t = input(row, 't_mm');
    const { give } = turned(filleted(input(row, 'L_mm'), input(row, 'r_mm'), t), { accuracy });
    expectSolved(row, allowance, give, (give * t ** 3) / 12);
  });

  it.each(checkValues('D', 'D-filadd-'))('$id', (row) => {
    const [t, length] = [0.84, 20];
    const radius = input(row, 'r_over_t') * t;
    const { give } = turned(filleted(length, radius, t), { accuracy });
    // What the fillets add is a small part of a long leaf, so it is known to fewer figures than the whole.
    const part = { rel: 20 * allowance.rel, because: `${allowance.because}, of a leaf some 20 times as long` };
    expectSolved(row, part, ((give * t ** 3) / 12 - (length - 2 * radius)) / (2 * t));
  });

  it.each(checkValues('D', 'D-strain-'))('$id: angle for each unit of strain', (row) => {
    const R = 1 / input(row, 't_over_R');
    expectSolved(row, allowance, ANGLE / turned(notch(R, R, 1), { accuracy }).strain);
  });
});

describe('a hinge pushed by a moment', () => {
  it('turns in its neck by as much as when it is turned', () => {
    const parts = notch(20, 20, 1);
    const { give } = turned(parts, { accuracy: 'refined' });
    const load = { at: 'n1', moment: (0.3 * E * WIDTH) / give };
    const answer = followPath({ ...rowOf(parts), loads: [load] }, { accuracy: 'refined', parts: 10 });
    expect(poseOf(answer.points.at(-1)!, 'n1').turn).toBeCloseTo(0.3, 8);
  });
});
