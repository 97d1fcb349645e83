interface CaptionProps {
  readonly number: number;
  readonly name: string;
  /** How to read the figure; gives way to a reading while there is one. */
  readonly aid: string;
  readonly reading: string | undefined;
}

/** The row above a figure. A reading takes the place of the words, so that nothing else moves. */
export function Caption({ number, name, aid, reading }: CaptionProps) {
  return (
    <figcaption className={`chart-caption${reading === undefined ? '' : ' read'}`}>
      <b>Fig. {number}</b>
      <span className="chart-name">{name}</span>
      <span className="chart-aid">{reading ?? aid}</span>
    </figcaption>
  );
}
