import type { Lying } from '../../core/print/profile.ts';
import { ChoiceField } from '../controls/ChoiceField.tsx';
import { Sentence } from '../controls/Sentence.tsx';
import { CATALOGUE, DOINGS, LYING_ASKED, type Doing } from '../text/catalogueText.ts';
import type { Asked } from './kindsAsked.ts';

interface Props {
  readonly asked: Asked;
  readonly onAsk: (asked: Asked) => void;
}

/** What is asked of a kind, as a sentence whose choices are live. */
export function KindQuestion({ asked, onAsk }: Props) {
  const take = (change: Partial<Asked>) => {
    onAsk({ ...asked, ...change });
    return undefined;
  };
  return (
    <Sentence className="ask">
      {CATALOGUE.question}{' '}
      <span className="nw">
        <ChoiceField
          spec={{
            key: 'doing',
            label: CATALOGUE.doing,
            value: asked.doing,
            options: DOINGS,
            take: (value) => take({ doing: value as Doing }),
          }}
        />
        ,
      </span>{' '}
      {CATALOGUE.printed}{' '}
      <span className="nw">
        <ChoiceField
          spec={{
            key: 'lying',
            label: CATALOGUE.lying,
            value: asked.lying,
            options: LYING_ASKED,
            take: (value) => take({ lying: value as Lying | 'any' }),
          }}
        />
        .
      </span>
    </Sentence>
  );
}
