import { LESSON, LESSON_PAGE_NAMES } from '../text/lessonText.ts';
import { LESSON_PAGES, lessonAddress, type LessonPage } from './route.ts';

/** The pages of this place as plain words. */
export function LessonBar({ page }: { readonly page: LessonPage }) {
  return (
    <nav className="lesson-bar" aria-label={LESSON.pages}>
      {LESSON_PAGES.map((id) => (
        <a key={id} href={lessonAddress(id)} aria-current={id === page ? 'page' : undefined}>
          {LESSON_PAGE_NAMES[id]}
        </a>
      ))}
    </nav>
  );
}
