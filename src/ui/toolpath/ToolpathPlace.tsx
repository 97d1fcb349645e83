import { useEffect } from 'react';
import { useToolpaths } from '../../store/toolpaths.ts';
import '../charts/charts.css';
import '../check/check.css';
import '../check/letter.css';
import { CheckSlip } from '../check/CheckSlip.tsx';
import { NotRead } from '../check/NotRead.tsx';
import { ProgressStrip } from '../check/ProgressStrip.tsx';
import '../drawing/drawing.css';
import '../joints/answer.css';
import '../joints/everyKind.ts';
import '../joints/foot.css';
import '../joints/JointStrip.css';
import { REFUSED_TOOLPATH, TOOLPATH, TOOLPATH_CHOOSER, toolpathDoing } from '../text/toolpathText.ts';
import { EmptyToolpath } from './EmptyToolpath.tsx';
import { ShownProvider } from './shown.ts';
import './toolpath.css';
import { checkAgain, forgetEnded, stop, useToolpathCheck } from './toolpathCheck.ts';
import { ToolpathSheet } from './ToolpathSheet.tsx';
import { ToolpathTitle } from './ToolpathTitle.tsx';
import { useShownToolpath } from './useShownToolpath.ts';

export { checkFile } from './toolpathCheck.ts';

/** A file that brought no toolpath. */
function ToolpathNotRead() {
  const { ended, standing } = useToolpathCheck();
  if (!ended) return null;
  return (
    <NotRead
      ended={ended}
      refusedHead={REFUSED_TOOLPATH}
      before={standing ? 'toolpath' : undefined}
      chooser={TOOLPATH_CHOOSER}
      onAgain={checkAgain}
      onDismiss={forgetEnded}
    />
  );
}

function Progress() {
  const work = useToolpathCheck((state) => state.work);
  const what = work ? toolpathDoing(work.doing, work.asked.file.name) : '';
  return <ProgressStrip work={work} what={what} onStop={stop} />;
}

/** The place where a toolpath is checked before it is printed. */
export default function ToolpathPlace() {
  const looking = useShownToolpath();
  const { shown } = looking;
  const history = useToolpaths();
  const name = shown?.name ?? TOOLPATH.title;
  useEffect(() => {
    document.title = `${name}: Bendbook`;
  }, [name]);
  return (
    <ShownProvider value={shown}>
      <Progress />
      {shown ? (
        <ToolpathSheet looking={looking} notRead={<ToolpathNotRead />} />
      ) : (
        <main className="main checks tool nothing">
          <div className="whole">
            <ToolpathNotRead />
            <EmptyToolpath />
          </div>
        </main>
      )}
      <ToolpathTitle shown={shown} />
      <CheckSlip history={history} />
    </ShownProvider>
  );
}
