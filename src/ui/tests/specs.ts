/** The live values of the sentence of a trial: what each shows, what it may be, and what it puts in force. */
import type { Lying } from '../../core/print/profile.ts';
import type { Bend, FlexTally, PullTally } from '../../core/material/tally.ts';
import { everyFilament } from '../../core/material/shelf.ts';
import { radians } from '../../core/units.ts';
import { useSession } from '../../store/session.ts';
import { TEST_LIMITS, useTests, withDoing, type Doing, type TestValues } from '../../store/tests.ts';
import type { Piece } from '../../core/coupons/piece.ts';
import type { ChoiceSpec } from '../controls/ChoiceField.tsx';
import type { QuantityKind } from '../controls/quantity.ts';
import { stepIn } from '../controls/settle.ts';
import type { ValueSpec } from '../controls/valueSpec.ts';
import { sayValue, shownNumber, suffixOf } from '../joints/briefValues.ts';
import { NO_BREAK, type LengthUnit } from '../text/numbers.ts';
import { PIECE_WORDS } from '../text/pieceText.ts';
import {
  DIRECTION_WORDS,
  DOING_WORDS,
  KNOWN_WORDS,
  LABELS,
  LYING_WORDS,
  spoolOption,
  TESTS,
  TESTS_SAID,
  WAY_WORDS,
  WAYS_WORDS,
} from '../text/testsText.ts';
import { asFilament } from './asked.ts';
import { asOnPiece, bentLike } from './fitted.ts';
import { isSpool, type Trial } from './trial.ts';

export interface NumberField {
  readonly key: string;
  readonly label: string;
  readonly kind: QuantityKind;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number | ((value: number, up: boolean) => number);
  readonly unit: LengthUnit;
  /** After figures that are no lengths or angles. */
  readonly after?: string;
  readonly least?: number;
  /** Puts a value that is within its limits in force. */
  readonly take: (value: number, now: string, was: string, run?: string) => string | undefined;
}

/** A field for any number of a trial or a tally. */
export function numberSpec(of: NumberField): ValueSpec {
  const { key, label, kind, value, min, max, unit, least = 2 } = of;
  const field = { kind, value, least } as const;
  const say = (one: number) => sayValue(field, one, unit);
  const suffix = of.after ?? suffixOf(field, unit);
  const step = (from: number, up: boolean) => {
    if (typeof of.step === 'function') return of.step(from, up);
    return kind === 'length' ? stepIn(unit, of.step) : of.step;
  };
  return {
    key,
    label,
    kind,
    unit,
    value,
    say,
    suffix,
    step,
    min,
    max,
    shownNumber: shownNumber(field, unit),
    figure: say(value),
    hint: TESTS_SAID.hint(`${say(Math.min(max, value + step(value, true)))}${suffix}`),
    take: (next, was, run) => {
      if (!(next >= min * (1 - 1e-9) && next <= max * (1 + 1e-9)))
        return TESTS_SAID.limits(label, say(min), say(max), suffix);
      return of.take(next, `${say(next)}${suffix}`, say(was), run);
    },
  };
}

export type Sized = Exclude<keyof typeof TEST_LIMITS, 'plate' | 'cycles'>;

const FIELDS: Readonly<Record<Sized, { kind: QuantityKind; step: number; after?: string; least?: number }>> = {
  strips: { kind: 'count', step: 1, after: '' },
  count: { kind: 'count', step: 1 },
  radius: { kind: 'length', step: 1, least: 0, after: '' },
  turn: { kind: 'angle', step: radians(5) },
  length: { kind: 'length', step: 1, least: 0 },
  depth: { kind: 'length', step: 1, least: 0 },
  grams: { kind: 'number', step: 5, after: `${NO_BREAK}g` },
  arm: { kind: 'length', step: 5, least: 0 },
  held: { kind: 'angle', step: radians(5) },
  hours: { kind: 'number', step: 1, after: `${NO_BREAK}h` },
  barWidth: { kind: 'length', step: 0.1, least: 0 },
  barThickness: { kind: 'length', step: 0.1, least: 0 },
  gaugeLength: { kind: 'length', step: 5, least: 0 },
  speed: { kind: 'number', step: 1, after: `${NO_BREAK}mm/min` },
};

/** A number of the sentence. */
export function sizedSpec(name: Sized, { values, countOf }: Trial, unit: LengthUnit): ValueSpec {
  const label = name === 'count' ? LABELS.count[countOf] : LABELS[name];
  const after =
    name === 'count' ? `${NO_BREAK}${values.count === 1 ? countOf.slice(0, -1) : countOf}` : FIELDS[name].after;
  return numberSpec({
    key: name,
    label,
    ...FIELDS[name],
    ...TEST_LIMITS[name],
    ...(after !== undefined && { after }),
    value: values[name],
    unit,
    take: (value) => {
      useTests.getState().set({ [name]: value });
      return undefined;
    },
  });
}

export function plateSpec(side: 'x' | 'y', { values }: Trial, unit: LengthUnit): ValueSpec {
  return numberSpec({
    key: `plate.${side}`,
    label: side === 'x' ? LABELS.plateX : LABELS.plateY,
    kind: 'length',
    step: 10,
    least: 0,
    ...TEST_LIMITS.plate,
    value: values.plate[side],
    unit,
    ...(side === 'x' && { after: '' }),
    take: (value) => {
      useTests.getState().set({ plate: { ...values.plate, [side]: value } });
      return undefined;
    },
  });
}

/** Nothing that is offered is refused. */
const putting = (change: (value: string) => Partial<TestValues>) => (value: string) => {
  useTests.getState().set(change(value));
  return undefined;
};

const options = <T extends string>(words: Readonly<Record<T, string>>, all = Object.keys(words) as T[]) =>
  all.map((value) => ({ value, text: words[value] }));

export function filamentSpec({ row }: Trial): ChoiceSpec {
  const rows = everyFilament().filter(({ printable }) => printable);
  return {
    key: 'filament',
    label: LABELS.filament,
    value: row.id,
    options: rows.map((one) => ({
      value: one.id,
      text: isSpool(one) && one.id !== row.id ? spoolOption(one.name, one.own.tests.tallies.length) : one.name,
    })),
    take: putting(asFilament),
  };
}

export function jointSpec({ joint }: Trial): ChoiceSpec {
  const { joints } = useSession.getState().part;
  return {
    key: 'joint',
    label: LABELS.joint,
    value: joint?.id ?? '',
    options: joint ? joints.map(({ id, name }) => ({ value: id, text: name })) : [{ value: '', text: TESTS.noJoint }],
    take: putting((id) => ({ joint: id })),
  };
}

export function choiceSpec(
  name: 'doing' | 'way' | 'ways' | 'lying' | 'direction',
  { values }: Trial,
  pieces: readonly Piece[] = [],
): ChoiceSpec {
  const make = <T extends string>(
    words: Readonly<Record<T, string>>,
    change?: (value: string) => Partial<TestValues>,
  ) => ({
    key: name,
    label: LABELS[name],
    value: values[name],
    options: options(words),
    take: putting(change ?? ((value) => ({ [name]: value }))),
  });
  if (name === 'doing')
    return make<Doing>(DOING_WORDS, (value) => {
      const done = withDoing(values, value as Doing);
      const isOther = done.piece !== values.piece;
      return {
        ...done,
        ...(isOther &&
          asOnPiece(
            pieces.find(({ id }) => id === done.piece),
            values,
          )),
      };
    });
  if (name === 'way') return make<Bend['way']>(WAY_WORDS, (value) => bentLike(value as Bend['way'], values, pieces));
  if (name === 'direction') return make<PullTally['direction']>(DIRECTION_WORDS);
  return name === 'ways' ? make<FlexTally['ways']>(WAYS_WORDS) : make<Lying>(LYING_WORDS);
}

/** Whether a figure is known that only a table of forces asks for. */
export function knownSpec(name: 'knowsGauge' | 'knowsSpeed', { values }: Trial): ChoiceSpec {
  return {
    key: name,
    label: LABELS[name],
    value: String(values[name]),
    options: options(KNOWN_WORDS[name]),
    take: putting((value) => ({ [name]: value === 'true' })),
  };
}

const isLong = (length: number, other: number) => Math.abs(length - other) < 0.005;

/** Which strip of the comb or fold of the ladder is flexed; what is chosen sets how long it is, of folds how thick as well. */
export function stripSpec({ values }: Trial, piece: Piece): ChoiceSpec {
  const { strips } = piece;
  const isCrease = piece.id === 'creases';
  const now = strips.find(
    ({ length, count }) => isLong(length, values.length) && (!isCrease || count === values.count),
  );
  const { strip } = PIECE_WORDS[piece.id];
  return {
    key: 'strip',
    label: LABELS.strip,
    value: now ? String(now.number) : '',
    options: [
      ...(now ? [] : [{ value: '', text: TESTS.noStrip(strip) }]),
      ...strips.map(({ number }) => ({ value: String(number), text: `${strip} ${number}` })),
    ],
    take: putting((value) => {
      const { length, count } = strips.find(({ number }) => String(number) === value) ?? values;
      return { length, ...(isCrease && { count }) };
    }),
  };
}
