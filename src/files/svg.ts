/** An outline as an SVG file at true size, for drawing programs that read no DXF and for printing on paper. */
import { bounds } from '../core/geometry/flatten.ts';
import type { Path, Point } from '../core/geometry/outline.ts';
import type { Mm } from '../core/units.ts';
import { isClosed, segmentsOf, type Layer, type Segment } from './outlineSegments.ts';

/** Keeps the line round the outermost edge inside the picture [mm]. */
const MARGIN: Mm = 1;
/** A fine drawn line [mm]. */
const STROKE: Mm = 0.1;

/** Millimetres to six places and without an exponent, which some readers do not know. */
function figure(value: Mm): string {
  const text = value.toFixed(6).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

/** The picture's y runs down: this is the only place where it is turned. */
function at({ x, y }: Point): string {
  return `${figure(x)} ${figure(-y)}`;
}

function command({ to, radius, bulge }: Segment): string {
  if (radius === 0) return `L ${at(to)}`;
  // Segments never pass half a turn, so the large-arc flag is 0. Sweep 1 is clockwise as seen, y having been turned.
  return `A ${figure(radius)} ${figure(radius)} 0 0 ${bulge > 0 ? 0 : 1} ${at(to)}`;
}

function element(path: Path): string {
  const commands = [`M ${at(path.start)}`, ...segmentsOf(path).map(command), ...(isClosed(path) ? ['Z'] : [])];
  return `  <path d="${commands.join(' ')}"/>`;
}

/** Text that XML can hold: marks escaped, characters that XML 1.0 forbids replaced. */
function escaped(text: string): string {
  const marks: Readonly<Record<string, string>> = {
    '&': '&amp;',
    '<': '&lt;',
    '>': '&gt;',
    '"': '&quot;',
    "'": '&apos;',
  };
  return text
    .replaceAll(/[\p{Cc}\p{Cs}\uFFFE\uFFFF]/gu, '\uFFFD')
    .replaceAll(/[&<>"']/g, (mark) => marks[mark] ?? mark);
}

/** The parts of a file around whatever is drawn. */
function file(paths: readonly Path[], title: string, drawn: readonly string[]): string {
  const { left, right, bottom, top } = bounds(paths);
  const width = figure(right - left + 2 * MARGIN);
  const height = figure(top - bottom + 2 * MARGIN);
  const corner = at({ x: left - MARGIN, y: top + MARGIN });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${corner} ${width} ${height}"`,
    `  fill="none" stroke="#000" stroke-width="${STROKE}">`,
    `  <title>${escaped(title)}</title>`,
    ...drawn,
    '</svg>',
    '',
  ].join('\n');
}

/**
 * The outlines as an SVG file whose user unit is 1 mm.
 *
 * @param paths - outlines in the plane of bending [mm], at least one
 * @param title - what the drawing shows, any text
 * @returns the text of the file
 */
export function outlineSvg(paths: readonly Path[], title: string): string {
  return file(paths, title, paths.map(element));
}

/**
 * The outlines of a joint in several planes as an SVG file whose user unit is 1 mm: a group each, one over the other.
 *
 * @param layers - outlines of each plane [mm], at least one in all
 * @param title - what the drawing shows, any text
 * @returns the text of the file
 */
export function layeredSvg(layers: readonly Layer[], title: string): string {
  const groups = layers.flatMap(({ name, paths }) => [
    `  <g id="${escaped(name)}">`,
    ...paths.map((path) => `  ${element(path)}`),
    '  </g>',
  ]);
  return file(
    layers.flatMap(({ paths }) => paths),
    title,
    groups,
  );
}
