"use client";

import { useSyncExternalStore } from "react";

const never = () => () => {};

/** Opens the browser's own printing; without scripts it is not shown, since it could do nothing. */
export const PrintThis = ({ children }: { readonly children: React.ReactNode }) => {
  const scripts = useSyncExternalStore(
    never,
    () => true,
    () => false,
  );
  return (
    scripts && (
      <button type="button" className="press" onClick={() => window.print()}>
        {children}
      </button>
    )
  );
};
