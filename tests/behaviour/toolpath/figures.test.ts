import { describe, expect, it } from 'vitest';
import { pathsIn, pieceWidths } from '../../../src/core/inspect/toolpath/laidLayers.ts';
import { grown, labelBox, overlap, type Box, type Label } from '../../../src/ui/drawing/lettering.ts';
import { densified } from '../../../src/ui/drawing/polygon.ts';
import { FRAME, NOMINAL_PX_PER_MM } from '../../../src/ui/drawing/sheet.ts';
import { layerFigure, type LayerFigure } from '../../../src/ui/toolpath/figures/layerFigure.ts';
import { lengthwise } from '../../../src/ui/toolpath/figures/lengthwise.ts';
import { cutAt } from '../../../src/ui/toolpath/figures/trackAt.ts';
import { widthsPlan } from '../../../src/ui/toolpath/figures/widthsPlan.ts';
import { expectClose } from '../../support/close.ts';
import { LAID_SAMPLES, laidLeaf, sampleOf, type LaidSample } from '../../support/laidSamples.ts';

const WIDTHS = [328, 516, 797, 1400, 2500];
const SHOWN = [1, 2, 3, 4];

function drawn({ placed, judged, diameter }: LaidSample, layer: number, width: number) {
  const page = lengthwise(placed, width, NOMINAL_PX_PER_MM);
  const { place, audit, wanted } = judged;
  const laid = audit.layers[layer - 1]!;
  const paths = pathsIn(place, placed.near, layer);
  const each = wanted.countOf === 'lines' ? wanted.each : (laid.widths?.mean ?? 0);
  const figure = layerFigure({ place, audit, layer: laid, paths, diameter, each, unit: 'mm' }, page);
  const widths = widthsPlan({ layer: laid, audit, wanted, unit: 'mm' }, page);
  return { page, laid, figure, widths };
}

const isWithin = (inner: Box, outer: Box) =>
  inner.x >= outer.x &&
  inner.y >= outer.y &&
  inner.x + inner.width <= outer.x + outer.width &&
  inner.y + inner.height <= outer.y + outer.height;

function overlapping(labels: readonly Label[]): readonly string[] {
  const boxes = labels.map(labelBox);
  return labels.flatMap((a, i) =>
    labels.slice(i + 1).flatMap((b, k) => (overlap(boxes[i]!, boxes[i + 1 + k]!) ? [`${a.text} / ${b.text}`] : [])),
  );
}

/** Words over which a bead, its width and all, comes. */
function overPlastic({ beads, marks, window }: LayerFigure): readonly string[] {
  const spots = beads.flatMap(({ strokes }) =>
    strokes.flatMap(({ points, width }) =>
      densified(points, width / 2).map((point) => grown({ ...point, width: 0, height: 0 }, 0.35 * width)),
    ),
  );
  const shown = spots.filter((spot) => isWithin(spot, window));
  return marks.labels.filter((label) => shown.some((spot) => overlap(spot, labelBox(label)))).map(({ text }) => text);
}

const paperOf = ({ sheet }: LayerFigure): Box => ({
  x: FRAME,
  y: sheet.top,
  width: sheet.width - FRAME,
  height: sheet.bottom - FRAME - sheet.top,
});

describe.each(Object.entries(LAID_SAMPLES))('Fig. 1 and Fig. 2 of %s', (_name, sample) => {
  const one = sample();
  const layers = SHOWN.filter((layer) => layer <= one.judged.audit.layers.length);
  const all = WIDTHS.flatMap((width) => layers.map((layer) => ({ width, layer, ...drawn(one, layer, width) })));

  it('letter nothing outside the paper', () => {
    for (const { figure, widths } of all) {
      for (const label of figure.marks.labels)
        expect(isWithin(labelBox(label), paperOf(figure)), label.text).toBe(true);
      const chart = { x: 0, y: 0, width: widths.width, height: widths.height };
      for (const label of widths.labels) expect(isWithin(labelBox(label), chart), label.text).toBe(true);
    }
  });

  it('never letter one word over another', () => {
    for (const { figure, widths, width, layer } of all) {
      expect(overlapping(figure.marks.labels), `Fig. 1, ${width} px, layer ${layer}`).toEqual([]);
      expect(overlapping(widths.labels), `Fig. 2, ${width} px, layer ${layer}`).toEqual([]);
    }
  });

  it('letter no word over what is laid', () => {
    for (const { figure, width, layer } of all) expect(overPlastic(figure), `${width} px, layer ${layer}`).toEqual([]);
  });

  it('ring only what is on the paper, and keep the section on it', () => {
    for (const { figure, page } of all) {
      for (const { x, y } of figure.rings) {
        expect(x).toBeGreaterThan(FRAME);
        expect(x).toBeLessThan(page.width);
        expect(y).toBeGreaterThan(figure.sheet.top);
        expect(y).toBeLessThan(figure.sheet.bottom - FRAME);
      }
      for (const { x } of page.frame.run) {
        const at = page.rootX + x * page.pxPerMm;
        expect(at).toBeGreaterThan(FRAME);
        expect(at).toBeLessThan(page.width);
      }
    }
  });

  it('keep every axis of the chart apart from the paper’s edges, its figures apart from one another', () => {
    for (const { widths } of all) {
      const { box, along } = widths;
      expect(box.left).toBeGreaterThanOrEqual(40);
      expect(box.right).toBeLessThanOrEqual(widths.width);
      for (const [i, { at, text }] of along.entries()) {
        const before = along[i - 1];
        if (before) expect(at - before.at, text).toBeGreaterThan(20);
      }
    }
  });
});

describe('what is drawn of a leaf with a third line', () => {
  const sample = laidLeaf(8);

  it('is as wide as the file lays it, and as the audit says', () => {
    const { page, laid, figure } = drawn(sample, 2, 797);
    for (const track of laid.tracks) {
      const cut = cutAt(track, 6)!;
      const bead = figure.beads.find(({ path }) => path === track.path)!;
      const widths = bead.strokes.map(({ width }) => width / page.pxPerMm);
      const nearest = widths.toSorted((a, b) => Math.abs(a - cut.width) - Math.abs(b - cut.width))[0]!;
      expectClose(nearest, cut.width, { abs: 5e-4, because: 'pieces whose widths differ by less are drawn as one' });
    }
    const thin = figure.beads.filter(({ strokes }) => strokes.some(({ width }) => width < 0.3 * page.pxPerMm));
    expectClose(thin[0]!.strokes[0]!.width / page.pxPerMm, 0.16, { rel: 1e-6, because: 'rounding' });
  });

  it('is drawn piece by piece where its width changes', () => {
    const { page, figure } = drawn(sample, 3, 797);
    const paths = pathsIn(sample.judged.place, sample.placed.near, 3);
    for (const { path, strokes } of figure.beads) {
      const laid = paths.find((one) => one.path === path)!;
      const widths = new Set(Array.from(pieceWidths(laid, 0.2, sample.diameter), (width) => width.toFixed(3)));
      expect(new Set(strokes.map(({ width }) => (width / page.pxPerMm).toFixed(3)))).toEqual(widths);
    }
  });

  it('says once each where it starts and what is open', () => {
    const { figure, laid } = drawn(sample, 3, 797);
    const texts = figure.marks.labels.map(({ text }) => text);
    expect(laid.starts.length).toBeGreaterThan(0);
    expect(texts.filter((text) => /start.* on the flexure/.test(text))).toHaveLength(1);
    // Its third line is broken: that is hatched, and its ends are not told as lines that end.
    expect(texts.filter((text) => / end/.test(text))).toEqual([]);
    expect(texts.filter((text) => /gap/.test(text))).toHaveLength(1);
    expect(figure.rings.filter(({ kind }) => kind === 'stop')).toEqual([]);
    expect(texts).toContain('12.00');
    expect(figure.rings.filter(({ kind }) => kind === 'start')).toHaveLength(laid.starts.length);
    expect(figure.squares.length).toBeGreaterThan(0);
  });

  it('says where whole lines end', () => {
    const cut = { points: [{ x: -4, y: 0.21 }, { x: 7, y: 0.21 }], widths: 0.42 }; // prettier-ignore
    const whole = { points: [{ x: -4, y: -0.21 }, { x: 16, y: -0.21 }], widths: 0.42 }; // prettier-ignore
    const layers = [0.2, 0.4].map((z) => ({ z, height: 0.2, beads: [whole, cut] }));
    const { place } = laidLeaf(2).placed;
    const ended = sampleOf({ toolpath: { diameter: 1.75, layers }, place });
    const { figure } = drawn(ended, 1, 797);
    expect(figure.rings.filter(({ kind }) => kind === 'stop')).toHaveLength(1);
    expect(figure.marks.labels.map(({ text }) => text)).toContain('line ends here, 7.00 from the root');
  });

  it('says that nothing is laid where a layer leaves it out', () => {
    const { figure } = drawn(sample, 4, 797);
    expect(figure.marks.labels.map(({ text }) => text)).toContain('nothing is laid across here');
  });

  it('says of what is open from end to end how wide it is', () => {
    const { figure, widths } = drawn(sample, 1, 797);
    expect(figure.marks.labels.map(({ text }) => text)).toContain('0.16 open all along');
    expect(widths.labels.map(({ text }) => text)).toContain('0.16 open all along');
  });

  it('does not move from layer to layer', () => {
    const sheets = [1, 2, 3, 4].map((layer) => drawn(sample, layer, 797).figure.sheet);
    for (const sheet of sheets) expect(sheet).toEqual(sheets[0]);
  });

  it('has the same places along both figures', () => {
    const { page, widths } = drawn(sample, 2, 797);
    expect(widths.isSameScale).toBe(true);
    expect(widths.box.left).toBe(page.rootX);
    expectClose(widths.box.right - widths.box.left, 12 * page.pxPerMm, { rel: 1e-9, because: 'rounding' });
    expect(widths.kinds).toEqual(new Set(['outer', 'outer-second', 'thin']));
  });

  it('has the scales of drawings, the largest that fits', () => {
    expect(WIDTHS.map((width) => drawn(sample, 1, width).page.scale)).toEqual([5, 5, 10, 10, 20]);
  });
});
