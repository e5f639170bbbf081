import { isDeepStrictEqual } from "node:util";
import type { Construction } from "#lib/constructions/construction";
import type { Fault } from "#lib/exchange/fault";
import type { Staging } from "#lib/staging/staging";
import { insertRows, upsertRows } from "../bulk";
import type { Transaction } from "../client";
import { need } from "../ids";
import { idsOf, type Saving } from "./saving";

/** A version of a construction never changes: plans and worked minutes refer to it. A fault for each that would. */
export async function changedVersions(
  tx: Transaction,
  companyId: string,
  constructions: readonly Construction[],
): Promise<readonly Fault[]> {
  const codes = constructions.map((construction) => construction.code);
  const kept = await tx.constructionVersion.findMany({
    where: { companyId, construction: { code: { in: codes } } },
    include: { construction: { select: { code: true } } },
  });
  const changed = constructions.filter((construction) =>
    kept.some(
      ({ construction: { code }, number, data }) =>
        code === construction.code && number === construction.version && !isDeepStrictEqual(data, JSON.parse(JSON.stringify(construction))),
    ),
  );
  return changed.map(({ code, version }) => ({
    file: `constructions/${code}.json`,
    row: null,
    column: "version",
    problem: `Version ${version} of ${code} is kept already, with other content.`,
    mend: "Give the changed construction a higher version.",
  }));
}

/** Constructions with their versions, and which of them the production is made by. */
export async function saveConstructions(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId, productionId } = saving;
  await upsertRows(
    tx,
    "Construction",
    ["code"],
    [...new Set(staging.constructions.map(({ code }) => code))].map((code) => ({ companyId, code })),
  );
  const ids = await idsOf(saving, "construction");
  await upsertRows(
    tx,
    "ConstructionVersion",
    ["constructionId", "number"],
    staging.constructions.map((construction) => ({
      companyId,
      constructionId: need(ids, construction.code),
      number: construction.version,
      data: JSON.parse(JSON.stringify(construction)),
    })),
  );
  const versions = await tx.constructionVersion.findMany({
    where: { companyId },
    select: { id: true, constructionId: true, number: true },
  });
  const idOf = new Map(versions.map((version) => [`${version.constructionId}/${version.number}`, version.id]));
  await tx.productionConstruction.deleteMany({ where: { companyId, productionId } });
  await insertRows(
    tx,
    "ProductionConstruction",
    staging.constructions.map(({ code, version }, position) => ({
      companyId,
      productionId,
      versionId: need(idOf, `${need(ids, code)}/${version}`),
      position,
    })),
  );
}
