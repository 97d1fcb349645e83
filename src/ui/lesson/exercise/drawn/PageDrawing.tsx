import type { AnyExercise, Givens } from '../../../../core/lesson/exercises/exerciseOf.ts';
import { FILAMENT_LETTERS } from '../../../../core/lesson/exercises/filamentAgainstFilament.ts';
import { ROOT_LETTERS } from '../../../../core/lesson/exercises/filletOrCorner.ts';
import { chanceTable, lifeCurve, LONG_LETTERS } from '../../../../core/lesson/exercises/shortOrLong.ts';
import { LEAF_LETTERS } from '../../../../core/lesson/exercises/threeLengths.ts';
import { AXES_LABEL, CURVE_LABEL, EXERCISE_AXES, EXERCISE_TABLES } from '../../../text/exerciseAxes.ts';
import { bare, limitText, mm, modulusText } from '../../../text/exerciseFigures.ts';
import { inHundred } from '../../../text/numbers.ts';
import { Arches } from './Arches.tsx';
import { Axes, type Axis } from './Axes.tsx';
import { evenAxis, LIVES, STRAINS, TIMES } from './axesOf.ts';
import { Roots } from './Roots.tsx';
import { Row } from './Row.tsx';
import { SmallTable } from './SmallTable.tsx';
import { Stripes } from './Stripes.tsx';
import { Strips } from './Strips.tsx';

/** Of frames to draw on or read off [mm]. */
const FRAME = { wide: 150, high: 58 } as const;
const BESIDE_TABLE = { wide: 112, high: 62 } as const;

const alone = (letter: string, length: number, thickness: number) => ({
  letter,
  length,
  thickness,
  count: 1,
  between: 0,
});

/** What is measured on a page, life size or at a stated scale. */
export function PageDrawing({ exercise, label }: { readonly exercise: AnyExercise; readonly label: string }) {
  const { id, given } = exercise;
  switch (id) {
    case 'three-lengths':
      return (
        <Strips
          label={label}
          strips={given.lengths.map((length, at) => alone(LEAF_LETTERS[at] ?? '', length, given.thickness))}
        />
      );
    case 'one-line-more':
      return (
        <Stripes
          label={label}
          leaves={[
            { letter: 'A', ...given.thin },
            { letter: 'B', ...given.thick },
          ]}
        />
      );
    case 'scaled-part':
      return (
        <Strips
          label={label}
          strips={[
            alone('A', given.length, given.thickness),
            alone('B', given.scaledLength, given.thickness * given.scale),
          ]}
        />
      );
    case 'one-or-many-bends': {
      const { length, between, thickness, bends } = given;
      const strips = bends.map((count, at) => ({ letter: LEAF_LETTERS[at] ?? '', length, between, thickness, count }));
      return <Strips label={label} strips={strips} />;
    }
    case 'fillet-or-corner': {
      const fillets = [0, given.fillet];
      const roots = ROOT_LETTERS.map((letter, at) => ({ letter, fillet: fillets[at] ?? 0 }));
      return <Roots label={label} thickness={given.thickness} roots={roots} />;
    }
    case 'filament-against-filament':
    case 'held-or-flexed':
      return <Strips label={label} strips={[alone('', given.length, given.thickness)]} />;
    case 'short-or-long':
      return (
        <Strips
          label={label}
          strips={given.lengths.map((length, at) =>
            alone(LONG_LETTERS[at] ?? '', length, given.across[at === 0 ? 0 : 1].thickness),
          )}
        />
      );
    case 'side-by-side':
      return <Row label={label} {...given} />;
    case 'arch-springs-back':
      return <Arches label={label} span={given.span} rises={given.rises} />;
  }
}

function Frame({ x, y }: { readonly x: Axis; readonly y: Axis }) {
  return <Axes {...{ x, y }} {...FRAME} label={AXES_LABEL(x.name, y.name)} />;
}

/** A step of 10, 5, 2 or 1 that parts a height into few steps. */
function stepFor(top: number): number {
  return [0.5, 1, 2, 5].find((step) => top / step <= 6) ?? 10;
}

function StrainsOverLengths({ given }: { readonly given: Givens['three-lengths'] }) {
  const top = 100 * given.top;
  const step = stepFor(top);
  const y = evenAxis(Math.ceil(top / step) * step, step / 2, step, EXERCISE_AXES.strain);
  return <Frame x={evenAxis(50, 2, 10, EXERCISE_AXES.length)} y={y} />;
}

/** What is drawn on or read off beside the drawing, where a page has it. */
export function PageAside({ exercise }: { readonly exercise: AnyExercise }) {
  const { id, given } = exercise;
  switch (id) {
    case 'three-lengths':
      return <StrainsOverLengths given={given} />;
    case 'short-or-long': {
      const { chances } = EXERCISE_TABLES;
      const curve = lifeCurve(given).map(({ bends, strain }) => ({ x: bends, y: 100 * strain }));
      const rows = chanceTable(given).map(({ times, chance }) => [bare(times), inHundred(chance)]);
      return (
        <>
          <Axes x={LIVES} y={STRAINS} {...BESIDE_TABLE} curve={curve} label={CURVE_LABEL(LIVES.name, STRAINS.name)} />
          <SmallTable name={chances.name} heads={[chances.times, chances.chance]} rows={rows} />
        </>
      );
    }
    case 'held-or-flexed':
      return <Frame x={TIMES} y={evenAxis(100, 5, 10, EXERCISE_AXES.left, 40)} />;
    case 'one-line-more':
    case 'scaled-part':
    case 'one-or-many-bends':
    case 'fillet-or-corner':
    case 'filament-against-filament':
    case 'side-by-side':
    case 'arch-springs-back':
      return undefined;
  }
}

/** A small table beside the drawing, where a page has one. */
export function PageTable({ exercise }: { readonly exercise: AnyExercise }) {
  const { id, given } = exercise;
  switch (id) {
    case 'fillet-or-corner': {
      const { peaks } = EXERCISE_TABLES;
      const rows = given.table.map(({ fillet, peak }) => [mm(fillet), peak.toFixed(2)]);
      return <SmallTable name={peaks.name} heads={[peaks.fillet, peaks.peak]} rows={rows} />;
    }
    case 'filament-against-filament': {
      const { filaments: heads } = EXERCISE_TABLES;
      const rows = given.filaments.map(({ name, yields, modulus }, at) => [
        `${FILAMENT_LETTERS[at] ?? ''}: ${name}`,
        limitText(yields),
        modulusText(modulus),
      ]);
      return <SmallTable name={heads.name} heads={[heads.filament, heads.yields, heads.modulus]} rows={rows} />;
    }
    case 'three-lengths':
    case 'one-line-more':
    case 'scaled-part':
    case 'one-or-many-bends':
    case 'short-or-long':
    case 'side-by-side':
    case 'held-or-flexed':
    case 'arch-springs-back':
      return undefined;
  }
}
