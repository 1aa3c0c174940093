import { useCallback, useEffect, useState } from 'react';
import type { JobRow } from '../../files/store/store-port.ts';
import { DemoList } from '../app/demo-list.tsx';
import { desk, openEmpty, openStored, say } from '../app/desk.ts';
import { Dialog } from '../app/dialog.tsx';
import { openFileFromDevice } from '../app/open-file.ts';
import { screen, setOver } from '../app/screen.ts';
import { useSession } from '../app/use-session.ts';
import { OnDevice } from '../device/on-device.tsx';
import { Icon } from '../look/icon.tsx';
import { HandOver } from './hand-over-keys.tsx';
import { deleteJob, duplicateJob, jobsHere, sayWhen } from './job-shelf.ts';

/** Every job of this device by name, and what can be done with them. */
export default function JobsScreen() {
  const session = useSession();
  const [jobs, setJobs] = useState<readonly JobRow[] | null>(null);
  const look = useCallback((): void => {
    jobsHere().then(setJobs, () => setJobs([]));
  }, []);
  useEffect(() => {
    void session.flush().then(look);
  }, [session, look]);
  const open = async (id: string): Promise<void> => {
    if (id === session.id) setOver(null);
    else await openStored(id);
  };
  const copy = async (row: JobRow): Promise<void> => {
    if (!(await duplicateJob(row.id))) say('This job cannot be read, so it cannot be copied.');
    look();
  };
  const remove = async (row: JobRow): Promise<void> => {
    const back = await deleteJob(row);
    screen.setState({
      undone: { text: `"${row.name === '' ? 'Job without a name' : row.name}" was deleted.`, undo: () => void back() },
    });
    look();
  };
  return (
    <Dialog title="Jobs">
      <div className="key-row">
        <button type="button" className="key" onClick={() => void openEmpty()}>
          New job
        </button>
        <button type="button" className="key" onClick={() => void openFileFromDevice()}>
          Open a file
        </button>
      </div>
      <h3>On this device</h3>
      {jobs?.length === 0 && <p>No job is kept yet. One is kept by itself from its first step on.</p>}
      <ul className="job-list">
        {jobs?.map((row) => (
          <Job
            key={row.id}
            row={row}
            current={row.id === desk.getState().session?.id}
            onOpen={() => void open(row.id)}
            onCopy={() => void copy(row)}
            onDelete={() => void remove(row)}
          />
        ))}
      </ul>
      <HandOver />
      <OnDevice />
      <h3>Demo houses</h3>
      <DemoList />
    </Dialog>
  );
}

interface JobProps {
  readonly row: JobRow;
  readonly current: boolean;
  readonly onOpen: () => void;
  readonly onCopy: () => void;
  readonly onDelete: () => void;
}

function Job({ row, current, onOpen, onCopy, onDelete }: JobProps) {
  const name = row.name === '' ? 'Job without a name' : row.name;
  return (
    <li>
      <button type="button" className="job-open" aria-current={current} onClick={onOpen}>
        <span className="job-name">{name}</span>
        <span className="job-when">{sayWhen(row.savedAt, new Date())}</span>
      </button>
      <button type="button" className="bare-key" aria-label={`Duplicate ${name}`} onClick={onCopy}>
        copy
      </button>
      <button type="button" className="bare-key" aria-label={`Delete ${name}`} onClick={onDelete}>
        <Icon name="bin" size={20} />
      </button>
    </li>
  );
}
