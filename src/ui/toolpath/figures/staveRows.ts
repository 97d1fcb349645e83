/** Layers of a section as rows of the stave: one each, or alike neighbours joined where there are very many. */
import type { LayerLaid, PlaceAudit, Span } from '../../../core/inspect/toolpath/audit.ts';
import type { LaidFinding } from '../../../core/inspect/toolpath/judgedPlace.ts';
import type { Mm } from '../../../core/units.ts';
import { cutPlace, linesAt, type CutLine } from './trackAt.ts';

export interface StaveRow {
  /** Layers that it stands for. */
  readonly first: number;
  readonly last: number;
  /** From where to where they stand [mm]. */
  readonly bottom: Mm;
  readonly top: Mm;
  /** Height of one of them [mm]. */
  readonly height: Mm;
  /** As cut in the layer in their middle. */
  readonly beads: readonly CutLine[];
  readonly lines: Span;
  readonly widths: Span | undefined;
  readonly starts: number;
}

/** Numbers of the findings that hold in a layer. */
export function findingsIn(layer: number, numbered: ReadonlyMap<LaidFinding, number>): readonly number[] {
  const isIn = ({ layers }: LaidFinding) => layers.some(([first, last]) => first <= layer && layer <= last);
  return [...numbered].flatMap(([finding, number]) => (isIn(finding) ? [number] : []));
}

/** From coarse to fine: what neighbours must have in common to be one row. */
type Likeness = (layer: LayerLaid) => string;

function likenesses(numbered: ReadonlyMap<LaidFinding, number>): readonly Likeness[] {
  const found: Likeness = ({ layer }) => findingsIn(layer, numbered).join(' ');
  const counted: Likeness = (layer) => [found(layer), layer.lines.least, layer.lines.most].join('|');
  const measured: Likeness = (layer) =>
    [counted(layer), layer.widths?.least.toFixed(2), layer.widths?.most.toFixed(2), layer.starts.length > 0].join('|');
  return [measured, counted, found];
}

function joinedSpan(spans: readonly Span[]): Span {
  return {
    least: Math.min(...spans.map(({ least }) => least)),
    most: Math.max(...spans.map(({ most }) => most)),
  };
}

function rowOf(layers: readonly LayerLaid[], at: Mm): StaveRow {
  const middle = layers[layers.length >> 1]!;
  const [first, last] = [layers[0]!, layers.at(-1)!];
  const widths = layers.flatMap((layer) => layer.widths ?? []);
  return {
    first: first.layer,
    last: last.layer,
    bottom: first.z - first.height,
    top: last.z,
    height: middle.height,
    beads: linesAt(middle, at),
    lines: joinedSpan(layers.map(({ lines }) => lines)),
    widths: widths.length > 0 ? joinedSpan(widths) : undefined,
    starts: layers.reduce((sum, { starts }) => sum + starts.length, 0),
  };
}

function joinedBy(layers: readonly LayerLaid[], likeness: Likeness): readonly (readonly LayerLaid[])[] {
  const runs: LayerLaid[][] = [];
  let before: string | undefined;
  for (const layer of layers) {
    const now = likeness(layer);
    if (now === before) runs.at(-1)!.push(layer);
    else runs.push([layer]);
    before = now;
  }
  return runs;
}

/** Neighbours in equal lots, where nothing else brings the rows down. */
function lots(layers: readonly LayerLaid[], most: number): readonly (readonly LayerLaid[])[] {
  const each = Math.ceil(layers.length / most);
  return Array.from({ length: Math.ceil(layers.length / each) }, (_, i) => layers.slice(each * i, each * (i + 1)));
}

/** A row a layer, from the bottom up. */
export function singleRows(audit: PlaceAudit): readonly StaveRow[] {
  const at = cutPlace(audit);
  return audit.layers.map((layer) => rowOf([layer], at));
}

/** No more than so many rows: what is joined has as much in common as that allows. */
export function joinedRows(
  audit: PlaceAudit,
  numbered: ReadonlyMap<LaidFinding, number>,
  most: number,
): readonly StaveRow[] {
  const { layers } = audit;
  const tried = likenesses(numbered).map((likeness) => joinedBy(layers, likeness));
  const runs = tried.find(({ length }) => length <= most) ?? lots(layers, most);
  return runs.map((run) => rowOf(run, cutPlace(audit)));
}
