// While the pictures are still being looked at: how far that is.

import { openingAddress } from './ask.js';
import { el } from './parts.js';
import { progressPart } from './progress.js';

/** Shows the progress until the month is open; fails with the reason if it cannot be opened. */
export function showOpening(root) {
  const progress = progressPart('opening');
  progress.say({ words: 'looking at the pictures', done: 0, steps: 0 });
  root.replaceChildren(
    el(
      'div',
      { class: 'waiting' },
      el('h1', {}, 'Opening the month'),
      progress.node,
      el(
        'p',
        { class: 'quiet' },
        'What is found out now is kept, so the next start is much quicker. The page opens by itself.',
      ),
    ),
  );
  document.title = 'Opening · Daymount';
  return new Promise((opened, failed) => {
    const events = new EventSource(openingAddress());
    events.onmessage = (event) => {
      const now = JSON.parse(event.data);
      if (now.kind === 'running') {
        progress.say(now);
        return;
      }
      events.close();
      now.kind === 'done' ? opened() : failed(new Error(now.words));
    };
    events.onerror = () => {
      events.close();
      failed(new Error('Daymount has ended; start it again'));
    };
  });
}
