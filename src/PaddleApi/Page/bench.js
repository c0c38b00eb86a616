// The helper in mid-build: a stage, a weight and a balance point in, where to take wood out, with its picture.

import { getJson, postForText, postJson, Refusal } from './api.js';
import { lengthFigure, mass, massFigure, massUnitName, parseLength, parseMass, roughLength } from './measure.js';
import { $, make, setError, showPicture } from './parts.js';

const USUAL_STAGE = 'blade-planed';
const FIELDS = [[/^\/massG/, 'weight'], [/^\/balanceMm/, 'point'], [/^\/stage/, 'stage']];

let design, units, build, wanted = false, loading, asking, explain, waiting;

/** Makes the helper ready; it loads nothing before somebody comes near it. */
export function begin(options) {
  ({ explain, waiting } = options);
  new IntersectionObserver(entries => {
    if (!entries.some(entry => entry.isIntersecting)) return;
    wanted = true;
    load();
  }, { rootMargin: '200px' }).observe($('bench-section'));
  $('stage').addEventListener('change', expect);
  $('bench').addEventListener('submit', event => { event.preventDefault(); ask(false); });
  for (const field of ['weight', 'point']) $(field).addEventListener('input', () => setError(field, null));
}

/** Follows the paddle of the page. What was typed stays; an answer about another paddle goes. */
export function follow(nextDesign, nextUnits) {
  const isOther = design?.designCode !== nextDesign.designCode;
  convert(nextUnits);
  [design, units] = [nextDesign, nextUnits];
  if (isOther) {
    build = null;
    asking?.abort();
    $('bench-answer').hidden = true;
    $('bench-status').textContent = '';
  }
  if (wanted) load();
  else expect();
}

function convert(nextUnits) {
  if (!units || units === nextUnits) return;
  const [weight, point] = [parseMass($('weight').value, units), parseLength($('point').value, units)];
  if (weight !== null) $('weight').value = massFigure(weight, nextUnits);
  if (point !== null) $('point').value = lengthFigure(point, nextUnits);
}

async function load() {
  if (!design || build?.designCode === design.designCode) { expect(); return; }
  loading?.abort();
  const mine = loading = new AbortController();
  try {
    build = await getJson(design.links.build, { signal: mine.signal });
  } catch (fault) {
    if (!mine.signal.aborted) $('bench-status').textContent = fault instanceof Refusal ? fault.message : 'The stages could not be fetched: no connection.';
    return;
  }
  const chosen = $('stage').value || USUAL_STAGE;
  $('stage').replaceChildren(...build.stages.map(stage => make('option', { value: stage.id, selected: stage.id === chosen }, stage.title)));
  expect();
}

// What the stage should read, beside the fields that ask for it.
function expect() {
  const stage = build?.stages.find(one => one.id === $('stage').value);
  const put = (field, text) => {
    $(`${field}-hint`).textContent = text ?? '';
    $(`${field}-hint`).hidden = !text;
    setError(field, $(`${field}-error`).textContent || null);
  };
  put('stage', stage?.stopWhen);
  put('weight', stage && `To plan ${mass(stage.massG.value, units)}; boards differ, ${massFigure(stage.massG.low, units)} to ${massFigure(stage.massG.high, units)} ${massUnitName(units)} is usual.`);
  put('point', stage && `From the top of the grip. To plan ${roughLength(stage.balanceMm.value, units)}; ${roughLength(stage.balanceMm.low, units)} to ${roughLength(stage.balanceMm.high, units)} is usual.`);
}

async function ask(measuredAgain) {
  const [massG, balanceMm] = [parseMass($('weight').value, units), parseLength($('point').value, units)];
  setError('weight', massG === null ? `Write a weight, such as ${units === 'inch' ? '32.8, 2 lb 1 oz or 930 g' : '930 or 0.93 kg'}.` : null);
  setError('point', balanceMm === null ? `Write a length, such as ${units === 'inch' ? '31 3/4 or 806 mm' : '806'}.` : null);
  setError('stage', null);
  const wrong = massG === null ? 'weight' : balanceMm === null ? 'point' : null;
  if (wrong) { $(wrong).focus(); return; }

  asking?.abort();
  const mine = asking = new AbortController();
  const options = { signal: mine.signal, say: (what, seconds) => { $('bench-status').textContent = waiting(what, seconds); } };
  const body = {
    designCode: design.designCode, stage: $('stage').value, massG: Number(massG.toFixed(1)), balanceMm: Number(balanceMm.toFixed(1)),
    ...(measuredAgain && { measuredAgain }),
  };
  $('bench-status').textContent = 'Working it out…';
  try {
    const answer = await postJson('v1/balance-corrections', body, options);
    const svg = await postForText('v1/balance-corrections', body, 'image/svg+xml', options);
    show(answer, svg);
  } catch (fault) {
    if (mine.signal.aborted) return;
    refuse(fault);
  }
}

function refuse(fault) {
  $('bench-answer').hidden = true;
  if (!(fault instanceof Refusal)) { $('bench-status').textContent = 'The service cannot be reached. Press the button again when the line is back.'; return; }
  let first;
  for (const [pointer, [reason]] of Object.entries(fault.errors)) {
    const field = FIELDS.find(([pattern]) => pattern.test(pointer))?.[1];
    if (!field) continue;
    setError(field, explain(reason));
    first ??= field;
  }
  $('bench-status').textContent = first ? 'Look at the marked answer.' : fault.message;
  if (first) $(first).focus();
}

function show(answer, svg) {
  $('bench-status').textContent = '';
  $('bench-summary').textContent = answer.summary;
  $('bench-summary').className = `outcome ${answer.status === 'on-plan' ? 'met' : ''}`;
  $('bench-doubts').replaceChildren(...answer.doubts.map(doubt => make('li', {}, doubt.text)));
  showPicture($('bench-picture'), svg, `Where to take wood. ${[answer.summary, ...answer.removals.map(cut => cut.how)].join(' ')}`);
  $('bench-picture').hidden = false;
  $('bench-drawing').hidden = answer.status === 'measure-again';
  $('bench-swipe').hidden = $('bench-drawing').hidden;
  $('bench-cuts').replaceChildren(...answer.removals.map(cut => make('li', {}, cut.how)));
  $('bench-advice').replaceChildren(...answer.advice.map(one => make('li', {}, one.text)));
  const canHold = answer.status === 'measure-again' && answer.advice.some(one => one.code === 'hold-to-it');
  $('bench-again').replaceChildren(...canHold ? [make('button', { type: 'button', onclick: () => ask(true) }, 'Measured again: it reads the same')] : []);
  $('bench-answer').hidden = false;
  $('bench-answer').focus();
}
