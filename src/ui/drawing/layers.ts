import type { Assessment } from '../../core/design/assessment.ts';
import { thicknessOfLayers } from '../../core/print/wholeLayers.ts';
import type { Mm } from '../../core/units.ts';
import type { Figure } from './figure.ts';
import type { Landing } from './landing.ts';
import { stretches } from './polygon.ts';

/** A bead seen from its end or its side: an upright rectangle whose shorter sides are round [mm]. */
export interface Stadium {
  readonly left: Mm;
  readonly right: Mm;
  readonly bottom: Mm;
  readonly top: Mm;
}

/** What is seen of a joint from the side: beads, and the filled core of the pads between them. */
export interface Layers {
  readonly lines: readonly Stadium[];
  readonly core: readonly Stadium[];
}

/** Thinner slices than this are not laid. */
const LEAST_SHARE = 0.5;

/** Boundaries between layers from 0 up, as many as fit best. */
function layerEdges(height: Mm, profile: Assessment['joint']['profile']): number[] {
  const edges = [0];
  for (let n = 1; edges.length <= 5000; n++) {
    const top = thicknessOfLayers(n, profile);
    if (top - height > (1 - LEAST_SHARE) * profile.layerHeight) break;
    edges.push(top);
  }
  return edges;
}

/** Layers of a flexure that lies flat on the plate and is seen from the side: each as long as the outline is there. */
export function layersAlong(a: Assessment, figure: Figure, landing: Landing): Layers {
  const { box, points, thickness } = figure;
  const edges = layerEdges(box.top - box.bottom, a.joint.profile);
  const web = box.bottom + thickness;
  const inWeb = a.fit.outcome === 'vanishes' ? 0 : landing.laid.length;
  const lines = edges.slice(1).flatMap((edge, i) => {
    const [bottom, top] = [box.bottom + (edges[i] ?? 0), box.bottom + edge];
    // What lies in the web is what lands there, not what the outline asks for.
    const middle = (bottom + top) / 2;
    const level = i < inWeb ? Math.min(middle, web - 1e-6) : Math.max(middle, web + 1e-6);
    return stretches(points, 'y', level).map(([left, right]) => ({ left, right, bottom, top }));
  });
  return { lines, core: [] };
}

/** Lines of a flexure that stands on its end, seen from the side: in every layer the lines show their ends. */
export function layersAcross(a: Assessment, figure: Figure, landing: Landing): Layers {
  const { box, points, length } = figure;
  const { lineWidth } = a.joint.profile;
  const edges = layerEdges(box.right - box.left, a.joint.profile);
  const slices = edges.slice(1).flatMap((edge, i) => {
    const [left, right] = [box.left + (edges[i] ?? 0), box.left + edge];
    const x = (left + right) / 2;
    if (x > 0 && x < length) {
      return [{ lines: landing.laid.map(({ from, to }) => ({ left, right, bottom: from, top: to })), core: [] }];
    }
    return stretches(points, 'x', x).map(([bottom, top]) => padSlice({ left, right, bottom, top }, a.fit, lineWidth));
  });
  return { lines: slices.flatMap(({ lines }) => lines), core: slices.flatMap(({ core }) => core) };
}

/** One layer of a pad: its contours from both faces inwards, as many as there is room for, and what they leave. */
function padSlice({ left, right, bottom, top }: Stadium, { contours }: Assessment['fit'], width: Mm): Layers {
  const room = Math.floor((top - bottom) / width / 2 + 0.25);
  const count = Math.min(Math.max(1, contours), room);
  const lines = Array.from({ length: count }, (_, k) => [
    { left, right, bottom: bottom + k * width, top: bottom + (k + 1) * width },
    { left, right, bottom: top - (k + 1) * width, top: top - k * width },
  ]).flat();
  const inner = { left, right, bottom: bottom + count * width, top: top - count * width };
  return { lines, core: inner.top - inner.bottom > width / 2 ? [inner] : [] };
}
