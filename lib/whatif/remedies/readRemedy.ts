import type { PlainDate } from "#lib/calendar/plainDate";
import { garmentsOf } from "#lib/casting/garments";
import { meant } from "#lib/exchange/nearest";
import { SKILLS, type Skill } from "#lib/labour/skills";
import { failed, ok, type Result } from "#lib/result";
import type { Staging } from "#lib/staging/staging";
import { readHours } from "#lib/units/hours";
import { readMoney } from "#lib/units/money";
import { applyRemedy } from "./applyRemedy";
import type { Remedy } from "./remedy";

/** What each kind of remedy is told, in the order of the command line. */
export const REMEDY_FIELDS = {
  maker: ["skill", "days", "count"],
  overtime: ["who", "hours"],
  outwork: ["what", "price", "days"],
  simplify: ["piece", "parameter", "value"],
  deliver: ["material", "days"],
  machine: ["machine"],
} as const satisfies Readonly<Record<Remedy["kind"], readonly string[]>>;

/** More than any season has. */
const MOST_DAYS = 365;
const MOST_HANDS = 20;

/** Reads a remedy as it is typed; what is wrong with it comes back as one sentence. What begins on a day begins on `from`. */
export const readRemedy = (
  kind: Remedy["kind"],
  given: Readonly<Record<string, string>>,
  staging: Staging,
  from: PlainDate,
): Result<Remedy, string> => {
  const read = fields(kind, given, staging, from);
  if (!read.ok) return read;
  const applied = applyRemedy(staging, read.value);
  return applied.ok ? read : applied;
};

const fields = (
  kind: Remedy["kind"],
  given: Readonly<Record<string, string>>,
  staging: Staging,
  from: PlainDate,
): Result<Remedy, string> => {
  const text = (name: string) => (given[name] ?? "").trim();
  const days = whole(text("days"), "days", MOST_DAYS);
  switch (kind) {
    case "maker": {
      const count = whole(text("count") || "1", "people", MOST_HANDS);
      if (!isSkill(text("skill"))) return failed(noSkill(text("skill")));
      if (!days.ok) return days;
      if (!count.ok) return count;
      return ok({ kind, skill: text("skill") as Skill, count: count.value, days: days.value, from });
    }
    case "overtime": {
      const minutes = readHours(text("hours"));
      const who = text("who");
      if (!minutes.ok) return failed(`${minutes.error.problem} ${minutes.error.mend}`);
      if (minutes.value < 1) return failed("Overtime is more than none.");
      return ok({ kind, of: isSkill(who) ? { skill: who } : { maker: who }, minutes: minutes.value, from });
    }
    case "outwork": {
      const what = text("what");
      const sent = garmentsOf(staging).filter(({ number, piece, source }) => (number === what || piece === what) && source === "build");
      const price = readMoney(text("price"), staging.production.currency);
      if (sent.length === 0)
        return failed(`Nothing that is made here is called "${what}": give the number of a garment or the code of a piece.`);
      if (!price.ok) return failed(`${price.error.problem} ${price.error.mend}`);
      if (!days.ok) return days;
      return ok({ kind, garments: sent.map(({ number }) => number), price: price.value, days: days.value });
    }
    case "simplify":
      return ok({ kind, piece: text("piece"), parameter: text("parameter"), value: text("value") });
    case "deliver":
      return days.ok ? ok({ kind, material: text("material"), days: days.value }) : days;
    case "machine":
      return ok({ kind, machine: text("machine") });
  }
};

const isSkill = (text: string): text is Skill => SKILLS.some((skill) => skill === text);

const noSkill = (text: string): string => `There is no skill "${text}". ${meant(text, SKILLS, `There are: ${SKILLS.join(", ")}.`)}`;

const whole = (text: string, what: string, most: number): Result<number, string> =>
  /^\d{1,4}$/.test(text) && Number(text) >= 1 && Number(text) <= most
    ? ok(Number(text))
    : failed(`"${text}" is not a number of ${what} from 1 to ${most}.`);
