import type { SectionId } from '../../shared/assess/assessment.ts';

/** The sections in the spine, which is the report's table of contents. */
export const SECTION_TITLES: Readonly<Record<SectionId, string>> = {
  athlete: 'Athlete',
  injuries: 'Injuries',
  screening: 'Screening',
  jumps: 'Jumps',
  trials: 'Trials',
  findings: 'Findings',
  report: 'Report',
};
