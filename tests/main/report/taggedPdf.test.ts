import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ask } from '../../../main/cli/ask.ts';
import { invent } from '../../../main/demo/demoStore.ts';
import { loadEvidence } from '../../../main/report/loadEvidence.ts';
import { makeReport } from '../../../main/report/makeReport.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import {
  elementsUnder,
  hasQpdf,
  Pdf,
  type PdfObject,
  readStructure,
  type StructureElement,
  textIn,
  walkContent,
} from '../../support/readPdf.ts';
import { SAMPLE_CREATED_AT } from '../../support/sampleCase.ts';

/**
 * The tags of the written files, walked. Clauses of ISO 14289-1 (PDF/UA-1) are those that the published rules of an open
 * validator name; those of ISO 32000-1 as printed there.
 */
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-tags-'));
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

interface Written {
  readonly name: string;
  readonly pdf: Pdf;
  readonly title: string;
  readonly createdAt: string;
  readonly root: StructureElement;
  readonly elements: readonly StructureElement[];
  /** Elements whose `/P` is not their parent. */
  readonly strays: readonly string[];
}
const written: Written[] = [];

async function write(name: string, file: CaseFile, options: Omit<Parameters<typeof makeReport>[2], 'attachCase'>) {
  const { bytes, report } = await makeReport(file, SAMPLE_CREATED_AT, { ...options, attachCase: true });
  const at = path.join(folder, 'made.pdf');
  fs.writeFileSync(at, bytes);
  const pdf = new Pdf(at);
  const tree = pdf.dictionary(pdf.catalog['/StructTreeRoot']);
  const strays: string[] = [];
  const root = readStructure(pdf, textIn(pdf.list(tree['/K'])[0]), textIn(pdf.catalog['/StructTreeRoot']), strays);
  written.push({
    name,
    pdf,
    title: report.title,
    createdAt: report.createdAt,
    root,
    elements: elementsUnder(root),
    strays,
  });
}

beforeAll(async () => {
  if (!hasQpdf) return;
  const { service, cases } = await invent(path.join(folder, 'store'), 'command line');
  const open = async (caseId: string) => (await ask(service, 'case.open', { caseId })).file;
  const handball = await open(cases.handball);
  // With the force records, drawn as they are in the program.
  const read = (sha256: string) => Promise.resolve(fs.readFileSync(service.mediaFile(sha256) ?? ''));
  const evidence = await loadEvidence({ read }, handball);
  for (const kind of ['client', 'study', 'referral'] as const)
    await write(`handball, ${kind}`, handball, { kind, paper: kind === 'study' ? 'letter' : 'a4', evidence });
  await write('judoka, final letter', await open(cases.judoka), { kind: 'referral', paper: 'letter', isFinal: true });
  const named = {
    ...handball,
    athlete: { ...handball.athlete, name: 'Zoë Ångström-Łukasiewicz & שרה', isPseudonym: true },
  };
  await write('many letters, client', named, { kind: 'client', paper: 'a4' });
  await service.close();
}, 60_000);

/** Something asked of every written report; what does not hold is listed by report. */
const everywhere = (faultsOf: (one: Written) => readonly string[]) => {
  expect(written.length).toBe(5);
  const faults = written.flatMap((one) => faultsOf(one).map((fault) => `${one.name}: ${fault}`));
  // The first few show what is wrong.
  expect(faults.slice(0, 12)).toEqual([]);
};
const ofRole = ({ elements }: Written, ...roles: string[]) => elements.filter(({ role }) => roles.includes(role));
/** XML 1.0, 4.1: characters by their number. */
const plain = (text: string) => text.replace(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)));
/** `u:` before texts that qpdf could read. */
const words = (object: PdfObject | undefined) => textIn(object).replace(/^u:/, '');

describe.skipIf(!hasQpdf)('tags', () => {
  test('ISO 32000-1, 14.7.2: every element points back to its parent, and has a role of the standard (14.8.4)', () => {
    const standard = 'Document,H1,H2,H3,P,L,LI,Lbl,LBody,Table,TR,TH,TD,Figure,Caption,Formula,Note,Link'.split(',');
    everywhere(({ strays, elements }) => [
      ...strays,
      ...elements.flatMap(({ role }) => (standard.includes(role) ? [] : [role])),
    ]);
  });

  test('ISO 32000-1, 14.7.4.4: all marked content of each page is held by one element, and the parent tree leads back to it', () => {
    everywhere(({ pdf, elements }) => {
      const tree = pdf.tree(pdf.dictionary(pdf.catalog['/StructTreeRoot'])['/ParentTree'], '/Nums');
      return pdf.pages().flatMap((page, p) => {
        const { '/Contents': contents, '/StructParents': key = null } = pdf.dictionary(page);
        const drawn = walkContent(
          pdf
            .list(contents)
            .map((one) => pdf.stream(one))
            .join('\n'),
        ).mcids;
        const held = elements.flatMap(({ ref, content }) =>
          content.flatMap((one) => (one.page === page ? [{ mcid: one.mcid, ref }] : [])),
        );
        const back = pdf.list(tree.get(key));
        const where = (mcid: number) => `page ${p + 1}, content ${mcid}`;
        return [
          ...(drawn.length > 0 ? [] : [`page ${p + 1} has no tagged content`]),
          ...(new Set(drawn).size === drawn.length ? [] : [`page ${p + 1} has two of one number`]),
          ...(back.length === drawn.length
            ? []
            : [`page ${p + 1}: ${back.length} in the parent tree, ${drawn.length} drawn`]),
          ...drawn
            .filter((mcid) => held.filter((one) => one.mcid === mcid).length !== 1)
            .map((one) => `${where(one)} is not held once`),
          ...held
            .filter(({ mcid, ref }) => back[mcid] !== ref || !drawn.includes(mcid))
            .map(({ mcid }) => `${where(mcid)} leads elsewhere`),
        ];
      });
    });
  });

  test('ISO 14289-1, 7.1: everything drawn is tagged or an artifact, never one inside the other; running heads and feet are artifacts', () => {
    everywhere(({ pdf }) =>
      pdf.pages().flatMap((page, p) => {
        const content = pdf
          .list(pdf.dictionary(page)['/Contents'])
          .map((one) => pdf.stream(one))
          .join('\n');
        const artifacts = content.match(/\/Artifact/g)?.length ?? 0;
        return [
          ...walkContent(content).faults.map((fault) => `page ${p + 1}: ${fault}`),
          ...(artifacts >= 2 ? [] : [`page ${p + 1} has ${artifacts} artifacts, and no head or foot`]),
        ];
      }),
    );
  });

  test('ISO 14289-1, 7.18.1, 7.18.3 and 7.18.5: every link is in a Link element, says where it leads, leads there, and is reached in the order of the structure', () => {
    let links = 0;
    everywhere(({ pdf, elements }) => {
      const tree = pdf.tree(pdf.dictionary(pdf.catalog['/StructTreeRoot'])['/ParentTree'], '/Nums');
      const places = pdf.tree(pdf.dictionary(pdf.catalog['/Names'])['/Dests'] ?? {}, '/Names');
      return pdf.pages().flatMap((page) => {
        const { '/Annots': annotations, '/Tabs': tabs } = pdf.dictionary(page);
        return [
          ...(tabs === '/S' ? [] : ['a page without /Tabs /S']),
          ...pdf.list(annotations).flatMap((ref) => {
            links += 1;
            const annotation = pdf.dictionary(ref);
            const holder = elements.find((one) => one.annotations.includes(textIn(ref)));
            const goal = pdf.dictionary(annotation['/A'])['/D'] ?? null;
            return [
              ...(annotation['/Subtype'] === '/Link' && holder?.role === 'Link'
                ? []
                : [`${textIn(ref)} is in no Link`]),
              ...(words(annotation['/Contents']).trim() === '' ? [`${textIn(ref)} does not say where it leads`] : []),
              ...(tree.get(annotation['/StructParent'] ?? null) === holder?.ref
                ? []
                : [`${textIn(ref)} leads back to no holder`]),
              ...(places.has(goal) ? [] : [`${textIn(ref)} leads to ${textIn(goal)}, which is nowhere`]),
            ];
          }),
        ];
      });
    });
    expect(links).toBeGreaterThan(50);
  });

  test('ISO 14289-1, 7.21.8: no text shows .notdef, also where the typefaces lack a letter', () => {
    everywhere(({ pdf }) => {
      const glyphs = pdf
        .pages()
        .flatMap((page) =>
          pdf.list(pdf.dictionary(page)['/Contents']).flatMap((one) => walkContent(pdf.stream(one)).glyphs),
        );
      return [...(glyphs.length > 500 ? [] : ['hardly any text was read']), ...(glyphs.includes(0) ? ['.notdef'] : [])];
    });
  });

  test('ISO 14289-1, 5, 7.1 and 7.2, ISO 19005-3, 6.6: the file says its language, that it is tagged, what it is built to, and its title alike in both places', () => {
    everywhere(({ pdf, title, createdAt }) => {
      const { catalog, info } = pdf;
      const xmp = Buffer.from(pdf.stream(catalog['/Metadata']), 'latin1').toString('utf8');
      const inXmp = (tag: string) =>
        new RegExp(`<${tag}[^>]*>\\s*(?:<rdf:(?:Alt|Seq|Bag)>\\s*<rdf:li[^>]*>)?([^<]*)`).exec(xmp)?.[1] ?? '';
      const inInfo = (key: string) => words(pdf.at(info[key]));
      const at = createdAt.slice(0, 19);
      const says = {
        language: words(catalog['/Lang']) === 'en-GB',
        tagged: pdf.dictionary(catalog['/MarkInfo'])['/Marked'] === true,
        'shows its title': pdf.dictionary(catalog['/ViewerPreferences'])['/DisplayDocTitle'] === true,
        'PDF/UA': inXmp('pdfuaid:part') === '1',
        'PDF/A': inXmp('pdfaid:part') === '3' && inXmp('pdfaid:conformance') === 'A',
        colours: pdf.list(catalog['/OutputIntents']).length === 1,
        'title in the information': inInfo('/Title') === title,
        'title in the metadata': plain(inXmp('dc:title')) === title,
        'author in both': plain(inXmp('dc:creator')) === inInfo('/Author'),
        'day in both':
          inXmp('xmp:CreateDate').startsWith(at) && inInfo('/CreationDate').startsWith(`D:${at.replace(/[-T:]/g, '')}`),
      };
      return Object.entries(says).flatMap(([what, isTrue]) => (isTrue ? [] : [what]));
    });
  });

  test('ISO 14289-1, 7.4.2: one first heading, and none skips a level', () => {
    everywhere((one) => {
      const levels = ofRole(one, 'H1', 'H2', 'H3').map(({ role }) => Number(role.slice(1)));
      return [
        ...(levels[0] === 1 && levels.filter((level) => level === 1).length === 1 ? [] : ['not one first heading']),
        ...levels.flatMap((level, i) =>
          level - (levels[i - 1] ?? 0) > 1 ? [`a level ${level} after ${levels[i - 1]}`] : [],
        ),
      ];
    });
  });

  test('ISO 14289-1, 7.5 and ISO 32000-1, 14.8.4.3.4: rows of a table have as many cells each, and heads say what they head', () => {
    everywhere((one) =>
      ofRole(one, 'Table').flatMap(({ ref, children }) => {
        const rows = children.filter(({ role }) => role === 'TR');
        const cells = rows.flatMap((row) => row.children);
        const scopes = cells
          .filter(({ role }) => role === 'TH')
          .map(({ dictionary }) => one.pdf.dictionary(dictionary['/A'])['/Scope']);
        return [
          ...(new Set(rows.map((row) => row.children.length)).size === 1 ? [] : [`${ref}: rows of unlike length`]),
          ...(cells.every(({ role }) => role === 'TH' || role === 'TD') ? [] : [`${ref}: a cell that is none`]),
          ...(children.every(({ role }) => role === 'TR' || role === 'Caption') ? [] : [`${ref}: more than rows`]),
          ...(scopes.includes('/Column') && scopes.every((scope) => scope === '/Column' || scope === '/Row')
            ? []
            : [`${ref}: heads without a scope`]),
        ];
      }),
    );
  });

  test('ISO 14289-1, 7.2, 7.3, 7.7 and 7.9: lists hold items, pictures and formulas have words, notes an identifier', () => {
    everywhere((one) => [
      ...ofRole(one, 'L').flatMap(({ ref, children }) =>
        children.every(({ role }) => role === 'LI') ? [] : [`${ref}: more than items`],
      ),
      ...ofRole(one, 'LI').flatMap(({ ref, children }) =>
        children.length > 0 && children.every(({ role }) => role === 'Lbl' || role === 'LBody')
          ? []
          : [`${ref}: neither label nor body`],
      ),
      ...ofRole(one, 'Figure', 'Formula').flatMap(({ ref, dictionary }) =>
        words(dictionary['/Alt']).trim() === '' ? [`${ref}: no words`] : [],
      ),
      ...ofRole(one, 'Note').flatMap(({ ref, dictionary }) =>
        dictionary['/ID'] === undefined ? [`${ref}: a note without an identifier`] : [],
      ),
    ]);
  });

  test('the walk notices: what is drawn without a mark, an artifact in a paragraph, .notdef, a mark left open', () => {
    expect(walkContent('/P <</MCID 0>> BDC BT <00010002> Tj ET EMC').faults).toEqual([]);
    expect(walkContent('BT <0001> Tj ET').faults).toHaveLength(1);
    expect(walkContent('/P <</MCID 0>> BDC /Artifact BMC 0 0 m S EMC EMC').faults).toHaveLength(1);
    expect(walkContent('/P <</MCID 3>> BDC').faults).toEqual(['1 marks left open']);
    expect(walkContent('/P <</MCID 0>> BDC /Span <</ActualText (a\\)>>)>> BDC [<0000> 5 <0007>] TJ EMC EMC')).toEqual({
      mcids: [0],
      faults: [],
      glyphs: [0, 7],
    });
  });
});
