import { useEffect, type ReactNode } from 'react';
import type { Piece, PiecesAsked } from '../../../core/coupons/piece.ts';
import type { Problem } from '../../../core/problems.ts';
import { pageTables } from '../../text/pieceBoxesText.ts';
import { cautionsText, settingsText, stepsText } from '../../text/pieceStepsText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { pieceNotesText } from '../../text/plateText.ts';
import { PIECE_WORDS } from '../../text/pieceText.ts';
import { PAGE } from '../../text/testPageText.ts';
import { AngleGuide } from './AngleGuide.tsx';
import { Boxes } from './Boxes.tsx';
import './page.css';
import './boxes.css';
import './pagePaper.css';
import { guideAside, guideWidth } from './guides.ts';
import { PiecePicture, pictureWidth } from './PiecePicture.tsx';
import { Protractor, PROTRACTOR_WIDTH } from './Protractor.tsx';
import { TrueRuler } from './TrueRuler.tsx';

export interface TestPageProps {
  readonly piece: Piece;
  readonly asked: PiecesAsked;
  /** One line each; empty where it is not known yet, and then there is a line to write it on. */
  readonly filament: string;
  readonly printer: string;
  readonly spool: string;
  readonly unit: LengthUnit;
  /** What the piece cannot do of what was asked. */
  readonly notes: readonly Problem[];
  readonly onBack: () => void;
}

/** A line of the head: filled in, or to be filled in. */
function Line({ name, text = '' }: { readonly name: string; readonly text?: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{text}</dd>
    </div>
  );
}

function Head({ piece, filament, printer, spool }: Pick<TestPageProps, 'piece' | 'filament' | 'printer' | 'spool'>) {
  const { name, purpose } = PIECE_WORDS[piece.id];
  return (
    <header>
      <div>
        <h2>{name}</h2>
        <p>{purpose}</p>
      </div>
      <dl>
        <Line name={PAGE.filament} text={filament} />
        <Line name={PAGE.spool} text={spool} />
        <Line name={PAGE.printer} text={printer} />
        <Line name={PAGE.date} />
      </dl>
    </header>
  );
}

function List({
  name,
  ordered = false,
  lines,
}: {
  readonly name: string;
  readonly ordered?: boolean;
  readonly lines: readonly string[];
}) {
  const items: ReactNode = lines.map((line) => <li key={line}>{line}</li>);
  return (
    <section className={ordered ? 'steps' : 'page-list'} aria-label={name}>
      <h3>{name}</h3>
      {ordered ? <ol>{items}</ol> : <ul>{items}</ul>}
    </section>
  );
}

/** Beside a drawing that is no wider than this there is room for words [mm]. */
const ROOM_BESIDE = 118;
/** Two drawings are at most so wide side by side, with 6 mm between them [mm]. */
const ROOM_OF_TWO = 180;

type Shown = Pick<TestPageProps, 'piece' | 'asked' | 'unit'>;

function Notes({ piece, asked, unit }: Shown) {
  return (
    <div className="page-notes">
      <List name={PAGE.settings} lines={settingsText(piece, asked, unit)} />
      <List name={PAGE.cautions} lines={cautionsText(piece.id)} />
    </div>
  );
}

/** What a strip is laid on or held over, and how wide that is [mm]. */
function laidOn({ piece, asked, unit }: Shown): { readonly shown: ReactNode; readonly wide: number } {
  if (piece.slotTurn !== undefined) return { shown: <Protractor held={piece.slotTurn} />, wide: PROTRACTOR_WIDTH };
  const found = guideAside(piece, asked, unit);
  return found ? { shown: <AngleGuide {...found} />, wide: guideWidth(found.guide.frame) } : { shown: null, wide: 0 };
}

/** The piece, beside it what its strip is laid on or the notes where they have room, and what has none under it. */
function Top(props: Shown) {
  const wide = pictureWidth(props.piece, props.asked);
  const { shown, wide: other } = laidOn(props);
  const isBeside = other > 0 && wide + other <= ROOM_OF_TWO;
  const hasRoom = !isBeside && wide <= ROOM_BESIDE;
  const isUnder = hasRoom && other <= ROOM_BESIDE;
  return (
    <>
      <div className="page-top">
        <div>
          <PiecePicture {...props} />
          {isUnder && shown}
        </div>
        {isBeside && shown}
        {hasRoom && <Notes {...props} />}
      </div>
      {!isBeside && !isUnder && shown}
      {!hasRoom && <Notes {...props} />}
    </>
  );
}

/** The page of one test piece, to be printed: what to do, and boxes for what came of it. */
export function TestPage(props: TestPageProps) {
  const { piece, asked, unit, notes, onBack } = props;
  const { name } = PIECE_WORDS[piece.id];
  useEffect(() => window.scrollTo(0, 0), []);
  return (
    <main className="page-place" aria-label={`${PAGE.bar}: ${name}`}>
      <div className="page-bar">
        <button type="button" className="b" onClick={() => window.print()}>
          {PAGE.print}
        </button>
        <button type="button" className="b quiet" onClick={onBack}>
          {PAGE.back}
        </button>
      </div>
      <article className="test-page" aria-label={name}>
        <Head {...props} />
        <Top {...{ piece, asked, unit }} />
        {notes.length > 0 && <p>{pieceNotesText(notes)}</p>}
        <List name={PAGE.steps} ordered lines={stepsText(piece, asked, unit)} />
        {pageTables(piece, asked, unit).map((table) => (
          <Boxes key={table.heading} table={table} />
        ))}
        <footer>
          <TrueRuler />
        </footer>
      </article>
    </main>
  );
}
