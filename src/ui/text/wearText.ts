/** Words of “Who wears it”: each kind of flex with its part of the wear, and how much the strain ratio counts. */
import type { LifeAnswer } from '../../core/life/lifeAnswer.ts';
import { cycles, MINUS, NO_BREAK, percent, share } from './numbers.ts';

export const WHO_WEARS = 'Who wears it';
export const WHO_WEARS_AID = 'each kind of flex, alone and together';
export const WEAR_HEADS = {
  flex: 'flex',
  peak: 'peak strain',
  ratio: 'ratio R',
  mean: 'mean strain',
  alone: 'half break, alone',
  share: 'of the wear',
} as const;

/** Two decimals at most: “0”, “−1”, “−0.5”. */
export function ratioText(ratio: number): string {
  return String(Number(ratio.toFixed(2)) + 0).replace('-', MINUS);
}

/** “24 000”, “first flex”: a life is never told past the data. */
export function lifeFigure(life: number, maxReportableCycles: number): string {
  if (life < 1) return 'first flex';
  return life > maxReportableCycles ? 'beyond the data' : cycles(life);
}

/** “33 %”, “under 1 %”. */
export function shareOf(part: number): string {
  if (part > 0 && part < 0.005) return `under 1${NO_BREAK}%`;
  return share(part);
}

export const strainText = (strain: number) => percent(strain).replace('-', MINUS);

export const WEAR_ADDS_UP =
  'Wear adds up: each kind takes its wanted flexes over the life that it alone would leave (the linear sum after Palmgren and Miner). In what order they come is left out of it.';
export const ALL_THE_WEAR = 'There is one kind of flex, and it does all the wear.';
export const FIRST_FLEX_WEARS = 'The first flex breaks it, so nothing is left to wear.';

/** “How both ways counts”: by which rules the other end of a swing may count. */
export const HOW_BOTH_WAYS = 'How both ways counts';
export const HOW_ANY_SWING = 'How its other end counts';
export const FROM_REST =
  'Every flex begins at rest, where the ratio of its two ends is 0: by whatever rule the other end counts, the life is the same.';

const EXPONENTS: Readonly<Record<number, string>> = {
  0: 'the largest strain alone counts',
  0.5: 'half-way between the two',
  1: 'the range of strain alone counts',
};

export const RULES = {
  exponent: (gamma: number) => EXPONENTS[gamma] ?? `exponent ${Number(gamma.toFixed(2))}, set for this filament`,
  morrow: 'what stays on weakens it (Morrow)',
  smithWatsonTopper: 'largest stress times range (Smith, Watson, Topper)',
} as const;

export const USED_HERE = 'used here';
export const RULE_CAPTION = 'Median life by rule';

export function ruleLife(median: number | undefined, life: LifeAnswer): string {
  return median === undefined ? 'not known' : lifeFigure(median, life.maxReportableCycles);
}

/** “Strain swings 0.74 % to either side of 0.00 %.” */
export function swingsAbout(mean: number, amplitude: number): string {
  return `Strain swings ${percent(amplitude)} to either side of ${strainText(mean)}.`;
}

export const RULES_SAY =
  'Nobody has measured which of them holds for printed plastics; where they differ much, so may the life. The last two take the stress that stays on as springy.';

export const CYCLES = 'cycles';
