import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import { askToKeep, isKept, type Keeping, sayUse, storageUse } from '../../files/store/keep-storage.ts';
import { install, installNow } from './install.ts';
import './on-device.css';

interface Told {
  /** Null: the browser has not said. */
  readonly kept: boolean | null;
  readonly use: string | null;
}

async function ask(): Promise<Told> {
  const [kept, use] = await Promise.all([isKept(navigator.storage), storageUse(navigator.storage)]);
  return { kept, use: use && sayUse(use) };
}

/** How safe the jobs are on this device, how much room they take, and whether the tool itself is kept here. */
export function OnDevice() {
  const [told, setTold] = useState<Told | null>(null);
  const [answer, setAnswer] = useState<Keeping | null>(null);
  const { offered, installed } = useStore(install);
  useEffect(() => {
    let here = true;
    void ask().then((t) => here && setTold(t));
    return () => {
      here = false;
    };
  }, []);
  const keep = async (): Promise<void> => {
    setAnswer(await askToKeep(navigator.storage));
    setTold(await ask());
  };
  const kept = told?.kept === true;
  return (
    <>
      <h3>This device</h3>
      <p role="status">
        {answer?.sentence ??
          (kept
            ? 'Jobs are kept on this device until you remove them.'
            : 'This browser may clear jobs when the device runs short of room.')}
        {told?.use != null && ` In use: ${told.use}.`}
      </p>
      <p>
        {installed
          ? 'Kickset is installed here and works without a signal.'
          : 'Opened once, it works without a signal.'}
      </p>
      <div className="key-row device-keys">
        {told !== null && !kept && answer === null && (
          <button type="button" className="key slight" onClick={() => void keep()}>
            Ask to keep jobs
          </button>
        )}
        {offered && (
          <button type="button" className="key slight" onClick={() => void installNow()}>
            Install on this device
          </button>
        )}
      </div>
    </>
  );
}
