import { z } from 'zod';
import { caseFile } from '../model/records.ts';

/** JSON Schema (2020-12) of a whole case, as `case show --json` writes it and `case new --from` reads it. */
export const CASE_FILE_SCHEMA = z.toJSONSchema(caseFile);
