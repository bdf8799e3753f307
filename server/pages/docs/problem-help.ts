import type { ProblemCode } from '../../../shared/contract/problem.ts'

/** Why a problem is sent and what its receiver can do. */
export interface ProblemHelp {
  readonly cause: string
  readonly fix: string
}

/** What the reference says of every problem. */
export const PROBLEM_HELP: Readonly<Record<ProblemCode, ProblemHelp>> = {
  'unreadable-json': {
    cause:
      'The body is not JSON in UTF-8, or is JSON that readers take differently: a key that stands twice in one object, half of a surrogate pair, NUL, or more than 20 levels of nesting.',
    fix: 'Write the body with a JSON library rather than by hand. `errors` says what was found.',
  },
  'bad-request': {
    cause: 'The address cannot be decoded, or a query parameter is unknown, repeated or out of bounds.',
    fix: 'Encode each part of the address, and send only the query parameters listed with the operation.',
  },
  'malformed-request': {
    cause: 'What arrived could not be read as HTTP at all.',
    fix: 'Look at what stands between you and the service: a proxy, or a TLS client that talks to a plain port.',
  },
  'key-in-address': {
    cause: 'The query of the address holds a key. Addresses are logged by everything on the way.',
    fix: 'Send the key as `Authorization: Bearer ...`, and revoke the one that was in the address.',
  },
  unauthorised: {
    cause: 'There is no key, or it is mistyped, expired or revoked. All of these look alike on purpose.',
    fix: 'Send `Authorization: Bearer` and a live key of the shop. Operators list and issue keys with `npx tallywatt`.',
  },
  'key-in-browser': {
    cause:
      'A secret key came from a page of another origin than this service’s own: whoever opens that page can read the key. The staff page of this service is the only page that may hold one, typed in by staff and kept until the page is closed.',
    fix: 'Revoke that key. Ask from your server instead; pages need no key, only an origin that the shop lists.',
  },
  'scope-too-small': {
    cause: 'The key is right, but was issued for less: `WWW-Authenticate` names the scope that is missing.',
    fix: 'Issue a key with that scope, and use it only where it is needed.',
  },
  'origin-not-allowed': {
    cause:
      'A page asked whose origin does not stand in `allowedOrigins` of the shop’s range, letter by letter.',
    fix: 'Add scheme, host and port of the page, such as `https://shop.example`, to the range and put it in force.',
  },
  'not-found': {
    cause: 'The service has nothing at this address.',
    fix: 'Compare the path with this reference: paths are case-sensitive and have no closing slash.',
  },
  'unknown-shop': {
    cause: 'The shop id in the address is not served here, or the key belongs to another shop.',
    fix: 'Check the id. Ids are lower-case letters, digits and hyphens.',
  },
  'unknown-version': {
    cause: 'The range has no version of that number, or no longer: the newest 500 are kept.',
    fix: 'List the versions and take a number from there.',
  },
  'unknown-sku': {
    cause: 'The range in force has no inverter with that SKU.',
    fix: 'Check the SKU against the range: it may have been renamed or taken out since your page was made.',
  },
  'method-not-allowed': {
    cause: 'The address exists, but not for this method.',
    fix: 'Use a method that the header Allow names.',
  },
  'request-timeout': {
    cause:
      'The headers took longer than 3 seconds to arrive, or the body longer than 5 (30 for a range file).',
    fix: 'Send the request in one go. On a slow line, send one list of the range at a time.',
  },
  'precondition-failed': {
    cause: 'Another version of the range came into force after the one that If-Match names.',
    fix: 'Read the range again, make your change in it, and send it with the new ETag.',
  },
  'body-too-large': {
    cause: 'The body has more than 32 KiB, or a range file more than 5 MiB.',
    fix: 'Send less: 40 loads are well below the limit. A range can be sent one list at a time with `part`.',
  },
  'unsupported-media-type': {
    cause: 'The body is labelled as something else than JSON in UTF-8 (or CSV, where a range is written).',
    fix: 'Send `Content-Type: application/json`. Some clients label text as text/plain or as a form unless told.',
  },
  'contract-broken': {
    cause: 'The body is JSON but not what the operation takes: a field is missing, unknown or out of bounds.',
    fix: 'Mend every place that `errors` points at; each entry has a JSON Pointer, or line and column for CSV. All faults come at once.',
  },
  'precondition-required': {
    cause: 'The range would be replaced without saying which version you have seen.',
    fix: 'Send the ETag of the range that you read as If-Match, so that nobody’s change is lost.',
  },
  'rate-limited': {
    cause:
      'A quota is used up: `violated-policies` says which. Addresses have one for each shop, keys a higher one.',
    fix: 'Wait the seconds in Retry-After. `RateLimit` on every reply tells what is left, so a client can slow down before. Servers should send a key.',
  },
  'headers-too-large': {
    cause: 'The headers together have more than 16 KiB.',
    fix: 'Send fewer or smaller headers; cookies of your site are the usual reason, and none are needed here.',
  },
  'internal-error': {
    cause: 'A mistake of ours. It has been logged under the id in `instance`.',
    fix: 'Tell the operator that id. Trying again with the same body will most likely fail again.',
  },
  'store-unavailable': {
    cause: 'The database does not answer. Shoppers are still answered from memory; nothing can be written.',
    fix: 'Try again after the seconds in Retry-After. Nothing of the refused write was kept, unless the database was lost between keeping it and saying so: then all of it was, and the same If-Match is answered with 412.',
  },
  overloaded: {
    cause: 'More requests are waiting than can be answered soon, so this one was turned away at once.',
    fix: 'Try again after the seconds in Retry-After, not before, and with some chance in the delay.',
  },
  'timed-out': {
    cause: 'The answer was not ready in time, most likely because the database is slow.',
    fix: 'Try again later. For a write, read the range first: it may have come into force.',
  },
  'not-ready': {
    cause: 'This instance has no range in memory yet, or is being shut down.',
    fix: 'Send requests to another instance, or try again after the seconds in Retry-After.',
  },
}
