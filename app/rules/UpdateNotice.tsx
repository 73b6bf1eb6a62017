import { counted } from '../../shared/format/number.ts';
import { useRulesUpdateQuery } from '../api.ts';
import { hrefOf } from '../workbench/route.ts';

/** Says that newer rules of the program wait to be accepted; nothing where none do. */
export function UpdateNotice() {
  const { data } = useRulesUpdateQuery();
  if (data === undefined || data.waiting === 0) return null;
  return (
    <aside className="rule-notice" aria-label="Newer rules">
      <p>
        <strong>The rules of the program have changed</strong> ({data.from.join(', ')} to {data.to}). Referrals,
        cautions and stops of the new ones hold already; all else waits until it is accepted.{' '}
        {data.cases.length === 0
          ? 'No finding of an open case would change.'
          : `Findings of ${counted(data.cases.length, 'open case')} would change.`}{' '}
        <a href={hrefOf({ screen: 'rules' })}>See what changes</a>
      </p>
    </aside>
  );
}
