import { useState } from 'react';
import { strainAtLife } from '../../../core/life/strainLife.ts';
import type { Anchors } from '../../../core/material/ownCurve.ts';
import { withAnchors, withCurve, withCurveOf } from '../../../core/material/ownFilament.ts';
import { CURVE_LIMITS, type CurveFigure } from '../../../core/material/ownLimits.ts';
import type { OwnFilament, Provenance } from '../../../core/material/types.ts';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { Sentence } from '../../controls/Sentence.tsx';
import { ValueField } from '../../controls/ValueField.tsx';
import { EDITOR, OWN_SAID, provenanceOf, TOLD_ASKS, wordsOf } from '../../text/ownText.ts';
import { figureSpec } from './figureSpec.ts';
import { put } from './put.ts';
import { afterChange, toldOf, toldSpec } from './told.ts';
import { WordsField } from './WordsField.tsx';

interface Props {
  readonly filament: OwnFilament;
  readonly base: OwnFilament | undefined;
}

/** Where the curve is read until somebody reads it elsewhere. */
const READ_AT = [1000, 1_000_000] as const;

const { ways, labels } = EDITOR;
const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);

function useOrigin({ filament, base }: Props) {
  const { provenance } = filament.life;
  const isAsMade = base !== undefined && same(filament.life, { ...base.life, note: filament.life.note });
  return { now: toldOf(provenance, isAsMade), after: afterChange(provenance, isAsMade) };
}

/** How far it may be flexed a few times and how far many: two points that the curve goes through. */
function AnchorLine({ filament, after }: { readonly filament: OwnFilament; readonly after: Provenance }) {
  const [cycles, setCycles] = useState<readonly [number, number]>(READ_AT);
  const [few, many] = cycles.map((count) => ({ cycles: count, strain: strainAtLife(count, filament.life) }));
  if (!few || !many) return null;

  const count = (at: 0 | 1, label: string) =>
    figureSpec({
      key: `cycles.${at}`,
      label,
      value: cycles[at],
      limits: { min: 1, max: 1e9, because: 'where the curve is read' },
      unit: '',
      isCount: true,
      // Reading the curve elsewhere changes nothing of it.
      take: (value) => {
        setCycles(at === 0 ? [value, cycles[1]] : [cycles[0], value]);
        return undefined;
      },
    });
  const strain = (at: 0 | 1, label: string) =>
    figureSpec({
      key: `strain.${at}`,
      label,
      value: Number((at === 0 ? few : many).strain.toPrecision(3)),
      limits: CURVE_LIMITS.firstFlexBreakStrain,
      unit: '',
      take: (value, said, was, run) => {
        const anchors: Anchors = at === 0 ? [{ ...few, strain: value }, many] : [few, { ...many, strain: value }];
        return put(withAnchors(filament, anchors, after), OWN_SAID.changed(label, said, was), run);
      },
    });

  return (
    <Sentence className="own-value">
      {ways.few[0]}
      <ValueField spec={count(0, labels.fewCycles)} />
      {ways.few[1]}
      <ValueField spec={strain(0, labels.fewStrain)} />, {ways.many[0]}
      <ValueField spec={count(1, labels.manyCycles)} />
      {ways.many[1]}
      <ValueField spec={strain(1, labels.manyStrain)} />.
    </Sentence>
  );
}

/** The figures of the curve that are given as they are. */
const FIGURES: readonly { readonly name: CurveFigure; readonly says: string; readonly unit: string }[] = [
  { name: 'firstFlexBreakStrain', says: ways.first, unit: '' },
  { name: 'sigmaLog10N', says: ways.scatter, unit: ways.scatterUnit },
  { name: 'doubtFactor', says: ways.doubt, unit: '' },
  { name: 'gamma', says: ways.back, unit: '' },
  { name: 'maxReportableCycles', says: ways.counted, unit: ways.countedUnit },
];

function FigureLine({
  filament,
  after,
  name,
  says,
  unit,
}: (typeof FIGURES)[number] & { readonly filament: OwnFilament; readonly after: Provenance }) {
  const { what } = CURVE_LIMITS[name];
  const label = `${what.charAt(0).toUpperCase()}${what.slice(1)}`;
  const spec = figureSpec({
    key: name,
    label,
    value: filament.life[name],
    limits: CURVE_LIMITS[name],
    unit,
    isCount: name === 'maxReportableCycles',
    take: (value, said, was, run) =>
      put(withCurve(filament, { [name]: value }, after), OWN_SAID.changed(label, said, was), run),
  });
  return (
    <Sentence className="own-value">
      {says}
      <ValueField spec={spec} />.
    </Sentence>
  );
}

/** The life curve: two anchors, the spread, the doubt, and where all of it comes from. */
export function CurveLines({ filament, base }: Props) {
  const { now, after } = useOrigin({ filament, base });
  const origin = toldSpec({
    key: 'life.told',
    label: labels.curve,
    now,
    from: base?.name,
    isRule: false,
    take: (told, text) => {
      const said = OWN_SAID.origin(labels.curve, text);
      if (told === 'as made') return base && put(withCurveOf(filament, base), said);
      return put(withCurve(filament, {}, provenanceOf(told, '')), said);
    },
  });
  return (
    <section className="own-curve" aria-label={EDITOR.curve}>
      <h3 className="h">{EDITOR.curve}</h3>
      <AnchorLine {...{ filament, after }} />
      {FIGURES.map((figure) => (
        <FigureLine key={figure.name} {...figure} {...{ filament, after }} />
      ))}
      <Sentence className="own-value">
        {labels.curve}: <ChoiceField spec={origin} />
        {now !== 'as made' && (
          <WordsField
            label={EDITOR.words(labels.curve)}
            words={wordsOf(filament.life.provenance)}
            asks={TOLD_ASKS[now]}
            onChange={(words) =>
              void put(
                withCurve(filament, {}, provenanceOf(now, words)),
                OWN_SAID.origin(labels.curve, words || TOLD_ASKS[now]),
              )
            }
          />
        )}
      </Sentence>
    </section>
  );
}
