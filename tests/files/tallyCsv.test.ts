import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MOST_TALLIES, type FlexTally, type Tally } from '../../src/core/material/tally.ts';
import { checkTally } from '../../src/core/tallies/checkTally.ts';
import { radians } from '../../src/core/units.ts';
import { readTallies, writeTallies } from '../../src/files/tallyCsv.ts';
import { corpusOf, corpusPart } from '../support/corpus.ts';
import { ownPetg } from '../support/ownFilaments.ts';
import { anyTally, anyTests } from '../support/tallies.ts';

const rowOf = (tallies: readonly Tally[], spool = '3') => {
  const row = ownPetg();
  return { ...row, own: { ...row.own, tests: { printer: 'left one', spool, like: 'petg', tallies } } };
};

function talliesOf(text: string | Uint8Array): readonly Tally[] {
  const result = readTallies(text);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

function notesOf(text: string): readonly string[] {
  const result = readTallies(text);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.notes.map(({ message }) => message);
}

function refusalsOf(text: string): readonly string[] {
  const result = readTallies(text);
  return result.ok ? [] : result.problems.map(({ message }) => message);
}

const FLEXED: FlexTally = {
  kind: 'flexes',
  id: 't-1',
  date: '2026-03-04',
  bend: { way: 'to', turn: radians(90), length: 10 },
  thickness: 0.84,
  lying: 'flat',
  ways: 'one way',
  cycles: 2000,
  ended: 'whole',
  seen: 'whitened from 700',
};

const HEAD = 'date,thickness mm,bar radius mm,lying,ways,flexes,ended';
const LINE = '2026-03-04,0.84,5,flat,one way,700,broke';

const days = (...all: string[]) => [HEAD, ...all.map((day) => LINE.replace('2026-03-04', day))].join('\n');
const keysOf = (...lines: string[]) => talliesOf([HEAD, ...lines].join('\n')).map(({ id }) => id);
/** Code units of a text, of which each here is a letter. */
const unitsOf = (text: string) => Array.from({ length: text.length }, (_, at) => text.charCodeAt(at));

/** Whether two values are the same but for the last of twelve figures, to which angles are written. */
function alike(one: unknown, other: unknown): boolean {
  if (typeof one === 'number' && typeof other === 'number') return Math.abs(one - other) <= 6e-12 * Math.abs(other);
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return one === other;
  const [mine, its] = [Object.entries(one), new Map<string, unknown>(Object.entries(other))];
  return mine.length === its.size && mine.every(([key, value]) => its.has(key) && alike(value, its.get(key)));
}

describe('tallies as a table', () => {
  it('read after writing are the same', () => {
    fc.assert(
      fc.property(anyTests, (tests) => {
        fc.pre(tests.tallies.length > 0);
        const row = rowOf(tests.tallies, tests.spool);
        const back = readTallies(writeTallies(row));
        expect(back.ok && alike(back.value, tests.tallies), JSON.stringify(back)).toBe(true);
        expect(back.ok && back.notes).toEqual([]);
        expect(back.ok && writeTallies(rowOf(back.value, tests.spool))).toBe(writeTallies(row));
      }),
    );
  });

  it('say in words and units what was measured, with angles in degrees', () => {
    expect(writeTallies(rowOf([FLEXED]))).toBe(
      '\uFEFFwhat,date,thickness mm,turned °,free length mm,lying,ways,flexes,ended,seen,key,printer,spool\r\n' +
        'flexed,2026-03-04,0.84,90,10,flat,one way,2000,whole,whitened from 700,t-1,left one,3\r\n',
    );
  });

  it('are a head to fill in where there are none', () => {
    const text = writeTallies(ownPetg());
    expect(text.split('\r\n')).toHaveLength(2);
    expect(text).toContain('bar radius mm');
    expect(refusalsOf(text)).toEqual(['The table has a head and no rows below it']);
  });

  it.each(['=1+1', '+1', '-1', '@x', "'=1", "''", "it's", ' =1', '=HYPERLINK("x";"y")'])(
    'hold %j as words that no spreadsheet works out, and read back the same',
    (seen) => {
      const text = writeTallies(rowOf([{ ...FLEXED, seen }], '=2'));
      const cells = text.replaceAll('"', '').split(/[,;\r\n]+/);
      for (const cell of cells) expect(cell).not.toMatch(/^\s*[=+\-@]/);
      expect(talliesOf(text)).toEqual([{ ...FLEXED, seen: seen.trim() }]);
    },
  );

  it.each([
    ['semicolons and decimal commas', HEAD.replaceAll(',', ';'), LINE.replaceAll(',', ';').replace('0.84', '0,84')],
    ['semicolons and decimal points', HEAD.replaceAll(',', ';'), LINE.replaceAll(',', ';')],
    ['tabs and decimal commas', HEAD.replaceAll(',', '\t'), LINE.replaceAll(',', '\t').replace('0.84', '0,84')],
    ['a mark at its head', `\uFEFF${HEAD}`, LINE],
    ['capitals', HEAD.toUpperCase(), LINE.toUpperCase()],
    ['units in brackets', 'Date,Thickness (mm),Bar radius [mm],Lying,Ways,Flexes,Ended', LINE],
    ['its separator in a line before', `sep=,\n${HEAD}`, LINE],
    ['everything in quotes', `"${HEAD.replaceAll(',', '","')}"`, `"${LINE.replaceAll(',', '","')}"`],
    ['other columns first', `ended,${HEAD.replace(',ended', '')}`, `broke,${LINE.replace(',broke', '')}`],
    ['other units', HEAD.replace('thickness mm', 'thickness µm'), LINE.replace('0.84', '840')],
    ['a day as it is written in Germany', HEAD, LINE.replace('2026-03-04', '4.3.2026')],
    ['a day with a time', HEAD, LINE.replace('2026-03-04', '2026-03-04 00:00:00')],
    ['spaces between thousands', HEAD, LINE.replace('700', '"700"')],
  ])('with %s read the same', (_, head, line) => {
    for (const end of ['\n', '\r\n', '\r']) {
      expect(talliesOf(`${head}${end}${end}${line}${end}`)).toEqual([
        { ...FLEXED, id: expect.any(String), seen: '', bend: { way: 'over', radius: 5 }, cycles: 700, ended: 'broke' },
      ]);
    }
  });

  it('read from bytes in the encodings in which spreadsheets keep them', () => {
    const text = writeTallies(rowOf([FLEXED])).replaceAll(',', ';');
    const utf16 = Uint8Array.from(unitsOf(text).flatMap((unit) => [unit & 255, unit >> 8]));
    const ansi = Uint8Array.from(unitsOf(text.slice(1)));
    for (const bytes of [new TextEncoder().encode(text), utf16, ansi]) expect(talliesOf(bytes)).toEqual([FLEXED]);
  });

  it('read inches, radians, grams and minutes as such', () => {
    const bent = talliesOf(
      'date,thickness in,turned rad,free length cm,flexes,ended,lying,ways\n2026-03-04,0.1,1.5,2,9,broke,flat,one way',
    );
    expect(bent).toMatchObject([{ thickness: 2.54, bend: { way: 'to', turn: 1.5, length: 20 } }]);
    const hung = talliesOf(
      'what,date,lying,weight g,sag mm,free length mm,thickness mm,width mm\nhung,2026-03-04,flat,20,10,70,0.84,6',
    );
    // One gram weighs 9.80665 mN by definition of the standard gravity.
    expect(hung).toMatchObject([{ force: 0.196133 }]);
    const held = talliesOf(
      'what,date,bar radius mm,thickness mm,held for min,held °,left °\nheld,2026-03-04,5,0.84,90,120,10',
    );
    expect(held).toMatchObject([{ hours: 1.5, held: radians(120), left: radians(10) }]);
  });

  it('tell days with strokes where some of them can only mean one order, and else refuse them', () => {
    expect(talliesOf(days('3/4/2026', '3/25/2026')).map(({ date }) => date)).toEqual(['2026-03-04', '2026-03-25']);
    expect(talliesOf(days('4/3/2026', '25/3/2026')).map(({ date }) => date)).toEqual(['2026-03-04', '2026-03-25']);
    expect(refusalsOf(days('3/4/2026'))).toEqual([
      'line 2 was left out: date “3/4/2026” cannot be told; write year, month and day as 2026-11-25',
    ]);
    expect(refusalsOf(days('31.4.2026'))[0]).toContain('date “2026-04-31” is no day');
  });

  it('take what is usual where optional columns are missing, and say so', () => {
    const text =
      'date,thickness mm,bar radius mm,flexes,ended\n2026-03-04,0.84,5,700,broke\n2026-03-05,0.84,5,800,whole\n';
    expect(talliesOf(text)).toMatchObject([{ lying: 'flat', ways: 'one way' }, { seen: '' }]);
    expect(notesOf(text)).toEqual([
      '2 rows do not say it, and lying “flat” was taken; change it where it is not so',
      '2 rows do not say it, and ways “one way” was taken; change it where it is not so',
    ]);
  });

  it('tell columns that are not known, and spools that are several', () => {
    expect(notesOf(`${HEAD},colour,spool\n${LINE},blue,3\n${LINE},red,4`)).toEqual([
      'column “colour” is not known here and was left out',
      'The table names 2 spools, and all of its tallies were read; bring them in one spool at a time',
    ]);
    expect(notesOf(`${HEAD.replace('radius mm', 'radius furlong')},radius mm\n${LINE},5`)).toEqual([
      'column “bar radius furlong” is not known here and was left out',
    ]);
  });

  it.each([
    ['0.84', '0', 'thickness of the strip: 0 mm is below 0.02 mm'],
    ['0.84', '', 'thickness is missing; give it in a column “thickness mm”'],
    ['0.84', 'thin', 'thickness “thin” is no number that can be told; write figures alone, with a point'],
    ['0.84', '"0,84"', 'thickness “0,84” is no number that can be told; write figures alone, with a point'],
    ['0.84', '1e999', 'thickness “1e999” is no number'],
    ['700', '"2,000"', 'flexes “2,000” is no number that can be told; write a whole number without marks'],
    ['700', '2.000', 'flexes “2.000” is no number'],
    ['700', '7.5', 'number of flexes: 7.5 is not whole'],
    ['flat', 'leaning', 'lying is “leaning”; give one of flat, crease, upright'],
    ['broke', '', 'ended is missing'],
    [',5,', ',,', 'nothing says how it was bent; give “bar radius mm”, or “turned °” and “free length mm”'],
    ['2026-03-04', '', 'date is missing; give it in a column “date”'],
    ['broke', '"broke', 'a quotation mark is never closed'],
  ])('with %j as %j leave that row out by its line and read the others', (was, is, why) => {
    const text = `${HEAD}\n${LINE}\n${LINE.replace(was, is)}\n`;
    expect(talliesOf(text)).toHaveLength(1);
    expect(notesOf(text)[0]).toContain(`line 3 was left out: ${why}`);
  });

  it('count lines where a cell holds several', () => {
    expect(notesOf(`${HEAD},seen\n${LINE},"two\nlines"\n${LINE.replace('0.84', '0')},x\n`)[0]).toContain('line 4 was');
  });

  it('of no kind, of two kinds and bent in two ways are left out', () => {
    const both = `${HEAD},turned,free length\n${LINE},90,10`;
    expect(refusalsOf(both)[0]).toContain('bar radius and turned both stand there; leave one of them empty');
    expect(refusalsOf(`what,${HEAD}\ndipped,${LINE}`)).toEqual([
      'line 2 was left out: what is “dipped”; give one of flexed, measured, bent once, hung, held, pulled',
    ]);
    expect(refusalsOf(`${HEAD},strength MPa\n${LINE},40`)[0]).toContain('what is missing; give it in a column “what”');
  });

  it('with one key twice get another, since a copied row is another strip', () => {
    const keys = talliesOf(`${HEAD},key\n${LINE},t-1\n${LINE},t-1\n${LINE},\n`).map(({ id }) => id);
    expect(keys[0]).toBe('t-1');
    expect(new Set(keys).size).toBe(3);
  });

  it('without keys get the same ones each time, so that a table brought in twice brings nothing new', () => {
    const other = LINE.replace('700', '701');
    const keys = keysOf(LINE, LINE, other);
    expect(keysOf(LINE, LINE, other)).toEqual(keys);
    expect(keysOf(other, LINE, LINE)).toEqual([keys[2], keys[0], keys[1]]);
    expect(new Set(keys).size).toBe(3);
  });

  it('beyond the most that a filament carries are told and left out', () => {
    const text = [HEAD, ...Array.from({ length: MOST_TALLIES + 30 }, () => LINE)].join('\n');
    expect(talliesOf(text)).toHaveLength(MOST_TALLIES);
    const notes = notesOf(text);
    expect(notes).toHaveLength(20);
    expect(notes[0]).toBe(`line ${MOST_TALLIES + 2} was left out: ${MOST_TALLIES} tallies are kept at most`);
    expect(notes[19]).toContain('(and 10 more)');
  });

  it.each([
    ['', 'The table is empty'],
    ['a,b\n1,2', 'The head of the table is not one of tallies'],
    ['strain %,cycles\n4,700', 'The table says how far strips were strained, not how they were bent'],
    [HEAD, 'The table has a head and no rows below it'],
    [' '.repeat(6_000_001), 'The table holds 6000001 characters'],
  ])('of %.20j are refused with what is wanted', (text, why) => {
    expect(refusalsOf(text)[0]).toContain(why);
  });

  it('of any text and any bytes are tallies that can be used or problems, never an exception', () => {
    const table = fc
      .array(
        fc.array(
          fc.constantFrom('=', '"', "'", ',', ';', '\t', '\n', '\r', '5', '0.84', 'flat', 'broke', '\uFEFF', 'ü'),
          { maxLength: 30 },
        ),
        { maxLength: 5 },
      )
      .map((lines) => `${HEAD}\n${lines.map((line) => line.join('')).join('\n')}`);
    const anything = fc.oneof(fc.string({ unit: 'binary' }), table, fc.uint8Array({ maxLength: 300 }));
    fc.assert(
      fc.property(anything, (given) => {
        const result = readTallies(given);
        if (result.ok) for (const tally of result.value) expect(checkTally(tally)).toEqual([]);
        else expect(result.problems.length).toBeGreaterThan(0);
      }),
    );
  });

  it('cut off anywhere or with a letter changed are tallies or problems', () => {
    const [one, two] = fc.sample(anyTally, { seed: 11, numRuns: 2 });
    const whole = writeTallies(rowOf([FLEXED, one!, two!]));
    fc.assert(
      fc.property(fc.nat({ max: whole.length }), fc.string({ unit: 'binary', maxLength: 1 }), (at, letter) => {
        const cut = readTallies(whole.slice(0, at));
        expect(cut.ok || cut.problems.length > 0).toBe(true);
        const changed = readTallies(`${whole.slice(0, at)}${letter}${whole.slice(at + 1)}`);
        expect(changed.ok || changed.problems.length > 0).toBe(true);
      }),
    );
  });
});

describe.skipIf(corpusOf('csv').length === 0)('tables of others about fatigue', () => {
  it('with strains and counts alone are refused, since nobody can tell how those bars were bent', () => {
    for (const name of ['strain-fatigue-cycles-20-5', 'strain-life-summary']) {
      expect(readTallies(corpusPart(`csv/${name}.csv`))).toMatchObject({
        ok: false,
        problems: [{ code: 'unreadable' }],
      });
    }
  });
});
