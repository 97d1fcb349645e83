import { lazy, type ComponentType } from 'react';
import { JointsPlace } from '../joints/JointsPlace.tsx';

/** Somewhere the user goes: one line here puts it on the sheet's head. */
export interface Place {
  /** What stands after `#` in the address. */
  readonly id: string;
  readonly name: string;
  readonly Page: ComponentType;
  /** Whether it has a title block and a document title of its own. */
  readonly own?: boolean;
}

export const PLACES: readonly [Place, ...Place[]] = [
  { id: 'joints', name: 'Joints', Page: JointsPlace },
  { id: 'mesh', name: 'Mesh', Page: lazy(() => import('../mesh/MeshPlace.tsx')), own: true },
  { id: 'toolpath', name: 'Toolpath', Page: lazy(() => import('../toolpath/ToolpathPlace.tsx')), own: true },
  { id: 'tests', name: 'Tests', Page: lazy(() => import('../tests/TestsPlace.tsx')), own: true },
  { id: 'filaments', name: 'Filaments', Page: lazy(() => import('../filaments/FilamentsPlace.tsx')), own: true },
  { id: 'lesson', name: 'Lesson', Page: lazy(() => import('../lesson/LessonPlace.tsx')), own: true },
];
