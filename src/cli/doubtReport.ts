/** How sure the answer for a joint is, as the terminal says it. */
import { doubtOf } from '../core/design/doubt.ts';
import type { DoubtAnswer, Percentiles } from '../core/design/doubtAnswer.ts';
import type { Joint } from '../core/design/joint.ts';
import { USUAL_SPREAD } from '../core/print/spread.ts';
import { ok } from '../core/result.ts';
import { EFFORT_UNITS, snake, type Measure } from './keys.ts';

/** How many prints are imagined, a power of 2, and what they are drawn from. */
export interface PrintsAsked {
  readonly samples: number;
  readonly seed: number;
}

/**
 * The chance with its sampling error, what makes most of the doubt, and between what everything lies.
 *
 * Problems: those of `doubtOf`.
 *
 * @param joint - as read
 * @param measure - of its drive
 * @param prints - how many, and their seed
 */
export function reportDoubt(joint: Joint, measure: Measure, { samples, seed }: PrintsAsked) {
  const doubt = doubtOf(joint, { spread: USUAL_SPREAD, samples, seed, how: 'quasi-random' });
  return doubt.ok ? ok(answerOf(doubt.value, measure)) : doubt;
}

function spreadOf({ p10, p50, p90 }: Percentiles, unit = '') {
  return { [`p10${unit}`]: p10, [`p50${unit}`]: p50, [`p90${unit}`]: p90 };
}

function answerOf(doubt: DoubtAnswer, measure: Measure) {
  const { asked, chance, checked, together } = doubt;
  const { lineWidth, layers, lengths } = asked.spread;
  return {
    prints: asked.samples,
    seed: asked.seed,
    sets: doubt.replicates,
    reach_wanted: chance.share,
    sampling_error: chance.error,
    by_the_verdict: doubt.chanceOfVerdict,
    break_at_once: doubt.breaksAtOnce,
    life_cycles: spreadOf(doubt.life),
    peak_strain: spreadOf(doubt.strain),
    effort: spreadOf(doubt.effort, `_${EFFORT_UNITS[measure].effort}`),
    printer_keeps: { line_width_share: lineWidth, layers_mm: layers, lengths_mm: lengths },
    causes: doubt.causes.map(({ cause, provenance, life, effort }) => ({
      cause: snake(cause),
      share_of_life: life,
      share_of_effort: effort,
      provenance,
    })),
    together: { share_of_life: together.life, share_of_effort: together.effort },
    ...(checked
      ? {
          carried_over: {
            solved_in_full: checked.prints,
            worst_strain: checked.strain,
            worst_effort: checked.effort,
            chance: checked.chance,
          },
        }
      : {}),
  };
}
