// The built page in a folder of a static host, and a page of somebody else's that frames it.
import { createServer } from 'node:http';
import { createRequire } from 'node:module';
import { dist } from './site.mjs';

const host = '127.0.0.1';
// The files are served as app/build/server.mjs serves them.
const sirv = createRequire(new URL('../../../app/build/server.mjs', import.meta.url))('sirv');

function listen(answer) {
  const server = createServer(answer);
  return new Promise((resolve, reject) => {
    server.on('error', reject);
    server.listen(0, host, () => {
      resolve({
        url: `http://${host}:${server.address().port}/`,
        stop: () =>
          new Promise((stopped) => {
            server.close(stopped);
            server.closeAllConnections();
          }),
      });
    });
  });
}

/** Serves the page beneath `folder`, as `/tools/well/`, and nothing else. */
export async function startFolder(folder) {
  const files = sirv(dist, { dev: true, etag: true });
  const { url, stop } = await listen((request, response) => {
    if (!request.url.startsWith(folder)) {
      response.writeHead(404).end();
      return;
    }
    request.url = `/${request.url.slice(folder.length)}`;
    files(request, response);
  });
  return { url: url.slice(0, -1) + folder, stop };
}

/** A page of its own origin that shows `address` in a frame. */
export function startFrame(address) {
  const page = `<!doctype html><html lang="en"><title>Frame</title><link rel="icon" href="data:,">
    <iframe title="Wellwright" width="1200" height="900" src="${address}"></iframe></html>`;
  return listen((_, response) => response.writeHead(200, { 'content-type': 'text/html' }).end(page));
}
