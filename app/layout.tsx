import type { Metadata } from "next";
import { Patterns } from "./_components/Patterns";
import { StateMarks } from "./_components/StateMarks";
import "./_look/layers.css";
import "./_look/tokens.css";
import "./_look/base.css";
import "./_look/frame.css";
import "./_look/heads.css";
import "./_look/press.css";
import "./_look/table.css";
import "./_look/marks.css";
import "./_look/print.css";
import { letters } from "./_look/letters";

export const metadata: Metadata = {
  title: { default: "Tarlatan", template: "%s · Tarlatan" },
  description: "The making of a ballet's wardrobe, planned: who wears what, what it takes, who makes it when, what to buy.",
};

const Layout = ({ children }: { readonly children: React.ReactNode }) => (
  <html lang="en-GB" className={letters}>
    <body>
      <Patterns />
      <StateMarks />
      {children}
    </body>
  </html>
);

export default Layout;
