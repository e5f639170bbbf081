import type { GarmentWork } from "#lib/breakdown/work";
import type { PlainDate } from "#lib/calendar/plainDate";
import { clothReady } from "#lib/purchasing/releases";
import type { Staging } from "#lib/staging/staging";
import type { Graph } from "./graph";
import type { PlanNote } from "./stagingPlan";

/** The first day on which the goods of a node are all on the table. */
export interface Delivery {
  readonly node: number;
  readonly day: PlainDate;
  readonly text: string;
}

/** What each node waits for from outside: only those that cannot begin today. Goods nobody can supply hold nothing up, but are noted. */
export const deliveries = (
  staging: Staging,
  works: readonly GarmentWork[],
  graph: Graph,
  today: PlainDate,
): { readonly deliveries: readonly Delivery[]; readonly notes: readonly PlanNote[] } => {
  const latest = new Map<number, Delivery>();
  const notes = new Map<string, PlanNote>();
  for (const [need, ready] of clothReady(staging, works, today)) {
    const name = staging.materials.find((material) => material.code === need.material)?.name ?? need.material;
    if (ready.day === null) {
      const mend = "Add an offer for it, or a lot on the shelf; the plan takes it as on hand.";
      notes.set(need.material, { kind: "material", about: need.material, text: ready.why, mend });
    } else if (ready.day > today)
      for (const node of graph.find(need.garment, need.operation)) {
        const known = latest.get(node);
        if (!known || known.day < ready.day) latest.set(node, { node, day: ready.day, text: `${name}: ${ready.why}` });
      }
  }
  return { deliveries: [...latest.values()].sort((a, b) => a.node - b.node), notes: [...notes.values()] };
};
