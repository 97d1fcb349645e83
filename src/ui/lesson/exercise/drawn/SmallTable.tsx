interface Props {
  readonly name: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A few figures that a class reads off the page. */
export function SmallTable({ name, heads, rows }: Props) {
  return (
    <table className="small-table">
      <caption>{name}</caption>
      <thead>
        <tr>
          {heads.map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.join(' ')}>
            {row.map((text, at) =>
              at === 0 ? (
                <th key={heads[at]} scope="row">
                  {text}
                </th>
              ) : (
                <td key={heads[at]}>{text}</td>
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
