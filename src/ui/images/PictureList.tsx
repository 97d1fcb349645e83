import { useState, type KeyboardEvent } from 'react';
import { useMessages } from '../../store/messages.ts';
import { foundText, IMAGES, notSaved, pictureFileName, savedText } from '../text/imagesText.ts';
import type { PageFigure } from './figures.ts';
import { PictureRow } from './PictureRow.tsx';
import { savePicture, type PictureKind } from './savePicture.ts';
import { subjectOfPage } from './subjectOfPage.ts';
import { useFigures } from './useFigures.ts';

/** The pictures of the page in front, each to be saved. */
export function PictureList({ onClose }: { readonly onClose: () => void }) {
  const figures = useFigures();
  const [isGrey, setGrey] = useState(false);
  const [said, setSaid] = useState('');
  const say = useMessages((state) => state.say);
  const escape = (event: KeyboardEvent) => {
    if (event.key === 'Escape') onClose();
  };
  const save = (figure: PageFigure, kind: PictureKind) => {
    const { name, number } = figure;
    const file = pictureFileName(subjectOfPage(), name, `.${kind.toLowerCase()}`, number);
    setSaid('');
    savePicture(figure, kind, isGrey, file).then(
      () => setSaid(savedText(file)),
      () => say({ grade: 'fail', text: notSaved(name, kind) }),
    );
  };
  return (
    // oxlint-disable-next-line jsx-a11y/no-static-element-interactions -- Escape leaves from wherever the focus is in it
    <div className="picture-list" onKeyDown={escape}>
      {figures.length > 0 && (
        <>
          <p className="picture-intro">{IMAGES.intro}</p>
          <label className="picture-print">
            <input type="checkbox" checked={isGrey} onChange={() => setGrey(!isGrey)} /> {IMAGES.print}
          </label>
          <ul>
            {figures.map((figure) => (
              <PictureRow key={`${figure.name} ${figure.number}`} figure={figure} onSave={save} />
            ))}
          </ul>
        </>
      )}
      <output>{said === '' ? foundText(figures.length) : said}</output>
    </div>
  );
}
