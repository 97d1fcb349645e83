import type { FlexureFamily, HandForm, Sizes } from '../flexures/family.ts';
import { ok, type Result } from '../result.ts';
import type { Mm } from '../units.ts';
import type { Solved } from './solved.ts';
import type { Understood } from './understand.ts';

/** What the mechanics of a joint answer before any filament is chosen: by the solver, or by hand forms. */
export interface Response {
  /** Largest strain of the skin anywhere on the way to the full amount, without root factors, as a fraction. */
  readonly nominalStrain: number;
  /** The same between the roots only, and at the roots only. */
  readonly strainWithin: number;
  readonly strainAtRoots: number;
  /** Largest effort of the whole joint on the way, per MPa of modulus: [mm³] for a moment, [mm²] for a force. */
  readonly effort: number;
  /** Effort by amount at the start, per MPa; a secant where a form knows no better. */
  readonly stiffness: number;
  /** Factor on the bending stiffness that the effort already has; absent where it is that of a narrow strip. */
  readonly widthRatio?: number;
  /** False where the figures are those of a form that only estimates them. */
  readonly exact: boolean;
  /** True where a hand form that is exact tells the strain, in proportion to the amount, and not the way of the solver. */
  readonly strainByHand?: boolean;
  /**
   * What stays after one movement [rad] or [mm], summed up along the joint, by the strain at which its skin begins to flow;
   * absent where that is not known place by place.
   */
  readonly setLeft?: (onset: number) => number;
  /** The whole way, where the solver was asked. */
  readonly solved?: Solved;
}

/** How a checked joint is answered: by hand forms at once, or by the solver. */
export type Respond = (understood: Understood) => Result<Response>;

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

/** What of a checked joint says how it is moved, and what hand forms ask of it. */
interface Moved extends Pick<Understood, 'family' | 'sizes'> {
  readonly joint: { readonly movement: Understood['joint']['movement'] };
  readonly section: Pick<Understood['section'], 'thickness'>;
}

/** A form that differs from the solver by no more than this is as good as it. */
export const ROUND_OFF = 1e-6;

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
  const byStrain = formFor(asked, 'peakStrain');
  const strain = byStrain?.peakStrain?.(sizes, thickness, amount);
  const effort = formFor(asked, 'effort')?.effort?.(sizes, thickness, amount);
  if (strain === undefined || effort === undefined) throw new RangeError(`${family.id} has no hand form for ${drive}`);
  return {
    nominalStrain: strain,
    strainWithin: strain,
    strainAtRoots: strain,
    effort,
    stiffness: effort / amount,
    // Strips that twist out of the network's sight do not know how wide one is that bends.
    ...(byStrain?.isStrainOutside === true ? { widthRatio: 1 } : {}),
    exact: isExactByHand(asked),
  };
}

/**
 * What a checked joint is asked of hand forms and networks.
 *
 * @param understood - a checked joint [-]
 * @returns kind, drive, sizes as they act [mm], amount [rad] or [mm]
 */
export function askedOf({ joint, family, section, sizes }: Moved): Asked {
  const { drive, amount } = joint.movement;
  return { family, drive, sizes, thickness: section.thickness, amount };
}

/**
 * The answer of the hand forms to a checked joint.
 *
 * @param understood - a checked joint [-]
 * @returns always an answer; strains as fractions, effort per MPa
 */
export const byHand: Respond = (understood) => ok(handResponse(askedOf(understood)));
