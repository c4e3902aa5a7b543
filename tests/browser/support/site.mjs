// The built page on a web server of its own, at a free port.
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { address, listen } from '../../../app/build/server.mjs';

export const dist = fileURLToPath(new URL('../../../dist/', import.meta.url));

export async function startSite() {
  if (!existsSync(`${dist}index.html`)) throw new Error('dist is empty: run app/serve --build first');
  const server = await listen(dist, 0);
  return {
    url: address(server),
    stop: () =>
      new Promise((resolve) => {
        server.close(resolve);
        server.closeAllConnections();
      }),
  };
}
