/** What of a toolpath lies near a thin section: all that its layers are drawn and judged by. Plain data. */
import type { Point } from '../../geometry/outline.ts';
import type { Mm } from '../../units.ts';

/** A stretch of what is laid without a break, as far as it runs near the section. */
export interface NearPath {
  /** Number of the whole path in the order laid: stretches of one path have the same. */
  readonly path: number;
  /** Height of the nozzle [mm], the top of the bead, in the middle of the stretch. */
  readonly z: Mm;
  /** Over what was laid before it, lower down [mm]. */
  readonly height: Mm;
  /** x and y of the corners of its centre line [mm]; arcs as chords within 5 µm. */
  readonly points: Float64Array;
  /** Filament that comes out per length of each piece [-], one less than there are corners. */
  readonly feeds: Float64Array;
  /** Whether the whole path ends where it began. */
  readonly isClosed: boolean;
  /** Whether the first corner is where the whole path begins, the last where it ends. */
  readonly begins: boolean;
  readonly ends: boolean;
  /** Line of the text in which the whole path begins. */
  readonly line: number;
  readonly tool: number;
}

/** A move that lays nothing, as far as it runs near the section. */
export interface NearTravel {
  readonly from: Point;
  readonly to: Point;
  /** Height of the nozzle in its middle, and of what was laid last before it [mm]. */
  readonly z: Mm;
  readonly over: Mm;
  readonly line: number;
}

export interface Near {
  /** In the order laid. */
  readonly paths: readonly NearPath[];
  readonly travels: readonly NearTravel[];
  /** True where there was more than is kept. */
  readonly isCut: boolean;
}
