import { useMemo } from 'react';
import { soundness } from '../../core/material/choose.ts';
import type { Quantity, WholeFilament } from '../../core/material/types.ts';
import { MarkShape } from '../app/MarkShape.tsx';
import { NUMBERS } from '../text/filamentText.ts';
import {
  kindWords,
  originOfQuantity,
  PROPERTIES,
  rangeText,
  spokenTrait,
  valueText,
  type Property,
} from '../text/filamentValueText.ts';
import { figuresOf, rowAxis } from './axes.ts';
import { numberRowId } from './JumpMark.tsx';
import { RangeBar } from './RangeBar.tsx';

/** Where a number comes from in words; the documents behind it. */
function Source({ quantity }: { readonly quantity: Quantity }) {
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

interface RowProps {
  readonly property: Property;
  readonly quantity: Quantity;
  readonly others: readonly Quantity[];
}

function NumberRow({ property, quantity, others }: RowProps) {
  const { name, strain, log } = PROPERTIES[property];
  const isStrain = strain === true;
  const axis = useMemo(() => {
    const figures = figuresOf([quantity, ...others]);
    // A value of nought or less has no place among ratios.
    return { ...rowAxis(log && figures.every((one) => one > 0) ? 'log' : 'linear', figures), ticks: [] };
  }, [quantity, others, log]);
  const kind = soundness(quantity.provenance);
  return (
    <tr id={numberRowId(property)} tabIndex={-1}>
      <th scope="row">{name}</th>
      <td className="among">
        <RangeBar
          {...{ axis, quantity }}
          label={spokenTrait(name, quantity, isStrain)}
          others={others.map(({ typical }) => typical)}
        />
      </td>
      <td className="r">{valueText(quantity, isStrain)}</td>
      <td className="now">{rangeText(quantity, isStrain)}</td>
      <td className="number-kind">
        <MarkShape kind={kind} />
        {kindWords(kind)}
      </td>
      <td className="source">
        <Source quantity={quantity} />
      </td>
    </tr>
  );
}

/** Every number of a filament beside those of the others, and where it comes from. */
export function NumbersTable({ row, rows }: { readonly row: WholeFilament; readonly rows: readonly WholeFilament[] }) {
  const properties = Object.keys(PROPERTIES) as Property[];
  const others = useMemo(() => rows.filter(({ id }) => id !== row.id), [rows, row]);
  const of = useMemo(
    () => new Map(properties.map((name) => [name, others.flatMap(({ properties: p }) => p[name] ?? [])] as const)),
    // oxlint-disable-next-line react/exhaustive-deps -- the list of properties is always the same
    [others],
  );
  return (
    <section className="numbers" aria-label={NUMBERS.head}>
      <h2 className="h">
        {NUMBERS.head}
        <span className="aside">{NUMBERS.aside}</span>
      </h2>
      <table>
        <thead className="vh">
          <tr>
            {['What', 'Beside the others', 'Usual', 'Low to high', 'Kind', 'Source'].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {properties.map((name) => {
            const quantity = row.properties[name];
            return quantity && <NumberRow key={name} property={name} quantity={quantity} others={of.get(name) ?? []} />;
          })}
        </tbody>
      </table>
    </section>
  );
}
