import { showDay } from "#lib/calendar/showDay";
import { versionMeant } from "#lib/constructions/versions";
import { FITTING_ROOM } from "#lib/planning/people";
import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { showMoney } from "#lib/units/money";
import { words } from "#lib/words/words";
import type { Remedy } from "./remedy";

const MOST_NAMED = 4;

/** A remedy in words: `One more pair of hands for boned bodice, 10 working days from Mon 11 Jan`. */
export const remedyText = (staging: Staging, remedy: Remedy): string => {
  const { currency, words: usage } = staging.production;
  const { skills } = words(usage);
  switch (remedy.kind) {
    case "maker": {
      const { skill, count, days, from } = remedy;
      const hands = count === 1 ? "One more pair of hands" : `${count} more pairs of hands`;
      return `${hands} for ${skills[skill].toLowerCase()}, ${many(days, "working day")} from ${showDay(from)}`;
    }
    case "overtime": {
      const { of, minutes, from } = remedy;
      const who =
        "maker" in of
          ? (staging.makers.find(({ code }) => code === of.maker)?.name ?? of.maker)
          : `each who has the skill ${skills[of.skill].toLowerCase()}`;
      return `${showHours(minutes)} of overtime for ${who}, from ${showDay(from)}`;
    }
    case "outwork": {
      const { garments, price, days } = remedy;
      const more = garments.length > MOST_NAMED ? ` and ${garments.length - MOST_NAMED} more` : "";
      const named = `${garments.slice(0, MOST_NAMED).join(", ")}${more}`;
      return `${named} made out of the house: ${showMoney(price, currency, usage)} each, ${many(days, "day")}`;
    }
    case "simplify": {
      const piece = staging.pieces.find(({ code }) => code === remedy.piece);
      const known = piece?.construction ? versionMeant(staging.constructions, piece.construction, piece.version) : undefined;
      const one = known?.parameters.find(({ code }) => code === remedy.parameter);
      const now = piece?.parameters[remedy.parameter] ?? (one ? String(one.value) : "?");
      return `${piece?.name ?? remedy.piece}: ${one?.label[usage].toLowerCase() ?? remedy.parameter} ${remedy.value} instead of ${now}`;
    }
    case "deliver":
      return `${staging.materials.find(({ code }) => code === remedy.material)?.name ?? remedy.material} ${many(remedy.days, "day")} sooner`;
    case "machine":
      return remedy.machine === FITTING_ROOM ? "One more fitting room" : `One more machine: ${remedy.machine}`;
  }
};

const many = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;
