<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="it_IT" sourcelanguage="en">
<context>
    <name>AfterwardsPage</name>
    <message>
        <source>Afterwards</source>
        <translation>Dopo</translation>
    </message>
    <message>
        <source>It is done</source>
        <translation>È fatto</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Tralascia</translation>
    </message>
    <message>
        <source>Nothing that is on again waits to be adjusted, bled or tried.</source>
        <translation>Niente di quanto è rimontato aspetta di essere regolato, spurgato o provato.</translation>
    </message>
    <message>
        <source>Nothing open</source>
        <translation>Niente in sospeso</translation>
    </message>
    <message>
        <source>Why, if it is left out</source>
        <translation>Perché, se si tralascia</translation>
    </message>
    <message>
        <source>goes home on a trailer</source>
        <translation>va a casa sul rimorchio</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Tralasciato</translation>
    </message>
</context>
<context>
    <name>ApprovalPage</name>
    <message>
        <source>The owner&apos;s word</source>
        <translation>La parola del proprietario</translation>
    </message>
    <message>
        <source>The owner agrees</source>
        <translation>Il proprietario accetta</translation>
    </message>
    <message>
        <source>The owner does not want it</source>
        <translation>Il proprietario non vuole</translation>
    </message>
    <message>
        <source>Approval</source>
        <translation>Consenso</translation>
    </message>
    <message>
        <source>For which work</source>
        <translation>Per quale lavoro</translation>
    </message>
    <message>
        <source>front brake, both tyres</source>
        <translation>freno anteriore, due pneumatici</translation>
    </message>
    <message>
        <source>Up to which sum</source>
        <translation>Fino a quale somma</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Valuta</translation>
    </message>
</context>
<context>
    <name>AsFoundPage</name>
    <message>
        <source>As found</source>
        <translation>Come trovato</translation>
    </message>
    <message>
        <source>Another photo</source>
        <translation>Un&apos;altra foto</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Go on with the views</source>
        <translation>Continua con le viste</translation>
    </message>
    <message>
        <source>Pass over</source>
        <translation>Salta</translation>
    </message>
    <message>
        <source>Every view is photographed or passed over.</source>
        <translation>Ogni vista è fotografata o saltata.</translation>
    </message>
</context>
<context>
    <name>BackupPage</name>
    <message>
        <source>Backup</source>
        <translation>Copia di sicurezza</translation>
    </message>
    <message>
        <source>Writing</source>
        <translation>Scrittura</translation>
    </message>
    <message>
        <source>Reading it again</source>
        <translation>Rilettura</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Copia adesso</translation>
    </message>
    <message>
        <source>Back up, sealed</source>
        <translation>Copia sigillata</translation>
    </message>
    <message>
        <source>Last copy of the entries on this device: %1. It does not help when the phone is lost: put the whole shop into another place now and then.</source>
        <translation>Ultima copia delle voci su questo dispositivo: %1. Non serve se si perde il telefono: mettere ogni tanto tutta l&apos;officina in un altro posto.</translation>
    </message>
    <message>
        <source>Where to</source>
        <translation>Dove</translation>
    </message>
    <message>
        <source>Photos and memos</source>
        <translation>Foto e note</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Tutte</translation>
    </message>
    <message>
        <source>Only new ones</source>
        <translation>Solo le nuove</translation>
    </message>
    <message>
        <source>The backups that are there already are needed too when the shop is brought back.</source>
        <translation>Per riportare l&apos;officina servono anche le copie che ci sono già.</translation>
    </message>
    <message>
        <source>Without one, whoever finds the file can read it. A forgotten one cannot be got round.</source>
        <translation>Senza, chi trova il file può leggerlo. Se la si dimentica, non c&apos;è rimedio.</translation>
    </message>
    <message>
        <source>Passphrase, if it is to be sealed</source>
        <translation>Frase segreta, se va sigillata</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>Di nuovo la stessa</translation>
    </message>
</context>
<context>
    <name>BagEntry</name>
    <message>
        <source>in use: %1</source>
        <translation>in uso: %1</translation>
    </message>
    <message>
        <source>Number of the bag</source>
        <translation>Numero del sacchetto</translation>
    </message>
</context>
<context>
    <name>BandPlot</name>
    <message>
        <source>%1; limits %2 to %3</source>
        <translation>%1; limiti da %2 a %3</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nessuno</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>da %1</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>fino a %1</translation>
    </message>
</context>
<context>
    <name>CalcEntry</name>
    <message>
        <source>changes the sign</source>
        <translation>cambia il segno</translation>
    </message>
    <message>
        <source>+/−</source>
        <translation>+/−</translation>
    </message>
    <message>
        <source>changes the unit</source>
        <translation>cambia l&apos;unità</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unità</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unità</translation>
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
        <translation>dalla commessa; toccare per cambiare</translation>
    </message>
    <message>
        <source>assumed; tap to change</source>
        <translation>presunto; toccare per cambiare</translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation>può restare vuoto</translation>
    </message>
</context>
<context>
    <name>CalcListPage</name>
    <message>
        <source>Calculations</source>
        <translation>Calcoli</translation>
    </message>
    <message>
        <source>Words to look for</source>
        <translation>Parole da cercare</translation>
    </message>
    <message>
        <source>words, such as torque or tyre</source>
        <translation>parole come coppia o pneumatico</translation>
    </message>
    <message>
        <source>No calculation has these words. Try fewer, or only their beginnings.</source>
        <translation>Nessun calcolo ha queste parole. Provare con meno parole o solo l&apos;inizio.</translation>
    </message>
</context>
<context>
    <name>CalcMore</name>
    <message>
        <source>Hide: %1</source>
        <translation>Nascondi: %1</translation>
    </message>
</context>
<context>
    <name>CalcPage</name>
    <message>
        <source>Next</source>
        <translation>Avanti</translation>
    </message>
    <message>
        <source>Keep in the job</source>
        <translation>Salva nella commessa</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Svuota</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Ripristina</translation>
    </message>
    <message>
        <source>Example</source>
        <translation>Esempio</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Dati</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Svolgimento</translation>
    </message>
    <message>
        <source>Formula, limits and sources</source>
        <translation>Formula, limiti e fonti</translation>
    </message>
</context>
<context>
    <name>CaptureFooter</name>
    <message>
        <source>Saving</source>
        <translation>Salvataggio</translation>
    </message>
    <message>
        <source>Shoot</source>
        <translation>Scatta</translation>
    </message>
    <message>
        <source>Note to this photo</source>
        <translation>Nota a questa foto</translation>
    </message>
    <message numerus="yes">
        <source>Done, %n kept</source>
        <comment>photos</comment>
        <translation>
            <numerusform>Fine, %n salvata</numerusform>
            <numerusform>Fine, %n salvate</numerusform>
        </translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fine</translation>
    </message>
</context>
<context>
    <name>CautionBox</name>
    <message>
        <source>Caution: %1</source>
        <translation>Attenzione: %1</translation>
    </message>
</context>
<context>
    <name>CheckWalkBody</name>
    <message>
        <source>Answered: %1</source>
        <translation>Risposto: %1</translation>
    </message>
    <message>
        <source>Previous</source>
        <translation>Precedente</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation>Tutte</translation>
    </message>
    <message numerus="yes">
        <source>%n to go</source>
        <comment>checks</comment>
        <translation>
            <numerusform>ne manca %n</numerusform>
            <numerusform>ne mancano %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>Compare</source>
        <translation>Confronta</translation>
    </message>
    <message>
        <source>Opening the photo</source>
        <translation>Apertura della foto</translation>
    </message>
    <message>
        <source>Reading the wires</source>
        <translation>Lettura dei fili</translation>
    </message>
    <message>
        <source>Photo as it is now</source>
        <translation>Foto com&apos;è adesso</translation>
    </message>
    <message>
        <source>Wires as they are now</source>
        <translation>Fili come sono adesso</translation>
    </message>
    <message>
        <source>When the stroke began at the last place</source>
        <translation>Se il tratto è cominciato dall&apos;ultima via</translation>
    </message>
    <message>
        <source>Turn round</source>
        <translation>Inverti</translation>
    </message>
    <message>
        <source>Stroke again</source>
        <translation>Nuovo tratto</translation>
    </message>
    <message>
        <source>Wires that look alike cannot be told apart in a photo: a swap among twins is not seen.</source>
        <translation>In una foto i fili uguali non si distinguono: uno scambio tra gemelli non si vede.</translation>
    </message>
    <message>
        <source>Now tap the last wire.</source>
        <translation>Ora toccare l&apos;ultimo filo.</translation>
    </message>
    <message>
        <source>Stroke across the wires from place 1 on, or tap the first wire and then the last.</source>
        <translation>Passare il dito sui fili dalla via 1 in poi, oppure toccare il primo filo e poi l&apos;ultimo.</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Prima</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Adesso</translation>
    </message>
    <message>
        <source>Photo before</source>
        <translation>Foto di prima</translation>
    </message>
    <message>
        <source>Compare with another photo</source>
        <translation>Confronta con altra foto</translation>
    </message>
</context>
<context>
    <name>ConsumablesPage</name>
    <message>
        <source>Fluids and grease</source>
        <translation>Fluidi e grasso</translation>
    </message>
    <message>
        <source>Use it all the same</source>
        <translation>Usa lo stesso</translation>
    </message>
    <message>
        <source>It goes in</source>
        <translation>Lo metto</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Fluido</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Che cosa si mette</translation>
    </message>
    <message>
        <source>brake fluid</source>
        <translation>liquido freni</translation>
    </message>
    <message>
        <source>Grade on the container</source>
        <translation>Tipo sul contenitore</translation>
    </message>
    <message>
        <source>Grades that the machine allows</source>
        <translation>Tipi ammessi dal mezzo</translation>
    </message>
    <message>
        <source>DOT 3 or DOT 4, from the reservoir&apos;s lid</source>
        <translation>DOT 3 o DOT 4, dal tappo</translation>
    </message>
    <message>
        <source>Day on which the container was opened</source>
        <translation>Giorno di apertura del contenitore</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lotto</translation>
    </message>
    <message>
        <source>Went in</source>
        <translation>Messo</translation>
    </message>
</context>
<context>
    <name>CostPage</name>
    <message>
        <source>Cost</source>
        <translation>Costo</translation>
    </message>
    <message>
        <source>Reckon</source>
        <translation>Conteggia</translation>
    </message>
    <message>
        <source>Add the line</source>
        <translation>Aggiungi la voce</translation>
    </message>
    <message>
        <source>Line of the cost</source>
        <translation>Voce di costo</translation>
    </message>
    <message>
        <source>One hour&apos;s work without tax</source>
        <translation>Un&apos;ora di lavoro senza IVA</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Valuta</translation>
    </message>
    <message>
        <source>Tax, per cent</source>
        <translation>IVA, per cento</translation>
    </message>
    <message>
        <source>Another line</source>
        <translation>Altra voce</translation>
    </message>
    <message>
        <source>What for</source>
        <translation>Per che cosa</translation>
    </message>
    <message>
        <source>tyre fitted outside</source>
        <translation>pneumatico montato fuori</translation>
    </message>
    <message>
        <source>Sum without tax</source>
        <translation>Somma senza IVA</translation>
    </message>
    <message>
        <source>take out</source>
        <translation>togli</translation>
    </message>
</context>
<context>
    <name>CostSum</name>
    <message>
        <source>without tax: %1</source>
        <translation>senza IVA: %1</translation>
    </message>
    <message>
        <source>Expected: %1</source>
        <translation>Previsto: %1</translation>
    </message>
    <message>
        <source>It took: %1</source>
        <translation>Impiegato: %1</translation>
    </message>
</context>
<context>
    <name>DraftRow</name>
    <message>
        <source>begun %1, not finished</source>
        <translation>cominciato %1, non finito</translation>
    </message>
    <message>
        <source>%1, begun %2, not finished</source>
        <translation>%1, cominciato %2, non finito</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Continua</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Scarta</translation>
    </message>
</context>
<context>
    <name>DuePage</name>
    <message>
        <source>Rechecks due</source>
        <translation>Ricontrolli in scadenza</translation>
    </message>
    <message>
        <source>Rechecks with a number of days stand here from the hand-over on.</source>
        <translation>I ricontrolli con un numero di giorni stanno qui dalla consegna in poi.</translation>
    </message>
    <message>
        <source>Nothing is due</source>
        <translation>Niente in scadenza</translation>
    </message>
    <message>
        <source>due</source>
        <translation>in scadenza</translation>
    </message>
</context>
<context>
    <name>FindFilters</name>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>every machine</source>
        <translation>ogni mezzo</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Mezzo</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Commessa</translation>
    </message>
    <message>
        <source>Any</source>
        <translation>Tutte</translation>
    </message>
    <message>
        <source>In the shop</source>
        <translation>In officina</translation>
    </message>
    <message>
        <source>Waits</source>
        <translation>In attesa</translation>
    </message>
    <message>
        <source>Unsafe</source>
        <translation>Pericolo</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Uscito</translation>
    </message>
    <message>
        <source>Worked on</source>
        <translation>Lavorato</translation>
    </message>
    <message>
        <source>Any time</source>
        <translation>Sempre</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 giorni</translation>
    </message>
    <message>
        <source>A year</source>
        <translation>Un anno</translation>
    </message>
    <message>
        <source>What kind?</source>
        <translation>Che tipo?</translation>
    </message>
    <message>
        <source>Which machine?</source>
        <translation>Quale mezzo?</translation>
    </message>
</context>
<context>
    <name>FindPage</name>
    <message>
        <source>Find</source>
        <translation>Cerca</translation>
    </message>
    <message>
        <source>Words, or their beginnings</source>
        <translation>Parole o il loro inizio</translation>
    </message>
    <message>
        <source>green pink ring</source>
        <translation>verde rosa occhiello</translation>
    </message>
    <message>
        <source>Hide the filters</source>
        <translation>Nascondi i filtri</translation>
    </message>
    <message>
        <source>Filters (in use)</source>
        <translation>Filtri (attivi)</translation>
    </message>
    <message>
        <source>Filters</source>
        <translation>Filtri</translation>
    </message>
    <message>
        <source>Nothing found for these words. Try fewer, or only their beginnings.</source>
        <translation>Niente trovato con queste parole. Provare con meno parole o solo l&apos;inizio.</translation>
    </message>
</context>
<context>
    <name>FindingPage</name>
    <message>
        <source>New finding</source>
        <translation>Nuovo rilievo</translation>
    </message>
    <message>
        <source>Correct the finding</source>
        <translation>Correggi il rilievo</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Salva</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Rilievo</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Che cosa si è trovato</translation>
    </message>
    <message>
        <source>front brake hose cracked at the banjo</source>
        <translation>tubo freno anteriore screpolato al raccordo</translation>
    </message>
    <message>
        <source>How serious</source>
        <translation>Quanto è grave</translation>
    </message>
    <message>
        <source>Unsafe</source>
        <translation>Pericolo</translation>
    </message>
    <message>
        <source>Soon</source>
        <translation>Presto</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>What to do about it</source>
        <translation>Che cosa fare</translation>
    </message>
    <message>
        <source>renew the hose, bleed the brake</source>
        <translation>sostituire il tubo, spurgare il freno</translation>
    </message>
    <message>
        <source>How long it will take, in minutes</source>
        <translation>Quanto ci vorrà, in minuti</translation>
    </message>
</context>
<context>
    <name>FindingRow</name>
    <message>
        <source>Correct</source>
        <translation>Correggi</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Risolto</translation>
    </message>
    <message>
        <source>Make it a task</source>
        <translation>Fanne un lavoro</translation>
    </message>
    <message>
        <source>Owner says no</source>
        <translation>Il proprietario rifiuta</translation>
    </message>
</context>
<context>
    <name>FirstStart</name>
    <message>
        <source>Who works here?</source>
        <translation>Chi lavora qui?</translation>
    </message>
    <message>
        <source>Each entry names who made it. Your name stays on this phone and in the records that you hand over.</source>
        <translation>Ogni voce dice chi l&apos;ha fatta. Il nome resta su questo telefono e nei rapporti che si consegnano.</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Il tuo nome</translation>
    </message>
    <message>
        <source>as the owner will read it</source>
        <translation>come lo leggerà il proprietario</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Comincia</translation>
    </message>
</context>
<context>
    <name>FunctionsPage</name>
    <message>
        <source>What works now</source>
        <translation>Che cosa funziona ora</translation>
    </message>
    <message>
        <source>What works</source>
        <translation>Che cosa funziona</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continua</translation>
    </message>
    <message>
        <source>Works</source>
        <translation>Funziona</translation>
    </message>
    <message>
        <source>Does not</source>
        <translation>Non va</translation>
    </message>
    <message>
        <source>Not tried</source>
        <translation>Non provato</translation>
    </message>
    <message>
        <source>Everything has its answer.</source>
        <translation>Tutto ha una risposta.</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Annotazione</translation>
    </message>
    <message>
        <source>flickers, only when cold</source>
        <translation>sfarfalla, solo a freddo</translation>
    </message>
</context>
<context>
    <name>Gallery</name>
    <message>
        <source>Undercowl controls</source>
        <translation>Comandi di Undercowl</translation>
    </message>
    <message>
        <source>Next theme</source>
        <translation>Altro aspetto</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Pagina seguente</translation>
    </message>
</context>
<context>
    <name>GatheringActions</name>
    <message>
        <source>Read the wires</source>
        <translation>Leggi i fili</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Read back</source>
        <translation>Rileggi</translation>
    </message>
</context>
<context>
    <name>GatheringForm</name>
    <message>
        <source>Connector</source>
        <translation>Connettore</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Loose terminals</source>
        <translation>Terminali sciolti</translation>
    </message>
    <message>
        <source>Splice</source>
        <translation>Giunzione</translation>
    </message>
    <message>
        <source>Shared earth</source>
        <translation>Massa comune</translation>
    </message>
    <message>
        <source>What it is called</source>
        <translation>Come si chiama</translation>
    </message>
    <message>
        <source>right switch cluster</source>
        <translation>blocchetto destro</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Vie</translation>
    </message>
    <message>
        <source>Number of places</source>
        <translation>Numero di vie</translation>
    </message>
    <message>
        <source>Rows of places</source>
        <translation>File di vie</translation>
    </message>
    <message>
        <source>Seen from: the numbers run the other way on the other side</source>
        <translation>Visto da: sull&apos;altro lato i numeri vanno al contrario</translation>
    </message>
    <message>
        <source>Wire side</source>
        <translation>Lato fili</translation>
    </message>
    <message>
        <source>Mating face</source>
        <translation>Lato innesto</translation>
    </message>
    <message>
        <source>Latch or key</source>
        <translation>Fermo o chiave</translation>
    </message>
    <message>
        <source>top</source>
        <translation>in alto</translation>
    </message>
</context>
<context>
    <name>GatheringMap</name>
    <message>
        <source>Photo of %1</source>
        <translation>Foto di %1</translation>
    </message>
    <message>
        <source>Tap place 1 on the photo</source>
        <translation>Toccare la via 1 sulla foto</translation>
    </message>
    <message>
        <source>Place 1 is elsewhere</source>
        <translation>La via 1 è altrove</translation>
    </message>
    <message>
        <source>Mark place 1</source>
        <translation>Segna la via 1</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>Metà</translation>
    </message>
    <message>
        <source>Loom</source>
        <translation>Cablaggio</translation>
    </message>
    <message>
        <source>Switch, lamp or unit</source>
        <translation>Interruttore, lampada o utenza</translation>
    </message>
</context>
<context>
    <name>GatheringPage</name>
    <message>
        <source>Correct</source>
        <translation>Correggi</translation>
    </message>
    <message>
        <source>What is it?</source>
        <translation>Che cos&apos;è?</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Salva</translation>
    </message>
    <message>
        <source>Correct what it is</source>
        <translation>Correggi che cos&apos;è</translation>
    </message>
</context>
<context>
    <name>HandOverPage</name>
    <message>
        <source>Hand over</source>
        <translation>Consegna</translation>
    </message>
    <message>
        <source>Writing the record</source>
        <translation>Scrittura del rapporto</translation>
    </message>
    <message>
        <source>Writing</source>
        <translation>Scrittura</translation>
    </message>
    <message>
        <source>Make the files again</source>
        <translation>Rifai i file</translation>
    </message>
    <message>
        <source>Make the record</source>
        <translation>Fai il rapporto</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Consegnato</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <translation>Consegna</translation>
    </message>
    <message>
        <source>See to it</source>
        <translation>Provvedi</translation>
    </message>
    <message>
        <source>Written</source>
        <translation>Scritto</translation>
    </message>
    <message>
        <source>Prove</source>
        <translation>Verifiche</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Costo</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>To be told at hand-over</source>
        <translation>Da dire alla consegna</translation>
    </message>
    <message>
        <source>brake eased in, holds straight</source>
        <translation>freno assestato, frena dritto</translation>
    </message>
    <message>
        <source>Old parts</source>
        <translation>Pezzi vecchi</translation>
    </message>
    <message>
        <source>given back in a bag</source>
        <translation>restituiti in un sacchetto</translation>
    </message>
    <message>
        <source>Waste taken</source>
        <translation>Rifiuti ritirati</translation>
    </message>
    <message>
        <source>0.9 l oil, old battery</source>
        <translation>0,9 l d&apos;olio, batteria vecchia</translation>
    </message>
    <message>
        <source>What the owner will read</source>
        <translation>Che cosa leggerà il proprietario</translation>
    </message>
</context>
<context>
    <name>HardwareEntry</name>
    <message>
        <source>screw</source>
        <translation>vite</translation>
    </message>
    <message>
        <source>bolt</source>
        <translation>bullone</translation>
    </message>
    <message>
        <source>nut</source>
        <translation>dado</translation>
    </message>
    <message>
        <source>washer</source>
        <translation>rondella</translation>
    </message>
    <message>
        <source>clip</source>
        <translation>clip</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>spina</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Quanti</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Cosa</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Filetto</translation>
    </message>
    <message>
        <source>Length, mm</source>
        <translation>Lunghezza, mm</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Che cos&apos;è</translation>
    </message>
    <message>
        <source>flange nut</source>
        <translation>dado flangiato</translation>
    </message>
    <message>
        <source>Its thread</source>
        <translation>Il filetto</translation>
    </message>
    <message>
        <source>Its length, mm</source>
        <translation>La lunghezza, mm</translation>
    </message>
    <message>
        <source>from the machine&apos;s manual; N.m unless another unit is typed</source>
        <translation>dal manuale del mezzo; N.m se non si scrive altra unità</translation>
    </message>
    <message>
        <source>Torque on refit</source>
        <translation>Coppia di serraggio</translation>
    </message>
</context>
<context>
    <name>HomePage</name>
    <message>
        <source>In the shop</source>
        <translation>In officina</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Ingresso</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Cerca</translation>
    </message>
    <message>
        <source>The shop</source>
        <translation>L&apos;officina</translation>
    </message>
    <message>
        <source>Calculations</source>
        <translation>Calcoli</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Impostazioni</translation>
    </message>
    <message>
        <source>Take in the first machine: what it is, whose it is, why it is here.</source>
        <translation>Accettare il primo mezzo: che cos&apos;è, di chi è, perché è qui.</translation>
    </message>
    <message>
        <source>The shop is empty</source>
        <translation>L&apos;officina è vuota</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Consegnato</translation>
    </message>
    <message>
        <source>Machines handed over before these are found by Find.</source>
        <translation>I mezzi consegnati prima di questi si trovano con Cerca.</translation>
    </message>
</context>
<context>
    <name>InstrumentForm</name>
    <message>
        <source>Name, as the shop calls it</source>
        <translation>Nome, come si dice in officina</translation>
    </message>
    <message>
        <source>wrench red</source>
        <translation>chiave rossa</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>Choose the kind</source>
        <translation>Scegli il tipo</translation>
    </message>
    <message>
        <source>Largest reading, with its unit</source>
        <translation>Lettura massima, con unità</translation>
    </message>
    <message>
        <source>Least reading</source>
        <translation>Lettura minima</translation>
    </message>
    <message>
        <source>One division, or the last digit</source>
        <translation>Una divisione, o l&apos;ultima cifra</translation>
    </message>
    <message>
        <source>Type and class by ISO 6789-1</source>
        <translation>Tipo e classe secondo ISO 6789-1</translation>
    </message>
    <message>
        <source>Class by EN 837-1, as on the dial</source>
        <translation>Classe secondo EN 837-1, come sul quadrante</translation>
    </message>
    <message>
        <source>Limit of error: per cent of the reading</source>
        <translation>Limite d&apos;errore: per cento della lettura</translation>
    </message>
    <message>
        <source>and digits</source>
        <translation>e cifre</translation>
    </message>
    <message>
        <source>and a fixed part</source>
        <translation>e una parte fissa</translation>
    </message>
    <message>
        <source>Feel of the hand: half of what two people read differently</source>
        <translation>Sensibilità della mano: metà di quanto leggono diverso due persone</translation>
    </message>
    <message>
        <source>Where the limit of error stands</source>
        <translation>Dove sta il limite d&apos;errore</translation>
    </message>
    <message>
        <source>maker&apos;s sheet</source>
        <translation>foglio del costruttore</translation>
    </message>
    <message>
        <source>Calibrated on</source>
        <translation>Tarato il</translation>
    </message>
    <message>
        <source>Due again on</source>
        <translation>Da ritarare il</translation>
    </message>
    <message>
        <source>Kind of instrument</source>
        <translation>Tipo di strumento</translation>
    </message>
</context>
<context>
    <name>InstrumentPage</name>
    <message>
        <source>New instrument</source>
        <translation>Nuovo strumento</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Strumento</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Salva</translation>
    </message>
    <message>
        <source>Use it again</source>
        <translation>Usa di nuovo</translation>
    </message>
    <message>
        <source>No longer used</source>
        <translation>Non più usato</translation>
    </message>
</context>
<context>
    <name>InstrumentsPage</name>
    <message>
        <source>Instruments</source>
        <translation>Strumenti</translation>
    </message>
    <message>
        <source>Add an instrument</source>
        <translation>Aggiungi uno strumento</translation>
    </message>
    <message>
        <source>An instrument with its limit of error gives readings their verdict. Until the shop has its own, ordinary ones with assumed limits can be chosen.</source>
        <translation>Uno strumento con il suo limite d&apos;errore dà il giudizio alle letture. Finché l&apos;officina non ne ha, se ne scelgono di comuni con limiti presunti.</translation>
    </message>
    <message>
        <source>No instruments of the shop yet</source>
        <translation>Ancora nessuno strumento dell&apos;officina</translation>
    </message>
    <message>
        <source>No longer used</source>
        <translation>Non più usato</translation>
    </message>
</context>
<context>
    <name>JobActions</name>
    <message>
        <source>Photos as found</source>
        <translation>Foto come trovato</translation>
    </message>
    <message>
        <source>Look over</source>
        <translation>Controllo</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Consegna</translation>
    </message>
    <message>
        <source>Refit</source>
        <translation>Rimonta</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Smonta</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Misura</translation>
    </message>
</context>
<context>
    <name>JobMemos</name>
    <message>
        <source>Memo</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>what must not be forgotten</source>
        <translation>che cosa non va dimenticato</translation>
    </message>
    <message>
        <source>Keep the memo</source>
        <translation>Salva la nota</translation>
    </message>
</context>
<context>
    <name>JobPage</name>
    <message>
        <source>Unsafe and open: %1</source>
        <translation>Pericolo in sospeso: %1</translation>
    </message>
    <message>
        <source>Came back: the job before</source>
        <translation>Tornato: la commessa prima</translation>
    </message>
    <message numerus="yes">
        <source>%n to do</source>
        <comment>afterwards</comment>
        <translation>
            <numerusform>%n da fare</numerusform>
            <numerusform>%n da fare</numerusform>
        </translation>
    </message>
    <message>
        <source>Afterwards: adjust, bleed, try</source>
        <translation>Dopo: regolare, spurgare, provare</translation>
    </message>
    <message>
        <source>Prove</source>
        <translation>Verifiche</translation>
    </message>
    <message>
        <source>Photos as found, view by view</source>
        <translation>Foto come trovato, vista per vista</translation>
    </message>
    <message>
        <source>What works</source>
        <translation>Che cosa funziona</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Giri di controllo</translation>
    </message>
    <message numerus="yes">
        <source>%n open</source>
        <comment>findings</comment>
        <translation>
            <numerusform>%n in sospeso</numerusform>
            <numerusform>%n in sospeso</numerusform>
        </translation>
    </message>
    <message>
        <source>Look over</source>
        <translation>Controllo</translation>
    </message>
    <message>
        <source>The owner&apos;s word on the cost</source>
        <translation>La parola del proprietario sul costo</translation>
    </message>
    <message numerus="yes">
        <source>%n to come</source>
        <comment>parts</comment>
        <translation>
            <numerusform>%n in arrivo</numerusform>
            <numerusform>%n in arrivo</numerusform>
        </translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Ricambi</translation>
    </message>
    <message>
        <source>What the shop knows of this model</source>
        <translation>Che cosa sa l&apos;officina di questo modello</translation>
    </message>
    <message>
        <source>Fluids and grease</source>
        <translation>Fluidi e grasso</translation>
    </message>
    <message>
        <source>Machine and owner</source>
        <translation>Mezzo e proprietario</translation>
    </message>
    <message>
        <source>Labels for the bags</source>
        <translation>Etichette per i sacchetti</translation>
    </message>
    <message>
        <source>In the bags</source>
        <translation>Nei sacchetti</translation>
    </message>
</context>
<context>
    <name>JobRow</name>
    <message>
        <source>Photo of %1</source>
        <translation>Foto di %1</translation>
    </message>
</context>
<context>
    <name>JobTasks</name>
    <message>
        <source>Tasks</source>
        <translation>Lavori</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>del</source>
        <comment>erases the last digit</comment>
        <translation>canc</translation>
    </message>
</context>
<context>
    <name>KnowledgePage</name>
    <message>
        <source>Write the file for other shops</source>
        <translation>Scrivi il file per altre officine</translation>
    </message>
    <message>
        <source>A touch takes a line over into the open job. Nothing enters it by itself.</source>
        <translation>Un tocco porta una riga nella commessa aperta. Niente entra da solo.</translation>
    </message>
    <message>
        <source>Open a job of this model to take lines over.</source>
        <translation>Per prendere righe, aprire una commessa di questo modello.</translation>
    </message>
    <message>
        <source>Written, without anything of any owner: %1</source>
        <translation>Scritto, senza nulla di alcun proprietario: %1</translation>
    </message>
    <message>
        <source>Limits, torques, parts that fitted or not, wiring maps and times of other jobs will stand here.</source>
        <translation>Qui staranno limiti, coppie, ricambi adatti o no, schemi dei fili e tempi di altre commesse.</translation>
    </message>
    <message>
        <source>Nothing known of this model yet</source>
        <translation>Di questo modello non si sa ancora niente</translation>
    </message>
    <message>
        <source>take</source>
        <translation>prendi</translation>
    </message>
</context>
<context>
    <name>LabelsPage</name>
    <message>
        <source>Labels for the bags</source>
        <translation>Etichette per i sacchetti</translation>
    </message>
    <message>
        <source>Make the sheet</source>
        <translation>Fai il foglio</translation>
    </message>
    <message>
        <source>Steps that were bagged while stripping stand here.</source>
        <translation>Qui stanno i passi messi in sacchetto nello smontaggio.</translation>
    </message>
    <message>
        <source>No bags yet</source>
        <translation>Ancora nessun sacchetto</translation>
    </message>
    <message>
        <source>Written: %1. Print it at 100 %.</source>
        <translation>Scritto: %1. Stampare al 100 %.</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Fogli</translation>
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
        <translation>Posto della prima etichetta</translation>
    </message>
</context>
<context>
    <name>LimitsEntry</name>
    <message>
        <source>What was measured</source>
        <translation>Che cosa si è misurato</translation>
    </message>
    <message>
        <source>rear axle nut, torque</source>
        <translation>dado perno posteriore, coppia</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unità</translation>
    </message>
    <message>
        <source>plain number</source>
        <translation>numero puro</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>strumento</translation>
    </message>
    <message>
        <source>The shop&apos;s instruments</source>
        <translation>Gli strumenti dell&apos;officina</translation>
    </message>
    <message>
        <source>At least, %1</source>
        <translation>Almeno, %1</translation>
    </message>
    <message>
        <source>At most, %1</source>
        <translation>Al massimo, %1</translation>
    </message>
    <message>
        <source>Where the limits come from</source>
        <translation>Da dove vengono i limiti</translation>
    </message>
    <message>
        <source>Page or place</source>
        <translation>Pagina o punto</translation>
    </message>
    <message>
        <source>page 7-12</source>
        <translation>pagina 7-12</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unità</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Strumento</translation>
    </message>
</context>
<context>
    <name>LookOverPage</name>
    <message>
        <source>Look over</source>
        <translation>Controllo</translation>
    </message>
    <message>
        <source>Photo as found</source>
        <translation>Foto come trovato</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Come trovato</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Rilievo</translation>
    </message>
    <message>
        <source>Brakes, tyres, play in the steering, leaks, wiring: note what is not as it should be.</source>
        <translation>Freni, pneumatici, gioco dello sterzo, perdite, cavi: annotare ciò che non è come dovrebbe.</translation>
    </message>
    <message>
        <source>Nothing found yet</source>
        <translation>Ancora niente trovato</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fatto</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Risolto</translation>
    </message>
</context>
<context>
    <name>MeasureActions</name>
    <message>
        <source>Again</source>
        <translation>Ripeti</translation>
    </message>
    <message>
        <source>Keep mean</source>
        <translation>Salva la media</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Salva</translation>
    </message>
</context>
<context>
    <name>MeasureMore</name>
    <message>
        <source>one of several; tap to take it out</source>
        <translation>una di più letture; toccare per toglierla</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Svolgimento</translation>
    </message>
</context>
<context>
    <name>MeasurePage</name>
    <message>
        <source>Measure</source>
        <translation>Misura</translation>
    </message>
    <message>
        <source>What and how</source>
        <translation>Cosa e come</translation>
    </message>
    <message>
        <source>To the value</source>
        <translation>Al valore</translation>
    </message>
    <message>
        <source>Readings so far</source>
        <translation>Letture finora</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lettura</translation>
    </message>
    <message>
        <source>at: %1 · %2</source>
        <translation>a: %1 · %2</translation>
    </message>
    <message>
        <source>What is measured?</source>
        <translation>Che cosa si misura?</translation>
    </message>
</context>
<context>
    <name>MeasureValue</name>
    <message>
        <source>Value in %1</source>
        <translation>Valore in %1</translation>
    </message>
    <message>
        <source>changes the unit</source>
        <translation>cambia l&apos;unità</translation>
    </message>
    <message>
        <source>number</source>
        <translation>numero</translation>
    </message>
</context>
<context>
    <name>Measuring</name>
    <message>
        <source>at rest</source>
        <translation>a riposo</translation>
    </message>
    <message>
        <source>at idle</source>
        <translation>al minimo</translation>
    </message>
    <message>
        <source>at revs</source>
        <translation>a regime</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Type the value on the keypad.</source>
        <translation>Scrivere il valore sui tasti.</translation>
    </message>
    <message>
        <source>Say where the limits come from.</source>
        <translation>Dire da dove vengono i limiti.</translation>
    </message>
    <message>
        <source>plain number</source>
        <translation>numero puro</translation>
    </message>
    <message>
        <source>Type what was measured, such as &quot;rear axle nut, torque&quot;.</source>
        <translation>Scrivere che cosa si è misurato, per esempio &quot;dado perno posteriore, coppia&quot;.</translation>
    </message>
    <message>
        <source>%1, torque</source>
        <translation>%1, coppia</translation>
    </message>
    <message>
        <source>to be %1, as the step says</source>
        <translation>deve essere %1, come dice il passo</translation>
    </message>
    <message>
        <source>next after: %1</source>
        <translation>poi, dopo: %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>almeno %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>al massimo %1</translation>
    </message>
</context>
<context>
    <name>MemoPage</name>
    <message>
        <source>Keep</source>
        <translation>Salva</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Note to a photo</source>
        <translation>Nota a una foto</translation>
    </message>
    <message>
        <source>Note to this photo</source>
        <translation>Nota a questa foto</translation>
    </message>
    <message>
        <source>what must not be forgotten</source>
        <translation>che cosa non va dimenticato</translation>
    </message>
    <message>
        <source>Kept so far</source>
        <translation>Salvate finora</translation>
    </message>
</context>
<context>
    <name>ModelsPage</name>
    <message>
        <source>What the shop knows</source>
        <translation>Che cosa sa l&apos;officina</translation>
    </message>
    <message>
        <source>Learn from the file</source>
        <translation>Impara dal file</translation>
    </message>
    <message>
        <source>Learn from another shop</source>
        <translation>Impara da un&apos;altra officina</translation>
    </message>
    <message>
        <source>Learned: %1</source>
        <translation>Imparato: %1</translation>
    </message>
    <message>
        <source>Its file</source>
        <translation>Il suo file</translation>
    </message>
</context>
<context>
    <name>MorePage</name>
    <message>
        <source>The shop</source>
        <translation>L&apos;officina</translation>
    </message>
    <message>
        <source>To order</source>
        <translation>Da ordinare</translation>
    </message>
    <message>
        <source>What the shop knows</source>
        <translation>Che cosa sa l&apos;officina</translation>
    </message>
    <message>
        <source>Scan a bag or a part</source>
        <translation>Leggi un sacchetto o ricambio</translation>
    </message>
    <message>
        <source>Spreadsheets in and out</source>
        <translation>Fogli di calcolo</translation>
    </message>
    <message>
        <source>Rechecks due</source>
        <translation>Ricontrolli in scadenza</translation>
    </message>
</context>
<context>
    <name>NeedsPage</name>
    <message>
        <source>To put it back</source>
        <translation>Per rimontarlo</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Salva</translation>
    </message>
    <message>
        <source>New every time, one a line</source>
        <translation>Nuovo ogni volta, uno per riga</translation>
    </message>
    <message>
        <source>split pin</source>
        <translation>copiglia</translation>
    </message>
    <message>
        <source>What goes on it</source>
        <translation>Che cosa ci va</translation>
    </message>
    <message>
        <source>grease, thread lock, none</source>
        <translation>grasso, frenafiletti, niente</translation>
    </message>
    <message>
        <source>To adjust, bleed or try afterwards, one a line</source>
        <translation>Da regolare, spurgare o provare dopo, uno per riga</translation>
    </message>
    <message>
        <source>bleed the brake until the lever stays hard</source>
        <translation>spurgare il freno finché la leva resta dura</translation>
    </message>
    <message>
        <source>Do not start until it is done</source>
        <translation>Non avviare prima che sia fatto</translation>
    </message>
    <message>
        <source>Do not ride until it is done</source>
        <translation>Non guidare prima che sia fatto</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sì</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
</context>
<context>
    <name>NeedsPanel</name>
    <message>
        <source>Nothing follows from the words of the step. Look in the manual.</source>
        <translation>Dalle parole del passo non segue niente. Guardare il manuale.</translation>
    </message>
    <message>
        <source>Suggested by the words of the step: common practice. The manual comes first.</source>
        <translation>Suggerito dalle parole del passo: pratica comune. Il manuale viene prima.</translation>
    </message>
    <message>
        <source>To put it back</source>
        <translation>Per rimontarlo</translation>
    </message>
    <message>
        <source>New: %1</source>
        <translation>Nuovo: %1</translation>
    </message>
    <message>
        <source>Goes on it: %1</source>
        <translation>Ci va: %1</translation>
    </message>
    <message>
        <source>Afterwards: %1</source>
        <translation>Dopo: %1</translation>
    </message>
    <message>
        <source>As you set it.</source>
        <translation>Come hai deciso tu.</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambia</translation>
    </message>
</context>
<context>
    <name>NumberEntry</name>
    <message>
        <source>empty</source>
        <translation>vuoto</translation>
    </message>
</context>
<context>
    <name>OrdersPage</name>
    <message>
        <source>To order</source>
        <translation>Da ordinare</translation>
    </message>
    <message>
        <source>Copy the list</source>
        <translation>Copia l&apos;elenco</translation>
    </message>
    <message>
        <source>Text, spreadsheet, PDF</source>
        <translation>Testo, foglio, PDF</translation>
    </message>
    <message>
        <source>Written</source>
        <translation>Scritto</translation>
    </message>
    <message>
        <source>Parts that are wanted or asked for stand here until they are ordered.</source>
        <translation>I ricambi voluti o chiesti stanno qui finché non sono ordinati.</translation>
    </message>
    <message>
        <source>Nothing to order</source>
        <translation>Niente da ordinare</translation>
    </message>
</context>
<context>
    <name>OwnersAnswer</name>
    <message>
        <source>Who said so</source>
        <translation>Chi l&apos;ha detto</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Come</translation>
    </message>
</context>
<context>
    <name>PageHeader</name>
    <message>
        <source>Back</source>
        <translation>Indietro</translation>
    </message>
</context>
<context>
    <name>PartPage</name>
    <message>
        <source>Keep</source>
        <translation>Salva</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Ricambio</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Che ne è stato</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numero</translation>
    </message>
    <message>
        <source>Other makers&apos; numbers</source>
        <translation>Numeri di altri costruttori</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Fornitore</translation>
    </message>
    <message>
        <source>Price without tax</source>
        <translation>Prezzo senza IVA</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Valuta</translation>
    </message>
    <message>
        <source>nothing chosen</source>
        <translation>niente scelto</translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation>A che cosa serve</translation>
    </message>
    <message>
        <source>Does it fit this model?</source>
        <translation>Va bene per questo modello?</translation>
    </message>
    <message>
        <source>Why not, or after what change</source>
        <translation>Perché no, o dopo quale modifica</translation>
    </message>
    <message>
        <source>pivot hole 1 mm too small</source>
        <translation>foro del perno 1 mm troppo piccolo</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Annotazione</translation>
    </message>
    <message>
        <source>from whom, by when</source>
        <translation>da chi, entro quando</translation>
    </message>
    <message>
        <source>What is it for?</source>
        <translation>A che cosa serve?</translation>
    </message>
</context>
<context>
    <name>PartsPage</name>
    <message>
        <source>Parts</source>
        <translation>Ricambi</translation>
    </message>
    <message>
        <source>Add the part</source>
        <translation>Aggiungi il ricambio</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Ricambio</translation>
    </message>
    <message>
        <source>Another part</source>
        <translation>Altro ricambio</translation>
    </message>
    <message>
        <source>switch cluster, right</source>
        <translation>blocchetto destro</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numero</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Annotazione</translation>
    </message>
    <message>
        <source>from whom, by when</source>
        <translation>da chi, entro quando</translation>
    </message>
    <message>
        <source>Supplier, price, fit …</source>
        <translation>Fornitore, prezzo …</translation>
    </message>
    <message>
        <source>What became of it?</source>
        <translation>Che ne è stato?</translation>
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
        <translation>Questa foto non si può mostrare. Forse il file è danneggiato.</translation>
    </message>
    <message>
        <source>Loading photo</source>
        <translation>Caricamento della foto</translation>
    </message>
</context>
<context>
    <name>PhotoViewer</name>
    <message>
        <source>Closer</source>
        <translation>Vicino</translation>
    </message>
    <message>
        <source>Whole</source>
        <translation>Intera</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Chiudi</translation>
    </message>
</context>
<context>
    <name>PicturePicker</name>
    <message>
        <source>Folder above %1</source>
        <translation>Cartella sopra %1</translation>
    </message>
    <message>
        <source>Looking for pictures</source>
        <translation>Ricerca di immagini</translation>
    </message>
    <message>
        <source>No pictures here</source>
        <translation>Qui niente immagini</translation>
    </message>
</context>
<context>
    <name>PlaceDetails</name>
    <message>
        <source>terminal</source>
        <translation>terminale</translation>
    </message>
    <message>
        <source>Size of the terminal, mm</source>
        <translation>Misura del terminale, mm</translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation>A che cosa serve</translation>
    </message>
    <message>
        <source>stop lamp</source>
        <translation>luce stop</translation>
    </message>
    <message>
        <source>terminal number by DIN 72552</source>
        <translation>numero del morsetto DIN 72552</translation>
    </message>
    <message>
        <source>No number</source>
        <translation>Nessun numero</translation>
    </message>
    <message>
        <source>Size of the wire, mm²</source>
        <translation>Sezione del filo, mm²</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Segnafilo</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Terminal</source>
        <translation>Terminale</translation>
    </message>
    <message>
        <source>Terminal number by DIN 72552</source>
        <translation>Numero del morsetto DIN 72552</translation>
    </message>
</context>
<context>
    <name>PlacePage</name>
    <message>
        <source>as found</source>
        <translation>come trovato</translation>
    </message>
    <message>
        <source>as it should be</source>
        <translation>come deve essere</translation>
    </message>
    <message>
        <source>Nothing there</source>
        <translation>Lì non c&apos;è niente</translation>
    </message>
    <message>
        <source>Another colour</source>
        <translation>Altro colore</translation>
    </message>
    <message>
        <source>Pick the colour</source>
        <translation>Scegli il colore</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Chiudi</translation>
    </message>
    <message>
        <source>Which answer</source>
        <translation>Quale risposta</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Come trovato</translation>
    </message>
    <message>
        <source>As it should be</source>
        <translation>Come deve essere</translation>
    </message>
    <message>
        <source>As found: %1. As it should be: %2.</source>
        <translation>Come trovato: %1. Come deve essere: %2.</translation>
    </message>
    <message>
        <source>Where that is known from</source>
        <translation>Da dove si sa</translation>
    </message>
    <message>
        <source>manual, page 7-12</source>
        <translation>manuale, pagina 7-12</translation>
    </message>
    <message>
        <source>Not known yet</source>
        <translation>Non ancora noto</translation>
    </message>
    <message>
        <source>As refitted: %1</source>
        <translation>Come rimontato: %1</translation>
    </message>
</context>
<context>
    <name>PlaceRow</name>
    <message>
        <source>refitted</source>
        <translation>rimontato</translation>
    </message>
</context>
<context>
    <name>Plugin</name>
    <message>
        <source>A part of this program is missing or damaged (%1). Install it again; what is kept in the shop stays as it is.</source>
        <translation>Una parte del programma manca o è danneggiata (%1). Reinstallarlo; quanto è nell&apos;officina resta com&apos;è.</translation>
    </message>
</context>
<context>
    <name>Pressable</name>
    <message>
        <source>Working</source>
        <translation>Al lavoro</translation>
    </message>
</context>
<context>
    <name>ProblemPanel</name>
    <message>
        <source>Try again</source>
        <translation>Riprova</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Letto</translation>
    </message>
</context>
<context>
    <name>ProgressStrip</name>
    <message>
        <source>Stop</source>
        <translation>Ferma</translation>
    </message>
</context>
<context>
    <name>ProvePage</name>
    <message>
        <source>Prove</source>
        <translation>Verifiche</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continua</translation>
    </message>
    <message>
        <source>Proved</source>
        <translation>Verificato</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Tralascia</translation>
    </message>
    <message>
        <source>What is taken apart and put together again is proved here.</source>
        <translation>Qui si verifica ciò che è stato smontato e rimontato.</translation>
    </message>
    <message>
        <source>Nothing was disturbed</source>
        <translation>Non si è toccato niente</translation>
    </message>
    <message>
        <source>Everything that was disturbed is proved, or left out for a reason.</source>
        <translation>Tutto ciò che è stato toccato è verificato, o tralasciato con un motivo.</translation>
    </message>
    <message>
        <source>How, or why it is left out</source>
        <translation>Come, o perché si tralascia</translation>
    </message>
    <message>
        <source>read aloud and matched</source>
        <translation>riletto e corrisponde</translation>
    </message>
    <message numerus="yes">
        <source>%n not on again: cannot be proved yet</source>
        <comment>proofs</comment>
        <translation>
            <numerusform>%n non rimontato: non ancora verificabile</numerusform>
            <numerusform>%n non rimontati: non ancora verificabili</numerusform>
        </translation>
    </message>
    <message>
        <source>A second pair of eyes</source>
        <translation>Un secondo sguardo</translation>
    </message>
    <message>
        <source>What works now, beside what worked before</source>
        <translation>Che cosa funziona ora, accanto a prima</translation>
    </message>
    <message>
        <source>Road test and rechecks</source>
        <translation>Prova su strada e ricontrolli</translation>
    </message>
</context>
<context>
    <name>ReadAloud</name>
    <message>
        <source>Say again</source>
        <translation>Ripeti</translation>
    </message>
    <message>
        <source>Says it again, more slowly; after the slowest comes the usual pace</source>
        <translation>Lo ridice più piano; dopo il più lento torna il passo solito</translation>
    </message>
    <message>
        <source>Slower</source>
        <translation>Più piano</translation>
    </message>
    <message>
        <source>Says its colour alone</source>
        <translation>Dice solo il colore</translation>
    </message>
    <message>
        <source>Wire only</source>
        <translation>Solo il filo</translation>
    </message>
    <message>
        <source>Hearing</source>
        <translation>Ascolto</translation>
    </message>
    <message>
        <source>While it is held, say done, does not match, next, back, again, slower, undo or stop</source>
        <translation>Tenendo premuto, dire in inglese done, does not match, next, back, again, slower, undo o stop</translation>
    </message>
    <message>
        <source>Listening</source>
        <translation>In ascolto</translation>
    </message>
    <message>
        <source>Hold and speak</source>
        <translation>Tieni e parla</translation>
    </message>
</context>
<context>
    <name>ReadBackActions</name>
    <message>
        <source>Does not match</source>
        <translation>Non corrisponde</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Salvataggio</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fine</translation>
    </message>
    <message>
        <source>Back</source>
        <comment>to the wire before</comment>
        <translation>Indietro</translation>
    </message>
    <message>
        <source>Begins with the first wire again</source>
        <translation>Ricomincia dal primo filo</translation>
    </message>
    <message>
        <source>Again</source>
        <translation>Ripeti</translation>
    </message>
    <message>
        <source>To the next wire; nothing is said of this one</source>
        <translation>Al filo seguente; di questo non si dice niente</translation>
    </message>
    <message>
        <source>Skip</source>
        <translation>Salta</translation>
    </message>
</context>
<context>
    <name>ReadBackChoice</name>
    <message>
        <source>Stop: the two answers differ. Which one holds?</source>
        <translation>Alt: le due risposte sono diverse. Quale vale?</translation>
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
        <translation>Concludi</translation>
    </message>
    <message>
        <source>Again</source>
        <translation>Ripeti</translation>
    </message>
    <message>
        <source>Compare photos</source>
        <translation>Confronta foto</translation>
    </message>
</context>
<context>
    <name>ReadBackMismatch</name>
    <message>
        <source>Written down: %1 does not match.</source>
        <translation>Annotato: %1 non corrisponde.</translation>
    </message>
    <message>
        <source>Swapped</source>
        <translation>Scambiato</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Next wire</source>
        <translation>Filo seguente</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Guarda di nuovo</translation>
    </message>
    <message>
        <source>Swapped with which?</source>
        <translation>Scambiato con quale?</translation>
    </message>
</context>
<context>
    <name>ReadBackPage</name>
    <message>
        <source>Read silently</source>
        <translation>Leggi in silenzio</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Leggi ad alta voce</translation>
    </message>
    <message>
        <source>Read the unit half</source>
        <translation>Leggi il lato utenza</translation>
    </message>
    <message>
        <source>Read the loom half</source>
        <translation>Leggi il lato cablaggio</translation>
    </message>
    <message>
        <source>No wire of the loom half was confirmed when it was stripped.</source>
        <translation>Nello smontaggio non è stato confermato nessun filo del lato cablaggio.</translation>
    </message>
    <message>
        <source>No wire of the unit half was confirmed when it was stripped.</source>
        <translation>Nello smontaggio non è stato confermato nessun filo del lato utenza.</translation>
    </message>
    <message>
        <source>Nothing to read back</source>
        <translation>Niente da rileggere</translation>
    </message>
    <message>
        <source>%1 of %2 wires match</source>
        <translation>%1 fili su %2 corrispondono</translation>
    </message>
    <message>
        <source>%1 do not match. Put them right and read back again.</source>
        <translation>%1 non corrispondono. Sistemarli e rileggere.</translation>
    </message>
    <message>
        <source>%1 were not checked.</source>
        <translation>%1 non sono stati controllati.</translation>
    </message>
    <message>
        <source>Each wire was seen in its place.</source>
        <translation>Ogni filo è stato visto al suo posto.</translation>
    </message>
</context>
<context>
    <name>ReadBackWire</name>
    <message>
        <source>Photo, %1 marked</source>
        <translation>Foto, %1 segnata</translation>
    </message>
    <message>
        <source>checked before: matches</source>
        <translation>già controllato: corrisponde</translation>
    </message>
    <message>
        <source>checked before: does not match</source>
        <translation>già controllato: non corrisponde</translation>
    </message>
</context>
<context>
    <name>ReadingRow</name>
    <message>
        <source>no verdict</source>
        <translation>nessun giudizio</translation>
    </message>
    <message>
        <source>Shows the curve of its readings</source>
        <translation>Mostra la curva delle letture</translation>
    </message>
    <message>
        <source>no verdict: limits or the instrument&apos;s uncertainty are not known</source>
        <translation>nessun giudizio: limiti o incertezza dello strumento non noti</translation>
    </message>
    <message>
        <source>Measured once so far: a second reading makes a curve.</source>
        <translation>Misurato una volta sola: con una seconda lettura nasce una curva.</translation>
    </message>
</context>
<context>
    <name>ReadingsPage</name>
    <message>
        <source>Readings</source>
        <translation>Letture</translation>
    </message>
    <message>
        <source>Calculations</source>
        <translation>Calcoli</translation>
    </message>
    <message>
        <source>Each value that is kept stands here with its limits and its verdict.</source>
        <translation>Ogni valore salvato sta qui con limiti e giudizio.</translation>
    </message>
    <message>
        <source>Nothing measured yet</source>
        <translation>Ancora niente misurato</translation>
    </message>
</context>
<context>
    <name>RefitPage</name>
    <message>
        <source>Refit</source>
        <translation>Rimonta</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Salvataggio</translation>
    </message>
    <message>
        <source>Is refitted</source>
        <translation>È rimontato</translation>
    </message>
    <message>
        <source>Refitted</source>
        <translation>Rimontato</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Wires</source>
        <translation>Fili</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Misura</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Passi</translation>
    </message>
    <message>
        <source>Nothing was stripped, so nothing is to be refitted.</source>
        <translation>Niente è stato smontato, quindi niente è da rimontare.</translation>
    </message>
    <message>
        <source>All %1 steps are on again. Measure, prove, then hand over.</source>
        <translation>Tutti i %1 passi sono rimontati. Misurare, verificare, poi consegnare.</translation>
    </message>
    <message>
        <source>Nothing to refit</source>
        <translation>Niente da rimontare</translation>
    </message>
    <message>
        <source>All refitted</source>
        <translation>Tutto rimontato</translation>
    </message>
    <message>
        <source>Every task that is left waits. Under Steps each can be refitted all the same.</source>
        <translation>Ogni lavoro rimasto aspetta. In Passi ognuno si può rimontare lo stesso.</translation>
    </message>
    <message>
        <source>All else waits</source>
        <translation>Il resto aspetta</translation>
    </message>
    <message>
        <source>Photo of %1 when it was stripped</source>
        <translation>Foto di %1 allo smontaggio</translation>
    </message>
    <message>
        <source>Not yet: first %1</source>
        <translation>Non ancora: prima %1</translation>
    </message>
    <message>
        <source>This task waits for %1</source>
        <translation>Questo lavoro aspetta %1</translation>
    </message>
    <message>
        <source>It waits no more</source>
        <translation>Non aspetta più</translation>
    </message>
    <message>
        <source>Afterwards: adjust, bleed, try</source>
        <translation>Dopo: regolare, spurgare, provare</translation>
    </message>
</context>
<context>
    <name>RefitStepsPage</name>
    <message>
        <source>Refit steps</source>
        <translation>Passi di rimontaggio</translation>
    </message>
    <message>
        <source>waits for %1</source>
        <translation>aspetta %1</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fatto</translation>
    </message>
</context>
<context>
    <name>RefusalPage</name>
    <message>
        <source>The owner says no</source>
        <translation>Il proprietario rifiuta</translation>
    </message>
    <message>
        <source>Keep the refusal</source>
        <translation>Salva il rifiuto</translation>
    </message>
    <message>
        <source>Refusal</source>
        <translation>Rifiuto</translation>
    </message>
    <message>
        <source>Unsafe: %1</source>
        <translation>Pericolo: %1</translation>
    </message>
    <message>
        <source>The finding stays open. The record will say in bold that you told the owner, who refused, and on which day. Local law may forbid handing over an unsafe machine.</source>
        <translation>Il rilievo resta in sospeso. Il rapporto dirà in grassetto che il proprietario è stato avvisato e ha rifiutato, e in quale giorno. La legge locale può vietare di consegnare un mezzo non sicuro.</translation>
    </message>
    <message>
        <source>In the owner&apos;s words</source>
        <translation>Con le parole del proprietario</translation>
    </message>
    <message>
        <source>will fetch it with a trailer</source>
        <translation>viene a prenderlo col rimorchio</translation>
    </message>
</context>
<context>
    <name>RoadPage</name>
    <message>
        <source>Road test and rechecks</source>
        <translation>Prova su strada e ricontrolli</translation>
    </message>
    <message>
        <source>Keep the road test</source>
        <translation>Salva la prova su strada</translation>
    </message>
    <message>
        <source>Keep the recheck</source>
        <translation>Salva il ricontrollo</translation>
    </message>
    <message>
        <source>Road test</source>
        <translation>Prova su strada</translation>
    </message>
    <message>
        <source>Recheck</source>
        <translation>Ricontrollo</translation>
    </message>
    <message>
        <source>Ridden, km</source>
        <translation>Percorsi, km</translation>
    </message>
    <message>
        <source>What it was like</source>
        <translation>Come è andata</translation>
    </message>
    <message>
        <source>holds straight, idles hot</source>
        <translation>tiene dritto, minimo a caldo buono</translation>
    </message>
    <message>
        <source>To be looked at again</source>
        <translation>Da riguardare</translation>
    </message>
    <message>
        <source>due</source>
        <translation>in scadenza</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Cosa</translation>
    </message>
    <message>
        <source>rear axle nut</source>
        <translation>dado perno posteriore</translation>
    </message>
    <message>
        <source>After km</source>
        <translation>Dopo km</translation>
    </message>
    <message>
        <source>Or after days</source>
        <translation>O dopo giorni</translation>
    </message>
</context>
<context>
    <name>RollingCopy</name>
    <message>
        <source>The daily copy of the shop could not be made; what you enter is still kept. %1</source>
        <translation>La copia giornaliera dell&apos;officina non è riuscita; ciò che si scrive resta comunque. %1</translation>
    </message>
</context>
<context>
    <name>RoundListPage</name>
    <message>
        <source>Add the check</source>
        <translation>Aggiungi il controllo</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Cambialo</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Toglilo</translation>
    </message>
    <message>
        <source>Another check</source>
        <translation>Altro controllo</translation>
    </message>
    <message>
        <source>The check</source>
        <translation>Il controllo</translation>
    </message>
    <message>
        <source>lever: firm, does not creep</source>
        <translation>leva: dura, non cede</translation>
    </message>
    <message>
        <source>Part of the machine</source>
        <translation>Parte del mezzo</translation>
    </message>
    <message>
        <source>front brake</source>
        <translation>freno anteriore</translation>
    </message>
</context>
<context>
    <name>RoundListsPage</name>
    <message>
        <source>Lists of checks</source>
        <translation>Elenchi di controlli</translation>
    </message>
</context>
<context>
    <name>RoundPage</name>
    <message>
        <source>Go on</source>
        <translation>Continua</translation>
    </message>
    <message>
        <source>Fine</source>
        <translation>A posto</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Rilievo</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>Non fatto</translation>
    </message>
    <message>
        <source>Every check of this round has its answer.</source>
        <translation>Ogni controllo di questo giro ha una risposta.</translation>
    </message>
</context>
<context>
    <name>RoundsPage</name>
    <message>
        <source>Rounds</source>
        <translation>Giri di controllo</translation>
    </message>
    <message>
        <source>Begin the round</source>
        <translation>Comincia il giro</translation>
    </message>
    <message>
        <source>A new round: what does the machine have?</source>
        <translation>Nuovo giro: che cosa ha il mezzo?</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motore</translation>
    </message>
    <message>
        <source>Two-stroke</source>
        <translation>Due tempi</translation>
    </message>
    <message>
        <source>Four-stroke</source>
        <translation>Quattro tempi</translation>
    </message>
    <message>
        <source>Drive</source>
        <translation>Trasmissione</translation>
    </message>
    <message>
        <source>Gears</source>
        <translation>A marce</translation>
    </message>
    <message>
        <source>Automatic</source>
        <translation>Automatico</translation>
    </message>
    <message>
        <source>Starts by</source>
        <translation>Si avvia a</translation>
    </message>
    <message>
        <source>Kick</source>
        <translation>Pedivella</translation>
    </message>
    <message>
        <source>Electric</source>
        <translation>Elettrico</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Tutti e due</translation>
    </message>
    <message>
        <source>Front brake</source>
        <translation>Freno anteriore</translation>
    </message>
    <message>
        <source>Drum</source>
        <translation>Tamburo</translation>
    </message>
    <message>
        <source>Disc</source>
        <translation>Disco</translation>
    </message>
    <message>
        <source>Rear brake</source>
        <translation>Freno posteriore</translation>
    </message>
</context>
<context>
    <name>SavedMark</name>
    <message>
        <source>Saving</source>
        <translation>Salvataggio</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Salvato</translation>
    </message>
</context>
<context>
    <name>ScanPage</name>
    <message>
        <source>Scan</source>
        <translation>Leggi codice</translation>
    </message>
    <message>
        <source>Look for the number</source>
        <translation>Cerca il numero</translation>
    </message>
    <message>
        <source>Hold the code of a bag or a part before the camera.</source>
        <translation>Tenere il codice di un sacchetto o di un ricambio davanti alla fotocamera.</translation>
    </message>
    <message>
        <source>Or type the number</source>
        <translation>O scrivere il numero</translation>
    </message>
</context>
<context>
    <name>SecondEyesPage</name>
    <message>
        <source>Second pair of eyes</source>
        <translation>Un secondo sguardo</translation>
    </message>
    <message>
        <source>Brakes, wheels, steering and suspension that were disturbed and are on again can be signed here.</source>
        <translation>Qui si firmano freni, ruote, sterzo e sospensioni toccati e rimontati.</translation>
    </message>
    <message>
        <source>Nothing to sign</source>
        <translation>Niente da firmare</translation>
    </message>
    <message>
        <source>Whoever did not do the work looks at it and signs by a touch.</source>
        <translation>Chi non ha fatto il lavoro lo guarda e firma con un tocco.</translation>
    </message>
    <message>
        <source>Who looks</source>
        <translation>Chi guarda</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Impostazioni</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Luce</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Notte</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Giorno</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sole</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Lingua</translation>
    </message>
    <message>
        <source>The voice of a Linux device, and what is spoken to it, are English.</source>
        <translation>La voce di un dispositivo Linux e ciò che gli si dice sono in inglese.</translation>
    </message>
    <message>
        <source>Size of the text</source>
        <translation>Grandezza del testo</translation>
    </message>
    <message>
        <source>Hand that holds the phone</source>
        <translation>Mano che tiene il telefono</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Destra</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Sinistra</translation>
    </message>
    <message>
        <source>How you see colours</source>
        <translation>Come vedi i colori</translation>
    </message>
    <message>
        <source>As most do</source>
        <translation>Come i più</translation>
    </message>
    <message>
        <source>Red weak</source>
        <translation>Poco il rosso</translation>
    </message>
    <message>
        <source>Green weak</source>
        <translation>Poco il verde</translation>
    </message>
    <message>
        <source>Blue weak</source>
        <translation>Poco il blu</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Quanto</translation>
    </message>
    <message>
        <source>A little</source>
        <translation>Un po&apos;</translation>
    </message>
    <message>
        <source>Much</source>
        <translation>Molto</translation>
    </message>
    <message>
        <source>Movement on the screen</source>
        <translation>Movimento sullo schermo</translation>
    </message>
    <message>
        <source>Some</source>
        <translation>Un po&apos;</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Nessuno</translation>
    </message>
    <message>
        <source>Where a photo was taken</source>
        <translation>Dove è stata scattata una foto</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Tralasciato</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Resta</translation>
    </message>
    <message>
        <source>The shop&apos;s instruments</source>
        <translation>Gli strumenti dell&apos;officina</translation>
    </message>
    <message>
        <source>The shop&apos;s lists of checks</source>
        <translation>Gli elenchi di controlli dell&apos;officina</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Copia di sicurezza</translation>
    </message>
    <message>
        <source>Who works here</source>
        <translation>Chi lavora qui</translation>
    </message>
    <message>
        <source>Work as %1</source>
        <translation>Lavora come %1</translation>
    </message>
</context>
<context>
    <name>SeverityMark</name>
    <message>
        <source>unsafe</source>
        <translation>pericolo</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>presto</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
</context>
<context>
    <name>SheetsPage</name>
    <message>
        <source>Spreadsheets</source>
        <translation>Fogli di calcolo</translation>
    </message>
    <message>
        <source>Bring in: %1</source>
        <translation>Importa: %1</translation>
    </message>
    <message>
        <source>Look at the file</source>
        <translation>Guarda il file</translation>
    </message>
    <message>
        <source>Write everything</source>
        <translation>Scrivi tutto</translation>
    </message>
    <message>
        <source>A sheet of machines has make and model in its head, one of parts has job and part.</source>
        <translation>Un foglio di mezzi ha make e model nell&apos;intestazione, uno di ricambi job e part.</translation>
    </message>
    <message>
        <source>File to bring in (CSV)</source>
        <translation>File da importare (CSV)</translation>
    </message>
    <message>
        <source>Not brought in: %1</source>
        <translation>Non importato: %1</translation>
    </message>
    <message>
        <source>Lines brought in: %1</source>
        <translation>Righe importate: %1</translation>
    </message>
    <message>
        <source>Written</source>
        <translation>Scritto</translation>
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
        <translation>Firma</translation>
    </message>
    <message>
        <source>Keep the signature</source>
        <translation>Salva la firma</translation>
    </message>
    <message>
        <source>Wipe it</source>
        <translation>Cancella</translation>
    </message>
    <message>
        <source>The machine was handed over with its record, and its cautions were read.</source>
        <translation>Il mezzo è stato consegnato con il suo rapporto, e gli avvisi sono stati letti.</translation>
    </message>
    <message>
        <source>Who signs</source>
        <translation>Chi firma</translation>
    </message>
    <message>
        <source>Field to sign in</source>
        <translation>Campo per la firma</translation>
    </message>
    <message>
        <source>Signed: %1</source>
        <translation>Firmato: %1</translation>
    </message>
</context>
<context>
    <name>Snackbar</name>
    <message>
        <source>Undo</source>
        <translation>Annulla</translation>
    </message>
</context>
<context>
    <name>StepsPage</name>
    <message>
        <source>Steps so far</source>
        <translation>Passi finora</translation>
    </message>
    <message>
        <source>Each step that is stripped stands here, the last one first.</source>
        <translation>Ogni passo smontato sta qui, l&apos;ultimo per primo.</translation>
    </message>
    <message>
        <source>Nothing stripped yet</source>
        <translation>Ancora niente smontato</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>rimontato</translation>
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
        <translation>sacchetto %1</translation>
    </message>
    <message>
        <source>%1 in bag %2</source>
        <translation>%1 nel sacchetto %2</translation>
    </message>
</context>
<context>
    <name>StripActions</name>
    <message>
        <source>Wires</source>
        <translation>Fili</translation>
    </message>
    <message>
        <source>Held by</source>
        <translation>Fissato da</translation>
    </message>
    <message>
        <source>Bag</source>
        <translation>Sacchetto</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Sacchetto %1</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Salvataggio</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Passo seguente</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Salva</translation>
    </message>
</context>
<context>
    <name>StripEntryActions</name>
    <message>
        <source>Close</source>
        <translation>Chiudi</translation>
    </message>
</context>
<context>
    <name>StripPage</name>
    <message>
        <source>Step %1</source>
        <translation>Passo %1</translation>
    </message>
    <message>
        <source>step %1</source>
        <translation>passo %1</translation>
    </message>
    <message>
        <source>Correct step</source>
        <translation>Correggi il passo</translation>
    </message>
    <message>
        <source>Held by</source>
        <translation>Fissato da</translation>
    </message>
    <message>
        <source>Bag</source>
        <translation>Sacchetto</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Smonta</translation>
    </message>
    <message>
        <source>Keep the bag</source>
        <translation>Salva il sacchetto</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Aggiungi</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Misura</translation>
    </message>
    <message>
        <source>Steps so far</source>
        <translation>Passi finora</translation>
    </message>
</context>
<context>
    <name>StripPanel</name>
    <message>
        <source>Photo of this step</source>
        <translation>Foto di questo passo</translation>
    </message>
    <message>
        <source>What comes off</source>
        <translation>Che cosa si toglie</translation>
    </message>
    <message>
        <source>unplug 6-place connector</source>
        <translation>staccare il connettore a 6 vie</translation>
    </message>
    <message>
        <source>tap to take it off the list</source>
        <translation>toccare per toglierlo dall&apos;elenco</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>to know when it goes on again</source>
        <translation>per sapere quando si rimonta</translation>
    </message>
    <message>
        <source>Add a caution</source>
        <translation>Aggiungi un avviso</translation>
    </message>
    <message>
        <source>Which caution belongs before this step?</source>
        <translation>Quale avviso va prima di questo passo?</translation>
    </message>
</context>
<context>
    <name>StripTask</name>
    <message>
        <source>task of this step</source>
        <translation>lavoro di questo passo</translation>
    </message>
    <message>
        <source>tasks can wait one by one</source>
        <translation>i lavori possono aspettare uno per uno</translation>
    </message>
    <message>
        <source>No task</source>
        <translation>Nessun lavoro</translation>
    </message>
    <message>
        <source>New task</source>
        <translation>Nuovo lavoro</translation>
    </message>
    <message>
        <source>front brake</source>
        <translation>freno anteriore</translation>
    </message>
    <message>
        <source>Which task does this step belong to?</source>
        <translation>A quale lavoro appartiene questo passo?</translation>
    </message>
</context>
<context>
    <name>StrokeActions</name>
    <message>
        <source>Confirm</source>
        <translation>Conferma</translation>
    </message>
    <message>
        <source>It is %1</source>
        <translation>È %1</translation>
    </message>
    <message>
        <source>Next open wire</source>
        <translation>Altro filo aperto</translation>
    </message>
    <message>
        <source>Other colour</source>
        <translation>Altro colore</translation>
    </message>
    <message>
        <source>All %1 sure</source>
        <translation>Tutti i %1 sicuri</translation>
    </message>
    <message>
        <source>None sure</source>
        <translation>Nessuno sicuro</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Altro</translation>
    </message>
    <message>
        <source>Look at this wire again</source>
        <translation>Riguarda questo filo</translation>
    </message>
    <message>
        <source>White paper is in the picture: tap it</source>
        <translation>C&apos;è carta bianca nella foto: toccarla</translation>
    </message>
    <message>
        <source>Turn round: place 1 is at the other end</source>
        <translation>Inverti: la via 1 è all&apos;altro capo</translation>
    </message>
    <message>
        <source>This place is empty</source>
        <translation>Questa via è vuota</translation>
    </message>
    <message>
        <source>In a place of its own</source>
        <translation>In una via propria</translation>
    </message>
    <message>
        <source>Second wire of the place before</source>
        <translation>Secondo filo della via prima</translation>
    </message>
    <message>
        <source>A wire is missing before this one</source>
        <translation>Manca un filo prima di questo</translation>
    </message>
    <message>
        <source>A wire is missing after this one</source>
        <translation>Manca un filo dopo questo</translation>
    </message>
    <message>
        <source>This is no wire: take it out</source>
        <translation>Non è un filo: toglilo</translation>
    </message>
    <message>
        <source>Not confirmed any more</source>
        <translation>Non più confermato</translation>
    </message>
    <message>
        <source>Bring the rows before the last stroke back</source>
        <translation>Riporta le righe di prima dell&apos;ultimo tratto</translation>
    </message>
</context>
<context>
    <name>StrokeFinding</name>
    <message>
        <source>Take these %1</source>
        <translation>Prendi questi %1</translation>
    </message>
    <message>
        <source>None touched</source>
        <translation>Nessuno toccato</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation>Tutte</translation>
    </message>
    <message>
        <source>Stroke instead</source>
        <translation>Meglio un tratto</translation>
    </message>
</context>
<context>
    <name>StrokePage</name>
    <message>
        <source>%1 open</source>
        <translation>%1 aperti</translation>
    </message>
    <message>
        <source>Opening the photo</source>
        <translation>Apertura della foto</translation>
    </message>
    <message>
        <source>Reading the wires</source>
        <translation>Lettura dei fili</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Chiudi</translation>
    </message>
    <message>
        <source>Tap the middle of the white paper.</source>
        <translation>Toccare il centro della carta bianca.</translation>
    </message>
    <message>
        <source>Now tap the last wire.</source>
        <translation>Ora toccare l&apos;ultimo filo.</translation>
    </message>
    <message>
        <source>Stroke across the wires, place 1 first. Or tap the first wire and then the last.</source>
        <translation>Passare il dito sui fili, via 1 per prima. Oppure toccare il primo filo e poi l&apos;ultimo.</translation>
    </message>
    <message>
        <source>Open the photo again</source>
        <translation>Riapri la foto</translation>
    </message>
    <message>
        <source>Find the wires without a stroke</source>
        <translation>Trova i fili senza tratto</translation>
    </message>
    <message>
        <source>White paper is in the picture</source>
        <translation>C&apos;è carta bianca nella foto</translation>
    </message>
</context>
<context>
    <name>StrokePhoto</name>
    <message>
        <source>Photo of the wires</source>
        <translation>Foto dei fili</translation>
    </message>
</context>
<context>
    <name>TakeInMachine</name>
    <message>
        <source>Machine</source>
        <translation>Mezzo</translation>
    </message>
    <message>
        <source>Make</source>
        <translation>Marca</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modello</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Anno</translation>
    </message>
    <message>
        <source>Frame number</source>
        <translation>Numero di telaio</translation>
    </message>
    <message>
        <source>Odometer</source>
        <translation>Contachilometri</translation>
    </message>
    <message>
        <source>Odometer counts</source>
        <translation>Il contachilometri conta</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>miles</source>
        <translation>miglia</translation>
    </message>
    <message>
        <source>Ridden at, metres above the sea</source>
        <translation>Si guida a, metri sul mare</translation>
    </message>
    <message>
        <source>Rider with clothes, kg</source>
        <translation>Guidatore vestito, kg</translation>
    </message>
    <message>
        <source>Luggage or second rider, kg</source>
        <translation>Bagaglio o passeggero, kg</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carico</translation>
    </message>
    <message>
        <source>two riders on Sundays, parcels</source>
        <translation>in due la domenica, pacchi</translation>
    </message>
</context>
<context>
    <name>TakeInOwner</name>
    <message>
        <source>Owner</source>
        <translation>Proprietario</translation>
    </message>
    <message>
        <source>Owner&apos;s name</source>
        <translation>Nome del proprietario</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Telefono</translation>
    </message>
    <message>
        <source>Mail</source>
        <translation>E-mail</translation>
    </message>
</context>
<context>
    <name>TakeInPage</name>
    <message>
        <source>Machine and owner</source>
        <translation>Mezzo e proprietario</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Ingresso</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Salvataggio</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Salva</translation>
    </message>
    <message>
        <source>Open the job</source>
        <translation>Apri la commessa</translation>
    </message>
    <message>
        <source>Continues the entry from %1</source>
        <translation>Continua l&apos;inserimento da %1</translation>
    </message>
</context>
<context>
    <name>TakeInReason</name>
    <message>
        <source>Why it is here</source>
        <translation>Perché è qui</translation>
    </message>
    <message>
        <source>no lights, stood six winters</source>
        <translation>niente luci, fermo sei inverni</translation>
    </message>
    <message>
        <source>Keys and papers received</source>
        <translation>Chiavi e documenti ricevuti</translation>
    </message>
    <message>
        <source>two keys, registration</source>
        <translation>due chiavi, libretto</translation>
    </message>
    <message>
        <source>What works</source>
        <translation>Che cosa funziona</translation>
    </message>
    <message>
        <source>kicks over, front brake holds</source>
        <translation>parte a pedivella, il freno anteriore tiene</translation>
    </message>
    <message>
        <source>What does not work</source>
        <translation>Che cosa non funziona</translation>
    </message>
    <message>
        <source>horn, all lamps</source>
        <translation>clacson, tutte le luci</translation>
    </message>
</context>
<context>
    <name>TaskPage</name>
    <message>
        <source>Stop the watch</source>
        <translation>Ferma il tempo</translation>
    </message>
    <message>
        <source>Start the watch</source>
        <translation>Avvia il tempo</translation>
    </message>
    <message>
        <source>It waits no more</source>
        <translation>Non aspetta più</translation>
    </message>
    <message>
        <source>Let it wait</source>
        <translation>Metti in attesa</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>Riprendi</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Finito</translation>
    </message>
    <message>
        <source>Waits for %1</source>
        <translation>In attesa di %1</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Aperto</translation>
    </message>
    <message>
        <source>The watch runs. %1 so far.</source>
        <translation>Il tempo corre. Finora %1.</translation>
    </message>
    <message>
        <source>Time spent: %1</source>
        <translation>Tempo impiegato: %1</translation>
    </message>
    <message>
        <source>This watch ran longer than anyone works at a stretch. How many minutes was it?</source>
        <translation>Il tempo è corso più di quanto si lavori di fila. Quanti minuti erano?</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuti</translation>
    </message>
    <message>
        <source>It was that long</source>
        <translation>È durato tanto</translation>
    </message>
    <message>
        <source>What does it wait for?</source>
        <translation>Che cosa aspetta?</translation>
    </message>
    <message>
        <source>brake shoes, on order</source>
        <translation>ganasce dei freni, ordinate</translation>
    </message>
    <message>
        <source>To be finished first</source>
        <translation>Da finire prima</translation>
    </message>
    <message>
        <source>first</source>
        <translation>prima</translation>
    </message>
</context>
<context>
    <name>TextEntry</name>
    <message>
        <source>Clear %1</source>
        <translation>Svuota %1</translation>
    </message>
</context>
<context>
    <name>TextEntryArea</name>
    <message>
        <source>Clear %1</source>
        <translation>Svuota %1</translation>
    </message>
</context>
<context>
    <name>TwinsPanel</name>
    <message>
        <source>Twins</source>
        <translation>Gemelli</translation>
    </message>
    <message>
        <source>Tag them</source>
        <translation>Metti i segnafili</translation>
    </message>
    <message>
        <source>Tag on %1</source>
        <translation>Segnafilo su %1</translation>
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
        <translation>entro</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>fuori</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>al limite</translation>
    </message>
</context>
<context>
    <name>WireLoupe</name>
    <message>
        <source>The wire that was understood, enlarged</source>
        <translation>Il filo riconosciuto, ingrandito</translation>
    </message>
</context>
<context>
    <name>WirePicker</name>
    <message>
        <source>Choose the base colour again</source>
        <translation>Scegli di nuovo il colore base</translation>
    </message>
    <message>
        <source>Base colour</source>
        <translation>Colore base</translation>
    </message>
    <message>
        <source>%1: which tracer?</source>
        <translation>%1: quale secondo colore?</translation>
    </message>
    <message>
        <source>no tracer</source>
        <translation>senza secondo colore</translation>
    </message>
</context>
<context>
    <name>WireSteps</name>
    <message>
        <source>The next wire on that side was meant</source>
        <translation>Si intendeva il filo accanto da quel lato</translation>
    </message>
    <message>
        <source>Wire above</source>
        <translation>Filo sopra</translation>
    </message>
    <message>
        <source>Wire left</source>
        <translation>Filo a sinistra</translation>
    </message>
    <message>
        <source>Wire below</source>
        <translation>Filo sotto</translation>
    </message>
    <message>
        <source>Wire right</source>
        <translation>Filo a destra</translation>
    </message>
</context>
<context>
    <name>Wiring</name>
    <message>
        <source>%1 and %2</source>
        <translation>%1 e %2</translation>
    </message>
    <message>
        <source>no tag</source>
        <translation>senza segnafilo</translation>
    </message>
    <message>
        <source>tag %1</source>
        <translation>segnafilo %1</translation>
    </message>
    <message>
        <source>%1 × %2: places %3.</source>
        <translation>%1 × %2: vie %3.</translation>
    </message>
    <message>
        <source>Told apart by %1.</source>
        <translation>Si distinguono da %1.</translation>
    </message>
    <message>
        <source>Tag them, or tell them apart by terminal: %1.</source>
        <translation>Mettere i segnafili, o distinguerli dal terminale: %1.</translation>
    </message>
    <message>
        <source>Tag them before they are unplugged.</source>
        <translation>Mettere i segnafili prima di staccarli.</translation>
    </message>
    <message>
        <source>To you places %1 and %2 look alike: %3 and %4.</source>
        <translation>Per i tuoi occhi le vie %1 e %2 sono uguali: %3 e %4.</translation>
    </message>
    <message>
        <source>With tags at %1 every wire can be told apart.</source>
        <translation>Con segnafili su %1 ogni filo si distingue.</translation>
    </message>
    <message numerus="yes">
        <source>%n places</source>
        <translation>
            <numerusform>%n via</numerusform>
            <numerusform>%n vie</numerusform>
        </translation>
    </message>
    <message>
        <source>seen from the %1</source>
        <translation>visto dal %1</translation>
    </message>
    <message>
        <source>latch %1</source>
        <translation>fermo %1</translation>
    </message>
    <message>
        <source>no wire confirmed yet</source>
        <translation>ancora nessun filo confermato</translation>
    </message>
    <message>
        <source>%1 wires confirmed, %2 places</source>
        <translation>%1 fili confermati, %2 vie</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>non ancora noto</translation>
    </message>
    <message>
        <source>as it should be, not as found</source>
        <translation>come deve essere, non come trovato</translation>
    </message>
    <message>
        <source>should be %1</source>
        <translation>dovrebbe essere %1</translation>
    </message>
    <message>
        <source>read from the photo, confirmed</source>
        <translation>letto dalla foto, confermato</translation>
    </message>
    <message>
        <source>second choice of the reader, confirmed</source>
        <translation>seconda scelta del lettore, confermata</translation>
    </message>
    <message>
        <source>picked by hand</source>
        <translation>scelto a mano</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>scritto</translation>
    </message>
    <message>
        <source>glare covers it: tilt the phone</source>
        <translation>c&apos;è un riflesso: inclinare il telefono</translation>
    </message>
    <message>
        <source>too dark to tell: bring a light</source>
        <translation>troppo buio: portare una luce</translation>
    </message>
    <message>
        <source>too small in the picture: go closer</source>
        <translation>troppo piccolo nella foto: avvicinarsi</translation>
    </message>
    <message>
        <source>the light is not known: lay white paper beside it</source>
        <translation>luce non nota: mettere accanto carta bianca</translation>
    </message>
    <message>
        <source>too little of it is free: move what lies across</source>
        <translation>se ne vede troppo poco: spostare ciò che copre</translation>
    </message>
    <message>
        <source>two colours are about as likely</source>
        <translation>due colori sono quasi ugualmente probabili</translation>
    </message>
    <message>
        <source>likely, but not certain</source>
        <translation>probabile, ma non certo</translation>
    </message>
    <message>
        <source>tapped beside it: see that the outlined wire is meant</source>
        <translation>toccato accanto: controllare che il filo segnato sia quello</translation>
    </message>
    <message>
        <source>nothing like a wire here: tap on the wire</source>
        <translation>qui niente sembra un filo: toccare il filo</translation>
    </message>
    <message>
        <source>too bright to tell: less light, or no flash</source>
        <translation>troppo chiaro: meno luce, o niente flash</translation>
    </message>
    <message>
        <source>two lights mix on it: shade one of them</source>
        <translation>due luci si mescolano: coprirne una</translation>
    </message>
    <message>
        <source>no wire found</source>
        <translation>nessun filo trovato</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>sicuro</translation>
    </message>
    <message>
        <source>not sure: %1?</source>
        <translation>non sicuro: %1?</translation>
    </message>
    <message>
        <source>not sure: %1 or %2</source>
        <translation>non sicuro: %1 o %2</translation>
    </message>
    <message>
        <source>connector</source>
        <translation>connettore</translation>
    </message>
    <message>
        <source>loose terminals</source>
        <translation>terminali sciolti</translation>
    </message>
    <message>
        <source>splice</source>
        <translation>giunzione</translation>
    </message>
    <message>
        <source>shared earth</source>
        <translation>massa comune</translation>
    </message>
    <message>
        <source>wire side</source>
        <translation>lato fili</translation>
    </message>
    <message>
        <source>mating face</source>
        <translation>lato innesto</translation>
    </message>
    <message>
        <source>loom half</source>
        <translation>lato cablaggio</translation>
    </message>
    <message>
        <source>unit half</source>
        <translation>lato utenza</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>come trovato</translation>
    </message>
    <message>
        <source>as it should be</source>
        <translation>come deve essere</translation>
    </message>
    <message>
        <source>as refitted</source>
        <translation>come rimontato</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>non noto</translation>
    </message>
    <message>
        <source>blade</source>
        <translation>faston maschio</translation>
    </message>
    <message>
        <source>receptacle</source>
        <translation>faston femmina</translation>
    </message>
    <message>
        <source>bullet</source>
        <translation>spinotto tondo</translation>
    </message>
    <message>
        <source>bullet socket</source>
        <translation>presa tonda</translation>
    </message>
    <message>
        <source>ring</source>
        <translation>occhiello</translation>
    </message>
    <message>
        <source>fork</source>
        <translation>forcella</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>spina</translation>
    </message>
    <message>
        <source>socket</source>
        <translation>presa</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>nudo</translation>
    </message>
    <message>
        <source>place %1</source>
        <translation>via %1</translation>
    </message>
    <message>
        <source>place %1, second wire</source>
        <translation>via %1, secondo filo</translation>
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
        <translation>Rileggi i fili</translation>
    </message>
    <message>
        <source>Wires</source>
        <translation>Fili</translation>
    </message>
    <message>
        <source>New connector</source>
        <translation>Nuovo connettore</translation>
    </message>
    <message>
        <source>A connector, a row of loose terminals, a splice or a shared earth: say what it is before it is unplugged.</source>
        <translation>Un connettore, una fila di terminali sciolti, una giunzione o una massa comune: dire che cos&apos;è prima di staccarlo.</translation>
    </message>
    <message>
        <source>No wires mapped yet</source>
        <translation>Ancora nessun filo nello schema</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>The picture %1 cannot be read: it is gone, or reading it is not allowed. Choose another one.</source>
        <translation>L&apos;immagine %1 non si può leggere: non c&apos;è più, o non è permesso leggerla. Sceglierne un&apos;altra.</translation>
    </message>
    <message>
        <source>The picture %1 is larger than 200 MiB. Choose a smaller one.</source>
        <translation>L&apos;immagine %1 supera 200 MiB. Sceglierne una più piccola.</translation>
    </message>
    <message>
        <source>%1 is not a JPEG or PNG picture, or it is damaged. Choose another one.</source>
        <translation>%1 non è un&apos;immagine JPEG o PNG, o è danneggiata. Sceglierne un&apos;altra.</translation>
    </message>
    <message>
        <source>Not saved: the disk is full. Make room, then try again; what you entered is still here.</source>
        <translation>Non salvato: il disco è pieno. Fare spazio e riprovare; ciò che si è scritto è ancora qui.</translation>
    </message>
    <message>
        <source>Not saved: the system refused to write. What you entered is still here; try again.</source>
        <translation>Non salvato: il sistema ha rifiutato di scrivere. Ciò che si è scritto è ancora qui; riprovare.</translation>
    </message>
    <message>
        <source>The shop&apos;s store cannot be opened.</source>
        <translation>L&apos;archivio dell&apos;officina non si apre.</translation>
    </message>
    <message>
        <source>The shop&apos;s store is damaged. Nothing was deleted; keep a copy of it before anything else.</source>
        <translation>L&apos;archivio dell&apos;officina è danneggiato. Niente è stato cancellato; prima di tutto tenerne una copia.</translation>
    </message>
    <message>
        <source>The shop&apos;s store was written by a newer version. Bring this app up to date.</source>
        <translation>L&apos;archivio dell&apos;officina è stato scritto da una versione più nuova. Aggiornare questa app.</translation>
    </message>
    <message>
        <source>Not saved.</source>
        <translation>Non salvato.</translation>
    </message>
    <message>
        <source>unsafe</source>
        <translation>pericolo</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>presto</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>voluto</translation>
    </message>
    <message>
        <source>asked for</source>
        <translation>chiesto</translation>
    </message>
    <message>
        <source>on order</source>
        <translation>ordinato</translation>
    </message>
    <message>
        <source>here</source>
        <translation>arrivato</translation>
    </message>
    <message>
        <source>wrong one</source>
        <translation>sbagliato</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>montato</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>come trovato</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>rilievo</translation>
    </message>
    <message>
        <source>strip step</source>
        <translation>passo di smontaggio</translation>
    </message>
    <message>
        <source>wiring</source>
        <translation>fili</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>rimontato</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>Machine not described yet</source>
        <translation>Mezzo non ancora descritto</translation>
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
        <translation>ieri %1</translation>
    </message>
    <message>
        <source>%1, %2 days ago</source>
        <translation>%1, %2 giorni fa</translation>
    </message>
    <message>
        <source>%1, %2 weeks ago</source>
        <translation>%1, %2 settimane fa</translation>
    </message>
    <message>
        <source>%1, %2 months ago</source>
        <translation>%1, %2 mesi fa</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::FileCamera</name>
    <message>
        <source>The picture could not be written: %1. Make room, then try again.</source>
        <translation>L&apos;immagine non si è potuta scrivere: %1. Fare spazio e riprovare.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::MicrophoneListener</name>
    <message>
        <source>No microphone answers. Allow it in the device&apos;s settings, or use the buttons.</source>
        <translation>Nessun microfono risponde. Permetterlo nelle impostazioni del dispositivo, o usare i tasti.</translation>
    </message>
    <message>
        <source>The microphone does not open. Close other programs that use it, or use the buttons.</source>
        <translation>Il microfono non si apre. Chiudere gli altri programmi che lo usano, o usare i tasti.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::MultimediaCamera</name>
    <message>
        <source>The camera does not answer: %1. Close other programs that use it, or take the photo from a file.</source>
        <translation>La fotocamera non risponde: %1. Chiudere gli altri programmi che la usano, o prendere la foto da un file.</translation>
    </message>
    <message>
        <source>The photo was not taken: %1. Try again.</source>
        <translation>La foto non è riuscita: %1. Riprovare.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::SystemVoice</name>
    <message>
        <source>The voice failed. Read it on the screen.</source>
        <translation>La voce non ha funzionato. Leggere sullo schermo.</translation>
    </message>
    <message>
        <source>This device has no voice. Install one in its settings, or read it on the screen.</source>
        <translation>Questo dispositivo non ha voce. Installarne una nelle impostazioni, o leggere sullo schermo.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::AfterwardsView</name>
    <message>
        <source>%1 is not on again</source>
        <translation>%1 non è rimontato</translation>
    </message>
    <message>
        <source>Do not start: %1</source>
        <translation>Non avviare: %1</translation>
    </message>
    <message>
        <source>Do not ride: %1</source>
        <translation>Non guidare: %1</translation>
    </message>
    <message>
        <source>after: %1</source>
        <translation>dopo: %1</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Fatto: %1</translation>
    </message>
    <message>
        <source>Type why it is left out, such as &quot;goes home on a trailer&quot;.</source>
        <translation>Scrivere perché si tralascia, per esempio &quot;va a casa sul rimorchio&quot;.</translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation>Tralasciato: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::BackupView</name>
    <message>
        <source>This device</source>
        <translation>Questo dispositivo</translation>
    </message>
    <message>
        <source>looking ...</source>
        <translation>ricerca ...</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>ancora nessuna</translation>
    </message>
    <message>
        <source>At least eight characters; several words are best.</source>
        <translation>Almeno otto caratteri; meglio più parole.</translation>
    </message>
    <message>
        <source>Type it once more, the same way.</source>
        <translation>Scriverla di nuovo, uguale.</translation>
    </message>
    <message numerus="yes">
        <source>%1 was written and read again: %n photos and memos, %2.</source>
        <translation>
            <numerusform>%1 è stato scritto e riletto: %n foto o nota, %2.</numerusform>
            <numerusform>%1 è stato scritto e riletto: %n foto e note, %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not in it: %1</source>
        <translation>Non c&apos;è dentro: %1</translation>
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
        <translation>Manca ancora: %1</translation>
    </message>
    <message>
        <source>%1; possible: %2</source>
        <translation>%1; possibile: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>verdict: %1</source>
        <translation>giudizio: %1</translation>
    </message>
    <message>
        <source>%1 sure to be within</source>
        <translation>%1 di certezza che è entro</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>da %1 a %2</translation>
    </message>
    <message>
        <source>%1 if left empty</source>
        <translation>%1 se lasciato vuoto</translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation>può restare vuoto</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Salvato: %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: %2 (from %3)</source>
        <translation>%1: %2 (da %3)</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CompareView</name>
    <message>
        <source>Confirm the wires on the photo before first: there is nothing yet to compare with.</source>
        <translation>Confermare prima i fili sulla foto di prima: non c&apos;è ancora niente da confrontare.</translation>
    </message>
    <message>
        <source>Take a photo of the wires as they are now, from about the same side.</source>
        <translation>Fare una foto dei fili come sono ora, circa dallo stesso lato.</translation>
    </message>
    <message>
        <source>The same: no wire has changed its place.</source>
        <translation>Uguale: nessun filo ha cambiato posto.</translation>
    </message>
    <message>
        <source>Cannot tell. Read the wires back one by one.</source>
        <translation>Non si può dire. Rileggere i fili uno per uno.</translation>
    </message>
    <message>
        <source>Changed: places %1 swapped.</source>
        <translation>Cambiato: vie %1 scambiate.</translation>
    </message>
    <message>
        <source>The wire of place %1 was not found: it is missing, or was not read.</source>
        <translation>Il filo della via %1 non è stato trovato: manca, o non è stato letto.</translation>
    </message>
    <message>
        <source>Changed: a wire more, number %1 of this stroke.</source>
        <translation>Cambiato: un filo in più, il numero %1 di questo tratto.</translation>
    </message>
    <message>
        <source>Changed: another wire in place %1.</source>
        <translation>Cambiato: altro filo nella via %1.</translation>
    </message>
    <message>
        <source>%1 wires were read, %2 are in the map: stroke across all of them, and only them</source>
        <translation>%1 fili letti, %2 nello schema: passare il dito su tutti, e solo su quelli</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ConsumablesView</name>
    <message>
        <source>batch %1</source>
        <translation>lotto %1</translation>
    </message>
    <message>
        <source>opened %1</source>
        <translation>aperto il %1</translation>
    </message>
    <message>
        <source>Type what goes in, such as &quot;brake fluid&quot;.</source>
        <translation>Scrivere che cosa si mette, per esempio &quot;liquido freni&quot;.</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Salvato: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CostView</name>
    <message>
        <source>Other work</source>
        <translation>Altro lavoro</translation>
    </message>
    <message>
        <source>%1 % tax: %2</source>
        <translation>IVA %1 %: %2</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>niente</translation>
    </message>
    <message>
        <source>Type the currency, such as EUR.</source>
        <translation>Scrivere la valuta, per esempio EUR.</translation>
    </message>
    <message>
        <source>Type the rate as a number, such as 58.50.</source>
        <translation>Scrivere la tariffa come numero, per esempio 58.50.</translation>
    </message>
    <message>
        <source>Type the tax as a number of per cent, such as 19.</source>
        <translation>Scrivere l&apos;IVA come numero per cento, per esempio 22.</translation>
    </message>
    <message>
        <source>Reckoned</source>
        <translation>Conteggiato</translation>
    </message>
    <message>
        <source>Type what it is for, such as &quot;tyre fitted outside&quot;.</source>
        <translation>Scrivere per che cosa, per esempio &quot;pneumatico montato fuori&quot;.</translation>
    </message>
    <message>
        <source>Type the sum without tax as a number, such as 12.50.</source>
        <translation>Scrivere la somma senza IVA come numero, per esempio 12.50.</translation>
    </message>
    <message>
        <source>Line added</source>
        <translation>Voce aggiunta</translation>
    </message>
    <message>
        <source>Line taken out</source>
        <translation>Voce tolta</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Finder</name>
    <message>
        <source>machine</source>
        <translation>mezzo</translation>
    </message>
    <message>
        <source>owner</source>
        <translation>proprietario</translation>
    </message>
    <message>
        <source>job</source>
        <translation>commessa</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>rilievo</translation>
    </message>
    <message>
        <source>strip step</source>
        <translation>passo di smontaggio</translation>
    </message>
    <message>
        <source>wire</source>
        <translation>filo</translation>
    </message>
    <message>
        <source>part</source>
        <translation>ricambio</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lettura</translation>
    </message>
    <message>
        <source>memo</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>tutto</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Findings</name>
    <message>
        <source>%1 does not want it put right (%2)</source>
        <translation>%1 non vuole che si ripari (%2)</translation>
    </message>
    <message>
        <source>is a task</source>
        <translation>è un lavoro</translation>
    </message>
    <message>
        <source>Type whole minutes, such as 45.</source>
        <translation>Scrivere minuti interi, per esempio 45.</translation>
    </message>
    <message>
        <source>Type what was found, such as &quot;brake hose cracked&quot;.</source>
        <translation>Scrivere che cosa si è trovato, per esempio &quot;tubo freno screpolato&quot;.</translation>
    </message>
    <message>
        <source>Choose how serious it is: unsafe, soon or note.</source>
        <translation>Scegliere quanto è grave: pericolo, presto o nota.</translation>
    </message>
    <message>
        <source>Finding kept</source>
        <translation>Rilievo salvato</translation>
    </message>
    <message>
        <source>Task made: %1</source>
        <translation>Lavoro creato: %1</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Risolto</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::FunctionsView</name>
    <message>
        <source>works</source>
        <translation>funziona</translation>
    </message>
    <message>
        <source>does not work</source>
        <translation>non funziona</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>non provato</translation>
    </message>
    <message>
        <source>when it came in: %1</source>
        <translation>all&apos;arrivo: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::GatheringView</name>
    <message>
        <source>Type what it is, such as &quot;right switch cluster&quot;.</source>
        <translation>Scrivere che cos&apos;è, per esempio &quot;blocchetto destro&quot;.</translation>
    </message>
    <message>
        <source>Give the number of places, 1 to %1.</source>
        <translation>Dare il numero di vie, da 1 a %1.</translation>
    </message>
    <message>
        <source>Give the number of rows, 1 to %1.</source>
        <translation>Dare il numero di file, da 1 a %1.</translation>
    </message>
    <message>
        <source>%1 kept</source>
        <translation>%1 salvato</translation>
    </message>
    <message>
        <source>Place 1 marked</source>
        <translation>Via 1 segnata</translation>
    </message>
    <message>
        <source>Tag taken off</source>
        <translation>Segnafilo tolto</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Segnafilo %1</translation>
    </message>
    <message>
        <source>Tagged %1</source>
        <translation>Segnafilo su %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::HandOverView</name>
    <message>
        <source>Settle it, or record that the owner does not want it.</source>
        <translation>Risolverlo, o annotare che il proprietario non lo vuole.</translation>
    </message>
    <message>
        <source>Do it, or say why it is left out.</source>
        <translation>Farlo, o dire perché si tralascia.</translation>
    </message>
    <message>
        <source>Not refitted: %1</source>
        <translation>Non rimontato: %1</translation>
    </message>
    <message>
        <source>Bag %1 is still closed.</source>
        <translation>Il sacchetto %1 è ancora chiuso.</translation>
    </message>
    <message>
        <source>Wire in place %1 does not match</source>
        <translation>Il filo nella via %1 non corrisponde</translation>
    </message>
    <message>
        <source>Part not fitted: %1</source>
        <translation>Ricambio non montato: %1</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Consegnato</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::InstrumentsView</name>
    <message>
        <source>Calibration overdue since %1: its limit of error cannot be relied on</source>
        <translation>Taratura scaduta dal %1: del suo limite d&apos;errore non ci si può fidare</translation>
    </message>
    <message>
        <source>No calibration is recorded; due on %1</source>
        <translation>Nessuna taratura annotata; scade il %1</translation>
    </message>
    <message>
        <source>Calibration due today</source>
        <translation>Taratura in scadenza oggi</translation>
    </message>
    <message>
        <source>Calibration due tomorrow, on %1</source>
        <translation>Taratura in scadenza domani, il %1</translation>
    </message>
    <message>
        <source>Calibration due on %1, in %2 days</source>
        <translation>Taratura in scadenza il %1, tra %2 giorni</translation>
    </message>
    <message>
        <source>Calibrated on %1, no date set for the next time</source>
        <translation>Tarato il %1, senza data per la prossima volta</translation>
    </message>
    <message>
        <source>No calibration is recorded</source>
        <translation>Nessuna taratura annotata</translation>
    </message>
    <message>
        <source>%1, %2 to %3, %4</source>
        <translation>%1, da %2 a %3, %4</translation>
    </message>
    <message>
        <source>Choose what kind of instrument it is.</source>
        <translation>Scegliere il tipo di strumento.</translation>
    </message>
    <message>
        <source>Another instrument for the same quantity has this name: choose another one.</source>
        <translation>Un altro strumento per la stessa grandezza ha questo nome: sceglierne un altro.</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Salvato: %1</translation>
    </message>
    <message>
        <source>No longer used: %1</source>
        <translation>Non più usato: %1</translation>
    </message>
    <message>
        <source>In use again: %1</source>
        <translation>Di nuovo in uso: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Insulations</name>
    <message>
        <source>black</source>
        <translation>nero</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>marrone</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rosso</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>arancione</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>giallo</translation>
    </message>
    <message>
        <source>green</source>
        <translation>verde</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>blu</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>viola</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>grigio</translation>
    </message>
    <message>
        <source>white</source>
        <translation>bianco</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>turquoise</source>
        <translation>turchese</translation>
    </message>
    <message>
        <source>light blue</source>
        <translation>azzurro</translation>
    </message>
    <message>
        <source>light green</source>
        <translation>verde chiaro</translation>
    </message>
    <message>
        <source>colour not known</source>
        <translation>colore non noto</translation>
    </message>
    <message>
        <source>%1, %2 tracer</source>
        <comment>base colour, tracer colour</comment>
        <translation>%1, secondo colore %2</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::JobMemoList</name>
    <message>
        <source>Memo kept</source>
        <translation>Nota salvata</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::JobView</name>
    <message>
        <source>waits for %1</source>
        <translation>aspetta %1</translation>
    </message>
    <message>
        <source>the watch was forgotten</source>
        <translation>il tempo è stato dimenticato acceso</translation>
    </message>
    <message>
        <source>the watch runs</source>
        <translation>il tempo corre</translation>
    </message>
    <message>
        <source>first %1</source>
        <translation>prima %1</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Sacchetto %1</translation>
    </message>
    <message>
        <source>Type what the task is, such as &quot;front brake&quot;.</source>
        <translation>Scrivere qual è il lavoro, per esempio &quot;freno anteriore&quot;.</translation>
    </message>
    <message>
        <source>Task kept</source>
        <translation>Lavoro salvato</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::KnowledgeView</name>
    <message>
        <source>limit</source>
        <translation>limite</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>coppia</translation>
    </message>
    <message>
        <source>part</source>
        <translation>ricambio</translation>
    </message>
    <message>
        <source>wiring map</source>
        <translation>schema dei fili</translation>
    </message>
    <message>
        <source>adjustment</source>
        <translation>regolazione</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>rilievo</translation>
    </message>
    <message>
        <source>time</source>
        <translation>tempo</translation>
    </message>
    <message>
        <source>held in jobs: %1</source>
        <translation>valido nelle commesse: %1</translation>
    </message>
    <message>
        <source>Does not agree: %1</source>
        <translation>Non concorda: %1</translation>
    </message>
    <message>
        <source>The rest</source>
        <translation>Il resto</translation>
    </message>
    <message>
        <source>Taken over: %1</source>
        <translation>Preso: %1</translation>
    </message>
    <message>
        <source>%1 cannot be written. Make room, and try again.</source>
        <translation>%1 non si può scrivere. Fare spazio e riprovare.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::LabelsView</name>
    <message>
        <source>Bag %1, all of it is on again</source>
        <translation>Sacchetto %1, tutto rimontato</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Sacchetto %1</translation>
    </message>
    <message>
        <source>Type a place on the sheet, such as 1.</source>
        <translation>Scrivere un posto sul foglio, per esempio 1.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::MeasureView</name>
    <message>
        <source>none named</source>
        <translation>nessuno indicato</translation>
    </message>
    <message>
        <source>%1, of the shop</source>
        <translation>%1, dell&apos;officina</translation>
    </message>
    <message>
        <source>no instrument named</source>
        <translation>nessuno strumento indicato</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2, assumed</source>
        <translation>%1: %2, presunto</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>manuale</translation>
    </message>
    <message>
        <source>shop&apos;s record</source>
        <translation>officina</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>norma</translation>
    </message>
    <message>
        <source>worked out here</source>
        <translation>calcolato qui</translation>
    </message>
    <message>
        <source>Type a value first; then the next one can be typed.</source>
        <translation>Scrivere prima un valore; poi si scrive il seguente.</translation>
    </message>
    <message>
        <source>mean of %1: %2, spread %3</source>
        <translation>media di %1: %2, scarto %3</translation>
    </message>
    <message>
        <source>%1 % sure to be within: %2</source>
        <translation>certo al %1 % che è entro: %2</translation>
    </message>
    <message>
        <source>source of the limits not named</source>
        <translation>fonte dei limiti non indicata</translation>
    </message>
    <message>
        <source>No limits given: the value is kept without a verdict.</source>
        <translation>Nessun limite: il valore si salva senza giudizio.</translation>
    </message>
    <message>
        <source>No instrument named, so its uncertainty is not known: the value is kept without a verdict.</source>
        <translation>Nessuno strumento indicato, quindi l&apos;incertezza non è nota: il valore si salva senza giudizio.</translation>
    </message>
    <message>
        <source>What would settle it: %1</source>
        <translation>Che cosa lo chiarirebbe: %1</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Salvato: %1</translation>
    </message>
    <message>
        <source>mean of %1</source>
        <translation>media di %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ModelsView</name>
    <message>
        <source>jobs: %1</source>
        <translation>commesse: %1</translation>
    </message>
    <message>
        <source>This file cannot be read, or is no knowledge of a model: %1</source>
        <translation>Questo file non si legge, o non contiene conoscenze di un modello: %1</translation>
    </message>
    <message>
        <source>%1 %2, facts: %3</source>
        <translation>%1 %2, dati: %3</translation>
    </message>
    <message>
        <source>Learned: %1</source>
        <translation>Imparato: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::NeedsView</name>
    <message>
        <source>Do not start until this is on and all that follows is done.</source>
        <translation>Non avviare finché questo non è rimontato e tutto il resto fatto.</translation>
    </message>
    <message>
        <source>Do not ride until this is on and all that follows is done.</source>
        <translation>Non guidare finché questo non è rimontato e tutto il resto fatto.</translation>
    </message>
    <message>
        <source>Kept for the refit</source>
        <translation>Salvato per il rimontaggio</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::OrdersView</name>
    <message>
        <source>No supplier chosen</source>
        <translation>Nessun fornitore scelto</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::OwnersWord</name>
    <message>
        <source>called</source>
        <translation>al telefono</translation>
    </message>
    <message>
        <source>wrote</source>
        <translation>per iscritto</translation>
    </message>
    <message>
        <source>stood here</source>
        <translation>di persona</translation>
    </message>
    <message>
        <source>Not wanted: %1</source>
        <translation>Non voluto: %1</translation>
    </message>
    <message>
        <source>Type who said no: the record names them.</source>
        <translation>Scrivere chi ha detto no: il rapporto lo nomina.</translation>
    </message>
    <message>
        <source>Choose how it was said: called, wrote or stood here.</source>
        <translation>Scegliere come è stato detto: al telefono, per iscritto o di persona.</translation>
    </message>
    <message>
        <source>Refusal kept</source>
        <translation>Rifiuto salvato</translation>
    </message>
    <message>
        <source>Type what it covers, such as &quot;front brake, tyres&quot;.</source>
        <translation>Scrivere che cosa comprende, per esempio &quot;freno anteriore, pneumatici&quot;.</translation>
    </message>
    <message>
        <source>Type who said so.</source>
        <translation>Scrivere chi l&apos;ha detto.</translation>
    </message>
    <message>
        <source>Write the sum as digits, such as 120.50.</source>
        <translation>Scrivere la somma in cifre, per esempio 120.50.</translation>
    </message>
    <message>
        <source>Write the currency in three letters, such as EUR.</source>
        <translation>Scrivere la valuta in tre lettere, per esempio EUR.</translation>
    </message>
    <message>
        <source>Approval kept</source>
        <translation>Consenso salvato</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PartForm</name>
    <message>
        <source>Part</source>
        <translation>Ricambio</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Non detto</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Va bene</translation>
    </message>
    <message>
        <source>After a change</source>
        <translation>Con modifica</translation>
    </message>
    <message>
        <source>Does not fit</source>
        <translation>Non va bene</translation>
    </message>
    <message>
        <source>Type what part it is, such as &quot;front brake hose&quot;.</source>
        <translation>Scrivere quale ricambio è, per esempio &quot;tubo freno anteriore&quot;.</translation>
    </message>
    <message>
        <source>Type the price as a number, such as 18.50.</source>
        <translation>Scrivere il prezzo come numero, per esempio 18.50.</translation>
    </message>
    <message>
        <source>Type the currency, such as EUR.</source>
        <translation>Scrivere la valuta, per esempio EUR.</translation>
    </message>
    <message>
        <source>Type why, such as &quot;pivot hole 1 mm too small&quot;.</source>
        <translation>Scrivere perché, per esempio &quot;foro del perno 1 mm troppo piccolo&quot;.</translation>
    </message>
    <message>
        <source>Part kept</source>
        <translation>Ricambio salvato</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PartsList</name>
    <message>
        <source>Type what part it is, such as &quot;front brake hose&quot;.</source>
        <translation>Scrivere quale ricambio è, per esempio &quot;tubo freno anteriore&quot;.</translation>
    </message>
    <message>
        <source>Part kept</source>
        <translation>Ricambio salvato</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PhotoCapture</name>
    <message>
        <source>There is no camera here. Take the photo from a file.</source>
        <translation>Qui non c&apos;è fotocamera. Prendere la foto da un file.</translation>
    </message>
    <message>
        <source>The camera is starting.</source>
        <translation>La fotocamera si avvia.</translation>
    </message>
    <message>
        <source>This app may not use the camera. Allow it in the system&apos;s settings, or take the photo from a file.</source>
        <translation>Questa app non può usare la fotocamera. Permetterlo nelle impostazioni del sistema, o prendere la foto da un file.</translation>
    </message>
    <message>
        <source>The disk is full: make room before you take more photos. Those that were taken are still here and are kept as soon as there is room.</source>
        <translation>Il disco è pieno: fare spazio prima di altre foto. Quelle scattate sono ancora qui e si salvano appena c&apos;è spazio.</translation>
    </message>
    <message>
        <source>Photo saved</source>
        <translation>Foto salvata</translation>
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
        <translation>da quel lato non si è trovato altro filo</translation>
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
        <translation>Dire da dove si sa, per esempio &quot;manuale, pagina 7-12&quot;.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Give the size in millimetres, such as 6.3.</source>
        <translation>Dare la misura in millimetri, per esempio 6.3.</translation>
    </message>
    <message>
        <source>Terminal: %1</source>
        <translation>Terminale: %1</translation>
    </message>
    <message>
        <source>Give the size in square millimetres, such as 0.75.</source>
        <translation>Dare la sezione in millimetri quadrati, per esempio 0.75.</translation>
    </message>
    <message>
        <source>Wire size kept</source>
        <translation>Sezione salvata</translation>
    </message>
    <message>
        <source>Function: %1</source>
        <translation>Funzione: %1</translation>
    </message>
    <message>
        <source>DIN number kept</source>
        <translation>Numero DIN salvato</translation>
    </message>
    <message>
        <source>Tag kept</source>
        <translation>Segnafilo salvato</translation>
    </message>
    <message>
        <source>%1: nothing there</source>
        <translation>%1: lì niente</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ProveView</name>
    <message>
        <source>proved</source>
        <translation>verificato</translation>
    </message>
    <message>
        <source>proved: %1</source>
        <translation>verificato: %1</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>tralasciato: %1</translation>
    </message>
    <message>
        <source>not signed</source>
        <translation>non firmato</translation>
    </message>
    <message>
        <source>signed by %1</source>
        <translation>firmato da %1</translation>
    </message>
    <message>
        <source>Proved</source>
        <translation>Verificato</translation>
    </message>
    <message>
        <source>Type why it is left out, such as &quot;no road test before the tyres are here&quot;.</source>
        <translation>Scrivere perché si tralascia, per esempio &quot;niente prova su strada prima dei pneumatici&quot;.</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Tralasciato</translation>
    </message>
    <message>
        <source>Type the name of the one who looked.</source>
        <translation>Scrivere il nome di chi ha guardato.</translation>
    </message>
    <message>
        <source>Signed by %1</source>
        <translation>Firmato da %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ReadBackEar</name>
    <message>
        <source>Nothing was heard. Hold, say it, then let go.</source>
        <translation>Non si è sentito niente. Tenere premuto, parlare, poi lasciare.</translation>
    </message>
    <message>
        <source>Not sure what that was. Say it again.</source>
        <translation>Non è chiaro che cosa fosse. Ripetere.</translation>
    </message>
    <message>
        <source>That is nothing that can be said here. Say it again.</source>
        <translation>Questo qui non si può dire. Ripetere.</translation>
    </message>
    <message>
        <source>That number is not believed. Say it again.</source>
        <translation>Quel numero non è credibile. Ripetere.</translation>
    </message>
    <message>
        <source>Heard &quot;%1&quot;. Here say done, does not match, next, back, again, slower, undo or stop.</source>
        <translation>Sentito &quot;%1&quot;. Qui valgono done, does not match, next, back, again, slower, undo o stop.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ReadBackView</name>
    <message>
        <source>tag %1</source>
        <translation>segnafilo %1</translation>
    </message>
    <message>
        <source>looks like place %1</source>
        <translation>uguale alla via %1</translation>
    </message>
    <message>
        <source>%1; not tagged</source>
        <translation>%1; senza segnafilo</translation>
    </message>
    <message>
        <source>%1; tag %2</source>
        <translation>%1; segnafilo %2</translation>
    </message>
    <message>
        <source>%1 matches</source>
        <translation>%1 corrisponde</translation>
    </message>
    <message>
        <source>%1 does not match</source>
        <translation>%1 non corrisponde</translation>
    </message>
    <message>
        <source>swapped with %1</source>
        <translation>scambiato con %1</translation>
    </message>
    <message>
        <source>%1 swapped with %2</source>
        <translation>%1 scambiato con %2</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RefitView</name>
    <message>
        <source>%1 of %2 wires read back</source>
        <translation>%1 fili su %2 riletti</translation>
    </message>
    <message>
        <source>Routing: %1</source>
        <translation>Percorso: %1</translation>
    </message>
    <message>
        <source>As found: %1</source>
        <translation>Come trovato: %1</translation>
    </message>
    <message>
        <source>Let out: %1</source>
        <translation>Scaricato: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>the task %1</source>
        <translation>il lavoro %1</translation>
    </message>
    <message>
        <source>Refitted: %1</source>
        <translation>Rimontato: %1</translation>
    </message>
    <message>
        <source>Task resumed</source>
        <translation>Lavoro ripreso</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoadView</name>
    <message>
        <source>after %1 %2</source>
        <translation>dopo %1 %2</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>entro il %1</translation>
    </message>
    <message>
        <source>seen to</source>
        <translation>fatto</translation>
    </message>
    <message>
        <source>Road test</source>
        <translation>Prova su strada</translation>
    </message>
    <message>
        <source>Type how far it was ridden, such as 4.</source>
        <translation>Scrivere quanto si è guidato, per esempio 4.</translation>
    </message>
    <message>
        <source>Road test kept</source>
        <translation>Prova su strada salvata</translation>
    </message>
    <message>
        <source>Type what is to be looked at again, such as &quot;axle nut&quot;.</source>
        <translation>Scrivere che cosa riguardare, per esempio &quot;dado del perno&quot;.</translation>
    </message>
    <message>
        <source>Type the distance as a number, such as 50.</source>
        <translation>Scrivere la distanza come numero, per esempio 50.</translation>
    </message>
    <message>
        <source>Type whole days, such as 14.</source>
        <translation>Scrivere giorni interi, per esempio 14.</translation>
    </message>
    <message>
        <source>Recheck kept</source>
        <translation>Ricontrollo salvato</translation>
    </message>
    <message>
        <source>Seen to</source>
        <translation>Fatto</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoundListsView</name>
    <message>
        <source>looked over</source>
        <translation>controllato</translation>
    </message>
    <message>
        <source>tried at take-in</source>
        <translation>provato all&apos;accettazione</translation>
    </message>
    <message>
        <source>photographed at take-in</source>
        <translation>fotografato all&apos;accettazione</translation>
    </message>
    <message>
        <source>checks: %1, %2</source>
        <translation>controlli: %1, %2</translation>
    </message>
    <message>
        <source>Type the check and the part of the machine that it belongs to.</source>
        <translation>Scrivere il controllo e la parte del mezzo a cui appartiene.</translation>
    </message>
    <message>
        <source>This check stands in the list already.</source>
        <translation>Questo controllo è già nell&apos;elenco.</translation>
    </message>
    <message>
        <source>Check added</source>
        <translation>Controllo aggiunto</translation>
    </message>
    <message>
        <source>Check taken out</source>
        <translation>Controllo tolto</translation>
    </message>
    <message>
        <source>Check changed</source>
        <translation>Controllo cambiato</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoundView</name>
    <message>
        <source>fine</source>
        <translation>a posto</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>non fatto</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>rilievo</translation>
    </message>
    <message>
        <source>finding: %1</source>
        <translation>rilievo: %1</translation>
    </message>
    <message>
        <source>Fine: %1</source>
        <translation>A posto: %1</translation>
    </message>
    <message>
        <source>Not done: %1</source>
        <translation>Non fatto: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoundsView</name>
    <message>
        <source>%1 of %2 to go</source>
        <translation>ne mancano %1 su %2</translation>
    </message>
    <message>
        <source>findings: %1</source>
        <translation>rilievi: %1</translation>
    </message>
    <message>
        <source>not done: %1</source>
        <translation>non fatti: %1</translation>
    </message>
    <message>
        <source>all fine</source>
        <translation>tutto a posto</translation>
    </message>
    <message>
        <source>The shop&apos;s lists hold no check for this machine: add some in Settings.</source>
        <translation>Gli elenchi dell&apos;officina non hanno controlli per questo mezzo: aggiungerne nelle impostazioni.</translation>
    </message>
    <message>
        <source>Round begun</source>
        <translation>Giro cominciato</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ScanView</name>
    <message>
        <source>This picture cannot be read: %1</source>
        <translation>Questa immagine non si legge: %1</translation>
    </message>
    <message>
        <source>No code is read in this picture: take it closer and straight on.</source>
        <translation>In questa immagine non si legge nessun codice: avvicinarsi e inquadrare dritto.</translation>
    </message>
    <message>
        <source>This label is of a job that is not in this shop.</source>
        <translation>Questa etichetta è di una commessa che non è in questa officina.</translation>
    </message>
    <message>
        <source>Job %1 has no bag %2 any more.</source>
        <translation>La commessa %1 non ha più un sacchetto %2.</translation>
    </message>
    <message>
        <source>Bag %1: %2</source>
        <translation>Sacchetto %1: %2</translation>
    </message>
    <message>
        <source>No open job waits for a part with the number %1.</source>
        <translation>Nessuna commessa aperta aspetta un ricambio col numero %1.</translation>
    </message>
    <message>
        <source>Parts with the number %1</source>
        <translation>Ricambi col numero %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::SheetsView</name>
    <message>
        <source>%1 cannot be written. Make room, and try again.</source>
        <translation>%1 non si può scrivere. Fare spazio e riprovare.</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Riga %1: %2</translation>
    </message>
    <message>
        <source>cannot be brought in</source>
        <translation>non si può importare</translation>
    </message>
    <message>
        <source>This file cannot be read: %1</source>
        <translation>Questo file non si legge: %1</translation>
    </message>
    <message>
        <source>Brought in: %1</source>
        <translation>Importato: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ShopHome</name>
    <message>
        <source>Machine not described yet</source>
        <translation>Mezzo non ancora descritto</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ShopSession</name>
    <message>
        <source>Type the name of the one who works here.</source>
        <translation>Scrivere il nome di chi lavora qui.</translation>
    </message>
    <message>
        <source>Brought back</source>
        <translation>Ripristinato</translation>
    </message>
    <message>
        <source>Undone</source>
        <translation>Annullato</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ShopSettings</name>
    <message>
        <source>As the device</source>
        <translation>Come il dispositivo</translation>
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
        <translation>Scrivere chi firma.</translation>
    </message>
    <message>
        <source>Sign in the field with a finger.</source>
        <translation>Firmare nel campo con un dito.</translation>
    </message>
    <message>
        <source>The signature cannot be made into a picture. Sign once more.</source>
        <translation>La firma non diventa un&apos;immagine. Firmare di nuovo.</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Firmato</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::StripView</name>
    <message>
        <source>Strip step</source>
        <translation>Passo di smontaggio</translation>
    </message>
    <message>
        <source>Correction of a strip step</source>
        <translation>Correzione di un passo di smontaggio</translation>
    </message>
    <message>
        <source>Choose or type what it is, such as &quot;screw&quot;.</source>
        <translation>Scegliere o scrivere che cos&apos;è, per esempio &quot;vite&quot;.</translation>
    </message>
    <message>
        <source>Type what was done, such as &quot;unplug 6-place connector&quot;.</source>
        <translation>Scrivere che cosa si è fatto, per esempio &quot;staccare il connettore a 6 vie&quot;.</translation>
    </message>
    <message>
        <source>Step %1 kept</source>
        <translation>Passo %1 salvato</translation>
    </message>
    <message>
        <source>Step corrected</source>
        <translation>Passo corretto</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::StrokeView</name>
    <message>
        <source>No wire could be followed on this photo. Stroke across the wires.</source>
        <translation>Su questa foto non si è potuto seguire nessun filo. Passare il dito sui fili.</translation>
    </message>
    <message>
        <source>Followed: %1. Touch each that belongs here.</source>
        <translation>Seguiti: %1. Toccare ognuno che è di qui.</translation>
    </message>
    <message>
        <source>Where ? stands no wire could be followed: if one belongs here, stroke instead.</source>
        <translation>Dove sta ? non si è potuto seguire un filo: se ce n&apos;è uno, fare un tratto.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n wires confirmed</source>
        <translation>
            <numerusform>%n filo confermato</numerusform>
            <numerusform>%n fili confermati</numerusform>
        </translation>
    </message>
    <message>
        <source>Not confirmed any more</source>
        <translation>Non più confermato</translation>
    </message>
    <message>
        <source>Turned round</source>
        <translation>Invertito</translation>
    </message>
    <message>
        <source>Taken out</source>
        <translation>Tolto</translation>
    </message>
    <message>
        <source>Put in</source>
        <translation>Messo</translation>
    </message>
    <message>
        <source>Place empty</source>
        <translation>Via vuota</translation>
    </message>
    <message>
        <source>Second wire of the place before</source>
        <translation>Secondo filo della via prima</translation>
    </message>
    <message>
        <source>In a place of its own</source>
        <translation>In una via propria</translation>
    </message>
    <message>
        <source>Brought back</source>
        <translation>Ripristinato</translation>
    </message>
    <message>
        <source>Wires of %1</source>
        <translation>Fili di %1</translation>
    </message>
    <message>
        <source>%1 places read, %2 places in all: add those that are missing or empty</source>
        <translation>%1 vie lette, %2 in tutto: aggiungere quelle che mancano o sono vuote</translation>
    </message>
    <message>
        <source>%1 places read, only %2 in all: take out what is no wire of it</source>
        <translation>%1 vie lette, solo %2 in tutto: togliere ciò che non è un suo filo</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::TakeIn</name>
    <message>
        <source>Type the make or the model, whatever is readable.</source>
        <translation>Scrivere la marca o il modello, ciò che si legge.</translation>
    </message>
    <message>
        <source>The year is a number from %1 to %2; leave it empty if it is not known.</source>
        <translation>L&apos;anno è un numero da %1 a %2; lasciarlo vuoto se non è noto.</translation>
    </message>
    <message>
        <source>A number that is not below 0.</source>
        <translation>Un numero non sotto 0.</translation>
    </message>
    <message>
        <source>Type why it is here, such as &quot;no lights&quot;.</source>
        <translation>Scrivere perché è qui, per esempio &quot;niente luci&quot;.</translation>
    </message>
    <message>
        <source>%1; possible: %2</source>
        <translation>%1; possibile: %2</translation>
    </message>
    <message>
        <source>Check digit fits.</source>
        <translation>La cifra di controllo torna.</translation>
    </message>
    <message>
        <source>Taken as an older number without check digit.</source>
        <translation>Preso come numero più vecchio senza cifra di controllo.</translation>
    </message>
    <message>
        <source>Read it again: %1</source>
        <translation>Rileggerlo: %1</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Cambiato</translation>
    </message>
    <message>
        <source>Comes back from %1</source>
        <translation>Torna da %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::TaskView</name>
    <message>
        <source>%1 of %2 estimated</source>
        <translation>%1 su %2 stimati</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>finito</translation>
    </message>
    <message>
        <source>open</source>
        <translation>aperto</translation>
    </message>
    <message>
        <source>Watch stopped</source>
        <translation>Tempo fermato</translation>
    </message>
    <message>
        <source>Watch started</source>
        <translation>Tempo avviato</translation>
    </message>
    <message>
        <source>Type whole minutes, such as 45.</source>
        <translation>Scrivere minuti interi, per esempio 45.</translation>
    </message>
    <message>
        <source>Time corrected</source>
        <translation>Tempo corretto</translation>
    </message>
    <message>
        <source>Type what it waits for, such as &quot;brake shoes&quot;.</source>
        <translation>Scrivere che cosa si aspetta, per esempio &quot;ganasce dei freni&quot;.</translation>
    </message>
    <message>
        <source>Task waits</source>
        <translation>Il lavoro aspetta</translation>
    </message>
    <message>
        <source>Task resumed</source>
        <translation>Lavoro ripreso</translation>
    </message>
    <message>
        <source>Task finished</source>
        <translation>Lavoro finito</translation>
    </message>
    <message>
        <source>%1 already comes after %2: take that back first.</source>
        <translation>%1 viene già dopo %2: togliere prima quello.</translation>
    </message>
    <message>
        <source>Order of tasks kept</source>
        <translation>Ordine dei lavori salvato</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ViewsView</name>
    <message>
        <source>photos: %1</source>
        <translation>foto: %1</translation>
    </message>
    <message>
        <source>passed over</source>
        <translation>saltata</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::WireRows</name>
    <message>
        <source>empty</source>
        <translation>vuoto</translation>
    </message>
    <message>
        <source>no wire found</source>
        <translation>nessun filo trovato</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>confermato</translation>
    </message>
</context>
</TS>
