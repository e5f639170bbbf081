import type { Metadata } from "next";
import { showDate } from "#lib/calendar/showDay";
import { FILES } from "#lib/staging/files";
import { Frame } from "../_components/Frame";
import { companyRooms } from "../_data/rooms";
import { todayIn } from "../_data/today";
import { requireMember } from "../_gate/member";
import { ImportForm } from "./ImportForm";

export const metadata: Metadata = { title: "Bring in files" };

const Import = async () => {
  const member = await requireMember("import");
  return (
    <Frame
      member={member}
      heading={{ title: member.companyName, small: "wardrobe" }}
      rooms={companyRooms(member)}
      room="/import"
      printed={showDate(todayIn("UTC"))}
    >
      <div className="top">
        <h1>Bring in files</h1>
        <p className="say">
          A production as CSV files from a spreadsheet, one by one or packed into a zip. First you see what would change; nothing is written
          before you say so.
        </p>
      </div>
      <ImportForm />
      <details className="part no-print">
        <summary className="small q">The files of a production</summary>
        <p className="small q">
          {Object.values(FILES)
            .map((file) => file.name)
            .join(", ")}
          , and constructions as JSON. Constructions that are not given are taken from those you keep, then from those that come with
          Tarlatan.
        </p>
      </details>
    </Frame>
  );
};

export default Import;
