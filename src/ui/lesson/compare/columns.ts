/** Joints in columns beside each other: one scale for all, roots on one line. */
import type { Bounds } from '../../../core/geometry/flatten.ts';
import type { Sheet } from '../../drawing/sheet.ts';

/** Scales of a drafting office, largest first. */
const SCALES: readonly number[] = [20, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05];
/** Round each joint [px]. */
const EDGE = 10;
/** None is drawn higher than this, and no column is lower [px]. */
const HIGH = { most: 300, least: 110 } as const;

export interface Columns {
  readonly scale: number;
  readonly sheets: readonly Sheet[];
}

/** The largest scale at which each joint fits a column of this width [px]; what is not known yet has no extent. */
export function columnsOf(extents: readonly (Bounds | undefined)[], width: number, nominal: number): Columns {
  const known = extents.filter((extent) => extent !== undefined);
  const [top, bottom] = [Math.max(0, ...known.map((one) => one.top)), Math.min(0, ...known.map((one) => one.bottom))];
  const widest = Math.max(0, ...known.map(({ left, right }) => right - left));
  const fits = (scale: number) => {
    const pxPerMm = scale * nominal;
    return widest * pxPerMm + 2 * EDGE <= width && (top - bottom) * pxPerMm + 2 * EDGE <= HIGH.most;
  };
  const scale = SCALES.find(fits) ?? SCALES.at(-1)!;
  const pxPerMm = scale * nominal;
  const whole = (mm: number) => Math.ceil((mm * pxPerMm + EDGE) / pxPerMm) * pxPerMm;
  const [up, down] = [whole(top), whole(-bottom)];
  const spare = Math.max(0, HIGH.least - up - down) / 2;
  const sheets = extents.map((extent): Sheet => {
    const { left = 0, right = 0 } = extent ?? {};
    const rootX = Math.round((width - (left + right) * pxPerMm) / 2);
    return { scale, pxPerMm, width, rootX, top: -(up + spare), bottom: down + spare, small: true };
  });
  return { scale, sheets };
}
