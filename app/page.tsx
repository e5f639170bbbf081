import type { Metadata } from "next";
import Link from "next/link";
import { showDate, showDay } from "#lib/calendar/showDay";
import { type ListedProduction, listProductions } from "#prisma/stagings/list";
import { Frame } from "./_components/Frame";
import { productionHref } from "./_data/address";
import { plural } from "./_data/plural";
import { companyRooms } from "./_data/rooms";
import { todayIn } from "./_data/today";
import { may } from "./_gate/may";
import { requireMember } from "./_gate/member";

export const metadata: Metadata = { title: "Productions" };

const Line = ({ production, today }: { readonly production: ListedProduction; readonly today: string }) => {
  const next = production.milestones.find((milestone) => milestone.date >= today);
  const opening = production.milestones.find((milestone) => milestone.kind === "opening");
  return (
    <li>
      <h2>
        <Link href={productionHref(production.code)} prefetch={false}>
          {production.title}
        </Link>
      </h2>
      <p className="q">{production.subtitle}</p>
      <p className="small">
        {next ? (
          <>
            Next: <b>{next.name}</b>, {showDay(next.date)}.{" "}
          </>
        ) : (
          "All its days are past. "
        )}
        {opening && opening !== next && `Opens ${showDate(opening.date)}.`}
      </p>
    </li>
  );
};

const Productions = async () => {
  const member = await requireMember("read");
  const productions = await listProductions(member.company);
  const today = todayIn("UTC");
  return (
    <Frame
      member={member}
      heading={{ title: member.companyName, small: "wardrobe" }}
      rooms={companyRooms(member)}
      room="/"
      printed={showDate(today)}
    >
      <div className="top">
        <h1>Productions</h1>
        <p className="say">
          {productions.length === 0
            ? "Nothing is being staged yet."
            : `${plural(productions.length, "production")} of ${member.companyName}.`}
        </p>
      </div>
      {productions.length === 0 ? (
        <section className="board">
          <h2>Begin with a spreadsheet</h2>
          <p className="q">
            A production comes in as a folder of CSV files: its days, performers, casting, costumes, pieces, makers and materials. Each file
            is described in seed/README.md, and seed/small is one to copy.
          </p>
          {may(member.role, "import") ? (
            <p className="acts">
              <Link className="press" href="/import">
                Bring in files
              </Link>
            </p>
          ) : (
            <p>The supervisor can bring one in.</p>
          )}
        </section>
      ) : (
        <ul className="lines">
          {productions.map((production) => (
            <Line key={production.code} production={production} today={today} />
          ))}
        </ul>
      )}
    </Frame>
  );
};

export default Productions;
