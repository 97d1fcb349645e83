import { describe, expect, it } from 'vitest';
import { overlap } from '../../../../src/ui/drawing/lettering.ts';
import { numbersText } from '../../../../src/ui/mesh/numbersText.ts';
import { placeBalloons } from '../../../../src/ui/mesh/placeBalloons.ts';

/** Half of a balloon [px]. */
const REACH = 10;

/** A band of plastic across the paper. */
const isPlastic = ({ y }: { readonly y: number }) => y > 140 && y < 170;

describe('balloons', () => {
  const room = { x: 0, y: 0, width: 700, height: 260 };
  const spots = Array.from({ length: 40 }, (_, i) => ({
    number: i + 1,
    box: { x: 60 + 14 * i, y: 150, width: 10, height: 8 },
  }));
  const placed = placeBalloons(spots, room, isPlastic);
  const boxes = placed.map(({ x, y }) => ({ x: x - REACH, y: y - REACH, width: 2 * REACH, height: 2 * REACH }));

  it('never lie on one another, however many there are', () => {
    expect(placed).toHaveLength(40);
    const pairs = boxes.flatMap((a, i) => boxes.slice(i + 1).map((b) => [a, b] as const));
    expect(pairs.filter(([a, b]) => overlap(a, b))).toEqual([]);
  });

  it('stay on the paper and off the plastic', () => {
    expect(boxes.every(({ x, y }) => x >= 0 && y >= 0 && x <= 680 && y <= 240)).toBe(true);
    expect(placed.filter(isPlastic)).toEqual([]);
  });

  it('leave what is drawn beside the part clear', () => {
    const beside = [{ x: 0, y: 0, width: 700, height: 120 }];
    const below = placeBalloons(spots.slice(0, 10), room, isPlastic, beside);
    expect(below.every(({ y }) => y - REACH >= 120)).toBe(true);
  });

  it('are joined to what they number: the leader ends on the edge of its box', () => {
    for (const [i, { from }] of placed.entries()) {
      const { x, y, width, height } = spots[i]?.box ?? room;
      const far = Math.max(
        Math.abs(from.box.x - x - width / 2) / width,
        Math.abs(from.box.y - y - height / 2) / height,
      );
      // On the edge, half a side away from the middle, but for round-off.
      expect(Math.abs(far - 0.5)).toBeLessThan(1e-9);
    }
  });
});

describe('numbers that share a balloon', () => {
  it('are drawn together where they follow each other, and cut short where they are many', () => {
    expect(numbersText([3])).toBe('3');
    expect(numbersText([1, 2])).toBe('1, 2');
    expect(numbersText([1, 2, 3, 4])).toBe('1–4');
    expect(numbersText([1, 2, 3, 7])).toBe('1–3, 7');
    expect(numbersText([1, 6, 11, 16, 21])).toBe('1, 6 … 21');
  });
});
