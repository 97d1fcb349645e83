/** Arcs: lengths and places by hand, and what firmwares and programs get wrong. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GOES_ON, ON_ARC } from '../../../src/core/inspect/toolpath/moves.ts';
import { expectClose, type Allowance } from '../../support/close.ts';
import { readGcode, type Move, type ReadGcode } from '../../support/readGcode.ts';

const ROUND_OFF: Allowance = { rel: 1e-12, because: 'round-off' };
const CHORD: Allowance = { abs: 0.005, because: 'chords stay within 5 µm of the arc' };
const sum = (moves: readonly Move[], key: 'length' | 'feed' | 'laid') =>
  moves.reduce((total, move) => total + move[key], 0);
const arcs = ({ moves }: ReadGcode) => moves.filter(({ flags }) => flags & ON_ARC);
const greatest = (moves: readonly Move[], axis: 'x' | 'y' | 'z') => Math.max(...moves.map((move) => move[axis]));
const least = (moves: readonly Move[], axis: 'x' | 'y' | 'z') => Math.min(...moves.map((move) => move[axis]));

describe('the length of an arc', () => {
  const { PI, hypot } = Math;
  it.each<readonly [string, string, number]>([
    ['a whole circle: ends alike, so that nothing but the centre tells of it', 'G2 I5', 10 * PI],
    ['a whole circle with its ends told', 'G1 X3 Y4\nG3 X3 Y4 I-3 J-4', 10 * PI],
    ['a whole circle that climbs', 'G2 I5 Z2', hypot(10 * PI, 2)],
    ['half a circle by its centre', 'G2 X10 Y0 I5 J0', 5 * PI],
    ['half a circle by its radius: the chord is two radii', 'G2 X10 R5', 5 * PI],
    ['half a circle by a radius cut off to three digits', 'G2 X9.999 R4.999', 4.9995 * PI],
    ['a sixth of a circle by its radius', 'G2 X10 R10', (10 * PI) / 3],
    ['five sixths of a circle: the radius is below 0', 'G2 X10 R-10', (50 * PI) / 3],
    ['five sixths of a circle, the other way round', 'G3 X10 R-10', (50 * PI) / 3],
    ['a quarter, counter-clockwise', 'G3 X5 Y5 J5', 2.5 * PI],
    ['the same ends, clockwise: three quarters', 'G2 X5 Y5 J5', 7.5 * PI],
    ['a quarter that climbs by four', 'G3 X5 Y5 Z4 J5', hypot(2.5 * PI, 4)],
    ['two whole turns beyond a quarter, which climb', 'G3 X5 Y5 Z4 J5 P2', hypot(2.5 * PI + 20 * PI, 4)],
    ['three turns of a whole circle', 'G2 I5 P2', 30 * PI],
    ['axes by how far they go', 'G1 X50 Y50\nG91\nG3 X5 Y5 J5', 2.5 * PI],
    ['in inches', 'G20\nG3 X1 Y1 J1', 12.7 * PI],
    ['centre from where 0 is called', 'G1 X20 Y10\nG90.1\nG3 X15 Y15 I15 J10', 2.5 * PI],
    ['centre from where 0 is called anew', 'G1 X20 Y10\nG92 X5 Y0\nG90.1\nG3 X0 Y5 I0 J0', 2.5 * PI],
    ['centre from the start again', 'G90.1\nG91.1\nG3 X5 Y5 J5', 2.5 * PI],
    ['in the plane of z and x, counter-clockwise from z to x', 'G18\nG1 Z5\nG3 X5 Z0 K-5', 2.5 * PI],
    ['the same clockwise: three quarters', 'G18\nG1 Z5\nG2 X5 Z0 K-5', 7.5 * PI],
    ['in that plane, climbing along y', 'G18\nG1 Z5\nG3 X5 Y3 Z0 K-5', hypot(2.5 * PI, 3)],
    ['in the plane of y and z, counter-clockwise from y to z', 'G19\nG1 Y5\nG3 Y0 Z5 J-5', 2.5 * PI],
    ['in that plane by its radius', 'G19\nG1 Y5\nG3 Y0 Z5 R5', 2.5 * PI],
    ['in the plane of the plate again', 'G18\nG17\nG3 X5 Y5 J5', 2.5 * PI],
    [
      'far less than a micron short of the start: a whole turn but for rounding',
      'G91\nG1 X0.1\nG1 X0.2\nG90\nG2 X0.3 I5',
      10 * PI,
    ],
    ['a tenth of a degree', `G3 X${10 * Math.sin(PI / 1800)} Y${10 - 10 * Math.cos(PI / 1800)} J10`, PI / 180],
  ])('%s', (_, text, length) => {
    const read = readGcode(text);
    expect(read.text.bad).toBe(0);
    const room: Allowance = text.includes('4.999')
      ? { rel: 1e-6, because: 'a radius between that of the file and half the chord' }
      : { rel: 1e-9, because: 'ends of twelve digits leave a rounding of the angle' };
    expectClose(sum(arcs(read), 'length'), length, room);
  });

  it('without a word for how is that of the arc before', () => {
    const { text, moves } = readGcode('G2 X10 Y0 I5\nX0 Y0 I-5\nX10 I5\nG1 X0\nX10');
    expect(text).toMatchObject({ moves: [0, 2, 3, 0], modal: 3, bad: 0 });
    expectClose(sum(moves, 'length'), 15 * Math.PI + 20, ROUND_OFF);
  });
});

describe('where an arc runs', () => {
  it.each([
    ['G2 X10 R10', 10 - Math.sqrt(75), 0],
    ['G3 X10 R10', 0, -(10 - Math.sqrt(75))],
    ['G2 X10 R-10', 10 + Math.sqrt(75), 0],
    ['G3 X10 R-10', 0, -(10 + Math.sqrt(75))],
    ['G2 X10 I5', 5, 0],
    ['G3 X10 I5', 0, -5],
    ['G2 I5', 5, -5],
  ])('%s', (text, top, bottom) => {
    const { moves } = readGcode(text);
    expectClose(Math.max(0, greatest(moves, 'y')), top, CHORD);
    expectClose(Math.min(0, least(moves, 'y')), bottom, CHORD);
  });

  it('in the plane of z and x it turns from z to x', () => {
    const { moves } = readGcode('G18\nG1 Z5\nG3 X5 Z0 K-5');
    expectClose(least(moves, 'x'), 0, ROUND_OFF);
    expectClose(Math.max(...moves.map(({ x, z }) => Math.hypot(x, z))), 5, ROUND_OFF);
    expect(least(moves, 'z')).toBe(0);
  });

  it('climbs evenly, and ends where it is asked to', () => {
    const moves = arcs(readGcode('G3 X5 Y5 Z4 J5'));
    for (const [i, { x, y, z }] of moves.entries()) {
      const turned = Math.atan2(x, 5 - y);
      expectClose(z, (4 * turned) / (Math.PI / 2), { abs: 1e-9, because: 'round-off of the angle' });
      expectClose(z, (4 * (i + 1)) / moves.length, { abs: 1e-12, because: 'round-off' });
    }
    expect(moves.at(-1)).toMatchObject({ x: 5, y: 5, z: 4 });
  });

  it('its chords have corners on it and middles within 5 µm, at any size', () => {
    const radius = fc.integer({ min: 1, max: 200_000 }).map((n) => n / 1000);
    fc.assert(
      fc.property(radius, fc.boolean(), (r, isClockwise) => {
        const moves = arcs(readGcode(`${isClockwise ? 'G2' : 'G3'} I${r}`));
        let before = { x: 0, y: 0 };
        for (const { x, y } of moves) {
          expectClose(Math.hypot(x - r, y), r, { abs: 1e-9, because: 'round-off' });
          const middle = Math.hypot((x + before.x) / 2 - r, (y + before.y) / 2);
          expect(r - middle).toBeLessThanOrEqual(0.005 + 1e-9);
          before = { x, y };
        }
        expectClose(sum(moves, 'length'), 2 * Math.PI * r, ROUND_OFF);
      }),
      { numRuns: 100 },
    );
  });

  it('a radius tells the same arc as its centre', () => {
    const angle = fc.integer({ min: 1, max: 359 }).map((n) => (n * Math.PI) / 180);
    fc.assert(
      fc.property(angle, fc.integer({ min: 1, max: 100 }), fc.boolean(), (turn, r, isClockwise) => {
        const word = isClockwise ? 'G2' : 'G3';
        const end = `X${(r - r * Math.cos(turn)).toFixed(9)} Y${((isClockwise ? 1 : -1) * r * Math.sin(turn)).toFixed(9)}`;
        const [byCentre, byRadius] = [`I${r}`, `R${turn > Math.PI ? -r : r}`].map((how) =>
          readGcode(`${word} ${end} ${how}`),
        );
        expectClose(sum(byRadius!.moves, 'length'), r * turn, {
          rel: 1e-3,
          because: 'near half a turn the radius tells the centre badly',
        });
        expectClose(sum(byCentre!.moves, 'length'), r * turn, { rel: 1e-6, because: 'nine decimals' });
      }),
    );
  });
});

describe('what is laid along an arc', () => {
  it('is shared out evenly, and is one move', () => {
    const { moves, figures } = readGcode('G1 E2\nG1 E0\nG2 X10 I5 E3');
    const pieces = moves.filter(({ flags }) => flags & ON_ARC);
    expect(pieces.filter(({ flags }) => !(flags & GOES_ON)).length).toBe(1);
    expectClose(sum(pieces, 'feed'), 3, ROUND_OFF);
    // Two of the three had been drawn back.
    expectClose(sum(pieces, 'laid'), 1, ROUND_OFF);
    expect(figures).toMatchObject({ printingMoves: 1, feedOnlyMoves: 2, retractions: 1 });
  });
});

describe('an arc that does not go with its ends', () => {
  it.each([
    ['without a centre or a radius', 'G2 X10'],
    ['by a radius less than half the chord', 'G2 X10 R4.9'],
    ['by a radius, to where it begins', 'G2 R5'],
    ['by no radius at all', 'G2 X10 R0'],
    ['round a centre that is not as far from the end', 'G2 X10 I4'],
    ['round where it is', 'G2 X10 I0 J0'],
    ['round a centre beyond any printer', 'G2 X10 I9999999'],
    ['in another plane than its centre', 'G18\nG2 X10 J5'],
  ])('%s is told, and goes straight', (_, text) => {
    const read = readGcode(`${text}\n`);
    expect(read.text).toMatchObject({ bad: 1, badLines: [{ why: 'bad-arc' }] });
    expect(arcs(read)).toEqual([]);
    expect(read.moves.at(-1)!.x).toBe(text.includes('X10') ? 10 : 0);
    expectClose(sum(read.moves, 'length'), text.includes('X10') ? 10 : 0, ROUND_OFF);
  });

  it('by a rounding goes all the same: within 0.05 mm, or within 1 %', () => {
    expect(readGcode('G2 X10.04 I5').text.bad).toBe(0);
    expect(readGcode('G2 X10.06 I5').text.bad).toBe(1);
    expect(readGcode('G2 X200.9 I100').text.bad).toBe(0);
    expect(readGcode('G2 X201.1 I100').text.bad).toBe(1);
  });

  it('turns no more than can be, and holds no more chords than can be', () => {
    const { moves } = readGcode('G2 I900 P1000000');
    expect(moves.length).toBeLessThanOrEqual(20_000);
    expectClose(sum(moves, 'length'), 2 * Math.PI * 900 * 1001, { rel: 1e-9, because: 'round-off of 20 000 pieces' });
  });
});
