import type { EngineTask, Interval } from "../problem";

/** No run of straining work, breaks shorter than the rest left out, is longer than it may be; and it only pauses for a rest after a full run. */
export function restFaults(task: EngineTask, stretches: readonly Interval[]): string[] {
  const { straining } = task;
  if (straining === null || straining.run <= 0) return [];
  let ran = 0;
  let stopped = Number.NEGATIVE_INFINITY;
  for (const { start, end } of stretches) {
    if (start - stopped >= straining.rest) ran = 0;
    ran += end - start;
    stopped = end;
    if (ran > straining.run) return [`${task.id}: ${ran} minutes of straining work without a rest of ${straining.rest}.`];
  }
  return [];
}
