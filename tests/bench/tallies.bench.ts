import { bench, describe } from 'vitest';
import { MOST_TALLIES, type Tally } from '../../src/core/material/tally.ts';
import { learnRow, newTests } from '../../src/core/tallies/learnRow.ts';
import { flexed } from '../support/countedLives.ts';
import { filament } from '../support/filament.ts';

const prior = filament('petg');

function rowOf(make: (index: number) => Tally) {
  const row = newTests(prior, 'spool', 'own-spool', '', '');
  const tallies = Array.from({ length: MOST_TALLIES }, (_, i) => ({ ...make(i), id: `t-${i}` }));
  return { ...row, own: { ...row.own, tests: { ...row.own.tests!, tallies } } };
}

const flexes = rowOf((i) => flexed(4 + (i % 5) * 3, 40 + 13 * i, i % 3 === 0 ? 'whole' : 'broke'));
const marks = rowOf((i) => ({
  kind: 'mark',
  id: '',
  date: '2026-11-25',
  seen: '',
  radius: 2 + i / 40,
  thickness: 0.84,
  lying: 'flat',
  looks: i % 2 === 0 ? 'unmarked' : 'whitened',
}));

describe('learning from as many tallies as a row may have', () => {
  bench('strips flexed at five strains', () => void learnRow(flexes, prior));
  bench('strips each over a bar of its own', () => void learnRow(marks, prior));
});
