import { SourcesTable } from '../check/SourcesTable.tsx';
import { sourcesOfPart } from '../text/meshSourcesText.ts';
import { useChecked } from './checked.ts';

export function MeshSources() {
  const { values, judged } = useChecked();
  return <SourcesTable rows={sourcesOfPart(values.as.profile.filament, judged)} />;
}
