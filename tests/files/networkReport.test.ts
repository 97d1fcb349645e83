/**
 * Two hinged bars. Forces of straight bars by E·A and the change of their length over their length as printed; they
 * buckle at π²·E·I/L² (Euler; from memory, as in any text on strength of materials).
 */
import { describe, expect, it } from 'vitest';
import { NETWORK_HEADER, reportNetwork, type NetworkAsked } from '../../src/cli/networkReport.ts';
import { MOST_LINES } from '../../src/cli/pathReport.ts';
import type { BeamModel } from '../../src/core/beam/model.ts';
import { expectClose } from '../support/close.ts';
import { at, figuresIn, keysWithoutUnit } from '../support/documents.ts';
import { EVERY_FIELD } from '../support/networkGenerators.ts';

const HELD = { x: true, y: true, turn: true };
const [HALF, RISE, THICK, WIDE, MODULUS] = [20, 4, 0.84, 6, 2000];

function bars(down: number, thickness = THICK): BeamModel {
  const bar = { shape: { kind: 'straight' }, thickness, width: WIDE, hinged: 'both' } as const;
  return {
    modulus: MODULUS,
    poisson: 0.38,
    nodes: [
      { id: 'left', x: -HALF, y: 0 },
      { id: 'top', x: 0, y: RISE },
      { id: 'right', x: HALF, y: 0 },
    ],
    members: [
      { id: 'a', from: 'left', to: 'top', ...bar },
      { id: 'b', from: 'top', to: 'right', ...bar },
    ],
    pads: [],
    supports: [
      { at: 'left', ...HELD },
      { at: 'right', ...HELD },
      { at: 'top', x: true, turn: true },
    ],
    motions: [{ at: 'top', y: -down }],
    loads: [],
    springs: [],
    ties: [],
  };
}

const report = (model: BeamModel, asked: Partial<NetworkAsked> = {}) =>
  reportNetwork(model, [], { parts: 8, ...asked });

/** What pushes the top down by so much while both bars stay straight [N]. */
function straightForce(down: number): number {
  const [printed, height] = [Math.hypot(HALF, RISE), RISE - down];
  const length = Math.hypot(HALF, height);
  return (2 * MODULUS * THICK * WIDE * (printed - length) * height) / (printed * length);
}

interface Point {
  readonly part: number | null;
  readonly share: number;
  readonly effort_Nmm: number;
  readonly energy_Nmm: number;
  readonly unstable_ways: { readonly guided: number };
  readonly reactions: readonly { readonly at: string; readonly x_N: number; readonly y_N: number }[];
}

describe('two hinged bars', () => {
  const whole = report(bars(9));
  const points: readonly Point[] = at(whole, 'path', 'points');

  it('push back as straight bars do, at every part asked for', () => {
    expect(points.map(({ part }) => part)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
    for (const { share, effort_Nmm, reactions } of points) {
      const because = 'bars that only change in length; the solver aims at 1e-6 of the largest';
      expectClose(effort_Nmm / 9, straightForce(9 * share), { abs: 3e-5, because });
      const top = reactions.find((reaction) => reaction.at === 'top');
      expectClose(-(top?.y_N ?? Number.NaN), straightForce(9 * share), { abs: 3e-5, because });
    }
  });

  it('leave sideways where struts buckle, told with the push by which that was found', () => {
    const second: { imperfection_mm: number; points: readonly Point[] } = at(whole, 'second');
    const [{ reactions }] = second.points as readonly [Point];
    const left = reactions.find((reaction) => reaction.at === 'left')!;
    const euler = (Math.PI ** 2 * MODULUS * WIDE * THICK ** 3) / 12 / Math.hypot(HALF, RISE) ** 2;
    const because = 'Euler’s strut neither shortens nor shears; these shorten by 0.14 % and shear';
    expectClose(Math.hypot(left.x_N, left.y_N), euler, { rel: 1e-2, because });
    expect(second.imperfection_mm).toBeGreaterThan(0);
    expect(second.points.at(-1)).toMatchObject({ part: 8, unstable_ways: { guided: 0 } });
  });

  it('have figures that are finite, each with its unit', () => {
    const figures = { ...NETWORK_HEADER, ...whole, notes: [] };
    expect(whole.problems).toEqual([]);
    expect(figuresIn(figures).filter(([, value]) => !Number.isFinite(value))).toEqual([]);
    expect(keysWithoutUnit(figures)).toEqual([]);
  });

  it('take as many elements and are as close as asked', () => {
    expect(at(report(bars(1), { elements: 12 }), 'error', 'elements')).toEqual([12, 12]);
    const refined = report(bars(1), { accuracy: 'refined' });
    expect(refined).toMatchObject({ accuracy: 'refined' });
    expect(at(refined, 'error', 'effort')).toBeLessThan(1e-9);
  });
});

describe('stiffnesses', () => {
  it('are told of every pad that moves and of free nodes that are moved, or of the one asked for', () => {
    const of = (asked: Partial<NetworkAsked>) =>
      at(report(bars(1), asked), 'stiffness').map(({ of: id }: { of: string }) => id);
    expect(of({})).toEqual(['top']);
    expect(of({ pad: 'left' })).toEqual(['left']);
    // A stiffness of two bars seen from the top: 2·E·A/L·sin².
    const [vertical]: readonly { held: Record<string, number> }[] = at(report(bars(1)), 'stiffness');
    const length = Math.hypot(HALF, RISE);
    const expected = ((2 * MODULUS * THICK * WIDE) / length) * (RISE / length) ** 2;
    expectClose(vertical?.held['y_N_per_mm'] ?? Number.NaN, expected, { rel: 1e-9, because: 'round-off' });
  });

  it('of a pad that there is not are a problem', () => {
    expect(report(bars(1), { pad: 'roof' })).toMatchObject({
      problems: [{ code: 'no-such-id', field: 'pad', value: 'roof' }],
    });
  });
});

describe('a network', () => {
  it('with every field of the format is answered, or said why not', () => {
    const { problems, notes: _, ...figures } = report(EVERY_FIELD);
    expect(figuresIn(figures).every(([, value]) => Number.isFinite(value))).toBe(true);
    for (const { code } of problems) expect(['no-convergence', 'over-budget']).toContain(code);
  });

  it('whose path ends early says why, among the problems and beside the points that stand', () => {
    let steps = 0;
    const broken = report(bars(1), { cancelled: () => (steps += 1) > 10 });
    const { stopped, points }: { stopped?: unknown; points: readonly Point[] } = at(broken, 'path');
    expect(stopped).toMatchObject({ code: 'cancelled', message: expect.any(String) });
    expect(broken.problems).toContainEqual(stopped);
    expect(points.length).toBeGreaterThan(1);
    expect(points.length).toBeLessThan(9);
  });

  it('of more lines than one document takes is refused', () => {
    const many = { ...bars(1), members: Array.from({ length: MOST_LINES / 1000 + 1 }, () => bars(1).members[0]!) };
    expect(report(many, { parts: 1000 })).toMatchObject({ problems: [{ code: 'too-large', field: 'path' }] });
  });
});
