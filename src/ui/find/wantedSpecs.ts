/** The live values of the finder's sentence: what each shows, what it may be, and the brief that each makes. */
import { leastOf, WAYS, type Ways } from '../../core/design/joint.ts';
import { MOVEMENT_LIMITS } from '../../core/design/movementLimits.ts';
import { goingIn } from '../../core/design/swing.ts';
import { WANTED_LIMITS } from '../../core/find/checkWanted.ts';
import type { Wanted } from '../../core/find/wanted.ts';
import { PROFILE_LIMITS } from '../../core/print/checkProfile.ts';
import type { ChoiceSpec } from '../controls/ChoiceField.tsx';
import type { QuantityKind } from '../controls/quantity.ts';
import { cyclesStep, effortStep, stepIn } from '../controls/settle.ts';
import type { ValueSpec } from '../controls/valueSpec.ts';
import { sayValue, shownNumber, suffixOf } from '../joints/briefValues.ts';
import { STAYS, waysText } from '../text/briefText.ts';
import { EFFORT_WISH, SET_WISH, SUPPORTS, WANTED_HINTS, WANTED_LABELS } from '../text/findText.ts';
import { inHundred, type LengthUnit } from '../text/numbers.ts';
import {
  AMOUNT_STEP,
  effortWishOf,
  withAmount,
  withDepth,
  withEffortWish,
  withMovement,
  withSetWish,
  withStays,
  type EffortWish,
} from './wantedChange.ts';

export interface WantedOf {
  readonly wanted: Wanted;
  readonly unit: LengthUnit;
  /** Puts a brief in force, or says why it cannot be. */
  readonly put: (next: Wanted) => string | undefined;
}

export type WantedValue = keyof typeof WANTED_HINTS;

/** One value: where it is, what it may be. */
interface WantedField {
  readonly kind: QuantityKind;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number | ((value: number, up: boolean) => number);
  /** Decimals that are shown even when they are 0, in mm. */
  readonly least: number;
  readonly with: (value: number) => Wanted;
}

/** One press of an arrow key on a side of the room, and on a depth [mm]. */
const SIDE_STEP = 1;
const DEPTH_STEP = 0.5;

const amountKind = ({ measure }: Wanted): QuantityKind => (measure === 'turn' ? 'angle' : 'length');
const effortKind = ({ measure }: Wanted): QuantityKind => (measure === 'turn' ? 'torque' : 'force');

const side =
  (name: 'along' | 'across') =>
  (wanted: Wanted): WantedField => ({
    kind: 'length',
    value: wanted.room[name],
    ...WANTED_LIMITS[name],
    step: SIDE_STEP,
    least: 0,
    with: (value) => ({ ...wanted, room: { ...wanted.room, [name]: value } }),
  });

const printed =
  (name: 'lineWidth' | 'layerHeight') =>
  (wanted: Wanted): WantedField => ({
    kind: 'length',
    value: wanted.profile[name],
    ...PROFILE_LIMITS[name],
    least: 2,
    with: (value) => ({ ...wanted, profile: { ...wanted.profile, [name]: value } }),
  });

const FIELDS: Readonly<Record<WantedValue, (wanted: Wanted) => WantedField>> = {
  amount: (wanted) => ({
    kind: amountKind(wanted),
    value: wanted.movement.amount,
    min: AMOUNT_STEP[wanted.measure],
    max: WANTED_LIMITS.along.max,
    step: AMOUNT_STEP[wanted.measure],
    least: 0,
    with: (value) => withAmount(wanted, value),
  }),
  least: (wanted) => {
    const { amount } = wanted.movement;
    const step = AMOUNT_STEP[wanted.measure];
    return {
      kind: amountKind(wanted),
      value: leastOf(wanted.movement),
      min: -amount,
      max: Math.max(-amount, amount - step),
      step,
      least: 0,
      with: (value) => withMovement(wanted, { least: value }),
    };
  },
  cycles: (wanted) => ({
    kind: 'count',
    value: wanted.movement.cycles,
    ...MOVEMENT_LIMITS.cycles,
    step: cyclesStep,
    least: 0,
    with: (value) => withMovement(wanted, { cycles: value }),
  }),
  along: side('along'),
  across: side('across'),
  depth: (wanted) => ({
    kind: 'length',
    value: wanted.room.depth,
    ...WANTED_LIMITS.depth,
    step: DEPTH_STEP,
    least: 0,
    with: (value) => withDepth(wanted, value),
  }),
  depthAtLeast: (wanted) => ({
    kind: 'length',
    value: wanted.depthAtLeast,
    min: WANTED_LIMITS.depth.min,
    max: wanted.room.depth,
    step: DEPTH_STEP,
    least: 0,
    with: (value) => ({ ...wanted, depthAtLeast: value }),
  }),
  effortAtMost: (wanted) => ({
    kind: effortKind(wanted),
    value: wanted.movement.effortAtMost ?? Number.NaN,
    ...MOVEMENT_LIMITS.effortAtMost,
    step: effortStep,
    least: 0,
    with: (value) => withMovement(wanted, { effortAtMost: value }),
  }),
  effortAtLeast: (wanted) => ({
    kind: effortKind(wanted),
    value: wanted.effortAtLeast ?? Number.NaN,
    min: MOVEMENT_LIMITS.effortAtMost.min,
    max: wanted.movement.effortAtMost ?? MOVEMENT_LIMITS.effortAtMost.max,
    step: effortStep,
    least: 0,
    with: (value) => ({ ...wanted, effortAtLeast: value }),
  }),
  setAtMost: (wanted) => ({
    kind: amountKind(wanted),
    value: wanted.setAtMost ?? Number.NaN,
    min: WANTED_LIMITS.set.min * wanted.movement.amount,
    max: wanted.movement.amount,
    step: AMOUNT_STEP[wanted.measure],
    least: 0,
    with: (value) => ({ ...wanted, setAtMost: value }),
  }),
  lineWidth: printed('lineWidth'),
  layerHeight: printed('layerHeight'),
};

function labelOf(name: WantedValue, { measure }: Wanted): string {
  return name === 'amount' ? WANTED_LABELS.amount[measure] : WANTED_LABELS[name];
}

export function valueSpec(name: WantedValue, { wanted, unit, put }: WantedOf): ValueSpec {
  const field = FIELDS[name](wanted);
  const { kind, value, min, max } = field;
  const say = (shown: number) => sayValue(field, shown, unit);
  const suffix = suffixOf(field, unit);
  const { step: by } = field;
  const fixed = typeof by === 'number' && kind === 'length' ? stepIn(unit, by) : by;
  const step = typeof fixed === 'number' ? () => fixed : fixed;
  return {
    key: name,
    label: labelOf(name, wanted),
    kind,
    unit,
    value,
    say,
    shownNumber: shownNumber(field, unit),
    figure: say(value),
    suffix,
    hint: WANTED_HINTS[name](`${say(step(value, true))}${suffix}`),
    step,
    min,
    max,
    take: (next) => put(field.with(next)),
  };
}

type Options = ChoiceSpec['options'];

function choice(
  key: 'ways' | 'chance' | 'effort' | 'set' | 'stays' | 'supports',
  value: string,
  options: Options,
  take: ChoiceSpec['take'],
): ChoiceSpec {
  return { key, label: WANTED_LABELS[key], value, options, take };
}

const optionsOf = (words: Readonly<Record<string, string>>): Options =>
  Object.entries(words).map(([value, text]) => ({ value, text }));

const CHANCES: readonly number[] = [0.5, 0.8, 0.9, 0.95, 0.99];

export const CHOICES: Readonly<
  Record<'ways' | 'chance' | 'effort' | 'set' | 'stays' | 'supports', (of: WantedOf) => ChoiceSpec>
> = {
  ways: ({ wanted, put }) =>
    choice(
      'ways',
      wanted.movement.ways,
      WAYS.map((value) => ({ value, text: waysText(value) })),
      (value) => put({ ...wanted, movement: goingIn(wanted.movement, value as Ways) }),
    ),
  chance: ({ wanted, put }) => {
    const { chance } = wanted.movement;
    const all = [...new Set([...CHANCES, chance])].toSorted((a, b) => a - b);
    const options = all.map((value) => ({ value: String(value), text: `${inHundred(value)} in 100` }));
    return choice('chance', String(chance), options, (value) => put(withMovement(wanted, { chance: Number(value) })));
  },
  effort: ({ wanted, put }) =>
    choice('effort', effortWishOf(wanted), optionsOf(EFFORT_WISH), (value) =>
      put(withEffortWish(wanted, value as EffortWish)),
    ),
  set: ({ wanted, put }) =>
    choice('set', wanted.setAtMost === undefined ? 'any' : 'most', optionsOf(SET_WISH), (value) =>
      put(withSetWish(wanted, value === 'most')),
    ),
  stays: ({ wanted, put }) => {
    const { stays } = wanted.movement;
    const now = stays === undefined ? 'either' : stays ? 'stays' : 'back';
    return choice('stays', now, optionsOf(STAYS), (value) =>
      put(withStays(wanted, value === 'either' ? undefined : value === 'stays')),
    );
  },
  supports: ({ wanted, put }) =>
    choice('supports', wanted.supports ? 'with' : 'without', optionsOf(SUPPORTS), (value) =>
      put({ ...wanted, supports: value === 'with' }),
    ),
};
