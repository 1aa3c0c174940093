import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const top = fileURLToPath(new URL('../../', import.meta.url));

/** Folders that are made, not kept; read only when there is no git to ask. */
const made = new Set(['.git', '.cache', 'node_modules', 'dist', 'test-results', 'playwright-report']);

function fromGit(): string[] | undefined {
  try {
    const list = ['ls-files', '--cached', '--others', '--exclude-standard', '-z'];
    const out = execFileSync('git', list, { cwd: top, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
    return out.split('\0').filter((path) => path !== '' && existsSync(top + path));
  } catch {
    return undefined;
  }
}

function fromDisk(folder = ''): string[] {
  return readdirSync(top + folder, { withFileTypes: true }).flatMap((entry) => {
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    if (entry.isDirectory()) return made.has(entry.name) ? [] : fromDisk(path);
    return [path];
  });
}

let known: readonly string[] | undefined;

/** Every file of the repository, as paths from its top with forward slashes, sorted. Files not yet added count. */
export function repoFiles(): readonly string[] {
  known ??= (fromGit() ?? fromDisk()).sort();
  return known;
}

/** The text of a file given by its path from the top. */
export function textOf(path: string): string {
  return readFileSync(top + path, 'utf8');
}

/** Whether a path from the top is a file of the repository. */
export function isRepoFile(path: string): boolean {
  return repoFiles().includes(path);
}

/** Code of the application: everything in src that is TypeScript. */
export function codeFiles(): readonly string[] {
  return repoFiles().filter((path) => path.startsWith('src/') && /\.tsx?$/.test(path));
}
