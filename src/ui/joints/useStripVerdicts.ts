import { useEffect } from 'react';
import type { Joint } from '../../core/design/joint.ts';
import { hasKindCome, useKindsCome } from './kindsCome.ts';
import { background } from './solver.ts';
import { hasVerdict, keepAnswer, needsSolver } from './solvedAnswers.ts';

/** The open joint is solved first. */
const QUIET_MS = 400;

/** Joints that broke the solver; they keep their estimate until they change. */
const broken = new WeakSet<Joint>();

function nextOf(joints: readonly Joint[], current: Joint): Joint | undefined {
  return joints.find((joint) => joint !== current && needsSolver(joint) && !hasVerdict(joint) && !broken.has(joint));
}

/** Solves the joints of a part that nobody looks at, one by one and when nothing else happens, for their verdicts. */
export function useStripVerdicts(joints: readonly Joint[], current: Joint): void {
  const hasAll = useKindsCome(({ come }) => come === 'all');
  useEffect(() => {
    let isOver = false;
    const shown = hasAll ? joints : joints.filter(({ family }) => hasKindCome(family));
    async function solveNext(): Promise<void> {
      const joint = nextOf(shown, current);
      if (!joint || isOver) return;
      const settled = await background.ask('strip', 'assess', { joint, drawn: false }).settled;
      if (settled.how === 'superseded') return;
      if (settled.how === 'answered') keepAnswer(joint, settled.value, false);
      else broken.add(joint);
      await solveNext();
    }
    const timer = setTimeout(() => void solveNext(), QUIET_MS);
    return () => {
      isOver = true;
      clearTimeout(timer);
    };
  }, [joints, current, hasAll]);
}
