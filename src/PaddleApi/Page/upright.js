// The paddle upright for a narrow screen, from the stations of the answer: both hands, the balance point, the throat.

import { length, roughLength } from './measure.js';

const SVG = 'http://www.w3.org/2000/svg';
const WIDTH = 340, TALL = 640, TOP = 30, FOOT = 16, MIDDLE = 178;
const FIST_MM = 86; // across the knuckles, about

function draw(name, attributes, text) {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  if (text) element.textContent = text;
  return element;
}

/** An SVG element; what it shows is told by its label as well. */
export function upright(design, units) {
  const { lengths, stations, mass } = design;
  const scale = (TALL - TOP - FOOT) / lengths.overallMm;
  const y = mm => TOP + scale * mm;
  const at = (station, side) => `${(MIDDLE + side * scale * station.halfWidthMm).toFixed(1)} ${y(station.xMm).toFixed(1)}`;
  const outline = `M${[...stations.map(one => at(one, 1)), ...stations.toReversed().map(one => at(one, -1))].join('L')}Z`;
  const balanceMm = mass.finishedCentreOfMassMm;
  const told = [
    ['Top hand', lengths.topHandMm, 1], ['Lower hand', lengths.lowerHandMm, 1], ['Balances', balanceMm, -1], ['Blade from', lengths.throatMm, 1],
  ];
  const svg = draw('svg', {
    viewBox: `0 0 ${WIDTH} ${TALL}`, role: 'img',
    'aria-label': `The paddle upright, ${length(lengths.overallMm, units)} long. ${told.map(([name, mm]) => `${name} ${roughLength(mm, units)} from the top`).join(', ')}.`,
  });
  svg.append(draw('path', { d: outline, class: 'u-wood' }));
  for (const mm of [lengths.topHandMm, lengths.lowerHandMm]) {
    svg.append(draw('rect', { x: MIDDLE - 19, y: y(mm - FIST_MM / 2), width: 38, height: scale * FIST_MM, rx: 9, class: 'u-hand' }));
  }

  // The throat's lettering keeps clear of the lower hand's above it.
  let last = -Infinity;
  for (const [name, mm, side] of told) {
    const level = side > 0 ? Math.max(y(mm), last + 36) : y(mm);
    if (side > 0) last = level;
    const knee = MIDDLE + side * 34, end = MIDDLE + side * 52, anchor = side > 0 ? 'start' : 'end';
    svg.append(
      draw('path', { d: `M${MIDDLE} ${y(mm)}H${knee}L${end} ${level}`, class: 'u-line' }),
      draw('text', { x: end + side * 5, y: level - 2, 'text-anchor': anchor }, name),
      draw('text', { x: end + side * 5, y: level + 15, 'text-anchor': anchor, class: 'u-figure' }, roughLength(mm, units)));
  }

  const ball = y(balanceMm);
  svg.append(
    draw('circle', { cx: MIDDLE, cy: ball, r: 6, class: 'u-ball' }),
    draw('path', { d: `M${MIDDLE} ${ball}h6a6 6 0 0 1-6 6zM${MIDDLE} ${ball}h-6a6 6 0 0 1 6-6z`, class: 'u-ink' }),
    draw('path', { d: `M22 ${TOP}V${TALL / 2 - 46}M22 ${TALL / 2 + 46}V${TALL - FOOT}M16 ${TOP}h12M16 ${TALL - FOOT}h12`, class: 'u-line' }),
    draw('text', { x: 22, y: TALL / 2, transform: `rotate(-90 22 ${TALL / 2})`, 'text-anchor': 'middle', 'dominant-baseline': 'central', class: 'u-figure' }, length(lengths.overallMm, units)));
  return svg;
}
