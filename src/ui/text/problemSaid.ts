/**
 * What is wrong, as it is said on the first screen: in the words of the screen once they have come, and until then in those
 * of the core, which are exact too but in mm. Whoever comes later imports `problemText.ts` itself.
 */
import { create } from 'zustand';
import type { Problem } from '../../core/problems.ts';
import type { LengthUnit } from './numbers.ts';
import { sentence } from './said.ts';

type ProblemSaid = (problem: Problem, unit: LengthUnit, name?: string) => string;

const useWords = create<{ readonly said: ProblemSaid }>()(() => ({ said: ({ message }) => sentence(message) }));

/** Takes the words of the screen in; they do so themselves when they come. */
export function takeProblemText(said: ProblemSaid): void {
  useWords.setState({ said });
}

export const problemSaid: ProblemSaid = (...of) => useWords.getState().said(...of);

/** The same for what stays on screen while the words come. */
export function useProblemSaid(): ProblemSaid {
  return useWords(({ said }) => said);
}
