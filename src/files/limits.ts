/** What writers and readers of files agree on, and the screen as well. */
export const PART_FORMAT = 'bendbook-part';
export const UNITS = 'mm N MPa rad';
export const MAX_JOINTS = 200;
/** Two hundred joints take a tenth of this. */
export const MAX_PART_BYTES = 2_000_000;
