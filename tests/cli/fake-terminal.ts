import { readFileSync } from 'node:fs';
import { BadCall, type Terminal } from '../../src/cli/define-verb.ts';
import { run } from '../../src/cli/run.ts';

const demo = (name: string): string =>
  readFileSync(new URL(`../../demo-plans/${name}.plan.json`, import.meta.url), 'utf8');

/** Files a call may read: the demo plans, and what is broken in them. */
const FILES: Readonly<Record<string, () => string>> = {
  'flat.json': () => demo('flat'),
  'house.json': () => demo('two-storey'),
  'half.json': () => demo('flat').slice(0, 4000),
  'picture.json': () => '{"format": "picture"}',
  'empty.json': () => '',
  'newer.json': () => demo('flat').replace('"version": 1', '"version": 99'),
};

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  readonly written: Readonly<Record<string, string>>;
}

/** Runs one call of the terminal program with files of its own and nothing of the machine. */
export async function call(...args: string[]): Promise<Ran> {
  const written: Record<string, string> = {};
  let [out, err] = ['', ''];
  const terminal: Terminal = {
    read(file) {
      const text = FILES[file];
      if (!text) throw new BadCall(`${file}: there is no such file`);
      return text();
    },
    write(file, text) {
      written[file] = text;
    },
    out(text) {
      out += text;
    },
    err(text) {
      err += text;
    },
  };
  const code = await run(args, terminal);
  return { code, out, err, written };
}
