import { NotRead } from '../check/NotRead.tsx';
import { ProgressStrip } from '../check/ProgressStrip.tsx';
import { doingText, MESH_CHOOSER, refusedHead } from '../text/meshText.ts';
import { checkAgain, forgetEnded, stop, usePartCheck } from './partCheck.ts';

export function CheckProgress() {
  const work = usePartCheck((state) => state.work);
  const what = work ? doingText(work.doing, work.asked.file.name) : '';
  return <ProgressStrip work={work} what={what} onStop={stop} />;
}

/** A file that brought no part. */
export function PartNotRead() {
  const { ended, standing } = usePartCheck();
  if (!ended) return null;
  return (
    <NotRead
      ended={ended}
      refusedHead={refusedHead(ended.asked.file.name)}
      before={standing ? 'part' : undefined}
      chooser={MESH_CHOOSER}
      onAgain={checkAgain}
      onDismiss={forgetEnded}
    />
  );
}
