/**
 * The finder of toolpaths against parts whose thin sections are known (`thinTruth.ts`: made by a script of our own in another
 * language): cut into layers and laid in fine lines, each must be found where it is.
 */
import { describe, expect, it } from 'vitest';
import { boxOf } from '../../src/core/geometry/mesh/meshFigures.ts';
import type { Point3 } from '../../src/core/geometry/mesh/triangleMesh.ts';
import { mendPart } from '../../src/core/inspect/checkPart.ts';
import { findPlaces } from '../../src/core/inspect/toolpath/findPlaces.ts';
import { bandsOf, LayerPlans } from '../../src/core/inspect/toolpath/layerPlans.ts';
import { Paths } from '../../src/core/inspect/toolpath/paths.ts';
import type { Place } from '../../src/core/inspect/toolpath/place.ts';
import { stack } from '../../src/core/inspect/toolpath/slabs.ts';
import type { LayerFigures } from '../../src/core/inspect/toolpath/toolpathFigures.ts';
import { readMesh } from '../../src/files/mesh/readMesh.ts';
import { expectClose } from '../support/close.ts';
import { ownPart } from '../support/corpus.ts';
import { lay, type Slicing } from '../support/sliced.ts';
import { knownParts, lineAngle, type KnownNeck } from '../support/thinTruth.ts';

const SLICING: Slicing = { lineWidth: 0.2, layerHeight: 0.1, diameter: 1.75, contours: 1 };

function meshOf(name: string) {
  const read = readMesh(ownPart(name.replace(/^.*\//, '')), name);
  if (!read.ok) throw new Error(read.problems[0].message);
  return mendPart(read.value).mesh;
}

function placesIn(name: string, slicing: Slicing) {
  const mesh = meshOf(name);
  const layers = new Map<number, LayerFigures>();
  const count = new Paths(
    {
      path: ({ z, height, count: pieces }) => {
        const at = z[0]!;
        const known = layers.get(at);
        const zero = { x: 0, y: 0 };
        layers.set(at, {
          z: at,
          height,
          length: (known?.length ?? 0) + pieces,
          laid: 0,
          pieces: (known?.pieces ?? 0) + pieces,
          least: zero,
          greatest: zero,
        });
      },
    },
    slicing.diameter,
  );
  lay(mesh, slicing, count);
  count.end();
  const bands = bandsOf([...layers.values()].toSorted((a, b) => a.z - b.z));
  const plans = new LayerPlans(bands, slicing.diameter);
  const paths = new Paths(plans, slicing.diameter);
  lay(mesh, slicing, paths);
  paths.end();
  return findPlaces(stack(plans.end()), 3.4, slicing.layerHeight);
}

const distance = ({ x, y, z }: Point3, [a, b, c]: KnownNeck['centre_mm']) => Math.hypot(x - a, y - b, z - c);

/** Laid as it stands on the plate: its file may have it elsewhere. */
function lowest(name: string): number {
  return boxOf(meshOf(name)).min.z;
}

describe('thin sections of known parts, laid in lines', () => {
  const straight = knownParts().filter(([name]) => !name.includes('turned.stl'));

  it.each(straight)('%s: all found, none invented', (name, { necks }) => {
    const { places, isCut } = placesIn(name, SLICING);
    expect(isCut).toBe(false);
    expect(places.length).toBe(necks.length);
    const floor = lowest(name);
    const left = [...places];
    for (const neck of necks) {
      const [x, y, z] = neck.centre_mm;
      const off = (place: Place) => distance(place.flexure!.centre, [x, y, z - floor]);
      const nearest = left.reduce((best, one) => (off(one) < off(best) ? one : best));
      left.splice(left.indexOf(nearest), 1);
      const { thickness, length, depth, along, across } = nearest.flexure!;
      expectClose(off(nearest), 0, {
        abs: 0.28,
        because: 'half of what the length may be off, which may be at one end',
      });
      expectClose(thickness.least, neck.thickness_mm, { rel: 0.01, because: 'outlines are kept to 6 µm at each side' });
      expectClose(depth, neck.width_mm, { abs: 0.1, because: 'a layer is 0.1 high' });
      expectClose(length, neck.length_between_pads_mm, {
        abs: 0.55,
        because: 'round brushes take the corners where fillets meet pads; a fillet in steps of layers is longer by two',
      });
      expectClose(lineAngle(along, neck.flex_direction), 0, { abs: 0.01, because: 'outlines are kept to 6 µm' });
      expectClose(lineAngle(across, neck.thickness_direction), 0, { abs: 0.01, because: 'outlines are kept to 6 µm' });
    }
  });

  it('one that stands aslant, in steps, is found in pieces: its steps are half as wide as it is thick', () => {
    const [, { necks }] = knownParts().find(([name]) => name.includes('turned.stl'))!;
    const { places } = placesIn('syn-leaf-084x6-turned.stl', SLICING);
    expect(necks.length).toBe(1);
    expect(places.length).toBeGreaterThan(0);
    for (const { flexure } of places) {
      expect(flexure!.thickness.least).toBeGreaterThan(0.6);
      expect(flexure!.thickness.least).toBeLessThan(0.9);
    }
  });
});
