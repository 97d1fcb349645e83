import { normalQuantile } from '../numeric/normal.ts';
import { totalSigma } from '../life/scatter.ts';
import type { Assessment } from './assessment.ts';

/**
 * Cycles that the wanted share of prints reaches, scatter and doubt together.
 *
 *     N = N50·10^(−z·σ),   z the normal quantile of the wanted share
 *
 * @param a - the joint as assessed [-]
 * @returns cycles, not capped
 *
 * Source: strain-life.
 */
export function lifeAtChance(a: Assessment): number {
  return a.life.median * 10 ** (-normalQuantile(a.joint.movement.chance) * totalSigma(a.filament.life, a.life.median));
}
