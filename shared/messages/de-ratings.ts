import type { Catalogue } from './catalogue.ts'

/** German sentences on how ratings and plates were read. */
export const ratingsDe: Pick<Catalogue, 'ratingNotes' | 'refusals' | 'seen'> = {
  ratingNotes: {
    'power-factor-assumed': (v, f) => `Leistungsfaktor angenommen: ${f.figure(v.powerFactor)}.`,
    'power-factor-assumed-one': (v, f) =>
      `Kein Leistungsfaktor angegeben: Sicherheitshalber zählen alle ${f.voltAmperes(v.apparentVA)} als Watt.`,
    'volts-differ-from-mains': (v, f) =>
      `Die Angabe gilt für ${f.volts(v.volts)}, der Wechselrichter liefert ${f.volts(v.mainsV)}: Prüfen Sie, ob das ` +
      'Gerät daran betrieben werden darf.',
    'cooking-power-converted': (v, f) =>
      `${f.watts(v.cookingW)} kommen beim Essen an; die Mikrowelle selbst zieht bis zu ${f.watts(v.inputW)}.`,
    'shaft-power-converted': (v, f) =>
      `${f.watts(v.shaftW)} gibt die Welle ab; der Motor zieht etwa ${f.watts(v.inputW)}.`,
    'cooling-capacity-converted': (v, f) =>
      `Eine Kühlleistung von ${f.figure(v.btuPerHour)} Btu/h braucht bei ${f.figure(v.eer)} Btu/h je Watt etwa ` +
      `${f.watts(v.inputW)}.`,
    'efficiency-assumed': (v, f) =>
      `Wirkungsgrad nicht angegeben; angenommen: ${f.figure(v.eer)} Btu/h je Watt, ein schlechter Wert.`,
    'range-high-used': () => 'Das Typenschild nennt einen Bereich; der höchste Wert gilt.',
    'largest-of-several': (v, f) =>
      `Das Typenschild nennt ${f.figure(v.count)} Leistungen; die größte, ${f.watts(v.largestW)}, gilt.`,
    'separator-read-as-thousands': (v, f) =>
      `Gelesen als ${f.figure(v.read)}: Das Zeichen darin wird als Tausendertrennzeichen verstanden.`,
    'letters-read-as-digits': (v, f) =>
      `Einige Buchstaben wurden als Ziffern gelesen, das ergibt ${f.figure(v.read)}: Bitte prüfen.`,
    'count-multiplied': (v, f) => `Gelesen als ${f.figure(v.count)} mal ${f.figure(v.each)}.`,
    'wide-range-current': (v, f) =>
      'Der Strom gehört zur niedrigsten oder zur höchsten Spannung; das größere Produkt, ' +
      `${f.voltAmperes(v.highVA)}, gilt.`,
    'mains-voltage-assumed': (v, f) =>
      `Keine Spannung auf dem Typenschild; bei Netzspannung ergibt der Strom ${f.voltAmperes(v.apparentVA)}.`,
    'volt-amperes-not-used': (v, f) =>
      `Das Typenschild nennt ${f.watts(v.watts)} und ${f.voltAmperes(v.voltAmperes)}; die Watt gelten.`,
    'watts-not-used': (v, f) =>
      `Die ${f.watts(v.watts)} auf dem Typenschild passen nicht zu den anderen Werten und gelten nicht.`,
    'cooking-power-assumed': (v, f) =>
      `${f.watts(v.cookingW)} gelten als Mikrowellenleistung, weil das Typenschild sie nicht als Aufnahme bezeichnet.`,
    'input-below-output': (v, f) =>
      `Die Aufnahme von ${f.watts(v.inputW)} auf dem Typenschild liegt unter der Abgabe von ${f.watts(v.outputW)}, das ` +
      'kann nicht sein; die Aufnahme wurde aus der Abgabe berechnet.',
    'shaft-power-assumed': (v, f) => `${f.watts(v.shaftW)} gelten als Leistung an der Welle.`,
  },
  refusals: {
    'nothing-read':
      'Es war kein Wert zu lesen. Tippen Sie ab, was auf dem Typenschild steht, etwa „230 V 850 W“.',
    'no-power-found':
      'Darauf steht keine Leistung. Suchen Sie Watt (W), oder Volt (V) und Ampere (A) zusammen.',
    'output-only':
      'Nur die Ausgangswerte sind zu lesen. Gebraucht wird die Eingangszeile: Suchen Sie INPUT oder Eingang, Watt ' +
      'oder Ampere bei Netzspannung.',
    'direct-current-only':
      'Dieses Gerät läuft mit Gleichstrom (aus der Batterie), nicht mit Netzstrom: Es braucht keinen Wechselrichter.',
    'three-phase': 'Dieses Gerät braucht Drehstrom (drei Phasen), den diese Wechselrichter nicht liefern.',
    'voltage-mismatch':
      'Dieses Gerät ist für eine andere Netzspannung gebaut, als die Wechselrichter liefern.',
    ambiguous:
      'Die Werte widersprechen sich. Tippen Sie nur die aufgenommenen Watt ein, oder nur Volt und Ampere.',
    'out-of-bounds': 'Die Leistung läge unter 0,1 W oder über 100 kW. Prüfen Sie die Werte.',
    'cooking-watts-needs-microwave':
      'Eine Mikrowellenleistung gibt es nur bei Mikrowellen. Geben Sie stattdessen die aufgenommenen Watt an.',
    'nothing-stated': 'Geben Sie Watt oder Pferdestärken (hp) an.',
  },
  seen: (figures) => `Gelesen: ${figures}.`,
}
