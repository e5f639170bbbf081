import type { Staging } from "#lib/staging/staging";
import type { FileKey } from "#lib/staging/tables";
import { saveCasts, saveRoles, saveScenes } from "./saveCasting";
import { saveConstructions } from "./saveConstructions";
import { saveLots, saveMaterials, saveOffers } from "./saveMaterials";
import { saveOtherWork } from "./saveOtherWork";
import { saveCalls, saveMeasurements, savePerformers, saveSizes } from "./savePeople";
import { saveAppearances, saveCostumes, saveMilestones, savePieces, saveSets, saveStock } from "./saveWardrobe";
import { saveAbsences, saveMachines, saveMakers } from "./saveWorkroom";
import type { Saving } from "./saving";

interface Part {
  readonly files: readonly (FileKey | "constructions")[];
  readonly save: (saving: Saving, staging: Staging) => Promise<void>;
}

/** Each after those it refers to. */
const PARTS: readonly Part[] = [
  { files: ["sizes"], save: saveSizes },
  { files: ["performers"], save: savePerformers },
  { files: ["measurements"], save: saveMeasurements },
  { files: ["calls"], save: saveCalls },
  { files: ["makers"], save: saveMakers },
  { files: ["machines"], save: saveMachines },
  { files: ["absences"], save: saveAbsences },
  { files: ["materials"], save: saveMaterials },
  { files: ["lots"], save: saveLots },
  { files: ["offers"], save: saveOffers },
  { files: ["constructions"], save: saveConstructions },
  { files: ["roles"], save: saveRoles },
  { files: ["scenes"], save: saveScenes },
  { files: ["casting"], save: saveCasts },
  { files: ["milestones"], save: saveMilestones },
  { files: ["costumes"], save: saveCostumes },
  { files: ["sets"], save: saveSets },
  { files: ["stock"], save: saveStock },
  { files: ["pieces"], save: savePieces },
  { files: ["appearances"], save: saveAppearances },
  { files: ["approvals", "otherWork"], save: saveOtherWork },
];

/** Writes a staging's rows; with `files`, only those of the files named. */
export async function saveParts(saving: Saving, staging: Staging, files: ReadonlySet<FileKey> | null): Promise<void> {
  const wanted = (key: FileKey | "constructions") => files === null || (key !== "constructions" && files.has(key));
  for (const part of PARTS) if (part.files.some(wanted)) await part.save(saving, staging);
  const { tx, companyId, productionId } = saving;
  const not = (codes: readonly string[]) => ({ where: { companyId, productionId, code: { notIn: [...codes] } } });
  const codes = (rows: readonly { readonly code: string }[]) => not(rows.map(({ code }) => code));
  // What the staging no longer has goes, in the order in which nothing points to it any more.
  if (wanted("pieces")) await tx.piece.deleteMany(codes(staging.pieces));
  if (wanted("sets")) await tx.garmentSet.deleteMany(codes(staging.sets));
  if (wanted("costumes")) await tx.costume.deleteMany(codes(staging.costumes));
  if (wanted("milestones")) await tx.milestone.deleteMany(codes(staging.milestones));
  if (wanted("scenes")) await tx.scene.deleteMany(codes(staging.scenes));
  if (wanted("casting")) await tx.cast.deleteMany(not(staging.casting.map((place) => place.cast)));
  if (wanted("roles")) await tx.role.deleteMany(codes(staging.roles));
}
