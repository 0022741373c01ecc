// What the album is: every option of `daymount sheets`, asked in words. What is asked here by a
// list can also be typed; an option the program has and this page has no question for is asked in
// the words of the program's own help.

import { el, measured } from './parts.js';

const TYPED = 'typed'; // the choice that opens a field to type in

/** The option of the program, its question, and what may be chosen. */
const QUESTIONS = [
  {
    option: 'page',
    ask: 'Size of the album’s pages',
    among: [
      ['', '6 × 8 in (15 × 20 cm)'],
      ['8.5x11', '8½ × 11 in'],
      ['12x12', '12 × 12 in (30 × 30 cm)'],
      ['9x12', '9 × 12 in (23 × 30 cm)'],
      ['A5', 'A5 (14.8 × 21 cm)'],
      ['A4', 'A4 (21 × 29.7 cm)'],
    ],
    hint: '7x9, 20x25cm',
  },
  {
    option: 'space',
    ask: 'What a page usually holds',
    among: [
      ['', 'one 4 × 6 in picture (10 × 15 cm)'],
      ['4x6 on mat', 'one 4 × 6 in picture on a mat'],
      ['two 4x6', 'two 4 × 6 in pictures'],
      ['two 3x4', 'two 3 × 4 in pictures (7.5 × 10 cm)'],
      ['four 3x4', 'four 3 × 4 in pictures'],
      ['5x7', 'one 5 × 7 in picture (13 × 18 cm)'],
      ['6x8', 'one 6 × 8 in picture (15 × 20 cm)'],
    ],
    hint: '4x6 portrait, two 3x4 on mat',
  },
  {
    option: 'cards',
    ask: 'Story cards',
    among: [
      ['', 'none'],
      ['auto', 'where there is a story, as large as its place'],
      ['3x4', '3 × 4 in (7.5 × 10 cm), for every day'],
      ['4x6', '4 × 6 in (10 × 15 cm), for every day'],
    ],
    hint: '3x3, 8x10cm',
  },
  {
    option: 'card-heading',
    ask: 'On top of a card stands',
    among: [
      ['', 'the date'],
      ['number', 'the day’s number'],
      ['none', 'nothing, so that pages can be moved'],
    ],
  },
  {
    option: 'reveal',
    ask: 'How wide a mat shows on each side',
    among: [
      ['', '1/8 in (3 mm)'],
      ['1/16in', '1/16 in (1.5 mm)'],
      ['1/4in', '1/4 in (6 mm)'],
      ['3/8in', '3/8 in (10 mm)'],
    ],
    hint: '5mm',
  },
  {
    option: 'sheet',
    ask: 'The prints you order or make',
    among: [
      ['', '4 × 6 in (US)'],
      ['10x15cm', '10 × 15 cm'],
      ['5x7', '5 × 7 in (13 × 18 cm)'],
      ['6x8', '6 × 8 in (15 × 20 cm)'],
      ['letter', 'whole Letter paper, cut at home'],
      ['a4', 'whole A4 paper, cut at home'],
    ],
    hint: '8x10, A6',
  },
  {
    option: 'paper',
    ask: 'Where they are printed',
    among: [
      ['', 'at a lab, one print a page'],
      ['letter', 'at home, several on Letter paper'],
      ['a4', 'at home, several on A4 paper'],
    ],
  },
  {
    option: 'units',
    ask: 'Lengths are told in',
    among: [
      ['', 'what is usual in your country'],
      ['inches', 'inches'],
      ['cm', 'centimetres'],
    ],
  },
  {
    option: 'start',
    ask: 'The first day lies',
    among: [
      ['', 'on the right, the front of the first leaf'],
      ['left', 'on the left'],
    ],
  },
];

/** Asked more seldom: typed as the command line takes them. */
const SELDOM = [
  ['Days and clocks', [
    { option: 'days', ask: 'Only these days', hint: '1-14' },
    { option: 'day-starts', ask: 'A day begins at', hint: '04:00' },
    { option: 'zone', ask: 'Where pictures whose names tell UTC (PXL_…) were taken', hint: 'Europe/Oslo' },
    { option: 'clock', ask: 'Cameras whose clock was wrong, a line for each', hint: 'Tarn T4=+1h' },
  ]],
  ['Prints and cards', [
    { option: 'lighter', ask: 'All prints lighter, by so many stops from 0 to 1', hint: '1/3' },
    { option: 'margin', ask: 'What the printer at home leaves white at each edge', hint: '1/4in' },
    { option: 'lab-trim', ask: 'How much the lab trims from each edge', hint: '1/16in' },
    { option: 'min-ppi', ask: 'Soft in print below so many pixels per inch', hint: '200' },
    { option: 'ppi', ask: 'Pixels per inch of the prints made', hint: '300' },
    { option: 'card-rules', ask: 'Lines to write on where a story leaves room' },
  ]],
  ['This computer', [
    { option: 'jobs', ask: 'Pictures worked on at once', hint: 'one for each processor' },
    { option: 'no-cache', ask: 'Measure every picture again and keep nothing for the next time' },
    { option: 'verbose-record', ask: 'Write cameras and whole folder names into month.json' },
  ]],
];

/** The question about an option of the program, and the words of one of its values. */
export function wordsOf(option, value) {
  const question = [...QUESTIONS, ...SELDOM.flatMap(([, questions]) => questions)].find((each) => each.option === option);
  const words = question?.among?.find(([each]) => each === value)?.[1];
  return `${question?.ask ?? option.replaceAll('-', ' ')}${value ? `: ${words ?? value}` : ''}`;
}

/**
 * @param settings of the program: name, kind, hint, words and among
 * @param kept the values to begin with, by option
 * @param units that the person reads first
 * @return `usual` and `seldom` to be shown, `values()` by option, and `set(values)`
 */
export function albumPart(settings, kept, units) {
  const there = new Map(settings.map((setting) => [setting.name, setting]));
  const asked = [...QUESTIONS, ...SELDOM.flatMap(([, questions]) => questions)].map(({ option }) => option);
  const others = settings.filter((setting) => !asked.includes(setting.name)).map(inItsWords);
  const inputs = new Map();

  const has = ({ option }) => there.has(option);
  const usual = el('div', { class: 'settings album' }, QUESTIONS.filter(has).map(ask));
  const seldom = [...SELDOM, ['Also', others]]
    .map(([title, questions]) => [title, questions.filter(has)])
    .filter(([, questions]) => questions.length > 0)
    .map(([title, questions]) =>
      el('fieldset', {}, el('legend', {}, title), el('div', { class: 'settings album' }, questions.map(ask))));

  function ask(question) {
    const { kind } = there.get(question.option);
    const made = question.among ? choice(question, units) : kind === 'switch' ? turned(question) : typed(question, kind);
    inputs.set(question.option, made);
    made.set(kept[question.option] ?? '');
    return made.node;
  }

  return {
    usual,
    seldom,
    values: () => Object.fromEntries([...inputs].map(([option, input]) => [option, input.get()])),
    set: (values) => inputs.forEach((input, option) => input.set(values[option] ?? '')),
  };
}

/** An option without a question of its own: the first sentence of the program's help. */
function inItsWords({ name, hint, words, among }) {
  return {
    option: name,
    ask: words.split(/\. |\.$/)[0],
    hint,
    among: among.length > 0 ? [['', 'as usual'], ...among.map((word) => [word, word])] : null,
  };
}

function choice({ option, ask, among, hint }, units) {
  const id = `album-${option}`;
  const select = el(
    'select',
    { id, onchange: () => show(select.value === TYPED) },
    among.map(([value, words]) => el('option', { value }, measured(words, units))),
    hint ? el('option', { value: TYPED }, 'another: type it') : null,
  );
  const input = hint ? field({ id: `${id}-typed`, hint, label: `${ask}, typed` }) : null;
  const show = (typing) => {
    if (input) {
      input.hidden = !typing;
    }
  };
  return {
    node: el('div', { class: 'question' }, el('label', { for: id }, ask, select), input),
    get: () => (select.value === TYPED ? input.value : select.value),
    set(value) {
      const known = among.some(([each]) => each === value);
      if (!known && input) {
        input.value = value;
      }
      select.value = known || !input ? value : TYPED;
      show(select.value === TYPED);
    },
  };
}

function typed({ option, ask, hint }, kind) {
  const id = `album-${option}`;
  const input =
    kind === 'several'
      ? el('textarea', { id, rows: '2', placeholder: hint, spellcheck: 'false' })
      : field({ id, hint });
  return {
    node: el('label', { for: id, class: 'question' }, ask, input),
    get: () => input.value,
    set(value) {
      input.value = value;
    },
  };
}

function turned({ option, ask }) {
  const id = `album-${option}`;
  const input = el('input', { type: 'checkbox', role: 'switch', id });
  return {
    node: el('label', { for: id, class: 'switch question' }, input, ask),
    get: () => (input.checked ? 'yes' : ''),
    set(value) {
      input.checked = value !== '';
    },
  };
}

const field = ({ id, hint, label }) =>
  el('input', { type: 'text', id, placeholder: hint, 'aria-label': label, autocomplete: 'off', spellcheck: 'false' });
