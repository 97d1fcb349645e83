import { describe, expect, it } from 'vitest';
import { checkProfile, layableWidths, PROFILE_LIMITS } from '../../../src/core/print/checkProfile.ts';
import type { PrintProfile } from '../../../src/core/print/profile.ts';
import { LEAF } from '../../support/joints.ts';

const USUAL = LEAF.profile;
const refused = (change: Partial<PrintProfile>) => checkProfile({ ...USUAL, ...change }).problems;
const noted = (change: Partial<PrintProfile>) => checkProfile({ ...USUAL, ...change }).notes;

describe('a print profile', () => {
  it('of a usual printer is neither refused nor noted', () => {
    expect(checkProfile(USUAL)).toEqual({ problems: [], notes: [] });
  });

  it.each([
    { change: { nozzle: Number.NaN }, code: 'not-a-number', field: 'profile.nozzle' },
    { change: { lineWidth: Number.POSITIVE_INFINITY }, code: 'not-a-number', field: 'profile.lineWidth' },
    { change: { nozzle: 0.09 }, code: 'below-minimum', field: 'profile.nozzle' },
    { change: { nozzle: 1.6 }, code: 'above-maximum', field: 'profile.nozzle' },
    { change: { layerHeight: 0 }, code: 'below-minimum', field: 'profile.layerHeight' },
    { change: { layerHeight: -0.2 }, code: 'below-minimum', field: 'profile.layerHeight' },
    { change: { firstLayerHeight: 0.04 }, code: 'below-minimum', field: 'profile.firstLayerHeight' },
    { change: { lineWidth: 0.19, layerHeight: 0.1 }, code: 'below-minimum', field: 'profile.lineWidth' },
    { change: { lineWidth: 1.01 }, code: 'above-maximum', field: 'profile.lineWidth' },
    { change: { layerHeight: 0.41 }, code: 'above-maximum', field: 'profile.layerHeight' },
    { change: { firstLayerHeight: 0.41 }, code: 'above-maximum', field: 'profile.firstLayerHeight' },
    { change: { lineWidth: 0.25, layerHeight: 0.26 }, code: 'layer-above-line-width', field: 'profile.layerHeight' },
  ])('is refused for $change with $code', ({ change, code, field }) => {
    expect(refused(change)).toEqual([expect.objectContaining({ code, field })]);
    expect(noted(change)).toEqual([]);
  });

  it.each([
    { change: { lineWidth: 0.35 }, code: 'line-narrow-for-nozzle', limit: 0.36 },
    { change: { lineWidth: 0.65 }, code: 'line-wide-for-nozzle', limit: 0.64 },
    { change: { layerHeight: 0.33, firstLayerHeight: 0.33 }, code: 'layer-above-nozzle-share', limit: 0.32 },
    { change: { firstLayerHeight: 0.19 }, code: 'first-layer-differs', limit: 0.2 },
    { change: { layerHeight: 0.1, firstLayerHeight: 0.21 }, code: 'first-layer-differs', limit: 0.1 },
  ])('is noted for $change with $code', ({ change, code, limit }) => {
    expect(refused(change)).toEqual([]);
    const [note, ...more] = noted(change);
    expect(more).toEqual([]);
    expect(note?.code).toBe(code);
    expect(note?.limit).toBeCloseTo(limit, 9);
  });

  it('right on a limit that is a product of decimals is neither refused nor noted', () => {
    expect(checkProfile({ ...USUAL, lineWidth: 0.36 })).toEqual({ problems: [], notes: [] });
    expect(checkProfile({ ...USUAL, lineWidth: 0.64 })).toEqual({ problems: [], notes: [] });
    expect(checkProfile({ ...USUAL, layerHeight: 0.32, firstLayerHeight: 0.64 / 2 })).toEqual({
      problems: [],
      notes: [],
    });
    expect(refused({ lineWidth: 1.0 })).toEqual([]);
    expect(refused({ layerHeight: 0.2, lineWidth: 0.2 })).toEqual([]);
  });

  it('says every length that is wrong at once', () => {
    const fields = refused({ nozzle: 0, lineWidth: Number.NaN, layerHeight: 9, firstLayerHeight: 9 }).map(
      ({ field }) => field,
    );
    expect(fields).toEqual(['profile.nozzle', 'profile.lineWidth', 'profile.layerHeight', 'profile.firstLayerHeight']);
  });

  it('names the number given, the limit and a remedy, without a full stop', () => {
    for (const { message } of [...refused({ lineWidth: 0.19, layerHeight: 0.1 }), ...refused({ layerHeight: 0.41 })]) {
      expect(message).toMatch(/\d.* mm .*\d.* mm.*;/);
      expect(message.endsWith('.')).toBe(false);
    }
  });
});

describe('limits of the profile', () => {
  it('reach as far as the widest and narrowest line of the nozzles they allow', () => {
    expect(PROFILE_LIMITS.lineWidth.min).toBe(layableWidths(PROFILE_LIMITS.nozzle.min).hard.min);
    expect(PROFILE_LIMITS.lineWidth.max).toBe(layableWidths(PROFILE_LIMITS.nozzle.max).hard.max);
  });

  it('each have room, a step and a reason', () => {
    for (const { min, max, step, because } of Object.values(PROFILE_LIMITS)) {
      expect(max).toBeGreaterThan(min);
      expect(step).toBeLessThan(max - min);
      expect(because).not.toBe('');
    }
  });
});
