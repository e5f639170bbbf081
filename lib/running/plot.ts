import type { Scene } from "#lib/casting/casting";
import type { Staging } from "#lib/staging/staging";
import type { Minutes } from "#lib/units/quantities";
import { type ChangePlace, placeOfChange } from "./changes";

/** The evening across: scenes, and the gaps between them that are intervals. */
export type PlotColumn =
  | { readonly kind: "scene"; readonly scene: Scene }
  | { readonly kind: "interval"; readonly after: string; readonly minutes: Minutes };

/** What a role wears in a scene. */
export interface PlotCell {
  readonly costumes: readonly string[];
  /** Since the role was last on in another costume; null when it comes on for the first time, or in the same. */
  readonly change: { readonly minutes: Minutes; readonly where: ChangePlace } | null;
}

interface PlotRow {
  readonly role: string;
  /** By scene; null where the role is off. */
  readonly cells: ReadonlyMap<string, PlotCell>;
}

/** The costume plot: who wears what when. */
export interface Plot {
  readonly columns: readonly PlotColumn[];
  readonly rows: readonly PlotRow[];
  /** From curtain up to the end of the last scene, intervals counted. */
  readonly minutes: Minutes;
}

export const costumePlot = (staging: Pick<Staging, "scenes" | "roles" | "appearances">): Plot => {
  const scenes = staging.scenes.toSorted((a, b) => a.starts - b.starts);
  return {
    columns: scenes.flatMap((scene, at): readonly PlotColumn[] => {
      const before = scenes[at - 1];
      const gap = before ? scene.starts - (before.starts + before.minutes) : 0;
      return [...(before && gap > 0 ? [{ kind: "interval", after: before.code, minutes: gap } as const] : []), { kind: "scene", scene }];
    }),
    rows: staging.roles.map(({ code }) => ({ role: code, cells: cellsOf(code, scenes, staging.appearances) })),
    minutes: Math.max(0, ...scenes.map(({ starts, minutes }) => starts + minutes)),
  };
};

const cellsOf = (role: string, scenes: readonly Scene[], appearances: Staging["appearances"]): ReadonlyMap<string, PlotCell> => {
  const cells = new Map<string, PlotCell>();
  let last: { readonly costume: string; readonly scene: Scene } | null = null;
  for (const scene of scenes) {
    const costumes = [
      ...new Set(appearances.filter((each) => each.role === role && each.scene === scene.code).map(({ costume }) => costume)),
    ];
    const [first] = costumes;
    if (first === undefined) continue;
    // More than one in a scene: the change is made within it, in no time at all.
    const minutes: Minutes = costumes.length > 1 || !last ? 0 : Math.max(0, scene.starts - (last.scene.starts + last.scene.minutes));
    const changes = costumes.length > 1 || (last !== null && last.costume !== first);
    cells.set(scene.code, { costumes, change: changes ? { minutes, where: placeOfChange(minutes) } : null });
    last = { costume: costumes.at(-1)!, scene };
  }
  return cells;
};
