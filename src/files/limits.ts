/** What writers and readers of files agree on, and the screen as well. */
export const PART_FORMAT = 'bendbook-part';
/** What is written; the steps to it are in `partMigrations.ts`, which only a reader needs. */
export const PART_VERSION = 3;
export const FILAMENT_FORMAT = 'bendbook-filament';
export const FILAMENT_VERSION = 1;
export const UNITS = 'mm N MPa rad';
export const MAX_JOINTS = 200;
/**
 * Of a part or of filaments. Two hundred joints take 0.6 MB, a filament 0.01, one with as many tallies as it may have 0.27 or,
 * filled to the last letter, 0.9: so thirty such rows fit whatever stands in them, and over a hundred as they are usual. As much
 * is read and checked in about a second and a quarter and half a gigabyte of memory; ten times as much no phone would read.
 */
export const MAX_PART_BYTES = 32_000_000;
/** Of a table: five hundred tallies take 1.4 MB at most. */
export const MAX_TABLE_BYTES = 6_000_000;
/** Movements beside the main one that are looked at; the core allows fewer, and says why. */
export const MAX_ALSO = 20;
