/** What must be said wherever a result is shown. The short form stands in the title block. */
export const CAUTION_IN_SHORT =
  'Estimates from nominal data, not a safety case. Not for parts that hold people, overhead loads, pressure, heat, food, medical or vehicle use.';

export const CAUTIONS: readonly string[] = [
  'Estimates from nominal data, not a safety case.',
  'Not for parts that hold people, loads overhead, pressure, heat, food, medical or vehicle use without tests and licensed practice under local codes.',
  'Springs and snap parts store energy: wear eye protection.',
  'Warm filament gives off fumes, and beds are hot: follow the printer maker’s instructions.',
  'Printed parts vary: test yours.',
];
