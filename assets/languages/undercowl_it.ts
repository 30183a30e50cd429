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
    <message>
        <source>Bring a shop back</source>
        <translation>Riporta un&apos;officina</translation>
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
    <name>CameraPage</name>
    <message>
        <source>The photo before is still being saved. Say it again.</source>
        <translation>La foto precedente si sta ancora salvando. Ripetere.</translation>
    </message>
    <message>
        <source>Take a photo first; then a memo to it can be kept.</source>
        <translation>Prima scattare una foto; poi vi si può salvare una nota.</translation>
    </message>
</context>
<context>
    <name>CameraPicture</name>
    <message>
        <source>Picture of the camera</source>
        <translation>Immagine della fotocamera</translation>
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
        <translation>Spegnere luce</translation>
    </message>
    <message>
        <source>Torch on</source>
        <translation>Accendere luce</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Salvataggio</translation>
    </message>
    <message>
        <source>Shoot</source>
        <translation>Scatta</translation>
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
    <name>CarryPage</name>
    <message>
        <source>Carry over</source>
        <translation>Riporta</translation>
    </message>
    <message numerus="yes">
        <source>Take %n over</source>
        <comment>wires</comment>
        <translation>
            <numerusform>Riporta %n filo</numerusform>
            <numerusform>Riporta %n fili</numerusform>
        </translation>
    </message>
    <message>
        <source>Taken over</source>
        <translation>Riportati</translation>
    </message>
    <message>
        <source>Wires go where the same is served; their colour decides nothing. Say what each wire of the old part and each place of the new one serves.</source>
        <translation>I fili vanno dove c&apos;è la stessa funzione; il colore non decide niente. Dire la funzione di ogni filo del pezzo vecchio e di ogni via del nuovo.</translation>
    </message>
    <message>
        <source>Measure first</source>
        <translation>Prima misurare</translation>
    </message>
    <message numerus="yes">
        <source>%n at most</source>
        <comment>trials</comment>
        <translation>
            <numerusform>al massimo %n</numerusform>
            <numerusform>al massimo %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Then try</source>
        <translation>Poi provare</translation>
    </message>
    <message>
        <source>Only with a fuse of 3 A at most in the trial lead, one connection at a time, everything else switched off, engine stopped. No sign: take it off before the next. A fuse that blows ends the trials. The machine&apos;s manual and diagram come first.</source>
        <translation>Solo con un fusibile da 3 A al massimo nel cavetto di prova, un collegamento alla volta, tutto il resto spento, motore fermo. Nessun segno: staccarlo prima del successivo. Un fusibile che brucia mette fine alle prove. Il manuale e lo schema del mezzo vengono prima.</translation>
    </message>
    <message>
        <source>At which place was the sign seen?</source>
        <translation>In quale via si è visto il segno?</translation>
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
        <source>DOT 4, from the lid</source>
        <translation>DOT 4, dal coperchio</translation>
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
    <name>Core</name>
    <message>
        <source>at least %1</source>
        <translation>almeno %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>al massimo %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>da %1 a %2</translation>
    </message>
    <message>
        <source>%1: fits</source>
        <translation>%1: va bene</translation>
    </message>
    <message>
        <source>%1: fits after a change (%2)</source>
        <translation>%1: va bene dopo una modifica (%2)</translation>
    </message>
    <message>
        <source>%1: does not fit (%2)</source>
        <translation>%1: non va bene (%2)</translation>
    </message>
    <message>
        <source>line %1: a quote is opened and not closed</source>
        <translation>riga %1: virgolette aperte e non chiuse</translation>
    </message>
    <message>
        <source>line %1: letters stand between a closing quote and the end of its cell</source>
        <translation>riga %1: lettere tra le virgolette di chiusura e la fine della cella</translation>
    </message>
    <message>
        <source>make, model: one of them must be there</source>
        <translation>make, model: uno dei due deve esserci</translation>
    </message>
    <message>
        <source>year: &apos;%1&apos; is no year such as 1987</source>
        <translation>year: &apos;%1&apos; non è un anno come 1987</translation>
    </message>
    <message>
        <source>passed over: is here as job %1</source>
        <translation>saltata: c&apos;è già come commessa %1</translation>
    </message>
    <message>
        <source>opens job %1: %2</source>
        <translation>apre la commessa %1: %2</translation>
    </message>
    <message>
        <source>part: must say what part it is</source>
        <translation>part: deve dire che ricambio è</translation>
    </message>
    <message>
        <source>price: &apos;%1&apos; is no number such as 18.50</source>
        <translation>price: &apos;%1&apos; non è un numero come 18.50</translation>
    </message>
    <message>
        <source>currency: a price needs its currency, such as EUR</source>
        <translation>currency: un prezzo vuole la sua valuta, per esempio EUR</translation>
    </message>
    <message>
        <source>job: there is no job &apos;%1&apos; in this shop</source>
        <translation>job: in questa officina non c&apos;è una commessa &apos;%1&apos;</translation>
    </message>
    <message>
        <source>passed over: job %1 has it</source>
        <translation>saltata: la commessa %1 ce l&apos;ha</translation>
    </message>
    <message>
        <source>adds to job %1: %2</source>
        <translation>aggiunge alla commessa %1: %2</translation>
    </message>
    <message>
        <source>odometer: %1</source>
        <translation>contachilometri: %1</translation>
    </message>
    <message>
        <source>%1: &apos;%2&apos; is not known</source>
        <translation>%1: &apos;%2&apos; non è noto</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>il file è vuoto</translation>
    </message>
    <message>
        <source>the first line names no column that is known: a sheet of machines has &quot;make&quot; and &quot;model&quot;, one of parts has &quot;job&quot; and &quot;part&quot;</source>
        <translation>la prima riga non nomina colonne note: un foglio di mezzi ha &quot;make&quot; e &quot;model&quot;, uno di ricambi &quot;job&quot; e &quot;part&quot;</translation>
    </message>
    <message>
        <source>media file %1: its content does not fit its name</source>
        <translation>file %1: il contenuto non corrisponde al nome</translation>
    </message>
    <message>
        <source>backup: %1 exists already; give another name</source>
        <translation>copia: %1 esiste già; dare un altro nome</translation>
    </message>
    <message>
        <source>backup: what was written is not what can be read again</source>
        <translation>copia: ciò che è stato scritto non si rilegge uguale</translation>
    </message>
    <message>
        <source>%1. Make room on the disk, then try again.</source>
        <translation>%1. Fare spazio sul disco e riprovare.</translation>
    </message>
    <message>
        <source>%1. Check who owns the folder and whether it may be written.</source>
        <translation>%1. Controllare di chi è la cartella e se ci si può scrivere.</translation>
    </message>
    <message>
        <source>cannot write %1</source>
        <translation>non si può scrivere %1</translation>
    </message>
    <message>
        <source>cannot sync %1</source>
        <translation>non si può sincronizzare %1</translation>
    </message>
    <message>
        <source>cannot close %1</source>
        <translation>non si può chiudere %1</translation>
    </message>
    <message>
        <source>cannot make the folder %1</source>
        <translation>non si può creare la cartella %1</translation>
    </message>
    <message>
        <source>cannot create %1</source>
        <translation>non si può creare %1</translation>
    </message>
    <message>
        <source>cannot rename to %1</source>
        <translation>non si può rinominare in %1</translation>
    </message>
    <message>
        <source>cannot remove %1</source>
        <translation>non si può togliere %1</translation>
    </message>
    <message>
        <source>cannot open the folder %1</source>
        <translation>non si può aprire la cartella %1</translation>
    </message>
    <message>
        <source>cannot look at %1</source>
        <translation>non si può guardare %1</translation>
    </message>
    <message>
        <source>cannot list the folder %1</source>
        <translation>non si può elencare la cartella %1</translation>
    </message>
    <message>
        <source>cannot open %1</source>
        <translation>non si può aprire %1</translation>
    </message>
    <message>
        <source>cannot read %1</source>
        <translation>non si può leggere %1</translation>
    </message>
    <message>
        <source>%1 is not a regular file. Move it away.</source>
        <translation>%1 non è un file normale. Spostarlo.</translation>
    </message>
    <message>
        <source>Make room on the disk, then try again; nothing of this was kept.</source>
        <translation>Fare spazio sul disco e riprovare; di questo non è stato tenuto niente.</translation>
    </message>
    <message>
        <source>Check that the folder may be written and that no other program holds it locked.</source>
        <translation>Controllare che si possa scrivere nella cartella e che nessun altro programma la tenga bloccata.</translation>
    </message>
    <message>
        <source>Try again; if it comes back, check the disk.</source>
        <translation>Riprovare; se torna, controllare il disco.</translation>
    </message>
    <message>
        <source>%1 is the database of another program. It was left as it is; name another folder.</source>
        <translation>%1 è la base dati di un altro programma. È rimasta com&apos;era; indicare un&apos;altra cartella.</translation>
    </message>
    <message>
        <source>%1 was written by a newer version (schema %2, known here: up to %3). It was left as it is; update this program.</source>
        <translation>%1 è stato scritto da una versione più nuova (schema %2, noto qui: fino a %3). È rimasto com&apos;era; aggiornare il programma.</translation>
    </message>
    <message>
        <source>This shop was written by a newer version of the program and can only be looked at here. Bring this program up to date to go on working in it.</source>
        <translation>Questa officina è stata scritta da una versione più nuova del programma e qui si può solo guardare. Aggiornare il programma per continuare a lavorarci.</translation>
    </message>
    <message>
        <source>%1 holds no store but other things, such as &apos;%2&apos;. Name an empty folder or a new one.</source>
        <translation>%1 non contiene un archivio ma altro, per esempio &apos;%2&apos;. Indicare una cartella vuota o nuova.</translation>
    </message>
    <message>
        <source>the key of the backup needs %1 MiB of memory, which are not free; close other programs</source>
        <translation>la chiave della copia vuole %1 MiB di memoria, che non sono liberi; chiudere altri programmi</translation>
    </message>
    <message>
        <source>passphrase: must have at least 8 bytes; several words are best</source>
        <translation>frase segreta: almeno 8 byte; meglio più parole</translation>
    </message>
    <message>
        <source>find: at most 16 words at a time</source>
        <translation>ricerca: al massimo 16 parole per volta</translation>
    </message>
    <message>
        <source>body: has %1 bytes, at most %2 are kept; shorten the text</source>
        <translation>body: ha %1 byte, se ne tengono al massimo %2; accorciare il testo</translation>
    </message>
    <message>
        <source>media: a file must have between 1 byte and 256 MiB, this one has %1 bytes</source>
        <translation>media: un file deve avere tra 1 byte e 256 MiB, questo ha %1 byte</translation>
    </message>
    <message>
        <source>media: the file %1 is missing. Put it back from a backup or an archive.</source>
        <translation>media: manca il file %1. Rimetterlo da una copia o da un archivio.</translation>
    </message>
    <message>
        <source>%1: its content does not fit its name. Put it back from a backup or an archive.</source>
        <translation>%1: il contenuto non corrisponde al nome. Rimetterlo da una copia o da un archivio.</translation>
    </message>
    <message>
        <source>%1, %2 tracer</source>
        <translation>%1, secondo colore %2</translation>
    </message>
    <message>
        <source>blade %1</source>
        <translation>faston maschio %1</translation>
    </message>
    <message>
        <source>receptacle %1</source>
        <translation>faston femmina %1</translation>
    </message>
    <message>
        <source>bullet %1</source>
        <translation>spinotto tondo %1</translation>
    </message>
    <message>
        <source>bullet socket %1</source>
        <translation>presa tonda %1</translation>
    </message>
    <message>
        <source>ring %1</source>
        <translation>occhiello %1</translation>
    </message>
    <message>
        <source>fork %1</source>
        <translation>forcella %1</translation>
    </message>
    <message>
        <source>pin %1</source>
        <translation>pin %1</translation>
    </message>
    <message>
        <source>socket %1</source>
        <translation>presa %1</translation>
    </message>
    <message>
        <source>splice %1</source>
        <translation>giunzione %1</translation>
    </message>
    <message>
        <source>bare %1</source>
        <translation>nudo %1</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date as it is read here: write year, month and day, such as 2026-11-25</source>
        <translation>&quot;%1&quot; qui non si legge come data: scrivere anno, mese e giorno, per esempio 2026-11-25</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a day of the calendar</source>
        <translation>&quot;%1&quot; non è un giorno del calendario</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is out of range: the year must be from 1885 to 2200</source>
        <translation>&quot;%1&quot; è fuori: l&apos;anno deve essere dal 1885 al 2200</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number: write digits with one decimal point or comma, such as 2.4 or 1/2</source>
        <translation>&quot;%1&quot; non è un numero: scrivere cifre con un punto o una virgola, per esempio 2.4 o 1/2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; divides by zero</source>
        <translation>&quot;%1&quot; divide per zero</translation>
    </message>
    <message>
        <source>&quot;%1&quot; could be a fraction or two values: write one number, a fraction above one as 1 1/4</source>
        <translation>&quot;%1&quot; potrebbe essere una frazione o due valori: scrivere un numero, una frazione sopra uno come 1 1/4</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has more than one separator: write the number without grouping, such as 1234.5</source>
        <translation>&quot;%1&quot; ha più di un separatore: scrivere il numero senza gruppi, per esempio 1234.5</translation>
    </message>
    <message>
        <source>&quot;%1&quot; could be %2 or %3: write %4, or %5 with a point</source>
        <translation>&quot;%1&quot; potrebbe essere %2 o %3: scrivere %4, oppure %5 col punto</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is ambiguous: %2</source>
        <translation>&quot;%1&quot; è ambiguo: %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a unit that is known here: %2 is wanted here, in %3</source>
        <translation>&quot;%1&quot; qui non è un&apos;unità nota: serve %2, in %3</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is a unit of %2: %3 is wanted here, in %4</source>
        <translation>&quot;%1&quot; è un&apos;unità di %2: serve %3, in %4</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a gap inside: write the number without grouping, such as 1234.5</source>
        <translation>&quot;%1&quot; ha uno spazio in mezzo: scrivere il numero senza gruppi, per esempio 1234.5</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is beyond any number that is measured</source>
        <translation>&quot;%1&quot; supera qualsiasi numero che si misuri</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no unit: %2 is wanted here, in %3</source>
        <translation>&quot;%1&quot; non ha unità: serve %2, in %3</translation>
    </message>
    <message>
        <source>%1 is a unit of %2, %3 of %4: what fits is %5</source>
        <translation>%1 è un&apos;unità di %2, %3 di %4: va bene %5</translation>
    </message>
    <message>
        <source>write US gal or imp gal: they differ by a fifth</source>
        <translation>scrivere US gal o imp gal: differiscono di un quinto</translation>
    </message>
    <message>
        <source>write US pt or imp pt: they differ by a fifth</source>
        <translation>scrivere US pt o imp pt: differiscono di un quinto</translation>
    </message>
    <message>
        <source>write US fl oz or imp fl oz: they are not the same</source>
        <translation>scrivere US fl oz o imp fl oz: non sono uguali</translation>
    </message>
    <message>
        <source>write mpg(US) or mpg(imp): they differ by a fifth</source>
        <translation>scrivere mpg(US) o mpg(imp): differiscono di un quinto</translation>
    </message>
    <message>
        <source>write mohm for milliohm or Mohm for megaohm</source>
        <translation>scrivere mohm per milliohm o Mohm per megaohm</translation>
    </message>
    <message>
        <source>no limit is known: the value is kept without a verdict</source>
        <translation>nessun limite noto: il valore resta senza giudizio</translation>
    </message>
    <message>
        <source>the limit is in %1, the value in %2: what fits is %3</source>
        <translation>il limite è in %1, il valore in %2: va bene %3</translation>
    </message>
    <message>
        <source>no instrument or uncertainty is known: the value is kept without a verdict</source>
        <translation>strumento o incertezza non noti: il valore resta senza giudizio</translation>
    </message>
    <message>
        <source>the uncertainty is in %1: what fits is %2</source>
        <translation>l&apos;incertezza è in %1: va bene %2</translation>
    </message>
    <message>
        <source>the uncertainty must be above zero: no instrument is without error</source>
        <translation>l&apos;incertezza deve essere sopra zero: nessuno strumento è senza errore</translation>
    </message>
    <message>
        <source>the lower limit is above the upper one</source>
        <translation>il limite inferiore è sopra quello superiore</translation>
    </message>
    <message>
        <source>a torque wrench reads torque, not %1</source>
        <translation>una chiave dinamometrica legge coppia, non %1</translation>
    </message>
    <message>
        <source>class %1 does not exist: type I has A to E, type II A to G</source>
        <translation>la classe %1 non esiste: il tipo I va da A a E, il tipo II da A a G</translation>
    </message>
    <message>
        <source>(from memory: look at the certificate)</source>
        <translation>(a memoria: guardare il certificato)</translation>
    </message>
    <message>
        <source>%1 (from memory: look at the certificate)</source>
        <translation>%1 (a memoria: guardare il certificato)</translation>
    </message>
    <message>
        <source>tested by ISO 6789: worked %1 times at its largest torque, then read at %2 % of it</source>
        <translation>prova secondo ISO 6789: %1 azionamenti alla coppia massima, poi lettura al %2 % di essa</translation>
    </message>
    <message>
        <source>name: give the instrument one, as the shop calls it</source>
        <translation>nome: darne uno, come si dice in officina</translation>
    </message>
    <message>
        <source>range: the upper end must be above the lower one</source>
        <translation>campo: l&apos;estremo superiore deve stare sopra quello inferiore</translation>
    </message>
    <message>
        <source>resolution: give one division, or the last digit of the display</source>
        <translation>risoluzione: dare una divisione, o l&apos;ultima cifra del display</translation>
    </message>
    <message>
        <source>limit of error: its parts must not be negative</source>
        <translation>limite d&apos;errore: le sue parti non possono essere negative</translation>
    </message>
    <message>
        <source>limit of error: give it from the maker&apos;s sheet; it is never zero</source>
        <translation>limite d&apos;errore: darlo dal foglio del costruttore; non è mai zero</translation>
    </message>
    <message>
        <source>%1 reads %2: %3</source>
        <translation>%1 legge %2: %3</translation>
    </message>
    <message>
        <source>%1 reads from %2 to %3, not %4: use another instrument</source>
        <translation>%1 legge da %2 a %3, non %4: usare un altro strumento</translation>
    </message>
    <message>
        <source>limit of error, %1 % of the reading (%2)</source>
        <translation>limite d&apos;errore, %1 % della lettura (%2)</translation>
    </message>
    <message>
        <source>limit of error, %1 % of full scale (%2)</source>
        <translation>limite d&apos;errore, %1 % del fondo scala (%2)</translation>
    </message>
    <message>
        <source>limit of error, %1 digits (%2)</source>
        <translation>limite d&apos;errore, %1 cifre (%2)</translation>
    </message>
    <message>
        <source>limit of error (%1)</source>
        <translation>limite d&apos;errore (%1)</translation>
    </message>
    <message>
        <source>resolution, half a division</source>
        <translation>risoluzione, mezza divisione</translation>
    </message>
    <message>
        <source>feel of the hand</source>
        <translation>sensibilità della mano</translation>
    </message>
    <message>
        <source>%1: calibration was due on %2; its limit of error can no longer be relied on</source>
        <translation>%1: la taratura scadeva il %2; del suo limite d&apos;errore non ci si può più fidare</translation>
    </message>
    <message>
        <source>%1: no calibration is recorded</source>
        <translation>%1: nessuna taratura annotata</translation>
    </message>
    <message>
        <source>readings of different kinds: %1</source>
        <translation>letture di tipo diverso: %1</translation>
    </message>
    <message>
        <source>mean of %1 readings: %2, spread (standard deviation) %3</source>
        <translation>media di %1 letture: %2, dispersione (scarto tipo) %3</translation>
    </message>
    <message>
        <source>the limit is worked out here: the machine&apos;s manual wins</source>
        <translation>il limite è calcolato qui: vale prima il manuale</translation>
    </message>
    <message>
        <source>no reading was given</source>
        <translation>nessuna lettura data</translation>
    </message>
    <message>
        <source>uncertainty as given, k = 2</source>
        <translation>incertezza come data, k = 2</translation>
    </message>
    <message>
        <source>ordinary instrument, from memory: replace by the maker&apos;s sheet</source>
        <translation>strumento comune, a memoria: sostituire col foglio del costruttore</translation>
    </message>
    <message>
        <source>spread of %1 readings over root %2</source>
        <translation>dispersione di %1 letture su radice di %2</translation>
    </message>
    <message>
        <source>spread of %1 readings over root %2, widened for few readings</source>
        <translation>dispersione di %1 letture su radice di %2, allargata per le poche letture</translation>
    </message>
    <message>
        <source>a spread needs two readings or more; given: %1</source>
        <translation>una dispersione vuole due letture o più; date: %1</translation>
    </message>
    <message>
        <source>every reading must be a number</source>
        <translation>ogni lettura deve essere un numero</translation>
    </message>
    <message>
        <source>largest reading: %1</source>
        <translation>lettura massima: %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no date: write year, month and day such as 2026-11-25</source>
        <translation>&quot;%1&quot; non è una data: scrivere anno, mese e giorno, per esempio 2026-11-25</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no type and class of ISO 6789-1: write I A to I E for one that shows the torque, II A to II G for one that is set</source>
        <translation>&quot;%1&quot; non è un tipo e una classe di ISO 6789-1: scrivere da I A a I E per quella che mostra la coppia, da II A a II G per quella che si regola</translation>
    </message>
    <message>
        <source>must not be negative, given was &quot;%1&quot;</source>
        <translation>non può essere negativo, dato era &quot;%1&quot;</translation>
    </message>
    <message>
        <source>as the shop entered it</source>
        <translation>come inserito dall&apos;officina</translation>
    </message>
    <message>
        <source>is for torque wrenches alone: leave it empty</source>
        <translation>vale solo per chiavi dinamometriche: lasciare vuoto</translation>
    </message>
    <message>
        <source>must be after the day of calibration</source>
        <translation>deve venire dopo il giorno della taratura</translation>
    </message>
    <message>
        <source>%1 % of the reading</source>
        <translation>%1 % della lettura</translation>
    </message>
    <message>
        <source>%1 % of full scale</source>
        <translation>%1 % del fondo scala</translation>
    </message>
    <message>
        <source>%1 digits</source>
        <translation>%1 cifre</translation>
    </message>
    <message>
        <source>%1 + %2</source>
        <translation>%1 + %2</translation>
    </message>
    <message>
        <source>more than 99.9 %</source>
        <translation>più del 99,9 %</translation>
    </message>
    <message>
        <source>less than 0.1 %</source>
        <translation>meno dello 0,1 %</translation>
    </message>
    <message>
        <source>a better instrument: the limits are closer together than twice the uncertainty, so that no value could be accepted with this one</source>
        <translation>uno strumento migliore: i limiti distano meno del doppio dell&apos;incertezza, con questo nessun valore sarebbe accettabile</translation>
    </message>
    <message>
        <source>the value lies on the limit: no instrument will settle it; adjust or renew, then measure again</source>
        <translation>il valore sta sul limite: nessuno strumento lo chiarirà; regolare o sostituire, poi rimisurare</translation>
    </message>
    <message>
        <source>a better instrument: an expanded uncertainty below %1 would settle it</source>
        <translation>uno strumento migliore: un&apos;incertezza estesa sotto %1 lo chiarirebbe</translation>
    </message>
    <message>
        <source>more readings: about %1 in all, if their mean stays</source>
        <translation>più letture: circa %1 in tutto, se la media resta</translation>
    </message>
    <message>
        <source>measured %1, expanded uncertainty %2 (k = 2), standard %3</source>
        <translation>misurato %1, incertezza estesa %2 (k = 2), tipo %3</translation>
    </message>
    <message>
        <source>lower limit %1 moved inward by U (guard band, ISO 14253-1): accept from %2</source>
        <translation>limite inferiore %1 spostato in dentro di U (banda di guardia, ISO 14253-1): accettare da %2</translation>
    </message>
    <message>
        <source>upper limit %1 moved inward by U (guard band, ISO 14253-1): accept up to %2</source>
        <translation>limite superiore %1 spostato in dentro di U (banda di guardia, ISO 14253-1): accettare fino a %2</translation>
    </message>
    <message>
        <source>lower limit %1 as they stand (simple acceptance): accept from %2</source>
        <translation>limite inferiore %1 così com&apos;è (accettazione semplice): accettare da %2</translation>
    </message>
    <message>
        <source>upper limit %1 as they stand (simple acceptance): accept up to %2</source>
        <translation>limite superiore %1 così com&apos;è (accettazione semplice): accettare fino a %2</translation>
    </message>
    <message>
        <source>probability that the true value conforms (JCGM 106): %1</source>
        <translation>probabilità che il valore vero sia conforme (JCGM 106): %1</translation>
    </message>
    <message>
        <source>verdict: %1</source>
        <translation>giudizio: %1</translation>
    </message>
    <message>
        <source>manual, %1</source>
        <translation>manuale, %1</translation>
    </message>
    <message>
        <source>shop record, %1</source>
        <translation>dati dell&apos;officina, %1</translation>
    </message>
    <message>
        <source>standard, %1</source>
        <translation>norma, %1</translation>
    </message>
    <message>
        <source>worked out here, %1</source>
        <translation>calcolato qui, %1</translation>
    </message>
    <message>
        <source>combined standard uncertainty u = root of the sum of squares = %1</source>
        <translation>incertezza tipo composta u = radice della somma dei quadrati = %1</translation>
    </message>
    <message>
        <source>expanded uncertainty U = 2 u = %1 (k = 2, about 95 %)</source>
        <translation>incertezza estesa U = 2 u = %1 (k = 2, circa 95 %)</translation>
    </message>
    <message>
        <source>%1: %2, rectangular: divided by %3 gives u = %4</source>
        <translation>%1: %2, rettangolare: diviso %3 dà u = %4</translation>
    </message>
    <message>
        <source>%1: %2, triangular: divided by %3 gives u = %4</source>
        <translation>%1: %2, triangolare: diviso %3 dà u = %4</translation>
    </message>
    <message>
        <source>%1: %2, normal, k = 2: divided by %3 gives u = %4</source>
        <translation>%1: %2, normale, k = 2: diviso %3 dà u = %4</translation>
    </message>
    <message>
        <source>%1: %2, standard</source>
        <translation>%1: %2, tipo</translation>
    </message>
    <message>
        <source>%1 is not among the grades that the machine allows: %2</source>
        <translation>%1 non è tra i tipi ammessi dal mezzo: %2</translation>
    </message>
    <message>
        <source>Automatic with a belt</source>
        <translation>Automatico a cinghia</translation>
    </message>
    <message>
        <source>DOT 5 is silicone: it never mixes with DOT 3, 4 or 5.1</source>
        <translation>il DOT 5 è silicone: non si mescola mai con DOT 3, 4 o 5.1</translation>
    </message>
    <message>
        <source>Electric start</source>
        <translation>Avviamento elettrico</translation>
    </message>
    <message>
        <source>Every machine</source>
        <translation>Ogni mezzo</translation>
    </message>
    <message>
        <source>Four-stroke engine</source>
        <translation>Motore a quattro tempi</translation>
    </message>
    <message>
        <source>Front disc brake</source>
        <translation>Freno a disco anteriore</translation>
    </message>
    <message>
        <source>Front drum brake</source>
        <translation>Freno a tamburo anteriore</translation>
    </message>
    <message>
        <source>Gearbox with clutch</source>
        <translation>Cambio con frizione</translation>
    </message>
    <message>
        <source>Kick start</source>
        <translation>Avviamento a pedivella</translation>
    </message>
    <message>
        <source>Photos as found</source>
        <translation>Foto come trovato</translation>
    </message>
    <message>
        <source>Rear disc brake</source>
        <translation>Freno a disco posteriore</translation>
    </message>
    <message>
        <source>Rear drum brake</source>
        <translation>Freno a tamburo posteriore</translation>
    </message>
    <message>
        <source>Two-stroke engine</source>
        <translation>Motore a due tempi</translation>
    </message>
    <message>
        <source>What works when it comes in</source>
        <translation>Che cosa funziona all&apos;arrivo</translation>
    </message>
    <message>
        <source>absolute pressure</source>
        <translation>pressione assoluta</translation>
    </message>
    <message>
        <source>adjust the free play of the brake</source>
        <translation>regolare il gioco del freno</translation>
    </message>
    <message>
        <source>adjust the free play of the clutch</source>
        <translation>regolare il gioco della frizione</translation>
    </message>
    <message>
        <source>air filter: clean and seated</source>
        <translation>filtro aria: pulito e a posto</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>angolo</translation>
    </message>
    <message>
        <source>area</source>
        <translation>area</translation>
    </message>
    <message>
        <source>automatic</source>
        <translation>automatico</translation>
    </message>
    <message>
        <source>axle nuts: tight, secured as the maker secured them</source>
        <translation>dadi dei perni: stretti, assicurati come di fabbrica</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>nudo</translation>
    </message>
    <message>
        <source>base gasket</source>
        <translation>guarnizione di base</translation>
    </message>
    <message>
        <source>battery acid: goggles and gloves, water at hand, acid into water and never the other way</source>
        <translation>acido della batteria: occhiali e guanti, acqua a portata, acido nell&apos;acqua e mai il contrario</translation>
    </message>
    <message>
        <source>battery negative off first, on last</source>
        <translation>negativo della batteria via per primo, rimesso per ultimo</translation>
    </message>
    <message>
        <source>battery negative or chassis earth direct</source>
        <translation>negativo batteria o massa telaio diretta</translation>
    </message>
    <message>
        <source>battery positive direct (unswitched)</source>
        <translation>positivo batteria diretto (non sotto chiave)</translation>
    </message>
    <message>
        <source>battery: case whole, terminals clean, strapped down, vent hose in place</source>
        <translation>batteria: cassa intera, morsetti puliti, legata, tubo di sfiato a posto</translation>
    </message>
    <message>
        <source>belt: width and cracks, age</source>
        <translation>cinghia: larghezza e crepe, età</translation>
    </message>
    <message>
        <source>black</source>
        <translation>nero</translation>
    </message>
    <message>
        <source>blade</source>
        <translation>faston maschio</translation>
    </message>
    <message>
        <source>bleed the brake until the lever stays hard</source>
        <translation>spurgare il freno finché la leva resta dura</translation>
    </message>
    <message>
        <source>bleed the oil pump; set it to its mark</source>
        <translation>spurgare la pompa dell&apos;olio; metterla sul segno</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>blu</translation>
    </message>
    <message>
        <source>brake fluid eats paint and skin; only fresh fluid of the grade that the manual names</source>
        <translation>il liquido freni mangia vernice e pelle; solo fresco e del tipo indicato dal manuale</translation>
    </message>
    <message>
        <source>brake, front</source>
        <translation>freno davanti</translation>
    </message>
    <message>
        <source>brake, rear</source>
        <translation>freno dietro</translation>
    </message>
    <message>
        <source>breather hose: connected, not blocked</source>
        <translation>tubo di sfiato: collegato, non otturato</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>marrone</translation>
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
        <source>cables and hoses: nothing pulls tight from lock to lock</source>
        <translation>cavi e tubi: niente tira da un fermo all&apos;altro</translation>
    </message>
    <message>
        <source>caliper</source>
        <translation>calibro</translation>
    </message>
    <message>
        <source>centre the shoes and adjust the free play of the brake</source>
        <translation>centrare le ganasce e regolare il gioco del freno</translation>
    </message>
    <message>
        <source>chain guard: in place</source>
        <translation>paracatena: a posto</translation>
    </message>
    <message>
        <source>charge warning lamp</source>
        <translation>spia di carica</translation>
    </message>
    <message>
        <source>charges</source>
        <translation>ricarica</translation>
    </message>
    <message>
        <source>charging: voltage at the battery rises with the engine running</source>
        <translation>ricarica: la tensione alla batteria sale a motore acceso</translation>
    </message>
    <message>
        <source>chassis</source>
        <translation>ciclistica</translation>
    </message>
    <message>
        <source>circlips of the pin</source>
        <translation>anelli di fermo dello spinotto</translation>
    </message>
    <message>
        <source>clutch</source>
        <translation>frizione</translation>
    </message>
    <message>
        <source>clutch: lever play right, frees and bites without dragging</source>
        <translation>frizione: gioco della leva giusto, stacca e attacca senza trascinare</translation>
    </message>
    <message>
        <source>compression-gauge</source>
        <translation>provacompressione</translation>
    </message>
    <message>
        <source>connector</source>
        <translation>connettore</translation>
    </message>
    <message>
        <source>consumption</source>
        <translation>consumo</translation>
    </message>
    <message>
        <source>controls</source>
        <translation>comandi</translation>
    </message>
    <message>
        <source>copper paste on the studs</source>
        <translation>pasta al rame sui prigionieri</translation>
    </message>
    <message>
        <source>cover and its seal: in place, the cooling air free</source>
        <translation>carter e sua guarnizione: a posto, aria di raffreddamento libera</translation>
    </message>
    <message>
        <source>crush washers of the banjo</source>
        <translation>rondelle di tenuta del raccordo a occhio</translation>
    </message>
    <message>
        <source>crush washers of the banjo, if it was opened</source>
        <translation>rondelle di tenuta del raccordo a occhio, se è stato aperto</translation>
    </message>
    <message>
        <source>current</source>
        <translation>corrente</translation>
    </message>
    <message>
        <source>cylinder base and crankshaft seals: dry</source>
        <translation>base cilindro e paraoli albero: asciutti</translation>
    </message>
    <message>
        <source>damage that was there</source>
        <translation>danni che c&apos;erano già</translation>
    </message>
    <message>
        <source>density</source>
        <translation>densità</translation>
    </message>
    <message>
        <source>depth-gauge</source>
        <translation>profondimetro</translation>
    </message>
    <message>
        <source>dipped (low) beam</source>
        <translation>anabbagliante</translation>
    </message>
    <message>
        <source>do not ride before the brake is proved; the machine&apos;s manual and licensed practice come first</source>
        <translation>non guidare prima che il freno sia verificato; il manuale e la buona regola d&apos;arte vengono prima</translation>
    </message>
    <message>
        <source>do not ride yet: %1 (%2)</source>
        <translation>non guidare ancora: %1 (%2)</translation>
    </message>
    <message>
        <source>do not ride: %1 is not on again</source>
        <translation>non guidare: %1 non è rimontato</translation>
    </message>
    <message>
        <source>do not start yet: %1 (%2)</source>
        <translation>non avviare ancora: %1 (%2)</translation>
    </message>
    <message>
        <source>do not start: %1 is not on again</source>
        <translation>non avviare: %1 non è rimontato</translation>
    </message>
    <message>
        <source>drive: takes up smoothly, no squeal, no slip</source>
        <translation>trasmissione: prende dolce, non fischia, non slitta</translation>
    </message>
    <message>
        <source>dynamo field</source>
        <translation>dinamo, eccitazione</translation>
    </message>
    <message>
        <source>dynamo negative</source>
        <translation>dinamo, negativo</translation>
    </message>
    <message>
        <source>dynamo or generator positive to regulator</source>
        <translation>dinamo o alternatore, positivo al regolatore</translation>
    </message>
    <message>
        <source>each wire read back against the map: %1</source>
        <translation>ogni filo riletto sullo schema: %1</translation>
    </message>
    <message>
        <source>electric charge</source>
        <translation>carica elettrica</translation>
    </message>
    <message>
        <source>electric motor main connection</source>
        <translation>motore elettrico, alimentazione</translation>
    </message>
    <message>
        <source>electric motor return line</source>
        <translation>motore elettrico, ritorno</translation>
    </message>
    <message>
        <source>electric start</source>
        <translation>avviamento elettrico</translation>
    </message>
    <message>
        <source>electrics</source>
        <translation>impianto elettrico</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>energia</translation>
    </message>
    <message>
        <source>engine</source>
        <translation>motore</translation>
    </message>
    <message>
        <source>engine and exhaust</source>
        <translation>motore e scarico</translation>
    </message>
    <message>
        <source>engine oil: level, no fuel or water in it</source>
        <translation>olio motore: livello, niente benzina o acqua dentro</translation>
    </message>
    <message>
        <source>engine, left side</source>
        <translation>motore, lato sinistro</translation>
    </message>
    <message>
        <source>engine, right side</source>
        <translation>motore, lato destro</translation>
    </message>
    <message>
        <source>engine: no leaks, mounts tight</source>
        <translation>motore: nessuna perdita, supporti stretti</translation>
    </message>
    <message>
        <source>every fastener in and tight: %1 (%2)</source>
        <translation>ogni vite al suo posto e stretta: %1 (%2)</translation>
    </message>
    <message>
        <source>everyday plug-in relay: normally closed output</source>
        <translation>relè comune a innesto: uscita normalmente chiusa</translation>
    </message>
    <message>
        <source>everyday plug-in relay: switched output (normally open)</source>
        <translation>relè comune a innesto: uscita commutata (normalmente aperta)</translation>
    </message>
    <message>
        <source>exhaust gasket</source>
        <translation>guarnizione dello scarico</translation>
    </message>
    <message>
        <source>exhaust port and silencer: not choked with carbon</source>
        <translation>luce di scarico e marmitta: non incrostate</translation>
    </message>
    <message>
        <source>exhaust: no leaks, fastened, heat shield in place</source>
        <translation>scarico: nessuna perdita, fissato, paracalore a posto</translation>
    </message>
    <message>
        <source>feeler gauge</source>
        <translation>spessimetro</translation>
    </message>
    <message>
        <source>feeler-gauge</source>
        <translation>spessimetro</translation>
    </message>
    <message>
        <source>fill and bleed the cooling</source>
        <translation>riempire e spurgare il raffreddamento</translation>
    </message>
    <message>
        <source>fill with oil and look at the level</source>
        <translation>mettere l&apos;olio e guardare il livello</translation>
    </message>
    <message>
        <source>filled again, level right, no leak: %1 (let out: %2)</source>
        <translation>riempito, livello giusto, nessuna perdita: %1 (scaricato: %2)</translation>
    </message>
    <message>
        <source>final drive chain: slack right at its tightest place, no stiff links</source>
        <translation>catena: tensione giusta nel punto più teso, nessuna maglia dura</translation>
    </message>
    <message>
        <source>final drive oil: level, no leak at the wheel shaft</source>
        <translation>olio riduttore: livello, nessuna perdita all&apos;albero ruota</translation>
    </message>
    <message>
        <source>flasher output, second circuit</source>
        <translation>intermittenza, uscita del secondo circuito</translation>
    </message>
    <message>
        <source>flasher unit input</source>
        <translation>intermittenza, ingresso</translation>
    </message>
    <message>
        <source>flasher unit output (pulsed) to the indicator switch</source>
        <translation>intermittenza, uscita (a impulsi) al commutatore frecce</translation>
    </message>
    <message>
        <source>fog lamp</source>
        <translation>fendinebbia</translation>
    </message>
    <message>
        <source>force</source>
        <translation>forza</translation>
    </message>
    <message>
        <source>fork</source>
        <translation>forcella</translation>
    </message>
    <message>
        <source>four-stroke</source>
        <translation>quattro tempi</translation>
    </message>
    <message>
        <source>frame number</source>
        <translation>numero di telaio</translation>
    </message>
    <message>
        <source>frame number: readable, the same as in the papers</source>
        <translation>numero di telaio: leggibile, uguale ai documenti</translation>
    </message>
    <message>
        <source>frame: no cracks at the welds, steering head and swing arm pivot</source>
        <translation>telaio: nessuna crepa a saldature, cannotto e perno forcellone</translation>
    </message>
    <message>
        <source>from behind</source>
        <translation>da dietro</translation>
    </message>
    <message>
        <source>from the front</source>
        <translation>da davanti</translation>
    </message>
    <message>
        <source>from the left</source>
        <translation>da sinistra</translation>
    </message>
    <message>
        <source>from the right</source>
        <translation>da destra</translation>
    </message>
    <message>
        <source>front brake</source>
        <translation>freno anteriore</translation>
    </message>
    <message>
        <source>front disc brake: disc thickness and run-out, no cracks</source>
        <translation>disco anteriore: spessore e oscillazione del disco, nessuna crepa</translation>
    </message>
    <message>
        <source>front disc brake: hose and fittings dry, not cracked, fluid level and its age</source>
        <translation>disco anteriore: tubo e raccordi asciutti, non crepati, livello ed età del liquido</translation>
    </message>
    <message>
        <source>front disc brake: lever or pedal firm, does not creep under pressure</source>
        <translation>disco anteriore: leva o pedale duri, non cedono in pressione</translation>
    </message>
    <message>
        <source>front disc brake: pads, both sides</source>
        <translation>disco anteriore: pastiglie, dai due lati</translation>
    </message>
    <message>
        <source>front drum brake: cable or rod, adjuster and return spring</source>
        <translation>tamburo anteriore: cavo o asta, registro e molla di ritorno</translation>
    </message>
    <message>
        <source>front drum brake: holds, lets go at once, does not grab</source>
        <translation>tamburo anteriore: tiene, si libera subito, non morde</translation>
    </message>
    <message>
        <source>front drum brake: lever or pedal travel and wear mark of the cam</source>
        <translation>tamburo anteriore: corsa della leva o del pedale e segno d&apos;usura della camma</translation>
    </message>
    <message>
        <source>front fork: no play, dry stanchions, springs back smoothly</source>
        <translation>forcella: nessun gioco, steli asciutti, torna dolce</translation>
    </message>
    <message>
        <source>front tyre, date code</source>
        <translation>pneumatico anteriore, codice data</translation>
    </message>
    <message>
        <source>front tyre: tread, age by its date code, no cracks, the size that the papers name</source>
        <translation>pneumatico anteriore: battistrada, età dal codice DOT, nessuna crepa, misura come da libretto</translation>
    </message>
    <message>
        <source>front wheel: bearing without play, rim true, spokes or bolts tight</source>
        <translation>ruota anteriore: cuscinetto senza gioco, cerchio dritto, raggi o bulloni stretti</translation>
    </message>
    <message>
        <source>fuel and air</source>
        <translation>carburante e aria</translation>
    </message>
    <message>
        <source>fuel off and away from sparks; no flame, rags in a closed tin</source>
        <translation>benzina chiusa e lontana da scintille; niente fiamme, stracci in una scatola chiusa</translation>
    </message>
    <message>
        <source>fuel on: no drip for five minutes</source>
        <translation>benzina aperta: nessuna goccia per cinque minuti</translation>
    </message>
    <message>
        <source>fuel on: no drip for five minutes; throttle snaps shut</source>
        <translation>benzina aperta: nessuna goccia per cinque minuti; il gas torna di scatto</translation>
    </message>
    <message>
        <source>fuel tank, tap and hoses: dry, not cracked, cap vents</source>
        <translation>serbatoio, rubinetto e tubi: asciutti, non crepati, il tappo sfiata</translation>
    </message>
    <message>
        <source>fuse: of the right value, no wire in its place</source>
        <translation>fusibile: del valore giusto, niente filo al suo posto</translation>
    </message>
    <message>
        <source>gasket and oil seals</source>
        <translation>guarnizione e paraoli</translation>
    </message>
    <message>
        <source>gasket and seal</source>
        <translation>guarnizione e paraolio</translation>
    </message>
    <message>
        <source>gaskets of the inlet</source>
        <translation>guarnizioni dell&apos;aspirazione</translation>
    </message>
    <message>
        <source>gauge pressure</source>
        <translation>pressione relativa</translation>
    </message>
    <message>
        <source>gearbox oil: level, clean</source>
        <translation>olio cambio: livello, pulito</translation>
    </message>
    <message>
        <source>gears</source>
        <translation>marce</translation>
    </message>
    <message>
        <source>gears and chain</source>
        <translation>marce e catena</translation>
    </message>
    <message>
        <source>gears: all engage and stay in, neutral is found</source>
        <translation>marce: entrano e restano tutte, la folle si trova</translation>
    </message>
    <message>
        <source>generator output, battery positive</source>
        <translation>uscita generatore, positivo batteria</translation>
    </message>
    <message>
        <source>generator, battery negative</source>
        <translation>generatore, negativo batteria</translation>
    </message>
    <message>
        <source>grease on the bushes</source>
        <translation>grasso sulle boccole</translation>
    </message>
    <message>
        <source>grease on the cam only, none near the linings</source>
        <translation>grasso solo sulla camma, niente vicino alle guarnizioni</translation>
    </message>
    <message>
        <source>green</source>
        <translation>verde</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>grigio</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>consegnato</translation>
    </message>
    <message>
        <source>handlebar, left side</source>
        <translation>manubrio, lato sinistro</translation>
    </message>
    <message>
        <source>handlebar, levers and grips: tight, free of cracks, ends closed</source>
        <translation>manubrio, leve e manopole: fermi, senza crepe, estremità chiuse</translation>
    </message>
    <message>
        <source>handlebar, right side</source>
        <translation>manubrio, lato destro</translation>
    </message>
    <message>
        <source>head gasket</source>
        <translation>guarnizione della testa</translation>
    </message>
    <message>
        <source>headlamp feed</source>
        <translation>alimentazione faro</translation>
    </message>
    <message>
        <source>headlamp, high beam</source>
        <translation>faro, abbagliante</translation>
    </message>
    <message>
        <source>headlamp, low beam</source>
        <translation>faro, anabbagliante</translation>
    </message>
    <message>
        <source>headlamp: low and high beam, tell-tale, aim</source>
        <translation>faro: anabbagliante e abbagliante, spia, orientamento</translation>
    </message>
    <message>
        <source>horn</source>
        <translation>clacson</translation>
    </message>
    <message>
        <source>horn: loud and clear</source>
        <translation>clacson: forte e chiaro</translation>
    </message>
    <message>
        <source>hose clips that have lost their spring</source>
        <translation>fascette che hanno perso la molla</translation>
    </message>
    <message>
        <source>hydrometer</source>
        <translation>densimetro</translation>
    </message>
    <message>
        <source>idle: the rear wheel does not creep when it stands on the ground</source>
        <translation>minimo: la ruota posteriore a terra non trascina</translation>
    </message>
    <message>
        <source>idles and takes the throttle</source>
        <translation>tiene il minimo e prende il gas</translation>
    </message>
    <message>
        <source>ignition coil high-tension output</source>
        <translation>bobina, uscita alta tensione</translation>
    </message>
    <message>
        <source>ignition coil or contact breaker, low-tension side</source>
        <translation>bobina o ruttore, lato bassa tensione</translation>
    </message>
    <message>
        <source>ignition off; high tension can hurt: stop the engine before you touch a lead</source>
        <translation>accensione spenta; l&apos;alta tensione può ferire: fermare il motore prima di toccare un cavo</translation>
    </message>
    <message>
        <source>ignition switch and stop switch: stop the engine</source>
        <translation>blocchetto d&apos;accensione e interruttore d&apos;arresto: fermano il motore</translation>
    </message>
    <message>
        <source>in another currency, not in the sum: %1, %2 %3</source>
        <translation>in altra valuta, non nella somma: %1, %2 %3</translation>
    </message>
    <message>
        <source>instrument lamps</source>
        <translation>luci strumenti</translation>
    </message>
    <message>
        <source>instruments and odometer</source>
        <translation>strumenti e contachilometri</translation>
    </message>
    <message>
        <source>kick start</source>
        <translation>avviamento a pedivella</translation>
    </message>
    <message>
        <source>kick start: engages, springs back, does not slip</source>
        <translation>pedivella: prende, torna con la molla, non slitta</translation>
    </message>
    <message>
        <source>lamps</source>
        <translation>luci</translation>
    </message>
    <message>
        <source>left direction indicators</source>
        <translation>frecce sinistre</translation>
    </message>
    <message>
        <source>left out: %1 (%2)</source>
        <translation>tralasciato: %1 (%2)</translation>
    </message>
    <message>
        <source>length</source>
        <translation>lunghezza</translation>
    </message>
    <message>
        <source>let the exhaust and the engine cool down first</source>
        <translation>lasciar raffreddare prima scarico e motore</translation>
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
        <source>lights and signals</source>
        <translation>luci e segnali</translation>
    </message>
    <message>
        <source>look at the oil level</source>
        <translation>guardare il livello dell&apos;olio</translation>
    </message>
    <message>
        <source>loom: no bare or twisted wires, no chafing at the steering head</source>
        <translation>cablaggio: nessun filo nudo o attorcigliato, niente sfrega al cannotto</translation>
    </message>
    <message>
        <source>loose terminals</source>
        <translation>terminali sciolti</translation>
    </message>
    <message>
        <source>magneto-generator alternating-current output or rectifier input</source>
        <translation>volano magnete, uscita alternata o ingresso raddrizzatore</translation>
    </message>
    <message>
        <source>magneto-generator charging-coil output</source>
        <translation>volano magnete, uscita bobina di carica</translation>
    </message>
    <message>
        <source>main (high) beam and its tell-tale</source>
        <translation>abbagliante e sua spia</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>manuale</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>massa</translation>
    </message>
    <message>
        <source>mating face</source>
        <translation>lato innesto</translation>
    </message>
    <message>
        <source>micrometer</source>
        <translation>micrometro</translation>
    </message>
    <message>
        <source>mirrors: whole, stay where they are set</source>
        <translation>specchi: interi, restano come si mettono</translation>
    </message>
    <message>
        <source>move it by hand: no side play</source>
        <translation>muoverlo a mano: nessun gioco laterale</translation>
    </message>
    <message>
        <source>moves freely at both locks, free play right: %1</source>
        <translation>libero a fine sterzata dai due lati, gioco giusto: %1</translation>
    </message>
    <message>
        <source>multimeter</source>
        <translation>multimetro</translation>
    </message>
    <message>
        <source>negative lead on last; tight, and covered</source>
        <translation>negativo per ultimo; stretto e coperto</translation>
    </message>
    <message>
        <source>next: %1 (%2)</source>
        <translation>poi: %1 (%2)</translation>
    </message>
    <message>
        <source>next: go on stripping, or refit: %1</source>
        <translation>poi: continuare a smontare, o rimontare: %1</translation>
    </message>
    <message>
        <source>next: look it over, or strip the first part</source>
        <translation>poi: controllarlo, o smontare il primo pezzo</translation>
    </message>
    <message>
        <source>next: photos as found, and what works</source>
        <translation>poi: foto come trovato, e che cosa funziona</translation>
    </message>
    <message>
        <source>next: prove it and hand it over</source>
        <translation>poi: verificare e consegnare</translation>
    </message>
    <message>
        <source>next: refit %1</source>
        <translation>poi: rimontare %1</translation>
    </message>
    <message>
        <source>next: refit %1, bag %2</source>
        <translation>poi: rimontare %1, sacchetto %2</translation>
    </message>
    <message>
        <source>next: settle what is unsafe: %1</source>
        <translation>poi: risolvere il pericolo: %1</translation>
    </message>
    <message>
        <source>no compressed air on old brake dust; mask, wipe wet</source>
        <translation>niente aria compressa sulla vecchia polvere dei freni; mascherina, pulire a umido</translation>
    </message>
    <message>
        <source>no leaks</source>
        <translation>nessuna perdita</translation>
    </message>
    <message>
        <source>no price is known: %1</source>
        <translation>nessun prezzo noto: %1</translation>
    </message>
    <message>
        <source>nobody knows when the container was opened: brake fluid draws water, take a fresh one</source>
        <translation>nessuno sa quando è stato aperto il contenitore: il liquido freni assorbe acqua, prenderne uno nuovo</translation>
    </message>
    <message>
        <source>none</source>
        <translation>niente</translation>
    </message>
    <message>
        <source>not done yet: %1 (%2)</source>
        <translation>non ancora fatto: %1 (%2)</translation>
    </message>
    <message>
        <source>not proved, left out: %1 (%2)</source>
        <translation>non verificato, tralasciato: %1 (%2)</translation>
    </message>
    <message>
        <source>not proved: %1</source>
        <translation>non verificato: %1</translation>
    </message>
    <message>
        <source>nothing open</source>
        <translation>niente in sospeso</translation>
    </message>
    <message>
        <source>number</source>
        <translation>numero</translation>
    </message>
    <message>
        <source>number plate lamp</source>
        <translation>luce targa</translation>
    </message>
    <message>
        <source>oil</source>
        <translation>olio</translation>
    </message>
    <message>
        <source>oil on its lip</source>
        <translation>olio sul suo labbro</translation>
    </message>
    <message>
        <source>oil on the bore</source>
        <translation>olio sulla canna</translation>
    </message>
    <message>
        <source>oil pump: turns with the throttle, marks meet, or is blanked off knowingly</source>
        <translation>pompa dell&apos;olio: gira col gas, i segni coincidono, o esclusa apposta</translation>
    </message>
    <message>
        <source>oil: tank filled and its hose full, or the tank holds premix</source>
        <translation>olio: serbatoio pieno e tubo pieno, oppure miscela nel serbatoio</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>arancione</translation>
    </message>
    <message>
        <source>other instrument</source>
        <translation>altro strumento</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>fuori</translation>
    </message>
    <message>
        <source>papers and frame</source>
        <translation>documenti e telaio</translation>
    </message>
    <message>
        <source>parking lamp</source>
        <translation>luce di parcheggio</translation>
    </message>
    <message>
        <source>parking lamp, left</source>
        <translation>luce di parcheggio sinistra</translation>
    </message>
    <message>
        <source>parking lamp, right</source>
        <translation>luce di parcheggio destra</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>pin</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>power</source>
        <translation>potenza</translation>
    </message>
    <message>
        <source>pressure difference</source>
        <translation>differenza di pressione</translation>
    </message>
    <message>
        <source>pressure gauge</source>
        <translation>manometro</translation>
    </message>
    <message>
        <source>pump the lever until the brake holds; bleed it if the hose was opened</source>
        <translation>pompare con la leva finché il freno tiene; spurgare se il tubo è stato aperto</translation>
    </message>
    <message>
        <source>push the fork down: it comes back smoothly and nothing leaks</source>
        <translation>premere la forcella: torna dolce e niente perde</translation>
    </message>
    <message>
        <source>push the tail down: nothing touches or knocks</source>
        <translation>premere la coda: niente tocca o batte</translation>
    </message>
    <message>
        <source>rear brake</source>
        <translation>freno posteriore</translation>
    </message>
    <message>
        <source>rear disc brake: disc thickness and run-out, no cracks</source>
        <translation>disco posteriore: spessore e oscillazione del disco, nessuna crepa</translation>
    </message>
    <message>
        <source>rear disc brake: hose and fittings dry, not cracked, fluid level and its age</source>
        <translation>disco posteriore: tubo e raccordi asciutti, non crepati, livello ed età del liquido</translation>
    </message>
    <message>
        <source>rear disc brake: lever or pedal firm, does not creep under pressure</source>
        <translation>disco posteriore: leva o pedale duri, non cedono in pressione</translation>
    </message>
    <message>
        <source>rear disc brake: pads, both sides</source>
        <translation>disco posteriore: pastiglie, dai due lati</translation>
    </message>
    <message>
        <source>rear drum brake: cable or rod, adjuster and return spring</source>
        <translation>tamburo posteriore: cavo o asta, registro e molla di ritorno</translation>
    </message>
    <message>
        <source>rear drum brake: holds, lets go at once, does not grab</source>
        <translation>tamburo posteriore: tiene, si libera subito, non morde</translation>
    </message>
    <message>
        <source>rear drum brake: lever or pedal travel and wear mark of the cam</source>
        <translation>tamburo posteriore: corsa della leva o del pedale e segno d&apos;usura della camma</translation>
    </message>
    <message>
        <source>rear suspension: no play in the bushes, damper dry</source>
        <translation>sospensione posteriore: boccole senza gioco, ammortizzatore asciutto</translation>
    </message>
    <message>
        <source>rear tyre, date code</source>
        <translation>pneumatico posteriore, codice data</translation>
    </message>
    <message>
        <source>rear tyre: tread, age by its date code, no cracks, the size that the papers name</source>
        <translation>pneumatico posteriore: battistrada, età dal codice DOT, nessuna crepa, misura come da libretto</translation>
    </message>
    <message>
        <source>rear wheel: bearing without play, rim true, spokes or bolts tight</source>
        <translation>ruota posteriore: cuscinetto senza gioco, cerchio dritto, raggi o bulloni stretti</translation>
    </message>
    <message>
        <source>receptacle</source>
        <translation>faston femmina</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rosso</translation>
    </message>
    <message>
        <source>reflectors: there and whole</source>
        <translation>catadiottri: ci sono e interi</translation>
    </message>
    <message>
        <source>relay coil end (to earth side)</source>
        <translation>bobina relè, fine (verso massa)</translation>
    </message>
    <message>
        <source>relay coil start (feed side)</source>
        <translation>bobina relè, inizio (alimentazione)</translation>
    </message>
    <message>
        <source>resistance</source>
        <translation>resistenza</translation>
    </message>
    <message>
        <source>right direction indicators</source>
        <translation>frecce destre</translation>
    </message>
    <message>
        <source>ring</source>
        <translation>occhiello</translation>
    </message>
    <message>
        <source>rotational speed</source>
        <translation>regime</translation>
    </message>
    <message>
        <source>round not finished: %1, %2 checks without an answer</source>
        <translation>giro non finito: %1, %2 controlli senza risposta</translation>
    </message>
    <message>
        <source>round the machine</source>
        <translation>intorno al mezzo</translation>
    </message>
    <message>
        <source>runs as on its photo, clipped, dry under pressure: %1</source>
        <translation>passa come nella foto, fissato, asciutto in pressione: %1</translation>
    </message>
    <message>
        <source>sealing washer of the plug</source>
        <translation>rondella di tenuta del tappo</translation>
    </message>
    <message>
        <source>self-locking nut of its axle</source>
        <translation>dado autobloccante del suo perno</translation>
    </message>
    <message>
        <source>self-locking nut or split pin of the axle</source>
        <translation>dado autobloccante o copiglia del perno</translation>
    </message>
    <message>
        <source>self-locking nuts of the shock</source>
        <translation>dadi autobloccanti dell&apos;ammortizzatore</translation>
    </message>
    <message>
        <source>set the pressure cold</source>
        <translation>regolare la pressione a freddo</translation>
    </message>
    <message>
        <source>set the slack of the chain; clip closed to the front</source>
        <translation>regolare la tensione della catena; molletta col lato chiuso in avanti</translation>
    </message>
    <message>
        <source>shared earth</source>
        <translation>massa comune</translation>
    </message>
    <message>
        <source>shop record</source>
        <translation>dati dell&apos;officina</translation>
    </message>
    <message>
        <source>short-circuit (kill) terminal of a magneto ignition</source>
        <translation>morsetto di massa (arresto) di un&apos;accensione a magnete</translation>
    </message>
    <message>
        <source>side or position lamp on motorcycles and mopeds</source>
        <translation>luce di posizione su motocicli e ciclomotori</translation>
    </message>
    <message>
        <source>signals</source>
        <translation>segnali</translation>
    </message>
    <message>
        <source>sits as it did, nothing left over: %1</source>
        <translation>sta come stava, niente avanza: %1</translation>
    </message>
    <message>
        <source>socket</source>
        <translation>presa</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>velocità</translation>
    </message>
    <message>
        <source>splice</source>
        <translation>giunzione</translation>
    </message>
    <message>
        <source>spring clip of the joining link</source>
        <translation>molletta della maglia di giunzione</translation>
    </message>
    <message>
        <source>springs under load: hold them before the last bolt comes out</source>
        <translation>molle in carico: tenerle prima che esca l&apos;ultima vite</translation>
    </message>
    <message>
        <source>sprockets: teeth not hooked, nuts secured</source>
        <translation>corona e pignone: denti non uncinati, dadi assicurati</translation>
    </message>
    <message>
        <source>stand: springs back, holds the machine upright</source>
        <translation>cavalletto: torna con la molla, tiene dritto il mezzo</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>norma</translation>
    </message>
    <message>
        <source>starter control (solenoid pull-in)</source>
        <translation>comando avviamento (eccitazione del solenoide)</translation>
    </message>
    <message>
        <source>starter relay output or starter input (main current)</source>
        <translation>uscita del relè d&apos;avviamento o ingresso del motorino (corrente principale)</translation>
    </message>
    <message>
        <source>starter: turns the engine at once, disengages</source>
        <translation>motorino d&apos;avviamento: gira subito il motore, si disinnesta</translation>
    </message>
    <message>
        <source>starting interlock: starts only with the brake pulled, the clutch pulled or in neutral, as built</source>
        <translation>blocco d&apos;avviamento: parte solo a freno tirato, frizione tirata o in folle, secondo il modello</translation>
    </message>
    <message>
        <source>starts</source>
        <translation>parte</translation>
    </message>
    <message>
        <source>steering</source>
        <translation>sterzo</translation>
    </message>
    <message>
        <source>steering and wheels without play</source>
        <translation>sterzo e ruote senza gioco</translation>
    </message>
    <message>
        <source>steering head: no play, no notch, no tight spot</source>
        <translation>cannotto: nessun gioco, nessuno scatto, nessun punto duro</translation>
    </message>
    <message>
        <source>stop lamp</source>
        <translation>luce stop</translation>
    </message>
    <message>
        <source>stop lamp, front lever</source>
        <translation>luce stop, leva anteriore</translation>
    </message>
    <message>
        <source>stop lamp, rear</source>
        <translation>luce stop, posteriore</translation>
    </message>
    <message>
        <source>stop lamp: from the front lever and from the rear lever or pedal</source>
        <translation>luce stop: dalla leva anteriore e dalla leva o pedale posteriore</translation>
    </message>
    <message>
        <source>stopped after a photo</source>
        <translation>fermo dopo una foto</translation>
    </message>
    <message>
        <source>stopped after measuring: %1</source>
        <translation>fermo dopo la misura: %1</translation>
    </message>
    <message>
        <source>stopped after noting: %1</source>
        <translation>fermo dopo il rilievo: %1</translation>
    </message>
    <message>
        <source>stopped after refitting: %1</source>
        <translation>fermo dopo il rimontaggio: %1</translation>
    </message>
    <message>
        <source>stopped after: %1</source>
        <translation>fermo dopo: %1</translation>
    </message>
    <message>
        <source>stopped at the part: %1</source>
        <translation>fermo al ricambio: %1</translation>
    </message>
    <message>
        <source>stopped at the wiring of: %1</source>
        <translation>fermo ai fili di: %1</translation>
    </message>
    <message>
        <source>strap the machine on the lift before weight comes off</source>
        <translation>legare il mezzo sul ponte prima di togliere peso</translation>
    </message>
    <message>
        <source>stress</source>
        <translation>sollecitazione</translation>
    </message>
    <message>
        <source>suspension</source>
        <translation>sospensioni</translation>
    </message>
    <message>
        <source>swing arm or engine mount: no side play</source>
        <translation>forcellone o supporto motore: nessun gioco laterale</translation>
    </message>
    <message>
        <source>switched battery positive (output of the ignition switch)</source>
        <translation>positivo sotto chiave (uscita del blocchetto d&apos;accensione)</translation>
    </message>
    <message>
        <source>switched earth: return to negative through a switch or relay</source>
        <translation>massa commutata: ritorno al negativo tramite interruttore o relè</translation>
    </message>
    <message>
        <source>switched positive after a ballast resistor</source>
        <translation>positivo sotto chiave dopo la resistenza di zavorra</translation>
    </message>
    <message>
        <source>tail lamp</source>
        <translation>luce di coda</translation>
    </message>
    <message>
        <source>tail lamp and number plate lamp</source>
        <translation>luce di coda e luce targa</translation>
    </message>
    <message>
        <source>tail or side lighting, left</source>
        <translation>luce di coda o posizione sinistra</translation>
    </message>
    <message>
        <source>tail or side lighting, right</source>
        <translation>luce di coda o posizione destra</translation>
    </message>
    <message>
        <source>tail, side-marker, number-plate and instrument lighting</source>
        <translation>luci di coda, ingombro, targa e strumenti</translation>
    </message>
    <message>
        <source>taken in, nothing done yet</source>
        <translation>accettato, ancora niente fatto</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>temperature difference</source>
        <translation>differenza di temperatura</translation>
    </message>
    <message>
        <source>terminal grease</source>
        <translation>grasso per morsetti</translation>
    </message>
    <message>
        <source>the container cannot have been opened on %1: that day is to come</source>
        <translation>il contenitore non può essere stato aperto il %1: quel giorno deve ancora venire</translation>
    </message>
    <message>
        <source>the container was opened %1 days ago, on %2: brake fluid draws water, take a fresh one</source>
        <translation>il contenitore è stato aperto %1 giorni fa, il %2: il liquido freni assorbe acqua, prenderne uno nuovo</translation>
    </message>
    <message>
        <source>the day of opening is not clear: write it as 2026-11-02</source>
        <translation>il giorno di apertura non è chiaro: scriverlo come 2026-11-02</translation>
    </message>
    <message>
        <source>the grade of what goes in is not said: read it off the container</source>
        <translation>il tipo di ciò che si mette non è detto: leggerlo sul contenitore</translation>
    </message>
    <message>
        <source>the machine&apos;s grade is not known: read it off the reservoir&apos;s lid or the manual first</source>
        <translation>il tipo del mezzo non è noto: leggerlo prima sul coperchio del serbatoio o nel manuale</translation>
    </message>
    <message>
        <source>the seal</source>
        <translation>il paraolio</translation>
    </message>
    <message>
        <source>the sum is too large to reckon with: %1</source>
        <translation>la somma è troppo grande per il conto: %1</translation>
    </message>
    <message>
        <source>the watch still runs: %1</source>
        <translation>il tempo corre ancora: %1</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>termometro</translation>
    </message>
    <message>
        <source>thin grease on the axle</source>
        <translation>un velo di grasso sul perno</translation>
    </message>
    <message>
        <source>throttle: free play set, and it snaps shut in every place of the bars</source>
        <translation>gas: gioco regolato, e torna di scatto in ogni posizione del manubrio</translation>
    </message>
    <message>
        <source>throttle: snaps shut by itself at every steering angle</source>
        <translation>gas: torna da solo di scatto a ogni angolo di sterzo</translation>
    </message>
    <message>
        <source>tightened to the torque and read: %1 (%2)</source>
        <translation>serrato alla coppia e letto: %1 (%2)</translation>
    </message>
    <message>
        <source>time</source>
        <translation>tempo</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>al limite</translation>
    </message>
    <message>
        <source>top end: no ticking valve, chain tensioner quiet</source>
        <translation>testata: nessuna valvola che batte, tendicatena silenzioso</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>coppia</translation>
    </message>
    <message>
        <source>torque wrench</source>
        <translation>chiave dinamometrica</translation>
    </message>
    <message>
        <source>torque-wrench-100</source>
        <translation>chiave dinamometrica 100</translation>
    </message>
    <message>
        <source>torque-wrench-200</source>
        <translation>chiave dinamometrica 200</translation>
    </message>
    <message>
        <source>torque-wrench-25</source>
        <translation>chiave dinamometrica 25</translation>
    </message>
    <message>
        <source>torque-wrench-5</source>
        <translation>chiave dinamometrica 5</translation>
    </message>
    <message>
        <source>try the brake: it holds, and it lets go</source>
        <translation>provare il freno: tiene, e si libera</translation>
    </message>
    <message>
        <source>turn signal, front left</source>
        <translation>freccia anteriore sinistra</translation>
    </message>
    <message>
        <source>turn signal, front right</source>
        <translation>freccia anteriore destra</translation>
    </message>
    <message>
        <source>turn signal, rear left</source>
        <translation>freccia posteriore sinistra</translation>
    </message>
    <message>
        <source>turn signal, rear right</source>
        <translation>freccia posteriore destra</translation>
    </message>
    <message>
        <source>turn signals: all four, at the right rate</source>
        <translation>frecce: tutte e quattro, al ritmo giusto</translation>
    </message>
    <message>
        <source>turn the engine over by hand: it turns freely</source>
        <translation>girare il motore a mano: gira libero</translation>
    </message>
    <message>
        <source>turn the steering from stop to stop: no play, no notch, nothing pulls</source>
        <translation>sterzo da un fermo all&apos;altro: nessun gioco, nessuno scatto, niente tira</translation>
    </message>
    <message>
        <source>turn the steering from stop to stop: nothing pulls or pinches</source>
        <translation>sterzo da un fermo all&apos;altro: niente tira o pizzica</translation>
    </message>
    <message>
        <source>turn the wheel: it runs free and true</source>
        <translation>girare la ruota: gira libera e dritta</translation>
    </message>
    <message>
        <source>turquoise</source>
        <translation>turchese</translation>
    </message>
    <message>
        <source>two-stroke</source>
        <translation>due tempi</translation>
    </message>
    <message>
        <source>tyre-gauge</source>
        <translation>manometro pneumatici</translation>
    </message>
    <message>
        <source>tyres hold air</source>
        <translation>i pneumatici tengono l&apos;aria</translation>
    </message>
    <message>
        <source>under the seat</source>
        <translation>sotto la sella</translation>
    </message>
    <message>
        <source>unsafe and open: %1</source>
        <translation>pericolo in sospeso: %1</translation>
    </message>
    <message>
        <source>unsafe, and %1 does not want it put right: %2</source>
        <translation>pericolo, e %1 non vuole che si ripari: %2</translation>
    </message>
    <message>
        <source>valve cover and oil filter cover: dry</source>
        <translation>coperchio valvole e coperchio filtro olio: asciutti</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>viola</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>tensione</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>volume</translation>
    </message>
    <message>
        <source>waits for: %1</source>
        <translation>aspetta: %1</translation>
    </message>
    <message>
        <source>wheels and tyres</source>
        <translation>ruote e pneumatici</translation>
    </message>
    <message>
        <source>white</source>
        <translation>bianco</translation>
    </message>
    <message>
        <source>wiper motor positive input</source>
        <translation>motorino tergicristallo, ingresso positivo</translation>
    </message>
    <message>
        <source>wire side</source>
        <translation>lato fili</translation>
    </message>
    <message>
        <source>within</source>
        <translation>entro</translation>
    </message>
    <message>
        <source>worked out here</source>
        <translation>calcolato qui</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>giallo</translation>
    </message>
    <message>
        <source>Pa absolute</source>
        <translation>Pa assoluti</translation>
    </message>
    <message>
        <source>pressure as given: %1 Pa absolute</source>
        <translation>pressione come data: %1 Pa assoluti</translation>
    </message>
    <message>
        <source>standard pressure at %1 m: %2 Pa</source>
        <translation>pressione normale a %1 m: %2 Pa</translation>
    </message>
    <message>
        <source>outside 15 to 27 degC or 600 to 1100 hPa the CIPM-2007 formula is extrapolated</source>
        <translation>fuori da 15 a 27 degC o da 600 a 1100 hPa la formula CIPM-2007 è estrapolata</translation>
    </message>
    <message>
        <source>hPa absolute</source>
        <translation>hPa assoluti</translation>
    </message>
    <message>
        <source>nothing: ready; a load test proves it</source>
        <translation>niente: pronta; lo dimostra una prova sotto carico</translation>
    </message>
    <message>
        <source>charge at no more than a tenth of its ampere hours, rest an hour or two, measure again</source>
        <translation>caricare al massimo a un decimo degli amperora, riposare una o due ore, rimisurare</translation>
    </message>
    <message>
        <source>charge slowly and check every cell with the hydrometer: cells that differ by more than 0.05 are worn out (common practice, no source)</source>
        <translation>caricare piano e controllare ogni cella col densimetro: celle che differiscono di oltre 0,05 sono finite (pratica comune, senza fonte)</translation>
    </message>
    <message>
        <source>charge slowly, rest an hour or two, measure again; if it stays below half charge, renew it (common practice, no source)</source>
        <translation>caricare piano, riposare una o due ore, rimisurare; se resta sotto metà carica, sostituirla (pratica comune, senza fonte)</translation>
    </message>
    <message>
        <source>cannot be read in a sealed AGM battery</source>
        <translation>non si legge in una batteria AGM sigillata</translation>
    </message>
    <message>
        <source>so low a voltage means a dead cell or a deep discharge, or the nominal voltage is wrong</source>
        <translation>una tensione così bassa vuol dire cella morta, scarica profonda o tensione nominale sbagliata</translation>
    </message>
    <message>
        <source>between the points of the %1 table: %2 %</source>
        <translation>tra i punti della tabella %1: %2 %</translation>
    </message>
    <message>
        <source>no charge can be told yet: let it rest an hour or two, measure again</source>
        <translation>non si può ancora dire la carica: riposare una o due ore, rimisurare</translation>
    </message>
    <message>
        <source>friction in place of nut_factor, or without it</source>
        <translation>friction al posto di nut_factor, o senza</translation>
    </message>
    <message>
        <source>proof load %1 N: share %2</source>
        <translation>carico di prova %1 N: quota %2</translation>
    </message>
    <message>
        <source>held to the limit given: %1 N.m</source>
        <translation>tenuto al limite dato: %1 N.m</translation>
    </message>
    <message>
        <source>thread in aluminium: the limit given rules, whatever the bolt could bear</source>
        <translation>filetto in alluminio: vale il limite dato, qualunque cosa regga la vite</translation>
    </message>
    <message>
        <source>colourless to amber</source>
        <translation>da incolore ad ambra</translation>
    </message>
    <message>
        <source>glycol fluids of DOT 3, DOT 4 and DOT 5.1 mix; the result is no better than the lower grade</source>
        <translation>i fluidi al glicole DOT 3, DOT 4 e DOT 5.1 si mescolano; il risultato non è migliore del tipo inferiore</translation>
    </message>
    <message>
        <source>not known what is in: do not mix; drain, clean and renew all rubber if in doubt</source>
        <translation>non si sa che cosa c&apos;è dentro: non mescolare; nel dubbio scaricare, pulire e cambiare tutte le gomme</translation>
    </message>
    <message>
        <source>%1 and %2 are different families: they attack each other&apos;s rubber and do not mix</source>
        <translation>%1 e %2 sono famiglie diverse: attaccano ognuno le gomme dell&apos;altro e non si mescolano</translation>
    </message>
    <message>
        <source>the same kind of fluid</source>
        <translation>lo stesso tipo di fluido</translation>
    </message>
    <message>
        <source>change of family: strip, clean every passage with the right cleaner and renew all rubber, then fill with the new fluid alone</source>
        <translation>cambio di famiglia: smontare, pulire ogni condotto col detergente giusto e cambiare tutte le gomme, poi mettere solo il fluido nuovo</translation>
    </message>
    <message>
        <source>least boiling points of %1: dry %2, wet %3 degC</source>
        <translation>punti d&apos;ebollizione minimi di %1: secco %2, umido %3 degC</translation>
    </message>
    <message>
        <source>the lower grade</source>
        <translation>il tipo inferiore</translation>
    </message>
    <message>
        <source>mineral oil has no boiling point in this standard: the maker&apos;s sheet gives it</source>
        <translation>l&apos;olio minerale non ha punto d&apos;ebollizione in questa norma: lo dà il foglio del costruttore</translation>
    </message>
    <message>
        <source>fuse and connectors between regulator and battery</source>
        <translation>fusibile e connettori tra regolatore e batteria</translation>
    </message>
    <message>
        <source>earth of regulator and engine</source>
        <translation>massa di regolatore e motore</translation>
    </message>
    <message>
        <source>brushes and commutator</source>
        <translation>spazzole e collettore</translation>
    </message>
    <message>
        <source>cut-out or regulator contacts</source>
        <translation>disgiuntore o contatti del regolatore</translation>
    </message>
    <message>
        <source>field winding</source>
        <translation>avvolgimento di campo</translation>
    </message>
    <message>
        <source>connector between alternator and regulator (heat, green copper)</source>
        <translation>connettore tra alternatore e regolatore (calore, rame verde)</translation>
    </message>
    <message>
        <source>alternator winding open or to earth: measure its AC voltage and resistance</source>
        <translation>avvolgimento dell&apos;alternatore aperto o a massa: misurarne tensione alternata e resistenza</translation>
    </message>
    <message>
        <source>regulator or rectifier</source>
        <translation>regolatore o raddrizzatore</translation>
    </message>
    <message>
        <source>voltage drop in leads and earth: measure it with voltage-drop</source>
        <translation>caduta di tensione in cavi e massa: misurarla con Caduta di tensione</translation>
    </message>
    <message>
        <source>battery sulphated or with a bad cell: charge it and repeat</source>
        <translation>batteria solfatata o con una cella guasta: caricarla e ripetere</translation>
    </message>
    <message>
        <source>one phase missing: compare the three AC voltages</source>
        <translation>manca una fase: confrontare le tre tensioni alternate</translation>
    </message>
    <message>
        <source>worn brushes, slipping belt or regulator out of adjustment</source>
        <translation>spazzole consumate, cinghia che slitta o regolatore sregolato</translation>
    </message>
    <message>
        <source>alternator winding partly shorted, magnets weak</source>
        <translation>avvolgimento in parte in corto, magneti deboli</translation>
    </message>
    <message>
        <source>as given</source>
        <translation>come dato</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>pratica comune, senza fonte</translation>
    </message>
    <message>
        <source>rest %1 V, idle %2 V, revs %3 V: rise %4 V</source>
        <translation>riposo %1 V, minimo %2 V, regime %3 V: salita %4 V</translation>
    </message>
    <message>
        <source>battery: it rests as low as with a dead cell; charge and test it, then measure again</source>
        <translation>batteria: a riposo sta bassa come con una cella morta; caricarla e provarla, poi rimisurare</translation>
    </message>
    <message>
        <source>it charges, but the battery was low at rest: charge and test it</source>
        <translation>carica, ma la batteria era bassa a riposo: caricarla e provarla</translation>
    </message>
    <message>
        <source>battery: it was low at rest, and an empty one holds the voltage down; charge and test it, then measure again</source>
        <translation>batteria: era bassa a riposo, e una scarica tiene giù la tensione; caricarla e provarla, poi rimisurare</translation>
    </message>
    <message>
        <source>regulator, or its earth or sensing lead</source>
        <translation>regolatore, o la sua massa o il filo di lettura</translation>
    </message>
    <message>
        <source>battery with an open cell or loose terminal</source>
        <translation>batteria con cella aperta o morsetto lento</translation>
    </message>
    <message>
        <source>regulator contacts stuck</source>
        <translation>contatti del regolatore incollati</translation>
    </message>
    <message>
        <source>overcharging boils the battery and blows bulbs: do not ride on</source>
        <translation>la sovraccarica fa bollire la batteria e brucia le lampade: non continuare a guidare</translation>
    </message>
    <message>
        <source>at idle the battery still gives: usual for an old alternator with the lamps on, else look at idle speed and lamps (common practice, no source)</source>
        <translation>al minimo dà ancora la batteria: normale con un vecchio alternatore e luci accese, altrimenti guardare il minimo e le lampade (pratica comune, senza fonte)</translation>
    </message>
    <message>
        <source>falls with revs: a connection or the regulator fails as current rises; measure again</source>
        <translation>cala col regime: una connessione o il regolatore cede quando la corrente sale; rimisurare</translation>
    </message>
    <message>
        <source>ambient at that altitude: %1 kPa</source>
        <translation>pressione ambiente a quell&apos;altitudine: %1 kPa</translation>
    </message>
    <message>
        <source>%1 times the system: %2 mL to have ready</source>
        <translation>%1 volte l&apos;impianto: tenerne pronti %2 mL</translation>
    </message>
    <message>
        <source>this band was read in a summary only: advisory</source>
        <translation>questa banda è stata letta solo in un riassunto: indicativa</translation>
    </message>
    <message>
        <source>%1 mm from the line; the tape tells %2 mm</source>
        <translation>%1 mm dalla linea; il metro distingue %2 mm</translation>
    </message>
    <message>
        <source>air before %1 kg/m3, after %2 kg/m3: ratio %3</source>
        <translation>aria prima %1 kg/m3, dopo %2 kg/m3: rapporto %3</translation>
    </message>
    <message>
        <source>jets numbered by diameter: jet area goes with the root of the density ratio, so the diameter with its fourth root</source>
        <translation>numerati a diametro: l&apos;area va con la radice del rapporto di densità, quindi il diametro con la radice quarta</translation>
    </message>
    <message>
        <source>jets numbered by flow: the number goes with the root of the density ratio</source>
        <translation>numerati a portata: il numero va con la radice del rapporto di densità</translation>
    </message>
    <message>
        <source>tail and stop together</source>
        <translation>coda e stop insieme</translation>
    </message>
    <message>
        <source>one filament at a time</source>
        <translation>un filamento per volta</translation>
    </message>
    <message>
        <source>some of these bulbs&apos; watts are from memory: read them on the bulb</source>
        <translation>alcuni di questi watt sono a memoria: leggerli sulla lampada</translation>
    </message>
    <message>
        <source>the battery pays the difference: it goes flat while riding</source>
        <translation>la batteria paga la differenza: si scarica guidando</translation>
    </message>
    <message>
        <source>no air was lost: the difference is temperature, or within what the gauge can tell</source>
        <translation>nessuna aria persa: la differenza è temperatura, o entro ciò che lo strumento distingue</translation>
    </message>
    <message>
        <source>no loss: the limit is not reached</source>
        <translation>nessuna perdita: il limite non si raggiunge</translation>
    </message>
    <message>
        <source>does not fit a date</source>
        <translation>non va con una data</translation>
    </message>
    <message>
        <source>last is a date, this is none</source>
        <translation>last è una data, questo no</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 giorni</translation>
    </message>
    <message>
        <source>overdue by %1 days</source>
        <translation>scaduto da %1 giorni</translation>
    </message>
    <message>
        <source>the odometer now, such as 12400 km</source>
        <translation>il contachilometri adesso, per esempio 12400 km</translation>
    </message>
    <message>
        <source>calendar: months end on their last day where the day is missing</source>
        <translation>calendario: i mesi finiscono all&apos;ultimo giorno dove il giorno manca</translation>
    </message>
    <message>
        <source>fuel to oil from 8 to 200, such as 50, 50:1 or 2 %</source>
        <translation>benzina a olio da 8 a 200, per esempio 50, 50:1 o 2 %</translation>
    </message>
    <message>
        <source>one or both, from the manual</source>
        <translation>uno o entrambi, dal manuale</translation>
    </message>
    <message>
        <source>uncertainty of the reading at 20 degC: %1 ohm</source>
        <translation>incertezza della lettura a 20 degC: %1 ohm</translation>
    </message>
    <message>
        <source>no uncertainty was given: %1 ohm is assumed, 2 % and 0.02 ohm (common practice, no source)</source>
        <translation>nessuna incertezza data: si presume %1 ohm, 2 % e 0,02 ohm (pratica comune, senza fonte)</translation>
    </message>
    <message>
        <source>nearest in steps of %1 mm: %2 mm, which leaves %3 mm</source>
        <translation>più vicino a passi di %1 mm: %2 mm, che lascia %3 mm</translation>
    </message>
    <message>
        <source>it shows less than the true speed: not allowed in most places (from memory of UNECE R39)</source>
        <translation>segna meno della velocità vera: vietato quasi ovunque (a memoria da UNECE R39)</translation>
    </message>
    <message>
        <source>empty after %1 days: a battery cannot lose more than all</source>
        <translation>vuota dopo %1 giorni: una batteria non può perdere più di tutto</translation>
    </message>
    <message>
        <source>stage %1 of %2: %3 %4</source>
        <translation>stadio %1 di %2: %3 %4</translation>
    </message>
    <message>
        <source>across three quarters of the breadth, all round; pattern visible on the rest</source>
        <translation>su tre quarti della larghezza, tutto intorno; altrove disegno visibile</translation>
    </message>
    <message>
        <source>main grooves in the middle three quarters</source>
        <translation>incavi principali nei tre quarti centrali</translation>
    </message>
    <message>
        <source>mopeds, small and light motorcycles</source>
        <translation>ciclomotori e motocicli leggeri</translation>
    </message>
    <message>
        <source>middle three quarters</source>
        <translation>tre quarti centrali</translation>
    </message>
    <message>
        <source>treadwear indicator at 1/32 in: a making standard, not a roadside limit; states have their own</source>
        <translation>indicatore d&apos;usura a 1/32 in: norma di costruzione, non limite su strada; gli Stati hanno i loro</translation>
    </message>
    <message>
        <source>reject below 1/32 in</source>
        <translation>scartare sotto 1/32 in</translation>
    </message>
    <message>
        <source>motorcycle, or another country</source>
        <translation>motorcycle, o un altro paese</translation>
    </message>
    <message>
        <source>pattern visible</source>
        <translation>disegno visibile</translation>
    </message>
    <message>
        <source>no depth is laid down: look whether every original groove shows</source>
        <translation>nessuna profondità prescritta: guardare se ogni incavo originale si vede</translation>
    </message>
    <message>
        <source>age between %1 and %2 years, limit of the shop %3 years</source>
        <translation>età tra %1 e %2 anni, limite dell&apos;officina %3 anni</translation>
    </message>
    <message>
        <source>three digits: week %1 of a year before 2000 that ends in %2; the decade is not in the code</source>
        <translation>tre cifre: settimana %1 di un anno prima del 2000 che finisce in %2; il decennio non è nel codice</translation>
    </message>
    <message>
        <source>age is that of the youngest possible year: the tyre may be ten or twenty years older</source>
        <translation>l&apos;età è quella dell&apos;anno più recente possibile: il pneumatico può avere dieci o vent&apos;anni di più</translation>
    </message>
    <message>
        <source>week %1 of %2: %3 to %4</source>
        <translation>settimana %1 del %2: dal %3 al %4</translation>
    </message>
    <message>
        <source>no load index and speed symbol in the marking</source>
        <translation>nessun indice di carico né codice di velocità nella sigla</translation>
    </message>
    <message>
        <source>rider and luggage are %1 kg; a pair of these tyres holds %2 kg of machine, rider and luggage together</source>
        <translation>guidatore e bagaglio pesano %1 kg; un paio di questi pneumatici regge %2 kg tra mezzo, guidatore e bagaglio</translation>
    </message>
    <message>
        <source>rider and luggage alone are as much as one of these tyres holds, and most of it rests on the rear: look up the machine&apos;s highest load</source>
        <translation>guidatore e bagaglio da soli sono quanto regge uno di questi pneumatici, e il più grava dietro: guardare il carico massimo del mezzo</translation>
    </message>
    <message>
        <source>no check digit in this scheme</source>
        <translation>nessuna cifra di controllo in questo schema</translation>
    </message>
    <message>
        <source>no: 17 characters are wanted, %1 were given</source>
        <translation>no: servono 17 caratteri, dati %1</translation>
    </message>
    <message>
        <source>accepted as a plain frame number</source>
        <translation>accettato come semplice numero di telaio</translation>
    </message>
    <message>
        <source>%1 characters: not a number of 17</source>
        <translation>%1 caratteri: non un numero da 17</translation>
    </message>
    <message>
        <source>if the plate really shows so many, it is an older scheme without check digit</source>
        <translation>se la targhetta ne mostra davvero tanti, è uno schema più vecchio senza cifra di controllo</translation>
    </message>
    <message>
        <source>no: I, O and Q and signs are never used in a number of 17</source>
        <translation>no: I, O e Q e segni non si usano mai in un numero da 17</translation>
    </message>
    <message>
        <source>no: position 9 should be %1</source>
        <translation>no: la posizione 9 dovrebbe essere %1</translation>
    </message>
    <message>
        <source>outside North America the check digit is not required: there a failed one is only a hint</source>
        <translation>fuori dal Nord America la cifra di controllo non è obbligatoria: lì una sbagliata è solo un indizio</translation>
    </message>
    <message>
        <source>position 10 is no year code; outside North America it often is not</source>
        <translation>la posizione 10 non è un codice d&apos;anno; fuori dal Nord America spesso non lo è</translation>
    </message>
    <message>
        <source>the year code repeats every 30 years, and is only a hint outside North America</source>
        <translation>il codice d&apos;anno si ripete ogni 30 anni, e fuori dal Nord America è solo un indizio</translation>
    </message>
    <message>
        <source>starter cable under 0.91 m</source>
        <translation>cavo d&apos;avviamento sotto 0,91 m</translation>
    </message>
    <message>
        <source>starter cable 0.91 to 1.83 m</source>
        <translation>cavo d&apos;avviamento da 0,91 a 1,83 m</translation>
    </message>
    <message>
        <source>cranking circuit, 0.20 V for each 100 A: give the current</source>
        <translation>circuito d&apos;avviamento, 0,20 V ogni 100 A: dare la corrente</translation>
    </message>
    <message>
        <source>the cranking current in A</source>
        <translation>la corrente d&apos;avviamento in A</translation>
    </message>
    <message>
        <source>half the 12 V figure at 6 V: common practice, no source</source>
        <translation>metà del valore a 12 V per 6 V: pratica comune, senza fonte</translation>
    </message>
    <message>
        <source>any drop that the meter can tell from zero is too much: %1</source>
        <translation>ogni caduta che lo strumento distingue da zero è troppa: %1</translation>
    </message>
    <message>
        <source>the service limit of the manual</source>
        <translation>il limite d&apos;usura del manuale</translation>
    </message>
    <message>
        <source>%1 mm and more</source>
        <translation>da %1 mm in su</translation>
    </message>
    <message>
        <source>worn %1 mm in %2 km; %3 mm left: %4 km</source>
        <translation>consumati %1 mm in %2 km; restano %3 mm: %4 km</translation>
    </message>
    <message>
        <source>no wear was measured: what remains cannot be told</source>
        <translation>nessuna usura misurata: ciò che resta non si può dire</translation>
    </message>
    <message>
        <source>tan (light brown)</source>
        <translation>marrone chiaro</translation>
    </message>
    <message>
        <source>clear or white</source>
        <translation>trasparente o bianco</translation>
    </message>
    <message>
        <source>resistance %1 mohm/m (%2) at %3 degC: %4 mohm/m</source>
        <translation>resistenza %1 mohm/m (%2) a %3 degC: %4 mohm/m</translation>
    </message>
    <message>
        <source>solid copper, ASTM B258 size</source>
        <translation>rame pieno, misura ASTM B258</translation>
    </message>
    <message>
        <source>by area, from IEC 60228 class 5</source>
        <translation>per sezione, da IEC 60228 classe 5</translation>
    </message>
    <message>
        <source>the load wants a fuse of %1 A, more than this wire may stand behind (%2 A): take a thicker wire</source>
        <translation>il carico vuole un fusibile da %1 A, più di quanto questo filo può avere davanti (%2 A): prendere un filo più grosso</translation>
    </message>
    <message>
        <source>fuse: the next blade size from 1.25 x %1 A: %2 A; the wire may stand behind %3 A</source>
        <translation>fusibile: la misura a lama seguente da 1.25 x %1 A: %2 A; il filo può avere davanti %3 A</translation>
    </message>
    <message>
        <source>no blade fuse is large enough: such currents belong to the starter circuit</source>
        <translation>nessun fusibile a lama basta: tali correnti sono del circuito d&apos;avviamento</translation>
    </message>
    <message>
        <source>this wire may stand behind %1 A at most: take a thicker wire</source>
        <translation>questo filo può avere davanti al massimo %1 A: prendere un filo più grosso</translation>
    </message>
    <message>
        <source>yes: %1</source>
        <translation>sì: %1</translation>
    </message>
    <message>
        <source>no: %1</source>
        <translation>no: %1</translation>
    </message>
    <message>
        <source>overdue by %1</source>
        <translation>scaduto di %1</translation>
    </message>
    <message>
        <source>no uncertainty was given: %1 is assumed for an ordinary instrument (common practice, no source)</source>
        <translation>nessuna incertezza data: si presume %1 per uno strumento comune (pratica comune, senza fonte)</translation>
    </message>
    <message>
        <source>no verdict: %1</source>
        <translation>nessun giudizio: %1</translation>
    </message>
    <message>
        <source>what would settle it: %1</source>
        <translation>che cosa lo chiarirebbe: %1</translation>
    </message>
    <message>
        <source>limit: %1</source>
        <translation>limite: %1</translation>
    </message>
    <message>
        <source>load index %1 is outside the table of 30 to 80: look it up in the maker&apos;s book</source>
        <translation>l&apos;indice di carico %1 è fuori dalla tabella da 30 a 80: cercarlo nel libro del costruttore</translation>
    </message>
    <message>
        <source>speed symbol %1 has no fixed speed in the table</source>
        <translation>il codice di velocità %1 non ha velocità fissa in tabella</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>lasciare</translation>
    </message>
    <message>
        <source>down</source>
        <translation>più basso</translation>
    </message>
    <message>
        <source>up</source>
        <translation>più alto</translation>
    </message>
    <message>
        <source>would be more vapour than the whole pressure</source>
        <translation>sarebbe più vapore di tutta la pressione</translation>
    </message>
    <message>
        <source>a higher pressure or a lower temperature</source>
        <translation>una pressione più alta o una temperatura più bassa</translation>
    </message>
    <message>
        <source>stands beside a specific gravity: give one of them</source>
        <translation>sta accanto a una densità: darne uno solo</translation>
    </message>
    <message>
        <source>is missing, and so is specific_gravity</source>
        <translation>manca, e anche specific_gravity</translation>
    </message>
    <message>
        <source>one of voltage and specific_gravity</source>
        <translation>uno tra voltage e specific_gravity</translation>
    </message>
    <message>
        <source>is more than a battery at rest shows</source>
        <translation>è più di quanto mostra una batteria a riposo</translation>
    </message>
    <message>
        <source>up to 8 V for a 6 V battery</source>
        <translation>fino a 8 V per una batteria da 6 V</translation>
    </message>
    <message>
        <source>up to 16 V for a 12 V battery</source>
        <translation>fino a 16 V per una batteria da 12 V</translation>
    </message>
    <message>
        <source>a 6 V battery has half the voltage of the table: %1 V counts as %2 V</source>
        <translation>una batteria da 6 V ha metà della tensione della tabella: %1 V contano come %2 V</translation>
    </message>
    <message>
        <source>above 13 V it is charging or has not rested: wait an hour or two after charging, then measure again</source>
        <translation>sopra 13 V sta caricando o non ha riposato: aspettare una o due ore dopo la carica, poi rimisurare</translation>
    </message>
    <message>
        <source>is not a thread that is known here</source>
        <translation>non è un filetto noto qui</translation>
    </message>
    <message>
        <source>is not a property class of ISO 898-1</source>
        <translation>non è una classe di ISO 898-1</translation>
    </message>
    <message>
        <source>stands beside a nut_factor: they are two ways to say one thing</source>
        <translation>sta accanto a un nut_factor: dicono la stessa cosa</translation>
    </message>
    <message>
        <source>is missing, and so is friction</source>
        <translation>manca, e anche friction</translation>
    </message>
    <message>
        <source>one of nut_factor (0.05 to 0.6) and friction (0.03 to 0.6)</source>
        <translation>uno tra nut_factor (da 0,05 a 0,6) e friction (da 0,03 a 0,6)</translation>
    </message>
    <message>
        <source>has no part in a sum with nut_factor, which covers all friction</source>
        <translation>non entra in un conto con nut_factor, che comprende tutto l&apos;attrito</translation>
    </message>
    <message>
        <source>is not known for this thread</source>
        <translation>non è noto per questo filetto</translation>
    </message>
    <message>
        <source>give it in mm</source>
        <translation>darlo in mm</translation>
    </message>
    <message>
        <source>would stretch this bolt past its proof load of %1 N</source>
        <translation>stirerebbe questa vite oltre il carico di prova di %1 N</translation>
    </message>
    <message>
        <source>up to %1 N.m with this friction</source>
        <translation>fino a %1 N.m con questo attrito</translation>
    </message>
    <message>
        <source>means that the thread strips before the bolt yields: a reduced limit is needed and is not guessed</source>
        <translation>vuol dire che il filetto si strappa prima che la vite ceda: serve un limite ridotto, e non si indovina</translation>
    </message>
    <message>
        <source>give torque_limit, the figure of the manual for this thread</source>
        <translation>dare torque_limit, il valore del manuale per questo filetto</translation>
    </message>
    <message>
        <source>is not a grade that is known here</source>
        <translation>non è un tipo noto qui</translation>
    </message>
    <message>
        <source>an old single-phase alternator gives about 13.5 V at best</source>
        <translation>un vecchio alternatore monofase dà al massimo circa 13,5 V</translation>
    </message>
    <message>
        <source>a three-phase alternator gives about 14.5 V</source>
        <translation>un alternatore trifase dà circa 14,5 V</translation>
    </message>
    <message>
        <source>a dynamo with a good regulator gives about 14 V</source>
        <translation>una dinamo con buon regolatore dà circa 14 V</translation>
    </message>
    <message>
        <source>more lamps or larger bulbs than the generator feeds: see lamp-budget</source>
        <translation>più lampade o più grandi di quanto alimenti il generatore: vedi Lampade e generatore</translation>
    </message>
    <message>
        <source>up to %1 V</source>
        <translation>fino a %1 V</translation>
    </message>
    <message>
        <source>is not below limit_high</source>
        <translation>non è sotto limit_high</translation>
    </message>
    <message>
        <source>the manual&apos;s two figures</source>
        <translation>i due valori del manuale</translation>
    </message>
    <message>
        <source>is not less than the stroke</source>
        <translation>non è minore della corsa</translation>
    </message>
    <message>
        <source>0 to %1 mm</source>
        <translation>da 0 a %1 mm</translation>
    </message>
    <message>
        <source>from exhaust closing only %1 cm3 are compressed</source>
        <translation>dalla chiusura dello scarico si comprimono solo %1 cm3</translation>
    </message>
    <message>
        <source>has an ambiguous unit</source>
        <translation>ha un&apos;unità ambigua</translation>
    </message>
    <message>
        <source>is ambiguous</source>
        <translation>è ambiguo</translation>
    </message>
    <message>
        <source>has no unit</source>
        <translation>non ha unità</translation>
    </message>
    <message>
        <source>has a unit that is not known here</source>
        <translation>ha un&apos;unità non nota qui</translation>
    </message>
    <message>
        <source>is not a unit that is known here</source>
        <translation>non è un&apos;unità nota qui</translation>
    </message>
    <message>
        <source>must be above zero for a consumption</source>
        <translation>per un consumo deve essere sopra zero</translation>
    </message>
    <message>
        <source>such as 60 mpg(imp)</source>
        <translation>per esempio 60 mpg(imp)</translation>
    </message>
    <message>
        <source>must not be zero for a consumption</source>
        <translation>per un consumo non può essere zero</translation>
    </message>
    <message>
        <source>such as 3.5 L/100km</source>
        <translation>per esempio 3.5 L/100km</translation>
    </message>
    <message>
        <source>must be above zero for a wire</source>
        <translation>per un filo deve essere sopra zero</translation>
    </message>
    <message>
        <source>such as 0.75 mm2</source>
        <translation>per esempio 0.75 mm2</translation>
    </message>
    <message>
        <source>is below absolute zero</source>
        <translation>è sotto lo zero assoluto</translation>
    </message>
    <message>
        <source>-273.15 degC and more</source>
        <translation>da -273,15 degC in su</translation>
    </message>
    <message>
        <source>an absolute pressure cannot be negative</source>
        <translation>una pressione assoluta non può essere negativa</translation>
    </message>
    <message>
        <source>0 and more</source>
        <translation>da 0 in su</translation>
    </message>
    <message>
        <source>a date such as 2026-11-25</source>
        <translation>una data come 2026-11-25</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un numero</translation>
    </message>
    <message>
        <source>is out of range</source>
        <translation>è fuori campo</translation>
    </message>
    <message>
        <source>is not one of the choices</source>
        <translation>non è una delle scelte</translation>
    </message>
    <message>
        <source>is so long that the beam would reach the ground first</source>
        <translation>è tanta che il fascio toccherebbe prima terra</translation>
    </message>
    <message>
        <source>up to %1 m for this lamp height</source>
        <translation>fino a %1 m per questa altezza del faro</translation>
    </message>
    <message>
        <source>is not below the first pressure</source>
        <translation>non è sotto la prima pressione</translation>
    </message>
    <message>
        <source>below %1 kPa gauge</source>
        <translation>sotto %1 kPa gauge</translation>
    </message>
    <message>
        <source>from the second reading down to %1 kPa: %2 days</source>
        <translation>dalla seconda lettura fino a %1 kPa: %2 giorni</translation>
    </message>
    <message>
        <source>a time such as 6 months, 1 year or 90 days</source>
        <translation>un tempo come 6 months, 1 year o 90 days</translation>
    </message>
    <message>
        <source>a whole number of months or years</source>
        <translation>un numero intero di mesi o anni</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>manca</translation>
    </message>
    <message>
        <source>a distance such as 3000 km</source>
        <translation>una distanza come 3000 km</translation>
    </message>
    <message>
        <source>above 0 km</source>
        <translation>sopra 0 km</translation>
    </message>
    <message>
        <source>0 to 10000000 km</source>
        <translation>da 0 a 10000000 km</translation>
    </message>
    <message>
        <source>is no mixture for a two-stroke</source>
        <translation>non è una miscela per un due tempi</translation>
    </message>
    <message>
        <source>is missing, and so is limit_low</source>
        <translation>manca, e anche limit_low</translation>
    </message>
    <message>
        <source>a connection is not corrected for temperature</source>
        <translation>una connessione non si corregge per la temperatura</translation>
    </message>
    <message>
        <source>is above limit_high</source>
        <translation>è sopra limit_high</translation>
    </message>
    <message>
        <source>the manual&apos;s two figures, the smaller first</source>
        <translation>i due valori del manuale, il minore per primo</translation>
    </message>
    <message>
        <source>is too thin for that clearance: nothing would be left of the new one</source>
        <translation>è troppo sottile per quel gioco: della nuova non resterebbe niente</translation>
    </message>
    <message>
        <source>check the three figures; the valve may not seat</source>
        <translation>controllare i tre valori; forse la valvola non chiude</translation>
    </message>
    <message>
        <source>stands beside a true distance: give one of them</source>
        <translation>sta accanto a una distanza vera: darne una sola</translation>
    </message>
    <message>
        <source>is missing, and so is true_distance</source>
        <translation>manca, e anche true_distance</translation>
    </message>
    <message>
        <source>one of true_distance and true_speed</source>
        <translation>uno tra true_distance e true_speed</translation>
    </message>
    <message>
        <source>a distance, such as 10.4 km</source>
        <translation>una distanza, per esempio 10.4 km</translation>
    </message>
    <message>
        <source>a speed, such as 52 km/h</source>
        <translation>una velocità, per esempio 52 km/h</translation>
    </message>
    <message>
        <source>0 to 1000000 km</source>
        <translation>da 0 a 1000000 km</translation>
    </message>
    <message>
        <source>0 to 400 km/h</source>
        <translation>da 0 a 400 km/h</translation>
    </message>
    <message>
        <source>must be a whole number</source>
        <translation>deve essere un numero intero</translation>
    </message>
    <message>
        <source>1, 2, 3 and so on</source>
        <translation>1, 2, 3 e così via</translation>
    </message>
    <message>
        <source>is not longer than half the stroke</source>
        <translation>non è più lunga di mezza corsa</translation>
    </message>
    <message>
        <source>more than %1 mm; about twice the stroke is usual</source>
        <translation>più di %1 mm; di solito circa il doppio della corsa</translation>
    </message>
    <message>
        <source>stands beside a travel: give one of them</source>
        <translation>sta accanto a una corsa: darne una sola</translation>
    </message>
    <message>
        <source>is missing, and so is travel</source>
        <translation>manca, e anche travel</translation>
    </message>
    <message>
        <source>one of degrees and travel</source>
        <translation>uno tra degrees e travel</translation>
    </message>
    <message>
        <source>is more than the stroke</source>
        <translation>è più della corsa</translation>
    </message>
    <message>
        <source>turned back so far the adapter leaves no arm</source>
        <translation>girata così indietro la prolunga non lascia braccio</translation>
    </message>
    <message>
        <source>an adapter shorter than %1 mm, or another angle</source>
        <translation>una prolunga più corta di %1 mm, o un altro angolo</translation>
    </message>
    <message>
        <source>up to 50 cc: every original groove must show</source>
        <translation>fino a 50 cc: ogni incavo originale deve vedersi</translation>
    </message>
    <message>
        <source>is not a date code</source>
        <translation>non è un codice data</translation>
    </message>
    <message>
        <source>names week %1, which does not exist</source>
        <translation>indica la settimana %1, che non esiste</translation>
    </message>
    <message>
        <source>lies in the future: week %1 of %2 began on %3</source>
        <translation>è nel futuro: la settimana %1 del %2 comincia il %3</translation>
    </message>
    <message>
        <source>a week 53 is rare: read the code again</source>
        <translation>una settimana 53 è rara: rileggere il codice</translation>
    </message>
    <message>
        <source>such as 100/90-10 56J, 120/70 R 12 58P or 3.50-10 59J</source>
        <translation>per esempio 100/90-10 56J, 120/70 R 12 58P o 3.50-10 59J</translation>
    </message>
    <message>
        <source>is too long for a tyre marking</source>
        <translation>è troppo lungo per una sigla di pneumatico</translation>
    </message>
    <message>
        <source>is not a marking that is read here</source>
        <translation>non è una sigla che si legge qui</translation>
    </message>
    <message>
        <source>has a width, aspect or rim beyond motorcycle tyres</source>
        <translation>ha larghezza, rapporto o cerchio oltre i pneumatici da moto</translation>
    </message>
    <message>
        <source>an inch marking names no height: it is taken as equal to the width (common practice, no source)</source>
        <translation>una sigla in pollici non dice l&apos;altezza: si prende uguale alla larghezza (pratica comune, senza fonte)</translation>
    </message>
    <message>
        <source>would end below the ambient pressure: the tyre is flat there</source>
        <translation>finirebbe sotto la pressione ambiente: lì il pneumatico è a terra</translation>
    </message>
    <message>
        <source>a higher pressure at the start</source>
        <translation>una pressione iniziale più alta</translation>
    </message>
    <message>
        <source>is no frame number</source>
        <translation>non è un numero di telaio</translation>
    </message>
    <message>
        <source>17 characters, or an older number as stamped</source>
        <translation>17 caratteri, o un numero più vecchio come punzonato</translation>
    </message>
    <message>
        <source>read it again: 1 for I, 0 for O and Q</source>
        <translation>rileggerlo: 1 per I, 0 per O e Q</translation>
    </message>
    <message>
        <source>a right check digit does not prove the number: letters and digits share values</source>
        <translation>una cifra di controllo giusta non prova il numero: lettere e cifre hanno valori in comune</translation>
    </message>
    <message>
        <source>is needed: this limit is 0.20 V for each 100 A</source>
        <translation>serve: questo limite è 0,20 V ogni 100 A</translation>
    </message>
    <message>
        <source>is the same as new: nothing could wear</source>
        <translation>è uguale a nuovo: niente potrebbe consumarsi</translation>
    </message>
    <message>
        <source>is better than new</source>
        <translation>è meglio che nuovo</translation>
    </message>
    <message>
        <source>up to %1 mm</source>
        <translation>fino a %1 mm</translation>
    </message>
    <message>
        <source>stands beside a power: give one of them</source>
        <translation>sta accanto a una potenza: darne una sola</translation>
    </message>
    <message>
        <source>is missing, and so is power</source>
        <translation>manca, e anche power</translation>
    </message>
    <message>
        <source>one of current and power</source>
        <translation>uno tra current e power</translation>
    </message>
    <message>
        <source>0.03 to 100 mm2, or 32 to 1 AWG</source>
        <translation>da 0.03 a 100 mm2, o da 32 a 1 AWG</translation>
    </message>
    <message>
        <source>would lose %1 V of %2 V in the wire</source>
        <translation>perderebbe %1 V su %2 V nel filo</translation>
    </message>
    <message>
        <source>a thicker wire, a shorter one or a smaller load</source>
        <translation>un filo più grosso, più corto o meno carico</translation>
    </message>
    <message>
        <source>above %1</source>
        <translation>sopra %1</translation>
    </message>
    <message>
        <source>from %1 up</source>
        <translation>da %1 in su</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>fino a %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>da %1 a %2</translation>
    </message>
    <message>
        <source>above %1 up to %2</source>
        <translation>sopra %1 fino a %2</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>uno tra %1</translation>
    </message>
    <message>
        <source>is missing (%1)</source>
        <translation>manca (%1)</translation>
    </message>
    <message>
        <source>%1, a fine pitch written as M10x1.25</source>
        <translation>%1, un passo fine scritto come M10x1.25</translation>
    </message>
    <message>
        <source>a pitch from 0.2 to %1 mm (the coarse one)</source>
        <translation>un passo da 0.2 a %1 mm (quello grosso)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is neither a bulb type nor a power</source>
        <translation>&quot;%1&quot; non è né un tipo di lampada né una potenza</translation>
    </message>
    <message>
        <source>watts such as 5 W or 35/35 W, or one of %1; &quot;2 x P21W&quot; for two</source>
        <translation>watt come 5 W o 35/35 W, o uno tra %1; &quot;2 x P21W&quot; per due</translation>
    </message>
    <message>
        <source>has no rule on file for %1</source>
        <translation>non ha una regola registrata per %1</translation>
    </message>
    <message>
        <source>weeks 01 to 53; %1</source>
        <translation>settimane da 01 a 53; %1</translation>
    </message>
    <message>
        <source>a code up to today, %1</source>
        <translation>un codice fino a oggi, %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>specific gravity at 26.7 degC: %1 + 0.004 x (%2 F - 80)/10 = %3</source>
        <translation>densità a 26,7 degC: %1 + 0,004 x (%2 F - 80)/10 = %3</translation>
    </message>
    <message>
        <source>K = %1 as given</source>
        <translation>K = %1 come dato</translation>
    </message>
    <message>
        <source>preload F = T/(K d) = %1 N.m/(%2 x %3 mm) = %4 N</source>
        <translation>precarico F = T/(K d) = %1 N.m/(%2 x %3 mm) = %4 N</translation>
    </message>
    <message>
        <source>stress area As = pi/4 (d - 0.938194 P)^2 = %1 mm2, %2 mm2 in the table</source>
        <translation>sezione resistente As = pi/4 (d - 0.938194 P)^2 = %1 mm2, %2 mm2 in tabella</translation>
    </message>
    <message>
        <source>preload F = %1 x %2 MPa x %3 mm2 = %4 N</source>
        <translation>precarico F = %1 x %2 MPa x %3 mm2 = %4 N</translation>
    </message>
    <message>
        <source>torque T = K d F = %1 x %2 mm x %3 N = %4 N.m</source>
        <translation>coppia T = K d F = %1 x %2 mm x %3 N = %4 N.m</translation>
    </message>
    <message>
        <source>swept volume = pi/4 x (%1 mm)^2 x %2 mm = %3 cm3</source>
        <translation>cilindrata = pi/4 x (%1 mm)^2 x %2 mm = %3 cm3</translation>
    </message>
    <message>
        <source>ratio = (%1 + %2)/%3 = %4</source>
        <translation>rapporto = (%1 + %2)/%3 = %4</translation>
    </message>
    <message>
        <source>line = pi/4 x (%1 mm)^2 x %2 m = %3 mL</source>
        <translation>tubo = pi/4 x (%1 mm)^2 x %2 m = %3 mL</translation>
    </message>
    <message>
        <source>system = %1 + %2 + %3 = %4 mL</source>
        <translation>impianto = %1 + %2 + %3 = %4 mL</translation>
    </message>
    <message>
        <source>speed = %1 rpm/%2 x %3 m x 60/1000 = %4 km/h</source>
        <translation>velocità = %1 rpm/%2 x %3 m x 60/1000 = %4 km/h</translation>
    </message>
    <message>
        <source>mean piston speed = S n/30000 = %1 m/s</source>
        <translation>velocità media del pistone = S n/30000 = %1 m/s</translation>
    </message>
    <message>
        <source>drop = per cent/100 x distance = %1 to %2 mm</source>
        <translation>abbassamento = per cento/100 x distanza = da %1 a %2 mm</translation>
    </message>
    <message>
        <source>jet = %1 x ratio^%2 = %3</source>
        <translation>getto = %1 x rapporto^%2 = %3</translation>
    </message>
    <message>
        <source>spare = %1 W - %2 W = %3 W</source>
        <translation>avanzo = %1 W - %2 W = %3 W</translation>
    </message>
    <message>
        <source>second reading at the first temperature: (%1 + %2) x %3 K/%4 K - %5 = %6 kPa</source>
        <translation>seconda lettura alla prima temperatura: (%1 + %2) x %3 K/%4 K - %5 = %6 kPa</translation>
    </message>
    <message>
        <source>lost: %1 kPa in %2 days = %3 kPa a day</source>
        <translation>perso: %1 kPa in %2 giorni = %3 kPa al giorno</translation>
    </message>
    <message>
        <source>%1 + %2 = %3; from %4 that is %5 days</source>
        <translation>%1 + %2 = %3; dal %4 sono %5 giorni</translation>
    </message>
    <message>
        <source>%1 + %2 = %3 km; now %4 km: %5 km left</source>
        <translation>%1 + %2 = %3 km; ora %4 km: restano %5 km</translation>
    </message>
    <message>
        <source>oil = finished mix/(ratio + 1) = %1 L/(%2 + 1) = %3 mL</source>
        <translation>olio = miscela finita/(rapporto + 1) = %1 L/(%2 + 1) = %3 mL</translation>
    </message>
    <message>
        <source>oil = fuel/ratio = %1 L/%2 = %3 mL</source>
        <translation>olio = benzina/rapporto = %1 L/%2 = %3 mL</translation>
    </message>
    <message>
        <source>at 20 degC: %1 ohm/(1 + 0.00393 x (%2 - 20)) = %3 ohm</source>
        <translation>a 20 degC: %1 ohm/(1 + 0.00393 x (%2 - 20)) = %3 ohm</translation>
    </message>
    <message>
        <source>new shim = %1 + %2 - %3 = %4 mm</source>
        <translation>spessore nuovo = %1 + %2 - %3 = %4 mm</translation>
    </message>
    <message>
        <source>error = (shown - true)/true = (%1 - %2)/%3 = %4 %</source>
        <translation>errore = (segnato - vero)/vero = (%1 - %2)/%3 = %4 %</translation>
    </message>
    <message>
        <source>charge = %1 A x %2 h = %3 Ah of %4 Ah: %5 %</source>
        <translation>carica = %1 A x %2 h = %3 Ah su %4 Ah: %5 %</translation>
    </message>
    <message>
        <source>arc = pi D a/360 = %1 mm; chord = D sin(a/2) = %2 mm</source>
        <translation>arco = pi D a/360 = %1 mm; corda = D sin(a/2) = %2 mm</translation>
    </message>
    <message>
        <source>setting = torque x L/(L + E cos a) = %1 N.m x %2</source>
        <translation>taratura = coppia x L/(L + E cos a) = %1 N.m x %2</translation>
    </message>
    <message>
        <source>diameter = %1 in x 25.4 + 2 x %2 mm x %3 = %4 mm</source>
        <translation>diametro = %1 in x 25.4 + 2 x %2 mm x %3 = %4 mm</translation>
    </message>
    <message>
        <source>absolute before: %1 + %2 = %3 kPa</source>
        <translation>assoluta prima: %1 + %2 = %3 kPa</translation>
    </message>
    <message>
        <source>absolute after: x (%1 K / %2 K) = %3 kPa</source>
        <translation>assoluta dopo: x (%1 K / %2 K) = %3 kPa</translation>
    </message>
    <message>
        <source>gauge after: less ambient %1 kPa = %2 kPa</source>
        <translation>relativa dopo: meno ambiente %1 kPa = %2 kPa</translation>
    </message>
    <message>
        <source>sum of value x weight = %1, mod 11 = %2: check digit %3, position 9 shows %4</source>
        <translation>somma di valore x peso = %1, mod 11 = %2: cifra di controllo %3, la posizione 9 mostra %4</translation>
    </message>
    <message>
        <source>resistance = %1 V/%2 A = %3 ohm</source>
        <translation>resistenza = %1 V/%2 A = %3 ohm</translation>
    </message>
    <message>
        <source>current = %1 W/%2 V = %3 A</source>
        <translation>corrente = %1 W/%2 V = %3 A</translation>
    </message>
    <message>
        <source>drop = I R L = %1 A x %2 mohm/m x %3 m = %4 V</source>
        <translation>caduta = I R L = %1 A x %2 mohm/m x %3 m = %4 V</translation>
    </message>
    <message>
        <source>0 straight ahead, 90 square, 180 turned back</source>
        <translation>0 dritta, 90 a squadra, 180 all&apos;indietro</translation>
    </message>
    <message>
        <source>2 where the return is a wire as well</source>
        <translation>2 dove anche il ritorno è un filo</translation>
    </message>
    <message>
        <source>6 months, 1 year, 90 days or 3000 km</source>
        <translation>6 months, 1 year, 90 days o 3000 km</translation>
    </message>
    <message>
        <source>A starting point for the main jet at another height or temperature.</source>
        <translation>Un punto di partenza per il getto massimo ad altra quota o temperatura.</translation>
    </message>
    <message>
        <source>A torque for a bolt of known thread and class where the manual gives none.</source>
        <translation>Una coppia per una vite di filetto e classe noti dove il manuale non ne dà.</translation>
    </message>
    <message>
        <source>A winding&apos;s resistance brought to 20 degC and held against its limits; an earth or a continuity as it is.</source>
        <translation>La resistenza di un avvolgimento portata a 20 degC e confrontata coi limiti; una massa o continuità com&apos;è.</translation>
    </message>
    <message>
        <source>AGM, sealed</source>
        <translation>AGM, sigillata</translation>
    </message>
    <message>
        <source>Adapter length E</source>
        <translation>Lunghezza prolunga E</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Età</translation>
    </message>
    <message>
        <source>Age limit of the shop</source>
        <translation>Limite d&apos;età dell&apos;officina</translation>
    </message>
    <message>
        <source>Age of a tyre</source>
        <translation>Età di un pneumatico</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitudine</translation>
    </message>
    <message>
        <source>Altitude now</source>
        <translation>Altitudine adesso</translation>
    </message>
    <message>
        <source>Altitude then</source>
        <translation>Altitudine allora</translation>
    </message>
    <message>
        <source>Altitude there</source>
        <translation>Altitudine là</translation>
    </message>
    <message>
        <source>Angle a</source>
        <translation>Angolo a</translation>
    </message>
    <message>
        <source>Arc on the flywheel</source>
        <translation>Arco sul volano</translation>
    </message>
    <message>
        <source>Assumption</source>
        <translation>Ipotesi</translation>
    </message>
    <message>
        <source>At idle</source>
        <translation>Al minimo</translation>
    </message>
    <message>
        <source>At rest</source>
        <translation>A riposo</translation>
    </message>
    <message>
        <source>At revs</source>
        <translation>A regime</translation>
    </message>
    <message>
        <source>At sea level</source>
        <translation>Al livello del mare</translation>
    </message>
    <message>
        <source>Austria</source>
        <translation>Austria</translation>
    </message>
    <message>
        <source>Battery voltage at rest, at idle and at revs: whether the charging system works and what to look at.</source>
        <translation>Tensione della batteria a riposo, al minimo e a regime: se la ricarica funziona e dove guardare.</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Alesaggio</translation>
    </message>
    <message>
        <source>Bore of line</source>
        <translation>Diametro interno del tubo</translation>
    </message>
    <message>
        <source>Brake fluid</source>
        <translation>Liquido freni</translation>
    </message>
    <message>
        <source>Caliper or cylinder</source>
        <translation>Pinza o cilindretto</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Capacità</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Camera</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Variazione</translation>
    </message>
    <message>
        <source>Charge</source>
        <translation>Carica</translation>
    </message>
    <message>
        <source>Charge lost</source>
        <translation>Carica persa</translation>
    </message>
    <message>
        <source>Charge of a battery</source>
        <translation>Carica della batteria</translation>
    </message>
    <message>
        <source>Check digit</source>
        <translation>Cifra di controllo</translation>
    </message>
    <message>
        <source>Chord on the flywheel</source>
        <translation>Corda sul volano</translation>
    </message>
    <message>
        <source>Circumference</source>
        <translation>Circonferenza</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Classe</translation>
    </message>
    <message>
        <source>Clearance measured</source>
        <translation>Gioco misurato</translation>
    </message>
    <message>
        <source>Clearance wanted</source>
        <translation>Gioco voluto</translation>
    </message>
    <message>
        <source>Clearance with the nearest</source>
        <translation>Gioco col più vicino</translation>
    </message>
    <message>
        <source>Coefficient of friction</source>
        <translation>Coefficiente d&apos;attrito</translation>
    </message>
    <message>
        <source>Colour of the fuse</source>
        <translation>Colore del fusibile</translation>
    </message>
    <message>
        <source>Compression ratio</source>
        <translation>Rapporto di compressione</translation>
    </message>
    <message>
        <source>Compression reading and altitude</source>
        <translation>Compressione e altitudine</translation>
    </message>
    <message>
        <source>Conductors</source>
        <translation>Conduttori</translation>
    </message>
    <message>
        <source>Connecting rod</source>
        <translation>Biella</translation>
    </message>
    <message>
        <source>Content of the system</source>
        <translation>Contenuto dell&apos;impianto</translation>
    </message>
    <message>
        <source>Convert a unit</source>
        <translation>Convertire un&apos;unità</translation>
    </message>
    <message>
        <source>Country</source>
        <translation>Paese</translation>
    </message>
    <message>
        <source>Crank angle</source>
        <translation>Angolo di manovella</translation>
    </message>
    <message>
        <source>Crank angle to piston travel and back, and the mark on the flywheel.</source>
        <translation>Dall&apos;angolo di manovella alla corsa del pistone e viceversa, e il segno sul volano.</translation>
    </message>
    <message>
        <source>Cross-section</source>
        <translation>Sezione</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corrente</translation>
    </message>
    <message>
        <source>Current of the load</source>
        <translation>Corrente del carico</translation>
    </message>
    <message>
        <source>Current, voltage drop and fuse for a load at the end of a wire.</source>
        <translation>Corrente, caduta di tensione e fusibile per un carico in fondo a un filo.</translation>
    </message>
    <message>
        <source>DOT 3, DOT 4, DOT 5, DOT 5.1 or mineral</source>
        <translation>DOT 3, DOT 4, DOT 5, DOT 5.1 o mineral</translation>
    </message>
    <message>
        <source>DOT 3, DOT 4, DOT 5, DOT 5.1, mineral or unknown</source>
        <translation>DOT 3, DOT 4, DOT 5, DOT 5.1, mineral o unknown</translation>
    </message>
    <message>
        <source>DOT 5 (silicone) and DOT 5.1 (glycol) sound alike and never mix</source>
        <translation>DOT 5 (silicone) e DOT 5.1 (glicole) suonano uguali e non si mescolano mai</translation>
    </message>
    <message>
        <source>Date code</source>
        <translation>Codice data</translation>
    </message>
    <message>
        <source>Days standing</source>
        <translation>Giorni da fermo</translation>
    </message>
    <message>
        <source>Days to the limit</source>
        <translation>Giorni fino al limite</translation>
    </message>
    <message>
        <source>Days until the limit</source>
        <translation>Giorni fino al limite</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densità</translation>
    </message>
    <message>
        <source>Density altitude</source>
        <translation>Altitudine di densità</translation>
    </message>
    <message>
        <source>Density of the air</source>
        <translation>Densità dell&apos;aria</translation>
    </message>
    <message>
        <source>Density ratio</source>
        <translation>Rapporto di densità</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profondità</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Diametro</translation>
    </message>
    <message>
        <source>Displacement of one cylinder</source>
        <translation>Cilindrata di un cilindro</translation>
    </message>
    <message>
        <source>Distance so far</source>
        <translation>Distanza finora</translation>
    </message>
    <message>
        <source>Distance to the wall</source>
        <translation>Distanza dal muro</translation>
    </message>
    <message>
        <source>Does it charge?</source>
        <translation>Carica?</translation>
    </message>
    <message>
        <source>Drain while standing</source>
        <translation>Assorbimento da fermo</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Caduta</translation>
    </message>
    <message>
        <source>Drop measured</source>
        <translation>Abbassamento misurato</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Scade</translation>
    </message>
    <message>
        <source>Engine speed</source>
        <translation>Regime motore</translation>
    </message>
    <message>
        <source>Error</source>
        <translation>Errore</translation>
    </message>
    <message>
        <source>Every</source>
        <translation>Ogni</translation>
    </message>
    <message>
        <source>Exhaust port</source>
        <translation>Luce di scarico</translation>
    </message>
    <message>
        <source>Factor</source>
        <translation>Fattore</translation>
    </message>
    <message>
        <source>Final torque</source>
        <translation>Coppia finale</translation>
    </message>
    <message>
        <source>Finished mix</source>
        <translation>Miscela finita</translation>
    </message>
    <message>
        <source>First pressure</source>
        <translation>Prima pressione</translation>
    </message>
    <message>
        <source>First temperature</source>
        <translation>Prima temperatura</translation>
    </message>
    <message>
        <source>Fluid for a flush</source>
        <translation>Fluido per lo spurgo</translation>
    </message>
    <message>
        <source>Flywheel diameter</source>
        <translation>Diametro del volano</translation>
    </message>
    <message>
        <source>Frame number</source>
        <translation>Numero di telaio</translation>
    </message>
    <message>
        <source>Friction under the head</source>
        <translation>Attrito sotto testa</translation>
    </message>
    <message>
        <source>From bore, stroke and the volume of the chamber.</source>
        <translation>Da alesaggio, corsa e volume della camera.</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Benzina</translation>
    </message>
    <message>
        <source>Fuse</source>
        <translation>Fusibile</translation>
    </message>
    <message>
        <source>Generator</source>
        <translation>Generatore</translation>
    </message>
    <message>
        <source>Germany</source>
        <translation>Germania</translation>
    </message>
    <message>
        <source>Greatest angle</source>
        <translation>Angolo massimo</translation>
    </message>
    <message>
        <source>Greatest drop</source>
        <translation>Abbassamento massimo</translation>
    </message>
    <message>
        <source>H4 (P43t) and HS1 (PX43t) are not alike: do not swap them</source>
        <translation>H4 (P43t) e HS1 (PX43t) non sono uguali: non scambiarle</translation>
    </message>
    <message>
        <source>Headlamp aim</source>
        <translation>Orientamento del faro</translation>
    </message>
    <message>
        <source>Height of the lamp</source>
        <translation>Altezza del faro</translation>
    </message>
    <message>
        <source>How far speedometer or odometer are out.</source>
        <translation>Di quanto sbagliano tachimetro o contachilometri.</translation>
    </message>
    <message>
        <source>How fast a tyre or a crankcase loses air, with the temperature taken out.</source>
        <translation>Quanto in fretta un pneumatico o un carter perde aria, tolta la temperatura.</translation>
    </message>
    <message>
        <source>How full a lead-acid battery is, from its rested voltage or its acid.</source>
        <translation>Quanto è carica una batteria al piombo, dalla tensione a riposo o dall&apos;acido.</translation>
    </message>
    <message>
        <source>How much air there is for the engine to breathe.</source>
        <translation>Quanta aria ha il motore da respirare.</translation>
    </message>
    <message>
        <source>How much brake or clutch fluid to have ready before the circuit is opened.</source>
        <translation>Quanto liquido di freno o frizione tenere pronto prima di aprire il circuito.</translation>
    </message>
    <message>
        <source>How much of the battery a standing current takes until the next ride.</source>
        <translation>Quanta batteria toglie una corrente a riposo fino alla prossima uscita.</translation>
    </message>
    <message>
        <source>How much oil goes into the fuel.</source>
        <translation>Quanto olio va nella benzina.</translation>
    </message>
    <message>
        <source>Ignition timing</source>
        <translation>Anticipo d&apos;accensione</translation>
    </message>
    <message>
        <source>In the machine</source>
        <translation>Nel mezzo</translation>
    </message>
    <message>
        <source>In which order and stages to tighten several bolts of one joint.</source>
        <translation>In quale ordine e stadi serrare più viti di un giunto.</translation>
    </message>
    <message>
        <source>Jet</source>
        <translation>Getto</translation>
    </message>
    <message>
        <source>Jet now</source>
        <translation>Getto adesso</translation>
    </message>
    <message>
        <source>Lamps</source>
        <translation>Lampade</translation>
    </message>
    <message>
        <source>Lamps and generator</source>
        <translation>Lampade e generatore</translation>
    </message>
    <message>
        <source>Last done</source>
        <translation>Fatto l&apos;ultima volta</translation>
    </message>
    <message>
        <source>Law</source>
        <translation>Legge</translation>
    </message>
    <message>
        <source>Least angle</source>
        <translation>Angolo minimo</translation>
    </message>
    <message>
        <source>Least drop</source>
        <translation>Abbassamento minimo</translation>
    </message>
    <message>
        <source>Least dry boiling point</source>
        <translation>Ebollizione minima a secco</translation>
    </message>
    <message>
        <source>Least wet boiling point</source>
        <translation>Ebollizione minima umido</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Resta</translation>
    </message>
    <message>
        <source>Length of line</source>
        <translation>Lunghezza del tubo</translation>
    </message>
    <message>
        <source>Length of wire</source>
        <translation>Lunghezza del filo</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Limit of the manual</source>
        <translation>Limite del manuale</translation>
    </message>
    <message>
        <source>Limit of the thread</source>
        <translation>Limite del filetto</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carico</translation>
    </message>
    <message>
        <source>Loss</source>
        <translation>Perdita</translation>
    </message>
    <message>
        <source>Loss of pressure</source>
        <translation>Perdita di pressione</translation>
    </message>
    <message>
        <source>Loss per day</source>
        <translation>Perdita al giorno</translation>
    </message>
    <message>
        <source>Loss that is allowed</source>
        <translation>Perdita ammessa</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>Limite inferiore</translation>
    </message>
    <message>
        <source>Lower limit of the manual</source>
        <translation>Limite inferiore del manuale</translation>
    </message>
    <message>
        <source>Lowest allowed</source>
        <translation>Minimo ammesso</translation>
    </message>
    <message>
        <source>M3 to M16, property classes 4.6 to 12.9 of ISO 898-1</source>
        <translation>da M3 a M16, classi da 4.6 a 12.9 di ISO 898-1</translation>
    </message>
    <message>
        <source>Made from</source>
        <translation>Fatto dal</translation>
    </message>
    <message>
        <source>Made to</source>
        <translation>Fatto entro il</translation>
    </message>
    <message>
        <source>Main jet in other air</source>
        <translation>Getto massimo in altra aria</translation>
    </message>
    <message>
        <source>Marking</source>
        <translation>Sigla</translation>
    </message>
    <message>
        <source>Marking of a tyre</source>
        <translation>Sigla di un pneumatico</translation>
    </message>
    <message>
        <source>Maryland</source>
        <translation>Maryland</translation>
    </message>
    <message>
        <source>May mix</source>
        <translation>Si può mescolare</translation>
    </message>
    <message>
        <source>Mean bearing diameter</source>
        <translation>Diametro medio d&apos;appoggio</translation>
    </message>
    <message>
        <source>Mean piston speed</source>
        <translation>Velocità media del pistone</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Misurato</translation>
    </message>
    <message>
        <source>Nearest in steps</source>
        <translation>Più vicino</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nuovo</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Passo seguente</translation>
    </message>
    <message>
        <source>Nominal voltage</source>
        <translation>Tensione nominale</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Adesso</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numero</translation>
    </message>
    <message>
        <source>Number of bolts</source>
        <translation>Numero di viti</translation>
    </message>
    <message>
        <source>Numbered by</source>
        <translation>Numerati a</translation>
    </message>
    <message>
        <source>Nut factor K</source>
        <translation>Fattore K</translation>
    </message>
    <message>
        <source>Oil</source>
        <translation>Olio</translation>
    </message>
    <message>
        <source>Order of tightening</source>
        <translation>Ordine di serraggio</translation>
    </message>
    <message>
        <source>Overall ratio</source>
        <translation>Rapporto totale</translation>
    </message>
    <message>
        <source>Part of the circuit</source>
        <translation>Parte del circuito</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Schema</translation>
    </message>
    <message>
        <source>Piston travel</source>
        <translation>Corsa del pistone</translation>
    </message>
    <message>
        <source>Possible years</source>
        <translation>Anni possibili</translation>
    </message>
    <message>
        <source>Power correction SAE J1349</source>
        <translation>Correzione di potenza SAE J1349</translation>
    </message>
    <message>
        <source>Power lost</source>
        <translation>Potenza persa</translation>
    </message>
    <message>
        <source>Power of the load</source>
        <translation>Potenza del carico</translation>
    </message>
    <message>
        <source>Preload</source>
        <translation>Precarico</translation>
    </message>
    <message>
        <source>Preload from a torque</source>
        <translation>Precarico da una coppia</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Pressione</translation>
    </message>
    <message>
        <source>Proof load</source>
        <translation>Carico di prova</translation>
    </message>
    <message>
        <source>Property class</source>
        <translation>Classe di resistenza</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Rapporto</translation>
    </message>
    <message>
        <source>Ratio to standard air</source>
        <translation>Rapporto all&apos;aria normale</translation>
    </message>
    <message>
        <source>Ratio, to 1</source>
        <translation>Rapporto, a 1</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lettura</translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation>Umidità relativa</translation>
    </message>
    <message>
        <source>Remaining</source>
        <translation>Resta</translation>
    </message>
    <message>
        <source>Reservoir</source>
        <translation>Serbatoio</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Resistenza</translation>
    </message>
    <message>
        <source>Resistance at 20 degC</source>
        <translation>Resistenza a 20 degC</translation>
    </message>
    <message>
        <source>Resistance of a coil or connection</source>
        <translation>Resistenza di una bobina o connessione</translation>
    </message>
    <message>
        <source>Resistance, mohm/m</source>
        <translation>Resistenza, mohm/m</translation>
    </message>
    <message>
        <source>Rider and luggage</source>
        <translation>Guidatore e bagaglio</translation>
    </message>
    <message>
        <source>Rim</source>
        <translation>Cerchio</translation>
    </message>
    <message>
        <source>Road speed at an engine speed.</source>
        <translation>Velocità su strada a un regime del motore.</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regola</translation>
    </message>
    <message>
        <source>Second pressure</source>
        <translation>Seconda pressione</translation>
    </message>
    <message>
        <source>Second reading at the first temperature</source>
        <translation>Seconda lettura alla prima temperatura</translation>
    </message>
    <message>
        <source>Second temperature</source>
        <translation>Seconda temperatura</translation>
    </message>
    <message>
        <source>Share of proof load</source>
        <translation>Quota del carico di prova</translation>
    </message>
    <message>
        <source>Share of the voltage</source>
        <translation>Quota della tensione</translation>
    </message>
    <message>
        <source>Shim</source>
        <translation>Spessore</translation>
    </message>
    <message>
        <source>Shim fitted</source>
        <translation>Spessore montato</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Segnato</translation>
    </message>
    <message>
        <source>Size, load and speed from what is moulded into the wall.</source>
        <translation>Misura, carico e velocità da ciò che è scritto sul fianco.</translation>
    </message>
    <message>
        <source>Spare</source>
        <translation>Avanzo</translation>
    </message>
    <message>
        <source>Specific gravity</source>
        <translation>Densità dell&apos;acido</translation>
    </message>
    <message>
        <source>Specific gravity at 26.7 degC</source>
        <translation>Densità a 26,7 degC</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Velocità</translation>
    </message>
    <message>
        <source>Speed from gearing</source>
        <translation>Velocità dal rapporto</translation>
    </message>
    <message>
        <source>Speedometer error</source>
        <translation>Errore del tachimetro</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Stadi</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Passi</translation>
    </message>
    <message>
        <source>Steps of the shims</source>
        <translation>Passi degli spessori</translation>
    </message>
    <message>
        <source>Stress area</source>
        <translation>Sezione resistente</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Corsa</translation>
    </message>
    <message>
        <source>System</source>
        <translation>Impianto</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Temperature now</source>
        <translation>Temperatura adesso</translation>
    </message>
    <message>
        <source>Temperature of the wire</source>
        <translation>Temperatura del filo</translation>
    </message>
    <message>
        <source>Temperature then</source>
        <translation>Temperatura allora</translation>
    </message>
    <message>
        <source>Temperature there</source>
        <translation>Temperatura là</translation>
    </message>
    <message>
        <source>The next date or odometer reading for work that comes again.</source>
        <translation>La prossima data o lettura dei chilometri per un lavoro che torna.</translation>
    </message>
    <message>
        <source>The same quantity in another unit, by exact factors.</source>
        <translation>La stessa grandezza in un&apos;altra unità, con fattori esatti.</translation>
    </message>
    <message>
        <source>The volume is</source>
        <translation>Il volume è</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Filetto</translation>
    </message>
    <message>
        <source>Thread is in</source>
        <translation>Il filetto è in</translation>
    </message>
    <message>
        <source>Time between</source>
        <translation>Tempo tra le due</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Volte</translation>
    </message>
    <message>
        <source>Times the system&apos;s content</source>
        <translation>Volte il contenuto dell&apos;impianto</translation>
    </message>
    <message>
        <source>To</source>
        <translation>In</translation>
    </message>
    <message>
        <source>To be filled in</source>
        <translation>Da mettere</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Oggi</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Coppia</translation>
    </message>
    <message>
        <source>Torque for a bolt</source>
        <translation>Coppia per una vite</translation>
    </message>
    <message>
        <source>Torque wanted</source>
        <translation>Coppia voluta</translation>
    </message>
    <message>
        <source>Torque wrench with an adapter</source>
        <translation>Chiave dinamometrica con prolunga</translation>
    </message>
    <message>
        <source>Tread depth</source>
        <translation>Profondità battistrada</translation>
    </message>
    <message>
        <source>True distance</source>
        <translation>Distanza vera</translation>
    </message>
    <message>
        <source>True speed</source>
        <translation>Velocità vera</translation>
    </message>
    <message>
        <source>Turn the beam</source>
        <translation>Girare il fascio</translation>
    </message>
    <message>
        <source>Two-stroke mixture</source>
        <translation>Miscela per due tempi</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Tyre pressure in other weather or height</source>
        <translation>Pressione pneumatico con altro clima o quota</translation>
    </message>
    <message>
        <source>UK inspection</source>
        <translation>revisione britannica</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Incertezza</translation>
    </message>
    <message>
        <source>United Kingdom</source>
        <translation>Regno Unito</translation>
    </message>
    <message>
        <source>United States, federal</source>
        <translation>Stati Uniti, federale</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>Limite superiore</translation>
    </message>
    <message>
        <source>Upper limit of the manual</source>
        <translation>Limite superiore del manuale</translation>
    </message>
    <message>
        <source>Valid</source>
        <translation>Valido</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valore</translation>
    </message>
    <message>
        <source>Value in the unit wanted</source>
        <translation>Valore nell&apos;unità voluta</translation>
    </message>
    <message>
        <source>Valve shim</source>
        <translation>Spessore valvola</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Tensione</translation>
    </message>
    <message>
        <source>Voltage at rest</source>
        <translation>Tensione a riposo</translation>
    </message>
    <message>
        <source>Voltage drop</source>
        <translation>Caduta di tensione</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volume</translation>
    </message>
    <message>
        <source>Wear and what remains</source>
        <translation>Usura e ciò che resta</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Settimana</translation>
    </message>
    <message>
        <source>What a gauge will show when the tyre is warmer, colder, higher or lower.</source>
        <translation>Che cosa segnerà lo strumento col pneumatico più caldo, freddo, in alto o in basso.</translation>
    </message>
    <message>
        <source>What a torque does to a bolt: how near to its proof load.</source>
        <translation>Che cosa fa una coppia a una vite: quanto è vicina al carico di prova.</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Che cos&apos;è</translation>
    </message>
    <message>
        <source>What the compression gauge would have shown at sea level, to compare with the manual.</source>
        <translation>Che cosa avrebbe segnato il provacompressione al mare, da confrontare col manuale.</translation>
    </message>
    <message>
        <source>What to set on the wrench when a crowfoot or extension lengthens it.</source>
        <translation>Che cosa impostare sulla chiave quando un attacco a zampa la allunga.</translation>
    </message>
    <message>
        <source>When a tyre was made, from the date code on its wall.</source>
        <translation>Quando è stato fatto un pneumatico, dal codice sul fianco.</translation>
    </message>
    <message>
        <source>When it is due again</source>
        <translation>Quando scade di nuovo</translation>
    </message>
    <message>
        <source>Where the cut-off of the dipped beam belongs on a wall, and which way to turn the lamp.</source>
        <translation>Dove deve stare sul muro il taglio dell&apos;anabbagliante, e da che parte girare il faro.</translation>
    </message>
    <message>
        <source>Where to look, likeliest first</source>
        <translation>Dove guardare, il più probabile per primo</translation>
    </message>
    <message>
        <source>Whether a frame number was read rightly, and what years its code may mean.</source>
        <translation>Se un numero di telaio è stato letto bene, e quali anni può indicare il suo codice.</translation>
    </message>
    <message>
        <source>Whether a lead, switch or earth loses too much.</source>
        <translation>Se un cavo, un interruttore o una massa perde troppo.</translation>
    </message>
    <message>
        <source>Whether a new fluid may go onto what is in, and what it bears.</source>
        <translation>Se un fluido nuovo può andare su quello che c&apos;è, e che cosa regge.</translation>
    </message>
    <message>
        <source>Whether a part is within its service limit and how far it will go at the same rate.</source>
        <translation>Se un pezzo è entro il limite d&apos;usura e quanta strada farà allo stesso ritmo.</translation>
    </message>
    <message>
        <source>Whether the generator feeds all that is lit at once.</source>
        <translation>Se il generatore alimenta tutto ciò che è acceso insieme.</translation>
    </message>
    <message>
        <source>Whether the tread is deep enough for the law of a place.</source>
        <translation>Se il battistrada è abbastanza profondo per la legge di un luogo.</translation>
    </message>
    <message>
        <source>Which shim brings the clearance to what is wanted.</source>
        <translation>Quale spessore porta il gioco a quello voluto.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Larghezza</translation>
    </message>
    <message>
        <source>Wire and fuse</source>
        <translation>Filo e fusibile</translation>
    </message>
    <message>
        <source>Wrench length L</source>
        <translation>Lunghezza chiave L</translation>
    </message>
    <message>
        <source>Wrench setting</source>
        <translation>Taratura della chiave</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Anno</translation>
    </message>
    <message>
        <source>a crankcase&apos;s accepted drop is the service manual&apos;s figure</source>
        <translation>il calo ammesso di un carter è quello del manuale d&apos;officina</translation>
    </message>
    <message>
        <source>a date such as 2026-11-25 or a distance such as 12400 km</source>
        <translation>una data come 2026-11-25 o una distanza come 12400 km</translation>
    </message>
    <message>
        <source>a digital or sliding depth gauge without a better figure is taken to be good to 0.1 mm</source>
        <translation>un profondimetro digitale o a cursore senza dato migliore si prende buono a 0,1 mm</translation>
    </message>
    <message>
        <source>a drop means something only with the load current flowing</source>
        <translation>una caduta dice qualcosa solo con la corrente di carico</translation>
    </message>
    <message>
        <source>a fuse protects the wire, not the load: never fit a larger one</source>
        <translation>un fusibile protegge il filo, non il carico: mai metterne uno più grande</translation>
    </message>
    <message>
        <source>a generator gives its rating only at revs; ignition and charging need their share</source>
        <translation>un generatore dà la sua potenza solo a regime; accensione e ricarica vogliono la loro parte</translation>
    </message>
    <message>
        <source>a legal tyre can be worn out: the maker&apos;s limit is often higher</source>
        <translation>un pneumatico a norma può essere finito: il limite del costruttore è spesso più alto</translation>
    </message>
    <message>
        <source>a loss smaller than the gauge&apos;s error is none that was measured</source>
        <translation>una perdita minore dell&apos;errore dello strumento non è misurata</translation>
    </message>
    <message>
        <source>a metric thread such as M8 or M8x1.25: measure it, or read the parts list</source>
        <translation>un filetto metrico come M8 o M8x1.25: misurarlo o leggere la lista ricambi</translation>
    </message>
    <message>
        <source>a number with its unit, such as 25 lbf.ft</source>
        <translation>un numero con la sua unità, per esempio 25 lbf.ft</translation>
    </message>
    <message>
        <source>a pad at its backing plate, a cracked disc or a grooved drum is finished whatever the sum says</source>
        <translation>una pastiglia al supporto, un disco crepato o un tamburo rigato è finito qualunque cosa dica il conto</translation>
    </message>
    <message>
        <source>a skimmed head raises the ratio: fuel and timing must suit it</source>
        <translation>una testa spianata alza il rapporto: benzina e anticipo devono adattarsi</translation>
    </message>
    <message>
        <source>a starting point only: final jetting is by plug reading and the manual; a weak mixture seizes a two-stroke</source>
        <translation>solo un punto di partenza: il getto definitivo si sceglie dalla candela e dal manuale; una miscela magra grippa un due tempi</translation>
    </message>
    <message>
        <source>a tank filled to the mark holds finished mix</source>
        <translation>un serbatoio pieno al segno contiene miscela finita</translation>
    </message>
    <message>
        <source>a tape lies along the arc, calipers measure the chord</source>
        <translation>un metro segue l&apos;arco, un calibro misura la corda</translation>
    </message>
    <message>
        <source>a tyre stretches a little: the real change is slightly smaller</source>
        <translation>un pneumatico si dilata un po&apos;: la variazione vera è un po&apos; minore</translation>
    </message>
    <message>
        <source>a winding can pass cold and fail hot</source>
        <translation>un avvolgimento può andare a freddo e cedere a caldo</translation>
    </message>
    <message>
        <source>a young tyre can be cracked, hard or damaged: look at it</source>
        <translation>un pneumatico giovane può essere crepato, duro o danneggiato: guardarlo</translation>
    </message>
    <message>
        <source>above sea level</source>
        <translation>sul mare</translation>
    </message>
    <message>
        <source>above sea level; the standard pressure there is used</source>
        <translation>sul mare; vale la pressione normale di lì</translation>
    </message>
    <message>
        <source>acid burns and charging gas explodes: glasses, gloves, no sparks, negative lead off first</source>
        <translation>l&apos;acido brucia e il gas di carica esplode: occhiali, guanti, niente scintille, prima via il negativo</translation>
    </message>
    <message>
        <source>across, pair by pair</source>
        <translation>a croce, coppia per coppia</translation>
    </message>
    <message>
        <source>air bleeds, needle circuit and fuel change the result (common practice, no source)</source>
        <translation>freni aria, spillo e carburante cambiano il risultato (pratica comune, senza fonte)</translation>
    </message>
    <message>
        <source>all that is left at top dead centre, by filling with oil</source>
        <translation>tutto ciò che resta al punto morto superiore, misurato con olio</translation>
    </message>
    <message>
        <source>altitude as in the standard atmosphere; CIPM-2007 for 15 to 27 degC and 600 to 1100 hPa; dry and humid formula differ by 0.04 % at no humidity</source>
        <translation>altitudine come nell&apos;atmosfera normale; CIPM-2007 per 15-27 degC e 600-1100 hPa; formula secca e umida differiscono dello 0,04 % senza umidità</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>alluminio</translation>
    </message>
    <message>
        <source>an order printed in the manual or cast beside the bolts wins</source>
        <translation>vale prima un ordine stampato nel manuale o fuso accanto alle viti</translation>
    </message>
    <message>
        <source>as in the papers</source>
        <translation>come da libretto</translation>
    </message>
    <message>
        <source>as stamped in the frame, 17 characters or an older number</source>
        <translation>come punzonato sul telaio, 17 caratteri o un numero più vecchio</translation>
    </message>
    <message>
        <source>as the gauge shows it</source>
        <translation>come segna lo strumento</translation>
    </message>
    <message>
        <source>at the bolt, from the manual</source>
        <translation>alla vite, dal manuale</translation>
    </message>
    <message>
        <source>at the most worn place</source>
        <translation>nel punto più consumato</translation>
    </message>
    <message>
        <source>at the most worn place of the middle three quarters</source>
        <translation>nel punto più consumato dei tre quarti centrali</translation>
    </message>
    <message>
        <source>at the speed the manual names, often 4000 to 5000 rpm</source>
        <translation>al regime detto dal manuale, spesso da 4000 a 5000 rpm</translation>
    </message>
    <message>
        <source>battery charged and connected, warm engine</source>
        <translation>batteria carica e collegata, motore caldo</translation>
    </message>
    <message>
        <source>battery post to its clamp</source>
        <translation>polo batteria al suo morsetto</translation>
    </message>
    <message>
        <source>battery post to starter solenoid</source>
        <translation>polo batteria al solenoide</translation>
    </message>
    <message>
        <source>behind the pistons</source>
        <translation>dietro i pistoncini</translation>
    </message>
    <message>
        <source>between centres</source>
        <translation>tra i centri</translation>
    </message>
    <message>
        <source>between marks on the road</source>
        <translation>tra cippi sulla strada</translation>
    </message>
    <message>
        <source>between the two probes</source>
        <translation>tra i due puntali</translation>
    </message>
    <message>
        <source>bolts are numbered round the circle, or along the row, from 1</source>
        <translation>le viti sono numerate in cerchio, o lungo la fila, da 1</translation>
    </message>
    <message>
        <source>bore in hundredths of a millimetre</source>
        <translation>foro in centesimi di millimetro</translation>
    </message>
    <message>
        <source>brake fluid harms paint, skin and eyes; brakes are proved before the machine leaves the shop</source>
        <translation>il liquido freni danneggia vernice, pelle e occhi; i freni si verificano prima che il mezzo lasci l&apos;officina</translation>
    </message>
    <message>
        <source>bulb types or watts that burn together, separated by commas: H4, 2 x P21W, 5 W</source>
        <translation>tipi di lampada o watt accesi insieme, separati da virgole: H4, 2 x P21W, 5 W</translation>
    </message>
    <message>
        <source>by hydrometer; flooded batteries only</source>
        <translation>col densimetro; solo batterie con tappi</translation>
    </message>
    <message>
        <source>by satellite or by stop-watch</source>
        <translation>col satellite o col cronometro</translation>
    </message>
    <message>
        <source>centre of the lamp above the ground, rider on</source>
        <translation>centro del faro da terra, con guidatore</translation>
    </message>
    <message>
        <source>centred piston pin; dial gauge in line with the cylinder</source>
        <translation>spinotto centrato; comparatore in asse col cilindro</translation>
    </message>
    <message>
        <source>closed tyre, dry air, weather as in the standard atmosphere</source>
        <translation>pneumatico chiuso, aria secca, clima come nell&apos;atmosfera normale</translation>
    </message>
    <message>
        <source>coil or winding</source>
        <translation>bobina o avvolgimento</translation>
    </message>
    <message>
        <source>cold, with a feeler gauge</source>
        <translation>a freddo, con lo spessimetro</translation>
    </message>
    <message>
        <source>compare the frame with the papers: a number that fits its check digit can still be the wrong one</source>
        <translation>confrontare il telaio coi documenti: un numero con cifra giusta può essere comunque quello sbagliato</translation>
    </message>
    <message>
        <source>continuity</source>
        <translation>continuità</translation>
    </message>
    <message>
        <source>copper; class 5 areas from the table, others scaled by area</source>
        <translation>rame; sezioni classe 5 dalla tabella, le altre in proporzione</translation>
    </message>
    <message>
        <source>cut-off on the wall below the lamp&apos;s centre</source>
        <translation>taglio sul muro sotto il centro del faro</translation>
    </message>
    <message>
        <source>disconnect the part first: what lies beside it is measured too</source>
        <translation>staccare prima il pezzo: si misura anche ciò che gli sta accanto</translation>
    </message>
    <message>
        <source>drive square to middle of the nut</source>
        <translation>dal quadro al centro del dado</translation>
    </message>
    <message>
        <source>dry air without it</source>
        <translation>senza, aria secca</translation>
    </message>
    <message>
        <source>dynamo</source>
        <translation>dinamo</translation>
    </message>
    <message>
        <source>earth</source>
        <translation>massa</translation>
    </message>
    <message>
        <source>earth side of any load</source>
        <translation>lato massa di un utilizzatore</translation>
    </message>
    <message>
        <source>engine off, a while after riding</source>
        <translation>motore spento, un po&apos; dopo la guida</translation>
    </message>
    <message>
        <source>engine turns for one turn of the wheel, all stages multiplied</source>
        <translation>giri motore per un giro di ruota, tutti gli stadi moltiplicati</translation>
    </message>
    <message>
        <source>engine warm, lamps on</source>
        <translation>motore caldo, luci accese</translation>
    </message>
    <message>
        <source>expanded (k = 2), of the reading as measured; without it an ordinary meter is assumed</source>
        <translation>estesa (k = 2), della lettura; senza si presume uno strumento comune</translation>
    </message>
    <message>
        <source>expanded uncertainty (k = 2) of the instrument; without it an ordinary one is assumed</source>
        <translation>incertezza estesa (k = 2) dello strumento; senza, se ne presume una comune</translation>
    </message>
    <message>
        <source>fit only sizes that the machine&apos;s papers allow</source>
        <translation>montare solo misure ammesse dal libretto del mezzo</translation>
    </message>
    <message>
        <source>flooded, with caps</source>
        <translation>con tappi</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>portata</translation>
    </message>
    <message>
        <source>flush until it runs clear, whatever the sum says</source>
        <translation>spurgare finché esce pulito, qualunque cosa dica il conto</translation>
    </message>
    <message>
        <source>for the mean piston speed</source>
        <translation>per la velocità media del pistone</translation>
    </message>
    <message>
        <source>from the first to the second reading</source>
        <translation>dalla prima alla seconda lettura</translation>
    </message>
    <message>
        <source>from the lamp</source>
        <translation>dal faro</translation>
    </message>
    <message>
        <source>from the manual</source>
        <translation>dal manuale</translation>
    </message>
    <message>
        <source>from the manual or from a new part</source>
        <translation>dal manuale o da un pezzo nuovo</translation>
    </message>
    <message>
        <source>from the manual, at 20 degC</source>
        <translation>dal manuale, a 20 degC</translation>
    </message>
    <message>
        <source>from top dead centre; give this or the angle</source>
        <translation>dal punto morto superiore; dare questa o l&apos;angolo</translation>
    </message>
    <message>
        <source>from top dead centre; give this or the travel</source>
        <translation>dal punto morto superiore; dare questo o la corsa</translation>
    </message>
    <message>
        <source>fuel alone</source>
        <translation>solo benzina</translation>
    </message>
    <message>
        <source>fuel to oil by volume, from the manual: 50, 50:1 or 2 %</source>
        <translation>benzina a olio in volume, dal manuale: 50, 50:1 o 2 %</translation>
    </message>
    <message>
        <source>gauges and cranking speeds differ: compare with the manual&apos;s method, and cylinders with each other</source>
        <translation>strumenti e regimi d&apos;avviamento differiscono: confrontare col metodo del manuale, e i cilindri tra loro</translation>
    </message>
    <message>
        <source>give this or the power</source>
        <translation>dare questa o la potenza</translation>
    </message>
    <message>
        <source>glass fuses by IEC 60127 carry their speed in letters, FF F M T TT from very fast to very slow: renew like by like</source>
        <translation>i fusibili in vetro IEC 60127 portano la velocità in lettere, FF F M T TT da molto rapido a molto lento: sostituire con uguale</translation>
    </message>
    <message>
        <source>grip mark to middle of the drive square</source>
        <translation>dal segno d&apos;impugnatura al centro del quadro</translation>
    </message>
    <message>
        <source>half of washer face plus hole; an ordinary hexagon head over a medium hole is assumed</source>
        <translation>metà di appoggio più foro; si presume una testa esagonale comune su foro medio</translation>
    </message>
    <message>
        <source>hose and pipe together</source>
        <translation>tubo flessibile e rigido insieme</translation>
    </message>
    <message>
        <source>how far the bolt is to be used</source>
        <translation>quanto si vuole sfruttare la vite</translation>
    </message>
    <message>
        <source>how often the circuit&apos;s content is pushed through: two or more</source>
        <translation>quante volte si spinge tutto il contenuto: due o più</translation>
    </message>
    <message>
        <source>how the bolts lie</source>
        <translation>come stanno le viti</translation>
    </message>
    <message>
        <source>how the carburettor&apos;s maker numbers jets</source>
        <translation>come il costruttore del carburatore numera i getti</translation>
    </message>
    <message>
        <source>ignition off, meter in the negative lead</source>
        <translation>accensione spenta, strumento sul cavo negativo</translation>
    </message>
    <message>
        <source>ignition off, plug lead earthed, hands away from the kick-start</source>
        <translation>accensione spenta, cavo candela a massa, mani lontane dalla pedivella</translation>
    </message>
    <message>
        <source>ignition or kill switch, each contact</source>
        <translation>blocchetto o interruttore d&apos;arresto, ogni contatto</translation>
    </message>
    <message>
        <source>in how many equal steps</source>
        <translation>in quanti passi uguali</translation>
    </message>
    <message>
        <source>in thread and under the head; give this or nut_factor</source>
        <translation>nel filetto e sotto testa; dare questo o nut_factor</translation>
    </message>
    <message>
        <source>inside diameter, about 3 mm</source>
        <translation>interno, circa 3 mm</translation>
    </message>
    <message>
        <source>less the resistance of the leads held together</source>
        <translation>meno la resistenza dei puntali uniti</translation>
    </message>
    <message>
        <source>level ground, tyres at pressure, rider on, suspension bounced</source>
        <translation>terreno piano, pneumatici a pressione, guidatore in sella, sospensioni assestate</translation>
    </message>
    <message>
        <source>lighting feed plus return</source>
        <translation>luci, andata e ritorno</translation>
    </message>
    <message>
        <source>limits differ by country, class and day: the law of the place applies</source>
        <translation>i limiti cambiano per paese, classe e data: vale la legge del luogo</translation>
    </message>
    <message>
        <source>load index 30 to 80, speed symbols with a fixed speed</source>
        <translation>indice di carico da 30 a 80, codici di velocità a velocità fissa</translation>
    </message>
    <message>
        <source>loosen in the opposite order</source>
        <translation>allentare nell&apos;ordine inverso</translation>
    </message>
    <message>
        <source>magnetic switch</source>
        <translation>interruttore magnetico</translation>
    </message>
    <message>
        <source>measured while the load current flows</source>
        <translation>misurata mentre passa la corrente di carico</translation>
    </message>
    <message>
        <source>measured: the stamp may be worn off or wrong</source>
        <translation>misurato: la stampigliatura può essere consumata o errata</translation>
    </message>
    <message>
        <source>mechanical starter switch</source>
        <translation>interruttore meccanico d&apos;avviamento</translation>
    </message>
    <message>
        <source>moped</source>
        <translation>ciclomotore</translation>
    </message>
    <message>
        <source>motorcycle</source>
        <translation>motociclo</translation>
    </message>
    <message>
        <source>never bleed a hot tyre down to its cold pressure</source>
        <translation>mai sgonfiare un pneumatico caldo alla sua pressione a freddo</translation>
    </message>
    <message>
        <source>never let the reservoir run empty; never use again what came out</source>
        <translation>mai lasciare vuoto il serbatoio; mai riusare ciò che è uscito</translation>
    </message>
    <message>
        <source>never press the starter with the meter in the lead: its fuse blows</source>
        <translation>mai premere l&apos;avviamento con lo strumento nel cavo: salta il suo fusibile</translation>
    </message>
    <message>
        <source>never run an alternator with the battery off: the spike destroys regulator and lamps</source>
        <translation>mai far girare un alternatore senza batteria: il picco distrugge regolatore e lampade</translation>
    </message>
    <message>
        <source>no clearance at all means that the valve may not close: measure again with a thinner shim</source>
        <translation>nessun gioco vuol dire che la valvola forse non chiude: rimisurare con uno spessore più sottile</translation>
    </message>
    <message>
        <source>no slip of belt, clutch or tyre is allowed for</source>
        <translation>senza slittamento di cinghia, frizione o pneumatico</translation>
    </message>
    <message>
        <source>nominal</source>
        <translation>nominale</translation>
    </message>
    <message>
        <source>nominal sizes of an unloaded tyre: a loaded one rolls a few per cent shorter</source>
        <translation>misure nominali di un pneumatico scarico: sotto carico rotola qualche per cento in meno</translation>
    </message>
    <message>
        <source>of a barometer at the place, not reduced to sea level; replaces the altitude</source>
        <translation>di un barometro sul posto, non ridotta al mare; sostituisce l&apos;altitudine</translation>
    </message>
    <message>
        <source>of a headlamp&apos;s two filaments the larger counts; tail and stop count together</source>
        <translation>dei due filamenti di un faro conta il maggiore; coda e stop contano insieme</translation>
    </message>
    <message>
        <source>of one joint</source>
        <translation>di un giunto</translation>
    </message>
    <message>
        <source>of the acid</source>
        <translation>dell&apos;acido</translation>
    </message>
    <message>
        <source>of the air</source>
        <translation>dell&apos;aria</translation>
    </message>
    <message>
        <source>of the air in the tyre at that reading</source>
        <translation>dell&apos;aria nel pneumatico a quella lettura</translation>
    </message>
    <message>
        <source>of the air in the tyre now</source>
        <translation>dell&apos;aria nel pneumatico adesso</translation>
    </message>
    <message>
        <source>of the air inside</source>
        <translation>dell&apos;aria dentro</translation>
    </message>
    <message>
        <source>of the capacity</source>
        <translation>della capacità</translation>
    </message>
    <message>
        <source>of the copper; 18 AWG is read too</source>
        <translation>del rame; si legge anche 18 AWG</translation>
    </message>
    <message>
        <source>of the crankshaft</source>
        <translation>dell&apos;albero motore</translation>
    </message>
    <message>
        <source>of the cylinder</source>
        <translation>del cilindro</translation>
    </message>
    <message>
        <source>of the driven tyre, rolled out under load</source>
        <translation>del pneumatico motore, misurata rotolando sotto carico</translation>
    </message>
    <message>
        <source>of the machine</source>
        <translation>del mezzo</translation>
    </message>
    <message>
        <source>of the piston</source>
        <translation>del pistone</translation>
    </message>
    <message>
        <source>of the winding</source>
        <translation>dell&apos;avvolgimento</translation>
    </message>
    <message>
        <source>often 0.05 or 0.025</source>
        <translation>spesso 0,05 o 0,025</translation>
    </message>
    <message>
        <source>older and many European and Asian numbers have no check digit</source>
        <translation>i numeri più vecchi e molti europei e asiatici non hanno cifra di controllo</translation>
    </message>
    <message>
        <source>one connection</source>
        <translation>una connessione</translation>
    </message>
    <message>
        <source>one per cent line</source>
        <translation>linea dell&apos;uno per cento</translation>
    </message>
    <message>
        <source>one to two hours after charging, nothing switched on</source>
        <translation>una o due ore dopo la carica, niente acceso</translation>
    </message>
    <message>
        <source>one way</source>
        <translation>solo andata</translation>
    </message>
    <message>
        <source>only copper windings are corrected</source>
        <translation>si correggono solo avvolgimenti di rame</translation>
    </message>
    <message>
        <source>petrol before the oil goes in</source>
        <translation>benzina prima dell&apos;olio</translation>
    </message>
    <message>
        <source>petrol: no flame, fresh air, a can made for it</source>
        <translation>benzina: niente fiamme, aria fresca, una tanica apposta</translation>
    </message>
    <message>
        <source>printed on the battery</source>
        <translation>scritta sulla batteria</translation>
    </message>
    <message>
        <source>printed on the case</source>
        <translation>scritta sulla cassa</translation>
    </message>
    <message>
        <source>published limits differ and were made for heavier machines: the manual wins</source>
        <translation>i limiti pubblicati differiscono e sono fatti per macchine più pesanti: vale prima il manuale</translation>
    </message>
    <message>
        <source>published nut factors for the same words differ by up to half, and preload scatters by 25 to 35 % at one torque: a torque never proves a preload</source>
        <translation>i fattori pubblicati per le stesse parole differiscono fino a metà, e il precarico varia del 25-35 % a pari coppia: una coppia non prova mai un precarico</translation>
    </message>
    <message>
        <source>rated output at riding speed</source>
        <translation>potenza nominale al regime di marcia</translation>
    </message>
    <message>
        <source>rated watts at 12 V: at 13.5 V a bulb draws about a sixth more</source>
        <translation>watt nominali a 12 V: a 13,5 V una lampada assorbe circa un sesto in più</translation>
    </message>
    <message>
        <source>rated; give this or the current</source>
        <translation>nominale; dare questa o la corrente</translation>
    </message>
    <message>
        <source>refused where the torque would pass the bolt&apos;s proof load</source>
        <translation>rifiutato dove la coppia supererebbe il carico di prova della vite</translation>
    </message>
    <message>
        <source>regulator output to battery positive</source>
        <translation>uscita regolatore al positivo batteria</translation>
    </message>
    <message>
        <source>replaces the table</source>
        <translation>sostituisce la tabella</translation>
    </message>
    <message>
        <source>replaces the usual band</source>
        <translation>sostituisce la banda usuale</translation>
    </message>
    <message>
        <source>rested one to two hours; published tables differ by up to 0.09 V; voltage is not corrected for temperature for want of a second source</source>
        <translation>riposata una o due ore; le tabelle pubblicate differiscono fino a 0,09 V; la tensione non è corretta per la temperatura, manca una seconda fonte</translation>
    </message>
    <message>
        <source>round the circle</source>
        <translation>in cerchio</translation>
    </message>
    <message>
        <source>row, from the middle</source>
        <translation>fila, dal centro</translation>
    </message>
    <message>
        <source>running engine: exhaust gas, hot parts, loose clothing</source>
        <translation>motore acceso: gas di scarico, parti calde, abiti larghi</translation>
    </message>
    <message>
        <source>self-discharge comes on top, more so in the warm and in an old battery</source>
        <translation>l&apos;autoscarica si aggiunge, di più al caldo e con batteria vecchia</translation>
    </message>
    <message>
        <source>since the part was new</source>
        <translation>da quando il pezzo era nuovo</translation>
    </message>
    <message>
        <source>single-phase alternator</source>
        <translation>alternatore monofase</translation>
    </message>
    <message>
        <source>solenoid switch</source>
        <translation>solenoide</translation>
    </message>
    <message>
        <source>stamped on the head; no mark means unknown, not 8.8</source>
        <translation>stampata sulla testa; senza segno è ignota, non 8.8</translation>
    </message>
    <message>
        <source>starter body to battery negative</source>
        <translation>corpo del motorino al negativo batteria</translation>
    </message>
    <message>
        <source>starter control circuit, both windings on</source>
        <translation>circuito di comando avviamento, due avvolgimenti inseriti</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>acciaio</translation>
    </message>
    <message>
        <source>steel bolts in steel; soft threads, studs, seals and plastic need the manual&apos;s figure</source>
        <translation>viti d&apos;acciaio in acciaio; filetti teneri, prigionieri, guarnizioni e plastica vogliono il valore del manuale</translation>
    </message>
    <message>
        <source>such as 100/90-10 56J or 3.50-10 59J</source>
        <translation>per esempio 100/90-10 56J o 3.50-10 59J</translation>
    </message>
    <message>
        <source>taken as now for dates</source>
        <translation>preso come adesso per le date</translation>
    </message>
    <message>
        <source>that flowed</source>
        <translation>che passava</translation>
    </message>
    <message>
        <source>the age limit is the shop&apos;s: common practice, no source</source>
        <translation>il limite d&apos;età è dell&apos;officina: pratica comune, senza fonte</translation>
    </message>
    <message>
        <source>the cap and the manual name the grade: use that one</source>
        <translation>il tappo e il manuale dicono il tipo: usare quello</translation>
    </message>
    <message>
        <source>the date or the odometer now; today where dates are meant</source>
        <translation>la data o i chilometri adesso; oggi dove si intendono date</translation>
    </message>
    <message>
        <source>the day to count to</source>
        <translation>il giorno fino a cui contare</translation>
    </message>
    <message>
        <source>the figure itself is the manual&apos;s: too early holes the piston</source>
        <translation>il valore è quello del manuale: troppo anticipo buca il pistone</translation>
    </message>
    <message>
        <source>the finished mix</source>
        <translation>la miscela finita</translation>
    </message>
    <message>
        <source>the hand must pull at the grip mark: anywhere else the sum is wrong</source>
        <translation>la mano deve tirare al segno d&apos;impugnatura: altrove il conto è sbagliato</translation>
    </message>
    <message>
        <source>the last four digits of the DOT code, week and year, such as 2508; three before 2000</source>
        <translation>le ultime quattro cifre del codice DOT, settimana e anno, per esempio 2508; tre prima del 2000</translation>
    </message>
    <message>
        <source>the law of the place applies</source>
        <translation>vale la legge del luogo</translation>
    </message>
    <message>
        <source>the load holds at the tyre&apos;s reference pressure</source>
        <translation>il carico vale alla pressione di riferimento del pneumatico</translation>
    </message>
    <message>
        <source>the loss is taken as even over time; days are counted from the second reading</source>
        <translation>la perdita si prende uniforme nel tempo; i giorni contano dalla seconda lettura</translation>
    </message>
    <message>
        <source>the machine&apos;s wiring diagram wins</source>
        <translation>vale prima lo schema elettrico del mezzo</translation>
    </message>
    <message>
        <source>the manual&apos;s figure for a soft thread</source>
        <translation>il valore del manuale per un filetto tenero</translation>
    </message>
    <message>
        <source>the manual&apos;s interval wins; whichever of time and distance comes first counts</source>
        <translation>vale l&apos;intervallo del manuale; tra tempo e distanza conta ciò che viene prima</translation>
    </message>
    <message>
        <source>the manual&apos;s ratio and kind of oil win; too little oil seizes the engine</source>
        <translation>valgono rapporto e tipo d&apos;olio del manuale; troppo poco olio grippa il motore</translation>
    </message>
    <message>
        <source>the manual&apos;s service limit</source>
        <translation>il limite d&apos;usura del manuale</translation>
    </message>
    <message>
        <source>the number stamped on it</source>
        <translation>il numero stampato</translation>
    </message>
    <message>
        <source>the power correction is for four-stroke petrol engines without supercharger</source>
        <translation>la correzione di potenza vale per motori a benzina a quattro tempi senza compressore</translation>
    </message>
    <message>
        <source>the pressure at which something has to be done</source>
        <translation>la pressione a cui bisogna fare qualcosa</translation>
    </message>
    <message>
        <source>the setting must lie in the wrench&apos;s range</source>
        <translation>la taratura deve stare nel campo della chiave</translation>
    </message>
    <message>
        <source>the torque that is or was applied</source>
        <translation>la coppia applicata o da applicare</translation>
    </message>
    <message>
        <source>the unit wanted, such as N.m</source>
        <translation>l&apos;unità voluta, per esempio N.m</translation>
    </message>
    <message>
        <source>the usual band is worked out here: the manual wins</source>
        <translation>la banda usuale è calcolata qui: vale prima il manuale</translation>
    </message>
    <message>
        <source>three-phase alternator</source>
        <translation>alternatore trifase</translation>
    </message>
    <message>
        <source>throttle open, engine warm</source>
        <translation>gas aperto, motore caldo</translation>
    </message>
    <message>
        <source>torque and energy, gauge and absolute pressure are not converted into each other</source>
        <translation>coppia ed energia, pressione relativa e assoluta non si convertono tra loro</translation>
    </message>
    <message>
        <source>torque factor of the surface, about 0.2 dry steel, 0.15 oiled; give this or friction</source>
        <translation>fattore di coppia della superficie, circa 0,2 acciaio a secco, 0,15 oliato; dare questo o l&apos;attrito</translation>
    </message>
    <message>
        <source>turn the engine by hand and measure again afterwards</source>
        <translation>poi girare il motore a mano e rimisurare</translation>
    </message>
    <message>
        <source>two or three wires from the alternator; brushes: a dynamo</source>
        <translation>due o tre fili dall&apos;alternatore; spazzole: una dinamo</translation>
    </message>
    <message>
        <source>two-stroke makers may quote the ratio from exhaust closing: say which</source>
        <translation>i costruttori di due tempi spesso danno il rapporto dalla chiusura dello scarico: dire quale</translation>
    </message>
    <message>
        <source>tyre size and pressure change it; the law of the place sets what is allowed</source>
        <translation>misura e pressione del pneumatico lo cambiano; la legge del luogo dice che cosa è ammesso</translation>
    </message>
    <message>
        <source>until the next ride</source>
        <translation>fino alla prossima uscita</translation>
    </message>
    <message>
        <source>up to the upper mark</source>
        <translation>fino al segno superiore</translation>
    </message>
    <message>
        <source>upper edge above bottom dead centre; for two-strokes counted from exhaust closing</source>
        <translation>bordo superiore sopra il punto morto inferiore; nei due tempi conta dalla chiusura dello scarico</translation>
    </message>
    <message>
        <source>venturi carburettor, same engine speed and throttle, same fuel</source>
        <translation>carburatore a venturi, stesso regime e gas, stesso carburante</translation>
    </message>
    <message>
        <source>voltage alone does not prove a battery: a worn one rests high and falls under load</source>
        <translation>la sola tensione non prova una batteria: una finita sta alta a riposo e crolla sotto carico</translation>
    </message>
    <message>
        <source>warm beside an engine</source>
        <translation>caldo accanto a un motore</translation>
    </message>
    <message>
        <source>wear is seldom even: look again well before</source>
        <translation>l&apos;usura è di rado uniforme: riguardare ben prima</translation>
    </message>
    <message>
        <source>what the bolt screws into</source>
        <translation>in che cosa si avvita</translation>
    </message>
    <message>
        <source>what the dial shows, a speed or a distance</source>
        <translation>ciò che segna il quadrante, velocità o distanza</translation>
    </message>
    <message>
        <source>what the machine will carry</source>
        <translation>che cosa porterà il mezzo</translation>
    </message>
    <message>
        <source>what the shop has decided; there is no general law</source>
        <translation>ciò che l&apos;officina ha deciso; non c&apos;è una legge generale</translation>
    </message>
    <message>
        <source>where it differs from the thread&apos;s</source>
        <translation>dove differisce da quello del filetto</translation>
    </message>
    <message>
        <source>where it will run</source>
        <translation>dove girerà</translation>
    </message>
    <message>
        <source>where the jet is right</source>
        <translation>dove il getto va bene</translation>
    </message>
    <message>
        <source>where the mark is to go</source>
        <translation>dove va il segno</translation>
    </message>
    <message>
        <source>whole positive side of the starter</source>
        <translation>tutto il lato positivo dell&apos;avviamento</translation>
    </message>
    <message>
        <source>whose law applies</source>
        <translation>quale legge vale</translation>
    </message>
    <message>
        <source>whose limits apply</source>
        <translation>di chi valgono i limiti</translation>
    </message>
    <message>
        <source>worked out here: the manual wins</source>
        <translation>calcolato qui: vale prima il manuale</translation>
    </message>
    <message>
        <source>years that have not come are left out</source>
        <translation>gli anni futuri si tralasciano</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 = %2; factor from %3</source>
        <translation>%1 = %2; fattore da %3</translation>
    </message>
    <message>
        <source>%1: lamp centre %2 850 mm: %3 to %4 % down (%5 to %6 deg)</source>
        <translation>%1: centro del faro %2 850 mm: da %3 a %4 % in giù (da %5 a %6 gradi)</translation>
    </message>
    <message>
        <source>above</source>
        <translation>sopra</translation>
    </message>
    <message>
        <source>up to</source>
        <translation>fino a</translation>
    </message>
    <message>
        <source>battery</source>
        <translation>batteria</translation>
    </message>
    <message>
        <source>idle</source>
        <translation>minimo</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>riposo</translation>
    </message>
    <message>
        <source>revs</source>
        <translation>regime</translation>
    </message>
    <message>
        <source>first</source>
        <translation>prima</translation>
    </message>
    <message>
        <source>second, same temperature</source>
        <translation>seconda, stessa temperatura</translation>
    </message>
    <message>
        <source>(reading + ambient)/ambient stays the same: %1 kPa x 101.325/%2 = %3 kPa</source>
        <translation>(lettura + ambiente)/ambiente resta uguale: %1 kPa x 101.325/%2 = %3 kPa</translation>
    </message>
    <message>
        <source>%1 to prove, first: %2</source>
        <translation>%1 da verificare, prima: %2</translation>
    </message>
    <message>
        <source>Not before: %1 came off after %2, so it goes on first.</source>
        <translation>Non prima: %1 si è smontato dopo %2, quindi si rimonta prima.</translation>
    </message>
    <message>
        <source>Not before: the task %1 has to be finished before %2.</source>
        <translation>Non prima: il lavoro %1 va finito prima di %2.</translation>
    </message>
    <message>
        <source>That is on again already.</source>
        <translation>È già rimontato.</translation>
    </message>
    <message>
        <source>That is the first one already.</source>
        <translation>È già il primo.</translation>
    </message>
    <message>
        <source>That is the last one already.</source>
        <translation>È già l&apos;ultimo.</translation>
    </message>
    <message>
        <source>ask the owner: %1</source>
        <translation>chiedere al proprietario: %1</translation>
    </message>
    <message>
        <source>ready to be handed over</source>
        <translation>pronto per la consegna</translation>
    </message>
    <message>
        <source>does not run as it was found: %1</source>
        <translation>non passa come trovato: %1</translation>
    </message>
    <message>
        <source>the photo has %1 x %2 pixels, more than 120 megapixels: save it smaller</source>
        <translation>la foto ha %1 x %2 pixel, più di 120 megapixel: salvarla più piccola</translation>
    </message>
    <message>
        <source>this is neither a JPEG nor a PNG: choose a photo</source>
        <translation>non è né un JPEG né un PNG: scegliere una foto</translation>
    </message>
    <message>
        <source>there is no such file: check the name</source>
        <translation>questo file non c&apos;è: controllare il nome</translation>
    </message>
    <message>
        <source>the file is larger than 300 MB: save it smaller</source>
        <translation>il file supera 300 MB: salvarlo più piccolo</translation>
    </message>
    <message>
        <source>the file may not be read: check its permissions</source>
        <translation>il file non si può leggere: controllare i permessi</translation>
    </message>
    <message>
        <source>the JPEG is damaged or cut short (%1): take or copy the photo again</source>
        <translation>il JPEG è danneggiato o troncato (%1): rifare o ricopiare la foto</translation>
    </message>
    <message>
        <source>the PNG is damaged or cut short (%1): take or copy the photo again</source>
        <translation>il PNG è danneggiato o troncato (%1): rifare o ricopiare la foto</translation>
    </message>
    <message>
        <source>a progressive JPEG this large would not fit into memory: save it smaller, or as a baseline JPEG</source>
        <translation>un JPEG progressivo così grande non entra in memoria: salvarlo più piccolo, o come JPEG di base</translation>
    </message>
    <message>
        <source>the JPEG decoder could not be started</source>
        <translation>il lettore di JPEG non si è avviato</translation>
    </message>
    <message>
        <source>the tap lies outside the photo: tap on the photo</source>
        <translation>il tocco è fuori dalla foto: toccare la foto</translation>
    </message>
    <message>
        <source>the stroke leaves the photo: keep it inside</source>
        <translation>il tratto esce dalla foto: restare dentro</translation>
    </message>
    <message>
        <source>the stroke needs two different points: draw it across the wires</source>
        <translation>il tratto vuole due punti diversi: passare il dito sui fili</translation>
    </message>
    <message>
        <source>the mouth of the connector leaves the photo: keep it inside</source>
        <translation>la bocca del connettore esce dalla foto: restare dentro</translation>
    </message>
    <message>
        <source>the mouth of the connector needs two different points: draw it across the wires</source>
        <translation>la bocca del connettore vuole due punti diversi: passare il dito sui fili</translation>
    </message>
    <message>
        <source>backup: cannot be written: %1</source>
        <translation>backup: non si può scrivere: %1</translation>
    </message>
    <message>
        <source>%1: has %2 bytes, at most %3 are kept; shorten the text</source>
        <translation>%1: ha %2 byte, se ne tengono al massimo %3; accorciare il testo</translation>
    </message>
    <message>
        <source>%1: is not written in UTF-8; save the sheet as CSV in UTF-8, or type it anew</source>
        <translation>%1: non è scritto in UTF-8; salvare il foglio come CSV in UTF-8, o riscriverlo</translation>
    </message>
    <message>
        <source>%1: holds a NUL character; type it anew</source>
        <translation>%1: contiene un carattere NUL; riscriverlo</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has more than one digit behind the mark, and an odometer has at most one: type %2 if that is meant, or %3</source>
        <translation>«%1» ha più di una cifra dopo il segno, e un contachilometri ne ha al massimo una: scrivi %2 se si intende questo, oppure %3</translation>
    </message>
    <message>
        <source>%1 in the step, ± %2 % as of a wrench by ISO 6789-1</source>
        <translation>%1 nel passo, ± %2 % come una chiave secondo ISO 6789-1</translation>
    </message>
    <message>
        <source>one of the readings is outside: %1</source>
        <translation>una delle letture è fuori: %1</translation>
    </message>
    <message>
        <source>no instrument was named: 10 % of the reading, k = 2</source>
        <translation>nessuno strumento indicato: 10 % della lettura, k = 2</translation>
    </message>
    <message>
        <source>the instrument is not known: name it, or measure again with a known one</source>
        <translation>lo strumento non è noto: indicalo, o misura di nuovo con uno noto</translation>
    </message>
    <message>
        <source>%1: read %2, to be %3</source>
        <translation>%1: letto %2, deve essere %3</translation>
    </message>
    <message>
        <source>measured outside its limit: %1, %2</source>
        <translation>misurato fuori limite: %1, %2</translation>
    </message>
    <message>
        <source>not proved: %1. %2</source>
        <translation>non verificato: %1. %2</translation>
    </message>
    <message>
        <source>not read back: place %1</source>
        <translation>non riletta: via %1</translation>
    </message>
    <message>
        <source>not read back: places %1</source>
        <translation>non rilette: vie %1</translation>
    </message>
    <message>
        <source>place %1 does not match</source>
        <translation>via %1 non corrisponde</translation>
    </message>
    <message>
        <source>place %1, unit half, does not match</source>
        <translation>via %1, lato unità, non corrisponde</translation>
    </message>
    <message>
        <source>too close to its limit to call: %1, %2</source>
        <translation>troppo vicino al limite per decidere: %1, %2</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Nothing was changed. Bring what can be read into a new place with &apos;undercowlctl store salvage --to NEWFOLDER&apos;, and name a backup with --from if there is one.</source>
        <translation>Niente è stato cambiato. Portare ciò che si legge in un posto nuovo con &apos;undercowlctl store salvage --to NEWFOLDER&apos; e indicare una copia di sicurezza con --from, se c&apos;è.</translation>
    </message>
    <message>
        <source>the store in %1 has lost its shop.db, but photos or copies of it are there. Nothing was changed. Bring what can be read into a new place with &apos;undercowlctl store salvage --to NEWFOLDER&apos;, and name a backup with --from if there is one.</source>
        <translation>l&apos;archivio in %1 ha perso la sua shop.db, ma ci sono foto o copie. Niente è stato cambiato. Portare ciò che si legge in un posto nuovo con &apos;undercowlctl store salvage --to NEWFOLDER&apos; e indicare una copia di sicurezza con --from, se c&apos;è.</translation>
    </message>
    <message>
        <source>the store in %1 has an empty shop.db, but photos or copies of it are there. Nothing was changed. Bring what can be read into a new place with &apos;undercowlctl store salvage --to NEWFOLDER&apos;, and name a backup with --from if there is one.</source>
        <translation>l&apos;archivio in %1 ha una shop.db vuota, ma ci sono foto o copie. Niente è stato cambiato. Portare ciò che si legge in un posto nuovo con &apos;undercowlctl store salvage --to NEWFOLDER&apos; e indicare una copia di sicurezza con --from, se c&apos;è.</translation>
    </message>
    <message>
        <source>The disk is full, so this shop can only be looked at. Nothing in it was changed. Make room on the disk to go on working in it.</source>
        <translation>Lo spazio sul dispositivo è finito, perciò questa officina si può solo guardare. Niente è stato cambiato. Fare posto per continuare a lavorarci.</translation>
    </message>
    <message>
        <source>This shop is damaged and can only be looked at. Nothing in it was changed. A new one can be made of what can be read.</source>
        <translation>Questa officina è danneggiata e si può solo guardare. Niente è stato cambiato. Da ciò che si legge se ne può fare una nuova.</translation>
    </message>
    <message>
        <source>%1 is the current shop: go on with another one first</source>
        <translation>%1 è l’officina attuale: prima continuare con un’altra</translation>
    </message>
    <message>
        <source>%1 could not be removed: %2</source>
        <translation>impossibile togliere %1: %2</translation>
    </message>
    <message>
        <source>runs as it was written down, clipped, dry under pressure: %1</source>
        <translation>passa come annotato, fissato, asciutto in pressione: %1</translation>
    </message>
    <message>
        <source>runs as the machine&apos;s manual shows, clipped, dry under pressure: %1</source>
        <translation>passa come nel manuale del mezzo, fissato, asciutto in pressione: %1</translation>
    </message>
    <message>
        <source>did not work when it came in, and has no answer: %1</source>
        <translation>non funzionava all&apos;arrivo ed è senza risposta: %1</translation>
    </message>
    <message>
        <source>does not work: %1</source>
        <translation>non funziona: %1</translation>
    </message>
    <message>
        <source>does not work: %1 (%2)</source>
        <translation>non funziona: %1 (%2)</translation>
    </message>
    <message>
        <source>left as it was: %1 (%2)</source>
        <translation>lasciato com&apos;era: %1 (%2)</translation>
    </message>
    <message>
        <source>left open: %1</source>
        <translation>rimasto in sospeso: %1</translation>
    </message>
    <message>
        <source>measured outside its limit, and the owner does not want it put right: %1, %2</source>
        <translation>misurato fuori limite, e il proprietario non vuole che si ripari: %1, %2</translation>
    </message>
    <message>
        <source>next: fit the part: %1</source>
        <translation>poi: montare il ricambio: %1</translation>
    </message>
    <message>
        <source>next: put the wires right: %1</source>
        <translation>poi: sistemare i fili: %1</translation>
    </message>
    <message>
        <source>part not fitted: %1</source>
        <translation>ricambio non montato: %1</translation>
    </message>
    <message>
        <source>what the owner said has no answer: %1</source>
        <translation>quanto detto dal proprietario è senza risposta: %1</translation>
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
    <message>
        <source>Throw away what was typed? It cannot be brought back.</source>
        <translation>Buttare ciò che è stato scritto? Non si può recuperare.</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Butta</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Tieni</translation>
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
    <name>FileChooser</name>
    <message>
        <source>Folder above %1</source>
        <translation>Cartella sopra %1</translation>
    </message>
    <message>
        <source>Looking</source>
        <translation>Ricerca</translation>
    </message>
</context>
<context>
    <name>FilesWritten</name>
    <message>
        <source>Written</source>
        <translation>Scritto</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Condividi</translation>
    </message>
    <message>
        <source>Show the folder</source>
        <translation>Mostra la cartella</translation>
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
    <message>
        <source>Waits for</source>
        <translation>In attesa di</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Rilievi</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Tutti</translation>
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
        <source>Machines that wait for what?</source>
        <translation>Mezzi che aspettano che cosa?</translation>
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
        <translation>tubo freno anteriore screpolato</translation>
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
    <message>
        <source>Asked for: %1</source>
        <translation>Si chiede: %1</translation>
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
    <message>
        <source>Memo</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Not settled yet</source>
        <translation>Non ancora risolto</translation>
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
    <message>
        <source>Bring a shop back</source>
        <translation>Riporta un&apos;officina</translation>
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
    <message>
        <source>Condition as found</source>
        <translation>Stato come trovato</translation>
    </message>
    <message>
        <source>two pins green, latch broken</source>
        <translation>due pin verdi, fermo rotto</translation>
    </message>
    <message>
        <source>What was done about it</source>
        <translation>Che cosa si è fatto</translation>
    </message>
    <message>
        <source>cleaned, contact grease</source>
        <translation>pulito, grasso per contatti</translation>
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
    <message>
        <source>The new part</source>
        <translation>Il ricambio nuovo</translation>
    </message>
    <message>
        <source>Carry the wires over</source>
        <translation>Riporta i fili</translation>
    </message>
    <message>
        <source>with other connections than the old one</source>
        <translation>con collegamenti diversi dal vecchio</translation>
    </message>
    <message>
        <source>A new part comes in its place</source>
        <translation>Al suo posto va un ricambio nuovo</translation>
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
    <message>
        <source>Language of the record</source>
        <translation>Lingua del rapporto</translation>
    </message>
    <message numerus="yes">
        <source>Not yet: %n to see to above</source>
        <comment>what stops it</comment>
        <translation>
            <numerusform>Non ancora: %n da sistemare sopra</numerusform>
            <numerusform>Non ancora: %n da sistemare sopra</numerusform>
        </translation>
    </message>
    <message>
        <source>Then the record is made with it</source>
        <translation>Il resoconto viene fatto insieme</translation>
    </message>
    <message>
        <source>More was said since these files were made: make them again.</source>
        <translation>Dopo questi file è stato detto altro: falli di nuovo.</translation>
    </message>
    <message>
        <source>not signed yet</source>
        <translation>non ancora firmato</translation>
    </message>
    <message numerus="yes">
        <source>%1, and %n more</source>
        <comment>what asks</comment>
        <translation>
            <numerusform>%1, e %n altro</numerusform>
            <numerusform>%1, e altri %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Hand it over all the same</source>
        <translation>Consegna comunque</translation>
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
    <name>HardwarePlaces</name>
    <message>
        <source>With a photo of this step, a tap on it shows later which hole each piece belongs to.</source>
        <translation>Con una foto di questo passo, un tocco su di essa mostra poi in quale foro va ogni pezzo.</translation>
    </message>
    <message>
        <source>No photo yet</source>
        <translation>Ancora nessuna foto</translation>
    </message>
    <message>
        <source>Photo to tap on: where it sits</source>
        <translation>Foto da toccare: dove sta</translation>
    </message>
    <message>
        <source>Another photo</source>
        <translation>Un&apos;altra foto</translation>
    </message>
    <message>
        <source>Take it off the list</source>
        <translation>Togli dall&apos;elenco</translation>
    </message>
</context>
<context>
    <name>HeardReading</name>
    <message>
        <source>torque</source>
        <translation>coppia</translation>
    </message>
    <message>
        <source>front tyre, pressure</source>
        <translation>pneumatico anteriore, pressione</translation>
    </message>
    <message>
        <source>rear tyre, pressure</source>
        <translation>pneumatico posteriore, pressione</translation>
    </message>
    <message>
        <source>battery, voltage</source>
        <translation>batteria, tensione</translation>
    </message>
    <message>
        <source>tread, depth</source>
        <translation>battistrada, profondità</translation>
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
    <message>
        <source>Rechecks due</source>
        <translation>Ricontrolli in scadenza</translation>
    </message>
    <message>
        <source>Bring a shop back</source>
        <translation>Riporta un&apos;officina</translation>
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
        <source>the third bolt is the longer one</source>
        <translation>la terza vite è più lunga</translation>
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
    <message>
        <source>here: %1</source>
        <translation>arrivati: %1</translation>
    </message>
    <message>
        <source>Wires</source>
        <translation>Fili</translation>
    </message>
    <message numerus="yes">
        <source>%n to go</source>
        <comment>checks</comment>
        <translation>
            <numerusform>ne manca %n</numerusform>
            <numerusform>ne mancano %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Annulla: %1</translation>
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
    <name>LineBackPage</name>
    <message>
        <source>Hoses and cables</source>
        <translation>Tubi e cavi</translation>
    </message>
    <message>
        <source>Ends only</source>
        <translation>Solo estremità</translation>
    </message>
    <message>
        <source>Says where its ends sit, alone</source>
        <translation>Dice solo dove stanno le estremità</translation>
    </message>
    <message>
        <source>Read silently</source>
        <translation>Leggi in silenzio</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Leggi ad alta voce</translation>
    </message>
    <message>
        <source>A strip step is a hose, vent or cable when its title says so, or when you wrote down where its ends sit.</source>
        <translation>Un passo di smontaggio è un tubo, uno sfiato o un cavo se lo dice il titolo, o se hai scritto dove stanno le estremità.</translation>
    </message>
    <message>
        <source>Nothing to read back</source>
        <translation>Niente da rileggere</translation>
    </message>
    <message>
        <source>Photo of %1 when it was stripped</source>
        <translation>Foto di %1 allo smontaggio</translation>
    </message>
    <message>
        <source>Its step is not refitted yet.</source>
        <translation>Il passo non è ancora rimontato.</translation>
    </message>
    <message>
        <source>%1 of %2 run as they did</source>
        <translation>%1 di %2 passano come prima</translation>
    </message>
    <message>
        <source>Each was seen where it runs and where it ends.</source>
        <translation>Di ognuno si è visto dove passa e dove finisce.</translation>
    </message>
    <message>
        <source>These do not match. Put them right and read them back again:</source>
        <translation>Questi non corrispondono. Sistemali e rileggili:</translation>
    </message>
    <message>
        <source>These were not read back:</source>
        <translation>Questi non sono stati riletti:</translation>
    </message>
    <message>
        <source>All were read. Go back to the one that does not match.</source>
        <translation>Tutti sono stati riletti. Torna a quello che non corrisponde.</translation>
    </message>
</context>
<context>
    <name>ListRow</name>
    <message>
        <source>Photo of %1</source>
        <translation>Foto di %1</translation>
    </message>
</context>
<context>
    <name>LockBar</name>
    <message>
        <source>Now the button above, in the other corner.</source>
        <translation>Ora il tasto in alto, nell&apos;altro angolo.</translation>
    </message>
    <message>
        <source>Locked. What is touched here does nothing; speaking works.</source>
        <translation>Bloccato. Toccare non fa nulla; parlare sì.</translation>
    </message>
    <message>
        <source>The first of two touches</source>
        <translation>Il primo di due tocchi</translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation>Sblocca</translation>
    </message>
    <message>
        <source>The second of two touches</source>
        <translation>Il secondo di due tocchi</translation>
    </message>
    <message>
        <source>Unlock now</source>
        <translation>Sblocca ora</translation>
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
    <message>
        <source>Working</source>
        <translation>Svolgimento</translation>
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
    <name>MeasureWorking</name>
    <message>
        <source>one of several; tap to take it out</source>
        <translation>una di più letture; toccare per toglierla</translation>
    </message>
    <message>
        <source>Nothing to show: no value, or no limits.</source>
        <translation>Niente da mostrare: nessun valore o nessun limite.</translation>
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
    <message>
        <source>&quot;At least&quot; %1 is above &quot;At most&quot; %2, so that no value fits: change one of the two.</source>
        <translation>«Almeno» %1 è sopra «Al massimo» %2, così nessun valore va bene: cambia uno dei due.</translation>
    </message>
</context>
<context>
    <name>MemoMeter</name>
    <message>
        <source>Recording, %1</source>
        <translation>Registra, %1</translation>
    </message>
    <message>
        <source>marks: %1</source>
        <translation>segni: %1</translation>
    </message>
</context>
<context>
    <name>MemoPage</name>
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
        <source>the third bolt is the longer one</source>
        <translation>la terza vite è più lunga</translation>
    </message>
    <message>
        <source>Kept so far</source>
        <translation>Salvate finora</translation>
    </message>
</context>
<context>
    <name>Memos</name>
    <message>
        <source>photo, %1</source>
        <translation>foto, %1</translation>
    </message>
    <message>
        <source>Spoken memo</source>
        <translation>Nota vocale</translation>
    </message>
    <message>
        <source>Memo kept</source>
        <translation>Nota salvata</translation>
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
    <message>
        <source>Water and stray touches do nothing then</source>
        <translation>Acqua e tocchi casuali poi non fanno nulla</translation>
    </message>
    <message>
        <source>Lock the screen</source>
        <translation>Blocca lo schermo</translation>
    </message>
    <message>
        <source>More on this page</source>
        <translation>Altro in questa pagina</translation>
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
        <source>from the dealer, by Friday</source>
        <translation>dal rivenditore, entro venerdì</translation>
    </message>
    <message>
        <source>What is it for?</source>
        <translation>A che cosa serve?</translation>
    </message>
    <message>
        <source>Old one beside the new one</source>
        <translation>Il vecchio accanto al nuovo</translation>
    </message>
    <message>
        <source>Old and new part side by side</source>
        <translation>Pezzo vecchio e nuovo affiancati</translation>
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
        <source>from the dealer, by Friday</source>
        <translation>dal rivenditore, entro venerdì</translation>
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
    <message>
        <source>Bring a shop back</source>
        <translation>Riporta un&apos;officina</translation>
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
    <name>ProofsPage</name>
    <message>
        <source>To be proved</source>
        <translation>Da verificare</translation>
    </message>
    <message numerus="yes">
        <source>Keep %n proved</source>
        <comment>proofs</comment>
        <translation>
            <numerusform>Salva %n verificato</numerusform>
            <numerusform>Salva %n verificati</numerusform>
        </translation>
    </message>
    <message>
        <source>Touch what works</source>
        <translation>Tocca ciò che funziona</translation>
    </message>
    <message>
        <source>One by one, or leave out</source>
        <translation>Uno per uno, o tralascia</translation>
    </message>
    <message>
        <source>measure it</source>
        <translation>misurare</translation>
    </message>
    <message>
        <source>read it back</source>
        <translation>rileggere</translation>
    </message>
    <message>
        <source>works</source>
        <translation>funziona</translation>
    </message>
    <message>
        <source>touch when it works</source>
        <translation>toccare quando funziona</translation>
    </message>
    <message>
        <source>Brakes, wheels, steering, and what keeps it standing</source>
        <translation>Freni, ruote, sterzo e ciò che lo tiene in piedi</translation>
    </message>
    <message>
        <source>The rest</source>
        <translation>Il resto</translation>
    </message>
    <message>
        <source>How, for those that are ticked</source>
        <translation>Come, per quelli segnati</translation>
    </message>
    <message>
        <source>tried on the lift, then on the yard</source>
        <translation>provato sul ponte, poi in cortile</translation>
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
        <source>Have their answer</source>
        <translation>Hanno risposta</translation>
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
    <message>
        <source>Read it back</source>
        <translation>Rileggi</translation>
    </message>
    <message>
        <source>Measure it</source>
        <translation>Misura</translation>
    </message>
    <message numerus="yes">
        <source>%n without an answer</source>
        <comment>complaints and functions</comment>
        <translation>
            <numerusform>%n senza risposta</numerusform>
            <numerusform>%n senza risposta</numerusform>
        </translation>
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
        <source>Again</source>
        <translation>Ripeti</translation>
    </message>
    <message>
        <source>Skip</source>
        <translation>Salta</translation>
    </message>
    <message>
        <source>Back</source>
        <comment>to the one before</comment>
        <translation>Indietro</translation>
    </message>
    <message>
        <source>Begins with the first one again</source>
        <translation>Ricomincia dal primo</translation>
    </message>
    <message>
        <source>To the next one; nothing is said of this one</source>
        <translation>Al prossimo; di questo non si dice nulla</translation>
    </message>
    <message>
        <source>Matches</source>
        <translation>Corrisponde</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Leggi ad alta voce</translation>
    </message>
</context>
<context>
    <name>ReadBackBefore</name>
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
        <source>Look again</source>
        <translation>Guarda di nuovo</translation>
    </message>
    <message>
        <source>Swapped with which?</source>
        <translation>Scambiato con quale?</translation>
    </message>
    <message>
        <source>Next one</source>
        <translation>Prossimo</translation>
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
        <source>Each wire was seen in its place.</source>
        <translation>Ogni filo è stato visto al suo posto.</translation>
    </message>
    <message>
        <source>Wire only</source>
        <translation>Solo il filo</translation>
    </message>
    <message>
        <source>Says its colour alone</source>
        <translation>Dice solo il suo colore</translation>
    </message>
    <message>
        <source>These do not match. Put them right and read them back again:</source>
        <translation>Questi non corrispondono. Sistemali e rileggili:</translation>
    </message>
    <message>
        <source>These were not read back:</source>
        <translation>Questi non sono stati riletti:</translation>
    </message>
    <message>
        <source>The two answers differ. Touch the one that holds.</source>
        <translation>Le due risposte sono diverse. Tocca quella che vale.</translation>
    </message>
    <message>
        <source>All were read. Go back to the one that does not match.</source>
        <translation>Tutti sono stati riletti. Torna a quello che non corrisponde.</translation>
    </message>
</context>
<context>
    <name>ReadBackWire</name>
    <message>
        <source>Photo, %1 marked</source>
        <translation>Foto, %1 segnata</translation>
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
    <message>
        <source>It does not count any more, and can be brought back</source>
        <translation>Non conta più, e si può riportare</translation>
    </message>
    <message>
        <source>This reading was a mistake</source>
        <translation>Questa lettura era un errore</translation>
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
    <name>Record</name>
    <message>
        <source>%1 of %2 back together</source>
        <translation>%1 su %2 rimontati</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>da %1 a %2</translation>
    </message>
    <message>
        <source>%1 to %2, unit side</source>
        <translation>da %1 a %2, lato utenza</translation>
    </message>
    <message>
        <source>%1 waits for: %2.</source>
        <translation>%1 aspetta: %2.</translation>
    </message>
    <message>
        <source>%1, also %2</source>
        <translation>%1, anche %2</translation>
    </message>
    <message>
        <source>%1, at: %2</source>
        <translation>%1, a: %2</translation>
    </message>
    <message>
        <source>%1, mean of %2 (%3)</source>
        <translation>%1, media di %2 (%3)</translation>
    </message>
    <message>
        <source>%1, second wire</source>
        <translation>%1, secondo filo</translation>
    </message>
    <message>
        <source>%1, unit side</source>
        <translation>%1, lato utenza</translation>
    </message>
    <message>
        <source>%1, unit side, second wire</source>
        <translation>%1, lato utenza, secondo filo</translation>
    </message>
    <message>
        <source>%1, within %2</source>
        <translation>%1, entro %2</translation>
    </message>
    <message>
        <source>%1: %2, %3 places</source>
        <translation>%1: %2, %3 vie</translation>
    </message>
    <message>
        <source>%1: connector with %2 places, numbered as seen from the %3</source>
        <translation>%1: connettore a %2 vie, numerate viste dal %3</translation>
    </message>
    <message>
        <source>%1: connector with %2 places, numbered as seen from the %3; latch: %4</source>
        <translation>%1: connettore a %2 vie, numerate viste dal %3; fermo: %4</translation>
    </message>
    <message>
        <source>A wheel or its axle was worked on: have its fastening checked again after the first rides.</source>
        <translation>Si è lavorato a una ruota o al suo perno: far ricontrollare il serraggio dopo le prime uscite.</translation>
    </message>
    <message>
        <source>A wire was found that does not match the map: %1, place %2.</source>
        <translation>Si è trovato un filo che non corrisponde allo schema: %1, via %2.</translation>
    </message>
    <message>
        <source>Agreed before: %1</source>
        <translation>Concordato prima: %1</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Prima e dopo</translation>
    </message>
    <message>
        <source>Before you ride</source>
        <translation>Prima di guidare</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Di</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Controllo</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Sigla</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Colore</translation>
    </message>
    <message>
        <source>Colours are those seen on this machine, by IEC 60757 letters (LBU, LGN: light blue and light green).</source>
        <translation>I colori sono quelli visti su questo mezzo, in sigle IEC 60757 (LBU, LGN: azzurro e verde chiaro).</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Costo</translation>
    </message>
    <message>
        <source>Did not work</source>
        <translation>Non funzionava</translation>
    </message>
    <message>
        <source>Do not ride it: %1 is not on again.</source>
        <translation>Non guidarlo: %1 non è rimontato.</translation>
    </message>
    <message>
        <source>Do not start it: %1 is not on again.</source>
        <translation>Non avviarlo: %1 non è rimontato.</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Capo</translation>
    </message>
    <message>
        <source>Expected: %1 minutes; it took %2.</source>
        <translation>Previsti: %1 minuti; ne sono serviti %2.</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Per</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Trovato</translation>
    </message>
    <message>
        <source>Frame number</source>
        <translation>Numero di telaio</translation>
    </message>
    <message>
        <source>Function</source>
        <translation>Funzione</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Consegnato</translation>
    </message>
    <message>
        <source>How serious</source>
        <translation>Gravità</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Strumento</translation>
    </message>
    <message>
        <source>Keys and papers received</source>
        <translation>Chiavi e documenti ricevuti</translation>
    </message>
    <message>
        <source>Left out, do not ride before it is done: %1 (%2).</source>
        <translation>Tralasciato, non guidare prima che sia fatto: %1 (%2).</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Limit from</source>
        <translation>Limite da</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carico</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Mezzo</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Misurato</translation>
    </message>
    <message>
        <source>Measured outside its limit: %1, %2.</source>
        <translation>Misurato fuori dal limite: %1, %2.</translation>
    </message>
    <message>
        <source>Measured values hold for the day on which they were measured.</source>
        <translation>I valori misurati valgono per il giorno della misura.</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuti</translation>
    </message>
    <message>
        <source>No supplier chosen</source>
        <translation>Nessun fornitore scelto</translation>
    </message>
    <message>
        <source>No unsafe finding is open.</source>
        <translation>Nessun pericolo in sospeso.</translation>
    </message>
    <message>
        <source>Not back together: %1 (bag %2).</source>
        <translation>Non rimontato: %1 (sacchetto %2).</translation>
    </message>
    <message>
        <source>Not back together: %1.</source>
        <translation>Non rimontato: %1.</translation>
    </message>
    <message>
        <source>Not done yet, do not ride before it is: %1.</source>
        <translation>Non ancora fatto, non guidare prima: %1.</translation>
    </message>
    <message>
        <source>Note at hand-over</source>
        <translation>Nota alla consegna</translation>
    </message>
    <message>
        <source>Nothing that was taken apart was left apart.</source>
        <translation>Niente di smontato è rimasto smontato.</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Adesso</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numero</translation>
    </message>
    <message>
        <source>Odometer when taken in</source>
        <translation>Contachilometri all&apos;arrivo</translation>
    </message>
    <message>
        <source>Old parts: %1</source>
        <translation>Pezzi vecchi: %1</translation>
    </message>
    <message>
        <source>On refit</source>
        <translation>Al rimontaggio</translation>
    </message>
    <message>
        <source>Other steps</source>
        <translation>Altri passi</translation>
    </message>
    <message>
        <source>Other work</source>
        <translation>Altro lavoro</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Proprietario</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Ricambio</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Ricambi</translation>
    </message>
    <message>
        <source>Parts to order, %1</source>
        <translation>Ricambi da ordinare, %1</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Via</translation>
    </message>
    <message>
        <source>Place %1: found with %2, but it should be %3 (%4).</source>
        <translation>Via %1: trovata con %2, ma dovrebbe essere %3 (%4).</translation>
    </message>
    <message>
        <source>Place %1: found with %2, but it should be %3.</source>
        <translation>Via %1: trovata con %2, ma dovrebbe essere %3.</translation>
    </message>
    <message>
        <source>Place %1: found with %2, refitted with %3.</source>
        <translation>Via %1: trovata con %2, rimontata con %3.</translation>
    </message>
    <message>
        <source>Please note</source>
        <translation>Da notare</translation>
    </message>
    <message>
        <source>Price without tax</source>
        <translation>Prezzo senza IVA</translation>
    </message>
    <message>
        <source>Record of work</source>
        <translation>Rapporto di lavoro</translation>
    </message>
    <message>
        <source>Record of work %1</source>
        <translation>Rapporto di lavoro %1</translation>
    </message>
    <message>
        <source>Ridden at</source>
        <translation>Si guida a</translation>
    </message>
    <message>
        <source>Road test, %1</source>
        <translation>Prova su strada, %1</translation>
    </message>
    <message>
        <source>Road test, %1: %2</source>
        <translation>Prova su strada, %1: %2</translation>
    </message>
    <message>
        <source>Road test: %1</source>
        <translation>Prova su strada: %1</translation>
    </message>
    <message>
        <source>Second pair of eyes</source>
        <translation>Un secondo sguardo</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stato</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Passi</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Somma</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Accettato</translation>
    </message>
    <message>
        <source>Tax, %1 %</source>
        <translation>IVA, %1 %</translation>
    </message>
    <message>
        <source>The brakes were worked on: try them at walking pace before you ride among others.</source>
        <translation>Si è lavorato ai freni: provarli a passo d&apos;uomo prima di guidare nel traffico.</translation>
    </message>
    <message>
        <source>The machine</source>
        <translation>Il mezzo</translation>
    </message>
    <message>
        <source>The machine&apos;s manual, local law and licensed practice come before anything on this page.</source>
        <translation>Il manuale del mezzo, la legge locale e la buona regola d&apos;arte vengono prima di quanto sta su questa pagina.</translation>
    </message>
    <message>
        <source>The work is not finished: %1 of %2 steps are not back together. Do not ride it.</source>
        <translation>Il lavoro non è finito: %1 passi su %2 non sono rimontati. Non guidarlo.</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Totale</translation>
    </message>
    <message>
        <source>Together: %1</source>
        <translation>Totale: %1</translation>
    </message>
    <message>
        <source>Too close to its limit to call: %1, %2.</source>
        <translation>Troppo vicino al limite per decidere: %1, %2.</translation>
    </message>
    <message>
        <source>Unsafe and not put right: %1. You were told, and on %2 %3 did not want it put right. Do not ride it.</source>
        <translation>Pericolo non riparato: %1. Siete stati avvisati, e il %2 %3 non ha voluto la riparazione. Non guidarlo.</translation>
    </message>
    <message>
        <source>Unsafe and not yet put right: %1.</source>
        <translation>Pericolo non ancora riparato: %1.</translation>
    </message>
    <message>
        <source>Unsafe and not yet put right: %1. To do: %2.</source>
        <translation>Pericolo non ancora riparato: %1. Da fare: %2.</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valore</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Giudizio</translation>
    </message>
    <message>
        <source>Waste taken: %1</source>
        <translation>Rifiuti ritirati: %1</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Che ne è stato</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation>Che cosa scade</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Che cosa si è fatto</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Che cosa si è trovato</translation>
    </message>
    <message>
        <source>What was left</source>
        <translation>Che cosa è rimasto</translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation>Che cosa si è misurato</translation>
    </message>
    <message>
        <source>What was proved</source>
        <translation>Che cosa si è verificato</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quando</translation>
    </message>
    <message>
        <source>When it came in</source>
        <translation>All&apos;arrivo</translation>
    </message>
    <message>
        <source>Why it came in</source>
        <translation>Perché è venuto</translation>
    </message>
    <message>
        <source>Wiring that was read</source>
        <translation>Fili letti</translation>
    </message>
    <message>
        <source>Without a price: %1</source>
        <translation>Senza prezzo: %1</translation>
    </message>
    <message>
        <source>Without tax</source>
        <translation>Senza IVA</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Lavoro</translation>
    </message>
    <message>
        <source>Work done by</source>
        <translation>Lavoro fatto da</translation>
    </message>
    <message>
        <source>Worked when taken in</source>
        <translation>Funzionava all&apos;arrivo</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>dopo %1</translation>
    </message>
    <message>
        <source>after %1, or by %2, whichever comes first</source>
        <translation>dopo %1, o entro il %2, quel che viene prima</translation>
    </message>
    <message>
        <source>after refitting, %1</source>
        <translation>dopo il rimontaggio, %1</translation>
    </message>
    <message>
        <source>after, %1</source>
        <translation>dopo, %1</translation>
    </message>
    <message>
        <source>all %1 back together</source>
        <translation>tutti i %1 rimontati</translation>
    </message>
    <message>
        <source>also %1</source>
        <translation>anche %1</translation>
    </message>
    <message>
        <source>and %1 more steps.</source>
        <translation>e altri %1 passi.</translation>
    </message>
    <message>
        <source>as found, %1</source>
        <translation>come trovato, %1</translation>
    </message>
    <message>
        <source>asked for</source>
        <translation>chiesto</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>almeno %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>al massimo %1</translation>
    </message>
    <message>
        <source>at the next visit</source>
        <translation>alla prossima visita</translation>
    </message>
    <message>
        <source>before, %1</source>
        <translation>prima, %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>entro il %1</translation>
    </message>
    <message>
        <source>finding, %1</source>
        <translation>rilievo, %1</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>montato</translation>
    </message>
    <message>
        <source>here, not fitted</source>
        <translation>arrivato, non montato</translation>
    </message>
    <message>
        <source>no limit known</source>
        <translation>nessun limite noto</translation>
    </message>
    <message>
        <source>no verdict</source>
        <translation>nessun giudizio</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>non cominciato</translation>
    </message>
    <message>
        <source>not checked</source>
        <translation>non controllato</translation>
    </message>
    <message>
        <source>not named, taken to be within %1</source>
        <translation>non indicato, preso entro %1</translation>
    </message>
    <message>
        <source>not read: look at the machine</source>
        <translation>non letto: guardare sul mezzo</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>non provato</translation>
    </message>
    <message>
        <source>not yet: this page shows how far the work has got</source>
        <translation>non ancora: questa pagina mostra a che punto è il lavoro</translation>
    </message>
    <message>
        <source>on order</source>
        <translation>ordinato</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>riparato</translation>
    </message>
    <message>
        <source>put right: %1</source>
        <translation>riparato: %1</translation>
    </message>
    <message>
        <source>signed by %1, %2</source>
        <translation>firmato da %1, %2</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>presto</translation>
    </message>
    <message>
        <source>still open</source>
        <translation>ancora in sospeso</translation>
    </message>
    <message>
        <source>still open; %1 does not want it put right</source>
        <translation>ancora in sospeso; %1 non vuole la riparazione</translation>
    </message>
    <message>
        <source>still open; to do: %1</source>
        <translation>ancora in sospeso; da fare: %1</translation>
    </message>
    <message>
        <source>waits for: %1</source>
        <translation>aspetta: %1</translation>
    </message>
    <message>
        <source>waits for: %1; %2 of %3 back together</source>
        <translation>aspetta: %1; %2 su %3 rimontati</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>voluto</translation>
    </message>
    <message>
        <source>while stripping, %1</source>
        <translation>allo smontaggio, %1</translation>
    </message>
    <message>
        <source>wiring, %1</source>
        <translation>fili, %1</translation>
    </message>
    <message>
        <source>wrong part</source>
        <translation>ricambio sbagliato</translation>
    </message>
    <message>
        <source>■ unsafe</source>
        <translation>■ pericolo</translation>
    </message>
    <message>
        <source>□ note</source>
        <translation>□ nota</translation>
    </message>
    <message>
        <source>◇ not on again</source>
        <translation>◇ non rimontato</translation>
    </message>
    <message>
        <source>◇ not yet</source>
        <translation>◇ non ancora</translation>
    </message>
    <message>
        <source>◇ too close to call</source>
        <translation>◇ troppo vicino per decidere</translation>
    </message>
    <message>
        <source>◧ soon</source>
        <translation>◧ presto</translation>
    </message>
    <message>
        <source>☒ does not</source>
        <translation>☒ non funziona</translation>
    </message>
    <message>
        <source>☒ does not match</source>
        <translation>☒ non corrisponde</translation>
    </message>
    <message>
        <source>☒ left out: %1</source>
        <translation>☒ tralasciato: %1</translation>
    </message>
    <message>
        <source>☒ outside</source>
        <translation>☒ fuori</translation>
    </message>
    <message>
        <source>✓ matches</source>
        <translation>✓ corrisponde</translation>
    </message>
    <message>
        <source>✓ proved</source>
        <translation>✓ verificato</translation>
    </message>
    <message>
        <source>✓ proved: %1</source>
        <translation>✓ verificato: %1</translation>
    </message>
    <message>
        <source>✓ within</source>
        <translation>✓ entro</translation>
    </message>
    <message>
        <source>✓ works</source>
        <translation>✓ funziona</translation>
    </message>
    <message>
        <source>☒ not proved: %1</source>
        <translation>☒ non verificato: %1</translation>
    </message>
    <message>
        <source>empty, no wire</source>
        <translation>vuota, nessun filo</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>non serve</translation>
    </message>
    <message>
        <source>A hose or cable does not run as it was found: %1.</source>
        <translation>Un tubo o un cavo non passa come è stato trovato: %1.</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Estremità</translation>
    </message>
    <message>
        <source>Hose or cable</source>
        <translation>Tubo o cavo</translation>
    </message>
    <message>
        <source>Hoses and cables</source>
        <translation>Tubi e cavi</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Passaggio</translation>
    </message>
    <message>
        <source>Did not work when it came in and was not tried again: %1.</source>
        <translation>Non funzionava all&apos;arrivo e non è stato riprovato: %1.</translation>
    </message>
    <message>
        <source>Does not work: %1 (%2).</source>
        <translation>Non funziona: %1 (%2).</translation>
    </message>
    <message>
        <source>Does not work: %1.</source>
        <translation>Non funziona: %1.</translation>
    </message>
    <message>
        <source>Left as it was: %1 (%2).</source>
        <translation>Lasciato com&apos;era: %1 (%2).</translation>
    </message>
    <message>
        <source>Part not fitted: %1.</source>
        <translation>Ricambio non montato: %1.</translation>
    </message>
    <message>
        <source>What the owner said was not answered: %1.</source>
        <translation>Quanto detto dal proprietario è rimasto senza risposta: %1.</translation>
    </message>
    <message>
        <source>not tried: %1</source>
        <translation>non provato: %1</translation>
    </message>
    <message>
        <source>said to be put right: %1; not fitted: %2</source>
        <translation>dato per riparato: %1; non montato: %2</translation>
    </message>
    <message>
        <source>said to be put right; not fitted: %1</source>
        <translation>dato per riparato; non montato: %1</translation>
    </message>
    <message>
        <source>the owner&apos;s words</source>
        <translation>parole del proprietario</translation>
    </message>
    <message>
        <source>☒ does not: %1</source>
        <translation>☒ non funziona: %1</translation>
    </message>
    <message>
        <source>✓ works: %1</source>
        <translation>✓ funziona: %1</translation>
    </message>
</context>
<context>
    <name>RecordActions</name>
    <message>
        <source>Stop</source>
        <translation>Ferma</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Registra</translation>
    </message>
    <message>
        <source>Marks this place in the memo, to find it again</source>
        <translation>Segna questo punto della nota, per ritrovarlo</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Segna</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Salva</translation>
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
        <translation>Fili</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Misura</translation>
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
    <message>
        <source>Torques</source>
        <translation>Coppie</translation>
    </message>
    <message>
        <source>Says its torques alone</source>
        <translation>Dice solo le sue coppie</translation>
    </message>
    <message>
        <source>Nothing that is still to be refitted lies in bag %1.</source>
        <translation>Nel sacchetto %1 non c&apos;è niente da rimontare.</translation>
    </message>
    <message>
        <source>Read silently</source>
        <translation>Leggi in silenzio</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Leggi ad alta voce</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Read back how it runs</source>
        <translation>Rileggi come passa</translation>
    </message>
    <message>
        <source>Read hoses and cables back</source>
        <translation>Rileggi tubi e cavi</translation>
    </message>
    <message>
        <source>Read the wires back</source>
        <translation>Rileggi i fili</translation>
    </message>
    <message>
        <source>Refitted all the same</source>
        <translation>Rimontato comunque</translation>
    </message>
    <message>
        <source>Not all wires are read back. %1</source>
        <translation>Non tutti i fili sono riletti. %1</translation>
    </message>
    <message>
        <source>It is not refitted</source>
        <translation>Non è rimontato</translation>
    </message>
    <message>
        <source>All is on again, but not right: %1</source>
        <translation>Tutto è rimontato, ma non a posto: %1</translation>
    </message>
</context>
<context>
    <name>RefitStepsPage</name>
    <message>
        <source>Refit steps</source>
        <translation>Passi di rimontaggio</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fatto</translation>
    </message>
    <message>
        <source>Which goes on first?</source>
        <translation>Che cosa si rimonta prima?</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Prima</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Dopo</translation>
    </message>
    <message>
        <source>The order is right</source>
        <translation>L&apos;ordine è giusto</translation>
    </message>
    <message>
        <source>Change the order</source>
        <translation>Cambia l&apos;ordine</translation>
    </message>
    <message>
        <source>Touch a step, then Earlier or Later.</source>
        <translation>Toccare un passo, poi Prima o Dopo.</translation>
    </message>
    <message>
        <source>Read hoses and cables back</source>
        <translation>Rileggi tubi e cavi</translation>
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
    <name>RestoreLists</name>
    <message>
        <source>Backups</source>
        <translation>Copie di sicurezza</translation>
    </message>
    <message>
        <source>Looking for backups</source>
        <translation>Ricerca delle copie</translation>
    </message>
    <message>
        <source>None here. Put in the stick or the card that they are on, then open this page again.</source>
        <translation>Nessuna. Inserire la chiavetta o la scheda su cui sono, poi riaprire questa pagina.</translation>
    </message>
    <message>
        <source>From another folder</source>
        <translation>Da un&apos;altra cartella</translation>
    </message>
    <message>
        <source>Other shops on this device</source>
        <translation>Altre officine su questo dispositivo</translation>
    </message>
    <message>
        <source>The shop on this device can only be looked at. Of every entry, photo and memo in it that can still be read, and of the copies beside it, a new one can be made.</source>
        <translation>L&apos;officina su questo dispositivo si può solo guardare. Da ogni voce, foto e nota che ancora si legge, e dalle copie accanto, se ne può fare una nuova.</translation>
    </message>
    <message>
        <source>Make a new shop of what can be read</source>
        <translation>Fare una nuova officina da ciò che si legge</translation>
    </message>
</context>
<context>
    <name>RestorePage</name>
    <message>
        <source>Bring a shop back</source>
        <translation>Riporta un&apos;officina</translation>
    </message>
    <message>
        <source>Opening the shop</source>
        <translation>Apertura dell&apos;officina</translation>
    </message>
    <message>
        <source>Bringing back</source>
        <translation>In corso</translation>
    </message>
    <message>
        <source>Checking</source>
        <translation>Verifica</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Riporta</translation>
    </message>
    <message>
        <source>Bring back what can be read</source>
        <translation>Riporta ciò che si legge</translation>
    </message>
    <message>
        <source>Go on with this shop</source>
        <translation>Continua con questa</translation>
    </message>
    <message>
        <source>Choose another one</source>
        <translation>Scegline un&apos;altra</translation>
    </message>
    <message>
        <source>What is on this device now is not overwritten. It stays in %1 and is found here again.</source>
        <translation>Quello che ora è su questo dispositivo non viene sovrascritto. Resta in %1 e si ritrova qui.</translation>
    </message>
    <message>
        <source>The app was started with a folder of its own. At its next start it opens that one again, unless it is told otherwise with --store.</source>
        <translation>L&apos;app è stata avviata con una cartella propria. Al prossimo avvio riapre quella, se --store non dice altro.</translation>
    </message>
    <message>
        <source>Passphrase of this backup</source>
        <translation>Frase segreta di questa copia</translation>
    </message>
    <message>
        <source>No backups here. Their names end in .backup.</source>
        <translation>Qui non ci sono copie. I loro nomi finiscono in .backup.</translation>
    </message>
    <message>
        <source>Removing</source>
        <translation>Rimozione in corso</translation>
    </message>
    <message>
        <source>Remove this shop</source>
        <translation>Togli questa officina</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Tieni</translation>
    </message>
    <message>
        <source>Remove it for good</source>
        <translation>Togli per sempre</translation>
    </message>
    <message>
        <source>Its jobs, photos and memos go with it. Nothing but a backup brings them back.</source>
        <translation>Con lei se ne vanno i suoi lavori, foto e note. Solo una copia di sicurezza li riporta.</translation>
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
    <message>
        <source>Go on with the round</source>
        <translation>Continua il giro</translation>
    </message>
    <message>
        <source>Begin another round</source>
        <translation>Comincia un altro giro</translation>
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
        <translation>sacchetto %1</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>coppia</translation>
    </message>
    <message>
        <source>front tyre</source>
        <translation>pneumatico anteriore</translation>
    </message>
    <message>
        <source>rear tyre</source>
        <translation>pneumatico posteriore</translation>
    </message>
    <message>
        <source>battery</source>
        <translation>batteria</translation>
    </message>
    <message>
        <source>tread</source>
        <translation>battistrada</translation>
    </message>
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
    <message>
        <source>Button to hold for speaking, at the lift (English)</source>
        <translation>Tasto da tenere per parlare, al ponte (inglese)</translation>
    </message>
    <message>
        <source>Hidden</source>
        <translation>Nascosto</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Mostrato</translation>
    </message>
    <message>
        <source>Hands-free, after &quot;turquoise battery&quot; (English). The microphone is then open while a screen at the lift is shown.</source>
        <translation>A mani libere, dopo &quot;turquoise battery&quot; (inglese). Il microfono è allora aperto finché si vede una schermata del ponte.</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Spento</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Acceso</translation>
    </message>
    <message>
        <source>Pace of the voice that reads aloud</source>
        <translation>Ritmo della voce che legge</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Solito</translation>
    </message>
    <message>
        <source>Slower</source>
        <translation>Più lento</translation>
    </message>
    <message>
        <source>Slow</source>
        <translation>Lento</translation>
    </message>
    <message>
        <source>Slowest</source>
        <translation>Lentissimo</translation>
    </message>
    <message>
        <source>A spoken memo ends</source>
        <translation>Una nota vocale finisce</translation>
    </message>
    <message>
        <source>By a touch</source>
        <translation>Con un tocco</translation>
    </message>
    <message>
        <source>By silence too</source>
        <translation>Anche col silenzio</translation>
    </message>
    <message>
        <source>The screen, while a job is open</source>
        <translation>Lo schermo, finché una commessa è aperta</translation>
    </message>
    <message>
        <source>Stays on</source>
        <translation>Resta acceso</translation>
    </message>
    <message>
        <source>As the device</source>
        <translation>Come il dispositivo</translation>
    </message>
    <message>
        <source>It dims without a touch. The touch that wakes it does nothing else.</source>
        <translation>Si abbassa senza tocchi. Il tocco che lo sveglia non fa altro.</translation>
    </message>
    <message>
        <source>Never</source>
        <translation>Mai</translation>
    </message>
    <message>
        <source>After 1 min</source>
        <translation>Dopo 1 min</translation>
    </message>
    <message>
        <source>After 2 min</source>
        <translation>Dopo 2 min</translation>
    </message>
    <message>
        <source>After 5 min</source>
        <translation>Dopo 5 min</translation>
    </message>
    <message>
        <source>Short tones for listening, recording, saved, refused</source>
        <translation>Suoni brevi: ascolta, registra, salvato, rifiutato</translation>
    </message>
</context>
<context>
    <name>SettlePage</name>
    <message>
        <source>Settle the finding</source>
        <translation>Risolvi il difetto</translation>
    </message>
    <message>
        <source>To the parts</source>
        <translation>Ai ricambi</translation>
    </message>
    <message>
        <source>Settle all the same</source>
        <translation>Risolto comunque</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Risolto</translation>
    </message>
    <message>
        <source>Not fitted: %1</source>
        <translation>Non montato: %1</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Che cosa è stato fatto</translation>
    </message>
    <message>
        <source>hose renewed, brake bled</source>
        <translation>tubo nuovo, freno spurgato</translation>
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
    <name>Sharing</name>
    <message>
        <source>The system refused the files. Share them from the system&apos;s file manager.</source>
        <translation>Il sistema ha rifiutato i file. Condividili dal gestore di file del sistema.</translation>
    </message>
    <message>
        <source>%1 is not there any more. Make it again.</source>
        <translation>%1 non c’è più. Crealo di nuovo.</translation>
    </message>
    <message>
        <source>This device has no program for %1. The file lies in %2.</source>
        <translation>Questo dispositivo non ha un programma per %1. Il file si trova in %2.</translation>
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
    <name>SnackWords</name>
    <message>
        <source>Undo</source>
        <translation>Annulla</translation>
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
    <name>SpokenMemo</name>
    <message>
        <source>Pause</source>
        <translation>Ferma</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Ascolta</translation>
    </message>
    <message>
        <source>How fast it is played</source>
        <translation>A che velocità si ascolta</translation>
    </message>
    <message>
        <source>Next mark</source>
        <translation>Segno dopo</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Segna</translation>
    </message>
</context>
<context>
    <name>StepList</name>
    <message>
        <source>waits for %1</source>
        <translation>aspetta %1</translation>
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
    <message>
        <source>Routing: %1</source>
        <translation>Percorso: %1</translation>
    </message>
    <message>
        <source>Ends: %1</source>
        <translation>Estremi: %1</translation>
    </message>
    <message>
        <source>As found: %1</source>
        <translation>Come trovato: %1</translation>
    </message>
    <message>
        <source>Let out: %1</source>
        <translation>Scaricato: %1</translation>
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
    <name>StripDetails</name>
    <message>
        <source>Where it runs, what it passes</source>
        <translation>Dove passa, accanto a che cosa</translation>
    </message>
    <message>
        <source>left of the headstock, over the clutch cable</source>
        <translation>a sinistra del cannotto, sopra il cavo frizione</translation>
    </message>
    <message>
        <source>Where its ends sit: hose, vent, cable</source>
        <translation>Dove vanno gli estremi: tubo, sfiato, cavo</translation>
    </message>
    <message>
        <source>tap, upper nipple; carburettor, right</source>
        <translation>rubinetto sopra; carburatore a destra</translation>
    </message>
    <message>
        <source>Adjustment as found: turns, marks, shims</source>
        <translation>Regolazione come trovata: giri, segni, spessori</translation>
    </message>
    <message>
        <source>adjuster 7 turns out, mark at 2 o&apos;clock</source>
        <translation>svitato 7 giri, segno a ore 2</translation>
    </message>
    <message>
        <source>Fluid let out, and how much</source>
        <translation>Fluido scaricato, e quanto</translation>
    </message>
    <message>
        <source>brake fluid, 40 ml</source>
        <translation>liquido freni, 40 ml</translation>
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
        <source>Steps so far</source>
        <translation>Passi finora</translation>
    </message>
    <message>
        <source>Where it sits</source>
        <translation>Dove sta</translation>
    </message>
    <message>
        <source>For the refit</source>
        <translation>Per il rimontaggio</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Salva</translation>
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
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>spring hooked in the left hole</source>
        <translation>molla agganciata al foro sinistro</translation>
    </message>
    <message>
        <source>Add a caution</source>
        <translation>Aggiungi un avviso</translation>
    </message>
    <message>
        <source>Which caution belongs before this step?</source>
        <translation>Quale avviso va prima di questo passo?</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>tap: where it sits</source>
        <translation>toccare: dove sta</translation>
    </message>
    <message>
        <source>not placed</source>
        <translation>senza posto</translation>
    </message>
    <message>
        <source>Routing, fluids, adjustment</source>
        <translation>Percorso, fluidi, regolazione</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Misura</translation>
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
    <message>
        <source>The photo shows one side of a wire. Turn each of them: a tracer may lie on the other side.</source>
        <translation>La foto mostra un lato del filo. Girarli tutti: sull’altro lato può esserci un secondo colore.</translation>
    </message>
    <message>
        <source>All %1, each was turned</source>
        <translation>Tutti e %1, ognuno girato</translation>
    </message>
    <message>
        <source>One by one</source>
        <translation>Uno alla volta</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fine</translation>
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
    <message>
        <source>This one is not sure. Say its colour.</source>
        <translation>Questo non è sicuro. Dire il suo colore.</translation>
    </message>
    <message>
        <source>No wire is open any more.</source>
        <translation>Nessun filo è più aperto.</translation>
    </message>
    <message>
        <source>Say the colour alone here. Terminal and function belong to the place.</source>
        <translation>Qui dire solo il colore. Terminale e funzione vanno alla via.</translation>
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
    <message>
        <source>Open the job first, then say it again.</source>
        <translation>Prima aprire la commessa, poi ripetere.</translation>
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
        <translation>parte, il freno anteriore tiene</translation>
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
    <name>TalkAloud</name>
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
        <translation>Più lento</translation>
    </message>
</context>
<context>
    <name>TalkBar</name>
    <message>
        <source>Hearing</source>
        <translation>Ascolto</translation>
    </message>
    <message>
        <source>While it is held, say: %1</source>
        <translation>Tenendolo, dire: %1</translation>
    </message>
    <message>
        <source>Listening</source>
        <translation>In ascolto</translation>
    </message>
    <message>
        <source>Hold and speak</source>
        <translation>Tieni e parla</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>Non c&apos;è nulla da annullare.</translation>
    </message>
    <message>
        <source>This one has only just come up. Look at it, then say it again.</source>
        <translation>Questo è appena comparso. Guardarlo, poi ridirlo.</translation>
    </message>
</context>
<context>
    <name>TalkHeard</name>
    <message>
        <source>Heard: %1</source>
        <translation>Sentito: %1</translation>
    </message>
    <message>
        <source>Takes back what was heard</source>
        <translation>Ritira ciò che si è sentito</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annulla</translation>
    </message>
    <message>
        <source>Listening: say it.</source>
        <translation>In ascolto: parla.</translation>
    </message>
    <message>
        <source>Microphone on. Say &quot;%1&quot; first.</source>
        <translation>Microfono acceso. Prima dire &quot;%1&quot;.</translation>
    </message>
</context>
<context>
    <name>TalkTool</name>
    <message>
        <source>Buttons only</source>
        <translation>Solo tasti</translation>
    </message>
    <message>
        <source>Speak</source>
        <translation>Parla</translation>
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
    <message>
        <source>What it waits for</source>
        <translation>Che cosa aspetta</translation>
    </message>
    <message>
        <source>What holds it up?</source>
        <translation>Che cosa lo ferma?</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Proprietario</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Ricambi</translation>
    </message>
    <message>
        <source>Else</source>
        <translation>Altro</translation>
    </message>
</context>
<context>
    <name>TextEntry</name>
    <message>
        <source>Clear %1</source>
        <translation>Svuota %1</translation>
    </message>
    <message>
        <source>e.g. %1</source>
        <translation>ad es. %1</translation>
    </message>
</context>
<context>
    <name>TextEntryArea</name>
    <message>
        <source>Clear %1</source>
        <translation>Svuota %1</translation>
    </message>
    <message>
        <source>e.g. %1</source>
        <translation>ad es. %1</translation>
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
        <translation>pin</translation>
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
    <message>
        <source>heard</source>
        <translation>sentito</translation>
    </message>
    <message>
        <source>leave empty</source>
        <translation>lasciare vuota</translation>
    </message>
    <message>
        <source>empty, no wire</source>
        <translation>vuota, nessun filo</translation>
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
    <message>
        <source>For bench time</source>
        <translation>Tempo in officina</translation>
    </message>
    <message>
        <source>To be proved</source>
        <translation>Da verificare</translation>
    </message>
    <message>
        <source>Ready to hand over</source>
        <translation>Pronti per la consegna</translation>
    </message>
    <message>
        <source>For the owner&apos;s answer</source>
        <translation>Risposta del proprietario</translation>
    </message>
    <message>
        <source>For parts</source>
        <translation>Ricambi</translation>
    </message>
    <message>
        <source>For something else</source>
        <translation>Altro</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Consegnato</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>non serve</translation>
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
    <name>undercowl::platform::LoudspeakerPlayer</name>
    <message>
        <source>This memo&apos;s sound cannot be read. Its text and its place in the job are kept.</source>
        <translation>Il suono di questa nota non si legge. Il testo e il suo posto nel lavoro restano.</translation>
    </message>
    <message>
        <source>No loudspeaker answers. Connect one, or switch it on in the device&apos;s settings.</source>
        <translation>Nessun altoparlante risponde. Collegarne uno, o accenderlo nelle impostazioni del dispositivo.</translation>
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
    <name>undercowl::platform::MicrophoneRecorder</name>
    <message>
        <source>No microphone answers. Allow it in the device&apos;s settings, or type the memo.</source>
        <translation>Nessun microfono risponde. Permetterlo nelle impostazioni del dispositivo, o scrivere la nota.</translation>
    </message>
    <message>
        <source>The microphone does not open. Close other programs that use it, or type the memo.</source>
        <translation>Il microfono non si apre. Chiudere altri programmi che lo usano, o scrivere la nota.</translation>
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
    <name>undercowl::platform::SoundRecorder</name>
    <message>
        <source>The memo cannot be written any further (%1). What was said until then is kept; make room, then go on in another one.</source>
        <translation>La nota non si può più scrivere (%1). Ciò che è stato detto resta; fare spazio, poi continuare in un&apos;altra.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::SystemScreen</name>
    <message>
        <source>This session has no message bus, so the screen may go out. Set the system to leave it on.</source>
        <translation>Questa sessione non ha un bus di messaggi: lo schermo può spegnersi. Impostare nel sistema che resti acceso.</translation>
    </message>
    <message>
        <source>A job is open at the lift</source>
        <translation>Una commessa è aperta al ponte</translation>
    </message>
    <message>
        <source>The system does not let the screen be kept on (%1). Set it there to stay on.</source>
        <translation>Il sistema non lascia acceso lo schermo (%1). Impostare lì che resti acceso.</translation>
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
    <name>undercowl::ui::CameraHints</name>
    <message>
        <source>Hold still.</source>
        <translation>Tenere fermo.</translation>
    </message>
    <message>
        <source>Too close or out of focus: move back a little.</source>
        <translation>Troppo vicino o sfocato: allontanarsi un po&apos;.</translation>
    </message>
    <message>
        <source>Too close or out of focus: tap the wire.</source>
        <translation>Troppo vicino o sfocato: toccare il filo.</translation>
    </message>
    <message>
        <source>Too close or out of focus: tap what must be sharp.</source>
        <translation>Troppo vicino o sfocato: toccare ciò che deve essere nitido.</translation>
    </message>
    <message>
        <source>Lay white paper beside the wires.</source>
        <translation>Mettere carta bianca accanto ai fili.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CarryView</name>
    <message>
        <source>it lights when it is switched</source>
        <translation>si accende quando si aziona</translation>
    </message>
    <message>
        <source>it sounds when it is pressed</source>
        <translation>suona quando si preme</translation>
    </message>
    <message>
        <source>what it serves works when it is switched</source>
        <translation>ciò che comanda funziona quando si aziona</translation>
    </message>
    <message>
        <source>Not known what it serves: follow it, then measure to earth and to each lamp. Nothing is connected before that is known.</source>
        <translation>Funzione non nota: seguirlo, poi misurare verso massa e verso ogni luce. Niente si collega prima di saperla.</translation>
    </message>
    <message>
        <source>Live, ignition, charging or starter: battery voltage to earth, ignition off and on. Measured only, never tried.</source>
        <translation>In tensione, accensione, ricarica o avviamento: tensione di batteria verso massa, a chiave spenta e accesa. Solo misurare, mai provare.</translation>
    </message>
    <message>
        <source>Earth: close to no resistance to the bare frame.</source>
        <translation>Massa: resistenza quasi nulla verso il telaio nudo.</translation>
    </message>
    <message>
        <source>%1 in place of %2</source>
        <translation>%1 al posto di %2</translation>
    </message>
    <message>
        <source>%1, now %2</source>
        <translation>%1, ora %2</translation>
    </message>
    <message>
        <source>serves %1</source>
        <translation>funzione: %1</translation>
    </message>
    <message>
        <source>Leave empty: %1</source>
        <translation>Lasciare vuota: %1</translation>
    </message>
    <message>
        <source>No place for %1 (%2)</source>
        <translation>Nessuna via per %1 (%2)</translation>
    </message>
    <message>
        <source>Insulate its end and tie it back.</source>
        <translation>Isolare l&apos;estremità e legarlo da parte.</translation>
    </message>
    <message>
        <source>one after the other: %1</source>
        <translation>una dopo l&apos;altra: %1</translation>
    </message>
    <message>
        <source>carried over by what it serves</source>
        <translation>riportato secondo la funzione</translation>
    </message>
    <message>
        <source>Wires carried over</source>
        <translation>Fili riportati</translation>
    </message>
    <message>
        <source>found by trying</source>
        <translation>trovato provando</translation>
    </message>
    <message>
        <source>Found: %1</source>
        <translation>Trovato: %1</translation>
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
    <message>
        <source>anything</source>
        <translation>qualsiasi cosa</translation>
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
    <message>
        <source>Open again</source>
        <translation>Di nuovo aperto</translation>
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
    <message>
        <source>the owner said, when it came in</source>
        <translation>il proprietario ha detto all&apos;arrivo</translation>
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
    <message>
        <source>As found: %1</source>
        <translation>Come trovato: %1</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Fatto: %1</translation>
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
        <source>Handed over</source>
        <translation>Consegnato</translation>
    </message>
    <message numerus="yes">
        <source>%n not done or not proved</source>
        <translation>
            <numerusform>%n non fatto o non verificato</numerusform>
            <numerusform>%n non fatti o non verificati</numerusform>
        </translation>
    </message>
    <message>
        <source>Put it right, then read it back again.</source>
        <translation>Rimettilo a posto, poi rileggilo.</translation>
    </message>
    <message>
        <source>signed by %1, %2</source>
        <translation>firmato da %1, %2</translation>
    </message>
    <message>
        <source>Read the wires back, or say why they are left out.</source>
        <translation>Rileggi i fili, o di&apos; perché si tralascia.</translation>
    </message>
    <message>
        <source>Tighten it and measure again, or say why it is left out.</source>
        <translation>Serra e misura di nuovo, o di&apos; perché si tralascia.</translation>
    </message>
    <message>
        <source>Put it right and measure again, or note a finding.</source>
        <translation>Sistema e misura di nuovo, o annota un difetto.</translation>
    </message>
    <message>
        <source>Wire does not match: %1, place %2</source>
        <translation>Il filo non corrisponde: %1, via %2</translation>
    </message>
    <message>
        <source>Say whether it works now, or why it is left.</source>
        <translation>Dire se ora funziona, o perché si lascia.</translation>
    </message>
    <message>
        <source>Refit it, or write under &quot;To be told at hand-over&quot; how it leaves without being ridden.</source>
        <translation>Rimontare, o scrivere in &quot;Da dire alla consegna&quot; come esce senza essere guidato.</translation>
    </message>
    <message>
        <source>Put it right and measure again, or note it as unsafe and record that the owner does not want it.</source>
        <translation>Mettere a posto e misurare di nuovo, o annotarlo come pericolo e registrare che il proprietario non vuole.</translation>
    </message>
    <message>
        <source>It must not be ridden: type how it leaves, such as &quot;fetched with a trailer&quot;.</source>
        <translation>Non si può guidare: scrivere come esce, per esempio &quot;ritirato con il rimorchio&quot;.</translation>
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
    <message>
        <source>not fitted: %1</source>
        <translation>non montato: %1</translation>
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
    <message>
        <source>typical of this model, look whether it is so here</source>
        <translation>tipico di questo modello, guardare se è così anche qui</translation>
    </message>
    <message>
        <source>this shop&apos;s record</source>
        <translation>archivio di questa officina</translation>
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
    <name>undercowl::ui::LiftEar</name>
    <message>
        <source>a reading</source>
        <translation>una misura</translation>
    </message>
    <message>
        <source>the number of a bag</source>
        <translation>il numero di un sacchetto</translation>
    </message>
    <message>
        <source>a wire</source>
        <translation>un filo</translation>
    </message>
    <message>
        <source>Heard &quot;%1&quot;. Here say: %2.</source>
        <translation>Sentito &quot;%1&quot;. Qui dire: %2.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::LineBackView</name>
    <message>
        <source>How it runs was not written down: look at its photo.</source>
        <translation>Non è scritto come passa: guarda la foto.</translation>
    </message>
    <message>
        <source>How it runs was not written down and there is no photo: look it up in the machine&apos;s manual.</source>
        <translation>Non è scritto come passa e non c&apos;è foto: guarda nel manuale del mezzo.</translation>
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
    <message>
        <source>That cannot be entered here: type it.</source>
        <translation>Qui non si può inserire: scriverlo.</translation>
    </message>
    <message>
        <source>The step has several torques: choose below which one is measured.</source>
        <translation>Il passo ha più coppie: scegli sotto quale si misura.</translation>
    </message>
    <message>
        <source>to be %1</source>
        <translation>deve essere %1</translation>
    </message>
    <message>
        <source>as the step says; %1 to %2, as far as a wrench by ISO 6789-1 may be off</source>
        <translation>come dice il passo; da %1 a %2, quanto può sbagliare una chiave secondo ISO 6789-1</translation>
    </message>
    <message>
        <source>One reading stands for all %1: keep the one that is furthest off, or take each with Again.</source>
        <translation>Una lettura vale per tutti i %1: tieni quella più lontana, o prendile tutte con «Ripeti».</translation>
    </message>
    <message>
        <source>as read; the instrument is not known, taken to be within %1: %2</source>
        <translation>come letto; lo strumento non è noto, si assume entro %1: %2</translation>
    </message>
    <message>
        <source>Choose the unit that this was measured in.</source>
        <translation>Scegli l&apos;unità in cui si è misurato.</translation>
    </message>
    <message>
        <source>Taken out: %1</source>
        <translation>Tolta: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::MemoPlayback</name>
    <message>
        <source>Place marked</source>
        <translation>Punto segnato</translation>
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
    <name>undercowl::ui::ProofsView</name>
    <message>
        <source>left out: %1</source>
        <translation>tralasciato: %1</translation>
    </message>
    <message>
        <source>proved: %1</source>
        <translation>verificato: %1</translation>
    </message>
    <message>
        <source>proved by its reading, or said</source>
        <translation>verificato dalla lettura, o detto</translation>
    </message>
    <message>
        <source>proved wire by wire, or said</source>
        <translation>verificato filo per filo, o detto</translation>
    </message>
    <message>
        <source>proved</source>
        <translation>verificato</translation>
    </message>
    <message numerus="yes">
        <source>%n proved</source>
        <translation>
            <numerusform>%n verificato</numerusform>
            <numerusform>%n verificati</numerusform>
        </translation>
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
    <message>
        <source>Not proved while this stands: %1. Put it right, or type why it is left out.</source>
        <translation>Non verificato finché resta: %1. Sistemalo, o scrivi perché si tralascia.</translation>
    </message>
    <message>
        <source>No reading shows the torque: measure it, or type how it was tightened.</source>
        <translation>Nessuna lettura mostra la coppia: misurala, o scrivi come si è serrato.</translation>
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
</context>
<context>
    <name>undercowl::ui::ReadBackWalk</name>
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
    <message>
        <source>Order changed</source>
        <translation>Ordine cambiato</translation>
    </message>
    <message>
        <source>Not refitted: %1</source>
        <translation>Non rimontato: %1</translation>
    </message>
    <message>
        <source>Part not fitted: %1 (%2)</source>
        <translation>Ricambio non montato: %1 (%2)</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RestoreView</name>
    <message>
        <source>%1, %2: no backup, or damaged at its beginning</source>
        <translation>%1, %2: non è una copia, o è danneggiata all&apos;inizio</translation>
    </message>
    <message>
        <source>%1, %2, sealed with a passphrase</source>
        <translation>%1, %2, sigillata con frase segreta</translation>
    </message>
    <message numerus="yes">
        <source>%n jobs</source>
        <translation>
            <numerusform>%n lavoro</numerusform>
            <numerusform>%n lavori</numerusform>
        </translation>
    </message>
    <message>
        <source>A shop that cannot be read whole</source>
        <translation>Un&apos;officina che non si legge per intero</translation>
    </message>
    <message>
        <source>%1, last worked on %2</source>
        <translation>%1, ultimo lavoro %2</translation>
    </message>
    <message>
        <source>This file is no backup of a shop, or damaged at its very beginning. Choose another one.</source>
        <translation>Questo file non è la copia di un&apos;officina, o è danneggiato proprio all&apos;inizio. Sceglierne un altro.</translation>
    </message>
    <message numerus="yes">
        <source>Brought back as it was on %1: %n entries.</source>
        <translation>
            <numerusform>Riportata com&apos;era il %1: %n voce.</numerusform>
            <numerusform>Riportata com&apos;era il %1: %n voci.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n places of the backup could not be read.</source>
        <translation>
            <numerusform>%n punto della copia non si è potuto leggere.</numerusform>
            <numerusform>%n punti della copia non si sono potuti leggere.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photos or memos are in none of the backups here.</source>
        <translation>
            <numerusform>%n foto o nota non è in nessuna delle copie qui.</numerusform>
            <numerusform>%n foto o note non sono in nessuna delle copie qui.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n things in it are missing or damaged.</source>
        <translation>
            <numerusform>Dentro manca o è danneggiata %n cosa.</numerusform>
            <numerusform>Dentro mancano o sono danneggiate %n cose.</numerusform>
        </translation>
    </message>
    <message>
        <source>This passphrase does not fit: look at each letter, large or small. If it is right, the file is damaged at its beginning.</source>
        <translation>Questa frase non va bene: guardare ogni lettera, maiuscola o minuscola. Se è giusta, il file è danneggiato all&apos;inizio.</translation>
    </message>
    <message>
        <source>Nothing of this backup can be read any more. Choose another one; this device holds what it held before.</source>
        <translation>Di questa copia non si legge più niente. Sceglierne un&apos;altra; su questo dispositivo tutto è come prima.</translation>
    </message>
    <message numerus="yes">
        <source>Some of its photos and memos are in earlier backups, of which %n are not in the same folder. Put them there, or bring back what is here.</source>
        <translation>
            <numerusform>Parte delle sue foto e note è in copie precedenti, di cui %n non è nella stessa cartella. Metterla lì, o riportare quello che c&apos;è.</numerusform>
            <numerusform>Parte delle sue foto e note è in copie precedenti, di cui %n non sono nella stessa cartella. Metterle lì, o riportare quello che c&apos;è.</numerusform>
        </translation>
    </message>
    <message>
        <source>The backup is damaged or cut short. If there is another one, take that. Nothing was changed on this device.</source>
        <translation>La copia è danneggiata o tagliata. Se ce n&apos;è un&apos;altra, prendere quella. Su questo dispositivo niente è cambiato.</translation>
    </message>
    <message>
        <source>There is no room on this device for the shop. Make room, then try again.</source>
        <translation>Su questo dispositivo non c&apos;è posto per l&apos;officina. Fare posto, poi riprovare.</translation>
    </message>
    <message>
        <source>The backup was written by a newer version. Bring this app up to date.</source>
        <translation>La copia è di una versione più nuova. Aggiornare questa app.</translation>
    </message>
    <message>
        <source>The file is not there any more. Put the stick or the card in again.</source>
        <translation>Il file non c&apos;è più. Reinserire la chiavetta o la scheda.</translation>
    </message>
    <message>
        <source>What can be read of the shop on this device</source>
        <translation>Ciò che si legge dell&apos;officina su questo dispositivo</translation>
    </message>
    <message>
        <source>The shop was written by a newer version. Bring this app up to date.</source>
        <translation>L&apos;officina è stata scritta da una versione più nuova. Aggiornare questa app.</translation>
    </message>
    <message numerus="yes">
        <source>A new shop of what can be read: %n entries.</source>
        <translation>
            <numerusform>Una nuova officina da ciò che si legge: %n voce.</numerusform>
            <numerusform>Una nuova officina da ciò che si legge: %n voci.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them only the copies beside it still had.</source>
        <translation>
            <numerusform>%n di queste c&apos;era solo nelle copie accanto.</numerusform>
            <numerusform>%n di queste c&apos;erano solo nelle copie accanto.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing of the shop on this device can be read any more. Bring a backup back.</source>
        <translation>Dell&apos;officina su questo dispositivo non si legge più niente. Riportare una copia di sicurezza.</translation>
    </message>
    <message>
        <source>The app opens it at its next start.</source>
        <translation>L’app la apre al prossimo avvio.</translation>
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
    <name>undercowl::ui::SettleView</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Type what was done, such as &quot;hose renewed, brake bled&quot;.</source>
        <translation>Scrivere che cosa è stato fatto, per esempio &quot;tubo nuovo, freno spurgato&quot;.</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Risolto</translation>
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
        <source>Undone: %1</source>
        <translation>Annullato: %1</translation>
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
    <message>
        <source>%1: %2 of %3 on the photo</source>
        <translation>%1: %2 di %3 sulla foto</translation>
    </message>
    <message>
        <source>All %1 are on a photo. Touch a ring to take it away.</source>
        <translation>Tutti i %1 sono su una foto. Toccare un cerchio per toglierlo.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::StrokeView</name>
    <message>
        <source>No wire could be followed on this photo. Stroke across the wires.</source>
        <translation>Su questa foto non si è potuto seguire nessun filo. Passare il dito sui fili.</translation>
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
    <message>
        <source>No wire could be followed from there. Stroke across the wires instead.</source>
        <translation>Da lì non si è potuto seguire nessun filo. Passare invece il dito sui fili.</translation>
    </message>
    <message>
        <source>Followed from the connector: %1, in their order. Touch each that belongs here.</source>
        <translation>Seguiti dal connettore: %1, nel loro ordine. Toccare quelli che vanno qui.</translation>
    </message>
    <message>
        <source>Followed: %1. Touch each that belongs here, or draw a line across the connector&apos;s mouth: then only its wires are left.</source>
        <translation>Seguiti: %1. Toccare quelli che vanno qui, o tracciare una linea sull&apos;imbocco del connettore: restano solo i suoi fili.</translation>
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
        <source>Changed</source>
        <translation>Cambiato</translation>
    </message>
    <message>
        <source>Comes back from %1</source>
        <translation>Torna da %1</translation>
    </message>
    <message>
        <source>Look at it once more: %1</source>
        <translation>Guarda ancora: %1</translation>
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
    <message>
        <source>sure, of the side that is seen</source>
        <translation>sicuro, del lato che si vede</translation>
    </message>
    <message>
        <source>turn the wire, a tracer may lie on its other side</source>
        <translation>girare il filo, sull’altro lato può esserci un secondo colore</translation>
    </message>
</context>
</TS>
