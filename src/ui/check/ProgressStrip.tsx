import { useEffect, useState } from 'react';
import { CHECK, soFarText } from '../text/checkText.ts';
import type { Work } from './fileCheck.ts';

/** A check that is done sooner shows no progress [ms]. */
const PATIENT_MS = 400;

/** True once the work has gone on for a while. */
function useSlow(begun: number | undefined): boolean {
  const [slow, setSlow] = useState<number>();
  useEffect(() => {
    if (begun === undefined) return undefined;
    const timer = setTimeout(() => setSlow(begun), PATIENT_MS);
    return () => clearTimeout(timer);
  }, [begun]);
  return begun !== undefined && slow === begun;
}

interface Props {
  readonly work: Work<unknown> | undefined;
  /** What is being done, with the name of the file. */
  readonly what: string;
  readonly onStop: () => void;
}

/** What is being done with a file, how far it is, and the way to stop it. */
export function ProgressStrip({ work, what, onStop }: Props) {
  const isSlow = useSlow(work?.begunMs);
  if (!work || !isSlow) return null;
  const { share, found, secondsLeft } = work;
  return (
    <div className="check-progress">
      <span>{what}</span>
      <progress className="vh" value={share} aria-label={what} />
      <span className="bead-so-far" aria-hidden="true">
        <i style={{ width: `${(100 * share).toFixed(1)}%` }} />
      </span>
      <span className="told">{soFarText(found, secondsLeft)}</span>
      <button className="b" type="button" onClick={onStop}>
        {CHECK.stop}
      </button>
    </div>
  );
}
