import { useEffect, useMemo, useState } from 'react';
import type { PartFindings, PartSection } from '../../core/inspect/flexure.ts';
import type { PartPicture } from '../../core/inspect/picture/picture.ts';
import { along3 } from '../../core/geometry/mesh/vector3.ts';
import { useChecked } from './checked.ts';
import { checker, usePartCheck } from './partCheck.ts';

/** Room at both sides together for the marks of the cut, in screen px. */
const BESIDE = 64;
/** Tallest picture, in screen px. */
const TALLEST = 250;

/** The outline of what is cut, on the part. */
function traceOf({ outlines, origin, right, up }: PartSection) {
  return outlines.map((loop) =>
    [...loop, ...loop.slice(0, 1)].map(({ x, y }) => along3(along3(origin, right, x), up, y)),
  );
}

/** First the thin sections, then what was passed over. */
function marksOf({ flexures, passedOver }: PartFindings) {
  return [
    ...flexures.map(({ centre, depth, thickness }) => ({ at: centre, within: Math.max(depth, thickness.least) })),
    ...passedOver.map(({ at, thickness }) => ({ at, within: thickness })),
  ];
}

/** The picture of the part as it lies, with a mark for each thin section and each that was passed over; the one before while another is drawn. */
export function usePicture(section: PartSection | undefined, width: number, pxPerMm: number): PartPicture | undefined {
  const { part, values } = useChecked();
  const asked = usePartCheck(({ standing }) => standing?.asked);
  const { up } = values.as;
  const [drawn, setDrawn] = useState<{ readonly part: unknown; readonly picture: PartPicture }>();
  const options = useMemo(
    () => ({
      room: { width: (width - BESIDE) / pxPerMm, height: TALLEST / pxPerMm },
      marks: marksOf(part.findings),
      traces: section ? traceOf(section) : [],
    }),
    [part, section, width, pxPerMm],
  );
  useEffect(() => {
    if (!asked || width < 120) return undefined;
    const { file, key } = asked;
    const { unit } = part.unit;
    const request = checker.ask('picture', 'drawPart', { file, key, name: file.name, unit, up, options });
    let isWanted = true;
    void request.settled.then((settled) => {
      if (isWanted && settled.how === 'answered' && settled.value.ok) setDrawn({ part, picture: settled.value.value });
    });
    return () => {
      isWanted = false;
    };
  }, [asked, part, up, options, width]);
  return drawn?.part === part ? drawn.picture : undefined;
}
