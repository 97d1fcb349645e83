/**
 * Answers of exercise pages against figures from outside the program. Sources: checkvalues/A.json and M.json [plane-bending],
 * computed for this project outside it from handbook formulas (mechanics.md, sections A and M); the practice figure of 14.7 %
 * [common-practice]; the ratio of 2.31 and the force of 740 at which a double arch stays and snaps [shallow-arch]. The pages are
 * asked with the numbers of those rows in the place of drawn ones, so that whole answers are compared and not single formulas.
 */
import { describe, expect, it } from 'vitest';
import { archSpringsBack } from '../../src/core/lesson/exercises/archSpringsBack.ts';
import { exerciseOf, type Givens } from '../../src/core/lesson/exercises/exerciseOf.ts';
import { factsOf } from '../../src/core/lesson/exercises/grids.ts';
import { oneLineMore } from '../../src/core/lesson/exercises/oneLineMore.ts';
import type { Question } from '../../src/core/lesson/exercises/question.ts';
import { scaledPart } from '../../src/core/lesson/exercises/scaledPart.ts';
import { sideBySide } from '../../src/core/lesson/exercises/sideBySide.ts';
import { threeLengths } from '../../src/core/lesson/exercises/threeLengths.ts';
import { radians } from '../../src/core/units.ts';
import { checkValues, expectRow, input, type CheckValue } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';

const figures = (questions: readonly Question[], key: string) => questions.find((one) => one.key === key)!.figures;
const value = (questions: readonly Question[], key: string, at = 0) => figures(questions, key)[at]!.value;

/** A leaf that is one line of the whole thickness: the rows give thicknesses and no lines. */
const oneLine = (thickness: number) => ({ lines: 1, lineWidth: thickness, thickness });
const withModulus = (modulus: number) => ({ ...factsOf('petg'), modulus });
const angleOf = (row: CheckValue) => radians(input(row, 'theta_deg'));

const BENT = checkValues('A', 'A-eps-');
const TURNED = checkValues('A', 'A-M-').filter(({ id }) => id.endsWith('plstress'));
const SCALED = checkValues('M', 'M-').filter(({ id }) => !id.includes('snap'));

const lengthsAsked = (
  thickness: number,
  lengths: readonly [number, number, number],
  angle: ReturnType<typeof radians>,
) => {
  const given: Givens['three-lengths'] = {
    ...exerciseOf('three-lengths', 1).given,
    ...oneLine(thickness),
    lengths,
    angle,
  };
  return threeLengths.ask(given);
};

describe('three lengths', () => {
  it.each(BENT)('$id: strain of the leaf', (row) => {
    const length = input(row, 'L_mm');
    const questions = lengthsAsked(input(row, 't_mm'), [length, 2 * length, 4 * length], angleOf(row));
    expectRow(row, value(questions, 'strain'));
    // Twice and four times as long strain half and a quarter: the figure of the row again.
    expectRow(row, 2 * value(questions, 'strain', 1));
    expectRow(row, 4 * value(questions, 'strain', 2));
  });

  it('practice: 40° over 2 mm in two lines of 0.42 mm make 14.7 %', () => {
    expectClose(100 * value(lengthsAsked(0.84, [2, 10, 20], radians(40)), 'strain'), 14.7, { printedTo: 1 });
  });

  it('35° are 0.611 as arc over radius, as in any table of angles', () => {
    expectClose(value(lengthsAsked(0.84, [6, 18, 36], radians(35)), 'arc'), 0.610865, { printedTo: 6 });
  });
});

describe('one line more', () => {
  it.each(TURNED)('$id: effort of the leaf, and by (n + 1)³/n³ that of one with a line more', (row) => {
    const thickness = input(row, 't_mm');
    const lines = 3;
    const lineWidth = thickness / lines;
    const questions = oneLineMore.ask({
      filament: withModulus(input(row, 'E_MPa')),
      angle: angleOf(row),
      length: input(row, 'L_mm'),
      depth: input(row, 'b_mm'),
      thin: { lines, lineWidth, thickness },
      thick: { lines: lines + 1, lineWidth, thickness: (lines + 1) * lineWidth },
    });
    expectRow(row, value(questions, 'effort'));
    expectRow(row, (value(questions, 'effort', 1) * 27) / 64);
    expectClose(value(questions, 'times'), 2.37, { printedTo: 2, because: '64/27 by hand' });
  });
});

describe('the whole part scaled', () => {
  it.each(SCALED)('$id: strain stays, effort and lines grow', (row) => {
    const scale = input(row, 's');
    const { given } = exerciseOf('scaled-part', 1);
    const questions = scaledPart.ask({ ...given, scale, scaledLength: given.length * scale });
    const [strain = 0, torque = 0] = row.expected;
    const allowed = { rel: 1e-12, because: 'round-off: both are powers of one number' } as const;
    expectClose(value(questions, 'strain', 1) / value(questions, 'strain'), strain, allowed);
    expectClose(value(questions, 'effort'), torque, allowed);
    expectClose(value(questions, 'thick', 1) / given.lines, scale, allowed);
  });
});

describe('side by side for force', () => {
  it.each(TURNED)('$id: so many leaves push so many times as hard, and none strains more', (row) => {
    const [thickness, length, count] = [input(row, 't_mm'), input(row, 'L_mm'), 12];
    const questions = sideBySide.ask({
      ...oneLine(thickness),
      filament: withModulus(input(row, 'E_MPa')),
      angle: angleOf(row),
      length,
      depth: input(row, 'b_mm'),
      count,
      wanted: 1,
    });
    expectRow(row, value(questions, 'one'));
    // [common-practice]: twelve alike push twelve times as hard.
    expectRow(row, value(questions, 'all') / 12);
    const strain = (thickness * angleOf(row)) / (2 * length);
    expectClose(value(questions, 'strain'), strain, { rel: 1e-12, because: 'round-off; t·θ/(2·L) by hand' });
    // ∛12 = 2.289428 from a table of cubes.
    expectClose(value(questions, 'thick') / thickness, 2.289428, { printedTo: 6 });
    expectClose(value(questions, 'thick', 1) / strain, 2.289428, { printedTo: 6 });
  });
});

describe('an arch that springs back', () => {
  it('a pair stays from 2.31 times its thickness on, rests as the check values say, and snaps at 740 E·I·h/L³ or near it', () => {
    const { given } = exerciseOf('arch-springs-back', 1);
    const asked = { ...given, ...oneLine(1), rises: [1, 2, 10] as const };
    const questions = archSpringsBack.ask(asked);
    expectClose(value(questions, 'least'), 2.31, { printedTo: 2, because: 'the published ratio of a double arch' });
    const unit = (given.filament.modulus * given.depth * 10) / (12 * given.span ** 3);
    expectClose(value(questions, 'force') / unit, 740, {
      rel: 0.01,
      because: 'the published rule is for much rise; ours is solved at Q = 10',
    });
    // Δ = 3/2 + √(1/4 − 4/300) by a pocket calculator: 1.986484.
    expectClose(value(questions, 'rest') / 10, 1.986484, { printedTo: 6 });
    expect(questions.find(({ key }) => key === 'alone')!.choice!.right).toEqual(['R']);
  });
});
