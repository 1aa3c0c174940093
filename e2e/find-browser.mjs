// Finds a Chromium to drive, so that `npm test` runs on a machine where nothing but Node was installed.
// Order: E2E_BROWSER, the system's own, the one Playwright installed, the one that came with `npm ci`.
import { execFileSync, spawnSync } from 'node:child_process';
import {
  accessSync,
  constants,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const top = dirname(dirname(fileURLToPath(import.meta.url)));

/** Workers of one test run inherit the answer of the main process instead of looking again. */
const memo = 'KICKSET_FOUND_BROWSER';

const systemNames = [
  '/usr/bin/chromium-headless-shell',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
];

const ordinaryArgs = ['--disable-gpu', '--disable-quic'];

const nothingFound =
  'No Chromium found for the browser tests: run "npx playwright install chromium", or "apt-get install chromium", ' +
  'or set E2E_BROWSER to the path of one.';

/**
 * @typedef {object} FoundBrowser
 * @property {string} executablePath
 * @property {Record<string, string>} env  additions to process.env
 * @property {string[]} args
 * @property {string} version  what `--version` printed
 * @property {string} from  which step of the order found it
 */

/**
 * The browser to launch, found once per test run. Throws one clear line when there is none.
 * @returns {Promise<FoundBrowser>}
 */
export async function findBrowser() {
  const known = process.env[memo];
  if (known) return JSON.parse(known);
  const found = named() ?? system() ?? (await playwrightOwn()) ?? packaged();
  if (!found) throw new Error(nothingFound);
  process.env[memo] = JSON.stringify(found);
  return found;
}

/** Version line of a browser, or undefined when it does not start. */
function versionOf(executablePath, env = {}) {
  const run = spawnSync(executablePath, ['--version'], {
    env: { ...process.env, ...env },
    encoding: 'utf8',
    timeout: 20_000,
  });
  return run.status === 0 ? run.stdout.trim() : undefined;
}

function named() {
  const executablePath = process.env.E2E_BROWSER;
  if (!executablePath) return undefined;
  const version = versionOf(executablePath);
  if (version === undefined) throw new Error(`E2E_BROWSER is set to ${executablePath}, which does not start.`);
  return { executablePath, env: {}, args: ordinaryArgs, version, from: 'E2E_BROWSER' };
}

function system() {
  for (const executablePath of systemNames) {
    if (!existsSync(executablePath)) continue;
    const version = versionOf(executablePath);
    if (version !== undefined) return { executablePath, env: {}, args: ordinaryArgs, version, from: 'system' };
  }
  return undefined;
}

async function playwrightOwn() {
  const { chromium } = await import('@playwright/test');
  const executablePath = chromium.executablePath();
  if (!existsSync(executablePath)) return undefined;
  // On Windows `--version` opens a window instead of printing, so there the file is taken at its word.
  const version = process.platform === 'win32' ? 'version not asked' : versionOf(executablePath);
  if (version === undefined) return undefined;
  return { executablePath, env: {}, args: ordinaryArgs, version, from: 'playwright' };
}

/** The browser in node_modules/@sparticuz/chromium: needs no root, no system library and no font. */
function packaged() {
  const source = join(top, 'node_modules/@sparticuz/chromium');
  if (process.platform !== 'linux' || process.arch !== 'x64' || !existsSync(source)) return undefined;
  const packageVersion = JSON.parse(readFileSync(join(source, 'package.json'), 'utf8')).version;
  const home = unpackOnce(source, packageVersion);
  const executablePath = join(home, 'chromium');
  const fonts = { FONTCONFIG_PATH: writeFontsConf(home) };
  // The system's libraries are preferred; the bundled ones are for machines that have none.
  for (const env of [fonts, { ...fonts, LD_LIBRARY_PATH: join(home, 'al2023/lib') }]) {
    const version = versionOf(executablePath, env);
    if (version !== undefined) return { executablePath, env, args: ordinaryArgs, version, from: '@sparticuz/chromium' };
  }
  throw new Error(`The packaged browser in ${home} does not start. ${nothingFound}`);
}

/** Folder for the unpacked browser: beside the modules, or the user's own where those are read-only. */
function cacheFolder() {
  const places = [
    join(top, 'node_modules/.cache/chromium'),
    join(homedir(), '.cache/kickset/chromium'),
    join(tmpdir(), `kickset-chromium-${process.getuid?.() ?? 'user'}`),
  ];
  for (const place of places) {
    try {
      mkdirSync(place, { recursive: true });
      accessSync(place, constants.W_OK);
      return place;
    } catch {
      // Not writable for this user: the next place may be.
    }
  }
  throw new Error(`No folder to unpack the browser in: ${places.join(', ')}.`);
}

/**
 * Unpacks in a folder of its own and renames it when whole, since the package re-uses whatever lies in its temp
 * folder, half-written files and other versions included.
 */
function unpackOnce(source, version) {
  const cache = cacheFolder();
  const home = join(cache, version);
  if (existsSync(join(home, 'chromium'))) return home;
  const part = mkdtempSync(join(cache, 'part-'));
  const entry = pathToFileURL(join(source, 'build/esm/index.js')).href;
  const script = `const { default: c } = await import(${JSON.stringify(entry)}); await c.executablePath();`;
  try {
    execFileSync(process.execPath, ['--input-type=module', '-e', script], {
      // The package adds its bundled libraries only where it believes that it runs in its usual place.
      env: { ...process.env, TMPDIR: part, AWS_LAMBDA_JS_RUNTIME: 'nodejs22.x' },
      stdio: ['ignore', 'ignore', 'inherit'],
    });
    renameSync(part, home);
  } catch (error) {
    rmSync(part, { recursive: true, force: true });
    // Another run may have been quicker; its folder is as good.
    if (!existsSync(join(home, 'chromium'))) throw error;
  }
  return home;
}

/**
 * The bundled fonts.conf names a fixed temp folder; with any other no font is found, text is blank and nothing fails.
 * Only the bundled family is listed, so that pictures do not differ with the fonts of the machine.
 * @returns {string} the folder that holds fonts.conf
 */
function writeFontsConf(home) {
  const folder = join(home, 'fontconfig');
  const family = (generic) =>
    `  <alias binding="same"><family>${generic}</family><prefer><family>Open Sans</family></prefer></alias>`;
  const conf = [
    '<?xml version="1.0"?>',
    '<!DOCTYPE fontconfig SYSTEM "fonts.dtd">',
    '<fontconfig>',
    `  <dir>${join(home, 'fonts')}</dir>`,
    `  <cachedir>${join(folder, 'cache')}</cachedir>`,
    ...['sans-serif', 'serif', 'monospace', 'system-ui'].map(family),
    '</fontconfig>',
    '',
  ].join('\n');
  const file = join(folder, 'fonts.conf');
  if (!existsSync(file) || readFileSync(file, 'utf8') !== conf) {
    mkdirSync(folder, { recursive: true });
    writeFileSync(file, conf);
  }
  return folder;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const found = await findBrowser();
  console.log(JSON.stringify(found, null, 2));
}
