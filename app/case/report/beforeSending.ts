import type { Assessment } from '../../../shared/assess/assessment.ts';
import { stopReason } from '../../../shared/assess/stopWords.ts';
import { sentenceCase } from '../../../shared/format/letterCase.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { beforeYouSend, referralEssentials } from '../../../shared/report/beforeYouSend.ts';
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
  const lacking = kind === 'referral' ? referralEssentials(file) : [];
  const all = beforeYouSend(file, assessment, kind, deidentify);
  return [
    { heading: 'Stop and be seen', items: assessment.stops.map((stop) => sentenceCase(stopReason(stop.words))) },
    { heading: 'Missing', items: assessment.missing },
    { heading: 'To see to', items: all.filter((one) => !lacking.includes(one)) },
    { heading: 'The letter lacks', items: lacking },
  ].filter((matter) => matter.items.length > 0);
}
