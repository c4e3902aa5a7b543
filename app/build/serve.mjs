// Serves a folder until it is stopped: node serve.mjs FOLDER PORT
import { address, listen } from './server.mjs';

const [folder, text] = process.argv.slice(2);
const port = Number(text);
if (!Number.isInteger(port) || port < 1 || port > 65535) {
  console.error(`error: ${text} is no port: PORT must be a number from 1 to 65535.`);
  process.exit(2);
}
console.log(`Wellwright is at ${address(await listen(folder, port))} (Ctrl-C stops it)`);
