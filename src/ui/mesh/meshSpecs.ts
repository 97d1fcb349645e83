/** The live values of the brief of a part that is checked: what each shows, what it may be, and what it puts in force. */
import { MOVEMENT_LIMITS } from '../../core/design/movementLimits.ts';
import { PLATE_UPS, type PlateUp } from '../../core/inspect/judged.ts';
import { everyFilament } from '../../core/material/shelf.ts';
import { checkProfile, PROFILE_LIMITS, type ProfileLength } from '../../core/print/checkProfile.ts';
import { asRad, radians } from '../../core/units.ts';
import { CHECK_LIMITS, type CheckValues } from '../../store/checking.ts';
import type { ChoiceSpec } from '../controls/ChoiceField.tsx';
import type { QuantityKind } from '../controls/quantity.ts';
import { cyclesStep, stepIn } from '../controls/settle.ts';
import type { ValueSpec } from '../controls/valueSpec.ts';
import { sayValue, shownNumber, suffixOf } from '../joints/briefValues.ts';
import { HELD, waysText } from '../text/briefText.ts';
import { PLATE_UP_TEXT } from '../text/inspectText.ts';
import { BRIEF_HINTS, BRIEF_LABELS, BRIEF_SAID } from '../text/meshText.ts';
import { inHundred, type LengthUnit } from '../text/numbers.ts';
import { problemSaid } from '../text/problemSaid.ts';

export interface BriefOfPart {
  readonly values: CheckValues;
  readonly unit: LengthUnit;
  readonly change: (values: CheckValues, said: string, gesture?: string) => void;
}

export type PartValue = 'scale' | 'nozzle' | 'lineWidth' | 'layerHeight' | 'turn' | 'cycles' | 'thickest';

interface Field {
  readonly kind: QuantityKind;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly least: number;
  readonly step: (value: number, up: boolean) => number;
  readonly with: (value: number) => CheckValues;
}

const printed = (values: CheckValues, change: Partial<CheckValues['as']['profile']>): CheckValues => ({
  ...values,
  as: { ...values.as, profile: { ...values.as.profile, ...change } },
});
const asked = (values: CheckValues, change: Partial<CheckValues['asked']>): CheckValues => ({
  ...values,
  asked: { ...values.asked, ...change },
});

/** A first layer as high as the others stays so. */
function withLength(values: CheckValues, name: ProfileLength, value: number): CheckValues {
  const { layerHeight, firstLayerHeight } = values.as.profile;
  const isAlike = name === 'layerHeight' && layerHeight === firstLayerHeight;
  return printed(values, { [name]: value, ...(isAlike ? { firstLayerHeight: value } : {}) });
}

const length =
  (name: 'nozzle' | 'lineWidth' | 'layerHeight', least = 2) =>
  ({ values, unit }: BriefOfPart): Field => ({
    kind: 'length',
    value: values.as.profile[name],
    min: PROFILE_LIMITS[name].min,
    max: PROFILE_LIMITS[name].max,
    least,
    step: () => stepIn(unit, PROFILE_LIMITS[name].step),
    with: (value) => withLength(values, name, value),
  });

/** One press of an arrow key on the scale, and on the thickest that is looked for [mm]. */
const SCALE_STEP = 0.05;
const THICKEST_STEP = 0.2;

const FIELDS: Readonly<Record<PartValue, (of: BriefOfPart) => Field>> = {
  scale: ({ values }) => ({
    kind: 'scale',
    value: values.as.scale,
    ...CHECK_LIMITS.scale,
    least: 2,
    step: () => SCALE_STEP,
    with: (scale) => ({ ...values, as: { ...values.as, scale } }),
  }),
  nozzle: length('nozzle', 1),
  lineWidth: length('lineWidth'),
  layerHeight: length('layerHeight'),
  turn: ({ values }) => ({
    kind: 'angle',
    value: values.asked.turn,
    ...CHECK_LIMITS.turn,
    least: 0,
    step: () => radians(1),
    with: (turn) => asked(values, { turn: asRad(turn) }),
  }),
  cycles: ({ values }) => ({
    kind: 'count',
    value: values.asked.cycles,
    ...MOVEMENT_LIMITS.cycles,
    least: 0,
    step: cyclesStep,
    with: (cycles) => asked(values, { cycles }),
  }),
  thickest: ({ values, unit }) => ({
    kind: 'length',
    value: values.thickest,
    ...CHECK_LIMITS.thickest,
    least: 2,
    step: () => stepIn(unit, THICKEST_STEP),
    with: (thickest) => ({ ...values, thickest }),
  }),
};

/** A scale keeps two decimals in sight: 1.00, 1.333. */
function sayScale(value: number): string {
  const text = value.toFixed(3);
  return text.endsWith('0') ? text.slice(0, -1) : text;
}

const isOutside = ({ min, max }: Field, value: number) => !(value >= min * (1 - 1e-9) && value <= max * (1 + 1e-9));

export function partValueSpec(name: PartValue, of: BriefOfPart): ValueSpec {
  const field = FIELDS[name](of);
  const { unit } = of;
  const say = name === 'scale' ? sayScale : (value: number) => sayValue(field, value, unit);
  const suffix = name === 'scale' ? '×' : suffixOf(field, unit);
  const label = BRIEF_LABELS[name];
  return {
    key: name,
    label,
    kind: field.kind,
    unit,
    value: field.value,
    say,
    shownNumber: name === 'scale' ? Number(sayScale(field.value)) : shownNumber(field, unit),
    figure: say(field.value),
    suffix,
    hint: BRIEF_HINTS[name](`${say(field.step(field.value, true))}${suffix}`),
    step: field.step,
    min: field.min,
    max: field.max,
    take: (value, was, run) => {
      if (isOutside(field, value)) return `${label} may be ${say(field.min)} to ${say(field.max)}${suffix}.`;
      const next = field.with(value);
      const [problem] = checkProfile(next.as.profile).problems;
      if (problem) return problemSaid(problem, unit, label);
      of.change(next, BRIEF_SAID[name](`${say(value)}${suffix}`, say(was)), run);
      return undefined;
    },
  };
}

export type PartChoice = 'filament' | 'up' | 'ways' | 'held' | 'chance';

interface Options {
  readonly value: string;
  readonly options: ChoiceSpec['options'];
  readonly with: (value: string) => CheckValues;
}

const CHANCES: readonly number[] = [0.5, 0.8, 0.9, 0.95, 0.99];

const CHOICES: Readonly<Record<PartChoice, (values: CheckValues) => Options>> = {
  filament: (values) => ({
    value: values.as.profile.filament,
    options: everyFilament().map(({ id, name }) => ({ value: id, text: name })),
    with: (filament) => printed(values, { filament }),
  }),
  up: (values) => ({
    value: values.as.up,
    options: PLATE_UPS.map((value) => ({ value, text: PLATE_UP_TEXT[value] })),
    with: (up) => ({ ...values, as: { ...values.as, up: up as PlateUp } }),
  }),
  ways: (values) => ({
    value: values.asked.ways,
    options: (['one way', 'both ways'] as const).map((value) => ({ value, text: waysText(value) })),
    with: (ways) => asked(values, { ways: ways as 'one way' }),
  }),
  held: (values) => ({
    value: values.asked.held ? 'held' : 'released',
    options: (['released', 'held'] as const).map((value) => ({ value, text: HELD[value] })),
    with: (value) => asked(values, { held: value === 'held' }),
  }),
  chance: (values) => ({
    value: String(values.asked.chance),
    options: [...new Set([...CHANCES, values.asked.chance])]
      .toSorted((a, b) => a - b)
      .map((value) => ({ value: String(value), text: `${inHundred(value)} in 100` })),
    with: (chance) => asked(values, { chance: Number(chance) }),
  }),
};

export function partChoiceSpec(name: PartChoice, { values, change }: BriefOfPart): ChoiceSpec {
  const { value, options, with: withIt } = CHOICES[name](values);
  const textOf = (one: string) => options.find((option) => option.value === one)?.text ?? one;
  return {
    key: name,
    label: BRIEF_LABELS[name],
    value,
    options,
    take: (next) => {
      change(withIt(next), BRIEF_SAID[name](textOf(next), textOf(value)));
      return undefined;
    },
  };
}
