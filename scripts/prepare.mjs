// What has to be there before anything runs: the packages of the lock file, and the compiled command.
// Plain JavaScript without packages, since there may be none yet.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..');

/** Runs a command in the project's folder; ends the process with its exit code if that is not 0. */
export function run(command, args, env = {}) {
  const { status, error } = spawnSync(command, args, {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...env },
    shell: process.platform === 'win32',
  });
  if (error) console.error(`${command}: ${error.message}`);
  if (status !== 0) process.exit(status ?? 1);
}

/** Starts a package's command beside what is run meanwhile; awaited, it ends the process if its exit code is not 0. */
export function startPackage(name, args) {
  const child = spawn(join(root, 'node_modules', '.bin', name), args, {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  return new Promise((done) => {
    child.on('error', (error) => {
      console.error(`${name}: ${error.message}`);
      process.exit(1);
    });
    child.on('exit', (status) => (status === 0 ? done() : process.exit(status ?? 1)));
  });
}

export const runPackage = (name, args, env) => run(join(root, 'node_modules', '.bin', name), args, env);

const readJson = (path) => JSON.parse(readFileSync(join(root, path), 'utf8'));

/** Whether every package of the lock file is there in its version; optional ones depend on the machine. */
function isInstalled() {
  if (!existsSync(join(root, 'node_modules/.package-lock.json'))) return false;
  const there = readJson('node_modules/.package-lock.json').packages;
  return Object.entries(readJson('package-lock.json').packages).every(
    ([path, { version, optional }]) => path === '' || optional || there[path]?.version === version,
  );
}

export function ensureInstalled() {
  if (!isInstalled()) run('npm', ['ci', '--no-audit', '--no-fund']);
}

function newest(path) {
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  return Math.max(0, ...readdirSync(path).map((name) => newest(join(path, name))));
}

export function ensureBuilt() {
  const bin = join(root, 'dist/bin.js');
  const sources = ['src', 'package.json', 'tsdown.config.ts'].map((path) => newest(join(root, path)));
  if (existsSync(bin) && statSync(bin).mtimeMs >= Math.max(...sources)) return;
  // Its notes about its own future are of no use to a coach: shown only if the build fails.
  const { status, stdout, stderr } = spawnSync(join(root, 'node_modules', '.bin', 'tsdown'), [], {
    cwd: root,
    encoding: 'utf8',
    shell: process.platform === 'win32',
  });
  if (status !== 0) {
    console.error(stdout + stderr);
    process.exit(status ?? 1);
  }
  runPackage('tsx', ['scripts/generate.ts']);
}

const yamlIn = (folder) =>
  readdirSync(join(root, folder))
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => `${folder}/${name}`);

/** Every sample lesson, and the course that they make. */
export const samples = () => [...yamlIn('lessons'), ...yamlIn('lessons/courses')];
