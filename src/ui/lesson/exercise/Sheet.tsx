import type { ReactNode } from 'react';
import { DEMO_IDS, type DemoId } from '../../../core/lesson/demos/ids.ts';
import { EXERCISE, footText, type Paper } from '../../text/exerciseText.ts';
import { DEMO_WORDS } from '../../text/lessonDemoWords.ts';
import { TrueRuler } from '../../tests/pages/TrueRuler.tsx';

interface Props {
  readonly id: DemoId;
  readonly paper: Paper;
  readonly label: string;
  readonly head: ReactNode;
  /** Under the sheet. */
  readonly foot: string;
  readonly children: ReactNode;
}

/** One sheet of paper, white in any theme. */
export function Sheet({ paper, label, head, foot, children }: Props) {
  return (
    <article className={`test-page exercise-sheet on-${paper}`} aria-label={label}>
      <header>{head}</header>
      {children}
      <footer>
        <TrueRuler then={EXERCISE.caution} />
        <p>{foot}</p>
      </footer>
    </article>
  );
}

/** What stands under a sheet of some sets. */
export function footOf(id: DemoId, sets: string): string {
  return footText(DEMO_IDS.indexOf(id) + 1, DEMO_WORDS[id].name, sets);
}
