import { useEffect, useState } from 'react';
import type { Purpose } from '../../../shared/model/case.ts';
import { PAPERS, REPORT_KINDS, type ReportRecord } from '../../../shared/model/outcome.ts';
import { counted, formatDate } from '../../../shared/format/number.ts';
import type { Request } from '../../../shared/contract/channels.ts';
import { referralEssentials } from '../../../shared/report/beforeYouSend.ts';
import type { PlacedReport } from '../../../shared/report/page.ts';
import { reportDoor, useMakeReportMutation, useReportPreviewQuery, useReportTextMutation } from '../../api.ts';
import { failureWords } from '../../failureWords.ts';
import { Button } from '../../parts/Button.tsx';
import { useCase } from '../useCase.ts';
import { beforeSending } from './beforeSending.ts';
import { saveFiles } from './saveFiles.ts';
import { PagesPreview } from './PagesPreview.tsx';
import { type Parts, useJob } from './useJob.ts';
import './report.css';

type ReportKind = ReportRecord['kind'];
type Paper = ReportRecord['paper'];

const KIND_BY_PURPOSE: Record<Purpose, ReportKind> = { intake: 'client', study: 'study', referral: 'referral' };
const KIND_WORDS: Record<ReportKind, string> = {
  client: 'Client report',
  study: 'Case study',
  referral: 'Referral letter',
};
const PAPER_WORDS: Record<Paper, string> = { a4: 'A4', letter: 'US Letter' };
/** Typing goes on; the pages follow when it pauses. */
const SETTLE_MS = 500;

/** The report: what stands against it, the pages themselves, and the reports already made. */
export function ReportSection() {
  const { file, assessment } = useCase();
  const [kind, setKind] = useState<ReportKind>(KIND_BY_PURPOSE[file.case.purpose]);
  const [paper, setPaper] = useState<Paper>('a4');
  const [names, setNames] = useState<'with' | 'without' | null>(null);
  const [attachCase, setAttachCase] = useState(false);
  const [isFinal, setIsFinal] = useState(false);
  const deidentify = names === null ? kind === 'study' : names === 'without';
  const request = { caseId: file.case.id, kind, paper, deidentify, isFinal };
  const { preview, parts, stop } = usePreview(request, file);
  const [makeReport, made] = useMakeReportMutation();
  const making = useJob();
  // The answer of an earlier choice must not stand as the pages of this one.
  const report = preview.currentData?.report as unknown as PlacedReport | undefined;
  const matters = beforeSending(file, assessment, kind, deidentify);
  const lacking = kind === 'referral' ? referralEssentials(file) : [];

  return (
    <div className="report-section">
      <section aria-labelledby="before-sending">
        <h3 id="before-sending">Before you send</h3>
        {matters.length === 0 ? (
          <p>Nothing stands against this report: nothing required is missing, and every finding is decided.</p>
        ) : (
          <>
            <p className="quiet">A report can be made at any time. These would weaken it:</p>
            <dl className="matters">
              {matters.map(({ heading, items }) => (
                <div key={heading}>
                  <dt>{heading}</dt>
                  {items.map((item) => (
                    <dd key={item}>{item}</dd>
                  ))}
                </div>
              ))}
            </dl>
          </>
        )}
      </section>

      <form className="report-choice" onSubmit={(event) => event.preventDefault()}>
        <label>
          Kind
          <select className="input" value={kind} onChange={({ target }) => setKind(target.value as ReportKind)}>
            {REPORT_KINDS.map((one) => (
              <option key={one} value={one}>
                {KIND_WORDS[one]}
              </option>
            ))}
          </select>
        </label>
        <label>
          Paper
          <select className="input" value={paper} onChange={({ target }) => setPaper(target.value as Paper)}>
            {PAPERS.map((one) => (
              <option key={one} value={one}>
                {PAPER_WORDS[one]}
              </option>
            ))}
          </select>
        </label>
        <fieldset className="report-ticks" aria-label="How it is made">
          <Tick isOn={deidentify} onTurn={(on) => setNames(on ? 'without' : 'with')}>
            Without names
          </Tick>
          <Tick isOn={attachCase} onTurn={setAttachCase}>
            With the case data inside
          </Tick>
          <Tick isOn={isFinal} onTurn={setIsFinal}>
            Final
          </Tick>
        </fieldset>
        <Button
          look="main"
          disabled={made.isLoading || (isFinal && lacking.length > 0)}
          onClick={() => void makeReport({ ...request, attachCase, jobId: making.begin() })}
        >
          Make the PDF
        </Button>
        <EditableTexts request={request} />
        {isFinal && lacking.length > 0 && (
          <p className="failed">
            A letter is final only when nothing is missing: {lacking.join(' ')} Save it as a draft.
          </p>
        )}
        <MakingState made={made} parts={making.parts} stop={making.stop} />
      </form>

      {report !== undefined && <PagesPreview report={report} />}
      <output className="report-state">
        {preview.isFetching && (
          <span className="appears-late">
            Composing the pages… {partsWords(parts, 'laid out')} <Button onClick={stop}>Stop composing</Button>
          </span>
        )}
      </output>
      {preview.isError && !preview.isFetching && (
        <p className="failed" role="alert">
          {preview.error?.code === 'cancelled'
            ? 'Stopped before the pages were composed.'
            : `The pages could not be composed. ${failureWords(preview.error)}`}{' '}
          <Button onClick={preview.refetch}>Compose the pages</Button>
        </p>
      )}

      <section aria-labelledby="reports-made">
        <h3 id="reports-made">Reports made</h3>
        {file.reports.length === 0 ? (
          <p className="quiet">
            None yet. A report made here is kept as it is; a later change to the case makes a new one.
          </p>
        ) : (
          <ReportsMade reports={file.reports} number={file.case.number} />
        )}
      </section>
    </div>
  );
}

/** How far the PDF is, with the way to stop it, and what became of it. */
function MakingState({ made, parts, stop }: MakingProps) {
  return (
    <>
      <output className="report-state">
        {made.isLoading && (
          <span className="appears-late">
            {parts === null ? 'Composing the pages of the PDF…' : `Page ${parts.done} of ${parts.of} drawn…`}
          </span>
        )}
        {made.isSuccess && (
          <>
            The report is made and kept.{' '}
            <a href={made.data.href} download>
              Save the PDF
            </a>
          </>
        )}
        {made.isError && <span className="failed">{failureWords(made.error)}</span>}
      </output>
      {made.isLoading && <Button onClick={stop}>Stop making it</Button>}
    </>
  );
}

interface MakingProps {
  readonly made: ReturnType<typeof useMakeReportMutation>[1];
  readonly parts: Parts | null;
  readonly stop: () => void;
}

function partsWords(parts: Parts | null, done: string): string {
  return parts === null ? '' : `${parts.done} of ${counted(parts.of, 'part')} ${done}.`;
}

interface TickProps {
  readonly isOn: boolean;
  readonly onTurn: (isOn: boolean) => void;
  readonly children: string;
}

function Tick({ isOn, onTurn, children }: TickProps) {
  return (
    <label className="report-tick">
      <input type="checkbox" checked={isOn} onChange={({ target }) => onTurn(target.checked)} />
      {children}
    </label>
  );
}

/** The report as text to be edited: one document, or Markdown with its figures in an archive. */
function EditableTexts({ request }: { request: Omit<Request<'report.text'>, 'as'> }) {
  const [write, written] = useReportTextMutation();
  const { parts, begin, stop } = useJob();
  const save = async (as: 'docx' | 'md') => {
    const { data } = await write({ ...request, as, jobId: begin() });
    if (data !== undefined) saveFiles(data.files);
  };
  return (
    <>
      <Button disabled={written.isLoading} onClick={() => void save('docx')}>
        Save as a text document
      </Button>
      <Button disabled={written.isLoading} onClick={() => void save('md')}>
        Save as Markdown
      </Button>
      {written.isLoading && <Button onClick={stop}>Stop writing it</Button>}
      <output className="report-state">
        {written.isLoading && <span className="appears-late">Writing the text… {partsWords(parts, 'written')}</span>}
        {written.isError && <span className="failed">{failureWords(written.error)}</span>}
      </output>
    </>
  );
}

function ReportsMade({ reports, number }: { reports: readonly ReportRecord[]; number: string }) {
  return (
    <table className="table">
      <thead>
        <tr>
          <th scope="col">Made</th>
          <th scope="col">Kind</th>
          <th scope="col">Pages</th>
          <th scope="col">Versions of app, kernel, rules</th>
          <th scope="col">File</th>
        </tr>
      </thead>
      <tbody>
        {reports.toReversed().map((report) => (
          <tr key={report.id}>
            <td>
              {formatDate(report.madeAt)}, {report.madeAt.slice(11, 16)} UTC
            </td>
            <td>
              {KIND_WORDS[report.kind]}, {PAPER_WORDS[report.paper]}
              {report.isFinal ? ', final' : ', draft'}
              {report.isDeidentified && ', without names'}
              {report.changes !== '' && <div className="quiet">Changed since the one before: {report.changes}</div>}
            </td>
            <td>{counted(report.pageCount, 'page')}</td>
            <td>
              {report.appVersion}, {report.kernelVersion}, {report.rulesVersion}
            </td>
            <td>
              <a href={`/files/${report.pdfSha256}/${fileName(report, number)}`} download>
                Save the PDF
              </a>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function fileName(report: ReportRecord, number: string): string {
  return encodeURIComponent(`${number} ${KIND_WORDS[report.kind].toLowerCase()} ${report.madeAt.slice(0, 10)}.pdf`);
}

/** The pages, asked for again when the case has changed and typing has paused; stopped when nobody waits for them any more. */
function usePreview(request: Omit<Request<'report.preview'>, 'jobId'>, file: object) {
  const { jobId, parts, stop } = useJob();
  const preview = useReportPreviewQuery({ ...request, jobId });
  const { isFetching, refetch } = preview;
  const [asked, setAsked] = useState(file);
  useEffect(() => {
    // What is under way is not asked for twice: the change is seen to when it is done.
    if (file === asked || isFetching) return undefined;
    const timer = setTimeout(() => {
      setAsked(file);
      void refetch();
    }, SETTLE_MS);
    return () => clearTimeout(timer);
  }, [file, asked, isFetching, refetch]);
  useEffect(() => () => void reportDoor.cancel(jobId), [jobId]);
  return { preview, parts, stop };
}
