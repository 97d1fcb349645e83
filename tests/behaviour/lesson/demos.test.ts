/**
 * Demonstrations of the lesson: every question is open at first and can be answered with its handles, and each shows the
 * law that it is about.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess, type Judge } from '../../../src/core/design/assess.ts';
import type { Assessment } from '../../../src/core/design/assessment.ts';
import { bySolver } from '../../../src/core/design/bySolver.ts';
import { rememberSolved } from '../../../src/core/design/rememberSolved.ts';
import { secondRest } from '../../../src/core/design/solvedPath.ts';
import { mechanicsOf } from '../../../src/core/flexures/networks.ts';
import { stressLeft } from '../../../src/core/life/relaxation.ts';
import { wholeRow } from '../../../src/core/material/wholeRow.ts';
import { LETTERS, type Demo, type Values } from '../../../src/core/lesson/demos/demo.ts';
import { DEMOS } from '../../../src/core/lesson/demos/demos.ts';
import { allowed, readValue, startOf, stopsOf, written } from '../../../src/core/lesson/demos/handles.ts';
import { heldOf, hoursHeld } from '../../../src/core/lesson/demos/heldOrFlexed.ts';
import { DEMO_IDS, isDemoId } from '../../../src/core/lesson/demos/ids.ts';
import { lawCurve, lawFigure } from '../../../src/core/lesson/demos/lawCurve.ts';
import { standingOf } from '../../../src/core/lesson/demos/standing.ts';
import { radians } from '../../../src/core/units.ts';
import { expectClose } from '../../support/close.ts';
import '../../support/everyKind.ts';

const ALL = DEMO_IDS.map((id) => DEMOS[id]);
/** Those whose question only the solver can answer, in hundredths of seconds a joint. */
const SOLVED = new Set<string>(['arch-springs-back']);
const remembered = rememberSolved();
const bySolving: Judge = (joint) => assess(joint, bySolver({}, remembered));

function answersOf(demo: Demo, values: Values, judge: Judge = SOLVED.has(demo.id) ? bySolving : assess) {
  return demo.joints(values).map((joint): Assessment => {
    const assessed = judge(joint);
    if (!assessed.ok) throw new Error(`${demo.id}: ${assessed.problems[0].message}`);
    return assessed.value;
  });
}

function goalOf(demo: Demo, values: Values) {
  const goal = demo.goal(answersOf(demo, values), values);
  if (!goal) throw new Error(`${demo.id} does not know how its question stands`);
  return goal;
}

const pairOf = (demo: Demo, values: Values, judge?: Judge): readonly [Assessment, Assessment] => {
  const [a, b] = answersOf(demo, values, judge);
  if (!a || !b) throw new Error(`${demo.id} sets fewer than two joints side by side`);
  return [a, b];
};

const grid = (demo: Demo): fc.Arbitrary<Values> =>
  fc
    .tuple(...demo.handles.map((handle) => fc.constantFrom(...stopsOf(handle))))
    .map((values) => Object.fromEntries(demo.handles.map(({ key }, i) => [key, values[i] ?? 0])));

const ROUND_OFF = { rel: 1e-9, because: 'round-off of a few sums' } as const;

describe('the path of demonstrations', () => {
  it('has ten of them, each under its own id', () => {
    expect(DEMO_IDS).toHaveLength(10);
    for (const id of DEMO_IDS) expect(DEMOS[id].id).toBe(id);
    expect(isDemoId('three-lengths')).toBe(true);
    expect(isDemoId('toString')).toBe(false);
  });

  it.each(ALL)('$id has one or two handles and two to four joints', (demo) => {
    const count = demo.joints(startOf(demo)).length;
    expect(count).toBeGreaterThanOrEqual(2);
    expect(count).toBeLessThanOrEqual(LETTERS.length);
    for (const handle of demo.handles) expect(allowed(handle, handle.start)).toBe(handle.start);
  });
});

describe('the question of a demonstration', () => {
  it.each(ALL)('$id is open at first', (demo) => {
    expect(goalOf(demo, startOf(demo)).isMet).toBe(false);
  });

  it.each(ALL.filter(({ id }) => !SOLVED.has(id)))('$id can be answered, and not everywhere', (demo) => {
    const [first, second] = demo.handles;
    const met = stopsOf(first).flatMap((one) =>
      (second ? stopsOf(second) : [0]).map(
        (other) => goalOf(demo, { [first.key]: one, ...(second ? { [second.key]: other } : {}) }).isMet,
      ),
    );
    expect(met).toContain(true);
    expect(met).toContain(false);
  });

  it.each(ALL.filter(({ id }) => !SOLVED.has(id) && id !== 'scaled-part'))(
    '$id can be answered with its first handle alone',
    (demo) => {
      const [first] = demo.handles;
      const met = stopsOf(first).map((value) => goalOf(demo, { ...startOf(demo), [first.key]: value }).isMet);
      expect(met).toContain(true);
    },
  );

  it('can not be answered by scaling, whatever the scale', () => {
    const demo = DEMOS['scaled-part'];
    const [scale] = demo.handles;
    for (const value of stopsOf(scale)) expect(goalOf(demo, { ...startOf(demo), scale: value }).isMet).toBe(false);
  });

  it('of the arch is answered by a rise that is within its handle', () => {
    const demo = DEMOS['arch-springs-back'];
    const [rise] = demo.handles;
    // One arch alone stays from 5.65 times its thickness [shallow theory]: 4.74 mm of two lines.
    expect(goalOf(demo, { ...startOf(demo), rise: 4.25 }).isMet).toBe(false);
    expect(goalOf(demo, { ...startOf(demo), rise: 5.25 }).isMet).toBe(true);
    expect(goalOf(demo, { ...startOf(demo), rise: rise.max }).isMet).toBe(true);
  });

  it('of the arch stands open until the solver has answered', () => {
    const demo = DEMOS['arch-springs-back'];
    expect(demo.goal(answersOf(demo, startOf(demo), assess), startOf(demo))).toBeUndefined();
  });
});

describe('handles of a demonstration', () => {
  it.each(ALL)('$id is refused nowhere', (demo) => {
    fc.assert(
      fc.property(grid(demo), (values) => {
        const answers = answersOf(demo, values, assess);
        for (const a of answers) {
          expect(a.strain.peak).toBeGreaterThanOrEqual(0);
          expect(Number.isFinite(a.effort.effort)).toBe(true);
          expect(standingOf(a)).not.toBe('');
        }
        expect(() => demo.goal(answers, values)).not.toThrow();
      }),
      { numRuns: 60 },
    );
  });

  it.each([DEMOS['side-by-side'], DEMOS['arch-springs-back']])('$id is solved at both ends of its handles', (demo) => {
    for (const end of ['min', 'max'] as const) {
      const values = Object.fromEntries(demo.handles.map((handle) => [handle.key, handle[end]]));
      for (const a of answersOf(demo, values, bySolving)) expect(a.solved).toBeDefined();
    }
  });

  it.each(ALL)('$id moves no joint farther than its kind can go', (demo) => {
    fc.assert(
      fc.property(grid(demo), (values) => {
        for (const a of answersOf(demo, values, assess)) {
          const limit = mechanicsOf(a.joint.family).limit?.(a.sizes, a.section.thickness, a.drive.id) ?? Infinity;
          expect(a.joint.movement.amount).toBeLessThanOrEqual(limit);
        }
      }),
      { numRuns: 60 },
    );
  });

  it.each(ALL)('$id reads its addresses back, whatever stands in them', (demo) => {
    for (const handle of demo.handles) {
      for (const stop of stopsOf(handle)) {
        expectClose(readValue(handle, written(handle, stop)), stop, { abs: 1e-12, because: 'the same decimals twice' });
      }
      fc.assert(
        fc.property(fc.oneof(fc.string(), fc.double().map(String), fc.constant(null)), (text) => {
          const value = readValue(handle, text);
          expect(value).toBeGreaterThanOrEqual(handle.min);
          expect(value).toBeLessThanOrEqual(handle.max);
        }),
      );
    }
  });

  it('take the nearest that is allowed', () => {
    const [length, angle] = DEMOS['three-lengths'].handles;
    expect(readValue(length, '1000')).toBe(24);
    expect(readValue(length, '-5')).toBe(4);
    expect(readValue(length, 'long')).toBe(12);
    expect(readValue(length, '11.5')).toBe(11.5);
    expect(angle && readValue(angle, '400')).toBe(radians(40));
    const [lines] = DEMOS['one-line-more'].handles;
    expect(readValue(lines, '3.7')).toBe(4);
    const [filament] = DEMOS['filament-against-filament'].handles;
    expect(readValue(filament, 'lead')).toBe(filament.start);
  });
});

describe('the law of a demonstration', () => {
  it('three lengths: strain times length is one number at one angle', () => {
    fc.assert(
      fc.property(grid(DEMOS['three-lengths']), (values) => {
        const [a, ...others] = answersOf(DEMOS['three-lengths'], values);
        for (const b of others) expectClose(b.strain.peak * b.length, a!.strain.peak * a!.length, ROUND_OFF);
      }),
    );
  });

  // [plane-bending] t·θ/(2·L) = 0.84 × 0.698132/(2 × 12), worked out by hand.
  it('three lengths: 12 mm of two lines bent 40° strains 2.443 % between its roots', () => {
    const [, b] = pairOf(DEMOS['three-lengths'], { length: 12, angle: radians(40) });
    expectClose(b.strain.nominal, 0.02443, { printedTo: 5 });
  });

  it('one line more: effort goes nearly by the cube of the lines, strain by the lines', () => {
    for (const [lines, cube] of [
      [3, 3.375],
      [4, 8],
      [6, 27],
    ] as const) {
      const [a, b] = pairOf(DEMOS['one-line-more'], { lines, angle: radians(5) });
      expectClose(b.effort.effort / a.effort.effort, cube, {
        rel: 0.03,
        because:
          'a leaf that is wide for its thickness is up to 1/(1 − ν²) stiffer, less so the thicker it is; and a trace of flow',
      });
      expectClose(b.strain.nominal / a.strain.nominal, lines / 2, ROUND_OFF);
    }
  });

  it('scaled part: the same strain at the same angle, and effort by the cube of the scale', () => {
    fc.assert(
      fc.property(grid(DEMOS['scaled-part']), (values) => {
        const [a, b] = pairOf(DEMOS['scaled-part'], values);
        const drawn = { rel: 1e-5, because: 'scaled sizes are drawn to a nanometre' } as const;
        expectClose(b.strain.peak, a.strain.peak, drawn);
        expectClose(b.effort.effort / a.effort.effort, (values['scale'] ?? 0) ** 3, drawn);
      }),
    );
  });

  it('many small bends: n of them strain one nth as much', () => {
    fc.assert(
      fc.property(grid(DEMOS['one-or-many-bends']), (values) => {
        const [a, b] = pairOf(DEMOS['one-or-many-bends'], values);
        expectClose(b.strain.peak * (values['bends'] ?? 0), a.strain.peak, ROUND_OFF);
      }),
    );
  });

  it('fillet: a larger one strains less at the root, and never the leaf between', () => {
    const demo = DEMOS['fillet-or-corner'];
    const strains = stopsOf(demo.handles[0]).map((fillet) => pairOf(demo, { ...startOf(demo), fillet })[1].strain);
    strains.slice(1).forEach((strain, i) => {
      expect(strain.peak).toBeLessThanOrEqual(strains[i]!.peak);
      expectClose(strain.nominal, strains[i]!.nominal, ROUND_OFF);
    });
  });

  it('filaments: the same leaf strains the same in each of them', () => {
    const demo = DEMOS['filament-against-filament'];
    for (const filament of stopsOf(demo.handles[0])) {
      const [a, b] = pairOf(demo, { ...startOf(demo), filament });
      expectClose(b.strain.peak, a.strain.peak, ROUND_OFF);
      expect(b.filament.id).not.toBe(a.filament.id);
    }
  });

  it('short or long: both push back as hard, and the long thin one is deeper', () => {
    fc.assert(
      fc.property(grid(DEMOS['short-or-long']), (values) => {
        const [a, b] = pairOf(DEMOS['short-or-long'], values);
        const found = { rel: 1e-6, because: 'the depth is looked for to a share of 1e-9' } as const;
        expectClose(b.effort.effort, a.effort.effort, found);
        expect(b.section.width).toBeGreaterThan(a.section.width);
        expect(b.section.thickness).toBeLessThan(a.section.thickness);
      }),
      { numRuns: 40 },
    );
  });

  it('side by side: effort by the leaves, strain as it was', () => {
    for (const leaves of stopsOf(DEMOS['side-by-side'].handles[0])) {
      const [a, b] = pairOf(DEMOS['side-by-side'], { leaves, travel: 1.5 });
      expectClose(b.effort.effort / a.effort.effort, leaves / 2, ROUND_OFF);
      expectClose(b.strain.peak, a.strain.peak, ROUND_OFF);
    }
  });

  it('side by side: the solver says the same', () => {
    const [a, b] = pairOf(DEMOS['side-by-side'], { leaves: 5, travel: 1.5 }, bySolving);
    const solved = { rel: 1e-6, because: 'two networks, each solved to 1e-8 or so' } as const;
    expectClose(b.effort.effort / a.effort.effort, 2.5, solved);
    expectClose(b.strain.peak, a.strain.peak, solved);
  });

  it('held: the push goes by the power of time of its filament, and what is let go keeps nothing of it', () => {
    const demo = DEMOS['held-or-flexed'];
    const left = stopsOf(demo.handles[0]).map((time) => {
      const [a, b] = pairOf(demo, { ...startOf(demo), time });
      expect(heldOf(a)).toBeUndefined();
      const exponent = wholeRow(b.filament).properties.relaxationExponent.typical;
      const held = heldOf(b);
      expectClose(held!.left.typical, stressLeft(60 * hoursHeld(time), exponent), ROUND_OFF);
      expect(held!.stays.typical).toBeGreaterThanOrEqual(a.set.amount);
      return held!.left.typical;
    });
    expect(left).toEqual(left.toSorted((one, other) => other - one));
  });

  it('arch: at a rise of 3 mm two that are joined stay, and one alone comes back though its force has a limit', () => {
    const [a, b] = pairOf(DEMOS['arch-springs-back'], { rise: 3, push: 1 }, bySolving);
    expect(a.solved && secondRest(a.solved)).toBeUndefined();
    expect(b.solved && secondRest(b.solved)).toBeDefined();
    expect(a.solved?.forward.events.some(({ kind }) => kind === 'limit')).toBe(true);
  });

  it.each(ALL.filter(({ law }) => law))('$id draws a curve through the points of its joints', (demo) => {
    const values = startOf(demo);
    const law = demo.law!;
    const answers = answersOf(demo, values);
    for (const at of law.curves) {
      const curve = lawCurve(demo, law, at, values);
      const x = law.places(values)[at];
      const own = curve.find((point) => Math.abs(point.x - x!) < 1e-9);
      expectClose(own!.y, lawFigure(law.figure, answers[at]!)!, ROUND_OFF);
      expect(curve.length).toBeGreaterThan(4);
    }
  });
});
