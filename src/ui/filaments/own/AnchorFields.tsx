import { strainAtLife } from '../../../core/life/strainLife.ts';
import type { Anchors } from '../../../core/material/ownCurve.ts';
import { withAnchors } from '../../../core/material/ownFilament.ts';
import { CURVE_LIMITS } from '../../../core/material/ownLimits.ts';
import type { OwnFilament, Provenance } from '../../../core/material/types.ts';
import { Sentence } from '../../controls/Sentence.tsx';
import { ValueField } from '../../controls/ValueField.tsx';
import { EDITOR, OWN_SAID } from '../../text/ownText.ts';
import { grouped } from '../../text/numbers.ts';
import type { ReadAt } from '../anchors.ts';
import { figureSpec } from './figureSpec.ts';
import { put } from './put.ts';

interface Props {
  readonly row: OwnFilament;
  readonly at: ReadAt;
  readonly onRead: (at: ReadAt) => void;
  /** Where the curve comes from once it is changed. */
  readonly after: Provenance;
}

const READ = { min: 1, max: 1e9, because: EDITOR.readAt };
const { labels } = EDITOR;
const LABELS = [
  [labels.fewCycles, labels.fewStrain],
  [labels.manyCycles, labels.manyStrain],
] as const;

function useFields({ row, at, onRead, after }: Props) {
  const strains = at.map((cycles) => strainAtLife(cycles, row.life));
  const cycles = (which: 0 | 1) =>
    figureSpec({
      key: `cycles.${which}`,
      label: LABELS[which][0],
      value: at[which],
      limits: READ,
      unit: '',
      isCount: true,
      // Reading the curve elsewhere changes nothing of it.
      take: (value) => {
        if (!(value >= READ.min && value <= READ.max))
          return EDITOR.notRead(LABELS[which][0], grouped(READ.min), grouped(READ.max));
        onRead(which === 0 ? [value, at[1]] : [at[0], value]);
        return undefined;
      },
    });
  const strain = (which: 0 | 1) =>
    figureSpec({
      key: `strain.${which}`,
      label: LABELS[which][1],
      value: Number((strains[which] ?? 0).toPrecision(3)),
      limits: CURVE_LIMITS.firstFlexBreakStrain,
      unit: '',
      take: (value, said, was, run) => {
        const [few, many] = at.map((count, one) => ({
          cycles: count,
          strain: one === which ? value : (strains[one] ?? 0),
        })) as unknown as Anchors;
        return put(withAnchors(row, [few, many], after), OWN_SAID.changed(LABELS[which][1], said, was), run);
      },
    });
  return { cycles, strain };
}

/** How far it may be flexed a few times and how far many: two points that the curve goes through. */
export function AnchorFields(props: Props) {
  const { cycles, strain } = useFields(props);
  const [half, atFew, by, atMany] = EDITOR.anchors;
  return (
    <>
      <Sentence className="in-cell">
        {half}
        <ValueField spec={cycles(0)} />
        {atFew}
        <ValueField spec={strain(0)} />
        {by}
        <ValueField spec={cycles(1)} />
        {atMany}
        <ValueField spec={strain(1)} />
      </Sentence>
      <small>{EDITOR.anchorsMore}</small>
    </>
  );
}
