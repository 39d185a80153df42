#!/bin/sh
# Splits a JSON Lines file over the instances behind one address: pieces of so many rooms, so many at a time, each sent again
# until it is whole; then puts the answers together in the order of the rooms.
#
#     sh split.sh rooms.jsonl answers.jsonl http://127.0.0.1:8080 1000 4 '?include=summary,takeoff'
#
# Needs GNU split, xargs and curl. A first line {"common": …} would have to stand in front of each piece: split --filter can put it there.
set -eu
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
export ADDRESS="$3/v1/plans/bulk${6:-}"
split -l "$4" -a 6 -d "$1" "$folder/piece."
find "$folder" -name 'piece.*' | sort | xargs -P "$5" -I '{}' sh -c '
  for try in 1 2 3 4 5; do
    if curl -sS -f -H "Content-Type: application/jsonl" -H "X-Request-Id: ${PIECE_ID:-split}" --data-binary "@{}" "$ADDRESS" -o "{}.answer" &&
       tail -n 1 "{}.answer" | grep -q "\"complete\":true"; then exit 0; fi
    sleep 1
  done
  echo "{} was not answered" >&2
  exit 255'
find "$folder" -name 'piece.*.answer' | sort | xargs cat | grep -v '^{"kind":"summary"' > "$2"
