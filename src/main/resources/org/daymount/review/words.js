// The program's sentences name what is asked as the command line does; the start page has its own
// words for it. A review that was started by a command keeps the command's.

import { wordsOf } from './album.js';
import { state } from './ask.js';

/** What the start page asks outside the album's questions. */
const ELSEWHERE = {
  out: 'The folder everything is written to',
  month: 'The month',
  note: 'The note',
  album: 'The album file',
  dates: 'Dates you know',
};

const OPTION = /(with |at )?'?--([a-z]+(?:-[a-z]+)*)'?(?:[ =](auto|number|none)\b)?/g;

/** A sentence of the program, for the person in front of the page. */
export function said(text) {
  if (!state.start || !/--[a-z]/.test(text)) {
    return text;
  }
  let asked = false;
  const words = text.replace(OPTION, (all, before, option, value) => {
    const question = ELSEWHERE[option] ?? wordsOf(option, value);
    asked = true;
    return `${before ? 'at ' : ''}“${question}”`;
  });
  const there = !asked || document.querySelector('.start');
  return words.replace(/^Invalid value for option (“.*?”)[^:]*: /, '$1: ') + (there ? '' : ' (asked on the page Start)');
}
