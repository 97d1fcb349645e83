import { asRad, degrees } from '../units.ts';
import type { WorkingAsked } from './asked.ts';
import { formula, given, type Given, type Step } from './step.ts';

/**
 * An angle as arc over radius, which has no unit: the symbol `θ`. A travel needs no working: see `travelGiven`.
 *
 *     θ = α·π/180°
 *
 * @param asked - what the working starts from [-]
 * @returns the steps [-]
 *
 * Source: plane-bending.
 */
export function movementSteps({ understood }: WorkingAsked): readonly Step[] {
  const { drive, joint } = understood;
  if (drive.measure !== 'turn') return [];
  return [
    formula({
      id: 'radians',
      symbol: 'θ',
      expression: 'α * pi / (180 deg)',
      given: [given('α', degrees(asRad(joint.movement.amount)), 'deg', 'brief')],
      unit: '',
      figure: joint.movement.amount,
      source: 'plane-bending',
    }),
  ];
}

/**
 * How far a joint is pushed.
 *
 * @param asked - what the working starts from [-]
 * @returns δ [mm]
 */
export function travelGiven({ understood }: Pick<WorkingAsked, 'understood'>): Given {
  return given('δ', understood.joint.movement.amount, 'mm', 'brief');
}
