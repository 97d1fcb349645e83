/** Axes of exercise pages. */
import { LIFE_AXIS } from '../../../../core/lesson/exercises/shortOrLong.ts';
import { bare } from '../../../text/exerciseFigures.ts';
import { EXERCISE_AXES } from '../../../text/exerciseAxes.ts';
import { grouped } from '../../../text/numbers.ts';
import type { Axis } from './Axes.tsx';

const even = (from: number, to: number, step: number) =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, at) => from + at * step);

/** Even steps, a figure at every so manieth. */
export function evenAxis(to: number, step: number, figureStep: number, name: string, from = 0): Axis {
  const figures = even(from, to, figureStep).map((at) => ({ at, text: bare(at) }));
  return { from, to, lines: even(from, to, step), figures, name };
}

/** Tens, with the lines of all nine parts between. */
function tens(from: number, to: number): readonly number[] {
  const decades = even(Math.floor(Math.log10(from)), Math.ceil(Math.log10(to)), 1).map((power) => 10 ** power);
  return decades
    .flatMap((ten) => even(1, 9, 1).map((part) => part * ten))
    .filter((at) => at >= from * 0.999 && at <= to * 1.001);
}

export const LIVES: Axis = {
  ...LIFE_AXIS,
  isLog: true,
  lines: tens(LIFE_AXIS.from, LIFE_AXIS.to),
  figures: [10, 100, 1000, 10_000, 100_000, 1_000_000].map((at) => ({ at, text: grouped(at) })),
  name: EXERCISE_AXES.bends,
};

/** Per cent. */
export const STRAINS: Axis = {
  from: 0.5,
  to: 30,
  isLog: true,
  lines: [...even(0.5, 0.9, 0.1), ...tens(1, 30), 15],
  figures: [0.5, 1, 2, 5, 10, 20, 30].map((at) => ({ at, text: bare(at) })),
  name: EXERCISE_AXES.strain,
};

/** From a minute to a month, in hours. */
const MONTH = 720;
export const TIMES: Axis = {
  from: 1 / 60,
  to: MONTH,
  isLog: true,
  lines: [
    1 / 60,
    2 / 60,
    5 / 60,
    10 / 60,
    0.25,
    0.5,
    1,
    2,
    3,
    4,
    6,
    8,
    12,
    16,
    24,
    36,
    48,
    72,
    120,
    168,
    240,
    336,
    MONTH,
  ],
  figures: EXERCISE_AXES.times,
  name: EXERCISE_AXES.held,
};
