import { MAX_COORDINATE } from './meshLimits.ts';
import { FETCH_AGAIN, quoted, refuse } from './refusal.ts';

/** Whether a coordinate can be one of a part. False for what is no number, too. */
export function isPlace(value: number): boolean {
  return Math.abs(value) <= MAX_COORDINATE;
}

/**
 * Gives up at a coordinate that is none.
 *
 * @param value - what was read
 * @param where - as a sentence begins, for example `Triangle 12`
 * @param as - how the file writes it, where it is text
 */
export function refuseCoordinate(value: number, where: string, as = String(value)): never {
  if (!Number.isFinite(value)) {
    return refuse('file-damaged', `${where} has the coordinate ${quoted(as)}, which is not a number; ${FETCH_AGAIN}`);
  }
  const message = `${where} has the coordinate ${quoted(as)}, farther out than ${MAX_COORDINATE} units; take stray points out of the part or ${FETCH_AGAIN}`;
  return refuse('too-large', message, { value, limit: MAX_COORDINATE });
}
