"""Fails when two files of one room give the same name to something of their own.

Ten files of a room are compiled as one, so a name in the namespace without a name may stand in one of them only: the compiler refuses some clashes, and
quietly takes the better fitting of two functions in others. Run as: check_names.py <top folder>
"""
import collections
import pathlib
import re
import sys

DEFINED = re.compile(r"(?:\[\[\w+\]\] )?(?:(?:struct|class|enum class|enum) (\w+)|[\w:<>,&*\[\] ]+?[ &*](\w+)\()")


def own_names(file):
    inside = False
    for line in file.read_text(encoding="utf-8").splitlines():
        if line.startswith("namespace {"):
            inside = True
        elif line == "}  // namespace":
            inside = False
        elif inside and re.match(r"[A-Za-z\[]", line) and not line.startswith(("template", "using")):
            found = DEFINED.match(line)
            if found:
                yield found[1] or found[2]


top = pathlib.Path(sys.argv[1])
alone = {"tests/cli", "tests/bench"}  # each file compiled for itself
clashes = []
for room in [top / "stats", *sorted((top / "app").glob("*")), *sorted((top / "tests").glob("*"))]:
    if str(room.relative_to(top)) in alone or not room.is_dir() or room.name == "data":
        continue
    where = collections.defaultdict(set)
    for file in sorted(room.rglob("*.cpp")):
        if "must_not_compile" not in file.parts:
            for name in own_names(file):
                where[name].add(file.relative_to(top))
    clashes += [f"{name}: {', '.join(map(str, sorted(files)))}" for name, files in where.items() if len(files) > 1]
for clash in clashes:
    print(clash)
sys.exit(1 if clashes else 0)
