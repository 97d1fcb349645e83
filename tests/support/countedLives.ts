/** Strips that were never flexed: lives drawn from a curve that is known. */
import type { FlexTally } from '../../src/core/material/tally.ts';
import { normalQuantile } from '../../src/core/numeric/normal.ts';
import { randomShares, type RandomShares } from '../../src/core/numeric/random.ts';
import { lifePriorOf } from '../../src/core/tallies/lifePrior.ts';
import type { SeenStrip } from '../../src/core/tallies/lifePosterior.ts';
import { radians } from '../../src/core/units.ts';
import { filament } from './filament.ts';

export interface Normals {
  readonly share: RandomShares;
  readonly normal: () => number;
}

export function drawsOf(seed: number): Normals {
  const share = randomShares(seed);
  return { share, normal: () => normalQuantile(share()) };
}

/** A strip of two lines flexed through a right angle over this free length. */
export function flexed(length: number, cycles: number, ended: FlexTally['ended'] = 'broke', id = ''): FlexTally {
  return {
    kind: 'flexes',
    id: id === '' ? `${length}-${cycles}-${ended}` : id,
    date: '2026-11-25',
    seen: '',
    bend: { way: 'to', turn: radians(90), length },
    thickness: 0.84,
    lying: 'flat',
    ways: 'one way',
    cycles,
    ended,
  };
}

/** How far chance alone moves a share of so many runs: three standard deviations of a binomial law. */
export function chanceOf(share: number, runs: number): number {
  return 3 * Math.sqrt((share * (1 - share)) / runs);
}

export const isIn = (value: number, [low, high]: readonly [number, number]): boolean => value >= low && value <= high;

/** What is believed of PETG before anything is counted. */
export const PRIOR = lifePriorOf(filament('petg').life);

export interface Truth {
  readonly level: number;
  readonly slope: number;
  readonly sigma: number;
}

/** As `lifePriorOf` says; σ with a standard deviation of 0.3 of its logarithm and the row's as root mean square. */
export function truthFrom({ normal }: Normals): Truth {
  return {
    level: PRIOR.level * normal(),
    slope: PRIOR.slope * normal(),
    sigma: PRIOR.scatter * Math.exp(0.3 * normal() - 0.09),
  };
}

export const shiftOf = ({ level, slope }: Truth, x: number): number => level + slope * (x - PRIOR.pivot);

/** A strip of a curve that is known, in decades of life. */
export function flexedOnce({ normal }: Normals, truth: Truth, foretold: number, stop: number): SeenStrip {
  const life = foretold + shiftOf(truth, foretold) + truth.sigma * normal();
  return { foretold, counted: Math.min(life, stop), whole: life > stop };
}
