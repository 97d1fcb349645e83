import { LESSON_PAGE_NAMES, SHOW_OTHERS } from '../text/lessonText.ts';
import { lessonAddress } from '../lesson/route.ts';

const PAGES = ['working', 'compare', 'summary'] as const;

/** From a joint to the pages that show it to others. */
export function LessonLinks() {
  return (
    <nav className="lesson-links" aria-label={SHOW_OTHERS}>
      <span>{SHOW_OTHERS}</span>
      {PAGES.map((page) => (
        <a key={page} className="b" href={lessonAddress(page)}>
          {LESSON_PAGE_NAMES[page]}
        </a>
      ))}
    </nav>
  );
}
