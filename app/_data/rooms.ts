import type { Room } from "../_components/Rail";
import { may } from "../_gate/may";
import type { Member } from "../_gate/member";

/** The rooms outside any production that are open to a member. */
export const companyRooms = (member: Member): readonly Room[] => [
  { href: "/", name: "Productions" },
  ...(may(member.role, "access") ? [{ href: "/access", name: "People and access" }] : []),
  ...(may(member.role, "import") ? [{ href: "/import", name: "Bring in files" }] : []),
];
