/** What the terminal says about a part: the assessments as plain data with the unit in every key. Pure. */
import { assess } from '../core/design/assess.ts';
import type { Allowable, Assessment } from '../core/design/assessment.ts';
import { bySolver } from '../core/design/bySolver.ts';
import type { Joint, Part, Swing } from '../core/design/joint.ts';
import { findDrive } from '../core/flexures/drives.ts';
import { findFamily } from '../core/flexures/index.ts';
import type { Problem } from '../core/problems.ts';
import {
  amounts,
  effort as effortIn,
  EFFORT_UNITS,
  SIZE_UNITS,
  snake,
  UNITS,
  type Json,
  type Measure,
} from './keys.ts';
import { emptyRoom, reportPath, type Room } from './pathReport.ts';
import { sayable } from './sayable.ts';
import { reportSolved } from './solverReport.ts';

export const HEADER = {
  format: 'bendbook-assessment',
  version: 3,
  units: UNITS,
} as const;

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

/** One kind of flex; a field that it does not have is left out. */
function swingOf({ amount, ways, least, cycles }: Swing, measure: Measure) {
  return {
    ...amounts('amount', amount, measure),
    ways,
    ...(least === undefined ? {} : amounts('least', least, measure)),
    cycles,
  };
}

function inputsOf({ family, sizes, movement, profile, surroundings, measuredThickness }: Joint) {
  const found = findFamily(family);
  // Of a joint that is refused for its drive nothing but the figure is known; it was an angle in most files.
  const measure = (found && findDrive(found, movement.drive)?.measure) ?? 'turn';
  const { effortAtMost, stays, also, heldHours } = movement;
  const named = Object.entries(found?.parameters ?? {}).map(([name, { kind }]) => {
    return [`${snake(name)}${SIZE_UNITS[kind]}`, sizes[name]] as const;
  });
  return {
    sizes: Object.fromEntries(named),
    movement: {
      drive: movement.drive,
      ...swingOf(movement, measure),
      ...(also === undefined ? {} : { also: also.map((swing) => swingOf(swing, measure)) }),
      held: movement.held,
      ...(heldHours === undefined ? {} : { held_h: heldHours }),
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
    ...(surroundings === undefined
      ? {}
      : { surroundings: { temperature_C: surroundings.temperatureC, moisture: surroundings.moisture } }),
    ...(measuredThickness === undefined ? {} : { measured_thickness_mm: measuredThickness }),
  };
}

function effortOf({ effort }: Assessment) {
  const unit = EFFORT_UNITS[effort.measure];
  return {
    ...effortIn(effort.effort, effort.measure),
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
    drive: drive.id,
    measure: drive.measure,
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
    ...(assessment.solved ? { solver: reportSolved(assessment, assessment.solved) } : {}),
  };
}

/** One assessed joint as the terminal says it. */
export function reportAssessment(assessment: Assessment): JointReport {
  const { joint, life } = assessment;
  const notes: Problem[] = [...assessment.notes];
  const answers = sayable(answersOf(assessment), '', notes, life.maxReportableCycles) as Readonly<Record<string, Json>>;
  return { id: joint.id, name: joint.name, family: joint.family, inputs: inputsOf(joint), ...answers, notes };
}

function refused(joint: Joint, problems: readonly Problem[]): JointReport {
  const { id, name, family } = joint;
  return { id, name, family, inputs: inputsOf(joint), problems };
}

/** The assessment with the way of its movement, where that was asked for. */
function withPath(assessment: Assessment, parts: number | undefined, room: Room): JointReport {
  const report = reportAssessment(assessment);
  if (parts === undefined) return report;
  const path = reportPath(assessment, parts, room);
  return path.ok ? { ...report, path: path.value as unknown as Json } : { ...report, problems: path.problems };
}

export interface ReportAsked {
  /** Equal parts of the wanted movement in which the way of every joint is told; not at all when left out. */
  readonly path?: number | undefined;
  /** Told before each joint is solved. */
  readonly onJoint?: (joint: Joint, index: number) => void;
}

/**
 * A part with everything the tool says about its joints; a joint that cannot be assessed carries `problems` instead.
 *
 * @param part - a part whose shape has been checked
 * @param notes - what reading it said; cautions that the joints repeat are left to the joints
 * @param asked - whether the whole way is wanted
 * @param room - how many middle lines the document still takes
 */
export function reportPart(
  part: Part,
  notes: readonly Problem[],
  asked: ReportAsked = {},
  room: Room = emptyRoom(),
): PartReport {
  const said = new Set<string>();
  const joints = part.joints.map((joint, index): JointReport => {
    asked.onJoint?.(joint, index);
    const answer = assess(joint, bySolver());
    if (!answer.ok) return refused(joint, answer.problems);
    for (const note of answer.value.notes) said.add(`joints[${index}].${note.field} ${note.message}`);
    return withPath(answer.value, asked.path, room);
  });
  const unsaid = notes.filter((note) => !said.has(`${note.field} ${note.message}`));
  return { name: part.name, invented: part.invented, joints, notes: unsaid };
}
