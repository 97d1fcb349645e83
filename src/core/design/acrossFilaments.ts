import type { LifeAnswer } from '../life/lifeAnswer.ts';
import { softensAt } from '../material/choose.ts';
import type { Filament, WholeFilament } from '../material/types.ts';
import { allowablesOf, limitsOf } from './allowables.ts';
import { asSurrounded } from './asSurrounded.ts';
import type { AllowableName, Assessment, Grade } from './assessment.ts';
import { lifeIn } from './lifeIn.ts';
import { lifeGrade, SEVERITY } from './verdict.ts';

/** How another filament would bear what this joint does to its own. */
export interface Standing {
  readonly life: LifeAnswer;
  readonly grade: Grade;
  /** What the grade is for: its life, or the first of the limits that is passed and is worse. */
  readonly reason: 'life' | AllowableName;
  /** Equivalent over peak strain, for its curve [-]. */
  readonly severity: number;
}

/**
 * How a filament would bear the strains of a joint: life, scatter and doubt together, and the limits on strain, by the
 * same rules as the verdict. How it prints and how hard it pushes back is not asked.
 *
 * Strains stay those of the joint as it is. Another filament shears a little more or less, which changes them by less
 * than anyone can print.
 *
 * @param a - the joint as assessed [-]
 * @param row - any row, for a room [-]
 * @returns life in cycles, neither rounded nor capped, and the grade
 *
 * Source: strain-life.
 */
export function standingOf(a: Assessment, row: Filament): Standing {
  const filament = asSurrounded(row, a.joint);
  const { movement, profile } = a.joint;
  const life = lifeIn(a, filament);
  const ofLife = lifeGrade(life, movement);
  const limits = limitsOf(filament, profile.lying === 'upright');
  const allowables = allowablesOf(a.strain.peak, limits, movement, ofLife);
  const findings = [
    { grade: ofLife, reason: 'life' as const },
    ...allowables.toReversed().map(({ grade, name }) => ({ grade, reason: name })),
  ];
  const worst = findings.reduce((one, other) => (SEVERITY[other.grade] > SEVERITY[one.grade] ? other : one));
  return { life, ...worst, severity: life.equivalentStrain / a.strain.peak };
}

/** By what filaments are put in order. */
export const ORDERS = ['repeated', 'life', 'stiffness', 'breaks', 'softens', 'name'] as const;
export type Order = (typeof ORDERS)[number];

/** As far as anyone has counted: what lies past that puts nothing in order. */
function countedLife({ life }: Standing): number {
  return Math.min(life.median, life.maxReportableCycles);
}

/**
 * Filaments in order, the largest value first, names from A to Z. What is alike keeps its place.
 *
 * @param rows - whole rows [-]
 * @param order - by what [-]
 * @param standing - how each bears the joint that lives are told for; without a joint they keep their order [-]
 * @returns the same rows
 */
export function inOrder(
  rows: readonly WholeFilament[],
  order: Order,
  standing: (row: WholeFilament) => Standing | undefined,
): readonly WholeFilament[] {
  if (order === 'name') return rows.toSorted((one, other) => one.name.localeCompare(other.name, 'en'));
  const value = (row: WholeFilament): number => {
    const { properties: p } = row;
    const stands = order === 'life' ? standing(row) : undefined;
    const values: Readonly<Record<Exclude<Order, 'name'>, number>> = {
      repeated: p.permissibleStrainRepeated.typical,
      life: stands ? countedLife(stands) : 0,
      stiffness: p.youngsModulus.typical,
      breaks: p.strainAtBreak.typical,
      softens: softensAt(row).typical,
    };
    return values[order];
  };
  return rows.toSorted((one, other) => value(other) - value(one));
}
