import type { FlexureFamily, HandForm, Sizes } from '../flexures/family.ts';
import type { Mm } from '../units.ts';

/** What the mechanics of a joint answer before any filament is chosen: by the solver, or by hand forms. */
export interface Response {
  /** Largest strain of the skin at the full amount, without root factors, as a fraction. */
  readonly nominalStrain: number;
  /** Effort of the whole joint at the full amount per MPa of modulus, narrow: [mm³] for a moment, [mm²] for a force. */
  readonly effort: number;
  /** False where the figures are those of a form that only estimates them. */
  readonly exact: boolean;
}

/** What hand forms are asked: a kind as it is sized and moved. */
export interface Asked {
  readonly family: Pick<FlexureFamily, 'id' | 'handForms'>;
  /** Id of the drive. */
  readonly drive: string;
  /** As they act. */
  readonly sizes: Sizes;
  readonly thickness: Mm;
  /** [rad] or [mm], whole joint. */
  readonly amount: number;
}

/** A form that differs from the solver by no more than this is as good as it. */
const ROUND_OFF = 1e-6;

/** The first form of the drive that gives a figure. */
function formFor({ family, drive }: Asked, figure: 'peakStrain' | 'effort'): HandForm<Sizes> | undefined {
  return family.handForms.find((form) => form.drive === drive && form[figure] !== undefined);
}

/**
 * Whether hand forms say all there is to say: no solver would say it better.
 *
 * @param asked - kind, drive and sizes in force [mm], thickness of the thin section [mm], amount [rad] or [mm]
 * @returns true where strain and effort are both exact [-]
 */
export function isExactByHand(asked: Asked): boolean {
  const { sizes, thickness, amount } = asked;
  return (['peakStrain', 'effort'] as const).every((figure) => {
    const form = formFor(asked, figure);
    return form !== undefined && form.rel <= ROUND_OFF && form.appliesTo(sizes, thickness, amount);
  });
}

/**
 * What the hand forms of a family answer: of each figure, the first form of the drive that gives it.
 *
 * A drive without such forms needs the solver's answer; asking for it here is a mistake of the caller.
 *
 * @param asked - kind, drive and sizes in force [mm], thickness of the thin section [mm], amount [rad] or [mm]
 * @returns strain as a fraction, effort per MPa [mm³] or [mm²], and whether both are exact
 */
export function handResponse(asked: Asked): Response {
  const { family, drive, sizes, thickness, amount } = asked;
  const strain = formFor(asked, 'peakStrain')?.peakStrain?.(sizes, thickness, amount);
  const effort = formFor(asked, 'effort')?.effort?.(sizes, thickness, amount);
  if (strain === undefined || effort === undefined) throw new RangeError(`${family.id} has no hand form for ${drive}`);
  return { nominalStrain: strain, effort, exact: isExactByHand(asked) };
}
