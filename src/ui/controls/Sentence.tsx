import { useCallback, useId, useMemo, useState, type ReactNode } from 'react';
import { VerdictShape } from '../app/VerdictShape.tsx';
import './controls.css';
import { SentenceContext, type SentencePlace } from './sentenceContext.ts';

/**
 * A sentence with value fields in it. One line under it is kept free: the hint of the field that is being edited
 * stands there, or what was refused, never one over the other, and nothing below moves.
 */
export function Sentence({ className, children }: { readonly className: string; readonly children: ReactNode }) {
  const refusalId = useId();
  const [refusal, setRefusal] = useState<{ readonly key: string; readonly message: string }>();
  const refuse = useCallback((key: string, message: string) => setRefusal({ key, message }), []);
  const settle = useCallback((key: string) => setRefusal((now) => (now?.key === key ? undefined : now)), []);
  const place = useMemo<SentencePlace>(
    () => ({ refusalId, refused: refusal?.key, refuse, settle }),
    [refusalId, refusal, refuse, settle],
  );
  return (
    <div className={`sentence ${className}`}>
      <SentenceContext value={place}>
        <p className="says">{children}</p>
      </SentenceContext>
      <div className="below">
        <p className="refusal" id={refusalId} role="alert">
          {refusal && (
            <>
              <VerdictShape grade="fail" />
              <span>{refusal.message}</span>
            </>
          )}
        </p>
      </div>
    </div>
  );
}
