/** The value fields of a brief: which part of the joint each holds, its limits, and how its value is said. */
import type { Joint } from '../../core/design/joint.ts';
import { MOVEMENT_LIMITS } from '../../core/design/movementLimits.ts';
import { MEASURED_THICKNESS_LIMITS } from '../../core/design/understand.ts';
import type { FlexureFamily, Parameter } from '../../core/flexures/family.ts';
import { PROFILE_LIMITS } from '../../core/print/checkProfile.ts';
import { asRad, degrees, radians } from '../../core/units.ts';
import type { QuantityKind } from '../controls/quantity.ts';
import { cyclesStep, stepIn } from '../controls/settle.ts';
import type { BriefValue, ProfileField, SizeRole } from '../text/briefText.ts';
import { grouped, lengthFigure, setLength, unitAfter, type LengthUnit } from '../text/numbers.ts';

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

const SIZE_ROLES: readonly BriefValue[] = ['count', 'length', 'depth', 'fillet', 'pad', 'inRow'];
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

function sizeField(role: SizeRole, joint: Joint, family: FlexureFamily): BriefField {
  const name = family.roles[role];
  const parameter = sizeLimits(family, name);
  const { kind, min, max, step } = parameter;
  return {
    kind,
    path: `sizes.${name}`,
    value: joint.sizes[name] ?? Number.NaN,
    min,
    max,
    step,
    least: LEAST[role] ?? 2,
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

const OTHERS: Readonly<Record<'angle' | 'cycles' | 'thickness', (joint: Joint) => BriefField>> = {
  angle: (joint) => ({
    kind: 'angle',
    path: 'movement.angle',
    value: joint.movement.angle,
    ...MOVEMENT_LIMITS.angle,
    step: radians(1),
    least: 0,
    with: (value) => ({ ...joint, movement: { ...joint.movement, angle: asRad(value) } }),
  }),
  cycles: (joint) => ({
    kind: 'count',
    path: 'movement.cycles',
    value: joint.movement.cycles,
    ...MOVEMENT_LIMITS.cycles,
    step: 1,
    least: 0,
    with: (value) => ({ ...joint, movement: { ...joint.movement, cycles: value } }),
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
const isProfile = (name: BriefValue): name is ProfileField => PROFILE_FIELDS.includes(name);

/** The part of a joint that a value field holds. */
export function briefField(name: BriefValue, joint: Joint, family: FlexureFamily): BriefField {
  if (isRole(name)) return sizeField(name, joint, family);
  if (isProfile(name)) return profileField(name, joint);
  return OTHERS[name](joint);
}

/** A value as its field shows it, without the unit. */
export function sayValue(field: BriefField, value: number, unit: LengthUnit): string {
  if (field.kind === 'length') return setLength(value, unit, unit === 'mm' ? field.least : 3);
  if (field.kind === 'angle') return String(Number(degrees(asRad(value)).toFixed(2)));
  return grouped(value);
}

export function suffixOf(field: BriefField, unit: LengthUnit): string {
  if (field.kind === 'length') return unitAfter(unit);
  return field.kind === 'angle' ? '°' : '';
}

/** The value in the unit that is shown. */
export function shownNumber(field: BriefField, unit: LengthUnit): number {
  if (field.kind === 'length') return Number(lengthFigure(field.value, unit, 4));
  return field.kind === 'angle' ? Number(degrees(asRad(field.value)).toFixed(2)) : field.value;
}

/** How far one press of an arrow key goes from a value. */
export function stepOf(name: BriefValue, field: BriefField, unit: LengthUnit): (value: number, up: boolean) => number {
  if (name === 'cycles') return cyclesStep;
  const step = field.kind === 'length' ? stepIn(unit, field.step) : field.step;
  return () => step;
}
