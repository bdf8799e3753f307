import { createHash } from 'node:crypto'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { BUILT_IN_APPLIANCES, type PreparedRange, SOURCES, SUPPLY_VOLTAGES } from '../../core/index.ts'
import { applianceIn } from '../../shared/appliance-names/index.ts'
import { type ApplianceList, localeQuerySchema } from '../../shared/contract/appliances.ts'
import { operations } from '../../shared/contract/operations.ts'
import type { Setup } from '../../shared/contract/setup.ts'
import { explainFaults } from '../../shared/explain.ts'
import { type Language, writtenIn } from '../../shared/messages/languages.ts'
import { sendProblem } from '../plugins/problems.ts'
import { rangeIn } from '../replies/range-in.ts'
import type { Ranges } from '../store/ranges.ts'

interface LocaleQuery {
  readonly Querystring: { readonly locale?: string }
}

/** A body written once, with its strong validator. */
interface WrittenBody {
  readonly text: string
  readonly language: Language
  readonly etag: string
}

/**
 * Adds the addresses that are read, not asked: the appliance list, a shop's set-up, health.
 *
 * @param app - The service
 * @param ranges - The ranges in force
 */
export function registerReading(app: FastifyInstance, ranges: Ranges): void {
  const lists = new Map<Language, WrittenBody>()
  app.get<LocaleQuery>(operations.listAppliances.path, (request, reply) => {
    const asked = readQuery(request.query, reply)
    if (asked === undefined) return reply
    const { language } = writtenIn(asked.locale ?? 'en')
    const list = lists.get(language) ?? written(applianceList(language), language)
    lists.set(language, list)
    return sendWritten(request, reply, list)
  })

  const setups = new WeakMap<PreparedRange, WrittenBody>()
  app.get<LocaleQuery & { Params: { shopId: string } }>('/v1/shops/:shopId/setup', (request, reply) => {
    const asked = readQuery(request.query, reply)
    if (asked === undefined) return reply
    const current = ranges.current(request.params.shopId)
    if (current === undefined) return sendProblem(reply, 'unknown-shop')
    const wished = asked.locale ?? current.document.shop.locale
    const range = rangeIn(current, wished)
    const setup = setups.get(range) ?? written(setupOf(range), writtenIn(wished).language)
    setups.set(range, setup)
    return sendWritten(request, reply, setup)
  })

  app.get(operations.readHealth.path, () => ({ status: 'ok' }))
}

/** What is asked for; undefined where the tag can't be read and the problem has been sent. */
function readQuery(
  query: unknown,
  reply: FastifyReply,
): { readonly locale?: string | undefined } | undefined {
  const read = localeQuerySchema.safeParse(query)
  if (read.success) return read.data
  sendProblem(reply, 'contract-broken', {
    errors: explainFaults(localeQuerySchema, query).map(({ pointer, message }) => ({
      pointer: '',
      message: `Query parameter "${pointer.slice(1)}": ${message}`,
    })),
  })
  return undefined
}

function written(body: unknown, language: Language): WrittenBody {
  const text = JSON.stringify(body)
  const digest = createHash('sha256').update(text).digest('base64url').slice(0, 22)
  return { text, language, etag: `"${digest}"` }
}

function sendWritten(request: FastifyRequest, reply: FastifyReply, body: WrittenBody): FastifyReply {
  reply.header('etag', body.etag).header('cache-control', 'no-cache')
  reply.header('content-language', body.language)
  const known = request.headers['if-none-match']?.split(',').map((tag) => tag.trim().replace(/^W\//, ''))
  if (known?.includes(body.etag) || known?.includes('*')) return reply.code(304).send()
  return reply.type('application/json; charset=utf-8').send(body.text)
}

function applianceList(language: Language): ApplianceList {
  const appliances = BUILT_IN_APPLIANCES.map((appliance) => applianceIn(appliance, language))
  return JSON.parse(JSON.stringify({ appliances, sources: SOURCES }))
}

function setupOf(range: PreparedRange): Setup {
  const { shop } = range.document
  const served = new Set<number>(range.inverters.map(({ unit }) => unit.inputNominalV))
  return {
    shop: {
      id: shop.id,
      name: shop.name,
      locale: shop.locale,
      currency: shop.currency,
      mainsV: shop.mains.nominalV,
      mainsHz: shop.mains.frequencyHz,
      wireSizes: shop.wireSizes,
      headroomFraction: range.policy.headroomFraction,
      notAdvised: [...range.policy.notAdvised],
      supplyVoltages: SUPPLY_VOLTAGES.filter((voltage) => served.has(voltage)),
      contactUrl: shop.contactUrl,
      countsDemand: shop.countDemand !== false,
    },
    appliances: [...range.appliances.values()].map((appliance) => ({
      ...appliance,
      synonyms: [...appliance.synonyms],
    })),
    range: { version: range.version },
  }
}
