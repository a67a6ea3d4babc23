// node duckdb.mjs DIR ROWS FILES THREADS rows|pairs [WORK]: ROWS readings of a hydrometer in FILES of
// Parquet, to the gravity at 20 °C and the strength, by two functions that are registered with DuckDB and
// ask the library a vector of rows at a time: for every row, or once for every pair of reading and
// temperature, which are as fine as their instruments, and then joined. Each of THREADS has a DuckDB,
// an instance of the library and a share of the files of its own. Prints a line of JSON.
import { existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Worker, isMainThread, parentPort, workerData } from 'node:worker_threads';

const require = createRequire(join(process.env.ZYMASE_DUCKDB ?? process.cwd(), 'here.js'));
const { DuckDBInstance, DuckDBScalarFunction, DOUBLE } = require('@duckdb/node-api');

// A column function: doubles in, doubles out, one call of the library for each vector. What has no
// answer is NULL.
function register(connection, name, parameters, compute) {
  connection.registerScalarFunction(DuckDBScalarFunction.create({
    name, returnType: DOUBLE, parameterTypes: parameters.map(() => DOUBLE),
    mainFunction(info, input, output) {
      const given = {};
      parameters.forEach((p, i) => { given[p] = input.getColumnVector(i).items; });
      const failed = compute(given, output.items);
      failed.forEach((no, i) => { if (no) output.setItem(i, null); });
      output.flush();
    },
  }));
}

const none = new Uint8Array(0);
const bad = (c) => (c.failures ? c.failed : none);

async function share({ glue, module, files, how }) {
  const { open } = await import(glue);
  const zymase = await open({ module });
  const connection = await (await DuckDBInstance.create(':memory:', { threads: '1' })).connect();
  register(connection, 'gravity20', ['reading', 'temperature_celsius'], (given, gravity) =>
    bad(zymase.columns.hydrometer_correct(given, { gravity })));
  register(connection, 'strength', ['original_gravity', 'gravity'], (given, strength) =>
    bad(zymase.columns.ferment_from_gravities({ ...given, yield: 'sucrose wash' }, { strength })));
  const list = files.map((f) => `'${f}'`).join(', ');
  const start = performance.now();
  const both = (from) => `SELECT reading, temperature, g, strength(1.05, g) AS s FROM (SELECT reading, temperature, gravity20(reading, temperature) AS g FROM ${from})`;
  const readings = `read_parquet([${list}])`;
  const reader = await connection.runAndReadAll(how === 'rows'
    ? `SELECT count(*)::DOUBLE, count(g)::DOUBLE, sum(g), sum(s) FROM (${both(readings)})`
    : `WITH pairs AS MATERIALIZED (${both(`(SELECT DISTINCT reading, temperature FROM ${readings})`)})
       SELECT count(*)::DOUBLE, count(g)::DOUBLE, sum(g), sum(s) FROM ${readings} JOIN pairs USING (reading, temperature)`);
  const [rows, answered, gravity, strength] = reader.getRows()[0];
  return { rows, answered, gravity, strength, ms: performance.now() - start };
}

if (!isMainThread) {
  parentPort.postMessage(await share(workerData));
} else {
  const [dir, rows, files, threads, how, kept] = process.argv.slice(2);
  const work = kept ?? mkdtempSync(join(tmpdir(), 'readings'));
  mkdirSync(work, { recursive: true });
  const each = Number(rows) / Number(files);
  const names = Array.from({ length: Number(files) }, (_, i) => join(work, `${rows}-${files}-${i}.parquet`));
  const maker = await (await DuckDBInstance.create(':memory:')).connect();
  for (const [i, name] of names.entries()) {
    if (existsSync(name)) continue;
    await maker.run(`COPY (SELECT round(0.998 + 0.05 * ((r * 7919) % 10007) / 10007, 4) AS reading, round(8 + 20 * ((r * 104729) % 9973) / 9973, 1) AS temperature
      FROM range(${i * each}, ${(i + 1) * each}) t(r)) TO '${name}' (FORMAT parquet)`);
  }
  const glue = pathToFileURL(join(dir, 'zymase.mjs')).href;
  const { open } = await import(glue);
  const { module } = await open();
  const start = performance.now();
  const parts = await Promise.all(Array.from({ length: Number(threads) }, (_, n) => new Promise((done, no) => {
    const worker = new Worker(new URL(import.meta.url), { workerData: { glue, module, how, files: names.filter((_, i) => i % Number(threads) === n) } });
    worker.on('message', (m) => { done(m); worker.terminate(); }).on('error', no);
  })));
  const ms = performance.now() - start;
  const sum = (k) => parts.reduce((a, p) => a + p[k], 0);
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  console.log(JSON.stringify({
    rows: sum('rows'), answered: sum('answered'), gravity: sum('gravity') / sum('answered'), strength: sum('strength') / sum('answered'),
    how, threads: Number(threads), files: Number(files), ms: Math.round(ms), queryMs: parts.map((p) => Math.round(p.ms)), cpuMs: Math.round((userCPUTime + systemCPUTime) / 1000),
    megabytes: Math.round(maxRSS / 1024),
  }));
  if (!kept) rmSync(work, { recursive: true });
}
