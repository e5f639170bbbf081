import type { Staging } from "#lib/staging/staging";
import { insertRows, upsertRows } from "../bulk";
import { type Ids, need, needOrNull } from "../ids";
import type { PeopleIds } from "./savePeople";
import { idsByCode, type Saving } from "./saving";

export interface CastingIds {
  readonly roles: Ids;
  readonly scenes: Ids;
}

/** Roles with their places, casts and who is in them, scenes. */
export async function saveCasting(saving: Saving, staging: Staging, people: PeopleIds): Promise<CastingIds> {
  const { tx, companyId, productionId } = saving;
  const where = { companyId, productionId };
  const select = { id: true, code: true } as const;
  await upsertRows(
    tx,
    "Role",
    ["productionId", "code"],
    staging.roles.map(({ code, name, kind }, position) => ({ ...where, code, name, kind, position, version: 1 })),
  );
  const roles = idsByCode(await tx.role.findMany({ where, select }));
  await upsertRows(
    tx,
    "Scene",
    ["productionId", "code"],
    staging.scenes.map((scene, position) => ({ ...where, ...scene, position, version: 1 })),
  );
  const codes = [...new Set(staging.casting.map((place) => place.cast))];
  await upsertRows(
    tx,
    "Cast",
    ["productionId", "code"],
    codes.map((code, position) => ({ ...where, code, position })),
  );
  await savePlaces(saving, staging, roles, people);
  return { roles, scenes: idsByCode(await tx.scene.findMany({ where, select })) };
}

async function savePlaces({ tx, companyId, productionId }: Saving, staging: Staging, roles: Ids, people: PeopleIds): Promise<void> {
  const casts = idsByCode(await tx.cast.findMany({ where: { companyId, productionId }, select: { id: true, code: true } }));
  const numbered = staging.roles.flatMap((role) =>
    Array.from({ length: role.places }, (_, at) => ({ companyId, roleId: need(roles, role.code), number: at + 1 })),
  );
  await upsertRows(tx, "Place", ["roleId", "number"], numbered);
  for (const role of staging.roles) {
    await tx.place.deleteMany({ where: { companyId, roleId: need(roles, role.code), number: { gt: role.places } } });
  }
  const rows = await tx.place.findMany({ where: { companyId, role: { productionId } }, include: { role: { select: { code: true } } } });
  const places = new Map(rows.map((row) => [`${row.role.code}/${row.number}`, row.id]));
  await tx.castPlace.deleteMany({ where: { companyId, cast: { productionId } } });
  await insertRows(
    tx,
    "CastPlace",
    staging.casting.map((place, position) => ({
      companyId,
      castId: need(casts, place.cast),
      placeId: need(places, `${place.role}/${place.place}`),
      performerId: needOrNull(people.performers, place.performer),
      sizeGroupId: need(people.sizeGroups, place.sizeGroup),
      standing: place.standing,
      position,
    })),
  );
}

/** What the staging no longer has goes, once nothing of it points there. */
export async function dropCasting({ tx, companyId, productionId }: Saving, staging: Staging): Promise<void> {
  const not = (codes: readonly string[]) => ({ where: { companyId, productionId, code: { notIn: [...codes] } } });
  await tx.scene.deleteMany(not(staging.scenes.map((scene) => scene.code)));
  await tx.cast.deleteMany(not(staging.casting.map((place) => place.cast)));
  await tx.role.deleteMany(not(staging.roles.map((role) => role.code)));
}
