/** What the terminal says about a part: the assessments as plain data with the unit in every key. Pure. */
import { assess } from '../core/design/assess.ts';
import type { Allowable, Assessment } from '../core/design/assessment.ts';
import type { Joint, Part } from '../core/design/joint.ts';
import { findDrive } from '../core/flexures/drives.ts';
import type { Parameter } from '../core/flexures/family.ts';
import { findFamily } from '../core/flexures/index.ts';
import type { Problem } from '../core/problems.ts';
import { asRad, degrees } from '../core/units.ts';

export const HEADER = {
  format: 'bendbook-assessment',
  version: 2,
  units: {
    length: 'mm',
    angle: 'rad, and deg where the key says so',
    torque: 'N·mm',
    force: 'N',
    stress: 'MPa',
    strain: 'fraction',
    life: 'cycles',
  },
} as const;

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json | undefined };

export interface JointReport {
  readonly id: string;
  readonly name: string;
  readonly [key: string]: Json | readonly Problem[];
}

export interface PartReport {
  readonly name: string;
  readonly invented: boolean;
  readonly joints: readonly JointReport[];
  /** What reading the file had to repair or leave out. */
  readonly notes: readonly Problem[];
}

/** `inRow` → `in_row`. */
function snake(name: string): string {
  return name.replaceAll(/[A-Z]/g, (capital) => `_${capital.toLowerCase()}`);
}

const SIZE_UNITS: Readonly<Record<Parameter['kind'], string>> = { length: '_mm', count: '', angle: '_rad', ratio: '' };

const EFFORT_UNITS = {
  turn: { name: 'torque', effort: 'Nmm', stiffness: 'Nmm_per_rad' },
  travel: { name: 'force', effort: 'N', stiffness: 'N_per_mm' },
} as const;

type Measure = keyof typeof EFFORT_UNITS;

function inputsOf({ family, sizes, movement, profile, measuredThickness }: Joint) {
  const found = findFamily(family);
  // Of a joint that is refused for its drive nothing but the figure is known; it was an angle in most files.
  const measure = (found && findDrive(found, movement.drive)?.measure) ?? 'turn';
  const { effortAtMost, stays } = movement;
  const named = Object.entries(found?.parameters ?? {}).map(([name, { kind }]) => {
    return [`${snake(name)}${SIZE_UNITS[kind]}`, sizes[name]] as const;
  });
  return {
    sizes: Object.fromEntries(named),
    movement: {
      drive: movement.drive,
      ...amounts('amount', movement.amount, measure),
      ways: movement.ways,
      cycles: movement.cycles,
      held: movement.held,
      chance: movement.chance,
      ...(effortAtMost === undefined ? {} : { [`effort_at_most_${EFFORT_UNITS[measure].effort}`]: effortAtMost }),
      ...(stays === undefined ? {} : { stays }),
    },
    profile: {
      nozzle_mm: profile.nozzle,
      line_width_mm: profile.lineWidth,
      layer_height_mm: profile.layerHeight,
      first_layer_height_mm: profile.firstLayerHeight,
      lying: profile.lying,
      fit_rule: profile.fitRule,
      filament: profile.filament,
    },
    ...(measuredThickness === undefined ? {} : { measured_thickness_mm: measuredThickness }),
  };
}

/** A travel, or an angle in both units; degrees to twelve figures, so that 35 reads as 35. */
function amounts(name: string, amount: number, measure: Measure) {
  if (measure === 'travel') return { [`${name}_mm`]: amount };
  return { [`${name}_rad`]: amount, [`${name}_deg`]: Number(degrees(asRad(amount)).toPrecision(12)) };
}

function effortOf({ effort }: Assessment) {
  const unit = EFFORT_UNITS[effort.measure];
  return {
    [`${unit.name}_${unit.effort}`]: effort.effort,
    [`low_${unit.effort}`]: effort.low,
    [`high_${unit.effort}`]: effort.high,
    [`stiffness_${unit.stiffness}`]: effort.stiffness,
    modulus_MPa: effort.modulus,
    modulus_provenance: { ...effort.provenance },
  };
}

function lifeOf({ life }: Assessment) {
  return {
    ...life.total,
    scatter_only: { ...life.scatter },
    equivalent_strain: life.equivalentStrain,
    breaks_on_first_flex: life.breaksOnFirstFlex,
    beyond: life.beyond,
    counted_up_to: life.maxReportableCycles,
  };
}

function sectionOf({ section, fit, length, inRow, sideBySide }: Assessment) {
  return {
    thickness_mm: section.thickness,
    length_mm: length,
    in_row: inRow,
    side_by_side: sideBySide,
    [fit.countOf]: { count: section.count, exact: fit.exact, nearest: fit.nearest, prints_as: fit.outcome },
  };
}

function overBendOf({ overBend, drive: { measure } }: Assessment) {
  return {
    ...amounts('at_set', overBend.atSet, measure),
    ...amounts('at_single', overBend.atSingle, measure),
    ...amounts('at_yield', overBend.atYield, measure),
    ...amounts('at_break', overBend.atBreak, measure),
    ...amounts('hard_stop', overBend.hardStop, measure),
  };
}

function allowableOf({ name, limit, strain, margin, applies, grade, provenance }: Allowable) {
  return { name, limit, strain, margin, applies, grade, provenance: { ...provenance } };
}

function answersOf(assessment: Assessment) {
  const { strain, set, life, joint, verdict, drive } = assessment;
  return {
    estimate: assessment.estimate,
    ...sectionOf(assessment),
    peak_strain: { value: strain.peak, where: strain.where, nominal: strain.nominal, root_factor: strain.rootFactor },
    effort: effortOf(assessment),
    set: { ...amounts('amount', set.amount, drive.measure), fraction: set.fraction },
    over_bend: overBendOf(assessment),
    life_cycles: lifeOf(assessment),
    chance: { reach_wanted: life.chance, scatter_only: life.chanceScatterOnly, wanted: joint.movement.chance },
    allowables: assessment.allowables.map(allowableOf),
    verdict: { grade: verdict.grade, reason: verdict.reason, margin: verdict.margin },
    weakest_provenance: { ...assessment.provenance },
  };
}

/** Percentiles past anything counted are a guess with a number's face; the terminal says null, as the screen says “beyond”. */
function withheld(value: number, path: string, countedUpTo: number): Problem | undefined {
  if (!/^life_cycles\.(scatter_only\.)?p\d0$/.test(path) || !(value > countedUpTo)) return undefined;
  const message = `${path} lies past the ${countedUpTo} cycles that anyone has counted and is not given`;
  return { code: 'beyond-data', message, field: path, limit: countedUpTo };
}

function notFinite(value: number, path: string): Problem | undefined {
  if (Number.isFinite(value)) return undefined;
  return { code: 'no-answer', message: `${path} has no finite value and is not given`, field: path };
}

/** The same data with null for what JSON cannot hold or nobody can know; each such figure leaves a note. */
function sayable(data: Json | undefined, path: string, countedUpTo: number, notes: Problem[]): Json | undefined {
  if (typeof data === 'number') {
    const note = notFinite(data, path) ?? withheld(data, path, countedUpTo);
    if (!note) return data;
    notes.push(note);
    return null;
  }
  if (typeof data !== 'object' || data === null) return data;
  if (Array.isArray(data)) {
    return data.map((item: Json, index) => sayable(item, `${path}[${index}]`, countedUpTo, notes) ?? null);
  }
  const entries = Object.entries(data as Readonly<Record<string, Json | undefined>>);
  return Object.fromEntries(
    entries.map(([key, value]) => [key, sayable(value, path === '' ? key : `${path}.${key}`, countedUpTo, notes)]),
  );
}

/** One assessed joint as the terminal says it. */
export function reportAssessment(assessment: Assessment): JointReport {
  const { joint, life } = assessment;
  const notes: Problem[] = [...assessment.notes];
  const answers = sayable(answersOf(assessment), '', life.maxReportableCycles, notes) as Readonly<Record<string, Json>>;
  return { id: joint.id, name: joint.name, family: joint.family, inputs: inputsOf(joint), ...answers, notes };
}

/**
 * A part with everything the tool says about its joints; a joint that cannot be assessed carries `problems` instead.
 *
 * @param part - a part whose shape has been checked
 * @param notes - what reading it said; cautions that the joints repeat are left to the joints
 */
export function reportPart(part: Part, notes: readonly Problem[]): PartReport {
  const said = new Set<string>();
  const joints = part.joints.map((joint, index): JointReport => {
    const assessed = assess(joint);
    if (!assessed.ok) {
      const { id, name, family } = joint;
      return { id, name, family, inputs: inputsOf(joint), problems: assessed.problems };
    }
    for (const note of assessed.value.notes) said.add(`joints[${index}].${note.field} ${note.message}`);
    return reportAssessment(assessed.value);
  });
  const unsaid = notes.filter((note) => !said.has(`${note.field} ${note.message}`));
  return { name: part.name, invented: part.invented, joints, notes: unsaid };
}
