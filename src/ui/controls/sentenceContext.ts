import { createContext, useContext } from 'react';

/** What a value field needs of the sentence it stands in: the one place under it where a refusal is said. */
export interface SentencePlace {
  readonly refusalId: string;
  /** Key of the field that was refused. */
  readonly refused: string | undefined;
  readonly refuse: (key: string, message: string) => void;
  /** Takes the message of this field away; that of another field stays. */
  readonly settle: (key: string) => void;
}

export const SentenceContext = createContext<SentencePlace>({
  refusalId: '',
  refused: undefined,
  refuse: () => undefined,
  settle: () => undefined,
});

export function useSentence(): SentencePlace {
  return useContext(SentenceContext);
}
