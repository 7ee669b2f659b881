/** A sheet with the upturned skiff in it: dark silver left round it, or none. */
export function DarkOrClear({ dark }: { readonly dark: boolean }) {
  const hatching = Array.from({ length: 34 }, (_, place) => `M${place * 9 - 130} 132L${place * 9} 2`).join("");
  return (
    <svg className="Trays-Round-drawing" viewBox="0 0 172 132" fill="none" stroke="currentColor" aria-hidden="true">
      {dark && (
        <>
          <clipPath id="Trays-dark">
            <path d="M2 2H170V62Q150 44 126 46Q84 30 46 52Q24 66 2 58ZM2 104Q50 92 84 102Q124 110 170 98V130H2Z" />
          </clipPath>
          <path d={hatching} strokeWidth="3" clipPath="url(#Trays-dark)" />
        </>
      )}
      <path d="M22 88Q86 22 150 86Q86 106 22 88ZM22 88Q86 56 150 86" strokeWidth="2" strokeDasharray="3 5" />
      <rect x="1.5" y="1.5" width="169" height="129" strokeWidth="3" />
    </svg>
  );
}
