import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asLaid } from '../../../src/core/inspect/asLaid.ts';
import { PLATE_UPS } from '../../../src/core/inspect/judged.ts';
import { layersOf, layersOfPart } from '../../../src/core/inspect/layerOf.ts';
import { radians } from '../../../src/core/units.ts';
import { expectClose } from '../../support/close.ts';
import {
  anyFlexures,
  archOf,
  AS_DROPPED,
  BOX,
  creaseOf,
  straight,
  THREE_LEAVES,
  THREE_LEAVES_BOX,
  X,
  Y,
  Z,
} from '../../support/flexures.ts';

describe('layers of a section', () => {
  it('of a flat one run through its depth, and its middle shows it best', () => {
    // 6 mm deep from the plate up, in layers of 0.2 mm.
    const told = layersOf(THREE_LEAVES[0]!, THREE_LEAVES_BOX, AS_DROPPED);
    expect(told).toEqual({ layer: 15, layers: [1, 30] });
    expect(layersOfPart(THREE_LEAVES_BOX, AS_DROPPED)).toBe(30);
  });

  it('grow with the scale', () => {
    const told = layersOf(THREE_LEAVES[0]!, THREE_LEAVES_BOX, { ...AS_DROPPED, scale: 2 });
    expect(told).toEqual({ layer: 30, layers: [1, 60] });
  });

  it('of a web on the plate are those of its thickness', () => {
    expect(layersOf(creaseOf(), BOX, AS_DROPPED).layers).toEqual([1, 2]);
    const onTop = creaseOf({ centre: { x: 20, y: 10, z: 11.8 } });
    expect(layersOf(onTop, BOX, AS_DROPPED).layers).toEqual([59, 60]);
    expect(layersOf(onTop, BOX, { ...AS_DROPPED, up: '-z' }).layers).toEqual([1, 2]);
  });

  it('of what is thinner than a layer are the one it lies in', () => {
    const thin = creaseOf({ thickness: 0.08, centre: { x: 20, y: 10, z: 1 } });
    expect(layersOf(thin, BOX, AS_DROPPED)).toEqual({ layer: 5, layers: [5, 5] });
  });

  it('of an upright one run along it', () => {
    const leaf = straight({ along: Z, across: X, axis: Y, length: 4, centre: { x: 9, y: 9, z: 6 } });
    expect(layersOf(leaf, BOX, AS_DROPPED)).toEqual({ layer: 30, layers: [21, 40] });
  });

  it('of an arch that stands up hold its rise', () => {
    const arch = archOf({ along: X, across: Z, axis: Y, length: 20, thickness: 0.4, centre: { x: 9, y: 9, z: 6 } });
    const { layers } = layersOf(arch, BOX, AS_DROPPED);
    expect((layers[1] - layers[0] + 1) * 0.2).toBeGreaterThanOrEqual(2 * arch.centreLine.rise);
  });

  it('are always within the part, the best one within them', () => {
    fc.assert(
      fc.property(anyFlexures(4), fc.constantFrom(...PLATE_UPS), fc.constantFrom(0.8, 1, 2.5), (some, up, scale) => {
        for (const flexure of some) {
          const as = { ...AS_DROPPED, up, scale };
          const { layer, layers } = layersOf(flexure, BOX, as);
          const [first, last] = layers;
          expect([1 <= first, first <= layer, layer <= last, last <= layersOfPart(BOX, as)]).toEqual(
            Array.from({ length: 4 }, () => true),
          );
        }
      }),
    );
  });
});

/** Across and axis turned about the length by so many degrees. */
function tilted(deg: number) {
  const [sine, cosine] = [Math.sin(radians(deg)), Math.cos(radians(deg))];
  return { across: { x: 0, y: cosine, z: sine }, axis: { x: 0, y: -sine, z: cosine } };
}

describe('how thick a section is to the printer', () => {
  it('grows where a wall leans: a level cut through it is longer than it is thick', () => {
    // A wall that leans by 30° is cut over t/cos 30°.
    const laid = asLaid(straight({ thickness: 0.84, ...tilted(30) }), BOX, AS_DROPPED);
    expectClose(laid.thickness, 0.84 * 1.1547005, { abs: 1e-7, because: 'printed places of 1/cos 30°' });
    expect(laid.countOf).toBe('lines');
  });

  it('grows where a web slopes', () => {
    const sloping = straight({ kind: 'crease', thickness: 0.4, ...tilted(70) });
    const laid = asLaid(sloping, BOX, AS_DROPPED);
    expectClose(laid.thickness, 0.4 / 0.9396926, { abs: 1e-7, because: 'printed places of cos 20°' });
    expect(laid.countOf).toBe('layers');
  });

  it('counts the first layer only where it lies on the plate', () => {
    const as = { ...AS_DROPPED, profile: { ...AS_DROPPED.profile, firstLayerHeight: 0.3 } };
    expect(asLaid(creaseOf(), BOX, as).profile.firstLayerHeight).toBe(0.3);
    const above = creaseOf({ centre: { x: 20, y: 10, z: 3 } });
    expect(asLaid(above, BOX, as).profile.firstLayerHeight).toBe(0.2);
    expect(asLaid(straight(), BOX, as).profile.firstLayerHeight).toBe(0.3);
  });
});
