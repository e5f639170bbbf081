import type { Metadata } from "next";
import Link from "next/link";
import { find } from "#lib/staging/find";
import { ProductionFrame } from "../../../_components/ProductionFrame";
import { plural } from "../../../_data/plural";
import { requireProduction } from "../../../_data/requireProduction";
import { foundHref } from "./foundHref";
import { ResultKeys } from "./ResultKeys";

type Props = {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<{ readonly q?: string | string[] }>;
};

const MOST = 60;
const LONGEST = 200;

export const metadata: Metadata = { title: "Find" };

const Find = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const question = ([(await searchParams).q].flat()[0] ?? "").slice(0, LONGEST);
  const { staging, garments } = view.prepared;
  const results = find(staging, garments, question, MOST);
  return (
    <ProductionFrame member={member} view={view} room="none" question={question}>
      <div className="top">
        <h1>Find</h1>
        <p className="say">
          {question.trim() === "" ? (
            "A performer, garment, role, costume, material, maker or construction: by name, by number, or by who wears it."
          ) : results.length === 0 ? (
            <>
              Nothing here is called <b>{question}</b>. Try fewer letters, or a number.
            </>
          ) : (
            <>
              <b>{results.length === MOST ? `The first ${MOST}` : plural(results.length, "thing")}</b> called {question}.
            </>
          )}
        </p>
      </div>
      {results.length > 0 && (
        <ResultKeys>
          <ol className="lines narrow">
            {results.map(({ kind, code, name, note }) => (
              <li key={`${kind} ${code}`}>
                <Link href={foundHref(staging.production.code, kind, code)} prefetch={false}>
                  {kind === "garment" ? `${code} ${name}` : name}
                </Link>{" "}
                <span className="units">
                  {kind}
                  {note && `, ${note}`}
                </span>
              </li>
            ))}
          </ol>
        </ResultKeys>
      )}
    </ProductionFrame>
  );
};

export default Find;
