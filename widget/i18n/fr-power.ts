import type { PowerWords } from './en-power.ts'

/** French: the editor of a load's power. */
export const power: PowerWords = {
  howKnown: 'D’où connaissez-vous sa puissance ?',
  asTypical: (watts) => `Je ne la connais pas : prendre ${watts}, valeur courante haute`,
  fromPlate: 'Je recopie sa plaque',
  fromWatts: 'Je connais ses watts',
  fromVoltsAmps: 'Je connais les volts et les ampères',
  fromCooking: 'Je connais sa puissance de cuisson',
  plateLabel: 'Ce que dit la plaque',
  plateHint: 'Tel qu’imprimé, par exemple : 220-240V~ 50Hz 850W',
  plateWhere: 'La plaque est à l’arrière, dessous ou sur le chargeur.',
  wattsLabel: 'Watts consommés',
  cookingLabel: 'Puissance de cuisson en watts',
  voltsLabel: 'Volts',
  ampsLabel: 'Ampères',
  twoWatts: 'Un four à micro-ondes a deux sortes de watts',
  twoWattsCooking: 'En façade ou dans la publicité : ce que reçoit le plat.',
  twoWattsInput:
    'Sur la plaque à l’arrière : ce qu’il consomme. C’est ce qui compte, une fois et demie à deux fois plus.',
  readAs: (watts) => `Lu : ${watts}.`,
  notRead: 'Aucune puissance dans ce texte. Cherchez un nombre suivi de W, VA ou A.',
  plateRefusals: {
    'output-only': 'C’est ce qu’il fournit. Cherchez ce qu’il consomme : INPUT, entrée ou côté secteur.',
    'direct-current-only':
      'Cette plaque concerne une batterie ou une prise de charge (DC). Cherchez le côté secteur (AC ou ~).',
    'three-phase': 'C’est une machine triphasée : aucun convertisseur à batterie de ce genre ne l’alimente.',
    'voltage-mismatch': 'Cette plaque est pour une autre tension du secteur.',
    ambiguous: 'Cette plaque porte plusieurs puissances. N’écrivez que celle qu’il consomme.',
    'out-of-bounds': 'Cette puissance est hors limites : de 0,1 W à 100 000 W.',
  },
  ownName: 'Qu’est-ce que c’est ?',
  ownNameHint: 'Radio de l’établi',
  ownAdd: 'Ajouter à ma liste',
  missing: (field) => `Veuillez remplir « ${field} ».`,
  done: 'Terminé',
}
