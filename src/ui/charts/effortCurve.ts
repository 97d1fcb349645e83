/** Effort against movement of one joint as plain figures: angles [rad] and torques [N·mm], nothing of the screen. */
import type { Assessment } from '../../core/design/assessment.ts';
import { torqueAt } from '../../core/design/curves.ts';
import { asRad, degrees, radians, type NMm, type Rad } from '../../core/units.ts';
import { angleTopDeg, niceSteps } from './domains.ts';

export interface EffortPoint {
  readonly angle: Rad;
  readonly typical: NMm;
  readonly low: NMm;
  readonly high: NMm;
}

export interface EffortDomain {
  readonly angle: Rad;
  readonly step: NMm;
  readonly torque: NMm;
}

export interface EffortCurve {
  /** From rest to the wanted angle. */
  readonly wanted: readonly EffortPoint[];
  /** On to the onset of set, where the joint would still spring back; empty when it is wanted further than that. */
  readonly beyond: readonly EffortPoint[];
  /** From there to the end of the paper: an instant estimate, the joint does not come back. */
  readonly past: readonly EffortPoint[];
}

const SAMPLES = 32;

export function effortDomainOf(a: Assessment): EffortDomain {
  const angle = radians(angleTopDeg(degrees(a.joint.movement.angle)));
  const furthest = asRad(Math.min(angle, Math.max(a.overBend.atYield, a.joint.movement.angle)));
  const most = Math.max(torqueAt(a, furthest).typical, torqueAt(a, a.joint.movement.angle).high) * 1.1;
  const { step, top } = niceSteps(most);
  return { angle, step, torque: top };
}

export function effortPoint(a: Assessment, angle: Rad): EffortPoint {
  return { angle, ...torqueAt(a, angle) };
}

function between(a: Assessment, from: number, to: number): readonly EffortPoint[] {
  if (!(to > from)) return [];
  return Array.from({ length: SAMPLES + 1 }, (_, i) => effortPoint(a, asRad(from + ((to - from) * i) / SAMPLES)));
}

export function effortCurve(a: Assessment, domain: EffortDomain): EffortCurve {
  const wanted = a.joint.movement.angle;
  const springsBack = Math.min(domain.angle, Math.max(a.overBend.atYield, wanted));
  return {
    wanted: between(a, 0, wanted),
    beyond: between(a, wanted, springsBack),
    past: between(a, springsBack, domain.angle),
  };
}
