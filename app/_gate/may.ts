import { type MembershipRole, ROLES } from "#prisma/people/memberships";

/** What is kept behind the gate, and who may. */
const MAY = {
  /** Look at productions, garments, the workroom. */
  read: ROLES,
  /** See a performer's measurements: personal data, for those who cut, make and fit. */
  measurements: ["supervisor", "cutter", "maker"],
  /** See a performer's sheets whole and over time; who makes sees what a garment is cut by. */
  sheets: ["supervisor", "cutter"],
  /** See prices, and what is bought. */
  money: ["supervisor", "cutter", "buyer", "designer"],
  /** See what lies on the shelf, and the dye book: whoever takes cloth off it. */
  shelf: ["supervisor", "cutter", "maker", "buyer", "designer"],
  /** Take cloth off the shelf, put it back, count and move it. */
  take: ["supervisor", "cutter", "maker", "buyer"],
  /** Level the workroom again, and stop it. */
  level: ["supervisor", "cutter"],
  /** Bring files in. */
  import: ["supervisor"],
  /** Change who dances what, and the running order. */
  cast: ["supervisor", "designer"],
  /** Change costumes, pieces, garments and how they are made. */
  wardrobe: ["supervisor", "cutter", "designer"],
  /** Change performers and take measurements. */
  measure: ["supervisor", "cutter", "maker"],
  /** Change makers, calendars, machines, and where work stands in the plan. */
  workroom: ["supervisor", "cutter"],
  /** Say that work is begun or done, and answer a fitting. */
  work: ["supervisor", "cutter", "maker"],
  /** Write a note on a garment, and add a photograph of it. */
  note: ["supervisor", "cutter", "maker", "buyer", "designer", "stage management"],
  /** Change materials, suppliers and the shelf; order, receive and return. */
  stock: ["supervisor", "buyer"],
  /** See who changed what, and take it back. */
  history: ["supervisor", "cutter", "designer", "buyer"],
  /** Change what holds for the whole production. */
  settings: ["supervisor"],
  /** Say who may come in, and as what. */
  access: ["supervisor"],
} as const satisfies Record<string, readonly MembershipRole[]>;

export type Act = keyof typeof MAY;

export const may = (role: MembershipRole, act: Act): boolean => MAY[act].some((each) => each === role);
