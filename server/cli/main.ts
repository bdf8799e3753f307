#!/usr/bin/env node
import { runCommand } from './run.ts'

process.exitCode = await runCommand(process.argv.slice(2), {
  environment: process.env,
  out: (text) => process.stdout.write(text),
  complain: (text) => process.stderr.write(text),
})
