import { useRef, useState, type KeyboardEvent } from 'react';
import { cleanName, MAX_NAME } from '../../files/names.ts';

interface Props {
  readonly label: string;
  readonly name: string;
  readonly onRename: (name: string) => void;
}

/** A name edited in place: Enter or leaving takes it, Esc leaves the old one; an empty name is not taken. */
export function NameField({ label, name, onRename }: Props) {
  const [typed, setTyped] = useState<string>();
  const letGo = useRef(false);

  function leave(): void {
    const cleaned = letGo.current ? '' : cleanName(typed ?? '');
    letGo.current = false;
    setTyped(undefined);
    if (cleaned !== '' && cleaned !== name) onRename(cleaned);
  }

  function onKeyDown(event: KeyboardEvent<HTMLInputElement>): void {
    if (event.key !== 'Enter' && event.key !== 'Escape') return;
    letGo.current = event.key === 'Escape';
    event.currentTarget.blur();
  }

  return (
    <input
      className="name"
      type="text"
      aria-label={label}
      autoComplete="off"
      spellCheck={false}
      maxLength={MAX_NAME}
      size={Math.max(4, (typed ?? name).length)}
      value={typed ?? name}
      data-typing={typed !== undefined && typed !== name}
      onChange={(event) => setTyped(event.target.value)}
      onBlur={leave}
      onKeyDown={onKeyDown}
    />
  );
}
