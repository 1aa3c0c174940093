const KEY = 'kickset.gloves';

export function storedGloves(): boolean {
  try {
    return localStorage.getItem(KEY) === 'yes';
  } catch {
    return false;
  }
}

export function keepGloves(on: boolean): void {
  document.documentElement.dataset.gloves = on ? 'yes' : 'no';
  try {
    localStorage.setItem(KEY, on ? 'yes' : 'no');
  } catch {
    // It holds until the page is closed.
  }
}
