/** A picture of a part as plain data: what a page draws and paints in its own colours. */
import type { Point3 } from '../../geometry/mesh/triangleMesh.ts';
import type { Point } from '../../geometry/outline.ts';
import type { Mm } from '../../units.ts';
import type { EdgeClass } from './drawnEdges.ts';
import type { Placing, Room } from './placing.ts';

/** Tones of outsides run from 1, looking up at the light, to this, looking away from it; one more is an inside, seen through a hole. */
export const TONES = 8;
export const INSIDE_TONE = TONES + 1;

/** A line as it is seen; closed where its last point is its first. */
export interface PictureLine {
  /** `trace` is a line that was asked for, on the surface. */
  readonly kind: EdgeClass | 'trace';
  /** x to the right and y downwards from the upper left corner of the picture [mm on paper]. */
  readonly points: readonly Point[];
}

/** Tones from the upper left corner, row by row, one byte a pixel: 0 is paper. */
export interface ToneRaster {
  readonly width: number;
  readonly height: number;
  readonly pixelsPerMm: number;
  /** Pixels that lie left of and above the picture, and a little more than that on the other sides. */
  readonly margin: number;
  readonly pixels: Uint8Array;
}

/** A point of the part that a balloon points at. */
export interface MarkAt {
  readonly at: Point3;
  /** How deep inside the part it may lie and still count as seen [mm]. */
  readonly within: Mm;
}

export interface PartPicture {
  readonly placing: Placing;
  /** Silhouettes, edges and traces; the longer ones first. */
  readonly lines: readonly PictureLine[];
  readonly tones: ToneRaster;
  /** In the order asked: where each mark is, and whether something lies before it. */
  readonly marks: readonly (Point & { readonly isHidden: boolean })[];
  /** True where the part has more lines than a picture can hold; the longest are drawn. */
  readonly isCut: boolean;
}

export interface PictureOptions {
  /** How large the picture may be [mm on paper]. */
  readonly room: Room;
  /** How fine tones are and how closely it is looked what hides what [pixels per mm on paper]. */
  readonly pixelsPerMm?: number;
  readonly marks?: readonly MarkAt[];
  /** Lines on the surface of the part, such as where it is cut [mm]. */
  readonly traces?: readonly (readonly Point3[])[];
}
