import { useMemo, type ComponentType, type ReactNode } from 'react';
import { soundness } from '../../core/material/choose.ts';
import type { Quantity, WholeFilament } from '../../core/material/types.ts';
import { MarkShape } from '../app/MarkShape.tsx';
import { NUMBERS } from '../text/filamentText.ts';
import { rangeText, valueText } from '../text/figureText.ts';
import {
  kindWords,
  originOfQuantity,
  PROPERTIES,
  READ_PROPERTIES,
  spokenTrait,
  type Property,
} from '../text/filamentValueText.ts';
import { figuresOf, rowAxis } from './axes.ts';
import { placeId } from './JumpMark.tsx';
import { RangeBar } from './RangeBar.tsx';
import { ROLE } from './tableRoles.ts';

/** Where a number comes from in words; the documents behind it. */
export function Source({ quantity }: { readonly quantity: Quantity }) {
  const { says, note, full } = originOfQuantity(quantity);
  const words = `${says} ${note}`.trim();
  if (full.length === 0) return <span>{words}</span>;
  return (
    <details>
      <summary>{words}</summary>
      {full.map((document) => (
        <span className="full" key={document}>
          {document}
        </span>
      ))}
    </details>
  );
}

/** The cells of one number after its bar. */
export interface CellsProps {
  readonly row: WholeFilament;
  readonly property: Property;
  readonly quantity: Quantity;
}

function PlainCells({ property, quantity }: CellsProps) {
  const { strain } = PROPERTIES[property];
  const kind = soundness(quantity.provenance);
  return (
    <>
      <td {...ROLE.cell} className="r">
        {valueText(quantity, strain)}
      </td>
      <td {...ROLE.cell} className="now">
        {rangeText(quantity, strain)}
      </td>
      <td {...ROLE.cell} className="number-kind">
        <MarkShape kind={kind} />
        {kindWords(kind)}
      </td>
      <td {...ROLE.cell} className="source">
        <Source quantity={quantity} />
      </td>
    </>
  );
}

interface RowProps extends Omit<CellsProps, 'row'> {
  readonly others: readonly Quantity[];
  readonly children: ReactNode;
}

function NumberRow({ property, quantity, others, children }: RowProps) {
  const { name, strain, log } = PROPERTIES[property];
  const axis = useMemo(() => {
    const figures = figuresOf([quantity, ...others]);
    // A value of nought or less has no place among ratios.
    return { ...rowAxis(log && figures.every((one) => one > 0) ? 'log' : 'linear', figures), ticks: [] };
  }, [quantity, others, log]);
  return (
    // What a field says of itself while it is edited stands under the row, as under any sentence.
    <tr {...ROLE.row} className="sentence" id={placeId(property)} tabIndex={-1}>
      <th {...ROLE.head} scope="row">
        {name}
      </th>
      <td {...ROLE.cell} className="among">
        <RangeBar
          {...{ axis, quantity }}
          label={spokenTrait(name, quantity, strain)}
          others={others.map(({ typical }) => typical)}
        />
      </td>
      {children}
    </tr>
  );
}

interface Props {
  readonly row: WholeFilament;
  readonly rows: readonly WholeFilament[];
  /** How the figures stand: to be read, or to be changed in place. */
  readonly cells?: ComponentType<CellsProps>;
}

/** Quantities that are drawn at different places: most copies have most figures of what they were made from. */
function differing(quantities: readonly Quantity[]): readonly Quantity[] {
  return [...new Map(quantities.map((one) => [`${one.low} ${one.typical} ${one.high}`, one])).values()];
}

/** Every number of a filament beside those of the others, and where it comes from. */
export function NumbersTable({ row, rows, cells: Cells = PlainCells }: Props) {
  const others = useMemo(() => rows.filter(({ id }) => id !== row.id), [rows, row]);
  const of = useMemo(
    () =>
      new Map(
        READ_PROPERTIES.map((name) => [name, differing(others.flatMap(({ properties: p }) => p[name] ?? []))] as const),
      ),
    [others],
  );
  return (
    <section className="numbers" aria-label={NUMBERS.head}>
      <h2 className="h">
        {NUMBERS.head}
        <span className="aside">{NUMBERS.aside}</span>
      </h2>
      <table {...ROLE.table} aria-label={NUMBERS.head}>
        <thead {...ROLE.group} className="vh">
          <tr {...ROLE.row}>
            {NUMBERS.heads.map((head) => (
              <th {...ROLE.column} key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody {...ROLE.group}>
          {READ_PROPERTIES.map((property) => {
            const quantity = row.properties[property];
            return (
              quantity && (
                <NumberRow key={property} {...{ property, quantity }} others={of.get(property) ?? []}>
                  <Cells {...{ row, property, quantity }} />
                </NumberRow>
              )
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
