import { execFileSync } from 'node:child_process'
import { statSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { type Browser, chromium } from 'playwright-core'

/** Names that a Chromium of the machine may have. */
const NAMES = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'Chromium',
  'Google Chrome',
]

/** Where one may lie beside the folders of PATH. */
const FOLDERS = [
  '/usr/bin',
  '/snap/bin',
  '/Applications/Chromium.app/Contents/MacOS',
  '/Applications/Google Chrome.app/Contents/MacOS',
]

/**
 * Finds a Chromium: the one that CHROMIUM_PATH names, one of the machine, or Debian's, installed now.
 *
 * @returns Path of its program
 * @throws Error telling what to do, where there is none and none can be installed
 */
export function findChromium(): string {
  const named = process.env.CHROMIUM_PATH ?? ''
  if (named !== '') return named
  const found = installed()
  if (found !== undefined) return found
  installDebians()
  const fresh = installed()
  if (fresh === undefined) throw new Error(NONE)
  return fresh
}

const NONE =
  'These tests need a Chromium. Install one, set CHROMIUM_PATH to its program, or run as root on Debian, where apt-get can.'

function installed(): string | undefined {
  const folders = [...(process.env.PATH ?? '').split(delimiter), ...FOLDERS]
  const programs = folders.flatMap((folder) => NAMES.map((name) => join(folder, name)))
  return programs.find((path) => statSync(path, { throwIfNoEntry: false })?.isFile() === true)
}

function installDebians(): void {
  try {
    const quiet = { stdio: 'ignore' as const }
    execFileSync('apt-get', ['update', '-q'], quiet)
    execFileSync('apt-get', ['install', '-q', '-y', '--no-install-recommends', 'chromium'], quiet)
  } catch (error) {
    throw new Error(NONE, { cause: error })
  }
}

/**
 * Starts a Chromium that keeps to itself.
 *
 * @returns The browser
 */
export function launchChromium(): Promise<Browser> {
  return chromium.launch({
    executablePath: findChromium(),
    args: [
      '--no-sandbox',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  })
}
