/** The figures of a toolpath file, row by row. */
import type { CheckedToolpath } from '../../core/inspect/toolpath/checkedToolpath.ts';
import type { LayerFigures, ToolpathFigures } from '../../core/inspect/toolpath/toolpathFigures.ts';
import type { GcodeText } from '../../files/gcode/gcodeText.ts';
import { grouped, lengthFigure, NO_BREAK, unitAfter, type LengthUnit } from './numbers.ts';
import { listed } from './said.ts';

type Rows = readonly (readonly [name: string, value: string])[];

/** A long way: metres, or feet where lengths are in inches. */
function longLength(value: number, unit: LengthUnit): string {
  const far = unit === 'mm' ? value / 1000 : value / 304.8;
  const places = far >= 100 ? 0 : far >= 10 ? 1 : 2;
  return `${places === 0 ? grouped(far) : far.toFixed(places)}${NO_BREAK}${unit === 'mm' ? 'm' : 'ft'}`;
}

const HEIGHTS_TOLD = 3;

/** “30 of 0.20 mm”, “1 of 0.24 mm, 29 of 0.20 mm”. */
export function layersTold({ layers, heights, pitch }: ToolpathFigures, unit: LengthUnit): string {
  if (pitch !== undefined) return `a spiral, rising ${lengthFigure(pitch, unit)}${unitAfter(unit)} a turn`;
  const counts = new Map<string, number>();
  for (const { height } of layers) {
    const said = lengthFigure(height, unit);
    counts.set(said, (counts.get(said) ?? 0) + 1);
  }
  if (counts.size === 0) return grouped(heights);
  if (counts.size > HEIGHTS_TOLD) return `${grouped(layers.length)}, ${heightsSpan(layers, unit)}`;
  return [...counts].map(([height, count]) => `${grouped(count)} of ${height}`).join(', ') + unitAfter(unit);
}

function heightsSpan(layers: readonly LayerFigures[], unit: LengthUnit): string {
  const heights = layers.map(({ height }) => height);
  const [least, most] = [Math.min(...heights), Math.max(...heights)];
  return `${lengthFigure(least, unit)} to ${lengthFigure(most, unit)}${unitAfter(unit)} high`;
}

function boxTold({ box }: ToolpathFigures, unit: LengthUnit): string {
  if (!box) return 'nothing';
  const say = (a: number, b: number) => lengthFigure(b - a, unit);
  const { min, max } = box;
  return `${say(min.x, max.x)} × ${say(min.y, max.y)} × ${say(min.z, max.z)}${unitAfter(unit)}`;
}

function placesTold({ isEver }: GcodeText): string {
  const units = isEver.inch ? 'inch (G20)' : 'mm';
  return `${units}; places ${isEver.relative ? 'relative (G91) at times' : 'absolute'}`;
}

function feedTold({ isEver }: GcodeText): string {
  const how =
    isEver.absoluteFeed && isEver.relativeFeed
      ? 'absolute and relative'
      : isEver.relativeFeed
        ? 'relative (M83)'
        : 'absolute (M82)';
  return [
    how,
    ...(isEver.volumetric ? ['by volume'] : []),
    ...(isEver.flow ? ['at another flow than 100 %'] : []),
  ].join('; ');
}

function movesTold({ moves: [g0, g1, g2, g3], modal }: GcodeText): string {
  const arcs = g2 + g3;
  const told = [`${grouped(g0 + g1)} straight`, arcs === 0 ? 'no arcs' : `${grouped(arcs)} arcs`];
  return [...told, ...(modal === 0 ? [] : [`${grouped(modal)} as the one before`])].join(', ');
}

const some = (name: string, count: number, said = grouped(count)): Rows => (count === 0 ? [] : [[name, said]]);

/** What the moves come to. */
export function figureRows({ figures, filament }: CheckedToolpath<GcodeText>, unit: LengthUnit): Rows {
  const { byTool } = figures;
  const by = filament.by === 'told' ? 'as you said' : 'by how wide the lines come out';
  return [
    ['Layers', layersTold(figures, unit)],
    ['Around the middles of its lines', boxTold(figures, unit)],
    ['Line laid in all', `${longLength(figures.printingLength, unit)}, ${grouped(figures.printingMoves)} moves`],
    ['Travel', `${longLength(figures.travelLength, unit)}, ${grouped(figures.travelMoves)} moves`],
    [
      'Filament',
      `${longLength(figures.filament, unit)}; ${lengthFigure(filament.diameter, unit)}${unitAfter(unit)} thick, ${by}`,
    ],
    ...(byTool.length > 1
      ? ([['Filament by tool', listed(byTool.map((one) => `T${one.tool} ${longLength(one.filament, unit)}`))]] as const)
      : []),
    ['Filament on moves', longLength(figures.filamentOnMoves, unit)],
    ['Filament drawn back', `${grouped(figures.retractions)} times`],
  ];
}

/** What stands in the text. */
export function textRows({ text }: CheckedToolpath<GcodeText>): Rows {
  return [
    ['Lines of text', `${grouped(text.lines)}, ${grouped(text.commands)} with a command`],
    ['Moves', movesTold(text)],
    ['Unit, places', placesTold(text)],
    ['Filament feed', feedTold(text)],
    ...some('Zero set anew (G92)', text.resets, `${grouped(text.resets)}, ${grouped(text.feedResets)} of filament`),
    ...some('Drawn back by the printer (G10)', text.firmwareRetractions),
    ...some(
      'Tool changes',
      text.toolChanges,
      `${grouped(text.toolChanges)}; ${listed(text.tools.map((tool) => `T${tool}`))}`,
    ),
    ...some('Numbered lines', text.numbered),
    ...some(
      'Checksums',
      text.checksums,
      text.badChecksums === 0
        ? `${grouped(text.checksums)}, all right`
        : `${grouped(text.checksums)}, ${grouped(text.badChecksums)} wrong`,
    ),
    ...some('Commands by a word', text.named),
    ['Lines not understood', grouped(text.bad)],
  ];
}
