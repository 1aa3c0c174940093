import '@fontsource-variable/hanken-grotesk/wght.css';
import { createRoot } from 'react-dom/client';

const root = document.getElementById('root');
if (root === null) throw new Error('The page has no root element.');
createRoot(root).render(<h1>Kickset</h1>);
