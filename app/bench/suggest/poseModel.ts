import './windowOfWorker.ts';
import { createDetector, type PoseDetector, SupportedModels } from '@tensorflow-models/pose-detection';
import { setWasmPaths } from '@tensorflow/tfjs-backend-wasm';
import { env, ready, setBackend } from '@tensorflow/tfjs-core';
import type { ModelPoint } from './suggestion.ts';

/** Finds the landmarks of one person in a picture. */
export interface PoseModel {
  find(image: ImageData): Promise<readonly ModelPoint[]>;
}

/** @param folder where the model and its arithmetic are served, with a slash at its end */
export async function openPoseModel(folder: string): Promise<PoseModel> {
  setWasmPaths(folder);
  // With threads it would start a worker from a text, which the page's policy forbids; it would wait for it forever.
  env().set('WASM_HAS_MULTITHREAD_SUPPORT', false);
  await setBackend('wasm');
  await ready();
  const detector: PoseDetector = await createDetector(SupportedModels.BlazePose, {
    runtime: 'tfjs',
    modelType: 'full',
    // Smoothing would make what is found depend on the order in which frames are visited.
    enableSmoothing: false,
    detectorModelUrl: `${folder}blazepose-detector.json`,
    landmarkModelUrl: `${folder}blazepose-full.json`,
  });
  return {
    async find(image) {
      // Otherwise it looks first where the person was in the picture before.
      detector.reset();
      const [pose] = await detector.estimatePoses(image);
      return pose?.keypoints ?? [];
    },
  };
}
