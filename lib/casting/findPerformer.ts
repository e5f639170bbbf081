import { failed, ok, type Result } from "#lib/result";
import type { Performer } from "./casting";

type Named = Pick<Performer, "code" | "name">;

/** Letters without accents and case, so that `lea` finds Léa. */
const plain = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[\s_-]+/g, " ")
    .trim();

/** Performers one may mean by what is typed so far: those whose name, or any word of it, begins so; in the order of the list. Empty text means everybody. */
export const performersLike = <P extends Named>(typed: string, performers: readonly P[]): readonly P[] => {
  const wanted = plain(typed);
  if (wanted === "") return performers;
  const begins = (text: string) => text.startsWith(wanted) || text.includes(` ${wanted}`);
  const rank = ({ name, code }: P) => (plain(name).startsWith(wanted) ? 0 : begins(plain(name)) ? 1 : begins(plain(code)) ? 2 : 3);
  return performers.filter((each) => rank(each) < 3).toSorted((a, b) => rank(a) - rank(b));
};

/** The one performer meant by a name or code written out, or by a beginning that fits nobody else; fails with a sentence. */
export const performerMeant = <P extends Named>(written: string, performers: readonly P[]): Result<P, string> => {
  const wanted = plain(written);
  const exact = performers.filter(({ name, code }) => plain(name) === wanted || code === written.trim());
  const found = exact.length > 0 ? exact : performersLike(written, performers);
  const [one, other] = found;
  if (wanted === "" || !one) return failed(`Nobody is called "${written.trim()}".`);
  return other ? failed(`"${written.trim()}" may be ${one.name} or ${other.name}.`) : ok(one);
};
