/**
 * The search against brute force: on grids that can be walked one by one through `assess`, it finds exactly what meets
 * the brief, exactly what nothing betters, and counts exactly what the others fall short in.
 */
import { describe, expect, it } from 'vitest';
import type { Figures } from '../../../src/core/find/findAnswer.ts';
import { SHORTCOMINGS } from '../../../src/core/find/findAnswer.ts';
import { SURE } from '../../../src/core/find/front.ts';
import { putOnShelf } from '../../../src/core/material/shelf.ts';
import type { Wanted } from '../../../src/core/find/wanted.ts';
import { radians } from '../../../src/core/units.ts';
import { measuredPetg } from '../../support/ownFilaments.ts';
import { A_TRAVEL, A_TURN, keyOf, lotsOf, searched, walked, type Walked } from '../../support/finding.ts';

const sure = ({ chance }: Figures) => Math.min(chance, SURE);

/** Said once more, by every pair, as the trade-off is defined: as small, as sure, and better in one; between equals softer. */
function betters(a: Figures, b: Figures): boolean {
  const eps = 1e-9;
  if (a.size > b.size * (1 + eps) || sure(a) < sure(b) * (1 - eps)) return false;
  return a.size < b.size * (1 - eps) || sure(a) > sure(b) * (1 + eps) || a.effort < b.effort * (1 - eps);
}

const group = ({ candidate: { joint } }: Walked) =>
  `${joint.family}/${joint.movement.drive}/${joint.profile.lying}/${joint.profile.filament}`;

function bestOfGroups(met: readonly Walked[]): readonly string[] {
  const groups = new Map<string, Walked[]>();
  for (const one of met) groups.set(group(one), [...(groups.get(group(one)) ?? []), one]);
  return [...groups.values()].flatMap((all) =>
    all.filter((one) => !all.some((other) => betters(other.figures, one.figures))).map(({ key }) => key),
  );
}

// Beside PETG as it comes: sections of other thickness and a doubt that depends on the life share one search.
putOnShelf([measuredPetg()]);

const BRIEFS: readonly (readonly [string, Wanted])[] = [
  ['a turn', A_TURN],
  [
    'a turn, with an effort between',
    { ...A_TURN, effortAtLeast: 3, movement: { ...A_TURN.movement, effortAtMost: 40 } },
  ],
  [
    'a turn to both sides, held',
    { ...A_TURN, movement: { ...A_TURN.movement, ways: 'both ways', held: true, amount: radians(15) } },
  ],
  [
    'a swing between two angles, and another beside it',
    {
      ...A_TURN,
      movement: {
        ...A_TURN.movement,
        ways: 'between',
        least: radians(5),
        also: [{ amount: radians(20), ways: 'between', least: radians(8), cycles: 60_000 }],
      },
      setAtMost: radians(4),
    },
  ],
  ['a turn, in a filament that tests have corrected', { ...A_TURN, filaments: ['petg', 'own-measured'] }],
  ['a travel to both sides', A_TRAVEL],
  [
    'a travel with supports, one that comes back',
    { ...A_TRAVEL, supports: true, movement: { ...A_TRAVEL.movement, stays: false } },
  ],
  [
    'more flexes than anyone has counted, in the warmth',
    {
      ...A_TRAVEL,
      surroundings: { temperatureC: 48, moisture: 'dry' },
      movement: { ...A_TRAVEL.movement, cycles: 3_000_000, ways: 'one way' },
    },
  ],
];

describe.each(BRIEFS)('%s', (_, wanted) => {
  const lots = lotsOf(wanted, 3);
  const answer = searched(lots, wanted);
  const all = walked(lots, wanted);
  const met = all.filter(({ short }) => short.length === 0);

  it('tries what there is to try', () => {
    expect(all.length).toBeGreaterThan(2000);
    expect(answer.tried).toBe(answer.total);
    expect(answer.tried - answer.impossible).toBe(all.length);
  });

  it('finds as many as meet the brief', () => {
    expect(answer.meets).toBe(met.length);
  });

  it('tells exactly those of each kind and filament that nothing betters', () => {
    const told = answer.designs.map(({ joint }) => keyOf(joint)).toSorted();
    expect(told).toEqual([...bestOfGroups(met)].toSorted());
  });

  it('marks exactly those that nothing at all betters', () => {
    const best = answer.designs.filter(({ isBest }) => isBest).map(({ joint }) => keyOf(joint));
    const byPairs = met
      .filter((one) => !met.some((other) => betters(other.figures, one.figures)))
      .map(({ key }) => key);
    expect(best.toSorted()).toEqual(byPairs.toSorted());
  });

  it.each(SHORTCOMINGS)('counts what falls short: %s', (reason) => {
    const failed = all.filter(({ short }) => short.includes(reason));
    const alone = failed.filter(({ short }) => short.length === 1);
    const told = answer.failed.find((one) => one.reason === reason) ?? { alone: 0, withOthers: 0 };
    expect([told.alone, told.withOthers]).toEqual([alone.length, failed.length - alone.length]);
  });

  it('tells of each way the nearest miss, and it falls short in nothing else', () => {
    for (const { reason, nearest } of answer.failed) {
      if (!nearest) continue;
      expect(nearest.short.map((one) => one.reason)).toEqual([reason]);
    }
  });
});

describe('the briefs between them', () => {
  it('find something, and see every way to fall short that hand forms can tell', () => {
    const answers = BRIEFS.map(([, wanted]) => searched(lotsOf(wanted, 3), wanted));
    expect(answers.filter(({ designs }) => designs.length > 0).length).toBeGreaterThan(4);
    const seen = new Set(answers.flatMap(({ failed }) => failed.map(({ reason }) => reason)));
    const solvedOnly = ['comes back', 'stays', 'touches'];
    expect(SHORTCOMINGS.filter((reason) => !seen.has(reason) && !solvedOnly.includes(reason))).toEqual([]);
  });
});
