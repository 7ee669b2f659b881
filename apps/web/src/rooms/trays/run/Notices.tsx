/** What the page has to say before the one next move: that it was gone, or what was not kept. */
export function Notices({ words }: { readonly words: readonly string[] }) {
  return (
    <div className="Trays-Run-notices">
      {words.map((one) => (
        <p key={one} className="Trays-Run-notice">
          {one}
        </p>
      ))}
    </div>
  );
}
