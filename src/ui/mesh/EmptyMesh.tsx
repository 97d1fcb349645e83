import { useState } from 'react';
import { ChooseButton } from '../check/DropCell.tsx';
import { CHECK } from '../text/checkText.ts';
import { MESH, MESH_CHOOSER } from '../text/meshText.ts';
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
    <section className="empty check-empty" aria-label={MESH.title}>
      <h2 className="big">{MESH.none}</h2>
      <p>{MESH.noneMore}</p>
      <div className="row">
        <ChooseButton chooser={MESH_CHOOSER}>{CHECK.choose}</ChooseButton>
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
