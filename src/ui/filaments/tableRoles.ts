/**
 * Roles that the parts of a table have by themselves. They are said all the same where a table is laid out as blocks on a
 * narrow page, because some browsers then forget that it is one.
 */
export const ROLE = {
  table: { role: 'table' },
  group: { role: 'rowgroup' },
  row: { role: 'row' },
  column: { role: 'columnheader' },
  head: { role: 'rowheader' },
  cell: { role: 'cell' },
} as const;
