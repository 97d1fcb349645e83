import { describe, expect, it } from 'vitest';
import { assessLife } from '../../../src/core/life/assessLife.ts';
import { equivalentOf, flexStrain } from '../../../src/core/tallies/flexStrain.ts';
import { flexed } from '../../support/countedLives.ts';
import { expectClose } from '../../support/close.ts';
import { filament } from '../../support/filament.ts';

describe('the strain of a flexed strip', () => {
  it('over a bar: what lies outside the middle is longer by t/2 in R + t/2', () => {
    const { peak } = flexStrain({ bend: { way: 'over', radius: 5 }, thickness: 1, ways: 'one way' });
    expectClose(peak, 0.5 / 5.5, { rel: 1e-14, because: 'round-off' });
  });

  it('to a turn: the skin of an arc of length L and angle θ', () => {
    const { peak, ratio } = flexStrain({ ...flexed(10, 1), ways: 'both ways' });
    const radius = 10 / (Math.PI / 2);
    expectClose(peak, 0.42 / radius, { rel: 1e-14, because: 'round-off' });
    expect(ratio).toBe(-1);
  });

  it.each([
    ['petg', 'flat', 'one way', 0.84],
    ['petg', 'flat', 'both ways', 0.84],
    ['petg', 'upright', 'one way', 0.84],
    ['pp', 'flat', 'one way', 0.4],
    ['pp', 'upright', 'both ways', 0.84],
  ] as const)('%s %s %s, %d mm: is as hard on it as on a joint', (id, lying, ways, thickness) => {
    const row = filament(id);
    const tally = { ...flexed(15, 1), lying, ways, thickness };
    const { peak, ratio } = flexStrain(tally);
    const acrossLayers = lying === 'upright';
    const flexes = [{ amount: 1, peakStrain: peak, ratio, cycles: 1 }] as const;
    const joint = assessLife({ flexes, acrossLayers, thickness, filament: row });
    expectClose(equivalentOf(tally, row), joint.equivalentStrain, { rel: 1e-14, because: 'round-off' });
  });
});
