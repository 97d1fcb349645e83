import { useEffect, useMemo } from 'react';
import { judgeAll } from '../../core/inspect/judge.ts';
import { useChecking } from '../../store/checking.ts';
import { useChoices } from '../../store/choices.ts';
import { useSession } from '../../store/session.ts';
import '../charts/charts.css';
import '../drawing/drawing.css';
import '../check/check.css';
import '../check/letter.css';
import { CheckSlip } from '../check/CheckSlip.tsx';
import '../joints/answer.css';
import '../joints/everyKind.ts';
import '../joints/foot.css';
import '../joints/JointStrip.css';
import { MESH } from '../text/meshText.ts';
import { alikeOf } from '../../core/inspect/alike.ts';
import { CheckedProvider, type Checked } from './checked.ts';
import { CheckProgress, PartNotRead } from './CheckProgress.tsx';
import { EmptyMesh } from './EmptyMesh.tsx';
import './mesh.css';
import './figures.css';
import './facts.css';
import './widths.css';
import { MeshTitle } from './MeshTitle.tsx';
import { PartSheet } from './PartSheet.tsx';
import { usePartCheck } from './partCheck.ts';

export { checkFile } from './partCheck.ts';

/** The part that stands, judged for what stands in the brief. */
function useCheckedPart(): Checked | undefined {
  const { standing, chosen } = usePartCheck();
  const values = useChecking((state) => state.values);
  const unit = useChoices((state) => state.unit);
  const own = useSession((state) => state.own);
  const { as, asked } = values;
  const judged = useMemo(() => {
    if (!standing) return [];
    const { value: part, asked: what } = standing;
    return judgeAll(part.findings.flexures, part.facts.box, as, asked, what.file.name);
    // oxlint-disable-next-line react/exhaustive-deps -- a filament of one's own is looked up on its shelf
  }, [standing, as, asked, own]);
  const groups = useMemo(() => alikeOf(judged), [judged]);
  if (!standing) return undefined;
  const { value: part, asked: what } = standing;
  const { file } = what;
  return { part, name: file.name, bytes: file.size, file, values, unit, judged, groups, chosen };
}

/** The place where somebody else's part is checked. */
export default function MeshPlace() {
  const checked = useCheckedPart();
  const history = useChecking();
  const name = checked?.name ?? MESH.title;
  useEffect(() => {
    document.title = `${name}: Bendbook`;
  }, [name]);
  return (
    <>
      <CheckProgress />
      {checked ? (
        <CheckedProvider value={checked}>
          <PartSheet />
        </CheckedProvider>
      ) : (
        <main className="main checks mesh nothing">
          <div className="whole">
            <PartNotRead />
            <EmptyMesh />
          </div>
        </main>
      )}
      <MeshTitle checked={checked} />
      <CheckSlip history={history} />
    </>
  );
}
