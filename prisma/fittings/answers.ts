import type { PlainDate } from "#lib/calendar/plainDate";
import type { FittedAt, FittingAnswer } from "#lib/fittings/answer";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import { type Hand, inProduction } from "../inProduction";
import { databaseDate, plainDate } from "../plainDates";
import { performerId } from "./performer";

export interface KeptAnswer extends FittedAt {
  readonly answer: FittingAnswer;
  readonly on: PlainDate;
  readonly note: string;
  readonly fit: boolean;
  readonly movement: boolean;
  readonly look: boolean;
  readonly at: Date;
  readonly who: string | null;
}

export type NewAnswer = Omit<KeptAnswer, "at" | "who">;

/** How the fittings of a production went, the newest answer first. */
export async function listAnswers(company: AuthorizedCompany, production: string): Promise<readonly KeptAnswer[]> {
  const rows = await database().fittingAnswer.findMany({
    where: { companyId: company, production: { code: production } },
    include: { performer: { select: { code: true } }, by: { include: { user: { select: { name: true } } } } },
    orderBy: [{ createdAt: "desc" }, { id: "desc" }],
  });
  return rows.map((row) => ({
    garment: row.garmentNumber,
    fitting: row.fitting,
    performer: row.performer.code,
    answer: row.answer as FittingAnswer,
    on: plainDate(row.on),
    note: row.note,
    fit: row.fit,
    movement: row.movement,
    look: row.look,
    at: row.createdAt,
    who: row.by?.user.name ?? null,
  }));
}

/** Writes an answer down; older ones stay. */
export const addAnswer = (hand: Hand, { garment, performer, on, ...answer }: NewAnswer): Promise<void> =>
  inProduction(hand, async (tx, of) => {
    const row = { ...of, ...answer, garmentNumber: garment, performerId: await performerId(tx, of.companyId, performer) };
    const { id } = await tx.fittingAnswer.create({ data: { ...row, on: databaseDate(on) } });
    const detail = `${garment}: ${answer.fitting}, ${performer}: ${answer.answer}`;
    return { value: undefined, did: { action: "fitting answered", detail, subject: { table: "FittingAnswer", id } } };
  });
