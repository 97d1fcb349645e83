import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Result } from '../../src/core/result.ts';
import type { PulledBar } from '../../src/core/tallies/pulledBar.ts';
import { readPullCurve, saysForces } from '../../src/files/pullCurve.ts';
import { writeTallies } from '../../src/files/tallyCsv.ts';
import { expectClose } from '../support/close.ts';
import { corpusOf, corpusPart } from '../support/corpus.ts';
import { ownPetg } from '../support/ownFilaments.ts';
import { anyTests } from '../support/tallies.ts';

const AREA = 8;
const GAUGE = 50;
const [MODULUS, STRENGTH] = [2100, 42];

/** Stress of a bar that is straight at first, bends over as plastics do, and breaks at its strength. */
const straight = (strain: number) => Math.min(MODULUS * strain, STRENGTH);

interface Made {
  /** Strain between two readings. */
  readonly step?: number;
  /** Strain during which it is only pulled straight. */
  readonly slack?: number;
  readonly stress?: (strain: number) => number;
  readonly noise?: (index: number) => number;
}

/** Readings of a bar until it has broken, strain as a fraction. */
function made({ step = 1e-4, slack = 0, stress = straight, noise = () => 0 }: Made) {
  const count = Math.round((0.03 + slack) / step);
  const rise = Array.from({ length: count }, (_, i) => {
    const strain = i * step;
    return [strain, AREA * stress(Math.max(0, strain - slack)) + noise(i)] as const;
  });
  const broken = Array.from({ length: 20 }, (_, i) => [(count + i) * step, 1] as const);
  return [...rise, ...broken];
}

const table = (head: string, rows: readonly (readonly [number, number])[], of: (strain: number) => number) =>
  [head, ...rows.map(([strain, force]) => `${of(strain)},${force}`)].join('\n');

const byStrain = (what: Made) =>
  readPullCurve(
    table('strain %,force N', made(what), (e) => 100 * e),
    { area: AREA },
  );

function barOf(read: Result<PulledBar>): PulledBar {
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

const notesOf = (read: Result<PulledBar>) => (read.ok ? read.notes.map(({ message }) => message) : []);

const EXACT = { rel: 1e-9, because: 'a straight line through points of one, round-off alone' } as const;

describe('the table of a pulled bar', () => {
  it('gives back the strength and the stiffness with which it was made', () => {
    const { strength, modulus } = barOf(byStrain({}));
    expectClose(strength, STRENGTH, EXACT);
    expectClose(modulus ?? 0, MODULUS, EXACT);
  });

  it('gives the same where the stretch stands as an extension, or as a time at a speed', () => {
    const rows = made({});
    const long = table('extension mm,force N', rows, (strain) => strain * GAUGE);
    expectClose(barOf(readPullCurve(long, { area: AREA, gaugeLength: GAUGE })).modulus ?? 0, MODULUS, EXACT);
    // 5 mm/min over 50 mm strain it by a tenth in a minute.
    const timed = table('time ms,force kN', rows, (strain) => (strain / 0.1) * 60_000).replaceAll(
      /,([\d.]+)$/gm,
      (_, newtons: string) => `,${Number(newtons) / 1000}`,
    );
    const bar = barOf(readPullCurve(timed, { area: AREA, gaugeLength: GAUGE, mmPerMinute: 5 }));
    expectClose(bar.modulus ?? 0, MODULUS, EXACT);
    expectClose(bar.strength, STRENGTH, EXACT);
  });

  it('counts strains from where the bar begins to carry', () => {
    expectClose(barOf(byStrain({ slack: 0.0042 })).modulus ?? 0, MODULUS, EXACT);
    // Grips that set: stress grows with the square of the strain up to 0.1 % before it goes straight.
    const toe = (strain: number) =>
      strain < 0.001 ? (MODULUS * strain ** 2) / 0.002 : Math.min(MODULUS * (strain - 0.0005), STRENGTH);
    expectClose(barOf(byStrain({ stress: toe })).modulus ?? 0, MODULUS, EXACT);
  });

  it('of a curve that bends over at once has the slope between 0.05 % and 0.25 %', () => {
    const bend = 40_000;
    const stress = (strain: number) => MODULUS * strain - bend * strain ** 2;
    // The chord of Eε − kε² from a to b has the slope E − k(a + b).
    expectClose(barOf(byStrain({ stress })).modulus ?? 0, MODULUS - bend * 0.003, {
      rel: 0.003,
      because: 'the foot is taken along the steepest part, whose line meets nought 1/12·(0.2 %)²·k/E ≈ 0.006 % early',
    });
  });

  it('is not led astray by noise as large as that of a cheap load cell', () => {
    const noises = fc.sample(fc.double({ min: -1, max: 1, noNaN: true }), { seed: 3, numRuns: 1000 });
    const { strength, modulus } = barOf(byStrain({ step: 2e-5, noise: (i) => noises[i % 1000]! }));
    expectClose(strength, STRENGTH, { abs: 1 / AREA, because: 'a newton of noise on the largest force' });
    expectClose(modulus ?? 0, MODULUS, {
      rel: 0.04,
      because:
        '100 readings off by 0.58 N each about a rise of 34 N: 1.7 % of the slope, and a steepest part chosen of many',
    });
  });

  it('passes over what happened in the grips before the last rise', () => {
    const grips = [0, 60, 200, 345, 40, 3, 2].map((force) => [0, force] as const);
    const rows = [...grips, ...made({})];
    const { strength, modulus } = barOf(
      readPullCurve(
        table('strain %,force N', rows, (e) => 100 * e),
        { area: AREA },
      ),
    );
    expectClose(strength, STRENGTH, EXACT);
    expectClose(modulus ?? 0, MODULUS, {
      rel: 0.005,
      because: 'the last reading of the slack stands among 20 of the rise',
    });
  });

  it('tells no stiffness where the stretch is not known, and says what is wanted', () => {
    const rows = made({});
    const of = (head: string, more = {}) =>
      readPullCurve(
        table(head, rows, (strain) => strain * GAUGE),
        { area: AREA, ...more },
      );
    for (const [head, more, why] of [
      [
        'time s,force N',
        {},
        'time alone does not tell how far the bar was stretched; give the gauge length and the speed',
      ],
      ['time s,force N', { gaugeLength: 50 }, 'time alone'],
      ['time s,force N', { gaugeLength: 0, mmPerMinute: 5 }, 'time alone'],
      ['extension mm,force N', {}, 'an extension is a strain only over a length; give the gauge length'],
      ['strain,force N', {}, 'the strain has no unit; head its column “strain %” or “strain mm/mm”'],
      ['number,force N', {}, 'the table has forces alone; give a column “extension mm” or “strain %”'],
    ] as const) {
      const read = of(head, more);
      expect(barOf(read)).toEqual({ strength: expect.closeTo(STRENGTH, 9) });
      expect(notesOf(read)).toEqual([expect.stringContaining(`no stiffness can be told: ${why}`)]);
      expect(read.ok && read.notes[0]?.code).toBe('missing-field');
    }
  });

  it('tells no stiffness of readings too far apart, nor one that no plastic has', () => {
    expect(notesOf(byStrain({ step: 0.001 }))[0]).toContain('fewer than 4 readings lie between 0.05 % and 0.25 %');
    const stiff = byStrain({ stress: (strain) => Math.min(10 * MODULUS * strain, 100) });
    expect(notesOf(stiff)).toEqual([expect.stringContaining('stiffness when pulled: 21000 MPa is above 20000 MPa')]);
    expect(barOf(stiff).modulus).toBeUndefined();
  });

  it('says so of a bar that had not broken', () => {
    const whole = made({ stress: (strain) => MODULUS * strain }).slice(0, 200);
    expect(
      notesOf(
        readPullCurve(
          table('strain %,force N', whole, (e) => 100 * e),
          { area: AREA },
        ),
      ),
    ).toEqual([
      'the bar had not broken when the readings end, so that it is at least as strong; pull it until it breaks',
    ]);
  });

  it('leaves out rows without figures, by their line', () => {
    const read = readPullCurve('time s;force N\n0;0,5\n1;n/a\n2;300,5\n3;2\n', { area: 10 });
    expectClose(barOf(read).strength, 30.05, EXACT);
    expect(notesOf(read)).toContain('line 3 was left out: it holds no figures; write figures alone');
  });

  it.each([
    ['', AREA, 'missing-field'],
    ['time s,extension mm\n1,2', AREA, 'missing-field'],
    ['time s,force N\n', AREA, 'unreadable'],
    ['time s,force N\n1,-5\n2,-9', AREA, 'unreadable'],
    ['time s,force N\n1,5\n2,900', 0, 'below-minimum'],
    ['time s,force N\n1,5\n2,900', Number.NaN, 'not-a-number'],
    ['time s,force N\n1,5\n2,900', 20_000, 'above-maximum'],
    ['time s,force N\n1,5\n2,900', 1, 'above-maximum'],
    ['time s,force N\n1,0.5\n2,0.1', 100, 'below-minimum'],
  ])('as %j with an area of %d is refused', (text, area, code) => {
    expect(readPullCurve(text, { area })).toMatchObject({ ok: false, problems: [{ code }] });
  });

  it('of any text is a bar or problems, never an exception', () => {
    const figure = fc.oneof(fc.double().map(String), fc.constantFrom('', '"', 'x', '1e999', '-1'));
    const any = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc
        .array(fc.tuple(figure, figure))
        .map((rows) => ['strain %,force N', ...rows.map((row) => row.join(','))].join('\n')),
    );
    fc.assert(
      fc.property(any, (text) => {
        const read = readPullCurve(text, { area: AREA, gaugeLength: GAUGE, mmPerMinute: 5 });
        for (const value of read.ok ? Object.values(read.value) : []) expect(Number.isFinite(value)).toBe(true);
        expect(read.ok || read.problems.length > 0).toBe(true);
      }),
    );
  });
});

describe('whether a table is one of forces', () => {
  it.each([
    ['time s,force N\n0,0', true],
    ['Extension (mm);Load [kN]\n0;0', true],
    ['strain %\tforce N\n0\t0', true],
    ['force N,number\n0,0', false],
    ['extension mm,time s\n0,0', false],
    ['what,force N,time s\nhung,3,1', false],
    ['weight N,sag mm\n3,1', false],
    ['', false],
    ['"', false],
  ])('is told by its head: %j', (text, forces) => {
    expect(saysForces(text)).toBe(forces);
  });

  it('is never so of tallies, whatever they are', () => {
    fc.assert(
      fc.property(anyTests, (tests) => {
        const row = ownPetg();
        expect(saysForces(writeTallies({ ...row, own: { ...row.own, tests } }))).toBe(false);
      }),
    );
  });
});

/** Areas of these bars, as stated beside their curves: 25 mm² along the lines, 50 mm² across the layers. */
const ALONG = 25;
const ACROSS = 50;

const corpusText = (name: string) => corpusPart(`csv/printed-${name}.csv`);
const pulled = (name: string, area: number) => readPullCurve(corpusText(`pla-pull-${name}`), { area });

/** Strengths along and across [MPa] of the plain PLA of the table that comes with the curves: means of up to five bars. */
function plaRows() {
  const rows = new TextDecoder().decode(corpusText('strength-xy-z')).split(/\r?\n/);
  return rows
    .map((row) => row.split(','))
    .flatMap(([, plastic, xy, z]) => (plastic === 'PLA' ? [[Number(xy), Number(z)] as const] : []));
}

const mean = (one: number, other: number) => (one + other) / 2;

describe.skipIf(corpusOf('csv').length === 0)('curves of printed PLA that others have published', () => {
  it.each([
    ['pull-xy-1', ALONG, 750.5615269827837],
    ['pull-xy-2', ALONG, 747.9824049533398],
    ['pull-z-1', ACROSS, 513.8529143188046],
    ['pull-z-2', ACROSS, 613.7767433573132],
  ])('%s breaks at the largest force that another program finds in its column', (name, area, newtons) => {
    const read = readPullCurve(corpusText(`pla-${name}`), { area });
    expectClose(barOf(read).strength, newtons / area, EXACT);
    expect(notesOf(read)).toEqual([expect.stringContaining('no stiffness can be told: time alone does not tell')]);
  });

  it('lie within the scatter of single bars about the row of their table, along and across', () => {
    const along = mean(barOf(pulled('xy-1', ALONG)).strength, barOf(pulled('xy-2', ALONG)).strength);
    const across = mean(barOf(pulled('z-1', ACROSS)).strength, barOf(pulled('z-2', ACROSS)).strength);
    const rows = plaRows();
    const [xy = 0, z = 0] = rows.toSorted(([a], [b]) => a - b)[0] ?? [];
    expect([xy, z]).toEqual([33.3, 9.45]);
    const because = 'two bars beside a mean of up to five, which were seen to lie up to 20 % off their mean';
    expectClose(along, xy, { rel: 0.2, because });
    expectClose(across, z, { rel: 0.2, because });
    const ratios = rows.map(([one, other]) => other / one);
    expect(across / along).toBeGreaterThan(Math.min(...ratios));
    expect(across / along).toBeLessThan(Math.max(...ratios));
  });
});
