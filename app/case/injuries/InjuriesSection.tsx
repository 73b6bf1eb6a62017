import { useState } from 'react';
import { conditionEntry } from '../../../shared/knowledge/conditions/index.ts';
import { formatDate } from '../../../shared/format/number.ts';
import { blankInjury } from '../../../shared/model/blank.ts';
import type { Injury } from '../../../shared/model/injury.ts';
import { liftedBy } from '../../../shared/rules/effects/liftedBy.ts';
import { Button } from '../../parts/Button.tsx';
import { EmptyState } from '../../parts/EmptyState.tsx';
import { Words } from '../../parts/Words.tsx';
import { newId, today } from '../newRecord.ts';
import { useCase } from '../useCase.ts';
import { useEdit } from '../useEdit.ts';
import { BodyOutline, type Place, placeWords } from './BodyOutline.tsx';
import { InjuryForm } from './InjuryForm.tsx';
import { RegionList } from './RegionList.tsx';
import './injuries.css';

/** Everything that has been injured, one open at a time, with the limits each puts in force. */
export function InjuriesSection() {
  const { injuries, athlete } = useCase().file;
  const edit = useEdit();
  const [openId, setOpenId] = useState<string | null>(null);
  const [isAdding, setAdding] = useState(false);

  const add = (place: Place) => {
    const injury = blankInjury({ id: newId(), athleteId: athlete.id }, place);
    edit([{ op: 'create', kind: 'injury', record: injury }]);
    setAdding(false);
    setOpenId(injury.id);
  };

  return (
    <>
      {injuries.length === 0 && !isAdding && (
        <EmptyState title="No injury on file.">
          <p>
            Every suggestion passes through the injuries recorded here, also those of long ago. Ask about dislocations,
            operations, concussions and pain that has not gone.
          </p>
        </EmptyState>
      )}
      <ol className="injuries">
        {injuries.map((injury) => (
          <InjuryItem
            key={injury.id}
            injury={injury}
            isOpen={injury.id === openId}
            onToggle={() => setOpenId(injury.id === openId ? null : injury.id)}
          />
        ))}
      </ol>
      {isAdding ? (
        <section className="adding" aria-labelledby="adding-title">
          <h3 id="adding-title">Where is it?</h3>
          <div className="adding-columns">
            <BodyOutline chosen={[]} onChoose={add} />
            <RegionList onChoose={add} />
          </div>
          <Button onClick={() => setAdding(false)}>Leave without adding</Button>
        </section>
      ) : (
        <Button look={injuries.length === 0 ? 'main' : 'plain'} onClick={() => setAdding(true)}>
          Add an injury
        </Button>
      )}
    </>
  );
}

function InjuryItem({ injury, isOpen, onToggle }: { injury: Injury; isOpen: boolean; onToggle: () => void }) {
  const { condition, diagnosis, onset, status } = injury;
  const lifted = liftedBy(injury, today());
  const name = condition === 'other' ? diagnosis || 'Injury without a diagnosis yet' : conditionEntry(condition).label;
  return (
    <li className="injury">
      <h3 className="injury-head">
        <button type="button" className="injury-toggle" aria-expanded={isOpen} onClick={onToggle}>
          <span className="injury-name">{name}</span>
          <span className="quiet">
            {placeWords(injury)}
            {onset !== null && `, ${formatDate(onset)}`}, {status}
          </span>
        </button>
      </h3>
      <p className="injury-force">
        {lifted === null ? <Words weight="heavy">limits in force</Words> : <Words weight="plain">limits lifted</Words>}
      </p>
      {isOpen && <InjuryForm injury={injury} />}
    </li>
  );
}
