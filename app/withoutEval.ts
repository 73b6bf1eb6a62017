import { config } from 'zod';

/**
 * Imported before anything that makes a schema. The page's content security policy forbids building code from strings,
 * which the schema library would otherwise try, if only to find out.
 */
config({ jitless: true });
