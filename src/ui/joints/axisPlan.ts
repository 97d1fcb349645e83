/** Where everything goes on the axis of a way out: strain, or effort, before and after, against what is allowed. */
import { allowableNamed } from '../../core/design/allowables.ts';
import type { Assessment } from '../../core/design/assessment.ts';
import { lettersWidth } from '../charts/letters.ts';
import { effortFigure } from '../text/numbers.ts';
import { axisFigure, axisText, effortAxisText } from '../text/remedyText.ts';

export const AXIS = { height: 40, line: 22, above: 11, below: 38, letter: 13 } as const;
const DOT = 4.5;

interface AxisLetters {
  readonly x: number;
  readonly text: string;
}

/** A value that is marked on an axis: what stands at it, bare and in words. */
interface AxisTick {
  readonly value: number;
  readonly figure: string;
  readonly words: string;
}

/** What an axis shows, whatever it measures: before and after, how a value is said, and what is marked. */
export interface AxisOf {
  readonly was: number;
  readonly now: number;
  readonly say: (value: number) => string;
  readonly ticks: readonly AxisTick[];
  /** For readers of the page by ear. */
  readonly label: string;
}

export interface AxisPlan {
  /** Where the tints begin, from faint to strong, and the axis ends. */
  readonly ticks: readonly number[];
  readonly end: number;
  readonly before: number;
  readonly after: number;
  /** From ring to dot; absent where they are too near for one. */
  readonly arrow: { readonly from: number; readonly to: number } | undefined;
  readonly limits: readonly AxisLetters[];
  readonly figures: readonly AxisLetters[];
  /** The figure of what is proposed, which is lettered in its own ink. */
  readonly now: string;
  /** It does not change, so one figure stands for both. */
  readonly same: boolean;
}

/** Moves two labels apart, and both into the axis, by as little as it takes. */
function apart(labels: readonly [AxisLetters, AxisLetters], end: number, gap: number): readonly AxisLetters[] {
  const [left, right] = labels[0].x <= labels[1].x ? labels : [labels[1], labels[0]];
  const half = (label: AxisLetters) => lettersWidth(label.text, AXIS.letter) / 2;
  const least = half(left) + half(right) + gap;
  const short = Math.max(0, least - (right.x - left.x));
  const leftX = Math.max(half(left), Math.min(left.x - short / 2, end - half(right) - least));
  const rightX = Math.min(end - half(right), Math.max(right.x + short / 2, leftX + least));
  return [
    { ...left, x: leftX },
    { ...right, x: rightX },
  ];
}

/** One label within the axis. */
function within(label: AxisLetters, end: number): AxisLetters {
  const half = lettersWidth(label.text, AXIS.letter) / 2;
  return { ...label, x: Math.min(Math.max(label.x, half), end - half) };
}

/** Letters at ticks, in words where these have room beside each other. */
function limitsOf(ticks: readonly AxisTick[], inWords: boolean, at: (value: number) => number, width: number) {
  const room = ticks.reduce((sum, { words }) => sum + lettersWidth(words, AXIS.letter) + 12, 0);
  const letters = ticks.map(({ value, figure, words }): AxisLetters => {
    return { x: at(value), text: inWords && room < width ? words : figure };
  });
  const [first, second] = letters;
  return first && second ? apart([first, second], width, 8) : letters.map((label) => within(label, width));
}

/** The axis of any quantity, over a width [px]. */
export function planAxis({ was, now, say, ticks }: AxisOf, width: number, inWords: boolean): AxisPlan {
  const most = Math.max(...ticks.map(({ value }) => value * 1.15), was * 1.06, now * 1.06);
  const at = (value: number) => (value / most) * width;
  const [x0, x1] = [at(was), at(now)];
  const way = Math.sign(x1 - x0);
  const same = say(was) === say(now);
  const figures = [
    { x: x0, text: say(was) },
    { x: x1, text: say(now) },
  ] as const;
  return {
    ticks: ticks.map(({ value }) => at(value)),
    end: width,
    before: x0,
    after: x1,
    arrow: Math.abs(x1 - x0) > 4 * DOT ? { from: x0 + way * DOT, to: x1 - way * (DOT + 1) } : undefined,
    limits: limitsOf(ticks, inWords, at, width),
    figures: same ? [within(figures[1], width)] : apart(figures, width, 6),
    now: say(now),
    same,
  };
}

/** What the axis of a way out shows: effort, where that is what is wrong; strain otherwise. */
export function axisOf(before: Assessment, after: Assessment): AxisOf {
  const { effortAtMost } = after.joint.movement;
  if (before.verdict.reason === 'effort' && effortAtMost !== undefined) return effortAxis(before, after, effortAtMost);
  return strainAxis(before, after);
}

function effortAxis({ effort }: Assessment, after: Assessment, most: number): AxisOf {
  return {
    was: effort.effort,
    now: after.effort.effort,
    say: effortFigure,
    ticks: [{ value: most, figure: effortFigure(most), words: `${effortFigure(most)} at most` }],
    label: effortAxisText(effort.effort, after.effort.effort, most, effort.measure),
  };
}

/** The limits are those of the joint after the change, so that another filament moves the ticks and not the dots. */
export function strainAxis(before: Assessment, after: Assessment): AxisOf {
  const [again, bent] = (['repeated', 'yield'] as const).map(
    (name) => allowableNamed(after.allowables, name).limit,
  ) as [number, number];
  const [was, now] = [before.strain.peak, after.strain.peak];
  return {
    was,
    now,
    say: axisFigure,
    ticks: [
      { value: again, figure: axisFigure(again), words: `${axisFigure(again)} again and again` },
      { value: bent, figure: axisFigure(bent), words: `${axisFigure(bent)} stays bent` },
    ],
    label: axisText(was, now, again, bent),
  };
}
