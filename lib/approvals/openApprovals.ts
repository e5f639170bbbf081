import type { Garment } from "#lib/casting/wardrobe";
import type { Staging } from "#lib/staging/staging";
import type { Approval } from "./approval";
import { type OtherTask, openTasks } from "./otherWork";

/** An approval nobody has given yet. */
export interface OpenApproval extends Omit<Approval, "approvedOn"> {
  /** Number of the garment looked at, which does not wait itself; null when it is not the approval of a prototype. */
  readonly prototype: string | null;
  /** Samples still to be made for it. */
  readonly samples: readonly OtherTask[];
}

/** Every approval still to be given: of prototypes in the order of the sets, then the others in their own. */
export const openApprovals = (
  { sets, approvals, otherWork }: Pick<Staging, "sets" | "approvals" | "otherWork">,
  garments: readonly Garment[],
): readonly OpenApproval[] => [
  ...sets.flatMap(({ code, name, prototype, approvedOn, approvalDays, freeUntil }): OpenApproval[] => {
    const first = garments.find((garment) => garment.set === code && garment.prototype);
    if (!prototype || approvedOn !== null || !first) return [];
    const looked = { by: "designer", days: approvalDays, askedOn: null, expectedOn: null, samples: [], prototype: first.number };
    return [{ code, title: name, ...looked, set: code, freeUntil, material: null }];
  }),
  ...approvals
    .filter(({ approvedOn }) => approvedOn === null)
    .map(({ approvedOn: _, ...approval }) => ({
      ...approval,
      prototype: null,
      samples: openTasks(otherWork).filter(({ shownFor }) => shownFor === approval.code),
    })),
];
