/** Exercise pages: what a set gives, what its answers are, what is said, and what an address shows. */
import { describe, expect, it } from 'vitest';
import { DEMO_IDS } from '../../../src/core/lesson/demos/ids.ts';
import { nearestSet, SETS } from '../../../src/core/lesson/exercises/exercise.ts';
import { exerciseOf, exercisesFor, type AnyExercise } from '../../../src/core/lesson/exercises/exerciseOf.ts';
import { isTaken, measured, overLength, worked } from '../../../src/core/lesson/exercises/question.ts';
import { exerciseAddress, exerciseIn } from '../../../src/ui/lesson/exercise/exerciseState.ts';
import { lessonIn } from '../../../src/ui/lesson/route.ts';
import { choiceText, figuresText, timeText, withinText } from '../../../src/ui/text/exerciseFigures.ts';
import { answerSaid, CLASS } from '../../../src/ui/text/exerciseText.ts';
import { pageSaid } from '../../../src/ui/text/exerciseWords.ts';
import { radians } from '../../../src/core/units.ts';

const ALL = DEMO_IDS.map((id) => [id] as const);
const page = (id: (typeof DEMO_IDS)[number], set: number) => exerciseOf(id, set) as AnyExercise;

describe('sets', () => {
  it.each([
    [14, 14],
    [14.4, 14],
    [0, SETS.min],
    [-7, SETS.min],
    [1500, SETS.max],
    [Infinity, SETS.max],
    [Number.NaN, SETS.min],
  ])('%s falls to %s', (asked, set) => {
    expect(nearestSet(asked)).toBe(set);
    expect(exerciseOf('three-lengths', asked).set).toBe(set);
  });

  it.each(ALL)('of %s give the same page again, and come in order for a class', (id) => {
    expect(exerciseOf(id, 14)).toEqual(exerciseOf(id, 14));
    expect(exercisesFor(id, 14, 5)).toEqual([14, 15, 16, 17, 18].map((set) => exerciseOf(id, set)));
  });

  // All there are: what a class is promised holds wherever its sets begin.
  it.each(ALL)('of %s are all there, and no forty of them in a row hold the same page twice', (id) => {
    const last = new Map<string, number>();
    for (let set = SETS.min; set <= SETS.max; set += 1) {
      const asked = JSON.stringify(exerciseOf(id, set).questions.map(({ figures }) => figures));
      expect(set - (last.get(asked) ?? -Infinity), `${id}, set ${set}`).toBeGreaterThanOrEqual(CLASS.max);
      last.set(asked, set);
    }
  });

  it('go on from the first past the last', () => {
    expect(exercisesFor('one-line-more', SETS.max, 2).map(({ set }) => set)).toEqual([SETS.max, SETS.min]);
  });
});

describe('answers', () => {
  it('of a measured length are taken within half a millimetre, and of what rests on it in proportion', () => {
    const length = measured(12, 'P');
    expect([11.5, 12, 12.5].every((value) => isTaken(length, value))).toBe(true);
    expect(isTaken(length, 12.6)).toBe(false);
    const strain = overLength('strain', 0.04, 12);
    // Whoever reads 11.5 mm finds 4.174 %.
    expect(isTaken(strain, (0.04 * 12) / 11.5)).toBe(true);
    expect(isTaken(strain, (0.04 * 12) / 11)).toBe(false);
  });

  it('of counts must be met', () => {
    expect(isTaken(worked('count', 7), 7)).toBe(true);
    expect(isTaken(worked('count', 7), 8)).toBe(false);
  });

  it('are said with their units once, and with how far they may be off', () => {
    const figures = [measured(6, 'P'), measured(18, 'Q'), measured(36.5, 'R')];
    expect(figuresText(figures)).toBe('P\u00a06, Q\u00a018, R\u00a036.5\u00a0mm');
    expect(withinText(figures)).toBe('within\u00a00.5\u00a0mm');
    expect(withinText([worked('arc', radians(35))])).toBeUndefined();
    expect(figuresText([worked('angle', radians(35), 'A')])).toBe('A\u00a035°');
    expect(figuresText([worked('share', 0.63)], ['7 days'])).toBe('7 days:\u00a063\u00a0%');
    expect(choiceText({ among: ['P', 'Q', 'R'], right: ['Q', 'R'] })).toBe('Q and R');
    expect(choiceText({ among: ['P', 'Q'], right: [] })).toBe('none');
    expect([0.25, 1, 12, 48, 168].map(timeText).join('; ').replaceAll('\u00a0', ' ')).toBe(
      '15 minutes; 1 hour; 12 hours; 2 days; 7 days',
    );
  });
});

describe('words', () => {
  it.each(ALL)('of %s: every question and every answer is said, Greek in formulas alone', (id) => {
    for (const set of [1, 2, 14, 15]) {
      const exercise = page(id, set);
      const said = pageSaid(exercise);
      expect(said.questions.length).toBeGreaterThanOrEqual(5);
      expect(said.questions.length).toBeLessThanOrEqual(7);
      exercise.questions.forEach((question, at) => {
        const words = said.questions[at]!;
        const answer = answerSaid(question, words);
        expect(answer.says, `${id} ${question.key}`).not.toBe('');
        const text = [said.setUp, said.drawn, words.says, answer.says, answer.why ?? ''].join(' ');
        expect(text).not.toMatch(/[α-ωΑ-Ω]|undefined|NaN|Infinity/);
        expect(words.labels?.length ?? question.figures.length).toBe(question.figures.length);
      });
    }
  });
});

const shown = (hash: string, unit: 'mm' | 'inch' = 'mm') => exerciseIn(lessonIn(hash), unit);

describe('an address', () => {
  it('without anything shows the first page', () => {
    expect(shown('#lesson/exercise')).toEqual({
      id: 'three-lengths',
      set: 14,
      paper: 'a4',
      answers: 'second',
      pages: 30,
    });
    expect(shown('#lesson/exercise', 'inch').paper).toBe('letter');
  });

  it.each(ALL)('of %s opens the same again', (id) => {
    const wanted = { id, set: 207, paper: 'letter', answers: 'none', pages: 12 } as const;
    expect(shown(exerciseAddress(wanted))).toEqual(wanted);
  });

  it('with nonsense falls to the nearest that there is', () => {
    const odd = '#lesson/exercise/no-such?set=-3&paper=quarto&answers=maybe&pages=4000';
    expect(shown(odd)).toEqual({ id: 'three-lengths', set: 1, paper: 'a4', answers: 'second', pages: 40 });
    expect(shown('#lesson/exercise/side-by-side?set=1e9&pages=0').set).toBe(SETS.max);
    expect(shown('#lesson/exercise/side-by-side?set=&pages=x')).toMatchObject({ set: 14, pages: 30 });
  });
});
