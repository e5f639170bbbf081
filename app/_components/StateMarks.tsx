/** A mark for each state, once a page; `State` sets one beside its word. */
export const StateMarks = () => (
  <svg width="0" height="0" aria-hidden="true" style={{ position: "absolute" }}>
    <symbol id="m-note" viewBox="0 0 14 14">
      <path d="M2.5 2.5h9v6l-3 3h-6z M5 5.5h4M5 8h2" fill="none" stroke="currentColor" strokeWidth="1.4" />
    </symbol>
    <symbol id="m-none" viewBox="0 0 14 14">
      <circle cx="7" cy="7" r="5" fill="none" stroke="currentColor" strokeWidth="1.6" />
    </symbol>
    <symbol id="m-hand" viewBox="0 0 14 14">
      <circle cx="7" cy="7" r="5" fill="none" stroke="currentColor" strokeWidth="1.6" />
      <path d="M7 2a5 5 0 0 1 0 10z" fill="currentColor" />
    </symbol>
    <symbol id="m-wait" viewBox="0 0 14 14">
      <path d="M2.5 2h9M2.5 12h9M4.5 2v10M9.5 2v10M4.5 5h5M4.5 7.3h5M4.5 9.6h5" fill="none" stroke="currentColor" strokeWidth="1.3" />
    </symbol>
    <symbol id="m-fit" viewBox="0 0 14 14">
      <circle cx="10" cy="3.6" r="2.6" fill="currentColor" />
      <path d="M8.4 5.4L2.5 12.5" stroke="currentColor" strokeWidth="1.6" />
    </symbol>
    <symbol id="m-alter" viewBox="0 0 14 14">
      <path d="M3 3l8 8M11 3l-8 8" stroke="currentColor" strokeWidth="2" fill="none" />
    </symbol>
    <symbol id="m-done" viewBox="0 0 14 14">
      <circle cx="7" cy="5.6" r="4" fill="currentColor" />
      <path d="M5 9l-2.2 4M9 9l2.2 4" stroke="currentColor" strokeWidth="1.6" />
    </symbol>
    <symbol id="m-late" viewBox="0 0 14 14">
      <path d="M3.5 12.5L7 1.5M8 12.5L11.5 1.5" stroke="currentColor" strokeWidth="2.2" fill="none" />
    </symbol>
    <symbol id="m-cut" viewBox="0 0 14 14">
      <circle cx="7" cy="7" r="5" fill="none" stroke="currentColor" strokeWidth="1.4" />
      <path d="M3.5 10.5l7-7" stroke="currentColor" strokeWidth="1.4" />
    </symbol>
  </svg>
);
