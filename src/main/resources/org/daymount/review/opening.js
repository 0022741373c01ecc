// While the pictures are still being looked at: how far that is.

import { openingAddress } from './ask.js';
import { el } from './parts.js';

/** Shows the progress until the month is open; fails with the reason if it cannot be opened. */
export function showOpening(root) {
  const words = el('p', { role: 'status', id: 'opening' }, 'Looking at the pictures …');
  const count = el('p', { class: 'quiet', 'aria-hidden': 'true' });
  const bar = el('progress', { 'aria-labelledby': 'opening' });
  root.replaceChildren(
    el('h1', {}, 'Opening the month'),
    words,
    bar,
    count,
    el(
      'p',
      { class: 'quiet' },
      'What is found out now is kept, so the next start is much quicker. The page opens by itself.',
    ),
  );
  document.title = 'Opening · Daymount';
  return new Promise((opened, failed) => {
    const events = new EventSource(openingAddress());
    events.onmessage = (event) => {
      const now = JSON.parse(event.data);
      if (now.kind === 'running') {
        say(now);
        return;
      }
      events.close();
      now.kind === 'done' ? opened() : failed(new Error(now.words));
    };
    events.onerror = () => {
      events.close();
      failed(new Error('the review has ended; the window it was started in says why'));
    };
  });

  let since = { words: '', at: 0 };

  /** How long this part will still take, once enough of it is done to tell. */
  function left(now) {
    if (since.words !== now.words) {
      since = { words: now.words, at: performance.now(), done: now.done };
    }
    const done = now.done - since.done;
    const seconds = (((performance.now() - since.at) / done) * (now.steps - now.done)) / 1000;
    if (done < 5 || seconds < 3) {
      return '';
    }
    return seconds < 90
      ? `, about ${Math.ceil(seconds / 5) * 5} seconds left`
      : `, about ${Math.ceil(seconds / 60)} minutes left`;
  }

  function say(now) {
    const known = now.steps > 0;
    // a screen reader is told of each part once, not of each picture
    const text = now.words.charAt(0).toUpperCase() + now.words.slice(1);
    if (words.dataset.of !== now.words) {
      words.dataset.of = now.words;
      words.textContent = known ? `${text} (${now.steps})` : `${text} …`;
    }
    count.textContent = known ? `${now.done} of ${now.steps}${left(now)}` : '';
    if (known) {
      bar.max = now.steps;
      bar.value = now.done;
    } else {
      bar.removeAttribute('value');
    }
  }
}
