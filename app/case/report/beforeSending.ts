import type { Assessment } from '../../../shared/assess/assessment.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { beforeYouSend } from '../../../shared/report/beforeYouSend.ts';
import type { ReportKind } from '../../../shared/report/compose.ts';

export interface OpenMatter {
  readonly heading: string;
  readonly items: readonly string[];
}

/** What a careful reader would hold against the report as it stands, most serious first. Empty: nothing. */
export function beforeSending(
  file: CaseFile,
  assessment: Assessment,
  kind: ReportKind,
  deidentify: boolean,
): readonly OpenMatter[] {
  return [
    { heading: 'Stop and be seen', items: assessment.stops.map((stop) => stop.words) },
    { heading: 'Missing', items: assessment.missing },
    { heading: 'To see to', items: beforeYouSend(file, assessment, kind, deidentify) },
  ].filter((matter) => matter.items.length > 0);
}
