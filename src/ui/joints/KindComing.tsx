import { useEffect } from 'react';
import { kindNotCome } from '../text/shellText.ts';
import { TRY_AGAIN } from '../text/solverText.ts';
import { fetchKinds } from './fetchKinds.ts';
import { useKindsCome } from './kindsCome.ts';
import { tryKindsAgain, useIsKept } from './tryKindsAgain.ts';

/** Stands in the place of a sheet until the kind of its joint has come; says so when it does not come. */
export function KindComing() {
  const hasFailed = useKindsCome(({ come }) => come === 'failed');
  const isKept = useIsKept();
  useEffect(() => void fetchKinds(), []);
  if (!hasFailed) return <div className="whole" aria-busy="true" />;
  return (
    <div className="whole">
      <p className="refusal" role="alert">
        {kindNotCome(isKept)}
      </p>
      <button className="b" type="button" onClick={() => void tryKindsAgain(isKept)}>
        {TRY_AGAIN}
      </button>
    </div>
  );
}
