import type { DamageKind } from '../../core/geometry/mesh/damage.ts';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { CHECK } from '../text/checkText.ts';
import { cutText, damagedText, nothingThin, unitHead } from '../text/meshText.ts';
import { useChecked } from './checked.ts';
import { PartNotRead } from './CheckProgress.tsx';
import { Cures } from './Cures.tsx';
import { FileFacts, UnitQuestion } from './FileFacts.tsx';
import { FindingsTable } from './FindingsTable.tsx';
import { HowItLooked, LookUpTo } from './HowItLooked.tsx';
import { LandingWindows } from './LandingWindows.tsx';
import { MeshBrief } from './MeshBrief.tsx';
import { MeshSources } from './MeshSources.tsx';
import { NotedOf } from './NotedOf.tsx';
import { MeshVerdict } from './MeshVerdict.tsx';
import { PartPicture } from './PartPicture.tsx';
import { PartStrip } from './PartStrip.tsx';
import { Reply } from './Reply.tsx';
import { ScaleChart } from './ScaleChart.tsx';
import { ScalingSays } from './ScalingSays.tsx';
import { SectionDrawing } from './SectionDrawing.tsx';
import { WidthComb } from './WidthComb.tsx';

/** What changes no thickness anywhere. */
const HARMLESS: readonly DamageKind[] = ['degenerate', 'duplicate', 'unjoined'];

/** What must be known before anything else is believed: the unit in doubt, a damaged surface, a look that was cut short. */
function Cautions() {
  const { part, name } = useChecked();
  const { unit, damage, findings } = part;
  const left = damage.filter(({ kind, count, mended }) => mended < count && !HARMLESS.includes(kind));
  return (
    <>
      {unit.orElse.length > 0 && (
        <section className="verdict doubt caution" aria-label={unitHead(unit)}>
          <h2>
            <VerdictShape grade="caution" />
            {unitHead(unit)}
          </h2>
          <UnitQuestion />
        </section>
      )}
      {left.length > 0 && (
        <p className="caution-line">
          <span className="caution">
            <VerdictShape grade="caution" />
          </span>
          <span>{damagedText(name, left)}</span>
        </p>
      )}
      {findings.isCut && (
        <p className="caution-line">
          <span className="caution">
            <VerdictShape grade="caution" />
          </span>
          <span>{cutText()}</span>
        </p>
      )}
    </>
  );
}

function NothingThin() {
  const { name, part, unit } = useChecked();
  return (
    <section className="verdict beyond" aria-label="Verdict" aria-live="polite">
      <h2>
        <VerdictShape grade="beyond" />
        {CHECK.nothing}
      </h2>
      <p>{nothingThin(name, part.thickest, unit)}</p>
      <LookUpTo />
    </section>
  );
}

/** A part that was read: its thin sections, what they stand, and what to change. */
export function PartSheet() {
  const { judged } = useChecked();
  const hasAny = judged.length > 0;
  return (
    <>
      <PartStrip />
      <main className={hasAny ? 'main checks mesh' : 'main checks mesh no-thin'}>
        <MeshBrief />
        <div className="answer">
          <div className="first-answer">
            <PartNotRead />
            <Cautions />
            {hasAny ? <MeshVerdict /> : <NothingThin />}
            {hasAny && <NotedOf />}
          </div>
          {hasAny && <Cures />}
        </div>
        <div className="draw">
          <PartPicture />
          {hasAny && <SectionDrawing />}
          {hasAny && <LandingWindows />}
        </div>
        {hasAny && <FindingsTable />}
        {hasAny && (
          <div className="curves two">
            <ScaleChart />
            <div>
              <WidthComb />
              <ScalingSays />
            </div>
          </div>
        )}
        <div className="foot facts">
          <FileFacts />
          <HowItLooked />
          <MeshSources />
        </div>
        {hasAny && <Reply />}
      </main>
    </>
  );
}
