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
    <message>
        <source>Bring a shop back</source>
        <translation>Werkstatt zurückholen</translation>
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
    <name>CameraPage</name>
    <message>
        <source>The photo before is still being saved. Say it again.</source>
        <translation>Das Foto davor wird noch gespeichert. Noch einmal sagen.</translation>
    </message>
    <message>
        <source>Take a photo first; then a memo to it can be kept.</source>
        <translation>Erst ein Foto machen; dann lässt sich eine Notiz dazu speichern.</translation>
    </message>
</context>
<context>
    <name>CameraPicture</name>
    <message>
        <source>Picture of the camera</source>
        <translation>Bild der Kamera</translation>
    </message>
    <message>
        <source>%1x</source>
        <translation>%1x</translation>
    </message>
</context>
<context>
    <name>CameraShutter</name>
    <message>
        <source>Torch off</source>
        <translation>Licht aus</translation>
    </message>
    <message>
        <source>Torch on</source>
        <translation>Licht an</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Speichert</translation>
    </message>
    <message>
        <source>Shoot</source>
        <translation>Auslösen</translation>
    </message>
    <message>
        <source>Zoom %1x</source>
        <translation>Zoom %1x</translation>
    </message>
</context>
<context>
    <name>CaptureFooter</name>
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
    <name>CarryPage</name>
    <message>
        <source>Carry over</source>
        <translation>Übernehmen</translation>
    </message>
    <message numerus="yes">
        <source>Take %n over</source>
        <comment>wires</comment>
        <translation>
            <numerusform>%n Kabel übernehmen</numerusform>
            <numerusform>%n Kabel übernehmen</numerusform>
        </translation>
    </message>
    <message>
        <source>Taken over</source>
        <translation>Übernommen</translation>
    </message>
    <message>
        <source>Wires go where the same is served; their colour decides nothing. Say what each wire of the old part and each place of the new one serves.</source>
        <translation>Kabel kommen an den Platz mit derselben Aufgabe; ihre Farbe entscheidet nichts. Für jedes Kabel des alten Teils und jeden Platz des neuen die Aufgabe angeben.</translation>
    </message>
    <message>
        <source>Measure first</source>
        <translation>Erst messen</translation>
    </message>
    <message numerus="yes">
        <source>%n at most</source>
        <comment>trials</comment>
        <translation>
            <numerusform>höchstens %n</numerusform>
            <numerusform>höchstens %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Then try</source>
        <translation>Dann probieren</translation>
    </message>
    <message>
        <source>Only with a fuse of 3 A at most in the trial lead, one connection at a time, everything else switched off, engine stopped. No sign: take it off before the next. A fuse that blows ends the trials. The machine&apos;s manual and diagram come first.</source>
        <translation>Nur mit einer Sicherung von höchstens 3 A in der Prüfleitung, ein Anschluss auf einmal, alles andere ausgeschaltet, Motor aus. Kein Zeichen: abnehmen, bevor der nächste kommt. Brennt eine Sicherung durch, ist das Probieren zu Ende. Handbuch und Schaltplan des Fahrzeugs gehen vor.</translation>
    </message>
    <message>
        <source>At which place was the sign seen?</source>
        <translation>An welchem Platz kam das Zeichen?</translation>
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
        <source>DOT 4, from the lid</source>
        <translation>DOT 4, vom Deckel</translation>
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
    <name>Core</name>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1: fits</source>
        <translation>%1: passt</translation>
    </message>
    <message>
        <source>%1: fits after a change (%2)</source>
        <translation>%1: passt nach Änderung (%2)</translation>
    </message>
    <message>
        <source>%1: does not fit (%2)</source>
        <translation>%1: passt nicht (%2)</translation>
    </message>
    <message>
        <source>line %1: a quote is opened and not closed</source>
        <translation>Zeile %1: ein Anführungszeichen ist offen und nicht geschlossen</translation>
    </message>
    <message>
        <source>line %1: letters stand between a closing quote and the end of its cell</source>
        <translation>Zeile %1: Buchstaben zwischen dem schließenden Anführungszeichen und dem Ende der Zelle</translation>
    </message>
    <message>
        <source>make, model: one of them must be there</source>
        <translation>make, model: eines davon muss da sein</translation>
    </message>
    <message>
        <source>year: &apos;%1&apos; is no year such as 1987</source>
        <translation>year: &apos;%1&apos; ist kein Jahr wie 1987</translation>
    </message>
    <message>
        <source>passed over: is here as job %1</source>
        <translation>übergangen: ist schon da als Auftrag %1</translation>
    </message>
    <message>
        <source>opens job %1: %2</source>
        <translation>eröffnet Auftrag %1: %2</translation>
    </message>
    <message>
        <source>part: must say what part it is</source>
        <translation>part: muss sagen, welches Teil es ist</translation>
    </message>
    <message>
        <source>price: &apos;%1&apos; is no number such as 18.50</source>
        <translation>price: &apos;%1&apos; ist keine Zahl wie 18.50</translation>
    </message>
    <message>
        <source>currency: a price needs its currency, such as EUR</source>
        <translation>currency: ein Preis braucht seine Währung, etwa EUR</translation>
    </message>
    <message>
        <source>job: there is no job &apos;%1&apos; in this shop</source>
        <translation>job: in dieser Werkstatt gibt es keinen Auftrag &apos;%1&apos;</translation>
    </message>
    <message>
        <source>passed over: job %1 has it</source>
        <translation>übergangen: Auftrag %1 hat es schon</translation>
    </message>
    <message>
        <source>adds to job %1: %2</source>
        <translation>kommt zu Auftrag %1: %2</translation>
    </message>
    <message>
        <source>odometer: %1</source>
        <translation>Kilometerstand: %1</translation>
    </message>
    <message>
        <source>%1: &apos;%2&apos; is not known</source>
        <translation>%1: &apos;%2&apos; ist nicht bekannt</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>the first line names no column that is known: a sheet of machines has &quot;make&quot; and &quot;model&quot;, one of parts has &quot;job&quot; and &quot;part&quot;</source>
        <translation>die erste Zeile nennt keine bekannte Spalte: eine Tabelle von Fahrzeugen hat &quot;make&quot; und &quot;model&quot;, eine von Teilen &quot;job&quot; und &quot;part&quot;</translation>
    </message>
    <message>
        <source>media file %1: its content does not fit its name</source>
        <translation>Mediendatei %1: Inhalt passt nicht zum Namen</translation>
    </message>
    <message>
        <source>backup: %1 exists already; give another name</source>
        <translation>Sicherung: %1 gibt es schon; einen anderen Namen geben</translation>
    </message>
    <message>
        <source>backup: what was written is not what can be read again</source>
        <translation>Sicherung: was geschrieben wurde, lässt sich nicht ebenso zurücklesen</translation>
    </message>
    <message>
        <source>%1. Make room on the disk, then try again.</source>
        <translation>%1. Platz schaffen, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1. Check who owns the folder and whether it may be written.</source>
        <translation>%1. Prüfen, wem der Ordner gehört und ob er beschreibbar ist.</translation>
    </message>
    <message>
        <source>cannot write %1</source>
        <translation>nicht zu schreiben: %1</translation>
    </message>
    <message>
        <source>cannot sync %1</source>
        <translation>nicht zu sichern: %1</translation>
    </message>
    <message>
        <source>cannot close %1</source>
        <translation>nicht zu schließen: %1</translation>
    </message>
    <message>
        <source>cannot make the folder %1</source>
        <translation>Ordner nicht anzulegen: %1</translation>
    </message>
    <message>
        <source>cannot create %1</source>
        <translation>nicht anzulegen: %1</translation>
    </message>
    <message>
        <source>cannot rename to %1</source>
        <translation>nicht umzubenennen in %1</translation>
    </message>
    <message>
        <source>cannot remove %1</source>
        <translation>nicht zu entfernen: %1</translation>
    </message>
    <message>
        <source>cannot open the folder %1</source>
        <translation>Ordner nicht zu öffnen: %1</translation>
    </message>
    <message>
        <source>cannot look at %1</source>
        <translation>nicht anzusehen: %1</translation>
    </message>
    <message>
        <source>cannot list the folder %1</source>
        <translation>Ordner nicht aufzulisten: %1</translation>
    </message>
    <message>
        <source>cannot open %1</source>
        <translation>nicht zu öffnen: %1</translation>
    </message>
    <message>
        <source>cannot read %1</source>
        <translation>nicht zu lesen: %1</translation>
    </message>
    <message>
        <source>%1 is not a regular file. Move it away.</source>
        <translation>%1 ist keine gewöhnliche Datei. Wegräumen.</translation>
    </message>
    <message>
        <source>Make room on the disk, then try again; nothing of this was kept.</source>
        <translation>Platz schaffen, dann noch einmal versuchen; nichts davon wurde gespeichert.</translation>
    </message>
    <message>
        <source>Check that the folder may be written and that no other program holds it locked.</source>
        <translation>Prüfen, ob der Ordner beschreibbar ist und kein anderes Programm ihn gesperrt hält.</translation>
    </message>
    <message>
        <source>Try again; if it comes back, check the disk.</source>
        <translation>Noch einmal versuchen; kommt es wieder, den Datenträger prüfen.</translation>
    </message>
    <message>
        <source>%1 is the database of another program. It was left as it is; name another folder.</source>
        <translation>%1 ist die Datenbank eines anderen Programms. Sie blieb, wie sie war; einen anderen Ordner nennen.</translation>
    </message>
    <message>
        <source>%1 was written by a newer version (schema %2, known here: up to %3). It was left as it is; update this program.</source>
        <translation>%1 stammt von einer neueren Version (Schema %2, hier bekannt: bis %3). Alles blieb, wie es war; dieses Programm aktualisieren.</translation>
    </message>
    <message>
        <source>This shop was written by a newer version of the program and can only be looked at here. Bring this program up to date to go on working in it.</source>
        <translation>Diese Werkstatt stammt von einer neueren Version des Programms und lässt sich hier nur ansehen. Zum Weiterarbeiten das Programm aktualisieren.</translation>
    </message>
    <message>
        <source>%1 holds no store but other things, such as &apos;%2&apos;. Name an empty folder or a new one.</source>
        <translation>%1 enthält keinen Speicher, sondern anderes, etwa &apos;%2&apos;. Einen leeren oder neuen Ordner nennen.</translation>
    </message>
    <message>
        <source>the key of the backup needs %1 MiB of memory, which are not free; close other programs</source>
        <translation>der Schlüssel der Sicherung braucht %1 MiB Arbeitsspeicher, die nicht frei sind; andere Programme schließen</translation>
    </message>
    <message>
        <source>passphrase: must have at least 8 bytes; several words are best</source>
        <translation>Passwort: mindestens 8 Bytes; mehrere Wörter sind am besten</translation>
    </message>
    <message>
        <source>find: at most 16 words at a time</source>
        <translation>Suchen: höchstens 16 Wörter auf einmal</translation>
    </message>
    <message>
        <source>body: has %1 bytes, at most %2 are kept; shorten the text</source>
        <translation>body: hat %1 Bytes, höchstens %2 werden aufgenommen; den Text kürzen</translation>
    </message>
    <message>
        <source>media: a file must have between 1 byte and 256 MiB, this one has %1 bytes</source>
        <translation>media: eine Datei muss zwischen 1 Byte und 256 MiB haben, diese hat %1 Bytes</translation>
    </message>
    <message>
        <source>media: the file %1 is missing. Put it back from a backup or an archive.</source>
        <translation>media: die Datei %1 fehlt. Aus einer Sicherung oder einem Archiv zurückholen.</translation>
    </message>
    <message>
        <source>%1: its content does not fit its name. Put it back from a backup or an archive.</source>
        <translation>%1: Inhalt passt nicht zum Namen. Aus einer Sicherung oder einem Archiv zurückholen.</translation>
    </message>
    <message>
        <source>%1, %2 tracer</source>
        <translation>%1, Streifen %2</translation>
    </message>
    <message>
        <source>blade %1</source>
        <translation>Flachstecker %1</translation>
    </message>
    <message>
        <source>receptacle %1</source>
        <translation>Flachsteckhülse %1</translation>
    </message>
    <message>
        <source>bullet %1</source>
        <translation>Rundstecker %1</translation>
    </message>
    <message>
        <source>bullet socket %1</source>
        <translation>Rundsteckhülse %1</translation>
    </message>
    <message>
        <source>ring %1</source>
        <translation>Ringöse %1</translation>
    </message>
    <message>
        <source>fork %1</source>
        <translation>Gabelschuh %1</translation>
    </message>
    <message>
        <source>pin %1</source>
        <translation>Stift %1</translation>
    </message>
    <message>
        <source>socket %1</source>
        <translation>Buchse %1</translation>
    </message>
    <message>
        <source>splice %1</source>
        <translation>Spleiß %1</translation>
    </message>
    <message>
        <source>bare %1</source>
        <translation>blank %1</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date as it is read here: write year, month and day, such as 2026-11-25</source>
        <translation>&quot;%1&quot; ist hier nicht als Datum zu lesen: Jahr, Monat und Tag schreiben, etwa 2026-11-25</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a day of the calendar</source>
        <translation>&quot;%1&quot; ist kein Tag des Kalenders</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is out of range: the year must be from 1885 to 2200</source>
        <translation>&quot;%1&quot; liegt außerhalb: Das Jahr muss von 1885 bis 2200 sein</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number: write digits with one decimal point or comma, such as 2.4 or 1/2</source>
        <translation>&quot;%1&quot; ist keine Zahl: Ziffern mit einem Punkt oder Komma schreiben, etwa 2.4 oder 1/2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; divides by zero</source>
        <translation>&quot;%1&quot; teilt durch null</translation>
    </message>
    <message>
        <source>&quot;%1&quot; could be a fraction or two values: write one number, a fraction above one as 1 1/4</source>
        <translation>&quot;%1&quot; könnte ein Bruch oder zwei Werte sein: eine Zahl schreiben, einen Bruch über eins als 1 1/4</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has more than one separator: write the number without grouping, such as 1234.5</source>
        <translation>&quot;%1&quot; hat mehr als ein Trennzeichen: die Zahl ohne Gruppen schreiben, etwa 1234.5</translation>
    </message>
    <message>
        <source>&quot;%1&quot; could be %2 or %3: write %4, or %5 with a point</source>
        <translation>&quot;%1&quot; könnte %2 oder %3 sein: %4 schreiben, oder %5 mit Punkt</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is ambiguous: %2</source>
        <translation>&quot;%1&quot; ist mehrdeutig: %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a unit that is known here: %2 is wanted here, in %3</source>
        <translation>&quot;%1&quot; ist hier keine bekannte Einheit: verlangt ist %2, in %3</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is a unit of %2: %3 is wanted here, in %4</source>
        <translation>&quot;%1&quot; ist eine Einheit für %2: verlangt ist %3, in %4</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a gap inside: write the number without grouping, such as 1234.5</source>
        <translation>&quot;%1&quot; hat eine Lücke: die Zahl ohne Gruppen schreiben, etwa 1234.5</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is beyond any number that is measured</source>
        <translation>&quot;%1&quot; übersteigt alles, was gemessen wird</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no unit: %2 is wanted here, in %3</source>
        <translation>&quot;%1&quot; hat keine Einheit: verlangt ist %2, in %3</translation>
    </message>
    <message>
        <source>%1 is a unit of %2, %3 of %4: what fits is %5</source>
        <translation>%1 ist eine Einheit für %2, %3 für %4: es passt %5</translation>
    </message>
    <message>
        <source>write US gal or imp gal: they differ by a fifth</source>
        <translation>US gal oder imp gal schreiben: sie unterscheiden sich um ein Fünftel</translation>
    </message>
    <message>
        <source>write US pt or imp pt: they differ by a fifth</source>
        <translation>US pt oder imp pt schreiben: sie unterscheiden sich um ein Fünftel</translation>
    </message>
    <message>
        <source>write US fl oz or imp fl oz: they are not the same</source>
        <translation>US fl oz oder imp fl oz schreiben: sie sind nicht gleich</translation>
    </message>
    <message>
        <source>write mpg(US) or mpg(imp): they differ by a fifth</source>
        <translation>mpg(US) oder mpg(imp) schreiben: sie unterscheiden sich um ein Fünftel</translation>
    </message>
    <message>
        <source>write mohm for milliohm or Mohm for megaohm</source>
        <translation>mohm für Milliohm oder Mohm für Megaohm schreiben</translation>
    </message>
    <message>
        <source>no limit is known: the value is kept without a verdict</source>
        <translation>keine Grenze bekannt: der Wert bleibt ohne Urteil</translation>
    </message>
    <message>
        <source>the limit is in %1, the value in %2: what fits is %3</source>
        <translation>die Grenze ist in %1, der Wert in %2: es passt %3</translation>
    </message>
    <message>
        <source>no instrument or uncertainty is known: the value is kept without a verdict</source>
        <translation>Messgerät oder Unsicherheit nicht bekannt: der Wert bleibt ohne Urteil</translation>
    </message>
    <message>
        <source>the uncertainty is in %1: what fits is %2</source>
        <translation>die Unsicherheit ist in %1: es passt %2</translation>
    </message>
    <message>
        <source>the uncertainty must be above zero: no instrument is without error</source>
        <translation>die Unsicherheit muss über null sein: kein Messgerät ist ohne Fehler</translation>
    </message>
    <message>
        <source>the lower limit is above the upper one</source>
        <translation>die untere Grenze liegt über der oberen</translation>
    </message>
    <message>
        <source>a torque wrench reads torque, not %1</source>
        <translation>ein Drehmomentschlüssel zeigt Drehmoment, nicht %1</translation>
    </message>
    <message>
        <source>class %1 does not exist: type I has A to E, type II A to G</source>
        <translation>Klasse %1 gibt es nicht: Typ I hat A bis E, Typ II A bis G</translation>
    </message>
    <message>
        <source>(from memory: look at the certificate)</source>
        <translation>(aus dem Gedächtnis: Kalibrierschein ansehen)</translation>
    </message>
    <message>
        <source>%1 (from memory: look at the certificate)</source>
        <translation>%1 (aus dem Gedächtnis: Kalibrierschein ansehen)</translation>
    </message>
    <message>
        <source>tested by ISO 6789: worked %1 times at its largest torque, then read at %2 % of it</source>
        <translation>Prüfung nach ISO 6789: %1 Mal bei größtem Drehmoment betätigen, dann ablesen bei %2 % davon</translation>
    </message>
    <message>
        <source>name: give the instrument one, as the shop calls it</source>
        <translation>Name: einen geben, wie die Werkstatt es nennt</translation>
    </message>
    <message>
        <source>range: the upper end must be above the lower one</source>
        <translation>Bereich: das obere Ende muss über dem unteren liegen</translation>
    </message>
    <message>
        <source>resolution: give one division, or the last digit of the display</source>
        <translation>Auflösung: einen Skalenteil oder die letzte Stelle der Anzeige angeben</translation>
    </message>
    <message>
        <source>limit of error: its parts must not be negative</source>
        <translation>Fehlergrenze: ihre Teile dürfen nicht negativ sein</translation>
    </message>
    <message>
        <source>limit of error: give it from the maker&apos;s sheet; it is never zero</source>
        <translation>Fehlergrenze: aus dem Herstellerblatt angeben; sie ist nie null</translation>
    </message>
    <message>
        <source>%1 reads %2: %3</source>
        <translation>%1 misst %2: %3</translation>
    </message>
    <message>
        <source>%1 reads from %2 to %3, not %4: use another instrument</source>
        <translation>%1 misst von %2 bis %3, nicht %4: ein anderes Messgerät nehmen</translation>
    </message>
    <message>
        <source>limit of error, %1 % of the reading (%2)</source>
        <translation>Fehlergrenze, %1 % vom Messwert (%2)</translation>
    </message>
    <message>
        <source>limit of error, %1 % of full scale (%2)</source>
        <translation>Fehlergrenze, %1 % vom Endwert (%2)</translation>
    </message>
    <message>
        <source>limit of error, %1 digits (%2)</source>
        <translation>Fehlergrenze, %1 Digits (%2)</translation>
    </message>
    <message>
        <source>limit of error (%1)</source>
        <translation>Fehlergrenze (%1)</translation>
    </message>
    <message>
        <source>resolution, half a division</source>
        <translation>Auflösung, ein halber Skalenteil</translation>
    </message>
    <message>
        <source>feel of the hand</source>
        <translation>Gefühl der Hand</translation>
    </message>
    <message>
        <source>%1: calibration was due on %2; its limit of error can no longer be relied on</source>
        <translation>%1: Kalibrierung war am %2 fällig; auf die Fehlergrenze ist kein Verlass mehr</translation>
    </message>
    <message>
        <source>%1: no calibration is recorded</source>
        <translation>%1: keine Kalibrierung eingetragen</translation>
    </message>
    <message>
        <source>readings of different kinds: %1</source>
        <translation>Messwerte verschiedener Art: %1</translation>
    </message>
    <message>
        <source>mean of %1 readings: %2, spread (standard deviation) %3</source>
        <translation>Mittel aus %1 Messwerten: %2, Streuung (Standardabweichung) %3</translation>
    </message>
    <message>
        <source>the limit is worked out here: the machine&apos;s manual wins</source>
        <translation>die Grenze ist hier errechnet: das Handbuch geht vor</translation>
    </message>
    <message>
        <source>no reading was given</source>
        <translation>kein Messwert angegeben</translation>
    </message>
    <message>
        <source>uncertainty as given, k = 2</source>
        <translation>Unsicherheit wie angegeben, k = 2</translation>
    </message>
    <message>
        <source>ordinary instrument, from memory: replace by the maker&apos;s sheet</source>
        <translation>gewöhnliches Messgerät, aus dem Gedächtnis: durch das Herstellerblatt ersetzen</translation>
    </message>
    <message>
        <source>spread of %1 readings over root %2</source>
        <translation>Streuung von %1 Messwerten durch Wurzel %2</translation>
    </message>
    <message>
        <source>spread of %1 readings over root %2, widened for few readings</source>
        <translation>Streuung von %1 Messwerten durch Wurzel %2, geweitet wegen weniger Messwerte</translation>
    </message>
    <message>
        <source>a spread needs two readings or more; given: %1</source>
        <translation>für eine Streuung braucht es zwei Messwerte oder mehr; angegeben: %1</translation>
    </message>
    <message>
        <source>every reading must be a number</source>
        <translation>jeder Messwert muss eine Zahl sein</translation>
    </message>
    <message>
        <source>largest reading: %1</source>
        <translation>größter Messwert: %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no date: write year, month and day such as 2026-11-25</source>
        <translation>&quot;%1&quot; ist kein Datum: Jahr, Monat und Tag schreiben, etwa 2026-11-25</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no type and class of ISO 6789-1: write I A to I E for one that shows the torque, II A to II G for one that is set</source>
        <translation>&quot;%1&quot; ist kein Typ mit Klasse nach ISO 6789-1: I A bis I E für anzeigende, II A bis II G für eingestellte Schlüssel schreiben</translation>
    </message>
    <message>
        <source>must not be negative, given was &quot;%1&quot;</source>
        <translation>darf nicht negativ sein, angegeben war &quot;%1&quot;</translation>
    </message>
    <message>
        <source>as the shop entered it</source>
        <translation>wie die Werkstatt es eingab</translation>
    </message>
    <message>
        <source>is for torque wrenches alone: leave it empty</source>
        <translation>gilt nur für Drehmomentschlüssel: leer lassen</translation>
    </message>
    <message>
        <source>must be after the day of calibration</source>
        <translation>muss nach dem Tag der Kalibrierung liegen</translation>
    </message>
    <message>
        <source>%1 % of the reading</source>
        <translation>%1 % vom Messwert</translation>
    </message>
    <message>
        <source>%1 % of full scale</source>
        <translation>%1 % vom Endwert</translation>
    </message>
    <message>
        <source>%1 digits</source>
        <translation>%1 Digits</translation>
    </message>
    <message>
        <source>%1 + %2</source>
        <translation>%1 + %2</translation>
    </message>
    <message>
        <source>more than 99.9 %</source>
        <translation>mehr als 99,9 %</translation>
    </message>
    <message>
        <source>less than 0.1 %</source>
        <translation>weniger als 0,1 %</translation>
    </message>
    <message>
        <source>a better instrument: the limits are closer together than twice the uncertainty, so that no value could be accepted with this one</source>
        <translation>ein besseres Messgerät: die Grenzen liegen enger beieinander als die doppelte Unsicherheit, mit diesem wäre kein Wert annehmbar</translation>
    </message>
    <message>
        <source>the value lies on the limit: no instrument will settle it; adjust or renew, then measure again</source>
        <translation>der Wert liegt auf der Grenze: kein Messgerät klärt das; einstellen oder erneuern, dann neu messen</translation>
    </message>
    <message>
        <source>a better instrument: an expanded uncertainty below %1 would settle it</source>
        <translation>ein besseres Messgerät: eine erweiterte Unsicherheit unter %1 würde es klären</translation>
    </message>
    <message>
        <source>more readings: about %1 in all, if their mean stays</source>
        <translation>mehr Messwerte: etwa %1 insgesamt, wenn ihr Mittel bleibt</translation>
    </message>
    <message>
        <source>measured %1, expanded uncertainty %2 (k = 2), standard %3</source>
        <translation>gemessen %1, erweiterte Unsicherheit %2 (k = 2), Standard %3</translation>
    </message>
    <message>
        <source>lower limit %1 moved inward by U (guard band, ISO 14253-1): accept from %2</source>
        <translation>untere Grenze %1 um U nach innen gerückt (Schutzabstand, ISO 14253-1): annehmbar ab %2</translation>
    </message>
    <message>
        <source>upper limit %1 moved inward by U (guard band, ISO 14253-1): accept up to %2</source>
        <translation>obere Grenze %1 um U nach innen gerückt (Schutzabstand, ISO 14253-1): annehmbar bis %2</translation>
    </message>
    <message>
        <source>lower limit %1 as they stand (simple acceptance): accept from %2</source>
        <translation>untere Grenze %1 wie sie ist (einfache Annahme): annehmbar ab %2</translation>
    </message>
    <message>
        <source>upper limit %1 as they stand (simple acceptance): accept up to %2</source>
        <translation>obere Grenze %1 wie sie ist (einfache Annahme): annehmbar bis %2</translation>
    </message>
    <message>
        <source>probability that the true value conforms (JCGM 106): %1</source>
        <translation>Wahrscheinlichkeit, dass der wahre Wert passt (JCGM 106): %1</translation>
    </message>
    <message>
        <source>verdict: %1</source>
        <translation>Urteil: %1</translation>
    </message>
    <message>
        <source>manual, %1</source>
        <translation>Handbuch, %1</translation>
    </message>
    <message>
        <source>shop record, %1</source>
        <translation>Aufzeichnung der Werkstatt, %1</translation>
    </message>
    <message>
        <source>standard, %1</source>
        <translation>Norm, %1</translation>
    </message>
    <message>
        <source>worked out here, %1</source>
        <translation>hier errechnet, %1</translation>
    </message>
    <message>
        <source>combined standard uncertainty u = root of the sum of squares = %1</source>
        <translation>zusammengesetzte Standardunsicherheit u = Wurzel der Quadratsumme = %1</translation>
    </message>
    <message>
        <source>expanded uncertainty U = 2 u = %1 (k = 2, about 95 %)</source>
        <translation>erweiterte Unsicherheit U = 2 u = %1 (k = 2, etwa 95 %)</translation>
    </message>
    <message>
        <source>%1: %2, rectangular: divided by %3 gives u = %4</source>
        <translation>%1: %2, rechteckig: geteilt durch %3 gibt u = %4</translation>
    </message>
    <message>
        <source>%1: %2, triangular: divided by %3 gives u = %4</source>
        <translation>%1: %2, dreieckig: geteilt durch %3 gibt u = %4</translation>
    </message>
    <message>
        <source>%1: %2, normal, k = 2: divided by %3 gives u = %4</source>
        <translation>%1: %2, normal, k = 2: geteilt durch %3 gibt u = %4</translation>
    </message>
    <message>
        <source>%1: %2, standard</source>
        <translation>%1: %2, Standard</translation>
    </message>
    <message>
        <source>%1 is not among the grades that the machine allows: %2</source>
        <translation>%1 ist keine der Sorten, die das Fahrzeug zulässt: %2</translation>
    </message>
    <message>
        <source>Automatic with a belt</source>
        <translation>Automatik mit Riemen</translation>
    </message>
    <message>
        <source>DOT 5 is silicone: it never mixes with DOT 3, 4 or 5.1</source>
        <translation>DOT 5 ist Silikon: nie mit DOT 3, 4 oder 5.1 mischen</translation>
    </message>
    <message>
        <source>Electric start</source>
        <translation>E-Starter</translation>
    </message>
    <message>
        <source>Every machine</source>
        <translation>Jedes Fahrzeug</translation>
    </message>
    <message>
        <source>Four-stroke engine</source>
        <translation>Viertaktmotor</translation>
    </message>
    <message>
        <source>Front disc brake</source>
        <translation>Scheibenbremse vorn</translation>
    </message>
    <message>
        <source>Front drum brake</source>
        <translation>Trommelbremse vorn</translation>
    </message>
    <message>
        <source>Gearbox with clutch</source>
        <translation>Schaltgetriebe mit Kupplung</translation>
    </message>
    <message>
        <source>Kick start</source>
        <translation>Kickstarter</translation>
    </message>
    <message>
        <source>Photos as found</source>
        <translation>Fotos wie vorgefunden</translation>
    </message>
    <message>
        <source>Rear disc brake</source>
        <translation>Scheibenbremse hinten</translation>
    </message>
    <message>
        <source>Rear drum brake</source>
        <translation>Trommelbremse hinten</translation>
    </message>
    <message>
        <source>Two-stroke engine</source>
        <translation>Zweitaktmotor</translation>
    </message>
    <message>
        <source>What works when it comes in</source>
        <translation>Was bei der Annahme geht</translation>
    </message>
    <message>
        <source>absolute pressure</source>
        <translation>Absolutdruck</translation>
    </message>
    <message>
        <source>adjust the free play of the brake</source>
        <translation>Spiel der Bremse einstellen</translation>
    </message>
    <message>
        <source>adjust the free play of the clutch</source>
        <translation>Spiel der Kupplung einstellen</translation>
    </message>
    <message>
        <source>air filter: clean and seated</source>
        <translation>Luftfilter: sauber und richtig eingesetzt</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>automatic</source>
        <translation>Automatik</translation>
    </message>
    <message>
        <source>axle nuts: tight, secured as the maker secured them</source>
        <translation>Achsmuttern: fest, gesichert wie vom Hersteller</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>blank</translation>
    </message>
    <message>
        <source>base gasket</source>
        <translation>Fußdichtung</translation>
    </message>
    <message>
        <source>battery acid: goggles and gloves, water at hand, acid into water and never the other way</source>
        <translation>Batteriesäure: Brille und Handschuhe, Wasser bereit, Säure ins Wasser und nie umgekehrt</translation>
    </message>
    <message>
        <source>battery negative off first, on last</source>
        <translation>Minuspol der Batterie zuerst ab, zuletzt wieder dran</translation>
    </message>
    <message>
        <source>battery negative or chassis earth direct</source>
        <translation>Batterie-Minus oder Masse direkt</translation>
    </message>
    <message>
        <source>battery positive direct (unswitched)</source>
        <translation>Dauerplus von der Batterie (ungeschaltet)</translation>
    </message>
    <message>
        <source>battery: case whole, terminals clean, strapped down, vent hose in place</source>
        <translation>Batterie: Gehäuse ganz, Pole sauber, festgeschnallt, Entlüftungsschlauch am Platz</translation>
    </message>
    <message>
        <source>belt: width and cracks, age</source>
        <translation>Riemen: Breite und Risse, Alter</translation>
    </message>
    <message>
        <source>black</source>
        <translation>schwarz</translation>
    </message>
    <message>
        <source>blade</source>
        <translation>Flachstecker</translation>
    </message>
    <message>
        <source>bleed the brake until the lever stays hard</source>
        <translation>Bremse entlüften, bis der Hebel hart bleibt</translation>
    </message>
    <message>
        <source>bleed the oil pump; set it to its mark</source>
        <translation>Ölpumpe entlüften; auf ihre Marke stellen</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>blau</translation>
    </message>
    <message>
        <source>brake fluid eats paint and skin; only fresh fluid of the grade that the manual names</source>
        <translation>Bremsflüssigkeit frisst Lack und Haut; nur frische der Sorte, die das Handbuch nennt</translation>
    </message>
    <message>
        <source>brake, front</source>
        <translation>Bremse vorn</translation>
    </message>
    <message>
        <source>brake, rear</source>
        <translation>Bremse hinten</translation>
    </message>
    <message>
        <source>breather hose: connected, not blocked</source>
        <translation>Entlüftungsschlauch: angeschlossen, frei</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>braun</translation>
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
        <source>cables and hoses: nothing pulls tight from lock to lock</source>
        <translation>Züge und Schläuche: nichts spannt von Anschlag zu Anschlag</translation>
    </message>
    <message>
        <source>caliper</source>
        <translation>Messschieber</translation>
    </message>
    <message>
        <source>centre the shoes and adjust the free play of the brake</source>
        <translation>Backen zentrieren und Spiel der Bremse einstellen</translation>
    </message>
    <message>
        <source>chain guard: in place</source>
        <translation>Kettenschutz: am Platz</translation>
    </message>
    <message>
        <source>charge warning lamp</source>
        <translation>Ladekontrollleuchte</translation>
    </message>
    <message>
        <source>charges</source>
        <translation>lädt</translation>
    </message>
    <message>
        <source>charging: voltage at the battery rises with the engine running</source>
        <translation>Laden: Spannung an der Batterie steigt bei laufendem Motor</translation>
    </message>
    <message>
        <source>chassis</source>
        <translation>Fahrwerk</translation>
    </message>
    <message>
        <source>circlips of the pin</source>
        <translation>Sicherungsringe des Kolbenbolzens</translation>
    </message>
    <message>
        <source>clutch</source>
        <translation>Kupplung</translation>
    </message>
    <message>
        <source>clutch: lever play right, frees and bites without dragging</source>
        <translation>Kupplung: Hebelspiel richtig, trennt und greift, ohne zu schleifen</translation>
    </message>
    <message>
        <source>compression-gauge</source>
        <translation>Kompressionsprüfer</translation>
    </message>
    <message>
        <source>connector</source>
        <translation>Stecker</translation>
    </message>
    <message>
        <source>consumption</source>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>controls</source>
        <translation>Bedienung</translation>
    </message>
    <message>
        <source>copper paste on the studs</source>
        <translation>Kupferpaste auf die Stehbolzen</translation>
    </message>
    <message>
        <source>cover and its seal: in place, the cooling air free</source>
        <translation>Deckel und seine Dichtung: am Platz, Kühlluft frei</translation>
    </message>
    <message>
        <source>crush washers of the banjo</source>
        <translation>Dichtringe des Hohlschraubenanschlusses</translation>
    </message>
    <message>
        <source>crush washers of the banjo, if it was opened</source>
        <translation>Dichtringe des Hohlschraubenanschlusses, falls er offen war</translation>
    </message>
    <message>
        <source>current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>cylinder base and crankshaft seals: dry</source>
        <translation>Zylinderfuß und Kurbelwellendichtringe: trocken</translation>
    </message>
    <message>
        <source>damage that was there</source>
        <translation>Schäden, die schon da waren</translation>
    </message>
    <message>
        <source>density</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>depth-gauge</source>
        <translation>Profiltiefenmesser</translation>
    </message>
    <message>
        <source>dipped (low) beam</source>
        <translation>Abblendlicht</translation>
    </message>
    <message>
        <source>do not ride before the brake is proved; the machine&apos;s manual and licensed practice come first</source>
        <translation>nicht fahren, bevor die Bremse nachgewiesen ist; Handbuch und fachgerechte Arbeit gehen vor</translation>
    </message>
    <message>
        <source>do not ride yet: %1 (%2)</source>
        <translation>noch nicht fahren: %1 (%2)</translation>
    </message>
    <message>
        <source>do not ride: %1 is not on again</source>
        <translation>nicht fahren: %1 ist nicht wieder dran</translation>
    </message>
    <message>
        <source>do not start yet: %1 (%2)</source>
        <translation>noch nicht starten: %1 (%2)</translation>
    </message>
    <message>
        <source>do not start: %1 is not on again</source>
        <translation>nicht starten: %1 ist nicht wieder dran</translation>
    </message>
    <message>
        <source>drive: takes up smoothly, no squeal, no slip</source>
        <translation>Antrieb: greift sauber, kein Quietschen, kein Rutschen</translation>
    </message>
    <message>
        <source>dynamo field</source>
        <translation>Gleichstromgenerator, Feld</translation>
    </message>
    <message>
        <source>dynamo negative</source>
        <translation>Gleichstromgenerator, Minus</translation>
    </message>
    <message>
        <source>dynamo or generator positive to regulator</source>
        <translation>Gleichstrom- oder Drehstromgenerator, Plus zum Regler</translation>
    </message>
    <message>
        <source>each wire read back against the map: %1</source>
        <translation>jedes Kabel gegen den Plan gelesen: %1</translation>
    </message>
    <message>
        <source>electric charge</source>
        <translation>Ladung</translation>
    </message>
    <message>
        <source>electric motor main connection</source>
        <translation>Elektromotor, Hauptanschluss</translation>
    </message>
    <message>
        <source>electric motor return line</source>
        <translation>Elektromotor, Rückleitung</translation>
    </message>
    <message>
        <source>electric start</source>
        <translation>E-Starter</translation>
    </message>
    <message>
        <source>electrics</source>
        <translation>Elektrik</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>Energie</translation>
    </message>
    <message>
        <source>engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>engine and exhaust</source>
        <translation>Motor und Auspuff</translation>
    </message>
    <message>
        <source>engine oil: level, no fuel or water in it</source>
        <translation>Motoröl: Stand, kein Kraftstoff oder Wasser darin</translation>
    </message>
    <message>
        <source>engine, left side</source>
        <translation>Motor, linke Seite</translation>
    </message>
    <message>
        <source>engine, right side</source>
        <translation>Motor, rechte Seite</translation>
    </message>
    <message>
        <source>engine: no leaks, mounts tight</source>
        <translation>Motor: dicht, Aufhängung fest</translation>
    </message>
    <message>
        <source>every fastener in and tight: %1 (%2)</source>
        <translation>alle Schrauben drin und fest: %1 (%2)</translation>
    </message>
    <message>
        <source>everyday plug-in relay: normally closed output</source>
        <translation>übliches Steckrelais: Ausgang Öffner</translation>
    </message>
    <message>
        <source>everyday plug-in relay: switched output (normally open)</source>
        <translation>übliches Steckrelais: geschalteter Ausgang (Schließer)</translation>
    </message>
    <message>
        <source>exhaust gasket</source>
        <translation>Auspuffdichtung</translation>
    </message>
    <message>
        <source>exhaust port and silencer: not choked with carbon</source>
        <translation>Auslasskanal und Auspuff: nicht mit Ölkohle zugesetzt</translation>
    </message>
    <message>
        <source>exhaust: no leaks, fastened, heat shield in place</source>
        <translation>Auspuff: dicht, befestigt, Hitzeschutz am Platz</translation>
    </message>
    <message>
        <source>feeler gauge</source>
        <translation>Fühlerlehre</translation>
    </message>
    <message>
        <source>feeler-gauge</source>
        <translation>Fühlerlehre</translation>
    </message>
    <message>
        <source>fill and bleed the cooling</source>
        <translation>Kühlung füllen und entlüften</translation>
    </message>
    <message>
        <source>fill with oil and look at the level</source>
        <translation>Öl einfüllen und Stand ansehen</translation>
    </message>
    <message>
        <source>filled again, level right, no leak: %1 (let out: %2)</source>
        <translation>wieder gefüllt, Stand richtig, dicht: %1 (abgelassen: %2)</translation>
    </message>
    <message>
        <source>final drive chain: slack right at its tightest place, no stiff links</source>
        <translation>Kette: Durchhang an der straffsten Stelle richtig, keine steifen Glieder</translation>
    </message>
    <message>
        <source>final drive oil: level, no leak at the wheel shaft</source>
        <translation>Getriebeöl: Stand, kein Leck an der Radwelle</translation>
    </message>
    <message>
        <source>flasher output, second circuit</source>
        <translation>Blinkgeber, Ausgang zweiter Kreis</translation>
    </message>
    <message>
        <source>flasher unit input</source>
        <translation>Blinkgeber, Eingang</translation>
    </message>
    <message>
        <source>flasher unit output (pulsed) to the indicator switch</source>
        <translation>Blinkgeber, Ausgang (getaktet) zum Blinkerschalter</translation>
    </message>
    <message>
        <source>fog lamp</source>
        <translation>Nebelscheinwerfer</translation>
    </message>
    <message>
        <source>force</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>fork</source>
        <translation>Gabelschuh</translation>
    </message>
    <message>
        <source>four-stroke</source>
        <translation>Viertakt</translation>
    </message>
    <message>
        <source>frame number</source>
        <translation>Rahmennummer</translation>
    </message>
    <message>
        <source>frame number: readable, the same as in the papers</source>
        <translation>Rahmennummer: lesbar, dieselbe wie in den Papieren</translation>
    </message>
    <message>
        <source>frame: no cracks at the welds, steering head and swing arm pivot</source>
        <translation>Rahmen: keine Risse an Schweißnähten, Lenkkopf und Schwingenlager</translation>
    </message>
    <message>
        <source>from behind</source>
        <translation>von hinten</translation>
    </message>
    <message>
        <source>from the front</source>
        <translation>von vorn</translation>
    </message>
    <message>
        <source>from the left</source>
        <translation>von links</translation>
    </message>
    <message>
        <source>from the right</source>
        <translation>von rechts</translation>
    </message>
    <message>
        <source>front brake</source>
        <translation>Vorderbremse</translation>
    </message>
    <message>
        <source>front disc brake: disc thickness and run-out, no cracks</source>
        <translation>Scheibenbremse vorn: Scheibendicke und Schlag, keine Risse</translation>
    </message>
    <message>
        <source>front disc brake: hose and fittings dry, not cracked, fluid level and its age</source>
        <translation>Scheibenbremse vorn: Schlauch und Anschlüsse trocken, nicht rissig, Flüssigkeitsstand und Alter</translation>
    </message>
    <message>
        <source>front disc brake: lever or pedal firm, does not creep under pressure</source>
        <translation>Scheibenbremse vorn: Hebel oder Pedal fest, gibt unter Druck nicht nach</translation>
    </message>
    <message>
        <source>front disc brake: pads, both sides</source>
        <translation>Scheibenbremse vorn: Beläge, beide Seiten</translation>
    </message>
    <message>
        <source>front drum brake: cable or rod, adjuster and return spring</source>
        <translation>Trommelbremse vorn: Zug oder Gestänge, Einsteller und Rückholfeder</translation>
    </message>
    <message>
        <source>front drum brake: holds, lets go at once, does not grab</source>
        <translation>Trommelbremse vorn: hält, löst sofort, rupft nicht</translation>
    </message>
    <message>
        <source>front drum brake: lever or pedal travel and wear mark of the cam</source>
        <translation>Trommelbremse vorn: Hebel- oder Pedalweg und Verschleißmarke am Nocken</translation>
    </message>
    <message>
        <source>front fork: no play, dry stanchions, springs back smoothly</source>
        <translation>Vordergabel: kein Spiel, trockene Standrohre, federt sauber zurück</translation>
    </message>
    <message>
        <source>front tyre, date code</source>
        <translation>Vorderreifen, DOT-Zahl</translation>
    </message>
    <message>
        <source>front tyre: tread, age by its date code, no cracks, the size that the papers name</source>
        <translation>Vorderreifen: Profil, Alter nach DOT-Zahl, keine Risse, Größe wie in den Papieren</translation>
    </message>
    <message>
        <source>front wheel: bearing without play, rim true, spokes or bolts tight</source>
        <translation>Vorderrad: Lager ohne Spiel, Felge läuft rund, Speichen oder Schrauben fest</translation>
    </message>
    <message>
        <source>fuel and air</source>
        <translation>Kraftstoff und Luft</translation>
    </message>
    <message>
        <source>fuel off and away from sparks; no flame, rags in a closed tin</source>
        <translation>Kraftstoff zu und fern von Funken; keine Flamme, Lappen in eine geschlossene Dose</translation>
    </message>
    <message>
        <source>fuel on: no drip for five minutes</source>
        <translation>Hahn auf: fünf Minuten kein Tropfen</translation>
    </message>
    <message>
        <source>fuel on: no drip for five minutes; throttle snaps shut</source>
        <translation>Hahn auf: fünf Minuten kein Tropfen; Gas schnappt zu</translation>
    </message>
    <message>
        <source>fuel tank, tap and hoses: dry, not cracked, cap vents</source>
        <translation>Tank, Hahn und Schläuche: trocken, nicht rissig, Deckel belüftet</translation>
    </message>
    <message>
        <source>fuse: of the right value, no wire in its place</source>
        <translation>Sicherung: richtiger Wert, kein Draht statt ihrer</translation>
    </message>
    <message>
        <source>gasket and oil seals</source>
        <translation>Dichtung und Simmerringe</translation>
    </message>
    <message>
        <source>gasket and seal</source>
        <translation>Dichtung und Simmerring</translation>
    </message>
    <message>
        <source>gaskets of the inlet</source>
        <translation>Dichtungen am Ansaugstutzen</translation>
    </message>
    <message>
        <source>gauge pressure</source>
        <translation>Überdruck</translation>
    </message>
    <message>
        <source>gearbox oil: level, clean</source>
        <translation>Getriebeöl: Stand, sauber</translation>
    </message>
    <message>
        <source>gears</source>
        <translation>Gänge</translation>
    </message>
    <message>
        <source>gears and chain</source>
        <translation>Getriebe und Kette</translation>
    </message>
    <message>
        <source>gears: all engage and stay in, neutral is found</source>
        <translation>Gänge: alle rasten ein und bleiben, Leerlauf ist zu finden</translation>
    </message>
    <message>
        <source>generator output, battery positive</source>
        <translation>Generator-Ausgang, Batterie-Plus</translation>
    </message>
    <message>
        <source>generator, battery negative</source>
        <translation>Generator, Batterie-Minus</translation>
    </message>
    <message>
        <source>grease on the bushes</source>
        <translation>Buchsen fetten</translation>
    </message>
    <message>
        <source>grease on the cam only, none near the linings</source>
        <translation>Fett nur am Nocken, keines an die Beläge</translation>
    </message>
    <message>
        <source>green</source>
        <translation>grün</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>grau</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>übergeben</translation>
    </message>
    <message>
        <source>handlebar, left side</source>
        <translation>Lenker, linke Seite</translation>
    </message>
    <message>
        <source>handlebar, levers and grips: tight, free of cracks, ends closed</source>
        <translation>Lenker, Hebel und Griffe: fest, ohne Risse, Enden geschlossen</translation>
    </message>
    <message>
        <source>handlebar, right side</source>
        <translation>Lenker, rechte Seite</translation>
    </message>
    <message>
        <source>head gasket</source>
        <translation>Zylinderkopfdichtung</translation>
    </message>
    <message>
        <source>headlamp feed</source>
        <translation>Scheinwerfer, Zuleitung</translation>
    </message>
    <message>
        <source>headlamp, high beam</source>
        <translation>Scheinwerfer, Fernlicht</translation>
    </message>
    <message>
        <source>headlamp, low beam</source>
        <translation>Scheinwerfer, Abblendlicht</translation>
    </message>
    <message>
        <source>headlamp: low and high beam, tell-tale, aim</source>
        <translation>Scheinwerfer: Abblend- und Fernlicht, Kontrollleuchte, Einstellung</translation>
    </message>
    <message>
        <source>horn</source>
        <translation>Hupe</translation>
    </message>
    <message>
        <source>horn: loud and clear</source>
        <translation>Hupe: laut und klar</translation>
    </message>
    <message>
        <source>hose clips that have lost their spring</source>
        <translation>Schlauchschellen ohne Spannung</translation>
    </message>
    <message>
        <source>hydrometer</source>
        <translation>Säureheber</translation>
    </message>
    <message>
        <source>idle: the rear wheel does not creep when it stands on the ground</source>
        <translation>Leerlauf: das Hinterrad kriecht nicht, wenn es am Boden steht</translation>
    </message>
    <message>
        <source>idles and takes the throttle</source>
        <translation>läuft im Leerlauf und nimmt Gas an</translation>
    </message>
    <message>
        <source>ignition coil high-tension output</source>
        <translation>Zündspule, Hochspannungsausgang</translation>
    </message>
    <message>
        <source>ignition coil or contact breaker, low-tension side</source>
        <translation>Zündspule oder Unterbrecher, Niederspannungsseite</translation>
    </message>
    <message>
        <source>ignition off; high tension can hurt: stop the engine before you touch a lead</source>
        <translation>Zündung aus; Hochspannung kann verletzen: Motor abstellen, bevor ein Kabel berührt wird</translation>
    </message>
    <message>
        <source>ignition switch and stop switch: stop the engine</source>
        <translation>Zündschloss und Stoppschalter: stellen den Motor ab</translation>
    </message>
    <message>
        <source>in another currency, not in the sum: %1, %2 %3</source>
        <translation>in anderer Währung, nicht in der Summe: %1, %2 %3</translation>
    </message>
    <message>
        <source>instrument lamps</source>
        <translation>Instrumentenleuchten</translation>
    </message>
    <message>
        <source>instruments and odometer</source>
        <translation>Instrumente und Kilometerstand</translation>
    </message>
    <message>
        <source>kick start</source>
        <translation>Kickstarter</translation>
    </message>
    <message>
        <source>kick start: engages, springs back, does not slip</source>
        <translation>Kickstarter: greift, federt zurück, rutscht nicht durch</translation>
    </message>
    <message>
        <source>lamps</source>
        <translation>Leuchten</translation>
    </message>
    <message>
        <source>left direction indicators</source>
        <translation>Blinker links</translation>
    </message>
    <message>
        <source>left out: %1 (%2)</source>
        <translation>weggelassen: %1 (%2)</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>let the exhaust and the engine cool down first</source>
        <translation>Auspuff und Motor erst abkühlen lassen</translation>
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
        <source>lights and signals</source>
        <translation>Licht und Signale</translation>
    </message>
    <message>
        <source>look at the oil level</source>
        <translation>Ölstand ansehen</translation>
    </message>
    <message>
        <source>loom: no bare or twisted wires, no chafing at the steering head</source>
        <translation>Kabelbaum: keine blanken oder verdrillten Kabel, kein Scheuern am Lenkkopf</translation>
    </message>
    <message>
        <source>loose terminals</source>
        <translation>lose Anschlüsse</translation>
    </message>
    <message>
        <source>magneto-generator alternating-current output or rectifier input</source>
        <translation>Magnetgenerator, Wechselstrom-Ausgang oder Gleichrichter-Eingang</translation>
    </message>
    <message>
        <source>magneto-generator charging-coil output</source>
        <translation>Magnetgenerator, Ladespulen-Ausgang</translation>
    </message>
    <message>
        <source>main (high) beam and its tell-tale</source>
        <translation>Fernlicht und Fernlichtkontrolle</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>mating face</source>
        <translation>Steckseite</translation>
    </message>
    <message>
        <source>micrometer</source>
        <translation>Bügelmessschraube</translation>
    </message>
    <message>
        <source>mirrors: whole, stay where they are set</source>
        <translation>Spiegel: ganz, bleiben, wie sie gestellt sind</translation>
    </message>
    <message>
        <source>move it by hand: no side play</source>
        <translation>von Hand bewegen: kein Seitenspiel</translation>
    </message>
    <message>
        <source>moves freely at both locks, free play right: %1</source>
        <translation>läuft bei beiden Lenkanschlägen frei, Spiel richtig: %1</translation>
    </message>
    <message>
        <source>multimeter</source>
        <translation>Multimeter</translation>
    </message>
    <message>
        <source>negative lead on last; tight, and covered</source>
        <translation>Minuspol zuletzt; fest und abgedeckt</translation>
    </message>
    <message>
        <source>next: %1 (%2)</source>
        <translation>weiter: %1 (%2)</translation>
    </message>
    <message>
        <source>next: go on stripping, or refit: %1</source>
        <translation>weiter: ausbauen, oder einbauen: %1</translation>
    </message>
    <message>
        <source>next: look it over, or strip the first part</source>
        <translation>weiter: durchsehen oder das erste Teil ausbauen</translation>
    </message>
    <message>
        <source>next: photos as found, and what works</source>
        <translation>weiter: Fotos wie vorgefunden, und was geht</translation>
    </message>
    <message>
        <source>next: prove it and hand it over</source>
        <translation>weiter: nachweisen und übergeben</translation>
    </message>
    <message>
        <source>next: refit %1</source>
        <translation>weiter: einbauen: %1</translation>
    </message>
    <message>
        <source>next: refit %1, bag %2</source>
        <translation>weiter: einbauen: %1, Beutel %2</translation>
    </message>
    <message>
        <source>next: settle what is unsafe: %1</source>
        <translation>weiter: Unsicheres erledigen: %1</translation>
    </message>
    <message>
        <source>no compressed air on old brake dust; mask, wipe wet</source>
        <translation>keine Druckluft auf alten Bremsstaub; Maske, feucht wischen</translation>
    </message>
    <message>
        <source>no leaks</source>
        <translation>keine Lecks</translation>
    </message>
    <message>
        <source>no price is known: %1</source>
        <translation>kein Preis bekannt: %1</translation>
    </message>
    <message>
        <source>nobody knows when the container was opened: brake fluid draws water, take a fresh one</source>
        <translation>niemand weiß, wann das Gebinde geöffnet wurde: Bremsflüssigkeit zieht Wasser, ein frisches nehmen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>not done yet: %1 (%2)</source>
        <translation>noch nicht getan: %1 (%2)</translation>
    </message>
    <message>
        <source>not proved, left out: %1 (%2)</source>
        <translation>nicht nachgewiesen, weggelassen: %1 (%2)</translation>
    </message>
    <message>
        <source>not proved: %1</source>
        <translation>nicht nachgewiesen: %1</translation>
    </message>
    <message>
        <source>nothing open</source>
        <translation>nichts offen</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>number plate lamp</source>
        <translation>Kennzeichenleuchte</translation>
    </message>
    <message>
        <source>oil</source>
        <translation>Öl</translation>
    </message>
    <message>
        <source>oil on its lip</source>
        <translation>Öl auf seine Lippe</translation>
    </message>
    <message>
        <source>oil on the bore</source>
        <translation>Öl auf die Laufbahn</translation>
    </message>
    <message>
        <source>oil pump: turns with the throttle, marks meet, or is blanked off knowingly</source>
        <translation>Ölpumpe: dreht mit dem Gas, Marken decken sich, oder bewusst stillgelegt</translation>
    </message>
    <message>
        <source>oil: tank filled and its hose full, or the tank holds premix</source>
        <translation>Öl: Tank gefüllt und Schlauch voll, oder Gemisch im Tank</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>orange</translation>
    </message>
    <message>
        <source>other instrument</source>
        <translation>anderes Messgerät</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>papers and frame</source>
        <translation>Papiere und Rahmen</translation>
    </message>
    <message>
        <source>parking lamp</source>
        <translation>Parklicht</translation>
    </message>
    <message>
        <source>parking lamp, left</source>
        <translation>Parklicht links</translation>
    </message>
    <message>
        <source>parking lamp, right</source>
        <translation>Parklicht rechts</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>Stift</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>pressure difference</source>
        <translation>Druckunterschied</translation>
    </message>
    <message>
        <source>pressure gauge</source>
        <translation>Manometer</translation>
    </message>
    <message>
        <source>pump the lever until the brake holds; bleed it if the hose was opened</source>
        <translation>Hebel pumpen, bis die Bremse hält; entlüften, falls der Schlauch offen war</translation>
    </message>
    <message>
        <source>push the fork down: it comes back smoothly and nothing leaks</source>
        <translation>Gabel einfedern: sie kommt sauber zurück, nichts leckt</translation>
    </message>
    <message>
        <source>push the tail down: nothing touches or knocks</source>
        <translation>Heck einfedern: nichts streift oder klappert</translation>
    </message>
    <message>
        <source>rear brake</source>
        <translation>Hinterbremse</translation>
    </message>
    <message>
        <source>rear disc brake: disc thickness and run-out, no cracks</source>
        <translation>Scheibenbremse hinten: Scheibendicke und Schlag, keine Risse</translation>
    </message>
    <message>
        <source>rear disc brake: hose and fittings dry, not cracked, fluid level and its age</source>
        <translation>Scheibenbremse hinten: Schlauch und Anschlüsse trocken, nicht rissig, Flüssigkeitsstand und Alter</translation>
    </message>
    <message>
        <source>rear disc brake: lever or pedal firm, does not creep under pressure</source>
        <translation>Scheibenbremse hinten: Hebel oder Pedal fest, gibt unter Druck nicht nach</translation>
    </message>
    <message>
        <source>rear disc brake: pads, both sides</source>
        <translation>Scheibenbremse hinten: Beläge, beide Seiten</translation>
    </message>
    <message>
        <source>rear drum brake: cable or rod, adjuster and return spring</source>
        <translation>Trommelbremse hinten: Zug oder Gestänge, Einsteller und Rückholfeder</translation>
    </message>
    <message>
        <source>rear drum brake: holds, lets go at once, does not grab</source>
        <translation>Trommelbremse hinten: hält, löst sofort, rupft nicht</translation>
    </message>
    <message>
        <source>rear drum brake: lever or pedal travel and wear mark of the cam</source>
        <translation>Trommelbremse hinten: Hebel- oder Pedalweg und Verschleißmarke am Nocken</translation>
    </message>
    <message>
        <source>rear suspension: no play in the bushes, damper dry</source>
        <translation>Hinterradfederung: kein Spiel in den Buchsen, Dämpfer trocken</translation>
    </message>
    <message>
        <source>rear tyre, date code</source>
        <translation>Hinterreifen, DOT-Zahl</translation>
    </message>
    <message>
        <source>rear tyre: tread, age by its date code, no cracks, the size that the papers name</source>
        <translation>Hinterreifen: Profil, Alter nach DOT-Zahl, keine Risse, Größe wie in den Papieren</translation>
    </message>
    <message>
        <source>rear wheel: bearing without play, rim true, spokes or bolts tight</source>
        <translation>Hinterrad: Lager ohne Spiel, Felge läuft rund, Speichen oder Schrauben fest</translation>
    </message>
    <message>
        <source>receptacle</source>
        <translation>Flachsteckhülse</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rot</translation>
    </message>
    <message>
        <source>reflectors: there and whole</source>
        <translation>Rückstrahler: da und ganz</translation>
    </message>
    <message>
        <source>relay coil end (to earth side)</source>
        <translation>Relaisspule, Ende (zur Masse)</translation>
    </message>
    <message>
        <source>relay coil start (feed side)</source>
        <translation>Relaisspule, Anfang (Zuleitung)</translation>
    </message>
    <message>
        <source>resistance</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>right direction indicators</source>
        <translation>Blinker rechts</translation>
    </message>
    <message>
        <source>ring</source>
        <translation>Ringöse</translation>
    </message>
    <message>
        <source>rotational speed</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>round not finished: %1, %2 checks without an answer</source>
        <translation>Runde nicht fertig: %1, %2 Punkte ohne Antwort</translation>
    </message>
    <message>
        <source>round the machine</source>
        <translation>rund ums Fahrzeug</translation>
    </message>
    <message>
        <source>runs as on its photo, clipped, dry under pressure: %1</source>
        <translation>verläuft wie auf dem Foto, geklemmt, unter Druck dicht: %1</translation>
    </message>
    <message>
        <source>sealing washer of the plug</source>
        <translation>Dichtring der Ablassschraube</translation>
    </message>
    <message>
        <source>self-locking nut of its axle</source>
        <translation>Selbstsichernde Mutter ihrer Achse</translation>
    </message>
    <message>
        <source>self-locking nut or split pin of the axle</source>
        <translation>Selbstsichernde Mutter oder Splint der Achse</translation>
    </message>
    <message>
        <source>self-locking nuts of the shock</source>
        <translation>Selbstsichernde Muttern des Federbeins</translation>
    </message>
    <message>
        <source>set the pressure cold</source>
        <translation>Luftdruck kalt einstellen</translation>
    </message>
    <message>
        <source>set the slack of the chain; clip closed to the front</source>
        <translation>Kettendurchhang einstellen; Verschluss mit der geschlossenen Seite nach vorn</translation>
    </message>
    <message>
        <source>shared earth</source>
        <translation>Sammelmasse</translation>
    </message>
    <message>
        <source>shop record</source>
        <translation>Aufzeichnung der Werkstatt</translation>
    </message>
    <message>
        <source>short-circuit (kill) terminal of a magneto ignition</source>
        <translation>Kurzschließklemme (Stopp) einer Magnetzündung</translation>
    </message>
    <message>
        <source>side or position lamp on motorcycles and mopeds</source>
        <translation>Standlicht an Krafträdern und Mopeds</translation>
    </message>
    <message>
        <source>signals</source>
        <translation>Signale</translation>
    </message>
    <message>
        <source>sits as it did, nothing left over: %1</source>
        <translation>sitzt wie vorher, nichts übrig: %1</translation>
    </message>
    <message>
        <source>socket</source>
        <translation>Buchse</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>splice</source>
        <translation>Spleiß</translation>
    </message>
    <message>
        <source>spring clip of the joining link</source>
        <translation>Federverschluss des Kettenschlosses</translation>
    </message>
    <message>
        <source>springs under load: hold them before the last bolt comes out</source>
        <translation>Federn unter Spannung: festhalten, bevor die letzte Schraube herauskommt</translation>
    </message>
    <message>
        <source>sprockets: teeth not hooked, nuts secured</source>
        <translation>Ritzel und Kettenrad: Zähne nicht hakig, Muttern gesichert</translation>
    </message>
    <message>
        <source>stand: springs back, holds the machine upright</source>
        <translation>Ständer: federt zurück, hält das Fahrzeug aufrecht</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>Norm</translation>
    </message>
    <message>
        <source>starter control (solenoid pull-in)</source>
        <translation>Startersteuerung (Magnetschalter)</translation>
    </message>
    <message>
        <source>starter relay output or starter input (main current)</source>
        <translation>Starterrelais-Ausgang oder Startereingang (Hauptstrom)</translation>
    </message>
    <message>
        <source>starter: turns the engine at once, disengages</source>
        <translation>Starter: dreht den Motor sofort, spurt aus</translation>
    </message>
    <message>
        <source>starting interlock: starts only with the brake pulled, the clutch pulled or in neutral, as built</source>
        <translation>Startsperre: startet nur mit gezogener Bremse, gezogener Kupplung oder im Leerlauf, je nach Bauart</translation>
    </message>
    <message>
        <source>starts</source>
        <translation>springt an</translation>
    </message>
    <message>
        <source>steering</source>
        <translation>Lenkung</translation>
    </message>
    <message>
        <source>steering and wheels without play</source>
        <translation>Lenkung und Räder ohne Spiel</translation>
    </message>
    <message>
        <source>steering head: no play, no notch, no tight spot</source>
        <translation>Lenkkopf: kein Spiel, kein Rastpunkt, nicht schwergängig</translation>
    </message>
    <message>
        <source>stop lamp</source>
        <translation>Bremslicht</translation>
    </message>
    <message>
        <source>stop lamp, front lever</source>
        <translation>Bremslicht, vorderer Hebel</translation>
    </message>
    <message>
        <source>stop lamp, rear</source>
        <translation>Bremslicht, hinten</translation>
    </message>
    <message>
        <source>stop lamp: from the front lever and from the rear lever or pedal</source>
        <translation>Bremslicht: vom vorderen Hebel und vom hinteren Hebel oder Pedal</translation>
    </message>
    <message>
        <source>stopped after a photo</source>
        <translation>stehen geblieben nach einem Foto</translation>
    </message>
    <message>
        <source>stopped after measuring: %1</source>
        <translation>stehen geblieben nach dem Messen: %1</translation>
    </message>
    <message>
        <source>stopped after noting: %1</source>
        <translation>stehen geblieben nach dem Befund: %1</translation>
    </message>
    <message>
        <source>stopped after refitting: %1</source>
        <translation>stehen geblieben nach dem Einbau: %1</translation>
    </message>
    <message>
        <source>stopped after: %1</source>
        <translation>stehen geblieben nach: %1</translation>
    </message>
    <message>
        <source>stopped at the part: %1</source>
        <translation>stehen geblieben beim Teil: %1</translation>
    </message>
    <message>
        <source>stopped at the wiring of: %1</source>
        <translation>stehen geblieben bei den Kabeln von: %1</translation>
    </message>
    <message>
        <source>strap the machine on the lift before weight comes off</source>
        <translation>Fahrzeug auf der Bühne verzurren, bevor Gewicht abkommt</translation>
    </message>
    <message>
        <source>stress</source>
        <translation>Spannung im Werkstoff</translation>
    </message>
    <message>
        <source>suspension</source>
        <translation>Federung</translation>
    </message>
    <message>
        <source>swing arm or engine mount: no side play</source>
        <translation>Schwinge oder Motoraufhängung: kein Seitenspiel</translation>
    </message>
    <message>
        <source>switched battery positive (output of the ignition switch)</source>
        <translation>geschaltetes Plus (Ausgang des Zündschlosses)</translation>
    </message>
    <message>
        <source>switched earth: return to negative through a switch or relay</source>
        <translation>geschaltete Masse: Rückleitung über Schalter oder Relais</translation>
    </message>
    <message>
        <source>switched positive after a ballast resistor</source>
        <translation>geschaltetes Plus hinter dem Vorwiderstand</translation>
    </message>
    <message>
        <source>tail lamp</source>
        <translation>Rücklicht</translation>
    </message>
    <message>
        <source>tail lamp and number plate lamp</source>
        <translation>Rücklicht und Kennzeichenleuchte</translation>
    </message>
    <message>
        <source>tail or side lighting, left</source>
        <translation>Schluss- oder Begrenzungsleuchte links</translation>
    </message>
    <message>
        <source>tail or side lighting, right</source>
        <translation>Schluss- oder Begrenzungsleuchte rechts</translation>
    </message>
    <message>
        <source>tail, side-marker, number-plate and instrument lighting</source>
        <translation>Schluss-, Begrenzungs-, Kennzeichen- und Instrumentenleuchten</translation>
    </message>
    <message>
        <source>taken in, nothing done yet</source>
        <translation>angenommen, noch nichts getan</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>temperature difference</source>
        <translation>Temperaturunterschied</translation>
    </message>
    <message>
        <source>terminal grease</source>
        <translation>Polfett</translation>
    </message>
    <message>
        <source>the container cannot have been opened on %1: that day is to come</source>
        <translation>das Gebinde kann nicht am %1 geöffnet worden sein: der Tag kommt erst</translation>
    </message>
    <message>
        <source>the container was opened %1 days ago, on %2: brake fluid draws water, take a fresh one</source>
        <translation>das Gebinde wurde vor %1 Tagen geöffnet, am %2: Bremsflüssigkeit zieht Wasser, ein frisches nehmen</translation>
    </message>
    <message>
        <source>the day of opening is not clear: write it as 2026-11-02</source>
        <translation>der Tag des Öffnens ist unklar: schreiben wie 2026-11-02</translation>
    </message>
    <message>
        <source>the grade of what goes in is not said: read it off the container</source>
        <translation>die Sorte, die hinein soll, ist nicht angegeben: vom Gebinde ablesen</translation>
    </message>
    <message>
        <source>the machine&apos;s grade is not known: read it off the reservoir&apos;s lid or the manual first</source>
        <translation>die Sorte des Fahrzeugs ist nicht bekannt: erst vom Deckel des Behälters oder aus dem Handbuch ablesen</translation>
    </message>
    <message>
        <source>the seal</source>
        <translation>Simmerring</translation>
    </message>
    <message>
        <source>the sum is too large to reckon with: %1</source>
        <translation>der Betrag ist zu groß zum Rechnen: %1</translation>
    </message>
    <message>
        <source>the watch still runs: %1</source>
        <translation>die Uhr läuft noch: %1</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>thin grease on the axle</source>
        <translation>Achse dünn fetten</translation>
    </message>
    <message>
        <source>throttle: free play set, and it snaps shut in every place of the bars</source>
        <translation>Gasgriff: Spiel eingestellt, schnappt bei jeder Lenkerstellung zu</translation>
    </message>
    <message>
        <source>throttle: snaps shut by itself at every steering angle</source>
        <translation>Gasgriff: schnappt bei jedem Lenkeinschlag von selbst zu</translation>
    </message>
    <message>
        <source>tightened to the torque and read: %1 (%2)</source>
        <translation>mit Drehmoment angezogen und abgelesen: %1 (%2)</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>zu knapp</translation>
    </message>
    <message>
        <source>top end: no ticking valve, chain tensioner quiet</source>
        <translation>Ventiltrieb: kein tickendes Ventil, Kettenspanner ruhig</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>torque wrench</source>
        <translation>Drehmomentschlüssel</translation>
    </message>
    <message>
        <source>torque-wrench-100</source>
        <translation>Drehmomentschlüssel 100</translation>
    </message>
    <message>
        <source>torque-wrench-200</source>
        <translation>Drehmomentschlüssel 200</translation>
    </message>
    <message>
        <source>torque-wrench-25</source>
        <translation>Drehmomentschlüssel 25</translation>
    </message>
    <message>
        <source>torque-wrench-5</source>
        <translation>Drehmomentschlüssel 5</translation>
    </message>
    <message>
        <source>try the brake: it holds, and it lets go</source>
        <translation>Bremse probieren: sie hält, und sie löst</translation>
    </message>
    <message>
        <source>turn signal, front left</source>
        <translation>Blinker vorn links</translation>
    </message>
    <message>
        <source>turn signal, front right</source>
        <translation>Blinker vorn rechts</translation>
    </message>
    <message>
        <source>turn signal, rear left</source>
        <translation>Blinker hinten links</translation>
    </message>
    <message>
        <source>turn signal, rear right</source>
        <translation>Blinker hinten rechts</translation>
    </message>
    <message>
        <source>turn signals: all four, at the right rate</source>
        <translation>Blinker: alle vier, im richtigen Takt</translation>
    </message>
    <message>
        <source>turn the engine over by hand: it turns freely</source>
        <translation>Motor von Hand durchdrehen: er dreht frei</translation>
    </message>
    <message>
        <source>turn the steering from stop to stop: no play, no notch, nothing pulls</source>
        <translation>Lenkung von Anschlag zu Anschlag: kein Spiel, kein Rastpunkt, nichts zieht</translation>
    </message>
    <message>
        <source>turn the steering from stop to stop: nothing pulls or pinches</source>
        <translation>Lenkung von Anschlag zu Anschlag: nichts zieht oder klemmt</translation>
    </message>
    <message>
        <source>turn the wheel: it runs free and true</source>
        <translation>Rad drehen: es läuft frei und rund</translation>
    </message>
    <message>
        <source>turquoise</source>
        <translation>türkis</translation>
    </message>
    <message>
        <source>two-stroke</source>
        <translation>Zweitakt</translation>
    </message>
    <message>
        <source>tyre-gauge</source>
        <translation>Reifendruckmesser</translation>
    </message>
    <message>
        <source>tyres hold air</source>
        <translation>Reifen halten Luft</translation>
    </message>
    <message>
        <source>under the seat</source>
        <translation>unter der Sitzbank</translation>
    </message>
    <message>
        <source>unsafe and open: %1</source>
        <translation>unsicher und offen: %1</translation>
    </message>
    <message>
        <source>unsafe, and %1 does not want it put right: %2</source>
        <translation>unsicher, und %1 will es nicht richten lassen: %2</translation>
    </message>
    <message>
        <source>valve cover and oil filter cover: dry</source>
        <translation>Ventildeckel und Ölfilterdeckel: trocken</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violett</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>waits for: %1</source>
        <translation>wartet auf: %1</translation>
    </message>
    <message>
        <source>wheels and tyres</source>
        <translation>Räder und Reifen</translation>
    </message>
    <message>
        <source>white</source>
        <translation>weiß</translation>
    </message>
    <message>
        <source>wiper motor positive input</source>
        <translation>Wischermotor, Plus-Eingang</translation>
    </message>
    <message>
        <source>wire side</source>
        <translation>Kabelseite</translation>
    </message>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>worked out here</source>
        <translation>hier errechnet</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>gelb</translation>
    </message>
    <message>
        <source>Pa absolute</source>
        <translation>Pa absolut</translation>
    </message>
    <message>
        <source>pressure as given: %1 Pa absolute</source>
        <translation>Druck wie angegeben: %1 Pa absolut</translation>
    </message>
    <message>
        <source>standard pressure at %1 m: %2 Pa</source>
        <translation>Normdruck auf %1 m: %2 Pa</translation>
    </message>
    <message>
        <source>outside 15 to 27 degC or 600 to 1100 hPa the CIPM-2007 formula is extrapolated</source>
        <translation>außerhalb 15 bis 27 degC oder 600 bis 1100 hPa ist die Formel CIPM-2007 extrapoliert</translation>
    </message>
    <message>
        <source>hPa absolute</source>
        <translation>hPa absolut</translation>
    </message>
    <message>
        <source>nothing: ready; a load test proves it</source>
        <translation>nichts: bereit; eine Belastungsprobe beweist es</translation>
    </message>
    <message>
        <source>charge at no more than a tenth of its ampere hours, rest an hour or two, measure again</source>
        <translation>mit höchstens einem Zehntel der Amperestunden laden, ein bis zwei Stunden ruhen lassen, neu messen</translation>
    </message>
    <message>
        <source>charge slowly and check every cell with the hydrometer: cells that differ by more than 0.05 are worn out (common practice, no source)</source>
        <translation>langsam laden und jede Zelle mit dem Säureheber prüfen: Zellen, die um mehr als 0,05 abweichen, sind verschlissen (üblich, ohne Quelle)</translation>
    </message>
    <message>
        <source>charge slowly, rest an hour or two, measure again; if it stays below half charge, renew it (common practice, no source)</source>
        <translation>langsam laden, ein bis zwei Stunden ruhen lassen, neu messen; bleibt sie unter halber Ladung, erneuern (üblich, ohne Quelle)</translation>
    </message>
    <message>
        <source>cannot be read in a sealed AGM battery</source>
        <translation>ist bei einer verschlossenen AGM-Batterie nicht zu messen</translation>
    </message>
    <message>
        <source>so low a voltage means a dead cell or a deep discharge, or the nominal voltage is wrong</source>
        <translation>so wenig Spannung heißt tote Zelle, Tiefentladung oder falsche Nennspannung</translation>
    </message>
    <message>
        <source>between the points of the %1 table: %2 %</source>
        <translation>zwischen den Punkten der Tabelle %1: %2 %</translation>
    </message>
    <message>
        <source>no charge can be told yet: let it rest an hour or two, measure again</source>
        <translation>noch ist keine Ladung zu nennen: ein bis zwei Stunden ruhen lassen, neu messen</translation>
    </message>
    <message>
        <source>friction in place of nut_factor, or without it</source>
        <translation>friction statt nut_factor, oder ohne ihn</translation>
    </message>
    <message>
        <source>proof load %1 N: share %2</source>
        <translation>Prüfkraft %1 N: Anteil %2</translation>
    </message>
    <message>
        <source>held to the limit given: %1 N.m</source>
        <translation>auf die angegebene Grenze gehalten: %1 N.m</translation>
    </message>
    <message>
        <source>thread in aluminium: the limit given rules, whatever the bolt could bear</source>
        <translation>Gewinde in Aluminium: es gilt die angegebene Grenze, was auch die Schraube aushielte</translation>
    </message>
    <message>
        <source>colourless to amber</source>
        <translation>farblos bis bernsteinfarben</translation>
    </message>
    <message>
        <source>glycol fluids of DOT 3, DOT 4 and DOT 5.1 mix; the result is no better than the lower grade</source>
        <translation>Glykolflüssigkeiten DOT 3, DOT 4 und DOT 5.1 mischen sich; das Ergebnis ist nicht besser als die geringere Sorte</translation>
    </message>
    <message>
        <source>not known what is in: do not mix; drain, clean and renew all rubber if in doubt</source>
        <translation>unbekannt, was darin ist: nicht mischen; im Zweifel ablassen, reinigen und alle Gummiteile erneuern</translation>
    </message>
    <message>
        <source>%1 and %2 are different families: they attack each other&apos;s rubber and do not mix</source>
        <translation>%1 und %2 sind verschiedene Familien: sie greifen gegenseitig den Gummi an und mischen sich nicht</translation>
    </message>
    <message>
        <source>the same kind of fluid</source>
        <translation>dieselbe Art Flüssigkeit</translation>
    </message>
    <message>
        <source>change of family: strip, clean every passage with the right cleaner and renew all rubber, then fill with the new fluid alone</source>
        <translation>Wechsel der Familie: zerlegen, jeden Kanal mit dem richtigen Reiniger reinigen und alle Gummiteile erneuern, dann nur die neue Flüssigkeit einfüllen</translation>
    </message>
    <message>
        <source>least boiling points of %1: dry %2, wet %3 degC</source>
        <translation>Mindestsiedepunkte von %1: trocken %2, nass %3 degC</translation>
    </message>
    <message>
        <source>the lower grade</source>
        <translation>die geringere Sorte</translation>
    </message>
    <message>
        <source>mineral oil has no boiling point in this standard: the maker&apos;s sheet gives it</source>
        <translation>Mineralöl hat in dieser Norm keinen Siedepunkt: das Herstellerblatt nennt ihn</translation>
    </message>
    <message>
        <source>fuse and connectors between regulator and battery</source>
        <translation>Sicherung und Stecker zwischen Regler und Batterie</translation>
    </message>
    <message>
        <source>earth of regulator and engine</source>
        <translation>Masse von Regler und Motor</translation>
    </message>
    <message>
        <source>brushes and commutator</source>
        <translation>Kohlen und Kollektor</translation>
    </message>
    <message>
        <source>cut-out or regulator contacts</source>
        <translation>Rückstromschalter oder Reglerkontakte</translation>
    </message>
    <message>
        <source>field winding</source>
        <translation>Feldwicklung</translation>
    </message>
    <message>
        <source>connector between alternator and regulator (heat, green copper)</source>
        <translation>Stecker zwischen Lichtmaschine und Regler (Hitze, grünes Kupfer)</translation>
    </message>
    <message>
        <source>alternator winding open or to earth: measure its AC voltage and resistance</source>
        <translation>Wicklung der Lichtmaschine offen oder mit Masseschluss: Wechselspannung und Widerstand messen</translation>
    </message>
    <message>
        <source>regulator or rectifier</source>
        <translation>Regler oder Gleichrichter</translation>
    </message>
    <message>
        <source>voltage drop in leads and earth: measure it with voltage-drop</source>
        <translation>Spannungsabfall in Leitungen und Masse: mit Spannungsabfall messen</translation>
    </message>
    <message>
        <source>battery sulphated or with a bad cell: charge it and repeat</source>
        <translation>Batterie sulfatiert oder mit schlechter Zelle: laden und wiederholen</translation>
    </message>
    <message>
        <source>one phase missing: compare the three AC voltages</source>
        <translation>eine Phase fehlt: die drei Wechselspannungen vergleichen</translation>
    </message>
    <message>
        <source>worn brushes, slipping belt or regulator out of adjustment</source>
        <translation>Kohlen verschlissen, Riemen rutscht oder Regler verstellt</translation>
    </message>
    <message>
        <source>alternator winding partly shorted, magnets weak</source>
        <translation>Windungsschluss in der Lichtmaschine, Magnete schwach</translation>
    </message>
    <message>
        <source>as given</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>üblich, ohne Quelle</translation>
    </message>
    <message>
        <source>rest %1 V, idle %2 V, revs %3 V: rise %4 V</source>
        <translation>Ruhe %1 V, Leerlauf %2 V, Drehzahl %3 V: Anstieg %4 V</translation>
    </message>
    <message>
        <source>battery: it rests as low as with a dead cell; charge and test it, then measure again</source>
        <translation>Batterie: ruht so tief wie mit toter Zelle; laden und prüfen, dann neu messen</translation>
    </message>
    <message>
        <source>it charges, but the battery was low at rest: charge and test it</source>
        <translation>es lädt, aber die Batterie war in Ruhe tief: laden und prüfen</translation>
    </message>
    <message>
        <source>battery: it was low at rest, and an empty one holds the voltage down; charge and test it, then measure again</source>
        <translation>Batterie: war in Ruhe tief, und eine leere hält die Spannung unten; laden und prüfen, dann neu messen</translation>
    </message>
    <message>
        <source>regulator, or its earth or sensing lead</source>
        <translation>Regler, seine Masse oder seine Fühlleitung</translation>
    </message>
    <message>
        <source>battery with an open cell or loose terminal</source>
        <translation>Batterie mit offener Zelle oder losem Pol</translation>
    </message>
    <message>
        <source>regulator contacts stuck</source>
        <translation>Reglerkontakte hängen</translation>
    </message>
    <message>
        <source>overcharging boils the battery and blows bulbs: do not ride on</source>
        <translation>Überladen kocht die Batterie und brennt Lampen durch: nicht weiterfahren</translation>
    </message>
    <message>
        <source>at idle the battery still gives: usual for an old alternator with the lamps on, else look at idle speed and lamps (common practice, no source)</source>
        <translation>im Leerlauf gibt noch die Batterie: üblich bei alter Lichtmaschine mit Licht, sonst Leerlaufdrehzahl und Lampen ansehen (üblich, ohne Quelle)</translation>
    </message>
    <message>
        <source>falls with revs: a connection or the regulator fails as current rises; measure again</source>
        <translation>fällt mit der Drehzahl: eine Verbindung oder der Regler versagt bei mehr Strom; neu messen</translation>
    </message>
    <message>
        <source>ambient at that altitude: %1 kPa</source>
        <translation>Umgebungsdruck auf dieser Höhe: %1 kPa</translation>
    </message>
    <message>
        <source>%1 times the system: %2 mL to have ready</source>
        <translation>%1 Mal die Anlage: %2 mL bereithalten</translation>
    </message>
    <message>
        <source>this band was read in a summary only: advisory</source>
        <translation>dieser Bereich wurde nur in einer Zusammenfassung gelesen: als Hinweis</translation>
    </message>
    <message>
        <source>%1 mm from the line; the tape tells %2 mm</source>
        <translation>%1 mm von der Linie; das Maßband unterscheidet %2 mm</translation>
    </message>
    <message>
        <source>air before %1 kg/m3, after %2 kg/m3: ratio %3</source>
        <translation>Luft vorher %1 kg/m3, nachher %2 kg/m3: Verhältnis %3</translation>
    </message>
    <message>
        <source>jets numbered by diameter: jet area goes with the root of the density ratio, so the diameter with its fourth root</source>
        <translation>nach Durchmesser nummeriert: die Fläche geht mit der Wurzel der Dichte, der Durchmesser also mit der vierten Wurzel</translation>
    </message>
    <message>
        <source>jets numbered by flow: the number goes with the root of the density ratio</source>
        <translation>nach Durchfluss nummeriert: die Nummer geht mit der Wurzel der Dichte</translation>
    </message>
    <message>
        <source>tail and stop together</source>
        <translation>Schluss- und Bremslicht zusammen</translation>
    </message>
    <message>
        <source>one filament at a time</source>
        <translation>ein Faden zur Zeit</translation>
    </message>
    <message>
        <source>some of these bulbs&apos; watts are from memory: read them on the bulb</source>
        <translation>einige dieser Wattzahlen sind aus dem Gedächtnis: von der Lampe ablesen</translation>
    </message>
    <message>
        <source>the battery pays the difference: it goes flat while riding</source>
        <translation>die Batterie zahlt den Unterschied: sie wird beim Fahren leer</translation>
    </message>
    <message>
        <source>no air was lost: the difference is temperature, or within what the gauge can tell</source>
        <translation>keine Luft ging verloren: der Unterschied ist Temperatur, oder liegt in dem, was der Prüfer unterscheidet</translation>
    </message>
    <message>
        <source>no loss: the limit is not reached</source>
        <translation>kein Verlust: die Grenze wird nicht erreicht</translation>
    </message>
    <message>
        <source>does not fit a date</source>
        <translation>passt nicht zu einem Datum</translation>
    </message>
    <message>
        <source>last is a date, this is none</source>
        <translation>last ist ein Datum, dies ist keines</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>overdue by %1 days</source>
        <translation>seit %1 Tagen überfällig</translation>
    </message>
    <message>
        <source>the odometer now, such as 12400 km</source>
        <translation>der Kilometerstand jetzt, etwa 12400 km</translation>
    </message>
    <message>
        <source>calendar: months end on their last day where the day is missing</source>
        <translation>Kalender: Monate enden am letzten Tag, wo der Tag fehlt</translation>
    </message>
    <message>
        <source>fuel to oil from 8 to 200, such as 50, 50:1 or 2 %</source>
        <translation>Kraftstoff zu Öl von 8 bis 200, etwa 50, 50:1 oder 2 %</translation>
    </message>
    <message>
        <source>one or both, from the manual</source>
        <translation>eine oder beide, aus dem Handbuch</translation>
    </message>
    <message>
        <source>uncertainty of the reading at 20 degC: %1 ohm</source>
        <translation>Unsicherheit des Messwerts bei 20 degC: %1 ohm</translation>
    </message>
    <message>
        <source>no uncertainty was given: %1 ohm is assumed, 2 % and 0.02 ohm (common practice, no source)</source>
        <translation>keine Unsicherheit angegeben: %1 ohm angenommen, 2 % und 0,02 ohm (üblich, ohne Quelle)</translation>
    </message>
    <message>
        <source>nearest in steps of %1 mm: %2 mm, which leaves %3 mm</source>
        <translation>nächste in Stufen von %1 mm: %2 mm, lässt %3 mm</translation>
    </message>
    <message>
        <source>it shows less than the true speed: not allowed in most places (from memory of UNECE R39)</source>
        <translation>er zeigt weniger als die wahre Geschwindigkeit: fast überall verboten (aus dem Gedächtnis, UNECE R39)</translation>
    </message>
    <message>
        <source>empty after %1 days: a battery cannot lose more than all</source>
        <translation>leer nach %1 Tagen: eine Batterie kann nicht mehr als alles verlieren</translation>
    </message>
    <message>
        <source>stage %1 of %2: %3 %4</source>
        <translation>Stufe %1 von %2: %3 %4</translation>
    </message>
    <message>
        <source>across three quarters of the breadth, all round; pattern visible on the rest</source>
        <translation>über drei Viertel der Breite, rundum; sonst Profil sichtbar</translation>
    </message>
    <message>
        <source>main grooves in the middle three quarters</source>
        <translation>Hauptrillen in den mittleren drei Vierteln</translation>
    </message>
    <message>
        <source>mopeds, small and light motorcycles</source>
        <translation>Mopeds, Klein- und Leichtkrafträder</translation>
    </message>
    <message>
        <source>middle three quarters</source>
        <translation>mittlere drei Viertel</translation>
    </message>
    <message>
        <source>treadwear indicator at 1/32 in: a making standard, not a roadside limit; states have their own</source>
        <translation>Verschleißanzeiger bei 1/32 in: eine Baunorm, keine Grenze auf der Straße; Bundesstaaten haben eigene</translation>
    </message>
    <message>
        <source>reject below 1/32 in</source>
        <translation>unter 1/32 in ausmustern</translation>
    </message>
    <message>
        <source>motorcycle, or another country</source>
        <translation>motorcycle, oder ein anderes Land</translation>
    </message>
    <message>
        <source>pattern visible</source>
        <translation>Profil sichtbar</translation>
    </message>
    <message>
        <source>no depth is laid down: look whether every original groove shows</source>
        <translation>keine Tiefe vorgeschrieben: nachsehen, ob jede ursprüngliche Rille zu sehen ist</translation>
    </message>
    <message>
        <source>age between %1 and %2 years, limit of the shop %3 years</source>
        <translation>Alter zwischen %1 und %2 Jahren, Grenze der Werkstatt %3 Jahre</translation>
    </message>
    <message>
        <source>three digits: week %1 of a year before 2000 that ends in %2; the decade is not in the code</source>
        <translation>drei Ziffern: Woche %1 eines Jahres vor 2000, das auf %2 endet; das Jahrzehnt steht nicht im Code</translation>
    </message>
    <message>
        <source>age is that of the youngest possible year: the tyre may be ten or twenty years older</source>
        <translation>das Alter ist das des jüngsten möglichen Jahres: der Reifen kann zehn oder zwanzig Jahre älter sein</translation>
    </message>
    <message>
        <source>week %1 of %2: %3 to %4</source>
        <translation>Woche %1 von %2: %3 bis %4</translation>
    </message>
    <message>
        <source>no load index and speed symbol in the marking</source>
        <translation>keine Tragfähigkeitszahl und kein Geschwindigkeitszeichen in der Bezeichnung</translation>
    </message>
    <message>
        <source>rider and luggage are %1 kg; a pair of these tyres holds %2 kg of machine, rider and luggage together</source>
        <translation>Fahrer und Gepäck wiegen %1 kg; ein Paar dieser Reifen trägt %2 kg Fahrzeug, Fahrer und Gepäck zusammen</translation>
    </message>
    <message>
        <source>rider and luggage alone are as much as one of these tyres holds, and most of it rests on the rear: look up the machine&apos;s highest load</source>
        <translation>Fahrer und Gepäck allein sind so viel, wie einer dieser Reifen trägt, und das meiste ruht hinten: höchste Last des Fahrzeugs nachsehen</translation>
    </message>
    <message>
        <source>no check digit in this scheme</source>
        <translation>keine Prüfziffer in diesem Schema</translation>
    </message>
    <message>
        <source>no: 17 characters are wanted, %1 were given</source>
        <translation>nein: 17 Zeichen sind nötig, %1 wurden angegeben</translation>
    </message>
    <message>
        <source>accepted as a plain frame number</source>
        <translation>als einfache Rahmennummer angenommen</translation>
    </message>
    <message>
        <source>%1 characters: not a number of 17</source>
        <translation>%1 Zeichen: keine 17-stellige Nummer</translation>
    </message>
    <message>
        <source>if the plate really shows so many, it is an older scheme without check digit</source>
        <translation>zeigt das Schild wirklich so viele, ist es ein älteres Schema ohne Prüfziffer</translation>
    </message>
    <message>
        <source>no: I, O and Q and signs are never used in a number of 17</source>
        <translation>nein: I, O und Q und Zeichen stehen nie in einer 17-stelligen Nummer</translation>
    </message>
    <message>
        <source>no: position 9 should be %1</source>
        <translation>nein: Stelle 9 müsste %1 sein</translation>
    </message>
    <message>
        <source>outside North America the check digit is not required: there a failed one is only a hint</source>
        <translation>außerhalb Nordamerikas ist die Prüfziffer nicht Pflicht: dort ist eine falsche nur ein Hinweis</translation>
    </message>
    <message>
        <source>position 10 is no year code; outside North America it often is not</source>
        <translation>Stelle 10 ist kein Jahrescode; außerhalb Nordamerikas ist sie es oft nicht</translation>
    </message>
    <message>
        <source>the year code repeats every 30 years, and is only a hint outside North America</source>
        <translation>der Jahrescode wiederholt sich alle 30 Jahre und ist außerhalb Nordamerikas nur ein Hinweis</translation>
    </message>
    <message>
        <source>starter cable under 0.91 m</source>
        <translation>Starterkabel unter 0,91 m</translation>
    </message>
    <message>
        <source>starter cable 0.91 to 1.83 m</source>
        <translation>Starterkabel 0,91 bis 1,83 m</translation>
    </message>
    <message>
        <source>cranking circuit, 0.20 V for each 100 A: give the current</source>
        <translation>Anlasskreis, 0,20 V je 100 A: den Strom angeben</translation>
    </message>
    <message>
        <source>the cranking current in A</source>
        <translation>den Anlassstrom in A</translation>
    </message>
    <message>
        <source>half the 12 V figure at 6 V: common practice, no source</source>
        <translation>die Hälfte des 12-V-Werts bei 6 V: üblich, ohne Quelle</translation>
    </message>
    <message>
        <source>any drop that the meter can tell from zero is too much: %1</source>
        <translation>jeder Abfall, den das Messgerät von null unterscheidet, ist zu viel: %1</translation>
    </message>
    <message>
        <source>the service limit of the manual</source>
        <translation>die Verschleißgrenze des Handbuchs</translation>
    </message>
    <message>
        <source>%1 mm and more</source>
        <translation>%1 mm und mehr</translation>
    </message>
    <message>
        <source>worn %1 mm in %2 km; %3 mm left: %4 km</source>
        <translation>verschlissen %1 mm in %2 km; %3 mm übrig: %4 km</translation>
    </message>
    <message>
        <source>no wear was measured: what remains cannot be told</source>
        <translation>kein Verschleiß gemessen: was bleibt, ist nicht zu sagen</translation>
    </message>
    <message>
        <source>tan (light brown)</source>
        <translation>hellbraun</translation>
    </message>
    <message>
        <source>clear or white</source>
        <translation>klar oder weiß</translation>
    </message>
    <message>
        <source>resistance %1 mohm/m (%2) at %3 degC: %4 mohm/m</source>
        <translation>Widerstand %1 mohm/m (%2) bei %3 degC: %4 mohm/m</translation>
    </message>
    <message>
        <source>solid copper, ASTM B258 size</source>
        <translation>massives Kupfer, Maß nach ASTM B258</translation>
    </message>
    <message>
        <source>by area, from IEC 60228 class 5</source>
        <translation>nach Querschnitt, aus IEC 60228 Klasse 5</translation>
    </message>
    <message>
        <source>the load wants a fuse of %1 A, more than this wire may stand behind (%2 A): take a thicker wire</source>
        <translation>die Last will eine Sicherung von %1 A, mehr als vor diesem Kabel stehen darf (%2 A): ein dickeres Kabel nehmen</translation>
    </message>
    <message>
        <source>fuse: the next blade size from 1.25 x %1 A: %2 A; the wire may stand behind %3 A</source>
        <translation>Sicherung: nächste Flachsicherung ab 1.25 x %1 A: %2 A; vor dem Kabel dürfen %3 A stehen</translation>
    </message>
    <message>
        <source>no blade fuse is large enough: such currents belong to the starter circuit</source>
        <translation>keine Flachsicherung ist groß genug: solche Ströme gehören zum Anlasskreis</translation>
    </message>
    <message>
        <source>this wire may stand behind %1 A at most: take a thicker wire</source>
        <translation>vor diesem Kabel dürfen höchstens %1 A stehen: ein dickeres Kabel nehmen</translation>
    </message>
    <message>
        <source>yes: %1</source>
        <translation>ja: %1</translation>
    </message>
    <message>
        <source>no: %1</source>
        <translation>nein: %1</translation>
    </message>
    <message>
        <source>overdue by %1</source>
        <translation>überfällig um %1</translation>
    </message>
    <message>
        <source>no uncertainty was given: %1 is assumed for an ordinary instrument (common practice, no source)</source>
        <translation>keine Unsicherheit angegeben: %1 wird für ein gewöhnliches Messgerät angenommen (üblich, ohne Quelle)</translation>
    </message>
    <message>
        <source>no verdict: %1</source>
        <translation>kein Urteil: %1</translation>
    </message>
    <message>
        <source>what would settle it: %1</source>
        <translation>was es klären würde: %1</translation>
    </message>
    <message>
        <source>limit: %1</source>
        <translation>Grenze: %1</translation>
    </message>
    <message>
        <source>load index %1 is outside the table of 30 to 80: look it up in the maker&apos;s book</source>
        <translation>Tragfähigkeitszahl %1 liegt außerhalb der Tabelle von 30 bis 80: im Buch des Herstellers nachsehen</translation>
    </message>
    <message>
        <source>speed symbol %1 has no fixed speed in the table</source>
        <translation>Geschwindigkeitszeichen %1 hat in der Tabelle keine feste Geschwindigkeit</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>lassen</translation>
    </message>
    <message>
        <source>down</source>
        <translation>tiefer</translation>
    </message>
    <message>
        <source>up</source>
        <translation>höher</translation>
    </message>
    <message>
        <source>would be more vapour than the whole pressure</source>
        <translation>wäre mehr Dampf als der ganze Druck</translation>
    </message>
    <message>
        <source>a higher pressure or a lower temperature</source>
        <translation>ein höherer Druck oder eine niedrigere Temperatur</translation>
    </message>
    <message>
        <source>stands beside a specific gravity: give one of them</source>
        <translation>steht neben einer Säuredichte: eines von beiden angeben</translation>
    </message>
    <message>
        <source>is missing, and so is specific_gravity</source>
        <translation>fehlt, und specific_gravity auch</translation>
    </message>
    <message>
        <source>one of voltage and specific_gravity</source>
        <translation>eines von voltage und specific_gravity</translation>
    </message>
    <message>
        <source>is more than a battery at rest shows</source>
        <translation>ist mehr, als eine ruhende Batterie zeigt</translation>
    </message>
    <message>
        <source>up to 8 V for a 6 V battery</source>
        <translation>bis 8 V bei einer 6-V-Batterie</translation>
    </message>
    <message>
        <source>up to 16 V for a 12 V battery</source>
        <translation>bis 16 V bei einer 12-V-Batterie</translation>
    </message>
    <message>
        <source>a 6 V battery has half the voltage of the table: %1 V counts as %2 V</source>
        <translation>eine 6-V-Batterie hat die halbe Spannung der Tabelle: %1 V zählen als %2 V</translation>
    </message>
    <message>
        <source>above 13 V it is charging or has not rested: wait an hour or two after charging, then measure again</source>
        <translation>über 13 V lädt sie oder hat nicht geruht: nach dem Laden ein bis zwei Stunden warten, dann neu messen</translation>
    </message>
    <message>
        <source>is not a thread that is known here</source>
        <translation>ist kein hier bekanntes Gewinde</translation>
    </message>
    <message>
        <source>is not a property class of ISO 898-1</source>
        <translation>ist keine Festigkeitsklasse von ISO 898-1</translation>
    </message>
    <message>
        <source>stands beside a nut_factor: they are two ways to say one thing</source>
        <translation>steht neben einem nut_factor: beides sagt dasselbe</translation>
    </message>
    <message>
        <source>is missing, and so is friction</source>
        <translation>fehlt, und friction auch</translation>
    </message>
    <message>
        <source>one of nut_factor (0.05 to 0.6) and friction (0.03 to 0.6)</source>
        <translation>eines von nut_factor (0,05 bis 0,6) und friction (0,03 bis 0,6)</translation>
    </message>
    <message>
        <source>has no part in a sum with nut_factor, which covers all friction</source>
        <translation>hat keinen Platz in einer Rechnung mit nut_factor, der alle Reibung umfasst</translation>
    </message>
    <message>
        <source>is not known for this thread</source>
        <translation>ist für dieses Gewinde nicht bekannt</translation>
    </message>
    <message>
        <source>give it in mm</source>
        <translation>in mm angeben</translation>
    </message>
    <message>
        <source>would stretch this bolt past its proof load of %1 N</source>
        <translation>würde diese Schraube über ihre Prüfkraft von %1 N dehnen</translation>
    </message>
    <message>
        <source>up to %1 N.m with this friction</source>
        <translation>bis %1 N.m bei dieser Reibung</translation>
    </message>
    <message>
        <source>means that the thread strips before the bolt yields: a reduced limit is needed and is not guessed</source>
        <translation>heißt, dass das Gewinde ausreißt, bevor die Schraube nachgibt: eine geringere Grenze ist nötig und wird nicht geraten</translation>
    </message>
    <message>
        <source>give torque_limit, the figure of the manual for this thread</source>
        <translation>torque_limit angeben, den Wert des Handbuchs für dieses Gewinde</translation>
    </message>
    <message>
        <source>is not a grade that is known here</source>
        <translation>ist keine hier bekannte Sorte</translation>
    </message>
    <message>
        <source>an old single-phase alternator gives about 13.5 V at best</source>
        <translation>eine alte einphasige Lichtmaschine gibt höchstens etwa 13,5 V</translation>
    </message>
    <message>
        <source>a three-phase alternator gives about 14.5 V</source>
        <translation>eine Drehstromlichtmaschine gibt etwa 14,5 V</translation>
    </message>
    <message>
        <source>a dynamo with a good regulator gives about 14 V</source>
        <translation>eine Gleichstromlichtmaschine mit gutem Regler gibt etwa 14 V</translation>
    </message>
    <message>
        <source>more lamps or larger bulbs than the generator feeds: see lamp-budget</source>
        <translation>mehr oder größere Lampen, als die Lichtmaschine speist: siehe Lampen und Lichtmaschine</translation>
    </message>
    <message>
        <source>up to %1 V</source>
        <translation>bis %1 V</translation>
    </message>
    <message>
        <source>is not below limit_high</source>
        <translation>liegt nicht unter limit_high</translation>
    </message>
    <message>
        <source>the manual&apos;s two figures</source>
        <translation>die zwei Werte des Handbuchs</translation>
    </message>
    <message>
        <source>is not less than the stroke</source>
        <translation>ist nicht kleiner als der Hub</translation>
    </message>
    <message>
        <source>0 to %1 mm</source>
        <translation>0 bis %1 mm</translation>
    </message>
    <message>
        <source>from exhaust closing only %1 cm3 are compressed</source>
        <translation>ab Auslassschluss werden nur %1 cm3 verdichtet</translation>
    </message>
    <message>
        <source>has an ambiguous unit</source>
        <translation>hat eine mehrdeutige Einheit</translation>
    </message>
    <message>
        <source>is ambiguous</source>
        <translation>ist mehrdeutig</translation>
    </message>
    <message>
        <source>has no unit</source>
        <translation>hat keine Einheit</translation>
    </message>
    <message>
        <source>has a unit that is not known here</source>
        <translation>hat eine hier unbekannte Einheit</translation>
    </message>
    <message>
        <source>is not a unit that is known here</source>
        <translation>ist keine hier bekannte Einheit</translation>
    </message>
    <message>
        <source>must be above zero for a consumption</source>
        <translation>muss bei einem Verbrauch über null sein</translation>
    </message>
    <message>
        <source>such as 60 mpg(imp)</source>
        <translation>etwa 60 mpg(imp)</translation>
    </message>
    <message>
        <source>must not be zero for a consumption</source>
        <translation>darf bei einem Verbrauch nicht null sein</translation>
    </message>
    <message>
        <source>such as 3.5 L/100km</source>
        <translation>etwa 3.5 L/100km</translation>
    </message>
    <message>
        <source>must be above zero for a wire</source>
        <translation>muss bei einem Kabel über null sein</translation>
    </message>
    <message>
        <source>such as 0.75 mm2</source>
        <translation>etwa 0.75 mm2</translation>
    </message>
    <message>
        <source>is below absolute zero</source>
        <translation>liegt unter dem absoluten Nullpunkt</translation>
    </message>
    <message>
        <source>-273.15 degC and more</source>
        <translation>-273,15 degC und mehr</translation>
    </message>
    <message>
        <source>an absolute pressure cannot be negative</source>
        <translation>ein Absolutdruck kann nicht negativ sein</translation>
    </message>
    <message>
        <source>0 and more</source>
        <translation>0 und mehr</translation>
    </message>
    <message>
        <source>a date such as 2026-11-25</source>
        <translation>ein Datum wie 2026-11-25</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>is out of range</source>
        <translation>liegt außerhalb</translation>
    </message>
    <message>
        <source>is not one of the choices</source>
        <translation>ist keine der Möglichkeiten</translation>
    </message>
    <message>
        <source>is so long that the beam would reach the ground first</source>
        <translation>ist so lang, dass der Strahl vorher den Boden träfe</translation>
    </message>
    <message>
        <source>up to %1 m for this lamp height</source>
        <translation>bis %1 m bei dieser Lampenhöhe</translation>
    </message>
    <message>
        <source>is not below the first pressure</source>
        <translation>liegt nicht unter dem ersten Druck</translation>
    </message>
    <message>
        <source>below %1 kPa gauge</source>
        <translation>unter %1 kPa gauge</translation>
    </message>
    <message>
        <source>from the second reading down to %1 kPa: %2 days</source>
        <translation>vom zweiten Messwert bis %1 kPa: %2 Tage</translation>
    </message>
    <message>
        <source>a time such as 6 months, 1 year or 90 days</source>
        <translation>eine Zeit wie 6 months, 1 year oder 90 days</translation>
    </message>
    <message>
        <source>a whole number of months or years</source>
        <translation>eine ganze Zahl von Monaten oder Jahren</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>a distance such as 3000 km</source>
        <translation>eine Strecke wie 3000 km</translation>
    </message>
    <message>
        <source>above 0 km</source>
        <translation>über 0 km</translation>
    </message>
    <message>
        <source>0 to 10000000 km</source>
        <translation>0 bis 10000000 km</translation>
    </message>
    <message>
        <source>is no mixture for a two-stroke</source>
        <translation>ist kein Gemisch für einen Zweitakter</translation>
    </message>
    <message>
        <source>is missing, and so is limit_low</source>
        <translation>fehlt, und limit_low auch</translation>
    </message>
    <message>
        <source>a connection is not corrected for temperature</source>
        <translation>eine Verbindung wird nicht auf Temperatur korrigiert</translation>
    </message>
    <message>
        <source>is above limit_high</source>
        <translation>liegt über limit_high</translation>
    </message>
    <message>
        <source>the manual&apos;s two figures, the smaller first</source>
        <translation>die zwei Werte des Handbuchs, der kleinere zuerst</translation>
    </message>
    <message>
        <source>is too thin for that clearance: nothing would be left of the new one</source>
        <translation>ist zu dünn für dieses Spiel: von der neuen bliebe nichts</translation>
    </message>
    <message>
        <source>check the three figures; the valve may not seat</source>
        <translation>die drei Werte prüfen; das Ventil sitzt vielleicht nicht</translation>
    </message>
    <message>
        <source>stands beside a true distance: give one of them</source>
        <translation>steht neben einer wahren Strecke: eines von beiden angeben</translation>
    </message>
    <message>
        <source>is missing, and so is true_distance</source>
        <translation>fehlt, und true_distance auch</translation>
    </message>
    <message>
        <source>one of true_distance and true_speed</source>
        <translation>eines von true_distance und true_speed</translation>
    </message>
    <message>
        <source>a distance, such as 10.4 km</source>
        <translation>eine Strecke, etwa 10.4 km</translation>
    </message>
    <message>
        <source>a speed, such as 52 km/h</source>
        <translation>eine Geschwindigkeit, etwa 52 km/h</translation>
    </message>
    <message>
        <source>0 to 1000000 km</source>
        <translation>0 bis 1000000 km</translation>
    </message>
    <message>
        <source>0 to 400 km/h</source>
        <translation>0 bis 400 km/h</translation>
    </message>
    <message>
        <source>must be a whole number</source>
        <translation>muss eine ganze Zahl sein</translation>
    </message>
    <message>
        <source>1, 2, 3 and so on</source>
        <translation>1, 2, 3 und so weiter</translation>
    </message>
    <message>
        <source>is not longer than half the stroke</source>
        <translation>ist nicht länger als der halbe Hub</translation>
    </message>
    <message>
        <source>more than %1 mm; about twice the stroke is usual</source>
        <translation>mehr als %1 mm; etwa das Doppelte des Hubs ist üblich</translation>
    </message>
    <message>
        <source>stands beside a travel: give one of them</source>
        <translation>steht neben einem Weg: eines von beiden angeben</translation>
    </message>
    <message>
        <source>is missing, and so is travel</source>
        <translation>fehlt, und travel auch</translation>
    </message>
    <message>
        <source>one of degrees and travel</source>
        <translation>eines von degrees und travel</translation>
    </message>
    <message>
        <source>is more than the stroke</source>
        <translation>ist mehr als der Hub</translation>
    </message>
    <message>
        <source>turned back so far the adapter leaves no arm</source>
        <translation>so weit zurückgedreht lässt der Aufsatz keinen Hebel</translation>
    </message>
    <message>
        <source>an adapter shorter than %1 mm, or another angle</source>
        <translation>ein Aufsatz kürzer als %1 mm, oder ein anderer Winkel</translation>
    </message>
    <message>
        <source>up to 50 cc: every original groove must show</source>
        <translation>bis 50 cc: jede ursprüngliche Rille muss zu sehen sein</translation>
    </message>
    <message>
        <source>is not a date code</source>
        <translation>ist keine DOT-Zahl</translation>
    </message>
    <message>
        <source>names week %1, which does not exist</source>
        <translation>nennt Woche %1, die es nicht gibt</translation>
    </message>
    <message>
        <source>lies in the future: week %1 of %2 began on %3</source>
        <translation>liegt in der Zukunft: Woche %1 von %2 begann am %3</translation>
    </message>
    <message>
        <source>a week 53 is rare: read the code again</source>
        <translation>eine Woche 53 ist selten: den Code noch einmal ablesen</translation>
    </message>
    <message>
        <source>such as 100/90-10 56J, 120/70 R 12 58P or 3.50-10 59J</source>
        <translation>etwa 100/90-10 56J, 120/70 R 12 58P oder 3.50-10 59J</translation>
    </message>
    <message>
        <source>is too long for a tyre marking</source>
        <translation>ist zu lang für eine Reifenbezeichnung</translation>
    </message>
    <message>
        <source>is not a marking that is read here</source>
        <translation>ist keine hier lesbare Bezeichnung</translation>
    </message>
    <message>
        <source>has a width, aspect or rim beyond motorcycle tyres</source>
        <translation>hat Breite, Verhältnis oder Felge jenseits von Kraftradreifen</translation>
    </message>
    <message>
        <source>an inch marking names no height: it is taken as equal to the width (common practice, no source)</source>
        <translation>eine Zollbezeichnung nennt keine Höhe: sie wird gleich der Breite gesetzt (üblich, ohne Quelle)</translation>
    </message>
    <message>
        <source>would end below the ambient pressure: the tyre is flat there</source>
        <translation>läge unter dem Umgebungsdruck: der Reifen ist dort platt</translation>
    </message>
    <message>
        <source>a higher pressure at the start</source>
        <translation>einen höheren Anfangsdruck</translation>
    </message>
    <message>
        <source>is no frame number</source>
        <translation>ist keine Rahmennummer</translation>
    </message>
    <message>
        <source>17 characters, or an older number as stamped</source>
        <translation>17 Zeichen, oder eine ältere Nummer wie eingeschlagen</translation>
    </message>
    <message>
        <source>read it again: 1 for I, 0 for O and Q</source>
        <translation>noch einmal ablesen: 1 statt I, 0 statt O und Q</translation>
    </message>
    <message>
        <source>a right check digit does not prove the number: letters and digits share values</source>
        <translation>eine richtige Prüfziffer beweist die Nummer nicht: Buchstaben und Ziffern teilen sich Werte</translation>
    </message>
    <message>
        <source>is needed: this limit is 0.20 V for each 100 A</source>
        <translation>wird gebraucht: diese Grenze ist 0,20 V je 100 A</translation>
    </message>
    <message>
        <source>is the same as new: nothing could wear</source>
        <translation>ist dasselbe wie neu: nichts könnte verschleißen</translation>
    </message>
    <message>
        <source>is better than new</source>
        <translation>ist besser als neu</translation>
    </message>
    <message>
        <source>up to %1 mm</source>
        <translation>bis %1 mm</translation>
    </message>
    <message>
        <source>stands beside a power: give one of them</source>
        <translation>steht neben einer Leistung: eines von beiden angeben</translation>
    </message>
    <message>
        <source>is missing, and so is power</source>
        <translation>fehlt, und power auch</translation>
    </message>
    <message>
        <source>one of current and power</source>
        <translation>eines von current und power</translation>
    </message>
    <message>
        <source>0.03 to 100 mm2, or 32 to 1 AWG</source>
        <translation>0.03 bis 100 mm2, oder 32 bis 1 AWG</translation>
    </message>
    <message>
        <source>would lose %1 V of %2 V in the wire</source>
        <translation>würde %1 V von %2 V im Kabel verlieren</translation>
    </message>
    <message>
        <source>a thicker wire, a shorter one or a smaller load</source>
        <translation>ein dickeres Kabel, ein kürzeres oder weniger Last</translation>
    </message>
    <message>
        <source>above %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>from %1 up</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>above %1 up to %2</source>
        <translation>über %1 bis %2</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>eines von %1</translation>
    </message>
    <message>
        <source>is missing (%1)</source>
        <translation>fehlt (%1)</translation>
    </message>
    <message>
        <source>%1, a fine pitch written as M10x1.25</source>
        <translation>%1, eine Feinsteigung als M10x1.25 geschrieben</translation>
    </message>
    <message>
        <source>a pitch from 0.2 to %1 mm (the coarse one)</source>
        <translation>eine Steigung von 0.2 bis %1 mm (die grobe)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is neither a bulb type nor a power</source>
        <translation>&quot;%1&quot; ist weder Lampentyp noch Leistung</translation>
    </message>
    <message>
        <source>watts such as 5 W or 35/35 W, or one of %1; &quot;2 x P21W&quot; for two</source>
        <translation>Watt wie 5 W oder 35/35 W, oder eines von %1; &quot;2 x P21W&quot; für zwei</translation>
    </message>
    <message>
        <source>has no rule on file for %1</source>
        <translation>hat keine hinterlegte Vorschrift für %1</translation>
    </message>
    <message>
        <source>weeks 01 to 53; %1</source>
        <translation>Wochen 01 bis 53; %1</translation>
    </message>
    <message>
        <source>a code up to today, %1</source>
        <translation>ein Code bis heute, %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>specific gravity at 26.7 degC: %1 + 0.004 x (%2 F - 80)/10 = %3</source>
        <translation>Säuredichte bei 26,7 degC: %1 + 0,004 x (%2 F - 80)/10 = %3</translation>
    </message>
    <message>
        <source>K = %1 as given</source>
        <translation>K = %1 wie angegeben</translation>
    </message>
    <message>
        <source>preload F = T/(K d) = %1 N.m/(%2 x %3 mm) = %4 N</source>
        <translation>Vorspannkraft F = T/(K d) = %1 N.m/(%2 x %3 mm) = %4 N</translation>
    </message>
    <message>
        <source>stress area As = pi/4 (d - 0.938194 P)^2 = %1 mm2, %2 mm2 in the table</source>
        <translation>Spannungsquerschnitt As = pi/4 (d - 0.938194 P)^2 = %1 mm2, %2 mm2 in der Tabelle</translation>
    </message>
    <message>
        <source>preload F = %1 x %2 MPa x %3 mm2 = %4 N</source>
        <translation>Vorspannkraft F = %1 x %2 MPa x %3 mm2 = %4 N</translation>
    </message>
    <message>
        <source>torque T = K d F = %1 x %2 mm x %3 N = %4 N.m</source>
        <translation>Drehmoment T = K d F = %1 x %2 mm x %3 N = %4 N.m</translation>
    </message>
    <message>
        <source>swept volume = pi/4 x (%1 mm)^2 x %2 mm = %3 cm3</source>
        <translation>Hubraum = pi/4 x (%1 mm)^2 x %2 mm = %3 cm3</translation>
    </message>
    <message>
        <source>ratio = (%1 + %2)/%3 = %4</source>
        <translation>Verhältnis = (%1 + %2)/%3 = %4</translation>
    </message>
    <message>
        <source>line = pi/4 x (%1 mm)^2 x %2 m = %3 mL</source>
        <translation>Leitung = pi/4 x (%1 mm)^2 x %2 m = %3 mL</translation>
    </message>
    <message>
        <source>system = %1 + %2 + %3 = %4 mL</source>
        <translation>Anlage = %1 + %2 + %3 = %4 mL</translation>
    </message>
    <message>
        <source>speed = %1 rpm/%2 x %3 m x 60/1000 = %4 km/h</source>
        <translation>Geschwindigkeit = %1 rpm/%2 x %3 m x 60/1000 = %4 km/h</translation>
    </message>
    <message>
        <source>mean piston speed = S n/30000 = %1 m/s</source>
        <translation>mittlere Kolbengeschwindigkeit = S n/30000 = %1 m/s</translation>
    </message>
    <message>
        <source>drop = per cent/100 x distance = %1 to %2 mm</source>
        <translation>Abfall = Prozent/100 x Abstand = %1 bis %2 mm</translation>
    </message>
    <message>
        <source>jet = %1 x ratio^%2 = %3</source>
        <translation>Düse = %1 x Verhältnis^%2 = %3</translation>
    </message>
    <message>
        <source>spare = %1 W - %2 W = %3 W</source>
        <translation>übrig = %1 W - %2 W = %3 W</translation>
    </message>
    <message>
        <source>second reading at the first temperature: (%1 + %2) x %3 K/%4 K - %5 = %6 kPa</source>
        <translation>zweiter Messwert bei der ersten Temperatur: (%1 + %2) x %3 K/%4 K - %5 = %6 kPa</translation>
    </message>
    <message>
        <source>lost: %1 kPa in %2 days = %3 kPa a day</source>
        <translation>verloren: %1 kPa in %2 Tagen = %3 kPa am Tag</translation>
    </message>
    <message>
        <source>%1 + %2 = %3; from %4 that is %5 days</source>
        <translation>%1 + %2 = %3; ab %4 sind das %5 Tage</translation>
    </message>
    <message>
        <source>%1 + %2 = %3 km; now %4 km: %5 km left</source>
        <translation>%1 + %2 = %3 km; jetzt %4 km: noch %5 km</translation>
    </message>
    <message>
        <source>oil = finished mix/(ratio + 1) = %1 L/(%2 + 1) = %3 mL</source>
        <translation>Öl = fertiges Gemisch/(Verhältnis + 1) = %1 L/(%2 + 1) = %3 mL</translation>
    </message>
    <message>
        <source>oil = fuel/ratio = %1 L/%2 = %3 mL</source>
        <translation>Öl = Kraftstoff/Verhältnis = %1 L/%2 = %3 mL</translation>
    </message>
    <message>
        <source>at 20 degC: %1 ohm/(1 + 0.00393 x (%2 - 20)) = %3 ohm</source>
        <translation>bei 20 degC: %1 ohm/(1 + 0.00393 x (%2 - 20)) = %3 ohm</translation>
    </message>
    <message>
        <source>new shim = %1 + %2 - %3 = %4 mm</source>
        <translation>neue Scheibe = %1 + %2 - %3 = %4 mm</translation>
    </message>
    <message>
        <source>error = (shown - true)/true = (%1 - %2)/%3 = %4 %</source>
        <translation>Fehler = (angezeigt - wahr)/wahr = (%1 - %2)/%3 = %4 %</translation>
    </message>
    <message>
        <source>charge = %1 A x %2 h = %3 Ah of %4 Ah: %5 %</source>
        <translation>Ladung = %1 A x %2 h = %3 Ah von %4 Ah: %5 %</translation>
    </message>
    <message>
        <source>arc = pi D a/360 = %1 mm; chord = D sin(a/2) = %2 mm</source>
        <translation>Bogen = pi D a/360 = %1 mm; Sehne = D sin(a/2) = %2 mm</translation>
    </message>
    <message>
        <source>setting = torque x L/(L + E cos a) = %1 N.m x %2</source>
        <translation>Einstellung = Drehmoment x L/(L + E cos a) = %1 N.m x %2</translation>
    </message>
    <message>
        <source>diameter = %1 in x 25.4 + 2 x %2 mm x %3 = %4 mm</source>
        <translation>Durchmesser = %1 in x 25.4 + 2 x %2 mm x %3 = %4 mm</translation>
    </message>
    <message>
        <source>absolute before: %1 + %2 = %3 kPa</source>
        <translation>absolut vorher: %1 + %2 = %3 kPa</translation>
    </message>
    <message>
        <source>absolute after: x (%1 K / %2 K) = %3 kPa</source>
        <translation>absolut nachher: x (%1 K / %2 K) = %3 kPa</translation>
    </message>
    <message>
        <source>gauge after: less ambient %1 kPa = %2 kPa</source>
        <translation>Überdruck nachher: weniger Umgebung %1 kPa = %2 kPa</translation>
    </message>
    <message>
        <source>sum of value x weight = %1, mod 11 = %2: check digit %3, position 9 shows %4</source>
        <translation>Summe aus Wert x Gewicht = %1, mod 11 = %2: Prüfziffer %3, Stelle 9 zeigt %4</translation>
    </message>
    <message>
        <source>resistance = %1 V/%2 A = %3 ohm</source>
        <translation>Widerstand = %1 V/%2 A = %3 ohm</translation>
    </message>
    <message>
        <source>current = %1 W/%2 V = %3 A</source>
        <translation>Strom = %1 W/%2 V = %3 A</translation>
    </message>
    <message>
        <source>drop = I R L = %1 A x %2 mohm/m x %3 m = %4 V</source>
        <translation>Abfall = I R L = %1 A x %2 mohm/m x %3 m = %4 V</translation>
    </message>
    <message>
        <source>0 straight ahead, 90 square, 180 turned back</source>
        <translation>0 geradeaus, 90 quer, 180 zurück</translation>
    </message>
    <message>
        <source>2 where the return is a wire as well</source>
        <translation>2, wo auch der Rückweg ein Kabel ist</translation>
    </message>
    <message>
        <source>6 months, 1 year, 90 days or 3000 km</source>
        <translation>6 months, 1 year, 90 days oder 3000 km</translation>
    </message>
    <message>
        <source>A starting point for the main jet at another height or temperature.</source>
        <translation>Ein Ausgangspunkt für die Hauptdüse auf anderer Höhe oder bei anderer Temperatur.</translation>
    </message>
    <message>
        <source>A torque for a bolt of known thread and class where the manual gives none.</source>
        <translation>Ein Drehmoment für eine Schraube bekannten Gewindes und bekannter Klasse, wo das Handbuch keines nennt.</translation>
    </message>
    <message>
        <source>A winding&apos;s resistance brought to 20 degC and held against its limits; an earth or a continuity as it is.</source>
        <translation>Der Widerstand einer Wicklung auf 20 degC gebracht und an den Grenzen gemessen; Masse oder Durchgang, wie sie sind.</translation>
    </message>
    <message>
        <source>AGM, sealed</source>
        <translation>AGM, verschlossen</translation>
    </message>
    <message>
        <source>Adapter length E</source>
        <translation>Aufsatzlänge E</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>Age limit of the shop</source>
        <translation>Altersgrenze der Werkstatt</translation>
    </message>
    <message>
        <source>Age of a tyre</source>
        <translation>Alter eines Reifens</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Altitude now</source>
        <translation>Höhe jetzt</translation>
    </message>
    <message>
        <source>Altitude then</source>
        <translation>Höhe damals</translation>
    </message>
    <message>
        <source>Altitude there</source>
        <translation>Höhe dort</translation>
    </message>
    <message>
        <source>Angle a</source>
        <translation>Winkel a</translation>
    </message>
    <message>
        <source>Arc on the flywheel</source>
        <translation>Bogen auf dem Schwungrad</translation>
    </message>
    <message>
        <source>Assumption</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>At idle</source>
        <translation>Im Leerlauf</translation>
    </message>
    <message>
        <source>At rest</source>
        <translation>In Ruhe</translation>
    </message>
    <message>
        <source>At revs</source>
        <translation>Bei Drehzahl</translation>
    </message>
    <message>
        <source>At sea level</source>
        <translation>Auf Meereshöhe</translation>
    </message>
    <message>
        <source>Austria</source>
        <translation>Österreich</translation>
    </message>
    <message>
        <source>Battery voltage at rest, at idle and at revs: whether the charging system works and what to look at.</source>
        <translation>Batteriespannung in Ruhe, im Leerlauf und bei Drehzahl: ob die Ladeanlage geht und wo nachzusehen ist.</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Bore of line</source>
        <translation>Innenweite der Leitung</translation>
    </message>
    <message>
        <source>Brake fluid</source>
        <translation>Bremsflüssigkeit</translation>
    </message>
    <message>
        <source>Caliper or cylinder</source>
        <translation>Sattel oder Zylinder</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Kapazität</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Brennraum</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Charge</source>
        <translation>Ladung</translation>
    </message>
    <message>
        <source>Charge lost</source>
        <translation>Verlorene Ladung</translation>
    </message>
    <message>
        <source>Charge of a battery</source>
        <translation>Ladung der Batterie</translation>
    </message>
    <message>
        <source>Check digit</source>
        <translation>Prüfziffer</translation>
    </message>
    <message>
        <source>Chord on the flywheel</source>
        <translation>Sehne auf dem Schwungrad</translation>
    </message>
    <message>
        <source>Circumference</source>
        <translation>Umfang</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>Clearance measured</source>
        <translation>Gemessenes Spiel</translation>
    </message>
    <message>
        <source>Clearance wanted</source>
        <translation>Gewünschtes Spiel</translation>
    </message>
    <message>
        <source>Clearance with the nearest</source>
        <translation>Spiel mit der nächsten</translation>
    </message>
    <message>
        <source>Coefficient of friction</source>
        <translation>Reibungszahl</translation>
    </message>
    <message>
        <source>Colour of the fuse</source>
        <translation>Farbe der Sicherung</translation>
    </message>
    <message>
        <source>Compression ratio</source>
        <translation>Verdichtungsverhältnis</translation>
    </message>
    <message>
        <source>Compression reading and altitude</source>
        <translation>Kompression und Höhe</translation>
    </message>
    <message>
        <source>Conductors</source>
        <translation>Leiter</translation>
    </message>
    <message>
        <source>Connecting rod</source>
        <translation>Pleuel</translation>
    </message>
    <message>
        <source>Content of the system</source>
        <translation>Inhalt der Anlage</translation>
    </message>
    <message>
        <source>Convert a unit</source>
        <translation>Einheit umrechnen</translation>
    </message>
    <message>
        <source>Country</source>
        <translation>Land</translation>
    </message>
    <message>
        <source>Crank angle</source>
        <translation>Kurbelwinkel</translation>
    </message>
    <message>
        <source>Crank angle to piston travel and back, and the mark on the flywheel.</source>
        <translation>Kurbelwinkel in Kolbenweg und zurück, und die Marke auf dem Schwungrad.</translation>
    </message>
    <message>
        <source>Cross-section</source>
        <translation>Querschnitt</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Current of the load</source>
        <translation>Strom der Last</translation>
    </message>
    <message>
        <source>Current, voltage drop and fuse for a load at the end of a wire.</source>
        <translation>Strom, Spannungsabfall und Sicherung für einen Verbraucher am Ende eines Kabels.</translation>
    </message>
    <message>
        <source>DOT 3, DOT 4, DOT 5, DOT 5.1 or mineral</source>
        <translation>DOT 3, DOT 4, DOT 5, DOT 5.1 oder mineral</translation>
    </message>
    <message>
        <source>DOT 3, DOT 4, DOT 5, DOT 5.1, mineral or unknown</source>
        <translation>DOT 3, DOT 4, DOT 5, DOT 5.1, mineral oder unknown</translation>
    </message>
    <message>
        <source>DOT 5 (silicone) and DOT 5.1 (glycol) sound alike and never mix</source>
        <translation>DOT 5 (Silikon) und DOT 5.1 (Glykol) klingen gleich und mischen sich nie</translation>
    </message>
    <message>
        <source>Date code</source>
        <translation>DOT-Zahl</translation>
    </message>
    <message>
        <source>Days standing</source>
        <translation>Tage im Stand</translation>
    </message>
    <message>
        <source>Days to the limit</source>
        <translation>Tage bis zur Grenze</translation>
    </message>
    <message>
        <source>Days until the limit</source>
        <translation>Tage bis zur Grenze</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>Density altitude</source>
        <translation>Dichtehöhe</translation>
    </message>
    <message>
        <source>Density of the air</source>
        <translation>Dichte der Luft</translation>
    </message>
    <message>
        <source>Density ratio</source>
        <translation>Dichteverhältnis</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Displacement of one cylinder</source>
        <translation>Hubraum eines Zylinders</translation>
    </message>
    <message>
        <source>Distance so far</source>
        <translation>Strecke bisher</translation>
    </message>
    <message>
        <source>Distance to the wall</source>
        <translation>Abstand zur Wand</translation>
    </message>
    <message>
        <source>Does it charge?</source>
        <translation>Lädt es?</translation>
    </message>
    <message>
        <source>Drain while standing</source>
        <translation>Entladung im Stand</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Abfall</translation>
    </message>
    <message>
        <source>Drop measured</source>
        <translation>Gemessener Abfall</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Engine speed</source>
        <translation>Motordrehzahl</translation>
    </message>
    <message>
        <source>Error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Every</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Exhaust port</source>
        <translation>Auslasskanal</translation>
    </message>
    <message>
        <source>Factor</source>
        <translation>Faktor</translation>
    </message>
    <message>
        <source>Final torque</source>
        <translation>Enddrehmoment</translation>
    </message>
    <message>
        <source>Finished mix</source>
        <translation>Fertiges Gemisch</translation>
    </message>
    <message>
        <source>First pressure</source>
        <translation>Erster Druck</translation>
    </message>
    <message>
        <source>First temperature</source>
        <translation>Erste Temperatur</translation>
    </message>
    <message>
        <source>Fluid for a flush</source>
        <translation>Flüssigkeit zum Spülen</translation>
    </message>
    <message>
        <source>Flywheel diameter</source>
        <translation>Schwungraddurchmesser</translation>
    </message>
    <message>
        <source>Frame number</source>
        <translation>Rahmennummer</translation>
    </message>
    <message>
        <source>Friction under the head</source>
        <translation>Reibung unter dem Kopf</translation>
    </message>
    <message>
        <source>From bore, stroke and the volume of the chamber.</source>
        <translation>Aus Bohrung, Hub und Brennraumvolumen.</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>Fuse</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>Generator</source>
        <translation>Lichtmaschine</translation>
    </message>
    <message>
        <source>Germany</source>
        <translation>Deutschland</translation>
    </message>
    <message>
        <source>Greatest angle</source>
        <translation>Größter Winkel</translation>
    </message>
    <message>
        <source>Greatest drop</source>
        <translation>Größter Abfall</translation>
    </message>
    <message>
        <source>H4 (P43t) and HS1 (PX43t) are not alike: do not swap them</source>
        <translation>H4 (P43t) und HS1 (PX43t) sind nicht gleich: nicht tauschen</translation>
    </message>
    <message>
        <source>Headlamp aim</source>
        <translation>Scheinwerfereinstellung</translation>
    </message>
    <message>
        <source>Height of the lamp</source>
        <translation>Höhe der Lampe</translation>
    </message>
    <message>
        <source>How far speedometer or odometer are out.</source>
        <translation>Wie weit Tacho oder Kilometerzähler danebenliegen.</translation>
    </message>
    <message>
        <source>How fast a tyre or a crankcase loses air, with the temperature taken out.</source>
        <translation>Wie schnell ein Reifen oder Kurbelgehäuse Luft verliert, ohne den Einfluss der Temperatur.</translation>
    </message>
    <message>
        <source>How full a lead-acid battery is, from its rested voltage or its acid.</source>
        <translation>Wie voll eine Bleibatterie ist, nach Ruhespannung oder Säure.</translation>
    </message>
    <message>
        <source>How much air there is for the engine to breathe.</source>
        <translation>Wie viel Luft der Motor zu atmen hat.</translation>
    </message>
    <message>
        <source>How much brake or clutch fluid to have ready before the circuit is opened.</source>
        <translation>Wie viel Brems- oder Kupplungsflüssigkeit bereitsteht, bevor der Kreis geöffnet wird.</translation>
    </message>
    <message>
        <source>How much of the battery a standing current takes until the next ride.</source>
        <translation>Wie viel der Batterie ein Ruhestrom bis zur nächsten Fahrt nimmt.</translation>
    </message>
    <message>
        <source>How much oil goes into the fuel.</source>
        <translation>Wie viel Öl in den Kraftstoff kommt.</translation>
    </message>
    <message>
        <source>Ignition timing</source>
        <translation>Zündzeitpunkt</translation>
    </message>
    <message>
        <source>In the machine</source>
        <translation>Im Fahrzeug</translation>
    </message>
    <message>
        <source>In which order and stages to tighten several bolts of one joint.</source>
        <translation>In welcher Reihenfolge und in welchen Stufen mehrere Schrauben einer Verbindung angezogen werden.</translation>
    </message>
    <message>
        <source>Jet</source>
        <translation>Düse</translation>
    </message>
    <message>
        <source>Jet now</source>
        <translation>Düse jetzt</translation>
    </message>
    <message>
        <source>Lamps</source>
        <translation>Lampen</translation>
    </message>
    <message>
        <source>Lamps and generator</source>
        <translation>Lampen und Lichtmaschine</translation>
    </message>
    <message>
        <source>Last done</source>
        <translation>Zuletzt getan</translation>
    </message>
    <message>
        <source>Law</source>
        <translation>Vorschrift</translation>
    </message>
    <message>
        <source>Least angle</source>
        <translation>Kleinster Winkel</translation>
    </message>
    <message>
        <source>Least drop</source>
        <translation>Kleinster Abfall</translation>
    </message>
    <message>
        <source>Least dry boiling point</source>
        <translation>Mindestsiedepunkt trocken</translation>
    </message>
    <message>
        <source>Least wet boiling point</source>
        <translation>Mindestsiedepunkt nass</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Verbleibt</translation>
    </message>
    <message>
        <source>Length of line</source>
        <translation>Länge der Leitung</translation>
    </message>
    <message>
        <source>Length of wire</source>
        <translation>Kabellänge</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>Limit of the manual</source>
        <translation>Grenze des Handbuchs</translation>
    </message>
    <message>
        <source>Limit of the thread</source>
        <translation>Grenze des Gewindes</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Loss</source>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>Loss of pressure</source>
        <translation>Druckverlust</translation>
    </message>
    <message>
        <source>Loss per day</source>
        <translation>Verlust am Tag</translation>
    </message>
    <message>
        <source>Loss that is allowed</source>
        <translation>Erlaubter Verlust</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>Untere Grenze</translation>
    </message>
    <message>
        <source>Lower limit of the manual</source>
        <translation>Untere Grenze des Handbuchs</translation>
    </message>
    <message>
        <source>Lowest allowed</source>
        <translation>Niedrigster erlaubter</translation>
    </message>
    <message>
        <source>M3 to M16, property classes 4.6 to 12.9 of ISO 898-1</source>
        <translation>M3 bis M16, Festigkeitsklassen 4.6 bis 12.9 von ISO 898-1</translation>
    </message>
    <message>
        <source>Made from</source>
        <translation>Gemacht ab</translation>
    </message>
    <message>
        <source>Made to</source>
        <translation>Gemacht bis</translation>
    </message>
    <message>
        <source>Main jet in other air</source>
        <translation>Hauptdüse in anderer Luft</translation>
    </message>
    <message>
        <source>Marking</source>
        <translation>Bezeichnung</translation>
    </message>
    <message>
        <source>Marking of a tyre</source>
        <translation>Bezeichnung eines Reifens</translation>
    </message>
    <message>
        <source>Maryland</source>
        <translation>Maryland</translation>
    </message>
    <message>
        <source>May mix</source>
        <translation>Mischbar</translation>
    </message>
    <message>
        <source>Mean bearing diameter</source>
        <translation>Mittlerer Auflagedurchmesser</translation>
    </message>
    <message>
        <source>Mean piston speed</source>
        <translation>Mittlere Kolbengeschwindigkeit</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Nearest in steps</source>
        <translation>Nächste Stufe</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Nächster Schritt</translation>
    </message>
    <message>
        <source>Nominal voltage</source>
        <translation>Nennspannung</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Number of bolts</source>
        <translation>Zahl der Schrauben</translation>
    </message>
    <message>
        <source>Numbered by</source>
        <translation>Nummeriert nach</translation>
    </message>
    <message>
        <source>Nut factor K</source>
        <translation>Faktor K</translation>
    </message>
    <message>
        <source>Oil</source>
        <translation>Öl</translation>
    </message>
    <message>
        <source>Order of tightening</source>
        <translation>Anzugsreihenfolge</translation>
    </message>
    <message>
        <source>Overall ratio</source>
        <translation>Gesamtübersetzung</translation>
    </message>
    <message>
        <source>Part of the circuit</source>
        <translation>Teil des Stromkreises</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>Piston travel</source>
        <translation>Kolbenweg</translation>
    </message>
    <message>
        <source>Possible years</source>
        <translation>Mögliche Jahre</translation>
    </message>
    <message>
        <source>Power correction SAE J1349</source>
        <translation>Leistungskorrektur SAE J1349</translation>
    </message>
    <message>
        <source>Power lost</source>
        <translation>Verlorene Leistung</translation>
    </message>
    <message>
        <source>Power of the load</source>
        <translation>Leistung der Last</translation>
    </message>
    <message>
        <source>Preload</source>
        <translation>Vorspannkraft</translation>
    </message>
    <message>
        <source>Preload from a torque</source>
        <translation>Vorspannung aus Drehmoment</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>Proof load</source>
        <translation>Prüfkraft</translation>
    </message>
    <message>
        <source>Property class</source>
        <translation>Festigkeitsklasse</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Verhältnis</translation>
    </message>
    <message>
        <source>Ratio to standard air</source>
        <translation>Verhältnis zur Normluft</translation>
    </message>
    <message>
        <source>Ratio, to 1</source>
        <translation>Verhältnis, zu 1</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation>Relative Feuchte</translation>
    </message>
    <message>
        <source>Remaining</source>
        <translation>Bleibt</translation>
    </message>
    <message>
        <source>Reservoir</source>
        <translation>Behälter</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>Resistance at 20 degC</source>
        <translation>Widerstand bei 20 degC</translation>
    </message>
    <message>
        <source>Resistance of a coil or connection</source>
        <translation>Widerstand einer Spule oder Verbindung</translation>
    </message>
    <message>
        <source>Resistance, mohm/m</source>
        <translation>Widerstand, mohm/m</translation>
    </message>
    <message>
        <source>Rider and luggage</source>
        <translation>Fahrer und Gepäck</translation>
    </message>
    <message>
        <source>Rim</source>
        <translation>Felge</translation>
    </message>
    <message>
        <source>Road speed at an engine speed.</source>
        <translation>Fahrgeschwindigkeit bei einer Motordrehzahl.</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Vorschrift</translation>
    </message>
    <message>
        <source>Second pressure</source>
        <translation>Zweiter Druck</translation>
    </message>
    <message>
        <source>Second reading at the first temperature</source>
        <translation>Zweiter Messwert bei der ersten Temperatur</translation>
    </message>
    <message>
        <source>Second temperature</source>
        <translation>Zweite Temperatur</translation>
    </message>
    <message>
        <source>Share of proof load</source>
        <translation>Anteil an der Prüfkraft</translation>
    </message>
    <message>
        <source>Share of the voltage</source>
        <translation>Anteil an der Spannung</translation>
    </message>
    <message>
        <source>Shim</source>
        <translation>Scheibe</translation>
    </message>
    <message>
        <source>Shim fitted</source>
        <translation>Verbaute Scheibe</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Angezeigt</translation>
    </message>
    <message>
        <source>Size, load and speed from what is moulded into the wall.</source>
        <translation>Größe, Last und Geschwindigkeit aus der Aufschrift der Flanke.</translation>
    </message>
    <message>
        <source>Spare</source>
        <translation>Übrig</translation>
    </message>
    <message>
        <source>Specific gravity</source>
        <translation>Säuredichte</translation>
    </message>
    <message>
        <source>Specific gravity at 26.7 degC</source>
        <translation>Säuredichte bei 26,7 degC</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>Speed from gearing</source>
        <translation>Geschwindigkeit aus der Übersetzung</translation>
    </message>
    <message>
        <source>Speedometer error</source>
        <translation>Tachofehler</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Stufen</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Steps of the shims</source>
        <translation>Stufen der Scheiben</translation>
    </message>
    <message>
        <source>Stress area</source>
        <translation>Spannungsquerschnitt</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Hub</translation>
    </message>
    <message>
        <source>System</source>
        <translation>Anlage</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Temperature now</source>
        <translation>Temperatur jetzt</translation>
    </message>
    <message>
        <source>Temperature of the wire</source>
        <translation>Temperatur des Kabels</translation>
    </message>
    <message>
        <source>Temperature then</source>
        <translation>Temperatur damals</translation>
    </message>
    <message>
        <source>Temperature there</source>
        <translation>Temperatur dort</translation>
    </message>
    <message>
        <source>The next date or odometer reading for work that comes again.</source>
        <translation>Der nächste Tag oder Kilometerstand für wiederkehrende Arbeit.</translation>
    </message>
    <message>
        <source>The same quantity in another unit, by exact factors.</source>
        <translation>Dieselbe Größe in anderer Einheit, mit genauen Faktoren.</translation>
    </message>
    <message>
        <source>The volume is</source>
        <translation>Das Volumen ist</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>Thread is in</source>
        <translation>Gewinde sitzt in</translation>
    </message>
    <message>
        <source>Time between</source>
        <translation>Zeit dazwischen</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Mal</translation>
    </message>
    <message>
        <source>Times the system&apos;s content</source>
        <translation>Mal den Inhalt der Anlage</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>To be filled in</source>
        <translation>Einzufüllen</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>Torque for a bolt</source>
        <translation>Drehmoment für eine Schraube</translation>
    </message>
    <message>
        <source>Torque wanted</source>
        <translation>Gewünschtes Drehmoment</translation>
    </message>
    <message>
        <source>Torque wrench with an adapter</source>
        <translation>Drehmomentschlüssel mit Aufsatz</translation>
    </message>
    <message>
        <source>Tread depth</source>
        <translation>Profiltiefe</translation>
    </message>
    <message>
        <source>True distance</source>
        <translation>Wahre Strecke</translation>
    </message>
    <message>
        <source>True speed</source>
        <translation>Wahre Geschwindigkeit</translation>
    </message>
    <message>
        <source>Turn the beam</source>
        <translation>Lichtkegel stellen</translation>
    </message>
    <message>
        <source>Two-stroke mixture</source>
        <translation>Zweitaktgemisch</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Bauart</translation>
    </message>
    <message>
        <source>Tyre pressure in other weather or height</source>
        <translation>Reifendruck bei anderem Wetter oder anderer Höhe</translation>
    </message>
    <message>
        <source>UK inspection</source>
        <translation>britische Prüfung</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Unsicherheit</translation>
    </message>
    <message>
        <source>United Kingdom</source>
        <translation>Vereinigtes Königreich</translation>
    </message>
    <message>
        <source>United States, federal</source>
        <translation>Vereinigte Staaten, Bund</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>Obere Grenze</translation>
    </message>
    <message>
        <source>Upper limit of the manual</source>
        <translation>Obere Grenze des Handbuchs</translation>
    </message>
    <message>
        <source>Valid</source>
        <translation>Gültig</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Value in the unit wanted</source>
        <translation>Wert in der gewünschten Einheit</translation>
    </message>
    <message>
        <source>Valve shim</source>
        <translation>Einstellscheibe</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>Voltage at rest</source>
        <translation>Ruhespannung</translation>
    </message>
    <message>
        <source>Voltage drop</source>
        <translation>Spannungsabfall</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Wear and what remains</source>
        <translation>Verschleiß und was bleibt</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Woche</translation>
    </message>
    <message>
        <source>What a gauge will show when the tyre is warmer, colder, higher or lower.</source>
        <translation>Was der Prüfer zeigt, wenn der Reifen wärmer, kälter, höher oder tiefer ist.</translation>
    </message>
    <message>
        <source>What a torque does to a bolt: how near to its proof load.</source>
        <translation>Was ein Drehmoment mit einer Schraube macht: wie nah an der Prüfkraft.</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>What the compression gauge would have shown at sea level, to compare with the manual.</source>
        <translation>Was der Kompressionsprüfer auf Meereshöhe gezeigt hätte, zum Vergleich mit dem Handbuch.</translation>
    </message>
    <message>
        <source>What to set on the wrench when a crowfoot or extension lengthens it.</source>
        <translation>Was am Schlüssel einzustellen ist, wenn ein Maulaufsatz ihn verlängert.</translation>
    </message>
    <message>
        <source>When a tyre was made, from the date code on its wall.</source>
        <translation>Wann ein Reifen gemacht wurde, nach der DOT-Zahl an der Flanke.</translation>
    </message>
    <message>
        <source>When it is due again</source>
        <translation>Wann es wieder fällig ist</translation>
    </message>
    <message>
        <source>Where the cut-off of the dipped beam belongs on a wall, and which way to turn the lamp.</source>
        <translation>Wo die Hell-Dunkel-Grenze des Abblendlichts an der Wand hingehört, und wohin die Lampe zu drehen ist.</translation>
    </message>
    <message>
        <source>Where to look, likeliest first</source>
        <translation>Wo nachsehen, Wahrscheinlichstes zuerst</translation>
    </message>
    <message>
        <source>Whether a frame number was read rightly, and what years its code may mean.</source>
        <translation>Ob eine Rahmennummer richtig gelesen wurde, und welche Jahre ihr Code bedeuten kann.</translation>
    </message>
    <message>
        <source>Whether a lead, switch or earth loses too much.</source>
        <translation>Ob eine Leitung, ein Schalter oder eine Masse zu viel verliert.</translation>
    </message>
    <message>
        <source>Whether a new fluid may go onto what is in, and what it bears.</source>
        <translation>Ob eine neue Flüssigkeit zu der vorhandenen darf, und was sie aushält.</translation>
    </message>
    <message>
        <source>Whether a part is within its service limit and how far it will go at the same rate.</source>
        <translation>Ob ein Teil in seiner Verschleißgrenze liegt und wie weit es so noch kommt.</translation>
    </message>
    <message>
        <source>Whether the generator feeds all that is lit at once.</source>
        <translation>Ob die Lichtmaschine alles speist, was zugleich leuchtet.</translation>
    </message>
    <message>
        <source>Whether the tread is deep enough for the law of a place.</source>
        <translation>Ob das Profil für das Recht eines Ortes tief genug ist.</translation>
    </message>
    <message>
        <source>Which shim brings the clearance to what is wanted.</source>
        <translation>Welche Scheibe das Ventilspiel auf das gewünschte bringt.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Wire and fuse</source>
        <translation>Kabel und Sicherung</translation>
    </message>
    <message>
        <source>Wrench length L</source>
        <translation>Schlüssellänge L</translation>
    </message>
    <message>
        <source>Wrench setting</source>
        <translation>Einstellung am Schlüssel</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>a crankcase&apos;s accepted drop is the service manual&apos;s figure</source>
        <translation>der zulässige Abfall eines Kurbelgehäuses steht im Werkstatthandbuch</translation>
    </message>
    <message>
        <source>a date such as 2026-11-25 or a distance such as 12400 km</source>
        <translation>ein Datum wie 2026-11-25 oder eine Strecke wie 12400 km</translation>
    </message>
    <message>
        <source>a digital or sliding depth gauge without a better figure is taken to be good to 0.1 mm</source>
        <translation>ein digitaler oder Schiebetiefenmesser ohne bessere Angabe gilt als auf 0,1 mm genau</translation>
    </message>
    <message>
        <source>a drop means something only with the load current flowing</source>
        <translation>ein Abfall sagt nur etwas, wenn der Laststrom fließt</translation>
    </message>
    <message>
        <source>a fuse protects the wire, not the load: never fit a larger one</source>
        <translation>eine Sicherung schützt das Kabel, nicht die Last: nie eine größere einsetzen</translation>
    </message>
    <message>
        <source>a generator gives its rating only at revs; ignition and charging need their share</source>
        <translation>eine Lichtmaschine gibt ihre Nennleistung nur bei Drehzahl; Zündung und Laden brauchen ihren Teil</translation>
    </message>
    <message>
        <source>a legal tyre can be worn out: the maker&apos;s limit is often higher</source>
        <translation>ein zulässiger Reifen kann verschlissen sein: die Grenze des Herstellers liegt oft höher</translation>
    </message>
    <message>
        <source>a loss smaller than the gauge&apos;s error is none that was measured</source>
        <translation>ein Verlust kleiner als der Fehler des Prüfers ist keiner, der gemessen wurde</translation>
    </message>
    <message>
        <source>a metric thread such as M8 or M8x1.25: measure it, or read the parts list</source>
        <translation>ein metrisches Gewinde wie M8 oder M8x1.25: messen oder in der Teileliste nachsehen</translation>
    </message>
    <message>
        <source>a number with its unit, such as 25 lbf.ft</source>
        <translation>eine Zahl mit Einheit, etwa 25 lbf.ft</translation>
    </message>
    <message>
        <source>a pad at its backing plate, a cracked disc or a grooved drum is finished whatever the sum says</source>
        <translation>ein Belag am Träger, eine rissige Scheibe oder eine riefige Trommel ist am Ende, was die Rechnung auch sagt</translation>
    </message>
    <message>
        <source>a skimmed head raises the ratio: fuel and timing must suit it</source>
        <translation>ein geplanter Kopf erhöht das Verhältnis: Kraftstoff und Zündung müssen passen</translation>
    </message>
    <message>
        <source>a starting point only: final jetting is by plug reading and the manual; a weak mixture seizes a two-stroke</source>
        <translation>nur ein Ausgangspunkt: fertig bedüst wird nach Kerzenbild und Handbuch; zu mageres Gemisch frisst einen Zweitakter</translation>
    </message>
    <message>
        <source>a tank filled to the mark holds finished mix</source>
        <translation>ein bis zur Marke gefüllter Tank enthält fertiges Gemisch</translation>
    </message>
    <message>
        <source>a tape lies along the arc, calipers measure the chord</source>
        <translation>ein Maßband liegt am Bogen, ein Messschieber misst die Sehne</translation>
    </message>
    <message>
        <source>a tyre stretches a little: the real change is slightly smaller</source>
        <translation>ein Reifen dehnt sich etwas: die wirkliche Änderung ist etwas kleiner</translation>
    </message>
    <message>
        <source>a winding can pass cold and fail hot</source>
        <translation>eine Wicklung kann kalt gut sein und heiß versagen</translation>
    </message>
    <message>
        <source>a young tyre can be cracked, hard or damaged: look at it</source>
        <translation>ein junger Reifen kann rissig, hart oder beschädigt sein: ansehen</translation>
    </message>
    <message>
        <source>above sea level</source>
        <translation>über Meer</translation>
    </message>
    <message>
        <source>above sea level; the standard pressure there is used</source>
        <translation>über Meer; es gilt der dortige Normdruck</translation>
    </message>
    <message>
        <source>acid burns and charging gas explodes: glasses, gloves, no sparks, negative lead off first</source>
        <translation>Säure ätzt und Ladegas explodiert: Brille, Handschuhe, keine Funken, Minuspol zuerst ab</translation>
    </message>
    <message>
        <source>across, pair by pair</source>
        <translation>über Kreuz, Paar für Paar</translation>
    </message>
    <message>
        <source>air bleeds, needle circuit and fuel change the result (common practice, no source)</source>
        <translation>Luftdüsen, Nadel und Kraftstoff ändern das Ergebnis (üblich, ohne Quelle)</translation>
    </message>
    <message>
        <source>all that is left at top dead centre, by filling with oil</source>
        <translation>alles, was im oberen Totpunkt bleibt, mit Öl ausgelitert</translation>
    </message>
    <message>
        <source>altitude as in the standard atmosphere; CIPM-2007 for 15 to 27 degC and 600 to 1100 hPa; dry and humid formula differ by 0.04 % at no humidity</source>
        <translation>Höhe wie in der Normatmosphäre; CIPM-2007 für 15 bis 27 degC und 600 bis 1100 hPa; trockene und feuchte Formel weichen ohne Feuchte um 0,04 % ab</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>Aluminium</translation>
    </message>
    <message>
        <source>an order printed in the manual or cast beside the bolts wins</source>
        <translation>eine Reihenfolge im Handbuch oder neben den Schrauben eingegossen geht vor</translation>
    </message>
    <message>
        <source>as in the papers</source>
        <translation>wie in den Papieren</translation>
    </message>
    <message>
        <source>as stamped in the frame, 17 characters or an older number</source>
        <translation>wie in den Rahmen eingeschlagen, 17 Zeichen oder eine ältere Nummer</translation>
    </message>
    <message>
        <source>as the gauge shows it</source>
        <translation>wie der Prüfer zeigt</translation>
    </message>
    <message>
        <source>at the bolt, from the manual</source>
        <translation>an der Schraube, aus dem Handbuch</translation>
    </message>
    <message>
        <source>at the most worn place</source>
        <translation>an der am stärksten verschlissenen Stelle</translation>
    </message>
    <message>
        <source>at the most worn place of the middle three quarters</source>
        <translation>an der am stärksten abgefahrenen Stelle der mittleren drei Viertel</translation>
    </message>
    <message>
        <source>at the speed the manual names, often 4000 to 5000 rpm</source>
        <translation>bei der Drehzahl, die das Handbuch nennt, oft 4000 bis 5000 rpm</translation>
    </message>
    <message>
        <source>battery charged and connected, warm engine</source>
        <translation>Batterie geladen und angeschlossen, Motor warm</translation>
    </message>
    <message>
        <source>battery post to its clamp</source>
        <translation>Batteriepol bis Klemme</translation>
    </message>
    <message>
        <source>battery post to starter solenoid</source>
        <translation>Batteriepol bis Magnetschalter</translation>
    </message>
    <message>
        <source>behind the pistons</source>
        <translation>hinter den Kolben</translation>
    </message>
    <message>
        <source>between centres</source>
        <translation>zwischen den Mitten</translation>
    </message>
    <message>
        <source>between marks on the road</source>
        <translation>zwischen Marken an der Straße</translation>
    </message>
    <message>
        <source>between the two probes</source>
        <translation>zwischen den zwei Messspitzen</translation>
    </message>
    <message>
        <source>bolts are numbered round the circle, or along the row, from 1</source>
        <translation>Schrauben sind im Kreis oder entlang der Reihe ab 1 nummeriert</translation>
    </message>
    <message>
        <source>bore in hundredths of a millimetre</source>
        <translation>Bohrung in hundertstel Millimeter</translation>
    </message>
    <message>
        <source>brake fluid harms paint, skin and eyes; brakes are proved before the machine leaves the shop</source>
        <translation>Bremsflüssigkeit schadet Lack, Haut und Augen; Bremsen werden nachgewiesen, bevor das Fahrzeug die Werkstatt verlässt</translation>
    </message>
    <message>
        <source>bulb types or watts that burn together, separated by commas: H4, 2 x P21W, 5 W</source>
        <translation>Lampentypen oder Watt, die zusammen leuchten, durch Kommas getrennt: H4, 2 x P21W, 5 W</translation>
    </message>
    <message>
        <source>by hydrometer; flooded batteries only</source>
        <translation>mit dem Säureheber; nur offene Batterien</translation>
    </message>
    <message>
        <source>by satellite or by stop-watch</source>
        <translation>mit Satellit oder Stoppuhr</translation>
    </message>
    <message>
        <source>centre of the lamp above the ground, rider on</source>
        <translation>Lampenmitte über Boden, mit Fahrer</translation>
    </message>
    <message>
        <source>centred piston pin; dial gauge in line with the cylinder</source>
        <translation>Kolbenbolzen mittig; Messuhr in Zylinderachse</translation>
    </message>
    <message>
        <source>closed tyre, dry air, weather as in the standard atmosphere</source>
        <translation>geschlossener Reifen, trockene Luft, Wetter wie in der Normatmosphäre</translation>
    </message>
    <message>
        <source>coil or winding</source>
        <translation>Spule oder Wicklung</translation>
    </message>
    <message>
        <source>cold, with a feeler gauge</source>
        <translation>kalt, mit der Fühlerlehre</translation>
    </message>
    <message>
        <source>compare the frame with the papers: a number that fits its check digit can still be the wrong one</source>
        <translation>Rahmen mit den Papieren vergleichen: auch eine Nummer mit passender Prüfziffer kann die falsche sein</translation>
    </message>
    <message>
        <source>continuity</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>copper; class 5 areas from the table, others scaled by area</source>
        <translation>Kupfer; Klasse-5-Querschnitte aus der Tabelle, andere nach Querschnitt gerechnet</translation>
    </message>
    <message>
        <source>cut-off on the wall below the lamp&apos;s centre</source>
        <translation>Hell-Dunkel-Grenze an der Wand unter Lampenmitte</translation>
    </message>
    <message>
        <source>disconnect the part first: what lies beside it is measured too</source>
        <translation>Teil zuerst abklemmen: sonst misst man, was daneben liegt, mit</translation>
    </message>
    <message>
        <source>drive square to middle of the nut</source>
        <translation>Vierkant bis Mitte Mutter</translation>
    </message>
    <message>
        <source>dry air without it</source>
        <translation>ohne sie trockene Luft</translation>
    </message>
    <message>
        <source>dynamo</source>
        <translation>Gleichstromlichtmaschine</translation>
    </message>
    <message>
        <source>earth</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>earth side of any load</source>
        <translation>Masseseite eines Verbrauchers</translation>
    </message>
    <message>
        <source>engine off, a while after riding</source>
        <translation>Motor aus, eine Weile nach der Fahrt</translation>
    </message>
    <message>
        <source>engine turns for one turn of the wheel, all stages multiplied</source>
        <translation>Motorumdrehungen je Radumdrehung, alle Stufen multipliziert</translation>
    </message>
    <message>
        <source>engine warm, lamps on</source>
        <translation>Motor warm, Licht an</translation>
    </message>
    <message>
        <source>expanded (k = 2), of the reading as measured; without it an ordinary meter is assumed</source>
        <translation>erweitert (k = 2), des Messwerts; ohne sie wird ein gewöhnliches Gerät angenommen</translation>
    </message>
    <message>
        <source>expanded uncertainty (k = 2) of the instrument; without it an ordinary one is assumed</source>
        <translation>erweiterte Unsicherheit (k = 2) des Messgeräts; ohne sie wird eine gewöhnliche angenommen</translation>
    </message>
    <message>
        <source>fit only sizes that the machine&apos;s papers allow</source>
        <translation>nur Größen montieren, die die Papiere des Fahrzeugs erlauben</translation>
    </message>
    <message>
        <source>flooded, with caps</source>
        <translation>offen, mit Stopfen</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>Durchfluss</translation>
    </message>
    <message>
        <source>flush until it runs clear, whatever the sum says</source>
        <translation>spülen, bis es klar läuft, was die Rechnung auch sagt</translation>
    </message>
    <message>
        <source>for the mean piston speed</source>
        <translation>für die mittlere Kolbengeschwindigkeit</translation>
    </message>
    <message>
        <source>from the first to the second reading</source>
        <translation>vom ersten zum zweiten Messwert</translation>
    </message>
    <message>
        <source>from the lamp</source>
        <translation>von der Lampe</translation>
    </message>
    <message>
        <source>from the manual</source>
        <translation>aus dem Handbuch</translation>
    </message>
    <message>
        <source>from the manual or from a new part</source>
        <translation>aus dem Handbuch oder von einem Neuteil</translation>
    </message>
    <message>
        <source>from the manual, at 20 degC</source>
        <translation>aus dem Handbuch, bei 20 degC</translation>
    </message>
    <message>
        <source>from top dead centre; give this or the angle</source>
        <translation>vom oberen Totpunkt; diesen oder den Winkel angeben</translation>
    </message>
    <message>
        <source>from top dead centre; give this or the travel</source>
        <translation>vom oberen Totpunkt; diesen oder den Weg angeben</translation>
    </message>
    <message>
        <source>fuel alone</source>
        <translation>nur Kraftstoff</translation>
    </message>
    <message>
        <source>fuel to oil by volume, from the manual: 50, 50:1 or 2 %</source>
        <translation>Kraftstoff zu Öl nach Volumen, aus dem Handbuch: 50, 50:1 oder 2 %</translation>
    </message>
    <message>
        <source>gauges and cranking speeds differ: compare with the manual&apos;s method, and cylinders with each other</source>
        <translation>Prüfer und Anlassdrehzahlen sind verschieden: mit dem Verfahren des Handbuchs vergleichen, und Zylinder untereinander</translation>
    </message>
    <message>
        <source>give this or the power</source>
        <translation>diesen oder die Leistung angeben</translation>
    </message>
    <message>
        <source>glass fuses by IEC 60127 carry their speed in letters, FF F M T TT from very fast to very slow: renew like by like</source>
        <translation>Glassicherungen nach IEC 60127 tragen ihre Trägheit in Buchstaben, FF F M T TT von sehr flink bis sehr träge: Gleiches durch Gleiches ersetzen</translation>
    </message>
    <message>
        <source>grip mark to middle of the drive square</source>
        <translation>Griffmarke bis Mitte Vierkant</translation>
    </message>
    <message>
        <source>half of washer face plus hole; an ordinary hexagon head over a medium hole is assumed</source>
        <translation>Hälfte aus Auflage plus Loch; angenommen wird ein gewöhnlicher Sechskantkopf auf mittlerem Loch</translation>
    </message>
    <message>
        <source>hose and pipe together</source>
        <translation>Schlauch und Rohr zusammen</translation>
    </message>
    <message>
        <source>how far the bolt is to be used</source>
        <translation>wie weit die Schraube ausgenutzt werden soll</translation>
    </message>
    <message>
        <source>how often the circuit&apos;s content is pushed through: two or more</source>
        <translation>wie oft der Inhalt durchgedrückt wird: zwei Mal oder mehr</translation>
    </message>
    <message>
        <source>how the bolts lie</source>
        <translation>wie die Schrauben liegen</translation>
    </message>
    <message>
        <source>how the carburettor&apos;s maker numbers jets</source>
        <translation>wie der Vergaserhersteller Düsen nummeriert</translation>
    </message>
    <message>
        <source>ignition off, meter in the negative lead</source>
        <translation>Zündung aus, Messgerät in der Minusleitung</translation>
    </message>
    <message>
        <source>ignition off, plug lead earthed, hands away from the kick-start</source>
        <translation>Zündung aus, Kerzenstecker auf Masse, Hände weg vom Kickstarter</translation>
    </message>
    <message>
        <source>ignition or kill switch, each contact</source>
        <translation>Zünd- oder Stoppschalter, je Kontakt</translation>
    </message>
    <message>
        <source>in how many equal steps</source>
        <translation>in wie vielen gleichen Schritten</translation>
    </message>
    <message>
        <source>in thread and under the head; give this or nut_factor</source>
        <translation>in Gewinde und unter Kopf; diese oder nut_factor angeben</translation>
    </message>
    <message>
        <source>inside diameter, about 3 mm</source>
        <translation>innen, etwa 3 mm</translation>
    </message>
    <message>
        <source>less the resistance of the leads held together</source>
        <translation>abzüglich des Widerstands der zusammengehaltenen Messleitungen</translation>
    </message>
    <message>
        <source>level ground, tyres at pressure, rider on, suspension bounced</source>
        <translation>ebener Boden, Reifen mit Druck, Fahrer darauf, Federung eingefedert</translation>
    </message>
    <message>
        <source>lighting feed plus return</source>
        <translation>Licht, Zuleitung und Rückleitung</translation>
    </message>
    <message>
        <source>limits differ by country, class and day: the law of the place applies</source>
        <translation>Grenzen sind je nach Land, Klasse und Tag verschieden: es gilt das Recht des Ortes</translation>
    </message>
    <message>
        <source>load index 30 to 80, speed symbols with a fixed speed</source>
        <translation>Tragfähigkeitszahl 30 bis 80, Geschwindigkeitszeichen mit fester Geschwindigkeit</translation>
    </message>
    <message>
        <source>loosen in the opposite order</source>
        <translation>in umgekehrter Reihenfolge lösen</translation>
    </message>
    <message>
        <source>magnetic switch</source>
        <translation>Relaisschalter</translation>
    </message>
    <message>
        <source>measured while the load current flows</source>
        <translation>gemessen, während der Laststrom fließt</translation>
    </message>
    <message>
        <source>measured: the stamp may be worn off or wrong</source>
        <translation>gemessen: die Prägung kann abgenutzt oder falsch sein</translation>
    </message>
    <message>
        <source>mechanical starter switch</source>
        <translation>mechanischer Starterschalter</translation>
    </message>
    <message>
        <source>moped</source>
        <translation>Moped</translation>
    </message>
    <message>
        <source>motorcycle</source>
        <translation>Kraftrad</translation>
    </message>
    <message>
        <source>never bleed a hot tyre down to its cold pressure</source>
        <translation>nie einen heißen Reifen auf seinen Kaltdruck ablassen</translation>
    </message>
    <message>
        <source>never let the reservoir run empty; never use again what came out</source>
        <translation>den Behälter nie leer laufen lassen; nie wieder verwenden, was herauskam</translation>
    </message>
    <message>
        <source>never press the starter with the meter in the lead: its fuse blows</source>
        <translation>nie mit dem Messgerät in der Leitung starten: seine Sicherung brennt durch</translation>
    </message>
    <message>
        <source>never run an alternator with the battery off: the spike destroys regulator and lamps</source>
        <translation>nie eine Lichtmaschine ohne Batterie laufen lassen: die Spitze zerstört Regler und Lampen</translation>
    </message>
    <message>
        <source>no clearance at all means that the valve may not close: measure again with a thinner shim</source>
        <translation>gar kein Spiel heißt, dass das Ventil vielleicht nicht schließt: mit dünnerer Scheibe neu messen</translation>
    </message>
    <message>
        <source>no slip of belt, clutch or tyre is allowed for</source>
        <translation>ohne Schlupf von Riemen, Kupplung oder Reifen</translation>
    </message>
    <message>
        <source>nominal</source>
        <translation>Nennwert</translation>
    </message>
    <message>
        <source>nominal sizes of an unloaded tyre: a loaded one rolls a few per cent shorter</source>
        <translation>Nennmaße eines unbelasteten Reifens: ein belasteter rollt einige Prozent kürzer</translation>
    </message>
    <message>
        <source>of a barometer at the place, not reduced to sea level; replaces the altitude</source>
        <translation>eines Barometers am Ort, nicht auf Meereshöhe umgerechnet; ersetzt die Höhe</translation>
    </message>
    <message>
        <source>of a headlamp&apos;s two filaments the larger counts; tail and stop count together</source>
        <translation>von zwei Fäden eines Scheinwerfers zählt der größere; Schluss- und Bremslicht zählen zusammen</translation>
    </message>
    <message>
        <source>of one joint</source>
        <translation>einer Verbindung</translation>
    </message>
    <message>
        <source>of the acid</source>
        <translation>der Säure</translation>
    </message>
    <message>
        <source>of the air</source>
        <translation>der Luft</translation>
    </message>
    <message>
        <source>of the air in the tyre at that reading</source>
        <translation>der Luft im Reifen bei jener Messung</translation>
    </message>
    <message>
        <source>of the air in the tyre now</source>
        <translation>der Luft im Reifen jetzt</translation>
    </message>
    <message>
        <source>of the air inside</source>
        <translation>der Luft darin</translation>
    </message>
    <message>
        <source>of the capacity</source>
        <translation>der Kapazität</translation>
    </message>
    <message>
        <source>of the copper; 18 AWG is read too</source>
        <translation>des Kupfers; 18 AWG wird auch gelesen</translation>
    </message>
    <message>
        <source>of the crankshaft</source>
        <translation>der Kurbelwelle</translation>
    </message>
    <message>
        <source>of the cylinder</source>
        <translation>des Zylinders</translation>
    </message>
    <message>
        <source>of the driven tyre, rolled out under load</source>
        <translation>des Antriebsreifens, unter Last abgerollt</translation>
    </message>
    <message>
        <source>of the machine</source>
        <translation>des Fahrzeugs</translation>
    </message>
    <message>
        <source>of the piston</source>
        <translation>des Kolbens</translation>
    </message>
    <message>
        <source>of the winding</source>
        <translation>der Wicklung</translation>
    </message>
    <message>
        <source>often 0.05 or 0.025</source>
        <translation>oft 0,05 oder 0,025</translation>
    </message>
    <message>
        <source>older and many European and Asian numbers have no check digit</source>
        <translation>ältere und viele europäische und asiatische Nummern haben keine Prüfziffer</translation>
    </message>
    <message>
        <source>one connection</source>
        <translation>eine Verbindung</translation>
    </message>
    <message>
        <source>one per cent line</source>
        <translation>Ein-Prozent-Linie</translation>
    </message>
    <message>
        <source>one to two hours after charging, nothing switched on</source>
        <translation>ein bis zwei Stunden nach dem Laden, nichts eingeschaltet</translation>
    </message>
    <message>
        <source>one way</source>
        <translation>ein Weg</translation>
    </message>
    <message>
        <source>only copper windings are corrected</source>
        <translation>nur Kupferwicklungen werden korrigiert</translation>
    </message>
    <message>
        <source>petrol before the oil goes in</source>
        <translation>Benzin, bevor das Öl hineinkommt</translation>
    </message>
    <message>
        <source>petrol: no flame, fresh air, a can made for it</source>
        <translation>Benzin: keine Flamme, frische Luft, ein dafür gemachter Kanister</translation>
    </message>
    <message>
        <source>printed on the battery</source>
        <translation>steht auf der Batterie</translation>
    </message>
    <message>
        <source>printed on the case</source>
        <translation>steht auf dem Gehäuse</translation>
    </message>
    <message>
        <source>published limits differ and were made for heavier machines: the manual wins</source>
        <translation>veröffentlichte Grenzen sind verschieden und für schwerere Maschinen gemacht: das Handbuch geht vor</translation>
    </message>
    <message>
        <source>published nut factors for the same words differ by up to half, and preload scatters by 25 to 35 % at one torque: a torque never proves a preload</source>
        <translation>veröffentlichte Faktoren für dieselben Worte weichen um bis zur Hälfte ab, und die Vorspannung streut bei einem Drehmoment um 25 bis 35 %: ein Drehmoment beweist nie eine Vorspannung</translation>
    </message>
    <message>
        <source>rated output at riding speed</source>
        <translation>Nennleistung bei Fahrdrehzahl</translation>
    </message>
    <message>
        <source>rated watts at 12 V: at 13.5 V a bulb draws about a sixth more</source>
        <translation>Nennwatt bei 12 V: bei 13,5 V zieht eine Lampe etwa ein Sechstel mehr</translation>
    </message>
    <message>
        <source>rated; give this or the current</source>
        <translation>Nennwert; diesen oder den Strom angeben</translation>
    </message>
    <message>
        <source>refused where the torque would pass the bolt&apos;s proof load</source>
        <translation>wird abgelehnt, wo das Drehmoment die Prüfkraft der Schraube überschritte</translation>
    </message>
    <message>
        <source>regulator output to battery positive</source>
        <translation>Reglerausgang bis Batterie-Plus</translation>
    </message>
    <message>
        <source>replaces the table</source>
        <translation>ersetzt die Tabelle</translation>
    </message>
    <message>
        <source>replaces the usual band</source>
        <translation>ersetzt den üblichen Bereich</translation>
    </message>
    <message>
        <source>rested one to two hours; published tables differ by up to 0.09 V; voltage is not corrected for temperature for want of a second source</source>
        <translation>ein bis zwei Stunden geruht; veröffentlichte Tabellen weichen um bis zu 0,09 V ab; mangels zweiter Quelle ist die Spannung nicht auf Temperatur korrigiert</translation>
    </message>
    <message>
        <source>round the circle</source>
        <translation>rund im Kreis</translation>
    </message>
    <message>
        <source>row, from the middle</source>
        <translation>Reihe, von der Mitte</translation>
    </message>
    <message>
        <source>running engine: exhaust gas, hot parts, loose clothing</source>
        <translation>laufender Motor: Abgas, heiße Teile, lose Kleidung</translation>
    </message>
    <message>
        <source>self-discharge comes on top, more so in the warm and in an old battery</source>
        <translation>Selbstentladung kommt dazu, mehr in Wärme und bei alter Batterie</translation>
    </message>
    <message>
        <source>since the part was new</source>
        <translation>seit das Teil neu war</translation>
    </message>
    <message>
        <source>single-phase alternator</source>
        <translation>einphasige Lichtmaschine</translation>
    </message>
    <message>
        <source>solenoid switch</source>
        <translation>Magnetschalter</translation>
    </message>
    <message>
        <source>stamped on the head; no mark means unknown, not 8.8</source>
        <translation>auf dem Kopf eingeprägt; ohne Zeichen unbekannt, nicht 8.8</translation>
    </message>
    <message>
        <source>starter body to battery negative</source>
        <translation>Startergehäuse bis Batterie-Minus</translation>
    </message>
    <message>
        <source>starter control circuit, both windings on</source>
        <translation>Starter-Steuerkreis, beide Wicklungen an</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>Stahl</translation>
    </message>
    <message>
        <source>steel bolts in steel; soft threads, studs, seals and plastic need the manual&apos;s figure</source>
        <translation>Stahlschrauben in Stahl; weiche Gewinde, Stehbolzen, Dichtungen und Kunststoff brauchen den Wert des Handbuchs</translation>
    </message>
    <message>
        <source>such as 100/90-10 56J or 3.50-10 59J</source>
        <translation>etwa 100/90-10 56J oder 3.50-10 59J</translation>
    </message>
    <message>
        <source>taken as now for dates</source>
        <translation>gilt bei Tagen als jetzt</translation>
    </message>
    <message>
        <source>that flowed</source>
        <translation>der dabei floss</translation>
    </message>
    <message>
        <source>the age limit is the shop&apos;s: common practice, no source</source>
        <translation>die Altersgrenze ist die der Werkstatt: üblich, ohne Quelle</translation>
    </message>
    <message>
        <source>the cap and the manual name the grade: use that one</source>
        <translation>Deckel und Handbuch nennen die Sorte: diese nehmen</translation>
    </message>
    <message>
        <source>the date or the odometer now; today where dates are meant</source>
        <translation>Tag oder Kilometerstand jetzt; heute, wo Tage gemeint sind</translation>
    </message>
    <message>
        <source>the day to count to</source>
        <translation>der Tag, bis zu dem gezählt wird</translation>
    </message>
    <message>
        <source>the figure itself is the manual&apos;s: too early holes the piston</source>
        <translation>der Wert selbst steht im Handbuch: zu früh brennt ein Loch in den Kolben</translation>
    </message>
    <message>
        <source>the finished mix</source>
        <translation>das fertige Gemisch</translation>
    </message>
    <message>
        <source>the hand must pull at the grip mark: anywhere else the sum is wrong</source>
        <translation>die Hand muss an der Griffmarke ziehen: anderswo stimmt die Rechnung nicht</translation>
    </message>
    <message>
        <source>the last four digits of the DOT code, week and year, such as 2508; three before 2000</source>
        <translation>die letzten vier Ziffern der DOT-Zahl, Woche und Jahr, etwa 2508; drei vor 2000</translation>
    </message>
    <message>
        <source>the law of the place applies</source>
        <translation>es gilt das Recht des Ortes</translation>
    </message>
    <message>
        <source>the load holds at the tyre&apos;s reference pressure</source>
        <translation>die Last gilt beim Bezugsdruck des Reifens</translation>
    </message>
    <message>
        <source>the loss is taken as even over time; days are counted from the second reading</source>
        <translation>der Verlust gilt als gleichmäßig; Tage zählen ab dem zweiten Messwert</translation>
    </message>
    <message>
        <source>the machine&apos;s wiring diagram wins</source>
        <translation>der Schaltplan des Fahrzeugs geht vor</translation>
    </message>
    <message>
        <source>the manual&apos;s figure for a soft thread</source>
        <translation>der Wert des Handbuchs für ein weiches Gewinde</translation>
    </message>
    <message>
        <source>the manual&apos;s interval wins; whichever of time and distance comes first counts</source>
        <translation>die Frist des Handbuchs geht vor; von Zeit und Strecke zählt, was zuerst kommt</translation>
    </message>
    <message>
        <source>the manual&apos;s ratio and kind of oil win; too little oil seizes the engine</source>
        <translation>Verhältnis und Ölsorte des Handbuchs gehen vor; zu wenig Öl frisst den Motor</translation>
    </message>
    <message>
        <source>the manual&apos;s service limit</source>
        <translation>die Verschleißgrenze des Handbuchs</translation>
    </message>
    <message>
        <source>the number stamped on it</source>
        <translation>die eingeprägte Nummer</translation>
    </message>
    <message>
        <source>the power correction is for four-stroke petrol engines without supercharger</source>
        <translation>die Leistungskorrektur gilt für Viertakt-Benzinmotoren ohne Lader</translation>
    </message>
    <message>
        <source>the pressure at which something has to be done</source>
        <translation>der Druck, bei dem etwas getan werden muss</translation>
    </message>
    <message>
        <source>the setting must lie in the wrench&apos;s range</source>
        <translation>die Einstellung muss im Bereich des Schlüssels liegen</translation>
    </message>
    <message>
        <source>the torque that is or was applied</source>
        <translation>das angewandte oder vorgesehene Drehmoment</translation>
    </message>
    <message>
        <source>the unit wanted, such as N.m</source>
        <translation>die gewünschte Einheit, etwa N.m</translation>
    </message>
    <message>
        <source>the usual band is worked out here: the manual wins</source>
        <translation>der übliche Bereich ist hier errechnet: das Handbuch geht vor</translation>
    </message>
    <message>
        <source>three-phase alternator</source>
        <translation>Drehstromlichtmaschine</translation>
    </message>
    <message>
        <source>throttle open, engine warm</source>
        <translation>Gas offen, Motor warm</translation>
    </message>
    <message>
        <source>torque and energy, gauge and absolute pressure are not converted into each other</source>
        <translation>Drehmoment und Energie, Über- und Absolutdruck werden nicht ineinander umgerechnet</translation>
    </message>
    <message>
        <source>torque factor of the surface, about 0.2 dry steel, 0.15 oiled; give this or friction</source>
        <translation>Drehmomentfaktor der Oberfläche, etwa 0,2 Stahl trocken, 0,15 geölt; diesen oder die Reibung angeben</translation>
    </message>
    <message>
        <source>turn the engine by hand and measure again afterwards</source>
        <translation>danach den Motor von Hand drehen und neu messen</translation>
    </message>
    <message>
        <source>two or three wires from the alternator; brushes: a dynamo</source>
        <translation>zwei oder drei Kabel von der Lichtmaschine; Kohlen: Gleichstrom</translation>
    </message>
    <message>
        <source>two-stroke makers may quote the ratio from exhaust closing: say which</source>
        <translation>Zweitakthersteller nennen das Verhältnis oft ab Auslassschluss: dazusagen, welches</translation>
    </message>
    <message>
        <source>tyre size and pressure change it; the law of the place sets what is allowed</source>
        <translation>Reifengröße und Druck ändern ihn; das Recht des Ortes bestimmt, was erlaubt ist</translation>
    </message>
    <message>
        <source>until the next ride</source>
        <translation>bis zur nächsten Fahrt</translation>
    </message>
    <message>
        <source>up to the upper mark</source>
        <translation>bis zur oberen Marke</translation>
    </message>
    <message>
        <source>upper edge above bottom dead centre; for two-strokes counted from exhaust closing</source>
        <translation>Oberkante über dem unteren Totpunkt; beim Zweitakter ab Auslassschluss gerechnet</translation>
    </message>
    <message>
        <source>venturi carburettor, same engine speed and throttle, same fuel</source>
        <translation>Venturi-Vergaser, gleiche Drehzahl und Gasstellung, gleicher Kraftstoff</translation>
    </message>
    <message>
        <source>voltage alone does not prove a battery: a worn one rests high and falls under load</source>
        <translation>Spannung allein beweist keine Batterie: eine verschlissene steht hoch und bricht unter Last ein</translation>
    </message>
    <message>
        <source>warm beside an engine</source>
        <translation>warm neben einem Motor</translation>
    </message>
    <message>
        <source>wear is seldom even: look again well before</source>
        <translation>Verschleiß ist selten gleichmäßig: deutlich vorher noch einmal nachsehen</translation>
    </message>
    <message>
        <source>what the bolt screws into</source>
        <translation>worin die Schraube sitzt</translation>
    </message>
    <message>
        <source>what the dial shows, a speed or a distance</source>
        <translation>was die Anzeige zeigt, Geschwindigkeit oder Strecke</translation>
    </message>
    <message>
        <source>what the machine will carry</source>
        <translation>was das Fahrzeug tragen soll</translation>
    </message>
    <message>
        <source>what the shop has decided; there is no general law</source>
        <translation>was die Werkstatt festgelegt hat; ein allgemeines Gesetz gibt es nicht</translation>
    </message>
    <message>
        <source>where it differs from the thread&apos;s</source>
        <translation>wo sie von der im Gewinde abweicht</translation>
    </message>
    <message>
        <source>where it will run</source>
        <translation>wo es laufen wird</translation>
    </message>
    <message>
        <source>where the jet is right</source>
        <translation>wo die Düse stimmt</translation>
    </message>
    <message>
        <source>where the mark is to go</source>
        <translation>wo die Marke hin soll</translation>
    </message>
    <message>
        <source>whole positive side of the starter</source>
        <translation>ganze Plusseite des Starters</translation>
    </message>
    <message>
        <source>whose law applies</source>
        <translation>wessen Recht gilt</translation>
    </message>
    <message>
        <source>whose limits apply</source>
        <translation>wessen Grenzen gelten</translation>
    </message>
    <message>
        <source>worked out here: the manual wins</source>
        <translation>hier errechnet: das Handbuch geht vor</translation>
    </message>
    <message>
        <source>years that have not come are left out</source>
        <translation>Jahre, die noch kommen, fallen weg</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 = %2; factor from %3</source>
        <translation>%1 = %2; Faktor aus %3</translation>
    </message>
    <message>
        <source>%1: lamp centre %2 850 mm: %3 to %4 % down (%5 to %6 deg)</source>
        <translation>%1: Lampenmitte %2 850 mm: %3 bis %4 % abwärts (%5 bis %6 Grad)</translation>
    </message>
    <message>
        <source>above</source>
        <translation>über</translation>
    </message>
    <message>
        <source>up to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>battery</source>
        <translation>Batterie</translation>
    </message>
    <message>
        <source>idle</source>
        <translation>Leerlauf</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>Ruhe</translation>
    </message>
    <message>
        <source>revs</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>first</source>
        <translation>erster</translation>
    </message>
    <message>
        <source>second, same temperature</source>
        <translation>zweiter, gleiche Temperatur</translation>
    </message>
    <message>
        <source>(reading + ambient)/ambient stays the same: %1 kPa x 101.325/%2 = %3 kPa</source>
        <translation>(Messwert + Umgebung)/Umgebung bleibt gleich: %1 kPa x 101.325/%2 = %3 kPa</translation>
    </message>
    <message>
        <source>%1 to prove, first: %2</source>
        <translation>%1 nachzuweisen, zuerst: %2</translation>
    </message>
    <message>
        <source>Not before: %1 came off after %2, so it goes on first.</source>
        <translation>Nicht davor: %1 kam nach %2 ab, kommt also zuerst dran.</translation>
    </message>
    <message>
        <source>Not before: the task %1 has to be finished before %2.</source>
        <translation>Nicht davor: die Arbeit %1 muss vor %2 fertig sein.</translation>
    </message>
    <message>
        <source>That is on again already.</source>
        <translation>Das ist schon wieder dran.</translation>
    </message>
    <message>
        <source>That is the first one already.</source>
        <translation>Das ist schon der erste.</translation>
    </message>
    <message>
        <source>That is the last one already.</source>
        <translation>Das ist schon der letzte.</translation>
    </message>
    <message>
        <source>ask the owner: %1</source>
        <translation>den Halter fragen: %1</translation>
    </message>
    <message>
        <source>ready to be handed over</source>
        <translation>bereit zur Übergabe</translation>
    </message>
    <message>
        <source>does not run as it was found: %1</source>
        <translation>liegt nicht wie vorgefunden: %1</translation>
    </message>
    <message>
        <source>the photo has %1 x %2 pixels, more than 120 megapixels: save it smaller</source>
        <translation>das Foto hat %1 x %2 Bildpunkte, mehr als 120 Megapixel: kleiner speichern</translation>
    </message>
    <message>
        <source>this is neither a JPEG nor a PNG: choose a photo</source>
        <translation>das ist weder ein JPEG noch ein PNG: ein Foto wählen</translation>
    </message>
    <message>
        <source>there is no such file: check the name</source>
        <translation>diese Datei gibt es nicht: den Namen prüfen</translation>
    </message>
    <message>
        <source>the file is larger than 300 MB: save it smaller</source>
        <translation>die Datei ist größer als 300 MB: kleiner speichern</translation>
    </message>
    <message>
        <source>the file may not be read: check its permissions</source>
        <translation>die Datei darf nicht gelesen werden: ihre Rechte prüfen</translation>
    </message>
    <message>
        <source>the JPEG is damaged or cut short (%1): take or copy the photo again</source>
        <translation>das JPEG ist beschädigt oder abgeschnitten (%1): Foto neu aufnehmen oder kopieren</translation>
    </message>
    <message>
        <source>the PNG is damaged or cut short (%1): take or copy the photo again</source>
        <translation>das PNG ist beschädigt oder abgeschnitten (%1): Foto neu aufnehmen oder kopieren</translation>
    </message>
    <message>
        <source>a progressive JPEG this large would not fit into memory: save it smaller, or as a baseline JPEG</source>
        <translation>ein so großes progressives JPEG passt nicht in den Speicher: kleiner speichern, oder als einfaches JPEG</translation>
    </message>
    <message>
        <source>the JPEG decoder could not be started</source>
        <translation>der JPEG-Leser ließ sich nicht starten</translation>
    </message>
    <message>
        <source>the tap lies outside the photo: tap on the photo</source>
        <translation>getippt wurde neben das Foto: auf das Foto tippen</translation>
    </message>
    <message>
        <source>the stroke leaves the photo: keep it inside</source>
        <translation>der Strich verlässt das Foto: darin bleiben</translation>
    </message>
    <message>
        <source>the stroke needs two different points: draw it across the wires</source>
        <translation>der Strich braucht zwei verschiedene Punkte: quer über die Kabel streichen</translation>
    </message>
    <message>
        <source>the mouth of the connector leaves the photo: keep it inside</source>
        <translation>die Steckeröffnung verlässt das Foto: darin bleiben</translation>
    </message>
    <message>
        <source>the mouth of the connector needs two different points: draw it across the wires</source>
        <translation>die Steckeröffnung braucht zwei verschiedene Punkte: quer über die Kabel streichen</translation>
    </message>
    <message>
        <source>backup: cannot be written: %1</source>
        <translation>Sicherung: lässt sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>%1: has %2 bytes, at most %3 are kept; shorten the text</source>
        <translation>%1: hat %2 Byte, behalten werden höchstens %3; den Text kürzen</translation>
    </message>
    <message>
        <source>%1: is not written in UTF-8; save the sheet as CSV in UTF-8, or type it anew</source>
        <translation>%1: ist nicht in UTF-8 geschrieben; die Tabelle als CSV in UTF-8 speichern oder neu eintippen</translation>
    </message>
    <message>
        <source>%1: holds a NUL character; type it anew</source>
        <translation>%1: enthält ein NUL-Zeichen; neu eintippen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has more than one digit behind the mark, and an odometer has at most one: type %2 if that is meant, or %3</source>
        <translation>„%1“ hat mehr als eine Stelle hinter dem Zeichen, ein Kilometerzähler hat höchstens eine: %2 tippen, wenn das gemeint ist, oder %3</translation>
    </message>
    <message>
        <source>%1 in the step, ± %2 % as of a wrench by ISO 6789-1</source>
        <translation>%1 im Schritt, ± %2 % wie ein Schlüssel nach ISO 6789-1</translation>
    </message>
    <message>
        <source>one of the readings is outside: %1</source>
        <translation>einer der Werte liegt außerhalb: %1</translation>
    </message>
    <message>
        <source>no instrument was named: 10 % of the reading, k = 2</source>
        <translation>kein Messgerät genannt: 10 % des Werts, k = 2</translation>
    </message>
    <message>
        <source>the instrument is not known: name it, or measure again with a known one</source>
        <translation>Das Messgerät ist nicht bekannt: nennen, oder neu messen mit einem bekannten</translation>
    </message>
    <message>
        <source>%1: read %2, to be %3</source>
        <translation>%1: gelesen %2, soll %3</translation>
    </message>
    <message>
        <source>measured outside its limit: %1, %2</source>
        <translation>außerhalb der Grenze gemessen: %1, %2</translation>
    </message>
    <message>
        <source>not proved: %1. %2</source>
        <translation>nicht nachgewiesen: %1. %2</translation>
    </message>
    <message>
        <source>not read back: place %1</source>
        <translation>nicht vorgelesen: Platz %1</translation>
    </message>
    <message>
        <source>not read back: places %1</source>
        <translation>nicht vorgelesen: Plätze %1</translation>
    </message>
    <message>
        <source>place %1 does not match</source>
        <translation>Platz %1 stimmt nicht</translation>
    </message>
    <message>
        <source>place %1, unit half, does not match</source>
        <translation>Platz %1, Geräteseite, stimmt nicht</translation>
    </message>
    <message>
        <source>too close to its limit to call: %1, %2</source>
        <translation>zu nah an der Grenze, um zu urteilen: %1, %2</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Nothing was changed. Bring what can be read into a new place with &apos;undercowlctl store salvage --to NEWFOLDER&apos;, and name a backup with --from if there is one.</source>
        <translation>Nichts wurde geändert. Was lesbar ist, mit &apos;undercowlctl store salvage --to NEWFOLDER&apos; an einen neuen Ort bringen und mit --from eine Sicherung nennen, wenn es eine gibt.</translation>
    </message>
    <message>
        <source>the store in %1 has lost its shop.db, but photos or copies of it are there. Nothing was changed. Bring what can be read into a new place with &apos;undercowlctl store salvage --to NEWFOLDER&apos;, and name a backup with --from if there is one.</source>
        <translation>Der Speicher in %1 hat seine shop.db verloren, doch Fotos oder Kopien davon sind da. Nichts wurde geändert. Was lesbar ist, mit &apos;undercowlctl store salvage --to NEWFOLDER&apos; an einen neuen Ort bringen und mit --from eine Sicherung nennen, wenn es eine gibt.</translation>
    </message>
    <message>
        <source>the store in %1 has an empty shop.db, but photos or copies of it are there. Nothing was changed. Bring what can be read into a new place with &apos;undercowlctl store salvage --to NEWFOLDER&apos;, and name a backup with --from if there is one.</source>
        <translation>Der Speicher in %1 hat eine leere shop.db, doch Fotos oder Kopien davon sind da. Nichts wurde geändert. Was lesbar ist, mit &apos;undercowlctl store salvage --to NEWFOLDER&apos; an einen neuen Ort bringen und mit --from eine Sicherung nennen, wenn es eine gibt.</translation>
    </message>
    <message>
        <source>The disk is full, so this shop can only be looked at. Nothing in it was changed. Make room on the disk to go on working in it.</source>
        <translation>Der Speicherplatz ist voll, deshalb lässt sich diese Werkstatt nur ansehen. Nichts darin wurde geändert. Zum Weiterarbeiten Platz schaffen.</translation>
    </message>
    <message>
        <source>This shop is damaged and can only be looked at. Nothing in it was changed. A new one can be made of what can be read.</source>
        <translation>Diese Werkstatt ist beschädigt und lässt sich nur ansehen. Nichts darin wurde geändert. Aus dem, was lesbar ist, lässt sich eine neue machen.</translation>
    </message>
    <message>
        <source>%1 is the current shop: go on with another one first</source>
        <translation>%1 ist die jetzige Werkstatt: zuerst mit einer anderen weitermachen</translation>
    </message>
    <message>
        <source>%1 could not be removed: %2</source>
        <translation>%1 konnte nicht entfernt werden: %2</translation>
    </message>
    <message>
        <source>runs as it was written down, clipped, dry under pressure: %1</source>
        <translation>verläuft wie notiert, geklemmt, unter Druck dicht: %1</translation>
    </message>
    <message>
        <source>runs as the machine&apos;s manual shows, clipped, dry under pressure: %1</source>
        <translation>verläuft wie im Handbuch des Fahrzeugs, geklemmt, unter Druck dicht: %1</translation>
    </message>
    <message>
        <source>did not work when it came in, and has no answer: %1</source>
        <translation>ging bei der Annahme nicht und ist nicht beantwortet: %1</translation>
    </message>
    <message>
        <source>does not work: %1</source>
        <translation>geht nicht: %1</translation>
    </message>
    <message>
        <source>does not work: %1 (%2)</source>
        <translation>geht nicht: %1 (%2)</translation>
    </message>
    <message>
        <source>left as it was: %1 (%2)</source>
        <translation>gelassen, wie es war: %1 (%2)</translation>
    </message>
    <message>
        <source>left open: %1</source>
        <translation>offen geblieben: %1</translation>
    </message>
    <message>
        <source>measured outside its limit, and the owner does not want it put right: %1, %2</source>
        <translation>außerhalb der Grenze gemessen, und der Halter will es nicht richten lassen: %1, %2</translation>
    </message>
    <message>
        <source>next: fit the part: %1</source>
        <translation>weiter: Teil einbauen: %1</translation>
    </message>
    <message>
        <source>next: put the wires right: %1</source>
        <translation>weiter: Kabel in Ordnung bringen: %1</translation>
    </message>
    <message>
        <source>part not fitted: %1</source>
        <translation>Teil nicht verbaut: %1</translation>
    </message>
    <message>
        <source>what the owner said has no answer: %1</source>
        <translation>was der Halter sagte, ist nicht beantwortet: %1</translation>
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
    <message>
        <source>Throw away what was typed? It cannot be brought back.</source>
        <translation>Getipptes wegwerfen? Es lässt sich nicht zurückholen.</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
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
    <name>FileChooser</name>
    <message>
        <source>Folder above %1</source>
        <translation>Ordner über %1</translation>
    </message>
    <message>
        <source>Looking</source>
        <translation>Wird gesucht</translation>
    </message>
</context>
<context>
    <name>FilesWritten</name>
    <message>
        <source>Written</source>
        <translation>Geschrieben</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Weitergeben</translation>
    </message>
    <message>
        <source>Show the folder</source>
        <translation>Ordner zeigen</translation>
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
    <message>
        <source>Waits for</source>
        <translation>Wartet auf</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Soon</source>
        <translation>Bald</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Machines that wait for what?</source>
        <translation>Fahrzeuge, die worauf warten?</translation>
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
    <message>
        <source>Asked for: %1</source>
        <translation>Gefragt ist: %1</translation>
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
    <message>
        <source>Memo</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Not settled yet</source>
        <translation>Noch nicht erledigt</translation>
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
    <message>
        <source>Bring a shop back</source>
        <translation>Werkstatt zurückholen</translation>
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
    <message>
        <source>Condition as found</source>
        <translation>Zustand wie vorgefunden</translation>
    </message>
    <message>
        <source>two pins green, latch broken</source>
        <translation>zwei Stifte grün, Raste gebrochen</translation>
    </message>
    <message>
        <source>What was done about it</source>
        <translation>Was daran gemacht wurde</translation>
    </message>
    <message>
        <source>cleaned, contact grease</source>
        <translation>gereinigt, Kontaktfett</translation>
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
    <message>
        <source>The new part</source>
        <translation>Das neue Teil</translation>
    </message>
    <message>
        <source>Carry the wires over</source>
        <translation>Kabel übernehmen</translation>
    </message>
    <message>
        <source>with other connections than the old one</source>
        <translation>mit anderen Anschlüssen als das alte</translation>
    </message>
    <message>
        <source>A new part comes in its place</source>
        <translation>Ein neues Teil kommt an seine Stelle</translation>
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
    <message>
        <source>Language of the record</source>
        <translation>Sprache des Berichts</translation>
    </message>
    <message numerus="yes">
        <source>Not yet: %n to see to above</source>
        <comment>what stops it</comment>
        <translation>
            <numerusform>Noch nicht: oben ist %n zu erledigen</numerusform>
            <numerusform>Noch nicht: oben sind %n zu erledigen</numerusform>
        </translation>
    </message>
    <message>
        <source>Then the record is made with it</source>
        <translation>Dabei wird der Bericht neu gemacht</translation>
    </message>
    <message>
        <source>More was said since these files were made: make them again.</source>
        <translation>Seit diese Dateien gemacht wurden, kam etwas hinzu: neu machen.</translation>
    </message>
    <message>
        <source>not signed yet</source>
        <translation>noch nicht unterschrieben</translation>
    </message>
    <message numerus="yes">
        <source>%1, and %n more</source>
        <comment>what asks</comment>
        <translation>
            <numerusform>%1, und %n weiteres</numerusform>
            <numerusform>%1, und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>Hand it over all the same</source>
        <translation>Trotzdem übergeben</translation>
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
    <name>HardwarePlaces</name>
    <message>
        <source>With a photo of this step, a tap on it shows later which hole each piece belongs to.</source>
        <translation>Mit einem Foto dieses Schritts zeigt ein Tippen darauf später, in welches Loch jedes Stück gehört.</translation>
    </message>
    <message>
        <source>No photo yet</source>
        <translation>Noch kein Foto</translation>
    </message>
    <message>
        <source>Photo to tap on: where it sits</source>
        <translation>Foto zum Antippen: wo es sitzt</translation>
    </message>
    <message>
        <source>Another photo</source>
        <translation>Noch ein Foto</translation>
    </message>
    <message>
        <source>Take it off the list</source>
        <translation>Von der Liste nehmen</translation>
    </message>
</context>
<context>
    <name>HeardReading</name>
    <message>
        <source>torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>front tyre, pressure</source>
        <translation>Vorderreifen, Druck</translation>
    </message>
    <message>
        <source>rear tyre, pressure</source>
        <translation>Hinterreifen, Druck</translation>
    </message>
    <message>
        <source>battery, voltage</source>
        <translation>Batterie, Spannung</translation>
    </message>
    <message>
        <source>tread, depth</source>
        <translation>Profil, Tiefe</translation>
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
    <message>
        <source>Rechecks due</source>
        <translation>Fällige Kontrollen</translation>
    </message>
    <message>
        <source>Bring a shop back</source>
        <translation>Werkstatt zurückholen</translation>
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
        <source>the third bolt is the longer one</source>
        <translation>die dritte Schraube ist länger</translation>
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
    <message>
        <source>here: %1</source>
        <translation>da: %1</translation>
    </message>
    <message>
        <source>Wires</source>
        <translation>Kabel</translation>
    </message>
    <message numerus="yes">
        <source>%n to go</source>
        <comment>checks</comment>
        <translation>
            <numerusform>noch %n</numerusform>
            <numerusform>noch %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Rückgängig: %1</translation>
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
    <name>LineBackPage</name>
    <message>
        <source>Hoses and cables</source>
        <translation>Schläuche und Züge</translation>
    </message>
    <message>
        <source>Ends only</source>
        <translation>Nur Enden</translation>
    </message>
    <message>
        <source>Says where its ends sit, alone</source>
        <translation>Sagt nur, wo seine Enden sitzen</translation>
    </message>
    <message>
        <source>Read silently</source>
        <translation>Still lesen</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Laut vorlesen</translation>
    </message>
    <message>
        <source>A strip step is a hose, vent or cable when its title says so, or when you wrote down where its ends sit.</source>
        <translation>Ein Zerlegeschritt gilt als Schlauch, Entlüftung oder Zug, wenn sein Name es sagt oder wenn steht, wo seine Enden sitzen.</translation>
    </message>
    <message>
        <source>Nothing to read back</source>
        <translation>Nichts vorzulesen</translation>
    </message>
    <message>
        <source>Photo of %1 when it was stripped</source>
        <translation>Foto von %1 beim Ausbauen</translation>
    </message>
    <message>
        <source>Its step is not refitted yet.</source>
        <translation>Der Schritt ist noch nicht wieder montiert.</translation>
    </message>
    <message>
        <source>%1 of %2 run as they did</source>
        <translation>%1 von %2 liegen wie vorher</translation>
    </message>
    <message>
        <source>Each was seen where it runs and where it ends.</source>
        <translation>Verlauf und Enden wurden bei jedem gesehen.</translation>
    </message>
    <message>
        <source>These do not match. Put them right and read them back again:</source>
        <translation>Diese stimmen nicht. In Ordnung bringen und neu vorlesen:</translation>
    </message>
    <message>
        <source>These were not read back:</source>
        <translation>Diese wurden nicht vorgelesen:</translation>
    </message>
    <message>
        <source>All were read. Go back to the one that does not match.</source>
        <translation>Alles wurde vorgelesen. Zurück zu dem, das nicht stimmt.</translation>
    </message>
</context>
<context>
    <name>ListRow</name>
    <message>
        <source>Photo of %1</source>
        <translation>Foto von %1</translation>
    </message>
</context>
<context>
    <name>LockBar</name>
    <message>
        <source>Now the button above, in the other corner.</source>
        <translation>Jetzt die Taste oben, in der anderen Ecke.</translation>
    </message>
    <message>
        <source>Locked. What is touched here does nothing; speaking works.</source>
        <translation>Gesperrt. Berühren tut nichts; Sprechen geht.</translation>
    </message>
    <message>
        <source>The first of two touches</source>
        <translation>Die erste von zwei Berührungen</translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation>Entsperren</translation>
    </message>
    <message>
        <source>The second of two touches</source>
        <translation>Die zweite von zwei Berührungen</translation>
    </message>
    <message>
        <source>Unlock now</source>
        <translation>Jetzt entsperren</translation>
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
    <message>
        <source>Working</source>
        <translation>Rechenweg</translation>
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
    <name>MeasureWorking</name>
    <message>
        <source>one of several; tap to take it out</source>
        <translation>einer von mehreren; antippen nimmt ihn heraus</translation>
    </message>
    <message>
        <source>Nothing to show: no value, or no limits.</source>
        <translation>Nichts zu zeigen: kein Wert oder keine Grenzen.</translation>
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
    <message>
        <source>&quot;At least&quot; %1 is above &quot;At most&quot; %2, so that no value fits: change one of the two.</source>
        <translation>„Mindestens“ %1 liegt über „Höchstens“ %2, so passt kein Wert: eines von beiden ändern.</translation>
    </message>
</context>
<context>
    <name>MemoMeter</name>
    <message>
        <source>Recording, %1</source>
        <translation>Nimmt auf, %1</translation>
    </message>
    <message>
        <source>marks: %1</source>
        <translation>Marken: %1</translation>
    </message>
</context>
<context>
    <name>MemoPage</name>
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
        <source>the third bolt is the longer one</source>
        <translation>die dritte Schraube ist länger</translation>
    </message>
    <message>
        <source>Kept so far</source>
        <translation>Bisher gespeichert</translation>
    </message>
</context>
<context>
    <name>Memos</name>
    <message>
        <source>photo, %1</source>
        <translation>Foto, %1</translation>
    </message>
    <message>
        <source>Spoken memo</source>
        <translation>Gesprochene Notiz</translation>
    </message>
    <message>
        <source>Memo kept</source>
        <translation>Notiz gespeichert</translation>
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
    <message>
        <source>Water and stray touches do nothing then</source>
        <translation>Wasser und zufällige Berührungen tun dann nichts</translation>
    </message>
    <message>
        <source>Lock the screen</source>
        <translation>Anzeige sperren</translation>
    </message>
    <message>
        <source>More on this page</source>
        <translation>Mehr auf dieser Seite</translation>
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
        <source>from the dealer, by Friday</source>
        <translation>vom Händler, bis Freitag</translation>
    </message>
    <message>
        <source>What is it for?</source>
        <translation>Wofür ist es?</translation>
    </message>
    <message>
        <source>Old one beside the new one</source>
        <translation>Das alte neben dem neuen</translation>
    </message>
    <message>
        <source>Old and new part side by side</source>
        <translation>Altes und neues Teil nebeneinander</translation>
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
        <source>from the dealer, by Friday</source>
        <translation>vom Händler, bis Freitag</translation>
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
    <message>
        <source>Bring a shop back</source>
        <translation>Werkstatt zurückholen</translation>
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
    <name>ProofsPage</name>
    <message>
        <source>To be proved</source>
        <translation>Nachzuweisen</translation>
    </message>
    <message numerus="yes">
        <source>Keep %n proved</source>
        <comment>proofs</comment>
        <translation>
            <numerusform>%n nachgewiesen: speichern</numerusform>
            <numerusform>%n nachgewiesen: speichern</numerusform>
        </translation>
    </message>
    <message>
        <source>Touch what works</source>
        <translation>Antippen, was geht</translation>
    </message>
    <message>
        <source>One by one, or leave out</source>
        <translation>Einzeln, oder weglassen</translation>
    </message>
    <message>
        <source>measure it</source>
        <translation>messen</translation>
    </message>
    <message>
        <source>read it back</source>
        <translation>vorlesen</translation>
    </message>
    <message>
        <source>works</source>
        <translation>geht</translation>
    </message>
    <message>
        <source>touch when it works</source>
        <translation>antippen, wenn es geht</translation>
    </message>
    <message>
        <source>Brakes, wheels, steering, and what keeps it standing</source>
        <translation>Bremsen, Räder, Lenkung und was es aufrecht hält</translation>
    </message>
    <message>
        <source>The rest</source>
        <translation>Das Übrige</translation>
    </message>
    <message>
        <source>How, for those that are ticked</source>
        <translation>Wie, bei den angetippten</translation>
    </message>
    <message>
        <source>tried on the lift, then on the yard</source>
        <translation>auf der Bühne geprüft, dann auf dem Hof</translation>
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
        <source>Have their answer</source>
        <translation>Schon beantwortet</translation>
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
    <message>
        <source>Read it back</source>
        <translation>Vorlesen</translation>
    </message>
    <message>
        <source>Measure it</source>
        <translation>Messen</translation>
    </message>
    <message numerus="yes">
        <source>%n without an answer</source>
        <comment>complaints and functions</comment>
        <translation>
            <numerusform>%n ohne Antwort</numerusform>
            <numerusform>%n ohne Antwort</numerusform>
        </translation>
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
        <source>Again</source>
        <translation>Nochmals</translation>
    </message>
    <message>
        <source>Skip</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>Back</source>
        <comment>to the one before</comment>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Begins with the first one again</source>
        <translation>Beginnt wieder beim ersten</translation>
    </message>
    <message>
        <source>To the next one; nothing is said of this one</source>
        <translation>Zum nächsten; von diesem wird nichts gesagt</translation>
    </message>
    <message>
        <source>Matches</source>
        <translation>Stimmt</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Vorlesen</translation>
    </message>
</context>
<context>
    <name>ReadBackBefore</name>
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
        <source>Look again</source>
        <translation>Noch einmal ansehen</translation>
    </message>
    <message>
        <source>Swapped with which?</source>
        <translation>Mit welchem vertauscht?</translation>
    </message>
    <message>
        <source>Next one</source>
        <translation>Weiter</translation>
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
        <source>Each wire was seen in its place.</source>
        <translation>Jedes Kabel wurde an seinem Platz gesehen.</translation>
    </message>
    <message>
        <source>Wire only</source>
        <translation>Nur Kabel</translation>
    </message>
    <message>
        <source>Says its colour alone</source>
        <translation>Sagt nur seine Farbe</translation>
    </message>
    <message>
        <source>These do not match. Put them right and read them back again:</source>
        <translation>Diese stimmen nicht. In Ordnung bringen und neu vorlesen:</translation>
    </message>
    <message>
        <source>These were not read back:</source>
        <translation>Diese wurden nicht vorgelesen:</translation>
    </message>
    <message>
        <source>The two answers differ. Touch the one that holds.</source>
        <translation>Die beiden Antworten weichen ab. Die antippen, die gilt.</translation>
    </message>
    <message>
        <source>All were read. Go back to the one that does not match.</source>
        <translation>Alles wurde vorgelesen. Zurück zu dem, das nicht stimmt.</translation>
    </message>
</context>
<context>
    <name>ReadBackWire</name>
    <message>
        <source>Photo, %1 marked</source>
        <translation>Foto, %1 markiert</translation>
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
    <message>
        <source>It does not count any more, and can be brought back</source>
        <translation>Er zählt nicht mehr und kann zurückgeholt werden</translation>
    </message>
    <message>
        <source>This reading was a mistake</source>
        <translation>Dieser Messwert war ein Irrtum</translation>
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
    <name>Record</name>
    <message>
        <source>%1 of %2 back together</source>
        <translation>%1 von %2 wieder zusammen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 to %2, unit side</source>
        <translation>%1 bis %2, Geräteseite</translation>
    </message>
    <message>
        <source>%1 waits for: %2.</source>
        <translation>%1 wartet auf: %2.</translation>
    </message>
    <message>
        <source>%1, also %2</source>
        <translation>%1, auch %2</translation>
    </message>
    <message>
        <source>%1, at: %2</source>
        <translation>%1, bei: %2</translation>
    </message>
    <message>
        <source>%1, mean of %2 (%3)</source>
        <translation>%1, Mittel aus %2 (%3)</translation>
    </message>
    <message>
        <source>%1, second wire</source>
        <translation>%1, zweites Kabel</translation>
    </message>
    <message>
        <source>%1, unit side</source>
        <translation>%1, Geräteseite</translation>
    </message>
    <message>
        <source>%1, unit side, second wire</source>
        <translation>%1, Geräteseite, zweites Kabel</translation>
    </message>
    <message>
        <source>%1, within %2</source>
        <translation>%1, auf %2 genau</translation>
    </message>
    <message>
        <source>%1: %2, %3 places</source>
        <translation>%1: %2, %3 Plätze</translation>
    </message>
    <message>
        <source>%1: connector with %2 places, numbered as seen from the %3</source>
        <translation>%1: Stecker mit %2 Plätzen, gezählt von der %3 aus</translation>
    </message>
    <message>
        <source>%1: connector with %2 places, numbered as seen from the %3; latch: %4</source>
        <translation>%1: Stecker mit %2 Plätzen, gezählt von der %3 aus; Raste: %4</translation>
    </message>
    <message>
        <source>A wheel or its axle was worked on: have its fastening checked again after the first rides.</source>
        <translation>An einem Rad oder seiner Achse wurde gearbeitet: die Befestigung nach den ersten Fahrten nachprüfen lassen.</translation>
    </message>
    <message>
        <source>A wire was found that does not match the map: %1, place %2.</source>
        <translation>Ein Kabel stimmt nicht mit dem Plan überein: %1, Platz %2.</translation>
    </message>
    <message>
        <source>Agreed before: %1</source>
        <translation>Vorher vereinbart: %1</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Vorher und nachher</translation>
    </message>
    <message>
        <source>Before you ride</source>
        <translation>Vor der Fahrt</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>Colours are those seen on this machine, by IEC 60757 letters (LBU, LGN: light blue and light green).</source>
        <translation>Farben wie an diesem Fahrzeug gesehen, in Kürzeln nach IEC 60757 (LBU, LGN: hellblau und hellgrün).</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>Did not work</source>
        <translation>Ging nicht</translation>
    </message>
    <message>
        <source>Do not ride it: %1 is not on again.</source>
        <translation>Nicht fahren: %1 ist nicht wieder dran.</translation>
    </message>
    <message>
        <source>Do not start it: %1 is not on again.</source>
        <translation>Nicht starten: %1 ist nicht wieder dran.</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>Expected: %1 minutes; it took %2.</source>
        <translation>Erwartet: %1 Minuten; gebraucht: %2.</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Frame number</source>
        <translation>Rahmennummer</translation>
    </message>
    <message>
        <source>Function</source>
        <translation>Funktion</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>How serious</source>
        <translation>Wie ernst</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>Keys and papers received</source>
        <translation>Schlüssel und Papiere erhalten</translation>
    </message>
    <message>
        <source>Left out, do not ride before it is done: %1 (%2).</source>
        <translation>Weggelassen, nicht fahren, bevor es getan ist: %1 (%2).</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>Limit from</source>
        <translation>Grenze aus</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Fahrzeug</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Measured outside its limit: %1, %2.</source>
        <translation>Außerhalb der Grenze gemessen: %1, %2.</translation>
    </message>
    <message>
        <source>Measured values hold for the day on which they were measured.</source>
        <translation>Messwerte gelten für den Tag, an dem gemessen wurde.</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>No supplier chosen</source>
        <translation>Kein Lieferant gewählt</translation>
    </message>
    <message>
        <source>No unsafe finding is open.</source>
        <translation>Kein unsicherer Befund ist offen.</translation>
    </message>
    <message>
        <source>Not back together: %1 (bag %2).</source>
        <translation>Nicht wieder zusammen: %1 (Beutel %2).</translation>
    </message>
    <message>
        <source>Not back together: %1.</source>
        <translation>Nicht wieder zusammen: %1.</translation>
    </message>
    <message>
        <source>Not done yet, do not ride before it is: %1.</source>
        <translation>Noch nicht getan, vorher nicht fahren: %1.</translation>
    </message>
    <message>
        <source>Note at hand-over</source>
        <translation>Bemerkung zur Übergabe</translation>
    </message>
    <message>
        <source>Nothing that was taken apart was left apart.</source>
        <translation>Nichts Zerlegtes blieb zerlegt.</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Odometer when taken in</source>
        <translation>Kilometerstand bei der Annahme</translation>
    </message>
    <message>
        <source>Old parts: %1</source>
        <translation>Altteile: %1</translation>
    </message>
    <message>
        <source>On refit</source>
        <translation>Beim Einbau</translation>
    </message>
    <message>
        <source>Other steps</source>
        <translation>Andere Schritte</translation>
    </message>
    <message>
        <source>Other work</source>
        <translation>Andere Arbeit</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Halter</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Parts to order, %1</source>
        <translation>Zu bestellende Teile, %1</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Place %1: found with %2, but it should be %3 (%4).</source>
        <translation>Platz %1: vorgefunden mit %2, sollte aber %3 sein (%4).</translation>
    </message>
    <message>
        <source>Place %1: found with %2, but it should be %3.</source>
        <translation>Platz %1: vorgefunden mit %2, sollte aber %3 sein.</translation>
    </message>
    <message>
        <source>Place %1: found with %2, refitted with %3.</source>
        <translation>Platz %1: vorgefunden mit %2, eingebaut mit %3.</translation>
    </message>
    <message>
        <source>Please note</source>
        <translation>Bitte beachten</translation>
    </message>
    <message>
        <source>Price without tax</source>
        <translation>Preis ohne Steuer</translation>
    </message>
    <message>
        <source>Record of work</source>
        <translation>Arbeitsbericht</translation>
    </message>
    <message>
        <source>Record of work %1</source>
        <translation>Arbeitsbericht %1</translation>
    </message>
    <message>
        <source>Ridden at</source>
        <translation>Gefahren auf</translation>
    </message>
    <message>
        <source>Road test, %1</source>
        <translation>Probefahrt, %1</translation>
    </message>
    <message>
        <source>Road test, %1: %2</source>
        <translation>Probefahrt, %1: %2</translation>
    </message>
    <message>
        <source>Road test: %1</source>
        <translation>Probefahrt: %1</translation>
    </message>
    <message>
        <source>Second pair of eyes</source>
        <translation>Vier Augen</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Betrag</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>Tax, %1 %</source>
        <translation>Steuer, %1 %</translation>
    </message>
    <message>
        <source>The brakes were worked on: try them at walking pace before you ride among others.</source>
        <translation>An den Bremsen wurde gearbeitet: im Schritttempo probieren, bevor Sie in den Verkehr fahren.</translation>
    </message>
    <message>
        <source>The machine</source>
        <translation>Das Fahrzeug</translation>
    </message>
    <message>
        <source>The machine&apos;s manual, local law and licensed practice come before anything on this page.</source>
        <translation>Das Handbuch des Fahrzeugs, örtliches Recht und fachgerechte Arbeit gehen allem auf dieser Seite vor.</translation>
    </message>
    <message>
        <source>The work is not finished: %1 of %2 steps are not back together. Do not ride it.</source>
        <translation>Die Arbeit ist nicht fertig: %1 von %2 Schritten sind nicht wieder zusammen. Nicht fahren.</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>Together: %1</source>
        <translation>Zusammen: %1</translation>
    </message>
    <message>
        <source>Too close to its limit to call: %1, %2.</source>
        <translation>Zu knapp an der Grenze für ein Urteil: %1, %2.</translation>
    </message>
    <message>
        <source>Unsafe and not put right: %1. You were told, and on %2 %3 did not want it put right. Do not ride it.</source>
        <translation>Unsicher und nicht behoben: %1. Sie wurden unterrichtet, und am %2 wollte %3 es nicht beheben lassen. Nicht fahren.</translation>
    </message>
    <message>
        <source>Unsafe and not yet put right: %1.</source>
        <translation>Unsicher und noch nicht behoben: %1.</translation>
    </message>
    <message>
        <source>Unsafe and not yet put right: %1. To do: %2.</source>
        <translation>Unsicher und noch nicht behoben: %1. Zu tun: %2.</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Waste taken: %1</source>
        <translation>Entsorgt: %1</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Was daraus wurde</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation>Was fällig ist</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>What was left</source>
        <translation>Was übrig blieb</translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation>Was gemessen wurde</translation>
    </message>
    <message>
        <source>What was proved</source>
        <translation>Was nachgewiesen wurde</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>When it came in</source>
        <translation>Bei der Annahme</translation>
    </message>
    <message>
        <source>Why it came in</source>
        <translation>Warum es kam</translation>
    </message>
    <message>
        <source>Wiring that was read</source>
        <translation>Gelesene Kabel</translation>
    </message>
    <message>
        <source>Without a price: %1</source>
        <translation>Ohne Preis: %1</translation>
    </message>
    <message>
        <source>Without tax</source>
        <translation>Ohne Steuer</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Work done by</source>
        <translation>Arbeit gemacht von</translation>
    </message>
    <message>
        <source>Worked when taken in</source>
        <translation>Ging bei der Annahme</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>nach %1</translation>
    </message>
    <message>
        <source>after %1, or by %2, whichever comes first</source>
        <translation>nach %1 oder bis %2, was zuerst kommt</translation>
    </message>
    <message>
        <source>after refitting, %1</source>
        <translation>nach dem Einbau, %1</translation>
    </message>
    <message>
        <source>after, %1</source>
        <translation>nachher, %1</translation>
    </message>
    <message>
        <source>all %1 back together</source>
        <translation>alle %1 wieder zusammen</translation>
    </message>
    <message>
        <source>also %1</source>
        <translation>auch %1</translation>
    </message>
    <message>
        <source>and %1 more steps.</source>
        <translation>und %1 weitere Schritte.</translation>
    </message>
    <message>
        <source>as found, %1</source>
        <translation>wie vorgefunden, %1</translation>
    </message>
    <message>
        <source>asked for</source>
        <translation>angefragt</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>at the next visit</source>
        <translation>beim nächsten Besuch</translation>
    </message>
    <message>
        <source>before, %1</source>
        <translation>vorher, %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>finding, %1</source>
        <translation>Befund, %1</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>verbaut</translation>
    </message>
    <message>
        <source>here, not fitted</source>
        <translation>da, nicht verbaut</translation>
    </message>
    <message>
        <source>no limit known</source>
        <translation>keine Grenze bekannt</translation>
    </message>
    <message>
        <source>no verdict</source>
        <translation>kein Urteil</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>nicht begonnen</translation>
    </message>
    <message>
        <source>not checked</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>not named, taken to be within %1</source>
        <translation>nicht genannt, auf %1 genau angenommen</translation>
    </message>
    <message>
        <source>not read: look at the machine</source>
        <translation>nicht gelesen: am Fahrzeug nachsehen</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>not yet: this page shows how far the work has got</source>
        <translation>noch nicht: diese Seite zeigt, wie weit die Arbeit ist</translation>
    </message>
    <message>
        <source>on order</source>
        <translation>bestellt</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>behoben</translation>
    </message>
    <message>
        <source>put right: %1</source>
        <translation>behoben: %1</translation>
    </message>
    <message>
        <source>signed by %1, %2</source>
        <translation>unterschrieben von %1, %2</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>bald</translation>
    </message>
    <message>
        <source>still open</source>
        <translation>noch offen</translation>
    </message>
    <message>
        <source>still open; %1 does not want it put right</source>
        <translation>noch offen; %1 will es nicht beheben lassen</translation>
    </message>
    <message>
        <source>still open; to do: %1</source>
        <translation>noch offen; zu tun: %1</translation>
    </message>
    <message>
        <source>waits for: %1</source>
        <translation>wartet auf: %1</translation>
    </message>
    <message>
        <source>waits for: %1; %2 of %3 back together</source>
        <translation>wartet auf: %1; %2 von %3 wieder zusammen</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>gewünscht</translation>
    </message>
    <message>
        <source>while stripping, %1</source>
        <translation>beim Ausbauen, %1</translation>
    </message>
    <message>
        <source>wiring, %1</source>
        <translation>Kabel, %1</translation>
    </message>
    <message>
        <source>wrong part</source>
        <translation>falsches Teil</translation>
    </message>
    <message>
        <source>■ unsafe</source>
        <translation>■ unsicher</translation>
    </message>
    <message>
        <source>□ note</source>
        <translation>□ Hinweis</translation>
    </message>
    <message>
        <source>◇ not on again</source>
        <translation>◇ nicht wieder dran</translation>
    </message>
    <message>
        <source>◇ not yet</source>
        <translation>◇ noch nicht</translation>
    </message>
    <message>
        <source>◇ too close to call</source>
        <translation>◇ zu knapp für ein Urteil</translation>
    </message>
    <message>
        <source>◧ soon</source>
        <translation>◧ bald</translation>
    </message>
    <message>
        <source>☒ does not</source>
        <translation>☒ geht nicht</translation>
    </message>
    <message>
        <source>☒ does not match</source>
        <translation>☒ stimmt nicht</translation>
    </message>
    <message>
        <source>☒ left out: %1</source>
        <translation>☒ weggelassen: %1</translation>
    </message>
    <message>
        <source>☒ outside</source>
        <translation>☒ außerhalb</translation>
    </message>
    <message>
        <source>✓ matches</source>
        <translation>✓ stimmt</translation>
    </message>
    <message>
        <source>✓ proved</source>
        <translation>✓ nachgewiesen</translation>
    </message>
    <message>
        <source>✓ proved: %1</source>
        <translation>✓ nachgewiesen: %1</translation>
    </message>
    <message>
        <source>✓ within</source>
        <translation>✓ innerhalb</translation>
    </message>
    <message>
        <source>✓ works</source>
        <translation>✓ geht</translation>
    </message>
    <message>
        <source>☒ not proved: %1</source>
        <translation>☒ nicht nachgewiesen: %1</translation>
    </message>
    <message>
        <source>empty, no wire</source>
        <translation>leer, kein Kabel</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>nicht nötig</translation>
    </message>
    <message>
        <source>A hose or cable does not run as it was found: %1.</source>
        <translation>Ein Schlauch oder Zug verläuft nicht so, wie er vorgefunden wurde: %1.</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Enden</translation>
    </message>
    <message>
        <source>Hose or cable</source>
        <translation>Schlauch oder Zug</translation>
    </message>
    <message>
        <source>Hoses and cables</source>
        <translation>Schläuche und Züge</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Did not work when it came in and was not tried again: %1.</source>
        <translation>Ging bei der Annahme nicht und wurde nicht wieder geprüft: %1.</translation>
    </message>
    <message>
        <source>Does not work: %1 (%2).</source>
        <translation>Geht nicht: %1 (%2).</translation>
    </message>
    <message>
        <source>Does not work: %1.</source>
        <translation>Geht nicht: %1.</translation>
    </message>
    <message>
        <source>Left as it was: %1 (%2).</source>
        <translation>Gelassen, wie es war: %1 (%2).</translation>
    </message>
    <message>
        <source>Part not fitted: %1.</source>
        <translation>Teil nicht verbaut: %1.</translation>
    </message>
    <message>
        <source>What the owner said was not answered: %1.</source>
        <translation>Was der Halter sagte, wurde nicht beantwortet: %1.</translation>
    </message>
    <message>
        <source>not tried: %1</source>
        <translation>nicht geprüft: %1</translation>
    </message>
    <message>
        <source>said to be put right: %1; not fitted: %2</source>
        <translation>als behoben gemeldet: %1; nicht verbaut: %2</translation>
    </message>
    <message>
        <source>said to be put right; not fitted: %1</source>
        <translation>als behoben gemeldet; nicht verbaut: %1</translation>
    </message>
    <message>
        <source>the owner&apos;s words</source>
        <translation>Worte des Halters</translation>
    </message>
    <message>
        <source>☒ does not: %1</source>
        <translation>☒ geht nicht: %1</translation>
    </message>
    <message>
        <source>✓ works: %1</source>
        <translation>✓ geht: %1</translation>
    </message>
</context>
<context>
    <name>RecordActions</name>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Aufnehmen</translation>
    </message>
    <message>
        <source>Marks this place in the memo, to find it again</source>
        <translation>Merkt sich diese Stelle der Notiz, um sie wiederzufinden</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Merken</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>RefitActions</name>
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
    <message>
        <source>Torques</source>
        <translation>Momente</translation>
    </message>
    <message>
        <source>Says its torques alone</source>
        <translation>Sagt nur seine Drehmomente</translation>
    </message>
    <message>
        <source>Nothing that is still to be refitted lies in bag %1.</source>
        <translation>In Beutel %1 liegt nichts, was noch einzubauen ist.</translation>
    </message>
    <message>
        <source>Read silently</source>
        <translation>Still lesen</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Laut vorlesen</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Read back how it runs</source>
        <translation>Verlauf vorlesen</translation>
    </message>
    <message>
        <source>Read hoses and cables back</source>
        <translation>Schläuche und Züge vorlesen</translation>
    </message>
    <message>
        <source>Read the wires back</source>
        <translation>Kabel vorlesen</translation>
    </message>
    <message>
        <source>Refitted all the same</source>
        <translation>Trotzdem eingebaut</translation>
    </message>
    <message>
        <source>Not all wires are read back. %1</source>
        <translation>Nicht alle Kabel sind vorgelesen. %1</translation>
    </message>
    <message>
        <source>It is not refitted</source>
        <translation>Ist nicht eingebaut</translation>
    </message>
    <message>
        <source>All is on again, but not right: %1</source>
        <translation>Alles ist wieder dran, aber nicht in Ordnung: %1</translation>
    </message>
</context>
<context>
    <name>RefitStepsPage</name>
    <message>
        <source>Refit steps</source>
        <translation>Einbauschritte</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>Which goes on first?</source>
        <translation>Was kommt zuerst dran?</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>The order is right</source>
        <translation>Reihenfolge stimmt</translation>
    </message>
    <message>
        <source>Change the order</source>
        <translation>Reihenfolge ändern</translation>
    </message>
    <message>
        <source>Touch a step, then Earlier or Later.</source>
        <translation>Einen Schritt antippen, dann Früher oder Später.</translation>
    </message>
    <message>
        <source>Read hoses and cables back</source>
        <translation>Schläuche und Züge vorlesen</translation>
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
    <name>RestoreLists</name>
    <message>
        <source>Backups</source>
        <translation>Sicherungen</translation>
    </message>
    <message>
        <source>Looking for backups</source>
        <translation>Sicherungen werden gesucht</translation>
    </message>
    <message>
        <source>None here. Put in the stick or the card that they are on, then open this page again.</source>
        <translation>Keine da. Den Stick oder die Karte damit einstecken, dann diese Seite wieder öffnen.</translation>
    </message>
    <message>
        <source>From another folder</source>
        <translation>Aus einem anderen Ordner</translation>
    </message>
    <message>
        <source>Other shops on this device</source>
        <translation>Andere Werkstätten auf diesem Gerät</translation>
    </message>
    <message>
        <source>The shop on this device can only be looked at. Of every entry, photo and memo in it that can still be read, and of the copies beside it, a new one can be made.</source>
        <translation>Die Werkstatt auf diesem Gerät lässt sich nur ansehen. Aus allen Einträgen, Fotos und Notizen darin, die noch lesbar sind, und aus den Kopien daneben lässt sich eine neue machen.</translation>
    </message>
    <message>
        <source>Make a new shop of what can be read</source>
        <translation>Neue Werkstatt aus Lesbarem machen</translation>
    </message>
</context>
<context>
    <name>RestorePage</name>
    <message>
        <source>Bring a shop back</source>
        <translation>Werkstatt zurückholen</translation>
    </message>
    <message>
        <source>Opening the shop</source>
        <translation>Werkstatt wird geöffnet</translation>
    </message>
    <message>
        <source>Bringing back</source>
        <translation>Wird zurückgeholt</translation>
    </message>
    <message>
        <source>Checking</source>
        <translation>Wird geprüft</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Bring back what can be read</source>
        <translation>Lesbares zurückholen</translation>
    </message>
    <message>
        <source>Go on with this shop</source>
        <translation>Mit dieser weiterarbeiten</translation>
    </message>
    <message>
        <source>Choose another one</source>
        <translation>Andere wählen</translation>
    </message>
    <message>
        <source>What is on this device now is not overwritten. It stays in %1 and is found here again.</source>
        <translation>Was jetzt auf diesem Gerät ist, wird nicht überschrieben. Es bleibt in %1 und ist hier wieder zu finden.</translation>
    </message>
    <message>
        <source>The app was started with a folder of its own. At its next start it opens that one again, unless it is told otherwise with --store.</source>
        <translation>Die App wurde mit einem eigenen Ordner gestartet. Beim nächsten Start öffnet sie wieder diesen, wenn --store nichts anderes sagt.</translation>
    </message>
    <message>
        <source>Passphrase of this backup</source>
        <translation>Passwort dieser Sicherung</translation>
    </message>
    <message>
        <source>No backups here. Their names end in .backup.</source>
        <translation>Keine Sicherungen hier. Ihre Namen enden auf .backup.</translation>
    </message>
    <message>
        <source>Removing</source>
        <translation>Wird entfernt</translation>
    </message>
    <message>
        <source>Remove this shop</source>
        <translation>Diese Werkstatt entfernen</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Remove it for good</source>
        <translation>Endgültig entfernen</translation>
    </message>
    <message>
        <source>Its jobs, photos and memos go with it. Nothing but a backup brings them back.</source>
        <translation>Ihre Aufträge, Fotos und Notizen gehen mit ihr verloren. Nur eine Sicherung bringt sie zurück.</translation>
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
    <message>
        <source>Go on with the round</source>
        <translation>Runde fortsetzen</translation>
    </message>
    <message>
        <source>Begin another round</source>
        <translation>Neue Runde beginnen</translation>
    </message>
</context>
<context>
    <name>Said</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation>Beutel %1</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>front tyre</source>
        <translation>Vorderreifen</translation>
    </message>
    <message>
        <source>rear tyre</source>
        <translation>Hinterreifen</translation>
    </message>
    <message>
        <source>battery</source>
        <translation>Batterie</translation>
    </message>
    <message>
        <source>tread</source>
        <translation>Profil</translation>
    </message>
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
    <message>
        <source>Button to hold for speaking, at the lift (English)</source>
        <translation>Taste, die man zum Sprechen hält, an der Hebebühne (Englisch)</translation>
    </message>
    <message>
        <source>Hidden</source>
        <translation>Verborgen</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Gezeigt</translation>
    </message>
    <message>
        <source>Hands-free, after &quot;turquoise battery&quot; (English). The microphone is then open while a screen at the lift is shown.</source>
        <translation>Freihändig, nach &quot;turquoise battery&quot; (Englisch). Das Mikrofon ist dann offen, solange ein Bild der Hebebühne zu sehen ist.</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Aus</translation>
    </message>
    <message>
        <source>On</source>
        <translation>An</translation>
    </message>
    <message>
        <source>Pace of the voice that reads aloud</source>
        <translation>Tempo der Stimme, die vorliest</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Gewöhnlich</translation>
    </message>
    <message>
        <source>Slower</source>
        <translation>Langsamer</translation>
    </message>
    <message>
        <source>Slow</source>
        <translation>Langsam</translation>
    </message>
    <message>
        <source>Slowest</source>
        <translation>Am langsamsten</translation>
    </message>
    <message>
        <source>A spoken memo ends</source>
        <translation>Eine gesprochene Notiz endet</translation>
    </message>
    <message>
        <source>By a touch</source>
        <translation>Durch Tippen</translation>
    </message>
    <message>
        <source>By silence too</source>
        <translation>Auch durch Stille</translation>
    </message>
    <message>
        <source>The screen, while a job is open</source>
        <translation>Der Bildschirm, solange ein Auftrag offen ist</translation>
    </message>
    <message>
        <source>Stays on</source>
        <translation>Bleibt an</translation>
    </message>
    <message>
        <source>As the device</source>
        <translation>Wie das Gerät</translation>
    </message>
    <message>
        <source>It dims without a touch. The touch that wakes it does nothing else.</source>
        <translation>Er wird ohne Berührung dunkler. Die Berührung, die ihn weckt, tut sonst nichts.</translation>
    </message>
    <message>
        <source>Never</source>
        <translation>Nie</translation>
    </message>
    <message>
        <source>After 1 min</source>
        <translation>Nach 1 min</translation>
    </message>
    <message>
        <source>After 2 min</source>
        <translation>Nach 2 min</translation>
    </message>
    <message>
        <source>After 5 min</source>
        <translation>Nach 5 min</translation>
    </message>
    <message>
        <source>Short tones for listening, recording, saved, refused</source>
        <translation>Kurze Töne: hört zu, nimmt auf, gespeichert, abgelehnt</translation>
    </message>
</context>
<context>
    <name>SettlePage</name>
    <message>
        <source>Settle the finding</source>
        <translation>Befund erledigen</translation>
    </message>
    <message>
        <source>To the parts</source>
        <translation>Zu den Teilen</translation>
    </message>
    <message>
        <source>Settle all the same</source>
        <translation>Trotzdem erledigt</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Not fitted: %1</source>
        <translation>Nicht verbaut: %1</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was gemacht wurde</translation>
    </message>
    <message>
        <source>hose renewed, brake bled</source>
        <translation>Schlauch erneuert, Bremse entlüftet</translation>
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
    <name>Sharing</name>
    <message>
        <source>The system refused the files. Share them from the system&apos;s file manager.</source>
        <translation>Das System hat die Dateien abgelehnt. Geben Sie sie aus der Dateiverwaltung des Systems weiter.</translation>
    </message>
    <message>
        <source>%1 is not there any more. Make it again.</source>
        <translation>%1 ist nicht mehr da. Noch einmal erstellen.</translation>
    </message>
    <message>
        <source>This device has no program for %1. The file lies in %2.</source>
        <translation>Auf diesem Gerät gibt es kein Programm für %1. Die Datei liegt in %2.</translation>
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
    <name>SnackWords</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
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
    <name>SpokenMemo</name>
    <message>
        <source>Pause</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <source>How fast it is played</source>
        <translation>Wie schnell sie abgespielt wird</translation>
    </message>
    <message>
        <source>Next mark</source>
        <translation>Nächste Marke</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Merken</translation>
    </message>
</context>
<context>
    <name>StepList</name>
    <message>
        <source>waits for %1</source>
        <translation>wartet auf %1</translation>
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
    <message>
        <source>Routing: %1</source>
        <translation>Verlegung: %1</translation>
    </message>
    <message>
        <source>Ends: %1</source>
        <translation>Enden: %1</translation>
    </message>
    <message>
        <source>As found: %1</source>
        <translation>Wie vorgefunden: %1</translation>
    </message>
    <message>
        <source>Let out: %1</source>
        <translation>Abgelassen: %1</translation>
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
    <name>StripDetails</name>
    <message>
        <source>Where it runs, what it passes</source>
        <translation>Wo es verläuft, woran vorbei</translation>
    </message>
    <message>
        <source>left of the headstock, over the clutch cable</source>
        <translation>links am Lenkkopf, über dem Kupplungszug</translation>
    </message>
    <message>
        <source>Where its ends sit: hose, vent, cable</source>
        <translation>Wo die Enden sitzen: Schlauch, Entlüftung, Zug</translation>
    </message>
    <message>
        <source>tap, upper nipple; carburettor, right</source>
        <translation>Benzinhahn oben; Vergaser rechts</translation>
    </message>
    <message>
        <source>Adjustment as found: turns, marks, shims</source>
        <translation>Einstellung wie vorgefunden: Umdrehungen, Marken, Scheiben</translation>
    </message>
    <message>
        <source>adjuster 7 turns out, mark at 2 o&apos;clock</source>
        <translation>7 Umdr. heraus, Marke auf 2 Uhr</translation>
    </message>
    <message>
        <source>Fluid let out, and how much</source>
        <translation>Abgelassene Flüssigkeit, wie viel</translation>
    </message>
    <message>
        <source>brake fluid, 40 ml</source>
        <translation>Bremsflüssigkeit, 40 ml</translation>
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
        <source>Steps so far</source>
        <translation>Bisherige Schritte</translation>
    </message>
    <message>
        <source>Where it sits</source>
        <translation>Wo es sitzt</translation>
    </message>
    <message>
        <source>For the refit</source>
        <translation>Für den Einbau</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
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
        <source>Note</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>spring hooked in the left hole</source>
        <translation>Feder im linken Loch eingehängt</translation>
    </message>
    <message>
        <source>Add a caution</source>
        <translation>Warnung zufügen</translation>
    </message>
    <message>
        <source>Which caution belongs before this step?</source>
        <translation>Welche Warnung gehört vor diesen Schritt?</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>tap: where it sits</source>
        <translation>antippen: wo es sitzt</translation>
    </message>
    <message>
        <source>not placed</source>
        <translation>noch ohne Stelle</translation>
    </message>
    <message>
        <source>Routing, fluids, adjustment</source>
        <translation>Verlegung, Flüssigkeiten, Einstellung</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
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
    <message>
        <source>The photo shows one side of a wire. Turn each of them: a tracer may lie on the other side.</source>
        <translation>Das Foto zeigt eine Seite eines Kabels. Jedes drehen: auf der anderen Seite kann ein Streifen liegen.</translation>
    </message>
    <message>
        <source>All %1, each was turned</source>
        <translation>Alle %1, jedes gedreht</translation>
    </message>
    <message>
        <source>One by one</source>
        <translation>Eins nach dem anderen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
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
    <message>
        <source>This one is not sure. Say its colour.</source>
        <translation>Dieses ist nicht sicher. Seine Farbe sagen.</translation>
    </message>
    <message>
        <source>No wire is open any more.</source>
        <translation>Kein Kabel ist mehr offen.</translation>
    </message>
    <message>
        <source>Say the colour alone here. Terminal and function belong to the place.</source>
        <translation>Hier nur die Farbe sagen. Kontakt und Aufgabe gehören zum Platz.</translation>
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
    <message>
        <source>Open the job first, then say it again.</source>
        <translation>Erst den Auftrag öffnen, dann noch einmal sagen.</translation>
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
        <translation>springt an, Vorderbremse hält</translation>
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
    <name>TalkAloud</name>
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
</context>
<context>
    <name>TalkBar</name>
    <message>
        <source>Hearing</source>
        <translation>Hört zu</translation>
    </message>
    <message>
        <source>While it is held, say: %1</source>
        <translation>Während sie gehalten wird, sagen: %1</translation>
    </message>
    <message>
        <source>Listening</source>
        <translation>Lauscht</translation>
    </message>
    <message>
        <source>Hold and speak</source>
        <translation>Halten und sprechen</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>Es gibt nichts rückgängig zu machen.</translation>
    </message>
    <message>
        <source>This one has only just come up. Look at it, then say it again.</source>
        <translation>Das ist gerade erst erschienen. Ansehen, dann noch einmal sagen.</translation>
    </message>
</context>
<context>
    <name>TalkHeard</name>
    <message>
        <source>Heard: %1</source>
        <translation>Gehört: %1</translation>
    </message>
    <message>
        <source>Takes back what was heard</source>
        <translation>Nimmt Gehörtes zurück</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Listening: say it.</source>
        <translation>Lauscht: sprechen.</translation>
    </message>
    <message>
        <source>Microphone on. Say &quot;%1&quot; first.</source>
        <translation>Mikrofon an. Erst &quot;%1&quot; sagen.</translation>
    </message>
</context>
<context>
    <name>TalkTool</name>
    <message>
        <source>Buttons only</source>
        <translation>Nur Tasten</translation>
    </message>
    <message>
        <source>Speak</source>
        <translation>Sprechen</translation>
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
    <message>
        <source>What it waits for</source>
        <translation>Worauf sie wartet</translation>
    </message>
    <message>
        <source>What holds it up?</source>
        <translation>Was hält sie auf?</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Halter</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Else</source>
        <translation>Anderes</translation>
    </message>
</context>
<context>
    <name>TextEntry</name>
    <message>
        <source>Clear %1</source>
        <translation>%1 leeren</translation>
    </message>
    <message>
        <source>e.g. %1</source>
        <translation>z. B. %1</translation>
    </message>
</context>
<context>
    <name>TextEntryArea</name>
    <message>
        <source>Clear %1</source>
        <translation>%1 leeren</translation>
    </message>
    <message>
        <source>e.g. %1</source>
        <translation>z. B. %1</translation>
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
    <message>
        <source>heard</source>
        <translation>gehört</translation>
    </message>
    <message>
        <source>leave empty</source>
        <translation>leer lassen</translation>
    </message>
    <message>
        <source>empty, no wire</source>
        <translation>leer, kein Kabel</translation>
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
    <message>
        <source>For bench time</source>
        <translation>Auf Werkstattzeit</translation>
    </message>
    <message>
        <source>To be proved</source>
        <translation>Nachzuweisen</translation>
    </message>
    <message>
        <source>Ready to hand over</source>
        <translation>Bereit zur Übergabe</translation>
    </message>
    <message>
        <source>For the owner&apos;s answer</source>
        <translation>Auf Antwort des Halters</translation>
    </message>
    <message>
        <source>For parts</source>
        <translation>Auf Teile</translation>
    </message>
    <message>
        <source>For something else</source>
        <translation>Auf anderes</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>nicht nötig</translation>
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
    <name>undercowl::platform::LoudspeakerPlayer</name>
    <message>
        <source>This memo&apos;s sound cannot be read. Its text and its place in the job are kept.</source>
        <translation>Der Ton dieser Notiz lässt sich nicht lesen. Ihr Text und ihr Platz im Auftrag bleiben.</translation>
    </message>
    <message>
        <source>No loudspeaker answers. Connect one, or switch it on in the device&apos;s settings.</source>
        <translation>Kein Lautsprecher antwortet. Einen anschließen oder in den Einstellungen des Geräts einschalten.</translation>
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
    <name>undercowl::platform::MicrophoneRecorder</name>
    <message>
        <source>No microphone answers. Allow it in the device&apos;s settings, or type the memo.</source>
        <translation>Kein Mikrofon antwortet. In den Einstellungen des Geräts erlauben oder die Notiz eintippen.</translation>
    </message>
    <message>
        <source>The microphone does not open. Close other programs that use it, or type the memo.</source>
        <translation>Das Mikrofon öffnet sich nicht. Andere Programme schließen, die es benutzen, oder die Notiz eintippen.</translation>
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
    <name>undercowl::platform::SoundRecorder</name>
    <message>
        <source>The memo cannot be written any further (%1). What was said until then is kept; make room, then go on in another one.</source>
        <translation>Die Notiz lässt sich nicht weiter schreiben (%1). Was bis dahin gesagt wurde, bleibt; Platz schaffen, dann in einer neuen weitersprechen.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::SystemScreen</name>
    <message>
        <source>This session has no message bus, so the screen may go out. Set the system to leave it on.</source>
        <translation>Diese Sitzung hat keinen Nachrichtenbus, der Bildschirm kann ausgehen. Im System einstellen, dass er an bleibt.</translation>
    </message>
    <message>
        <source>A job is open at the lift</source>
        <translation>An der Bühne ist ein Auftrag offen</translation>
    </message>
    <message>
        <source>The system does not let the screen be kept on (%1). Set it there to stay on.</source>
        <translation>Das System lässt den Bildschirm nicht an (%1). Dort einstellen, dass er an bleibt.</translation>
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
    <name>undercowl::ui::CameraHints</name>
    <message>
        <source>Hold still.</source>
        <translation>Ruhig halten.</translation>
    </message>
    <message>
        <source>Too close or out of focus: move back a little.</source>
        <translation>Zu nah oder unscharf: etwas zurückgehen.</translation>
    </message>
    <message>
        <source>Too close or out of focus: tap the wire.</source>
        <translation>Zu nah oder unscharf: das Kabel antippen.</translation>
    </message>
    <message>
        <source>Too close or out of focus: tap what must be sharp.</source>
        <translation>Zu nah oder unscharf: antippen, was scharf sein soll.</translation>
    </message>
    <message>
        <source>Lay white paper beside the wires.</source>
        <translation>Weißes Papier neben die Kabel legen.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CarryView</name>
    <message>
        <source>it lights when it is switched</source>
        <translation>leuchtet beim Einschalten</translation>
    </message>
    <message>
        <source>it sounds when it is pressed</source>
        <translation>ertönt beim Drücken</translation>
    </message>
    <message>
        <source>what it serves works when it is switched</source>
        <translation>was daran hängt, geht beim Einschalten</translation>
    </message>
    <message>
        <source>Not known what it serves: follow it, then measure to earth and to each lamp. Nothing is connected before that is known.</source>
        <translation>Aufgabe unbekannt: verfolgen, dann gegen Masse und zu jeder Leuchte messen. Bevor sie bekannt ist, wird nichts angeschlossen.</translation>
    </message>
    <message>
        <source>Live, ignition, charging or starter: battery voltage to earth, ignition off and on. Measured only, never tried.</source>
        <translation>Plus, Zündung, Laden oder Anlasser: Batteriespannung gegen Masse, Zündung aus und an. Nur messen, nie probieren.</translation>
    </message>
    <message>
        <source>Earth: close to no resistance to the bare frame.</source>
        <translation>Masse: fast kein Widerstand zum blanken Rahmen.</translation>
    </message>
    <message>
        <source>%1 in place of %2</source>
        <translation>%1 statt %2</translation>
    </message>
    <message>
        <source>%1, now %2</source>
        <translation>%1, jetzt %2</translation>
    </message>
    <message>
        <source>serves %1</source>
        <translation>Aufgabe: %1</translation>
    </message>
    <message>
        <source>Leave empty: %1</source>
        <translation>Leer lassen: %1</translation>
    </message>
    <message>
        <source>No place for %1 (%2)</source>
        <translation>Kein Platz für %1 (%2)</translation>
    </message>
    <message>
        <source>Insulate its end and tie it back.</source>
        <translation>Ende isolieren und zurückbinden.</translation>
    </message>
    <message>
        <source>one after the other: %1</source>
        <translation>nacheinander: %1</translation>
    </message>
    <message>
        <source>carried over by what it serves</source>
        <translation>nach seiner Aufgabe übernommen</translation>
    </message>
    <message>
        <source>Wires carried over</source>
        <translation>Kabel übernommen</translation>
    </message>
    <message>
        <source>found by trying</source>
        <translation>durch Probieren gefunden</translation>
    </message>
    <message>
        <source>Found: %1</source>
        <translation>Gefunden: %1</translation>
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
    <message>
        <source>anything</source>
        <translation>beliebig</translation>
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
    <message>
        <source>Open again</source>
        <translation>Wieder offen</translation>
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
    <message>
        <source>the owner said, when it came in</source>
        <translation>der Halter sagte bei der Annahme</translation>
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
    <message>
        <source>As found: %1</source>
        <translation>Wie vorgefunden: %1</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Erledigt: %1</translation>
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
        <source>Handed over</source>
        <translation>Übergeben</translation>
    </message>
    <message numerus="yes">
        <source>%n not done or not proved</source>
        <translation>
            <numerusform>%n nicht erledigt oder nicht nachgewiesen</numerusform>
            <numerusform>%n nicht erledigt oder nicht nachgewiesen</numerusform>
        </translation>
    </message>
    <message>
        <source>Put it right, then read it back again.</source>
        <translation>In Ordnung bringen, dann noch einmal vorlesen.</translation>
    </message>
    <message>
        <source>signed by %1, %2</source>
        <translation>unterschrieben von %1, %2</translation>
    </message>
    <message>
        <source>Read the wires back, or say why they are left out.</source>
        <translation>Kabel vorlesen, oder sagen, warum es entfällt.</translation>
    </message>
    <message>
        <source>Tighten it and measure again, or say why it is left out.</source>
        <translation>Nachziehen und neu messen, oder sagen, warum es entfällt.</translation>
    </message>
    <message>
        <source>Put it right and measure again, or note a finding.</source>
        <translation>In Ordnung bringen und neu messen, oder einen Befund aufschreiben.</translation>
    </message>
    <message>
        <source>Wire does not match: %1, place %2</source>
        <translation>Kabel stimmt nicht: %1, Platz %2</translation>
    </message>
    <message>
        <source>Say whether it works now, or why it is left.</source>
        <translation>Sagen, ob es jetzt geht, oder warum es bleibt.</translation>
    </message>
    <message>
        <source>Refit it, or write under &quot;To be told at hand-over&quot; how it leaves without being ridden.</source>
        <translation>Einbauen, oder unter &quot;Bei der Übergabe zu sagen&quot; eingeben, wie es ungefahren geht.</translation>
    </message>
    <message>
        <source>Put it right and measure again, or note it as unsafe and record that the owner does not want it.</source>
        <translation>In Ordnung bringen und neu messen, oder als unsicher notieren und festhalten, dass der Halter es nicht will.</translation>
    </message>
    <message>
        <source>It must not be ridden: type how it leaves, such as &quot;fetched with a trailer&quot;.</source>
        <translation>Es darf nicht gefahren werden: eingeben, wie es geht, etwa &quot;mit dem Anhänger geholt&quot;.</translation>
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
    <message>
        <source>not fitted: %1</source>
        <translation>nicht verbaut: %1</translation>
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
    <message>
        <source>typical of this model, look whether it is so here</source>
        <translation>typisch für dieses Modell, nachsehen, ob es hier so ist</translation>
    </message>
    <message>
        <source>this shop&apos;s record</source>
        <translation>Aufzeichnung dieser Werkstatt</translation>
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
    <name>undercowl::ui::LiftEar</name>
    <message>
        <source>a reading</source>
        <translation>einen Messwert</translation>
    </message>
    <message>
        <source>the number of a bag</source>
        <translation>die Nummer eines Beutels</translation>
    </message>
    <message>
        <source>a wire</source>
        <translation>ein Kabel</translation>
    </message>
    <message>
        <source>Heard &quot;%1&quot;. Here say: %2.</source>
        <translation>&quot;%1&quot; gehört. Hier sagen: %2.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::LineBackView</name>
    <message>
        <source>How it runs was not written down: look at its photo.</source>
        <translation>Der Verlauf wurde nicht notiert: Foto ansehen.</translation>
    </message>
    <message>
        <source>How it runs was not written down and there is no photo: look it up in the machine&apos;s manual.</source>
        <translation>Der Verlauf wurde nicht notiert und es gibt kein Foto: im Handbuch des Fahrzeugs nachsehen.</translation>
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
    <message>
        <source>That cannot be entered here: type it.</source>
        <translation>Das lässt sich hier nicht eintragen: eintippen.</translation>
    </message>
    <message>
        <source>The step has several torques: choose below which one is measured.</source>
        <translation>Der Schritt hat mehrere Drehmomente: unten wählen, welches gemessen wird.</translation>
    </message>
    <message>
        <source>to be %1</source>
        <translation>soll %1</translation>
    </message>
    <message>
        <source>as the step says; %1 to %2, as far as a wrench by ISO 6789-1 may be off</source>
        <translation>wie der Schritt sagt; %1 bis %2, so weit darf ein Schlüssel nach ISO 6789-1 abweichen</translation>
    </message>
    <message>
        <source>One reading stands for all %1: keep the one that is furthest off, or take each with Again.</source>
        <translation>Ein Wert steht für alle %1: den behalten, der am weitesten abweicht, oder jeden mit „Nochmals“ nehmen.</translation>
    </message>
    <message>
        <source>as read; the instrument is not known, taken to be within %1: %2</source>
        <translation>wie gelesen; das Messgerät ist nicht bekannt, angenommen auf %1: %2</translation>
    </message>
    <message>
        <source>Choose the unit that this was measured in.</source>
        <translation>Die Einheit wählen, in der gemessen wurde.</translation>
    </message>
    <message>
        <source>Taken out: %1</source>
        <translation>Herausgenommen: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::MemoPlayback</name>
    <message>
        <source>Place marked</source>
        <translation>Stelle gemerkt</translation>
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
    <name>undercowl::ui::ProofsView</name>
    <message>
        <source>left out: %1</source>
        <translation>weggelassen: %1</translation>
    </message>
    <message>
        <source>proved: %1</source>
        <translation>nachgewiesen: %1</translation>
    </message>
    <message>
        <source>proved by its reading, or said</source>
        <translation>durch Messwert nachgewiesen, oder gesagt</translation>
    </message>
    <message>
        <source>proved wire by wire, or said</source>
        <translation>Kabel für Kabel nachgewiesen, oder gesagt</translation>
    </message>
    <message>
        <source>proved</source>
        <translation>nachgewiesen</translation>
    </message>
    <message numerus="yes">
        <source>%n proved</source>
        <translation>
            <numerusform>%n nachgewiesen</numerusform>
            <numerusform>%n nachgewiesen</numerusform>
        </translation>
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
    <message>
        <source>Not proved while this stands: %1. Put it right, or type why it is left out.</source>
        <translation>Nicht nachgewiesen, solange das besteht: %1. In Ordnung bringen, oder tippen, warum es entfällt.</translation>
    </message>
    <message>
        <source>No reading shows the torque: measure it, or type how it was tightened.</source>
        <translation>Kein Wert zeigt das Drehmoment: messen, oder tippen, wie angezogen wurde.</translation>
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
</context>
<context>
    <name>undercowl::ui::ReadBackWalk</name>
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
    <message>
        <source>Order changed</source>
        <translation>Reihenfolge geändert</translation>
    </message>
    <message>
        <source>Not refitted: %1</source>
        <translation>Nicht eingebaut: %1</translation>
    </message>
    <message>
        <source>Part not fitted: %1 (%2)</source>
        <translation>Teil nicht verbaut: %1 (%2)</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RestoreView</name>
    <message>
        <source>%1, %2: no backup, or damaged at its beginning</source>
        <translation>%1, %2: keine Sicherung, oder am Anfang beschädigt</translation>
    </message>
    <message>
        <source>%1, %2, sealed with a passphrase</source>
        <translation>%1, %2, mit Passwort versiegelt</translation>
    </message>
    <message numerus="yes">
        <source>%n jobs</source>
        <translation>
            <numerusform>%n Auftrag</numerusform>
            <numerusform>%n Aufträge</numerusform>
        </translation>
    </message>
    <message>
        <source>A shop that cannot be read whole</source>
        <translation>Eine Werkstatt, die nicht ganz lesbar ist</translation>
    </message>
    <message>
        <source>%1, last worked on %2</source>
        <translation>%1, zuletzt bearbeitet %2</translation>
    </message>
    <message>
        <source>This file is no backup of a shop, or damaged at its very beginning. Choose another one.</source>
        <translation>Diese Datei ist keine Sicherung einer Werkstatt, oder gleich am Anfang beschädigt. Eine andere wählen.</translation>
    </message>
    <message numerus="yes">
        <source>Brought back as it was on %1: %n entries.</source>
        <translation>
            <numerusform>Zurückgeholt, Stand %1: %n Eintrag.</numerusform>
            <numerusform>Zurückgeholt, Stand %1: %n Einträge.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n places of the backup could not be read.</source>
        <translation>
            <numerusform>%n Stelle der Sicherung war nicht lesbar.</numerusform>
            <numerusform>%n Stellen der Sicherung waren nicht lesbar.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photos or memos are in none of the backups here.</source>
        <translation>
            <numerusform>%n Foto oder Notiz ist in keiner Sicherung hier.</numerusform>
            <numerusform>%n Fotos oder Notizen sind in keiner Sicherung hier.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n things in it are missing or damaged.</source>
        <translation>
            <numerusform>%n Sache darin fehlt oder ist beschädigt.</numerusform>
            <numerusform>%n Sachen darin fehlen oder sind beschädigt.</numerusform>
        </translation>
    </message>
    <message>
        <source>This passphrase does not fit: look at each letter, large or small. If it is right, the file is damaged at its beginning.</source>
        <translation>Dieses Passwort passt nicht: jeden Buchstaben ansehen, groß oder klein. Stimmt es, ist die Datei am Anfang beschädigt.</translation>
    </message>
    <message>
        <source>Nothing of this backup can be read any more. Choose another one; this device holds what it held before.</source>
        <translation>Von dieser Sicherung ist nichts mehr lesbar. Eine andere wählen; auf diesem Gerät ist alles wie zuvor.</translation>
    </message>
    <message numerus="yes">
        <source>Some of its photos and memos are in earlier backups, of which %n are not in the same folder. Put them there, or bring back what is here.</source>
        <translation>
            <numerusform>Ein Teil ihrer Fotos und Notizen ist in früheren Sicherungen, von denen %n nicht im selben Ordner ist. Sie dorthin legen, oder zurückholen, was hier ist.</numerusform>
            <numerusform>Ein Teil ihrer Fotos und Notizen ist in früheren Sicherungen, von denen %n nicht im selben Ordner sind. Sie dorthin legen, oder zurückholen, was hier ist.</numerusform>
        </translation>
    </message>
    <message>
        <source>The backup is damaged or cut short. If there is another one, take that. Nothing was changed on this device.</source>
        <translation>Die Sicherung ist beschädigt oder abgeschnitten. Gibt es eine andere, diese nehmen. Auf diesem Gerät wurde nichts geändert.</translation>
    </message>
    <message>
        <source>There is no room on this device for the shop. Make room, then try again.</source>
        <translation>Auf diesem Gerät ist kein Platz für die Werkstatt. Platz schaffen, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The backup was written by a newer version. Bring this app up to date.</source>
        <translation>Die Sicherung stammt von einer neueren Version. Diese App aktualisieren.</translation>
    </message>
    <message>
        <source>The file is not there any more. Put the stick or the card in again.</source>
        <translation>Die Datei ist nicht mehr da. Den Stick oder die Karte wieder einstecken.</translation>
    </message>
    <message>
        <source>What can be read of the shop on this device</source>
        <translation>Was von der Werkstatt auf diesem Gerät lesbar ist</translation>
    </message>
    <message>
        <source>The shop was written by a newer version. Bring this app up to date.</source>
        <translation>Die Werkstatt stammt von einer neueren Version. Diese App aktualisieren.</translation>
    </message>
    <message numerus="yes">
        <source>A new shop of what can be read: %n entries.</source>
        <translation>
            <numerusform>Eine neue Werkstatt aus dem, was lesbar ist: %n Eintrag.</numerusform>
            <numerusform>Eine neue Werkstatt aus dem, was lesbar ist: %n Einträge.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them only the copies beside it still had.</source>
        <translation>
            <numerusform>%n davon hatten nur noch die Kopien daneben.</numerusform>
            <numerusform>%n davon hatten nur noch die Kopien daneben.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing of the shop on this device can be read any more. Bring a backup back.</source>
        <translation>Von der Werkstatt auf diesem Gerät ist nichts mehr lesbar. Eine Sicherung zurückholen.</translation>
    </message>
    <message>
        <source>The app opens it at its next start.</source>
        <translation>Die App öffnet sie beim nächsten Start.</translation>
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
    <name>undercowl::ui::SettleView</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Type what was done, such as &quot;hose renewed, brake bled&quot;.</source>
        <translation>Eingeben, was gemacht wurde, etwa &quot;Schlauch erneuert, Bremse entlüftet&quot;.</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Erledigt</translation>
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
        <source>Undone: %1</source>
        <translation>Zurückgenommen: %1</translation>
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
    <message>
        <source>%1: %2 of %3 on the photo</source>
        <translation>%1: %2 von %3 auf dem Foto</translation>
    </message>
    <message>
        <source>All %1 are on a photo. Touch a ring to take it away.</source>
        <translation>Alle %1 sind auf einem Foto. Einen Ring antippen nimmt ihn weg.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::StrokeView</name>
    <message>
        <source>No wire could be followed on this photo. Stroke across the wires.</source>
        <translation>Auf diesem Foto ließ sich kein Kabel verfolgen. Quer über die Kabel streichen.</translation>
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
    <message>
        <source>No wire could be followed from there. Stroke across the wires instead.</source>
        <translation>Von dort ließ sich kein Kabel verfolgen. Stattdessen quer über die Kabel streichen.</translation>
    </message>
    <message>
        <source>Followed from the connector: %1, in their order. Touch each that belongs here.</source>
        <translation>Vom Stecker aus verfolgt: %1, in ihrer Reihenfolge. Jedes antippen, das hierher gehört.</translation>
    </message>
    <message>
        <source>Followed: %1. Touch each that belongs here, or draw a line across the connector&apos;s mouth: then only its wires are left.</source>
        <translation>Verfolgt: %1. Jedes antippen, das hierher gehört, oder eine Linie quer über die Öffnung des Steckers ziehen: dann bleiben nur seine Kabel.</translation>
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
        <source>Changed</source>
        <translation>Geändert</translation>
    </message>
    <message>
        <source>Comes back from %1</source>
        <translation>Kommt wieder von %1</translation>
    </message>
    <message>
        <source>Look at it once more: %1</source>
        <translation>Noch einmal hinsehen: %1</translation>
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
    <message>
        <source>sure, of the side that is seen</source>
        <translation>sicher, von der Seite, die man sieht</translation>
    </message>
    <message>
        <source>turn the wire, a tracer may lie on its other side</source>
        <translation>das Kabel drehen, auf seiner anderen Seite kann ein Streifen liegen</translation>
    </message>
</context>
</TS>
