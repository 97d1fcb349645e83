import { useSession } from '../../store/session.ts';
import { useToolpaths } from '../../store/toolpaths.ts';
import { KeptCell, MarksCell } from '../app/TitleCells.tsx';
import { CHECK } from '../text/checkText.ts';
import { lengthFigure, unitAfter } from '../text/numbers.ts';
import { CAUTIONS } from '../text/shellText.ts';
import { layersTold } from '../text/toolpathFactsText.ts';
import { NO_JOINT, TOOLPATH } from '../text/toolpathText.ts';
import { heldJoint } from './heldAgainst.ts';
import { useShownPlace, type ShownToolpath } from './shown.ts';
import { useToolpathCheck } from './toolpathCheck.ts';

function Held() {
  const at = useShownPlace();
  const joints = useSession((state) => state.part.joints);
  const values = useToolpaths((state) => state.values);
  const held = at && heldJoint(at.judged.place, values, joints);
  return (
    <div className="joint">
      <small>Held against</small>
      {held?.name ?? (at ? NO_JOINT : 'nothing')}
    </div>
  );
}

/** The block at the foot of this place. */
export function ToolpathTitle({ shown }: { readonly shown: ShownToolpath | undefined }) {
  const isSample = useToolpathCheck(({ standing }) => standing?.asked.isSample ?? false);
  return (
    <footer className="title of-toolpath">
      <div className={shown ? 'part' : 'alone end'}>
        <small>G-code file</small>
        {shown ? `${shown.name}${isSample ? ` (${TOOLPATH.invented})` : ''}` : 'none yet'}
      </div>
      {shown && (
        <>
          <Held />
          <div className="filament">
            <small>Filament</small>
            {lengthFigure(shown.toolpath.filament.diameter, shown.unit)}
            {unitAfter(shown.unit)} thick
          </div>
          <div className="profile">
            <small>Layers</small>
            {layersTold(shown.toolpath.figures, shown.unit)}
          </div>
          <div className="scale end">
            <small>Thin sections</small>
            {shown.judged.length}
          </div>
        </>
      )}
      <div className="cautions last">
        <small>Read this</small>
        {CAUTIONS.join(' ')} {CHECK.kept}
      </div>
      <MarksCell className="marks last" />
      <KeptCell className="kept last end" />
    </footer>
  );
}
