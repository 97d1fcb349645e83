import { describe, expect, it } from 'vitest';
import { PIECE_IDS, type Piece, type PiecesAsked } from '../../../src/core/coupons/piece.ts';
import { solidOf } from '../../../src/core/coupons/solidOf.ts';
import { cutByPlane } from '../../../src/core/geometry/mesh/planeSection.ts';
import { planeAt } from '../../../src/core/inspect/thin/sectionAt.ts';
import { bendingModulus } from '../../../src/core/material/choose.ts';
import { LYINGS } from '../../../src/core/print/profile.ts';
import { asRad, degrees, radians } from '../../../src/core/units.ts';
import { cantilever } from '../../support/beamModels.ts';
import { expectClose } from '../../support/close.ts';
import { ASKED, ASKED_WAYS, CASES, lyingAs, made, notesOf, refusedPiece } from '../../support/coupons.ts';
import { filament } from '../../support/filament.ts';
import { endOf, poseOf } from '../../support/solved.ts';

describe('what cannot be made', () => {
  it.each<[string, Partial<PiecesAsked>, string]>([
    ['count', { count: 0 }, 'below-minimum'],
    ['count', { count: 9 }, 'above-maximum'],
    ['count', { count: 2.5 }, 'not-whole'],
    ['count', { count: Number.NaN }, 'not-a-number'],
    ['depth', { depth: 0.5 }, 'below-minimum'],
    ['depth', { depth: Number.POSITIVE_INFINITY }, 'not-a-number'],
    ['turn', { turn: radians(1) }, 'below-minimum'],
    ['strain', { strain: 2 }, 'above-maximum'],
    ['holdRadius', { holdRadius: -3 }, 'below-minimum'],
    ['filament', { filament: filament('pp-moulded') }, 'not-one-of'],
    ['profile.layerHeight', { profile: { ...ASKED.profile, layerHeight: 3 } }, 'above-maximum'],
    ['profile.lying', { profile: { ...ASKED.profile, lying: 'aslant' as 'flat' } }, 'not-one-of'],
  ])('%s %j is refused, and said why', (field, change, code) => {
    for (const id of PIECE_IDS) {
      const problem = refusedPiece(id, { ...ASKED, ...change }).find((each) => each.field === field);
      expect(problem?.code).toBe(code);
      expect(problem?.message).toMatch(/give|raise|lower|choose/);
      expect(problem?.message).not.toMatch(/\.$/);
    }
  });
});

describe('strips', () => {
  it('are numbered from 1 on, each number once', () => {
    for (const [id, , , asked] of CASES) {
      const { strips } = made(id, asked);
      expect(strips.map(({ number }) => number)).toEqual(strips.map((_, i) => i + 1));
    }
  });

  it('of comb and creases strain as bent to an arc: t·θ/(2L)', () => {
    for (const [id, , , asked] of CASES) {
      if (id !== 'comb' && id !== 'creases') continue;
      for (const { thickness, length, strain } of made(id, asked).strips)
        expectClose(strain!, (thickness * asked.turn) / (2 * length), { rel: 1e-12, because: 'round-off' });
    }
  });

  it('of the comb strain from 0.6 to 4 times as asked, in equal ratios, where their lengths can be printed', () => {
    const strains = made('comb').strips.map(({ strain }) => strain!);
    expectClose(strains[0]!, 4 * ASKED.strain, { rel: 1e-12, because: 'round-off' });
    expectClose(strains.at(-1)!, 0.6 * ASKED.strain, { rel: 1e-12, because: 'round-off' });
    const ratios = strains.slice(1).map((strain, i) => strain / strains[i]!);
    for (const ratio of ratios) expectClose(ratio, ratios[0]!, { rel: 1e-12, because: 'round-off' });
    expect(notesOf('comb', ASKED)).toEqual([]);
  });

  it('of the comb stay between 3 thicknesses and 80 mm, 40 mm where they stand, and it says what that leaves out', () => {
    for (const lying of LYINGS) {
      for (const [, asked] of ASKED_WAYS) {
        for (const { length, thickness } of made('comb', lyingAs(lying, asked)).strips) {
          expect(length).toBeLessThanOrEqual((lying === 'upright' ? 40 : 80) * (1 + 1e-12));
          expect(length).toBeGreaterThanOrEqual(Math.min(3 * thickness, 20) * (1 - 1e-12));
        }
      }
    }
    const [low] = notesOf('comb', { ...ASKED, strain: 0.002 });
    expect([low?.code, low?.field]).toEqual(['below-minimum', 'strain']);
    const [high] = notesOf('comb', { ...ASKED, turn: radians(30), strain: 0.4 });
    expect([high?.code, high?.field]).toEqual(['above-maximum', 'strain']);
  });

  it('of all others are of lines asked, or layers where they lie as a crease', () => {
    for (const [id, lying, , asked] of CASES) {
      if (id === 'ladder' || id === 'creases') continue;
      for (const { count, countOf } of made(id, asked).strips) {
        expect(count).toBe(asked.count);
        expect(countOf).toBe(lying === 'crease' ? 'layers' : 'lines');
      }
    }
  });
});

describe('the ladder', () => {
  it('has 8 rungs that stand far enough apart for the jaws of a caliper', () => {
    for (const [, asked] of ASKED_WAYS) {
      for (const lying of LYINGS) {
        const { strips } = made('ladder', lyingAs(lying, asked));
        expect(strips.map(({ count }) => count)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
        const wide = strips.map(({ thickness, depth, countOf }) => (countOf === 'layers' ? depth : thickness));
        for (let i = 1; i < strips.length; i += 1) {
          const clear = strips[i]!.from.x - strips[i - 1]!.from.x - (wide[i]! + wide[i - 1]!) / 2;
          expect(clear).toBeGreaterThanOrEqual(7);
        }
      }
    }
  });
});

describe('the corners of the radius block', () => {
  it('are eight, their strains t/(2R + t) from under half of what is asked to past four times the yield strain', () => {
    const { corners, strips } = made('radii');
    const { thickness } = strips[0]!;
    expect(corners.map(({ number }) => number).toSorted((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    for (const { radius, strain } of corners)
      expectClose(strain, thickness / (2 * radius + thickness), { rel: 1e-12, because: 'round-off' });
    const strains = corners.map(({ strain }) => strain);
    const { yieldStrain } = ASKED.filament.properties;
    expect(Math.min(...strains)).toBeLessThanOrEqual(ASKED.strain / 2);
    expect(Math.max(...strains)).toBeGreaterThanOrEqual(4 * yieldStrain.typical);
  });

  it('are round in the solid: a level cut lies on the circle of each for a quarter turn', () => {
    for (const [id, , , asked] of CASES) {
      if (id !== 'radii') continue;
      const piece = made(id, asked);
      for (const { centre, radius } of piece.corners) {
        const bearings = pointsOn(piece, centre, radius);
        expect([0, 90, 180, 270].some((from) => coversQuarter(bearings, from))).toBe(true);
      }
    }
  });

  it('says so where no corner is round enough to leave such strips unmarked', () => {
    const [note] = notesOf('radii', lyingAs('upright', { ...ASKED, count: 8 }));
    expect([note?.code, note?.field]).toEqual(['above-maximum', 'count']);
  });

  it('says so where no corner is sharp enough to mark such strips', () => {
    const thin = { ...ASKED.profile, nozzle: 0.25, lineWidth: 0.25, layerHeight: 0.1, firstLayerHeight: 0.1 };
    const [note] = notesOf('radii', { ...ASKED, count: 1, profile: thin });
    expect([note?.code, note?.field]).toEqual(['below-minimum', 'count']);
  });
});

/** Bearings of all corners of the outline that lie on a circle, in degrees. */
function pointsOn(
  { bodies }: Piece,
  centre: { readonly x: number; readonly y: number },
  radius: number,
): readonly number[] {
  const loops = bodies.slice(0, 2).flatMap((body) => cutByPlane(solidOf(body), planeAt({ x: 0, y: 0, z: 1 }, { x: 0, y: 0, z: 1 })).loops); // prettier-ignore
  const isOn = (x: number, y: number) => Math.abs(Math.hypot(x - centre.x, y - centre.y) - radius) < 1.5e-3;
  return loops.flatMap((loop) =>
    loop.filter(({ x, y }) => isOn(x, y)).map(({ x, y }) => degrees(asRad(Math.atan2(y - centre.y, x - centre.x)))),
  );
}

/** Whether corners of the outline stand on the round from a bearing for a quarter turn on, without a gap of over 20°. */
function coversQuarter(bearings: readonly number[], from: number): boolean {
  // Ends of the round lie on the grid: of a radius of 1 mm half a micrometre is 0.03°.
  const within = bearings.map((bearing) => (bearing - from + 720.1) % 360).filter((past) => past <= 90.2);
  const sorted = within.toSorted((a, b) => a - b);
  const gaps = sorted.slice(1).map((past, i) => past - sorted[i]!);
  return (sorted[0] ?? 90) < 0.2 && (sorted.at(-1) ?? 0) > 90 && Math.max(...gaps) < 20;
}

describe('the bar', () => {
  it('sags by 0.1 to 0.2 of its arm under its weight by the solver, and comes back', () => {
    for (const lying of LYINGS) {
      for (const [, asked] of ASKED_WAYS) {
        const to = lyingAs(lying, asked);
        if (notesOf('bar', to).length > 0) continue;
        const { arm, grams, strips } = made('bar', to);
        const [{ thickness, depth, strain }] = strips as [Piece['strips'][number]];
        const modulus = bendingModulus(asked.filament, lying === 'upright').typical;
        const model = cantilever({ kind: 'straight' }, { x: arm!, y: 0 }, { thickness, width: depth });
        const force = (grams! / 1000) * 9.80665;
        const end = endOf({ ...model, modulus, loads: [{ at: 'tip', y: -force }] }, { accuracy: 'interactive' });
        const sag = -poseOf(end, 'tip').y / arm!;
        expect(sag).toBeGreaterThan(0.1);
        expect(sag).toBeLessThan(0.2);
        expect(strain!).toBeLessThanOrEqual(asked.filament.properties.yieldStrain.typical / 2);
      }
    }
    expect(notesOf('bar', ASKED)).toEqual([]);
  });

  it('says so where kitchens have no such weight', () => {
    const [note] = notesOf('bar', { ...ASKED, count: 8, depth: 30 });
    expect([note?.code, note?.field]).toEqual(['below-minimum', 'count']);
  });
});

describe('the hold piece', () => {
  it('has a slot of the radius asked for, and says so where it cannot be', () => {
    expect(made('hold').slotRadius).toBe(ASKED.holdRadius);
    expectClose(degrees(made('hold').slotTurn!), 140, { abs: 1e-9, because: 'round-off' });
    const wide = { ...ASKED, holdRadius: 200 };
    expect(made('hold', wide).slotRadius).toBe(60);
    expect(notesOf('hold', wide).map(({ field, limit }) => [field, limit])).toEqual([['holdRadius', 60]]);
    const tight = { ...ASKED, holdRadius: 1 };
    expect(made('hold', tight).slotRadius).toBe(3);
    expect(notesOf('hold', tight)[0]?.code).toBe('below-minimum');
  });

  it('has a slot as wide as the strip is thick and 0.4 mm, all along its arc, from its floor up', () => {
    for (const [id, , , asked] of CASES) {
      if (id !== 'hold') continue;
      const piece = made(id, asked);
      const { thickness } = piece.strips[0]!;
      const block = solidOf(piece.bodies[0]!);
      const cut = (z: number) => cutByPlane(block, planeAt({ x: 0, y: 0, z }, { x: 0, y: 0, z: 1 })).loops;
      expect(cut(1).length).toBe(1);
      const [low, high] = [piece.slotRadius! - thickness / 2 - 0.2, piece.slotRadius! + thickness / 2 + 0.2];
      const top = Math.max(
        ...cut(3)
          .flat()
          .map(({ y }) => y),
      );
      const rim = Math.max(high + 10, 23.5);
      const middle = {
        x:
          (Math.max(
            ...cut(3)
              .flat()
              .map(({ x }) => x),
          ) +
            Math.min(
              ...cut(3)
                .flat()
                .map(({ x }) => x),
            )) /
          2,
        y: top - rim,
      };
      const radii = cut(3)
        .flat()
        .map(({ x, y }) => Math.hypot(x - middle.x, y - middle.y));
      // Nothing of the block lies between the two walls of the slot, and both walls are there.
      expect(radii.filter((radius) => radius > low + 0.01 && radius < high - 0.01)).toEqual([]);
      for (const wall of [low, high])
        expect(radii.filter((radius) => Math.abs(radius - wall) < 0.01).length).toBeGreaterThan(8);
    }
  });
});
