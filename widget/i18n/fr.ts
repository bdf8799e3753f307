import type { Words } from './en.ts'

/** French: what the shell and the first question say. */
export const words: Words = {
  loading: 'Un instant…',
  question: (number, of) => `Question ${number} sur ${of}`,
  pickHeading: 'Que voulez-vous alimenter ?',
  pickLead: 'Touchez chaque appareil. Touchez-le encore pour en ajouter un.',
  searchLabel: 'Chercher un appareil',
  searchHint: 'bouilloire, sèche-cheveux, perceuse',
  hits: 'Trouvés',
  hitCount: (count) => (count === 1 ? '1 appareil trouvé' : `${count} appareils trouvés`),
  noHits: 'Rien sous ce nom. Essayez un autre mot, ou « Autre chose ».',
  often: 'Souvent choisis',
  browse: 'Par catégorie',
  somethingElse: 'Autre chose',
  add: (name) => `Ajouter : ${name}`,
  addAnother: (name, count) => `${name} : ${count} sur votre liste. En ajouter un`,
  added: (name, watts) => `Ajouté : ${name}. Ensemble ${watts}.`,
  together: 'Ensemble',
  nothingYet: 'Rien de choisi',
  needed: (watts) => `il faut ${watts} ou plus`,
  nextSchedule: 'Suite : quand',
  pickFirst: 'Choisissez d’abord au moins un appareil.',
  listFull: 'Votre liste est pleine : 40 appareils différents.',
  askShop: 'Demander au magasin',
  retry: 'Réessayer',
  failures: {
    offline: 'Vous semblez hors ligne. Vos réponses sont gardées.',
    slow: 'C’est trop long. Vos réponses sont gardées.',
    unreachable: 'Le service est injoignable pour le moment. Vos réponses sont gardées.',
    down: 'Le service a un problème pour le moment. Vos réponses sont gardées.',
    busy: 'Il y a beaucoup de demandes en ce moment. Vos réponses sont gardées.',
    refused: 'Le service n’a pas pu lire ces réponses. Veuillez les vérifier.',
    'unknown-shop': 'Ce guide n’est pas encore configuré pour ce magasin.',
    'unknown-unit': 'Ce convertisseur n’est pas dans la gamme du magasin.',
  },
  retryIn: (seconds) => `Veuillez réessayer dans ${seconds} ${seconds === 1 ? 'seconde' : 'secondes'}.`,
  fitHeading: 'Suffit-il pour… ?',
  fitLead: 'Touchez ce que vous voulez y brancher.',
  check: 'Suffit-il pour cela ?',
}

export const later = async () => (await import('./fr-later.ts')).later
