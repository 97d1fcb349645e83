import { useEffect, useRef, useState } from 'react';
import type { Group } from './designs.ts';

/** So many groups stand at once; more would hide why the rest fell short. */
const AT_ONCE = 8;

/** A design that is to be reached in the list: a new one each time that it is pressed in the figure. */
export interface Reached {
  readonly key: string;
}

function groupWith(groups: readonly Group[], key: string | undefined): Group | undefined {
  return groups.find(({ first, more }) => [first, ...more].some((shown) => shown.key === key));
}

/** Which groups of the list are shown and which lie open; a design that is reached is brought to light and gets the focus. */
export function useOpened(groups: readonly Group[], reached: Reached | undefined) {
  const [flipped, setFlipped] = useState<ReadonlyMap<string, boolean>>(new Map());
  const [hasRest, setHasRest] = useState(false);
  const list = useRef<HTMLOListElement>(null);
  const group = groupWith(groups, reached?.key);
  const isFar = group !== undefined && group.rank > AT_ONCE;
  const isOpen = ({ key }: Group) => flipped.get(key) ?? (group?.key === key && group.first.key !== reached?.key);

  useEffect(() => {
    if (reached === undefined) return;
    list.current?.querySelector<HTMLElement>(`[data-key="${CSS.escape(reached.key)}"]`)?.focus();
  }, [reached]);

  return {
    list,
    shown: hasRest || isFar ? groups : groups.slice(0, AT_ONCE),
    isOpen,
    flip: (one: Group) => setFlipped(new Map([...flipped, [one.key, !isOpen(one)]])),
    showRest: () => setHasRest(true),
  };
}
