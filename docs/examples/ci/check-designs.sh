#!/usr/bin/env bash
# Fails when a design of a catalogue has moved, and says what did. Usage: check-designs.sh CATALOGUE.json [JUNIT.xml]
set -euo pipefail
ask() { curl -sS --fail-with-body -H 'Content-Type: application/json' --data-binary @"$1" "${@:2}" "${SERVICE:-http://localhost:5080}/v1/design-checks"; }

if [ $# -gt 1 ]; then ask "$1" -H 'Accept: application/xml' -o "$2"; fi
outcome=$(ask "$1")
jq -r '.cases[] | select(.passed | not) | .id as $id
  | (.expectations[] | select(.passed | not) | "\($id) \(.pointer): \(.message)"),
    (.approval.figures[]? | "\($id) \(.pointer): \(.approved) was approved, it is \(.value) now.")' <<< "$outcome"
test "$(jq .failed <<< "$outcome")" = 0
