import { useSentence } from './sentenceContext.ts';

export interface ChoiceSpec {
  readonly key: string;
  readonly label: string;
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly text: string }[];
  /** Puts a choice in force, or says why it cannot be. */
  readonly take: (value: string) => string | undefined;
}

/**
 * A native list set as text: the words in force stand in the sentence, and the list lies over them unseen, so that it
 * is exactly as wide as its words in every browser.
 */
export function ChoiceField({ spec }: { readonly spec: ChoiceSpec }) {
  const place = useSentence();
  const now = spec.options.find((option) => option.value === spec.value)?.text ?? spec.value;
  const refused = place.refused === spec.key;

  function choose(value: string): void {
    const why = spec.take(value);
    if (why === undefined) place.settle(spec.key);
    else place.refuse(spec.key, `${why} Still ${now}.`);
  }

  return (
    <span className="v choice">
      <span className="chosen" aria-hidden="true">
        {now}
      </span>
      <select
        aria-label={spec.label}
        aria-describedby={refused ? place.refusalId : undefined}
        value={spec.value}
        onChange={(event) => choose(event.target.value)}
        onBlur={() => place.settle(spec.key)}
      >
        {spec.options.map(({ value, text }) => (
          <option key={value} value={value}>
            {text}
          </option>
        ))}
      </select>
    </span>
  );
}
