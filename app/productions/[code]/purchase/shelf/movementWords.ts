import type { ShelfMovement } from "#prisma/stock/shelf";

/** What a movement is called. */
export const MOVEMENT_WORDS: Readonly<Record<ShelfMovement["kind"], string>> = {
  received: "came",
  cut: "cut",
  "put back": "put back",
  returned: "sent back",
  counted: "counted",
  adjusted: "adjusted",
  parted: "parted off",
  moved: "moved",
  register: "by the register",
};
