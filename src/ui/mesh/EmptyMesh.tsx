import { useState } from 'react';
import { MESH } from '../text/meshText.ts';
import { ChooseButton } from './DropCell.tsx';
import { checkFile, usePartCheck } from './partCheck.ts';

/** Written by us; three leaves of one, two and three lines of 0.42 mm. */
const SAMPLE = 'three-leaves-sample.stl';

/** Before anything has been dropped: what can be, and a part of ours to try. */
export function EmptyMesh() {
  const isBusy = usePartCheck(({ work }) => work !== undefined);
  const [failed, setFailed] = useState(false);
  const trySample = async () => {
    const answer = await fetch(SAMPLE).catch(() => undefined);
    const bytes = answer?.ok ? await answer.blob().catch(() => undefined) : undefined;
    setFailed(bytes === undefined);
    if (bytes) checkFile(new File([bytes], SAMPLE));
  };
  return (
    <section className="empty mesh-empty" aria-label={MESH.title}>
      <h2 className="big">{MESH.none}</h2>
      <p>{MESH.noneMore}</p>
      <div className="row">
        <ChooseButton>{MESH.choose}</ChooseButton>
        <button
          className="b"
          type="button"
          aria-disabled={isBusy || undefined}
          onClick={isBusy ? undefined : () => void trySample()}
        >
          {MESH.sample}
        </button>
      </div>
      {failed && (
        <p className="refusal" role="alert">
          {MESH.sampleFailed}
        </p>
      )}
    </section>
  );
}
