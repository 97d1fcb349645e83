/** Every thin section of a part on one printer and in one use. */
import { assess } from '../design/assess.ts';
import type { Assessment } from '../design/assessment.ts';
import type { Joint } from '../design/joint.ts';
import '../flexures/index.ts';
import type { Box3 } from '../geometry/mesh/triangleMesh.ts';
import { ok, type Result } from '../result.ts';
import { asLaid } from './asLaid.ts';
import type { Flexure } from './flexure.ts';
import { jointOf, type StandsFor } from './jointOf.ts';
import type { AskedOfAll, Judged, PrintedAs } from './judged.ts';
import { landingOf } from './landing.ts';
import { layersOf } from './layerOf.ts';

type Assessed = Result<Assessment>;

/**
 * What is told of every thin section of a part: how it lies and lands, where it is seen, and how the joint that stands for it is
 * assessed. By hand forms, which are exact for a turn; alike ones are assessed once.
 *
 * Problems of a section are those of `assess`; notes of its result say where the joint is not quite the section.
 *
 * @param flexures - as found [mm]
 * @param box - of the part as in the file [mm]
 * @param as - scale, which way is up, print profile [mm]
 * @param asked - how far each bends [rad] and how often [-]
 * @param fileName - of the part [-]
 * @returns one answer a section, in their order; lengths as printed [mm]
 *
 * Source: plane-bending, notch-hinge, common-practice.
 */
export function judgeAll(
  flexures: readonly Flexure[],
  box: Box3,
  as: PrintedAs,
  asked: AskedOfAll,
  fileName: string,
): readonly Judged[] {
  const known = new Map<string, Assessed>();
  return flexures.map((flexure) => {
    const laid = asLaid(flexure, box, as);
    const stands = jointOf(flexure, laid, as, asked, fileName);
    return {
      flexure,
      lying: laid.lying,
      aslant: laid.aslant,
      landing: landingOf(laid.thickness, laid),
      ...layersOf(flexure, box, as),
      joint: stands.joint,
      assessed: assessedOnce(stands, known),
    };
  });
}

/** What an assessment rests on, apart from what the joint is called. */
function keyOf({ family, sizes, movement, profile, measuredThickness }: Joint): string {
  return JSON.stringify([family, sizes, movement, profile, measuredThickness]);
}

function assessedOnce({ joint, notes }: StandsFor, known: Map<string, Assessed>): Assessed {
  const key = keyOf(joint);
  const assessed = known.get(key) ?? assess(joint);
  known.set(key, assessed);
  return assessed.ok ? ok({ ...assessed.value, joint }, [...notes, ...assessed.notes]) : assessed;
}
