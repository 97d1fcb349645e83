import { describe, expect, it } from 'vitest';
import { traitOf } from '../../../src/core/material/compare.ts';
import { wholeRow } from '../../../src/core/material/wholeRow.ts';
import { filament } from '../../support/filament.ts';

const ROW = wholeRow(filament('petg'));

function keptWith(figures: { readonly low?: number; readonly high?: number }) {
  const stressLossDay = {
    ...figures,
    typical: 30,
    unit: '%',
    direction: 'any',
    provenance: { kind: 'memory' },
  } as const;
  return traitOf({ ...ROW, properties: { ...ROW.properties, stressLossDay } }, 'kept');
}

describe('what is kept of a push after a day', () => {
  it('is what is not lost, and its low what is left of the most that is lost', () => {
    expect(keptWith({ low: 20, high: 45 })).toMatchObject({ typical: 70, low: 55, high: 80 });
  });

  it('of a row that gives one end alone has the other', () => {
    expect(keptWith({ low: 20 })).toMatchObject({ typical: 70, high: 80 });
    expect(keptWith({ low: 20 })).not.toHaveProperty('low');
    expect(keptWith({ high: 45 })).toMatchObject({ typical: 70, low: 55 });
    expect(keptWith({ high: 45 })).not.toHaveProperty('high');
  });
});
