/**
 * The staff page before its script has drawn anything: the script asks for the key and does the rest.
 *
 * @returns HTML without a script or a style of its own
 */
export function staffPage(): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex">
<title>Tallywatt staff</title>
<link rel="stylesheet" href="/staff/staff.css">
<script type="module" src="/staff/staff.js"></script>
</head>
<body>
<div id="staff"><main class="sign-in"><h1>Tallywatt staff</h1><noscript><p>This page needs JavaScript.</p></noscript></main></div>
<p id="said" class="off" role="status"></p>
</body>
</html>`
}
