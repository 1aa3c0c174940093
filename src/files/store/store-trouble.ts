/** A storage error in one sentence a reader can act on. The job on the screen is never in danger from it. */
export function sayStoreTrouble(error: unknown): string {
  const name = error instanceof Error ? error.name : '';
  if (name === 'QuotaExceededError') {
    return 'This device has no room left to keep the job. Save it as a file now, and remove jobs or pictures you no longer need.';
  }
  if (name === 'InvalidStateError' || name === 'AbortError' || name === 'TransactionInactiveError') {
    return 'The storage of this browser was closed. Save the job as a file, then open Kickset again.';
  }
  if (name === 'SecurityError' || name === 'NotAllowedError') {
    return 'This browser does not let Kickset keep anything, as in a private window. Save the job as a file before you close it.';
  }
  return 'The job could not be kept on this device. Save it as a file now.';
}
