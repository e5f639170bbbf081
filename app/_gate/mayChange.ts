import { fileKeyOf } from "#lib/editing/rows";
import type { FileKey } from "#lib/staging/tables";
import type { MembershipRole } from "#prisma/people/memberships";
import { type Act, may } from "./may";

/** Any of the acts is enough to change rows of the file. */
const ACTS: Readonly<Record<FileKey, readonly Act[]>> = {
  production: ["settings"],
  milestones: ["settings"],
  sizes: ["settings", "measure"],
  performers: ["measure"],
  measurements: ["measure"],
  roles: ["cast"],
  casting: ["cast"],
  scenes: ["cast"],
  appearances: ["cast", "wardrobe"],
  costumes: ["wardrobe"],
  sets: ["wardrobe"],
  pieces: ["wardrobe"],
  makers: ["workroom"],
  absences: ["workroom"],
  machines: ["workroom"],
  materials: ["stock"],
  offers: ["stock"],
  lots: ["stock"],
  stock: ["stock", "wardrobe"],
  calls: ["cast", "workroom"],
  approvals: ["wardrobe", "workroom"],
  otherWork: ["wardrobe", "workroom", "work"],
};

/** Whether a member may change rows of one of a staging's files, by its name. */
export const mayChange = (role: MembershipRole, file: string): boolean => ACTS[fileKeyOf(file)].some((act) => may(role, act));
