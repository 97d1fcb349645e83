import { describe, expect, it } from 'vitest';
import { firstTouch } from '../../../src/core/design/firstTouch.ts';
import type { SolvedPoint } from '../../../src/core/design/solved.ts';
import type { GapFinder } from '../../../src/core/geometry/gaps.ts';
import { expectClose } from '../../support/close.ts';
import { answered } from '../../support/solvedJoints.ts';

const side = { what: 'pad', at: { x: 0, y: 0 } };
const BESIDE = 0.005;

/** A pad that goes along a curve, with a gap that depends on where it is alone. */
function lookAlong(placeAt: (amount: number) => number, gapAt: (place: number) => number, amounts: readonly number[]) {
  let looks = 0;
  const gapsOf: GapFinder = (_, { pad }) => {
    looks += 1;
    return { least: { gap: gapAt(pad?.x ?? Number.NaN), a: side, b: side }, near: [] };
  };
  const [state] = answered('straightLeaf').solved.forward.points;
  if (!state) throw new Error('a way begins at rest');
  const points = amounts.map((amount): SolvedPoint => {
    const poses = { pad: { x: placeAt(amount), y: 0, turn: 0 } };
    return { ...state, amount, poses, shapes: [], gap: { gap: gapAt(poses.pad.x), a: side, b: side } };
  });
  const found = firstTouch(points, gapsOf);
  return { at: found?.amount, looks };
}

const TENTHS = Array.from({ length: 11 }, (_, i) => i / 10);

const leaping = (amount: number) => (amount < 0.55 ? amount : 5 + amount);
const unseenUntil = (place: number) => (place < 6 ? Infinity : -1);
const dipping = (place: number) => Math.abs(place - 4.4) - 0.2;

describe('where a way first comes to touch', () => {
  it('is told between two states to a fifth of a per cent, on few looks', () => {
    const { at = 0, looks } = lookAlong(
      (amount) => 10 * Math.sin(amount),
      (place) => 6 - place,
      TENTHS,
    );
    const meets = Math.asin((6 - BESIDE) / 10);
    expect(at).toBeLessThanOrEqual(meets + 1e-5);
    expectClose(at, meets, { rel: 0.003, because: 'told is the clear side of 0.2 %, less what cubics may be out' });
    expect(looks).toBeLessThanOrEqual(4);
  });

  it('is the same the other way round', () => {
    const there = lookAlong(
      (amount) => 10 * Math.sin(amount),
      (place) => 6 - place,
      TENTHS,
    );
    const back = lookAlong(
      (amount) => 10 * Math.sin(-amount),
      (place) => 6 - place,
      TENTHS.map((amount) => -amount),
    );
    expectClose(back.at ?? 0, -(there.at ?? 0), { rel: 1e-12, because: 'round-off' });
  });

  it('is found where nothing faces anything until it overlaps', () => {
    const { at = 0 } = lookAlong(
      (amount) => 10 * amount,
      unseenUntil,
      TENTHS.map((amount) => amount + 0.03),
    );
    expect(at).toBeLessThanOrEqual(0.6);
    expect(at).toBeGreaterThan(0.6 * 0.997);
  });

  it('is found in a gap that closes and opens again between two states', () => {
    const { at = 0 } = lookAlong((amount) => 10 * amount, dipping, TENTHS);
    expect(at).toBeLessThanOrEqual(0.42);
    expect(at).toBeGreaterThan(0.42 * 0.995);
  });

  it('is the last state before a leap', () => {
    expect(lookAlong(leaping, (place) => 3 - place, TENTHS).at).toBe(0.5);
  });

  it('is nowhere where it stays clear, and at rest where it is printed so', () => {
    expect(
      lookAlong(
        (amount) => amount,
        (place) => 3 - place,
        TENTHS,
      ).at,
    ).toBeUndefined();
    expect(
      lookAlong(
        (amount) => amount,
        (place) => place,
        TENTHS,
      ).at,
    ).toBe(0);
  });
});
