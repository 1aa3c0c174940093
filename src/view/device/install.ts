import { createStore } from 'zustand/vanilla';

/** The browser's own offer, held back until somebody asks for it. Not yet in the standard list of events. */
interface InstallOffer extends Event {
  prompt(): Promise<{ readonly outcome: 'accepted' | 'dismissed' }>;
}

export interface InstallState {
  /** It may be put on the device now. */
  readonly offered: boolean;
  readonly installed: boolean;
}

const standing = (): boolean => matchMedia('(display-mode: standalone)').matches;

export const install = createStore<InstallState>(() => ({ offered: false, installed: standing() }));

let offer: InstallOffer | null = null;

/** Keeps the browser's offer for the jobs screen: nothing asks by itself. */
export function keepInstallOffer(): void {
  window.addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    offer = event as InstallOffer;
    install.setState({ offered: true });
  });
  window.addEventListener('appinstalled', () => {
    offer = null;
    install.setState({ offered: false, installed: true });
  });
}

/** Asks the browser to put the tool on the device. An offer counts once. */
export async function installNow(): Promise<void> {
  const asked = offer;
  offer = null;
  install.setState({ offered: false });
  const answer = await asked?.prompt();
  if (answer?.outcome === 'accepted') install.setState({ installed: true });
}
