import type { Label } from './lettering.ts';
import type { Arrow, Marks } from './marks.ts';

const TONES = { ink: '', bold: 'tb', quiet: 't2', pencil: 'ta', fault: 'tf' } as const;

function Words({ text, x, y, anchor, tone, size, upright }: Label) {
  const place = upright === true ? { transform: `translate(${x} ${y}) rotate(-90)` } : { x, y };
  return (
    <text {...place} textAnchor={anchor} className={`halo ${TONES[tone]} ${size === 12 ? 's12' : ''}`}>
      {text}
    </text>
  );
}

function Head({ x, y, turn }: Arrow) {
  return (
    <path
      className="I"
      d="M0 0L-9 1.7V-1.7Z"
      transform={`translate(${x.toFixed(2)} ${y.toFixed(2)}) rotate(${turn.toFixed(1)})`}
    />
  );
}

/** Dimensions, leaders and their words. */
export function MarksView({ marks }: { readonly marks: Marks }) {
  return (
    <g>
      {marks.lines !== '' && <path className="L" d={marks.lines} />}
      {marks.heavy !== '' && <path className="W cut" d={marks.heavy} />}
      {marks.arrows.map((arrow) => (
        <Head key={`${arrow.x} ${arrow.y} ${arrow.turn}`} {...arrow} />
      ))}
      {marks.labels.map((label) => (
        <Words key={`${label.text} ${label.x} ${label.y}`} {...label} />
      ))}
    </g>
  );
}
