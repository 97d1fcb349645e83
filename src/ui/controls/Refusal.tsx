import { useCallback, useId, useMemo, useState } from 'react';
import { VerdictShape } from '../app/VerdictShape.tsx';
import type { SentencePlace } from './sentenceContext.ts';

/** The one place where a refusal of several fields is said, and the message that stands there. */
export function useRefusals(): { readonly place: SentencePlace; readonly message: string | undefined } {
  const refusalId = useId();
  const [refusal, setRefusal] = useState<{ readonly key: string; readonly message: string }>();
  const refuse = useCallback((key: string, message: string) => setRefusal({ key, message }), []);
  const settle = useCallback((key: string) => setRefusal((now) => (now?.key === key ? undefined : now)), []);
  const place = useMemo<SentencePlace>(
    () => ({ refusalId, refused: refusal?.key, refuse, settle }),
    [refusalId, refusal, refuse, settle],
  );
  return { place, message: refusal?.message };
}

/** What was refused, said at once to those who do not see it. */
export function Refusal({ id, message }: { readonly id: string; readonly message: string | undefined }) {
  return (
    <p className="refusal" id={id} role="alert">
      {message !== undefined && (
        <>
          <VerdictShape grade="fail" />
          <span>{message}</span>
        </>
      )}
    </p>
  );
}
