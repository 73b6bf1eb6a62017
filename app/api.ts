import { type BaseQueryFn, createApi } from '@reduxjs/toolkit/query/react';
import type { Answer, Channel, EventPayload, Request } from '../shared/contract/channels.ts';
import type { Failure, Result } from '../shared/errors.ts';
import { bridge } from './bridge.ts';
import { createEditQueue } from './case/editQueue.ts';

const NOT_ANSWERING =
  'The part of Caseframe that keeps the files is not answering. Leave this window open, start Caseframe again if it was closed, then try once more.';

async function invoke<C extends Channel>(channel: C, request: Request<C>): Promise<Result<Answer<C>>> {
  try {
    return await bridge.invoke(channel, request);
  } catch {
    return { ok: false, error: { code: 'internal', message: NOT_ANSWERING, path: null } };
  }
}

/** The way of everything typed. */
export const editQueue = createEditQueue((caseId, edits, continues) =>
  invoke('case.edit', { caseId, edits: [...edits], continues }),
);

type Call = { [C in Channel]: { channel: C; request: Request<C> } }[Channel];

/** Asks main about a case only after everything typed into it is stored, so that no answer is older than the screen. */
async function ask({ channel, request }: Call): Promise<{ data: unknown } | { error: Failure }> {
  if (!(await editQueue.settled()) && 'caseId' in request) {
    const message = 'An earlier change is not saved yet. See the bar at the top, then try again.';
    return { error: { code: 'conflict', message, path: null } };
  }
  const made = editQueue.count();
  const result = await invoke(channel, request as never);
  // A case read while something was typed is already out of date, and would undo it on screen.
  if (channel === 'case.open' && made !== editQueue.count()) return ask({ channel, request });
  return result.ok ? { data: result.value } : { error: result.error };
}

const baseQuery: BaseQueryFn<Call, unknown, Failure> = ask;

/** The way of a film: piece by piece, none of it kept in the store of the page. */
export const filmDoor = {
  async begin(request: Request<'media.begin'>): Promise<Result<Answer<'media.begin'>>> {
    // The trial itself may just have been added.
    await editQueue.settled();
    return invoke('media.begin', request);
  },
  append: (request: Request<'media.append'>) => invoke('media.append', request),
  facts: (request: Request<'media.facts'>) => invoke('media.facts', request),
  startProxy: (request: Request<'media.startProxy'>) => invoke('media.startProxy', request),
  proxyState: (request: Request<'media.proxyState'>) => invoke('media.proxyState', request),
  finish: (request: Request<'media.finish'>) => invoke('media.finish', request),
  cancel: (request: Request<'media.cancel'>) => invoke('media.cancel', request),
};

/** A report or preview under way: how far it is, and the way to stop it. */
export const reportDoor = {
  cancel: (jobId: string) => invoke('report.cancel', { jobId }),
  onPart: (listener: (progress: EventPayload<'report.progress'>) => void) => bridge.on('report.progress', listener),
};

/** Ties a channel to the request it takes. */
const call =
  <C extends Channel>(channel: C) =>
  (request: Request<C>) =>
    ({ channel, request }) as Extract<Call, { channel: C }>;

const caseTag = (_answer: unknown, failure: unknown, request: { caseId: string }) =>
  failure === undefined ? [{ type: 'Case' as const, id: request.caseId }, 'Shelf' as const] : [];

const caseAndMapping = (answer: unknown, failure: unknown, request: { caseId: string }) => [
  ...caseTag(answer, failure, request),
  'Mapping' as const,
];

export const api = createApi({
  baseQuery,
  tagTypes: ['Case', 'Shelf', 'Roster', 'Rules', 'RulesUpdate', 'Batteries', 'Mapping'],
  // A case file may hold a long digitised trial: no point in keeping it long after its window is left.
  keepUnusedDataFor: 30,
  endpoints: (build) => ({
    info: build.query<Answer<'app.info'>, void>({ query: () => call('app.info')({}) }),
    shelf: build.query<Answer<'shelf.list'>, Request<'shelf.list'>>({
      query: call('shelf.list'),
      providesTags: ['Shelf'],
    }),
    createCase: build.mutation<Answer<'case.create'>, Request<'case.create'>>({
      query: call('case.create'),
      invalidatesTags: ['Shelf'],
    }),
    openCase: build.query<Answer<'case.open'>, string>({
      query: (caseId) => call('case.open')({ caseId }),
      providesTags: (_answer, _failure, id) => [{ type: 'Case', id }],
    }),
    undo: build.mutation<Answer<'case.undo'>, Request<'case.undo'>>({
      query: call('case.undo'),
      invalidatesTags: caseTag,
    }),
    redo: build.mutation<Answer<'case.redo'>, Request<'case.redo'>>({
      query: call('case.redo'),
      invalidatesTags: caseTag,
    }),
    eraseAthlete: build.mutation<Answer<'athlete.erase'>, Request<'athlete.erase'>>({
      query: call('athlete.erase'),
      invalidatesTags: ['Shelf'],
    }),
    history: build.query<Answer<'case.history'>, Request<'case.history'>>({
      query: call('case.history'),
      providesTags: (_answer, _failure, { caseId }) => [{ type: 'Case', id: caseId }],
    }),
    previewForce: build.mutation<Answer<'jump.previewForce'>, Request<'jump.previewForce'>>({
      query: call('jump.previewForce'),
    }),
    importForce: build.mutation<Answer<'jump.importForce'>, Request<'jump.importForce'>>({
      query: call('jump.importForce'),
      invalidatesTags: caseAndMapping,
    }),
    trace: build.query<Answer<'jump.trace'>, Request<'jump.trace'>>({ query: call('jump.trace') }),
    importTrial: build.mutation<Answer<'trial.import'>, Request<'trial.import'>>({
      query: call('trial.import'),
      invalidatesTags: caseTag,
    }),
    previewMarkers: build.mutation<Answer<'trial.previewMarkers'>, Request<'trial.previewMarkers'>>({
      query: call('trial.previewMarkers'),
    }),
    importMarkers: build.mutation<Answer<'trial.importMarkers'>, Request<'trial.importMarkers'>>({
      query: call('trial.importMarkers'),
      invalidatesTags: caseAndMapping,
    }),
    keepStill: build.mutation<Answer<'still.keep'>, Request<'still.keep'>>({
      query: call('still.keep'),
      invalidatesTags: caseTag,
    }),
    keepExport: build.mutation<Answer<'export.keep'>, Request<'export.keep'>>({
      query: call('export.keep'),
      invalidatesTags: caseTag,
    }),
    previewRule: build.mutation<Answer<'rules.preview'>, Request<'rules.preview'>>({ query: call('rules.preview') }),
    exportRules: build.mutation<Answer<'rules.export'>, Request<'rules.export'>>({ query: call('rules.export') }),
    importRules: build.mutation<Answer<'rules.import'>, Request<'rules.import'>>({
      query: call('rules.import'),
      invalidatesTags: (_answer, _failure, { caseId }) => [
        'Shelf',
        caseId === null ? 'Rules' : { type: 'Case', id: caseId },
      ],
    }),
    sharedRules: build.query<Answer<'rules.shared'>, void>({
      query: () => call('rules.shared')({}),
      providesTags: ['Rules'],
    }),
    editSharedRules: build.mutation<Answer<'rules.editShared'>, Request<'rules.editShared'>>({
      query: call('rules.editShared'),
      invalidatesTags: ['Rules'],
    }),
    undoSharedRules: build.mutation<Answer<'rules.undoShared'>, void>({
      query: () => call('rules.undoShared')({}),
      invalidatesTags: ['Rules'],
    }),
    redoSharedRules: build.mutation<Answer<'rules.redoShared'>, void>({
      query: () => call('rules.redoShared')({}),
      invalidatesTags: ['Rules'],
    }),
    rulesUpdate: build.query<Answer<'rules.update'>, void>({
      query: () => call('rules.update')({}),
      providesTags: ['RulesUpdate'],
      keepUnusedDataFor: 0,
    }),
    acceptRulesUpdate: build.mutation<Answer<'rules.acceptUpdate'>, void>({
      query: () => call('rules.acceptUpdate')({}),
      invalidatesTags: ['RulesUpdate', 'Shelf', 'Case'],
    }),
    reportPreview: build.query<Answer<'report.preview'>, Request<'report.preview'>>({
      query: call('report.preview'),
      // The same pages whoever asks.
      serializeQueryArgs: ({ queryArgs: { jobId: _ours, ...asked } }) => asked,
      providesTags: (_answer, _failure, { caseId }) => [{ type: 'Case', id: caseId }],
    }),
    reportText: build.mutation<Answer<'report.text'>, Request<'report.text'>>({ query: call('report.text') }),
    makeReport: build.mutation<Answer<'report.make'>, Request<'report.make'>>({
      query: call('report.make'),
      invalidatesTags: caseTag,
    }),
    previewRoster: build.mutation<Answer<'roster.preview'>, Request<'roster.preview'>>({
      query: call('roster.preview'),
    }),
    importRoster: build.mutation<Answer<'roster.import'>, Request<'roster.import'>>({
      query: call('roster.import'),
      invalidatesTags: ['Shelf', 'Roster', 'Mapping'],
    }),
    rosters: build.query<Answer<'roster.list'>, void>({
      query: () => call('roster.list')({}),
      providesTags: ['Roster'],
      keepUnusedDataFor: 0,
    }),
    // Read anew when a door is shown, and after each file taken in through it.
    mappings: build.query<Answer<'mapping.list'>, void>({
      query: () => call('mapping.list')({}),
      providesTags: ['Mapping'],
      keepUnusedDataFor: 0,
    }),
    forgetMapping: build.mutation<Answer<'mapping.forget'>, Request<'mapping.forget'>>({
      query: call('mapping.forget'),
      invalidatesTags: ['Mapping'],
    }),
    putBackMapping: build.mutation<Answer<'mapping.putBack'>, Request<'mapping.putBack'>>({
      query: call('mapping.putBack'),
      invalidatesTags: ['Mapping'],
    }),
    takeBackRoster: build.mutation<Answer<'roster.takeBack'>, Request<'roster.takeBack'>>({
      query: call('roster.takeBack'),
      invalidatesTags: (answer) => [
        'Shelf',
        'Roster',
        ...(answer?.caseIds ?? []).map((id) => ({ type: 'Case' as const, id })),
      ],
    }),
    batteries: build.query<Answer<'battery.list'>, void>({
      query: () => call('battery.list')({}),
      providesTags: ['Batteries'],
    }),
    editBattery: build.mutation<Answer<'battery.edit'>, Request<'battery.edit'>>({
      query: call('battery.edit'),
      invalidatesTags: ['Batteries'],
    }),
    saveBattery: build.mutation<Answer<'battery.save'>, Request<'battery.save'>>({
      query: call('battery.save'),
      invalidatesTags: ['Batteries'],
    }),
    removeBattery: build.mutation<Answer<'battery.remove'>, Request<'battery.remove'>>({
      query: call('battery.remove'),
      invalidatesTags: ['Batteries'],
    }),
    undoBattery: build.mutation<Answer<'battery.undo'>, void>({
      query: () => call('battery.undo')({}),
      invalidatesTags: ['Batteries'],
    }),
    redoBattery: build.mutation<Answer<'battery.redo'>, void>({
      query: () => call('battery.redo')({}),
      invalidatesTags: ['Batteries'],
    }),
    importBattery: build.mutation<Answer<'battery.import'>, Request<'battery.import'>>({
      query: call('battery.import'),
      invalidatesTags: ['Batteries'],
    }),
    exportBattery: build.mutation<Answer<'battery.export'>, Request<'battery.export'>>({
      query: call('battery.export'),
    }),
    // Read anew whenever a screen asks; following every keystroke of a run would read the whole shelf each time.
    runs: build.query<Answer<'run.list'>, void>({ query: () => call('run.list')({}), keepUnusedDataFor: 0 }),
    exportRun: build.mutation<Answer<'run.export'>, Request<'run.export'>>({ query: call('run.export') }),
    compareRun: build.mutation<Answer<'run.compare'>, Request<'run.compare'>>({ query: call('run.compare') }),
    mergeRun: build.mutation<Answer<'run.merge'>, Request<'run.merge'>>({
      query: call('run.merge'),
      invalidatesTags: (answer) => ['Shelf', ...(answer?.caseIds ?? []).map((id) => ({ type: 'Case' as const, id }))],
    }),
    verify: build.query<Answer<'store.verify'>, void>({
      query: () => call('store.verify')({}),
      keepUnusedDataFor: 0,
    }),
  }),
});

export const {
  useInfoQuery,
  useShelfQuery,
  useCreateCaseMutation,
  useOpenCaseQuery,
  useUndoMutation,
  useRedoMutation,
  useEraseAthleteMutation,
  useHistoryQuery,
  usePreviewForceMutation,
  useImportForceMutation,
  useTraceQuery,
  useImportTrialMutation,
  useKeepStillMutation,
  useKeepExportMutation,
  usePreviewRuleMutation,
  useExportRulesMutation,
  useImportRulesMutation,
  useSharedRulesQuery,
  useEditSharedRulesMutation,
  useUndoSharedRulesMutation,
  useRedoSharedRulesMutation,
  useRulesUpdateQuery,
  useAcceptRulesUpdateMutation,
  useReportPreviewQuery,
  useMakeReportMutation,
  useReportTextMutation,
  usePreviewRosterMutation,
  useImportRosterMutation,
  useRostersQuery,
  useTakeBackRosterMutation,
  useForgetMappingMutation,
  useMappingsQuery,
  usePutBackMappingMutation,
  usePreviewMarkersMutation,
  useImportMarkersMutation,
  useBatteriesQuery,
  useEditBatteryMutation,
  useSaveBatteryMutation,
  useRemoveBatteryMutation,
  useUndoBatteryMutation,
  useRedoBatteryMutation,
  useImportBatteryMutation,
  useExportBatteryMutation,
  useRunsQuery,
  useExportRunMutation,
  useCompareRunMutation,
  useMergeRunMutation,
  useLazyVerifyQuery,
} = api;

/** Tells of changes made by main: by another window, or by an import. Returns the function that stops listening. */
export function onCaseChanged(listener: (caseId: string, revision: number) => void): () => void {
  return bridge.on('case.changed', ({ caseId, revision }) => listener(caseId, revision));
}
