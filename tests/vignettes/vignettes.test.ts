import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { OUTCOMES } from '../../shared/assess/assessment.ts';
import { assessCase } from '../../shared/assess/assessCase.ts';
import { checkCaseFile, type Vignette, vignette } from './readVignette.ts';
import { SHIPPED_RULES } from '../../shared/rules/shippedRules.ts';

const folder = import.meta.dirname;
const files = fs.readdirSync(folder).filter((name) => name.endsWith('.json'));
const read = (name: string): Vignette => vignette.parse(JSON.parse(fs.readFileSync(path.join(folder, name), 'utf8')));

test('there are at least twelve', () => expect(files.length).toBeGreaterThanOrEqual(12));

describe.each(files)('%s', (name) => {
  const { title, expect: expected, stops, ...told } = read(name);
  const assessment = assessCase(checkCaseFile(told));
  const found = (rule: string) => assessment.findings.filter((one) => one.ruleId === rule);

  test.each(expected.map((one) => [one.rule, one.outcome, one] as const))(
    `${title}: %s is %s`,
    (rule, outcome, one) => {
      expect(SHIPPED_RULES.map(({ id }) => id)).toContain(rule);
      const findings = found(rule);
      if (outcome === 'absent') {
        expect(findings.filter((finding) => finding.outcome !== 'not-assessed')).toEqual([]);
        return;
      }
      z.enum(OUTCOMES).parse(outcome);
      const [finding] = findings;
      if (finding === undefined || findings.length > 1) throw new Error(`${findings.length} findings of ${rule}`);
      expect(finding.outcome).toBe(outcome);
      const printed = [finding.intervention ?? '', ...finding.adjustments].join(' ');
      if (one.printed !== undefined) expect(printed).toContain(one.printed);
      if (one.notPrinted !== undefined) expect(printed).not.toContain(one.notPrinted);
      if (one.needed !== undefined) expect(finding.needed).toContain(one.needed);
      if (one.clears !== undefined) {
        expect(finding.withheld?.because.map((effect) => effect.clears).join(' ')).toContain(one.clears);
      }
    },
  );

  test(`${title}: stop and be seen`, () => {
    const words = assessment.stops.map((stop) => stop.words);
    expect(words).toHaveLength(stops.length);
    for (const stop of stops) expect(words.join(' ')).toContain(stop);
  });
});
