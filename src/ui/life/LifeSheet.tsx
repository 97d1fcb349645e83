import { lazy, memo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Joint } from '../../core/design/joint.ts';
import { familyOf } from '../../core/flexures/known.ts';
import { putting } from '../joints/putting.ts';
import { Late } from '../app/Late.tsx';
import type { LengthUnit } from '../text/numbers.ts';
import { IN_USE, IN_USE_AID } from '../text/useText.ts';
import { AfterBend } from './AfterBend.tsx';
import { HeldBent } from './HeldBent.tsx';
import './life.css';
import { RatioFigure } from './RatioFigure.tsx';
import { UseSentences } from './UseSentences.tsx';
import { WearTable } from './WearTable.tsx';

// It asks for many prints to be worked out, and what stands above it must not wait.
const HowSure = memo(lazy(async () => ({ default: (await import('./sure/HowSure.tsx')).HowSure })));

interface LifeSheetProps {
  readonly joint: Joint;
  /** Of this joint, or for a moment of the one before it. */
  readonly assessment: Assessment;
  readonly unit: LengthUnit;
  /** `said` is in the past tense with the old value; changes with the same `run` are one step to undo. */
  readonly onChange: (next: Joint, said: string, run?: string) => void;
}

/** How a joint is used, and what that does to it: who wears it, what stays after a bend, and what holding it bent does. */
export function LifeSheet({ joint, assessment: a, unit, onChange }: LifeSheetProps) {
  const family = familyOf(joint);
  const of = { joint, family, unit, put: putting(joint, family, unit, onChange) };
  return (
    <section className="in-use" aria-label={IN_USE}>
      <h2 className="h">
        {IN_USE}
        <span className="aside">{IN_USE_AID}</span>
      </h2>
      <UseSentences of={of} filament={a.filament} />
      <Figures assessment={a} unit={unit} />
      <Late fallback={<div className="sure-coming" />}>
        <HowSure assessment={a} unit={unit} />
      </Late>
    </section>
  );
}

/** They wait with the curves for what is being looked at. */
const Figures = memo(function Figures({ assessment: a, unit }: Pick<LifeSheetProps, 'assessment' | 'unit'>) {
  return (
    <div className="life-figures">
      <section className="life-figure">
        <WearTable assessment={a} unit={unit} />
        <RatioFigure assessment={a} unit={unit} />
      </section>
      <section className="life-figure">
        <AfterBend assessment={a} unit={unit} />
      </section>
      <section className="life-figure">
        <HeldBent assessment={a} unit={unit} />
      </section>
    </div>
  );
});
