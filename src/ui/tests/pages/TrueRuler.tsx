import { PAGE } from '../../text/pieceStepsText.ts';
import { Scrolled } from './Scrolled.tsx';

/** Of the line, and of what is kept free beside it for its figures [mm]. */
const LONG = 100;
const SIDE = 4;
const HIGH = 9;
/** Where the line itself lies, from the top [mm]. */
const FOOT = 4;

const high = (at: number) => (at % 10 === 0 ? 3.4 : at % 5 === 0 ? 2.5 : 1.5);
const TICKS = Array.from({ length: LONG + 1 }, (_, at) => `M${at} ${FOOT}v${-high(at)}`).join('');
const FIGURES = Array.from({ length: LONG / 10 + 1 }, (_, i) => i * 10);

/** A line by which a print-out shows whether it was scaled: all its sizes are in mm, on screen and on paper. */
export function TrueRuler() {
  return (
    <div className="true-ruler">
      <Scrolled className="of-ruler" label={PAGE.rulerLabel}>
        <svg
          width={`${LONG + 2 * SIDE}mm`}
          height={`${HIGH}mm`}
          viewBox={`${-SIDE} 0 ${LONG + 2 * SIDE} ${HIGH}`}
          role="img"
          aria-label={PAGE.rulerLabel}
        >
          <path className="true-line" d={`M0 ${FOOT}H${LONG}`} />
          <path className="true-ticks" d={TICKS} />
          {FIGURES.map((at) => (
            <text key={at} x={at} y={FOOT + 3.6} textAnchor="middle">
              {at}
            </text>
          ))}
        </svg>
      </Scrolled>
      <p>
        <b>{PAGE.ruler}</b> {PAGE.rulerElse} {PAGE.enter}
      </p>
    </div>
  );
}
