/** Words that all pages of the lesson share. */
import type { LessonPage } from '../lesson/route.ts';

export const LESSON = {
  title: 'Lesson',
  pages: 'Pages of the lesson',
} as const;

/** What the pages are called. */
export const LESSON_PAGE_NAMES: Readonly<Record<LessonPage, string>> = {
  demo: 'Demonstrations',
  exercise: 'Exercise page',
  working: 'The working',
  compare: 'Side by side',
  summary: 'One-page summary',
};

/** Over the links from a joint to its working, to others beside it, and to its sheet of paper. */
export const SHOW_OTHERS = 'Show it to others';
