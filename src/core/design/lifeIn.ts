import { assessLife } from '../life/assessLife.ts';
import type { LifeAnswer } from '../life/lifeAnswer.ts';
import type { Filament } from '../material/types.ts';
import type { Assessment } from './assessment.ts';

/**
 * The life of a joint in another filament, its strains as they are.
 *
 * @param a - the joint as assessed [-]
 * @param filament - any row [-]
 * @returns life in cycles, neither rounded nor capped
 *
 * Source: strain-life.
 */
export function lifeIn({ life, joint, section }: Assessment, filament: Filament): LifeAnswer {
  const acrossLayers = joint.profile.lying === 'upright';
  return assessLife({ flexes: life.wear, acrossLayers, thickness: section.thickness, filament });
}
