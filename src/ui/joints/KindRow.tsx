import { useId, type KeyboardEvent } from 'react';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { CATALOGUE } from '../text/catalogueText.ts';
import { kindText } from '../text/kindText.ts';
import { Pictogram } from './Pictogram.tsx';

interface Props {
  readonly family: string;
  /** Why it cannot do what is asked; it stays where focus can find it. */
  readonly cannot: string | undefined;
  readonly isAt: boolean;
  readonly onReach: () => void;
  readonly onTake: () => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

/** One kind in the catalogue: its sign, its name, what it does, what for and at what cost. */
export function KindRow({ family, cannot, isAt, onReach, onTake, onKeyDown }: Props) {
  const id = useId();
  const { name, does, chooseFor, costs } = kindText(family);
  const take = cannot === undefined ? onTake : undefined;
  function pressed(event: KeyboardEvent): void {
    if (event.key !== 'Enter') {
      onKeyDown(event);
      return;
    }
    // The focus moves at once, and the same press must not act on what gets it.
    event.preventDefault();
    take?.();
  }

  return (
    <label className={take ? 'ck' : 'ck no'}>
      <input
        className="vh"
        type="radio"
        name="kind"
        value={family}
        checked={isAt}
        aria-labelledby={`${id}name`}
        aria-describedby={`${id}words`}
        aria-disabled={take ? undefined : true}
        onFocus={onReach}
        onChange={onReach}
        onClick={take}
        onKeyDown={pressed}
      />
      <Pictogram family={family} />
      <span>
        <b id={`${id}name`}>{name}</b>
        <span className="words" id={`${id}words`}>
          <span className="does">{does}</span>
          {take ? (
            <span>
              <i>{CATALOGUE.chooseFor}</i> {chooseFor}
            </span>
          ) : (
            <span className="cannot">
              <VerdictShape grade="beyond" />
              {cannot}
            </span>
          )}
          <span>
            <i>{CATALOGUE.costs}</i> {costs}
          </span>
        </span>
      </span>
    </label>
  );
}
