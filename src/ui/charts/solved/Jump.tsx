interface JumpProps {
  readonly from: number;
  readonly to: number;
  readonly y: number;
}

/** The jump under a weight: dotted, level, an arrow where it lands or leaves the paper. */
export function Jump({ from, to, y }: JumpProps) {
  const way = Math.sign(to - from);
  return (
    <g className="chart-jump">
      <path d={`M${from + 6 * way} ${y}H${to - 7 * way}`} />
      <path className="head" d={`M${to} ${y}l${-8 * way} -3.4v6.8Z`} />
    </g>
  );
}
