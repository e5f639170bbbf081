import { dayNumber } from "#lib/calendar/days";
import { showDay } from "#lib/calendar/showDay";
import { absentIntervals, workroomHours } from "#lib/labour/calendars";
import { shared, totalMinutes } from "#lib/labour/intervals";
import type { Cause, Link } from "#lib/levelling/problem";
import { showHours } from "#lib/units/hours";
import type { Minutes } from "#lib/units/quantities";
import { toWall } from "./axis";
import { type Names, namesOf } from "./names";
import type { Prepared } from "./prepared";

/** One cause of a garment's lateness, all its links together. */
export interface Reason {
  readonly cause: Cause;
  /** Open minutes of the workroom that went into it on the way to the finish. */
  readonly minutes: Minutes;
  readonly text: string;
  readonly mend: string;
}

/** The links of one late garment in words, and what they come to, the most telling first. Nights and closed days are no reason. */
export const reasonsOf = (prepared: Prepared, links: readonly Link[]): Reason[] => {
  const names = namesOf(prepared);
  const open = openHours(prepared);
  const groups = new Map<string, { cause: Cause; minutes: Minutes; links: Link[] }>();
  for (const link of links) {
    const minutes = totalMinutes(shared([wallOf(prepared, link)], open));
    if (minutes === 0) continue;
    const key = JSON.stringify([
      link.cause,
      link.on?.maker,
      link.on?.machine,
      link.on?.performer,
      link.cause === "delivery" ? link.node : 0,
    ]);
    const group = groups.get(key) ?? { cause: link.cause, minutes: 0, links: [] };
    groups.set(key, { ...group, minutes: group.minutes + minutes, links: [...group.links, link] });
  }
  const rank = ({ cause }: { cause: Cause }) => (cause === "work" ? 1 : 0);
  return [...groups.values()]
    .sort((a, b) => rank(a) - rank(b) || b.minutes - a.minutes)
    .map(({ cause, minutes, links: alike }) => ({ cause, minutes, ...wordsFor(prepared, names, cause, showHours(minutes), alike) }));
};

/** One link in words. */
export const linkText = (prepared: Prepared, link: Link): string => {
  const names = namesOf(prepared);
  const what = names.node(link.node);
  const on = link.on ?? {};
  const blocker = on.node === undefined ? "" : `: ${names.node(on.node)}`;
  switch (link.cause) {
    case "work":
      return what;
    case "maker busy":
      return `${what} waits for ${on.maker === undefined ? "somebody with the skill" : names.maker(on.maker)}, busy${blocker}`;
    case "machine":
      return `${what} waits for the ${on.machine === undefined ? "machine" : names.machine(on.machine)}${blocker}`;
    case "fitting":
      return `${what} waits until ${on.performer === undefined ? "the performer" : names.performer(on.performer)} can be fitted`;
    case "delivery":
      return `${what} waits for goods`;
    case "calendar":
      return `${what} waits: ${absenceIn(prepared, link) ?? "outside working hours"}`;
    case "lag":
      return `${what} waits its time${on.node === undefined ? "" : ` after ${names.node(on.node)}`}`;
    case "predecessor":
      return `${what} waits${blocker}`;
  }
};

const wordsFor = (prepared: Prepared, names: Names, cause: Cause, hours: string, links: readonly Link[]): Pick<Reason, "text" | "mend"> => {
  const first = links[0]!;
  const on = first.on ?? {};
  const others = [...new Set(links.flatMap((link) => link.on?.node ?? []))].map(names.node);
  const busy = others.length === 0 ? "" : `: ${others.slice(0, 3).join(", ")}${others.length > 3 ? ` and ${others.length - 3} more` : ""}`;
  switch (cause) {
    case "maker busy": {
      const who = on.maker === undefined ? "somebody with the skill" : names.maker(on.maker);
      return {
        text: `Waits ${hours} for ${who}, busy with other work${busy}.`,
        mend: `Another pair of hands with the same skill for ${hours}, or overtime.`,
      };
    }
    case "machine":
      return {
        text: `Waits ${hours} for a machine${on.machine === undefined ? "" : ` (${names.machine(on.machine)})`}${busy}.`,
        mend: "Borrow or hire another one.",
      };
    case "fitting": {
      const who = on.performer === undefined ? "a performer" : names.performer(on.performer);
      return { text: `Waits ${hours} until ${who} can be fitted.`, mend: `Ask stage management for more time of ${who}.` };
    }
    case "delivery": {
      const goods = prepared.deliveries.find(({ node }) => node === first.node)?.text ?? "Goods come late.";
      return { text: `Waits ${hours} for goods. ${goods}`, mend: "Buy from a supplier who delivers sooner, or take it from the shelf." };
    }
    case "calendar": {
      const absences = [...new Set(links.map((link) => absenceIn(prepared, link)).filter((text) => text !== null))];
      return absences.length > 0
        ? { text: `Waits ${hours}: ${absences.join("; ")}.`, mend: "Find somebody with the same skill for these days." }
        : { text: `Waits ${hours} for working hours of those who can do it.`, mend: "Longer hours, or another pair of hands." };
    }
    case "lag":
      return { text: `Waits ${hours} for drying, hanging or approval.`, mend: "Ask whether it may be shorter." };
    case "predecessor":
      return { text: `Waits ${hours} for what comes before it${busy}.`, mend: "Begin that sooner." };
    case "work":
      return {
        text: `Its own work takes ${hours} of the workroom's day on the way.`,
        mend: "Simplify it with the designer, or begin sooner.",
      };
  }
};

/** `Bel Orrin (tutu maker) is away Mon 1 Mar to Fri 19 Mar (surgery)`, when an absence is why nobody works in the link. */
const absenceIn = (prepared: Prepared, link: Link): string | null => {
  const { staging, problem } = prepared;
  const wall = wallOf(prepared, link);
  const maker = link.on?.maker === undefined ? null : problem.makers[link.on.maker]!.id;
  const found = staging.absences.find(
    (absence) => (absence.maker === null || absence.maker === maker) && shared(absentIntervals(absence), [wall]).length > 0,
  );
  if (!found) return null;
  const who = found.maker === null ? "the workroom is closed" : `${namesOf(prepared).maker(link.on!.maker!)} is away`;
  const until = found.to === found.from ? "" : ` to ${showDay(found.to)}`;
  return `${who} ${showDay(found.from)}${until}${found.reason === "" ? "" : ` (${found.reason})`}`;
};

const wallOf = ({ axis }: Prepared, { start, end }: Link) => ({ start: toWall(axis, start), end: toWall(axis, end) });

const openHours = ({ staging, dayZero, axis, problem }: Prepared) =>
  workroomHours(staging.makers, [], {
    from: Math.min(dayZero, dayNumber(staging.production.starts)),
    to: Math.ceil(toWall(axis, problem.horizon) / 1440),
  });
