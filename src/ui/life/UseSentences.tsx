import { useLayoutEffect, useRef } from 'react';
import { MOVEMENT_LIMITS } from '../../core/design/movementLimits.ts';
import { driveOf } from '../../core/flexures/drives.ts';
import type { Filament } from '../../core/material/types.ts';
import { useSentence } from '../controls/sentenceContext.ts';
import type { BriefOf } from '../joints/briefSpecs.ts';
import { ADD_SWING, addedSaid, enough, REMOVE_SWING, removedSaid } from '../text/useText.ts';
import { Surroundings } from './Surroundings.tsx';
import { swingsOf, withAnother, without } from './swings.ts';
import { SwingSentence } from './SwingSentence.tsx';

/**
 * What else its life depends on, in sentences with live values. Whoever adds a movement goes on in its first value;
 * whoever takes one out, at the button that adds.
 */
export function UseSentences({ of, filament }: { readonly of: BriefOf; readonly filament: Filament }) {
  const { joint, family, unit } = of;
  const list = useRef<HTMLDivElement>(null);
  const goTo = useRef<'new' | 'button'>(undefined);
  const swings = swingsOf(joint);
  const { measure, step } = driveOf(family, joint.movement.drive);
  const isFull = swings.length >= MOVEMENT_LIMITS.also.max;

  useLayoutEffect(() => {
    if (goTo.current === 'new') lastSentence(list.current)?.querySelector('input')?.focus();
    if (goTo.current === 'button') list.current?.querySelector<HTMLElement>('.add')?.focus();
    goTo.current = undefined;
  });

  function add(): string | undefined {
    const next = withAnother(joint, step, MOVEMENT_LIMITS.cycles.max);
    const added = swingsOf(next).at(-1);
    const why = added && of.put(next, addedSaid(added, measure, unit), 'movement.also', ADD_SWING);
    if (why === undefined) goTo.current = 'new';
    return why;
  }

  function remove(at: number): void {
    const swing = swings[at];
    if (!swing) return;
    if (of.put(without(joint, at), removedSaid(swing, measure, unit), 'movement.also', REMOVE_SWING) === undefined) {
      goTo.current = 'button';
    }
  }

  const adds = <AddSwing isFull={isFull} onAdd={add} />;
  return (
    <div ref={list}>
      <Surroundings of={of} filament={filament}>
        {swings.length === 0 && adds}
      </Surroundings>
      {swings.map((_, at) => (
        // A movement has no name but its place among them.
        <SwingSentence key={at} of={of} at={at} onRemove={() => remove(at)}>
          {at === swings.length - 1 && adds}
        </SwingSentence>
      ))}
    </div>
  );
}

function lastSentence(list: HTMLElement | null): Element | undefined {
  return [...(list?.querySelectorAll('.sentence') ?? [])].at(-1);
}

interface AddSwingProps {
  readonly isFull: boolean;
  /** Adds a movement, or says why it cannot be. */
  readonly onAdd: () => string | undefined;
}

/** The button at the end of the last sentence; what it is refused is said under that. */
function AddSwing({ isFull, onAdd }: AddSwingProps) {
  const place = useSentence();
  function press(): void {
    const why = isFull ? undefined : onAdd();
    if (why !== undefined) place.refuse(ADD_SWING, why);
  }
  return (
    <>
      {' '}
      <button
        className="b quiet add"
        type="button"
        aria-disabled={isFull}
        onClick={press}
        onBlur={() => place.settle(ADD_SWING)}
      >
        {ADD_SWING}
      </button>
      {isFull && <span className="why"> {enough(MOVEMENT_LIMITS.also.max)}</span>}
    </>
  );
}
