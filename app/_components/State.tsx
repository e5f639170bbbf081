export type StateCode = "none" | "hand" | "wait" | "fit" | "alter" | "done" | "late" | "cut" | "note";

/** A state is a mark and a word, never a colour alone. */
export const State = ({ code, children }: { readonly code: StateCode; readonly children: React.ReactNode }) => (
  <span className={`state state-${code}`}>
    <svg width="14" height="14" aria-hidden="true">
      <use href={`#m-${code}`} />
    </svg>
    {children}
  </span>
);
