#!/usr/bin/env bash
# How many jobs a minute the evaluator takes by the line, on all cores and on one, and the most memory that it holds:
# tests/bench/lines.sh [JOBS]. The job is the house well with every way to run its motor judged; told whole, and in short.
set -euo pipefail
CDPATH='' cd -- "$(dirname -- "$0")/../.."
count=${1:-20000}
cargo build -q --profile bench -p wellwright-core --example evaluate
built=$(cargo metadata --no-deps --format-version 1 | node -p 'JSON.parse(require("fs").readFileSync(0)).target_directory')
job=$(node -p 'JSON.stringify(JSON.parse(require("fs").readFileSync("core/examples/jobs/house_and_stock_well.json", "utf8")))')
# `head` closes the pipe on `yes`, which is no failure.
jobs() { { yes "$job" || true; } | head -n "$1"; }
measure() {
  local before after form=$1
  shift
  before=$(date +%s%N)
  # shellcheck disable=SC2086 # no form is no argument
  jobs "$count" | "$@" "$built/release/examples/evaluate" --lines $form | tail -n 1 | cut -c 1-60
  after=$(date +%s%N)
  echo "$count jobs in $(((after - before) / 1000000)) ms: $((count * 60000 / ((after - before) / 1000000))) a minute"
}
for form in "" --brief; do
  echo "All cores${form:+, $form}:"
  measure "$form" env
  if command -v taskset >/dev/null; then
    echo "One core${form:+, $form}:"
    measure "$form" taskset -c 0
  fi
done
if [ -x /usr/bin/time ]; then
  for some in $((count / 4)) "$count"; do
    echo "Most memory at $some jobs, kB:"
    jobs "$some" | /usr/bin/time -f %M "$built/release/examples/evaluate" --lines >/dev/null
  done
fi
