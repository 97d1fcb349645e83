import { useEffect, type ReactNode } from 'react';
import type { Piece, PiecesAsked } from '../../../core/coupons/piece.ts';
import type { Problem } from '../../../core/problems.ts';
import { pageTables } from '../../text/pieceBoxesText.ts';
import { cautionsText, PAGE, settingsText, stepsText } from '../../text/pieceStepsText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { pieceNotesText } from '../../text/plateText.ts';
import { PIECE_WORDS } from '../../text/pieceText.ts';
import { Boxes } from './Boxes.tsx';
import './page.css';
import './boxes.css';
import './pagePaper.css';
import { PiecePicture, pictureWidth } from './PiecePicture.tsx';
import { Protractor } from './Protractor.tsx';
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
const ROOM_BESIDE = 112;

function Notes({ piece, asked }: Pick<TestPageProps, 'piece' | 'asked'>) {
  return (
    <div className="page-notes">
      <List name={PAGE.settings} lines={settingsText(piece, asked)} />
      <List name={PAGE.cautions} lines={cautionsText(piece.id)} />
    </div>
  );
}

/** The piece, and beside it the protractor that its strip is laid on, or the notes where they have room. */
function Top({ piece, asked }: Pick<TestPageProps, 'piece' | 'asked'>) {
  const { slotTurn } = piece;
  const hasRoom = slotTurn === undefined && pictureWidth(piece, asked) <= ROOM_BESIDE;
  return (
    <>
      <div className="page-top">
        <PiecePicture piece={piece} asked={asked} />
        {slotTurn !== undefined && <Protractor held={slotTurn} />}
        {hasRoom && <Notes piece={piece} asked={asked} />}
      </div>
      {!hasRoom && <Notes piece={piece} asked={asked} />}
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
        <Top piece={piece} asked={asked} />
        {notes.length > 0 && <p>{pieceNotesText(notes)}</p>}
        <List name={PAGE.steps} ordered lines={stepsText(piece, asked)} />
        {pageTables(piece, asked, unit).map((table) => (
          <Boxes key={table.heading} table={table} />
        ))}
        <footer>
          <TrueRuler unit={unit} />
        </footer>
      </article>
    </main>
  );
}
