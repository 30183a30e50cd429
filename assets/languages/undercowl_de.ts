<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>AfterwardsPage</name>
    <message>
        <source>Afterwards</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>It is done</source>
        <translation>Ist erledigt</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Weglassen</translation>
    </message>
    <message>
        <source>Nothing that is on again waits to be adjusted, bled or tried.</source>
        <translation>Nichts, was wieder dran ist, muss noch eingestellt, entlüftet oder probiert werden.</translation>
    </message>
    <message>
        <source>Nothing open</source>
        <translation>Nichts offen</translation>
    </message>
    <message>
        <source>Why, if it is left out</source>
        <translation>Warum, falls es wegbleibt</translation>
    </message>
    <message>
        <source>goes home on a trailer</source>
        <translation>geht auf dem Anhänger nach Hause</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Weggelassen</translation>
    </message>
</context>
<context>
    <name>ApprovalPage</name>
    <message>
        <source>The owner&apos;s word</source>
        <translation>Das Wort des Halters</translation>
    </message>
    <message>
        <source>The owner agrees</source>
        <translation>Halter stimmt zu</translation>
    </message>
    <message>
        <source>The owner does not want it</source>
        <translation>Halter will es nicht</translation>
    </message>
    <message>
        <source>Approval</source>
        <translation>Freigabe</translation>
    </message>
    <message>
        <source>For which work</source>
        <translation>Für welche Arbeit</translation>
    </message>
    <message>
        <source>front brake, both tyres</source>
        <translation>Vorderbremse, beide Reifen</translation>
    </message>
    <message>
        <source>Up to which sum</source>
        <translation>Bis zu welchem Betrag</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
</context>
<context>
    <name>AsFoundPage</name>
    <message>
        <source>As found</source>
        <translation>Wie vorgefunden</translation>
    </message>
    <message>
        <source>Another photo</source>
        <translation>Noch ein Foto</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Go on with the views</source>
        <translation>Weiter mit den Ansichten</translation>
    </message>
    <message>
        <source>Pass over</source>
        <translation>Übergehen</translation>
    </message>
    <message>
        <source>Every view is photographed or passed over.</source>
        <translation>Jede Ansicht ist fotografiert oder übergangen.</translation>
    </message>
</context>
<context>
    <name>BackupPage</name>
    <message>
        <source>Backup</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>Writing</source>
        <translation>Wird geschrieben</translation>
    </message>
    <message>
        <source>Reading it again</source>
        <translation>Wird zurückgelesen</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Jetzt sichern</translation>
    </message>
    <message>
        <source>Back up, sealed</source>
        <translation>Versiegelt sichern</translation>
    </message>
    <message>
        <source>Last copy of the entries on this device: %1. It does not help when the phone is lost: put the whole shop into another place now and then.</source>
        <translation>Letzte Kopie der Einträge auf diesem Gerät: %1. Geht das Telefon verloren, hilft sie nicht: die ganze Werkstatt ab und zu an einem anderen Ort sichern.</translation>
    </message>
    <message>
        <source>Where to</source>
        <translation>Wohin</translation>
    </message>
    <message>
        <source>Photos and memos</source>
        <translation>Fotos und Notizen</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Only new ones</source>
        <translation>Nur neue</translation>
    </message>
    <message>
        <source>The backups that are there already are needed too when the shop is brought back.</source>
        <translation>Zum Zurückholen der Werkstatt werden auch die Sicherungen gebraucht, die schon da sind.</translation>
    </message>
    <message>
        <source>Without one, whoever finds the file can read it. A forgotten one cannot be got round.</source>
        <translation>Ohne kann jeder die Datei lesen, der sie findet. Eine vergessene lässt sich nicht umgehen.</translation>
    </message>
    <message>
        <source>Passphrase, if it is to be sealed</source>
        <translation>Passwort, falls versiegelt wird</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>Noch einmal dasselbe</translation>
    </message>
</context>
<context>
    <name>BagEntry</name>
    <message>
        <source>in use: %1</source>
        <translation>belegt: %1</translation>
    </message>
    <message>
        <source>Number of the bag</source>
        <translation>Nummer des Beutels</translation>
    </message>
</context>
<context>
    <name>BandPlot</name>
    <message>
        <source>%1; limits %2 to %3</source>
        <translation>%1; Grenzen %2 bis %3</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>bis %1</translation>
    </message>
</context>
<context>
    <name>CalcEntry</name>
    <message>
        <source>changes the sign</source>
        <translation>wechselt das Vorzeichen</translation>
    </message>
    <message>
        <source>+/−</source>
        <translation>+/−</translation>
    </message>
    <message>
        <source>changes the unit</source>
        <translation>wechselt die Einheit</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
</context>
<context>
    <name>CalcInputRow</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>from the job; tap to change</source>
        <translation>aus dem Auftrag; zum Ändern antippen</translation>
    </message>
    <message>
        <source>assumed; tap to change</source>
        <translation>angenommen; zum Ändern antippen</translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation>darf leer bleiben</translation>
    </message>
</context>
<context>
    <name>CalcListPage</name>
    <message>
        <source>Calculations</source>
        <translation>Rechnen</translation>
    </message>
    <message>
        <source>Words to look for</source>
        <translation>Suchwörter</translation>
    </message>
    <message>
        <source>words, such as torque or tyre</source>
        <translation>Wörter wie Drehmoment oder Reifen</translation>
    </message>
    <message>
        <source>No calculation has these words. Try fewer, or only their beginnings.</source>
        <translation>Keine Rechnung hat diese Wörter. Weniger Wörter oder nur ihre Anfänge versuchen.</translation>
    </message>
</context>
<context>
    <name>CalcMore</name>
    <message>
        <source>Hide: %1</source>
        <translation>Ausblenden: %1</translation>
    </message>
</context>
<context>
    <name>CalcPage</name>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Keep in the job</source>
        <translation>Im Auftrag speichern</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Example</source>
        <translation>Beispiel</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Eingaben</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Rechenweg</translation>
    </message>
    <message>
        <source>Formula, limits and sources</source>
        <translation>Formel, Grenzen und Quellen</translation>
    </message>
</context>
<context>
    <name>CaptureFooter</name>
    <message>
        <source>Saving</source>
        <translation>Speichert</translation>
    </message>
    <message>
        <source>Shoot</source>
        <translation>Auslösen</translation>
    </message>
    <message>
        <source>Note to this photo</source>
        <translation>Bemerkung zum Foto</translation>
    </message>
    <message numerus="yes">
        <source>Done, %n kept</source>
        <comment>photos</comment>
        <translation>
            <numerusform>Fertig, %n gespeichert</numerusform>
            <numerusform>Fertig, %n gespeichert</numerusform>
        </translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
</context>
<context>
    <name>CautionBox</name>
    <message>
        <source>Caution: %1</source>
        <translation>Vorsicht: %1</translation>
    </message>
</context>
<context>
    <name>CheckWalkBody</name>
    <message>
        <source>Answered: %1</source>
        <translation>Beantwortet: %1</translation>
    </message>
    <message>
        <source>Previous</source>
        <translation>Vorige</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation>Alle</translation>
    </message>
    <message numerus="yes">
        <source>%n to go</source>
        <comment>checks</comment>
        <translation>
            <numerusform>noch %n</numerusform>
            <numerusform>noch %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Opening the photo</source>
        <translation>Foto wird geöffnet</translation>
    </message>
    <message>
        <source>Reading the wires</source>
        <translation>Kabel werden gelesen</translation>
    </message>
    <message>
        <source>Photo as it is now</source>
        <translation>Foto, wie es jetzt ist</translation>
    </message>
    <message>
        <source>Wires as they are now</source>
        <translation>Kabel, wie sie jetzt sind</translation>
    </message>
    <message>
        <source>When the stroke began at the last place</source>
        <translation>Falls der Strich am letzten Platz begann</translation>
    </message>
    <message>
        <source>Turn round</source>
        <translation>Umdrehen</translation>
    </message>
    <message>
        <source>Stroke again</source>
        <translation>Neuer Strich</translation>
    </message>
    <message>
        <source>Wires that look alike cannot be told apart in a photo: a swap among twins is not seen.</source>
        <translation>Gleich aussehende Kabel sind auf dem Foto nicht zu unterscheiden: vertauschte Zwillinge bleiben unerkannt.</translation>
    </message>
    <message>
        <source>Now tap the last wire.</source>
        <translation>Jetzt das letzte Kabel antippen.</translation>
    </message>
    <message>
        <source>Stroke across the wires from place 1 on, or tap the first wire and then the last.</source>
        <translation>Ab Platz 1 quer über die Kabel streichen, oder erst das erste und dann das letzte antippen.</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Photo before</source>
        <translation>Foto vorher</translation>
    </message>
    <message>
        <source>Compare with another photo</source>
        <translation>Mit anderem Foto vergleichen</translation>
    </message>
</context>
<context>
    <name>ConsumablesPage</name>
    <message>
        <source>Fluids and grease</source>
        <translation>Flüssigkeiten, Fett</translation>
    </message>
    <message>
        <source>Use it all the same</source>
        <translation>Trotzdem verwenden</translation>
    </message>
    <message>
        <source>It goes in</source>
        <translation>Wird eingefüllt</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Flüssigkeit</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Was eingefüllt wird</translation>
    </message>
    <message>
        <source>brake fluid</source>
        <translation>Bremsflüssigkeit</translation>
    </message>
    <message>
        <source>Grade on the container</source>
        <translation>Sorte auf dem Gebinde</translation>
    </message>
    <message>
        <source>Grades that the machine allows</source>
        <translation>Zugelassene Sorten</translation>
    </message>
    <message>
        <source>DOT 3 or DOT 4, from the reservoir&apos;s lid</source>
        <translation>DOT 3 oder DOT 4, vom Deckel</translation>
    </message>
    <message>
        <source>Day on which the container was opened</source>
        <translation>Tag, an dem das Gebinde geöffnet wurde</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Went in</source>
        <translation>Eingefüllt</translation>
    </message>
</context>
<context>
    <name>CostPage</name>
    <message>
        <source>Cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>Reckon</source>
        <translation>Abrechnen</translation>
    </message>
    <message>
        <source>Add the line</source>
        <translation>Posten zufügen</translation>
    </message>
    <message>
        <source>Line of the cost</source>
        <translation>Kostenposten</translation>
    </message>
    <message>
        <source>One hour&apos;s work without tax</source>
        <translation>Eine Stunde Arbeit ohne Steuer</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>Tax, per cent</source>
        <translation>Steuer in Prozent</translation>
    </message>
    <message>
        <source>Another line</source>
        <translation>Weiterer Posten</translation>
    </message>
    <message>
        <source>What for</source>
        <translation>Wofür</translation>
    </message>
    <message>
        <source>tyre fitted outside</source>
        <translation>Reifen auswärts montiert</translation>
    </message>
    <message>
        <source>Sum without tax</source>
        <translation>Betrag ohne Steuer</translation>
    </message>
    <message>
        <source>take out</source>
        <translation>herausnehmen</translation>
    </message>
</context>
<context>
    <name>CostSum</name>
    <message>
        <source>without tax: %1</source>
        <translation>ohne Steuer: %1</translation>
    </message>
    <message>
        <source>Expected: %1</source>
        <translation>Erwartet: %1</translation>
    </message>
    <message>
        <source>It took: %1</source>
        <translation>Gebraucht: %1</translation>
    </message>
</context>
<context>
    <name>DraftRow</name>
    <message>
        <source>begun %1, not finished</source>
        <translation>begonnen %1, nicht fertig</translation>
    </message>
    <message>
        <source>%1, begun %2, not finished</source>
        <translation>%1, begonnen %2, nicht fertig</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Fortsetzen</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Verwerfen</translation>
    </message>
</context>
<context>
    <name>DuePage</name>
    <message>
        <source>Rechecks due</source>
        <translation>Fällige Kontrollen</translation>
    </message>
    <message>
        <source>Rechecks with a number of days stand here from the hand-over on.</source>
        <translation>Nachkontrollen mit einer Zahl von Tagen stehen ab der Übergabe hier.</translation>
    </message>
    <message>
        <source>Nothing is due</source>
        <translation>Nichts fällig</translation>
    </message>
    <message>
        <source>due</source>
        <translation>fällig</translation>
    </message>
</context>
<context>
    <name>FindFilters</name>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>every machine</source>
        <translation>jedes Fahrzeug</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Fahrzeug</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Any</source>
        <translation>Beliebig</translation>
    </message>
    <message>
        <source>In the shop</source>
        <translation>In der Werkstatt</translation>
    </message>
    <message>
        <source>Waits</source>
        <translation>Wartet</translation>
    </message>
    <message>
        <source>Unsafe</source>
        <translation>Unsicher</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Abgeholt</translation>
    </message>
    <message>
        <source>Worked on</source>
        <translation>Bearbeitet</translation>
    </message>
    <message>
        <source>Any time</source>
        <translation>Irgendwann</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 Tage</translation>
    </message>
    <message>
        <source>A year</source>
        <translation>Ein Jahr</translation>
    </message>
    <message>
        <source>What kind?</source>
        <translation>Welche Art?</translation>
    </message>
    <message>
        <source>Which machine?</source>
        <translation>Welches Fahrzeug?</translation>
    </message>
</context>
<context>
    <name>FindPage</name>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Words, or their beginnings</source>
        <translation>Wörter oder ihre Anfänge</translation>
    </message>
    <message>
        <source>green pink ring</source>
        <translation>grün rosa Öse</translation>
    </message>
    <message>
        <source>Hide the filters</source>
        <translation>Filter ausblenden</translation>
    </message>
    <message>
        <source>Filters (in use)</source>
        <translation>Filter (aktiv)</translation>
    </message>
    <message>
        <source>Filters</source>
        <translation>Filter</translation>
    </message>
    <message>
        <source>Nothing found for these words. Try fewer, or only their beginnings.</source>
        <translation>Zu diesen Wörtern nichts gefunden. Weniger Wörter oder nur ihre Anfänge versuchen.</translation>
    </message>
</context>
<context>
    <name>FindingPage</name>
    <message>
        <source>New finding</source>
        <translation>Neuer Befund</translation>
    </message>
    <message>
        <source>Correct the finding</source>
        <translation>Befund berichtigen</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>front brake hose cracked at the banjo</source>
        <translation>Bremsschlauch vorn rissig</translation>
    </message>
    <message>
        <source>How serious</source>
        <translation>Wie ernst</translation>
    </message>
    <message>
        <source>Unsafe</source>
        <translation>Unsicher</translation>
    </message>
    <message>
        <source>Soon</source>
        <translation>Bald</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>What to do about it</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>renew the hose, bleed the brake</source>
        <translation>Schlauch erneuern, Bremse entlüften</translation>
    </message>
    <message>
        <source>How long it will take, in minutes</source>
        <translation>Dauer in Minuten</translation>
    </message>
</context>
<context>
    <name>FindingRow</name>
    <message>
        <source>Correct</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Make it a task</source>
        <translation>Als Arbeit anlegen</translation>
    </message>
    <message>
        <source>Owner says no</source>
        <translation>Halter lehnt ab</translation>
    </message>
</context>
<context>
    <name>FirstStart</name>
    <message>
        <source>Who works here?</source>
        <translation>Wer arbeitet hier?</translation>
    </message>
    <message>
        <source>Each entry names who made it. Your name stays on this phone and in the records that you hand over.</source>
        <translation>Jeder Eintrag nennt, von wem er ist. Der Name bleibt auf diesem Telefon und in den Berichten, die übergeben werden.</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Ihr Name</translation>
    </message>
    <message>
        <source>as the owner will read it</source>
        <translation>wie ihn der Halter lesen wird</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
</context>
<context>
    <name>FunctionsPage</name>
    <message>
        <source>What works now</source>
        <translation>Was jetzt geht</translation>
    </message>
    <message>
        <source>What works</source>
        <translation>Was geht</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Works</source>
        <translation>Geht</translation>
    </message>
    <message>
        <source>Does not</source>
        <translation>Geht nicht</translation>
    </message>
    <message>
        <source>Not tried</source>
        <translation>Nicht geprüft</translation>
    </message>
    <message>
        <source>Everything has its answer.</source>
        <translation>Alles ist beantwortet.</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>flickers, only when cold</source>
        <translation>flackert, nur wenn kalt</translation>
    </message>
</context>
<context>
    <name>Gallery</name>
    <message>
        <source>Undercowl controls</source>
        <translation>Undercowl-Bedienteile</translation>
    </message>
    <message>
        <source>Next theme</source>
        <translation>Nächstes Aussehen</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Nächste Seite</translation>
    </message>
</context>
<context>
    <name>GatheringActions</name>
    <message>
        <source>Read the wires</source>
        <translation>Kabel lesen</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Read back</source>
        <translation>Vorlesen</translation>
    </message>
</context>
<context>
    <name>GatheringForm</name>
    <message>
        <source>Connector</source>
        <translation>Stecker</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Loose terminals</source>
        <translation>Lose Anschlüsse</translation>
    </message>
    <message>
        <source>Splice</source>
        <translation>Spleiß</translation>
    </message>
    <message>
        <source>Shared earth</source>
        <translation>Sammelmasse</translation>
    </message>
    <message>
        <source>What it is called</source>
        <translation>Wie es heißt</translation>
    </message>
    <message>
        <source>right switch cluster</source>
        <translation>Schaltereinheit rechts</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Plätze</translation>
    </message>
    <message>
        <source>Number of places</source>
        <translation>Zahl der Plätze</translation>
    </message>
    <message>
        <source>Rows of places</source>
        <translation>Reihen von Plätzen</translation>
    </message>
    <message>
        <source>Seen from: the numbers run the other way on the other side</source>
        <translation>Gesehen von: auf der anderen Seite laufen die Nummern umgekehrt</translation>
    </message>
    <message>
        <source>Wire side</source>
        <translation>Kabelseite</translation>
    </message>
    <message>
        <source>Mating face</source>
        <translation>Steckseite</translation>
    </message>
    <message>
        <source>Latch or key</source>
        <translation>Raste oder Nase</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
</context>
<context>
    <name>GatheringMap</name>
    <message>
        <source>Photo of %1</source>
        <translation>Foto von %1</translation>
    </message>
    <message>
        <source>Tap place 1 on the photo</source>
        <translation>Platz 1 auf dem Foto antippen</translation>
    </message>
    <message>
        <source>Place 1 is elsewhere</source>
        <translation>Platz 1 ist woanders</translation>
    </message>
    <message>
        <source>Mark place 1</source>
        <translation>Platz 1 markieren</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>Hälfte</translation>
    </message>
    <message>
        <source>Loom</source>
        <translation>Kabelbaum</translation>
    </message>
    <message>
        <source>Switch, lamp or unit</source>
        <translation>Schalter, Lampe oder Gerät</translation>
    </message>
</context>
<context>
    <name>GatheringPage</name>
    <message>
        <source>Correct</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>What is it?</source>
        <translation>Was ist es?</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Correct what it is</source>
        <translation>Berichtigen, was es ist</translation>
    </message>
</context>
<context>
    <name>HandOverPage</name>
    <message>
        <source>Hand over</source>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>Writing the record</source>
        <translation>Bericht wird geschrieben</translation>
    </message>
    <message>
        <source>Writing</source>
        <translation>Wird geschrieben</translation>
    </message>
    <message>
        <source>Make the files again</source>
        <translation>Dateien neu erstellen</translation>
    </message>
    <message>
        <source>Make the record</source>
        <translation>Bericht erstellen</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>See to it</source>
        <translation>Erledigen</translation>
    </message>
    <message>
        <source>Written</source>
        <translation>Geschrieben</translation>
    </message>
    <message>
        <source>Prove</source>
        <translation>Nachweisen</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>To be told at hand-over</source>
        <translation>Bei der Übergabe zu sagen</translation>
    </message>
    <message>
        <source>brake eased in, holds straight</source>
        <translation>Bremse eingefahren, zieht nicht zur Seite</translation>
    </message>
    <message>
        <source>Old parts</source>
        <translation>Altteile</translation>
    </message>
    <message>
        <source>given back in a bag</source>
        <translation>im Beutel zurückgegeben</translation>
    </message>
    <message>
        <source>Waste taken</source>
        <translation>Entsorgt</translation>
    </message>
    <message>
        <source>0.9 l oil, old battery</source>
        <translation>0,9 l Öl, alte Batterie</translation>
    </message>
    <message>
        <source>What the owner will read</source>
        <translation>Was der Halter lesen wird</translation>
    </message>
</context>
<context>
    <name>HardwareEntry</name>
    <message>
        <source>screw</source>
        <translation>Schraube</translation>
    </message>
    <message>
        <source>bolt</source>
        <translation>Sechskantschraube</translation>
    </message>
    <message>
        <source>nut</source>
        <translation>Mutter</translation>
    </message>
    <message>
        <source>washer</source>
        <translation>Scheibe</translation>
    </message>
    <message>
        <source>clip</source>
        <translation>Klammer</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>Stift</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>Length, mm</source>
        <translation>Länge, mm</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>flange nut</source>
        <translation>Bundmutter</translation>
    </message>
    <message>
        <source>Its thread</source>
        <translation>Gewinde dazu</translation>
    </message>
    <message>
        <source>Its length, mm</source>
        <translation>Länge dazu, mm</translation>
    </message>
    <message>
        <source>from the machine&apos;s manual; N.m unless another unit is typed</source>
        <translation>aus dem Werkstatthandbuch; N.m, wenn keine andere Einheit dabeisteht</translation>
    </message>
    <message>
        <source>Torque on refit</source>
        <translation>Anzugsdrehmoment</translation>
    </message>
</context>
<context>
    <name>HomePage</name>
    <message>
        <source>In the shop</source>
        <translation>In der Werkstatt</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>The shop</source>
        <translation>Die Werkstatt</translation>
    </message>
    <message>
        <source>Calculations</source>
        <translation>Rechnen</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Take in the first machine: what it is, whose it is, why it is here.</source>
        <translation>Das erste Fahrzeug annehmen: was es ist, wem es gehört, warum es hier ist.</translation>
    </message>
    <message>
        <source>The shop is empty</source>
        <translation>Die Werkstatt ist leer</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Machines handed over before these are found by Find.</source>
        <translation>Ältere Übergaben findet man mit Suchen.</translation>
    </message>
</context>
<context>
    <name>InstrumentForm</name>
    <message>
        <source>Name, as the shop calls it</source>
        <translation>Name, wie die Werkstatt es nennt</translation>
    </message>
    <message>
        <source>wrench red</source>
        <translation>Schlüssel rot</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Choose the kind</source>
        <translation>Art wählen</translation>
    </message>
    <message>
        <source>Largest reading, with its unit</source>
        <translation>Größter Messwert mit Einheit</translation>
    </message>
    <message>
        <source>Least reading</source>
        <translation>Kleinster Messwert</translation>
    </message>
    <message>
        <source>One division, or the last digit</source>
        <translation>Ein Skalenteil oder die letzte Stelle</translation>
    </message>
    <message>
        <source>Type and class by ISO 6789-1</source>
        <translation>Typ und Klasse nach ISO 6789-1</translation>
    </message>
    <message>
        <source>Class by EN 837-1, as on the dial</source>
        <translation>Klasse nach EN 837-1, wie auf der Skala</translation>
    </message>
    <message>
        <source>Limit of error: per cent of the reading</source>
        <translation>Fehlergrenze: Prozent vom Messwert</translation>
    </message>
    <message>
        <source>and digits</source>
        <translation>und Digits</translation>
    </message>
    <message>
        <source>and a fixed part</source>
        <translation>und ein fester Anteil</translation>
    </message>
    <message>
        <source>Feel of the hand: half of what two people read differently</source>
        <translation>Handgefühl: die Hälfte dessen, was zwei Leute verschieden ablesen</translation>
    </message>
    <message>
        <source>Where the limit of error stands</source>
        <translation>Wo die Fehlergrenze steht</translation>
    </message>
    <message>
        <source>maker&apos;s sheet</source>
        <translation>Herstellerblatt</translation>
    </message>
    <message>
        <source>Calibrated on</source>
        <translation>Kalibriert am</translation>
    </message>
    <message>
        <source>Due again on</source>
        <translation>Wieder fällig am</translation>
    </message>
    <message>
        <source>Kind of instrument</source>
        <translation>Art des Messgeräts</translation>
    </message>
</context>
<context>
    <name>InstrumentPage</name>
    <message>
        <source>New instrument</source>
        <translation>Neues Messgerät</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Use it again</source>
        <translation>Wieder verwenden</translation>
    </message>
    <message>
        <source>No longer used</source>
        <translation>Nicht mehr benutzt</translation>
    </message>
</context>
<context>
    <name>InstrumentsPage</name>
    <message>
        <source>Instruments</source>
        <translation>Messgeräte</translation>
    </message>
    <message>
        <source>Add an instrument</source>
        <translation>Messgerät zufügen</translation>
    </message>
    <message>
        <source>An instrument with its limit of error gives readings their verdict. Until the shop has its own, ordinary ones with assumed limits can be chosen.</source>
        <translation>Ein Messgerät mit seiner Fehlergrenze gibt den Messwerten ihr Urteil. Bis die Werkstatt eigene hat, lassen sich gewöhnliche mit angenommenen Grenzen wählen.</translation>
    </message>
    <message>
        <source>No instruments of the shop yet</source>
        <translation>Noch keine eigenen Messgeräte</translation>
    </message>
    <message>
        <source>No longer used</source>
        <translation>Nicht mehr benutzt</translation>
    </message>
</context>
<context>
    <name>JobActions</name>
    <message>
        <source>Photos as found</source>
        <translation>Fotos wie vorgefunden</translation>
    </message>
    <message>
        <source>Look over</source>
        <translation>Durchsicht</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>Refit</source>
        <translation>Einbauen</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Ausbauen</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
</context>
<context>
    <name>JobMemos</name>
    <message>
        <source>Memo</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>what must not be forgotten</source>
        <translation>was nicht vergessen werden darf</translation>
    </message>
    <message>
        <source>Keep the memo</source>
        <translation>Notiz speichern</translation>
    </message>
</context>
<context>
    <name>JobPage</name>
    <message>
        <source>Unsafe and open: %1</source>
        <translation>Unsicher und offen: %1</translation>
    </message>
    <message>
        <source>Came back: the job before</source>
        <translation>War schon hier: voriger Auftrag</translation>
    </message>
    <message numerus="yes">
        <source>%n to do</source>
        <comment>afterwards</comment>
        <translation>
            <numerusform>noch %n</numerusform>
            <numerusform>noch %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Afterwards: adjust, bleed, try</source>
        <translation>Danach: einstellen, entlüften, probieren</translation>
    </message>
    <message>
        <source>Prove</source>
        <translation>Nachweisen</translation>
    </message>
    <message>
        <source>Photos as found, view by view</source>
        <translation>Fotos wie vorgefunden, Ansicht für Ansicht</translation>
    </message>
    <message>
        <source>What works</source>
        <translation>Was geht</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Prüfrunden</translation>
    </message>
    <message numerus="yes">
        <source>%n open</source>
        <comment>findings</comment>
        <translation>
            <numerusform>%n offen</numerusform>
            <numerusform>%n offen</numerusform>
        </translation>
    </message>
    <message>
        <source>Look over</source>
        <translation>Durchsicht</translation>
    </message>
    <message>
        <source>The owner&apos;s word on the cost</source>
        <translation>Das Wort des Halters zu den Kosten</translation>
    </message>
    <message numerus="yes">
        <source>%n to come</source>
        <comment>parts</comment>
        <translation>
            <numerusform>%n kommt noch</numerusform>
            <numerusform>%n kommen noch</numerusform>
        </translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>What the shop knows of this model</source>
        <translation>Was die Werkstatt von diesem Modell weiß</translation>
    </message>
    <message>
        <source>Fluids and grease</source>
        <translation>Flüssigkeiten, Fett</translation>
    </message>
    <message>
        <source>Machine and owner</source>
        <translation>Fahrzeug und Halter</translation>
    </message>
    <message>
        <source>Labels for the bags</source>
        <translation>Etiketten für die Beutel</translation>
    </message>
    <message>
        <source>In the bags</source>
        <translation>In den Beuteln</translation>
    </message>
</context>
<context>
    <name>JobRow</name>
    <message>
        <source>Photo of %1</source>
        <translation>Foto von %1</translation>
    </message>
</context>
<context>
    <name>JobTasks</name>
    <message>
        <source>Tasks</source>
        <translation>Arbeiten</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>del</source>
        <comment>erases the last digit</comment>
        <translation>weg</translation>
    </message>
</context>
<context>
    <name>KnowledgePage</name>
    <message>
        <source>Write the file for other shops</source>
        <translation>Datei für andere Werkstätten schreiben</translation>
    </message>
    <message>
        <source>A touch takes a line over into the open job. Nothing enters it by itself.</source>
        <translation>Antippen übernimmt eine Zeile in den offenen Auftrag. Von selbst kommt nichts hinein.</translation>
    </message>
    <message>
        <source>Open a job of this model to take lines over.</source>
        <translation>Zum Übernehmen einen Auftrag dieses Modells öffnen.</translation>
    </message>
    <message>
        <source>Written, without anything of any owner: %1</source>
        <translation>Geschrieben, ohne Angaben zu Haltern: %1</translation>
    </message>
    <message>
        <source>Limits, torques, parts that fitted or not, wiring maps and times of other jobs will stand here.</source>
        <translation>Grenzen, Drehmomente, passende und unpassende Teile, Kabelpläne und Zeiten anderer Aufträge stehen dann hier.</translation>
    </message>
    <message>
        <source>Nothing known of this model yet</source>
        <translation>Zu diesem Modell noch nichts bekannt</translation>
    </message>
    <message>
        <source>take</source>
        <translation>nehmen</translation>
    </message>
</context>
<context>
    <name>LabelsPage</name>
    <message>
        <source>Labels for the bags</source>
        <translation>Etiketten für die Beutel</translation>
    </message>
    <message>
        <source>Make the sheet</source>
        <translation>Bogen erstellen</translation>
    </message>
    <message>
        <source>Steps that were bagged while stripping stand here.</source>
        <translation>Schritte, die beim Ausbauen einen Beutel bekamen, stehen hier.</translation>
    </message>
    <message>
        <source>No bags yet</source>
        <translation>Noch keine Beutel</translation>
    </message>
    <message>
        <source>Written: %1. Print it at 100 %.</source>
        <translation>Geschrieben: %1. Mit 100 % drucken.</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Bögen</translation>
    </message>
    <message>
        <source>A4, 3 × 8</source>
        <translation>A4, 3 × 8</translation>
    </message>
    <message>
        <source>Letter, 3 × 10</source>
        <translation>Letter, 3 × 10</translation>
    </message>
    <message>
        <source>Place of the first label</source>
        <translation>Platz des ersten Etiketts</translation>
    </message>
</context>
<context>
    <name>LimitsEntry</name>
    <message>
        <source>What was measured</source>
        <translation>Was gemessen wurde</translation>
    </message>
    <message>
        <source>rear axle nut, torque</source>
        <translation>Achsmutter hinten, Drehmoment</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>plain number</source>
        <translation>reine Zahl</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>The shop&apos;s instruments</source>
        <translation>Messgeräte der Werkstatt</translation>
    </message>
    <message>
        <source>At least, %1</source>
        <translation>Mindestens, %1</translation>
    </message>
    <message>
        <source>At most, %1</source>
        <translation>Höchstens, %1</translation>
    </message>
    <message>
        <source>Where the limits come from</source>
        <translation>Woher die Grenzen sind</translation>
    </message>
    <message>
        <source>Page or place</source>
        <translation>Seite oder Stelle</translation>
    </message>
    <message>
        <source>page 7-12</source>
        <translation>Seite 7-12</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Messgerät</translation>
    </message>
</context>
<context>
    <name>LookOverPage</name>
    <message>
        <source>Look over</source>
        <translation>Durchsicht</translation>
    </message>
    <message>
        <source>Photo as found</source>
        <translation>Foto wie vorgefunden</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Wie vorgefunden</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Brakes, tyres, play in the steering, leaks, wiring: note what is not as it should be.</source>
        <translation>Bremsen, Reifen, Lenkungsspiel, Lecks, Kabel: notieren, was nicht ist, wie es sein soll.</translation>
    </message>
    <message>
        <source>Nothing found yet</source>
        <translation>Noch nichts gefunden</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Erledigt</translation>
    </message>
</context>
<context>
    <name>MeasureActions</name>
    <message>
        <source>Again</source>
        <translation>Nochmals</translation>
    </message>
    <message>
        <source>Keep mean</source>
        <translation>Mittel speichern</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>MeasureMore</name>
    <message>
        <source>one of several; tap to take it out</source>
        <translation>einer von mehreren; antippen nimmt ihn heraus</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Rechenweg</translation>
    </message>
</context>
<context>
    <name>MeasurePage</name>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
    <message>
        <source>What and how</source>
        <translation>Was und womit</translation>
    </message>
    <message>
        <source>To the value</source>
        <translation>Zum Wert</translation>
    </message>
    <message>
        <source>Readings so far</source>
        <translation>Bisherige Messwerte</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>at: %1 · %2</source>
        <translation>bei: %1 · %2</translation>
    </message>
    <message>
        <source>What is measured?</source>
        <translation>Was wird gemessen?</translation>
    </message>
</context>
<context>
    <name>MeasureValue</name>
    <message>
        <source>Value in %1</source>
        <translation>Wert in %1</translation>
    </message>
    <message>
        <source>changes the unit</source>
        <translation>wechselt die Einheit</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Zahl</translation>
    </message>
</context>
<context>
    <name>Measuring</name>
    <message>
        <source>at rest</source>
        <translation>im Stand</translation>
    </message>
    <message>
        <source>at idle</source>
        <translation>im Leerlauf</translation>
    </message>
    <message>
        <source>at revs</source>
        <translation>bei Drehzahl</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Type the value on the keypad.</source>
        <translation>Den Wert auf den Tasten eingeben.</translation>
    </message>
    <message>
        <source>Say where the limits come from.</source>
        <translation>Angeben, woher die Grenzen sind.</translation>
    </message>
    <message>
        <source>plain number</source>
        <translation>reine Zahl</translation>
    </message>
    <message>
        <source>Type what was measured, such as &quot;rear axle nut, torque&quot;.</source>
        <translation>Eingeben, was gemessen wurde, etwa &quot;Achsmutter hinten, Drehmoment&quot;.</translation>
    </message>
    <message>
        <source>%1, torque</source>
        <translation>%1, Drehmoment</translation>
    </message>
    <message>
        <source>to be %1, as the step says</source>
        <translation>soll %1 haben, wie der Schritt sagt</translation>
    </message>
    <message>
        <source>next after: %1</source>
        <translation>danach: %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
</context>
<context>
    <name>MemoPage</name>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Note to a photo</source>
        <translation>Bemerkung zu einem Foto</translation>
    </message>
    <message>
        <source>Note to this photo</source>
        <translation>Bemerkung zum Foto</translation>
    </message>
    <message>
        <source>what must not be forgotten</source>
        <translation>was nicht vergessen werden darf</translation>
    </message>
    <message>
        <source>Kept so far</source>
        <translation>Bisher gespeichert</translation>
    </message>
</context>
<context>
    <name>ModelsPage</name>
    <message>
        <source>What the shop knows</source>
        <translation>Was die Werkstatt weiß</translation>
    </message>
    <message>
        <source>Learn from the file</source>
        <translation>Aus der Datei lernen</translation>
    </message>
    <message>
        <source>Learn from another shop</source>
        <translation>Von anderer Werkstatt lernen</translation>
    </message>
    <message>
        <source>Learned: %1</source>
        <translation>Gelernt: %1</translation>
    </message>
    <message>
        <source>Its file</source>
        <translation>Ihre Datei</translation>
    </message>
</context>
<context>
    <name>MorePage</name>
    <message>
        <source>The shop</source>
        <translation>Die Werkstatt</translation>
    </message>
    <message>
        <source>To order</source>
        <translation>Zu bestellen</translation>
    </message>
    <message>
        <source>What the shop knows</source>
        <translation>Was die Werkstatt weiß</translation>
    </message>
    <message>
        <source>Scan a bag or a part</source>
        <translation>Beutel oder Teil scannen</translation>
    </message>
    <message>
        <source>Spreadsheets in and out</source>
        <translation>Tabellen ein und aus</translation>
    </message>
    <message>
        <source>Rechecks due</source>
        <translation>Fällige Kontrollen</translation>
    </message>
</context>
<context>
    <name>NeedsPage</name>
    <message>
        <source>To put it back</source>
        <translation>Für den Einbau</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>New every time, one a line</source>
        <translation>Jedes Mal neu, je Zeile eins</translation>
    </message>
    <message>
        <source>split pin</source>
        <translation>Splint</translation>
    </message>
    <message>
        <source>What goes on it</source>
        <translation>Was drankommt</translation>
    </message>
    <message>
        <source>grease, thread lock, none</source>
        <translation>Fett, Schraubensicherung, nichts</translation>
    </message>
    <message>
        <source>To adjust, bleed or try afterwards, one a line</source>
        <translation>Danach einstellen, entlüften, probieren, je Zeile eins</translation>
    </message>
    <message>
        <source>bleed the brake until the lever stays hard</source>
        <translation>Bremse entlüften, bis der Hebel hart bleibt</translation>
    </message>
    <message>
        <source>Do not start until it is done</source>
        <translation>Nicht starten, bevor das getan ist</translation>
    </message>
    <message>
        <source>Do not ride until it is done</source>
        <translation>Nicht fahren, bevor das getan ist</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
</context>
<context>
    <name>NeedsPanel</name>
    <message>
        <source>Nothing follows from the words of the step. Look in the manual.</source>
        <translation>Aus den Worten des Schritts folgt nichts. Im Handbuch nachsehen.</translation>
    </message>
    <message>
        <source>Suggested by the words of the step: common practice. The manual comes first.</source>
        <translation>Aus den Worten des Schritts abgeleitet: üblich. Das Handbuch geht vor.</translation>
    </message>
    <message>
        <source>To put it back</source>
        <translation>Für den Einbau</translation>
    </message>
    <message>
        <source>New: %1</source>
        <translation>Neu: %1</translation>
    </message>
    <message>
        <source>Goes on it: %1</source>
        <translation>Kommt dran: %1</translation>
    </message>
    <message>
        <source>Afterwards: %1</source>
        <translation>Danach: %1</translation>
    </message>
    <message>
        <source>As you set it.</source>
        <translation>Wie von Ihnen festgelegt.</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
</context>
<context>
    <name>NumberEntry</name>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
</context>
<context>
    <name>OrdersPage</name>
    <message>
        <source>To order</source>
        <translation>Zu bestellen</translation>
    </message>
    <message>
        <source>Copy the list</source>
        <translation>Liste kopieren</translation>
    </message>
    <message>
        <source>Text, spreadsheet, PDF</source>
        <translation>Text, Tabelle, PDF</translation>
    </message>
    <message>
        <source>Written</source>
        <translation>Geschrieben</translation>
    </message>
    <message>
        <source>Parts that are wanted or asked for stand here until they are ordered.</source>
        <translation>Gewünschte oder angefragte Teile stehen hier, bis sie bestellt sind.</translation>
    </message>
    <message>
        <source>Nothing to order</source>
        <translation>Nichts zu bestellen</translation>
    </message>
</context>
<context>
    <name>OwnersAnswer</name>
    <message>
        <source>Who said so</source>
        <translation>Wer es gesagt hat</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
</context>
<context>
    <name>PageHeader</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>PartPage</name>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Was daraus wurde</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Other makers&apos; numbers</source>
        <translation>Nummern anderer Hersteller</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>Price without tax</source>
        <translation>Preis ohne Steuer</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>nothing chosen</source>
        <translation>nichts gewählt</translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation>Wofür es ist</translation>
    </message>
    <message>
        <source>Does it fit this model?</source>
        <translation>Passt es zu diesem Modell?</translation>
    </message>
    <message>
        <source>Why not, or after what change</source>
        <translation>Warum nicht, oder nach welcher Änderung</translation>
    </message>
    <message>
        <source>pivot hole 1 mm too small</source>
        <translation>Bohrung 1 mm zu klein</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>from whom, by when</source>
        <translation>von wem, bis wann</translation>
    </message>
    <message>
        <source>What is it for?</source>
        <translation>Wofür ist es?</translation>
    </message>
</context>
<context>
    <name>PartsPage</name>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Add the part</source>
        <translation>Teil zufügen</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Another part</source>
        <translation>Weiteres Teil</translation>
    </message>
    <message>
        <source>switch cluster, right</source>
        <translation>Schaltereinheit, rechts</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>from whom, by when</source>
        <translation>von wem, bis wann</translation>
    </message>
    <message>
        <source>Supplier, price, fit …</source>
        <translation>Lieferant, Preis, passt …</translation>
    </message>
    <message>
        <source>What became of it?</source>
        <translation>Was wurde daraus?</translation>
    </message>
</context>
<context>
    <name>PhotoFrame</name>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>This photo cannot be shown. Its file may be damaged.</source>
        <translation>Dieses Foto lässt sich nicht zeigen. Seine Datei ist vielleicht beschädigt.</translation>
    </message>
    <message>
        <source>Loading photo</source>
        <translation>Foto wird geladen</translation>
    </message>
</context>
<context>
    <name>PhotoViewer</name>
    <message>
        <source>Closer</source>
        <translation>Näher</translation>
    </message>
    <message>
        <source>Whole</source>
        <translation>Ganz</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>PicturePicker</name>
    <message>
        <source>Folder above %1</source>
        <translation>Ordner über %1</translation>
    </message>
    <message>
        <source>Looking for pictures</source>
        <translation>Bilder werden gesucht</translation>
    </message>
    <message>
        <source>No pictures here</source>
        <translation>Keine Bilder hier</translation>
    </message>
</context>
<context>
    <name>PlaceDetails</name>
    <message>
        <source>terminal</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>Size of the terminal, mm</source>
        <translation>Größe des Anschlusses, mm</translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation>Wofür es ist</translation>
    </message>
    <message>
        <source>stop lamp</source>
        <translation>Bremslicht</translation>
    </message>
    <message>
        <source>terminal number by DIN 72552</source>
        <translation>Klemmennummer nach DIN 72552</translation>
    </message>
    <message>
        <source>No number</source>
        <translation>Keine Nummer</translation>
    </message>
    <message>
        <source>Size of the wire, mm²</source>
        <translation>Querschnitt, mm²</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Fähnchen</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Terminal</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>Terminal number by DIN 72552</source>
        <translation>Klemmennummer nach DIN 72552</translation>
    </message>
</context>
<context>
    <name>PlacePage</name>
    <message>
        <source>as found</source>
        <translation>wie vorgefunden</translation>
    </message>
    <message>
        <source>as it should be</source>
        <translation>wie es sein soll</translation>
    </message>
    <message>
        <source>Nothing there</source>
        <translation>Nichts da</translation>
    </message>
    <message>
        <source>Another colour</source>
        <translation>Andere Farbe</translation>
    </message>
    <message>
        <source>Pick the colour</source>
        <translation>Farbe wählen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Which answer</source>
        <translation>Welche Antwort</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Wie vorgefunden</translation>
    </message>
    <message>
        <source>As it should be</source>
        <translation>Wie es sein soll</translation>
    </message>
    <message>
        <source>As found: %1. As it should be: %2.</source>
        <translation>Wie vorgefunden: %1. Wie es sein soll: %2.</translation>
    </message>
    <message>
        <source>Where that is known from</source>
        <translation>Woher man das weiß</translation>
    </message>
    <message>
        <source>manual, page 7-12</source>
        <translation>Handbuch, Seite 7-12</translation>
    </message>
    <message>
        <source>Not known yet</source>
        <translation>Noch nicht bekannt</translation>
    </message>
    <message>
        <source>As refitted: %1</source>
        <translation>Wie eingebaut: %1</translation>
    </message>
</context>
<context>
    <name>PlaceRow</name>
    <message>
        <source>refitted</source>
        <translation>eingebaut</translation>
    </message>
</context>
<context>
    <name>Plugin</name>
    <message>
        <source>A part of this program is missing or damaged (%1). Install it again; what is kept in the shop stays as it is.</source>
        <translation>Ein Teil dieses Programms fehlt oder ist beschädigt (%1). Neu installieren; was in der Werkstatt steht, bleibt.</translation>
    </message>
</context>
<context>
    <name>Pressable</name>
    <message>
        <source>Working</source>
        <translation>Arbeitet</translation>
    </message>
</context>
<context>
    <name>ProblemPanel</name>
    <message>
        <source>Try again</source>
        <translation>Noch einmal</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Gelesen</translation>
    </message>
</context>
<context>
    <name>ProgressStrip</name>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
</context>
<context>
    <name>ProvePage</name>
    <message>
        <source>Prove</source>
        <translation>Nachweisen</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Proved</source>
        <translation>Nachgewiesen</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Weglassen</translation>
    </message>
    <message>
        <source>What is taken apart and put together again is proved here.</source>
        <translation>Was zerlegt und wieder zusammengebaut wurde, wird hier nachgewiesen.</translation>
    </message>
    <message>
        <source>Nothing was disturbed</source>
        <translation>Nichts wurde berührt</translation>
    </message>
    <message>
        <source>Everything that was disturbed is proved, or left out for a reason.</source>
        <translation>Alles, was berührt wurde, ist nachgewiesen oder mit Grund weggelassen.</translation>
    </message>
    <message>
        <source>How, or why it is left out</source>
        <translation>Wie, oder warum es wegbleibt</translation>
    </message>
    <message>
        <source>read aloud and matched</source>
        <translation>vorgelesen und stimmt</translation>
    </message>
    <message numerus="yes">
        <source>%n not on again: cannot be proved yet</source>
        <comment>proofs</comment>
        <translation>
            <numerusform>%n noch nicht wieder dran: nicht nachweisbar</numerusform>
            <numerusform>%n noch nicht wieder dran: nicht nachweisbar</numerusform>
        </translation>
    </message>
    <message>
        <source>A second pair of eyes</source>
        <translation>Vier Augen</translation>
    </message>
    <message>
        <source>What works now, beside what worked before</source>
        <translation>Was jetzt geht, neben dem, was vorher ging</translation>
    </message>
    <message>
        <source>Road test and rechecks</source>
        <translation>Probefahrt und Nachkontrollen</translation>
    </message>
</context>
<context>
    <name>ReadAloud</name>
    <message>
        <source>Say again</source>
        <translation>Noch einmal sagen</translation>
    </message>
    <message>
        <source>Says it again, more slowly; after the slowest comes the usual pace</source>
        <translation>Sagt es noch einmal, langsamer; nach dem langsamsten kommt das gewöhnliche Tempo</translation>
    </message>
    <message>
        <source>Slower</source>
        <translation>Langsamer</translation>
    </message>
    <message>
        <source>Says its colour alone</source>
        <translation>Sagt nur seine Farbe</translation>
    </message>
    <message>
        <source>Wire only</source>
        <translation>Nur Kabel</translation>
    </message>
    <message>
        <source>Hearing</source>
        <translation>Hört zu</translation>
    </message>
    <message>
        <source>While it is held, say done, does not match, next, back, again, slower, undo or stop</source>
        <translation>Solange gedrückt, auf Englisch sagen: done, does not match, next, back, again, slower, undo oder stop</translation>
    </message>
    <message>
        <source>Listening</source>
        <translation>Lauscht</translation>
    </message>
    <message>
        <source>Hold and speak</source>
        <translation>Halten und sprechen</translation>
    </message>
</context>
<context>
    <name>ReadBackActions</name>
    <message>
        <source>Does not match</source>
        <translation>Stimmt nicht</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Speichert</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Back</source>
        <comment>to the wire before</comment>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Begins with the first wire again</source>
        <translation>Beginnt wieder mit dem ersten Kabel</translation>
    </message>
    <message>
        <source>Again</source>
        <translation>Nochmals</translation>
    </message>
    <message>
        <source>To the next wire; nothing is said of this one</source>
        <translation>Zum nächsten Kabel; zu diesem wird nichts gesagt</translation>
    </message>
    <message>
        <source>Skip</source>
        <translation>Weiter</translation>
    </message>
</context>
<context>
    <name>ReadBackChoice</name>
    <message>
        <source>Stop: the two answers differ. Which one holds?</source>
        <translation>Halt: Die beiden Antworten weichen ab. Welche gilt?</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ReadBackEnd</name>
    <message>
        <source>Finish</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>Again</source>
        <translation>Nochmals</translation>
    </message>
    <message>
        <source>Compare photos</source>
        <translation>Fotos vergleichen</translation>
    </message>
</context>
<context>
    <name>ReadBackMismatch</name>
    <message>
        <source>Written down: %1 does not match.</source>
        <translation>Notiert: %1 stimmt nicht.</translation>
    </message>
    <message>
        <source>Swapped</source>
        <translation>Vertauscht</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Next wire</source>
        <translation>Nächstes Kabel</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Noch einmal ansehen</translation>
    </message>
    <message>
        <source>Swapped with which?</source>
        <translation>Mit welchem vertauscht?</translation>
    </message>
</context>
<context>
    <name>ReadBackPage</name>
    <message>
        <source>Read silently</source>
        <translation>Still lesen</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Laut vorlesen</translation>
    </message>
    <message>
        <source>Read the unit half</source>
        <translation>Geräteseite lesen</translation>
    </message>
    <message>
        <source>Read the loom half</source>
        <translation>Kabelbaumseite lesen</translation>
    </message>
    <message>
        <source>No wire of the loom half was confirmed when it was stripped.</source>
        <translation>Beim Ausbauen wurde kein Kabel der Kabelbaumseite bestätigt.</translation>
    </message>
    <message>
        <source>No wire of the unit half was confirmed when it was stripped.</source>
        <translation>Beim Ausbauen wurde kein Kabel der Geräteseite bestätigt.</translation>
    </message>
    <message>
        <source>Nothing to read back</source>
        <translation>Nichts vorzulesen</translation>
    </message>
    <message>
        <source>%1 of %2 wires match</source>
        <translation>%1 von %2 Kabeln stimmen</translation>
    </message>
    <message>
        <source>%1 do not match. Put them right and read back again.</source>
        <translation>%1 stimmen nicht. In Ordnung bringen und neu vorlesen.</translation>
    </message>
    <message>
        <source>%1 were not checked.</source>
        <translation>%1 wurden nicht geprüft.</translation>
    </message>
    <message>
        <source>Each wire was seen in its place.</source>
        <translation>Jedes Kabel wurde an seinem Platz gesehen.</translation>
    </message>
</context>
<context>
    <name>ReadBackWire</name>
    <message>
        <source>Photo, %1 marked</source>
        <translation>Foto, %1 markiert</translation>
    </message>
    <message>
        <source>checked before: matches</source>
        <translation>schon geprüft: stimmt</translation>
    </message>
    <message>
        <source>checked before: does not match</source>
        <translation>schon geprüft: stimmt nicht</translation>
    </message>
</context>
<context>
    <name>ReadingRow</name>
    <message>
        <source>no verdict</source>
        <translation>kein Urteil</translation>
    </message>
    <message>
        <source>Shows the curve of its readings</source>
        <translation>Zeigt den Verlauf der Messwerte</translation>
    </message>
    <message>
        <source>no verdict: limits or the instrument&apos;s uncertainty are not known</source>
        <translation>kein Urteil: Grenzen oder Unsicherheit des Messgeräts unbekannt</translation>
    </message>
    <message>
        <source>Measured once so far: a second reading makes a curve.</source>
        <translation>Bisher einmal gemessen: ein zweiter Messwert ergibt einen Verlauf.</translation>
    </message>
</context>
<context>
    <name>ReadingsPage</name>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Calculations</source>
        <translation>Rechnen</translation>
    </message>
    <message>
        <source>Each value that is kept stands here with its limits and its verdict.</source>
        <translation>Jeder gespeicherte Wert steht hier mit Grenzen und Urteil.</translation>
    </message>
    <message>
        <source>Nothing measured yet</source>
        <translation>Noch nichts gemessen</translation>
    </message>
</context>
<context>
    <name>RefitPage</name>
    <message>
        <source>Refit</source>
        <translation>Einbauen</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Speichert</translation>
    </message>
    <message>
        <source>Is refitted</source>
        <translation>Ist eingebaut</translation>
    </message>
    <message>
        <source>Refitted</source>
        <translation>Eingebaut</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Wires</source>
        <translation>Kabel</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Nothing was stripped, so nothing is to be refitted.</source>
        <translation>Nichts wurde ausgebaut, also ist nichts einzubauen.</translation>
    </message>
    <message>
        <source>All %1 steps are on again. Measure, prove, then hand over.</source>
        <translation>Alle %1 Schritte sind wieder dran. Messen, nachweisen, dann übergeben.</translation>
    </message>
    <message>
        <source>Nothing to refit</source>
        <translation>Nichts einzubauen</translation>
    </message>
    <message>
        <source>All refitted</source>
        <translation>Alles eingebaut</translation>
    </message>
    <message>
        <source>Every task that is left waits. Under Steps each can be refitted all the same.</source>
        <translation>Jede übrige Arbeit wartet. Unter Schritte lässt sich jeder trotzdem einbauen.</translation>
    </message>
    <message>
        <source>All else waits</source>
        <translation>Alles andere wartet</translation>
    </message>
    <message>
        <source>Photo of %1 when it was stripped</source>
        <translation>Foto von %1 beim Ausbauen</translation>
    </message>
    <message>
        <source>Not yet: first %1</source>
        <translation>Noch nicht: erst %1</translation>
    </message>
    <message>
        <source>This task waits for %1</source>
        <translation>Diese Arbeit wartet auf %1</translation>
    </message>
    <message>
        <source>It waits no more</source>
        <translation>Wartet nicht mehr</translation>
    </message>
    <message>
        <source>Afterwards: adjust, bleed, try</source>
        <translation>Danach: einstellen, entlüften, probieren</translation>
    </message>
</context>
<context>
    <name>RefitStepsPage</name>
    <message>
        <source>Refit steps</source>
        <translation>Einbauschritte</translation>
    </message>
    <message>
        <source>waits for %1</source>
        <translation>wartet auf %1</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
</context>
<context>
    <name>RefusalPage</name>
    <message>
        <source>The owner says no</source>
        <translation>Der Halter lehnt ab</translation>
    </message>
    <message>
        <source>Keep the refusal</source>
        <translation>Ablehnung speichern</translation>
    </message>
    <message>
        <source>Refusal</source>
        <translation>Ablehnung</translation>
    </message>
    <message>
        <source>Unsafe: %1</source>
        <translation>Unsicher: %1</translation>
    </message>
    <message>
        <source>The finding stays open. The record will say in bold that you told the owner, who refused, and on which day. Local law may forbid handing over an unsafe machine.</source>
        <translation>Der Befund bleibt offen. Im Bericht steht fett, dass der Halter unterrichtet wurde und ablehnte, und an welchem Tag. Örtliches Recht kann die Herausgabe eines unsicheren Fahrzeugs verbieten.</translation>
    </message>
    <message>
        <source>In the owner&apos;s words</source>
        <translation>In den Worten des Halters</translation>
    </message>
    <message>
        <source>will fetch it with a trailer</source>
        <translation>holt es mit dem Anhänger</translation>
    </message>
</context>
<context>
    <name>RoadPage</name>
    <message>
        <source>Road test and rechecks</source>
        <translation>Probefahrt und Nachkontrollen</translation>
    </message>
    <message>
        <source>Keep the road test</source>
        <translation>Probefahrt speichern</translation>
    </message>
    <message>
        <source>Keep the recheck</source>
        <translation>Nachkontrolle speichern</translation>
    </message>
    <message>
        <source>Road test</source>
        <translation>Probefahrt</translation>
    </message>
    <message>
        <source>Recheck</source>
        <translation>Nachkontrolle</translation>
    </message>
    <message>
        <source>Ridden, km</source>
        <translation>Gefahren, km</translation>
    </message>
    <message>
        <source>What it was like</source>
        <translation>Wie es war</translation>
    </message>
    <message>
        <source>holds straight, idles hot</source>
        <translation>läuft geradeaus, Leerlauf heiß gut</translation>
    </message>
    <message>
        <source>To be looked at again</source>
        <translation>Noch einmal anzusehen</translation>
    </message>
    <message>
        <source>due</source>
        <translation>fällig</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>rear axle nut</source>
        <translation>Achsmutter hinten</translation>
    </message>
    <message>
        <source>After km</source>
        <translation>Nach km</translation>
    </message>
    <message>
        <source>Or after days</source>
        <translation>Oder nach Tagen</translation>
    </message>
</context>
<context>
    <name>RollingCopy</name>
    <message>
        <source>The daily copy of the shop could not be made; what you enter is still kept. %1</source>
        <translation>Die tägliche Kopie der Werkstatt gelang nicht; was eingegeben wird, bleibt trotzdem erhalten. %1</translation>
    </message>
</context>
<context>
    <name>RoundListPage</name>
    <message>
        <source>Add the check</source>
        <translation>Prüfpunkt zufügen</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>Another check</source>
        <translation>Weiterer Prüfpunkt</translation>
    </message>
    <message>
        <source>The check</source>
        <translation>Der Prüfpunkt</translation>
    </message>
    <message>
        <source>lever: firm, does not creep</source>
        <translation>Hebel: fest, gibt nicht nach</translation>
    </message>
    <message>
        <source>Part of the machine</source>
        <translation>Bereich am Fahrzeug</translation>
    </message>
    <message>
        <source>front brake</source>
        <translation>Vorderbremse</translation>
    </message>
</context>
<context>
    <name>RoundListsPage</name>
    <message>
        <source>Lists of checks</source>
        <translation>Prüflisten</translation>
    </message>
</context>
<context>
    <name>RoundPage</name>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Fine</source>
        <translation>In Ordnung</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>Nicht geprüft</translation>
    </message>
    <message>
        <source>Every check of this round has its answer.</source>
        <translation>Jeder Punkt dieser Runde ist beantwortet.</translation>
    </message>
</context>
<context>
    <name>RoundsPage</name>
    <message>
        <source>Rounds</source>
        <translation>Prüfrunden</translation>
    </message>
    <message>
        <source>Begin the round</source>
        <translation>Runde beginnen</translation>
    </message>
    <message>
        <source>A new round: what does the machine have?</source>
        <translation>Neue Runde: Was hat das Fahrzeug?</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Two-stroke</source>
        <translation>Zweitakt</translation>
    </message>
    <message>
        <source>Four-stroke</source>
        <translation>Viertakt</translation>
    </message>
    <message>
        <source>Drive</source>
        <translation>Antrieb</translation>
    </message>
    <message>
        <source>Gears</source>
        <translation>Schaltgetriebe</translation>
    </message>
    <message>
        <source>Automatic</source>
        <translation>Automatik</translation>
    </message>
    <message>
        <source>Starts by</source>
        <translation>Startet mit</translation>
    </message>
    <message>
        <source>Kick</source>
        <translation>Kick</translation>
    </message>
    <message>
        <source>Electric</source>
        <translation>E-Starter</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Beides</translation>
    </message>
    <message>
        <source>Front brake</source>
        <translation>Vorderbremse</translation>
    </message>
    <message>
        <source>Drum</source>
        <translation>Trommel</translation>
    </message>
    <message>
        <source>Disc</source>
        <translation>Scheibe</translation>
    </message>
    <message>
        <source>Rear brake</source>
        <translation>Hinterbremse</translation>
    </message>
</context>
<context>
    <name>SavedMark</name>
    <message>
        <source>Saving</source>
        <translation>Speichert</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Gespeichert</translation>
    </message>
</context>
<context>
    <name>ScanPage</name>
    <message>
        <source>Scan</source>
        <translation>Scannen</translation>
    </message>
    <message>
        <source>Look for the number</source>
        <translation>Nummer suchen</translation>
    </message>
    <message>
        <source>Hold the code of a bag or a part before the camera.</source>
        <translation>Den Code eines Beutels oder Teils vor die Kamera halten.</translation>
    </message>
    <message>
        <source>Or type the number</source>
        <translation>Oder die Nummer eingeben</translation>
    </message>
</context>
<context>
    <name>SecondEyesPage</name>
    <message>
        <source>Second pair of eyes</source>
        <translation>Vier Augen</translation>
    </message>
    <message>
        <source>Brakes, wheels, steering and suspension that were disturbed and are on again can be signed here.</source>
        <translation>Bremsen, Räder, Lenkung und Federung, die berührt wurden und wieder dran sind, lassen sich hier abzeichnen.</translation>
    </message>
    <message>
        <source>Nothing to sign</source>
        <translation>Nichts abzuzeichnen</translation>
    </message>
    <message>
        <source>Whoever did not do the work looks at it and signs by a touch.</source>
        <translation>Wer die Arbeit nicht gemacht hat, sieht es an und zeichnet durch Antippen ab.</translation>
    </message>
    <message>
        <source>Who looks</source>
        <translation>Wer nachsieht</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Helligkeit</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Nacht</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sonne</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>The voice of a Linux device, and what is spoken to it, are English.</source>
        <translation>Die Stimme eines Linux-Geräts und was man ihm sagt, sind Englisch.</translation>
    </message>
    <message>
        <source>Size of the text</source>
        <translation>Größe der Schrift</translation>
    </message>
    <message>
        <source>Hand that holds the phone</source>
        <translation>Hand, die das Telefon hält</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>How you see colours</source>
        <translation>Wie Sie Farben sehen</translation>
    </message>
    <message>
        <source>As most do</source>
        <translation>Wie die meisten</translation>
    </message>
    <message>
        <source>Red weak</source>
        <translation>Rotschwach</translation>
    </message>
    <message>
        <source>Green weak</source>
        <translation>Grünschwach</translation>
    </message>
    <message>
        <source>Blue weak</source>
        <translation>Blauschwach</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie sehr</translation>
    </message>
    <message>
        <source>A little</source>
        <translation>Ein wenig</translation>
    </message>
    <message>
        <source>Much</source>
        <translation>Stark</translation>
    </message>
    <message>
        <source>Movement on the screen</source>
        <translation>Bewegung auf dem Bildschirm</translation>
    </message>
    <message>
        <source>Some</source>
        <translation>Etwas</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Where a photo was taken</source>
        <translation>Wo ein Foto entstand</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Weggelassen</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Bleibt dabei</translation>
    </message>
    <message>
        <source>The shop&apos;s instruments</source>
        <translation>Messgeräte der Werkstatt</translation>
    </message>
    <message>
        <source>The shop&apos;s lists of checks</source>
        <translation>Prüflisten der Werkstatt</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>Who works here</source>
        <translation>Wer hier arbeitet</translation>
    </message>
    <message>
        <source>Work as %1</source>
        <translation>Arbeiten als %1</translation>
    </message>
</context>
<context>
    <name>SeverityMark</name>
    <message>
        <source>unsafe</source>
        <translation>unsicher</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>bald</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
</context>
<context>
    <name>SheetsPage</name>
    <message>
        <source>Spreadsheets</source>
        <translation>Tabellen</translation>
    </message>
    <message>
        <source>Bring in: %1</source>
        <translation>Einlesen: %1</translation>
    </message>
    <message>
        <source>Look at the file</source>
        <translation>Datei ansehen</translation>
    </message>
    <message>
        <source>Write everything</source>
        <translation>Alles schreiben</translation>
    </message>
    <message>
        <source>A sheet of machines has make and model in its head, one of parts has job and part.</source>
        <translation>Eine Tabelle von Fahrzeugen hat make und model in der Kopfzeile, eine von Teilen job und part.</translation>
    </message>
    <message>
        <source>File to bring in (CSV)</source>
        <translation>Einzulesende Datei (CSV)</translation>
    </message>
    <message>
        <source>Not brought in: %1</source>
        <translation>Nicht eingelesen: %1</translation>
    </message>
    <message>
        <source>Lines brought in: %1</source>
        <translation>Eingelesene Zeilen: %1</translation>
    </message>
    <message>
        <source>Written</source>
        <translation>Geschrieben</translation>
    </message>
</context>
<context>
    <name>ShopWindow</name>
    <message>
        <source>Undercowl</source>
        <translation>Undercowl</translation>
    </message>
</context>
<context>
    <name>SignaturePage</name>
    <message>
        <source>Signature</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>Keep the signature</source>
        <translation>Unterschrift speichern</translation>
    </message>
    <message>
        <source>Wipe it</source>
        <translation>Wegwischen</translation>
    </message>
    <message>
        <source>The machine was handed over with its record, and its cautions were read.</source>
        <translation>Das Fahrzeug wurde mit dem Bericht übergeben, seine Warnungen wurden gelesen.</translation>
    </message>
    <message>
        <source>Who signs</source>
        <translation>Wer unterschreibt</translation>
    </message>
    <message>
        <source>Field to sign in</source>
        <translation>Feld zum Unterschreiben</translation>
    </message>
    <message>
        <source>Signed: %1</source>
        <translation>Unterschrieben: %1</translation>
    </message>
</context>
<context>
    <name>Snackbar</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
</context>
<context>
    <name>StepsPage</name>
    <message>
        <source>Steps so far</source>
        <translation>Bisherige Schritte</translation>
    </message>
    <message>
        <source>Each step that is stripped stands here, the last one first.</source>
        <translation>Jeder Ausbauschritt steht hier, der letzte zuerst.</translation>
    </message>
    <message>
        <source>Nothing stripped yet</source>
        <translation>Noch nichts ausgebaut</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>eingebaut</translation>
    </message>
</context>
<context>
    <name>Strip</name>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation>Beutel %1</translation>
    </message>
    <message>
        <source>%1 in bag %2</source>
        <translation>%1 in Beutel %2</translation>
    </message>
</context>
<context>
    <name>StripActions</name>
    <message>
        <source>Wires</source>
        <translation>Kabel</translation>
    </message>
    <message>
        <source>Held by</source>
        <translation>Gehalten von</translation>
    </message>
    <message>
        <source>Bag</source>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Beutel %1</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Speichert</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Nächster Schritt</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>StripEntryActions</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>StripPage</name>
    <message>
        <source>Step %1</source>
        <translation>Schritt %1</translation>
    </message>
    <message>
        <source>step %1</source>
        <translation>Schritt %1</translation>
    </message>
    <message>
        <source>Correct step</source>
        <translation>Schritt berichtigen</translation>
    </message>
    <message>
        <source>Held by</source>
        <translation>Gehalten von</translation>
    </message>
    <message>
        <source>Bag</source>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Ausbauen</translation>
    </message>
    <message>
        <source>Keep the bag</source>
        <translation>Beutel speichern</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Zufügen</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
    <message>
        <source>Steps so far</source>
        <translation>Bisherige Schritte</translation>
    </message>
</context>
<context>
    <name>StripPanel</name>
    <message>
        <source>Photo of this step</source>
        <translation>Foto dieses Schritts</translation>
    </message>
    <message>
        <source>What comes off</source>
        <translation>Was abkommt</translation>
    </message>
    <message>
        <source>unplug 6-place connector</source>
        <translation>6-poligen Stecker abziehen</translation>
    </message>
    <message>
        <source>tap to take it off the list</source>
        <translation>antippen nimmt es von der Liste</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>to know when it goes on again</source>
        <translation>damit man weiß, wann es wieder drankommt</translation>
    </message>
    <message>
        <source>Add a caution</source>
        <translation>Warnung zufügen</translation>
    </message>
    <message>
        <source>Which caution belongs before this step?</source>
        <translation>Welche Warnung gehört vor diesen Schritt?</translation>
    </message>
</context>
<context>
    <name>StripTask</name>
    <message>
        <source>task of this step</source>
        <translation>Arbeit zu diesem Schritt</translation>
    </message>
    <message>
        <source>tasks can wait one by one</source>
        <translation>Arbeiten können einzeln warten</translation>
    </message>
    <message>
        <source>No task</source>
        <translation>Keine Arbeit</translation>
    </message>
    <message>
        <source>New task</source>
        <translation>Neue Arbeit</translation>
    </message>
    <message>
        <source>front brake</source>
        <translation>Vorderbremse</translation>
    </message>
    <message>
        <source>Which task does this step belong to?</source>
        <translation>Zu welcher Arbeit gehört dieser Schritt?</translation>
    </message>
</context>
<context>
    <name>StrokeActions</name>
    <message>
        <source>Confirm</source>
        <translation>Bestätigen</translation>
    </message>
    <message>
        <source>It is %1</source>
        <translation>Es ist %1</translation>
    </message>
    <message>
        <source>Next open wire</source>
        <translation>Nächstes offenes</translation>
    </message>
    <message>
        <source>Other colour</source>
        <translation>Andere Farbe</translation>
    </message>
    <message>
        <source>All %1 sure</source>
        <translation>Alle %1 sicheren</translation>
    </message>
    <message>
        <source>None sure</source>
        <translation>Keines sicher</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Look at this wire again</source>
        <translation>Dieses Kabel neu ansehen</translation>
    </message>
    <message>
        <source>White paper is in the picture: tap it</source>
        <translation>Weißes Papier im Bild: antippen</translation>
    </message>
    <message>
        <source>Turn round: place 1 is at the other end</source>
        <translation>Umdrehen: Platz 1 ist am anderen Ende</translation>
    </message>
    <message>
        <source>This place is empty</source>
        <translation>Dieser Platz ist leer</translation>
    </message>
    <message>
        <source>In a place of its own</source>
        <translation>Auf eigenem Platz</translation>
    </message>
    <message>
        <source>Second wire of the place before</source>
        <translation>Zweites Kabel des Platzes davor</translation>
    </message>
    <message>
        <source>A wire is missing before this one</source>
        <translation>Vor diesem fehlt ein Kabel</translation>
    </message>
    <message>
        <source>A wire is missing after this one</source>
        <translation>Nach diesem fehlt ein Kabel</translation>
    </message>
    <message>
        <source>This is no wire: take it out</source>
        <translation>Das ist kein Kabel: herausnehmen</translation>
    </message>
    <message>
        <source>Not confirmed any more</source>
        <translation>Nicht mehr bestätigt</translation>
    </message>
    <message>
        <source>Bring the rows before the last stroke back</source>
        <translation>Reihen vor dem letzten Strich zurückholen</translation>
    </message>
</context>
<context>
    <name>StrokeFinding</name>
    <message>
        <source>Take these %1</source>
        <translation>Diese %1 nehmen</translation>
    </message>
    <message>
        <source>None touched</source>
        <translation>Keines angetippt</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Stroke instead</source>
        <translation>Selbst streichen</translation>
    </message>
</context>
<context>
    <name>StrokePage</name>
    <message>
        <source>%1 open</source>
        <translation>%1 offen</translation>
    </message>
    <message>
        <source>Opening the photo</source>
        <translation>Foto wird geöffnet</translation>
    </message>
    <message>
        <source>Reading the wires</source>
        <translation>Kabel werden gelesen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Tap the middle of the white paper.</source>
        <translation>Die Mitte des weißen Papiers antippen.</translation>
    </message>
    <message>
        <source>Now tap the last wire.</source>
        <translation>Jetzt das letzte Kabel antippen.</translation>
    </message>
    <message>
        <source>Stroke across the wires, place 1 first. Or tap the first wire and then the last.</source>
        <translation>Quer über die Kabel streichen, Platz 1 zuerst. Oder erst das erste, dann das letzte antippen.</translation>
    </message>
    <message>
        <source>Open the photo again</source>
        <translation>Foto neu öffnen</translation>
    </message>
    <message>
        <source>Find the wires without a stroke</source>
        <translation>Kabel ohne Strich finden</translation>
    </message>
    <message>
        <source>White paper is in the picture</source>
        <translation>Weißes Papier ist im Bild</translation>
    </message>
</context>
<context>
    <name>StrokePhoto</name>
    <message>
        <source>Photo of the wires</source>
        <translation>Foto der Kabel</translation>
    </message>
</context>
<context>
    <name>TakeInMachine</name>
    <message>
        <source>Machine</source>
        <translation>Fahrzeug</translation>
    </message>
    <message>
        <source>Make</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Baujahr</translation>
    </message>
    <message>
        <source>Frame number</source>
        <translation>Rahmennummer</translation>
    </message>
    <message>
        <source>Odometer</source>
        <translation>Kilometerstand</translation>
    </message>
    <message>
        <source>Odometer counts</source>
        <translation>Zähler zählt</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>miles</source>
        <translation>Meilen</translation>
    </message>
    <message>
        <source>Ridden at, metres above the sea</source>
        <translation>Gefahren auf, Meter über Meer</translation>
    </message>
    <message>
        <source>Rider with clothes, kg</source>
        <translation>Fahrer mit Kleidung, kg</translation>
    </message>
    <message>
        <source>Luggage or second rider, kg</source>
        <translation>Gepäck oder Sozius, kg</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>two riders on Sundays, parcels</source>
        <translation>sonntags zu zweit, Pakete</translation>
    </message>
</context>
<context>
    <name>TakeInOwner</name>
    <message>
        <source>Owner</source>
        <translation>Halter</translation>
    </message>
    <message>
        <source>Owner&apos;s name</source>
        <translation>Name des Halters</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>Mail</source>
        <translation>E-Mail</translation>
    </message>
</context>
<context>
    <name>TakeInPage</name>
    <message>
        <source>Machine and owner</source>
        <translation>Fahrzeug und Halter</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Speichert</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Open the job</source>
        <translation>Auftrag öffnen</translation>
    </message>
    <message>
        <source>Continues the entry from %1</source>
        <translation>Setzt die Eingabe von %1 fort</translation>
    </message>
</context>
<context>
    <name>TakeInReason</name>
    <message>
        <source>Why it is here</source>
        <translation>Warum es hier ist</translation>
    </message>
    <message>
        <source>no lights, stood six winters</source>
        <translation>kein Licht, stand sechs Winter</translation>
    </message>
    <message>
        <source>Keys and papers received</source>
        <translation>Schlüssel und Papiere erhalten</translation>
    </message>
    <message>
        <source>two keys, registration</source>
        <translation>zwei Schlüssel, Zulassung</translation>
    </message>
    <message>
        <source>What works</source>
        <translation>Was geht</translation>
    </message>
    <message>
        <source>kicks over, front brake holds</source>
        <translation>springt auf Kick an, Vorderbremse hält</translation>
    </message>
    <message>
        <source>What does not work</source>
        <translation>Was nicht geht</translation>
    </message>
    <message>
        <source>horn, all lamps</source>
        <translation>Hupe, alle Lampen</translation>
    </message>
</context>
<context>
    <name>TaskPage</name>
    <message>
        <source>Stop the watch</source>
        <translation>Uhr anhalten</translation>
    </message>
    <message>
        <source>Start the watch</source>
        <translation>Uhr starten</translation>
    </message>
    <message>
        <source>It waits no more</source>
        <translation>Wartet nicht mehr</translation>
    </message>
    <message>
        <source>Let it wait</source>
        <translation>Warten lassen</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>Wieder aufnehmen</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Waits for %1</source>
        <translation>Wartet auf %1</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>The watch runs. %1 so far.</source>
        <translation>Die Uhr läuft. Bisher %1.</translation>
    </message>
    <message>
        <source>Time spent: %1</source>
        <translation>Zeit gebraucht: %1</translation>
    </message>
    <message>
        <source>This watch ran longer than anyone works at a stretch. How many minutes was it?</source>
        <translation>Diese Uhr lief länger, als jemand am Stück arbeitet. Wie viele Minuten waren es?</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>It was that long</source>
        <translation>So lange war es</translation>
    </message>
    <message>
        <source>What does it wait for?</source>
        <translation>Worauf wartet es?</translation>
    </message>
    <message>
        <source>brake shoes, on order</source>
        <translation>Bremsbacken, bestellt</translation>
    </message>
    <message>
        <source>To be finished first</source>
        <translation>Vorher fertig zu machen</translation>
    </message>
    <message>
        <source>first</source>
        <translation>zuerst</translation>
    </message>
</context>
<context>
    <name>TextEntry</name>
    <message>
        <source>Clear %1</source>
        <translation>%1 leeren</translation>
    </message>
</context>
<context>
    <name>TextEntryArea</name>
    <message>
        <source>Clear %1</source>
        <translation>%1 leeren</translation>
    </message>
</context>
<context>
    <name>TwinsPanel</name>
    <message>
        <source>Twins</source>
        <translation>Zwillinge</translation>
    </message>
    <message>
        <source>Tag them</source>
        <translation>Mit Fähnchen versehen</translation>
    </message>
    <message>
        <source>Tag on %1</source>
        <translation>Fähnchen an %1</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
</context>
<context>
    <name>VerdictMark</name>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>zu knapp</translation>
    </message>
</context>
<context>
    <name>WireLoupe</name>
    <message>
        <source>The wire that was understood, enlarged</source>
        <translation>Das erkannte Kabel, vergrößert</translation>
    </message>
</context>
<context>
    <name>WirePicker</name>
    <message>
        <source>Choose the base colour again</source>
        <translation>Grundfarbe neu wählen</translation>
    </message>
    <message>
        <source>Base colour</source>
        <translation>Grundfarbe</translation>
    </message>
    <message>
        <source>%1: which tracer?</source>
        <translation>%1: welcher Streifen?</translation>
    </message>
    <message>
        <source>no tracer</source>
        <translation>kein Streifen</translation>
    </message>
</context>
<context>
    <name>WireSteps</name>
    <message>
        <source>The next wire on that side was meant</source>
        <translation>Gemeint war das nächste Kabel auf dieser Seite</translation>
    </message>
    <message>
        <source>Wire above</source>
        <translation>Kabel darüber</translation>
    </message>
    <message>
        <source>Wire left</source>
        <translation>Kabel links</translation>
    </message>
    <message>
        <source>Wire below</source>
        <translation>Kabel darunter</translation>
    </message>
    <message>
        <source>Wire right</source>
        <translation>Kabel rechts</translation>
    </message>
</context>
<context>
    <name>Wiring</name>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>no tag</source>
        <translation>kein Fähnchen</translation>
    </message>
    <message>
        <source>tag %1</source>
        <translation>Fähnchen %1</translation>
    </message>
    <message>
        <source>%1 × %2: places %3.</source>
        <translation>%1 × %2: Plätze %3.</translation>
    </message>
    <message>
        <source>Told apart by %1.</source>
        <translation>Zu unterscheiden an %1.</translation>
    </message>
    <message>
        <source>Tag them, or tell them apart by terminal: %1.</source>
        <translation>Fähnchen anbringen, oder am Anschluss unterscheiden: %1.</translation>
    </message>
    <message>
        <source>Tag them before they are unplugged.</source>
        <translation>Fähnchen anbringen, bevor sie abgezogen werden.</translation>
    </message>
    <message>
        <source>To you places %1 and %2 look alike: %3 and %4.</source>
        <translation>Für Ihre Augen sehen die Plätze %1 und %2 gleich aus: %3 und %4.</translation>
    </message>
    <message>
        <source>With tags at %1 every wire can be told apart.</source>
        <translation>Mit Fähnchen an %1 ist jedes Kabel zu unterscheiden.</translation>
    </message>
    <message numerus="yes">
        <source>%n places</source>
        <translation>
            <numerusform>%n Platz</numerusform>
            <numerusform>%n Plätze</numerusform>
        </translation>
    </message>
    <message>
        <source>seen from the %1</source>
        <translation>gesehen von der %1</translation>
    </message>
    <message>
        <source>latch %1</source>
        <translation>Raste %1</translation>
    </message>
    <message>
        <source>no wire confirmed yet</source>
        <translation>noch kein Kabel bestätigt</translation>
    </message>
    <message>
        <source>%1 wires confirmed, %2 places</source>
        <translation>%1 Kabel bestätigt, %2 Plätze</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>noch nicht bekannt</translation>
    </message>
    <message>
        <source>as it should be, not as found</source>
        <translation>wie es sein soll, nicht wie vorgefunden</translation>
    </message>
    <message>
        <source>should be %1</source>
        <translation>sollte sein: %1</translation>
    </message>
    <message>
        <source>read from the photo, confirmed</source>
        <translation>vom Foto gelesen, bestätigt</translation>
    </message>
    <message>
        <source>second choice of the reader, confirmed</source>
        <translation>zweite Wahl des Lesers, bestätigt</translation>
    </message>
    <message>
        <source>picked by hand</source>
        <translation>von Hand gewählt</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>eingetippt</translation>
    </message>
    <message>
        <source>glare covers it: tilt the phone</source>
        <translation>Glanz liegt darauf: Telefon neigen</translation>
    </message>
    <message>
        <source>too dark to tell: bring a light</source>
        <translation>zu dunkel: Licht holen</translation>
    </message>
    <message>
        <source>too small in the picture: go closer</source>
        <translation>zu klein im Bild: näher heran</translation>
    </message>
    <message>
        <source>the light is not known: lay white paper beside it</source>
        <translation>Licht nicht bekannt: weißes Papier danebenlegen</translation>
    </message>
    <message>
        <source>too little of it is free: move what lies across</source>
        <translation>zu wenig frei: wegschieben, was darüber liegt</translation>
    </message>
    <message>
        <source>two colours are about as likely</source>
        <translation>zwei Farben sind etwa gleich wahrscheinlich</translation>
    </message>
    <message>
        <source>likely, but not certain</source>
        <translation>wahrscheinlich, aber nicht sicher</translation>
    </message>
    <message>
        <source>tapped beside it: see that the outlined wire is meant</source>
        <translation>daneben getippt: prüfen, ob das umrandete Kabel gemeint ist</translation>
    </message>
    <message>
        <source>nothing like a wire here: tap on the wire</source>
        <translation>hier sieht nichts nach Kabel aus: auf das Kabel tippen</translation>
    </message>
    <message>
        <source>too bright to tell: less light, or no flash</source>
        <translation>zu hell: weniger Licht, kein Blitz</translation>
    </message>
    <message>
        <source>two lights mix on it: shade one of them</source>
        <translation>zwei Lichter mischen sich darauf: eines abschatten</translation>
    </message>
    <message>
        <source>no wire found</source>
        <translation>kein Kabel gefunden</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>sicher</translation>
    </message>
    <message>
        <source>not sure: %1?</source>
        <translation>nicht sicher: %1?</translation>
    </message>
    <message>
        <source>not sure: %1 or %2</source>
        <translation>nicht sicher: %1 oder %2</translation>
    </message>
    <message>
        <source>connector</source>
        <translation>Stecker</translation>
    </message>
    <message>
        <source>loose terminals</source>
        <translation>lose Anschlüsse</translation>
    </message>
    <message>
        <source>splice</source>
        <translation>Spleiß</translation>
    </message>
    <message>
        <source>shared earth</source>
        <translation>Sammelmasse</translation>
    </message>
    <message>
        <source>wire side</source>
        <translation>Kabelseite</translation>
    </message>
    <message>
        <source>mating face</source>
        <translation>Steckseite</translation>
    </message>
    <message>
        <source>loom half</source>
        <translation>Kabelbaumseite</translation>
    </message>
    <message>
        <source>unit half</source>
        <translation>Geräteseite</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>wie vorgefunden</translation>
    </message>
    <message>
        <source>as it should be</source>
        <translation>wie es sein soll</translation>
    </message>
    <message>
        <source>as refitted</source>
        <translation>wie eingebaut</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>blade</source>
        <translation>Flachstecker</translation>
    </message>
    <message>
        <source>receptacle</source>
        <translation>Flachsteckhülse</translation>
    </message>
    <message>
        <source>bullet</source>
        <translation>Rundstecker</translation>
    </message>
    <message>
        <source>bullet socket</source>
        <translation>Rundsteckhülse</translation>
    </message>
    <message>
        <source>ring</source>
        <translation>Ringöse</translation>
    </message>
    <message>
        <source>fork</source>
        <translation>Gabelschuh</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>Stift</translation>
    </message>
    <message>
        <source>socket</source>
        <translation>Buchse</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>blank</translation>
    </message>
    <message>
        <source>place %1</source>
        <translation>Platz %1</translation>
    </message>
    <message>
        <source>place %1, second wire</source>
        <translation>Platz %1, zweites Kabel</translation>
    </message>
    <message>
        <source>DIN %1</source>
        <translation>DIN %1</translation>
    </message>
</context>
<context>
    <name>WiringPage</name>
    <message>
        <source>Read wires back</source>
        <translation>Kabel vorlesen</translation>
    </message>
    <message>
        <source>Wires</source>
        <translation>Kabel</translation>
    </message>
    <message>
        <source>New connector</source>
        <translation>Neuer Stecker</translation>
    </message>
    <message>
        <source>A connector, a row of loose terminals, a splice or a shared earth: say what it is before it is unplugged.</source>
        <translation>Ein Stecker, eine Reihe loser Anschlüsse, ein Spleiß oder eine Sammelmasse: vor dem Abziehen sagen, was es ist.</translation>
    </message>
    <message>
        <source>No wires mapped yet</source>
        <translation>Noch keine Kabel erfasst</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>The picture %1 cannot be read: it is gone, or reading it is not allowed. Choose another one.</source>
        <translation>Das Bild %1 ist nicht lesbar: es fehlt, oder das Lesen ist nicht erlaubt. Ein anderes wählen.</translation>
    </message>
    <message>
        <source>The picture %1 is larger than 200 MiB. Choose a smaller one.</source>
        <translation>Das Bild %1 ist größer als 200 MiB. Ein kleineres wählen.</translation>
    </message>
    <message>
        <source>%1 is not a JPEG or PNG picture, or it is damaged. Choose another one.</source>
        <translation>%1 ist kein JPEG- oder PNG-Bild, oder es ist beschädigt. Ein anderes wählen.</translation>
    </message>
    <message>
        <source>Not saved: the disk is full. Make room, then try again; what you entered is still here.</source>
        <translation>Nicht gespeichert: Der Speicher ist voll. Platz schaffen, dann noch einmal versuchen; die Eingabe ist noch da.</translation>
    </message>
    <message>
        <source>Not saved: the system refused to write. What you entered is still here; try again.</source>
        <translation>Nicht gespeichert: Das System wollte nicht schreiben. Die Eingabe ist noch da; noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The shop&apos;s store cannot be opened.</source>
        <translation>Der Speicher der Werkstatt lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>The shop&apos;s store is damaged. Nothing was deleted; keep a copy of it before anything else.</source>
        <translation>Der Speicher der Werkstatt ist beschädigt. Nichts wurde gelöscht; vor allem anderen eine Kopie davon aufheben.</translation>
    </message>
    <message>
        <source>The shop&apos;s store was written by a newer version. Bring this app up to date.</source>
        <translation>Der Speicher der Werkstatt stammt von einer neueren Version. Diese App auf den neuesten Stand bringen.</translation>
    </message>
    <message>
        <source>Not saved.</source>
        <translation>Nicht gespeichert.</translation>
    </message>
    <message>
        <source>unsafe</source>
        <translation>unsicher</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>bald</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>gewünscht</translation>
    </message>
    <message>
        <source>asked for</source>
        <translation>angefragt</translation>
    </message>
    <message>
        <source>on order</source>
        <translation>bestellt</translation>
    </message>
    <message>
        <source>here</source>
        <translation>da</translation>
    </message>
    <message>
        <source>wrong one</source>
        <translation>falsches</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>verbaut</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>wie vorgefunden</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>strip step</source>
        <translation>Ausbauschritt</translation>
    </message>
    <message>
        <source>wiring</source>
        <translation>Kabel</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>eingebaut</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Machine not described yet</source>
        <translation>Fahrzeug noch nicht beschrieben</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>yesterday %1</source>
        <translation>gestern %1</translation>
    </message>
    <message>
        <source>%1, %2 days ago</source>
        <translation>%1, vor %2 Tagen</translation>
    </message>
    <message>
        <source>%1, %2 weeks ago</source>
        <translation>%1, vor %2 Wochen</translation>
    </message>
    <message>
        <source>%1, %2 months ago</source>
        <translation>%1, vor %2 Monaten</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::FileCamera</name>
    <message>
        <source>The picture could not be written: %1. Make room, then try again.</source>
        <translation>Das Bild ließ sich nicht schreiben: %1. Platz schaffen, dann noch einmal versuchen.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::MicrophoneListener</name>
    <message>
        <source>No microphone answers. Allow it in the device&apos;s settings, or use the buttons.</source>
        <translation>Kein Mikrofon antwortet. In den Einstellungen des Geräts erlauben oder die Tasten nehmen.</translation>
    </message>
    <message>
        <source>The microphone does not open. Close other programs that use it, or use the buttons.</source>
        <translation>Das Mikrofon lässt sich nicht öffnen. Andere Programme schließen, die es benutzen, oder die Tasten nehmen.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::MultimediaCamera</name>
    <message>
        <source>The camera does not answer: %1. Close other programs that use it, or take the photo from a file.</source>
        <translation>Die Kamera antwortet nicht: %1. Andere Programme schließen, die sie benutzen, oder das Foto aus einer Datei nehmen.</translation>
    </message>
    <message>
        <source>The photo was not taken: %1. Try again.</source>
        <translation>Das Foto gelang nicht: %1. Noch einmal versuchen.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::SystemVoice</name>
    <message>
        <source>The voice failed. Read it on the screen.</source>
        <translation>Die Stimme versagt. Vom Bildschirm lesen.</translation>
    </message>
    <message>
        <source>This device has no voice. Install one in its settings, or read it on the screen.</source>
        <translation>Dieses Gerät hat keine Stimme. In seinen Einstellungen eine installieren oder vom Bildschirm lesen.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::AfterwardsView</name>
    <message>
        <source>%1 is not on again</source>
        <translation>%1 ist nicht wieder dran</translation>
    </message>
    <message>
        <source>Do not start: %1</source>
        <translation>Nicht starten: %1</translation>
    </message>
    <message>
        <source>Do not ride: %1</source>
        <translation>Nicht fahren: %1</translation>
    </message>
    <message>
        <source>after: %1</source>
        <translation>nach: %1</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Erledigt: %1</translation>
    </message>
    <message>
        <source>Type why it is left out, such as &quot;goes home on a trailer&quot;.</source>
        <translation>Eingeben, warum es wegbleibt, etwa &quot;geht auf dem Anhänger nach Hause&quot;.</translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation>Weggelassen: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::BackupView</name>
    <message>
        <source>This device</source>
        <translation>Dieses Gerät</translation>
    </message>
    <message>
        <source>looking ...</source>
        <translation>wird gesucht ...</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
    <message>
        <source>At least eight characters; several words are best.</source>
        <translation>Mindestens acht Zeichen; mehrere Wörter sind am besten.</translation>
    </message>
    <message>
        <source>Type it once more, the same way.</source>
        <translation>Noch einmal genauso eingeben.</translation>
    </message>
    <message numerus="yes">
        <source>%1 was written and read again: %n photos and memos, %2.</source>
        <translation>
            <numerusform>%1 wurde geschrieben und zurückgelesen: %n Foto oder Notiz, %2.</numerusform>
            <numerusform>%1 wurde geschrieben und zurückgelesen: %n Fotos und Notizen, %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not in it: %1</source>
        <translation>Nicht enthalten: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Band</name>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CalcView</name>
    <message>
        <source>Still needed: %1</source>
        <translation>Fehlt noch: %1</translation>
    </message>
    <message>
        <source>%1; possible: %2</source>
        <translation>%1; möglich: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>verdict: %1</source>
        <translation>Urteil: %1</translation>
    </message>
    <message>
        <source>%1 sure to be within</source>
        <translation>%1 sicher innerhalb</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>%1 if left empty</source>
        <translation>%1, wenn leer</translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation>darf leer bleiben</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: %2 (from %3)</source>
        <translation>%1: %2 (von %3)</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CompareView</name>
    <message>
        <source>Confirm the wires on the photo before first: there is nothing yet to compare with.</source>
        <translation>Erst die Kabel auf dem Foto von vorher bestätigen: noch ist nichts zum Vergleichen da.</translation>
    </message>
    <message>
        <source>Take a photo of the wires as they are now, from about the same side.</source>
        <translation>Ein Foto der Kabel machen, wie sie jetzt sind, etwa von derselben Seite.</translation>
    </message>
    <message>
        <source>The same: no wire has changed its place.</source>
        <translation>Gleich: kein Kabel hat seinen Platz gewechselt.</translation>
    </message>
    <message>
        <source>Cannot tell. Read the wires back one by one.</source>
        <translation>Nicht zu sagen. Die Kabel einzeln vorlesen.</translation>
    </message>
    <message>
        <source>Changed: places %1 swapped.</source>
        <translation>Geändert: Plätze %1 vertauscht.</translation>
    </message>
    <message>
        <source>The wire of place %1 was not found: it is missing, or was not read.</source>
        <translation>Das Kabel von Platz %1 wurde nicht gefunden: es fehlt oder wurde nicht gelesen.</translation>
    </message>
    <message>
        <source>Changed: a wire more, number %1 of this stroke.</source>
        <translation>Geändert: ein Kabel mehr, Nummer %1 dieses Strichs.</translation>
    </message>
    <message>
        <source>Changed: another wire in place %1.</source>
        <translation>Geändert: anderes Kabel auf Platz %1.</translation>
    </message>
    <message>
        <source>%1 wires were read, %2 are in the map: stroke across all of them, and only them</source>
        <translation>%1 Kabel wurden gelesen, %2 stehen im Plan: über alle streichen, und nur über sie</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ConsumablesView</name>
    <message>
        <source>batch %1</source>
        <translation>Charge %1</translation>
    </message>
    <message>
        <source>opened %1</source>
        <translation>geöffnet %1</translation>
    </message>
    <message>
        <source>Type what goes in, such as &quot;brake fluid&quot;.</source>
        <translation>Eingeben, was eingefüllt wird, etwa &quot;Bremsflüssigkeit&quot;.</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CostView</name>
    <message>
        <source>Other work</source>
        <translation>Andere Arbeit</translation>
    </message>
    <message>
        <source>%1 % tax: %2</source>
        <translation>%1 % Steuer: %2</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Type the currency, such as EUR.</source>
        <translation>Die Währung eingeben, etwa EUR.</translation>
    </message>
    <message>
        <source>Type the rate as a number, such as 58.50.</source>
        <translation>Den Satz als Zahl eingeben, etwa 58.50.</translation>
    </message>
    <message>
        <source>Type the tax as a number of per cent, such as 19.</source>
        <translation>Die Steuer in Prozent als Zahl eingeben, etwa 19.</translation>
    </message>
    <message>
        <source>Reckoned</source>
        <translation>Abgerechnet</translation>
    </message>
    <message>
        <source>Type what it is for, such as &quot;tyre fitted outside&quot;.</source>
        <translation>Eingeben, wofür, etwa &quot;Reifen auswärts montiert&quot;.</translation>
    </message>
    <message>
        <source>Type the sum without tax as a number, such as 12.50.</source>
        <translation>Den Betrag ohne Steuer als Zahl eingeben, etwa 12.50.</translation>
    </message>
    <message>
        <source>Line added</source>
        <translation>Posten zugefügt</translation>
    </message>
    <message>
        <source>Line taken out</source>
        <translation>Posten herausgenommen</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Finder</name>
    <message>
        <source>machine</source>
        <translation>Fahrzeug</translation>
    </message>
    <message>
        <source>owner</source>
        <translation>Halter</translation>
    </message>
    <message>
        <source>job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>strip step</source>
        <translation>Ausbauschritt</translation>
    </message>
    <message>
        <source>wire</source>
        <translation>Kabel</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>memo</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>alles</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Findings</name>
    <message>
        <source>%1 does not want it put right (%2)</source>
        <translation>%1 will es nicht richten lassen (%2)</translation>
    </message>
    <message>
        <source>is a task</source>
        <translation>ist eine Arbeit</translation>
    </message>
    <message>
        <source>Type whole minutes, such as 45.</source>
        <translation>Ganze Minuten eingeben, etwa 45.</translation>
    </message>
    <message>
        <source>Type what was found, such as &quot;brake hose cracked&quot;.</source>
        <translation>Eingeben, was gefunden wurde, etwa &quot;Bremsschlauch rissig&quot;.</translation>
    </message>
    <message>
        <source>Choose how serious it is: unsafe, soon or note.</source>
        <translation>Wählen, wie ernst es ist: unsicher, bald oder Hinweis.</translation>
    </message>
    <message>
        <source>Finding kept</source>
        <translation>Befund gespeichert</translation>
    </message>
    <message>
        <source>Task made: %1</source>
        <translation>Arbeit angelegt: %1</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Erledigt</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::FunctionsView</name>
    <message>
        <source>works</source>
        <translation>geht</translation>
    </message>
    <message>
        <source>does not work</source>
        <translation>geht nicht</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>when it came in: %1</source>
        <translation>bei der Annahme: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::GatheringView</name>
    <message>
        <source>Type what it is, such as &quot;right switch cluster&quot;.</source>
        <translation>Eingeben, was es ist, etwa &quot;Schaltereinheit rechts&quot;.</translation>
    </message>
    <message>
        <source>Give the number of places, 1 to %1.</source>
        <translation>Zahl der Plätze angeben, 1 bis %1.</translation>
    </message>
    <message>
        <source>Give the number of rows, 1 to %1.</source>
        <translation>Zahl der Reihen angeben, 1 bis %1.</translation>
    </message>
    <message>
        <source>%1 kept</source>
        <translation>%1 gespeichert</translation>
    </message>
    <message>
        <source>Place 1 marked</source>
        <translation>Platz 1 markiert</translation>
    </message>
    <message>
        <source>Tag taken off</source>
        <translation>Fähnchen abgenommen</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Fähnchen %1</translation>
    </message>
    <message>
        <source>Tagged %1</source>
        <translation>Fähnchen an %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::HandOverView</name>
    <message>
        <source>Settle it, or record that the owner does not want it.</source>
        <translation>Erledigen, oder festhalten, dass der Halter es nicht will.</translation>
    </message>
    <message>
        <source>Do it, or say why it is left out.</source>
        <translation>Erledigen, oder sagen, warum es wegbleibt.</translation>
    </message>
    <message>
        <source>Not refitted: %1</source>
        <translation>Nicht eingebaut: %1</translation>
    </message>
    <message>
        <source>Bag %1 is still closed.</source>
        <translation>Beutel %1 ist noch zu.</translation>
    </message>
    <message>
        <source>Wire in place %1 does not match</source>
        <translation>Kabel auf Platz %1 stimmt nicht</translation>
    </message>
    <message>
        <source>Part not fitted: %1</source>
        <translation>Teil nicht verbaut: %1</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Übergeben</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::InstrumentsView</name>
    <message>
        <source>Calibration overdue since %1: its limit of error cannot be relied on</source>
        <translation>Kalibrierung überfällig seit %1: auf die Fehlergrenze ist kein Verlass</translation>
    </message>
    <message>
        <source>No calibration is recorded; due on %1</source>
        <translation>Keine Kalibrierung eingetragen; fällig am %1</translation>
    </message>
    <message>
        <source>Calibration due today</source>
        <translation>Kalibrierung heute fällig</translation>
    </message>
    <message>
        <source>Calibration due tomorrow, on %1</source>
        <translation>Kalibrierung morgen fällig, am %1</translation>
    </message>
    <message>
        <source>Calibration due on %1, in %2 days</source>
        <translation>Kalibrierung fällig am %1, in %2 Tagen</translation>
    </message>
    <message>
        <source>Calibrated on %1, no date set for the next time</source>
        <translation>Kalibriert am %1, kein nächster Termin</translation>
    </message>
    <message>
        <source>No calibration is recorded</source>
        <translation>Keine Kalibrierung eingetragen</translation>
    </message>
    <message>
        <source>%1, %2 to %3, %4</source>
        <translation>%1, %2 bis %3, %4</translation>
    </message>
    <message>
        <source>Choose what kind of instrument it is.</source>
        <translation>Art des Messgeräts wählen.</translation>
    </message>
    <message>
        <source>Another instrument for the same quantity has this name: choose another one.</source>
        <translation>Ein anderes Messgerät für dieselbe Größe heißt so: anderen Namen wählen.</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>No longer used: %1</source>
        <translation>Nicht mehr benutzt: %1</translation>
    </message>
    <message>
        <source>In use again: %1</source>
        <translation>Wieder in Gebrauch: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Insulations</name>
    <message>
        <source>black</source>
        <translation>schwarz</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>braun</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rot</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>orange</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>gelb</translation>
    </message>
    <message>
        <source>green</source>
        <translation>grün</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>blau</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violett</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>grau</translation>
    </message>
    <message>
        <source>white</source>
        <translation>weiß</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>turquoise</source>
        <translation>türkis</translation>
    </message>
    <message>
        <source>light blue</source>
        <translation>hellblau</translation>
    </message>
    <message>
        <source>light green</source>
        <translation>hellgrün</translation>
    </message>
    <message>
        <source>colour not known</source>
        <translation>Farbe nicht bekannt</translation>
    </message>
    <message>
        <source>%1, %2 tracer</source>
        <comment>base colour, tracer colour</comment>
        <translation>%1, Streifen %2</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::JobMemoList</name>
    <message>
        <source>Memo kept</source>
        <translation>Notiz gespeichert</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::JobView</name>
    <message>
        <source>waits for %1</source>
        <translation>wartet auf %1</translation>
    </message>
    <message>
        <source>the watch was forgotten</source>
        <translation>die Uhr wurde vergessen</translation>
    </message>
    <message>
        <source>the watch runs</source>
        <translation>die Uhr läuft</translation>
    </message>
    <message>
        <source>first %1</source>
        <translation>zuerst %1</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Beutel %1</translation>
    </message>
    <message>
        <source>Type what the task is, such as &quot;front brake&quot;.</source>
        <translation>Eingeben, was zu tun ist, etwa &quot;Vorderbremse&quot;.</translation>
    </message>
    <message>
        <source>Task kept</source>
        <translation>Arbeit gespeichert</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::KnowledgeView</name>
    <message>
        <source>limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>wiring map</source>
        <translation>Kabelplan</translation>
    </message>
    <message>
        <source>adjustment</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>held in jobs: %1</source>
        <translation>galt in Aufträgen: %1</translation>
    </message>
    <message>
        <source>Does not agree: %1</source>
        <translation>Widerspricht: %1</translation>
    </message>
    <message>
        <source>The rest</source>
        <translation>Das Übrige</translation>
    </message>
    <message>
        <source>Taken over: %1</source>
        <translation>Übernommen: %1</translation>
    </message>
    <message>
        <source>%1 cannot be written. Make room, and try again.</source>
        <translation>%1 lässt sich nicht schreiben. Platz schaffen und noch einmal versuchen.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::LabelsView</name>
    <message>
        <source>Bag %1, all of it is on again</source>
        <translation>Beutel %1, alles daraus ist wieder dran</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Beutel %1</translation>
    </message>
    <message>
        <source>Type a place on the sheet, such as 1.</source>
        <translation>Einen Platz auf dem Bogen eingeben, etwa 1.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::MeasureView</name>
    <message>
        <source>none named</source>
        <translation>keines genannt</translation>
    </message>
    <message>
        <source>%1, of the shop</source>
        <translation>%1, der Werkstatt</translation>
    </message>
    <message>
        <source>no instrument named</source>
        <translation>kein Messgerät genannt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2, assumed</source>
        <translation>%1: %2, angenommen</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>shop&apos;s record</source>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>Norm</translation>
    </message>
    <message>
        <source>worked out here</source>
        <translation>hier errechnet</translation>
    </message>
    <message>
        <source>Type a value first; then the next one can be typed.</source>
        <translation>Erst einen Wert eingeben; dann kann der nächste kommen.</translation>
    </message>
    <message>
        <source>mean of %1: %2, spread %3</source>
        <translation>Mittel aus %1: %2, Spanne %3</translation>
    </message>
    <message>
        <source>%1 % sure to be within: %2</source>
        <translation>zu %1 % sicher innerhalb: %2</translation>
    </message>
    <message>
        <source>source of the limits not named</source>
        <translation>Quelle der Grenzen nicht genannt</translation>
    </message>
    <message>
        <source>No limits given: the value is kept without a verdict.</source>
        <translation>Keine Grenzen angegeben: Der Wert wird ohne Urteil gespeichert.</translation>
    </message>
    <message>
        <source>No instrument named, so its uncertainty is not known: the value is kept without a verdict.</source>
        <translation>Kein Messgerät genannt, die Unsicherheit ist nicht bekannt: Der Wert wird ohne Urteil gespeichert.</translation>
    </message>
    <message>
        <source>What would settle it: %1</source>
        <translation>Was es klären würde: %1</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>mean of %1</source>
        <translation>Mittel aus %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ModelsView</name>
    <message>
        <source>jobs: %1</source>
        <translation>Aufträge: %1</translation>
    </message>
    <message>
        <source>This file cannot be read, or is no knowledge of a model: %1</source>
        <translation>Diese Datei ist nicht lesbar oder kein Wissen über ein Modell: %1</translation>
    </message>
    <message>
        <source>%1 %2, facts: %3</source>
        <translation>%1 %2, Angaben: %3</translation>
    </message>
    <message>
        <source>Learned: %1</source>
        <translation>Gelernt: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::NeedsView</name>
    <message>
        <source>Do not start until this is on and all that follows is done.</source>
        <translation>Nicht starten, bevor das dran ist und alles Weitere erledigt.</translation>
    </message>
    <message>
        <source>Do not ride until this is on and all that follows is done.</source>
        <translation>Nicht fahren, bevor das dran ist und alles Weitere erledigt.</translation>
    </message>
    <message>
        <source>Kept for the refit</source>
        <translation>Für den Einbau gespeichert</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::OrdersView</name>
    <message>
        <source>No supplier chosen</source>
        <translation>Kein Lieferant gewählt</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::OwnersWord</name>
    <message>
        <source>called</source>
        <translation>rief an</translation>
    </message>
    <message>
        <source>wrote</source>
        <translation>schrieb</translation>
    </message>
    <message>
        <source>stood here</source>
        <translation>stand hier</translation>
    </message>
    <message>
        <source>Not wanted: %1</source>
        <translation>Nicht gewollt: %1</translation>
    </message>
    <message>
        <source>Type who said no: the record names them.</source>
        <translation>Eingeben, wer nein sagte: Der Bericht nennt die Person.</translation>
    </message>
    <message>
        <source>Choose how it was said: called, wrote or stood here.</source>
        <translation>Wählen, wie es gesagt wurde: rief an, schrieb oder stand hier.</translation>
    </message>
    <message>
        <source>Refusal kept</source>
        <translation>Ablehnung gespeichert</translation>
    </message>
    <message>
        <source>Type what it covers, such as &quot;front brake, tyres&quot;.</source>
        <translation>Eingeben, was es umfasst, etwa &quot;Vorderbremse, Reifen&quot;.</translation>
    </message>
    <message>
        <source>Type who said so.</source>
        <translation>Eingeben, wer es gesagt hat.</translation>
    </message>
    <message>
        <source>Write the sum as digits, such as 120.50.</source>
        <translation>Den Betrag in Ziffern schreiben, etwa 120.50.</translation>
    </message>
    <message>
        <source>Write the currency in three letters, such as EUR.</source>
        <translation>Die Währung in drei Buchstaben schreiben, etwa EUR.</translation>
    </message>
    <message>
        <source>Approval kept</source>
        <translation>Freigabe gespeichert</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PartForm</name>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Nicht gesagt</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Passt</translation>
    </message>
    <message>
        <source>After a change</source>
        <translation>Nach Änderung</translation>
    </message>
    <message>
        <source>Does not fit</source>
        <translation>Passt nicht</translation>
    </message>
    <message>
        <source>Type what part it is, such as &quot;front brake hose&quot;.</source>
        <translation>Eingeben, welches Teil es ist, etwa &quot;Bremsschlauch vorn&quot;.</translation>
    </message>
    <message>
        <source>Type the price as a number, such as 18.50.</source>
        <translation>Den Preis als Zahl eingeben, etwa 18.50.</translation>
    </message>
    <message>
        <source>Type the currency, such as EUR.</source>
        <translation>Die Währung eingeben, etwa EUR.</translation>
    </message>
    <message>
        <source>Type why, such as &quot;pivot hole 1 mm too small&quot;.</source>
        <translation>Eingeben, warum, etwa &quot;Bohrung 1 mm zu klein&quot;.</translation>
    </message>
    <message>
        <source>Part kept</source>
        <translation>Teil gespeichert</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PartsList</name>
    <message>
        <source>Type what part it is, such as &quot;front brake hose&quot;.</source>
        <translation>Eingeben, welches Teil es ist, etwa &quot;Bremsschlauch vorn&quot;.</translation>
    </message>
    <message>
        <source>Part kept</source>
        <translation>Teil gespeichert</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PhotoCapture</name>
    <message>
        <source>There is no camera here. Take the photo from a file.</source>
        <translation>Hier ist keine Kamera. Das Foto aus einer Datei nehmen.</translation>
    </message>
    <message>
        <source>The camera is starting.</source>
        <translation>Die Kamera startet.</translation>
    </message>
    <message>
        <source>This app may not use the camera. Allow it in the system&apos;s settings, or take the photo from a file.</source>
        <translation>Diese App darf die Kamera nicht benutzen. In den Einstellungen des Systems erlauben oder das Foto aus einer Datei nehmen.</translation>
    </message>
    <message>
        <source>The disk is full: make room before you take more photos. Those that were taken are still here and are kept as soon as there is room.</source>
        <translation>Der Speicher ist voll: Platz schaffen, bevor weitere Fotos kommen. Die gemachten sind noch da und werden gespeichert, sobald Platz ist.</translation>
    </message>
    <message>
        <source>Photo saved</source>
        <translation>Foto gespeichert</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PhotoReader</name>
    <message>
        <source>no wire was found further on that side</source>
        <translation>auf dieser Seite wurde kein weiteres Kabel gefunden</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PlaceView</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Say where that is known from, such as &quot;manual, page 7-12&quot;.</source>
        <translation>Angeben, woher man das weiß, etwa &quot;Handbuch, Seite 7-12&quot;.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Give the size in millimetres, such as 6.3.</source>
        <translation>Die Größe in Millimetern angeben, etwa 6.3.</translation>
    </message>
    <message>
        <source>Terminal: %1</source>
        <translation>Anschluss: %1</translation>
    </message>
    <message>
        <source>Give the size in square millimetres, such as 0.75.</source>
        <translation>Den Querschnitt in Quadratmillimetern angeben, etwa 0.75.</translation>
    </message>
    <message>
        <source>Wire size kept</source>
        <translation>Querschnitt gespeichert</translation>
    </message>
    <message>
        <source>Function: %1</source>
        <translation>Funktion: %1</translation>
    </message>
    <message>
        <source>DIN number kept</source>
        <translation>DIN-Nummer gespeichert</translation>
    </message>
    <message>
        <source>Tag kept</source>
        <translation>Fähnchen gespeichert</translation>
    </message>
    <message>
        <source>%1: nothing there</source>
        <translation>%1: nichts da</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ProveView</name>
    <message>
        <source>proved</source>
        <translation>nachgewiesen</translation>
    </message>
    <message>
        <source>proved: %1</source>
        <translation>nachgewiesen: %1</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>weggelassen: %1</translation>
    </message>
    <message>
        <source>not signed</source>
        <translation>nicht abgezeichnet</translation>
    </message>
    <message>
        <source>signed by %1</source>
        <translation>abgezeichnet von %1</translation>
    </message>
    <message>
        <source>Proved</source>
        <translation>Nachgewiesen</translation>
    </message>
    <message>
        <source>Type why it is left out, such as &quot;no road test before the tyres are here&quot;.</source>
        <translation>Eingeben, warum es wegbleibt, etwa &quot;keine Probefahrt, bis die Reifen da sind&quot;.</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Weggelassen</translation>
    </message>
    <message>
        <source>Type the name of the one who looked.</source>
        <translation>Den Namen dessen eingeben, der nachgesehen hat.</translation>
    </message>
    <message>
        <source>Signed by %1</source>
        <translation>Abgezeichnet von %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ReadBackEar</name>
    <message>
        <source>Nothing was heard. Hold, say it, then let go.</source>
        <translation>Nichts gehört. Halten, sprechen, dann loslassen.</translation>
    </message>
    <message>
        <source>Not sure what that was. Say it again.</source>
        <translation>Nicht sicher, was das war. Noch einmal sagen.</translation>
    </message>
    <message>
        <source>That is nothing that can be said here. Say it again.</source>
        <translation>Das lässt sich hier nicht sagen. Noch einmal sagen.</translation>
    </message>
    <message>
        <source>That number is not believed. Say it again.</source>
        <translation>Diese Zahl ist unglaubwürdig. Noch einmal sagen.</translation>
    </message>
    <message>
        <source>Heard &quot;%1&quot;. Here say done, does not match, next, back, again, slower, undo or stop.</source>
        <translation>Gehört: &quot;%1&quot;. Hier gelten done, does not match, next, back, again, slower, undo oder stop.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ReadBackView</name>
    <message>
        <source>tag %1</source>
        <translation>Fähnchen %1</translation>
    </message>
    <message>
        <source>looks like place %1</source>
        <translation>sieht aus wie Platz %1</translation>
    </message>
    <message>
        <source>%1; not tagged</source>
        <translation>%1; ohne Fähnchen</translation>
    </message>
    <message>
        <source>%1; tag %2</source>
        <translation>%1; Fähnchen %2</translation>
    </message>
    <message>
        <source>%1 matches</source>
        <translation>%1 stimmt</translation>
    </message>
    <message>
        <source>%1 does not match</source>
        <translation>%1 stimmt nicht</translation>
    </message>
    <message>
        <source>swapped with %1</source>
        <translation>vertauscht mit %1</translation>
    </message>
    <message>
        <source>%1 swapped with %2</source>
        <translation>%1 vertauscht mit %2</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RefitView</name>
    <message>
        <source>%1 of %2 wires read back</source>
        <translation>%1 von %2 Kabeln vorgelesen</translation>
    </message>
    <message>
        <source>Routing: %1</source>
        <translation>Verlegung: %1</translation>
    </message>
    <message>
        <source>As found: %1</source>
        <translation>Wie vorgefunden: %1</translation>
    </message>
    <message>
        <source>Let out: %1</source>
        <translation>Abgelassen: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>the task %1</source>
        <translation>die Arbeit %1</translation>
    </message>
    <message>
        <source>Refitted: %1</source>
        <translation>Eingebaut: %1</translation>
    </message>
    <message>
        <source>Task resumed</source>
        <translation>Arbeit wieder aufgenommen</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoadView</name>
    <message>
        <source>after %1 %2</source>
        <translation>nach %1 %2</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>seen to</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>Road test</source>
        <translation>Probefahrt</translation>
    </message>
    <message>
        <source>Type how far it was ridden, such as 4.</source>
        <translation>Eingeben, wie weit gefahren wurde, etwa 4.</translation>
    </message>
    <message>
        <source>Road test kept</source>
        <translation>Probefahrt gespeichert</translation>
    </message>
    <message>
        <source>Type what is to be looked at again, such as &quot;axle nut&quot;.</source>
        <translation>Eingeben, was noch einmal anzusehen ist, etwa &quot;Achsmutter&quot;.</translation>
    </message>
    <message>
        <source>Type the distance as a number, such as 50.</source>
        <translation>Die Strecke als Zahl eingeben, etwa 50.</translation>
    </message>
    <message>
        <source>Type whole days, such as 14.</source>
        <translation>Ganze Tage eingeben, etwa 14.</translation>
    </message>
    <message>
        <source>Recheck kept</source>
        <translation>Nachkontrolle gespeichert</translation>
    </message>
    <message>
        <source>Seen to</source>
        <translation>Erledigt</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoundListsView</name>
    <message>
        <source>looked over</source>
        <translation>durchgesehen</translation>
    </message>
    <message>
        <source>tried at take-in</source>
        <translation>bei der Annahme geprüft</translation>
    </message>
    <message>
        <source>photographed at take-in</source>
        <translation>bei der Annahme fotografiert</translation>
    </message>
    <message>
        <source>checks: %1, %2</source>
        <translation>Prüfpunkte: %1, %2</translation>
    </message>
    <message>
        <source>Type the check and the part of the machine that it belongs to.</source>
        <translation>Den Prüfpunkt und den Bereich am Fahrzeug eingeben.</translation>
    </message>
    <message>
        <source>This check stands in the list already.</source>
        <translation>Dieser Prüfpunkt steht schon in der Liste.</translation>
    </message>
    <message>
        <source>Check added</source>
        <translation>Prüfpunkt zugefügt</translation>
    </message>
    <message>
        <source>Check taken out</source>
        <translation>Prüfpunkt herausgenommen</translation>
    </message>
    <message>
        <source>Check changed</source>
        <translation>Prüfpunkt geändert</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoundView</name>
    <message>
        <source>fine</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>finding: %1</source>
        <translation>Befund: %1</translation>
    </message>
    <message>
        <source>Fine: %1</source>
        <translation>In Ordnung: %1</translation>
    </message>
    <message>
        <source>Not done: %1</source>
        <translation>Nicht geprüft: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoundsView</name>
    <message>
        <source>%1 of %2 to go</source>
        <translation>noch %1 von %2</translation>
    </message>
    <message>
        <source>findings: %1</source>
        <translation>Befunde: %1</translation>
    </message>
    <message>
        <source>not done: %1</source>
        <translation>nicht geprüft: %1</translation>
    </message>
    <message>
        <source>all fine</source>
        <translation>alles in Ordnung</translation>
    </message>
    <message>
        <source>The shop&apos;s lists hold no check for this machine: add some in Settings.</source>
        <translation>Die Listen der Werkstatt haben keinen Prüfpunkt für dieses Fahrzeug: in den Einstellungen zufügen.</translation>
    </message>
    <message>
        <source>Round begun</source>
        <translation>Runde begonnen</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ScanView</name>
    <message>
        <source>This picture cannot be read: %1</source>
        <translation>Dieses Bild ist nicht lesbar: %1</translation>
    </message>
    <message>
        <source>No code is read in this picture: take it closer and straight on.</source>
        <translation>In diesem Bild ist kein Code lesbar: näher und gerade aufnehmen.</translation>
    </message>
    <message>
        <source>This label is of a job that is not in this shop.</source>
        <translation>Dieses Etikett gehört zu einem Auftrag, den es hier nicht gibt.</translation>
    </message>
    <message>
        <source>Job %1 has no bag %2 any more.</source>
        <translation>Auftrag %1 hat keinen Beutel %2 mehr.</translation>
    </message>
    <message>
        <source>Bag %1: %2</source>
        <translation>Beutel %1: %2</translation>
    </message>
    <message>
        <source>No open job waits for a part with the number %1.</source>
        <translation>Kein offener Auftrag wartet auf ein Teil mit der Nummer %1.</translation>
    </message>
    <message>
        <source>Parts with the number %1</source>
        <translation>Teile mit der Nummer %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::SheetsView</name>
    <message>
        <source>%1 cannot be written. Make room, and try again.</source>
        <translation>%1 lässt sich nicht schreiben. Platz schaffen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>cannot be brought in</source>
        <translation>nicht einzulesen</translation>
    </message>
    <message>
        <source>This file cannot be read: %1</source>
        <translation>Diese Datei ist nicht lesbar: %1</translation>
    </message>
    <message>
        <source>Brought in: %1</source>
        <translation>Eingelesen: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ShopHome</name>
    <message>
        <source>Machine not described yet</source>
        <translation>Fahrzeug noch nicht beschrieben</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ShopSession</name>
    <message>
        <source>Type the name of the one who works here.</source>
        <translation>Den Namen dessen eingeben, der hier arbeitet.</translation>
    </message>
    <message>
        <source>Brought back</source>
        <translation>Zurückgeholt</translation>
    </message>
    <message>
        <source>Undone</source>
        <translation>Rückgängig gemacht</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ShopSettings</name>
    <message>
        <source>As the device</source>
        <translation>Wie das Gerät</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::SignatureView</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Type who signs.</source>
        <translation>Eingeben, wer unterschreibt.</translation>
    </message>
    <message>
        <source>Sign in the field with a finger.</source>
        <translation>Mit dem Finger im Feld unterschreiben.</translation>
    </message>
    <message>
        <source>The signature cannot be made into a picture. Sign once more.</source>
        <translation>Die Unterschrift ergibt kein Bild. Noch einmal unterschreiben.</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Unterschrieben</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::StripView</name>
    <message>
        <source>Strip step</source>
        <translation>Ausbauschritt</translation>
    </message>
    <message>
        <source>Correction of a strip step</source>
        <translation>Berichtigung eines Ausbauschritts</translation>
    </message>
    <message>
        <source>Choose or type what it is, such as &quot;screw&quot;.</source>
        <translation>Wählen oder eingeben, was es ist, etwa &quot;Schraube&quot;.</translation>
    </message>
    <message>
        <source>Type what was done, such as &quot;unplug 6-place connector&quot;.</source>
        <translation>Eingeben, was getan wurde, etwa &quot;6-poligen Stecker abziehen&quot;.</translation>
    </message>
    <message>
        <source>Step %1 kept</source>
        <translation>Schritt %1 gespeichert</translation>
    </message>
    <message>
        <source>Step corrected</source>
        <translation>Schritt berichtigt</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::StrokeView</name>
    <message>
        <source>No wire could be followed on this photo. Stroke across the wires.</source>
        <translation>Auf diesem Foto ließ sich kein Kabel verfolgen. Quer über die Kabel streichen.</translation>
    </message>
    <message>
        <source>Followed: %1. Touch each that belongs here.</source>
        <translation>Verfolgt: %1. Jedes antippen, das hierher gehört.</translation>
    </message>
    <message>
        <source>Where ? stands no wire could be followed: if one belongs here, stroke instead.</source>
        <translation>Wo ? steht, ließ sich kein Kabel verfolgen: gehört dort eines her, selbst streichen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n wires confirmed</source>
        <translation>
            <numerusform>%n Kabel bestätigt</numerusform>
            <numerusform>%n Kabel bestätigt</numerusform>
        </translation>
    </message>
    <message>
        <source>Not confirmed any more</source>
        <translation>Nicht mehr bestätigt</translation>
    </message>
    <message>
        <source>Turned round</source>
        <translation>Umgedreht</translation>
    </message>
    <message>
        <source>Taken out</source>
        <translation>Herausgenommen</translation>
    </message>
    <message>
        <source>Put in</source>
        <translation>Eingefügt</translation>
    </message>
    <message>
        <source>Place empty</source>
        <translation>Platz leer</translation>
    </message>
    <message>
        <source>Second wire of the place before</source>
        <translation>Zweites Kabel des Platzes davor</translation>
    </message>
    <message>
        <source>In a place of its own</source>
        <translation>Auf eigenem Platz</translation>
    </message>
    <message>
        <source>Brought back</source>
        <translation>Zurückgeholt</translation>
    </message>
    <message>
        <source>Wires of %1</source>
        <translation>Kabel von %1</translation>
    </message>
    <message>
        <source>%1 places read, %2 places in all: add those that are missing or empty</source>
        <translation>%1 Plätze gelesen, %2 insgesamt: fehlende oder leere zufügen</translation>
    </message>
    <message>
        <source>%1 places read, only %2 in all: take out what is no wire of it</source>
        <translation>%1 Plätze gelesen, nur %2 insgesamt: herausnehmen, was kein Kabel davon ist</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::TakeIn</name>
    <message>
        <source>Type the make or the model, whatever is readable.</source>
        <translation>Hersteller oder Modell eingeben, was lesbar ist.</translation>
    </message>
    <message>
        <source>The year is a number from %1 to %2; leave it empty if it is not known.</source>
        <translation>Das Baujahr ist eine Zahl von %1 bis %2; leer lassen, wenn unbekannt.</translation>
    </message>
    <message>
        <source>A number that is not below 0.</source>
        <translation>Eine Zahl, nicht unter 0.</translation>
    </message>
    <message>
        <source>Type why it is here, such as &quot;no lights&quot;.</source>
        <translation>Eingeben, warum es hier ist, etwa &quot;kein Licht&quot;.</translation>
    </message>
    <message>
        <source>%1; possible: %2</source>
        <translation>%1; möglich: %2</translation>
    </message>
    <message>
        <source>Check digit fits.</source>
        <translation>Prüfziffer stimmt.</translation>
    </message>
    <message>
        <source>Taken as an older number without check digit.</source>
        <translation>Gilt als ältere Nummer ohne Prüfziffer.</translation>
    </message>
    <message>
        <source>Read it again: %1</source>
        <translation>Noch einmal ablesen: %1</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Geändert</translation>
    </message>
    <message>
        <source>Comes back from %1</source>
        <translation>Kommt wieder von %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::TaskView</name>
    <message>
        <source>%1 of %2 estimated</source>
        <translation>%1 von %2 geschätzt</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>fertig</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>Watch stopped</source>
        <translation>Uhr angehalten</translation>
    </message>
    <message>
        <source>Watch started</source>
        <translation>Uhr gestartet</translation>
    </message>
    <message>
        <source>Type whole minutes, such as 45.</source>
        <translation>Ganze Minuten eingeben, etwa 45.</translation>
    </message>
    <message>
        <source>Time corrected</source>
        <translation>Zeit berichtigt</translation>
    </message>
    <message>
        <source>Type what it waits for, such as &quot;brake shoes&quot;.</source>
        <translation>Eingeben, worauf es wartet, etwa &quot;Bremsbacken&quot;.</translation>
    </message>
    <message>
        <source>Task waits</source>
        <translation>Arbeit wartet</translation>
    </message>
    <message>
        <source>Task resumed</source>
        <translation>Arbeit wieder aufgenommen</translation>
    </message>
    <message>
        <source>Task finished</source>
        <translation>Arbeit fertig</translation>
    </message>
    <message>
        <source>%1 already comes after %2: take that back first.</source>
        <translation>%1 kommt schon nach %2: das erst zurücknehmen.</translation>
    </message>
    <message>
        <source>Order of tasks kept</source>
        <translation>Reihenfolge gespeichert</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ViewsView</name>
    <message>
        <source>photos: %1</source>
        <translation>Fotos: %1</translation>
    </message>
    <message>
        <source>passed over</source>
        <translation>übergangen</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::WireRows</name>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>no wire found</source>
        <translation>kein Kabel gefunden</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>bestätigt</translation>
    </message>
</context>
</TS>
