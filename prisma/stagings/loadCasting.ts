import type { Appearance, CastPlace, Role, Scene } from "#lib/casting/casting";
import type { Transaction } from "../client";

interface Casting {
  readonly roles: readonly Role[];
  readonly casting: readonly CastPlace[];
  readonly scenes: readonly Scene[];
  readonly appearances: readonly Appearance[];
}

const byPosition = { orderBy: [{ position: "asc" as const }, { id: "asc" as const }] };
const code = { select: { code: true } } as const;

/** Who dances what, and what a role wears in which scene. */
export async function loadCasting(tx: Transaction, companyId: string, productionId: string): Promise<Casting> {
  const where = { companyId, productionId };
  const roles = await tx.role.findMany({ where, ...byPosition, include: { _count: { select: { places: true } } } });
  const scenes = await tx.scene.findMany({ where, ...byPosition });
  const casting = await tx.castPlace.findMany({
    where: { companyId, cast: { productionId } },
    include: { cast: code, performer: code, sizeGroup: code, place: { include: { role: code } } },
    ...byPosition,
  });
  const appearances = await tx.appearance.findMany({
    where: { companyId, scene: { productionId } },
    include: { role: code, scene: code, costume: code },
    ...byPosition,
  });
  return {
    roles: roles.map((role) => ({ code: role.code, name: role.name, kind: role.kind as Role["kind"], places: role._count.places })),
    casting: casting.map((row) => ({
      cast: row.cast.code,
      role: row.place.role.code,
      place: row.place.number,
      performer: row.performer?.code ?? null,
      sizeGroup: row.sizeGroup.code,
      standing: row.standing as CastPlace["standing"],
    })),
    scenes: scenes.map(({ code, name, act, starts, minutes }) => ({ code, name, act, starts, minutes })),
    appearances: appearances.map((row) => ({ role: row.role.code, scene: row.scene.code, costume: row.costume.code })),
  };
}
