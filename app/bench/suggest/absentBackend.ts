// Stands in for what the landmark library can also use and we do not: another runtime and a graphics backend. Without it
// both would be bundled, megabytes that never run.
export const Pose = undefined;
export const webgpu_util = undefined;
/** Nothing is ever one. */
export function WebGPUBackend(): void {}
