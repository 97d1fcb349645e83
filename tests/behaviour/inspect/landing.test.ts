import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactCount, landingOf, thicknessAt, type LaidOf } from '../../../src/core/inspect/landing.ts';
import { landingGrade } from '../../../src/core/inspect/verdicts.ts';
import { expectClose } from '../../support/close.ts';
import { length } from '../../support/generators.ts';
import { assessed, changed, CREASE, LEAF } from '../../support/joints.ts';

const LINES: LaidOf = { countOf: 'lines', profile: { ...LEAF.profile, lineWidth: 0.56 } };
const LAYERS: LaidOf = { countOf: 'layers', profile: { ...LEAF.profile, layerHeight: 0.2, firstLayerHeight: 0.3 } };

describe('how a thickness lands on lines', () => {
  it.each([
    [0.5, 'not-laid', 'fail'],
    [0.75, 'not-laid', 'fail'],
    [0.92, 'squeezed', 'fail'],
    [0.96, 'odd', 'pass'],
    [1, 'odd', 'pass'],
    [1.04, 'odd', 'pass'],
    [1.25, 'squeezed', 'fail'],
    [1.5, 'squeezed', 'fail'],
    [1.9, 'squeezed', 'fail'],
    [1.95, 'whole', 'pass'],
    [2, 'whole', 'pass'],
    [2.05, 'whole', 'pass'],
    [2.25, 'gap', 'caution'],
    [2.5, 'squeezed', 'caution'],
    [2.9, 'squeezed', 'caution'],
    [3, 'odd', 'pass'],
    [4, 'whole', 'pass'],
  ] as const)('%d lines are %s and %s', (count, state, grade) => {
    const landing = landingOf(count * 0.56, LINES);
    expect(landing.state).toBe(state);
    expect(landingGrade(landing)).toBe(grade);
  });

  it('tells what is left over beside the whole lines below', () => {
    const because = 'round-off of a difference of lengths';
    expectClose(landingOf(1.26, LINES).left, 0.14, { abs: 1e-12, because });
    expectClose(landingOf(0.84, LINES).left, 0.28, { abs: 1e-12, because });
    expectClose(landingOf(0.42, LINES).left, 0.42, { abs: 1e-12, because });
    expect(landingOf(1.12, LINES).left).toBe(0);
  });
});

describe('how a thickness lands on layers', () => {
  it.each([
    [0.2, 'not-laid'],
    [0.3, 'whole'],
    [0.5, 'whole'],
    [0.7, 'whole'],
    [0.55, 'gap'],
    [0.65, 'squeezed'],
  ] as const)('%d mm with a first layer of 0.3 mm are %s', (thickness, state) => {
    expect(landingOf(thickness, LAYERS).state).toBe(state);
  });
});

describe('for any thickness', () => {
  const any = fc.record({
    thickness: length(0.05, 5),
    lineWidth: length(0.2, 0.9),
    layerHeight: length(0.1, 0.2),
    firstLayerHeight: length(0.1, 0.3),
    overlapped: fc.boolean(),
    countOf: fc.constantFrom('lines' as const, 'layers' as const),
  });
  const laidOf = ({
    countOf,
    overlapped,
    ...profile
  }: typeof any extends fc.Arbitrary<infer T> ? T : never): LaidOf => ({
    countOf,
    profile: { ...profile, fitRule: overlapped ? 'overlapped' : 'nominal' },
  });

  it('count and thickness are each other’s inverse', () => {
    fc.assert(
      fc.property(any, (drawn) => {
        const laid = laidOf(drawn);
        const back = thicknessAt(exactCount(drawn.thickness, laid), laid);
        expectClose(back, drawn.thickness, { abs: 1e-9, because: 'round-off of a few products' });
      }),
    );
  });

  it('whole, and not laid, are what the joint of the same thickness says of its printing', () => {
    fc.assert(
      fc.property(any, (drawn) => {
        const { thickness, countOf } = drawn;
        const like = countOf === 'lines' ? LEAF : CREASE;
        const sizes = { length: 60, pad: 40 };
        const profile = { ...like.profile, ...laidOf(drawn).profile, nozzle: 0.4 };
        const { fit } = assessed(changed(like, { sizes, profile, measuredThickness: thickness }));
        const { state, exact } = landingOf(thickness, laidOf(drawn));
        expect(exact).toBe(fit.exact);
        expect(state === 'whole' || state === 'odd').toBe(fit.outcome === 'whole');
        expect(state === 'not-laid').toBe(fit.outcome === 'vanishes');
      }),
    );
  });
});
