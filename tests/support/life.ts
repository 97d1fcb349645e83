import { assessLife, type Flexing } from '../../src/core/life/assessLife.ts';
import type { LifeAnswer } from '../../src/core/life/lifeAnswer.ts';

/** A joint that is flexed in one way alone. */
export interface OneFlex extends Flexing {
  readonly peakStrain: number;
  readonly cycles: number;
}

/** The life of what is flexed in one way alone; how far it moves does not matter to it. */
export function lifeOf({ peakStrain, ratio, cycles, ...how }: OneFlex): LifeAnswer {
  return assessLife({ ...how, flexes: [{ amount: 1, peakStrain, ratio, cycles }] });
}
