import type { Catalogue } from './catalogue.ts'

/** Spanish sentences on how ratings and plates were read. */
export const ratingsEs: Pick<Catalogue, 'ratingNotes' | 'refusals' | 'seen'> = {
  ratingNotes: {
    'power-factor-assumed': (v, f) => `Factor de potencia supuesto: ${f.figure(v.powerFactor)}.`,
    'power-factor-assumed-one': (v, f) =>
      `No se indica el factor de potencia: por prudencia, los ${f.voltAmperes(v.apparentVA)} se cuentan todos como vatios.`,
    'volts-differ-from-mains': (v, f) =>
      `El dato vale para ${f.volts(v.volts)} y el inversor da ${f.volts(v.mainsV)}: compruebe que el aparato se puede ` +
      'usar así.',
    'cooking-power-converted': (v, f) =>
      `${f.watts(v.cookingW)} es lo que recibe la comida; el microondas en sí puede consumir ${f.watts(v.inputW)}.`,
    'shaft-power-converted': (v, f) =>
      `${f.watts(v.shaftW)} es lo que da el eje; el motor consume unos ${f.watts(v.inputW)}.`,
    'cooling-capacity-converted': (v, f) =>
      `Una potencia frigorífica de ${f.figure(v.btuPerHour)} Btu/h requiere unos ${f.watts(v.inputW)}, a ${f.figure(v.eer)} Btu/h por vatio.`,
    'efficiency-assumed': (v, f) =>
      `No se indica la eficiencia; se supone de ${f.figure(v.eer)} Btu/h por vatio, un valor bajo.`,
    'range-high-used': () => 'La placa da un intervalo; se usa el valor más alto.',
    'largest-of-several': (v, f) =>
      `La placa da ${f.figure(v.count)} potencias; se usa la mayor, ${f.watts(v.largestW)}.`,
    'separator-read-as-thousands': (v, f) =>
      `Leído como ${f.figure(v.read)}: el signo que lleva dentro se toma por separador de miles.`,
    'letters-read-as-digits': (v, f) =>
      `Algunas letras se han leído como cifras, lo que da ${f.figure(v.read)}: compruébelo.`,
    'count-multiplied': (v, f) => `Leído como ${f.figure(v.count)} por ${f.figure(v.each)}.`,
    'wide-range-current': (v, f) =>
      'La corriente corresponde a la tensión más baja o a la más alta; se usa el producto mayor, ' +
      `${f.voltAmperes(v.highVA)}.`,
    'mains-voltage-assumed': (v, f) =>
      `La placa no indica tensión; a la tensión de la red, la corriente da ${f.voltAmperes(v.apparentVA)}.`,
    'volt-amperes-not-used': (v, f) =>
      `La placa da ${f.watts(v.watts)} y ${f.voltAmperes(v.voltAmperes)}; se usan los vatios.`,
    'watts-not-used': (v, f) =>
      `Los ${f.watts(v.watts)} de la placa no cuadran con sus otros datos y no se han usado.`,
    'cooking-power-assumed': (v, f) =>
      `${f.watts(v.cookingW)} se toma como potencia de cocción, porque la placa no lo llama potencia absorbida.`,
    'input-below-output': (v, f) =>
      `La potencia absorbida de la placa, ${f.watts(v.inputW)}, es menor que la entregada, ${f.watts(v.outputW)}, lo que no ` +
      'puede ser; se ha calculado a partir de la entregada.',
    'shaft-power-assumed': (v, f) => `${f.watts(v.shaftW)} se toma como potencia en el eje.`,
  },
  refusals: {
    'nothing-read':
      'No se ha podido leer ningún dato. Escriba lo que dice la placa, por ejemplo «230 V 850 W».',
    'no-power-found': 'No figura ninguna potencia. Busque vatios (W), o voltios (V) y amperios (A) juntos.',
    'output-only':
      'Solo se lee una salida. Hace falta la línea de entrada: busque INPUT o entrada, vatios o amperios a la tensión de ' +
      'la red.',
    'direct-current-only':
      'Este aparato es de corriente continua (batería), no de red: no necesita inversor.',
    'three-phase': 'Este aparato necesita corriente trifásica, que estos inversores no dan.',
    'voltage-mismatch': 'Este aparato está hecho para otra tensión de red que la de los inversores.',
    ambiguous:
      'Los datos se contradicen. Escriba solo los vatios absorbidos, o solo los voltios y los amperios.',
    'out-of-bounds':
      'La potencia resultante queda por debajo de 0,1 W o por encima de 100 kW. Compruebe los datos.',
    'cooking-watts-needs-microwave':
      'La potencia de cocción solo existe en los microondas. Indique en su lugar los vatios absorbidos.',
    'nothing-stated': 'Indique vatios o caballos (hp).',
  },
  seen: (figures) => `Se ha leído: ${figures}.`,
}
