import type { Assessment } from '../../../shared/assess/assessment.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { counted } from '../../../shared/format/number.ts';
import { standingOf } from '../../../shared/assess/standing.ts';

export interface OpenMatter {
  readonly heading: string;
  readonly items: readonly string[];
}

/** What a careful reader would hold against the report as it stands, most serious first. Empty: nothing. */
export function beforeSending(file: CaseFile, assessment: Assessment): readonly OpenMatter[] {
  const standings = assessment.findings.map((finding) => standingOf(finding, file.findingDecisions));
  const undecided = standings.filter((standing) => standing.state === 'to decide').length;
  const changed = standings.filter((standing) => standing.state === 'changed since').length;
  const questioned = assessment.checks.filter((check) => check.verdict === 'questioned');
  return [
    { heading: 'Stop and be seen', items: assessment.stops.map((stop) => stop.words) },
    { heading: 'Missing', items: assessment.missing },
    {
      heading: 'Findings',
      items: [
        ...(undecided > 0
          ? [`${counted(undecided, 'finding')} not decided yet; the report prints them as undecided`]
          : []),
        ...(changed > 0 ? [`${counted(changed, 'finding')} changed since you decided`] : []),
      ],
    },
    { heading: 'Checks that question a number', items: questioned.map((check) => check.sentence) },
  ].filter((matter) => matter.items.length > 0);
}
