import { degrees, type Rad } from '../../core/units.ts';

/** What a scrubber's scale is drawn of. */
export interface Scale {
  readonly ticks: string;
  readonly figures: readonly {
    readonly x: number;
    readonly text: string;
    readonly anchor: 'start' | 'middle' | 'end';
  }[];
}

/** Room for a figure, and for a tick [px]. */
const FIGURE = 30;
const TICK = 3;
/** The last figure carries the degree sign and may have three digits. */
const LAST = 44;

/** A drafting scale over the travel: a tick each degree, longer ones at the figures. */
export function draftingScale(full: Rad, width: number): Scale {
  const fullDeg = degrees(full);
  const x = (deg: number) => (deg / fullDeg) * width;
  const fit = (step: number, room: number) => (step / fullDeg) * width >= room;
  const figured =
    [1, 2, 5, 10, 15, 30, 45, 90, 180, 360].find((step) => fit(step, FIGURE) && step >= wanted(fullDeg)) ?? 360;
  const ticked = [1, 5, 15, 45].find((step) => fit(step, TICK)) ?? 45;
  const count = Math.floor(fullDeg / ticked + 1e-9);
  const ticks = Array.from({ length: count + 1 }, (_, i) => i * ticked).map((deg) => {
    const size = deg % figured === 0 ? 11 : deg % 5 === 0 && ticked < 5 ? 8 : 5;
    return `M${x(deg).toFixed(1)} 12v${size}`;
  });
  const last = Math.floor(fullDeg / figured + 1e-9) * figured;
  const figures = Array.from({ length: last / figured + 1 }, (_, i) => i * figured)
    // The end of the travel has its own figure; one that would run into it gives way.
    .filter((deg) => width - x(deg) >= LAST || deg === fullDeg)
    .map((deg) => ({
      x: x(deg),
      text: deg === 0 ? '0°' : String(deg),
      anchor: deg === 0 ? ('start' as const) : ('middle' as const),
    }))
    .filter(({ x: at }) => at < width - 1);
  const end = { x: width, text: `${Number(fullDeg.toFixed(1))}°`, anchor: 'end' as const };
  return { ticks: `${ticks.join('')}M${width.toFixed(1)} 12v11`, figures: [...figures, end] };
}

/** Figures every 5° on a short travel, every 15° from 60°. */
function wanted(fullDeg: number): number {
  if (fullDeg >= 60) return 15;
  return fullDeg >= 12 ? 5 : 1;
}
