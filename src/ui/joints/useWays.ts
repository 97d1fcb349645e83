import { useEffect, useMemo, useState } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Joint } from '../../core/design/joint.ts';
import { roomToSpare } from '../../core/design/roomToSpare.ts';
import { waysOut } from '../../core/design/waysOut.ts';
import type { Ways } from '../../workers/protocol.ts';
import { background } from './solver.ts';

/** Long enough that a hand that moves starts no search. */
const QUIET_MS = 300;

const known = new WeakMap<Joint, Ways>();

/** A search by the solver: what it found, or that it broke off; undefined while it looks. */
function useSearch(joint: Joint, isWanted: boolean): readonly [Ways | 'broken off' | undefined, () => void] {
  const [settled, setSettled] = useState<{ readonly joint: Joint; readonly ways: Ways | 'broken off' }>();
  const isBroken = settled?.joint === joint && settled.ways === 'broken off';
  useEffect(() => {
    if (!isWanted || isBroken || known.has(joint)) return undefined;
    let id: number | undefined;
    const timer = setTimeout(() => {
      const asked = background.ask('sheet', 'waysOut', { joint });
      id = asked.id;
      void asked.settled.then((end) => {
        if (end.how === 'superseded') return;
        const ways = end.how === 'answered' && end.value.ok ? end.value.value : 'broken off';
        if (ways !== 'broken off') known.set(joint, ways);
        setSettled({ joint, ways });
      });
    }, QUIET_MS);
    return () => {
      clearTimeout(timer);
      if (id !== undefined) background.cancel(id);
    };
  }, [joint, isWanted, isBroken]);
  const again = () => setSettled(undefined);
  return [known.get(joint) ?? (settled?.joint === joint ? settled.ways : undefined), again];
}

/** Ways out of a joint, or its room to spare: at once where hand forms are exact, else when the solver has found them. */
export function useWays(
  assessment: Assessment,
  isWorking: boolean,
): readonly [Ways | 'broken off' | undefined, () => void] {
  const isAtHand = assessment.travel !== undefined;
  const { grade } = assessment.verdict;
  const byHand = useMemo(
    (): Ways | undefined =>
      isAtHand
        ? { before: assessment, remedies: waysOut(assessment), spares: roomToSpare(assessment), isCut: false }
        : undefined,
    [assessment, isAtHand],
  );
  const [found, again] = useSearch(assessment.joint, !isAtHand && !isWorking && grade !== 'beyond');
  return [byHand ?? found, again];
}
