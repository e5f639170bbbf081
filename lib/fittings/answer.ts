export const FITTING_ANSWERS = ["done", "did not come", "again"] as const;
/** How a fitting went: over and done with; the performer was not there; held, and wanted once more. */
export type FittingAnswer = (typeof FITTING_ANSWERS)[number];

export const FINDINGS = ["fits", "alter", "remake", "note"] as const;
/** What is to be done at one place of the body. */
export type Finding = (typeof FINDINGS)[number];

/** Which fitting it is: a stored answer is laid beside a plan that has changed since. */
export interface FittedAt {
  /** Number of the garment. */
  readonly garment: string;
  /** Code of the fitting in the garment's construction. */
  readonly fitting: string;
  /** Code of the performer. */
  readonly performer: string;
}

/** The newest answer to a fitting, of answers the newest first. */
export const answerTo = <Answer extends FittedAt>(answers: readonly Answer[], { garment, fitting, performer }: FittedAt): Answer | null =>
  answers.find((one) => one.garment === garment && one.fitting === fitting && one.performer === performer) ?? null;
