import { rolledTip } from '../closedForms/leafBending.ts';
import { assessLife } from '../life/assessLife.ts';
import { soundness, weakest } from '../material/choose.ts';
import type { Problem } from '../problems.ts';
import { ok, type Result } from '../result.ts';
import { NOTCH_SENSITIVITY } from '../strength/rootFactor.ts';
import { asRad } from '../units.ts';
import { allowablesOf, limitsOf } from './allowables.ts';
import type { Assessment, Travel } from './assessment.ts';
import { effortAnswer } from './effortAnswer.ts';
import { feelOf } from './feel.ts';
import { fitNotes, fitOf } from './fit.ts';
import { flexesOf } from './flexesOf.ts';
import type { Joint } from './joint.ts';
import { overBendOf } from './overBend.ts';
import { askedOf, byHand, isExactByHand, type Respond } from './response.ts';
import { setAnswer } from './setAnswer.ts';
import { strainAnswer } from './strainAnswer.ts';
import { understand, type Understood } from './understand.ts';
import { usageNotes } from './usageNotes.ts';
import { lifeGrade, verdictOf } from './verdict.ts';
import { surroundingsNotes, warmthFinding, warmthOf } from './warmth.ts';

/** What assesses a joint: `assess` by hand forms, or with the solver's answer. */
export type Judge = (joint: Joint) => Result<Assessment>;

/**
 * Everything the tool says about one joint. Read this function first: it is the whole argument,
 * profile → section → mechanics → strain → effort → set → life → limits → verdict.
 *
 * Problems: those of `understand`. Whatever deserves caution comes back as notes of the assessment.
 *
 * @param joint - one flexure with its movement and print profile [-]
 * @param respond - what answers its mechanics: hand forms at once, or the solver [-]
 * @returns strains as fractions, effort [N·mm] or [N], amounts [rad] or [mm], life in cycles, limits, verdict
 *
 * Source: plane-bending, wide-strip, roark-17.1, elastic-plastic, strain-life.
 */
export function assess(joint: Joint, respond: Respond = byHand): Result<Assessment> {
  const checked = understand(joint);
  return checked.ok ? assessUnderstood(checked.value, respond, checked.notes) : checked;
}

/**
 * The same of a joint that has been checked, for whoever takes its sizes or its filament a little otherwise than set.
 *
 * @param understood - a checked joint [-]
 * @param respond - what answers its mechanics [-]
 * @param before - what the checks have noted [-]
 * @returns as `assess`
 *
 * Source: plane-bending, wide-strip, roark-17.1, elastic-plastic, strain-life.
 */
export function assessUnderstood(
  understood: Understood,
  respond: Respond,
  before: readonly Problem[] = [],
): Result<Assessment> {
  const { joint, filament, section, acrossLayers, family, sizes } = understood;
  const { movement } = joint;

  const { thickness } = section;
  const answered = respond(understood);
  if (!answered.ok) return answered;
  const response = answered.value;
  const fit = fitOf(understood);
  const { strain, notes: strainNotes } = strainAnswer(understood, response);
  const effort = effortAnswer(understood, response);
  const { set, kappaRatio } = setAnswer(understood, response, effort);
  const life = assessLife({
    flexes: flexesOf(understood, response, strain),
    acrossLayers,
    thickness,
    filament,
  });
  const warmth = warmthOf(understood);
  const limits = limitsOf(filament, acrossLayers);
  const allowables = allowablesOf(strain.peak, limits, movement, lifeGrade(life, movement));

  return ok({
    joint,
    drive: understood.drive,
    sizes,
    filament,
    section,
    length: understood.length,
    fillet: family.root(sizes, thickness).fillet,
    padThickness: understood.padThickness,
    inRow: understood.inRow,
    sideBySide: understood.sideBySide,
    amountEach: understood.amountEach,
    estimate: !response.exact,
    ...(response.solved ? { solved: response.solved } : {}),
    fit,
    strain,
    effort,
    set,
    overBend: overBendOf(movement.amount, strain, limits, kappaRatio, response.solved, response.strainByHand),
    travel: travelOf(understood),
    life,
    allowables,
    warmth,
    verdict: verdictOf(life, allowables, fit, movement, [
      warmthFinding(warmth),
      ...feelOf(movement, effort, filament, response.solved),
    ]),
    provenance: {
      // The factor at the root rests on a notch sensitivity that nobody has measured.
      strain: strain.rootFactor > 1 ? NOTCH_SENSITIVITY.provenance.kind : 'computed',
      effort: soundness(effort.provenance),
      // Across layers the factor that reduces the strain is from memory in every row.
      life: weakest(soundness(filament.life.provenance), acrossLayers ? 'memory' : 'computed'),
      limits: weakest(...allowables.map((allowable) => soundness(allowable.provenance))),
    },
    notes: [
      ...before,
      ...answered.notes,
      ...strainNotes,
      ...fitNotes(understood, fit),
      ...usageNotes(understood, strain.peak, set.amount),
      ...surroundingsNotes(understood, warmth),
    ],
  } satisfies Assessment);
}

/**
 * Where the moving root goes when one flexure is rolled to an arc: a kind that is drawn straight from 0 to its length
 * and that the hand form of a turn answers exactly.
 */
function travelOf(understood: Understood): Travel | undefined {
  const { family, drive, length, amountEach } = understood;
  if (!isExactByHand(askedOf(understood)) || drive.measure !== 'turn' || family.outline === undefined) return undefined;
  const angle = asRad(amountEach);
  const tip = rolledTip(length, angle);
  return { radius: length / angle, inward: length - tip.x, upward: tip.y };
}
