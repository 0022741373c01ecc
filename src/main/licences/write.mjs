// write.mjs LIBRARIES.tsv CLASSPATH-FILE TEXTS-FOLDER OUT
// Writes the notice of all libraries that the program carries and the text of each licence.
// Ends with an error when a library of the class path has no row, or a licence no text.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';

const [table, classPath, texts, out] = process.argv.slice(2);

const rows = readFileSync(table, 'utf8')
  .split(/\r?\n/)
  .filter((line) => line && !line.startsWith('#'))
  .map((line) => {
    const [what, licence, copyright, source] = line.split('\t');
    if (!source) throw new Error(`libraries.tsv: four columns are needed in: ${line}`);
    return { what, licences: licence.split(' AND '), copyright, source };
  });

const artifacts = rows.filter((row) => !row.what.startsWith('+')).map((row) => row.what.split(':')[1]);
const unnamed = readFileSync(classPath, 'utf8')
  .split(/\r?\n/)
  .filter((jar) => jar.endsWith('.jar'))
  .map((jar) => basename(jar))
  .filter((jar) => !artifacts.some((name) => jar.startsWith(`${name}-`) && /^\d/.test(jar.slice(name.length + 1))));
if (unnamed.length > 0) {
  throw new Error(`no licence is named in src/main/licences/libraries.tsv for: ${unnamed.join(', ')}`);
}

rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });
for (const id of new Set(rows.flatMap((row) => row.licences))) {
  const { name, licenseText } = JSON.parse(readFileSync(join(texts, `${id}.json`), 'utf8'));
  writeFileSync(join(out, `${id}.txt`), `${name}\n\n${licenseText.trim()}\n`);
}
const notice = rows
  .map(({ what, licences, copyright, source }) =>
    `${what.replace(/^\+ /, '')}\n  licence: ${licences.join(' and ')}\n  copyright: ${copyright}\n  source: ${source}\n`)
  .join('\n');
writeFileSync(
  join(out, 'README.txt'),
  `Daymount is licensed under the Apache License 2.0 (Apache-2.0.txt). It carries the work of others, unchanged though not always whole,
under their own licences. The text of each stands in this folder under its name. Libraries under the LGPL or
the EPL may be replaced by your own builds: the natives are files of their own inside the jar
(org/bytedeco/ffmpeg), and the program's source, with the build that puts them together, comes with it.

${notice}`,
);
