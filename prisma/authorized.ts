/**
 * A company's id, proven: minted only by the session gate after it has found a membership, and by the worker and the command
 * line, which act for the company a job or a person names. Every repository function takes it first.
 */
export type AuthorizedCompany = string & { readonly __brand: "AuthorizedCompany" };

/** Call it only where the proof is: a grep for this name lists every such place. */
export const authorizeCompany = (companyId: string): AuthorizedCompany => companyId as AuthorizedCompany;
