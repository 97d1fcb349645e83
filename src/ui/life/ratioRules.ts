/** By which rules the other end of a swing may count, and the life that each gives. */
import type { Assessment } from '../../core/design/assessment.ts';
import type { Wear } from '../../core/life/lifeAnswer.ts';
import { meanStrainLives, type MeanStrainLives } from '../../core/life/meanStrain.ts';
import { RULES } from '../text/wearText.ts';

export interface RuleLife {
  readonly name: string;
  /** Median [cycles]; undefined where the rule knows nothing. */
  readonly median: number | undefined;
  /** Whether answers rest on it. */
  readonly used: boolean;
}

export interface RatioRules {
  readonly wear: Wear;
  /** Its place among the movements, the joint's own first. */
  readonly at: number;
  readonly lives: MeanStrainLives;
  readonly rules: readonly RuleLife[];
}

/** A ratio that is told as 0: the flex begins at rest. */
const AT_REST = 0.005;

/** The flex that does most of the wear of those that do not begin at rest; nothing where all do. */
export function ratioRulesOf({ life, filament, effort }: Assessment): RatioRules | undefined {
  const swings = life.wear.map((wear, at) => ({ wear, at })).filter(({ wear }) => Math.abs(wear.ratio) >= AT_REST);
  const most = swings.toSorted((one, other) => other.wear.share - one.wear.share)[0];
  if (!most) return undefined;
  const lives = meanStrainLives(most.wear, filament, effort.modulus);
  const { gamma: own } = filament.life;
  const byExponent = lives.byExponent.map(({ gamma, median }) => ({
    name: RULES.exponent(gamma),
    median: life.breaksOnFirstFlex ? 0 : median,
    used: gamma === own,
  }));
  const isAmong = byExponent.some(({ used }) => used);
  return {
    ...most,
    lives,
    rules: [
      ...byExponent,
      ...(isAmong ? [] : [{ name: RULES.exponent(own), median: most.wear.median, used: true }]),
      { name: RULES.morrow, median: lives.morrow, used: false },
      { name: RULES.smithWatsonTopper, median: lives.smithWatsonTopper, used: false },
    ],
  };
}

/** Decades of cycles that hold every life that is printed, and at least two. */
export function decadesOf(rules: readonly RuleLife[], counted: number): readonly [number, number] {
  const printed = rules.flatMap(({ median }) =>
    median !== undefined && median >= 1 ? [Math.min(median, counted)] : [],
  );
  const from = Math.floor(Math.log10(Math.min(counted / 10, ...printed)));
  const to = Math.ceil(Math.log10(Math.max(10 ** (from + 2), ...printed)) - 1e-9);
  return [from, to];
}
