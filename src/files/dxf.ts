/** An outline as a DXF file. Stands alone in its module, so that the package behind it is loaded only when asked for. */
import { Colors, DxfWriter, LineTypes, LWPolylineFlags, Units } from '@tarikjabiri/dxf';
import { bounds } from '../core/geometry/flatten.ts';
import type { Path } from '../core/geometry/outline.ts';
import { isClosed, segmentsOf, type Layer } from './outlineSegments.ts';

const METRIC = 1;

/** Rounded to what drawing programs keep, so that the file shows 12 and not 11.999999999999998; adding 0 turns −0 into 0. */
function tidy(value: number): number {
  return Number(value.toFixed(6)) + 0;
}

function addPath(writer: DxfWriter, path: Path, layerName?: string): void {
  const segments = segmentsOf(path);
  const closed = isClosed(path);
  const vertices = segments.map(({ from, bulge }) => {
    const point = { x: tidy(from.x), y: tidy(from.y) };
    return bulge === 0 ? { point } : { point, bulge };
  });
  const end = segments.at(-1)?.to;
  if (!closed && end) vertices.push({ point: { x: tidy(end.x), y: tidy(end.y) } });
  const flags = closed ? LWPolylineFlags.Closed : LWPolylineFlags.None;
  writer.addLWPolyline(vertices, { flags, ...(layerName === undefined ? {} : { layerName }) });
}

/** An empty file in mm that says how far its drawing reaches. */
function writerOver(paths: readonly Path[]): DxfWriter {
  const writer = new DxfWriter();
  writer.setUnits(Units.Millimeters);
  writer.setVariable('$MEASUREMENT', { 70: METRIC });
  const { left, right, bottom, top } = bounds(paths);
  writer.setVariable('$EXTMIN', { 10: tidy(left), 20: tidy(bottom), 30: 0 });
  writer.setVariable('$EXTMAX', { 10: tidy(right), 20: tidy(top), 30: 0 });
  return writer;
}

/**
 * The outlines as a DXF file in mm: one polyline each, closed where the outline is, its arcs as bulges.
 *
 * @param paths - outlines in the plane of bending [mm], at least one
 * @returns the text of the file
 */
export function outlineDxf(paths: readonly Path[]): string {
  const writer = writerOver(paths);
  for (const path of paths) addPath(writer, path);
  return writer.stringify();
}

/**
 * The outlines of a joint in several planes as a DXF file in mm: a layer each, with the polylines of that plane.
 *
 * @param layers - outlines of each plane [mm], at least one in all
 * @returns the text of the file
 */
export function layeredDxf(layers: readonly Layer[]): string {
  const writer = writerOver(layers.flatMap(({ paths }) => paths));
  for (const { name, paths } of layers) {
    writer.addLayer(name, Colors.White, LineTypes.Continuous);
    for (const path of paths) addPath(writer, path, name);
  }
  return writer.stringify();
}
