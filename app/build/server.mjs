// A web server for a folder of files, reachable from this machine alone.
import { createServer } from 'node:http';
import sirv from 'sirv';

const host = '127.0.0.1';
const lastPort = 65535;

/**
 * Serves `folder` at `port`, or at the next free one. Port 0 stands for any free one.
 * Browsers keep what is named by its bytes, and ask again for every other file, so a new build shows at the next reload.
 */
export function listen(folder, port) {
  const setHeaders = (response, path) => {
    const forGood = /-[0-9a-f]{16}\.\w+$/.test(path);
    response.setHeader('cache-control', forGood ? 'public, max-age=31536000, immutable' : 'no-cache');
  };
  const server = createServer(sirv(folder, { dev: true, etag: true, brotli: true, gzip: true, setHeaders }));
  return new Promise((resolve, reject) => {
    server.on('error', (error) => {
      if (error.code !== 'EADDRINUSE' || port >= lastPort) return reject(error);
      port += 1;
      server.listen(port, host);
    });
    server.on('listening', () => resolve(server));
    server.listen(port, host);
  });
}

export function address(server) {
  return `http://${host}:${server.address().port}/`;
}
