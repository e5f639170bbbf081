"use client";

const Failed = ({ error, reset }: { readonly error: Error & { readonly digest?: string }; readonly reset: () => void }) => (
  <main id="room" className="page">
    <div className="top">
      <h1>Something broke</h1>
      <p className="say">
        That is our fault, not yours; nothing you had kept is lost. Try again, and if it stays broken give whoever looks after this the
        number <b>{error.digest ?? "none"}</b>: it is in their log.
      </p>
    </div>
    <button type="button" className="press" onClick={reset}>
      Try again
    </button>
  </main>
);

export default Failed;
