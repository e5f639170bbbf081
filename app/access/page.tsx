import type { Metadata } from "next";
import { showDate } from "#lib/calendar/showDay";
import { listMembers, readAccessAudit } from "#prisma/people/members";
import { Frame } from "../_components/Frame";
import { plural } from "../_data/plural";
import { companyRooms } from "../_data/rooms";
import { showInstant } from "../_data/showDates";
import { todayIn } from "../_data/today";
import { requireMember } from "../_gate/member";
import { LetInForm } from "./LetInForm";
import { MemberLine } from "./MemberLine";
import { PARTS } from "./parts";

export const metadata: Metadata = { title: "People and access" };

const MOST_LINES = 30;

const dayOf = (at: Date): string =>
  new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", year: "numeric", timeZone: "UTC" }).format(at);

const Access = async () => {
  const member = await requireMember("access");
  const members = await listMembers(member.company);
  const lines = await readAccessAudit(member.company, MOST_LINES);
  const inside = members.filter(({ ended }) => ended === null);
  return (
    <Frame
      member={member}
      heading={{ title: member.companyName, small: "wardrobe" }}
      rooms={companyRooms(member)}
      room="/access"
      printed={showDate(todayIn("UTC"))}
    >
      <div className="top">
        <h1>People and access</h1>
        <p className="say">
          <b>{plural(inside.length, "person", "people")}</b> may come in. What somebody sees and does follows from their part; every change
          here is written down.
        </p>
      </div>
      <ul className="lines">
        {members.map((one) => (
          <MemberLine
            key={one.user}
            who={{ ...one, since: dayOf(one.since), ended: one.ended && dayOf(one.ended) }}
            self={one.user === member.user.id}
          />
        ))}
      </ul>
      <div className="cols part">
        <section aria-labelledby="new">
          <h2 id="new">Somebody new</h2>
          <LetInForm />
        </section>
        <section aria-labelledby="parts">
          <h2 id="parts">The parts</h2>
          <dl className="lines">
            {PARTS.map(({ role, may }) => (
              <div key={role} className="small">
                <dt className="b">{role}</dt>
                <dd>{may}</dd>
              </div>
            ))}
          </dl>
        </section>
        <section aria-labelledby="done">
          <h2 id="done">What was done</h2>
          {lines.length === 0 ? (
            <p className="q">Nothing yet.</p>
          ) : (
            <ol className="lines">
              {lines.map(({ id, at, who, action, detail }) => (
                <li key={id} className="small">
                  {detail}{" "}
                  <span className="units">
                    {action}, {who ?? "the command line"}, {showInstant(at, "UTC")} UTC
                  </span>
                </li>
              ))}
            </ol>
          )}
        </section>
      </div>
    </Frame>
  );
};

export default Access;
