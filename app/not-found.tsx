import type { Metadata } from "next";
import Link from "next/link";
import { Mark } from "./_components/Mark";

export const metadata: Metadata = { title: "Not here" };

const NotFound = () => (
  <main id="room" className="page">
    <div className="mast">
      <Mark />
    </div>
    <div className="top">
      <h1>Not here</h1>
      <p className="say">There is nothing at this address.</p>
    </div>
    <Link className="press second" href="/">
      To the productions
    </Link>
  </main>
);

export default NotFound;
