/** Checks a toolpath: apart from the other jobs, since no joint waits for it. */
import { ok } from '../core/result.ts';
import { blobSource } from '../files/gcode/byteSource.ts';
import { checkGcode, nearPlaces } from '../files/gcode/checkGcode.ts';
import type { Alive, Input, Output, Tell } from './protocol.ts';

/** Of a spiral that was checked, how much it rises a turn: boxes that are drawn later are read with it. */
const pitches = new Map<string, number | undefined>();

export async function checkToolpathJob(
  { file, key, diameter, thickest, boxes }: Input<'checkToolpath'>,
  alive: Alive,
  tell: Tell,
): Promise<Output<'checkToolpath'>> {
  const asked = { thickest, ...(diameter !== undefined && { diameter }), ...(boxes && { boxes }) };
  const checked = await checkGcode(blobSource(file), asked, {
    alive,
    say: (doing, found) => tell({ doing, found }),
  });
  if (checked.ok) pitches.set(key, checked.value.figures.pitch);
  return checked;
}

export async function nearPlacesJob(
  { file, key, diameter, places }: Input<'nearPlaces'>,
  alive: Alive,
): Promise<Output<'nearPlaces'>> {
  return ok(await nearPlaces(blobSource(file), diameter, places, pitches.get(key), alive));
}
