/** What the terminal says about a part: the assessments as plain data with the unit in every key. Pure. */
import { assess } from '../core/design/assess.ts';
import type { Allowable, Assessment } from '../core/design/assessment.ts';
import { bySolver } from '../core/design/bySolver.ts';
import { holdAnswer, type Between, type HoldAnswer } from '../core/design/hold.ts';
import type { Joint, Part, Swing } from '../core/design/joint.ts';
import { findDrive } from '../core/flexures/drives.ts';
import { findFamily } from '../core/flexures/index.ts';
import { meanStrain, meanStrainLives } from '../core/life/meanStrain.ts';
import type { Problem } from '../core/problems.ts';
import type { Result } from '../core/result.ts';
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
import { reportDoubt, type PrintsAsked } from './doubtReport.ts';
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

/** Each kind of flex; how long it would last alone is said where there are others. */
function wearOf({ life, drive: { measure } }: Assessment) {
  return life.wear.map((wear) => ({
    ...amounts('amount', wear.amount, measure),
    cycles: wear.cycles,
    peak_strain: wear.peakStrain,
    ratio: wear.ratio,
    mean_strain: meanStrain(wear.peakStrain, wear.ratio),
    equivalent_strain: wear.equivalentStrain,
    ...(life.wear.length > 1 ? { alone_p50: wear.median } : {}),
    share: wear.share,
  }));
}

/** Median life of its own swing by the rules for a strain that stays on; those past what was counted are withheld. */
function lifeByRule({ life, filament, effort }: Assessment) {
  const { byExponent, morrow, smithWatsonTopper } = meanStrainLives(life.wear[0], filament, effort.modulus);
  return {
    ...Object.fromEntries(byExponent.map(({ gamma, median }) => [`exponent_${gamma}`, { p50: median }])),
    morrow: morrow === undefined ? null : { p50: morrow },
    smith_watson_topper: { p50: smithWatsonTopper },
  };
}

function lifeOf(assessment: Assessment) {
  const { life } = assessment;
  return {
    ...life.total,
    scatter_only: { ...life.scatter },
    equivalent_strain: life.equivalentStrain,
    breaks_on_first_flex: life.breaksOnFirstFlex,
    beyond: life.beyond,
    counted_up_to: life.maxReportableCycles,
    wear: wearOf(assessment),
    ...(life.wear[0].ratio === 0 ? {} : { own_by_rule: lifeByRule(assessment) }),
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

function setOf({ set, drive: { measure } }: Assessment) {
  return {
    ...amounts('amount', set.amount, measure),
    fraction: set.fraction,
    ...amounts('low', set.low, measure),
    ...amounts('high', set.high, measure),
  };
}

function warmthOf({ warmth }: Assessment) {
  return {
    temperature_C: warmth.temperatureC,
    softens_at_C: warmth.softensAt,
    spare_C: warmth.spare,
    brittle: warmth.isBrittle,
    grade: warmth.grade,
  };
}

function sharesOf({ typical, low, high }: Between) {
  return { share: typical, share_low: low, share_high: high };
}

/** Held bent for as long as is said, or a day; null where it is too warm to say. */
function heldOf({ drive: { measure } }: Assessment, answer: Result<HoldAnswer>) {
  if (!answer.ok) return null;
  const { held, sags, exponent } = answer.value;
  const { hours, left, effort, stays } = held;
  return {
    held_for_h: hours,
    effort_left: {
      ...effortIn(effort.typical, measure),
      ...effortIn(effort.low, measure, 'low_'),
      ...effortIn(effort.high, measure, 'high_'),
      ...sharesOf(left),
    },
    stays: {
      ...amounts('amount', stays.typical, measure),
      ...amounts('low', stays.low, measure),
      ...amounts('high', stays.high, measure),
    },
    further_after_a_day_under_load: sharesOf(sags),
    exponent_provenance: { ...exponent.provenance },
  };
}

function allowableOf({ name, limit, strain, margin, applies, grade, provenance }: Allowable) {
  return { name, limit, strain, margin, applies, grade, provenance: { ...provenance } };
}

function answersOf(assessment: Assessment, hold: Result<HoldAnswer>) {
  const { strain, life, joint, verdict, drive } = assessment;
  return {
    drive: drive.id,
    measure: drive.measure,
    estimate: assessment.estimate,
    ...sectionOf(assessment),
    peak_strain: { value: strain.peak, where: strain.where, nominal: strain.nominal, root_factor: strain.rootFactor },
    effort: effortOf(assessment),
    set: setOf(assessment),
    over_bend: overBendOf(assessment),
    held_bent: heldOf(assessment, hold),
    warmth: warmthOf(assessment),
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
  const hold = holdAnswer(assessment);
  const notes: Problem[] = [...assessment.notes];
  // Of what is not held nobody asks whether it may be.
  if (joint.movement.held) notes.push(...(hold.ok ? hold.notes : hold.problems));
  const answers = sayable(answersOf(assessment, hold), '', notes, life.maxReportableCycles) as Readonly<
    Record<string, Json>
  >;
  return { id: joint.id, name: joint.name, family: joint.family, inputs: inputsOf(joint), ...answers, notes };
}

function refused(joint: Joint, problems: readonly Problem[]): JointReport {
  const { id, name, family } = joint;
  return { id, name, family, inputs: inputsOf(joint), problems };
}

/** The assessment with the way of its movement, and with how sure it is, where that was asked for. */
function reportAsked(assessment: Assessment, { path, prints }: ReportAsked, room: Room): JointReport {
  const report = reportAssessment(assessment);
  const { joint, drive, life } = assessment;
  const way = path === undefined ? undefined : reportPath(assessment, path, room);
  const doubt = prints && reportDoubt(joint, drive.measure, prints);
  const problems = [way, doubt].flatMap((one) => (one && !one.ok ? one.problems : []));
  const notes = [...(report['notes'] as readonly Problem[])];
  const told = doubt?.ok ? sayable(doubt.value, 'how_sure', notes, life.maxReportableCycles) : undefined;
  return {
    ...report,
    notes,
    ...(told === undefined ? {} : { how_sure: told }),
    ...(way?.ok ? { path: way.value as unknown as Json } : {}),
    ...(problems.length > 0 ? { problems } : {}),
  };
}

export interface ReportAsked {
  /** Equal parts of the wanted movement in which the way of every joint is told; not at all when left out. */
  readonly path?: number | undefined;
  /** Prints from which it is told how sure each answer is; not told when left out. */
  readonly prints?: PrintsAsked | undefined;
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
    return reportAsked(answer.value, asked, room);
  });
  const unsaid = notes.filter((note) => !said.has(`${note.field} ${note.message}`));
  return { name: part.name, invented: part.invented, joints, notes: unsaid };
}
