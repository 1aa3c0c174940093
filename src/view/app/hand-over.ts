/** Puts text on the clipboard. False where the browser refuses. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** Hands bytes to the device as a file of that name. */
export function saveBytes(name: string, type: string, bytes: BlobPart): void {
  const url = URL.createObjectURL(new Blob([bytes], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // The download has read the address by then; a shorter wait loses it in some browsers.
  setTimeout(() => URL.revokeObjectURL(url), 30_000);
}

export const saveText = (name: string, type: string, text: string): void => saveBytes(name, type, text);

/** A job's name as a file's name: letters, digits and dashes. */
export function fileName(name: string, ending: string): string {
  const safe = name
    .normalize('NFKD')
    .replace(/[^\w\s-]/g, '')
    .trim()
    .replace(/\s+/g, '-')
    .toLowerCase();
  return `${safe === '' ? 'job' : safe}${ending}`;
}
