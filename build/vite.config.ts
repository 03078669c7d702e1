import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { licences } from './licences.ts'; // with its ending, as Node itself will want it
import { versionStamp } from './version.mjs';

const at = (path: string) => fileURLToPath(new URL(`../${path}`, import.meta.url));
const empty = at('build/empty.ts');

/** The renderer: `vite build` for the app, plain `vite` for work on it in a browser. */
export default defineConfig({
  root: at('renderer'),
  base: './',
  cacheDir: at('node_modules/.cache/vite'),
  define: { GAPWRIGHT_VERSION: JSON.stringify(versionStamp()) },
  plugins: [
    react(),
    {
      name: 'licences',
      generateBundle() {
        this.emitFile({ type: 'asset', fileName: 'licences.txt', source: licences() });
      },
    },
  ],
  // The PDF writer's optional readers of HTML and SVG are never used here.
  resolve: { alias: { html2canvas: empty, canvg: empty, dompurify: empty } },
  worker: { format: 'es' },
  server: { host: '127.0.0.1' },
  build: {
    outDir: at('dist/renderer'),
    emptyOutDir: true,
    target: 'chrome120',
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 2000,
    reportCompressedSize: false,
  },
});
