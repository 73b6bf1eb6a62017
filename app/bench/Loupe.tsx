import { type RefObject, useEffect, useRef } from 'react';
import type { Place } from '../../shared/kernel/track/image.ts';

/** Side of the loupe, px on screen, and how many times it enlarges. An odd number of film pixels has a middle one. */
const [SIDE, TIMES] = [168, 8];

/** The pixels around a place, enlarged, its exact middle under the cross. Stands in the corner away from the place. */
export function Loupe(props: {
  canvas: RefObject<HTMLCanvasElement | null>;
  at: Place | null;
  width: number;
  /** Drawn anew when the picture changes. */
  frame: number | null;
  marks: readonly Place[];
}) {
  const { canvas, at, width, frame, marks } = props;
  const loupe = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const [from, to] = [canvas.current, loupe.current?.getContext('2d')];
    if (at === null || frame === null || from === null || to === null || to === undefined) return;
    const side = SIDE / TIMES;
    to.imageSmoothingEnabled = false;
    to.fillStyle = '#000';
    to.fillRect(0, 0, SIDE, SIDE);
    // The middle of pixel 0 lies half a pixel inside the canvas.
    to.drawImage(from, at.x + 0.5 - side / 2, at.y + 0.5 - side / 2, side, side, 0, 0, SIDE, SIDE);
    const line = (path: Path2D) => {
      to.lineWidth = 3;
      to.strokeStyle = '#fff';
      to.stroke(path);
      to.lineWidth = 1;
      to.strokeStyle = '#000';
      to.stroke(path);
    };
    const middle = SIDE / 2;
    line(
      new Path2D(
        `M ${middle} 0 V ${middle - 8} M ${middle} ${middle + 8} V ${SIDE} M 0 ${middle} H ${middle - 8} M ${middle + 8} ${middle} H ${SIDE}`,
      ),
    );
    for (const { x, y } of marks) {
      const ring = new Path2D();
      ring.arc(middle + (x - at.x) * TIMES, middle + (y - at.y) * TIMES, 5, 0, 2 * Math.PI);
      line(ring);
    }
  }, [canvas, at, frame, marks]);
  return (
    <canvas
      ref={loupe}
      className={at !== null && at.x < width / 2 ? 'bench-loupe bench-loupe-right' : 'bench-loupe'}
      width={SIDE}
      height={SIDE}
      hidden={at === null}
      aria-hidden="true"
    />
  );
}
