/** Checks a toolpath: apart from the other jobs, since no joint waits for it. */
import { blobSource } from '../files/gcode/byteSource.ts';
import { checkGcode, nearPlaces } from '../files/gcode/checkGcode.ts';
import type { Alive, Input, Output, Tell } from './protocol.ts';

export async function checkToolpathJob(
  { file, diameter, thickest, boxes }: Input<'checkToolpath'>,
  alive: Alive,
  tell: Tell,
): Promise<Output<'checkToolpath'>> {
  const asked = { thickest, ...(diameter !== undefined && { diameter }), ...(boxes && { boxes }) };
  return checkGcode(blobSource(file), asked, {
    alive,
    say: (doing, found) => tell({ doing, found }),
  });
}

export async function nearPlacesJob(
  { file, diameter, places, pitch }: Input<'nearPlaces'>,
  alive: Alive,
): Promise<Output<'nearPlaces'>> {
  return nearPlaces(blobSource(file), diameter, places, pitch, alive);
}
