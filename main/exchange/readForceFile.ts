import { c3dForce } from './c3d/c3dForce.ts';
import { isC3d } from './c3d/readC3d.ts';
import { type ForceCsv, type ForceCsvOptions, readForceCsv } from './forceCsv.ts';

/**
 * Vertical forces from a file of either kind: a C3D, told by how it begins, or delimited text.
 * @throws DomainError as c3dForce and readForceCsv
 */
export function readForceFile(bytes: Uint8Array, options: ForceCsvOptions): ForceCsv {
  return isC3d(bytes) ? c3dForce(bytes, options) : readForceCsv(new TextDecoder().decode(bytes), options);
}
