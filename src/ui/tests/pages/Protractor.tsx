import { asRad, degrees, radians, type Rad } from '../../../core/units.ts';
import { PAGE } from '../../text/testPageText.ts';
import { onRound } from './rounds.ts';
import { Scrolled } from './Scrolled.tsx';

/** Radius of the rim, and how far the base line goes to either side of the centre [mm]. */
const RIM = 44;
const BASE = 50;
const BELOW = 7;
const ABOVE = 6;

/** How wide it is drawn [mm]. */
export const PROTRACTOR_WIDTH = 2 * BASE + 2;

const long = (at: number) => (at % 10 === 0 ? 4.5 : at % 5 === 0 ? 3 : 1.6);
const at = (angle: number, radius: number) => onRound({ x: 0, y: 0 }, radius, asRad(radians(angle)));

const TICKS = Array.from({ length: 181 }, (_, angle) => {
  const [out, inner] = [at(angle, RIM), at(angle, RIM - long(angle))];
  return `M${out.x} ${out.y}L${inner.x} ${inner.y}`;
}).join('');

/** Rays from the rim towards the centre, to carry a line on by eye. */
const RAYS = Array.from({ length: 17 }, (_, i) => {
  const angle = 10 * (i + 1);
  const [out, inner] = [at(angle, RIM - 10.5), at(angle, angle % 30 === 0 ? 3 : 12)];
  return `M${out.x} ${out.y}L${inner.x} ${inner.y}`;
}).join('');

/** Half a round with every degree, to lay a strip on and read the angle that stayed; where it was held at is marked. */
export function Protractor({ held }: { readonly held: Rad | undefined }) {
  const rim = `M${RIM} 0A${RIM} ${RIM} 0 0 0 ${-RIM} 0`;
  const heldAngle = held === undefined ? undefined : degrees(held);
  return (
    <figure className="protractor">
      <Scrolled className="of-figure" label={PAGE.protractor}>
        <svg
          width={`${PROTRACTOR_WIDTH}mm`}
          height={`${RIM + ABOVE + BELOW}mm`}
          viewBox={`${-BASE - 1} ${-RIM - ABOVE} ${PROTRACTOR_WIDTH} ${RIM + ABOVE + BELOW}`}
          role="img"
          aria-label={PAGE.protractorLabel}
        >
          <path className="thin" d={TICKS} />
          <path className="hair" d={RAYS} />
          <path className="wide" d={`M${-BASE} 0H${BASE}`} />
          <path className="thin" d={`${rim}M0 3V-6`} />
          {Array.from({ length: 19 }, (_, i) => {
            const angle = i * 10;
            const { x, y } = at(angle, RIM - 7.6);
            // Those at the ends would stand on the base line.
            const up = angle % 180 === 0 ? -1 : 1.1;
            return (
              <text key={angle} x={x} y={y + up} textAnchor="middle">
                {angle}
              </text>
            );
          })}
          <text x={-BASE} y={4} textAnchor="start">
            {PAGE.laidEnd}
          </text>
          {heldAngle !== undefined && heldAngle <= 180 && <Held angle={heldAngle} />}
        </svg>
      </Scrolled>
      <figcaption>
        <b>{PAGE.protractor}</b> {PAGE.protractorSays}
      </figcaption>
    </figure>
  );
}

function Held({ angle }: { readonly angle: number }) {
  const [tip, out] = [at(angle, RIM + 0.6), at(angle, RIM + 3)];
  return (
    <g>
      <path className="wide" d={`M${tip.x} ${tip.y}L${out.x} ${out.y}`} />
      <text x={out.x} y={out.y - 0.8} textAnchor={angle > 90 ? 'end' : 'start'}>
        {PAGE.heldAt}
      </text>
    </g>
  );
}
