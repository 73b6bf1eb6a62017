// oxlint-disable-next-line import/no-named-as-default -- the named export has no type of its own
import PDFDocument from 'pdfkit';
import { fontFile } from '../../main/report/fontFiles.ts';
import { FACES, type PlacedReport } from '../../shared/report/page.ts';
import { marksOf } from '../../shared/report/placed.ts';

/** The same words in the same places by the PDF package alone: no layout, no tags, no figures. */
export async function barePdf(report: PlacedReport): Promise<number> {
  const doc = new PDFDocument({ autoFirstPage: false });
  for (const face of FACES) doc.registerFont(face, fontFile(face));
  let bytes = 0;
  const done = new Promise<void>((resolve) => {
    doc.on('data', (chunk: Uint8Array) => (bytes += chunk.length));
    doc.on('end', resolve);
  });
  for (const page of report.pages) {
    doc.addPage({ size: [page.width, page.height], margin: 0 });
    for (const mark of page.content.flatMap(marksOf)) {
      if (mark.mark !== 'text') continue;
      doc.font(mark.face).fontSize(mark.size).text(mark.text, mark.x, mark.baseline, { lineBreak: false });
    }
  }
  doc.end();
  await done;
  return bytes;
}
