#!/bin/sh
# Plans every room of a CSV in one call and writes what to order.
#
#     sh orders.sh rooms.csv orders.csv http://127.0.0.1:8080
#
# Needs curl and jq. Cells may stand in quotes, and hold commas then; a cell with a quote or a line end in it needs another script.
set -eu
answer=$(mktemp)
trap 'rm -f "$answer"' EXIT
jq -R -c -n '
  inputs | rtrimstr("\r") | select(. != "")
  | [match("(\"[^\"]*\"|[^,]*)(,|$)"; "g").captures[0].string | ltrimstr("\"") | rtrimstr("\"")] as [$name, $units, $w, $d, $run, $spacing, $first]
  | select($name != "reference")
  | ($w | tonumber) as $w | ($d | tonumber) as $d
  | { reference: $name, units: $units, room: { outline: [[0, 0], [$w, 0], [$w, $d], [0, $d]] },
      joistFields: [{ run: $run, spacing: ($spacing | tonumber), first: ($first | tonumber) }] }' "$1" |
  curl -sS -f -H 'Content-Type: application/jsonl' -T - -X POST "$3/v1/plans/bulk?include=takeoff" > "$answer"
{
  echo 'reference,code,description,quantity,unit'
  jq -r 'select(.kind == "plan") | .reference as $of | .plan.takeoff.lines[] | [$of, .code, .description, .quantity, .unit]
         | map(tostring | if test("[\",]") then "\"" + gsub("\""; "\"\"") + "\"" else . end) | join(",")' "$answer"
} | sed 's/$/\r/' > "$2"
jq -r 'select(.kind == "problem") | "line \(.line) (\(.reference)): \(.problem.detail)"' "$answer" >&2
tail -n 1 "$answer" | jq -e -r 'if .summary.complete then "\(.summary.ok) rooms planned, \(.summary.failed) not" else error("the answer was cut") end'
