import { useRef, useState, type KeyboardEvent } from 'react';
import { MAX_WORDS, words as cleaned } from '../../../files/names.ts';

interface Props {
  readonly label: string;
  readonly words: string;
  /** Said in the empty field. */
  readonly asks: string;
  readonly onChange: (words: string) => void;
}

/** A line of text edited in place: Enter or leaving takes it, Esc leaves the old one; it may be empty. */
export function WordsField({ label, words, asks, onChange }: Props) {
  const [typed, setTyped] = useState<string>();
  const letGo = useRef(false);

  function leave(): void {
    const next = letGo.current || typed === undefined ? words : cleaned(typed);
    letGo.current = false;
    setTyped(undefined);
    if (next !== words) onChange(next);
  }

  function onKeyDown(event: KeyboardEvent<HTMLInputElement>): void {
    if (event.key !== 'Enter' && event.key !== 'Escape') return;
    letGo.current = event.key === 'Escape';
    event.currentTarget.blur();
  }

  const shown = typed ?? words;
  return (
    <input
      className="name words"
      type="text"
      aria-label={label}
      placeholder={asks}
      autoComplete="off"
      spellCheck={false}
      maxLength={MAX_WORDS}
      size={Math.min(60, Math.max(asks.length, shown.length))}
      value={shown}
      data-typing={typed !== undefined && typed !== words}
      onChange={(event) => setTyped(event.target.value)}
      onBlur={leave}
      onKeyDown={onKeyDown}
    />
  );
}
