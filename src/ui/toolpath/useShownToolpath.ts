import { useEffect, useLayoutEffect, useMemo, useState } from 'react';
import type { Joint } from '../../core/design/joint.ts';
import type { PlaceAudit } from '../../core/inspect/toolpath/audit.ts';
import { auditPlace } from '../../core/inspect/toolpath/auditPlace.ts';
import type { PlaceNear } from '../../core/inspect/toolpath/checkedToolpath.ts';
import type { JudgedPlace } from '../../core/inspect/toolpath/judgedPlace.ts';
import { judgePlace, wantedOfFile, wantedOfJoint } from '../../core/inspect/toolpath/judgePlace.ts';
import type { Near } from '../../core/inspect/toolpath/near.ts';
import type { Place } from '../../core/inspect/toolpath/place.ts';
import { useChoices } from '../../store/choices.ts';
import { useSession } from '../../store/session.ts';
import { useToolpaths, type ToolpathValues } from '../../store/toolpaths.ts';
import { problemText } from '../text/problemText.ts';
import { heldJoint } from './heldAgainst.ts';
import { lookAtFile } from './lookAt.ts';
import { knownPlaces, wantedPlaces } from './places.ts';
import type { ShownToolpath } from './shown.ts';
import { reader, takeOthers, useToolpathCheck } from './toolpathCheck.ts';
import { useCarried, type Carried } from './useCarried.ts';

/** What was cut already: it hangs on nothing but what lies near and how thick the filament is. */
const audits = new WeakMap<Near, { readonly diameter: number; readonly audit: PlaceAudit }>();

function auditOf({ place, near }: PlaceNear, diameter: number): PlaceAudit {
  const known = audits.get(near);
  if (known?.diameter === diameter) return known.audit;
  const audit = auditPlace(place, near, diameter);
  audits.set(near, { diameter, audit });
  return audit;
}

function judge(one: PlaceNear, diameter: number, values: ToolpathValues, joints: readonly Joint[]): JudgedPlace {
  const audit = auditOf(one, diameter);
  const joint = heldJoint(one.place, values, joints);
  const wanted = joint ? wantedOfJoint(joint) : wantedOfFile(audit, one.place);
  return judgePlace(one.place, audit, wanted, joint);
}

/** Asks for what lies near places of which that is not known yet; says why where it cannot be told. */
function useOthers(missing: readonly Place[]): string | undefined {
  const standing = useToolpathCheck((state) => state.standing);
  const unit = useChoices((state) => state.unit);
  const [trouble, setTrouble] = useState<{ readonly of: unknown; readonly why: string }>();
  const asked = JSON.stringify(missing);
  useEffect(() => {
    const places = JSON.parse(asked) as readonly Place[];
    if (!standing || places.length === 0) return;
    const { asked: what, value } = standing;
    const { pitch } = value.figures;
    const input = { file: what.file, diameter: value.filament.diameter, places, ...(pitch !== undefined && { pitch }) };
    void reader.ask('near', 'nearPlaces', input).settled.then((settled) => {
      if (settled.how === 'failed') setTrouble({ of: asked, why: settled.message });
      if (settled.how !== 'answered') return;
      if (settled.value.ok) takeOthers(value, settled.value.value);
      else setTrouble({ of: asked, why: problemText(settled.value.problems[0], unit) });
    });
  }, [standing, asked, unit]);
  return trouble?.of === asked ? trouble.why : undefined;
}

export interface Looking {
  readonly shown: ShownToolpath | undefined;
  /** Of which it is not known yet what lies near them. */
  readonly missing: readonly Place[];
  readonly trouble: string | undefined;
  readonly carried: Carried | undefined;
}

/** The toolpath that stands, judged for what stands in the brief. */
export function useShownToolpath(): Looking {
  const { standing, others } = useToolpathCheck();
  const values = useToolpaths((state) => state.values);
  const unit = useChoices((state) => state.unit);
  const joints = useSession((state) => state.part.joints);
  const own = useSession((state) => state.own);
  const carried = useCarried();
  const carriedOver = carried?.places;
  const { places, missing } = useMemo(() => {
    if (!standing) return { places: [], missing: [] };
    const toolpath = standing.value;
    return knownPlaces(wantedPlaces(toolpath, carriedOver ?? [], values), [...toolpath.places, ...others]);
  }, [standing, carriedOver, values, others]);
  const judged = useMemo(
    () => places.map((one) => judge(one, standing?.value.filament.diameter ?? 0, values, joints)),
    // oxlint-disable-next-line react/exhaustive-deps -- a filament of one's own is looked up on its shelf
    [places, standing, values, joints, own],
  );
  const trouble = useOthers(missing);
  const file = standing?.asked.file;
  useLayoutEffect(() => {
    if (file) lookAtFile(file, judged);
  }, [file, judged]);
  if (!standing) return { shown: undefined, missing, trouble, carried };
  const { asked, value: toolpath } = standing;
  const { name, size: bytes } = asked.file;
  return { shown: { toolpath, name, bytes, unit, places, judged }, missing, trouble, carried };
}
