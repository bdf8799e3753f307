import { findChromium } from './chromium.ts'

/** Finds or installs the browser once, before the test files that share it begin side by side. */
export function setup(): void {
  findChromium()
}
