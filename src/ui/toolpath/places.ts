/** Which thin sections of a toolpath are looked at: those found or carried over, then those drawn. */
import type { CheckedToolpath, PlaceNear } from '../../core/inspect/toolpath/checkedToolpath.ts';
import { drawnPlace } from '../../core/inspect/toolpath/drawnPlace.ts';
import type { Place } from '../../core/inspect/toolpath/place.ts';
import type { ToolpathValues } from '../../store/toolpaths.ts';
import type { GcodeText } from '../../files/gcode/gcodeText.ts';

type Toolpath = CheckedToolpath<GcodeText>;

/** What is found in the layers, or carried over; and from which number on boxes are counted. */
function basePlaces(toolpath: Toolpath, carried: readonly Place[], { isCarried }: ToolpathValues) {
  const base = isCarried && carried.length > 0 ? carried : toolpath.places.map(({ place }) => place);
  return { base, after: Math.max(0, ...base.map(({ number }) => number)) };
}

/** The number of a box. */
export function boxNumber(places: readonly Place[], index: number): number {
  const others = places.filter(({ from }) => from !== 'drawn');
  return Math.max(0, ...others.map(({ number }) => number)) + index + 1;
}

/** All that should be looked at, boxes last. */
export function wantedPlaces(toolpath: Toolpath, carried: readonly Place[], values: ToolpathValues): readonly Place[] {
  const { base, after } = basePlaces(toolpath, carried, values);
  const drawn = values.boxes.flatMap((box, i) => {
    const place = drawnPlace(box, after + i + 1);
    return place.ok ? [place.value] : [];
  });
  return [...base, ...drawn];
}

/** Where it is, whatever its number. */
const whereOf = ({ run, lying, thickness, reach, bottom, top }: Place) =>
  JSON.stringify([run, lying, thickness, reach, bottom, top]);

/** Those of which it is known what lies near them, and the others. */
export function knownPlaces(
  wanted: readonly Place[],
  known: readonly PlaceNear[],
): { readonly places: readonly PlaceNear[]; readonly missing: readonly Place[] } {
  const near = new Map(known.map((one) => [whereOf(one.place), one.near]));
  const places: PlaceNear[] = [];
  const missing: Place[] = [];
  for (const place of wanted) {
    const found = near.get(whereOf(place));
    if (found) places.push({ place, near: found });
    else missing.push(place);
  }
  return { places, missing };
}
