/** What a demo shop's pages say and look like, beside its style sheet. */
export interface Look {
  readonly shopId: string
  /** What the shop says of itself. */
  readonly motto: string
  /** Words above the category. */
  readonly category: { readonly heading: string; readonly lead: string }
  /** Words above the guide. */
  readonly guide: { readonly heading: string; readonly lead: string }
  /** Departments of the shop; the first is the one that is shown. */
  readonly departments: readonly string[]
  readonly basket: string
  readonly addOne: string
  readonly contact: { readonly heading: string; readonly lines: readonly string[] }
  /** Colours and type of the widget, as custom properties: one light and, where it differs, one dark. */
  readonly theme: Readonly<Record<string, string>>
  /** Units whose product pages the category shows first. */
  readonly featured: readonly [string, string]
}

/** The demo shops that have pages: invented, places, names and numbers included. */
export const LOOKS: Readonly<Record<string, Look>> = {
  kingcup: {
    shopId: 'kingcup',
    motto: 'Chandlery and electrics for canal and river boats',
    category: {
      heading: 'Inverters',
      lead: 'Mains sockets from your leisure batteries, moored or under way. All 230 V, 50 Hz.',
    },
    guide: {
      heading: 'Which one for your boat?',
      lead: 'Three questions, and we tell you the smallest of ours that does it, with cable, fuse and how long it lasts.',
    },
    departments: ['Inverters', 'Batteries', 'Cable and fuses', 'Ropes and fenders', 'Paint and varnish'],
    basket: 'Basket',
    addOne: 'Add to basket',
    contact: {
      heading: 'Ask at the counter',
      lines: [
        'The Wharf, Lower Kingcup Lock',
        'Open Tuesday to Sunday, nine to five',
        'counter@kingcup.example',
      ],
    },
    theme: {
      '--tallywatt-accent': 'light-dark(#1f4d36, #f0c75e)',
      '--tallywatt-on-accent': 'light-dark(#fff9e8, #1d2a20)',
      '--tallywatt-paper': 'light-dark(#fffaf0, #16221b)',
      '--tallywatt-ink': 'light-dark(#22281f, #f1ead8)',
      '--tallywatt-quiet': 'light-dark(#5b5f4f, #bdb9a2)',
      '--tallywatt-line': 'light-dark(#e2d9bf, #33453a)',
      '--tallywatt-edge': 'light-dark(#7f7758, #8f947d)',
      '--tallywatt-radius': '4px',
      '--tallywatt-font': "'Gill Sans', 'Gill Sans MT', Carlito, Calibri, 'Trebuchet MS', sans-serif",
      '--tallywatt-heading-font':
        "'Palatino Linotype', Palatino, 'Book Antiqua', 'TeX Gyre Pagella', Georgia, serif",
    },
    featured: ['KC-ST12-1060', 'KC-ST12-2350'],
  },
  bentcreek: {
    shopId: 'bentcreek',
    motto: 'Upfitting parts for work trucks, vans and market stands',
    category: {
      heading: 'Inverters, 12 / 24 / 48 V',
      lead: '120 V, 60 Hz output. Every part number below ships from our own shelves.',
    },
    guide: {
      heading: 'Size it before you bolt it in',
      lead: 'Tell us what runs off the truck. You get a part number, the wire gauge, the fuse and the run time.',
    },
    departments: ['Inverters', 'Batteries', 'Cable, lugs, fuses', 'Ladder racks', 'Work lights', 'Tie-downs'],
    basket: 'Cart',
    addOne: 'Add to cart',
    contact: {
      heading: 'Parts desk',
      lines: ['Bay 4, Bent Creek Yard', 'Weekdays 6 am to 4 pm', 'parts@bentcreek.example'],
    },
    theme: {
      '--tallywatt-accent': 'light-dark(#a83a00, #ff9a52)',
      '--tallywatt-on-accent': 'light-dark(#fff, #1a1410)',
      '--tallywatt-paper': 'light-dark(#fff, #1d2023)',
      '--tallywatt-ink': 'light-dark(#14181b, #eef0f1)',
      '--tallywatt-quiet': 'light-dark(#4f575d, #b2b9be)',
      '--tallywatt-line': 'light-dark(#cfd4d8, #3c4247)',
      '--tallywatt-edge': 'light-dark(#6b747b, #8d969c)',
      '--tallywatt-radius': '0px',
      '--tallywatt-font': "'Helvetica Neue', Arial, 'Liberation Sans', sans-serif",
      '--tallywatt-heading-font':
        "'Arial Narrow', 'Roboto Condensed', 'Liberation Sans Narrow', 'Helvetica Neue', Arial, sans-serif",
    },
    featured: ['BC-21120', 'BC-22660'],
  },
}
