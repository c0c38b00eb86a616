// What an answer says, laid out: figures with the checks that concern them, others beside it, files, cautions.

import { decimal, fixed, length, lengthFigure, lengthUp, mass, roughLength, unitName } from './measure.js';
import { capital, make } from './parts.js';
import { address } from './api.js';

const MARKS = { pass: ['✓', 'Good: '], warn: ['!', 'Look at this: '], fail: ['✕', 'Not good: '] };
const DUST = /dust/, TOOLS = /tool|saw|plane|noise|router|knife|sand(?!ing-dust)/, FINISH = /rag|solvent|finish|varnish|oil|epoxy|resin|skin/, WATER = /water(?!-model)|jacket|cold/;

/** Where the finished paddle balances, seen from the lower hand. */
export function balanceWords(design, units) {
  const off = design.mass.finishedCentreOfMassMm - design.lengths.lowerHandMm;
  const size = roughLength(Math.abs(off), units);
  return size === roughLength(0, units) ? 'at the lower hand' : `${size} towards the ${off > 0 ? 'blade' : 'grip'}`;
}

export function outcome(design) {
  if (design.outcome === 'met') {
    const open = design.checks.filter(check => check.status !== 'pass').length;
    const rest = open === 0 ? '' : open === 1 ? ' One thing below wants a look.' : ` ${open} things below want a look.`;
    return make('p', { class: 'outcome met' }, `It balances where you hold it, is strong enough for what it is for, and can be carved by hand.${rest}`);
  }
  const isWeak = design.unmetAims.some(aim => aim.code.startsWith('strength.'));
  return make('div', { class: 'bad' },
    make('h3', {}, isWeak ? 'Do not build it so: it is too weak.' : 'Not all of it can be had together. This is the closest.'),
    make('ul', {}, design.unmetAims.map(aim => make('li', {}, aim.message))),
    [...new Set(design.unmetAims.map(aim => aim.advice))].map(advice => make('p', {}, make('strong', {}, 'What to do: '), advice)));
}

/** The key figures, each with the checks that concern it. */
export function figures(design, units, names) {
  const { lengths, sizes, mass: weight, strength, flex, design: asked } = design;
  const [one, up] = [mm => lengthFigure(mm, units), mm => lengthUp(mm, units)];
  const unit = unitName(units);
  const governing = strength.cases.find(item => item.id === strength.governingCase);
  const board = design.checks.find(check => check.id === 'board.stock');
  const rows = [
    ['Length', length(lengths.overallMm, units), `Hands ${length(asked.handSpacingMm, units)} apart, ${length(lengths.throatMm, units)} from the top of the grip to the blade.`, /^size\./],
    ['Weight, finished', mass(weight.finishedG, units), `${mass(weight.totalG, units)} as bare wood.`, /^mass\./],
    ['Balances, finished', capital(balanceWords(design, units)), `Lower hand ${length(lengths.lowerHandMm, units)} from the top of the grip.`, /^balance\./],
    ['Shaft at the lower hand', `${up(sizes.shaftWidthMm)} × ${up(sizes.shaftThicknessMm)} ${unit}`, `${up(sizes.upperWidthMm)} × ${up(sizes.upperThicknessMm)} ${unit} below the grip.`, /^(hand\.|shape\.shaft)/],
    ['Blade', `${one(lengths.bladeMm)} × ${one(asked.blade.widthMm)} ${unit}`, `${names.family(asked.blade.family)}. ${names.water(asked.blade.family)}`, /^shape\.(?!shaft)/],
    ['Thickness at mid-blade', `${up(sizes.middleThicknessMm)} ${unit}`, `${up(sizes.throatThicknessMm)} ${unit} at the throat, ${up(sizes.tipThicknessMm)} ${unit} near the tip, ${up(sizes.edgeThicknessMm)} ${unit} at the edge.`, null],
    ['Flex', length(flex.benchFlexMm, units), `How far the blade gives under ${units === 'inch' ? '11\u00a0lb' : '5\u00a0kg'}, held at both hands.`, /^flex\./],
    ['Strength', `${fixed(governing.safetyFactor, 2)} of ${fixed(governing.leastSafetyFactor, 2)}`, `Safety factor in the ${plain(governing.id)}, of what is asked of it.`, /^strength\./],
    ['Wood', names.wood(asked.wood.species), '', /^wood\./],
  ];
  if (board) rows.push(['Board', length(asked.wood.boardThicknessMm ?? board.limit, units), asked.wood.boardThicknessMm ? 'Yours, as it lies.' : 'Thickness to buy.', /^board\./]);
  const placed = rows.map(([, , , concerns]) => design.checks.filter(check => concerns?.test(check.id)));
  const left = design.checks.filter(check => !placed.flat().includes(check));
  const shown = rows.map(([name, value, more], i) => figure(name, value, more, placed[i], units, name === 'Balances, finished'));
  if (left.length) shown.push(figure('Also checked', '', '', left, units));
  return shown;
}

function figure(name, value, more, checks, units) {
  const sources = [...new Set(checks.map(check => check.source))];
  return make('div', { class: 'figure' },
    make('h3', {}, name),
    value && make('p', { class: 'value' }, value),
    more && make('p', { class: 'more' }, more),
    checks.length > 0 && make('ul', { class: 'checks' }, lines(checks, units)),
    sources.length > 0 && make('details', {}, make('summary', { 'aria-label': `Sources: ${name}` }, 'Sources'),
      make('ul', { class: 'sources' }, sources.map(source => make('li', {}, source)))));
}

const ABOUT = { 'shape.blade-length': 'Length', 'shape.blade-width': 'Width', 'shape.fullness': 'Fullness', 'wood.slope-of-grain': 'Grain' };

const isCase = check => check.id.startsWith('strength.') && !['strength.damp', 'strength.shaft-buckling'].includes(check.id);

// Load cases that all hold are one line: who reads on wants the figures, not five times the same words.
function lines(checks, units) {
  const cases = checks.filter(isCase);
  if (cases.length < 2 || cases.some(check => check.status !== 'pass')) return checks.map(check => checkLine(check, units));
  const all = cases.map(check => `${plain(check.id.slice('strength.'.length))} ${fixed(check.value, 2)} of ${fixed(check.limit, 2)}`).join(', ');
  return [marked('pass', `Strong enough: ${all}.`), ...checks.filter(check => !isCase(check)).map(check => checkLine(check, units))];
}

function checkLine(check, units) {
  const figures = `${asRead(check.value, check.unit, units)} of ${asRead(check.limit, check.unit, units)}`;
  const words = isCase(check) ? `${capital(plain(check.id.slice('strength.'.length)))}: ${lower(check.message).replace(/\.$/, '')}, ${figures}.`
    : check.status === 'pass' && ABOUT[check.id] ? `${ABOUT[check.id]}: ${lower(check.message)}`
    : check.status === 'pass' || /^(balance|board|wood)\./.test(check.id) ? check.message
    : `${ABOUT[check.id] ? `${ABOUT[check.id]}: ${lower(check.message)}` : check.message}`.replace(/\.$/, '') + `: ${asRead(check.value, check.unit, units)}, where ${asRead(check.limit, check.unit, units)} is the limit.`;
  return marked(check.status, words);
}

function marked(status, words) {
  const [mark, said] = MARKS[status];
  return make('li', { class: status },
    make('span', { class: 'mark', 'aria-hidden': 'true' }, mark), make('span', { class: 'hidden-text' }, said), words);
}

const asRead = (value, unit, units) => unit === 'mm' ? length(value, units) : unit === 'g' ? mass(value, units) : unit ? `${decimal(value, 1)} ${unit}` : fixed(value, 2);
const lower = text => text ? text[0].toLowerCase() + text.slice(1) : text;
const plain = id => id.replaceAll('-', ' ');

/** One card among those side by side. */
export function card({ title, why, design, current, isCurrent, units, take }) {
  const isWeak = design.unmetAims.some(aim => aim.code.startsWith('strength.'));
  return make('li', { class: isCurrent ? 'current' : null },
    make('h3', {}, title),
    why && make('p', {}, why),
    make('dl', {},
      make('dt', {}, 'Weight'), make('dd', {}, mass(design.mass.finishedG, units)),
      make('dt', {}, 'Flex'), make('dd', {}, length(design.flex.benchFlexMm, units)),
      make('dt', {}, 'Balance'), make('dd', {}, balanceWords(design, units)),
      make('dt', {}, 'Length'), make('dd', {}, length(design.lengths.overallMm, units))),
    !isCurrent && make('p', {}, comparison(design, current, units)),
    design.outcome !== 'met' && make('p', { class: 'weak' }, isWeak ? 'Too weak: not to be built so.' : 'Not all that was asked can be had with it.'),
    isCurrent ? make('p', {}, make('strong', {}, 'The one above')) : make('button', { type: 'button', onclick: take }, 'Take this one'));
}

function comparison(design, current, units) {
  const lighter = current.mass.finishedG - design.mass.finishedG;
  const share = design.flex.benchFlexMm / current.flex.benchFlexMm - 1;
  const weight = Math.abs(lighter) < 5 ? 'As heavy' : `${mass(Math.abs(lighter), units)} ${lighter > 0 ? 'lighter' : 'heavier'}`;
  const flex = Math.abs(share) < 0.03 ? 'as stiff' : `${Math.round(Math.abs(share) * 100)} % ${share > 0 ? 'more' : 'less'} flex`;
  return `${weight}, ${flex}.`;
}

const FILES = [
  ['templates', 'Templates to print', 'PDF at true scale on sheets of A4. Other paper:', ['a4', 'letter', 'a3', 'roll']],
  ['buildSheet', 'Build sheet', 'Every stage: what to mark, measure and when to stop.'],
  ['buildSheetPdf', 'Build sheet as PDF', 'The same, ready for the printer.'],
  ['dxf', 'Template for CAD', 'DXF with layers, millimetres.'],
  ['stl', 'Solid', 'STL for viewers and mills.'],
  ['offsets', 'Table of offsets', 'CSV, to lay the shape out by hand.'],
  ['outline', 'Outline', 'SVG at true scale.'],
  ['halfTemplate', 'Half template', 'SVG at true scale, to flip about the centre line.'],
  ['elevation', 'Edge view', 'SVG at true scale: thicknesses and kerfs.'],
  ['sections', 'Cross-sections', 'SVG at true scale, with the lines for eight and sixteen sides.'],
  ['strength', 'Strength and flex', 'SVG: what loads it, and where.'],
];
const PAPERS = { a4: 'A4', letter: 'Letter', a3: 'A3', roll: 'One long sheet' };
const SAVED = new Set(['templates', 'dxf', 'stl', 'offsets', 'buildSheetPdf']);

/** The files of a design, in a unit other than its own where the reader has chosen so. */
export function files(design, units) {
  const own = design.design.drawing.units === units;
  const query = (name, paper) => new URLSearchParams({ ...(own || name.startsWith('build') ? {} : { units }), ...(paper && { paper }) }).toString();
  const at = (name, paper) => address(design.links[name]) + (query(name, paper) && `?${query(name, paper)}`);
  return FILES.filter(([name]) => design.links[name]).map(([name, title, about, papers]) => make('li', {},
    make('a', { class: 'button', href: at(name), download: SAVED.has(name), 'data-file': name }, title),
    make('p', {}, about),
    papers && make('p', { class: 'sizes' }, papers.slice(1).map(paper =>
      make('a', { href: at(name, paper), download: true, 'aria-label': `${title}, ${PAPERS[paper]}` }, PAPERS[paper])))));
}

/** The cautions as the service gives them, by what they are about. */
export function cautions(list) {
  const groups = [['This design', []], ['Tools', []], ['Dust', []], ['Finishes', []], ['On the water', []]];
  for (const caution of list) {
    const at = DUST.test(caution.id) ? 2 : FINISH.test(caution.id) ? 3 : WATER.test(caution.id) ? 4 : TOOLS.test(caution.id) ? 1 : 0;
    groups[at][1].push(caution);
  }
  return groups.filter(([, all]) => all.length).map(([title, all]) => make('div', {},
    make('h3', {}, title),
    all.map(caution => make('div', {}, make('p', {}, caution.text), make('p', { class: 'source' }, `Source: ${caution.source}`)))));
}
