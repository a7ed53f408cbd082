/** An installed Chromium, or none: nothing is downloaded. */
import {existsSync} from 'node:fs'

const PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome', '/usr/bin/google-chrome-stable', '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome']

export function findChromium(): string | null {
  return [process.env.CHROMIUM ?? '', ...PLACES].find(path => path !== '' && existsSync(path)) ?? null
}

/** It stays off the network and needs neither a sandbox nor a graphics card. */
export const CHROMIUM_WORDS = [
  '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync',
]
