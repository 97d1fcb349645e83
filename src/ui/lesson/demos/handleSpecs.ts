/** Handles of a demonstration as value fields and choices of its sentence. */
import type { Handle, Values } from '../../../core/lesson/demos/demo.ts';
import { allowed } from '../../../core/lesson/demos/handles.ts';
import { asRad, degrees } from '../../../core/units.ts';
import type { ChoiceSpec } from '../../controls/ChoiceField.tsx';
import type { ValueSpec } from '../../controls/valueSpec.ts';
import { lengthFigure, MM_PER_INCH, NO_BREAK, unitAfter, type LengthUnit } from '../../text/numbers.ts';
import { HANDLE_HINT, optionText, outOfRange } from '../../text/lessonDemoText.ts';

export interface HandleOf {
  readonly handle: Handle;
  readonly label: string;
  readonly value: number;
  readonly unit: LengthUnit;
  readonly onMove: (value: number) => void;
}

function suffixOf({ kind }: Handle, unit: LengthUnit): string {
  if (kind === 'length') return unitAfter(unit);
  if (kind === 'angle') return '°';
  if (kind === 'scale') return `${NO_BREAK}times`;
  return kind === 'share' ? `${NO_BREAK}%` : '';
}

/** The bare figure, in the unit that is shown. */
function figureOf({ kind }: Handle, value: number, unit: LengthUnit): string {
  if (kind === 'length') return lengthFigure(value, unit);
  if (kind === 'angle') return String(Number(degrees(asRad(value)).toFixed(1)));
  if (kind === 'scale') return value.toFixed(2);
  return kind === 'share' ? String(Math.round(100 * value)) : String(value);
}

/** The value in words: “12.00 mm”, “40°”, “ASA”. */
export function valueText(handle: Handle, value: number, unit: LengthUnit): string {
  if (handle.kind === 'choice') return optionText(handle.options?.[value] ?? '');
  return `${figureOf(handle, value, unit)}${suffixOf(handle, unit)}`;
}

/** The next whole step up or down. */
export function stepped(handle: Handle, value: number, up: boolean): number {
  const steps = (value - handle.min) / handle.step;
  const next = up ? Math.floor(steps + 1e-6) + 1 : Math.ceil(steps - 1e-6) - 1;
  return allowed(handle, handle.min + next * handle.step);
}

function shownNumber({ kind }: Handle, value: number, unit: LengthUnit): number {
  if (kind === 'angle') return degrees(asRad(value));
  if (kind === 'share') return 100 * value;
  return kind === 'length' && unit === 'inch' ? value / MM_PER_INCH : value;
}

export function valueSpec({ handle, label, value, unit, onMove }: HandleOf): ValueSpec {
  const say = (one: number) => figureOf(handle, one, unit);
  const [low, high] = [handle.min, handle.max].map((end) => valueText(handle, end, unit));
  return {
    key: handle.key,
    label,
    kind: handle.kind === 'choice' ? 'count' : handle.kind,
    unit,
    value,
    say,
    shownNumber: shownNumber(handle, value, unit),
    figure: say(value),
    suffix: suffixOf(handle, unit),
    hint: HANDLE_HINT,
    step: (from, up) => Math.abs(stepped(handle, from, up) - from),
    min: handle.min,
    max: handle.max,
    take: (next) => {
      // Inches of the very end come back a hair past it.
      const isIn = next >= handle.min * (1 - 1e-4) && next <= handle.max * (1 + 1e-4);
      if (!isIn) return outOfRange(label, low ?? '', high ?? '');
      onMove(allowed(handle, next));
      return undefined;
    },
  };
}

export function choiceSpec({ handle, label, value, onMove }: HandleOf): ChoiceSpec {
  return {
    key: handle.key,
    label,
    value: String(value),
    options: (handle.options ?? []).map((option, i) => ({ value: String(i), text: optionText(option) })),
    take: (next) => {
      onMove(allowed(handle, Number(next)));
      return undefined;
    },
  };
}

/** Where every handle stands, one of them moved. */
export function moved(values: Values, key: string, value: number): Values {
  return { ...values, [key]: value };
}
