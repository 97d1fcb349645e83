/** Bars that are pulled: what is said of them, and how the tables of their forces come in. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { PullTally } from '../../../../src/core/material/tally.ts';
import { putOnShelf } from '../../../../src/core/material/shelf.ts';
import { wholeRow } from '../../../../src/core/material/wholeRow.ts';
import { learnRow, newTests, withTally } from '../../../../src/core/tallies/learnRow.ts';
import { MAX_TABLE_BYTES } from '../../../../src/files/limits.ts';
import { writeTallies } from '../../../../src/files/tallyCsv.ts';
import { useMessages } from '../../../../src/store/messages.ts';
import { useSession } from '../../../../src/store/session.ts';
import { FIRST_TESTS, useTests } from '../../../../src/store/tests.ts';
import { expectedStiffness, expectedStrength } from '../../../../src/ui/tests/pull/expected.ts';
import { mainField, stiffnessField } from '../../../../src/ui/tests/tally/mainField.ts';
import { takeCsv, takeForces } from '../../../../src/ui/tests/takeCsv.ts';
import { trialNow } from '../../../../src/ui/tests/trial.ts';
import { grouped } from '../../../../src/ui/text/numbers.ts';
import { madeWith, tallyText } from '../../../../src/ui/text/testsTallyText.ts';
import { filament } from '../../../support/filament.ts';

const PULLED: PullTally = {
  kind: 'pull',
  id: 'p',
  date: '2026-11-25',
  seen: '',
  direction: 'along lines',
  strength: 44,
};

const petg = filament('petg');
const taughtPull = (tally: PullTally) => learnRow(withTally(newTests(petg, 'x', 'own-x', '', ''), tally), petg).row;

describe('a pulled bar', () => {
  it('is said with its stiffness where it has one', () => {
    expect(tallyText(PULLED, 'mm')).toBe('along lines: 44\u00a0MPa');
    expect(tallyText({ ...PULLED, modulus: 1987.6 }, 'mm')).toBe(
      `along lines: 44\u00a0MPa, stiffness ${grouped(1988)}\u00a0MPa`,
    );
    expect(madeWith({ ...PULLED, direction: 'across layers' }, 'mm')).toBe('across layers');
  });

  it('has a field for either figure, which names its limits', () => {
    const put = vi.fn<() => undefined>();
    const of = { name: 'Pull 1', unit: 'mm', put } as const;
    const strength = mainField(PULLED, of);
    if ('options' in strength) throw new Error('a strength is a figure');
    expect(strength.label).toBe('Broke at, pull 1');
    expect(strength.take(900, 44)).toBe('Broke at, pull 1 may be 0.1 to 500\u00a0MPa.');
    expect(stiffnessField(PULLED, of)).toBeUndefined();
    const stiffness = stiffnessField({ ...PULLED, modulus: 2000 }, of);
    expect(stiffness?.take(0, 2000)).toBe('Stiffness, pull 1 may be 1 to 20000\u00a0MPa.');
    expect(put).not.toHaveBeenCalled();
    expect(stiffness?.take(2100, 2000)).toBeUndefined();
    expect(put).toHaveBeenCalledWith({ ...PULLED, modulus: 2100 }, '2100\u00a0MPa', '2000', undefined);
  });

  it('is expected as strong and as stiff as the row says in that direction', () => {
    const { tensileStrength, acrossLayersStrengthRatio } = wholeRow(petg).properties;
    const along = tensileStrength.typical;
    expect(expectedStrength(petg, 'along lines')).toBe(Number(along.toPrecision(2)));
    const across = along * (acrossLayersStrengthRatio?.typical ?? 1);
    expect(across).toBeLessThan(along);
    expect(expectedStrength(petg, 'across layers')).toBe(Number(across.toPrecision(2)));
    const { youngsModulus, youngsModulusAcrossLayers } = petg.properties;
    expect(expectedStiffness(petg, 'along lines')).toBe(Number(youngsModulus.typical.toPrecision(2)));
    expect(expectedStiffness(petg, 'across layers')).toBe(Number(youngsModulusAcrossLayers!.typical.toPrecision(2)));
    const tpu = filament('tpu95a');
    expect(expectedStiffness(tpu, 'across layers')).toBe(expectedStiffness(tpu, 'along lines'));
    // A spool that was taught across layers is expected to go on so.
    const spool = taughtPull({ ...PULLED, direction: 'across layers', strength: 21 });
    expect(expectedStrength(spool, 'across layers')).toBe(21);
  });
});

/**
 * A bar of 10 × 4 mm, E = 2000 MPa over 50 mm: 40 mm²·2000 MPa/50 mm = 1600 N a millimetre, until it parts at 1.2 mm and
 * 1920 N, which are 48 MPa.
 */
const CURVE = Array.from({ length: 241 }, (_, i) => `${(i * 0.005).toFixed(3)},${(8 * i).toFixed(1)}`);
const TABLE = ['extension mm,force N', ...CURVE, '1.205,3', '1.210,2'].join('\n');

const fileOf = (text: string, name = 'bar.csv') => new File([text], name);
const message = () => useMessages.getState().message;
const pulls = () => trialNow().spool?.own.tests.tallies.filter((tally) => tally.kind === 'pull') ?? [];
const at = (hash: string) => vi.stubGlobal('location', { hash });

beforeEach(() => {
  useTests.setState({ values: { ...FIRST_TESTS, doing: 'pull', knowsGauge: true } });
  useMessages.getState().clear();
  at('#tests');
});

afterEach(() => {
  while (useSession.getState().own.length > 0) useSession.getState().undo();
  putOnShelf([]);
  vi.unstubAllGlobals();
});

describe('a table of forces', () => {
  it('comes in as one bar and one step to undo, with the figures that it was made with', async () => {
    await takeForces(fileOf(TABLE));
    expect(pulls()).toEqual([
      expect.objectContaining({
        direction: 'along lines',
        strength: 48,
        modulus: 2000,
        seen: 'read from “bar.csv”',
      }),
    ]);
    expect(message()).toBeUndefined();
    useSession.getState().undo();
    expect(useSession.getState().own).toEqual([]);
  });

  it('is read with the size and the direction that the sentence gives', async () => {
    useTests.getState().set({ barWidth: 20, direction: 'across layers' });
    await takeForces(fileOf(TABLE));
    expect(pulls()).toEqual([expect.objectContaining({ direction: 'across layers', strength: 24, modulus: 1000 })]);
  });

  it('tells why there is no stiffness, and takes the strength', async () => {
    useTests.getState().set({ knowsGauge: false });
    await takeForces(fileOf(TABLE));
    expect(pulls()).toEqual([expect.not.objectContaining({ modulus: expect.anything() as unknown })]);
    expect(message()).toEqual({
      grade: 'caution',
      text: expect.stringMatching(
        /^“bar\.csv” was read but for this\. No stiffness can be told: .* give the gauge length\.$/,
      ) as unknown,
    });
  });

  it('is no second bar when it is read again', async () => {
    await takeForces(fileOf(TABLE));
    await takeForces(fileOf(TABLE));
    expect(pulls()).toHaveLength(1);
    expect(message()?.text).toContain('in already, as pull 1');
    await takeForces(fileOf(TABLE, 'other.csv'));
    expect(pulls()).toHaveLength(2);
  });

  it('comes in under any name that a file may have', async () => {
    await takeForces(fileOf(TABLE, `${'long '.repeat(50)}\n.csv`));
    expect(pulls()).toHaveLength(1);
    expect(pulls()[0]?.seen.length).toBeLessThan(100);
  });

  it.each([
    ['hello there', 'force is missing'],
    ['extension mm,force N\n', 'no reading has a force above nought'],
    [TABLE.replace('force N', 'force kN'), '48000 MPa is above 500 MPa'],
  ])('that is none is refused, and nothing is put in: %#', async (text, why) => {
    await takeForces(fileOf(text));
    expect(useSession.getState().own).toEqual([]);
    expect(message()?.grade).toBe('fail');
    expect(message()?.text.toLowerCase()).toContain(`“bar.csv” was not taken. `);
    expect(message()?.text.toLowerCase()).toContain(why.toLowerCase());
  });

  it('of which the forces are a thousand times too large has a remedy', async () => {
    await takeForces(fileOf(TABLE.replace('force N', 'force kN')));
    expect(message()?.text).toContain('Check the width and the thickness of the bar, and the unit');
  });

  it('past any sense is refused unread', async () => {
    const film = { name: 'film.csv', size: MAX_TABLE_BYTES + 1, arrayBuffer: vi.fn<() => Promise<ArrayBuffer>>() };
    await takeForces(film as never);
    expect(film.arrayBuffer).not.toHaveBeenCalled();
    expect(message()?.text).toContain(`at most ${MAX_TABLE_BYTES}`);
  });
});

describe('a table that is dropped', () => {
  it('is one of forces where bars are pulled', async () => {
    await takeCsv(fileOf(TABLE));
    expect(pulls()).toHaveLength(1);
  });

  it('elsewhere is told where it goes', async () => {
    useTests.getState().set({ doing: 'flexes' });
    await takeCsv(fileOf(TABLE));
    expect(message()?.text).toContain('Choose “Pull” as the first word under Tests');
    useTests.getState().set({ doing: 'pull' });
    at('#joints');
    await takeCsv(fileOf(TABLE));
    expect(message()?.text).toContain('Choose “Pull” as the first word under Tests');
    expect(useSession.getState().own).toEqual([]);
  });

  it('is one of tallies wherever it says so', async () => {
    await takeForces(fileOf(TABLE));
    const spool = trialNow().spool!;
    const text = writeTallies(spool).replace('48', '47');
    await takeCsv(fileOf(text, 'mine.tallies.csv'));
    expect(pulls()).toEqual([expect.objectContaining({ strength: 47 })]);
  });

  it('and says nothing of itself is told what forces look like where bars are pulled, what tallies look like elsewhere', async () => {
    await takeCsv(fileOf('a,b\n1,2'));
    expect(message()?.text).toContain('give it in a column “force N”');
    useTests.getState().set({ doing: 'flexes' });
    await takeCsv(fileOf('a,b\n1,2'));
    expect(message()?.text).toContain('not one of tallies');
  });
});
