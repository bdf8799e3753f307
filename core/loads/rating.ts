/** What somebody states of a load's power, before it is read. [W], [V], [A], [VA] as the names say. */
export type Rating =
  | { readonly basis: 'input-watts' | 'measured-watts' | 'cooking-watts'; readonly watts: number }
  | {
      readonly basis: 'volts-amps'
      readonly volts: number
      readonly amps: number
      readonly powerFactor?: number | undefined
    }
  | {
      readonly basis: 'volt-amperes'
      readonly voltAmperes: number
      readonly powerFactor?: number | undefined
    }
  | {
      readonly basis: 'motor-output'
      readonly watts?: number | undefined
      readonly horsepower?: number | undefined
    }
  | { readonly basis: 'cooling-capacity'; readonly btuPerHour: number; readonly eer?: number | undefined }
  | { readonly basis: 'label-text'; readonly text: string }
