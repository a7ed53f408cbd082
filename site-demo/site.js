/* Only comforts: a search box over the site's index, and tables sorted by a click. Every page is whole without. */
(() => {
  'use strict'

  const root = document.currentScript.getAttribute('src').replace(/site\.js$/, '')
  const make = (name, attributes = {}, words = '') => {
    const element = document.createElement(name)
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value)
    element.textContent = words
    return element
  }

  /* ---- search ---- */

  const MOST = 12
  let index = null

  const load = () => {
    if (index !== null) return
    index = []
    const script = make('script', {src: `${root}search-index.js`})
    script.addEventListener('load', () => {
      index = window.pinfeatherIndex.map(([title, path, kind, words]) => ({title, path, kind, lower: title.toLowerCase(), text: `${title} ${kind} ${words}`.toLowerCase()}))
      show()
    })
    document.head.append(script)
  }

  const form = make('form', {class: 'search', role: 'search'})
  const box = make('input', {type: 'search', id: 'search', autocomplete: 'off', spellcheck: 'false'})
  const status = make('p', {class: 'sr-only', role: 'status'})
  const list = make('ul', {'aria-label': 'Found'})
  list.hidden = true
  form.append(make('label', {for: 'search'}, 'Search'), box, status, list)

  const rank = (entry, words) => {
    if (!words.every(word => entry.text.includes(word))) return -1
    const [first] = words
    return entry.lower === first ? 3 : entry.lower.startsWith(first) ? 2 : entry.lower.includes(first) ? 1 : 0
  }

  const show = () => {
    const words = box.value.toLowerCase().split(/\s+/).filter(word => word !== '')
    const found = words.length === 0 ? [] : index.map(entry => ({entry, at: rank(entry, words)})).filter(({at}) => at >= 0).sort((a, b) => b.at - a.at)
    list.replaceChildren(...found.slice(0, MOST).map(({entry}) => {
      const item = make('li')
      item.append(make('a', {href: root + encodeURI(entry.path)}, entry.title), `, ${entry.kind}`)
      return item
    }))
    list.hidden = found.length === 0
    status.textContent = words.length === 0 ? '' : found.length === 0 ? 'Nothing found' : `${found.length} found`
    status.classList.toggle('sr-only', words.length === 0 || found.length > 0)
  }

  box.addEventListener('focus', load)
  box.addEventListener('input', () => { load(); show() })
  form.addEventListener('submit', event => {
    event.preventDefault()
    const first = list.querySelector('a')
    if (first) location.href = first.href
  })
  form.addEventListener('keydown', event => {
    if (event.key !== 'Escape') return
    box.value = ''
    show()
    box.focus()
  })
  document.querySelector('.quill')?.append(form)

  /* ---- sorting ---- */

  const numberIn = text => {
    const match = /-?\d+(?:\.\d+)?/.exec(text.replace(/(\d),(?=\d{3})/g, '$1').replace('−', '-'))
    return match === null ? null : Number(match[0])
  }

  const sort = (table, column, isNumber, down) => {
    const body = table.tBodies[0]
    const rows = [...body.rows].map((row, place) => {
      const text = row.cells[column].textContent.trim()
      return {row, place, key: isNumber ? numberIn(text) : text === '' || text === '–' ? null : text.toLowerCase()}
    })
    const turn = down ? -1 : 1
    rows.sort((a, b) => {
      if (a.key === null || b.key === null) return (a.key === null) - (b.key === null) || a.place - b.place
      return a.key < b.key ? -turn : a.key > b.key ? turn : a.place - b.place
    })
    body.append(...rows.map(({row}) => row))
  }

  for (const table of document.querySelectorAll('table.sortable')) {
    const heads = [...table.tHead.rows[0].cells]
    heads.forEach((head, column) => {
      const button = make('button', {type: 'button'}, head.textContent)
      button.addEventListener('click', () => {
        const down = head.getAttribute('aria-sort') === 'ascending'
        for (const other of heads) other.removeAttribute('aria-sort')
        head.setAttribute('aria-sort', down ? 'descending' : 'ascending')
        sort(table, column, head.classList.contains('n') || table.classList.contains(`n${column + 1}`), down)
      })
      head.replaceChildren(button)
    })
  }
})()
