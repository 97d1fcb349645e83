import type { KeyboardEvent } from 'react';
import { gradeOf } from '../../core/inspect/verdicts.ts';
import { Mark } from '../app/Mark.tsx';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { usePxPerMm } from '../drawing/usePxPerMm.ts';
import { angle, grouped, lengthFigure, percent } from '../text/numbers.ts';
import {
  chanceCell,
  flexureKindText,
  judgedHeading,
  judgedNotes,
  landingCount,
  landingSays,
  numbersSaid,
} from '../text/inspectText.ts';
import { foundNote, lyingWords, MESH, NOTED, TABLE } from '../text/meshText.ts';
import type { Alike } from '../../core/inspect/alike.ts';
import { numbersText } from './numbersText.ts';
import { BalloonSign } from './Balloon.tsx';
import { isChosen, useChecked, type Checked } from './checked.ts';
import { LandingGlyph } from './LandingGlyph.tsx';
import { showNotes } from './NotedOf.tsx';
import { choose } from './partCheck.ts';
import { useMakeJoint } from './useMakeJoint.ts';
import { walk } from './walk.ts';

/** As many times life size as the widest glyph has room for [px]. */
function glyphScale(widest: number): number {
  return [20, 10, 5, 2].find((scale) => widest * scale <= 118) ?? 1;
}

/** What the counts are of. */
function countsHead({ groups }: Checked): string {
  const isLayers = groups.map(({ one }) => one.landing.countOf === 'layers');
  return isLayers.every(Boolean) ? TABLE.layers : isLayers.some(Boolean) ? TABLE.both : TABLE.lines;
}

/** That something is noted of it, and the way there. */
function NotesOf({ alike: { one, numbers } }: { readonly alike: Alike }) {
  const { unit, chosen } = useChecked();
  const { first, more } = judgedNotes(one, unit);
  const count = first.length + more.length;
  if (count === 0) return null;
  const show = () => {
    choose(numbers.includes(chosen) ? chosen : (numbers[0] ?? 1));
    requestAnimationFrame(showNotes);
  };
  return (
    <>
      {'; '}
      <button type="button" className="b quiet see" aria-label={NOTED.see(count, numbersSaid(numbers))} onClick={show}>
        {NOTED.mark(count)}
      </button>
    </>
  );
}

interface RowProps {
  readonly alike: Alike;
  readonly by: number;
  readonly isFirst: boolean;
}

function Row({ alike, by, isFirst }: RowProps) {
  const checked = useChecked();
  const { values, unit } = checked;
  const { one, numbers } = alike;
  const isOn = isChosen(alike, checked);
  const { make, cannot } = useMakeJoint();
  const { flexure, landing, assessed } = one;
  const { scale } = values.as;
  const size = (value: number) => lengthFigure(scale * value, unit);
  const text = numbersText(numbers);
  const grade = gradeOf(one);
  // Of several that are alike the one that is looked at is taken.
  const taken = isOn ? (checked.judged.find((like) => like.flexure.number === checked.chosen) ?? one) : one;
  return (
    <tr className={isOn ? 'on' : ''}>
      <th scope="row" data-l={TABLE.number}>
        <button
          type="button"
          className="pick"
          aria-pressed={isOn}
          tabIndex={isOn ? 0 : -1}
          data-row={numbers[0]}
          onClick={() => choose(numbers[0] ?? 1)}
        >
          <BalloonSign text={text} isOn={isOn} />
          <span className="vh">{TABLE.choose(numbersSaid(numbers))}</span>
        </button>
      </th>
      <td data-l={TABLE.kind}>
        {flexureKindText(flexure)}
        {numbers.length > 1 && TABLE.alike(numbers.length)}
        <small>{lyingWords(one, scale, unit)}</small>
      </td>
      <td data-l={TABLE.thick} className="r">
        {size(flexure.thickness.least)}
      </td>
      <td data-l={one.landing.countOf === 'lines' ? TABLE.lines : TABLE.layers}>
        <span className="lands">
          <LandingGlyph judged={one} as={values.as} by={by} />
          <span>
            <b className="num">{landingCount(landing)}</b>
            {isFirst && <Mark kind="computed" about="thickness" />}
            <small>{landingSays(landing, unit)}</small>
          </span>
        </span>
      </td>
      <td data-l={TABLE.bending} className="r">
        {size(flexure.bendingLength)}
      </td>
      <td data-l={TABLE.depth} className="r">
        {size(flexure.depth)}
      </td>
      <td data-l={TABLE.strain} className="r">
        {assessed.ok ? (
          <>
            {assessed.value.estimate && <span className="vh">about </span>}
            {assessed.value.estimate && <span aria-hidden="true">~ </span>}
            {percent(assessed.value.strain.peak)}
            {isFirst && <Mark kind={assessed.value.provenance.strain} about="strain" />}
          </>
        ) : (
          '–'
        )}
      </td>
      <td data-l={TABLE.reach(grouped(values.asked.cycles))} className="r">
        {chanceCell(one)}
        {assessed.ok && isFirst && <Mark kind={assessed.value.provenance.life} about="life" />}
      </td>
      <td data-l={TABLE.verdict}>
        <span className={`st ${grade}`}>
          <VerdictShape grade={grade} />
          <span>{judgedHeading(one)}</span>
        </span>
        <small>
          {TABLE.layer(one)}
          <NotesOf alike={alike} />
        </small>
      </td>
      <td className="act">
        <button
          type="button"
          className="b"
          aria-label={TABLE.makeIt(taken.flexure.number)}
          aria-disabled={cannot === undefined ? undefined : true}
          title={cannot}
          onClick={cannot === undefined ? () => make(taken) : undefined}
        >
          {MESH.joint}
        </button>
      </td>
    </tr>
  );
}

/** Every thin section that was found, alike ones in one row. */
export function FindingsTable() {
  const checked = useChecked();
  const { groups, values, unit } = checked;
  const [pxPerMm] = usePxPerMm();
  const widest = Math.max(...groups.map(({ one }) => one.flexure.thickness.least)) * values.as.scale * pxPerMm;
  const scale = glyphScale(widest);
  const at = groups.findIndex((group) => isChosen(group, checked));
  const onKeyDown = (event: KeyboardEvent<HTMLTableSectionElement>) => {
    const firsts = groups.map(({ numbers }) => numbers[0] ?? 1);
    const before = firsts[at] ?? firsts[0] ?? 1;
    const keys: Readonly<Record<string, string>> = { ArrowUp: 'ArrowLeft', ArrowDown: 'ArrowRight' };
    const isPick = event.target instanceof HTMLElement && event.target.classList.contains('pick');
    if (!isPick) return;
    const body = event.currentTarget;
    const key = keys[event.key] ?? event.key;
    if (!walk({ key, preventDefault: () => event.preventDefault() }, firsts, before)) return;
    requestAnimationFrame(() => body.querySelector<HTMLElement>('.on .pick')?.focus());
  };
  return (
    <section className="findings" aria-label={MESH.found}>
      <h2 className="h">
        {MESH.found}
        <span className="aside">{foundNote(values, angle(values.asked.turn), unit)}</span>
      </h2>
      <table className="finds">
        <thead>
          <tr>
            <th scope="col">{TABLE.number}</th>
            <th scope="col">{TABLE.kind}</th>
            <th scope="col" className="r">
              {TABLE.thick}
            </th>
            <th scope="col" className="glyphs">
              {countsHead(checked)}, drawn {scale} : 1
            </th>
            <th scope="col" className="r">
              {TABLE.bending}
            </th>
            <th scope="col" className="r">
              {TABLE.depth}
            </th>
            <th scope="col" className="r">
              {TABLE.strain}
            </th>
            <th scope="col" className="r">
              {TABLE.reach(grouped(values.asked.cycles))}
            </th>
            <th scope="col">{TABLE.verdict}</th>
            <th scope="col">
              <span className="vh">{TABLE.act}</span>
            </th>
          </tr>
        </thead>
        {/* The rows hear the keys that walk; what is pressed are the buttons in them. */}
        {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions */}
        <tbody onKeyDown={onKeyDown}>
          {groups.map((alike, i) => (
            <Row key={alike.one.flexure.number} alike={alike} by={scale * pxPerMm} isFirst={i === 0} />
          ))}
        </tbody>
      </table>
    </section>
  );
}
