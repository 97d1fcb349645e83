/** What is laid across a thin section, layer by layer. */
import type { Point } from '../../geometry/outline.ts';
import type { Mm } from '../../units.ts';

/** Least and greatest of a figure. */
export interface Span {
  readonly least: number;
  readonly most: number;
}

/** One line as it runs along the section: between two breaks. */
export interface Track {
  /** Number of its path (`NearPath.path`). */
  readonly path: number;
  /** Where along the run it is cut [mm], rising, at most STATION apart; how far off the run it lies there [mm], positive at the left; how wide it is [mm]. */
  readonly at: Float64Array;
  readonly off: Float64Array;
  readonly width: Float64Array;
}

/** A stretch along the run in which nothing lies between two lines, or between a line and where a line would be. */
export interface OpenPlace {
  readonly from: Mm;
  readonly to: Mm;
  /** Its widest, square to the run. */
  readonly width: Mm;
  /** Its middle square to the run, positive at the left. */
  readonly off: Mm;
  /** Between lines beside one another; or along the run, where all lines end. */
  readonly kind: 'between' | 'along';
}

/** Neighbours that lie closer than their plastic has room for. */
export interface Pressed {
  /** How much closer, at most [mm]; 0 where none does. */
  readonly most: Mm;
  /** In which share of the cuts [-]. */
  readonly share: number;
}

/** Where a path begins or ends. */
export interface PathEnd {
  readonly point: Point;
  /** Along the run from its start, and off it [mm]. */
  readonly at: Mm;
  readonly off: Mm;
  /** Line of the text in which the path begins. */
  readonly line: number;
}

/** One layer of a section. Of a crease, a layer is one of those that lie on one another in its thin way. */
export interface LayerLaid {
  /** In the section, from 1 at the bottom. */
  readonly layer: number;
  /** Its top, and how high it is: over the layer that lies below it here [mm]. */
  readonly z: Mm;
  readonly height: Mm;
  /** Lines across, cut all along the run; 0 where nothing is laid. `usual`: most of the run. */
  readonly lines: Span & { readonly usual: number };
  /** Widths of all lines all along the run [mm]; absent where there is none. */
  readonly widths?: Span & { readonly mean: Mm };
  /** From the outer side of one outermost line to that of the other, mean along the run [mm]; 0 where nothing is laid. */
  readonly thickness: Mm;
  readonly tracks: readonly Track[];
  readonly open: readonly OpenPlace[];
  readonly pressed: Pressed;
  /** Where contours start, or open lines begin, in the zone that should be kept free of them. */
  readonly starts: readonly PathEnd[];
  /** Where lines stop inside the section, other than at a start point. */
  readonly stops: readonly PathEnd[];
  /** Share of what is laid that runs along the section, to within 30° [-]; of an upright or crease one likewise along the run. */
  readonly along: number;
  /** Moves that lay nothing and cross the section: in all, and of these lifted over it. */
  readonly crossings: number;
  readonly lifted: number;
}

export interface PlaceAudit {
  /** Length of the run [mm]. */
  readonly length: Mm;
  /** From the bottom up; those of its height in which nothing is laid across it too, as far as other layers tell. */
  readonly layers: readonly LayerLaid[];
}

/** The run is cut this often, at least [mm]. */
export const STATION: Mm = 0.25;
