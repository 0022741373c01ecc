// Making the sheets, and looking at each before it is printed.

import { get, post, notice, progressAddress, sheetAddress, state } from './ask.js';
import { counted, dayName, el, sizeName } from './parts.js';
import { progressPart } from './progress.js';
import { said } from './words.js';

export const view = { path: 'sheets', words: () => 'Sheets', show: showSheets };

/** What is made, with what a person does with it. */
const FILES = [
  ['sheets.pdf', 'Print at home', 'sheets.pdf: every sheet, at true size'],
  ['sheets', 'Take to the lab', 'the folder with a picture for each sheet'],
  ['guide.pdf', 'Cut and mount', 'guide.pdf: what to buy, cuts in order, each page'],
  ['pages.pdf', 'See the album', 'pages.pdf: as it will look, leaf by leaf'],
  ['index.html', 'The month at a glance', 'index.html: every choice with its reasons'],
  ['', 'Show the folder', 'everything that was made'],
];

const MOST_ALIKE = 3; // things told one by one; of more of a kind the first stands for all

/** Those of one kind together, in the order of their first. */
function alike(warnings) {
  const groups = new Map();
  for (const warning of warnings) {
    groups.set(warning.code, [...(groups.get(warning.code) ?? []), warning]);
  }
  return [...groups.values()];
}

const text = (warning) =>
  said(`${warning.file && !warning.text.includes(warning.file) ? `${warning.file}: ` : ''}${warning.text}`);

/** The program's words, which say what to do, and the way there. */
function inWords(warning) {
  const day = state.month.days.find((each) => each.day === warning.day);
  return [
    `${text(warning)} `,
    day ? el('a', { href: `#/day/${day.day}` }, `Open ${dayName(day)}`) : null,
  ];
}

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
  const make = el('button', { type: 'button', class: 'main', id: 'make', onclick: () => start(false) }, 'Make the sheets');
  const replace = el('button', { type: 'button', id: 'replace', hidden: true, onclick: () => start(true) }, 'Make a new one, and keep that one beside it');
  const words = el('p', { role: 'status', id: 'made' });
  const progress = progressPart('making');
  progress.node.hidden = true;
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
  const files = el('ul', { class: 'files', 'aria-label': 'What was made', hidden: true });
  root.replaceChildren(
    el('h1', {}, 'Sheets'),
    el(
      'p',
      { class: 'quiet' },
      `Prints of ${sizeName(state.month.sheet, state.month.units)}. They are written to ${state.month.out}, with the guide for cutting and mounting.`,
    ),
    el('div', { class: 'buttons' }, make, trueSize),
    words,
    replace,
    progress.node,
    files,
    told,
    list,
  );
  let events = null;

  async function start(force) {
    say({ kind: 'running', words: 'beginning', done: 0, steps: 0 });
    try {
      follow(await post('make', { force }));
    } catch (failure) {
      notice(failure.message);
      update();
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
    progress.node.hidden = !running;
    if (running) {
      progress.say(now);
    }
    words.dataset.state = now.kind;
    words.classList.toggle('warn', now.kind === 'failed');
    words.textContent = {
      idle: '',
      running: '',
      done: `Made: ${now.words}.`,
      failed: `Not made: ${said(now.words)}`,
    }[now.kind];
  }

  function draw(made) {
    say(made.state);
    if (made.state.kind === 'done' && !made.upToDate) {
      words.textContent = 'Something was changed since these were made: make them again. Only what changed is drawn.';
      words.classList.add('warn');
    }
    replace.hidden = !(made.state.kind === 'failed' && made.inTheWay);
    if (made.inTheWay && made.state.kind === 'failed') {
      words.textContent = `Not made: ${made.state.words.split(';')[0]}.`;
    }
    if (made.state.kind === 'idle') {
      words.textContent = made.files.length > 0
        ? 'These were made before. Make them again if something was changed since; only what changed is drawn.'
        : 'Nothing is made yet. Look through the month as long as you like: the sheets are made as it stands then.';
    }
    drawFiles(replace.hidden ? made.files : [], made.state.kind === 'running'); // not the one in the way
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

  function drawFiles(there, running) {
    files.hidden = !state.start || there.length === 0 || running;
    files.replaceChildren(...FILES.filter(([file]) => file === '' || there.includes(file)).map(([file, text, what]) => el(
      'li',
      {},
      el('button', { type: 'button', 'data-file': file || 'folder', onclick: () => showFile(file) }, el('b', {}, text), el('span', { class: 'quiet' }, what)),
    )));
  }

  /** What was left out or wants a look. */
  function drawTold(warnings) {
    told.hidden = warnings.length === 0;
    told.replaceChildren(
      el('h2', { id: 'told' }, `${counted(warnings.length, 'thing')} to know before printing`),
      el('ul', {}, alike(warnings).flatMap((group) =>
        group.length <= MOST_ALIKE
          ? group.map((warning) => el('li', {}, inWords(warning)))
          : el('li', {}, el(
            'details',
            {},
            el('summary', {}, `${group.length} like this: ${text(group[0])}`),
            el('ul', {}, group.map((warning) => el('li', {}, inWords(warning)))),
          )))),
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
