import { expect, test } from 'vitest';
import type { ReportRequest } from '../../../shared/report/compose.ts';
import { writeMarkdown } from '../../../shared/report/writeMarkdown.ts';
import { SAMPLE_CREATED_AT, SAMPLE_SHA256, sampleAssessment, sampleCase } from '../../support/sampleCase.ts';
import { squareMetrics } from './squareMetrics.ts';

const request: ReportRequest = {
  file: sampleCase(),
  assessment: sampleAssessment(),
  kind: 'study',
  paper: 'a4',
  metrics: squareMetrics,
  createdAt: SAMPLE_CREATED_AT,
  caseSha256: SAMPLE_SHA256,
};
const study = writeMarkdown(request);

test('law: one first heading, no skipped level, the sections of the checklist in order', () => {
  const levels = [...study.markdown.matchAll(/^(#+) /gm)].map(([, marks = '']) => marks.length);
  expect(levels.filter((level) => level === 1)).toHaveLength(1);
  levels.forEach((level, i) => expect(level - (levels[i - 1] ?? 0)).toBeLessThanOrEqual(1));
  const sections = [
    'Key words',
    'Summary',
    'Background',
    'Timeline',
    'Interventions',
    'Follow-up',
    'Discussion',
    'Consent',
  ];
  const places = sections.map((section) => study.markdown.indexOf(`\n## ${section}\n`));
  expect(places.every((place) => place > 0)).toBe(true);
  expect(places).toEqual(places.toSorted((a, b) => a - b));
});

test('GitHub Flavored Markdown 0.29, 4.10: every row of a table has as many cells as its head', () => {
  const tables = study.markdown.split('\n\n').filter((part) => part.startsWith('| '));
  expect(tables.length).toBeGreaterThan(5);
  for (const table of tables) {
    const cells = table.split('\n').map((row) => row.split(/(?<!\\)\|/).length);
    expect(new Set(cells).size).toBe(1);
  }
});

test('every figure is a file that the text names, with words for those who cannot see it', () => {
  expect(study.figures.length).toBeGreaterThan(3);
  for (const { fileName, svg } of study.figures) {
    expect(study.markdown).toMatch(new RegExp(`!\\[[^\\]]{10,}\\]\\(figures/${fileName}\\)`));
    expect(svg).toMatch(/^<svg [^>]+>\n<title>.+<\/title>/);
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  }
});

test('what was typed cannot become markup: a heading, a table cell, an image', () => {
  const file = sampleCase();
  const typed = { ...file, case: { ...file.case, question: '# a | b ![x](y) <b>' } };
  const { markdown } = writeMarkdown({ ...request, file: typed });
  expect(markdown).toContain('\\# a \\| b !\\[x\\](y) \\<b\\>');
});

test('a study is de-identified here as well, in text and figures', () => {
  const file = sampleCase();
  const named = {
    ...file,
    athlete: { ...file.athlete, name: 'Signe Strandskov', isPseudonym: false, goals: 'Signe throws.' },
  };
  expect(JSON.stringify(writeMarkdown({ ...request, file: named }))).not.toMatch(/signe|strandskov/i);
});
