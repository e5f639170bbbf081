import type { RemedyRun } from "#prisma/plans/remedyRuns";

/** A search for remedies as the page tells it. */
export interface RemedyWords {
  readonly active: boolean;
  readonly bad: boolean;
  readonly text: string;
  readonly made: number;
  readonly plans: number;
}

export const remedyWords = ({ state, made, plans, error }: RemedyRun): RemedyWords => {
  const told = { active: state === "queued" || state === "running", bad: state === "failed", made, plans: Math.max(1, plans) };
  switch (state) {
    case "queued":
      return { ...told, text: "Waits its turn." };
    case "running":
      return { ...told, text: plans === 0 ? "Begins." : `Plan ${Math.min(made + 1, plans)} of ${plans}.` };
    case "finished":
      return { ...told, text: "Each answer is a plan of its own; none is kept." };
    case "failed":
      return { ...told, text: `It came to nothing: ${error ?? "no reason was given."}` };
  }
};
