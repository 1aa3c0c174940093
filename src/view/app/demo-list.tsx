import { DEMO_HOUSES, openDemo } from './open-file.ts';
import './demo-list.css';

/** The invented houses that come with the tool, a line each. Each is fetched when it is opened. */
export function DemoList() {
  return (
    <ul className="demo-list">
      {DEMO_HOUSES.map(({ id, name, about }) => (
        <li key={id}>
          <button type="button" aria-label={`Open the demo ${name}: ${about}`} onClick={() => void openDemo(id)}>
            <span className="demo-name">{name}:</span> {about}
          </button>
        </li>
      ))}
    </ul>
  );
}
