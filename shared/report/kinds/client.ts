import type { Finding, Outcome } from '../../assess/assessment.ts';
import { groupFindings } from '../../assess/groupFindings.ts';
import { stopReason } from '../../assess/stopWords.ts';
import { ageOn } from '../../format/age.ts';
import { counted, formatDate } from '../../format/number.ts';
import { conditionEntry } from '../../knowledge/conditions/index.ts';
import { TRADE_WORDS } from '../../knowledge/wording/tradeWords.ts';
import type { Injury } from '../../model/injury.ts';
import { beside } from '../blocks/beside.ts';
import type { Block } from '../blocks/block.ts';
import { heading } from '../blocks/heading.ts';
import { list } from '../blocks/list.ts';
import { paragraph } from '../blocks/paragraph.ts';
import type { Composition } from '../compose.ts';
import { keyPoses } from '../figures/keyPoses.ts';
import { howMadeInShort } from '../parts/closing.ts';
import { adviceHead } from '../parts/findings.ts';
import { adviceOf, firstSteps, forAthlete } from '../parts/firstSteps.ts';
import { asOf } from '../../assess/asOf.ts';
import { sentenceCase } from '../../format/letterCase.ts';
import { liftedBy } from '../../rules/effects/liftedBy.ts';
import { isTold } from '../parts/limits.ts';
import { athleteWords, outlineOf, titleBlock } from '../parts/opening.ts';
import { progressPart } from '../parts/progressPart.ts';
import { stillsOf } from '../parts/stills.ts';
import { testFigures } from '../parts/results.ts';
import { ANCHORS, type Writing } from '../parts/writing.ts';
import { plain, quiet, type Runs, strong, textOf } from '../runs.ts';
import { SIDE_WORDS } from '../words.ts';

/** For the athlete, in plain words: what was found and what to do. Numbers, working and sources are for the case study. */
export function composeClient(writing: Writing): Composition {
  const title = `Movement assessment: ${athleteWords(writing.file.athlete)}`;
  const told = [
    ...whoAndWhy(writing),
    ...stopFirst(writing),
    ...firstSteps(writing),
    ...leaveAlone(writing),
    ...progressPart(writing),
    ...found(writing),
    ...testFigures(writing, 'Your tests as pictures'),
    ...notChecked(writing),
  ];
  return {
    title,
    kindWords: 'client report',
    blocks: [
      ...titleBlock(writing, title),
      ...told,
      ...glossary(told),
      heading(2, 'Please remember'),
      list([
        'These tests are not a diagnosis. They show how you moved on one day.',
        'A doctor or physiotherapist decides. If they say something else, do what they say.',
        'Stop and be seen if you feel pain, numbness or weakness, if a joint gives way, or if you feel faint.',
        'Nothing here says that you are fit to train or play.',
      ]),
      ...howMadeInShort(writing),
    ],
  };
}

function whoAndWhy({ file, createdAt }: Writing): Block[] {
  const { athlete, case: record } = file;
  const age = athlete.birthDate === null ? null : `You are ${ageOn(athlete.birthDate, createdAt)} years old.`;
  const sport = [athlete.sport, athlete.position].filter((word) => word !== '').join(', ');
  const who = [age ?? 'Your age was not recorded.', sport === '' ? '' : `Your sport: ${sport}.`];
  return [
    heading(2, 'Who and why'),
    paragraph(who.filter((part) => part !== '').join(' ')),
    ...(record.question === '' ? [] : [beside('The question', [paragraph(record.question)])]),
    ...(athlete.goals === '' ? [] : [beside('Your goal', [paragraph(athlete.goals)])]),
  ];
}

/** In the athlete's own words where a finding has them; what each asks for stands beside it. */
function stopFirst(writing: Writing): Block[] {
  const { stops, findings } = writing.assessment;
  if (stops.length === 0) return [];
  const asked = findings.filter(isReferral);
  return [
    heading(2, 'First of all: be seen', ANCHORS.safety),
    paragraph('Something you told us or felt must be looked at before you train on. See a doctor or physiotherapist.'),
    list(
      asked.length === 0
        ? stops.map((stop) => strong(sentenceCase(stopReason(stop.words))))
        : asked.map((finding) => {
            const advice = adviceOf(writing, finding);
            return [...strong(withSide(finding)), ...plain(advice === null ? '' : ` ${forAthlete(finding, advice)}`)];
          }),
    ),
  ];
}

function isReferral({ outcome }: Finding): boolean {
  return outcome === 'referral';
}

/** The finding in the athlete's words, after its side where the words do not name it; without a number below zero. */
function withSide({ side, wording }: Finding): string {
  const words = wording.athlete.finding.replace(BELOW_ZERO, '');
  const name = SIDE_WORDS[side];
  return name === '' || words.toLowerCase().includes(name) ? words : `${sentenceCase(name)} side. ${words}`;
}

/** `: −32 ms` before the end of a clause: a sign says nothing to someone who was not told what zero is. */
const BELOW_ZERO = /:\s−\d+(?:\.\d+)?\s?[^\s.,;]*(?=[.,;]|$)/g;

/** What an injury on file rules out for now, in words of the record, and who can change that. */
function leaveAlone({ file, assessment }: Writing): Block[] {
  // What only waits for someone to be seen is said above.
  const held = assessment.findings.filter(({ withheld }) => withheld !== null && withheld.because.length > 0).length;
  // A limit still written down holds beside a clearance.
  const holds = (injury: Injury) => injury.restrictions !== '' || liftedBy(injury, asOf(file)) === null;
  const limits = file.injuries.filter(holds).map((injury) => {
    const entry = conditionEntry(injury.condition);
    const name = [entry.label, SIDE_WORDS[injury.side]].filter((word) => word !== '').join(', ');
    const limit = injury.restrictions === '' ? entry.limits : injury.restrictions;
    return beside(name, [
      paragraph(limit === '' ? 'Ask before you load it.' : limit),
      paragraph([...strong('Who can clear it: '), ...plain(`${entry.clears}.`)]),
    ]);
  });
  if (limits.length === 0 && held === 0) return [];
  return [
    heading(2, 'What to leave alone for now', ANCHORS.heldBack),
    ...outlineOf(file.injuries.filter(holds)),
    ...limits,
    ...(held === 0
      ? []
      : [
          paragraph(
            `We also held back ${counted(held, 'usual piece', 'usual pieces')} of advice because of your injuries. Ask the person named here before you do more.`,
          ),
        ]),
  ];
}

function found(writing: Writing): Block[] {
  const { file } = writing;
  const { trials, profile } = groupFindings(file, writing.assessment.findings);
  const ofTrials = trials.flatMap(({ trial, movement, phases, whole }) => {
    const judged = phases.map(({ phase, findings }) => ({
      name: phase.label,
      means: phase.means,
      findings,
      still: stillsOf(writing, trial, phase, movement, CLIENT_STILL).slice(0, 1),
    }));
    const parts = [...judged, { name: 'The whole movement', means: '', findings: whole, still: [] }];
    const told = parts.filter(({ findings }) => findings.some(isJudged));
    if (told.length === 0) return [];
    const tracks = file.landmarkTracks.filter((track) => track.trialId === trial.id);
    const events = file.trialEvents.filter((event) => event.trialId === trial.id);
    const poses = movement === null ? null : keyPoses(trial, tracks, events, movement);
    return [
      heading(2, `What we saw: ${(movement?.label ?? trial.movementId).toLowerCase()}`),
      paragraph(quiet(`Filmed on ${formatDate(trial.filmedOn)}.`)),
      ...(poses === null ? [] : [poses]),
      ...told.map(({ name, means, findings, still }) =>
        beside(name, [
          ...(means === '' ? [] : [paragraph(quiet(means))]),
          list(findings.filter(isJudged).map((finding) => inWords(writing, finding))),
          ...still,
        ]),
      ),
    ];
  });
  // Referrals stand at the head.
  const tests = profile.filter((finding) => isJudged(finding) && !isReferral(finding));
  return [
    ...ofTrials,
    ...(tests.length === 0
      ? []
      : [heading(2, 'What your tests showed'), list(tests.map((finding) => inWords(writing, finding)))]),
  ];
}

/** Points: seven phases have to stand on two pages. */
const CLIENT_STILL = 90;

const PLAIN_OUTCOMES: Readonly<Partial<Record<Outcome, string>>> = {
  confirmed: 'Good. ',
  intervention: 'To work on. ',
  modified: 'To work on, with care. ',
  replaced: 'To work on in another way. ',
  stopped: 'Leave it for now. ',
  borderline: 'Close call: we test again. ',
  monitor: 'Keep an eye on it. ',
  caution: 'Take care. ',
  referral: 'Be seen. ',
};

function isJudged({ outcome }: Finding): boolean {
  return outcome !== 'not-assessed';
}

/** One finding: how it stands, what was found, and what to watch where that is no training of its own. */
function inWords(writing: Writing, finding: Finding): Runs {
  const advice = finding.kind === 'monitor' || finding.kind === 'caution' ? adviceOf(writing, finding) : null;
  return [
    ...strong(PLAIN_OUTCOMES[finding.outcome] ?? ''),
    ...plain(withSide(finding)),
    ...(advice === null ? [] : [...plain(' '), ...quiet(`${adviceHead(finding)}${forAthlete(finding, advice)}`)]),
  ];
}

function notChecked({ assessment }: Writing): Block[] {
  const open = assessment.findings.filter((finding) => !isJudged(finding) && isTold(finding)).length;
  if (open === 0) return [];
  return [
    heading(2, 'What we could not check', ANCHORS.notAssessed),
    paragraph(
      `We could not judge ${counted(open, 'point')}, because something was not measured. A missing value is not a good value. Ask us for the list if you want it.`,
    ),
  ];
}

/** Trade words that the report had to use, each with what it means. */
function glossary(blocks: readonly Block[]): Block[] {
  const text = wordsOf(blocks).join(' ');
  const rows = TRADE_WORDS.flatMap(({ word, plain: means }): Runs[] => {
    const used = word.exec(text)?.[0].toLowerCase();
    return used === undefined ? [] : [[...strong(`${used}: `), ...plain(means)]];
  });
  return rows.length === 0 ? [] : [heading(2, 'Words explained'), list(rows)];
}

function wordsOf(blocks: readonly Block[]): string[] {
  return blocks.flatMap((block): string[] => {
    switch (block.block) {
      case 'heading':
        return [block.text];
      case 'paragraph':
        return [textOf(block.runs)];
      case 'list':
        return block.items.map(textOf);
      case 'beside':
        return [textOf(block.label), ...wordsOf(block.body)];
      case 'figure':
        return [block.alt];
      default:
        return [];
    }
  });
}
