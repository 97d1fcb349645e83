import type { Design, Figures, FindAnswer } from '../../src/core/find/findAnswer.ts';
import { changed, LEAF } from './joints.ts';

/** Figures of a design; all are invented. */
export function figures(given: Partial<Figures> = {}): Figures {
  const { size = 10 } = given;
  return {
    room: { along: size, across: 2, depth: 6 },
    size,
    chance: 0.97,
    median: 20_000,
    pastCount: false,
    strain: 0.02,
    effort: 10,
    set: 0,
    by: 'hand form',
    ...given,
  };
}

/** A leaf that was found, told apart from others by its length. */
export function design(length: number, given: Partial<Figures> = {}, filament = 'petg', isBest = false): Design {
  const joint = changed(LEAF, { sizes: { length }, profile: { filament } });
  return { joint, figures: figures({ size: length, ...given }), isBest };
}

export function answer(given: Partial<FindAnswer> = {}): FindAnswer {
  return {
    tried: 100,
    total: 100,
    share: 1,
    impossible: 10,
    meets: 5,
    designs: [],
    failed: [],
    isDone: true,
    ...given,
  };
}
