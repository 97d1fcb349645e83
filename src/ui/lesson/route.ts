/** The lesson has an address for each of its pages: `#lesson/demo/three-lengths?angle=40`, `#lesson/working`. */
import { useSyncExternalStore } from 'react';

export const LESSON_PAGES = ['demo', 'exercise', 'working', 'compare', 'summary'] as const;
export type LessonPage = (typeof LESSON_PAGES)[number];

export interface LessonAddress {
  readonly page: LessonPage;
  /** What of it: a demonstration, or the one that an exercise is about; '' where nothing is named. */
  readonly of: string;
  /** Values as they were left. */
  readonly values: URLSearchParams;
}

const PLACE = '#lesson';

function isPage(name: string): name is LessonPage {
  return LESSON_PAGES.some((page) => page === name);
}

/** What an address of this place names; the first demonstration where it names nothing that there is. Never throws. */
export function lessonIn(hash: string): LessonAddress {
  const [path = '', values = ''] = hash.split('?', 2);
  const [, page = '', of = ''] = path.split('/', 3);
  return { page: isPage(page) ? page : 'demo', of, values: new URLSearchParams(values) };
}

/** Address of a page of this place; ids are plain words that need no escaping. */
export function lessonAddress(page: LessonPage, of = '', values: Readonly<Record<string, string>> = {}): string {
  const path = of === '' ? `${PLACE}/${page}` : `${PLACE}/${page}/${of}`;
  const asked = new URLSearchParams(values).toString();
  return asked === '' ? path : `${path}?${asked}`;
}

/** Writes values that have changed into the address, without a step in the history for each. */
export function noteInAddress(address: string): void {
  if (address !== location.hash) history.replaceState(history.state, '', address);
}

function subscribe(changed: () => void): () => void {
  window.addEventListener('hashchange', changed);
  return () => window.removeEventListener('hashchange', changed);
}

/** The address in force, as text; values that were only noted in it are told when it next changes. */
export function useLessonHash(): string {
  return useSyncExternalStore(subscribe, () => location.hash);
}
