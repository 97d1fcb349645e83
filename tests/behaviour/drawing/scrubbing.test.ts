import { describe, expect, it } from 'vitest';
import { radians } from '../../../src/core/units.ts';
import { draftingScale } from '../../../src/ui/drawing/draftingScale.ts';
import { handlesOf, settled } from '../../../src/ui/drawing/handles.ts';
import { strainColour } from '../../../src/ui/drawing/ramp.ts';
import { NOMINAL_PX_PER_MM, scaleText } from '../../../src/ui/drawing/sheet.ts';
import { throughTravel, TRAVEL_TIME } from '../../../src/ui/drawing/travel.ts';
import { plausiblePxPerMm } from '../../../src/ui/drawing/usePxPerMm.ts';
import { expectClose } from '../../support/close.ts';
import { laidOut } from '../../support/drawings.ts';
import { changed, LEAF } from '../../support/joints.ts';

describe('the drafting scale', () => {
  it.each([
    [5, ['0°', '1', '2', '3', '4', '5°']],
    [35, ['0°', '5', '10', '15', '20', '25', '30', '35°']],
    [90, ['0°', '15', '30', '45', '60', '75', '90°']],
    [35.5, ['0°', '5', '10', '15', '20', '25', '30', '35.5°']],
  ] as const)('over %d° has figures that do not run into each other', (full, figures) => {
    const scale = draftingScale(radians(full), 450);
    expect(scale.figures.map(({ text }) => text)).toEqual(figures);
  });

  it('has a tick for each degree and one for the end', () => {
    expect(draftingScale(radians(35), 450).ticks.match(/M/gu)).toHaveLength(37);
  });

  it('has fewer ticks where they would run together', () => {
    expect(draftingScale(radians(180), 200).ticks.match(/M/gu)?.length).toBeLessThan(60);
  });
});

describe('moving it', () => {
  it('goes there and back once', () => {
    expect(throughTravel(0)).toBe(0);
    expectClose(throughTravel(TRAVEL_TIME / 2), 1, { abs: 1e-12, because: 'round-off of the cosine' });
    expectClose(throughTravel(TRAVEL_TIME), 0, { abs: 1e-12, because: 'round-off of the cosine' });
    expectClose(throughTravel(TRAVEL_TIME / 4), 0.5, { abs: 1e-12, because: 'round-off of the cosine' });
  });
});

describe('the ramp', () => {
  const stops = { repeated: 0.01, yield: 0.03, full: 0.048 };

  it('meets its inks at the limits of the filament', () => {
    expect(strainColour(0, stops)).toBe('var(--r0)');
    expect(strainColour(0.01, stops)).toBe('color-mix(in srgb-linear, var(--r2) 0.0%, var(--r1))');
    expect(strainColour(0.03, stops)).toBe('color-mix(in srgb-linear, var(--r3) 0.0%, var(--r2))');
    expect(strainColour(0.2, stops)).toBe('var(--r3)');
  });
});

describe('px for a true millimetre', () => {
  it.each([null, '', 'wide', '0', '-3', '900', 'NaN', '1e999'])('takes no harm from %s in the store', (value) => {
    expect(plausiblePxPerMm(value)).toBe(NOMINAL_PX_PER_MM);
  });

  it('takes what was measured', () => {
    expect(plausiblePxPerMm('5.12')).toBe(5.12);
  });
});

describe('handles', () => {
  const { a: _, ...layout } = laidOut(LEAF, 797);
  const specs = handlesOf(laidOut(LEAF, 797));
  const [length, count, fillet] = specs;

  it('are length, lines and fillet, each with its unit in words', () => {
    expect(specs.map(({ parameter, value, say }) => [parameter, say(value)])).toEqual([
      ['length', '12.00\u00a0mm'],
      ['lines', '2 lines'],
      ['fillet', '0.80\u00a0mm'],
    ]);
  });

  it('follow the pointer: a millimetre of the drawing is a millimetre of the leaf', () => {
    expect((length?.perPx.x ?? 0) * layout.sheet.pxPerMm).toBeCloseTo(1, 9);
    // Half a line on each face is one line more.
    expect((count?.perPx.y ?? 0) * layout.sheet.pxPerMm * 0.21).toBeCloseTo(1, 9);
  });

  it('end before the pad would be too thin: at most five lines, and a fillet of 1.5 mm', () => {
    // (4.00 − 0.84)/2 = 1.58 of fillet, (4.00 − 2·0.80)/0.42 = 5.7 lines
    expect(count?.max).toBe(5);
    expect(fillet?.max).toBe(1.5);
  });

  it('have none for lines where the thickness was measured', () => {
    const measured = handlesOf(laidOut(changed(LEAF, { measuredThickness: 0.8 }), 797));
    expect(measured.map(({ parameter }) => parameter)).toEqual(['length', 'fillet']);
  });

  it('settle on their grid and between their ends', () => {
    expect(settled({ min: 0.5, max: 60 }, 12.34, 0.5)).toBe(12.5);
    expect(settled({ min: 0.5, max: 60 }, -4, 0.5)).toBe(0.5);
    expect(settled({ min: 0, max: 1.5 }, 0.30000000000000004, 0.1)).toBe(0.3);
  });
});

describe('scales', () => {
  it('are said the usual way round', () => {
    expect([20, 1, 0.5, 0.2].map(scaleText)).toEqual(['20 : 1', '1 : 1', '1 : 2', '1 : 5']);
  });

  it('are the largest that fits', () => {
    expect(laidOut(LEAF, 797).sheet.scale).toBe(10);
    expect(laidOut(LEAF, 328).sheet.scale).toBe(5);
    expect(laidOut(changed(LEAF, { sizes: { length: 60 } }), 797).sheet.scale).toBe(2);
    // 206 mm with pads: 390 px at 1 : 2, 156 px at 1 : 5.
    expect(laidOut(changed(LEAF, { sizes: { length: 200 } }), 797).sheet.scale).toBe(1 / 2);
    expect(laidOut(changed(LEAF, { sizes: { length: 200 } }), 328).sheet.scale).toBe(1 / 5);
  });
});
