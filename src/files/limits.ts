/** What writers and readers of files agree on, and the screen as well. */
export const PART_FORMAT = 'bendbook-part';
/** What is written; the steps to it are in `partMigrations.ts`, which only a reader needs. */
export const PART_VERSION = 3;
export const FILAMENT_FORMAT = 'bendbook-filament';
export const FILAMENT_VERSION = 1;
export const UNITS = 'mm N MPa rad';
export const MAX_JOINTS = 200;
/** Of a part or of filaments: two hundred joints take a tenth of this, and as many filaments of the user's own half. */
export const MAX_PART_BYTES = 6_000_000;
/** Movements beside the main one that are looked at; the core allows fewer, and says why. */
export const MAX_ALSO = 20;
