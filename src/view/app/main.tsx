import '../look/base.css';
import '../look/keys.css';
import { createRoot } from 'react-dom/client';
import { dropOrphans } from '../../files/store/drop-orphans.ts';
import { keepInstallOffer } from '../device/install.ts';
import { startTheme } from '../look/theme.ts';
import { App } from './app.tsx';
import { openFirst, say } from './desk.ts';
import { takeDroppedFiles } from './drop-file.ts';
import { startScreen } from './screen.ts';
import { storage } from './storage.ts';
import { showTestHooks } from './test-hooks.ts';

const TIDY_AFTER_MS = 20_000;

/** The drawing measures its text by this font alone, so nothing is drawn before it is there. */
async function start(): Promise<void> {
  startTheme();
  startScreen();
  takeDroppedFiles();
  keepInstallOffer();
  if (__TEST_HOOKS__) showTestHooks();
  await document.fonts.load('600 14px "Hanken Grotesk Variable"', 'Kickset 0123').catch(() => []);
  const root = document.getElementById('root');
  if (root === null) throw new Error('The page has no root element.');
  createRoot(root).render(<App />);
  await openFirst();
  // When nothing else is to be done: pictures that no job speaks of any more.
  setTimeout(
    () =>
      void storage()
        .then(dropOrphans)
        .catch(() => undefined),
    TIDY_AFTER_MS,
  );
  if (import.meta.env.PROD && 'serviceWorker' in navigator) {
    // Without it the tool works the same as long as there is a network.
    await navigator.serviceWorker.register('./sw.js').catch(() => undefined);
  }
}

start().catch((error: unknown) => say(error instanceof Error ? error.message : String(error)));
