/** The wish as it stands in its sentence, and the live values that change it. */
import type { Assessment } from '../../../core/design/assessment.ts';
import { snapEffort } from '../../../core/design/effortAt.ts';
import type { EffortWanted } from '../../../core/design/matchAnswer.ts';
import { MOVEMENT_LIMITS } from '../../../core/design/movementLimits.ts';
import { familyOf } from '../../../core/flexures/known.ts';
import { outsideRange } from '../../../core/problems.ts';
import { effortStep, settled } from '../../controls/settle.ts';
import type { ValueSpec } from '../../controls/valueSpec.ts';
import { EFFORT_UNIT } from '../../text/amountText.ts';
import { WISH_HINTS, WISH_LABELS } from '../../text/matchText.ts';
import { NO_BREAK, type LengthUnit } from '../../text/numbers.ts';
import { problemSaid } from '../../text/problemSaid.ts';
import { briefField, sayValue, shownNumber, stepOf, suffixOf } from '../briefValues.ts';

/** Three figures, as efforts are told. */
function rounded(effort: number): number {
  return Number(effort.toPrecision(3));
}

/** The joint's own effort where it would be wished for; undefined where it is not known, or does not snap. */
export function ownWish(a: Assessment): EffortWanted | undefined {
  if (familyOf(a.joint).snaps !== true) return { effort: rounded(a.effort.effort), at: a.joint.movement.amount };
  const effort = a.solved && snapEffort(a);
  return effort === undefined ? undefined : { effort: rounded(effort), at: 'snap' };
}

type Take = (next: EffortWanted) => void;

const say = (effort: number) => String(Number(effort.toFixed(3)));

/** How hard. */
export function effortSpec(a: Assessment, wish: EffortWanted, take: Take, unit: LengthUnit): ValueSpec {
  const { measure } = a.drive;
  const kind = measure === 'turn' ? 'torque' : 'force';
  const label = wish.at === 'snap' ? WISH_LABELS.snap : WISH_LABELS.effort;
  const suffix = `${NO_BREAK}${EFFORT_UNIT[measure]}`;
  const { min, max } = MOVEMENT_LIMITS.effortAtMost;
  return {
    key: 'wish-effort',
    label,
    kind,
    unit,
    value: wish.effort,
    say,
    shownNumber: wish.effort,
    figure: say(wish.effort),
    suffix,
    hint: WISH_HINTS.effort(`${say(effortStep(wish.effort, true))}${suffix}`),
    step: effortStep,
    min,
    max,
    take: (asked) => {
      const effort = settled(asked, kind, unit);
      const outside = outsideRange('wanted.effort', 'an effort of', effort, MOVEMENT_LIMITS.effortAtMost, '');
      if (outside) return problemSaid(outside, unit, label);
      take({ ...wish, effort });
      return undefined;
    },
  };
}

/** Where: an amount of the drive, said as that of the brief is. */
export function atSpec(a: Assessment, at: number, wish: EffortWanted, take: Take, unit: LengthUnit): ValueSpec {
  const { measure } = a.drive;
  const field = { ...briefField('amount', a.joint, familyOf(a.joint)), value: at };
  const label = WISH_LABELS.at[measure];
  const suffix = suffixOf(field, unit);
  const sayAt = (value: number) => sayValue(field, value, unit);
  const step = stepOf('amount', field, unit);
  return {
    key: 'wish-at',
    label,
    kind: field.kind,
    unit,
    value: at,
    say: sayAt,
    shownNumber: shownNumber(field, unit),
    figure: sayAt(at),
    suffix,
    hint: WISH_HINTS.at(`${sayAt(step(at, true))}${suffix}`),
    step,
    min: field.min,
    max: field.max,
    take: (asked) => {
      const next = settled(asked, field.kind, unit);
      const outside = outsideRange('wanted.at', label, next, a.drive, measure === 'turn' ? '°' : 'mm');
      if (outside) return problemSaid(outside, unit, label);
      take({ ...wish, at: next });
      return undefined;
    },
  };
}
