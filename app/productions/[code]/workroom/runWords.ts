import type { Run } from "#prisma/plans/runs";
import { plural } from "../../../_data/plural";

/** A levelling as the page tells it. */
export interface RunWords {
  readonly active: boolean;
  readonly bad: boolean;
  readonly text: string;
  readonly round: number;
  readonly rounds: number;
}

const best = (run: Run): string => {
  if (!run.progress) return "";
  const { lateDues, overtimeMinutes } = run.progress;
  const late = lateDues === 0 ? "nothing late" : `${plural(lateDues, "garment")} late`;
  return ` Best so far: ${late}, ${plural(Math.round(overtimeMinutes / 60), "hour")} of overtime.`;
};

export const runWords = (run: Run): RunWords => {
  const told = { active: false, bad: false, round: run.round, rounds: run.rounds };
  switch (run.state) {
    case "queued":
      return { ...told, active: true, text: "Waits its turn to be levelled." };
    case "running":
      return {
        ...told,
        active: true,
        text: (run.stopRequested ? "Stops after this round." : `Levelling, round ${run.round} of ${run.rounds}.`) + best(run),
      };
    case "finished":
      return { ...told, text: `Levelled: ${plural(run.rounds, "round")} to the end.` };
    case "stopped":
      return { ...told, text: run.planId ? "Stopped; the best plan so far is kept." : "Stopped before there was a plan." };
    case "failed":
      return { ...told, bad: true, text: `The levelling came to nothing: ${run.error ?? "no reason was given."}` };
  }
};
