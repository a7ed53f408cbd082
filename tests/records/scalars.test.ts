import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {dayOf, isoDay, isWhole, parseDate, yearOf} from '../../src/records/dates.ts'
import {inUnit, parseNumber, parseQuantity, UNITS, type Unit} from '../../src/records/quantities.ts'
import {age, chance, count, date, datedWords, period, quantity, unit, wholeDate, yesNo} from '../../src/records/scalars.ts'
import {left} from '../../src/records/schema/parts.ts'
import {readWith} from './reading.ts'

const DAYS = fc.integer({min: -719_000, max: 2_900_000}).filter(day => yearOf(day) >= 1 && yearOf(day) <= 9999)

describe('dates', () => {
  it('any day comes back from its text', () => {
    fc.assert(fc.property(DAYS, day => {
      const read = parseDate(isoDay(day))
      expect(read).toEqual({text: isoDay(day), first: day, last: day})
    }))
  })

  it('a month or a year begins and ends with its first and last day', () => {
    fc.assert(fc.property(DAYS, day => {
      for (const length of [4, 7]) {
        const read = parseDate(isoDay(day).slice(0, length))
        expect(read && isoDay(read.first).slice(0, length)).toBe(read?.text)
        expect(read && isoDay(read.last).slice(0, length)).toBe(read?.text)
        if (read && yearOf(day) > 1 && yearOf(day) < 9999) {
          expect(isoDay(read.first - 1).slice(0, length)).not.toBe(read.text)
          expect(isoDay(read.last + 1).slice(0, length)).not.toBe(read.text)
        }
      }
    }))
  })

  // Gregorian rule: a century is a leap year only when divisible by 400 (ISO 8601)
  it.each([['2024-02-29', true], ['2023-02-29', false], ['2000-02-29', true], ['1900-02-29', false], ['2024-13', false], ['2024-00-10', false], ['2024-04-31', false]])(
    '%s exists: %s', (text, exists) => {
      expect(parseDate(text) !== null).toBe(exists)
      expect(readWith(date, text).codes).toEqual(exists ? [] : ['impossible-date'])
    })

  it('day 0 is 1970-01-01', () => {
    expect(dayOf(1970, 1, 1)).toBe(0)
    expect(isWhole({text: '2024-04', first: 0, last: 29})).toBe(false)
  })

  it.each([
    ['2024-3-5', 'write 2024-03-05'], ['23.3.2024', 'write 2024-03-23'], ['23/3/2024', 'write 2024-03-23'], ['3/4/2024', 'write 2024-04-03 or 2024-03-04'],
    ['spring', 'write a date such as 2024-03-23, 2024-03 or 2024'], ['24-03-05', 'write a date such as 2024-03-23, 2024-03 or 2024'],
  ])('%s: %s', (text, remedy) => {
    const {codes, slips} = readWith(date, text)
    expect(codes).toEqual(['unreadable-value'])
    expect(slips[0]?.remedy).toBe(remedy)
  })

  it('says when a day is needed', () => {
    expect(readWith(wholeDate, '2024-04').slips[0]?.remedy).toBe('write the day too, such as 2024-04-01')
  })
})

describe('times', () => {
  it('any two days in order come back', () => {
    fc.assert(fc.property(DAYS, fc.nat(4000), (from, length) => {
      const to = from + length
      fc.pre(yearOf(to) <= 9999)
      expect(readWith(period, `${isoDay(from)}..${isoDay(to)}`).value).toEqual({from, to})
      if (length > 0) expect(readWith(period, `${isoDay(to)}..${isoDay(from)}`).codes).toEqual(['impossible-date'])
    }))
  })

  it('one day is a time of its own; a month is all of its days', () => {
    expect(readWith(period, '2024-02').value).toEqual({from: dayOf(2024, 2, 1), to: dayOf(2024, 2, 29)})
  })

  it.each(['2024-02-20..', '..2024-02-20', '2024-02-20..2024-02-21..2024-02-22', ''])('%j is none', text => {
    expect(readWith(period, text).codes).toEqual(['unreadable-value'])
  })

  it.each([['6 weeks', 42], ['10 days', 10], ['1 day', 1], ['5 months', 150], ['1 year', 365], ['1.5 weeks', 10.5], ['1,5 weeks', 10.5]])('%s is %d days', (text, days) => {
    expect(readWith(age, text).value).toBe(days)
  })

  it('a bare number is refused', () => {
    expect(readWith(age, '20').slips[0]).toMatchObject({code: 'wrong-unit', remedy: 'write 20 days or 20 weeks'})
  })
})

describe('chances', () => {
  it('a share comes back from either spelling', () => {
    fc.assert(fc.property(fc.integer({min: 0, max: 10_000}), parts => {
      const share = parts / 10_000
      expect(readWith(chance, share.toFixed(4)).value).toBeCloseTo(share, 12)
      expect(readWith(chance, `${(parts / 100).toFixed(2)}%`).value).toBeCloseTo(share, 12)
      expect(readWith(chance, `${(parts / 100).toFixed(2).replace('.', ',')} %`).value).toBeCloseTo(share, 12)
    }))
  })

  it.each([['70', 'write 70%'], ['1.4', 'did you mean 1.4% or 140%? A share is at most 100%'], ['170%', 'write a share of at most 100%, such as 70% or 0.7'], ['most', 'write a share such as 70% or 0.7'], ['-0.1', 'write a share such as 70% or 0.7']])(
    '%s: %s', (text, remedy) => {
      expect(readWith(chance, text).slips).toMatchObject([{code: 'unreadable-value', remedy}])
    })
})

describe('amounts', () => {
  // the pound of 0.45359237 kg and the inch of 25.4 mm: international yard and pound agreement of 1959
  it.each([['2.3 kg', 2300], ['2,3 kg', 2300], ['870 g', 870], ['870g', 870], ['1 lb', 453.59237], ['5 lb 4 oz', 2381.3599425], ['56 grams', 56]])('%s is %d g', (text, grams) => {
    const read = parseQuantity(text)
    expect(read && 'parts' in read && inUnit(read, 'g')).toBeCloseTo(grams, 9)
  })

  it('any number in any unit comes back', () => {
    fc.assert(fc.property(fc.nat(99_999), fc.constantFrom(...(Object.keys(UNITS) as Unit[])), (hundredths, of) => {
      const amount = hundredths / 100
      const read = parseQuantity(`${amount} ${of}`)
      expect(read).toEqual({text: `${amount} ${of}`, parts: [{amount, unit: of}]})
      expect(read && 'parts' in read && inUnit(read, of)).toBe(amount)
    }))
  })

  it('converting there and back gives the same amount', () => {
    fc.assert(fc.property(fc.double({min: 1e-6, max: 1e6, noNaN: true}), fc.constantFrom<Unit>('g', 'kg', 'oz', 'lb', 'mg'), fc.constantFrom<Unit>('g', 'kg', 'oz', 'lb', 'mg'), (amount, a, b) => {
      const there = inUnit({text: '', parts: [{amount, unit: a}]}, b) ?? NaN
      expect(Math.abs((inUnit({text: '', parts: [{amount: there, unit: b}]}, a) ?? NaN) - amount)).toBeLessThanOrEqual(4 * Number.EPSILON * amount)
    }))
  })

  it('a mass is no length, and a bare number has no unit', () => {
    expect(inUnit({text: '3 mm', parts: [{amount: 3, unit: 'mm'}]}, 'g')).toBeNull()
    const mass = quantity('mass', '2.5 kg')
    expect(readWith(mass, '56 mm').slips[0]).toMatchObject({code: 'wrong-unit', reason: '“56 mm” is not a mass'})
    expect(readWith(mass, '56').slips[0]).toMatchObject({code: 'wrong-unit', remedy: 'write the unit too, such as 2.5 kg'})
    expect(readWith(mass, '2 kq').slips[0]).toMatchObject({code: 'wrong-unit', remedy: 'did you mean kg?'})
    expect(readWith(mass, 'heavy').codes).toEqual(['unreadable-value'])
  })

  it('a comma for thousands is not taken for decimals', () => {
    expect(readWith(quantity('mass', '2.5 kg'), '1,200 g').slips).toMatchObject([{code: 'unreadable-value', remedy: 'write 1200 g or 1.2 g'}])
    expect(readWith(quantity('mass', '2.5 kg'), '2,345 kg').codes).toEqual([])
  })

  it.each(['1 200 g', '2.3.4 kg', 'kg', '', '5 lb 4', '-3 g', 'about 5 g'])('%j is none', text => {
    expect(parseQuantity(text)).toBeNull()
  })

  it.each([['1.5', 1.5], ['1,5', 1.5], ['-2', -2], ['1.5.2', null], ['1e3', null], ['', null], ['Infinity', null]])('the number %j is %j', (text, value) => {
    expect(parseNumber(text)).toBe(value)
  })
})

describe('small words', () => {
  it.each([['yes', true], ['No', false], ['true', true], ['maybe', undefined]])('yes or no: %s', (text, value) => {
    expect(readWith(yesNo, text).value).toBe(value)
  })

  it.each([['12', 12], ['0031', 31], ['1.5', undefined], ['-1', undefined], ['1e3', undefined]])('a count: %s', (text, value) => {
    expect(readWith(count, text).value).toBe(value)
  })

  it.each([['kg', 'kg'], ['grams', 'g'], ['°', 'degrees']])('a unit: %s', (text, value) => {
    expect(readWith(unit, text).value).toBe(value)
  })

  it.each([
    ['2024-06-30 sold', {how: 'sold', why: null}], ['2024-03-24 culled, off type', {how: 'culled', why: 'off type'}], ['2024 died', {how: 'died'}],
    ['2024-06-30 sold to the keeper at Ternhouse', {how: 'sold', why: 'to the keeper at Ternhouse'}],
  ])('leaving: %s', (text, value) => {
    expect(readWith(left, text).value).toMatchObject(value)
  })

  it('leaving in a mistyped word names the near one', () => {
    expect(readWith(left, '2024-06-30 cullled').slips).toMatchObject([{code: 'unreadable-value', remedy: 'did you mean culled?'}])
    expect(readWith(left, '2024-06-31 culled').codes).toEqual(['impossible-date'])
    expect(readWith(left, '2024-06-30').codes).toEqual(['unreadable-value'])
  })

  it('words with a date keep both, and a date in another order is not taken for words', () => {
    expect(datedWords('for breeding')).toEqual({on: null, words: 'for breeding'})
    expect(datedWords('2024-10-01, best keel')).toMatchObject({on: {text: '2024-10-01'}, words: 'best keel'})
    expect(datedWords('22-017’s best son')).toEqual({on: null, words: '22-017’s best son'})
    expect(datedWords('1.10.2024 for breeding')).toMatchObject({refused: true, remedy: 'write 2024-10-01'})
    expect(datedWords('2024-03-245 for breeding')).toBeUndefined()
  })
})
