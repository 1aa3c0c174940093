import '../src/editor/later/later.ts';
