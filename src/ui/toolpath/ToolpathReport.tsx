import { LetterBox } from '../check/Letter.tsx';
import { toolpathReport } from '../text/toolpathReportText.ts';
import { TOOLPATH_REPORT } from '../text/toolpathText.ts';
import { useShown } from './shown.ts';

/** What is laid across every thin section, to keep or pass on. */
export function ToolpathReport() {
  const { toolpath, name, bytes, judged, unit } = useShown();
  const write = () => toolpathReport({ toolpath, name, bytes, judged, unit });
  return <LetterBox words={TOOLPATH_REPORT} write={write} file={`${name.replace(/\.[^.]*$/, '')} report.txt`} />;
}
