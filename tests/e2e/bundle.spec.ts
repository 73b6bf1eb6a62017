import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import { hasFfmpeg } from '../support/hasFfmpeg.ts';
import { aFilm } from './aFilm.ts';
import { temporaryFolder } from './fixtures.ts';

// What a package holds is the bundle in out/main with assets and migrations beside it. No browser, no Electron needed.

test('the bundled program finds its migrations, typefaces and packages', () => {
  const folder = temporaryFolder();
  const run = (...words: string[]) =>
    execFileSync(process.execPath, ['out/main/cli.js', ...words, '--folder', path.join(folder, 'store'), '--json'], {
      encoding: 'utf8',
    });
  const { number } = JSON.parse(run('case', 'new')) as { number: string };
  const pdf = path.join(folder, 'report.pdf');
  run('report', number, '--out', pdf);
  expect(fs.readFileSync(pdf).subarray(0, 5).toString()).toBe('%PDF-');
  fs.rmSync(folder, { recursive: true });
});

test('the bundled program lists the pictures of a film in its thread', () => {
  test.skip(!hasFfmpeg, 'ffmpeg is not on this machine, so there is no film to list');
  const folder = temporaryFolder();
  const film = path.join(folder, 'throw.mp4');
  aFilm(film, { frames: 20, rateHz: 60, gop: 10 });
  const run = (...words: string[]) =>
    execFileSync(process.execPath, ['out/main/cli.js', ...words, '--folder', path.join(folder, 'store'), '--json'], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
  const { number } = JSON.parse(run('case', 'new')) as { number: string };
  const said = run('trial', 'import', number, film, '--movement', 'overhead-throw');
  expect(JSON.parse(said)).toMatchObject({ codec: 'avc', readablePictures: 20, promisedPictures: 20 });
  fs.rmSync(folder, { recursive: true });
});

test('the preload is one file that asks for nothing but electron, as a sandboxed preload must', () => {
  const text = fs.readFileSync('out/main/preload.cjs', 'utf8');
  const required = [...text.matchAll(/\brequire\((["'])(.*?)\1\)/g)].map(([, , name]) => name);
  expect(required).toEqual(['electron']);
  expect(text).not.toMatch(/^\s*(import|export)\s/m);
});
