import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import { lifeAtChance } from '../../../src/core/design/lifeAtChance.ts';
import { asRad, degrees, radians } from '../../../src/core/units.ts';
import { expectClose } from '../../support/close.ts';
import { assessed, changed, CREASE, LEAF } from '../../support/joints.ts';

const HAND = 'worked by hand to the places printed';

describe('a leaf from wanted movement to verdict', () => {
  const a = assessed(LEAF);

  it('strains t·θ/(2L) along the leaf: 0.84 × 0.610865 / 24', () => {
    expectClose(a.strain.nominal, 0.0213803, { printedTo: 7, because: HAND });
  });

  it('strains more at the root, by half of what the fillet concentrates', () => {
    expectClose(a.strain.peak / a.strain.nominal, 1 + 0.5 * (a.strain.concentration - 1), {
      rel: 1e-12,
      because: 'round-off',
    });
    expect(a.strain.where).toBe('root');
  });

  it('takes the effort of a leaf 6 deep: 1850 × 6 × 0.84³/12 × 0.610865/12 times the width ratio', () => {
    expectClose(a.effort.effort / a.effort.widthRatio, 27.91, { printedTo: 2, because: HAND });
  });

  it('moves the root of the moving pad along the arc: L(1 − cos θ)/θ up', () => {
    expectClose(a.travel?.upward ?? NaN, 3.5526, { printedTo: 4, because: HAND });
    expectClose(a.travel?.radius ?? NaN, 19.644, { printedTo: 3, because: HAND });
  });

  it('says from memory where root, modulus, limits or life curve rest on memory', () => {
    expect(a.provenance).toMatchObject({ strain: 'memory', effort: 'memory', life: 'memory', limits: 'memory' });
  });

  it('names the life as the reason for its caution', () => {
    expect(a.verdict).toMatchObject({ grade: 'caution', reason: 'life' });
  });

  it('gives both the scatter alone and the doubt of the curve with it', () => {
    expect(a.life.chance).toBeLessThan(a.life.chanceScatterOnly);
    expect(a.life.total.p10).toBeLessThan(a.life.scatter.p10);
  });

  it('is reached by the wanted share at lifeAtChance', () => {
    const same = assessed(changed(LEAF, { movement: { cycles: Math.round(lifeAtChance(a)) } }));
    expectClose(same.life.chance, 0.9, { abs: 0.001, because: 'cycles are whole' });
  });
});

describe('over-bend', () => {
  it('is in proportion to the limits, and a hard stop never falls short of the wanted angle', () => {
    const a = assessed(LEAF);
    expectClose(a.overBend.atYield / a.overBend.atSingle, 0.035 / 0.0245, { rel: 1e-9, because: 'round-off' });
    const tight = assessed(changed(LEAF, { movement: { amount: radians(90) } }));
    expect(tight.overBend.hardStop).toBe(tight.joint.movement.amount);
    expect(degrees(asRad(tight.overBend.atSingle))).toBeLessThan(90);
  });
});

describe('set after one bend', () => {
  it('is none while the skin stays elastic and grows beyond', () => {
    expect(assessed(LEAF).set.amount).toBe(0);
    expect(assessed(changed(LEAF, { movement: { amount: radians(90) } })).set.fraction).toBeGreaterThan(0.3);
  });
});

describe('the worst finding decides', () => {
  it.each([
    ['first flex', { sizes: { length: 0.9 }, movement: { amount: radians(90) } }, 'fail'],
    ['life', { sizes: { lines: 4 }, movement: { cycles: 100_000 } }, 'fail'],
    ['held', { movement: { held: true, cycles: 2 }, sizes: { length: 40, lines: 4 } }, 'caution'],
    ['beyond data', { movement: { cycles: 2_000_000 }, sizes: { length: 60 } }, 'beyond'],
    ['life', { movement: { cycles: 2_000_000 } }, 'fail'],
    ['within all limits', { sizes: { length: 40 } }, 'pass'],
  ] as const)('%s', (reason, change, grade) => {
    expect(assessed(changed(LEAF, change)).verdict).toMatchObject({ grade, reason });
  });

  it('lets a few cycles pass that strain more than the repeated limit', () => {
    const few = assessed(changed(LEAF, { movement: { cycles: 100 } }));
    expect(few.strain.peak).toBeGreaterThan(few.allowables[0]?.limit ?? Infinity);
    expect(few.verdict.grade).toBe('pass');
  });
});

describe('lying upright', () => {
  it('lowers every limit and says why', () => {
    const flat = assessed(LEAF);
    const upright = assessed(changed(LEAF, { profile: { lying: 'upright' } }));
    for (const [i, allowable] of upright.allowables.entries()) {
      expect(allowable.limit).toBeLessThan(flat.allowables[i]?.limit ?? 0);
    }
    expect(upright.life.median).toBeLessThan(flat.life.median);
    expect(upright.notes.map((note) => note.code)).toContain('across-layers');
  });
});

describe('both ways', () => {
  it('counts √2 times the strain of one way', () => {
    const one = assessed(LEAF);
    const both = assessed(changed(LEAF, { movement: { ways: 'both ways' } }));
    expectClose(both.life.equivalentStrain / one.life.equivalentStrain, Math.SQRT2, { rel: 1e-12, because: 'γ = ½' });
  });
});

describe('a crease', () => {
  it('is as thick as its layers, the first counted', () => {
    const thick = assessed(changed(CREASE, { profile: { firstLayerHeight: 0.3 } }));
    expectClose(thick.section.thickness, 0.5, { rel: 1e-12, because: 'round-off' });
  });

  it('takes the thick-section factor of printed PP only above half a millimetre', () => {
    const thin = assessed(CREASE);
    const thick = assessed(changed(CREASE, { sizes: { layers: 3, length: 9, pad: 3 } }));
    expectClose(thin.life.equivalentStrain, thin.strain.peak, { rel: 1e-12, because: 'round-off' });
    expectClose(thick.life.equivalentStrain, thick.strain.peak / 0.6, { rel: 1e-12, because: 'round-off' });
  });
});

describe('a refused joint names the field, the value, the limit and the remedy', () => {
  it.each([
    ['sizes.length', { sizes: { length: -1 } }],
    ['sizes.lines', { sizes: { lines: 2.5 } }],
    ['movement.amount', { movement: { amount: radians(0) } }],
    ['movement.cycles', { movement: { cycles: Number.NaN } }],
    ['profile.lineWidth', { profile: { lineWidth: 3 } }],
    ['profile.lying', { profile: { lying: 'crease' } }],
    ['profile.filament', { profile: { filament: 'oak' } }],
    ['measuredThickness', { measuredThickness: -0.2 }],
    ['measuredThickness', { measuredThickness: 90 }],
    ['measuredThickness', { measuredThickness: Number.POSITIVE_INFINITY }],
  ] as const)('%s', (field, change) => {
    const result = assess(changed(LEAF, change));
    expect(result.ok).toBe(false);
    if (result.ok) return;
    expect(result.problems.map((problem) => problem.field)).toContain(field);
    expect(result.problems[0].message.length).toBeGreaterThan(20);
  });

  it('refuses a kind that does not exist', () => {
    const result = assess({ ...LEAF, family: 'rope' });
    expect(result.ok ? undefined : result.problems[0].code).toBe('unknown-family');
  });
});
