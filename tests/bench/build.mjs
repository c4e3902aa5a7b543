// Builds the pages of the comparison into tests/bench/dist: one by hand, one in Solid, one in React, the latter two with
// a fast chart library. And one for `charts.mjs`, with that library, a canvas and a spreadsheet engine.
import react from '@vitejs/plugin-react';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import solid from 'vite-plugin-solid';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
export const pages = { floor: [], solid: [solid()], react: [react()] };
const others = { charts: [] };

export async function buildPages() {
  for (const [name, plugins] of Object.entries({ ...pages, ...others })) {
    await build({
      configFile: false,
      logLevel: 'error',
      root: here(`pages/${name}`),
      base: './',
      plugins,
      build: { outDir: here(`dist/${name}`), emptyOutDir: true, modulePreload: { polyfill: false } },
    });
  }
}

export const folder = (name) => here(`dist/${name}`);
