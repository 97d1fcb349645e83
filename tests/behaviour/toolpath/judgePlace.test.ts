import { describe, expect, it } from 'vitest';
import { auditPlace } from '../../../src/core/inspect/toolpath/auditPlace.ts';
import type { JudgedPlace, LaidFindingKind } from '../../../src/core/inspect/toolpath/judgedPlace.ts';
import {
  jointMatching,
  judgePlace,
  wantedOfFile,
  wantedOfJoint,
} from '../../../src/core/inspect/toolpath/judgePlace.ts';
import { runsOf } from '../../../src/core/inspect/toolpath/layerRuns.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import { expectClose } from '../../support/close.ts';
import { changed, CREASE, LEAF } from '../../support/joints.ts';
import {
  creasePart,
  DIAMETER,
  leafPart,
  uprightPart,
  type LaidPart,
  type Leaf,
  type LeafLayer,
} from '../../support/laidParts.ts';
import { nearOf } from '../../support/toolpaths.ts';

function judged({ toolpath, place }: LaidPart, joint?: Joint): JudgedPlace {
  const audit = auditPlace(place, nearOf(toolpath), DIAMETER);
  return judgePlace(place, audit, joint ? wantedOfJoint(joint) : wantedOfFile(audit, place), joint);
}

const leaf = (layers: readonly LeafLayer[], more: Partial<Leaf> = {}) =>
  leafPart({ length: 12, thickness: 0.84, height: 0.2, layers, ...more });
const layers = (count: number, of: (layer: number) => Partial<LeafLayer> = () => ({})): readonly LeafLayer[] =>
  Array.from({ length: count }, (_, i) => ({ contours: [0.42], ...of(i + 1) }));

const kinds = ({ findings }: JudgedPlace) => findings.map(({ kind }) => kind);
const of = ({ findings }: JudgedPlace, kind: LaidFindingKind) => findings.find((finding) => finding.kind === kind);
const row = ({ rows }: JudgedPlace, what: string) => rows.find((one) => one.what === what);
const exact = { abs: 1e-9, because: 'round-off' } as const;

describe('a leaf that is laid as its joint wants', () => {
  const good = judged(leaf(layers(30)), LEAF);

  it('passes with nothing to change', () => {
    expect(good.grade).toBe('pass');
    expect(kinds(good)).toEqual(['as-thick', 'as-deep', 'whole', 'free-of-starts']);
    expect(of(good, 'whole')).toMatchObject({ layers: [[1, 30]], count: 30 });
    expect(good.changes).toEqual([]);
    expect(good.rows.every(({ grade }) => grade === 'pass')).toBe(true);
  });

  it('is assessed the same as laid', () => {
    const { before, after } = good.asLaid!;
    if (!before.ok || !after.ok) throw new Error('refused');
    expectClose(after.value.effort.effort, before.value.effort.effort, { rel: 1e-6, because: 'thickness to a micron' });
  });
});

describe('a leaf that is left out altogether', () => {
  it('has nothing as wanted', () => {
    const empty = judged(leaf(layers(6, () => ({ isDropped: true }))), LEAF);
    expect(empty.grade).toBe('fail');
    expect(of(empty, 'nothing-laid')).toMatchObject({ layers: [[1, 6]] });
    for (const what of ['lines', 'thickness', 'line-width', 'spread']) expect(row(empty, what)?.grade).toBe('fail');
    expect(row(empty, 'thickness')?.laid).toBe('none');
  });

  it('is to be drawn whole, or where it is drawn so already, to be gone round by contours', () => {
    const part = leaf(layers(6, () => ({ isDropped: true })));
    expect(judged(part, LEAF).changes[0]).toMatchObject({ kind: 'draw', count: 2 });
    const carried = { ...part, place: { ...part.place, from: 'carried' as const } };
    expect(judged(carried, LEAF).changes[0]).toEqual({ kind: 'contours', count: 1 });
  });
});

describe('what is amiss', () => {
  it('tells starts with their places and lines of the text', () => {
    const starting = layers(12, (layer) => (layer >= 5 && layer <= 8 ? { start: 4 + layer / 10 } : {}));
    const found = of(judged(leaf(starting), LEAF), 'starts-on-it');
    expect(found).toMatchObject({ grade: 'fail', layers: [[5, 8]], count: 4, places: 4 });
    expectClose(found!.at!.least, 4.5, exact);
    expectClose(found!.at!.most, 4.8, exact);
    expect(found!.textLines).toHaveLength(4);
  });

  it('tells a dropped neck', () => {
    const result = judged(leaf(layers(10, (layer) => ({ isDropped: layer === 4 || layer === 5 }))), LEAF);
    expect(of(result, 'nothing-laid')).toMatchObject({ grade: 'fail', layers: [[4, 5]], count: 2 });
    expect(of(result, 'too-few')).toBeUndefined();
    expect(of(result, 'whole')).toMatchObject({ layers: [[1, 3], [6, 10]] }); // prettier-ignore
  });

  it('tells a squeezed third line, where it is broken, and what the thickness does', () => {
    const result = judged(
      leaf(
        layers(10, (layer) => ({
          middle: layer === 3 ? [[0, 5, 0.16], [7, 12, 0.16]] : layer > 7 ? [] : [[0, 12, 0.16]], // prettier-ignore
        })),
        { thickness: 1 },
      ),
      LEAF,
    );
    expect(of(result, 'thin-line')).toMatchObject({ grade: 'caution', layers: [[1, 7]], broken: [[3, 3]] });
    expectClose(of(result, 'thin-line')!.widths!.most, 0.16, exact);
    expect(of(result, 'open-all-along')).toMatchObject({ layers: [[8, 10]] });
    expectClose(of(result, 'open-all-along')!.widths!.most, 0.16, exact);
    expect(of(result, 'open-places')).toBeUndefined();
    expect(of(result, 'stops-on-it')).toBeUndefined();
    expect(row(result, 'open')).toMatchObject({ layers: 4, laid: 4 });
    expect(of(result, 'thickness')!.widths!.most).toBeCloseTo(1, 9);
    const lay = result.changes.find(({ kind }) => kind === 'lay');
    if (lay?.kind !== 'lay') throw new Error('no other width told');
    expectClose(lay.lineWidth, 0.5, exact);
    // Effort of a leaf goes with the cube of its thickness (hand form), strain with the thickness but for the notch at its root.
    expectClose(lay.effort!, (1 / 0.84) ** 3, {
      rel: 0.03,
      because: 'a narrower and a wider leaf differ in how far they are plates',
    });
    const { before, after } = result.asLaid!;
    if (!before.ok || !after.ok) throw new Error('refused');
    expectClose(after.value.strain.nominal / before.value.strain.nominal, 1 / 0.84, {
      rel: 1e-9,
      because: 'ε = t·θ/2L',
    });
    expect(result.changes.map(({ kind }) => kind)).toEqual(['draw', 'lay', 'leave-gaps']);
  });

  it('tells too few and too many whole lines', () => {
    const four = layers(4, () => ({ contours: [0.42, 0.42] }));
    const many = judged(leaf(four, { thickness: 1.68 }), LEAF);
    expect(of(many, 'too-many')).toMatchObject({ layers: [[1, 4]], lines: { least: 4, most: 4 } });
    const few = judged(leaf(layers(4)), changed(LEAF, { sizes: { lines: 4 } }));
    expect(of(few, 'too-few')).toMatchObject({ grade: 'fail', layers: [[1, 4]], lines: { least: 2, most: 2 } });
  });

  it('tells uneven lines, and a wider first layer apart from them', () => {
    const result = judged(
      leaf(layers(10, (layer) => (layer === 1 ? { contours: [0.48] } : layer === 6 ? { contours: [0.36] } : {}))),
      LEAF,
    );
    expect(of(result, 'uneven')).toMatchObject({ layers: [[6, 6]] });
    expect(of(result, 'wider-first')).toMatchObject({ grade: 'caution', layers: [[1, 1]] });
    expectClose(of(result, 'wider-first')!.share!, 0.48 / 0.42 - 1, exact);
  });

  it('tells a line that ends inside, and travel that drags over it', () => {
    const result = judged(
      leaf(layers(6, (layer) => (layer === 2 ? { middle: [[-1, 5, 0.42]], crossings: [[8, 0]] } : {})), { thickness: 1.26 }), // prettier-ignore
      changed(LEAF, { sizes: { lines: 3 } }),
    );
    expect(of(result, 'stops-on-it')).toMatchObject({ grade: 'fail', layers: [[2, 2]], places: 1 });
    expectClose(of(result, 'stops-on-it')!.at!.least, 5, exact);
    expect(of(result, 'crossed')).toMatchObject({ layers: [[2, 2]], places: 1, lifted: 0 });
  });

  it('tells a depth that is not as wanted', () => {
    expect(of(judged(leaf(layers(20)), LEAF), 'depth')).toMatchObject({ grade: 'caution' });
    expectClose(of(judged(leaf(layers(20)), LEAF), 'depth')!.widths!.most, 4, exact);
  });
});

describe('held against the file itself', () => {
  it('takes what most layers have', () => {
    const mixed = layers(10, (layer) =>
      layer === 3 ? { isDropped: true } : layer === 4 ? { contours: [0.21, 0.21] } : {},
    );
    const result = judged(leaf(mixed));
    expect(result.wanted).toMatchObject({ from: 'file', count: 2, countOf: 'lines' });
    expectClose(result.wanted.each, 0.42, exact);
    expect(of(result, 'thickness')).toBeUndefined();
    expect(row(result, 'thickness')).not.toHaveProperty('wanted');
    expect(result.asLaid).toBeUndefined();
  });
});

describe('other ways to lie', () => {
  const web = { length: 6, depth: 40, padLayers: 8, height: 0.2, width: 0.42, spacing: 0.42, runs: 'over' } as const;

  it('counts layers through a crease', () => {
    const good = judged(creasePart({ ...web, webLayers: 2 }), CREASE);
    expect(good.grade).toBe('pass');
    expect(kinds(good)).toContain('as-thick');
    expect(of(good, 'as-deep')).toBeDefined();
    const thin = judged(creasePart({ ...web, webLayers: 1 }), CREASE);
    expect(of(thin, 'too-few')).toMatchObject({ grade: 'fail', lines: { least: 1, most: 1 } });
    expectClose(of(thin, 'thickness')!.widths!.most, 0.2, exact);
    const many = judged(creasePart({ ...web, webLayers: 3 }), CREASE);
    expect(of(many, 'too-many')).toMatchObject({ lines: { least: 3, most: 3 } });
  });

  it('tells lines that run along the fold, and gaps between lines', () => {
    const fold = judged(creasePart({ ...web, webLayers: 2, runs: 'along the fold' }), CREASE);
    expect(of(fold, 'runs-across')).toMatchObject({ layers: [[1, 2]], share: 0 });
    const gap = judged(creasePart({ ...web, webLayers: 2, without: [[2, 30]] }), CREASE);
    expect(of(gap, 'open-all-along')).toMatchObject({ layers: [[2, 2]] });
  });

  it('says of an upright leaf that bending pulls its layers apart', () => {
    const standing = judged(
      uprightPart({ depth: 6, contours: [0.42], thickness: 0.84, padLayers: 3, leafLayers: 5, height: 0.2 }),
      changed(LEAF, { profile: { lying: 'upright' } }),
    );
    expect(standing.grade).toBe('caution');
    expect(kinds(standing)).toContain('no-direction');
    expect(standing.changes).toContainEqual({ kind: 'turn' });
  });
});

describe('which joint it is', () => {
  const { place } = leaf(layers(4));

  it('takes the one that lies alike and is nearest in thickness and length', () => {
    const longer = changed(LEAF, { sizes: { length: 14 } });
    expect(jointMatching(place, [CREASE, longer, LEAF])).toBe(LEAF);
    expect(jointMatching(place, [CREASE, changed(LEAF, { sizes: { length: 20 } })])).toBeUndefined();
    expect(jointMatching(place, [changed(LEAF, { sizes: { lines: 4 } })])).toBeUndefined();
    expect(jointMatching(place, [])).toBeUndefined();
  });
});

describe('runs of layers', () => {
  it('puts neighbours together in any order', () => {
    expect(runsOf([14, 9, 10, 12, 11, 3, 13, 9])).toEqual([[3, 3], [9, 14]]); // prettier-ignore
    expect(runsOf([])).toEqual([]);
  });
});
