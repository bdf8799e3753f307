import { z } from 'zod/v3'

/**
 * Text whose length is counted in characters, as JSON Schema counts it (draft 2020-12 validation, 6.3.1), so that
 * the schema and the document made from it agree. `z.string()` counts an emoji twice.
 */
class CharacterText extends z.ZodString {
  override _parse(input: z.ParseInput): z.ParseReturnType<string> {
    const { data } = input
    if (typeof data !== 'string' || !BEYOND_16_BITS.test(data)) return super._parse(input)
    // One unit for each character: what the checks below see of them is only that they are there.
    const counted = data.replaceAll(ALL_BEYOND_16_BITS, 'x')
    const result = super._parse(Object.create(input, { data: { value: counted } }))
    return z.isValid(result as z.SyncParseReturnType<string>) ? z.OK(data) : result
  }

  override _addCheck(check: z.ZodStringCheck): z.ZodString {
    return new CharacterText({ ...this._def, checks: [...this._def.checks, check] })
  }
}

const BEYOND_16_BITS = /[\u{10000}-\u{10ffff}]/u
const ALL_BEYOND_16_BITS = /[\u{10000}-\u{10ffff}]/gu

/**
 * A text; its bounds count characters.
 *
 * @returns A schema to be used as `z.string()` is
 */
export function text(): z.ZodString {
  return new CharacterText(z.string()._def)
}
