import type { Mm } from '../../../core/units.ts';
import { SCALES } from '../sheet.ts';
import type { Scene } from './scene.ts';
import { boundsOf } from './swept.ts';

/** Parts that lie in several planes, one above the other, seen from the side: z to the right, y up [mm]. */
export interface Planes {
  readonly scale: number;
  readonly widths: readonly Mm[];
  /** Between one plane and the next [mm]. */
  readonly between: Mm;
  readonly total: Mm;
  readonly pads: readonly { readonly from: Mm; readonly to: Mm }[];
  readonly bottom: Mm;
  readonly top: Mm;
}

/** The view is no larger than this [px]. */
const LARGEST = { width: 110, height: 170 };

/** The view from the side of a joint in more than one plane; nothing for one in a single plane. */
export function planesOf({ solved, pads, members, a }: Scene, pxPerMm: number, scale: number): Planes | undefined {
  const planes = [...new Set(members.map(({ plane }) => plane))].toSorted((p, q) => p - q);
  if (planes.length < 2) return undefined;
  const widths = planes.map((plane) =>
    Math.max(
      ...solved.network.model.members.filter((member) => (member.plane ?? 0) === plane).map(({ width }) => width),
    ),
  );
  const between = a.sizes['gap'] ?? 0;
  const total = widths.reduce((sum, width) => sum + width, 0) + (planes.length - 1) * between;
  const spans = [...new Set(pads.map(({ id }) => id))].map((id) => {
    const { bottom, top } = boundsOf(pads.filter((pad) => pad.id === id).flatMap(({ loops }) => loops.flat()));
    return { from: bottom, to: top };
  });
  const [bottom, top] = [Math.min(...spans.map(({ from }) => from)), Math.max(...spans.map(({ to }) => to))];
  const fits = (times: number) =>
    total * times * pxPerMm <= LARGEST.width && (top - bottom) * times * pxPerMm <= LARGEST.height;
  const found = SCALES.find((times) => times <= scale && fits(times));
  return found === undefined ? undefined : { scale: found, widths, between, total, pads: spans, bottom, top };
}
