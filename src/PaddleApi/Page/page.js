// The page: answers in, the paddle out. It keeps nothing and calls only the service that it came from.

import { address, getJson, getText, pause, postJson, Refusal } from './api.js';
import * as bench from './bench.js';
import * as rack from './rack.js';
import * as strips from './strips.js';
import { balanceWords, card, cautions, figures, files, outcome } from './figures.js';
import { inUnits, length, lengthFigure, mass, massUnitName, parseLength, unitName } from './measure.js';
import { upright } from './upright.js';
import { $, capital, copyButton, descriptionOf, make, setError, showPicture } from './parts.js';

const TYPING_MS = 350;
const FINISH_TYPING_MS = 900;
const QUIET_MS = 900;
const LENGTHS = ['hands', 'height', 'board'];
const CHOICES = ['water', 'trip', 'wood', 'family'];
const SUITABILITY = [['recommended', 'Good for a paddle'], ['usable', 'Will do'], ['caution', 'Think twice']];
const FAMILIES_OFFERED = ['ottertail', 'beavertail', 'sugar-island', 'voyageur'];
const TRIP_OF_DUTY = { touring: 'day', expedition: 'trip', racing: 'race' };

// Where a pointer of a refusal belongs on the page.
const FIELDS = [
  [/^\/(paddler\/)?handSpacingMm/, 'hands'], [/^\/paddler\/statureMm/, 'height'], [/^\/water/, 'water'], [/^\/outing|^\/loads/, 'trip'],
  [/^\/wood\/boardThicknessMm/, 'board'], [/^\/wood/, 'wood'], [/^\/blade/, 'family'],
];

const values = { hands: 880, height: 1750, board: null };
const state = { units: 'metric', mode: 'hands', shown: null };
const lists = { woods: [], families: [] };
const kept = new Map();
let running, comparing, timer, lastTyped = 0;

// ---- answers

const read = () => ({
  units: state.units, mode: state.mode, construction: strips.read(), ...values, ...Object.fromEntries(CHOICES.map(name => [name, $(name).value])),
});

function typed(field) {
  const text = $(field).value.trim();
  values[field] = text === '' && field === 'board' ? null : parseLength(text, state.units) ?? NaN;
  if (!Number.isNaN(values[field])) setError(field, null);
}

const example = () => state.units === 'inch' ? '35, 35 1/2, 35.5 or 902 mm' : '880, 88 cm or 34 5/8 in';

// The fields that the service cannot be asked about.
function unreadable(answers) {
  const asked = [answers.mode, 'board'];
  return [...asked.filter(field => Number.isNaN(answers[field]) || (field !== 'board' && !answers[field])), ...strips.unreadable()];
}

const rounded = mm => Number(mm.toFixed(2));

const fittingRequest = answers => ({
  paddler: answers.mode === 'hands' ? { handSpacingMm: rounded(answers.hands) } : { statureMm: rounded(answers.height) },
  water: { kind: answers.water },
  outing: { purpose: answers.trip },
  drawing: { units: answers.units },
});

// The fitted shaft is that of the fitted wood: of another wood, or of the maker's own board, the solver chooses it.
function designRequest(fit, { wood, family, board, units, construction }, blade) {
  const { shaft, ...fitted } = fit.design;
  const own = (wood && wood !== fitted.wood.species) || board || construction;
  return {
    ...fitted,
    blade: blade ? { family, ...blade } : fitted.blade,
    shaft: own ? { bendDegrees: shaft?.bendDegrees ?? 0 } : shaft,
    wood: { species: wood || fitted.wood.species, ...(board && { boardThicknessMm: rounded(board) }) },
    ...(construction && { construction }),
    drawing: { units },
  };
}

// Another blade is compared at equal area: the fitted design says how large each family then is.
async function bladeOf(fit, answers, options) {
  if (!answers.family || answers.family === fit.design.blade.family) return null;
  const fitted = await once('v1/designs', designRequest(fit, { units: answers.units }), options);
  const sized = fitted.stroke.families.find(one => one.family === answers.family);
  return sized ? { lengthMm: Math.round(sized.lengthMm), widthMm: Math.round(sized.widthMm) } : {};
}

// Answers never change for one question, so that none is asked twice.
async function once(path, body, options) {
  const key = path + JSON.stringify(body);
  if (!kept.has(key)) {
    const answer = await postJson(path, body, options);
    if (kept.size > 60) kept.delete(kept.keys().next().value);
    kept.set(key, answer);
  }
  return kept.get(key);
}

async function work(answers, options) {
  const fit = await once('v1/fittings', fittingRequest(answers), options);
  const request = designRequest(fit, answers, await bladeOf(fit, answers, options));
  return { fit, request, design: await once('v1/designs', request, options) };
}

// A paddle whose drawing is refused still has its figures, and they say why it should not be built.
const drawing = (link, options) => getText(link, options).catch(fault => {
  if (fault instanceof Refusal) return null;
  throw fault;
});

// ---- following what is typed

function changed(wait = 0) {
  running?.abort();
  comparing?.abort();
  clearTimeout(timer);
  timer = setTimeout(update, wait);
}

async function update() {
  const answers = read();
  const mine = running = new AbortController();
  const options = { signal: mine.signal, say: (what, seconds) => say(waiting(what, seconds)) };
  clearErrors();
  const wrong = unreadable(answers);
  if (wrong.length) {
    await settle(mine.signal, wrong).catch(() => {});
    if (mine.signal.aborted) return;
    for (const field of wrong) setError(field, `Write a length, such as ${example()}.`);
    stale();
    return;
  }
  busy(true);
  say('Working it out…');
  try {
    const found = await work(answers, options);
    const svg = await drawing(found.design.links.overview, options);
    if (mine.signal.aborted) return;
    show({ ...found, answers, svg });
  } catch (fault) {
    if (mine.signal.aborted) return;
    await refuse(fault, mine.signal);
  }
}

/** Opens the paddle of a link. */
async function open(code) {
  running?.abort();
  comparing?.abort();
  const mine = running = new AbortController();
  const options = { signal: mine.signal, say: (what, seconds) => say(waiting(what, seconds)) };
  busy(true);
  say('Opening the paddle…');
  try {
    const design = await getJson(`v1/designs/${encodeURIComponent(code)}`, options);
    fill(design);
    const svg = await drawing(design.links.overview, options);
    if (mine.signal.aborted) return;
    show({ design, svg, answers: read(), isShared: true });
  } catch (fault) {
    if (mine.signal.aborted) return;
    busy(false);
    if (fault instanceof Refusal) {
      say(`This link holds no paddle: ${fault.message}`);
      await pause(QUIET_MS, mine.signal).catch(() => {});
      if (!mine.signal.aborted) changed();
    } else await refuse(fault, mine.signal);
  }
}

// The answers that would lead to an opened paddle, as far as it tells.
function fill(design) {
  const { handSpacingMm, wood, blade, loads, drawing, construction } = design.design;
  setUnits(drawing?.units === 'inch' ? 'inch' : 'metric');
  setMode('hands');
  Object.assign(values, { hands: handSpacingMm, board: wood.boardThicknessMm ?? null });
  writeLengths();
  const told = new URLSearchParams(location.hash.split('&').slice(1).join('&'));
  pick('wood', wood.species);
  pick('family', blade.family ?? '');
  pick('water', told.get('water'));
  pick('trip', TRIP_OF_DUTY[loads?.duty] ?? 'day');
  strips.fill(construction, wood.species);
}

function pick(name, value) {
  if ([...$(name).options].some(option => option.value === value)) $(name).value = value;
}

// ---- what is waited for, and what goes wrong

function waiting(what, seconds) {
  switch (what) {
    case 'slow': return 'Still waiting for the answer: the line or the service is slow.';
    case 'busy': return `The service is busy; asking again in ${seconds} s.`;
    case 'offline': return `No connection; trying again in ${seconds} s.`;
    default: return 'Working it out…';
  }
}

function say(text) { if ($('status').textContent !== text) $('status').textContent = text; }

function busy(is) {
  $('result').classList.toggle('busy', is);
  $('result').setAttribute('aria-busy', String(is));
}

function stale() {
  busy(false);
  $('result').classList.add('busy');
  say(state.shown ? 'Not up to date: look at the marked answer.' : 'Look at the marked answer.');
}

function clearErrors() {
  for (const field of [...LENGTHS, ...CHOICES]) if (!Number.isNaN(values[field])) setError(field, null);
  strips.clear();
  $('form-error').hidden = true;
}

// Who is still typing is not told off half way.
const settle = (signal, fields) => pause(
  fields.includes(document.activeElement?.id) && Date.now() - lastTyped < FINISH_TYPING_MS ? FINISH_TYPING_MS : 0, signal);

async function refuse(fault, signal) {
  if (!(fault instanceof Refusal)) {
    busy(false);
    say('The service cannot be reached. It is asked again when the line is back or you change an answer.');
    addEventListener('online', () => changed(), { once: true });
    return;
  }
  const placed = Object.entries(fault.errors).map(([pointer, [reason]]) => [fieldOf(pointer), reason]);
  await settle(signal, placed.map(([field]) => field)).catch(() => {});
  if (signal.aborted) return;
  for (const [field, reason] of placed) if (field) setError(field, explain(reason));
  const rest = placed.filter(([field]) => !field).map(([, reason]) => explain(reason));
  if (placed.length === 0) rest.push(`${fault.message}${fault.status >= 500 && fault.requestId ? ` (request ${fault.requestId})` : ''}`);
  $('form-error').textContent = rest.join(' ');
  $('form-error').hidden = rest.length === 0;
  stale();
}

function fieldOf(pointer) {
  const field = strips.fieldOf(pointer) ?? FIELDS.find(([pattern]) => pattern.test(pointer))?.[1];
  return field === 'hands' || pointer === '/paddler' ? state.mode : field;
}

/** A reason with its range in the reader's own unit. */
function explain({ reason, min, max, unit, allowed }) {
  const own = (value) => unit === 'mm' ? length(value, state.units) : unit === 'g' ? mass(value, state.units) : `${value} ${unit ?? ''}`.trim();
  const isForeign = state.units === 'inch' && /\d mm\b/.test(reason);
  const hasRange = min !== undefined && max !== undefined;
  if (hasRange && (isForeign || !/ is outside /.test(reason))) return `Between ${own(min)} and ${own(max)}.${isForeign ? '' : ` ${reason}`}`;
  return allowed?.length ? `${reason} Allowed: ${allowed.join(', ')}.` : reason;
}

// ---- showing

const names = {
  wood: id => lists.woods.find(wood => wood.id === id)?.commonName ?? capital(id.replaceAll('-', ' ')),
  water: id => lists.families.find(family => family.id === id)?.water ?? '',
  family: id => id ? lists.families.find(family => family.id === id)?.name ?? capital(id.replaceAll('-', ' ')) : 'Own shape',
};

function show(found) {
  const { design, svg, fit, isShared } = found;
  state.shown = found;
  busy(false);
  if (svg) showPicture($('picture'), svg, descriptionOf(svg));
  $('drawing').hidden = !svg;
  $('whole').hidden = !svg;
  $('undrawn').hidden = Boolean(svg);
  $('files').hidden = !svg;
  $('picture').hidden = !svg;
  $('shared').hidden = !isShared;
  $('reasons').replaceChildren(...(fit?.reasons ?? []).map(reason => make('li', {}, reason)));
  $('why').hidden = !fit;
  if (fit) {
    $('wood').options[0].textContent = `Chosen: ${names.wood(fit.design.wood.species).toLowerCase()}`;
    $('family').options[0].textContent = `Chosen: ${names.family(fit.design.blade.family).toLowerCase()}`;
  }
  history.replaceState(null, '', `#${design.designCode}&water=${$('water').value}`);
  $('engine').textContent = `Engine ${design.engineVersion}`;
  showUnits(found);
  compare(found);
}

// Everything that is printed in the chosen units.
function showUnits({ design, fit, request, answers }) {
  const { units } = state;
  $('outcome').replaceChildren(outcome(design));
  $('figures').replaceChildren(...figures(design, units, names));
  showGlue(design, units);
  $('upright').replaceChildren(upright(design, units));
  $('whole').href = address(design.links.overview) + (design.design.drawing.units === units ? '' : `?units=${units}`);
  $('files').replaceChildren(...files(design, units));
  $('cautions').replaceChildren(...cautions(design.cautions));
  showRequests(design, fit && fittingRequest(answers), request);
  bench.follow(design, units);
  rack.follow(design, units);
  say(`${names.family(design.design.blade.family)}, ${length(design.lengths.overallMm, units)}, ${mass(design.mass.finishedG, units)}; balances ${balanceWords(design, units)}.`);
}

function showGlue({ construction }, units) {
  $('glue').hidden = !construction;
  if (!construction) return;
  const { laminated, onePiece } = construction;
  $('glue-against').textContent = `Glued up it weighs ${mass(laminated.finishedG, units)} and takes ${laminated.boardFeet.toFixed(1)} board feet; of one piece ${mass(onePiece.finishedG, units)} and `
    + `${onePiece.boardFeet.toFixed(1)}. ${construction.glueLines.count} joints, ${mass(construction.glueLines.glueG, units)} of glue.`;
  $('glue-strips').replaceChildren(...construction.strips.map(strip => make('li', {},
    `${strip.count} of ${names.wood(strip.species).toLowerCase()}, ${strip.part === 'whole' ? 'whole length' : strip.part === 'tip' ? 'across the tip' : `for the ${strip.part}`}: `
    + `${length(strip.cutWidthMm, units)} wide, ${length(strip.thicknessMm, units)} thick, ${length(strip.lengthMm, units)} long`)));
}

function showRequests(design, fitting, request) {
  const block = (title, path, body) => {
    const json = body && JSON.stringify(body, null, 2);
    // In a shell a quote within quotes is closed, escaped and opened again.
    const curl = body
      ? `curl -H 'Content-Type: application/json' ${address(path)} -d '${JSON.stringify(body).replaceAll("'", "'\\''")}'`
      : `curl ${address(path)}`;
    return [
      make('h3', {}, title),
      make('div', {}, make('p', {}, 'As curl'), make('pre', { tabindex: '0', 'aria-label': `${title}, curl` }, curl), copyButton('Copy curl', () => curl)),
      json && make('div', {}, make('p', {}, 'As JSON'), make('pre', { tabindex: '0', 'aria-label': `${title}, JSON` }, json), copyButton('Copy JSON', () => json)),
    ];
  };
  $('requests').replaceChildren(...[
    ...fitting ? block('Who it is for', 'v1/fittings', fitting) : [],
    ...request ? block('The paddle', 'v1/designs', request) : block('The paddle again, from its code', `v1/designs/${design.designCode}`),
  ].filter(Boolean));
}

// ---- others side by side, asked for one after the other once it is quiet

async function compare(found) {
  comparing?.abort();
  const mine = comparing = new AbortController();
  const cards = [card({ title: titleOf(found.design), design: found.design, isCurrent: true, units: state.units })];
  $('others').replaceChildren(...cards);
  if (found.isShared) return;
  const options = { signal: mine.signal };
  try {
    await pause(QUIET_MS, mine.signal);
    for (const { change, why } of offers(found)) {
      const answers = { ...found.answers, ...change };
      const { design } = await work(answers, options);
      if (mine.signal.aborted) return;
      const title = change.wood ? names.wood(change.wood) : names.family(change.family);
      $('others').append(card({ title, why: inUnits(why, state.units), design, current: found.design, units: state.units, take: () => take(change) }));
    }
  } catch {
    // Overtaken, or not to be had: what is there stays.
  }
}

const titleOf = design => `${names.family(design.design.blade.family)} in ${names.wood(design.design.wood.species).toLowerCase()}`;

// What the fitting itself offers comes first; then the next lighter and the next heavier good wood, and two more blades.
function offers({ fit, design }) {
  const { wood, blade } = design.design;
  const offered = [];
  const add = (change, why) => {
    const isHere = (change.wood ?? wood.species) === wood.species && (change.family ?? blade.family) === blade.family;
    if (!isHere && !offered.some(one => one.change.wood === change.wood && one.change.family === change.family)) offered.push({ change, why });
  };
  for (const other of fit.alternatives) {
    if (other.design.blade.family !== blade.family && other.design.blade.family !== fit.design.blade.family) add({ family: other.design.blade.family }, other.reason);
    else if (other.design.wood.species !== wood.species) add({ wood: other.design.wood.species }, other.reason);
  }
  const good = lists.woods.filter(one => one.suitability === 'recommended').toSorted((a, b) => a.densityAt12KgM3 - b.densityAt12KgM3);
  const density = lists.woods.find(one => one.id === wood.species)?.densityAt12KgM3 ?? 0;
  for (const one of [good.findLast(item => item.densityAt12KgM3 < density), good.find(item => item.densityAt12KgM3 > density)])
    if (one) add({ wood: one.id }, one.suitabilityReason);
  for (const id of [fit.design.blade.family, ...FAMILIES_OFFERED].filter(id => id !== blade.family).slice(0, 2))
    add({ family: id }, lists.families.find(one => one.id === id)?.water);
  return offered;
}

function take(change) {
  for (const [name, value] of Object.entries(change)) pick(name, value);
  changed();
  $('result').focus({ preventScroll: true });
  $('result').scrollIntoView({ block: 'start', behavior: matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth' });
}

// ---- units and modes

function writeLengths() {
  for (const field of LENGTHS) {
    const value = values[field];
    if (value === null) $(field).value = '';
    else if (!Number.isNaN(value)) $(field).value = lengthFigure(value, state.units);
    $(field).inputMode = state.units === 'inch' ? 'text' : 'decimal';
  }
}

function setUnits(units) {
  state.units = units;
  strips.setUnits(units);
  for (const radio of document.getElementsByName('units')) radio.checked = radio.value === units;
  for (const place of document.querySelectorAll('[data-unit]')) place.textContent = `in ${units === 'inch' ? 'inches' : unitName(units)}`;
  for (const place of document.querySelectorAll('[data-mass-unit]')) place.textContent = `in ${massUnitName(units)}`;
}

function setMode(mode) {
  state.mode = mode;
  for (const radio of document.getElementsByName('mode')) radio.checked = radio.value === mode;
  $('hands-field').hidden = mode !== 'hands';
  $('height-field').hidden = mode !== 'height';
}

async function unitsChosen(units) {
  setUnits(units);
  writeLengths();
  const { shown } = state;
  if (!shown?.isShared) { changed(); return; }

  // An opened paddle keeps its sizes whatever it is read in; only its drawing is lettered anew.
  running?.abort();
  const mine = running = new AbortController();
  try {
    const own = shown.design.design.drawing.units === units;
    const svg = await getText(shown.design.links.overview + (own ? '' : `?units=${units}`), { signal: mine.signal });
    showPicture($('picture'), svg, descriptionOf(svg));
  } catch {
    // The figures beside it are right; the drawing keeps its lettering.
  }
  if (mine.signal.aborted) return;
  showUnits(shown);
  compare(shown);
}

// ---- beginning

const codeInAddress = () => /^#(p\d[\w-]+)/.exec(location.hash)?.[1];

function listen() {
  for (const field of LENGTHS) {
    $(field).addEventListener('input', () => { lastTyped = Date.now(); typed(field); changed(TYPING_MS); });
    $(field).addEventListener('change', () => { lastTyped = 0; });
  }
  for (const field of CHOICES) $(field).addEventListener('change', () => changed());
  strips.begin({ changed, typedNow: () => { lastTyped = Date.now(); changed(TYPING_MS); } });
  $('units').addEventListener('change', event => unitsChosen(event.target.value));
  $('mode').addEventListener('change', event => { setMode(event.target.value); changed(); });
  $('questions').addEventListener('submit', event => { event.preventDefault(); changed(); });
  addEventListener('hashchange', () => {
    const code = codeInAddress();
    if (code && code !== state.shown?.design.designCode) open(code);
  });
  addEventListener('offline', () => say('No connection. What is shown stays; changes are worked out when the line is back.'));
  for (const link of document.querySelectorAll('a[data-to]')) {
    link.addEventListener('click', event => { event.preventDefault(); $(link.dataset.to).focus(); });
  }
}

async function fillLists() {
  const [woods, families] = await Promise.all([getJson('v1/woods'), getJson('v1/blade-families')]);
  Object.assign(lists, { woods: woods.woods, families: families.bladeFamilies });
  for (const [suitability, label] of SUITABILITY) {
    const those = lists.woods.filter(wood => wood.suitability === suitability);
    if (those.length) $('wood').append(make('optgroup', { label }, those.map(wood => make('option', { value: wood.id }, wood.commonName))));
  }
  strips.setWoods(lists.woods);
  $('family').append(...lists.families.map(family => make('option', { value: family.id }, family.name)));
}

setUnits('metric');
setMode('hands');
writeLengths();
listen();
bench.begin({ explain, waiting });
rack.begin({ explain, waiting });
$('share').replaceChildren(copyButton('Copy the link to this paddle', () => location.href));
await fillLists().catch(() => {});
if (codeInAddress()) open(codeInAddress());
else changed();
