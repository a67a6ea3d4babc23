// node node.mjs DIR EXAMPLES REQUEST: the examples, then two threads, then what the module can see.
import { readFileSync, readdirSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';
import { examples } from './examples.mjs';

const [dir, rows, request] = process.argv.slice(2);
const glue = await import(pathToFileURL(`${dir}/zymase.mjs`));
const wrong = await examples(glue, undefined, JSON.parse(readFileSync(rows)), JSON.parse(readFileSync(request)));

// Another version: the contract in the script is not the module's.
const script = readFileSync(`${dir}/zymase.mjs`, 'utf8');
const older = await import('data:text/javascript,' + encodeURIComponent(script.replace(/const contract = \d+n/, 'const contract = 1n')));
const module = await WebAssembly.compile(readFileSync(`${dir}/zymase.wasm`));
await older.open({ module }).then(() => wrong.push('another version was loaded'), (e) => {
  if (e.name !== 'NotLoaded' || !e.message.includes('different versions')) wrong.push(e.message);
});

// Two threads at once, each with an instance of the one compiled module.
const body = `
  import { parentPort, workerData } from 'node:worker_threads';
  const { open } = await import(workerData.glue);
  const z = await open({ module: workerData.module });
  const column = new Float64Array(20000).map((_, i) => i % 100);
  let sum = 0;
  for (let i = 0; i < 5; i++) sum += z.columns.water_density({ temperature_celsius: column }).density.reduce((a, b) => a + b);
  parentPort.postMessage(sum);`;
const sums = await Promise.all([1, 2].map(() => new Promise((done, no) => {
  const w = new Worker(new URL('data:text/javascript,' + encodeURIComponent(body)), { workerData: { module, glue: pathToFileURL(`${dir}/zymase.mjs`).href } });
  w.on('message', done).on('error', no);
})));
if (!(sums[0] > 0 && sums[0] === sums[1])) wrong.push(`two threads: ${sums}`);

// The script leaves nothing behind it in the program, and the module asks for nothing but what is listed.
const globals = Object.getOwnPropertyNames(globalThis).filter((n) => /zymase|^Go$|^fs$/i.test(n));
if (globals.length) wrong.push(`globals: ${globals}`);
const asks = WebAssembly.Module.imports(module).map((i) => i.name).filter((n) => /^(path_|sock_)/.test(n));
if (asks.length) wrong.push(`the module asks for ${asks}`);

for (const line of wrong) console.log(line);
if (wrong.length) process.exit(1);
console.log(`ok ${process.version}`);
