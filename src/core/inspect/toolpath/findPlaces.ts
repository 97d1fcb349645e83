/** Finds thin sections in what a toolpath lays, by the same finder as in part files. */
import type { Mm } from '../../units.ts';
import { findFlexures, type Found } from '../findFlexures.ts';
import type { PassedOver } from '../flexure.ts';
import type { Alive } from '../thin/thinSpots.ts';
import type { Place } from './place.ts';
import { placeOf } from './placeOf.ts';
import { slabMesh } from './slabMesh.ts';
import type { Slab } from './slabs.ts';

/** Nothing that is laid is thinner than this share of a layer: what seems so lies between outlines of layers that differ a little. */
const THINNEST = 0.6;

export interface FoundPlaces {
  readonly places: readonly Place[];
  readonly passedOver: readonly PassedOver[];
  readonly isCut: boolean;
}

/**
 * Thin sections of the solid that layers make.
 *
 * @param slabs - from the bottom up [mm]
 * @param thickest - the thickest that counts as thin [mm], > 0
 * @param layer - how high layers are, mostly [mm]
 * @param alive - called every few milliseconds with the share that is done [-]; may throw to give up
 * @param found - hears how many there are [-] whenever there are more
 * @returns where their layers are cut, and what was passed over [mm]
 */
export function findPlaces(slabs: readonly Slab[], thickest: Mm, layer: Mm, alive?: Alive, found?: Found): FoundPlaces {
  const findings = findFlexures(
    slabMesh(slabs),
    { thickest, thinnest: THINNEST * layer, build: { x: 0, y: 0, z: 1 } },
    alive,
    found,
  );
  const places = findings.flexures.map((flexure) => placeOf(flexure, findings.sections[flexure.section]!, 'found'));
  return { places, passedOver: findings.passedOver, isCut: findings.isCut };
}
