import type { Metadata } from "next";
import Link from "next/link";
import { Mark } from "../_components/Mark";
import { requireMember } from "../_gate/member";

export const metadata: Metadata = { title: "Not yours" };

const NotYours = async () => {
  const member = await requireMember("read");
  return (
    <main id="room" className="page">
      <div className="mast">
        <Mark />
      </div>
      <div className="top">
        <h1>Not yours to open</h1>
        <p className="say">
          You are here as <b>{member.role}</b>, and this room is kept for others. The supervisor can change that.
        </p>
      </div>
      <Link className="press second" href="/">
        To the productions
      </Link>
    </main>
  );
};

export default NotYours;
