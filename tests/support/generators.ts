import fc from 'fast-check';
import type { LineSettings } from '../../src/core/print/wholeLines.ts';
import { radians, type Mm, type Rad } from '../../src/core/units.ts';

/** A length on a 1 µm grid: counterexamples stay readable and never subnormal. */
export const length = (min: Mm, max: Mm): fc.Arbitrary<Mm> =>
  fc.integer({ min: Math.ceil(min * 1000), max: Math.floor(max * 1000) }).map((n) => n / 1000);

/** An angle on a grid of a tenth of a degree. */
export const angle = (minDeg: number, maxDeg: number): fc.Arbitrary<Rad> =>
  fc.integer({ min: Math.ceil(minDeg * 10), max: Math.floor(maxDeg * 10) }).map((n) => radians(n / 10));

/** A whole number of lines or layers. */
export const count = (max: number): fc.Arbitrary<number> => fc.integer({ min: 1, max });

/** Settings a nozzle could have: the layer no higher than the line is wide. */
export const lineSettings: fc.Arbitrary<LineSettings> = fc
  .record({ lineWidth: length(0.2, 1.2), share: fc.integer({ min: 10, max: 100 }), overlapped: fc.boolean() })
  .map(({ lineWidth, share, overlapped }) => ({
    lineWidth,
    layerHeight: (lineWidth * share) / 100,
    fitRule: overlapped ? 'overlapped' : 'nominal',
  }));

/** Sizes of a leaf that say nothing about its outline. */
const LEAF_SPARE = { inRow: 1, sideBySide: 1, taper: 1, centre: 0.5 };

/** A straight leaf that is not refused, with its thickness. */
export const leaf = fc
  .record({
    lines: count(12),
    line: length(0.2, 1),
    flexing: length(0.5, 200),
    fillet: length(0, 10),
    spare: length(0.001, 20),
  })
  .map(({ lines, line, flexing, fillet, spare }) => {
    const thickness = lines * line;
    const sizes = {
      lines,
      length: Math.max(flexing, thickness),
      depth: 6,
      fillet,
      pad: thickness + 2 * fillet + spare,
      ...LEAF_SPARE,
    };
    return { sizes, thickness };
  });

/** A crease that is not refused, with its thickness. */
export const creased = fc
  .record({
    layers: count(20),
    layer: length(0.04, 0.4),
    flexing: length(0.5, 50),
    fillet: length(0, 10),
    spare: length(0.001, 20),
  })
  .map(({ layers, layer, flexing, fillet, spare }) => {
    const thickness = layers * layer;
    const sizes = {
      layers,
      length: Math.max(flexing, thickness),
      depth: 20,
      fillet,
      pad: thickness + fillet + spare,
      inRow: 1,
      sideBySide: 1,
    };
    return { sizes, thickness };
  });
