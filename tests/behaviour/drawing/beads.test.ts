/** What is drawn of the plastic: lines, layers and what goes wrong between them. Figures worked out by hand. */
import { describe, expect, it } from 'vitest';
import type { Joint } from '../../../src/core/design/joint.ts';
import { contoursOf } from '../../../src/ui/drawing/contours.ts';
import { figureOf, sparePad } from '../../../src/ui/drawing/figure.ts';
import { landingOf } from '../../../src/ui/drawing/landing.ts';
import { layersAcross, layersAlong } from '../../../src/ui/drawing/layers.ts';
import { sectionPlan } from '../../../src/ui/drawing/sectionPlan.ts';
import { padsMeetAt } from '../../../src/ui/drawing/padsMeet.ts';
import { radians } from '../../../src/core/units.ts';
import { expectClose } from '../../support/close.ts';
import { assessed, changed, CREASE, LEAF } from '../../support/joints.ts';

const ROUND_OFF = { abs: 1e-9, because: 'round-off only' } as const;

describe('lines in a leaf', () => {
  it('lie side by side and fill it when it is whole', () => {
    const { laid, faults } = landingOf(assessed(changed(LEAF, { sizes: { lines: 3 } })));
    expect(faults).toEqual([]);
    expect(laid).toHaveLength(3);
    for (const [i, { from, to }] of laid.entries()) {
      expectClose(from, -0.63 + 0.42 * i, ROUND_OFF);
      expectClose(to, -0.21 + 0.42 * i, ROUND_OFF);
    }
  });

  it('leave a gap on both sides of one line in 0.63 mm', () => {
    const { laid, faults } = landingOf(assessed(changed(LEAF, { measuredThickness: 0.63 })));
    expect(laid).toHaveLength(1);
    expect(faults.map(({ kind }) => kind)).toEqual(['gap', 'gap']);
    for (const { from, to } of faults) expectClose(to - from, 0.105, ROUND_OFF);
  });

  it('squeeze each other by what is missing in 0.75 mm', () => {
    const [fault, ...more] = landingOf(assessed(changed(LEAF, { measuredThickness: 0.75 }))).faults;
    expect(more).toEqual([]);
    expect(fault?.kind).toBe('squeeze');
    expectClose((fault?.to ?? 0) - (fault?.from ?? 0), 0.09, ROUND_OFF);
  });

  it('are not laid in less than most of a line', () => {
    const { laid, faults } = landingOf(assessed(changed(LEAF, { measuredThickness: 0.3 })));
    expect(laid).toEqual([]);
    expect(faults).toHaveLength(1);
  });

  it('overlap by no fault when the fit rule wants them to', () => {
    const { faults } = landingOf(assessed(changed(LEAF, { profile: { fitRule: 'overlapped' } })));
    expect(faults).toEqual([]);
  });
});

describe('layers in a web', () => {
  it('rest on the plate and leave the gap above', () => {
    const a = assessed(changed(CREASE, { measuredThickness: 0.5 }));
    const { laid, faults } = landingOf(a);
    expect(laid).toHaveLength(2);
    expectClose(laid[0]?.from ?? 0, -0.25, ROUND_OFF);
    expect(faults).toHaveLength(1);
    expectClose(faults[0]?.from ?? 0, 0.15, ROUND_OFF);
    expectClose(faults[0]?.to ?? 0, 0.25, ROUND_OFF);
  });

  it('run through the web from pad to pad, and stop at its edges above it', () => {
    const a = assessed(CREASE);
    const figure = figureOf(a, 0);
    const { lines } = layersAlong(a, figure, landingOf(a));
    // 2 mm of pad are 10 layers: 2 through the web, 8 in two pieces.
    expect(lines).toHaveLength(2 + 8 * 2);
    const [lowest] = lines;
    expectClose(lowest?.left ?? 0, figure.box.left, ROUND_OFF);
    expectClose(lowest?.right ?? 0, figure.box.right, ROUND_OFF);
  });

  it('show two lines in every layer of a leaf that stands on its end', () => {
    const a = assessed(changed(LEAF, { profile: { lying: 'upright' } }));
    const { lines } = layersAcross(a, figureOf(a, 0), landingOf(a));
    const inLeaf = lines.filter(({ left, right }) => left > 0 && right < 12);
    const layers = new Set(inLeaf.map(({ left }) => left.toFixed(6)));
    expect(inLeaf).toHaveLength(2 * layers.size);
    expect(layers.size).toBeGreaterThan(55);
  });
});

/** Which runs go round something, and which are straight. */
const wayOf = (runs: readonly (readonly unknown[])[]) => runs.map((run) => run.length > 2);

describe('contours of a leaf', () => {
  it('are one closed pass for two lines, open at the far face of the fixed pad by a line and a tenth', () => {
    const a = assessed(LEAF);
    const figure = figureOf(a, 0);
    const { runs, starts } = contoursOf(a, figure);
    expect(runs).toHaveLength(1);
    expect(starts).toHaveLength(1);
    const [first, last] = [runs[0]?.[0], runs[0]?.at(-1)];
    expectClose(Math.abs((first?.y ?? 0) - (last?.y ?? 0)), 0.52, ROUND_OFF);
    expectClose(first?.x ?? 0, figure.box.left + 0.21, ROUND_OFF);
  });

  it('are joined by a middle line that runs into both pads for three lines', () => {
    const a = assessed(changed(LEAF, { sizes: { lines: 3 } }));
    const { runs } = contoursOf(a, figureOf(a, 0));
    expect(wayOf(runs)).toEqual([true, false]);
    const [from, to] = runs[1] ?? [];
    expect(from?.x).toBeLessThan(-0.42);
    expect(to?.x).toBeGreaterThan(12.42);
  });

  it('go round each pad alone for one line', () => {
    const a = assessed(changed(LEAF, { sizes: { lines: 1 } }));
    const { runs, starts } = contoursOf(a, figureOf(a, 0));
    expect(wayOf(runs)).toEqual([true, true, false]);
    expect(starts).toHaveLength(2);
    expect(Math.max(...(runs[0] ?? []).map(({ x }) => x))).toBeLessThan(0.01);
  });

  it('still fit in pads that are drawn as short as they may be', () => {
    const a = assessed(changed(LEAF, { sizes: { lines: 4 } }));
    const whole = figureOf(a, 0);
    const short = figureOf(a, sparePad(whole));
    expect(contoursOf(a, short).runs).toHaveLength(2);
    expect(short.box.left).toBeGreaterThan(whole.box.left);
  });
});

function sectionOf(joint: Joint) {
  const a = assessed(joint);
  const sheet = { pxPerMm: 37.8, small: false };
  return sectionPlan({
    a,
    laid: figureOf(a, 0).laid,
    landing: landingOf(a),
    sheet,
    unit: 'mm',
    name: 'A–A',
    fault: undefined,
  });
}

describe('the section', () => {
  it('shows every bead: 30 layers of two lines', () => {
    const { beads, breaks, marks } = sectionOf(LEAF);
    expect(beads).toHaveLength(60);
    expect(breaks).toEqual([]);
    expect(marks.labels.map(({ text }) => text)).toEqual(
      expect.arrayContaining(['A–A', '6.00', '30 layers', 'of 0.20']),
    );
  });

  it('shows no more beads than can be told apart', () => {
    const a = assessed(changed(LEAF, { sizes: { depth: 300 } }));
    const sheet = { pxPerMm: 7.6, small: false };
    const { beads } = sectionPlan({
      a,
      laid: 'along',
      landing: landingOf(a),
      sheet,
      unit: 'mm',
      name: 'A–A',
      fault: undefined,
    });
    expect(beads).toHaveLength(4);
  });

  it('leaves out the middle of a deep one, but not of its figure', () => {
    const { beads, breaks, height, marks } = sectionOf(changed(LEAF, { sizes: { depth: 40 } }));
    expect(beads.length).toBeLessThan(400);
    expect(breaks).toHaveLength(2);
    expect(height).toBeLessThan(300);
    expect(marks.labels.map(({ text }) => text)).toContain('40.00');
  });
});

describe('pads of a crease folded flat', () => {
  /**
   * At 180° the webs lie 2L/π apart and each pad stands 2 − 0.2 mm above its middle: pads meet unless
   * L > π·1.8 = 5.65 mm.
   */
  it.each([
    [5.5, true],
    [6, false],
  ] as const)('over %f mm meet: %s', (length, isMet) => {
    const a = assessed(changed(CREASE, { sizes: { length }, movement: { amount: radians(180) } }));
    expect(padsMeetAt(figureOf(a, 0)) !== undefined).toBe(isMet);
  });
});
