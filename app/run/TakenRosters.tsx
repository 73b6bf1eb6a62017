import { useState } from 'react';
import type { Answer } from '../../shared/contract/channels.ts';
import { counted, formatDate } from '../../shared/format/number.ts';
import { useRostersQuery, useTakeBackRosterMutation } from '../api.ts';
import { today } from '../case/newRecord.ts';
import { failureWords } from '../failureWords.ts';
import { Button } from '../parts/Button.tsx';

type Roster = Answer<'roster.list'>['rosters'][number];

/** Lists taken in, today or long ago, that can still be taken back. */
export function TakenRosters(props: { isOpen: boolean; onTakenBack: (caseIds: readonly string[]) => void }) {
  const { isOpen, onTakenBack } = props;
  const { data } = useRostersQuery(undefined, { refetchOnMountOrArgChange: true });
  const [takeBack, { isLoading, error }] = useTakeBackRosterMutation();
  const [words, setWords] = useState<string | null>(null);
  const rosters = data?.rosters ?? [];
  if (rosters.length === 0 && words === null) return null;

  const take = async ({ rosterId, fileName, workedOn }: Roster) => {
    const answer = await takeBack({ rosterId, archivedOn: today(), leaveWorkedOn: workedOn > 0 });
    if (answer.data === undefined) return;
    setWords(`${fileName} taken back: ${counted(answer.data.caseIds.length, 'case')} archived; nothing is deleted.`);
    onTakenBack(answer.data.caseIds);
  };
  return (
    <details className="taken-rosters" open={isOpen || words !== null}>
      <summary>Lists taken in</summary>
      {words !== null && <output>{words}</output>}
      {error !== undefined && <p role="alert">{failureWords(error)}</p>}
      <ul>
        {rosters.map((roster) => (
          <li key={roster.rosterId}>
            <strong>{roster.fileName}</strong>, {formatDate(roster.takenAt.slice(0, 10))}:{' '}
            {counted(roster.untouched + roster.workedOn, 'case')} on the shelf. {workedOnWords(roster)}{' '}
            {roster.untouched > 0 && (
              <Button look="quiet" disabled={isLoading} onClick={() => void take(roster)}>
                {roster.workedOn === 0 ? 'Take this list back' : `Take the other ${roster.untouched} back`}
              </Button>
            )}
          </li>
        ))}
      </ul>
    </details>
  );
}

function workedOnWords({ workedOn, names }: Roster): string {
  if (workedOn === 0) return '';
  const more = workedOn > names.length ? ` and ${workedOn - names.length} more` : '';
  return `Something was entered since for ${names.join(', ')}${more}: ${workedOn === 1 ? 'this one stays' : 'these stay'}.`;
}
