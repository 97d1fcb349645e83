import { brokeOff, doneText, GO_ON, MAKING, STOP, STOPPED } from '../../text/sureText.ts';
import { TRY_AGAIN } from '../../text/solverText.ts';
import type { Doubt } from './useDoubt.ts';

/** One line that is always there: how far the work is, with a way to stop it, or why there is no answer. */
export function DoubtProgress({ doubt }: { readonly doubt: Doubt }) {
  const { share, isStopped, trouble, stop, again } = doubt;
  return (
    <div className="sure-progress">
      {share !== undefined && (
        <>
          <span aria-hidden="true">{doneText(share)}</span>
          <progress value={share} aria-label={MAKING} />
          <button className="b" type="button" onClick={stop}>
            {STOP}
          </button>
        </>
      )}
      {isStopped && (
        <>
          <span>{STOPPED}</span>
          <button className="b" type="button" onClick={again}>
            {GO_ON}
          </button>
        </>
      )}
      {trouble !== undefined && (
        <>
          <span role="alert">{brokeOff(trouble)}</span>
          <button className="b" type="button" onClick={again}>
            {TRY_AGAIN}
          </button>
        </>
      )}
    </div>
  );
}
