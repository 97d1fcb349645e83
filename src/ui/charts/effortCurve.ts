/** Effort against movement of one joint as plain figures: amounts [rad] or [mm] and efforts [N·mm] or [N], nothing of the screen. */
import type { Assessment } from '../../core/design/assessment.ts';
import { effortAt } from '../../core/design/curves.ts';
import { asRad, degrees, radians } from '../../core/units.ts';
import { angleTopDeg, travelTop } from './domains.ts';
import { levelsOver, type Level } from './levels.ts';

export interface EffortPoint {
  readonly amount: number;
  readonly typical: number;
  readonly low: number;
  readonly high: number;
}

export interface EffortDomain {
  readonly amount: number;
  readonly effort: Level;
}

export interface EffortCurve {
  /** From rest to the wanted amount. */
  readonly wanted: readonly EffortPoint[];
  /** On to the onset of set, where the joint would still spring back; empty when it is wanted further than that. */
  readonly beyond: readonly EffortPoint[];
  /** From there to the end of the paper: an instant estimate, the joint does not come back. */
  readonly past: readonly EffortPoint[];
}

const SAMPLES = 32;

export function effortDomainOf(a: Assessment): EffortDomain {
  const { measure } = a.drive;
  const wanted = a.joint.movement.amount;
  const amount = measure === 'turn' ? radians(angleTopDeg(degrees(asRad(wanted)))) : travelTop(wanted);
  const furthest = Math.min(amount, Math.max(a.overBend.atYield, wanted));
  const most = Math.max(effortAt(a, furthest).typical, effortAt(a, wanted).high) * 1.1;
  return { amount, effort: levelsOver(0, most) };
}

export function effortPoint(a: Assessment, amount: number): EffortPoint {
  return { amount, ...effortAt(a, amount) };
}

function between(a: Assessment, from: number, to: number): readonly EffortPoint[] {
  if (!(to > from)) return [];
  return Array.from({ length: SAMPLES + 1 }, (_, i) => effortPoint(a, from + ((to - from) * i) / SAMPLES));
}

export function effortCurve(a: Assessment, domain: EffortDomain): EffortCurve {
  const wanted = a.joint.movement.amount;
  const springsBack = Math.min(domain.amount, Math.max(a.overBend.atYield, wanted));
  return {
    wanted: between(a, 0, wanted),
    beyond: between(a, wanted, springsBack),
    past: between(a, springsBack, domain.amount),
  };
}
