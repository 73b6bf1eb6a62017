import { batteryExport, batteryImport, batteryList, batteryShow } from './battery.ts';
import { c3dInfo } from './c3dInfo.ts';
import { caseNew } from './caseNew.ts';
import { caseShow } from './caseShow.ts';
import { check } from './check.ts';
import type { Command } from './command.ts';
import { demo } from './demo.ts';
import { flight } from './flight.ts';
import { flightFit } from './flightFit.ts';
import { jumpImport } from './jumpImport.ts';
import { jumpForce } from './jumpForce.ts';
import { jumpTime } from './jumpTime.ts';
import { report } from './report.ts';
import { reportAll } from './reportAll.ts';
import { rosterImport } from './rosterImport.ts';
import { rulesCheck } from './rulesCheck.ts';
import { rulesEvaluate } from './rulesEvaluate.ts';
import { rulesExplain } from './rulesExplain.ts';
import { rulesExport, rulesImport } from './rulesPack.ts';
import { rulesUpdate } from './rulesUpdate.ts';
import { runExport, runMerge } from './runMerge.ts';
import { screenImport } from './screenImport.ts';
import { smooth } from './smooth.ts';
import { trial } from './trial.ts';
import { trialImport } from './trialImport.ts';
import { verify } from './verify.ts';

/** In the order help shows them. */
export const COMMANDS: readonly Command[] = [
  demo,
  caseNew,
  caseShow,
  rosterImport,
  screenImport,
  batteryList,
  batteryShow,
  batteryExport,
  batteryImport,
  runExport,
  runMerge,
  jumpImport,
  c3dInfo,
  trialImport,
  check,
  rulesEvaluate,
  rulesCheck,
  rulesExplain,
  rulesExport,
  rulesImport,
  rulesUpdate,
  report,
  reportAll,
  verify,
  jumpTime,
  jumpForce,
  flight,
  flightFit,
  smooth,
  trial,
];
