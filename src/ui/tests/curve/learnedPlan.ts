/** The curve of a filament before and after its tests, and the strips that moved it, in the peak strain of one joint. */
import type { Assessment } from '../../../core/design/assessment.ts';
import { drawnCurve, peakSpreadAt, type DrawnCurve } from '../../../core/life/curveOf.ts';
import type { Filament } from '../../../core/material/types.ts';
import type { CountedStrip } from '../../../core/tallies/learned.ts';
import { lifeDomain, type LifeDomain } from '../../charts/domains.ts';
import { learned } from '../spools.ts';
import type { Trial } from '../trial.ts';
import type { BeforeAfter } from '../useAnswer.ts';

/** A strip as it stands on the paper. */
export interface StripPoint {
  readonly id: string;
  readonly cycles: number;
  /** As a strip of the joint would strain to wear as hard, as a fraction. */
  readonly strain: number;
  readonly ended: 'broke' | 'whole';
  readonly isOdd: boolean;
}

export interface LearnedPlan {
  readonly prior: Filament;
  readonly row: Filament;
  /** Equivalent strain over the peak strain of the joint. */
  readonly severity: number;
  readonly before: DrawnCurve;
  readonly after: DrawnCurve | undefined;
  readonly strips: readonly StripPoint[];
  readonly wanted: number | undefined;
  readonly joint: Assessment | undefined;
  readonly domain: LifeDomain;
}

function pointOf({ tally, equivalent, isOdd }: CountedStrip, severity: number): StripPoint {
  return { id: tally.id, cycles: tally.cycles, strain: equivalent / severity, ended: tally.ended, isOdd };
}

export function learnedPlan({ prior, row, spool, strain }: Trial, { before, after }: BeforeAfter): LearnedPlan {
  const joint = after ?? before;
  const severity = joint && joint.strain.peak > 0 ? joint.life.wear[0].equivalentStrain / joint.strain.peak : 1;
  const life = spool && learned(spool).life;
  const strips = life ? life.strips.map((strip) => pointOf(strip, severity)) : [];
  const wanted = joint?.joint.movement.cycles;
  return {
    prior,
    row,
    severity,
    before: drawnCurve(prior.life, severity),
    after: life ? drawnCurve(row.life, severity) : undefined,
    strips,
    wanted,
    joint,
    domain: lifeDomain({
      cycles: [...strips.map(({ cycles }) => cycles), ...(wanted === undefined ? [] : [wanted])],
      strains: [...strips.map((one) => one.strain), strain, ...(joint ? [joint.strain.peak] : [])],
    }),
  };
}

/** Strains at which 10, 50 and 90 in 100 have broken by so many cycles, before and after; nothing where nobody has counted. */
export function spreadsAt({ prior, row, after, severity }: LearnedPlan, cycles: number) {
  const at = ({ life }: Filament) =>
    cycles <= life.maxReportableCycles ? peakSpreadAt(cycles, life, severity) : undefined;
  return { before: at(prior), after: after && at(row) };
}
