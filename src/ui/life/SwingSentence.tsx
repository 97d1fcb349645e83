import type { ReactNode } from 'react';
import { driveOf } from '../../core/flexures/drives.ts';
import { Sentence } from '../controls/Sentence.tsx';
import type { BriefOf } from '../joints/briefSpecs.ts';
import { MOVES, REMOVE_SWING, removeLabel } from '../text/useText.ts';
import { Live } from './Live.tsx';
import { swingsOf } from './swings.ts';
import { swingSpec, swingWaysSpec } from './useSpecs.ts';

interface SwingProps {
  readonly of: BriefOf;
  readonly at: number;
  readonly onRemove: () => void;
  readonly children: ReactNode;
}

/** A smaller movement beside the joint's own. */
export function SwingSentence({ of, at, onRemove, children }: SwingProps) {
  const { joint, family } = of;
  const isBetween = swingsOf(joint)[at]?.ways === 'between';
  return (
    <Sentence className="use">
      {at === 0 ? 'Besides, ' : 'And '}
      {MOVES[driveOf(family, joint.movement.drive).measure]} <Live spec={swingSpec(of, at, 'amount')} />{' '}
      <Live spec={swingWaysSpec(of, at)} stop={isBetween ? '' : ','} />{' '}
      {isBetween && (
        <>
          <Live spec={swingSpec(of, at, 'least')} stop="," />{' '}
        </>
      )}
      <Live spec={swingSpec(of, at, 'cycles')} /> times.{' '}
      <button className="b quiet" type="button" aria-label={removeLabel(at)} onClick={onRemove}>
        {REMOVE_SWING}
      </button>
      {children}
    </Sentence>
  );
}
