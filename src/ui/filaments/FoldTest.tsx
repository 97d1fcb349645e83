import { useId, useState, type CSSProperties } from 'react';
import { reckonedFolds, type Reckoned } from '../../core/life/reckonedFolds.ts';
import { FOLD_TEST, type Folded } from '../../core/material/evidence.ts';
import { findFilament } from '../../core/material/shelf.ts';
import { cycleTicks } from '../charts/ticks.ts';
import { SaidWithSources } from './SaidWithSources.tsx';
import { bothHoldText, CONFLICT, FIGURE_3, foldedText, foldSourceText, reckonedText } from '../text/filamentsText.ts';
import { pct } from './axes.ts';
import { Upright } from './Upright.tsx';

const PAPER = [1, 1e7] as const;
/** From the left end to the right one, with room for an arrow. */
const share = (cycles: number) => 0.02 + (0.94 * Math.log(Math.max(cycles, 1))) / Math.log(PAPER[1]);

const ARROW = { left: 'M-7-4 0 0-7 4Z', right: 'M7-4 0 0 7 4Z' } as const;

/** What was counted: fewer than, at least, or exactly. */
function Counted({ cycles, says }: Folded) {
  const at = pct(share(cycles));
  if (says === 'fewer') {
    const tip = pct(share(cycles / 60));
    return (
      <>
        <line className="fold-line" x1={tip} x2={at} y1="9" y2="9" />
        <Upright className="fold-line" at={share(cycles)} y={[3, 15]} />
        <svg x={tip} y="9" overflow="visible">
          <path className="I" d={ARROW.right} transform="translate(-3 0)" />
        </svg>
      </>
    );
  }
  return (
    <>
      {says === 'more' && (
        <svg x={at} y="9" overflow="visible">
          <path className="fold-line" d="M4 0H22" />
          <path className="I" d={ARROW.left} transform="translate(28 0)" />
        </svg>
      )}
      <circle className={says === 'at' ? 'I' : 'fold-ring'} cx={at} cy="9" r="4.2" />
    </>
  );
}

/** Our own range below, with a tick at the fold of practice. */
function Ours({ hard, practice, mild }: Reckoned) {
  const [left, right] = [share(hard), share(mild)];
  return (
    <>
      <rect className="fold-ours" x={pct(left)} width={pct(Math.max(right - left, 0.006))} y="19" height="9" />
      <Upright className="range-usual" at={share(practice)} y={[17, 30]} />
    </>
  );
}

/** Where the words stand clear of the arrow. */
function beside({ cycles, says }: Folded): CSSProperties {
  const at = share(cycles);
  return says === 'fewer' ? { left: `calc(${pct(at)} + 5px)` } : { right: `calc(${pct(1 - at)} + 8px)` };
}

function FoldRow({ folded }: { readonly folded: Folded }) {
  const row = folded.row === undefined ? undefined : findFilament(folded.row);
  const ours = row && reckonedFolds(row);
  const said = row && ours ? reckonedText(ours, row.life.maxReportableCycles) : 'no curve of ours';
  return (
    <tr>
      <th scope="row">{folded.name}</th>
      <td>
        <svg className="fold" role="img" aria-label={`Counted: ${foldedText(folded)}; ${said}`}>
          {cycleTicks(PAPER, false).map(({ at }) => (
            <Upright key={at} className="G" at={share(at)} y={[0, 34]} />
          ))}
          {ours && <Ours {...ours} />}
          <Counted {...folded} />
        </svg>
        <span className="fold-says" style={beside(folded)} aria-hidden="true">
          {foldedText(folded)}
        </span>
      </td>
    </tr>
  );
}

/** Fig. 3: what a published test counted beside what our curves give, and how both can hold. */
export function FoldTest() {
  const sourceId = useId();
  const [open, setOpen] = useState(false);
  const nylon = findFilament('pa12');
  return (
    <section className="folds" aria-label="Fig. 3">
      <p className="cap">
        <span>
          <b>Fig. 3</b> {FIGURE_3.name}
        </span>
        <span>{FIGURE_3.aid}</span>
      </p>
      <table className="fold-table" aria-label={FIGURE_3.name}>
        <tbody>
          {FOLD_TEST.map((folded) => (
            <FoldRow key={folded.name} folded={folded} />
          ))}
        </tbody>
      </table>
      <div className="fold-axis" aria-hidden="true">
        <svg className="axis-head">
          {cycleTicks(PAPER, true).map(({ at, text }) => (
            <text key={at} className="s12 t2" x={pct(share(at))} y="12" textAnchor={at === 1 ? 'start' : 'middle'}>
              {text}
            </text>
          ))}
        </svg>
        <span>folds to break</span>
      </div>
      {nylon && (
        <p className="lead">
          <SaidWithSources said={bothHoldText(reckonedFolds(nylon))} />
        </p>
      )}
      <div className="files">
        <button
          className="b"
          type="button"
          aria-expanded={open}
          aria-controls={open ? sourceId : undefined}
          onClick={() => setOpen(!open)}
        >
          {CONFLICT.source}
        </button>
      </div>
      {open && (
        <p className="small" id={sourceId}>
          {foldSourceText()}
        </p>
      )}
    </section>
  );
}
