/** Words of the drawings in the place where toolpaths are checked. */
import type { LayerLaid, OpenPlace, PathEnd, Span } from '../../core/inspect/toolpath/audit.ts';
import type { JudgedPlace } from '../../core/inspect/toolpath/judgedPlace.ts';
import type { Mm } from '../../core/units.ts';
import { counted, lengthFigure, unitAfter, type LengthUnit } from './numbers.ts';
import { listed } from './said.ts';

/** Words for one thing, from the fullest to those that still fit on a phone. */
export type Wordings = readonly string[];

export const TOOLPATH_FIGURES = {
  layerAid: 'beads at the width the file lays',
  widths: 'Line widths along the flexure',
  sameScale: 'same lengthwise scale as Fig. 1',
  straightened: 'along the run, drawn straight',
  stave: 'Every layer',
  staveAid: 'keys: arrows, n and p',
  cut: 'section B–B',
  plan: 'The whole layer from above',
  keepOut: ['keep start points off, both sides', 'keep start points off', 'no starts here'],
  startsOnPad: ['starts here, on the pad', 'starts on the pad', 'starts here'],
  startsAtRoot: ['starts at the root', 'starts here'],
  nothing: ['nothing is laid across here', 'nothing laid'],
  layerHandle: 'Layer',
  cutLetter: 'B',
} as const;

export const STAVE_HEADS = {
  laid: ['as laid'],
  lines: ['lines', 'across'],
  deep: ['lines', 'beside'],
  widths: (unit: LengthUnit) => ['widths,', unit === 'mm' ? 'mm' : 'in'],
  starts: ['starts', 'on it'],
} as const;

const figure = (value: Mm, unit: LengthUnit) => lengthFigure(value, unit);

/** “0.40”, “0.40 to 1.20”. */
function between(least: Mm, most: Mm, unit: LengthUnit): string {
  const [a, b] = [figure(least, unit), figure(most, unit)];
  return a === b ? b : `${a} to ${b}`;
}

function spanOf(values: readonly number[]): Span {
  return { least: Math.min(...values), most: Math.max(...values) };
}

/** “starts on the flexure, 5.00 from the root”. */
export function startsWords(starts: readonly PathEnd[], unit: LengthUnit): Wordings {
  const { least, most } = spanOf(starts.map(({ at }) => at));
  const from = `${between(least, most, unit)} from the root`;
  return starts.length === 1
    ? [`starts on the flexure, ${from}`, 'starts on the flexure', 'starts here']
    : [`${starts.length} starts on the flexure, ${from}`, `${starts.length} starts on it`, `${starts.length} starts`];
}

export function stopsWords(stops: readonly PathEnd[], unit: LengthUnit): Wordings {
  const { least, most } = spanOf(stops.map(({ at }) => at));
  return stops.length === 1
    ? [`line ends here, ${figure(least, unit)} from the root`, 'line ends here', 'ends here']
    : [`${stops.length} lines end here, ${between(least, most, unit)} from the root`, `${stops.length} lines end here`];
}

/** Whether an open place goes from end to end of the run. */
const isAllAlong = ({ from, to }: OpenPlace, length: Mm) => to - from > 0.95 * length;

/** “gap, 0.40 long”; “0.16 open all along”; “no line for 0.52”. */
export function openWords(open: readonly OpenPlace[], length: Mm, unit: LengthUnit): Wordings {
  const [first] = open;
  if (!first) return [];
  const { least, most } = spanOf(open.map(({ from, to }) => to - from));
  if (first.kind === 'along')
    return open.length === 1
      ? [`no line for ${figure(most, unit)}`, 'no line']
      : [`no line in ${open.length} places, ${between(least, most, unit)} long`, `no line, ${open.length} places`];
  const whole = open.filter((one) => isAllAlong(one, length));
  if (whole.length > 0) {
    const wide = spanOf(whole.map(({ width }) => width));
    return [`${between(wide.least, wide.most, unit)} open all along`, 'open all along'];
  }
  return open.length === 1
    ? [`gap, ${figure(most, unit)} long`, 'gap']
    : [`${open.length} gaps, ${between(least, most, unit)} long`, `${open.length} gaps`];
}

/** The dimension across: of a crease its depth. */
export function acrossText(thickness: Mm, isDeep: boolean, unit: LengthUnit): string {
  return `${figure(thickness, unit)} ${isDeep ? 'deep' : 'laid'}`;
}

export function alongText(length: Mm, isCurved: boolean, unit: LengthUnit): string {
  return isCurved ? `${figure(length, unit)} along the run` : figure(length, unit);
}

/** “2 lines”, “2 to 3 lines”, “nothing”. */
function linesSaid({ least, most }: Span): string {
  return least === most ? counted(most, 'line') : `${least} to ${most} lines`;
}

/** All that Fig. 1 shows, in one sentence: of how many layers, and how many whole lines end inside. */
export function layerLabel(layer: LayerLaid, count: number, stops: number, unit: LengthUnit): string {
  const { lines, widths, open, starts, thickness } = layer;
  const said = [
    lines.most === 0 ? 'nothing is laid across' : `${linesSaid(lines)} across`,
    ...(widths ? [`${between(widths.least, widths.most, unit)}${unitAfter(unit)} wide`] : []),
    ...(thickness > 0 ? [`${figure(thickness, unit)}${unitAfter(unit)} from side to side`] : []),
    counted(open.length, 'open place'),
    `${counted(starts.length, 'start')} on the flexure`,
    `${counted(stops, 'whole line')} that end${stops === 1 ? 's' : ''} inside`,
  ];
  return `Layer ${layer.layer} of ${count} from above: ${said.join(', ')}.`;
}

export function wantedWords(each: Mm, unit: LengthUnit): Wordings {
  return [`wanted ${figure(each, unit)}; shade ±10 %`, `wanted ${figure(each, unit)}`];
}

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth'];

/** “thin third line”; “no third line” is not said. */
export function thinLineWord(count: number): string {
  return `thin ${ORDINALS[count] ?? 'extra'} line`;
}

export function outerWord(count: number): string {
  return count === 1 ? 'the one line' : 'two outer lines';
}

export function innerWord(count: number): string {
  return count === 1 ? 'inner line' : `${count} inner lines`;
}

/** How lines are told apart where there is no room for letters beside them. */
export function widthsKey(hasThin: boolean, hasInner: boolean): string {
  const key = [
    'light: outer lines',
    ...(hasInner ? ['medium: inner lines'] : []),
    ...(hasThin ? ['heavy: thin line'] : []),
  ];
  return key.join('; ');
}

export function widthsLabel({ layer, widths, tracks }: LayerLaid, unit: LengthUnit): string {
  if (!widths) return `Layer ${layer}: nothing is laid, so no widths are drawn.`;
  const said = `${between(widths.least, widths.most, unit)}${unitAfter(unit)}`;
  return `Width of ${counted(tracks.length, 'line')} along the flexure on layer ${layer}: ${said}.`;
}

/** “wants 0.84”. */
export function wantsText(thickness: Mm, unit: LengthUnit): string {
  return `wants ${figure(thickness, unit)}`;
}

/** “layer 11 of 30, top at 2.20 mm”. */
export function layerAt({ layer, z }: LayerLaid, count: number, unit: LengthUnit): string {
  return `layer ${layer} of ${count}, top at ${figure(z, unit)}${unitAfter(unit)}`;
}

/** What is said of a layer as the slider comes to it. */
export function layerValueText(layer: LayerLaid, numbers: readonly number[], unit: LengthUnit): string {
  const { lines, starts, z } = layer;
  const said = [
    `layer ${layer.layer}`,
    `${figure(z, unit)}${unitAfter(unit)}`,
    linesSaid(lines),
    ...(starts.length > 0 ? [`${counted(starts.length, 'start')} on it`] : []),
    ...(numbers.length > 0 ? [`finding${numbers.length === 1 ? '' : 's'} ${listed(numbers.map(String))}`] : []),
  ];
  return said.join(', ');
}

export function staveLabel({ audit, wanted }: JudgedPlace, rows: number): string {
  const count = audit.layers.length;
  const joined = rows < count ? `, alike ones joined to ${counted(rows, 'row')}` : '';
  const what = wanted.countOf === 'lines' ? `${counted(wanted.count, 'line')} wanted` : 'lines beside one another';
  return `${counted(count, 'layer')} of the section${joined}: beads as cut, lines across, widths and starts; ${what}.`;
}

export function planLabel(places: number, passed: number, z: Mm, unit: LengthUnit): string {
  return `The layer at ${figure(z, unit)}${unitAfter(unit)} from above: ${counted(places, 'thin section')} numbered, ${passed} passed over.`;
}

export function placeKeyLabel(number: number): string {
  return `Thin section ${number}: look at it`;
}

export const PLAN_BOX = {
  aid: 'drag from root to root to draw a box',
  noDrag: 'dashed: passed over',
} as const;

/** “12.00 × 1.00”, beside a box while it is dragged out. */
export function boxSize(length: Mm, thickness: Mm, unit: LengthUnit): string {
  return `${figure(length, unit)} × ${figure(thickness, unit)}`;
}
