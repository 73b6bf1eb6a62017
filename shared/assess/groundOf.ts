import type { ReferenceSex } from '../model/athlete.ts';
import type { RuleKind } from '../rules/rule.ts';
import type { TestResult } from './assessment.ts';
