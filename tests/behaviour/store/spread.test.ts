import { describe, expect, it } from 'vitest';
import { USUAL_SPREAD } from '../../../src/core/print/spread.ts';
import type { PreferenceStorage } from '../../../src/store/preferences.ts';
import { keepSpread, readSpread } from '../../../src/store/spread.ts';

const USUAL = { spread: USUAL_SPREAD, samples: 4096, how: 'quasi-random' };

function storage(text?: string): PreferenceStorage & { readonly kept: Map<string, string> } {
  const kept = new Map(text === undefined ? [] : [['bendbook.spread', text]]);
  return { kept, getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => void kept.set(key, value) };
}

function refuses(): never {
  throw new Error('refused');
}

describe('how closely a printer keeps its sizes', () => {
  it('is kept, and read again', () => {
    const place = storage();
    const chosen = { spread: { lineWidth: 0.07, layers: 0.02, lengths: 0.2 }, samples: 1024, how: 'plain' } as const;
    keepSpread(place, chosen);
    expect(readSpread(place)).toEqual(chosen);
  });

  it.each([
    undefined,
    '',
    'not json',
    'null',
    '7',
    '[]',
    '{"spread":7}',
    '{"spread":{"lineWidth":5,"layers":0.01,"lengths":0.1}}',
    '{"spread":{"lineWidth":"0.04"},"samples":1000,"how":"otherwise"}',
  ])('is the usual where %s is kept', (text) => {
    expect(readSpread(storage(text))).toEqual(USUAL);
  });

  it('is the usual where storage is refused', () => {
    expect(readSpread({ getItem: refuses, setItem: refuses })).toEqual(USUAL);
    expect(() => keepSpread({ getItem: refuses, setItem: refuses }, readSpread(undefined))).not.toThrow();
  });
});
