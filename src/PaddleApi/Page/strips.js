// The strips of a paddle that is glued up: a wood and a width each, from the middle outward or from edge to edge.

import { lengthFigure, parseLength, unitName } from './measure.js';
import { $, make, setError } from './parts.js';

const MOST = 15, FEWEST = 2;
// A shaft's strip, and a wing as wide as the widest blade asks: what is too much is sawn off at the outline.
const USUAL = [['', 36], ['', 75]];

let units = 'metric', woods = [], changed = () => {}, typedNow = () => {}, made = 0;

const rows = () => [...$('strips').children];
const width = row => row.querySelector('input');
const wood = row => row.querySelector('select');
const isOn = () => document.querySelector('input[name="make"]:checked').value === 'laminated';

/** Makes it ready. */
export function begin(options) {
  ({ changed, typedNow } = options);
  $('make').addEventListener('change', () => { show(); changed(); });
  for (const one of ['mirrored', 'adhesive']) $(one).addEventListener('change', () => changed());
  $('strip-add').addEventListener('click', () => { add('', 10); changed(); width(rows().at(-1)).focus(); });
  for (const [species, mm] of USUAL) add(species, mm);
}

/** What is asked for; null of one piece. A width that is no length is NaN. */
export function read() {
  if (!isOn()) return null;
  return {
    kind: 'laminated', isMirrored: $('mirrored').checked, adhesive: $('adhesive').value,
    strips: rows().map(row => ({ ...(wood(row).value && { species: wood(row).value }), widthMm: Number((parseLength(width(row).value, units) ?? NaN).toFixed(2)) })),
  };
}

/** Fields that the service cannot be asked about. */
export const unreadable = () => isOn() ? rows().map(width).filter(input => parseLength(input.value, units) === null).map(input => input.id) : [];

/** The field that a pointer of a refusal belongs to, or undefined. */
export function fieldOf(pointer) {
  const place = /^\/construction\/strips(?:\/(\d+))?/.exec(pointer);
  return place ? width(rows()[place[1]] ?? rows().at(-1)).id : undefined;
}

export function clear() { for (const row of rows()) setError(width(row).id, null); }

/** Fills in what an opened paddle is made of. */
export function fill(construction, species) {
  const isLaminated = construction?.kind === 'laminated';
  for (const radio of document.getElementsByName('make')) radio.checked = radio.value === (isLaminated ? 'laminated' : 'one-piece');
  if (isLaminated) {
    $('strips').replaceChildren();
    for (const strip of construction.strips) add(strip.species === species ? '' : strip.species, strip.widthMm);
    $('mirrored').checked = construction.isMirrored;
    $('adhesive').value = construction.adhesive;
  }
  show();
}

export function setUnits(next) {
  for (const row of rows()) {
    const mm = parseLength(width(row).value, units);
    if (mm !== null) width(row).value = lengthFigure(mm, next);
  }
  units = next;
  number();
}

export function setWoods(list) {
  woods = list;
  for (const row of rows()) wood(row).replaceChildren(...options(wood(row).value));
}

const options = chosen => [
  make('option', { value: '' }, 'The wood above'), ...woods.map(one => make('option', { value: one.id, selected: one.id === chosen }, one.commonName)),
];

function show() { $('strips-field').hidden = !isOn(); }

function add(species, mm) {
  const id = `strip-${++made}`;
  const input = make('input', { id: `${id}-width`, autocomplete: 'off', spellcheck: 'false', required: true });
  input.value = lengthFigure(mm, units);
  input.addEventListener('input', () => { setError(input.id, null); typedNow(); });
  $('strips').append(make('li', {},
    make('div', { class: 'field' }, make('label', { for: `${id}-wood` }), make('select', { id: `${id}-wood`, onchange: () => changed() }, options(species))),
    make('div', { class: 'field' }, make('label', { for: input.id }), input, make('p', { class: 'error', id: `${input.id}-error`, hidden: true })),
    make('button', { type: 'button', class: 'quiet', onclick: event => remove(event.currentTarget.closest('li')) }, 'Take away')));
  number();
}

function remove(row) {
  const next = row.nextElementSibling ?? row.previousElementSibling;
  row.remove();
  number();
  changed();
  wood(next).focus();
}

function number() {
  const all = rows();
  for (const [k, row] of all.entries()) {
    const [first, second] = row.querySelectorAll('label');
    first.textContent = `Strip ${k + 1}: wood`;
    second.textContent = `Strip ${k + 1}: width in ${units === 'inch' ? 'inches' : unitName(units)}`;
    const button = row.querySelector('button');
    button.setAttribute('aria-label', `Take strip ${k + 1} away`);
    button.disabled = all.length <= FEWEST;
    width(row).inputMode = units === 'inch' ? 'text' : 'decimal';
  }
  $('strip-add').disabled = all.length >= MOST;
}
