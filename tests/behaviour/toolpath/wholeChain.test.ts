/** From the text of a toolpath whose beads are all known to what is told of its thin section. */
import { describe, expect, it } from 'vitest';
import type { JudgedPlace, LaidFinding, LaidFindingKind } from '../../../src/core/inspect/toolpath/judgedPlace.ts';
import { checkText, judgeFound } from '../../support/checkedToolpaths.ts';
import { expectClose } from '../../support/close.ts';
import {
  creasePart,
  leafPart,
  uprightPart,
  type LaidPart,
  type Leaf,
  type LeafLayer,
} from '../../support/laidParts.ts';
import { carried, gcodeOf, turned, type Toolpath, type Writing } from '../../support/toolpaths.ts';

const LENGTH = 12;
const layers = (count: number, of: (layer: number) => Partial<LeafLayer> = () => ({})): readonly LeafLayer[] =>
  Array.from({ length: count }, (_, i) => ({ contours: [0.42], ...of(i + 1) }));
const leaf = (of: readonly LeafLayer[], more: Partial<Leaf> = {}): LaidPart =>
  leafPart({ length: LENGTH, thickness: 0.84, height: 0.2, layers: of, ...more });

/** Away from the middle of the plate, turned, as parts lie. */
const ON_PLATE = turned(0.35, 104, 91);

async function found(part: LaidPart | Toolpath, writing: Writing = {}): Promise<JudgedPlace> {
  const toolpath = carried('toolpath' in part ? part.toolpath : part, ON_PLATE);
  const all = judgeFound(await checkText(gcodeOf(toolpath, writing)));
  expect(all.length).toBe(1);
  return all[0]!;
}

const finding = ({ findings }: JudgedPlace, kind: LaidFindingKind): LaidFinding => {
  const one = findings.find((each) => each.kind === kind);
  if (!one) throw new Error(`no ${kind} among ${findings.map((each) => each.kind).join(', ')}`);
  return one;
};

const ONE_PERCENT = { rel: 0.01, because: 'what is asked of widths' } as const;
/** Pads begin where the material is twice as thick: of a sharp root that is the root, to what a round brush takes. */
const ALONG = { abs: 0.3, because: 'a round brush of 0.42 mm rounds the corner where the pad begins' } as const;

describe('a leaf in a toolpath', () => {
  it('is found where it lies, as long, thick and deep as it is laid', async () => {
    const { place, audit } = await found(leaf(layers(20)));
    expect(place.lying).toBe('flat');
    const [a, b] = [place.run[0]!, place.run.at(-1)!];
    const middle = ON_PLATE({ x: LENGTH / 2, y: 0 });
    expectClose((a.x + b.x) / 2, middle.x, ALONG);
    expectClose((a.y + b.y) / 2, middle.y, ALONG);
    expectClose(audit.length, LENGTH, { abs: 0.6, because: 'both ends, each as above' });
    expectClose(place.thickness, 0.84, { abs: 0.02, because: 'outlines are kept to 8 µm at each side' });
    expectClose(place.top - place.bottom, 4, { abs: 1e-6, because: 'heights are told to a micron' });
    expect(audit.layers.length).toBe(20);
  });

  it('has the lines that are laid, each as wide as it is laid', async () => {
    for (const [contours, count] of [
      [[0.42], 2],
      [[0.5], 2],
      [[0.42, 0.42], 4],
      [[0.45, 0.4], 4],
    ] as const) {
      const thickness = 2 * contours.reduce<number>((sum, width) => sum + width, 0);
      const { audit } = await found(
        leaf(
          layers(20, () => ({ contours })),
          { thickness },
        ),
      );
      for (const { lines, widths } of audit.layers) {
        expect([lines.least, lines.most]).toEqual([count, count]);
        expectClose(widths!.least, Math.min(...contours), ONE_PERCENT);
        expectClose(widths!.most, Math.max(...contours), ONE_PERCENT);
      }
    }
  });

  it('whose first layer is wider says so of it alone', async () => {
    const first = layers(10, (layer) => (layer === 1 ? { contours: [0.4704] } : {}));
    const wider = finding(await found(leaf(first)), 'wider-first');
    expect(wider.layers).toEqual([[1, 1]]);
    expectClose(wider.share!, 0.12, { abs: 0.012, because: 'a percent of either width' });
  });

  it('on which contours start tells in which layers and where', async () => {
    const starting = layers(16, (layer) => (layer >= 5 && layer <= 10 ? { start: 3 + 0.25 * layer } : {}));
    const judged = await found(leaf(starting));
    const starts = finding(judged, 'starts-on-it');
    expect(starts).toMatchObject({ grade: 'fail', layers: [[5, 10]], places: 6 });
    const at = judged.audit.layers.flatMap(({ starts: each }) => each.map(({ point }) => point));
    for (const [i, point] of at.entries()) {
      const known = ON_PLATE({ x: 3 + 0.25 * (5 + i), y: 0.21 });
      expectClose(Math.hypot(point.x - known.x, point.y - known.y), 0, { abs: 1e-5, because: 'six printed places' });
    }
  });

  it('with half a line squeezed in tells its widths, and where it is broken', async () => {
    const squeezed = layers(12, (layer) =>
      layer % 2 === 0
        ? {
            middle: [
              [-0.6, 6, 0.21],
              [6, 12.6, 0.14],
            ],
          }
        : {
            middle: [
              [-0.6, 5, 0.21],
              [7, 12.6, 0.21],
            ],
          },
    );
    const judged = await found(leaf(squeezed, { thickness: 1.05 }));
    const thin = finding(judged, 'thin-line');
    expect(thin.count).toBe(12);
    expectClose(thin.widths!.least, 0.14, ONE_PERCENT);
    expectClose(thin.widths!.most, 0.21, ONE_PERCENT);
    expect(thin.broken!.map(([from]) => from)).toEqual([1, 3, 5, 7, 9, 11]);
  });

  it('with a gap all along tells how wide it is', async () => {
    const judged = await found(leaf(layers(10), { thickness: 1 }));
    const open = finding(judged, 'open-all-along');
    expect(open.layers).toEqual([[1, 10]]);
    expectClose(open.widths!.most, 0.16, { abs: 0.004, because: 'a percent of the widths at both sides' });
  });

  it('that is dropped in some layers tells in which', async () => {
    const dropped = layers(20, (layer) => ({ isDropped: layer >= 8 && layer <= 10 }));
    const all = judgeFound(await checkText(gcodeOf(carried(leaf(dropped).toolpath, ON_PLATE))));
    // What is left is two leaves, one over the other.
    expect(all.length).toBeGreaterThan(0);
    const tops = all.map(({ place }) => place.top);
    expect(Math.max(...tops)).toBeCloseTo(4, 6);
    expect(all.some(({ findings }) => findings.some(({ kind }) => kind === 'nothing-laid')) || all.length === 2).toBe(
      true,
    );
  });

  it('that travel crosses tells in which layers', async () => {
    const crossed = layers(10, (layer) => (layer === 4 ? { crossings: [[5, 0]] } : {}));
    const plain = await found(leaf(layers(10)));
    const judged = await found(leaf(crossed));
    const more = judged.audit.layers.map(({ crossings }, i) => crossings - plain.audit.layers[i]!.crossings);
    expect(more).toEqual([0, 0, 0, 1, 0, 0, 0, 0, 0, 0]);
  });
});

describe('other ways to lie', () => {
  it('a leaf that stands is found and cut in each of its layers', async () => {
    const upright = uprightPart({
      depth: 8,
      contours: [0.42],
      thickness: 0.84,
      padLayers: 8,
      leafLayers: 30,
      height: 0.2,
    });
    const { place, audit } = await found(upright);
    expect(place.lying).toBe('upright');
    expectClose(place.top - place.bottom, 6, { abs: 0.41, because: 'a layer at either end' });
    for (const { lines, widths } of audit.layers) {
      expect(lines.usual).toBe(2);
      expectClose(widths!.mean, 0.42, ONE_PERCENT);
    }
  });

  it('a crease is found by the layers that make it', async () => {
    const crease = creasePart({
      length: 2,
      depth: 20,
      webLayers: 2,
      padLayers: 15,
      height: 0.2,
      width: 0.42,
      spacing: 0.377,
      runs: 'over',
    });
    const { place, audit } = await found(crease);
    expect(place.lying).toBe('crease');
    expect(audit.layers.length).toBe(2);
    expectClose(place.thickness, 0.4, { abs: 1e-6, because: 'two layers of 0.2' });
  });
});
