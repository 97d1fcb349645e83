import { describe, expect, it } from 'vitest';
import type { Loop } from '../../../src/core/geometry/loop.ts';
import { checkPart, mendPart } from '../../../src/core/inspect/checkPart.ts';
import { carriedPlaces, type PartToCarry } from '../../../src/core/inspect/toolpath/carriedPlaces.ts';
import type { LayerPlan } from '../../../src/core/inspect/toolpath/checkedToolpath.ts';
import { checkBox, drawnPlace, type DrawnBox } from '../../../src/core/inspect/toolpath/drawnPlace.ts';
import { stack } from '../../../src/core/inspect/toolpath/slabs.ts';
import { radians } from '../../../src/core/units.ts';
import { readMesh } from '../../../src/files/mesh/readMesh.ts';
import { expectClose } from '../../support/close.ts';
import { ownPart } from '../../support/corpus.ts';
import { sliceOutlines } from '../../support/sliced.ts';
import { rectangle } from '../../support/solids.ts';

const LEAVES = 'syn-leaves-042-084-126.stl';
const CREASE = 'syn-web-flat-040.stl';

function part(name: string): PartToCarry & { readonly plans: readonly LayerPlan[] } {
  const read = readMesh(ownPart(name), name);
  if (!read.ok) throw new Error(read.problems[0].message);
  const mended = mendPart(read.value);
  const { findings, facts } = checkPart(mended, 3.4);
  const layers = sliceOutlines(mended.mesh, 0.1).map(({ z, outlines }) => ({ bottom: z - 0.1, top: z, outlines }));
  const plans = stack(layers).map(({ bottom, top, outlines }) => ({ z: top, bottom, outlines }));
  return { findings, box: facts.box, stands: { scale: 1, up: '+z' }, plans };
}

/** Turned by quarter turns and moved, as it may be put on a plate. */
function put(plans: readonly LayerPlan[], quarters: number, dx: number, dy: number): readonly LayerPlan[] {
  const turn = ({ x, y }: { x: number; y: number }) => {
    let at = { x, y };
    for (let i = 0; i < quarters; i += 1) at = { x: -at.y, y: at.x };
    return { x: at.x + dx, y: at.y + dy };
  };
  return plans.map((plan) => ({ ...plan, outlines: plan.outlines.map((loop) => loop.map(turn)) }));
}

/** A loop that lies on the plate round the part. */
const skirt: Loop = rectangle(-200, -200, 400, 400);

describe('thin sections carried over from a part', () => {
  it.each([0, 1, 2, 3])('come to where they are laid, turned by %i quarters', (quarters) => {
    const leaves = part(LEAVES);
    const plans = put(leaves.plans, quarters, 110, 95);
    const places = carriedPlaces(leaves, plans);
    expect(places.map(({ number }) => number)).toEqual([1, 2, 3]);
    for (const [i, { run, from, thickness, bottom, top }] of places.entries()) {
      const flexure = leaves.findings.flexures[i]!;
      expect(from).toBe('carried');
      const known = put([{ z: 0, bottom: 0, outlines: [[flexure.centre]] }], quarters, 110, 95)[0]!.outlines[0]![0]!;
      const middle = { x: (run[0]!.x + run.at(-1)!.x) / 2, y: (run[0]!.y + run.at(-1)!.y) / 2 };
      expectClose(Math.hypot(middle.x - known.x, middle.y - known.y), 0, {
        abs: 0.03,
        because: 'the finder tells a centre to 0.002 mm and ends of a run to some tens of microns',
      });
      expect(thickness).toBe(flexure.thickness.least);
      expectClose(top - bottom, flexure.depth, { rel: 1e-9, because: 'rounding' });
    }
  });

  it('are found past a skirt on the plate', () => {
    const leaves = part(LEAVES);
    const [first, ...rest] = leaves.plans;
    const withSkirt = [
      {
        z: 0.1,
        bottom: 0,
        outlines: [...first!.outlines, skirt, skirt.map(({ x, y }) => ({ x: 0.99 * x, y: 0.99 * y })).toReversed()],
      },
      { ...first!, bottom: 0.1 },
      ...rest,
    ];
    expect(carriedPlaces(leaves, withSkirt).length).toBe(3);
  });

  it('go along with the scale and with what is turned up', () => {
    const crease = part(CREASE);
    const scale = 1.5;
    const plans = crease.plans.map(({ z, bottom, outlines }) => ({
      z: scale * z,
      bottom: scale * bottom,
      outlines: outlines.map((loop) => loop.map(({ x, y }) => ({ x: scale * x, y: scale * y }))),
    }));
    const [place, ...more] = carriedPlaces({ ...crease, stands: { scale, up: '+z' } }, plans);
    expect(more).toEqual([]);
    expect(place?.lying).toBe('crease');
    expect(place!.flexure!.roots[0].fillet).toBe(scale * crease.findings.flexures[0]!.roots[0].fillet);
    expectClose(place!.thickness, 0.6, { abs: 0.01, because: 'the finder keeps thickness to a percent' });
    expect(carriedPlaces({ ...crease, stands: { scale: 1, up: '+z' } }, plans)).toEqual([]);
    expect(carriedPlaces({ ...crease, stands: { scale, up: '+x' } }, plans)).toEqual([]);
  });

  it('of another part of the same size are not carried over', () => {
    const leaves = part(LEAVES);
    const { min, max } = leaves.box;
    const block = [rectangle(min.x, min.y, max.x - min.x, max.y - min.y)];
    expect(carriedPlaces(leaves, [{ z: max.z - min.z, bottom: 0, outlines: block }])).toEqual([]);
    expect(carriedPlaces(leaves, [])).toEqual([]);
  });
});

describe('a box that is drawn', () => {
  const BOX: DrawnBox = { x: 10, y: 20, angle: radians(90), length: 6, thickness: 0.84, bottom: 0.2, top: 4 };

  it('is a place that bends in the plane of the plate', () => {
    const drawn = drawnPlace(BOX, 4);
    if (!drawn.ok) throw new Error(drawn.problems[0].message);
    const { run, ...rest } = drawn.value;
    expect(rest).toEqual({
      number: 4,
      from: 'drawn',
      lying: 'flat',
      thickness: 0.84,
      reach: 0.84,
      bottom: 0.2,
      top: 4,
    });
    expectClose(run[0]!.y, 17, { abs: 1e-12, because: 'rounding' });
    expectClose(run[1]!.y, 23, { abs: 1e-12, because: 'rounding' });
    expectClose(run[1]!.x, 10, { abs: 1e-12, because: 'rounding' });
  });

  it.each([
    [{ length: 0 }, 'box.length', 'below-minimum'],
    [{ thickness: 30 }, 'box.thickness', 'above-maximum'],
    [{ x: Number.NaN }, 'box.x', 'not-a-number'],
    [{ angle: 7 }, 'box.angle', 'above-maximum'],
    [{ bottom: -1 }, 'box.bottom', 'below-minimum'],
    [{ top: 0.2 }, 'box.top', 'below-minimum'],
  ] as const)('is refused with %o', (change, field, code) => {
    const problems = checkBox({ ...BOX, ...change });
    expect(problems.map((problem) => [problem.field, problem.code])).toEqual([[field, code]]);
    expect(problems[0]!.message).not.toMatch(/undefined|\.$/);
  });
});
