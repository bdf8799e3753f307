import { define } from '../define.ts'
import { TallywattGuide } from './guide.ts'

define('tallywatt-guide', TallywattGuide)

declare global {
  interface HTMLElementTagNameMap {
    'tallywatt-guide': TallywattGuide
  }
}
