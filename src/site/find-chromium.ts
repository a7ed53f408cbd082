/** Where a Chromium is installed that can set a PDF, or where it was looked for. Nothing is ever downloaded. */
import {existsSync} from 'node:fs'
import {posix, win32} from 'node:path'

export type FoundChromium =
  | {readonly kind: 'found'; readonly path: string}
  /** `CHROMIUM` names a file that is not there: nothing else is tried, since somebody wanted that one */
  | {readonly kind: 'not-as-named'; readonly named: string}
  | {readonly kind: 'none'; readonly commands: readonly string[]; readonly places: readonly string[]}

interface Machine {
  readonly env: Readonly<Record<string, string | undefined>>
  readonly platform: string
}

const COMMANDS = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge']
const WINDOWS_COMMANDS = ['chrome.exe', 'chromium.exe', 'msedge.exe']
const MAC_PLACES = ['Chromium', 'Google Chrome', 'Microsoft Edge'].map(name => `/Applications/${name}.app/Contents/MacOS/${name}`)
const WINDOWS_ROOTS = ['LOCALAPPDATA', 'ProgramFiles', 'ProgramFiles(x86)']
const WINDOWS_PLACES = ['Chromium\\Application\\chrome.exe', 'Google\\Chrome\\Application\\chrome.exe', 'Microsoft\\Edge\\Application\\msedge.exe']

/** Files at which a browser is put when it is installed, beside those on the path. */
function placesOf({env, platform}: Machine): readonly string[] {
  if (platform === 'darwin') return [...MAC_PLACES, ...(env.HOME ? MAC_PLACES.map(place => `${env.HOME}${place}`) : [])]
  if (platform !== 'win32') return COMMANDS.slice(0, 3).map(command => `/usr/bin/${command}`)
  return WINDOWS_ROOTS.flatMap(root => (env[root] ? WINDOWS_PLACES.map(place => win32.join(env[root] ?? '', place)) : []))
}

/** @param isThere  is there such a file? */
export function findChromium(machine: Machine, isThere: (path: string) => boolean = existsSync): FoundChromium {
  const {env, platform} = machine, named = env.CHROMIUM ?? ''
  if (named !== '') return isThere(named) ? {kind: 'found', path: named} : {kind: 'not-as-named', named}
  const onWindows = platform === 'win32', {join, delimiter} = onWindows ? win32 : posix
  const commands = onWindows ? WINDOWS_COMMANDS : COMMANDS, places = placesOf(machine)
  // Windows writes the name as it likes: Path, PATH
  const folders = (env.PATH ?? env.Path ?? '').split(delimiter).filter(folder => folder !== '')
  const path = [...commands.flatMap(command => folders.map(folder => join(folder, command))), ...places].find(isThere)
  return path === undefined ? {kind: 'none', commands, places} : {kind: 'found', path}
}
