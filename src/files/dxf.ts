/** An outline as a DXF file. Stands alone in its module, so that the package behind it is loaded only when asked for. */
import { DxfWriter, LWPolylineFlags, Units } from '@tarikjabiri/dxf';
import { bounds } from '../core/geometry/flatten.ts';
import type { Path } from '../core/geometry/outline.ts';
import { isClosed, segmentsOf } from './outlineSegments.ts';

const METRIC = 1;

/** Rounded to what drawing programs keep, so that the file shows 12 and not 11.999999999999998; adding 0 turns −0 into 0. */
function tidy(value: number): number {
  return Number(value.toFixed(6)) + 0;
}

function addPath(writer: DxfWriter, path: Path): void {
  const segments = segmentsOf(path);
  const closed = isClosed(path);
  const vertices = segments.map(({ from, bulge }) => {
    const point = { x: tidy(from.x), y: tidy(from.y) };
    return bulge === 0 ? { point } : { point, bulge };
  });
  const end = segments.at(-1)?.to;
  if (!closed && end) vertices.push({ point: { x: tidy(end.x), y: tidy(end.y) } });
  writer.addLWPolyline(vertices, { flags: closed ? LWPolylineFlags.Closed : LWPolylineFlags.None });
}

/**
 * The outlines as a DXF file in mm: one polyline each, closed where the outline is, its arcs as bulges.
 *
 * @param paths - outlines in the plane of bending [mm], at least one
 * @returns the text of the file
 */
export function outlineDxf(paths: readonly Path[]): string {
  const writer = new DxfWriter();
  writer.setUnits(Units.Millimeters);
  writer.setVariable('$MEASUREMENT', { 70: METRIC });
  const { left, right, bottom, top } = bounds(paths);
  writer.setVariable('$EXTMIN', { 10: tidy(left), 20: tidy(bottom), 30: 0 });
  writer.setVariable('$EXTMAX', { 10: tidy(right), 20: tidy(top), 30: 0 });
  for (const path of paths) addPath(writer, path);
  return writer.stringify();
}
