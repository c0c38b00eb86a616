// Lengths and weights as people write and read them. Millimetres and grams inside, whatever is on the screen.

export const MM_PER_INCH = 25.4;
const G_PER_OUNCE = 28.349523125;
const OUNCES_PER_POUND = 16;
const FINE_UP_TO_MM = 300;

// Unicode's vulgar fractions that a phone's keyboard offers.
const GLYPHS = { '½': '1/2', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8', '⅓': '1/3', '⅔': '2/3' };
const LENGTH_UNITS = [
  [/^(?:mm|millimet(?:er|re)s?)$/, 1],
  [/^(?:cm|centimet(?:er|re)s?)$/, 10],
  [/^(?:m|met(?:er|re)s?)$/, 1000],
  [/^(?:"|in|ins|inch|inches)$/, MM_PER_INCH],
  [/^(?:'|ft|foot|feet)$/, 12 * MM_PER_INCH],
];
const MASS_UNITS = [
  [/^(?:g|grams?|grammes?)$/, 1],
  [/^(?:kg|kilos?|kilograms?)$/, 1000],
  [/^(?:oz|ounces?)$/, G_PER_OUNCE],
  [/^(?:lbs?|pounds?)$/, OUNCES_PER_POUND * G_PER_OUNCE],
];

/** Millimetres of what was typed, such as 880, 88 cm, 35 1/2, 35½", 35.5 or 5' 10"; null when it cannot be read. */
export const parseLength = (text, units) => parse(text, LENGTH_UNITS, units === 'inch' ? MM_PER_INCH : 1);

/** Grams of what was typed, such as 930, 0.93 kg, 32.8 oz or 2 lb 1 oz; null when it cannot be read. */
export const parseMass = (text, units) => parse(text, MASS_UNITS, units === 'inch' ? G_PER_OUNCE : 1);

// A sum of figures, each with its unit; only one that stands alone may do without, and takes the page's.
function parse(text, table, own) {
  let rest = text.trim().toLowerCase().replace(/[″”“]|''/g, '"').replace(/[′’]/g, "'");
  for (const [glyph, plain] of Object.entries(GLYPHS)) rest = rest.replaceAll(glyph, ` ${plain}`);
  rest = rest.replace(/(\d)-(?=\d+\/)/g, '$1 ').replaceAll('⁄', '/').replace(/\s+/g, ' ').trim();
  const part = /^(?:(\d+) (\d+)\/(\d+)|(\d+)\/(\d+)|(\d+(?:[.,]\d+)?|[.,]\d+)) ?([a-z]+|["'])? ?/;
  let sum = 0, parts = 0, bare = 0, last = Infinity;
  while (rest) {
    const found = part.exec(rest);
    if (!found) return null;
    const [all, whole, over, under, onlyOver, onlyUnder, decimal, unit] = found;
    // 1,500 may be fifteen hundred or one and a half: wood is cut to it, so it is asked again.
    if (decimal && /,\d{3}$/.test(decimal)) return null;
    const figure = decimal ? Number(decimal.replace(',', '.'))
      : whole ? Number(whole) + Number(over) / Number(under)
      : Number(onlyOver) / Number(onlyUnder);
    // In 5' 10 the second figure is inches.
    const size = unit ? table.find(([names]) => names.test(unit))?.[1] : last === 12 * MM_PER_INCH ? MM_PER_INCH : own;
    if (size === undefined || !Number.isFinite(figure) || size >= last) return null;
    sum += figure * size;
    parts += 1;
    bare += unit || last < Infinity ? 0 : 1;
    last = size;
    rest = rest.slice(all.length);
  }
  return parts === 0 || (bare > 0 && parts > 1) ? null : sum;
}

/** Inches and a reduced fraction, such as 35 7/16. */
export function inches(mm, denominator, round = Math.round) {
  let steps = round(Math.abs(mm) / MM_PER_INCH * denominator), parts = denominator;
  const whole = Math.floor(steps / parts);
  steps -= whole * parts;
  while (steps > 0 && steps % 2 === 0) [steps, parts] = [steps / 2, parts / 2];
  const fraction = steps === 0 ? '' : `${steps}/${parts}`;
  return `${mm < 0 && (whole || steps) ? '−' : ''}${[whole || !fraction ? String(whole) : '', fraction].filter(Boolean).join(' ')}`;
}

/** A length without its unit, as the service's drawings print it: tenths of a millimetre, or sixteenths (small ones thirty-seconds). */
export const lengthFigure = (mm, units) => units === 'inch'
  ? inches(mm, Math.abs(mm) > FINE_UP_TO_MM ? 16 : 32)
  : decimal(mm, 1);

// A size stated to a tenth of a millimetre is known to half of one.
const SAME_MM = 0.05;

/** A thickness that a limit holds: never less than is meant. */
export const lengthUp = (mm, units) => units === 'inch'
  ? inches(Math.max(0, mm - SAME_MM), mm > FINE_UP_TO_MM ? 16 : 32, Math.ceil)
  : decimal(Math.ceil(mm * 10 - 1e-6) / 10, 1);

export const unitName = units => units === 'inch' ? 'in' : 'mm';
export const massUnitName = units => units === 'inch' ? 'oz' : 'g';

// A figure and its unit stay on one line.
const together = text => text.replaceAll(' ', '\u00a0');

/** The same with its unit. */
export const length = (mm, units) => together(`${lengthFigure(mm, units)} ${unitName(units)}`);

/** A place found with a finger or a tape. */
export const roughLength = (mm, units) => together(`${units === 'inch' ? inches(mm, 16) : decimal(mm, 0)} ${unitName(units)}`);

/** A weight without its unit, for a field. */
export const massFigure = (g, units) => units === 'inch' ? decimal(g / G_PER_OUNCE, 1) : decimal(g, 0);

/** A weight; an inch shop reads grams beside its ounces, for that is what its kitchen scale shows. */
export const mass = (g, units) => together(units === 'inch' ? `${fixed(g / G_PER_OUNCE, 1)} oz (${decimal(g, 0)} g)` : `${decimal(g, 0)} g`);

/** A sentence of the service that only speaks millimetres, for an inch shop. */
export const inUnits = (text, units) => units === 'inch' ? text?.replace(/(\d+(?:\.\d+)?) mm\b/g, (_, mm) => roughLength(Number(mm), units)) : text;

export const fixed = (value, places) => value.toFixed(places).replace('-', '−');

export const decimal = (value, places) => {
  const text = Number(value.toFixed(places)).toString();
  return text === '-0' ? '0' : text.replace('-', '−');
};
