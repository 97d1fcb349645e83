import { useRef, useState } from 'react';
import type { Asked } from './drag.ts';
import type { Px } from './frame.ts';

type Phase = 'live' | 'done';

/** How a figure changes the joint: the names of the sizes, and whom to tell. */
export interface Sizing {
  readonly names: { readonly length: string; readonly count: string };
  readonly onSize: (parameter: string, value: number, phase: Phase) => void;
  /** A drag began or ended: the paper must not move under it. */
  readonly onHold: (held: boolean) => void;
}

interface Drag {
  readonly from: Asked;
  readonly ask: (to: Px) => Asked;
  last: Asked;
  readonly touched: Set<keyof Asked>;
}

const SIZES: readonly (keyof Asked)[] = ['length', 'count'];

export interface Drags {
  readonly dragging: boolean;
  readonly begin: (from: Asked, ask: (to: Px) => Asked) => void;
  /** True while a drag goes on. */
  readonly move: (to: Px) => boolean;
  readonly end: () => void;
  /** Puts back what was there when the drag began; true when there was a drag. */
  readonly giveUp: () => boolean;
  /** One step without a drag, as a key makes it. */
  readonly take: (from: Asked, asked: Asked) => void;
}

/** Turns drags and keys into changes of the joint: `live` while they go on, `done` once at the end for each size. */
export function useSizing({ names, onSize, onHold }: Sizing): Drags {
  const drag = useRef<Drag | undefined>(undefined);
  const [dragging, setDragging] = useState(false);

  const finish = (asked: Asked, touched: Iterable<keyof Asked>) => {
    drag.current = undefined;
    for (const size of touched) onSize(names[size], asked[size], 'done');
    setDragging(false);
    onHold(false);
  };

  return {
    dragging,
    begin(from, ask) {
      drag.current = { from, ask, last: from, touched: new Set() };
      setDragging(true);
      onHold(true);
    },
    move(to) {
      const going = drag.current;
      if (!going) return false;
      const asked = going.ask(to);
      for (const size of SIZES.filter((name) => !Object.is(asked[name], going.last[name]))) {
        going.touched.add(size);
        onSize(names[size], asked[size], 'live');
      }
      going.last = asked;
      return true;
    },
    end() {
      if (drag.current) finish(drag.current.last, drag.current.touched);
    },
    giveUp() {
      if (!drag.current) return false;
      finish(drag.current.from, drag.current.touched);
      return true;
    },
    take(from, asked) {
      for (const size of SIZES.filter((name) => !Object.is(asked[name], from[name])))
        onSize(names[size], asked[size], 'done');
    },
  };
}
