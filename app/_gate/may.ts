import { type MembershipRole, ROLES } from "#prisma/people/memberships";

/** What is kept behind the gate, and who may. */
const MAY = {
  /** Look at productions, garments, the workroom. */
  read: ROLES,
  /** See a performer's measurements: personal data, for those who cut, make and fit. */
  measurements: ["supervisor", "cutter", "maker"],
  /** See prices, and what is bought. */
  money: ["supervisor", "cutter", "buyer", "designer"],
  /** Level the workroom again, and stop it. */
  level: ["supervisor", "cutter"],
  /** Bring files in. */
  import: ["supervisor"],
} as const satisfies Record<string, readonly MembershipRole[]>;

export type Act = keyof typeof MAY;

export const may = (role: MembershipRole, act: Act): boolean => MAY[act].some((each) => each === role);
