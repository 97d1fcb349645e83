import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lifeAtStrain, strainAtLife } from '../../../src/core/life/strainLife.ts';
import { FILAMENTS } from '../../../src/core/material/filaments.ts';
import { checkCurve, checkFilament } from '../../../src/core/material/ownCheck.ts';
import { curveThrough } from '../../../src/core/material/ownCurve.ts';
import {
  ownFrom,
  withAnchors,
  withCurve,
  withCurveOf,
  withValue,
  withValueOf,
  withWords,
} from '../../../src/core/material/ownFilament.ts';
import { NEEDED, PROPERTY_LIMITS, PROPERTY_NAMES } from '../../../src/core/material/ownLimits.ts';
import type { Provenance } from '../../../src/core/material/types.ts';
import { wholeRow } from '../../../src/core/material/wholeRow.ts';
import type { Result } from '../../../src/core/result.ts';
import { MAX_WORDS } from '../../../src/files/names.ts';
import { expectClose } from '../../support/close.ts';
import { filament } from '../../support/filament.ts';
import { ownFilament, ownPetg, quantityOf } from '../../support/ownFilaments.ts';

const TEST: Provenance = { kind: 'measured', what: 'three bars' };

function made<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join('; '));
  return result.value;
}

function refusal(result: Result<unknown>) {
  if (result.ok) throw new Error('it must be refused');
  return result.problems[0];
}

describe('a row of the user’s own', () => {
  it.each(FILAMENTS)('made from $name has all its figures, notes and sources, and can be used', (row) => {
    const own = ownFrom(row, 'Mine', 'own-mine');
    const { id: _id, name: _name, fullName: _fullName, ...whole } = wholeRow(row);
    expect(own).toEqual({
      ...whole,
      id: 'own-mine',
      name: 'Mine',
      fullName: 'Mine',
      own: { from: row.id, remark: '' },
    });
    expect(checkFilament(own)).toEqual([]);
  });

  it.each(FILAMENTS)('made from $name keeps every word, which a file would cut past its limit', (row) => {
    const words = JSON.stringify(wholeRow(row)).match(/"(?:note|place|from|because|what|certainty)":"[^"]*"/g) ?? [];
    expect(words.filter((word) => word.length > MAX_WORDS)).toEqual([]);
  });

  it('copied from another goes back to the row of the table, and keeps the remark', () => {
    const blue = made(withWords(ownPetg(), { remark: 'dried four hours' }));
    const copy = ownFrom(blue, 'PETG blue 2', 'own-two');
    expect(copy.own).toEqual({ from: 'petg', remark: 'dried four hours' });
  });

  it('holds no property that has no limits, and none is needed that a row of the table lacks', () => {
    const used = new Set(FILAMENTS.flatMap((row) => Object.keys(wholeRow(row).properties)));
    expect([...used].filter((name) => !Object.hasOwn(PROPERTY_LIMITS, name))).toEqual([]);
    expect(NEEDED.filter((name) => FILAMENTS.some((row) => wholeRow(row).properties[name] === undefined))).toEqual([]);
    // What every row has but one need not be needed: the moulded one has no layers.
    expect(PROPERTY_NAMES.filter((name) => !used.has(name))).toEqual([]);
  });
});

describe('a changed value', () => {
  it('says where it comes from, and drops what was said of the old one', () => {
    const own = made(withValue(ownPetg(), 'strainAtBreak', { typical: 0.2, low: 0.1, high: 0.4 }, TEST));
    expect(own.properties.strainAtBreak).toEqual({
      typical: 0.2,
      low: 0.1,
      high: 0.4,
      unit: '',
      direction: 'along lines',
      provenance: TEST,
    });
    const { strainAtBreak: _one, ...others } = own.properties;
    const { strainAtBreak: _two, ...before } = ownPetg().properties;
    expect(others).toEqual(before);
  });

  it('leaves low and high resting on what they rested on, until one of them is changed', () => {
    const { low, high } = ownPetg().properties.yieldStress as { low: number; high: number };
    const typical = made(withValue(ownPetg(), 'yieldStress', { typical: 44, low, high }, TEST));
    expect(typical.properties.yieldStress).toMatchObject({ provenance: TEST, range: 'memory' });
    const again = made(withValue(typical, 'yieldStress', { typical: 45, low, high }, TEST));
    expect(again.properties.yieldStress).toMatchObject({ provenance: TEST, range: 'memory' });
    const all = made(withValue(again, 'yieldStress', { typical: 45, low: 40, high }, TEST));
    expect('range' in all.properties.yieldStress).toBe(false);
  });

  it('leaves the row that it was made from as it was', () => {
    const before = ownPetg();
    made(withValue(before, 'density', { typical: 1300 }, TEST));
    expect(before).toEqual(ownPetg());
  });

  it('of the yield strain takes the permissible strains along by the rule of S5', () => {
    const own = made(withValue(ownPetg(), 'yieldStrain', { typical: 0.05, low: 0.04, high: 0.06 }, TEST));
    const { permissibleStrainSingle: single, permissibleStrainRepeated: repeated } = own.properties;
    // 0.7 × 0.05, 0.04, 0.06; then 0.6 × those.
    expect(single).toMatchObject({ typical: 0.035, low: 0.028, high: 0.042, provenance: { kind: 'computed' } });
    expect(repeated).toMatchObject({ typical: 0.021, low: 0.0168, high: 0.0252, provenance: { kind: 'computed' } });
    // The rule is published and the strain measured, so that neither is from memory any more.
    expect(single.provenance).toMatchObject({ inputs: 'published' });
    expect('note' in single).toBe(false);
  });

  it('of the yield strain leaves a permissible strain alone that was set by hand, and what follows from that', () => {
    const set = made(withValue(ownPetg(), 'permissibleStrainSingle', { typical: 0.03 }, TEST));
    expect(set.properties.permissibleStrainRepeated.typical).toBe(0.018);
    const own = made(withValue(set, 'yieldStrain', { typical: 0.06 }, TEST));
    expect(own.properties.permissibleStrainSingle).toEqual(set.properties.permissibleStrainSingle);
    expect(own.properties.permissibleStrainRepeated).toEqual(set.properties.permissibleStrainRepeated);
  });

  it.each(FILAMENTS)('that follows by a rule does so in $name as well, to the places that the row prints', (row) => {
    const own = ownFrom(row, 'Mine', 'own-mine');
    const { typical } = own.properties.yieldStrain;
    const next = made(withValue(own, 'yieldStrain', { typical }, TEST));
    expectClose(next.properties.permissibleStrainSingle.typical, own.properties.permissibleStrainSingle.typical, {
      printedTo: 4,
      because: 'rows print strains to 0.01 %',
    });
    const slack = made(withValue(own, 'relaxationExponent', own.properties.relaxationExponent, TEST));
    expect(slack.properties.stressLossDay.provenance).toMatchObject({ kind: 'computed', inputs: 'published' });
    expectClose(slack.properties.stressLossDay.typical, own.properties.stressLossDay.typical, {
      printedTo: 1,
      because: 'rows print losses to a tenth of a per cent',
    });
  });

  it('can be put back as the table has it, and one that follows then follows again', () => {
    const petg = filament('petg');
    const own = made(withValue(ownPetg(), 'yieldStrain', { typical: 0.05 }, TEST));
    const back = made(withValueOf(own, 'yieldStrain', petg));
    expect(back.properties.yieldStrain).toEqual(ownPetg().properties.yieldStrain);
    const { note: _note, ...single } = ownPetg().properties.permissibleStrainSingle;
    expect(back.properties.permissibleStrainSingle).toEqual(single);
    const set = made(withValue(own, 'permissibleStrainSingle', { typical: 0.01 }, TEST));
    expect(made(withValueOf(set, 'permissibleStrainSingle', petg)).properties.permissibleStrainSingle.typical).toBe(
      0.035,
    );
  });

  it.each([
    [{ typical: Number.NaN }, 'not-a-number', 'give one from 0.01 % to 2000 %'],
    [{ typical: 0 }, 'below-minimum', 'strain at which it stays bent: 0 % is below 0.01 %'],
    [{ typical: 21 }, 'above-maximum', 'lower it'],
    [{ typical: 0.03, low: 0.04 }, 'above-maximum', 'its low 4 % is above its usual 3 %'],
    [{ typical: 0.03, high: 0.02 }, 'below-minimum', 'its high 2 % is below its usual 3 %'],
    [{ typical: 0.8 }, 'above-maximum', 'it would break at 77 % before it stays bent at 80 %'],
  ])('made %j is refused as %s', (figures, code, words) => {
    const problem = refusal(withValue(ownPetg(), 'yieldStrain', figures, TEST));
    expect(problem).toMatchObject({ code, field: expect.stringContaining('properties.yieldStrain.') as string });
    expect(problem.message).toContain(words);
  });

  it('that is taken leaves a row that can be used, whatever it is', () => {
    const change = fc
      .constantFrom(...PROPERTY_NAMES)
      .chain((name) => fc.record({ name: fc.constant(name), to: quantityOf(name) }));
    fc.assert(
      fc.property(ownFilament, change, (row, { name, to }) => {
        const next = withValue(row, name, to, to.provenance);
        // What breaks before it yields is refused; nothing else that is within its limits is.
        if (!next.ok) expect(next.problems.map(({ field }) => field)).toEqual(['properties.yieldStrain.typical']);
        else expect(checkFilament(next.value)).toEqual([]);
      }),
    );
  });

  it('of any kind is judged and never thrown at', () => {
    fc.assert(
      fc.property(fc.constantFrom(...PROPERTY_NAMES), fc.double(), fc.double(), (name, typical, low) => {
        const next = withValue(ownPetg(), name, { typical, low }, TEST);
        expect(next.ok ? checkFilament(next.value) : next.problems.length > 0).toEqual(next.ok ? [] : true);
      }),
    );
  });
});

describe('a name', () => {
  it('that is empty is refused', () => {
    expect(refusal(withWords(ownPetg(), { name: ' ' }))).toMatchObject({ code: 'missing-field', field: 'name' });
  });
});

/** A point of PETG's own curve. */
const at = (cycles: number) => ({ cycles, strain: strainAtLife(cycles, ownPetg().life) });

describe('the life curve', () => {
  it('through two points of itself is itself', () => {
    const { b, c, A, B } = ownPetg().life;
    const through = made(curveThrough([at(1000), at(1_000_000)], { b, c }));
    expectClose(through.A, A, { rel: 1e-12, because: 'round-off of two powers and a quotient' });
    expectClose(through.B, B, { rel: 1e-12, because: 'round-off of two powers and a quotient' });
  });

  it('goes through both anchors, whichever they are, or says between which strains there is one', () => {
    const strain = fc.double({ min: 0.001, max: 1, noNaN: true });
    const count = fc.integer({ min: 1, max: 1e8 });
    fc.assert(
      fc.property(strain, strain, count, count, (one, other, few, more) => {
        const [first, second] = [
          { cycles: few, strain: one },
          { cycles: few + more, strain: other },
        ] as const;
        const { b, c } = ownPetg().life;
        const through = curveThrough([first, second], { b, c });
        if (through.ok) {
          const exact = { rel: 1e-9, because: 'round-off, magnified where one term is near nought' };
          expectClose(strainAtLife(first.cycles, { ...through.value, b, c }), one, exact);
          expectClose(strainAtLife(second.cycles, { ...through.value, b, c }), other, exact);
          return;
        }
        const [{ field, limit }] = through.problems;
        expect(field).toBe('life.many.strain');
        // Two steps inside the limit that it names there is a curve, when there is room between the limits.
        const times = second.cycles / first.cycles;
        const inside = Number(limit) * (through.problems[0].code === 'above-maximum' ? 1 - 1e-9 : 1 + 1e-9);
        if (times ** b - times ** c < 1e-6) return;
        expect(curveThrough([first, { ...second, strain: inside }], { b, c }).ok).toBe(true);
      }),
    );
  });

  it.each([
    [[at(1000), { cycles: 1_000_000, strain: 0.05 }], 'above-maximum', 'lower it or raise the first'],
    [[at(1000), { cycles: 1_000_000, strain: 0.001 }], 'below-minimum', 'raise it or lower the first'],
    [[at(1000), { cycles: 500, strain: 0.01 }], 'below-minimum', 'is not above the first 1000'],
    [[{ cycles: 0, strain: 0.1 }, at(1000)], 'below-minimum', 'is not above 0'],
    [[{ cycles: 10, strain: Number.NaN }, at(1000)], 'below-minimum', 'is not above 0'],
  ] as const)('is refused through %j as %s, with what helps', (anchors, code, words) => {
    const problem = refusal(withAnchors(ownPetg(), anchors, TEST));
    expect(problem.code).toBe(code);
    expect(problem.message).toContain(words);
  });

  it('keeps its exponents, and says whose it is, when an anchor is moved', () => {
    const own = made(withAnchors(ownPetg(), [at(1000), { cycles: 1_000_000, strain: 0.009 }], TEST));
    expect(own.life).toMatchObject({ b: -0.13, c: -0.5, certainty: 'by your own test', provenance: TEST });
    expect(own.life.note).toBe(
      `set through ${Number((100 * at(1000).strain).toPrecision(3))} % at 1 000 and 0.9 % at 1 000 000 cycles`,
    );
    expectClose(lifeAtStrain(0.009, own.life), 1_000_000, {
      rel: 1e-9,
      because: 'the root is found to 1e-12 of ln 2N',
    });
    expect(made(withCurveOf(own, filament('petg'))).life).toEqual(ownPetg().life);
  });

  it('keeps what the user said of its course until the course changes, and nothing that the table said', () => {
    expect(made(withCurve(ownPetg(), { doubtFactor: 5 }, TEST)).life.note).toBeUndefined();
    const set = made(withAnchors(ownPetg(), [at(1000), { cycles: 1_000_000, strain: 0.009 }], TEST));
    expect(made(withCurve(set, { doubtFactor: 5 }, TEST)).life.note).toBe(set.life.note);
    expect(made(withCurve(set, { b: -0.14 }, TEST)).life.note).toBeUndefined();
  });

  it.each([
    [{ b: 0.1 }, 'above-maximum', 'life.b'],
    [{ c: -0.1 }, 'below-minimum', 'life.b'],
    [{ A: 0 }, 'below-minimum', 'life.A'],
    [{ gamma: 1.5 }, 'above-maximum', 'life.gamma'],
    [{ sigmaLog10N: 0 }, 'below-minimum', 'life.sigmaLog10N'],
    [{ doubtFactor: 0.5 }, 'below-minimum', 'life.doubtFactor'],
    [{ firstFlexBreakStrain: 0 }, 'below-minimum', 'life.firstFlexBreakStrain'],
    [{ maxReportableCycles: 1000.5 }, 'not-whole', 'life.maxReportableCycles'],
  ])('with %j is refused', (change, code, field) => {
    expect(refusal(withCurve(ownPetg(), change, TEST))).toMatchObject({ code, field });
  });

  it('of any row that can be used gives a life at any strain', () => {
    fc.assert(
      fc.property(ownFilament, fc.double({ min: 0, max: 25, noNaN: true }), ({ life }, strain) => {
        expect(checkCurve(life)).toEqual([]);
        const cycles = lifeAtStrain(strain, life);
        expect(cycles >= 0 && cycles <= 1e12).toBe(true);
      }),
    );
  });
});
