/** How far the moving pad gives in each of six directions, as needles of one measure. */
import type { SoftStiff } from '../../../core/beam/softStiff.ts';
import type { Direction } from '../../../core/beam/spatialStiffness.ts';
import { softStiffOf } from '../../../core/design/softStiffOf.ts';
import type { Mm } from '../../../core/units.ts';
import { niceSteps } from '../domains.ts';
import type { Px, Size } from '../frame.ts';
import { NO_BREAK } from '../../text/numbers.ts';
import type { Tick } from '../ticks.ts';
import type { Answered } from './way.ts';

export interface Needle {
  readonly direction: Direction;
  /** Under 1 N, for turns at the radius [mm]; Infinity where nothing resists. */
  readonly give: number;
  /** [N/mm] or [N·mm/rad]. */
  readonly stiffness: number;
  readonly isWanted: boolean;
  /** Clockwise from straight up. */
  readonly bearingDeg: number;
}

export interface Compass {
  /** Where 1 N acts when it turns the pad: as far as the flexure reaches from the pad's middle [mm]. */
  readonly radius: Mm;
  readonly needles: readonly Needle[];
  readonly top: number;
  readonly step: number;
  readonly says: SoftStiff;
}

/** Neighbours on the compass are neighbours in kind: moves to the right, turns to the left. */
const ROUND: readonly Direction[] = ['turnZ', 'x', 'y', 'z', 'turnX', 'turnY'];
const OF_DRIVE = { x: 'x', y: 'y', turn: 'turnZ' } as const;

export function compassOf({ solved, effort: { modulus } }: Answered): Compass {
  const { network } = solved;
  const { radius, six, ...says } = softStiffOf(solved, modulus);
  const wanted = network.driven.at === network.moving ? OF_DRIVE[network.driven.direction] : undefined;
  const first = wanted === undefined ? 0 : ROUND.indexOf(wanted);
  const needles = ROUND.map((_, i): Needle => {
    const direction = ROUND[(first + i) % ROUND.length] as Direction;
    const give = says.gives.find((one) => one.direction === direction)?.give ?? 0;
    return { direction, give, stiffness: six[direction], isWanted: direction === wanted, bearingDeg: i * 60 };
  });
  const most = Math.max(...needles.map(({ give }) => give).filter(Number.isFinite), 0);
  return { radius, needles, ...niceSteps(most), says };
}

/** A place at a bearing, clockwise from straight up, and so far out. */
export function atBearing(deg: number, far: number): Px {
  const turn = (deg * Math.PI) / 180;
  return { x: far * Math.sin(turn), y: -far * Math.cos(turn) };
}

/** The corners of a needle: its point, and a waist that keeps short ones visible. */
export function needleCorners(bearingDeg: number, length: number, waist: number): readonly Px[] {
  return [
    atBearing(bearingDeg, length),
    atBearing(bearingDeg + 60, waist),
    { x: 0, y: 0 },
    atBearing(bearingDeg - 60, waist),
  ];
}

/** Where the compass lies on its paper [CSS px]. */
export interface CompassLayout {
  readonly centre: Px;
  /** Radius of the outer ring. */
  readonly reach: number;
  readonly width: number;
}

/** Room for two lines of words above and below, and for a column at either side. */
const LINES = 36;
export const COLUMN = 98;

export function compassLayout({ width, height }: Size): CompassLayout {
  const reach = Math.max(40, Math.min(height / 2 - LINES, width / 2 - COLUMN));
  return { centre: { x: width / 2, y: height / 2 }, reach, width };
}

/** Rings with their figures; the outermost carries the unit. */
export function figured({ top, step }: Pick<Compass, 'top' | 'step'>): readonly Tick[] {
  const count = Math.round(top / step);
  return Array.from({ length: count }, (_, i) => {
    const at = Number(((i + 1) * step).toPrecision(12));
    return { at, text: i === count - 1 ? `${at}${NO_BREAK}mm` : String(at) };
  });
}

/** Which needle lies nearest in bearing to a place on the paper. */
export function nearestNeedle(needles: readonly Needle[], at: Px, centre: Px): number {
  const bearing = (Math.atan2(at.x - centre.x, centre.y - at.y) * 180) / Math.PI;
  const away = ({ bearingDeg }: Needle) => Math.abs(((bearing - bearingDeg + 540) % 360) - 180);
  return needles.reduce((best, needle, i) => (away(needle) < away(needles[best] as Needle) ? i : best), 0);
}
