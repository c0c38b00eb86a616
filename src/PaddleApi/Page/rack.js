// The paddle on the maker's own board, chalked as often as it holds it: the first step of the work.

import { address, postForText, postJson, Refusal } from './api.js';
import { length, lengthFigure, parseLength } from './measure.js';
import { $, make, setError, showPicture } from './parts.js';

const MOST = 8;
const FIELDS = { 'rack-length': 'lengthMm', 'rack-width': 'widthMm', 'rack-thickness': 'thicknessMm' };

let design, units, asking, explain, waiting;

/** Makes it ready. */
export function begin(options) {
  ({ explain, waiting } = options);
  $('rack').addEventListener('submit', event => { event.preventDefault(); ask(); });
  for (const field of Object.keys(FIELDS)) $(field).addEventListener('input', () => setError(field, null));
}

/** Follows the paddle of the page; an answer about another paddle goes, or is asked anew where the board is known. */
export function follow(nextDesign, nextUnits) {
  const isOther = design?.designCode !== nextDesign.designCode || units !== nextUnits;
  if (units && units !== nextUnits) {
    for (const field of Object.keys(FIELDS)) {
      const mm = parseLength($(field).value, units);
      if (mm !== null) $(field).value = lengthFigure(mm, nextUnits);
    }
  }
  [design, units] = [nextDesign, nextUnits];
  if (!isOther) return;
  asking?.abort();
  const wasShown = !$('rack-answer').hidden;
  $('rack-answer').hidden = true;
  $('rack-status').textContent = '';
  if (wasShown) ask(true);
}

async function ask(isFollowing = false) {
  const board = { id: 'of yours', species: design.design.wood.species };
  let wrong = null;
  for (const [field, member] of Object.entries(FIELDS)) {
    const mm = parseLength($(field).value, units);
    setError(field, mm === null ? `Write a length, such as ${units === 'inch' ? '72 or 1 5/16' : '1830'}.` : null);
    if (mm === null) wrong ??= field;
    else board[member] = Number(mm.toFixed(1));
  }
  if (wrong) { if (!isFollowing) $(wrong).focus(); return; }

  asking?.abort();
  const mine = asking = new AbortController();
  const options = { signal: mine.signal, say: (what, seconds) => { $('rack-status').textContent = waiting(what, seconds); } };
  const body = { boards: [board], paddles: [{ id: 'paddle', designCode: design.designCode, count: design.construction ? 1 : MOST, optional: true }], drawing: { units, scale: 'fit' } };
  $('rack-status').textContent = 'Laying it out…';
  try {
    const answer = await postJson('v1/board-layouts', body, options);
    const svg = answer.placements.length ? await postForText('v1/board-layouts', body, 'image/svg+xml', options) : null;
    if (!mine.signal.aborted) show(answer, svg, board, isFollowing);
  } catch (fault) {
    if (mine.signal.aborted) return;
    refuse(fault);
  }
}

function refuse(fault) {
  $('rack-answer').hidden = true;
  if (!(fault instanceof Refusal)) { $('rack-status').textContent = 'The service cannot be reached. Press the button again when the line is back.'; return; }
  let isPlaced = false;
  for (const [pointer, [reason]] of Object.entries(fault.errors)) {
    const field = Object.keys(FIELDS).find(one => pointer.endsWith(`/${FIELDS[one]}`));
    if (!field) continue;
    setError(field, explain(reason));
    isPlaced = true;
  }
  $('rack-status').textContent = isPlaced ? 'Look at the marked answer.' : fault.message;
}

function show(answer, svg, board, isFollowing) {
  const count = answer.placements.length;
  const [cut] = answer.boards;
  $('rack-status').textContent = '';
  $('rack-summary').className = `outcome ${count ? 'met' : ''}`;
  const all = count + answer.unplaced.reduce((sum, one) => sum + one.count, 0);
  $('rack-summary').textContent = count && design.construction
    ? `${count} of the ${all} strips come out of this board${count === all ? '' : '; the others need boards of their own'}.`
    : count
    ? `${count === 1 ? 'One paddle comes' : `${count} such paddles come`} out of this board; ${length(answer.gapMm, units)} and more lie between outlines.`
    : answer.unplaced[0].reasons[0].message;
  $('rack-drawing').hidden = !count;
  $('rack-swipe').hidden = !count;
  if (svg) showPicture($('rack-picture'), svg, `The board with ${count === 1 ? 'the outline' : `${count} outlines`} chalked on it. ${cut.cuts.join(' ')}`);
  $('rack-picture').hidden = !svg;
  $('rack-cuts').replaceChildren(...(cut?.cuts ?? []).map(step => make('li', {}, step)));
  const query = new URLSearchParams({ boardThicknessMm: board.thicknessMm, boardLengthMm: board.lengthMm, boardWidthMm: board.widthMm });
  $('rack-sheet').replaceChildren(...count ? [make('a', { class: 'button', href: `${address(design.links.buildSheetPdf)}?${query}`, download: true }, 'Build sheet with this board')] : []);
  $('rack-answer').hidden = false;
  if (!isFollowing) $('rack-answer').focus();
}
