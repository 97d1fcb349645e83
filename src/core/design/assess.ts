import { rolledTip } from '../closedForms/leafBending.ts';
import { assessLife } from '../life/assessLife.ts';
import { soundness, weakest } from '../material/choose.ts';
import { ok, type Result } from '../result.ts';
import { NOTCH_SENSITIVITY } from '../strength/rootFactor.ts';
import { setAfterOneBend } from '../strength/permanentSet.ts';
import { asRad, type Mm, type Rad } from '../units.ts';
import { allowablesOf, limitsOf } from './allowables.ts';
import type { Assessment, Travel } from './assessment.ts';
import { effortAnswer } from './effortAnswer.ts';
import { fitNotes, fitOf } from './fit.ts';
import type { Joint } from './joint.ts';
import { overBendOf } from './overBend.ts';
import { strainAnswer } from './strainAnswer.ts';
import { understand } from './understand.ts';
import { usageNotes } from './usageNotes.ts';
import { lifeGrade, verdictOf } from './verdict.ts';

/**
 * Everything the tool says about one joint. Read this function first: it is the whole argument,
 * profile → section → strain → effort → set → life → limits → verdict.
 *
 * Problems: those of `understand`. Whatever deserves caution comes back as notes of the assessment.
 *
 * @param joint - one flexure with its movement and print profile [-]
 * @returns strains as fractions, torque [N·mm], angles [rad], life in cycles, limits, verdict
 *
 * Source: plane-bending, wide-strip, roark-17.1, elastic-plastic, strain-life.
 */
export function assess(joint: Joint): Result<Assessment> {
  const checked = understand(joint);
  if (!checked.ok) return checked;
  const understood = checked.value;
  const { filament, section, length, inRow, angleEach, acrossLayers, family } = understood;
  const { movement } = joint;

  const fit = fitOf(understood);
  const { strain, notes: strainNotes } = strainAnswer(understood);
  const effort = effortAnswer(understood, strain.nominal);
  const set = setAfterOneBend(strain.nominal, effort.modulus, filament.properties.yieldStress.typical);
  const setAngle = asRad(set.fraction * movement.angle);
  const { ways, cycles } = movement;
  const life = assessLife({
    peakStrain: strain.peak,
    ways,
    cycles,
    acrossLayers,
    thickness: section.thickness,
    filament,
  });
  const limits = limitsOf(filament, acrossLayers);
  const allowables = allowablesOf(strain.peak, limits, movement, lifeGrade(life, movement));

  return ok({
    joint,
    filament,
    section,
    length,
    fillet: family.root(joint.sizes, section.thickness).fillet,
    padThickness: joint.sizes[family.roles.pad] ?? Number.NaN,
    inRow,
    angleEach,
    fit,
    strain,
    effort,
    set: { angle: setAngle, fraction: set.fraction },
    overBend: overBendOf(movement.angle, strain, limits, set.kappaRatio),
    travel: travelOf(length, angleEach),
    life,
    allowables,
    verdict: verdictOf(life, allowables, fit, movement),
    provenance: {
      // The factor at the root rests on a notch sensitivity that nobody has measured.
      strain: strain.rootFactor > 1 ? NOTCH_SENSITIVITY.provenance.kind : 'computed',
      effort: soundness(effort.provenance),
      // Across layers the factor that reduces the strain is from memory in every row.
      life: weakest(soundness(filament.life.provenance), acrossLayers ? 'memory' : 'computed'),
      limits: weakest(...allowables.map((allowable) => soundness(allowable.provenance))),
    },
    notes: [
      ...checked.notes,
      ...strainNotes,
      ...fitNotes(understood, fit),
      ...usageNotes(understood, strain.peak, setAngle),
    ],
  } satisfies Assessment);
}

/** Where the moving root goes when one flexure is rolled to an arc. */
function travelOf(length: Mm, angle: Rad): Travel {
  const tip = rolledTip(length, angle);
  return { radius: length / angle, inward: length - tip.x, upward: tip.y };
}
