/** Why a move cannot be made, in words. Thrown inside `movedPlan` and turned into its answer there. */
export class NotMoved extends Error {}
