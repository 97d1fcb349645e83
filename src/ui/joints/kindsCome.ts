/** Whether the kinds that the first screen does without have come; kept where whatever shows a joint can ask. */
import { create } from 'zustand';
import { hasKindText } from '../text/kindText.ts';

export const useKindsCome = create<{ readonly come: 'not yet' | 'all' | 'failed' }>()(() => ({ come: 'not yet' }));

/** Whether a joint of this family can be shown. Once all have come, one that is not among them never will. */
export function hasKindCome(family: string): boolean {
  return useKindsCome.getState().come === 'all' || hasKindText(family);
}

/** The same, heeded while on screen. */
export function useKindCome(family: string): boolean {
  return useKindsCome(({ come }) => come === 'all' || hasKindText(family));
}
