/**
 * How much script a visit waits for. The files of each entry are found by following imports in the build, so that no
 * shared piece slips in or out by its name.
 */
import { readdirSync, readFileSync } from 'node:fs';

const FOLDER = 'dist/assets';
const SCRIPTS = readdirSync(FOLDER).filter((name) => name.endsWith('.js'));
const IMPORTED = /(?:\bfrom|\bimport)\s*["']\.\/([^"']+\.js)["']/g;

/** The pieces of these names with everything that they import at once. */
function loadedWith(...names) {
  const found = new Set();
  const take = (script) => {
    if (found.has(script)) return;
    found.add(script);
    for (const [, imported] of readFileSync(`${FOLDER}/${script}`, 'utf8').matchAll(IMPORTED)) take(imported);
  };
  for (const name of names) {
    const pieces = SCRIPTS.filter((script) => script.startsWith(`${name}-`));
    if (pieces.length !== 1) throw new Error(`${pieces.length} pieces of the build are called ${name}`);
    take(pieces[0]);
  }
  return [...found].map((script) => `${FOLDER}/${script}`);
}

const entry = (name, limit, ...pieces) => ({ name, limit, path: loadedWith(...pieces), gzip: true });
const FIRST = ['first', 'drawing'];
const LEAF = [...FIRST, 'Ways', 'Curves', 'UnderCurves', 'HowSure', 'Foot'];

export default [
  entry('script of the first screen, with the drawing', '150 kB', ...FIRST),
  entry('all that the sheet of a leaf loads', '252 kB', ...LEAF),
  entry('all that any sheet loads', '314 kB', ...LEAF, 'everyKind', 'SolvedDrawing', 'SolvedCurves', 'ScalingTable'),
  entry('all that the place of filaments loads', '187 kB', 'first', 'FilamentsPlace'),
  entry('all that the place of part files loads', '251 kB', 'first', 'MeshPlace'),
  entry('all that the Toolpath place loads', '236 kB', 'first', 'ToolpathPlace'),
  entry('all that the Tests place loads', '315 kB', 'first', 'TestsPlace'),
  entry('all that a demonstration loads', '245 kB', 'first', 'LessonPlace', 'DemoPage'),
  entry('all that an exercise page loads', '212 kB', 'first', 'LessonPlace', 'ExercisePage'),
  entry('all that the working of a joint loads', '302 kB', 'first', 'LessonPlace', 'WorkingPage'),
  entry('all that joints side by side load', '228 kB', 'first', 'LessonPlace', 'ComparePage'),
  entry('all that the summary of a joint loads', '230 kB', 'first', 'LessonPlace', 'SummaryPage'),
  entry('all that the finder loads', '206 kB', 'first', 'Choosing', 'Finder'),
  entry('the solver in its worker', '85 kB', 'solve.worker'),
];
