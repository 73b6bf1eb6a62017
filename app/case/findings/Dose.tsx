import { doseWords } from '../../../shared/assess/words.ts';
import type { Drill } from '../../../shared/knowledge/drills/drill.ts';

/** How much of a drill and how it gets harder; nothing where there is no drill. */
export function Dose({ drill }: { drill: Drill | null }) {
  if (drill === null) return null;
  return (
    <p className="advice dose">
      <strong>How much: </strong>
      {doseWords(drill)}. <strong>Harder: </strong>
      {drill.progression}
    </p>
  );
}
