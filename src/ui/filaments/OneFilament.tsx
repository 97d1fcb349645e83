import type { WholeFilament } from '../../core/material/types.ts';
import type { YourJoint } from './useYourJoint.ts';

export function OneFilament({
  row,
}: {
  readonly row: WholeFilament;
  readonly rows: readonly WholeFilament[];
  readonly yours: YourJoint;
}) {
  return <main>{row.name}</main>;
}
