import { describe, expect, it } from 'vitest';
import { asSurrounded } from '../../../src/core/design/asSurrounded.ts';
import { A_ROOM, type Joint, type Surroundings } from '../../../src/core/design/joint.ts';
import { FILAMENTS } from '../../../src/core/material/filaments.ts';
import { expectClose } from '../../support/close.ts';
import { filament } from '../../support/filament.ts';
import { assessed, changed, LEAF } from '../../support/joints.ts';

const PRINTED = FILAMENTS.filter(({ printable }) => printable);
const EASY = changed(LEAF, { movement: { amount: 0.02, cycles: 10 } });

function used(id: string, surroundings: Partial<Surroundings>): Joint {
  return { ...changed(EASY, { profile: { filament: id } }), surroundings: { ...A_ROOM, ...surroundings } };
}

const codes = (joint: Joint) => assessed(joint).notes.map(({ code }) => code);
const ROUND_OFF = { rel: 1e-12, because: 'round-off' } as const;

describe('warmth', () => {
  it.each(PRINTED.map(({ id }) => id))('of a room is nothing to %s', (id) => {
    const a = assessed(used(id, {}));
    expect(a.warmth).toMatchObject({ temperatureC: 23, isBrittle: false, grade: 'pass' });
    expect(assessed(changed(EASY, { profile: { filament: id } })).verdict).toEqual(a.verdict);
  });

  it.each([
    ['pla', 60],
    ['petg', 71],
    ['abs', 107],
    ['pc', 147],
    // Crystals carry these past their glass transition.
    ['pp', 75],
    ['pa12', 110],
  ] as const)('makes %s doubtful 20 °C below the %s °C at which it softens, and fail 5 °C below', (id, softens) => {
    const grade = (temperatureC: number) => assessed(used(id, { temperatureC })).verdict;
    expect(assessed(used(id, {})).warmth.softensAt).toBe(softens);
    expect(grade(softens - 20.1).reason).not.toBe('warmth');
    expect(grade(softens - 20)).toMatchObject({ grade: 'caution', reason: 'warmth' });
    expect(grade(softens - 5.1)).toMatchObject({ grade: 'caution', reason: 'warmth' });
    expect(grade(softens - 5)).toMatchObject({ grade: 'fail', reason: 'warmth' });
    expect(codes(used(id, { temperatureC: softens - 5 }))).toContain('softens');
  });

  it('past 30 °C says that lives were counted at 23', () => {
    expect(codes(used('petg', { temperatureC: 30 }))).not.toContain('warmer-than-counted');
    expect(codes(used('petg', { temperatureC: 31 }))).toContain('warmer-than-counted');
  });

  it.each([
    ['pp', -10],
    ['tpu95a', -35],
  ] as const)('too little of it makes %s brittle, under %s °C', (id, glass) => {
    expect(assessed(used(id, { temperatureC: glass })).warmth.isBrittle).toBe(false);
    const cold = assessed(used(id, { temperatureC: glass - 1 }));
    expect(cold.verdict).toMatchObject({ grade: 'caution', reason: 'warmth' });
    expect(cold.notes.map(({ code }) => code)).toContain('brittle-cold');
  });

  it('lets frost be where a filament is glassy in a room too', () => {
    expect(assessed(used('pla', { temperatureC: -40 })).warmth).toMatchObject({ isBrittle: false, grade: 'pass' });
  });
});

const inDryAir = (id: 'pa6' | 'pa12' | 'petg') => asSurrounded(filament(id), used(id, { moisture: 'dry' }));

describe('dry air', () => {
  it('leaves all but nylon as it is', () => {
    expect(inDryAir('petg')).toBe(filament('petg'));
    expect(codes(used('petg', { moisture: 'dry' }))).not.toContain('nylon-dry');
    expect(asSurrounded(filament('pa6'), {})).toBe(filament('pa6'));
  });

  it('makes PA6 as stiff as its row says of dry, and yield at less strain', () => {
    const { properties: dry } = inDryAir('pa6');
    const { properties: damp } = filament('pa6');
    expect(dry.youngsModulus).toBe(damp.youngsModulusDry);
    expectClose(dry.flexuralModulus!.typical, (1100 * 2500) / 1200, ROUND_OFF);
    expect(dry.yieldStrain.typical).toBe(0.04);
    expectClose(dry.permissibleStrainSingle.typical, 0.028, ROUND_OFF);
    expectClose(dry.permissibleStrainRepeated.typical, 0.0168, ROUND_OFF);
    expect(dry.yieldStress).toBe(damp.yieldStress);
  });

  it('makes PA12, of which only the ratio is known, stiffer by it', () => {
    const { properties: dry } = inDryAir('pa12');
    expectClose(dry.youngsModulus.typical, 1300 / 0.85, ROUND_OFF);
    expectClose(dry.flexuralModulus!.typical, 1250 / 0.85, ROUND_OFF);
    expect(dry.yieldStrain).toBe(filament('pa12').properties.yieldStrain);
    expect(dry.youngsModulus.provenance).toMatchObject({ kind: 'computed', inputs: 'memory' });
  });

  it('leaves the life curve, and says that it is that of damp nylon', () => {
    const [damp, dry] = [assessed(used('pa6', {})), assessed(used('pa6', { moisture: 'dry' }))];
    expect(dry.life).toEqual(damp.life);
    expect(dry.effort.effort / damp.effort.effort).toBeGreaterThan(2);
    expect(dry.notes.map(({ code }) => code)).toContain('nylon-dry');
    expect(damp.notes.map(({ code }) => code)).not.toContain('nylon-dry');
  });
});
