import { widthRatio } from '../closedForms/leafTorque.ts';
import { bendingModulus } from '../material/choose.ts';
import { plasticMoment } from '../strength/permanentSet.ts';
import { asRad } from '../units.ts';
import type { Assessment, EffortAnswer } from './assessment.ts';
import type { Response } from './response.ts';
import { effortUpTo } from './solvedPath.ts';
import type { Understood } from './understand.ts';

/**
 * Effort that holds a movement, elastic to the onset of set and flattening beyond it.
 *
 *     T = T_elastic for k ≤ 1,   T = T_elastic·(M/My)/k beyond,   k = ε·E/σy
 *
 * An instant estimate: plastics also relax, which this does not know. Where the moment differs along the flexure all
 * of it is taken to flow like its most strained section, which errs on the soft side.
 *
 * @param elastic - effort without flow [N·mm] or [N], ≥ 0
 * @param kappaRatio - k, curvature over curvature at yield [-], ≥ 0
 * @returns effort [N·mm] or [N]
 *
 * Source: elastic-plastic.
 * @example effortBeyondYield(50 * radians(90), 2) // → 53.99612
 */
export function effortBeyondYield(elastic: number, kappaRatio: number): number {
  return kappaRatio <= 1 ? elastic : (elastic * plasticMoment(kappaRatio)) / kappaRatio;
}

/**
 * What is felt of an effort with each modulus that the filament may have.
 *
 * @param a - modulus and yield stress of a joint [MPa]
 * @param perModulus - effort without flow per MPa [mm³] or [mm²], either way
 * @param strain - largest strain of the skin on the way there, as a fraction [-], ≥ 0
 * @returns effort [N·mm] or [N] for the typical, low and high modulus
 *
 * Source: elastic-plastic.
 */
export function effortByModulus(
  { effort, filament }: Pick<Assessment, 'effort' | 'filament'>,
  perModulus: number,
  strain: number,
): { readonly typical: number; readonly low: number; readonly high: number } {
  const yieldStress = filament.properties.yieldStress.typical;
  const felt = (modulus: number) => effortBeyondYield(modulus * perModulus, (strain * modulus) / yieldStress);
  return { typical: felt(effort.modulus), low: felt(effort.modulusLow), high: felt(effort.modulusHigh) };
}

/**
 * Effort and stiffness of the whole joint.
 *
 * The width ratio is that of the arc that strains the skin as much.
 *
 * @param understood - a checked joint [-]
 * @param response - what its mechanics answer: effort per MPa [mm³] or [mm²], strain as a fraction [-]
 * @returns effort [N·mm] or [N] for the typical, low and high modulus, stiffness [N·mm/rad] or [N/mm]
 *
 * Source: plane-bending, wide-strip.
 */
export function effortAnswer(understood: Understood, response: Response): EffortAnswer {
  const { joint, drive, filament, section, length, acrossLayers } = understood;
  const { amount } = joint.movement;
  const { nominalStrain } = response;
  const quantity = bendingModulus(filament, acrossLayers);
  const poisson = filament.properties.poissonsRatio.typical;
  const arc = asRad((2 * nominalStrain * length) / section.thickness);
  const ratio = response.widthRatio ?? widthRatio(section.width, length, section.thickness, arc, poisson);
  const yieldStress = filament.properties.yieldStress.typical;
  const modulusLow = quantity.low ?? quantity.typical;
  const modulusHigh = quantity.high ?? quantity.typical;
  const narrow = response.widthRatio === undefined ? ratio : 1;
  const elastic = (modulus: number) => narrow * modulus * response.effort;
  const flows = (modulus: number, effort: number, strain: number) =>
    effortBeyondYield(effort, (strain * modulus) / yieldStress);
  // What snaps pushes back hardest before it strains most, so each state of a solved way flows by its own strain.
  const effortFor = (modulus: number) =>
    response.solved && response.strainByHand !== true
      ? effortUpTo(response.solved, amount, (effort, strain) => flows(modulus, modulus * effort, strain))
      : flows(modulus, elastic(modulus), nominalStrain);
  return {
    measure: drive.measure,
    effort: effortFor(quantity.typical),
    low: effortFor(modulusLow),
    high: effortFor(modulusHigh),
    stiffness: narrow * quantity.typical * response.stiffness,
    modulus: quantity.typical,
    modulusLow,
    modulusHigh,
    provenance: quantity.provenance,
    widthRatio: ratio,
  };
}
