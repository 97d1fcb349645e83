/** Holds and pulled bars: means of what was read, with those that lie far off shown. */
import { describe, expect, it } from 'vitest';
import type { HoldTally, PullTally } from '../../../src/core/material/tally.ts';
import { setOfHold, strengthOfPull } from '../../../src/core/tallies/setOfHold.ts';
import { radians } from '../../../src/core/units.ts';
import { wholeRow } from '../../../src/core/material/wholeRow.ts';
import { expectClose } from '../../support/close.ts';
import { filament } from '../../support/filament.ts';

const { setAfterDayHeld, tensileStrength } = wholeRow(filament('petg')).properties;
const common = { date: '2026-11-25', seen: '' } as const;

const held = (id: string, left: number, hours = 24): HoldTally => ({
  ...common,
  id,
  kind: 'hold',
  radius: 20,
  thickness: 0.84,
  hours,
  held: radians(140),
  left: radians(left),
});

const pulled = (id: string, strength: number): PullTally => ({
  ...common,
  id,
  kind: 'pull',
  direction: 'along lines',
  strength,
});

const idsOf = (tallies: readonly { readonly id: string }[] | undefined) => tallies?.map(({ id }) => id);

describe('set after a day', () => {
  it('is the mean share of the bend that stayed, by strips held for about a day', () => {
    const told = setOfHold(setAfterDayHeld, [held('a', 14), held('b', 28), held('c', 100, 1)]);
    expectClose(told!.value.typical, (100 * (14 + 28)) / 2 / 140, { rel: 1e-12, because: 'round-off' });
    expect(idsOf(told!.by)).toEqual(['a', 'b']);
    expect(told!.odd).toEqual([]);
  });

  it('shows the strip that lies far off', () => {
    const told = setOfHold(setAfterDayHeld, [held('a', 14), held('b', 16), held('c', 90)]);
    expect(idsOf(told!.odd)).toEqual(['c']);
    expect(told!.by).toHaveLength(3);
  });
});

describe('strength of pulled bars', () => {
  it('shows a bar that broke at a tenth of the others, and not those', () => {
    const told = strengthOfPull(tensileStrength, [pulled('a', 40), pulled('b', 38), pulled('c', 3)], 'along lines');
    expect(idsOf(told!.odd)).toEqual(['c']);
    expectClose(told!.value.typical, 27, { rel: 1e-12, because: 'round-off: it is shown, not dropped' });
  });

  it('takes two bars that differ by as much as bars do for what they are, and one for itself', () => {
    expect(strengthOfPull(tensileStrength, [pulled('a', 40), pulled('b', 34)], 'along lines')!.odd).toEqual([]);
    expect(strengthOfPull(tensileStrength, [pulled('a', 3)], 'along lines')!.odd).toEqual([]);
    expect(strengthOfPull(tensileStrength, [pulled('a', 40)], 'across layers')).toBeUndefined();
  });
});
