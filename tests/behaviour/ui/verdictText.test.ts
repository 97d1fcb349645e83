import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import type { Assessment } from '../../../src/core/design/assessment.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import { roomToSpare } from '../../../src/core/design/roomToSpare.ts';
import { waysOut } from '../../../src/core/design/waysOut.ts';
import { radians } from '../../../src/core/units.ts';
import { inHundred, percent } from '../../../src/ui/text/numbers.ts';
import { printNotes } from '../../../src/ui/text/printNotesText.ts';
import { remedyCosts, remedyDone, remedyResult, remedyTitle, spareText } from '../../../src/ui/text/remedyText.ts';
import { plainly } from '../../../src/ui/text/said.ts';
import { chanceText, verdictHeading, verdictSentences } from '../../../src/ui/text/verdictText.ts';
import { asTabbed, outlineWaits, sizesToDraw } from '../../../src/ui/text/toDrawText.ts';
import { changed, CREASE, LEAF } from '../../support/joints.ts';

function assessed(joint: Joint): Assessment {
  const result = assess(joint);
  if (!result.ok) throw new Error(result.problems[0].message);
  return result.value;
}

const plain = (a: Assessment) =>
  verdictSentences(a, 'mm').map((said) => plainly(said).replaceAll(/[\u00a0\u2009]/g, ' '));

const notes = (joint: Joint) => printNotes(assessed(joint), 'mm').join('\n').replaceAll('\u00a0', ' ');

const at = (temperatureC: number, filament = 'petg') =>
  assessed({
    ...changed(LEAF, { sizes: { length: 40 }, profile: { filament } }),
    surroundings: { temperatureC, moisture: 'damp' },
  });

describe('the verdict names the figure, its limit, and what follows', () => {
  it('caution: over the limit for often, so a life and a chance', () => {
    const a = assessed(LEAF);
    expect(verdictHeading(a)).toBe('Caution: it will probably last');
    const [first] = plain(a);
    expect(first).toMatch(
      /^At 35° the skin of the leaf strains [\d.]+ %, over the 1\.47 % that PETG stands again and again, so half break by [\d ]+ cycles and \d\d in 100 reach your 5 000\.$/,
    );
    expect(first).toContain(percent(a.strain.peak).replace('\u00a0', ' '));
    expect(first).toContain(`${inHundred(a.life.chance)} in 100`);
    expect(chanceText(a)).toMatch(
      /^\d\d in 100 by specimen scatter alone, \d\d with the doubt of the curve; 90 are wanted\.$/,
    );
  });

  it('pass over the limit: but few enough times', () => {
    expect(plain(assessed(changed(LEAF, { movement: { cycles: 100 } })))[0]).toContain(
      'but few enough times: half break by',
    );
  });

  it('pass within the limit', () => {
    const a = assessed(changed(LEAF, { sizes: { length: 40 } }));
    expect(verdictHeading(a)).toBe('Pass');
    expect(plain(a)[0]).toContain('within the 1.47 % that PETG stands again and again, so half');
  });

  it('several kinds of flex: the life in full ones, and what the smaller ones wear', () => {
    const also = [{ amount: radians(25), ways: 'one way', cycles: 20_000 }] as const;
    const a = assessed(changed(LEAF, { movement: { also } }));
    const rest = Math.round(100 * (1 - a.life.wear[0].share));
    expect(plain(a)[0]).toMatch(
      new RegExp(
        `half break by [\\d ]+ of the full flexes, the smaller one doing ${rest} % of the wear, and \\d\\d in 100`,
      ),
    );
    const flutter = { amount: radians(1), ways: 'one way', cycles: 10 } as const;
    expect(plain(assessed(changed(LEAF, { movement: { also: [flutter, flutter] } })))[0]).toContain(
      'of the full flexes, the smaller ones doing hardly any of the wear, and',
    );
    const ever = { ...flutter, cycles: 3_000_000 };
    expect(plain(assessed(changed(LEAF, { sizes: { length: 100 }, movement: { also: [ever] } })))[0]).toContain(
      'past 1 000 000 of the full flexes, where counting stops. You want 3 000 000, so no life is given.',
    );
  });

  it('no life is printed past where counting stops', () => {
    const low = assessed(changed(LEAF, { sizes: { length: 100 }, movement: { cycles: 3_000_000 } }));
    expect(verdictHeading(low)).toBe('Beyond the data');
    expect(plain(low)[0]).toContain('half last past 1 000 000 cycles, where counting stops');
    expect(plain(low)[0]).toContain('so no life is given');
    expect(chanceText(low)).toBe('');
  });

  it('past yield it takes a set, with its angle', () => {
    const a = assessed(changed(LEAF, { profile: { filament: 'pla' } }));
    expect(plain(a)[0]).toMatch(
      /past the 2\.20 % at which PLA stays bent, so it takes a set of about \d+°, \d+° to \d+°; half break by/,
    );
  });

  it('warmth near or past where it softens, and cold, before the bending', () => {
    expect(plain(at(40))[0]).toMatch(/^At 35° the skin/);
    const near = at(65);
    expect(verdictHeading(near)).toBe('Caution: it is used near where it softens');
    expect(plain(near)[0]).toBe(
      `Used at 65 °C it is close under the ${near.warmth.softensAt} °C at which PETG softens, so it bends more easily and may sag.`,
    );
    expect(verdictHeading(at(90))).toBe('Fail: it softens where it is used');
    expect(plain(at(90))[0]).toMatch(
      /^Used at 90 °C it is past the \d+ °C at which PETG softens, so it sags out of shape\.$/,
    );
    const cold = at(-38, 'tpu95a');
    expect(verdictHeading(cold)).toBe('Caution: cold makes it brittle');
    expect(plain(cold)[0]).toMatch(/^TPU 95A turns brittle under −\d+ °C, and it gets as cold as −38 °C\.$/);
  });

  it('across layers it says why the limit is lower', () => {
    const a = assessed(changed(LEAF, { profile: { lying: 'upright' } }));
    expect(plain(a)[0]).toContain('when bending pulls its layers apart');
  });

  it('held bent, it says whether it sags', () => {
    expect(plain(assessed(changed(LEAF, { movement: { held: true } }))).at(-1)).toBe(
      'Held bent, it sags: that is over the 0.80 % that PETG holds for long.',
    );
    expect(plain(assessed(changed(LEAF, { sizes: { length: 60 }, movement: { held: true } }))).at(-1)).toContain(
      'it keeps its push: that is within',
    );
  });

  it('a measured section that is not whole is said first', () => {
    const uneven = assessed({ ...LEAF, measuredThickness: 0.63, movement: { ...LEAF.movement, amount: radians(5) } });
    expect(verdictHeading(uneven)).toBe('Caution: it will not print as whole lines');
    expect(plain(uneven)[0]).toMatch(/^0\.63 mm is 1\.5 lines: the gap between whole lines is left open/);
    const thin = assessed({ ...LEAF, measuredThickness: 0.2 });
    expect(verdictHeading(thin)).toBe('Fail: the thin section may not print');
    expect(plain(thin)[0]).toMatch(/^0\.20 mm is under one line: it is left out/);
    const layer = assessed({ ...CREASE, measuredThickness: 0.5 });
    expect(verdictHeading(layer)).toContain('layers');
  });
});

describe('ways out say what to do, what comes of it and what it costs', () => {
  const a = assessed(LEAF);
  const remedies = waysOut(a);
  const of = (kind: string) => {
    const found = remedies.find(({ kinds }) => kinds.length === 1 && kinds[0] === kind);
    if (!found) throw new Error(`no way out by ${kind}`);
    return found;
  };

  it('a longer leaf', () => {
    const remedy = of('lengthen');
    const length = remedy.assessment.length.toFixed(2);
    expect(remedyTitle(a, remedy, 'mm')).toBe(`Make the leaf ${length}\u00a0mm long`);
    expect(remedyDone(a, remedy, 'mm')).toBe(`Leaf made ${length}\u00a0mm long, was 12.00`);
    expect(remedyResult(a, remedy)).toMatch(/^9\d in 100 reach 5\u2009000; effort [\d.]+ to [\d.]+\u00a0N·mm\.$/);
    expect(remedyCosts(a, remedy, 'mm')).toMatch(/^[\d.]+\u00a0mm more room; \d+\u00a0% softer$/);
  });

  it('another filament', () => {
    const remedy = of('other filament');
    expect(remedyTitle(a, remedy, 'mm')).toBe(`Print it in ${remedy.assessment.filament.name}`);
    expect(remedyDone(a, remedy, 'mm')).toBe(`Filament made ${remedy.assessment.filament.name}, was PETG`);
  });

  it('two changes together are one sentence', () => {
    const pair = { ...of('lengthen'), kinds: ['other filament', 'lengthen'] } as const;
    expect(remedyTitle(a, pair, 'mm')).toMatch(/^Print it in .* and make the leaf .* long$/);
  });

  it('one that is not enough says so', () => {
    const short = { ...of('lengthen'), assessment: a };
    expect(remedyResult(a, short)).toContain('Not enough alone: caution.');
  });

  it('room to spare is rounded to the side that still passes', () => {
    const passing = assessed(changed(LEAF, { sizes: { length: 40 } }));
    for (const spare of roomToSpare(passing)) {
      const [label, limit] = spareText(passing, spare, 'mm');
      expect(label.length).toBeGreaterThan(0);
      const value = Number(limit.replaceAll(/[^\d.]/g, ''));
      const exact = spare.value === 'amount' ? (spare.limit * 180) / Math.PI : spare.limit;
      if (spare.value === 'length') expect(value).toBeGreaterThanOrEqual(exact - 1e-6);
      else expect(value).toBeLessThanOrEqual(exact + 1e-6);
    }
  });
});

describe('print notes follow the numbers', () => {
  it.each([
    [1, /one line along the middle and no contour; check before printing that one full line runs/],
    [2, /, one contour; check before printing that exactly 2 equal lines/],
    [3, /one contour and one line along the middle; check before printing that exactly 3/],
    [4, /, two contours; check before printing that exactly 4/],
  ])('%d lines', (lines, expected) => {
    expect(notes(changed(LEAF, { sizes: { lines } }))).toMatch(expected);
  });

  it('a crease is about layers, not contours', () => {
    const said = notes(CREASE);
    expect(said).toMatch(/The crease is 2 layers, the first 0\.20 mm/);
    expect(said).toMatch(/first layer with care/);
    expect(said).not.toMatch(/contour|widen or narrow/);
  });

  it('nylon is dried, a stop is named, a measured part is sent to its cures', () => {
    expect(notes(changed(LEAF, { profile: { filament: 'pa12' } }))).toMatch(/Dry the spool/);
    expect(notes(LEAF)).toMatch(/hard stop at [\d.]+°/);
    expect(notes({ ...LEAF, measuredThickness: 0.63 })).toMatch(/1\.50 lines\. Scale the part, set another line width/);
  });
});

describe('the dimensions to draw', () => {
  it('copy as bare figures parted by tabs, in the chosen unit', () => {
    const a = assessed(LEAF);
    const text = asTabbed('Lid\thinge', sizesToDraw(a, 'mm'), 'mm');
    expect(text.split('\n')[0]).toBe('Joint\tLid hinge\t');
    expect(text).toContain('Thickness\t0.84\tmm');
    expect(asTabbed('x', sizesToDraw(a, 'inch'), 'inch')).toContain('Flexing length, between fillets\t0.4724\tin');
  });

  it('no outline is handed out for a section that is not whole', () => {
    expect(outlineWaits(assessed(LEAF), 'mm')).toBe('');
    expect(outlineWaits(assessed({ ...LEAF, measuredThickness: 0.63 }), 'mm')).toBe(
      'SVG and DXF wait for whole lines: 0.63 is 1.50.',
    );
  });
});
