/** Who says so of a value of the user's own, and what becomes of that when the value changes. */
import type { Provenance } from '../../../core/material/types.ts';
import type { ChoiceSpec } from '../../controls/ChoiceField.tsx';
import { asMadeText, EDITOR, TOLD_TEXT, type Told } from '../../text/ownText.ts';

const CHOICES = ['test', 'document', 'memory'] as const;

function isTold(value: string): value is Told {
  return value === 'as made' || CHOICES.some((one) => one === value);
}

/** Who says so; a value that is the same as where it was made from, or follows from another, is as it was made. */
export function toldOf(provenance: Provenance, isAsMade: boolean): Told {
  if (isAsMade || provenance.kind === 'computed') return 'as made';
  if (provenance.kind === 'measured') return 'test';
  return provenance.kind === 'published' ? 'document' : 'memory';
}

/** Where a figure comes from once it is another: what the user said before still holds, what a table said does not. */
export function afterChange(provenance: Provenance, isAsMade: boolean): Provenance {
  return toldOf(provenance, isAsMade) === 'as made' ? { kind: 'memory' } : provenance;
}

interface ToldOf {
  readonly key: string;
  readonly label: string;
  readonly now: Told;
  /** Name of the row that it was made from; absent where that row does not have it. */
  readonly from: string | undefined;
  readonly isRule: boolean;
  readonly take: (told: Told, text: string) => string | undefined;
}

export function toldSpec({ key, label, now, from, isRule, take }: ToldOf): ChoiceSpec {
  const made = from === undefined ? [] : [{ value: 'as made', text: asMadeText(from, isRule) }];
  const options = [...made, ...CHOICES.map((value) => ({ value, text: TOLD_TEXT[value] }))];
  return {
    key,
    label: EDITOR.told(label),
    value: now,
    options,
    take: (value) =>
      isTold(value) ? take(value, options.find((one) => one.value === value)?.text ?? value) : undefined,
  };
}
