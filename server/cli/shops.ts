import { newVersion } from '../store/versions.ts'
import { type CommandContext, CommandError, oneOperand } from './io.ts'
import { readJsonFile, refuseFaults } from './range-file.ts'

/** `shop list`: a line for each shop. */
export async function listShops({ store, io }: CommandContext): Promise<void> {
  for (const head of await (await store()).heads()) {
    io.out(`${head.shopId}\tversion ${head.version}\t${head.createdAt}\t${head.author}\n`)
  }
}

/** `shop create RANGE.json`: creates the shop that the file describes. */
export async function createShop({ store, io, operands }: CommandContext): Promise<void> {
  const file = oneOperand(operands, 'range file (JSON)')
  const reading = readJsonFile(file)
  if (!reading.ok) return refuseFaults(io, file, reading.faults)
  const { id } = reading.range.shop
  const created = await (await store()).createShop(
    newVersion(reading.range, { author: 'command line', origin: 'imported' }),
  )
  if (!created) throw new CommandError(`The shop "${id}" exists; use range import.`)
  io.out(`Created shop "${id}" with version 1 of its range.\n`)
}
