import type { PlacedLabel } from './labels.ts';

const CLASS: Readonly<Record<PlacedLabel['look'], string>> = { ink: '', quiet: 't2', bold: 'tb', pencil: 'ta' };

/** Words on the plot, each with its leader when it stands away from what it names. */
export function PlacedLabels({ labels }: { readonly labels: readonly PlacedLabel[] }) {
  return labels.map(({ key, text, look, covers, x, y, anchor, leader }) => (
    <g key={key} className={`chart-label ${CLASS[look]}`}>
      {leader && <path d={`M${leader.x} ${leader.y}L${x + (anchor === 'end' ? 3 : -3)} ${y - 4}`} />}
      <text className={`${CLASS[look]}${covers ? ' halo' : ''}`} x={x} y={y} textAnchor={anchor}>
        {text}
      </text>
    </g>
  ));
}
