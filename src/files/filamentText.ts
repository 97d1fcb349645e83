/** Writing filaments of the user's own: apart from reading, which needs much more and is needed later. */
import type { OwnFilament } from '../core/material/types.ts';
import { FILAMENT_FORMAT, FILAMENT_VERSION } from './limits.ts';

/**
 * The filaments as the text of a file. The same ones give the same text.
 *
 * @param filaments - rows of the user's own
 * @returns pretty JSON, ends with a line end
 */
export function writeFilaments(filaments: readonly OwnFilament[]): string {
  return `${JSON.stringify({ format: FILAMENT_FORMAT, version: FILAMENT_VERSION, filaments }, null, 2)}\n`;
}
