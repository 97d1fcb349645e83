import { describe, expect, it } from 'vitest';
import { bendingModulus, soundness, strainFactorAcrossLayers, weakest } from '../../../src/core/material/choose.ts';
import { FILAMENTS } from '../../../src/core/material/filaments.ts';
import { findFilament } from '../../../src/core/material/shelf.ts';
import { doubtFactor } from '../../../src/core/material/row.ts';
import { filament } from '../../support/filament.ts';

describe('modulus to bend with', () => {
  it('is the flexural one along lines, or the design modulus of a rubbery filament', () => {
    expect(bendingModulus(filament('petg'), false)).toBe(filament('petg').properties.flexuralModulus);
    expect(bendingModulus(filament('tpu95a'), false)).toBe(filament('tpu95a').properties.designModulus);
  });

  it('is the one across layers where layers are pulled apart', () => {
    expect(bendingModulus(filament('petg'), true)).toBe(filament('petg').properties.youngsModulusAcrossLayers);
  });

  it.each(['tpu95a', 'pp-moulded'] as const)('%s has none across layers: the one along stands in and says so', (id) => {
    const along = bendingModulus(filament(id), false);
    const across = bendingModulus(filament(id), true);
    expect(across.typical).toBe(along.typical);
    expect(across.provenance).toBe(along.provenance);
    expect(across.note).toContain('stands in');
  });

  it('falls back on Young’s modulus', () => {
    const petg = filament('petg');
    const { flexuralModulus: _, ...properties } = petg.properties;
    expect(bendingModulus({ ...petg, properties }, false)).toBe(properties.youngsModulus);
  });
});

describe('strain factor across layers', () => {
  it.each(FILAMENTS.filter((row) => row.printable))('$id: the one of the row, below 1', (row) => {
    expect(strainFactorAcrossLayers(row)).toBe(row.properties.acrossLayersStrainFactor);
    expect(strainFactorAcrossLayers(row).typical).toBeLessThan(1);
  });

  it('is 1 for a moulded row, which has no layers', () => {
    const factor = strainFactorAcrossLayers(filament('pp-moulded'));
    expect(factor.typical).toBe(1);
    expect(factor.note).toBeTruthy();
  });
});

describe('how sound a number is', () => {
  it('is the weakest of what it rests on', () => {
    expect(weakest('published', 'memory', 'measured')).toBe('memory');
    expect(weakest('measured', 'published', 'computed')).toBe('published');
    expect(weakest('measured', 'computed')).toBe('measured');
    expect(weakest('computed', 'computed')).toBe('computed');
  });

  it('counts a computed number as from memory as soon as one input is', () => {
    expect(soundness({ kind: 'computed', from: '', inputs: 'memory' })).toBe('memory');
    expect(soundness({ kind: 'computed', from: '', inputs: 'published and memory' })).toBe('memory');
    expect(soundness({ kind: 'computed', from: '', inputs: 'published' })).toBe('computed');
    expect(soundness({ kind: 'published', source: 's5-allowable-strain', place: '' })).toBe('published');
  });
});

describe('doubt of a curve', () => {
  it.each([
    ['weak at both ends', 10],
    ['Weak', 10],
    ['fair as a statement of practice; not a material test', 10],
    ['fair (published, two laboratories)', 3],
  ])('%s: a factor of %s', (certainty, factor) => {
    expect(doubtFactor(certainty)).toBe(factor);
  });

  it('is ten for every row of today, none of which rests on a test of a bent print', () => {
    expect(FILAMENTS.map(({ life }) => life.doubtFactor)).toEqual(FILAMENTS.map(() => 10));
  });
});

it('a filament that is not in the table is not found', () => {
  expect(findFilament('wood')).toBeUndefined();
  expect(findFilament('petg')?.name).toBe('PETG');
});
