/** Lines of plastic at their true width: an inked edge, the bead, and its ridge where there is room to show it. */
export function Beads({ d, width }: { readonly d: string; readonly width: number }) {
  const edge = width > 10 ? 1.8 : 1.2;
  return (
    <g className="beads">
      <path d={d} style={{ stroke: 'var(--ink)', strokeWidth: width }} />
      <path d={d} style={{ stroke: 'var(--bead)', strokeWidth: Math.max(0.6, width - edge) }} />
      {width > 6 && <path d={d} style={{ stroke: 'var(--beadhi)', strokeWidth: width * 0.36 }} />}
    </g>
  );
}
