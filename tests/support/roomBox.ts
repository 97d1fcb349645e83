/** The room that a joint takes as printed, measured on its network: what a closed form of it is held against. */
import { printedLine } from '../../src/core/beam/printedLine.ts';
import type { FlexureNetwork } from '../../src/core/flexures/network.ts';
import type { Mm } from '../../src/core/units.ts';
import { flatten, spansOf } from '../../src/core/geometry/flatten.ts';
import type { Path, Point } from '../../src/core/geometry/outline.ts';

/** Chords stay so near to their curves: far below the 0.01 mm to which rooms are compared. */
const CHORD: Mm = 0.001;

/** Both edges of every member, half its thickness to either side of its middle line. */
function edgesOf({ model }: FlexureNetwork): readonly Point[] {
  const nodes = new Map(model.nodes.map((node) => [node.id, node] as const));
  return model.members.flatMap((member) => {
    const [from, to] = [nodes.get(member.from), nodes.get(member.to)];
    if (!from || !to) throw new Error(`the member ${member.id} hangs on no node`);
    const { x, y, angle, thickness } = printedLine(member, from, to, CHORD);
    return Array.from(x).flatMap((at, i) =>
      [-0.5, 0.5].map((side) => ({
        x: at - side * (thickness[i] ?? Number.NaN) * Math.sin(angle[i] ?? Number.NaN),
        y: (y[i] ?? Number.NaN) + side * (thickness[i] ?? Number.NaN) * Math.cos(angle[i] ?? Number.NaN),
      })),
    );
  });
}

/** Hollow roundings of a body: root fillets, and the opening of a ring. */
function hollowsOf(path: Path): readonly Point[] {
  return spansOf(path).flatMap(({ start, piece }) =>
    piece.kind === 'arc' && !piece.counterClockwise ? flatten({ start, pieces: [piece] }, CHORD) : [],
  );
}

/**
 * Points on all edges of what bends and of its root fillets, and of whole bodies that lie between.
 *
 * @param own - pads that are the user's own bodies: of those, only the fillets count
 */
export function printedEdges(network: FlexureNetwork, own: readonly string[]): readonly Point[] {
  const bodies = network.bodies.flatMap(({ pad, outlines }) =>
    outlines.flatMap((path) => (own.includes(pad) ? hollowsOf(path) : flatten(path, CHORD))),
  );
  return [...edgesOf(network), ...bodies];
}

/** How far points reach along x and along y. */
export function extentOf(points: readonly Point[]): { readonly x: Mm; readonly y: Mm } {
  const reach = (way: 'x' | 'y') => {
    const values = points.map((point) => point[way]);
    return values.reduce((a, b) => Math.max(a, b), -Infinity) - values.reduce((a, b) => Math.min(a, b), Infinity);
  };
  return { x: reach('x'), y: reach('y') };
}
