import { THICK_SECTION } from '../life/assessLife.ts';
import type { Problem } from '../problems.ts';
import { asRad, degrees } from '../units.ts';
import type { Understood } from './understand.ts';

/** Less than this stays within what a hinge pin or a print's own spring-back varies by; common practice, no source. */
const NOTABLE_SET_DEG = 0.5;
/** The same for a travel [mm]. */
const NOTABLE_SET = 0.1;

/**
 * Cautions that follow from how the part lies and how it is used, whatever the verdict.
 *
 * @param understood - a checked joint [-]
 * @param peak - peak strain as a fraction [-]
 * @param set - what stays after one flex [rad] or [mm]
 * @returns notes [-]: `across-layers`, `sags-when-held`, `takes-a-set`, `thick-pp`, or none
 */
export function usageNotes(
  { joint, drive, filament, section, acrossLayers }: Understood,
  peak: number,
  set: number,
): readonly Problem[] {
  const notes: Problem[] = [];
  if (acrossLayers) {
    const message =
      'Layers stack along the flexure, so bending pulls them apart; turn the part so that lines run along it';
    notes.push({ code: 'across-layers', message, field: 'profile.lying', value: 'upright' });
  }
  if (joint.movement.held && filament.id === 'tpu95a') {
    const message = 'TPU sags under a load that stays on; use it where the joint is let go between flexes';
    notes.push({ code: 'sags-when-held', message, field: 'movement.held', value: peak });
  }
  const isTurn = drive.measure === 'turn';
  const left = isTurn ? degrees(asRad(set)) : set;
  if (left >= (isTurn ? NOTABLE_SET_DEG : NOTABLE_SET)) {
    const message = `Up to about ${Number(left.toFixed(isTurn ? 1 : 2))} ${isTurn ? 'degrees' : 'mm'} may stay after one bend; a plastic springs back more than this estimate by its yield stress, and a held bend leaves more`;
    notes.push({ code: 'takes-a-set', message, field: 'movement.amount', value: set, unit: isTurn ? 'rad' : 'mm' });
  }
  if (filament.properties.thickSectionStrainFactor && section.thickness > THICK_SECTION) {
    const message = `Above ${THICK_SECTION} mm this filament is not drawn out and oriented by bending, so it stands less strain; make it thinner`;
    notes.push({ code: 'thick-pp', message, field: 'sizes', value: section.thickness, limit: THICK_SECTION });
  }
  return notes;
}
