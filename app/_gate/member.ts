import { headers } from "next/headers";
import { redirect } from "next/navigation";
import { cache } from "react";
import { type FoundMembership, findMembership } from "#prisma/people/memberships";
import { auth } from "../_auth/auth";
import { type Act, may } from "./may";

/** Somebody who has come in, the company they belong to, and what they are there. */
export interface Member extends FoundMembership {
  readonly user: { readonly id: string; readonly name: string };
}

/** The member of this request; null when nobody is signed in or the account belongs to no company. */
export const currentMember = cache(async (): Promise<Member | null> => {
  // Asked for first: it tells a build that the page cannot be made without a request, before secret and database are missed.
  const from = await headers();
  const session = await auth().api.getSession({ headers: from });
  if (!session) return null;
  const membership = await findMembership(session.user.id);
  return membership && { user: { id: session.user.id, name: session.user.name }, ...membership };
});

/** The gate every page passes: who is not signed in goes to the door, who may not goes no further. */
export const requireMember = async (act: Act): Promise<Member> => {
  const member = await currentMember();
  if (!member) redirect("/sign-in");
  if (!may(member.role, act)) redirect("/not-yours");
  return member;
};
