"use client";

import { useRouter } from "next/navigation";
import { useEffect } from "react";

const EVERY_MS = 3000;

/** Says that better cutting is being looked for, and looks again now and then; without scripts the reader does. */
export const WhileSought = () => {
  const router = useRouter();
  useEffect(() => {
    const timer = setInterval(() => router.refresh(), EVERY_MS);
    return () => clearInterval(timer);
  }, [router]);
  return (
    <p role="status" className="slip">
      Better cutting is being looked for. The plans below may be cut by already; what is found comes in by itself.
    </p>
  );
};
