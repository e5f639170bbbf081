/** The roles of a member, as the database names them. */
export const ROLES = ["supervisor", "cutter", "maker", "buyer", "designer", "stage management", "reader"] as const;
export type Role = (typeof ROLES)[number];

/** What is kept behind the gate, and who may. */
const MAY = {
  /** Look at productions, garments, the workroom. */
  read: ROLES,
  /** See a performer's measurements: personal data, for those who cut, make and fit. */
  measurements: ["supervisor", "cutter", "maker"],
  /** See prices. */
  money: ["supervisor", "cutter", "buyer", "designer"],
  /** Level the workroom again, and stop it. */
  level: ["supervisor", "cutter"],
  /** Bring files in. */
  import: ["supervisor"],
} as const satisfies Record<string, readonly Role[]>;

export type Act = keyof typeof MAY;

export const may = (role: Role, act: Act): boolean => (MAY[act] as readonly Role[]).includes(role);
