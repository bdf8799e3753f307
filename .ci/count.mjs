// Prints "N passed, N failed, N skipped" from the test runner's JSON report. Fails where a test failed,
// where none ran, or where a browser or database test was skipped.
import { readFileSync } from 'node:fs'

const [, , path] = process.argv
let report
try {
  report = JSON.parse(readFileSync(path, 'utf8'))
} catch {
  console.error('There is no test report.')
  console.log('0 passed, 1 failed, 0 skipped')
  process.exit(1)
}

const tests = report.testResults.flatMap((file) =>
  file.assertionResults.map((test) => ({ file: file.name, status: test.status, name: test.fullName })),
)
const brokenFiles = report.testResults.filter(
  (file) => file.status === 'failed' && file.assertionResults.every((test) => test.status !== 'failed'),
)
const count = (...statuses) => tests.filter((test) => statuses.includes(test.status)).length
const passed = count('passed')
const failed = count('failed') + brokenFiles.length
const skipped = count('skipped', 'pending', 'todo', 'disabled')
const mustRun = tests.filter(
  (test) =>
    test.status !== 'passed' && test.status !== 'failed' && /[/](e2e|widget|server)[/]/.test(test.file),
)
for (const file of brokenFiles) console.error(`Could not run: ${file.name}`)
for (const test of mustRun) console.error(`Skipped, though it must run: ${test.name}`)
console.log(`${passed} passed, ${failed} failed, ${skipped} skipped`)
process.exit(failed > 0 || passed === 0 || mustRun.length > 0 ? 1 : 0)
