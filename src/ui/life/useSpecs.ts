/** The live values of “In use”: what each shows, what it may be, and the joint that each makes. */
import {
  A_ROOM,
  leastOf,
  MOISTURES,
  WAYS,
  type Joint,
  type Moisture,
  type Surroundings,
  type Swing,
} from '../../core/design/joint.ts';
import { MOVEMENT_LIMITS, TEMPERATURE_LIMITS } from '../../core/design/movementLimits.ts';
import { driveOf } from '../../core/flexures/drives.ts';
import type { ChoiceSpec } from '../controls/ChoiceField.tsx';
import { cyclesStep } from '../controls/settle.ts';
import type { ValueSpec } from '../controls/valueSpec.ts';
import { briefField, sayValue, shownNumber, suffixOf, type BriefField } from '../joints/briefValues.ts';
import type { BriefOf } from '../joints/briefSpecs.ts';
import { goingIn, movedBy } from '../../core/design/swing.ts';
import { setAmount } from '../text/amountText.ts';
import { backAsFar, waysText } from '../text/briefText.ts';
import { grouped, MINUS } from '../text/numbers.ts';
import { HOURS } from '../text/countText.ts';
import {
  AIR,
  AIR_SAID,
  CELSIUS,
  SWING_HINTS,
  swingLabel,
  swingSaid,
  USE_HINTS,
  USE_LABELS,
  USE_SAID,
} from '../text/useText.ts';
import { swingsOf, withSwing } from './swings.ts';

/** How long it is left bent at a time where nothing is said [h]. */
const A_DAY = 24;

/** Surroundings that are those of a room are left out, as they are of a joint that nobody asked about. */
function inSurroundings(joint: Joint, change: Partial<Surroundings>): Joint {
  const { surroundings = A_ROOM, ...rest } = joint;
  const next = { ...surroundings, ...change };
  const isRoom = next.temperatureC === A_ROOM.temperatureC && next.moisture === A_ROOM.moisture;
  return isRoom ? rest : { ...rest, surroundings: next };
}

const sayDegrees = (value: number) => String(Number(value.toFixed(1))).replace('-', MINUS);
const sayHours = (value: number) => (Number.isInteger(value) ? grouped(value) : String(Number(value.toFixed(2))));

export function temperatureSpec({ joint, unit, put }: BriefOf): ValueSpec {
  const { temperatureC } = joint.surroundings ?? A_ROOM;
  const say = sayDegrees;
  const label = USE_LABELS.temperature;
  return {
    key: 'temperature',
    label,
    kind: 'number',
    unit,
    value: temperatureC,
    say,
    shownNumber: temperatureC,
    figure: say(temperatureC),
    suffix: CELSIUS,
    hint: USE_HINTS.temperature,
    step: () => 1,
    ...TEMPERATURE_LIMITS,
    take: (value, was, run) => {
      const next = inSurroundings(joint, { temperatureC: value });
      const said = USE_SAID.temperature(`${say(value)}${CELSIUS}`, say(was));
      return put(next, said, 'surroundings.temperatureC', label, run);
    },
  };
}

export function moistureSpec({ joint, put }: BriefOf): ChoiceSpec {
  const { moisture } = joint.surroundings ?? A_ROOM;
  const label = USE_LABELS.moisture;
  return {
    key: 'moisture',
    label,
    value: moisture,
    options: MOISTURES.map((value) => ({ value, text: AIR[value] })),
    take: (value) => {
      const said = USE_SAID.moisture(AIR_SAID[value as Moisture], AIR_SAID[moisture]);
      return put(inSurroundings(joint, { moisture: value as Moisture }), said, 'surroundings.moisture', label);
    },
  };
}

export function hoursOf({ movement }: Joint): number {
  return movement.heldHours ?? A_DAY;
}

export function hoursSpec({ joint, unit, put }: BriefOf): ValueSpec {
  const hours = hoursOf(joint);
  const say = sayHours;
  const label = USE_LABELS.hours;
  return {
    key: 'hours',
    label,
    kind: 'number',
    unit,
    value: hours,
    say,
    shownNumber: hours,
    figure: say(hours),
    suffix: HOURS,
    hint: USE_HINTS.hours,
    step: cyclesStep,
    ...MOVEMENT_LIMITS.heldHours,
    take: (value, was, run) => {
      const next = { ...joint, movement: { ...joint.movement, heldHours: value } };
      return put(next, USE_SAID.hours(`${say(value)}${HOURS}`, say(was)), 'movement.heldHours', label, run);
    },
  };
}

type SwingValue = 'amount' | 'least' | 'cycles';

/** How far a smaller movement may go is told by the joint's own. */
function swingLimits(name: SwingValue, { movement }: Joint, swing: Swing, step: number) {
  const end = leastOf(movement);
  if (name === 'cycles') return MOVEMENT_LIMITS.cycles;
  if (name === 'amount') return { min: step, max: movement.amount };
  return { min: Math.max(end, -swing.amount), max: Math.max(-swing.amount, swing.amount - step) };
}

/** One value of a smaller movement; it is shown as the same value of the joint's own is. */
export function swingSpec(of: BriefOf, at: number, name: SwingValue): ValueSpec {
  const { joint, family, unit, put } = of;
  const swing = swingsOf(joint)[at] as Swing;
  const step = driveOf(family, joint.movement.drive).step;
  const alike = briefField(name, joint, family);
  const value = name === 'least' ? leastOf(swing) : swing[name];
  const field: BriefField = { ...alike, value, ...swingLimits(name, joint, swing, step) };
  const label = swingLabel(at, name);
  const suffix = suffixOf(field, unit);
  const say = (shown: number) => sayValue(field, shown, unit);
  return {
    key: `${name}-${at}`,
    label,
    kind: field.kind,
    unit,
    value,
    say,
    shownNumber: shownNumber(field, unit),
    figure: say(value),
    suffix,
    hint: SWING_HINTS[name](`${say(step)}${suffix}`),
    step: name === 'cycles' ? cyclesStep : () => step,
    min: field.min,
    max: field.max,
    take: (next, was, run) => {
      const changed = name === 'amount' ? movedBy(swing, next, step) : { ...swing, [name]: next };
      const said = swingSaid(at, name, `${say(next)}${suffix}`, say(was));
      return put(withSwing(joint, at, changed), said, `movement.also[${at}].${name}`, label, run);
    },
  };
}

export function swingWaysSpec({ joint, family, unit, put }: BriefOf, at: number): ChoiceSpec {
  const swing = swingsOf(joint)[at] as Swing;
  const { measure } = driveOf(family, joint.movement.drive);
  const label = swingLabel(at, 'ways');
  const saidOf = (ways: string) => (ways === 'between' ? backAsFar(setAmount(leastOf(swing), measure, unit)) : ways);
  return {
    key: `ways-${at}`,
    label,
    value: swing.ways,
    options: WAYS.map((value) => ({ value, text: waysText(value) })),
    take: (value) => {
      const next = withSwing(joint, at, goingIn(swing, value as Swing['ways']));
      // What is refused of a way is where it comes back to.
      const back = swingLabel(at, 'least');
      return put(next, swingSaid(at, 'ways', saidOf(value), saidOf(swing.ways)), `movement.also[${at}].ways`, back);
    },
  };
}
