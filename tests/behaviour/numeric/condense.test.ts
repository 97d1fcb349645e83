import { describe, expect, it } from 'vitest';
import { condense } from '../../../src/core/numeric/condense.ts';

describe('condensing a stiffness', () => {
  it('puts springs in a row: two of 2 and 3 make 6/5', () => {
    expect(
      condense(
        [
          [5, -3],
          [-3, 3],
        ],
        1,
      )[0]![0],
    ).toBeCloseTo(1.2, 14);
  });

  it('leaves everything as it is where nothing is let go', () => {
    expect(
      condense(
        [
          [5, -3],
          [-3, 3],
        ],
        0,
      ),
    ).toEqual([
      [5, -3],
      [-3, 3],
    ]);
  });

  it('passes over what nothing resists', () => {
    expect(
      condense(
        [
          [0, 0],
          [0, 3],
        ],
        1,
      ),
    ).toEqual([[3]]);
  });

  it('ends in an exact zero where rounding would leave a little', () => {
    // 0.1 + 0.2 is not 0.3 in binary; the last spring hangs on nothing.
    const chain = [
      [0.1, -0.1, 0],
      [-0.1, 0.1 + 0.2, -0.2],
      [0, -0.2, 0.2],
    ];
    expect(condense(chain, 2)).toEqual([[0]]);
  });

  it('reads only the upper triangle and gives back both', () => {
    expect(
      condense(
        [
          [2, 1, 1],
          [99, 4, 2],
          [99, 99, 4],
        ],
        1,
      ),
    ).toEqual([
      [3.5, 1.5],
      [1.5, 3.5],
    ]);
  });
});
