import { showWall } from "#lib/calendar/showDay";
import { showHours } from "#lib/units/hours";
import { words } from "#lib/words/words";
import type { Answer, Asked } from "./answer";
import { lessDecoration, SECOND_PASS } from "./lessDecoration";
import type { Options } from "./options";
import { counted, moneyOf, sum } from "./told";

export const answerLessDecoration = async (asked: Asked, options: Options): Promise<Answer> => {
  const { plan } = asked;
  const dropped =
    options
      .text("drop")
      ?.split(",")
      .map((code) => code.trim()) ?? SECOND_PASS;
  const data = await lessDecoration(asked, options.text("piece"), dropped);
  const money = moneyOf(plan);
  const { skills, trade } = words(plan.staging.production.words);
  const { before, after } = data;
  const name = new Map(plan.staging.pieces.map((piece) => [piece.code, piece.name]));
  const change = (amount: number) => (amount < 0 ? `${money(-amount)} more` : money(amount));
  return {
    says:
      data.pieces.length === 0
        ? [`Nothing: no piece that is made has any of ${dropped.join(", ")}.`]
        : [
            `${showHours(sum(data.skills.map(({ saves }) => saves)))} of work, ${change(data.labour)} of ${trade.labour} and ${change(data.materials)} of materials.`,
            `Everything is done by ${showWall(after.finish)} (${showWall(before.finish)} with it), with ${counted(after.late, "garment")} late (${before.late} with it).`,
          ],
    tables: [
      {
        title: "Hours saved",
        headings: ["skill", "saves"],
        rows: data.skills.map(({ skill, saves }) => [skills[skill], showHours(saves)]),
      },
      {
        title: "Dropped",
        headings: ["piece", "name", "counts set to nothing"],
        rows: data.pieces.map(({ piece, parameters }) => [piece, name.get(piece) ?? "", parameters.join(", ")]),
      },
    ].filter(({ rows }) => rows.length > 0),
    reasons: [
      `By re-planning with these counts at nothing: ${dropped.join(", ")}. The second pass is taken to be the stones over the motifs (common practice, no source); ` +
        "--drop names other counts of the constructions.",
      "Packs are bought whole, so little less stone may save no pack. Ask the designer first, and note who agreed.",
    ],
    data,
  };
};
