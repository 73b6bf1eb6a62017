import { JUMP_METHODS, type JumpTest } from '../../../shared/model/jump.ts';
import { JUMP_METHOD_WORDS } from '../../../shared/report/words.ts';
import { Button } from '../../parts/Button.tsx';
import { EmptyState } from '../../parts/EmptyState.tsx';
import { newId, today } from '../newRecord.ts';
import { useCase } from '../useCase.ts';
import { useEdit } from '../useEdit.ts';
import { JumpTestSheet } from './JumpTestSheet.tsx';
import './jumps.css';

/** Jump tests, newest first. */
export function JumpsSection() {
  const { file } = useCase();
  const edit = useEdit();
  const start = (method: JumpTest['method']) =>
    edit([{ op: 'create', kind: 'jumpTest', record: emptyTest(file.case.id, method) }]);
  const tests = file.jumpTests.toSorted((a, b) => b.heldOn.localeCompare(a.heldOn));
  const starters = (
    <div className="row-of-buttons">
      {JUMP_METHODS.map((method) => (
        <Button
          key={method}
          look={tests.length === 0 && method === 'flight-time' ? 'main' : 'plain'}
          onClick={() => start(method)}
        >
          {tests.length === 0 ? 'Jump' : 'New test'} {JUMP_METHOD_WORDS[method]}
        </Button>
      ))}
    </div>
  );
  if (tests.length === 0) {
    return (
      <EmptyState title="No jumps yet.">
        <p>
          A test holds the conditions that its trials share. Choose how the height is measured; the rest can follow.
        </p>
        {starters}
      </EmptyState>
    );
  }
  return (
    <div className="jumps-section">
      {starters}
      {tests.map((test) => (
        <JumpTestSheet key={test.id} test={test} />
      ))}
    </div>
  );
}

function emptyTest(caseId: string, method: JumpTest['method']): JumpTest {
  return {
    id: newId(),
    caseId,
    heldOn: today(),
    kind: 'countermovement',
    method,
    arms: null,
    shoes: null,
    device: '',
    frameRateHz: null,
    standingReachM: null,
    dropHeightM: null,
    note: '',
    warmUp: '',
  };
}
