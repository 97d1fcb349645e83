/** Values of a user's own row that follow from another of its values by a rule, as long as nobody has set them by hand. */
import { ALLOWED, soundness } from './choose.ts';
import type { OwnFilament, PropertyName, Provenance, Quantity } from './types.ts';

type Properties = OwnFilament['properties'];

type Inputs = Extract<Provenance, { kind: 'computed' }>['inputs'];

interface Rule {
  readonly value: PropertyName;
  readonly from: PropertyName;
  readonly by: (figure: number) => number;
  /** What the value rests on where the one that it follows is from memory: S5's rule is published, powers need no source. */
  readonly fromMemory: Inputs;
}

const RULED = 'published and memory';

const FOLLOWS: readonly Rule[] = [
  { value: 'permissibleStrainSingle', from: 'yieldStrain', by: (strain) => ALLOWED.once * strain, fromMemory: RULED },
  {
    value: 'permissibleStrainRepeated',
    from: 'permissibleStrainSingle',
    by: (strain) => ALLOWED.againOfOnce * strain,
    fromMemory: RULED,
  },
  {
    value: 'stressLossHour',
    from: 'relaxationExponent',
    by: (exponent) => 100 * (1 - 60 ** -exponent),
    fromMemory: 'memory',
  },
  {
    value: 'stressLossDay',
    from: 'relaxationExponent',
    by: (exponent) => 100 * (1 - 1440 ** -exponent),
    fromMemory: 'memory',
  },
];

const rounded = (value: number) => Number(value.toPrecision(3));

function following(before: Quantity, from: Quantity, { by, fromMemory }: Rule): Quantity {
  const { low: _low, high: _high, note: _note, ...kept } = before;
  const { provenance } = before;
  if (provenance.kind !== 'computed') return before;
  const inputs = soundness(from.provenance) === 'memory' ? fromMemory : 'published';
  return {
    ...kept,
    typical: rounded(by(from.typical)),
    ...(from.low === undefined ? {} : { low: rounded(by(from.low)) }),
    ...(from.high === undefined ? {} : { high: rounded(by(from.high)) }),
    provenance: { ...provenance, inputs },
  };
}

/**
 * The properties after one was changed: what follows from it by a rule is worked out anew, and so on.
 *
 * @param properties - values of a row, one of them new [-]
 * @param changed - which one [-]
 * @returns the values with those that follow [-]
 *
 * Source: s5-allowable-strain.
 */
export function settled(properties: Properties, changed: PropertyName): Properties {
  return FOLLOWS.filter(({ from }) => from === changed).reduce((all, rule) => {
    const { value, from } = rule;
    const [before, source] = [all[value], all[from]];
    if (before?.provenance.kind !== 'computed' || source === undefined) return all;
    return settled({ ...all, [value]: following(before, source, rule) }, value);
  }, properties);
}

/**
 * A value as another row has it, or by its rule from what this row has.
 *
 * @param ours - values of this row [-]
 * @param theirs - values of the other [-]
 * @param name - which value [-]
 * @returns the value, or `undefined` where the other has none [-]
 */
export function ofOther(ours: Properties, theirs: Properties, name: PropertyName): Quantity | undefined {
  const quantity = theirs[name];
  const rule = FOLLOWS.find(({ value }) => value === name);
  if (quantity === undefined || rule === undefined) return quantity;
  const [from, itsFrom] = [ours[rule.from], theirs[rule.from]];
  const isAsTheirs = (['typical', 'low', 'high'] as const).every((end) => from?.[end] === itsFrom?.[end]);
  return from === undefined || isAsTheirs ? quantity : following(quantity, from, rule);
}
