/** The whole search, solver and all: what it tells on its way, and that what it tells in the end stands alone. */
import { beforeAll, describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import { bySolver } from '../../../src/core/design/bySolver.ts';
import { find } from '../../../src/core/find/find.ts';
import type { FindAnswer } from '../../../src/core/find/findAnswer.ts';
import type { Wanted } from '../../../src/core/find/wanted.ts';
import { expectClose } from '../../support/close.ts';
import { A_TRAVEL, A_TURN } from '../../support/finding.ts';

/** What stays in its second place, as a lid lock does. */
const A_SNAP: Wanted = {
  ...A_TRAVEL,
  movement: { ...A_TRAVEL.movement, drive: 'pressed', amount: 11, ways: 'one way', cycles: 1500, stays: true },
  room: { along: 95, across: 35, depth: 8 },
  depthAtLeast: 4,
  filaments: ['pp', 'pa12'],
};

const BRIEFS: readonly (readonly [string, Wanted, readonly string[]])[] = [
  [
    'a turn',
    { ...A_TURN, lyings: ['flat', 'crease'], filaments: ['petg', 'pp'] },
    ['straightLeaf', 'crossedLeaves', 'neck'],
  ],
  ['a travel', { ...A_TRAVEL, lyings: ['flat'], filaments: ['petg', 'pa12'] }, ['parallelLeaves', 'foldedLeaf']],
  ['what stays', A_SNAP, ['snapArch', 'toggle']],
];

describe.each(BRIEFS)('%s', (_, brief, families) => {
  const wanted = { ...brief, families };
  const told: FindAnswer[] = [];
  let answer: FindAnswer;
  let clock = 0;

  beforeAll(() => {
    // A clock that runs on by more than the pause between news each time it is asked.
    const found = find(wanted, { tell: (soFar) => told.push(soFar), now: () => (clock += 1000) });
    if (!found.ok) throw new Error(found.problems[0].message);
    answer = found.value;
  });

  it('finds something of each kind that can, in figures that have been solved', () => {
    expect(answer.isDone).toBe(true);
    expect(answer.designs.length).toBeGreaterThan(1);
    expect(answer.designs.every(({ figures }) => figures.by !== 'estimate')).toBe(true);
    expect(new Set(answer.designs.map(({ joint }) => joint.family)).size).toBeGreaterThan(families.length > 2 ? 1 : 0);
  });

  it('tells news on its way, each with more tried than the one before', () => {
    expect(told.length).toBeGreaterThan(1);
    const tried = told.map((one) => one.tried);
    expect(tried).toEqual(tried.toSorted((a, b) => a - b));
    expect(told.every(({ isDone }) => !isDone)).toBe(true);
    const shares = [...told, answer].map((one) => one.share);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
    expect(told.at(-1)?.total).toBe(answer.total);
  });

  it('tells designs that pass, with the same figures, when each is assessed alone as the page does', () => {
    for (const { joint, figures } of answer.designs) {
      const alone = assess(structuredClone(joint), bySolver());
      if (!alone.ok) throw new Error(`${joint.family}: ${alone.problems[0].message}`);
      const { verdict, strain, effort, set, life } = alone.value;
      expect(`${joint.family} ${verdict.grade}`).toBe(`${joint.family} pass`);
      const because = 'the page also follows it beyond the wanted amount, by other steps on the way there';
      expectClose(figures.strain, strain.peak, { rel: 1e-6, because });
      expectClose(figures.effort, effort.effort, { rel: 1e-6, because });
      expectClose(figures.chance, life.chance, { abs: 1e-6, because });
      expectClose(figures.set, set.amount, { abs: 1e-6 * joint.movement.amount, because });
    }
  });

  it('keeps to what is wanted', () => {
    const { room, filaments, lyings } = wanted;
    for (const { joint, figures } of answer.designs) {
      expect(figures.room.along).toBeLessThanOrEqual(room.along * (1 + 1e-9));
      expect(figures.room.across).toBeLessThanOrEqual(room.across * (1 + 1e-9));
      expect(figures.room.depth).toBeLessThanOrEqual(room.depth * (1 + 1e-9));
      expect(families).toContain(joint.family);
      expect(filaments).toContain(joint.profile.filament);
      expect(lyings).toContain(joint.profile.lying);
      expect(figures.chance).toBeGreaterThanOrEqual(wanted.movement.chance);
    }
  });

  it('finds the same once more', () => {
    const again = find(wanted);
    expect(again.ok && again.value).toEqual(answer);
  });
});

describe('where nothing is found', () => {
  it('names the nearest miss, and what it needs', () => {
    const tight = { ...A_TURN, families: ['straightLeaf'], filaments: ['pla'], lyings: ['flat' as const] };
    const found = find({ ...tight, room: { along: 8, across: 14, depth: 8 } });
    if (!found.ok) throw new Error(found.problems[0].message);
    expect(found.value.designs).toEqual([]);
    const along = found.value.failed.find(({ reason }) => reason === 'along')?.nearest ?? found.value.closest;
    expect(along?.short[0].reason).toBe('along');
    expect(along?.short[0].value).toBeGreaterThan(8);
  });

  it('names the closest of all where none falls short in one way alone', () => {
    const found = find({
      ...A_TURN,
      families: ['straightLeaf'],
      filaments: ['pc'],
      lyings: ['flat'],
      room: { along: 8, across: 1, depth: 8 },
      effortAtLeast: 900_000,
    });
    if (!found.ok) throw new Error(found.problems[0].message);
    expect(found.value.designs).toEqual([]);
    expect(found.value.closest?.short.length).toBeGreaterThan(1);
  });
});

function problemsOf(change: Partial<Wanted>) {
  const found = find({ ...A_TURN, ...change });
  return found.ok ? [] : found.problems.map(({ code, field }) => [code, field]);
}

describe('what cannot be looked for', () => {
  it.each<[string, Partial<Wanted>, readonly (readonly string[])[]]>([
    ['no kind', { families: [] }, [['none-ticked', 'families']]],
    ['no filament', { filaments: [] }, [['none-ticked', 'filaments']]],
    ['a strange filament', { filaments: ['straw'] }, [['not-one-of', 'filaments']]],
    ['a strange kind', { families: ['rubberBand'] }, [['not-one-of', 'families']]],
    ['a strange way to lie', { lyings: ['aslant' as never] }, [['not-one-of', 'lyings']]],
    [
      'a room that is no number',
      { room: { along: Number.NaN, across: 5, depth: 5 } },
      [['not-a-number', 'room.along']],
    ],
    ['no room', { room: { along: 20, across: 0, depth: 8 } }, [['below-minimum', 'room.across']]],
    ['more depth at least than there is', { depthAtLeast: 9 }, [['above-maximum', 'depthAtLeast']]],
    [
      'a depth between two that are tried',
      { depthAtLeast: 7.2, room: { ...A_TURN.room, depth: 7.8 } },
      [['no-depth-between', 'depthAtLeast']],
    ],
    ['half a flex', { movement: { ...A_TURN.movement, cycles: 2.5 } }, [['not-whole', 'movement.cycles']]],
    ['certainty', { movement: { ...A_TURN.movement, chance: 1 } }, [['above-maximum', 'movement.chance']]],
    [
      'an end past the movement',
      { movement: { ...A_TURN.movement, ways: 'between', least: 3 } },
      [['above-maximum', 'movement.least']],
    ],
    [
      'to push both less and more',
      { effortAtLeast: 50, movement: { ...A_TURN.movement, effortAtMost: 10 } },
      [['above-maximum', 'effortAtLeast']],
    ],
    ['to stay bent by more than it moves', { setAtMost: 2 }, [['above-maximum', 'setAtMost']]],
    [
      'a leaf that stays',
      { families: ['straightLeaf'], movement: { ...A_TURN.movement, stays: true } },
      [['none-can', 'families']],
    ],
    ['an arch that turns', { families: ['snapArch'] }, [['none-can', 'families']]],
    ['a crease that stands', { families: ['crease'], lyings: ['upright'] }, [['none-can', 'families']]],
    [
      'more than any kind turns',
      { families: ['crossedLeaves'], movement: { ...A_TURN.movement, amount: 3 } },
      [['none-can', 'families']],
    ],
  ])('%s', (_, change, expected) => {
    expect(problemsOf(change)).toEqual(expected);
  });
});
