/** What a row becomes by its tallies, and that it is as before when they go. */
import { afterEach, describe, expect, it } from 'vitest';
import { bendingModulus } from '../../../src/core/material/choose.ts';
import { withValue } from '../../../src/core/material/ownFilament.ts';
import { putOnShelf } from '../../../src/core/material/shelf.ts';
import type { PullTally, Tally } from '../../../src/core/material/tally.ts';
import type { OwnFilament } from '../../../src/core/material/types.ts';
import { allowableOfMarks, breakOfMarks } from '../../../src/core/tallies/limitsOfMarks.ts';
import { isOddIn } from '../../../src/core/tallies/learned.ts';
import { learnLife } from '../../../src/core/tallies/learnLife.ts';
import {
  learnRow,
  newTests,
  priorOf,
  withoutTally,
  withTally,
  withTallyChanged,
} from '../../../src/core/tallies/learnRow.ts';
import { asRad } from '../../../src/core/units.ts';
import { expectClose } from '../../support/close.ts';
import { filament } from '../../support/filament.ts';

const PETG = filament('petg');
const EMPTY = newTests(PETG, 'PETG, spool 3', 'own-spool', 'bench', '3');
const COMMON = { date: '2026-11-25', seen: '' } as const;
const STRIP = { ...COMMON, thickness: 0.84, lying: 'flat' } as const;
const OVER = { way: 'over', radius: 5 } as const;

const flexed = (id: string, cycles: number, ended: 'broke' | 'whole'): Tally => ({
  ...STRIP,
  id,
  kind: 'flexes',
  bend: OVER,
  ways: 'one way',
  cycles,
  ended,
});

const marked = (id: string, radius: number, looks: 'unmarked' | 'whitened' | 'cracked'): Tally & { kind: 'mark' } => ({
  ...STRIP,
  id,
  kind: 'mark',
  radius,
  looks,
});

const ONE_OF_EACH: readonly Tally[] = [
  flexed('f', 900, 'broke'),
  { ...COMMON, id: 't', kind: 'thickness', countOf: 'lines', count: 2, set: 0.84, measured: 0.9 },
  marked('m', 8, 'whitened'),
  { ...COMMON, id: 's', kind: 'sag', lying: 'flat', force: 0.05, sag: 12, length: 71, thickness: 0.84, depth: 6 },
  { ...COMMON, id: 'h', kind: 'hold', radius: 19.6, thickness: 0.84, hours: 24, held: asRad(2.4), left: asRad(0.4) },
  { ...COMMON, id: 'p', kind: 'pull', direction: 'along lines', strength: 44 },
];

const taught = (row: OwnFilament) => learnRow(row, priorOf(row)).row;
const withAll = (tallies: readonly Tally[]) => tallies.reduce(withTally, EMPTY);
const originOf = (...tallies: readonly Tally[]) => taught(withAll(tallies)).properties.youngsModulus.provenance;

const pulled = (direction: PullTally['direction'], modulus: number): Tally => ({
  ...COMMON,
  id: direction,
  kind: 'pull',
  direction,
  strength: 30,
  modulus,
});

afterEach(() => putOnShelf([]));

describe('a row by its tallies', () => {
  it('is the filament itself while there are none', () => {
    expect(taught(EMPTY)).toEqual(EMPTY);
    expect(taught(EMPTY).properties).toEqual(newTests(PETG, 'x', 'own-x', '', '').properties);
  });

  it.each(ONE_OF_EACH.map((tally) => [tally.kind, tally] as const))(
    'changes by a tally and is to the last figure as before when it goes: %s',
    (_, tally) => {
      const after = taught(withTally(EMPTY, tally));
      expect({ ...after, own: EMPTY.own }).not.toEqual(EMPTY);
      expect(JSON.stringify(taught(withoutTally(after, tally.id)))).toBe(JSON.stringify(EMPTY));
    },
  );

  it('is the same taught twice, and in any order', () => {
    const once = taught(withAll(ONE_OF_EACH));
    expect(taught(once)).toEqual(once);
    const back = taught(withAll(ONE_OF_EACH.toReversed()));
    expect({ ...back, own: once.own }).toEqual(once);
  });

  it('says of each value that tests taught it, and of the rest what was said before', () => {
    const { properties, life, laid } = taught(withAll(ONE_OF_EACH));
    const origins = [
      life.provenance,
      properties.youngsModulus.provenance,
      properties.flexuralModulus!.provenance,
      properties.permissibleStrainSingle.provenance,
      properties.setAfterDayHeld.provenance,
      properties.tensileStrength.provenance,
    ];
    for (const origin of origins) expect(JSON.stringify(origin)).toMatch(/"measured".*test prints: 1 /);
    expect(laid?.lines?.factor).toBeGreaterThan(1);
    expect(properties.yieldStress).toEqual(EMPTY.properties.yieldStress);
    expectClose(properties.setAfterDayHeld.typical, (100 * 0.4) / 2.4, { rel: 1e-12, because: 'round-off' });
    expectClose(properties.permissibleStrainRepeated.typical, 0.6 * properties.permissibleStrainSingle.typical, {
      rel: 5e-3,
      because: 'it is rounded to three figures',
    });
  });

  it('tells stiffness by a bar that was pulled as by one, and by several kinds as by both', () => {
    const pull = pulled('along lines', 1600);
    const sag = ONE_OF_EACH.find(({ kind }) => kind === 'sag')!;
    expect(originOf(pull)).toEqual({ kind: 'measured', what: 'test prints: 1 bar pulled' });
    expect(originOf(sag)).toEqual({ kind: 'measured', what: 'test prints: 1 bar under a weight' });
    expect(originOf(pull, sag)).toEqual({ kind: 'measured', what: 'test prints: 2 bars under a weight or pulled' });
  });

  it.each(['petg', 'tpu95a'] as const)(
    'of a bar of %s as stiff when pulled as is known finds every stiffness right',
    (id) => {
      const prior = filament(id);
      const empty = newTests(prior, 'x', 'own-x', '', '');
      const { youngsModulus, youngsModulusAcrossLayers } = prior.properties;
      const along = taught(withTally(empty, pulled('along lines', youngsModulus.typical))).properties;
      const because = 'a reading that says what was believed moves nothing; round-off of a logarithm';
      for (const name of ['youngsModulus', 'flexuralModulus', 'designModulus'] as const) {
        const before = empty.properties[name];
        if (before === undefined) continue;
        expectClose(along[name]!.typical, before.typical, { rel: 1e-12, because });
        expect(along[name]!.provenance.kind).toBe('measured');
      }
      // Where nothing is known across layers, what is bent with along them stands in, and is all that can be told.
      const across = taught(
        withTally(empty, pulled('across layers', (youngsModulusAcrossLayers ?? youngsModulus).typical)),
      );
      const told = across.properties.youngsModulusAcrossLayers!.typical;
      expectClose(told, bendingModulus(prior, true).typical, { rel: 1e-12, because });
    },
  );

  it('takes the curve that the counts make', () => {
    const five = withAll([flexed('a', 900, 'broke'), flexed('b', 1460, 'broke'), flexed('c', 2500, 'whole')]);
    const found = learnLife(PETG, five.own.tests!.tallies as never);
    if (!found.ok || !found.value) throw new Error('nothing learned');
    const { A, b, B, c } = found.value.life;
    expect(taught(five).life).toMatchObject({ A, b, B, c });
    expect(learnRow(five, PETG).learned.life?.strips).toHaveLength(3);
  });

  it('leaves what was set by hand, whatever tests say', () => {
    const byHand = withValue(EMPTY, 'youngsModulus', { typical: 2100 }, { kind: 'memory' });
    if (!byHand.ok) throw new Error(byHand.problems[0].message);
    const after = taught(ONE_OF_EACH.reduce(withTally, byHand.value));
    expect(after.properties.youngsModulus.typical).toBe(2100);
    expect(after.properties.flexuralModulus?.provenance.kind).toBe('measured');
  });

  it('keeps what is set aside and learns nothing from it', () => {
    const row = withAll(ONE_OF_EACH.map((tally) => ({ ...tally, leftOut: true as const })));
    const after = taught(row);
    expect({ ...after, own: EMPTY.own }).toEqual(EMPTY);
    expect(after.own.tests?.tallies).toHaveLength(ONE_OF_EACH.length);
  });

  it('keeps the figures of before where readings together ask for what no row may have, and says so', () => {
    const wild = [1, 2, 3, 4].map((count): Tally => ({
      ...COMMON,
      id: `t${count}`,
      kind: 'thickness',
      countOf: 'lines',
      count,
      set: 0.42 * count,
      measured: count % 2 === 0 ? 9 : 0.05,
    }));
    const { row, learned } = learnRow(withAll(wild), PETG);
    expect(row.laid).toBeUndefined();
    expect(learned.refused?.map(({ field }) => field)).toContain('laid.lines.sigma');
    expect(wild.map((tally) => isOddIn(learned, tally))).toHaveLength(4);
  });

  it('changes a tally in its place', () => {
    const row = withTallyChanged(withAll(ONE_OF_EACH), flexed('f', 4000, 'whole'));
    expect(row.own.tests?.tallies.map(({ id }) => id)).toEqual(ONE_OF_EACH.map(({ id }) => id));
    expect(taught(row).life.A).not.toBe(taught(withAll(ONE_OF_EACH)).life.A);
  });

  it('goes back to the row of the table where the one that it is like has gone', () => {
    const own = newTests(PETG, 'PETG of mine', 'own-mine', '', '');
    putOnShelf([own]);
    const spool = newTests(own, 'spool', 'own-spool', '', '');
    expect(priorOf(spool).id).toBe('own-mine');
    putOnShelf([]);
    expect(priorOf(spool).id).toBe('petg');
  });
});

const limit = (...tallies: readonly Tally[]) => allowableOfMarks(PETG, tallies)!;

describe('limits from strips over bars', () => {
  it('lie between what did not mark and what did, and are careful', () => {
    // t/(2R + t) of 0.84 mm over 10 and 8 mm.
    const [unmarked, whitened] = [0.84 / 20.84, 0.84 / 16.84];
    const strips = [10, 10, 10].map((radius, i) => marked(`u${i}`, radius, 'unmarked'));
    const white = [8, 8, 8].map((radius, i) => marked(`w${i}`, radius, 'whitened'));
    const { value } = limit(...strips, ...white);
    expect(value.high).toBeGreaterThan(unmarked);
    expect(value.high).toBeLessThan(whitened);
    expect(value.typical).toBeLessThan(value.high!);
    expect(value.low).toBeLessThan(value.typical);
  });

  it('rise with strips left unmarked and fall with strips that whiten', () => {
    const [up, down] = [limit(marked('a', 5, 'unmarked')), limit(marked('a', 20, 'whitened'))];
    expect(up.value.typical).toBeGreaterThan(limit(marked('a', 10, 'unmarked')).value.typical);
    expect(down.value.typical).toBeLessThan(limit(marked('a', 10, 'whitened')).value.typical);
  });

  it('show strips that contradict each other, and drop none', () => {
    const { by, odd } = limit(marked('a', 5, 'unmarked'), marked('b', 8, 'whitened'));
    expect(odd.length).toBeGreaterThan(0);
    expect(by).toHaveLength(2);
  });

  it('tell the strain that breaks at once only where strips broke, or lived past what was believed', () => {
    expect(breakOfMarks(PETG, [marked('a', 8, 'whitened')])).toBeUndefined();
    const cracked = breakOfMarks(PETG, [marked('a', 2, 'cracked'), marked('b', 4, 'whitened')])!;
    expect(cracked.value).toBeGreaterThan(0.84 / 8.84);
    expect(cracked.value).toBeLessThan(PETG.life.firstFlexBreakStrain);
  });
});
