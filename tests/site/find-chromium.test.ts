/** Which Chromium is taken of those that are installed, and what is said where none is. */
import {describe, expect, it} from 'vitest'
import {findChromium} from '../../src/site/find-chromium.ts'

const there = (...paths: string[]) => (path: string) => paths.includes(path)

describe('findChromium(machine, isThere)', () => {
  it('takes the one that CHROMIUM names before any other', () => {
    const machine = {env: {CHROMIUM: '/opt/own/chrome', PATH: '/usr/bin'}, platform: 'linux'}
    expect(findChromium(machine, there('/opt/own/chrome', '/usr/bin/chromium'))).toEqual({kind: 'found', path: '/opt/own/chrome'})
  })

  it('takes no other where the named one is not there', () => {
    const machine = {env: {CHROMIUM: '/opt/own/chrome', PATH: '/usr/bin'}, platform: 'linux'}
    expect(findChromium(machine, there('/usr/bin/chromium'))).toEqual({kind: 'not-as-named', named: '/opt/own/chrome'})
  })

  it.each([
    ['the first name on the path, whatever its folder', 'linux', {PATH: '/a:/b'}, ['/a/google-chrome', '/b/chromium'], '/b/chromium'],
    ['the usual place where the path is empty', 'linux', {}, ['/usr/bin/chromium-browser'], '/usr/bin/chromium-browser'],
    ['an application on a Mac', 'darwin', {PATH: '/usr/bin', HOME: '/Users/k'}, ['/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'], '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'],
    ['an application of one’s own on a Mac', 'darwin', {HOME: '/Users/k'}, ['/Users/k/Applications/Chromium.app/Contents/MacOS/Chromium'], '/Users/k/Applications/Chromium.app/Contents/MacOS/Chromium'],
    ['one that came with Windows', 'win32', {Path: 'C:\\Windows', 'ProgramFiles(x86)': 'C:\\P86'}, ['C:\\P86\\Microsoft\\Edge\\Application\\msedge.exe'], 'C:\\P86\\Microsoft\\Edge\\Application\\msedge.exe'],
    ['one on the path of Windows', 'win32', {Path: 'C:\\Windows;D:\\tools'}, ['D:\\tools\\chrome.exe'], 'D:\\tools\\chrome.exe'],
  ])('takes %s', (_, platform, env, files, wanted) => {
    expect(findChromium({env, platform}, there(...files))).toEqual({kind: 'found', path: wanted})
  })

  it('says where it looked', () => {
    const found = findChromium({env: {PATH: '/usr/bin', CHROMIUM: ''}, platform: 'linux'}, () => false)
    expect(found).toEqual({
      kind: 'none', commands: ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'],
      places: ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'],
    })
  })
})
