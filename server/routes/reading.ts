import { createHash } from 'node:crypto'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import type { PreparedRange } from '../../core/range/prepare-range.ts'
import { SUPPLY_VOLTAGES } from '../../core/range/vocabulary.ts'
import { BUILT_IN_APPLIANCES } from '../../core/tables/appliances/index.ts'
import { SOURCES } from '../../core/tables/sources.ts'
import type { ApplianceList } from '../../shared/contract/appliances.ts'
import { operations } from '../../shared/contract/operations.ts'
import type { Setup } from '../../shared/contract/setup.ts'
import { sendProblem } from '../plugins/problems.ts'
import type { Ranges } from '../store/ranges.ts'

/** A body written once, with its strong validator. */
interface WrittenBody {
  readonly text: string
  readonly etag: string
}

/**
 * Adds the addresses that are read, not asked: the appliance list, a shop's set-up, health.
 *
 * @param app - The service
 * @param ranges - The ranges in force
 */
export function registerReading(app: FastifyInstance, ranges: Ranges): void {
  const list = written(applianceList())
  app.get(operations.listAppliances.path, (request, reply) => sendWritten(request, reply, list))

  const setups = new WeakMap<PreparedRange, WrittenBody>()
  app.get<{ Params: { shopId: string } }>('/v1/shops/:shopId/setup', (request, reply) => {
    const range = ranges.current(request.params.shopId)
    if (range === undefined) return sendProblem(reply, 'unknown-shop')
    const setup = setups.get(range) ?? written(setupOf(range))
    setups.set(range, setup)
    return sendWritten(request, reply, setup)
  })

  app.get(operations.readHealth.path, () => ({ status: 'ok' }))
}

function written(body: unknown): WrittenBody {
  const text = JSON.stringify(body)
  const digest = createHash('sha256').update(text).digest('base64url').slice(0, 22)
  return { text, etag: `"${digest}"` }
}

function sendWritten(request: FastifyRequest, reply: FastifyReply, body: WrittenBody): FastifyReply {
  reply.header('etag', body.etag).header('cache-control', 'no-cache')
  const known = request.headers['if-none-match']?.split(',').map((tag) => tag.trim().replace(/^W\//, ''))
  if (known?.includes(body.etag) || known?.includes('*')) return reply.code(304).send()
  return reply.type('application/json; charset=utf-8').send(body.text)
}

function applianceList(): ApplianceList {
  return JSON.parse(JSON.stringify({ appliances: BUILT_IN_APPLIANCES, sources: SOURCES }))
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
