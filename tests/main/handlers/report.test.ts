import { createHash } from 'node:crypto';
import fs from 'node:fs';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Edit } from '../../../shared/model/edit.ts';
import { KINDS } from '../../../shared/model/records.ts';
import { creating } from '../../conformance/examples.ts';
import { type Asked, aService, TODAY } from './aService.ts';

let made: Asked;
beforeEach(async () => {
  made = await aService();
});
afterEach(() => made.dispose());

/** The whole example case, entered through the contract. */
async function enter({ ask }: Asked): Promise<string> {
  const { caseId } = await ask('case.create', { purpose: 'study', athleteId: null, openedOn: TODAY });
  const { file } = await ask('case.open', { caseId });
  const kinds = KINDS.filter((kind) => !['athlete', 'case', 'report', 'media'].includes(kind));
  const owners = { athleteId: file.athlete.id, caseId };
  const edits = creating(kinds).map((edit) => {
    const record = edit.op === 'create' ? edit.record : {};
    const owned = Object.entries(owners).filter(([field]) => field in record);
    return { ...edit, record: { ...record, ...Object.fromEntries(owned) } } as Edit;
  });
  await ask('case.edit', { caseId, edits });
  return caseId;
}

const make = ({ ask }: Asked, caseId: string) => ask('report.make', { caseId, kind: 'study', paper: 'a4' });

test('a report is a PDF under its SHA-256, with a record of what made it, and undo passes over it', async () => {
  const caseId = await enter(made);
  const before = await made.ask('case.open', { caseId });
  const { reportId, pdfSha256, href, edits } = await make(made, caseId);
  const bytes = fs.readFileSync(made.service.mediaFile(pdfSha256) ?? '');
  expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
  expect(createHash('sha256').update(bytes).digest('hex')).toBe(pdfSha256);
  expect(href).toMatch(new RegExp(`^/files/${pdfSha256}/[\\w.-]+\\.pdf$`));
  expect(edits.undo).toBe(before.edits.undo);
  const { file } = await made.ask('case.open', { caseId });
  expect(file.reports).toMatchObject([{ id: reportId, kind: 'study', paper: 'a4', pdfSha256 }]);
  expect(file.media).toMatchObject([{ sha256: pdfSha256, mediaType: 'application/pdf', sizeBytes: bytes.length }]);
});

test('same case, same bytes: made again a day later, made after an edit was undone, and made from the same edits elsewhere', async () => {
  const caseId = await enter(made);
  const first = await make(made, caseId);
  made.wait(24 * 60 * 60 * 1000);
  expect((await make(made, caseId)).pdfSha256).toBe(first.pdfSha256);
  await made.ask('case.edit', {
    caseId,
    edits: [{ op: 'patch', kind: 'case', id: caseId, fields: { question: 'x' } }],
  });
  expect((await make(made, caseId)).pdfSha256).not.toBe(first.pdfSha256);
  await made.ask('case.undo', { caseId });
  expect((await make(made, caseId)).pdfSha256).toBe(first.pdfSha256);

  const elsewhere = await aService();
  expect((await make(elsewhere, await enter(elsewhere))).pdfSha256).toBe(first.pdfSha256);
  await elsewhere.dispose();
});

test('the preview shows the very pages: as many as the report then has', async () => {
  const caseId = await enter(made);
  const { report } = await made.ask('report.preview', { caseId, kind: 'study', paper: 'a4' });
  await make(made, caseId);
  const { file } = await made.ask('case.open', { caseId });
  expect((report as { pages: unknown[] }).pages).toHaveLength(file.reports[0]?.pageCount ?? 0);
});

test('a report file that changed on disk is found', async () => {
  const { pdfSha256 } = await make(made, await enter(made));
  fs.appendFileSync(made.service.mediaFile(pdfSha256) ?? '', ' ');
  const { problems } = await made.ask('store.verify', {});
  expect(problems).toEqual([expect.stringMatching(/^The file .+\.pdf has changed on disk since it was kept\.$/)]);
});

test('a final report stays as it is; one made after an edit takes its place and says what changed, on the page too', async () => {
  const caseId = await enter(made);
  const final = { caseId, kind: 'client', paper: 'a4', isFinal: true } as const;
  const first = await made.ask('report.make', final);
  expect((await made.ask('report.make', final)).pdfSha256).toBe(first.pdfSha256);
  await made.ask('case.edit', {
    caseId,
    edits: [{ op: 'patch', kind: 'case', id: caseId, fields: { question: 'Another question?' } }],
  });
  const second = await made.ask('report.make', final);
  const { file } = await made.ask('case.open', { caseId });
  const [one, again, other] = file.reports;
  expect([one?.isFinal, one?.replacesId, again?.replacesId]).toEqual([true, null, null]);
  expect(other).toMatchObject({ replacesId: again?.id, changes: 'Case changed (question).' });
  expect(JSON.stringify(await made.ask('report.preview', final))).toContain('Case changed (question).');
  const kept = fs.readFileSync(made.service.mediaFile(first.pdfSha256) ?? '');
  expect(createHash('sha256').update(kept).digest('hex')).toBe(first.pdfSha256);
  expect(second.pdfSha256).not.toBe(first.pdfSha256);
  const edit: Edit = { op: 'patch', kind: 'report', id: first.reportId, fields: { isFinal: false } };
  expect((await made.refusal('case.edit', { caseId, edits: [edit] })).message).toContain('Nothing was changed.');
  // The data it was made from, under the SHA-256 that it prints.
  const data = fs.readFileSync(made.service.mediaFile(one?.caseSha256 ?? '') ?? '', 'utf8');
  expect(createHash('sha256').update(data).digest('hex')).toBe(one?.caseSha256);
  expect((JSON.parse(data) as { case: { question: string } }).case.question).not.toBe('Another question?');
});

test('a letter without its essentials is refused as final, with what is missing, and made as a draft', async () => {
  const caseId = await enter(made);
  const letter = { caseId, kind: 'referral', paper: 'a4' } as const;
  const refused = await made.refusal('report.make', { ...letter, isFinal: true });
  expect(refused.code).toBe('input-missing');
  expect(refused.message).toContain('Addressee.');
  await made.ask('report.make', letter);
});

test('texts that can be edited: same case, same bytes a day later; nothing is kept with the case', async () => {
  const caseId = await enter(made);
  const asked = (as: 'docx' | 'md') => made.ask('report.text', { caseId, kind: 'study', paper: 'a4', as });
  const first = [await asked('docx'), await asked('md')];
  made.wait(24 * 60 * 60 * 1000);
  expect([await asked('docx'), await asked('md')]).toEqual(first);
  const [docx, md] = first.map(({ files }) => files.map(({ name }) => name));
  expect(docx).toEqual([expect.stringMatching(/-study\.docx$/)]);
  expect(md?.[0]).toMatch(/-study\.md$/);
  expect((await made.ask('case.open', { caseId })).file.media).toEqual([]);
});

test('stopped while its pages are drawn, a report leaves no record and no file, and what is typed meanwhile is kept', async () => {
  const caseId = await enter(made);
  const jobId = '00000000-0000-4000-8000-000000000777';
  const filesBefore = fs.readdirSync(made.folder, { recursive: true }).length;
  const heard: number[] = [];
  made.service.on('report.progress', (progress) => {
    if (progress.jobId !== jobId) return;
    heard.push(progress.done);
    void made.ask('report.cancel', { jobId });
  });
  const refused = await made.refusal('report.make', { caseId, kind: 'study', paper: 'a4', jobId });
  expect(refused.code).toBe('cancelled');
  expect(heard.length).toBeGreaterThan(0);
  expect((await made.ask('case.open', { caseId })).file.reports).toEqual([]);
  expect(fs.readdirSync(made.folder, { recursive: true })).toHaveLength(filesBefore);
});

test('texts and pages are stopped under the id of their job; pages asked for anew take the place of those under way', async () => {
  const caseId = await enter(made);
  const jobId = '00000000-0000-4000-8000-000000000778';
  const asked = { caseId, kind: 'study', paper: 'a4', jobId } as const;
  const stopAtFirst = ({ jobId: whose }: { jobId: string }) => {
    if (whose === jobId) void made.ask('report.cancel', { jobId });
  };
  const forget = made.service.on('report.progress', stopAtFirst);
  expect((await made.refusal('report.text', { ...asked, as: 'docx' })).code).toBe('cancelled');
  expect((await made.refusal('report.text', { ...asked, as: 'md' })).code).toBe('cancelled');
  expect((await made.refusal('report.preview', asked)).code).toBe('cancelled');
  forget();

  const first = made.refusal('report.preview', asked);
  const second = made.ask('report.preview', { ...asked, kind: 'client' });
  expect((await first).code).toBe('cancelled');
  expect((await second).report).toMatchObject({ subject: expect.stringContaining('client report') as string });
});

test('changes are not held up by a report under way, which tells of the case as it was when it was asked for', async () => {
  const caseId = await enter(made);
  const { file } = await made.ask('case.open', { caseId });
  let isMade = false;
  const making = make(made, caseId).then((answer) => {
    isMade = true;
    return answer;
  });
  const edits: Edit[] = [{ op: 'patch', kind: 'case', id: caseId, fields: { question: 'Typed meanwhile.' } }];
  await made.ask('case.edit', { caseId, edits });
  expect(isMade).toBe(false);
  const { reportId } = await making;
  const after = await made.ask('case.open', { caseId });
  expect(after.file.case.question).toBe('Typed meanwhile.');
  const again = await made.ask('report.make', { caseId, kind: 'study', paper: 'a4' });
  const shas = (await made.ask('case.open', { caseId })).file.reports.map((one) => [one.id, one.caseSha256] as const);
  expect(new Set(shas.map(([, sha]) => sha)).size).toBe(2);
  expect(shas[0]?.[0]).toBe(reportId);
  expect(again.reportId).not.toBe(reportId);
  expect(file.case.question).not.toBe('Typed meanwhile.');
});
