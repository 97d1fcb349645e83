import { withValue, withValueOf, type Figures } from '../../../core/material/ownFilament.ts';
import { PROPERTY_LIMITS } from '../../../core/material/ownLimits.ts';
import type { OwnFilament, PropertyName, Quantity } from '../../../core/material/types.ts';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { Sentence } from '../../controls/Sentence.tsx';
import { ValueField } from '../../controls/ValueField.tsx';
import { EDITOR, OWN_SAID, propertyLabel, provenanceOf, TOLD_ASKS, wordsOf } from '../../text/ownText.ts';
import { figureSpec } from './figureSpec.ts';
import { put } from './put.ts';
import { afterChange, toldOf, toldSpec } from './told.ts';
import { WordsField } from './WordsField.tsx';

interface Props {
  readonly filament: OwnFilament;
  /** The row of the table that it goes back to. */
  readonly base: OwnFilament | undefined;
  readonly name: PropertyName;
  readonly quantity: Quantity;
}

type End = keyof Figures;

function figuresOf({ typical, low, high }: Quantity): Figures {
  return { typical, ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }) };
}

const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);

/** One value with its range and where it comes from, each of which can be changed. */
export function ValueLine({ filament, base, name, quantity }: Props) {
  const label = propertyLabel(name);
  const limits = PROPERTY_LIMITS[name];
  const before = base?.properties[name];
  const isAsMade = same(quantity, before);
  const now = toldOf(quantity.provenance, isAsMade);

  const field = (end: End, labelled: string) =>
    figureSpec({
      key: `${name}.${end}`,
      label: labelled,
      value: quantity[end] ?? quantity.typical,
      limits,
      unit: quantity.unit,
      // Between two figures the unit stands once, after the second.
      isBare: end === 'low',
      take: (value, said, was, run) => {
        const figures = { ...figuresOf(quantity), [end]: value };
        const next = withValue(filament, name, figures, afterChange(quantity.provenance, isAsMade));
        return put(next, OWN_SAID.changed(labelled, said, was), run);
      },
    });

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

  return (
    <li>
      <Sentence className="own-value">
        <span className="what">{label}</span>{' '}
        <span className="nw">
          <ValueField spec={field('typical', EDITOR.usual(label))} />,
        </span>{' '}
        <span className="nw">
          <ValueField spec={field('low', EDITOR.low(label))} /> to
        </span>{' '}
        <span className="nw">
          <ValueField spec={field('high', EDITOR.high(label))} />;
        </span>{' '}
        <span className="nw">
          <ChoiceField spec={origin} />
        </span>
        {now !== 'as made' && (
          <WordsField
            label={EDITOR.words(label)}
            words={wordsOf(quantity.provenance)}
            asks={TOLD_ASKS[now]}
            onChange={(words) =>
              void put(
                withValue(filament, name, figuresOf(quantity), provenanceOf(now, words)),
                OWN_SAID.origin(label, words || TOLD_ASKS[now]),
              )
            }
          />
        )}
      </Sentence>
    </li>
  );
}
