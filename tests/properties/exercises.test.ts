/** Laws of exercise pages that hold for any set. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEMO_IDS } from '../../src/core/lesson/demos/ids.ts';
import { areUnlike, SETS } from '../../src/core/lesson/exercises/exercise.ts';
import { exerciseOf, type AnyExercise } from '../../src/core/lesson/exercises/exerciseOf.ts';
import { isTaken } from '../../src/core/lesson/exercises/question.ts';

const RUNS = { numRuns: 60 };
const set = fc.integer({ min: SETS.min, max: SETS.max - 1 });
const page = (id: (typeof DEMO_IDS)[number], number: number) => exerciseOf(id, number) as AnyExercise;
/** Letters that a question may have all or none of: the rest must leave something to find. */
const MAY_BE_ALL = new Set(['alone']);

describe.each(DEMO_IDS.map((id) => [id] as const))('%s', (id) => {
  it('no answer of a set is taken in the next one', () => {
    fc.assert(
      fc.property(set, (number) => {
        const [one, next] = [page(id, number), page(id, number + 1)];
        expect(areUnlike(one.questions, next.questions)).toBe(true);
        // Said again without the function that the pages are drawn by.
        const figures = one.questions.flatMap((question) => question.figures);
        const others = next.questions.flatMap((question) => question.figures);
        expect(others).toHaveLength(figures.length);
        figures.forEach((figure, at) =>
          expect(Math.abs(figure.value - others[at]!.value)).toBeGreaterThan(figure.within),
        );
      }),
      RUNS,
    );
  });

  it('every set has five to seven questions, each with something to find', () => {
    fc.assert(
      fc.property(set, (number) => {
        const { questions } = page(id, number);
        expect(questions.length).toBeGreaterThanOrEqual(5);
        expect(questions.length).toBeLessThanOrEqual(7);
        for (const { key, figures, choice } of questions) {
          if (choice) {
            expect(choice.right.length, key).toBeGreaterThan(0);
            if (!MAY_BE_ALL.has(key)) expect(choice.right.length, key).toBeLessThan(choice.among.length);
            for (const letter of choice.right) expect(choice.among).toContain(letter);
          }
          for (const figure of figures) {
            expect(figure.value, key).toBeGreaterThan(0);
            expect(Number.isFinite(figure.value)).toBe(true);
            expect(isTaken(figure, figure.value)).toBe(true);
            // A tolerance that took half or double would find nothing.
            expect(isTaken(figure, figure.value / 2)).toBe(false);
            expect(isTaken(figure, figure.value * 2)).toBe(false);
          }
        }
      }),
      RUNS,
    );
  });
});

const figuresOf = ({ questions }: AnyExercise, key: string) => questions.find((one) => one.key === key)!.figures;

/** A leaf bent evenly is an arc: its skin is longer than its middle line by the angle times half the thickness. */
function lengthened(thickness: number, length: number, angle: number): number {
  const radius = length / angle;
  return ((radius + thickness / 2) * angle - length) / length;
}

describe('strains of pages are those of an arc', () => {
  it('of three lengths, of a scaled part and of many bends', () => {
    fc.assert(
      fc.property(set, (number) => {
        const lengths = exerciseOf('three-lengths', number);
        figuresOf(lengths, 'strain').forEach(({ value }, at) => {
          const { thickness, angle } = lengths.given;
          expect(value).toBeCloseTo(lengthened(thickness, lengths.given.lengths[at]!, angle), 12);
        });
        const { given, ...scaled } = exerciseOf('scaled-part', number);
        const [a, b] = figuresOf({ given, ...scaled }, 'strain');
        expect(a!.value).toBeCloseTo(lengthened(given.thickness, given.length, given.angle), 12);
        expect(b!.value).toBeCloseTo(a!.value, 12);
        const bends = exerciseOf('one-or-many-bends', number);
        figuresOf(bends, 'strain').forEach(({ value }, at) => {
          const { thickness, length, angle } = bends.given;
          expect(value).toBeCloseTo(lengthened(thickness, length, angle / bends.given.bends[at]!), 12);
        });
      }),
      RUNS,
    );
  });

  it('letters to choose agree with the strains that are asked beside them', () => {
    fc.assert(
      fc.property(set, (number) => {
        for (const exercise of [exerciseOf('three-lengths', number), exerciseOf('one-or-many-bends', number)]) {
          const back = exercise.questions.find(({ key }) => key === 'back')!.choice!;
          const under = figuresOf(exercise, 'strain').filter(({ value }) => value <= exercise.given.filament.yields);
          expect(under.map(({ of }) => of)).toEqual(back.right);
        }
      }),
      RUNS,
    );
  });

  it('reading a ruler half a millimetre off chooses the same letters', () => {
    fc.assert(
      fc.property(set, fc.constantFrom(-0.5, 0.5), (number, off) => {
        const { given, questions } = exerciseOf('three-lengths', number);
        const right = questions.find(({ key }) => key === 'back')!.choice!.right;
        const read = given.lengths.map((length) => lengthened(given.thickness, length + off, given.angle));
        expect(['P', 'Q', 'R'].filter((_, at) => read[at]! <= given.filament.yields)).toEqual(right);
      }),
      RUNS,
    );
  });
});
