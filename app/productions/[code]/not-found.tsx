import Link from "next/link";

const NotFound = () => (
  <main id="room" className="page">
    <div className="top">
      <h1>Not on our list</h1>
      <p className="say">There is no such production, or no such garment in it.</p>
    </div>
    <Link className="press second" href="/">
      To the productions
    </Link>
  </main>
);

export default NotFound;
