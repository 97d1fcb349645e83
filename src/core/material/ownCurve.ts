/** A strain–life curve as a person knows it: how far it may be flexed a few times, and how far very many times. */
import type { Problem } from '../problems.ts';
import { fail, ok, type Result } from '../result.ts';
import { said } from './ownCheck.ts';
import { CURVE_LIMITS } from './ownLimits.ts';
import type { StrainLifeCurve } from './types.ts';

/** Half of the specimens break by so many cycles at this equivalent strain. */
export interface Anchor {
  readonly cycles: number;
  readonly strain: number;
}

export type Anchors = readonly [few: Anchor, many: Anchor];

type Field = 'few.cycles' | 'few.strain' | 'many.cycles' | 'many.strain';

const percent = (strain: number) => said(strain, CURVE_LIMITS.firstFlexBreakStrain);

function notPositive(field: Field, value: number): Problem {
  const what = field.endsWith('cycles') ? 'number of flexes' : 'strain';
  return {
    code: 'below-minimum',
    message: `${what} ${value} of the curve is not above 0; raise it`,
    field: `life.${field}`,
    value,
    limit: 0,
  };
}

function unusable([few, many]: Anchors): Problem | undefined {
  const values: readonly (readonly [Field, number])[] = [
    ['few.cycles', few.cycles],
    ['few.strain', few.strain],
    ['many.cycles', many.cycles],
    ['many.strain', many.strain],
  ];
  const wrong = values.find(([, value]) => !(value > 0 && Number.isFinite(value)));
  if (wrong) return notPositive(...wrong);
  if (many.cycles > few.cycles) return undefined;
  const message = `the second number of flexes ${many.cycles} is not above the first ${few.cycles}; raise it or lower the first`;
  return { code: 'below-minimum', message, field: 'life.many.cycles', value: many.cycles, limit: few.cycles };
}

function tooFlat([few, many]: Anchors, most: number): Problem {
  const message = `no falling curve goes through ${percent(few.strain)} at ${few.cycles} flexes and ${percent(many.strain)} at ${many.cycles}: with these exponents the second is below ${percent(most)}; lower it or raise the first`;
  return { code: 'above-maximum', message, field: 'life.many.strain', value: many.strain, limit: most };
}

function tooSteep([few, many]: Anchors, least: number): Problem {
  const message = `no curve falls from ${percent(few.strain)} at ${few.cycles} flexes to ${percent(many.strain)} at ${many.cycles}: with these exponents the second is above ${percent(least)}; raise it or lower the first`;
  return { code: 'below-minimum', message, field: 'life.many.strain', value: many.strain, limit: least };
}

/**
 * The coefficients of the curve with these exponents that goes through two anchors.
 *
 *     ε₁ = A·(2N₁)^b + B·(2N₁)^c,   ε₂ = A·(2N₂)^b + B·(2N₂)^c
 *
 * Both coefficients are above 0 only where the strain falls by more than the flat part alone and by less than the steep
 * part alone: (N₂/N₁)^c < ε₂/ε₁ < (N₂/N₁)^b.
 *
 * @param anchors - few flexes and many, each a number of cycles [-] and an equivalent strain as a fraction [-]
 * @param exponents - b and c [-], both below 0, b above c
 * @returns coefficients A and B [-], both above 0
 *
 * Problems: `below-minimum`, `above-maximum`, with fields `life.few.…` and `life.many.…`.
 *
 * Source: strain-life.
 */
export function curveThrough(
  anchors: Anchors,
  { b, c }: Pick<StrainLifeCurve, 'b' | 'c'>,
): Result<Pick<StrainLifeCurve, 'A' | 'B'>> {
  const wrong = unusable(anchors);
  if (wrong) return fail(wrong);
  const [few, many] = anchors;
  const times = many.cycles / few.cycles;
  const [flat, steep, falls] = [times ** b, times ** c, many.strain / few.strain];
  if (!(falls < flat)) return fail(tooFlat(anchors, few.strain * flat));
  if (!(falls > steep)) return fail(tooSteep(anchors, few.strain * steep));
  const ofFlat = (few.strain * (falls - steep)) / (flat - steep);
  const ofSteep = (few.strain * (flat - falls)) / (flat - steep);
  return ok({ A: ofFlat * (2 * few.cycles) ** -b, B: ofSteep * (2 * few.cycles) ** -c });
}
