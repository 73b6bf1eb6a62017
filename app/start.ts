import { config } from 'zod';

/**
 * The first script of the page. Its content security policy forbids building code from strings, which the schema library
 * tries as soon as a schema is made, so it must be told first; everything that makes schemas is loaded after that.
 */
config({ jitless: true });

await import('./main.tsx');
