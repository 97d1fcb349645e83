import { ChoiceField, type ChoiceSpec } from '../controls/ChoiceField.tsx';
import { ValueField } from '../controls/ValueField.tsx';
import type { ValueSpec } from '../controls/valueSpec.ts';

/** A live value with the stop that follows it, which must not begin a line. */
export function Live({ spec, stop = '' }: { readonly spec: ValueSpec | ChoiceSpec; readonly stop?: string }) {
  return (
    <span className="nw">
      {'options' in spec ? <ChoiceField spec={spec} /> : <ValueField spec={spec} />}
      {stop}
    </span>
  );
}
