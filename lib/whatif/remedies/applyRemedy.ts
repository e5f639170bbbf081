import { addDays } from "#lib/calendar/days";
import { versionMeant } from "#lib/constructions/versions";
import type { PrepareOptions } from "#lib/planning/prepare";
import { failed, ok, type Result } from "#lib/result";
import type { Staging } from "#lib/staging/staging";
import { eveningsOf, helpers } from "./hands";
import type { Remedy } from "./remedy";

/** A staging with a remedy applied, and what its plan must be told beside it. */
export interface Remedied {
  readonly staging: Staging;
  readonly options: Pick<PrepareOptions, "out" | "overtime">;
  /** Codes of the makers it adds. */
  readonly added: readonly string[];
}

/** Applies a remedy; fails with a sentence when the staging has not what it speaks of. */
export const applyRemedy = (staging: Staging, remedy: Remedy): Result<Remedied, string> => {
  const changed = (change: Partial<Staging>): Result<Remedied, string> =>
    ok({ staging: { ...staging, ...change }, options: {}, added: [] });
  switch (remedy.kind) {
    case "maker": {
      const makers = helpers(staging, remedy);
      if (makers === null) return failed("Nobody works here yet, so that nobody's hours can be lent to a newcomer.");
      return ok({
        staging: { ...staging, makers: [...staging.makers, ...makers] },
        options: {},
        added: makers.map(({ code }) => code),
      });
    }
    case "overtime": {
      const { of } = remedy;
      const asked = staging.makers.filter((maker) => ("maker" in of ? maker.code === of.maker : (maker.skills[of.skill] ?? 0) > 0));
      if (asked.length === 0) return failed("maker" in of ? `There is no maker "${of.maker}".` : "Nobody has the skill.");
      return ok({
        staging,
        options: { overtime: new Map(asked.map((maker) => [maker.code, eveningsOf(maker, staging, remedy)])) },
        added: [],
      });
    }
    case "outwork": {
      const sent = new Set(remedy.garments);
      return ok({ staging, options: { out: ({ number }) => (sent.has(number) ? remedy.days : null) }, added: [] });
    }
    case "simplify": {
      const wrong = wrongWith(staging, remedy);
      if (wrong !== null) return failed(wrong);
      const { parameter, value } = remedy;
      return changed({
        pieces: staging.pieces.map((piece) =>
          piece.code === remedy.piece ? { ...piece, parameters: { ...piece.parameters, [parameter]: value } } : piece,
        ),
      });
    }
    case "deliver": {
      if (!staging.materials.some(({ code }) => code === remedy.material)) return failed(`There is no material "${remedy.material}".`);
      return changed(sooner(staging, remedy.material, remedy.days));
    }
    case "machine": {
      if (!staging.machines.some(({ kind }) => kind === remedy.machine))
        return failed(`There is no machine of the kind "${remedy.machine}".`);
      const first = staging.machines.findIndex(({ kind }) => kind === remedy.machine);
      return changed({
        machines: staging.machines.map((machine, at) => (at === first ? { ...machine, count: machine.count + 1 } : machine)),
      });
    }
  }
};

const wrongWith = ({ pieces, constructions }: Staging, { piece: code, parameter, value }: Remedy & { kind: "simplify" }): string | null => {
  const piece = pieces.find((one) => one.code === code);
  if (!piece) return `There is no piece "${code}".`;
  const known = piece.construction === null ? undefined : versionMeant(constructions, piece.construction, piece.version);
  const one = known?.parameters.find((each) => each.code === parameter);
  if (!one) return `${piece.name} has no parameter "${parameter}".`;
  if (one.kind === "choice" && !one.options.some((option) => option.code === value))
    return `${parameter} is one of ${one.options.map((option) => option.code).join(", ")}.`;
  if ((one.kind === "count" || one.kind === "ratio") && !(Number(value) >= one.min && Number(value) <= one.max))
    return `${parameter} is from ${one.min} to ${one.max}.`;
  return null;
};

/** Lots on order arrive, and suppliers deliver, so many days sooner; nothing before it is ordered. */
const sooner = ({ offers, lots }: Staging, material: string, days: number): Pick<Staging, "offers" | "lots"> => ({
  offers: offers.map((offer) => (offer.material === material ? { ...offer, leadDays: Math.max(0, offer.leadDays - days) } : offer)),
  lots: lots.map((lot) => (lot.material === material && lot.arrives !== null ? { ...lot, arrives: addDays(lot.arrives, -days) } : lot)),
});
