/** A ground of thin slanted lines: marks an area without relying on colour. Refer to it as `url(#id)`. */
export function Hatch({ id, slant = 45, gap = 6 }: { id: string; slant?: number; gap?: number }) {
  return (
    <pattern id={id} width={gap} height={gap} patternUnits="userSpaceOnUse" patternTransform={`rotate(${slant})`}>
      <line className="hatch-line" x1={0} y1={0} x2={0} y2={gap} />
    </pattern>
  );
}
