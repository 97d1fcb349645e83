/** What a pointer and the keys do in a figure that is both read and dragged. */
import type { Asked } from './drag.ts';
import type { Frame, Px } from './frame.ts';
import type { Drags } from './useSizing.ts';

interface Reading {
  readonly point: (at: Px, frame: Frame) => void;
  readonly key: (pressed: string, shift: boolean) => boolean;
  readonly leave: () => void;
}

interface Hands {
  readonly onPoint: (at: Px) => void;
  readonly onKey: (pressed: string, shift: boolean) => boolean;
}

/** A drag goes before a reading; Escape gives up whichever is going on; Enter puts in force what is read. */
export function draggedFigure(
  drags: Drags,
  reading: Reading,
  frame: Frame | undefined,
  from: Asked,
  read: Asked | undefined,
): Hands {
  return {
    onPoint: (at) => {
      if (drags.move(at)) reading.leave();
      else if (frame) reading.point(at, frame);
    },
    onKey: (pressed, shift) => {
      if (pressed === 'Escape') {
        if (!drags.giveUp()) reading.leave();
        return true;
      }
      if (pressed !== 'Enter') return reading.key(pressed, shift);
      if (read) drags.take(from, read);
      return true;
    },
  };
}
