import { type InstabilityClass, classifyInstability, unstableShoulders } from '../../assess/classifyInstability.ts';
import { judgeShoulder } from '../../assess/judgeShoulder.ts';
import { lowerFirst } from '../../format/letterCase.ts';
import { quantityText } from '../../format/number.ts';
import { URGENCY_TIERS, type UrgencyTier } from '../../kernel/shoulder/referralUrgency.ts';
import { REASON_WORDS, TIER_WORDS } from '../../knowledge/shoulder/words.ts';
import { SOURCES } from '../../knowledge/sources/index.ts';
import type { Injury } from '../../model/injury.ts';
import { isKnown, type Source } from '../../quantity.ts';
import { beside } from '../blocks/beside.ts';
import type { Block } from '../blocks/block.ts';
import { list } from '../blocks/list.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { plain, quiet, type Runs, strong } from '../runs.ts';
import { SIDE_WORDS } from '../words.ts';
import { cite, type Writing } from './writing.ts';

/** What is worked out from the record of an unstable shoulder, each with what it rests on. Totals, never advice. */

/** The four parts, for each unstable shoulder; a part that cannot be told says why. */
export function classification(writing: Writing): Block[] {
  const shoulders = unstableShoulders(writing.file);
  return shoulders.map((injury) => {
    const parts = classifyInstability(writing.file, injury);
    const label = shoulders.length === 1 ? 'Classification' : `Classification, ${SIDE_WORDS[injury.side]}`;
    const isMultidirectional = writing.file.shoulderRecords.some(
      (record) => record.injuryId === injury.id && record.isMultidirectional === true,
    );
    return beside(
      [...strong(label), ...plain(' '), ...cite(writing, [SOURCES.kuhn2011])],
      [
        list(
          PARTS.map(({ part, name }) => {
            const more = part === 'direction' && isMultidirectional ? '; more than one direction is recorded' : '';
            return partRuns(name, parts[part], more);
          }),
        ),
      ],
    );
  });
}

const PARTS: readonly { readonly part: keyof InstabilityClass; readonly name: string }[] = [
  { part: 'frequency', name: 'Frequency' },
  { part: 'etiology', name: 'Cause' },
  { part: 'direction', name: 'Main direction' },
  { part: 'severity', name: 'Severity' },
];

function partRuns(name: string, { is, because }: InstabilityClass[keyof InstabilityClass], more: string): Runs {
  return [...plain(`${name}: `), ...strong(is ?? 'cannot tell'), ...quiet(` – ${because}${more}`)];
}

/** How soon the recorded answers ask for, whatever urgency was stated; nothing where no fuller record was opened. */
export function urgencyByRecord({ file }: Writing): Block[] {
  return unstableShoulders(file).flatMap((injury) => {
    const judgement = judgeShoulder(file, injury);
    if (judgement === null) return [];
    const { tier, reasons, unanswered } = judgement.urgency;
    const isLeast = unanswered.length > 0 && tier !== 'emergency';
    const why = reasons.map((reason) => lowerFirst(REASON_WORDS[reason])).join('; ');
    const words = `By the answers recorded${isLeast ? ', at least' : ''}: ${lowerFirst(TIER_WORDS[tier])}${why === '' ? '' : ` (${why})`}.`;
    const { urgency } = file.case;
    return [paragraph(isSooner(tier, urgency) ? strong(`${words} That is sooner than stated.`) : quiet(words))];
  });
}

/** Whether a tier asks for someone to be seen sooner than was stated. */
export function isSooner(tier: UrgencyTier, stated: UrgencyTier | null): boolean {
  return stated !== null && URGENCY_TIERS.indexOf(tier) < URGENCY_TIERS.indexOf(stated);
}

/** Totals and distances that a surgeon asks for; only what is complete. */
export function forTheSurgeon(writing: Writing): Runs[] {
  return unstableShoulders(writing.file).flatMap((injury) => surgeonsNumbers(writing, injury));
}

function surgeonsNumbers(writing: Writing, injury: Injury): Runs[] {
  const judgement = judgeShoulder(writing.file, injury);
  if (judgement === null) return [];
  const { severityIndex, distance } = judgement;
  return [
    ...(severityIndex.points === null
      ? []
      : [
          [
            ...plain(`Severity index ${severityIndex.points} of 10 `),
            ...cite(writing, [SOURCES.balg2007]),
            ...quiet(' – for the surgeon: bands 0 to 3, 4 to 6, 7 to 10; series disagree on them.'),
          ],
        ]),
    ...(isKnown(distance)
      ? [
          [
            ...plain(`Distance to dislocation ${quantityText({ ...distance, u: null }, 'mm')} `),
            ...cite(writing, [SOURCES.diGiacomo2014]),
            ...quiet(
              ` – ${distance.value < 0 ? 'off the track' : 'on the track'}, worked out from the numbers of the report.`,
            ),
          ],
        ]
      : []),
  ];
}

/** Sources of what a letter works out. */
export function shoulderSources({ file }: Writing): Source[] {
  return unstableShoulders(file).flatMap((injury) => {
    const judgement = judgeShoulder(file, injury);
    return [
      SOURCES.kuhn2011,
      ...(judgement !== null && judgement.severityIndex.points !== null ? [SOURCES.balg2007] : []),
      ...(judgement !== null && isKnown(judgement.distance) ? [SOURCES.diGiacomo2014] : []),
    ];
  });
}
