import { letteringWidth } from '../drawing/lettering.ts';

interface Props {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly isOn: boolean;
  /** Something thin that was passed over: dashed. */
  readonly isPassed?: boolean;
}

/** Half the width of a balloon: a ring, or a stadium where several share it [px]. */
export function balloonReach(text: string): number {
  return Math.max(20, letteringWidth(text, 12) + 10) / 2;
}

/** The number of a thin section as parts are numbered on a print; the one that is looked at is filled. */
export function Balloon({ x, y, text, isOn, isPassed = false }: Props) {
  const reach = balloonReach(text);
  return (
    <g className={`balloon${isOn ? ' on' : ''}${isPassed ? ' passed-over' : ''}`}>
      <rect x={x - reach} y={y - 10} width={2 * reach} height={20} rx={10} />
      <text className="s12" x={x} y={y + 4.2} textAnchor="middle">
        {text}
      </text>
    </g>
  );
}

/** The same in a line of words or a cell. */
export function BalloonSign({ text, isOn, isPassed = false }: Omit<Props, 'x' | 'y'>) {
  const reach = balloonReach(text) + 1;
  return (
    <svg className="balloon-sign" width={2 * reach} height={22} viewBox={`${-reach} -11 ${2 * reach} 22`} aria-hidden>
      <Balloon x={0} y={0} {...{ text, isOn, isPassed }} />
    </svg>
  );
}
