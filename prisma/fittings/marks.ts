import type { Edit, EditRefusal } from "#lib/editing/edit";
import type { Finding, FittedAt } from "#lib/fittings/answer";
import type { Result } from "#lib/result";
import type { Staging } from "#lib/staging/staging";
import { writeAuditIn } from "../audit";
import type { AuthorizedCompany } from "../authorized";
import { database, type Transaction } from "../client";
import { inTurn, type KeptEdit, keepEditIn, type NoProduction } from "../editing/keepEdit";
import { type Hand, inProduction, type Of } from "../inProduction";
import { performerId } from "./performer";

/** What was seen at one place of the body. */
export interface KeptMark extends FittedAt {
  readonly id: string;
  /** Named place of the figure. */
  readonly place: string;
  readonly finding: Finding;
  readonly text: string;
  /** Code of the other work it became. */
  readonly task: string | null;
  readonly at: Date;
  readonly who: string | null;
}

export type NewMark = Omit<KeptMark, "id" | "at" | "who" | "task">;

/** Marks of some garments of a production, in the order they were made. */
export async function listMarks(company: AuthorizedCompany, production: string, garments: readonly string[]): Promise<readonly KeptMark[]> {
  const rows = await database().fittingMark.findMany({
    where: { companyId: company, production: { code: production }, garmentNumber: { in: [...garments] } },
    include: { performer: { select: { code: true } }, by: { include: { user: { select: { name: true } } } } },
    orderBy: [{ createdAt: "asc" }, { id: "asc" }],
  });
  return rows.map((row) => ({
    id: row.id,
    garment: row.garmentNumber,
    fitting: row.fitting,
    performer: row.performer.code,
    place: row.place,
    finding: row.finding as Finding,
    text: row.text,
    task: row.task,
    at: row.createdAt,
    who: row.by?.user.name ?? null,
  }));
}

/** Writes a mark down that asks for no work. */
export const addMark = (hand: Hand, mark: NewMark): Promise<void> =>
  inProduction(hand, async (tx, of) => ({ value: undefined, did: await writeMark(tx, of, mark, null) }));

/** Work that a mark asks for, of the staging as it is; `code` is that of the other work it becomes. */
export type MakeWork<Refused> = (staging: Staging) => Result<Edit & { readonly code: string }, Refused>;

/** Keeps the work a mark asks for as an edit, and writes the mark down, both or neither. Gives the edit, so that it can be taken back. */
export const addMarkWithWork = <Refused>(
  { company, user, production }: Hand,
  mark: NewMark,
  make: MakeWork<Refused>,
): Promise<Result<KeptEdit, EditRefusal | NoProduction | Refused>> =>
  inTurn(company, async (tx): Promise<Result<KeptEdit, EditRefusal | NoProduction | Refused>> => {
    let task = "";
    const edit = (staging: Staging): Result<Edit, Refused> => {
      const made = make(staging);
      if (made.ok) task = made.value.code;
      return made;
    };
    const kept = await keepEditIn(tx, company, production, edit, { user, kind: "do", takesBackId: null });
    if (!kept.ok) return kept;
    const did = await writeMark(tx, { companyId: company, productionId: kept.value.productionId, byId: user }, mark, task);
    await writeAuditIn(tx, company, { user, production: kept.value.productionId, ...did });
    return kept;
  });

const writeMark = async (tx: Transaction, of: Of, { garment, performer, ...mark }: NewMark, task: string | null) => {
  const row = { ...of, ...mark, task, garmentNumber: garment, performerId: await performerId(tx, of.companyId, performer) };
  const { id } = await tx.fittingMark.create({ data: row });
  const detail = `${garment}, ${mark.place}: ${mark.finding}${mark.text && `, ${mark.text}`}`;
  return { action: "fitting marked", detail, subject: { table: "FittingMark", id } };
};

/** Takes a mark away; false when it is gone already. The work it became stays: it is taken back in the history. */
export const dropMark = (hand: Hand, id: string): Promise<boolean> =>
  inProduction(hand, async (tx, { companyId, productionId }) => {
    const row = await tx.fittingMark.findFirst({ where: { companyId, productionId, id } });
    if (!row) return { value: false, did: null };
    await tx.fittingMark.delete({ where: { id } });
    const detail = `${row.garmentNumber}, ${row.place}: ${row.finding}`;
    return { value: true, did: { action: "mark taken away", detail, subject: { table: "FittingMark", id } } };
  });
