/** The desk with the screen that is shown changed. */
import type { Desk } from '../desk.ts'
import type { OwnPlace } from '../place.ts'

export const withPlace = (desk: Desk, place: OwnPlace): Desk => ({
  ...desk,
  places: [...desk.places.slice(0, -1), place],
})
