import type { LevellingProblem, Plan } from "../problem";

interface Span {
  readonly start: number;
  readonly end: number;
  readonly what: string;
  readonly rest: number | null;
}

/** Nobody does two tasks or two fittings at once; a fitting may only interrupt a task that pauses; straining tasks keep a rest apart. */
export function makerFaults(problem: LevellingProblem, plan: Plan): string[] {
  return problem.makers.flatMap((maker, index) => {
    const tasks: (Span & { pauses: boolean; begins: number })[] = [];
    plan.placed.forEach((placement, node) => {
      const task = problem.nodes[node]!;
      if (placement === null || task.kind !== "task" || placement.end === placement.start) return;
      if (!placement.makers.some((one) => one.maker === index)) return;
      const rest = task.straining !== null && task.straining.run > 0 ? task.straining.rest : null;
      tasks.push({
        start: placement.start,
        end: placement.end,
        what: task.id,
        rest,
        pauses: task.pauses,
        begins: placement.stretches[0]?.start ?? placement.start,
      });
    });
    const visits: Span[] = plan.visits
      .filter((visit) => visit.fitter === index)
      .map(({ start, end, fittings }) => ({
        start,
        end,
        what: `the visit of ${fittings.map((node) => problem.nodes[node]!.id).join(", ")}`,
        rest: null,
      }));
    const faults = [...overlaps(maker.id, tasks), ...overlaps(maker.id, visits)];
    for (const visit of visits) {
      for (const task of tasks) {
        const meets = visit.start < task.end && task.start < visit.end;
        if (meets && !task.pauses && visit.end > task.begins)
          faults.push(`${maker.id}: ${visit.what} interrupts ${task.what}, which may not pause.`);
      }
    }
    return faults;
  });
}

function overlaps(maker: string, spans: readonly Span[]): string[] {
  const faults: string[] = [];
  const sorted = spans.toSorted((a, b) => a.start - b.start);
  sorted.forEach((span, i) => {
    for (const later of sorted.slice(i + 1)) {
      if (later.start < span.end) faults.push(`${maker}: ${span.what} and ${later.what} overlap.`);
      else if (span.rest !== null && later.rest !== null && later.start - span.end < Math.max(span.rest, later.rest)) {
        faults.push(`${maker}: ${span.what} and ${later.what} are straining and without a rest between them.`);
      }
    }
  });
  return faults;
}
