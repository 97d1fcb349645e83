import type { ReactNode } from 'react';
import { ChoiceField } from '../controls/ChoiceField.tsx';
import { Sentence } from '../controls/Sentence.tsx';
import { ValueField } from '../controls/ValueField.tsx';
import { briefParts, type BriefOf, type BriefPart } from './briefSpecs.ts';

function Part({ part }: { readonly part: BriefPart }) {
  if (part.is === 'text') return part.text;
  const field = part.is === 'value' ? <ValueField spec={part.spec} /> : <ChoiceField spec={part.spec} />;
  return (
    <span className="nw">
      {field}
      {part.stop}
    </span>
  );
}

interface Props {
  readonly className: string;
  readonly template: string;
  readonly of: BriefOf;
  /** What stands after the last word. */
  readonly children?: ReactNode;
}

/** One sentence of the brief with its values live in it. */
export function BriefSentence({ className, template, of, children }: Props) {
  return (
    <Sentence className={className}>
      {briefParts(template, of).map((part, at) => (
        <Part key={part.is === 'text' ? at : part.spec.key} part={part} />
      ))}
      {children}
    </Sentence>
  );
}
