/** The live values of the brief of a toolpath: what each shows, what it may be, and what it puts in force. */
import type { Joint } from '../../core/design/joint.ts';
import type { JudgedPlace } from '../../core/inspect/toolpath/judgedPlace.ts';
import type { Place } from '../../core/inspect/toolpath/place.ts';
import { TOOLPATH_LIMITS, type Against, type ToolpathValues } from '../../store/toolpaths.ts';
import type { ChoiceSpec } from '../controls/ChoiceField.tsx';
import { stepIn } from '../controls/settle.ts';
import type { ValueSpec } from '../controls/valueSpec.ts';
import { sayValue, shownNumber, suffixOf } from '../joints/briefValues.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { NO_JOINT, placeName, TOOLPATH_HINTS, TOOLPATH_LABELS, TOOLPATH_SAID } from '../text/toolpathText.ts';
import { heldJoint } from './heldAgainst.ts';
import { lookAt } from './lookAt.ts';

export interface BriefOfToolpath {
  readonly values: ToolpathValues;
  readonly unit: LengthUnit;
  readonly change: (values: ToolpathValues, said: string, gesture?: string) => void;
}

/** The two that are sold; others are typed [mm]. */
const SOLD = [1.75, 2.85] as const;
const DIAMETER_STEP = 0.05;
const THICKEST_STEP = 0.2;

/** From one that is sold straight to the other. */
function diameterStep(value: number, up: boolean): number {
  const next = up ? SOLD.find((one) => one > value + 1e-9) : SOLD.findLast((one) => one < value - 1e-9);
  return next === undefined ? DIAMETER_STEP : Math.abs(next - value);
}

interface Named {
  readonly name: 'diameter' | 'thickest';
  readonly value: number;
  readonly step: (value: number, up: boolean) => number;
}

function lengthSpec({ name, value, step }: Named, { values, unit, change }: BriefOfToolpath): ValueSpec {
  const field = { kind: 'length', value, least: 2 } as const;
  const label = TOOLPATH_LABELS[name];
  const say = (one: number) => sayValue(field, one, unit);
  const suffix = suffixOf(field, unit);
  const { min, max } = TOOLPATH_LIMITS[name];
  return {
    key: name,
    label,
    kind: 'length',
    unit,
    value,
    say,
    suffix,
    step,
    min,
    max,
    shownNumber: shownNumber(field, unit),
    figure: say(value),
    hint: TOOLPATH_HINTS[name](`${say(value + step(value, true))}${suffix}`),
    take: (next, was, run) => {
      if (!(next >= min * (1 - 1e-9) && next <= max * (1 + 1e-9))) {
        return `${label} may be ${say(min)} to ${say(max)}${suffix}.`;
      }
      change({ ...values, [name]: next }, TOOLPATH_SAID[name](`${say(next)}${suffix}`, say(was)), run);
      return undefined;
    },
  };
}

/** `read`: what the file was read with, where the user has said nothing. */
export function diameterSpec(of: BriefOfToolpath, read: number): ValueSpec {
  return lengthSpec({ name: 'diameter', value: of.values.diameter ?? read, step: diameterStep }, of);
}

export function thickestSpec(of: BriefOfToolpath): ValueSpec {
  const step = () => stepIn(of.unit, THICKEST_STEP);
  return lengthSpec({ name: 'thickest', value: of.values.thickest, step }, of);
}

export function sectionSpec(judged: readonly JudgedPlace[], chosen: Place): ChoiceSpec {
  return {
    key: 'section',
    label: TOOLPATH_LABELS.section,
    value: String(chosen.number),
    options: judged.map(({ place }) => ({ value: String(place.number), text: placeName(place) })),
    take: (value) => {
      lookAt(judged, Number(value));
      return undefined;
    },
  };
}

export function againstSpec(place: Place, joints: readonly Joint[], { values, change }: BriefOfToolpath): ChoiceSpec {
  const held = heldJoint(place, values, joints);
  const nameOf = (id: string) => joints.find((joint) => joint.id === id)?.name ?? NO_JOINT;
  return {
    key: 'against',
    label: TOOLPATH_LABELS.against,
    value: held?.id ?? '',
    options: [...joints.map(({ id, name }) => ({ value: id, text: name })), { value: '', text: NO_JOINT }],
    take: (id) => {
      const against: Against = id === '' ? 'file' : { joint: id };
      const next = { ...values, against: { ...values.against, [place.number]: against } };
      change(next, TOOLPATH_SAID.against(place.number, nameOf(id), held?.name ?? NO_JOINT));
      return undefined;
    },
  };
}
