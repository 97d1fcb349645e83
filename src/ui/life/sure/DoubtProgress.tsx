import { TRY_AGAIN } from '../../text/solverText.ts';
import { brokeOff, doneText, GO_ON, MAKING, STOP, STOPPED } from '../../text/sureText.ts';
import type { Doubt } from './useDoubt.ts';

/** One line that is always there: how far the work is, with a way to stop it, or why there is no answer. */
export function DoubtProgress({ doubt }: { readonly doubt: Doubt }) {
  const { share, isStopped, trouble, stop, again } = doubt;
  const isGoing = share !== undefined;
  return (
    <div className="sure-progress">
      {/* One button for all that can be done, so that whoever stops it does not lose their place. */}
      {(isGoing || isStopped || trouble !== undefined) && (
        <button className="b" type="button" onClick={isGoing ? stop : again}>
          {isGoing ? STOP : isStopped ? GO_ON : TRY_AGAIN}
        </button>
      )}
      {isGoing && (
        <>
          <progress value={share} aria-label={MAKING} />
          <span aria-hidden="true">{doneText(share)}</span>
        </>
      )}
      {isStopped && <output>{STOPPED}</output>}
      {trouble !== undefined && <span role="alert">{brokeOff(trouble)}</span>}
    </div>
  );
}
