/** What the ground along a house is made of: the word a plan keeps is the one that is shown. */
export const GROUND_KINDS: readonly string[] = ['paving', 'concrete', 'gravel', 'lawn', 'soil', 'decking'];
