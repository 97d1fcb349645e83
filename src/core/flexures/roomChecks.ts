import { plain, type Problem } from '../problems.ts';
import type { Mm } from '../units.ts';

/** Products such as 3·0.42 may miss 1.26 by the last digit. */
const ROUND_OFF = 1e-9;

/** A place that must stay open in the print, and the size that opens it. */
export interface Room {
  /** How wide it is as printed [mm]; below 0 where what should be apart overlaps. */
  readonly room: Mm;
  /** Between what, for a sentence: “neighbouring arms”. */
  readonly between: string;
  /** The size to change, its value, and where there is just one line of room. */
  readonly field: string;
  readonly value: number;
  readonly limit: number;
  /** The same in words: “make the ring at least 25 mm”. */
  readonly cure: string;
}

/**
 * What is to be said of a gap as printed: bodies that overlap are refused, and a gap under one line is cautioned,
 * because it fuses. That a gap needs about one line to stay open is common practice, no source.
 *
 * @param gap - the place and what opens it [mm]
 * @param line - line width [mm], > 0
 * @returns `no-room` or `nearly-touch` [-], or nothing
 *
 * Source: common-practice.
 */
export function judgeRoom(gap: Room, line: Mm): readonly Problem[] {
  const { room, between, field, value, limit, cure } = gap;
  if (room >= line * (1 - ROUND_OFF)) return [];
  if (room <= ROUND_OFF) {
    const message = `There is no room between ${between}: they touch as printed; ${cure}`;
    return [{ code: 'no-room', message, field, value, limit }];
  }
  const message = `Only ${plain(room)} mm lies between ${between} as printed, under one line of ${plain(line)} mm, so they may fuse; ${cure} (common practice, no source)`;
  return [{ code: 'nearly-touch', message, field, value, limit }];
}
