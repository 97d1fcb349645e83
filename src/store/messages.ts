import { create } from 'zustand';

/** Something that is not a change but must be said: a file that was refused, or repairs made on opening. */
interface Message {
  readonly grade: 'fail' | 'caution';
  readonly text: string;
}

interface Messages {
  readonly message: Message | undefined;
  readonly say: (message: Message) => void;
  readonly clear: () => void;
}

export const useMessages = create<Messages>()((set) => ({
  message: undefined,
  say: (message) => set({ message }),
  clear: () => set({ message: undefined }),
}));
