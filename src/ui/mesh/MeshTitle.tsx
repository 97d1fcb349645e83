import { findFilament } from '../../core/material/shelf.ts';
import { KeptCell, MarksCell } from '../app/TitleCells.tsx';
import { lengthFigure } from '../text/numbers.ts';
import { scaleFigure } from '../text/meshFigureText.ts';
import { CHECK } from '../text/checkText.ts';
import { CAUTIONS } from '../text/shellText.ts';
import type { Checked } from './checked.ts';

/** The block at the foot of this place. */
export function MeshTitle({ checked }: { readonly checked: Checked | undefined }) {
  const profile = checked?.values.as.profile;
  const size = (value: number, places?: number) => lengthFigure(value, checked?.unit ?? 'mm', places);
  return (
    <footer className="title of-mesh">
      <div className={checked ? 'part' : 'alone end'}>
        <small>Part file</small>
        {checked?.name ?? 'none yet'}
      </div>
      {checked && profile && (
        <>
          <div className="joint">
            <small>Thin sections</small>
            {checked.judged.length}
          </div>
          <div className="filament">
            <small>Filament</small>
            {findFilament(profile.filament)?.name ?? profile.filament}, nominal
          </div>
          <div className="profile">
            <small>Print profile, {checked.unit}</small>
            {size(profile.nozzle, checked.unit === 'mm' ? 1 : undefined)} nozzle, {size(profile.lineWidth)} ×{' '}
            {size(profile.layerHeight)}
          </div>
          <div className="scale end">
            <small>Scale</small>
            {scaleFigure(checked.values.as.scale)}
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
