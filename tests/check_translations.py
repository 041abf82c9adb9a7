"""Fails when a sentence of the program has no German one, or one that lost a {place}.

lupdate reads the sources as they are now; every sentence it finds must stand in the file of translations, finished and with the same places, and nothing
else may stand there. Run as: check_translations.py <top folder> <lupdate>
"""
import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree

PLACE = re.compile(r"\{\w+\}|%\d")


def messages(file):
    for context in xml.etree.ElementTree.parse(file).getroot().findall("context"):
        for message in context.findall("message"):
            translation = message.find("translation")
            yield (context.findtext("name"), message.findtext("source")), translation.text or "", translation.get("type")


def edges(text):
    return text[: len(text) - len(text.lstrip())], text[len(text.rstrip()) :]


top, lupdate = pathlib.Path(sys.argv[1]), sys.argv[2]
with tempfile.TemporaryDirectory() as folder:
    now = pathlib.Path(folder) / "now.ts"
    subprocess.run([lupdate, "-silent", "app", "qml", "-locations", "none", "-ts", str(now)], cwd=top, check=True, stderr=subprocess.DEVNULL)
    spoken = {key for key, _, _ in messages(now)}

wrong = []
written = set()
for (context, source), translation, kind in messages(top / "app/translations/oddglass_de.ts"):
    written.add((context, source))
    if kind or not translation:
        wrong.append(f"{kind or 'empty'}: {context}: {source}")
    elif set(PLACE.findall(source)) != set(PLACE.findall(translation)):
        wrong.append(f"other places: {context}: {source} => {translation}")
    elif edges(source) != edges(translation):
        wrong.append(f"other blanks at its ends: {context}: {source!r}")
wrong += [f"missing: {context}: {source}" for context, source in sorted(spoken - written)]
wrong += [f"not said any more: {context}: {source}" for context, source in sorted(written - spoken)]
for line in wrong:
    print(line)
print(f"{len(written)} sentences, {len(wrong)} wrong")
sys.exit(1 if wrong or len(spoken) < 1000 else 0)
