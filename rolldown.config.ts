import { defineConfig } from 'rolldown';

// Packages with native code or data files beside them stay packages; everything else is bundled, so that the
// packaged program carries little more than it uses.
const external = ['electron', 'better-sqlite3', 'pdfkit', 'fontkit'];

export default defineConfig([
  {
    input: {
      electron: 'main/hosts/electron.ts',
      loopback: 'main/hosts/loopback.ts',
      cli: 'main/cli/main.ts',
      // Threads, loaded by their names from beside whatever chunk asks for them.
      filmReader: 'main/media/filmReader.ts',
      reportThread: 'main/report/reportThread.ts',
    },
    platform: 'node',
    external,
    // Same depth below the root as main/hosts and main/store: `../../migrations` is right in both places.
    output: {
      dir: 'out/main',
      entryFileNames: '[name].js',
      chunkFileNames: '[name].js',
      sourcemap: true,
      cleanDir: true,
    },
  },
  {
    // A sandboxed preload can load neither modules nor packages: one CommonJS file.
    input: 'main/hosts/preload.ts',
    platform: 'browser',
    external: ['electron'],
    output: { file: 'out/main/preload.cjs', format: 'cjs' },
  },
]);
