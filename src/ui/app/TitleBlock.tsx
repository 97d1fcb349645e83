import { findFilament } from '../../core/material/shelf.ts';
import type { Joint } from '../../core/design/joint.ts';
import { useChoices } from '../../store/choices.ts';
import { useSession } from '../../store/session.ts';
import { useKindCome } from '../joints/kindsCome.ts';
import { useCurrentJoint } from '../joints/useCurrentJoint.ts';
import { kindText } from '../text/kindText.ts';
import { lengthFigure, type LengthUnit } from '../text/numbers.ts';
import { CAUTIONS, SAID } from '../text/shellText.ts';
import { NameField } from './NameField.tsx';
import { KeptCell, MarksCell } from './TitleCells.tsx';

function profileText({ profile }: Joint, unit: LengthUnit): string {
  const size = (value: number, places?: number) => lengthFigure(value, unit, places);
  const nozzle = size(profile.nozzle, unit === 'mm' ? 1 : undefined);
  return `${nozzle} nozzle, ${size(profile.lineWidth)} × ${size(profile.layerHeight)}`;
}

function JointCells({ joint }: { joint: Joint }) {
  const joints = useSession((state) => state.part.joints);
  const scale = useSession((state) => state.scale);
  const unit = useChoices((state) => state.unit);
  const hasCome = useKindCome(joint.family);
  return (
    <>
      <div className="joint">
        <small>
          Joint {joints.indexOf(joint) + 1} of {joints.length}
        </small>
        {joint.name}
        {hasCome && `, ${kindText(joint.family).name}`}
      </div>
      <div className="filament">
        <small>Filament</small>
        {findFilament(joint.profile.filament)?.name ?? joint.profile.filament}, nominal
      </div>
      <div className="profile">
        <small>Print profile, {unit}</small>
        {profileText(joint, unit)}
      </div>
      <div className="scale end">
        <small>Scale</small>
        {scale}
      </div>
    </>
  );
}

/** The block at the foot of every sheet: what it shows, how far to trust it, and where it is kept. */
export function TitleBlock() {
  const { name, invented } = useSession((state) => state.part);
  const renamePart = useSession((state) => state.renamePart);
  const joint = useCurrentJoint();
  return (
    <footer className="title">
      <div className={joint === undefined ? 'alone end' : 'part'}>
        <small>Part</small>
        <NameField
          label="Name of the part, in the title block"
          name={name}
          onRename={(next) => renamePart(next, SAID.partRenamed(next, name))}
        />
        {invented && ' (invented example)'}
      </div>
      {joint !== undefined && <JointCells joint={joint} />}
      <div className="cautions last">
        <small>Read this</small>
        {CAUTIONS.join(' ')}
      </div>
      <MarksCell className="marks last" />
      <KeptCell className="kept last end" />
    </footer>
  );
}
