/** What every network of a flexure must keep to, whatever its sizes. */
import { checkModel } from '../../src/core/beam/checkModel.ts';
import type { FlexureFamily, Sizes } from '../../src/core/flexures/family.ts';
import type { Dimension, FlexureNetwork, Mechanics } from '../../src/core/flexures/network.ts';
import { flatten, pathArea } from '../../src/core/geometry/flatten.ts';
import type { Path, Point } from '../../src/core/geometry/outline.ts';
import { distance } from '../../src/core/geometry/vector.ts';

/** A family with its network, and what is to be expected of each other. */
export interface Kind {
  readonly family: FlexureFamily;
  readonly mechanics: Mechanics;
}

/** A line-by-line list of what is wrong with a network; empty when nothing is. */
export function faultsOf({ family }: Kind, sizes: Sizes, network: FlexureNetwork): readonly string[] {
  const model = { ...network.model, modulus: 1000, poisson: 0.38 };
  const checked = checkModel(model);
  if (!checked.ok) return checked.problems.map(({ message }) => message);
  return [
    ...drivenFaults(network),
    ...bodyFaults(network),
    ...network.dimensions.flatMap((dimension) => dimensionFaults(family, sizes, network, dimension)),
  ];
}

export function drivenFaults({ model, driven, moving, alike }: FlexureNetwork): readonly string[] {
  const pads = new Set(model.pads.map(({ id }) => id));
  const motion = model.motions.find(({ at }) => at === driven.at);
  return [
    ...(pads.has(driven.at) && pads.has(moving) ? [] : ['what is driven or moves is no pad']),
    ...(motion?.[driven.direction] === undefined ? ['what is driven has no motion in its direction'] : []),
    ...(Number.isInteger(alike) && alike >= 1 ? [] : [`${alike} alike is no count`]),
  ];
}

function bodyFaults({ model, bodies }: FlexureNetwork): readonly string[] {
  const bodiless = model.pads.filter(({ id }) => !bodies.some(({ pad }) => pad === id));
  const outlines = bodies.flatMap((body) => body.outlines);
  const off = model.pads.flatMap(({ id, nodes }) =>
    nodes.filter((node) => {
      const place = model.nodes.find((other) => other.id === node);
      const own = bodies.filter(({ pad }) => pad === id).flatMap((body) => body.outlines);
      return !place || !own.some((path) => isOn(path, place));
    }),
  );
  return [
    ...bodiless.map(({ id }) => `pad ${id} has no body`),
    ...outlines.filter((path) => !isClosed(path)).map(() => 'an outline is not closed'),
    ...outlines.filter((path) => !(pathArea(path) > 0)).map(() => 'an outline runs clockwise or encloses nothing'),
    ...off.map((node) => `node ${node} is not on the outline of its pad`),
  ];
}

export function isClosed({ start, pieces }: Path): boolean {
  const last = pieces.at(-1)?.to;
  return last !== undefined && distance(start, last) < 1e-9;
}

/** Leaves end on straight pieces of the outline, which flattening leaves as they are. */
function isOn(path: Path, point: Point): boolean {
  const points = flatten(path, 0.01);
  return points.some((a, i) => {
    const b = points[i + 1];
    return b !== undefined && Math.abs(distance(a, point) + distance(point, b) - distance(a, b)) < 1e-9;
  });
}

/** A dimension names a size, and measures what that size is. */
export function dimensionFaults(
  family: FlexureFamily,
  sizes: Sizes,
  { model }: FlexureNetwork,
  dimension: Dimension,
): readonly string[] {
  const { kind, parameter } = dimension;
  const asked = family.parameters[parameter];
  if (!asked) return [`a dimension names ${parameter}, which is no size`];
  if (kind === 'thickness') {
    return model.members.some(({ id }) => id === dimension.member) ? [] : [`there is no member ${dimension.member}`];
  }
  const wanted = (sizes[parameter] ?? Number.NaN) * (asked.kind === 'ratio' ? (sizes['length'] ?? Number.NaN) : 1);
  const measured = measuredBy(dimension);
  return Math.abs(measured - wanted) <= 1e-9 * Math.max(1, wanted)
    ? []
    : [`${parameter} of ${wanted} is drawn as ${measured}`];
}

function measuredBy(dimension: Exclude<Dimension, { kind: 'thickness' }>): number {
  if (dimension.kind === 'distance') return distance(dimension.from, dimension.to);
  if (dimension.kind === 'angle') return dimension.to - dimension.from;
  return dimension.kind === 'diameter' ? 2 * dimension.radius : dimension.radius;
}

/** Typical sizes of a family with some of them changed. */
export function typicalSizes(family: FlexureFamily, change: Sizes = {}): Sizes {
  const typical = Object.entries(family.parameters).map(([name, parameter]) => [name, parameter.typical]);
  return { ...Object.fromEntries(typical), ...change };
}
