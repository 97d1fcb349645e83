import { lazy } from 'react';
import type { Joint } from '../../core/design/joint.ts';
import { Late } from '../app/Late.tsx';
import type { ChoosingFor } from './choosing.ts';
import { KindChooser } from './KindChooser.tsx';

const Finder = lazy(async () => ({ default: (await import('../find/Finder.tsx')).Finder }));

interface Props {
  readonly what: ChoosingFor;
  /** The joint that is open. */
  readonly joint: Joint | undefined;
}

/** What lies over the joints while one is chosen: the catalogue of kinds, or the finder. */
export function Choosing({ what, joint }: Props) {
  if (what !== 'what is found') return <KindChooser changing={what === 'the open joint' ? joint : undefined} />;
  return (
    <Late fallback={<div className="whole" aria-busy="true" />}>
      <Finder from={joint} />
    </Late>
  );
}
