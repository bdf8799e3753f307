import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openStaffService, type StaffService } from '../support/staff-service.ts'

let service: StaffService

beforeAll(async () => {
  service = await openStaffService()
})
afterAll(() => service.close())

const get = (url: string, headers: Record<string, string> = {}) => service.app.inject({ url, headers })

describe('GET /staff', () => {
  it('is a page without a script or a style of its own, under a policy that lets none through', async () => {
    const { statusCode, headers, body } = await get('/staff')
    expect([statusCode, headers['content-type']]).toEqual([200, 'text/html; charset=utf-8'])
    expect(headers['content-security-policy']).toBe(
      "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
    )
    expect(body).not.toMatch(/<script(?![^>]* src=)|<style|\sstyle=|\son\w+=/)
  })

  it('is never kept by a browser or a proxy, and leaves the key to its script', async () => {
    const { headers } = await get('/staff')
    expect(headers['cache-control']).toBe('no-store')
    expect(headers['referrer-policy']).toBe('no-referrer')
  })

  it('is the same with and without a key, and asks for none', async () => {
    const key = await service.issue('kingcup', ['read'])
    const [plain, keyed] = [await get('/staff'), await get('/staff', { authorization: `Bearer ${key}` })]
    expect(keyed.body).toBe(plain.body)
  })
})

describe('the files of the staff page', () => {
  it.each([
    ['/staff/staff.js', 'text/javascript; charset=utf-8'],
    ['/staff/staff.css', 'text/css; charset=utf-8'],
  ])('%s is whole, of its kind, and answered with 304 where it is known', async (url, type) => {
    const first = await get(url)
    expect([first.statusCode, first.headers['content-type']]).toEqual([200, type])
    expect(first.body.length).toBeGreaterThan(5000)
    expect((await get(url, { 'if-none-match': String(first.headers.etag) })).statusCode).toBe(304)
  })

  it('the script brings neither a schema library nor a way to run text as code', async () => {
    const { body } = await get('/staff/staff.js')
    expect(body).not.toMatch(
      /ZodError|\beval\(|new Function\(|localStorage|sessionStorage|document\.cookie|indexedDB/,
    )
  })

  it('there are no others', async () => {
    for (const url of ['/staff/', '/staff/main.ts', '/staff/..%2fmain.js']) {
      expect((await get(url)).statusCode, url).toBe(404)
    }
  })
})
