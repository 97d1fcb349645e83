/** How sure each joint is, as last worked out: for the words, and for the cloud on the curve of life. */
import { useSyncExternalStore } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { DoubtAnswer, DoubtAsked } from '../../../core/design/doubtAnswer.ts';
import type { Joint } from '../../../core/design/joint.ts';
import type { Filament } from '../../../core/material/types.ts';
import type { Result } from '../../../core/result.ts';

interface Doubted {
  readonly asked: DoubtAsked;
  readonly answer: Result<DoubtAnswer>;
}

interface Kept extends Doubted {
  /** The row it was worked out with: one of the user's own may have changed since under the same key. */
  readonly filament: Filament;
}

type Of = Pick<Assessment, 'joint' | 'filament'>;

const known = new WeakMap<Joint, Kept>();
const listeners = new Set<() => void>();

export function keepDoubt({ joint, filament }: Of, doubted: Doubted): void {
  known.set(joint, { filament, ...doubted });
  for (const listener of listeners) listener();
}

function listen(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** The last answer for this very joint in this very filament, once there is one. */
export function useDoubted({ joint, filament }: Of): Doubted | undefined {
  const now = () => known.get(joint);
  const kept = useSyncExternalStore(listen, now, now);
  return kept?.filament === filament ? kept : undefined;
}

/** Prints of the joint as they may come out; none before that has been worked out. */
export function useCloud(of: Of): DoubtAnswer['cloud'] {
  const doubted = useDoubted(of);
  return doubted?.answer.ok ? doubted.answer.value.cloud : NO_CLOUD;
}

const NO_CLOUD: DoubtAnswer['cloud'] = [];
