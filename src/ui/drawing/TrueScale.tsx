import { useId, useState } from 'react';
import { NOMINAL_PX_PER_MM } from './sheet.ts';
import { PX_PER_MM } from './usePxPerMm.ts';

/** Long edge of a bank card [mm], the ID-1 format of ISO/IEC 7810. */
const CARD = 85.6;

interface Props {
  readonly pxPerMm: number;
  /** Room for the bar [px]. */
  readonly width: number;
  readonly onUse: (pxPerMm: number) => void;
  readonly onClose: () => void;
}

/** Makes a millimetre on this screen a true one: the bar is drawn as long as a bank card held against it. */
export function TrueScale({ pxPerMm, width, onUse, onClose }: Props) {
  const [tried, setTried] = useState(pxPerMm);
  const id = useId();
  const long = CARD * tried;
  // A card longer than the sheet is wide is held upright.
  const isUpright = CARD * 1.25 * pxPerMm > width;
  const bar = isUpright ? `M1 1H17M1 ${long + 1}H17M9 1V${long + 1}` : `M1 1V17M${long + 1} 1V17M1 9H${long + 1}`;
  return (
    <section className="true-scale" aria-labelledby={`${id}-head`}>
      <h3 id={`${id}-head`}>Is a millimetre true on this screen?</h3>
      <p>
        Hold the long edge of a bank card, 85.60 mm, against the bar and make the bar as long as the card. The drawing
        then is at the scale it states.
      </p>
      <svg
        aria-hidden="true"
        width={isUpright ? 18 : Math.ceil(long + 2)}
        height={isUpright ? Math.ceil(long + 2) : 18}
        className="card-edge"
      >
        <path d={bar} />
      </svg>
      <label htmlFor={`${id}-range`}>length of the bar</label>
      <input
        id={`${id}-range`}
        type="range"
        min={PX_PER_MM.min}
        max={Math.min(PX_PER_MM.max, isUpright ? 8 : (width - 4) / CARD)}
        step={0.005}
        value={tried}
        aria-valuetext={`${(long / NOMINAL_PX_PER_MM / CARD).toFixed(3)} times the nominal length`}
        onChange={(event) => setTried(Number(event.currentTarget.value))}
      />
      <div className="files">
        <button
          type="button"
          className="b"
          onClick={() => {
            onUse(tried);
            onClose();
          }}
        >
          They are equal
        </button>
        <button type="button" className="b" onClick={() => setTried(NOMINAL_PX_PER_MM)}>
          Back to 96 px an inch
        </button>
        <button type="button" className="b" onClick={onClose}>
          Leave it
        </button>
      </div>
    </section>
  );
}
