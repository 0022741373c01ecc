// Making the sheets, and looking at each before it is printed.

import { get, post, notice, progressAddress, sheetAddress, state } from './ask.js';
import { counted, dayName, el } from './parts.js';

export const view = { path: 'sheets', words: () => 'Sheets', show: showSheets };

/** What is made, with what a person does with it. */
const FILES = [
  ['sheets.pdf', 'Print at home (sheets.pdf)'],
  ['sheets', 'Pictures for the lab (folder)'],
  ['pages.pdf', 'The album as it will look (pages.pdf)'],
  ['guide.pdf', 'How to cut and mount (guide.pdf)'],
  ['index.html', 'The month at a glance (index.html)'],
  ['', 'Show the folder'],
];

const capital = (words) => words.charAt(0).toUpperCase() + words.slice(1);

/** By the program of this computer that a double-click would start. */
async function showFile(file) {
  try {
    const { shown, place } = await post('start/show', { file });
    notice(shown ? '' : `It cannot be opened from here; it is ${place}.`);
  } catch (failure) {
    notice(failure.message);
  }
}

function showSheets(root) {
  const make = el('button', { type: 'button', class: 'main', id: 'make', onclick: start }, 'Make the sheets');
  const words = el('p', { role: 'status', id: 'made' });
  const bar = el('progress', { 'aria-label': 'Making the sheets', hidden: true });
  const list = el('ol', { class: 'sheets' });
  const told = el('section', { class: 'told', 'aria-labelledby': 'told', hidden: true });
  const trueSize = el('button', {
    type: 'button',
    'aria-pressed': 'false',
    hidden: true,
    onclick: () => {
      const large = list.classList.toggle('true');
      trueSize.setAttribute('aria-pressed', String(large));
    },
  }, 'At true size');
  const files = el('div', { class: 'buttons files', hidden: true }, FILES.map(([file, text]) =>
    el('button', { type: 'button', onclick: () => showFile(file) }, text)));
  root.replaceChildren(
    el('h1', {}, 'Sheets'),
    el(
      'p',
      { class: 'quiet' },
      `Prints of ${state.month.sheet} in. They are written to ${state.month.out}, with the guide for cutting and mounting.`,
    ),
    el('div', { class: 'buttons' }, make, trueSize),
    words,
    bar,
    files,
    told,
    list,
  );
  let events = null;

  async function start() {
    try {
      follow(await post('make', {}));
    } catch (failure) {
      notice(failure.message);
    }
  }

  function follow(made) {
    draw(made);
    if (made.state.kind !== 'running' || events) {
      return;
    }
    events = new EventSource(progressAddress());
    events.onmessage = async (event) => {
      const now = JSON.parse(event.data);
      say(now);
      if (now.kind !== 'running') {
        leave();
        draw(await get('sheets'));
      }
    };
    events.onerror = () => leave();
  }

  function say(now) {
    const running = now.kind === 'running';
    make.disabled = running;
    bar.hidden = !running;
    if (running && now.steps > 0) {
      bar.max = now.steps;
      bar.value = now.done;
    } else {
      bar.removeAttribute('value');
    }
    words.dataset.state = now.kind;
    words.classList.toggle('warn', now.kind === 'failed');
    words.textContent = {
      idle: '',
      running: now.steps > 0 ? `${capital(now.words)}: ${now.done} of ${now.steps}` : `${capital(now.words)} …`,
      done: `Made: ${now.words}.`,
      failed: `Not made: ${now.words}`,
    }[now.kind];
  }

  function draw(made) {
    say(made.state);
    if (made.state.kind === 'done' && !made.upToDate) {
      words.textContent = 'Something was changed since these were made: make them again. Only what changed is drawn.';
      words.classList.add('warn');
    }
    files.hidden = !state.start || made.sheets.length === 0;
    drawTold(made.warnings);
    trueSize.hidden = made.sheets.length === 0;
    list.replaceChildren(
      ...made.sheets.map((sheet, i) => {
        const image = el('img', {
          src: sheetAddress(i, made.run),
          alt: `Sheet ${i + 1} with ${sheet.pieces.length === 1 ? 'piece' : 'pieces'} ${sheet.pieces.join(', ')}`,
          loading: 'lazy',
        });
        image.style.setProperty('--wide', sheet.width);
        image.style.setProperty('--tall', sheet.height);
        image.style.aspectRatio = `${sheet.width} / ${sheet.height}`;
        return el(
          'li',
          {},
          el(
            'figure',
            {},
            image,
            el(
              'figcaption',
              {},
              `Sheet ${i + 1}: ${sheet.pieces.join(', ')}; ${sheet.cuts === 0 ? 'no cut' : counted(sheet.cuts, 'cut')}`,
            ),
          ),
        );
      }),
    );
  }

  /** What was left out or wants a look: the program's words, which say what to do, and the way there. */
  function drawTold(warnings) {
    told.hidden = warnings.length === 0;
    told.replaceChildren(
      el('h2', { id: 'told' }, `${counted(warnings.length, 'thing')} to know before printing`),
      el('ul', {}, warnings.map((warning) => {
        const day = state.month.days.find((each) => each.day === warning.day);
        return el(
          'li',
          {},
          warning.file && !warning.text.includes(warning.file) ? `${warning.file}: ` : '',
          `${warning.text} `,
          day ? el('a', { href: `#/day/${day.day}` }, `Open ${dayName(day)}`) : null,
        );
      })),
    );
  }

  function leave() {
    events?.close();
    events = null;
  }

  const update = async () => follow(await get('sheets'));
  update();
  return { title: 'Sheets', update, leave };
}
