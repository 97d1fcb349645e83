/** Turns the sentence of a brief into text, value fields and choices, each of which knows how to change the joint. */
import { leastOf, type Joint } from '../../core/design/joint.ts';
import { findDrive } from '../../core/flexures/drives.ts';
import type { FlexureFamily } from '../../core/flexures/family.ts';
import type { ChoiceSpec } from '../controls/ChoiceField.tsx';
import type { ValueSpec } from '../controls/valueSpec.ts';
import {
  AMOUNT_LABELS,
  backWithIt,
  changedText,
  chosenText,
  hintText,
  LABELS,
  type BriefChoice,
  type BriefValue,
} from '../text/briefText.ts';
import { setAmount, type Measure } from '../text/amountText.ts';
import { kindText } from '../text/kindText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { briefOptions } from './briefChoices.ts';
import { briefField, sayValue, shownNumber, stepOf, suffixOf } from './briefValues.ts';

export interface BriefOf {
  readonly joint: Joint;
  readonly family: FlexureFamily;
  readonly unit: LengthUnit;
  /** Puts a joint in force, or says why it cannot be; `path` and `label` are those of the field that asks. */
  readonly put: (next: Joint, said: string, path: string, label: string, run?: string) => string | undefined;
}

export type BriefPart =
  | { readonly is: 'text'; readonly text: string }
  | { readonly is: 'value'; readonly spec: ValueSpec; readonly stop: string }
  | { readonly is: 'choice'; readonly spec: ChoiceSpec; readonly stop: string };

const CHOICE_NAMES: readonly string[] = [
  'drive',
  'ways',
  'filament',
  'lying',
  'held',
  'stays',
  'chance',
  'effort',
  'fitRule',
];

function isChoice(name: string, { family }: BriefOf): name is BriefChoice {
  return CHOICE_NAMES.includes(name) || kindText(family.id).choices?.[name.replace('sizes.', '')] !== undefined;
}

function measureOf({ joint, family }: BriefOf): Measure {
  return findDrive(family, joint.movement.drive)?.measure ?? 'turn';
}

function labelOf(name: BriefValue | BriefChoice, of: BriefOf): string {
  if (name === 'amount') return AMOUNT_LABELS[measureOf(of)];
  const sizes = kindText(of.joint.family).sizes;
  const size = of.family.roles[name as keyof FlexureFamily['roles']] ?? name.replace('sizes.', '');
  return sizes[size] ?? LABELS[name as keyof typeof LABELS];
}

function valueSpec(name: BriefValue, of: BriefOf): ValueSpec {
  const { joint, family, unit } = of;
  const field = briefField(name, joint, family);
  const label = labelOf(name, of);
  const suffix = suffixOf(field, unit);
  const say = (value: number) => sayValue(field, value, unit);
  const step = stepOf(name, field, unit);
  return {
    key: name,
    label,
    kind: field.kind,
    unit,
    value: field.value,
    say,
    shownNumber: shownNumber(field, unit),
    figure: say(field.value),
    suffix,
    hint: hintText(name, `${say(step(field.value, true))}${suffix}`),
    step,
    min: field.min,
    max: field.max,
    take: (value, was, run) => {
      const said = { ...changeOf(of, label), now: `${say(value)}${suffix}`, was: say(was), count: value };
      const next = field.with(value);
      return of.put(next, `${changedText(name, said)}${drawnAlong(name, of, next)}`, field.path, label, run);
    },
  };
}

/** What else an amount has changed: how far back it comes. */
function drawnAlong(name: BriefValue, { joint, unit, ...of }: BriefOf, { movement }: Joint): string {
  if (name !== 'amount' || movement.least === joint.movement.least) return '';
  return backWithIt(setAmount(leastOf(movement), measureOf({ joint, unit, ...of }), unit));
}

function changeOf(of: BriefOf, label: string) {
  return { label, kind: kindText(of.joint.family), measure: measureOf(of) };
}

function choiceSpec(name: BriefChoice, of: BriefOf): ChoiceSpec {
  const { path, value, options, ...choice } = briefOptions(name, of);
  const label = labelOf(name, of);
  const textOf = (chosen: string) => {
    const option = options.find(({ value: one }) => one === chosen);
    return option?.said ?? option?.text ?? chosen;
  };
  return {
    key: name,
    label,
    value,
    options,
    take: (next) => {
      const said = { ...changeOf(of, label), now: textOf(next), was: textOf(value), count: 0 };
      const text = name.startsWith('sizes.') ? chosenText(said.now, said.was) : changedText(name, said);
      return of.put(choice.with(next), text, path, label);
    },
  };
}

/** Words of the sentence that follow the values. */
function wordsFor(name: string, of: BriefOf): string | undefined {
  const { joint, family } = of;
  if (name === 'told') return kindText(family.id).told?.(joint.sizes, joint.movement.amount, of.unit) ?? '';
  if (name.startsWith('s.')) return joint.sizes[name.slice('s.'.length)] === 1 ? '' : 's';
  if (name === 'by') return measureOf(of) === 'turn' ? '' : ' by';
  if (name === 'drive' && family.drives.length === 1) return kindText(family.id).drives[joint.movement.drive];
  if (name === 'layers') return joint.sizes[family.roles.count] === 1 ? 'layer' : 'layers';
  if (name === 'sharing') return joint.sizes[family.roles.inRow ?? ''] === 1 ? '' : ', sharing the angle';
  return undefined;
}

const FIELD = /\{([\w.]+)\}/;
/** A comma that follows a field belongs to it, or it could begin a line. */
const LEADING_STOP = /^[.,:;]+/;

/** What is a choice may ask for a value after it: a wish for the effort, and a swing that comes back only so far. */
function withValues(template: string, { joint: { movement } }: BriefOf): string {
  return template
    .replaceAll('{wish}', movement.effortAtMost === undefined ? '{effort}' : '{effort} {effortAtMost}')
    .replaceAll('{ways}', movement.ways === 'between' ? '{ways} {least}' : '{ways}');
}

/** A sentence with `{name}` in the place of its fields, as text and fields. */
export function briefParts(template: string, of: BriefOf): readonly BriefPart[] {
  const parts = rawParts(withValues(template, of), of);
  return parts.map((part, at): BriefPart => {
    const [before, next] = [parts[at - 1], parts[at + 1]];
    if (part.is !== 'text')
      return next?.is === 'text' ? { ...part, stop: LEADING_STOP.exec(next.text)?.[0] ?? '' } : part;
    return before === undefined || before.is === 'text' ? part : { ...part, text: part.text.replace(LEADING_STOP, '') };
  });
}

const capital = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** A choice that begins the sentence begins large. */
function capitalised(spec: ChoiceSpec): ChoiceSpec {
  return { ...spec, options: spec.options.map(({ value, text }) => ({ value, text: capital(text) })) };
}

function rawParts(template: string, of: BriefOf): readonly BriefPart[] {
  return template.split(FIELD).map((piece, at): BriefPart => {
    if (at % 2 === 0) return { is: 'text', text: piece };
    const begins = at === 1 && template.startsWith('{');
    const words = wordsFor(piece, of);
    if (words !== undefined) return { is: 'text', text: begins ? capital(words) : words };
    if (isChoice(piece, of)) {
      const spec = choiceSpec(piece, of);
      return { is: 'choice', spec: begins ? capitalised(spec) : spec, stop: '' };
    }
    return { is: 'value', spec: valueSpec(piece as BriefValue, of), stop: '' };
  });
}
