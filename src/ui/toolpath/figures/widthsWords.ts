/** Lettering of Fig. 2, on paper that is clear of its curves [px]. */
import type { LayerLaid } from '../../../core/inspect/toolpath/audit.ts';
import { clearPaper } from '../../drawing/clearPaper.ts';
import { letteringWidth, type Label } from '../../drawing/lettering.ts';
import type { Room } from '../../drawing/room.ts';
import type { Linear } from '../../mesh/linear.ts';
import { innerWord, openWords, outerWord, thinLineWord, wantedWords } from '../../text/toolpathFigureText.ts';
import { placeLabel } from './placeWords.ts';
import { halfStep, lookedLength } from './trackAt.ts';
import type { WidthLine, WidthsAsked, WidthsPlan } from './widthsPlan.ts';

type Unlettered = Omit<WidthsPlan, 'labels'>;

/** From now on words keep off the axis and the curves. */
function inkCurves({ paper }: Room, { layer, audit }: WidthsAsked, { box }: Pick<Unlettered, 'box'>, y: Linear): void {
  paper.inkBox({ x: 0, y: 0, width: box.left + 2, height: box.bottom });
  const by = (box.right - box.left) / Math.max(audit.length, 1e-6);
  for (const { at, width } of layer.tracks)
    for (const [i, along] of at.entries()) {
      const step = Math.max(4, 2 * halfStep(at) * by);
      paper.inkBox({ x: box.left + along * by - step / 2, y: y(width[i]!) - 2, width: step, height: 4 });
    }
}

export function widthsWords(asked: WidthsAsked, plan: Unlettered, y: Linear): readonly Label[] {
  const { layer, audit, wanted, unit } = asked;
  const over = { x: 0, y: 0, width: plan.width, height: plan.height };
  const room: Room = { paper: clearPaper(over), words: clearPaper(over), figures: [] };
  inkCurves(room, asked, plan, y);
  for (const hatch of plan.open) room.paper.inkBox(hatch);
  const found: Label[] = [];
  const place = (labels: readonly Label[]) => {
    const label = placeLabel(room, labels);
    if (label) found.push(label);
    return label !== undefined;
  };
  for (const kind of ['along', 'between'] as const) {
    const open = layer.open.filter((one) => one.kind === kind);
    openWords(open, lookedLength(audit), unit).some((text) => place(besideOpen(text, plan, layer, kind)));
  }
  if (plan.wanted) wantedWords(wanted.each, unit).some((text) => place(overBand(text, plan)));
  if (plan.isNamed)
    for (const name of names(asked, plan, y))
      place([0, 14, -14, 28, -28].map((down) => ({ ...name, y: name.y + down })));
  return found;
}

/** Beside the hatches of one kind, high up first. */
function besideOpen(
  text: string,
  { open, box }: Unlettered,
  layer: LayerLaid,
  kind: 'along' | 'between',
): readonly Label[] {
  const label = { text, tone: 'fault', size: 12 } as const;
  const boxes = open.filter((_, i) => layer.open[i]?.kind === kind).toSorted((a, b) => b.width - a.width);
  const rows = Array.from({ length: 8 }, (_, i) => box.top + 12 + 14 * i).filter((row) => row < box.bottom - 4);
  return boxes.flatMap(({ x, width }) =>
    rows.flatMap((row): readonly Label[] => [
      { ...label, x: x - 10, y: row, anchor: 'end' },
      { ...label, x: x + width + 10, y: row, anchor: 'start' },
      { ...label, x: x + width / 2, y: row, anchor: 'middle' },
    ]),
  );
}

/** What is wanted, over the band at its right end, else wherever it is clear. */
function overBand(text: string, { wanted, box }: Unlettered): readonly Label[] {
  if (!wanted) return [];
  const { band } = wanted;
  const label = { text, tone: 'pencil', size: 12 } as const;
  const width = letteringWidth(text, 12);
  if (width > box.right - box.left - 8) {
    const beside = [band.y - 2, box.top + 8].map((row): Label => ({
      ...label,
      x: box.right + 8,
      y: row,
      anchor: 'start',
    }));
    return beside;
  }
  const rows = [band.y - 5, band.y - 12, band.y + band.height + 14, band.y + band.height + 28];
  const middle = (box.left + box.right) / 2;
  return rows.flatMap((row): readonly Label[] => [
    { ...label, x: box.right - 4, y: row, anchor: 'end' },
    { ...label, x: box.left + 6, y: row, anchor: 'start' },
    { ...label, x: middle, y: row, anchor: 'middle' },
    { ...label, x: middle + width, y: row, anchor: 'middle' },
  ]);
}

/** Names of the lines at the right side, each at the height at which it ends. */
function names({ layer, wanted }: WidthsAsked, { curves, box, kinds }: Unlettered, y: Linear): readonly Label[] {
  const lastOf = (isIt: (kind: WidthLine) => boolean) => {
    const own = layer.tracks.filter((_, i) => isIt(curves[i]!.kind));
    const last = own.toSorted((a, b) => b.at.at(-1)! - a.at.at(-1)!)[0];
    return last && { y: y(last.width.at(-1)!), count: own.length };
  };
  const outer = lastOf((kind) => kind === 'outer' || kind === 'outer-second');
  const inner = lastOf((kind) => kind === 'inner');
  const thin = lastOf((kind) => kind === 'thin');
  const whole = wanted.countOf === 'lines' ? wanted.count : 0;
  const asked = [
    ...(outer ? [{ y: outer.y, text: outerWord(kinds.has('outer') && kinds.has('outer-second') ? 2 : 1) }] : []),
    ...(inner ? [{ y: inner.y, text: innerWord(inner.count) }] : []),
    ...(thin ? [{ y: thin.y, text: thinLineWord(whole) }] : []),
  ];
  return asked.map(({ y: at, text }): Label => ({
    text,
    x: box.right + 8,
    y: Math.max(at + 4, box.top + 8),
    anchor: 'start',
    tone: 'ink',
    size: 12,
  }));
}
