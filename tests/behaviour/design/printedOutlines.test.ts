import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import { printedOutlines } from '../../../src/core/design/printedOutlines.ts';
import { printedLine } from '../../../src/core/beam/printedLine.ts';
import { FAMILIES } from '../../../src/core/flexures/index.ts';
import { mechanicsOf } from '../../../src/core/flexures/networks.ts';
import { bounds, pathArea } from '../../../src/core/geometry/flatten.ts';
import { newJoint } from '../../../src/store/newJoint.ts';
import { expectClose } from '../../support/close.ts';

/** A joint of typical sizes, with the network behind its outline. */
function drawn(id: string, sizes: Readonly<Record<string, number>> = {}) {
  const family = FAMILIES.find((one) => one.id === id);
  if (!family) throw new Error(`no family ${id}`);
  const typical = newJoint(family, id);
  const result = assess({ ...typical, sizes: { ...typical.sizes, ...sizes } });
  if (!result.ok) throw new Error(`${id} is refused`);
  const a = result.value;
  const { drive, amount } = a.joint.movement;
  const network = mechanicsOf(id).network(a.sizes, a.section.thickness, { drive, amount, widthRatio: 1 });
  return { a, network, planes: printedOutlines(a) };
}

/** Area of what bends in a plane: middle line times thickness, by trapezoids. */
function bandArea({ model }: ReturnType<typeof drawn>['network'], plane: number): number {
  const places = new Map(model.nodes.map((node) => [node.id, node] as const));
  const members = model.members.filter((member) => (member.plane ?? 0) === plane);
  return members.reduce((sum, member) => {
    const [from, to] = [places.get(member.from), places.get(member.to)];
    if (!from || !to) throw new Error(`${member.id} hangs on no node`);
    const { x, y, thickness } = printedLine(member, from, to, 1e-5);
    const pieces = Array.from(x)
      .slice(1)
      .map((_, i) => {
        const length = Math.hypot((x[i + 1] ?? 0) - (x[i] ?? 0), (y[i + 1] ?? 0) - (y[i] ?? 0));
        return (length * ((thickness[i] ?? 0) + (thickness[i + 1] ?? 0))) / 2;
      });
    return sum + pieces.reduce((all, piece) => all + piece, 0);
  }, 0);
}

const areaOf = (paths: Parameters<typeof bounds>[0]) => paths.reduce((sum, path) => sum + pathArea(path), 0);

/** Kinds whose pads carry the roots of their members, so that pads and members meet and do not overlap. */
const APART = ['neck', 'crossedLeaves', 'parallelLeaves', 'foldedLeaf', 'snapArch', 'toggle', 'cellPanel'];

describe('the printed outline', () => {
  it.each(APART)('of %s covers its pads and its members once, and nothing else', (id) => {
    const { network, planes } = drawn(id);
    for (const { plane, paths } of planes) {
      const pads = network.bodies.filter((body) => (body.plane ?? 0) === plane).flatMap(({ outlines }) => outlines);
      expectClose(areaOf(paths), areaOf(pads) + bandArea(network, plane), {
        rel: 2e-3,
        because: 'arcs are chords within 0.005 mm, and small overlaps are laid at the roots',
      });
    }
  });

  it('of a spiral has fillets where its arms grow out of hub and ring, and one gap for each arm', () => {
    const { network, planes } = drawn('spiral');
    const [{ paths } = { paths: [] }] = planes;
    expect(paths).toHaveLength(4);
    const pads = network.bodies.flatMap(({ outlines }) => outlines);
    expect(areaOf(paths)).toBeGreaterThan(areaOf(pads) + bandArea(network, 0));
  });

  it('of crossed leaves is one a plane, and one in all where they are grown together', () => {
    expect(drawn('crossedLeaves').planes.map(({ plane, paths }) => [plane, paths.length])).toEqual([
      [0, 1],
      [1, 1],
    ]);
    const fused = drawn('crossedLeaves', { fused: 1 }).planes;
    expect(fused.map(({ plane }) => plane)).toEqual([0]);
    // Both leaves close a window with each pad.
    expect(fused[0]?.paths).toHaveLength(3);
  });

  it('of two leaves between pads reaches from the lower face of one to the upper face of the other', () => {
    const { a, planes } = drawn('parallelLeaves');
    const { length = 0, pad = 0, fillet = 0 } = a.sizes;
    const { bottom, top } = bounds(planes[0]?.paths ?? []);
    expectClose(top - bottom, length + 2 * (fillet + pad), { abs: 1e-4, because: 'places are kept to 1e-5 mm' });
  });

  it('is that of the family where it draws its own', () => {
    const { a, planes } = drawn('straightLeaf');
    const own = FAMILIES.find(({ id }) => id === 'straightLeaf')?.outline?.(a.sizes, a.section.thickness);
    expect(planes).toEqual([{ plane: 0, paths: own }]);
  });

  it('of a sheet with slits is its plan from above', () => {
    const { a, planes } = drawn('slitPanel');
    const plan = FAMILIES.find(({ id }) => id === 'slitPanel')?.plan?.(a.sizes);
    expect(planes).toEqual([{ plane: 0, paths: plan }]);
  });
});
