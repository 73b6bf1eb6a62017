import { useEffect } from 'react';
import type { Answer } from '../../shared/contract/channels.ts';
import type { RuleBody } from '../../shared/model/ownRule.ts';
import { usePreviewRuleMutation } from '../api.ts';

export type Preview = Answer<'rules.preview'>;
export type Problem = Preview['problems'][number];

/** Typing goes on for as long as no key is missed for this time. */
const WAIT_MS = 400;

/** What the rule would say of this case and of how many others, a moment after each change; undefined at first. */
export function usePreview(caseId: string | null, rule: RuleBody): Preview | undefined {
  const [preview, { data }] = usePreviewRuleMutation();
  useEffect(() => {
    const timer = setTimeout(() => void preview({ caseId, rule }), WAIT_MS);
    return () => clearTimeout(timer);
  }, [caseId, rule, preview]);
  return data;
}
