import { type ChangedRow, changedRow } from "#lib/editing/changedCells";
import type { Production } from "#lib/staging/staging";
import type { HistoryLine } from "#prisma/editing/history";
import type { MembershipRole } from "#prisma/people/memberships";
import { columnLabel } from "../../../_data/columnLabel";
import { capital } from "../../../_data/plural";
import { may } from "../../../_gate/may";
import { mayChange } from "../../../_gate/mayChange";

export interface ShownEntry {
  readonly id: string;
  readonly time: string;
  readonly who: string;
  /** What was done, in one line. */
  readonly what: string;
  readonly rows: readonly ShownRow[];
  /** The edit to be put back or done again; null when there is none, or it is not this person's to change. */
  readonly edit: { readonly id: string; readonly press: string } | null;
  readonly takenBack: string;
}

export interface ShownRow extends Omit<ChangedRow, "cells"> {
  readonly cells: readonly { readonly label: string; readonly before: string; readonly after: string }[];
}

/** Measurements are not told again by the history to who may not see them. */
const PRIVATE = "measurements.csv";
const MOST_ROWS = 60;

/** Lines of the history by day of the workroom. */
export const historyEntries = (
  lines: readonly HistoryLine[],
  { zone, words }: Production,
  role: MembershipRole,
): readonly { readonly day: string; readonly entries: readonly ShownEntry[] }[] => {
  const show = (at: Date, options: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat("en-GB", { ...options, timeZone: zone }).format(at);
  const days = new Map<string, ShownEntry[]>();
  for (const { id, at, who, action, detail, edit } of lines) {
    const day = show(at, { weekday: "long", day: "numeric", month: "long", year: "numeric" });
    const entry: ShownEntry = {
      id,
      time: show(at, { hour: "2-digit", minute: "2-digit" }),
      who: who ?? "The command line",
      what: edit && edit.kind === "do" ? edit.title : `${capital(action)}: ${detail}`,
      rows: (edit?.changes ?? []).slice(0, MOST_ROWS).map((change) => {
        const { cells, ...row } = changedRow(change);
        const hidden = change.file === PRIVATE && !may(role, "sheets");
        return { ...row, cells: hidden ? [] : cells.map(({ heading, ...cell }) => ({ ...cell, label: columnLabel(heading, words) })) };
      }),
      edit:
        edit && !edit.takenBack && edit.changes.every(({ file }) => mayChange(role, file))
          ? { id: edit.id, press: edit.kind === "undo" ? "Do again" : "Put back" }
          : null,
      takenBack: edit?.takenBack ? (edit.kind === "undo" ? "done again since" : "put back since") : "",
    };
    days.set(day, [...(days.get(day) ?? []), entry]);
  }
  return [...days].map(([day, entries]) => ({ day, entries }));
};
