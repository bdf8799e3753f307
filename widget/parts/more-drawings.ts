/** The later marks, the other categories and the commonest appliances that look unlike theirs; see drawings.ts. */
export const MORE_PATHS: Readonly<Record<string, string>> = {
  fits: 'M16 4a12 12 0 1 1 0 24a12 12 0 0 1 0-24M10 16l4 5 8-9',
  'fits-with-care': 'M16 4l13 24H3zM16 13v7M16 24h.01',
  'none-fits': 'M16 4a12 12 0 1 1 0 24a12 12 0 0 1 0-24M11 11l10 10M21 11L11 21',
  'not-advised': 'M16 4a12 12 0 1 1 0 24a12 12 0 0 1 0-24M9 16h14',
  plus: 'M16 7v18M7 16h18',
  minus: 'M7 16h18',
  undo: 'M12 8l-6 6 6 6M6 14h13a6 6 0 0 1 0 12h-5',
  cooking: 'M6 13h20v10a3 3 0 0 1-3 3H9a3 3 0 0 1-3-3zM2 16h4M26 16h4M8 13c0-5 16-5 16 0M16 9V6',
  kitchen: 'M10 4h13l-2 14h-9zM12 18h9l2 9H10zM15 23h3M22 8h4v6h-5',
  'air-conditioning': 'M4 7h24v10H4zM8 13h16M9 20c0 3-2 3-2 6M16 20v6M23 20c0 3 2 3 2 6',
  'space-heating':
    'M6 11h20v13H6zM11 11v13M16 11v13M21 11v13M8 24v4M24 24v4M11 8c-2-2 2-3 0-5M16 8c-2-2 2-3 0-5M21 8c-2-2 2-3 0-5',
  ventilation:
    'M16 3a9 9 0 1 1 0 18a9 9 0 0 1 0-18M16 12c-6-7 6-7 0 0c7-6 7 6 0 0c6 7-6 7 0 0c-7 6-7-6 0 0M16 21v6M11 28h10',
  washing:
    'M6 4h20v24H6zM6 10h20M16 13a6 6 0 1 1 0 12a6 6 0 0 1 0-12M9 7h5M22 7h.01M11 20c2-2 3 1 5 0s3-1 5 0',
  cleaning: 'M3 27h10l-2-4H5zM8 23L15 5h4M18 27h9a2 2 0 0 0 2-2v-3a6 6 0 0 0-12 0v4M19 5c6 0 6 6 5 11',
  communication: 'M5 19h22v8H5zM9 23h.01M13 23h.01M9 19V9M23 19V9M13 13c2-2 4-2 6 0M12 9c3-3 5-3 8 0',
  'power-tools': 'M4 7h16v8H4zM20 9h4v4h-4M24 11h6M8 15l-1 8h6l1-8M5 23h10v5H5zM14 18h2',
  pumps: 'M14 12a8 8 0 1 1 0 16a8 8 0 0 1 0-16M14 12h11V7M22 7h6M6 20H2M2 17v6M14 17v3l3 2',
  trade: 'M4 12l3-8h18l3 8zM4 12c0 4 6 4 6 0c0 4 6 4 6 0c0 4 6 4 6 0c0 4 6 4 6 0M6 16v12M26 16v12M6 21h20',
  medical: 'M4 10h24v17H4zM11 10V5h10v5M16 14v9M11 18h10',
  'pod-coffee-machine': 'M6 4h20v6H6zM6 10v18h20v-4H11V10M15 16h7l-1 6h-5zM18 10v3M22 17h3v3h-4',
  toaster: 'M4 13a5 5 0 0 1 5-5h14a5 5 0 0 1 5 5v12H4zM9 13h14M28 15h2v4M8 25v2M24 25v2M11 8V4h10v4',
  'chest-freezer': 'M4 12h24v14H4zM4 12l3-5h18l3 5M14 16h4M7 26v2M25 26v2',
  monitor: 'M4 6h24v16H4zM12 27h8M16 22v5M8 10h7M8 14h4',
  'desktop-computer': 'M4 5h11v22H4zM7 9h5M7 13h5M9 23h1M18 9h11v9H18zM23 18v4M20 22h7',
  printer: 'M9 12V4h14v8M9 22H4V12h24v10h-5M9 18h14v10H9zM24 15h.01M12 22h8',
  'games-console':
    'M9 11h14a7 7 0 0 1 2 13c-3 1-4-3-6-3h-6c-2 0-3 4-6 3a7 7 0 0 1 2-13zM10 14v4M8 16h4M21 16h.01M24 14h.01',
  'pa-speaker': 'M8 3h16v26H8zM16 14a6 6 0 1 1 0 12a6 6 0 0 1 0-12M16 6a2 2 0 1 1 0 5a2 2 0 0 1 0-5',
  'e-bike-charger':
    'M8 17a6 6 0 1 1 0 11a6 6 0 0 1 0-11M24 17a6 6 0 1 1 0 11a6 6 0 0 1 0-11M8 22l5-9h8l3 9M13 13l4 9M11 10h4M21 13l-1-5h4',
  iron: 'M3 24h26c0-9-6-12-13-12h-6M8 24l4-8h13M10 12h8',
  'sewing-machine': 'M3 27h26v-4H3zM9 23v-4M6 10h18v13h-6v-7H6zM9 16v3M21 6v4M27 13h-3',
  'angle-grinder': 'M12 9h17v7H12zM12 10L7 12v3l5 1M7 17a5 5 0 1 1 0 9a5 5 0 0 1 0-9M9 15v3M18 16v5',
  'air-compressor': 'M4 14h24v9H4zM8 23v4M24 23v4M10 14V8h7v6M20 11h5v3M22 11V7h5',
}
