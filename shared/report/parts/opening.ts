import { ageOn } from '../../format/age.ts';
import { sentenceCase } from '../../format/letterCase.ts';
import { formatDate, quantityText } from '../../format/number.ts';
import { conditionEntry } from '../../knowledge/conditions/index.ts';
import { beside } from '../blocks/beside.ts';
import type { Block } from '../blocks/block.ts';
import { heading } from '../blocks/heading.ts';
import { list } from '../blocks/list.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { bodyOutline } from '../figures/bodyOutline.ts';
import type { Athlete } from '../../model/athlete.ts';
import type { Injury } from '../../model/injury.ts';
import { dotted, strong } from '../runs.ts';
import { INJURY_STATUS_WORDS, PURPOSE_WORDS, REGION_WORDS, SIDE_WORDS } from '../words.ts';
import { type Writing } from './writing.ts';

/** What the athlete is called in a title. */
export function athleteWords({ name }: Athlete): string {
  return name.trim() === '' ? 'name not recorded' : name;
}

/** Name, case number, date, who assessed, what for. */
export function titleBlock({ file, createdAt }: Writing, title: string): Block[] {
  const { case: record } = file;
  const facts = dotted(
    `Case ${record.number}`,
    formatDate(createdAt),
    record.practitioner === '' ? 'practitioner not recorded' : `assessed by ${record.practitioner}`,
    PURPOSE_WORDS[record.purpose],
  );
  return [
    heading(1, title),
    paragraph([{ text: facts, ink: 'muted' }]),
    ...(record.isInvented ? [paragraph(strong('Invented data. No real person is described on these pages.'))] : []),
  ];
}

/** Who was assessed and why, in sentences. */
export function whoAndWhy(writing: Writing): Block[] {
  const { athlete, case: record, injuries } = writing.file;
  const blocks: Block[] = [heading(2, 'Who and why')];
  blocks.push(paragraph(introduction(writing), { style: 'lead' }));
  if (record.question !== '') blocks.push(beside('Question', [paragraph(record.question)]));
  if (athlete.goals !== '') blocks.push(beside('Goals', [paragraph(athlete.goals)]));
  if (injuries.length > 0) {
    blocks.push(beside('Injuries on file', [list(injuries.map(injuryLine)), ...outlineOf(injuries)]));
  } else blocks.push(beside('Injuries on file', [paragraph('None recorded. That is not the same as none.')]));
  return blocks;
}

function introduction({ file, createdAt }: Writing): string {
  const { athlete } = file;
  const age = athlete.birthDate === null ? null : ageOn(athlete.birthDate, createdAt);
  const who = [
    age === null ? 'age not recorded' : `${age} years old`,
    [athlete.sport, athlete.position].filter((word) => word !== '').join(', '),
    athlete.level,
    athlete.dominantSide === null
      ? ''
      : `${athlete.dominantSide === 'both' ? 'both sides' : `${athlete.dominantSide} side`} dominant`,
  ].filter((part) => part !== '');
  const body = [
    athlete.massKg === null
      ? 'body mass not recorded'
      : `body mass ${quantityText({ value: athlete.massKg, unit: 'kg', u: athlete.massUKg })}`,
    athlete.statureM === null
      ? 'stature not recorded'
      : `stature ${quantityText({ value: athlete.statureM, unit: 'm', u: athlete.statureUM })}`,
  ];
  const named = athlete.name.trim() === '' ? sentenceCase(who.join('; ')) : `${athlete.name}: ${who.join('; ')}`;
  return `${named}. ${sentenceCase(body.join(', '))}.`;
}

export function outlineOf(injuries: readonly Injury[]): Block[] {
  const outline = bodyOutline(
    injuries.map((injury) => ({
      region: injury.region,
      side: injury.side,
      label: conditionWords(injury),
      isActive: injury.status !== 'resolved',
    })),
  );
  return outline === null ? [] : [outline];
}

/** `Shoulder instability, posterior, right`. */
export function conditionWords({ condition, side }: Injury): string {
  return [conditionEntry(condition).label, SIDE_WORDS[side]].filter((word) => word !== '').join(', ');
}

/** `Shoulder instability, posterior, right: March 2024, recovering, 2 episodes.` */
export function injuryLine(injury: Injury): string {
  const side = SIDE_WORDS[injury.side];
  const what = [conditionEntry(injury.condition).label, injury.diagnosis === '' ? '' : `(${injury.diagnosis})`]
    .filter((part) => part !== '')
    .join(' ');
  const facts = [
    injury.onset === null ? 'date not recorded' : formatDate(injury.onset),
    INJURY_STATUS_WORDS[injury.status],
    injury.episodes === null ? '' : injury.episodes === 1 ? 'one episode' : `${injury.episodes} episodes`,
    injury.hadSurgery === true ? 'operated on' : '',
    injury.clearedOn === null
      ? 'no clearance recorded'
      : `cleared ${formatDate(injury.clearedOn)}${injury.clearedBy === '' ? '' : ` by ${injury.clearedBy}`}`,
  ].filter((part) => part !== '');
  return `${what}, ${[side, REGION_WORDS[injury.region]].filter((part) => part !== '').join(' ')}: ${facts.join(', ')}.`;
}
