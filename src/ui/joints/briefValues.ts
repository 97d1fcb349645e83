/** The value fields of a brief: which part of the joint each holds, its limits, and how its value is said. */
import { leastOf, type Joint } from '../../core/design/joint.ts';
import { MOVEMENT_LIMITS } from '../../core/design/movementLimits.ts';
import { MEASURED_THICKNESS_LIMITS } from '../../core/design/understand.ts';
import type { FlexureFamily, Parameter } from '../../core/flexures/family.ts';
import { PROFILE_LIMITS } from '../../core/print/checkProfile.ts';
import { findDrive } from '../../core/flexures/drives.ts';
import { asRad, degrees } from '../../core/units.ts';
import type { QuantityKind } from '../controls/quantity.ts';
import { cyclesStep, effortStep, stepIn } from '../controls/settle.ts';
import { EFFORT_UNIT } from '../text/amountText.ts';
import type { BriefValue, NamedSize, ProfileField, SizeRole } from '../text/briefText.ts';
import { grouped, lengthFigure, MINUS, NO_BREAK, setLength, unitAfter, type LengthUnit } from '../text/numbers.ts';
import { movedBy } from '../../core/design/swing.ts';

/** One value of a joint: where it is, what it may be. */
export interface BriefField {
  readonly kind: QuantityKind;
  /** Path as problems name it. */
  readonly path: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  /** Decimals that are shown even when they are 0, in mm. */
  readonly least: number;
  readonly with: (value: number) => Joint;
}

const SIZE_ROLES: readonly BriefValue[] = ['count', 'length', 'depth', 'fillet', 'pad', 'inRow', 'sideBySide'];
const PROFILE_FIELDS: readonly BriefValue[] = ['nozzle', 'lineWidth', 'layerHeight', 'firstLayerHeight'];
/** Lengths that are usually round are said without idle decimals. */
const LEAST: Partial<Readonly<Record<BriefValue, number>>> = { depth: 0, pad: 0, nozzle: 1 };
/** Calipers read to this [mm]. */
const CALIPER_STEP = 0.01;

/** Limits of a size of a family, by its name. */
export function sizeLimits(family: FlexureFamily, name: string): Parameter {
  const all: Readonly<Record<string, Parameter>> = family.parameters;
  const found = all[name];
  if (!found) throw new RangeError(`${family.id} has no size ${name}`);
  return found;
}

/** A ratio that cannot pass one is a share of something, said in per cent. */
function quantityOf({ kind, max }: Parameter): QuantityKind {
  return kind === 'ratio' ? (max <= 1 ? 'share' : 'number') : kind;
}

function sizeField(name: string, joint: Joint, family: FlexureFamily, least: number): BriefField {
  const parameter = sizeLimits(family, name);
  const { min, max, step } = parameter;
  return {
    kind: quantityOf(parameter),
    path: `sizes.${name}`,
    value: joint.sizes[name] ?? Number.NaN,
    min,
    max,
    step,
    least,
    with: (value) => ({ ...joint, sizes: { ...joint.sizes, [name]: value } }),
  };
}

function profileField(name: ProfileField, joint: Joint): BriefField {
  const { min, max, step } = PROFILE_LIMITS[name];
  return {
    kind: 'length',
    path: `profile.${name}`,
    value: joint.profile[name],
    min,
    max,
    step,
    least: LEAST[name] ?? 2,
    with: (value) => ({ ...joint, profile: { ...joint.profile, [name]: value } }),
  };
}

type Other = 'amount' | 'least' | 'cycles' | 'thickness' | 'effortAtMost';

const OTHERS: Readonly<Record<Other, (joint: Joint, family: FlexureFamily) => BriefField>> = {
  amount: (joint, family) => {
    const { measure, min, max, step } = findDrive(family, joint.movement.drive) ?? family.drives[0];
    return {
      kind: measure === 'turn' ? 'angle' : 'length',
      path: 'movement.amount',
      value: joint.movement.amount,
      min,
      max,
      step,
      least: 0,
      with: (value) => ({ ...joint, movement: movedBy(joint.movement, value, step) }),
    };
  },
  least: (joint, family) => {
    const { amount } = joint.movement;
    const field = OTHERS.amount(joint, family);
    return {
      ...field,
      path: 'movement.least',
      value: leastOf(joint.movement),
      min: -amount,
      max: Math.max(-amount, amount - field.step),
      with: (value) => ({ ...joint, movement: { ...joint.movement, least: value } }),
    };
  },
  cycles: (joint) => ({
    kind: 'count',
    path: 'movement.cycles',
    value: joint.movement.cycles,
    ...MOVEMENT_LIMITS.cycles,
    step: 1,
    least: 0,
    with: (value) => ({ ...joint, movement: { ...joint.movement, cycles: value } }),
  }),
  effortAtMost: (joint, family) => ({
    kind: findDrive(family, joint.movement.drive)?.measure === 'travel' ? 'force' : 'torque',
    path: 'movement.effortAtMost',
    value: joint.movement.effortAtMost ?? Number.NaN,
    ...MOVEMENT_LIMITS.effortAtMost,
    step: 1,
    least: 0,
    with: (value) => ({ ...joint, movement: { ...joint.movement, effortAtMost: value } }),
  }),
  thickness: (joint) => ({
    kind: 'length',
    path: 'measuredThickness',
    value: joint.measuredThickness ?? Number.NaN,
    ...MEASURED_THICKNESS_LIMITS,
    step: CALIPER_STEP,
    least: 2,
    with: (value) => ({ ...joint, measuredThickness: value }),
  }),
};

const isRole = (name: BriefValue): name is SizeRole => SIZE_ROLES.includes(name);
const isNamed = (name: BriefValue): name is NamedSize => name.startsWith('sizes.');
const isProfile = (name: BriefValue): name is ProfileField => PROFILE_FIELDS.includes(name);

/** The part of a joint that a value field holds. */
export function briefField(name: BriefValue, joint: Joint, family: FlexureFamily): BriefField {
  if (isRole(name)) return sizeField(family.roles[name] ?? name, joint, family, LEAST[name] ?? 2);
  if (isNamed(name)) {
    const size = name.slice('sizes.'.length);
    return sizeField(size, joint, family, LEAST[size as BriefValue] ?? 2);
  }
  if (isProfile(name)) return profileField(name, joint);
  return OTHERS[name](joint, family);
}

/** A value as its field shows it, without the unit. */
export function sayValue(field: Pick<BriefField, 'kind' | 'least'>, value: number, unit: LengthUnit): string {
  return figureOf(field, value, unit).replace('-', MINUS);
}

function figureOf(field: Pick<BriefField, 'kind' | 'least'>, value: number, unit: LengthUnit): string {
  if (field.kind === 'length') return setLength(value, unit, unit === 'mm' ? field.least : 3);
  if (field.kind === 'angle') return String(Number(degrees(asRad(value)).toFixed(2)));
  if (field.kind === 'share') return String(Number((value * 100).toFixed(1)));
  return field.kind === 'count' ? grouped(value) : String(Number(value.toFixed(3)));
}

const SUFFIXES: Partial<Readonly<Record<QuantityKind, string>>> = {
  angle: '°',
  share: `${NO_BREAK}%`,
  force: `${NO_BREAK}${EFFORT_UNIT.travel}`,
  torque: `${NO_BREAK}${EFFORT_UNIT.turn}`,
};

export function suffixOf(field: Pick<BriefField, 'kind'>, unit: LengthUnit): string {
  if (field.kind === 'length') return unitAfter(unit);
  return SUFFIXES[field.kind] ?? '';
}

/** The value in the unit that is shown. */
export function shownNumber(field: Pick<BriefField, 'kind' | 'value'>, unit: LengthUnit): number {
  if (field.kind === 'length') return Number(lengthFigure(field.value, unit, 4));
  if (field.kind === 'share') return Number((field.value * 100).toFixed(1));
  return field.kind === 'angle' ? Number(degrees(asRad(field.value)).toFixed(2)) : field.value;
}

/** How far one press of an arrow key goes from a value. */
export function stepOf(name: BriefValue, field: BriefField, unit: LengthUnit): (value: number, up: boolean) => number {
  if (name === 'cycles') return cyclesStep;
  if (name === 'effortAtMost') return effortStep;
  const step = field.kind === 'length' ? stepIn(unit, field.step) : field.step;
  return () => step;
}
