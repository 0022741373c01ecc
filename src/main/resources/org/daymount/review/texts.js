// A text typed, pasted, or read from a file a person picks: the note, the album file, the dates.

import { el } from './parts.js';

/**
 * @param name of the text: note, album, dates
 * @param label of the field
 * @param rows how high it is
 */
export function textPart(name, label, rows) {
  const area = el('textarea', {
    id: `${name}-text`,
    rows: String(rows),
    maxlength: '190000',
    spellcheck: String(name === 'note'),
    'aria-describedby': `${name}-words`,
  });
  const file = el('input', { type: 'file', id: `${name}-file`, accept: '.txt,.csv,text/plain,text/csv' });
  const words = el('p', { class: 'quiet', role: 'status', id: `${name}-words` });
  file.addEventListener('change', async () => {
    if (file.files[0]) {
      // read here, in the browser: the program is told the words, not where the file lies
      area.value = decoded(new Uint8Array(await file.files[0].arrayBuffer()));
      words.textContent = `${file.files[0].name} was read.`;
    }
  });
  return {
    node: el(
      'div',
      { class: 'text' },
      el('label', { for: `${name}-text` }, label, area),
      el('label', { for: `${name}-file` }, 'Or choose its file', file),
      words,
    ),
    get: () => area.value,
    say(text) {
      words.textContent = text;
    },
  };
}

/** UTF-8 unless the bytes say otherwise; last, what older Windows programs write. */
function decoded(bytes) {
  const mark = bytes[0] === 0xff && bytes[1] === 0xfe ? 'utf-16le' : bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : null;
  if (mark) {
    return new TextDecoder(mark).decode(bytes);
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
