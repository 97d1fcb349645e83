/**
 * Source [shallow-arch]: a clamped arch printed as one cosine wave and pressed in its middle, after J. Qiu, J. H. Lang and
 * A. H. Slocum, J. MEMS 13, 2004, 137–146 (from memory, not opened). The rows of checkvalues/I.json are sums of 30 buckling
 * modes, computed outside this program and checked there against a boundary-value solution to 1e-5.
 *
 * The rows speak of a shallow arch, in which the rise over the span does not count; the solver's arch is one of two
 * finite rises, 1/200 and 1/100 of the span, taken to none: what is left out goes with the square of the rise. The two
 * halves rise by half a wave each and meet in the node that is pressed: free to turn and lean, or kept from turning (the
 * double form). What the rows call the straight branch is in the solver the path that leaves sideways and joins again.
 */
import { describe, expect, it } from 'vitest';
import type { PathEvent } from '../../../src/core/beam/answer.ts';
import { followPath, takenPath } from '../../../src/core/beam/solve.ts';
import { HELD, network } from '../../support/beamModels.ts';
import { checkValues, input, type CheckValue } from '../../support/checkValues.ts';
import { expectSolved, thinLimit } from '../../support/solved.ts';

const SPAN = 100;
const TO = 2.1;
type Form = 'double' | 'free';

const pressed = new Map<string, ReturnType<typeof pressOnce>>();

/** Each arch is solved once, whatever is asked of it. */
function press(ratio: number, form: Form, riseOverSpan: number, parts = 42) {
  const key = `${ratio} ${form} ${riseOverSpan} ${parts}`;
  const known = pressed.get(key) ?? pressOnce(ratio, form, riseOverSpan, parts);
  pressed.set(key, known);
  return known;
}

/** Pressed to `TO` rises: what happens on the way that a real part takes, travel over rise and force over E·I·h/L³. */
function pressOnce(ratio: number, form: Form, riseOverSpan: number, parts: number) {
  const rise = riseOverSpan * SPAN;
  const thickness = rise / ratio;
  const half = { shape: { kind: 'rise', heading: 0 }, thickness, width: 1 } as const;
  const model = network({
    modulus: 12,
    nodes: [
      { id: 'left', x: 0, y: 0 },
      { id: 'middle', x: SPAN / 2, y: rise },
      { id: 'right', x: SPAN, y: 0 },
    ],
    members: [
      { id: 'up', from: 'left', to: 'middle', ...half },
      { id: 'down', from: 'middle', to: 'right', ...half },
    ],
    supports: [
      { at: 'left', ...HELD },
      { at: 'right', ...HELD },
      ...(form === 'double' ? [{ at: 'middle', turn: true }] : []),
    ],
    motions: [{ at: 'middle', y: -TO * rise }],
  });
  const answer = followPath(model, { parts });
  const taken = takenPath(answer);
  const unit = (thickness ** 3 * rise) / SPAN ** 3;
  const force = ({ effort }: { readonly effort: number }) => effort / (TO * rise * unit);
  const travel = ({ share }: { readonly share: number }) => TO * share;
  const told = (event: PathEvent | undefined) => (event ? { force: force(event), travel: travel(event) } : undefined);
  const { events } = taken;
  return {
    leans: answer.second !== undefined,
    ends: answer.stopped === undefined && answer.second?.path.stopped === undefined,
    top: told(events.find(({ kind }) => kind !== 'rest')),
    bottom: told(events.findLast(({ kind }) => kind === 'limit')),
    rests: events
      .filter(({ kind }) => kind === 'rest')
      .map((event) => ({ travel: travel(event), stable: event.stable })),
    states: taken.points.map((point) => ({
      force: force(point),
      travel: travel(point),
      strain: Math.abs(point.peak.strain) / ((thickness * rise) / SPAN ** 2),
    })),
  };
}

/** Top, bottom, and slope and intercept of the straight branch between them. */
function figuresOf(row: CheckValue, form: Form) {
  return (riseOverSpan: number): readonly number[] => {
    const { top, bottom, states, ends } = press(input(row, 'Q'), form, riseOverSpan);
    if (!top || !bottom || !ends) throw new Error(`${row.id} has no top or bottom, or its path ends early`);
    const near = (travel: number) =>
      states.reduce((a, b) => (Math.abs(b.travel - travel) < Math.abs(a.travel - travel) ? b : a));
    const [early, late] = [near(0.75), near(1.35)];
    const slope = (late.force - early.force) / (late.travel - early.travel);
    return [top.force, top.travel, bottom.force, bottom.travel, slope, early.force - slope * early.travel];
  };
}

/** Travels of the rests: poised, and snapped. */
function restsOf(row: CheckValue, form: Form) {
  return (riseOverSpan: number): readonly number[] => {
    const { rests } = press(input(row, 'Q'), form, riseOverSpan);
    expect(rests.map(({ stable }) => stable)).toEqual([false, true]);
    return rests.map(({ travel }) => travel);
  };
}

const STEP = 0.005;
/** Of forces of some hundreds; the rows are sums of 30 modes and were checked to 1e-5. */
const FORCE = { abs: 1e-3, because: 'what the 30 modes of the rows leave out' };
const TRAVEL = { abs: 2e-5, because: 'rests lie between points of the path, on a cubic' };
const LINE = { rel: 1e-5, because: 'what the 30 modes of the rows leave out' };
const ROWS = [
  ...checkValues('I', 'I-double-').map((row) => ({ row, form: 'double' as const })),
  ...checkValues('I', 'I-free-').map((row) => ({ row, form: 'free' as const })),
];

describe('the arch pressed in its middle, solved as a network', () => {
  it.each(ROWS)('$row.id: top, bottom and the branch between', ({ row, form }) => {
    const figures = thinLimit(figuresOf(row, form), STEP);
    expectSolved(row, [FORCE, TRAVEL, FORCE, TRAVEL, LINE, LINE], ...figures);
  });

  const WITH_REST = ROWS.filter(({ row }) => !Number.isNaN(row.expected[7]));
  const WITHOUT = ROWS.filter(({ row }) => Number.isNaN(row.expected[7]));

  it.each(WITH_REST)('$row.id: where it rests', ({ row, form }) => {
    const [poised = NaN, snapped = NaN] = thinLimit(restsOf(row, form), STEP);
    const shifted = { ...row, expected: row.expected.slice(6) };
    expectSolved(shifted, [TRAVEL, TRAVEL], poised, snapped);
  });

  it.each(WITHOUT)('$row.id: comes back by itself', ({ row, form }) => {
    const { rests, states } = press(input(row, 'Q'), form, STEP);
    expect(rests).toEqual([]);
    expect(states.slice(1).every(({ force }) => force > 0)).toBe(true);
  });
});

/** The ratio of rise to thickness at which the bottom of the path just touches zero, by the secant's rule. */
function ratioAtZero(form: Form, low: number, high: number) {
  return (riseOverSpan: number): readonly number[] => {
    const bottom = (ratio: number) => press(ratio, form, riseOverSpan).bottom?.force ?? NaN;
    let [a, b] = [low, high];
    let [fa, fb] = [bottom(a), bottom(b)];
    for (let i = 0; i < 4; i += 1) {
      const c = b - (fb * (b - a)) / (fb - fa);
      [a, fa] = [b, fb];
      [b, fb] = [c, bottom(c)];
      if (Math.abs(b - a) < 1e-7) break;
    }
    return [b];
  };
}

describe('how high an arch must be', () => {
  it('to stay, in the double form', () => {
    const [row] = checkValues('I', 'I-Qmin30');
    expectSolved(
      row!,
      { rel: 1e-4, because: 'stated by the row' },
      ...thinLimit(ratioAtZero('double', 2.32, 2.34), STEP),
    );
  });

  it('to stay, when it is free to lean', () => {
    const [row] = checkValues('I', 'I-Qfree');
    expectSolved(row!, { rel: 1e-3, because: 'stated by the row' }, ...thinLimit(ratioAtZero('free', 5.6, 5.7), STEP));
  });

  it.each([
    ['I-Qmode3', 'double'],
    ['I-Qmode2', 'free'],
  ] as const)('%s: to leave the even path', (id, form) => {
    const [row] = checkValues('I', id);
    const ratio = row!.expected[0]!;
    expect(press(0.995 * ratio, form, STEP, 200).leans).toBe(false);
    expect(press(1.005 * ratio, form, STEP, 200).leans).toBe(true);
  });
});

describe('the largest strain of an arch of the double form', () => {
  it.each(checkValues('I', 'I-eps-'))('$id', (row) => {
    const figures = thinLimit((riseOverSpan) => {
      const { states } = press(input(row, 'Q'), 'double', riseOverSpan);
      return [Math.max(...states.filter(({ travel }) => travel <= 2).map(({ strain }) => strain))];
    }, STEP);
    expectSolved(row, { rel: 0.005, because: 'stated by the row' }, ...figures);
  });
});
