import type { Catalogue } from './catalogue.ts'

/** French sentences on how ratings and plates were read. */
export const ratingsFr: Pick<Catalogue, 'ratingNotes' | 'refusals' | 'seen'> = {
  ratingNotes: {
    'power-factor-assumed': (v, f) => `Facteur de puissance supposé : ${f.figure(v.powerFactor)}.`,
    'power-factor-assumed-one': (v, f) =>
      `Aucun facteur de puissance indiqué : par prudence, les ${f.voltAmperes(v.apparentVA)} comptent tous comme des watts.`,
    'volts-differ-from-mains': (v, f) =>
      `L'indication vaut pour ${f.volts(v.volts)}, le convertisseur fournit ${f.volts(v.mainsV)} : vérifiez que ` +
      "l'appareil peut fonctionner ainsi.",
    'cooking-power-converted': (v, f) =>
      `${f.watts(v.cookingW)} arrivent aux aliments ; le four lui-même peut consommer ${f.watts(v.inputW)}.`,
    'shaft-power-converted': (v, f) =>
      `${f.watts(v.shaftW)} sont fournis à l'arbre ; le moteur consomme environ ${f.watts(v.inputW)}.`,
    'cooling-capacity-converted': (v, f) =>
      `Une puissance frigorifique de ${f.figure(v.btuPerHour)} Btu/h demande environ ${f.watts(v.inputW)}, à raison de ` +
      `${f.figure(v.eer)} Btu/h par watt.`,
    'efficiency-assumed': (v, f) =>
      `Efficacité non indiquée ; valeur supposée : ${f.figure(v.eer)} Btu/h par watt, une valeur médiocre.`,
    'range-high-used': () => 'La plaque donne une plage ; la valeur la plus haute est retenue.',
    'largest-of-several': (v, f) =>
      `La plaque donne ${f.figure(v.count)} puissances ; la plus grande, ${f.watts(v.largestW)}, est retenue.`,
    'separator-read-as-thousands': (v, f) =>
      `Lu comme ${f.figure(v.read)} : le signe à l'intérieur est compris comme séparateur des milliers.`,
    'letters-read-as-digits': (v, f) =>
      `Certaines lettres ont été lues comme des chiffres, ce qui donne ${f.figure(v.read)} : vérifiez.`,
    'count-multiplied': (v, f) => `Lu comme ${f.figure(v.count)} fois ${f.figure(v.each)}.`,
    'wide-range-current': (v, f) =>
      'Le courant correspond à la tension la plus basse ou la plus haute ; le produit le plus grand, ' +
      `${f.voltAmperes(v.highVA)}, est retenu.`,
    'mains-voltage-assumed': (v, f) =>
      `Aucune tension sur la plaque ; à la tension du secteur, le courant donne ${f.voltAmperes(v.apparentVA)}.`,
    'volt-amperes-not-used': (v, f) =>
      `La plaque donne ${f.watts(v.watts)} et ${f.voltAmperes(v.voltAmperes)} ; les watts sont retenus.`,
    'watts-not-used': (v, f) =>
      `Les ${f.watts(v.watts)} de la plaque ne concordent pas avec ses autres valeurs et n'ont pas été retenus.`,
    'cooking-power-assumed': (v, f) =>
      `${f.watts(v.cookingW)} sont pris pour la puissance de cuisson, car la plaque ne parle pas de puissance absorbée.`,
    'input-below-output': (v, f) =>
      `La puissance absorbée de la plaque, ${f.watts(v.inputW)}, est inférieure à la puissance fournie, ` +
      `${f.watts(v.outputW)}, ce qui est impossible ; elle a été recalculée d'après la puissance fournie.`,
    'shaft-power-assumed': (v, f) => `${f.watts(v.shaftW)} sont pris pour la puissance à l'arbre.`,
  },
  refusals: {
    'nothing-read':
      "Aucune valeur n'a pu être lue. Tapez ce que dit la plaque signalétique, par exemple « 230 V 850 W ».",
    'no-power-found':
      "Aucune puissance n'y figure. Cherchez des watts (W), ou des volts (V) et des ampères (A) ensemble.",
    'output-only':
      "Seule une sortie est lisible. Il faut la ligne d'entrée : cherchez INPUT ou entrée, des watts ou des ampères à la " +
      'tension du secteur.',
    'direct-current-only':
      'Cet appareil fonctionne en courant continu (batterie), pas sur le secteur : il ne lui faut pas de convertisseur.',
    'three-phase': 'Cet appareil demande du triphasé, que ces convertisseurs ne fournissent pas.',
    'voltage-mismatch':
      'Cet appareil est fait pour une autre tension de secteur que celle des convertisseurs.',
    ambiguous:
      'Les valeurs se contredisent. Tapez seulement les watts absorbés, ou seulement les volts et les ampères.',
    'out-of-bounds': 'La puissance serait inférieure à 0,1 W ou supérieure à 100 kW. Vérifiez les valeurs.',
    'cooking-watts-needs-microwave':
      "La puissance de cuisson n'existe que pour les fours à micro-ondes. Indiquez plutôt les watts absorbés.",
    'nothing-stated': 'Indiquez des watts ou des chevaux (hp).',
  },
  seen: (figures) => `Lu : ${figures}.`,
}
