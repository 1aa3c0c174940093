import { readFileSync, writeFileSync } from 'node:fs';
import process from 'node:process';
import { BadCall } from './define-verb.ts';
import { run } from './run.ts';

function reason(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (code === 'ENOENT') return 'there is no such file';
  if (code === 'EACCES') return 'it may not be read';
  if (code === 'EISDIR') return 'it is a folder';
  return code || 'it could not be used';
}

process.exitCode = await run(process.argv.slice(2), {
  read(file) {
    try {
      return readFileSync(file, 'utf8');
    } catch (error) {
      throw new BadCall(`${file}: ${reason(error)}`);
    }
  },
  write(file, text) {
    try {
      writeFileSync(file, text);
    } catch (error) {
      throw new BadCall(`${file}: ${reason(error)}`);
    }
  },
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
});
