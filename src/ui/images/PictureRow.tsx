import { IMAGES, numberedName, pixelsText, saveLabel } from '../text/imagesText.ts';
import type { PageFigure } from './figures.ts';
import { dotsNow, type PictureKind } from './savePicture.ts';

interface Props {
  readonly figure: PageFigure;
  readonly onSave: (figure: PageFigure, kind: PictureKind) => void;
}

/** One picture: its name, and what it can be saved as. */
export function PictureRow({ figure, onSave }: Props) {
  const name = numberedName(figure.name, figure.number);
  const { width, height } = dotsNow(figure);
  const button = (kind: PictureKind, text: string) => (
    <button type="button" className="b" aria-label={saveLabel(text, name)} onClick={() => onSave(figure, kind)}>
      {text}
    </button>
  );
  return (
    <li>
      <span>{name}</span>
      {button('SVG', IMAGES.svg)}
      {button('PNG', IMAGES.png)}
      <small className="nw">{pixelsText(width, height)}</small>
    </li>
  );
}
