import { define } from '../define.ts'
import { TallywattFit } from './fit.ts'

define('tallywatt-fit', TallywattFit)

declare global {
  interface HTMLElementTagNameMap {
    'tallywatt-fit': TallywattFit
  }
}
