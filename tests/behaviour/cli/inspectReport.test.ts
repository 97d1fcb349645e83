/** What the terminal tells of our own parts, against what is known of how they were made. */
import { describe, expect, it } from 'vitest';
import { inspectReport } from '../../../src/cli/inspectReport.ts';
import { checkPart, mendPart } from '../../../src/core/inspect/checkPart.ts';
import type { PrintedAs } from '../../../src/core/inspect/judged.ts';
import { expectClose } from '../../support/close.ts';
import { ownPart, ownTruth } from '../../support/corpus.ts';
import { AS_DROPPED } from '../../support/flexures.ts';
import { readPart } from '../../support/readPart.ts';
import { kindKnownAs, knownParts, type KnownNeck } from '../../support/thinTruth.ts';

const LINE = AS_DROPPED.profile.lineWidth;
const LAYER = AS_DROPPED.profile.layerHeight;
const CHORDS = 'walls of curved leaves are chords, and turned parts are kept in single precision';

function reportOf(name: string, as: PrintedAs = AS_DROPPED, thickest = 6 * as.profile.lineWidth) {
  return inspectReport(checkPart(mendPart(readPart(ownPart(name), name)), thickest), as);
}

/** What a plane square to z cuts across a thin section, worked out from how the part was made. */
function acrossOf({ thickness_mm: t, thickness_direction: [, , z] }: KnownNeck): number {
  return t / Math.sqrt(1 - z * z);
}

const isLaidInLines = (neck: KnownNeck) => kindKnownAs(neck) !== 'crease';

/** Each value of a document with the way to it. */
function* valuesIn(value: unknown, way: readonly string[] = []): Generator<readonly [readonly string[], unknown]> {
  if (typeof value !== 'object' || value === null) yield [way, value];
  else for (const [key, inner] of Object.entries(value)) yield* valuesIn(inner, [...way, key]);
}

/** Numbers without a unit: counts, numbers of things, directions of length 1 and ratios. */
const BARE =
  /^(triangles|bodies|number|count|mended|pads|layers|layer_to_look_at|layers_through|lines_across|suggested_scale|axis|(thickness_)?direction)$/;

describe.each(knownParts())('the report of %s', (name, { necks, file_unit }) => {
  const report = reportOf(name);

  it('has keys in snake case, a unit in each that needs one, and finite numbers', () => {
    const values = [...valuesIn(report)];
    expect(values.length).toBeGreaterThan(10);
    for (const [way, value] of values) {
      const keys = way.filter((key) => !/^\d+$/.test(key));
      for (const key of keys) expect(key).toMatch(/^[a-z]+(_[a-z0-9]+)*$/);
      if (typeof value !== 'number') continue;
      expect(Number.isFinite(value), way.join('.')).toBe(true);
      const isUnitTold = keys.some((key) => /_(mm|mm2|mm3|deg)$/.test(key));
      expect(isUnitTold || BARE.test(keys.at(-1)!), way.join('.')).toBe(true);
    }
  });

  it('tells size, area, volume and unit of the whole part', () => {
    const { measured } = ownTruth().files[name]!;
    const isInch = file_unit === 'inch' && report.format !== '3MF';
    const mm = isInch ? 25.4 : 1;
    // The truth of a damaged file is that of the file, holes and doubles in it.
    const isDamaged = report.damage.length > 0;
    const because = 'printed to a tenth of a micron, from files in single precision';
    for (const [k, of] of (['min', 'max'] as const).entries()) {
      const known = (k === 0 ? measured.bbox_min : measured.bbox_max)!;
      report.box_mm[of].forEach((value, i) => expectClose(value, known[i]! * mm, { abs: 2e-3, because }));
    }
    if (!isDamaged) {
      expect(report.triangles).toBe(measured.triangles);
      expectClose(report.area_mm2, measured.area! * mm ** 2, { rel: 1e-5, because });
      expectClose(report.volume_mm3, Math.abs(measured.signed_volume!) * mm ** 3, { rel: 1e-5, because });
    }
    expect(report.unit.read_as).toBe(file_unit === 'inch' ? 'inch' : 'millimetre');
    expect(report.unit.by).toBe(report.format === '3MF' ? 'stated' : 'sized');
  });

  it('counts lines or layers as a hand does', () => {
    expect(report.flexures.length).toBe(necks.length);
    for (const [i, flexure] of report.flexures.entries()) {
      expect(flexure.number).toBe(i + 1);
      const [x = 0, y = 0, z = 0] = flexure.centre_mm;
      const away = ({ centre_mm: [a, b, c] }: KnownNeck) => Math.hypot(x - a, y - b, z - c);
      const neck = necks.toSorted((a, b) => away(a) - away(b))[0]!;
      const inLines = isLaidInLines(neck);
      const counted = 'lines_across' in flexure ? flexure.lines_across : flexure.layers_through;
      expect('lines_across' in flexure).toBe(inLines);
      const known = inLines ? acrossOf(neck) / LINE : neck.thickness_mm / LAYER;
      expectClose(counted, known, { rel: 1e-3, because: CHORDS });
    }
  });

  it('names the layer half-way up, and those from bottom to top', () => {
    for (const { centre_mm: at, layer_to_look_at: layer, layers } of report.flexures) {
      const height = at[2]! - report.box_mm.min[2]!;
      expect(Math.abs(layer - height / LAYER)).toBeLessThanOrEqual(1);
      expect(layers[0]).toBeLessThanOrEqual(layer);
      expect(layers[1]).toBeGreaterThanOrEqual(layer);
      expect(layers[1]).toBeLessThanOrEqual(Math.ceil((report.box_mm.max[2]! - report.box_mm.min[2]!) / LAYER));
    }
  });

  it('suggests the least scale at which all are an even count of lines, or whole layers', () => {
    const { suggested_scale: scale } = report;
    if (necks.length === 0) {
      expect(scale).toBeNull();
      return;
    }
    // All our parts have one thickness but for the leaves of 1 : 2 : 3, whose first needs two lines.
    const thinnest = necks.toSorted((a, b) => a.thickness_mm - b.thickness_mm)[0]!;
    const t = isLaidInLines(thinnest) ? acrossOf(thinnest) / (2 * LINE) : thinnest.thickness_mm / LAYER;
    expectClose(scale!, Math.ceil(t - 1e-9) / t, { rel: 1e-3, because: CHORDS });
  });
});

describe('the report of the leaf of 0.84 mm', () => {
  it('says one and a half lines of 0.56 mm, squeezed, and scales to two lines by 4/3', () => {
    const report = reportOf('syn-leaf-084x6.stl');
    expectClose(report.suggested_scale!, 4 / 3, { printedTo: 4 });
    expect(report).toMatchObject({ format: 'STL, binary', bodies: 1, pads: 2, damage: [], notes: [], passed_over: [] });
    expect(report.flexures).toMatchObject([
      {
        kind: 'leaf',
        form: 'straight',
        thickness_least_mm: 0.84,
        depth_mm: 8,
        lying: 'flat',
        lines_across: 1.5,
        lands: 'squeezed',
        layer_to_look_at: 20,
        layers: [1, 40],
        is_one_of_several_ways: false,
        roots: [
          { root: 'fillet', joins: 'pad 1' },
          { root: 'fillet', joins: 'pad 2' },
        ],
      },
    ]);
  });

  it('says two whole lines of 0.42 mm and leaves the scale', () => {
    const as = { ...AS_DROPPED, profile: { ...AS_DROPPED.profile, lineWidth: 0.42 } };
    const report = reportOf('syn-leaf-084x6.stl', as);
    expect(report.flexures).toMatchObject([{ lines_across: 2, lands: 'whole' }]);
    expect(report.suggested_scale).toBe(1);
  });

  it('leaves out what is thicker than asked, and tells of it where it shows beside others', () => {
    const alone = reportOf('syn-leaf-084x6.stl', AS_DROPPED, 0.8);
    expect(alone.flexures).toEqual([]);
    expect(alone.suggested_scale).toBeNull();
    const leaves = reportOf('syn-leaves-042-084-126.stl', AS_DROPPED, 0.9);
    expect(leaves.flexures).toMatchObject([{ thickness_least_mm: 0.42 }, { thickness_least_mm: 0.84 }]);
    expect(leaves.passed_over).toMatchObject([{ why: 'too-thick', thickness_mm: 1.26 }]);
  });
});

describe('the report of damaged files', () => {
  it.each([
    ['syn-dmg-leaf-12-flipped.stl', [{ kind: 'flipped', count: 12, mended: 12 }]],
    ['syn-dmg-leaf-3-missing.stl', [{ kind: 'open-edges', count: 9, mended: 9 }]],
    [
      'syn-dmg-leaf-duplicates.stl',
      [
        { kind: 'crowded-edges', count: 22, mended: 22 },
        { kind: 'duplicate', count: 10, mended: 10 },
      ],
    ],
  ])('tells what was mended in %s', (name, damage) => {
    expect(reportOf(name).damage).toMatchObject(damage);
  });
});
