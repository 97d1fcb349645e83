/** Strips of a spool as they stand in the table: those bent alike together, the ones of the trial first. */
import type { FlexTally } from '../../../core/material/tally.ts';
import { strainOfBend } from '../../../core/tallies/strainOfBend.ts';
import { bendKey, lyingOf } from '../../../store/tests.ts';
import type { Trial } from '../trial.ts';
import { isFlexes } from './counting.ts';

type Alike = Pick<FlexTally, 'bend' | 'thickness' | 'lying' | 'ways'>;

export interface StripGroup extends Alike {
  readonly key: string;
  readonly strain: number;
  readonly strips: readonly FlexTally[];
}

const keyOf = ({ bend, thickness, lying, ways }: Alike) => [bendKey(bend), thickness.toFixed(3), lying, ways].join(' ');

/** The trial as strips of it are written down. */
function trialStrips({ bend, thickness, values }: Trial): Alike {
  return { bend, thickness, lying: lyingOf(values), ways: values.ways };
}

export function groupsOf(trial: Trial): readonly [now: StripGroup, ...others: StripGroup[]] {
  const strips = trial.spool?.own.tests.tallies.filter(isFlexes) ?? [];
  const alike = trialStrips(trial);
  const all = new Map<string, { readonly of: Alike; readonly strips: FlexTally[] }>([
    [keyOf(alike), { of: alike, strips: [] }],
  ]);
  for (const strip of strips) {
    const key = keyOf(strip);
    const group = all.get(key) ?? { of: strip, strips: [] };
    group.strips.push(strip);
    all.set(key, group);
  }
  const [now, ...others] = [...all].map(([key, { of, strips: those }]): StripGroup => ({
    key,
    bend: of.bend,
    thickness: of.thickness,
    lying: of.lying,
    ways: of.ways,
    strain: strainOfBend(of.bend, of.thickness),
    strips: those,
  }));
  if (!now) throw new RangeError('the trial is a group of its own');
  return [now, ...others];
}

/** What each strip is called: its place among those bent like it, from 1. */
export function numberOf({ strips }: StripGroup, id: string | undefined): number {
  const at = strips.findIndex((strip) => strip.id === id);
  return at < 0 ? strips.length + 1 : at + 1;
}
