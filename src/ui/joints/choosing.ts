/** Whether the catalogue of kinds or the finder lies open, and what for: not part of the work, so undo leaves it alone. */
import { create } from 'zustand';

export type ChoosingFor = 'a new joint' | 'the open joint' | 'what is found';

interface Choosing {
  readonly choosing: ChoosingFor | undefined;
  /** Id of the control that opened it, which gets the focus back. */
  readonly from: string | undefined;
  readonly open: (choosing: ChoosingFor, from: string) => void;
  /** Whether the focus goes back to what opened it, or to what has been made. */
  readonly close: (goesBack: boolean) => void;
}

export const useChoosing = create<Choosing>()((set) => ({
  choosing: undefined,
  from: undefined,
  open: (choosing, from) => set({ choosing, from }),
  close: (goesBack) => set(({ from }) => ({ choosing: undefined, from: goesBack ? from : undefined })),
}));
