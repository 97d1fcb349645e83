import type { ReactNode } from 'react';
import './controls.css';
import { Refusal, useRefusals } from './Refusal.tsx';
import { SentenceContext } from './sentenceContext.ts';

/**
 * A sentence with value fields in it. One line under it is kept free: the hint of the field that is being edited
 * stands there, or what was refused, never one over the other, and nothing below moves.
 */
export function Sentence({ className, children }: { readonly className: string; readonly children: ReactNode }) {
  const { place, message } = useRefusals();
  return (
    <div className={`sentence ${className}`}>
      <SentenceContext value={place}>
        <p className="says">{children}</p>
      </SentenceContext>
      <div className="below">
        <Refusal id={place.refusalId} message={message} />
      </div>
    </div>
  );
}
