import { useEffect, useId, useRef, type KeyboardEvent } from 'react';
import { prepareSums } from './quantity.ts';
import { useDraft } from './useDraft.ts';
import { useHintPlace } from './useHintPlace.ts';
import type { ValueSpec } from './valueSpec.ts';

/**
 * A value in a sentence, edited in place: up and down step it, typing shows what it comes to, Enter or leaving takes
 * it, Esc leaves the old one. What cannot be taken is said under the sentence, and the old value stays in force.
 */
export function ValueField({ spec }: { readonly spec: ValueSpec }) {
  const hintId = useId();
  const input = useRef<HTMLInputElement>(null);
  const draft = useDraft(spec);
  const hint = useHintPlace(input);
  // A value put in from elsewhere is selected like one just reached, so that typing replaces it.
  useEffect(() => {
    const field = input.current;
    const isNew = draft.text === undefined && field?.value === spec.figure;
    if (isNew && document.activeElement === field) field.select();
  }, [draft.text, spec.figure]);

  function onKeyDown(event: KeyboardEvent): void {
    if (event.key === 'Enter') draft.take();
    else if (event.key === 'Escape') draft.leave();
    else if (event.key === 'ArrowUp') draft.step(1, event.shiftKey);
    else if (event.key === 'ArrowDown') draft.step(-1, event.shiftKey);
    else return;
    event.preventDefault();
  }

  const shown = draft.text ?? spec.figure;
  return (
    <label className={`v${draft.refused ? ' bad' : ''}`}>
      <span className="hint" id={hintId} ref={hint} hidden={draft.hint === ''}>
        {draft.hint}
      </span>
      <input
        ref={input}
        type="text"
        role="spinbutton"
        inputMode="decimal"
        autoComplete="off"
        spellCheck={false}
        // Where the browser cannot fit a field to its text, this many characters come near enough.
        size={Math.max(1, shown.length)}
        aria-label={spec.label}
        aria-valuenow={spec.shownNumber}
        aria-valuetext={`${shown}${spec.suffix}`}
        aria-invalid={draft.refused}
        aria-describedby={draft.refused ? draft.refusalId : hintId}
        value={shown}
        // Ctrl Z belongs to the typing while there is some, else to the joint.
        data-typing={draft.text !== undefined}
        onChange={(event) => draft.type(event.target.value)}
        onFocus={(event) => {
          prepareSums();
          draft.enter();
          event.target.select();
        }}
        onBlur={draft.exit}
        onKeyDown={onKeyDown}
      />
      {spec.suffix !== '' && <span className="u">{spec.suffix}</span>}
    </label>
  );
}
