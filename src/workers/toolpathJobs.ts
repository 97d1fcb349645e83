/** Checks a toolpath: apart from the other jobs, since no joint waits for it. */
import { fail } from '../core/result.ts';
import type { Alive, Input, Output, Tell } from './protocol.ts';

const NOT_YET = { code: 'unreadable', message: 'Toolpaths cannot be read yet' } as const;

export function checkToolpathJob(
  _input: Input<'checkToolpath'>,
  _alive: Alive,
  _tell: Tell,
): Promise<Output<'checkToolpath'>> {
  return Promise.resolve(fail(NOT_YET));
}

export function nearPlacesJob(_input: Input<'nearPlaces'>, _alive: Alive): Promise<Output<'nearPlaces'>> {
  return Promise.resolve(fail(NOT_YET));
}
