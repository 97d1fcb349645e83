import type { Joint } from '../../core/design/joint.ts';
import type { FlexureFamily } from '../../core/flexures/family.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { problemSaid } from '../text/problemSaid.ts';
import type { BriefOf } from './briefSpecs.ts';
import { tryChange } from './tryChange.ts';

/** What puts a changed joint in force, or says why it cannot be. */
export function putting(
  joint: Joint,
  family: FlexureFamily,
  unit: LengthUnit,
  onChange: (next: Joint, said: string, run?: string) => void,
): BriefOf['put'] {
  return (asked, said, path, label, run) => {
    const { next, problem } = tryChange(joint, asked, family);
    if (problem) return problemSaid(problem, unit, problem.field === path ? label : undefined);
    onChange(next, said, run);
    return undefined;
  };
}
