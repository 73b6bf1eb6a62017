import type { Finding } from '../../../shared/assess/assessment.ts';
import { counted } from '../../../shared/format/number.ts';
import { Words } from '../../parts/Words.tsx';

/** What could not be judged, and what it would need. A missing value is not a good value. */
export function NotAssessed({ findings }: { findings: readonly Finding[] }) {
  return (
    <details className="not-assessed">
      <summary>
        <Words weight="open">not assessed</Words> {counted(findings.length, 'point')}, for want of a value
      </summary>
      <ul>
        {findings.map((finding) => (
          <li key={finding.key}>
            {finding.tests.map((test) => test.label).join(', ')}
            {finding.side !== 'none' && `, ${finding.side}`}
            <span className="quiet">: {finding.needed ?? finding.finding}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
