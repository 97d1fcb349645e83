import type { ReactNode } from 'react';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { SourcesTable } from '../check/SourcesTable.tsx';
import { sourcesOfToolpath } from '../text/toolpathSourcesText.ts';
import { cautionsOf, nothingText } from '../text/toolpathText.ts';
import { Boxes } from './Boxes.tsx';
import { LayerDrawing } from './figures/LayerDrawing.tsx';
import { LayerPlanDrawing } from './figures/LayerPlanDrawing.tsx';
import { LayerStave } from './figures/LayerStave.tsx';
import { WidthsAlong } from './figures/WidthsAlong.tsx';
import { LaidChanges } from './LaidChanges.tsx';
import { LaidFindings } from './LaidFindings.tsx';
import { LaidRows } from './LaidRows.tsx';
import { LaidVerdict } from './LaidVerdict.tsx';
import { useShown, useShownPlace } from './shown.ts';
import { ToolpathBrief } from './ToolpathBrief.tsx';
import { ToolpathFacts } from './ToolpathFacts.tsx';
import { LookUpTo, ToolpathLooked } from './ToolpathLooked.tsx';
import { ToolpathReport } from './ToolpathReport.tsx';
import { ToolpathStrip } from './ToolpathStrip.tsx';
import { useAddBox } from './useAddBox.ts';
import type { Looking } from './useShownToolpath.ts';

/** What must be known before anything else is believed. */
function Cautions() {
  const { toolpath, name, places } = useShown();
  const said = cautionsOf(
    toolpath,
    name,
    places.some(({ near }) => near.isCut),
  );
  return said.map((text) => (
    <p className="caution-line" key={text}>
      <span className="caution">
        <VerdictShape grade="caution" />
      </span>
      <span>{text}</span>
    </p>
  ));
}

function Nothing() {
  const { toolpath, name, unit } = useShown();
  const { head, says, isLaid } = nothingText(toolpath, name, unit);
  return (
    <section className="verdict beyond" aria-label="Verdict" aria-live="polite">
      <h2>
        <VerdictShape grade="beyond" />
        {head}
      </h2>
      <p>{says}</p>
      {isLaid && <LookUpTo />}
    </section>
  );
}

function Sources() {
  const at = useShownPlace();
  return <SourcesTable rows={sourcesOfToolpath(at?.judged)} />;
}

/** The layer from above, and what is boxed in on it. */
function Where({ missing, trouble, carried }: Omit<Looking, 'shown'>) {
  const { judged } = useShown();
  const places = [...judged.map(({ place }) => place), ...missing];
  const add = useAddBox(places);
  const onAdd = add && (() => add());
  return (
    <div className="plan">
      <LayerPlanDrawing {...(add && { onBox: add })} />
      <Boxes {...{ places, missing, trouble, carried, onAdd }} />
    </div>
  );
}

interface Props {
  readonly looking: Looking;
  readonly notRead: ReactNode;
}

/** A toolpath that was read: what it lays across each thin section, and what to change. */
export function ToolpathSheet({ looking, notRead }: Props) {
  const { judged, toolpath } = useShown();
  const hasAny = judged.length > 0;
  const isLaid = toolpath.figures.box !== undefined;
  return (
    <>
      <ToolpathStrip />
      <main className={hasAny ? 'main checks tool' : 'main checks tool no-thin'}>
        <ToolpathBrief />
        <div className="answer">
          <div className="first-answer">
            {notRead}
            <Cautions />
            {hasAny ? <LaidVerdict /> : <Nothing />}
          </div>
          {hasAny && (
            <div className="layers">
              <LayerStave />
            </div>
          )}
        </div>
        {hasAny && (
          <div className="draw">
            <LayerDrawing />
            <WidthsAlong />
            <LaidChanges />
          </div>
        )}
        {hasAny && <LaidFindings />}
        {isLaid && <Where {...looking} />}
        <div className="foot facts">
          {hasAny && <LaidRows />}
          <ToolpathFacts />
          <div>
            <Sources />
            <ToolpathLooked />
          </div>
        </div>
        {hasAny && <ToolpathReport />}
      </main>
    </>
  );
}
