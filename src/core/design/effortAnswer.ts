import { leafStiffness, widthRatio } from '../closedForms/leafTorque.ts';
import { bendingModulus } from '../material/choose.ts';
import { plasticMoment } from '../strength/permanentSet.ts';
import type { NMm, Rad } from '../units.ts';
import type { EffortAnswer } from './assessment.ts';
import type { Understood } from './understand.ts';

/**
 * Torque that holds an angle, elastic to the onset of set and flattening beyond it.
 *
 *     T = K·θ for k ≤ 1,   T = K·θ·(M/My)/k beyond,   k = ε·E/σy
 *
 * An instant estimate: plastics also relax, which this does not know.
 *
 * @param stiffness - K of the whole joint [N·mm/rad], > 0
 * @param angle - θ of the whole joint [rad], ≥ 0
 * @param kappaRatio - k, curvature over curvature at yield [-], ≥ 0
 * @returns torque [N·mm]
 *
 * Source: elastic-plastic.
 * @example torqueBeyondYield(50, radians(90), 2) // → 53.99612
 */
export function torqueBeyondYield(stiffness: number, angle: Rad, kappaRatio: number): NMm {
  const elastic = stiffness * angle;
  return kappaRatio <= 1 ? elastic : (elastic * plasticMoment(kappaRatio)) / kappaRatio;
}

/**
 * Torque and stiffness of the whole joint; flexures in a row are springs in series.
 *
 * @param understood - a checked joint [-]
 * @param nominalStrain - skin strain along the leaf at the wanted angle, as a fraction [-]
 * @returns torque [N·mm] for the typical, low and high modulus, stiffness [N·mm/rad]
 *
 * Source: plane-bending, wide-strip.
 */
export function effortAnswer(understood: Understood, nominalStrain: number): EffortAnswer {
  const { joint, filament, section, length, inRow, angleEach, acrossLayers } = understood;
  const quantity = bendingModulus(filament, acrossLayers);
  const poisson = filament.properties.poissonsRatio.typical;
  const ratio = widthRatio(section.width, length, section.thickness, angleEach, poisson);
  const yieldStress = filament.properties.yieldStress.typical;
  const modulusLow = quantity.low ?? quantity.typical;
  const modulusHigh = quantity.high ?? quantity.typical;
  const stiffnessFor = (modulus: number) =>
    leafStiffness(modulus, section.width, section.thickness, length, ratio) / inRow;
  const torqueFor = (modulus: number) =>
    torqueBeyondYield(stiffnessFor(modulus), joint.movement.angle, (nominalStrain * modulus) / yieldStress);
  return {
    torque: torqueFor(quantity.typical),
    torqueLow: torqueFor(modulusLow),
    torqueHigh: torqueFor(modulusHigh),
    stiffness: stiffnessFor(quantity.typical),
    modulus: quantity.typical,
    modulusLow,
    modulusHigh,
    provenance: quantity.provenance,
    widthRatio: ratio,
  };
}
