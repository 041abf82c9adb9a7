# Read by app/run where there is no display: one evening from plan to reveal, played with the command line in a store of its own. The tasters are dice.

evening=build/evening
cli() { build/release/bin/oddglass-cli --store "$evening/cellar.oddglass" "$@"; }

# The id of the session in this state; the lists of sessions are flat objects.
session_that_is() {
  cli --json list | tr -d '\n' | grep -o '{[^{}]*}' | grep -E "\"state\": *\"$1\"" | sed -n 's/.*"id": *"\([0-9a-f]*\)".*/\1/p' | head -n 1
}

# The names that a plan file invites, one a line.
invited_in() {
  tr -d '\n' <"$1" | sed 's/.*"tasters": *\[\([^]]*\)\].*/\1/' | tr ',' '\n' | sed 's/^ *"//; s/" *$//'
}

# Answers for the places in use, drawn by dice from the cups that everybody may know of.
thrown() {
  awk -F, -v places="$1" -v seed="$RANDOM$RANDOM" '
    BEGIN { srand(seed); print "place,round,item,code,value" }
    { sub(/\r$/, "") }
    NR > 1 && $1 <= places && $4 == 0 { flight = $1 "," $2; if (!(flight in cups)) order[++flights] = flight; cups[flight] = cups[flight] " " $5 }
    END {
      for (i = 1; i <= flights; ++i) {
        count = split(cups[order[i]], codes, " ")
        print order[i] ",choose,," codes[1 + int(rand() * count)]
        print order[i] ",sureness,," 1 + int(rand() * 3)
        print order[i] ",clue,," 1 + int(rand() * 6)
      }
    }' "$2"
}

play() {
  rm -rf "$evening"
  mkdir -p "$evening"
  say "1. The shelf of the demo."
  cli put demo_sessions/shelf.json
  say "2. The plan: $(sed -n 's/^ *"title": *"\(.*\)",\{0,1\}$/\1/p' demo_sessions/plan.json | head -n 1)."
  cli plan demo_sessions/plan.json
  local session
  session=$(session_that_is draft)
  say "3. The seal. From here on nobody at the table knows which cup holds what."
  cli seal "$session" --worksheet "$evening/worksheet.txt"
  say "4. The pourer's worksheet lies in $evening/worksheet.txt; nobody else looks at it."
  say "5. The tasters sit down."
  local place=0 name
  while read -r name || [ -n "$name" ]; do
    place=$((place + 1))
    cli sit "$session" "$place" "$name" --as loose >/dev/null
  done < <(invited_in demo_sessions/plan.json)
  say "   $place of them; each is a pair of dice, so nothing should be found."
  say "6. They taste and lock."
  cli export "$session" --as csv --out "$evening/blind" >/dev/null
  thrown "$place" "$(ls "$evening"/blind/*cups.csv)" >"$evening/answers.csv"
  cli answer "$session" "$evening/answers.csv"
  say "7. The table is closed, the key is opened."
  cli close "$session"
  cli reveal "$session"
  cli decide "$session" --text "Pour it again for people instead of dice."
  say "8. The report, and the check that nothing was changed."
  cli report "$session" --out "$evening/report.html" >/dev/null
  cli report "$session" --out "$evening/report.json" >/dev/null
  cli verify "$session"
  say "The report lies in $PWD/$evening/report.html and $PWD/$evening/report.json."
}
play
