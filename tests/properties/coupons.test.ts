import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitsOn } from '../../src/core/coupons/onPlate.ts';
import { PIECE_IDS, type PiecesAsked } from '../../src/core/coupons/piece.ts';
import { ASKED_LIMITS, pieceOf } from '../../src/core/coupons/pieceOf.ts';
import { solidOf } from '../../src/core/coupons/solidOf.ts';
import { boxOf, meshFigures } from '../../src/core/geometry/mesh/meshFigures.ts';
import { mendMesh } from '../../src/core/geometry/mesh/mend.ts';
import { checkProfile } from '../../src/core/print/checkProfile.ts';
import { FIT_RULES, LYINGS } from '../../src/core/print/profile.ts';
import { expectClose } from '../support/close.ts';
import { filament } from '../support/filament.ts';
import { angle, length } from '../support/generators.ts';
import '../support/seed.ts';

const profile = fc
  .record({
    nozzle: length(0.15, 1.2),
    wide: fc.integer({ min: 50, max: 250 }),
    high: fc.integer({ min: 10, max: 100 }),
    first: fc.integer({ min: 60, max: 150 }),
    lying: fc.constantFrom(...LYINGS),
    fitRule: fc.constantFrom(...FIT_RULES),
  })
  .map(({ nozzle, wide, high, first, lying, fitRule }) => {
    const layerHeight = Math.max(0.04, (nozzle * high) / 100);
    const firstLayerHeight = Math.max(0.05, (layerHeight * first) / 100);
    return {
      nozzle,
      lineWidth: (nozzle * wide) / 100,
      layerHeight,
      firstLayerHeight,
      lying,
      fitRule,
      filament: 'petg',
    };
  })
  .filter((each) => checkProfile(each).problems.length === 0);

const asked: fc.Arbitrary<PiecesAsked> = fc.record({
  profile,
  filament: fc.constantFrom('pla', 'petg', 'tpu95a', 'pc', 'pp').map((id) => filament(id as 'pla')),
  count: fc.integer({ min: 1, max: 8 }),
  depth: length(ASKED_LIMITS.depth.min, ASKED_LIMITS.depth.max),
  turn: angle(5, 360),
  strain: length(ASKED_LIMITS.strain.min, ASKED_LIMITS.strain.max),
  holdRadius: length(ASKED_LIMITS.holdRadius.min, 100),
});

const plate = fc.record({ x: length(40, 300), y: length(40, 300) });

describe('on a plate of any size', () => {
  it.each(PIECE_IDS)('%s fits, or comes of full size as without a plate', (id) => {
    fc.assert(
      fc.property(asked, plate, (each, on) => {
        const [full, sized] = [pieceOf(id, each), pieceOf(id, { ...each, plate: on })];
        if (!full.ok || !sized.ok) throw new Error('not made');
        const fits = fitsOn(sized.value.size, on);
        expect(fits || sized.value.size.x === full.value.size.x).toBe(true);
        // Of full size wherever that fits.
        if (fitsOn(full.value.size, on)) expect(sized.value.volume).toBe(full.value.volume);
        for (const body of sized.value.bodies) expect(mendMesh(solidOf(body)).damage).toEqual([]);
      }),
      { numRuns: 15 },
    );
  });
});

describe('whatever is asked for within the limits', () => {
  it.each(PIECE_IDS)('%s is made, sound, of its size and volume', (id) => {
    fc.assert(
      fc.property(asked, (each) => {
        const result = pieceOf(id, each);
        if (!result.ok) throw new Error(result.problems[0].message);
        const { bodies, size, volume, strips } = result.value;
        let sum = 0;
        const most = { x: 0, y: 0, z: 0 };
        for (const body of bodies) {
          const mesh = solidOf(body);
          expect(mendMesh(mesh).damage).toEqual([]);
          sum += meshFigures(mesh).volume;
          const { min, max } = boxOf(mesh);
          for (const side of ['x', 'y', 'z'] as const) {
            expect(min[side]).toBeGreaterThanOrEqual(0);
            most[side] = Math.max(most[side], max[side]);
          }
        }
        for (const side of ['x', 'y', 'z'] as const)
          expectClose(most[side], size[side], { abs: 1e-9, because: 'both are on the same grid' });
        expectClose(sum, volume, { rel: 1e-5, because: 'edges are led through corners of other slabs within half a micrometre' }); // prettier-ignore
        for (const { thickness, length: free, depth } of strips)
          for (const value of [thickness, free, depth]) expect(value).toBeGreaterThan(0);
      }),
      { numRuns: 15 },
    );
  });
});
