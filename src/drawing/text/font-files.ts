import regular from '../../../shared/fonts/hanken-grotesk-400.ttf?url';
import semiBold from '../../../shared/fonts/hanken-grotesk-600.ttf?url';

/**
 * Addresses of the font's outlines at the two weights of a drawing. They are the latin letters of the variable font held
 * at 400 and 600, for where a variable font cannot go: a PDF file. Fetched only by who prints.
 */
export const FONT_FILES: Readonly<Record<400 | 600, string>> = { 400: regular, 600: semiBold };
