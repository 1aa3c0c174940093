// Runs the terminal program, building it first when it is missing or older than what it is made from.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, statSync, utimesSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const top = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const folder = join(top, 'dist/cli');
const program = join(folder, 'main.js');

/** Latest change below a path; folders count too, so that a removed file is noticed. */
function newest(path) {
  const stat = statSync(path, { throwIfNoEntry: false });
  if (stat === undefined) return 0;
  if (!stat.isDirectory()) return stat.mtimeMs;
  return readdirSync(path).reduce((latest, name) => Math.max(latest, newest(join(path, name))), stat.mtimeMs);
}

function isStale() {
  if (!existsSync(program)) return true;
  const built = statSync(program).mtimeMs;
  return ['src', 'shared', 'vite.config.ts', 'package-lock.json'].some((path) => newest(join(top, path)) > built);
}

/** Builds aside and moves the result into place, so that two starts at once never run half a program. */
function build() {
  const started = new Date();
  mkdirSync(folder, { recursive: true });
  const part = mkdtempSync(join(folder, 'part-'));
  const vite = join(top, 'node_modules/vite/bin/vite.js');
  const run = spawnSync(process.execPath, [vite, 'build', '--mode', 'cli', '--outDir', part], {
    cwd: top,
    encoding: 'utf8',
  });
  if (run.status === 0) {
    // Dated from the start of the build: a file saved while it ran makes the next start build again.
    utimesSync(join(part, 'main.js'), started, started);
    renameSync(join(part, 'main.js'), program);
  }
  rmSync(part, { recursive: true, force: true });
  if (run.status !== 0) {
    process.stderr.write(`${run.stdout ?? ''}${run.stderr ?? ''}\nThe terminal program could not be built.\n`);
    process.exit(70);
  }
}

if (isStale()) build();

// npm moves to the top folder before it runs a script; paths the user typed are meant from where they typed them.
if (process.env.npm_lifecycle_event === 'kickset' && process.env.INIT_CWD) process.chdir(process.env.INIT_CWD);

process.argv[1] = program;
await import(pathToFileURL(program).href);
