/** Leaves as demonstrations set them side by side: usual in all but what each is about. */
import type { Joint } from '../../design/joint.ts';
import type { PrintProfile } from '../../print/profile.ts';

/** A common nozzle with its usual settings. */
export const LESSON_PROFILE: PrintProfile = {
  nozzle: 0.4,
  lineWidth: 0.42,
  layerHeight: 0.2,
  firstLayerHeight: 0.2,
  lying: 'flat',
  fitRule: 'nominal',
  filament: 'petg',
};

/** One way and back, let go each time. */
export const LESSON_MOVEMENT = { ways: 'one way', cycles: 1000, held: false, chance: 0.95 } as const;

const SIZES = { lines: 2, length: 12, depth: 6, fillet: 0.8, pad: 4, inRow: 1, sideBySide: 1, taper: 1, centre: 0.5 };

/** What a demonstration changes of its leaf. */
export interface LeafChange {
  readonly sizes?: Joint['sizes'];
  readonly held?: { readonly hours: number };
  readonly filament?: string;
  readonly measuredThickness?: number;
}

/**
 * A leaf that is bent by a pure moment.
 *
 * @param amount - angle of the whole joint [rad]
 * @param change - what is not usual about it; sizes [mm] and counts [-], times [h]
 * @returns a joint without a name
 */
export function leaf(amount: number, { sizes, held, filament, measuredThickness }: LeafChange = {}): Joint {
  return {
    id: 'lesson',
    name: '',
    family: 'straightLeaf',
    sizes: { ...SIZES, ...sizes },
    movement: {
      ...LESSON_MOVEMENT,
      drive: 'turned',
      amount,
      ...(held ? { held: true, heldHours: held.hours } : {}),
    },
    profile: filament === undefined ? LESSON_PROFILE : { ...LESSON_PROFILE, filament },
    ...(measuredThickness === undefined ? {} : { measuredThickness }),
  };
}
