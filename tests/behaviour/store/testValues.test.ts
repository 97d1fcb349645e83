import { describe, expect, it } from 'vitest';
import { PIECE_IDS } from '../../../src/core/coupons/piece.ts';
import { radians } from '../../../src/core/units.ts';
import {
  bendKey,
  bendOf,
  bentAs,
  DOINGS,
  FIRST_TESTS,
  lyingOf,
  readTestValues,
  withDoing,
  withPiece,
} from '../../../src/store/tests.ts';

const kept = (values: unknown) => ({ getItem: () => JSON.stringify(values), setItem: () => undefined });

describe('what is tested, as kept between visits', () => {
  it('comes back as it was kept', () => {
    const values = { ...FIRST_TESTS, piece: 'bar', doing: 'sag', grams: 50, counting: { cycles: 137, from: 't-1' } };
    expect(readTestValues(kept(values))).toEqual(values);
  });

  it('takes each value that can still be used and no other', () => {
    const read = readTestValues(
      kept({
        piece: 'anvil',
        strips: 2.5,
        radius: 8,
        turn: 'much',
        plate: { x: 1, y: 180 },
        lying: 'upright',
        counting: { cycles: -3 },
      }),
    );
    expect(read).toEqual({ ...FIRST_TESTS, radius: 8, lying: 'upright' });
  });

  it('keeps a pulled bar beside the piece that stood on the plate', () => {
    const values = {
      ...FIRST_TESTS,
      piece: 'bar',
      doing: 'pull',
      direction: 'across layers',
      barWidth: 6,
      barThickness: 3.2,
      knowsGauge: true,
      gaugeLength: 25,
      knowsSpeed: true,
      speed: 1,
    };
    expect(readTestValues(kept(values))).toEqual(values);
    const nonsense = {
      doing: 'pull',
      piece: 'anvil',
      direction: 'sideways',
      barWidth: -1,
      barThickness: 'thick',
      knowsGauge: 'yes',
      gaugeLength: 1e9,
      knowsSpeed: 1,
      speed: null,
    };
    expect(readTestValues(kept(nonsense))).toEqual({ ...FIRST_TESTS, doing: 'pull' });
  });

  it('begins anew where nothing can be read', () => {
    const broken = { getItem: () => '{', setItem: () => undefined };
    expect(readTestValues(broken)).toEqual(FIRST_TESTS);
    expect(readTestValues(undefined)).toEqual(FIRST_TESTS);
  });
});

describe('pieces and what is done with them', () => {
  it('fit each other, whichever of them is chosen', () => {
    for (const piece of PIECE_IDS) {
      for (const doing of ['flexes', 'mark', 'thickness', 'sag', 'hold'] as const) {
        const byPiece = withPiece({ doing }, piece);
        expect(byPiece.piece).toBe(piece);
        expect(DOINGS[piece]).toContain(byPiece.doing);
        const byDoing = withDoing({ piece }, doing);
        expect(byDoing.doing).toBe(doing);
        expect(DOINGS[byDoing.piece]).toContain(doing);
      }
    }
  });

  it('let a bar be pulled whichever stands on the plate, until a piece is taken', () => {
    for (const piece of PIECE_IDS) {
      expect(withDoing({ piece }, 'pull')).toEqual({ piece, doing: 'pull' });
      expect(withPiece({ doing: 'pull' }, piece)).toEqual({ piece, doing: DOINGS[piece][0] });
    }
  });

  it('keep the block of radii where strips are flexed over it', () => {
    expect(withDoing({ piece: 'radii' }, 'flexes')).toEqual({ piece: 'radii', doing: 'flexes' });
    expect(withDoing({ piece: 'bar' }, 'flexes')).toEqual({ piece: 'radii', doing: 'flexes' });
  });

  it('lie as a crease where they are creases', () => {
    expect(lyingOf({ ...FIRST_TESTS, piece: 'creases' })).toBe('crease');
    expect(lyingOf({ ...FIRST_TESTS, lying: 'upright' })).toBe('upright');
  });
});

describe('bends', () => {
  it('come out of the sentence and go back into it', () => {
    const bend = { way: 'to', turn: radians(60), length: 9 } as const;
    expect(bendOf({ ...FIRST_TESTS, ...bentAs(bend) })).toEqual(bend);
    expect(bendOf(FIRST_TESTS)).toEqual({ way: 'over', radius: 5 });
  });

  it('are the same whatever digits they were worked out with', () => {
    expect(bendKey({ way: 'over', radius: 5 })).toBe(bendKey({ way: 'over', radius: 5 + 1e-9 }));
    expect(bendKey({ way: 'over', radius: 5 })).not.toBe(bendKey({ way: 'over', radius: 8 }));
  });
});
