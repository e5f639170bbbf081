import type { PlainDate } from "#lib/calendar/plainDate";
import { SKILLS } from "#lib/labour/skills";
import type { LoadCell, StagingPlan } from "#lib/planning/stagingPlan";
import type { Minutes } from "#lib/units/quantities";

export interface Load {
  readonly planned: Minutes;
  readonly free: Minutes;
  /** Planned beyond what is free in ordinary hours: what hangs below the chalk line. */
  readonly over: Minutes;
}

export interface LoadRow extends Load {
  /** Skill, or code of the maker. */
  readonly code: string;
  /** One for each week, null where the skill has neither work nor hours. */
  readonly cells: readonly (Load | null)[];
  readonly weeksOver: number;
}

export interface LoadRows extends Load {
  readonly weeks: readonly PlainDate[];
  /** In the order of the skills, or of the makers. */
  readonly rows: readonly LoadRow[];
}

const sum = (cells: readonly (Load | null)[]): Load => ({
  planned: cells.reduce((total, cell) => total + (cell?.planned ?? 0), 0),
  free: cells.reduce((total, cell) => total + (cell?.free ?? 0), 0),
  over: cells.reduce((total, cell) => total + (cell?.over ?? 0), 0),
});

/** The load of the workroom as a table: a row a skill or a maker, a column a week. Its totals are sums of its cells, so they add up. */
export const loadRows = ({ load, staging }: Pick<StagingPlan, "load" | "staging">, by: LoadCell["by"] = "skill"): LoadRows => {
  const own = load.filter((cell) => cell.by === by);
  const weeks = [...new Set(own.map((cell) => cell.week))].sort();
  const codes = by === "skill" ? SKILLS : staging.makers.map((maker) => maker.code);
  const rows = codes
    .map((code) => {
      const cells = weeks.map((week): Load | null => {
        const cell = own.find((each) => each.code === code && each.week === week);
        return cell ? { planned: cell.planned, free: cell.free, over: Math.max(0, cell.planned - cell.free) } : null;
      });
      return { code, cells, ...sum(cells), weeksOver: cells.filter((cell) => cell && cell.over > 0).length };
    })
    .filter((row) => row.planned > 0 || row.free > 0);
  return { weeks, rows, ...sum(rows) };
};
