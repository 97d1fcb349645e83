import { LESSON_PAGE_NAMES } from '../../text/lessonText.ts';
import type { LessonAddress } from '../route.ts';

/** To be built. */
export default function WorkingPage({ address }: { readonly address: LessonAddress }) {
  return (
    <main className="main lesson" data-of={address.of}>
      <h2>{LESSON_PAGE_NAMES.working}</h2>
    </main>
  );
}
