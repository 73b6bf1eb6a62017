import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

// The renderer is served by our own hosts under a strict content security policy, so nothing may be inlined
// (`assetsInlineLimit`) and no polyfill may add a script of its own.
export default defineConfig({
  root: 'app',
  base: './',
  plugins: [react()],
  build: {
    outDir: '../out/renderer',
    emptyOutDir: true,
    target: 'chrome140',
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 1200,
  },
});
