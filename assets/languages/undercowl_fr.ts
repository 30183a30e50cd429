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
    <name>CaptureFooter</name>
    <message>
        <source>Saving</source>
        <translation>Enregistre</translation>
    </message>
    <message>
        <source>Shoot</source>
        <translation>Déclencher</translation>
    </message>
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
        <source>DOT 3 or DOT 4, from the reservoir&apos;s lid</source>
        <translation>DOT 3 ou DOT 4, sur le couvercle du bocal</translation>
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
        <source>Written</source>
        <translation>Écrit</translation>
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
        <source>what must not be forgotten</source>
        <translation>ce qu&apos;il ne faut pas oublier</translation>
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
    <name>MeasureMore</name>
    <message>
        <source>one of several; tap to take it out</source>
        <translation>une de plusieurs&#xa0;; toucher pour la retirer</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Calcul détaillé</translation>
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
</context>
<context>
    <name>MemoPage</name>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
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
        <source>what must not be forgotten</source>
        <translation>ce qu&apos;il ne faut pas oublier</translation>
    </message>
    <message>
        <source>Kept so far</source>
        <translation>Gardées jusqu&apos;ici</translation>
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
        <source>Written</source>
        <translation>Écrit</translation>
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
        <source>from whom, by when</source>
        <translation>de qui, pour quand</translation>
    </message>
    <message>
        <source>What is it for?</source>
        <translation>À quoi sert-elle&#xa0;?</translation>
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
        <source>from whom, by when</source>
        <translation>de qui, pour quand</translation>
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
        <translation>Dossier au-dessus de %1</translation>
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
</context>
<context>
    <name>ProgressStrip</name>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
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
</context>
<context>
    <name>ReadAloud</name>
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
        <translation>Moins vite</translation>
    </message>
    <message>
        <source>Says its colour alone</source>
        <translation>Ne dit que sa couleur</translation>
    </message>
    <message>
        <source>Wire only</source>
        <translation>Fil seul</translation>
    </message>
    <message>
        <source>Hearing</source>
        <translation>Écoute</translation>
    </message>
    <message>
        <source>While it is held, say done, does not match, next, back, again, slower, undo or stop</source>
        <translation>En tenant, dire en anglais done, does not match, next, back, again, slower, undo ou stop</translation>
    </message>
    <message>
        <source>Listening</source>
        <translation>À l&apos;écoute</translation>
    </message>
    <message>
        <source>Hold and speak</source>
        <translation>Tenir et parler</translation>
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
        <source>Done</source>
        <translation>Fini</translation>
    </message>
    <message>
        <source>Back</source>
        <comment>to the wire before</comment>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Begins with the first wire again</source>
        <translation>Reprend au premier fil</translation>
    </message>
    <message>
        <source>Again</source>
        <translation>Encore</translation>
    </message>
    <message>
        <source>To the next wire; nothing is said of this one</source>
        <translation>Au fil suivant&#xa0;; rien n&apos;est dit de celui-ci</translation>
    </message>
    <message>
        <source>Skip</source>
        <translation>Sauter</translation>
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
        <source>Next wire</source>
        <translation>Fil suivant</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Regarder encore</translation>
    </message>
    <message>
        <source>Swapped with which?</source>
        <translation>Inversé avec lequel&#xa0;?</translation>
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
        <source>%1 do not match. Put them right and read back again.</source>
        <translation>%1 ne sont pas conformes. Les remettre en ordre et relire.</translation>
    </message>
    <message>
        <source>%1 were not checked.</source>
        <translation>%1 n&apos;ont pas été vérifiés.</translation>
    </message>
    <message>
        <source>Each wire was seen in its place.</source>
        <translation>Chaque fil a été vu à sa place.</translation>
    </message>
</context>
<context>
    <name>ReadBackWire</name>
    <message>
        <source>Photo, %1 marked</source>
        <translation>Photo, %1 marquée</translation>
    </message>
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
</context>
<context>
    <name>RefitStepsPage</name>
    <message>
        <source>Refit steps</source>
        <translation>Étapes de remontage</translation>
    </message>
    <message>
        <source>waits for %1</source>
        <translation>attend %1</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
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
    <message>
        <source>Written</source>
        <translation>Écrit</translation>
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
    <name>Snackbar</name>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
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
        <source>Measure</source>
        <translation>Mesurer</translation>
    </message>
    <message>
        <source>Steps so far</source>
        <translation>Étapes jusqu&apos;ici</translation>
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
        <source>tap to take it off the list</source>
        <translation>toucher pour l&apos;ôter de la liste</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>to know when it goes on again</source>
        <translation>pour savoir quand elle se remonte</translation>
    </message>
    <message>
        <source>Add a caution</source>
        <translation>Ajouter un avertissement</translation>
    </message>
    <message>
        <source>Which caution belongs before this step?</source>
        <translation>Quel avertissement va avant cette étape&#xa0;?</translation>
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
        <source>None sure</source>
        <translation>Aucun sûr</translation>
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
</context>
<context>
    <name>TextEntry</name>
    <message>
        <source>Clear %1</source>
        <translation>Vider %1</translation>
    </message>
</context>
<context>
    <name>TextEntryArea</name>
    <message>
        <source>Clear %1</source>
        <translation>Vider %1</translation>
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
        <translation>goupille</translation>
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
</context>
<context>
    <name>undercowl::platform::FileCamera</name>
    <message>
        <source>The picture could not be written: %1. Make room, then try again.</source>
        <translation>L&apos;image n&apos;a pas pu être écrite&#xa0;: %1. Faire de la place, puis réessayer.</translation>
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
        <source>Wire in place %1 does not match</source>
        <translation>Le fil de la voie %1 n&apos;est pas conforme</translation>
    </message>
    <message>
        <source>Part not fitted: %1</source>
        <translation>Pièce pas montée&#xa0;: %1</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Remis</translation>
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
</context>
<context>
    <name>undercowl::ui::ReadBackEar</name>
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
    <message>
        <source>Heard &quot;%1&quot;. Here say done, does not match, next, back, again, slower, undo or stop.</source>
        <translation>Entendu &quot;%1&quot;. Ici valent done, does not match, next, back, again, slower, undo ou stop.</translation>
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
        <source>Routing: %1</source>
        <translation>Passage&#xa0;: %1</translation>
    </message>
    <message>
        <source>As found: %1</source>
        <translation>À l&apos;arrivée&#xa0;: %1</translation>
    </message>
    <message>
        <source>Let out: %1</source>
        <translation>Vidangé&#xa0;: %1</translation>
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
        <source>Undone</source>
        <translation>Annulé</translation>
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
</context>
<context>
    <name>undercowl::ui::StrokeView</name>
    <message>
        <source>No wire could be followed on this photo. Stroke across the wires.</source>
        <translation>Aucun fil n&apos;a pu être suivi sur cette photo. Passer le doigt en travers des fils.</translation>
    </message>
    <message>
        <source>Followed: %1. Touch each that belongs here.</source>
        <translation>Suivis&#xa0;: %1. Toucher chacun de ceux d&apos;ici.</translation>
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
        <source>Read it again: %1</source>
        <translation>Le relire&#xa0;: %1</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Changé</translation>
    </message>
    <message>
        <source>Comes back from %1</source>
        <translation>Revient de %1</translation>
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
</context>
</TS>
