// Pictures that are alike, side by side, pixel for pixel: which one is sharp, who has eyes shut.

import { detailAddress } from './ask.js';
import { el } from './parts.js';

const STEP = 0.08; // of the picture, for an arrow key

/**
 * @param photos that are alike, in order of time
 * @param where the day and space they may be put in, with `put(photo, space)`
 */
export function showSideBySide(photos, where) {
  const at = { ...(photos.find((photo) => photo.focus)?.focus ?? { x: 0.5, y: 0.5 }) };
  const images = photos.map((photo) =>
    el('img', { alt: `${photo.name}, pixel for pixel`, width: 640, height: 640, draggable: 'false' }),
  );
  const frames = el(
    'ul',
    {
      class: 'frames',
      tabindex: '0',
      'aria-label': 'The pictures. Arrow keys move all of them.',
      onkeydown: (event) => {
        const step = {
          ArrowLeft: [-STEP, 0],
          ArrowRight: [STEP, 0],
          ArrowUp: [0, -STEP],
          ArrowDown: [0, STEP],
        }[event.key];
        if (step && event.target === frames) {
          event.preventDefault();
          move(step[0], step[1]);
        }
      },
    },
    photos.map((photo, i) =>
      el(
        'li',
        {},
        images[i],
        el('p', { class: 'file' }, el('span', { class: 'time' }, photo.time ?? ''), ` ${photo.name.split('/').at(-1)}`),
        where.space
          ? el(
              'button',
              {
                type: 'button',
                disabled: !photo.readable,
                'aria-label': `Put ${photo.name} in space ${where.space.space + 1}`,
                onclick: () => {
                  dialog.close();
                  where.put(photo.photo, where.space.space);
                },
              },
              `Put in space ${where.space.space + 1}`,
            )
          : null,
      ),
    ),
  );
  images.forEach((image, i) =>
    image.addEventListener('click', (event) => {
      const box = image.getBoundingClientRect();
      move(
        (event.clientX - box.left - box.width / 2) / photos[i].width,
        (event.clientY - box.top - box.height / 2) / photos[i].height,
      );
    }),
  );
  const dialog = el(
    'dialog',
    { class: 'side', 'aria-labelledby': 'side-title' },
    el('h2', { id: 'side-title' }, `${photos.length} alike, pixel for pixel`),
    el(
      'p',
      { class: 'quiet' },
      'Click where to look, or move all with the arrow keys. Escape closes this.',
    ),
    frames,
    el(
      'div',
      { class: 'buttons' },
      el('button', { type: 'button', onclick: () => dialog.close() }, 'Close'),
    ),
  );
  const opener = document.activeElement?.dataset.at;
  dialog.addEventListener('close', () => {
    dialog.remove();
    if (opener) document.querySelector(`[data-at="${CSS.escape(opener)}"]`)?.focus();
  });

  function move(x, y) {
    at.x = Math.max(0, Math.min(1, at.x + x));
    at.y = Math.max(0, Math.min(1, at.y + y));
    draw();
  }

  function draw() {
    const milli = (part) => Math.round(part * 1000);
    images.forEach((image, i) => {
      image.src = detailAddress(photos[i].photo, milli(at.x), milli(at.y));
    });
  }

  draw();
  document.body.append(dialog);
  dialog.showModal();
  frames.focus();
}
