// The command line, under a Node that can run it: `npm run -s caseframe -- help`.
import { spawn } from 'node:child_process';
import path from 'node:path';
import { modernNode, root } from './setup.mjs';

const child = spawn(modernNode(), [path.join(root, 'main/cli/main.ts'), ...process.argv.slice(2)], {
  stdio: 'inherit',
});
process.on('SIGINT', () => {});
child.on('exit', (code) => process.exit(code ?? 1));
