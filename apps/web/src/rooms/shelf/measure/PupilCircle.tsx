/** A pupil as large as it is, with a line of 20 mm to hold a ruler to: few screens are true to size. */
export function PupilCircle({ diameterMm }: { readonly diameterMm: number }) {
  const width = Math.max(diameterMm, 20) + 2;
  const height = diameterMm + 8;
  const middle = width / 2;
  return (
    <figure className="Shelf-TrueHole">
      <svg
        width={`${width}mm`}
        height={`${height}mm`}
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={`A hole of ${diameterMm.toFixed(1)} millimetres, true to size where the line under it measures 20 millimetres`}
        fill="none"
        stroke="currentColor"
        strokeWidth="0.4"
      >
        <circle cx={middle} cy={diameterMm / 2 + 1} r={diameterMm / 2} />
        <path
          d={`M${middle - 10} ${diameterMm + 5}h20M${middle - 10} ${diameterMm + 3.5}v3M${middle + 10} ${diameterMm + 3.5}v3`}
        />
      </svg>
      <figcaption className="small soft">
        True to size where the line under it is 20 mm by your ruler. Held against the lens, it shows a misreading at
        once.
      </figcaption>
    </figure>
  );
}
