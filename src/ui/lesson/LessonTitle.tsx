import { KeptCell, MarksCell } from '../app/TitleCells.tsx';

interface Props {
  /** What is shown, as a small heading with what it says. */
  readonly what: { readonly name: string; readonly says: string };
  /** What it is shown of. */
  readonly setUp: { readonly name: string; readonly says: string };
  /** How far to trust it, and what to heed. */
  readonly caution: string;
}

/** The block at the foot of the pages of this place. */
export function LessonTitle({ what, setUp, caution }: Props) {
  return (
    <footer className="title of-lesson">
      <div className="what">
        <small>{what.name}</small>
        {what.says}
      </div>
      <div className="against">
        <small>{setUp.name}</small>
        {setUp.says}
      </div>
      <MarksCell className="key-marks end" />
      <div className="caution-words last">
        <small>Read this</small>
        {caution}
      </div>
      <KeptCell className="where last end" />
    </footer>
  );
}
