// Small helpers for building the page: text stays text, nothing is ever read as markup.

export const $ = id => document.getElementById(id);

/** An element with properties, and children that are elements or text. */
export function make(name, properties = {}, ...children) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(properties)) {
    if (value === undefined || value === null || value === false) continue;
    if (key === 'class') element.className = value;
    else if (key.startsWith('on')) element.addEventListener(key.slice(2), value);
    else element.setAttribute(key, value === true ? '' : value);
  }
  element.append(...children.flat(Infinity).filter(child => child !== undefined && child !== null && child !== false && child !== ''));
  return element;
}

/** Puts a picture fetched as text into an img; the one before it is let go. */
export function showPicture(image, svg, alt) {
  const before = image.src;
  image.src = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  image.alt = alt;
  if (before.startsWith('blob:')) URL.revokeObjectURL(before);
}

const ENTITIES = { '&lt;': '<', '&gt;': '>', '&quot;': '"', '&amp;': '&' };

/** The description that a drawing brings with it, for who cannot see it. */
export const descriptionOf = svg => (/<desc[^>]*>([^<]*)<\/desc>/.exec(svg)?.[1] ?? '').replace(/&(?:lt|gt|quot|amp);/g, entity => ENTITIES[entity]).trim();

/** Copies a text; says on the button what came of it. */
export function copyButton(label, text) {
  const button = make('button', { type: 'button', class: 'quiet copy' }, label);
  button.addEventListener('click', async () => {
    let said = 'Copied';
    try {
      await navigator.clipboard.writeText(text());
    } catch {
      // Without a secure line a page may not write there: mark the text, so that one keystroke does.
      const block = button.parentElement.querySelector('pre');
      if (block) getSelection().selectAllChildren(block);
      said = block ? 'Marked: press Ctrl+C' : 'Copy the address of this page';
    }
    button.textContent = said;
    setTimeout(() => { button.textContent = label; }, 2500);
  });
  return button;
}

/** Marks a field as wrong with the reason beside it, or as right again. */
export function setError(field, text) {
  const input = $(field), place = $(`${field}-error`);
  if (text) input.setAttribute('aria-invalid', 'true');
  else input.removeAttribute('aria-invalid');
  if (place.textContent !== (text ?? '')) place.textContent = text ?? '';
  place.hidden = !text;
  const described = [place.hidden ? null : place.id, $(`${field}-hint`)?.id].filter(Boolean).join(' ');
  if (described) input.setAttribute('aria-describedby', described);
  else input.removeAttribute('aria-describedby');
}

export const capital = text => text ? text[0].toUpperCase() + text.slice(1) : text;
