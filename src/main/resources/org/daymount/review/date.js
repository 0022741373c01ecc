// When a picture was taken, as the person knows it.

import { change, state } from './ask.js';
import { el } from './parts.js';

/** Beside the other buttons of a picture. */
export function dateButton(photo) {
  return el(
    'button',
    {
      type: 'button',
      'data-at': `date${photo.photo}`,
      'aria-label': `Change the date of ${photo.name}`,
      onclick: () => askDate(photo),
    },
    'Date',
  );
}

/** What the person said of it, or where its date is from unless its camera wrote it. */
export function dateWords(photo) {
  if (photo.dated.said) {
    return `you said ${photo.dated.said}; ${photo.dated.own}`;
  }
  return photo.dated.camera ? null : photo.dated.own;
}

function askDate(photo) {
  const opener = document.activeElement?.dataset.at;
  const day = el('input', { type: 'date', id: 'date-day', required: true, value: photo.dated.day ?? '' });
  const time = el('input', { type: 'time', id: 'date-time', value: photo.dated.clock ?? '', 'aria-describedby': 'date-help' });
  const ask = (said) => {
    dialog.close();
    change({ what: 'given', photo: photo.photo, ...said });
  };
  const dialog = el(
    'dialog',
    { class: 'asks-first', 'aria-labelledby': 'date-title' },
    el(
      'form',
      {
        method: 'dialog',
        onsubmit: (event) => {
          event.preventDefault();
          ask({ day: day.value, time: time.value || null });
        },
      },
      el('h2', { id: 'date-title' }, `When was ${photo.name.split('/').at(-1)} taken?`),
      el('p', { class: 'quiet' }, `${photo.dated.own[0].toUpperCase()}${photo.dated.own.slice(1)}. The file stays as it is.`),
      el('label', { for: 'date-day' }, 'Day', day),
      el('label', { for: 'date-time' }, 'Time, if you know it', time),
      el('p', { class: 'quiet', id: 'date-help' }, nightWords()),
      el(
        'div',
        { class: 'buttons' },
        el('button', { class: 'main', 'data-at': 'date-use' }, 'Use this date'),
        photo.dated.said
          ? el('button', { type: 'button', 'data-at': 'date-back', onclick: () => ask({ day: null }) }, 'Take its own date again')
          : null,
        el('button', { type: 'button', 'data-at': 'date-not', onclick: () => dialog.close() }, 'Cancel'),
      ),
    ),
  );
  dialog.addEventListener('close', () => {
    dialog.remove();
    if (opener) document.querySelector(`[data-at="${CSS.escape(opener)}"]`)?.focus();
  });
  document.body.append(dialog);
  dialog.showModal();
}

function nightWords() {
  const from = state.month.dayStarts;
  return from === '00:00' ? '' : `What was taken before ${from} belongs to the evening before.`;
}
