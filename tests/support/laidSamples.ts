/** Parts of known beads, audited and judged, for whatever shows them. */
import { auditPlace } from '../../src/core/inspect/toolpath/auditPlace.ts';
import type { PlaceNear } from '../../src/core/inspect/toolpath/checkedToolpath.ts';
import type { JudgedPlace } from '../../src/core/inspect/toolpath/judgedPlace.ts';
import { judgePlace, wantedOfFile } from '../../src/core/inspect/toolpath/judgePlace.ts';
import { creasePart, leafPart, uprightPart, type LaidPart, type LeafLayer } from './laidParts.ts';
import { carried, nearOf, rolled, split, turned } from './toolpaths.ts';

export interface LaidSample {
  readonly placed: PlaceNear;
  readonly judged: JudgedPlace;
  readonly diameter: number;
}

export function sampleOf({ toolpath, place }: LaidPart): LaidSample {
  const near = nearOf(toolpath);
  const audit = auditPlace(place, near, toolpath.diameter);
  const judged = judgePlace(place, audit, wantedOfFile(audit, place));
  return { placed: { place, near }, judged, diameter: toolpath.diameter };
}

/** Faults by the number of the layer, over and over. */
const LAYERS: readonly LeafLayer[] = [
  { contours: [0.42] },
  { contours: [0.42], middle: [[0, 12, 0.16]] },
  {
    contours: [0.42],
    start: 5,
    middle: [
      [0, 4, 0.2],
      [5, 8, 0.12],
      [8.5, 12, 0.18],
    ],
  },
  { contours: [0.42], isDropped: true },
];

function leaf(count: number, thickness = 1, height = 0.2): LaidPart {
  const layers = Array.from({ length: count }, (_, i) => LAYERS[i % LAYERS.length]!);
  return leafPart({ length: 12, thickness, layers, height });
}

function elsewhere({ toolpath, place }: LaidPart, to: ReturnType<typeof turned>): LaidPart {
  return { toolpath: carried(split(toolpath, 0.2), to), place: { ...place, run: place.run.map(to) } };
}

function curved(): LaidPart {
  const { toolpath, place } = leaf(8);
  const run = Array.from({ length: 49 }, (_, i) => ({ x: i / 4, y: 0 }));
  return elsewhere({ toolpath, place: { ...place, run } }, rolled(9));
}

/** One of every sort of section, with what can go wrong in it. */
export const LAID_SAMPLES: Readonly<Record<string, () => LaidSample>> = {
  'a leaf with a third line, starts and a layer left out': () => sampleOf(leaf(30)),
  'the same turned and elsewhere on the plate': () => sampleOf(elsewhere(leaf(8), turned(2.4, 120, 80))),
  'a curved leaf': () => sampleOf(curved()),
  'a leaf of four lines': () =>
    sampleOf(
      leafPart({
        length: 30,
        thickness: 1.68,
        layers: Array.from({ length: 12 }, () => ({ contours: [0.42, 0.42] })),
        height: 0.2,
      }),
    ),
  'a neck': () =>
    sampleOf(leafPart({ length: 1.2, thickness: 0.84, layers: LAYERS.map(() => ({ contours: [0.42] })), height: 0.3 })),
  'very many layers': () => sampleOf(leaf(400, 1, 0.12)),
  'an upright leaf': () =>
    sampleOf(uprightPart({ depth: 6, contours: [0.42], thickness: 0.84, padLayers: 4, leafLayers: 20, height: 0.2 })),
  'a crease': () =>
    sampleOf(
      creasePart({
        length: 1.5,
        depth: 10,
        webLayers: 2,
        padLayers: 6,
        height: 0.2,
        width: 0.42,
        spacing: 0.42,
        runs: 'over',
        without: [[2, 5]],
      }),
    ),
};

export const laidLeaf = (count: number, height?: number): LaidSample => sampleOf(leaf(count, 1, height));
