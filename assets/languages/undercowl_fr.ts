<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_FR" sourcelanguage="en">
<context>
    <name>AfterwardsPage</name>
    <message>
        <source>Afterwards</source>
        <translation>Ensuite</translation>
    </message>
    <message>
        <source>It is done</source>
        <translation>C&apos;est fait</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Laisser</translation>
    </message>
    <message>
        <source>Nothing that is on again waits to be adjusted, bled or tried.</source>
        <translation>Rien de ce qui est remonté n&apos;attend d&apos;être réglé, purgé ou essayé.</translation>
    </message>
    <message>
        <source>Nothing open</source>
        <translation>Rien en attente</translation>
    </message>
    <message>
        <source>Why, if it is left out</source>
        <translation>Pourquoi, si on le laisse</translation>
    </message>
    <message>
        <source>goes home on a trailer</source>
        <translation>repart sur remorque</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Laissé</translation>
    </message>
</context>
<context>
    <name>ApprovalPage</name>
    <message>
        <source>The owner&apos;s word</source>
        <translation>La parole du propriétaire</translation>
    </message>
    <message>
        <source>The owner agrees</source>
        <translation>Le propriétaire accepte</translation>
    </message>
    <message>
        <source>The owner does not want it</source>
        <translation>Le propriétaire ne veut pas</translation>
    </message>
    <message>
        <source>Approval</source>
        <translation>Accord</translation>
    </message>
    <message>
        <source>For which work</source>
        <translation>Pour quel travail</translation>
    </message>
    <message>
        <source>front brake, both tyres</source>
        <translation>frein avant, les deux pneus</translation>
    </message>
    <message>
        <source>Up to which sum</source>
        <translation>Jusqu&apos;à quelle somme</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Monnaie</translation>
    </message>
</context>
<context>
    <name>AsFoundPage</name>
    <message>
        <source>As found</source>
        <translation>À l&apos;arrivée</translation>
    </message>
    <message>
        <source>Another photo</source>
        <translation>Autre photo</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>Go on with the views</source>
        <translation>Continuer les vues</translation>
    </message>
    <message>
        <source>Pass over</source>
        <translation>Passer</translation>
    </message>
    <message>
        <source>Every view is photographed or passed over.</source>
        <translation>Chaque vue est photographiée ou passée.</translation>
    </message>
</context>
<context>
    <name>BackupPage</name>
    <message>
        <source>Backup</source>
        <translation>Sauvegarde</translation>
    </message>
    <message>
        <source>Writing</source>
        <translation>Écriture</translation>
    </message>
    <message>
        <source>Reading it again</source>
        <translation>Relecture</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Sauvegarder</translation>
    </message>
    <message>
        <source>Back up, sealed</source>
        <translation>Sauvegarder, scellé</translation>
    </message>
    <message>
        <source>Last copy of the entries on this device: %1. It does not help when the phone is lost: put the whole shop into another place now and then.</source>
        <translation>Dernière copie des entrées sur cet appareil&#xa0;: %1. Elle n&apos;aide pas si le téléphone est perdu&#xa0;: mettre de temps en temps tout l&apos;atelier ailleurs.</translation>
    </message>
    <message>
        <source>Where to</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>Photos and memos</source>
        <translation>Photos et notes</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Toutes</translation>
    </message>
    <message>
        <source>Only new ones</source>
        <translation>Seulement les nouvelles</translation>
    </message>
    <message>
        <source>The backups that are there already are needed too when the shop is brought back.</source>
        <translation>Pour ramener l&apos;atelier, il faut aussi les sauvegardes qui sont déjà là.</translation>
    </message>
    <message>
        <source>Without one, whoever finds the file can read it. A forgotten one cannot be got round.</source>
        <translation>Sans elle, qui trouve le fichier peut le lire. Oubliée, elle ne se contourne pas.</translation>
    </message>
    <message>
        <source>Passphrase, if it is to be sealed</source>
        <translation>Phrase secrète, pour sceller</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>Encore la même</translation>
    </message>
    <message>
        <source>Bring a shop back</source>
        <translation>Ramener un atelier</translation>
    </message>
</context>
<context>
    <name>BagEntry</name>
    <message>
        <source>in use: %1</source>
        <translation>pris&#xa0;: %1</translation>
    </message>
    <message>
        <source>Number of the bag</source>
        <translation>Numéro du sachet</translation>
    </message>
</context>
<context>
    <name>BandPlot</name>
    <message>
        <source>%1; limits %2 to %3</source>
        <translation>%1&#xa0;; limites %2 à %3</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>à partir de %1</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>jusqu&apos;à %1</translation>
    </message>
</context>
<context>
    <name>CalcEntry</name>
    <message>
        <source>changes the sign</source>
        <translation>change le signe</translation>
    </message>
    <message>
        <source>+/−</source>
        <translation>+/−</translation>
    </message>
    <message>
        <source>changes the unit</source>
        <translation>change l&apos;unité</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unité</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
    </message>
</context>
<context>
    <name>CalcInputRow</name>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>from the job; tap to change</source>
        <translation>vient du dossier&#xa0;; toucher pour changer</translation>
    </message>
    <message>
        <source>assumed; tap to change</source>
        <translation>supposé&#xa0;; toucher pour changer</translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation>peut rester vide</translation>
    </message>
</context>
<context>
    <name>CalcListPage</name>
    <message>
        <source>Calculations</source>
        <translation>Calculs</translation>
    </message>
    <message>
        <source>Words to look for</source>
        <translation>Mots à chercher</translation>
    </message>
    <message>
        <source>words, such as torque or tyre</source>
        <translation>mots comme couple ou pneu</translation>
    </message>
    <message>
        <source>No calculation has these words. Try fewer, or only their beginnings.</source>
        <translation>Aucun calcul n&apos;a ces mots. Essayer moins de mots, ou seulement leur début.</translation>
    </message>
</context>
<context>
    <name>CalcMore</name>
    <message>
        <source>Hide: %1</source>
        <translation>Cacher&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>CalcPage</name>
    <message>
        <source>Next</source>
        <translation>Suivant</translation>
    </message>
    <message>
        <source>Keep in the job</source>
        <translation>Garder dans le dossier</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Vider</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Ramener</translation>
    </message>
    <message>
        <source>Example</source>
        <translation>Exemple</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Données</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Calcul détaillé</translation>
    </message>
    <message>
        <source>Formula, limits and sources</source>
        <translation>Formule, limites et sources</translation>
    </message>
</context>
<context>
    <name>CameraPage</name>
    <message>
        <source>The photo before is still being saved. Say it again.</source>
        <translation>La photo d&apos;avant s&apos;enregistre encore. Redire.</translation>
    </message>
    <message>
        <source>Take a photo first; then a memo to it can be kept.</source>
        <translation>D&apos;abord prendre une photo&#xa0;; une note peut alors s&apos;y garder.</translation>
    </message>
</context>
<context>
    <name>CameraPicture</name>
    <message>
        <source>Picture of the camera</source>
        <translation>Image de l&apos;appareil photo</translation>
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
        <translation>Éteindre la lampe</translation>
    </message>
    <message>
        <source>Torch on</source>
        <translation>Allumer la lampe</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Enregistre</translation>
    </message>
    <message>
        <source>Shoot</source>
        <translation>Déclencher</translation>
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
        <translation>Remarque sur la photo</translation>
    </message>
    <message numerus="yes">
        <source>Done, %n kept</source>
        <comment>photos</comment>
        <translation>
            <numerusform>Fini, %n gardée</numerusform>
            <numerusform>Fini, %n gardées</numerusform>
        </translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fini</translation>
    </message>
</context>
<context>
    <name>CarryPage</name>
    <message>
        <source>Carry over</source>
        <translation>Reporter</translation>
    </message>
    <message numerus="yes">
        <source>Take %n over</source>
        <comment>wires</comment>
        <translation>
            <numerusform>Reporter %n fil</numerusform>
            <numerusform>Reporter %n fils</numerusform>
        </translation>
    </message>
    <message>
        <source>Taken over</source>
        <translation>Reportés</translation>
    </message>
    <message>
        <source>Wires go where the same is served; their colour decides nothing. Say what each wire of the old part and each place of the new one serves.</source>
        <translation>Les fils vont là où la fonction est la même&#xa0;; leur couleur ne décide rien. Dire la fonction de chaque fil de l&apos;ancienne pièce et de chaque voie de la neuve.</translation>
    </message>
    <message>
        <source>Measure first</source>
        <translation>D&apos;abord mesurer</translation>
    </message>
    <message numerus="yes">
        <source>%n at most</source>
        <comment>trials</comment>
        <translation>
            <numerusform>%n au plus</numerusform>
            <numerusform>%n au plus</numerusform>
        </translation>
    </message>
    <message>
        <source>Then try</source>
        <translation>Puis essayer</translation>
    </message>
    <message>
        <source>Only with a fuse of 3 A at most in the trial lead, one connection at a time, everything else switched off, engine stopped. No sign: take it off before the next. A fuse that blows ends the trials. The machine&apos;s manual and diagram come first.</source>
        <translation>Seulement avec un fusible de 3 A au plus dans le fil d&apos;essai, un branchement à la fois, tout le reste éteint, moteur arrêté. Pas de signe&#xa0;: le débrancher avant le suivant. Un fusible qui saute met fin aux essais. Le manuel et le schéma du véhicule passent avant.</translation>
    </message>
    <message>
        <source>At which place was the sign seen?</source>
        <translation>À quelle voie a-t-on vu le signe&#xa0;?</translation>
    </message>
</context>
<context>
    <name>CautionBox</name>
    <message>
        <source>Caution: %1</source>
        <translation>Attention&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>CheckWalkBody</name>
    <message>
        <source>Answered: %1</source>
        <translation>Répondu&#xa0;: %1</translation>
    </message>
    <message>
        <source>Previous</source>
        <translation>Précédent</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation>Tous</translation>
    </message>
    <message numerus="yes">
        <source>%n to go</source>
        <comment>checks</comment>
        <translation>
            <numerusform>encore %n</numerusform>
            <numerusform>encore %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>Compare</source>
        <translation>Comparer</translation>
    </message>
    <message>
        <source>Opening the photo</source>
        <translation>Ouverture de la photo</translation>
    </message>
    <message>
        <source>Reading the wires</source>
        <translation>Lecture des fils</translation>
    </message>
    <message>
        <source>Photo as it is now</source>
        <translation>Photo de maintenant</translation>
    </message>
    <message>
        <source>Wires as they are now</source>
        <translation>Fils comme ils sont maintenant</translation>
    </message>
    <message>
        <source>When the stroke began at the last place</source>
        <translation>Si le trait a commencé par la dernière voie</translation>
    </message>
    <message>
        <source>Turn round</source>
        <translation>Retourner</translation>
    </message>
    <message>
        <source>Stroke again</source>
        <translation>Nouveau trait</translation>
    </message>
    <message>
        <source>Wires that look alike cannot be told apart in a photo: a swap among twins is not seen.</source>
        <translation>Sur une photo, des fils pareils ne se distinguent pas&#xa0;: un échange entre jumeaux ne se voit pas.</translation>
    </message>
    <message>
        <source>Now tap the last wire.</source>
        <translation>Toucher maintenant le dernier fil.</translation>
    </message>
    <message>
        <source>Stroke across the wires from place 1 on, or tap the first wire and then the last.</source>
        <translation>Passer le doigt en travers des fils à partir de la voie 1, ou toucher le premier fil puis le dernier.</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Avant</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Maintenant</translation>
    </message>
    <message>
        <source>Photo before</source>
        <translation>Photo d&apos;avant</translation>
    </message>
    <message>
        <source>Compare with another photo</source>
        <translation>Comparer à une autre photo</translation>
    </message>
</context>
<context>
    <name>ConsumablesPage</name>
    <message>
        <source>Fluids and grease</source>
        <translation>Fluides et graisse</translation>
    </message>
    <message>
        <source>Use it all the same</source>
        <translation>Mettre quand même</translation>
    </message>
    <message>
        <source>It goes in</source>
        <translation>On le met</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Fluide</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Ce qu&apos;on y met</translation>
    </message>
    <message>
        <source>brake fluid</source>
        <translation>liquide de frein</translation>
    </message>
    <message>
        <source>Grade on the container</source>
        <translation>Norme sur le bidon</translation>
    </message>
    <message>
        <source>Grades that the machine allows</source>
        <translation>Normes admises par le véhicule</translation>
    </message>
    <message>
        <source>DOT 4, from the lid</source>
        <translation>DOT 4, sur le couvercle</translation>
    </message>
    <message>
        <source>Day on which the container was opened</source>
        <translation>Jour d&apos;ouverture du bidon</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>Went in</source>
        <translation>Mis</translation>
    </message>
</context>
<context>
    <name>Core</name>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1: fits</source>
        <translation>%1&#xa0;: va</translation>
    </message>
    <message>
        <source>%1: fits after a change (%2)</source>
        <translation>%1&#xa0;: va après un changement (%2)</translation>
    </message>
    <message>
        <source>%1: does not fit (%2)</source>
        <translation>%1&#xa0;: ne va pas (%2)</translation>
    </message>
    <message>
        <source>line %1: a quote is opened and not closed</source>
        <translation>ligne %1&#xa0;: un guillemet est ouvert et pas fermé</translation>
    </message>
    <message>
        <source>line %1: letters stand between a closing quote and the end of its cell</source>
        <translation>ligne %1&#xa0;: des lettres entre le guillemet fermant et la fin de la case</translation>
    </message>
    <message>
        <source>make, model: one of them must be there</source>
        <translation>make, model&#xa0;: il faut l&apos;un des deux</translation>
    </message>
    <message>
        <source>year: &apos;%1&apos; is no year such as 1987</source>
        <translation>year&#xa0;: &apos;%1&apos; n&apos;est pas une année comme 1987</translation>
    </message>
    <message>
        <source>passed over: is here as job %1</source>
        <translation>passée&#xa0;: déjà ici comme dossier %1</translation>
    </message>
    <message>
        <source>opens job %1: %2</source>
        <translation>ouvre le dossier %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>part: must say what part it is</source>
        <translation>part&#xa0;: doit dire quelle pièce c&apos;est</translation>
    </message>
    <message>
        <source>price: &apos;%1&apos; is no number such as 18.50</source>
        <translation>price&#xa0;: &apos;%1&apos; n&apos;est pas un nombre comme 18.50</translation>
    </message>
    <message>
        <source>currency: a price needs its currency, such as EUR</source>
        <translation>currency&#xa0;: un prix veut sa monnaie, par exemple EUR</translation>
    </message>
    <message>
        <source>job: there is no job &apos;%1&apos; in this shop</source>
        <translation>job&#xa0;: il n&apos;y a pas de dossier &apos;%1&apos; dans cet atelier</translation>
    </message>
    <message>
        <source>passed over: job %1 has it</source>
        <translation>passée&#xa0;: le dossier %1 l&apos;a déjà</translation>
    </message>
    <message>
        <source>adds to job %1: %2</source>
        <translation>ajoute au dossier %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>odometer: %1</source>
        <translation>compteur&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: &apos;%2&apos; is not known</source>
        <translation>%1&#xa0;: &apos;%2&apos; n&apos;est pas connu</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>le fichier est vide</translation>
    </message>
    <message>
        <source>the first line names no column that is known: a sheet of machines has &quot;make&quot; and &quot;model&quot;, one of parts has &quot;job&quot; and &quot;part&quot;</source>
        <translation>la première ligne ne nomme aucune colonne connue&#xa0;: un tableau de véhicules a &quot;make&quot; et &quot;model&quot;, un de pièces &quot;job&quot; et &quot;part&quot;</translation>
    </message>
    <message>
        <source>media file %1: its content does not fit its name</source>
        <translation>fichier %1&#xa0;: son contenu ne va pas avec son nom</translation>
    </message>
    <message>
        <source>backup: %1 exists already; give another name</source>
        <translation>sauvegarde&#xa0;: %1 existe déjà&#xa0;; donner un autre nom</translation>
    </message>
    <message>
        <source>backup: what was written is not what can be read again</source>
        <translation>sauvegarde&#xa0;: ce qui est écrit ne se relit pas pareil</translation>
    </message>
    <message>
        <source>%1. Make room on the disk, then try again.</source>
        <translation>%1. Faire de la place sur le disque, puis réessayer.</translation>
    </message>
    <message>
        <source>%1. Check who owns the folder and whether it may be written.</source>
        <translation>%1. Voir à qui est le répertoire et si on peut y écrire.</translation>
    </message>
    <message>
        <source>cannot write %1</source>
        <translation>impossible d&apos;écrire %1</translation>
    </message>
    <message>
        <source>cannot sync %1</source>
        <translation>impossible de synchroniser %1</translation>
    </message>
    <message>
        <source>cannot close %1</source>
        <translation>impossible de fermer %1</translation>
    </message>
    <message>
        <source>cannot make the folder %1</source>
        <translation>impossible de créer le répertoire %1</translation>
    </message>
    <message>
        <source>cannot create %1</source>
        <translation>impossible de créer %1</translation>
    </message>
    <message>
        <source>cannot rename to %1</source>
        <translation>impossible de renommer en %1</translation>
    </message>
    <message>
        <source>cannot remove %1</source>
        <translation>impossible d&apos;ôter %1</translation>
    </message>
    <message>
        <source>cannot open the folder %1</source>
        <translation>impossible d&apos;ouvrir le répertoire %1</translation>
    </message>
    <message>
        <source>cannot look at %1</source>
        <translation>impossible de voir %1</translation>
    </message>
    <message>
        <source>cannot list the folder %1</source>
        <translation>impossible de lister le répertoire %1</translation>
    </message>
    <message>
        <source>cannot open %1</source>
        <translation>impossible d&apos;ouvrir %1</translation>
    </message>
    <message>
        <source>cannot read %1</source>
        <translation>impossible de lire %1</translation>
    </message>
    <message>
        <source>%1 is not a regular file. Move it away.</source>
        <translation>%1 n&apos;est pas un fichier ordinaire. L&apos;écarter.</translation>
    </message>
    <message>
        <source>Make room on the disk, then try again; nothing of this was kept.</source>
        <translation>Faire de la place sur le disque, puis réessayer&#xa0;; rien de ceci n&apos;a été gardé.</translation>
    </message>
    <message>
        <source>Check that the folder may be written and that no other program holds it locked.</source>
        <translation>Voir si on peut écrire dans le répertoire et si aucun autre programme ne le tient bloqué.</translation>
    </message>
    <message>
        <source>Try again; if it comes back, check the disk.</source>
        <translation>Réessayer&#xa0;; si cela revient, vérifier le disque.</translation>
    </message>
    <message>
        <source>%1 is the database of another program. It was left as it is; name another folder.</source>
        <translation>%1 est la base de données d&apos;un autre programme. Elle est restée telle quelle&#xa0;; nommer un autre répertoire.</translation>
    </message>
    <message>
        <source>%1 was written by a newer version (schema %2, known here: up to %3). It was left as it is; update this program.</source>
        <translation>%1 vient d&apos;une version plus récente (schéma %2, connu ici&#xa0;: jusqu&apos;à %3). Tout est resté tel quel&#xa0;; mettre ce programme à jour.</translation>
    </message>
    <message>
        <source>This shop was written by a newer version of the program and can only be looked at here. Bring this program up to date to go on working in it.</source>
        <translation>Cet atelier a été écrit par une version plus récente du programme et ne peut qu&apos;être regardé ici. Mettre le programme à jour pour continuer.</translation>
    </message>
    <message>
        <source>%1 holds no store but other things, such as &apos;%2&apos;. Name an empty folder or a new one.</source>
        <translation>%1 ne contient pas d&apos;atelier mais autre chose, comme &apos;%2&apos;. Nommer un répertoire vide ou nouveau.</translation>
    </message>
    <message>
        <source>the key of the backup needs %1 MiB of memory, which are not free; close other programs</source>
        <translation>la clé de la sauvegarde veut %1 Mio de mémoire, qui ne sont pas libres&#xa0;; fermer d&apos;autres programmes</translation>
    </message>
    <message>
        <source>passphrase: must have at least 8 bytes; several words are best</source>
        <translation>phrase secrète&#xa0;: au moins 8 octets&#xa0;; plusieurs mots valent mieux</translation>
    </message>
    <message>
        <source>find: at most 16 words at a time</source>
        <translation>recherche&#xa0;: 16 mots au plus à la fois</translation>
    </message>
    <message>
        <source>body: has %1 bytes, at most %2 are kept; shorten the text</source>
        <translation>body&#xa0;: a %1 octets, %2 au plus sont gardés&#xa0;; raccourcir le texte</translation>
    </message>
    <message>
        <source>media: a file must have between 1 byte and 256 MiB, this one has %1 bytes</source>
        <translation>media&#xa0;: un fichier doit avoir entre 1 octet et 256 Mio, celui-ci a %1 octets</translation>
    </message>
    <message>
        <source>media: the file %1 is missing. Put it back from a backup or an archive.</source>
        <translation>media&#xa0;: le fichier %1 manque. Le remettre d&apos;une sauvegarde ou d&apos;une archive.</translation>
    </message>
    <message>
        <source>%1: its content does not fit its name. Put it back from a backup or an archive.</source>
        <translation>%1&#xa0;: son contenu ne va pas avec son nom. Le remettre d&apos;une sauvegarde ou d&apos;une archive.</translation>
    </message>
    <message>
        <source>%1, %2 tracer</source>
        <translation>%1, liseré %2</translation>
    </message>
    <message>
        <source>blade %1</source>
        <translation>cosse plate mâle %1</translation>
    </message>
    <message>
        <source>receptacle %1</source>
        <translation>cosse plate femelle %1</translation>
    </message>
    <message>
        <source>bullet %1</source>
        <translation>cosse ronde mâle %1</translation>
    </message>
    <message>
        <source>bullet socket %1</source>
        <translation>cosse ronde femelle %1</translation>
    </message>
    <message>
        <source>ring %1</source>
        <translation>œillet %1</translation>
    </message>
    <message>
        <source>fork %1</source>
        <translation>fourche %1</translation>
    </message>
    <message>
        <source>pin %1</source>
        <translation>broche %1</translation>
    </message>
    <message>
        <source>socket %1</source>
        <translation>douille %1</translation>
    </message>
    <message>
        <source>splice %1</source>
        <translation>épissure %1</translation>
    </message>
    <message>
        <source>bare %1</source>
        <translation>dénudé %1</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date as it is read here: write year, month and day, such as 2026-11-25</source>
        <translation>&quot;%1&quot; n&apos;est pas une date lisible ici&#xa0;: écrire année, mois et jour, par exemple 2026-11-25</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a day of the calendar</source>
        <translation>&quot;%1&quot; n&apos;est pas un jour du calendrier</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is out of range: the year must be from 1885 to 2200</source>
        <translation>&quot;%1&quot; est hors limites&#xa0;: l&apos;année doit aller de 1885 à 2200</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number: write digits with one decimal point or comma, such as 2.4 or 1/2</source>
        <translation>&quot;%1&quot; n&apos;est pas un nombre&#xa0;: écrire des chiffres avec un point ou une virgule, par exemple 2.4 ou 1/2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; divides by zero</source>
        <translation>&quot;%1&quot; divise par zéro</translation>
    </message>
    <message>
        <source>&quot;%1&quot; could be a fraction or two values: write one number, a fraction above one as 1 1/4</source>
        <translation>&quot;%1&quot; peut être une fraction ou deux valeurs&#xa0;: écrire un seul nombre, une fraction au-dessus de un comme 1 1/4</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has more than one separator: write the number without grouping, such as 1234.5</source>
        <translation>&quot;%1&quot; a plus d&apos;un séparateur&#xa0;: écrire le nombre sans groupes, par exemple 1234.5</translation>
    </message>
    <message>
        <source>&quot;%1&quot; could be %2 or %3: write %4, or %5 with a point</source>
        <translation>&quot;%1&quot; peut être %2 ou %3&#xa0;: écrire %4, ou %5 avec un point</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is ambiguous: %2</source>
        <translation>&quot;%1&quot; est ambigu&#xa0;: %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a unit that is known here: %2 is wanted here, in %3</source>
        <translation>&quot;%1&quot; n&apos;est pas une unité connue ici&#xa0;: il faut %2, en %3</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is a unit of %2: %3 is wanted here, in %4</source>
        <translation>&quot;%1&quot; est une unité de %2&#xa0;: il faut %3, en %4</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a gap inside: write the number without grouping, such as 1234.5</source>
        <translation>&quot;%1&quot; a un trou au milieu&#xa0;: écrire le nombre sans groupes, par exemple 1234.5</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is beyond any number that is measured</source>
        <translation>&quot;%1&quot; dépasse tout ce qui se mesure</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no unit: %2 is wanted here, in %3</source>
        <translation>&quot;%1&quot; n&apos;a pas d&apos;unité&#xa0;: il faut %2, en %3</translation>
    </message>
    <message>
        <source>%1 is a unit of %2, %3 of %4: what fits is %5</source>
        <translation>%1 est une unité de %2, %3 de %4&#xa0;: convient %5</translation>
    </message>
    <message>
        <source>write US gal or imp gal: they differ by a fifth</source>
        <translation>écrire US gal ou imp gal&#xa0;: ils diffèrent d&apos;un cinquième</translation>
    </message>
    <message>
        <source>write US pt or imp pt: they differ by a fifth</source>
        <translation>écrire US pt ou imp pt&#xa0;: ils diffèrent d&apos;un cinquième</translation>
    </message>
    <message>
        <source>write US fl oz or imp fl oz: they are not the same</source>
        <translation>écrire US fl oz ou imp fl oz&#xa0;: ce n&apos;est pas pareil</translation>
    </message>
    <message>
        <source>write mpg(US) or mpg(imp): they differ by a fifth</source>
        <translation>écrire mpg(US) ou mpg(imp)&#xa0;: ils diffèrent d&apos;un cinquième</translation>
    </message>
    <message>
        <source>write mohm for milliohm or Mohm for megaohm</source>
        <translation>écrire mohm pour milliohm ou Mohm pour mégohm</translation>
    </message>
    <message>
        <source>no limit is known: the value is kept without a verdict</source>
        <translation>pas de limite connue&#xa0;: la valeur reste sans verdict</translation>
    </message>
    <message>
        <source>the limit is in %1, the value in %2: what fits is %3</source>
        <translation>la limite est en %1, la valeur en %2&#xa0;: convient %3</translation>
    </message>
    <message>
        <source>no instrument or uncertainty is known: the value is kept without a verdict</source>
        <translation>instrument ou incertitude inconnus&#xa0;: la valeur reste sans verdict</translation>
    </message>
    <message>
        <source>the uncertainty is in %1: what fits is %2</source>
        <translation>l&apos;incertitude est en %1&#xa0;: convient %2</translation>
    </message>
    <message>
        <source>the uncertainty must be above zero: no instrument is without error</source>
        <translation>l&apos;incertitude doit être au-dessus de zéro&#xa0;: aucun instrument n&apos;est sans erreur</translation>
    </message>
    <message>
        <source>the lower limit is above the upper one</source>
        <translation>la limite basse est au-dessus de la haute</translation>
    </message>
    <message>
        <source>a torque wrench reads torque, not %1</source>
        <translation>une clé dynamométrique lit un couple, pas %1</translation>
    </message>
    <message>
        <source>class %1 does not exist: type I has A to E, type II A to G</source>
        <translation>la classe %1 n&apos;existe pas&#xa0;: le type I va de A à E, le type II de A à G</translation>
    </message>
    <message>
        <source>(from memory: look at the certificate)</source>
        <translation>(de mémoire&#xa0;: voir le certificat)</translation>
    </message>
    <message>
        <source>%1 (from memory: look at the certificate)</source>
        <translation>%1 (de mémoire&#xa0;: voir le certificat)</translation>
    </message>
    <message>
        <source>tested by ISO 6789: worked %1 times at its largest torque, then read at %2 % of it</source>
        <translation>essai selon ISO 6789&#xa0;: %1 serrages au couple maximal, puis lecture à %2 % de celui-ci</translation>
    </message>
    <message>
        <source>name: give the instrument one, as the shop calls it</source>
        <translation>nom&#xa0;: en donner un, comme dit l&apos;atelier</translation>
    </message>
    <message>
        <source>range: the upper end must be above the lower one</source>
        <translation>plage&#xa0;: le haut doit être au-dessus du bas</translation>
    </message>
    <message>
        <source>resolution: give one division, or the last digit of the display</source>
        <translation>résolution&#xa0;: donner une division, ou le dernier chiffre de l&apos;afficheur</translation>
    </message>
    <message>
        <source>limit of error: its parts must not be negative</source>
        <translation>limite d&apos;erreur&#xa0;: ses parts ne peuvent pas être négatives</translation>
    </message>
    <message>
        <source>limit of error: give it from the maker&apos;s sheet; it is never zero</source>
        <translation>limite d&apos;erreur&#xa0;: la donner d&apos;après la fiche du fabricant&#xa0;; elle n&apos;est jamais nulle</translation>
    </message>
    <message>
        <source>%1 reads %2: %3</source>
        <translation>%1 lit %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1 reads from %2 to %3, not %4: use another instrument</source>
        <translation>%1 lit de %2 à %3, pas %4&#xa0;: prendre un autre instrument</translation>
    </message>
    <message>
        <source>limit of error, %1 % of the reading (%2)</source>
        <translation>limite d&apos;erreur, %1 % de la valeur (%2)</translation>
    </message>
    <message>
        <source>limit of error, %1 % of full scale (%2)</source>
        <translation>limite d&apos;erreur, %1 % de la pleine échelle (%2)</translation>
    </message>
    <message>
        <source>limit of error, %1 digits (%2)</source>
        <translation>limite d&apos;erreur, %1 digits (%2)</translation>
    </message>
    <message>
        <source>limit of error (%1)</source>
        <translation>limite d&apos;erreur (%1)</translation>
    </message>
    <message>
        <source>resolution, half a division</source>
        <translation>résolution, une demi-division</translation>
    </message>
    <message>
        <source>feel of the hand</source>
        <translation>sensation de la main</translation>
    </message>
    <message>
        <source>%1: calibration was due on %2; its limit of error can no longer be relied on</source>
        <translation>%1&#xa0;: l&apos;étalonnage était à faire le %2&#xa0;; on ne peut plus se fier à sa limite d&apos;erreur</translation>
    </message>
    <message>
        <source>%1: no calibration is recorded</source>
        <translation>%1&#xa0;: aucun étalonnage noté</translation>
    </message>
    <message>
        <source>readings of different kinds: %1</source>
        <translation>mesures de sortes différentes&#xa0;: %1</translation>
    </message>
    <message>
        <source>mean of %1 readings: %2, spread (standard deviation) %3</source>
        <translation>moyenne de %1 mesures&#xa0;: %2, dispersion (écart type) %3</translation>
    </message>
    <message>
        <source>the limit is worked out here: the machine&apos;s manual wins</source>
        <translation>la limite est calculée ici&#xa0;: le manuel passe avant</translation>
    </message>
    <message>
        <source>no reading was given</source>
        <translation>aucune mesure donnée</translation>
    </message>
    <message>
        <source>uncertainty as given, k = 2</source>
        <translation>incertitude comme donnée, k = 2</translation>
    </message>
    <message>
        <source>ordinary instrument, from memory: replace by the maker&apos;s sheet</source>
        <translation>instrument ordinaire, de mémoire&#xa0;: à remplacer par la fiche du fabricant</translation>
    </message>
    <message>
        <source>spread of %1 readings over root %2</source>
        <translation>dispersion de %1 mesures sur racine de %2</translation>
    </message>
    <message>
        <source>spread of %1 readings over root %2, widened for few readings</source>
        <translation>dispersion de %1 mesures sur racine de %2, élargie car peu de mesures</translation>
    </message>
    <message>
        <source>a spread needs two readings or more; given: %1</source>
        <translation>une dispersion veut deux mesures ou plus&#xa0;; données&#xa0;: %1</translation>
    </message>
    <message>
        <source>every reading must be a number</source>
        <translation>chaque mesure doit être un nombre</translation>
    </message>
    <message>
        <source>largest reading: %1</source>
        <translation>plus grande valeur&#xa0;: %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no date: write year, month and day such as 2026-11-25</source>
        <translation>&quot;%1&quot; n&apos;est pas une date&#xa0;: écrire année, mois et jour, par exemple 2026-11-25</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no type and class of ISO 6789-1: write I A to I E for one that shows the torque, II A to II G for one that is set</source>
        <translation>&quot;%1&quot; n&apos;est pas un type et une classe d&apos;ISO 6789-1&#xa0;: écrire I A à I E pour celle qui montre le couple, II A à II G pour celle qui se règle</translation>
    </message>
    <message>
        <source>must not be negative, given was &quot;%1&quot;</source>
        <translation>ne peut pas être négatif, donné&#xa0;: &quot;%1&quot;</translation>
    </message>
    <message>
        <source>as the shop entered it</source>
        <translation>comme entré par l&apos;atelier</translation>
    </message>
    <message>
        <source>is for torque wrenches alone: leave it empty</source>
        <translation>ne vaut que pour les clés dynamométriques&#xa0;: laisser vide</translation>
    </message>
    <message>
        <source>must be after the day of calibration</source>
        <translation>doit venir après le jour de l&apos;étalonnage</translation>
    </message>
    <message>
        <source>%1 % of the reading</source>
        <translation>%1 % de la valeur</translation>
    </message>
    <message>
        <source>%1 % of full scale</source>
        <translation>%1 % de la pleine échelle</translation>
    </message>
    <message>
        <source>%1 digits</source>
        <translation>%1 digits</translation>
    </message>
    <message>
        <source>%1 + %2</source>
        <translation>%1 + %2</translation>
    </message>
    <message>
        <source>more than 99.9 %</source>
        <translation>plus de 99,9 %</translation>
    </message>
    <message>
        <source>less than 0.1 %</source>
        <translation>moins de 0,1 %</translation>
    </message>
    <message>
        <source>a better instrument: the limits are closer together than twice the uncertainty, so that no value could be accepted with this one</source>
        <translation>un meilleur instrument&#xa0;: les limites sont plus proches que le double de l&apos;incertitude, aucune valeur ne serait admise avec celui-ci</translation>
    </message>
    <message>
        <source>the value lies on the limit: no instrument will settle it; adjust or renew, then measure again</source>
        <translation>la valeur est sur la limite&#xa0;: aucun instrument ne tranchera&#xa0;; régler ou changer, puis remesurer</translation>
    </message>
    <message>
        <source>a better instrument: an expanded uncertainty below %1 would settle it</source>
        <translation>un meilleur instrument&#xa0;: une incertitude élargie sous %1 trancherait</translation>
    </message>
    <message>
        <source>more readings: about %1 in all, if their mean stays</source>
        <translation>plus de mesures&#xa0;: environ %1 en tout, si leur moyenne reste</translation>
    </message>
    <message>
        <source>measured %1, expanded uncertainty %2 (k = 2), standard %3</source>
        <translation>mesuré %1, incertitude élargie %2 (k = 2), type %3</translation>
    </message>
    <message>
        <source>lower limit %1 moved inward by U (guard band, ISO 14253-1): accept from %2</source>
        <translation>limite basse %1 rentrée de U (bande de garde, ISO 14253-1)&#xa0;: admis à partir de %2</translation>
    </message>
    <message>
        <source>upper limit %1 moved inward by U (guard band, ISO 14253-1): accept up to %2</source>
        <translation>limite haute %1 rentrée de U (bande de garde, ISO 14253-1)&#xa0;: admis jusqu&apos;à %2</translation>
    </message>
    <message>
        <source>lower limit %1 as they stand (simple acceptance): accept from %2</source>
        <translation>limite basse %1 telle quelle (acceptation simple)&#xa0;: admis à partir de %2</translation>
    </message>
    <message>
        <source>upper limit %1 as they stand (simple acceptance): accept up to %2</source>
        <translation>limite haute %1 telle quelle (acceptation simple)&#xa0;: admis jusqu&apos;à %2</translation>
    </message>
    <message>
        <source>probability that the true value conforms (JCGM 106): %1</source>
        <translation>probabilité que la vraie valeur soit conforme (JCGM 106)&#xa0;: %1</translation>
    </message>
    <message>
        <source>verdict: %1</source>
        <translation>verdict&#xa0;: %1</translation>
    </message>
    <message>
        <source>manual, %1</source>
        <translation>manuel, %1</translation>
    </message>
    <message>
        <source>shop record, %1</source>
        <translation>données de l&apos;atelier, %1</translation>
    </message>
    <message>
        <source>standard, %1</source>
        <translation>norme, %1</translation>
    </message>
    <message>
        <source>worked out here, %1</source>
        <translation>calculé ici, %1</translation>
    </message>
    <message>
        <source>combined standard uncertainty u = root of the sum of squares = %1</source>
        <translation>incertitude type composée u = racine de la somme des carrés = %1</translation>
    </message>
    <message>
        <source>expanded uncertainty U = 2 u = %1 (k = 2, about 95 %)</source>
        <translation>incertitude élargie U = 2 u = %1 (k = 2, environ 95 %)</translation>
    </message>
    <message>
        <source>%1: %2, rectangular: divided by %3 gives u = %4</source>
        <translation>%1&#xa0;: %2, rectangulaire&#xa0;: divisé par %3 donne u = %4</translation>
    </message>
    <message>
        <source>%1: %2, triangular: divided by %3 gives u = %4</source>
        <translation>%1&#xa0;: %2, triangulaire&#xa0;: divisé par %3 donne u = %4</translation>
    </message>
    <message>
        <source>%1: %2, normal, k = 2: divided by %3 gives u = %4</source>
        <translation>%1&#xa0;: %2, normale, k = 2&#xa0;: divisé par %3 donne u = %4</translation>
    </message>
    <message>
        <source>%1: %2, standard</source>
        <translation>%1&#xa0;: %2, type</translation>
    </message>
    <message>
        <source>%1 is not among the grades that the machine allows: %2</source>
        <translation>%1 n&apos;est pas parmi les normes admises par le véhicule&#xa0;: %2</translation>
    </message>
    <message>
        <source>Automatic with a belt</source>
        <translation>Automatique à courroie</translation>
    </message>
    <message>
        <source>DOT 5 is silicone: it never mixes with DOT 3, 4 or 5.1</source>
        <translation>le DOT 5 est du silicone&#xa0;: il ne se mélange jamais à DOT 3, 4 ou 5.1</translation>
    </message>
    <message>
        <source>Electric start</source>
        <translation>Démarreur électrique</translation>
    </message>
    <message>
        <source>Every machine</source>
        <translation>Tous les véhicules</translation>
    </message>
    <message>
        <source>Four-stroke engine</source>
        <translation>Moteur quatre-temps</translation>
    </message>
    <message>
        <source>Front disc brake</source>
        <translation>Frein à disque avant</translation>
    </message>
    <message>
        <source>Front drum brake</source>
        <translation>Frein à tambour avant</translation>
    </message>
    <message>
        <source>Gearbox with clutch</source>
        <translation>Boîte avec embrayage</translation>
    </message>
    <message>
        <source>Kick start</source>
        <translation>Kick</translation>
    </message>
    <message>
        <source>Photos as found</source>
        <translation>Photos à l&apos;arrivée</translation>
    </message>
    <message>
        <source>Rear disc brake</source>
        <translation>Frein à disque arrière</translation>
    </message>
    <message>
        <source>Rear drum brake</source>
        <translation>Frein à tambour arrière</translation>
    </message>
    <message>
        <source>Two-stroke engine</source>
        <translation>Moteur deux-temps</translation>
    </message>
    <message>
        <source>What works when it comes in</source>
        <translation>Ce qui marche à l&apos;arrivée</translation>
    </message>
    <message>
        <source>absolute pressure</source>
        <translation>pression absolue</translation>
    </message>
    <message>
        <source>adjust the free play of the brake</source>
        <translation>régler le jeu du frein</translation>
    </message>
    <message>
        <source>adjust the free play of the clutch</source>
        <translation>régler le jeu de l&apos;embrayage</translation>
    </message>
    <message>
        <source>air filter: clean and seated</source>
        <translation>filtre à air&#xa0;: propre et en place</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>angle</translation>
    </message>
    <message>
        <source>area</source>
        <translation>surface</translation>
    </message>
    <message>
        <source>automatic</source>
        <translation>automatique</translation>
    </message>
    <message>
        <source>axle nuts: tight, secured as the maker secured them</source>
        <translation>écrous d&apos;axe&#xa0;: serrés, freinés comme d&apos;origine</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>dénudé</translation>
    </message>
    <message>
        <source>base gasket</source>
        <translation>joint d&apos;embase</translation>
    </message>
    <message>
        <source>battery acid: goggles and gloves, water at hand, acid into water and never the other way</source>
        <translation>acide de batterie&#xa0;: lunettes et gants, eau à portée, l&apos;acide dans l&apos;eau et jamais l&apos;inverse</translation>
    </message>
    <message>
        <source>battery negative off first, on last</source>
        <translation>négatif de la batterie débranché en premier, rebranché en dernier</translation>
    </message>
    <message>
        <source>battery negative or chassis earth direct</source>
        <translation>moins batterie ou masse cadre directe</translation>
    </message>
    <message>
        <source>battery positive direct (unswitched)</source>
        <translation>plus batterie direct (permanent)</translation>
    </message>
    <message>
        <source>battery: case whole, terminals clean, strapped down, vent hose in place</source>
        <translation>batterie&#xa0;: bac entier, bornes propres, sanglée, durite d&apos;aération en place</translation>
    </message>
    <message>
        <source>belt: width and cracks, age</source>
        <translation>courroie&#xa0;: largeur et fissures, âge</translation>
    </message>
    <message>
        <source>black</source>
        <translation>noir</translation>
    </message>
    <message>
        <source>blade</source>
        <translation>cosse plate mâle</translation>
    </message>
    <message>
        <source>bleed the brake until the lever stays hard</source>
        <translation>purger le frein jusqu&apos;à ce que le levier reste dur</translation>
    </message>
    <message>
        <source>bleed the oil pump; set it to its mark</source>
        <translation>purger la pompe à huile&#xa0;; la mettre à son repère</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>bleu</translation>
    </message>
    <message>
        <source>brake fluid eats paint and skin; only fresh fluid of the grade that the manual names</source>
        <translation>le liquide de frein ronge peinture et peau&#xa0;; seulement du neuf, de la norme du manuel</translation>
    </message>
    <message>
        <source>brake, front</source>
        <translation>frein, avant</translation>
    </message>
    <message>
        <source>brake, rear</source>
        <translation>frein, arrière</translation>
    </message>
    <message>
        <source>breather hose: connected, not blocked</source>
        <translation>durite de reniflard&#xa0;: branchée, pas bouchée</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>marron</translation>
    </message>
    <message>
        <source>bullet</source>
        <translation>cosse ronde mâle</translation>
    </message>
    <message>
        <source>bullet socket</source>
        <translation>cosse ronde femelle</translation>
    </message>
    <message>
        <source>cables and hoses: nothing pulls tight from lock to lock</source>
        <translation>câbles et durites&#xa0;: rien ne tire de butée à butée</translation>
    </message>
    <message>
        <source>caliper</source>
        <translation>pied à coulisse</translation>
    </message>
    <message>
        <source>centre the shoes and adjust the free play of the brake</source>
        <translation>centrer les mâchoires et régler le jeu du frein</translation>
    </message>
    <message>
        <source>chain guard: in place</source>
        <translation>carter de chaîne&#xa0;: en place</translation>
    </message>
    <message>
        <source>charge warning lamp</source>
        <translation>témoin de charge</translation>
    </message>
    <message>
        <source>charges</source>
        <translation>charge</translation>
    </message>
    <message>
        <source>charging: voltage at the battery rises with the engine running</source>
        <translation>charge&#xa0;: la tension à la batterie monte moteur tournant</translation>
    </message>
    <message>
        <source>chassis</source>
        <translation>partie cycle</translation>
    </message>
    <message>
        <source>circlips of the pin</source>
        <translation>circlips d&apos;axe de piston</translation>
    </message>
    <message>
        <source>clutch</source>
        <translation>embrayage</translation>
    </message>
    <message>
        <source>clutch: lever play right, frees and bites without dragging</source>
        <translation>embrayage&#xa0;: jeu du levier bon, débraye et prend sans traîner</translation>
    </message>
    <message>
        <source>compression-gauge</source>
        <translation>compressiomètre</translation>
    </message>
    <message>
        <source>connector</source>
        <translation>connecteur</translation>
    </message>
    <message>
        <source>consumption</source>
        <translation>consommation</translation>
    </message>
    <message>
        <source>controls</source>
        <translation>commandes</translation>
    </message>
    <message>
        <source>copper paste on the studs</source>
        <translation>pâte au cuivre sur les goujons</translation>
    </message>
    <message>
        <source>cover and its seal: in place, the cooling air free</source>
        <translation>carter et son joint&#xa0;: en place, air de refroidissement libre</translation>
    </message>
    <message>
        <source>crush washers of the banjo</source>
        <translation>joints d&apos;écrasement du raccord banjo</translation>
    </message>
    <message>
        <source>crush washers of the banjo, if it was opened</source>
        <translation>joints d&apos;écrasement du raccord banjo, s&apos;il a été ouvert</translation>
    </message>
    <message>
        <source>current</source>
        <translation>courant</translation>
    </message>
    <message>
        <source>cylinder base and crankshaft seals: dry</source>
        <translation>embase et joints spi de vilebrequin&#xa0;: secs</translation>
    </message>
    <message>
        <source>damage that was there</source>
        <translation>dégâts déjà là</translation>
    </message>
    <message>
        <source>density</source>
        <translation>masse volumique</translation>
    </message>
    <message>
        <source>depth-gauge</source>
        <translation>jauge de profondeur</translation>
    </message>
    <message>
        <source>dipped (low) beam</source>
        <translation>feu de croisement</translation>
    </message>
    <message>
        <source>do not ride before the brake is proved; the machine&apos;s manual and licensed practice come first</source>
        <translation>ne pas rouler avant que le frein soit prouvé&#xa0;; le manuel et les règles de l&apos;art passent avant</translation>
    </message>
    <message>
        <source>do not ride yet: %1 (%2)</source>
        <translation>ne pas encore rouler&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>do not ride: %1 is not on again</source>
        <translation>ne pas rouler&#xa0;: %1 n&apos;est pas remonté</translation>
    </message>
    <message>
        <source>do not start yet: %1 (%2)</source>
        <translation>ne pas encore démarrer&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>do not start: %1 is not on again</source>
        <translation>ne pas démarrer&#xa0;: %1 n&apos;est pas remonté</translation>
    </message>
    <message>
        <source>drive: takes up smoothly, no squeal, no slip</source>
        <translation>transmission&#xa0;: prend en douceur, ne grince pas, ne patine pas</translation>
    </message>
    <message>
        <source>dynamo field</source>
        <translation>dynamo, excitation</translation>
    </message>
    <message>
        <source>dynamo negative</source>
        <translation>dynamo, moins</translation>
    </message>
    <message>
        <source>dynamo or generator positive to regulator</source>
        <translation>dynamo ou alternateur, plus vers le régulateur</translation>
    </message>
    <message>
        <source>each wire read back against the map: %1</source>
        <translation>chaque fil relu d&apos;après le plan&#xa0;: %1</translation>
    </message>
    <message>
        <source>electric charge</source>
        <translation>charge électrique</translation>
    </message>
    <message>
        <source>electric motor main connection</source>
        <translation>moteur électrique, borne principale</translation>
    </message>
    <message>
        <source>electric motor return line</source>
        <translation>moteur électrique, retour</translation>
    </message>
    <message>
        <source>electric start</source>
        <translation>démarreur électrique</translation>
    </message>
    <message>
        <source>electrics</source>
        <translation>électricité</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>énergie</translation>
    </message>
    <message>
        <source>engine</source>
        <translation>moteur</translation>
    </message>
    <message>
        <source>engine and exhaust</source>
        <translation>moteur et échappement</translation>
    </message>
    <message>
        <source>engine oil: level, no fuel or water in it</source>
        <translation>huile moteur&#xa0;: niveau, ni essence ni eau dedans</translation>
    </message>
    <message>
        <source>engine, left side</source>
        <translation>moteur, côté gauche</translation>
    </message>
    <message>
        <source>engine, right side</source>
        <translation>moteur, côté droit</translation>
    </message>
    <message>
        <source>engine: no leaks, mounts tight</source>
        <translation>moteur&#xa0;: pas de fuite, fixations serrées</translation>
    </message>
    <message>
        <source>every fastener in and tight: %1 (%2)</source>
        <translation>toute la visserie en place et serrée&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>everyday plug-in relay: normally closed output</source>
        <translation>relais enfichable courant&#xa0;: sortie normalement fermée</translation>
    </message>
    <message>
        <source>everyday plug-in relay: switched output (normally open)</source>
        <translation>relais enfichable courant&#xa0;: sortie commutée (normalement ouverte)</translation>
    </message>
    <message>
        <source>exhaust gasket</source>
        <translation>joint d&apos;échappement</translation>
    </message>
    <message>
        <source>exhaust port and silencer: not choked with carbon</source>
        <translation>lumière d&apos;échappement et pot&#xa0;: pas calaminés</translation>
    </message>
    <message>
        <source>exhaust: no leaks, fastened, heat shield in place</source>
        <translation>échappement&#xa0;: pas de fuite, fixé, pare-chaleur en place</translation>
    </message>
    <message>
        <source>feeler gauge</source>
        <translation>jauge d&apos;épaisseur</translation>
    </message>
    <message>
        <source>feeler-gauge</source>
        <translation>jauge d&apos;épaisseur</translation>
    </message>
    <message>
        <source>fill and bleed the cooling</source>
        <translation>remplir et purger le refroidissement</translation>
    </message>
    <message>
        <source>fill with oil and look at the level</source>
        <translation>remplir d&apos;huile et voir le niveau</translation>
    </message>
    <message>
        <source>filled again, level right, no leak: %1 (let out: %2)</source>
        <translation>rempli, niveau bon, pas de fuite&#xa0;: %1 (vidangé&#xa0;: %2)</translation>
    </message>
    <message>
        <source>final drive chain: slack right at its tightest place, no stiff links</source>
        <translation>chaîne&#xa0;: bonne tension au point le plus dur, pas de maillon raide</translation>
    </message>
    <message>
        <source>final drive oil: level, no leak at the wheel shaft</source>
        <translation>huile de transmission finale&#xa0;: niveau, pas de fuite à l&apos;axe de roue</translation>
    </message>
    <message>
        <source>flasher output, second circuit</source>
        <translation>centrale clignotante, sortie du second circuit</translation>
    </message>
    <message>
        <source>flasher unit input</source>
        <translation>centrale clignotante, entrée</translation>
    </message>
    <message>
        <source>flasher unit output (pulsed) to the indicator switch</source>
        <translation>centrale clignotante, sortie (pulsée) vers le commutateur</translation>
    </message>
    <message>
        <source>fog lamp</source>
        <translation>feu antibrouillard</translation>
    </message>
    <message>
        <source>force</source>
        <translation>force</translation>
    </message>
    <message>
        <source>fork</source>
        <translation>fourche</translation>
    </message>
    <message>
        <source>four-stroke</source>
        <translation>quatre-temps</translation>
    </message>
    <message>
        <source>frame number</source>
        <translation>numéro de cadre</translation>
    </message>
    <message>
        <source>frame number: readable, the same as in the papers</source>
        <translation>numéro de cadre&#xa0;: lisible, le même que sur les papiers</translation>
    </message>
    <message>
        <source>frame: no cracks at the welds, steering head and swing arm pivot</source>
        <translation>cadre&#xa0;: pas de fissure aux soudures, à la colonne et à l&apos;axe de bras</translation>
    </message>
    <message>
        <source>from behind</source>
        <translation>de derrière</translation>
    </message>
    <message>
        <source>from the front</source>
        <translation>de devant</translation>
    </message>
    <message>
        <source>from the left</source>
        <translation>de gauche</translation>
    </message>
    <message>
        <source>from the right</source>
        <translation>de droite</translation>
    </message>
    <message>
        <source>front brake</source>
        <translation>frein avant</translation>
    </message>
    <message>
        <source>front disc brake: disc thickness and run-out, no cracks</source>
        <translation>disque avant&#xa0;: épaisseur et voile du disque, pas de fissure</translation>
    </message>
    <message>
        <source>front disc brake: hose and fittings dry, not cracked, fluid level and its age</source>
        <translation>disque avant&#xa0;: durite et raccords secs, pas fendus, niveau et âge du liquide</translation>
    </message>
    <message>
        <source>front disc brake: lever or pedal firm, does not creep under pressure</source>
        <translation>disque avant&#xa0;: levier ou pédale ferme, ne s&apos;enfonce pas sous pression</translation>
    </message>
    <message>
        <source>front disc brake: pads, both sides</source>
        <translation>disque avant&#xa0;: plaquettes, des deux côtés</translation>
    </message>
    <message>
        <source>front drum brake: cable or rod, adjuster and return spring</source>
        <translation>tambour avant&#xa0;: câble ou tringle, réglage et ressort de rappel</translation>
    </message>
    <message>
        <source>front drum brake: holds, lets go at once, does not grab</source>
        <translation>tambour avant&#xa0;: tient, relâche tout de suite, ne broute pas</translation>
    </message>
    <message>
        <source>front drum brake: lever or pedal travel and wear mark of the cam</source>
        <translation>tambour avant&#xa0;: course du levier ou de la pédale et repère d&apos;usure de la came</translation>
    </message>
    <message>
        <source>front fork: no play, dry stanchions, springs back smoothly</source>
        <translation>fourche&#xa0;: pas de jeu, tubes secs, revient en douceur</translation>
    </message>
    <message>
        <source>front tyre, date code</source>
        <translation>pneu avant, code de date</translation>
    </message>
    <message>
        <source>front tyre: tread, age by its date code, no cracks, the size that the papers name</source>
        <translation>pneu avant&#xa0;: sculptures, âge par le code DOT, pas de fissure, taille des papiers</translation>
    </message>
    <message>
        <source>front wheel: bearing without play, rim true, spokes or bolts tight</source>
        <translation>roue avant&#xa0;: roulement sans jeu, jante droite, rayons ou vis serrés</translation>
    </message>
    <message>
        <source>fuel and air</source>
        <translation>essence et air</translation>
    </message>
    <message>
        <source>fuel off and away from sparks; no flame, rags in a closed tin</source>
        <translation>essence fermée et loin des étincelles&#xa0;; pas de flamme, chiffons dans une boîte fermée</translation>
    </message>
    <message>
        <source>fuel on: no drip for five minutes</source>
        <translation>essence ouverte&#xa0;: pas une goutte en cinq minutes</translation>
    </message>
    <message>
        <source>fuel on: no drip for five minutes; throttle snaps shut</source>
        <translation>essence ouverte&#xa0;: pas une goutte en cinq minutes&#xa0;; les gaz reviennent d&apos;un coup</translation>
    </message>
    <message>
        <source>fuel tank, tap and hoses: dry, not cracked, cap vents</source>
        <translation>réservoir, robinet et durites&#xa0;: secs, pas fendus, le bouchon respire</translation>
    </message>
    <message>
        <source>fuse: of the right value, no wire in its place</source>
        <translation>fusible&#xa0;: de la bonne valeur, pas de fil à sa place</translation>
    </message>
    <message>
        <source>gasket and oil seals</source>
        <translation>joint et joints spi</translation>
    </message>
    <message>
        <source>gasket and seal</source>
        <translation>joint plat et joint spi</translation>
    </message>
    <message>
        <source>gaskets of the inlet</source>
        <translation>joints d&apos;admission</translation>
    </message>
    <message>
        <source>gauge pressure</source>
        <translation>pression relative</translation>
    </message>
    <message>
        <source>gearbox oil: level, clean</source>
        <translation>huile de boîte&#xa0;: niveau, propre</translation>
    </message>
    <message>
        <source>gears</source>
        <translation>vitesses</translation>
    </message>
    <message>
        <source>gears and chain</source>
        <translation>vitesses et chaîne</translation>
    </message>
    <message>
        <source>gears: all engage and stay in, neutral is found</source>
        <translation>vitesses&#xa0;: passent et tiennent toutes, le point mort se trouve</translation>
    </message>
    <message>
        <source>generator output, battery positive</source>
        <translation>sortie de génératrice, plus batterie</translation>
    </message>
    <message>
        <source>generator, battery negative</source>
        <translation>génératrice, moins batterie</translation>
    </message>
    <message>
        <source>grease on the bushes</source>
        <translation>graisse sur les bagues</translation>
    </message>
    <message>
        <source>grease on the cam only, none near the linings</source>
        <translation>graisse sur la came seulement, rien près des garnitures</translation>
    </message>
    <message>
        <source>green</source>
        <translation>vert</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>remis</translation>
    </message>
    <message>
        <source>handlebar, left side</source>
        <translation>guidon, côté gauche</translation>
    </message>
    <message>
        <source>handlebar, levers and grips: tight, free of cracks, ends closed</source>
        <translation>guidon, leviers et poignées&#xa0;: serrés, sans fissure, bouts fermés</translation>
    </message>
    <message>
        <source>handlebar, right side</source>
        <translation>guidon, côté droit</translation>
    </message>
    <message>
        <source>head gasket</source>
        <translation>joint de culasse</translation>
    </message>
    <message>
        <source>headlamp feed</source>
        <translation>alimentation du phare</translation>
    </message>
    <message>
        <source>headlamp, high beam</source>
        <translation>phare, route</translation>
    </message>
    <message>
        <source>headlamp, low beam</source>
        <translation>phare, croisement</translation>
    </message>
    <message>
        <source>headlamp: low and high beam, tell-tale, aim</source>
        <translation>phare&#xa0;: croisement et route, témoin, réglage</translation>
    </message>
    <message>
        <source>horn</source>
        <translation>klaxon</translation>
    </message>
    <message>
        <source>horn: loud and clear</source>
        <translation>klaxon&#xa0;: fort et clair</translation>
    </message>
    <message>
        <source>hose clips that have lost their spring</source>
        <translation>colliers qui ont perdu leur ressort</translation>
    </message>
    <message>
        <source>hydrometer</source>
        <translation>pèse-acide</translation>
    </message>
    <message>
        <source>idle: the rear wheel does not creep when it stands on the ground</source>
        <translation>ralenti&#xa0;: la roue arrière au sol n&apos;avance pas</translation>
    </message>
    <message>
        <source>idles and takes the throttle</source>
        <translation>tient le ralenti et prend les gaz</translation>
    </message>
    <message>
        <source>ignition coil high-tension output</source>
        <translation>bobine d&apos;allumage, sortie haute tension</translation>
    </message>
    <message>
        <source>ignition coil or contact breaker, low-tension side</source>
        <translation>bobine d&apos;allumage ou rupteur, côté basse tension</translation>
    </message>
    <message>
        <source>ignition off; high tension can hurt: stop the engine before you touch a lead</source>
        <translation>contact coupé&#xa0;; la haute tension peut blesser&#xa0;: arrêter le moteur avant de toucher un fil</translation>
    </message>
    <message>
        <source>ignition switch and stop switch: stop the engine</source>
        <translation>contacteur et coupe-circuit&#xa0;: arrêtent le moteur</translation>
    </message>
    <message>
        <source>in another currency, not in the sum: %1, %2 %3</source>
        <translation>en autre monnaie, pas dans la somme&#xa0;: %1, %2 %3</translation>
    </message>
    <message>
        <source>instrument lamps</source>
        <translation>éclairage des instruments</translation>
    </message>
    <message>
        <source>instruments and odometer</source>
        <translation>instruments et compteur</translation>
    </message>
    <message>
        <source>kick start</source>
        <translation>kick</translation>
    </message>
    <message>
        <source>kick start: engages, springs back, does not slip</source>
        <translation>kick&#xa0;: prend, revient, ne patine pas</translation>
    </message>
    <message>
        <source>lamps</source>
        <translation>feux</translation>
    </message>
    <message>
        <source>left direction indicators</source>
        <translation>clignotants gauches</translation>
    </message>
    <message>
        <source>left out: %1 (%2)</source>
        <translation>laissé&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longueur</translation>
    </message>
    <message>
        <source>let the exhaust and the engine cool down first</source>
        <translation>laisser d&apos;abord refroidir l&apos;échappement et le moteur</translation>
    </message>
    <message>
        <source>light blue</source>
        <translation>bleu clair</translation>
    </message>
    <message>
        <source>light green</source>
        <translation>vert clair</translation>
    </message>
    <message>
        <source>lights and signals</source>
        <translation>feux et signaux</translation>
    </message>
    <message>
        <source>look at the oil level</source>
        <translation>voir le niveau d&apos;huile</translation>
    </message>
    <message>
        <source>loom: no bare or twisted wires, no chafing at the steering head</source>
        <translation>faisceau&#xa0;: pas de fils nus ou torsadés, pas d&apos;usure à la colonne</translation>
    </message>
    <message>
        <source>loose terminals</source>
        <translation>cosses libres</translation>
    </message>
    <message>
        <source>magneto-generator alternating-current output or rectifier input</source>
        <translation>volant magnétique, sortie alternative ou entrée du redresseur</translation>
    </message>
    <message>
        <source>magneto-generator charging-coil output</source>
        <translation>volant magnétique, sortie de la bobine de charge</translation>
    </message>
    <message>
        <source>main (high) beam and its tell-tale</source>
        <translation>feu de route et son témoin</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>manuel</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masse</translation>
    </message>
    <message>
        <source>mating face</source>
        <translation>face de contact</translation>
    </message>
    <message>
        <source>micrometer</source>
        <translation>micromètre</translation>
    </message>
    <message>
        <source>mirrors: whole, stay where they are set</source>
        <translation>rétroviseurs&#xa0;: entiers, restent réglés</translation>
    </message>
    <message>
        <source>move it by hand: no side play</source>
        <translation>bouger à la main&#xa0;: pas de jeu latéral</translation>
    </message>
    <message>
        <source>moves freely at both locks, free play right: %1</source>
        <translation>libre aux deux butées, jeu correct&#xa0;: %1</translation>
    </message>
    <message>
        <source>multimeter</source>
        <translation>multimètre</translation>
    </message>
    <message>
        <source>negative lead on last; tight, and covered</source>
        <translation>négatif en dernier&#xa0;; serré et couvert</translation>
    </message>
    <message>
        <source>next: %1 (%2)</source>
        <translation>ensuite&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>next: go on stripping, or refit: %1</source>
        <translation>ensuite&#xa0;: continuer à démonter, ou remonter&#xa0;: %1</translation>
    </message>
    <message>
        <source>next: look it over, or strip the first part</source>
        <translation>ensuite&#xa0;: l&apos;examiner, ou démonter la première pièce</translation>
    </message>
    <message>
        <source>next: photos as found, and what works</source>
        <translation>ensuite&#xa0;: photos à l&apos;arrivée, et ce qui marche</translation>
    </message>
    <message>
        <source>next: prove it and hand it over</source>
        <translation>ensuite&#xa0;: prouver et remettre</translation>
    </message>
    <message>
        <source>next: refit %1</source>
        <translation>ensuite&#xa0;: remonter %1</translation>
    </message>
    <message>
        <source>next: refit %1, bag %2</source>
        <translation>ensuite&#xa0;: remonter %1, sachet %2</translation>
    </message>
    <message>
        <source>next: settle what is unsafe: %1</source>
        <translation>ensuite&#xa0;: régler le danger&#xa0;: %1</translation>
    </message>
    <message>
        <source>no compressed air on old brake dust; mask, wipe wet</source>
        <translation>pas d&apos;air comprimé sur la vieille poussière de frein&#xa0;; masque, essuyer humide</translation>
    </message>
    <message>
        <source>no leaks</source>
        <translation>pas de fuites</translation>
    </message>
    <message>
        <source>no price is known: %1</source>
        <translation>pas de prix connu&#xa0;: %1</translation>
    </message>
    <message>
        <source>nobody knows when the container was opened: brake fluid draws water, take a fresh one</source>
        <translation>personne ne sait quand le bidon a été ouvert&#xa0;: le liquide de frein prend l&apos;eau, en prendre un neuf</translation>
    </message>
    <message>
        <source>none</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>not done yet: %1 (%2)</source>
        <translation>pas encore fait&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>not proved, left out: %1 (%2)</source>
        <translation>pas prouvé, laissé&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>not proved: %1</source>
        <translation>pas prouvé&#xa0;: %1</translation>
    </message>
    <message>
        <source>nothing open</source>
        <translation>rien en attente</translation>
    </message>
    <message>
        <source>number</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>number plate lamp</source>
        <translation>éclairage de plaque</translation>
    </message>
    <message>
        <source>oil</source>
        <translation>huile</translation>
    </message>
    <message>
        <source>oil on its lip</source>
        <translation>huile sur sa lèvre</translation>
    </message>
    <message>
        <source>oil on the bore</source>
        <translation>huile sur l&apos;alésage</translation>
    </message>
    <message>
        <source>oil pump: turns with the throttle, marks meet, or is blanked off knowingly</source>
        <translation>pompe à huile&#xa0;: suit les gaz, repères face à face, ou supprimée exprès</translation>
    </message>
    <message>
        <source>oil: tank filled and its hose full, or the tank holds premix</source>
        <translation>huile&#xa0;: réservoir plein et durite pleine, ou mélange dans le réservoir</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>orange</translation>
    </message>
    <message>
        <source>other instrument</source>
        <translation>autre instrument</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>dehors</translation>
    </message>
    <message>
        <source>papers and frame</source>
        <translation>papiers et cadre</translation>
    </message>
    <message>
        <source>parking lamp</source>
        <translation>feu de stationnement</translation>
    </message>
    <message>
        <source>parking lamp, left</source>
        <translation>feu de stationnement gauche</translation>
    </message>
    <message>
        <source>parking lamp, right</source>
        <translation>feu de stationnement droit</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>broche</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rose</translation>
    </message>
    <message>
        <source>power</source>
        <translation>puissance</translation>
    </message>
    <message>
        <source>pressure difference</source>
        <translation>différence de pression</translation>
    </message>
    <message>
        <source>pressure gauge</source>
        <translation>manomètre</translation>
    </message>
    <message>
        <source>pump the lever until the brake holds; bleed it if the hose was opened</source>
        <translation>pomper au levier jusqu&apos;à ce que le frein tienne&#xa0;; purger si la durite a été ouverte</translation>
    </message>
    <message>
        <source>push the fork down: it comes back smoothly and nothing leaks</source>
        <translation>enfoncer la fourche&#xa0;: elle revient en douceur et rien ne fuit</translation>
    </message>
    <message>
        <source>push the tail down: nothing touches or knocks</source>
        <translation>enfoncer l&apos;arrière&#xa0;: rien ne touche ni ne cogne</translation>
    </message>
    <message>
        <source>rear brake</source>
        <translation>frein arrière</translation>
    </message>
    <message>
        <source>rear disc brake: disc thickness and run-out, no cracks</source>
        <translation>disque arrière&#xa0;: épaisseur et voile du disque, pas de fissure</translation>
    </message>
    <message>
        <source>rear disc brake: hose and fittings dry, not cracked, fluid level and its age</source>
        <translation>disque arrière&#xa0;: durite et raccords secs, pas fendus, niveau et âge du liquide</translation>
    </message>
    <message>
        <source>rear disc brake: lever or pedal firm, does not creep under pressure</source>
        <translation>disque arrière&#xa0;: levier ou pédale ferme, ne s&apos;enfonce pas sous pression</translation>
    </message>
    <message>
        <source>rear disc brake: pads, both sides</source>
        <translation>disque arrière&#xa0;: plaquettes, des deux côtés</translation>
    </message>
    <message>
        <source>rear drum brake: cable or rod, adjuster and return spring</source>
        <translation>tambour arrière&#xa0;: câble ou tringle, réglage et ressort de rappel</translation>
    </message>
    <message>
        <source>rear drum brake: holds, lets go at once, does not grab</source>
        <translation>tambour arrière&#xa0;: tient, relâche tout de suite, ne broute pas</translation>
    </message>
    <message>
        <source>rear drum brake: lever or pedal travel and wear mark of the cam</source>
        <translation>tambour arrière&#xa0;: course du levier ou de la pédale et repère d&apos;usure de la came</translation>
    </message>
    <message>
        <source>rear suspension: no play in the bushes, damper dry</source>
        <translation>suspension arrière&#xa0;: bagues sans jeu, amortisseur sec</translation>
    </message>
    <message>
        <source>rear tyre, date code</source>
        <translation>pneu arrière, code de date</translation>
    </message>
    <message>
        <source>rear tyre: tread, age by its date code, no cracks, the size that the papers name</source>
        <translation>pneu arrière&#xa0;: sculptures, âge par le code DOT, pas de fissure, taille des papiers</translation>
    </message>
    <message>
        <source>rear wheel: bearing without play, rim true, spokes or bolts tight</source>
        <translation>roue arrière&#xa0;: roulement sans jeu, jante droite, rayons ou vis serrés</translation>
    </message>
    <message>
        <source>receptacle</source>
        <translation>cosse plate femelle</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rouge</translation>
    </message>
    <message>
        <source>reflectors: there and whole</source>
        <translation>catadioptres&#xa0;: présents et entiers</translation>
    </message>
    <message>
        <source>relay coil end (to earth side)</source>
        <translation>bobine de relais, fin (vers la masse)</translation>
    </message>
    <message>
        <source>relay coil start (feed side)</source>
        <translation>bobine de relais, début (alimentation)</translation>
    </message>
    <message>
        <source>resistance</source>
        <translation>résistance</translation>
    </message>
    <message>
        <source>right direction indicators</source>
        <translation>clignotants droits</translation>
    </message>
    <message>
        <source>ring</source>
        <translation>œillet</translation>
    </message>
    <message>
        <source>rotational speed</source>
        <translation>régime</translation>
    </message>
    <message>
        <source>round not finished: %1, %2 checks without an answer</source>
        <translation>ronde pas finie&#xa0;: %1, %2 points sans réponse</translation>
    </message>
    <message>
        <source>round the machine</source>
        <translation>autour du véhicule</translation>
    </message>
    <message>
        <source>runs as on its photo, clipped, dry under pressure: %1</source>
        <translation>passe comme sur la photo, attaché, sec sous pression&#xa0;: %1</translation>
    </message>
    <message>
        <source>sealing washer of the plug</source>
        <translation>joint du bouchon de vidange</translation>
    </message>
    <message>
        <source>self-locking nut of its axle</source>
        <translation>écrou autofreiné de son axe</translation>
    </message>
    <message>
        <source>self-locking nut or split pin of the axle</source>
        <translation>écrou autofreiné ou goupille de l&apos;axe</translation>
    </message>
    <message>
        <source>self-locking nuts of the shock</source>
        <translation>écrous autofreinés de l&apos;amortisseur</translation>
    </message>
    <message>
        <source>set the pressure cold</source>
        <translation>régler la pression à froid</translation>
    </message>
    <message>
        <source>set the slack of the chain; clip closed to the front</source>
        <translation>régler la tension de chaîne&#xa0;; agrafe côté fermé vers l&apos;avant</translation>
    </message>
    <message>
        <source>shared earth</source>
        <translation>masse commune</translation>
    </message>
    <message>
        <source>shop record</source>
        <translation>données de l&apos;atelier</translation>
    </message>
    <message>
        <source>short-circuit (kill) terminal of a magneto ignition</source>
        <translation>borne de mise à la masse (arrêt) d&apos;un allumage à volant magnétique</translation>
    </message>
    <message>
        <source>side or position lamp on motorcycles and mopeds</source>
        <translation>feu de position sur motos et cyclomoteurs</translation>
    </message>
    <message>
        <source>signals</source>
        <translation>signaux</translation>
    </message>
    <message>
        <source>sits as it did, nothing left over: %1</source>
        <translation>en place comme avant, rien ne reste&#xa0;: %1</translation>
    </message>
    <message>
        <source>socket</source>
        <translation>douille</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>vitesse</translation>
    </message>
    <message>
        <source>splice</source>
        <translation>épissure</translation>
    </message>
    <message>
        <source>spring clip of the joining link</source>
        <translation>agrafe de l&apos;attache rapide</translation>
    </message>
    <message>
        <source>springs under load: hold them before the last bolt comes out</source>
        <translation>ressorts sous tension&#xa0;: les tenir avant que la dernière vis sorte</translation>
    </message>
    <message>
        <source>sprockets: teeth not hooked, nuts secured</source>
        <translation>pignons&#xa0;: dents pas crochues, écrous freinés</translation>
    </message>
    <message>
        <source>stand: springs back, holds the machine upright</source>
        <translation>béquille&#xa0;: revient, tient le véhicule droit</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>norme</translation>
    </message>
    <message>
        <source>starter control (solenoid pull-in)</source>
        <translation>commande du démarreur (solénoïde)</translation>
    </message>
    <message>
        <source>starter relay output or starter input (main current)</source>
        <translation>sortie du relais de démarreur ou entrée du démarreur (courant principal)</translation>
    </message>
    <message>
        <source>starter: turns the engine at once, disengages</source>
        <translation>démarreur&#xa0;: lance tout de suite le moteur, se dégage</translation>
    </message>
    <message>
        <source>starting interlock: starts only with the brake pulled, the clutch pulled or in neutral, as built</source>
        <translation>sécurité de démarrage&#xa0;: ne part que frein serré, embrayage tiré ou au point mort, selon le modèle</translation>
    </message>
    <message>
        <source>starts</source>
        <translation>démarre</translation>
    </message>
    <message>
        <source>steering</source>
        <translation>direction</translation>
    </message>
    <message>
        <source>steering and wheels without play</source>
        <translation>direction et roues sans jeu</translation>
    </message>
    <message>
        <source>steering head: no play, no notch, no tight spot</source>
        <translation>colonne&#xa0;: pas de jeu, pas de cran, pas de point dur</translation>
    </message>
    <message>
        <source>stop lamp</source>
        <translation>feu stop</translation>
    </message>
    <message>
        <source>stop lamp, front lever</source>
        <translation>feu stop, levier avant</translation>
    </message>
    <message>
        <source>stop lamp, rear</source>
        <translation>feu stop, arrière</translation>
    </message>
    <message>
        <source>stop lamp: from the front lever and from the rear lever or pedal</source>
        <translation>feu stop&#xa0;: au levier avant et au levier ou à la pédale arrière</translation>
    </message>
    <message>
        <source>stopped after a photo</source>
        <translation>arrêté après une photo</translation>
    </message>
    <message>
        <source>stopped after measuring: %1</source>
        <translation>arrêté après la mesure&#xa0;: %1</translation>
    </message>
    <message>
        <source>stopped after noting: %1</source>
        <translation>arrêté après le constat&#xa0;: %1</translation>
    </message>
    <message>
        <source>stopped after refitting: %1</source>
        <translation>arrêté après le remontage&#xa0;: %1</translation>
    </message>
    <message>
        <source>stopped after: %1</source>
        <translation>arrêté après&#xa0;: %1</translation>
    </message>
    <message>
        <source>stopped at the part: %1</source>
        <translation>arrêté à la pièce&#xa0;: %1</translation>
    </message>
    <message>
        <source>stopped at the wiring of: %1</source>
        <translation>arrêté aux fils de&#xa0;: %1</translation>
    </message>
    <message>
        <source>strap the machine on the lift before weight comes off</source>
        <translation>sangler le véhicule sur le pont avant d&apos;ôter du poids</translation>
    </message>
    <message>
        <source>stress</source>
        <translation>contrainte</translation>
    </message>
    <message>
        <source>suspension</source>
        <translation>suspension</translation>
    </message>
    <message>
        <source>swing arm or engine mount: no side play</source>
        <translation>bras oscillant ou support moteur&#xa0;: pas de jeu latéral</translation>
    </message>
    <message>
        <source>switched battery positive (output of the ignition switch)</source>
        <translation>plus après contact (sortie du contacteur)</translation>
    </message>
    <message>
        <source>switched earth: return to negative through a switch or relay</source>
        <translation>masse commutée&#xa0;: retour au moins par un contact ou relais</translation>
    </message>
    <message>
        <source>switched positive after a ballast resistor</source>
        <translation>plus après contact, après la résistance ballast</translation>
    </message>
    <message>
        <source>tail lamp</source>
        <translation>feu arrière</translation>
    </message>
    <message>
        <source>tail lamp and number plate lamp</source>
        <translation>feu arrière et éclairage de plaque</translation>
    </message>
    <message>
        <source>tail or side lighting, left</source>
        <translation>feu arrière ou de position gauche</translation>
    </message>
    <message>
        <source>tail or side lighting, right</source>
        <translation>feu arrière ou de position droit</translation>
    </message>
    <message>
        <source>tail, side-marker, number-plate and instrument lighting</source>
        <translation>feux arrière, de gabarit, de plaque et d&apos;instruments</translation>
    </message>
    <message>
        <source>taken in, nothing done yet</source>
        <translation>pris en charge, rien de fait encore</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>température</translation>
    </message>
    <message>
        <source>temperature difference</source>
        <translation>différence de température</translation>
    </message>
    <message>
        <source>terminal grease</source>
        <translation>graisse pour cosses</translation>
    </message>
    <message>
        <source>the container cannot have been opened on %1: that day is to come</source>
        <translation>le bidon ne peut pas avoir été ouvert le %1&#xa0;: ce jour est à venir</translation>
    </message>
    <message>
        <source>the container was opened %1 days ago, on %2: brake fluid draws water, take a fresh one</source>
        <translation>le bidon a été ouvert il y a %1 jours, le %2&#xa0;: le liquide de frein prend l&apos;eau, en prendre un neuf</translation>
    </message>
    <message>
        <source>the day of opening is not clear: write it as 2026-11-02</source>
        <translation>le jour d&apos;ouverture n&apos;est pas clair&#xa0;: l&apos;écrire comme 2026-11-02</translation>
    </message>
    <message>
        <source>the grade of what goes in is not said: read it off the container</source>
        <translation>la norme de ce qu&apos;on met n&apos;est pas dite&#xa0;: la lire sur le bidon</translation>
    </message>
    <message>
        <source>the machine&apos;s grade is not known: read it off the reservoir&apos;s lid or the manual first</source>
        <translation>la norme du véhicule est inconnue&#xa0;: la lire d&apos;abord sur le couvercle du bocal ou dans le manuel</translation>
    </message>
    <message>
        <source>the seal</source>
        <translation>le joint spi</translation>
    </message>
    <message>
        <source>the sum is too large to reckon with: %1</source>
        <translation>la somme est trop grande pour le calcul&#xa0;: %1</translation>
    </message>
    <message>
        <source>the watch still runs: %1</source>
        <translation>le chrono tourne encore&#xa0;: %1</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>thermomètre</translation>
    </message>
    <message>
        <source>thin grease on the axle</source>
        <translation>un film de graisse sur l&apos;axe</translation>
    </message>
    <message>
        <source>throttle: free play set, and it snaps shut in every place of the bars</source>
        <translation>gaz&#xa0;: jeu réglé, et revient d&apos;un coup dans chaque position du guidon</translation>
    </message>
    <message>
        <source>throttle: snaps shut by itself at every steering angle</source>
        <translation>gaz&#xa0;: reviennent d&apos;un coup seuls à tout braquage</translation>
    </message>
    <message>
        <source>tightened to the torque and read: %1 (%2)</source>
        <translation>serré au couple et lu&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>time</source>
        <translation>temps</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>trop juste</translation>
    </message>
    <message>
        <source>top end: no ticking valve, chain tensioner quiet</source>
        <translation>haut moteur&#xa0;: pas de soupape qui claque, tendeur silencieux</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>couple</translation>
    </message>
    <message>
        <source>torque wrench</source>
        <translation>clé dynamométrique</translation>
    </message>
    <message>
        <source>torque-wrench-100</source>
        <translation>clé dynamométrique 100</translation>
    </message>
    <message>
        <source>torque-wrench-200</source>
        <translation>clé dynamométrique 200</translation>
    </message>
    <message>
        <source>torque-wrench-25</source>
        <translation>clé dynamométrique 25</translation>
    </message>
    <message>
        <source>torque-wrench-5</source>
        <translation>clé dynamométrique 5</translation>
    </message>
    <message>
        <source>try the brake: it holds, and it lets go</source>
        <translation>essayer le frein&#xa0;: il tient, et il relâche</translation>
    </message>
    <message>
        <source>turn signal, front left</source>
        <translation>clignotant avant gauche</translation>
    </message>
    <message>
        <source>turn signal, front right</source>
        <translation>clignotant avant droit</translation>
    </message>
    <message>
        <source>turn signal, rear left</source>
        <translation>clignotant arrière gauche</translation>
    </message>
    <message>
        <source>turn signal, rear right</source>
        <translation>clignotant arrière droit</translation>
    </message>
    <message>
        <source>turn signals: all four, at the right rate</source>
        <translation>clignotants&#xa0;: les quatre, au bon rythme</translation>
    </message>
    <message>
        <source>turn the engine over by hand: it turns freely</source>
        <translation>tourner le moteur à la main&#xa0;: il tourne librement</translation>
    </message>
    <message>
        <source>turn the steering from stop to stop: no play, no notch, nothing pulls</source>
        <translation>direction de butée à butée&#xa0;: pas de jeu, pas de cran, rien ne tire</translation>
    </message>
    <message>
        <source>turn the steering from stop to stop: nothing pulls or pinches</source>
        <translation>direction de butée à butée&#xa0;: rien ne tire ni ne pince</translation>
    </message>
    <message>
        <source>turn the wheel: it runs free and true</source>
        <translation>tourner la roue&#xa0;: elle tourne libre et droit</translation>
    </message>
    <message>
        <source>turquoise</source>
        <translation>turquoise</translation>
    </message>
    <message>
        <source>two-stroke</source>
        <translation>deux-temps</translation>
    </message>
    <message>
        <source>tyre-gauge</source>
        <translation>manomètre à pneus</translation>
    </message>
    <message>
        <source>tyres hold air</source>
        <translation>les pneus tiennent l&apos;air</translation>
    </message>
    <message>
        <source>under the seat</source>
        <translation>sous la selle</translation>
    </message>
    <message>
        <source>unsafe and open: %1</source>
        <translation>danger non réglé&#xa0;: %1</translation>
    </message>
    <message>
        <source>unsafe, and %1 does not want it put right: %2</source>
        <translation>danger, et %1 ne veut pas qu&apos;on répare&#xa0;: %2</translation>
    </message>
    <message>
        <source>valve cover and oil filter cover: dry</source>
        <translation>cache-soupapes et couvercle de filtre à huile&#xa0;: secs</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violet</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>tension</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>volume</translation>
    </message>
    <message>
        <source>waits for: %1</source>
        <translation>attend&#xa0;: %1</translation>
    </message>
    <message>
        <source>wheels and tyres</source>
        <translation>roues et pneus</translation>
    </message>
    <message>
        <source>white</source>
        <translation>blanc</translation>
    </message>
    <message>
        <source>wiper motor positive input</source>
        <translation>moteur d&apos;essuie-glace, entrée plus</translation>
    </message>
    <message>
        <source>wire side</source>
        <translation>côté fils</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dedans</translation>
    </message>
    <message>
        <source>worked out here</source>
        <translation>calculé ici</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>jaune</translation>
    </message>
    <message>
        <source>Pa absolute</source>
        <translation>Pa absolus</translation>
    </message>
    <message>
        <source>pressure as given: %1 Pa absolute</source>
        <translation>pression comme donnée&#xa0;: %1 Pa absolus</translation>
    </message>
    <message>
        <source>standard pressure at %1 m: %2 Pa</source>
        <translation>pression normale à %1 m&#xa0;: %2 Pa</translation>
    </message>
    <message>
        <source>outside 15 to 27 degC or 600 to 1100 hPa the CIPM-2007 formula is extrapolated</source>
        <translation>hors de 15 à 27 degC ou de 600 à 1100 hPa, la formule CIPM-2007 est extrapolée</translation>
    </message>
    <message>
        <source>hPa absolute</source>
        <translation>hPa absolus</translation>
    </message>
    <message>
        <source>nothing: ready; a load test proves it</source>
        <translation>rien&#xa0;: prête&#xa0;; un essai en charge le prouve</translation>
    </message>
    <message>
        <source>charge at no more than a tenth of its ampere hours, rest an hour or two, measure again</source>
        <translation>charger au plus au dixième de ses ampères-heures, reposer une heure ou deux, remesurer</translation>
    </message>
    <message>
        <source>charge slowly and check every cell with the hydrometer: cells that differ by more than 0.05 are worn out (common practice, no source)</source>
        <translation>charger lentement et vérifier chaque élément au pèse-acide&#xa0;: ceux qui diffèrent de plus de 0,05 sont usés (pratique courante, sans source)</translation>
    </message>
    <message>
        <source>charge slowly, rest an hour or two, measure again; if it stays below half charge, renew it (common practice, no source)</source>
        <translation>charger lentement, reposer une heure ou deux, remesurer&#xa0;; si elle reste sous la moitié, la changer (pratique courante, sans source)</translation>
    </message>
    <message>
        <source>cannot be read in a sealed AGM battery</source>
        <translation>ne se lit pas dans une batterie AGM scellée</translation>
    </message>
    <message>
        <source>so low a voltage means a dead cell or a deep discharge, or the nominal voltage is wrong</source>
        <translation>une tension si basse veut dire un élément mort, une décharge profonde ou une tension nominale fausse</translation>
    </message>
    <message>
        <source>between the points of the %1 table: %2 %</source>
        <translation>entre les points du tableau %1&#xa0;: %2 %</translation>
    </message>
    <message>
        <source>no charge can be told yet: let it rest an hour or two, measure again</source>
        <translation>on ne peut pas encore dire la charge&#xa0;: reposer une heure ou deux, remesurer</translation>
    </message>
    <message>
        <source>friction in place of nut_factor, or without it</source>
        <translation>friction au lieu de nut_factor, ou sans lui</translation>
    </message>
    <message>
        <source>proof load %1 N: share %2</source>
        <translation>charge d&apos;épreuve %1 N&#xa0;: part %2</translation>
    </message>
    <message>
        <source>held to the limit given: %1 N.m</source>
        <translation>tenu à la limite donnée&#xa0;: %1 N.m</translation>
    </message>
    <message>
        <source>thread in aluminium: the limit given rules, whatever the bolt could bear</source>
        <translation>filet dans l&apos;aluminium&#xa0;: la limite donnée prime, quoi que supporte la vis</translation>
    </message>
    <message>
        <source>colourless to amber</source>
        <translation>incolore à ambré</translation>
    </message>
    <message>
        <source>glycol fluids of DOT 3, DOT 4 and DOT 5.1 mix; the result is no better than the lower grade</source>
        <translation>les liquides au glycol DOT 3, DOT 4 et DOT 5.1 se mélangent&#xa0;; le résultat ne vaut pas mieux que la norme la plus basse</translation>
    </message>
    <message>
        <source>not known what is in: do not mix; drain, clean and renew all rubber if in doubt</source>
        <translation>on ne sait pas ce qu&apos;il y a&#xa0;: ne pas mélanger&#xa0;; dans le doute vidanger, nettoyer et changer tous les caoutchoucs</translation>
    </message>
    <message>
        <source>%1 and %2 are different families: they attack each other&apos;s rubber and do not mix</source>
        <translation>%1 et %2 sont de familles différentes&#xa0;: chacun attaque les caoutchoucs de l&apos;autre et ils ne se mélangent pas</translation>
    </message>
    <message>
        <source>the same kind of fluid</source>
        <translation>la même sorte de liquide</translation>
    </message>
    <message>
        <source>change of family: strip, clean every passage with the right cleaner and renew all rubber, then fill with the new fluid alone</source>
        <translation>changement de famille&#xa0;: démonter, nettoyer chaque conduit avec le bon produit et changer tous les caoutchoucs, puis ne mettre que le nouveau liquide</translation>
    </message>
    <message>
        <source>least boiling points of %1: dry %2, wet %3 degC</source>
        <translation>points d&apos;ébullition minimaux de %1&#xa0;: sec %2, humide %3 degC</translation>
    </message>
    <message>
        <source>the lower grade</source>
        <translation>la norme la plus basse</translation>
    </message>
    <message>
        <source>mineral oil has no boiling point in this standard: the maker&apos;s sheet gives it</source>
        <translation>l&apos;huile minérale n&apos;a pas de point d&apos;ébullition dans cette norme&#xa0;: la fiche du fabricant le donne</translation>
    </message>
    <message>
        <source>fuse and connectors between regulator and battery</source>
        <translation>fusible et connecteurs entre régulateur et batterie</translation>
    </message>
    <message>
        <source>earth of regulator and engine</source>
        <translation>masse du régulateur et du moteur</translation>
    </message>
    <message>
        <source>brushes and commutator</source>
        <translation>charbons et collecteur</translation>
    </message>
    <message>
        <source>cut-out or regulator contacts</source>
        <translation>conjoncteur ou contacts du régulateur</translation>
    </message>
    <message>
        <source>field winding</source>
        <translation>enroulement d&apos;excitation</translation>
    </message>
    <message>
        <source>connector between alternator and regulator (heat, green copper)</source>
        <translation>connecteur entre alternateur et régulateur (chaleur, cuivre vert)</translation>
    </message>
    <message>
        <source>alternator winding open or to earth: measure its AC voltage and resistance</source>
        <translation>enroulement d&apos;alternateur coupé ou à la masse&#xa0;: mesurer sa tension alternative et sa résistance</translation>
    </message>
    <message>
        <source>regulator or rectifier</source>
        <translation>régulateur ou redresseur</translation>
    </message>
    <message>
        <source>voltage drop in leads and earth: measure it with voltage-drop</source>
        <translation>chute de tension dans les fils et la masse&#xa0;: la mesurer avec Chute de tension</translation>
    </message>
    <message>
        <source>battery sulphated or with a bad cell: charge it and repeat</source>
        <translation>batterie sulfatée ou à élément mauvais&#xa0;: la charger et recommencer</translation>
    </message>
    <message>
        <source>one phase missing: compare the three AC voltages</source>
        <translation>une phase manque&#xa0;: comparer les trois tensions alternatives</translation>
    </message>
    <message>
        <source>worn brushes, slipping belt or regulator out of adjustment</source>
        <translation>charbons usés, courroie qui patine ou régulateur déréglé</translation>
    </message>
    <message>
        <source>alternator winding partly shorted, magnets weak</source>
        <translation>enroulement en partie en court-circuit, aimants faibles</translation>
    </message>
    <message>
        <source>as given</source>
        <translation>comme donné</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>pratique courante, sans source</translation>
    </message>
    <message>
        <source>rest %1 V, idle %2 V, revs %3 V: rise %4 V</source>
        <translation>repos %1 V, ralenti %2 V, régime %3 V&#xa0;: hausse %4 V</translation>
    </message>
    <message>
        <source>battery: it rests as low as with a dead cell; charge and test it, then measure again</source>
        <translation>batterie&#xa0;: repose aussi bas qu&apos;avec un élément mort&#xa0;; la charger et l&apos;essayer, puis remesurer</translation>
    </message>
    <message>
        <source>it charges, but the battery was low at rest: charge and test it</source>
        <translation>ça charge, mais la batterie était basse au repos&#xa0;: la charger et l&apos;essayer</translation>
    </message>
    <message>
        <source>battery: it was low at rest, and an empty one holds the voltage down; charge and test it, then measure again</source>
        <translation>batterie&#xa0;: était basse au repos, et vide elle retient la tension&#xa0;; la charger et l&apos;essayer, puis remesurer</translation>
    </message>
    <message>
        <source>regulator, or its earth or sensing lead</source>
        <translation>régulateur, ou sa masse ou son fil de mesure</translation>
    </message>
    <message>
        <source>battery with an open cell or loose terminal</source>
        <translation>batterie à élément coupé ou borne desserrée</translation>
    </message>
    <message>
        <source>regulator contacts stuck</source>
        <translation>contacts du régulateur collés</translation>
    </message>
    <message>
        <source>overcharging boils the battery and blows bulbs: do not ride on</source>
        <translation>la surcharge fait bouillir la batterie et grille les lampes&#xa0;: ne pas continuer à rouler</translation>
    </message>
    <message>
        <source>at idle the battery still gives: usual for an old alternator with the lamps on, else look at idle speed and lamps (common practice, no source)</source>
        <translation>au ralenti la batterie donne encore&#xa0;: courant avec un vieil alternateur et les feux, sinon voir ralenti et lampes (pratique courante, sans source)</translation>
    </message>
    <message>
        <source>falls with revs: a connection or the regulator fails as current rises; measure again</source>
        <translation>tombe avec le régime&#xa0;: une connexion ou le régulateur lâche quand le courant monte&#xa0;; remesurer</translation>
    </message>
    <message>
        <source>ambient at that altitude: %1 kPa</source>
        <translation>pression ambiante à cette altitude&#xa0;: %1 kPa</translation>
    </message>
    <message>
        <source>%1 times the system: %2 mL to have ready</source>
        <translation>%1 fois le circuit&#xa0;: %2 mL à préparer</translation>
    </message>
    <message>
        <source>this band was read in a summary only: advisory</source>
        <translation>cette plage n&apos;a été lue que dans un résumé&#xa0;: indicative</translation>
    </message>
    <message>
        <source>%1 mm from the line; the tape tells %2 mm</source>
        <translation>%1 mm de la ligne&#xa0;; le mètre distingue %2 mm</translation>
    </message>
    <message>
        <source>air before %1 kg/m3, after %2 kg/m3: ratio %3</source>
        <translation>air avant %1 kg/m3, après %2 kg/m3&#xa0;: rapport %3</translation>
    </message>
    <message>
        <source>jets numbered by diameter: jet area goes with the root of the density ratio, so the diameter with its fourth root</source>
        <translation>numérotés par diamètre&#xa0;: la section va comme la racine du rapport de densité, donc le diamètre comme sa racine quatrième</translation>
    </message>
    <message>
        <source>jets numbered by flow: the number goes with the root of the density ratio</source>
        <translation>numérotés par débit&#xa0;: le numéro va comme la racine du rapport de densité</translation>
    </message>
    <message>
        <source>tail and stop together</source>
        <translation>feu arrière et stop ensemble</translation>
    </message>
    <message>
        <source>one filament at a time</source>
        <translation>un filament à la fois</translation>
    </message>
    <message>
        <source>some of these bulbs&apos; watts are from memory: read them on the bulb</source>
        <translation>certains de ces watts sont de mémoire&#xa0;: les lire sur l&apos;ampoule</translation>
    </message>
    <message>
        <source>the battery pays the difference: it goes flat while riding</source>
        <translation>la batterie paie la différence&#xa0;: elle se vide en roulant</translation>
    </message>
    <message>
        <source>no air was lost: the difference is temperature, or within what the gauge can tell</source>
        <translation>pas d&apos;air perdu&#xa0;: l&apos;écart vient de la température, ou de ce que l&apos;appareil peut distinguer</translation>
    </message>
    <message>
        <source>no loss: the limit is not reached</source>
        <translation>pas de perte&#xa0;: la limite n&apos;est pas atteinte</translation>
    </message>
    <message>
        <source>does not fit a date</source>
        <translation>ne va pas avec une date</translation>
    </message>
    <message>
        <source>last is a date, this is none</source>
        <translation>last est une date, ceci non</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>overdue by %1 days</source>
        <translation>dépassé de %1 jours</translation>
    </message>
    <message>
        <source>the odometer now, such as 12400 km</source>
        <translation>le compteur maintenant, par exemple 12400 km</translation>
    </message>
    <message>
        <source>calendar: months end on their last day where the day is missing</source>
        <translation>calendrier&#xa0;: un mois finit à son dernier jour là où le jour manque</translation>
    </message>
    <message>
        <source>fuel to oil from 8 to 200, such as 50, 50:1 or 2 %</source>
        <translation>essence sur huile de 8 à 200, par exemple 50, 50:1 ou 2 %</translation>
    </message>
    <message>
        <source>one or both, from the manual</source>
        <translation>l&apos;une ou les deux, du manuel</translation>
    </message>
    <message>
        <source>uncertainty of the reading at 20 degC: %1 ohm</source>
        <translation>incertitude de la mesure à 20 degC&#xa0;: %1 ohm</translation>
    </message>
    <message>
        <source>no uncertainty was given: %1 ohm is assumed, 2 % and 0.02 ohm (common practice, no source)</source>
        <translation>pas d&apos;incertitude donnée&#xa0;: %1 ohm supposé, 2 % et 0,02 ohm (pratique courante, sans source)</translation>
    </message>
    <message>
        <source>nearest in steps of %1 mm: %2 mm, which leaves %3 mm</source>
        <translation>plus proche par pas de %1 mm&#xa0;: %2 mm, qui laisse %3 mm</translation>
    </message>
    <message>
        <source>it shows less than the true speed: not allowed in most places (from memory of UNECE R39)</source>
        <translation>il affiche moins que la vraie vitesse&#xa0;: interdit presque partout (de mémoire, UNECE R39)</translation>
    </message>
    <message>
        <source>empty after %1 days: a battery cannot lose more than all</source>
        <translation>vide après %1 jours&#xa0;: une batterie ne peut perdre plus que tout</translation>
    </message>
    <message>
        <source>stage %1 of %2: %3 %4</source>
        <translation>étape %1 sur %2&#xa0;: %3 %4</translation>
    </message>
    <message>
        <source>across three quarters of the breadth, all round; pattern visible on the rest</source>
        <translation>sur les trois quarts de la largeur, tout autour&#xa0;; ailleurs sculptures visibles</translation>
    </message>
    <message>
        <source>main grooves in the middle three quarters</source>
        <translation>rainures principales dans les trois quarts du milieu</translation>
    </message>
    <message>
        <source>mopeds, small and light motorcycles</source>
        <translation>cyclomoteurs et motocyclettes légères</translation>
    </message>
    <message>
        <source>middle three quarters</source>
        <translation>trois quarts du milieu</translation>
    </message>
    <message>
        <source>treadwear indicator at 1/32 in: a making standard, not a roadside limit; states have their own</source>
        <translation>témoin d&apos;usure à 1/32 in&#xa0;: norme de fabrication, pas limite sur route&#xa0;; les États ont les leurs</translation>
    </message>
    <message>
        <source>reject below 1/32 in</source>
        <translation>rejeter sous 1/32 in</translation>
    </message>
    <message>
        <source>motorcycle, or another country</source>
        <translation>motorcycle, ou un autre pays</translation>
    </message>
    <message>
        <source>pattern visible</source>
        <translation>sculptures visibles</translation>
    </message>
    <message>
        <source>no depth is laid down: look whether every original groove shows</source>
        <translation>pas de profondeur prescrite&#xa0;: voir si chaque rainure d&apos;origine se voit</translation>
    </message>
    <message>
        <source>age between %1 and %2 years, limit of the shop %3 years</source>
        <translation>âge entre %1 et %2 ans, limite de l&apos;atelier %3 ans</translation>
    </message>
    <message>
        <source>three digits: week %1 of a year before 2000 that ends in %2; the decade is not in the code</source>
        <translation>trois chiffres&#xa0;: semaine %1 d&apos;une année avant 2000 finissant par %2&#xa0;; la décennie n&apos;est pas dans le code</translation>
    </message>
    <message>
        <source>age is that of the youngest possible year: the tyre may be ten or twenty years older</source>
        <translation>l&apos;âge est celui de l&apos;année la plus récente possible&#xa0;: le pneu peut avoir dix ou vingt ans de plus</translation>
    </message>
    <message>
        <source>week %1 of %2: %3 to %4</source>
        <translation>semaine %1 de %2&#xa0;: du %3 au %4</translation>
    </message>
    <message>
        <source>no load index and speed symbol in the marking</source>
        <translation>ni indice de charge ni code de vitesse dans le marquage</translation>
    </message>
    <message>
        <source>rider and luggage are %1 kg; a pair of these tyres holds %2 kg of machine, rider and luggage together</source>
        <translation>pilote et bagages font %1 kg&#xa0;; une paire de ces pneus porte %2 kg de véhicule, de pilote et de bagages ensemble</translation>
    </message>
    <message>
        <source>rider and luggage alone are as much as one of these tyres holds, and most of it rests on the rear: look up the machine&apos;s highest load</source>
        <translation>pilote et bagages seuls font autant que porte un de ces pneus, et l&apos;essentiel pèse derrière&#xa0;: voir la charge maximale du véhicule</translation>
    </message>
    <message>
        <source>no check digit in this scheme</source>
        <translation>pas de chiffre de contrôle dans ce schéma</translation>
    </message>
    <message>
        <source>no: 17 characters are wanted, %1 were given</source>
        <translation>non&#xa0;: il faut 17 caractères, %1 donnés</translation>
    </message>
    <message>
        <source>accepted as a plain frame number</source>
        <translation>accepté comme simple numéro de cadre</translation>
    </message>
    <message>
        <source>%1 characters: not a number of 17</source>
        <translation>%1 caractères&#xa0;: pas un numéro de 17</translation>
    </message>
    <message>
        <source>if the plate really shows so many, it is an older scheme without check digit</source>
        <translation>si la plaque en montre vraiment autant, c&apos;est un schéma ancien sans chiffre de contrôle</translation>
    </message>
    <message>
        <source>no: I, O and Q and signs are never used in a number of 17</source>
        <translation>non&#xa0;: I, O, Q et signes ne servent jamais dans un numéro de 17</translation>
    </message>
    <message>
        <source>no: position 9 should be %1</source>
        <translation>non&#xa0;: la position 9 devrait être %1</translation>
    </message>
    <message>
        <source>outside North America the check digit is not required: there a failed one is only a hint</source>
        <translation>hors d&apos;Amérique du Nord le chiffre de contrôle n&apos;est pas exigé&#xa0;: faux, ce n&apos;est là qu&apos;un indice</translation>
    </message>
    <message>
        <source>position 10 is no year code; outside North America it often is not</source>
        <translation>la position 10 n&apos;est pas un code d&apos;année&#xa0;; hors d&apos;Amérique du Nord souvent elle ne l&apos;est pas</translation>
    </message>
    <message>
        <source>the year code repeats every 30 years, and is only a hint outside North America</source>
        <translation>le code d&apos;année revient tous les 30 ans, et n&apos;est qu&apos;un indice hors d&apos;Amérique du Nord</translation>
    </message>
    <message>
        <source>starter cable under 0.91 m</source>
        <translation>câble de démarreur sous 0,91 m</translation>
    </message>
    <message>
        <source>starter cable 0.91 to 1.83 m</source>
        <translation>câble de démarreur de 0,91 à 1,83 m</translation>
    </message>
    <message>
        <source>cranking circuit, 0.20 V for each 100 A: give the current</source>
        <translation>circuit de lancement, 0,20 V par 100 A&#xa0;: donner le courant</translation>
    </message>
    <message>
        <source>the cranking current in A</source>
        <translation>le courant de lancement en A</translation>
    </message>
    <message>
        <source>half the 12 V figure at 6 V: common practice, no source</source>
        <translation>la moitié de la valeur 12 V à 6 V&#xa0;: pratique courante, sans source</translation>
    </message>
    <message>
        <source>any drop that the meter can tell from zero is too much: %1</source>
        <translation>toute chute que l&apos;appareil distingue de zéro est de trop&#xa0;: %1</translation>
    </message>
    <message>
        <source>the service limit of the manual</source>
        <translation>la limite d&apos;usure du manuel</translation>
    </message>
    <message>
        <source>%1 mm and more</source>
        <translation>%1 mm et plus</translation>
    </message>
    <message>
        <source>worn %1 mm in %2 km; %3 mm left: %4 km</source>
        <translation>usé %1 mm en %2 km&#xa0;; reste %3 mm&#xa0;: %4 km</translation>
    </message>
    <message>
        <source>no wear was measured: what remains cannot be told</source>
        <translation>pas d&apos;usure mesurée&#xa0;: ce qui reste ne peut se dire</translation>
    </message>
    <message>
        <source>tan (light brown)</source>
        <translation>brun clair</translation>
    </message>
    <message>
        <source>clear or white</source>
        <translation>transparent ou blanc</translation>
    </message>
    <message>
        <source>resistance %1 mohm/m (%2) at %3 degC: %4 mohm/m</source>
        <translation>résistance %1 mohm/m (%2) à %3 degC&#xa0;: %4 mohm/m</translation>
    </message>
    <message>
        <source>solid copper, ASTM B258 size</source>
        <translation>cuivre massif, calibre ASTM B258</translation>
    </message>
    <message>
        <source>by area, from IEC 60228 class 5</source>
        <translation>par section, d&apos;IEC 60228 classe 5</translation>
    </message>
    <message>
        <source>the load wants a fuse of %1 A, more than this wire may stand behind (%2 A): take a thicker wire</source>
        <translation>la charge veut un fusible de %1 A, plus que ce fil n&apos;en admet (%2 A)&#xa0;: prendre un fil plus gros</translation>
    </message>
    <message>
        <source>fuse: the next blade size from 1.25 x %1 A: %2 A; the wire may stand behind %3 A</source>
        <translation>fusible&#xa0;: la taille à lame suivante depuis 1.25 x %1 A&#xa0;: %2 A&#xa0;; le fil en admet %3 A</translation>
    </message>
    <message>
        <source>no blade fuse is large enough: such currents belong to the starter circuit</source>
        <translation>aucun fusible à lame n&apos;est assez gros&#xa0;: de tels courants sont du circuit de démarreur</translation>
    </message>
    <message>
        <source>this wire may stand behind %1 A at most: take a thicker wire</source>
        <translation>ce fil admet au plus %1 A&#xa0;: prendre un fil plus gros</translation>
    </message>
    <message>
        <source>yes: %1</source>
        <translation>oui&#xa0;: %1</translation>
    </message>
    <message>
        <source>no: %1</source>
        <translation>non&#xa0;: %1</translation>
    </message>
    <message>
        <source>overdue by %1</source>
        <translation>dépassé de %1</translation>
    </message>
    <message>
        <source>no uncertainty was given: %1 is assumed for an ordinary instrument (common practice, no source)</source>
        <translation>pas d&apos;incertitude donnée&#xa0;: %1 est supposé pour un instrument ordinaire (pratique courante, sans source)</translation>
    </message>
    <message>
        <source>no verdict: %1</source>
        <translation>pas de verdict&#xa0;: %1</translation>
    </message>
    <message>
        <source>what would settle it: %1</source>
        <translation>ce qui trancherait&#xa0;: %1</translation>
    </message>
    <message>
        <source>limit: %1</source>
        <translation>limite&#xa0;: %1</translation>
    </message>
    <message>
        <source>load index %1 is outside the table of 30 to 80: look it up in the maker&apos;s book</source>
        <translation>l&apos;indice de charge %1 est hors du tableau de 30 à 80&#xa0;: voir le livre du fabricant</translation>
    </message>
    <message>
        <source>speed symbol %1 has no fixed speed in the table</source>
        <translation>le code de vitesse %1 n&apos;a pas de vitesse fixe au tableau</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>laisser</translation>
    </message>
    <message>
        <source>down</source>
        <translation>plus bas</translation>
    </message>
    <message>
        <source>up</source>
        <translation>plus haut</translation>
    </message>
    <message>
        <source>would be more vapour than the whole pressure</source>
        <translation>serait plus de vapeur que toute la pression</translation>
    </message>
    <message>
        <source>a higher pressure or a lower temperature</source>
        <translation>une pression plus haute ou une température plus basse</translation>
    </message>
    <message>
        <source>stands beside a specific gravity: give one of them</source>
        <translation>est à côté d&apos;une densité&#xa0;: donner l&apos;un des deux</translation>
    </message>
    <message>
        <source>is missing, and so is specific_gravity</source>
        <translation>manque, et specific_gravity aussi</translation>
    </message>
    <message>
        <source>one of voltage and specific_gravity</source>
        <translation>l&apos;un de voltage et specific_gravity</translation>
    </message>
    <message>
        <source>is more than a battery at rest shows</source>
        <translation>est plus que ne montre une batterie au repos</translation>
    </message>
    <message>
        <source>up to 8 V for a 6 V battery</source>
        <translation>jusqu&apos;à 8 V pour une batterie 6 V</translation>
    </message>
    <message>
        <source>up to 16 V for a 12 V battery</source>
        <translation>jusqu&apos;à 16 V pour une batterie 12 V</translation>
    </message>
    <message>
        <source>a 6 V battery has half the voltage of the table: %1 V counts as %2 V</source>
        <translation>une batterie 6 V a la moitié de la tension du tableau&#xa0;: %1 V comptent pour %2 V</translation>
    </message>
    <message>
        <source>above 13 V it is charging or has not rested: wait an hour or two after charging, then measure again</source>
        <translation>au-dessus de 13 V elle charge ou n&apos;a pas reposé&#xa0;: attendre une heure ou deux après la charge, puis remesurer</translation>
    </message>
    <message>
        <source>is not a thread that is known here</source>
        <translation>n&apos;est pas un filetage connu ici</translation>
    </message>
    <message>
        <source>is not a property class of ISO 898-1</source>
        <translation>n&apos;est pas une classe d&apos;ISO 898-1</translation>
    </message>
    <message>
        <source>stands beside a nut_factor: they are two ways to say one thing</source>
        <translation>est à côté d&apos;un nut_factor&#xa0;: c&apos;est dire deux fois la même chose</translation>
    </message>
    <message>
        <source>is missing, and so is friction</source>
        <translation>manque, et friction aussi</translation>
    </message>
    <message>
        <source>one of nut_factor (0.05 to 0.6) and friction (0.03 to 0.6)</source>
        <translation>l&apos;un de nut_factor (0,05 à 0,6) et friction (0,03 à 0,6)</translation>
    </message>
    <message>
        <source>has no part in a sum with nut_factor, which covers all friction</source>
        <translation>n&apos;a pas sa place avec nut_factor, qui couvre tout frottement</translation>
    </message>
    <message>
        <source>is not known for this thread</source>
        <translation>est inconnu pour ce filetage</translation>
    </message>
    <message>
        <source>give it in mm</source>
        <translation>le donner en mm</translation>
    </message>
    <message>
        <source>would stretch this bolt past its proof load of %1 N</source>
        <translation>étirerait cette vis au-delà de sa charge d&apos;épreuve de %1 N</translation>
    </message>
    <message>
        <source>up to %1 N.m with this friction</source>
        <translation>jusqu&apos;à %1 N.m avec ce frottement</translation>
    </message>
    <message>
        <source>means that the thread strips before the bolt yields: a reduced limit is needed and is not guessed</source>
        <translation>veut dire que le filet s&apos;arrache avant que la vis cède&#xa0;: il faut une limite réduite, et elle ne se devine pas</translation>
    </message>
    <message>
        <source>give torque_limit, the figure of the manual for this thread</source>
        <translation>donner torque_limit, la valeur du manuel pour ce filet</translation>
    </message>
    <message>
        <source>is not a grade that is known here</source>
        <translation>n&apos;est pas une norme connue ici</translation>
    </message>
    <message>
        <source>an old single-phase alternator gives about 13.5 V at best</source>
        <translation>un vieil alternateur monophasé donne au mieux environ 13,5 V</translation>
    </message>
    <message>
        <source>a three-phase alternator gives about 14.5 V</source>
        <translation>un alternateur triphasé donne environ 14,5 V</translation>
    </message>
    <message>
        <source>a dynamo with a good regulator gives about 14 V</source>
        <translation>une dynamo à bon régulateur donne environ 14 V</translation>
    </message>
    <message>
        <source>more lamps or larger bulbs than the generator feeds: see lamp-budget</source>
        <translation>plus de lampes ou de plus fortes que l&apos;alternateur ne nourrit&#xa0;: voir Lampes et alternateur</translation>
    </message>
    <message>
        <source>up to %1 V</source>
        <translation>jusqu&apos;à %1 V</translation>
    </message>
    <message>
        <source>is not below limit_high</source>
        <translation>n&apos;est pas sous limit_high</translation>
    </message>
    <message>
        <source>the manual&apos;s two figures</source>
        <translation>les deux valeurs du manuel</translation>
    </message>
    <message>
        <source>is not less than the stroke</source>
        <translation>n&apos;est pas plus petit que la course</translation>
    </message>
    <message>
        <source>0 to %1 mm</source>
        <translation>0 à %1 mm</translation>
    </message>
    <message>
        <source>from exhaust closing only %1 cm3 are compressed</source>
        <translation>à partir de la fermeture d&apos;échappement, seuls %1 cm3 sont comprimés</translation>
    </message>
    <message>
        <source>has an ambiguous unit</source>
        <translation>a une unité ambiguë</translation>
    </message>
    <message>
        <source>is ambiguous</source>
        <translation>est ambigu</translation>
    </message>
    <message>
        <source>has no unit</source>
        <translation>n&apos;a pas d&apos;unité</translation>
    </message>
    <message>
        <source>has a unit that is not known here</source>
        <translation>a une unité inconnue ici</translation>
    </message>
    <message>
        <source>is not a unit that is known here</source>
        <translation>n&apos;est pas une unité connue ici</translation>
    </message>
    <message>
        <source>must be above zero for a consumption</source>
        <translation>doit être au-dessus de zéro pour une consommation</translation>
    </message>
    <message>
        <source>such as 60 mpg(imp)</source>
        <translation>par exemple 60 mpg(imp)</translation>
    </message>
    <message>
        <source>must not be zero for a consumption</source>
        <translation>ne peut pas être nul pour une consommation</translation>
    </message>
    <message>
        <source>such as 3.5 L/100km</source>
        <translation>par exemple 3.5 L/100km</translation>
    </message>
    <message>
        <source>must be above zero for a wire</source>
        <translation>doit être au-dessus de zéro pour un fil</translation>
    </message>
    <message>
        <source>such as 0.75 mm2</source>
        <translation>par exemple 0.75 mm2</translation>
    </message>
    <message>
        <source>is below absolute zero</source>
        <translation>est sous le zéro absolu</translation>
    </message>
    <message>
        <source>-273.15 degC and more</source>
        <translation>-273,15 degC et plus</translation>
    </message>
    <message>
        <source>an absolute pressure cannot be negative</source>
        <translation>une pression absolue ne peut pas être négative</translation>
    </message>
    <message>
        <source>0 and more</source>
        <translation>0 et plus</translation>
    </message>
    <message>
        <source>a date such as 2026-11-25</source>
        <translation>une date comme 2026-11-25</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un nombre</translation>
    </message>
    <message>
        <source>is out of range</source>
        <translation>est hors plage</translation>
    </message>
    <message>
        <source>is not one of the choices</source>
        <translation>n&apos;est pas un des choix</translation>
    </message>
    <message>
        <source>is so long that the beam would reach the ground first</source>
        <translation>est si longue que le faisceau toucherait d&apos;abord le sol</translation>
    </message>
    <message>
        <source>up to %1 m for this lamp height</source>
        <translation>jusqu&apos;à %1 m pour cette hauteur de phare</translation>
    </message>
    <message>
        <source>is not below the first pressure</source>
        <translation>n&apos;est pas sous la première pression</translation>
    </message>
    <message>
        <source>below %1 kPa gauge</source>
        <translation>sous %1 kPa gauge</translation>
    </message>
    <message>
        <source>from the second reading down to %1 kPa: %2 days</source>
        <translation>de la seconde mesure jusqu&apos;à %1 kPa&#xa0;: %2 jours</translation>
    </message>
    <message>
        <source>a time such as 6 months, 1 year or 90 days</source>
        <translation>un temps comme 6 months, 1 year ou 90 days</translation>
    </message>
    <message>
        <source>a whole number of months or years</source>
        <translation>un nombre entier de mois ou d&apos;années</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>manque</translation>
    </message>
    <message>
        <source>a distance such as 3000 km</source>
        <translation>une distance comme 3000 km</translation>
    </message>
    <message>
        <source>above 0 km</source>
        <translation>au-dessus de 0 km</translation>
    </message>
    <message>
        <source>0 to 10000000 km</source>
        <translation>0 à 10000000 km</translation>
    </message>
    <message>
        <source>is no mixture for a two-stroke</source>
        <translation>n&apos;est pas un mélange pour un deux-temps</translation>
    </message>
    <message>
        <source>is missing, and so is limit_low</source>
        <translation>manque, et limit_low aussi</translation>
    </message>
    <message>
        <source>a connection is not corrected for temperature</source>
        <translation>une connexion n&apos;est pas corrigée de la température</translation>
    </message>
    <message>
        <source>is above limit_high</source>
        <translation>est au-dessus de limit_high</translation>
    </message>
    <message>
        <source>the manual&apos;s two figures, the smaller first</source>
        <translation>les deux valeurs du manuel, la plus petite d&apos;abord</translation>
    </message>
    <message>
        <source>is too thin for that clearance: nothing would be left of the new one</source>
        <translation>est trop mince pour ce jeu&#xa0;: il ne resterait rien de la nouvelle</translation>
    </message>
    <message>
        <source>check the three figures; the valve may not seat</source>
        <translation>vérifier les trois valeurs&#xa0;; la soupape ne porte peut-être pas</translation>
    </message>
    <message>
        <source>stands beside a true distance: give one of them</source>
        <translation>est à côté d&apos;une vraie distance&#xa0;: donner l&apos;une des deux</translation>
    </message>
    <message>
        <source>is missing, and so is true_distance</source>
        <translation>manque, et true_distance aussi</translation>
    </message>
    <message>
        <source>one of true_distance and true_speed</source>
        <translation>l&apos;un de true_distance et true_speed</translation>
    </message>
    <message>
        <source>a distance, such as 10.4 km</source>
        <translation>une distance, par exemple 10.4 km</translation>
    </message>
    <message>
        <source>a speed, such as 52 km/h</source>
        <translation>une vitesse, par exemple 52 km/h</translation>
    </message>
    <message>
        <source>0 to 1000000 km</source>
        <translation>0 à 1000000 km</translation>
    </message>
    <message>
        <source>0 to 400 km/h</source>
        <translation>0 à 400 km/h</translation>
    </message>
    <message>
        <source>must be a whole number</source>
        <translation>doit être un nombre entier</translation>
    </message>
    <message>
        <source>1, 2, 3 and so on</source>
        <translation>1, 2, 3 et ainsi de suite</translation>
    </message>
    <message>
        <source>is not longer than half the stroke</source>
        <translation>n&apos;est pas plus longue que la demi-course</translation>
    </message>
    <message>
        <source>more than %1 mm; about twice the stroke is usual</source>
        <translation>plus de %1 mm&#xa0;; environ deux fois la course est courant</translation>
    </message>
    <message>
        <source>stands beside a travel: give one of them</source>
        <translation>est à côté d&apos;une course&#xa0;: donner l&apos;une des deux</translation>
    </message>
    <message>
        <source>is missing, and so is travel</source>
        <translation>manque, et travel aussi</translation>
    </message>
    <message>
        <source>one of degrees and travel</source>
        <translation>l&apos;un de degrees et travel</translation>
    </message>
    <message>
        <source>is more than the stroke</source>
        <translation>est plus que la course</translation>
    </message>
    <message>
        <source>turned back so far the adapter leaves no arm</source>
        <translation>tourné si loin en arrière, l&apos;adaptateur ne laisse pas de bras</translation>
    </message>
    <message>
        <source>an adapter shorter than %1 mm, or another angle</source>
        <translation>un adaptateur de moins de %1 mm, ou un autre angle</translation>
    </message>
    <message>
        <source>up to 50 cc: every original groove must show</source>
        <translation>jusqu&apos;à 50 cc&#xa0;: chaque rainure d&apos;origine doit se voir</translation>
    </message>
    <message>
        <source>is not a date code</source>
        <translation>n&apos;est pas un code de date</translation>
    </message>
    <message>
        <source>names week %1, which does not exist</source>
        <translation>nomme la semaine %1, qui n&apos;existe pas</translation>
    </message>
    <message>
        <source>lies in the future: week %1 of %2 began on %3</source>
        <translation>est dans le futur&#xa0;: la semaine %1 de %2 a commencé le %3</translation>
    </message>
    <message>
        <source>a week 53 is rare: read the code again</source>
        <translation>une semaine 53 est rare&#xa0;: relire le code</translation>
    </message>
    <message>
        <source>such as 100/90-10 56J, 120/70 R 12 58P or 3.50-10 59J</source>
        <translation>par exemple 100/90-10 56J, 120/70 R 12 58P ou 3.50-10 59J</translation>
    </message>
    <message>
        <source>is too long for a tyre marking</source>
        <translation>est trop long pour un marquage de pneu</translation>
    </message>
    <message>
        <source>is not a marking that is read here</source>
        <translation>n&apos;est pas un marquage lu ici</translation>
    </message>
    <message>
        <source>has a width, aspect or rim beyond motorcycle tyres</source>
        <translation>a une largeur, un rapport ou une jante au-delà des pneus de moto</translation>
    </message>
    <message>
        <source>an inch marking names no height: it is taken as equal to the width (common practice, no source)</source>
        <translation>un marquage en pouces ne dit pas la hauteur&#xa0;: prise égale à la largeur (pratique courante, sans source)</translation>
    </message>
    <message>
        <source>would end below the ambient pressure: the tyre is flat there</source>
        <translation>finirait sous la pression ambiante&#xa0;: le pneu y est à plat</translation>
    </message>
    <message>
        <source>a higher pressure at the start</source>
        <translation>une pression de départ plus haute</translation>
    </message>
    <message>
        <source>is no frame number</source>
        <translation>n&apos;est pas un numéro de cadre</translation>
    </message>
    <message>
        <source>17 characters, or an older number as stamped</source>
        <translation>17 caractères, ou un numéro ancien comme frappé</translation>
    </message>
    <message>
        <source>read it again: 1 for I, 0 for O and Q</source>
        <translation>le relire&#xa0;: 1 pour I, 0 pour O et Q</translation>
    </message>
    <message>
        <source>a right check digit does not prove the number: letters and digits share values</source>
        <translation>un chiffre de contrôle juste ne prouve pas le numéro&#xa0;: lettres et chiffres partagent des valeurs</translation>
    </message>
    <message>
        <source>is needed: this limit is 0.20 V for each 100 A</source>
        <translation>est requis&#xa0;: cette limite est de 0,20 V par 100 A</translation>
    </message>
    <message>
        <source>is the same as new: nothing could wear</source>
        <translation>est pareil que neuf&#xa0;: rien ne pourrait s&apos;user</translation>
    </message>
    <message>
        <source>is better than new</source>
        <translation>est mieux que neuf</translation>
    </message>
    <message>
        <source>up to %1 mm</source>
        <translation>jusqu&apos;à %1 mm</translation>
    </message>
    <message>
        <source>stands beside a power: give one of them</source>
        <translation>est à côté d&apos;une puissance&#xa0;: donner l&apos;un des deux</translation>
    </message>
    <message>
        <source>is missing, and so is power</source>
        <translation>manque, et power aussi</translation>
    </message>
    <message>
        <source>one of current and power</source>
        <translation>l&apos;un de current et power</translation>
    </message>
    <message>
        <source>0.03 to 100 mm2, or 32 to 1 AWG</source>
        <translation>0.03 à 100 mm2, ou 32 à 1 AWG</translation>
    </message>
    <message>
        <source>would lose %1 V of %2 V in the wire</source>
        <translation>perdrait %1 V sur %2 V dans le fil</translation>
    </message>
    <message>
        <source>a thicker wire, a shorter one or a smaller load</source>
        <translation>un fil plus gros, plus court ou moins de charge</translation>
    </message>
    <message>
        <source>above %1</source>
        <translation>au-dessus de %1</translation>
    </message>
    <message>
        <source>from %1 up</source>
        <translation>à partir de %1</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>jusqu&apos;à %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>de %1 à %2</translation>
    </message>
    <message>
        <source>above %1 up to %2</source>
        <translation>au-dessus de %1 jusqu&apos;à %2</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>l&apos;un de %1</translation>
    </message>
    <message>
        <source>is missing (%1)</source>
        <translation>manque (%1)</translation>
    </message>
    <message>
        <source>%1, a fine pitch written as M10x1.25</source>
        <translation>%1, un pas fin écrit comme M10x1.25</translation>
    </message>
    <message>
        <source>a pitch from 0.2 to %1 mm (the coarse one)</source>
        <translation>un pas de 0.2 à %1 mm (le gros)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is neither a bulb type nor a power</source>
        <translation>&quot;%1&quot; n&apos;est ni un type d&apos;ampoule ni une puissance</translation>
    </message>
    <message>
        <source>watts such as 5 W or 35/35 W, or one of %1; &quot;2 x P21W&quot; for two</source>
        <translation>watts comme 5 W ou 35/35 W, ou l&apos;un de %1&#xa0;; &quot;2 x P21W&quot; pour deux</translation>
    </message>
    <message>
        <source>has no rule on file for %1</source>
        <translation>n&apos;a pas de règle connue pour %1</translation>
    </message>
    <message>
        <source>weeks 01 to 53; %1</source>
        <translation>semaines 01 à 53&#xa0;; %1</translation>
    </message>
    <message>
        <source>a code up to today, %1</source>
        <translation>un code jusqu&apos;à aujourd&apos;hui, %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>specific gravity at 26.7 degC: %1 + 0.004 x (%2 F - 80)/10 = %3</source>
        <translation>densité à 26,7 degC&#xa0;: %1 + 0,004 x (%2 F - 80)/10 = %3</translation>
    </message>
    <message>
        <source>K = %1 as given</source>
        <translation>K = %1 comme donné</translation>
    </message>
    <message>
        <source>preload F = T/(K d) = %1 N.m/(%2 x %3 mm) = %4 N</source>
        <translation>précharge F = T/(K d) = %1 N.m/(%2 x %3 mm) = %4 N</translation>
    </message>
    <message>
        <source>stress area As = pi/4 (d - 0.938194 P)^2 = %1 mm2, %2 mm2 in the table</source>
        <translation>section résistante As = pi/4 (d - 0.938194 P)^2 = %1 mm2, %2 mm2 au tableau</translation>
    </message>
    <message>
        <source>preload F = %1 x %2 MPa x %3 mm2 = %4 N</source>
        <translation>précharge F = %1 x %2 MPa x %3 mm2 = %4 N</translation>
    </message>
    <message>
        <source>torque T = K d F = %1 x %2 mm x %3 N = %4 N.m</source>
        <translation>couple T = K d F = %1 x %2 mm x %3 N = %4 N.m</translation>
    </message>
    <message>
        <source>swept volume = pi/4 x (%1 mm)^2 x %2 mm = %3 cm3</source>
        <translation>cylindrée = pi/4 x (%1 mm)^2 x %2 mm = %3 cm3</translation>
    </message>
    <message>
        <source>ratio = (%1 + %2)/%3 = %4</source>
        <translation>taux = (%1 + %2)/%3 = %4</translation>
    </message>
    <message>
        <source>line = pi/4 x (%1 mm)^2 x %2 m = %3 mL</source>
        <translation>conduite = pi/4 x (%1 mm)^2 x %2 m = %3 mL</translation>
    </message>
    <message>
        <source>system = %1 + %2 + %3 = %4 mL</source>
        <translation>circuit = %1 + %2 + %3 = %4 mL</translation>
    </message>
    <message>
        <source>speed = %1 rpm/%2 x %3 m x 60/1000 = %4 km/h</source>
        <translation>vitesse = %1 rpm/%2 x %3 m x 60/1000 = %4 km/h</translation>
    </message>
    <message>
        <source>mean piston speed = S n/30000 = %1 m/s</source>
        <translation>vitesse moyenne du piston = S n/30000 = %1 m/s</translation>
    </message>
    <message>
        <source>drop = per cent/100 x distance = %1 to %2 mm</source>
        <translation>rabattement = pour cent/100 x distance = %1 à %2 mm</translation>
    </message>
    <message>
        <source>jet = %1 x ratio^%2 = %3</source>
        <translation>gicleur = %1 x rapport^%2 = %3</translation>
    </message>
    <message>
        <source>spare = %1 W - %2 W = %3 W</source>
        <translation>reste = %1 W - %2 W = %3 W</translation>
    </message>
    <message>
        <source>second reading at the first temperature: (%1 + %2) x %3 K/%4 K - %5 = %6 kPa</source>
        <translation>seconde mesure à la première température&#xa0;: (%1 + %2) x %3 K/%4 K - %5 = %6 kPa</translation>
    </message>
    <message>
        <source>lost: %1 kPa in %2 days = %3 kPa a day</source>
        <translation>perdu&#xa0;: %1 kPa en %2 jours = %3 kPa par jour</translation>
    </message>
    <message>
        <source>%1 + %2 = %3; from %4 that is %5 days</source>
        <translation>%1 + %2 = %3&#xa0;; depuis le %4, cela fait %5 jours</translation>
    </message>
    <message>
        <source>%1 + %2 = %3 km; now %4 km: %5 km left</source>
        <translation>%1 + %2 = %3 km&#xa0;; maintenant %4 km&#xa0;: reste %5 km</translation>
    </message>
    <message>
        <source>oil = finished mix/(ratio + 1) = %1 L/(%2 + 1) = %3 mL</source>
        <translation>huile = mélange fini/(rapport + 1) = %1 L/(%2 + 1) = %3 mL</translation>
    </message>
    <message>
        <source>oil = fuel/ratio = %1 L/%2 = %3 mL</source>
        <translation>huile = essence/rapport = %1 L/%2 = %3 mL</translation>
    </message>
    <message>
        <source>at 20 degC: %1 ohm/(1 + 0.00393 x (%2 - 20)) = %3 ohm</source>
        <translation>à 20 degC&#xa0;: %1 ohm/(1 + 0.00393 x (%2 - 20)) = %3 ohm</translation>
    </message>
    <message>
        <source>new shim = %1 + %2 - %3 = %4 mm</source>
        <translation>cale neuve = %1 + %2 - %3 = %4 mm</translation>
    </message>
    <message>
        <source>error = (shown - true)/true = (%1 - %2)/%3 = %4 %</source>
        <translation>erreur = (affiché - vrai)/vrai = (%1 - %2)/%3 = %4 %</translation>
    </message>
    <message>
        <source>charge = %1 A x %2 h = %3 Ah of %4 Ah: %5 %</source>
        <translation>charge = %1 A x %2 h = %3 Ah sur %4 Ah&#xa0;: %5 %</translation>
    </message>
    <message>
        <source>arc = pi D a/360 = %1 mm; chord = D sin(a/2) = %2 mm</source>
        <translation>arc = pi D a/360 = %1 mm&#xa0;; corde = D sin(a/2) = %2 mm</translation>
    </message>
    <message>
        <source>setting = torque x L/(L + E cos a) = %1 N.m x %2</source>
        <translation>réglage = couple x L/(L + E cos a) = %1 N.m x %2</translation>
    </message>
    <message>
        <source>diameter = %1 in x 25.4 + 2 x %2 mm x %3 = %4 mm</source>
        <translation>diamètre = %1 in x 25.4 + 2 x %2 mm x %3 = %4 mm</translation>
    </message>
    <message>
        <source>absolute before: %1 + %2 = %3 kPa</source>
        <translation>absolue avant&#xa0;: %1 + %2 = %3 kPa</translation>
    </message>
    <message>
        <source>absolute after: x (%1 K / %2 K) = %3 kPa</source>
        <translation>absolue après&#xa0;: x (%1 K / %2 K) = %3 kPa</translation>
    </message>
    <message>
        <source>gauge after: less ambient %1 kPa = %2 kPa</source>
        <translation>relative après&#xa0;: moins ambiante %1 kPa = %2 kPa</translation>
    </message>
    <message>
        <source>sum of value x weight = %1, mod 11 = %2: check digit %3, position 9 shows %4</source>
        <translation>somme de valeur x poids = %1, mod 11 = %2&#xa0;: chiffre de contrôle %3, la position 9 montre %4</translation>
    </message>
    <message>
        <source>resistance = %1 V/%2 A = %3 ohm</source>
        <translation>résistance = %1 V/%2 A = %3 ohm</translation>
    </message>
    <message>
        <source>current = %1 W/%2 V = %3 A</source>
        <translation>courant = %1 W/%2 V = %3 A</translation>
    </message>
    <message>
        <source>drop = I R L = %1 A x %2 mohm/m x %3 m = %4 V</source>
        <translation>chute = I R L = %1 A x %2 mohm/m x %3 m = %4 V</translation>
    </message>
    <message>
        <source>0 straight ahead, 90 square, 180 turned back</source>
        <translation>0 tout droit, 90 d&apos;équerre, 180 en arrière</translation>
    </message>
    <message>
        <source>2 where the return is a wire as well</source>
        <translation>2 là où le retour est aussi un fil</translation>
    </message>
    <message>
        <source>6 months, 1 year, 90 days or 3000 km</source>
        <translation>6 months, 1 year, 90 days ou 3000 km</translation>
    </message>
    <message>
        <source>A starting point for the main jet at another height or temperature.</source>
        <translation>Un point de départ pour le gicleur principal à une autre altitude ou température.</translation>
    </message>
    <message>
        <source>A torque for a bolt of known thread and class where the manual gives none.</source>
        <translation>Un couple pour une vis de filetage et classe connus où le manuel n&apos;en donne pas.</translation>
    </message>
    <message>
        <source>A winding&apos;s resistance brought to 20 degC and held against its limits; an earth or a continuity as it is.</source>
        <translation>La résistance d&apos;un enroulement ramenée à 20 degC et comparée à ses limites&#xa0;; une masse ou une continuité telle quelle.</translation>
    </message>
    <message>
        <source>AGM, sealed</source>
        <translation>AGM, scellée</translation>
    </message>
    <message>
        <source>Adapter length E</source>
        <translation>Longueur d&apos;adaptateur E</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Âge</translation>
    </message>
    <message>
        <source>Age limit of the shop</source>
        <translation>Limite d&apos;âge de l&apos;atelier</translation>
    </message>
    <message>
        <source>Age of a tyre</source>
        <translation>Âge d&apos;un pneu</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitude</translation>
    </message>
    <message>
        <source>Altitude now</source>
        <translation>Altitude actuelle</translation>
    </message>
    <message>
        <source>Altitude then</source>
        <translation>Altitude alors</translation>
    </message>
    <message>
        <source>Altitude there</source>
        <translation>Altitude là-bas</translation>
    </message>
    <message>
        <source>Angle a</source>
        <translation>Angle a</translation>
    </message>
    <message>
        <source>Arc on the flywheel</source>
        <translation>Arc sur le volant</translation>
    </message>
    <message>
        <source>Assumption</source>
        <translation>Hypothèse</translation>
    </message>
    <message>
        <source>At idle</source>
        <translation>Au ralenti</translation>
    </message>
    <message>
        <source>At rest</source>
        <translation>Au repos</translation>
    </message>
    <message>
        <source>At revs</source>
        <translation>En régime</translation>
    </message>
    <message>
        <source>At sea level</source>
        <translation>Au niveau de la mer</translation>
    </message>
    <message>
        <source>Austria</source>
        <translation>Autriche</translation>
    </message>
    <message>
        <source>Battery voltage at rest, at idle and at revs: whether the charging system works and what to look at.</source>
        <translation>Tension de batterie au repos, au ralenti et en régime&#xa0;: si la charge marche et où regarder.</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Alésage</translation>
    </message>
    <message>
        <source>Bore of line</source>
        <translation>Diamètre intérieur</translation>
    </message>
    <message>
        <source>Brake fluid</source>
        <translation>Liquide de frein</translation>
    </message>
    <message>
        <source>Caliper or cylinder</source>
        <translation>Étrier ou cylindre</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Capacité</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>Chambre</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Changement</translation>
    </message>
    <message>
        <source>Charge</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Charge lost</source>
        <translation>Charge perdue</translation>
    </message>
    <message>
        <source>Charge of a battery</source>
        <translation>Charge de la batterie</translation>
    </message>
    <message>
        <source>Check digit</source>
        <translation>Chiffre de contrôle</translation>
    </message>
    <message>
        <source>Chord on the flywheel</source>
        <translation>Corde sur le volant</translation>
    </message>
    <message>
        <source>Circumference</source>
        <translation>Circonférence</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Classe</translation>
    </message>
    <message>
        <source>Clearance measured</source>
        <translation>Jeu mesuré</translation>
    </message>
    <message>
        <source>Clearance wanted</source>
        <translation>Jeu voulu</translation>
    </message>
    <message>
        <source>Clearance with the nearest</source>
        <translation>Jeu avec la plus proche</translation>
    </message>
    <message>
        <source>Coefficient of friction</source>
        <translation>Coefficient de frottement</translation>
    </message>
    <message>
        <source>Colour of the fuse</source>
        <translation>Couleur du fusible</translation>
    </message>
    <message>
        <source>Compression ratio</source>
        <translation>Taux de compression</translation>
    </message>
    <message>
        <source>Compression reading and altitude</source>
        <translation>Compression et altitude</translation>
    </message>
    <message>
        <source>Conductors</source>
        <translation>Conducteurs</translation>
    </message>
    <message>
        <source>Connecting rod</source>
        <translation>Bielle</translation>
    </message>
    <message>
        <source>Content of the system</source>
        <translation>Contenu du circuit</translation>
    </message>
    <message>
        <source>Convert a unit</source>
        <translation>Convertir une unité</translation>
    </message>
    <message>
        <source>Country</source>
        <translation>Pays</translation>
    </message>
    <message>
        <source>Crank angle</source>
        <translation>Angle de vilebrequin</translation>
    </message>
    <message>
        <source>Crank angle to piston travel and back, and the mark on the flywheel.</source>
        <translation>De l&apos;angle de vilebrequin à la course du piston et retour, et le repère du volant.</translation>
    </message>
    <message>
        <source>Cross-section</source>
        <translation>Section</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Courant</translation>
    </message>
    <message>
        <source>Current of the load</source>
        <translation>Courant de la charge</translation>
    </message>
    <message>
        <source>Current, voltage drop and fuse for a load at the end of a wire.</source>
        <translation>Courant, chute de tension et fusible pour une charge au bout d&apos;un fil.</translation>
    </message>
    <message>
        <source>DOT 3, DOT 4, DOT 5, DOT 5.1 or mineral</source>
        <translation>DOT 3, DOT 4, DOT 5, DOT 5.1 ou mineral</translation>
    </message>
    <message>
        <source>DOT 3, DOT 4, DOT 5, DOT 5.1, mineral or unknown</source>
        <translation>DOT 3, DOT 4, DOT 5, DOT 5.1, mineral ou unknown</translation>
    </message>
    <message>
        <source>DOT 5 (silicone) and DOT 5.1 (glycol) sound alike and never mix</source>
        <translation>DOT 5 (silicone) et DOT 5.1 (glycol) se ressemblent de nom et ne se mélangent jamais</translation>
    </message>
    <message>
        <source>Date code</source>
        <translation>Code de date</translation>
    </message>
    <message>
        <source>Days standing</source>
        <translation>Jours d&apos;arrêt</translation>
    </message>
    <message>
        <source>Days to the limit</source>
        <translation>Jours jusqu&apos;à la limite</translation>
    </message>
    <message>
        <source>Days until the limit</source>
        <translation>Jours jusqu&apos;à la limite</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Masse volumique</translation>
    </message>
    <message>
        <source>Density altitude</source>
        <translation>Altitude-densité</translation>
    </message>
    <message>
        <source>Density of the air</source>
        <translation>Masse volumique de l&apos;air</translation>
    </message>
    <message>
        <source>Density ratio</source>
        <translation>Rapport de densité</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profondeur</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Diamètre</translation>
    </message>
    <message>
        <source>Displacement of one cylinder</source>
        <translation>Cylindrée unitaire</translation>
    </message>
    <message>
        <source>Distance so far</source>
        <translation>Distance jusqu&apos;ici</translation>
    </message>
    <message>
        <source>Distance to the wall</source>
        <translation>Distance au mur</translation>
    </message>
    <message>
        <source>Does it charge?</source>
        <translation>Est-ce que ça charge&#xa0;?</translation>
    </message>
    <message>
        <source>Drain while standing</source>
        <translation>Décharge à l&apos;arrêt</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Chute</translation>
    </message>
    <message>
        <source>Drop measured</source>
        <translation>Rabattement mesuré</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Échéance</translation>
    </message>
    <message>
        <source>Engine speed</source>
        <translation>Régime moteur</translation>
    </message>
    <message>
        <source>Error</source>
        <translation>Erreur</translation>
    </message>
    <message>
        <source>Every</source>
        <translation>Tous les</translation>
    </message>
    <message>
        <source>Exhaust port</source>
        <translation>Lumière d&apos;échappement</translation>
    </message>
    <message>
        <source>Factor</source>
        <translation>Facteur</translation>
    </message>
    <message>
        <source>Final torque</source>
        <translation>Couple final</translation>
    </message>
    <message>
        <source>Finished mix</source>
        <translation>Mélange fini</translation>
    </message>
    <message>
        <source>First pressure</source>
        <translation>Première pression</translation>
    </message>
    <message>
        <source>First temperature</source>
        <translation>Première température</translation>
    </message>
    <message>
        <source>Fluid for a flush</source>
        <translation>Liquide pour la purge</translation>
    </message>
    <message>
        <source>Flywheel diameter</source>
        <translation>Diamètre du volant</translation>
    </message>
    <message>
        <source>Frame number</source>
        <translation>Numéro de cadre</translation>
    </message>
    <message>
        <source>Friction under the head</source>
        <translation>Frottement sous tête</translation>
    </message>
    <message>
        <source>From bore, stroke and the volume of the chamber.</source>
        <translation>De l&apos;alésage, de la course et du volume de chambre.</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Essence</translation>
    </message>
    <message>
        <source>Fuse</source>
        <translation>Fusible</translation>
    </message>
    <message>
        <source>Generator</source>
        <translation>Alternateur</translation>
    </message>
    <message>
        <source>Germany</source>
        <translation>Allemagne</translation>
    </message>
    <message>
        <source>Greatest angle</source>
        <translation>Angle maximal</translation>
    </message>
    <message>
        <source>Greatest drop</source>
        <translation>Rabattement maximal</translation>
    </message>
    <message>
        <source>H4 (P43t) and HS1 (PX43t) are not alike: do not swap them</source>
        <translation>H4 (P43t) et HS1 (PX43t) ne sont pas pareilles&#xa0;: ne pas les échanger</translation>
    </message>
    <message>
        <source>Headlamp aim</source>
        <translation>Réglage du phare</translation>
    </message>
    <message>
        <source>Height of the lamp</source>
        <translation>Hauteur du phare</translation>
    </message>
    <message>
        <source>How far speedometer or odometer are out.</source>
        <translation>De combien se trompent compteur de vitesse ou totalisateur.</translation>
    </message>
    <message>
        <source>How fast a tyre or a crankcase loses air, with the temperature taken out.</source>
        <translation>À quelle vitesse un pneu ou un carter perd de l&apos;air, température ôtée.</translation>
    </message>
    <message>
        <source>How full a lead-acid battery is, from its rested voltage or its acid.</source>
        <translation>À quel point une batterie au plomb est pleine, par sa tension au repos ou son acide.</translation>
    </message>
    <message>
        <source>How much air there is for the engine to breathe.</source>
        <translation>Combien d&apos;air le moteur a à respirer.</translation>
    </message>
    <message>
        <source>How much brake or clutch fluid to have ready before the circuit is opened.</source>
        <translation>Combien de liquide de frein ou d&apos;embrayage préparer avant d&apos;ouvrir le circuit.</translation>
    </message>
    <message>
        <source>How much of the battery a standing current takes until the next ride.</source>
        <translation>Combien de la batterie un courant de repos prend jusqu&apos;à la prochaine sortie.</translation>
    </message>
    <message>
        <source>How much oil goes into the fuel.</source>
        <translation>Combien d&apos;huile va dans l&apos;essence.</translation>
    </message>
    <message>
        <source>Ignition timing</source>
        <translation>Avance à l&apos;allumage</translation>
    </message>
    <message>
        <source>In the machine</source>
        <translation>Dans le véhicule</translation>
    </message>
    <message>
        <source>In which order and stages to tighten several bolts of one joint.</source>
        <translation>Dans quel ordre et quelles étapes serrer plusieurs vis d&apos;un assemblage.</translation>
    </message>
    <message>
        <source>Jet</source>
        <translation>Gicleur</translation>
    </message>
    <message>
        <source>Jet now</source>
        <translation>Gicleur actuel</translation>
    </message>
    <message>
        <source>Lamps</source>
        <translation>Lampes</translation>
    </message>
    <message>
        <source>Lamps and generator</source>
        <translation>Lampes et alternateur</translation>
    </message>
    <message>
        <source>Last done</source>
        <translation>Fait la dernière fois</translation>
    </message>
    <message>
        <source>Law</source>
        <translation>Loi</translation>
    </message>
    <message>
        <source>Least angle</source>
        <translation>Angle minimal</translation>
    </message>
    <message>
        <source>Least drop</source>
        <translation>Rabattement minimal</translation>
    </message>
    <message>
        <source>Least dry boiling point</source>
        <translation>Ébullition minimale à sec</translation>
    </message>
    <message>
        <source>Least wet boiling point</source>
        <translation>Ébullition minimale humide</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Reste</translation>
    </message>
    <message>
        <source>Length of line</source>
        <translation>Longueur de conduite</translation>
    </message>
    <message>
        <source>Length of wire</source>
        <translation>Longueur du fil</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Limit of the manual</source>
        <translation>Limite du manuel</translation>
    </message>
    <message>
        <source>Limit of the thread</source>
        <translation>Limite du filet</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Loss</source>
        <translation>Perte</translation>
    </message>
    <message>
        <source>Loss of pressure</source>
        <translation>Perte de pression</translation>
    </message>
    <message>
        <source>Loss per day</source>
        <translation>Perte par jour</translation>
    </message>
    <message>
        <source>Loss that is allowed</source>
        <translation>Perte admise</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>Limite basse</translation>
    </message>
    <message>
        <source>Lower limit of the manual</source>
        <translation>Limite basse du manuel</translation>
    </message>
    <message>
        <source>Lowest allowed</source>
        <translation>Minimum admis</translation>
    </message>
    <message>
        <source>M3 to M16, property classes 4.6 to 12.9 of ISO 898-1</source>
        <translation>M3 à M16, classes 4.6 à 12.9 d&apos;ISO 898-1</translation>
    </message>
    <message>
        <source>Made from</source>
        <translation>Fait dès le</translation>
    </message>
    <message>
        <source>Made to</source>
        <translation>Fait avant le</translation>
    </message>
    <message>
        <source>Main jet in other air</source>
        <translation>Gicleur principal dans un autre air</translation>
    </message>
    <message>
        <source>Marking</source>
        <translation>Marquage</translation>
    </message>
    <message>
        <source>Marking of a tyre</source>
        <translation>Marquage d&apos;un pneu</translation>
    </message>
    <message>
        <source>Maryland</source>
        <translation>Maryland</translation>
    </message>
    <message>
        <source>May mix</source>
        <translation>Mélange permis</translation>
    </message>
    <message>
        <source>Mean bearing diameter</source>
        <translation>Diamètre moyen d&apos;appui</translation>
    </message>
    <message>
        <source>Mean piston speed</source>
        <translation>Vitesse moyenne du piston</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Mesuré</translation>
    </message>
    <message>
        <source>Nearest in steps</source>
        <translation>Plus proche</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neuf</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Étape suivante</translation>
    </message>
    <message>
        <source>Nominal voltage</source>
        <translation>Tension nominale</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Maintenant</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Number of bolts</source>
        <translation>Nombre de vis</translation>
    </message>
    <message>
        <source>Numbered by</source>
        <translation>Numérotés par</translation>
    </message>
    <message>
        <source>Nut factor K</source>
        <translation>Facteur K</translation>
    </message>
    <message>
        <source>Oil</source>
        <translation>Huile</translation>
    </message>
    <message>
        <source>Order of tightening</source>
        <translation>Ordre de serrage</translation>
    </message>
    <message>
        <source>Overall ratio</source>
        <translation>Rapport total</translation>
    </message>
    <message>
        <source>Part of the circuit</source>
        <translation>Partie du circuit</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Piston travel</source>
        <translation>Course du piston</translation>
    </message>
    <message>
        <source>Possible years</source>
        <translation>Années possibles</translation>
    </message>
    <message>
        <source>Power correction SAE J1349</source>
        <translation>Correction de puissance SAE J1349</translation>
    </message>
    <message>
        <source>Power lost</source>
        <translation>Puissance perdue</translation>
    </message>
    <message>
        <source>Power of the load</source>
        <translation>Puissance de la charge</translation>
    </message>
    <message>
        <source>Preload</source>
        <translation>Précharge</translation>
    </message>
    <message>
        <source>Preload from a torque</source>
        <translation>Précharge d&apos;un couple</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Pression</translation>
    </message>
    <message>
        <source>Proof load</source>
        <translation>Charge d&apos;épreuve</translation>
    </message>
    <message>
        <source>Property class</source>
        <translation>Classe de qualité</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Rapport</translation>
    </message>
    <message>
        <source>Ratio to standard air</source>
        <translation>Rapport à l&apos;air normal</translation>
    </message>
    <message>
        <source>Ratio, to 1</source>
        <translation>Taux, pour 1</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation>Humidité relative</translation>
    </message>
    <message>
        <source>Remaining</source>
        <translation>Reste</translation>
    </message>
    <message>
        <source>Reservoir</source>
        <translation>Bocal</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Résistance</translation>
    </message>
    <message>
        <source>Resistance at 20 degC</source>
        <translation>Résistance à 20 degC</translation>
    </message>
    <message>
        <source>Resistance of a coil or connection</source>
        <translation>Résistance d&apos;une bobine ou connexion</translation>
    </message>
    <message>
        <source>Resistance, mohm/m</source>
        <translation>Résistance, mohm/m</translation>
    </message>
    <message>
        <source>Rider and luggage</source>
        <translation>Pilote et bagages</translation>
    </message>
    <message>
        <source>Rim</source>
        <translation>Jante</translation>
    </message>
    <message>
        <source>Road speed at an engine speed.</source>
        <translation>Vitesse sur route à un régime moteur.</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Règle</translation>
    </message>
    <message>
        <source>Second pressure</source>
        <translation>Seconde pression</translation>
    </message>
    <message>
        <source>Second reading at the first temperature</source>
        <translation>Seconde mesure à la première température</translation>
    </message>
    <message>
        <source>Second temperature</source>
        <translation>Seconde température</translation>
    </message>
    <message>
        <source>Share of proof load</source>
        <translation>Part de la charge d&apos;épreuve</translation>
    </message>
    <message>
        <source>Share of the voltage</source>
        <translation>Part de la tension</translation>
    </message>
    <message>
        <source>Shim</source>
        <translation>Cale</translation>
    </message>
    <message>
        <source>Shim fitted</source>
        <translation>Cale montée</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Affiché</translation>
    </message>
    <message>
        <source>Size, load and speed from what is moulded into the wall.</source>
        <translation>Taille, charge et vitesse d&apos;après le flanc.</translation>
    </message>
    <message>
        <source>Spare</source>
        <translation>Reste</translation>
    </message>
    <message>
        <source>Specific gravity</source>
        <translation>Densité de l&apos;acide</translation>
    </message>
    <message>
        <source>Specific gravity at 26.7 degC</source>
        <translation>Densité à 26,7 degC</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Vitesse</translation>
    </message>
    <message>
        <source>Speed from gearing</source>
        <translation>Vitesse selon la démultiplication</translation>
    </message>
    <message>
        <source>Speedometer error</source>
        <translation>Erreur du compteur de vitesse</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Étapes</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Étapes</translation>
    </message>
    <message>
        <source>Steps of the shims</source>
        <translation>Pas des cales</translation>
    </message>
    <message>
        <source>Stress area</source>
        <translation>Section résistante</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Course</translation>
    </message>
    <message>
        <source>System</source>
        <translation>Système</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Température</translation>
    </message>
    <message>
        <source>Temperature now</source>
        <translation>Température actuelle</translation>
    </message>
    <message>
        <source>Temperature of the wire</source>
        <translation>Température du fil</translation>
    </message>
    <message>
        <source>Temperature then</source>
        <translation>Température alors</translation>
    </message>
    <message>
        <source>Temperature there</source>
        <translation>Température là-bas</translation>
    </message>
    <message>
        <source>The next date or odometer reading for work that comes again.</source>
        <translation>La prochaine date ou le prochain compteur pour un travail qui revient.</translation>
    </message>
    <message>
        <source>The same quantity in another unit, by exact factors.</source>
        <translation>La même grandeur dans une autre unité, par facteurs exacts.</translation>
    </message>
    <message>
        <source>The volume is</source>
        <translation>Le volume est</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Filetage</translation>
    </message>
    <message>
        <source>Thread is in</source>
        <translation>Le filet est dans</translation>
    </message>
    <message>
        <source>Time between</source>
        <translation>Temps entre les deux</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Fois</translation>
    </message>
    <message>
        <source>Times the system&apos;s content</source>
        <translation>Fois le contenu du circuit</translation>
    </message>
    <message>
        <source>To</source>
        <translation>En</translation>
    </message>
    <message>
        <source>To be filled in</source>
        <translation>À mettre</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd&apos;hui</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Couple</translation>
    </message>
    <message>
        <source>Torque for a bolt</source>
        <translation>Couple pour une vis</translation>
    </message>
    <message>
        <source>Torque wanted</source>
        <translation>Couple voulu</translation>
    </message>
    <message>
        <source>Torque wrench with an adapter</source>
        <translation>Clé dynamométrique avec adaptateur</translation>
    </message>
    <message>
        <source>Tread depth</source>
        <translation>Profondeur de sculpture</translation>
    </message>
    <message>
        <source>True distance</source>
        <translation>Vraie distance</translation>
    </message>
    <message>
        <source>True speed</source>
        <translation>Vraie vitesse</translation>
    </message>
    <message>
        <source>Turn the beam</source>
        <translation>Tourner le faisceau</translation>
    </message>
    <message>
        <source>Two-stroke mixture</source>
        <translation>Mélange deux-temps</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>Tyre pressure in other weather or height</source>
        <translation>Pression du pneu, autre temps ou altitude</translation>
    </message>
    <message>
        <source>UK inspection</source>
        <translation>contrôle britannique</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Incertitude</translation>
    </message>
    <message>
        <source>United Kingdom</source>
        <translation>Royaume-Uni</translation>
    </message>
    <message>
        <source>United States, federal</source>
        <translation>États-Unis, fédéral</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>Limite haute</translation>
    </message>
    <message>
        <source>Upper limit of the manual</source>
        <translation>Limite haute du manuel</translation>
    </message>
    <message>
        <source>Valid</source>
        <translation>Valable</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Value in the unit wanted</source>
        <translation>Valeur dans l&apos;unité voulue</translation>
    </message>
    <message>
        <source>Valve shim</source>
        <translation>Cale de soupape</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Tension</translation>
    </message>
    <message>
        <source>Voltage at rest</source>
        <translation>Tension au repos</translation>
    </message>
    <message>
        <source>Voltage drop</source>
        <translation>Chute de tension</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volume</translation>
    </message>
    <message>
        <source>Wear and what remains</source>
        <translation>Usure et ce qui reste</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Semaine</translation>
    </message>
    <message>
        <source>What a gauge will show when the tyre is warmer, colder, higher or lower.</source>
        <translation>Ce que montrera l&apos;appareil quand le pneu est plus chaud, froid, haut ou bas.</translation>
    </message>
    <message>
        <source>What a torque does to a bolt: how near to its proof load.</source>
        <translation>Ce qu&apos;un couple fait à une vis&#xa0;: près de sa charge d&apos;épreuve ou non.</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Ce que c&apos;est</translation>
    </message>
    <message>
        <source>What the compression gauge would have shown at sea level, to compare with the manual.</source>
        <translation>Ce qu&apos;aurait montré le compressiomètre au niveau de la mer, à comparer au manuel.</translation>
    </message>
    <message>
        <source>What to set on the wrench when a crowfoot or extension lengthens it.</source>
        <translation>Que régler sur la clé quand un embout la rallonge.</translation>
    </message>
    <message>
        <source>When a tyre was made, from the date code on its wall.</source>
        <translation>Quand un pneu a été fait, d&apos;après le code de son flanc.</translation>
    </message>
    <message>
        <source>When it is due again</source>
        <translation>Quand c&apos;est à refaire</translation>
    </message>
    <message>
        <source>Where the cut-off of the dipped beam belongs on a wall, and which way to turn the lamp.</source>
        <translation>Où doit être la coupure du feu de croisement sur un mur, et de quel côté tourner le phare.</translation>
    </message>
    <message>
        <source>Where to look, likeliest first</source>
        <translation>Où regarder, le plus probable d&apos;abord</translation>
    </message>
    <message>
        <source>Whether a frame number was read rightly, and what years its code may mean.</source>
        <translation>Si un numéro de cadre a été bien lu, et quelles années son code peut dire.</translation>
    </message>
    <message>
        <source>Whether a lead, switch or earth loses too much.</source>
        <translation>Si un fil, un contact ou une masse perd trop.</translation>
    </message>
    <message>
        <source>Whether a new fluid may go onto what is in, and what it bears.</source>
        <translation>Si un nouveau liquide peut aller sur celui qui y est, et ce qu&apos;il supporte.</translation>
    </message>
    <message>
        <source>Whether a part is within its service limit and how far it will go at the same rate.</source>
        <translation>Si une pièce est dans sa limite d&apos;usure et jusqu&apos;où elle ira à ce rythme.</translation>
    </message>
    <message>
        <source>Whether the generator feeds all that is lit at once.</source>
        <translation>Si l&apos;alternateur nourrit tout ce qui est allumé à la fois.</translation>
    </message>
    <message>
        <source>Whether the tread is deep enough for the law of a place.</source>
        <translation>Si la sculpture est assez profonde pour la loi d&apos;un lieu.</translation>
    </message>
    <message>
        <source>Which shim brings the clearance to what is wanted.</source>
        <translation>Quelle cale amène le jeu voulu.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Largeur</translation>
    </message>
    <message>
        <source>Wire and fuse</source>
        <translation>Fil et fusible</translation>
    </message>
    <message>
        <source>Wrench length L</source>
        <translation>Longueur de clé L</translation>
    </message>
    <message>
        <source>Wrench setting</source>
        <translation>Réglage de la clé</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Année</translation>
    </message>
    <message>
        <source>a crankcase&apos;s accepted drop is the service manual&apos;s figure</source>
        <translation>la chute admise d&apos;un carter est celle du manuel d&apos;atelier</translation>
    </message>
    <message>
        <source>a date such as 2026-11-25 or a distance such as 12400 km</source>
        <translation>une date comme 2026-11-25 ou une distance comme 12400 km</translation>
    </message>
    <message>
        <source>a digital or sliding depth gauge without a better figure is taken to be good to 0.1 mm</source>
        <translation>une jauge numérique ou à coulisse sans meilleure donnée est prise juste à 0,1 mm</translation>
    </message>
    <message>
        <source>a drop means something only with the load current flowing</source>
        <translation>une chute ne dit quelque chose qu&apos;avec le courant de charge</translation>
    </message>
    <message>
        <source>a fuse protects the wire, not the load: never fit a larger one</source>
        <translation>un fusible protège le fil, pas la charge&#xa0;: ne jamais en mettre un plus gros</translation>
    </message>
    <message>
        <source>a generator gives its rating only at revs; ignition and charging need their share</source>
        <translation>un alternateur ne donne sa puissance qu&apos;en régime&#xa0;; allumage et charge veulent leur part</translation>
    </message>
    <message>
        <source>a legal tyre can be worn out: the maker&apos;s limit is often higher</source>
        <translation>un pneu légal peut être usé&#xa0;: la limite du fabricant est souvent plus haute</translation>
    </message>
    <message>
        <source>a loss smaller than the gauge&apos;s error is none that was measured</source>
        <translation>une perte plus petite que l&apos;erreur de l&apos;appareil n&apos;est pas mesurée</translation>
    </message>
    <message>
        <source>a metric thread such as M8 or M8x1.25: measure it, or read the parts list</source>
        <translation>un filetage métrique comme M8 ou M8x1.25&#xa0;: le mesurer ou lire la liste de pièces</translation>
    </message>
    <message>
        <source>a number with its unit, such as 25 lbf.ft</source>
        <translation>un nombre avec son unité, par exemple 25 lbf.ft</translation>
    </message>
    <message>
        <source>a pad at its backing plate, a cracked disc or a grooved drum is finished whatever the sum says</source>
        <translation>une plaquette au support, un disque fendu ou un tambour rayé est fini quoi que dise le calcul</translation>
    </message>
    <message>
        <source>a skimmed head raises the ratio: fuel and timing must suit it</source>
        <translation>une culasse rabotée monte le taux&#xa0;: essence et allumage doivent suivre</translation>
    </message>
    <message>
        <source>a starting point only: final jetting is by plug reading and the manual; a weak mixture seizes a two-stroke</source>
        <translation>un point de départ seulement&#xa0;: le réglage final se fait à la bougie et au manuel&#xa0;; trop pauvre, un deux-temps serre</translation>
    </message>
    <message>
        <source>a tank filled to the mark holds finished mix</source>
        <translation>un réservoir plein au repère contient du mélange fini</translation>
    </message>
    <message>
        <source>a tape lies along the arc, calipers measure the chord</source>
        <translation>un mètre suit l&apos;arc, un pied à coulisse mesure la corde</translation>
    </message>
    <message>
        <source>a tyre stretches a little: the real change is slightly smaller</source>
        <translation>un pneu s&apos;étire un peu&#xa0;: le vrai changement est un peu plus petit</translation>
    </message>
    <message>
        <source>a winding can pass cold and fail hot</source>
        <translation>un enroulement peut passer à froid et lâcher à chaud</translation>
    </message>
    <message>
        <source>a young tyre can be cracked, hard or damaged: look at it</source>
        <translation>un pneu jeune peut être fendu, dur ou abîmé&#xa0;: le regarder</translation>
    </message>
    <message>
        <source>above sea level</source>
        <translation>au-dessus de la mer</translation>
    </message>
    <message>
        <source>above sea level; the standard pressure there is used</source>
        <translation>au-dessus de la mer&#xa0;; la pression normale y est prise</translation>
    </message>
    <message>
        <source>acid burns and charging gas explodes: glasses, gloves, no sparks, negative lead off first</source>
        <translation>l&apos;acide brûle et le gaz de charge explose&#xa0;: lunettes, gants, pas d&apos;étincelles, négatif d&apos;abord</translation>
    </message>
    <message>
        <source>across, pair by pair</source>
        <translation>en croix, paire par paire</translation>
    </message>
    <message>
        <source>air bleeds, needle circuit and fuel change the result (common practice, no source)</source>
        <translation>gicleurs d&apos;air, aiguille et essence changent le résultat (pratique courante, sans source)</translation>
    </message>
    <message>
        <source>all that is left at top dead centre, by filling with oil</source>
        <translation>tout ce qui reste au point mort haut, par remplissage d&apos;huile</translation>
    </message>
    <message>
        <source>altitude as in the standard atmosphere; CIPM-2007 for 15 to 27 degC and 600 to 1100 hPa; dry and humid formula differ by 0.04 % at no humidity</source>
        <translation>altitude selon l&apos;atmosphère normale&#xa0;; CIPM-2007 pour 15 à 27 degC et 600 à 1100 hPa&#xa0;; les formules sèche et humide diffèrent de 0,04 % sans humidité</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>aluminium</translation>
    </message>
    <message>
        <source>an order printed in the manual or cast beside the bolts wins</source>
        <translation>un ordre du manuel ou fondu près des vis passe avant</translation>
    </message>
    <message>
        <source>as in the papers</source>
        <translation>comme sur les papiers</translation>
    </message>
    <message>
        <source>as stamped in the frame, 17 characters or an older number</source>
        <translation>comme frappé sur le cadre, 17 caractères ou un numéro ancien</translation>
    </message>
    <message>
        <source>as the gauge shows it</source>
        <translation>comme le montre l&apos;appareil</translation>
    </message>
    <message>
        <source>at the bolt, from the manual</source>
        <translation>à la vis, du manuel</translation>
    </message>
    <message>
        <source>at the most worn place</source>
        <translation>à l&apos;endroit le plus usé</translation>
    </message>
    <message>
        <source>at the most worn place of the middle three quarters</source>
        <translation>à l&apos;endroit le plus usé des trois quarts du milieu</translation>
    </message>
    <message>
        <source>at the speed the manual names, often 4000 to 5000 rpm</source>
        <translation>au régime que nomme le manuel, souvent 4000 à 5000 rpm</translation>
    </message>
    <message>
        <source>battery charged and connected, warm engine</source>
        <translation>batterie chargée et branchée, moteur chaud</translation>
    </message>
    <message>
        <source>battery post to its clamp</source>
        <translation>borne de batterie à sa cosse</translation>
    </message>
    <message>
        <source>battery post to starter solenoid</source>
        <translation>borne de batterie au solénoïde</translation>
    </message>
    <message>
        <source>behind the pistons</source>
        <translation>derrière les pistons</translation>
    </message>
    <message>
        <source>between centres</source>
        <translation>d&apos;axe en axe</translation>
    </message>
    <message>
        <source>between marks on the road</source>
        <translation>entre bornes sur la route</translation>
    </message>
    <message>
        <source>between the two probes</source>
        <translation>entre les deux pointes</translation>
    </message>
    <message>
        <source>bolts are numbered round the circle, or along the row, from 1</source>
        <translation>les vis sont numérotées en cercle, ou le long de la rangée, à partir de 1</translation>
    </message>
    <message>
        <source>bore in hundredths of a millimetre</source>
        <translation>perçage en centièmes de millimètre</translation>
    </message>
    <message>
        <source>brake fluid harms paint, skin and eyes; brakes are proved before the machine leaves the shop</source>
        <translation>le liquide de frein abîme peinture, peau et yeux&#xa0;; les freins sont prouvés avant que le véhicule quitte l&apos;atelier</translation>
    </message>
    <message>
        <source>bulb types or watts that burn together, separated by commas: H4, 2 x P21W, 5 W</source>
        <translation>types d&apos;ampoule ou watts allumés ensemble, séparés par des virgules&#xa0;: H4, 2 x P21W, 5 W</translation>
    </message>
    <message>
        <source>by hydrometer; flooded batteries only</source>
        <translation>au pèse-acide&#xa0;; batteries à bouchons seulement</translation>
    </message>
    <message>
        <source>by satellite or by stop-watch</source>
        <translation>par satellite ou chronomètre</translation>
    </message>
    <message>
        <source>centre of the lamp above the ground, rider on</source>
        <translation>centre du phare au-dessus du sol, pilote assis</translation>
    </message>
    <message>
        <source>centred piston pin; dial gauge in line with the cylinder</source>
        <translation>axe de piston centré&#xa0;; comparateur dans l&apos;axe du cylindre</translation>
    </message>
    <message>
        <source>closed tyre, dry air, weather as in the standard atmosphere</source>
        <translation>pneu fermé, air sec, temps selon l&apos;atmosphère normale</translation>
    </message>
    <message>
        <source>coil or winding</source>
        <translation>bobine ou enroulement</translation>
    </message>
    <message>
        <source>cold, with a feeler gauge</source>
        <translation>à froid, à la jauge d&apos;épaisseur</translation>
    </message>
    <message>
        <source>compare the frame with the papers: a number that fits its check digit can still be the wrong one</source>
        <translation>comparer le cadre aux papiers&#xa0;: un numéro au chiffre juste peut quand même être le mauvais</translation>
    </message>
    <message>
        <source>continuity</source>
        <translation>continuité</translation>
    </message>
    <message>
        <source>copper; class 5 areas from the table, others scaled by area</source>
        <translation>cuivre&#xa0;; sections classe 5 du tableau, les autres à proportion</translation>
    </message>
    <message>
        <source>cut-off on the wall below the lamp&apos;s centre</source>
        <translation>coupure au mur sous le centre du phare</translation>
    </message>
    <message>
        <source>disconnect the part first: what lies beside it is measured too</source>
        <translation>débrancher d&apos;abord la pièce&#xa0;: ce qui est à côté se mesure aussi</translation>
    </message>
    <message>
        <source>drive square to middle of the nut</source>
        <translation>du carré au milieu de l&apos;écrou</translation>
    </message>
    <message>
        <source>dry air without it</source>
        <translation>sans elle, air sec</translation>
    </message>
    <message>
        <source>dynamo</source>
        <translation>dynamo</translation>
    </message>
    <message>
        <source>earth</source>
        <translation>masse</translation>
    </message>
    <message>
        <source>earth side of any load</source>
        <translation>côté masse d&apos;un consommateur</translation>
    </message>
    <message>
        <source>engine off, a while after riding</source>
        <translation>moteur coupé, un moment après avoir roulé</translation>
    </message>
    <message>
        <source>engine turns for one turn of the wheel, all stages multiplied</source>
        <translation>tours moteur pour un tour de roue, tous les étages multipliés</translation>
    </message>
    <message>
        <source>engine warm, lamps on</source>
        <translation>moteur chaud, feux allumés</translation>
    </message>
    <message>
        <source>expanded (k = 2), of the reading as measured; without it an ordinary meter is assumed</source>
        <translation>élargie (k = 2), de la mesure&#xa0;; sans elle un appareil ordinaire est supposé</translation>
    </message>
    <message>
        <source>expanded uncertainty (k = 2) of the instrument; without it an ordinary one is assumed</source>
        <translation>incertitude élargie (k = 2) de l&apos;instrument&#xa0;; sans elle, une ordinaire est supposée</translation>
    </message>
    <message>
        <source>fit only sizes that the machine&apos;s papers allow</source>
        <translation>ne monter que les tailles admises par les papiers du véhicule</translation>
    </message>
    <message>
        <source>flooded, with caps</source>
        <translation>ouverte, à bouchons</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>débit</translation>
    </message>
    <message>
        <source>flush until it runs clear, whatever the sum says</source>
        <translation>purger jusqu&apos;à ce que ça coule clair, quoi que dise le calcul</translation>
    </message>
    <message>
        <source>for the mean piston speed</source>
        <translation>pour la vitesse moyenne du piston</translation>
    </message>
    <message>
        <source>from the first to the second reading</source>
        <translation>de la première à la seconde mesure</translation>
    </message>
    <message>
        <source>from the lamp</source>
        <translation>du phare</translation>
    </message>
    <message>
        <source>from the manual</source>
        <translation>du manuel</translation>
    </message>
    <message>
        <source>from the manual or from a new part</source>
        <translation>du manuel ou d&apos;une pièce neuve</translation>
    </message>
    <message>
        <source>from the manual, at 20 degC</source>
        <translation>du manuel, à 20 degC</translation>
    </message>
    <message>
        <source>from top dead centre; give this or the angle</source>
        <translation>du point mort haut&#xa0;; donner celle-ci ou l&apos;angle</translation>
    </message>
    <message>
        <source>from top dead centre; give this or the travel</source>
        <translation>du point mort haut&#xa0;; donner celui-ci ou la course</translation>
    </message>
    <message>
        <source>fuel alone</source>
        <translation>essence seule</translation>
    </message>
    <message>
        <source>fuel to oil by volume, from the manual: 50, 50:1 or 2 %</source>
        <translation>essence sur huile en volume, du manuel&#xa0;: 50, 50:1 ou 2 %</translation>
    </message>
    <message>
        <source>gauges and cranking speeds differ: compare with the manual&apos;s method, and cylinders with each other</source>
        <translation>appareils et vitesses de lancement diffèrent&#xa0;: comparer selon la méthode du manuel, et les cylindres entre eux</translation>
    </message>
    <message>
        <source>give this or the power</source>
        <translation>donner celui-ci ou la puissance</translation>
    </message>
    <message>
        <source>glass fuses by IEC 60127 carry their speed in letters, FF F M T TT from very fast to very slow: renew like by like</source>
        <translation>les fusibles en verre IEC 60127 portent leur vitesse en lettres, FF F M T TT de très rapide à très lent&#xa0;: remplacer par le même</translation>
    </message>
    <message>
        <source>grip mark to middle of the drive square</source>
        <translation>du repère de poignée au milieu du carré</translation>
    </message>
    <message>
        <source>half of washer face plus hole; an ordinary hexagon head over a medium hole is assumed</source>
        <translation>moitié de l&apos;appui plus le trou&#xa0;; une tête hexagonale ordinaire sur trou moyen est supposée</translation>
    </message>
    <message>
        <source>hose and pipe together</source>
        <translation>durite et tube ensemble</translation>
    </message>
    <message>
        <source>how far the bolt is to be used</source>
        <translation>jusqu&apos;où la vis doit servir</translation>
    </message>
    <message>
        <source>how often the circuit&apos;s content is pushed through: two or more</source>
        <translation>combien de fois le contenu passe&#xa0;: deux ou plus</translation>
    </message>
    <message>
        <source>how the bolts lie</source>
        <translation>comment sont les vis</translation>
    </message>
    <message>
        <source>how the carburettor&apos;s maker numbers jets</source>
        <translation>comment le fabricant du carburateur numérote</translation>
    </message>
    <message>
        <source>ignition off, meter in the negative lead</source>
        <translation>contact coupé, appareil dans le fil négatif</translation>
    </message>
    <message>
        <source>ignition off, plug lead earthed, hands away from the kick-start</source>
        <translation>contact coupé, fil de bougie à la masse, mains loin du kick</translation>
    </message>
    <message>
        <source>ignition or kill switch, each contact</source>
        <translation>contacteur ou coupe-circuit, chaque contact</translation>
    </message>
    <message>
        <source>in how many equal steps</source>
        <translation>en combien de pas égaux</translation>
    </message>
    <message>
        <source>in thread and under the head; give this or nut_factor</source>
        <translation>dans le filet et sous tête&#xa0;; donner celui-ci ou nut_factor</translation>
    </message>
    <message>
        <source>inside diameter, about 3 mm</source>
        <translation>intérieur, environ 3 mm</translation>
    </message>
    <message>
        <source>less the resistance of the leads held together</source>
        <translation>moins la résistance des cordons joints</translation>
    </message>
    <message>
        <source>level ground, tyres at pressure, rider on, suspension bounced</source>
        <translation>sol plat, pneus gonflés, pilote dessus, suspension tassée</translation>
    </message>
    <message>
        <source>lighting feed plus return</source>
        <translation>éclairage, aller et retour</translation>
    </message>
    <message>
        <source>limits differ by country, class and day: the law of the place applies</source>
        <translation>les limites changent selon pays, classe et date&#xa0;: la loi du lieu s&apos;applique</translation>
    </message>
    <message>
        <source>load index 30 to 80, speed symbols with a fixed speed</source>
        <translation>indice de charge 30 à 80, codes de vitesse à vitesse fixe</translation>
    </message>
    <message>
        <source>loosen in the opposite order</source>
        <translation>desserrer dans l&apos;ordre inverse</translation>
    </message>
    <message>
        <source>magnetic switch</source>
        <translation>contacteur magnétique</translation>
    </message>
    <message>
        <source>measured while the load current flows</source>
        <translation>mesurée pendant que le courant passe</translation>
    </message>
    <message>
        <source>measured: the stamp may be worn off or wrong</source>
        <translation>mesurée&#xa0;: la marque peut être usée ou fausse</translation>
    </message>
    <message>
        <source>mechanical starter switch</source>
        <translation>contacteur mécanique de démarreur</translation>
    </message>
    <message>
        <source>moped</source>
        <translation>cyclomoteur</translation>
    </message>
    <message>
        <source>motorcycle</source>
        <translation>motocyclette</translation>
    </message>
    <message>
        <source>never bleed a hot tyre down to its cold pressure</source>
        <translation>ne jamais dégonfler un pneu chaud à sa pression à froid</translation>
    </message>
    <message>
        <source>never let the reservoir run empty; never use again what came out</source>
        <translation>ne jamais laisser le bocal se vider&#xa0;; ne jamais réutiliser ce qui est sorti</translation>
    </message>
    <message>
        <source>never press the starter with the meter in the lead: its fuse blows</source>
        <translation>ne jamais lancer le démarreur avec l&apos;appareil dans le fil&#xa0;: son fusible saute</translation>
    </message>
    <message>
        <source>never run an alternator with the battery off: the spike destroys regulator and lamps</source>
        <translation>ne jamais faire tourner un alternateur sans batterie&#xa0;: la pointe détruit régulateur et lampes</translation>
    </message>
    <message>
        <source>no clearance at all means that the valve may not close: measure again with a thinner shim</source>
        <translation>aucun jeu veut dire que la soupape ne ferme peut-être pas&#xa0;: remesurer avec une cale plus mince</translation>
    </message>
    <message>
        <source>no slip of belt, clutch or tyre is allowed for</source>
        <translation>sans glissement de courroie, d&apos;embrayage ou de pneu</translation>
    </message>
    <message>
        <source>nominal</source>
        <translation>nominale</translation>
    </message>
    <message>
        <source>nominal sizes of an unloaded tyre: a loaded one rolls a few per cent shorter</source>
        <translation>tailles nominales d&apos;un pneu non chargé&#xa0;: chargé, il roule quelques pour cent plus court</translation>
    </message>
    <message>
        <source>of a barometer at the place, not reduced to sea level; replaces the altitude</source>
        <translation>d&apos;un baromètre sur place, non ramenée à la mer&#xa0;; remplace l&apos;altitude</translation>
    </message>
    <message>
        <source>of a headlamp&apos;s two filaments the larger counts; tail and stop count together</source>
        <translation>des deux filaments d&apos;un phare compte le plus fort&#xa0;; feu arrière et stop comptent ensemble</translation>
    </message>
    <message>
        <source>of one joint</source>
        <translation>d&apos;un assemblage</translation>
    </message>
    <message>
        <source>of the acid</source>
        <translation>de l&apos;acide</translation>
    </message>
    <message>
        <source>of the air</source>
        <translation>de l&apos;air</translation>
    </message>
    <message>
        <source>of the air in the tyre at that reading</source>
        <translation>de l&apos;air du pneu à cette mesure</translation>
    </message>
    <message>
        <source>of the air in the tyre now</source>
        <translation>de l&apos;air du pneu maintenant</translation>
    </message>
    <message>
        <source>of the air inside</source>
        <translation>de l&apos;air dedans</translation>
    </message>
    <message>
        <source>of the capacity</source>
        <translation>de la capacité</translation>
    </message>
    <message>
        <source>of the copper; 18 AWG is read too</source>
        <translation>du cuivre&#xa0;; 18 AWG se lit aussi</translation>
    </message>
    <message>
        <source>of the crankshaft</source>
        <translation>du vilebrequin</translation>
    </message>
    <message>
        <source>of the cylinder</source>
        <translation>du cylindre</translation>
    </message>
    <message>
        <source>of the driven tyre, rolled out under load</source>
        <translation>du pneu moteur, roulé sous charge</translation>
    </message>
    <message>
        <source>of the machine</source>
        <translation>du véhicule</translation>
    </message>
    <message>
        <source>of the piston</source>
        <translation>du piston</translation>
    </message>
    <message>
        <source>of the winding</source>
        <translation>de l&apos;enroulement</translation>
    </message>
    <message>
        <source>often 0.05 or 0.025</source>
        <translation>souvent 0,05 ou 0,025</translation>
    </message>
    <message>
        <source>older and many European and Asian numbers have no check digit</source>
        <translation>les anciens et beaucoup de numéros européens et asiatiques n&apos;ont pas de chiffre de contrôle</translation>
    </message>
    <message>
        <source>one connection</source>
        <translation>une connexion</translation>
    </message>
    <message>
        <source>one per cent line</source>
        <translation>ligne un pour cent</translation>
    </message>
    <message>
        <source>one to two hours after charging, nothing switched on</source>
        <translation>une heure ou deux après la charge, rien d&apos;allumé</translation>
    </message>
    <message>
        <source>one way</source>
        <translation>aller simple</translation>
    </message>
    <message>
        <source>only copper windings are corrected</source>
        <translation>seuls les enroulements de cuivre sont corrigés</translation>
    </message>
    <message>
        <source>petrol before the oil goes in</source>
        <translation>essence avant l&apos;huile</translation>
    </message>
    <message>
        <source>petrol: no flame, fresh air, a can made for it</source>
        <translation>essence&#xa0;: pas de flamme, air frais, un bidon fait pour</translation>
    </message>
    <message>
        <source>printed on the battery</source>
        <translation>écrite sur la batterie</translation>
    </message>
    <message>
        <source>printed on the case</source>
        <translation>écrite sur le bac</translation>
    </message>
    <message>
        <source>published limits differ and were made for heavier machines: the manual wins</source>
        <translation>les limites publiées diffèrent et sont faites pour des machines plus lourdes&#xa0;: le manuel passe avant</translation>
    </message>
    <message>
        <source>published nut factors for the same words differ by up to half, and preload scatters by 25 to 35 % at one torque: a torque never proves a preload</source>
        <translation>les facteurs publiés pour les mêmes mots diffèrent jusqu&apos;à la moitié, et la précharge varie de 25 à 35 % à couple égal&#xa0;: un couple ne prouve jamais une précharge</translation>
    </message>
    <message>
        <source>rated output at riding speed</source>
        <translation>puissance nominale au régime de route</translation>
    </message>
    <message>
        <source>rated watts at 12 V: at 13.5 V a bulb draws about a sixth more</source>
        <translation>watts nominaux à 12 V&#xa0;: à 13,5 V une ampoule tire environ un sixième de plus</translation>
    </message>
    <message>
        <source>rated; give this or the current</source>
        <translation>nominale&#xa0;; donner celle-ci ou le courant</translation>
    </message>
    <message>
        <source>refused where the torque would pass the bolt&apos;s proof load</source>
        <translation>refusé là où le couple dépasserait la charge d&apos;épreuve de la vis</translation>
    </message>
    <message>
        <source>regulator output to battery positive</source>
        <translation>sortie du régulateur au positif de batterie</translation>
    </message>
    <message>
        <source>replaces the table</source>
        <translation>remplace le tableau</translation>
    </message>
    <message>
        <source>replaces the usual band</source>
        <translation>remplace la plage habituelle</translation>
    </message>
    <message>
        <source>rested one to two hours; published tables differ by up to 0.09 V; voltage is not corrected for temperature for want of a second source</source>
        <translation>reposée une heure ou deux&#xa0;; les tableaux publiés diffèrent jusqu&apos;à 0,09 V&#xa0;; tension non corrigée de la température, faute de seconde source</translation>
    </message>
    <message>
        <source>round the circle</source>
        <translation>en cercle</translation>
    </message>
    <message>
        <source>row, from the middle</source>
        <translation>rangée, du milieu</translation>
    </message>
    <message>
        <source>running engine: exhaust gas, hot parts, loose clothing</source>
        <translation>moteur tournant&#xa0;: gaz d&apos;échappement, pièces chaudes, vêtements lâches</translation>
    </message>
    <message>
        <source>self-discharge comes on top, more so in the warm and in an old battery</source>
        <translation>l&apos;autodécharge s&apos;ajoute, plus au chaud et sur vieille batterie</translation>
    </message>
    <message>
        <source>since the part was new</source>
        <translation>depuis que la pièce était neuve</translation>
    </message>
    <message>
        <source>single-phase alternator</source>
        <translation>alternateur monophasé</translation>
    </message>
    <message>
        <source>solenoid switch</source>
        <translation>solénoïde</translation>
    </message>
    <message>
        <source>stamped on the head; no mark means unknown, not 8.8</source>
        <translation>frappée sur la tête&#xa0;; sans marque elle est inconnue, pas 8.8</translation>
    </message>
    <message>
        <source>starter body to battery negative</source>
        <translation>corps du démarreur au négatif de batterie</translation>
    </message>
    <message>
        <source>starter control circuit, both windings on</source>
        <translation>circuit de commande du démarreur, deux enroulements alimentés</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>acier</translation>
    </message>
    <message>
        <source>steel bolts in steel; soft threads, studs, seals and plastic need the manual&apos;s figure</source>
        <translation>vis acier dans acier&#xa0;; filets tendres, goujons, joints et plastique veulent la valeur du manuel</translation>
    </message>
    <message>
        <source>such as 100/90-10 56J or 3.50-10 59J</source>
        <translation>par exemple 100/90-10 56J ou 3.50-10 59J</translation>
    </message>
    <message>
        <source>taken as now for dates</source>
        <translation>pris comme maintenant pour les dates</translation>
    </message>
    <message>
        <source>that flowed</source>
        <translation>qui passait</translation>
    </message>
    <message>
        <source>the age limit is the shop&apos;s: common practice, no source</source>
        <translation>la limite d&apos;âge est celle de l&apos;atelier&#xa0;: pratique courante, sans source</translation>
    </message>
    <message>
        <source>the cap and the manual name the grade: use that one</source>
        <translation>le bouchon et le manuel nomment la norme&#xa0;: prendre celle-là</translation>
    </message>
    <message>
        <source>the date or the odometer now; today where dates are meant</source>
        <translation>la date ou le compteur maintenant&#xa0;; aujourd&apos;hui pour les dates</translation>
    </message>
    <message>
        <source>the day to count to</source>
        <translation>le jour jusqu&apos;où compter</translation>
    </message>
    <message>
        <source>the figure itself is the manual&apos;s: too early holes the piston</source>
        <translation>la valeur est celle du manuel&#xa0;: trop d&apos;avance perce le piston</translation>
    </message>
    <message>
        <source>the finished mix</source>
        <translation>le mélange fini</translation>
    </message>
    <message>
        <source>the hand must pull at the grip mark: anywhere else the sum is wrong</source>
        <translation>la main doit tirer au repère de poignée&#xa0;: ailleurs le calcul est faux</translation>
    </message>
    <message>
        <source>the last four digits of the DOT code, week and year, such as 2508; three before 2000</source>
        <translation>les quatre derniers chiffres du code DOT, semaine et année, par exemple 2508&#xa0;; trois avant 2000</translation>
    </message>
    <message>
        <source>the law of the place applies</source>
        <translation>la loi du lieu s&apos;applique</translation>
    </message>
    <message>
        <source>the load holds at the tyre&apos;s reference pressure</source>
        <translation>la charge vaut à la pression de référence du pneu</translation>
    </message>
    <message>
        <source>the loss is taken as even over time; days are counted from the second reading</source>
        <translation>la perte est prise régulière&#xa0;; les jours comptent depuis la seconde mesure</translation>
    </message>
    <message>
        <source>the machine&apos;s wiring diagram wins</source>
        <translation>le schéma électrique du véhicule passe avant</translation>
    </message>
    <message>
        <source>the manual&apos;s figure for a soft thread</source>
        <translation>la valeur du manuel pour un filet tendre</translation>
    </message>
    <message>
        <source>the manual&apos;s interval wins; whichever of time and distance comes first counts</source>
        <translation>l&apos;intervalle du manuel prime&#xa0;; du temps et de la distance compte ce qui vient d&apos;abord</translation>
    </message>
    <message>
        <source>the manual&apos;s ratio and kind of oil win; too little oil seizes the engine</source>
        <translation>le rapport et l&apos;huile du manuel priment&#xa0;; trop peu d&apos;huile serre le moteur</translation>
    </message>
    <message>
        <source>the manual&apos;s service limit</source>
        <translation>la limite d&apos;usure du manuel</translation>
    </message>
    <message>
        <source>the number stamped on it</source>
        <translation>le numéro frappé</translation>
    </message>
    <message>
        <source>the power correction is for four-stroke petrol engines without supercharger</source>
        <translation>la correction de puissance vaut pour les moteurs essence quatre-temps sans compresseur</translation>
    </message>
    <message>
        <source>the pressure at which something has to be done</source>
        <translation>la pression à laquelle il faut agir</translation>
    </message>
    <message>
        <source>the setting must lie in the wrench&apos;s range</source>
        <translation>le réglage doit être dans la plage de la clé</translation>
    </message>
    <message>
        <source>the torque that is or was applied</source>
        <translation>le couple appliqué ou à appliquer</translation>
    </message>
    <message>
        <source>the unit wanted, such as N.m</source>
        <translation>l&apos;unité voulue, par exemple N.m</translation>
    </message>
    <message>
        <source>the usual band is worked out here: the manual wins</source>
        <translation>la plage habituelle est calculée ici&#xa0;: le manuel passe avant</translation>
    </message>
    <message>
        <source>three-phase alternator</source>
        <translation>alternateur triphasé</translation>
    </message>
    <message>
        <source>throttle open, engine warm</source>
        <translation>gaz ouverts, moteur chaud</translation>
    </message>
    <message>
        <source>torque and energy, gauge and absolute pressure are not converted into each other</source>
        <translation>couple et énergie, pression relative et absolue ne se convertissent pas entre eux</translation>
    </message>
    <message>
        <source>torque factor of the surface, about 0.2 dry steel, 0.15 oiled; give this or friction</source>
        <translation>facteur de couple de la surface, environ 0,2 acier sec, 0,15 huilé&#xa0;; donner celui-ci ou le frottement</translation>
    </message>
    <message>
        <source>turn the engine by hand and measure again afterwards</source>
        <translation>ensuite tourner le moteur à la main et remesurer</translation>
    </message>
    <message>
        <source>two or three wires from the alternator; brushes: a dynamo</source>
        <translation>deux ou trois fils de l&apos;alternateur&#xa0;; charbons&#xa0;: une dynamo</translation>
    </message>
    <message>
        <source>two-stroke makers may quote the ratio from exhaust closing: say which</source>
        <translation>les fabricants de deux-temps donnent parfois le taux depuis la fermeture d&apos;échappement&#xa0;: dire lequel</translation>
    </message>
    <message>
        <source>tyre size and pressure change it; the law of the place sets what is allowed</source>
        <translation>taille et pression du pneu la changent&#xa0;; la loi du lieu dit ce qui est admis</translation>
    </message>
    <message>
        <source>until the next ride</source>
        <translation>jusqu&apos;à la prochaine sortie</translation>
    </message>
    <message>
        <source>up to the upper mark</source>
        <translation>jusqu&apos;au repère haut</translation>
    </message>
    <message>
        <source>upper edge above bottom dead centre; for two-strokes counted from exhaust closing</source>
        <translation>bord haut au-dessus du point mort bas&#xa0;; en deux-temps compté depuis la fermeture d&apos;échappement</translation>
    </message>
    <message>
        <source>venturi carburettor, same engine speed and throttle, same fuel</source>
        <translation>carburateur à venturi, même régime et gaz, même essence</translation>
    </message>
    <message>
        <source>voltage alone does not prove a battery: a worn one rests high and falls under load</source>
        <translation>la tension seule ne prouve pas une batterie&#xa0;: usée, elle reste haute au repos et tombe en charge</translation>
    </message>
    <message>
        <source>warm beside an engine</source>
        <translation>chaud près d&apos;un moteur</translation>
    </message>
    <message>
        <source>wear is seldom even: look again well before</source>
        <translation>l&apos;usure est rarement régulière&#xa0;: revoir bien avant</translation>
    </message>
    <message>
        <source>what the bolt screws into</source>
        <translation>dans quoi la vis se visse</translation>
    </message>
    <message>
        <source>what the dial shows, a speed or a distance</source>
        <translation>ce que montre le cadran, vitesse ou distance</translation>
    </message>
    <message>
        <source>what the machine will carry</source>
        <translation>ce que le véhicule portera</translation>
    </message>
    <message>
        <source>what the shop has decided; there is no general law</source>
        <translation>ce que l&apos;atelier a décidé&#xa0;; il n&apos;y a pas de loi générale</translation>
    </message>
    <message>
        <source>where it differs from the thread&apos;s</source>
        <translation>où il diffère de celui du filet</translation>
    </message>
    <message>
        <source>where it will run</source>
        <translation>où il tournera</translation>
    </message>
    <message>
        <source>where the jet is right</source>
        <translation>où le gicleur est bon</translation>
    </message>
    <message>
        <source>where the mark is to go</source>
        <translation>où doit aller le repère</translation>
    </message>
    <message>
        <source>whole positive side of the starter</source>
        <translation>tout le côté positif du démarreur</translation>
    </message>
    <message>
        <source>whose law applies</source>
        <translation>quelle loi s&apos;applique</translation>
    </message>
    <message>
        <source>whose limits apply</source>
        <translation>quelles limites valent</translation>
    </message>
    <message>
        <source>worked out here: the manual wins</source>
        <translation>calculé ici&#xa0;: le manuel passe avant</translation>
    </message>
    <message>
        <source>years that have not come are left out</source>
        <translation>les années à venir sont ôtées</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 = %2; factor from %3</source>
        <translation>%1 = %2&#xa0;; facteur de %3</translation>
    </message>
    <message>
        <source>%1: lamp centre %2 850 mm: %3 to %4 % down (%5 to %6 deg)</source>
        <translation>%1&#xa0;: centre du phare %2 850 mm&#xa0;: %3 à %4 % vers le bas (%5 à %6 degrés)</translation>
    </message>
    <message>
        <source>above</source>
        <translation>au-dessus de</translation>
    </message>
    <message>
        <source>up to</source>
        <translation>jusqu&apos;à</translation>
    </message>
    <message>
        <source>battery</source>
        <translation>batterie</translation>
    </message>
    <message>
        <source>idle</source>
        <translation>ralenti</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>repos</translation>
    </message>
    <message>
        <source>revs</source>
        <translation>régime</translation>
    </message>
    <message>
        <source>first</source>
        <translation>première</translation>
    </message>
    <message>
        <source>second, same temperature</source>
        <translation>seconde, même température</translation>
    </message>
    <message>
        <source>(reading + ambient)/ambient stays the same: %1 kPa x 101.325/%2 = %3 kPa</source>
        <translation>(mesure + ambiante)/ambiante reste égal&#xa0;: %1 kPa x 101.325/%2 = %3 kPa</translation>
    </message>
    <message>
        <source>%1 to prove, first: %2</source>
        <translation>%1 à prouver, d&apos;abord&#xa0;: %2</translation>
    </message>
    <message>
        <source>Not before: %1 came off after %2, so it goes on first.</source>
        <translation>Pas avant&#xa0;: %1 s&apos;est démonté après %2, donc se remonte d&apos;abord.</translation>
    </message>
    <message>
        <source>Not before: the task %1 has to be finished before %2.</source>
        <translation>Pas avant&#xa0;: la tâche %1 doit être finie avant %2.</translation>
    </message>
    <message>
        <source>That is on again already.</source>
        <translation>C&apos;est déjà remonté.</translation>
    </message>
    <message>
        <source>That is the first one already.</source>
        <translation>C&apos;est déjà la première.</translation>
    </message>
    <message>
        <source>That is the last one already.</source>
        <translation>C&apos;est déjà la dernière.</translation>
    </message>
    <message>
        <source>ask the owner: %1</source>
        <translation>demander au propriétaire&#xa0;: %1</translation>
    </message>
    <message>
        <source>ready to be handed over</source>
        <translation>prêt à être remis</translation>
    </message>
    <message>
        <source>does not run as it was found: %1</source>
        <translation>ne passe pas comme trouvé : %1</translation>
    </message>
    <message>
        <source>the photo has %1 x %2 pixels, more than 120 megapixels: save it smaller</source>
        <translation>la photo a %1 x %2 pixels, plus de 120 mégapixels&#xa0;: l&apos;enregistrer plus petite</translation>
    </message>
    <message>
        <source>this is neither a JPEG nor a PNG: choose a photo</source>
        <translation>ce n&apos;est ni un JPEG ni un PNG&#xa0;: choisir une photo</translation>
    </message>
    <message>
        <source>there is no such file: check the name</source>
        <translation>ce fichier n&apos;existe pas&#xa0;: vérifier le nom</translation>
    </message>
    <message>
        <source>the file is larger than 300 MB: save it smaller</source>
        <translation>le fichier dépasse 300 Mo&#xa0;: l&apos;enregistrer plus petit</translation>
    </message>
    <message>
        <source>the file may not be read: check its permissions</source>
        <translation>le fichier ne peut pas être lu&#xa0;: vérifier ses droits</translation>
    </message>
    <message>
        <source>the JPEG is damaged or cut short (%1): take or copy the photo again</source>
        <translation>le JPEG est abîmé ou tronqué (%1)&#xa0;: reprendre ou recopier la photo</translation>
    </message>
    <message>
        <source>the PNG is damaged or cut short (%1): take or copy the photo again</source>
        <translation>le PNG est abîmé ou tronqué (%1)&#xa0;: reprendre ou recopier la photo</translation>
    </message>
    <message>
        <source>a progressive JPEG this large would not fit into memory: save it smaller, or as a baseline JPEG</source>
        <translation>un JPEG progressif de cette taille ne tient pas en mémoire&#xa0;: l&apos;enregistrer plus petit, ou en JPEG simple</translation>
    </message>
    <message>
        <source>the JPEG decoder could not be started</source>
        <translation>le lecteur de JPEG n&apos;a pas pu démarrer</translation>
    </message>
    <message>
        <source>the tap lies outside the photo: tap on the photo</source>
        <translation>l&apos;appui est hors de la photo&#xa0;: toucher la photo</translation>
    </message>
    <message>
        <source>the stroke leaves the photo: keep it inside</source>
        <translation>le trait sort de la photo&#xa0;: rester dedans</translation>
    </message>
    <message>
        <source>the stroke needs two different points: draw it across the wires</source>
        <translation>le trait demande deux points différents&#xa0;: passer en travers des fils</translation>
    </message>
    <message>
        <source>the mouth of the connector leaves the photo: keep it inside</source>
        <translation>la bouche du connecteur sort de la photo&#xa0;: rester dedans</translation>
    </message>
    <message>
        <source>the mouth of the connector needs two different points: draw it across the wires</source>
        <translation>la bouche du connecteur demande deux points différents&#xa0;: passer en travers des fils</translation>
    </message>
    <message>
        <source>backup: cannot be written: %1</source>
        <translation>sauvegarde&#xa0;: ne peut pas être écrite&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: has %2 bytes, at most %3 are kept; shorten the text</source>
        <translation>%1&#xa0;: a %2 octets, %3 au plus sont gardés&#xa0;; raccourcir le texte</translation>
    </message>
    <message>
        <source>%1: is not written in UTF-8; save the sheet as CSV in UTF-8, or type it anew</source>
        <translation>%1&#xa0;: n’est pas écrit en UTF-8&#xa0;; enregistrer la feuille en CSV UTF-8, ou le saisir de nouveau</translation>
    </message>
    <message>
        <source>%1: holds a NUL character; type it anew</source>
        <translation>%1&#xa0;: contient un caractère NUL&#xa0;; le saisir de nouveau</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has more than one digit behind the mark, and an odometer has at most one: type %2 if that is meant, or %3</source>
        <translation>«&#xa0;%1&#xa0;» a plus d’un chiffre après le signe, et un compteur en a au plus un&#xa0;: tapez %2 si c’est ce qui est voulu, ou %3</translation>
    </message>
    <message>
        <source>%1 in the step, ± %2 % as of a wrench by ISO 6789-1</source>
        <translation>%1 dans l’étape, ± %2 % comme une clé selon ISO 6789-1</translation>
    </message>
    <message>
        <source>one of the readings is outside: %1</source>
        <translation>une des lectures est hors limite&#xa0;: %1</translation>
    </message>
    <message>
        <source>no instrument was named: 10 % of the reading, k = 2</source>
        <translation>aucun instrument nommé&#xa0;: 10 % de la lecture, k = 2</translation>
    </message>
    <message>
        <source>the instrument is not known: name it, or measure again with a known one</source>
        <translation>l’instrument n’est pas connu&#xa0;: nommez-le, ou mesurez de nouveau avec un instrument connu</translation>
    </message>
    <message>
        <source>%1: read %2, to be %3</source>
        <translation>%1&#xa0;: lu %2, prescrit %3</translation>
    </message>
    <message>
        <source>measured outside its limit: %1, %2</source>
        <translation>mesuré hors limite&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>not proved: %1. %2</source>
        <translation>pas prouvé&#xa0;: %1. %2</translation>
    </message>
    <message>
        <source>not read back: place %1</source>
        <translation>non relu&#xa0;: voie %1</translation>
    </message>
    <message>
        <source>not read back: places %1</source>
        <translation>non relus&#xa0;: voies %1</translation>
    </message>
    <message>
        <source>place %1 does not match</source>
        <translation>voie %1 ne correspond pas</translation>
    </message>
    <message>
        <source>place %1, unit half, does not match</source>
        <translation>voie %1, côté appareil, ne correspond pas</translation>
    </message>
    <message>
        <source>too close to its limit to call: %1, %2</source>
        <translation>trop près de la limite pour trancher&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1 ; %2</translation>
    </message>
    <message>
        <source>Nothing was changed. Bring what can be read into a new place with &apos;undercowlctl store salvage --to NEWFOLDER&apos;, and name a backup with --from if there is one.</source>
        <translation>Rien n&apos;a été changé. Porter ce qui se lit dans un nouvel endroit avec &apos;undercowlctl store salvage --to NEWFOLDER&apos; et nommer une sauvegarde avec --from s&apos;il y en a une.</translation>
    </message>
    <message>
        <source>the store in %1 has lost its shop.db, but photos or copies of it are there. Nothing was changed. Bring what can be read into a new place with &apos;undercowlctl store salvage --to NEWFOLDER&apos;, and name a backup with --from if there is one.</source>
        <translation>l&apos;atelier dans %1 a perdu sa shop.db, mais des photos ou des copies sont là. Rien n&apos;a été changé. Porter ce qui se lit dans un nouvel endroit avec &apos;undercowlctl store salvage --to NEWFOLDER&apos; et nommer une sauvegarde avec --from s&apos;il y en a une.</translation>
    </message>
    <message>
        <source>the store in %1 has an empty shop.db, but photos or copies of it are there. Nothing was changed. Bring what can be read into a new place with &apos;undercowlctl store salvage --to NEWFOLDER&apos;, and name a backup with --from if there is one.</source>
        <translation>l&apos;atelier dans %1 a une shop.db vide, mais des photos ou des copies sont là. Rien n&apos;a été changé. Porter ce qui se lit dans un nouvel endroit avec &apos;undercowlctl store salvage --to NEWFOLDER&apos; et nommer une sauvegarde avec --from s&apos;il y en a une.</translation>
    </message>
    <message>
        <source>The disk is full, so this shop can only be looked at. Nothing in it was changed. Make room on the disk to go on working in it.</source>
        <translation>L&apos;espace est plein, cet atelier ne peut donc qu&apos;être regardé. Rien n&apos;y a été changé. Faire de la place pour continuer à y travailler.</translation>
    </message>
    <message>
        <source>This shop is damaged and can only be looked at. Nothing in it was changed. A new one can be made of what can be read.</source>
        <translation>Cet atelier est abîmé et ne peut qu&apos;être regardé. Rien n&apos;y a été changé. On peut en faire un nouveau de ce qui se lit.</translation>
    </message>
    <message>
        <source>%1 is the current shop: go on with another one first</source>
        <translation>%1 est l’atelier actuel&#xa0;: d’abord continuer avec un autre</translation>
    </message>
    <message>
        <source>%1 could not be removed: %2</source>
        <translation>%1 n’a pas pu être supprimé&#xa0;: %2</translation>
    </message>
    <message>
        <source>runs as it was written down, clipped, dry under pressure: %1</source>
        <translation>passe comme noté, attaché, sec sous pression&#xa0;: %1</translation>
    </message>
    <message>
        <source>runs as the machine&apos;s manual shows, clipped, dry under pressure: %1</source>
        <translation>passe comme au manuel du véhicule, attaché, sec sous pression&#xa0;: %1</translation>
    </message>
    <message>
        <source>did not work when it came in, and has no answer: %1</source>
        <translation>ne marchait pas à l&apos;arrivée, et est sans réponse&#xa0;: %1</translation>
    </message>
    <message>
        <source>does not work: %1</source>
        <translation>ne marche pas&#xa0;: %1</translation>
    </message>
    <message>
        <source>does not work: %1 (%2)</source>
        <translation>ne marche pas&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>left as it was: %1 (%2)</source>
        <translation>laissé tel quel&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>left open: %1</source>
        <translation>resté ouvert&#xa0;: %1</translation>
    </message>
    <message>
        <source>measured outside its limit, and the owner does not want it put right: %1, %2</source>
        <translation>mesuré hors limite, et le propriétaire ne veut pas qu&apos;on répare&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>next: fit the part: %1</source>
        <translation>ensuite&#xa0;: monter la pièce&#xa0;: %1</translation>
    </message>
    <message>
        <source>next: put the wires right: %1</source>
        <translation>ensuite&#xa0;: remettre les fils en ordre&#xa0;: %1</translation>
    </message>
    <message>
        <source>part not fitted: %1</source>
        <translation>pièce pas montée&#xa0;: %1</translation>
    </message>
    <message>
        <source>what the owner said has no answer: %1</source>
        <translation>ce que le propriétaire a dit est sans réponse&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>CostPage</name>
    <message>
        <source>Cost</source>
        <translation>Coût</translation>
    </message>
    <message>
        <source>Reckon</source>
        <translation>Compter</translation>
    </message>
    <message>
        <source>Add the line</source>
        <translation>Ajouter la ligne</translation>
    </message>
    <message>
        <source>Line of the cost</source>
        <translation>Ligne du coût</translation>
    </message>
    <message>
        <source>One hour&apos;s work without tax</source>
        <translation>Une heure de travail hors taxe</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Monnaie</translation>
    </message>
    <message>
        <source>Tax, per cent</source>
        <translation>Taxe, pour cent</translation>
    </message>
    <message>
        <source>Another line</source>
        <translation>Autre ligne</translation>
    </message>
    <message>
        <source>What for</source>
        <translation>Pour quoi</translation>
    </message>
    <message>
        <source>tyre fitted outside</source>
        <translation>pneu monté à l&apos;extérieur</translation>
    </message>
    <message>
        <source>Sum without tax</source>
        <translation>Somme hors taxe</translation>
    </message>
    <message>
        <source>take out</source>
        <translation>retirer</translation>
    </message>
</context>
<context>
    <name>CostSum</name>
    <message>
        <source>without tax: %1</source>
        <translation>hors taxe&#xa0;: %1</translation>
    </message>
    <message>
        <source>Expected: %1</source>
        <translation>Prévu&#xa0;: %1</translation>
    </message>
    <message>
        <source>It took: %1</source>
        <translation>Passé&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>DraftRow</name>
    <message>
        <source>begun %1, not finished</source>
        <translation>commencé %1, pas fini</translation>
    </message>
    <message>
        <source>%1, begun %2, not finished</source>
        <translation>%1, commencé %2, pas fini</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Jeter</translation>
    </message>
    <message>
        <source>Throw away what was typed? It cannot be brought back.</source>
        <translation>Jeter ce qui a été tapé ? Ce sera perdu.</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Jeter</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
</context>
<context>
    <name>DuePage</name>
    <message>
        <source>Rechecks due</source>
        <translation>Contrôles à échéance</translation>
    </message>
    <message>
        <source>Rechecks with a number of days stand here from the hand-over on.</source>
        <translation>Les contrôles à un nombre de jours sont ici dès la remise.</translation>
    </message>
    <message>
        <source>Nothing is due</source>
        <translation>Rien à échéance</translation>
    </message>
    <message>
        <source>due</source>
        <translation>à échéance</translation>
    </message>
</context>
<context>
    <name>FileChooser</name>
    <message>
        <source>Folder above %1</source>
        <translation>Répertoire au-dessus de %1</translation>
    </message>
    <message>
        <source>Looking</source>
        <translation>Recherche</translation>
    </message>
</context>
<context>
    <name>FilesWritten</name>
    <message>
        <source>Written</source>
        <translation>Écrit</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Partager</translation>
    </message>
    <message>
        <source>Show the folder</source>
        <translation>Montrer le dossier</translation>
    </message>
</context>
<context>
    <name>FindFilters</name>
    <message>
        <source>Kind</source>
        <translation>Sorte</translation>
    </message>
    <message>
        <source>every machine</source>
        <translation>tous les véhicules</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Véhicule</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Dossier</translation>
    </message>
    <message>
        <source>Any</source>
        <translation>Tous</translation>
    </message>
    <message>
        <source>In the shop</source>
        <translation>À l&apos;atelier</translation>
    </message>
    <message>
        <source>Waits</source>
        <translation>En attente</translation>
    </message>
    <message>
        <source>Unsafe</source>
        <translation>Danger</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Parti</translation>
    </message>
    <message>
        <source>Worked on</source>
        <translation>Travaillé</translation>
    </message>
    <message>
        <source>Any time</source>
        <translation>Toujours</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 jours</translation>
    </message>
    <message>
        <source>A year</source>
        <translation>Un an</translation>
    </message>
    <message>
        <source>What kind?</source>
        <translation>Quelle sorte&#xa0;?</translation>
    </message>
    <message>
        <source>Which machine?</source>
        <translation>Quel véhicule&#xa0;?</translation>
    </message>
    <message>
        <source>Waits for</source>
        <translation>Attend</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Tous</translation>
    </message>
    <message>
        <source>Soon</source>
        <translation>Bientôt</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>Machines that wait for what?</source>
        <translation>Véhicules qui attendent quoi&#xa0;?</translation>
    </message>
</context>
<context>
    <name>FindPage</name>
    <message>
        <source>Find</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>Words, or their beginnings</source>
        <translation>Mots, ou leur début</translation>
    </message>
    <message>
        <source>green pink ring</source>
        <translation>vert rose œillet</translation>
    </message>
    <message>
        <source>Hide the filters</source>
        <translation>Cacher les filtres</translation>
    </message>
    <message>
        <source>Filters (in use)</source>
        <translation>Filtres (actifs)</translation>
    </message>
    <message>
        <source>Filters</source>
        <translation>Filtres</translation>
    </message>
    <message>
        <source>Nothing found for these words. Try fewer, or only their beginnings.</source>
        <translation>Rien trouvé pour ces mots. Essayer moins de mots, ou seulement leur début.</translation>
    </message>
</context>
<context>
    <name>FindingPage</name>
    <message>
        <source>New finding</source>
        <translation>Nouveau constat</translation>
    </message>
    <message>
        <source>Correct the finding</source>
        <translation>Corriger le constat</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Constat</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Ce qu&apos;on a trouvé</translation>
    </message>
    <message>
        <source>front brake hose cracked at the banjo</source>
        <translation>durite de frein avant fendue</translation>
    </message>
    <message>
        <source>How serious</source>
        <translation>Gravité</translation>
    </message>
    <message>
        <source>Unsafe</source>
        <translation>Danger</translation>
    </message>
    <message>
        <source>Soon</source>
        <translation>Bientôt</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>What to do about it</source>
        <translation>Ce qu&apos;il faut faire</translation>
    </message>
    <message>
        <source>renew the hose, bleed the brake</source>
        <translation>changer la durite, purger le frein</translation>
    </message>
    <message>
        <source>How long it will take, in minutes</source>
        <translation>Durée en minutes</translation>
    </message>
    <message>
        <source>Asked for: %1</source>
        <translation>Demandé&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>FindingRow</name>
    <message>
        <source>Correct</source>
        <translation>Corriger</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Réglé</translation>
    </message>
    <message>
        <source>Make it a task</source>
        <translation>En faire une tâche</translation>
    </message>
    <message>
        <source>Owner says no</source>
        <translation>Refus du propriétaire</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Not settled yet</source>
        <translation>Pas encore réglé</translation>
    </message>
</context>
<context>
    <name>FirstStart</name>
    <message>
        <source>Who works here?</source>
        <translation>Qui travaille ici&#xa0;?</translation>
    </message>
    <message>
        <source>Each entry names who made it. Your name stays on this phone and in the records that you hand over.</source>
        <translation>Chaque entrée dit qui l&apos;a faite. Le nom reste sur ce téléphone et dans les rapports que l&apos;on remet.</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Votre nom</translation>
    </message>
    <message>
        <source>as the owner will read it</source>
        <translation>comme le lira le propriétaire</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Commencer</translation>
    </message>
    <message>
        <source>Bring a shop back</source>
        <translation>Ramener un atelier</translation>
    </message>
</context>
<context>
    <name>FunctionsPage</name>
    <message>
        <source>What works now</source>
        <translation>Ce qui marche</translation>
    </message>
    <message>
        <source>What works</source>
        <translation>Ce qui marche</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Works</source>
        <translation>Marche</translation>
    </message>
    <message>
        <source>Does not</source>
        <translation>Marche pas</translation>
    </message>
    <message>
        <source>Not tried</source>
        <translation>Pas essayé</translation>
    </message>
    <message>
        <source>Everything has its answer.</source>
        <translation>Tout a sa réponse.</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>flickers, only when cold</source>
        <translation>vacille, à froid seulement</translation>
    </message>
</context>
<context>
    <name>Gallery</name>
    <message>
        <source>Undercowl controls</source>
        <translation>Commandes d&apos;Undercowl</translation>
    </message>
    <message>
        <source>Next theme</source>
        <translation>Aspect suivant</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Page suivante</translation>
    </message>
</context>
<context>
    <name>GatheringActions</name>
    <message>
        <source>Read the wires</source>
        <translation>Lire les fils</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>Read back</source>
        <translation>Relire</translation>
    </message>
</context>
<context>
    <name>GatheringForm</name>
    <message>
        <source>Connector</source>
        <translation>Connecteur</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Sorte</translation>
    </message>
    <message>
        <source>Loose terminals</source>
        <translation>Cosses libres</translation>
    </message>
    <message>
        <source>Splice</source>
        <translation>Épissure</translation>
    </message>
    <message>
        <source>Shared earth</source>
        <translation>Masse commune</translation>
    </message>
    <message>
        <source>What it is called</source>
        <translation>Son nom</translation>
    </message>
    <message>
        <source>right switch cluster</source>
        <translation>commodo droit</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Voies</translation>
    </message>
    <message>
        <source>Number of places</source>
        <translation>Nombre de voies</translation>
    </message>
    <message>
        <source>Rows of places</source>
        <translation>Rangs de voies</translation>
    </message>
    <message>
        <source>Seen from: the numbers run the other way on the other side</source>
        <translation>Vu de&#xa0;: de l&apos;autre côté, les numéros vont à l&apos;envers</translation>
    </message>
    <message>
        <source>Wire side</source>
        <translation>Côté fils</translation>
    </message>
    <message>
        <source>Mating face</source>
        <translation>Face de contact</translation>
    </message>
    <message>
        <source>Latch or key</source>
        <translation>Verrou ou détrompeur</translation>
    </message>
    <message>
        <source>top</source>
        <translation>en haut</translation>
    </message>
    <message>
        <source>Condition as found</source>
        <translation>État à l&apos;arrivée</translation>
    </message>
    <message>
        <source>two pins green, latch broken</source>
        <translation>deux broches vertes, verrou cassé</translation>
    </message>
    <message>
        <source>What was done about it</source>
        <translation>Ce qu&apos;on y a fait</translation>
    </message>
    <message>
        <source>cleaned, contact grease</source>
        <translation>nettoyé, graisse de contact</translation>
    </message>
</context>
<context>
    <name>GatheringMap</name>
    <message>
        <source>Photo of %1</source>
        <translation>Photo de %1</translation>
    </message>
    <message>
        <source>Tap place 1 on the photo</source>
        <translation>Toucher la voie 1 sur la photo</translation>
    </message>
    <message>
        <source>Place 1 is elsewhere</source>
        <translation>La voie 1 est ailleurs</translation>
    </message>
    <message>
        <source>Mark place 1</source>
        <translation>Marquer la voie 1</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>Moitié</translation>
    </message>
    <message>
        <source>Loom</source>
        <translation>Faisceau</translation>
    </message>
    <message>
        <source>Switch, lamp or unit</source>
        <translation>Commodo, lampe ou organe</translation>
    </message>
</context>
<context>
    <name>GatheringPage</name>
    <message>
        <source>Correct</source>
        <translation>Corriger</translation>
    </message>
    <message>
        <source>What is it?</source>
        <translation>Qu&apos;est-ce que c&apos;est&#xa0;?</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Correct what it is</source>
        <translation>Corriger ce que c&apos;est</translation>
    </message>
    <message>
        <source>The new part</source>
        <translation>La pièce neuve</translation>
    </message>
    <message>
        <source>Carry the wires over</source>
        <translation>Reporter les fils</translation>
    </message>
    <message>
        <source>with other connections than the old one</source>
        <translation>avec d&apos;autres branchements que l&apos;ancienne</translation>
    </message>
    <message>
        <source>A new part comes in its place</source>
        <translation>Une pièce neuve prend sa place</translation>
    </message>
</context>
<context>
    <name>HandOverPage</name>
    <message>
        <source>Hand over</source>
        <translation>Remise</translation>
    </message>
    <message>
        <source>Writing the record</source>
        <translation>Écriture du rapport</translation>
    </message>
    <message>
        <source>Writing</source>
        <translation>Écriture</translation>
    </message>
    <message>
        <source>Make the files again</source>
        <translation>Refaire les fichiers</translation>
    </message>
    <message>
        <source>Make the record</source>
        <translation>Faire le rapport</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Remis</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <translation>Remettre</translation>
    </message>
    <message>
        <source>See to it</source>
        <translation>S&apos;en occuper</translation>
    </message>
    <message>
        <source>Prove</source>
        <translation>Preuves</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Coût</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Signature</translation>
    </message>
    <message>
        <source>To be told at hand-over</source>
        <translation>À dire à la remise</translation>
    </message>
    <message>
        <source>brake eased in, holds straight</source>
        <translation>frein rodé, freine droit</translation>
    </message>
    <message>
        <source>Old parts</source>
        <translation>Pièces remplacées</translation>
    </message>
    <message>
        <source>given back in a bag</source>
        <translation>rendues dans un sachet</translation>
    </message>
    <message>
        <source>Waste taken</source>
        <translation>Déchets repris</translation>
    </message>
    <message>
        <source>0.9 l oil, old battery</source>
        <translation>0,9 l d&apos;huile, vieille batterie</translation>
    </message>
    <message>
        <source>What the owner will read</source>
        <translation>Ce que lira le propriétaire</translation>
    </message>
    <message>
        <source>Language of the record</source>
        <translation>Langue du rapport</translation>
    </message>
    <message numerus="yes">
        <source>Not yet: %n to see to above</source>
        <comment>what stops it</comment>
        <translation>
            <numerusform>Pas encore&#xa0;: %n à régler ci-dessus</numerusform>
            <numerusform>Pas encore&#xa0;: %n à régler ci-dessus</numerusform>
        </translation>
    </message>
    <message>
        <source>Then the record is made with it</source>
        <translation>Le compte rendu est fait avec</translation>
    </message>
    <message>
        <source>More was said since these files were made: make them again.</source>
        <translation>Depuis ces fichiers, autre chose a été dit&#xa0;: refaites-les.</translation>
    </message>
    <message>
        <source>not signed yet</source>
        <translation>pas encore signé</translation>
    </message>
    <message numerus="yes">
        <source>%1, and %n more</source>
        <comment>what asks</comment>
        <translation>
            <numerusform>%1, et %n de plus</numerusform>
            <numerusform>%1, et %n de plus</numerusform>
        </translation>
    </message>
    <message>
        <source>Hand it over all the same</source>
        <translation>Remettre quand même</translation>
    </message>
</context>
<context>
    <name>HardwareEntry</name>
    <message>
        <source>screw</source>
        <translation>vis</translation>
    </message>
    <message>
        <source>bolt</source>
        <translation>boulon</translation>
    </message>
    <message>
        <source>nut</source>
        <translation>écrou</translation>
    </message>
    <message>
        <source>washer</source>
        <translation>rondelle</translation>
    </message>
    <message>
        <source>clip</source>
        <translation>agrafe</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>goupille</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Combien</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Filetage</translation>
    </message>
    <message>
        <source>Length, mm</source>
        <translation>Longueur, mm</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Ce que c&apos;est</translation>
    </message>
    <message>
        <source>flange nut</source>
        <translation>écrou à embase</translation>
    </message>
    <message>
        <source>Its thread</source>
        <translation>Son filetage</translation>
    </message>
    <message>
        <source>Its length, mm</source>
        <translation>Sa longueur, mm</translation>
    </message>
    <message>
        <source>from the machine&apos;s manual; N.m unless another unit is typed</source>
        <translation>du manuel du véhicule&#xa0;; N.m si aucune autre unité n&apos;est écrite</translation>
    </message>
    <message>
        <source>Torque on refit</source>
        <translation>Couple de serrage</translation>
    </message>
</context>
<context>
    <name>HardwarePlaces</name>
    <message>
        <source>With a photo of this step, a tap on it shows later which hole each piece belongs to.</source>
        <translation>Avec une photo de cette étape, un toucher dessus montre plus tard dans quel trou va chaque pièce.</translation>
    </message>
    <message>
        <source>No photo yet</source>
        <translation>Pas encore de photo</translation>
    </message>
    <message>
        <source>Photo to tap on: where it sits</source>
        <translation>Photo à toucher&#xa0;: où ça se place</translation>
    </message>
    <message>
        <source>Another photo</source>
        <translation>Autre photo</translation>
    </message>
    <message>
        <source>Take it off the list</source>
        <translation>Ôter de la liste</translation>
    </message>
</context>
<context>
    <name>HeardReading</name>
    <message>
        <source>torque</source>
        <translation>couple</translation>
    </message>
    <message>
        <source>front tyre, pressure</source>
        <translation>pneu avant, pression</translation>
    </message>
    <message>
        <source>rear tyre, pressure</source>
        <translation>pneu arrière, pression</translation>
    </message>
    <message>
        <source>battery, voltage</source>
        <translation>batterie, tension</translation>
    </message>
    <message>
        <source>tread, depth</source>
        <translation>sculpture, profondeur</translation>
    </message>
</context>
<context>
    <name>HomePage</name>
    <message>
        <source>In the shop</source>
        <translation>À l&apos;atelier</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Prise en charge</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>The shop</source>
        <translation>L&apos;atelier</translation>
    </message>
    <message>
        <source>Calculations</source>
        <translation>Calculs</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>Take in the first machine: what it is, whose it is, why it is here.</source>
        <translation>Prendre en charge le premier véhicule&#xa0;: ce que c&apos;est, à qui il est, pourquoi il est là.</translation>
    </message>
    <message>
        <source>The shop is empty</source>
        <translation>L&apos;atelier est vide</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Remis</translation>
    </message>
    <message>
        <source>Machines handed over before these are found by Find.</source>
        <translation>Les véhicules remis avant se trouvent avec Chercher.</translation>
    </message>
    <message>
        <source>Rechecks due</source>
        <translation>Contrôles à échéance</translation>
    </message>
    <message>
        <source>Bring a shop back</source>
        <translation>Ramener un atelier</translation>
    </message>
</context>
<context>
    <name>InstrumentForm</name>
    <message>
        <source>Name, as the shop calls it</source>
        <translation>Nom, comme dit l&apos;atelier</translation>
    </message>
    <message>
        <source>wrench red</source>
        <translation>clé rouge</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>sorte</translation>
    </message>
    <message>
        <source>Choose the kind</source>
        <translation>Choisir la sorte</translation>
    </message>
    <message>
        <source>Largest reading, with its unit</source>
        <translation>Plus grande valeur, avec unité</translation>
    </message>
    <message>
        <source>Least reading</source>
        <translation>Plus petite valeur</translation>
    </message>
    <message>
        <source>One division, or the last digit</source>
        <translation>Une division, ou le dernier chiffre</translation>
    </message>
    <message>
        <source>Type and class by ISO 6789-1</source>
        <translation>Type et classe selon ISO 6789-1</translation>
    </message>
    <message>
        <source>Class by EN 837-1, as on the dial</source>
        <translation>Classe selon EN 837-1, comme au cadran</translation>
    </message>
    <message>
        <source>Limit of error: per cent of the reading</source>
        <translation>Limite d&apos;erreur&#xa0;: pour cent de la valeur</translation>
    </message>
    <message>
        <source>and digits</source>
        <translation>et chiffres</translation>
    </message>
    <message>
        <source>and a fixed part</source>
        <translation>et une part fixe</translation>
    </message>
    <message>
        <source>Feel of the hand: half of what two people read differently</source>
        <translation>Sensation de la main&#xa0;: la moitié de ce que deux personnes lisent de différent</translation>
    </message>
    <message>
        <source>Where the limit of error stands</source>
        <translation>Où est écrite la limite d&apos;erreur</translation>
    </message>
    <message>
        <source>maker&apos;s sheet</source>
        <translation>fiche du fabricant</translation>
    </message>
    <message>
        <source>Calibrated on</source>
        <translation>Étalonné le</translation>
    </message>
    <message>
        <source>Due again on</source>
        <translation>À refaire le</translation>
    </message>
    <message>
        <source>Kind of instrument</source>
        <translation>Sorte d&apos;instrument</translation>
    </message>
</context>
<context>
    <name>InstrumentPage</name>
    <message>
        <source>New instrument</source>
        <translation>Nouvel instrument</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Use it again</source>
        <translation>S&apos;en servir à nouveau</translation>
    </message>
    <message>
        <source>No longer used</source>
        <translation>Ne sert plus</translation>
    </message>
</context>
<context>
    <name>InstrumentsPage</name>
    <message>
        <source>Instruments</source>
        <translation>Instruments</translation>
    </message>
    <message>
        <source>Add an instrument</source>
        <translation>Ajouter un instrument</translation>
    </message>
    <message>
        <source>An instrument with its limit of error gives readings their verdict. Until the shop has its own, ordinary ones with assumed limits can be chosen.</source>
        <translation>Un instrument avec sa limite d&apos;erreur donne aux mesures leur verdict. En attendant ceux de l&apos;atelier, on en choisit d&apos;ordinaires aux limites supposées.</translation>
    </message>
    <message>
        <source>No instruments of the shop yet</source>
        <translation>L&apos;atelier n&apos;a pas encore d&apos;instruments</translation>
    </message>
    <message>
        <source>No longer used</source>
        <translation>Ne sert plus</translation>
    </message>
</context>
<context>
    <name>JobActions</name>
    <message>
        <source>Photos as found</source>
        <translation>Photos à l&apos;arrivée</translation>
    </message>
    <message>
        <source>Look over</source>
        <translation>Examen</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Remise</translation>
    </message>
    <message>
        <source>Refit</source>
        <translation>Remonter</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Démonter</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Mesurer</translation>
    </message>
</context>
<context>
    <name>JobMemos</name>
    <message>
        <source>Memo</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>the third bolt is the longer one</source>
        <translation>la troisième vis est plus longue</translation>
    </message>
    <message>
        <source>Keep the memo</source>
        <translation>Garder la note</translation>
    </message>
</context>
<context>
    <name>JobPage</name>
    <message>
        <source>Unsafe and open: %1</source>
        <translation>Danger non réglé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Came back: the job before</source>
        <translation>Revenu&#xa0;: le dossier d&apos;avant</translation>
    </message>
    <message numerus="yes">
        <source>%n to do</source>
        <comment>afterwards</comment>
        <translation>
            <numerusform>%n à faire</numerusform>
            <numerusform>%n à faire</numerusform>
        </translation>
    </message>
    <message>
        <source>Afterwards: adjust, bleed, try</source>
        <translation>Ensuite&#xa0;: régler, purger, essayer</translation>
    </message>
    <message>
        <source>Prove</source>
        <translation>Preuves</translation>
    </message>
    <message>
        <source>Photos as found, view by view</source>
        <translation>Photos à l&apos;arrivée, vue par vue</translation>
    </message>
    <message>
        <source>What works</source>
        <translation>Ce qui marche</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Rondes</translation>
    </message>
    <message numerus="yes">
        <source>%n open</source>
        <comment>findings</comment>
        <translation>
            <numerusform>%n ouvert</numerusform>
            <numerusform>%n ouverts</numerusform>
        </translation>
    </message>
    <message>
        <source>Look over</source>
        <translation>Examen</translation>
    </message>
    <message>
        <source>The owner&apos;s word on the cost</source>
        <translation>La parole du propriétaire sur le coût</translation>
    </message>
    <message numerus="yes">
        <source>%n to come</source>
        <comment>parts</comment>
        <translation>
            <numerusform>%n à venir</numerusform>
            <numerusform>%n à venir</numerusform>
        </translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>What the shop knows of this model</source>
        <translation>Ce que l&apos;atelier sait de ce modèle</translation>
    </message>
    <message>
        <source>Fluids and grease</source>
        <translation>Fluides et graisse</translation>
    </message>
    <message>
        <source>Machine and owner</source>
        <translation>Véhicule et propriétaire</translation>
    </message>
    <message>
        <source>Labels for the bags</source>
        <translation>Étiquettes des sachets</translation>
    </message>
    <message>
        <source>In the bags</source>
        <translation>Dans les sachets</translation>
    </message>
    <message>
        <source>here: %1</source>
        <translation>arrivé : %1</translation>
    </message>
    <message>
        <source>Wires</source>
        <translation>Fils</translation>
    </message>
    <message numerus="yes">
        <source>%n to go</source>
        <comment>checks</comment>
        <translation>
            <numerusform>encore %n</numerusform>
            <numerusform>encore %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Annuler&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>JobRow</name>
    <message>
        <source>Photo of %1</source>
        <translation>Photo de %1</translation>
    </message>
</context>
<context>
    <name>JobTasks</name>
    <message>
        <source>Tasks</source>
        <translation>Tâches</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>del</source>
        <comment>erases the last digit</comment>
        <translation>eff.</translation>
    </message>
</context>
<context>
    <name>KnowledgePage</name>
    <message>
        <source>Write the file for other shops</source>
        <translation>Écrire le fichier pour d&apos;autres ateliers</translation>
    </message>
    <message>
        <source>A touch takes a line over into the open job. Nothing enters it by itself.</source>
        <translation>Un toucher reprend une ligne dans le dossier ouvert. Rien n&apos;y entre tout seul.</translation>
    </message>
    <message>
        <source>Open a job of this model to take lines over.</source>
        <translation>Ouvrir un dossier de ce modèle pour reprendre des lignes.</translation>
    </message>
    <message>
        <source>Written, without anything of any owner: %1</source>
        <translation>Écrit, sans rien d&apos;aucun propriétaire&#xa0;: %1</translation>
    </message>
    <message>
        <source>Limits, torques, parts that fitted or not, wiring maps and times of other jobs will stand here.</source>
        <translation>Limites, couples, pièces qui allaient ou non, plans de fils et durées d&apos;autres dossiers seront ici.</translation>
    </message>
    <message>
        <source>Nothing known of this model yet</source>
        <translation>Rien de connu encore sur ce modèle</translation>
    </message>
    <message>
        <source>take</source>
        <translation>prendre</translation>
    </message>
</context>
<context>
    <name>LabelsPage</name>
    <message>
        <source>Labels for the bags</source>
        <translation>Étiquettes des sachets</translation>
    </message>
    <message>
        <source>Make the sheet</source>
        <translation>Faire la feuille</translation>
    </message>
    <message>
        <source>Steps that were bagged while stripping stand here.</source>
        <translation>Les étapes mises en sachet au démontage sont ici.</translation>
    </message>
    <message>
        <source>No bags yet</source>
        <translation>Pas encore de sachet</translation>
    </message>
    <message>
        <source>Written: %1. Print it at 100 %.</source>
        <translation>Écrit&#xa0;: %1. Imprimer à 100 %.</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Feuilles</translation>
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
        <translation>Place de la première étiquette</translation>
    </message>
</context>
<context>
    <name>LimitsEntry</name>
    <message>
        <source>What was measured</source>
        <translation>Ce qu&apos;on a mesuré</translation>
    </message>
    <message>
        <source>rear axle nut, torque</source>
        <translation>écrou d&apos;axe arrière, couple</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unité</translation>
    </message>
    <message>
        <source>plain number</source>
        <translation>nombre seul</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>instrument</translation>
    </message>
    <message>
        <source>The shop&apos;s instruments</source>
        <translation>Les instruments de l&apos;atelier</translation>
    </message>
    <message>
        <source>At least, %1</source>
        <translation>Au moins, %1</translation>
    </message>
    <message>
        <source>At most, %1</source>
        <translation>Au plus, %1</translation>
    </message>
    <message>
        <source>Where the limits come from</source>
        <translation>D&apos;où viennent les limites</translation>
    </message>
    <message>
        <source>Page or place</source>
        <translation>Page ou endroit</translation>
    </message>
    <message>
        <source>page 7-12</source>
        <translation>page 7-12</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
</context>
<context>
    <name>LineBackPage</name>
    <message>
        <source>Hoses and cables</source>
        <translation>Durites et câbles</translation>
    </message>
    <message>
        <source>Ends only</source>
        <translation>Bouts seuls</translation>
    </message>
    <message>
        <source>Says where its ends sit, alone</source>
        <translation>Dit seulement où vont ses bouts</translation>
    </message>
    <message>
        <source>Read silently</source>
        <translation>Lire en silence</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Lire à voix haute</translation>
    </message>
    <message>
        <source>A strip step is a hose, vent or cable when its title says so, or when you wrote down where its ends sit.</source>
        <translation>Une étape de démontage est une durite, un reniflard ou un câble si son titre le dit, ou si vous avez noté où vont ses bouts.</translation>
    </message>
    <message>
        <source>Nothing to read back</source>
        <translation>Rien à relire</translation>
    </message>
    <message>
        <source>Photo of %1 when it was stripped</source>
        <translation>Photo de %1 au démontage</translation>
    </message>
    <message>
        <source>Its step is not refitted yet.</source>
        <translation>L&apos;étape n&apos;est pas encore remontée.</translation>
    </message>
    <message>
        <source>%1 of %2 run as they did</source>
        <translation>%1 sur %2 passent comme avant</translation>
    </message>
    <message>
        <source>Each was seen where it runs and where it ends.</source>
        <translation>Chacun a été vu : passage et bouts.</translation>
    </message>
    <message>
        <source>These do not match. Put them right and read them back again:</source>
        <translation>Ceux-ci ne correspondent pas. Remettez-les en ordre et relisez-les&#xa0;:</translation>
    </message>
    <message>
        <source>These were not read back:</source>
        <translation>Ceux-ci n’ont pas été relus&#xa0;:</translation>
    </message>
    <message>
        <source>All were read. Go back to the one that does not match.</source>
        <translation>Tout a été relu. Revenez à celui qui ne correspond pas.</translation>
    </message>
</context>
<context>
    <name>ListRow</name>
    <message>
        <source>Photo of %1</source>
        <translation>Photo de %1</translation>
    </message>
</context>
<context>
    <name>LockBar</name>
    <message>
        <source>Now the button above, in the other corner.</source>
        <translation>Maintenant le bouton du haut, dans l&apos;autre coin.</translation>
    </message>
    <message>
        <source>Locked. What is touched here does nothing; speaking works.</source>
        <translation>Verrouillé. Toucher ne fait rien&#xa0;; parler marche.</translation>
    </message>
    <message>
        <source>The first of two touches</source>
        <translation>Le premier de deux appuis</translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation>Déverrouiller</translation>
    </message>
    <message>
        <source>The second of two touches</source>
        <translation>Le second de deux appuis</translation>
    </message>
    <message>
        <source>Unlock now</source>
        <translation>Oui, déverrouiller</translation>
    </message>
</context>
<context>
    <name>LookOverPage</name>
    <message>
        <source>Look over</source>
        <translation>Examen</translation>
    </message>
    <message>
        <source>Photo as found</source>
        <translation>Photo à l&apos;arrivée</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>À l&apos;arrivée</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Constat</translation>
    </message>
    <message>
        <source>Brakes, tyres, play in the steering, leaks, wiring: note what is not as it should be.</source>
        <translation>Freins, pneus, jeu de direction, fuites, fils&#xa0;: noter ce qui n&apos;est pas comme il faut.</translation>
    </message>
    <message>
        <source>Nothing found yet</source>
        <translation>Rien trouvé encore</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Réglé</translation>
    </message>
</context>
<context>
    <name>MeasureActions</name>
    <message>
        <source>Again</source>
        <translation>Encore</translation>
    </message>
    <message>
        <source>Keep mean</source>
        <translation>Garder la moyenne</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
</context>
<context>
    <name>MeasurePage</name>
    <message>
        <source>Measure</source>
        <translation>Mesurer</translation>
    </message>
    <message>
        <source>What and how</source>
        <translation>Quoi et avec quoi</translation>
    </message>
    <message>
        <source>To the value</source>
        <translation>À la valeur</translation>
    </message>
    <message>
        <source>Readings so far</source>
        <translation>Mesures jusqu&apos;ici</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>at: %1 · %2</source>
        <translation>à&#xa0;: %1 · %2</translation>
    </message>
    <message>
        <source>What is measured?</source>
        <translation>Que mesure-t-on&#xa0;?</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Calcul détaillé</translation>
    </message>
</context>
<context>
    <name>MeasureValue</name>
    <message>
        <source>Value in %1</source>
        <translation>Valeur en %1</translation>
    </message>
    <message>
        <source>changes the unit</source>
        <translation>change l&apos;unité</translation>
    </message>
    <message>
        <source>number</source>
        <translation>nombre</translation>
    </message>
</context>
<context>
    <name>MeasureWorking</name>
    <message>
        <source>one of several; tap to take it out</source>
        <translation>une de plusieurs&#xa0;; toucher pour la retirer</translation>
    </message>
    <message>
        <source>Nothing to show: no value, or no limits.</source>
        <translation>Rien à montrer&#xa0;: pas de valeur ou pas de limites.</translation>
    </message>
</context>
<context>
    <name>Measuring</name>
    <message>
        <source>at rest</source>
        <translation>à l&apos;arrêt</translation>
    </message>
    <message>
        <source>at idle</source>
        <translation>au ralenti</translation>
    </message>
    <message>
        <source>at revs</source>
        <translation>en régime</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Type the value on the keypad.</source>
        <translation>Taper la valeur sur le clavier.</translation>
    </message>
    <message>
        <source>Say where the limits come from.</source>
        <translation>Dire d&apos;où viennent les limites.</translation>
    </message>
    <message>
        <source>plain number</source>
        <translation>nombre seul</translation>
    </message>
    <message>
        <source>Type what was measured, such as &quot;rear axle nut, torque&quot;.</source>
        <translation>Écrire ce qu&apos;on a mesuré, par exemple &quot;écrou d&apos;axe arrière, couple&quot;.</translation>
    </message>
    <message>
        <source>%1, torque</source>
        <translation>%1, couple</translation>
    </message>
    <message>
        <source>to be %1, as the step says</source>
        <translation>doit être %1, dit l&apos;étape</translation>
    </message>
    <message>
        <source>next after: %1</source>
        <translation>après&#xa0;: %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>&quot;At least&quot; %1 is above &quot;At most&quot; %2, so that no value fits: change one of the two.</source>
        <translation>«&#xa0;Au moins&#xa0;» %1 est au-dessus de «&#xa0;Au plus&#xa0;» %2, aucune valeur ne convient&#xa0;: changez l’un des deux.</translation>
    </message>
</context>
<context>
    <name>MemoMeter</name>
    <message>
        <source>Recording, %1</source>
        <translation>Enregistre, %1</translation>
    </message>
    <message>
        <source>marks: %1</source>
        <translation>repères&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>MemoPage</name>
    <message>
        <source>Memo</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Note to a photo</source>
        <translation>Remarque sur une photo</translation>
    </message>
    <message>
        <source>Note to this photo</source>
        <translation>Remarque sur la photo</translation>
    </message>
    <message>
        <source>the third bolt is the longer one</source>
        <translation>la troisième vis est plus longue</translation>
    </message>
    <message>
        <source>Kept so far</source>
        <translation>Gardées jusqu&apos;ici</translation>
    </message>
</context>
<context>
    <name>Memos</name>
    <message>
        <source>photo, %1</source>
        <translation>photo&#xa0;: %1</translation>
    </message>
    <message>
        <source>Spoken memo</source>
        <translation>Note parlée</translation>
    </message>
    <message>
        <source>Memo kept</source>
        <translation>Note gardée</translation>
    </message>
</context>
<context>
    <name>ModelsPage</name>
    <message>
        <source>What the shop knows</source>
        <translation>Ce que sait l&apos;atelier</translation>
    </message>
    <message>
        <source>Learn from the file</source>
        <translation>Apprendre du fichier</translation>
    </message>
    <message>
        <source>Learn from another shop</source>
        <translation>Apprendre d&apos;un autre atelier</translation>
    </message>
    <message>
        <source>Learned: %1</source>
        <translation>Appris&#xa0;: %1</translation>
    </message>
    <message>
        <source>Its file</source>
        <translation>Son fichier</translation>
    </message>
</context>
<context>
    <name>MorePage</name>
    <message>
        <source>The shop</source>
        <translation>L&apos;atelier</translation>
    </message>
    <message>
        <source>To order</source>
        <translation>À commander</translation>
    </message>
    <message>
        <source>What the shop knows</source>
        <translation>Ce que sait l&apos;atelier</translation>
    </message>
    <message>
        <source>Scan a bag or a part</source>
        <translation>Scanner un sachet ou une pièce</translation>
    </message>
    <message>
        <source>Spreadsheets in and out</source>
        <translation>Tableurs, entrée et sortie</translation>
    </message>
    <message>
        <source>Rechecks due</source>
        <translation>Contrôles à échéance</translation>
    </message>
</context>
<context>
    <name>NeedsPage</name>
    <message>
        <source>To put it back</source>
        <translation>Pour le remonter</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>New every time, one a line</source>
        <translation>Neuf à chaque fois, un par ligne</translation>
    </message>
    <message>
        <source>split pin</source>
        <translation>goupille fendue</translation>
    </message>
    <message>
        <source>What goes on it</source>
        <translation>Ce qu&apos;on y met</translation>
    </message>
    <message>
        <source>grease, thread lock, none</source>
        <translation>graisse, frein-filet, rien</translation>
    </message>
    <message>
        <source>To adjust, bleed or try afterwards, one a line</source>
        <translation>À régler, purger ou essayer ensuite, un par ligne</translation>
    </message>
    <message>
        <source>bleed the brake until the lever stays hard</source>
        <translation>purger le frein jusqu&apos;à ce que le levier reste dur</translation>
    </message>
    <message>
        <source>Do not start until it is done</source>
        <translation>Ne pas démarrer avant que ce soit fait</translation>
    </message>
    <message>
        <source>Do not ride until it is done</source>
        <translation>Ne pas rouler avant que ce soit fait</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
</context>
<context>
    <name>NeedsPanel</name>
    <message>
        <source>Nothing follows from the words of the step. Look in the manual.</source>
        <translation>Les mots de l&apos;étape n&apos;indiquent rien. Voir le manuel.</translation>
    </message>
    <message>
        <source>Suggested by the words of the step: common practice. The manual comes first.</source>
        <translation>Suggéré par les mots de l&apos;étape&#xa0;: pratique courante. Le manuel passe avant.</translation>
    </message>
    <message>
        <source>To put it back</source>
        <translation>Pour le remonter</translation>
    </message>
    <message>
        <source>New: %1</source>
        <translation>Neuf&#xa0;: %1</translation>
    </message>
    <message>
        <source>Goes on it: %1</source>
        <translation>On y met&#xa0;: %1</translation>
    </message>
    <message>
        <source>Afterwards: %1</source>
        <translation>Ensuite&#xa0;: %1</translation>
    </message>
    <message>
        <source>As you set it.</source>
        <translation>Comme vous l&apos;avez décidé.</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Changer</translation>
    </message>
</context>
<context>
    <name>NumberEntry</name>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
</context>
<context>
    <name>OrdersPage</name>
    <message>
        <source>To order</source>
        <translation>À commander</translation>
    </message>
    <message>
        <source>Copy the list</source>
        <translation>Copier la liste</translation>
    </message>
    <message>
        <source>Text, spreadsheet, PDF</source>
        <translation>Texte, tableur, PDF</translation>
    </message>
    <message>
        <source>Parts that are wanted or asked for stand here until they are ordered.</source>
        <translation>Les pièces voulues ou demandées sont ici jusqu&apos;à leur commande.</translation>
    </message>
    <message>
        <source>Nothing to order</source>
        <translation>Rien à commander</translation>
    </message>
</context>
<context>
    <name>OwnersAnswer</name>
    <message>
        <source>Who said so</source>
        <translation>Qui l&apos;a dit</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Comment</translation>
    </message>
</context>
<context>
    <name>PageHeader</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Water and stray touches do nothing then</source>
        <translation>L&apos;eau et les appuis involontaires ne font alors rien</translation>
    </message>
    <message>
        <source>Lock the screen</source>
        <translation>Verrouiller l&apos;écran</translation>
    </message>
    <message>
        <source>More on this page</source>
        <translation>Plus sur cette page</translation>
    </message>
</context>
<context>
    <name>PartPage</name>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Ce qu&apos;elle devient</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Other makers&apos; numbers</source>
        <translation>Numéros d&apos;autres fabricants</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Fournisseur</translation>
    </message>
    <message>
        <source>Price without tax</source>
        <translation>Prix hors taxe</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Monnaie</translation>
    </message>
    <message>
        <source>nothing chosen</source>
        <translation>rien de choisi</translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation>À quoi elle sert</translation>
    </message>
    <message>
        <source>Does it fit this model?</source>
        <translation>Va-t-elle sur ce modèle&#xa0;?</translation>
    </message>
    <message>
        <source>Why not, or after what change</source>
        <translation>Pourquoi non, ou après quel changement</translation>
    </message>
    <message>
        <source>pivot hole 1 mm too small</source>
        <translation>trou d&apos;axe trop petit de 1 mm</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>from the dealer, by Friday</source>
        <translation>du concessionnaire, vendredi</translation>
    </message>
    <message>
        <source>What is it for?</source>
        <translation>À quoi sert-elle&#xa0;?</translation>
    </message>
    <message>
        <source>Old one beside the new one</source>
        <translation>L&apos;ancienne à côté de la neuve</translation>
    </message>
    <message>
        <source>Old and new part side by side</source>
        <translation>Pièce ancienne et neuve côte à côte</translation>
    </message>
</context>
<context>
    <name>PartsPage</name>
    <message>
        <source>Parts</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Add the part</source>
        <translation>Ajouter la pièce</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Another part</source>
        <translation>Autre pièce</translation>
    </message>
    <message>
        <source>switch cluster, right</source>
        <translation>commodo droit</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>from the dealer, by Friday</source>
        <translation>du concessionnaire, vendredi</translation>
    </message>
    <message>
        <source>Supplier, price, fit …</source>
        <translation>Fournisseur, prix …</translation>
    </message>
    <message>
        <source>What became of it?</source>
        <translation>Que devient-elle&#xa0;?</translation>
    </message>
</context>
<context>
    <name>PhotoFrame</name>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>This photo cannot be shown. Its file may be damaged.</source>
        <translation>Cette photo ne peut pas être montrée. Son fichier est peut-être abîmé.</translation>
    </message>
    <message>
        <source>Loading photo</source>
        <translation>Chargement de la photo</translation>
    </message>
</context>
<context>
    <name>PhotoViewer</name>
    <message>
        <source>Closer</source>
        <translation>Plus près</translation>
    </message>
    <message>
        <source>Whole</source>
        <translation>Entière</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
</context>
<context>
    <name>PicturePicker</name>
    <message>
        <source>Folder above %1</source>
        <translation>Répertoire au-dessus de %1</translation>
    </message>
    <message>
        <source>Looking for pictures</source>
        <translation>Recherche d&apos;images</translation>
    </message>
    <message>
        <source>No pictures here</source>
        <translation>Pas d&apos;images ici</translation>
    </message>
</context>
<context>
    <name>PlaceDetails</name>
    <message>
        <source>terminal</source>
        <translation>cosse</translation>
    </message>
    <message>
        <source>Size of the terminal, mm</source>
        <translation>Taille de la cosse, mm</translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation>À quoi elle sert</translation>
    </message>
    <message>
        <source>stop lamp</source>
        <translation>feu stop</translation>
    </message>
    <message>
        <source>terminal number by DIN 72552</source>
        <translation>numéro de borne DIN 72552</translation>
    </message>
    <message>
        <source>No number</source>
        <translation>Pas de numéro</translation>
    </message>
    <message>
        <source>Size of the wire, mm²</source>
        <translation>Section du fil, mm²</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Terminal</source>
        <translation>Cosse</translation>
    </message>
    <message>
        <source>Terminal number by DIN 72552</source>
        <translation>Numéro de borne DIN 72552</translation>
    </message>
</context>
<context>
    <name>PlacePage</name>
    <message>
        <source>as found</source>
        <translation>à l&apos;arrivée</translation>
    </message>
    <message>
        <source>as it should be</source>
        <translation>comme il se doit</translation>
    </message>
    <message>
        <source>Nothing there</source>
        <translation>Il n&apos;y a rien</translation>
    </message>
    <message>
        <source>Another colour</source>
        <translation>Autre couleur</translation>
    </message>
    <message>
        <source>Pick the colour</source>
        <translation>Choisir la couleur</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Which answer</source>
        <translation>Quelle réponse</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>À l&apos;arrivée</translation>
    </message>
    <message>
        <source>As it should be</source>
        <translation>Comme il se doit</translation>
    </message>
    <message>
        <source>As found: %1. As it should be: %2.</source>
        <translation>À l&apos;arrivée&#xa0;: %1. Comme il se doit&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Where that is known from</source>
        <translation>D&apos;où on le sait</translation>
    </message>
    <message>
        <source>manual, page 7-12</source>
        <translation>manuel, page 7-12</translation>
    </message>
    <message>
        <source>Not known yet</source>
        <translation>Pas encore connu</translation>
    </message>
    <message>
        <source>As refitted: %1</source>
        <translation>Au remontage&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>PlaceRow</name>
    <message>
        <source>refitted</source>
        <translation>remonté</translation>
    </message>
</context>
<context>
    <name>Plugin</name>
    <message>
        <source>A part of this program is missing or damaged (%1). Install it again; what is kept in the shop stays as it is.</source>
        <translation>Une partie du programme manque ou est abîmée (%1). Le réinstaller&#xa0;; ce que garde l&apos;atelier reste.</translation>
    </message>
</context>
<context>
    <name>Pressable</name>
    <message>
        <source>Working</source>
        <translation>En cours</translation>
    </message>
</context>
<context>
    <name>ProblemPanel</name>
    <message>
        <source>Try again</source>
        <translation>Réessayer</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Lu</translation>
    </message>
    <message>
        <source>Bring a shop back</source>
        <translation>Ramener un atelier</translation>
    </message>
</context>
<context>
    <name>ProgressStrip</name>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
</context>
<context>
    <name>ProofsPage</name>
    <message>
        <source>To be proved</source>
        <translation>À prouver</translation>
    </message>
    <message numerus="yes">
        <source>Keep %n proved</source>
        <comment>proofs</comment>
        <translation>
            <numerusform>Garder %n prouvé</numerusform>
            <numerusform>Garder %n prouvés</numerusform>
        </translation>
    </message>
    <message>
        <source>Touch what works</source>
        <translation>Toucher ce qui marche</translation>
    </message>
    <message>
        <source>One by one, or leave out</source>
        <translation>Un à un, ou laisser</translation>
    </message>
    <message>
        <source>measure it</source>
        <translation>mesurer</translation>
    </message>
    <message>
        <source>read it back</source>
        <translation>relire</translation>
    </message>
    <message>
        <source>works</source>
        <translation>marche</translation>
    </message>
    <message>
        <source>touch when it works</source>
        <translation>toucher quand ça marche</translation>
    </message>
    <message>
        <source>Brakes, wheels, steering, and what keeps it standing</source>
        <translation>Freins, roues, direction et ce qui le tient debout</translation>
    </message>
    <message>
        <source>The rest</source>
        <translation>Le reste</translation>
    </message>
    <message>
        <source>How, for those that are ticked</source>
        <translation>Comment, pour ceux cochés</translation>
    </message>
    <message>
        <source>tried on the lift, then on the yard</source>
        <translation>essayé sur le pont, puis dans la cour</translation>
    </message>
    <message numerus="yes">
        <source>%n not on again: cannot be proved yet</source>
        <comment>proofs</comment>
        <translation>
            <numerusform>%n pas remonté&#xa0;: ne peut pas encore être prouvé</numerusform>
            <numerusform>%n pas remontés&#xa0;: ne peuvent pas encore être prouvés</numerusform>
        </translation>
    </message>
    <message>
        <source>Have their answer</source>
        <translation>Ont leur réponse</translation>
    </message>
</context>
<context>
    <name>ProvePage</name>
    <message>
        <source>Prove</source>
        <translation>Preuves</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Proved</source>
        <translation>Prouvé</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Laisser</translation>
    </message>
    <message>
        <source>What is taken apart and put together again is proved here.</source>
        <translation>Ce qui est démonté et remonté se prouve ici.</translation>
    </message>
    <message>
        <source>Nothing was disturbed</source>
        <translation>Rien n&apos;a été touché</translation>
    </message>
    <message>
        <source>Everything that was disturbed is proved, or left out for a reason.</source>
        <translation>Tout ce qui a été touché est prouvé, ou laissé avec une raison.</translation>
    </message>
    <message>
        <source>How, or why it is left out</source>
        <translation>Comment, ou pourquoi on le laisse</translation>
    </message>
    <message>
        <source>read aloud and matched</source>
        <translation>relu à voix haute, conforme</translation>
    </message>
    <message numerus="yes">
        <source>%n not on again: cannot be proved yet</source>
        <comment>proofs</comment>
        <translation>
            <numerusform>%n pas remonté&#xa0;: ne peut pas encore être prouvé</numerusform>
            <numerusform>%n pas remontés&#xa0;: ne peuvent pas encore être prouvés</numerusform>
        </translation>
    </message>
    <message>
        <source>A second pair of eyes</source>
        <translation>Un second regard</translation>
    </message>
    <message>
        <source>What works now, beside what worked before</source>
        <translation>Ce qui marche maintenant, à côté d&apos;avant</translation>
    </message>
    <message>
        <source>Road test and rechecks</source>
        <translation>Essai sur route et contrôles</translation>
    </message>
    <message>
        <source>Read it back</source>
        <translation>Relire</translation>
    </message>
    <message>
        <source>Measure it</source>
        <translation>Mesurer</translation>
    </message>
    <message numerus="yes">
        <source>%n without an answer</source>
        <comment>complaints and functions</comment>
        <translation>
            <numerusform>%n sans réponse</numerusform>
            <numerusform>%n sans réponse</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ReadBackActions</name>
    <message>
        <source>Does not match</source>
        <translation>Pas conforme</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Enregistre</translation>
    </message>
    <message>
        <source>Again</source>
        <translation>Encore</translation>
    </message>
    <message>
        <source>Skip</source>
        <translation>Sauter</translation>
    </message>
    <message>
        <source>Back</source>
        <comment>to the one before</comment>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Begins with the first one again</source>
        <translation>Recommence au premier</translation>
    </message>
    <message>
        <source>To the next one; nothing is said of this one</source>
        <translation>Au suivant ; rien n&apos;est dit de celui-ci</translation>
    </message>
    <message>
        <source>Matches</source>
        <translation>Conforme</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Lire à voix haute</translation>
    </message>
</context>
<context>
    <name>ReadBackBefore</name>
    <message>
        <source>checked before: matches</source>
        <translation>déjà vérifié&#xa0;: conforme</translation>
    </message>
    <message>
        <source>checked before: does not match</source>
        <translation>déjà vérifié&#xa0;: pas conforme</translation>
    </message>
</context>
<context>
    <name>ReadBackChoice</name>
    <message>
        <source>Stop: the two answers differ. Which one holds?</source>
        <translation>Stop&#xa0;: les deux réponses diffèrent. Laquelle vaut&#xa0;?</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>ReadBackEnd</name>
    <message>
        <source>Finish</source>
        <translation>Terminer</translation>
    </message>
    <message>
        <source>Again</source>
        <translation>Encore</translation>
    </message>
    <message>
        <source>Compare photos</source>
        <translation>Comparer photos</translation>
    </message>
</context>
<context>
    <name>ReadBackMismatch</name>
    <message>
        <source>Written down: %1 does not match.</source>
        <translation>C&apos;est noté&#xa0;: %1 n&apos;est pas conforme.</translation>
    </message>
    <message>
        <source>Swapped</source>
        <translation>Inversé</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Regarder encore</translation>
    </message>
    <message>
        <source>Swapped with which?</source>
        <translation>Inversé avec lequel&#xa0;?</translation>
    </message>
    <message>
        <source>Next one</source>
        <translation>Suivant</translation>
    </message>
</context>
<context>
    <name>ReadBackPage</name>
    <message>
        <source>Read silently</source>
        <translation>Lire en silence</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Lire à voix haute</translation>
    </message>
    <message>
        <source>Read the unit half</source>
        <translation>Lire le côté organe</translation>
    </message>
    <message>
        <source>Read the loom half</source>
        <translation>Lire le côté faisceau</translation>
    </message>
    <message>
        <source>No wire of the loom half was confirmed when it was stripped.</source>
        <translation>Aucun fil du côté faisceau n&apos;a été confirmé au démontage.</translation>
    </message>
    <message>
        <source>No wire of the unit half was confirmed when it was stripped.</source>
        <translation>Aucun fil du côté organe n&apos;a été confirmé au démontage.</translation>
    </message>
    <message>
        <source>Nothing to read back</source>
        <translation>Rien à relire</translation>
    </message>
    <message>
        <source>%1 of %2 wires match</source>
        <translation>%1 fils sur %2 sont conformes</translation>
    </message>
    <message>
        <source>Each wire was seen in its place.</source>
        <translation>Chaque fil a été vu à sa place.</translation>
    </message>
    <message>
        <source>Wire only</source>
        <translation>Fil seul</translation>
    </message>
    <message>
        <source>Says its colour alone</source>
        <translation>Dit sa couleur seule</translation>
    </message>
    <message>
        <source>These do not match. Put them right and read them back again:</source>
        <translation>Ceux-ci ne correspondent pas. Remettez-les en ordre et relisez-les&#xa0;:</translation>
    </message>
    <message>
        <source>These were not read back:</source>
        <translation>Ceux-ci n’ont pas été relus&#xa0;:</translation>
    </message>
    <message>
        <source>The two answers differ. Touch the one that holds.</source>
        <translation>Les deux réponses diffèrent. Touchez celle qui vaut.</translation>
    </message>
    <message>
        <source>All were read. Go back to the one that does not match.</source>
        <translation>Tout a été relu. Revenez à celui qui ne correspond pas.</translation>
    </message>
</context>
<context>
    <name>ReadBackWire</name>
    <message>
        <source>Photo, %1 marked</source>
        <translation>Photo, %1 marquée</translation>
    </message>
</context>
<context>
    <name>ReadingRow</name>
    <message>
        <source>no verdict</source>
        <translation>pas de verdict</translation>
    </message>
    <message>
        <source>Shows the curve of its readings</source>
        <translation>Montre la courbe de ses mesures</translation>
    </message>
    <message>
        <source>no verdict: limits or the instrument&apos;s uncertainty are not known</source>
        <translation>pas de verdict&#xa0;: limites ou incertitude de l&apos;instrument inconnues</translation>
    </message>
    <message>
        <source>Measured once so far: a second reading makes a curve.</source>
        <translation>Mesuré une fois jusqu&apos;ici&#xa0;: une deuxième mesure fait une courbe.</translation>
    </message>
    <message>
        <source>It does not count any more, and can be brought back</source>
        <translation>Elle ne compte plus, et peut être rétablie</translation>
    </message>
    <message>
        <source>This reading was a mistake</source>
        <translation>Cette mesure était une erreur</translation>
    </message>
</context>
<context>
    <name>ReadingsPage</name>
    <message>
        <source>Readings</source>
        <translation>Mesures</translation>
    </message>
    <message>
        <source>Calculations</source>
        <translation>Calculs</translation>
    </message>
    <message>
        <source>Each value that is kept stands here with its limits and its verdict.</source>
        <translation>Chaque valeur gardée est ici avec ses limites et son verdict.</translation>
    </message>
    <message>
        <source>Nothing measured yet</source>
        <translation>Rien mesuré encore</translation>
    </message>
</context>
<context>
    <name>Record</name>
    <message>
        <source>%1 of %2 back together</source>
        <translation>%1 sur %2 remontées</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 to %2, unit side</source>
        <translation>%1 à %2, côté organe</translation>
    </message>
    <message>
        <source>%1 waits for: %2.</source>
        <translation>%1 attend&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1, also %2</source>
        <translation>%1, aussi %2</translation>
    </message>
    <message>
        <source>%1, at: %2</source>
        <translation>%1, à&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1, mean of %2 (%3)</source>
        <translation>%1, moyenne de %2 (%3)</translation>
    </message>
    <message>
        <source>%1, second wire</source>
        <translation>%1, second fil</translation>
    </message>
    <message>
        <source>%1, unit side</source>
        <translation>%1, côté organe</translation>
    </message>
    <message>
        <source>%1, unit side, second wire</source>
        <translation>%1, côté organe, second fil</translation>
    </message>
    <message>
        <source>%1, within %2</source>
        <translation>%1, à %2 près</translation>
    </message>
    <message>
        <source>%1: %2, %3 places</source>
        <translation>%1&#xa0;: %2, %3 voies</translation>
    </message>
    <message>
        <source>%1: connector with %2 places, numbered as seen from the %3</source>
        <translation>%1&#xa0;: connecteur à %2 voies, numérotées vues de&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1: connector with %2 places, numbered as seen from the %3; latch: %4</source>
        <translation>%1&#xa0;: connecteur à %2 voies, numérotées vues de&#xa0;: %3&#xa0;; verrou&#xa0;: %4</translation>
    </message>
    <message>
        <source>A wheel or its axle was worked on: have its fastening checked again after the first rides.</source>
        <translation>Une roue ou son axe a été travaillé&#xa0;: faire revoir la fixation après les premières sorties.</translation>
    </message>
    <message>
        <source>A wire was found that does not match the map: %1, place %2.</source>
        <translation>Un fil ne correspond pas au plan&#xa0;: %1, voie %2.</translation>
    </message>
    <message>
        <source>Agreed before: %1</source>
        <translation>Convenu avant&#xa0;: %1</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Avant et après</translation>
    </message>
    <message>
        <source>Before you ride</source>
        <translation>Avant de rouler</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Contrôle</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Couleur</translation>
    </message>
    <message>
        <source>Colours are those seen on this machine, by IEC 60757 letters (LBU, LGN: light blue and light green).</source>
        <translation>Les couleurs sont celles vues sur ce véhicule, en codes IEC 60757 (LBU, LGN&#xa0;: bleu clair et vert clair).</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Coût</translation>
    </message>
    <message>
        <source>Did not work</source>
        <translation>Ne marchait pas</translation>
    </message>
    <message>
        <source>Do not ride it: %1 is not on again.</source>
        <translation>Ne pas rouler&#xa0;: %1 n&apos;est pas remonté.</translation>
    </message>
    <message>
        <source>Do not start it: %1 is not on again.</source>
        <translation>Ne pas démarrer&#xa0;: %1 n&apos;est pas remonté.</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Bout</translation>
    </message>
    <message>
        <source>Expected: %1 minutes; it took %2.</source>
        <translation>Prévu&#xa0;: %1 minutes&#xa0;; il en a fallu %2.</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Pour</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Trouvé</translation>
    </message>
    <message>
        <source>Frame number</source>
        <translation>Numéro de cadre</translation>
    </message>
    <message>
        <source>Function</source>
        <translation>Fonction</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Remis</translation>
    </message>
    <message>
        <source>How serious</source>
        <translation>Gravité</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message>
        <source>Keys and papers received</source>
        <translation>Clés et papiers reçus</translation>
    </message>
    <message>
        <source>Left out, do not ride before it is done: %1 (%2).</source>
        <translation>Laissé, ne pas rouler avant que ce soit fait&#xa0;: %1 (%2).</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Limit from</source>
        <translation>Limite selon</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Véhicule</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Mesuré</translation>
    </message>
    <message>
        <source>Measured outside its limit: %1, %2.</source>
        <translation>Mesuré hors de sa limite&#xa0;: %1, %2.</translation>
    </message>
    <message>
        <source>Measured values hold for the day on which they were measured.</source>
        <translation>Les valeurs mesurées valent pour le jour de la mesure.</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutes</translation>
    </message>
    <message>
        <source>No supplier chosen</source>
        <translation>Pas de fournisseur choisi</translation>
    </message>
    <message>
        <source>No unsafe finding is open.</source>
        <translation>Aucun danger en attente.</translation>
    </message>
    <message>
        <source>Not back together: %1 (bag %2).</source>
        <translation>Pas remonté&#xa0;: %1 (sachet %2).</translation>
    </message>
    <message>
        <source>Not back together: %1.</source>
        <translation>Pas remonté&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Not done yet, do not ride before it is: %1.</source>
        <translation>Pas encore fait, ne pas rouler avant&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Note at hand-over</source>
        <translation>Remarque à la remise</translation>
    </message>
    <message>
        <source>Nothing that was taken apart was left apart.</source>
        <translation>Rien de démonté n&apos;est resté démonté.</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Maintenant</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Odometer when taken in</source>
        <translation>Compteur à l&apos;arrivée</translation>
    </message>
    <message>
        <source>Old parts: %1</source>
        <translation>Pièces remplacées&#xa0;: %1</translation>
    </message>
    <message>
        <source>On refit</source>
        <translation>Au remontage</translation>
    </message>
    <message>
        <source>Other steps</source>
        <translation>Autres étapes</translation>
    </message>
    <message>
        <source>Other work</source>
        <translation>Autre travail</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Propriétaire</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Parts to order, %1</source>
        <translation>Pièces à commander, %1</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Voie</translation>
    </message>
    <message>
        <source>Place %1: found with %2, but it should be %3 (%4).</source>
        <translation>Voie %1&#xa0;: trouvée avec %2, mais devrait être %3 (%4).</translation>
    </message>
    <message>
        <source>Place %1: found with %2, but it should be %3.</source>
        <translation>Voie %1&#xa0;: trouvée avec %2, mais devrait être %3.</translation>
    </message>
    <message>
        <source>Place %1: found with %2, refitted with %3.</source>
        <translation>Voie %1&#xa0;: trouvée avec %2, remontée avec %3.</translation>
    </message>
    <message>
        <source>Please note</source>
        <translation>À noter</translation>
    </message>
    <message>
        <source>Price without tax</source>
        <translation>Prix hors taxe</translation>
    </message>
    <message>
        <source>Record of work</source>
        <translation>Rapport de travail</translation>
    </message>
    <message>
        <source>Record of work %1</source>
        <translation>Rapport de travail %1</translation>
    </message>
    <message>
        <source>Ridden at</source>
        <translation>Roule à</translation>
    </message>
    <message>
        <source>Road test, %1</source>
        <translation>Essai sur route, %1</translation>
    </message>
    <message>
        <source>Road test, %1: %2</source>
        <translation>Essai sur route, %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Road test: %1</source>
        <translation>Essai sur route&#xa0;: %1</translation>
    </message>
    <message>
        <source>Second pair of eyes</source>
        <translation>Second regard</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Étapes</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Somme</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Pris en charge</translation>
    </message>
    <message>
        <source>Tax, %1 %</source>
        <translation>Taxe, %1 %</translation>
    </message>
    <message>
        <source>The brakes were worked on: try them at walking pace before you ride among others.</source>
        <translation>Les freins ont été travaillés&#xa0;: les essayer au pas avant de rouler dans la circulation.</translation>
    </message>
    <message>
        <source>The machine</source>
        <translation>Le véhicule</translation>
    </message>
    <message>
        <source>The machine&apos;s manual, local law and licensed practice come before anything on this page.</source>
        <translation>Le manuel du véhicule, la loi locale et les règles de l&apos;art passent avant tout ce qui est sur cette page.</translation>
    </message>
    <message>
        <source>The work is not finished: %1 of %2 steps are not back together. Do not ride it.</source>
        <translation>Le travail n&apos;est pas fini&#xa0;: %1 étapes sur %2 ne sont pas remontées. Ne pas rouler.</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>Together: %1</source>
        <translation>Total&#xa0;: %1</translation>
    </message>
    <message>
        <source>Too close to its limit to call: %1, %2.</source>
        <translation>Trop près de la limite pour trancher&#xa0;: %1, %2.</translation>
    </message>
    <message>
        <source>Unsafe and not put right: %1. You were told, and on %2 %3 did not want it put right. Do not ride it.</source>
        <translation>Danger non réparé&#xa0;: %1. Vous avez été prévenu, et le %2 %3 n&apos;a pas voulu la réparation. Ne pas rouler.</translation>
    </message>
    <message>
        <source>Unsafe and not yet put right: %1.</source>
        <translation>Danger pas encore réparé&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Unsafe and not yet put right: %1. To do: %2.</source>
        <translation>Danger pas encore réparé&#xa0;: %1. À faire&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Verdict</translation>
    </message>
    <message>
        <source>Waste taken: %1</source>
        <translation>Déchets repris&#xa0;: %1</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Ce qu&apos;il en est</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation>Ce qui est à échéance</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Ce qu&apos;on a trouvé</translation>
    </message>
    <message>
        <source>What was left</source>
        <translation>Ce qui reste</translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation>Ce qui a été mesuré</translation>
    </message>
    <message>
        <source>What was proved</source>
        <translation>Ce qui a été prouvé</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>When it came in</source>
        <translation>À l&apos;arrivée</translation>
    </message>
    <message>
        <source>Why it came in</source>
        <translation>Pourquoi il est venu</translation>
    </message>
    <message>
        <source>Wiring that was read</source>
        <translation>Fils relevés</translation>
    </message>
    <message>
        <source>Without a price: %1</source>
        <translation>Sans prix&#xa0;: %1</translation>
    </message>
    <message>
        <source>Without tax</source>
        <translation>Hors taxe</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Travail</translation>
    </message>
    <message>
        <source>Work done by</source>
        <translation>Travail fait par</translation>
    </message>
    <message>
        <source>Worked when taken in</source>
        <translation>Marchait à l&apos;arrivée</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>après %1</translation>
    </message>
    <message>
        <source>after %1, or by %2, whichever comes first</source>
        <translation>après %1, ou pour le %2, selon ce qui vient d&apos;abord</translation>
    </message>
    <message>
        <source>after refitting, %1</source>
        <translation>après remontage, %1</translation>
    </message>
    <message>
        <source>after, %1</source>
        <translation>après, %1</translation>
    </message>
    <message>
        <source>all %1 back together</source>
        <translation>les %1 remontées</translation>
    </message>
    <message>
        <source>also %1</source>
        <translation>aussi %1</translation>
    </message>
    <message>
        <source>and %1 more steps.</source>
        <translation>et encore %1 étapes.</translation>
    </message>
    <message>
        <source>as found, %1</source>
        <translation>à l&apos;arrivée, %1</translation>
    </message>
    <message>
        <source>asked for</source>
        <translation>demandée</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>at the next visit</source>
        <translation>à la prochaine visite</translation>
    </message>
    <message>
        <source>before, %1</source>
        <translation>avant, %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>pour le %1</translation>
    </message>
    <message>
        <source>finding, %1</source>
        <translation>constat, %1</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>montée</translation>
    </message>
    <message>
        <source>here, not fitted</source>
        <translation>arrivée, pas montée</translation>
    </message>
    <message>
        <source>no limit known</source>
        <translation>pas de limite connue</translation>
    </message>
    <message>
        <source>no verdict</source>
        <translation>pas de verdict</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>pas commencé</translation>
    </message>
    <message>
        <source>not checked</source>
        <translation>pas vérifié</translation>
    </message>
    <message>
        <source>not named, taken to be within %1</source>
        <translation>pas nommé, supposé à %1 près</translation>
    </message>
    <message>
        <source>not read: look at the machine</source>
        <translation>pas lu&#xa0;: voir sur le véhicule</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>pas essayé</translation>
    </message>
    <message>
        <source>not yet: this page shows how far the work has got</source>
        <translation>pas encore&#xa0;: cette page montre où en est le travail</translation>
    </message>
    <message>
        <source>on order</source>
        <translation>commandée</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>réparé</translation>
    </message>
    <message>
        <source>put right: %1</source>
        <translation>réparé&#xa0;: %1</translation>
    </message>
    <message>
        <source>signed by %1, %2</source>
        <translation>signé par %1, %2</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>bientôt</translation>
    </message>
    <message>
        <source>still open</source>
        <translation>encore ouvert</translation>
    </message>
    <message>
        <source>still open; %1 does not want it put right</source>
        <translation>encore ouvert&#xa0;; %1 ne veut pas la réparation</translation>
    </message>
    <message>
        <source>still open; to do: %1</source>
        <translation>encore ouvert&#xa0;; à faire&#xa0;: %1</translation>
    </message>
    <message>
        <source>waits for: %1</source>
        <translation>attend&#xa0;: %1</translation>
    </message>
    <message>
        <source>waits for: %1; %2 of %3 back together</source>
        <translation>attend&#xa0;: %1&#xa0;; %2 sur %3 remontées</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>voulue</translation>
    </message>
    <message>
        <source>while stripping, %1</source>
        <translation>au démontage, %1</translation>
    </message>
    <message>
        <source>wiring, %1</source>
        <translation>fils, %1</translation>
    </message>
    <message>
        <source>wrong part</source>
        <translation>mauvaise pièce</translation>
    </message>
    <message>
        <source>■ unsafe</source>
        <translation>■ danger</translation>
    </message>
    <message>
        <source>□ note</source>
        <translation>□ remarque</translation>
    </message>
    <message>
        <source>◇ not on again</source>
        <translation>◇ pas remonté</translation>
    </message>
    <message>
        <source>◇ not yet</source>
        <translation>◇ pas encore</translation>
    </message>
    <message>
        <source>◇ too close to call</source>
        <translation>◇ trop juste pour trancher</translation>
    </message>
    <message>
        <source>◧ soon</source>
        <translation>◧ bientôt</translation>
    </message>
    <message>
        <source>☒ does not</source>
        <translation>☒ ne marche pas</translation>
    </message>
    <message>
        <source>☒ does not match</source>
        <translation>☒ pas conforme</translation>
    </message>
    <message>
        <source>☒ left out: %1</source>
        <translation>☒ laissé&#xa0;: %1</translation>
    </message>
    <message>
        <source>☒ outside</source>
        <translation>☒ dehors</translation>
    </message>
    <message>
        <source>✓ matches</source>
        <translation>✓ conforme</translation>
    </message>
    <message>
        <source>✓ proved</source>
        <translation>✓ prouvé</translation>
    </message>
    <message>
        <source>✓ proved: %1</source>
        <translation>✓ prouvé&#xa0;: %1</translation>
    </message>
    <message>
        <source>✓ within</source>
        <translation>✓ dedans</translation>
    </message>
    <message>
        <source>✓ works</source>
        <translation>✓ marche</translation>
    </message>
    <message>
        <source>☒ not proved: %1</source>
        <translation>☒ pas prouvé&#xa0;: %1</translation>
    </message>
    <message>
        <source>empty, no wire</source>
        <translation>vide, aucun fil</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>pas nécessaire</translation>
    </message>
    <message>
        <source>A hose or cable does not run as it was found: %1.</source>
        <translation>Une durite ou un câble ne passe pas comme il a été trouvé&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Extrémités</translation>
    </message>
    <message>
        <source>Hose or cable</source>
        <translation>Durite ou câble</translation>
    </message>
    <message>
        <source>Hoses and cables</source>
        <translation>Durites et câbles</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Passage</translation>
    </message>
    <message>
        <source>Did not work when it came in and was not tried again: %1.</source>
        <translation>Ne marchait pas à l&apos;arrivée et n&apos;a pas été réessayé&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Does not work: %1 (%2).</source>
        <translation>Ne marche pas&#xa0;: %1 (%2).</translation>
    </message>
    <message>
        <source>Does not work: %1.</source>
        <translation>Ne marche pas&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Left as it was: %1 (%2).</source>
        <translation>Laissé tel quel&#xa0;: %1 (%2).</translation>
    </message>
    <message>
        <source>Part not fitted: %1.</source>
        <translation>Pièce pas montée&#xa0;: %1.</translation>
    </message>
    <message>
        <source>What the owner said was not answered: %1.</source>
        <translation>Ce que le propriétaire a dit est resté sans réponse&#xa0;: %1.</translation>
    </message>
    <message>
        <source>not tried: %1</source>
        <translation>pas essayé&#xa0;: %1</translation>
    </message>
    <message>
        <source>said to be put right: %1; not fitted: %2</source>
        <translation>dit réparé&#xa0;: %1&#xa0;; pas monté&#xa0;: %2</translation>
    </message>
    <message>
        <source>said to be put right; not fitted: %1</source>
        <translation>dit réparé&#xa0;; pas monté&#xa0;: %1</translation>
    </message>
    <message>
        <source>the owner&apos;s words</source>
        <translation>mots du propriétaire</translation>
    </message>
    <message>
        <source>☒ does not: %1</source>
        <translation>☒ ne marche pas&#xa0;: %1</translation>
    </message>
    <message>
        <source>✓ works: %1</source>
        <translation>✓ marche&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>RecordActions</name>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Marks this place in the memo, to find it again</source>
        <translation>Marque cet endroit de la note, pour le retrouver</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marquer</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
</context>
<context>
    <name>RefitActions</name>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>Wires</source>
        <translation>Fils</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Mesurer</translation>
    </message>
</context>
<context>
    <name>RefitPage</name>
    <message>
        <source>Refit</source>
        <translation>Remonter</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Enregistre</translation>
    </message>
    <message>
        <source>Is refitted</source>
        <translation>C&apos;est remonté</translation>
    </message>
    <message>
        <source>Refitted</source>
        <translation>Remonté</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Étapes</translation>
    </message>
    <message>
        <source>Nothing was stripped, so nothing is to be refitted.</source>
        <translation>Rien n&apos;a été démonté, donc rien n&apos;est à remonter.</translation>
    </message>
    <message>
        <source>All %1 steps are on again. Measure, prove, then hand over.</source>
        <translation>Les %1 étapes sont remontées. Mesurer, prouver, puis remettre.</translation>
    </message>
    <message>
        <source>Nothing to refit</source>
        <translation>Rien à remonter</translation>
    </message>
    <message>
        <source>All refitted</source>
        <translation>Tout remonté</translation>
    </message>
    <message>
        <source>Every task that is left waits. Under Steps each can be refitted all the same.</source>
        <translation>Chaque tâche restante attend. Sous Étapes, on peut remonter quand même.</translation>
    </message>
    <message>
        <source>All else waits</source>
        <translation>Tout le reste attend</translation>
    </message>
    <message>
        <source>Photo of %1 when it was stripped</source>
        <translation>Photo de %1 au démontage</translation>
    </message>
    <message>
        <source>Not yet: first %1</source>
        <translation>Pas encore&#xa0;: d&apos;abord %1</translation>
    </message>
    <message>
        <source>This task waits for %1</source>
        <translation>Cette tâche attend %1</translation>
    </message>
    <message>
        <source>It waits no more</source>
        <translation>N&apos;attend plus</translation>
    </message>
    <message>
        <source>Afterwards: adjust, bleed, try</source>
        <translation>Ensuite&#xa0;: régler, purger, essayer</translation>
    </message>
    <message>
        <source>Torques</source>
        <translation>Couples</translation>
    </message>
    <message>
        <source>Says its torques alone</source>
        <translation>Dit ses couples seuls</translation>
    </message>
    <message>
        <source>Nothing that is still to be refitted lies in bag %1.</source>
        <translation>Rien de ce qui reste à remonter n&apos;est dans le sachet %1.</translation>
    </message>
    <message>
        <source>Read silently</source>
        <translation>Lire en silence</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Lire à voix haute</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Read back how it runs</source>
        <translation>Relire son passage</translation>
    </message>
    <message>
        <source>Read hoses and cables back</source>
        <translation>Relire durites et câbles</translation>
    </message>
    <message>
        <source>Read the wires back</source>
        <translation>Relire les fils</translation>
    </message>
    <message>
        <source>Refitted all the same</source>
        <translation>Remonté quand même</translation>
    </message>
    <message>
        <source>Not all wires are read back. %1</source>
        <translation>Tous les fils ne sont pas relus. %1</translation>
    </message>
    <message>
        <source>It is not refitted</source>
        <translation>Ce n&apos;est pas remonté</translation>
    </message>
    <message>
        <source>All is on again, but not right: %1</source>
        <translation>Tout est remonté, mais pas en ordre&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>RefitStepsPage</name>
    <message>
        <source>Refit steps</source>
        <translation>Étapes de remontage</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>Which goes on first?</source>
        <translation>Que remonter d&apos;abord&#xa0;?</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Plus tôt</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Plus tard</translation>
    </message>
    <message>
        <source>The order is right</source>
        <translation>L&apos;ordre est bon</translation>
    </message>
    <message>
        <source>Change the order</source>
        <translation>Changer l&apos;ordre</translation>
    </message>
    <message>
        <source>Touch a step, then Earlier or Later.</source>
        <translation>Toucher une étape, puis Plus tôt ou Plus tard.</translation>
    </message>
    <message>
        <source>Read hoses and cables back</source>
        <translation>Relire durites et câbles</translation>
    </message>
</context>
<context>
    <name>RefusalPage</name>
    <message>
        <source>The owner says no</source>
        <translation>Le propriétaire refuse</translation>
    </message>
    <message>
        <source>Keep the refusal</source>
        <translation>Garder le refus</translation>
    </message>
    <message>
        <source>Refusal</source>
        <translation>Refus</translation>
    </message>
    <message>
        <source>Unsafe: %1</source>
        <translation>Danger&#xa0;: %1</translation>
    </message>
    <message>
        <source>The finding stays open. The record will say in bold that you told the owner, who refused, and on which day. Local law may forbid handing over an unsafe machine.</source>
        <translation>Le constat reste ouvert. Le rapport dira en gras que le propriétaire a été prévenu et a refusé, et quel jour. La loi locale peut interdire de remettre un véhicule dangereux.</translation>
    </message>
    <message>
        <source>In the owner&apos;s words</source>
        <translation>Avec les mots du propriétaire</translation>
    </message>
    <message>
        <source>will fetch it with a trailer</source>
        <translation>viendra avec une remorque</translation>
    </message>
</context>
<context>
    <name>RestoreLists</name>
    <message>
        <source>Backups</source>
        <translation>Sauvegardes</translation>
    </message>
    <message>
        <source>Looking for backups</source>
        <translation>Recherche des sauvegardes</translation>
    </message>
    <message>
        <source>None here. Put in the stick or the card that they are on, then open this page again.</source>
        <translation>Aucune. Mettre la clé ou la carte où elles sont, puis rouvrir cette page.</translation>
    </message>
    <message>
        <source>From another folder</source>
        <translation>D&apos;un autre répertoire</translation>
    </message>
    <message>
        <source>Other shops on this device</source>
        <translation>Autres ateliers sur cet appareil</translation>
    </message>
    <message>
        <source>The shop on this device can only be looked at. Of every entry, photo and memo in it that can still be read, and of the copies beside it, a new one can be made.</source>
        <translation>L&apos;atelier sur cet appareil ne peut qu&apos;être regardé. De chaque entrée, photo et note qui se lit encore, et des copies à côté, on peut en faire un nouveau.</translation>
    </message>
    <message>
        <source>Make a new shop of what can be read</source>
        <translation>Faire un nouvel atelier de ce qui se lit</translation>
    </message>
</context>
<context>
    <name>RestorePage</name>
    <message>
        <source>Bring a shop back</source>
        <translation>Ramener un atelier</translation>
    </message>
    <message>
        <source>Opening the shop</source>
        <translation>Ouverture de l&apos;atelier</translation>
    </message>
    <message>
        <source>Bringing back</source>
        <translation>En cours</translation>
    </message>
    <message>
        <source>Checking</source>
        <translation>Vérification</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Ramener</translation>
    </message>
    <message>
        <source>Bring back what can be read</source>
        <translation>Ramener ce qui se lit</translation>
    </message>
    <message>
        <source>Go on with this shop</source>
        <translation>Continuer avec celui-ci</translation>
    </message>
    <message>
        <source>Choose another one</source>
        <translation>Choisir autre chose</translation>
    </message>
    <message>
        <source>What is on this device now is not overwritten. It stays in %1 and is found here again.</source>
        <translation>Ce qui est maintenant sur cet appareil n&apos;est pas écrasé. Cela reste dans %1 et se retrouve ici.</translation>
    </message>
    <message>
        <source>The app was started with a folder of its own. At its next start it opens that one again, unless it is told otherwise with --store.</source>
        <translation>L&apos;application a été lancée avec un répertoire à elle. Au prochain lancement elle rouvre celui-là, sauf si --store dit autre chose.</translation>
    </message>
    <message>
        <source>Passphrase of this backup</source>
        <translation>Phrase secrète de cette sauvegarde</translation>
    </message>
    <message>
        <source>No backups here. Their names end in .backup.</source>
        <translation>Pas de sauvegarde ici. Leur nom finit par .backup.</translation>
    </message>
    <message>
        <source>Removing</source>
        <translation>Suppression en cours</translation>
    </message>
    <message>
        <source>Remove this shop</source>
        <translation>Supprimer cet atelier</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Remove it for good</source>
        <translation>Supprimer pour de bon</translation>
    </message>
    <message>
        <source>Its jobs, photos and memos go with it. Nothing but a backup brings them back.</source>
        <translation>Ses travaux, photos et notes partent avec lui. Seule une sauvegarde les ramène.</translation>
    </message>
</context>
<context>
    <name>RoadPage</name>
    <message>
        <source>Road test and rechecks</source>
        <translation>Essai sur route et contrôles</translation>
    </message>
    <message>
        <source>Keep the road test</source>
        <translation>Garder l&apos;essai</translation>
    </message>
    <message>
        <source>Keep the recheck</source>
        <translation>Garder le contrôle</translation>
    </message>
    <message>
        <source>Road test</source>
        <translation>Essai sur route</translation>
    </message>
    <message>
        <source>Recheck</source>
        <translation>Contrôle ultérieur</translation>
    </message>
    <message>
        <source>Ridden, km</source>
        <translation>Roulé, km</translation>
    </message>
    <message>
        <source>What it was like</source>
        <translation>Comment c&apos;était</translation>
    </message>
    <message>
        <source>holds straight, idles hot</source>
        <translation>file droit, tient le ralenti à chaud</translation>
    </message>
    <message>
        <source>To be looked at again</source>
        <translation>À revoir</translation>
    </message>
    <message>
        <source>due</source>
        <translation>à échéance</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>rear axle nut</source>
        <translation>écrou d&apos;axe arrière</translation>
    </message>
    <message>
        <source>After km</source>
        <translation>Après km</translation>
    </message>
    <message>
        <source>Or after days</source>
        <translation>Ou après jours</translation>
    </message>
</context>
<context>
    <name>RollingCopy</name>
    <message>
        <source>The daily copy of the shop could not be made; what you enter is still kept. %1</source>
        <translation>La copie du jour de l&apos;atelier n&apos;a pas pu être faite&#xa0;; ce qui est entré est gardé quand même. %1</translation>
    </message>
</context>
<context>
    <name>RoundListPage</name>
    <message>
        <source>Add the check</source>
        <translation>Ajouter le point</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Le changer</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Le retirer</translation>
    </message>
    <message>
        <source>Another check</source>
        <translation>Autre point</translation>
    </message>
    <message>
        <source>The check</source>
        <translation>Le point à contrôler</translation>
    </message>
    <message>
        <source>lever: firm, does not creep</source>
        <translation>levier&#xa0;: ferme, ne s&apos;enfonce pas</translation>
    </message>
    <message>
        <source>Part of the machine</source>
        <translation>Partie du véhicule</translation>
    </message>
    <message>
        <source>front brake</source>
        <translation>frein avant</translation>
    </message>
</context>
<context>
    <name>RoundListsPage</name>
    <message>
        <source>Lists of checks</source>
        <translation>Listes de contrôles</translation>
    </message>
</context>
<context>
    <name>RoundPage</name>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Fine</source>
        <translation>En ordre</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Constat</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>Pas fait</translation>
    </message>
    <message>
        <source>Every check of this round has its answer.</source>
        <translation>Chaque point de cette ronde a sa réponse.</translation>
    </message>
</context>
<context>
    <name>RoundsPage</name>
    <message>
        <source>Rounds</source>
        <translation>Rondes</translation>
    </message>
    <message>
        <source>Begin the round</source>
        <translation>Commencer la ronde</translation>
    </message>
    <message>
        <source>A new round: what does the machine have?</source>
        <translation>Nouvelle ronde&#xa0;: qu&apos;a ce véhicule&#xa0;?</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Moteur</translation>
    </message>
    <message>
        <source>Two-stroke</source>
        <translation>Deux-temps</translation>
    </message>
    <message>
        <source>Four-stroke</source>
        <translation>Quatre-temps</translation>
    </message>
    <message>
        <source>Drive</source>
        <translation>Transmission</translation>
    </message>
    <message>
        <source>Gears</source>
        <translation>À vitesses</translation>
    </message>
    <message>
        <source>Automatic</source>
        <translation>Automatique</translation>
    </message>
    <message>
        <source>Starts by</source>
        <translation>Démarre au</translation>
    </message>
    <message>
        <source>Kick</source>
        <translation>Kick</translation>
    </message>
    <message>
        <source>Electric</source>
        <translation>Démarreur</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Les deux</translation>
    </message>
    <message>
        <source>Front brake</source>
        <translation>Frein avant</translation>
    </message>
    <message>
        <source>Drum</source>
        <translation>Tambour</translation>
    </message>
    <message>
        <source>Disc</source>
        <translation>Disque</translation>
    </message>
    <message>
        <source>Rear brake</source>
        <translation>Frein arrière</translation>
    </message>
    <message>
        <source>Go on with the round</source>
        <translation>Poursuivre la ronde</translation>
    </message>
    <message>
        <source>Begin another round</source>
        <translation>Commencer une autre ronde</translation>
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
        <translation>sachet %1</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>couple</translation>
    </message>
    <message>
        <source>front tyre</source>
        <translation>pneu avant</translation>
    </message>
    <message>
        <source>rear tyre</source>
        <translation>pneu arrière</translation>
    </message>
    <message>
        <source>battery</source>
        <translation>batterie</translation>
    </message>
    <message>
        <source>tread</source>
        <translation>sculpture</translation>
    </message>
    <message>
        <source>Nothing was heard. Hold, say it, then let go.</source>
        <translation>Rien entendu. Tenir, parler, puis lâcher.</translation>
    </message>
    <message>
        <source>Not sure what that was. Say it again.</source>
        <translation>Pas sûr de ce que c&apos;était. Redire.</translation>
    </message>
    <message>
        <source>That is nothing that can be said here. Say it again.</source>
        <translation>Cela ne se dit pas ici. Redire.</translation>
    </message>
    <message>
        <source>That number is not believed. Say it again.</source>
        <translation>Ce nombre n&apos;est pas croyable. Redire.</translation>
    </message>
</context>
<context>
    <name>SavedMark</name>
    <message>
        <source>Saving</source>
        <translation>Enregistre</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Enregistré</translation>
    </message>
</context>
<context>
    <name>ScanPage</name>
    <message>
        <source>Scan</source>
        <translation>Scanner</translation>
    </message>
    <message>
        <source>Look for the number</source>
        <translation>Chercher le numéro</translation>
    </message>
    <message>
        <source>Hold the code of a bag or a part before the camera.</source>
        <translation>Tenir le code d&apos;un sachet ou d&apos;une pièce devant l&apos;appareil photo.</translation>
    </message>
    <message>
        <source>Or type the number</source>
        <translation>Ou taper le numéro</translation>
    </message>
</context>
<context>
    <name>SecondEyesPage</name>
    <message>
        <source>Second pair of eyes</source>
        <translation>Un second regard</translation>
    </message>
    <message>
        <source>Brakes, wheels, steering and suspension that were disturbed and are on again can be signed here.</source>
        <translation>Freins, roues, direction et suspension touchés et remontés se signent ici.</translation>
    </message>
    <message>
        <source>Nothing to sign</source>
        <translation>Rien à signer</translation>
    </message>
    <message>
        <source>Whoever did not do the work looks at it and signs by a touch.</source>
        <translation>Qui n&apos;a pas fait le travail le regarde et signe d&apos;un toucher.</translation>
    </message>
    <message>
        <source>Who looks</source>
        <translation>Qui regarde</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Lumière</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Nuit</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Soleil</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>The voice of a Linux device, and what is spoken to it, are English.</source>
        <translation>La voix d&apos;un appareil Linux et ce qu&apos;on lui dit sont en anglais.</translation>
    </message>
    <message>
        <source>Size of the text</source>
        <translation>Taille du texte</translation>
    </message>
    <message>
        <source>Hand that holds the phone</source>
        <translation>Main qui tient le téléphone</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Droite</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Gauche</translation>
    </message>
    <message>
        <source>How you see colours</source>
        <translation>Comment vous voyez les couleurs</translation>
    </message>
    <message>
        <source>As most do</source>
        <translation>Comme la plupart</translation>
    </message>
    <message>
        <source>Red weak</source>
        <translation>Rouge faible</translation>
    </message>
    <message>
        <source>Green weak</source>
        <translation>Vert faible</translation>
    </message>
    <message>
        <source>Blue weak</source>
        <translation>Bleu faible</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Combien</translation>
    </message>
    <message>
        <source>A little</source>
        <translation>Un peu</translation>
    </message>
    <message>
        <source>Much</source>
        <translation>Beaucoup</translation>
    </message>
    <message>
        <source>Movement on the screen</source>
        <translation>Mouvement à l&apos;écran</translation>
    </message>
    <message>
        <source>Some</source>
        <translation>Un peu</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Aucun</translation>
    </message>
    <message>
        <source>Where a photo was taken</source>
        <translation>Lieu d&apos;une photo</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Laissé</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Gardé</translation>
    </message>
    <message>
        <source>The shop&apos;s instruments</source>
        <translation>Les instruments de l&apos;atelier</translation>
    </message>
    <message>
        <source>The shop&apos;s lists of checks</source>
        <translation>Les listes de contrôles de l&apos;atelier</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Sauvegarde</translation>
    </message>
    <message>
        <source>Who works here</source>
        <translation>Qui travaille ici</translation>
    </message>
    <message>
        <source>Work as %1</source>
        <translation>Travailler comme %1</translation>
    </message>
    <message>
        <source>Button to hold for speaking, at the lift (English)</source>
        <translation>Bouton à tenir pour parler, au pont (anglais)</translation>
    </message>
    <message>
        <source>Hidden</source>
        <translation>Caché</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Montré</translation>
    </message>
    <message>
        <source>Hands-free, after &quot;turquoise battery&quot; (English). The microphone is then open while a screen at the lift is shown.</source>
        <translation>Mains libres, après &quot;turquoise battery&quot; (anglais). Le micro est alors ouvert tant qu&apos;un écran du pont se voit.</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Éteint</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Allumé</translation>
    </message>
    <message>
        <source>Pace of the voice that reads aloud</source>
        <translation>Allure de la voix qui lit</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Habituelle</translation>
    </message>
    <message>
        <source>Slower</source>
        <translation>Plus lent</translation>
    </message>
    <message>
        <source>Slow</source>
        <translation>Lente</translation>
    </message>
    <message>
        <source>Slowest</source>
        <translation>Très lente</translation>
    </message>
    <message>
        <source>A spoken memo ends</source>
        <translation>Une note parlée finit</translation>
    </message>
    <message>
        <source>By a touch</source>
        <translation>Par un toucher</translation>
    </message>
    <message>
        <source>By silence too</source>
        <translation>Par le silence aussi</translation>
    </message>
    <message>
        <source>The screen, while a job is open</source>
        <translation>L&apos;écran, tant qu&apos;un dossier est ouvert</translation>
    </message>
    <message>
        <source>Stays on</source>
        <translation>Reste allumé</translation>
    </message>
    <message>
        <source>As the device</source>
        <translation>Comme l&apos;appareil</translation>
    </message>
    <message>
        <source>It dims without a touch. The touch that wakes it does nothing else.</source>
        <translation>Il baisse sans appui. L&apos;appui qui le réveille ne fait rien d&apos;autre.</translation>
    </message>
    <message>
        <source>Never</source>
        <translation>Jamais</translation>
    </message>
    <message>
        <source>After 1 min</source>
        <translation>Après 1 min</translation>
    </message>
    <message>
        <source>After 2 min</source>
        <translation>Après 2 min</translation>
    </message>
    <message>
        <source>After 5 min</source>
        <translation>Après 5 min</translation>
    </message>
    <message>
        <source>Short tones for listening, recording, saved, refused</source>
        <translation>Sons brefs&#xa0;: écoute, enregistre, gardé, refusé</translation>
    </message>
</context>
<context>
    <name>SettlePage</name>
    <message>
        <source>Settle the finding</source>
        <translation>Régler le constat</translation>
    </message>
    <message>
        <source>To the parts</source>
        <translation>Aux pièces</translation>
    </message>
    <message>
        <source>Settle all the same</source>
        <translation>Réglé quand même</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Réglé</translation>
    </message>
    <message>
        <source>Not fitted: %1</source>
        <translation>Pas monté&#xa0;: %1</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>hose renewed, brake bled</source>
        <translation>flexible neuf, frein purgé</translation>
    </message>
</context>
<context>
    <name>SeverityMark</name>
    <message>
        <source>unsafe</source>
        <translation>danger</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>bientôt</translation>
    </message>
    <message>
        <source>note</source>
        <translation>remarque</translation>
    </message>
</context>
<context>
    <name>Sharing</name>
    <message>
        <source>The system refused the files. Share them from the system&apos;s file manager.</source>
        <translation>Le système a refusé les fichiers. Partagez-les depuis le gestionnaire de fichiers du système.</translation>
    </message>
    <message>
        <source>%1 is not there any more. Make it again.</source>
        <translation>%1 n’existe plus. Refaites-le.</translation>
    </message>
    <message>
        <source>This device has no program for %1. The file lies in %2.</source>
        <translation>Cet appareil n’a pas de programme pour %1. Le fichier se trouve dans %2.</translation>
    </message>
</context>
<context>
    <name>SheetsPage</name>
    <message>
        <source>Spreadsheets</source>
        <translation>Tableurs</translation>
    </message>
    <message>
        <source>Bring in: %1</source>
        <translation>Faire entrer&#xa0;: %1</translation>
    </message>
    <message>
        <source>Look at the file</source>
        <translation>Regarder le fichier</translation>
    </message>
    <message>
        <source>Write everything</source>
        <translation>Tout écrire</translation>
    </message>
    <message>
        <source>A sheet of machines has make and model in its head, one of parts has job and part.</source>
        <translation>Un tableau de véhicules a make et model en tête, un de pièces job et part.</translation>
    </message>
    <message>
        <source>File to bring in (CSV)</source>
        <translation>Fichier à faire entrer (CSV)</translation>
    </message>
    <message>
        <source>Not brought in: %1</source>
        <translation>Pas entrées&#xa0;: %1</translation>
    </message>
    <message>
        <source>Lines brought in: %1</source>
        <translation>Lignes entrées&#xa0;: %1</translation>
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
        <translation>Signature</translation>
    </message>
    <message>
        <source>Keep the signature</source>
        <translation>Garder la signature</translation>
    </message>
    <message>
        <source>Wipe it</source>
        <translation>Effacer</translation>
    </message>
    <message>
        <source>The machine was handed over with its record, and its cautions were read.</source>
        <translation>Le véhicule a été remis avec son rapport, et ses avertissements ont été lus.</translation>
    </message>
    <message>
        <source>Who signs</source>
        <translation>Qui signe</translation>
    </message>
    <message>
        <source>Field to sign in</source>
        <translation>Champ pour signer</translation>
    </message>
    <message>
        <source>Signed: %1</source>
        <translation>Signé&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>SnackWords</name>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
</context>
<context>
    <name>Snackbar</name>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
</context>
<context>
    <name>SpokenMemo</name>
    <message>
        <source>Pause</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Écouter</translation>
    </message>
    <message>
        <source>How fast it is played</source>
        <translation>À quelle vitesse elle se joue</translation>
    </message>
    <message>
        <source>Next mark</source>
        <translation>Repère suivant</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marquer</translation>
    </message>
</context>
<context>
    <name>StepList</name>
    <message>
        <source>waits for %1</source>
        <translation>attend %1</translation>
    </message>
</context>
<context>
    <name>StepsPage</name>
    <message>
        <source>Steps so far</source>
        <translation>Étapes jusqu&apos;ici</translation>
    </message>
    <message>
        <source>Each step that is stripped stands here, the last one first.</source>
        <translation>Chaque étape démontée est ici, la dernière d&apos;abord.</translation>
    </message>
    <message>
        <source>Nothing stripped yet</source>
        <translation>Rien démonté encore</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>remonté</translation>
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
        <translation>sachet %1</translation>
    </message>
    <message>
        <source>%1 in bag %2</source>
        <translation>%1 dans le sachet %2</translation>
    </message>
    <message>
        <source>Routing: %1</source>
        <translation>Passage&#xa0;: %1</translation>
    </message>
    <message>
        <source>Ends: %1</source>
        <translation>Bouts&#xa0;: %1</translation>
    </message>
    <message>
        <source>As found: %1</source>
        <translation>À l&apos;arrivée&#xa0;: %1</translation>
    </message>
    <message>
        <source>Let out: %1</source>
        <translation>Vidangé&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>StripActions</name>
    <message>
        <source>Wires</source>
        <translation>Fils</translation>
    </message>
    <message>
        <source>Held by</source>
        <translation>Tenu par</translation>
    </message>
    <message>
        <source>Bag</source>
        <translation>Sachet</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Sachet %1</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Enregistre</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Étape suivante</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
</context>
<context>
    <name>StripDetails</name>
    <message>
        <source>Where it runs, what it passes</source>
        <translation>Par où ça passe, le long de quoi</translation>
    </message>
    <message>
        <source>left of the headstock, over the clutch cable</source>
        <translation>à gauche de la colonne, par-dessus le câble d&apos;embrayage</translation>
    </message>
    <message>
        <source>Where its ends sit: hose, vent, cable</source>
        <translation>Où vont les bouts&#xa0;: durite, mise à l&apos;air, câble</translation>
    </message>
    <message>
        <source>tap, upper nipple; carburettor, right</source>
        <translation>robinet haut&#xa0;; carburateur droit</translation>
    </message>
    <message>
        <source>Adjustment as found: turns, marks, shims</source>
        <translation>Réglage à l&apos;arrivée&#xa0;: tours, repères, cales</translation>
    </message>
    <message>
        <source>adjuster 7 turns out, mark at 2 o&apos;clock</source>
        <translation>dévissé de 7 tours, repère à 2 h</translation>
    </message>
    <message>
        <source>Fluid let out, and how much</source>
        <translation>Fluide vidangé, et combien</translation>
    </message>
    <message>
        <source>brake fluid, 40 ml</source>
        <translation>liquide de frein, 40 ml</translation>
    </message>
</context>
<context>
    <name>StripEntryActions</name>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
</context>
<context>
    <name>StripPage</name>
    <message>
        <source>Step %1</source>
        <translation>Étape %1</translation>
    </message>
    <message>
        <source>step %1</source>
        <translation>étape %1</translation>
    </message>
    <message>
        <source>Correct step</source>
        <translation>Corriger l&apos;étape</translation>
    </message>
    <message>
        <source>Held by</source>
        <translation>Tenu par</translation>
    </message>
    <message>
        <source>Bag</source>
        <translation>Sachet</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Démonter</translation>
    </message>
    <message>
        <source>Keep the bag</source>
        <translation>Garder le sachet</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Ajouter</translation>
    </message>
    <message>
        <source>Steps so far</source>
        <translation>Étapes jusqu&apos;ici</translation>
    </message>
    <message>
        <source>Where it sits</source>
        <translation>Où ça se place</translation>
    </message>
    <message>
        <source>For the refit</source>
        <translation>Pour le remontage</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
</context>
<context>
    <name>StripPanel</name>
    <message>
        <source>Photo of this step</source>
        <translation>Photo de cette étape</translation>
    </message>
    <message>
        <source>What comes off</source>
        <translation>Ce qui part</translation>
    </message>
    <message>
        <source>unplug 6-place connector</source>
        <translation>débrancher le connecteur à 6 voies</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>spring hooked in the left hole</source>
        <translation>ressort accroché au trou gauche</translation>
    </message>
    <message>
        <source>Add a caution</source>
        <translation>Ajouter un avertissement</translation>
    </message>
    <message>
        <source>Which caution belongs before this step?</source>
        <translation>Quel avertissement va avant cette étape&#xa0;?</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>tap: where it sits</source>
        <translation>toucher&#xa0;: où ça se place</translation>
    </message>
    <message>
        <source>not placed</source>
        <translation>pas placé</translation>
    </message>
    <message>
        <source>Routing, fluids, adjustment</source>
        <translation>Passage, fluides, réglage</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Mesurer</translation>
    </message>
</context>
<context>
    <name>StripTask</name>
    <message>
        <source>task of this step</source>
        <translation>tâche de cette étape</translation>
    </message>
    <message>
        <source>tasks can wait one by one</source>
        <translation>les tâches peuvent attendre une à une</translation>
    </message>
    <message>
        <source>No task</source>
        <translation>Aucune tâche</translation>
    </message>
    <message>
        <source>New task</source>
        <translation>Nouvelle tâche</translation>
    </message>
    <message>
        <source>front brake</source>
        <translation>frein avant</translation>
    </message>
    <message>
        <source>Which task does this step belong to?</source>
        <translation>À quelle tâche est cette étape&#xa0;?</translation>
    </message>
</context>
<context>
    <name>StrokeActions</name>
    <message>
        <source>Confirm</source>
        <translation>Confirmer</translation>
    </message>
    <message>
        <source>It is %1</source>
        <translation>C&apos;est %1</translation>
    </message>
    <message>
        <source>Next open wire</source>
        <translation>Fil ouvert suivant</translation>
    </message>
    <message>
        <source>Other colour</source>
        <translation>Autre couleur</translation>
    </message>
    <message>
        <source>All %1 sure</source>
        <translation>Tous les %1 sûrs</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>Look at this wire again</source>
        <translation>Revoir ce fil</translation>
    </message>
    <message>
        <source>White paper is in the picture: tap it</source>
        <translation>Du papier blanc est dans l&apos;image&#xa0;: le toucher</translation>
    </message>
    <message>
        <source>Turn round: place 1 is at the other end</source>
        <translation>Retourner&#xa0;: la voie 1 est à l&apos;autre bout</translation>
    </message>
    <message>
        <source>This place is empty</source>
        <translation>Cette voie est vide</translation>
    </message>
    <message>
        <source>In a place of its own</source>
        <translation>Dans une voie à lui</translation>
    </message>
    <message>
        <source>Second wire of the place before</source>
        <translation>Second fil de la voie d&apos;avant</translation>
    </message>
    <message>
        <source>A wire is missing before this one</source>
        <translation>Il manque un fil avant celui-ci</translation>
    </message>
    <message>
        <source>A wire is missing after this one</source>
        <translation>Il manque un fil après celui-ci</translation>
    </message>
    <message>
        <source>This is no wire: take it out</source>
        <translation>Ce n&apos;est pas un fil&#xa0;: le retirer</translation>
    </message>
    <message>
        <source>Not confirmed any more</source>
        <translation>Plus confirmé</translation>
    </message>
    <message>
        <source>Bring the rows before the last stroke back</source>
        <translation>Ramener les lignes d&apos;avant le dernier trait</translation>
    </message>
    <message>
        <source>The photo shows one side of a wire. Turn each of them: a tracer may lie on the other side.</source>
        <translation>La photo montre un côté du fil. Les tourner tous&#xa0;: un liseré peut être de l’autre côté.</translation>
    </message>
    <message>
        <source>All %1, each was turned</source>
        <translation>Les %1, chacun tourné</translation>
    </message>
    <message>
        <source>One by one</source>
        <translation>Un par un</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fini</translation>
    </message>
</context>
<context>
    <name>StrokeFinding</name>
    <message>
        <source>Take these %1</source>
        <translation>Prendre ces %1</translation>
    </message>
    <message>
        <source>None touched</source>
        <translation>Aucun touché</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation>Tous</translation>
    </message>
    <message>
        <source>Stroke instead</source>
        <translation>Plutôt un trait</translation>
    </message>
</context>
<context>
    <name>StrokePage</name>
    <message>
        <source>%1 open</source>
        <translation>%1 ouverts</translation>
    </message>
    <message>
        <source>Opening the photo</source>
        <translation>Ouverture de la photo</translation>
    </message>
    <message>
        <source>Reading the wires</source>
        <translation>Lecture des fils</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Tap the middle of the white paper.</source>
        <translation>Toucher le milieu du papier blanc.</translation>
    </message>
    <message>
        <source>Now tap the last wire.</source>
        <translation>Toucher maintenant le dernier fil.</translation>
    </message>
    <message>
        <source>Stroke across the wires, place 1 first. Or tap the first wire and then the last.</source>
        <translation>Passer le doigt en travers des fils, voie 1 d&apos;abord. Ou toucher le premier fil puis le dernier.</translation>
    </message>
    <message>
        <source>Open the photo again</source>
        <translation>Rouvrir la photo</translation>
    </message>
    <message>
        <source>Find the wires without a stroke</source>
        <translation>Trouver les fils sans trait</translation>
    </message>
    <message>
        <source>White paper is in the picture</source>
        <translation>Du papier blanc est dans l&apos;image</translation>
    </message>
    <message>
        <source>This one is not sure. Say its colour.</source>
        <translation>Celui-ci n&apos;est pas sûr. Dire sa couleur.</translation>
    </message>
    <message>
        <source>No wire is open any more.</source>
        <translation>Plus aucun fil n&apos;est ouvert.</translation>
    </message>
    <message>
        <source>Say the colour alone here. Terminal and function belong to the place.</source>
        <translation>Ici, dire la couleur seule. Cosse et fonction vont à la voie.</translation>
    </message>
</context>
<context>
    <name>StrokePhoto</name>
    <message>
        <source>Photo of the wires</source>
        <translation>Photo des fils</translation>
    </message>
</context>
<context>
    <name>TakeInMachine</name>
    <message>
        <source>Machine</source>
        <translation>Véhicule</translation>
    </message>
    <message>
        <source>Make</source>
        <translation>Marque</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modèle</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Année</translation>
    </message>
    <message>
        <source>Frame number</source>
        <translation>Numéro de cadre</translation>
    </message>
    <message>
        <source>Odometer</source>
        <translation>Compteur</translation>
    </message>
    <message>
        <source>Odometer counts</source>
        <translation>Le compteur compte</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>miles</source>
        <translation>miles</translation>
    </message>
    <message>
        <source>Ridden at, metres above the sea</source>
        <translation>Roule à, mètres d&apos;altitude</translation>
    </message>
    <message>
        <source>Rider with clothes, kg</source>
        <translation>Pilote habillé, kg</translation>
    </message>
    <message>
        <source>Luggage or second rider, kg</source>
        <translation>Bagages ou passager, kg</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>two riders on Sundays, parcels</source>
        <translation>à deux le dimanche, colis</translation>
    </message>
</context>
<context>
    <name>TakeInOwner</name>
    <message>
        <source>Owner</source>
        <translation>Propriétaire</translation>
    </message>
    <message>
        <source>Owner&apos;s name</source>
        <translation>Nom du propriétaire</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Téléphone</translation>
    </message>
    <message>
        <source>Mail</source>
        <translation>Courriel</translation>
    </message>
</context>
<context>
    <name>TakeInPage</name>
    <message>
        <source>Machine and owner</source>
        <translation>Véhicule et propriétaire</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Prise en charge</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Enregistre</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Open the job</source>
        <translation>Ouvrir le dossier</translation>
    </message>
    <message>
        <source>Continues the entry from %1</source>
        <translation>Reprend l&apos;entrée de %1</translation>
    </message>
    <message>
        <source>Open the job first, then say it again.</source>
        <translation>D&apos;abord ouvrir le dossier, puis le redire.</translation>
    </message>
</context>
<context>
    <name>TakeInReason</name>
    <message>
        <source>Why it is here</source>
        <translation>Pourquoi il est là</translation>
    </message>
    <message>
        <source>no lights, stood six winters</source>
        <translation>pas de feux, arrêté six hivers</translation>
    </message>
    <message>
        <source>Keys and papers received</source>
        <translation>Clés et papiers reçus</translation>
    </message>
    <message>
        <source>two keys, registration</source>
        <translation>deux clés, carte grise</translation>
    </message>
    <message>
        <source>What works</source>
        <translation>Ce qui marche</translation>
    </message>
    <message>
        <source>kicks over, front brake holds</source>
        <translation>part au kick, le frein avant tient</translation>
    </message>
    <message>
        <source>What does not work</source>
        <translation>Ce qui ne marche pas</translation>
    </message>
    <message>
        <source>horn, all lamps</source>
        <translation>klaxon, tous les feux</translation>
    </message>
</context>
<context>
    <name>TalkAloud</name>
    <message>
        <source>Say again</source>
        <translation>Redire</translation>
    </message>
    <message>
        <source>Says it again, more slowly; after the slowest comes the usual pace</source>
        <translation>Le redit, plus lentement&#xa0;; après le plus lent revient l&apos;allure normale</translation>
    </message>
    <message>
        <source>Slower</source>
        <translation>Plus lent</translation>
    </message>
</context>
<context>
    <name>TalkBar</name>
    <message>
        <source>Hearing</source>
        <translation>Écoute</translation>
    </message>
    <message>
        <source>While it is held, say: %1</source>
        <translation>En le tenant, dire&#xa0;: %1</translation>
    </message>
    <message>
        <source>Listening</source>
        <translation>À l&apos;écoute</translation>
    </message>
    <message>
        <source>Hold and speak</source>
        <translation>Tenir et parler</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>Il n&apos;y a rien à annuler.</translation>
    </message>
    <message>
        <source>This one has only just come up. Look at it, then say it again.</source>
        <translation>Celui-ci vient d&apos;apparaître. Le regarder, puis redire.</translation>
    </message>
</context>
<context>
    <name>TalkHeard</name>
    <message>
        <source>Heard: %1</source>
        <translation>Entendu&#xa0;: %1</translation>
    </message>
    <message>
        <source>Takes back what was heard</source>
        <translation>Retire ce qui fut entendu</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Listening: say it.</source>
        <translation>À l&apos;écoute&#xa0;: parler.</translation>
    </message>
    <message>
        <source>Microphone on. Say &quot;%1&quot; first.</source>
        <translation>Micro allumé. Dire d&apos;abord &quot;%1&quot;.</translation>
    </message>
</context>
<context>
    <name>TalkTool</name>
    <message>
        <source>Buttons only</source>
        <translation>Boutons seuls</translation>
    </message>
    <message>
        <source>Speak</source>
        <translation>Parler</translation>
    </message>
</context>
<context>
    <name>TaskPage</name>
    <message>
        <source>Stop the watch</source>
        <translation>Arrêter le chrono</translation>
    </message>
    <message>
        <source>Start the watch</source>
        <translation>Lancer le chrono</translation>
    </message>
    <message>
        <source>It waits no more</source>
        <translation>N&apos;attend plus</translation>
    </message>
    <message>
        <source>Let it wait</source>
        <translation>Mettre en attente</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Waits for %1</source>
        <translation>Attend %1</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Ouverte</translation>
    </message>
    <message>
        <source>The watch runs. %1 so far.</source>
        <translation>Le chrono tourne. %1 jusqu&apos;ici.</translation>
    </message>
    <message>
        <source>Time spent: %1</source>
        <translation>Temps passé&#xa0;: %1</translation>
    </message>
    <message>
        <source>This watch ran longer than anyone works at a stretch. How many minutes was it?</source>
        <translation>Ce chrono a tourné plus qu&apos;on ne travaille d&apos;affilée. Combien de minutes était-ce&#xa0;?</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutes</translation>
    </message>
    <message>
        <source>It was that long</source>
        <translation>C&apos;était ça</translation>
    </message>
    <message>
        <source>What does it wait for?</source>
        <translation>Qu&apos;attend-elle&#xa0;?</translation>
    </message>
    <message>
        <source>brake shoes, on order</source>
        <translation>mâchoires de frein, commandées</translation>
    </message>
    <message>
        <source>To be finished first</source>
        <translation>À finir avant</translation>
    </message>
    <message>
        <source>first</source>
        <translation>d&apos;abord</translation>
    </message>
    <message>
        <source>What it waits for</source>
        <translation>Ce qu&apos;elle attend</translation>
    </message>
    <message>
        <source>What holds it up?</source>
        <translation>Qu&apos;est-ce qui la bloque&#xa0;?</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Propriétaire</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Else</source>
        <translation>Autre</translation>
    </message>
</context>
<context>
    <name>TextEntry</name>
    <message>
        <source>Clear %1</source>
        <translation>Vider %1</translation>
    </message>
    <message>
        <source>e.g. %1</source>
        <translation>p. ex. %1</translation>
    </message>
</context>
<context>
    <name>TextEntryArea</name>
    <message>
        <source>Clear %1</source>
        <translation>Vider %1</translation>
    </message>
    <message>
        <source>e.g. %1</source>
        <translation>p. ex. %1</translation>
    </message>
</context>
<context>
    <name>TwinsPanel</name>
    <message>
        <source>Twins</source>
        <translation>Jumeaux</translation>
    </message>
    <message>
        <source>Tag them</source>
        <translation>Les repérer</translation>
    </message>
    <message>
        <source>Tag on %1</source>
        <translation>Repère sur %1</translation>
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
        <translation>dedans</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>dehors</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>trop juste</translation>
    </message>
</context>
<context>
    <name>WireLoupe</name>
    <message>
        <source>The wire that was understood, enlarged</source>
        <translation>Le fil compris, agrandi</translation>
    </message>
</context>
<context>
    <name>WirePicker</name>
    <message>
        <source>Choose the base colour again</source>
        <translation>Rechoisir la couleur de base</translation>
    </message>
    <message>
        <source>Base colour</source>
        <translation>Couleur de base</translation>
    </message>
    <message>
        <source>%1: which tracer?</source>
        <translation>%1&#xa0;: quel liseré&#xa0;?</translation>
    </message>
    <message>
        <source>no tracer</source>
        <translation>sans liseré</translation>
    </message>
</context>
<context>
    <name>WireSteps</name>
    <message>
        <source>The next wire on that side was meant</source>
        <translation>C&apos;était le fil voisin de ce côté</translation>
    </message>
    <message>
        <source>Wire above</source>
        <translation>Fil au-dessus</translation>
    </message>
    <message>
        <source>Wire left</source>
        <translation>Fil à gauche</translation>
    </message>
    <message>
        <source>Wire below</source>
        <translation>Fil au-dessous</translation>
    </message>
    <message>
        <source>Wire right</source>
        <translation>Fil à droite</translation>
    </message>
</context>
<context>
    <name>Wiring</name>
    <message>
        <source>%1 and %2</source>
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>no tag</source>
        <translation>sans repère</translation>
    </message>
    <message>
        <source>tag %1</source>
        <translation>repère %1</translation>
    </message>
    <message>
        <source>%1 × %2: places %3.</source>
        <translation>%1 × %2&#xa0;: voies %3.</translation>
    </message>
    <message>
        <source>Told apart by %1.</source>
        <translation>Se distinguent par %1.</translation>
    </message>
    <message>
        <source>Tag them, or tell them apart by terminal: %1.</source>
        <translation>Les repérer, ou les distinguer par la cosse&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Tag them before they are unplugged.</source>
        <translation>Les repérer avant de débrancher.</translation>
    </message>
    <message>
        <source>To you places %1 and %2 look alike: %3 and %4.</source>
        <translation>Pour vos yeux, les voies %1 et %2 sont pareilles&#xa0;: %3 et %4.</translation>
    </message>
    <message>
        <source>With tags at %1 every wire can be told apart.</source>
        <translation>Avec des repères sur %1, chaque fil se distingue.</translation>
    </message>
    <message numerus="yes">
        <source>%n places</source>
        <translation>
            <numerusform>%n voie</numerusform>
            <numerusform>%n voies</numerusform>
        </translation>
    </message>
    <message>
        <source>seen from the %1</source>
        <translation>vu de&#xa0;: %1</translation>
    </message>
    <message>
        <source>latch %1</source>
        <translation>verrou %1</translation>
    </message>
    <message>
        <source>no wire confirmed yet</source>
        <translation>aucun fil confirmé encore</translation>
    </message>
    <message>
        <source>%1 wires confirmed, %2 places</source>
        <translation>%1 fils confirmés, %2 voies</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>pas encore connu</translation>
    </message>
    <message>
        <source>as it should be, not as found</source>
        <translation>comme il se doit, pas à l&apos;arrivée</translation>
    </message>
    <message>
        <source>should be %1</source>
        <translation>devrait être %1</translation>
    </message>
    <message>
        <source>read from the photo, confirmed</source>
        <translation>lu sur la photo, confirmé</translation>
    </message>
    <message>
        <source>second choice of the reader, confirmed</source>
        <translation>second choix du lecteur, confirmé</translation>
    </message>
    <message>
        <source>picked by hand</source>
        <translation>choisi à la main</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>tapé</translation>
    </message>
    <message>
        <source>glare covers it: tilt the phone</source>
        <translation>un reflet le couvre&#xa0;: incliner le téléphone</translation>
    </message>
    <message>
        <source>too dark to tell: bring a light</source>
        <translation>trop sombre&#xa0;: apporter une lampe</translation>
    </message>
    <message>
        <source>too small in the picture: go closer</source>
        <translation>trop petit dans l&apos;image&#xa0;: s&apos;approcher</translation>
    </message>
    <message>
        <source>the light is not known: lay white paper beside it</source>
        <translation>lumière inconnue&#xa0;: poser du papier blanc à côté</translation>
    </message>
    <message>
        <source>too little of it is free: move what lies across</source>
        <translation>trop caché&#xa0;: écarter ce qui passe dessus</translation>
    </message>
    <message>
        <source>two colours are about as likely</source>
        <translation>deux couleurs sont à peu près aussi probables</translation>
    </message>
    <message>
        <source>likely, but not certain</source>
        <translation>probable, mais pas certain</translation>
    </message>
    <message>
        <source>tapped beside it: see that the outlined wire is meant</source>
        <translation>touché à côté&#xa0;: voir si le fil entouré est le bon</translation>
    </message>
    <message>
        <source>nothing like a wire here: tap on the wire</source>
        <translation>rien qui ressemble à un fil ici&#xa0;: toucher le fil</translation>
    </message>
    <message>
        <source>too bright to tell: less light, or no flash</source>
        <translation>trop clair&#xa0;: moins de lumière, ou pas de flash</translation>
    </message>
    <message>
        <source>two lights mix on it: shade one of them</source>
        <translation>deux lumières s&apos;y mêlent&#xa0;: en masquer une</translation>
    </message>
    <message>
        <source>no wire found</source>
        <translation>aucun fil trouvé</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>sûr</translation>
    </message>
    <message>
        <source>not sure: %1?</source>
        <translation>pas sûr&#xa0;: %1&#xa0;?</translation>
    </message>
    <message>
        <source>not sure: %1 or %2</source>
        <translation>pas sûr&#xa0;: %1 ou %2</translation>
    </message>
    <message>
        <source>connector</source>
        <translation>connecteur</translation>
    </message>
    <message>
        <source>loose terminals</source>
        <translation>cosses libres</translation>
    </message>
    <message>
        <source>splice</source>
        <translation>épissure</translation>
    </message>
    <message>
        <source>shared earth</source>
        <translation>masse commune</translation>
    </message>
    <message>
        <source>wire side</source>
        <translation>côté fils</translation>
    </message>
    <message>
        <source>mating face</source>
        <translation>face de contact</translation>
    </message>
    <message>
        <source>loom half</source>
        <translation>côté faisceau</translation>
    </message>
    <message>
        <source>unit half</source>
        <translation>côté organe</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>à l&apos;arrivée</translation>
    </message>
    <message>
        <source>as it should be</source>
        <translation>comme il se doit</translation>
    </message>
    <message>
        <source>as refitted</source>
        <translation>au remontage</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>blade</source>
        <translation>cosse plate mâle</translation>
    </message>
    <message>
        <source>receptacle</source>
        <translation>cosse plate femelle</translation>
    </message>
    <message>
        <source>bullet</source>
        <translation>cosse ronde mâle</translation>
    </message>
    <message>
        <source>bullet socket</source>
        <translation>cosse ronde femelle</translation>
    </message>
    <message>
        <source>ring</source>
        <translation>œillet</translation>
    </message>
    <message>
        <source>fork</source>
        <translation>fourche</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>broche</translation>
    </message>
    <message>
        <source>socket</source>
        <translation>douille</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>dénudé</translation>
    </message>
    <message>
        <source>place %1</source>
        <translation>voie %1</translation>
    </message>
    <message>
        <source>place %1, second wire</source>
        <translation>voie %1, second fil</translation>
    </message>
    <message>
        <source>DIN %1</source>
        <translation>DIN %1</translation>
    </message>
    <message>
        <source>heard</source>
        <translation>entendu</translation>
    </message>
    <message>
        <source>leave empty</source>
        <translation>laisser vide</translation>
    </message>
    <message>
        <source>empty, no wire</source>
        <translation>vide, aucun fil</translation>
    </message>
</context>
<context>
    <name>WiringPage</name>
    <message>
        <source>Read wires back</source>
        <translation>Relire les fils</translation>
    </message>
    <message>
        <source>Wires</source>
        <translation>Fils</translation>
    </message>
    <message>
        <source>New connector</source>
        <translation>Nouveau connecteur</translation>
    </message>
    <message>
        <source>A connector, a row of loose terminals, a splice or a shared earth: say what it is before it is unplugged.</source>
        <translation>Un connecteur, une rangée de cosses libres, une épissure ou une masse commune&#xa0;: dire ce que c&apos;est avant de débrancher.</translation>
    </message>
    <message>
        <source>No wires mapped yet</source>
        <translation>Aucun fil relevé encore</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>The picture %1 cannot be read: it is gone, or reading it is not allowed. Choose another one.</source>
        <translation>L&apos;image %1 ne se lit pas&#xa0;: elle a disparu, ou la lire n&apos;est pas permis. En choisir une autre.</translation>
    </message>
    <message>
        <source>The picture %1 is larger than 200 MiB. Choose a smaller one.</source>
        <translation>L&apos;image %1 dépasse 200 Mio. En choisir une plus petite.</translation>
    </message>
    <message>
        <source>%1 is not a JPEG or PNG picture, or it is damaged. Choose another one.</source>
        <translation>%1 n&apos;est pas une image JPEG ou PNG, ou elle est abîmée. En choisir une autre.</translation>
    </message>
    <message>
        <source>Not saved: the disk is full. Make room, then try again; what you entered is still here.</source>
        <translation>Pas enregistré&#xa0;: le disque est plein. Faire de la place, puis réessayer&#xa0;; ce qui est entré est encore là.</translation>
    </message>
    <message>
        <source>Not saved: the system refused to write. What you entered is still here; try again.</source>
        <translation>Pas enregistré&#xa0;: le système a refusé d&apos;écrire. Ce qui est entré est encore là&#xa0;; réessayer.</translation>
    </message>
    <message>
        <source>The shop&apos;s store cannot be opened.</source>
        <translation>Les données de l&apos;atelier ne s&apos;ouvrent pas.</translation>
    </message>
    <message>
        <source>The shop&apos;s store is damaged. Nothing was deleted; keep a copy of it before anything else.</source>
        <translation>Les données de l&apos;atelier sont abîmées. Rien n&apos;a été effacé&#xa0;; en garder une copie avant tout.</translation>
    </message>
    <message>
        <source>The shop&apos;s store was written by a newer version. Bring this app up to date.</source>
        <translation>Les données de l&apos;atelier viennent d&apos;une version plus récente. Mettre cette app à jour.</translation>
    </message>
    <message>
        <source>Not saved.</source>
        <translation>Pas enregistré.</translation>
    </message>
    <message>
        <source>unsafe</source>
        <translation>danger</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>bientôt</translation>
    </message>
    <message>
        <source>note</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>voulue</translation>
    </message>
    <message>
        <source>asked for</source>
        <translation>demandée</translation>
    </message>
    <message>
        <source>on order</source>
        <translation>commandée</translation>
    </message>
    <message>
        <source>here</source>
        <translation>arrivée</translation>
    </message>
    <message>
        <source>wrong one</source>
        <translation>mauvaise</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>montée</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>à l&apos;arrivée</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>constat</translation>
    </message>
    <message>
        <source>strip step</source>
        <translation>étape de démontage</translation>
    </message>
    <message>
        <source>wiring</source>
        <translation>fils</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>remonté</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>photo</translation>
    </message>
    <message>
        <source>Machine not described yet</source>
        <translation>Véhicule pas encore décrit</translation>
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
        <translation>hier %1</translation>
    </message>
    <message>
        <source>%1, %2 days ago</source>
        <translation>%1, il y a %2 jours</translation>
    </message>
    <message>
        <source>%1, %2 weeks ago</source>
        <translation>%1, il y a %2 semaines</translation>
    </message>
    <message>
        <source>%1, %2 months ago</source>
        <translation>%1, il y a %2 mois</translation>
    </message>
    <message>
        <source>For bench time</source>
        <translation>Du temps à l&apos;atelier</translation>
    </message>
    <message>
        <source>To be proved</source>
        <translation>À prouver</translation>
    </message>
    <message>
        <source>Ready to hand over</source>
        <translation>Prêts à remettre</translation>
    </message>
    <message>
        <source>For the owner&apos;s answer</source>
        <translation>Réponse du propriétaire</translation>
    </message>
    <message>
        <source>For parts</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>For something else</source>
        <translation>Autre chose</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Remis</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>pas nécessaire</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::FileCamera</name>
    <message>
        <source>The picture could not be written: %1. Make room, then try again.</source>
        <translation>L&apos;image n&apos;a pas pu être écrite&#xa0;: %1. Faire de la place, puis réessayer.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::LoudspeakerPlayer</name>
    <message>
        <source>This memo&apos;s sound cannot be read. Its text and its place in the job are kept.</source>
        <translation>Le son de cette note ne se lit pas. Son texte et sa place dans le travail restent.</translation>
    </message>
    <message>
        <source>No loudspeaker answers. Connect one, or switch it on in the device&apos;s settings.</source>
        <translation>Aucun haut-parleur ne répond. En brancher un, ou l&apos;allumer dans les réglages de l&apos;appareil.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::MicrophoneListener</name>
    <message>
        <source>No microphone answers. Allow it in the device&apos;s settings, or use the buttons.</source>
        <translation>Aucun micro ne répond. L&apos;autoriser dans les réglages de l&apos;appareil, ou prendre les boutons.</translation>
    </message>
    <message>
        <source>The microphone does not open. Close other programs that use it, or use the buttons.</source>
        <translation>Le micro ne s&apos;ouvre pas. Fermer les autres programmes qui s&apos;en servent, ou prendre les boutons.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::MicrophoneRecorder</name>
    <message>
        <source>No microphone answers. Allow it in the device&apos;s settings, or type the memo.</source>
        <translation>Aucun micro ne répond. L&apos;autoriser dans les réglages de l&apos;appareil, ou taper la note.</translation>
    </message>
    <message>
        <source>The microphone does not open. Close other programs that use it, or type the memo.</source>
        <translation>Le micro ne s&apos;ouvre pas. Fermer les autres programmes qui s&apos;en servent, ou taper la note.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::MultimediaCamera</name>
    <message>
        <source>The camera does not answer: %1. Close other programs that use it, or take the photo from a file.</source>
        <translation>L&apos;appareil photo ne répond pas&#xa0;: %1. Fermer les autres programmes qui s&apos;en servent, ou prendre la photo d&apos;un fichier.</translation>
    </message>
    <message>
        <source>The photo was not taken: %1. Try again.</source>
        <translation>La photo n&apos;a pas été prise&#xa0;: %1. Réessayer.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::SoundRecorder</name>
    <message>
        <source>The memo cannot be written any further (%1). What was said until then is kept; make room, then go on in another one.</source>
        <translation>La note ne peut plus s&apos;écrire (%1). Ce qui fut dit reste&#xa0;; faire de la place, puis continuer dans une autre.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::SystemScreen</name>
    <message>
        <source>This session has no message bus, so the screen may go out. Set the system to leave it on.</source>
        <translation>Cette session n&apos;a pas de bus de messages&#xa0;: l&apos;écran peut s&apos;éteindre. Régler dans le système qu&apos;il reste allumé.</translation>
    </message>
    <message>
        <source>A job is open at the lift</source>
        <translation>Un dossier est ouvert au pont</translation>
    </message>
    <message>
        <source>The system does not let the screen be kept on (%1). Set it there to stay on.</source>
        <translation>Le système ne laisse pas l&apos;écran allumé (%1). Y régler qu&apos;il reste allumé.</translation>
    </message>
</context>
<context>
    <name>undercowl::platform::SystemVoice</name>
    <message>
        <source>The voice failed. Read it on the screen.</source>
        <translation>La voix a échoué. Lire à l&apos;écran.</translation>
    </message>
    <message>
        <source>This device has no voice. Install one in its settings, or read it on the screen.</source>
        <translation>Cet appareil n&apos;a pas de voix. En installer une dans ses réglages, ou lire à l&apos;écran.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::AfterwardsView</name>
    <message>
        <source>%1 is not on again</source>
        <translation>%1 n&apos;est pas remonté</translation>
    </message>
    <message>
        <source>Do not start: %1</source>
        <translation>Ne pas démarrer&#xa0;: %1</translation>
    </message>
    <message>
        <source>Do not ride: %1</source>
        <translation>Ne pas rouler&#xa0;: %1</translation>
    </message>
    <message>
        <source>after: %1</source>
        <translation>après&#xa0;: %1</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Fait&#xa0;: %1</translation>
    </message>
    <message>
        <source>Type why it is left out, such as &quot;goes home on a trailer&quot;.</source>
        <translation>Écrire pourquoi on le laisse, par exemple &quot;repart sur remorque&quot;.</translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation>Laissé&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::BackupView</name>
    <message>
        <source>This device</source>
        <translation>Cet appareil</translation>
    </message>
    <message>
        <source>looking ...</source>
        <translation>recherche ...</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aucune encore</translation>
    </message>
    <message>
        <source>At least eight characters; several words are best.</source>
        <translation>Au moins huit caractères&#xa0;; plusieurs mots valent mieux.</translation>
    </message>
    <message>
        <source>Type it once more, the same way.</source>
        <translation>La taper encore une fois, pareille.</translation>
    </message>
    <message numerus="yes">
        <source>%1 was written and read again: %n photos and memos, %2.</source>
        <translation>
            <numerusform>%1 a été écrit et relu&#xa0;: %n photo ou note, %2.</numerusform>
            <numerusform>%1 a été écrit et relu&#xa0;: %n photos et notes, %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not in it: %1</source>
        <translation>N&apos;y est pas&#xa0;: %1</translation>
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
        <translation>Manque encore&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1; possible: %2</source>
        <translation>%1&#xa0;; possible&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>verdict: %1</source>
        <translation>verdict&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 sure to be within</source>
        <translation>%1 sûr d&apos;être dedans</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>de %1 à %2</translation>
    </message>
    <message>
        <source>%1 if left empty</source>
        <translation>%1 si vide</translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation>peut rester vide</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Gardé&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: %2 (from %3)</source>
        <translation>%1&#xa0;: %2 (de %3)</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CameraHints</name>
    <message>
        <source>Hold still.</source>
        <translation>Ne pas bouger.</translation>
    </message>
    <message>
        <source>Too close or out of focus: move back a little.</source>
        <translation>Trop près ou flou&#xa0;: reculer un peu.</translation>
    </message>
    <message>
        <source>Too close or out of focus: tap the wire.</source>
        <translation>Trop près ou flou&#xa0;: toucher le fil.</translation>
    </message>
    <message>
        <source>Too close or out of focus: tap what must be sharp.</source>
        <translation>Trop près ou flou&#xa0;: toucher ce qui doit être net.</translation>
    </message>
    <message>
        <source>Lay white paper beside the wires.</source>
        <translation>Poser du papier blanc à côté des fils.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CarryView</name>
    <message>
        <source>it lights when it is switched</source>
        <translation>s&apos;allume quand on l&apos;actionne</translation>
    </message>
    <message>
        <source>it sounds when it is pressed</source>
        <translation>sonne quand on appuie</translation>
    </message>
    <message>
        <source>what it serves works when it is switched</source>
        <translation>ce qu&apos;il commande marche quand on l&apos;actionne</translation>
    </message>
    <message>
        <source>Not known what it serves: follow it, then measure to earth and to each lamp. Nothing is connected before that is known.</source>
        <translation>Fonction inconnue&#xa0;: le suivre, puis mesurer vers la masse et vers chaque feu. Rien ne se branche avant de la connaître.</translation>
    </message>
    <message>
        <source>Live, ignition, charging or starter: battery voltage to earth, ignition off and on. Measured only, never tried.</source>
        <translation>Sous tension, allumage, charge ou démarreur&#xa0;: tension de batterie à la masse, contact coupé et mis. Mesurer seulement, ne jamais essayer.</translation>
    </message>
    <message>
        <source>Earth: close to no resistance to the bare frame.</source>
        <translation>Masse&#xa0;: presque aucune résistance vers le cadre à nu.</translation>
    </message>
    <message>
        <source>%1 in place of %2</source>
        <translation>%1 à la place de %2</translation>
    </message>
    <message>
        <source>%1, now %2</source>
        <translation>%1, maintenant %2</translation>
    </message>
    <message>
        <source>serves %1</source>
        <translation>fonction&#xa0;: %1</translation>
    </message>
    <message>
        <source>Leave empty: %1</source>
        <translation>Laisser vide&#xa0;: %1</translation>
    </message>
    <message>
        <source>No place for %1 (%2)</source>
        <translation>Pas de voie pour %1 (%2)</translation>
    </message>
    <message>
        <source>Insulate its end and tie it back.</source>
        <translation>Isoler son bout et l&apos;attacher à l&apos;écart.</translation>
    </message>
    <message>
        <source>one after the other: %1</source>
        <translation>l&apos;une après l&apos;autre&#xa0;: %1</translation>
    </message>
    <message>
        <source>carried over by what it serves</source>
        <translation>reporté selon sa fonction</translation>
    </message>
    <message>
        <source>Wires carried over</source>
        <translation>Fils reportés</translation>
    </message>
    <message>
        <source>found by trying</source>
        <translation>trouvé en essayant</translation>
    </message>
    <message>
        <source>Found: %1</source>
        <translation>Trouvé&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CompareView</name>
    <message>
        <source>Confirm the wires on the photo before first: there is nothing yet to compare with.</source>
        <translation>Confirmer d&apos;abord les fils sur la photo d&apos;avant&#xa0;: il n&apos;y a encore rien à comparer.</translation>
    </message>
    <message>
        <source>Take a photo of the wires as they are now, from about the same side.</source>
        <translation>Prendre une photo des fils comme ils sont, à peu près du même côté.</translation>
    </message>
    <message>
        <source>The same: no wire has changed its place.</source>
        <translation>Pareil&#xa0;: aucun fil n&apos;a changé de place.</translation>
    </message>
    <message>
        <source>Cannot tell. Read the wires back one by one.</source>
        <translation>On ne peut pas dire. Relire les fils un à un.</translation>
    </message>
    <message>
        <source>Changed: places %1 swapped.</source>
        <translation>Changé&#xa0;: voies %1 inversées.</translation>
    </message>
    <message>
        <source>The wire of place %1 was not found: it is missing, or was not read.</source>
        <translation>Le fil de la voie %1 n&apos;a pas été trouvé&#xa0;: il manque, ou n&apos;a pas été lu.</translation>
    </message>
    <message>
        <source>Changed: a wire more, number %1 of this stroke.</source>
        <translation>Changé&#xa0;: un fil de plus, le numéro %1 de ce trait.</translation>
    </message>
    <message>
        <source>Changed: another wire in place %1.</source>
        <translation>Changé&#xa0;: un autre fil dans la voie %1.</translation>
    </message>
    <message>
        <source>%1 wires were read, %2 are in the map: stroke across all of them, and only them</source>
        <translation>%1 fils lus, %2 sont au plan&#xa0;: passer sur tous, et sur eux seuls</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ConsumablesView</name>
    <message>
        <source>batch %1</source>
        <translation>lot %1</translation>
    </message>
    <message>
        <source>opened %1</source>
        <translation>ouvert le %1</translation>
    </message>
    <message>
        <source>Type what goes in, such as &quot;brake fluid&quot;.</source>
        <translation>Écrire ce qu&apos;on met, par exemple &quot;liquide de frein&quot;.</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Gardé&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::CostView</name>
    <message>
        <source>Other work</source>
        <translation>Autre travail</translation>
    </message>
    <message>
        <source>%1 % tax: %2</source>
        <translation>taxe %1 %&#xa0;: %2</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>Type the currency, such as EUR.</source>
        <translation>Écrire la monnaie, par exemple EUR.</translation>
    </message>
    <message>
        <source>Type the rate as a number, such as 58.50.</source>
        <translation>Écrire le tarif en nombre, par exemple 58.50.</translation>
    </message>
    <message>
        <source>Type the tax as a number of per cent, such as 19.</source>
        <translation>Écrire la taxe en nombre pour cent, par exemple 20.</translation>
    </message>
    <message>
        <source>Reckoned</source>
        <translation>Compté</translation>
    </message>
    <message>
        <source>Type what it is for, such as &quot;tyre fitted outside&quot;.</source>
        <translation>Écrire pour quoi, par exemple &quot;pneu monté à l&apos;extérieur&quot;.</translation>
    </message>
    <message>
        <source>Type the sum without tax as a number, such as 12.50.</source>
        <translation>Écrire la somme hors taxe en nombre, par exemple 12.50.</translation>
    </message>
    <message>
        <source>Line added</source>
        <translation>Ligne ajoutée</translation>
    </message>
    <message>
        <source>Line taken out</source>
        <translation>Ligne retirée</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Finder</name>
    <message>
        <source>machine</source>
        <translation>véhicule</translation>
    </message>
    <message>
        <source>owner</source>
        <translation>propriétaire</translation>
    </message>
    <message>
        <source>job</source>
        <translation>dossier</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>constat</translation>
    </message>
    <message>
        <source>strip step</source>
        <translation>étape de démontage</translation>
    </message>
    <message>
        <source>wire</source>
        <translation>fil</translation>
    </message>
    <message>
        <source>part</source>
        <translation>pièce</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>mesure</translation>
    </message>
    <message>
        <source>memo</source>
        <translation>note</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>photo</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>tout</translation>
    </message>
    <message>
        <source>anything</source>
        <translation>peu importe</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Findings</name>
    <message>
        <source>%1 does not want it put right (%2)</source>
        <translation>%1 ne veut pas qu&apos;on répare (%2)</translation>
    </message>
    <message>
        <source>is a task</source>
        <translation>est une tâche</translation>
    </message>
    <message>
        <source>Type whole minutes, such as 45.</source>
        <translation>Écrire des minutes entières, par exemple 45.</translation>
    </message>
    <message>
        <source>Type what was found, such as &quot;brake hose cracked&quot;.</source>
        <translation>Écrire ce qu&apos;on a trouvé, par exemple &quot;durite de frein fendue&quot;.</translation>
    </message>
    <message>
        <source>Choose how serious it is: unsafe, soon or note.</source>
        <translation>Choisir la gravité&#xa0;: danger, bientôt ou remarque.</translation>
    </message>
    <message>
        <source>Finding kept</source>
        <translation>Constat gardé</translation>
    </message>
    <message>
        <source>Task made: %1</source>
        <translation>Tâche créée&#xa0;: %1</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Réglé</translation>
    </message>
    <message>
        <source>Open again</source>
        <translation>De nouveau ouvert</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::FunctionsView</name>
    <message>
        <source>works</source>
        <translation>marche</translation>
    </message>
    <message>
        <source>does not work</source>
        <translation>ne marche pas</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>pas essayé</translation>
    </message>
    <message>
        <source>when it came in: %1</source>
        <translation>à l&apos;arrivée&#xa0;: %1</translation>
    </message>
    <message>
        <source>the owner said, when it came in</source>
        <translation>le propriétaire a dit à l&apos;arrivée</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::GatheringView</name>
    <message>
        <source>Type what it is, such as &quot;right switch cluster&quot;.</source>
        <translation>Écrire ce que c&apos;est, par exemple &quot;commodo droit&quot;.</translation>
    </message>
    <message>
        <source>Give the number of places, 1 to %1.</source>
        <translation>Donner le nombre de voies, 1 à %1.</translation>
    </message>
    <message>
        <source>Give the number of rows, 1 to %1.</source>
        <translation>Donner le nombre de rangs, 1 à %1.</translation>
    </message>
    <message>
        <source>%1 kept</source>
        <translation>%1 gardé</translation>
    </message>
    <message>
        <source>Place 1 marked</source>
        <translation>Voie 1 marquée</translation>
    </message>
    <message>
        <source>Tag taken off</source>
        <translation>Repère ôté</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Repère %1</translation>
    </message>
    <message>
        <source>Tagged %1</source>
        <translation>Repéré&#xa0;: %1</translation>
    </message>
    <message>
        <source>As found: %1</source>
        <translation>À l&apos;arrivée&#xa0;: %1</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Fait&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::HandOverView</name>
    <message>
        <source>Settle it, or record that the owner does not want it.</source>
        <translation>Le régler, ou noter que le propriétaire ne le veut pas.</translation>
    </message>
    <message>
        <source>Do it, or say why it is left out.</source>
        <translation>Le faire, ou dire pourquoi on le laisse.</translation>
    </message>
    <message>
        <source>Not refitted: %1</source>
        <translation>Pas remonté&#xa0;: %1</translation>
    </message>
    <message>
        <source>Bag %1 is still closed.</source>
        <translation>Le sachet %1 est encore fermé.</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Remis</translation>
    </message>
    <message numerus="yes">
        <source>%n not done or not proved</source>
        <translation>
            <numerusform>%n pas fait ou pas prouvé</numerusform>
            <numerusform>%n pas faits ou pas prouvés</numerusform>
        </translation>
    </message>
    <message>
        <source>Put it right, then read it back again.</source>
        <translation>Remettre en ordre, puis relire.</translation>
    </message>
    <message>
        <source>signed by %1, %2</source>
        <translation>signé par %1, %2</translation>
    </message>
    <message>
        <source>Read the wires back, or say why they are left out.</source>
        <translation>Relisez les fils, ou dites pourquoi c’est omis.</translation>
    </message>
    <message>
        <source>Tighten it and measure again, or say why it is left out.</source>
        <translation>Serrez et mesurez de nouveau, ou dites pourquoi c’est omis.</translation>
    </message>
    <message>
        <source>Put it right and measure again, or note a finding.</source>
        <translation>Remettez en ordre et mesurez de nouveau, ou notez un constat.</translation>
    </message>
    <message>
        <source>Wire does not match: %1, place %2</source>
        <translation>Le fil ne correspond pas&#xa0;: %1, voie %2</translation>
    </message>
    <message>
        <source>Say whether it works now, or why it is left.</source>
        <translation>Dire si cela marche maintenant, ou pourquoi on le laisse.</translation>
    </message>
    <message>
        <source>Refit it, or write under &quot;To be told at hand-over&quot; how it leaves without being ridden.</source>
        <translation>Remonter, ou écrire sous &quot;À dire à la remise&quot; comment il part sans rouler.</translation>
    </message>
    <message>
        <source>Put it right and measure again, or note it as unsafe and record that the owner does not want it.</source>
        <translation>Remettre en état et mesurer à nouveau, ou le noter comme danger et noter que le propriétaire n&apos;en veut pas.</translation>
    </message>
    <message>
        <source>It must not be ridden: type how it leaves, such as &quot;fetched with a trailer&quot;.</source>
        <translation>Il ne doit pas rouler&#xa0;: écrire comment il part, par exemple &quot;pris sur remorque&quot;.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::InstrumentsView</name>
    <message>
        <source>Calibration overdue since %1: its limit of error cannot be relied on</source>
        <translation>Étalonnage dépassé depuis le %1&#xa0;: on ne peut pas se fier à sa limite d&apos;erreur</translation>
    </message>
    <message>
        <source>No calibration is recorded; due on %1</source>
        <translation>Aucun étalonnage noté&#xa0;; à faire le %1</translation>
    </message>
    <message>
        <source>Calibration due today</source>
        <translation>Étalonnage à faire aujourd&apos;hui</translation>
    </message>
    <message>
        <source>Calibration due tomorrow, on %1</source>
        <translation>Étalonnage à faire demain, le %1</translation>
    </message>
    <message>
        <source>Calibration due on %1, in %2 days</source>
        <translation>Étalonnage à faire le %1, dans %2 jours</translation>
    </message>
    <message>
        <source>Calibrated on %1, no date set for the next time</source>
        <translation>Étalonné le %1, sans date pour la prochaine fois</translation>
    </message>
    <message>
        <source>No calibration is recorded</source>
        <translation>Aucun étalonnage noté</translation>
    </message>
    <message>
        <source>%1, %2 to %3, %4</source>
        <translation>%1, %2 à %3, %4</translation>
    </message>
    <message>
        <source>Choose what kind of instrument it is.</source>
        <translation>Choisir la sorte d&apos;instrument.</translation>
    </message>
    <message>
        <source>Another instrument for the same quantity has this name: choose another one.</source>
        <translation>Un autre instrument pour la même grandeur a ce nom&#xa0;: en choisir un autre.</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Gardé&#xa0;: %1</translation>
    </message>
    <message>
        <source>No longer used: %1</source>
        <translation>Ne sert plus&#xa0;: %1</translation>
    </message>
    <message>
        <source>In use again: %1</source>
        <translation>Sert à nouveau&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::Insulations</name>
    <message>
        <source>black</source>
        <translation>noir</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>marron</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rouge</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>orange</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>jaune</translation>
    </message>
    <message>
        <source>green</source>
        <translation>vert</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>bleu</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violet</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>white</source>
        <translation>blanc</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rose</translation>
    </message>
    <message>
        <source>turquoise</source>
        <translation>turquoise</translation>
    </message>
    <message>
        <source>light blue</source>
        <translation>bleu clair</translation>
    </message>
    <message>
        <source>light green</source>
        <translation>vert clair</translation>
    </message>
    <message>
        <source>colour not known</source>
        <translation>couleur inconnue</translation>
    </message>
    <message>
        <source>%1, %2 tracer</source>
        <comment>base colour, tracer colour</comment>
        <translation>%1, liseré %2</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::JobMemoList</name>
    <message>
        <source>Memo kept</source>
        <translation>Note gardée</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::JobView</name>
    <message>
        <source>waits for %1</source>
        <translation>attend %1</translation>
    </message>
    <message>
        <source>the watch was forgotten</source>
        <translation>le chrono a été oublié</translation>
    </message>
    <message>
        <source>the watch runs</source>
        <translation>le chrono tourne</translation>
    </message>
    <message>
        <source>first %1</source>
        <translation>d&apos;abord %1</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Sachet %1</translation>
    </message>
    <message>
        <source>Type what the task is, such as &quot;front brake&quot;.</source>
        <translation>Écrire quelle est la tâche, par exemple &quot;frein avant&quot;.</translation>
    </message>
    <message>
        <source>Task kept</source>
        <translation>Tâche gardée</translation>
    </message>
    <message>
        <source>not fitted: %1</source>
        <translation>pas montée&#xa0;: %1</translation>
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
        <translation>couple</translation>
    </message>
    <message>
        <source>part</source>
        <translation>pièce</translation>
    </message>
    <message>
        <source>wiring map</source>
        <translation>plan de fils</translation>
    </message>
    <message>
        <source>adjustment</source>
        <translation>réglage</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>constat</translation>
    </message>
    <message>
        <source>time</source>
        <translation>temps</translation>
    </message>
    <message>
        <source>held in jobs: %1</source>
        <translation>valable dans les dossiers&#xa0;: %1</translation>
    </message>
    <message>
        <source>Does not agree: %1</source>
        <translation>Ne concorde pas&#xa0;: %1</translation>
    </message>
    <message>
        <source>The rest</source>
        <translation>Le reste</translation>
    </message>
    <message>
        <source>Taken over: %1</source>
        <translation>Repris&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 cannot be written. Make room, and try again.</source>
        <translation>%1 ne peut pas être écrit. Faire de la place, et réessayer.</translation>
    </message>
    <message>
        <source>typical of this model, look whether it is so here</source>
        <translation>typique de ce modèle, à vérifier ici</translation>
    </message>
    <message>
        <source>this shop&apos;s record</source>
        <translation>dossiers de cet atelier</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::LabelsView</name>
    <message>
        <source>Bag %1, all of it is on again</source>
        <translation>Sachet %1, tout est remonté</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <translation>Sachet %1</translation>
    </message>
    <message>
        <source>Type a place on the sheet, such as 1.</source>
        <translation>Écrire une place sur la feuille, par exemple 1.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::LiftEar</name>
    <message>
        <source>a reading</source>
        <translation>une mesure</translation>
    </message>
    <message>
        <source>the number of a bag</source>
        <translation>le numéro d&apos;un sachet</translation>
    </message>
    <message>
        <source>a wire</source>
        <translation>un fil</translation>
    </message>
    <message>
        <source>Heard &quot;%1&quot;. Here say: %2.</source>
        <translation>Entendu &quot;%1&quot;. Ici, dire&#xa0;: %2.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::LineBackView</name>
    <message>
        <source>How it runs was not written down: look at its photo.</source>
        <translation>Son passage n&apos;est pas noté : voir la photo.</translation>
    </message>
    <message>
        <source>How it runs was not written down and there is no photo: look it up in the machine&apos;s manual.</source>
        <translation>Son passage n&apos;est pas noté et il n&apos;y a pas de photo&#xa0;: voir le manuel du véhicule.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::MeasureView</name>
    <message>
        <source>none named</source>
        <translation>aucun nommé</translation>
    </message>
    <message>
        <source>%1, of the shop</source>
        <translation>%1, de l&apos;atelier</translation>
    </message>
    <message>
        <source>no instrument named</source>
        <translation>aucun instrument nommé</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: %2, assumed</source>
        <translation>%1&#xa0;: %2, supposé</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>manuel</translation>
    </message>
    <message>
        <source>shop&apos;s record</source>
        <translation>atelier</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>norme</translation>
    </message>
    <message>
        <source>worked out here</source>
        <translation>calculé ici</translation>
    </message>
    <message>
        <source>Type a value first; then the next one can be typed.</source>
        <translation>Taper d&apos;abord une valeur&#xa0;; puis la suivante.</translation>
    </message>
    <message>
        <source>mean of %1: %2, spread %3</source>
        <translation>moyenne de %1&#xa0;: %2, étendue %3</translation>
    </message>
    <message>
        <source>%1 % sure to be within: %2</source>
        <translation>sûr à %1 % d&apos;être dedans&#xa0;: %2</translation>
    </message>
    <message>
        <source>source of the limits not named</source>
        <translation>source des limites non nommée</translation>
    </message>
    <message>
        <source>No limits given: the value is kept without a verdict.</source>
        <translation>Pas de limites&#xa0;: la valeur est gardée sans verdict.</translation>
    </message>
    <message>
        <source>No instrument named, so its uncertainty is not known: the value is kept without a verdict.</source>
        <translation>Aucun instrument nommé, donc incertitude inconnue&#xa0;: la valeur est gardée sans verdict.</translation>
    </message>
    <message>
        <source>What would settle it: %1</source>
        <translation>Ce qui trancherait&#xa0;: %1</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Gardé&#xa0;: %1</translation>
    </message>
    <message>
        <source>mean of %1</source>
        <translation>moyenne de %1</translation>
    </message>
    <message>
        <source>That cannot be entered here: type it.</source>
        <translation>Cela ne s&apos;entre pas ici&#xa0;: le taper.</translation>
    </message>
    <message>
        <source>The step has several torques: choose below which one is measured.</source>
        <translation>L’étape a plusieurs couples&#xa0;: choisissez ci-dessous lequel est mesuré.</translation>
    </message>
    <message>
        <source>to be %1</source>
        <translation>prescrit %1</translation>
    </message>
    <message>
        <source>as the step says; %1 to %2, as far as a wrench by ISO 6789-1 may be off</source>
        <translation>selon l’étape ; %1 à %2, l’écart permis à une clé selon ISO 6789-1</translation>
    </message>
    <message>
        <source>One reading stands for all %1: keep the one that is furthest off, or take each with Again.</source>
        <translation>Une lecture vaut pour les %1&#xa0;: gardez la plus éloignée, ou prenez chacune avec «&#xa0;Encore&#xa0;».</translation>
    </message>
    <message>
        <source>as read; the instrument is not known, taken to be within %1: %2</source>
        <translation>comme lu ; l’instrument n’est pas connu, supposé à %1 près&#xa0;: %2</translation>
    </message>
    <message>
        <source>Choose the unit that this was measured in.</source>
        <translation>Choisissez l’unité de la mesure.</translation>
    </message>
    <message>
        <source>Taken out: %1</source>
        <translation>Retirée&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::MemoPlayback</name>
    <message>
        <source>Place marked</source>
        <translation>Endroit marqué</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ModelsView</name>
    <message>
        <source>jobs: %1</source>
        <translation>dossiers&#xa0;: %1</translation>
    </message>
    <message>
        <source>This file cannot be read, or is no knowledge of a model: %1</source>
        <translation>Ce fichier ne se lit pas, ou n&apos;est pas le savoir d&apos;un modèle&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 %2, facts: %3</source>
        <translation>%1 %2, faits&#xa0;: %3</translation>
    </message>
    <message>
        <source>Learned: %1</source>
        <translation>Appris&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::NeedsView</name>
    <message>
        <source>Do not start until this is on and all that follows is done.</source>
        <translation>Ne pas démarrer avant que ce soit remonté et que toute la suite soit faite.</translation>
    </message>
    <message>
        <source>Do not ride until this is on and all that follows is done.</source>
        <translation>Ne pas rouler avant que ce soit remonté et que toute la suite soit faite.</translation>
    </message>
    <message>
        <source>Kept for the refit</source>
        <translation>Gardé pour le remontage</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::OrdersView</name>
    <message>
        <source>No supplier chosen</source>
        <translation>Pas de fournisseur choisi</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::OwnersWord</name>
    <message>
        <source>called</source>
        <translation>a appelé</translation>
    </message>
    <message>
        <source>wrote</source>
        <translation>a écrit</translation>
    </message>
    <message>
        <source>stood here</source>
        <translation>était là</translation>
    </message>
    <message>
        <source>Not wanted: %1</source>
        <translation>Pas voulu&#xa0;: %1</translation>
    </message>
    <message>
        <source>Type who said no: the record names them.</source>
        <translation>Écrire qui a dit non&#xa0;: le rapport le nomme.</translation>
    </message>
    <message>
        <source>Choose how it was said: called, wrote or stood here.</source>
        <translation>Choisir comment c&apos;était dit&#xa0;: a appelé, a écrit ou était là.</translation>
    </message>
    <message>
        <source>Refusal kept</source>
        <translation>Refus gardé</translation>
    </message>
    <message>
        <source>Type what it covers, such as &quot;front brake, tyres&quot;.</source>
        <translation>Écrire ce que cela couvre, par exemple &quot;frein avant, pneus&quot;.</translation>
    </message>
    <message>
        <source>Type who said so.</source>
        <translation>Écrire qui l&apos;a dit.</translation>
    </message>
    <message>
        <source>Write the sum as digits, such as 120.50.</source>
        <translation>Écrire la somme en chiffres, par exemple 120.50.</translation>
    </message>
    <message>
        <source>Write the currency in three letters, such as EUR.</source>
        <translation>Écrire la monnaie en trois lettres, par exemple EUR.</translation>
    </message>
    <message>
        <source>Approval kept</source>
        <translation>Accord gardé</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PartForm</name>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Pas dit</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Va</translation>
    </message>
    <message>
        <source>After a change</source>
        <translation>Après changement</translation>
    </message>
    <message>
        <source>Does not fit</source>
        <translation>Ne va pas</translation>
    </message>
    <message>
        <source>Type what part it is, such as &quot;front brake hose&quot;.</source>
        <translation>Écrire quelle pièce c&apos;est, par exemple &quot;durite de frein avant&quot;.</translation>
    </message>
    <message>
        <source>Type the price as a number, such as 18.50.</source>
        <translation>Écrire le prix en nombre, par exemple 18.50.</translation>
    </message>
    <message>
        <source>Type the currency, such as EUR.</source>
        <translation>Écrire la monnaie, par exemple EUR.</translation>
    </message>
    <message>
        <source>Type why, such as &quot;pivot hole 1 mm too small&quot;.</source>
        <translation>Écrire pourquoi, par exemple &quot;trou d&apos;axe trop petit de 1 mm&quot;.</translation>
    </message>
    <message>
        <source>Part kept</source>
        <translation>Pièce gardée</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PartsList</name>
    <message>
        <source>Type what part it is, such as &quot;front brake hose&quot;.</source>
        <translation>Écrire quelle pièce c&apos;est, par exemple &quot;durite de frein avant&quot;.</translation>
    </message>
    <message>
        <source>Part kept</source>
        <translation>Pièce gardée</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PhotoCapture</name>
    <message>
        <source>There is no camera here. Take the photo from a file.</source>
        <translation>Pas d&apos;appareil photo ici. Prendre la photo d&apos;un fichier.</translation>
    </message>
    <message>
        <source>The camera is starting.</source>
        <translation>L&apos;appareil photo démarre.</translation>
    </message>
    <message>
        <source>This app may not use the camera. Allow it in the system&apos;s settings, or take the photo from a file.</source>
        <translation>Cette app ne peut pas se servir de l&apos;appareil photo. L&apos;autoriser dans les réglages du système, ou prendre la photo d&apos;un fichier.</translation>
    </message>
    <message>
        <source>The disk is full: make room before you take more photos. Those that were taken are still here and are kept as soon as there is room.</source>
        <translation>Le disque est plein&#xa0;: faire de la place avant d&apos;autres photos. Celles qui sont prises sont encore là et seront gardées dès qu&apos;il y a de la place.</translation>
    </message>
    <message>
        <source>Photo saved</source>
        <translation>Photo enregistrée</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::PhotoReader</name>
    <message>
        <source>no wire was found further on that side</source>
        <translation>aucun fil trouvé plus loin de ce côté</translation>
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
        <translation>Dire d&apos;où on le sait, par exemple &quot;manuel, page 7-12&quot;.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Give the size in millimetres, such as 6.3.</source>
        <translation>Donner la taille en millimètres, par exemple 6.3.</translation>
    </message>
    <message>
        <source>Terminal: %1</source>
        <translation>Cosse&#xa0;: %1</translation>
    </message>
    <message>
        <source>Give the size in square millimetres, such as 0.75.</source>
        <translation>Donner la section en millimètres carrés, par exemple 0.75.</translation>
    </message>
    <message>
        <source>Wire size kept</source>
        <translation>Section gardée</translation>
    </message>
    <message>
        <source>Function: %1</source>
        <translation>Fonction&#xa0;: %1</translation>
    </message>
    <message>
        <source>DIN number kept</source>
        <translation>Numéro DIN gardé</translation>
    </message>
    <message>
        <source>Tag kept</source>
        <translation>Repère gardé</translation>
    </message>
    <message>
        <source>%1: nothing there</source>
        <translation>%1&#xa0;: il n&apos;y a rien</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ProofsView</name>
    <message>
        <source>left out: %1</source>
        <translation>laissé&#xa0;: %1</translation>
    </message>
    <message>
        <source>proved: %1</source>
        <translation>prouvé&#xa0;: %1</translation>
    </message>
    <message>
        <source>proved by its reading, or said</source>
        <translation>prouvé par sa mesure, ou dit</translation>
    </message>
    <message>
        <source>proved wire by wire, or said</source>
        <translation>prouvé fil par fil, ou dit</translation>
    </message>
    <message>
        <source>proved</source>
        <translation>prouvé</translation>
    </message>
    <message numerus="yes">
        <source>%n proved</source>
        <translation>
            <numerusform>%n prouvé</numerusform>
            <numerusform>%n prouvés</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ProveView</name>
    <message>
        <source>proved</source>
        <translation>prouvé</translation>
    </message>
    <message>
        <source>proved: %1</source>
        <translation>prouvé&#xa0;: %1</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>laissé&#xa0;: %1</translation>
    </message>
    <message>
        <source>not signed</source>
        <translation>pas signé</translation>
    </message>
    <message>
        <source>signed by %1</source>
        <translation>signé par %1</translation>
    </message>
    <message>
        <source>Proved</source>
        <translation>Prouvé</translation>
    </message>
    <message>
        <source>Type why it is left out, such as &quot;no road test before the tyres are here&quot;.</source>
        <translation>Écrire pourquoi on le laisse, par exemple &quot;pas d&apos;essai avant les pneus&quot;.</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Laissé</translation>
    </message>
    <message>
        <source>Type the name of the one who looked.</source>
        <translation>Écrire le nom de qui a regardé.</translation>
    </message>
    <message>
        <source>Signed by %1</source>
        <translation>Signé par %1</translation>
    </message>
    <message>
        <source>Not proved while this stands: %1. Put it right, or type why it is left out.</source>
        <translation>Pas prouvé tant que cela reste&#xa0;: %1. Remettez en ordre, ou tapez pourquoi c’est omis.</translation>
    </message>
    <message>
        <source>No reading shows the torque: measure it, or type how it was tightened.</source>
        <translation>Aucune lecture ne montre le couple&#xa0;: mesurez, ou tapez comment c’est serré.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ReadBackView</name>
    <message>
        <source>tag %1</source>
        <translation>repère %1</translation>
    </message>
    <message>
        <source>looks like place %1</source>
        <translation>ressemble à la voie %1</translation>
    </message>
    <message>
        <source>%1; not tagged</source>
        <translation>%1&#xa0;; sans repère</translation>
    </message>
    <message>
        <source>%1; tag %2</source>
        <translation>%1&#xa0;; repère %2</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ReadBackWalk</name>
    <message>
        <source>%1 matches</source>
        <translation>%1 conforme</translation>
    </message>
    <message>
        <source>%1 does not match</source>
        <translation>%1 n&apos;est pas conforme</translation>
    </message>
    <message>
        <source>swapped with %1</source>
        <translation>inversé avec %1</translation>
    </message>
    <message>
        <source>%1 swapped with %2</source>
        <translation>%1 inversé avec %2</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RefitView</name>
    <message>
        <source>%1 of %2 wires read back</source>
        <translation>%1 fils relus sur %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>the task %1</source>
        <translation>la tâche %1</translation>
    </message>
    <message>
        <source>Refitted: %1</source>
        <translation>Remonté&#xa0;: %1</translation>
    </message>
    <message>
        <source>Task resumed</source>
        <translation>Tâche reprise</translation>
    </message>
    <message>
        <source>Order changed</source>
        <translation>Ordre changé</translation>
    </message>
    <message>
        <source>Not refitted: %1</source>
        <translation>Pas remonté&#xa0;: %1</translation>
    </message>
    <message>
        <source>Part not fitted: %1 (%2)</source>
        <translation>Pièce pas montée&#xa0;: %1 (%2)</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RestoreView</name>
    <message>
        <source>%1, %2: no backup, or damaged at its beginning</source>
        <translation>%1, %2&#xa0;: pas une sauvegarde, ou abîmée au début</translation>
    </message>
    <message>
        <source>%1, %2, sealed with a passphrase</source>
        <translation>%1, %2, scellée par une phrase secrète</translation>
    </message>
    <message numerus="yes">
        <source>%n jobs</source>
        <translation>
            <numerusform>%n travail</numerusform>
            <numerusform>%n travaux</numerusform>
        </translation>
    </message>
    <message>
        <source>A shop that cannot be read whole</source>
        <translation>Un atelier qui ne se lit pas en entier</translation>
    </message>
    <message>
        <source>%1, last worked on %2</source>
        <translation>%1, dernier travail le %2</translation>
    </message>
    <message>
        <source>This file is no backup of a shop, or damaged at its very beginning. Choose another one.</source>
        <translation>Ce fichier n&apos;est pas la sauvegarde d&apos;un atelier, ou il est abîmé dès le début. En choisir un autre.</translation>
    </message>
    <message numerus="yes">
        <source>Brought back as it was on %1: %n entries.</source>
        <translation>
            <numerusform>Ramené tel qu&apos;il était le %1&#xa0;: %n entrée.</numerusform>
            <numerusform>Ramené tel qu&apos;il était le %1&#xa0;: %n entrées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n places of the backup could not be read.</source>
        <translation>
            <numerusform>%n endroit de la sauvegarde n&apos;a pas pu être lu.</numerusform>
            <numerusform>%n endroits de la sauvegarde n&apos;ont pas pu être lus.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photos or memos are in none of the backups here.</source>
        <translation>
            <numerusform>%n photo ou note n&apos;est dans aucune des sauvegardes ici.</numerusform>
            <numerusform>%n photos ou notes ne sont dans aucune des sauvegardes ici.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n things in it are missing or damaged.</source>
        <translation>
            <numerusform>%n chose y manque ou y est abîmée.</numerusform>
            <numerusform>%n choses y manquent ou y sont abîmées.</numerusform>
        </translation>
    </message>
    <message>
        <source>This passphrase does not fit: look at each letter, large or small. If it is right, the file is damaged at its beginning.</source>
        <translation>Cette phrase ne convient pas&#xa0;: regarder chaque lettre, grande ou petite. Si elle est juste, le fichier est abîmé au début.</translation>
    </message>
    <message>
        <source>Nothing of this backup can be read any more. Choose another one; this device holds what it held before.</source>
        <translation>De cette sauvegarde plus rien ne se lit. En choisir une autre&#xa0;; sur cet appareil tout est comme avant.</translation>
    </message>
    <message numerus="yes">
        <source>Some of its photos and memos are in earlier backups, of which %n are not in the same folder. Put them there, or bring back what is here.</source>
        <translation>
            <numerusform>Une partie de ses photos et notes est dans des sauvegardes antérieures, dont %n n&apos;est pas dans le même répertoire. L&apos;y mettre, ou ramener ce qui est là.</numerusform>
            <numerusform>Une partie de ses photos et notes est dans des sauvegardes antérieures, dont %n ne sont pas dans le même répertoire. Les y mettre, ou ramener ce qui est là.</numerusform>
        </translation>
    </message>
    <message>
        <source>The backup is damaged or cut short. If there is another one, take that. Nothing was changed on this device.</source>
        <translation>La sauvegarde est abîmée ou coupée. S&apos;il y en a une autre, la prendre. Rien n&apos;a été changé sur cet appareil.</translation>
    </message>
    <message>
        <source>There is no room on this device for the shop. Make room, then try again.</source>
        <translation>Il n&apos;y a pas de place sur cet appareil pour l&apos;atelier. Faire de la place, puis réessayer.</translation>
    </message>
    <message>
        <source>The backup was written by a newer version. Bring this app up to date.</source>
        <translation>La sauvegarde vient d&apos;une version plus récente. Mettre cette application à jour.</translation>
    </message>
    <message>
        <source>The file is not there any more. Put the stick or the card in again.</source>
        <translation>Le fichier n&apos;est plus là. Remettre la clé ou la carte.</translation>
    </message>
    <message>
        <source>What can be read of the shop on this device</source>
        <translation>Ce qui se lit de l&apos;atelier sur cet appareil</translation>
    </message>
    <message>
        <source>The shop was written by a newer version. Bring this app up to date.</source>
        <translation>L&apos;atelier a été écrit par une version plus récente. Mettre cette application à jour.</translation>
    </message>
    <message numerus="yes">
        <source>A new shop of what can be read: %n entries.</source>
        <translation>
            <numerusform>Un nouvel atelier de ce qui se lit&#xa0;: %n entrée.</numerusform>
            <numerusform>Un nouvel atelier de ce qui se lit&#xa0;: %n entrées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them only the copies beside it still had.</source>
        <translation>
            <numerusform>%n d&apos;entre elles n&apos;était plus que dans les copies à côté.</numerusform>
            <numerusform>%n d&apos;entre elles n&apos;étaient plus que dans les copies à côté.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing of the shop on this device can be read any more. Bring a backup back.</source>
        <translation>De l&apos;atelier sur cet appareil plus rien ne se lit. Ramener une sauvegarde.</translation>
    </message>
    <message>
        <source>The app opens it at its next start.</source>
        <translation>L’appli l’ouvre à son prochain démarrage.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoadView</name>
    <message>
        <source>after %1 %2</source>
        <translation>après %1 %2</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>pour le %1</translation>
    </message>
    <message>
        <source>seen to</source>
        <translation>réglé</translation>
    </message>
    <message>
        <source>Road test</source>
        <translation>Essai sur route</translation>
    </message>
    <message>
        <source>Type how far it was ridden, such as 4.</source>
        <translation>Écrire combien on a roulé, par exemple 4.</translation>
    </message>
    <message>
        <source>Road test kept</source>
        <translation>Essai gardé</translation>
    </message>
    <message>
        <source>Type what is to be looked at again, such as &quot;axle nut&quot;.</source>
        <translation>Écrire ce qu&apos;il faut revoir, par exemple &quot;écrou d&apos;axe&quot;.</translation>
    </message>
    <message>
        <source>Type the distance as a number, such as 50.</source>
        <translation>Écrire la distance en nombre, par exemple 50.</translation>
    </message>
    <message>
        <source>Type whole days, such as 14.</source>
        <translation>Écrire des jours entiers, par exemple 14.</translation>
    </message>
    <message>
        <source>Recheck kept</source>
        <translation>Contrôle gardé</translation>
    </message>
    <message>
        <source>Seen to</source>
        <translation>Réglé</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoundListsView</name>
    <message>
        <source>looked over</source>
        <translation>examiné</translation>
    </message>
    <message>
        <source>tried at take-in</source>
        <translation>essayé à la prise en charge</translation>
    </message>
    <message>
        <source>photographed at take-in</source>
        <translation>photographié à la prise en charge</translation>
    </message>
    <message>
        <source>checks: %1, %2</source>
        <translation>points&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>Type the check and the part of the machine that it belongs to.</source>
        <translation>Écrire le point et la partie du véhicule.</translation>
    </message>
    <message>
        <source>This check stands in the list already.</source>
        <translation>Ce point est déjà dans la liste.</translation>
    </message>
    <message>
        <source>Check added</source>
        <translation>Point ajouté</translation>
    </message>
    <message>
        <source>Check taken out</source>
        <translation>Point retiré</translation>
    </message>
    <message>
        <source>Check changed</source>
        <translation>Point changé</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoundView</name>
    <message>
        <source>fine</source>
        <translation>en ordre</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>pas fait</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>constat</translation>
    </message>
    <message>
        <source>finding: %1</source>
        <translation>constat&#xa0;: %1</translation>
    </message>
    <message>
        <source>Fine: %1</source>
        <translation>En ordre&#xa0;: %1</translation>
    </message>
    <message>
        <source>Not done: %1</source>
        <translation>Pas fait&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RoundsView</name>
    <message>
        <source>%1 of %2 to go</source>
        <translation>encore %1 sur %2</translation>
    </message>
    <message>
        <source>findings: %1</source>
        <translation>constats&#xa0;: %1</translation>
    </message>
    <message>
        <source>not done: %1</source>
        <translation>pas faits&#xa0;: %1</translation>
    </message>
    <message>
        <source>all fine</source>
        <translation>tout en ordre</translation>
    </message>
    <message>
        <source>The shop&apos;s lists hold no check for this machine: add some in Settings.</source>
        <translation>Les listes de l&apos;atelier n&apos;ont pas de point pour ce véhicule&#xa0;: en ajouter dans Réglages.</translation>
    </message>
    <message>
        <source>Round begun</source>
        <translation>Ronde commencée</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ScanView</name>
    <message>
        <source>This picture cannot be read: %1</source>
        <translation>Cette image ne se lit pas&#xa0;: %1</translation>
    </message>
    <message>
        <source>No code is read in this picture: take it closer and straight on.</source>
        <translation>Aucun code lisible dans cette image&#xa0;: la prendre de plus près et bien droit.</translation>
    </message>
    <message>
        <source>This label is of a job that is not in this shop.</source>
        <translation>Cette étiquette est d&apos;un dossier qui n&apos;est pas dans cet atelier.</translation>
    </message>
    <message>
        <source>Job %1 has no bag %2 any more.</source>
        <translation>Le dossier %1 n&apos;a plus de sachet %2.</translation>
    </message>
    <message>
        <source>Bag %1: %2</source>
        <translation>Sachet %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>No open job waits for a part with the number %1.</source>
        <translation>Aucun dossier ouvert n&apos;attend de pièce au numéro %1.</translation>
    </message>
    <message>
        <source>Parts with the number %1</source>
        <translation>Pièces au numéro %1</translation>
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
        <translation>Écrire ce qui a été fait, par exemple &quot;flexible neuf, frein purgé&quot;.</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Réglé</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::SheetsView</name>
    <message>
        <source>%1 cannot be written. Make room, and try again.</source>
        <translation>%1 ne peut pas être écrit. Faire de la place, et réessayer.</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Ligne %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>cannot be brought in</source>
        <translation>ne peut pas entrer</translation>
    </message>
    <message>
        <source>This file cannot be read: %1</source>
        <translation>Ce fichier ne se lit pas&#xa0;: %1</translation>
    </message>
    <message>
        <source>Brought in: %1</source>
        <translation>Entré&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ShopHome</name>
    <message>
        <source>Machine not described yet</source>
        <translation>Véhicule pas encore décrit</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ShopSession</name>
    <message>
        <source>Type the name of the one who works here.</source>
        <translation>Écrire le nom de qui travaille ici.</translation>
    </message>
    <message>
        <source>Brought back</source>
        <translation>Ramené</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Annulé&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ShopSettings</name>
    <message>
        <source>As the device</source>
        <translation>Comme l&apos;appareil</translation>
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
        <translation>Écrire qui signe.</translation>
    </message>
    <message>
        <source>Sign in the field with a finger.</source>
        <translation>Signer du doigt dans le champ.</translation>
    </message>
    <message>
        <source>The signature cannot be made into a picture. Sign once more.</source>
        <translation>La signature ne donne pas d&apos;image. Signer encore une fois.</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Signé</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::StripView</name>
    <message>
        <source>Strip step</source>
        <translation>Étape de démontage</translation>
    </message>
    <message>
        <source>Correction of a strip step</source>
        <translation>Correction d&apos;une étape</translation>
    </message>
    <message>
        <source>Choose or type what it is, such as &quot;screw&quot;.</source>
        <translation>Choisir ou écrire ce que c&apos;est, par exemple &quot;vis&quot;.</translation>
    </message>
    <message>
        <source>Type what was done, such as &quot;unplug 6-place connector&quot;.</source>
        <translation>Écrire ce qui a été fait, par exemple &quot;débrancher le connecteur à 6 voies&quot;.</translation>
    </message>
    <message>
        <source>Step %1 kept</source>
        <translation>Étape %1 gardée</translation>
    </message>
    <message>
        <source>Step corrected</source>
        <translation>Étape corrigée</translation>
    </message>
    <message>
        <source>%1: %2 of %3 on the photo</source>
        <translation>%1&#xa0;: %2 sur %3 sur la photo</translation>
    </message>
    <message>
        <source>All %1 are on a photo. Touch a ring to take it away.</source>
        <translation>Les %1 sont sur une photo. Toucher un cercle pour l&apos;ôter.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::StrokeView</name>
    <message>
        <source>No wire could be followed on this photo. Stroke across the wires.</source>
        <translation>Aucun fil n&apos;a pu être suivi sur cette photo. Passer le doigt en travers des fils.</translation>
    </message>
    <message>
        <source>Where ? stands no wire could be followed: if one belongs here, stroke instead.</source>
        <translation>Là où est ?, aucun fil n&apos;a pu être suivi&#xa0;: s&apos;il y en a un, faire un trait.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n wires confirmed</source>
        <translation>
            <numerusform>%n fil confirmé</numerusform>
            <numerusform>%n fils confirmés</numerusform>
        </translation>
    </message>
    <message>
        <source>Not confirmed any more</source>
        <translation>Plus confirmé</translation>
    </message>
    <message>
        <source>Turned round</source>
        <translation>Retourné</translation>
    </message>
    <message>
        <source>Taken out</source>
        <translation>Retiré</translation>
    </message>
    <message>
        <source>Put in</source>
        <translation>Mis</translation>
    </message>
    <message>
        <source>Place empty</source>
        <translation>Voie vide</translation>
    </message>
    <message>
        <source>Second wire of the place before</source>
        <translation>Second fil de la voie d&apos;avant</translation>
    </message>
    <message>
        <source>In a place of its own</source>
        <translation>Dans une voie à lui</translation>
    </message>
    <message>
        <source>Brought back</source>
        <translation>Ramené</translation>
    </message>
    <message>
        <source>Wires of %1</source>
        <translation>Fils de %1</translation>
    </message>
    <message>
        <source>%1 places read, %2 places in all: add those that are missing or empty</source>
        <translation>%1 voies lues, %2 en tout&#xa0;: ajouter celles qui manquent ou sont vides</translation>
    </message>
    <message>
        <source>%1 places read, only %2 in all: take out what is no wire of it</source>
        <translation>%1 voies lues, seulement %2 en tout&#xa0;: retirer ce qui n&apos;est pas un de ses fils</translation>
    </message>
    <message>
        <source>No wire could be followed from there. Stroke across the wires instead.</source>
        <translation>Aucun fil n&apos;a pu être suivi de là. Passer plutôt le doigt en travers des fils.</translation>
    </message>
    <message>
        <source>Followed from the connector: %1, in their order. Touch each that belongs here.</source>
        <translation>Suivis depuis le connecteur&#xa0;: %1, dans leur ordre. Toucher ceux qui vont ici.</translation>
    </message>
    <message>
        <source>Followed: %1. Touch each that belongs here, or draw a line across the connector&apos;s mouth: then only its wires are left.</source>
        <translation>Suivis&#xa0;: %1. Toucher ceux qui vont ici, ou tracer une ligne en travers de l&apos;entrée du connecteur&#xa0;: seuls ses fils restent.</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::TakeIn</name>
    <message>
        <source>Type the make or the model, whatever is readable.</source>
        <translation>Écrire la marque ou le modèle, ce qui se lit.</translation>
    </message>
    <message>
        <source>The year is a number from %1 to %2; leave it empty if it is not known.</source>
        <translation>L&apos;année est un nombre de %1 à %2&#xa0;; la laisser vide si elle est inconnue.</translation>
    </message>
    <message>
        <source>A number that is not below 0.</source>
        <translation>Un nombre qui n&apos;est pas sous 0.</translation>
    </message>
    <message>
        <source>Type why it is here, such as &quot;no lights&quot;.</source>
        <translation>Écrire pourquoi il est là, par exemple &quot;pas de feux&quot;.</translation>
    </message>
    <message>
        <source>%1; possible: %2</source>
        <translation>%1&#xa0;; possible&#xa0;: %2</translation>
    </message>
    <message>
        <source>Check digit fits.</source>
        <translation>Chiffre de contrôle juste.</translation>
    </message>
    <message>
        <source>Taken as an older number without check digit.</source>
        <translation>Pris pour un numéro ancien sans chiffre de contrôle.</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Changé</translation>
    </message>
    <message>
        <source>Comes back from %1</source>
        <translation>Revient de %1</translation>
    </message>
    <message>
        <source>Look at it once more: %1</source>
        <translation>À relire&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::TaskView</name>
    <message>
        <source>%1 of %2 estimated</source>
        <translation>%1 sur %2 estimées</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>terminée</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouverte</translation>
    </message>
    <message>
        <source>Watch stopped</source>
        <translation>Chrono arrêté</translation>
    </message>
    <message>
        <source>Watch started</source>
        <translation>Chrono lancé</translation>
    </message>
    <message>
        <source>Type whole minutes, such as 45.</source>
        <translation>Écrire des minutes entières, par exemple 45.</translation>
    </message>
    <message>
        <source>Time corrected</source>
        <translation>Temps corrigé</translation>
    </message>
    <message>
        <source>Type what it waits for, such as &quot;brake shoes&quot;.</source>
        <translation>Écrire ce qu&apos;elle attend, par exemple &quot;mâchoires de frein&quot;.</translation>
    </message>
    <message>
        <source>Task waits</source>
        <translation>Tâche en attente</translation>
    </message>
    <message>
        <source>Task resumed</source>
        <translation>Tâche reprise</translation>
    </message>
    <message>
        <source>Task finished</source>
        <translation>Tâche terminée</translation>
    </message>
    <message>
        <source>%1 already comes after %2: take that back first.</source>
        <translation>%1 vient déjà après %2&#xa0;: l&apos;ôter d&apos;abord.</translation>
    </message>
    <message>
        <source>Order of tasks kept</source>
        <translation>Ordre des tâches gardé</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ViewsView</name>
    <message>
        <source>photos: %1</source>
        <translation>photos&#xa0;: %1</translation>
    </message>
    <message>
        <source>passed over</source>
        <translation>passée</translation>
    </message>
</context>
<context>
    <name>undercowl::ui::WireRows</name>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>no wire found</source>
        <translation>aucun fil trouvé</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>confirmé</translation>
    </message>
    <message>
        <source>sure, of the side that is seen</source>
        <translation>sûr, pour le côté visible</translation>
    </message>
    <message>
        <source>turn the wire, a tracer may lie on its other side</source>
        <translation>tourner le fil, un liseré peut être de l’autre côté</translation>
    </message>
</context>
</TS>
