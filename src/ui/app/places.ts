import type { ComponentType } from 'react';
import { JointsPlace } from '../joints/JointsPlace.tsx';

/** Somewhere the user goes: one line here puts it on the sheet's head. */
export interface Place {
  /** What stands after `#` in the address. */
  readonly id: string;
  readonly name: string;
  readonly Page: ComponentType;
}

export const PLACES: readonly [Place, ...Place[]] = [{ id: 'joints', name: 'Joints', Page: JointsPlace }];
