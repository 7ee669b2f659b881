import type { ReactNode } from "react";

/** Drawings in place of icons, always beside the word. */
export function RoomDrawing({ of }: { readonly of: string }) {
  return (
    <svg
      width="92"
      height="72"
      viewBox="0 0 92 72"
      fill="none"
      stroke="currentColor"
      strokeWidth="2"
      strokeLinejoin="round"
      strokeLinecap="round"
      aria-hidden="true"
    >
      {drawings[of]}
    </svg>
  );
}

const drawings: Readonly<Record<string, ReactNode>> = {
  shelf: (
    <>
      <path d="M2 66H90" strokeWidth="3" />
      <path d="M10 64V34H52V64M10 34l4-6H56l-4 6M56 28V60l-4 4" />
      <path d="M20 46H42M20 52H36" strokeWidth="1.4" />
      <circle cx="73" cy="53" r="11" />
      <circle cx="73" cy="53" r="5" />
      <path d="M62 64h22" strokeWidth="1.4" />
    </>
  ),
  camera: (
    <>
      <path d="M38 20H84V56H38zM38 26l-8 4v18l8 5M30 31H20V47H30" />
      <path d="M17 29v20" strokeWidth="4" />
      <path d="M8 26l-5-5M8 52l-5 5M6 39H0" strokeWidth="1.4" />
      <path d="M61 56L48 71M61 56L76 71M61 56V71" strokeWidth="1.6" />
      <path d="M78 22v32" strokeWidth="1.4" strokeDasharray="3 3" />
    </>
  ),
  trays: (
    <>
      <path d="M4 44L10 62H82L88 44" />
      <path d="M6.5 51H85.5" strokeWidth="1.4" />
      <path d="M24 57L66 50" strokeWidth="4" />
      <path d="M60 49L74 16M66 50L80 18M74 16l6 2" />
    </>
  ),
  logbook: (
    <>
      <path d="M46 14C36 7 20 7 8 11V62C20 58 36 58 46 65C56 58 72 58 84 62V11C72 7 56 7 46 14V65" />
      <path d="M15 22q11-3 23 1M15 31q11-3 23 1" strokeWidth="1.4" />
      <rect x="55" y="20" width="20" height="15" strokeWidth="1.4" />
      <path d="M54 43q11-3 23 0" strokeWidth="1.4" />
    </>
  ),
};
