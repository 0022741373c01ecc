// Small pieces of page.

import { pictureAddress } from './ask.js';

/** An element with attributes, listeners (on…) and children; text is always text. */
export function el(tag, given = {}, ...children) {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(given)) {
    if (name.startsWith('on')) {
      made.addEventListener(name.slice(2), value);
    } else if (value === true) {
      made.setAttribute(name, '');
    } else if (value !== false && value !== null && value !== undefined) {
      made.setAttribute(name, value);
    }
  }
  made.append(...children.flat().filter((child) => child !== null && child !== undefined));
  return made;
}

export function svg(tag, given = {}, ...children) {
  const made = document.createElementNS('http://www.w3.org/2000/svg', tag);
  for (const [name, value] of Object.entries(given)) {
    made.setAttribute(name, value);
  }
  made.append(...children);
  return made;
}

export const percent = (part, whole) => `${(100 * part) / whole}%`;

/**
 * A space at the scale of `--in` (one inch): its mat, the piece on it, and the part of the picture
 * that will be printed.
 */
export function printed(space, edge) {
  const frame = el('span', { class: 'space' });
  frame.style.width = `calc(var(--in) * ${space.whole.width})`;
  frame.style.aspectRatio = `${space.whole.width} / ${space.whole.height}`;
  if (!space.photo) {
    frame.classList.add('missing');
    frame.append(el('span', { class: 'word' }, 'missing'));
    return frame;
  }
  const piece = el('span', { class: 'piece' });
  piece.style.width = percent(space.piece.width, space.whole.width);
  piece.style.height = percent(space.piece.height, space.whole.height);
  const cut = el('span', { class: 'cut' });
  cut.style.width = percent(space.printed.width, space.piece.width);
  cut.style.height = percent(space.printed.height, space.piece.height);
  const image = el('img', {
    src: pictureAddress(space.photo, space.turns, edge),
    alt: '',
    draggable: 'false',
    decoding: 'async',
  });
  image.style.width = percent(space.picture.width, space.crop.width);
  image.style.height = percent(space.picture.height, space.crop.height);
  image.style.left = percent(-space.crop.x, space.crop.width);
  image.style.top = percent(-space.crop.y, space.crop.height);
  cut.append(image);
  piece.append(cut);
  frame.append(piece);
  if (space.reveal > 0) {
    frame.classList.add('mat');
  }
  return frame;
}

/** The picture of a space drawn by printed(), cut anew at once, before the program has answered. */
export function recut(frame, crop, picture, piece) {
  const image = frame.querySelector('.cut img');
  const cut = frame.querySelector('.cut');
  if (!image || !cut) {
    return;
  }
  cut.style.width = '100%';
  cut.style.height = percent(piece.width * (crop.height / crop.width), piece.height);
  image.style.width = percent(picture.width, crop.width);
  image.style.height = percent(picture.height, crop.height);
  image.style.left = percent(-crop.x, crop.width);
  image.style.top = percent(-crop.y, crop.height);
}

/** Photos are dragged by their id, so that nothing else can be dropped on a space. */
export const DRAGGED = 'text/x-photo';

/** @param put called with the photo that was dropped on the element */
export function takesPhotos(element, put) {
  element.addEventListener('dragover', (event) => {
    if (event.dataTransfer.types.includes(DRAGGED)) {
      event.preventDefault();
      element.classList.add('over');
    }
  });
  element.addEventListener('dragleave', () => element.classList.remove('over'));
  element.addEventListener('drop', (event) => {
    event.preventDefault();
    element.classList.remove('over');
    put(event.dataTransfer.getData(DRAGGED));
  });
}

/** "1 picture", "3 pictures" */
export const counted = (count, what) => `${count} ${what}${count === 1 ? '' : 's'}`;

/** "Wednesday 3" */
export const dayName = (day) => `${day.weekday} ${day.number}`;

/** Keeps the focus where it was when a part is drawn again: by the name in data-at. */
export function redraw(place, ...children) {
  const at = place.contains(document.activeElement)
    ? document.activeElement.closest('[data-at]')?.dataset.at
    : null;
  place.replaceChildren(...children.flat().filter(Boolean));
  if (at) {
    place.querySelector(`[data-at="${CSS.escape(at)}"]`)?.focus({ preventScroll: true });
  }
}

/** Sizes of spaces, with the names they have where paper is sold in centimetres (common practice). */
export const SIZES = [
  ['3x4', '3 × 4 in (7.5 × 10 cm)'],
  ['4x4', '4 × 4 in (10 × 10 cm)'],
  ['4x6', '4 × 6 in (10 × 15 cm)'],
  ['5x7', '5 × 7 in (13 × 18 cm)'],
  ['6x8', '6 × 8 in (15 × 20 cm)'],
];

export const sizeName = (size, units) =>
  measured(SIZES.find(([name]) => name === size)?.[1] ?? `${size} in`, units);

/** Centimetres first, for whoever measures in them: `10 × 15 cm (4 × 6 in)`. */
export const measured = (words, units) =>
  units === 'cm' ? words.replace(/([\d½.]+ × [\d.]+) in(.*) \(([\d.]+ × [\d.]+) cm\)/, '$3 cm$2 ($1 in)') : words;

/**
 * What so many pixels per inch look like on paper, in a word that needs no glossary. Below half of
 * the least asked for, single pixels can be seen (common practice, no source).
 */
export function sharpness(ppi, { minPpi, ppi: wanted }) {
  if (ppi < minPpi / 2) {
    return 'too small';
  }
  if (ppi < minPpi) {
    return 'soft';
  }
  return ppi < wanted ? 'sharp enough to print' : 'sharp';
}

/** Asks before something is done; Escape is no. */
export function confirmed(question, yes, no) {
  return new Promise((answered) => {
    const answer = (value) => () => dialog.close(value);
    const dialog = el(
      'dialog',
      { class: 'asks-first', 'aria-labelledby': 'asks-first' },
      el('p', { id: 'asks-first' }, question),
      el(
        'div',
        { class: 'buttons' },
        el('button', { type: 'button', 'data-at': 'yes', onclick: answer('yes') }, yes),
        el('button', { type: 'button', class: 'main', autofocus: true, 'data-at': 'no', onclick: answer('') }, no),
      ),
    );
    dialog.addEventListener('close', () => {
      dialog.remove();
      answered(dialog.returnValue === 'yes');
    });
    document.body.append(dialog);
    dialog.showModal();
  });
}
