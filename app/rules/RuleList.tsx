import type { ReactNode } from 'react';
import type { RuleBody } from '../../shared/model/ownRule.ts';
import { textOf } from './loose.ts';

/** Own rules by name, each opening its form below itself. */
export function RuleList<T extends { readonly id: string; readonly isOn: boolean; readonly rule: RuleBody }>(props: {
  rules: readonly T[];
  openId: string | null;
  isRefused: (rule: T) => boolean;
  onOpen: (id: string | null) => void;
  children: (rule: T) => ReactNode;
}) {
  return (
    <ul className="rule-list">
      {props.rules.map((own) => (
        <li key={own.id}>
          <button
            type="button"
            className="rule-open"
            aria-expanded={own.id === props.openId}
            onClick={() => props.onOpen(own.id === props.openId ? null : own.id)}
          >
            {textOf(own.rule['id']) === '' ? 'own rule without a name' : textOf(own.rule['id'])}{' '}
            <span className="quiet">
              {!own.isOn ? 'off' : props.isRefused(own) ? 'on, but refused: it judges nothing' : 'on'}
            </span>
          </button>
          {own.id === props.openId && props.children(own)}
        </li>
      ))}
    </ul>
  );
}
