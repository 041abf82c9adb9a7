<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AlonePage</name>
    <message>
        <source>One back</source>
        <translation>Eins zurück</translation>
    </message>
    <message>
        <source>Print the steps and the lists</source>
        <translation>Schritte und Listen drucken</translation>
    </message>
    <message>
        <source>To the places</source>
        <translation>Zu den Plätzen</translation>
    </message>
</context>
<context>
    <name>AskedLine</name>
    <message>
        <source>Move up: %1</source>
        <translation>Nach oben: %1</translation>
    </message>
    <message>
        <source>Move down: %1</source>
        <translation>Nach unten: %1</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Change: %1</source>
        <translation>Ändern: %1</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Wegnehmen</translation>
    </message>
    <message>
        <source>Remove: %1</source>
        <translation>Wegnehmen: %1</translation>
    </message>
</context>
<context>
    <name>Banner</name>
    <message>
        <source>Understood</source>
        <translation>Verstanden</translation>
    </message>
</context>
<context>
    <name>BeginSeriesPage</name>
    <message>
        <source>Over time</source>
        <translation>Über die Zeit</translation>
    </message>
    <message>
        <source>A series needs a batch of your own.</source>
        <translation>Eine Reihe braucht einen eigenen Ansatz.</translation>
    </message>
    <message>
        <source>Put it on the shelf with its bottles first.</source>
        <translation>Stell ihn zuerst mit seinen Flaschen ins Regal.</translation>
    </message>
    <message>
        <source>Begin the series</source>
        <translation>Reihe beginnen</translation>
    </message>
    <message>
        <source>Take this plan</source>
        <translation>Diesen Plan nehmen</translation>
    </message>
    <message>
        <source>Which batch</source>
        <translation>Welcher Ansatz</translation>
    </message>
    <message>
        <source>Beside it in every look</source>
        <translation>Daneben bei jedem Termin</translation>
    </message>
    <message>
        <source>Which bottles</source>
        <translation>Welche Flaschen</translation>
    </message>
    <message>
        <source>Ages count from this day (bottling), as in 2026-03-14</source>
        <translation>Das Alter zählt ab diesem Tag (Abfüllung), etwa 2026-03-14</translation>
    </message>
    <message>
        <source>Looks at</source>
        <translation>Termine bei</translation>
    </message>
    <message>
        <source>Bottles of each for one look</source>
        <translation>Flaschen von jedem für einen Termin</translation>
    </message>
    <message>
        <source>In reserve</source>
        <translation>Als Reserve</translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation>Wozu das Ganze</translation>
    </message>
    <message>
        <source>One comparison is named now: the last look against the first. It stays as it is once a look is sealed; all else is looking round.</source>
        <translation>Ein Vergleich wird jetzt benannt: der letzte Termin gegen den ersten. Er bleibt, wie er ist, sobald ein Termin versiegelt ist; alles andere ist Umsehen.</translation>
    </message>
    <message>
        <source>In what: a word of the sheet, such as cardboard. Left empty: the liking</source>
        <translation>Worin: ein Wort des Bogens, etwa Pappe. Leer gelassen: wie gut es gefällt</translation>
    </message>
    <message>
        <source>A change too small to matter, in points (10 of 100 on a line, 1 of 9 in liking); may be left empty</source>
        <translation>Eine Änderung, die zu klein ist, um etwas auszumachen, in Punkten (10 von 100 auf einer Linie, 1 von 9 beim Gefallen); darf leer bleiben</translation>
    </message>
    <message>
        <source>What you call it</source>
        <translation>Wie du sie nennst</translation>
    </message>
</context>
<context>
    <name>BeverageForm</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>Woher es kommt</translation>
    </message>
    <message>
        <source>made here</source>
        <translation>hier gemacht</translation>
    </message>
    <message>
        <source>bought, or somebody else&apos;s</source>
        <translation>gekauft oder von jemand anderem</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>beer</source>
        <translation>Bier</translation>
    </message>
    <message>
        <source>mead</source>
        <translation>Met</translation>
    </message>
    <message>
        <source>cider</source>
        <translation>Cider</translation>
    </message>
    <message>
        <source>wine</source>
        <translation>Wein</translation>
    </message>
    <message>
        <source>other</source>
        <translation>anderes</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Rezept</translation>
    </message>
    <message>
        <source>in your own words; batches of one recipe stand side by side. May stay empty</source>
        <translation>in eigenen Worten; Ansätze eines Rezepts stehen nebeneinander. Darf leer bleiben</translation>
    </message>
    <message>
        <source>Original gravity, %1</source>
        <translation>Stammwürze, %1</translation>
    </message>
    <message>
        <source>such as %1; may stay empty</source>
        <translation>etwa %1; darf leer bleiben</translation>
    </message>
    <message>
        <source>Final gravity, %1</source>
        <translation>Restextrakt, %1</translation>
    </message>
    <message>
        <source>Alcohol, % by volume</source>
        <translation>Alkohol, % vol</translation>
    </message>
    <message>
        <source>needed before it is poured</source>
        <translation>nötig, bevor eingeschenkt wird</translation>
    </message>
    <message>
        <source>Where the strength comes from</source>
        <translation>Woher der Alkoholgehalt stammt</translation>
    </message>
    <message>
        <source>the label</source>
        <translation>vom Etikett</translation>
    </message>
    <message>
        <source>the gravities</source>
        <translation>aus den beiden Dichten</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>a guess</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>Ingredients that matter to allergic people</source>
        <translation>Zutaten, auf die es bei Allergien ankommt</translation>
    </message>
    <message>
        <source>known</source>
        <translation>bekannt</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Not known is an answer too; it is said aloud before anything is poured.</source>
        <translation>„Nicht bekannt“ ist auch eine Antwort; es wird laut gesagt, bevor eingeschenkt wird.</translation>
    </message>
    <message>
        <source>Who had a hand in it. Makers taste beside the panel and never count in it.</source>
        <translation>Wer daran mitgemacht hat. Wer es gemacht hat, verkostet neben dem Panel und zählt nie dazu.</translation>
    </message>
    <message>
        <source>Who had a hand in it can be said once somebody stands under People.</source>
        <translation>Wer daran mitgemacht hat, lässt sich sagen, sobald jemand unter „Leute“ steht.</translation>
    </message>
</context>
<context>
    <name>BeveragePage</name>
    <message>
        <source>Put on the shelf</source>
        <translation>Ins Regal stellen</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Add a note</source>
        <translation>Notiz hinzufügen</translation>
    </message>
    <message>
        <source>Change what is said above</source>
        <translation>Ändern, was oben steht</translation>
    </message>
    <message>
        <source>Set it beside its recipe&apos;s other batches</source>
        <translation>Neben die anderen Ansätze des Rezepts stellen</translation>
    </message>
    <message>
        <source>Put it back on the shelf</source>
        <translation>Zurück ins Regal stellen</translation>
    </message>
    <message>
        <source>Put it away</source>
        <translation>Weglegen</translation>
    </message>
</context>
<context>
    <name>CameOutPage</name>
    <message>
        <source>Keep what I wrote</source>
        <translation>Behalten, was ich geschrieben habe</translation>
    </message>
    <message>
        <source>Write what you will do</source>
        <translation>Schreib auf, was du tun wirst</translation>
    </message>
    <message>
        <source>The page for the room</source>
        <translation>Die Seite für den Raum</translation>
    </message>
    <message>
        <source>The page for the maker</source>
        <translation>Die Seite für die, die es gemacht haben</translation>
    </message>
    <message>
        <source>Score again, with the labels known</source>
        <translation>Noch einmal bewerten, jetzt mit Etikett</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>What you read here would sit at the table with you. Open the key of that look first. You may open this page all the same: that is written down beside the look, for good.</source>
        <translation>Was du hier liest, säße mit dir am Tisch. Öffne zuerst den Schlüssel jenes Termins. Du darfst diese Seite trotzdem öffnen: das wird neben dem Termin festgehalten, für immer.</translation>
    </message>
    <message>
        <source>Open it all the same</source>
        <translation>Trotzdem öffnen</translation>
    </message>
    <message>
        <source>The verdict: %1.</source>
        <translation>Das Urteil: %1.</translation>
    </message>
    <message>
        <source>Hide how the cups lie to each other</source>
        <translation>Verbergen, wie die Becher zueinander liegen</translation>
    </message>
    <message>
        <source>For the maker alone</source>
        <translation>Nur für die, die es gemacht haben</translation>
    </message>
    <message>
        <source>What will you do with this? One line; it comes back when you plan the next tasting of this batch.</source>
        <translation>Was wirst du damit tun? Eine Zeile; sie kommt wieder, wenn du die nächste Verkostung dieses Ansatzes planst.</translation>
    </message>
    <message>
        <source>Write the report to this file (.pdf, .html or .json)</source>
        <translation>Den Bericht in diese Datei schreiben (.pdf, .html oder .json)</translation>
    </message>
    <message>
        <source>Write the report</source>
        <translation>Bericht schreiben</translation>
    </message>
</context>
<context>
    <name>CardPage</name>
    <message>
        <source>Keep it to myself</source>
        <translation>Für mich behalten</translation>
    </message>
    <message>
        <source>The brewer may see it, as it is today</source>
        <translation>Wer hier braut, darf sie sehen, so wie sie heute ist</translation>
    </message>
    <message>
        <source>Have no card any more</source>
        <translation>Keine Karte mehr haben</translation>
    </message>
    <message>
        <source>Back to the people</source>
        <translation>Zurück zu den Leuten</translation>
    </message>
    <message>
        <source>How you use the scale</source>
        <translation>Wie du die Skala nutzt</translation>
    </message>
    <message>
        <source>What you have shown to notice</source>
        <translation>Was du nachweislich bemerkst</translation>
    </message>
</context>
<context>
    <name>CarePage</name>
    <message>
        <source>On to the seal</source>
        <translation>Weiter zum Siegel</translation>
    </message>
    <message>
        <source>Tick the line above first.</source>
        <translation>Hak zuerst die Zeile oben an.</translation>
    </message>
    <message>
        <source>Everyone has been told</source>
        <translation>Alle haben es gehört</translation>
    </message>
    <message>
        <source>Whoever sits down is asked again at their place.</source>
        <translation>Wer sich hinsetzt, wird am Platz noch einmal gefragt.</translation>
    </message>
</context>
<context>
    <name>CodeCard</name>
    <message>
        <source>this one</source>
        <translation>diesen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>compare with this</source>
        <translation>damit vergleichen</translation>
    </message>
</context>
<context>
    <name>DangerQuestion</name>
    <message>
        <source>No, leave it as it is</source>
        <translation>Nein, alles lassen, wie es ist</translation>
    </message>
    <message>
        <source>Yes, go on</source>
        <translation>Ja, weiter</translation>
    </message>
</context>
<context>
    <name>Figure</name>
    <message>
        <source>Hide the numbers</source>
        <translation>Zahlen verbergen</translation>
    </message>
    <message>
        <source>Show the numbers</source>
        <translation>Zahlen zeigen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>FormPart</name>
    <message>
        <source>About which cup, from the left?</source>
        <translation>Zu welchem Becher, von links?</translation>
    </message>
    <message>
        <source>In which round?</source>
        <translation>In welcher Runde?</translation>
    </message>
    <message>
        <source>Or take the answers from a table that a form made (.csv)</source>
        <translation>Oder nimm die Antworten aus einer Tabelle, die ein Formular gemacht hat (.csv)</translation>
    </message>
    <message>
        <source>Read its columns</source>
        <translation>Spalten lesen</translation>
    </message>
    <message>
        <source>The columns</source>
        <translation>Die Spalten</translation>
    </message>
</context>
<context>
    <name>GiveAwaysPage</name>
    <message>
        <source>Pour a little of each and look. Tick only what differs; what is alike needs nothing.</source>
        <translation>Schenk von jedem etwas ein und sieh hin. Hak nur an, was sich unterscheidet; was keinen Unterschied zeigt, braucht nichts.</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Festgelegt</translation>
    </message>
    <message>
        <source>It differs. What is done about it?</source>
        <translation>Es unterscheidet sich. Was geschieht damit?</translation>
    </message>
    <message>
        <source>Leave that person out</source>
        <translation>Diese Person auslassen</translation>
    </message>
    <message>
        <source>What besides the taste could tell them apart?</source>
        <translation>Was außer dem Geschmack könnte sie verraten?</translation>
    </message>
</context>
<context>
    <name>HandOverPage</name>
    <message>
        <source>Back to the places</source>
        <translation>Zurück zu den Plätzen</translation>
    </message>
    <message>
        <source>Who is it?</source>
        <translation>Wer ist es?</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>How do you want to be shown afterwards?</source>
        <translation>Wie willst du hinterher gezeigt werden?</translation>
    </message>
    <message>
        <source>Nickname; leave it empty to keep the one you have</source>
        <translation>Spitzname; lass das Feld leer, um deinen zu behalten</translation>
    </message>
    <message>
        <source>You came later. Have you heard anything about the cups?</source>
        <translation>Du bist später gekommen. Hast du etwas über die Becher gehört?</translation>
    </message>
    <message>
        <source>yes, something</source>
        <translation>ja, etwas</translation>
    </message>
    <message>
        <source>no, nothing</source>
        <translation>nein, nichts</translation>
    </message>
</context>
<context>
    <name>HistoryPage</name>
    <message>
        <source>Check again</source>
        <translation>Noch einmal prüfen</translation>
    </message>
    <message>
        <source>What came out</source>
        <translation>Was herauskam</translation>
    </message>
    <message>
        <source>The record</source>
        <translation>Das Protokoll</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
</context>
<context>
    <name>HowPart</name>
    <message>
        <source>Hide how it is worked out</source>
        <translation>Verbergen, wie das ausgerechnet wird</translation>
    </message>
    <message>
        <source>How it is worked out, and after whom</source>
        <translation>Wie das ausgerechnet wird, und nach wem</translation>
    </message>
</context>
<context>
    <name>Inside</name>
    <message>
        <source>The table is open. What is locked is safe, and what was typed on a sheet is kept; a cup that was chosen and not locked is chosen again. Start the program again to go on where you are now.</source>
        <translation>Der Tisch ist offen. Was festgelegt ist, ist gespeichert, und was auf einem Bogen getippt wurde, bleibt; ein Becher, der gewählt und nicht festgelegt war, wird neu gewählt. Starte das Programm wieder, um da weiterzumachen, wo ihr gerade seid.</translation>
    </message>
    <message>
        <source>Close the window</source>
        <translation>Fenster schließen</translation>
    </message>
    <message>
        <source>Keep it open</source>
        <translation>Offen lassen</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Leave it so</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>Working it out. You can go on meanwhile.</source>
        <translation>Wird ausgerechnet. Du kannst inzwischen weitermachen.</translation>
    </message>
</context>
<context>
    <name>KeepingPage</name>
    <message>
        <source>Keeping</source>
        <translation>Aufbewahren</translation>
    </message>
    <message>
        <source>Back up</source>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>Check the file</source>
        <translation>Datei prüfen</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Sicherungen</translation>
    </message>
    <message>
        <source>None yet. One is made by itself after every opening of a key.</source>
        <translation>Noch keine. Nach jedem Öffnen eines Schlüssels entsteht von selbst eine.</translation>
    </message>
    <message>
        <source>Backup to put back</source>
        <translation>Sicherung, die zurückgeholt werden soll</translation>
    </message>
    <message>
        <source>Put this backup in place of what is here</source>
        <translation>Diese Sicherung an die Stelle dessen setzen, was hier ist</translation>
    </message>
    <message>
        <source>What was written since that backup will not be in the program any more. It is kept beside it as a file. Put the backup in place?</source>
        <translation>Was seit dieser Sicherung geschrieben wurde, ist dann nicht mehr im Programm. Es bleibt daneben als Datei liegen. Die Sicherung einsetzen?</translation>
    </message>
    <message>
        <source>Everything shown will be as it was then. Put it in place all the same?</source>
        <translation>Alles, was du siehst, ist dann wie damals. Trotzdem einsetzen?</translation>
    </message>
    <message>
        <source>Put it in place</source>
        <translation>Einsetzen</translation>
    </message>
    <message>
        <source>Files in and out</source>
        <translation>Dateien herein und hinaus</translation>
    </message>
    <message>
        <source>File to take in</source>
        <translation>Datei, die hereingeholt werden soll</translation>
    </message>
    <message>
        <source>Everything in it is checked first; it is taken in whole or not at all.</source>
        <translation>Erst wird alles darin geprüft; sie kommt ganz herein oder gar nicht.</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Hereinholen</translation>
    </message>
    <message>
        <source>Folder to write everything to</source>
        <translation>Ordner, in den alles geschrieben wird</translation>
    </message>
    <message>
        <source>Write it out</source>
        <translation>Hinausschreiben</translation>
    </message>
    <message>
        <source>What you have settled</source>
        <translation>Was du festgelegt hast</translation>
    </message>
    <message>
        <source>Most alcohol offered to one person an evening</source>
        <translation>Höchstens so viel Alkohol wird einer Person an einem Abend angeboten</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>20 g is our own figure. No amount is called safe here; your local law and a doctor know better.</source>
        <translation>20 g ist unsere eigene Zahl. Keine Menge heißt hier unbedenklich; dein Recht vor Ort und eine Ärztin oder ein Arzt wissen es besser.</translation>
    </message>
    <message>
        <source>Country, for standard drinks</source>
        <translation>Land, für Standardgetränke</translation>
    </message>
    <message>
        <source>two letters: GB AU NZ CA US AT FR IE JP; others see grams only</source>
        <translation>zwei Buchstaben: GB AU NZ CA US AT FR IE JP; andere sehen nur Gramm</translation>
    </message>
    <message>
        <source>Settle it</source>
        <translation>Festlegen</translation>
    </message>
    <message>
        <source>Language and units</source>
        <translation>Sprache und Einheiten</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>wie das System</translation>
    </message>
    <message>
        <source>Amounts</source>
        <translation>Mengen</translation>
    </message>
    <message>
        <source>millilitres</source>
        <translation>Milliliter</translation>
    </message>
    <message>
        <source>US fluid ounces</source>
        <translation>US-Flüssigunzen</translation>
    </message>
    <message>
        <source>imperial fluid ounces</source>
        <translation>britische Flüssigunzen</translation>
    </message>
    <message>
        <source>Temperatures</source>
        <translation>Temperaturen</translation>
    </message>
    <message>
        <source>Celsius</source>
        <translation>Celsius</translation>
    </message>
    <message>
        <source>Fahrenheit</source>
        <translation>Fahrenheit</translation>
    </message>
    <message>
        <source>Gravities</source>
        <translation>Dichten</translation>
    </message>
    <message>
        <source>specific gravity</source>
        <translation>spezifisches Gewicht</translation>
    </message>
    <message>
        <source>degrees Plato</source>
        <translation>Grad Plato</translation>
    </message>
    <message>
        <source>Pages, fields and paper follow this. The file keeps whole millilitres and specific gravities, and the command line stays with them.</source>
        <translation>Seiten, Felder und Papier richten sich danach. Die Datei behält ganze Milliliter und spezifische Gewichte, und die Befehlszeile bleibt dabei.</translation>
    </message>
    <message>
        <source>How this window looks</source>
        <translation>Wie dieses Fenster aussieht</translation>
    </message>
    <message>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>Smaller text</source>
        <translation>Kleinere Schrift</translation>
    </message>
    <message>
        <source>Text %1</source>
        <translation>Schrift %1</translation>
    </message>
    <message>
        <source>Larger text</source>
        <translation>Größere Schrift</translation>
    </message>
    <message>
        <source>light or dark as the system</source>
        <translation>hell oder dunkel wie das System</translation>
    </message>
</context>
<context>
    <name>LockedPage</name>
    <message>
        <source>My next round</source>
        <translation>Meine nächste Runde</translation>
    </message>
    <message>
        <source>Pass it on</source>
        <translation>Weitergeben</translation>
    </message>
    <message>
        <source>Pass it on first</source>
        <translation>Zuerst weitergeben</translation>
    </message>
    <message>
        <source>Turn the cups over</source>
        <translation>Becher umdrehen</translation>
    </message>
</context>
<context>
    <name>LotsPart</name>
    <message>
        <source>Lots</source>
        <translation>Chargen</translation>
    </message>
    <message>
        <source>No bottles yet. A lot is one bottling, one vintage or one purchase: bottles that are alike.</source>
        <translation>Noch keine Flaschen. Eine Charge ist eine Abfüllung, ein Jahrgang oder ein Einkauf: Flaschen von einer Sorte.</translation>
    </message>
    <message>
        <source>%1 (put away)</source>
        <translation>%1 (weggelegt)</translation>
    </message>
    <message>
        <source>Bottles came or went</source>
        <translation>Flaschen kamen oder gingen</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Zurückstellen</translation>
    </message>
    <message>
        <source>Put it away</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>Bottles of %1</source>
        <translation>Flaschen von %1</translation>
    </message>
    <message>
        <source>added</source>
        <translation>dazugekommen</translation>
    </message>
    <message>
        <source>counted: so many are there</source>
        <translation>gezählt: so viele sind da</translation>
    </message>
    <message>
        <source>drunk or poured</source>
        <translation>getrunken oder eingeschenkt</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>verschenkt</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>How many bottles</source>
        <translation>Wie viele Flaschen</translation>
    </message>
    <message>
        <source>Book it</source>
        <translation>Buchen</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>Add a lot</source>
        <translation>Charge hinzufügen</translation>
    </message>
    <message>
        <source>What this lot is called</source>
        <translation>Wie diese Charge heißt</translation>
    </message>
    <message>
        <source>such as: bottled in March, or: vintage 2024</source>
        <translation>etwa: im März abgefüllt, oder: Jahrgang 2024</translation>
    </message>
    <message>
        <source>Bottle, %1</source>
        <translation>Flasche, %1</translation>
    </message>
    <message>
        <source>Bottled on</source>
        <translation>Abgefüllt am</translation>
    </message>
    <message>
        <source>such as 2026-03-14; may stay empty</source>
        <translation>etwa 2026-03-14; darf leer bleiben</translation>
    </message>
    <message>
        <source>Best before</source>
        <translation>Mindestens haltbar bis</translation>
    </message>
    <message>
        <source>How it is kept</source>
        <translation>Wie sie lagert</translation>
    </message>
    <message>
        <source>such as: cellar, %1</source>
        <translation>etwa: Keller, %1</translation>
    </message>
    <message>
        <source>Where it was bought</source>
        <translation>Wo sie gekauft wurde</translation>
    </message>
    <message>
        <source>Keep this lot</source>
        <translation>Diese Charge behalten</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Oddglass</source>
        <translation>Oddglass</translation>
    </message>
</context>
<context>
    <name>MyCupsPage</name>
    <message>
        <source>Are these your cups?</source>
        <translation>Sind das deine Becher?</translation>
    </message>
    <message>
        <source>How sure?</source>
        <translation>Wie sicher bist du dir?</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>sicher</translation>
    </message>
    <message>
        <source>fairly sure</source>
        <translation>ziemlich sicher</translation>
    </message>
    <message>
        <source>a guess</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>How did you know?</source>
        <translation>Woran hast du es gemerkt?</translation>
    </message>
    <message>
        <source>taste</source>
        <translation>am Geschmack</translation>
    </message>
    <message>
        <source>smell</source>
        <translation>am Geruch</translation>
    </message>
    <message>
        <source>mouthfeel</source>
        <translation>am Mundgefühl</translation>
    </message>
    <message>
        <source>look</source>
        <translation>am Aussehen</translation>
    </message>
    <message>
        <source>fizz</source>
        <translation>am Prickeln</translation>
    </message>
    <message>
        <source>I guessed</source>
        <translation>Ich habe geraten</translation>
    </message>
    <message>
        <source>What was different, if you like</source>
        <translation>Was anders war, wenn du magst</translation>
    </message>
    <message>
        <source>Yes, these are mine</source>
        <translation>Ja, das sind meine</translation>
    </message>
    <message>
        <source>Stop here</source>
        <translation>Hier aufhören</translation>
    </message>
    <message>
        <source>What you have locked stays. The rest is counted as missing; nobody asks why. Stop?</source>
        <translation>Was du festgelegt hast, bleibt. Der Rest zählt als fehlend; niemand fragt, warum. Aufhören?</translation>
    </message>
    <message>
        <source>You cannot sit down again in this tasting. Stop all the same?</source>
        <translation>Du kannst dich bei dieser Verkostung nicht wieder hinsetzen. Trotzdem aufhören?</translation>
    </message>
    <message>
        <source>I stop here</source>
        <translation>Ich höre hier auf</translation>
    </message>
    <message>
        <source>These are not my cups</source>
        <translation>Das sind nicht meine Becher</translation>
    </message>
</context>
<context>
    <name>MySheetPage</name>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>NavColumn</name>
    <message>
        <source>Oddglass</source>
        <translation>Oddglass</translation>
    </message>
    <message>
        <source>The question</source>
        <translation>Die Frage</translation>
    </message>
    <message>
        <source>What it takes</source>
        <translation>Was es braucht</translation>
    </message>
    <message>
        <source>Care</source>
        <translation>Vorsorge</translation>
    </message>
    <message>
        <source>The seal</source>
        <translation>Das Siegel</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Reference book</source>
        <translation>Referenzbuch</translation>
    </message>
    <message>
        <source>You and the room</source>
        <translation>Du und die Runde</translation>
    </message>
    <message>
        <source>Over time</source>
        <translation>Über die Zeit</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Leute</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Wörter</translation>
    </message>
    <message>
        <source>Keeping</source>
        <translation>Aufbewahren</translation>
    </message>
    <message>
        <source>Seal mark</source>
        <translation>Siegelwort</translation>
    </message>
    <message>
        <source>Give-aways</source>
        <translation>Was verrät</translation>
    </message>
</context>
<context>
    <name>NotesPart</name>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>No notes yet. What did you do last?</source>
        <translation>Noch keine Notizen. Was hast du zuletzt getan?</translation>
    </message>
    <message>
        <source>Correct it</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>It was wrong; take it back</source>
        <translation>Es war falsch; zurücknehmen</translation>
    </message>
    <message>
        <source>A new note</source>
        <translation>Eine neue Notiz</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>addition</source>
        <translation>Zugabe</translation>
    </message>
    <message>
        <source>stabilised</source>
        <translation>stabilisiert</translation>
    </message>
    <message>
        <source>racked</source>
        <translation>abgezogen</translation>
    </message>
    <message>
        <source>bottled</source>
        <translation>abgefüllt</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>etwas anderes</translation>
    </message>
    <message>
        <source>done otherwise than last time</source>
        <translation>anders gemacht als letztes Mal</translation>
    </message>
    <message>
        <source>haze</source>
        <translation>Trübung</translation>
    </message>
    <message>
        <source>sediment</source>
        <translation>Bodensatz</translation>
    </message>
    <message>
        <source>sulphur smell</source>
        <translation>Schwefelgeruch</translation>
    </message>
    <message>
        <source>a bottle gushed</source>
        <translation>eine Flasche schäumte über</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Gravity, %1</source>
        <translation>Dichte, %1</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>Against which fault, if any</source>
        <translation>Gegen welchen Fehler, falls gegen einen</translation>
    </message>
    <message>
        <source>a tasting word, such as butter</source>
        <translation>ein Wort vom Verkosten, etwa Butter</translation>
    </message>
    <message>
        <source>In your own words</source>
        <translation>In eigenen Worten</translation>
    </message>
    <message>
        <source>Leave the old note as it is</source>
        <translation>Die alte Notiz lassen, wie sie ist</translation>
    </message>
    <message>
        <source>No, do not write it down</source>
        <translation>Nein, nicht aufschreiben</translation>
    </message>
    <message>
        <source>Yes, it was done a second time</source>
        <translation>Ja, es wurde ein zweites Mal getan</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>NumberField</name>
    <message>
        <source>%1: less</source>
        <translation>%1: weniger</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <translation>%1, in %2</translation>
    </message>
    <message>
        <source>%1: more</source>
        <translation>%1: mehr</translation>
    </message>
</context>
<context>
    <name>OpenKeyPage</name>
    <message>
        <source>Open the key</source>
        <translation>Schlüssel öffnen</translation>
    </message>
    <message>
        <source>Back to the places</source>
        <translation>Zurück zu den Plätzen</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>End it another way</source>
        <translation>Anders beenden</translation>
    </message>
    <message>
        <source>What happened so far</source>
        <translation>Was bisher geschah</translation>
    </message>
    <message>
        <source>An evening can also end without a verdict. Both ways stay on record for good.</source>
        <translation>Ein Abend kann auch ohne Urteil enden. Beide Wege bleiben für immer im Protokoll.</translation>
    </message>
    <message>
        <source>Reason, for the record</source>
        <translation>Grund, fürs Protokoll</translation>
    </message>
    <message>
        <source>Give it up without opening the key</source>
        <translation>Aufgeben, ohne den Schlüssel zu öffnen</translation>
    </message>
    <message>
        <source>The session ends here and the key stays shut. The answers are kept, but no verdict can come of them. Give it up?</source>
        <translation>Die Verkostung endet hier, und der Schlüssel bleibt zu. Die Antworten bleiben, aber ein Urteil kann aus ihnen nicht werden. Aufgeben?</translation>
    </message>
    <message>
        <source>This cannot be undone. Give it up all the same?</source>
        <translation>Das lässt sich nicht rückgängig machen. Trotzdem aufgeben?</translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation>Aufgeben</translation>
    </message>
    <message>
        <source>Break the seal and look</source>
        <translation>Siegel brechen und nachsehen</translation>
    </message>
    <message>
        <source>Whoever looks before everybody has answered is no longer blind. The session ends without a verdict. Break the seal?</source>
        <translation>Wer nachsieht, bevor alle geantwortet haben, ist nicht mehr blind. Die Verkostung endet ohne Urteil. Das Siegel brechen?</translation>
    </message>
    <message>
        <source>The report will always say that the key was opened early. Break it all the same?</source>
        <translation>Der Bericht wird immer sagen, dass der Schlüssel zu früh geöffnet wurde. Trotzdem brechen?</translation>
    </message>
    <message>
        <source>Break the seal</source>
        <translation>Siegel brechen</translation>
    </message>
    <message>
        <source>Read the cups off</source>
        <translation>Becher ablesen</translation>
    </message>
</context>
<context>
    <name>OpenRoundPage</name>
    <message>
        <source>Lock</source>
        <translation>Festlegen</translation>
    </message>
    <message>
        <source>Enough</source>
        <translation>Genug</translation>
    </message>
    <message>
        <source>I would rather not</source>
        <translation>Lieber nicht</translation>
    </message>
</context>
<context>
    <name>OverTimePage</name>
    <message>
        <source>Over time</source>
        <translation>Über die Zeit</translation>
    </message>
    <message>
        <source>These pages are closed while a look is sealed.</source>
        <translation>Diese Seiten sind zu, solange ein Termin versiegelt ist.</translation>
    </message>
    <message>
        <source>One batch, tasted again and again while it ages, each time blind and beside a bottle that was kept from aging.</source>
        <translation>Ein Ansatz, der beim Altern wieder und wieder verkostet wird, jedes Mal blind und neben einer Flasche, die vor dem Altern bewahrt wurde.</translation>
    </message>
    <message>
        <source>Begin another series</source>
        <translation>Noch eine Reihe beginnen</translation>
    </message>
    <message>
        <source>What you read here would sit at the table with you. Open the key of that look first. You may open the pages all the same: that is written down beside the look, for good.</source>
        <translation>Was du hier liest, säße mit dir am Tisch. Öffne zuerst den Schlüssel jenes Termins. Du darfst die Seiten trotzdem öffnen: das wird neben dem Termin festgehalten, für immer.</translation>
    </message>
    <message>
        <source>Open them all the same</source>
        <translation>Trotzdem öffnen</translation>
    </message>
    <message>
        <source>shown below</source>
        <translation>unten zu sehen</translation>
    </message>
    <message>
        <source>The looks</source>
        <translation>Die Termine</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Looking round</source>
        <translation>Umsehen</translation>
    </message>
    <message>
        <source>Not what the series was begun for: held together, so that looking at many things does not make one of them speak by chance.</source>
        <translation>Nicht das, wofür die Reihe begonnen wurde: zusammen beurteilt, damit nicht eines von vielen Dingen durch Zufall spricht.</translation>
    </message>
    <message>
        <source>Seen in the bottle</source>
        <translation>In der Flasche gesehen</translation>
    </message>
    <message>
        <source>What was done to it</source>
        <translation>Was damit getan wurde</translation>
    </message>
    <message>
        <source>Write the coming looks to this calendar file (.ics)</source>
        <translation>Die kommenden Termine in diese Kalenderdatei schreiben (.ics)</translation>
    </message>
    <message>
        <source>Write the calendar</source>
        <translation>Kalender schreiben</translation>
    </message>
    <message>
        <source>Write the report</source>
        <translation>Bericht schreiben</translation>
    </message>
    <message>
        <source>Write the report of the series to this file (.pdf, .html or .json)</source>
        <translation>Den Bericht der Reihe in diese Datei schreiben (.pdf, .html oder .json)</translation>
    </message>
    <message>
        <source>Put this series back into the list</source>
        <translation>Diese Reihe zurück in die Liste stellen</translation>
    </message>
    <message>
        <source>Put this series away</source>
        <translation>Diese Reihe weglegen</translation>
    </message>
    <message>
        <source>Hide what was put away</source>
        <translation>Weggelegtes verbergen</translation>
    </message>
    <message>
        <source>Show what was put away too</source>
        <translation>Auch Weggelegtes zeigen</translation>
    </message>
    <message>
        <source>%1 (put away)</source>
        <translation>%1 (weggelegt)</translation>
    </message>
    <message>
        <source>Throw this series away</source>
        <translation>Diese Reihe wegwerfen</translation>
    </message>
    <message>
        <source>None of its looks was sealed, so no tasting is lost. Its days and what it was begun for are destroyed. The drinks stay on the shelf.</source>
        <translation>Keiner ihrer Termine wurde versiegelt, also geht keine Verkostung verloren. Ihre Tage und wofür sie begonnen wurde, werden vernichtet. Die Getränke bleiben im Regal.</translation>
    </message>
    <message>
        <source>This cannot be undone. Throw it away?</source>
        <translation>Das lässt sich nicht rückgängig machen. Wegwerfen?</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>Print tags for its bottles</source>
        <translation>Anhänger für die Flaschen drucken</translation>
    </message>
</context>
<context>
    <name>PairPart</name>
    <message>
        <source>The verdict: %1.</source>
        <translation>Das Urteil: %1.</translation>
    </message>
</context>
<context>
    <name>PaperPage</name>
    <message>
        <source>What goes on paper?</source>
        <translation>Was kommt aufs Papier?</translation>
    </message>
    <message>
        <source>Hand over to the pourer</source>
        <translation>An die Person übergeben, die einschenkt</translation>
    </message>
    <message>
        <source>Make the PDF</source>
        <translation>PDF machen</translation>
    </message>
    <message>
        <source>Back to the places</source>
        <translation>Zurück zu den Plätzen</translation>
    </message>
    <message>
        <source>This is for the pourer alone. Everybody who tastes leaves the room, the makers first. Whoever pours made none of it and does not taste. The opening is recorded.</source>
        <translation>Das ist nur für die Person, die einschenkt. Alle, die verkosten, verlassen den Raum, zuerst die, die es gemacht haben. Wer einschenkt, hat nichts davon gemacht und verkostet nicht. Das Öffnen wird festgehalten.</translation>
    </message>
    <message>
        <source>No, leave it shut</source>
        <translation>Nein, zulassen</translation>
    </message>
    <message>
        <source>I pour: make the PDF</source>
        <translation>Ich schenke ein: PDF machen</translation>
    </message>
    <message>
        <source>Open it in your viewer</source>
        <translation>In deinem Betrachter öffnen</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Labels side by side</source>
        <translation>Etiketten nebeneinander</translation>
    </message>
    <message>
        <source>Labels one below the other</source>
        <translation>Etiketten untereinander</translation>
    </message>
    <message>
        <source>Labels already gone from the first sheet</source>
        <translation>Etiketten, die vom ersten Blatt schon weg sind</translation>
    </message>
    <message>
        <source>Margins in mm: top, right, bottom, left</source>
        <translation>Ränder in mm: oben, rechts, unten, links</translation>
    </message>
    <message>
        <source>Gaps in mm: side by side, one below the other</source>
        <translation>Abstände in mm: nebeneinander, untereinander</translation>
    </message>
    <message>
        <source>Into this file (.pdf)</source>
        <translation>In diese Datei (.pdf)</translation>
    </message>
</context>
<context>
    <name>PeoplePage</name>
    <message>
        <source>People</source>
        <translation>Leute</translation>
    </message>
    <message>
        <source>A name is enough. Nobody&apos;s allergies, medicines or reasons are asked or kept.</source>
        <translation>Ein Name genügt. Nach Allergien, Medikamenten oder Gründen wird nie gefragt, und nichts davon wird aufbewahrt.</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation>Jemanden hinzufügen</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>Hide who was put away</source>
        <translation>Weggelegte verbergen</translation>
    </message>
    <message>
        <source>Show who was put away too</source>
        <translation>Auch Weggelegte zeigen</translation>
    </message>
    <message>
        <source>Nobody here. You can also taste alone.</source>
        <translation>Niemand hier. Du kannst auch allein verkosten.</translation>
    </message>
    <message>
        <source>%1 (put away)</source>
        <translation>%1 (weggelegt)</translation>
    </message>
    <message>
        <source>What people here are known to notice</source>
        <translation>Was die Leute hier nachweislich bemerken</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Nickname, for tastings in which they ask for one</source>
        <translation>Spitzname, für Verkostungen, in denen sie einen wollen</translation>
    </message>
    <message>
        <source>This is the brewer, whose machine this is</source>
        <translation>Das ist, wer hier braut und wem dieser Rechner gehört</translation>
    </message>
    <message>
        <source>Am I getting better at it?</source>
        <translation>Werde ich besser darin?</translation>
    </message>
    <message>
        <source>A card</source>
        <translation>Eine Karte</translation>
    </message>
    <message>
        <source>Read it as they let it be seen</source>
        <translation>So lesen, wie sie es zeigen wollen</translation>
    </message>
    <message>
        <source>They take the wish back</source>
        <translation>Sie nehmen den Wunsch zurück</translation>
    </message>
    <message>
        <source>Bring them back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Put them away</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>Forget their name and words</source>
        <translation>Namen und Worte vergessen</translation>
    </message>
    <message>
        <source>Forget name and words</source>
        <translation>Namen und Worte vergessen</translation>
    </message>
    <message>
        <source>Forget everything of theirs</source>
        <translation>Alles von ihnen vergessen</translation>
    </message>
    <message>
        <source>Forget everything</source>
        <translation>Alles vergessen</translation>
    </message>
</context>
<context>
    <name>PlaceLine</name>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>PlacesPage</name>
    <message>
        <source>To the pour sheet</source>
        <translation>Zum Einschenkblatt</translation>
    </message>
    <message>
        <source>Ask: go on or stop?</source>
        <translation>Fragen: weiter oder aufhören?</translation>
    </message>
    <message>
        <source>Close the table</source>
        <translation>Tisch schließen</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Pour sheet</source>
        <translation>Einschenkblatt</translation>
    </message>
    <message>
        <source>Type in a sheet</source>
        <translation>Einen Bogen abtippen</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>End it another way</source>
        <translation>Anders beenden</translation>
    </message>
    <message>
        <source>Leave the table</source>
        <translation>Tisch verlassen</translation>
    </message>
    <message>
        <source>No, keep it open</source>
        <translation>Nein, offen lassen</translation>
    </message>
    <message>
        <source>Yes, close it</source>
        <translation>Ja, schließen</translation>
    </message>
    <message>
        <source>Something was said</source>
        <translation>Etwas wurde gesagt</translation>
    </message>
    <message>
        <source>Spilled</source>
        <translation>Verschüttet</translation>
    </message>
    <message>
        <source>Late guest</source>
        <translation>Später Gast</translation>
    </message>
    <message>
        <source>Cups mixed up</source>
        <translation>Becher vertauscht</translation>
    </message>
    <message>
        <source>In whose hearing? Tick nobody when everybody heard it. The verdict is worked out with and without those answers.</source>
        <translation>Wer hat es gehört? Hak niemanden an, wenn es alle gehört haben. Das Urteil wird mit und ohne diese Antworten ausgerechnet.</translation>
    </message>
    <message>
        <source>What was said, if you like; kept shut until the key is opened</source>
        <translation>Was gesagt wurde, wenn du magst; bleibt unter Verschluss, bis der Schlüssel geöffnet ist</translation>
    </message>
    <message>
        <source>Put it on record</source>
        <translation>Festhalten</translation>
    </message>
    <message>
        <source>At which place?</source>
        <translation>An welchem Platz?</translation>
    </message>
    <message>
        <source>Nobody has cups before them.</source>
        <translation>Niemand hat Becher vor sich.</translation>
    </message>
    <message>
        <source>Which cup?</source>
        <translation>Welcher Becher?</translation>
    </message>
    <message>
        <source>These cups will not count. Why?</source>
        <translation>Diese Becher zählen nicht. Warum?</translation>
    </message>
    <message>
        <source>The steps</source>
        <translation>Die Schritte</translation>
    </message>
    <message>
        <source>To the steps</source>
        <translation>Zu den Schritten</translation>
    </message>
    <message>
        <source>Turn the cups over</source>
        <translation>Becher umdrehen</translation>
    </message>
    <message>
        <source>Mats swapped</source>
        <translation>Matten vertauscht</translation>
    </message>
    <message>
        <source>Answers taken back</source>
        <translation>Antworten zurückgenommen</translation>
    </message>
    <message>
        <source>Which two places? One of them:</source>
        <translation>Welche zwei Plätze? Der eine:</translation>
    </message>
    <message>
        <source>Whose answers?</source>
        <translation>Wessen Antworten?</translation>
    </message>
    <message>
        <source>And the other:</source>
        <translation>Und der andere:</translation>
    </message>
    <message>
        <source>In which round?</source>
        <translation>In welcher Runde?</translation>
    </message>
    <message>
        <source>Yes, take them all back</source>
        <translation>Ja, alle zurücknehmen</translation>
    </message>
    <message>
        <source>Sat at the wrong place</source>
        <translation>Am falschen Platz</translation>
    </message>
</context>
<context>
    <name>PourSheetPage</name>
    <message>
        <source>Only for the pourer</source>
        <translation>Nur für die Person, die einschenkt</translation>
    </message>
    <message>
        <source>Check place by place.</source>
        <translation>Prüf Platz für Platz.</translation>
    </message>
    <message>
        <source>Pour bottle by bottle.</source>
        <translation>Schenk Flasche für Flasche ein.</translation>
    </message>
    <message>
        <source>This page is for the pourer alone.</source>
        <translation>Diese Seite ist nur für die Person, die einschenkt.</translation>
    </message>
    <message>
        <source>Everybody who tastes leaves the room, the makers first. Whoever pours made none of it and does not taste. Every opening is recorded.</source>
        <translation>Alle, die verkosten, verlassen den Raum, zuerst die, die es gemacht haben. Wer einschenkt, hat nichts davon gemacht und verkostet nicht. Jedes Öffnen wird festgehalten.</translation>
    </message>
    <message>
        <source>Everything stands ready</source>
        <translation>Alles steht bereit</translation>
    </message>
    <message>
        <source>I pour: open the sheet</source>
        <translation>Ich schenke ein: Blatt öffnen</translation>
    </message>
    <message>
        <source>Close the sheet</source>
        <translation>Blatt schließen</translation>
    </message>
    <message>
        <source>Back to the places</source>
        <translation>Zurück zu den Plätzen</translation>
    </message>
    <message>
        <source>Pour order, bottle by bottle</source>
        <translation>Zum Einschenken, Flasche für Flasche</translation>
    </message>
    <message>
        <source>Second check, place by place</source>
        <translation>Zweite Prüfung, Platz für Platz</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, spare</source>
        <translation>%1, Ersatz</translation>
    </message>
    <message>
        <source>Went wrong</source>
        <translation>Ging schief</translation>
    </message>
    <message>
        <source>%1 went wrong</source>
        <translation>%1 ging schief</translation>
    </message>
    <message>
        <source>It holds %1</source>
        <translation>Darin ist %1</translation>
    </message>
    <message>
        <source>I am not sure what it holds</source>
        <translation>Ich weiß nicht genau, was darin ist</translation>
    </message>
    <message>
        <source>It was spilled</source>
        <translation>Er wurde verschüttet</translation>
    </message>
    <message>
        <source>Nothing after all</source>
        <translation>Doch nichts</translation>
    </message>
</context>
<context>
    <name>QuestionPage</name>
    <message>
        <source>What do you want to know?</source>
        <translation>Was willst du wissen?</translation>
    </message>
    <message>
        <source>Say it in words; the next page says which test fits, and what it can and cannot show.</source>
        <translation>Sag es in Worten; die nächste Seite sagt, welcher Test passt und was er zeigen kann und was nicht.</translation>
    </message>
    <message>
        <source>See what it takes</source>
        <translation>Sehen, was es braucht</translation>
    </message>
    <message>
        <source>Throw this plan away</source>
        <translation>Diesen Plan wegwerfen</translation>
    </message>
    <message>
        <source>Nothing of this plan has been poured. Throw it away?</source>
        <translation>Von diesem Plan wurde nichts eingeschenkt. Wegwerfen?</translation>
    </message>
    <message>
        <source>It cannot be brought back. Throw it away all the same?</source>
        <translation>Er kommt nicht wieder. Trotzdem wegwerfen?</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>What is there to notice? One tasting word, such as butter or mousy</source>
        <translation>Was gibt es zu bemerken? Ein Wort vom Verkosten, etwa Butter oder mäuselnd</translation>
    </message>
    <message>
        <source>More what? One thing in a word or two, such as bitter, sweet or sour</source>
        <translation>Wovon mehr? Eine Sache in ein, zwei Worten, etwa bitter, süß oder sauer</translation>
    </message>
    <message>
        <source>A comparison needs a second drink. Add the bought one.</source>
        <translation>Ein Vergleich braucht ein zweites Getränk. Stell das gekaufte dazu.</translation>
    </message>
    <message>
        <source>To the shelf</source>
        <translation>Zum Regal</translation>
    </message>
    <message>
        <source>Which one is known to have more of it?</source>
        <translation>Von welchem weiß man, dass es mehr davon hat?</translation>
    </message>
    <message>
        <source>Of which one do you expect more? Only that direction is tested.</source>
        <translation>Von welchem erwartest du mehr? Nur diese Richtung wird geprüft.</translation>
    </message>
    <message>
        <source>What was done to it? Such as “half a drop a litre” or “one part water to nine”</source>
        <translation>Was wurde damit getan? Etwa „ein halber Tropfen je Liter“ oder „ein Teil Wasser auf neun“</translation>
    </message>
    <message>
        <source>May stay empty. What goes into a drink is an ingredient: only what is sold for food, no more than its label allows, and its allergens stand with the drink on the shelf.</source>
        <translation>Darf leer bleiben. Was in ein Getränk kommt, ist eine Zutat: nur was als Lebensmittel verkauft wird, nicht mehr, als das Etikett erlaubt, und seine Allergene stehen beim Getränk im Regal.</translation>
    </message>
    <message>
        <source>“No preference” may be answered</source>
        <translation>„Keine Vorliebe“ darf geantwortet werden</translation>
    </message>
    <message>
        <source>It is counted by itself and weakens what can be shown.</source>
        <translation>Es wird für sich gezählt und schwächt, was gezeigt werden kann.</translation>
    </message>
    <message>
        <source>Who tastes?</source>
        <translation>Wer verkostet?</translation>
    </message>
    <message>
        <source>Nobody here. You can also taste alone: add yourself under People.</source>
        <translation>Niemand hier. Du kannst auch allein verkosten: trag dich unter „Leute“ ein.</translation>
    </message>
    <message>
        <source>Add somebody</source>
        <translation>Jemanden hinzufügen</translation>
    </message>
    <message>
        <source>What do you want to be able to say?</source>
        <translation>Was willst du sagen können?</translation>
    </message>
    <message>
        <source>that there is a difference</source>
        <translation>dass es einen Unterschied gibt</translation>
    </message>
    <message>
        <source>that they are alike within a limit</source>
        <translation>dass sie einander ähneln, innerhalb einer Grenze</translation>
    </message>
    <message>
        <source>either</source>
        <translation>eins von beiden</translation>
    </message>
    <message>
        <source>Alike means: fewer of such people can tell than</source>
        <translation>Ähnlich heißt: unter solchen Leuten merken es weniger als</translation>
    </message>
    <message>
        <source>How often may chance alone be taken for a gap?</source>
        <translation>Wie oft darf bloßer Zufall für einen Abstand gehalten werden?</translation>
    </message>
    <message>
        <source>How often may chance alone be taken for a preference?</source>
        <translation>Wie oft darf bloßer Zufall für eine Vorliebe gehalten werden?</translation>
    </message>
    <message>
        <source>How often may guessing alone be taken for a difference?</source>
        <translation>Wie oft darf bloßes Raten für einen Unterschied gehalten werden?</translation>
    </message>
    <message>
        <source>What will you do with the answer?</source>
        <translation>Was wirst du mit der Antwort tun?</translation>
    </message>
    <message>
        <source>If they are alike within your limit</source>
        <translation>Wenn sie einander innerhalb deiner Grenze ähneln</translation>
    </message>
    <message>
        <source>A title for yourself</source>
        <translation>Ein Titel für dich</translation>
    </message>
    <message>
        <source>A title for your guests</source>
        <translation>Ein Titel für deine Gäste</translation>
    </message>
    <message>
        <source>All that they are shown: it should not give anything away.</source>
        <translation>Mehr bekommen sie nicht zu sehen: er sollte nichts verraten.</translation>
    </message>
</context>
<context>
    <name>ReferencesPage</name>
    <message>
        <source>Reference book</source>
        <translation>Referenzbuch</translation>
    </message>
    <message>
        <source>What you bought to hold yours against. How far its vintages lie apart is a range to aim at.</source>
        <translation>Was du gekauft hast, um deines daran zu messen. Wie weit die Jahrgänge auseinanderliegen, ist eine Spanne, auf die du zielen kannst.</translation>
    </message>
    <message>
        <source>Put a reference on the shelf</source>
        <translation>Eine Referenz ins Regal stellen</translation>
    </message>
    <message>
        <source>Nothing to hold yours against yet. Buy the one you admire, two vintages of it if you can, and keep a bottle back.</source>
        <translation>Noch nichts, woran du deines messen kannst. Kauf das, das du bewunderst, wenn es geht zwei Jahrgänge, und heb eine Flasche auf.</translation>
    </message>
    <message>
        <source>Bought drinks and their lots</source>
        <translation>Gekaufte Getränke und ihre Chargen</translation>
    </message>
    <message>
        <source>Plan a tasting beside it</source>
        <translation>Eine Verkostung daneben planen</translation>
    </message>
    <message>
        <source>Plan a tasting beside %1</source>
        <translation>Eine Verkostung neben %1 planen</translation>
    </message>
</context>
<context>
    <name>RoomPage</name>
    <message>
        <source>You and the room</source>
        <translation>Du und die Runde</translation>
    </message>
    <message>
        <source>Write what you expect next</source>
        <translation>Aufschreiben, was du als Nächstes erwartest</translation>
    </message>
    <message>
        <source>Say who you are</source>
        <translation>Sagen, wer du bist</translation>
    </message>
</context>
<context>
    <name>RoutinePart</name>
    <message>
        <source>Who hides what is in the cups?</source>
        <translation>Wer verbirgt, was in den Bechern ist?</translation>
    </message>
    <message>
        <source>Who throws the die and pours? They do not taste, and may have made it.</source>
        <translation>Wer würfelt und schenkt ein? Diese Person verkostet nicht und darf es gemacht haben.</translation>
    </message>
    <message>
        <source>Who pours? Whoever pours sees the key: they do not taste, and made none of it. A driver makes a good pourer. Nobody there? Choose another way above.</source>
        <translation>Wer schenkt ein? Wer einschenkt, sieht den Schlüssel: verkostet also nicht und hat nichts davon gemacht. Wer noch fährt, schenkt gut ein. Niemand da? Wähl oben einen anderen Weg.</translation>
    </message>
    <message>
        <source>Who is it?</source>
        <translation>Wer ist es?</translation>
    </message>
    <message>
        <source>Forgotten after the seal.</source>
        <translation>Nach dem Siegel vergessen.</translation>
    </message>
</context>
<context>
    <name>ScaleLine</name>
    <message>
        <source>%1: less</source>
        <translation>%1: weniger</translation>
    </message>
    <message>
        <source>%1: more</source>
        <translation>%1: mehr</translation>
    </message>
    <message>
        <source>tap the line</source>
        <translation>auf die Linie tippen</translation>
    </message>
    <message>
        <source>From left to right on the line: %1.</source>
        <translation>Auf der Linie von links nach rechts: %1.</translation>
    </message>
</context>
<context>
    <name>SealPage</name>
    <message>
        <source>To the pour sheet</source>
        <translation>Zum Einschenkblatt</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Versiegeln</translation>
    </message>
    <message>
        <source>To the places</source>
        <translation>Zu den Plätzen</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>in 100</source>
        <translation>von 100</translation>
    </message>
    <message>
        <source>To the steps</source>
        <translation>Zu den Schritten</translation>
    </message>
    <message>
        <source>Go through the give-aways</source>
        <translation>Durchgehen, was verrät</translation>
    </message>
</context>
<context>
    <name>ServingPart</name>
    <message>
        <source>How it is served</source>
        <translation>Wie ausgeschenkt wird</translation>
    </message>
    <message>
        <source>Alike for every cup. It goes on record, and the next evening can be laid the same way.</source>
        <translation>Für jeden Becher gleich. Es wird festgehalten, und der nächste Abend kann genauso gedeckt werden.</translation>
    </message>
    <message>
        <source>Vessel, in a few words</source>
        <translation>Gefäß, in wenigen Worten</translation>
    </message>
    <message>
        <source>Temperature of the drinks (%1)</source>
        <translation>Temperatur der Getränke (%1)</translation>
    </message>
    <message>
        <source>Every mouthful is</source>
        <translation>Jeder Schluck wird</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>by eye, first</source>
        <translation>mit dem Auge, zuerst</translation>
    </message>
    <message>
        <source>by smell, before tasting</source>
        <translation>mit der Nase, vor dem Trinken</translation>
    </message>
    <message>
        <source>when it is tasted</source>
        <translation>beim Trinken</translation>
    </message>
    <message>
        <source>45 seconds after swallowing</source>
        <translation>45 Sekunden nach dem Schlucken</translation>
    </message>
    <message>
        <source>about all cups, at the end</source>
        <translation>zu allen Bechern, am Ende</translation>
    </message>
</context>
<context>
    <name>SheetItemForm</name>
    <message>
        <source>A new question</source>
        <translation>Eine neue Frage</translation>
    </message>
    <message>
        <source>Change this question</source>
        <translation>Diese Frage ändern</translation>
    </message>
    <message>
        <source>How is it answered?</source>
        <translation>Wie wird sie beantwortet?</translation>
    </message>
    <message>
        <source>About what? A word of your own, or one of those below</source>
        <translation>Wozu? Ein eigenes Wort oder eines von unten</translation>
    </message>
    <message>
        <source>When?</source>
        <translation>Wann?</translation>
    </message>
    <message>
        <source>A gap up to this does not matter to you. Left empty, none is said.</source>
        <translation>Ein Abstand bis hierher macht dir nichts aus. Leer gelassen wird keiner genannt.</translation>
    </message>
    <message>
        <source>The plan is about this one</source>
        <translation>Um diese geht es im Plan</translation>
    </message>
    <message>
        <source>A verdict is given on it. Each more of them makes the smallest gap that shows wider.</source>
        <translation>Zu ihr gibt es ein Urteil. Jede weitere davon macht den kleinsten Abstand, der sich zeigt, größer.</translation>
    </message>
    <message>
        <source>It may be left out</source>
        <translation>Darf ausgelassen werden</translation>
    </message>
    <message>
        <source>Put it on the sheet</source>
        <translation>Auf den Bogen setzen</translation>
    </message>
    <message>
        <source>Keep the change</source>
        <translation>Änderung behalten</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
</context>
<context>
    <name>SheetListPart</name>
    <message>
        <source>Add a question</source>
        <translation>Frage hinzufügen</translation>
    </message>
</context>
<context>
    <name>SheetPart</name>
    <message>
        <source>What is each of them there for?</source>
        <translation>Wozu ist jedes davon da?</translation>
    </message>
    <message>
        <source>Does one of them also stand there open, in a marked cup to go back to?</source>
        <translation>Steht eines davon auch offen da, in einem markierten Becher zum Nachschmecken?</translation>
    </message>
    <message>
        <source>Pour one of them twice</source>
        <translation>Eines davon zweimal einschenken</translation>
    </message>
    <message>
        <source>The program draws which. How far the same drink moves says how small a gap may be read.</source>
        <translation>Das Programm lost aus, welches. Wie weit dasselbe Getränk wandert, sagt, wie kleine Abstände man lesen darf.</translation>
    </message>
    <message>
        <source>How it is asked</source>
        <translation>Wie gefragt wird</translation>
    </message>
    <message>
        <source>Score sheets: each cup by itself, under its code. Take a ready sheet; every question of it may be changed.</source>
        <translation>Bewertungsbögen: jeder Becher für sich, unter seinem Code. Nimm einen fertigen Bogen; jede Frage darauf lässt sich ändern.</translation>
    </message>
    <message>
        <source>Close the list of questions</source>
        <translation>Liste der Fragen schließen</translation>
    </message>
    <message>
        <source>See its questions, and change them</source>
        <translation>Fragen ansehen und ändern</translation>
    </message>
    <message>
        <source>Most cups at once</source>
        <translation>Höchstens so viele Becher auf einmal</translation>
    </message>
    <message>
        <source>Pause between two cups</source>
        <translation>Pause zwischen zwei Bechern</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>In between, the same for everybody</source>
        <translation>Dazwischen, für alle dasselbe</translation>
    </message>
    <message>
        <source>water and white bread</source>
        <translation>Wasser und Weißbrot</translation>
    </message>
</context>
<context>
    <name>SheetQuestion</name>
    <message>
        <source>%1 %2.</source>
        <translation>%1 %2.</translation>
    </message>
    <message>
        <source>%1, place %2</source>
        <translation>%1, Rang %2</translation>
    </message>
    <message>
        <source>One point less for %1</source>
        <translation>Ein Punkt weniger für %1</translation>
    </message>
    <message>
        <source>One point more for %1</source>
        <translation>Ein Punkt mehr für %1</translation>
    </message>
</context>
<context>
    <name>SheetWords</name>
    <message>
        <source>A pause. A sip of water.</source>
        <translation>Eine Pause. Ein Schluck Wasser.</translation>
    </message>
    <message>
        <source>Wait for what comes late.</source>
        <translation>Warte auf das, was spät kommt.</translation>
    </message>
    <message>
        <source>Then comes the cup on its right.</source>
        <translation>Dann kommt der Becher rechts daneben.</translation>
    </message>
    <message>
        <source>Take what everybody takes: %1. Then comes the next cup.</source>
        <translation>Nimm, was alle nehmen: %1. Dann kommt der nächste Becher.</translation>
    </message>
    <message>
        <source>Some things show only after swallowing. Do not drink anything meanwhile.</source>
        <translation>Manches zeigt sich erst nach dem Schlucken. Trink inzwischen nichts.</translation>
    </message>
    <message>
        <source>%1 points left</source>
        <translation>noch %1 Punkte</translation>
    </message>
    <message>
        <source>I looked and found none</source>
        <translation>Ich habe gesucht und keins gefunden</translation>
    </message>
    <message>
        <source>One thing is left: %1</source>
        <translation>Eine Sache fehlt noch: %1</translation>
    </message>
    <message>
        <source>%1 things are left; the first: %2</source>
        <translation>%1 Sachen fehlen noch; die erste: %2</translation>
    </message>
</context>
<context>
    <name>Shelf</name>
    <message>
        <source>beer</source>
        <translation>Bier</translation>
    </message>
    <message>
        <source>mead</source>
        <translation>Met</translation>
    </message>
    <message>
        <source>cider</source>
        <translation>Cider</translation>
    </message>
    <message>
        <source>wine</source>
        <translation>Wein</translation>
    </message>
    <message>
        <source>another drink</source>
        <translation>ein anderes Getränk</translation>
    </message>
    <message>
        <source>gluten</source>
        <translation>Gluten</translation>
    </message>
    <message>
        <source>egg</source>
        <translation>Ei</translation>
    </message>
    <message>
        <source>fish</source>
        <translation>Fisch</translation>
    </message>
    <message>
        <source>milk</source>
        <translation>Milch</translation>
    </message>
    <message>
        <source>nuts</source>
        <translation>Schalenfrüchte</translation>
    </message>
    <message>
        <source>peanuts</source>
        <translation>Erdnüsse</translation>
    </message>
    <message>
        <source>soy</source>
        <translation>Soja</translation>
    </message>
    <message>
        <source>sesame</source>
        <translation>Sesam</translation>
    </message>
    <message>
        <source>mustard</source>
        <translation>Senf</translation>
    </message>
    <message>
        <source>celery</source>
        <translation>Sellerie</translation>
    </message>
    <message>
        <source>lupin</source>
        <translation>Lupinen</translation>
    </message>
    <message>
        <source>molluscs</source>
        <translation>Weichtiere</translation>
    </message>
    <message>
        <source>crustaceans</source>
        <translation>Krebstiere</translation>
    </message>
    <message>
        <source>sulphites</source>
        <translation>Sulfite</translation>
    </message>
    <message>
        <source>made here</source>
        <translation>hier gemacht</translation>
    </message>
    <message>
        <source>a reference</source>
        <translation>eine Referenz</translation>
    </message>
</context>
<context>
    <name>ShelfPage</name>
    <message>
        <source>Shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>What you made, and what you bought to set beside it.</source>
        <translation>Was du gemacht hast und was du gekauft hast, um es danebenzustellen.</translation>
    </message>
    <message>
        <source>Put on the shelf</source>
        <translation>Ins Regal stellen</translation>
    </message>
    <message>
        <source>Hide what was put away</source>
        <translation>Weggelegtes verbergen</translation>
    </message>
    <message>
        <source>Show what was put away too</source>
        <translation>Auch Weggelegtes zeigen</translation>
    </message>
    <message>
        <source>Find by name</source>
        <translation>Nach Namen suchen</translation>
    </message>
    <message>
        <source>Nothing on the shelf has that name.</source>
        <translation>Nichts im Regal heißt so.</translation>
    </message>
    <message>
        <source>Nothing here yet. Start with the drink you are proudest of.</source>
        <translation>Noch nichts hier. Fang mit dem Getränk an, auf das du am stolzesten bist.</translation>
    </message>
    <message>
        <source>%1 (put away)</source>
        <translation>%1 (weggelegt)</translation>
    </message>
</context>
<context>
    <name>SideBySidePage</name>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>These pages are closed while a look is sealed.</source>
        <translation>Diese Seiten sind zu, solange ein Termin versiegelt ist.</translation>
    </message>
    <message>
        <source>Batches of one recipe in columns: what was changed beside what moved.</source>
        <translation>Ansätze eines Rezepts in Spalten: was geändert wurde neben dem, was sich bewegte.</translation>
    </message>
    <message>
        <source>Leave the list of batches</source>
        <translation>Liste der Ansätze verlassen</translation>
    </message>
    <message>
        <source>Choose batches yourself</source>
        <translation>Ansätze selbst auswählen</translation>
    </message>
    <message>
        <source>Two batches made by one recipe stand beside each other here. Write the recipe on the page of each batch, or choose batches yourself.</source>
        <translation>Zwei Ansätze nach einem Rezept stehen hier nebeneinander. Schreib das Rezept auf die Seite jedes Ansatzes, oder such Ansätze selbst aus.</translation>
    </message>
    <message>
        <source>A look of %1 is sealed, and what you read here would sit at the table with you. Open its key first.</source>
        <translation>Ein Termin von %1 ist versiegelt, und was du hier liest, säße mit dir am Tisch. Öffne zuerst dessen Schlüssel.</translation>
    </message>
    <message>
        <source>The batches</source>
        <translation>Die Ansätze</translation>
    </message>
    <message>
        <source>What each batch is held against</source>
        <translation>Woran jeder Ansatz gemessen wird</translation>
    </message>
    <message>
        <source>Batches to set side by side</source>
        <translation>Ansätze zum Nebeneinanderstellen</translation>
    </message>
    <message>
        <source>Recipes</source>
        <translation>Rezepte</translation>
    </message>
</context>
<context>
    <name>StepsColumn</name>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>still open</source>
        <translation>noch offen</translation>
    </message>
</context>
<context>
    <name>TakesPage</name>
    <message>
        <source>How it is asked</source>
        <translation>Wie gefragt wird</translation>
    </message>
    <message>
        <source>Let the program pick again</source>
        <translation>Wieder das Programm wählen lassen</translation>
    </message>
    <message>
        <source>More ways to ask</source>
        <translation>Weitere Arten zu fragen</translation>
    </message>
    <message>
        <source>The taste lingers: it is still there in the next cup</source>
        <translation>Der Geschmack bleibt: im nächsten Becher ist er noch da</translation>
    </message>
    <message>
        <source>Smoke, heat, a lot of bitterness, acid or oak. It speaks for fewer cups.</source>
        <translation>Rauch, Schärfe, viel Bitteres, Säure oder Holz. Das spricht für weniger Becher.</translation>
    </message>
    <message>
        <source>Which drink stands in the marked cup?</source>
        <translation>Welches Getränk steht im markierten Becher?</translation>
    </message>
    <message>
        <source>Ask afterwards which one was liked better</source>
        <translation>Hinterher fragen, welches besser gefiel</translation>
    </message>
    <message>
        <source>Counted among those who found the right answer, as a hint.</source>
        <translation>Gezählt unter denen, die richtig lagen, als Hinweis.</translation>
    </message>
    <message>
        <source>Look after each whole round and stop when it is clear enough</source>
        <translation>Nach jeder ganzen Runde nachsehen und aufhören, wenn es klar genug ist</translation>
    </message>
    <message>
        <source>It says go on or stop, nothing else. It may take fewer cups, by a rule of its own that is sealed with the plan.</source>
        <translation>Es sagt weiter oder aufhören, sonst nichts. Es kann Becher sparen, nach einer eigenen Regel, die mit dem Plan versiegelt wird.</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Runden</translation>
    </message>
    <message>
        <source>Per cup</source>
        <translation>Je Becher</translation>
    </message>
    <message>
        <source>Who might still come</source>
        <translation>Wer noch kommen könnte</translation>
    </message>
    <message>
        <source>Evenings</source>
        <translation>Abende</translation>
    </message>
    <message>
        <source>Places at a time (0: all)</source>
        <translation>Plätze auf einmal (0: alle)</translation>
    </message>
    <message>
        <source>Ways to see more, cheapest first</source>
        <translation>Wege, mehr zu sehen, der günstigste zuerst</translation>
    </message>
    <message>
        <source>At most, whatever is drawn</source>
        <translation>Höchstens, egal was gelost wird</translation>
    </message>
    <message>
        <source>On to the give-aways</source>
        <translation>Weiter zu dem, was verrät</translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>The store cannot be opened.</source>
        <translation>Die Datei lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>Nothing on the table.</source>
        <translation>Nichts auf dem Tisch.</translation>
    </message>
    <message>
        <source>Put a bottle on the shelf, or look round the demo first.</source>
        <translation>Stell eine Flasche ins Regal, oder sieh dich erst in der Demo um.</translation>
    </message>
    <message>
        <source>Is there a drink you would like to know the truth about?</source>
        <translation>Gibt es ein Getränk, über das du die Wahrheit wissen willst?</translation>
    </message>
    <message>
        <source>Close the window</source>
        <translation>Fenster schließen</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Look round the demo</source>
        <translation>In der Demo umsehen</translation>
    </message>
    <message>
        <source>Start a tasting</source>
        <translation>Verkostung beginnen</translation>
    </message>
    <message>
        <source>Tastings</source>
        <translation>Verkostungen</translation>
    </message>
</context>
<context>
    <name>ToldPart</name>
    <message>
        <source>%1: %2; %3</source>
        <translation>%1: %2; %3</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
</context>
<context>
    <name>TooEarlyPart</name>
    <message>
        <source>Too early?</source>
        <translation>Zu früh?</translation>
    </message>
</context>
<context>
    <name>TypeInPage</name>
    <message>
        <source>Lock this sheet</source>
        <translation>Diesen Bogen festlegen</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>The line before</source>
        <translation>Die Zeile davor</translation>
    </message>
    <message>
        <source>Stop; nothing of it is kept</source>
        <translation>Aufhören; nichts davon bleibt</translation>
    </message>
    <message>
        <source>Back to the places</source>
        <translation>Zurück zu den Plätzen</translation>
    </message>
    <message>
        <source>The sheet of</source>
        <translation>Der Bogen von</translation>
    </message>
    <message>
        <source>Another table, or none</source>
        <translation>Eine andere Tabelle, oder keine</translation>
    </message>
    <message>
        <source>Take all of these answers</source>
        <translation>Alle diese Antworten nehmen</translation>
    </message>
    <message>
        <source>It cannot be read, or is no code of that place: keep it as written</source>
        <translation>Das lässt sich nicht lesen oder ist kein Code dieses Platzes: so behalten, wie es geschrieben steht</translation>
    </message>
    <message>
        <source>What do the columns hold?</source>
        <translation>Was steht in den Spalten?</translation>
    </message>
    <message>
        <source>Choose a column to say what it holds. All of the table is taken, or nothing of it.</source>
        <translation>Wähl eine Spalte, um zu sagen, was darin steht. Die Tabelle wird ganz genommen oder gar nicht.</translation>
    </message>
</context>
<context>
    <name>WordForm</name>
    <message>
        <source>The word</source>
        <translation>Das Wort</translation>
    </message>
    <message>
        <source>Where you would look for it</source>
        <translation>Wo du danach suchen würdest</translation>
    </message>
    <message>
        <source>How it is usually meant</source>
        <translation>Wie es meist gemeint ist</translation>
    </message>
    <message>
        <source>Said of</source>
        <translation>Gesagt von</translation>
    </message>
    <message>
        <source>What it means at this table; may stay empty</source>
        <translation>Was es an diesem Tisch heißt; darf leer bleiben</translation>
    </message>
</context>
<context>
    <name>WordLine</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>open. %1</source>
        <translation>offen. %1</translation>
    </message>
    <message>
        <source>closed. %1</source>
        <translation>zu. %1</translation>
    </message>
</context>
<context>
    <name>WordMergePart</name>
    <message>
        <source>Let it stand for itself again</source>
        <translation>Wieder für sich stehen lassen</translation>
    </message>
    <message>
        <source>Show that word</source>
        <translation>Das Wort zeigen</translation>
    </message>
    <message>
        <source>These count as it</source>
        <translation>Diese zählen mit</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Take it apart</source>
        <translation>Auseinandernehmen</translation>
    </message>
    <message>
        <source>Take “%1” apart</source>
        <translation>„%1“ auseinandernehmen</translation>
    </message>
    <message>
        <source>Which word does it count as from now on?</source>
        <translation>Als welches Wort zählt es von jetzt an?</translation>
    </message>
    <message>
        <source>Old answers count along. You can take the two apart again.</source>
        <translation>Alte Antworten zählen mit. Du kannst die beiden wieder auseinandernehmen.</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Lassen, wie es ist</translation>
    </message>
</context>
<context>
    <name>WordPage</name>
    <message>
        <source>No word is open</source>
        <translation>Kein Wort ist offen</translation>
    </message>
    <message>
        <source>Choose one in the list.</source>
        <translation>Such eines in der Liste aus.</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Back to the words</source>
        <translation>Zurück zu den Wörtern</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Merge it into another word</source>
        <translation>Mit einem anderen Wort zusammenlegen</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Retire it</source>
        <translation>Aus dem Dienst nehmen</translation>
    </message>
    <message>
        <source>Retired: it is no longer offered. What was answered with it stays.</source>
        <translation>Aus dem Dienst: es wird nicht mehr angeboten. Was damit geantwortet wurde, bleibt.</translation>
    </message>
    <message>
        <source>Usual causes</source>
        <translation>Übliche Ursachen</translation>
    </message>
    <message>
        <source>What brewers usually do</source>
        <translation>Was beim Brauen meist getan wird</translation>
    </message>
    <message>
        <source>What it means at this table</source>
        <translation>Was es an diesem Tisch heißt</translation>
    </message>
    <message>
        <source>How it is meant</source>
        <translation>Wie es gemeint ist</translation>
    </message>
    <message>
        <source>Changes in the list</source>
        <translation>Änderungen an der Liste</translation>
    </message>
</context>
<context>
    <name>WordsPage</name>
    <message>
        <source>Words</source>
        <translation>Wörter</translation>
    </message>
    <message>
        <source>What to call it. Open a class when you hunt for a fault; a word&apos;s own page says what often lies behind it.</source>
        <translation>Wie man es nennt. Öffne eine Klasse, wenn du einem Fehler nachgehst; die Seite eines Wortes sagt, was oft dahintersteckt.</translation>
    </message>
    <message>
        <source>Add a word</source>
        <translation>Wort hinzufügen</translation>
    </message>
    <message>
        <source>Hide retired words</source>
        <translation>Wörter außer Dienst verbergen</translation>
    </message>
    <message>
        <source>Show retired words too</source>
        <translation>Auch Wörter außer Dienst zeigen</translation>
    </message>
    <message>
        <source>Find a word, another name for it, or a compound</source>
        <translation>Such ein Wort, einen anderen Namen dafür oder einen Stoff</translation>
    </message>
    <message>
        <source>Said of</source>
        <translation>Gesagt von</translation>
    </message>
    <message>
        <source>No word in the list is called that. If it is the one you need, add it.</source>
        <translation>Kein Wort der Liste heißt so. Wenn du genau dieses brauchst, füg es hinzu.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>Blind tastings at home.</source>
        <translation>Blindverkostungen zu Hause.</translation>
    </message>
    <message>
        <source>The file that holds everything.</source>
        <translation>Die Datei, in der alles steht.</translation>
    </message>
    <message>
        <source>Where the demo sessions lie.</source>
        <translation>Wo die Demo-Verkostungen liegen.</translation>
    </message>
    <message>
        <source>Puts something on paper without a window; oddglass-cli report and oddglass-cli paper start it.</source>
        <translation>Bringt etwas ohne Fenster aufs Papier; oddglass-cli report und oddglass-cli paper rufen es auf.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::AloneModel</name>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
    <message>
        <source>Bottle %1</source>
        <translation>Flasche %1</translation>
    </message>
    <message>
        <source>Everything is read off.</source>
        <translation>Alles ist abgelesen.</translation>
    </message>
    <message>
        <source>Everything stands ready</source>
        <translation>Alles steht bereit</translation>
    </message>
    <message>
        <source>Hand over to the other one</source>
        <translation>An die andere Person übergeben</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Nächster Schritt</translation>
    </message>
    <message>
        <source>One cup after the other. Nothing of it shows before the key is open.</source>
        <translation>Ein Becher nach dem anderen. Nichts davon zeigt sich, bevor der Schlüssel offen ist.</translation>
    </message>
    <message>
        <source>Read it off the list. Nothing of it shows before the key is open.</source>
        <translation>Lies es von der Liste ab. Nichts davon zeigt sich, bevor der Schlüssel offen ist.</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Runde %1</translation>
    </message>
    <message>
        <source>Round %1 of %2</source>
        <translation>Runde %1 von %2</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
    <message>
        <source>Step %1 of %2  ·  %3</source>
        <translation>Schritt %1 von %2  ·  %3</translation>
    </message>
    <message>
        <source>The covers come off</source>
        <translation>Die Hüllen kommen ab</translation>
    </message>
    <message>
        <source>There is nothing to read off now.</source>
        <translation>Jetzt gibt es nichts abzulesen.</translation>
    </message>
    <message>
        <source>To the key</source>
        <translation>Zum Schlüssel</translation>
    </message>
    <message>
        <source>To the places</source>
        <translation>Zu den Plätzen</translation>
    </message>
    <message>
        <source>What is under the cover of bottle %1?</source>
        <translation>Was ist unter der Hülle von Flasche %1?</translation>
    </message>
    <message>
        <source>What was read lies with the key, and stays shut until it is opened.</source>
        <translation>Was abgelesen wurde, liegt beim Schlüssel und bleibt zu, bis er geöffnet wird.</translation>
    </message>
    <message>
        <source>Which drink got mark %1?</source>
        <translation>Welches Getränk bekam Marke %1?</translation>
    </message>
    <message>
        <source>Which mark got cup %1?</source>
        <translation>Welche Marke bekam Becher %1?</translation>
    </message>
    <message>
        <source>Who takes the covers off?</source>
        <translation>Wer nimmt die Hüllen ab?</translation>
    </message>
    <message>
        <source>first sheet</source>
        <translation>erstes Blatt</translation>
    </message>
    <message>
        <source>second sheet</source>
        <translation>zweites Blatt</translation>
    </message>
    <message>
        <source>somebody else</source>
        <translation>jemand anderes</translation>
    </message>
    <message>
        <source>somebody who poured and did not taste</source>
        <translation>jemand, der eingeschenkt und nicht verkostet hat</translation>
    </message>
    <message>
        <source>somebody who tasted</source>
        <translation>jemand, der verkostet hat</translation>
    </message>
    <message>
        <source>All of it is told. Keep it so?</source>
        <translation>Alles ist gesagt. So behalten?</translation>
    </message>
    <message>
        <source>Kept, it stays as it is, and what does not add up is set aside.</source>
        <translation>Behalten bleibt es, wie es ist, und was nicht aufgeht, wird beiseitegelegt.</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::Awake</name>
    <message>
        <source>A tasting is at the table.</source>
        <translation>Eine Verkostung sitzt am Tisch.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::BeginSeriesModel</name>
    <message>
        <source>Its cold twin</source>
        <translation>Sein kalter Zwilling</translation>
    </message>
    <message>
        <source>A bought drink</source>
        <translation>Ein gekauftes Getränk</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nichts</translation>
    </message>
    <message>
        <source>%1 over time</source>
        <translation>%1 über die Zeit</translation>
    </message>
    <message>
        <source>Set bottles of this lot aside now</source>
        <translation>Leg jetzt Flaschen dieser Charge zur Seite</translation>
    </message>
    <message>
        <source>%1, kept cold</source>
        <translation>%1, kalt gelagert</translation>
    </message>
    <message>
        <source>cold</source>
        <translation>kalt</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::BeverageModel</name>
    <message>
        <source>What is in the bottle?</source>
        <translation>Was ist in der Flasche?</translation>
    </message>
    <message>
        <source>Three lines are enough; the rest can wait.</source>
        <translation>Drei Zeilen genügen; der Rest kann warten.</translation>
    </message>
    <message>
        <source>bottled %1</source>
        <translation>abgefüllt %1</translation>
    </message>
    <message>
        <source>best before %1</source>
        <translation>haltbar bis %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>%1, %2 set aside</source>
        <translation>%1, davon %2 zurückgelegt</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source> against %1</source>
        <translation> gegen %1</translation>
    </message>
    <message>
        <source>Worked out by you from the two gravities.</source>
        <translation>Von dir aus den beiden Dichten errechnet.</translation>
    </message>
    <message>
        <source>This corrects the note of %1. The old one stays in the record.</source>
        <translation>Das berichtigt die Notiz vom %1. Die alte bleibt im Protokoll.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::BoardModel</name>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>wartet</translation>
    </message>
    <message>
        <source>tasting</source>
        <translation>verkostet</translation>
    </message>
    <message>
        <source>locked</source>
        <translation>festgelegt</translation>
    </message>
    <message>
        <source>has stopped</source>
        <translation>hat aufgehört</translation>
    </message>
    <message>
        <source>Place %1</source>
        <translation>Platz %1</translation>
    </message>
    <message>
        <source>spare</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>not named</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>%1 of %2 rounds</source>
        <translation>%1 von %2 Runden</translation>
    </message>
    <message>
        <source>Sit down</source>
        <translation>Hinsetzen</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>First the cups are poured.</source>
        <translation>Erst wird eingeschenkt.</translation>
    </message>
    <message>
        <source>Nobody has sat down.</source>
        <translation>Niemand hat sich hingesetzt.</translation>
    </message>
    <message>
        <source>Whoever pours takes this screen out of the room. Everybody else waits for the mats.</source>
        <translation>Wer einschenkt, nimmt diesen Bildschirm mit aus dem Raum. Alle anderen warten auf die Matten.</translation>
    </message>
    <message>
        <source>Carry the mats to the places, then hand this screen to one place after the other.</source>
        <translation>Trag die Matten an die Plätze, dann gib diesen Bildschirm von Platz zu Platz.</translation>
    </message>
    <message>
        <source>Round %1 is locked everywhere.</source>
        <translation>Runde %1 ist überall festgelegt.</translation>
    </message>
    <message>
        <source>The program looks at the answers for itself and says only whether to go on or to stop. Nobody sees a count.</source>
        <translation>Das Programm sieht die Antworten für sich an und sagt nur, ob es weitergeht oder nicht. Niemand sieht eine Zahl.</translation>
    </message>
    <message>
        <source>It said: stop.</source>
        <translation>Es sagte: aufhören.</translation>
    </message>
    <message>
        <source>The answers so far are enough for the rule that was sealed. No more cups are needed; the table can be closed.</source>
        <translation>Die bisherigen Antworten genügen der Regel, die versiegelt wurde. Mehr Becher sind nicht nötig; der Tisch kann geschlossen werden.</translation>
    </message>
    <message>
        <source>All locked.</source>
        <translation>Alles festgelegt.</translation>
    </message>
    <message>
        <source>Is somebody still to come? If not, the table can be closed.</source>
        <translation>Kommt noch jemand? Wenn nicht, kann der Tisch geschlossen werden.</translation>
    </message>
    <message>
        <source>%1 of %2 answers are locked.</source>
        <translation>%1 von %2 Antworten sind festgelegt.</translation>
    </message>
    <message>
        <source>Hand this screen to the next place. If nobody else comes, ask whether to go on without them.</source>
        <translation>Gib diesen Bildschirm an den nächsten Platz. Wenn sonst niemand kommt, frag, ob es ohne sie weitergehen soll.</translation>
    </message>
    <message>
        <source>Hand this screen to the next place. Something was said aloud; that is on record.</source>
        <translation>Gib diesen Bildschirm an den nächsten Platz. Etwas wurde laut gesagt; das ist festgehalten.</translation>
    </message>
    <message>
        <source>Hand this screen to the next place.</source>
        <translation>Gib diesen Bildschirm an den nächsten Platz.</translation>
    </message>
    <message>
        <source>No spare place is left. The guest can keep you company, but there are no cups for them in this tasting.</source>
        <translation>Kein Reserveplatz ist mehr frei. Der Gast kann euch Gesellschaft leisten, aber Becher gibt es in dieser Verkostung keine.</translation>
    </message>
    <message>
        <source>After round %1 it says: go on. The next round is open.</source>
        <translation>Nach Runde %1 sagt es: weiter. Die nächste Runde ist offen.</translation>
    </message>
    <message>
        <source>After round %1 it says: stop.</source>
        <translation>Nach Runde %1 sagt es: aufhören.</translation>
    </message>
    <message>
        <source>place %1</source>
        <translation>Platz %1</translation>
    </message>
    <message>
        <source>Not everything is locked: %1. What is not locked stays missing and is counted as missing. Close the table all the same?</source>
        <translation>Nicht alles ist festgelegt: %1. Was nicht festgelegt ist, fehlt und wird als fehlend gezählt. Den Tisch trotzdem schließen?</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Cup %1 stands in now. The pourer finds it among the spare codes; the taster starts these cups again.</source>
        <translation>Jetzt gilt Becher %1. Wer einschenkt, findet ihn bei den Ersatzcodes; am Platz wird mit diesen Bechern neu angefangen.</translation>
    </message>
    <message>
        <source>Interrupted at %1.</source>
        <translation>Unterbrochen um %1.</translation>
    </message>
    <message>
        <source>%1 of %2 answers are safe, and what was typed on a sheet is kept. Nobody has seen the key.</source>
        <translation>%1 von %2 Antworten sind gespeichert, und was auf einem Bogen getippt wurde, bleibt. Niemand hat den Schlüssel gesehen.</translation>
    </message>
    <message>
        <source>Go on with place %1.</source>
        <translation>Mach mit Platz %1 weiter.</translation>
    </message>
    <message>
        <source>First the cups are hidden.</source>
        <translation>Erst werden die Becher verborgen.</translation>
    </message>
    <message>
        <source>Locked. What stood under the cups?</source>
        <translation>Festgelegt. Was stand unter den Bechern?</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Runde %1</translation>
    </message>
    <message>
        <source>That round is set aside and counted so: what hands hid cannot be poured again unseen.</source>
        <translation>Diese Runde wird beiseitegestellt und so gezählt: was Hände verborgen haben, lässt sich nicht ungesehen neu einschenken.</translation>
    </message>
    <message>
        <source>The steps come one by one. Nothing is poured before them.</source>
        <translation>Die Schritte kommen einer nach dem anderen. Vorher wird nichts eingeschenkt.</translation>
    </message>
    <message>
        <source>Turn them over one by one, before anything is cleared away.</source>
        <translation>Dreh sie einen nach dem anderen um, bevor etwas abgeräumt wird.</translation>
    </message>
    <message>
        <source>Nothing is locked there: the place becomes free, and whoever sat there may sit elsewhere.</source>
        <translation>Dort ist nichts festgelegt: der Platz wird frei, und wer dort saß, darf sich woanders hinsetzen.</translation>
    </message>
    <message>
        <source>What is locked there will not count, and the place stays as it is.</source>
        <translation>Was dort festgelegt ist, zählt nicht, und der Platz bleibt, wie er ist.</translation>
    </message>
    <message>
        <source>Neither has locked: they put the mats back and begin these cups again.</source>
        <translation>Keiner hat festgelegt: sie legen die Matten zurück und fangen mit diesen Bechern neu an.</translation>
    </message>
    <message>
        <source>One of them has locked: that will not count. The other puts the mat back and begins again.</source>
        <translation>Einer davon hat festgelegt: das zählt nicht. Der andere legt die Matte zurück und fängt neu an.</translation>
    </message>
    <message>
        <source>Both have locked: neither will count.</source>
        <translation>Beide haben festgelegt: beides zählt nicht.</translation>
    </message>
    <message>
        <source>Nobody has begun yet: put the mats back, and nothing more is needed.</source>
        <translation>Noch hat niemand angefangen: legt die Matten zurück, mehr braucht es nicht.</translation>
    </message>
    <message>
        <source>All answers of place %1 are gone, and the place is left.</source>
        <translation>Alle Antworten von Platz %1 sind weg, und der Platz ist verlassen.</translation>
    </message>
    <message>
        <source>Another program reads the file just now: its last bytes go when the program is started next.</source>
        <translation>Ein anderes Programm liest die Datei gerade: ihre letzten Bytes gehen, wenn das Programm das nächste Mal startet.</translation>
    </message>
    <message>
        <source>Wave %1: places %2 to %3</source>
        <translation>Welle %1: Plätze %2 bis %3</translation>
    </message>
    <message>
        <source>Evening %1 of %2 is done.</source>
        <translation>Abend %1 von %2 ist vorbei.</translation>
    </message>
    <message>
        <source>What is locked is safe. Leave the table as it is: the next evening begins with round %1.</source>
        <translation>Was festgelegt ist, ist gespeichert. Lass den Tisch, wie er ist: der nächste Abend beginnt mit Runde %1.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::CameOutModel</name>
    <message>
        <source>This page is closed while a look of its series is sealed.</source>
        <translation>Diese Seite ist zu, solange ein Termin ihrer Reihe versiegelt ist.</translation>
    </message>
    <message>
        <source>The report is at %1.</source>
        <translation>Der Bericht liegt unter %1.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::CardModel</name>
    <message>
        <source>Your card, %1</source>
        <translation>Deine Karte, %1</translation>
    </message>
    <message>
        <source>I am %1</source>
        <translation>Ich bin %1</translation>
    </message>
    <message>
        <source>Hand it over. What comes next is theirs to read.</source>
        <translation>Gib den Bildschirm weiter. Was jetzt kommt, liest nur die Person selbst.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::CupsModel</name>
    <message>
        <source>Place %1, round %2 of %3</source>
        <translation>Platz %1, Runde %2 von %3</translation>
    </message>
    <message>
        <source>Place %1</source>
        <translation>Platz %1</translation>
    </message>
    <message>
        <source>the marked cup %1</source>
        <translation>der markierte Becher %1</translation>
    </message>
    <message>
        <source>%1 stand before me, from left to right.</source>
        <translation>%1 stehen vor mir, von links nach rechts.</translation>
    </message>
    <message>
        <source>marked cup</source>
        <translation>markierter Becher</translation>
    </message>
    <message>
        <source>No preference</source>
        <translation>Keine Vorliebe</translation>
    </message>
    <message>
        <source>Which one did you like better?</source>
        <translation>Welcher hat dir besser gefallen?</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Festlegen</translation>
    </message>
    <message>
        <source>Lock: %1</source>
        <translation>Festlegen: %1</translation>
    </message>
    <message>
        <source>Lock: no preference</source>
        <translation>Festlegen: keine Vorliebe</translation>
    </message>
    <message>
        <source>Lock %1 and %2</source>
        <translation>%1 und %2 festlegen</translation>
    </message>
    <message>
        <source>Lock %1</source>
        <translation>%1 festlegen</translation>
    </message>
    <message>
        <source>Choose a cup first. Not sure? Choose one anyway.</source>
        <translation>Wähl zuerst einen Becher. Nicht sicher? Wähl trotzdem einen.</translation>
    </message>
    <message>
        <source>Say which it is. Not sure? A guess is a good answer.</source>
        <translation>Sag, welcher es ist. Nicht sicher? Raten ist eine gute Antwort.</translation>
    </message>
    <message>
        <source>Choose the one you like better.</source>
        <translation>Wähl den, der dir besser gefällt.</translation>
    </message>
    <message>
        <source>Choose two cups. Not sure? Choose two anyway.</source>
        <translation>Wähl zwei Becher. Nicht sicher? Wähl trotzdem zwei.</translation>
    </message>
    <message>
        <source>Choose one more.</source>
        <translation>Wähl noch einen.</translation>
    </message>
    <message>
        <source>Say how sure you are.</source>
        <translation>Sag, wie sicher du dir bist.</translation>
    </message>
    <message>
        <source>Say how you knew.</source>
        <translation>Sag, woran du es gemerkt hast.</translation>
    </message>
    <message>
        <source>Say which one you liked better.</source>
        <translation>Sag, welcher dir besser gefallen hat.</translation>
    </message>
    <message>
        <source>Locked. Thank you.</source>
        <translation>Festgelegt. Danke.</translation>
    </message>
    <message>
        <source>It is safe since %1. Round %2 comes next; a sip of water first.</source>
        <translation>Gespeichert seit %1. Als Nächstes kommt Runde %2; vorher ein Schluck Wasser.</translation>
    </message>
    <message>
        <source>It is safe since %1. Nobody sees it with your name.</source>
        <translation>Gespeichert seit %1. Niemand sieht es mit deinem Namen.</translation>
    </message>
    <message>
        <source>It is safe since %1. Keep what you think to yourself until the key is opened.</source>
        <translation>Gespeichert seit %1. Behalt für dich, was du denkst, bis der Schlüssel geöffnet ist.</translation>
    </message>
    <message>
        <source>Do not taste. Take the mat and this screen back to the host: cups and place must fit before anything is chosen.</source>
        <translation>Nicht verkosten. Bring Matte und Bildschirm zurück zur Gastgeberin oder zum Gastgeber: Becher und Platz müssen zusammenpassen, bevor etwas gewählt wird.</translation>
    </message>
    <message>
        <source>It is safe since %1. Now the cups are turned over, before anything is cleared away.</source>
        <translation>Gespeichert seit %1. Jetzt werden die Becher umgedreht, bevor etwas abgeräumt wird.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::DraftModel</name>
    <message>
        <source>Which drinks? What each of them is there for is said below.</source>
        <translation>Welche Getränke? Wozu jedes da ist, steht weiter unten.</translation>
    </message>
    <message>
        <source>Which two? A third may be ticked as well, such as another vintage.</source>
        <translation>Welche zwei? Ein drittes darf auch angehakt werden, etwa ein anderer Jahrgang.</translation>
    </message>
    <message>
        <source>Which two?</source>
        <translation>Welche zwei?</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>either, drawn</source>
        <translation>eins von beiden, ausgelost</translation>
    </message>
    <message>
        <source>Recommended. %1</source>
        <translation>Empfohlen. %1</translation>
    </message>
    <message>
        <source>Three drinks. What is the third for?</source>
        <translation>Drei Getränke. Wozu ist das dritte da?</translation>
    </message>
    <message>
        <source>Tick who tastes, and each way says what it costs and what it needs.</source>
        <translation>Hak an, wer verkostet, dann sagt jede Art, was sie kostet und was sie braucht.</translation>
    </message>
    <message>
        <source>Last time you wrote: %1</source>
        <translation>Letztes Mal hast du geschrieben: %1</translation>
    </message>
    <message>
        <source>Nobody is left who did not make it. Add at least one such person, or taste alone.</source>
        <translation>Es ist niemand übrig, der nicht daran mitgemacht hat. Nimm mindestens eine solche Person dazu, oder verkoste allein.</translation>
    </message>
    <message>
        <source>Say what there is to notice.</source>
        <translation>Sag, was es zu bemerken gibt.</translation>
    </message>
    <message>
        <source>Say what one of them has more of.</source>
        <translation>Sag, wovon eines mehr hat.</translation>
    </message>
    <message>
        <source>A comparison needs a second drink. Tick two of them.</source>
        <translation>Ein Vergleich braucht ein zweites Getränk. Hak zwei an.</translation>
    </message>
    <message>
        <source>Tick at least one person who tastes.</source>
        <translation>Hak mindestens eine Person an, die verkostet.</translation>
    </message>
    <message>
        <source>%1 free</source>
        <translation>%1 frei</translation>
    </message>
    <message>
        <source>made one of these: stands beside the panel and does not count</source>
        <translation>hat eines davon gemacht: steht neben dem Panel und zählt nicht</translation>
    </message>
    <message>
        <source>Who tastes, and what?</source>
        <translation>Wer verkostet, und was?</translation>
    </message>
    <message>
        <source>There is nothing to seal yet.</source>
        <translation>Es gibt noch nichts zu versiegeln.</translation>
    </message>
    <message>
        <source>alone: the answers speak of this person only</source>
        <translation>allein: die Antworten sprechen nur von dieser Person</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::FormModel</name>
    <message>
        <source>%1 (first in it: %2)</source>
        <translation>%1 (zuerst steht darin: %2)</translation>
    </message>
    <message>
        <source>What does “%1” hold?</source>
        <translation>Was enthält „%1“?</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>round %1</source>
        <translation>Runde %1</translation>
    </message>
    <message>
        <source>the cup of the row</source>
        <translation>der Becher der Zeile</translation>
    </message>
    <message>
        <source>the cup: its code, or where it stands</source>
        <translation>der Becher: sein Code, oder wo er steht</translation>
    </message>
    <message>
        <source>the name</source>
        <translation>der Name</translation>
    </message>
    <message>
        <source>the place</source>
        <translation>der Platz</translation>
    </message>
    <message>
        <source>the round</source>
        <translation>die Runde</translation>
    </message>
    <message>
        <source>the round of the row</source>
        <translation>die Runde der Zeile</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::GiveAwaysModel</name>
    <message>
        <source>%1: choose a way out first.</source>
        <translation>%1: wähl zuerst einen Ausweg.</translation>
    </message>
    <message>
        <source>“%1”: which of them may have more of it?</source>
        <translation>„%1“: Welches könnte mehr davon haben?</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::HistoryModel</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>The record holds.</source>
        <translation>Das Protokoll stimmt.</translation>
    </message>
    <message>
        <source>The record does not check.</source>
        <translation>Das Protokoll stimmt nicht.</translation>
    </message>
    <message>
        <source> People who asked to be forgotten: %1.</source>
        <translation> Leute, die vergessen werden wollten: %1.</translation>
    </message>
    <message>
        <source>Looked at, at %1. %2</source>
        <translation>Angesehen um %1. %2</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::KeepingModel</name>
    <message>
        <source>asked for</source>
        <translation>auf Wunsch</translation>
    </message>
    <message>
        <source>before the file was brought up to date</source>
        <translation>bevor die Datei auf den neuen Stand kam</translation>
    </message>
    <message>
        <source>after a key was opened</source>
        <translation>nachdem ein Schlüssel geöffnet wurde</translation>
    </message>
    <message>
        <source>before a backup was put back</source>
        <translation>bevor eine Sicherung eingesetzt wurde</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1; the file is gone</source>
        <translation>%1; die Datei ist weg</translation>
    </message>
    <message>
        <source>Backed up to %1. Keep a copy on another disk too.</source>
        <translation>Gesichert unter %1. Heb auch auf einem anderen Datenträger eine Kopie auf.</translation>
    </message>
    <message>
        <source>The file is whole.</source>
        <translation>Die Datei ist heil.</translation>
    </message>
    <message>
        <source>The file is damaged. Close the program, keep this file, and put a backup back.</source>
        <translation>Die Datei ist beschädigt. Schließ das Programm, heb diese Datei auf und setz eine Sicherung ein.</translation>
    </message>
    <message>
        <source>The backup is in place. What stood here before is kept at %1.</source>
        <translation>Die Sicherung ist eingesetzt. Was vorher hier stand, liegt unter %1.</translation>
    </message>
    <message>
        <source>Taken in: sessions %1, series %2, drinks %3, lots %4, people %5. Here already, and left as they are: %6.</source>
        <translation>Hereingeholt: Verkostungen %1, Reihen %2, Getränke %3, Chargen %4, Leute %5. Schon hier und so gelassen: %6.</translation>
    </message>
    <message>
        <source> Still sealed where the file was written, and not to be carried on here: %1.</source>
        <translation> Noch versiegelt, wo die Datei geschrieben wurde, und hier nicht fortzusetzen: %1.</translation>
    </message>
    <message>
        <source>Written to %1. Of sealed sessions it holds the plan only.</source>
        <translation>Geschrieben nach %1. Von versiegelten Verkostungen enthält sie nur den Plan.</translation>
    </message>
    <message>
        <source>Settled.</source>
        <translation>Festgelegt.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::KeyModel</name>
    <message>
        <source>Is everybody here?</source>
        <translation>Sind alle da?</translation>
    </message>
    <message>
        <source>The key is sealed.</source>
        <translation>Der Schlüssel ist versiegelt.</translation>
    </message>
    <message>
        <source>It can be opened when the table is closed.</source>
        <translation>Er lässt sich öffnen, wenn der Tisch geschlossen ist.</translation>
    </message>
    <message>
        <source>Handed in: %1. Missing, and staying so: %2.</source>
        <translation>Abgegeben: %1. Fehlt und bleibt so: %2.</translation>
    </message>
    <message>
        <source>Handed in: %1. None is missing.</source>
        <translation>Abgegeben: %1. Nichts fehlt.</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>The key is open. No backup could be made: %1</source>
        <translation>Der Schlüssel ist offen. Es ließ sich keine Sicherung machen: %1</translation>
    </message>
    <message>
        <source>Hands hid the key of this evening. It is read off first, cup by cup; then it is opened for everybody at once.</source>
        <translation>Hände haben den Schlüssel dieses Abends verborgen. Er wird zuerst abgelesen, Becher für Becher; dann wird er für alle zugleich geöffnet.</translation>
    </message>
    <message>
        <source>What stood in the cups?</source>
        <translation>Was stand in den Bechern?</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::OpenRoundModel</name>
    <message>
        <source>Place %1</source>
        <translation>Platz %1</translation>
    </message>
    <message>
        <source>%1, at place %2</source>
        <translation>%1, an Platz %2</translation>
    </message>
    <message>
        <source>has answered</source>
        <translation>hat geantwortet</translation>
    </message>
    <message>
        <source>may answer</source>
        <translation>darf antworten</translation>
    </message>
    <message>
        <source>Each of the drinks needs an answer first.</source>
        <translation>Erst braucht jedes Getränk eine Antwort.</translation>
    </message>
    <message>
        <source>Kept. Hand it on, or stop here.</source>
        <translation>Behalten. Gib weiter, oder hör hier auf.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::OverTimeModel</name>
    <message>
        <source>Next look: %1.</source>
        <translation>Nächster Termin: %1.</translation>
    </message>
    <message>
        <source>Begin a series</source>
        <translation>Eine Reihe beginnen</translation>
    </message>
    <message>
        <source>Begin another series</source>
        <translation>Noch eine Reihe beginnen</translation>
    </message>
    <message>
        <source>Go on with the next look</source>
        <translation>Mit dem nächsten Termin weitermachen</translation>
    </message>
    <message>
        <source>Plan the next look</source>
        <translation>Den nächsten Termin planen</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1. Due on %2</source>
        <translation>%1. Fällig am %2</translation>
    </message>
    <message>
        <source>%1. Held on %2</source>
        <translation>%1. Gehalten am %2</translation>
    </message>
    <message>
        <source>The old pages were opened while it was sealed.</source>
        <translation>Die alten Seiten wurden geöffnet, während er versiegelt war.</translation>
    </message>
    <message>
        <source>Plan it</source>
        <translation>Planen</translation>
    </message>
    <message>
        <source>Go on with its plan</source>
        <translation>Am Plan weitermachen</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>The coming looks are in %1.</source>
        <translation>Die kommenden Termine stehen in %1.</translation>
    </message>
    <message>
        <source>The report is at %1.</source>
        <translation>Der Bericht liegt unter %1.</translation>
    </message>
    <message>
        <source>The tags are at %1. Their letters can be taken for no cup&apos;s code.</source>
        <translation>Die Anhänger liegen in %1. Ihre Buchstaben lassen sich mit keinem Code eines Bechers verwechseln.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::PaperModel</name>
    <message>
        <source>Cup labels</source>
        <translation>Becheretiketten</translation>
    </message>
    <message>
        <source>Place mats</source>
        <translation>Platzmatten</translation>
    </message>
    <message>
        <source>Answer sheets</source>
        <translation>Antwortbögen</translation>
    </message>
    <message>
        <source>A sheet without codes</source>
        <translation>Ein Bogen ohne Codes</translation>
    </message>
    <message>
        <source>Run list</source>
        <translation>Ablaufplan</translation>
    </message>
    <message>
        <source>Pourer&apos;s sheet</source>
        <translation>Blatt zum Einschenken</translation>
    </message>
    <message>
        <source>Key card</source>
        <translation>Schlüsselkarte</translation>
    </message>
    <message>
        <source>One for every code, place by place; those kept for spilled cups come last. Whoever sticks them on learns nothing from it.</source>
        <translation>Eines für jeden Code, Platz für Platz; die für verschüttete Becher kommen zuletzt. Wer sie aufklebt, erfährt daraus nichts.</translation>
    </message>
    <message>
        <source>One for each flight: where each code stands, from left to right as the taster sees it.</source>
        <translation>Eine für jeden Satz: wo jeder Code steht, von links nach rechts aus Sicht der Person am Platz.</translation>
    </message>
    <message>
        <source>One for each flight, with the codes of its own place only. They hold no key: print them in any case, for the evening on which the computer gives up.</source>
        <translation>Einer für jeden Satz, nur mit den Codes des eigenen Platzes. Sie enthalten keinen Schlüssel: druck sie auf jeden Fall, für den Abend, an dem der Rechner aufgibt.</translation>
    </message>
    <message>
        <source>One to be copied by hand, with boxes for place and codes.</source>
        <translation>Einer zum Abschreiben von Hand, mit Kästchen für Platz und Codes.</translation>
    </message>
    <message>
        <source>What happens when, with minutes. Everybody may read it.</source>
        <translation>Was wann geschieht, mit Minuten. Alle dürfen ihn lesen.</translation>
    </message>
    <message>
        <source>In the order of the bottles, and again place by place. This is the key: the opening is recorded and counted in the report.</source>
        <translation>In der Reihenfolge der Flaschen, und noch einmal Platz für Platz. Das ist der Schlüssel: das Öffnen wird festgehalten und im Bericht gezählt.</translation>
    </message>
    <message>
        <source>To be folded twice and taped, for the day on which the computer is lost. This is the key: the opening is recorded and counted in the report.</source>
        <translation>Zweimal zu falten und zuzukleben, für den Tag, an dem der Rechner verloren ist. Das ist der Schlüssel: das Öffnen wird festgehalten und im Bericht gezählt.</translation>
    </message>
    <message>
        <source>It is at %1. Print it at its own size, take it with you, and destroy the file: whoever finds it has the key.</source>
        <translation>Es liegt unter %1. Druck es in Originalgröße, nimm es mit und vernichte die Datei: wer sie findet, hat den Schlüssel.</translation>
    </message>
    <message>
        <source>It is at %1. Print it at its own size, not fitted to the page.</source>
        <translation>Es liegt unter %1. Druck es in Originalgröße, nicht an die Seite angepasst.</translation>
    </message>
    <message>
        <source>Steps and lists of the routine</source>
        <translation>Schritte und Listen des Ablaufs</translation>
    </message>
    <message>
        <source>The steps in which hands hide the key, and the blank lists for what each cup held. It holds no key.</source>
        <translation>Die Schritte, in denen Hände den Schlüssel verbergen, und die leeren Listen dafür, was in jedem Becher war. Sie enthalten keinen Schlüssel.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::PeopleModel</name>
    <message>
        <source>Hand over, and show it to them</source>
        <translation>Übergeben und der Person zeigen</translation>
    </message>
    <message>
        <source>They ask for a card</source>
        <translation>Sie wollen eine Karte</translation>
    </message>
    <message>
        <source>the brewer</source>
        <translation>wer hier braut</translation>
    </message>
    <message>
        <source>shown as “%1” where they ask for a nickname</source>
        <translation>gezeigt als „%1“, wo ein Spitzname gewünscht ist</translation>
    </message>
    <message>
        <source>has a card</source>
        <translation>hat eine Karte</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Forgotten: it is gone from this file.</source>
        <translation>Vergessen: aus dieser Datei ist es weg.</translation>
    </message>
    <message>
        <source>Forgotten. Another program reads the file just now, so its last traces go when Oddglass is started next.</source>
        <translation>Vergessen. Ein anderes Programm liest die Datei gerade, deshalb gehen die letzten Spuren, wenn Oddglass das nächste Mal startet.</translation>
    </message>
    <message>
        <source>These backups still hold the person; delete them by hand: %1</source>
        <translation>Diese Sicherungen enthalten die Person noch; lösch sie von Hand: %1</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::PourModel</name>
    <message>
        <source>%1 into each cup. Take this screen with you; do not talk about it, do not taste.</source>
        <translation>%1 in jeden Becher. Nimm diesen Bildschirm mit; sprich nicht darüber, verkoste nicht.</translation>
    </message>
    <message>
        <source>%1 Every opening is counted in the report.</source>
        <translation>%1 Jedes Öffnen wird im Bericht gezählt.</translation>
    </message>
    <message>
        <source>place %1, %2</source>
        <translation>Platz %1, %2</translation>
    </message>
    <message>
        <source>the marked cup (write R on it)</source>
        <translation>der markierte Becher (schreib R darauf)</translation>
    </message>
    <message>
        <source>%1, round %2</source>
        <translation>%1, Runde %2</translation>
    </message>
    <message>
        <source>: %1</source>
        <translation>: %1</translation>
    </message>
    <message>
        <source>spilled; the spare stands in</source>
        <translation>verschüttet; der Ersatz steht da</translation>
    </message>
    <message>
        <source>not sure: set aside</source>
        <translation>unklar: beiseitegestellt</translation>
    </message>
    <message>
        <source>really holds %1</source>
        <translation>enthält in Wahrheit %1</translation>
    </message>
    <message>
        <source>Spare codes: pour one only where its cup was spilled</source>
        <translation>Ersatzcodes: schenk einen nur ein, wo sein Becher verschüttet wurde</translation>
    </message>
    <message>
        <source>Place %1, from left to right as the taster sees it</source>
        <translation>Platz %1, von links nach rechts aus Sicht der Person am Platz</translation>
    </message>
    <message>
        <source>Cup %1, %2. What happened?</source>
        <translation>Becher %1, %2. Was ist passiert?</translation>
    </message>
    <message>
        <source>Pour %1 in its place, from the same bottle.</source>
        <translation>Schenk stattdessen %1 ein, aus derselben Flasche.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::Preferences</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::RoomModel</name>
    <message>
        <source>You and the room</source>
        <translation>Du und die Runde</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::RoutineModel</name>
    <message>
        <source>nobody yet</source>
        <translation>noch niemand</translation>
    </message>
    <message>
        <source>somebody else</source>
        <translation>jemand anderes</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::SeatModel</name>
    <message>
        <source>I am place %1</source>
        <translation>Ich bin Platz %1</translation>
    </message>
    <message>
        <source>Place %1. Who sits here?</source>
        <translation>Platz %1. Wer sitzt hier?</translation>
    </message>
    <message>
        <source>This is for place %1.</source>
        <translation>Das ist für Platz %1.</translation>
    </message>
    <message>
        <source>This is for %1, at place %2.</source>
        <translation>Das ist für %1, an Platz %2.</translation>
    </message>
    <message>
        <source>Once, before the first cup.</source>
        <translation>Einmal, vor dem ersten Becher.</translation>
    </message>
    <message>
        <source>Hand it over. Everybody else looks away.</source>
        <translation>Gib den Bildschirm weiter. Alle anderen sehen weg.</translation>
    </message>
    <message>
        <source>somebody else</source>
        <translation>jemand anderes</translation>
    </message>
    <message>
        <source>Say who sits here.</source>
        <translation>Sag, wer hier sitzt.</translation>
    </message>
    <message>
        <source>Tick the three lines first, or sit out; nobody asks why.</source>
        <translation>Hak zuerst die drei Zeilen an, oder setz aus; niemand fragt, warum.</translation>
    </message>
    <message>
        <source>Say how you want to be shown.</source>
        <translation>Sag, wie du gezeigt werden willst.</translation>
    </message>
    <message>
        <source>Say whether you have heard anything about the cups.</source>
        <translation>Sag, ob du etwas über die Becher gehört hast.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::SheetModel</name>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Place %1, round %2 of %3</source>
        <translation>Platz %1, Runde %2 von %3</translation>
    </message>
    <message>
        <source>Place %1</source>
        <translation>Platz %1</translation>
    </message>
    <message>
        <source>Cup %1 of %2</source>
        <translation>Becher %1 von %2</translation>
    </message>
    <message>
        <source>All cups together</source>
        <translation>Alle Becher zusammen</translation>
    </message>
    <message>
        <source>Lock my sheet</source>
        <translation>Meinen Bogen festlegen</translation>
    </message>
    <message>
        <source>Next cup</source>
        <translation>Nächster Becher</translation>
    </message>
    <message>
        <source>Look once more: the smell, the first sip, the end. If there is nothing, tap again.</source>
        <translation>Schau noch einmal hin: der Geruch, der erste Schluck, das Ende. Wenn da nichts ist, tipp noch einmal.</translation>
    </message>
    <message>
        <source>One moment.</source>
        <translation>Einen Moment.</translation>
    </message>
    <message>
        <source>In %1 seconds.</source>
        <translation>In %1 Sekunden.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::SheetPlanModel</name>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Questions on it: %1. The plan is about %2 of them.</source>
        <translation>Fragen darauf: %1. Im Plan geht es um %2 davon.</translation>
    </message>
    <message>
        <source>A sheet of your own. %1</source>
        <translation>Ein eigener Bogen. %1</translation>
    </message>
    <message>
        <source>%1 For this drink the program would take: %2.</source>
        <translation>%1 Für dieses Getränk nähme das Programm: %2.</translation>
    </message>
    <message>
        <source>The sheet asks nothing about a cup. Take a ready sheet, or add a question.</source>
        <translation>Der Bogen fragt nichts zu einem Becher. Nimm einen fertigen Bogen, oder füg eine Frage hinzu.</translation>
    </message>
    <message>
        <source>The sheet asks how far a cup is from the marked one. Choose which drink stands in the marked cup.</source>
        <translation>Der Bogen fragt, wie weit ein Becher vom markierten entfernt ist. Wähl, welches Getränk im markierten Becher steht.</translation>
    </message>
    <message>
        <source>Question %1 cannot be asked like that: it lacks its word, or stands twice.</source>
        <translation>Frage %1 lässt sich so nicht stellen: ihr fehlt das Wort, oder sie steht zweimal da.</translation>
    </message>
    <message>
        <source>Say what it asks about: a word or two.</source>
        <translation>Sag, wonach sie fragt: ein, zwei Worte.</translation>
    </message>
    <message>
        <source>At most 60 letters, please.</source>
        <translation>Höchstens 60 Buchstaben, bitte.</translation>
    </message>
    <message>
        <source>The sheet asks that already.</source>
        <translation>Danach fragt der Bogen schon.</translation>
    </message>
    <message>
        <source>Choose above which drink stands in the marked cup.</source>
        <translation>Wähl oben, welches Getränk im markierten Becher steht.</translation>
    </message>
    <message>
        <source>“%1” is no limit: a whole number from 1 on, or nothing.</source>
        <translation>„%1“ ist keine Grenze: eine ganze Zahl ab 1, oder nichts.</translation>
    </message>
    <message>
        <source>That is as long as the whole scale or longer.</source>
        <translation>Das ist so lang wie die ganze Skala oder länger.</translation>
    </message>
    <message>
        <source>Tick the drink that you want to know about.</source>
        <translation>Hak das Getränk an, über das du etwas wissen willst.</translation>
    </message>
    <message>
        <source>no marked cup</source>
        <translation>kein markierter Becher</translation>
    </message>
    <message>
        <source>Nothing is there to hold %1 against. Say above which drink the others are held against, or tick another one.</source>
        <translation>Es gibt nichts, woran %1 gemessen werden kann. Sag oben, woran die anderen gemessen werden, oder hak ein anderes an.</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>Nothing is there to hold %1 against. Tick a second drink: a bought one, or a batch that came out as you want it.</source>
        <translation>Es gibt nichts, woran %1 gemessen werden kann. Hak ein zweites Getränk an: ein gekauftes oder einen Ansatz, der so wurde, wie du ihn willst.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::ShelfModel</name>
    <message>
        <source>%1. No bottles yet.</source>
        <translation>%1. Noch keine Flaschen.</translation>
    </message>
    <message>
        <source>%1. %2 on the shelf.</source>
        <translation>%1. %2 im Regal.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::SideBySideModel</name>
    <message>
        <source>shown below</source>
        <translation>unten zu sehen</translation>
    </message>
    <message>
        <source>1 batch</source>
        <translation>1 Ansatz</translation>
    </message>
    <message>
        <source>%1 batches</source>
        <translation>%1 Ansätze</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>; %1: %2</source>
        <translation>; %1: %2</translation>
    </message>
    <message>
        <source>the one before</source>
        <translation>der davor</translation>
    </message>
    <message>
        <source>Plan a tasting that links them</source>
        <translation>Eine Verkostung planen, die sie verbindet</translation>
    </message>
    <message>
        <source>Choose batches</source>
        <translation>Ansätze auswählen</translation>
    </message>
    <message>
        <source>Put a batch on the shelf</source>
        <translation>Einen Ansatz ins Regal stellen</translation>
    </message>
    <message>
        <source>No bottle is left that would link them. Keep one back of the next batch, or buy a lot that each can stand beside.</source>
        <translation>Keine Flasche ist übrig, die sie verbinden würde. Heb vom nächsten Ansatz eine auf, oder kauf eine Charge, neben der jeder stehen kann.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::TodayModel</name>
    <message>
        <source>A plan without a title</source>
        <translation>Ein Plan ohne Titel</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>a plan without a title</source>
        <translation>ein Plan ohne Titel</translation>
    </message>
    <message>
        <source>The table is open.</source>
        <translation>Der Tisch ist offen.</translation>
    </message>
    <message>
        <source>%1. Last written at %2; %3 of %4 answers are safe. Nobody has seen the key.</source>
        <translation>%1. Zuletzt geschrieben um %2; %3 von %4 Antworten sind gespeichert. Niemand hat den Schlüssel gesehen.</translation>
    </message>
    <message>
        <source>A tasting is sealed and waits for its table.</source>
        <translation>Eine Verkostung ist versiegelt und wartet auf ihren Tisch.</translation>
    </message>
    <message>
        <source>%1. Its seal mark is %2.</source>
        <translation>%1. Ihr Siegelwort ist %2.</translation>
    </message>
    <message>
        <source>The table is closed. The key waits.</source>
        <translation>Der Tisch ist geschlossen. Der Schlüssel wartet.</translation>
    </message>
    <message>
        <source>%1. Answers locked: %2.</source>
        <translation>%1. Festgelegte Antworten: %2.</translation>
    </message>
    <message>
        <source>A plan waits to be finished.</source>
        <translation>Ein Plan wartet darauf, fertig zu werden.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::TypingModel</name>
    <message>
        <source>%1 made one of the drinks</source>
        <translation>%1 hat eines der Getränke gemacht</translation>
    </message>
    <message>
        <source>%1 pours</source>
        <translation>%1 schenkt ein</translation>
    </message>
    <message>
        <source>%1 has not locked yet</source>
        <translation>%1 hat noch nicht festgelegt</translation>
    </message>
    <message>
        <source>somebody who neither tastes nor pours, and made none of it</source>
        <translation>jemand, der weder verkostet noch einschenkt und nichts davon gemacht hat</translation>
    </message>
    <message>
        <source>Not these: %1.</source>
        <translation>Nicht diese: %1.</translation>
    </message>
    <message>
        <source>Who types the sheets in?</source>
        <translation>Wer tippt die Bögen ab?</translation>
    </message>
    <message>
        <source>No sheet is waited for.</source>
        <translation>Auf keinen Bogen wird gewartet.</translation>
    </message>
    <message>
        <source>Whose sheet is it?</source>
        <translation>Wessen Bogen ist es?</translation>
    </message>
    <message>
        <source>Whoever made or pours one of the drinks sees no answers before the table is closed.</source>
        <translation>Wer eines der Getränke gemacht hat oder einschenkt, sieht keine Antworten, bevor der Tisch geschlossen ist.</translation>
    </message>
    <message>
        <source>Each sheet is typed in twice, so that a slip is noticed.</source>
        <translation>Jeder Bogen wird zweimal getippt, damit ein Versehen auffällt.</translation>
    </message>
    <message>
        <source>%1, the second time</source>
        <translation>%1, zum zweiten Mal</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Both times agree.</source>
        <translation>Beide Male stimmen überein.</translation>
    </message>
    <message>
        <source>Locked, it stays as it is.</source>
        <translation>Einmal festgelegt, bleibt er, wie er ist.</translation>
    </message>
    <message>
        <source>The first time something else was typed. Look at the sheet, and type it once more.</source>
        <translation>Beim ersten Mal wurde etwas anderes getippt. Sieh auf den Bogen, und tipp ihn noch einmal.</translation>
    </message>
    <message>
        <source>%1 is locked.</source>
        <translation>%1 ist festgelegt.</translation>
    </message>
    <message>
        <source>Locked from the table: %1.</source>
        <translation>Aus der Tabelle festgelegt: %1.</translation>
    </message>
    <message>
        <source>%1 is set aside, and what was written is kept as it stands.</source>
        <translation>%1 ist beiseitegestellt, und was geschrieben stand, bleibt, wie es steht.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::UndoModel</name>
    <message>
        <source>Taken back. Before that: %1</source>
        <translation>Zurückgenommen. Davor: %1</translation>
    </message>
    <message>
        <source>Taken back.</source>
        <translation>Zurückgenommen.</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::WordModel</name>
    <message>
        <source>Words</source>
        <translation>Wörter</translation>
    </message>
    <message>
        <source>A word of your own</source>
        <translation>Ein eigenes Wort</translation>
    </message>
    <message>
        <source>The word that comes to your tongue, if the list has none for it.</source>
        <translation>Das Wort, das dir auf der Zunge liegt, wenn die Liste keines dafür hat.</translation>
    </message>
    <message>
        <source>a word that is not in the list</source>
        <translation>ein Wort, das nicht auf der Liste steht</translation>
    </message>
    <message>
        <source>It counts as “%1”, in old answers too.</source>
        <translation>Es zählt als „%1“, auch in alten Antworten.</translation>
    </message>
    <message>
        <source>by way of “%1”</source>
        <translation>über „%1“</translation>
    </message>
</context>
<context>
    <name>oddglass::ui::WordsModel</name>
    <message>
        <source>yours</source>
        <translation>deins</translation>
    </message>
    <message>
        <source>yours, retired</source>
        <translation>deins, außer Dienst</translation>
    </message>
    <message>
        <source>retired</source>
        <translation>außer Dienst</translation>
    </message>
    <message>
        <source>any drink</source>
        <translation>jedes Getränk</translation>
    </message>
    <message>
        <source>None of them is your own yet.</source>
        <translation>Noch ist keines davon dein eigenes.</translation>
    </message>
    <message>
        <source>Your own among all words: %1.</source>
        <translation>Deine eigenen unter allen Wörtern: %1.</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>wet cardboard</source>
        <translation>nasse Pappe</translation>
    </message>
    <message>
        <source>cardboard; papery; paper</source>
        <translation>Pappe; papieren; Papier</translation>
    </message>
    <message>
        <source>trans-2-nonenal</source>
        <translation>trans-2-Nonenal</translation>
    </message>
    <message>
        <source>sherry</source>
        <translation>Sherry</translation>
    </message>
    <message>
        <source>sherry-like</source>
        <translation>sherryartig</translation>
    </message>
    <message>
        <source>bruised apple</source>
        <translation>Apfel mit Druckstelle</translation>
    </message>
    <message>
        <source>brown apple; cut apple</source>
        <translation>brauner Apfel; angeschnittener Apfel</translation>
    </message>
    <message>
        <source>acetaldehyde</source>
        <translation>Acetaldehyd</translation>
    </message>
    <message>
        <source>stewed fruit</source>
        <translation>Kompott</translation>
    </message>
    <message>
        <source>jam; cooked fruit</source>
        <translation>Marmelade; gekochtes Obst</translation>
    </message>
    <message>
        <source>skunk</source>
        <translation>Skunk</translation>
    </message>
    <message>
        <source>skunky; lightstruck</source>
        <translation>Stinktier; Lichtgeschmack</translation>
    </message>
    <message>
        <source>3-methyl-2-butene-1-thiol</source>
        <translation>3-Methyl-2-buten-1-thiol</translation>
    </message>
    <message>
        <source>catty</source>
        <translation>Katze</translation>
    </message>
    <message>
        <source>tomcat; blackcurrant leaf</source>
        <translation>Kater; Blatt der Schwarzen Johannisbeere</translation>
    </message>
    <message>
        <source>faded</source>
        <translation>verblasst</translation>
    </message>
    <message>
        <source>washed out; dull</source>
        <translation>ausgewaschen; matt</translation>
    </message>
    <message>
        <source>petrol</source>
        <translation>Petrol</translation>
    </message>
    <message>
        <source>kerosene; paraffin</source>
        <translation>Kerosin; Paraffin</translation>
    </message>
    <message>
        <source>1,1,6-trimethyl-1,2-dihydronaphthalene (TDN)</source>
        <translation>1,1,6-Trimethyl-1,2-dihydronaphthalin (TDN)</translation>
    </message>
    <message>
        <source>rotten egg</source>
        <translation>faules Ei</translation>
    </message>
    <message>
        <source>eggy; hydrogen sulphide</source>
        <translation>eierig; Schwefelwasserstoff</translation>
    </message>
    <message>
        <source>hydrogen sulphide</source>
        <translation>Schwefelwasserstoff</translation>
    </message>
    <message>
        <source>struck match</source>
        <translation>abgebranntes Streichholz</translation>
    </message>
    <message>
        <source>burnt match; gunflint</source>
        <translation>verbranntes Streichholz; Feuerstein</translation>
    </message>
    <message>
        <source>sulphite sting</source>
        <translation>Sulfitstich</translation>
    </message>
    <message>
        <source>sulphur dioxide; stinging nose</source>
        <translation>Schwefeldioxid; stechend in der Nase</translation>
    </message>
    <message>
        <source>sulphur dioxide</source>
        <translation>Schwefeldioxid</translation>
    </message>
    <message>
        <source>cooked corn</source>
        <translation>gekochter Mais</translation>
    </message>
    <message>
        <source>sweetcorn; creamed corn; DMS</source>
        <translation>Zuckermais; Rahmmais; DMS</translation>
    </message>
    <message>
        <source>dimethyl sulphide (DMS)</source>
        <translation>Dimethylsulfid (DMS)</translation>
    </message>
    <message>
        <source>cooked cabbage</source>
        <translation>gekochter Kohl</translation>
    </message>
    <message>
        <source>cabbage; stewed greens</source>
        <translation>Kohl; zerkochtes Gemüse</translation>
    </message>
    <message>
        <source>dimethyl sulphide (DMS) in beer</source>
        <translation>Dimethylsulfid (DMS) im Bier</translation>
    </message>
    <message>
        <source>onion</source>
        <translation>Zwiebel</translation>
    </message>
    <message>
        <source>garlic; leek</source>
        <translation>Knoblauch; Lauch</translation>
    </message>
    <message>
        <source>mercaptans</source>
        <translation>Mercaptane</translation>
    </message>
    <message>
        <source>rubber</source>
        <translation>Gummi</translation>
    </message>
    <message>
        <source>burnt rubber; tyre</source>
        <translation>verbrannter Gummi; Reifen</translation>
    </message>
    <message>
        <source>drains</source>
        <translation>Abfluss</translation>
    </message>
    <message>
        <source>drain; sewer</source>
        <translation>Gully; Kanal</translation>
    </message>
    <message>
        <source>methanethiol</source>
        <translation>Methanthiol</translation>
    </message>
    <message>
        <source>barnyard</source>
        <translation>Pferdestall</translation>
    </message>
    <message>
        <source>stable; horse; leather</source>
        <translation>Stall; Pferd; Leder</translation>
    </message>
    <message>
        <source>4-ethylphenol</source>
        <translation>4-Ethylphenol</translation>
    </message>
    <message>
        <source>mousy</source>
        <translation>mäuselnd</translation>
    </message>
    <message>
        <source>mouse cage; stale cracker</source>
        <translation>Mäusekäfig; alter Zwieback</translation>
    </message>
    <message>
        <source>tetrahydropyridines</source>
        <translation>Tetrahydropyridine</translation>
    </message>
    <message>
        <source>sick</source>
        <translation>Erbrochenes</translation>
    </message>
    <message>
        <source>baby sick; vomit; rancid butter</source>
        <translation>Babyspucke; erbrochen; ranzige Butter</translation>
    </message>
    <message>
        <source>butyric acid</source>
        <translation>Buttersäure</translation>
    </message>
    <message>
        <source>cheese</source>
        <translation>Käse</translation>
    </message>
    <message>
        <source>cheesy; sweaty</source>
        <translation>käsig; verschwitzt</translation>
    </message>
    <message>
        <source>isovaleric acid</source>
        <translation>Isovaleriansäure</translation>
    </message>
    <message>
        <source>goat</source>
        <translation>Ziege</translation>
    </message>
    <message>
        <source>goaty</source>
        <translation>ziegenartig</translation>
    </message>
    <message>
        <source>hexanoic and octanoic acid</source>
        <translation>Hexan- und Octansäure</translation>
    </message>
    <message>
        <source>geranium</source>
        <translation>Geranie</translation>
    </message>
    <message>
        <source>geranium leaf; crushed leaf</source>
        <translation>Geranienblatt; zerdrücktes Blatt</translation>
    </message>
    <message>
        <source>2-ethoxyhexa-3,5-diene</source>
        <translation>2-Ethoxyhexa-3,5-dien</translation>
    </message>
    <message>
        <source>ropy</source>
        <translation>fadenziehend</translation>
    </message>
    <message>
        <source>slimy; stringy</source>
        <translation>schleimig; zäh</translation>
    </message>
    <message>
        <source>mould</source>
        <translation>Schimmel</translation>
    </message>
    <message>
        <source>mouldy</source>
        <translation>schimmelig</translation>
    </message>
    <message>
        <source>rotten fruit</source>
        <translation>faules Obst</translation>
    </message>
    <message>
        <source>rotten apples</source>
        <translation>faule Äpfel</translation>
    </message>
    <message>
        <source>manure</source>
        <translation>Mist</translation>
    </message>
    <message>
        <source>dung; faecal</source>
        <translation>Dung; fäkal</translation>
    </message>
    <message>
        <source>indole</source>
        <translation>Indol</translation>
    </message>
    <message>
        <source>damp cellar</source>
        <translation>feuchter Keller</translation>
    </message>
    <message>
        <source>corked; musty cork; TCA</source>
        <translation>korkig; Korkton; TCA</translation>
    </message>
    <message>
        <source>2,4,6-trichloroanisole (TCA)</source>
        <translation>2,4,6-Trichloranisol (TCA)</translation>
    </message>
    <message>
        <source>earthy</source>
        <translation>erdig</translation>
    </message>
    <message>
        <source>soil; beetroot</source>
        <translation>Erde; Rote Bete</translation>
    </message>
    <message>
        <source>geosmin</source>
        <translation>Geosmin</translation>
    </message>
    <message>
        <source>musty</source>
        <translation>muffig</translation>
    </message>
    <message>
        <source>old sack; damp cloth</source>
        <translation>alter Sack; feuchtes Tuch</translation>
    </message>
    <message>
        <source>medicinal</source>
        <translation>medizinisch</translation>
    </message>
    <message>
        <source>antiseptic; sticking plaster; hospital</source>
        <translation>antiseptisch; Heftpflaster; Krankenhaus</translation>
    </message>
    <message>
        <source>chlorophenols</source>
        <translation>Chlorphenole</translation>
    </message>
    <message>
        <source>metal</source>
        <translation>Metall</translation>
    </message>
    <message>
        <source>metallic; iron; blood</source>
        <translation>metallisch; Eisen; Blut</translation>
    </message>
    <message>
        <source>iron, copper</source>
        <translation>Eisen, Kupfer</translation>
    </message>
    <message>
        <source>plastic</source>
        <translation>Plastik</translation>
    </message>
    <message>
        <source>hose; vinyl</source>
        <translation>Schlauch; Vinyl</translation>
    </message>
    <message>
        <source>cleaning agent</source>
        <translation>Reinigungsmittel</translation>
    </message>
    <message>
        <source>bleach; detergent; washing-up</source>
        <translation>Bleiche; Waschmittel; Spülmittel</translation>
    </message>
    <message>
        <source>bread</source>
        <translation>Brot</translation>
    </message>
    <message>
        <source>fresh bread; bread crust</source>
        <translation>frisches Brot; Brotkruste</translation>
    </message>
    <message>
        <source>biscuit</source>
        <translation>Keks</translation>
    </message>
    <message>
        <source>dry biscuit</source>
        <translation>trockener Keks</translation>
    </message>
    <message>
        <source>malty</source>
        <translation>malzig</translation>
    </message>
    <message>
        <source>malt; malt sweetness</source>
        <translation>Malz; Malzsüße</translation>
    </message>
    <message>
        <source>raw grain</source>
        <translation>rohes Korn</translation>
    </message>
    <message>
        <source>husk; chaff; grainy</source>
        <translation>Spelze; Spreu; getreidig</translation>
    </message>
    <message>
        <source>wort</source>
        <translation>Würze</translation>
    </message>
    <message>
        <source>sweet wort; raw wort; unfermented wort</source>
        <translation>süße Würze; rohe Würze; unvergorene Würze</translation>
    </message>
    <message>
        <source>nutty</source>
        <translation>nussig</translation>
    </message>
    <message>
        <source>nuts; hazelnut; walnut</source>
        <translation>Nüsse; Haselnuss; Walnuss</translation>
    </message>
    <message>
        <source>hay</source>
        <translation>Heu</translation>
    </message>
    <message>
        <source>straw; dry grass</source>
        <translation>Stroh; trockenes Gras</translation>
    </message>
    <message>
        <source>toast</source>
        <translation>Toast</translation>
    </message>
    <message>
        <source>toasted bread</source>
        <translation>geröstetes Brot</translation>
    </message>
    <message>
        <source>caramel</source>
        <translation>Karamell</translation>
    </message>
    <message>
        <source>toffee; burnt sugar</source>
        <translation>Toffee; angebrannter Zucker</translation>
    </message>
    <message>
        <source>chocolate</source>
        <translation>Schokolade</translation>
    </message>
    <message>
        <source>cocoa</source>
        <translation>Kakao</translation>
    </message>
    <message>
        <source>coffee</source>
        <translation>Kaffee</translation>
    </message>
    <message>
        <source>roasted coffee</source>
        <translation>gerösteter Kaffee</translation>
    </message>
    <message>
        <source>burnt</source>
        <translation>verbrannt</translation>
    </message>
    <message>
        <source>charred; acrid</source>
        <translation>verkohlt; beißend</translation>
    </message>
    <message>
        <source>banana</source>
        <translation>Banane</translation>
    </message>
    <message>
        <source>pear drop</source>
        <translation>Eisbonbon</translation>
    </message>
    <message>
        <source>isoamyl acetate</source>
        <translation>Isoamylacetat</translation>
    </message>
    <message>
        <source>apple and pear</source>
        <translation>Apfel und Birne</translation>
    </message>
    <message>
        <source>ripe apple; ripe pear</source>
        <translation>reifer Apfel; reife Birne</translation>
    </message>
    <message>
        <source>ethyl hexanoate</source>
        <translation>Ethylhexanoat</translation>
    </message>
    <message>
        <source>citrus</source>
        <translation>Zitrus</translation>
    </message>
    <message>
        <source>lemon; orange; lime; grapefruit</source>
        <translation>Zitrone; Orange; Limette; Grapefruit</translation>
    </message>
    <message>
        <source>stone fruit</source>
        <translation>Steinobst</translation>
    </message>
    <message>
        <source>peach; apricot; plum</source>
        <translation>Pfirsich; Aprikose; Pflaume</translation>
    </message>
    <message>
        <source>red berries</source>
        <translation>rote Beeren</translation>
    </message>
    <message>
        <source>strawberry; raspberry; cherry</source>
        <translation>Erdbeere; Himbeere; Kirsche</translation>
    </message>
    <message>
        <source>dark berries</source>
        <translation>dunkle Beeren</translation>
    </message>
    <message>
        <source>blackcurrant; blackberry; bilberry</source>
        <translation>Schwarze Johannisbeere; Brombeere; Heidelbeere</translation>
    </message>
    <message>
        <source>tropical fruit</source>
        <translation>Tropenfrucht</translation>
    </message>
    <message>
        <source>pineapple; mango; passion fruit</source>
        <translation>Ananas; Mango; Passionsfrucht</translation>
    </message>
    <message>
        <source>dried fruit</source>
        <translation>Trockenobst</translation>
    </message>
    <message>
        <source>raisin; fig; prune; date</source>
        <translation>Rosine; Feige; Backpflaume; Dattel</translation>
    </message>
    <message>
        <source>flowers</source>
        <translation>Blumen</translation>
    </message>
    <message>
        <source>floral; blossom; elderflower</source>
        <translation>blumig; Blüte; Holunderblüte</translation>
    </message>
    <message>
        <source>linalool</source>
        <translation>Linalool</translation>
    </message>
    <message>
        <source>rose</source>
        <translation>Rose</translation>
    </message>
    <message>
        <source>rose water</source>
        <translation>Rosenwasser</translation>
    </message>
    <message>
        <source>2-phenylethanol</source>
        <translation>2-Phenylethanol</translation>
    </message>
    <message>
        <source>honey</source>
        <translation>Honig</translation>
    </message>
    <message>
        <source>honeyed</source>
        <translation>honigartig</translation>
    </message>
    <message>
        <source>beeswax</source>
        <translation>Bienenwachs</translation>
    </message>
    <message>
        <source>wax; waxy</source>
        <translation>Wachs; wachsig</translation>
    </message>
    <message>
        <source>grassy</source>
        <translation>grasig</translation>
    </message>
    <message>
        <source>cut grass; green leaf</source>
        <translation>geschnittenes Gras; grünes Blatt</translation>
    </message>
    <message>
        <source>cis-3-hexenol</source>
        <translation>cis-3-Hexenol</translation>
    </message>
    <message>
        <source>resin</source>
        <translation>Harz</translation>
    </message>
    <message>
        <source>pine; resinous</source>
        <translation>Kiefer; harzig</translation>
    </message>
    <message>
        <source>herbal</source>
        <translation>kräutrig</translation>
    </message>
    <message>
        <source>herbs; mint; tea</source>
        <translation>Kräuter; Minze; Tee</translation>
    </message>
    <message>
        <source>green pepper</source>
        <translation>grüne Paprika</translation>
    </message>
    <message>
        <source>bell pepper; leafy</source>
        <translation>Gemüsepaprika; blättrig</translation>
    </message>
    <message>
        <source>methoxypyrazines</source>
        <translation>Methoxypyrazine</translation>
    </message>
    <message>
        <source>stalky</source>
        <translation>stielig</translation>
    </message>
    <message>
        <source>stems; twigs</source>
        <translation>Stiele; Zweige</translation>
    </message>
    <message>
        <source>clove</source>
        <translation>Nelke</translation>
    </message>
    <message>
        <source>cloves</source>
        <translation>Gewürznelken</translation>
    </message>
    <message>
        <source>4-vinylguaiacol</source>
        <translation>4-Vinylguajacol</translation>
    </message>
    <message>
        <source>pepper</source>
        <translation>Pfeffer</translation>
    </message>
    <message>
        <source>black pepper; white pepper</source>
        <translation>schwarzer Pfeffer; weißer Pfeffer</translation>
    </message>
    <message>
        <source>aniseed</source>
        <translation>Anis</translation>
    </message>
    <message>
        <source>liquorice; fennel</source>
        <translation>Lakritz; Fenchel</translation>
    </message>
    <message>
        <source>warm spice</source>
        <translation>warmes Gewürz</translation>
    </message>
    <message>
        <source>cinnamon; nutmeg; ginger</source>
        <translation>Zimt; Muskat; Ingwer</translation>
    </message>
    <message>
        <source>vanilla</source>
        <translation>Vanille</translation>
    </message>
    <message>
        <source>vanillin</source>
        <translation>Vanillin</translation>
    </message>
    <message>
        <source>coconut</source>
        <translation>Kokos</translation>
    </message>
    <message>
        <source>oak lactone</source>
        <translation>Eichenlacton</translation>
    </message>
    <message>
        <source>raw wood</source>
        <translation>rohes Holz</translation>
    </message>
    <message>
        <source>sawdust; plank</source>
        <translation>Sägemehl; Brett</translation>
    </message>
    <message>
        <source>smoke</source>
        <translation>Rauch</translation>
    </message>
    <message>
        <source>smoky; bonfire</source>
        <translation>rauchig; Lagerfeuer</translation>
    </message>
    <message>
        <source>guaiacol, 4-ethylphenol</source>
        <translation>Guajacol, 4-Ethylphenol</translation>
    </message>
    <message>
        <source>sweet</source>
        <translation>süß</translation>
    </message>
    <message>
        <source>sugary</source>
        <translation>zuckrig</translation>
    </message>
    <message>
        <source>cloying</source>
        <translation>pappsüß</translation>
    </message>
    <message>
        <source>sickly sweet; syrupy</source>
        <translation>klebrig süß; sirupartig</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>bone dry; lean</source>
        <translation>knochentrocken; karg</translation>
    </message>
    <message>
        <source>sweetener</source>
        <translation>Süßstoff</translation>
    </message>
    <message>
        <source>artificial sweetness</source>
        <translation>künstliche Süße</translation>
    </message>
    <message>
        <source>sour</source>
        <translation>sauer</translation>
    </message>
    <message>
        <source>tart; acidic</source>
        <translation>säuerlich; säurebetont</translation>
    </message>
    <message>
        <source>sour milk</source>
        <translation>saure Milch</translation>
    </message>
    <message>
        <source>yoghurt; lactic</source>
        <translation>Joghurt; milchsauer</translation>
    </message>
    <message>
        <source>lactic acid</source>
        <translation>Milchsäure</translation>
    </message>
    <message>
        <source>vinegar</source>
        <translation>Essig</translation>
    </message>
    <message>
        <source>acetic; vinegary</source>
        <translation>essigsauer; essigstichig</translation>
    </message>
    <message>
        <source>acetic acid</source>
        <translation>Essigsäure</translation>
    </message>
    <message>
        <source>fruit acid</source>
        <translation>Fruchtsäure</translation>
    </message>
    <message>
        <source>malic; unripe fruit</source>
        <translation>apfelsauer; unreifes Obst</translation>
    </message>
    <message>
        <source>malic acid</source>
        <translation>Äpfelsäure</translation>
    </message>
    <message>
        <source>flabby</source>
        <translation>schal im Mund</translation>
    </message>
    <message>
        <source>dull acid; lacking acid</source>
        <translation>müde Säure; ohne Säure</translation>
    </message>
    <message>
        <source>bitter</source>
        <translation>bitter</translation>
    </message>
    <message>
        <source>hop bitterness</source>
        <translation>Hopfenbittere</translation>
    </message>
    <message>
        <source>iso-alpha acids</source>
        <translation>Iso-Alphasäuren</translation>
    </message>
    <message>
        <source>coarse bitterness</source>
        <translation>grobe Bittere</translation>
    </message>
    <message>
        <source>rough bitterness; lingering bitterness</source>
        <translation>raue Bittere; nachhängende Bittere</translation>
    </message>
    <message>
        <source>pithy</source>
        <translation>schalig</translation>
    </message>
    <message>
        <source>peel; pith</source>
        <translation>Schale; weiße Haut der Zitrusschale</translation>
    </message>
    <message>
        <source>salty</source>
        <translation>salzig</translation>
    </message>
    <message>
        <source>salt; briny</source>
        <translation>Salz; Lake</translation>
    </message>
    <message>
        <source>mineral</source>
        <translation>mineralisch</translation>
    </message>
    <message>
        <source>chalky; wet stone</source>
        <translation>kreidig; nasser Stein</translation>
    </message>
    <message>
        <source>thin</source>
        <translation>dünn</translation>
    </message>
    <message>
        <source>watery; weak</source>
        <translation>wässrig; schwach</translation>
    </message>
    <message>
        <source>full</source>
        <translation>voll</translation>
    </message>
    <message>
        <source>round; thick</source>
        <translation>rund; dicht</translation>
    </message>
    <message>
        <source>creamy</source>
        <translation>cremig</translation>
    </message>
    <message>
        <source>silky</source>
        <translation>seidig</translation>
    </message>
    <message>
        <source>astringent</source>
        <translation>adstringierend</translation>
    </message>
    <message>
        <source>drying; puckering; tannic</source>
        <translation>trocknend; zusammenziehend; gerbend</translation>
    </message>
    <message>
        <source>tannins</source>
        <translation>Gerbstoffe</translation>
    </message>
    <message>
        <source>warming</source>
        <translation>wärmend</translation>
    </message>
    <message>
        <source>ethanol</source>
        <translation>Ethanol</translation>
    </message>
    <message>
        <source>hot alcohol</source>
        <translation>scharfer Alkohol</translation>
    </message>
    <message>
        <source>hot; harsh; burning; fusel</source>
        <translation>scharf; harsch; brennend; fuselig</translation>
    </message>
    <message>
        <source>higher alcohols</source>
        <translation>höhere Alkohole</translation>
    </message>
    <message>
        <source>prickly</source>
        <translation>prickelnd</translation>
    </message>
    <message>
        <source>fizzy; sharp bubbles</source>
        <translation>spritzig; scharfe Bläschen</translation>
    </message>
    <message>
        <source>carbon dioxide</source>
        <translation>Kohlendioxid</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>abgestanden</translation>
    </message>
    <message>
        <source>no fizz; lost its fizz</source>
        <translation>ohne Kohlensäure; Kohlensäure verloren</translation>
    </message>
    <message>
        <source>gushing</source>
        <translation>überschäumend</translation>
    </message>
    <message>
        <source>gusher; foams over</source>
        <translation>Überschäumer; läuft über</translation>
    </message>
    <message>
        <source>yeasty</source>
        <translation>hefig</translation>
    </message>
    <message>
        <source>fresh yeast; dough</source>
        <translation>frische Hefe; Teig</translation>
    </message>
    <message>
        <source>meaty</source>
        <translation>fleischig</translation>
    </message>
    <message>
        <source>meat broth; soy sauce</source>
        <translation>Fleischbrühe; Sojasoße</translation>
    </message>
    <message>
        <source>butter</source>
        <translation>Butter</translation>
    </message>
    <message>
        <source>buttery; butterscotch; diacetyl</source>
        <translation>buttrig; Butterkaramell; Diacetyl</translation>
    </message>
    <message>
        <source>diacetyl</source>
        <translation>Diacetyl</translation>
    </message>
    <message>
        <source>green apple</source>
        <translation>grüner Apfel</translation>
    </message>
    <message>
        <source>unripe apple; acetaldehyde</source>
        <translation>unreifer Apfel; Acetaldehyd</translation>
    </message>
    <message>
        <source>nail varnish</source>
        <translation>Nagellack</translation>
    </message>
    <message>
        <source>solvent; glue; ethyl acetate</source>
        <translation>Lösungsmittel; Klebstoff; Ethylacetat</translation>
    </message>
    <message>
        <source>ethyl acetate</source>
        <translation>Ethylacetat</translation>
    </message>
    <message>
        <source>soapy</source>
        <translation>seifig</translation>
    </message>
    <message>
        <source>soap</source>
        <translation>Seife</translation>
    </message>
    <message>
        <source>bubble gum</source>
        <translation>Kaugummi</translation>
    </message>
    <message>
        <source>{what}: the batch minus its cold twin, by age; in brackets how many people</source>
        <translation>{what}: der Ansatz minus sein kalter Zwilling, nach Alter; in Klammern, wie viele Leute</translation>
    </message>
    <message>
        <source>less than the twin</source>
        <translation>weniger als der Zwilling</translation>
    </message>
    <message>
        <source>more than the twin</source>
        <translation>mehr als der Zwilling</translation>
    </message>
    <message>
        <source>{what}: the batch minus the bought drink, by age; in brackets how many people</source>
        <translation>{what}: der Ansatz minus das gekaufte Getränk, nach Alter; in Klammern, wie viele Leute</translation>
    </message>
    <message>
        <source>less than the bought one</source>
        <translation>weniger als das gekaufte</translation>
    </message>
    <message>
        <source>more than the bought one</source>
        <translation>mehr als das gekaufte</translation>
    </message>
    <message>
        <source>{what}: the batch, by age; in brackets how many people</source>
        <translation>{what}: der Ansatz, nach Alter; in Klammern, wie viele Leute</translation>
    </message>
    <message>
        <source>{age} ({people})</source>
        <translation>{age} ({people})</translation>
    </message>
    <message>
        <source>At {age}: {value} {of}, {people}.</source>
        <translation>Mit {age}: {value} {of}, {people}.</translation>
    </message>
    <message>
        <source>At {age}: {value} {of} ({low} to {high}), {people}.</source>
        <translation>Mit {age}: {value} {of} ({low} bis {high}), {people}.</translation>
    </message>
    <message>
        <source>{what}: who ticked it of the batch, of those who were asked, by age</source>
        <translation>{what}: wer es beim Ansatz angekreuzt hat, unter den Gefragten, nach Alter</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>niemand</translation>
    </message>
    <message>
        <source>everybody</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>{age}, {count}</source>
        <translation>{age}, {count}</translation>
    </message>
    <message>
        <source>{what} by age, as it was noted</source>
        <translation>{what} nach Alter, wie es notiert wurde</translation>
    </message>
    <message>
        <source>At {age}: {level}</source>
        <translation>Mit {age}: {level}</translation>
    </message>
    <message>
        <source>{sittings} sittings × ({each} + {each} cold) + {reserve} in reserve = {needed}</source>
        <translation>{sittings} Termine × ({each} + {each} kalt) + {reserve} Reserve = {needed}</translation>
    </message>
    <message>
        <source>{sittings} sittings × {each} + {reserve} in reserve = {needed}</source>
        <translation>{sittings} Termine × {each} + {reserve} Reserve = {needed}</translation>
    </message>
    <message>
        <source>{sum}; you have {have}.</source>
        <translation>{sum}; du hast {have}.</translation>
    </message>
    <message>
        <source>{sum}.</source>
        <translation>{sum}.</translation>
    </message>
    <message>
        <source>And {bottles} of the bought drink.</source>
        <translation>Und {bottles} vom gekauften Getränk.</translation>
    </message>
    <message>
        <source>With {people} who come both times, a change in liking of about {change} of 9 would come out 8 times in 10; a smaller one may be missed.</source>
        <translation>Bei {people}, die beide Male kommen, käme eine Änderung im Gefallen von etwa {change} von 9 in 8 von 10 Fällen heraus; eine kleinere kann übersehen werden.</translation>
    </message>
    <message>
        <source>Without a kept-back bottle a changed drink and a changed day cannot be told apart. Four ages beside a cold twin say more than six without.</source>
        <translation>Ohne aufgehobene Flasche lassen sich ein verändertes Getränk und ein veränderter Tag nicht auseinanderhalten. Vier Alter neben einem kalten Zwilling sagen mehr als sechs ohne.</translation>
    </message>
    <message>
        <source>A bought drink ages too, and its age is seldom known. A cold twin of your own is the better control.</source>
        <translation>Auch ein gekauftes Getränk altert, und sein Alter kennt man selten. Ein eigener kalter Zwilling ist die bessere Kontrolle.</translation>
    </message>
    <message>
        <source>Fewer than three sittings are dots without a line.</source>
        <translation>Weniger als drei Termine sind Punkte ohne Linie.</translation>
    </message>
    <message>
        <source>Fewer than six sittings cannot say when it was liked best.</source>
        <translation>Weniger als sechs Termine können nicht sagen, wann es am besten gefiel.</translation>
    </message>
    <message>
        <source>Fewer than three people give no range and no verdict.</source>
        <translation>Weniger als drei Leute ergeben keine Spanne und kein Urteil.</translation>
    </message>
    <message>
        <source>With less: {sum}, at {ages}.</source>
        <translation>Mit weniger: {sum}, bei {ages}.</translation>
    </message>
    <message>
        <source>These bottles are too few for a series. Taste them once beside a reference instead.</source>
        <translation>Diese Flaschen sind zu wenige für eine Reihe. Verkoste sie stattdessen einmal neben einer Referenz.</translation>
    </message>
    <message>
        <source>Never poured together, nor beside a shared bottle: not comparable.</source>
        <translation>Nie zusammen eingeschenkt, auch nicht neben einer gemeinsamen Flasche: nicht vergleichbar.</translation>
    </message>
    <message>
        <source>Poured together on {days}: {people} had both.</source>
        <translation>Zusammen eingeschenkt am {days}: {people} hatten beide.</translation>
    </message>
    <message>
        <source>Never poured together, but each beside {bottle} ({base} on {first}, {other} on {second}). What is compared is each batch minus that bottle, by the {people} who sat at both. That is the weaker way: two evenings and the bottle&apos;s own aging stand between them.</source>
        <translation>Nie zusammen eingeschenkt, aber jedes neben {bottle} ({base} am {first}, {other} am {second}). Verglichen wird jeder Ansatz minus diese Flasche, von den {people}, die bei beiden saßen. Das ist der schwächere Weg: zwei Abende und das Altern der Flasche selbst liegen dazwischen.</translation>
    </message>
    <message>
        <source>The day of bottling of one of them is not known, so neither is its age at tasting.</source>
        <translation>Von einem der beiden ist der Tag der Abfüllung nicht bekannt, also auch nicht das Alter beim Verkosten.</translation>
    </message>
    <message>
        <source>At these tastings {base} was {baseAge} old and {other} was {otherAge} old on average: what moved may be age.</source>
        <translation>Bei diesen Verkostungen war {base} im Mittel {baseAge} alt und {other} {otherAge}: was sich bewegte, kann am Alter liegen.</translation>
    </message>
    <message>
        <source>At these tastings {base} was {baseAge} old and {other} was {otherAge} old on average.</source>
        <translation>Bei diesen Verkostungen war {base} im Mittel {baseAge} alt und {other} {otherAge}.</translation>
    </message>
    <message>
        <source>At tasting {base} was {baseAge} old and {other} was {otherAge} old: what moved may be age.</source>
        <translation>Beim Verkosten war {base} {baseAge} alt und {other} {otherAge}: was sich bewegte, kann am Alter liegen.</translation>
    </message>
    <message>
        <source>At tasting {base} was {baseAge} old and {other} was {otherAge} old.</source>
        <translation>Beim Verkosten war {base} {baseAge} alt und {other} {otherAge}.</translation>
    </message>
    <message>
        <source>To take age out, pour each at one age beside one bought lot. {other} is as old as {base} was on {day}.</source>
        <translation>Um das Alter herauszunehmen, schenk jeden im selben Alter neben einer gekauften Charge ein. {other} ist am {day} so alt, wie {base} es war.</translation>
    </message>
    <message>
        <source>To take age out, pour the next batches at one age, each beside one bought lot.</source>
        <translation>Um das Alter herauszunehmen, schenk die nächsten Ansätze im selben Alter ein, jeden neben einer gekauften Charge.</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} bis {high}</translation>
    </message>
    <message>
        <source>Nothing is written down as changed between them. Write it as a note of the batch.</source>
        <translation>Zwischen ihnen ist keine Änderung aufgeschrieben. Schreib sie als Notiz zum Ansatz.</translation>
    </message>
    <message>
        <source>One thing was changed: {what}. What moved may come of it, or of what nobody wrote down.</source>
        <translation>Eine Sache wurde geändert: {what}. Was sich bewegte, kann daher kommen, oder von etwas, das niemand aufgeschrieben hat.</translation>
    </message>
    <message>
        <source>{n} things changed together. This cannot say which did it. They were: {what}.</source>
        <translation>{n} Sachen wurden zusammen geändert. Das hier kann nicht sagen, welche es war. Es waren: {what}.</translation>
    </message>
    <message>
        <source>the good one</source>
        <translation>der gute</translation>
    </message>
    <message>
        <source>{what}: {other} less than {base}, by {by} {of} ({range}), {people}.</source>
        <translation>{what}: {other} weniger als {base}, um {by} {of} ({range}), {people}.</translation>
    </message>
    <message>
        <source>{what}: {other} more than {base}, by {by} {of} ({range}), {people}.</source>
        <translation>{what}: {other} mehr als {base}, um {by} {of} ({range}), {people}.</translation>
    </message>
    <message>
        <source>{what}: {other} within your limit of {base} (no more than {limit}; here {here}), {people}.</source>
        <translation>{what}: {other} innerhalb deiner Grenze von {base} (nicht mehr als {limit}; hier {here}), {people}.</translation>
    </message>
    <message>
        <source>{what}: cannot tell yet; anything from {range} {of} fits, {people}.</source>
        <translation>{what}: noch nicht zu sagen; alles von {range} {of} passt dazu, {people}.</translation>
    </message>
    <message>
        <source>{what}: cannot tell yet; fewer than three people had both.</source>
        <translation>{what}: noch nicht zu sagen; weniger als drei Leute hatten beide.</translation>
    </message>
    <message>
        <source>{what}: cannot tell yet; everybody gave one gap, so there is nothing to judge it by.</source>
        <translation>{what}: noch nicht zu sagen; alle gaben denselben Abstand, also gibt es nichts, woran man ihn messen könnte.</translation>
    </message>
    <message>
        <source>{title}, points {of}, each minus the shared bottle</source>
        <translation>{title}, Punkte {of}, jeweils minus die gemeinsame Flasche</translation>
    </message>
    <message>
        <source>{title}, points {of}</source>
        <translation>{title}, Punkte {of}</translation>
    </message>
    <message>
        <source>{other} beside the good one, {base}</source>
        <translation>{other} neben dem guten, {base}</translation>
    </message>
    <message>
        <source>{other} beside {base}</source>
        <translation>{other} neben {base}</translation>
    </message>
    <message>
        <source>Cannot tell yet in {what}.</source>
        <translation>Noch nicht zu sagen bei {what}.</translation>
    </message>
    <message>
        <source>the verdict would change</source>
        <translation>wäre das Urteil ein anderes</translation>
    </message>
    <message>
        <source>the verdict stays</source>
        <translation>bliebe das Urteil</translation>
    </message>
    <message>
        <source>In 1 round you had no preference; it is not in the count. Split half and half it would be {first} to {second}, and {then}.</source>
        <translation>In 1 Runde hattest du keine Vorliebe; sie zählt nicht mit. Hälftig geteilt wäre es {first} zu {second}, und dann {then}.</translation>
    </message>
    <message>
        <source>In {n} rounds you had no preference; they are not in the count. Split half and half it would be {first} to {second}, and {then}.</source>
        <translation>In {n} Runden hattest du keine Vorliebe; sie zählen nicht mit. Hälftig geteilt wäre es {first} zu {second}, und dann {then}.</translation>
    </message>
    <message>
        <source>1 had no preference and is not in the count. Split half and half it would be {first} to {second}, and {then}.</source>
        <translation>1 Person hatte keine Vorliebe und zählt nicht mit. Hälftig geteilt wäre es {first} zu {second}, und dann {then}.</translation>
    </message>
    <message>
        <source>{n} had no preference and are not in the count. Split half and half it would be {first} to {second}, and {then}.</source>
        <translation>{n} hatten keine Vorliebe und zählen nicht mit. Hälftig geteilt wäre es {first} zu {second}, und dann {then}.</translation>
    </message>
    <message>
        <source>1 liked the one as often as the other over the rounds: no vote.</source>
        <translation>1 Person mochte über die Runden das eine so oft wie das andere: keine Stimme.</translation>
    </message>
    <message>
        <source>{n} liked the one as often as the other over the rounds: no vote.</source>
        <translation>{n} mochten über die Runden das eine so oft wie das andere: keine Stimme.</translation>
    </message>
    <message>
        <source>Steadiness: {k} of 1 stuck to one answer over the rounds.</source>
        <translation>Beständigkeit: {k} von 1 blieb über die Runden bei einer Antwort.</translation>
    </message>
    <message>
        <source>Steadiness: {k} of {n} stuck to one answer over the rounds.</source>
        <translation>Beständigkeit: {k} von {n} blieben über die Runden bei einer Antwort.</translation>
    </message>
    <message>
        <source>Looked at afterwards: where you were right, you liked {one} better {first} to {second}.</source>
        <translation>Im Nachhinein angesehen: wo du richtig lagst, gefiel dir {one} besser, {first} zu {second}.</translation>
    </message>
    <message>
        <source>Looked at afterwards: among those who were right, {first} liked {one} better and {second} {other}.</source>
        <translation>Im Nachhinein angesehen: unter denen, die richtig lagen, gefiel {first} Leuten {one} besser und {second} Leuten {other}.</translation>
    </message>
    <message>
        <source>So few cannot show a preference, whatever they say.</source>
        <translation>So wenige können keine Vorliebe zeigen, was immer sie sagen.</translation>
    </message>
    <message>
        <source>By chance alone, that or clearer, either way, comes {often}: a hint at a preference, to be asked by itself.</source>
        <translation>Durch bloßen Zufall kommt das oder etwas Deutlicheres, in die eine oder andere Richtung, {often} vor: ein Hinweis auf eine Vorliebe, nach der eigens zu fragen wäre.</translation>
    </message>
    <message>
        <source>By chance alone, that or clearer, either way, comes {often}: no preference shown.</source>
        <translation>Durch bloßen Zufall kommt das oder etwas Deutlicheres, in die eine oder andere Richtung, {often} vor: keine Vorliebe gezeigt.</translation>
    </message>
    <message>
        <source>Of those who were right, 1 had no preference.</source>
        <translation>Von denen, die richtig lagen, hatte 1 keine Vorliebe.</translation>
    </message>
    <message>
        <source>Of those who were right, {n} had no preference.</source>
        <translation>Von denen, die richtig lagen, hatten {n} keine Vorliebe.</translation>
    </message>
    <message>
        <source>Of those who can tell, {range} like {one} better. Some who chose may have guessed; that is counted in, nobody is left out.</source>
        <translation>Unter denen, die es merken, mögen {range} {one} lieber. Manche, die gewählt haben, haben vielleicht geraten; das ist eingerechnet, niemand wird ausgelassen.</translation>
    </message>
    <message>
        <source>“Different” was said of cups that lay about {c} or more apart (tau, in the measure of d′).</source>
        <translation>„Verschieden“ wurde von Bechern gesagt, die etwa {c} oder mehr auseinanderlagen (Tau, im Maß von d′).</translation>
    </message>
    <message>
        <source>Cups were readily taken for the marked one (criterion {c}; 0 is no lean).</source>
        <translation>Becher wurden bereitwillig für den markierten gehalten (Kriterium {c}; 0 ist keine Neigung).</translation>
    </message>
    <message>
        <source>Cups were seldom taken for the marked one (criterion {c}; 0 is no lean).</source>
        <translation>Becher wurden selten für den markierten gehalten (Kriterium {c}; 0 ist keine Neigung).</translation>
    </message>
    <message>
        <source>No strong lean to one answer (criterion {c}; 0 is none).</source>
        <translation>Keine starke Neigung zu einer Antwort (Kriterium {c}; 0 ist keine).</translation>
    </message>
    <message>
        <source>Looked at afterwards, with how sure they were: R-index {r}, from {low} to {high}, where 0.50 is guessing and 1.00 a clean split.</source>
        <translation>Im Nachhinein angesehen, mit der angegebenen Sicherheit: R-Index {r}, von {low} bis {high}; 0,50 ist Raten, 1,00 eine saubere Trennung.</translation>
    </message>
    <message>
        <source>{what}, {level}</source>
        <translation>{what}, {level}</translation>
    </message>
    <message>
        <source>As it was noted with the label known: no blind result.</source>
        <translation>So notiert, das Etikett im Blick: kein blindes Ergebnis.</translation>
    </message>
    <message>
        <source>It was not asked about in these sittings: put the word on the next sheet.</source>
        <translation>Danach wurde bei diesen Terminen nicht gefragt: setz das Wort auf den nächsten Bogen.</translation>
    </message>
    <message>
        <source>Done against it: {deeds}. What came after it may have come of it, or of time.</source>
        <translation>Dagegen getan: {deeds}. Was danach kam, kann daher kommen oder von der Zeit.</translation>
    </message>
    <message>
        <source>age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>control</source>
        <translation>Kontrolle</translation>
    </message>
    <message>
        <source>batch, by those known to notice it</source>
        <translation>Ansatz, von denen, die es nachweislich bemerken</translation>
    </message>
    <message>
        <source>How many ticked it, of those who were asked. Counts are shown, not judged.</source>
        <translation>Wie viele es angekreuzt haben, unter den Gefragten. Die Zahlen werden gezeigt, nicht beurteilt.</translation>
    </message>
    <message>
        <source>what was noted</source>
        <translation>was notiert wurde</translation>
    </message>
    <message>
        <source>{day}: {what}</source>
        <translation>{day}: {what}</translation>
    </message>
    <message>
        <source>{day}: {what}, against {word}</source>
        <translation>{day}: {what}, gegen {word}</translation>
    </message>
    <message>
        <source>People tasted several times each, so the verdict speaks of this table, not of people at large.</source>
        <translation>Alle haben mehrmals verkostet, deshalb spricht das Urteil von diesem Tisch, nicht von Leuten im Allgemeinen.</translation>
    </message>
    <message>
        <source>Fewer answers count than were planned.</source>
        <translation>Es zählen weniger Antworten als geplant.</translation>
    </message>
    <message>
        <source>This was a small tasting: more often than not it would have missed a difference that {what}.</source>
        <translation>Das war eine kleine Verkostung: einen Unterschied, der {what} ist, hätte sie öfter verpasst als gefunden.</translation>
    </message>
    <message>
        <source>A third or more of the right answers came from look or fizz. (The third is our own threshold.)</source>
        <translation>Ein Drittel der richtigen Antworten oder mehr kam vom Aussehen oder vom Prickeln. (Das Drittel ist unsere eigene Schwelle.)</translation>
    </message>
    <message>
        <source>Looked at afterwards: one place was preferred, whatever stood there. This is no part of the verdict.</source>
        <translation>Im Nachhinein angesehen: ein Platz wurde bevorzugt, egal, was dort stand. Das gehört nicht zum Urteil.</translation>
    </message>
    <message>
        <source>Looked at afterwards: the wrong answers favoured one place among the cups. This is no part of the verdict.</source>
        <translation>Im Nachhinein angesehen: die falschen Antworten bevorzugten einen Platz unter den Bechern. Das gehört nicht zum Urteil.</translation>
    </message>
    <message>
        <source>Plan or key are not what was sealed. Nothing below can be trusted as a blind result, and this stays with the session for good.</source>
        <translation>Plan oder Schlüssel sind nicht das, was versiegelt wurde. Nichts unten ist als blindes Ergebnis zu trauen, und das bleibt für immer bei dieser Verkostung.</translation>
    </message>
    <message>
        <source>This is a demo: drinks, people and answers are invented.</source>
        <translation>Das ist eine Demo: Getränke, Leute und Antworten sind erfunden.</translation>
    </message>
    <message>
        <source>This session was read from a file, not tasted here.</source>
        <translation>Diese Verkostung wurde aus einer Datei gelesen, nicht hier verkostet.</translation>
    </message>
    <message>
        <source>Written before anything was poured, for this outcome: {text}</source>
        <translation>Vor dem Einschenken für diesen Ausgang aufgeschrieben: {text}</translation>
    </message>
    <message>
        <source>{drink}, {lot}</source>
        <translation>{drink}, {lot}</translation>
    </message>
    <message>
        <source>Plan or key are not what was sealed.</source>
        <translation>Plan oder Schlüssel sind nicht das, was versiegelt wurde.</translation>
    </message>
    <message>
        <source>1 cup held another drink than the sheet says. It is counted as it was poured.</source>
        <translation>1 Becher enthielt ein anderes Getränk, als das Blatt sagt. Er zählt, wie eingeschenkt wurde.</translation>
    </message>
    <message>
        <source>{n} cups held another drink than the sheet says. They are counted as they were poured.</source>
        <translation>{n} Becher enthielten ein anderes Getränk, als das Blatt sagt. Sie zählen, wie eingeschenkt wurde.</translation>
    </message>
    <message>
        <source>Of 1 cup the pourer was not sure.</source>
        <translation>Bei 1 Becher war man sich beim Einschenken nicht sicher.</translation>
    </message>
    <message>
        <source>Of {n} cups the pourer was not sure.</source>
        <translation>Bei {n} Bechern war man sich beim Einschenken nicht sicher.</translation>
    </message>
    <message>
        <source>1 cup was spilled and poured again under a spare code.</source>
        <translation>1 Becher wurde verschüttet und unter einem Ersatzcode neu eingeschenkt.</translation>
    </message>
    <message>
        <source>{n} cups were spilled and poured again under spare codes.</source>
        <translation>{n} Becher wurden verschüttet und unter Ersatzcodes neu eingeschenkt.</translation>
    </message>
    <message>
        <source>1 flight was set aside and does not count.</source>
        <translation>1 Satz wurde beiseitegestellt und zählt nicht.</translation>
    </message>
    <message>
        <source>{n} flights were set aside and do not count.</source>
        <translation>{n} Sätze wurden beiseitegestellt und zählen nicht.</translation>
    </message>
    <message>
        <source>1 answer is missing and was not filled in.</source>
        <translation>1 Antwort fehlt und wurde nicht ergänzt.</translation>
    </message>
    <message>
        <source>{n} answers are missing and were not filled in.</source>
        <translation>{n} Antworten fehlen und wurden nicht ergänzt.</translation>
    </message>
    <message>
        <source>1 person came late and took a spare place.</source>
        <translation>1 Person kam spät und nahm einen Reserveplatz.</translation>
    </message>
    <message>
        <source>{n} people came late and took spare places.</source>
        <translation>{n} Leute kamen spät und nahmen Reserveplätze.</translation>
    </message>
    <message>
        <source>1 person stopped before the end.</source>
        <translation>1 Person hörte vor dem Ende auf.</translation>
    </message>
    <message>
        <source>{n} people stopped before the end.</source>
        <translation>{n} Leute hörten vor dem Ende auf.</translation>
    </message>
    <message>
        <source>Once something was said aloud.</source>
        <translation>Einmal wurde etwas laut gesagt.</translation>
    </message>
    <message>
        <source>{n} times something was said aloud.</source>
        <translation>{n}-mal wurde etwas laut gesagt.</translation>
    </message>
    <message>
        <source>What 1 person left here was destroyed at their wish, and everything was worked out again.</source>
        <translation>Was 1 Person hier hinterlassen hat, wurde auf ihren Wunsch vernichtet, und alles wurde neu ausgerechnet.</translation>
    </message>
    <message>
        <source>What {n} people left here was destroyed at their wish, and everything was worked out again.</source>
        <translation>Was {n} Leute hier hinterlassen haben, wurde auf ihren Wunsch vernichtet, und alles wurde neu ausgerechnet.</translation>
    </message>
    <message>
        <source>{one} beside {other}</source>
        <translation>{one} neben {other}</translation>
    </message>
    <message>
        <source>Decided: {text}</source>
        <translation>Beschlossen: {text}</translation>
    </message>
    <message>
        <source>You score about as high as the others do for the same cups.</source>
        <translation>Du vergibst für dieselben Becher etwa so viele Punkte wie die anderen.</translation>
    </message>
    <message>
        <source>You score {raw} points higher than the others do for the same cups; {shrunk} once it is allowed for how little is known. That is a way of using the scale, and it does no harm.</source>
        <translation>Du vergibst für dieselben Becher {raw} Punkte mehr als die anderen; {shrunk}, wenn berücksichtigt ist, wie wenig bekannt ist. Das ist eine Art, die Skala zu nutzen, und schadet nicht.</translation>
    </message>
    <message>
        <source>You score {raw} points lower than the others do for the same cups; {shrunk} once it is allowed for how little is known. That is a way of using the scale, and it does no harm.</source>
        <translation>Du vergibst für dieselben Becher {raw} Punkte weniger als die anderen; {shrunk}, wenn berücksichtigt ist, wie wenig bekannt ist. Das ist eine Art, die Skala zu nutzen, und schadet nicht.</translation>
    </message>
    <message>
        <source>From drink to drink your scores spread by {raw} points (standard deviation); {shrunk} once it is allowed for how little is known.</source>
        <translation>Von Getränk zu Getränk streuen deine Punkte um {raw} (Standardabweichung); {shrunk}, wenn berücksichtigt ist, wie wenig bekannt ist.</translation>
    </message>
    <message>
        <source>From drink to drink your scores spread by {raw} points (standard deviation), those of the others by {others}; yours by {shrunk} once it is allowed for how little is known.</source>
        <translation>Von Getränk zu Getränk streuen deine Punkte um {raw} (Standardabweichung), die der anderen um {others}; deine um {shrunk}, wenn berücksichtigt ist, wie wenig bekannt ist.</translation>
    </message>
    <message>
        <source>How far you and the others like the same drinks better: too little known; it takes four drinks that do not all get one score.</source>
        <translation>Wie weit du und die anderen dieselben Getränke lieber mögt: zu wenig bekannt; es braucht vier Getränke, die nicht alle dieselbe Punktzahl haben.</translation>
    </message>
    <message>
        <source>You mostly like the same drinks better as the others do: correlation {raw}, {shrunk} once it is allowed for how little is known. Where you do not, nobody is wrong.</source>
        <translation>Du magst meist dieselben Getränke lieber wie die anderen: Korrelation {raw}, {shrunk}, wenn berücksichtigt ist, wie wenig bekannt ist. Wo nicht, liegt niemand falsch.</translation>
    </message>
    <message>
        <source>You partly like the same drinks better as the others do: correlation {raw}, {shrunk} once it is allowed for how little is known. Where you do not, nobody is wrong.</source>
        <translation>Du magst zum Teil dieselben Getränke lieber wie die anderen: Korrelation {raw}, {shrunk}, wenn berücksichtigt ist, wie wenig bekannt ist. Wo nicht, liegt niemand falsch.</translation>
    </message>
    <message>
        <source>Your liking goes its own way beside that of the others: correlation {raw}, {shrunk} once it is allowed for how little is known. Nobody is wrong about what they like, and a voice of its own is worth hearing.</source>
        <translation>Dein Geschmack geht neben dem der anderen eigene Wege: Korrelation {raw}, {shrunk}, wenn berücksichtigt ist, wie wenig bekannt ist. Niemand irrt sich darin, was er mag, und eine eigene Stimme ist hörenswert.</translation>
    </message>
    <message>
        <source>You have become steadier: {before} points in the earlier tastings, {after} in the later ones, {low} to {high} times as much.</source>
        <translation>Du bist beständiger geworden: {before} Punkte in den früheren Verkostungen, {after} in den späteren, das {low}- bis {high}fache.</translation>
    </message>
    <message>
        <source>Lately they scattered more: {before} points in the earlier tastings, {after} in the later ones, {low} to {high} times as much. Stronger or stranger drinks do that too.</source>
        <translation>Zuletzt streute es mehr: {before} Punkte in den früheren Verkostungen, {after} in den späteren, das {low}- bis {high}fache. Stärkere oder ungewohnte Getränke bewirken das auch.</translation>
    </message>
    <message>
        <source>No change shown: {before} points in the earlier tastings, {after} in the later ones; anything from {low} to {high} times as much fits.</source>
        <translation>Keine Änderung gezeigt: {before} Punkte in den früheren Verkostungen, {after} in den späteren; alles vom {low}- bis zum {high}fachen passt dazu.</translation>
    </message>
    <message>
        <source>Scores: too little known. It takes {least} score sheets beside two others or more, so far {n}.</source>
        <translation>Punkte: zu wenig bekannt. Es braucht {least} Bewertungsbögen neben zwei anderen oder mehr, bisher {n}.</translation>
    </message>
    <message>
        <source>From {drinks} drinks over {n} score sheets, overall liking on nine points:</source>
        <translation>Aus {drinks} Getränken auf {n} Bewertungsbögen, Gesamteindruck auf neun Punkten:</translation>
    </message>
    <message>
        <source>When the same drink came twice, unknown to you, your scores scattered by {sd} points (standard deviation, 1 repeat).</source>
        <translation>Wenn dasselbe Getränk zweimal kam, ohne dass du es wusstest, streuten deine Punkte um {sd} (Standardabweichung, 1 Wiederholung).</translation>
    </message>
    <message>
        <source>When the same drink came twice, unknown to you, your scores scattered by {sd} points (standard deviation, {n} repeats).</source>
        <translation>Wenn dasselbe Getränk zweimal kam, ohne dass du es wusstest, streuten deine Punkte um {sd} (Standardabweichung, {n} Wiederholungen).</translation>
    </message>
    <message>
        <source>This is for {name}. Others look away.</source>
        <translation>Das ist für {name}. Andere sehen weg.</translation>
    </message>
    <message>
        <source>This is about some evenings and these drinks, not about you. Tastings at which you were only in the sums are not in it. You may have it forgotten at any time.</source>
        <translation>Das handelt von einigen Abenden und diesen Getränken, nicht von dir. Verkostungen, in denen du nur in den Summen warst, sind nicht dabei. Du kannst es jederzeit vergessen lassen.</translation>
    </message>
    <message>
        <source>Too little known yet. It takes {least} opened tastings under your name or nickname; so far {n}.</source>
        <translation>Noch zu wenig bekannt. Es braucht {least} geöffnete Verkostungen unter deinem Namen oder Spitznamen; bisher {n}.</translation>
    </message>
    <message>
        <source>What {n} opened tastings say of how you taste. It is no mark, and there is no place in a row.</source>
        <translation>Was {n} geöffnete Verkostungen darüber sagen, wie du verkostest. Es ist keine Note, und es gibt keine Rangliste.</translation>
    </message>
    <message>
        <source>Those of the others scattered by {sd} points.</source>
        <translation>Die der anderen streuten um {sd} Punkte.</translation>
    </message>
    <message>
        <source>{name} has a card, has seen it, and lets you see it as it was then.</source>
        <translation>{name} hat eine Karte, hat sie gesehen und lässt sie dich sehen, so wie sie damals war.</translation>
    </message>
    <message>
        <source>{name} asked for a card. It is shown to them first; what is on it stays theirs until they say otherwise.</source>
        <translation>{name} wollte eine Karte. Sie wird zuerst der Person selbst gezeigt; was darauf steht, bleibt bei ihr, bis sie etwas anderes sagt.</translation>
    </message>
    <message>
        <source>{name} has no card. Cards are for those who ask for one themselves.</source>
        <translation>{name} hat keine Karte. Karten sind für die, die selbst eine wollen.</translation>
    </message>
    <message>
        <source>May the brewer see this too, as it is today? You need not say why.</source>
        <translation>Darf das auch sehen, wer hier braut, so wie es heute ist? Du musst nicht sagen, warum.</translation>
    </message>
    <message>
        <source>cereals with gluten</source>
        <translation>glutenhaltiges Getreide</translation>
    </message>
    <message>
        <source>egg</source>
        <translation>Ei</translation>
    </message>
    <message>
        <source>fish</source>
        <translation>Fisch</translation>
    </message>
    <message>
        <source>milk</source>
        <translation>Milch</translation>
    </message>
    <message>
        <source>nuts</source>
        <translation>Schalenfrüchte</translation>
    </message>
    <message>
        <source>peanuts</source>
        <translation>Erdnüsse</translation>
    </message>
    <message>
        <source>soy</source>
        <translation>Soja</translation>
    </message>
    <message>
        <source>sesame</source>
        <translation>Sesam</translation>
    </message>
    <message>
        <source>mustard</source>
        <translation>Senf</translation>
    </message>
    <message>
        <source>celery</source>
        <translation>Sellerie</translation>
    </message>
    <message>
        <source>lupin</source>
        <translation>Lupinen</translation>
    </message>
    <message>
        <source>molluscs</source>
        <translation>Weichtiere</translation>
    </message>
    <message>
        <source>crustaceans</source>
        <translation>Krebstiere</translation>
    </message>
    <message>
        <source>sulphites</source>
        <translation>Sulfite</translation>
    </message>
    <message>
        <source>What is in the drinks is not fully known. Say it aloud: not known.</source>
        <translation>Was in den Getränken ist, ist nicht ganz bekannt. Sag es laut: nicht bekannt.</translation>
    </message>
    <message>
        <source>In one cup or another: {list}. For some of what is poured it is not known. Say it aloud: not known.</source>
        <translation>In dem einen oder anderen Becher: {list}. Bei einem Teil davon ist es nicht bekannt. Sag es laut: nicht bekannt.</translation>
    </message>
    <message>
        <source>None of the fourteen listed allergens is named for these drinks. That is not “free of”: traces cannot be ruled out.</source>
        <translation>Keines der vierzehn gelisteten Allergene ist für diese Getränke genannt. Das heißt nicht „frei von“: Spuren lassen sich nicht ausschließen.</translation>
    </message>
    <message>
        <source>In one cup or another: {list}.</source>
        <translation>In dem einen oder anderen Becher: {list}.</translation>
    </message>
    <message>
        <source>Up to {grams} g of alcohol a person if everything is swallowed.</source>
        <translation>Bis zu {grams} g Alkohol je Person, wenn alles geschluckt wird.</translation>
    </message>
    <message>
        <source>Up to {grams} g of alcohol a person if everything is swallowed: {drinks} standard drinks of {size} g.</source>
        <translation>Bis zu {grams} g Alkohol je Person, wenn alles geschluckt wird: {drinks} Standardgetränke zu {size} g.</translation>
    </message>
    <message>
        <source>Something was added to one of the drinks, or it was blended or thinned, on purpose. What was added is an ingredient: its allergens belong in the list, only what is sold for food goes in, and no more of it than its label allows.</source>
        <translation>Einem der Getränke wurde absichtlich etwas zugesetzt, oder es wurde verschnitten oder verdünnt. Was zugesetzt wurde, ist eine Zutat: ihre Allergene gehören in die Liste, hinein kommt nur, was als Lebensmittel verkauft wird, und nicht mehr davon, als das Etikett erlaubt.</translation>
    </message>
    <message>
        <source>Before anything is poured, read this aloud.</source>
        <translation>Lies das laut vor, bevor eingeschenkt wird.</translation>
    </message>
    <message>
        <source>Some people with asthma react to sulphites. If you are one of them, sit out: no reason is asked.</source>
        <translation>Manche Leute mit Asthma reagieren auf Sulfite. Wenn du dazugehörst, setz aus: nach Gründen wird nicht gefragt.</translation>
    </message>
    <message>
        <source>Spit cups and water stand ready. Spitting takes in less; it does not take in nothing.</source>
        <translation>Spuckbecher und Wasser stehen bereit. Wer spuckt, nimmt weniger auf; aber nicht nichts.</translation>
    </message>
    <message>
        <source>Adults only: whoever tastes is of legal drinking age where you are.</source>
        <translation>Nur Erwachsene: wer verkostet, darf hier nach dem Gesetz Alkohol trinken.</translation>
    </message>
    <message>
        <source>Who drives or works a machine afterwards? You are offered the pouring first. Nothing is drunk before driving; everybody has a way home.</source>
        <translation>Wer fährt oder bedient danach eine Maschine? Dir wird zuerst das Einschenken angeboten. Vor dem Fahren wird nichts getrunken; alle haben einen Heimweg.</translation>
    </message>
    <message>
        <source>No alcohol in pregnancy. If that might be you, sit out: no reason is asked.</source>
        <translation>Kein Alkohol in der Schwangerschaft. Falls das auf dich zutreffen könnte, setz aus: nach Gründen wird nicht gefragt.</translation>
    </message>
    <message>
        <source>If you take medicines, ask your doctor or pharmacist first.</source>
        <translation>Wenn du Medikamente nimmst, frag zuerst in der Praxis oder in der Apotheke.</translation>
    </message>
    <message>
        <source>Your local law prevails over anything said here.</source>
        <translation>Das Recht an deinem Ort geht allem vor, was hier steht.</translation>
    </message>
    <message>
        <source>Taking part is everybody’s own choice. Anybody may sit out or stop at any time; nobody is asked why, and nothing about your health is written down.</source>
        <translation>Mitmachen ist freiwillig. Alle dürfen jederzeit aussetzen oder aufhören; niemand fragt, warum, und nichts über deine Gesundheit wird aufgeschrieben.</translation>
    </message>
    <message>
        <source>I am an adult where we are.</source>
        <translation>Ich bin nach dem Recht hier am Ort erwachsen.</translation>
    </message>
    <message>
        <source>I have heard what is in the cups and how much alcohol it is at most.</source>
        <translation>Ich habe gehört, was in den Bechern ist und wie viel Alkohol es höchstens ist.</translation>
    </message>
    <message>
        <source>I taste of my own free will and may stop at any time.</source>
        <translation>Ich verkoste aus freien Stücken und darf jederzeit aufhören.</translation>
    </message>
    <message>
        <source>Under my name</source>
        <translation>Unter meinem Namen</translation>
    </message>
    <message>
        <source>Under a nickname</source>
        <translation>Unter einem Spitznamen</translation>
    </message>
    <message>
        <source>Only in the sums, as a letter</source>
        <translation>Nur in den Summen, als Buchstabe</translation>
    </message>
    <message>
        <source>With one person it is plain who answered what. A signed sheet is more honest.</source>
        <translation>Bei einer Person ist klar, wer was geantwortet hat. Ein Bogen mit Namen ist ehrlicher.</translation>
    </message>
    <message>
        <source>With {n} people it will be guessed who answered what. Signed sheets are more honest.</source>
        <translation>Bei {n} Leuten wird man erraten, wer was geantwortet hat. Bögen mit Namen sind ehrlicher.</translation>
    </message>
    <message>
        <source>I would rather sit out. No reason is asked.</source>
        <translation>Ich setze lieber aus. Nach Gründen wird nicht gefragt.</translation>
    </message>
    <message>
        <source>about {n}</source>
        <translation>etwa {n}</translation>
    </message>
    <message>
        <source>one in two</source>
        <translation>jeden zweiten</translation>
    </message>
    <message>
        <source>one in ten</source>
        <translation>jeden zehnten</translation>
    </message>
    <message>
        <source>one in three</source>
        <translation>jeden dritten</translation>
    </message>
    <message>
        <source>Leaving out what was told by look or fizz, {sentence}</source>
        <translation>Ohne das, was an Aussehen oder Prickeln erkannt wurde, gilt: {sentence}</translation>
    </message>
    <message>
        <source>Leaving out what was locked after something was said, {sentence}</source>
        <translation>Ohne das, was festgelegt wurde, nachdem etwas gesagt war, gilt: {sentence}</translation>
    </message>
    <message>
        <source>Leaving out what was told by look or fizz or locked after something was said, {sentence}</source>
        <translation>Ohne das, was an Aussehen oder Prickeln erkannt oder nach einer Äußerung festgelegt wurde, gilt: {sentence}</translation>
    </message>
    <message>
        <source>{one}, and {other}</source>
        <translation>{one}, und {other}</translation>
    </message>
    <message>
        <source>of 1 cup of the marked drink {k} was taken for it</source>
        <translation>von 1 Becher des markierten Getränks wurde {k} dafür gehalten</translation>
    </message>
    <message>
        <source>of {n} cups of the marked drink {k} were taken for it</source>
        <translation>von {n} Bechern des markierten Getränks wurden {k} dafür gehalten</translation>
    </message>
    <message>
        <source>of 1 cup of the other drink {k}</source>
        <translation>von 1 Becher des anderen Getränks {k}</translation>
    </message>
    <message>
        <source>of {n} cups of the other drink {k}</source>
        <translation>von {n} Bechern des anderen Getränks {k}</translation>
    </message>
    <message>
        <source>of 1 flight with both drinks {k} was called different</source>
        <translation>von 1 Satz mit beiden Getränken wurde {k} verschieden genannt</translation>
    </message>
    <message>
        <source>of {n} flights with both drinks {k} were called different</source>
        <translation>von {n} Sätzen mit beiden Getränken wurden {k} verschieden genannt</translation>
    </message>
    <message>
        <source>of 1 flight with one drink twice {k}</source>
        <translation>von 1 Satz mit zweimal demselben Getränk {k}</translation>
    </message>
    <message>
        <source>of {n} flights with one drink twice {k}</source>
        <translation>von {n} Sätzen mit zweimal demselben Getränk {k}</translation>
    </message>
    <message>
        <source>the votes stand {larger} to {smaller}</source>
        <translation>es steht {larger} zu {smaller}</translation>
    </message>
    <message>
        <source>by chance alone, {larger} to {smaller} either way comes {often}</source>
        <translation>durch bloßen Zufall kommt {larger} zu {smaller}, in die eine oder andere Richtung, {often} vor</translation>
    </message>
    <message>
        <source>by chance alone, {larger} to {smaller} or clearer, either way, comes {often}</source>
        <translation>durch bloßen Zufall kommt {larger} zu {smaller} oder Deutlicheres, in die eine oder andere Richtung, {often} vor</translation>
    </message>
    <message>
        <source>with {n} rounds only {all} to 0 could have shown one</source>
        <translation>bei {n} Runden hätte nur {all} zu 0 eine zeigen können</translation>
    </message>
    <message>
        <source>with {n} people only {all} to 0 could have shown one</source>
        <translation>bei {n} Leuten hätte nur {all} zu 0 eine zeigen können</translation>
    </message>
    <message>
        <source>with {n} rounds it takes {needed} to {rest}, or clearer, to show one</source>
        <translation>bei {n} Runden braucht es {needed} zu {rest} oder Deutlicheres, um eine zu zeigen</translation>
    </message>
    <message>
        <source>with {n} people it takes {needed} to {rest}, or clearer, to show one</source>
        <translation>bei {n} Leuten braucht es {needed} zu {rest} oder Deutlicheres, um eine zu zeigen</translation>
    </message>
    <message>
        <source>{counted}; if you could not tell, as much or more would come up {often}.</source>
        <translation>{counted}; könntest du sie nicht auseinanderhalten, käme so viel oder mehr {often} heraus.</translation>
    </message>
    <message>
        <source>{counted}; if no one could tell, as much or more would come up {often}.</source>
        <translation>{counted}; könnte niemand sie auseinanderhalten, käme so viel oder mehr {often} heraus.</translation>
    </message>
    <message>
        <source>{counted}; the line drawn before asked for {from} of {n}.</source>
        <translation>{counted}; die vorher gezogene Linie verlangte {from} von {n}.</translation>
    </message>
    <message>
        <source>{counted}; by the line drawn before, {to} of {n} or fewer end the tasting.</source>
        <translation>{counted}; nach der vorher gezogenen Linie beenden {to} von {n} oder weniger die Verkostung.</translation>
    </message>
    <message>
        <source>{counted}; after {n} no count could have shown a difference yet.</source>
        <translation>{counted}; nach {n} hätte noch keine Zahl einen Unterschied zeigen können.</translation>
    </message>
    <message>
        <source>{counted}; {from} of {n} would have shown a difference.</source>
        <translation>{counted}; {from} von {n} hätten einen Unterschied gezeigt.</translation>
    </message>
    <message>
        <source>{counted}; {from} of {n} would have shown a difference, {to} or fewer would have ended it without one.</source>
        <translation>{counted}; {from} von {n} hätten einen Unterschied gezeigt, {to} oder weniger hätten ohne einen geendet.</translation>
    </message>
    <message>
        <source>{counted}. If you could tell {limit}, so few would come up {often}.</source>
        <translation>{counted}. Könntest du sie {limit} auseinanderhalten, kämen so wenige {often} heraus.</translation>
    </message>
    <message>
        <source>{counted}. If {limit} could tell, so few would come up {often}.</source>
        <translation>{counted}. Wäre der Unterschied für {limit} zu merken, kämen so wenige {often} heraus.</translation>
    </message>
    <message>
        <source>With three pairs compared, that counts as {often}.</source>
        <translation>Bei drei verglichenen Paaren zählt das als {often}.</translation>
    </message>
    <message>
        <source>{counted}; guessing gives {guess}.</source>
        <translation>{counted}; Raten ergibt {guess}.</translation>
    </message>
    <message>
        <source>{counted}; guessing gives {guess}, and all of them {often}.</source>
        <translation>{counted}; Raten ergibt {guess}, und alle {often}.</translation>
    </message>
    <message>
        <source>{counted}; guessing gives {guess}, and {n} or more {often}.</source>
        <translation>{counted}; Raten ergibt {guess}, und {n} oder mehr {often}.</translation>
    </message>
    <message>
        <source>{counted}; guessing gives {guess}, and 1 was needed.</source>
        <translation>{counted}; Raten ergibt {guess}, und 1 war nötig.</translation>
    </message>
    <message>
        <source>{counted}; guessing gives {guess}, and {needed} were needed.</source>
        <translation>{counted}; Raten ergibt {guess}, und {needed} waren nötig.</translation>
    </message>
    <message>
        <source>{counted}; no more than {most} would have counted as alike within your limit.</source>
        <translation>{counted}; nicht mehr als {most} hätten als ähnlich innerhalb deiner Grenze gegolten.</translation>
    </message>
    <message>
        <source>Over all pairs {right} of 1 tasting was right.</source>
        <translation>Über alle Paare war {right} von 1 Durchgang richtig.</translation>
    </message>
    <message>
        <source>Over all pairs {right} of {n} tastings were right.</source>
        <translation>Über alle Paare waren {right} von {n} Durchgängen richtig.</translation>
    </message>
    <message>
        <source>{right} of 1 tasting was right</source>
        <translation>{right} von 1 Durchgang war richtig</translation>
    </message>
    <message>
        <source>{right} of {n} tastings were right</source>
        <translation>{right} von {n} Durchgängen waren richtig</translation>
    </message>
    <message>
        <source>in {right} of 1 tasting the cup like the marked one was found</source>
        <translation>in {right} von 1 Durchgang wurde der Becher wie der markierte gefunden</translation>
    </message>
    <message>
        <source>in {right} of {n} tastings the cup like the marked one was found</source>
        <translation>in {right} von {n} Durchgängen wurde der Becher wie der markierte gefunden</translation>
    </message>
    <message>
        <source>in {right} of 1 tasting the two groups were found</source>
        <translation>in {right} von 1 Durchgang wurden die beiden Gruppen gefunden</translation>
    </message>
    <message>
        <source>in {right} of {n} tastings the two groups were found</source>
        <translation>in {right} von {n} Durchgängen wurden die beiden Gruppen gefunden</translation>
    </message>
    <message>
        <source>in {right} of 1 tasting the two odd ones were found</source>
        <translation>in {right} von 1 Durchgang wurden die beiden abweichenden gefunden</translation>
    </message>
    <message>
        <source>in {right} of {n} tastings the two odd ones were found</source>
        <translation>in {right} von {n} Durchgängen wurden die beiden abweichenden gefunden</translation>
    </message>
    <message>
        <source>{right} of 1 pair pointed to {lot}</source>
        <translation>{right} von 1 Paar zeigte auf {lot}</translation>
    </message>
    <message>
        <source>{right} of {n} pairs pointed to {lot}</source>
        <translation>{right} von {n} Paaren zeigten auf {lot}</translation>
    </message>
    <message>
        <source>in {right} of 1 tasting {lot} was picked</source>
        <translation>in {right} von 1 Durchgang wurde {lot} gewählt</translation>
    </message>
    <message>
        <source>in {right} of {n} tastings {lot} was picked</source>
        <translation>in {right} von {n} Durchgängen wurde {lot} gewählt</translation>
    </message>
    <message>
        <source>the votes stand {right} to {smaller}</source>
        <translation>es steht {right} zu {smaller}</translation>
    </message>
    <message>
        <source>no vote counts.</source>
        <translation>keine Stimme zählt.</translation>
    </message>
    <message>
        <source>no tasting counts.</source>
        <translation>kein Durchgang zählt.</translation>
    </message>
    <message>
        <source>Drink</source>
        <translation>Getränk</translation>
    </message>
    <message>
        <source>too little</source>
        <translation>zu wenig</translation>
    </message>
    <message>
        <source>just right</source>
        <translation>genau richtig</translation>
    </message>
    <message>
        <source>too much</source>
        <translation>zu viel</translation>
    </message>
    <message>
        <source>How many said so of “{what}”</source>
        <translation>Wie viele das von „{what}“ sagten</translation>
    </message>
    <message>
        <source>people</source>
        <translation>Leute</translation>
    </message>
    <message>
        <source>Ranks by liking, {people}</source>
        <translation>Ränge nach Gefallen, {people}</translation>
    </message>
    <message>
        <source>Ranks by “{what}”, {people}</source>
        <translation>Ränge nach „{what}“, {people}</translation>
    </message>
    <message>
        <source>What people would do with the glass</source>
        <translation>Was die Leute mit dem Glas täten</translation>
    </message>
    <message>
        <source>Where five points went, on average, {people}</source>
        <translation>Wohin fünf Punkte gingen, im Mittel, {people}</translation>
    </message>
    <message>
        <source>points, on average</source>
        <translation>Punkte, im Mittel</translation>
    </message>
    <message>
        <source>How many named it as the worst thing</source>
        <translation>Wie viele es als das Schlimmste nannten</translation>
    </message>
    <message>
        <source>How many would change it</source>
        <translation>Wie viele es ändern würden</translation>
    </message>
    <message>
        <source>In their words</source>
        <translation>In ihren Worten</translation>
    </message>
    <message>
        <source>How sure people were of their sheets</source>
        <translation>Wie sicher die Leute sich ihrer Bögen waren</translation>
    </message>
    <message>
        <source>Sureness</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>sheets</source>
        <translation>Bögen</translation>
    </message>
    <message>
        <source>How many ticked each word</source>
        <translation>Wie viele jedes Wort ankreuzten</translation>
    </message>
    <message>
        <source>Word</source>
        <translation>Wort</translation>
    </message>
    <message>
        <source>{drink}, {side}: {k} of {n}</source>
        <translation>{drink}, {side}: {k} von {n}</translation>
    </message>
    <message>
        <source>{drink}, {side}: {k} of {n}, who liked it {drop} points less</source>
        <translation>{drink}, {side}: {k} von {n}, denen es {drop} Punkte weniger gefiel</translation>
    </message>
    <message>
        <source>{drink}, {word}: {count}</source>
        <translation>{drink}, {word}: {count}</translation>
    </message>
    <message>
        <source>liked least</source>
        <translation>gefiel am wenigsten</translation>
    </message>
    <message>
        <source>liked most</source>
        <translation>gefiel am meisten</translation>
    </message>
    <message>
        <source>least {what}</source>
        <translation>am wenigsten {what}</translation>
    </message>
    <message>
        <source>most {what}</source>
        <translation>am meisten {what}</translation>
    </message>
    <message>
        <source>{drink}, rank {rank}: {k} of {n}</source>
        <translation>{drink}, Rang {rank}: {k} von {n}</translation>
    </message>
    <message>
        <source>rank sum {sum}</source>
        <translation>Rangsumme {sum}</translation>
    </message>
    <message>
        <source>{points} of 5</source>
        <translation>{points} von 5</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>all five</source>
        <translation>alle fünf</translation>
    </message>
    <message>
        <source>1 sheet</source>
        <translation>1 Bogen</translation>
    </message>
    <message>
        <source>{n} sheets</source>
        <translation>{n} Bögen</translation>
    </message>
    <message>
        <source>looked and found none</source>
        <translation>gesucht und keins gefunden</translation>
    </message>
    <message>
        <source>Do not say: nobody could tell.</source>
        <translation>Sag nicht: keiner konnte sie auseinanderhalten.</translation>
    </message>
    <message>
        <source>It may be equal, slightly more, or less.</source>
        <translation>Es kann ebenso viel sein, etwas mehr oder weniger.</translation>
    </message>
    <message>
        <source>Alike is not “as good as”: both may be good, both may be poor.</source>
        <translation>Ähnlich heißt nicht „so gut wie“: beide können gut sein, beide können schlecht sein.</translation>
    </message>
    <message>
        <source>beer</source>
        <translation>Bier</translation>
    </message>
    <message>
        <source>mead</source>
        <translation>Met</translation>
    </message>
    <message>
        <source>cider</source>
        <translation>Cider</translation>
    </message>
    <message>
        <source>wine</source>
        <translation>Wein</translation>
    </message>
    <message>
        <source>another drink</source>
        <translation>ein anderes Getränk</translation>
    </message>
    <message>
        <source>made here</source>
        <translation>hier gemacht</translation>
    </message>
    <message>
        <source>bought, or somebody else&apos;s</source>
        <translation>gekauft oder von jemand anderem</translation>
    </message>
    <message>
        <source>from the label</source>
        <translation>vom Etikett</translation>
    </message>
    <message>
        <source>from the gravities</source>
        <translation>aus den beiden Dichten</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>a guess</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>addition</source>
        <translation>Zugabe</translation>
    </message>
    <message>
        <source>stabilised</source>
        <translation>stabilisiert</translation>
    </message>
    <message>
        <source>racked</source>
        <translation>abgezogen</translation>
    </message>
    <message>
        <source>bottled</source>
        <translation>abgefüllt</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>done otherwise</source>
        <translation>anders gemacht</translation>
    </message>
    <message>
        <source>haze</source>
        <translation>Trübung</translation>
    </message>
    <message>
        <source>sediment</source>
        <translation>Bodensatz</translation>
    </message>
    <message>
        <source>sulphur smell</source>
        <translation>Schwefelgeruch</translation>
    </message>
    <message>
        <source>a bottle gushed</source>
        <translation>eine Flasche schäumte über</translation>
    </message>
    <message>
        <source>bright</source>
        <translation>klar</translation>
    </message>
    <message>
        <source>a slight haze</source>
        <translation>leicht trüb</translation>
    </message>
    <message>
        <source>hazy</source>
        <translation>trüb</translation>
    </message>
    <message>
        <source>cloudy</source>
        <translation>sehr trüb</translation>
    </message>
    <message>
        <source>none to be seen</source>
        <translation>keiner zu sehen</translation>
    </message>
    <message>
        <source>a dusting</source>
        <translation>ein Hauch</translation>
    </message>
    <message>
        <source>a firm layer</source>
        <translation>eine feste Schicht</translation>
    </message>
    <message>
        <source>a third of the bottle or more</source>
        <translation>ein Drittel der Flasche oder mehr</translation>
    </message>
    <message>
        <source>faint</source>
        <translation>schwach</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>deutlich</translation>
    </message>
    <message>
        <source>strong</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>added</source>
        <translation>dazugekommen</translation>
    </message>
    <message>
        <source>counted again</source>
        <translation>neu gezählt</translation>
    </message>
    <message>
        <source>poured</source>
        <translation>eingeschenkt</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>verschenkt</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>mit Namen</translation>
    </message>
    <message>
        <source>nickname</source>
        <translation>Spitzname</translation>
    </message>
    <message>
        <source>only in the sums</source>
        <translation>nur in den Summen</translation>
    </message>
    <message>
        <source>fairly sure</source>
        <translation>ziemlich sicher</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>sicher</translation>
    </message>
    <message>
        <source>taste</source>
        <translation>Geschmack</translation>
    </message>
    <message>
        <source>smell</source>
        <translation>Geruch</translation>
    </message>
    <message>
        <source>feel in the mouth</source>
        <translation>Gefühl im Mund</translation>
    </message>
    <message>
        <source>look</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>fizz</source>
        <translation>Prickeln</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>none of the fourteen</source>
        <translation>keines der vierzehn</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>{n} days</source>
        <translation>{n} Tage</translation>
    </message>
    <message>
        <source>the panel&apos;s mean puts {own} above {reference} ({what})</source>
        <translation>das Panel im Mittel {own} über {reference} setzt ({what})</translation>
    </message>
    <message>
        <source>a preference is shown</source>
        <translation>sich eine Vorliebe zeigt</translation>
    </message>
    <message>
        <source>it is shown to be more so</source>
        <translation>es sich darin als stärker zeigt</translation>
    </message>
    <message>
        <source>two of the three are told apart</source>
        <translation>zwei der drei auseinandergehalten werden</translation>
    </message>
    <message>
        <source>they are told apart</source>
        <translation>sie auseinandergehalten werden</translation>
    </message>
    <message>
        <source>How likely is it, do you think, that {event}?</source>
        <translation>Was meinst du, wie wahrscheinlich ist es, dass {event}?</translation>
    </message>
    <message>
        <source>1 to 99 in 100, sealed with the plan; it may stay empty. Nobody at the table is shown it. Once the key is open it stands on the page “You and the room”.</source>
        <translation>1 bis 99 von 100, mit dem Plan versiegelt; darf leer bleiben. Niemand am Tisch bekommt es zu sehen. Sobald der Schlüssel offen ist, steht es auf der Seite „Du und die Runde“.</translation>
    </message>
    <message>
        <source>Written beforehand: {percent} in 100 that {event}.</source>
        <translation>Vorher aufgeschrieben: {percent} von 100, dass {event}.</translation>
    </message>
    <message>
        <source>Oxygen, heat, age.</source>
        <translation>Sauerstoff, Wärme, Alter.</translation>
    </message>
    <message>
        <source>No splashing, full bottles, a cool store.</source>
        <translation>Kein Plätschern, volle Flaschen, kühles Lager.</translation>
    </message>
    <message>
        <source>No splashing, full bottles, a cool store. Some styles want it.</source>
        <translation>Kein Plätschern, volle Flaschen, kühles Lager. Manche Stile wollen es.</translation>
    </message>
    <message>
        <source>Air on the finished drink.</source>
        <translation>Luft am fertigen Getränk.</translation>
    </message>
    <message>
        <source>Full vessels, and sulphite where it is used.</source>
        <translation>Volle Gefäße, und Sulfit, wo man es nimmt.</translation>
    </message>
    <message>
        <source>Heat, in the kettle or in the store.</source>
        <translation>Hitze, im Kessel oder im Lager.</translation>
    </message>
    <message>
        <source>Less heat, a cooler store.</source>
        <translation>Weniger Hitze, ein kühleres Lager.</translation>
    </message>
    <message>
        <source>Light on hop compounds.</source>
        <translation>Licht auf Hopfenstoffen.</translation>
    </message>
    <message>
        <source>Brown glass, and the dark.</source>
        <translation>Braunes Glas, und Dunkelheit.</translation>
    </message>
    <message>
        <source>In beer it comes early with age and goes again. Some hops and grapes bring it along.</source>
        <translation>Im Bier kommt es früh mit dem Alter und geht wieder. Manche Hopfen und Trauben bringen es mit.</translation>
    </message>
    <message>
        <source>Keep air out and store cool.</source>
        <translation>Luft fernhalten und kühl lagern.</translation>
    </message>
    <message>
        <source>Age: beers with much hop or wheat fade within weeks.</source>
        <translation>Alter: Biere mit viel Hopfen oder Weizen verblassen in Wochen.</translation>
    </message>
    <message>
        <source>Drink those young. A cold, dark store, and little air.</source>
        <translation>Trink diese jung. Kaltes, dunkles Lager und wenig Luft.</translation>
    </message>
    <message>
        <source>Some white grapes, with sun and age.</source>
        <translation>Manche weißen Trauben, mit Sonne und Alter.</translation>
    </message>
    <message>
        <source>Many like it. A cooler store slows it.</source>
        <translation>Viele mögen es. Ein kühleres Lager bremst es.</translation>
    </message>
    <message>
        <source>Yeast short of nitrogen, or lees.</source>
        <translation>Hefe, der Stickstoff fehlt, oder Hefesatz.</translation>
    </message>
    <message>
        <source>Nutrient in time, degassing, weeks of conditioning, racking.</source>
        <translation>Rechtzeitig Nährstoff, Entgasen, Wochen der Reife, Abziehen.</translation>
    </message>
    <message>
        <source>Nutrient in time, degassing, weeks of conditioning, racking. In young lager it goes within weeks.</source>
        <translation>Rechtzeitig Nährstoff, Entgasen, Wochen der Reife, Abziehen. Bei jungem Lagerbier geht es in Wochen.</translation>
    </message>
    <message>
        <source>Much free sulphite, or sulphite that was just added.</source>
        <translation>Viel freies Sulfit, oder Sulfit, das eben zugegeben wurde.</translation>
    </message>
    <message>
        <source>Measure before adding more. Time, and air in the glass.</source>
        <translation>Messen, bevor mehr hineinkommt. Zeit, und Luft im Glas.</translation>
    </message>
    <message>
        <source>A covered or weak boil, or a slow chill.</source>
        <translation>Bedecktes oder schwaches Kochen, oder langsames Kühlen.</translation>
    </message>
    <message>
        <source>A rolling, open boil and a fast chill.</source>
        <translation>Offen und sprudelnd kochen und schnell kühlen.</translation>
    </message>
    <message>
        <source>In beer a covered or weak boil, or a slow chill. Elsewhere often sulphide that was left.</source>
        <translation>Im Bier bedecktes oder schwaches Kochen oder langsames Kühlen. Sonst oft Sulfid, das blieb.</translation>
    </message>
    <message>
        <source>In beer a rolling, open boil and a fast chill. Elsewhere degassing and racking in time.</source>
        <translation>Beim Bier offen und sprudelnd kochen und schnell kühlen. Sonst rechtzeitig entgasen und abziehen.</translation>
    </message>
    <message>
        <source>Sulphide that was left to react.</source>
        <translation>Sulfid, das weiterreagieren konnte.</translation>
    </message>
    <message>
        <source>Prevention. It is hard to remove.</source>
        <translation>Vorbeugen. Es ist schwer zu entfernen.</translation>
    </message>
    <message>
        <source>Yeast breaking down, or bacteria.</source>
        <translation>Hefe, die zerfällt, oder Bakterien.</translation>
    </message>
    <message>
        <source>Rack in time; hygiene.</source>
        <translation>Rechtzeitig abziehen; Sauberkeit.</translation>
    </message>
    <message>
        <source>Brettanomyces.</source>
        <translation>Brettanomyces.</translation>
    </message>
    <message>
        <source>Hygiene. Some styles want it.</source>
        <translation>Sauberkeit. Manche Stile wollen es.</translation>
    </message>
    <message>
        <source>Some bacteria and Brettanomyces, with a high pH. It comes late, after swallowing, and some people cannot perceive it.</source>
        <translation>Manche Bakterien und Brettanomyces, bei hohem pH-Wert. Es kommt spät, nach dem Schlucken, und manche Leute nehmen es nicht wahr.</translation>
    </message>
    <message>
        <source>Prevention. There is no good cure.</source>
        <translation>Vorbeugen. Eine gute Abhilfe gibt es nicht.</translation>
    </message>
    <message>
        <source>Bacteria.</source>
        <translation>Bakterien.</translation>
    </message>
    <message>
        <source>Hygiene, and acid before the bacteria get to work.</source>
        <translation>Sauberkeit, und Säure, bevor die Bakterien loslegen.</translation>
    </message>
    <message>
        <source>Old hops that lay warm, or Brettanomyces.</source>
        <translation>Alter, warm gelagerter Hopfen, oder Brettanomyces.</translation>
    </message>
    <message>
        <source>Fresh hops, kept cold; hygiene.</source>
        <translation>Frischer, kalt gelagerter Hopfen; Sauberkeit.</translation>
    </message>
    <message>
        <source>Stressed yeast, or a long time on old yeast.</source>
        <translation>Hefe unter Stress, oder lange Zeit auf alter Hefe.</translation>
    </message>
    <message>
        <source>Healthy yeast, and racking in time.</source>
        <translation>Gesunde Hefe, und rechtzeitig abziehen.</translation>
    </message>
    <message>
        <source>Bacteria on sorbate.</source>
        <translation>Bakterien auf Sorbat.</translation>
    </message>
    <message>
        <source>Little sorbate, and bacteria kept out.</source>
        <translation>Wenig Sorbat, und Bakterien fernhalten.</translation>
    </message>
    <message>
        <source>Lactic bacteria, some of which spin slime.</source>
        <translation>Milchsäurebakterien, von denen manche Schleim spinnen.</translation>
    </message>
    <message>
        <source>Hygiene. Some makers wait, since it can pass.</source>
        <translation>Sauberkeit. Manche warten, denn es kann vergehen.</translation>
    </message>
    <message>
        <source>Growth on the surface, on fruit, grain, wood or cork.</source>
        <translation>Bewuchs auf der Oberfläche, auf Obst, Getreide, Holz oder Kork.</translation>
    </message>
    <message>
        <source>Most discard it. Full vessels, clean wood and sound fruit next time.</source>
        <translation>Die meisten schütten es weg. Beim nächsten Mal volle Gefäße, sauberes Holz und heiles Obst.</translation>
    </message>
    <message>
        <source>Fruit that was not sound.</source>
        <translation>Obst, das nicht heil war.</translation>
    </message>
    <message>
        <source>Discard it. Sort the fruit next time: rot can leave poison that the ferment does not take away for certain.</source>
        <translation>Wegschütten. Sortier das Obst beim nächsten Mal: Fäule kann Gift hinterlassen, das die Gärung nicht verlässlich beseitigt.</translation>
    </message>
    <message>
        <source>Bacteria during a slow start.</source>
        <translation>Bakterien bei langsamem Angären.</translation>
    </message>
    <message>
        <source>Discard it. A fast, healthy start and hygiene next time.</source>
        <translation>Wegschütten. Beim nächsten Mal ein schneller, gesunder Start und Sauberkeit.</translation>
    </message>
    <message>
        <source>Cork, or mould and chlorine.</source>
        <translation>Kork, oder Schimmel und Chlor.</translation>
    </message>
    <message>
        <source>Compare bottles, and discard the tainted ones.</source>
        <translation>Flaschen vergleichen und die befallenen wegschütten.</translation>
    </message>
    <message>
        <source>Water, mould on the fruit, or a damp store.</source>
        <translation>Wasser, Schimmel am Obst, oder ein feuchtes Lager.</translation>
    </message>
    <message>
        <source>Clean water, sound fruit, a dry store.</source>
        <translation>Sauberes Wasser, heiles Obst, trockenes Lager.</translation>
    </message>
    <message>
        <source>Grain, hops, wood or cloth that lay damp.</source>
        <translation>Getreide, Hopfen, Holz oder Stoff, die feucht lagen.</translation>
    </message>
    <message>
        <source>Smell everything dry before it goes in.</source>
        <translation>Riech an allem Trockenen, bevor es hineinkommt.</translation>
    </message>
    <message>
        <source>Chlorine of water or cleaners that met malt or fruit; sometimes wild yeast.</source>
        <translation>Chlor aus Wasser oder Reinigern, das auf Malz oder Obst traf; manchmal wilde Hefe.</translation>
    </message>
    <message>
        <source>Water without chlorine, vessels well rinsed, hygiene.</source>
        <translation>Wasser ohne Chlor, gut gespülte Gefäße, Sauberkeit.</translation>
    </message>
    <message>
        <source>Vessels, fittings or water that give off metal.</source>
        <translation>Gefäße, Armaturen oder Wasser, die Metall abgeben.</translation>
    </message>
    <message>
        <source>Glass, stainless steel and food-grade plastic. Discard what stood in galvanised, lead-glazed or unknown metal.</source>
        <translation>Glas, Edelstahl und lebensmittelechter Kunststoff. Schütte weg, was in verzinktem, bleiglasiertem oder unbekanntem Metall stand.</translation>
    </message>
    <message>
        <source>Hoses and vessels that were not made for drink, or that got hot.</source>
        <translation>Schläuche und Gefäße, die nicht für Getränke gemacht waren oder heiß wurden.</translation>
    </message>
    <message>
        <source>Food-grade parts only, and new hoses now and then.</source>
        <translation>Nur lebensmittelechte Teile, und ab und zu neue Schläuche.</translation>
    </message>
    <message>
        <source>Remains of a cleaning agent.</source>
        <translation>Reste eines Reinigungsmittels.</translation>
    </message>
    <message>
        <source>Do not taste on. Discard it and rinse well. If somebody swallowed some, ask a doctor or the poison centre.</source>
        <translation>Nicht weiter verkosten. Schütte es weg und spül gut nach. Wenn jemand davon geschluckt hat, frag in der Praxis oder beim Giftnotruf.</translation>
    </message>
    <message>
        <source>Pale malt, and yeast that is still about.</source>
        <translation>Helles Malz, und Hefe, die noch da ist.</translation>
    </message>
    <message>
        <source>For more of it a fuller malt bill; for less a leaner one and a clearer pour.</source>
        <translation>Für mehr davon eine vollere Schüttung; für weniger eine schlankere und klareres Einschenken.</translation>
    </message>
    <message>
        <source>Lightly kilned malts.</source>
        <translation>Leicht gedarrte Malze.</translation>
    </message>
    <message>
        <source>Change their share in the next batch. It cannot be taken out of this one.</source>
        <translation>Ändere ihren Anteil beim nächsten Ansatz. Aus diesem lässt es sich nicht nehmen.</translation>
    </message>
    <message>
        <source>Richer malts, a warm mash, or a ferment that stopped high.</source>
        <translation>Kräftigere Malze, eine warme Maische, oder eine Gärung, die zu früh stehen blieb.</translation>
    </message>
    <message>
        <source>Look at the final gravity first, then at the malt bill.</source>
        <translation>Sieh zuerst auf die Enddichte, dann auf die Schüttung.</translation>
    </message>
    <message>
        <source>A very fine crush, or a long, hot sparge.</source>
        <translation>Sehr feiner Schrot, oder langes, heißes Anschwänzen.</translation>
    </message>
    <message>
        <source>A coarser crush, and stopping the run-off before it turns thin.</source>
        <translation>Gröber schroten, und das Abläutern beenden, bevor es dünn wird.</translation>
    </message>
    <message>
        <source>Too little yeast, or a ferment that stopped early.</source>
        <translation>Zu wenig Hefe, oder eine Gärung, die zu früh stehen blieb.</translation>
    </message>
    <message>
        <source>Enough healthy yeast, some warmth, and a steady gravity before bottling.</source>
        <translation>Genug gesunde Hefe, etwas Wärme, und eine gleichbleibende Dichte vor dem Abfüllen.</translation>
    </message>
    <message>
        <source>Malts of a middle colour; in old wine, cider and mead a little air.</source>
        <translation>Malze mittlerer Farbe; bei altem Wein, Cider und Met etwas Luft.</translation>
    </message>
    <message>
        <source>Look at the malt first, then at how full the vessels are kept.</source>
        <translation>Sieh zuerst aufs Malz, dann darauf, wie voll die Gefäße sind.</translation>
    </message>
    <message>
        <source>Old grain, old hops, or age.</source>
        <translation>Altes Getreide, alter Hopfen, oder Alter.</translation>
    </message>
    <message>
        <source>Fresh ingredients and a cool store.</source>
        <translation>Frische Zutaten und ein kühles Lager.</translation>
    </message>
    <message>
        <source>Toasted malts; in wine and mead a toasted barrel.</source>
        <translation>Geröstete Malze; bei Wein und Met ein getoastetes Fass.</translation>
    </message>
    <message>
        <source>More or less of them next time, or a shorter stay in the wood.</source>
        <translation>Nächstes Mal mehr oder weniger davon, oder kürzer im Holz.</translation>
    </message>
    <message>
        <source>Caramel malts, a long boil, heated honey or juice; in old beer also its age.</source>
        <translation>Karamellmalze, langes Kochen, erhitzter Honig oder Saft; bei altem Bier auch sein Alter.</translation>
    </message>
    <message>
        <source>Less of them next time. Where it grew in the bottle, a cooler store.</source>
        <translation>Nächstes Mal weniger davon. Wo es in der Flasche entstand, ein kühleres Lager.</translation>
    </message>
    <message>
        <source>Chocolate malt and other roasted malts, or cocoa.</source>
        <translation>Schokoladenmalz und andere Röstmalze, oder Kakao.</translation>
    </message>
    <message>
        <source>Change their share in the next batch.</source>
        <translation>Ändere ihren Anteil beim nächsten Ansatz.</translation>
    </message>
    <message>
        <source>Roasted malts, or coffee itself.</source>
        <translation>Röstmalze, oder Kaffee selbst.</translation>
    </message>
    <message>
        <source>Less of them for a softer one; coffee steeped cold is milder.</source>
        <translation>Weniger davon für einen weicheren; kalt gezogener Kaffee ist milder.</translation>
    </message>
    <message>
        <source>Much black malt, or a scorched kettle.</source>
        <translation>Viel schwarzes Malz, oder ein angebrannter Kessel.</translation>
    </message>
    <message>
        <source>Less black grain and a shorter steep of it; stirring, and a gentler flame.</source>
        <translation>Weniger schwarzes Malz, kürzer gezogen; rühren, und eine sanftere Flamme.</translation>
    </message>
    <message>
        <source>A warm ferment, little yeast at the start, or a yeast that makes much of it.</source>
        <translation>Eine warme Gärung, wenig Hefe am Anfang, oder eine Hefe, die viel davon macht.</translation>
    </message>
    <message>
        <source>Cooler first days and more yeast. Where the style wants it, leave it.</source>
        <translation>Kühlere erste Tage und mehr Hefe. Wo der Stil es will, lass es.</translation>
    </message>
    <message>
        <source>Esters of a lively ferment; in cider the fruit.</source>
        <translation>Ester einer lebhaften Gärung; beim Cider das Obst.</translation>
    </message>
    <message>
        <source>A cooler, steadier ferment if it covers the rest.</source>
        <translation>Eine kühlere, ruhigere Gärung, wenn es den Rest zudeckt.</translation>
    </message>
    <message>
        <source>Hops, peel, or the fruit itself.</source>
        <translation>Hopfen, Schale, oder die Frucht selbst.</translation>
    </message>
    <message>
        <source>Fresher ones for more of it, fewer for less. Air takes it away first.</source>
        <translation>Frischere für mehr davon, weniger für weniger. Luft nimmt es zuerst weg.</translation>
    </message>
    <message>
        <source>Some hops, some yeasts, ripe fruit.</source>
        <translation>Manche Hopfen, manche Hefen, reifes Obst.</translation>
    </message>
    <message>
        <source>Another hop or yeast for more of it; a cooler ferment for less.</source>
        <translation>Anderer Hopfen oder andere Hefe für mehr davon; kühlere Gärung für weniger.</translation>
    </message>
    <message>
        <source>Fruit, or esters of the yeast.</source>
        <translation>Obst, oder Ester der Hefe.</translation>
    </message>
    <message>
        <source>Fruit that goes in after the first rush of the ferment keeps more of it.</source>
        <translation>Obst, das nach dem ersten Schub der Gärung hineinkommt, behält mehr davon.</translation>
    </message>
    <message>
        <source>Fruit, some grapes, some hops.</source>
        <translation>Obst, manche Trauben, manche Hopfen.</translation>
    </message>
    <message>
        <source>Some hops and grapes, and a yeast that sets it free.</source>
        <translation>Manche Hopfen und Trauben, und eine Hefe, die es freisetzt.</translation>
    </message>
    <message>
        <source>Fresh hops, late and cool, and little air afterwards.</source>
        <translation>Frischer Hopfen, spät und kühl, und danach wenig Luft.</translation>
    </message>
    <message>
        <source>Dark malts, dried fruit, strength, age.</source>
        <translation>Dunkle Malze, Trockenobst, Stärke, Alter.</translation>
    </message>
    <message>
        <source>A cooler store if it comes too early.</source>
        <translation>Ein kühleres Lager, wenn es zu früh kommt.</translation>
    </message>
    <message>
        <source>Hops, blossoms, honey, grapes with much scent.</source>
        <translation>Hopfen, Blüten, Honig, duftige Trauben.</translation>
    </message>
    <message>
        <source>Added late and kept cool they stay. Boiling and a fast ferment carry them off.</source>
        <translation>Spät zugegeben und kühl gehalten bleiben sie. Kochen und eine schnelle Gärung tragen sie davon.</translation>
    </message>
    <message>
        <source>Made by the yeast, and more of it in a warm ferment.</source>
        <translation>Macht die Hefe, und in warmer Gärung mehr davon.</translation>
    </message>
    <message>
        <source>A cooler ferment if it covers the rest.</source>
        <translation>Eine kühlere Gärung, wenn es den Rest zudeckt.</translation>
    </message>
    <message>
        <source>Honey; in beer often age and air.</source>
        <translation>Honig; im Bier oft Alter und Luft.</translation>
    </message>
    <message>
        <source>In mead a honey with much scent and no boiling. In beer keep air out and store cool.</source>
        <translation>Beim Met ein duftiger Honig und kein Kochen. Beim Bier Luft fernhalten und kühl lagern.</translation>
    </message>
    <message>
        <source>Honey that carried wax, or age.</source>
        <translation>Honig, der Wachs mitbrachte, oder Alter.</translation>
    </message>
    <message>
        <source>Skim or strain the honey, and give it time.</source>
        <translation>Schäum oder seih den Honig ab, und lass ihm Zeit.</translation>
    </message>
    <message>
        <source>Hops left in for long, hops that lay damp, or unripe fruit.</source>
        <translation>Hopfen, der lange darin blieb oder feucht lag, oder unreifes Obst.</translation>
    </message>
    <message>
        <source>Shorter hop stands, fresh hops, riper fruit.</source>
        <translation>Hopfen kürzer stehen lassen, frischer Hopfen, reiferes Obst.</translation>
    </message>
    <message>
        <source>Hops.</source>
        <translation>Hopfen.</translation>
    </message>
    <message>
        <source>Choose other hops, or fewer.</source>
        <translation>Nimm anderen Hopfen, oder weniger.</translation>
    </message>
    <message>
        <source>Hops, herbs, or stems that came along.</source>
        <translation>Hopfen, Kräuter, oder Stiele, die mitkamen.</translation>
    </message>
    <message>
        <source>A shorter steep, or fewer of them.</source>
        <translation>Kürzer ziehen lassen, oder weniger davon.</translation>
    </message>
    <message>
        <source>Grapes that were not ripe, or much leaf in the press.</source>
        <translation>Trauben, die nicht reif waren, oder viel Laub in der Presse.</translation>
    </message>
    <message>
        <source>Riper fruit, and the leaves out. It fades slowly if at all.</source>
        <translation>Reifere Früchte, und das Laub heraus. Es vergeht langsam oder gar nicht.</translation>
    </message>
    <message>
        <source>Stems and leaves with the fruit, or hard pressing.</source>
        <translation>Stiele und Blätter am Obst, oder hartes Pressen.</translation>
    </message>
    <message>
        <source>Take the stems out and press gently.</source>
        <translation>Nimm die Stiele heraus und press sanft.</translation>
    </message>
    <message>
        <source>Some wheat beer yeasts make it on purpose; wild yeast makes it uninvited.</source>
        <translation>Manche Weizenbierhefen machen es mit Absicht; wilde Hefe ungebeten.</translation>
    </message>
    <message>
        <source>Another yeast, and a clean start.</source>
        <translation>Andere Hefe, und ein sauberer Start.</translation>
    </message>
    <message>
        <source>Some yeasts, some grapes, or spice.</source>
        <translation>Manche Hefen, manche Trauben, oder Gewürz.</translation>
    </message>
    <message>
        <source>Another yeast, or less spice.</source>
        <translation>Andere Hefe, oder weniger Gewürz.</translation>
    </message>
    <message>
        <source>Esters of the ferment, dark malts, herbs or spice.</source>
        <translation>Ester der Gärung, dunkle Malze, Kräuter oder Gewürz.</translation>
    </message>
    <message>
        <source>Find out which: smell the spice and an older bottle beside it.</source>
        <translation>Finde heraus, was es ist: riech am Gewürz und daneben an einer älteren Flasche.</translation>
    </message>
    <message>
        <source>Spice that was added, sometimes the barrel.</source>
        <translation>Gewürz, das zugegeben wurde, manchmal das Fass.</translation>
    </message>
    <message>
        <source>Small doses, tasted in between. It can be added and never taken out.</source>
        <translation>Kleine Mengen, dazwischen probieren. Dazugeben geht, herausnehmen nie.</translation>
    </message>
    <message>
        <source>Oak, or vanilla itself.</source>
        <translation>Eiche, oder Vanille selbst.</translation>
    </message>
    <message>
        <source>A shorter stay, or older wood.</source>
        <translation>Kürzer darin, oder älteres Holz.</translation>
    </message>
    <message>
        <source>New oak, some kinds more than others.</source>
        <translation>Neue Eiche, manche Arten mehr als andere.</translation>
    </message>
    <message>
        <source>A shorter stay, older wood, or wood with more toast.</source>
        <translation>Kürzer darin, älteres oder stärker getoastetes Holz.</translation>
    </message>
    <message>
        <source>Much new wood at once, or wood that was not seasoned.</source>
        <translation>Viel neues Holz auf einmal, oder Holz, das nicht abgelagert war.</translation>
    </message>
    <message>
        <source>A shorter stay and more toast; then time.</source>
        <translation>Kürzer darin und mehr Toastung; dann Zeit.</translation>
    </message>
    <message>
        <source>Smoked malt or charred wood. Uninvited, often Brettanomyces.</source>
        <translation>Rauchmalz oder verkohltes Holz. Ungebeten oft Brettanomyces.</translation>
    </message>
    <message>
        <source>Less of the smoked malt. For the uninvited kind hygiene; some styles want it.</source>
        <translation>Weniger vom Rauchmalz. Gegen den ungebetenen Sauberkeit; manche Stile wollen ihn.</translation>
    </message>
    <message>
        <source>Sugar that the yeast left, or that was added.</source>
        <translation>Zucker, den die Hefe übrig ließ oder der zugegeben wurde.</translation>
    </message>
    <message>
        <source>Compare the gravity with the planned one. Let it finish, or choose a yeast that goes further.</source>
        <translation>Vergleich die Dichte mit der geplanten. Lass es fertig gären, oder nimm eine Hefe, die weiter geht.</translation>
    </message>
    <message>
        <source>A ferment that stopped early, or little acid and bitterness against the sugar.</source>
        <translation>Eine Gärung, die zu früh stehen blieb, oder wenig Säure und Bittere gegen den Zucker.</translation>
    </message>
    <message>
        <source>Find out why it stopped. In what is stable a little acid can balance it: try it in a measured glass first.</source>
        <translation>Finde heraus, warum sie stehen blieb. Was stabil ist, kann etwas Säure ausgleichen: probier es erst in einem abgemessenen Glas.</translation>
    </message>
    <message>
        <source>Little sugar is left. In cider nearly always so.</source>
        <translation>Wenig Zucker ist übrig. Beim Cider fast immer.</translation>
    </message>
    <message>
        <source>A warmer mash or another yeast next time. Sweeten only what is stable.</source>
        <translation>Nächstes Mal wärmer maischen oder eine andere Hefe. Süße nur, was stabil ist.</translation>
    </message>
    <message>
        <source>Sweeteners that yeast does not eat, or their aftertaste.</source>
        <translation>Süßstoffe, die die Hefe nicht frisst, oder ihr Nachgeschmack.</translation>
    </message>
    <message>
        <source>Less of it, or another one. Some people taste it much more than others.</source>
        <translation>Weniger davon, oder ein anderer. Manche Leute schmecken ihn viel stärker als andere.</translation>
    </message>
    <message>
        <source>Fruit acids or added acid; where none was planned, bacteria.</source>
        <translation>Fruchtsäuren oder zugesetzte Säure; wo keine geplant war, Bakterien.</translation>
    </message>
    <message>
        <source>Ask first whether it was meant. If not: hygiene, and another bottle beside it.</source>
        <translation>Frag zuerst, ob es gewollt war. Wenn nicht: Sauberkeit, und eine andere Flasche daneben.</translation>
    </message>
    <message>
        <source>Lactic bacteria, invited or not.</source>
        <translation>Milchsäurebakterien, eingeladen oder nicht.</translation>
    </message>
    <message>
        <source>Some styles want it. Else hygiene and a cool store.</source>
        <translation>Manche Stile wollen es. Sonst Sauberkeit und ein kühles Lager.</translation>
    </message>
    <message>
        <source>Bacteria and air.</source>
        <translation>Bakterien und Luft.</translation>
    </message>
    <message>
        <source>Top up and seal. Mostly it cannot be undone.</source>
        <translation>Auffüllen und verschließen. Meist ist es nicht rückgängig zu machen.</translation>
    </message>
    <message>
        <source>Sharp or unripe fruit.</source>
        <translation>Herbes oder unreifes Obst.</translation>
    </message>
    <message>
        <source>Riper fruit, blending, or lactic bacteria that are let in on purpose.</source>
        <translation>Reiferes Obst, Verschneiden, oder Milchsäurebakterien, die man mit Absicht hineinlässt.</translation>
    </message>
    <message>
        <source>Little acid against sweetness or alcohol.</source>
        <translation>Wenig Säure gegen Süße oder Alkohol.</translation>
    </message>
    <message>
        <source>A little acid in measured glasses first, then in the batch.</source>
        <translation>Etwas Säure, erst in abgemessenen Gläsern, dann im Ansatz.</translation>
    </message>
    <message>
        <source>Hops in beer; elsewhere peel, pith or tannin.</source>
        <translation>Beim Bier Hopfen; sonst Schale, weiße Haut oder Gerbstoff.</translation>
    </message>
    <message>
        <source>Fewer hops at the start of the boil; fruit pressed more gently.</source>
        <translation>Weniger Hopfen zu Kochbeginn; Obst sanfter pressen.</translation>
    </message>
    <message>
        <source>Old hops, long contact, much roasted grain, or water with much sulphate.</source>
        <translation>Alter Hopfen, langer Kontakt, viel Röstmalz, oder Wasser mit viel Sulfat.</translation>
    </message>
    <message>
        <source>Fresh hops, a shorter contact, softer water. Time helps a little.</source>
        <translation>Frischer Hopfen, kürzerer Kontakt, weicheres Wasser. Zeit hilft ein wenig.</translation>
    </message>
    <message>
        <source>The white of the peel, or fruit pressed hard.</source>
        <translation>Das Weiße der Schale, oder hart gepresstes Obst.</translation>
    </message>
    <message>
        <source>Only the coloured peel, and a gentler press.</source>
        <translation>Nur die farbige Schale, und sanfteres Pressen.</translation>
    </message>
    <message>
        <source>Salts in the water, or salt as an ingredient.</source>
        <translation>Salze im Wasser, oder Salz als Zutat.</translation>
    </message>
    <message>
        <source>Weigh the salts, and know the water before adding any.</source>
        <translation>Wieg die Salze ab, und kenn das Wasser, bevor du welche zugibst.</translation>
    </message>
    <message>
        <source>Hard water; in wine a word for many things.</source>
        <translation>Hartes Wasser; beim Wein ein Wort für vieles.</translation>
    </message>
    <message>
        <source>Softer water next time, if somebody minds.</source>
        <translation>Nächstes Mal weicheres Wasser, wenn es jemanden stört.</translation>
    </message>
    <message>
        <source>A very dry ferment, low strength, or too much water.</source>
        <translation>Eine sehr trockene Gärung, wenig Alkohol, oder zu viel Wasser.</translation>
    </message>
    <message>
        <source>A warmer mash, more honey or fruit. Compare with the planned gravities.</source>
        <translation>Wärmer maischen, mehr Honig oder Obst. Vergleich mit den geplanten Dichten.</translation>
    </message>
    <message>
        <source>Malt, sugar or strength that stayed.</source>
        <translation>Malz, Zucker oder Alkohol, die blieben.</translation>
    </message>
    <message>
        <source>A cooler mash or a yeast that goes further, if it is too much.</source>
        <translation>Kühler maischen oder eine Hefe, die weiter geht, wenn es zu viel ist.</translation>
    </message>
    <message>
        <source>Oats, wheat, small bubbles.</source>
        <translation>Hafer, Weizen, kleine Bläschen.</translation>
    </message>
    <message>
        <source>More of them, or a slower pour.</source>
        <translation>Mehr davon, oder langsamer einschenken.</translation>
    </message>
    <message>
        <source>Tannin of husk, skin, wood or hops.</source>
        <translation>Gerbstoff aus Spelzen, Schale, Holz oder Hopfen.</translation>
    </message>
    <message>
        <source>A cooler sparge, a gentler press, a shorter stay. Time rounds it.</source>
        <translation>Kühler anschwänzen, sanfter pressen, kürzer darin. Zeit rundet es ab.</translation>
    </message>
    <message>
        <source>Alcohol.</source>
        <translation>Alkohol.</translation>
    </message>
    <message>
        <source>Time makes it softer, not weaker. Pour less.</source>
        <translation>Zeit macht ihn weicher, nicht schwächer. Schenk weniger ein.</translation>
    </message>
    <message>
        <source>A hot or stressed ferment; strong and still young.</source>
        <translation>Eine heiße Gärung oder Hefe unter Stress; stark und noch jung.</translation>
    </message>
    <message>
        <source>Cooler and with nutrient next time; age for this one.</source>
        <translation>Nächstes Mal kühler und mit Nährstoff; für diesen hier Zeit.</translation>
    </message>
    <message>
        <source>Much carbon dioxide: by plan, or a ferment that went on in the bottle.</source>
        <translation>Viel Kohlendioxid: geplant, oder eine Gärung, die in der Flasche weiterging.</translation>
    </message>
    <message>
        <source>Colder and slower pouring. If it was not planned, see to the other bottles.</source>
        <translation>Kälter und langsamer einschenken. Wenn es nicht geplant war, sieh nach den anderen Flaschen.</translation>
    </message>
    <message>
        <source>Leaking caps, little sugar or tired yeast at bottling, or too cold since then.</source>
        <translation>Undichte Kronkorken, wenig Zucker oder müde Hefe beim Abfüllen, oder seither zu kalt.</translation>
    </message>
    <message>
        <source>Some weeks in a warmer room before anything is added.</source>
        <translation>Einige Wochen in einem wärmeren Raum, bevor etwas zugegeben wird.</translation>
    </message>
    <message>
        <source>Bottled before the end, too much sugar, wild yeast, or mouldy grain.</source>
        <translation>Zu früh abgefüllt, zu viel Zucker, wilde Hefe, oder schimmeliges Getreide.</translation>
    </message>
    <message>
        <source>Leave the other bottles closed and cool. Next time a stable gravity over several days before bottling.</source>
        <translation>Lass die anderen Flaschen zu und kühl. Nächstes Mal vor dem Abfüllen einige Tage gleichbleibende Dichte.</translation>
    </message>
    <message>
        <source>Yeast that is still afloat, or that was poured along.</source>
        <translation>Hefe, die noch schwebt oder mit eingeschenkt wurde.</translation>
    </message>
    <message>
        <source>Time, cold, and leaving the last one or two centimetres in the bottle.</source>
        <translation>Zeit, Kälte, und die letzten ein, zwei Zentimeter in der Flasche lassen.</translation>
    </message>
    <message>
        <source>Yeast that broke down: a long time on it, or warmth.</source>
        <translation>Hefe, die zerfallen ist: lange Zeit darauf, oder Wärme.</translation>
    </message>
    <message>
        <source>Rack in time, store cool.</source>
        <translation>Rechtzeitig abziehen, kühl lagern.</translation>
    </message>
    <message>
        <source>Off the yeast too early, or bacteria.</source>
        <translation>Zu früh von der Hefe, oder Bakterien.</translation>
    </message>
    <message>
        <source>A warm rest near the end, time, hygiene.</source>
        <translation>Eine warme Rast gegen Ende, Zeit, Sauberkeit.</translation>
    </message>
    <message>
        <source>Young, or oxidation.</source>
        <translation>Jung, oder Oxidation.</translation>
    </message>
    <message>
        <source>Time on healthy yeast; keep air out.</source>
        <translation>Zeit auf gesunder Hefe; Luft fernhalten.</translation>
    </message>
    <message>
        <source>Stressed yeast, a hot ferment.</source>
        <translation>Hefe unter Stress, eine heiße Gärung.</translation>
    </message>
    <message>
        <source>Keep temperature and oxygen in hand.</source>
        <translation>Temperatur und Sauerstoff im Griff behalten.</translation>
    </message>
    <message>
        <source>A long time on the lees, or glasses that were not rinsed.</source>
        <translation>Lange Zeit auf dem Hefesatz, oder Gläser, die nicht gespült waren.</translation>
    </message>
    <message>
        <source>Rack earlier. Rinse the glasses with plain water and pour again.</source>
        <translation>Früher abziehen. Spül die Gläser mit klarem Wasser und schenk neu ein.</translation>
    </message>
    <message>
        <source>Esters of a warm ferment, above all with some wheat beer yeasts.</source>
        <translation>Ester einer warmen Gärung, vor allem bei manchen Weizenbierhefen.</translation>
    </message>
    <message>
        <source>A cooler ferment.</source>
        <translation>Eine kühlere Gärung.</translation>
    </message>
    <message>
        <source>being planned</source>
        <translation>in Planung</translation>
    </message>
    <message>
        <source>sealed and not yet tasted</source>
        <translation>versiegelt und noch nicht verkostet</translation>
    </message>
    <message>
        <source>at the table</source>
        <translation>am Tisch</translation>
    </message>
    <message>
        <source>closed, with the key still sealed</source>
        <translation>geschlossen, der Schlüssel noch versiegelt</translation>
    </message>
    <message>
        <source>revealed</source>
        <translation>geöffnet</translation>
    </message>
    <message>
        <source>broken: the key was opened early</source>
        <translation>gebrochen: der Schlüssel wurde zu früh geöffnet</translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation>aufgegeben</translation>
    </message>
    <message>
        <source>The plan was sealed.</source>
        <translation>Der Plan wurde versiegelt.</translation>
    </message>
    <message>
        <source>The pour sheet was opened.</source>
        <translation>Das Einschenkblatt wurde geöffnet.</translation>
    </message>
    <message>
        <source>The pourer said that everything stands ready.</source>
        <translation>Wer einschenkt, sagte, dass alles bereitsteht.</translation>
    </message>
    <message>
        <source>The pourer said what really went into a cup at place {place}, round {round}.</source>
        <translation>Wer einschenkt, sagte, was wirklich in einen Becher an Platz {place}, Runde {round} kam.</translation>
    </message>
    <message>
        <source>The pourer said what really went into a cup.</source>
        <translation>Wer einschenkt, sagte, was wirklich in einen Becher kam.</translation>
    </message>
    <message>
        <source>Somebody sat down at place {place}.</source>
        <translation>Jemand setzte sich an Platz {place}.</translation>
    </message>
    <message>
        <source>Somebody sat down.</source>
        <translation>Jemand setzte sich.</translation>
    </message>
    <message>
        <source>Place {place} stopped.</source>
        <translation>Platz {place} hörte auf.</translation>
    </message>
    <message>
        <source>Somebody stopped.</source>
        <translation>Jemand hörte auf.</translation>
    </message>
    <message>
        <source>Cup {code} was spilled and poured again as {by}.</source>
        <translation>Becher {code} wurde verschüttet und neu eingeschenkt als {by}.</translation>
    </message>
    <message>
        <source>A cup was spilled at place {place}, round {round}, and poured again under a spare code.</source>
        <translation>An Platz {place}, Runde {round} wurde ein Becher verschüttet und unter einem Ersatzcode neu eingeschenkt.</translation>
    </message>
    <message>
        <source>A cup was spilled and poured again under a spare code.</source>
        <translation>Ein Becher wurde verschüttet und unter einem Ersatzcode neu eingeschenkt.</translation>
    </message>
    <message>
        <source>Round {round} at place {place} was set aside and does not count.</source>
        <translation>Runde {round} an Platz {place} wurde beiseitegestellt und zählt nicht.</translation>
    </message>
    <message>
        <source>A round was set aside and does not count.</source>
        <translation>Eine Runde wurde beiseitegestellt und zählt nicht.</translation>
    </message>
    <message>
        <source>Something was said aloud, and everybody heard it.</source>
        <translation>Etwas wurde laut gesagt, und alle haben es gehört.</translation>
    </message>
    <message>
        <source>Something was said aloud, heard at place {places}.</source>
        <translation>Etwas wurde laut gesagt, gehört an Platz {places}.</translation>
    </message>
    <message>
        <source>Something was said aloud, heard at places {places}.</source>
        <translation>Etwas wurde laut gesagt, gehört an den Plätzen {places}.</translation>
    </message>
    <message>
        <source>Two places had each other&apos;s cups before them in round {round}.</source>
        <translation>Zwei Plätze hatten in Runde {round} die Becher des jeweils anderen vor sich.</translation>
    </message>
    <message>
        <source>Two places had each other&apos;s cups before them.</source>
        <translation>Zwei Plätze hatten die Becher des jeweils anderen vor sich.</translation>
    </message>
    <message>
        <source>The wrong person sat at place {place}, and got up again.</source>
        <translation>An Platz {place} saß die falsche Person und stand wieder auf.</translation>
    </message>
    <message>
        <source>The wrong person sat down, and got up again.</source>
        <translation>Die falsche Person setzte sich und stand wieder auf.</translation>
    </message>
    <message>
        <source>What stood under the cups of round {round} at place {place} was read off.</source>
        <translation>Was unter den Bechern von Runde {round} an Platz {place} stand, wurde abgelesen.</translation>
    </message>
    <message>
        <source>What stood under the cups was read off.</source>
        <translation>Was unter den Bechern stand, wurde abgelesen.</translation>
    </message>
    <message>
        <source>The table was opened.</source>
        <translation>Der Tisch wurde geöffnet.</translation>
    </message>
    <message>
        <source>Place {place} began round {round}.</source>
        <translation>Platz {place} begann Runde {round}.</translation>
    </message>
    <message>
        <source>A round was begun.</source>
        <translation>Eine Runde wurde begonnen.</translation>
    </message>
    <message>
        <source>Place {place} locked round {round}.</source>
        <translation>Platz {place} legte Runde {round} fest.</translation>
    </message>
    <message>
        <source>An answer was locked.</source>
        <translation>Eine Antwort wurde festgelegt.</translation>
    </message>
    <message>
        <source>After a round the program opened the key for itself, to say go on or stop.</source>
        <translation>Nach einer Runde öffnete das Programm den Schlüssel für sich, um weiter oder aufhören zu sagen.</translation>
    </message>
    <message>
        <source>After round {round} the program opened the key for itself, to say go on or stop.</source>
        <translation>Nach Runde {round} öffnete das Programm den Schlüssel für sich, um weiter oder aufhören zu sagen.</translation>
    </message>
    <message>
        <source>The program had looked after a round.</source>
        <translation>Das Programm hatte nach einer Runde nachgesehen.</translation>
    </message>
    <message>
        <source>After round {round} it said: go on.</source>
        <translation>Nach Runde {round} sagte es: weiter.</translation>
    </message>
    <message>
        <source>After round {round} it said: stop.</source>
        <translation>Nach Runde {round} sagte es: aufhören.</translation>
    </message>
    <message>
        <source>The table was closed. 1 answer is missing.</source>
        <translation>Der Tisch wurde geschlossen. 1 Antwort fehlt.</translation>
    </message>
    <message>
        <source>The table was closed. {n} answers are missing.</source>
        <translation>Der Tisch wurde geschlossen. {n} Antworten fehlen.</translation>
    </message>
    <message>
        <source>The table was closed.</source>
        <translation>Der Tisch wurde geschlossen.</translation>
    </message>
    <message>
        <source>The key was opened.</source>
        <translation>Der Schlüssel wurde geöffnet.</translation>
    </message>
    <message>
        <source>The key was opened. Plan and key are what was sealed.</source>
        <translation>Der Schlüssel wurde geöffnet. Plan und Schlüssel sind das, was versiegelt wurde.</translation>
    </message>
    <message>
        <source>The key was opened. Plan or key are not what was sealed.</source>
        <translation>Der Schlüssel wurde geöffnet. Plan oder Schlüssel sind nicht das, was versiegelt wurde.</translation>
    </message>
    <message>
        <source>The seal was broken early. No verdict can come of this session.</source>
        <translation>Das Siegel wurde zu früh gebrochen. Ein Urteil kann aus dieser Verkostung nicht werden.</translation>
    </message>
    <message>
        <source>The session was abandoned.</source>
        <translation>Die Verkostung wurde aufgegeben.</translation>
    </message>
    <message>
        <source>What will be done was written down.</source>
        <translation>Was getan werden soll, wurde aufgeschrieben.</translation>
    </message>
    <message>
        <source>What somebody left here was destroyed at their wish.</source>
        <translation>Was jemand hier hinterlassen hat, wurde auf eigenen Wunsch vernichtet.</translation>
    </message>
    <message>
        <source>Reason: {reason}.</source>
        <translation>Grund: {reason}.</translation>
    </message>
    <message>
        <source>the pourer was not sure</source>
        <translation>beim Einschenken nicht sicher</translation>
    </message>
    <message>
        <source>poured wrong</source>
        <translation>falsch eingeschenkt</translation>
    </message>
    <message>
        <source>cups mixed up</source>
        <translation>Becher vertauscht</translation>
    </message>
    <message>
        <source>tasted by somebody else</source>
        <translation>von jemand anderem verkostet</translation>
    </message>
    <message>
        <source>a cup was lost</source>
        <translation>ein Becher ging verloren</translation>
    </message>
    <message>
        <source>another reason</source>
        <translation>ein anderer Grund</translation>
    </message>
    <message>
        <source>what stood under a cup could not be read</source>
        <translation>was unter einem Becher stand, war nicht zu lesen</translation>
    </message>
    <message>
        <source>what was read under the cups does not add up</source>
        <translation>was unter den Bechern abgelesen wurde, geht nicht auf</translation>
    </message>
    <message>
        <source>a code was misread</source>
        <translation>ein Code wurde falsch gelesen</translation>
    </message>
    <message>
        <source>read from a file</source>
        <translation>aus einer Datei gelesen</translation>
    </message>
    <message>
        <source>demo</source>
        <translation>Demo</translation>
    </message>
    <message>
        <source>No entry of the record was altered, and none is missing.</source>
        <translation>Kein Eintrag des Protokolls wurde verändert, und keiner fehlt.</translation>
    </message>
    <message>
        <source>An entry of the record was altered or is missing.</source>
        <translation>Ein Eintrag des Protokolls wurde verändert oder fehlt.</translation>
    </message>
    <message>
        <source>The steps follow each other as they may.</source>
        <translation>Die Schritte folgen einander, wie sie dürfen.</translation>
    </message>
    <message>
        <source>A step was taken that is not allowed there.</source>
        <translation>Ein Schritt wurde getan, der dort nicht erlaubt ist.</translation>
    </message>
    <message>
        <source>The plan is the one that was sealed.</source>
        <translation>Der Plan ist der, der versiegelt wurde.</translation>
    </message>
    <message>
        <source>The plan is not the one that was sealed.</source>
        <translation>Der Plan ist nicht der, der versiegelt wurde.</translation>
    </message>
    <message>
        <source>Plan and key are what was sealed.</source>
        <translation>Plan und Schlüssel sind das, was versiegelt wurde.</translation>
    </message>
    <message>
        <source>Orders and codes follow from the seed.</source>
        <translation>Reihenfolgen und Codes folgen aus dem Startwert.</translation>
    </message>
    <message>
        <source>Orders or codes do not follow from the seed.</source>
        <translation>Reihenfolgen oder Codes folgen nicht aus dem Startwert.</translation>
    </message>
    <message>
        <source>The answers are the ones that were locked.</source>
        <translation>Die Antworten sind die, die festgelegt wurden.</translation>
    </message>
    <message>
        <source>An answer is not the one that was locked.</source>
        <translation>Eine Antwort ist nicht die, die festgelegt wurde.</translation>
    </message>
    <message>
        <source>The remarks on the sheets are the ones that were locked.</source>
        <translation>Die Bemerkungen auf den Bögen sind die, die festgelegt wurden.</translation>
    </message>
    <message>
        <source>A remark on a sheet is not the one that was locked.</source>
        <translation>Eine Bemerkung auf einem Bogen ist nicht die, die festgelegt wurde.</translation>
    </message>
    <message>
        <source>What would be done is what was written before.</source>
        <translation>Was getan werden sollte, ist das, was vorher aufgeschrieben wurde.</translation>
    </message>
    <message>
        <source>What would be done is not what was written before.</source>
        <translation>Was getan werden sollte, ist nicht das, was vorher aufgeschrieben wurde.</translation>
    </message>
    <message>
        <source>Reasons and decisions are as they were written.</source>
        <translation>Gründe und Beschlüsse sind so, wie sie geschrieben wurden.</translation>
    </message>
    <message>
        <source>A reason or a decision is not as it was written.</source>
        <translation>Ein Grund oder ein Beschluss ist nicht so, wie er geschrieben wurde.</translation>
    </message>
    <message>
        <source>What the pourer said about the cups is as it was said.</source>
        <translation>Was beim Einschenken über die Becher gesagt wurde, ist so, wie es gesagt wurde.</translation>
    </message>
    <message>
        <source>What the pourer said about the cups was altered.</source>
        <translation>Was beim Einschenken über die Becher gesagt wurde, wurde verändert.</translation>
    </message>
    <message>
        <source>Names stand only where somebody signed.</source>
        <translation>Namen stehen nur da, wo jemand mit Namen dabei war.</translation>
    </message>
    <message>
        <source>A name stands where nobody signed.</source>
        <translation>Ein Name steht da, wo niemand mit Namen dabei war.</translation>
    </message>
    <message>
        <source>This holds: {what}.</source>
        <translation>Das stimmt: {what}.</translation>
    </message>
    <message>
        <source>This does not hold: {what}.</source>
        <translation>Das stimmt nicht: {what}.</translation>
    </message>
    <message>
        <source>{sentence} First at: {where}.</source>
        <translation>{sentence} Zuerst bei: {where}.</translation>
    </message>
    <message>
        <source>This record does not check. What there is is shown, not trusted. Compare with your backup.</source>
        <translation>Dieses Protokoll stimmt nicht. Was da ist, wird gezeigt, aber nicht geglaubt. Vergleich mit deiner Sicherung.</translation>
    </message>
    <message>
        <source>This record checks.</source>
        <translation>Dieses Protokoll stimmt.</translation>
    </message>
    <message>
        <source>This record checks so far. Plan and key are compared with the seal once the key is open.</source>
        <translation>Dieses Protokoll stimmt so weit. Plan und Schlüssel werden mit dem Siegel verglichen, sobald der Schlüssel offen ist.</translation>
    </message>
    <message>
        <source>the first drink</source>
        <translation>das erste Getränk</translation>
    </message>
    <message>
        <source>the second drink</source>
        <translation>das zweite Getränk</translation>
    </message>
    <message>
        <source>Known beforehand: {lot} has more of “{word}”.</source>
        <translation>Vorher bekannt: {lot} hat mehr von „{word}“.</translation>
    </message>
    <message>
        <source>Known beforehand: {lot} has more of “{word}” ({dose}).</source>
        <translation>Vorher bekannt: {lot} hat mehr von „{word}“ ({dose}).</translation>
    </message>
    <message>
        <source>{right} of {trials}</source>
        <translation>{right} von {trials}</translation>
    </message>
    <message>
        <source>{what} {n}</source>
        <translation>{what} {n}</translation>
    </message>
    <message>
        <source>no preference</source>
        <translation>keine Vorliebe</translation>
    </message>
    <message>
        <source>liked better: {list}</source>
        <translation>gefiel besser: {list}</translation>
    </message>
    <message>
        <source>{right}; {liked}</source>
        <translation>{right}; {liked}</translation>
    </message>
    <message>
        <source>{right} right</source>
        <translation>{right} richtig</translation>
    </message>
    <message>
        <source>A maker, beside the panel and not counted with it: {name}, {answers}.</source>
        <translation>Hat daran mitgemacht, steht neben dem Panel und zählt nicht dazu: {name}, {answers}.</translation>
    </message>
    <message>
        <source>A maker, beside the panel and not counted with it: {answers}.</source>
        <translation>Hat daran mitgemacht, steht neben dem Panel und zählt nicht dazu: {answers}.</translation>
    </message>
    <message>
        <source>{name}: {text}</source>
        <translation>{name}: {text}</translation>
    </message>
    <message>
        <source>1 person asked to be only in the sums.</source>
        <translation>1 Person wollte nur in den Summen stehen.</translation>
    </message>
    <message>
        <source>{n} people asked to be only in the sums.</source>
        <translation>{n} Leute wollten nur in den Summen stehen.</translation>
    </message>
    <message>
        <source>Looked at afterwards: people seem to differ in how well they tell; if they did not, as much would come up {often}. Read single people&apos;s counts with care: much of their spread may be luck.</source>
        <translation>Im Nachhinein angesehen: die Leute scheinen es verschieden gut zu merken; wäre das nicht so, käme so viel {often} heraus. Lies die Zahlen einzelner Leute mit Vorsicht: viel von ihrer Streuung kann Glück sein.</translation>
    </message>
    <message>
        <source>Looked at afterwards: it is not shown that people differ in how well they tell. Read single people&apos;s counts with care: their spread may be luck.</source>
        <translation>Im Nachhinein angesehen: dass die Leute es verschieden gut merken, ist nicht gezeigt. Lies die Zahlen einzelner Leute mit Vorsicht: ihre Streuung kann Glück sein.</translation>
    </message>
    <message>
        <source>{time}: {text}</source>
        <translation>{time}: {text}</translation>
    </message>
    <message>
        <source>triangle</source>
        <translation>Dreieckstest</translation>
    </message>
    <message>
        <source>duo-trio</source>
        <translation>Duo-Trio</translation>
    </message>
    <message>
        <source>tetrad</source>
        <translation>Tetradentest</translation>
    </message>
    <message>
        <source>two-out-of-five</source>
        <translation>Zwei aus fünf</translation>
    </message>
    <message>
        <source>directional pair</source>
        <translation>gerichteter Paarvergleich</translation>
    </message>
    <message>
        <source>3-AFC</source>
        <translation>3-AFC</translation>
    </message>
    <message>
        <source>same-different</source>
        <translation>Gleich oder verschieden</translation>
    </message>
    <message>
        <source>A-not-A</source>
        <translation>A – nicht A</translation>
    </message>
    <message>
        <source>paired preference</source>
        <translation>Paarvergleich nach Vorliebe</translation>
    </message>
    <message>
        <source>score sheet</source>
        <translation>Bewertungsbogen</translation>
    </message>
    <message>
        <source>A triangle: three cups, two of one drink and one of the other. Which one is odd?</source>
        <translation>Ein Dreieckstest: drei Becher, zwei vom einen Getränk und einer vom anderen. Welcher weicht ab?</translation>
    </message>
    <message>
        <source>A duo-trio: a marked cup first, then two coded ones. Which of the two is the same as the marked cup?</source>
        <translation>Ein Duo-Trio: zuerst ein markierter Becher, dann zwei mit Code. Welcher der beiden ist wie der markierte?</translation>
    </message>
    <message>
        <source>A tetrad: four cups, two of each drink. Which two go together?</source>
        <translation>Ein Tetradentest: vier Becher, zwei von jedem Getränk. Welche zwei gehören zusammen?</translation>
    </message>
    <message>
        <source>Two out of five: five cups, three of one drink and two of the other. Which two are the odd ones?</source>
        <translation>Zwei aus fünf: fünf Becher, drei vom einen Getränk und zwei vom anderen. Welche zwei weichen ab?</translation>
    </message>
    <message>
        <source>Same-different: two cups, of one drink or of both. Are they the same or not?</source>
        <translation>Gleich oder verschieden: zwei Becher, von einem Getränk oder von beiden. Ist beide Male dasselbe darin oder nicht?</translation>
    </message>
    <message>
        <source>A-not-A: a marked cup to learn, then one coded cup. Is it the same as the marked one or not?</source>
        <translation>A – nicht A: ein markierter Becher zum Merken, dann ein Becher mit Code. Ist er wie der markierte oder nicht?</translation>
    </message>
    <message>
        <source>A paired preference: two cups, one of each drink. Which one do you like better?</source>
        <translation>Ein Paarvergleich nach Vorliebe: zwei Becher, einer von jedem Getränk. Welcher gefällt dir besser?</translation>
    </message>
    <message>
        <source>Score sheets: each person gets all the cups under codes and says of each one what they find.</source>
        <translation>Bewertungsbögen: alle bekommen alle Becher unter Codes und sagen von jedem, was sie finden.</translation>
    </message>
    <message>
        <source>The marked cup holds either drink, drawn for each flight (balanced reference).</source>
        <translation>Im markierten Becher steht eines der beiden Getränke, für jeden Satz ausgelost (ausgewogene Referenz).</translation>
    </message>
    <message>
        <source>The marked cup always holds {lot} (constant reference).</source>
        <translation>Im markierten Becher steht immer {lot} (feste Referenz).</translation>
    </message>
    <message>
        <source>Can anyone tell them apart?</source>
        <translation>Kann irgendwer sie auseinanderhalten?</translation>
    </message>
    <message>
        <source>Is mine more …?</source>
        <translation>Hat meines mehr …?</translation>
    </message>
    <message>
        <source>Is mine more {more}?</source>
        <translation>Hat meines mehr davon: {more}?</translation>
    </message>
    <message>
        <source>Which do people prefer?</source>
        <translation>Welches mögen die Leute lieber?</translation>
    </message>
    <message>
        <source>How good is it really?</source>
        <translation>Wie gut ist es wirklich?</translation>
    </message>
    <message>
        <source>What is it like, and what does it lack next to the reference?</source>
        <translation>Wie ist es, und was fehlt ihm neben der Referenz?</translation>
    </message>
    <message>
        <source>Can my friends taste what I know is there?</source>
        <translation>Schmecken meine Leute, was ich darin weiß?</translation>
    </message>
    <message>
        <source>Do I notice “{more}” where I know it is?</source>
        <translation>Merke ich „{more}“, wo ich es weiß?</translation>
    </message>
    <message>
        <source>Can my friends notice “{more}”?</source>
        <translation>Merken meine Leute „{more}“?</translation>
    </message>
    <message>
        <source>Which one is the odd one?</source>
        <translation>Welcher weicht ab?</translation>
    </message>
    <message>
        <source>Which one is the same as the marked cup?</source>
        <translation>Welcher ist wie der markierte Becher?</translation>
    </message>
    <message>
        <source>Which two go together?</source>
        <translation>Welche zwei gehören zusammen?</translation>
    </message>
    <message>
        <source>Which two are the odd ones?</source>
        <translation>Welche zwei weichen ab?</translation>
    </message>
    <message>
        <source>Are these two the same?</source>
        <translation>Ist in beiden dasselbe?</translation>
    </message>
    <message>
        <source>Is the coded cup the same as the marked one?</source>
        <translation>Ist der Becher mit Code wie der markierte?</translation>
    </message>
    <message>
        <source>Which one do you like better?</source>
        <translation>Welcher gefällt dir besser?</translation>
    </message>
    <message>
        <source>What do you find in each cup?</source>
        <translation>Was findest du in jedem Becher?</translation>
    </message>
    <message>
        <source>Taste from left to right. Choose one; a guess is a good answer.</source>
        <translation>Verkoste von links nach rechts. Wähl einen; raten ist eine gute Antwort.</translation>
    </message>
    <message>
        <source>Taste from left to right. Choose one, even when they seem alike.</source>
        <translation>Verkoste von links nach rechts. Wähl einen, auch wenn sie einander ähneln.</translation>
    </message>
    <message>
        <source>Taste the marked cup first, then the two others. Choose one; a guess is a good answer.</source>
        <translation>Verkoste zuerst den markierten Becher, dann die zwei anderen. Wähl einen; raten ist eine gute Antwort.</translation>
    </message>
    <message>
        <source>Choose the two of one group; the other two are the other group. A guess is a good answer.</source>
        <translation>Wähl die zwei der einen Gruppe; die anderen zwei sind die andere. Raten ist eine gute Antwort.</translation>
    </message>
    <message>
        <source>Choose two; the other three are alike. A guess is a good answer.</source>
        <translation>Wähl zwei; die anderen drei gehören zusammen. Raten ist eine gute Antwort.</translation>
    </message>
    <message>
        <source>Some flights hold one drink twice, some hold two. A guess is a good answer.</source>
        <translation>Manche Sätze enthalten zweimal ein Getränk, manche zwei. Raten ist eine gute Antwort.</translation>
    </message>
    <message>
        <source>Taste the marked cup first and remember it, then the coded one. A guess is a good answer.</source>
        <translation>Verkoste zuerst den markierten Becher und merk ihn dir, dann den mit Code. Raten ist eine gute Antwort.</translation>
    </message>
    <message>
        <source>There is no right answer. “No preference” is an answer too.</source>
        <translation>Es gibt keine richtige Antwort. „Keine Vorliebe“ ist auch eine Antwort.</translation>
    </message>
    <message>
        <source>There is no right answer. Choose one, even when it is close.</source>
        <translation>Es gibt keine richtige Antwort. Wähl einen, auch wenn es knapp ist.</translation>
    </message>
    <message>
        <source>There is no right answer. Say what you find, not what you think it is.</source>
        <translation>Es gibt keine richtige Antwort. Sag, was du findest, nicht, was du vermutest.</translation>
    </message>
    <message>
        <source>the same as the marked cup</source>
        <translation>wie der markierte Becher</translation>
    </message>
    <message>
        <source>another one</source>
        <translation>ein anderer</translation>
    </message>
    <message>
        <source>the same</source>
        <translation>dasselbe</translation>
    </message>
    <message>
        <source>different</source>
        <translation>verschieden</translation>
    </message>
    <message>
        <source>{list} and {n} more of the words asked about</source>
        <translation>{list} und {n} weitere der gefragten Wörter</translation>
    </message>
    <message>
        <source>{first} or {last}</source>
        <translation>{first} oder {last}</translation>
    </message>
    <message>
        <source>in one tasting</source>
        <translation>in einer Verkostung</translation>
    </message>
    <message>
        <source>over {n} tastings</source>
        <translation>über {n} Verkostungen</translation>
    </message>
    <message>
        <source>hardly more often</source>
        <translation>kaum häufiger</translation>
    </message>
    <message>
        <source>hardly less often</source>
        <translation>kaum seltener</translation>
    </message>
    <message>
        <source>once more in 10</source>
        <translation>in 1 von 10 Fällen mehr</translation>
    </message>
    <message>
        <source>{n} times more in 10</source>
        <translation>in {n} von 10 Fällen mehr</translation>
    </message>
    <message>
        <source>once less in 10</source>
        <translation>in 1 von 10 Fällen weniger</translation>
    </message>
    <message>
        <source>{n} times less in 10</source>
        <translation>in {n} von 10 Fällen weniger</translation>
    </message>
    <message>
        <source>Who here notices which of these words is not known yet: nobody at this table has tasted a known difference.</source>
        <translation>Wer hier welches dieser Wörter bemerkt, ist noch nicht bekannt: an diesem Tisch hat noch niemand einen bekannten Unterschied verkostet.</translation>
    </message>
    <message>
        <source>Nobody here is known to notice {words}. If it is not named tonight, it may be there all the same.</source>
        <translation>Von niemandem hier ist bekannt, dass {words} bemerkt wird. Wenn es heute Abend nicht genannt wird, kann es trotzdem da sein.</translation>
    </message>
    <message>
        <source>{word}: nobody here is known to notice it; 1 person tried.</source>
        <translation>{word}: von niemandem hier ist bekannt, dass es bemerkt wird; 1 Person hat es versucht.</translation>
    </message>
    <message>
        <source>{word}: nobody here is known to notice it; {n} people tried.</source>
        <translation>{word}: von niemandem hier ist bekannt, dass es bemerkt wird; {n} Leute haben es versucht.</translation>
    </message>
    <message>
        <source>{word}: {known} of the 1 who tried it is known to notice it.</source>
        <translation>{word}: von der 1 Person, die es versucht hat, bemerken es nachweislich {known}.</translation>
    </message>
    <message>
        <source>{word}: {known} of the {n} who tried it are known to notice it.</source>
        <translation>{word}: von den {n}, die es versucht haben, bemerken es nachweislich {known}.</translation>
    </message>
    <message>
        <source>{word}: nothing counts yet.</source>
        <translation>{word}: noch zählt nichts.</translation>
    </message>
    <message>
        <source>{word}: {right} of {n} right, {sessions}. Known to notice it.</source>
        <translation>{word}: {right} von {n} richtig, {sessions}. Nachweislich bemerkt.</translation>
    </message>
    <message>
        <source>{word}: {right} of {n} right, {sessions}. Not shown yet; that is not “does not notice it”.</source>
        <translation>{word}: {right} von {n} richtig, {sessions}. Noch nicht gezeigt; das heißt nicht „bemerkt es nicht“.</translation>
    </message>
    <message>
        <source>Guessing taken off, it was noticed in this share of the tastings: {range} ({method}, {right} of {n}).</source>
        <translation>Das Raten abgezogen, wurde es in diesem Anteil der Durchgänge bemerkt: {range} ({method}, {right} von {n}).</translation>
    </message>
    <message>
        <source>1 answer is left out: told by look or fizz, or given after something was said.</source>
        <translation>1 Antwort bleibt außen vor: an Aussehen oder Prickeln erkannt, oder gegeben, nachdem etwas gesagt war.</translation>
    </message>
    <message>
        <source>{n} answers are left out: told by look or fizz, or given after something was said.</source>
        <translation>{n} Antworten bleiben außen vor: an Aussehen oder Prickeln erkannt, oder gegeben, nachdem etwas gesagt war.</translation>
    </message>
    <message>
        <source>Getting better at {word}? Too little known: it takes {least} tastings asked in one way, so far {n}.</source>
        <translation>Besser geworden bei {word}? Zu wenig bekannt: es braucht {least} Durchgänge in einer Frageweise, bisher {n}.</translation>
    </message>
    <message>
        <source>Getting better at {word}: {before} of {beforeOf} right in the earlier tastings, {after} of {afterOf} in the later ones. Noticed now from {low} to {high}.</source>
        <translation>Besser geworden bei {word}: {before} von {beforeOf} richtig in den früheren Durchgängen, {after} von {afterOf} in den späteren. Jetzt bemerkt: von {low} bis {high}.</translation>
    </message>
    <message>
        <source>{word} was noticed less often lately: {before} of {beforeOf} right in the earlier tastings, {after} of {afterOf} in the later ones. Noticed now from {low} to {high}. A cold, a tired evening or a smaller dose does that too.</source>
        <translation>{word} wurde zuletzt seltener bemerkt: {before} von {beforeOf} richtig in den früheren Durchgängen, {after} von {afterOf} in den späteren. Jetzt bemerkt: von {low} bis {high}. Eine Erkältung, ein müder Abend oder eine kleinere Menge bewirkt das auch.</translation>
    </message>
    <message>
        <source>Getting better at {word}? No change shown: {before} of {beforeOf} right in the earlier tastings, {after} of {afterOf} in the later ones. Anything from {low} to {high} fits.</source>
        <translation>Besser geworden bei {word}? Keine Änderung gezeigt: {before} von {beforeOf} richtig in den früheren Durchgängen, {after} von {afterOf} in den späteren. Alles von {low} bis {high} passt dazu.</translation>
    </message>
    <message>
        <source>No tasting of a known difference was opened yet. Plan one: ask whether your friends, or you alone, can taste what you know is there.</source>
        <translation>Noch wurde keine Verkostung eines bekannten Unterschieds geöffnet. Plan eine: frag, ob deine Leute, oder du allein, schmecken, was du darin weißt.</translation>
    </message>
    <message>
        <source>Known to notice: so many right answers, over all tastings of a known difference in that word, come by guessing alone no more often than 5 times in 100. The rule is our own. It holds for the amounts that were poured; less of it may pass unnoticed.</source>
        <translation>Nachweislich bemerkt: so viele richtige Antworten, über alle Verkostungen eines bekannten Unterschieds in diesem Wort, kommen durch bloßes Raten nicht öfter als 5-mal in 100 Fällen vor. Die Regel ist unsere eigene. Sie gilt für die Mengen, die eingeschenkt wurden; weniger davon kann unbemerkt bleiben.</translation>
    </message>
    <message>
        <source>once in 20</source>
        <translation>in 1 von 20 Fällen</translation>
    </message>
    <message>
        <source>once in 10</source>
        <translation>in 1 von 10 Fällen</translation>
    </message>
    <message>
        <source>2 times in 10</source>
        <translation>in 2 von 10 Fällen</translation>
    </message>
    <message>
        <source>once in four</source>
        <translation>in einem von vier Fällen</translation>
    </message>
    <message>
        <source>once in three</source>
        <translation>in einem von drei Fällen</translation>
    </message>
    <message>
        <source>4 times in 10</source>
        <translation>in 4 von 10 Fällen</translation>
    </message>
    <message>
        <source>half the time</source>
        <translation>in der Hälfte der Fälle</translation>
    </message>
    <message>
        <source>6 times in 10</source>
        <translation>in 6 von 10 Fällen</translation>
    </message>
    <message>
        <source>two times in three</source>
        <translation>in zwei von drei Fällen</translation>
    </message>
    <message>
        <source>3 times in 4</source>
        <translation>in 3 von 4 Fällen</translation>
    </message>
    <message>
        <source>8 times in 10</source>
        <translation>in 8 von 10 Fällen</translation>
    </message>
    <message>
        <source>9 times in 10</source>
        <translation>in 9 von 10 Fällen</translation>
    </message>
    <message>
        <source>19 times in 20</source>
        <translation>in 19 von 20 Fällen</translation>
    </message>
    <message>
        <source>{number} %</source>
        <translation>{number} %</translation>
    </message>
    <message>
        <source>one</source>
        <translation>eins</translation>
    </message>
    <message>
        <source>two</source>
        <translation>zwei</translation>
    </message>
    <message>
        <source>three</source>
        <translation>drei</translation>
    </message>
    <message>
        <source>four</source>
        <translation>vier</translation>
    </message>
    <message>
        <source>five</source>
        <translation>fünf</translation>
    </message>
    <message>
        <source>six</source>
        <translation>sechs</translation>
    </message>
    <message>
        <source>seven</source>
        <translation>sieben</translation>
    </message>
    <message>
        <source>eight</source>
        <translation>acht</translation>
    </message>
    <message>
        <source>nine</source>
        <translation>neun</translation>
    </message>
    <message>
        <source>ten</source>
        <translation>zehn</translation>
    </message>
    <message>
        <source>eleven</source>
        <translation>elf</translation>
    </message>
    <message>
        <source>twelve</source>
        <translation>zwölf</translation>
    </message>
    <message>
        <source>more than 99 times in 100</source>
        <translation>in mehr als 99 von 100 Fällen</translation>
    </message>
    <message>
        <source>less than once in 1,000</source>
        <translation>in weniger als 1 von 1.000 Fällen</translation>
    </message>
    <message>
        <source>about once in 1,000</source>
        <translation>in etwa 1 von 1.000 Fällen</translation>
    </message>
    <message>
        <source>about once in 100</source>
        <translation>in etwa 1 von 100 Fällen</translation>
    </message>
    <message>
        <source>about {n} times in 1,000</source>
        <translation>in etwa {n} von 1.000 Fällen</translation>
    </message>
    <message>
        <source>about {n} times in 100</source>
        <translation>in etwa {n} von 100 Fällen</translation>
    </message>
    <message>
        <source>less than once in 20</source>
        <translation>in weniger als 1 von 20 Fällen</translation>
    </message>
    <message>
        <source>more than {often}</source>
        <translation>häufiger als {often}</translation>
    </message>
    <message>
        <source>about {often}</source>
        <translation>etwa {often}</translation>
    </message>
    <message>
        <source>more than 19 times in 20</source>
        <translation>in mehr als 19 von 20 Fällen</translation>
    </message>
    <message>
        <source>less than {often}</source>
        <translation>seltener als {often}</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>hardly any</source>
        <translation>kaum jemand</translation>
    </message>
    <message>
        <source>nearly all</source>
        <translation>fast alle</translation>
    </message>
    <message>
        <source>about half</source>
        <translation>etwa die Hälfte</translation>
    </message>
    <message>
        <source>about {n} in 10</source>
        <translation>etwa {n} von 10</translation>
    </message>
    <message>
        <source>from {low} to {high}</source>
        <translation>{low} bis {high}</translation>
    </message>
    <message>
        <source>half</source>
        <translation>die Hälfte</translation>
    </message>
    <message>
        <source>{n} in {of}</source>
        <translation>{n} von {of}</translation>
    </message>
    <message>
        <source>once in {of}</source>
        <translation>in 1 von {of} Fällen</translation>
    </message>
    <message>
        <source>{n} times in {of}</source>
        <translation>in {n} von {of} Fällen</translation>
    </message>
    <message>
        <source>twice</source>
        <translation>zweimal</translation>
    </message>
    <message>
        <source>{n} times</source>
        <translation>{n} Mal</translation>
    </message>
    <message>
        <source>once in 100</source>
        <translation>in 1 von 100 Fällen</translation>
    </message>
    <message>
        <source>{n} times in 100</source>
        <translation>in {n} von 100 Fällen</translation>
    </message>
    <message>
        <source>once in 1,000</source>
        <translation>in 1 von 1.000 Fällen</translation>
    </message>
    <message>
        <source>{n} times in 1,000</source>
        <translation>in {n} von 1.000 Fällen</translation>
    </message>
    <message>
        <source>1 person</source>
        <translation>1 Person</translation>
    </message>
    <message>
        <source>{n} people</source>
        <translation>{n} Leute</translation>
    </message>
    <message>
        <source>1 tasting</source>
        <translation>1 Durchgang</translation>
    </message>
    <message>
        <source>{n} tastings</source>
        <translation>{n} Durchgänge</translation>
    </message>
    <message>
        <source>1 round</source>
        <translation>1 Runde</translation>
    </message>
    <message>
        <source>{n} rounds</source>
        <translation>{n} Runden</translation>
    </message>
    <message>
        <source>1 cup</source>
        <translation>1 Becher</translation>
    </message>
    <message>
        <source>{n} cups</source>
        <translation>{n} Becher</translation>
    </message>
    <message>
        <source>1 bottle</source>
        <translation>1 Flasche</translation>
    </message>
    <message>
        <source>{n} bottles</source>
        <translation>{n} Flaschen</translation>
    </message>
    <message>
        <source>1 minute</source>
        <translation>1 Minute</translation>
    </message>
    <message>
        <source>{n} minutes</source>
        <translation>{n} Minuten</translation>
    </message>
    <message>
        <source>1 place</source>
        <translation>1 Platz</translation>
    </message>
    <message>
        <source>{n} places</source>
        <translation>{n} Plätze</translation>
    </message>
    <message>
        <source>Once more, with the labels known</source>
        <translation>Noch einmal, jetzt mit Etikett</translation>
    </message>
    <message>
        <source>The same people score the same drinks again, knowing now what they are. It shows what a label does, beside what the blind round said.</source>
        <translation>Dieselben Leute bewerten dieselben Getränke noch einmal und wissen jetzt, was es ist. Das zeigt, was ein Etikett bewirkt, neben dem, was die blinde Runde sagte.</translation>
    </message>
    <message>
        <source>Nobody has to. The blind answers stay as they are and no verdict changes. A sip to remember by is enough, and it counts towards the evening’s alcohol like any other.</source>
        <translation>Niemand muss. Die blinden Antworten bleiben, wie sie sind, und kein Urteil ändert sich. Ein Schluck zum Erinnern genügt, und er zählt zum Alkohol des Abends wie jeder andere.</translation>
    </message>
    <message>
        <source>This is for whoever sat at place {place}. Others look away.</source>
        <translation>Das ist für die Person, die an Platz {place} saß. Andere sehen weg.</translation>
    </message>
    <message>
        <source>This is for {who}, at place {place}. Others look away.</source>
        <translation>Das ist für {who}, an Platz {place}. Andere sehen weg.</translation>
    </message>
    <message>
        <source>How do you like each of them now that you know what it is? Another answer than before is as good as the same one.</source>
        <translation>Wie gefällt dir jedes, jetzt, wo du weißt, was es ist? Eine andere Antwort als vorher ist genauso recht wie dieselbe.</translation>
    </message>
    <message>
        <source>Kept beside the blind answers: 1 person scored with the labels known.</source>
        <translation>Neben den blinden Antworten aufgehoben: 1 Person hat mit Etikett bewertet.</translation>
    </message>
    <message>
        <source>Kept beside the blind answers: {n} people scored with the labels known.</source>
        <translation>Neben den blinden Antworten aufgehoben: {n} Leute haben mit Etikett bewertet.</translation>
    </message>
    <message>
        <source>once round</source>
        <translation>einmal reihum</translation>
    </message>
    <message>
        <source>twice round</source>
        <translation>zweimal reihum</translation>
    </message>
    <message>
        <source>{n} times round</source>
        <translation>{n} Mal reihum</translation>
    </message>
    <message>
        <source>you alone, {round},</source>
        <translation>du allein, {round}</translation>
    </message>
    <message>
        <source>one person {round}</source>
        <translation>eine Person {round}</translation>
    </message>
    <message>
        <source>{n} people {round}</source>
        <translation>{n} Leute {round}</translation>
    </message>
    <message>
        <source>So few tastings cannot come out as alike within {limit}, whatever is answered.</source>
        <translation>So wenige Durchgänge können nicht als ähnlich herauskommen (Grenze: {limit}), was immer geantwortet wird.</translation>
    </message>
    <message>
        <source>That is alike within {limit}; one pair by itself would come out like that {often} {nobody}.</source>
        <translation>Das ist ähnlich innerhalb der Grenze ({limit}); ein Paar für sich käme {often} so heraus, {nobody}.</translation>
    </message>
    <message>
        <source>Alike within {limit} takes no more than 1 right answer. It would come out like that {often} {nobody}.</source>
        <translation>Ähnlich innerhalb der Grenze ({limit}) heißt nicht mehr als 1 richtige Antwort. So käme es {often} heraus, {nobody}.</translation>
    </message>
    <message>
        <source>Alike within {limit} takes no more than {n} right answers. It would come out like that {often} {nobody}.</source>
        <translation>Ähnlich innerhalb der Grenze ({limit}) heißt nicht mehr als {n} richtige Antworten. So käme es {often} heraus, {nobody}.</translation>
    </message>
    <message>
        <source>{needed} of {trials} right answers are needed.</source>
        <translation>{needed} von {trials} richtigen Antworten sind nötig.</translation>
    </message>
    <message>
        <source>Only {needed} to 0 could show a preference.</source>
        <translation>Nur {needed} zu 0 könnte eine Vorliebe zeigen.</translation>
    </message>
    <message>
        <source>It takes {needed} to {rest} at least to show a preference.</source>
        <translation>Es braucht mindestens {needed} zu {rest}, um eine Vorliebe zu zeigen.</translation>
    </message>
    <message>
        <source>Each person has one vote: more rounds show how steady it is, they are no more votes.</source>
        <translation>Jede Person hat eine Stimme: mehr Runden zeigen, wie beständig sie ist, sie sind keine weiteren Stimmen.</translation>
    </message>
    <message>
        <source>Whoever has no preference is left out of the count; then fewer votes are left.</source>
        <translation>Wer keine Vorliebe hat, zählt nicht mit; dann bleiben weniger Stimmen.</translation>
    </message>
    <message>
        <source>Looked at after every {every} tastings, for go on or stop only; it ends after {last} at the latest.</source>
        <translation>Nachgesehen nach je {every} Durchgängen, nur für weiter oder aufhören; spätestens nach {last} ist Schluss.</translation>
    </message>
    <message>
        <source>It takes about {short} and stops with no difference shown {none} {nobody}.</source>
        <translation>Es dauert etwa {short} und hört {none} ohne gezeigten Unterschied auf, {nobody}.</translation>
    </message>
    <message>
        <source>With what {what} it takes about {long} and shows a difference {shown}.</source>
        <translation>Bei einem Unterschied, der {what} ist, dauert es etwa {long} und zeigt {shown} einen Unterschied.</translation>
    </message>
    <message>
        <source>It may still be undecided at the end, at most {open}.</source>
        <translation>Am Ende kann es noch unentschieden sein, höchstens {open}.</translation>
    </message>
    <message>
        <source>{who} can show nothing, whatever is answered.</source>
        <translation>{who}: damit lässt sich nichts zeigen, was immer geantwortet wird.</translation>
    </message>
    <message>
        <source>{who} would find in each of three comparisons {what} {often}.</source>
        <translation>{who}: in jedem der drei Vergleiche würde {often} gefunden, {what}.</translation>
    </message>
    <message>
        <source>{who} would miss in each of three comparisons {what} {often}.</source>
        <translation>{who}: in jedem der drei Vergleiche würde {often} verpasst, {what}.</translation>
    </message>
    <message>
        <source>{who} would find {what} {often}.</source>
        <translation>{who}: {often} würde gefunden, {what}.</translation>
    </message>
    <message>
        <source>{who} would miss {what} {often}.</source>
        <translation>{who}: {often} würde verpasst, {what}.</translation>
    </message>
    <message>
        <source>you can taste {often}</source>
        <translation>für dich {often} zu schmecken</translation>
    </message>
    <message>
        <source>{share} can taste</source>
        <translation>für {share} zu schmecken</translation>
    </message>
    <message>
        <source>if you cannot tell them apart</source>
        <translation>wenn du sie nicht auseinanderhalten kannst</translation>
    </message>
    <message>
        <source>if nobody can tell them apart</source>
        <translation>wenn niemand sie auseinanderhalten kann</translation>
    </message>
    <message>
        <source>what {share} prefer</source>
        <translation>was {share} lieber mögen</translation>
    </message>
    <message>
        <source>what you can pick out of three cups {often}</source>
        <translation>was für dich {often} aus drei Bechern herauszufinden ist</translation>
    </message>
    <message>
        <source>what {share} can pick out of three cups</source>
        <translation>was für {share} aus drei Bechern herauszufinden ist</translation>
    </message>
    <message>
        <source>what {what}</source>
        <translation>was {what} ist</translation>
    </message>
    <message>
        <source>Nobody counts yet. Add at least one person who did not make it, or taste alone.</source>
        <translation>Noch zählt niemand. Nimm mindestens eine Person dazu, die nicht daran mitgemacht hat, oder verkoste allein.</translation>
    </message>
    <message>
        <source>Set the limit: how few may still taste it?</source>
        <translation>Setz die Grenze: wie wenige dürfen es noch schmecken?</translation>
    </message>
    <message>
        <source>{who} cannot show that two drinks are alike.</source>
        <translation>{who}: das reicht nicht, um zu zeigen, dass zwei Getränke einander ähneln.</translation>
    </message>
    <message>
        <source>{who} would show it {often} {nobody}.</source>
        <translation>{who}: das würde {often} gezeigt, {nobody}.</translation>
    </message>
    <message>
        <source>{what} would be found {often}.</source>
        <translation>gefunden würde {often}, {what}.</translation>
    </message>
    <message>
        <source>Worked out exactly from the binomial distribution, with one vote a person; either drink may be preferred.</source>
        <translation>Genau ausgerechnet aus der Binomialverteilung, eine Stimme je Person; das eine oder das andere Getränk darf vorgezogen werden.</translation>
    </message>
    <message>
        <source>Worked out exactly, round by round, as if every tasting were by somebody new. The people who come back make it less certain than this.</source>
        <translation>Genau ausgerechnet, Runde für Runde, als käme jeder Durchgang von jemand Neuem. Leute, die wiederkommen, machen es unsicherer als das.</translation>
    </message>
    <message>
        <source>Worked out with the person as the unit, not the cup: people are taken to differ with a spread (gamma) of {gamma}, our own figure. The sum behind it is exact.</source>
        <translation>Ausgerechnet mit der Person als Einheit, nicht dem Becher: es wird angenommen, dass Leute sich mit einer Streuung (Gamma) von {gamma} unterscheiden, unsere eigene Zahl. Die Rechnung dahinter ist genau.</translation>
    </message>
    <message>
        <source>Worked out exactly from the binomial distribution.</source>
        <translation>Genau ausgerechnet aus der Binomialverteilung.</translation>
    </message>
    <message>
        <source>Both kinds of answers count, so there is no single needed number. People are taken to lean neither way.</source>
        <translation>Beide Arten von Antworten zählen, also gibt es keine einzelne nötige Zahl. Angenommen wird, dass die Leute zu keiner Seite neigen.</translation>
    </message>
    <message>
        <source>Both kinds of answers count, so there is no single needed number. People are taken to say “different” when two cups lie further apart than a cup lies from itself (tau 1).</source>
        <translation>Beide Arten von Antworten zählen, also gibt es keine einzelne nötige Zahl. Angenommen wird, dass die Leute „verschieden“ sagen, wenn zwei Becher weiter auseinanderliegen als ein Becher von sich selbst (Tau 1).</translation>
    </message>
    <message>
        <source>The three comparisons share the risk of a false alarm (Holm).</source>
        <translation>Die drei Vergleiche teilen sich das Risiko eines falschen Alarms (Holm).</translation>
    </message>
    <message>
        <source>Your one vote cannot settle this, however often you taste. You may pour it as practice; it will end without a verdict.</source>
        <translation>Deine eine Stimme kann das nicht entscheiden, wie oft du auch verkostest. Du darfst es zur Übung einschenken; es wird ohne Urteil enden.</translation>
    </message>
    <message>
        <source>One person cannot settle this, whatever is answered.</source>
        <translation>Eine Person kann das nicht entscheiden, was immer geantwortet wird.</translation>
    </message>
    <message>
        <source>{n} people cannot settle this, whatever they answer.</source>
        <translation>{n} Leute können das nicht entscheiden, was immer sie antworten.</translation>
    </message>
    <message>
        <source>Even all right would show nothing. You may pour it as practice; it will end without a verdict.</source>
        <translation>Selbst wenn alles richtig wäre, würde es nichts zeigen. Du darfst es zur Übung einschenken; es wird ohne Urteil enden.</translation>
    </message>
    <message>
        <source>{what} would be missed {missed}. You may go on; this stays in the report.</source>
        <translation>{missed} würde verpasst, {what}. Du darfst weitermachen; das bleibt im Bericht stehen.</translation>
    </message>
    <message>
        <source>Likely to end in “not shown”, even {nobody}. You may go on; this stays in the report.</source>
        <translation>Endet wahrscheinlich mit „nicht gezeigt“, selbst {nobody}. Du darfst weitermachen; das bleibt im Bericht stehen.</translation>
    </message>
    <message>
        <source>Half the room tasting it is not alike. Set a limit of half the people or fewer.</source>
        <translation>Wenn der halbe Raum es schmeckt, ist das nicht ähnlich. Setz eine Grenze bei der Hälfte der Leute oder darunter.</translation>
    </message>
    <message>
        <source>With one person you will know who wrote what. A signed sheet is more honest.</source>
        <translation>Bei einer Person wirst du wissen, wer was geschrieben hat. Ein Bogen mit Namen ist ehrlicher.</translation>
    </message>
    <message>
        <source>With {n} people you will guess who wrote what. Signed sheets are more honest.</source>
        <translation>Bei {n} Leuten wirst du erraten, wer was geschrieben hat. Bögen mit Namen sind ehrlicher.</translation>
    </message>
    <message>
        <source>How often this panel would show a preference, if there is one</source>
        <translation>Wie oft dieses Panel eine Vorliebe zeigen würde, falls es eine gibt</translation>
    </message>
    <message>
        <source>How often you would show a difference, if you can taste it</source>
        <translation>Wie oft du einen Unterschied zeigen würdest, falls du ihn schmeckst</translation>
    </message>
    <message>
        <source>How often this panel would show a difference, if it can be tasted</source>
        <translation>Wie oft dieses Panel einen Unterschied zeigen würde, falls er zu schmecken ist</translation>
    </message>
    <message>
        <source>hardly ever</source>
        <translation>fast nie</translation>
    </message>
    <message>
        <source>nearly every time</source>
        <translation>fast jedes Mal</translation>
    </message>
    <message>
        <source>who prefers one of them</source>
        <translation>wer eines davon lieber mag</translation>
    </message>
    <message>
        <source>how often you can taste it</source>
        <translation>wie oft du ihn schmeckst</translation>
    </message>
    <message>
        <source>who can taste it</source>
        <translation>wer ihn schmeckt</translation>
    </message>
    <message>
        <source>a difference is shown</source>
        <translation>ein Unterschied zeigt sich</translation>
    </message>
    <message>
        <source>liking</source>
        <translation>Gefallen</translation>
    </message>
    <message>
        <source>, beside the cold bottles</source>
        <translation>, neben den kalten Flaschen</translation>
    </message>
    <message>
        <source>, beside the bought drink</source>
        <translation>, neben dem gekauften Getränk</translation>
    </message>
    <message>
        <source>These two sittings were alike within your limit in {thing} (here between {here}); whether the drink stayed as it was cannot be known.</source>
        <translation>Diese beiden Termine lagen bei {thing} innerhalb deiner Grenze beieinander (hier {here}); ob das Getränk blieb, wie es war, ist nicht zu wissen.</translation>
    </message>
    <message>
        <source>{what} was given {by} {of} less than at the first sitting ({range}); whether drink or day did it cannot be known.</source>
        <translation>{what} bekam {by} {of} weniger als beim ersten Termin ({range}); ob das am Getränk oder am Tag lag, ist nicht zu wissen.</translation>
    </message>
    <message>
        <source>{what} was given {by} {of} more than at the first sitting ({range}); whether drink or day did it cannot be known.</source>
        <translation>{what} bekam {by} {of} mehr als beim ersten Termin ({range}); ob das am Getränk oder am Tag lag, ist nicht zu wissen.</translation>
    </message>
    <message>
        <source>{what} rose from the first sitting to the one asked about: by {by} {of} ({range}){beside}.</source>
        <translation>{what} stieg vom ersten Termin bis zu dem, um den es ging: um {by} {of} ({range}){beside}.</translation>
    </message>
    <message>
        <source>{what} fell from the first sitting to the one asked about: by {by} {of} ({range}){beside}.</source>
        <translation>{what} fiel vom ersten Termin bis zu dem, um den es ging: um {by} {of} ({range}){beside}.</translation>
    </message>
    <message>
        <source>{what} is within your limit of where it began: no more than {limit} {of} (here between {here}){beside}.</source>
        <translation>{what} liegt innerhalb deiner Grenze um den Anfang: nicht mehr als {limit} {of} (hier {here}){beside}.</translation>
    </message>
    <message>
        <source>No change shown in {thing}{beside}. Anything from {range} {of} fits.</source>
        <translation>Keine Änderung gezeigt bei {thing}{beside}. Alles von {range} {of} passt dazu.</translation>
    </message>
    <message>
        <source>Sitting {number}, which this series was begun for, has not been held yet.</source>
        <translation>Termin {number}, für den diese Reihe begonnen wurde, hat noch nicht stattgefunden.</translation>
    </message>
    <message>
        <source>No verdict: the first sitting was not held, so there is nothing to set the later one beside.</source>
        <translation>Kein Urteil: der erste Termin fand nicht statt, also gibt es nichts, woneben der spätere stehen könnte.</translation>
    </message>
    <message>
        <source>No verdict: {thing} was not asked at both sittings.</source>
        <translation>Kein Urteil: nach {thing} wurde nicht bei beiden Terminen gefragt.</translation>
    </message>
    <message>
        <source>No verdict: fewer than three people sat at both sittings.</source>
        <translation>Kein Urteil: weniger als drei Leute saßen bei beiden Terminen.</translation>
    </message>
    <message>
        <source>No verdict: everybody changed alike, so there is nothing to judge it by.</source>
        <translation>Kein Urteil: bei allen änderte es sich genau gleich, also gibt es nichts, woran man es messen könnte.</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>not shown</source>
        <translation>nicht gezeigt</translation>
    </message>
    <message>
        <source>within your limit</source>
        <translation>innerhalb deiner Grenze</translation>
    </message>
    <message>
        <source>no verdict</source>
        <translation>kein Urteil</translation>
    </message>
    <message>
        <source>Worked out from the one person who sat at both.</source>
        <translation>Ausgerechnet aus der einen Person, die bei beiden saß.</translation>
    </message>
    <message>
        <source>Worked out from the {n} people who sat at both.</source>
        <translation>Ausgerechnet aus den {n} Leuten, die bei beiden saßen.</translation>
    </message>
    <message>
        <source>More or less of a thing is not better or worse: whether to drink it is yours.</source>
        <translation>Mehr oder weniger von etwas ist weder besser noch schlechter: ob du es trinkst, ist deine Sache.</translation>
    </message>
    <message>
        <source>That is not “no change”: a small one may be there.</source>
        <translation>Das heißt nicht „keine Änderung“: eine kleine kann da sein.</translation>
    </message>
    <message>
        <source>{what} rose since {date}: about {by} {of} a month ({range}){beside}.</source>
        <translation>{what} stieg seit {date}: etwa {by} {of} im Monat ({range}){beside}.</translation>
    </message>
    <message>
        <source>{what} fell since {date}: about {by} {of} a month ({range}){beside}.</source>
        <translation>{what} fiel seit {date}: etwa {by} {of} im Monat ({range}){beside}.</translation>
    </message>
    <message>
        <source>{what}: no change shown; up to {most} {of} a month could have been missed.</source>
        <translation>{what}: keine Änderung gezeigt; bis zu {most} {of} im Monat könnte übersehen worden sein.</translation>
    </message>
    <message>
        <source>{what}: dots without a line, for there are fewer than three sittings.</source>
        <translation>{what}: Punkte ohne Linie, denn es gibt weniger als drei Termine.</translation>
    </message>
    <message>
        <source>{what}: these answers do not allow a judgement.</source>
        <translation>{what}: diese Antworten erlauben kein Urteil.</translation>
    </message>
    <message>
        <source>Whether the last two looks lie within your limit ({limit}) cannot be told yet: anything from {range} fits.</source>
        <translation>Ob die letzten beiden Termine innerhalb deiner Grenze ({limit}) liegen, ist noch nicht zu sagen: alles von {range} passt dazu.</translation>
    </message>
    <message>
        <source>The last two sittings were alike within your limit ({limit}); without a control that is of drink and day together.</source>
        <translation>Die letzten beiden Termine lagen innerhalb deiner Grenze ({limit}) beieinander; ohne Kontrolle gilt das für Getränk und Tag zusammen.</translation>
    </message>
    <message>
        <source>The last two looks were alike within your limit ({limit}).</source>
        <translation>Die letzten beiden Termine lagen innerhalb deiner Grenze ({limit}) beieinander.</translation>
    </message>
    <message>
        <source>before the first look</source>
        <translation>vor dem ersten Termin</translation>
    </message>
    <message>
        <source>past the last bottle</source>
        <translation>nach der letzten Flasche</translation>
    </message>
    <message>
        <source>Liking was highest at {age}; anything from {low} to {high} fits these answers.</source>
        <translation>Am besten gefiel es mit {age}; alles von {low} bis {high} passt zu diesen Antworten.</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>1 week</source>
        <translation>1 Woche</translation>
    </message>
    <message>
        <source>{n} weeks</source>
        <translation>{n} Wochen</translation>
    </message>
    <message>
        <source>1 month</source>
        <translation>1 Monat</translation>
    </message>
    <message>
        <source>{n} months</source>
        <translation>{n} Monate</translation>
    </message>
    <message>
        <source>{date}, at {age}: {people}</source>
        <translation>{date}, mit {age}: {people}</translation>
    </message>
    <message>
        <source>{date}, at {age}: {people}, {both} of them at the first sitting too</source>
        <translation>{date}, mit {age}: {people}, davon {both} auch beim ersten Termin</translation>
    </message>
    <message>
        <source>{series}: look {number}</source>
        <translation>{series}: Termin {number}</translation>
    </message>
    <message>
        <source>another way of asking</source>
        <translation>eine andere Art zu fragen</translation>
    </message>
    <message>
        <source>other questions</source>
        <translation>andere Fragen</translation>
    </message>
    <message>
        <source>more or less in a cup</source>
        <translation>mehr oder weniger im Becher</translation>
    </message>
    <message>
        <source>more or fewer rounds</source>
        <translation>mehr oder weniger Runden</translation>
    </message>
    <message>
        <source>more or fewer cups at once</source>
        <translation>mehr oder weniger Becher auf einmal</translation>
    </message>
    <message>
        <source>another pause</source>
        <translation>eine andere Pause</translation>
    </message>
    <message>
        <source>another cleanser</source>
        <translation>etwas anderes zum Neutralisieren</translation>
    </message>
    <message>
        <source>another ceiling</source>
        <translation>eine andere Obergrenze</translation>
    </message>
    <message>
        <source>another marked cup</source>
        <translation>ein anderer markierter Becher</translation>
    </message>
    <message>
        <source>a drink poured twice, or none</source>
        <translation>ein Getränk zweimal eingeschenkt, oder keines</translation>
    </message>
    <message>
        <source>Set otherwise than at the first sitting: {parts}.</source>
        <translation>Anders eingestellt als beim ersten Termin: {parts}.</translation>
    </message>
    <message>
        <source>Looking round</source>
        <translation>Umsehen</translation>
    </message>
    <message>
        <source>From here on it is not what the series was begun for: hints, judged together, so that looking at many things does not make one of them speak by chance.</source>
        <translation>Ab hier ist es nicht das, wofür die Reihe begonnen wurde: Hinweise, zusammen beurteilt, damit nicht eines von vielen Dingen durch Zufall spricht.</translation>
    </message>
    <message>
        <source>As at the first sitting; what was set otherwise later stands with its sitting.</source>
        <translation>Wie beim ersten Termin; was später anders eingestellt war, steht bei seinem Termin.</translation>
    </message>
    <message>
        <source>A change of up to {limit} was said beforehand not to matter.</source>
        <translation>Von einer Änderung bis {limit} wurde vorher gesagt, dass sie nichts ausmacht.</translation>
    </message>
    <message>
        <source>As they stand on the shelf now.</source>
        <translation>Wie sie jetzt im Regal stehen.</translation>
    </message>
    <message>
        <source>Begun for one comparison: {what} at sitting {number} beside the first.</source>
        <translation>Für einen Vergleich begonnen: {what} bei Termin {number} neben dem ersten.</translation>
    </message>
    <message>
        <source>Beside it at every sitting, under a code like its own: {lot} ({kind}).</source>
        <translation>Daneben bei jedem Termin, unter einem Code wie dem eigenen: {lot} ({kind}).</translation>
    </message>
    <message>
        <source>Everything else is looking round, and is judged together.</source>
        <translation>Alles andere ist Umsehen und wird zusammen beurteilt.</translation>
    </message>
    <message>
        <source>Experience: had answered in an earlier session kept here.</source>
        <translation>Erfahrung: hatte in einer früheren Verkostung geantwortet, die hier liegt.</translation>
    </message>
    <message>
        <source>Experience: had answered in no earlier session kept here.</source>
        <translation>Erfahrung: hatte in keiner früheren Verkostung geantwortet, die hier liegt.</translation>
    </message>
    <message>
        <source>Experience: of the panel {panel} had answered in an earlier session kept here, of the makers {makers}. Whoever asked to be only in the sums is not looked up.</source>
        <translation>Erfahrung: in einer früheren Verkostung, die hier liegt, hatten vom Panel {panel} geantwortet, von denen, die mitgemacht haben, {makers}. Wer nur in den Summen stehen wollte, wird nicht nachgeschlagen.</translation>
    </message>
    <message>
        <source>First cup on {day} at {time}.</source>
        <translation>Erster Becher am {day} um {time}.</translation>
    </message>
    <message>
        <source>Flights that were not answered on the screen: {paper} typed in from paper, {file} taken from a table.</source>
        <translation>Sätze, die nicht am Bildschirm beantwortet wurden: {paper} vom Papier abgetippt, {file} aus einer Tabelle.</translation>
    </message>
    <message>
        <source>Followed from {begun}; no sitting has been held yet.</source>
        <translation>Verfolgt ab {begun}; noch hat kein Termin stattgefunden.</translation>
    </message>
    <message>
        <source>Followed from {begun}; one sitting so far, on {first}.</source>
        <translation>Verfolgt ab {begun}; bisher ein Termin, am {first}.</translation>
    </message>
    <message>
        <source>Followed from {begun}; sittings held from {first} to {last}.</source>
        <translation>Verfolgt ab {begun}; Termine von {first} bis {last}.</translation>
    </message>
    <message>
        <source>Followed: {lot}. Ages count from {date}.</source>
        <translation>Verfolgt: {lot}. Das Alter zählt ab {date}.</translation>
    </message>
    <message>
        <source>Gaps by paired t over people, each one&apos;s cups averaged first; several drinks by Dunnett; limits by two one-sided tests; held together over the main questions by Holm, over the others by Benjamini and Hochberg.</source>
        <translation>Abstände mit gepaartem t über Leute, die Becher jeder Person zuerst gemittelt; mehrere Getränke nach Dunnett; Grenzen mit zwei einseitigen Tests; zusammengehalten über die Hauptfragen nach Holm, über die anderen nach Benjamini und Hochberg.</translation>
    </message>
    <message>
        <source>Nothing stands beside it, so a changed drink and a changed day cannot be told apart.</source>
        <translation>Daneben steht nichts, also lassen sich ein verändertes Getränk und ein veränderter Tag nicht auseinanderhalten.</translation>
    </message>
    <message>
        <source>Place {place} locked round {round}: typed in by place {typist}.</source>
        <translation>Platz {place} legte Runde {round} fest: abgetippt von Platz {typist}.</translation>
    </message>
    <message>
        <source>Place {place} locked round {round}: typed in by somebody not at the table.</source>
        <translation>Platz {place} legte Runde {round} fest: abgetippt von jemandem, der nicht am Tisch sitzt.</translation>
    </message>
    <message>
        <source>Planned: {sittings} sittings, {bottles} of each drink for one of them, {reserve} more in reserve.</source>
        <translation>Geplant: {sittings} Termine, {bottles} von jedem Getränk für einen davon, {reserve} weitere als Reserve.</translation>
    </message>
    <message>
        <source>Score sheets after {standards}, not certified.</source>
        <translation>Bewertungsbögen nach {standards}, nicht zertifiziert.</translation>
    </message>
    <message>
        <source>Score sheets, as is common practice.</source>
        <translation>Bewertungsbögen, wie allgemein üblich.</translation>
    </message>
    <message>
        <source>Settled when it began</source>
        <translation>Am Anfang festgelegt</translation>
    </message>
    <message>
        <source>Sitting {number}: {what}</source>
        <translation>Termin {number}: {what}</translation>
    </message>
    <message>
        <source>The drinks and what is left of them</source>
        <translation>Die Getränke und was davon übrig ist</translation>
    </message>
    <message>
        <source>The main comparison by Student’s t over the people who sat at both sittings (paired), its limit by two one-sided tests; slopes over the sittings by a mixed model with people and sittings, held together over all questions by Holm (1979).</source>
        <translation>Der Hauptvergleich mit Students t über die Leute, die bei beiden Terminen saßen (gepaart), seine Grenze mit zwei einseitigen Tests; Steigungen über die Termine mit einem gemischten Modell aus Leuten und Terminen, über alle Fragen zusammengehalten nach Holm (1979).</translation>
    </message>
    <message>
        <source>The series’ old pages were opened once while it was sealed.</source>
        <translation>Die alten Seiten der Reihe wurden einmal geöffnet, während er versiegelt war.</translation>
    </message>
    <message>
        <source>The series’ old pages were opened {n} times while it was sealed.</source>
        <translation>Die alten Seiten der Reihe wurden {n}-mal geöffnet, während er versiegelt war.</translation>
    </message>
    <message>
        <source>The sittings</source>
        <translation>Die Termine</translation>
    </message>
    <message>
        <source>Typed in by tasters who had locked everything: {tasters}; by people who were not at the table: {others}.</source>
        <translation>Abgetippt von Leuten, die alles festgelegt hatten: {tasters}; von Leuten, die nicht am Tisch saßen: {others}.</translation>
    </message>
    <message>
        <source>What cannot be known</source>
        <translation>Was nicht zu wissen ist</translation>
    </message>
    <message>
        <source>What was done to it</source>
        <translation>Was damit getan wurde</translation>
    </message>
    <message>
        <source>Worked out before anything was poured: {what}</source>
        <translation>Vor dem Einschenken ausgerechnet: {what}</translation>
    </message>
    <message>
        <source>a bought drink</source>
        <translation>ein gekauftes Getränk</translation>
    </message>
    <message>
        <source>at the first too</source>
        <translation>auch beim ersten</translation>
    </message>
    <message>
        <source>bottles now</source>
        <translation>Flaschen jetzt</translation>
    </message>
    <message>
        <source>bottles of this bottling, kept cold</source>
        <translation>Flaschen dieser Abfüllung, kalt gelagert</translation>
    </message>
    <message>
        <source>due on</source>
        <translation>fällig am</translation>
    </message>
    <message>
        <source>held on</source>
        <translation>gehalten am</translation>
    </message>
    <message>
        <source>in the series</source>
        <translation>in der Reihe</translation>
    </message>
    <message>
        <source>not held</source>
        <translation>nicht gehalten</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>people who had both</source>
        <translation>Leute, die beide hatten</translation>
    </message>
    <message>
        <source>set aside for sealed sessions</source>
        <translation>für versiegelte Verkostungen zurückgelegt</translation>
    </message>
    <message>
        <source>sitting</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>the batch</source>
        <translation>der Ansatz</translation>
    </message>
    <message>
        <source>{lot}: 1 sitting to come takes {take}, with {reserve} in reserve; bottles there: {there}.</source>
        <translation>{lot}: 1 kommender Termin braucht {take}, mit {reserve} als Reserve; Flaschen da: {there}.</translation>
    </message>
    <message>
        <source>{lot}: {n} sittings to come take {take}, with {reserve} in reserve; bottles there: {there}.</source>
        <translation>{lot}: {n} kommende Termine brauchen {take}, mit {reserve} als Reserve; Flaschen da: {there}.</translation>
    </message>
    <message>
        <source>{what} {points}</source>
        <translation>{what} {points}</translation>
    </message>
    <message>
        <source>{what}: none found</source>
        <translation>{what}: keins gefunden</translation>
    </message>
    <message>
        <source>{what}: {answer}</source>
        <translation>{what}: {answer}</translation>
    </message>
    <message>
        <source>cannot be known</source>
        <translation>nicht zu wissen</translation>
    </message>
    <message>
        <source>Nothing has been tasted in this series yet.</source>
        <translation>In dieser Reihe wurde noch nichts verkostet.</translation>
    </message>
    <message>
        <source>One sitting is a point, not a line.</source>
        <translation>Ein Termin ist ein Punkt, keine Linie.</translation>
    </message>
    <message>
        <source>Cannot be known here: without a kept-back bottle, a changed drink and a changed day cannot be told apart.</source>
        <translation>Hier nicht zu wissen: ohne aufgehobene Flasche lassen sich ein verändertes Getränk und ein veränderter Tag nicht auseinanderhalten.</translation>
    </message>
    <message>
        <source>The bought drink has an age of its own: if it changes, the difference changes too.</source>
        <translation>Das gekaufte Getränk hat ein eigenes Alter: wenn es sich ändert, ändert sich auch der Unterschied.</translation>
    </message>
    <message>
        <source>Tasters knew neither which cup was the batch nor how it was kept. That it was this age they could guess.</source>
        <translation>Am Tisch wusste niemand, welcher Becher der Ansatz war und wie er lagerte. Dass er so alt war, ließ sich erraten.</translation>
    </message>
    <message>
        <source>Next look: {date}.</source>
        <translation>Nächster Termin: {date}.</translation>
    </message>
    <message>
        <source>page {page} of {pages}</source>
        <translation>Seite {page} von {pages}</translation>
    </message>
    <message>
        <source>Seal mark: {mark}. {title}</source>
        <translation>Siegelwort: {mark}. {title}</translation>
    </message>
    <message>
        <source>Place {place}, round {round} of {rounds}</source>
        <translation>Platz {place}, Runde {round} von {rounds}</translation>
    </message>
    <message>
        <source>Place {place}</source>
        <translation>Platz {place}</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>number {n} from the left</source>
        <translation>Nummer {n} von links</translation>
    </message>
    <message>
        <source>spare: place {place}, round {round}, {position}</source>
        <translation>Ersatz: Platz {place}, Runde {round}, {position}</translation>
    </message>
    <message>
        <source>spare: place {place}, {position}</source>
        <translation>Ersatz: Platz {place}, {position}</translation>
    </message>
    <message>
        <source>place {place}, round {round}, {position}</source>
        <translation>Platz {place}, Runde {round}, {position}</translation>
    </message>
    <message>
        <source>place {place}, {position}</source>
        <translation>Platz {place}, {position}</translation>
    </message>
    <message>
        <source>Cup labels</source>
        <translation>Becheretiketten</translation>
    </message>
    <message>
        <source>Place mats</source>
        <translation>Platzmatten</translation>
    </message>
    <message>
        <source>Answer sheets</source>
        <translation>Antwortbögen</translation>
    </message>
    <message>
        <source>Taste from left to right, as you sit here.</source>
        <translation>Verkoste von links nach rechts, so wie du hier sitzt.</translation>
    </message>
    <message>
        <source>This edge is yours. Do the codes on the cups stand here, in this order? If not, do not taste; tell the host.</source>
        <translation>Diese Kante gehört dir. Stehen die Codes auf den Bechern hier, in dieser Reihenfolge? Wenn nicht, verkoste nicht; sag es der Gastgeberin oder dem Gastgeber.</translation>
    </message>
    <message>
        <source>R</source>
        <translation>R</translation>
    </message>
    <message>
        <source>marked cup</source>
        <translation>markierter Becher</translation>
    </message>
    <message>
        <source>How sure are you?</source>
        <translation>Wie sicher bist du dir?</translation>
    </message>
    <message>
        <source>How did you know? Tick one.</source>
        <translation>Woran hast du es gemerkt? Kreuz eins an.</translation>
    </message>
    <message>
        <source>Which one did you like better?</source>
        <translation>Welcher hat dir besser gefallen?</translation>
    </message>
    <message>
        <source>Anything else, if you like</source>
        <translation>Sonst noch etwas, wenn du magst</translation>
    </message>
    <message>
        <source>Tick one.</source>
        <translation>Kreuz eins an.</translation>
    </message>
    <message>
        <source>Tick two.</source>
        <translation>Kreuz zwei an.</translation>
    </message>
    <message>
        <source>I looked and found none</source>
        <translation>Ich habe gesucht und keins gefunden</translation>
    </message>
    <message>
        <source>Place and round</source>
        <translation>Platz und Runde</translation>
    </message>
    <message>
        <source>Write the codes of your cups into the boxes, from left to right.</source>
        <translation>Schreib die Codes deiner Becher in die Kästchen, von links nach rechts.</translation>
    </message>
    <message>
        <source>A line is 100 mm long when this page is printed at its own size. Whoever types it in measures from its beginning.</source>
        <translation>Eine Linie ist 100 mm lang, wenn diese Seite in Originalgröße gedruckt ist. Wer abtippt, misst von ihrem Anfang.</translation>
    </message>
    <message>
        <source>No talking until everybody is done. Fold this sheet and put it into the box; nobody reads it before the table is closed but whoever types it in.</source>
        <translation>Nicht reden, bis alle fertig sind. Falt diesen Bogen und wirf ihn in die Box; bevor der Tisch geschlossen ist, liest ihn nur, wer abtippt.</translation>
    </message>
    <message>
        <source>Look at this cup</source>
        <translation>Sieh diesen Becher an</translation>
    </message>
    <message>
        <source>Smell this cup</source>
        <translation>Riech an diesem Becher</translation>
    </message>
    <message>
        <source>Taste this cup</source>
        <translation>Verkoste diesen Becher</translation>
    </message>
    <message>
        <source>The same cup, some time later</source>
        <translation>Derselbe Becher, etwas später</translation>
    </message>
    <message>
        <source>All cups together</source>
        <translation>Alle Becher zusammen</translation>
    </message>
    <message>
        <source>Do not smell or taste yet.</source>
        <translation>Noch nicht riechen und nicht trinken.</translation>
    </message>
    <message>
        <source>Do not taste yet.</source>
        <translation>Noch nicht trinken.</translation>
    </message>
    <message>
        <source>Say what is there now.</source>
        <translation>Sag, was jetzt da ist.</translation>
    </message>
    <message>
        <source>You may taste again.</source>
        <translation>Du darfst noch einmal trinken.</translation>
    </message>
    <message>
        <source>How much: {what}? Put a stroke across the line.</source>
        <translation>Wie viel: {what}? Setz einen Strich quer über die Linie.</translation>
    </message>
    <message>
        <source>Tick every word that applies. None is an answer too.</source>
        <translation>Kreuz jedes Wort an, das passt. Keines ist auch eine Antwort.</translation>
    </message>
    <message>
        <source>Number the cups: 1 for the one you like least, {most} for the one you like most. Each number once.</source>
        <translation>Nummerier die Becher: 1 für den, der dir am wenigsten gefällt, {most} für den, der dir am besten gefällt. Jede Zahl einmal.</translation>
    </message>
    <message>
        <source>Number the cups: 1 for the least, {most} for the most: {what}. Each number once.</source>
        <translation>Nummerier die Becher: 1 für am wenigsten, {most} für am meisten: {what}. Jede Zahl einmal.</translation>
    </message>
    <message>
        <source>You have five points. Give them to the cups; all five.</source>
        <translation>Du hast fünf Punkte. Verteil sie auf die Becher; alle fünf.</translation>
    </message>
    <message>
        <source>A pause of {seconds} seconds and a sip of water. Then comes the next cup.</source>
        <translation>{seconds} Sekunden Pause und ein Schluck Wasser. Dann kommt der nächste Becher.</translation>
    </message>
    <message>
        <source>A pause of {seconds} seconds. Take what everybody takes: {what}. Then comes the next cup.</source>
        <translation>{seconds} Sekunden Pause. Nimm, was alle nehmen: {what}. Dann kommt der nächste Becher.</translation>
    </message>
    <message>
        <source>Wait {seconds} seconds for what comes late. Do not drink anything meanwhile.</source>
        <translation>Warte {seconds} Sekunden auf das, was spät kommt. Trink inzwischen nichts.</translation>
    </message>
    <message>
        <source>For the pourer</source>
        <translation>Zum Einschenken</translation>
    </message>
    <message>
        <source>Key card</source>
        <translation>Schlüsselkarte</translation>
    </message>
    <message>
        <source>For the pourer alone: this sheet is the key. Do not read it aloud, do not taste, take it with you.</source>
        <translation>Nur für die Person, die einschenkt: dieses Blatt ist der Schlüssel. Lies es nicht vor, verkoste nicht, nimm es mit.</translation>
    </message>
    <message>
        <source>{volume} into each cup.</source>
        <translation>{volume} in jeden Becher.</translation>
    </message>
    <message>
        <source>Pour bottle by bottle</source>
        <translation>Schenk Flasche für Flasche ein</translation>
    </message>
    <message>
        <source>Then check place by place, from the taster&apos;s left to the right</source>
        <translation>Dann prüf Platz für Platz, von links nach rechts aus Sicht der Person am Platz</translation>
    </message>
    <message>
        <source>Only for a spilled cup: the code that takes its place</source>
        <translation>Nur für einen verschütteten Becher: der Code, der an seine Stelle tritt</translation>
    </message>
    <message>
        <source>spare</source>
        <translation>Ersatz</translation>
    </message>
    <message>
        <source>The key, sealed</source>
        <translation>Der Schlüssel, versiegelt</translation>
    </message>
    <message>
        <source>Everybody at the table signs across the tape.</source>
        <translation>Alle am Tisch unterschreiben quer über den Klebestreifen.</translation>
    </message>
    <message>
        <source>Not needed when all goes well: burn it then. It is opened only when the computer is lost, after the last answer is written down.</source>
        <translation>Nicht nötig, wenn alles gut geht: dann verbrenn ihn. Geöffnet wird er nur, wenn der Rechner verloren ist, nachdem die letzte Antwort aufgeschrieben wurde.</translation>
    </message>
    <message>
        <source>What stood under which code</source>
        <translation>Was unter welchem Code stand</translation>
    </message>
    <message>
        <source>3. Fold this quarter to the back, round all of it, and tape it down.</source>
        <translation>3. Falt dieses Viertel nach hinten, um alles herum, und kleb es fest.</translation>
    </message>
    <message>
        <source>This quarter stays in front.</source>
        <translation>Dieses Viertel bleibt vorn.</translation>
    </message>
    <message>
        <source>2. Fold these two quarters to the back.</source>
        <translation>2. Falt diese zwei Viertel nach hinten.</translation>
    </message>
    <message>
        <source>1. Fold this quarter up, over the writing.</source>
        <translation>1. Falt dieses Viertel nach oben, über die Schrift.</translation>
    </message>
    <message>
        <source>Round {round}: {drink}</source>
        <translation>Runde {round}: {drink}</translation>
    </message>
    <message>
        <source>{cups} on the table, and about {minutes}.</source>
        <translation>{cups} auf dem Tisch, und etwa {minutes}.</translation>
    </message>
    <message>
        <source>Over {evenings} evenings: on the longest {one} a person, {volume}, and about {minutes}. {cups} in all.</source>
        <translation>Über {evenings} Abende: am längsten {one} je Person, {volume}, und etwa {minutes}. Insgesamt {cups}.</translation>
    </message>
    <message>
        <source>In {waves} waves of {places}: {cups} on the trays at a time, {volume}.</source>
        <translation>In {waves} Wellen zu {places}: {cups} auf einmal auf den Tabletts, {volume}.</translation>
    </message>
    <message>
        <source>That is three comparisons: each pair of the drinks by itself.</source>
        <translation>Das sind drei Vergleiche: jedes Paar der Getränke für sich.</translation>
    </message>
    <message>
        <source>One maker tastes alone: the answers speak of that person only.</source>
        <translation>Eine Person, die es gemacht hat, verkostet allein: die Antworten sprechen nur von ihr.</translation>
    </message>
    <message>
        <source>Nobody is left who did not make it: nobody counts.</source>
        <translation>Niemand ist übrig, der nicht daran mitgemacht hat: niemand zählt.</translation>
    </message>
    <message>
        <source>1 person tastes and counts.</source>
        <translation>1 Person verkostet und zählt.</translation>
    </message>
    <message>
        <source>{n} people taste, and all of them count.</source>
        <translation>{n} Leute verkosten, und alle zählen.</translation>
    </message>
    <message>
        <source>{all} taste, {makers} of them had a hand in it: 1 counts.</source>
        <translation>{all} verkosten (daran mitgemacht: {makers}): 1 Person zählt.</translation>
    </message>
    <message>
        <source>{all} taste, {makers} of them had a hand in it: {n} count.</source>
        <translation>{all} verkosten (daran mitgemacht: {makers}): {n} zählen.</translation>
    </message>
    <message>
        <source>One more pours and does not taste.</source>
        <translation>Eine Person mehr schenkt ein und verkostet nicht.</translation>
    </message>
    <message>
        <source>1 spare place is poured as well.</source>
        <translation>1 Reserveplatz wird mit eingeschenkt.</translation>
    </message>
    <message>
        <source>{n} spare places are poured as well.</source>
        <translation>{n} Reserveplätze werden mit eingeschenkt.</translation>
    </message>
    <message>
        <source>{cups} a person, {volume} in each: {all} in all.</source>
        <translation>{cups} je Person, {volume} in jedem: insgesamt {all}.</translation>
    </message>
    <message>
        <source>{lot}: up to {volume}. Its bottle size is not known.</source>
        <translation>{lot}: bis zu {volume}. Die Flaschengröße ist nicht bekannt.</translation>
    </message>
    <message>
        <source>{lot}: up to {volume}, {bottles}.</source>
        <translation>{lot}: bis zu {volume}, {bottles}.</translation>
    </message>
    <message>
        <source>Only 1 is free.</source>
        <translation>Nur 1 ist frei.</translation>
    </message>
    <message>
        <source>Only {n} are free.</source>
        <translation>Nur {n} sind frei.</translation>
    </message>
    <message>
        <source>No strength is known for one of the drinks, so the alcohol cannot be worked out.</source>
        <translation>Von einem der Getränke ist kein Alkoholgehalt bekannt, also lässt sich der Alkohol nicht ausrechnen.</translation>
    </message>
    <message>
        <source>That is above your ceiling of {grams} g an evening.</source>
        <translation>Das liegt über deiner Obergrenze von {grams} g am Abend.</translation>
    </message>
    <message>
        <source>{Field} is empty. Nothing was changed. Fill it in and try again.</source>
        <translation>{Field}: hier steht nichts. Nichts wurde geändert. Füll es aus und versuch es noch einmal.</translation>
    </message>
    <message>
        <source>{Field} is longer than {limit} letters. Nothing was changed. Shorten it and try again.</source>
        <translation>{Field}: länger als {limit} Buchstaben. Nichts wurde geändert. Kürz es und versuch es noch einmal.</translation>
    </message>
    <message>
        <source>{Field}: “{text}” is not a number. Nothing was changed. Write digits, with a comma or a point before the fraction.</source>
        <translation>{Field}: „{text}“ ist keine Zahl. Nichts wurde geändert. Schreib Ziffern, mit Komma oder Punkt vor den Nachkommastellen.</translation>
    </message>
    <message>
        <source>{Field}: {text} lies outside {low} to {high}. Nothing was changed. Choose a value within that range.</source>
        <translation>{Field}: {text} liegt nicht zwischen {low} und {high}. Nichts wurde geändert. Nimm einen Wert in diesem Bereich.</translation>
    </message>
    <message>
        <source>{Field}: “{text}” cannot be chosen here. Nothing was changed. Choose one of {choices}.</source>
        <translation>{Field}: „{text}“ steht hier nicht zur Wahl. Nichts wurde geändert. Nimm eines von {choices}.</translation>
    </message>
    <message>
        <source>{Field}: “{text}” is not a day. Nothing was changed. Write it like 2026-03-14.</source>
        <translation>{Field}: „{text}“ ist kein Tag. Nichts wurde geändert. Schreib ihn wie 2026-03-14.</translation>
    </message>
    <message>
        <source>The final gravity is above the original one. Nothing was changed. Check that the two were not swapped.</source>
        <translation>Der Restextrakt liegt über der Stammwürze. Nichts wurde geändert. Prüf, ob die beiden vertauscht sind.</translation>
    </message>
    <message>
        <source>There is no {what} called “{text}”. Nothing was changed. Check the name, or look in the list.</source>
        <translation>„{text}“ gibt es hier nicht ({what}). Nichts wurde geändert. Prüf den Namen, oder sieh in der Liste nach.</translation>
    </message>
    <message>
        <source>“{text}” begins more than one. Nothing was changed. Give a few more letters.</source>
        <translation>„{text}“ ist der Anfang von mehr als einem. Nichts wurde geändert. Gib ein paar Buchstaben mehr an.</translation>
    </message>
    <message>
        <source>“{text}” is there already. Nothing was changed. Use the one that is there, or choose another name.</source>
        <translation>„{text}“ gibt es schon. Nichts wurde geändert. Nimm, was da ist, oder wähl einen anderen Namen.</translation>
    </message>
    <message>
        <source>This batch was stabilised on {day}. Nothing was added. If it was really done twice, say so once more.</source>
        <translation>Dieser Ansatz wurde am {day} stabilisiert. Nichts wurde hinzugefügt. Wenn es wirklich zweimal getan wurde, sag es noch einmal.</translation>
    </message>
    <message>
        <source>This change was taken back already, or something else was changed since. Nothing was changed now. Look at the page.</source>
        <translation>Diese Änderung wurde schon zurückgenommen, oder seither wurde etwas anderes geändert. Jetzt wurde nichts geändert. Sieh auf die Seite.</translation>
    </message>
    <message>
        <source>This cannot be taken back any more: what came later needs “{name}” as it is. Nothing was changed. Change it by hand, or put it away.</source>
        <translation>Das lässt sich nicht mehr zurücknehmen: was später kam, braucht „{name}“, wie es ist. Nichts wurde geändert. Änder es von Hand, oder leg es weg.</translation>
    </message>
    <message>
        <source>A sealed session still pours this. It stays on the shelf. Put it away after the reveal.</source>
        <translation>Eine versiegelte Verkostung schenkt das noch ein. Es bleibt im Regal. Leg es weg, wenn der Schlüssel geöffnet ist.</translation>
    </message>
    <message>
        <source>“{text}” belongs to the list that comes with the program and keeps its name. Nothing was changed. Retire it, or merge it into a word of your own.</source>
        <translation>„{text}“ gehört zur Liste, die mit dem Programm kommt, und behält seinen Namen. Nichts wurde geändert. Nimm es aus dem Dienst, oder leg es mit einem eigenen Wort zusammen.</translation>
    </message>
    <message>
        <source>“{text}” is retired and takes no other word in. Nothing was changed. Bring it back first, or choose another one.</source>
        <translation>„{text}“ ist außer Dienst und nimmt kein anderes Wort auf. Nichts wurde geändert. Hol es zuerst zurück, oder nimm ein anderes.</translation>
    </message>
    <message>
        <source>“{text}” counts as “{other}” already, so the two cannot be merged this way round. Nothing was changed. Choose another word.</source>
        <translation>„{text}“ zählt schon als „{other}“, also lassen sich die beiden so herum nicht zusammenlegen. Nichts wurde geändert. Nimm ein anderes Wort.</translation>
    </message>
    <message>
        <source>{file}, line {line}, column {column}: {text}. Nothing was read in. Mend that place and try again.</source>
        <translation>{file}, Zeile {line}, Spalte {column}: {text}. Nichts wurde eingelesen. Bring die Stelle in Ordnung und versuch es noch einmal.</translation>
    </message>
    <message>
        <source>A comparison needs a second drink. The plan is kept. Add the bought one, or another of your own.</source>
        <translation>Ein Vergleich braucht ein zweites Getränk. Der Plan bleibt. Nimm das gekaufte dazu oder ein anderes eigenes.</translation>
    </message>
    <message>
        <source>{lot} stands on both sides. The plan is kept. Choose a different drink for one of them.</source>
        <translation>{lot} steht auf beiden Seiten. Der Plan bleibt. Nimm für eine davon ein anderes Getränk.</translation>
    </message>
    <message>
        <source>Nobody is left who did not make it. The plan is kept. Add at least one person who had no hand in it, or taste alone.</source>
        <translation>Niemand ist übrig, der nicht daran mitgemacht hat. Der Plan bleibt. Nimm mindestens eine Person dazu, die nichts damit zu tun hatte, oder verkoste allein.</translation>
    </message>
    <message>
        <source>{name} made this batch and is also the pourer. The plan is kept. Choose someone else to pour, or use a routine where nobody knows.</source>
        <translation>{name} hat diesen Ansatz gemacht und soll auch einschenken. Der Plan bleibt. Lass jemand anderen einschenken, oder nimm einen Weg, bei dem es niemand weiß.</translation>
    </message>
    <message>
        <source>{name} pours and so knows the cups. The plan is kept. Take {name} off the tasters, or choose someone else to pour.</source>
        <translation>{name} schenkt ein und kennt also die Becher. Der Plan bleibt. Nimm {name} aus der Liste derer, die verkosten, oder lass jemand anderen einschenken.</translation>
    </message>
    <message>
        <source>There are {have} bottles of {lot}; this plan needs {need}. The plan is kept. Pour less into each cup, or leave out a round.</source>
        <translation>Es gibt {have} Flaschen von {lot}; dieser Plan braucht {need}. Der Plan bleibt. Schenk weniger in jeden Becher, oder lass eine Runde weg.</translation>
    </message>
    <message>
        <source>This plan offers each person {grams} g of alcohol in an evening; your ceiling is {ceiling} g. The plan is kept. Pour less into each cup, spread it over two evenings, or leave out a round.</source>
        <translation>Dieser Plan bietet jeder Person {grams} g Alkohol an einem Abend; deine Obergrenze ist {ceiling} g. Der Plan bleibt. Schenk weniger in jeden Becher, verteil es auf zwei Abende, oder lass eine Runde weg.</translation>
    </message>
    <message>
        <source>Half the room tasting it is not alike. The plan is kept. Set a limit of half the people or fewer.</source>
        <translation>Wenn der halbe Raum es schmeckt, ist das nicht ähnlich. Der Plan bleibt. Setz eine Grenze bei der Hälfte der Leute oder darunter.</translation>
    </message>
    <message>
        <source>A verdict of alike needs a limit that is set before. The plan is kept. Say how few may still taste it.</source>
        <translation>Ein Urteil „ähnlich“ braucht eine Grenze, die vorher gesetzt ist. Der Plan bleibt. Sag, wie wenige es noch schmecken dürfen.</translation>
    </message>
    <message>
        <source>No alcohol strength is known for {lot}. The plan is kept. Write its strength, a careful guess if need be: it is marked as one.</source>
        <translation>Von {lot} ist kein Alkoholgehalt bekannt. Der Plan bleibt. Trag ihn ein, notfalls vorsichtig geschätzt: er wird als Schätzung gekennzeichnet.</translation>
    </message>
    <message>
        <source>This plan needs more cups than there are codes. The plan is kept. Leave out a round, or invite fewer people.</source>
        <translation>Dieser Plan braucht mehr Becher, als es Codes gibt. Der Plan bleibt. Lass eine Runde weg, oder lad weniger Leute ein.</translation>
    </message>
    <message>
        <source>The alcohol strength is missing. Nothing was changed. Write it, or both gravities.</source>
        <translation>Der Alkoholgehalt fehlt. Nichts wurde geändert. Trag ihn ein, oder beide Dichten.</translation>
    </message>
    <message>
        <source>That cannot be done while this session is {state}. Nothing was changed. Go on with what the session&apos;s page offers now.</source>
        <translation>Das geht nicht, solange diese Verkostung so steht: {state}. Nichts wurde geändert. Mach mit dem weiter, was ihre Seite jetzt anbietet.</translation>
    </message>
    <message>
        <source>This plan is not sealed yet. The plan is kept. Seal it first.</source>
        <translation>Dieser Plan ist noch nicht versiegelt. Der Plan bleibt. Versiegel ihn zuerst.</translation>
    </message>
    <message>
        <source>This plan is sealed and cannot be changed. It stays as it is. Make a new plan, or break the seal, which ends the session without a verdict.</source>
        <translation>Dieser Plan ist versiegelt und lässt sich nicht ändern. Er bleibt, wie er ist. Mach einen neuen Plan, oder brich das Siegel; dann endet die Verkostung ohne Urteil.</translation>
    </message>
    <message>
        <source>A sitting of this series is sealed, so what the series was begun for stays. Everything is kept. Begin another series if you want to know something else.</source>
        <translation>Ein Termin dieser Reihe ist versiegelt, also bleibt, wofür die Reihe begonnen wurde. Alles bleibt. Beginn eine andere Reihe, wenn du etwas anderes wissen willst.</translation>
    </message>
    <message>
        <source>The old pages of {text} are closed while one of its sittings is sealed: what you read there would sit at the table with you. Everything is kept. Open the key of that sitting first.</source>
        <translation>Die alten Seiten von {text} sind zu, solange einer der Termine versiegelt ist: was du dort liest, säße mit dir am Tisch. Alles bleibt. Öffne zuerst den Schlüssel jenes Termins.</translation>
    </message>
    <message>
        <source>The key is still sealed, so there is nothing to report. All answers are kept. Close the table and open the key first.</source>
        <translation>Der Schlüssel ist noch versiegelt, also gibt es nichts zu berichten. Alle Antworten bleiben. Schließ den Tisch und öffne zuerst den Schlüssel.</translation>
    </message>
    <message>
        <source>This cannot be undone, so it needs to be said twice. Nothing was changed. Say it once more if you mean it.</source>
        <translation>Das lässt sich nicht rückgängig machen, deshalb muss es zweimal gesagt werden. Nichts wurde geändert. Sag es noch einmal, wenn du es ernst meinst.</translation>
    </message>
    <message>
        <source>There is no place {place}. Nothing was changed. Look at the number on the mat.</source>
        <translation>Es gibt keinen Platz {place}. Nichts wurde geändert. Sieh auf die Zahl auf der Matte.</translation>
    </message>
    <message>
        <source>Place {place} is taken. Nothing was changed. Choose a free one.</source>
        <translation>Platz {place} ist besetzt. Nichts wurde geändert. Nimm einen freien.</translation>
    </message>
    <message>
        <source>Nobody sits at place {place}. Nothing was changed. Seat somebody there first.</source>
        <translation>An Platz {place} sitzt niemand. Nichts wurde geändert. Setz zuerst jemanden dorthin.</translation>
    </message>
    <message>
        <source>{name} sits at place {place} already. Nothing was changed. Go on there.</source>
        <translation>{name} sitzt schon an Platz {place}. Nichts wurde geändert. Mach dort weiter.</translation>
    </message>
    <message>
        <source>Only adults taste. Nothing was changed. Somebody else may take this place.</source>
        <translation>Nur Erwachsene verkosten. Nichts wurde geändert. Jemand anderes kann diesen Platz nehmen.</translation>
    </message>
    <message>
        <source>The cautions have not been read yet. Nothing was changed. Read them aloud, then go on.</source>
        <translation>Die Hinweise wurden noch nicht vorgelesen. Nichts wurde geändert. Lies sie vor, dann mach weiter.</translation>
    </message>
    <message>
        <source>Without consent nobody tastes. Nothing was changed. Sitting out needs no reason.</source>
        <translation>Ohne Einverständnis verkostet niemand. Nichts wurde geändert. Aussetzen braucht keinen Grund.</translation>
    </message>
    <message>
        <source>The pourer knows the cups and cannot taste. Nothing was changed. Seat somebody else.</source>
        <translation>Wer einschenkt, kennt die Becher und kann nicht verkosten. Nichts wurde geändert. Setz jemand anderen hin.</translation>
    </message>
    <message>
        <source>There is no round {round} in this session. Nothing was changed. Look at the sheet.</source>
        <translation>Runde {round} gibt es in dieser Verkostung nicht. Nichts wurde geändert. Sieh auf den Bogen.</translation>
    </message>
    <message>
        <source>Round {round} is not the next one at place {place}. Nothing was changed. Take the rounds in their order.</source>
        <translation>Runde {round} ist an Platz {place} nicht die nächste. Nichts wurde geändert. Nimm die Runden der Reihe nach.</translation>
    </message>
    <message>
        <source>{code} is not a code at place {place}. Nothing was changed. This place has {codes}.</source>
        <translation>{code} ist kein Code an Platz {place}. Nichts wurde geändert. Dieser Platz hat {codes}.</translation>
    </message>
    <message>
        <source>This answer was already locked at {time}. It stays as it is. Tell the host if it is wrong: a note can be added.</source>
        <translation>Diese Antwort wurde schon um {time} festgelegt. Sie bleibt, wie sie ist. Sag es, wenn sie falsch ist: eine Notiz lässt sich hinzufügen.</translation>
    </message>
    <message>
        <source>This round was set aside at place {place}. What was said before is kept. Go on with the next round.</source>
        <translation>Diese Runde wurde an Platz {place} beiseitegestellt. Was vorher gesagt wurde, bleibt. Mach mit der nächsten Runde weiter.</translation>
    </message>
    <message>
        <source>Whoever sat at place {place} has stopped. What was locked is kept. A latecomer takes a spare place.</source>
        <translation>Wer an Platz {place} saß, hat aufgehört. Was festgelegt wurde, bleibt. Wer später kommt, nimmt einen Reserveplatz.</translation>
    </message>
    <message>
        <source>Question {item} needs an answer. What you chose is still here. A guess is a good answer.</source>
        <translation>Frage {item} braucht eine Antwort. Was du gewählt hast, ist noch da. Raten ist eine gute Antwort.</translation>
    </message>
    <message>
        <source>Question {item} gives two cups the same rank. Nothing was locked. Give each rank once.</source>
        <translation>Frage {item} gibt zwei Bechern denselben Rang. Nichts wurde festgelegt. Vergib jeden Rang einmal.</translation>
    </message>
    <message>
        <source>Question {item} has five points to give, and {sum} were given. Nothing was locked. Give all five.</source>
        <translation>Frage {item} hat fünf Punkte zu vergeben, und {sum} wurden vergeben. Nichts wurde festgelegt. Vergib alle fünf.</translation>
    </message>
    <message>
        <source>Question {item} of the sheet cannot be asked like that. Nothing was changed. It may lack its word, stand twice, or need a marked cup.</source>
        <translation>Frage {item} des Bogens lässt sich so nicht stellen. Nichts wurde geändert. Vielleicht fehlt ihr das Wort, sie steht zweimal da oder braucht einen markierten Becher.</translation>
    </message>
    <message>
        <source>There is nothing to score yet. The plan is kept. Choose at least one drink.</source>
        <translation>Es gibt noch nichts zu bewerten. Der Plan bleibt. Wähl mindestens ein Getränk.</translation>
    </message>
    <message>
        <source>Nothing is there to compare with. The plan is kept. Add a bought drink, or say which one the others are held against.</source>
        <translation>Es gibt nichts zum Vergleichen. Der Plan bleibt. Nimm ein gekauftes Getränk dazu, oder sag, woran die anderen gemessen werden.</translation>
    </message>
    <message>
        <source>The sheet asks nothing about a cup, or has more than 200 questions. Nothing was changed. Take a ready sheet, or put together your own.</source>
        <translation>Der Bogen fragt nichts zu einem Becher oder hat mehr als 200 Fragen. Nichts wurde geändert. Nimm einen fertigen Bogen, oder stell deinen eigenen zusammen.</translation>
    </message>
    <message>
        <source>“{value}” is no answer to question {item}. Nothing was locked. Choose one of those offered.</source>
        <translation>„{value}“ ist keine Antwort auf Frage {item}. Nichts wurde festgelegt. Wähl eine der angebotenen.</translation>
    </message>
    <message>
        <source>No spare code is left for cup {code}. What was locked is kept. Set this round aside at that place; it will be counted as missing.</source>
        <translation>Für Becher {code} ist kein Ersatzcode mehr da. Was festgelegt wurde, bleibt. Stell diese Runde an dem Platz beiseite; sie zählt dann als fehlend.</translation>
    </message>
    <message>
        <source>Cup {code} was replaced already. Nothing was changed. Use the code that took its place.</source>
        <translation>Becher {code} wurde schon ersetzt. Nichts wurde geändert. Nimm den Code, der an seine Stelle trat.</translation>
    </message>
    <message>
        <source>This plan is not looked at before the end: looking early would raise the false alarms. Nothing was opened. Close the table when everybody has locked.</source>
        <translation>In diesem Plan wird vor dem Ende nicht nachgesehen: früh nachsehen würde die falschen Alarme vermehren. Nichts wurde geöffnet. Schließ den Tisch, wenn alle festgelegt haben.</translation>
    </message>
    <message>
        <source>Place {place} has not locked this round. Nothing was opened. Look when the whole round is locked.</source>
        <translation>Platz {place} hat diese Runde noch nicht festgelegt. Nichts wurde geöffnet. Sieh nach, wenn die ganze Runde festgelegt ist.</translation>
    </message>
    <message>
        <source>There is no further round to open. All that was locked is kept. Close the table.</source>
        <translation>Es gibt keine weitere Runde zu öffnen. Alles Festgelegte bleibt. Schließ den Tisch.</translation>
    </message>
    <message>
        <source>Nobody sits at the table yet. Nothing was opened. Look when a whole round is locked.</source>
        <translation>Noch sitzt niemand am Tisch. Nichts wurde geöffnet. Sieh nach, wenn eine ganze Runde festgelegt ist.</translation>
    </message>
    <message>
        <source>Three lots are compared pair by pair, by a triangle, a duo-trio or a tetrad only. The plan is kept. Choose one of these, or two lots.</source>
        <translation>Drei Chargen werden Paar für Paar verglichen, nur mit Dreieckstest, Duo-Trio oder Tetradentest. Der Plan bleibt. Nimm eines davon, oder zwei Chargen.</translation>
    </message>
    <message>
        <source>Say what one of them has more of, and which one you expect it of. The plan is kept.</source>
        <translation>Sag, wovon eines mehr hat und bei welchem du es erwartest. Der Plan bleibt.</translation>
    </message>
    <message>
        <source>{Field} does not go with this way of asking. The plan is kept. Leave it out, or choose another way.</source>
        <translation>{Field}: passt nicht zu dieser Art zu fragen. Der Plan bleibt. Lass es weg, oder nimm eine andere Art.</translation>
    </message>
    <message>
        <source>“{question}” is not answered by this way of asking: {method}. Nothing was changed. Choose another way, or ask another question.</source>
        <translation>„{question}“ wird von dieser Art zu fragen nicht beantwortet: {method}. Nichts wurde geändert. Nimm eine andere Art, oder stell eine andere Frage.</translation>
    </message>
    <message>
        <source>A closed table cannot take late sheets. All that was locked is kept. Keep it as a note; it will not be counted.</source>
        <translation>Ein geschlossener Tisch nimmt keine späten Bögen. Alles Festgelegte bleibt. Behalt ihn als Notiz; gezählt wird er nicht.</translation>
    </message>
    <message>
        <source>The file is in use by another program. Nothing was changed. Close the other one and try again.</source>
        <translation>Ein anderes Programm benutzt die Datei gerade. Nichts wurde geändert. Schließ das andere und versuch es noch einmal.</translation>
    </message>
    <message>
        <source>This file comes from a newer Oddglass ({version}). It was not touched. Update the program, or open a backup.</source>
        <translation>Diese Datei kommt von einem neueren Oddglass ({version}). Sie wurde nicht angerührt. Bring das Programm auf den neuen Stand, oder öffne eine Sicherung.</translation>
    </message>
    <message>
        <source>{file} is no Oddglass file. It was not touched. Choose another file.</source>
        <translation>{file} ist keine Oddglass-Datei. Sie wurde nicht angerührt. Nimm eine andere Datei.</translation>
    </message>
    <message>
        <source>{file} is damaged. It was not touched any further. Keep a copy of it, then restore the latest backup.</source>
        <translation>{file} ist beschädigt. Sie wurde nicht weiter angerührt. Heb eine Kopie davon auf, dann setz die letzte Sicherung ein.</translation>
    </message>
    <message>
        <source>Not saved: {file} or its folder cannot be written. What was there is kept. Allow writing, or choose another folder.</source>
        <translation>Nicht gespeichert: {file} oder der Ordner lässt sich nicht beschreiben. Was da war, bleibt. Erlaub das Schreiben, oder nimm einen anderen Ordner.</translation>
    </message>
    <message>
        <source>Not saved: the disk is full. What was saved before is kept, and your answer is still on this screen. Free some space, then try again.</source>
        <translation>Nicht gespeichert: der Datenträger ist voll. Was vorher gespeichert war, bleibt, und deine Antwort steht noch auf diesem Bildschirm. Schaff Platz, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>The store could not be used: {text}. What was saved before is kept. Try again; if it stays so, make a backup.</source>
        <translation>Die Ablage ließ sich nicht benutzen: {text}. Was vorher gespeichert war, bleibt. Versuch es noch einmal; wenn es so bleibt, mach eine Sicherung.</translation>
    </message>
    <message>
        <source>There is no file {file}. Nothing was made in its place. Check the name, or restore a backup.</source>
        <translation>Es gibt keine Datei {file}. Nichts wurde an ihrer Stelle angelegt. Prüf den Namen, oder setz eine Sicherung ein.</translation>
    </message>
    <message>
        <source>The program with windows makes the paper, and it is not at {file}. Nothing was written. Install it beside this one, or ask for another kind of file.</source>
        <translation>Das Programm mit Fenstern macht das Papier, und es liegt nicht unter {file}. Nichts wurde geschrieben. Installier es neben diesem, oder verlang eine andere Art von Datei.</translation>
    </message>
    <message>
        <source>{Field}: that leaves {have} mm for each label, and a code needs {need} mm. Nothing was printed. Take fewer of them, or smaller margins and gaps.</source>
        <translation>{Field}: damit bleiben {have} mm je Etikett, und ein Code braucht {need} mm. Nichts wurde gedruckt. Nimm weniger davon, oder kleinere Ränder und Abstände.</translation>
    </message>
    <message>
        <source>{text} Nothing was printed.</source>
        <translation>{text} Nichts wurde gedruckt.</translation>
    </message>
    <message>
        <source>{file} is too large to be one of ours. Nothing was read in. Choose another file.</source>
        <translation>{file} ist zu groß, um eine von unseren zu sein. Nichts wurde eingelesen. Nimm eine andere Datei.</translation>
    </message>
    <message>
        <source>{file} is nested too deeply to be one of ours. Nothing was read in. Choose another file.</source>
        <translation>{file} ist zu tief verschachtelt, um eine von unseren zu sein. Nichts wurde eingelesen. Nimm eine andere Datei.</translation>
    </message>
    <message>
        <source>In {file} the name “{text}” stands twice in one place. Nothing was read in. Mend that place and try again.</source>
        <translation>In {file} steht der Name „{text}“ an einer Stelle zweimal. Nichts wurde eingelesen. Bring die Stelle in Ordnung und versuch es noch einmal.</translation>
    </message>
    <message>
        <source>In {file}, {field} is not a whole number. Nothing was read in. Mend that place and try again.</source>
        <translation>In {file} ist {field} keine ganze Zahl. Nichts wurde eingelesen. Bring die Stelle in Ordnung und versuch es noch einmal.</translation>
    </message>
    <message>
        <source>In {file}, {field} points to something that is not in it ({text}). Nothing was read in. Ask for a complete file.</source>
        <translation>In {file} zeigt {field} auf etwas, das nicht darin ist ({text}). Nichts wurde eingelesen. Bitte um eine vollständige Datei.</translation>
    </message>
    <message>
        <source>The record does not check: {text}. Nothing was read in or changed by this. Compare with your backup, or ask for a fresh file.</source>
        <translation>Das Protokoll stimmt nicht: {text}. Dadurch wurde nichts eingelesen und nichts geändert. Vergleich mit deiner Sicherung, oder bitte um eine frische Datei.</translation>
    </message>
    <message>
        <source>This session is here already. It stays as it is. There is nothing more to do.</source>
        <translation>Diese Verkostung ist schon hier. Sie bleibt, wie sie ist. Mehr ist nicht zu tun.</translation>
    </message>
    <message>
        <source>{file} was written by a newer Oddglass ({version}). Nothing was read in. Update the program, or ask for an older file.</source>
        <translation>{file} wurde von einem neueren Oddglass geschrieben ({version}). Nichts wurde eingelesen. Bring das Programm auf den neuen Stand, oder bitte um eine ältere Datei.</translation>
    </message>
    <message>
        <source>this drink</source>
        <translation>dieses Getränk</translation>
    </message>
    <message>
        <source>this person</source>
        <translation>diese Person</translation>
    </message>
    <message>
        <source>entry</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>what was given</source>
        <translation>was angegeben wurde</translation>
    </message>
    <message>
        <source>the file</source>
        <translation>die Datei</translation>
    </message>
    <message>
        <source>those offered</source>
        <translation>den angebotenen</translation>
    </message>
    <message>
        <source>other codes</source>
        <translation>andere Codes</translation>
    </message>
    <message>
        <source>of this number</source>
        <translation>mit dieser Nummer</translation>
    </message>
    <message>
        <source>an earlier time</source>
        <translation>früherer Zeit</translation>
    </message>
    <message>
        <source>an earlier day</source>
        <translation>einem früheren Tag</translation>
    </message>
    <message>
        <source>this question</source>
        <translation>diese Frage</translation>
    </message>
    <message>
        <source>where it stands now</source>
        <translation>wo sie jetzt steht</translation>
    </message>
    <message>
        <source>this word</source>
        <translation>dieses Wort</translation>
    </message>
    <message>
        <source>the name</source>
        <translation>der Name</translation>
    </message>
    <message>
        <source>the nickname</source>
        <translation>der Spitzname</translation>
    </message>
    <message>
        <source>the title</source>
        <translation>der Titel</translation>
    </message>
    <message>
        <source>the title that guests see</source>
        <translation>der Titel, den Gäste sehen</translation>
    </message>
    <message>
        <source>the two drinks</source>
        <translation>die beiden Getränke</translation>
    </message>
    <message>
        <source>the drink</source>
        <translation>das Getränk</translation>
    </message>
    <message>
        <source>the tasters</source>
        <translation>wer verkostet</translation>
    </message>
    <message>
        <source>the pourer</source>
        <translation>wer einschenkt</translation>
    </message>
    <message>
        <source>the number of rounds</source>
        <translation>die Zahl der Runden</translation>
    </message>
    <message>
        <source>the amount in a cup</source>
        <translation>die Menge im Becher</translation>
    </message>
    <message>
        <source>the number of spare places</source>
        <translation>die Zahl der Reserveplätze</translation>
    </message>
    <message>
        <source>the limit for alike</source>
        <translation>die Grenze für ähnlich</translation>
    </message>
    <message>
        <source>the risk of a false alarm</source>
        <translation>das Risiko eines falschen Alarms</translation>
    </message>
    <message>
        <source>the original gravity</source>
        <translation>die Stammwürze</translation>
    </message>
    <message>
        <source>the final gravity</source>
        <translation>der Restextrakt</translation>
    </message>
    <message>
        <source>the gravity</source>
        <translation>die Dichte</translation>
    </message>
    <message>
        <source>the alcohol strength</source>
        <translation>der Alkoholgehalt</translation>
    </message>
    <message>
        <source>the number of bottles</source>
        <translation>die Zahl der Flaschen</translation>
    </message>
    <message>
        <source>the bottle size</source>
        <translation>die Flaschengröße</translation>
    </message>
    <message>
        <source>the day of bottling</source>
        <translation>der Tag der Abfüllung</translation>
    </message>
    <message>
        <source>the best-before day</source>
        <translation>die Mindesthaltbarkeit</translation>
    </message>
    <message>
        <source>the day</source>
        <translation>der Tag</translation>
    </message>
    <message>
        <source>the storage</source>
        <translation>die Lagerung</translation>
    </message>
    <message>
        <source>where it was bought</source>
        <translation>wo es gekauft wurde</translation>
    </message>
    <message>
        <source>the text</source>
        <translation>der Text</translation>
    </message>
    <message>
        <source>what you will do</source>
        <translation>was du tun wirst</translation>
    </message>
    <message>
        <source>the reason</source>
        <translation>der Grund</translation>
    </message>
    <message>
        <source>the ceiling in grams</source>
        <translation>die Obergrenze in Gramm</translation>
    </message>
    <message>
        <source>the country</source>
        <translation>das Land</translation>
    </message>
    <message>
        <source>the place</source>
        <translation>der Platz</translation>
    </message>
    <message>
        <source>the round</source>
        <translation>die Runde</translation>
    </message>
    <message>
        <source>the code</source>
        <translation>der Code</translation>
    </message>
    <message>
        <source>the session</source>
        <translation>die Verkostung</translation>
    </message>
    <message>
        <source>the taster</source>
        <translation>wer verkostet</translation>
    </message>
    <message>
        <source>the word</source>
        <translation>das Wort</translation>
    </message>
    <message>
        <source>the word it is merged into</source>
        <translation>das Wort, mit dem es zusammengelegt wird</translation>
    </message>
    <message>
        <source>the list of drinks</source>
        <translation>die Liste der Getränke</translation>
    </message>
    <message>
        <source>labels side by side</source>
        <translation>Etiketten nebeneinander</translation>
    </message>
    <message>
        <source>labels one below the other</source>
        <translation>Etiketten untereinander</translation>
    </message>
    <message>
        <source>the margins</source>
        <translation>die Ränder</translation>
    </message>
    <message>
        <source>the gaps</source>
        <translation>die Abstände</translation>
    </message>
    <message>
        <source>labels already gone</source>
        <translation>schon fehlende Etiketten</translation>
    </message>
    <message>
        <source>what was typed</source>
        <translation>was getippt wurde</translation>
    </message>
    <message>
        <source>who types it in</source>
        <translation>wer abtippt</translation>
    </message>
    <message>
        <source>what it means</source>
        <translation>was es bedeutet</translation>
    </message>
    <message>
        <source>this field</source>
        <translation>dieses Feld</translation>
    </message>
    <message>
        <source>{code} is not a code that can be meant here. Nothing was changed. Read the cup again.</source>
        <translation>{code} ist kein Code, der hier gemeint sein kann. Nichts wurde geändert. Lies den Becher noch einmal.</translation>
    </message>
    <message>
        <source>How far apart they are: d′ {d}, from {low} to {high}. At a d′ of 1 the right one of two cups is picked about 3 times in 4.</source>
        <translation>Wie weit sie auseinanderliegen: d′ {d}, von {low} bis {high}. Bei einem d′ von 1 wird von zwei Bechern in etwa 3 von 4 Fällen der richtige gewählt.</translation>
    </message>
    <message>
        <source>How far apart they are: d′ {d}. At a d′ of 1 the right one of two cups is picked about 3 times in 4.</source>
        <translation>Wie weit sie auseinanderliegen: d′ {d}. Bei einem d′ von 1 wird von zwei Bechern in etwa 3 von 4 Fällen der richtige gewählt.</translation>
    </message>
    <message>
        <source>How far apart they are has no number here: one kind of answer came every time, or not once. With half an answer added to each count it would be a d′ of about {d}.</source>
        <translation>Wie weit sie auseinanderliegen, hat hier keine Zahl: eine Art von Antwort kam jedes Mal oder kein einziges Mal. Mit einer halben Antwort zu jeder Zahl dazu wäre es ein d′ von etwa {d}.</translation>
    </message>
    <message>
        <source>In how many of your tastings you prefer {lot}</source>
        <translation>In wie vielen deiner Durchgänge du {lot} vorziehst</translation>
    </message>
    <message>
        <source>How many people like these prefer {lot}</source>
        <translation>Wie viele solche Leute {lot} vorziehen</translation>
    </message>
    <message>
        <source>In how many of your tastings you notice “{more}”</source>
        <translation>In wie vielen deiner Durchgänge du „{more}“ merkst</translation>
    </message>
    <message>
        <source>How many people like these notice “{more}”</source>
        <translation>Wie viele solche Leute „{more}“ merken</translation>
    </message>
    <message>
        <source>In how many of your tastings you can tell that {lot} is more {more}</source>
        <translation>In wie vielen deiner Durchgänge du merkst, dass {lot} mehr davon hat ({more})</translation>
    </message>
    <message>
        <source>How many people like these can tell that {lot} is more {more}</source>
        <translation>Wie viele solche Leute merken, dass {lot} mehr davon hat ({more})</translation>
    </message>
    <message>
        <source>In how many of your tastings you can tell</source>
        <translation>In wie vielen deiner Durchgänge du es merkst</translation>
    </message>
    <message>
        <source>How many people like these can tell</source>
        <translation>Wie viele solche Leute es merken</translation>
    </message>
    <message>
        <source>{method}, as is common practice.</source>
        <translation>{method}, wie allgemein üblich.</translation>
    </message>
    <message>
        <source>{method} test, after {standard}, not certified.</source>
        <translation>{method}, nach {standard}, nicht zertifiziert.</translation>
    </message>
    <message>
        <source>Wald’s sequential test (1947), looked at after whole rounds: guessing against {share} who can tell, with a risk of a false alarm of {risk} and of a miss of {beta} set before. The decision is the result; there is no p.</source>
        <translation>Sequenzieller Test nach Wald (1947), nach ganzen Runden nachgesehen: Raten gegen {share}, die es merken; vorher gesetztes Risiko eines falschen Alarms: {risk}, des Verpassens: {beta}. Die Entscheidung ist das Ergebnis; ein p gibt es nicht.</translation>
    </message>
    <message>
        <source>Exact binomial, two-sided, one vote a round, with a risk of a false alarm of {risk} set before.</source>
        <translation>Exakte Binomialrechnung, zweiseitig, eine Stimme je Runde, mit vorher gesetztem Risiko eines falschen Alarms: {risk}.</translation>
    </message>
    <message>
        <source>Exact binomial, two-sided, one vote a person, with a risk of a false alarm of {risk} set before.</source>
        <translation>Exakte Binomialrechnung, zweiseitig, eine Stimme je Person, mit vorher gesetztem Risiko eines falschen Alarms: {risk}.</translation>
    </message>
    <message>
        <source>Fisher’s exact test, one-sided, with a risk of a false alarm of {risk} set before; the range of d′ takes tastings, not people, as the unit.</source>
        <translation>Exakter Test nach Fisher, einseitig, mit vorher gesetztem Risiko eines falschen Alarms: {risk}; die Spanne von d′ nimmt Durchgänge, nicht Leute, als Einheit.</translation>
    </message>
    <message>
        <source>Exact binomial, one-sided, with a risk of a false alarm of {risk} set before.</source>
        <translation>Exakte Binomialrechnung, einseitig, mit vorher gesetztem Risiko eines falschen Alarms: {risk}.</translation>
    </message>
    <message>
        <source>People tasted {often} each, so people are counted and not cups, and the range is wide. {title}: {range}.</source>
        <translation>Alle haben {often} verkostet, also werden Leute gezählt und nicht Becher, und die Spanne ist weit. {title}: {range}.</translation>
    </message>
    <message>
        <source>{title}: {range}.</source>
        <translation>{title}: {range}.</translation>
    </message>
    <message>
        <source>Three pairs, each by itself, with the p values adjusted over the three by Holm (1979).</source>
        <translation>Drei Paare, jedes für sich, die p-Werte über die drei nach Holm (1979) angepasst.</translation>
    </message>
    <message>
        <source>The range takes the person as the unit (chance-corrected beta-binomial, no share and no spread favoured beforehand). Given these answers and that start, the truth lies in it {level}.</source>
        <translation>Die Spanne nimmt die Person als Einheit (zufallskorrigiertes Beta-Binomial, kein Anteil und keine Streuung vorher bevorzugt). Nach diesen Antworten und diesem Anfang liegt die Wahrheit {level} darin.</translation>
    </message>
    <message>
        <source>The range is exact (Clopper and Pearson) and, over many such tastings, holds the truth at least {level}.</source>
        <translation>Die Spanne ist exakt (Clopper und Pearson) und enthält über viele solche Verkostungen die Wahrheit mindestens {level}.</translation>
    </message>
    <message>
        <source>The range is exact (Clopper and Pearson, corrected for guessing) and, over many such tastings, holds the truth at least {level}.</source>
        <translation>Die Spanne ist exakt (Clopper und Pearson, um das Raten bereinigt) und enthält über viele solche Verkostungen die Wahrheit mindestens {level}.</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>Marke</translation>
    </message>
    <message>
        <source>share of tastings, 0 to 1</source>
        <translation>Anteil der Durchgänge, 0 bis 1</translation>
    </message>
    <message>
        <source>share of people, 0 to 1</source>
        <translation>Anteil der Leute, 0 bis 1</translation>
    </message>
    <message>
        <source>low end</source>
        <translation>unteres Ende</translation>
    </message>
    <message>
        <source>high end</source>
        <translation>oberes Ende</translation>
    </message>
    <message>
        <source>your limit</source>
        <translation>deine Grenze</translation>
    </message>
    <message>
        <source>If you preferred one of them {most}, it would have come out {mostOften}; if {nearly}, {nearlyOften}.</source>
        <translation>Hättest du eines {most} vorgezogen, wäre es {mostOften} herausgekommen; {nearly}: {nearlyOften}.</translation>
    </message>
    <message>
        <source>If {most} of such people preferred one of them, it would have come out {mostOften}; if {nearly} did, {nearlyOften}.</source>
        <translation>Hätten {most} solcher Leute eines vorgezogen, wäre es {mostOften} herausgekommen; bei {nearly}: {nearlyOften}.</translation>
    </message>
    <message>
        <source>A large difference (d′ 2: of two cups the right one is picked about 9 times in 10) would have come out {large}; a smaller one (d′ 1: about 3 times in 4), {small}.</source>
        <translation>Ein großer Unterschied (d′ 2: von zwei Bechern wird in etwa 9 von 10 Fällen der richtige gewählt) wäre {large} herausgekommen; ein kleinerer (d′ 1: in etwa 3 von 4 Fällen) {small}.</translation>
    </message>
    <message>
        <source>The plan stops like this by mistake about {risk} where there is a difference that {what}. A smaller one may well be there.</source>
        <translation>So hört der Plan fälschlich {risk} auf, wenn es einen Unterschied gibt, der {what} ist. Ein kleinerer kann durchaus da sein.</translation>
    </message>
    <message>
        <source>A difference that {half} would have come out {halfOften}; one that {small}, {smallOften}. So even a large one may be there.</source>
        <translation>Ein Unterschied, der {half} ist, wäre {halfOften} herausgekommen; einer, der {small} ist, {smallOften}. Also kann selbst ein großer da sein.</translation>
    </message>
    <message>
        <source>A difference that {half} would have come out {halfOften}; one that {small}, {smallOften}. So a small one may be there.</source>
        <translation>Ein Unterschied, der {half} ist, wäre {halfOften} herausgekommen; einer, der {small} ist, {smallOften}. Also kann ein kleiner da sein.</translation>
    </message>
    <message>
        <source>With every answer: {counted}. That alone would have read “{verdict}”; the weaker verdict is the one that stands.</source>
        <translation>Mit allen Antworten: {counted}. Das allein hätte „{verdict}“ geheißen; es gilt das schwächere Urteil.</translation>
    </message>
    <message>
        <source>With every answer: {counted}. That alone would have read “{verdict}”; the two point different ways, so neither stands.</source>
        <translation>Mit allen Antworten: {counted}. Das allein hätte „{verdict}“ geheißen; die beiden zeigen in verschiedene Richtungen, also gilt keines.</translation>
    </message>
    <message>
        <source>Without what was told by look or fizz: {counted}. The verdict stays.</source>
        <translation>Ohne das, was an Aussehen oder Prickeln erkannt wurde: {counted}. Das Urteil bleibt.</translation>
    </message>
    <message>
        <source>Without what was locked after something was said: {counted}. The verdict stays.</source>
        <translation>Ohne das, was festgelegt wurde, nachdem etwas gesagt war: {counted}. Das Urteil bleibt.</translation>
    </message>
    <message>
        <source>{n} by taste, smell or feel in the mouth</source>
        <translation>{n} an Geschmack, Geruch oder Mundgefühl</translation>
    </message>
    <message>
        <source>{n} by look or fizz</source>
        <translation>{n} an Aussehen oder Prickeln</translation>
    </message>
    <message>
        <source>{n} by a guess</source>
        <translation>{n} geraten</translation>
    </message>
    <message>
        <source>How you knew, for the 1 right answer: {parts}.</source>
        <translation>Woran du es gemerkt hast, bei der 1 richtigen Antwort: {parts}.</translation>
    </message>
    <message>
        <source>How you knew, for the {n} right answers: {parts}.</source>
        <translation>Woran du es gemerkt hast, bei den {n} richtigen Antworten: {parts}.</translation>
    </message>
    <message>
        <source>How they knew, for the 1 right answer: {parts}.</source>
        <translation>Woran es gemerkt wurde, bei der 1 richtigen Antwort: {parts}.</translation>
    </message>
    <message>
        <source>How they knew, for the {n} right answers: {parts}.</source>
        <translation>Woran es gemerkt wurde, bei den {n} richtigen Antworten: {parts}.</translation>
    </message>
    <message>
        <source>{right} of {trials} when sure</source>
        <translation>{right} von {trials}, wenn sicher</translation>
    </message>
    <message>
        <source>{right} of {trials} when fairly sure</source>
        <translation>{right} von {trials}, wenn ziemlich sicher</translation>
    </message>
    <message>
        <source>{right} of {trials} when guessing</source>
        <translation>{right} von {trials}, wenn geraten</translation>
    </message>
    <message>
        <source>Right by sureness: {parts}.</source>
        <translation>Richtig nach Sicherheit: {parts}.</translation>
    </message>
    <message>
        <source>tastings</source>
        <translation>Durchgänge</translation>
    </message>
    <message>
        <source>level of the range</source>
        <translation>Niveau der Spanne</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nötig</translation>
    </message>
    <message>
        <source>at most for alike</source>
        <translation>höchstens für ähnlich</translation>
    </message>
    <message>
        <source>exact p, one-sided</source>
        <translation>exaktes p, einseitig</translation>
    </message>
    <message>
        <source>p of the other way, two-sided</source>
        <translation>p der anderen Richtung, zweiseitig</translation>
    </message>
    <message>
        <source>p adjusted (Holm)</source>
        <translation>p angepasst (Holm)</translation>
    </message>
    <message>
        <source>share who can tell, low end</source>
        <translation>Anteil, der es merkt, unteres Ende</translation>
    </message>
    <message>
        <source>votes for A</source>
        <translation>Stimmen für A</translation>
    </message>
    <message>
        <source>votes for B</source>
        <translation>Stimmen für B</translation>
    </message>
    <message>
        <source>as often A as B</source>
        <translation>so oft A wie B</translation>
    </message>
    <message>
        <source>exact p, two-sided</source>
        <translation>exaktes p, zweiseitig</translation>
    </message>
    <message>
        <source>share who prefer A, low end</source>
        <translation>Anteil, der A vorzieht, unteres Ende</translation>
    </message>
    <message>
        <source>hits</source>
        <translation>Treffer</translation>
    </message>
    <message>
        <source>misses</source>
        <translation>Verpasste</translation>
    </message>
    <message>
        <source>false alarms</source>
        <translation>falsche Alarme</translation>
    </message>
    <message>
        <source>correct rejections</source>
        <translation>richtige Ablehnungen</translation>
    </message>
    <message>
        <source>Fisher’s exact p, one-sided</source>
        <translation>exaktes p nach Fisher, einseitig</translation>
    </message>
    <message>
        <source>d′</source>
        <translation>d′</translation>
    </message>
    <message>
        <source>standard error</source>
        <translation>Standardfehler</translation>
    </message>
    <message>
        <source>criterion</source>
        <translation>Kriterium</translation>
    </message>
    <message>
        <source>tau</source>
        <translation>Tau</translation>
    </message>
    <message>
        <source>a difference from</source>
        <translation>ein Unterschied ab</translation>
    </message>
    <message>
        <source>none up to</source>
        <translation>keiner bis</translation>
    </message>
    <message>
        <source>after round</source>
        <translation>nach Runde</translation>
    </message>
    <message>
        <source>decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>a difference</source>
        <translation>ein Unterschied</translation>
    </message>
    <message>
        <source>none of the size asked for</source>
        <translation>keiner in der gefragten Größe</translation>
    </message>
    <message>
        <source>undecided</source>
        <translation>unentschieden</translation>
    </message>
    <message>
        <source>{pair}: {what}</source>
        <translation>{pair}: {what}</translation>
    </message>
    <message>
        <source>answers</source>
        <translation>Antworten</translation>
    </message>
    <message>
        <source>{one} and {other}</source>
        <translation>{one} und {other}</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>A short one for guests</source>
        <translation>Ein kurzer für Gäste</translation>
    </message>
    <message>
        <source>Beer</source>
        <translation>Bier</translation>
    </message>
    <message>
        <source>Mead</source>
        <translation>Met</translation>
    </message>
    <message>
        <source>Cider</source>
        <translation>Cider</translation>
    </message>
    <message>
        <source>Wine</source>
        <translation>Wein</translation>
    </message>
    <message>
        <source>How far from a marked cup</source>
        <translation>Wie weit von einem markierten Becher</translation>
    </message>
    <message>
        <source>malt</source>
        <translation>Malz</translation>
    </message>
    <message>
        <source>hops</source>
        <translation>Hopfen</translation>
    </message>
    <message>
        <source>body</source>
        <translation>Körper</translation>
    </message>
    <message>
        <source>smoke or barnyard</source>
        <translation>Rauch oder Pferdestall</translation>
    </message>
    <message>
        <source>warmth of alcohol</source>
        <translation>Wärme vom Alkohol</translation>
    </message>
    <message>
        <source>bread or yeast</source>
        <translation>Brot oder Hefe</translation>
    </message>
    <message>
        <source>apple</source>
        <translation>Apfel</translation>
    </message>
    <message>
        <source>fruit</source>
        <translation>Frucht</translation>
    </message>
    <message>
        <source>more right answers than there are tastings</source>
        <translation>mehr richtige Antworten, als es Durchgänge gibt</translation>
    </message>
    <message>
        <source>{needed} of {trials} right answers</source>
        <translation>{needed} von {trials} richtigen Antworten</translation>
    </message>
    <message>
        <source>Nobody has said yet what the difference would be, so nothing is named.</source>
        <translation>Noch hat niemand gesagt, was der Unterschied wäre, also wird nichts benannt.</translation>
    </message>
    <message>
        <source>You can name it: asking for one thing finds a difference in it most often.</source>
        <translation>Du kannst es benennen: nach einer Sache zu fragen, findet einen Unterschied darin am öftesten.</translation>
    </message>
    <message>
        <source>Four cups find a difference more often than three, with as many people.</source>
        <translation>Vier Becher finden einen Unterschied öfter als drei, bei ebenso vielen Leuten.</translation>
    </message>
    <message>
        <source>Fewer cups: less to drink, and less that lingers from one cup to the next.</source>
        <translation>Weniger Becher: weniger zu trinken, und weniger, was von einem Becher zum nächsten bleibt.</translation>
    </message>
    <message>
        <source>A marked cup helps where people know one of the drinks well.</source>
        <translation>Ein markierter Becher hilft, wo die Leute eines der Getränke gut kennen.</translation>
    </message>
    <message>
        <source>At this strength a fourth cup would tire more than it tells.</source>
        <translation>Bei diesem Alkoholgehalt würde ein vierter Becher mehr ermüden, als er sagt.</translation>
    </message>
    <message>
        <source>A taste that lingers is carried on into every further cup.</source>
        <translation>Ein Geschmack, der bleibt, wird in jeden weiteren Becher mitgenommen.</translation>
    </message>
    <message>
        <source>There are not enough bottles for four cups.</source>
        <translation>Für vier Becher sind nicht genug Flaschen da.</translation>
    </message>
    <message>
        <source>Four cups would go beyond your ceiling of an evening.</source>
        <translation>Vier Becher gingen über deine Obergrenze für den Abend.</translation>
    </message>
    <message>
        <source>Each person has one vote. More rounds show how steady it is; they are no more votes.</source>
        <translation>Jede Person hat eine Stimme. Mehr Runden zeigen, wie beständig sie ist; sie sind keine weiteren Stimmen.</translation>
    </message>
    <message>
        <source>You would have to name the thing first, and which of the drinks has more of it.</source>
        <translation>Du müsstest die Sache erst benennen, und welches Getränk mehr davon hat.</translation>
    </message>
    <message>
        <source>More cups: more to drink, and more that lingers.</source>
        <translation>Mehr Becher: mehr zu trinken, und mehr, was bleibt.</translation>
    </message>
    <message>
        <source>It finds the difference less often with as many people.</source>
        <translation>Es findet den Unterschied bei ebenso vielen Leuten seltener.</translation>
    </message>
    <message>
        <source>It depends on how readily people call two cups different, and needs many answers.</source>
        <translation>Es hängt davon ab, wie leicht die Leute zwei Becher verschieden nennen, und braucht viele Antworten.</translation>
    </message>
    <message>
        <source>Fewer than six people cannot settle this, whatever they answer.</source>
        <translation>Weniger als sechs Leute können das nicht entscheiden, was immer sie antworten.</translation>
    </message>
    <message>
        <source>It cannot show a preference, whatever is answered.</source>
        <translation>Es kann keine Vorliebe zeigen, was immer geantwortet wird.</translation>
    </message>
    <message>
        <source>If 9 in 10 people prefer one of them, that would show {often}.</source>
        <translation>Wenn 9 von 10 Leuten eines lieber mögen, würde sich das {often} zeigen.</translation>
    </message>
    <message>
        <source>A difference that you can taste half the time, with three cups, would be found {often}.</source>
        <translation>Ein Unterschied, den du bei drei Bechern in der Hälfte der Fälle schmeckst, würde {often} gefunden.</translation>
    </message>
    <message>
        <source>A difference that half of people can taste, with three cups, would be found {often}.</source>
        <translation>Ein Unterschied, den bei drei Bechern die Hälfte der Leute schmeckt, würde {often} gefunden.</translation>
    </message>
    <message>
        <source>{cups}, {volume} a person; {all} in all.</source>
        <translation>{cups}, {volume} je Person; insgesamt {all}.</translation>
    </message>
    <message>
        <source>Up to {grams} g of alcohol a person in an evening.</source>
        <translation>Bis zu {grams} g Alkohol je Person an einem Abend.</translation>
    </message>
    <message>
        <source>That is above your ceiling.</source>
        <translation>Das liegt über deiner Obergrenze.</translation>
    </message>
    <message>
        <source>That takes more bottles than are free.</source>
        <translation>Das braucht mehr Flaschen, als frei sind.</translation>
    </message>
    <message>
        <source>So few tastings cannot show any of the three, whatever is answered.</source>
        <translation>So wenige Durchgänge können keinen der drei zeigen, was immer geantwortet wird.</translation>
    </message>
    <message>
        <source>Each of the three needs {first}.</source>
        <translation>Jeder der drei braucht {first}.</translation>
    </message>
    <message>
        <source>The clearest of the three needs {first}, then each of the others {second}.</source>
        <translation>Der deutlichste der drei braucht {first}, danach jeder der anderen {second}.</translation>
    </message>
    <message>
        <source>The clearest of the three needs {first}, then the second {second}, then the third {third}.</source>
        <translation>Der deutlichste der drei braucht {first}, danach der zweite {second}, danach der dritte {third}.</translation>
    </message>
    <message>
        <source>Each of the three pairs counts as alike up to {first} right answers of {trials}.</source>
        <translation>Jedes der drei Paare zählt als ähnlich bis zu {first} richtigen Antworten von {trials}.</translation>
    </message>
    <message>
        <source>The pair with the fewest right answers counts as alike up to {first} of {trials}, then the next up to {second}, then the last up to {third}.</source>
        <translation>Das Paar mit den wenigsten richtigen Antworten zählt als ähnlich bis zu {first} von {trials}, danach das nächste bis zu {second}, danach das letzte bis zu {third}.</translation>
    </message>
    <message>
        <source>The program picked this way, and picks again when drinks, people or amounts change.</source>
        <translation>Das Programm hat diese Art gewählt und wählt neu, wenn sich Getränke, Leute oder Mengen ändern.</translation>
    </message>
    <message>
        <source>You chose this way. It is the one that is recommended.</source>
        <translation>Du hast diese Art gewählt. Es ist die empfohlene.</translation>
    </message>
    <message>
        <source>You chose this way: {mine}. Better here: {best}.</source>
        <translation>Du hast diese Art gewählt: {mine}. Besser wäre hier: {best}.</translation>
    </message>
    <message>
        <source>Three drinks. What is the third for?</source>
        <translation>Drei Getränke. Wozu ist das dritte da?</translation>
    </message>
    <message>
        <source>One target is recommended: with fewer than ten people three comparisons can hardly show anything. (The ten is our own figure.)</source>
        <translation>Empfohlen ist ein Ziel: bei weniger als zehn Leuten können drei Vergleiche kaum etwas zeigen. (Die Zehn ist unsere eigene Zahl.)</translation>
    </message>
    <message>
        <source>With ten people or more three comparisons can show something; one target still needs fewer right answers and fewer cups.</source>
        <translation>Ab zehn Leuten können drei Vergleiche etwas zeigen; ein Ziel braucht trotzdem weniger richtige Antworten und weniger Becher.</translation>
    </message>
    <message>
        <source>{one} beside {other}; {third} another day</source>
        <translation>{one} neben {other}; {third} an einem anderen Tag</translation>
    </message>
    <message>
        <source>Three short comparisons, each pair by itself</source>
        <translation>Drei kurze Vergleiche, jedes Paar für sich</translation>
    </message>
    <message>
        <source>The key was opened at {time}, before everyone had answered. The answers are kept, but there is no blind verdict, and the report will always say so.</source>
        <translation>Der Schlüssel wurde um {time} geöffnet, bevor alle geantwortet hatten. Die Antworten bleiben, aber ein blindes Urteil gibt es nicht, und der Bericht wird das immer sagen.</translation>
    </message>
    <message>
        <source>The pour sheet was not opened in the program.</source>
        <translation>Das Einschenkblatt wurde im Programm nicht geöffnet.</translation>
    </message>
    <message>
        <source>The pour sheet was opened once.</source>
        <translation>Das Einschenkblatt wurde einmal geöffnet.</translation>
    </message>
    <message>
        <source>The pour sheet was opened {n} times.</source>
        <translation>Das Einschenkblatt wurde {n}-mal geöffnet.</translation>
    </message>
    <message>
        <source>Seal mark {mark}. Plan, places and codes are what was sealed; the commitment is {commitment}.</source>
        <translation>Siegelwort {mark}. Plan, Plätze und Codes sind das, was versiegelt wurde; der volle Fingerabdruck ist {commitment}.</translation>
    </message>
    <message>
        <source>Seal mark {mark}. Plan and key are what was sealed; the commitment is {commitment}.</source>
        <translation>Siegelwort {mark}. Plan und Schlüssel sind das, was versiegelt wurde; der volle Fingerabdruck ist {commitment}.</translation>
    </message>
    <message>
        <source>Seal mark {mark}. Plan or key are not what was sealed; the commitment was {commitment}.</source>
        <translation>Siegelwort {mark}. Plan oder Schlüssel sind nicht das, was versiegelt wurde; der volle Fingerabdruck war {commitment}.</translation>
    </message>
    <message>
        <source>Its age is not known.</source>
        <translation>Das Alter ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Packaged {day}.</source>
        <translation>Abgefüllt {day}.</translation>
    </message>
    <message>
        <source>Packaged {day}, {age} old.</source>
        <translation>Abgefüllt {day}, {age} alt.</translation>
    </message>
    <message>
        <source>Past its best-before ({day}) by {age}.</source>
        <translation>Über die Mindesthaltbarkeit ({day}) hinaus um {age}.</translation>
    </message>
    <message>
        <source>Best before {day}.</source>
        <translation>Mindestens haltbar bis {day}.</translation>
    </message>
    <message>
        <source>No bottle left</source>
        <translation>Keine Flasche mehr</translation>
    </message>
    <message>
        <source>The last bottle</source>
        <translation>Die letzte Flasche</translation>
    </message>
    <message>
        <source>{bottles} left</source>
        <translation>Noch {bottles}</translation>
    </message>
    <message>
        <source>{left}, {held} set aside</source>
        <translation>{left}, davon {held} zurückgelegt</translation>
    </message>
    <message>
        <source>Kept: {kept}. From: {from}.</source>
        <translation>Gelagert: {kept}. Von: {from}.</translation>
    </message>
    <message>
        <source>Kept: {kept}.</source>
        <translation>Gelagert: {kept}.</translation>
    </message>
    <message>
        <source>From: {from}.</source>
        <translation>Von: {from}.</translation>
    </message>
    <message>
        <source>{title} ({day})</source>
        <translation>{title} ({day})</translation>
    </message>
    <message>
        <source>Poured in {sessions}.</source>
        <translation>Eingeschenkt in {sessions}.</translation>
    </message>
    <message>
        <source>{what}: from {low} ({lowLot}, {lowPeople}) to {high} {of} ({highLot}, {highPeople}), in one tasting.</source>
        <translation>{what}: von {low} ({lowLot}, {lowPeople}) bis {high} {of} ({highLot}, {highPeople}), in einer Verkostung.</translation>
    </message>
    <message>
        <source>{what}: from {low} ({lowLot}, {lowPeople}) to {high} {of} ({highLot}, {highPeople}), over {n} tastings.</source>
        <translation>{what}: von {low} ({lowLot}, {lowPeople}) bis {high} {of} ({highLot}, {highPeople}), über {n} Verkostungen.</translation>
    </message>
    <message>
        <source>There is no bought drink on the shelf.</source>
        <translation>Im Regal steht kein gekauftes Getränk.</translation>
    </message>
    <message>
        <source>One bought drink.</source>
        <translation>Ein gekauftes Getränk.</translation>
    </message>
    <message>
        <source>{n} bought drinks.</source>
        <translation>{n} gekaufte Getränke.</translation>
    </message>
    <message>
        <source>One lot is down to its last bottle.</source>
        <translation>Von einer Charge ist nur noch die letzte Flasche da.</translation>
    </message>
    <message>
        <source>{n} lots are down to their last bottle.</source>
        <translation>Von {n} Chargen ist nur noch die letzte Flasche da.</translation>
    </message>
    <message>
        <source>One is past its best-before.</source>
        <translation>Eines ist über die Mindesthaltbarkeit hinaus.</translation>
    </message>
    <message>
        <source>{n} are past their best-before.</source>
        <translation>{n} sind über die Mindesthaltbarkeit hinaus.</translation>
    </message>
    <message>
        <source>One lot gives no range. With a second vintage, poured beside it, you would see how far good ones of its own lie apart.</source>
        <translation>Eine Charge ergibt keine Spanne. Mit einem zweiten Jahrgang, daneben eingeschenkt, sähest du, wie weit gute davon auseinanderliegen.</translation>
    </message>
    <message>
        <source>No range yet: pour two of its lots in one tasting.</source>
        <translation>Noch keine Spanne: schenk zwei der Chargen in einer Verkostung ein.</translation>
    </message>
    <message>
        <source>Beside {reference}</source>
        <translation>Neben {reference}</translation>
    </message>
    <message>
        <source>Sought: a difference.</source>
        <translation>Gesucht: ein Unterschied.</translation>
    </message>
    <message>
        <source>Sought: whether they are alike, with a limit of fewer than {limit} set before.</source>
        <translation>Gesucht: ob sie einander ähneln, mit einer vorher gesetzten Grenze: weniger als {limit}.</translation>
    </message>
    <message>
        <source>Sought: a difference, or whether they are alike, with a limit of fewer than {limit} set before.</source>
        <translation>Gesucht: ein Unterschied, oder ob sie einander ähneln, mit einer vorher gesetzten Grenze: weniger als {limit}.</translation>
    </message>
    <message>
        <source>The verdict speaks of people like these.</source>
        <translation>Das Urteil spricht von Leuten wie diesen.</translation>
    </message>
    <message>
        <source>The verdict speaks of this table.</source>
        <translation>Das Urteil spricht von diesem Tisch.</translation>
    </message>
    <message>
        <source>The verdict speaks of one taster alone.</source>
        <translation>Das Urteil spricht nur von einer Person.</translation>
    </message>
    <message>
        <source>Asked and settled before</source>
        <translation>Vorher gefragt und festgelegt</translation>
    </message>
    <message>
        <source>The drinks</source>
        <translation>Die Getränke</translation>
    </message>
    <message>
        <source>As they stood on the shelf at the seal.</source>
        <translation>Wie sie beim Versiegeln im Regal standen.</translation>
    </message>
    <message>
        <source>How it was served</source>
        <translation>Wie serviert wurde</translation>
    </message>
    <message>
        <source>The answers</source>
        <translation>Die Antworten</translation>
    </message>
    <message>
        <source>By sureness</source>
        <translation>Nach Sicherheit</translation>
    </message>
    <message>
        <source>By what told them</source>
        <translation>Nach dem, woran es gemerkt wurde</translation>
    </message>
    <message>
        <source>The record</source>
        <translation>Das Protokoll</translation>
    </message>
    <message>
        <source>For the maker alone</source>
        <translation>Nur für die, die es gemacht haben</translation>
    </message>
    <message>
        <source>Person by person</source>
        <translation>Person für Person</translation>
    </message>
    <message>
        <source>Flight by flight</source>
        <translation>Satz für Satz</translation>
    </message>
    <message>
        <source>Written on the sheets</source>
        <translation>Auf die Bögen geschrieben</translation>
    </message>
    <message>
        <source>Said aloud</source>
        <translation>Laut gesagt</translation>
    </message>
    <message>
        <source>What went otherwise</source>
        <translation>Was anders lief</translation>
    </message>
    <message>
        <source>The numbers of the picture</source>
        <translation>Die Zahlen zum Bild</translation>
    </message>
    <message>
        <source>letter</source>
        <translation>Buchstabe</translation>
    </message>
    <message>
        <source>drink and lot</source>
        <translation>Getränk und Charge</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>alcohol by volume</source>
        <translation>Alkohol, Volumenprozent</translation>
    </message>
    <message>
        <source>packaged on</source>
        <translation>abgefüllt am</translation>
    </message>
    <message>
        <source>age when tasted</source>
        <translation>Alter beim Verkosten</translation>
    </message>
    <message>
        <source>best before</source>
        <translation>mindestens haltbar bis</translation>
    </message>
    <message>
        <source>storage</source>
        <translation>Lagerung</translation>
    </message>
    <message>
        <source>listed allergens</source>
        <translation>gelistete Allergene</translation>
    </message>
    <message>
        <source>order, left to right</source>
        <translation>Reihenfolge, von links nach rechts</translation>
    </message>
    <message>
        <source>flights</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <source>who</source>
        <translation>wer</translation>
    </message>
    <message>
        <source>panel or maker</source>
        <translation>Panel oder mitgemacht</translation>
    </message>
    <message>
        <source>round</source>
        <translation>Runde</translation>
    </message>
    <message>
        <source>as poured, left to right</source>
        <translation>wie eingeschenkt, von links nach rechts</translation>
    </message>
    <message>
        <source>answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>came to</source>
        <translation>wurde zu</translation>
    </message>
    <message>
        <source>how sure</source>
        <translation>wie sicher</translation>
    </message>
    <message>
        <source>what told</source>
        <translation>woran gemerkt</translation>
    </message>
    <message>
        <source>all that count</source>
        <translation>alle, die zählen</translation>
    </message>
    <message>
        <source>without look and fizz</source>
        <translation>ohne Aussehen und Prickeln</translation>
    </message>
    <message>
        <source>without those after something was said</source>
        <translation>ohne die, nachdem etwas gesagt war</translation>
    </message>
    <message>
        <source>without either</source>
        <translation>ohne beides</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>zählt</translation>
    </message>
    <message>
        <source>wrong</source>
        <translation>falsch</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>does not count</source>
        <translation>zählt nicht</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>mitgemacht</translation>
    </message>
    <message>
        <source>panel</source>
        <translation>Panel</translation>
    </message>
    <message>
        <source>Sealed on {sealed} at {sealedTime}, opened on {opened} at {openedTime}.</source>
        <translation>Versiegelt am {sealed} um {sealedTime}, geöffnet am {opened} um {openedTime}.</translation>
    </message>
    <message>
        <source>Purpose: {question}</source>
        <translation>Zweck: {question}</translation>
    </message>
    <message>
        <source>Method: {method}. {how}</source>
        <translation>Methode: {method}. {how}</translation>
    </message>
    <message>
        <source>There is no “no difference” answer: a guess is a guess.</source>
        <translation>Eine Antwort „kein Unterschied“ gibt es nicht: geraten ist geraten.</translation>
    </message>
    <message>
        <source>“No preference” could be answered.</source>
        <translation>„Keine Vorliebe“ durfte geantwortet werden.</translation>
    </message>
    <message>
        <source>“No preference” could not be answered.</source>
        <translation>„Keine Vorliebe“ durfte nicht geantwortet werden.</translation>
    </message>
    <message>
        <source>Three lots in three pairs, each pair compared by itself; the risk of a false alarm holds for the three together (Holm).</source>
        <translation>Drei Chargen in drei Paaren, jedes Paar für sich verglichen; das Risiko eines falschen Alarms gilt für die drei zusammen (Holm).</translation>
    </message>
    <message>
        <source>After the choice it was asked which one was liked better; that is looked at afterwards.</source>
        <translation>Nach der Wahl wurde gefragt, welches besser gefiel; das wird im Nachhinein angesehen.</translation>
    </message>
    <message>
        <source>Looked at after whole rounds, for going on or stopping only: a difference that {what} should not be missed more often than {risk}.</source>
        <translation>Nach ganzen Runden nachgesehen, nur für weiter oder aufhören: ein Unterschied, der {what} ist, soll nicht öfter verpasst werden als {risk}.</translation>
    </message>
    <message>
        <source>Risk of a false alarm (alpha): {risk}.</source>
        <translation>Risiko eines falschen Alarms (Alpha): {risk}.</translation>
    </message>
    <message>
        <source>Planned: one taster alone, {rounds}.</source>
        <translation>Geplant: eine Person allein, {rounds}.</translation>
    </message>
    <message>
        <source>Planned: {people} in the panel, {rounds}; makers beside it: {makers}.</source>
        <translation>Geplant: {people} im Panel, {rounds}; daneben die, die mitgemacht haben: {makers}.</translation>
    </message>
    <message>
        <source>{if}: {promise}</source>
        <translation>{if}: {promise}</translation>
    </message>
    <message>
        <source>One taster sat down, alone.</source>
        <translation>Eine Person setzte sich hin, allein.</translation>
    </message>
    <message>
        <source>Tasters who sat down: {people} in the panel; makers beside it: {makers}.</source>
        <translation>Wer sich hinsetzte: {people} im Panel; daneben die, die mitgemacht haben: {makers}.</translation>
    </message>
    <message>
        <source>{volume} in each cup, {cups} a flight, each under its own code. Orders were drawn at random, block by block; a full block holds each possible order equally often.</source>
        <translation>{volume} in jedem Becher, {cups} im Satz, jeder unter eigenem Code. Die Reihenfolgen wurden zufällig ausgelost, Block für Block; ein voller Block enthält jede mögliche Reihenfolge gleich oft.</translation>
    </message>
    <message>
        <source>One of the drinks was poured twice under two codes; which one was drawn too.</source>
        <translation>Eines der Getränke wurde zweimal unter zwei Codes eingeschenkt; auch welches, wurde ausgelost.</translation>
    </message>
    <message>
        <source>{n} seconds between two cups. In between: {cleanser}.</source>
        <translation>{n} Sekunden zwischen zwei Bechern. Dazwischen: {cleanser}.</translation>
    </message>
    <message>
        <source>The first cup of a flight is the marked one; below it stands in brackets.</source>
        <translation>Der erste Becher eines Satzes ist der markierte; unten steht er in Klammern.</translation>
    </message>
    <message>
        <source>Planned over {n} evenings.</source>
        <translation>Geplant über {n} Abende.</translation>
    </message>
    <message>
        <source>Somebody who did not taste was named as the pourer before the seal.</source>
        <translation>Vor dem Siegel wurde jemand zum Einschenken benannt, der nicht verkostete.</translation>
    </message>
    <message>
        <source>No pourer was named before the seal.</source>
        <translation>Vor dem Siegel wurde niemand zum Einschenken benannt.</translation>
    </message>
    <message>
        <source>Orders dealt to those who sat down; the letters are those of the drinks above.</source>
        <translation>Reihenfolgen, die an die ausgeteilt wurden, die sich hinsetzten; die Buchstaben sind die der Getränke oben.</translation>
    </message>
    <message>
        <source>Flights laid: {flights}. Answers that count: {trials}, of them right: {right}. Missing: {missing}. Set aside: {voided}.</source>
        <translation>Aufgestellte Sätze: {flights}. Antworten, die zählen: {trials}, davon richtig: {right}. Fehlend: {missing}. Beiseitegestellt: {voided}.</translation>
    </message>
    <message>
        <source>Flights laid: {flights}. Answers that count: {trials}. Missing: {missing}. Set aside: {voided}.</source>
        <translation>Aufgestellte Sätze: {flights}. Antworten, die zählen: {trials}. Fehlend: {missing}. Beiseitegestellt: {voided}.</translation>
    </message>
    <message>
        <source>Power: a difference that {what} would have come out {often}.</source>
        <translation>Trennschärfe: ein Unterschied, der {what} ist, wäre {often} herausgekommen.</translation>
    </message>
    <message>
        <source>After common practice; nobody has certified this test.</source>
        <translation>Nach allgemeiner Übung; niemand hat diesen Test zertifiziert.</translation>
    </message>
    <message>
        <source>After {standard}; nobody has certified this test.</source>
        <translation>Nach {standard}; niemand hat diesen Test zertifiziert.</translation>
    </message>
    <message>
        <source>liked cup {n}</source>
        <translation>mochte Becher {n}</translation>
    </message>
    <message>
        <source>below {p}</source>
        <translation>unter {p}</translation>
    </message>
    <message>
        <source>{x} kinder</source>
        <translation>{x} freundlicher</translation>
    </message>
    <message>
        <source>{x} harder</source>
        <translation>{x} strenger</translation>
    </message>
    <message>
        <source>neither kinder nor harder</source>
        <translation>weder freundlicher noch strenger</translation>
    </message>
    <message>
        <source>Knowing nothing of the cup, you may still know your own taste. That is no fault; it is why others are asked too.</source>
        <translation>Auch ohne etwas über den Becher zu wissen, kennst du vielleicht deinen eigenen Geschmack. Das ist kein Fehler; darum werden auch andere gefragt.</translation>
    </message>
    <message>
        <source>Knowing nothing of the cup, you may still know your own taste, and hear in it what others pass over.</source>
        <translation>Auch ohne etwas über den Becher zu wissen, kennst du vielleicht deinen eigenen Geschmack und hörst darin, was andere übergehen.</translation>
    </message>
    <message>
        <source>All answers together point one way; without those given after something was said aloud it does not hold, and the weaker of the two stands.</source>
        <translation>Alle Antworten zusammen zeigen in eine Richtung; ohne die, die kamen, nachdem etwas laut gesagt war, hält es nicht, und es gilt das schwächere der beiden.</translation>
    </message>
    <message>
        <source>A small lean may still be there. More people at the table narrow this down, more than further evenings do.</source>
        <translation>Eine kleine Neigung kann noch da sein. Mehr Leute am Tisch grenzen das besser ein als weitere Abende.</translation>
    </message>
    <message>
        <source>Needs three opened tastings of your own. So far {n}.</source>
        <translation>Braucht drei geöffnete Verkostungen von deinen eigenen. Bisher {n}.</translation>
    </message>
    <message>
        <source>Most of the others asked to be only in the sums, so nobody can tell who sat at which tasting. Each tasting stands by itself.</source>
        <translation>Die meisten anderen wollten nur in den Summen stehen, also weiß niemand, wer bei welcher Verkostung saß. Jede Verkostung steht für sich.</translation>
    </message>
    <message>
        <source>Beside one other person: {lean} than they were, and no range. Three others are needed.</source>
        <translation>Neben einer anderen Person: {lean} als sie, und keine Spanne. Drei andere sind nötig.</translation>
    </message>
    <message>
        <source>Beside {n} other people: {lean} than they were, and no range. Three others are needed.</source>
        <translation>Neben {n} anderen Leuten: {lean} als sie, und keine Spanne. Drei andere sind nötig.</translation>
    </message>
    <message>
        <source>The others were of one mind to the point, so there is nothing to measure a range by: {lean} than they were.</source>
        <translation>Die anderen waren sich auf den Punkt einig, also gibt es nichts, woran sich eine Spanne messen ließe: {lean} als sie.</translation>
    </message>
    <message>
        <source>What counts: a score sheet with the overall liking, your own drink beside a reference, and you at the table as its maker under your name or nickname, beside others.</source>
        <translation>Was zählt: ein Bewertungsbogen mit dem Gesamteindruck, dein eigenes Getränk neben einer Referenz, und du am Tisch unter deinem Namen oder Spitznamen, neben anderen.</translation>
    </message>
    <message>
        <source>Points are those of the liking from 1 to 9: your own minus the reference, as you gave them, less the mean of what the others gave. At 0 you and the room saw the same distance.</source>
        <translation>Die Punkte sind die des Gefallens von 1 bis 9: deines minus die Referenz, wie du sie vergeben hast, weniger das Mittel dessen, was die anderen vergaben. Bei 0 sahen du und der Raum denselben Abstand.</translation>
    </message>
    <message>
        <source>It rests on {tastings} and {people}. People are the unit: the same few people over more evenings sharpen it only a little.</source>
        <translation>Es beruht auf {tastings} und {people}. Leute sind die Einheit: dieselben wenigen Leute über mehr Abende schärfen es nur wenig.</translation>
    </message>
    <message>
        <source>Once somebody asked to be only in the sums: counted in that tasting, not over all of them.</source>
        <translation>Einmal wollte jemand nur in den Summen stehen: gezählt in jener Verkostung, nicht über alle.</translation>
    </message>
    <message>
        <source>{n} times somebody asked to be only in the sums: counted in that tasting, not over all of them.</source>
        <translation>{n}-mal wollte jemand nur in den Summen stehen: gezählt in jener Verkostung, nicht über alle.</translation>
    </message>
    <message>
        <source>fewer than three others: no range</source>
        <translation>weniger als drei andere: keine Spanne</translation>
    </message>
    <message>
        <source>the others did not differ: no range</source>
        <translation>die anderen unterschieden sich nicht: keine Spanne</translation>
    </message>
    <message>
        <source>{day} {drink}</source>
        <translation>{day} {drink}</translation>
    </message>
    <message>
        <source>{day}, {drink}: {lean} than the mean of {people}; anything from {harder} to {kinder} fits.</source>
        <translation>{day}, {drink}: {lean} als das Mittel von {people}; alles von {harder} bis {kinder} passt dazu.</translation>
    </message>
    <message>
        <source>{day}, {drink}: {lean} than the mean of {people}; {why}.</source>
        <translation>{day}, {drink}: {lean} als das Mittel von {people}; {why}.</translation>
    </message>
    <message>
        <source>Too little known yet.</source>
        <translation>Noch zu wenig bekannt.</translation>
    </message>
    <message>
        <source>No lean shown.</source>
        <translation>Keine Neigung gezeigt.</translation>
    </message>
    <message>
        <source>You were kinder to your own than the room was, by {points} points ({low} to {high}), over {tastings}.</source>
        <translation>Du warst zu deinem eigenen freundlicher als der Raum, um {points} Punkte ({low} bis {high}), über {tastings}.</translation>
    </message>
    <message>
        <source>You were harder on your own than the room was, by {points} points ({low} to {high}), over {tastings}.</source>
        <translation>Du warst zu deinem eigenen strenger als der Raum, um {points} Punkte ({low} bis {high}), über {tastings}.</translation>
    </message>
    <message>
        <source>No lean shown; anything from {harder} to {kinder} fits.</source>
        <translation>Keine Neigung gezeigt; alles von {harder} bis {kinder} passt dazu.</translation>
    </message>
    <message>
        <source>You beside the room, tasting by tasting</source>
        <translation>Du neben dem Raum, Verkostung für Verkostung</translation>
    </message>
    <message>
        <source>as the room</source>
        <translation>wie der Raum</translation>
    </message>
    <message>
        <source>Tasting</source>
        <translation>Verkostung</translation>
    </message>
    <message>
        <source>Lean</source>
        <translation>Neigung</translation>
    </message>
    <message>
        <source>Others</source>
        <translation>Andere</translation>
    </message>
    <message>
        <source>In a sentence</source>
        <translation>In einem Satz</translation>
    </message>
    <message>
        <source>{n} harder on your own</source>
        <translation>{n} strenger zu deinem eigenen</translation>
    </message>
    <message>
        <source>{n} kinder to your own</source>
        <translation>{n} freundlicher zu deinem eigenen</translation>
    </message>
    <message>
        <source>You beside the room: the last {n} tastings</source>
        <translation>Du neben dem Raum: die letzten {n} Verkostungen</translation>
    </message>
    <message>
        <source>Nobody is marked as the brewer. Say under People that you are; then this page is about you.</source>
        <translation>Niemand ist als die Person vermerkt, die hier braut. Sag unter „Leute“, dass du es bist; dann handelt diese Seite von dir.</translation>
    </message>
    <message>
        <source>no verdict came of it</source>
        <translation>ein Urteil kam nicht heraus</translation>
    </message>
    <message>
        <source>it came so</source>
        <translation>so kam es</translation>
    </message>
    <message>
        <source>it did not</source>
        <translation>so kam es nicht</translation>
    </message>
    <message>
        <source>Of {n} outcomes {hits} came as you had in mind; your numbers add up to {sum}.</source>
        <translation>Von {n} Ausgängen kamen {hits} so, wie du es im Sinn hattest; deine Zahlen ergeben zusammen {sum}.</translation>
    </message>
    <message>
        <source>You expected more than came. Had your numbers been right, a count as far off would come {often}.</source>
        <translation>Du hast mehr erwartet, als kam. Hätten deine Zahlen gestimmt, käme eine so weit entfernte Zahl {often} vor.</translation>
    </message>
    <message>
        <source>More came than you expected. Had your numbers been right, a count as far off would come {often}.</source>
        <translation>Es kam mehr, als du erwartet hast. Hätten deine Zahlen gestimmt, käme eine so weit entfernte Zahl {often} vor.</translation>
    </message>
    <message>
        <source>Had your numbers been right, a count as far off or further would come {often}: not shown that they are off.</source>
        <translation>Hätten deine Zahlen gestimmt, käme eine so weit oder weiter entfernte Zahl {often} vor: nicht gezeigt, dass sie danebenliegen.</translation>
    </message>
    <message>
        <source>Mean squared miss (Brier): {brier}. Whoever always writes 50 has 0.25; less is better.</source>
        <translation>Mittleres Quadrat des Danebenliegens (Brier): {brier}. Wer immer 50 schreibt, hat 0,25; weniger ist besser.</translation>
    </message>
    <message>
        <source>What you expected</source>
        <translation>Was du erwartet hast</translation>
    </message>
    <message>
        <source>Nothing written so far. On the page of the seal you may write how likely you think the outcome is; once the key is open it stands here.</source>
        <translation>Bisher nichts aufgeschrieben. Auf der Seite des Siegels darfst du schreiben, für wie wahrscheinlich du den Ausgang hältst; sobald der Schlüssel offen ist, steht es hier.</translation>
    </message>
    <message>
        <source>Too little known yet: {n} of the three outcomes that this needs.</source>
        <translation>Noch zu wenig bekannt: {n} von den drei Ausgängen, die es dafür braucht.</translation>
    </message>
    <message>
        <source>Opened</source>
        <translation>Geöffnet</translation>
    </message>
    <message>
        <source>Written beforehand</source>
        <translation>Vorher aufgeschrieben</translation>
    </message>
    <message>
        <source>What came</source>
        <translation>Was kam</translation>
    </message>
    <message>
        <source>{day} {title}</source>
        <translation>{day} {title}</translation>
    </message>
    <message>
        <source>{percent} in 100 that {event}</source>
        <translation>{percent} von 100, dass {event}</translation>
    </message>
    <message>
        <source>What you wrote, and how often it came</source>
        <translation>Was du geschrieben hast, und wie oft es kam</translation>
    </message>
    <message>
        <source>never came</source>
        <translation>kam nie</translation>
    </message>
    <message>
        <source>always came</source>
        <translation>kam immer</translation>
    </message>
    <message>
        <source>You wrote</source>
        <translation>Du hast geschrieben</translation>
    </message>
    <message>
        <source>It came</source>
        <translation>Es kam</translation>
    </message>
    <message>
        <source>{from} to {to} in 100</source>
        <translation>{from} bis {to} von 100</translation>
    </message>
    <message>
        <source>{hits} of {n}</source>
        <translation>{hits} von {n}</translation>
    </message>
    <message>
        <source>1 outcome</source>
        <translation>1 Ausgang</translation>
    </message>
    <message>
        <source>{n} outcomes</source>
        <translation>{n} Ausgänge</translation>
    </message>
    <message>
        <source>Where you wrote {from} to {to}, it came {hits} times of {n}; anything from {low} to {high} in 100 fits.</source>
        <translation>Wo du {from} bis {to} geschrieben hast, kam es {hits}-mal von {n}; alles von {low} bis {high} von 100 passt dazu.</translation>
    </message>
    <message>
        <source>not at all</source>
        <translation>gar nicht</translation>
    </message>
    <message>
        <source>by {x} points towards your own</source>
        <translation>um {x} Punkte zu deinem eigenen hin</translation>
    </message>
    <message>
        <source>by {x} points away from your own</source>
        <translation>um {x} Punkte von deinem eigenen weg</translation>
    </message>
    <message>
        <source>Knowing the labels moved you further towards your own than it moved the others, by {points} points ({low} to {high}), over {tastings} and {people}.</source>
        <translation>Die Etiketten zu kennen, hat dich stärker zu deinem eigenen hin bewegt als die anderen, um {points} Punkte ({low} bis {high}), über {tastings} und {people}.</translation>
    </message>
    <message>
        <source>Knowing the labels moved you less towards your own than it moved the others, by {points} points ({low} to {high}), over {tastings} and {people}.</source>
        <translation>Die Etiketten zu kennen, hat dich weniger zu deinem eigenen hin bewegt als die anderen, um {points} Punkte ({low} bis {high}), über {tastings} und {people}.</translation>
    </message>
    <message>
        <source>No label effect shown over {tastings} and {people}: beside the others you may have moved {from}, {to}, or anything between.</source>
        <translation>Keine Wirkung der Etiketten gezeigt über {tastings} und {people}: neben den anderen kannst du dich {from} bewegt haben, {to}, oder irgendwo dazwischen.</translation>
    </message>
    <message>
        <source>Too little known: it takes three tastings with an open round, so far {n}.</source>
        <translation>Zu wenig bekannt: es braucht drei Verkostungen mit offener Runde, bisher {n}.</translation>
    </message>
    <message>
        <source>Most of the others asked to be only in the sums, so each tasting stands by itself.</source>
        <translation>Die meisten anderen wollten nur in den Summen stehen, also steht jede Verkostung für sich.</translation>
    </message>
    <message>
        <source>Three others are needed for a range; each tasting stands by itself.</source>
        <translation>Für eine Spanne sind drei andere nötig; jede Verkostung steht für sich.</translation>
    </message>
    <message>
        <source>The others moved by the same to the point, so there is nothing to measure a range by.</source>
        <translation>Die anderen bewegten sich auf den Punkt gleich weit, also gibt es nichts, woran sich eine Spanne messen ließe.</translation>
    </message>
    <message>
        <source>When the labels were known</source>
        <translation>Als die Etiketten bekannt waren</translation>
    </message>
    <message>
        <source>No open round so far. After a score sheet with a drink of your own beside a reference is opened, whoever likes may score the same drinks once more, knowing what they are: on the page of what came out.</source>
        <translation>Bisher keine offene Runde. Nachdem ein Bewertungsbogen mit einem eigenen Getränk neben einer Referenz geöffnet ist, darf, wer mag, dieselben Getränke noch einmal bewerten und weiß dann, was es ist: auf der Seite „Was herauskam“.</translation>
    </message>
    <message>
        <source>The open round always comes after the blind one, so what the label did and what tasting again did cannot be told apart.</source>
        <translation>Die offene Runde kommt immer nach der blinden, also lässt sich nicht trennen, was das Etikett bewirkte und was das zweite Verkosten.</translation>
    </message>
    <message>
        <source>You moved</source>
        <translation>Du hast dich bewegt</translation>
    </message>
    <message>
        <source>The others moved</source>
        <translation>Die anderen haben sich bewegt</translation>
    </message>
    <message>
        <source>You moved {you}</source>
        <translation>Du hast dich {you} bewegt</translation>
    </message>
    <message>
        <source>the others ({people}) moved {others}</source>
        <translation>die anderen ({people}) haben sich {others} bewegt</translation>
    </message>
    <message>
        <source>place {first}</source>
        <translation>Platz {first}</translation>
    </message>
    <message>
        <source>places {first} to {last}</source>
        <translation>Plätze {first} bis {last}</translation>
    </message>
    <message>
        <source>Everybody sits down. Read the cautions aloud; who drives is first offered the pouring. Everybody agrees, or sits out; nobody asks why. Say the seal mark.</source>
        <translation>Alle setzen sich. Lies die Hinweise vor; wer fährt, bekommt zuerst das Einschenken angeboten. Alle sind einverstanden oder setzen aus; niemand fragt, warum. Sag das Siegelwort.</translation>
    </message>
    <message>
        <source>Round {round}, {places}: the pourer pours {cups} out of sight and carries them in on their mats. Each taster compares codes and mat.</source>
        <translation>Runde {round}, {places}: wer einschenkt, schenkt {cups} außer Sicht ein und trägt sie auf den Matten herein. Alle vergleichen Codes und Matte.</translation>
    </message>
    <message>
        <source>Round {round}, {places}: everybody fills in a sheet. No talking; water and spit cups stand ready.</source>
        <translation>Runde {round}, {places}: alle füllen einen Bogen aus. Nicht reden; Wasser und Spuckbecher stehen bereit.</translation>
    </message>
    <message>
        <source>Round {round}, {places}: taste from left to right and answer. No talking until everybody is done.</source>
        <translation>Runde {round}, {places}: von links nach rechts verkosten und antworten. Nicht reden, bis alle fertig sind.</translation>
    </message>
    <message>
        <source>Ask whether somebody is still to answer, then close the table. Open the key with everybody there. Write down what you will do. See that everybody has a way home.</source>
        <translation>Frag, ob noch jemand antworten will, dann schließ den Tisch. Öffne den Schlüssel, wenn alle dabei sind. Schreib auf, was du tun wirst. Sorg dafür, dass alle heimkommen.</translation>
    </message>
    <message>
        <source>The run of the evening</source>
        <translation>Der Ablauf des Abends</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>One to three days before: stand all bottles upright and cold, all in the same place.</source>
        <translation>Ein bis drei Tage vorher: alle Flaschen aufrecht und kalt stellen, alle an denselben Ort.</translation>
    </message>
    <message>
        <source>Count {cups} alike and opaque or dark, marked at {volume}, and some more.</source>
        <translation>Zähl {cups} ab, alle von einer Sorte und undurchsichtig oder dunkel, mit einer Marke bei {volume}, und ein paar mehr.</translation>
    </message>
    <message>
        <source>Cut the labels and stick them on in the order in which they are printed. {spares} are kept aside for spilled cups.</source>
        <translation>Schneid die Etiketten und kleb sie in der Reihenfolge auf, in der sie gedruckt sind. {spares} bleiben für verschüttete Becher zur Seite.</translation>
    </message>
    <message>
        <source>Lay the mats. Water, something plain to eat, a spit cup at every place. No perfume, no cooking, nobody smokes.</source>
        <translation>Leg die Matten aus. Wasser, etwas Neutrales zu essen, ein Spuckbecher an jeden Platz. Kein Parfüm, kein Kochen, niemand raucht.</translation>
    </message>
    <message>
        <source>A box for folded sheets, pens, and the seal mark where everybody can read it.</source>
        <translation>Eine Box für gefaltete Bögen, Stifte, und das Siegelwort, wo alle es lesen können.</translation>
    </message>
    <message>
        <source>Evening {n} of {all}</source>
        <translation>Abend {n} von {all}</translation>
    </message>
    <message>
        <source>minute</source>
        <translation>Minute</translation>
    </message>
    <message>
        <source>what happens</source>
        <translation>was geschieht</translation>
    </message>
    <message>
        <source>{from} to {to}</source>
        <translation>{from} bis {to}</translation>
    </message>
    <message>
        <source>Minutes are our own figures: 10 to settle, 20 seconds to pour a cup, 30 to taste one, 5 for each question about it, and the pause between cups.</source>
        <translation>Die Minuten sind unsere eigenen Zahlen: 10 zum Ankommen, 20 Sekunden zum Einschenken eines Bechers, 30 zum Verkosten, 5 für jede Frage dazu, und die Pause zwischen den Bechern.</translation>
    </message>
    <message>
        <source>Minutes are our own figures: 10 to settle, 20 seconds to pour a cup, 30 to taste one with one screen passed round. On paper, when all taste at once, it is quicker.</source>
        <translation>Die Minuten sind unsere eigenen Zahlen: 10 zum Ankommen, 20 Sekunden zum Einschenken eines Bechers, 30 zum Verkosten, wenn ein Bildschirm herumgeht. Auf Papier, wenn alle gleichzeitig verkosten, geht es schneller.</translation>
    </message>
    <message>
        <source>Adults only. Nobody drives or handles machines afterwards. Nothing here is called safe: the law where you live holds, and a doctor knows about medicines and pregnancy.</source>
        <translation>Nur Erwachsene. Danach fährt niemand und bedient keine Maschinen. Nichts hier heißt unbedenklich: es gilt das Recht an deinem Ort, und über Medikamente und Schwangerschaft weiß man in der Praxis Bescheid.</translation>
    </message>
    <message>
        <source>Sealed. The seal mark is {mark}. Say it to everybody and write it where all can see it: a mark that only you hold proves nothing.</source>
        <translation>Versiegelt. Das Siegelwort ist {mark}. Sag es allen und schreib es hin, wo alle es sehen: ein Wort, das nur du hast, belegt nichts.</translation>
    </message>
    <message>
        <source>Next: whoever pours takes the sheet. If you made one of the drinks, or are going to taste, leave the room first.</source>
        <translation>Als Nächstes nimmt die Person das Blatt, die einschenkt. Wenn du eines der Getränke gemacht hast oder verkosten wirst, geh vorher aus dem Raum.</translation>
    </message>
    <message>
        <source>Next: hand this over to {name}, who pours. Everybody else leaves the room.</source>
        <translation>Als Nächstes: gib das an {name} zum Einschenken. Alle anderen verlassen den Raum.</translation>
    </message>
    <message>
        <source>Breaking the seal opens the key now and ends this session. The answers are kept, but no verdict can come of it, and the record will always say so.</source>
        <translation>Das Siegel zu brechen, öffnet den Schlüssel jetzt und beendet diese Verkostung. Die Antworten bleiben, aber ein Urteil kann aus ihnen nicht werden, und das Protokoll wird das immer sagen.</translation>
    </message>
    <message>
        <source>This cannot be undone. Break the seal?</source>
        <translation>Das lässt sich nicht rückgängig machen. Das Siegel brechen?</translation>
    </message>
    <message>
        <source>Break the seal</source>
        <translation>Siegel brechen</translation>
    </message>
    <message>
        <source>Leave it sealed</source>
        <translation>Versiegelt lassen</translation>
    </message>
    <message>
        <source>Giving this session up keeps the key closed for good. It stays in the list, without a verdict, and its bottles are free again.</source>
        <translation>Gibst du diese Verkostung auf, bleibt der Schlüssel für immer zu. Sie bleibt in der Liste, ohne Urteil, und ihre Flaschen sind wieder frei.</translation>
    </message>
    <message>
        <source>This cannot be undone. Give this session up?</source>
        <translation>Das lässt sich nicht rückgängig machen. Diese Verkostung aufgeben?</translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation>Aufgeben</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>This cannot be undone: the name and the words of {name} are destroyed here. The answers stay, without a name. Copies already printed or sent cannot be called back.</source>
        <translation>Das lässt sich nicht rückgängig machen: der Name und die Worte von {name} werden hier vernichtet. Die Antworten bleiben, ohne Namen. Was schon gedruckt oder verschickt ist, lässt sich nicht zurückrufen.</translation>
    </message>
    <message>
        <source>This cannot be undone: the answers, words and name of {name} are destroyed here. Findings are worked out again. Copies already printed or sent cannot be called back.</source>
        <translation>Das lässt sich nicht rückgängig machen: die Antworten, Worte und der Name von {name} werden hier vernichtet. Die Befunde werden neu ausgerechnet. Was schon gedruckt oder verschickt ist, lässt sich nicht zurückrufen.</translation>
    </message>
    <message>
        <source>Destroy it now?</source>
        <translation>Jetzt vernichten?</translation>
    </message>
    <message>
        <source>Destroy it</source>
        <translation>Vernichten</translation>
    </message>
    <message>
        <source>The seal keeps honest people honest. Whoever opens the store with other tools can read the key, and a copy of the store could be opened unseen: the program cannot notice that.</source>
        <translation>Das Siegel hält Ehrliche ehrlich. Wer die Datei mit anderen Werkzeugen öffnet, kann den Schlüssel lesen, und eine Kopie der Datei ließe sich unbemerkt öffnen: das Programm kann das nicht merken.</translation>
    </message>
    <message>
        <source>Can you tell {all} apart, pair by pair?</source>
        <translation>Kannst du {all} auseinanderhalten, Paar für Paar?</translation>
    </message>
    <message>
        <source>Can anyone tell {all} apart, pair by pair?</source>
        <translation>Kann irgendwer {all} auseinanderhalten, Paar für Paar?</translation>
    </message>
    <message>
        <source>Can you notice “{more}” in {asked}, beside {beside}?</source>
        <translation>Merkst du „{more}“ in {asked}, neben {beside}?</translation>
    </message>
    <message>
        <source>Can anyone notice “{more}” in {asked}, beside {beside}?</source>
        <translation>Merkt irgendwer „{more}“ in {asked}, neben {beside}?</translation>
    </message>
    <message>
        <source>Is {asked} more {more} than {beside}?</source>
        <translation>Hat {asked} mehr davon ({more}) als {beside}?</translation>
    </message>
    <message>
        <source>Which do you prefer, {one} or {other}?</source>
        <translation>Welches magst du lieber, {one} oder {other}?</translation>
    </message>
    <message>
        <source>Which do people prefer, {one} or {other}?</source>
        <translation>Welches mögen die Leute lieber, {one} oder {other}?</translation>
    </message>
    <message>
        <source>Can you tell {one} from {other}?</source>
        <translation>Kannst du {one} und {other} auseinanderhalten?</translation>
    </message>
    <message>
        <source>Can anyone tell {one} from {other}?</source>
        <translation>Kann irgendwer {one} und {other} auseinanderhalten?</translation>
    </message>
    <message>
        <source>If people like it</source>
        <translation>Wenn es den Leuten gefällt</translation>
    </message>
    <message>
        <source>If they do not</source>
        <translation>Wenn nicht</translation>
    </message>
    <message>
        <source>If a gap is shown</source>
        <translation>Wenn sich ein Abstand zeigt</translation>
    </message>
    <message>
        <source>If no gap is shown</source>
        <translation>Wenn sich kein Abstand zeigt</translation>
    </message>
    <message>
        <source>If a preference is shown</source>
        <translation>Wenn sich eine Vorliebe zeigt</translation>
    </message>
    <message>
        <source>If it is noticed</source>
        <translation>Wenn es bemerkt wird</translation>
    </message>
    <message>
        <source>If it is shown to be more so</source>
        <translation>Wenn es sich darin als stärker zeigt</translation>
    </message>
    <message>
        <source>If they are told apart</source>
        <translation>Wenn sie auseinandergehalten werden</translation>
    </message>
    <message>
        <source>If no preference is shown</source>
        <translation>Wenn sich keine Vorliebe zeigt</translation>
    </message>
    <message>
        <source>If that is not shown</source>
        <translation>Wenn sich das nicht zeigt</translation>
    </message>
    <message>
        <source>If no difference is shown</source>
        <translation>Wenn sich kein Unterschied zeigt</translation>
    </message>
    <message>
        <source>If they come out as alike within the limit</source>
        <translation>Wenn sie als ähnlich innerhalb der Grenze herauskommen</translation>
    </message>
    <message>
        <source>{if}: nothing is promised yet.</source>
        <translation>{if}: noch nichts versprochen.</translation>
    </message>
    <message>
        <source>After the seal none of this can be changed, and nobody knows which cup holds what but the pour sheet.</source>
        <translation>Nach dem Siegel lässt sich nichts davon ändern, und was in welchem Becher ist, weiß nur das Einschenkblatt.</translation>
    </message>
    <message>
        <source>You taste alone, once: one tasting.</source>
        <translation>Du verkostest allein, einmal: ein Durchgang.</translation>
    </message>
    <message>
        <source>You taste alone, {n} times.</source>
        <translation>Du verkostest allein, {n}-mal.</translation>
    </message>
    <message>
        <source>{people} who did not make it, {rounds} each and one vote a person.</source>
        <translation>{people}, die nicht daran mitgemacht haben, je {rounds}, und eine Stimme pro Person.</translation>
    </message>
    <message>
        <source>{people} who did not make it, {rounds} each: {trials} tastings count in each comparison.</source>
        <translation>{people}, die nicht daran mitgemacht haben, je {rounds}: in jedem Vergleich zählen {trials} Durchgänge.</translation>
    </message>
    <message>
        <source>{people} who did not make it, once each: {trials} tastings count.</source>
        <translation>{people}, die nicht daran mitgemacht haben, je einmal: {trials} Durchgänge zählen.</translation>
    </message>
    <message>
        <source>{people} who did not make it, {rounds} each: {trials} tastings count.</source>
        <translation>{people}, die nicht daran mitgemacht haben, je {rounds}: {trials} Durchgänge zählen.</translation>
    </message>
    <message>
        <source>A preference is shown from {needed} votes of {trials} for one of them on, whichever it is. With tastes evenly parted that comes up no more often than {chance}.</source>
        <translation>Eine Vorliebe ist ab {needed} von {trials} Stimmen für eines gezeigt, egal, welches. Bei hälftig geteilten Geschmäckern kommt das nicht öfter vor als {chance}.</translation>
    </message>
    <message>
        <source>It counts as noticed from {needed} right answers of {trials} on. Guessing alone reaches that no more often than {chance}.</source>
        <translation>Es gilt als bemerkt ab {needed} richtigen Antworten von {trials}. Bloßes Raten kommt nicht öfter so weit als {chance}.</translation>
    </message>
    <message>
        <source>It is shown to be more {more} from {needed} of {trials} times on. Guessing alone reaches that no more often than {chance}. Only this direction is asked about.</source>
        <translation>Dass es mehr davon hat ({more}), ist ab {needed} von {trials} Malen gezeigt. Bloßes Raten kommt nicht öfter so weit als {chance}. Nur nach dieser Richtung wird gefragt.</translation>
    </message>
    <message>
        <source>A difference is shown from {needed} right answers of {trials} on. Guessing alone reaches that no more often than {chance}.</source>
        <translation>Ein Unterschied ist ab {needed} richtigen Antworten von {trials} gezeigt. Bloßes Raten kommt nicht öfter so weit als {chance}.</translation>
    </message>
    <message>
        <source>So few votes can show nothing, whatever is answered. This is practice.</source>
        <translation>So wenige Stimmen können nichts zeigen, was immer geantwortet wird. Das ist Übung.</translation>
    </message>
    <message>
        <source>So few tastings can show nothing, whatever is answered. This is practice.</source>
        <translation>So wenige Durchgänge können nichts zeigen, was immer geantwortet wird. Das ist Übung.</translation>
    </message>
    <message>
        <source>It is looked at after every round of {every} tastings, for go on or stop only, and ends after {trials} at the latest.</source>
        <translation>Nachgesehen wird nach jeder Runde von {every} Durchgängen, nur für weiter oder aufhören, und spätestens nach {trials} ist Schluss.</translation>
    </message>
    <message>
        <source>A difference is shown, or not, as soon as the answers speak clearly: a false alarm no more often than about {chance}, and what you can taste {what} missed about {missed}.</source>
        <translation>Ein Unterschied ist gezeigt oder nicht, sobald die Antworten deutlich sprechen: ein falscher Alarm nicht öfter als etwa {chance}, und was für dich {what} zu schmecken ist, wird etwa {missed} verpasst.</translation>
    </message>
    <message>
        <source>A difference is shown, or not, as soon as the answers speak clearly: a false alarm no more often than about {chance}, and what {what} can taste missed about {missed}.</source>
        <translation>Ein Unterschied ist gezeigt oder nicht, sobald die Antworten deutlich sprechen: ein falscher Alarm nicht öfter als etwa {chance}, und was für {what} zu schmecken ist, wird etwa {missed} verpasst.</translation>
    </message>
    <message>
        <source>Guessing alone shows any of the three no more often than {chance}.</source>
        <translation>Bloßes Raten zeigt irgendeinen der drei nicht öfter als {chance}.</translation>
    </message>
    <message>
        <source>A difference is shown when “another one” is said so much more often of the other drink than of the marked one that chance does it no more often than {chance}.</source>
        <translation>Ein Unterschied ist gezeigt, wenn „ein anderer“ vom anderen Getränk so viel öfter gesagt wird als vom markierten, dass der Zufall das nicht öfter schafft als {chance}.</translation>
    </message>
    <message>
        <source>A difference is shown when “different” is said so much more often of unlike cups than of like ones that chance does it no more often than {chance}.</source>
        <translation>Ein Unterschied ist gezeigt, wenn „verschieden“ von verschiedenen Bechern so viel öfter gesagt wird als von denen mit demselben Getränk, dass der Zufall das nicht öfter schafft als {chance}.</translation>
    </message>
    <message>
        <source>So few tastings cannot come out as alike within a limit of {limit}, whatever is answered.</source>
        <translation>So wenige Durchgänge können nicht als ähnlich herauskommen (Grenze: {limit}), was immer geantwortet wird.</translation>
    </message>
    <message>
        <source>You may still be able to tell, but less often than {limit}.</source>
        <translation>Du kannst es vielleicht noch merken, aber seltener als {limit}.</translation>
    </message>
    <message>
        <source>Fewer than {limit} of people may still be able to tell.</source>
        <translation>Vielleicht merken es noch Leute, aber weniger als {limit}.</translation>
    </message>
    <message>
        <source>They count as alike up to {most} right answers of {trials}: you may still be able to tell, but less often than {limit}.</source>
        <translation>Sie gelten als ähnlich bis zu {most} richtigen Antworten von {trials}: du kannst es vielleicht noch merken, aber seltener als {limit}.</translation>
    </message>
    <message>
        <source>They count as alike up to {most} right answers of {trials}: fewer than {limit} of people may still be able to tell.</source>
        <translation>Sie gelten als ähnlich bis zu {most} richtigen Antworten von {trials}: vielleicht merken es noch Leute, aber weniger als {limit}.</translation>
    </message>
    <message>
        <source>1 maker tastes as well; that answer stands beside the others and is not counted with them.</source>
        <translation>1 Person, die daran mitgemacht hat, verkostet auch; ihre Antwort steht neben den anderen und zählt nicht mit.</translation>
    </message>
    <message>
        <source>{n} makers taste as well; their answers stand beside the others and are not counted with them.</source>
        <translation>{n} Leute, die daran mitgemacht haben, verkosten auch; ihre Antworten stehen neben den anderen und zählen nicht mit.</translation>
    </message>
    <message>
        <source>{name} pours, sees the sheet and does not taste.</source>
        <translation>{name} schenkt ein, sieht das Blatt und verkostet nicht.</translation>
    </message>
    <message>
        <source>The rounds are spread over {n} evenings.</source>
        <translation>Die Runden verteilen sich auf {n} Abende.</translation>
    </message>
    <message>
        <source>“No preference” may be answered. It is left out of the count, and it is shown what a split would change.</source>
        <translation>„Keine Vorliebe“ darf geantwortet werden. Es zählt nicht mit, und es wird gezeigt, was eine hälftige Teilung ändern würde.</translation>
    </message>
    <message>
        <source>After the choice it is asked which was liked better. That counts of right choices only.</source>
        <translation>Nach der Wahl wird gefragt, welches besser gefiel. Das zählt nur bei richtiger Wahl.</translation>
    </message>
    <message>
        <source>If answers are missing at the end, these numbers follow from who has answered. That is worked out before anybody sees the key.</source>
        <translation>Wenn am Ende Antworten fehlen, folgen diese Zahlen daraus, wer geantwortet hat. Das wird ausgerechnet, bevor jemand den Schlüssel sieht.</translation>
    </message>
    <message>
        <source>You taste alone: the answers speak of you only.</source>
        <translation>Du verkostest allein: die Antworten sprechen nur von dir.</translation>
    </message>
    <message>
        <source>{people} who did not make it fill in a sheet each; the person counts, not the cup.</source>
        <translation>{people}, die nicht daran mitgemacht haben, füllen je einen Bogen aus; die Person zählt, nicht der Becher.</translation>
    </message>
    <message>
        <source>{people} who did not make it, {rounds} each; a person&apos;s answers are averaged first.</source>
        <translation>{people}, die nicht daran mitgemacht haben, je {rounds}; die Antworten einer Person werden zuerst gemittelt.</translation>
    </message>
    <message>
        <source>Held against {lots}, under codes like the rest.</source>
        <translation>Daran gemessen, unter Codes wie der Rest: {lots}.</translation>
    </message>
    <message>
        <source>Flawed or thinned on purpose, to see how sharp the table is: {lots}.</source>
        <translation>Absichtlich mit Fehler oder verdünnt, um zu sehen, wie scharf der Tisch ist: {lots}.</translation>
    </message>
    <message>
        <source>Before the first flight everybody gets an open cup of {lots}; it is not scored.</source>
        <translation>Vor dem ersten Satz bekommen alle einen offenen Becher {lots}; er wird nicht bewertet.</translation>
    </message>
    <message>
        <source>A marked cup of {lot} stands beside the coded ones, to go back to.</source>
        <translation>Ein markierter Becher {lot} steht neben denen mit Code, zum Nachschmecken.</translation>
    </message>
    <message>
        <source>One of the drinks is poured twice under two codes. Which one is drawn.</source>
        <translation>Eines der Getränke wird zweimal unter zwei Codes eingeschenkt. Welches, wird ausgelost.</translation>
    </message>
    <message>
        <source>Of {samples} cups everybody gets {cups}.</source>
        <translation>Von {samples} Bechern bekommt jede Person {cups}.</translation>
    </message>
    <message>
        <source>{what} (up to {limit} does not matter)</source>
        <translation>{what} (bis {limit} macht nichts aus)</translation>
    </message>
    <message>
        <source>No question is what the plan is about: all are looked at afterwards, as hints.</source>
        <translation>Um keine Frage geht es im Plan: alle werden im Nachhinein angesehen, als Hinweise.</translation>
    </message>
    <message>
        <source>The plan is about {questions}.</source>
        <translation>Im Plan geht es um {questions}.</translation>
    </message>
    <message>
        <source>In each of them a gap of up to {limit} does not matter.</source>
        <translation>Bei jeder davon macht ein Abstand bis {limit} nichts aus.</translation>
    </message>
    <message>
        <source>1 more question is looked at afterwards, as a hint.</source>
        <translation>1 weitere Frage wird im Nachhinein angesehen, als Hinweis.</translation>
    </message>
    <message>
        <source>{n} more questions are looked at afterwards, as hints.</source>
        <translation>{n} weitere Fragen werden im Nachhinein angesehen, als Hinweise.</translation>
    </message>
    <message>
        <source>With fewer than three people the answers are shown as they are: no range, no verdict.</source>
        <translation>Bei weniger als drei Leuten werden die Antworten gezeigt, wie sie sind: keine Spanne, kein Urteil.</translation>
    </message>
    <message>
        <source>A gap is shown when chance alone brings any such gap among them no more often than {chance}.</source>
        <translation>Ein Abstand ist gezeigt, wenn der bloße Zufall irgendeinen solchen darunter nicht öfter bringt als {chance}.</translation>
    </message>
    <message>
        <source>A gap is shown when chance alone brings such a gap no more often than {chance}.</source>
        <translation>Ein Abstand ist gezeigt, wenn der bloße Zufall einen solchen nicht öfter bringt als {chance}.</translation>
    </message>
    <message>
        <source>How good is {lots} really?</source>
        <translation>Wie gut ist {lots} wirklich?</translation>
    </message>
    <message>
        <source>How good are {lots} really?</source>
        <translation>Wie gut sind {lots} wirklich?</translation>
    </message>
    <message>
        <source>What is {lots} like?</source>
        <translation>Wie ist {lots}?</translation>
    </message>
    <message>
        <source>What are {lots} like?</source>
        <translation>Wie sind {lots}?</translation>
    </message>
    <message>
        <source>What is {lots} like, and what does it lack next to {beside}?</source>
        <translation>Wie ist {lots}, und was fehlt neben {beside}?</translation>
    </message>
    <message>
        <source>What are {lots} like, and what do they lack next to {beside}?</source>
        <translation>Wie sind {lots}, und was fehlt ihnen neben {beside}?</translation>
    </message>
    <message>
        <source>How do you like it?</source>
        <translation>Wie gefällt es dir?</translation>
    </message>
    <message>
        <source>How do you like it: {what}?</source>
        <translation>Wie gefällt es dir: {what}?</translation>
    </message>
    <message>
        <source>How much: {what}?</source>
        <translation>Wie viel: {what}?</translation>
    </message>
    <message>
        <source>For you: {what}?</source>
        <translation>Für dich: {what}?</translation>
    </message>
    <message>
        <source>Tap the cups from the one you like most to the one you like least.</source>
        <translation>Tipp die Becher an, vom liebsten bis zu dem, der dir am wenigsten gefällt.</translation>
    </message>
    <message>
        <source>Tap the cups from the most to the least: {what}.</source>
        <translation>Tipp die Becher an, von am meisten bis am wenigsten: {what}.</translation>
    </message>
    <message>
        <source>You have five points. Give them to the cups.</source>
        <translation>Du hast fünf Punkte. Verteil sie auf die Becher.</translation>
    </message>
    <message>
        <source>What would you do with the glass?</source>
        <translation>Was würdest du mit dem Glas tun?</translation>
    </message>
    <message>
        <source>The worst thing about it</source>
        <translation>Das Schlimmste daran</translation>
    </message>
    <message>
        <source>The one thing you would change</source>
        <translation>Das eine, was du ändern würdest</translation>
    </message>
    <message>
        <source>How far is it from the marked cup?</source>
        <translation>Wie weit ist er vom markierten Becher?</translation>
    </message>
    <message>
        <source>In your own words, if you like</source>
        <translation>In eigenen Worten, wenn du magst</translation>
    </message>
    <message>
        <source>How sure are you of all this?</source>
        <translation>Wie sicher bist du dir bei alldem?</translation>
    </message>
    <message>
        <source>Tap every word that applies. None is an answer too.</source>
        <translation>Tipp jedes Wort an, das passt. Keines ist auch eine Antwort.</translation>
    </message>
    <message>
        <source>dislike extremely</source>
        <translation>missfällt außerordentlich</translation>
    </message>
    <message>
        <source>dislike very much</source>
        <translation>missfällt sehr</translation>
    </message>
    <message>
        <source>dislike moderately</source>
        <translation>missfällt mäßig</translation>
    </message>
    <message>
        <source>dislike slightly</source>
        <translation>missfällt ein wenig</translation>
    </message>
    <message>
        <source>neither like nor dislike</source>
        <translation>weder noch</translation>
    </message>
    <message>
        <source>like slightly</source>
        <translation>gefällt ein wenig</translation>
    </message>
    <message>
        <source>like moderately</source>
        <translation>gefällt mäßig</translation>
    </message>
    <message>
        <source>like very much</source>
        <translation>gefällt sehr</translation>
    </message>
    <message>
        <source>like extremely</source>
        <translation>gefällt außerordentlich</translation>
    </message>
    <message>
        <source>much too little</source>
        <translation>viel zu wenig</translation>
    </message>
    <message>
        <source>just about right</source>
        <translation>gerade richtig</translation>
    </message>
    <message>
        <source>much too much</source>
        <translation>viel zu viel</translation>
    </message>
    <message>
        <source>pour it away</source>
        <translation>wegschütten</translation>
    </message>
    <message>
        <source>finish it</source>
        <translation>austrinken</translation>
    </message>
    <message>
        <source>ask for more</source>
        <translation>nach mehr fragen</translation>
    </message>
    <message>
        <source>0, no different</source>
        <translation>0, kein Unterschied</translation>
    </message>
    <message>
        <source>10, as far as can be</source>
        <translation>10, so weit es geht</translation>
    </message>
    <message>
        <source>very much</source>
        <translation>sehr viel</translation>
    </message>
    <message>
        <source>the strongest imaginable</source>
        <translation>das Stärkste, was du dir denken kannst</translation>
    </message>
    <message>
        <source>barely detectable</source>
        <translation>kaum wahrnehmbar</translation>
    </message>
    <message>
        <source>weak</source>
        <translation>schwach</translation>
    </message>
    <message>
        <source>moderate</source>
        <translation>mäßig</translation>
    </message>
    <message>
        <source>very strong</source>
        <translation>sehr stark</translation>
    </message>
    <message>
        <source>{value} of 100</source>
        <translation>{value} von 100</translation>
    </message>
    <message>
        <source>{value} of 100, {word} or above</source>
        <translation>{value} von 100, {word} oder darüber</translation>
    </message>
    <message>
        <source>I leave this out</source>
        <translation>Das lasse ich aus</translation>
    </message>
    <message>
        <source>I don&apos;t judge {what}</source>
        <translation>Das beurteile ich nicht: {what}</translation>
    </message>
    <message>
        <source> ({low} to {high})</source>
        <translation> ({low} bis {high})</translation>
    </message>
    <message>
        <source>, too few to judge</source>
        <translation>, zu wenige für ein Urteil</translation>
    </message>
    <message>
        <source>{what}: too little, too much?</source>
        <translation>{what}: zu wenig, zu viel?</translation>
    </message>
    <message>
        <source>{drink}: the {n} who said too little liked it {drop} points less than those who said just right{range}.</source>
        <translation>{drink}: den {n}, die „zu wenig“ sagten, gefiel es {drop} Punkte weniger als denen, die „genau richtig“ sagten{range}.</translation>
    </message>
    <message>
        <source>{drink}: the {n} who said too much liked it {drop} points less than those who said just right{range}.</source>
        <translation>{drink}: den {n}, die „zu viel“ sagten, gefiel es {drop} Punkte weniger als denen, die „genau richtig“ sagten{range}.</translation>
    </message>
    <message>
        <source>Words that apply</source>
        <translation>Wörter, die passen</translation>
    </message>
    <message>
        <source>No word was ticked clearly more often for one drink than for another.</source>
        <translation>Kein Wort wurde bei einem Getränk deutlich öfter angekreuzt als bei einem anderen.</translation>
    </message>
    <message>
        <source>Ticked more often for one drink than for another: {words}.</source>
        <translation>Bei einem Getränk öfter angekreuzt als bei einem anderen: {words}.</translation>
    </message>
    <message>
        <source>In order of liking</source>
        <translation>In der Reihenfolge des Gefallens</translation>
    </message>
    <message>
        <source>In order of {what}</source>
        <translation>In der Reihenfolge von {what}</translation>
    </message>
    <message>
        <source>rank sum (the least has the lowest)</source>
        <translation>Rangsumme (das Wenigste hat die niedrigste)</translation>
    </message>
    <message>
        <source>These ranks do not allow a judgement.</source>
        <translation>Diese Ränge erlauben kein Urteil.</translation>
    </message>
    <message>
        <source>People ranked them alike enough that chance seldom does it.</source>
        <translation>Die Leute ordneten sie so übereinstimmend, dass der Zufall das selten schafft.</translation>
    </message>
    <message>
        <source>No common order shown: people&apos;s ranks may have fallen like this by chance.</source>
        <translation>Keine gemeinsame Reihenfolge gezeigt: die Ränge können durch Zufall so gefallen sein.</translation>
    </message>
    <message>
        <source>What they would do with it</source>
        <translation>Was sie damit täten</translation>
    </message>
    <message>
        <source>Five points to give</source>
        <translation>Fünf Punkte zu vergeben</translation>
    </message>
    <message>
        <source>The worst thing</source>
        <translation>Das Schlimmste</translation>
    </message>
    <message>
        <source>The one thing to change</source>
        <translation>Das eine, was zu ändern wäre</translation>
    </message>
    <message>
        <source>Everyone had to name a worst thing, so a complaint alone says nothing.</source>
        <translation>Alle mussten etwas Schlimmstes nennen, also sagt eine Klage allein nichts.</translation>
    </message>
    <message>
        <source>Named on yours and not on the bought one: {words}.</source>
        <translation>Bei deinem genannt und beim gekauften nicht: {words}.</translation>
    </message>
    <message>
        <source>How sure they were</source>
        <translation>Wie sicher sie waren</translation>
    </message>
    <message>
        <source>Where {word} was ticked, liking was about {by} points higher ({low} to {high} before it was drawn in; {people}).</source>
        <translation>Wo {word} angekreuzt war, lag das Gefallen etwa {by} Punkte höher ({low} bis {high}, bevor es eingezogen wurde; {people}).</translation>
    </message>
    <message>
        <source>Where {word} was ticked, liking was about {by} points lower ({low} to {high} before it was drawn in; {people}).</source>
        <translation>Wo {word} angekreuzt war, lag das Gefallen etwa {by} Punkte niedriger ({low} bis {high}, bevor es eingezogen wurde; {people}).</translation>
    </message>
    <message>
        <source>With 10 of 100 more {word} liking was about {by} points higher ({low} to {high} before it was drawn in; {people}).</source>
        <translation>Mit 10 von 100 mehr {word} lag das Gefallen etwa {by} Punkte höher ({low} bis {high}, bevor es eingezogen wurde; {people}).</translation>
    </message>
    <message>
        <source>With 10 of 100 more {word} liking was about {by} points lower ({low} to {high} before it was drawn in; {people}).</source>
        <translation>Mit 10 von 100 mehr {word} lag das Gefallen etwa {by} Punkte niedriger ({low} bis {high}, bevor es eingezogen wurde; {people}).</translation>
    </message>
    <message>
        <source>Which words went with liking: a hint</source>
        <translation>Welche Wörter mit dem Gefallen gingen: ein Hinweis</translation>
    </message>
    <message>
        <source>Under four drinks any two things that differ go together, so no hint is given.</source>
        <translation>Unter vier Getränken gehen je zwei verschiedene Dinge zusammen, also gibt es keinen Hinweis.</translation>
    </message>
    <message>
        <source>From fewer than five people no hint is given.</source>
        <translation>Aus weniger als fünf Leuten gibt es keinen Hinweis.</translation>
    </message>
    <message>
        <source>No word went with liking more clearly than chance does.</source>
        <translation>Kein Wort ging deutlicher mit dem Gefallen, als der Zufall es schafft.</translation>
    </message>
    <message>
        <source>It holds for these {lots} drinks only, and going together is no cause: try it before you change a recipe. Each number is drawn in towards nothing, for many words were looked at.</source>
        <translation>Das gilt nur für diese {lots} Getränke, und zusammengehen ist keine Ursache: probier es aus, bevor du ein Rezept änderst. Jede Zahl ist zur Null hin eingezogen, denn viele Wörter wurden angesehen.</translation>
    </message>
    <message>
        <source>liking, drawn in</source>
        <translation>Gefallen, eingezogen</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>wie gefunden</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>The makers beside the panel</source>
        <translation>Die mitgemacht haben, neben dem Panel</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Frage</translation>
    </message>
    <message>
        <source>the panel</source>
        <translation>das Panel</translation>
    </message>
    <message>
        <source>What was written</source>
        <translation>Was geschrieben wurde</translation>
    </message>
    <message>
        <source>{words} about {drink} ({who})</source>
        <translation>{words} zu {drink} ({who})</translation>
    </message>
    <message>
        <source>{words} about {drink}</source>
        <translation>{words} zu {drink}</translation>
    </message>
    <message>
        <source>{words} ({who})</source>
        <translation>{words} ({who})</translation>
    </message>
    <message>
        <source>The table</source>
        <translation>Der Tisch</translation>
    </message>
    <message>
        <source>The cup that was flawed or thinned on purpose was liked {gap} points less than the others.</source>
        <translation>Der Becher, der absichtlich einen Fehler hatte oder verdünnt war, gefiel {gap} Punkte weniger als die anderen.</translation>
    </message>
    <message>
        <source>What was said aloud</source>
        <translation>Was laut gesagt wurde</translation>
    </message>
    <message>
        <source>more {more}</source>
        <translation>mehr {more}</translation>
    </message>
    <message>
        <source>more {more}, less {less}</source>
        <translation>mehr {more}, weniger {less}</translation>
    </message>
    <message>
        <source>{drink}: {x} across, {y} up, {people}</source>
        <translation>{drink}: {x} quer, {y} hoch, {people}</translation>
    </message>
    <message>
        <source>How the drinks lie to each other, in hundredths of a line</source>
        <translation>Wie die Getränke zueinander liegen, in Hundertsteln einer Linie</translation>
    </message>
    <message>
        <source>To the right: {words} ({share} of 100 parts of what differs)</source>
        <translation>Nach rechts: {words} ({share} von 100 Teilen dessen, was sich unterscheidet)</translation>
    </message>
    <message>
        <source>Upwards: {words} ({share} of 100 parts)</source>
        <translation>Nach oben: {words} ({share} von 100 Teilen)</translation>
    </message>
    <message>
        <source>The rounds say where a drink may lie with other people like these. Drinks whose rounds overlap are not told apart here.</source>
        <translation>Die Kreise sagen, wo ein Getränk bei anderen solchen Leuten liegen kann. Getränke, deren Kreise sich überlappen, werden hier nicht auseinandergehalten.</translation>
    </message>
    <message>
        <source>No rounds around the drinks: from fewer than five people, or from answers all alike, nobody knows how sure their places are.</source>
        <translation>Keine Kreise um die Getränke: aus weniger als fünf Leuten oder aus lauter übereinstimmenden Antworten weiß niemand, wie verlässlich ihre Plätze sind.</translation>
    </message>
    <message>
        <source>{drink} may lie up to {far} from its place one way, {near} the other</source>
        <translation>{drink} kann bis zu {far} in der einen und {near} in der anderen Richtung von seinem Platz liegen</translation>
    </message>
    <message>
        <source>Drink, or the weight of a word</source>
        <translation>Getränk oder Gewicht eines Wortes</translation>
    </message>
    <message>
        <source>To the right</source>
        <translation>Nach rechts</translation>
    </message>
    <message>
        <source>Upwards</source>
        <translation>Nach oben</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Leute</translation>
    </message>
    <message>
        <source>Looked at afterwards, no part of the verdict. Near each other means alike over all words that were put on lines; it says nothing of better or worse.</source>
        <translation>Im Nachhinein angesehen, kein Teil des Urteils. Nah beieinander heißt ähnlich über alle Wörter, die auf Linien standen; über besser oder schlechter sagt es nichts.</translation>
    </message>
    <message>
        <source>It takes three drinks or more to see how they lie to each other.</source>
        <translation>Es braucht drei Getränke oder mehr, um zu sehen, wie sie zueinander liegen.</translation>
    </message>
    <message>
        <source>It takes two words or more that were put on lines.</source>
        <translation>Es braucht zwei Wörter oder mehr, die auf Linien standen.</translation>
    </message>
    <message>
        <source>The drinks differ in no more than one way, so there is nothing to draw.</source>
        <translation>Die Getränke unterscheiden sich auf nicht mehr als eine Art, also gibt es nichts zu zeichnen.</translation>
    </message>
    <message>
        <source>Some drinks were not scored by anybody who scored the others, so their places cannot be compared.</source>
        <translation>Manche Getränke hat niemand bewertet, der die anderen bewertet hat, also lassen sich ihre Plätze nicht vergleichen.</translation>
    </message>
    <message>
        <source>How the cups lie to each other</source>
        <translation>Wie die Becher zueinander liegen</translation>
    </message>
    <message>
        <source>Show how the cups lie to each other</source>
        <translation>Zeigen, wie die Becher zueinander liegen</translation>
    </message>
    <message>
        <source>Less than {reference} in {less}.</source>
        <translation>Weniger als {reference} bei {less}.</translation>
    </message>
    <message>
        <source>More than {reference} in {more}.</source>
        <translation>Mehr als {reference} bei {more}.</translation>
    </message>
    <message>
        <source>Beside {reference}: less in {less}, more in {more}.</source>
        <translation>Neben {reference}: weniger bei {less}, mehr bei {more}.</translation>
    </message>
    <message>
        <source>More or less is not better or worse. It says how people like these found it, not how it was made.</source>
        <translation>Mehr oder weniger ist weder besser noch schlechter. Es sagt, wie solche Leute es fanden, nicht, wie gut es gemacht ist.</translation>
    </message>
    <message>
        <source>Within your limits of {reference} in all you asked about.</source>
        <translation>Innerhalb deiner Grenzen von {reference} in allem, wonach du gefragt hast.</translation>
    </message>
    <message>
        <source>It speaks of what was asked, and of gaps above your limits. Smaller ones may be there.</source>
        <translation>Das spricht von dem, wonach gefragt wurde, und von Abständen über deinen Grenzen. Kleinere können da sein.</translation>
    </message>
    <message>
        <source>No difference from {reference} shown. That is not “no difference”.</source>
        <translation>Kein Unterschied zu {reference} gezeigt. Das heißt nicht „kein Unterschied“.</translation>
    </message>
    <message>
        <source>The ranges below say how large a gap may still be there.</source>
        <translation>Die Spannen unten sagen, wie groß ein Abstand noch sein kann.</translation>
    </message>
    <message>
        <source>a score</source>
        <translation>eine Punktzahl</translation>
    </message>
    <message>
        <source>This is what one person found in it.</source>
        <translation>Das hat eine Person darin gefunden.</translation>
    </message>
    <message>
        <source>This is what people found in it.</source>
        <translation>Das haben die Leute darin gefunden.</translation>
    </message>
    <message>
        <source>This is how one person liked them.</source>
        <translation>So gefielen sie einer Person.</translation>
    </message>
    <message>
        <source>This is how people liked them.</source>
        <translation>So gefielen sie den Leuten.</translation>
    </message>
    <message>
        <source>Friends are kind, and a score by itself says little: read it beside a bought drink, and beside the same drink poured twice.</source>
        <translation>Freunde sind freundlich, und eine Punktzahl für sich sagt wenig: lies sie neben einem gekauften Getränk und neben demselben Getränk, zweimal eingeschenkt.</translation>
    </message>
    <message>
        <source>No verdict: {reason}.</source>
        <translation>Kein Urteil: {reason}.</translation>
    </message>
    <message>
        <source>The answers are kept.</source>
        <translation>Die Antworten bleiben.</translation>
    </message>
    <message>
        <source>{moved} {of} in {what}</source>
        <translation>{moved} {of} bei {what}</translation>
    </message>
    <message>
        <source>The same drink, poured twice, moved by {how}: read smaller gaps as nothing.</source>
        <translation>Dasselbe Getränk, zweimal eingeschenkt, bewegte sich um {how}: nimm kleinere Abstände als nichts.</translation>
    </message>
    <message>
        <source>The reference&apos;s own vintages lie {low} to {high} apart from the one you chose.</source>
        <translation>Die Jahrgänge der Referenz selbst liegen {low} bis {high} von dem entfernt, den du gewählt hast.</translation>
    </message>
    <message>
        <source>Next: change one thing, and pour pairs of old and new on “{what}”.</source>
        <translation>Als Nächstes: änder eine Sache, und schenk Paare von alt und neu zu „{what}“ ein.</translation>
    </message>
    <message>
        <source>Next: ask whether its “{what}” is too little, too much or just right, and pour pairs on it.</source>
        <translation>Als Nächstes: frag, ob „{what}“ zu wenig, zu viel oder genau richtig ist, und schenk dazu Paare ein.</translation>
    </message>
    <message>
        <source>Next: the same sheet with more people, or fewer questions and more rounds.</source>
        <translation>Als Nächstes: derselbe Bogen mit mehr Leuten, oder weniger Fragen und mehr Runden.</translation>
    </message>
    <message>
        <source>Next: pour a bought drink beside it, and the same cup twice.</source>
        <translation>Als Nächstes: schenk ein gekauftes Getränk daneben ein, und denselben Becher zweimal.</translation>
    </message>
    <message>
        <source>Next: the same table again when it has aged, or a question you have not asked.</source>
        <translation>Als Nächstes: derselbe Tisch noch einmal, wenn es älter ist, oder eine Frage, die du noch nicht gestellt hast.</translation>
    </message>
    <message>
        <source>Written before anything was poured; which of them holds is yours to say.</source>
        <translation>Vor dem Einschenken aufgeschrieben; was davon zutrifft, sagst du.</translation>
    </message>
    <message>
        <source>{people} filled in a sheet.</source>
        <translation>{people} haben einen Bogen ausgefüllt.</translation>
    </message>
    <message>
        <source>With fewer than three people there is no range and no verdict: look at the answers themselves.</source>
        <translation>Bei weniger als drei Leuten gibt es keine Spanne und kein Urteil: sieh dir die Antworten selbst an.</translation>
    </message>
    <message>
        <source>Looked at afterwards, from here on: hints for the next evening, no part of the verdict.</source>
        <translation>Ab hier im Nachhinein angesehen: Hinweise für den nächsten Abend, kein Teil des Urteils.</translation>
    </message>
    <message>
        <source>{drink} beside {reference}</source>
        <translation>{drink} neben {reference}</translation>
    </message>
    <message>
        <source>the reference&apos;s own range</source>
        <translation>die eigene Spanne der Referenz</translation>
    </message>
    <message>
        <source>less</source>
        <translation>weniger</translation>
    </message>
    <message>
        <source>more</source>
        <translation>mehr</translation>
    </message>
    <message>
        <source>too few people, or all alike: no range</source>
        <translation>zu wenige Leute, oder alle genau gleich: keine Spanne</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>within the limit</source>
        <translation>innerhalb der Grenze</translation>
    </message>
    <message>
        <source>cannot tell yet</source>
        <translation>noch nicht zu sagen</translation>
    </message>
    <message>
        <source>{what}, {of}: the average and its range</source>
        <translation>{what}, {of}: das Mittel und seine Spanne</translation>
    </message>
    <message>
        <source>{what}, {of}: every person a dot</source>
        <translation>{what}, {of}: jede Person ein Punkt</translation>
    </message>
    <message>
        <source>average</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>points; in brackets, given by several</source>
        <translation>Punkte; in Klammern, von mehreren vergeben</translation>
    </message>
    <message>
        <source>{drink}: {value} {of} by {people}</source>
        <translation>{drink}: {value} {of} von {people}</translation>
    </message>
    <message>
        <source>{gap} {of} on {kind}</source>
        <translation>{gap} {of} ({kind})</translation>
    </message>
    <message>
        <source>This sheet counts what people say; it measures no gap.</source>
        <translation>Dieser Bogen zählt, was Leute sagen; einen Abstand misst er nicht.</translation>
    </message>
    <message>
        <source>With this panel no gap would show: none that fits on the scale would come out 8 times in 10.</source>
        <translation>Mit diesem Panel würde sich kein Abstand zeigen: keiner, der auf die Skala passt, käme in 8 von 10 Fällen heraus.</translation>
    </message>
    <message>
        <source>With this panel almost nothing would show: to come out 8 times in 10 a gap has to be {gaps}.</source>
        <translation>Mit diesem Panel würde sich fast nichts zeigen: um in 8 von 10 Fällen herauszukommen, muss ein Abstand so groß sein: {gaps}.</translation>
    </message>
    <message>
        <source>The smallest gap that would show, 8 times in 10: {gaps}.</source>
        <translation>Der kleinste Abstand, der sich in 8 von 10 Fällen zeigen würde: {gaps}.</translation>
    </message>
    <message>
        <source>It rests on our stated default, a guess: people differ by one point of nine in what they find, and one person by one point from cup to cup. Your own tastings will replace it.</source>
        <translation>Das beruht auf unserem angegebenen Startwert, einer Schätzung: Leute unterscheiden sich in dem, was sie finden, um einen von neun Punkten, und eine Person von Becher zu Becher um einen. Deine eigenen Verkostungen treten an seine Stelle.</translation>
    </message>
    <message>
        <source>It comes from your last {n} tables with mostly these people: they differed by {between} points of nine in what they found, and one person by {within} from cup to cup.</source>
        <translation>Das kommt von deinen letzten {n} Tischen mit meist diesen Leuten: sie unterschieden sich in dem, was sie fanden, um {between} von neun Punkten, und eine Person von Becher zu Becher um {within}.</translation>
    </message>
    <message>
        <source>a line</source>
        <translation>eine Linie</translation>
    </message>
    <message>
        <source>a line with words on it</source>
        <translation>eine Linie mit Worten daran</translation>
    </message>
    <message>
        <source>too little, too much</source>
        <translation>zu wenig, zu viel</translation>
    </message>
    <message>
        <source>a word to tick</source>
        <translation>ein Wort zum Ankreuzen</translation>
    </message>
    <message>
        <source>an order of all cups</source>
        <translation>eine Reihenfolge aller Becher</translation>
    </message>
    <message>
        <source>five points to give</source>
        <translation>fünf Punkte zu vergeben</translation>
    </message>
    <message>
        <source>what they would do with it</source>
        <translation>was sie damit täten</translation>
    </message>
    <message>
        <source>the worst thing</source>
        <translation>das Schlimmste</translation>
    </message>
    <message>
        <source>one thing to change</source>
        <translation>das eine, was zu ändern wäre</translation>
    </message>
    <message>
        <source>distance from the marked cup</source>
        <translation>Abstand vom markierten Becher</translation>
    </message>
    <message>
        <source>free words</source>
        <translation>freie Worte</translation>
    </message>
    <message>
        <source>how sure they are</source>
        <translation>wie sicher sie sind</translation>
    </message>
    <message>
        <source>asked about</source>
        <translation>wonach gefragt wird</translation>
    </message>
    <message>
        <source>the others are held against it</source>
        <translation>daran werden die anderen gemessen</translation>
    </message>
    <message>
        <source>flawed or thinned on purpose</source>
        <translation>absichtlich mit Fehler oder verdünnt</translation>
    </message>
    <message>
        <source>a warm-up cup, never scored</source>
        <translation>ein Becher zum Aufwärmen, nie bewertet</translation>
    </message>
    <message>
        <source>by eye</source>
        <translation>mit dem Auge</translation>
    </message>
    <message>
        <source>by smell</source>
        <translation>mit der Nase</translation>
    </message>
    <message>
        <source>45 seconds after swallowing</source>
        <translation>45 Sekunden nach dem Schlucken</translation>
    </message>
    <message>
        <source>one of those the plan is about</source>
        <translation>eine von denen, um die es im Plan geht</translation>
    </message>
    <message>
        <source>a gap up to {limit} does not matter</source>
        <translation>ein Abstand bis {limit} macht nichts aus</translation>
    </message>
    <message>
        <source>may be left out</source>
        <translation>darf ausgelassen werden</translation>
    </message>
    <message>
        <source>{kind} ({more})</source>
        <translation>{kind} ({more})</translation>
    </message>
    <message>
        <source>{kind}: {word}</source>
        <translation>{kind}: {word}</translation>
    </message>
    <message>
        <source>{kind}: {word} ({more})</source>
        <translation>{kind}: {word} ({more})</translation>
    </message>
    <message>
        <source>{n} questions are held together: each more of them makes the smallest gap wider.</source>
        <translation>{n} Fragen werden zusammengehalten: jede weitere macht den kleinsten Abstand größer.</translation>
    </message>
    <message>
        <source>Nobody gets all {samples} cups: {cups} each, shared out so that every pair meets as evenly as it can.</source>
        <translation>Niemand bekommt alle {samples} Becher: je {cups}, so verteilt, dass jedes Paar sich möglichst gleich oft trifft.</translation>
    </message>
    <message>
        <source>Nothing is held beside it. Friends&apos; scores by themselves say little: add a bought drink, or pour one cup twice.</source>
        <translation>Nichts wird danebengehalten. Punkte von Freunden für sich sagen wenig: nimm ein gekauftes Getränk dazu, oder schenk einen Becher zweimal ein.</translation>
    </message>
    <message>
        <source>With so few people “within the limit” seldom comes out, even where it is true: expect “cannot tell yet”.</source>
        <translation>Bei so wenigen Leuten kommt „innerhalb der Grenze“ selten heraus, auch wo es stimmt: rechne mit „noch nicht zu sagen“.</translation>
    </message>
    <message>
        <source>Fewer than three people had both, so nothing can be told.</source>
        <translation>Weniger als drei Leute hatten beide, also ist nichts zu sagen.</translation>
    </message>
    <message>
        <source>Everybody gave the same gap, so there is nothing to judge it by.</source>
        <translation>Alle gaben denselben Abstand, also gibt es nichts, woran man ihn messen könnte.</translation>
    </message>
    <message>
        <source>Nobody answered for both.</source>
        <translation>Niemand hat zu beiden geantwortet.</translation>
    </message>
    <message>
        <source>These answers do not allow a judgement.</source>
        <translation>Diese Antworten erlauben kein Urteil.</translation>
    </message>
    <message>
        <source>liking of the {what}</source>
        <translation>Gefallen: {what}</translation>
    </message>
    <message>
        <source>{what} (by eye)</source>
        <translation>{what} (mit dem Auge)</translation>
    </message>
    <message>
        <source>{what} (by smell)</source>
        <translation>{what} (mit der Nase)</translation>
    </message>
    <message>
        <source>{what} (some time after swallowing)</source>
        <translation>{what} (eine Weile nach dem Schlucken)</translation>
    </message>
    <message>
        <source>{limit} {of}</source>
        <translation>{limit} {of}</translation>
    </message>
    <message>
        <source>of 9</source>
        <translation>von 9</translation>
    </message>
    <message>
        <source>of 10</source>
        <translation>von 10</translation>
    </message>
    <message>
        <source>of 100</source>
        <translation>von 100</translation>
    </message>
    <message>
        <source>{k} of {n}</source>
        <translation>{k} von {n}</translation>
    </message>
    <message>
        <source>{what}: {drink} less than {reference}, by {by} {of} ({range}).</source>
        <translation>{what}: {drink} weniger als {reference}, um {by} {of} ({range}).</translation>
    </message>
    <message>
        <source>It lacks it: {k} of {n} said too little.</source>
        <translation>Es fehlt: {k} von {n} sagten „zu wenig“.</translation>
    </message>
    <message>
        <source>{what}: {drink} more than {reference}, by {by} {of} ({range}).</source>
        <translation>{what}: {drink} mehr als {reference}, um {by} {of} ({range}).</translation>
    </message>
    <message>
        <source>{what}: {drink} within your limit (no more than {limit} {of} from {reference}; here between {here}).</source>
        <translation>{what}: {drink} innerhalb deiner Grenze (nicht mehr als {limit} {of} von {reference}; hier {here}).</translation>
    </message>
    <message>
        <source>{what}: cannot tell yet whether {drink} differs from {reference}; anything from {range} {of} fits.</source>
        <translation>{what}: noch nicht zu sagen, ob {drink} sich von {reference} unterscheidet; alles von {range} {of} passt dazu.</translation>
    </message>
    <message>
        <source>{what}: cannot tell yet whether {drink} differs from {reference}.</source>
        <translation>{what}: noch nicht zu sagen, ob {drink} sich von {reference} unterscheidet.</translation>
    </message>
    <message>
        <source>With everybody it would have been told; without those who had heard something it is not, and the weaker stands.</source>
        <translation>Mit allen wäre es gezeigt; ohne die, die etwas gehört hatten, ist es das nicht, und es gilt das Schwächere.</translation>
    </message>
    <message>
        <source>{drink}: nobody answered.</source>
        <translation>{drink}: niemand hat geantwortet.</translation>
    </message>
    <message>
        <source>{drink}: {value} {of}, from one person.</source>
        <translation>{drink}: {value} {of}, von einer Person.</translation>
    </message>
    <message>
        <source>{drink}: {mean} {of} on average, {people}; too few, or too much alike, for a range.</source>
        <translation>{drink}: {mean} {of} im Mittel, {people}; zu wenige oder zu übereinstimmend für eine Spanne.</translation>
    </message>
    <message>
        <source>{drink}: {mean} {of} on average ({range}), {people}.</source>
        <translation>{drink}: {mean} {of} im Mittel ({range}), {people}.</translation>
    </message>
    <message>
        <source>A generous table: {liking} of 9 over all cups. Without the same drink twice nobody knows how sharp it was.</source>
        <translation>Ein großzügiger Tisch: {liking} von 9 über alle Becher. Ohne zweimal dasselbe Getränk weiß niemand, wie scharf er war.</translation>
    </message>
    <message>
        <source>This table gave {liking} of 9 over all cups. Without the same drink twice nobody knows how sharp it was.</source>
        <translation>Dieser Tisch gab {liking} von 9 über alle Becher. Ohne zweimal dasselbe Getränk weiß niemand, wie scharf er war.</translation>
    </message>
    <message>
        <source>A generous table: {liking} of 9 over all cups; it moved the same drink by {moved}.</source>
        <translation>Ein großzügiger Tisch: {liking} von 9 über alle Becher; dasselbe Getränk bewegte er um {moved}.</translation>
    </message>
    <message>
        <source>This table gave {liking} of 9 over all cups; it moved the same drink by {moved}.</source>
        <translation>Dieser Tisch gab {liking} von 9 über alle Becher; dasselbe Getränk bewegte er um {moved}.</translation>
    </message>
    <message>
        <source>There is no batch here yet.</source>
        <translation>Hier gibt es noch keinen Ansatz.</translation>
    </message>
    <message>
        <source>One batch has nothing to stand beside yet.</source>
        <translation>Ein Ansatz hat noch nichts, woneben er stehen kann.</translation>
    </message>
    <message>
        <source>not comparable</source>
        <translation>nicht vergleichbar</translation>
    </message>
    <message>
        <source>These batches were never poured together, nor beside a shared bottle: not comparable.</source>
        <translation>Diese Ansätze wurden nie zusammen eingeschenkt, auch nicht neben einer gemeinsamen Flasche: nicht vergleichbar.</translation>
    </message>
    <message>
        <source>Too few people had both, or all answered alike: nothing can be judged yet.</source>
        <translation>Zu wenige Leute hatten beide, oder alle antworteten übereinstimmend: noch lässt sich nichts beurteilen.</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>bewegt</translation>
    </message>
    <message>
        <source>{what} moved between batches.</source>
        <translation>{what} bewegte sich zwischen den Ansätzen.</translation>
    </message>
    <message>
        <source>{n} things moved between batches.</source>
        <translation>{n} Dinge bewegten sich zwischen den Ansätzen.</translation>
    </message>
    <message>
        <source>Within your limit in all that a limit was set for, before anything was poured.</source>
        <translation>Innerhalb deiner Grenze in allem, wofür vor dem Einschenken eine Grenze gesetzt wurde.</translation>
    </message>
    <message>
        <source>Nothing is shown to have moved.</source>
        <translation>Von nichts ist gezeigt, dass es sich bewegt hat.</translation>
    </message>
    <message>
        <source>{count}; {noticers} of those known to notice it</source>
        <translation>{count}; davon {noticers} von denen, die es nachweislich bemerken</translation>
    </message>
    <message>
        <source>bottles</source>
        <translation>Flaschen</translation>
    </message>
    <message>
        <source>age at tasting</source>
        <translation>Alter beim Verkosten</translation>
    </message>
    <message>
        <source>changed in it</source>
        <translation>daran geändert</translation>
    </message>
    <message>
        <source>not tasted blind yet</source>
        <translation>noch nicht blind verkostet</translation>
    </message>
    <message>
        <source>{value} ({people})</source>
        <translation>{value} ({people})</translation>
    </message>
    <message>
        <source>one person only</source>
        <translation>nur eine Person</translation>
    </message>
    <message>
        <source>{word}, ticked by</source>
        <translation>{word}, angekreuzt von</translation>
    </message>
    <message>
        <source>Averages as they were given, each on its own evening: no line joins them. What may be compared is told by itself, with its range. Ticks are counted, not judged.</source>
        <translation>Mittelwerte, wie sie vergeben wurden, jeder an seinem eigenen Abend: keine Linie verbindet sie. Was verglichen werden darf, steht für sich, mit seiner Spanne. Kreuze werden gezählt, nicht beurteilt.</translation>
    </message>
    <message>
        <source>{word} was also asked as {names}; both count as one word here. People may not have understood them alike.</source>
        <translation>Nach {word} wurde auch als {names} gefragt; beides zählt hier als ein Wort. Vielleicht haben die Leute sie verschieden verstanden.</translation>
    </message>
    <message>
        <source>{word}: the list of words was changed here between the tastings, on {days}.</source>
        <translation>{word}: die Wortliste wurde hier zwischen den Verkostungen geändert, am {days}.</translation>
    </message>
    <message>
        <source>One comparison was made.</source>
        <translation>Ein Vergleich wurde angestellt.</translation>
    </message>
    <message>
        <source>{n} comparisons were looked at together: less, more and within your limit stand only where they hold among all of them. Each range is for its word alone.</source>
        <translation>{n} Vergleiche wurden zusammen angesehen: weniger, mehr und innerhalb deiner Grenze stehen nur da, wo sie unter allen halten. Jede Spanne gilt nur für ihr Wort.</translation>
    </message>
    <message>
        <source>That is not “nothing moved”: the ranges below say what may still be there.</source>
        <translation>Das heißt nicht „nichts bewegte sich“: die Spannen unten sagen, was noch da sein kann.</translation>
    </message>
    <message>
        <source>More or less of a thing is not better or worse.</source>
        <translation>Mehr oder weniger von etwas ist weder besser noch schlechter.</translation>
    </message>
    <message>
        <source>Another bottling of {batch} was tasted too; it is left out here.</source>
        <translation>Auch eine andere Abfüllung von {batch} wurde verkostet; sie bleibt hier außen vor.</translation>
    </message>
    <message>
        <source>{n} other bottlings of {batch} were tasted too; they are left out here.</source>
        <translation>Auch {n} andere Abfüllungen von {batch} wurden verkostet; sie bleiben hier außen vor.</translation>
    </message>
    <message>
        <source>Batches side by side</source>
        <translation>Ansätze nebeneinander</translation>
    </message>
    <message>
        <source>{recipe}: batches side by side</source>
        <translation>{recipe}: Ansätze nebeneinander</translation>
    </message>
    <message>
        <source>No gravity was read. One reading, and another some days later, say whether it still ferments.</source>
        <translation>Keine Dichte wurde gemessen. Eine Messung und eine weitere einige Tage später sagen, ob es noch gärt.</translation>
    </message>
    <message>
        <source>Read once: {last} on {day}. One reading cannot say whether it still ferments.</source>
        <translation>Einmal gemessen: {last} am {day}. Eine Messung kann nicht sagen, ob es noch gärt.</translation>
    </message>
    <message>
        <source>{last} on {day}, {since} on {then}: {long} apart say little.</source>
        <translation>{last} am {day}, {since} am {then}: {long} dazwischen sagen wenig.</translation>
    </message>
    <message>
        <source>{since} on {then}, {last} on {day}: it fell within {long}, so it still fermented then.</source>
        <translation>{since} am {then}, {last} am {day}: binnen {long} fiel sie, also gärte es da noch.</translation>
    </message>
    <message>
        <source>{since} on {then}, {last} on {day}: it fell in those {long}. Whether it still does, only another reading says.</source>
        <translation>{since} am {then}, {last} am {day}: in diesen {long} fiel sie. Ob sie es noch tut, sagt nur eine weitere Messung.</translation>
    </message>
    <message>
        <source>{since} on {then}, {last} on {day}: gravity does not rise by itself. One of the two was read wrong, or something was added.</source>
        <translation>{since} am {then}, {last} am {day}: die Dichte steigt nicht von selbst. Eine der beiden wurde falsch abgelesen, oder etwas wurde zugegeben.</translation>
    </message>
    <message>
        <source>{last} on {day}, {since} on {then}: no fall that a hydrometer shows, over {long}. Slow yeast, or sugar added later, would not show in it.</source>
        <translation>{last} am {day}, {since} am {then}: kein Fall, den eine Spindel zeigt, über {long}. Langsame Hefe oder später zugegebener Zucker würde sich darin nicht zeigen.</translation>
    </message>
    <message>
        <source>A bottle gushed. See to the others first.</source>
        <translation>Eine Flasche schäumte über. Kümmere dich zuerst um die anderen.</translation>
    </message>
    <message>
        <source>Cannot be told: no gravity was read.</source>
        <translation>Nicht zu sagen: keine Dichte wurde gemessen.</translation>
    </message>
    <message>
        <source>Cannot be told yet. Read it again, on {day} or later.</source>
        <translation>Noch nicht zu sagen. Miss noch einmal, am {day} oder später.</translation>
    </message>
    <message>
        <source>Too early to bottle: it was still falling on {day}.</source>
        <translation>Zu früh zum Abfüllen: am {day} fiel sie noch.</translation>
    </message>
    <message>
        <source>Cannot be told: the readings contradict each other.</source>
        <translation>Nicht zu sagen: die Messungen widersprechen sich.</translation>
    </message>
    <message>
        <source>Steady for {long}. Whether to bottle or to drink it is yours.</source>
        <translation>Unverändert seit {long}. Ob du abfüllst oder trinkst, ist deine Sache.</translation>
    </message>
    <message>
        <source>About {grams} g in a litre is left of what was dissolved in it. Not all of that is sugar that yeast can use.</source>
        <translation>Etwa {grams} g je Liter sind von dem übrig, was darin gelöst war. Nicht alles davon ist Zucker, den Hefe nutzen kann.</translation>
    </message>
    <message>
        <source>Down to the final gravity that you gave it could fall by another {fall}. In a closed bottle that would add about {volumes} volumes of gas; bottles for beer are typically made for about {most} in all, lighter glass for less.</source>
        <translation>Bis zu der Enddichte, die du angegeben hast, könnte sie noch um {fall} fallen. In einer geschlossenen Flasche ergäbe das etwa {volumes} Volumen Gas mehr; Bierflaschen sind üblicherweise für insgesamt etwa {most} gemacht, leichteres Glas für weniger.</translation>
    </message>
    <message>
        <source>Stabilised on {day}. That hinders yeast; it does not stop one that is busy.</source>
        <translation>Stabilisiert am {day}. Das hemmt Hefe; eine, die arbeitet, hält es nicht auf.</translation>
    </message>
    <message>
        <source>In the bottle since {day}: {long}.</source>
        <translation>In der Flasche seit {day}: {long}.</translation>
    </message>
    <message>
        <source>{what} on {day}: {level}. Look again: two looks show a direction.</source>
        <translation>{what} am {day}: {level}. Sieh noch einmal nach: zwei Blicke zeigen eine Richtung.</translation>
    </message>
    <message>
        <source>{what}: {before} on {then}, {level} on {day}. It goes.</source>
        <translation>{what}: {before} am {then}, {level} am {day}. Es geht zurück.</translation>
    </message>
    <message>
        <source>{what}: {before} on {then}, {level} on {day}. It grows.</source>
        <translation>{what}: {before} am {then}, {level} am {day}. Es nimmt zu.</translation>
    </message>
    <message>
        <source>{what}: {level} on {then} and on {day}.</source>
        <translation>{what}: {level} am {then} und am {day}.</translation>
    </message>
    <message>
        <source>So much sediment usually means that it was bottled too early (common practice).</source>
        <translation>So viel Bodensatz heißt meist, dass zu früh abgefüllt wurde (allgemein üblich).</translation>
    </message>
    <message>
        <source>A smell of sulphur often goes within weeks, cold and on its yeast; one of onion or rubber seldom does (fermentation guides).</source>
        <translation>Schwefelgeruch geht oft in Wochen, kalt und auf der Hefe; einer nach Zwiebel oder Gummi selten (Gärratgeber).</translation>
    </message>
    <message>
        <source>{lot}: {bottles}, {where}</source>
        <translation>{lot}: {bottles}, {where}</translation>
    </message>
    <message>
        <source>not said where</source>
        <translation>nicht gesagt, wo</translation>
    </message>
    <message>
        <source>One ran over on {day}. It may have been that bottle alone, or the first of many.</source>
        <translation>Eine lief am {day} über. Es kann diese Flasche allein gewesen sein, oder die erste von vielen.</translation>
    </message>
    <message>
        <source>Meads of 6 to 8 % are often left for 3 to 6 months, above 12 % for a year or two; many disagree (common practice).</source>
        <translation>Mete mit 6 bis 8 % lässt man oft 3 bis 6 Monate liegen, über 12 % ein Jahr oder zwei; viele sehen das anders (allgemein üblich).</translation>
    </message>
    <message>
        <source>No other bottle of it is on the shelf. Those given away are not followed: tell whoever has one.</source>
        <translation>Keine andere Flasche davon ist im Regal. Verschenkte werden nicht verfolgt: sag denen Bescheid, die eine haben.</translation>
    </message>
    <message>
        <source>Those given away are not followed: tell whoever has one.</source>
        <translation>Verschenkte werden nicht verfolgt: sag denen Bescheid, die eine haben.</translation>
    </message>
    <message>
        <source>Bottles under too much pressure can burst. Keep the others cold, upright and away from people; handle them with gloves and goggles, and open them cold, outside, pointing away. Where you are not sure, leave them closed and ask somebody who knows.</source>
        <translation>Flaschen unter zu viel Druck können bersten. Halt die anderen kalt, aufrecht und fern von Leuten; fass sie mit Handschuhen und Schutzbrille an, und öffne sie kalt, draußen, von dir weg. Wo du nicht sicher bist, lass sie zu und frag jemanden, der sich auskennt.</translation>
    </message>
    <message>
        <source>Pressure: a fall of {little} in a closed bottle adds about {each} volumes of gas, so {more} about {four}. Bottle only what has been steady for several days, and in glass made for it.</source>
        <translation>Druck: ein Fall um {little} in einer geschlossenen Flasche ergibt etwa {each} Volumen Gas, {more} also etwa {four}. Füll nur ab, was mehrere Tage gleich geblieben ist, und in Glas, das dafür gemacht ist.</translation>
    </message>
    <message>
        <source>Steady means: within {little} over {n} days or more, our own rule after common practice. Gas by Balling&apos;s figures, rounded up.</source>
        <translation>Unverändert heißt: innerhalb von {little} über {n} Tage oder mehr, unsere eigene Regel nach allgemeiner Übung. Gas nach Ballings Zahlen, aufgerundet.</translation>
    </message>
    <message>
        <source>{number} {answer}</source>
        <translation>{number} {answer}</translation>
    </message>
    <message>
        <source>{list}, {next}</source>
        <translation>{list}, {next}</translation>
    </message>
    <message>
        <source>The code that is ticked: {codes}.</source>
        <translation>Der angekreuzte Code: {codes}.</translation>
    </message>
    <message>
        <source>The code that is ticked, {codes}; 0 for no preference.</source>
        <translation>Der angekreuzte Code, {codes}; 0 für keine Vorliebe.</translation>
    </message>
    <message>
        <source>How did you know?</source>
        <translation>Woran hast du es gemerkt?</translation>
    </message>
    <message>
        <source>Millimetres from the beginning of the line to the stroke, 0 to 100.</source>
        <translation>Millimeter vom Anfang der Linie bis zum Strich, 0 bis 100.</translation>
    </message>
    <message>
        <source>Millimetres from the foot of the line to the stroke, 0 to 100; tenths count.</source>
        <translation>Millimeter vom Fuß der Linie bis zum Strich, 0 bis 100; Zehntel zählen.</translation>
    </message>
    <message>
        <source>1 when it is ticked, else nothing.</source>
        <translation>1, wenn es angekreuzt ist, sonst nichts.</translation>
    </message>
    <message>
        <source>The number beside the cup</source>
        <translation>Die Zahl neben dem Becher</translation>
    </message>
    <message>
        <source>The number beside the cup: {what}</source>
        <translation>Die Zahl neben dem Becher: {what}</translation>
    </message>
    <message>
        <source>1 for the least to {most} for the most, each once.</source>
        <translation>1 für am wenigsten bis {most} für am meisten, jede einmal.</translation>
    </message>
    <message>
        <source>The points of the cup</source>
        <translation>Die Punkte des Bechers</translation>
    </message>
    <message>
        <source>0 to 5, five in all; nothing for none.</source>
        <translation>0 bis 5, zusammen fünf; nichts für keine.</translation>
    </message>
    <message>
        <source>As it is written; 0 where none was found.</source>
        <translation>Wie es geschrieben steht; 0, wo keins gefunden wurde.</translation>
    </message>
    <message>
        <source>As it is written.</source>
        <translation>Wie es geschrieben steht.</translation>
    </message>
    <message>
        <source>As it is written; nothing where nothing is.</source>
        <translation>Wie es geschrieben steht; nichts, wo nichts steht.</translation>
    </message>
    <message>
        <source>0 no different to 10 as far as can be.</source>
        <translation>0 kein Unterschied bis 10 so weit es geht.</translation>
    </message>
    <message>
        <source>{number} °P</source>
        <translation>{number} °P</translation>
    </message>
    <message>
        <source>US fl oz</source>
        <translation>US fl oz</translation>
    </message>
    <message>
        <source>imperial fl oz</source>
        <translation>brit. fl oz</translation>
    </message>
    <message>
        <source>mL</source>
        <translation>ml</translation>
    </message>
    <message>
        <source>{number} {unit}</source>
        <translation>{number} {unit}</translation>
    </message>
    <message>
        <source>°P</source>
        <translation>°P</translation>
    </message>
    <message>
        <source>SG</source>
        <translation>SG</translation>
    </message>
    <message>
        <source>{number} °F</source>
        <translation>{number} °F</translation>
    </message>
    <message>
        <source>{number} °C</source>
        <translation>{number} °C</translation>
    </message>
    <message>
        <source>Next: {n} rounds are the fewest that can show what you prefer.</source>
        <translation>Als Nächstes: mindestens {n} Runden braucht es, um zu zeigen, was du lieber magst.</translation>
    </message>
    <message>
        <source>Next: {n} people are the fewest who can show a preference. A person is one vote, so more rounds add none.</source>
        <translation>Als Nächstes: mindestens {n} Leute braucht es, um eine Vorliebe zu zeigen. Eine Person ist eine Stimme, also bringen mehr Runden keine dazu.</translation>
    </message>
    <message>
        <source>Next: the cheapest way is more rounds.</source>
        <translation>Als Nächstes: der günstigste Weg sind mehr Runden.</translation>
    </message>
    <message>
        <source>Next: the cheapest way is more people, or more rounds.</source>
        <translation>Als Nächstes: der günstigste Weg sind mehr Leute, oder mehr Runden.</translation>
    </message>
    <message>
        <source>Next: seal a new plan, and let somebody else keep the pour sheet.</source>
        <translation>Als Nächstes: versiegel einen neuen Plan, und lass jemand anderen das Einschenkblatt hüten.</translation>
    </message>
    <message>
        <source>Next: ask whether anyone can tell them apart.</source>
        <translation>Als Nächstes: frag, ob irgendwer sie auseinanderhalten kann.</translation>
    </message>
    <message>
        <source>Next: seal a new plan for another evening.</source>
        <translation>Als Nächstes: versiegel einen neuen Plan für einen anderen Abend.</translation>
    </message>
    <message>
        <source>Next: keep silent until everybody has locked.</source>
        <translation>Als Nächstes: schweigt, bis alle festgelegt haben.</translation>
    </message>
    <message>
        <source>Next: hide look and fizz with dark cups and lids, and keep silent until everybody has locked.</source>
        <translation>Als Nächstes: versteck Aussehen und Prickeln mit dunklen Bechern und Deckeln, und schweigt, bis alle festgelegt haben.</translation>
    </message>
    <message>
        <source>Nothing shown: the answers point two ways.</source>
        <translation>Nichts gezeigt: die Antworten zeigen in zwei Richtungen.</translation>
    </message>
    <message>
        <source>Read with and without the answers after something was said, they favour different drinks.</source>
        <translation>Mit und ohne die Antworten, nachdem etwas gesagt war, bevorzugen sie verschiedene Getränke.</translation>
    </message>
    <message>
        <source>Next: keep silent until everybody has locked, and ask again.</source>
        <translation>Als Nächstes: schweigt, bis alle festgelegt haben, und frag noch einmal.</translation>
    </message>
    <message>
        <source>Read with and without some of the answers, they contradict each other. That is neither “told apart” nor “alike”.</source>
        <translation>Mit und ohne einen Teil der Antworten widersprechen sie sich. Das ist weder „auseinandergehalten“ noch „ähnlich“.</translation>
    </message>
    <message>
        <source>Next: hide look and fizz with dark cups and lids, keep silent until everybody has locked, and ask again.</source>
        <translation>Als Nächstes: versteck Aussehen und Prickeln mit dunklen Bechern und Deckeln, schweigt, bis alle festgelegt haben, und frag noch einmal.</translation>
    </message>
    <message>
        <source>one round cannot settle this, whatever you answer</source>
        <translation>eine Runde kann das nicht entscheiden, was immer du antwortest</translation>
    </message>
    <message>
        <source>{n} rounds cannot settle this, whatever you answer</source>
        <translation>{n} Runden können das nicht entscheiden, was immer du antwortest</translation>
    </message>
    <message>
        <source>one vote cannot settle this, whatever it is</source>
        <translation>eine Stimme kann das nicht entscheiden, wie immer sie ausfällt</translation>
    </message>
    <message>
        <source>{n} votes cannot settle this, whatever they are</source>
        <translation>{n} Stimmen können das nicht entscheiden, wie immer sie ausfallen</translation>
    </message>
    <message>
        <source>one person cannot settle this, whatever they answer</source>
        <translation>eine Person kann das nicht entscheiden, was immer sie antwortet</translation>
    </message>
    <message>
        <source>{n} people cannot settle this, whatever they answer</source>
        <translation>{n} Leute können das nicht entscheiden, was immer sie antworten</translation>
    </message>
    <message>
        <source>{share} of such people can taste</source>
        <translation>für {share} solcher Leute zu schmecken</translation>
    </message>
    <message>
        <source>the key was opened early</source>
        <translation>der Schlüssel wurde zu früh geöffnet</translation>
    </message>
    <message>
        <source>there is no answer that counts</source>
        <translation>es gibt keine Antwort, die zählt</translation>
    </message>
    <message>
        <source>there is no preference to count</source>
        <translation>es gibt keine Vorliebe zu zählen</translation>
    </message>
    <message>
        <source>too few answers to show anything, whatever they had been</source>
        <translation>zu wenige Antworten, um etwas zu zeigen, wie immer sie ausgefallen wären</translation>
    </message>
    <message>
        <source>too few votes are left that owe nothing to what was said</source>
        <translation>zu wenige Stimmen sind übrig, die nichts dem verdanken, was gesagt wurde</translation>
    </message>
    <message>
        <source>too few answers are left that owe nothing to look, fizz or what was said</source>
        <translation>zu wenige Antworten sind übrig, die nichts dem Aussehen, dem Prickeln oder dem Gesagten verdanken</translation>
    </message>
    <message>
        <source>shown</source>
        <translation>gezeigt</translation>
    </message>
    <message>
        <source>alike</source>
        <translation>ähnlich</translation>
    </message>
    <message>
        <source>shown, within the limit</source>
        <translation>gezeigt, innerhalb der Grenze</translation>
    </message>
    <message>
        <source>They were told apart, in good part by look or fizz.</source>
        <translation>Sie wurden auseinandergehalten, zu einem guten Teil an Aussehen oder Prickeln.</translation>
    </message>
    <message>
        <source>They were told apart.</source>
        <translation>Sie wurden auseinandergehalten.</translation>
    </message>
    <message>
        <source>At this table they were told apart, in good part by look or fizz.</source>
        <translation>An diesem Tisch wurden sie auseinandergehalten, zu einem guten Teil an Aussehen oder Prickeln.</translation>
    </message>
    <message>
        <source>At this table they were told apart.</source>
        <translation>An diesem Tisch wurden sie auseinandergehalten.</translation>
    </message>
    <message>
        <source>You told them apart, in good part by look or fizz.</source>
        <translation>Du hast sie auseinandergehalten, zu einem guten Teil an Aussehen oder Prickeln.</translation>
    </message>
    <message>
        <source>You told them apart.</source>
        <translation>Du hast sie auseinandergehalten.</translation>
    </message>
    <message>
        <source>Some people like these can tell. It does not say that everybody can, how big the difference is, or which is better.</source>
        <translation>Manche Leute wie diese merken es. Das sagt nicht, dass alle es merken, wie groß der Unterschied ist oder welches besser ist.</translation>
    </message>
    <message>
        <source>Somebody at this table could tell. It does not say that everybody could, how big the difference is, or which is better.</source>
        <translation>Jemand an diesem Tisch konnte es merken. Das sagt nicht, dass alle es konnten, wie groß der Unterschied ist oder welches besser ist.</translation>
    </message>
    <message>
        <source>You can tell. It does not say that other people can, how big the difference is, or which is better.</source>
        <translation>Du merkst es. Das sagt nicht, dass andere es merken, wie groß der Unterschied ist oder welches besser ist.</translation>
    </message>
    <message>
        <source>Next: name one thing that differs and pour pairs.</source>
        <translation>Als Nächstes: benenn eine Sache, die sich unterscheidet, und schenk Paare ein.</translation>
    </message>
    <message>
        <source>Told apart, but by fewer than your limit, and in good part by look or fizz.</source>
        <translation>Auseinandergehalten, aber von weniger als deiner Grenze, und zu einem guten Teil an Aussehen oder Prickeln.</translation>
    </message>
    <message>
        <source>Told apart, but by fewer than your limit.</source>
        <translation>Auseinandergehalten, aber von weniger als deiner Grenze.</translation>
    </message>
    <message>
        <source>You can tell, but less often than {limit}.</source>
        <translation>Du merkst es, aber seltener als {limit}.</translation>
    </message>
    <message>
        <source>Some can tell, but fewer than {limit}.</source>
        <translation>Manche merken es, aber weniger als {limit}.</translation>
    </message>
    <message>
        <source>Next: whether so few matter is yours to decide.</source>
        <translation>Als Nächstes: ob so wenige etwas ausmachen, entscheidest du.</translation>
    </message>
    <message>
        <source>Not shown to be alike.</source>
        <translation>Nicht gezeigt, dass sie einander ähneln.</translation>
    </message>
    <message>
        <source>That is not a difference shown: you asked whether they are alike, and this tasting could not say so.</source>
        <translation>Damit ist kein Unterschied gezeigt: du hast gefragt, ob sie einander ähneln, und das konnte diese Verkostung nicht sagen.</translation>
    </message>
    <message>
        <source>Next: more rounds, or a wider limit set before; or ask whether you can tell.</source>
        <translation>Als Nächstes: mehr Runden, oder eine weitere Grenze, vorher gesetzt; oder frag, ob du es merkst.</translation>
    </message>
    <message>
        <source>Next: more people, or a wider limit set before; or ask whether anyone can tell.</source>
        <translation>Als Nächstes: mehr Leute, oder eine weitere Grenze, vorher gesetzt; oder frag, ob irgendwer es merkt.</translation>
    </message>
    <message>
        <source>No difference shown.</source>
        <translation>Kein Unterschied gezeigt.</translation>
    </message>
    <message>
        <source>That is not “no difference”, and alike within your limit was not shown either.</source>
        <translation>Das heißt nicht „kein Unterschied“, und ähnlich innerhalb deiner Grenze ist auch nicht gezeigt.</translation>
    </message>
    <message>
        <source>That is not “no difference”.</source>
        <translation>Das heißt nicht „kein Unterschied“.</translation>
    </message>
    <message>
        <source>Next: if a small difference matters, name one thing and pour pairs; or plan more rounds.</source>
        <translation>Als Nächstes: wenn ein kleiner Unterschied etwas ausmacht, benenn eine Sache und schenk Paare ein; oder plan mehr Runden.</translation>
    </message>
    <message>
        <source>Next: if a small difference matters, name one thing and pour pairs; or ask more people.</source>
        <translation>Als Nächstes: wenn ein kleiner Unterschied etwas ausmacht, benenn eine Sache und schenk Paare ein; oder frag mehr Leute.</translation>
    </message>
    <message>
        <source>Alike, but only within your limit: fewer than {limit} of people like these can tell.</source>
        <translation>Ähnlich, aber nur innerhalb deiner Grenze: unter Leuten wie diesen merken es weniger als {limit}.</translation>
    </message>
    <message>
        <source>Alike, but only within your limit: at this table fewer than {limit} could tell.</source>
        <translation>Ähnlich, aber nur innerhalb deiner Grenze: an diesem Tisch merkten es weniger als {limit}.</translation>
    </message>
    <message>
        <source>Alike, but only within your limit: you could tell less often than {limit}.</source>
        <translation>Ähnlich, aber nur innerhalb deiner Grenze: du hast es seltener gemerkt als {limit}.</translation>
    </message>
    <message>
        <source>Up to that often you may still taste it.</source>
        <translation>So oft kannst du es trotzdem noch schmecken.</translation>
    </message>
    <message>
        <source>Up to that many may still taste it.</source>
        <translation>So viele können es trotzdem noch schmecken.</translation>
    </message>
    <message>
        <source>Next: a new batch is a new question. This one holds for these bottles.</source>
        <translation>Als Nächstes: ein neuer Ansatz ist eine neue Frage. Das hier gilt für diese Flaschen.</translation>
    </message>
    <message>
        <source>{lot} was called the more {more} one, in {right} of {n} pairs, in good part by look or fizz.</source>
        <translation>„{more}“: in {right} von {n} Paaren wurde {lot} als das mit mehr davon genannt, zu einem guten Teil an Aussehen oder Prickeln.</translation>
    </message>
    <message>
        <source>{lot} was called the more {more} one, in {right} of {n} pairs.</source>
        <translation>„{more}“: in {right} von {n} Paaren wurde {lot} als das mit mehr davon genannt.</translation>
    </message>
    <message>
        <source>{lot} was picked as the most {more} one, in {right} of {n} tastings, in good part by look or fizz.</source>
        <translation>„{more}“: in {right} von {n} Durchgängen wurde {lot} als das mit dem meisten davon gewählt, zu einem guten Teil an Aussehen oder Prickeln.</translation>
    </message>
    <message>
        <source>{lot} was picked as the most {more} one, in {right} of {n} tastings.</source>
        <translation>„{more}“: in {right} von {n} Durchgängen wurde {lot} als das mit dem meisten davon gewählt.</translation>
    </message>
    <message>
        <source>At this table {lot} was called the more {more} one, in {right} of {n} pairs, in good part by look or fizz.</source>
        <translation>„{more}“: an diesem Tisch wurde in {right} von {n} Paaren {lot} als das mit mehr davon genannt, zu einem guten Teil an Aussehen oder Prickeln.</translation>
    </message>
    <message>
        <source>At this table {lot} was called the more {more} one, in {right} of {n} pairs.</source>
        <translation>„{more}“: an diesem Tisch wurde in {right} von {n} Paaren {lot} als das mit mehr davon genannt.</translation>
    </message>
    <message>
        <source>At this table {lot} was picked as the most {more} one, in {right} of {n} tastings, in good part by look or fizz.</source>
        <translation>„{more}“: an diesem Tisch wurde in {right} von {n} Durchgängen {lot} als das mit dem meisten davon gewählt, zu einem guten Teil an Aussehen oder Prickeln.</translation>
    </message>
    <message>
        <source>At this table {lot} was picked as the most {more} one, in {right} of {n} tastings.</source>
        <translation>„{more}“: an diesem Tisch wurde in {right} von {n} Durchgängen {lot} als das mit dem meisten davon gewählt.</translation>
    </message>
    <message>
        <source>You called {lot} the more {more} one, in {right} of {n} pairs, in good part by look or fizz.</source>
        <translation>„{more}“: in {right} von {n} Paaren hast du {lot} als das mit mehr davon genannt, zu einem guten Teil an Aussehen oder Prickeln.</translation>
    </message>
    <message>
        <source>You called {lot} the more {more} one, in {right} of {n} pairs.</source>
        <translation>„{more}“: in {right} von {n} Paaren hast du {lot} als das mit mehr davon genannt.</translation>
    </message>
    <message>
        <source>You picked {lot} as the most {more} one, in {right} of {n} tastings, in good part by look or fizz.</source>
        <translation>„{more}“: in {right} von {n} Durchgängen hast du {lot} als das mit dem meisten davon gewählt, zu einem guten Teil an Aussehen oder Prickeln.</translation>
    </message>
    <message>
        <source>You picked {lot} as the most {more} one, in {right} of {n} tastings.</source>
        <translation>„{more}“: in {right} von {n} Durchgängen hast du {lot} als das mit dem meisten davon gewählt.</translation>
    </message>
    <message>
        <source>More is not better or worse.</source>
        <translation>Mehr ist weder besser noch schlechter.</translation>
    </message>
    <message>
        <source>It does not say how much more it is, or that other people notice.</source>
        <translation>Das sagt nicht, wie viel mehr es ist oder dass andere es merken.</translation>
    </message>
    <message>
        <source>It does not say how much more it is, that everybody notices, or which people like better.</source>
        <translation>Das sagt nicht, wie viel mehr es ist, dass alle es merken oder welches die Leute lieber mögen.</translation>
    </message>
    <message>
        <source>Next: whether you want more of it is yours to decide.</source>
        <translation>Als Nächstes: ob du mehr davon willst, entscheidest du.</translation>
    </message>
    <message>
        <source>Next: whether you want more of it is yours to decide; which one people prefer is a question of its own.</source>
        <translation>Als Nächstes: ob du mehr davon willst, entscheidest du; welches die Leute lieber mögen, ist eine eigene Frage.</translation>
    </message>
    <message>
        <source>{lot}: not shown to be more {more}.</source>
        <translation>{lot}: nicht gezeigt, dass es mehr davon hat ({more}).</translation>
    </message>
    <message>
        <source>{other} of {n} pointed the other way. You asked about one direction only, so this is a hint: make it the next question.</source>
        <translation>{other} von {n} zeigten in die andere Richtung. Du hast nur nach einer Richtung gefragt, also ist das ein Hinweis: mach ihn zur nächsten Frage.</translation>
    </message>
    <message>
        <source>Only {right} of {n} picked it, fewer than guessing gives. You asked about one direction only, so this is a hint: make it the next question.</source>
        <translation>Nur {right} von {n} wählten es, weniger als Raten ergibt. Du hast nur nach einer Richtung gefragt, also ist das ein Hinweis: mach ihn zur nächsten Frage.</translation>
    </message>
    <message>
        <source>Next: seal a plan that asks about the other direction.</source>
        <translation>Als Nächstes: versiegel einen Plan, der nach der anderen Richtung fragt.</translation>
    </message>
    <message>
        <source>Next: if a small step matters, plan more rounds.</source>
        <translation>Als Nächstes: wenn ein kleiner Schritt etwas ausmacht, plan mehr Runden.</translation>
    </message>
    <message>
        <source>Next: if a small step matters, ask more people, or plan more rounds.</source>
        <translation>Als Nächstes: wenn ein kleiner Schritt etwas ausmacht, frag mehr Leute, oder plan mehr Runden.</translation>
    </message>
    <message>
        <source>“{more}” was noticed, in good part by look or fizz.</source>
        <translation>„{more}“ wurde bemerkt, zu einem guten Teil an Aussehen oder Prickeln.</translation>
    </message>
    <message>
        <source>“{more}” was noticed.</source>
        <translation>„{more}“ wurde bemerkt.</translation>
    </message>
    <message>
        <source>At this table “{more}” was noticed, in good part by look or fizz.</source>
        <translation>An diesem Tisch wurde „{more}“ bemerkt, zu einem guten Teil an Aussehen oder Prickeln.</translation>
    </message>
    <message>
        <source>At this table “{more}” was noticed.</source>
        <translation>An diesem Tisch wurde „{more}“ bemerkt.</translation>
    </message>
    <message>
        <source>You noticed “{more}”, in good part by look or fizz.</source>
        <translation>Du hast „{more}“ bemerkt, zu einem guten Teil an Aussehen oder Prickeln.</translation>
    </message>
    <message>
        <source>You noticed “{more}”.</source>
        <translation>Du hast „{more}“ bemerkt.</translation>
    </message>
    <message>
        <source>It does not say that you would notice less of it, or name it unasked.</source>
        <translation>Das sagt nicht, dass du weniger davon merken oder es ungefragt nennen würdest.</translation>
    </message>
    <message>
        <source>It does not say that everybody notices it, that less of it would be noticed, or that anybody would name it unasked.</source>
        <translation>Das sagt nicht, dass alle es merken, dass weniger davon bemerkt würde oder dass jemand es ungefragt nennen würde.</translation>
    </message>
    <message>
        <source>Next: try less of it, or the same again on another day.</source>
        <translation>Als Nächstes: versuch es mit weniger davon, oder mit ebenso viel an einem anderen Tag.</translation>
    </message>
    <message>
        <source>Not shown that you notice “{more}”.</source>
        <translation>Nicht gezeigt, dass du „{more}“ merkst.</translation>
    </message>
    <message>
        <source>Not shown that “{more}” was noticed.</source>
        <translation>Nicht gezeigt, dass „{more}“ bemerkt wurde.</translation>
    </message>
    <message>
        <source>That is not “it cannot be noticed”. {known}</source>
        <translation>Das heißt nicht „es ist nicht zu merken“. {known}</translation>
    </message>
    <message>
        <source>Next: more rounds, or a clearer difference, and only with what is sold for food.</source>
        <translation>Als Nächstes: mehr Runden, oder ein deutlicherer Unterschied, und nur mit dem, was als Lebensmittel verkauft wird.</translation>
    </message>
    <message>
        <source>Next: more rounds, more people, or a clearer difference, and only with what is sold for food.</source>
        <translation>Als Nächstes: mehr Runden, mehr Leute, oder ein deutlicherer Unterschied, und nur mit dem, was als Lebensmittel verkauft wird.</translation>
    </message>
    <message>
        <source>{one} from {other}</source>
        <translation>{one} von {other}</translation>
    </message>
    <message>
        <source>{list}; {next}</source>
        <translation>{list}; {next}</translation>
    </message>
    <message>
        <source>Told apart: {list}.</source>
        <translation>Auseinandergehalten: {list}.</translation>
    </message>
    <message>
        <source>Told apart at this table: {list}.</source>
        <translation>An diesem Tisch auseinandergehalten: {list}.</translation>
    </message>
    <message>
        <source>You told apart: {list}.</source>
        <translation>Du hast auseinandergehalten: {list}.</translation>
    </message>
    <message>
        <source>{one} and {other}: told apart, in good part by look or fizz.</source>
        <translation>{one} und {other}: auseinandergehalten, zu einem guten Teil an Aussehen oder Prickeln.</translation>
    </message>
    <message>
        <source>{one} and {other}: told apart.</source>
        <translation>{one} und {other}: auseinandergehalten.</translation>
    </message>
    <message>
        <source>{one} and {other}: told apart, but by fewer than {limit}.</source>
        <translation>{one} und {other}: auseinandergehalten, aber von weniger als {limit}.</translation>
    </message>
    <message>
        <source>{one} and {other}: alike, but only within your limit of {limit}.</source>
        <translation>{one} und {other}: ähnlich, aber nur innerhalb deiner Grenze ({limit}).</translation>
    </message>
    <message>
        <source>{one} and {other}: nothing shown, the answers point two ways.</source>
        <translation>{one} und {other}: nichts gezeigt, die Antworten zeigen in zwei Richtungen.</translation>
    </message>
    <message>
        <source>{one} and {other}: not shown to be alike.</source>
        <translation>{one} und {other}: nicht gezeigt, dass sie einander ähneln.</translation>
    </message>
    <message>
        <source>{one} and {other}: no difference shown.</source>
        <translation>{one} und {other}: kein Unterschied gezeigt.</translation>
    </message>
    <message>
        <source>{one} and {other}: no verdict, {reason}.</source>
        <translation>{one} und {other}: kein Urteil, {reason}.</translation>
    </message>
    <message>
        <source>Three pairs were compared, so each has to be clearer than one alone would: over all three together a false alarm comes no more than {risk}.</source>
        <translation>Drei Paare wurden verglichen, also muss jedes deutlicher sein, als eines allein es müsste: über alle drei zusammen kommt ein falscher Alarm nicht öfter als {risk} vor.</translation>
    </message>
    <message>
        <source>It does not say how big a difference is, or which is better. A pair that is not named may still differ.</source>
        <translation>Das sagt nicht, wie groß ein Unterschied ist oder welches besser ist. Ein Paar, das nicht genannt ist, kann sich trotzdem unterscheiden.</translation>
    </message>
    <message>
        <source>All three pairs alike, but only within your limit.</source>
        <translation>Alle drei Paare ähnlich, aber nur innerhalb deiner Grenze.</translation>
    </message>
    <message>
        <source>Not all three pairs are shown to be alike.</source>
        <translation>Nicht bei allen drei Paaren gezeigt, dass sie einander ähneln.</translation>
    </message>
    <message>
        <source>No difference shown in any of the three pairs.</source>
        <translation>Bei keinem der drei Paare ein Unterschied gezeigt.</translation>
    </message>
    <message>
        <source>Next: ask about the one pair that matters most; it then needs fewer right answers.</source>
        <translation>Als Nächstes: frag nach dem einen Paar, auf das es am meisten ankommt; dann braucht es weniger richtige Antworten.</translation>
    </message>
    <message>
        <source>All {n} preferred {lot}.</source>
        <translation>Alle {n} mochten {lot} lieber.</translation>
    </message>
    <message>
        <source>{larger} of {n} preferred {lot}.</source>
        <translation>{larger} von {n} mochten {lot} lieber.</translation>
    </message>
    <message>
        <source>At this table all {n} preferred {lot}.</source>
        <translation>An diesem Tisch mochten alle {n} {lot} lieber.</translation>
    </message>
    <message>
        <source>At this table {larger} of {n} preferred {lot}.</source>
        <translation>An diesem Tisch mochten {larger} von {n} {lot} lieber.</translation>
    </message>
    <message>
        <source>You preferred {lot} in all {n} rounds.</source>
        <translation>Du mochtest {lot} in allen {n} Runden lieber.</translation>
    </message>
    <message>
        <source>You preferred {lot} in {larger} of {n} rounds.</source>
        <translation>Du mochtest {lot} in {larger} von {n} Runden lieber.</translation>
    </message>
    <message>
        <source>It says what you liked today, not what is better made.</source>
        <translation>Das sagt, was du heute mochtest, nicht, was besser gemacht ist.</translation>
    </message>
    <message>
        <source>It says what these {people} liked today, not what is better made.</source>
        <translation>Das sagt, was diese {people} heute mochten, nicht, was besser gemacht ist.</translation>
    </message>
    <message>
        <source>Next: what to keep or to change is yours to decide; other people may like another one.</source>
        <translation>Als Nächstes: was du lässt oder änderst, entscheidest du; andere mögen vielleicht ein anderes.</translation>
    </message>
    <message>
        <source>Next: what to keep or to change is yours to decide; other people may like another one better.</source>
        <translation>Als Nächstes: was du lässt oder änderst, entscheidest du; andere mögen vielleicht ein anderes lieber.</translation>
    </message>
    <message>
        <source>{larger} to {smaller}: no preference shown.</source>
        <translation>{larger} zu {smaller}: keine Vorliebe gezeigt.</translation>
    </message>
    <message>
        <source>That does not say that they are liked as much.</source>
        <translation>Das sagt nicht, dass beide ebenso gern gemocht werden.</translation>
    </message>
    <message>
        <source>Next: if it matters, plan more rounds.</source>
        <translation>Als Nächstes: wenn es etwas ausmacht, plan mehr Runden.</translation>
    </message>
    <message>
        <source>Next: if it matters, ask more people. A person is one vote, so more rounds add none.</source>
        <translation>Als Nächstes: wenn es etwas ausmacht, frag mehr Leute. Eine Person ist eine Stimme, also bringen mehr Runden keine dazu.</translation>
    </message>
    <message>
        <source>Stopped after round {round}.</source>
        <translation>Aufgehört nach Runde {round}.</translation>
    </message>
    <message>
        <source>It went to the last round, round {round}.</source>
        <translation>Es ging bis zur letzten Runde, Runde {round}.</translation>
    </message>
    <message>
        <source>The answers stayed between the two lines that were drawn before: undecided.</source>
        <translation>Die Antworten blieben zwischen den beiden Linien, die vorher gezogen wurden: unentschieden.</translation>
    </message>
    <message>
        <source>From extension-service fault series and fermentation guides.</source>
        <translation>Aus Fehlerreihen der Beratungsdienste und Gärratgebern.</translation>
    </message>
    <message>
        <source>From the general course of ageing in beer (Dalgliesh 1977); the rest is common practice.</source>
        <translation>Aus dem allgemeinen Verlauf der Alterung von Bier (Dalgliesh 1977); der Rest ist allgemein üblich.</translation>
    </message>
    <message>
        <source>Common practice.</source>
        <translation>Allgemein üblich.</translation>
    </message>
    <message>
        <source>Also {names}.</source>
        <translation>Auch: {names}.</translation>
    </message>
    <message>
        <source>Compound: {compound}.</source>
        <translation>Stoff: {compound}.</translation>
    </message>
    <message>
        <source>1 word</source>
        <translation>1 Wort</translation>
    </message>
    <message>
        <source>{n} words</source>
        <translation>{n} Wörter</translation>
    </message>
    <message>
        <source>usually a fault</source>
        <translation>meist ein Fehler</translation>
    </message>
    <message>
        <source>a fault or wanted, as the style has it</source>
        <translation>Fehler oder gewollt, je nach Stil</translation>
    </message>
    <message>
        <source>usually wanted</source>
        <translation>meist gewollt</translation>
    </message>
    <message>
        <source>Said of {drinks}.</source>
        <translation>Gesagt von {drinks}.</translation>
    </message>
    <message>
        <source>Pressure: what still ferments can burst its bottle. Bottle only after the gravity has stood still for several days. If a bottle gushes, keep the others cool and covered, and wear gloves and goggles before you touch them.</source>
        <translation>Druck: was noch gärt, kann seine Flasche sprengen. Füll erst ab, wenn die Dichte mehrere Tage stillgestanden hat. Wenn eine Flasche überschäumt, halt die anderen kühl und bedeckt, und zieh Handschuhe und Schutzbrille an, bevor du sie anfasst.</translation>
    </message>
    <message>
        <source>Sulphite: some people with asthma react to it. Tell it to everybody before pouring, and keep to the law where you live.</source>
        <translation>Sulfit: manche Leute mit Asthma reagieren darauf. Sag es allen vor dem Einschenken, und halt dich an das Recht an deinem Ort.</translation>
    </message>
    <message>
        <source>Smell first. If in doubt, do not swallow it, and do not pour it for others.</source>
        <translation>Erst riechen. Im Zweifel nicht schlucken und niemandem einschenken.</translation>
    </message>
    <message>
        <source>A hint, not a diagnosis: one taste can have several causes, and two tasters can mean two things by one word.</source>
        <translation>Ein Hinweis, keine Diagnose: ein Geschmack kann mehrere Ursachen haben, und zwei Leute können mit einem Wort zweierlei meinen.</translation>
    </message>
    <message>
        <source>{day}: {former} was added.</source>
        <translation>{day}: {former} kam dazu.</translation>
    </message>
    <message>
        <source>{day}: {former} got another name.</source>
        <translation>{day}: {former} bekam einen anderen Namen.</translation>
    </message>
    <message>
        <source>{day}: {word} was merged into {other}.</source>
        <translation>{day}: {word} wurde mit {other} zusammengelegt.</translation>
    </message>
    <message>
        <source>{day}: {word} was taken apart from {other}.</source>
        <translation>{day}: {word} wurde von {other} getrennt.</translation>
    </message>
    <message>
        <source>{day}: {word} was retired.</source>
        <translation>{day}: {word} ging außer Dienst.</translation>
    </message>
    <message>
        <source>{day}: {word} was brought back.</source>
        <translation>{day}: {word} wurde zurückgeholt.</translation>
    </message>
    <message>
        <source>{list} and {last}</source>
        <translation>{list} und {last}</translation>
    </message>
    <message>
        <source>“{text}”</source>
        <translation>„{text}“</translation>
    </message>
    <message>
        <source>It would come out as alike within the limit {often} {nobody}.</source>
        <translation>Es käme {often} als ähnlich innerhalb der Grenze heraus, {nobody}.</translation>
    </message>
    <message>
        <source>Compare two of the three now, and the third another day.</source>
        <translation>Vergleich jetzt zwei der drei, und das dritte an einem anderen Tag.</translation>
    </message>
    <message>
        <source>Name one thing to look for, and pour pairs another time: two cups instead of {cups}.</source>
        <translation>Benenn eine Sache, nach der gesucht wird, und schenk ein andermal Paare ein: zwei Becher statt {cups}.</translation>
    </message>
    <message>
        <source>Name one thing to look for, and pour pairs another time.</source>
        <translation>Benenn eine Sache, nach der gesucht wird, und schenk ein andermal Paare ein.</translation>
    </message>
    <message>
        <source>Pour {volume} into each cup and taste {rounds}.</source>
        <translation>Schenk {volume} in jeden Becher, und verkostet {rounds}.</translation>
    </message>
    <message>
        <source>Pour {volume} into each cup.</source>
        <translation>Schenk {volume} in jeden Becher.</translation>
    </message>
    <message>
        <source>Offer spit cups. It takes in less; the grams here are counted as if all were swallowed.</source>
        <translation>Biete Spuckbecher an. So wird weniger aufgenommen; die Gramm hier sind gezählt, als würde alles geschluckt.</translation>
    </message>
    <message>
        <source>Taste {rounds}, spread over {evenings} evenings.</source>
        <translation>Verkostet {rounds}, verteilt auf {evenings} Abende.</translation>
    </message>
    <message>
        <source>Spread the rounds over {evenings} evenings.</source>
        <translation>Verteil die Runden auf {evenings} Abende.</translation>
    </message>
    <message>
        <source>Ask more people: {people} who did not make it.</source>
        <translation>Frag mehr Leute: {people}, die nicht daran mitgemacht haben.</translation>
    </message>
    <message>
        <source>Pour four cups, two of each drink (a tetrad).</source>
        <translation>Schenk vier Becher ein, zwei von jedem Getränk (Tetradentest).</translation>
    </message>
    <message>
        <source>Taste {rounds}.</source>
        <translation>Verkostet {rounds}.</translation>
    </message>
    <message>
        <source>Grain and malt</source>
        <translation>Getreide und Malz</translation>
    </message>
    <message>
        <source>Roast and caramel</source>
        <translation>Röstung und Karamell</translation>
    </message>
    <message>
        <source>Fruit</source>
        <translation>Frucht</translation>
    </message>
    <message>
        <source>Flowers and honey</source>
        <translation>Blumen und Honig</translation>
    </message>
    <message>
        <source>Hops and green things</source>
        <translation>Hopfen und Grünes</translation>
    </message>
    <message>
        <source>Spice, wood and smoke</source>
        <translation>Gewürz, Holz und Rauch</translation>
    </message>
    <message>
        <source>Sweet and dry</source>
        <translation>Süß und trocken</translation>
    </message>
    <message>
        <source>Sour</source>
        <translation>Sauer</translation>
    </message>
    <message>
        <source>Bitter, salty, mineral</source>
        <translation>Bitter, salzig, mineralisch</translation>
    </message>
    <message>
        <source>Feel and fizz</source>
        <translation>Gefühl und Prickeln</translation>
    </message>
    <message>
        <source>Yeast and ferment</source>
        <translation>Hefe und Gärung</translation>
    </message>
    <message>
        <source>Air, light and age</source>
        <translation>Luft, Licht und Alter</translation>
    </message>
    <message>
        <source>Sulphur</source>
        <translation>Schwefel</translation>
    </message>
    <message>
        <source>Gone off</source>
        <translation>Verdorben</translation>
    </message>
    <message>
        <source>Cellar, cork and foreign things</source>
        <translation>Keller, Kork und Fremdes</translation>
    </message>
    <message>
        <source>Anything else</source>
        <translation>Alles andere</translation>
    </message>
    <message>
        <source>Bread, biscuit, husk: what the grain brought.</source>
        <translation>Brot, Keks, Spelze: was das Getreide mitbrachte.</translation>
    </message>
    <message>
        <source>What heat made: from toast to burnt.</source>
        <translation>Was Hitze machte: von Toast bis verbrannt.</translation>
    </message>
    <message>
        <source>From fruit, hops, or a lively yeast.</source>
        <translation>Von Obst, Hopfen oder einer lebhaften Hefe.</translation>
    </message>
    <message>
        <source>Blossom, rose, honey, wax.</source>
        <translation>Blüte, Rose, Honig, Wachs.</translation>
    </message>
    <message>
        <source>Grass, resin, leaf and stem.</source>
        <translation>Gras, Harz, Blatt und Stiel.</translation>
    </message>
    <message>
        <source>From spice, barrel, fire, or a spicy yeast.</source>
        <translation>Von Gewürz, Fass, Feuer oder einer würzigen Hefe.</translation>
    </message>
    <message>
        <source>How much sugar seems to be left.</source>
        <translation>Wie viel Zucker übrig zu sein scheint.</translation>
    </message>
    <message>
        <source>Which acid, and whether it was meant.</source>
        <translation>Welche Säure, und ob sie gewollt war.</translation>
    </message>
    <message>
        <source>From hops, peel and water.</source>
        <translation>Von Hopfen, Schale und Wasser.</translation>
    </message>
    <message>
        <source>What is felt and not smelled: body, bubbles, burn.</source>
        <translation>Was man fühlt und nicht riecht: Körper, Bläschen, Brennen.</translation>
    </message>
    <message>
        <source>What the yeast left, or left too early.</source>
        <translation>Was die Hefe übrig ließ, oder zu früh zurückließ.</translation>
    </message>
    <message>
        <source>What comes with air, light, heat and months.</source>
        <translation>Was mit Luft, Licht, Wärme und Monaten kommt.</translation>
    </message>
    <message>
        <source>Egg, match, corn, onion: smell early, it fades.</source>
        <translation>Ei, Streichholz, Mais, Zwiebel: riech früh, es vergeht.</translation>
    </message>
    <message>
        <source>What bacteria, wild yeast and mould make. Smell before you sip.</source>
        <translation>Was Bakterien, wilde Hefe und Schimmel machen. Riech, bevor du trinkst.</translation>
    </message>
    <message>
        <source>What does not belong in a drink: damp, metal, plastic, soap.</source>
        <translation>Was nicht in ein Getränk gehört: Feuchtes, Metall, Plastik, Seife.</translation>
    </message>
    <message>
        <source>Your own words that fit nowhere else.</source>
        <translation>Eigene Wörter, die sonst nirgends passen.</translation>
    </message>
    <message>
        <source>“{name}” was added.</source>
        <translation>„{name}“ kam dazu.</translation>
    </message>
    <message>
        <source>“{name}” was changed.</source>
        <translation>„{name}“ wurde geändert.</translation>
    </message>
    <message>
        <source>“{name}” was put away.</source>
        <translation>„{name}“ wurde weggelegt.</translation>
    </message>
    <message>
        <source>“{name}” was brought back.</source>
        <translation>„{name}“ wurde zurückgeholt.</translation>
    </message>
    <message>
        <source>“{name}” was merged.</source>
        <translation>„{name}“ wurde zusammengelegt.</translation>
    </message>
    <message>
        <source>A note on “{name}” was written.</source>
        <translation>Eine Notiz zu „{name}“ wurde geschrieben.</translation>
    </message>
    <message>
        <source>A note on “{name}” was withdrawn.</source>
        <translation>Eine Notiz zu „{name}“ wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>A note on “{name}” was corrected.</source>
        <translation>Eine Notiz zu „{name}“ wurde berichtigt.</translation>
    </message>
    <message>
        <source>Bottles of “{name}” were booked.</source>
        <translation>Flaschen von „{name}“ wurden gebucht.</translation>
    </message>
    <message>
        <source>“{name}” was retired.</source>
        <translation>„{name}“ ging außer Dienst.</translation>
    </message>
    <message>
        <source>{method}: common practice, after no standard of its own.</source>
        <translation>{method}: allgemein üblich, nach keiner eigenen Norm.</translation>
    </message>
    <message>
        <source>{method}: after {standard}, not certified.</source>
        <translation>{method}: nach {standard}, nicht zertifiziert.</translation>
    </message>
    <message>
        <source>The smallest gap that shows: Student’s t over people (paired), each one’s rounds averaged first, two-sided, 8 times in 10. Where some people do not get both cups of a pair, those who do are counted. With several main questions the risk of a false alarm is shared (Holm 1979).</source>
        <translation>Der kleinste Abstand, der sich zeigt: Students t über Leute (gepaart), die Runden jeder Person zuerst gemittelt, zweiseitig, in 8 von 10 Fällen. Wo manche nicht beide Becher eines Paares bekommen, zählen die, die sie haben. Bei mehreren Hauptfragen wird das Risiko eines falschen Alarms geteilt (Holm 1979).</translation>
    </message>
    <message>
        <source>How much people differ comes from your own tastings with them, and from our stated default until there are any.</source>
        <translation>Wie weit Leute sich unterscheiden, kommt aus deinen eigenen Verkostungen mit ihnen, und bis es welche gibt, aus unserem angegebenen Startwert.</translation>
    </message>
    <message>
        <source>Going on or stopping follows Wald’s sequential probability ratio test (Wald 1947; ISO 16820:2019, not certified), looked at after whole rounds and sealed with the plan.</source>
        <translation>Weiter oder aufhören folgt Walds sequenziellem Quotiententest (Wald 1947; ISO 16820:2019, nicht zertifiziert), nach ganzen Runden nachgesehen und mit dem Plan versiegelt.</translation>
    </message>
    <message>
        <source>What the series was begun for: that sitting less the first, by Student’s t over the people who sat at both (paired).</source>
        <translation>Wofür die Reihe begonnen wurde: jener Termin minus der erste, mit Students t über die Leute, die bei beiden saßen (gepaart).</translation>
    </message>
    <message>
        <source>The lines over time: least squares on the means of the sittings. Where people were missing, REML (Patterson and Thompson 1971) with Satterthwaite’s degrees of freedom (1946). The sitting counts, not the cup.</source>
        <translation>Die Linien über die Zeit: kleinste Quadrate auf den Mitteln der Termine. Wo Leute fehlten, REML (Patterson und Thompson 1971) mit Satterthwaites Freiheitsgraden (1946). Der Termin zählt, nicht der Becher.</translation>
    </message>
    <message>
        <source>The lines share the risk of a false alarm (Holm 1979). Within your limit: two one-sided tests (Schuirmann 1987).</source>
        <translation>Die Linien teilen sich das Risiko eines falschen Alarms (Holm 1979). Innerhalb deiner Grenze: zwei einseitige Tests (Schuirmann 1987).</translation>
    </message>
    <message>
        <source>When it was liked best: the peak of a bent line, with its range after Fieller (1954).</source>
        <translation>Wann es am besten gefiel: der Gipfel einer gebogenen Linie, mit seiner Spanne nach Fieller (1954).</translation>
    </message>
    <message>
        <source>Each gap: Student’s t over the people who had both (paired). Within your limit: two one-sided tests (Schuirmann 1987). All gaps of the page share the risk of a false alarm (Holm 1979).</source>
        <translation>Jeder Abstand: Students t über die Leute, die beide hatten (gepaart). Innerhalb deiner Grenze: zwei einseitige Tests (Schuirmann 1987). Alle Abstände der Seite teilen sich das Risiko eines falschen Alarms (Holm 1979).</translation>
    </message>
    <message>
        <source>How you lean: one person against a small sample (Crawford and Howell 1998). People are the unit.</source>
        <translation>Wie du neigst: eine Person gegen eine kleine Stichprobe (Crawford und Howell 1998). Leute sind die Einheit.</translation>
    </message>
    <message>
        <source>What you expected: the mean squared miss (Brier 1950), and how often a count as far off would come, worked out exactly (Poisson 1837).</source>
        <translation>Was du erwartet hast: das mittlere Quadrat des Danebenliegens (Brier 1950), und wie oft eine so weit entfernte Zahl vorkäme, genau ausgerechnet (Poisson 1837).</translation>
    </message>
    <message>
        <source>The fewest tastings and people that are asked for are our own rules.</source>
        <translation>Wie viele Verkostungen und Leute es mindestens braucht, sind unsere eigenen Regeln.</translation>
    </message>
    <message>
        <source>A die decides between two cups, so it serves pairs and preferences only.</source>
        <translation>Ein Würfel entscheidet zwischen zwei Bechern, also taugt er nur für Paare und Vorlieben.</translation>
    </message>
    <message>
        <source>A die for each pair</source>
        <translation>Ein Würfel für jedes Paar</translation>
    </message>
    <message>
        <source>A hidden second cup of one drink needs a key that the program drew: by hand somebody would know which one it is.</source>
        <translation>Ein verborgener zweiter Becher eines Getränks braucht einen Schlüssel, den das Programm gezogen hat: von Hand wüsste jemand, welcher es ist.</translation>
    </message>
    <message>
        <source>A marked cup would come out of one of the lettered bottles and tell which one it is.</source>
        <translation>Ein markierter Becher käme aus einer der Flaschen mit Buchstaben und würde verraten, welche es ist.</translation>
    </message>
    <message>
        <source>A plan that is looked at between rounds needs a key that the program drew.</source>
        <translation>Ein Plan, bei dem zwischen Runden nachgesehen wird, braucht einen Schlüssel, den das Programm gezogen hat.</translation>
    </message>
    <message>
        <source>After the seal none of this can be changed. The seal covers plan, places and codes; which cup holds what is in your hands, and every finding says who read it off.</source>
        <translation>Nach dem Siegel lässt sich nichts davon ändern. Das Siegel umfasst Plan, Plätze und Codes; was in welchen Becher kommt, liegt in euren Händen, und jeder Befund sagt, wer es abgelesen hat.</translation>
    </message>
    <message>
        <source>Alone means one taster.</source>
        <translation>Allein heißt: eine Person verkostet.</translation>
    </message>
    <message>
        <source>Alone nobody comes late, so there are no spare places.</source>
        <translation>Allein kommt niemand zu spät, also gibt es keine Reserveplätze.</translation>
    </message>
    <message>
        <source>Alone, under the cups</source>
        <translation>Allein, unter den Bechern</translation>
    </message>
    <message>
        <source>An opened bottle does not keep until another evening, and its label comes off once.</source>
        <translation>Eine geöffnete Flasche hält nicht bis zu einem anderen Abend, und ihr Etikett kommt nur einmal ab.</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Cannot be read</source>
        <translation>Nicht zu lesen</translation>
    </message>
    <message>
        <source>Close your eyes and move the cups about until you have lost them. Then once more.</source>
        <translation>Schließ die Augen und schieb die Becher herum, bis du sie verloren hast. Dann noch einmal.</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>Cover everything that tells the bottles apart: foil or a sock from the neck down, caps off. Write on the label under the cover what it is, if it does not say so.</source>
        <translation>Verhüll alles, woran sich die Flaschen unterscheiden: Folie oder eine Socke vom Hals abwärts, Kronkorken ab. Schreib auf das Etikett unter der Hülle, was es ist, wenn es das nicht sagt.</translation>
    </message>
    <message>
        <source>Cup {code}: what does the list say was in it?</source>
        <translation>Becher {code}: was war laut Liste darin?</translation>
    </message>
    <message>
        <source>Each cup of round {round} at place {place} is told once: {codes}, and the one set aside where there is one. Nothing was kept. Look at the cups again.</source>
        <translation>Jeder Becher von Runde {round} an Platz {place} wird einmal genannt: {codes}, und der beiseitegestellte, wo es einen gibt. Nichts wurde behalten. Sieh noch einmal auf die Becher.</translation>
    </message>
    <message>
        <source>Each lettered bottle is told once; there are {bottles}. Nothing was kept. Look at the covers again.</source>
        <translation>Jede Flasche mit Buchstaben wird einmal genannt; es gibt {bottles}. Nichts wurde behalten. Sieh noch einmal auf die Hüllen.</translation>
    </message>
    <message>
        <source>Everybody may read this: nobody knows what a letter holds before the covers come off.</source>
        <translation>Das dürfen alle lesen: niemand weiß, was ein Buchstabe enthält, bevor die Hüllen abkommen.</translation>
    </message>
    <message>
        <source>Filled in once a round is locked, cup by cup. What cannot be read stays empty.</source>
        <translation>Ausgefüllt, wenn eine Runde festgelegt ist, Becher für Becher. Was sich nicht lesen lässt, bleibt leer.</translation>
    </message>
    <message>
        <source>First person</source>
        <translation>Erste Person</translation>
    </message>
    <message>
        <source>First sheet: for whoever pours</source>
        <translation>Erstes Blatt: für die Person, die einschenkt</translation>
    </message>
    <message>
        <source>Fold it and keep it on you. This half tells nothing without the other one; they are laid side by side once the table is closed.</source>
        <translation>Falt es und behalt es bei dir. Diese Hälfte sagt nichts ohne die andere; sie werden nebeneinandergelegt, wenn der Tisch geschlossen ist.</translation>
    </message>
    <message>
        <source>Fold it and keep it on you: it is the key. It is typed in once the table is closed.</source>
        <translation>Falt es und behalt es bei dir: es ist der Schlüssel. Es wird eingetippt, wenn der Tisch geschlossen ist.</translation>
    </message>
    <message>
        <source>Fold the list, keep it on you, and leave before anybody tastes. You do not taste, and you speak to nobody about the cups.</source>
        <translation>Falt die Liste, behalt sie bei dir und geh, bevor jemand verkostet. Du verkostest nicht und sprichst mit niemandem über die Becher.</translation>
    </message>
    <message>
        <source>Fold the second sheet and keep it on you. Stand the cups in the order of their codes, as the screen shows them, and call the other one in.</source>
        <translation>Falt das zweite Blatt und behalt es bei dir. Stell die Becher in die Reihenfolge ihrer Codes, wie der Bildschirm sie zeigt, und ruf die andere Person herein.</translation>
    </message>
    <message>
        <source>For each pair say “{one}” and throw the die. One, two or three: it goes into the cup with the code on the left; four, five or six: into the one on the right. {other} goes into the other cup.</source>
        <translation>Sag für jedes Paar „{one}“ und würfle. Eins, zwei oder drei: es kommt in den Becher mit dem Code links; vier, fünf oder sechs: in den rechts. {other} kommt in den anderen Becher.</translation>
    </message>
    <message>
        <source>For pairs: a die says which of two cups gets which drink. Whoever pours keeps the list and does not taste; it may be a maker.</source>
        <translation>Für Paare: ein Würfel sagt, welcher von zwei Bechern welches Getränk bekommt. Wer einschenkt, behält die Liste und verkostet nicht; das darf auch sein, wer es gemacht hat.</translation>
    </message>
    <message>
        <source>From which bottle each cup is poured</source>
        <translation>Aus welcher Flasche jeder Becher eingeschenkt wird</translation>
    </message>
    <message>
        <source>Half a key each needs two people at least.</source>
        <translation>Für je einen halben Schlüssel braucht es mindestens zwei Leute.</translation>
    </message>
    <message>
        <source>Hands cannot hide this plan.</source>
        <translation>Hände können diesen Plan nicht verbergen.</translation>
    </message>
    <message>
        <source>Hands cannot hide this way of asking: its cups must be drawn. Triangle, tetrad, duo-trio, pair, 3-AFC and preference can be hidden by hand.</source>
        <translation>Hände können diese Art zu fragen nicht verbergen: ihre Becher müssen gelost werden. Dreieckstest, Tetradentest, Duo-Trio, Paar, 3-AFC und Vorliebe lassen sich von Hand verbergen.</translation>
    </message>
    <message>
        <source>Hands hid the key, and it has not been read off.</source>
        <translation>Hände haben den Schlüssel verborgen, und er wurde nicht abgelesen.</translation>
    </message>
    <message>
        <source>Hands hid the key; what stood in the cups was read off after the answers were locked, {who}. The seal vouches for plan and codes, not for what was read.</source>
        <translation>Hände haben den Schlüssel verborgen; was in den Bechern stand, wurde abgelesen, nachdem die Antworten festgelegt waren, {who}. Das Siegel steht für Plan und Codes ein, nicht für das, was abgelesen wurde.</translation>
    </message>
    <message>
        <source>Hands hide the key of this session, so there is no sheet to pour by. Nothing was opened. Follow the steps of its routine.</source>
        <translation>Hände verbergen den Schlüssel dieser Verkostung, also gibt es kein Blatt zum Einschenken. Nichts wurde geöffnet. Folge den Schritten des Ablaufs.</translation>
    </message>
    <message>
        <source>Hands hide two drinks, not three.</source>
        <translation>Hände verbergen zwei Getränke, nicht drei.</translation>
    </message>
    <message>
        <source>Hidden as whole bottles: labels covered, mixed up, lettered; the covers came off after the close.</source>
        <translation>Als ganze Flaschen verborgen: Etiketten verhüllt, gemischt, mit Buchstaben versehen; die Hüllen kamen nach dem Schließen ab.</translation>
    </message>
    <message>
        <source>Hidden by a die: it said which cup of each pair got which drink. Whoever poured kept the list and did not taste.</source>
        <translation>Von einem Würfel verborgen: er sagte, welcher Becher jedes Paares welches Getränk bekam. Wer einschenkte, behielt die Liste und verkostete nicht.</translation>
    </message>
    <message>
        <source>Hidden by the taster: four cups for each triangle, two and two, mixed up unseen, one set aside unseen and turned over last.</source>
        <translation>Von der Person selbst verborgen, die verkostete: vier Becher für jeden Dreieckstest, zwei und zwei, ungesehen gemischt, einer ungesehen beiseitegestellt und zuletzt umgedreht.</translation>
    </message>
    <message>
        <source>Hidden by the taster: what was in a cup stood under it, and the cups were mixed up unseen.</source>
        <translation>Von der Person selbst verborgen, die verkostete: was in einem Becher war, stand darunter, und die Becher wurden ungesehen gemischt.</translation>
    </message>
    <message>
        <source>Hidden by two people: one poured and marked the cups, the other put the codes on and took the marks off; each kept half of the key.</source>
        <translation>Von zwei Leuten verborgen: eine Person schenkte ein und markierte die Becher, die andere klebte die Codes auf und nahm die Marken ab; jede behielt den halben Schlüssel.</translation>
    </message>
    <message>
        <source>Labels are covered, the bottles mixed up and lettered; at the end the covers come off. For pairs, preferences and score sheets.</source>
        <translation>Etiketten werden verhüllt, die Flaschen gemischt und mit Buchstaben versehen; am Ende kommen die Hüllen ab. Für Paare, Vorlieben und Bewertungsbögen.</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marke</translation>
    </message>
    <message>
        <source>Mix up the cups of each place, leave the room, and send the other one in. Do not speak of the cups.</source>
        <translation>Misch die Becher jedes Platzes, geh aus dem Raum und schick die andere Person hinein. Sprich nicht über die Becher.</translation>
    </message>
    <message>
        <source>Next: hand this over to {name}, who throws the die and pours. Everybody else leaves the room.</source>
        <translation>Als Nächstes: gib das an {name} zum Würfeln und Einschenken. Alle anderen verlassen den Raum.</translation>
    </message>
    <message>
        <source>Next: hide the cups, step by step. The program has drawn the codes and nothing else.</source>
        <translation>Als Nächstes: verbirg die Becher, Schritt für Schritt. Das Programm hat die Codes gelost und sonst nichts.</translation>
    </message>
    <message>
        <source>Nobody pours by a sheet in this routine, so no pourer can be named.</source>
        <translation>In diesem Ablauf schenkt niemand nach einem Blatt ein, also lässt sich niemand dafür benennen.</translation>
    </message>
    <message>
        <source>Of the {n} cups of a round one is set aside and not tasted; it is counted in, for it may be drunk in the end.</source>
        <translation>Von den {n} Bechern einer Runde wird einer beiseitegestellt und nicht verkostet; er ist mitgezählt, denn am Ende wird er vielleicht getrunken.</translation>
    </message>
    <message>
        <source>Once the round is locked, come back here: the cups are turned over one by one, the one set aside last.</source>
        <translation>Ist die Runde festgelegt, komm hierher zurück: die Becher werden einer nach dem anderen umgedreht, der beiseitegestellte zuletzt.</translation>
    </message>
    <message>
        <source>Once the table is closed, both sheets are laid side by side and typed in here.</source>
        <translation>Ist der Tisch geschlossen, werden beide Blätter nebeneinandergelegt und hier eingetippt.</translation>
    </message>
    <message>
        <source>Once the table is closed, the covers come off and each letter is typed in here.</source>
        <translation>Ist der Tisch geschlossen, kommen die Hüllen ab, und jeder Buchstabe wird hier eingetippt.</translation>
    </message>
    <message>
        <source>Once the table is closed, the list is typed in here.</source>
        <translation>Ist der Tisch geschlossen, wird die Liste hier eingetippt.</translation>
    </message>
    <message>
        <source>One bottle of each drink has to last for everybody: a second one under the same letter would tell.</source>
        <translation>Eine Flasche von jedem Getränk muss für alle reichen: eine zweite unter demselben Buchstaben würde es verraten.</translation>
    </message>
    <message>
        <source>One person tastes alone and hides the cups too: the answers speak of that person only.</source>
        <translation>Eine Person verkostet allein und verbirgt auch die Becher: die Antworten sprechen nur von ihr.</translation>
    </message>
    <message>
        <source>One person: what is in a cup stands under it, you mix them up unseen, and turn them over once your answer is locked.</source>
        <translation>Eine Person: was in einem Becher ist, steht darunter, du mischst sie ungesehen und drehst sie um, wenn deine Antwort festgelegt ist.</translation>
    </message>
    <message>
        <source>One pours, the other puts the codes on, and both taste: each has half of the key, and one half alone tells nothing.</source>
        <translation>Eine Person schenkt ein, die andere klebt die Codes auf, und beide verkosten: jede hat den halben Schlüssel, und eine Hälfte allein sagt nichts.</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Pour one more cup of {marked} for each place: it stays open and is called the marked one.</source>
        <translation>Schenk für jeden Platz einen weiteren Becher {marked} ein: er bleibt offen und heißt der markierte.</translation>
    </message>
    <message>
        <source>Pour one more cup of {marked}, mark it so that you see it, and stand it to the left: it is the open one.</source>
        <translation>Schenk einen weiteren Becher {marked} ein, kennzeichne ihn so, dass du es siehst, und stell ihn nach links: es ist der offene.</translation>
    </message>
    <message>
        <source>Put the codes of each place on its cups, whichever you like, and write on the second sheet which mark got which code. Then take the marks off.</source>
        <translation>Kleb die Codes jedes Platzes auf seine Becher, wie du magst, und schreib auf das zweite Blatt, welche Marke welchen Code bekam. Dann nimm die Marken ab.</translation>
    </message>
    <message>
        <source>Put the codes of this round on the cups as they stand now, from left to right, on the outside.</source>
        <translation>Kleb die Codes dieser Runde außen auf die Becher, wie sie jetzt stehen, von links nach rechts.</translation>
    </message>
    <message>
        <source>Round {round} at place {place} has not been read off. Nothing was opened. Read it off, or set that round aside; it will be counted as set aside.</source>
        <translation>Runde {round} an Platz {place} wurde noch nicht abgelesen. Nichts wurde geöffnet. Lies sie ab, oder stell diese Runde beiseite; sie zählt dann als beiseitegestellt.</translation>
    </message>
    <message>
        <source>Round {round} at place {place} is not locked yet. Nothing was read off. Taste and lock first.</source>
        <translation>Runde {round} an Platz {place} ist noch nicht festgelegt. Nichts wurde abgelesen. Verkoste und leg zuerst fest.</translation>
    </message>
    <message>
        <source>Round {round} at place {place} is set aside and counted so: {why}.</source>
        <translation>Runde {round} an Platz {place} ist beiseitegestellt und wird so gezählt: {why}.</translation>
    </message>
    <message>
        <source>Round {round} at place {place} was read off already. What was read stays. If it was wrong, set that round aside; it will be counted as set aside.</source>
        <translation>Runde {round} an Platz {place} wurde schon abgelesen. Was gelesen wurde, bleibt. Wenn es falsch war, stell diese Runde beiseite; sie zählt dann als beiseitegestellt.</translation>
    </message>
    <message>
        <source>Second person</source>
        <translation>Zweite Person</translation>
    </message>
    <message>
        <source>Second sheet: for whoever puts the codes on</source>
        <translation>Zweites Blatt: für die Person, die die Codes aufklebt</translation>
    </message>
    <message>
        <source>Somebody mixes up the {n} bottles while nobody looks, then somebody else once more.</source>
        <translation>Jemand mischt die {n} Flaschen, während niemand hinsieht, dann jemand anderes noch einmal.</translation>
    </message>
    <message>
        <source>Somebody pours by a sheet</source>
        <translation>Jemand schenkt nach einem Blatt ein</translation>
    </message>
    <message>
        <source>Somebody who does not taste has to throw the die and pour.</source>
        <translation>Jemand, der nicht verkostet, muss würfeln und einschenken.</translation>
    </message>
    <message>
        <source>Take one cup of each place away, whichever you like, and set it aside. Write its mark on the second sheet, under “set aside”. It is not tasted.</source>
        <translation>Nimm von jedem Platz einen Becher weg, welchen du magst, und stell ihn beiseite. Schreib seine Marke auf das zweite Blatt, unter „beiseitegestellt“. Er wird nicht verkostet.</translation>
    </message>
    <message>
        <source>Take {cups} that nobody can see into and nobody can tell apart, and one small slip of paper for each.</source>
        <translation>Nimm {cups}, in die niemand hineinsieht und die niemand unterscheiden kann, und einen kleinen Zettel für jeden.</translation>
    </message>
    <message>
        <source>The cup that was set aside: what was in it?</source>
        <translation>Der beiseitegestellte Becher: was war darin?</translation>
    </message>
    <message>
        <source>The first sheet has no mark “{mark}” for round {round} at place {place}. Nothing was kept. Lay both sheets side by side and look again.</source>
        <translation>Das erste Blatt hat keine Marke „{mark}“ für Runde {round} an Platz {place}. Nichts wurde behalten. Leg beide Blätter nebeneinander und sieh noch einmal hin.</translation>
    </message>
    <message>
        <source>The list: which cup got what</source>
        <translation>Die Liste: welcher Becher was bekam</translation>
    </message>
    <message>
        <source>The marked cup stands open, so say which drink it holds.</source>
        <translation>Der markierte Becher steht offen, also sag, welches Getränk darin ist.</translation>
    </message>
    <message>
        <source>The program draws which cup holds what; somebody who made none of it and does not taste pours by the sheet.</source>
        <translation>Das Programm lost aus, was in welchen Becher kommt; jemand, der nichts davon gemacht hat und nicht verkostet, schenkt nach dem Blatt ein.</translation>
    </message>
    <message>
        <source>The program drew the key of this session, so nothing is read off. Nothing was changed. Open the key when the table is closed.</source>
        <translation>Das Programm hat den Schlüssel dieser Verkostung gezogen, also wird nichts abgelesen. Nichts wurde geändert. Öffne den Schlüssel, wenn der Tisch geschlossen ist.</translation>
    </message>
    <message>
        <source>The table is still open. Nothing was read off. Close it first: nobody may learn what is in a cup while somebody tastes.</source>
        <translation>Der Tisch ist noch offen. Nichts wurde abgelesen. Schließ ihn zuerst: niemand darf erfahren, was in einem Becher ist, solange jemand verkostet.</translation>
    </message>
    <message>
        <source>Then everybody tastes. A cup that is spilled sets its round aside at that place: it cannot be poured again unseen.</source>
        <translation>Dann verkosten alle. Wird ein Becher verschüttet, ist seine Runde an dem Platz beiseitegestellt: er lässt sich nicht ungesehen neu einschenken.</translation>
    </message>
    <message>
        <source>Then everybody tastes. Nobody lifts a cover before the table is closed.</source>
        <translation>Dann verkosten alle. Niemand hebt eine Hülle an, bevor der Tisch geschlossen ist.</translation>
    </message>
    <message>
        <source>Then taste and lock. A cup that is spilled sets the round aside: it cannot be poured again unseen.</source>
        <translation>Dann verkoste und leg fest. Wird ein Becher verschüttet, ist die Runde beiseitegestellt: er lässt sich nicht ungesehen neu einschenken.</translation>
    </message>
    <message>
        <source>Then taste and lock. Do this anew for each round; a cup that is spilled sets its round aside.</source>
        <translation>Dann verkoste und leg fest. Mach das für jede Runde neu; wird ein Becher verschüttet, ist seine Runde beiseitegestellt.</translation>
    </message>
    <message>
        <source>Turn cup {code} over: what is under it?</source>
        <translation>Dreh Becher {code} um: was ist darunter?</translation>
    </message>
    <message>
        <source>Turn over the cup that you set aside: what is under it?</source>
        <translation>Dreh den Becher um, den du beiseitegestellt hast: was ist darunter?</translation>
    </message>
    <message>
        <source>Two people, half the key each</source>
        <translation>Zwei Leute, je der halbe Schlüssel</translation>
    </message>
    <message>
        <source>What stood under the cups of round {round} at place {place} was read off, {who}.</source>
        <translation>Was unter den Bechern von Runde {round} an Platz {place} stand, wurde abgelesen, {who}.</translation>
    </message>
    <message>
        <source>What was read off under the cups is as it was read, and adds up wherever it counts.</source>
        <translation>Was unter den Bechern abgelesen wurde, ist so, wie es gelesen wurde, und geht überall auf, wo es zählt.</translation>
    </message>
    <message>
        <source>What was read off under the cups was altered, or does not add up where it counts.</source>
        <translation>Was unter den Bechern abgelesen wurde, wurde verändert oder geht nicht auf, wo es zählt.</translation>
    </message>
    <message>
        <source>What was under the covers</source>
        <translation>Was unter den Hüllen war</translation>
    </message>
    <message>
        <source>What was under the cups</source>
        <translation>Was unter den Bechern war</translation>
    </message>
    <message>
        <source>Whoever pours</source>
        <translation>Wer einschenkt</translation>
    </message>
    <message>
        <source>Whole bottles serve pairs, preferences and score sheets only: a bottle that is poured twice into one flight would show itself.</source>
        <translation>Ganze Flaschen taugen nur für Paare, Vorlieben und Bewertungsbögen: eine Flasche, aus der zweimal in einen Satz eingeschenkt wird, würde sich verraten.</translation>
    </message>
    <message>
        <source>Whole bottles, labels covered</source>
        <translation>Ganze Flaschen, Etiketten verhüllt</translation>
    </message>
    <message>
        <source>With your eyes closed, take one of the cups and set it aside. It gets no code, is not tasted, and is turned over last.</source>
        <translation>Nimm mit geschlossenen Augen einen der Becher und stell ihn beiseite. Er bekommt keinen Code, wird nicht verkostet und zuletzt umgedreht.</translation>
    </message>
    <message>
        <source>Write a letter on each cover, from left to right: A, B and so on.</source>
        <translation>Schreib auf jede Hülle einen Buchstaben, von links nach rechts: A, B und so weiter.</translation>
    </message>
    <message>
        <source>Write on the first sheet which mark got which drink, place by place. Fold it and keep it on you.</source>
        <translation>Schreib auf das erste Blatt, welche Marke welches Getränk bekam, Platz für Platz. Falt es und behalt es bei dir.</translation>
    </message>
    <message>
        <source>Write on the slips what will be in the cups, {poured}, and stick one under each cup, writing inwards.</source>
        <translation>Schreib auf die Zettel, was in den Bechern sein wird ({poured}), und kleb unter jeden Becher einen, die Schrift nach innen.</translation>
    </message>
    <message>
        <source>You are in the room by yourself. For each place take {cups} that look alike, and put a mark on each: A, B and so on, on a slip that comes off.</source>
        <translation>Du bist allein im Raum. Nimm für jeden Platz {cups}, die einander ähneln, und gib jedem eine Marke: A, B und so weiter, auf einem Zettel, der sich ablösen lässt.</translation>
    </message>
    <message>
        <source>You are in the room by yourself. Put the codes on the cups, two for each place, and take a die and the list.</source>
        <translation>Du bist allein im Raum. Kleb die Codes auf die Becher, zwei für jeden Platz, und nimm einen Würfel und die Liste.</translation>
    </message>
    <message>
        <source>by somebody who neither poured nor tasted</source>
        <translation>von jemandem, der weder eingeschenkt noch verkostet hat</translation>
    </message>
    <message>
        <source>by whoever poured</source>
        <translation>von jemandem, der eingeschenkt hat</translation>
    </message>
    <message>
        <source>by whoever tasted</source>
        <translation>von jemandem, der verkostet hat</translation>
    </message>
    <message>
        <source>drink</source>
        <translation>Getränk</translation>
    </message>
    <message>
        <source>off two people&apos;s sheets, half of it on each</source>
        <translation>von den Blättern zweier Leute, auf jedem die Hälfte davon</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>beiseitegestellt</translation>
    </message>
    <message>
        <source>the bottle</source>
        <translation>die Flasche</translation>
    </message>
    <message>
        <source>the mark</source>
        <translation>die Marke</translation>
    </message>
    <message>
        <source>the routine</source>
        <translation>der Ablauf</translation>
    </message>
    <message>
        <source>{cups} of {drink}</source>
        <translation>{cups} {drink}</translation>
    </message>
    <message>
        <source>{n}. {text}</source>
        <translation>{n}. {text}</translation>
    </message>
    <message>
        <source>{why} The plan is kept. Change that, or choose another routine.</source>
        <translation>{why} Der Plan bleibt. Änder das, oder nimm einen anderen Ablauf.</translation>
    </message>
    <message>
        <source>Once two places had each other&apos;s cups before them.</source>
        <translation>Einmal hatten zwei Plätze die Becher des jeweils anderen vor sich.</translation>
    </message>
    <message>
        <source>{n} times two places had each other&apos;s cups before them.</source>
        <translation>{n}-mal hatten zwei Plätze die Becher des jeweils anderen vor sich.</translation>
    </message>
    <message>
        <source>Once the wrong person sat down and got up again, before anything was locked there.</source>
        <translation>Einmal setzte sich die falsche Person und stand wieder auf, bevor dort etwas festgelegt war.</translation>
    </message>
    <message>
        <source>{n} times the wrong person sat down and got up again, before anything was locked there.</source>
        <translation>{n}-mal setzte sich die falsche Person und stand wieder auf, bevor dort etwas festgelegt war.</translation>
    </message>
    <message>
        <source>The table was closed while 1 person had not locked everything.</source>
        <translation>Der Tisch wurde geschlossen, als 1 Person noch nicht alles festgelegt hatte.</translation>
    </message>
    <message>
        <source>The table was closed while {n} people had not locked everything.</source>
        <translation>Der Tisch wurde geschlossen, als {n} Leute noch nicht alles festgelegt hatten.</translation>
    </message>
    <message>
        <source>Once the computer&apos;s clock ran backwards. The order is that of the record, not of the clock.</source>
        <translation>Einmal lief die Uhr des Rechners rückwärts. Die Reihenfolge ist die des Protokolls, nicht die der Uhr.</translation>
    </message>
    <message>
        <source>{n} times the computer&apos;s clock ran backwards. The order is that of the record, not of the clock.</source>
        <translation>{n}-mal lief die Uhr des Rechners rückwärts. Die Reihenfolge ist die des Protokolls, nicht die der Uhr.</translation>
    </message>
    <message>
        <source>Dark or opaque cups, or so little light that the colour does not show.</source>
        <translation>Dunkle oder undurchsichtige Becher, oder so wenig Licht, dass die Farbe nicht zu sehen ist.</translation>
    </message>
    <message>
        <source>Chill the bottles upright for 24 to 72 hours, pour off what is clear, and take dark cups.</source>
        <translation>Kühl die Flaschen 24 bis 72 Stunden aufrecht, schenk ab, was klar ist, und nimm dunkle Becher.</translation>
    </message>
    <message>
        <source>A lid on every cup, or time for the foam to fall before the cups are carried in.</source>
        <translation>Ein Deckel auf jeden Becher, oder Zeit, bis der Schaum gefallen ist, bevor die Becher hereinkommen.</translation>
    </message>
    <message>
        <source>Fizz cannot be hidden in the mouth: degas all of them alike, or match them. Open bottles under pressure slowly, over a sink.</source>
        <translation>Kohlensäure lässt sich im Mund nicht verstecken: entgas alle gleichermaßen, oder gleich sie an. Öffne Flaschen unter Druck langsam, über einem Becken.</translation>
    </message>
    <message>
        <source>Let all bottles stand together until they are alike: one temperature for all cups.</source>
        <translation>Lass alle Flaschen beisammenstehen, bis sie dieselbe Temperatur haben: eine Temperatur für alle Becher.</translation>
    </message>
    <message>
        <source>Pour every cup by measure, to one line.</source>
        <translation>Schenk jeden Becher abgemessen ein, bis zu einer Linie.</translation>
    </message>
    <message>
        <source>Chill the bottles upright for 24 to 72 hours, and leave the last 1 to 2 cm in the bottle.</source>
        <translation>Kühl die Flaschen 24 bis 72 Stunden aufrecht, und lass die letzten 1 bis 2 cm in der Flasche.</translation>
    </message>
    <message>
        <source>One kind of cup for all, washed alike, with the code in one spot.</source>
        <translation>Eine Sorte Becher für alle, auf dieselbe Art gespült, der Code an einer Stelle.</translation>
    </message>
    <message>
        <source>colour (dark cups or little light)</source>
        <translation>Farbe (dunkle Becher oder wenig Licht)</translation>
    </message>
    <message>
        <source>haze (chilled upright, poured off clear, dark cups)</source>
        <translation>Trübung (aufrecht gekühlt, klar abgegossen, dunkle Becher)</translation>
    </message>
    <message>
        <source>foam (lids, or time for it to fall)</source>
        <translation>Schaum (Deckel, oder Zeit zum Fallen)</translation>
    </message>
    <message>
        <source>fizz (all degassed alike, or matched)</source>
        <translation>Kohlensäure (alle gleichermaßen entgast, oder angeglichen)</translation>
    </message>
    <message>
        <source>temperature (brought to one)</source>
        <translation>Temperatur (auf eine gebracht)</translation>
    </message>
    <message>
        <source>level (poured by measure)</source>
        <translation>Füllhöhe (abgemessen eingeschenkt)</translation>
    </message>
    <message>
        <source>sediment (left in the bottle)</source>
        <translation>Bodensatz (in der Flasche gelassen)</translation>
    </message>
    <message>
        <source>vessel (cups of one kind)</source>
        <translation>Gefäß (Becher einer Sorte)</translation>
    </message>
    <message>
        <source>foam</source>
        <translation>Schaum</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>level in the cup</source>
        <translation>Füllhöhe im Becher</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>Gefäß</translation>
    </message>
    <message>
        <source>had before</source>
        <translation>schon getrunken</translation>
    </message>
    <message>
        <source>Hold two cups to the light.</source>
        <translation>Halt zwei Becher gegen das Licht.</translation>
    </message>
    <message>
        <source>Is one cloudier than the other?</source>
        <translation>Ist einer trüber als der andere?</translation>
    </message>
    <message>
        <source>Does one pour with more of it, or keep it longer?</source>
        <translation>Schäumt eines beim Einschenken mehr, oder hält der Schaum länger?</translation>
    </message>
    <message>
        <source>Does one hiss, bead or prickle more?</source>
        <translation>Zischt, perlt oder prickelt eines mehr?</translation>
    </message>
    <message>
        <source>Did all of them stand in one place, for as long?</source>
        <translation>Standen alle am selben Ort, ebenso lange?</translation>
    </message>
    <message>
        <source>Will every cup be filled to one line?</source>
        <translation>Wird jeder Becher bis zu einer Linie gefüllt?</translation>
    </message>
    <message>
        <source>Is there something on the bottom of a bottle?</source>
        <translation>Ist etwas auf dem Boden einer Flasche?</translation>
    </message>
    <message>
        <source>Are the cups of one kind, and unmarked?</source>
        <translation>Sind die Becher von einer Sorte und ohne Kennzeichen?</translation>
    </message>
    <message>
        <source>Has anybody at the table drunk one of them before?</source>
        <translation>Hat jemand am Tisch eines davon schon getrunken?</translation>
    </message>
    <message>
        <source>Mend it</source>
        <translation>Beheben</translation>
    </message>
    <message>
        <source>Ask that instead</source>
        <translation>Stattdessen danach fragen</translation>
    </message>
    <message>
        <source>Go on, by any means</source>
        <translation>Weiter, mit allen Mitteln</translation>
    </message>
    <message>
        <source>The sheet then asks how {more} each cup is.</source>
        <translation>Der Bogen fragt dann nach jedem Becher: wie viel davon ({more})?</translation>
    </message>
    <message>
        <source>The question then is whether one of them is more {more}. Whoever goes by that answers what was asked.</source>
        <translation>Die Frage ist dann, ob eines mehr davon hat ({more}). Wer danach geht, beantwortet, was gefragt wurde.</translation>
    </message>
    <message>
        <source>Whoever had it may know it again, and what comes out says so. The other way is to leave that person out.</source>
        <translation>Wer es schon hatte, erkennt es vielleicht wieder, und was herauskommt, sagt das. Der andere Weg ist, diese Person auszulassen.</translation>
    </message>
    <message>
        <source>What comes out then says that the scores may owe something to it.</source>
        <translation>Was herauskommt, sagt dann, dass die Punkte zum Teil daher kommen können.</translation>
    </message>
    <message>
        <source>The verdict then says: by anything, look and fizz included.</source>
        <translation>Das Urteil sagt dann: mit allen Mitteln, Aussehen und Prickeln eingeschlossen.</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>foamy</source>
        <translation>schaumig</translation>
    </message>
    <message>
        <source>fizzy</source>
        <translation>prickelnd</translation>
    </message>
    <message>
        <source>Before the seal nothing was found that gives the drinks away.</source>
        <translation>Vor dem Siegel wurde nichts gefunden, was die Getränke verrät.</translation>
    </message>
    <message>
        <source>To be mended before pouring, as settled before the seal: {list}.</source>
        <translation>Vor dem Einschenken zu beheben, wie vor dem Siegel festgelegt: {list}.</translation>
    </message>
    <message>
        <source>Asked about rather than hidden: {list}.</source>
        <translation>Danach gefragt statt verborgen: {list}.</translation>
    </message>
    <message>
        <source>Different, and gone on with by any means, as settled before the seal: {list}.</source>
        <translation>Verschieden und mit allen Mitteln weitergemacht, wie vor dem Siegel festgelegt: {list}.</translation>
    </message>
    <message>
        <source>Somebody at the table had one of the drinks before, and may know it again. That was settled before the seal.</source>
        <translation>Jemand am Tisch hatte eines der Getränke schon und erkennt es vielleicht wieder. Das wurde vor dem Siegel festgelegt.</translation>
    </message>
    <message>
        <source>It was not put on record before the seal whether anything but the taste gives the drinks away.</source>
        <translation>Vor dem Siegel wurde nicht festgehalten, ob etwas außer dem Geschmack die Getränke verrät.</translation>
    </message>
    <message>
        <source>{finding}, look and fizz included.</source>
        <translation>{finding}, Aussehen und Prickeln eingeschlossen.</translation>
    </message>
    <message>
        <source>{finding}, by anything, look and fizz included.</source>
        <translation>{finding}, mit allen Mitteln, Aussehen und Prickeln eingeschlossen.</translation>
    </message>
    <message>
        <source>Pour {volume} into each cup, the drink that its slip says, all to the same height.</source>
        <translation>Schenk {volume} in jeden Becher, das Getränk, das sein Zettel nennt, alle gleich hoch.</translation>
    </message>
    <message>
        <source>Pour {poured} for each place, {volume} in each cup. You choose which mark gets which.</source>
        <translation>Schenk {poured} für jeden Platz ein, {volume} in jeden Becher. Du wählst, welche Marke welches bekommt.</translation>
    </message>
    <message>
        <source>Pour {volume} into each, and write on the list which code got which before you throw again. Never throw twice for one pair.</source>
        <translation>Schenk in jeden {volume}, und schreib auf die Liste, welcher Code welches bekam, bevor du wieder würfelst. Würfle nie zweimal für ein Paar.</translation>
    </message>
    <message>
        <source>Pour {volume} into each cup from the bottle whose letter stands beside its code. Everybody may see that list: nobody knows what a letter holds.</source>
        <translation>Schenk {volume} in jeden Becher aus der Flasche, deren Buchstabe neben seinem Code steht. Alle dürfen diese Liste sehen: niemand weiß, was ein Buchstabe enthält.</translation>
    </message>
    <message>
        <source>Places {places} had each other&apos;s cups before them in round {round}.</source>
        <translation>Die Plätze {places} hatten in Runde {round} die Becher des jeweils anderen vor sich.</translation>
    </message>
    <message>
        <source>(By the clock this came before the entry above it.)</source>
        <translation>(Nach der Uhr kam das vor dem Eintrag darüber.)</translation>
    </message>
    <message>
        <source>A directional pair: two cups, one of each drink. “{more}”: which one has more of it?</source>
        <translation>Ein gerichteter Paarvergleich: zwei Becher, einer von jedem Getränk. „{more}“: welcher hat mehr davon?</translation>
    </message>
    <message>
        <source>A 3-AFC: three cups, one of the drink that is expected to have more of it and two of the other. “{more}”: which one has the most of it?</source>
        <translation>Ein 3-AFC: drei Becher, einer von dem Getränk, bei dem mehr davon erwartet wird, und zwei vom anderen. „{more}“: welcher hat am meisten davon?</translation>
    </message>
    <message>
        <source>“{more}”: which one has more of it?</source>
        <translation>„{more}“: welcher hat mehr davon?</translation>
    </message>
    <message>
        <source>“{more}”: which one has the most of it?</source>
        <translation>„{more}“: welcher hat am meisten davon?</translation>
    </message>
    <message>
        <source>Place {place} is free again. If anything was drunk there, have those cups poured anew before somebody sits down.</source>
        <translation>Platz {place} ist wieder frei. Wenn dort etwas getrunken wurde, lass diese Becher neu einschenken, bevor sich jemand hinsetzt.</translation>
    </message>
    <message>
        <source>Everything at place {place} was set aside already. The place stays as it is.</source>
        <translation>An Platz {place} war schon alles beiseitegestellt. Der Platz bleibt, wie er ist.</translation>
    </message>
    <message>
        <source>1 round at place {place} was locked by the wrong person and does not count. The place stays as it is; whoever should have sat there takes a spare place.</source>
        <translation>1 Runde an Platz {place} wurde von der falschen Person festgelegt und zählt nicht. Der Platz bleibt, wie er ist; wer dort sitzen sollte, nimmt einen Reserveplatz.</translation>
    </message>
    <message>
        <source>{n} rounds at place {place} were locked by the wrong person and do not count. The place stays as it is; whoever should have sat there takes a spare place.</source>
        <translation>{n} Runden an Platz {place} wurden von der falschen Person festgelegt und zählen nicht. Der Platz bleibt, wie er ist; wer dort sitzen sollte, nimmt einen Reserveplatz.</translation>
    </message>
    <message>
        <source>Put the mats of places {places} back. Both begin these cups again.</source>
        <translation>Leg die Matten der Plätze {places} zurück. Beide fangen mit diesen Bechern neu an.</translation>
    </message>
    <message>
        <source>Put the mats back. Place {places} begins these cups again; what was drunk of them is poured anew.</source>
        <translation>Leg die Matten zurück. Platz {places} fängt mit diesen Bechern neu an; was davon getrunken wurde, wird neu eingeschenkt.</translation>
    </message>
    <message>
        <source>What place {places} had locked does not count.</source>
        <translation>Was Platz {places} festgelegt hatte, zählt nicht.</translation>
    </message>
    <message>
        <source>What places {places} had locked does not count.</source>
        <translation>Was die Plätze {places} festgelegt hatten, zählt nicht.</translation>
    </message>
    <message>
        <source>All answers of {who} in this session are destroyed at once, and the place is left. It cannot be undone. Nobody asks why.</source>
        <translation>Alle Antworten von {who} in dieser Verkostung werden sofort vernichtet, und der Platz ist verlassen. Das lässt sich nicht rückgängig machen. Niemand fragt, warum.</translation>
    </message>
    <message>
        <source>Evening {evening}, round {round}: {drink}</source>
        <translation>Abend {evening}, Runde {round}: {drink}</translation>
    </message>
    <message>
        <source>Places {first} to {last}: {drink}</source>
        <translation>Plätze {first} bis {last}: {drink}</translation>
    </message>
    <message>
        <source>Evening {evening}, round {round}, places {first} to {last}: {drink}</source>
        <translation>Abend {evening}, Runde {round}, Plätze {first} bis {last}: {drink}</translation>
    </message>
    <message>
        <source>Round {round}, places {first} to {last}: {drink}</source>
        <translation>Runde {round}, Plätze {first} bis {last}: {drink}</translation>
    </message>
    <message>
        <source>Place {place} was named twice. Nothing was changed. Name the two places that had each other&apos;s cups.</source>
        <translation>Platz {place} wurde zweimal genannt. Nichts wurde geändert. Nenn die beiden Plätze, die die Becher des jeweils anderen hatten.</translation>
    </message>
    <message>
        <source>The table is closed, so answers are not taken back here any more. Everything is kept. Whoever gave a name or a nickname can be forgotten by the brewer, on the page of people; what was given without a name can no longer be found.</source>
        <translation>Der Tisch ist geschlossen, also werden hier keine Antworten mehr zurückgenommen. Alles bleibt. Wer einen Namen oder Spitznamen angegeben hat, kann auf der Seite der Leute vergessen werden; was ohne Namen gegeben wurde, lässt sich nicht mehr finden.</translation>
    </message>
    <message>
        <source>Nobody has looked yet whether anything but the taste tells the drinks apart. The plan is kept. Go through the nine checks of the give-aways.</source>
        <translation>Noch hat niemand nachgesehen, ob etwas außer dem Geschmack die Getränke verrät. Der Plan bleibt. Geh die neun Prüfungen durch.</translation>
    </message>
    <message>
        <source>{check}: what was chosen for it does not go with this plan. The plan is kept. Choose another way out among the give-aways.</source>
        <translation>{check}: was dafür gewählt wurde, passt nicht zu diesem Plan. Der Plan bleibt. Wähl dort einen anderen Ausweg.</translation>
    </message>
    <message>
        <source>One of the checks</source>
        <translation>Eine der Prüfungen</translation>
    </message>
    <message>
        <source>the give-aways</source>
        <translation>was verrät</translation>
    </message>
    <message>
        <source>Without what was told by look or fizz: {counted}. That alone would read “{verdict}”; it was settled before that look and fizz may tell.</source>
        <translation>Ohne das, was an Aussehen oder Prickeln erkannt wurde: {counted}. Das allein hieße „{verdict}“; vorher wurde festgelegt, dass Aussehen und Prickeln es verraten dürfen.</translation>
    </message>
    <message>
        <source>Asked in one direction only: does {lot} have more of “{more}”?</source>
        <translation>Nur in einer Richtung gefragt: hat {lot} mehr von „{more}“?</translation>
    </message>
    <message>
        <source>{volume} in each cup, {cups} a flight, each under its own code. The codes were drawn; which cup held what was left to hands.</source>
        <translation>{volume} in jedem Becher, {cups} im Satz, jeder unter eigenem Code. Die Codes wurden gelost; was in welchen Becher kam, blieb Händen überlassen.</translation>
    </message>
    <message>
        <source>Kept for look {n} of {all}, due on {day}</source>
        <translation>Für Termin {n} von {all}, fällig am {day}</translation>
    </message>
    <message>
        <source>Kept in reserve, for a look that goes wrong</source>
        <translation>Als Reserve, falls ein Termin misslingt</translation>
    </message>
    <message>
        <source>Bottle tags: {series}</source>
        <translation>Flaschenanhänger: {series}</translation>
    </message>
    <message>
        <source>other vessels</source>
        <translation>andere Gefäße</translation>
    </message>
    <message>
        <source>another temperature</source>
        <translation>eine andere Temperatur</translation>
    </message>
    <message>
        <source>swallowed or spat out otherwise</source>
        <translation>anders geschluckt oder ausgespuckt</translation>
    </message>
    <message>
        <source>the vessel</source>
        <translation>das Gefäß</translation>
    </message>
    <message>
        <source>the temperature</source>
        <translation>die Temperatur</translation>
    </message>
    <message>
        <source>swallowed</source>
        <translation>geschluckt</translation>
    </message>
    <message>
        <source>spat out</source>
        <translation>ausgespuckt</translation>
    </message>
    <message>
        <source>as each one likes</source>
        <translation>wie es jeder mag</translation>
    </message>
    <message>
        <source>Vessel: {vessel}.</source>
        <translation>Gefäß: {vessel}.</translation>
    </message>
    <message>
        <source>Temperature of the drinks: {temperature}.</source>
        <translation>Temperatur der Getränke: {temperature}.</translation>
    </message>
    <message>
        <source>Every mouthful: {what}.</source>
        <translation>Jeder Schluck: {what}.</translation>
    </message>
    <message>
        <source>swallowing or spitting</source>
        <translation>ob geschluckt oder ausgespuckt wurde</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>bottle numbers</source>
        <translation>Flaschennummern</translation>
    </message>
    <message>
        <source>Not recorded: {what}.</source>
        <translation>Nicht festgehalten: {what}.</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
</context>
</TS>
