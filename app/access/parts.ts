import type { MembershipRole } from "#prisma/people/memberships";

/** What each part is for, in the words of the room. */
export const PARTS: readonly { readonly role: MembershipRole; readonly may: string }[] = [
  { role: "supervisor", may: "Everything: files, settings, who may come in." },
  { role: "cutter", may: "Measurements, costumes and how they are made, the workroom and its plan, prices." },
  { role: "maker", may: "Their work and fittings, and of measurements what a garment is cut by. No prices." },
  { role: "buyer", may: "Materials, suppliers, the shelf, orders and prices. No measurements." },
  { role: "designer", may: "Casting, costumes, prices, the history. No measurements." },
  { role: "stage management", may: "Looks at everything but measurements and prices." },
  { role: "reader", may: "Looks at everything but measurements and prices." },
];
