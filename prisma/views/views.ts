import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import { type Hand, inProduction } from "../inProduction";

/** A list as somebody wants to see it again. */
export interface KeptView {
  readonly id: string;
  readonly name: string;
  /** The address's query, without its question mark. */
  readonly query: string;
  readonly shared: boolean;
  /** Whether the one who asks keeps it. */
  readonly own: boolean;
}

type Room = "garments";

/** A member's own views of a room and those shared with everybody, by name. */
export async function listViews(company: AuthorizedCompany, user: string, production: string, room: Room): Promise<readonly KeptView[]> {
  const rows = await database().savedView.findMany({
    where: { companyId: company, production: { code: production }, room, OR: [{ byId: user }, { shared: true }] },
    orderBy: [{ name: "asc" }, { id: "asc" }],
  });
  return rows.map(({ id, name, query, shared, byId }) => ({ id, name, query, shared, own: byId === user }));
}

/** Keeps a view; one's own view of the same name is replaced. */
export const keepView = (hand: Hand, room: Room, view: Pick<KeptView, "name" | "query" | "shared">): Promise<void> =>
  inProduction(hand, async (tx, of) => {
    const key = { ...of, room, name: view.name };
    const { id } = await tx.savedView.upsert({
      where: { companyId_productionId_byId_room_name: key },
      create: { ...of, room, ...view },
      update: { query: view.query, shared: view.shared },
    });
    return { value: undefined, did: { action: "view kept", detail: `${room}: ${view.name}`, subject: { table: "SavedView", id } } };
  });

/** Takes a view of one's own away; false when there is none such. */
export const dropView = (hand: Hand, id: string): Promise<boolean> =>
  inProduction(hand, async (tx, of) => {
    const { count } = await tx.savedView.deleteMany({ where: { ...of, id } });
    const did = count === 0 ? null : { action: "view taken away", detail: "a view of a list", subject: { table: "SavedView", id } };
    return { value: count > 0, did };
  });
