import type { Assessment } from '../../../core/design/assessment.ts';
import type { Match, MatchStep } from '../../../core/design/matchAnswer.ts';
import { sizeOf } from '../../../core/design/matchWays.ts';
import { familyOf } from '../../../core/flexures/known.ts';
import { kindText } from '../../text/kindText.ts';
import type { Said } from '../../text/matchText.ts';
import type { BriefValue } from '../../text/briefText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { briefField, sayValue, suffixOf } from '../briefValues.ts';

const ROLES: Partial<Readonly<Record<MatchStep, BriefValue>>> = {
  length: 'length',
  depth: 'depth',
  lines: 'count',
  'side by side': 'sideBySide',
};

/** What a step changes, as the brief would say it: old and new. */
export function saidSize(a: Assessment, { after }: Match, unit: LengthUnit): (step: MatchStep) => Said {
  const family = familyOf(a.joint);
  return (step) => {
    const size = sizeOf(a.joint, step) ?? '';
    const name = ROLES[step] ?? (`sizes.${size}` as const);
    const field = briefField(name, a.joint, family);
    const count = after.sizes[size] ?? field.value;
    return {
      name,
      label: kindText(family.id).sizes[size] ?? size,
      now: `${sayValue(field, count, unit)}${suffixOf(field, unit)}`,
      was: sayValue(field, field.value, unit),
      count,
    };
  };
}
