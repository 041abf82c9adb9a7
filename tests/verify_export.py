#!/usr/bin/env python3
"""Checks an interchange file of Oddglass with nothing of the program's: Python's standard library only.

    verify_export.py FILE...

For every session whose key is open it looks at the log's hash chain and its steps, the hash of the plan, the commitment and the seal mark,
the digests of answers, words, remarks, promises and pours, and draws all orders and codes once more from the seed with its own ChaCha20.
Answers that were destroyed on request are no break. The form of the file is described in demo_sessions/README.md.
Exit status: 0 everything holds, 1 something does not, 2 the file cannot be read. One line for each thing that does not hold.
"""
import hashlib
import itertools
import json
import struct
import sys

MASK = 0xFFFFFFFF


def canonical(value):
    return json.dumps(value, sort_keys=True, separators=(",", ":"), ensure_ascii=False).encode()


def sha(*parts):
    return hashlib.sha256(b"".join(parts)).hexdigest()


# The generator: ChaCha20 as in RFC 8439, section 2.3, with the stream's name as nonce and a block counter from 0.

def quarter(s, a, b, c, d):
    for x, y, z, turn in ((a, b, d, 16), (c, d, b, 12), (a, b, d, 8), (c, d, b, 7)):
        s[x] = (s[x] + s[y]) & MASK
        s[z] ^= s[x]
        s[z] = (s[z] << turn | s[z] >> (32 - turn)) & MASK


def block(key, nonce, counter):
    start = list(struct.unpack("<4I", b"expand 32-byte k") + struct.unpack("<8I", key) + (counter,) + struct.unpack("<3I", nonce))
    s = start[:]
    for _ in range(10):
        for a, b, c, d in ((0, 4, 8, 12), (1, 5, 9, 13), (2, 6, 10, 14), (3, 7, 11, 15), (0, 5, 10, 15), (1, 6, 11, 12), (2, 7, 8, 13), (3, 4, 9, 14)):
            quarter(s, a, b, c, d)
    return [(x + y) & MASK for x, y in zip(s, start)]


class Stream:
    def __init__(self, seed, name):
        self.seed, self.nonce, self.counter, self.words = seed, name.encode().ljust(12, b"\0"), 0, []

    def next32(self):
        if not self.words:
            self.words = block(self.seed, self.nonce, self.counter)
            self.counter += 1
        return self.words.pop(0)

    def below(self, n):
        limit = 2**32 - 2**32 % n
        while True:
            word = self.next32()
            if word < limit:
                return word % n

    def shuffle(self, items):
        for i in range(len(items) - 1, 0, -1):
            j = self.below(i + 1)
            items[i], items[j] = items[j], items[i]


# Orders and codes, by the rules in app/blinding/orders.h and codes.h.

def rows(*counts):
    """All rows of so many 1s and so many 2s, rising."""
    cups = [1] * counts[0] + [2] * counts[1]
    return sorted(set(itertools.permutations(cups)))


def orders_of(plan):
    """What a flight of the plan's method can hold, as lots 1 and 2 from the first cup on, in the order in which they are dealt."""
    method, marked = plan["method"], plan.get("marked")
    if method == "triangle":
        return [(1, 2, 2), (2, 1, 2), (2, 2, 1), (1, 1, 2), (1, 2, 1), (2, 1, 1)]
    if method == "duo-trio":
        return [row for row in ((1, 1, 2), (1, 2, 1), (2, 1, 2), (2, 2, 1)) if marked in (None, row[0])]
    if method == "tetrad":
        return rows(2, 2)
    if method == "two-out-of-five":
        return rows(2, 3) + rows(3, 2)
    if method in ("pair", "preference"):
        return rows(1, 1)
    if method == "three-afc":
        return rows(2, 1) if plan["expected"] == 2 else rows(1, 2)
    if method == "same-different":
        return [(1, 1), (2, 2), (1, 2), (2, 1)]
    if method == "a-not-a":
        return [(marked, marked), (marked, 3 - marked)]
    raise ValueError("no method " + method)


def dealt_cards(places, kinds, stream):
    dealt = []
    while len(dealt) < places:
        cards = list(range(kinds))
        stream.shuffle(cards)
        dealt += cards
    return dealt[:places]


def deal_sheet(plan, stream):
    """A score sheet: which lot is poured twice and which sample is which lot are drawn, then the orders are dealt."""
    sheet, places, dealt = plan["sheet"], plan["places"], {}
    samples = [lot["slot"] for lot in plan["lots"] if lot.get("role") != "warm_up"]
    if sheet["duplicate"]:
        may = [lot["slot"] for lot in plan["lots"] if lot.get("role") not in ("warm_up", "control")]
        samples.append(may[stream.below(len(may))])
    stream.shuffle(samples)
    marked = [plan["marked"]] if "marked" in plan else []
    for rnd in range(1, plan["rounds"] + 1):
        cards = dealt_cards(places, len(sheet["orders"]), stream)
        for place in range(1, places + 1):
            dealt[place, rnd] = marked + [samples[sample - 1] for sample in sheet["orders"][cards[place - 1]]]
    return dealt


def deal(plan, stream):
    if "sheet" in plan:
        return deal_sheet(plan, stream)
    orders, places, dealt = orders_of(plan), plan["places"], {}
    pairs = [(1, 2), (1, 3), (2, 3)] if len(plan["lots"]) == 3 else [(1, 2)]
    sequences = list(itertools.permutations(range(3)))
    for first in range(1, plan["rounds"] + 1, len(pairs)):
        cards = [dealt_cards(places, len(orders), stream) for _ in pairs]
        turn = dealt_cards(places, 6, stream) if len(pairs) == 3 else None
        for place in range(1, places + 1):
            for step in range(len(pairs)):
                pair = sequences[turn[place - 1]][step] if turn else 0
                dealt[place, first + step] = [pairs[pair][side - 1] for side in orders[cards[pair][place - 1]]]
    return dealt


def all_codes(digits):
    codes = []
    for number in range(10 ** (digits - 1), 10**digits):
        text = str(number)
        if len(set(text)) == digits and not set(text) <= set("01689"):
            codes.append(number)
    return codes


def look_alike(a, b):
    a, b = str(a), str(b)
    return sum(x == y for x, y in zip(a, b)) >= 2 or sorted(a) == sorted(b)


def fits(code, flight, leave_out=None):
    return not any(look_alike(code, other) for i, other in enumerate(flight) if i != leave_out)


def draw_codes(flights, per_flight, stream):
    left = all_codes(3 if flights * per_flight <= 600 else 4)
    stream.shuffle(left)
    drawn = []
    for _ in range(flights):
        flight = []
        while len(flight) < per_flight:
            code = next((c for c in left if fits(c, flight)), None)
            if code is not None:
                left.remove(code)
                flight.append(code)
                continue
            earlier, i, other = next((e, i, c) for e in drawn for i in range(per_flight) if fits(e[i], flight)
                                     for c in left if fits(c, e, i))
            flight.append(earlier[i])
            earlier[i] = other
            left.remove(other)
        drawn.append(flight)
    return drawn


def cups_in_flight(plan):
    if "sheet" in plan:
        return len(plan["sheet"]["orders"][0]) + ("marked" in plan)
    return {"triangle": 3, "duo-trio": 3, "tetrad": 4, "two-out-of-five": 5, "three-afc": 3}.get(plan["method"], 2)


def draw(seed, plan, spares):
    """Where hands hide the key only codes are drawn, and with whole bottles the letter that each cup is poured from."""
    routine = plan.get("routine", "pourer")
    orders = deal(plan, Stream(seed, "orders")) if routine in ("pourer", "bottles") else None
    coded = [lot["slot"] for lot in plan["lots"] if lot.get("role") != "warm_up"]
    flights = [(place, rnd) for place in range(1, plan["places"] + 1) for rnd in range(1, plan["rounds"] + 1)]
    size = cups_in_flight(plan)
    codes = draw_codes(len(flights), size * (1 + spares), Stream(seed, "codes"))
    cups, lines = [], []
    for (place, rnd), flight in zip(flights, codes):
        for position in range(size):
            for spare in range(spares + 1):
                code = flight[position if spare == 0 else size + position * spares + spare - 1]
                cups.append({"code": code, "place": place, "position": position + 1, "round": rnd, "spare": spare})
                if routine == "bottles":
                    cups[-1]["bottle"] = coded.index(orders[place, rnd][position]) + 1
                if routine == "pourer":
                    lines.append([code, orders[place, rnd][position]])
    return cups, sorted(lines)


# The record.

STEPS = {"draft": {"sealed": "sealed"}, "sealed": {"opened": "tasting"},
         "tasting": {"began": "tasting", "answered": "tasting", "looked": "tasting", "judged": "tasting",
                     "mats_swapped": "tasting", "found": "tasting", "closed": "closed"},
         "closed": {"found": "closed", "voided": "closed", "as_poured": "closed", "revealed": "revealed"}, "revealed": {"decided": "revealed"}}
for state in ("sealed", "tasting"):
    for kind in ("pour_sheet_opened", "poured", "as_poured", "place_taken", "place_left", "place_freed", "spilled", "voided", "said"):
        STEPS[state][kind] = state
for state in ("sealed", "tasting", "closed"):
    STEPS[state].update(broken="broken", abandoned="abandoned")
for state in ("sealed", "tasting", "closed", "revealed", "broken", "abandoned"):
    STEPS.setdefault(state, {})["erased"] = state


def seal_mark(commitment):
    first = bytes.fromhex(commitment)
    bits = int.from_bytes(first[:3], "big")
    syllables = ["bdfghklmnprstvwz"[bits >> (20 - 6 * i) & 15] + "aiou"[bits >> (18 - 6 * i) & 3] for i in range(4)]
    return "{}{} {}{} {}".format(*syllables, first[3] % 10)


def salted(salt, text):
    return sha(bytes.fromhex(salt), text if isinstance(text, bytes) else text.encode())


def check_chain(session):
    before, state = bytes(32), "draft"
    for number, entry in enumerate(session["log"], 1):
        digest = sha(before, canonical({k: v for k, v in entry.items() if k != "hash"}))
        if entry["seq"] != number or entry["session"] != session["id"] or digest != entry["hash"]:
            yield f"chain: entry {number}"
        if STEPS[state].get(entry["kind"]) != entry["state"]:
            yield f"steps: entry {number}"
            return
        before, state = bytes.fromhex(entry["hash"]), entry["state"]
    if state != session["state"]:
        yield "steps: the session stands elsewhere than its log"


def check_seal(session):
    first, plan, key = session["log"][0]["body"], sha(canonical(session["plan"])), session["key"]
    if first["plan"] != plan:
        yield "plan"
    routine = session["plan"].get("routine", "pourer")
    if key["custody"] != ("drawn" if routine == "pourer" else routine):
        yield "custody"
    sealed = {name: key[name] for name in ("custody", "generator", "lines", "seed")}
    sealed["plan"] = plan
    if sha(b"oddglass seal 1\n", bytes.fromhex(key["salt"]), canonical(sealed)) != first["commitment"]:
        yield "commitment"
    if seal_mark(first["commitment"]) != session["seal_mark"]:
        yield "seal mark"
    spares = max(cup["spare"] for cup in session["plan"]["cups"])
    cups, lines = draw(bytes.fromhex(key["seed"]), session["plan"], spares)
    if cups != session["plan"]["cups"]:
        yield "codes"
    if lines != key["lines"]:
        yield "orders"


def check_answers(session):
    erased = {e["body"]["place"]: set() for e in session["log"] if e["kind"] == "erased"}
    for entry in session["log"]:
        if entry["kind"] == "erased":
            erased[entry["body"]["place"]].add(entry["body"]["what"])
    makers = {}
    hand_ins = {h["seq"]: h for h in session["hand_ins"]}
    if len(hand_ins) != len(session["hand_ins"]):
        yield "answers: two for one entry"
    for entry in session["log"]:
        if entry["kind"] == "place_taken":
            makers[entry["body"]["place"]] = entry["body"]["maker"]
        elif entry["kind"] == "place_freed":
            makers.pop(entry["body"]["place"], None)
        if entry["kind"] != "answered":
            continue
        # Whoever typed answers in from paper is not at the table, or sits there and made none of it.
        if entry["body"].get("typed_by", 0) != 0 and makers.get(entry["body"]["typed_by"], True):
            yield f"answers: entry {entry['seq']} was typed in by somebody who may not"
        where, body, found = f"answers: entry {entry['seq']}", entry["body"], hand_ins.pop(entry["seq"], None)
        if found is None:
            if "everything" not in erased.get(body["place"], ()):
                yield where + " is missing"
            continue
        if (found["place"], found["round"]) != (body["place"], body["round"]) or salted(found["salt"], canonical(found["cells"])) != body["digest"]:
            yield where
        words = {(w["item"], w.get("code", 0)): w for w in found["words"]}
        for item, code, value in found["cells"]:
            if isinstance(value, str):
                kept = words.pop((item, code), None)
                if kept is None and body["place"] not in erased:
                    yield f"words: entry {entry['seq']} is missing"
                if kept is not None and salted(kept["salt"], kept["text"]) != value:
                    yield f"words: entry {entry['seq']}"
        if words:
            yield f"words: entry {entry['seq']} has too many"
    if hand_ins:
        yield "answers without an entry in the log"


def check_beside(session, name, kinds, kept, text):
    erased = {e["body"]["place"] for e in session["log"] if e["kind"] == "erased"}
    host_erased = 0 in erased
    left = {k["seq"]: k for k in kept}
    for entry in session["log"]:
        digest = entry["body"].get("digest")
        if entry["kind"] not in kinds or digest is None:
            continue
        found = left.pop(entry["seq"], None)
        if found is None:
            # What stood on somebody's paper in place of a code goes with them.
            if entry["body"].get("reason") == "misread" and entry["body"]["place"] in erased:
                continue
            if not host_erased or name == "poured":
                yield f"{name}: entry {entry['seq']} is missing"
        elif salted(found["salt"], text(found)) != digest:
            yield f"{name}: entry {entry['seq']}"
    if left:
        yield f"{name} without an entry in the log"


def poured_by_hand(plan):
    """How often each lot is poured for one flight, and how many cups are set aside; nothing for a score sheet from whole bottles."""
    expected = plan.get("expected", 1)
    return {"triangle": ({1: 2, 2: 2}, 1), "tetrad": ({1: 2, 2: 2}, 0), "three-afc": ({expected: 1, 3 - expected: 2}, 0)}.get(
        plan["method"], None if "sheet" in plan else ({1: 1, 2: 1}, 0))


def adds_up(plan, lines):
    lots = [slot for _, slot in lines]
    if None in lots:
        return False
    hands = poured_by_hand(plan)
    if hands is None:
        return len(set(lots)) == len(lots)
    return all(lots.count(slot) == count for slot, count in hands[0].items()) and len(lots) == sum(hands[0].values())


def check_found(session):
    """What was read off where hands hid the key: as it was then, the cups of its flight, adding up wherever the flight counts."""
    plan, key, log = session["plan"], session["key"], session["log"]
    if plan.get("routine", "pourer") == "pourer":
        if "found" in key or any(e["kind"] == "found" for e in log):
            yield "found: nothing was to be read off"
        return
    place_of = {cup["code"]: (cup["place"], cup["round"]) for cup in plan["cups"]}
    bottle_of = {cup["code"]: cup.get("bottle") for cup in plan["cups"]}
    left, counted, bottles = {f["seq"]: f for f in key["found"]}, {}, {}
    for entry in log:
        if entry["kind"] != "found":
            continue
        found, where = left.pop(entry["seq"], None), f"found: entry {entry['seq']}"
        if found is None:
            yield where + " is missing"
            continue
        flight = (entry["body"]["place"], entry["body"]["round"])
        text = canonical({"lines": found["lines"], "place": found["place"], "round": found["round"]})
        if (found["place"], found["round"]) != flight or salted(found["salt"], text) != entry["body"]["digest"]:
            yield where
        codes = [code for code, _ in found["lines"] if code]
        if any(place_of.get(code) != flight for code in codes) or len(set(codes)) != len(codes):
            yield where + " names cups of another flight"
        for code, slot in found["lines"]:
            if code and bottle_of[code] is not None and bottles.setdefault(bottle_of[code], slot) != slot:
                yield where + " has two drinks in one bottle"
        counted[flight] = adds_up(plan, found["lines"])
    if left:
        yield "found without an entry in the log"
    aside = {(e["body"]["place"], e["body"]["round"]) for e in log if e["kind"] == "voided"}
    if session["state"] == "revealed":
        for hand_in in session["hand_ins"]:
            flight = (hand_in["place"], hand_in["round"])
            if flight not in aside and not counted.get(flight):
                yield f"found: round {flight[1]} at place {flight[0]} counts and does not add up"


def check_promises(session):
    host_erased = any(e["kind"] == "erased" and e["body"]["place"] == 0 for e in session["log"])
    left = {p["outcome"]: p for p in session["promises"]}
    for outcome, digest in session["plan"]["promises"].items():
        found = left.pop(outcome, None)
        if found is None:
            if not host_erased:
                yield f"promises: {outcome} is missing"
        elif salted(found["salt"], found["text"]) != digest:
            yield f"promises: {outcome}"
    if left:
        yield "promises that the plan does not know"


def check_open(session):
    """Answers with the labels known stand beside the log: by somebody who sat and was not forgotten, to a question about each cup, once for a drink of the plan."""
    taken = set()
    for entry in session["log"]:
        if entry["kind"] == "place_taken":
            taken.add(entry["body"]["place"])
        if entry["kind"] == "place_freed":
            taken.discard(entry["body"]["place"])
    gone = {e["body"]["place"] for e in session["log"] if e["kind"] == "erased" and e["body"]["what"] == "everything"}
    items = {i["item"]: i for i in session["plan"]["items"] if i.get("cup") and i.get("low") is not None and i.get("high") is not None}
    slots, once_each = {lot["slot"] for lot in session["plan"]["lots"]}, set()
    for each in session.get("open") or []:
        key, item = (each["place"], each["slot"], each["item"]), items.get(each["item"])
        if item is None or not item["low"] <= each["value"] <= item["high"] or each["slot"] not in slots or each["place"] not in taken - gone or key in once_each:
            yield f"open: place {each['place']}"
        once_each.add(key)


def check(session):
    yield from check_chain(session)
    yield from check_seal(session)
    yield from check_answers(session)
    yield from check_beside(session, "remarks", ("said", "voided", "broken", "abandoned", "decided"), session["remarks"], lambda r: r["text"])
    yield from check_beside(session, "poured", ("as_poured",), session["key"]["poured"], lambda p: canonical([p["code"], p["slot"]]))
    yield from check_found(session)
    yield from check_promises(session)
    yield from check_open(session)


def once(pairs):
    found = dict(pairs)
    if len(found) != len(pairs):
        raise ValueError("a key stands twice")
    return found


def whole(text):
    raise ValueError("not a whole number: " + text)


def main(files):
    bad = 0
    for file in files:
        try:
            with open(file, encoding="utf-8") as text:
                document = json.load(text, object_pairs_hook=once, parse_float=whole, parse_constant=whole)
            if document["format"] != "oddglass" or document["version"] != 1:
                raise ValueError("not the form that this script knows")
            for session in document.get("sessions", []):
                if "log" not in session:
                    print(f"{file}: {session['id'][:8]} still sealed, nothing to check")
                    continue
                found = list(check(session))
                bad += len(found)
                erased = sum(e["kind"] == "erased" for e in session["log"])
                opened = sum(e["kind"] == "pour_sheet_opened" for e in session["log"])
                for line in found:
                    print(f"{file}: {session['id'][:8]} does not hold: {line}")
                if not found:
                    print(f"{file}: {session['id'][:8]} holds; {erased} erased; pour sheet opened {opened} times")
        except (OSError, ValueError, KeyError, TypeError, AttributeError, IndexError, RecursionError) as error:
            print(f"{file}: cannot be read: {type(error).__name__}: {error}", file=sys.stderr)
            return 2
    return 1 if bad else 0


if __name__ == "__main__":
    if len(sys.argv) < 2:
        sys.exit(__doc__)
    sys.exit(main(sys.argv[1:]))
