import { describe, expect, it } from 'vitest';
import { doubtOf } from '../../../src/core/design/doubt.ts';
import type { DoubtAnswer } from '../../../src/core/design/doubtAnswer.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import { USUAL_SPREAD } from '../../../src/core/print/spread.ts';
import { cloudText, filamentLabel, medianText } from '../../../src/ui/text/lifeChartText.ts';
import { NO_BREAK, THIN } from '../../../src/ui/text/numbers.ts';
import { plainly } from '../../../src/ui/text/said.ts';
import { lifeFigure } from '../../../src/ui/text/wearText.ts';
import { checkedText, shareRows, shareText, sureSentence } from '../../../src/ui/text/sureText.ts';
import { assessed, changed, LEAF } from '../../support/joints.ts';

function doubt(joint: Joint): DoubtAnswer {
  const answer = doubtOf(joint, { spread: USUAL_SPREAD, samples: 1024, how: 'quasi-random', seed: 1 });
  if (!answer.ok) throw new Error(answer.problems[0].message);
  return answer.value;
}

function says(joint: Joint, change: Partial<DoubtAnswer> = {}): string {
  return plainly(sureSentence(assessed(joint), { ...doubt(joint), ...change })).replaceAll(THIN, ' ');
}

describe('how sure it is', () => {
  it('says the chance with its sampling error, the verdict’s, and what makes most of the doubt', () => {
    const text = says(LEAF, { chance: { share: 0.76, error: 0.0062 } });
    expect(text).toBe(
      `76 in 100 (±${NO_BREAK}1 by sampling) reach your 5 000; by the verdict, which counts curve and specimens alone, 77. ` +
        'About half of the doubt about its life is the filament’s curve: counting five strips of your own would narrow it most.',
    );
  });

  it('says that warmth is not counted where it matters', () => {
    const warm = { ...LEAF, surroundings: { temperatureC: 60, moisture: 'damp' as const } };
    expect(says(warm)).toMatch(/How warm or cold it is used is not counted in it\.$/);
    expect(says(LEAF)).not.toMatch(/warm/);
  });

  it('never says none or all', () => {
    expect(says(LEAF, { chance: { share: 1, error: 0.0002 } })).toMatch(/^Over 99 in 100 \(±\sunder 1 by sampling\)/);
    expect(says(LEAF, { chance: { share: 0, error: 0.0002 } })).toMatch(/^Under 1 in 100/);
  });

  it('gives no chance past the data, and no life', () => {
    const text = says(changed(LEAF, { movement: { cycles: 2_000_000 } }));
    expect(text).toMatch(/^Nobody has counted further than 1 000 000 cycles, so for 2 000 000 no chance is given\./);
    const small = [{ amount: 0.05, ways: 'one way', cycles: 2_000_000 }] as const;
    expect(says(changed(LEAF, { movement: { also: small } }))).toMatch(
      /for as many as are asked of its smaller movements no chance is given\./,
    );
    expect(lifeFigure(2e6, 1e6)).toBe('beyond the data');
    expect(lifeFigure(0, 1e6)).toBe('first flex');
    expect(lifeFigure(123_456, 1e6).replaceAll(THIN, ' ')).toBe('120 000');
  });

  it('says that the first flex breaks it', () => {
    const broken = changed(LEAF, { sizes: { length: 2 }, movement: { amount: 1.5 }, profile: { filament: 'pla' } });
    expect(says(broken)).toBe('The first flex breaks it, in PLA and in every print that is imagined.');
  });

  it('says what can be narrowed where specimens come first', () => {
    const { causes, ...rest } = doubt(LEAF);
    const first = causes.toSorted(
      (one, other) => Number(other.cause === 'specimens') - Number(one.cause === 'specimens'),
    );
    expect(plainly(sureSentence(assessed(LEAF), { ...rest, causes: first }))).toContain(
      'only less strain helps. After it comes the filament’s curve: counting five strips',
    );
  });
});

function words(joint: Joint): readonly string[] {
  return shareRows(assessed(joint), doubt(joint)).map(({ text }) => text);
}

describe('the list of causes', () => {
  it('puts what hardly counts in one row, and adds up', () => {
    const answer = doubt(LEAF);
    const rows = shareRows(assessed(LEAF), answer);
    expect(rows[0]?.text).toBe('the filament’s curve');
    expect(rows.at(-1)?.text).toBe('everything else');
    expect(new Set(rows.map(({ text }) => text)).size).toBe(rows.length);
    const life = rows.reduce((sum, row) => sum + row.life, 0);
    expect(life).toBeGreaterThan(0.98);
    expect(life).toBeLessThan(1.0001);
  });

  it('names the thickness by what it rests on', () => {
    expect(words(LEAF)).toContain('how wide lines come out');
    expect(words(changed(LEAF, { measuredThickness: 0.63 }))).toContain('what calipers read');
  });

  it('says shares in words', () => {
    expect([0, 0.001, 0.004, 0.2].map(shareText)).toEqual([
      'none',
      `under 1${NO_BREAK}%`,
      `under 1${NO_BREAK}%`,
      `20${NO_BREAK}%`,
    ]);
  });

  it('says what was carried over and how far it is off', () => {
    expect(checkedText(undefined)).toMatch(/exact form/);
    const text = checkedText({ prints: 8, strain: 0.000_02, effort: 0.0085, chance: 0.004 });
    expect(text).toMatch(
      /Eight of the prints solved in full differ by less than 0\.01\s% in strain and 0\.85\s% in effort/,
    );
    expect(text).toMatch(/0\.4 in 100\.$/);
  });
});

describe('words on the curve of life', () => {
  it('name filaments beside their marks', () => {
    expect(filamentLabel(['ABS'], false)).toBe('ABS');
    expect(filamentLabel(['PP', 'TPU'], true)).toBe('PP and TPU, past the data');
    expect(filamentLabel(['PP', 'PA12', 'PA6'], true)).toBe('PP, PA12 and PA6, past the data');
    expect(filamentLabel(['PP', 'PA12', 'PA6', 'TPU'], true)).toBe('PP, PA12 and 2 more, past the data');
  });

  it('tell no life past the data, and what the dots are', () => {
    expect(medianText(1e6, true).replaceAll(THIN, ' ')).toBe('more than 1 000 000, beyond the data');
    expect(medianText(0.5, false)).toBe('the first flex');
    expect(cloudText([{ strain: 0.02 }, { strain: 0.03 }])).toMatch(/^Small dots: 2 prints .* 2\.00\s% to 3\.00\s%\.$/);
  });
});
