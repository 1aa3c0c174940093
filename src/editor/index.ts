export { createEditor, type EditorSetup } from './create-editor.ts';
export type * from './editor-api.ts';
export type * from './words/words-api.ts';
