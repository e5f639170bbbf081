import { MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import { workroomHours } from "#lib/labour/calendars";
import { minutesWithin } from "#lib/labour/intervals";
import type { Cause, Interval, LevellingAnswer, Link } from "#lib/levelling/problem";
import { showHours } from "#lib/units/hours";
import type { Minutes } from "#lib/units/quantities";
import { toWall } from "./axis";
import { absenceIn, isOwnWork, linkText, onWall, type Telling } from "./linkWords";
import { namesOf } from "./names";
import type { Prepared } from "./prepared";

/** One cause of a garment's lateness, all its links together. */
export interface Reason {
  /** Hours of the workroom that went into it on the way to the finish. */
  readonly minutes: Minutes;
  readonly text: string;
  readonly mend: string;
}

/** Why a garment is late: its links in words, and what they come to. */
export interface Lateness {
  readonly links: readonly (Interval & { readonly text: string; readonly cause: Cause })[];
  /** The longest first; the usual hours of its makers and its own work last. */
  readonly reasons: readonly Reason[];
}

/** By garment; none for those in time. Times are of the wall clock. */
export const latenesses = (prepared: Prepared, answer: LevellingAnswer): ReadonlyMap<string, Lateness> => {
  const names = namesOf(prepared);
  const open = openHours(prepared);
  return new Map(
    answer.late.flatMap(({ due, links }) => {
      const node = prepared.nodes[prepared.problem.dues[due]!.node]!;
      if (node.kind !== "finished") return [];
      const telling = { prepared, answer, names, garment: node.garment };
      const told = links.map((link) => ({ text: linkText(telling, link), cause: link.cause, ...onWall(prepared, link) }));
      return [[node.garment, { links: told, reasons: reasonsOf(telling, links, open) }]];
    }),
  );
};

/** Nights and closed days are no reason. */
const reasonsOf = (telling: Telling, links: readonly Link[], open: readonly Interval[]): Reason[] => {
  const groups = new Map<string, { minutes: Minutes; links: Link[]; own: boolean; usual: boolean }>();
  for (const link of links) {
    const minutes = minutesWithin(onWall(telling.prepared, link), open);
    if (minutes === 0) continue;
    const own = isOwnWork(telling, link);
    const key = own ? "own" : keyOf(telling, link);
    const usual = link.cause === "calendar" && absenceIn(telling.prepared, telling.names, link) === null;
    const group = groups.get(key) ?? { minutes: 0, links: [], own, usual };
    groups.set(key, { own, usual, minutes: group.minutes + minutes, links: [...group.links, link] });
  }
  return [...groups.values()]
    .sort((a, b) => Number(a.own) - Number(b.own) || Number(a.usual) - Number(b.usual) || b.minutes - a.minutes)
    .map(({ minutes, links: alike, own }) => ({ minutes, ...(own ? ownWords(minutes) : words(telling, showHours(minutes), alike)) }));
};

/** Links with the same key are one reason. */
const keyOf = ({ prepared, names }: Telling, link: Link): string => {
  const { maker, machine, performer } = link.on ?? {};
  if (link.cause === "calendar") return JSON.stringify([link.cause, absenceIn(prepared, names, link)]);
  if (link.cause === "delivery") return JSON.stringify([link.cause, link.node]);
  if (link.cause === "lag" && prepared.nodes[link.node]!.kind === "approval") return JSON.stringify([link.cause, link.node]);
  return JSON.stringify([link.cause, maker, machine, performer]);
};

type Words = Pick<Reason, "text" | "mend">;

const ownWords = (minutes: Minutes): Words => ({
  text: `Its own work and fittings take ${showHours(minutes)} of the way.`,
  mend: "Simplify it with the designer, or begin sooner.",
});

const words = (telling: Telling, hours: string, links: readonly Link[]): Words => {
  const { prepared, names } = telling;
  const first = links[0]!;
  const { maker, machine, performer } = first.on ?? {};
  const others = listed(links.flatMap((link) => link.on?.node ?? []).map(names.node));
  switch (first.cause) {
    case "maker busy":
      return {
        text: `Waits ${hours} for ${maker === undefined ? "a maker" : names.maker(maker)}, busy with other work${others}.`,
        mend: `Another pair of hands with the same skill for ${hours}, or overtime.`,
      };
    case "machine":
      return {
        text: `Waits ${hours} for a machine${machine === undefined ? "" : ` (${names.machine(machine)})`}${others}.`,
        mend: "Borrow or hire (rent) another one.",
      };
    case "fitting":
      return maker === undefined
        ? {
            text: `Waits ${hours} until ${performer === undefined ? "the performer" : names.performer(performer)} can be fitted.`,
            mend: "Ask stage management for more time for fittings.",
          }
        : { text: `Waits ${hours} while ${names.maker(maker)} is at fittings.`, mend: "Let somebody else attend fittings." };
    case "delivery": {
      if (prepared.nodes[first.node]!.kind === "approval") return lookedAt(names.node(first.node), hours);
      const goods = prepared.deliveries.find(({ node }) => node === first.node)?.text;
      return {
        text: `Waits ${hours} for goods${goods === undefined ? "." : `. ${goods}`}`,
        mend: "Buy from a supplier who delivers sooner, or take it from the shelf.",
      };
    }
    case "calendar": {
      const absence = absenceIn(prepared, names, first);
      if (absence !== null) return { text: `Waits ${hours}: ${absence}.`, mend: "Find somebody with the same skill for these days." };
      const who = listed(links.flatMap((link) => (link.on?.maker === undefined ? [] : names.maker(link.on.maker))));
      return {
        text: `Waits ${hours} outside the hours its makers have for it: part time, breaks, or kept back for the repertoire${who}.`,
        mend: "Longer hours, overtime, or another pair of hands.",
      };
    }
    case "lag":
      if (prepared.nodes[first.node]!.kind === "approval") return lookedAt(names.node(first.node), hours);
      return { text: `Waits ${hours} for drying or hanging.`, mend: "Ask whether it may be shorter." };
    case "predecessor":
    case "work":
      return {
        text: `Waits ${hours} for work on others before it${listed(links.map(({ node }) => names.node(node)))}.`,
        mend: "Begin that sooner.",
      };
  }
};

const lookedAt = (approval: string, hours: string): Words => ({
  text: `Waits ${hours} for the ${approval}.`,
  mend: "Ask for an answer sooner, or show it sooner.",
});

const MOST_NAMED = 3;

/** `: one, two, three and 4 more`, each once. */
const listed = (names: readonly string[]): string => {
  const once = [...new Set(names)];
  if (once.length === 0) return "";
  const more = once.length > MOST_NAMED ? ` and ${once.length - MOST_NAMED} more` : "";
  return `: ${once.slice(0, MOST_NAMED).join(", ")}${more}`;
};

/** Hours of the workroom as if nobody were ever away: an absence is a reason, a night is not. */
const openHours = ({ staging, dayZero, axis, problem }: Prepared): Interval[] =>
  workroomHours(staging.makers, [], { from: dayZero, to: Math.ceil(toWall(axis, problem.horizon) / MINUTES_PER_DAY) });
