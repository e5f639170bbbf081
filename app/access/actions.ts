"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { addMember, changeMember, type MemberRefusal } from "#prisma/people/members";
import { ROLES } from "#prisma/people/memberships";
import { memberAction } from "../_gate/action";
import { done, refused } from "../_gate/outcome";

const PASSWORD = z.string().min(10, "Ten characters or more.").max(200);

const SAID: Readonly<Record<MemberRefusal, string>> = {
  "address taken": "Somebody has this e-mail address already.",
  changed: "Somebody has changed this since you looked at it. Nothing was written: look at it again.",
  "elsewhere too": "This person belongs to another company too: their password is theirs alone to change.",
  "last supervisor": "There must be a supervisor: make somebody else one first.",
};

export const letIn = memberAction({
  act: "access",
  name: null,
  input: z.object({
    name: z.string().trim().min(1, "Write their name.").max(100),
    email: z.email("Write an e-mail address.").max(320),
    role: z.enum(ROLES, "Choose their part."),
    password: PASSWORD,
  }),
  run: async (member, person) => {
    const added = await addMember(member.company, member.user.id, person);
    if (!added.ok) return refused(SAID[added.error], { email: SAID[added.error] });
    revalidatePath("/access");
    return done(`${person.name} may come in as ${person.role}. Tell them the address and the password.`);
  },
});

const which = { user: z.string().min(1), version: z.coerce.number().int().positive() };

export const changePart = memberAction({
  act: "access",
  name: null,
  input: z.object({ ...which, role: z.enum(ROLES) }),
  run: async (member, { user, version, role }) => {
    const changed = await changeMember(member.company, member.user.id, { user, version, to: { role } });
    revalidatePath("/access");
    return changed.ok ? done(`Now ${role}.`) : refused(SAID[changed.error]);
  },
});

export const endOrGiveAccess = memberAction({
  act: "access",
  name: null,
  input: z.object({ ...which, ended: z.enum(["yes", "no"]) }),
  run: async (member, { user, version, ended }) => {
    const changed = await changeMember(member.company, member.user.id, { user, version, to: { ended: ended === "yes" } });
    revalidatePath("/access");
    if (!changed.ok) return refused(SAID[changed.error]);
    return done(ended === "yes" ? "Their access has ended; they were signed out." : "They may come in again.");
  },
});

export const giveNewPassword = memberAction({
  act: "access",
  name: null,
  input: z.object({ ...which, password: PASSWORD }),
  run: async (member, { user, version, password }) => {
    const changed = await changeMember(member.company, member.user.id, { user, version, to: { password } });
    revalidatePath("/access");
    return changed.ok ? done("The new password holds; they were signed out. Tell it to them.") : refused(SAID[changed.error]);
  },
});
