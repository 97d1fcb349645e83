import { edgesOf } from '../../geometry/mesh/edges.ts';
import { boxOf, diagonalOf } from '../../geometry/mesh/meshFigures.ts';
import type { Point3, TriangleMesh } from '../../geometry/mesh/triangleMesh.ts';
import type { PlateUp } from '../judged.ts';
import { fillDepth, type Alive } from './depthBuffer.ts';
import { drawnEdges } from './drawnEdges.ts';
import { facingOf } from './facing.ts';
import { Hiding, type Spot } from './hiding.ts';
import { seenEdges, seenTrace, type Drawing } from './seenLines.ts';
import { gridOf, onScreen } from './onScreen.ts';
import type { PartPicture, PictureLine, PictureOptions } from './picture.ts';
import { placePart, toPicture, valueOf, type Placing } from './placing.ts';
import { toneRaster } from './toneRaster.ts';

/** Fine enough that the end of a line lies within its own width [pixels per mm on paper]. */
const PIXELS_PER_MM = 6;
/** What is nearer by less than this share of the diagonal touches: joined bodies are drawn to single precision. */
const TOUCHING = 5e-5;
/** Corners of all lines together; a drawing of a part has some thousands. */
const MOST_CORNERS = 60_000;

/**
 * A dimetric picture of a part as a drawing office makes it: the part on its plate, the longer side across, what is hidden
 * left out. Axes and scales are those of ISO 5456-3 and ISO 5455, from memory. The work is bounded whatever the mesh is: so
 * are pixels, places looked at, and corners of lines.
 *
 * @param mesh - a part, mended or not [mm]
 * @param up - which direction of the file points away from the plate [-]
 * @param options - size of the picture [mm on paper], and what is to be shown on the part [mm]
 * @param alive - called every few milliseconds [-]; may throw to give up
 * @returns lines, tones and marks on paper [mm]
 */
export function drawPart(mesh: TriangleMesh, up: PlateUp, options: PictureOptions, alive: Alive): PartPicture {
  const box = boxOf(mesh);
  const placing = placePart(mesh, box, up, options.room);
  const grid = gridOf(placing, options.pixelsPerMm ?? PIXELS_PER_MM);
  const screen = onScreen(mesh, placing, grid);
  alive();
  const edges = edgesOf(mesh);
  alive();
  const facing = facingOf(mesh, edges, placing.nearer);
  const buffer = fillDepth(screen, mesh.corners, facing, alive);
  const hiding = new Hiding(screen, mesh.corners, buffer);
  const drawn = drawnEdges(mesh.corners, edges, facing);
  alive();
  const touching = TOUCHING * diagonalOf(box);
  const drawing: Drawing = { corners: mesh.corners, screen, facing, buffer, hiding, touching, alive };
  const lines = [...seenEdges(drawn, drawing), ...tracesOf(options.traces ?? [], placing, drawing)];
  const marks = (options.marks ?? []).map(({ at, within }) => ({
    ...toPicture(placing, at),
    isHidden: hiding.isHidden(spotOf(at, placing, drawing), { exact: within + touching, pixels: within + touching }),
  }));
  return { placing, ...longest(lines), tones: toneRaster(grid, buffer, facing, box, up), marks };
}

function tracesOf(traces: readonly (readonly Point3[])[], placing: Placing, drawing: Drawing): readonly PictureLine[] {
  return traces.flatMap((trace) =>
    seenTrace(
      trace.map((point) => spotOf(point, placing, drawing)),
      drawing,
    ),
  );
}

function spotOf(point: Point3, placing: Placing, { screen: { grid } }: Drawing): Spot {
  const { x, y } = toPicture(placing, point);
  return {
    x: x * grid.pixelsPerMm + grid.margin,
    y: y * grid.pixelsPerMm + grid.margin,
    near: valueOf(placing.nearer, point),
  };
}

function longest(lines: readonly PictureLine[]): { readonly lines: readonly PictureLine[]; readonly isCut: boolean } {
  const sorted = lines
    .map((line) => ({ line, length: lengthOf(line) }))
    .toSorted((a, b) => b.length - a.length)
    .map(({ line }) => line);
  let corners = 0;
  const kept = sorted.filter(({ points }) => (corners += points.length) <= MOST_CORNERS);
  return { lines: kept, isCut: kept.length < sorted.length };
}

function lengthOf({ points }: PictureLine): number {
  return points.reduce((sum, { x, y }, i) => {
    const before = points[Math.max(0, i - 1)]!;
    return sum + Math.hypot(x - before.x, y - before.y);
  }, 0);
}
