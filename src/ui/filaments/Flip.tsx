import { useEffect, useRef } from 'react';
import type { WholeFilament } from '../../core/material/types.ts';
import { rowName } from '../text/filamentsText.ts';
import { NUMBERS } from '../text/filamentText.ts';
import { addressOf } from './route.ts';

interface Props {
  readonly row: WholeFilament;
  readonly rows: readonly WholeFilament[];
}

/** Names of all filaments, as the way from one to the next. */
export function Flip({ row, rows }: Props) {
  const nav = useRef<HTMLElement>(null);
  // Where there are more lines of names than fit, the one of this name is among those that do.
  useEffect(() => {
    const names = nav.current;
    const current = names?.querySelector('[aria-current]');
    if (!names || !current) return;
    names.scrollTop += Math.max(0, current.getBoundingClientRect().bottom - names.getBoundingClientRect().bottom);
  }, []);
  return (
    <nav className="names flip" aria-label="Filaments" ref={nav}>
      <a className="name-toggle" href={addressOf()}>
        {NUMBERS.back}
      </a>
      {rows.map((one) => (
        <a
          key={one.id}
          className="name-toggle"
          href={addressOf(one.id)}
          aria-current={one.id === row.id ? 'page' : undefined}
        >
          {rowName(one)}
        </a>
      ))}
    </nav>
  );
}
