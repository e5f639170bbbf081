import type { MembershipRole } from "#prisma/people/memberships";
import { PARTS } from "./parts";

/** The choice of a part. */
export const RoleField = ({ value, label }: { readonly value: MembershipRole; readonly label: string }) => (
  <label className="field">
    {label}
    <select key={value} name="role" defaultValue={value}>
      {PARTS.map(({ role }) => (
        <option key={role} value={role}>
          {role}
        </option>
      ))}
    </select>
  </label>
);
