import fc from 'fast-check';
import { FAMILIES } from '../../src/core/flexures/index.ts';
import { pathArea } from '../../src/core/geometry/flatten.ts';
import type { Path, Point } from '../../src/core/geometry/outline.ts';
import { understand } from '../../src/core/design/understand.ts';
import { outlinedJoint } from './partGenerators.ts';

/** Outlines of joints of every family that draws its own, with the fillet that the sizes ask for. */
export const jointOutline = outlinedJoint.map((drawn) => {
  const family = FAMILIES.find(({ id }) => id === drawn.family);
  const understood = understand(drawn);
  if (!family || !understood.ok) throw new Error('the generator gives only joints that are understood');
  const { section } = understood.value;
  return {
    paths: family.outline?.(understood.value.sizes, section.thickness) ?? [],
    fillet: drawn.sizes[family.roles.fillet ?? ''] ?? 0,
  };
});

const point = (x: number, y: number): Point => ({ x, y });

/** Shapes by hand whose area and extent are known: what no family draws, but a later one may. */
export const BY_HAND: readonly { name: string; path: Path; area: number; extent: readonly [Point, Point] }[] = [
  {
    name: 'a square of 10 without arcs',
    path: {
      start: point(0, 0),
      pieces: [point(10, 0), point(10, 10), point(0, 10), point(0, 0)].map((to) => ({ kind: 'line', to })),
    },
    area: 100,
    extent: [point(0, 0), point(10, 10)],
  },
  {
    name: 'a full circle of radius 3 in one arc',
    path: {
      start: point(4, 1),
      pieces: [{ kind: 'arc', to: point(4, 1), centre: point(1, 1), counterClockwise: true }],
    },
    area: 9 * Math.PI,
    extent: [point(-2, -2), point(4, 4)],
  },
  {
    name: 'a disc of radius 2 without its upper right quarter',
    path: {
      start: point(0, 0),
      pieces: [
        { kind: 'line', to: point(0, 2) },
        { kind: 'arc', to: point(2, 0), centre: point(0, 0), counterClockwise: true },
        { kind: 'line', to: point(0, 0) },
      ],
    },
    area: 3 * Math.PI,
    extent: [point(-2, -2), point(2, 2)],
  },
  {
    name: 'a square of 4 with a quarter of radius 1 bitten out of a corner, clockwise',
    path: {
      start: point(0, 0),
      pieces: [
        { kind: 'line', to: point(4, 0) },
        { kind: 'line', to: point(4, 3) },
        { kind: 'arc', to: point(3, 4), centre: point(4, 4), counterClockwise: false },
        { kind: 'line', to: point(0, 4) },
        { kind: 'line', to: point(0, 0) },
      ],
    },
    area: 16 - Math.PI / 4,
    extent: [point(0, 0), point(4, 4)],
  },
];

/** A shape of known area, as a generated case. */
export const anyOutline = fc.oneof(
  jointOutline.map(({ paths }) => ({ paths, area: paths.map(pathArea).reduce((sum, area) => sum + area, 0) })),
  fc.constantFrom(...BY_HAND).map(({ path, area }) => ({ paths: [path], area })),
);
