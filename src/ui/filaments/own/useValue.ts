import { withValue, withValueOf, type Figures } from '../../../core/material/ownFilament.ts';
import { PROPERTY_LIMITS } from '../../../core/material/ownLimits.ts';
import type { OwnFilament, PropertyName, Quantity } from '../../../core/material/types.ts';
import type { ChoiceSpec } from '../../controls/ChoiceField.tsx';
import type { ValueSpec } from '../../controls/valueSpec.ts';
import { PROPERTIES } from '../../text/filamentValueText.ts';
import { EDITOR, OWN_SAID, provenanceOf, TOLD_ASKS, wordsOf, type Told } from '../../text/ownText.ts';
import { baseOf, isSame } from './base.ts';
import { figureSpec } from './figureSpec.ts';
import { put } from './put.ts';
import { afterChange, toldOf, toldSpec } from './told.ts';

type End = keyof Figures;

interface Value {
  readonly label: string;
  readonly now: Told;
  readonly field: (end: End) => ValueSpec;
  readonly origin: ChoiceSpec;
  /** What the user has said of where it comes from. */
  readonly words: string;
  readonly setWords: (words: string) => void;
}

function figuresOf({ typical, low, high }: Quantity): Figures {
  return { typical, ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }) };
}

/** The fields of one value of a filament of the user's own. */
export function useValue(filament: OwnFilament, name: PropertyName, quantity: Quantity): Value {
  const label = PROPERTIES[name].name;
  const limits = PROPERTY_LIMITS[name];
  const base = baseOf(filament);
  const before = base?.properties[name];
  const isAsMade = isSame(quantity, before);
  const now = toldOf(quantity.provenance, isAsMade);

  const field = (end: End): ValueSpec => {
    const labelled = EDITOR[end](label);
    return figureSpec({
      key: `${name}.${end}`,
      label: labelled,
      value: quantity[end] ?? quantity.typical,
      limits,
      unit: quantity.unit,
      // The range stands beside the usual figure, which has the unit.
      isBare: end !== 'typical',
      take: (value, said, was, run) => {
        const figures = { ...figuresOf(quantity), [end]: value };
        const next = withValue(filament, name, figures, afterChange(quantity.provenance, isAsMade));
        return put(next, OWN_SAID.changed(labelled, said, was), run);
      },
    });
  };

  const origin = toldSpec({
    key: `${name}.told`,
    label,
    now,
    from: before === undefined ? undefined : base?.name,
    isRule: before?.provenance.kind === 'computed',
    take: (told, text) => {
      if (told === 'as made') return base && put(withValueOf(filament, name, base), OWN_SAID.origin(label, text));
      const next = withValue(filament, name, figuresOf(quantity), provenanceOf(told, ''));
      return put(next, OWN_SAID.origin(label, text));
    },
  });

  const setWords = (words: string): void => {
    if (now === 'as made') return;
    const next = withValue(filament, name, figuresOf(quantity), provenanceOf(now, words));
    put(next, OWN_SAID.origin(label, words || TOLD_ASKS[now]));
  };

  return { label, now, field, origin, words: wordsOf(quantity.provenance), setWords };
}
