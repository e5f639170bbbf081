import { showDay } from "#lib/calendar/showDay";
import { absentIntervals } from "#lib/labour/calendars";
import { shared } from "#lib/labour/intervals";
import type { Interval, LevellingAnswer, Link } from "#lib/levelling/problem";
import { toWall } from "./axis";
import type { Names } from "./names";
import type { Prepared } from "./prepared";

/** What a late garment's way is read with. */
export interface Telling {
  readonly prepared: Prepared;
  readonly answer: LevellingAnswer;
  readonly names: Names;
  readonly garment: string;
}

/** Whether the garment itself is worked on or fitted in the link; a batch it is part of counts. */
export const isOwnWork = ({ prepared, answer, garment }: Telling, { cause, node, start, on }: Link): boolean => {
  const of = prepared.nodes[node]!;
  if (cause === "predecessor")
    return (of.kind === "operation" && of.garments.includes(garment)) || (of.kind === "other" && of.garment === garment);
  if (cause === "fitting") return of.kind === "fitting" && on?.maker === undefined && start >= (answer.plan.placed[node]?.start ?? 0);
  return cause === "work";
};

/** One link in words: what goes on, or what is waited for. */
export const linkText = (telling: Telling, link: Link): string => {
  const { names } = telling;
  const what = names.node(link.node);
  if (isOwnWork(telling, link)) return what;
  const { maker, machine, performer, node } = link.on ?? {};
  const blocker = node === undefined ? "" : `: ${names.node(node)}`;
  switch (link.cause) {
    case "maker busy":
      return `${what} waits for ${maker === undefined ? "a maker" : names.maker(maker)}, busy${blocker}`;
    case "machine":
      return `${what} waits for a machine${machine === undefined ? "" : ` (${names.machine(machine)})`}${blocker}`;
    case "fitting":
      return maker === undefined
        ? `${what} waits until ${performer === undefined ? "the performer" : names.performer(performer)} can be fitted`
        : `${what} waits while ${names.maker(maker)} is at a fitting${blocker}`;
    case "delivery":
      return `${what} ${outsideWords(telling, link.node)}`;
    case "calendar":
      return `${what} waits: ${absenceIn(telling.prepared, names, link) ?? "outside working hours"}`;
    case "lag":
      return `${what} waits its time${node === undefined ? "" : ` after ${names.node(node)}`}`;
    case "predecessor":
    case "work":
      return `waits for ${what}`;
  }
};

/** What a node waits for from outside the workroom. */
const outsideWords = ({ prepared }: Telling, node: number): string => {
  const { kind } = prepared.nodes[node]!;
  return kind === "approval" ? "waits for the answer" : kind === "other" ? "waits until it is asked for" : "waits for goods";
};

/** `Bel Orrin (tutu maker) works for The Salt Orchard`, when another production has taken her time in the link. */
const takenIn = (prepared: Prepared, names: Names, link: Link): string | null => {
  const maker = link.on?.maker;
  if (maker === undefined || !prepared.taken) return null;
  const { start, end } = onWall(prepared, link);
  const { id } = prepared.problem.makers[maker]!;
  const found = prepared.taken.makers.find((span) => span.of === id && span.start < end && start < span.end);
  return found ? `${names.maker(maker)} works for ${found.by}` : null;
};

/** `Bel Orrin (tutu maker) is away Mon 1 Mar to Fri 19 Mar (leave)`, when an absence, or another production, is why nobody works in the link. */
export const absenceIn = (prepared: Prepared, names: Names, link: Link): string | null => {
  const { staging, problem } = prepared;
  const maker = link.on?.maker;
  const code = maker === undefined ? null : problem.makers[maker]!.id;
  const found = staging.absences.find(
    (absence) =>
      (absence.maker === null || absence.maker === code) && shared(absentIntervals(absence), [onWall(prepared, link)]).length > 0,
  );
  if (!found) return takenIn(prepared, names, link);
  const who = found.maker === null || maker === undefined ? "the workroom is closed" : `${names.maker(maker)} is away`;
  const until = found.to === found.from ? "" : ` to ${showDay(found.to)}`;
  return `${who} ${showDay(found.from)}${until}${found.reason === "" ? "" : ` (${found.reason})`}`;
};

export const onWall = ({ axis }: Prepared, { start, end }: Interval): Interval => ({ start: toWall(axis, start), end: toWall(axis, end) });
