interface CaptionProps {
  readonly number: number;
  readonly name: string;
  /** How to read the figure; gives way to a reading while there is one. */
  readonly aid: string;
  readonly reading: string | undefined;
}

/** The row above a figure. The reading takes the place of the aid, so that nothing moves. */
export function Caption({ number, name, aid, reading }: CaptionProps) {
  return (
    <figcaption className="chart-caption">
      <span>
        <b>Fig. {number}</b> {name}
      </span>
      {reading === undefined ? <span>{aid}</span> : <span className="chart-reading">{reading}</span>}
    </figcaption>
  );
}
