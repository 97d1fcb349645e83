/**
 * Moves of a printer in rows of numbers: what a reader of toolpaths hands on, and every pass over one takes in. Rows are
 * handed on in batches whose array is used again, so that a file of any length takes no more room than a short one.
 */

/** Numbers a row. */
export const MOVE_SIZE = 8;

/** Where the nozzle is after this piece [mm]; before it, it was where the row before ends (0, 0, 0 at first). */
export const X = 0;
export const Y = 1;
export const Z = 2;
/** Filament pushed on [mm], as the file asks; drawn back where below 0. */
export const FEED = 3;
/** Filament that comes out [mm]: of what is pushed on, what is not owed from having been drawn back, times the flow asked for. */
export const LAID = 4;
/** Way of the nozzle [mm], along the true arc where the piece is a chord of one; 0 where only filament moves. */
export const LENGTH = 5;
/** Sum of the flags below and 16 times the number of the tool. */
export const FLAGS = 6;
/** Line of the text, from 1. */
export const LINE = 7;

/** Goes on with the command of the row before: the second and later chords of an arc. */
export const GOES_ON = 1;
/** A chord of an arc. */
export const ON_ARC = 2;
/** The nozzle is somewhere else without having moved there: after homing. Ends any path. */
export const JUMP = 4;
/** Asked for as a rapid move. */
export const RAPID = 8;
export const TOOL = 16;

/** Takes in moves. */
export interface MoveSink {
  /**
   * @param rows - MOVE_SIZE numbers a move; used again after the call, so that whatever is kept must be copied
   * @param count - moves in it, ≥ 1
   */
  readonly take: (rows: Float64Array, count: number) => void;
}
