// An invented clip with its truth beside it, under a Node that can run it: `npm run make-clip -- --help`.
import { spawn } from 'node:child_process';
import path from 'node:path';
import { modernNode, root } from './setup.mjs';

const child = spawn(modernNode(), [path.join(root, 'main/clip/makeClip.ts'), ...process.argv.slice(2)], {
  stdio: 'inherit',
});
child.on('exit', (code) => process.exit(code ?? 1));
