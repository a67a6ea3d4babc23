// Every function of the catalogue with its example, three ways; then what is refused. It knows
// neither Node nor a browser: it is given the module's script, and returns what is wrong.
export async function examples({ open, about, say, ZymaseError, OutOfRange, NotUnderstood, WrongCall, NotLoaded, Closed }, module, rows, request) {
  const wrong = [];
  const is = (what, got, want) => { if (got !== want) wrong.push(`${what}: ${got}, and not ${want}`); };
  const z = await open(module ? { module } : undefined);
  is('functions', about().length, rows.length);
  const digits = (v) => (typeof v === 'number' ? Number(v.toPrecision(12)) : v);
  for (const { name, texts, numbers, want } of rows) {
    const names = Object.keys(want);
    const compare = (how, got) => {
      if (names.length === 1) got = { [names[0]]: got };
      is(`${name}, ${how}`, Object.keys(got).length, names.length);
      for (const k of names) is(`${name}, ${how}, ${k}`, digits(got[k]), want[k]);
    };
    compare('text', z[name](texts));
    compare('number', z[name](numbers));
    const columns = {};
    for (const k in numbers) columns[k] = typeof numbers[k] === 'number' ? new Float64Array(3).fill(numbers[k]) : new Array(3).fill(numbers[k]);
    const k = Object.keys(numbers)[0];
    columns[k][1] = typeof numbers[k] === 'number' ? NaN : null;
    const c = z.columns[name](columns);
    is(`${name}, failures`, c.failures, 1);
    is(`${name}, mask`, c.failed.join(''), '010');
    for (const o of about().find((f) => f.name === name).outputs) {
      const words = (v) => (o.words ? say(name, o.name, v) : digits(v));
      is(`${name}, row 0, ${o.name}`, words(c[o.name][0]), want[o.name]);
      is(`${name}, row 2, ${o.name}`, words(c[o.name][2]), want[o.name]);
      is(`${name}, row 1, ${o.name}`, Number.isNaN(c[o.name][1]), true);
    }
  }

  // Refusals, in parts.
  const refused = (what, kind, parts, f) => {
    try {
      f();
      wrong.push(`${what} was not refused`);
    } catch (e) {
      if (!(e instanceof kind) || !(e instanceof ZymaseError)) wrong.push(`${what}: ${e.name}: ${e.message}`);
      for (const k in parts) is(`${what}, ${k}`, e[k], parts[k]);
    }
  };
  const source = 'Bettin & Spieweck, PTB-Mitteilungen 100 (1990) 195';
  refused('out of range', OutOfRange, { function: 'water_density', quantity: 'temperature', value: 200, unit: '°C', min: 0, max: 100, source },
    () => z.water_density({ temperature_celsius: 200 }));
  refused('NaN', OutOfRange, {}, () => z.water_density({ temperature_celsius: NaN }));
  refused('another unit', NotUnderstood, { quantity: 'temperature', given: '20 kg', source }, () => z.water_density({ temperature: '20 kg' }));
  refused('no unit', NotUnderstood, { given: '20' }, () => z.water_density({ temperature: '20' }));
  refused('bare number', WrongCall, {}, () => z.water_density({ temperature: 20 }));
  refused('missing', WrongCall, { quantity: 'temperature' }, () => z.water_density({}));
  refused('unknown', WrongCall, {}, () => z.water_density({ temperature_celsius: 20, mood: 1 }));
  refused('twice', WrongCall, {}, () => z.water_density({ temperature_celsius: 20, temperature: '20 °C' }));
  refused('column without a unit', WrongCall, {}, () => z.columns.water_density({ temperature: [20] }));
  refused('unequal columns', WrongCall, {}, () => z.columns.pressure_absolute_from_gauge({ gauge_pressure_kilopascals_gauge: [1, 2], altitude_metres: [1] }));
  refused('unit of a column', NotUnderstood, {}, () => z.columns.water_density({ temperature: ['furlong', [20]] }));
  const f = z.columns.water_density({ temperature: ['°F', [68, 1e4]] });
  is('°F', digits(f.density[0]), digits(z.water_density({ temperature: '20 °C' })));
  const long = z.columns.water_density({ temperature_celsius: Float64Array.from({ length: 5000 }, (_, i) => i / 50) });
  is('many blocks', [0, 1023, 1024, 4999].every((i) => long.density[i] === z.water_density({ temperature_celsius: i / 50 })), true);
  is('first refusal', f.first instanceof OutOfRange && f.failures, 1);

  // The plan, the batch, the forecast.
  is('plan', z.plan(request).request.name, request.name);
  refused('plan', ZymaseError, { function: 'plan', quantity: 'strength' }, () => z.plan({ ...request, strength: '40 % vol' }));
  const w = z.walk({
    water: { temperature: '20 °C', alkalinity: '2 mEq/L', ions: { calcium: '40 mg/L' }, pH: 7.5, inorganic_carbon: '2.1 mmol/L' }, volume: '57 L',
    steps: [{ do: 'dissolve', what: 'white sugar', mass: '4.3 kg' }, { do: 'ferment', share: '100 %' }],
  });
  is('walk', w.measured.map((m) => m.after ?? 'start').join(), 'start,dissolve,ferment');
  is('walk on', JSON.stringify(z.walk({ state: w.states[1], steps: [{ do: 'ferment', share: '100 %' }] }).measured[1].strength), JSON.stringify(w.measured[2].strength));
  refused('step', ZymaseError, { quantity: 'material for this step', given: 'sand' },
    () => z.walk({ state: w.states[0], steps: [{ do: 'heat', temperature: '40 °C' }, { do: 'dissolve', what: 'sand', mass: '1 g' }] }));
  const one = z.forecast({ sugar: '120 g/L', nitrogen: '200 mg/L', yeast: '0.5 g/L', pH: 4, temperatures: [{ hour: 0, temperature: '20 °C' }] });
  const before = one.ask({ hours: [60] }).used[0];
  one.add({ hours: 40, used: 0.4, uncertainty: 0.01 });
  const after = one.ask({ hours: [60] }).used[0];
  is('a reading narrows', after.high90 - after.low90 < before.high90 - before.low90, true);
  const two = z.forecast(one.state());
  is('state', JSON.stringify(two.ask({ hours: [60] })), JSON.stringify(one.ask({ hours: [60] })));
  refused('reading', OutOfRange, { quantity: 'time since the pitch', value: -1, min: 0 }, () => one.add({ hours: -1, used: 0.1, uncertainty: 0.1 }));
  one.close();
  refused('closed forecast', Closed, {}, () => one.ask());

  // Two instances know nothing of one another; a closed one is told.
  const other = await open({ module: z.module });
  z.close();
  refused('closed', Closed, {}, () => z.water_density({ temperature_celsius: 20 }));
  refused('closed column', Closed, {}, () => z.columns.water_density({ temperature_celsius: [20] }));
  refused('closed plan', Closed, {}, () => z.plan(request));
  is('the other', digits(other.water_density({ temperature_celsius: 20 })), digits(998.2031227373548));

  // What is no module, or another one.
  const loads = async (what, from, text) => {
    try {
      await open({ module: from });
      wrong.push(`${what} was loaded`);
    } catch (e) {
      if (!(e instanceof NotLoaded) || !e.message.includes(text)) wrong.push(`${what}: ${e.name}: ${e.message}`);
    }
  };
  await loads('not there', new URL('nowhere.wasm', import.meta.url), 'nowhere.wasm');
  await loads('no module', new Uint8Array([1, 2, 3]), 'no WebAssembly module');
  await loads('empty module', new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0]), 'not the module of the library');
  return wrong;
}
