import { useEffect } from 'react';
import { KIND_NOT_COME } from '../text/shellText.ts';
import { TRY_AGAIN } from '../text/solverText.ts';
import { fetchKinds } from './fetchKinds.ts';
import { useKindsCome } from './kindsCome.ts';

const fetchNow = () => void fetchKinds();

/** Stands in the place of a sheet until the kind of its joint has come; says so when it does not come. */
export function KindComing() {
  const come = useKindsCome((state) => state.come);
  useEffect(fetchNow, []);
  if (come !== 'failed') return <div className="whole" aria-busy="true" />;
  return (
    <div className="whole">
      <p className="refusal" role="alert">
        {KIND_NOT_COME}
      </p>
      <button className="b" type="button" onClick={fetchNow}>
        {TRY_AGAIN}
      </button>
    </div>
  );
}
