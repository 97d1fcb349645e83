import { useEffect, useState } from 'react';
import { problemText } from '../text/problemText.ts';
import { useChoices } from '../../store/choices.ts';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { doingText, MESH, refusedHead, refusedText, soFarText, stoppedText, brokeText } from '../text/meshText.ts';
import { ChooseButton } from './DropCell.tsx';
import { checkAgain, forgetEnded, stop, usePartCheck, type Ended, type Work } from './partCheck.ts';

/** A check that is done sooner shows no progress [ms]. */
const PATIENT_MS = 400;

/** True once the work has gone on for a while. */
function useSlow(work: Work | undefined): boolean {
  const begun = work?.begunMs;
  const [slow, setSlow] = useState<number>();
  useEffect(() => {
    if (begun === undefined) return undefined;
    const timer = setTimeout(() => setSlow(begun), PATIENT_MS);
    return () => clearTimeout(timer);
  }, [begun]);
  return begun !== undefined && slow === begun;
}

/** What is being done with a file, how far it is, and the way to stop it. */
export function CheckProgress() {
  const work = usePartCheck((state) => state.work);
  const isSlow = useSlow(work);
  if (!work || !isSlow) return null;
  const { doing, share, found, asked, secondsLeft } = work;
  const what = doingText(doing, asked.file.name);
  return (
    <div className="find-progress check-progress">
      <span>{what}</span>
      <progress className="vh" value={share} aria-label={what} />
      <span className="laying" aria-hidden="true">
        <i style={{ width: `${(100 * share).toFixed(1)}%` }} />
      </span>
      <span className="told">{soFarText(found, secondsLeft)}</span>
      <button className="b" type="button" onClick={stop}>
        {MESH.stop}
      </button>
    </div>
  );
}

function useWhy(ended: Ended, hasBefore: boolean): { readonly head: string; readonly text: string } {
  const unit = useChoices((state) => state.unit);
  const { file } = ended.asked;
  switch (ended.how) {
    case 'stopped':
      return { head: 'Stopped', text: stoppedText(file.name, ended.found, hasBefore) };
    case 'broke':
      return { head: 'It broke off', text: brokeText(file.name, ended.message) };
    case 'refused': {
      const why = ended.problems.map((problem) => problemText(problem, unit)).join(' ');
      return { head: refusedHead(file.name), text: refusedText(file.name, file.size, why, hasBefore) };
    }
  }
}

function Told({ ended, hasBefore }: { readonly ended: Ended; readonly hasBefore: boolean }) {
  const { head, text } = useWhy(ended, hasBefore);
  const grade = ended.how === 'stopped' ? 'caution' : 'fail';
  return (
    <section className={`verdict not-read ${grade}`} role="alert" aria-label={head}>
      <h2>
        <VerdictShape grade={grade} />
        {head}
      </h2>
      <p>{text}</p>
      <div className="row">
        {ended.how !== 'refused' && (
          <button className="b" type="button" onClick={checkAgain}>
            {MESH.again}
          </button>
        )}
        <ChooseButton>{MESH.chooseAnother}</ChooseButton>
        {hasBefore && (
          <button className="b quiet" type="button" onClick={forgetEnded}>
            {MESH.dismiss}
          </button>
        )}
      </div>
    </section>
  );
}

/** A file that brought no part: what it is, why, what stays, and what to do. */
export function NotRead() {
  const { ended, standing } = usePartCheck();
  return ended ? <Told ended={ended} hasBefore={standing !== undefined} /> : null;
}
