/** What the terminal says about a part: the assessments as plain data with the unit in every key. Pure. */
import { assess } from '../core/design/assess.ts';
import type { Allowable, Assessment } from '../core/design/assessment.ts';
import type { Joint, Part } from '../core/design/joint.ts';
import { findFamily } from '../core/flexures/index.ts';
import type { Problem } from '../core/problems.ts';
import { degrees, type Rad } from '../core/units.ts';

export const HEADER = {
  format: 'bendbook-assessment',
  version: 1,
  units: {
    length: 'mm',
    angle: 'rad, and deg where the key says so',
    torque: 'N·mm',
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

function inputsOf({ family, sizes, movement, profile, measuredThickness }: Joint) {
  const named = Object.entries(findFamily(family)?.parameters ?? {}).map(([name, { kind }]) => {
    return [kind === 'length' ? `${snake(name)}_mm` : snake(name), sizes[name]] as const;
  });
  return {
    sizes: Object.fromEntries(named),
    movement: {
      ...angles('angle', movement.angle),
      ways: movement.ways,
      cycles: movement.cycles,
      held: movement.held,
      chance: movement.chance,
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

/** One angle in both units; degrees to twelve figures, so that 35 reads as 35. */
function angles(name: string, angle: Rad) {
  return { [`${name}_rad`]: angle, [`${name}_deg`]: Number(degrees(angle).toPrecision(12)) };
}

function effortOf({ effort }: Assessment) {
  return {
    torque_Nmm: effort.torque,
    low_Nmm: effort.torqueLow,
    high_Nmm: effort.torqueHigh,
    stiffness_Nmm_per_rad: effort.stiffness,
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

function sectionOf({ section, fit, length, inRow }: Assessment) {
  return {
    thickness_mm: section.thickness,
    length_mm: length,
    in_row: inRow,
    [fit.countOf]: { count: section.count, exact: fit.exact, nearest: fit.nearest, prints_as: fit.outcome },
  };
}

function overBendOf({ overBend }: Assessment) {
  return {
    ...angles('at_set', overBend.atSet),
    ...angles('at_single', overBend.atSingle),
    ...angles('at_yield', overBend.atYield),
    ...angles('at_break', overBend.atBreak),
    ...angles('hard_stop', overBend.hardStop),
  };
}

function allowableOf({ name, limit, strain, margin, applies, grade, provenance }: Allowable) {
  return { name, limit, strain, margin, applies, grade, provenance: { ...provenance } };
}

function answersOf(assessment: Assessment) {
  const { strain, set, life, joint, verdict } = assessment;
  return {
    ...sectionOf(assessment),
    peak_strain: { value: strain.peak, where: strain.where, nominal: strain.nominal, root_factor: strain.rootFactor },
    effort: effortOf(assessment),
    set: { ...angles('angle', set.angle), fraction: set.fraction },
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
