import { lazy, useEffect, useMemo, type ComponentType } from 'react';
import '../charts/charts.css';
import '../drawing/drawing.css';
import '../joints/everyKind.ts';
import { Late } from '../app/Late.tsx';
import { LESSON, LESSON_PAGE_NAMES } from '../text/lessonText.ts';
import './greek.css';
import './lesson.css';
import { LessonBar } from './LessonBar.tsx';
import { lessonIn, useLessonHash, type LessonAddress, type LessonPage } from './route.ts';

/** Each page comes by itself: who shows a demonstration waits for no exercise. */
const PAGES: Readonly<Record<LessonPage, ComponentType<{ readonly address: LessonAddress }>>> = {
  demo: lazy(() => import('./demos/DemoPage.tsx')),
  exercise: lazy(() => import('./exercise/ExercisePage.tsx')),
  working: lazy(() => import('./working/WorkingPage.tsx')),
  compare: lazy(() => import('./compare/ComparePage.tsx')),
  summary: lazy(() => import('./summary/SummaryPage.tsx')),
};

/** The place where strain against length is shown, worked out and handed out. */
export default function LessonPlace() {
  const hash = useLessonHash();
  const address = useMemo(() => lessonIn(hash), [hash]);
  const Page = PAGES[address.page];
  const name = LESSON_PAGE_NAMES[address.page];
  useEffect(() => {
    document.title = `${name}, ${LESSON.title}: Bendbook`;
  }, [name]);
  return (
    <>
      <LessonBar page={address.page} />
      <Late key={address.page} fallback={<main className="main lesson" aria-busy="true" />}>
        <Page address={address} />
      </Late>
    </>
  );
}
