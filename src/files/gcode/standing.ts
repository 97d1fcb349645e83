/** Where a printer stands, in numbers. */

/**
 * Places of the numbers that tell where it stands, in one array: fields of an object would each be put into a box. Where the nozzle
 * is [mm]; where 0 is called from [mm]; what the file calls the place of the filament; of lengths and of filament to mm, or to mm³
 * where it is told in volumes; of that to mm of filament; the flow; what the tool that is on has drawn back [mm].
 */
export const AT = {
  x: 0,
  y: 1,
  z: 2,
  offX: 3,
  offY: 4,
  offZ: 5,
  pushed: 6,
  scale: 7,
  feedUnit: 8,
  feedScale: 9,
  flow: 10,
  owed: 11,
} as const;
/** At the beginning of a file. */
export const AT_FIRST: readonly number[] = [0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 0];
