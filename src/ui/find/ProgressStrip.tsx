import { Fragment } from 'react';
import { grouped } from '../text/numbers.ts';
import { TRY_AGAIN } from '../text/solverText.ts';
import { countText, doneText, SEARCH, searchBroke, soFarText, stoppedText } from '../text/findText.ts';
import { answeredText } from '../text/foundText.ts';
import type { Search } from './useSearch.ts';

/** A bead being laid along a dotted line. */
function Bead({ share }: { readonly share: number }) {
  return (
    <span className="laying" aria-hidden="true">
      <i style={{ width: `${(100 * share).toFixed(1)}%` }} />
    </span>
  );
}

/** How far the search is, in the one line that is always there, with a way to stop it. */
export function ProgressStrip({ search }: { readonly search: Search }) {
  const { answer, isOld, isWorking, isSlow, isStopped, trouble, problems } = search;
  const now = isOld ? undefined : answer;
  const canBegin = isStopped || trouble !== undefined;
  return (
    <div className="find-progress">
      {isSlow && now && <Going search={search} />}
      {isSlow && !now && <span>{SEARCH.trying}</span>}
      {isStopped && <output>{now ? stoppedText(now) : SEARCH.waits}</output>}
      {!isWorking && !canBegin && problems.length === 0 && now && <Parts text={`${doneText(now)}.`} />}
      {problems.length > 0 && <span className="told">{SEARCH.waits}</span>}
      {trouble !== undefined && <span role="alert">{searchBroke(trouble)}</span>}
      {/* One button for all that can be done, so that whoever stops it does not lose their place. */}
      {(isSlow || canBegin) && (
        <button className="b" type="button" onClick={isWorking ? search.stop : search.again}>
          {isWorking ? SEARCH.stop : isStopped ? SEARCH.again : TRY_AGAIN}
        </button>
      )}
      <output className="vh">{!isWorking && now && problems.length === 0 ? answeredText(now) : ''}</output>
    </div>
  );
}

function Going({ search: { answer, secondsLeft } }: { readonly search: Search }) {
  if (!answer) return null;
  const { tried, total, share } = answer;
  const isSolving = tried === total;
  return (
    <>
      {isSolving ? (
        <span>{SEARCH.solving}</span>
      ) : (
        <span>
          {SEARCH.trying}, <b className="num">{grouped(tried)}</b> of {grouped(total)}
        </span>
      )}
      <progress
        className="vh"
        value={share}
        aria-label={isSolving ? SEARCH.solving : SEARCH.trying}
        aria-valuetext={countText(answer)}
      />
      <Bead share={share} />
      <span className="told">{soFarText(answer, secondsLeft)}</span>
    </>
  );
}

/** Words that break only between their parts, and never within a figure. */
function Parts({ text }: { readonly text: string }) {
  return (
    <span className="told">
      {text.split(/(?<=[;,]) /).map((part) => (
        <Fragment key={part}>
          <span className="nw">{part}</span>{' '}
        </Fragment>
      ))}
    </span>
  );
}
