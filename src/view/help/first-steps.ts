/** What someone new to the page asks, and the way to it in one line. */
export const FIRST_STEPS = [
  {
    what: 'How big a gas pipe?',
    how: 'By words, Gas: say where it starts, each turn and length, and the boiler. The drop in each size stands beside it.',
  },
  {
    what: 'Why is there a stop?',
    how: 'Tap its mark or the counts at the top. It says what is wrong, why it matters and what to do; where a way out has been tried, a key lays it.',
  },
  { what: 'Take a step back', how: 'Undo at the bench, as often as you like. Redo goes forward again.' },
  {
    what: 'What is there, what will be',
    how: 'Before is the house as it was found, After as it will be. Draw the old pipes in Before, the new ones in After.',
  },
  {
    what: 'Another way to do it',
    how: 'All chapters, Options: a new option has pipes of its own. Compare sets them side by side.',
  },
  { what: 'Change a thing', how: 'Select, tap it, drag it, or change its figures in the panel.' },
  { what: 'Give it to somebody', how: 'Tap the name of the job: a file, sheets on paper or PDF, the list of pieces.' },
] as const;
