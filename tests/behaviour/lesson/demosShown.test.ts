/**
 * How demonstrations are shown: addresses that come back as they were left, words that fit their handles and give nothing
 * away, pictures that agree with the solver, and plots of all of them.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import type { Assessment } from '../../../src/core/design/assessment.ts';
import { bySolver } from '../../../src/core/design/bySolver.ts';
import type { Demo, Values } from '../../../src/core/lesson/demos/demo.ts';
import { DEMOS } from '../../../src/core/lesson/demos/demos.ts';
import { startOf, stopsOf } from '../../../src/core/lesson/demos/handles.ts';
import { DEMO_IDS } from '../../../src/core/lesson/demos/ids.ts';
import { addressOf, beside, levelOf, shownIn, STEPS, type Shown } from '../../../src/ui/lesson/demos/demoState.ts';
import { stepped } from '../../../src/ui/lesson/demos/handleSpecs.ts';
import { plotPlan } from '../../../src/ui/lesson/demos/lawPlan.ts';
import { roomOf } from '../../../src/ui/lesson/demos/roomOf.ts';
import { rolled } from '../../../src/ui/lesson/rolled.ts';
import { rowsPlan } from '../../../src/ui/lesson/demos/rowPlan.ts';
import { lessonIn } from '../../../src/ui/lesson/route.ts';
import { openOrAnswered } from '../../../src/ui/text/lessonDemoText.ts';
import { DEMO_WORDS, SIGN_WORDS } from '../../../src/ui/text/lessonDemoWords.ts';
import { workingSaid } from '../../../src/ui/text/lessonDemoWorking.ts';
import { expectClose } from '../../support/close.ts';
import '../../support/everyKind.ts';

const ALL = DEMO_IDS.map((id) => DEMOS[id]);

function answersOf(demo: Demo, values: Values, judge = assess): readonly Assessment[] {
  return demo.joints(values).map((joint) => {
    const assessed = judge(joint);
    if (!assessed.ok) throw new Error(assessed.problems[0].message);
    return assessed.value;
  });
}

const solvedOf = (demo: Demo) => answersOf(demo, startOf(demo), (joint) => assess(joint, bySolver({})));

const anyShown: fc.Arbitrary<Shown> = fc.constantFrom(...ALL).chain((demo) =>
  fc.record({
    id: fc.constant(demo.id),
    values: fc
      .tuple(...demo.handles.map((handle) => fc.constantFrom(...stopsOf(handle))))
      .map((values): Values => Object.fromEntries(demo.handles.map(({ key }, i) => [key, values[i] ?? 0]))),
    step: fc.constantFrom(...STEPS),
    hidden: fc.boolean(),
  }),
);

describe('the address of a demonstration', () => {
  it('opens it exactly as it was left', () => {
    fc.assert(
      fc.property(anyShown, (shown) => {
        const back = shownIn(lessonIn(addressOf(shown)));
        expect({ ...back, values: {} }).toEqual({ ...shown, values: {} });
        for (const [key, value] of Object.entries(shown.values)) {
          expectClose(back.values[key]!, value, { abs: 1e-12, because: 'the same decimals twice' });
        }
        expect(addressOf(back)).toBe(addressOf(shown));
      }),
    );
  });

  it('never throws, whatever it says', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (of, asked) => {
        const shown = shownIn(lessonIn(`#lesson/demo/${of}?${asked}`));
        expect(DEMO_IDS).toContain(shown.id);
        expect(STEPS).toContain(shown.step);
      }),
    );
  });

  it('of nothing asks the first question, without an answer', () => {
    expect(shownIn(lessonIn('#lesson'))).toEqual({
      id: 'three-lengths',
      values: startOf(DEMOS['three-lengths']),
      step: 1,
      hidden: false,
    });
  });

  it('leads on and back along the path, and past neither end', () => {
    expect(beside('three-lengths', 1)).toBe('one-line-more');
    expect(beside('one-line-more', -1)).toBe('three-lengths');
    expect(beside('three-lengths', -1)).toBeUndefined();
    expect(beside('arch-springs-back', 1)).toBeUndefined();
  });

  it('shows no number where numbers are hidden', () => {
    expect(levelOf({ step: 4, hidden: true })).toBe(2);
    expect(levelOf({ step: 1, hidden: true })).toBe(1);
    expect(levelOf({ step: 3, hidden: false })).toBe(3);
  });
});

describe('keys on a handle', () => {
  it.each(ALL)('$id: go from stop to stop and end at its ends', (demo) => {
    for (const handle of demo.handles) {
      const stops = stopsOf(handle);
      let at = handle.min;
      const met = [at];
      for (let i = 1; i < stops.length; i += 1) met.push((at = stepped(handle, at, true)));
      met.forEach((value, i) => expectClose(value, stops[i]!, { abs: 1e-9, because: 'rounded to the same decimals' }));
      expect(stepped(handle, handle.max, true)).toBe(handle.max);
      expect(stepped(handle, handle.min, false)).toBe(handle.min);
    }
  });
});

describe('the words of a demonstration', () => {
  it.each(ALL)('$id: the sentence has every handle in it once, and no other', (demo) => {
    const words = DEMO_WORDS[demo.id];
    const named = [...words.sentence.matchAll(/\{(\w+)\}/g)].map(([, key]) => key ?? '');
    expect(named.toSorted()).toEqual(demo.handles.map(({ key }) => key).toSorted());
    expect(Object.keys(words.handles).toSorted()).toEqual(named.toSorted());
  });

  it.each(ALL)('$id: what is asked has no number in it', (demo) => {
    const { ask, question, claim, why } = DEMO_WORDS[demo.id];
    for (const said of [ask, question, claim, why]) expect(said).not.toMatch(/\d/);
    expect(ask).toMatch(/\?$/);
  });

  it.each(ALL)('$id: the answer says yes where it is, and not yet where it is not', (demo) => {
    const solved = demo.law === undefined;
    const values = startOf(demo);
    const answers = solved ? solvedOf(demo) : answersOf(demo, values);
    const goal = demo.goal(answers, values);
    if (!goal) throw new Error('it should be known');
    const words = DEMO_WORDS[demo.id];
    const told = { answers, values, unit: 'mm' } as const;
    expect(words.answer(goal, told)).toMatch(/^Not yet\. /);
    expect(words.answer({ ...goal, isMet: true }, told)).toMatch(/^Yes\. /);
    expect(openOrAnswered(goal)).not.toMatch(/\d/);
  });

  it.each(ALL)('$id: the working uses no symbol that is not explained, in mm and in inches', (demo) => {
    const values = startOf(demo);
    const answers = answersOf(demo, values);
    const { symbols } = DEMO_WORDS[demo.id];
    for (const unit of ['mm', 'inch'] as const) {
      const lines = workingSaid(demo.id, { answers, values, unit });
      expect(lines.length).toBeGreaterThan(1);
      const text = lines.map(({ left, fraction, text: said }) =>
        [left, fraction?.top, fraction?.under, said].join(' '),
      );
      const greek = new Set(
        text
          .join(' ')
          .match(/[ε-ω]/gu)
          ?.filter((letter) => letter !== 'π') ?? [],
      );
      for (const letter of greek) expect(symbols).toContain(letter);
      expect(text.join(' ')).not.toMatch(/NaN|undefined|Infinity/);
    }
    for (const sign of symbols) expect(SIGN_WORDS[sign]).toBeTruthy();
  });
});

describe('the picture of a demonstration', () => {
  it.each([
    ['three-lengths', 0],
    ['one-or-many-bends', 1],
  ] as const)('%s: rolled in closed form, every pad lies where the solver puts it', (id, at) => {
    const demo = DEMOS[id];
    const a = answersOf(demo, startOf(demo))[at]!;
    const { solved } = solvedOf(demo)[at]!;
    const byForm = rolled(a).stateAt(1);
    const wanted = solved!.forward.points.find(({ amount }) => Math.abs(amount - a.joint.movement.amount) < 1e-9)!;
    const near = {
      abs: 1e-5,
      because: 'the solver keeps places to a hundred-thousandth of a mm or better here',
    } as const;
    for (const [pad, pose] of Object.entries(wanted.poses)) {
      const own = byForm.poses[pad];
      if (own === undefined) throw new Error(`there is no pad ${pad}`);
      for (const key of ['x', 'y', 'turn'] as const) expectClose(own[key], pose[key], near);
    }
    const [shape] = wanted.shapes;
    const skin = { rel: 1e-3, because: 'the solver lets the leaf shear and stretch a little' } as const;
    expectClose(byForm.shapes[0]!.right[6]!, shape!.right[Math.floor(shape!.right.length / 2)]!, skin);
  });

  it.each(ALL)('$id: keeps room for all that its handles can do, on any width', (demo) => {
    const rooms = roomOf(demo);
    expect(rooms).toHaveLength(demo.joints(startOf(demo)).length);
    for (const width of [320, 590, 1200]) {
      const { sheets } = rowsPlan(rooms, width, 700, 96 / 25.4);
      sheets.forEach((sheet, i) => {
        const { left, right, top, bottom } = rooms[i]!;
        expect(sheet.rootX + left * sheet.pxPerMm).toBeGreaterThan(0);
        expect(sheet.rootX + right * sheet.pxPerMm).toBeLessThan(width);
        expect(-top * sheet.pxPerMm).toBeGreaterThan(sheet.top);
        expect(-bottom * sheet.pxPerMm).toBeLessThan(sheet.bottom);
      });
    }
  });
});

describe('the plot of a demonstration', () => {
  it.each(ALL)('$id: has its joints as lettered points on the paper', (demo) => {
    const values = startOf(demo);
    const answers = demo.law ? answersOf(demo, values) : solvedOf(demo);
    const plan = plotPlan(demo, answers, values, 'mm');
    if (!plan) throw new Error('there is no plot');
    expect(plan.points.some(({ letter }) => letter === 'B')).toBe(true);
    for (const { x, y } of plan.points) {
      expect(x).toBeGreaterThanOrEqual(plan.x.span[0]);
      expect(x).toBeLessThanOrEqual(plan.x.span[1]);
      expect(y).toBeGreaterThanOrEqual(plan.y.span[0]);
      expect(y).toBeLessThanOrEqual(plan.y.span[1]);
    }
    const [low, high] = plan.x.span;
    expect(plan.read((low + high) / 2).text).not.toMatch(/NaN|undefined/);
  });

  it('waits for the solver where it shows a way', () => {
    const demo = DEMOS['arch-springs-back'];
    expect(plotPlan(demo, answersOf(demo, startOf(demo)), startOf(demo), 'mm')).toBeUndefined();
  });
});
