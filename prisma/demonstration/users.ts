import { randomInt } from "node:crypto";
import type { NewUser } from "../people/users";

/** Letters and figures that cannot be taken for one another when read from a screen. */
const LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";

/** Sixteen letters in four groups: 79 bits. */
const newPassword = (): string =>
  Array.from({ length: 4 }, () => Array.from({ length: 4 }, () => LETTERS[randomInt(LETTERS.length)]).join("")).join("-");

const PEOPLE = [
  { role: "supervisor", name: "Orla Fennick" },
  { role: "cutter", name: "Tobin Ashgrove" },
  { role: "maker", name: "Mirel Sandow" },
  { role: "buyer", name: "Cass Underhay" },
  { role: "reader", name: "Jonty Wexcombe" },
] as const;

/** One invented person for each part, with a new password. The addresses are of a domain that nobody can own (RFC 2606). */
export const demonstrationUsers = (): readonly NewUser[] =>
  PEOPLE.map(({ role, name }) => ({ role, name, email: `${role}@tarlatan.example`, password: newPassword() }));
