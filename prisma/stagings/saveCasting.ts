import type { Staging } from "#lib/staging/staging";
import { insertRows, upsertRows } from "../bulk";
import { need, needOrNull } from "../ids";
import { changedRows, idsOf, type Saving } from "./saving";

/** Roles with their places. */
export async function saveRoles(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId, productionId } = saving;
  const rows = changedRows(saving, staging, "roles").map(({ row: { code, name, kind }, position }) => ({
    companyId,
    productionId,
    code,
    name,
    kind,
    position,
    version: 1,
  }));
  await upsertRows(tx, "Role", ["productionId", "code"], rows);
  const roles = await idsOf(saving, "role");
  const numbered = staging.roles.flatMap((role) =>
    Array.from({ length: role.places }, (_, at) => ({ companyId, roleId: need(roles, role.code), number: at + 1 })),
  );
  await upsertRows(tx, "Place", ["roleId", "number"], numbered);
  const most = JSON.stringify(staging.roles.map((role) => ({ role: need(roles, role.code), places: role.places })));
  await tx.$executeRaw`
    delete from place using jsonb_to_recordset(${most}::jsonb) as listed (role uuid, places int)
    where company_id = ${companyId}::uuid and role_id = role and number > places`;
}

export async function saveScenes(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId, productionId } = saving;
  const rows = changedRows(saving, staging, "scenes").map(({ row, position }) => ({
    companyId,
    productionId,
    ...row,
    position,
    version: 1,
  }));
  await upsertRows(tx, "Scene", ["productionId", "code"], rows);
}

/** Casts and who is in them. */
export async function saveCasts(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId, productionId } = saving;
  const codes = [...new Set(staging.casting.map((place) => place.cast))];
  await upsertRows(
    tx,
    "Cast",
    ["productionId", "code"],
    codes.map((code, position) => ({ companyId, productionId, code, position })),
  );
  const [casts, performers, sizeGroups] = [await idsOf(saving, "cast"), await idsOf(saving, "performer"), await idsOf(saving, "sizeGroup")];
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
      performerId: needOrNull(performers, place.performer),
      sizeGroupId: need(sizeGroups, place.sizeGroup),
      standing: place.standing,
      position,
    })),
  );
}
