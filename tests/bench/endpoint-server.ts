import Fastify from 'fastify'
import { serializerSchema } from '../../server/plugins/contract.ts'
import { sizingAnswerSchema } from '../../shared/contract/answers.ts'
import { sizingRequestSchema } from '../../shared/contract/plan.ts'
import { jsonSchemaOf } from '../../shared/json-schema.ts'
import { demoService } from '../support/service.ts'
import { BENCH_BODIES, type BenchBody } from './bodies.ts'

/** Serves the real endpoint, or a bare route with the same body schema and the same response bytes. */
const service = await demoService()
const [, , mode = 'service', name = 'whole'] = process.argv
const answer = await service.inject({
  method: 'POST',
  url: '/v1/shops/kingcup/sizing',
  payload: BENCH_BODIES[name as BenchBody],
})

if (mode === 'bare') {
  const body = answer.json()
  const bare = Fastify()
  bare.post('/v1/shops/:shopId/sizing', {
    schema: {
      body: jsonSchemaOf(sizingRequestSchema),
      response: { 200: serializerSchema(sizingAnswerSchema) },
    },
    handler: () => body,
  })
  process.send?.(await bare.listen({ port: 0 }))
} else {
  process.send?.(await service.listen({ port: 0 }))
}
