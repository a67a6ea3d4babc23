"use strict";
// The page: what is typed goes to the library as the JSON that the command line reads, and
// what the library answers is written down. No figure is worked out here.

const $ = id => document.getElementById(id);
const data = id => JSON.parse($(id).textContent);
const form = data("the form"), drinks = data("the drinks");

// el makes an element: properties, then children; text stays text.
function el(tag, props, ...children) {
  const e = document.createElement(tag);
  for (const [k, v] of Object.entries(props || {})) {
    if (k.startsWith("on")) e.addEventListener(k.slice(2), v);
    else if (k in e && k !== "list" && k !== "form") e[k] = v;
    else e.setAttribute(k, v);
  }
  e.append(...children.filter(c => c !== null && c !== undefined));
  return e;
}

const clone = v => v === undefined ? v : JSON.parse(JSON.stringify(v));
const steps = path => path.split(/[.[\]]+/).filter(Boolean);
const get = (root, path) => steps(path).reduce((node, k) => node === null || node === undefined ? undefined : node[k], root);

// put writes a value at a path, and makes what leads there; undefined takes it out.
function put(root, path, value) {
  const way = steps(path), last = way.pop();
  let node = root;
  way.forEach((k, i) => {
    if (typeof node[k] !== "object" || node[k] === null) node[k] = /^\d+$/.test(way[i + 1] ?? last) ? [] : {};
    node = node[k];
  });
  if (value !== undefined) node[last] = value;
  else if (Array.isArray(node)) node.splice(Number(last), 1);
  else delete node[last];
}

// ---- What is kept: each batch under its own key, with a count of its changes.

const prefix = "zymase batch ";
let batch = null;   // {request, usual, ticks, blanks, us}
let id = "", count = 0, keeps = true;

const say = text => { $("say").textContent = text; };

function store(f) {
  try { return f(localStorage); } catch { return undefined; }
}

function keep() {
  const text = store(s => s.getItem(prefix + id));
  let theirs = 0;
  try { theirs = text ? JSON.parse(text).count : 0; } catch { theirs = -1; } // damaged: left as it is
  if (text && theirs !== count) { // another tab wrote it meanwhile
    id = fresh();
    batch.request.name = (batch.request.name || "") + ", second tab";
    say("Another tab has changed this batch: what you type here is kept as a batch of its own.");
    renderForm();
  }
  count++;
  const done = store(s => { s.setItem(prefix + id, JSON.stringify({ count, at: Date.now(), batch })); return true; });
  if (done) store(() => sessionStorage.setItem("zymase open", id));
  else if (keeps) say("This browser keeps nothing for a page opened so: save to a file before you close it.");
  keeps = !!done;
}

function kept() {
  const list = store(s => Object.keys(s).filter(k => k.startsWith(prefix)).map(k => {
    try { return { id: k.slice(prefix.length), ...JSON.parse(s.getItem(k)) }; } catch { return null; }
  }));
  return (list || []).filter(k => k && k.batch && k.batch.request).sort((a, b) => b.at - a.at);
}

const fresh = () => Date.now().toString(36) + Math.random().toString(36).slice(2, 8);

function open(entry) {
  id = entry.id; count = entry.count; batch = entry.batch;
  store(() => sessionStorage.setItem("zymase open", id));
}

function start(request, usual) {
  id = fresh(); count = 0;
  batch = { request: clone(request), usual: clone(usual || request), ticks: {}, blanks: {}, us: batch ? batch.us : false };
}

// What another tab writes into the batch that is open here shows here at once.
addEventListener("storage", e => {
  if (e.key !== prefix + id || !e.newValue) return;
  try { open({ id, ...JSON.parse(e.newValue) }); } catch { return; }
  say("Changed in another tab.");
  show();
});

// ---- The library: here for the plan, in a worker for what takes longer.

let waiting = new Map(), worker = null;

function instance(module) {
  const go = new Go();
  return WebAssembly.instantiate(module, go.importObject).then(i => { go.run(i); });
}

const inWorker = () => {
  let ready;
  onmessage = async e => {
    const { module, n, ask, args } = e.data;
    if (module) {
      const go = new Go();
      ready = WebAssembly.instantiate(module, go.importObject).then(i => { go.run(i); });
      return;
    }
    await ready;
    postMessage({ n, text: zymase[ask](...args) });
  };
};

// fromText reads the library: five letters for four bytes (Ascii85), "v" in the place of "<", "z"
// for four noughts.
function fromText(text) {
  const noughts = text.split("z").length - 1, letters = text.length - noughts, rest = letters % 5;
  const out = new Uint8Array(4 * (noughts + (letters - rest) / 5) + Math.max(rest - 1, 0));
  let n = 0, value = 0, held = 0;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === 122) { n += 4; continue; }
    value = value * 85 + (c === 118 ? 60 : c) - 33;
    if (++held < 5) continue;
    for (let shift = 24; shift >= 0; shift -= 8) out[n++] = value >>> shift;
    value = held = 0;
  }
  if (held) {
    for (let k = held; k < 5; k++) value = value * 85 + 84;
    for (let k = 1; k < held; k++) out[n++] = value >>> (32 - 8 * k);
  }
  return out;
}

async function load() {
  const text = $("library").textContent;
  $("library").remove();
  const packed = fromText(text);
  const plain = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  const module = await WebAssembly.compile(await new Response(plain).arrayBuffer());
  await instance(module);
  try {
    const url = URL.createObjectURL(new Blob([$("glue").textContent, "(", inWorker.toString(), ")()"], { type: "text/javascript" }));
    worker = new Worker(url);
    worker.onmessage = e => { waiting.get(e.data.n)(JSON.parse(e.data.text)); waiting.delete(e.data.n); };
    worker.onerror = e => {
      e.preventDefault();
      worker = null;
      for (const [n, answer] of waiting) answer(JSON.parse(zymase[answer.ask](...answer.args)));
      waiting.clear();
    };
    worker.postMessage({ module });
  } catch { worker = null; }
}

let asked = 0;

// later asks the worker; without one the answer is worked out here.
function later(ask, ...args) {
  if (!worker) return new Promise(answer => setTimeout(() => answer(JSON.parse(zymase[ask](...args)))));
  return new Promise(answer => {
    answer.ask = ask; answer.args = args;
    waiting.set(++asked, answer);
    worker.postMessage({ n: asked, ask, args });
  });
}

// ---- Plan: at each keystroke.

let answer = null, turn = 0;
const requestText = () => JSON.stringify(batch.request);
const ticked = () => Object.keys(batch.ticks).join(" ");

function plan() {
  const began = performance.now();
  answer = JSON.parse(zymase.plan(requestText(), batch.us, ticked(), view !== "batch"));
  turn++;
  $("title").textContent = batch.request.name || "At the kettle";
  $("urgent").textContent = (answer.urgent || []).join(" ");
  $("urgent").className = $("urgent").textContent.length > 160 ? "long" : "";
  showBrief();
  showRefusal();
  if (view !== "batch") views[view]();
  else if (!answer.refused) followed(turn);
  document.documentElement.dataset.took = (performance.now() - began).toFixed(2);
}

// followed looks a moment later at what takes longer than a keystroke: the days, the room.
const moment = 200; // ms
async function followed(mine) {
  await new Promise(f => setTimeout(f, moment));
  if (mine !== turn) return;
  const whole = await later("plan", requestText(), batch.us, "", true);
  if (mine !== turn || !whole.refused) return;
  answer = whole;
  showRefusal();
}

function changed() { keep(); plan(); }

function showBrief() {
  if (answer.refused) return;
  $("brief").replaceChildren(el("dl", {}, ...answer.brief.map(r =>
    el("div", { className: r.note && r.note.length > 14 ? "wide" : "" }, el("dt", {}, r.label), el("dd", {}, r.value, r.note ? el("small", {}, r.note) : null)))));
}

// named is a path as people say it: "pack 2, co2".
const named = path => path.replace(/s\[(\d+)\]/g, (_, i) => " " + (Number(i) + 1)).replace(/([a-zA-Z0-9])\.(?=[a-zA-Z])/g, "$1, ").replaceAll("_", " ");

// showRefusal says at the field what cannot be, and offers what can.
async function showRefusal() {
  for (const e of document.querySelectorAll("[aria-invalid]")) e.removeAttribute("aria-invalid");
  for (const e of document.querySelectorAll(".refusal")) e.remove();
  const r = answer.refused, mine = turn;
  if (!r) return;
  let field = r.field, place = null;
  while (field && !(place = document.querySelector(`[data-path="${CSS.escape(field)}"]`))) field = field.replace(/\.?[^.[]+\]?$|\[$/, "");
  const box = (...wording) => el("div", { className: "refusal" }, el("p", {}, wording.join(": ")), el("div", { className: "taps" }));
  let at = box(named(r.field), r.value, r.allowed);
  $("brief").replaceChildren(at);
  if (place) {
    const above = at;
    at = box(...(place.dataset.path === r.field ? [] : [named(r.field)]), r.value, r.allowed);
    at.id = "refused-here";
    (place.closest(".field") || place).append(at);
    if (place.matches("input, select")) place.setAttribute("aria-invalid", "true");
    for (let d = place.closest("details"); d; d = d.parentElement.closest("details")) d.open = true;
    if (place !== document.activeElement) above.lastChild.append(el("button", { type: "button", onclick: () => { at.scrollIntoView({ block: "center" }); (place.matches("input, select") ? place : place.querySelector("input, select, button")).focus(); } }, "Show the field"));
  }
  const offers = await later("offers", requestText());
  if (mine !== turn) return;
  at.lastChild.append(...offers.map(o => offerButton(o.set.length === 1 && o.set[0].path === r.field && o.set[0].value ? { ...o, text: String(o.set[0].value) } : o)));
}

// ---- The form, from the request's own description.

let made = 0;

function leaf(f, path, names) {
  const value = get(batch.request, path), usual = get(batch.usual, path), key = "f" + ++made;
  const shown = value === undefined ? "" : String(value);
  let input;
  if (f.kind === "text" && names && names.length > 1 && names.length < 5) {
    input = el("select", { id: key }, ...["", ...names].filter(n => n || f.optional || !names.includes(shown)).map(n => el("option", { value: n, selected: n === shown }, n)));
  } else {
    input = el("input", { id: key, value: shown, placeholder: f.write || "", spellcheck: false });
    if (f.kind === "number") input.inputMode = "decimal";
    if (names && names.length) input.setAttribute("list", listOf(names));
  }
  input.dataset.path = path;
  const hint = el("p", { className: "hint", id: key + "h" });
  hint.textContent = f.hint || (f.write ? "as " + f.write : "");
  if (hint.textContent) input.setAttribute("aria-describedby", hint.id);
  const back = el("button", { type: "button", className: "usual" });
  const mark = () => {
    const now = get(batch.request, path);
    back.hidden = usual === undefined || typeof usual === "object";
    back.disabled = now === usual;
    back.textContent = now === usual ? "usual" : "usual: " + usual;
  };
  back.onclick = () => { put(batch.request, path, clone(usual)); input.value = usual; mark(); changed(); input.focus(); };
  input.addEventListener("input", () => {
    let v = input.value.trim();
    const n = Number(v.replace(",", "."));
    if (f.kind === "number" && v && Number.isFinite(n)) v = n;
    put(batch.request, path, v === "" && f.optional ? undefined : v);
    mark();
    changed();
  });
  mark();
  return el("div", { className: "field" }, el("label", { htmlFor: key }, f.label || "entry"), back, input, hint);
}

const lists = new Map();

function listOf(names) {
  const key = names.join("|");
  if (!lists.has(key)) {
    const list = el("datalist", { id: "l" + lists.size }, ...names.map(n => el("option", { value: n })));
    document.body.append(list);
    lists.set(key, list.id);
  }
  return lists.get(key);
}

const join = (path, key) => path ? path + "." + key : key;
const rerender = () => { renderForm(); changed(); };

// blank is what a new entry of a kind starts as.
function blank(f) {
  if (f.kind === "group") return Object.fromEntries(f.of.filter(k => !k.optional).map(k => [k.key, blank(k)]));
  return f.kind === "list" ? [] : "";
}

// parts are the elements of a field: those of the first screen, or the others.
function parts(f, path, first) {
  if (f.kind !== "group" && f.kind !== "list") return !!f.first === first ? [leaf(f, path, f.names)] : [];
  if (f.kind === "group") {
    if (f.first) return first ? [waters(f, path)] : [];
    if (f.optional && get(batch.request, path) === undefined) {
      return first ? [] : [el("button", { type: "button", onclick: () => { put(batch.request, path, clone(get(batch.usual, path)) || blank(f)); rerender(); } }, "Add " + f.label)];
    }
    const out = f.of.flatMap(k => parts(k, join(path, k.key), first));
    if (f.optional && !first) out.push(el("button", { type: "button", onclick: () => { put(batch.request, path, undefined); rerender(); } }, "Leave out " + f.label));
    return out;
  }
  if (!!f.first !== first) return [];
  const all = get(batch.request, path) || [], one = f.of[0];
  const out = all.map((_, i) => entry(f, one, `${path}[${i}]`, i));
  out.push(el("button", { type: "button", onclick: () => {
    const list = get(batch.request, path) || [];
    list.push(list.length && one.kind === "group" ? clone(list[list.length - 1]) : blank(one));
    put(batch.request, path, list);
    rerender();
  } }, "Add a " + f.label.replace(/s$/, "")));
  return [el("div", { className: "list", "data-path": path }, ...out)];
}

function entry(f, one, path, i) {
  const name = `${f.label.replace(/s$/, "")} ${i + 1}`;
  const out = el("button", { type: "button", className: "usual", "aria-label": "Take out " + name, onclick: () => { put(batch.request, path, undefined); rerender(); } }, "take out");
  if (one.kind !== "group") {
    const row = leaf({ ...one, label: name, hint: i ? "" : f.hint }, path, f.names);
    row.querySelector(".usual").replaceWith(out);
    return row;
  }
  const set = el("fieldset", { "data-path": path }, el("legend", {}, name));
  const asked = one.of.flatMap(k => parts({ ...k, first: f.first ? k.first : true }, join(path, k.key), true));
  set.append(...asked);
  const more = f.first ? one.of.flatMap(k => parts(k, join(path, k.key), false)) : [];
  if (more.length) set.append(el("details", {}, el("summary", {}, "more of it, as usual"), ...more));
  set.append(out);
  return set;
}

// waters is a group that one tap fills: distilled water has no ions.
function waters(f, path) {
  const set = el("fieldset", { "data-path": path }, el("legend", {}, "water at hand"));
  const distilled = get(batch.request, path) === "distilled";
  set.append(el("label", { className: "tap" }, el("input", { type: "checkbox", checked: distilled, onchange: e => {
    const was = get(batch.usual, path);
    put(batch.request, path, e.target.checked ? "distilled" : typeof was === "object" ? clone(was) : {});
    rerender();
  } }), " distilled"));
  if (!distilled) set.append(el("details", {}, el("summary", {}, "its report"), ...f.of.flatMap(k => parts({ ...k, first: true }, join(path, k.key), true))));
  return set;
}

// atHand asks the other way round: how strong it gets with what there is.
function atHand() {
  const input = el("input", { id: "have", placeholder: "4.5 kg or 10 lb", spellcheck: false }), out = el("div", { className: "taps" });
  input.addEventListener("input", async () => {
    const have = input.value.trim();
    const offers = have ? await later("withAtHand", requestText(), have) : [];
    if (have !== input.value.trim()) return;
    out.replaceChildren(...(offers.error ? [el("p", { className: "refusal" }, offers.error)] : offers.map(offerButton)));
  });
  return el("details", { id: "hand" }, el("summary", {}, "or by what is at hand"), el("div", { className: "field" }, el("label", { htmlFor: "have" }, "there is of the fermentable"), input), out);
}

const offerButton = o => el("button", { type: "button", className: "offer", onclick: () => {
  for (const c of o.set) put(batch.request, c.path, c.value === null ? undefined : c.value);
  renderForm();
  changed();
} }, "Take " + named(o.text));

function renderForm() {
  const at = document.activeElement && document.activeElement.dataset ? document.activeElement.dataset.path : null;
  const shut = new Set([...document.querySelectorAll("#fields details[open] > summary")].map(s => s.textContent));
  const all = form.filter(f => f.key !== "readings"); // they are typed under Now
  const first = all.flatMap(f => parts(f, f.key, true));
  const rest = all.filter(f => f.kind === "group" || f.kind === "list").map(f => [f, parts(f, f.key, false)]).filter(([, p]) => p.length);
  const plain = all.filter(f => f.kind !== "group" && f.kind !== "list").flatMap(f => parts(f, f.key, false));
  $("fields").replaceChildren(...first, el("h2", {}, "The rest, as usual"),
    ...[[{ label: "name and money" }, plain], ...rest].map(([f, p]) => el("details", {}, el("summary", {}, f.label), ...p)));
  const strength = $("fields").querySelector("[data-path=strength]");
  if (strength) strength.closest(".field").after(atHand());
  for (const s of $("fields").querySelectorAll("summary")) if (shut.has(s.textContent)) s.parentElement.open = true;
  $("us").checked = batch.us;
  $("drinks").replaceChildren(...drinks.map(d => el("button", { type: "button", onclick: () => { start(d.request); renderForm(); changed(); scrollTo(0, 0); } }, d.name)));
  $("kept").replaceChildren(...kept().map(k => el("button", { type: "button", "aria-current": k.id === id, onclick: () => { open(k); show(); scrollTo(0, 0); } },
    `${k.batch.request.name || "without a name"}, ${new Date(k.at).toLocaleString()}`)));
  if (at) { const back = document.querySelector(`[data-path="${CSS.escape(at)}"]`); if (back) back.focus(); }
}

// ---- The other views.

const rows = (list, cls) => el("table", { className: cls || "" }, el("tbody", {}, ...list.map(r => r.value
  ? el("tr", {}, el("th", { scope: "row" }, r.label), el("td", {}, el("b", {}, r.value), r.note ? el("small", {}, r.note) : null))
  : el("tr", {}, el("td", { colSpan: 2 }, r.label)))));

const paragraphs = list => list.map(t => el("p", {}, t));

function refusedNote() { return el("p", { className: "refusal" }, `There is no plan: ${answer.refused.field}: ${answer.refused.value}: ${answer.refused.allowed}`); }

function showCard() {
  if (answer.refused) return $("card").replaceChildren(refusedNote());
  $("card").replaceChildren(
    el("div", { className: "taps screen" }, el("button", { type: "button", onclick: () => print() }, "Print"),
      el("button", { type: "button", onclick: () => { if (confirm("Take all ticks and readings off this card?")) { batch.ticks = {}; batch.blanks = {}; changed(); } } }, "Begin the card again")),
    ...(answer.before || []).map(c => el("p", { className: "caution" }, c)),
    el("ol", {}, ...answer.steps.map(step)));
}

function step(s, i) {
  const box = el("input", { type: "checkbox", id: "tick " + s.id, checked: !!batch.ticks[s.id] });
  const when = el("small", {});
  const item = el("li", {}, el("label", { className: "tick", htmlFor: box.id }, box, el("span", {}, `${i + 1}. ${s.title}`), when));
  const mark = () => {
    item.className = box.checked ? "done" : "";
    when.textContent = box.checked ? "done " + new Date(batch.ticks[s.id]).toLocaleString([], { dateStyle: "short", timeStyle: "short" }) : "";
  };
  box.onchange = () => {
    if (box.checked) batch.ticks[s.id] = Date.now(); else delete batch.ticks[s.id];
    keep();
    mark();
  };
  mark();
  const body = el("div", { className: "body" });
  if (s.when) body.append(el("p", { className: "when" }, s.when));
  if (s.take.length) body.append(rows(s.take, "take"));
  body.append(...paragraphs(s.do));
  for (const r of s.read) {
    const key = s.id + " " + r.label.replace(/, at .*/, ""), name = `blank ${s.id} ${r.label}`;
    const field = el("input", { id: name, value: batch.blanks[key] || "", placeholder: "read", oninput: e => { batch.blanks[key] = e.target.value; keep(); } });
    body.append(el("div", { className: "read" }, el("label", { htmlFor: name }, r.label, " ", el("b", {}, r.value), r.note ? el("small", {}, r.note) : null), field));
  }
  body.append(...s.cautions.map(c => el("p", { className: "caution" }, c)));
  item.append(body);
  return item;
}

let draft = null;

function showNow() {
  const list = batch.request.readings || [], kinds = form.find(f => f.key === "readings").of[0].of;
  if (!draft) {
    const pitched = batch.ticks.pitch;
    const card = list.length ? {} : { gravity: batch.blanks["measure gravity"], volume: batch.blanks["measure in the fermenter"], pH: batch.blanks["measure pH"] };
    draft = { ...card, after: list.length || pitched ? (pitched ? Math.round((Date.now() - pitched) / 3.6e6) + " h" : "") : "0 h", temperature: get(batch.request, "fermenter.temperature") || "" };
  }
  const inputs = kinds.map(k => {
    const key = "new " + k.key, input = el("input", { id: key, value: draft[k.key] || "", placeholder: k.write || "", inputMode: k.kind === "number" ? "decimal" : "text", oninput: e => { draft[k.key] = e.target.value; } });
    const hint = el("p", { className: "hint", id: key + " hint" }, k.hint || "");
    input.setAttribute("aria-describedby", hint.id);
    return el("div", { className: "field" }, el("label", { htmlFor: key }, k.label), input, hint);
  });
  const add = el("form", { id: "reading", autocomplete: "off", onsubmit: e => {
    e.preventDefault();
    const r = {};
    for (const k of kinds) {
      const v = (draft[k.key] || "").trim(), n = Number(v.replace(",", "."));
      if (v) r[k.key] = k.kind === "number" && Number.isFinite(n) ? n : v;
      else if (!k.optional) r[k.key] = k.kind === "number" ? 0 : "";
    }
    const trial = { ...batch.request, readings: [...list, r] };
    const said = JSON.parse(zymase.plan(JSON.stringify(trial), batch.us, "", false)).refused;
    if (said && said.field.startsWith("readings")) { // what was typed stays in the form
      const at = $("new " + said.field.split(".").pop()) || add.querySelector("input");
      for (const old of add.querySelectorAll(".refusal")) old.remove();
      at.closest(".field").append(el("p", { className: "refusal", role: "alert" }, `${said.value}: ${said.allowed}`));
      at.setAttribute("aria-invalid", "true");
      at.focus();
      return;
    }
    batch.request.readings = trial.readings;
    draft = null;
    changed();
    $("state").focus();
  } }, el("h2", {}, "What was read"), ...inputs, el("button", { type: "submit", className: "main" }, "Add this reading"));
  const had = el("ul", { className: "had" }, ...list.map((r, i) => el("li", { "data-path": `readings[${i}]` },
    [r.after, r.gravity, r.brix !== undefined ? r.brix + " °Bx" : "", r.weight_lost, r.temperature, r.pH ? "pH " + r.pH : "", r.volume, r.vessel ? "vessel " + r.vessel : ""].filter(Boolean).join(", "),
    el("button", { type: "button", className: "usual", "aria-label": "Take out the reading after " + r.after, onclick: () => {
      batch.request.readings.splice(i, 1);
      if (!batch.request.readings.length) delete batch.request.readings;
      changed();
    } }, "take out"))));
  if (answer.refused) return $("now").replaceChildren(refusedNote(), had, add);
  const guide = wrongness();
  const n = answer.now, picture = el("div", {});
  $("now").replaceChildren(...n.cautions.map(c => el("p", { className: "caution" }, c)),
    el("h2", { id: "state", tabIndex: -1 }, n.state), ...paragraphs(n.next), rows(n.take, "take"),
    ...(n.when.length ? [rows(n.when, "whens")] : []),
    ...(n.could.length ? [el("details", { className: "could" }, el("summary", {}, "What can be done, tried on this batch"), rows(n.could, "whens"))] : []),
    ...(n.why.length ? [el("details", {}, el("summary", {}, "Why"), whys(n.why), picture)] : []), had, add, guide);
  if (list.length) {
    const mine = turn;
    later("curves", requestText(), batch.us).then(c => { if (mine === turn && !c.error) c.filter(p => p.read).forEach(p => draw(picture, p)); });
  }
}

// wrongness asks what can explain something seen, by the figures of this batch.
let sign = "";

function wrongness() {
  const out = el("div", { "aria-live": "polite" });
  const ask = async () => {
    const mine = sign;
    if (!mine) return out.replaceChildren();
    const g = await later("wrong", requestText(), mine, batch.us);
    if (mine !== sign) return;
    if (g.error) return out.replaceChildren(el("p", { className: "refusal" }, g.error));
    out.replaceChildren(rows(g.figures, "whens"), el("h3", {}, "No figure tells"), ...paragraphs(g.rest));
  };
  const select = el("select", { id: "seen", onchange: e => { sign = e.target.value; ask(); } },
    ...["", ...JSON.parse(zymase.signs())].map(s => el("option", { value: s, selected: s === sign }, s || "nothing")));
  ask();
  return el("details", { open: !!sign }, el("summary", {}, "What is wrong?"), el("div", { className: "field" }, el("label", { htmlFor: "seen" }, "Seen, smelt or tasted"), select), out);
}

// draw puts a picture of ours on the page: its text is escaped where it is drawn.
function draw(into, p) {
  const svg = new DOMParser().parseFromString(p.svg.replace("<svg ", '<svg xmlns="http://www.w3.org/2000/svg" '), "image/svg+xml").documentElement;
  for (const e of svg.querySelectorAll("title, desc")) e.id = "p" + made + e.tagName;
  svg.setAttribute("aria-labelledby", `p${made}title p${made++}desc`);
  into.append(el("figure", {}, el("figcaption", {}, p.title), document.importNode(svg, true)));
}

// whys are rows with where each figure comes from, on demand.
function whys(list) {
  return el("table", {}, el("tbody", {}, ...list.map(r => {
    if (!r.value) return el("tr", {}, el("td", { colSpan: 2 }, r.label));
    const cell = el("td", {}, el("b", {}, r.value), r.note ? el("small", {}, r.note) : null);
    if (!r.why) return el("tr", {}, el("th", { scope: "row" }, r.label), cell);
    const more = el("div", { className: "why", hidden: true }, ...r.why.flatMap(([relation, source]) => [el("p", {}, "= " + relation), el("p", {}, "source: " + source)]));
    const ask = el("button", { type: "button", className: "ask", "aria-expanded": "false", onclick: () => { more.hidden = !more.hidden; ask.setAttribute("aria-expanded", String(!more.hidden)); } }, r.label);
    cell.append(more);
    return el("tr", {}, el("th", { scope: "row" }, ask), cell);
  })));
}

function showSheet() {
  if (answer.refused) return $("sheet").replaceChildren(refusedNote());
  $("sheet").replaceChildren(el("h2", { className: "screen" }, "Data sheet: tap a name for where its figure comes from"),
    ...answer.sections.map(s => el("section", { className: s.title === "Cautions" || s.title.startsWith("How it may go") ? "screen" : "" }, el("h3", {}, s.title), whys(s.rows))));
}

// inputs are the numbers of the request, by path.
function inputs(node, path, label, into) {
  if (Array.isArray(node)) node.forEach((v, i) => inputs(v, `${path}[${i}]`, `${label} ${i + 1}`, into));
  else if (node && typeof node === "object") for (const k of Object.keys(node)) { if (k !== "readings") inputs(node[k], join(path, k), label ? `${label}, ${k.replaceAll("_", " ")}` : k.replaceAll("_", " "), into); }
  else if (typeof node === "number" || /^-?[\d.,]+ \S/.test(String(node))) into.push({ path, label });
  return into;
}

const options = (select, list, usual) => {
  const was = select.value || usual;
  select.replaceChildren(...list.map(c => el("option", { value: c.path, selected: c.path === was }, c.label)));
};

async function showLook() {
  const mine = turn;
  const moved = inputs(batch.request, "", "", []).filter(i => i.path !== "volume"); // its packs would have to follow
  options($("input"), moved, moved.some(i => i.path === "strength") ? "strength" : moved[0].path);
  const curves = later("curves", requestText(), batch.us), list = await later("choices", requestText());
  if (mine !== turn) return;
  if (list.error) { $("plot").replaceChildren(refusedNote()); $("curves").replaceChildren(); return; }
  options($("result"), list, "gravity.original");
  look();
  const drawn = await curves;
  if (mine !== turn || drawn.error) return;
  $("curves").replaceChildren(el("h2", {}, "Curves of this plan"));
  for (const p of drawn) draw($("curves"), p);
}

async function look() {
  $("plot").replaceChildren(el("p", {}, "…"));
  const mine = turn, which = [$("input").value, $("result").value, Number($("share").value)];
  const p = await later("look", requestText(), ...which, batch.us);
  if (mine !== turn || which[0] !== $("input").value || which[1] !== $("result").value) return;
  const words = s => s.options[s.selectedIndex].textContent;
  p.title = `${words($("result"))} against ${words($("input"))}`;
  $("plot").replaceChildren();
  if (p.error) $("plot").append(el("p", { className: "refusal" }, p.error)); else draw($("plot"), p);
}

const views = { batch: () => { renderForm(); showRefusal(); }, card: showCard, now: showNow, look: showLook, sheet: showSheet };
let view = "batch";

function go(to) {
  view = to;
  store(() => sessionStorage.setItem("zymase view", to));
  for (const b of document.querySelectorAll("nav button")) b.setAttribute("aria-current", b.dataset.view === to ? "page" : "false");
  for (const v of Object.keys(views)) $(v).hidden = v !== to;
  draft = null;
  plan();
  scrollTo(0, 0);
}

// show writes all of it, after another batch was opened.
function show() { renderForm(); go(view); }

// ---- Files.

$("save").onclick = () => {
  const name = (batch.request.name || "batch").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "").slice(0, 60) || "batch";
  const url = URL.createObjectURL(new Blob([JSON.stringify(batch.request, null, 2) + "\n"], { type: "application/json" }));
  const a = el("a", { href: url, download: name + ".json" });
  document.body.append(a);
  a.click();
  a.remove();
  setTimeout(() => URL.revokeObjectURL(url), 1e4);
};

$("load").onchange = async e => {
  const file = e.target.files[0];
  e.target.value = "";
  if (file) take(file.name, await file.text());
};

// take opens the text of a file as a batch of its own; what cannot be read changes nothing.
function take(name, text) {
  const said = JSON.parse(zymase.read(text)).refused;
  if (said) { say(`${name} is not loaded, and nothing is changed: ${said.field}: ${said.value}: ${said.allowed}`); return; }
  start(JSON.parse(text.replace(/^\ufeff/, "")));
  keep();
  say(name + " is loaded, as a batch of its own.");
  show();
}

$("us").onchange = e => { batch.us = e.target.checked; changed(); };
$("input").onchange = $("result").onchange = $("share").onchange = look;
for (const b of document.querySelectorAll("nav button")) b.onclick = () => go(b.dataset.view);
$("fields").onsubmit = e => e.preventDefault();

// A print holds the card and the data sheet, whatever is on the screen.
addEventListener("beforeprint", () => {
  answer = JSON.parse(zymase.plan(requestText(), batch.us, ticked(), true));
  showCard();
  showSheet();
});

async function begin() {
  const all = kept(), last = store(() => sessionStorage.getItem("zymase open"));
  const entry = all.find(k => k.id === last) || all[0];
  if (entry) open(entry); else start(drinks[0].request);
  say("The library is being unpacked …");
  await load();
  say("");
  if (!entry) keep();
  view = store(() => sessionStorage.getItem("zymase view")) || "batch";
  if (!views[view]) view = "batch";
  show();
  document.documentElement.dataset.ready = "yes";
  // A browser makes fast what has run a while: let it, before the first keystroke.
  for (let i = 0; i < 10; i++) setTimeout(() => zymase.plan(requestText(), batch.us, "", false), 100 * i);
}

begin().catch(e => { say("The library does not start in this browser: " + e.message); });

// For the console, and for those who test the page.
window.kettle = { get batch() { return batch; }, get answer() { return answer; }, get id() { return id; }, kept, request: requestText };
