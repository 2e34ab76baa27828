<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_FR">
<context>
    <name></name>
    <message>
        <source>Theme as the system</source>
        <translation>Thème du système</translation>
    </message>
    <message>
        <source>Dark theme</source>
        <translation>Thème sombre</translation>
    </message>
    <message>
        <source>Light theme (daylight)</source>
        <translation>Thème clair (lumière du jour)</translation>
    </message>
    <message>
        <source>Sunlight theme (black on white)</source>
        <translation>Thème plein soleil (noir sur blanc)</translation>
    </message>
    <message>
        <source>SI units</source>
        <translation>Unités SI</translation>
    </message>
    <message>
        <source>US units</source>
        <translation>Unités US</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Fichier</translation>
    </message>
    <message>
        <source>&amp;Test</source>
        <translation>&amp;Essai</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Affichage</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>Ai&amp;de</translation>
    </message>
    <message>
        <source>New job…</source>
        <translation>Nouveau dossier…</translation>
    </message>
    <message>
        <source>Open a job…</source>
        <translation>Ouvrir un dossier…</translation>
    </message>
    <message>
        <source>Recent jobs</source>
        <translation>Dossiers récents</translation>
    </message>
    <message>
        <source>Undo the last edit</source>
        <translation>Annuler la dernière modification</translation>
    </message>
    <message>
        <source>Redo it</source>
        <translation>La rétablir</translation>
    </message>
    <message>
        <source>Save the report as PDF…</source>
        <translation>Enregistrer le rapport en PDF…</translation>
    </message>
    <message>
        <source>Export the tables as CSV…</source>
        <translation>Exporter les tableaux en CSV…</translation>
    </message>
    <message>
        <source>Export the test as JSON…</source>
        <translation>Exporter l’essai en JSON…</translation>
    </message>
    <message>
        <source>Close Airseam</source>
        <translation>Quitter Airseam</translation>
    </message>
    <message>
        <source>How far the points lie off the line</source>
        <translation>Écart des points à la droite</translation>
    </message>
    <message>
        <source>From the readings to the line</source>
        <translation>Des lectures à la droite</translation>
    </message>
    <message>
        <source>Show all in the plots</source>
        <translation>Tout montrer dans les graphiques</translation>
    </message>
    <message>
        <source>Strike or restore the chosen point</source>
        <translation>Écarter ou reprendre le point choisi</translation>
    </message>
    <message>
        <source>Decimal comma</source>
        <translation>Virgule décimale</translation>
    </message>
    <message>
        <source>Change the units</source>
        <translation>Changer d’unités</translation>
    </message>
    <message>
        <source>Next theme</source>
        <translation>Thème suivant</translation>
    </message>
    <message>
        <source>Whole screen, in Hunt the distance view</source>
        <translation>Plein écran, en recherche la vue de loin</translation>
    </message>
    <message>
        <source>Window of the trainer of a class</source>
        <translation>Fenêtre du formateur</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Touches</translation>
    </message>
    <message>
        <source>Find a command…</source>
        <translation>Chercher une commande…</translation>
    </message>
    <message>
        <source>Press the big button</source>
        <translation>Presser le grand bouton</translation>
    </message>
    <message>
        <source>Export the air infiltration as HPXML…</source>
        <translation>Exporter l’infiltration d’air en HPXML…</translation>
    </message>
    <message>
        <source>Copy the points for a spreadsheet</source>
        <translation>Copier les points pour un tableur</translation>
    </message>
    <message>
        <source>Copy the results for a spreadsheet</source>
        <translation>Copier les résultats pour un tableur</translation>
    </message>
    <message>
        <source>Find a job in a folder…</source>
        <translation>Chercher un dossier d’essai dans un répertoire…</translation>
    </message>
    <message>
        <source>Copy the job into the backup folder</source>
        <translation>Copier le dossier dans le répertoire de sauvegarde</translation>
    </message>
    <message>
        <source>Worst case of the exhaust fans…</source>
        <translation>Pire cas des ventilateurs d’extraction…</translation>
    </message>
    <message>
        <source>Type in a hand-written test…</source>
        <translation>Saisir un essai noté à la main…</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>Open job files with this program</source>
        <translation>Ouvrir les fichiers de dossier avec ce programme</translation>
    </message>
    <message>
        <source>Save the key sheet for printing…</source>
        <translation>Enregistrer la fiche des touches à imprimer…</translation>
    </message>
    <message>
        <source>Save a bundle for support…</source>
        <translation>Enregistrer un paquet pour l’assistance…</translation>
    </message>
    <message>
        <source>Hold a pressure</source>
        <translation>Maintenir une pression</translation>
    </message>
    <message>
        <source>Hold 5 Pa more</source>
        <translation>Maintenir 5 Pa de plus</translation>
    </message>
    <message>
        <source>Hold 5 Pa less</source>
        <translation>Maintenir 5 Pa de moins</translation>
    </message>
    <message>
        <source>Hold it in the other direction</source>
        <translation>Maintenir dans l’autre sens</translation>
    </message>
    <message>
        <source>Read the zero-flow pressure again</source>
        <translation>Relire la pression à débit nul</translation>
    </message>
    <message>
        <source>End the hold</source>
        <translation>Cesser de maintenir</translation>
    </message>
    <message>
        <source>Sealing starts</source>
        <translation>Le colmatage commence</translation>
    </message>
    <message>
        <source>Sealing is done</source>
        <translation>Le colmatage est fini</translation>
    </message>
    <message>
        <source>Note of this moment</source>
        <translation>Note sur cet instant</translation>
    </message>
    <message>
        <source>New leak</source>
        <translation>Nouvelle fuite</translation>
    </message>
    <message>
        <source>Count the change from here</source>
        <translation>Compter le changement à partir d’ici</translation>
    </message>
    <message>
        <source>Take the chosen point again</source>
        <translation>Mesurer de nouveau le point choisi</translation>
    </message>
    <message>
        <source>Another flow range is fitted…</source>
        <translation>Une autre plage de débit est montée…</translation>
    </message>
    <message>
        <source>Correct the flow range of points…</source>
        <translation>Corriger la gamme de débit de points…</translation>
    </message>
    <message>
        <source>Go on with the test that was cut short</source>
        <translation>Poursuivre l’essai interrompu</translation>
    </message>
    <message>
        <source>Play a recorded test back</source>
        <translation>Rejouer un essai enregistré</translation>
    </message>
    <message>
        <source>The folder for jobs cannot be made ({reason}): {folder}.</source>
        <translation>Le répertoire des dossiers ne peut pas être créé ({reason})&#xa0;: {folder}.</translation>
    </message>
    <message>
        <source>This is a sample job, kept as {path}. Make one of your own with Ctrl+N.</source>
        <translation>Ceci est un dossier d’exemple, enregistré sous {path}. Créez le vôtre avec Ctrl+N.</translation>
    </message>
    <message>
        <source>The program made a mistake ({kind}: {error}). What was read is kept.</source>
        <translation>Le programme a fait une erreur ({kind}&#xa0;: {error}). Ce qui a été lu est conservé.</translation>
    </message>
    <message>
        <source>Everything is saved as you type.</source>
        <translation>Tout est enregistré à la saisie.</translation>
    </message>
    <message>
        <source>A test is running: what you change here counts from the next test on.</source>
        <translation>Un essai est en cours&#xa0;: ce que vous changez ici compte à partir du prochain.</translation>
    </message>
    <message>
        <source>There is no simulated house {name}.</source>
        <translation>Il n’y a pas de maison simulée {name}.</translation>
    </message>
    <message>
        <source>The fan did not confirm that it is at rest. Look at it, and pull its plug if it turns.</source>
        <translation>Le ventilateur n’a pas confirmé son arrêt. Regardez-le, et débranchez-le s’il tourne.</translation>
    </message>
    <message>
        <source>The rig could not be closed cleanly ({error}). Look whether the fan stands still.</source>
        <translation>L’appareillage n’a pas pu être fermé proprement ({error}). Vérifiez que le ventilateur est à l’arrêt.</translation>
    </message>
    <message>
        <source>A test is running: end it before another rig is connected.</source>
        <translation>Un essai est en cours&#xa0;: terminez-le avant de connecter un autre appareillage.</translation>
    </message>
    <message>
        <source>The rig could not be connected: {error}.</source>
        <translation>L’appareillage n’a pas pu être connecté&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>The test ended by a fault of the program.</source>
        <translation>L’essai s’est terminé par une erreur du programme.</translation>
    </message>
    <message>
        <source>Say why it is left as it is.</source>
        <translation>Dites pourquoi cela reste en l’état.</translation>
    </message>
    <message>
        <source>The name of the second person is needed.</source>
        <translation>Le nom de la deuxième personne est nécessaire.</translation>
    </message>
    <message>
        <source>The picture cannot be read ({reason}): {path}.</source>
        <translation>L’image ne peut pas être lue ({reason})&#xa0;: {path}.</translation>
    </message>
    <message>
        <source>A test is running: end it before another job is opened.</source>
        <translation>Un essai est en cours&#xa0;: terminez-le avant d’ouvrir un autre dossier.</translation>
    </message>
    <message>
        <source>Not put back in {name}: {what}.</source>
        <translation>Non remis en état dans {name}&#xa0;: {what}.</translation>
    </message>
    <message>
        <source>Test {number} could not be read: {error}.</source>
        <translation>L’essai {number} n’a pas pu être lu&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>The test cannot start: {error}.</source>
        <translation>L’essai ne peut pas commencer&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>The safety answers do not allow to depressurize: the house is pressurized.</source>
        <translation>Les réponses de sécurité n’autorisent pas la dépression&#xa0;: la maison est mise en surpression.</translation>
    </message>
    <message>
        <source>The point could not be changed: {error}.</source>
        <translation>Le point n’a pas pu être changé&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>Reading the jobs…</source>
        <translation>Lecture des dossiers…</translation>
    </message>
    <message>
        <source>The folder cannot be read: {reason}.</source>
        <translation>Le répertoire ne peut pas être lu&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>The folder in which the jobs are kept</source>
        <translation>Le répertoire où se trouvent les dossiers</translation>
    </message>
    <message>
        <source>Export the table</source>
        <translation>Exporter le tableau</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>{count} tables of {jobs} jobs are saved in {folder}.</source>
        <translation>{count} tableaux de {jobs} dossiers sont enregistrés dans {folder}.</translation>
    </message>
    <message>
        <source>The tables could not be saved: {reason}.</source>
        <translation>Les tableaux n’ont pas pu être enregistrés&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>Export all tables into a folder</source>
        <translation>Exporter tous les tableaux dans un répertoire</translation>
    </message>
    <message>
        <source>Open a job first: it is the one that is copied.</source>
        <translation>Ouvrez d’abord un dossier&#xa0;: c’est lui qui est copié.</translation>
    </message>
    <message>
        <source>A folder for backup copies</source>
        <translation>Un répertoire pour les copies de sauvegarde</translation>
    </message>
    <message>
        <source>The job was not copied. {sentence}</source>
        <translation>Le dossier n’a pas été copié. {sentence}</translation>
    </message>
    <message>
        <source>The job is copied as {written}.</source>
        <translation>Le dossier est copié sous {written}.</translation>
    </message>
    <message>
        <source>Open a job first: the test is kept in it.</source>
        <translation>Ouvrez d’abord un dossier&#xa0;: l’essai y est conservé.</translation>
    </message>
    <message>
        <source>A test is running: end it before another one is kept.</source>
        <translation>Un essai est en cours&#xa0;: terminez-le avant d’en conserver un autre.</translation>
    </message>
    <message>
        <source>Kept as test {number}, marked as typed from a hand-written record.</source>
        <translation>Conservé comme essai {number}, marqué comme saisi d’après des notes à la main.</translation>
    </message>
    <message>
        <source>There are no points to copy.</source>
        <translation>Il n’y a pas de points à copier.</translation>
    </message>
    <message>
        <source>The points are in the clipboard, ready for a spreadsheet.</source>
        <translation>Les points sont dans le presse-papiers, prêts pour un tableur.</translation>
    </message>
    <message>
        <source>There is no result to copy.</source>
        <translation>Il n’y a pas de résultat à copier.</translation>
    </message>
    <message>
        <source>The results are in the clipboard, ready for a spreadsheet.</source>
        <translation>Les résultats sont dans le presse-papiers, prêts pour un tableur.</translation>
    </message>
    <message>
        <source>Written: {path}.</source>
        <translation>Écrit&#xa0;: {path}.</translation>
    </message>
    <message>
        <source>It could not be written: {reason}.</source>
        <translation>L’écriture a échoué&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>Save the report</source>
        <translation>Enregistrer le rapport</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Export the test</source>
        <translation>Exporter l’essai</translation>
    </message>
    <message>
        <source>JSON (*.json)</source>
        <translation>JSON (*.json)</translation>
    </message>
    <message>
        <source>Export as HPXML</source>
        <translation>Exporter en HPXML</translation>
    </message>
    <message>
        <source>HPXML (*.xml)</source>
        <translation>HPXML (*.xml)</translation>
    </message>
    <message>
        <source>Export the tables into a folder</source>
        <translation>Exporter les tableaux dans un répertoire</translation>
    </message>
    <message>
        <source>Preparation sheet</source>
        <translation>Fiche de préparation</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>Texte (*.txt)</translation>
    </message>
    <message>
        <source>Save the plot</source>
        <translation>Enregistrer le graphique</translation>
    </message>
    <message>
        <source>The plot could not be saved: {reason}.</source>
        <translation>Le graphique n’a pas pu être enregistré&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>The plot is saved as {written}.</source>
        <translation>Le graphique est enregistré sous {written}.</translation>
    </message>
    <message>
        <source>There is no test yet to make a report of.</source>
        <translation>Il n’y a pas encore d’essai pour faire un rapport.</translation>
    </message>
    <message>
        <source>The test is still running; the report follows when it has ended.</source>
        <translation>L’essai est encore en cours&#x202f;; le rapport suit quand il est terminé.</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>Images (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <source>A photo of it</source>
        <translation>Une photo de cela</translation>
    </message>
    <message>
        <source>{word}: on, {phones}</source>
        <translation>{word}&#xa0;: actif, {phones}</translation>
    </message>
    <message>
        <source>The time is up: stop the fog, look once more.</source>
        <translation>Le temps est écoulé&#xa0;: arrêtez la fumée, regardez encore une fois.</translation>
    </message>
    <message>
        <source>{time} left</source>
        <translation>encore {time}</translation>
    </message>
    <message>
        <source>This machine has no program that plays a sound (paplay or aplay).</source>
        <translation>Cette machine n’a pas de programme qui joue un son (paplay ou aplay).</translation>
    </message>
    <message>
        <source>Hold a pressure first: the house has to stand while a zone is read.</source>
        <translation>Maintenez d’abord une pression&#xa0;: la maison doit être stable pendant la lecture d’une zone.</translation>
    </message>
    <message>
        <source>No gauge of the rig reads a zone: type what your gauge shows.</source>
        <translation>Aucun manomètre de l’appareillage ne lit une zone&#xa0;: saisissez ce que montre le vôtre.</translation>
    </message>
    <message>
        <source>Leak {leak}</source>
        <translation>Fuite {leak}</translation>
    </message>
    <message>
        <source>What was held cannot be judged: {error}.</source>
        <translation>Ce qui a été maintenu ne peut pas être jugé&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>No pressure is held: begin to hold one first (H).</source>
        <translation>Aucune pression n’est maintenue&#xa0;: commencez par en maintenir une (H).</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Classe</translation>
    </message>
    <message>
        <source>House</source>
        <translation>Maison</translation>
    </message>
    <message>
        <source>Exercises (*.toml)</source>
        <translation>Exercices (*.toml)</translation>
    </message>
    <message>
        <source>Exercises and jobs (*.toml *.airseam)</source>
        <translation>Exercices et dossiers (*.toml *.airseam)</translation>
    </message>
    <message>
        <source>Airseam class</source>
        <translation>Airseam classe</translation>
    </message>
    <message>
        <source>Cover the truth (T)</source>
        <translation>Masquer la vérité (T)</translation>
    </message>
    <message>
        <source>Freeze the picture (F)</source>
        <translation>Figer l’image (F)</translation>
    </message>
    <message>
        <source>Host and port for the students: {address}</source>
        <translation>Hôte et port pour les élèves&#xa0;: {address}</translation>
    </message>
    <message>
        <source>The class ended by a mistake of the program ({error}).</source>
        <translation>La classe s’est terminée par une faute du programme ({error}).</translation>
    </message>
    <message>
        <source>{title}: {minutes} minutes, {points} points.</source>
        <translation>{title}&#xa0;: {minutes} minutes, {points} points.</translation>
    </message>
    <message>
        <source>The truth of the houses cannot be kept: {reason}.</source>
        <translation>La vérité des maisons ne peut être conservée&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>The job of a student</source>
        <translation>Le dossier d’un élève</translation>
    </message>
    <message>
        <source>Jobs (*.airseam)</source>
        <translation>Dossiers (*.airseam)</translation>
    </message>
    <message>
        <source>The jobs could not be marked: {error}.</source>
        <translation>Les dossiers n’ont pu être notés&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>1 job in {folder} marked.</source>
        <translation>1 dossier de {folder} noté.</translation>
    </message>
    <message>
        <source>{count} jobs in {folder} marked.</source>
        <translation>{count} dossiers de {folder} notés.</translation>
    </message>
    <message>
        <source>The sheets could not be written: {error}.</source>
        <translation>Les fiches n’ont pu être écrites&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>The program beside drives the fan; the students watch.</source>
        <translation>Le programme à côté commande le ventilateur&#x202f;; les élèves regardent.</translation>
    </message>
    <message>
        <source>The program beside joins as Beamer.</source>
        <translation>Le programme à côté participe comme Beamer.</translation>
    </message>
    <message>
        <source>Load an exercise, or a job as one</source>
        <translation>Charger un exercice, ou un dossier comme exercice</translation>
    </message>
    <message>
        <source>Save the exercise</source>
        <translation>Enregistrer l’exercice</translation>
    </message>
    <message>
        <source>Write the sheets into a folder</source>
        <translation>Écrire les fiches dans un répertoire</translation>
    </message>
    <message>
        <source>Write the rig files into a folder</source>
        <translation>Écrire les fichiers d’appareillage dans un répertoire</translation>
    </message>
    <message>
        <source>The house</source>
        <translation>La maison</translation>
    </message>
    <message>
        <source>The class</source>
        <translation>La classe</translation>
    </message>
    <message>
        <source>New job: where is it kept?</source>
        <translation>Nouveau dossier&#xa0;: où le conserver&#x202f;?</translation>
    </message>
    <message>
        <source>Open a job</source>
        <translation>Ouvrir un dossier</translation>
    </message>
    <message>
        <source>A photo of the leak</source>
        <translation>Une photo de la fuite</translation>
    </message>
    <message>
        <source>A plan for the pins</source>
        <translation>Un plan pour les repères</translation>
    </message>
    <message>
        <source>What was copied is no picture.</source>
        <translation>Ce qui a été copié n’est pas une image.</translation>
    </message>
    <message>
        <source>Choose the leak first that the picture is of.</source>
        <translation>Choisissez d’abord la fuite que montre l’image.</translation>
    </message>
    <message>
        <source>Hand-outs: into which folder?</source>
        <translation>Fiches à remettre&#xa0;: dans quel répertoire&#x202f;?</translation>
    </message>
    <message>
        <source>Done today: into which folder?</source>
        <translation>Fait aujourd’hui&#xa0;: dans quel répertoire&#x202f;?</translation>
    </message>
    <message>
        <source>Saved in {folder}: {names}.</source>
        <translation>Enregistré dans {folder}&#xa0;: {names}.</translation>
    </message>
    <message>
        <source>A logo for the reports</source>
        <translation>Un logo pour les rapports</translation>
    </message>
    <message>
        <source>Choose a folder</source>
        <translation>Choisir un répertoire</translation>
    </message>
    <message>
        <source>(no number: {error})</source>
        <translation>(pas de numéro&#xa0;: {error})</translation>
    </message>
    <message>
        <source>Issued: {version}. Save it as PDF to hand it over.</source>
        <translation>Émis&#xa0;: {version}. Enregistrez-le en PDF pour le remettre.</translation>
    </message>
    <message>
        <source>The report was not issued. {words}</source>
        <translation>Le rapport n’a pas été émis. {words}</translation>
    </message>
    <message>
        <source>The page for phones has ended after four hours.</source>
        <translation>La page pour téléphones s’est arrêtée après quatre heures.</translation>
    </message>
    <message>
        <source>Save as PNG…</source>
        <translation>Enregistrer en PNG…</translation>
    </message>
    <message>
        <source>Save as SVG…</source>
        <translation>Enregistrer en SVG…</translation>
    </message>
    <message>
        <source>Save the numbers as CSV…</source>
        <translation>Enregistrer les nombres en CSV…</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Tout montrer</translation>
    </message>
    <message>
        <source>Field checks over time</source>
        <translation>Contrôles sur site au fil du temps</translation>
    </message>
    <message>
        <source>{day}: {share} of what is allowed</source>
        <translation>{day}&#xa0;: {share} de ce qui est admis</translation>
    </message>
    <message>
        <source>difference as a share of what is allowed (dashed)</source>
        <translation>écart en part de ce qui est admis (tirets)</translation>
    </message>
    <message>
        <source>● depressurize</source>
        <translation>● dépression</translation>
    </message>
    <message>
        <source>■ pressurize</source>
        <translation>■ surpression</translation>
    </message>
    <message>
        <source>Flow against envelope pressure</source>
        <translation>Débit selon la pression</translation>
    </message>
    <message>
        <source>thick: level between changes, with its 95 % band</source>
        <translation>épais&#xa0;: niveau entre changements, avec sa bande à 95 %</translation>
    </message>
    <message>
        <source>Last 10 minutes</source>
        <translation>10 dernières minutes</translation>
    </message>
    <message>
        <source>leakage flow, {unit}</source>
        <translation>débit de fuite, {unit}</translation>
    </message>
    <message>
        <source>off the line, %</source>
        <translation>écart à la droite, %</translation>
    </message>
    <message>
        <source>envelope pressure, Pa</source>
        <translation>différence de pression, Pa</translation>
    </message>
    <message>
        <source>Leakage curves</source>
        <translation>Courbes de fuite</translation>
    </message>
    <message>
        <source>Last 3 minutes</source>
        <translation>3 dernières minutes</translation>
    </message>
    <message>
        <source>The pressure is drawn here once a rig is connected.</source>
        <translation>La pression s’affiche ici dès qu’un appareillage est connecté.</translation>
    </message>
    <message>
        <source>Certificates (*.pdf *.png *.jpg *.jpeg *.txt);;All files (*)</source>
        <translation>Certificats (*.pdf *.png *.jpg *.jpeg *.txt);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>The certificate is kept as {name}.</source>
        <translation>Le certificat est conservé sous {name}.</translation>
    </message>
    <message>
        <source>Kept in the register. {verdict}</source>
        <translation>Conservé dans le registre. {verdict}</translation>
    </message>
    <message>
        <source>The calibration certificate</source>
        <translation>Le certificat d’étalonnage</translation>
    </message>
    <message>
        <source>A test with points, and a rig with more than one flow range, are needed.</source>
        <translation>Il faut un essai avec des points et un équipement avec plus d’une gamme de débit.</translation>
    </message>
    <message>
        <source>A rig with more than one flow range has to be connected.</source>
        <translation>Un appareillage à plusieurs plages de débit doit être connecté.</translation>
    </message>
    <message>
        <source> with 1 point taken</source>
        <translation> avec 1 point mesuré</translation>
    </message>
    <message>
        <source> with {count} points taken</source>
        <translation> avec {count} points mesurés</translation>
    </message>
    <message>
        <source>Test {number} of {when} was interrupted{points}; every reading up to then is safe.</source>
        <translation>L’essai {number} du {when} a été interrompu{points}&#x202f;; chaque lecture jusque-là est conservée.</translation>
    </message>
    <message>
        <source>A rig has to be connected, and no test may be running.</source>
        <translation>Un appareillage doit être connecté, et aucun essai ne doit être en cours.</translation>
    </message>
    <message>
        <source>The test cannot go on: {error}.</source>
        <translation>L’essai ne peut pas continuer&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>A point can be taken again only while its test runs.</source>
        <translation>Un point ne peut être repris que pendant son essai.</translation>
    </message>
    <message>
        <source>Choose in the table which point is to be taken again.</source>
        <translation>Choisissez dans le tableau le point à mesurer de nouveau.</translation>
    </message>
    <message>
        <source>The point is taken again next; the old one is left out and stays in the record.</source>
        <translation>Le point est mesuré de nouveau ensuite&#x202f;; l’ancien est écarté et reste dans l’enregistrement.</translation>
    </message>
    <message>
        <source>No rig is connected.</source>
        <translation>Aucun appareillage n’est connecté.</translation>
    </message>
    <message>
        <source>A recorded test is played back: what was measured stays as it was.</source>
        <translation>Un essai enregistré est rejoué : ce qui a été mesuré reste tel quel.</translation>
    </message>
    <message>
        <source>The report could not be made: {error}</source>
        <translation>Le rapport n’a pas pu être établi&#xa0;: {error}</translation>
    </message>
    <message>
        <source>The report is saved as {written}.</source>
        <translation>Le rapport est enregistré sous {written}.</translation>
    </message>
    <message>
        <source>The report could not be saved: {reason}.</source>
        <translation>Le rapport n’a pas pu être enregistré&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>The test is saved as {written}.</source>
        <translation>L’essai est enregistré sous {written}.</translation>
    </message>
    <message>
        <source>The test could not be saved: {reason}.</source>
        <translation>L’essai n’a pas pu être enregistré&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>The fragment is saved as {written}.</source>
        <translation>L’extrait est enregistré sous {written}.</translation>
    </message>
    <message>
        <source>The fragment could not be saved: {reason}.</source>
        <translation>L’extrait n’a pas pu être enregistré&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>{count} tables are saved in {folder}.</source>
        <translation>{count} tableaux sont enregistrés dans {folder}.</translation>
    </message>
    <message>
        <source>Rig files (*.toml)</source>
        <translation>Appareillages (*.toml)</translation>
    </message>
    <message>
        <source>You have joined the class at {place}.</source>
        <translation>Vous avez rejoint le cours à {place}.</translation>
    </message>
    <message>
        <source>Copied: {text}</source>
        <translation>Copié&#xa0;: {text}</translation>
    </message>
    <message>
        <source>No serial port was found.</source>
        <translation>Aucun port série n’a été trouvé.</translation>
    </message>
    <message>
        <source>{count} ports found.</source>
        <translation>{count} ports trouvés.</translation>
    </message>
    <message>
        <source>{count} found.</source>
        <translation>{count} trouvés.</translation>
    </message>
    <message>
        <source>No instrument was found.</source>
        <translation>Aucun appareil n’a été trouvé.</translation>
    </message>
    <message>
        <source>There is no serial port.</source>
        <translation>Il n’y a pas de port série.</translation>
    </message>
    <message>
        <source>The rig file could not be saved: {reason}.</source>
        <translation>L’appareillage n’a pas pu être enregistré&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>The rig is saved as {written}.</source>
        <translation>L’appareillage est enregistré sous {written}.</translation>
    </message>
    <message>
        <source>Load a rig file</source>
        <translation>Charger un appareillage</translation>
    </message>
    <message>
        <source>Save the rig</source>
        <translation>Enregistrer l’appareillage</translation>
    </message>
    <message>
        <source>The ports could not be listed: {error}.</source>
        <translation>Les ports n’ont pas pu être listés&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>The settings could not be read, the defaults are used ({error}).</source>
        <translation>Les réglages n’ont pas pu être lus, ceux d’origine sont utilisés ({error}).</translation>
    </message>
    <message>
        <source>The settings could not be kept ({reason}).</source>
        <translation>Les réglages n’ont pas pu être enregistrés ({reason}).</translation>
    </message>
    <message>
        <source>test {number}</source>
        <translation>essai {number}</translation>
    </message>
    <message>
        <source>The two tests cannot be compared: {error}.</source>
        <translation>Les deux essais ne peuvent pas être comparés&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>What a bundle for support holds stands below. Look at it before you hand it on.</source>
        <translation>Le contenu d’un paquet pour l’assistance figure ci-dessous. Regardez-le avant de le transmettre.</translation>
    </message>
    <message>
        <source>Save the key sheet</source>
        <translation>Enregistrer la fiche des touches</translation>
    </message>
    <message>
        <source>The system cannot be told: {error}.</source>
        <translation>Le système ne peut pas en être informé&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>The system cannot be told: {reason}.</source>
        <translation>Le système ne peut pas en être informé&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>{told} “airseam associate --remove” takes it back.</source>
        <translation>{told} «&#xa0;airseam associate --remove&#xa0;» l’annule.</translation>
    </message>
    <message>
        <source>{sentence} A running test goes on; you may go on too.</source>
        <translation>{sentence} Un essai en cours continue&#x202f;; vous pouvez continuer aussi.</translation>
    </message>
    <message>
        <source>Save the bundle</source>
        <translation>Enregistrer le paquet</translation>
    </message>
    <message>
        <source>ZIP (*.zip)</source>
        <translation>ZIP (*.zip)</translation>
    </message>
    <message>
        <source>Keys of Airseam</source>
        <translation>Touches d’Airseam</translation>
    </message>
    <message>
        <source>Choose the port of the gauge first.</source>
        <translation>Choisissez d’abord le port du manomètre.</translation>
    </message>
    <message>
        <source>The profile is not saved: {error}.</source>
        <translation>Le profil n’est pas enregistré&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>The profile is saved as {path}, and the gauge stands in your own rig.</source>
        <translation>Le profil est enregistré sous {path}, et le manomètre figure dans votre propre appareillage.</translation>
    </message>
    <message>
        <source>Type what the gauge shows at any time. A test says when a reading is needed.</source>
        <translation>Saisissez à tout moment ce que montre le manomètre. L’essai dit quand une lecture est nécessaire.</translation>
    </message>
    <message>
        <source>nothing typed yet</source>
        <translation>rien de saisi</translation>
    </message>
    <message>
        <source>typed just now</source>
        <translation>saisi à l’instant</translation>
    </message>
    <message>
        <source>typed {seconds} s ago</source>
        <translation>saisi il y a {seconds} s</translation>
    </message>
    <message>
        <source>typed {minutes} min ago</source>
        <translation>saisi il y a {minutes} min</translation>
    </message>
    <message>
        <source>Is this test valid?</source>
        <translation>Cet essai est-il valable&#x202f;?</translation>
    </message>
    <message>
        <source>The requirements of the method are checked from the first point on.</source>
        <translation>Les exigences de la méthode sont vérifiées dès le premier point.</translation>
    </message>
    <message>
        <source>The requirements of the method are checked from two points on.</source>
        <translation>Les exigences de la méthode sont vérifiées à partir de deux points.</translation>
    </message>
    <message>
        <source>{text}. Clause {clause}, {source}.</source>
        <translation>{text}. Article {clause}, {source}.</translation>
    </message>
    <message>
        <source>{failed} of {total} not met</source>
        <translation>{failed} sur {total} non satisfaites</translation>
    </message>
    <message>
        <source>could not be checked</source>
        <translation>non vérifiables</translation>
    </message>
    <message>
        <source>still to come</source>
        <translation>à venir</translation>
    </message>
    <message>
        <source>{open_items} of {total} {words}</source>
        <translation>{open_items} sur {total} {words}</translation>
    </message>
    <message>
        <source>all {total} met</source>
        <translation>les {total} satisfaites</translation>
    </message>
    <message>
        <source>From two points on.</source>
        <translation>À partir de deux points.</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Contrôle</translation>
    </message>
    <message>
        <source>Quantities</source>
        <translation>Grandeurs</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Limites</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Incertitude</translation>
    </message>
    <message>
        <source>Meaning</source>
        <translation>Sens</translation>
    </message>
    <message>
        <source>Corrections</source>
        <translation>Corrections</translation>
    </message>
    <message>
        <source>Join both gauges to one hose. Take a point with the hose open, then raise the pressure, by the fan or by a syringe, hold it, and take the next.</source>
        <translation>Reliez les deux manomètres à un même tube. Prenez un point tube ouvert, augmentez ensuite la pression, avec le ventilateur ou une seringue, maintenez-la, et prenez le suivant.</translation>
    </message>
    <message>
        <source>The rig is no longer connected.</source>
        <translation>L’appareillage n’est plus connecté.</translation>
    </message>
    <message>
        <source>No point: {words}.</source>
        <translation>Pas de point&#xa0;: {words}.</translation>
    </message>
    <message>
        <source>Reading for {seconds} s…</source>
        <translation>Lecture pendant {seconds} s…</translation>
    </message>
    <message>
        <source>Take a point</source>
        <translation>Prendre un point</translation>
    </message>
    <message>
        <source>Connect the rig with both gauges first.</source>
        <translation>Connectez d’abord l’appareillage avec les deux manomètres.</translation>
    </message>
    <message>
        <source>The rig needs two pressure channels: give the second gauge a role, such as tap 2.</source>
        <translation>L’appareillage doit avoir deux voies de pression&#xa0;: donnez un rôle au second manomètre, comme prise 2.</translation>
    </message>
    <message>
        <source>Choose another channel for the second gauge.</source>
        <translation>Choisissez une autre voie pour le second manomètre.</translation>
    </message>
    <message>
        <source>Register both gauges, and say which is which.</source>
        <translation>Inscrivez les deux manomètres au registre, et dites lequel est lequel.</translation>
    </message>
    <message>
        <source>{count} more points, one of them near zero.</source>
        <translation>Encore {count} points, dont un près de zéro.</translation>
    </message>
    <message>
        <source>1 more point, one of them near zero.</source>
        <translation>Encore 1 point, dont un près de zéro.</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Premier</translation>
    </message>
    <message>
        <source>Second</source>
        <translation>Second</translation>
    </message>
    <message>
        <source>Apart</source>
        <translation>Écart</translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation>Admis</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Points</translation>
    </message>
    <message>
        <source>No point is taken yet.</source>
        <translation>Aucun point n’est encore pris.</translation>
    </message>
    <message>
        <source>The line grows here, point by point.</source>
        <translation>La droite se forme ici, point par point.</translation>
    </message>
    <message>
        <source>flow, {unit}</source>
        <translation>débit, {unit}</translation>
    </message>
    <message>
        <source>Read with another flow range? Shift+F</source>
        <translation>Lu avec une autre gamme ? Maj+F</translation>
    </message>
    <message>
        <source>flow, {unit}; dotted: {step} ± {half} at 50 Pa after point {changed_at}</source>
        <translation>débit, {unit}&#x202f;; pointillé&#xa0;: {step} ± {half} à 50 Pa après le point {changed_at}</translation>
    </message>
    <message>
        <source>1 point is not shown: pressure or flow is not above 0.</source>
        <translation>1 point n’est pas montré&#xa0;: pression ou débit ne dépasse pas 0.</translation>
    </message>
    <message>
        <source>{count} points are not shown: pressure or flow is not above 0.</source>
        <translation>{count} points ne sont pas montrés&#xa0;: pression ou débit ne dépasse pas 0.</translation>
    </message>
    <message>
        <source>stands still</source>
        <translation>figé</translation>
    </message>
    <message>
        <source>answers late</source>
        <translation>répond tard</translation>
    </message>
    <message>
        <source>zero moved</source>
        <translation>zéro décalé</translation>
    </message>
    <message>
        <source>battery low</source>
        <translation>pile faible</translation>
    </message>
    <message>
        <source>{name} answers after {time} ms.</source>
        <translation>{name} répond après {time} ms.</translation>
    </message>
    <message>
        <source>nothing stands still</source>
        <translation>rien n’est figé</translation>
    </message>
    <message>
        <source>no drop-outs</source>
        <translation>pas de coupures</translation>
    </message>
    <message>
        <source>Without a volume the result is a flow and no air change rate.</source>
        <translation>Sans volume, le résultat est un débit et non un taux de renouvellement d’air.</translation>
    </message>
    <message>
        <source>5 % of volume moves the air change rate by 5 %.</source>
        <translation>5 % de volume changent le taux de renouvellement d’air de 5 %.</translation>
    </message>
    <message>
        <source>5 % of volume moves the result by {step}: {middle} would be {low} or {high}.</source>
        <translation>5 % de volume changent le résultat de {step}&#xa0;: {middle} deviendrait {low} ou {high}.</translation>
    </message>
    <message>
        <source>Volume over floor area gives rooms {shown} high. Is one of the two mistyped?</source>
        <translation>Le volume divisé par la surface donne des pièces de {shown} de haut. Une faute de frappe&#x202f;?</translation>
    </message>
    <message>
        <source>No body of this volume has less than {shown} of surface.</source>
        <translation>Aucun corps de ce volume n’a moins de {shown} de surface.</translation>
    </message>
    <message>
        <source>Very much surface for this volume. Is one of the two mistyped?</source>
        <translation>Beaucoup de surface pour ce volume. Une faute de frappe&#x202f;?</translation>
    </message>
    <message>
        <source>Less than the rooms are high ({shown} by volume and floor area).</source>
        <translation>Moins que la hauteur des pièces ({shown} d’après volume et surface).</translation>
    </message>
    <message>
        <source>Unusual for the inside of a building. A number with °F or °C is read as such.</source>
        <translation>Inhabituel à l’intérieur d’un bâtiment. Un nombre avec °F ou °C est lu comme tel.</translation>
    </message>
    <message>
        <source>Much warmer outside than inside. Are the two swapped?</source>
        <translation>Beaucoup plus chaud dehors que dedans. Les deux sont-elles inversées&#x202f;?</translation>
    </message>
    <message>
        <source>About {shown} is usual at this altitude; not the value brought to sea level?</source>
        <translation>Environ {shown} est habituel à cette altitude&#x202f;; est-ce la valeur ramenée au niveau de la mer&#x202f;?</translation>
    </message>
    <message>
        <source>So much wind makes the interval wide. A calmer hour may be worth waiting for.</source>
        <translation>Tant de vent élargit l’intervalle. Une heure plus calme mérite peut-être l’attente.</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Débit</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Boucher</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>Moitié</translation>
    </message>
    <message>
        <source>As built</source>
        <translation>D’origine</translation>
    </message>
    <message>
        <source>×2</source>
        <translation>×2</translation>
    </message>
    <message>
        <source>×4</source>
        <translation>×4</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Vent</translation>
    </message>
    <message>
        <source>Where the wind comes from</source>
        <translation>D’où vient le vent</translation>
    </message>
    <message>
        <source>Blow</source>
        <translation>Souffler</translation>
    </message>
    <message>
        <source> in</source>
        <translation> int.</translation>
    </message>
    <message>
        <source>Indoors</source>
        <translation>Intérieur</translation>
    </message>
    <message>
        <source> out</source>
        <translation> ext.</translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translation>Extérieur</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Régler</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Changement</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Time passes {pace} times as fast</source>
        <translation>Le temps passe {pace} fois plus vite</translation>
    </message>
    <message>
        <source>Time stands still</source>
        <translation>Le temps s’arrête</translation>
    </message>
    <message>
        <source>Leaks</source>
        <translation>Fuites</translation>
    </message>
    <message>
        <source>Leaks of the house</source>
        <translation>Fuites de la maison</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Météo</translation>
    </message>
    <message>
        <source>Time in the houses</source>
        <translation>Temps dans les maisons</translation>
    </message>
    <message>
        <source>What is left</source>
        <translation>Ce qui reste</translation>
    </message>
    <message>
        <source>How to look</source>
        <translation>Comment chercher</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>Zones</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Téléphone</translation>
    </message>
    <message>
        <source>No rig is connected. Connect one in Rig, then hold a pressure here.</source>
        <translation>Aucun appareillage n’est connecté. Connectez-en un sous Appareils, puis maintenez ici une pression.</translation>
    </message>
    <message>
        <source>No job is open: marks and leaks need one. Make one with Ctrl+N.</source>
        <translation>Aucun dossier n’est ouvert&#xa0;: repères et fuites en ont besoin. Créez-en un avec Ctrl+N.</translation>
    </message>
    <message>
        <source>No pressure is held. Choose one, then hold it (H).</source>
        <translation>Aucune pression n’est maintenue. En choisir une, puis la maintenir (H).</translation>
    </message>
    <message>
        <source>{text} held</source>
        <translation>{text} maintenus</translation>
    </message>
    <message>
        <source>{text}, wanted {target}</source>
        <translation>{text}, voulu {target}</translation>
    </message>
    <message>
        <source>Leakage flow at {reference} Pa, now</source>
        <translation>Débit de fuite à {reference} Pa, maintenant</translation>
    </message>
    <message>
        <source>{caption}: no figure yet</source>
        <translation>{caption}&#xa0;: pas encore de valeur</translation>
    </message>
    <message>
        <source>, brought from {held_pa} Pa</source>
        <translation>, ramené de {held_pa} Pa</translation>
    </message>
    <message>
        <source>{text} air changes per hour at 50 Pa{far}</source>
        <translation>{text} renouvellements par heure à 50 Pa{far}</translation>
    </message>
    <message>
        <source>The wind at this house is being learnt: {wait} s to go.</source>
        <translation>Le vent sur cette maison est en cours d’apprentissage&#xa0;: encore {wait} s.</translation>
    </message>
    <message>
        <source>No reading to show.</source>
        <translation>Pas de lecture à montrer.</translation>
    </message>
    <message>
        <source>± {half} {unit} (95 %) over the last 10 s, each reading brought to {reference} Pa</source>
        <translation>± {half} {unit} (95 %) sur les 10 dernières s, chaque lecture ramenée à {reference} Pa</translation>
    </message>
    <message>
        <source>No target at 50 Pa is set for the stage.</source>
        <translation>Aucun objectif à 50 Pa n’est fixé pour l’étape.</translation>
    </message>
    <message>
        <source>At the target of {goal}: only a test by the method counts</source>
        <translation>À l’objectif de {goal}&#xa0;: seul un essai selon la méthode compte</translation>
    </message>
    <message>
        <source>Above the target of {goal}</source>
        <translation>Au-dessus de l’objectif de {goal}</translation>
    </message>
    <message>
        <source>{share} % of the way from {begun} to the target of {goal}</source>
        <translation>{share} % du chemin de {begun} à l’objectif de {goal}</translation>
    </message>
    <message>
        <source>Since the mark at {counted_from}</source>
        <translation>Depuis le repère de {counted_from}</translation>
    </message>
    <message>
        <source>Since you started</source>
        <translation>Depuis le début</translation>
    </message>
    <message>
        <source>± {half} (95 %) · a hole of {text} {unit} ({reference} Pa, Cd 0.611)</source>
        <translation>± {half} (95 %) · un trou de {text} {unit} ({reference} Pa, Cd 0.611)</translation>
    </message>
    <message>
        <source>Least change told in 30 s now: {text} {unit} ({share} %)</source>
        <translation>Décelable en 30 s à présent dès&#xa0;: {text} {unit} ({share} %)</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>sûr</translation>
    </message>
    <message>
        <source>not sure: as small as the wind</source>
        <translation>pas sûr&#xa0;: aussi petit que le vent</translation>
    </message>
    <message>
        <source>too windy to tell</source>
        <translation>trop de vent pour le dire</translation>
    </message>
    <message>
        <source>{waited} s to go</source>
        <translation>encore {waited} s</translation>
    </message>
    <message>
        <source>nothing quiet before it</source>
        <translation>rien de calme avant</translation>
    </message>
    <message>
        <source>not told from none (± {plus_minus})</source>
        <translation>non distinct de zéro (± {plus_minus})</translation>
    </message>
    <message>
        <source>Unnamed</source>
        <translation>Sans nom</translation>
    </message>
    <message>
        <source>no data</source>
        <translation>pas de données</translation>
    </message>
    <message>
        <source>data {seconds} s old</source>
        <translation>données d’il y a {seconds} s</translation>
    </message>
    <message>
        <source>data older than 100 s</source>
        <translation>données de plus de 100 s</translation>
    </message>
    <message>
        <source>from here</source>
        <translation>à partir d’ici</translation>
    </message>
    <message>
        <source>found {leak}</source>
        <translation>trouvé {leak}</translation>
    </message>
    <message>
        <source>looks like a seal</source>
        <translation>semble un colmatage</translation>
    </message>
    <message>
        <source>As it is now</source>
        <translation>Tel qu’il est maintenant</translation>
    </message>
    <message>
        <source>Without a number</source>
        <translation>Sans numéro</translation>
    </message>
    <message>
        <source>{number}, revision {revision}</source>
        <translation>{number}, révision {revision}</translation>
    </message>
    <message>
        <source> Issued again: {reason}.</source>
        <translation> Émis de nouveau&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>Issued {time}, signed by {signed_by}. It never changes.{reason}</source>
        <translation>Émis le {time}, signé par {signed_by}. Il ne change plus.{reason}</translation>
    </message>
    <message>
        <source>A draft. Made to find leaks: it is issued without a number.</source>
        <translation>Projet pour chercher des fuites&#xa0;: émis sans numéro.</translation>
    </message>
    <message>
        <source>A draft. It has no number yet.</source>
        <translation>Projet. Il n’a pas encore de numéro.</translation>
    </message>
    <message>
        <source>A draft. It would be issued as {number}.</source>
        <translation>Projet. Il serait émis sous {number}.</translation>
    </message>
    <message>
        <source>Edited since the last issue: {changed}.</source>
        <translation>Modifié depuis la dernière émission&#xa0;: {changed}.</translation>
    </message>
    <message>
        <source>As it was issued last.</source>
        <translation>Tel qu’émis en dernier.</translation>
    </message>
    <message>
        <source>{what} Another issue would be revision {count}.</source>
        <translation>{what} Une nouvelle émission serait la révision {count}.</translation>
    </message>
    <message>
        <source>Power law</source>
        <translation>Loi de puissance</translation>
    </message>
    <message>
        <source>Polynomial in Δp</source>
        <translation>Polynôme en Δp</translation>
    </message>
    <message>
        <source>Polynomial in √Δp</source>
        <translation>Polynôme en √Δp</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tableau</translation>
    </message>
    <message>
        <source>Coefficient in m³/(h·Paⁿ); exponent</source>
        <translation>Coefficient en m³/(h·Paⁿ)&#x202f;; exposant</translation>
    </message>
    <message>
        <source>c0; c1; c2 … in m³/h</source>
        <translation>c0; c1; c2 … en m³/h</translation>
    </message>
    <message>
        <source>Pa m³/h; Pa m³/h; …</source>
        <translation>Pa m³/h; Pa m³/h; …</translation>
    </message>
    <message>
        <source>Due date is {due}: a day after the calibration is needed.</source>
        <translation>L’échéance est le {due}&#xa0;: il faut un jour après l’étalonnage.</translation>
    </message>
    <message>
        <source>Upper end is {high} Pa: more than {low} Pa is needed.</source>
        <translation>La limite haute est {high} Pa&#xa0;: il faut plus de {low} Pa.</translation>
    </message>
    <message>
        <source>These numbers are no calibration: {words}.</source>
        <translation>Ces nombres ne sont pas un étalonnage&#xa0;: {words}.</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Non précisé</translation>
    </message>
    <message>
        <source>The rig measures this; the value here counts where it does not read.</source>
        <translation>L’appareillage le mesure&#x202f;; la valeur d’ici compte là où il ne lit pas.</translation>
    </message>
    <message>
        <source>Its report carries no certificate number; leaks come first.</source>
        <translation>Son rapport n’a pas de numéro de certificat&#x202f;; les fuites viennent d’abord.</translation>
    </message>
    <message>
        <source>Kind, limits and state of the building are remembered for each stage.</source>
        <translation>Type, limites et état du bâtiment sont retenus pour chaque étape.</translation>
    </message>
    <message>
        <source>Highest first: it shows a loose seal at once.</source>
        <translation>La plus haute d’abord&#xa0;: un joint défait se voit aussitôt.</translation>
    </message>
    <message>
        <source>There is no job in this folder yet. Choose the folder in which your jobs are kept.</source>
        <translation>Il n’y a pas encore de dossier dans ce répertoire. Choisissez celui où se trouvent vos dossiers.</translation>
    </message>
    <message>
        <source>{count} of {known} lines</source>
        <translation>{count} lignes sur {known}</translation>
    </message>
    <message>
        <source>{known} lines, newest first</source>
        <translation>{known} lignes, les plus récentes d’abord</translation>
    </message>
    <message>
        <source>{lines}, one for each test.</source>
        <translation>{lines}, une pour chaque essai.</translation>
    </message>
    <message>
        <source>No job has these words; {known} lines were looked at.</source>
        <translation>Aucun dossier ne contient ces mots&#x202f;; {known} lignes ont été examinées.</translation>
    </message>
    <message>
        <source>Always</source>
        <translation>Toujours</translation>
    </message>
    <message>
        <source>Stop the fan, at once, from anywhere. A running test is paused and can go on; nothing is lost.</source>
        <translation>Arrête le ventilateur, aussitôt et de partout. Un essai en cours est suspendu et peut reprendre&#x202f;; rien n’est perdu.</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espace</translation>
    </message>
    <message>
        <source>Press the big button at the bottom right: it does what the sentence beside it says.</source>
        <translation>Presse le grand bouton en bas à droite&#xa0;: il fait ce que dit la phrase à côté.</translation>
    </message>
    <message>
        <source>1 to 7</source>
        <translation>1 à 7</translation>
    </message>
    <message>
        <source>Go to Job, Set-up, Rig, Test, Hunt, Stages, Report.</source>
        <translation>Aller à Dossier, Préparation, Appareils, Essai, Recherche, Étapes, Rapport.</translation>
    </message>
    <message>
        <source>Show this sheet, and go back.</source>
        <translation>Montre cette fiche, et revient.</translation>
    </message>
    <message>
        <source>Find a command by its words.</source>
        <translation>Cherche une commande par ses mots.</translation>
    </message>
    <message>
        <source>Whole screen, in Hunt few huge figures, and back.</source>
        <translation>Plein écran, en recherche quelques très grands chiffres, et retour.</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Dossier</translation>
    </message>
    <message>
        <source>Make a new job.</source>
        <translation>Crée un nouveau dossier.</translation>
    </message>
    <message>
        <source>Open a job; or drop its file on the window, or a rig file.</source>
        <translation>Ouvre un dossier&#x202f;; ou déposez son fichier, ou un appareillage, sur la fenêtre.</translation>
    </message>
    <message>
        <source>Find a job in a folder by street, client, number or date.</source>
        <translation>Cherche un dossier dans un répertoire par rue, client, numéro ou date.</translation>
    </message>
    <message>
        <source>Copy the job into the backup folder.</source>
        <translation>Copie le dossier dans le répertoire de sauvegarde.</translation>
    </message>
    <message>
        <source>Do it again.</source>
        <translation>La rétablit.</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Essai</translation>
    </message>
    <message>
        <source>Show how far the points lie off the line, and back.</source>
        <translation>Montre l’écart des points à la droite, et revient.</translation>
    </message>
    <message>
        <source>Show every correction from the readings to the line, and back.</source>
        <translation>Montre chaque correction des lectures à la droite, et revient.</translation>
    </message>
    <message>
        <source>Take back the last edit, in Test the last change of points; measured data is never taken back.</source>
        <translation>Reprendre la dernière saisie, sous Essai la dernière modification de points ; les mesures ne sont jamais reprises.</translation>
    </message>
    <message>
        <source>Strike the points that are chosen in the table, or restore them.</source>
        <translation>Écarter les points choisis dans le tableau, ou les rétablir.</translation>
    </message>
    <message>
        <source>Take the chosen point again, or begin the one anew that is being taken.</source>
        <translation>Mesure de nouveau le point choisi, ou recommence celui en cours.</translation>
    </message>
    <message>
        <source>Another flow range is fitted: the fan is stopped, the point is begun again.</source>
        <translation>Une autre plage de débit est montée&#xa0;: le ventilateur s’arrête, le point est recommencé.</translation>
    </message>
    <message>
        <source>Say with which flow range the chosen points were read; with none chosen, those off the line.</source>
        <translation>Dire avec quelle gamme de débit les points choisis ont été lus ; sans choix, ceux hors de la droite.</translation>
    </message>
    <message>
        <source>Go on with a test that was cut short.</source>
        <translation>Poursuit un essai interrompu.</translation>
    </message>
    <message>
        <source>Show all in the plots.</source>
        <translation>Montre tout dans les graphiques.</translation>
    </message>
    <message>
        <source>Wheel, drag</source>
        <translation>Molette, glisser</translation>
    </message>
    <message>
        <source>Zoom and move a plot. The right button saves it as PNG, SVG or CSV.</source>
        <translation>Agrandit et déplace un graphique. Le bouton droit l’enregistre en PNG, SVG ou CSV.</translation>
    </message>
    <message>
        <source>Hunt</source>
        <translation>Recherche</translation>
    </message>
    <message>
        <source>Hold a pressure, and end it.</source>
        <translation>Maintient une pression, et y met fin.</translation>
    </message>
    <message>
        <source>Hold 5 Pa more or less, or the same pressure in the other direction.</source>
        <translation>Maintient 5 Pa de plus ou de moins, ou la même pression dans l’autre sens.</translation>
    </message>
    <message>
        <source>Sealing starts, sealing is done: half a minute later stands here what it brought.</source>
        <translation>Le colmatage commence, est fini&#xa0;: une demi-minute après s’affiche ici ce qu’il a apporté.</translation>
    </message>
    <message>
        <source>Note of this moment, new leak that was found now.</source>
        <translation>Note sur cet instant, nouvelle fuite trouvée à l’instant.</translation>
    </message>
    <message>
        <source>Count the change from this moment on.</source>
        <translation>Compte le changement à partir de cet instant.</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Rapport</translation>
    </message>
    <message>
        <source>Save the report as PDF.</source>
        <translation>Enregistre le rapport en PDF.</translation>
    </message>
    <message>
        <source>Export the tables as CSV; Ctrl+Shift+E the test as JSON.</source>
        <translation>Exporte les tableaux en CSV&#x202f;; Ctrl+Maj+E l’essai en JSON.</translation>
    </message>
    <message>
        <source>Copy the points for a spreadsheet.</source>
        <translation>Copie les points pour un tableur.</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Affichage</translation>
    </message>
    <message>
        <source>Change between SI and US units; what is stored stays as it is.</source>
        <translation>Passe des unités SI aux unités US&#x202f;; ce qui est conservé reste tel quel.</translation>
    </message>
    <message>
        <source>Settings: office, units, folders, theme, size of everything.</source>
        <translation>Réglages&#xa0;: bureau, unités, répertoires, langue, thème, taille de tout.</translation>
    </message>
    <message>
        <source>Next theme: as the system, dark, light, sunlight.</source>
        <translation>Thème suivant&#xa0;: comme le système, sombre, clair, plein soleil.</translation>
    </message>
    <message>
        <source>Before the fan starts every flame is out, ashes are cold and covered, and everybody in the building knows.</source>
        <translation>Avant que le ventilateur ne démarre, toute flamme est éteinte, les cendres sont froides et couvertes, et chacun dans le bâtiment est averti.</translation>
    </message>
    <message>
        <source>Local codes and licensed practice decide who may test and how; this program does not replace them.</source>
        <translation>Les règles locales et la pratique agréée décident qui peut mesurer et comment&#x202f;; ce programme ne les remplace pas.</translation>
    </message>
    <message>
        <source>If the fan does not stop, pull its plug.</source>
        <translation>Si le ventilateur ne s’arrête pas, débranchez-le.</translation>
    </message>
    <message>
        <source>Ctrl</source>
        <translation>Ctrl</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Maj</translation>
    </message>
    <message>
        <source>Part of the building</source>
        <translation>Partie du bâtiment</translation>
    </message>
    <message>
        <source>Storey</source>
        <translation>Niveau</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Côté</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Found by</source>
        <translation>Trouvé par</translation>
    </message>
    <message>
        <source>Trade</source>
        <translation>Corps d’état</translation>
    </message>
    <message>
        <source>Guess at 50 Pa</source>
        <translation>Estimation à 50 Pa</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Matériau</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Travail</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Coût</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>Sealing brought {flow} at {reference_pa} Pa, {said}</source>
        <translation>Le colmatage a apporté {flow} à {reference_pa} Pa, {said}</translation>
    </message>
    <message>
        <source>ELA4 {plus_minus} {area} (4 Pa, Cd 1, extrapolated)</source>
        <translation>ELA4 {plus_minus} {area} (4 Pa, Cd 1, extrapolé)</translation>
    </message>
    <message>
        <source>EqLA10 {plus_minus} {area} (10 Pa, Cd 0.611, extrapolated)</source>
        <translation>EqLA10 {plus_minus} {area} (10 Pa, Cd 0.611, extrapolé)</translation>
    </message>
    <message>
        <source>not told from none</source>
        <translation>non distinct de zéro</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Préparation</translation>
    </message>
    <message>
        <source>Rig</source>
        <translation>Appareils</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Étapes</translation>
    </message>
    <message>
        <source> and </source>
        <translation> et </translation>
    </message>
    <message>
        <source>Stopping: the fan is brought to its safe state.</source>
        <translation>Arrêt&#xa0;: le ventilateur est mis dans son état sûr.</translation>
    </message>
    <message>
        <source>Please wait</source>
        <translation>Veuillez patienter</translation>
    </message>
    <message>
        <source>Open a job (Ctrl+O) or make a new one: it keeps every reading.</source>
        <translation>Ouvrez un dossier (Ctrl+O) ou créez-en un&#xa0;: il conserve chaque lecture.</translation>
    </message>
    <message>
        <source>New job</source>
        <translation>Nouveau dossier</translation>
    </message>
    <message>
        <source>This is the report as it will be saved. Look at what is missing, then save it.</source>
        <translation>Voici le rapport tel qu’il sera enregistré. Regardez ce qui manque, puis enregistrez.</translation>
    </message>
    <message>
        <source>The test has ended.</source>
        <translation>L’essai est terminé.</translation>
    </message>
    <message>
        <source>Open the report</source>
        <translation>Ouvrir le rapport</translation>
    </message>
    <message>
        <source>The test asks something and waits for you.</source>
        <translation>L’essai pose une question et vous attend.</translation>
    </message>
    <message>
        <source>Go to the test</source>
        <translation>Aller à l’essai</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Holding {target} Pa</source>
        <translation>{target} Pa maintenus</translation>
    </message>
    <message>
        <source>{held}: marks, leaks and figures are in Hunt.</source>
        <translation>{held}&#xa0;: repères, fuites et chiffres sont sous Recherche.</translation>
    </message>
    <message>
        <source>{held}. {sealing} is being sealed: press D when it is done.</source>
        <translation>{held}. Colmatage de {sealing} en cours&#xa0;: pressez D quand c’est fini.</translation>
    </message>
    <message>
        <source>Seal is done (D)</source>
        <translation>Colmatage fini (D)</translation>
    </message>
    <message>
        <source>{held}. Press S when sealing starts, D when it is done.</source>
        <translation>{held}. Pressez S quand le colmatage commence, D quand il est fini.</translation>
    </message>
    <message>
        <source>Mark sealing (S)</source>
        <translation>Début du colmatage (S)</translation>
    </message>
    <message>
        <source>Pause test</source>
        <translation>Suspendre l’essai</translation>
    </message>
    <message>
        <source>Read the list in the panel. Go on only when all of it is so.</source>
        <translation>Lisez la liste dans le cadre. Continuez seulement si tout est ainsi.</translation>
    </message>
    <message>
        <source>The wind speaks against a test today. Read why in the panel.</source>
        <translation>Le vent déconseille un essai aujourd’hui. Lisez pourquoi dans le cadre.</translation>
    </message>
    <message>
        <source>Will somebody cover the fan between the points? The panel says why it pays.</source>
        <translation>Quelqu’un couvrira-t-il le ventilateur entre les points&#x202f;? Le cadre dit l’intérêt.</translation>
    </message>
    <message>
        <source>{lead}No rig is connected. Connect the simulated one, or choose instruments in Rig.</source>
        <translation>{lead}Aucun appareillage n’est connecté. Connectez celui qui est simulé, ou choisissez des appareils sous Appareils.</translation>
    </message>
    <message>
        <source>Connect the simulated rig</source>
        <translation>Connecter le simulé</translation>
    </message>
    <message>
        <source>{lead}No rig is connected. Choose its instruments in Rig.</source>
        <translation>{lead}Aucun appareillage n’est connecté. Choisissez ses appareils sous Appareils.</translation>
    </message>
    <message>
        <source>Open Rig</source>
        <translation>Ouvrir Appareils</translation>
    </message>
    <message>
        <source>Waiting for {name} on {port} to answer.</source>
        <translation>En attente d’une réponse de {name} sur {port}.</translation>
    </message>
    <message>
        <source>Look at the rig</source>
        <translation>Voir les appareils</translation>
    </message>
    <message>
        <source>Look at the answers</source>
        <translation>Voir les réponses</translation>
    </message>
    <message>
        <source>Go on with the test</source>
        <translation>Poursuivre l’essai</translation>
    </message>
    <message>
        <source>The building&apos;s volume is missing: without it there is no air change rate.</source>
        <translation>Le volume du bâtiment manque&#xa0;: sans lui, pas de taux de renouvellement d’air.</translation>
    </message>
    <message>
        <source>Enter the volume</source>
        <translation>Saisir le volume</translation>
    </message>
    <message>
        <source>Close windows and outside doors, open inside doors, then hold a pressure and look for leaks.</source>
        <translation>Fermez fenêtres et portes extérieures, ouvrez les portes intérieures, puis maintenez une pression et cherchez les fuites.</translation>
    </message>
    <message>
        <source>Hold the pressure</source>
        <translation>Maintenir la pression</translation>
    </message>
    <message>
        <source>Start the test</source>
        <translation>Commencer l’essai</translation>
    </message>
    <message>
        <source>Ready to {ways}. Without a volume the result is a flow and no air change rate.</source>
        <translation>Prêt pour {ways}. Sans volume, le résultat est un débit et non un taux de renouvellement d’air.</translation>
    </message>
    <message>
        <source>Ready to {ways}, at most {cap} Pa: close windows and outside doors, open inside doors, then start.</source>
        <translation>Prêt pour {ways}, au plus {cap} Pa&#xa0;: fermez fenêtres et portes extérieures, ouvrez les portes intérieures, puis commencez.</translation>
    </message>
    <message>
        <source>Ready to {ways}: close windows and outside doors, open inside doors, then start.</source>
        <translation>Prêt pour {ways}&#xa0;: fermez fenêtres et portes extérieures, ouvrez les portes intérieures, puis commencez.</translation>
    </message>
    <message>
        <source>air changes per hour at 50&#xa0;Pa</source>
        <translation>renouvellements par heure à 50 Pa</translation>
    </message>
    <message>
        <source>at 50&#xa0;Pa</source>
        <translation>à 50 Pa</translation>
    </message>
    <message>
        <source>at 50 Pa, of envelope</source>
        <translation>à 50 Pa, d’enveloppe</translation>
    </message>
    <message>
        <source>at 50 Pa, of floor</source>
        <translation>à 50 Pa, de plancher</translation>
    </message>
    <message>
        <source>at 75 Pa, of envelope</source>
        <translation>à 75 Pa, d’enveloppe</translation>
    </message>
    <message>
        <source>at 4 Pa, of envelope</source>
        <translation>à 4 Pa, d’enveloppe</translation>
    </message>
    <message>
        <source>at 10 Pa, of envelope</source>
        <translation>à 10 Pa, d’enveloppe</translation>
    </message>
    <message>
        <source>at 4 Pa, of floor</source>
        <translation>à 4 Pa, de plancher</translation>
    </message>
    <message>
        <source>Nothing has been read yet.</source>
        <translation>Rien n’a encore été lu.</translation>
    </message>
    <message>
        <source>no interval yet</source>
        <translation>pas encore d’intervalle</translation>
    </message>
    <message>
        <source>{value} {unit}, plus or minus {plus_minus}. {words}</source>
        <translation>{value} {unit}, plus ou moins {plus_minus}. {words}</translation>
    </message>
    <message>
        <source>± {share} expected</source>
        <translation>± {share} attendus</translation>
    </message>
    <message>
        <source>It takes a few seconds until the flow is known.</source>
        <translation>Il faut quelques secondes pour connaître le débit.</translation>
    </message>
    <message>
        <source>What leaks at {target} Pa</source>
        <translation>Ce qui fuit à {target} Pa</translation>
    </message>
    <message>
        <source>{change} % since the beginning</source>
        <translation>{change} % depuis le début</translation>
    </message>
    <message>
        <source>Held for {minutes} min.</source>
        <translation>Maintenu depuis {minutes} min.</translation>
    </message>
    <message>
        <source>{likely} likely to meet it</source>
        <translation>conforme à {likely}</translation>
    </message>
    <message>
        <source>does not meet: {likely} likely</source>
        <translation>non conforme&#xa0;: conforme à {likely}</translation>
    </message>
    <message>
        <source>cannot tell today: {likely} likely</source>
        <translation>indécis aujourd’hui&#xa0;: conforme à {likely}</translation>
    </message>
    <message>
        <source>{value} ± {plus_minus} by the scatter of the line alone</source>
        <translation>{value} ± {plus_minus} par la seule dispersion de la droite</translation>
    </message>
    <message>
        <source>Result so far</source>
        <translation>Résultat provisoire</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>By {method}, {fit}: not as this test was planned</source>
        <translation>Selon {method}, {fit}&#xa0;: autrement que cet essai était prévu</translation>
    </message>
    <message>
        <source>If the value stays, the interval has to shrink to {percent} % of its width</source>
        <translation>Si la valeur reste la même, l’intervalle doit se réduire à {percent} % de sa largeur</translation>
    </message>
    <message>
        <source>{share}: {ways}.</source>
        <translation>{share} : {ways}.</translation>
    </message>
    <message>
        <source>{share}; no single improvement would do.</source>
        <translation>{share} ; aucune amélioration seule n’y suffirait.</translation>
    </message>
    <message>
        <source>a smaller uncertainty of {part}</source>
        <translation>une incertitude plus faible de {part}</translation>
    </message>
    <message>
        <source>the mean of {count} tests like this one</source>
        <translation>la moyenne de {count} essais comme celui-ci</translation>
    </message>
    <message>
        <source>Extrapolated: {pressure} Pa lies outside the pressures that were measured.</source>
        <translation>Extrapolé&#xa0;: {pressure} Pa est hors des pressions mesurées.</translation>
    </message>
    <message>
        <source>No result. {why}</source>
        <translation>Pas de résultat. {why}</translation>
    </message>
    <message>
        <source>No limit set for this stage</source>
        <translation>Pas de limite pour cette étape</translation>
    </message>
    <message>
        <source>Stage limit</source>
        <translation>Limite de l’étape</translation>
    </message>
    <message>
        <source>A door or window was opened</source>
        <translation>Une porte ou une fenêtre a été ouverte</translation>
    </message>
    <message>
        <source>A gust of wind</source>
        <translation>Une rafale de vent</translation>
    </message>
    <message>
        <source>A seal came off</source>
        <translation>Une obturation s’est défaite</translation>
    </message>
    <message>
        <source>The hose was moved</source>
        <translation>Le tube a été déplacé</translation>
    </message>
    <message>
        <source>The wrong flow range was entered</source>
        <translation>Une mauvaise plage de débit était saisie</translation>
    </message>
    <message>
        <source>Planned; nothing has been read yet.</source>
        <translation>Prévu&#x202f;; rien n’a encore été lu.</translation>
    </message>
    <message>
        <source>Target Pa</source>
        <translation>Visé Pa</translation>
    </message>
    <message>
        <source>Mean Pa</source>
        <translation>Moyen Pa</translation>
    </message>
    <message>
        <source>Flow {unit}</source>
        <translation>Débit {unit}</translation>
    </message>
    <message>
        <source>Std. error</source>
        <translation>Err. type</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Struck: {reason}</source>
        <translation>Écarté&#xa0;: {reason}</translation>
    </message>
    <message>
        <source>Zero-flow pressure before {before}, after {after}</source>
        <translation>Pression à débit nul avant {before}, après {after}</translation>
    </message>
    <message>
        <source>Go on with this instrument</source>
        <translation>Continuer avec cet appareil</translation>
    </message>
    <message>
        <source>End the test here</source>
        <translation>Terminer l’essai ici</translation>
    </message>
    <message>
        <source>Strike the point</source>
        <translation>Écarter le point</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Le laisser</translation>
    </message>
    <message>
        <source>Strike the points</source>
        <translation>Écarter les points</translation>
    </message>
    <message>
        <source>Leave them</source>
        <translation>Ne rien changer</translation>
    </message>
    <message>
        <source>Put it back first</source>
        <translation>Remettre d’abord</translation>
    </message>
    <message>
        <source>Close all the same, with a reason</source>
        <translation>Fermer quand même, avec un motif</translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation>La poursuivre</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Le laisser tel quel</translation>
    </message>
    <message>
        <source>Correct the points</source>
        <translation>Corriger les points</translation>
    </message>
    <message>
        <source>Fit this range</source>
        <translation>Monter cette plage</translation>
    </message>
    <message>
        <source>Leave the range</source>
        <translation>Garder la plage</translation>
    </message>
    <message>
        <source>Stop the fan and close</source>
        <translation>Arrêter le ventilateur et fermer</translation>
    </message>
    <message>
        <source>Stay</source>
        <translation>Rester</translation>
    </message>
    <message>
        <source>The test is paused</source>
        <translation>L’essai est suspendu</translation>
    </message>
    <message>
        <source>Nothing is lost: the test goes on from the beginning of the interrupted step.</source>
        <translation>Rien n’est perdu&#xa0;: l’essai reprend au début de l’étape interrompue.</translation>
    </message>
    <message>
        <source>Strike {count} points: {targets} Pa</source>
        <translation>Écarter {count} points : {targets} Pa</translation>
    </message>
    <message>
        <source>Why are they left out of the result? They stay in the record and can be restored.</source>
        <translation>Pourquoi ne comptent-ils pas ? Ils restent dans l’enregistrement et peuvent être rétablis.</translation>
    </message>
    <message>
        <source>Strike the point at {target} Pa</source>
        <translation>Écarter le point à {target} Pa</translation>
    </message>
    <message>
        <source>Why is it left out of the result? It stays in the record and can be restored.</source>
        <translation>Pourquoi est-il exclu du résultat&#x202f;? Il reste dans l’enregistrement et peut être repris.</translation>
    </message>
    <message>
        <source>A test was interrupted</source>
        <translation>Un essai a été interrompu</translation>
    </message>
    <message>
        <source>{interrupted} It can go on with the points that are still missing; the record says for how long it stood.</source>
        <translation>{interrupted} Il peut reprendre avec les points qui manquent&#x202f;; l’enregistrement dit combien de temps il a été arrêté.</translation>
    </message>
    <message>
        <source>You will be asked to look at the set-up, and at the safety questions where their answers are too old.</source>
        <translation>Il vous sera demandé de revoir la préparation, et les questions de sécurité dont les réponses sont trop anciennes.</translation>
    </message>
    <message>
        <source>Another flow range</source>
        <translation>Une autre plage de débit</translation>
    </message>
    <message>
        <source>Range {fitted} is fitted now. Which one comes in its place? A running fan is stopped first, and the point is begun again; each reading keeps the range that was fitted when it was made.</source>
        <translation>La plage {fitted} est montée. Laquelle la remplace&#x202f;? Un ventilateur en marche s’arrête d’abord, et le point est recommencé&#x202f;; chaque lecture garde la plage montée à son moment.</translation>
    </message>
    <message>
        <source>A test is running</source>
        <translation>Un essai est en cours</translation>
    </message>
    <message>
        <source>Closing stops the fan and ends the test; what was read so far is kept.</source>
        <translation>Fermer arrête le ventilateur et termine l’essai&#x202f;; ce qui a été lu est conservé.</translation>
    </message>
    <message>
        <source>; and more</source>
        <translation>; et d’autres</translation>
    </message>
    <message>
        <source>{count} things are not put back</source>
        <translation>{count} choses ne sont pas remises en état</translation>
    </message>
    <message>
        <source>A water heater left off or an alarm left isolated harms the people who live here. The job stays open.</source>
        <translation>Un chauffe-eau laissé éteint ou une alarme laissée isolée met les habitants en danger. Le dossier reste ouvert.</translation>
    </message>
    <message>
        <source>Somebody else puts it back</source>
        <translation>Quelqu’un d’autre remet en état</translation>
    </message>
    <message>
        <source>The work goes on another day</source>
        <translation>Le travail continue un autre jour</translation>
    </message>
    <message>
        <source>Safety</source>
        <translation>Sécurité</translation>
    </message>
    <message>
        <source>Cover the fan</source>
        <translation>Couvrir le ventilateur</translation>
    </message>
    <message>
        <source>Open the fan</source>
        <translation>Découvrir le ventilateur</translation>
    </message>
    <message>
        <source>The other direction</source>
        <translation>L’autre sens</translation>
    </message>
    <message>
        <source>Is today the day?</source>
        <translation>Est-ce le bon jour&#x202f;?</translation>
    </message>
    <message>
        <source>Zero-flow records between the points</source>
        <translation>Relevés à débit nul entre les points</translation>
    </message>
    <message>
        <source>Which flow range is fitted?</source>
        <translation>Quelle plage de débit est montée&#x202f;?</translation>
    </message>
    <message>
        <source>Look at the set-up again</source>
        <translation>Revoir la préparation</translation>
    </message>
    <message>
        <source>Something came off or closed</source>
        <translation>Quelque chose s’est défait ou fermé</translation>
    </message>
    <message>
        <source>Nothing can be measured so</source>
        <translation>Rien ne peut être mesuré ainsi</translation>
    </message>
    <message>
        <source>The fan reaches less</source>
        <translation>Le ventilateur atteint moins</translation>
    </message>
    <message>
        <source>A question</source>
        <translation>Une question</translation>
    </message>
    <message>
        <source>{place}: all</source>
        <translation>{place}&#xa0;: toutes</translation>
    </message>
    <message>
        <source>Zone {zone}</source>
        <translation>Zone {zone}</translation>
    </message>
    <message>
        <source>An instrument does not answer.</source>
        <translation>Un appareil ne répond pas.</translation>
    </message>
    <message>
        <source>The test waits for you.</source>
        <translation>L’essai vous attend.</translation>
    </message>
    <message>
        <source>A test is running.</source>
        <translation>Un essai est en cours.</translation>
    </message>
    <message>
        <source>There is a new result.</source>
        <translation>Il y a un nouveau résultat.</translation>
    </message>
    <message>
        <source>{count} to be put back.</source>
        <translation>{count} à remettre en état.</translation>
    </message>
    <message>
        <source>No job is open.</source>
        <translation>Aucun dossier n’est ouvert.</translation>
    </message>
    <message>
        <source>The volume of the building is missing.</source>
        <translation>Le volume du bâtiment manque.</translation>
    </message>
    <message>
        <source>Nothing is registered yet. Add your gauges and fans with the dates on their calibration certificates.</source>
        <translation>Rien n’est encore inscrit. Ajoutez vos manomètres et ventilateurs avec les dates de leurs certificats d’étalonnage.</translation>
    </message>
    <message>
        <source>still to be typed</source>
        <translation>à saisir</translation>
    </message>
    <message>
        <source>The register cannot be used, and is left as it is: {error}.</source>
        <translation>Le registre est inutilisable et reste tel quel&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>{kind} added</source>
        <translation>{kind} ajouté</translation>
    </message>
    <message>
        <source>equipment removed</source>
        <translation>appareil retiré</translation>
    </message>
    <message>
        <source>equipment changed</source>
        <translation>appareil modifié</translation>
    </message>
    <message>
        <source>flow range added</source>
        <translation>plage de débit ajoutée</translation>
    </message>
    <message>
        <source>flow range removed</source>
        <translation>plage de débit retirée</translation>
    </message>
    <message>
        <source>field check</source>
        <translation>contrôle sur site</translation>
    </message>
    <message>
        <source>serial {serial}</source>
        <translation>série {serial}</translation>
    </message>
    <message>
        <source>calibrated {calibrated}, good until {due_date}</source>
        <translation>étalonné le {calibrated}, valable jusqu’au {due_date}</translation>
    </message>
    <message>
        <source>1 flow range</source>
        <translation>1 plage de débit</translation>
    </message>
    <message>
        <source>{count} flow ranges</source>
        <translation>{count} plages de débit</translation>
    </message>
    <message>
        <source>certificate kept</source>
        <translation>certificat conservé</translation>
    </message>
    <message>
        <source>Not kept yet: some fields cannot be used as they stand.</source>
        <translation>Pas encore conservé&#xa0;: certains champs ne sont pas utilisables tels quels.</translation>
    </message>
    <message>
        <source>Not kept: {error}.</source>
        <translation>Pas conservé&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>no calibration</source>
        <translation>pas d’étalonnage</translation>
    </message>
    <message>
        <source>dated in the future</source>
        <translation>daté dans le futur</translation>
    </message>
    <message>
        <source>ran out {time} ago</source>
        <translation>échu depuis {time}</translation>
    </message>
    <message>
        <source>due in {time}</source>
        <translation>échéance dans {time}</translation>
    </message>
    <message>
        <source>in date</source>
        <translation>valable</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Against</source>
        <translation>Contre</translation>
    </message>
    <message>
        <source>Apart, Pa</source>
        <translation>Écart, Pa</translation>
    </message>
    <message>
        <source>Allowed, Pa</source>
        <translation>Admis, Pa</translation>
    </message>
    <message>
        <source>Field checks</source>
        <translation>Contrôles sur site</translation>
    </message>
    <message>
        <source>None yet.</source>
        <translation>Aucun encore.</translation>
    </message>
    <message>
        <source>A rig uses the power law nearest to it, at worst {share} % of the flow off.</source>
        <translation>L’appareillage prend la loi de puissance la plus proche, au pire à {share} % du débit.</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 jour</translation>
    </message>
    <message>
        <source>Playing back the recorded test.</source>
        <translation>Lecture de l’essai enregistré.</translation>
    </message>
    <message>
        <source>Playing back the recorded test: {what}.</source>
        <translation>Lecture de l’essai enregistré&#xa0;: {what}.</translation>
    </message>
    <message>
        <source>the zero-flow pressure</source>
        <translation>la pression à débit nul</translation>
    </message>
    <message>
        <source>a point</source>
        <translation>un point</translation>
    </message>
    <message>
        <source>the point at {goal}</source>
        <translation>le point à {goal}</translation>
    </message>
    <message>
        <source>Fan {number} leaves: the others do it alone.</source>
        <translation>Le ventilateur {number} se retire&#xa0;: les autres suffisent.</translation>
    </message>
    <message>
        <source>The pressure did not settle at {goal} Pa within {seconds} s.</source>
        <translation>La pression ne s’est pas stabilisée à {goal} Pa en {seconds} s.</translation>
    </message>
    <message>
        <source>The pressure did not settle at {goal} Pa within {seconds} s. It stands at {now} Pa.</source>
        <translation>La pression ne s’est pas stabilisée à {goal} Pa en {seconds} s. Elle est à {now} Pa.</translation>
    </message>
    <message>
        <source>It stands at {now} Pa.</source>
        <translation>Elle est à {now} Pa.</translation>
    </message>
    <message>
        <source>Held {goal} Pa for {seconds} s: {flow} m³/h.</source>
        <translation>{goal} Pa maintenus {seconds} s&#xa0;: {flow} m³/h.</translation>
    </message>
    <message>
        <source>Held {goal} Pa for {seconds} s: {flow} m³/h, at the beginning {first} m³/h.</source>
        <translation>{goal} Pa maintenus {seconds} s&#xa0;: {flow} m³/h, au début {first} m³/h.</translation>
    </message>
    <message>
        <source>Flow range {name} is fitted; before it was {old}.</source>
        <translation>La plage {name} est montée&#x202f;; avant c’était {old}.</translation>
    </message>
    <message>
        <source>Flow range {name} is fitted on fan {fan}; before it was {old}.</source>
        <translation>La plage {name} est montée sur le ventilateur {fan}&#x202f;; avant c’était {old}.</translation>
    </message>
    <message>
        <source>The fan was stopped. Fit flow range {name} on fan {fan}; the point is then begun again.</source>
        <translation>Le ventilateur est arrêté. Montez la plage {name} sur le ventilateur {fan}&#x202f;; le point recommence alors.</translation>
    </message>
    <message>
        <source>No point has been taken yet.</source>
        <translation>Aucun point n’est encore mesuré.</translation>
    </message>
    <message>
        <source>Raise the speed slowly.</source>
        <translation>Montez lentement.</translation>
    </message>
    <message>
        <source>Lower the speed slowly.</source>
        <translation>Descendez lentement.</translation>
    </message>
    <message>
        <source>Stop. Hands off the knob.</source>
        <translation>Stop. Ne touchez plus au bouton.</translation>
    </message>
    <message>
        <source>Go on with range {name}</source>
        <translation>Continuer avec la plage {name}</translation>
    </message>
    <message>
        <source>Lasting step: {change} m³/h at {pressure} Pa against the points before.</source>
        <translation>Saut durable&#xa0;: {change} m³/h à {pressure} Pa par rapport aux points d’avant.</translation>
    </message>
    <message>
        <source>The test went on all the same after the check of the hoses. {sentence}</source>
        <translation>L’essai a continué malgré le contrôle des tubes. {sentence}</translation>
    </message>
    <message>
        <source>The test has gone on meanwhile: this value was left out.</source>
        <translation>L’essai a avancé entre-temps&#xa0;: cette valeur est laissée de côté.</translation>
    </message>
    <message>
        <source>so it was asked on the command line</source>
        <translation>demandé ainsi en ligne de commande</translation>
    </message>
    <message>
        <source>as given for an automatic test</source>
        <translation>comme indiqué pour un essai automatique</translation>
    </message>
    <message>
        <source>the engine failed</source>
        <translation>le déroulement a échoué</translation>
    </message>
    <message>
        <source>person at the knob</source>
        <translation>personne au bouton</translation>
    </message>
    <message>
        <source>1 point taken</source>
        <translation>1 point mesuré</translation>
    </message>
    <message>
        <source>{count} points taken</source>
        <translation>{count} points mesurés</translation>
    </message>
    <message>
        <source>one direction is complete</source>
        <translation>un sens est complet</translation>
    </message>
    <message>
        <source>{what}, flow range {name} fitted</source>
        <translation>{what}, plage {name} montée</translation>
    </message>
    <message>
        <source>the envelope pressure</source>
        <translation>la différence de pression</translation>
    </message>
    <message>
        <source>the flow</source>
        <translation>le débit</translation>
    </message>
    <message>
        <source>the flow-element pressure</source>
        <translation>la pression de l’élément de débit</translation>
    </message>
    <message>
        <source>the flow of fan 2</source>
        <translation>le débit du ventilateur 2</translation>
    </message>
    <message>
        <source>the flow-element pressure of fan 2</source>
        <translation>la pression de l’élément de débit du ventilateur 2</translation>
    </message>
    <message>
        <source>With the fan off and covered read the gauge every few seconds and type each value: {count} of {wanted} typed, {seconds} s to go.</source>
        <translation>Ventilateur arrêté et couvert, lisez le manomètre toutes les quelques secondes et saisissez chaque valeur&#xa0;: {count} sur {wanted} saisies, encore {seconds} s.</translation>
    </message>
    <message>
        <source>Set the fan until the gauge shows about {goal}. When it stands, type {what}.</source>
        <translation>Réglez le ventilateur jusqu’à ce que le manomètre montre environ {goal}. Une fois stable, saisissez {what}.</translation>
    </message>
    <message>
        <source>Hold the fan as it is, and type {what}.</source>
        <translation>Gardez le ventilateur tel quel, et saisissez {what}.</translation>
    </message>
    <message>
        <source>{value} Pa was typed: no test goes beyond {most} Pa.</source>
        <translation>{value} Pa ont été saisis&#xa0;: aucun essai ne dépasse {most} Pa.</translation>
    </message>
    <message>
        <source>{value} Pa was typed: indoors minus outdoors has to be {side} zero in this direction.</source>
        <translation>{value} Pa ont été saisis&#xa0;: intérieur moins extérieur doit être {side} zéro dans ce sens.</translation>
    </message>
    <message>
        <source>{value} Pa was typed, as good as nothing: the target is {goal}.</source>
        <translation>{value} Pa ont été saisis, presque rien&#xa0;: la cible est {goal}.</translation>
    </message>
    <message>
        <source>Type the values of this point again.</source>
        <translation>Saisissez de nouveau les valeurs de ce point.</translation>
    </message>
    <message>
        <source>{name} is left out without a reason.</source>
        <translation>{name} est laissé de côté sans motif.</translation>
    </message>
    <message>
        <source>{name} is there twice.</source>
        <translation>{name} figure deux fois.</translation>
    </message>
    <message>
        <source>Not known yet: {what}; until then the sum is not used.</source>
        <translation>Pas encore connu&#xa0;: {what}&#x202f;; d’ici là la somme n’est pas utilisée.</translation>
    </message>
    <message>
        <source>{name}: volume</source>
        <translation>{name}&#xa0;: volume</translation>
    </message>
    <message>
        <source>{name}: floor area</source>
        <translation>{name}&#xa0;: surface de plancher</translation>
    </message>
    <message>
        <source>{name}: area</source>
        <translation>{name}&#xa0;: surface</translation>
    </message>
    <message>
        <source>{flow}, {change} % since the beginning</source>
        <translation>{flow}, {change} % depuis le début</translation>
    </message>
    <message>
        <source>{name} would be {height} high. Is a number mistyped, or in another unit?</source>
        <translation>{name} aurait {height} de haut. Un nombre est-il mal saisi, ou dans une autre unité&#x202f;?</translation>
    </message>
    <message>
        <source>No body of this volume has less than {area} of surface. Is a wall, floor or roof missing?</source>
        <translation>Aucun corps de ce volume n’a moins de {area} de surface. Manque-t-il un mur, un sol ou le toit&#x202f;?</translation>
    </message>
    <message>
        <source>Very much surface for this volume. Is a number mistyped?</source>
        <translation>Beaucoup de surface pour ce volume. Un nombre est-il mal saisi&#x202f;?</translation>
    </message>
    <message>
        <source>The writer of {file} has stopped ({reason}): new data is in memory only.</source>
        <translation>L’écriture de {file} s’est arrêtée ({reason})&#xa0;: les nouvelles données ne sont qu’en mémoire.</translation>
    </message>
    <message>
        <source>The disk does not take {file} ({reason}): new data is in memory only. Make room.</source>
        <translation>Le disque ne prend pas {file} ({reason})&#xa0;: les nouvelles données ne sont qu’en mémoire. Faites de la place.</translation>
    </message>
    <message>
        <source>The disk is slow: {file} is {seconds} s behind.</source>
        <translation>Le disque est lent&#xa0;: {file} a {seconds} s de retard.</translation>
    </message>
    <message>
        <source>The disk did not take the last {count} entries of {file} ({reason}): the whole job with them is in {copy}.</source>
        <translation>Le disque n’a pas pris les {count} dernières entrées de {file} ({reason})&#xa0;: le dossier entier avec elles est dans {copy}.</translation>
    </message>
    <message>
        <source>The disk did not take the last {count} entries of {file} ({reason}), and a copy to {copy} failed too ({error}): they are lost.</source>
        <translation>Le disque n’a pas pris les {count} dernières entrées de {file} ({reason}), et une copie vers {copy} a échoué aussi ({error})&#xa0;: elles sont perdues.</translation>
    </message>
    <message>
        <source>Expected before the points: the flow at 50 Pa to ±{readings} by the readings, ±{kit} with gauge and flow element, in about {minutes} min a direction.</source>
        <translation>Attendu avant les points&#xa0;: le débit à 50 Pa à ±{readings} par les lectures, ±{kit} avec manomètre et élément de débit, en environ {minutes} min par sens.</translation>
    </message>
    <message>
        <source>The first point gives about {guess} and the limit is {limit}: with ±{share} this test will probably not tell on which side the building is.</source>
        <translation>Le premier point donne environ {guess} et la limite est {limit}&#xa0;: avec ±{share} cet essai ne dira sans doute pas de quel côté est le bâtiment.</translation>
    </message>
    <message>
        <source>The {schedule} schedule pays today: ±{share} in {minutes} min.</source>
        <translation>Le programme «&#xa0;{schedule}&#xa0;» vaut la peine aujourd’hui&#xa0;: ±{share} en {minutes} min.</translation>
    </message>
    <message>
        <source>The {schedule} schedule would do: ±{share} in {minutes} min.</source>
        <translation>Le programme «&#xa0;{schedule}&#xa0;» suffirait&#xa0;: ±{share} en {minutes} min.</translation>
    </message>
    <message>
        <source>quick</source>
        <translation>rapide</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>precision</source>
        <translation>précis</translation>
    </message>
    <message>
        <source>windy</source>
        <translation>venteux</translation>
    </message>
    <message>
        <source>Own</source>
        <translation>Propre</translation>
    </message>
    <message>
        <source>The interval will be ±{share}: a limit within {same} of the result cannot be decided.</source>
        <translation>L’intervalle sera de ±{share}&#xa0;: une limite à moins de {same} du résultat ne peut être tranchée.</translation>
    </message>
    <message>
        <source>The zero-flow pressure is {worst} Pa and {method} allows {limit} Pa: the result will not be valid.</source>
        <translation>La pression à débit nul est de {worst} Pa et {method} permet {limit} Pa&#xa0;: le résultat ne sera pas valable.</translation>
    </message>
    <message>
        <source>The zero-flow pressure ({worst} Pa) is near the {limit} Pa that {method} allows: in this wind the closing record may well be beyond.</source>
        <translation>La pression à débit nul ({worst} Pa) est proche des {limit} Pa que permet {method}&#xa0;: par ce vent le relevé final peut les dépasser.</translation>
    </message>
    <message>
        <source>At {pressure} Pa the flow will be about {flow} m³/h, below the {bound} m³/h at which range {name} begins.</source>
        <translation>À {pressure} Pa le débit sera d’environ {flow} m³/h, sous les {bound} m³/h où commence la plage {name}.</translation>
    </message>
    <message>
        <source>At {pressure} Pa the flow will be about {flow} m³/h, above the {bound} m³/h at which range {name} ends.</source>
        <translation>À {pressure} Pa le débit sera d’environ {flow} m³/h, au-dessus des {bound} m³/h où finit la plage {name}.</translation>
    </message>
    <message>
        <source>From {pressure} Pa down the flow will be below the {bound} m³/h at which range {name} begins. A smaller range suits this house.</source>
        <translation>Au-dessous de {pressure} Pa le débit sera sous les {bound} m³/h où commence la plage {name}. Une plage plus petite convient à cette maison.</translation>
    </message>
    <message>
        <source>From {pressure} Pa up the flow will be above the {bound} m³/h at which range {name} ends. A larger range suits this house.</source>
        <translation>À partir de {pressure} Pa le débit dépassera les {bound} m³/h où finit la plage {name}. Une plage plus grande convient à cette maison.</translation>
    </message>
    <message>
        <source>Expected before the points</source>
        <translation>Attendu avant les points</translation>
    </message>
    <message>
        <source>Expected for q50</source>
        <translation>Attendu pour q50</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lectures</translation>
    </message>
    <message>
        <source>With kit</source>
        <translation>Avec appareils</translation>
    </message>
    <message>
        <source>{schedule} (chosen)</source>
        <translation>{schedule} (choisi)</translation>
    </message>
    <message>
        <source>From the first zero-flow record: {mean} Pa, moving by {spread} Pa; {seconds} s of readings count as one.</source>
        <translation>Du premier relevé à débit nul&#xa0;: {mean} Pa, variant de {spread} Pa&#x202f;; {seconds} s de lectures comptent pour une.</translation>
    </message>
    <message>
        <source>{item}, range {name}</source>
        <translation>{item}, plage {name}</translation>
    </message>
    <message>
        <source>{item}: no calibration is registered.</source>
        <translation>{item}&#xa0;: aucun étalonnage n’est inscrit.</translation>
    </message>
    <message>
        <source>{item}: the calibration is dated {day}, which is still to come.</source>
        <translation>{item}&#xa0;: l’étalonnage est daté du {day}, encore à venir.</translation>
    </message>
    <message>
        <source>{item}: calibration overdue since {day}, {days}.</source>
        <translation>{item}&#xa0;: étalonnage échu depuis le {day}, {days}.</translation>
    </message>
    <message>
        <source>{item}: calibration overdue by {scheme} since {day}, {days}.</source>
        <translation>{item}&#xa0;: étalonnage échu selon {scheme} depuis le {day}, {days}.</translation>
    </message>
    <message>
        <source>{item}: calibration due on {day}, in {days}.</source>
        <translation>{item}&#xa0;: étalonnage à refaire le {day}, dans {days}.</translation>
    </message>
    <message>
        <source>{item}: calibration due by {scheme} on {day}, in {days}.</source>
        <translation>{item}&#xa0;: étalonnage à refaire selon {scheme} le {day}, dans {days}.</translation>
    </message>
    <message>
        <source>{item}: calibration good until {day}.</source>
        <translation>{item}&#xa0;: étalonnage valable jusqu’au {day}.</translation>
    </message>
    <message>
        <source>{item}: calibration good by {scheme} until {day}.</source>
        <translation>{item}&#xa0;: étalonnage valable selon {scheme} jusqu’au {day}.</translation>
    </message>
    <message>
        <source>{count} days</source>
        <translation>{count} jours</translation>
    </message>
    <message>
        <source>{first} and {second} agree: at most {apart} Pa apart at {pressure} Pa; {allowed} Pa are allowed.</source>
        <translation>{first} et {second} concordent&#xa0;: au plus {apart} Pa d’écart à {pressure} Pa&#x202f;; {allowed} Pa sont permis.</translation>
    </message>
    <message>
        <source>{first} and {second} do not agree: {apart} Pa apart at {pressure} Pa; {allowed} Pa are allowed. One of them needs calibration.</source>
        <translation>{first} et {second} ne concordent pas&#xa0;: {apart} Pa d’écart à {pressure} Pa&#x202f;; {allowed} Pa sont permis. L’un d’eux doit être étalonné.</translation>
    </message>
    <message>
        <source>{count} checks since {day}: the difference has grown from {was} to {now} of what is allowed.</source>
        <translation>{count} contrôles depuis le {day}&#xa0;: l’écart est passé de {was} à {now} de ce qui est permis.</translation>
    </message>
    <message>
        <source>{count} checks since {day}: the difference has not grown.</source>
        <translation>{count} contrôles depuis le {day}&#xa0;: l’écart n’a pas grandi.</translation>
    </message>
    <message>
        <source>There is no flow-element pressure.</source>
        <translation>Il n’y a pas de pression à l’élément de débit.</translation>
    </message>
    <message>
        <source>{pressure} Pa at the flow element is {side} the {bound} Pa that range {name} is calibrated to.</source>
        <translation>{pressure} Pa à l’élément de débit sont {side} des {bound} Pa jusqu’où la plage {name} est étalonnée.</translation>
    </message>
    <message>
        <source>Fit range {name}.</source>
        <translation>Montez la plage {name}.</translation>
    </message>
    <message>
        <source>No other range of this rig measures such a flow.</source>
        <translation>Aucune autre plage de cet appareillage ne mesure un tel débit.</translation>
    </message>
    <message>
        <source>Fire alarm, isolated for fog</source>
        <translation>Alarme incendie, isolée pour le brouillard</translation>
    </message>
    <message>
        <source>Fog sets off smoke alarms and those that call the fire service: have them isolated by somebody who may, tell whoever looks after them, tick both here. Local codes decide. Use fog that people may breathe, on nothing that is hot; tell the neighbours before it comes out of the walls. Depressurizing draws flue gas and dust into the house: no flame burns, ashes are covered, as in Set-up.</source>
        <translation>Le brouillard déclenche les détecteurs, aussi ceux qui appellent les pompiers&#xa0;: faites-les isoler par qui en a le droit, prévenez ceux qui les surveillent, cochez les deux ici. Les règles locales décident. Prenez un brouillard respirable, sur rien de chaud&#x202f;; avertissez les voisins avant qu’il sorte des murs. La dépression aspire fumées et poussière dans la maison&#xa0;: aucune flamme ne brûle, les cendres sont couvertes, comme sous Préparation.</translation>
    </message>
    <message>
        <source>from inside: outdoor air comes in at the leaks</source>
        <translation>de l’intérieur&#xa0;: l’air extérieur entre par les fuites</translation>
    </message>
    <message>
        <source>from outside: indoor air comes out at the leaks</source>
        <translation>de l’extérieur&#xa0;: l’air intérieur sort par les fuites</translation>
    </message>
    <message>
        <source>Fog or a smoke pen: stand inside and watch where it is blown away from the wall.</source>
        <translation>Brouillard ou stylo à fumée&#xa0;: restez à l’intérieur et voyez où il est soufflé du mur.</translation>
    </message>
    <message>
        <source>Fog: make it inside and look from outside where it comes out.</source>
        <translation>Brouillard&#xa0;: faites-le à l’intérieur et regardez dehors où il sort.</translation>
    </message>
    <message>
        <source>It lasts longer at {pressure} Pa or less.</source>
        <translation>Il dure plus longtemps à {pressure} Pa ou moins.</translation>
    </message>
    <message>
        <source>{difference} K between indoors and outdoors</source>
        <translation>{difference} K entre intérieur et extérieur</translation>
    </message>
    <message>
        <source>Infra-red: no temperatures are known, enter them in Job.</source>
        <translation>Infrarouge&#xa0;: aucune température n’est connue, saisissez-les sous Dossier.</translation>
    </message>
    <message>
        <source>Infra-red works: {known}. Look {where}.</source>
        <translation>L’infrarouge convient&#xa0;: {known}. Regardez {where}.</translation>
    </message>
    <message>
        <source>Infra-red may show large leaks only: {known}, 10 K are wanted. Look {where}.</source>
        <translation>L’infrarouge ne montrera peut-être que de grandes fuites&#xa0;: {known}, il en faudrait 10 K. Regardez {where}.</translation>
    </message>
    <message>
        <source>Infra-red shows nothing: {known}. Heat the house first, or use fog and the hand.</source>
        <translation>L’infrarouge ne montre rien&#xa0;: {known}. Chauffez d’abord, ou prenez le brouillard et la main.</translation>
    </message>
    <message>
        <source>counted from here</source>
        <translation>compté à partir d’ici</translation>
    </message>
    <message>
        <source>sealing starts</source>
        <translation>le colmatage commence</translation>
    </message>
    <message>
        <source>sealing done</source>
        <translation>colmatage fini</translation>
    </message>
    <message>
        <source>new leak</source>
        <translation>nouvelle fuite</translation>
    </message>
    <message>
        <source>something came open</source>
        <translation>quelque chose s’est ouvert</translation>
    </message>
    <message>
        <source>something was shut</source>
        <translation>quelque chose a été fermé</translation>
    </message>
    <message>
        <source>a door or a gust</source>
        <translation>une porte ou une rafale</translation>
    </message>
    <message>
        <source>windows and doors</source>
        <translation>fenêtres et portes</translation>
    </message>
    <message>
        <source>No change can be told; the smallest that could be is {share} %.</source>
        <translation>Aucun changement ne peut être affirmé&#x202f;; le plus petit qui pourrait l’être est {share} %.</translation>
    </message>
    <message>
        <source>It is tighter now.</source>
        <translation>C’est plus étanche maintenant.</translation>
    </message>
    <message>
        <source>It leaks more now.</source>
        <translation>Cela fuit davantage maintenant.</translation>
    </message>
    <message>
        <source>Probability of a true fall: {share}.</source>
        <translation>Probabilité d’une vraie baisse&#xa0;: {share}.</translation>
    </message>
    <message>
        <source>Both tests with the same instruments: their calibration is one error in both and cancels in the change.</source>
        <translation>Les deux essais avec les mêmes appareils&#xa0;: leur étalonnage est la même erreur dans les deux et s’annule dans le changement.</translation>
    </message>
    <message>
        <source>Different instruments: their calibration does not cancel in the change.</source>
        <translation>Appareils différents&#xa0;: leur étalonnage ne s’annule pas dans le changement.</translation>
    </message>
    <message>
        <source>What else differs</source>
        <translation>Ce qui diffère en outre</translation>
    </message>
    <message>
        <source>Nothing else differs.</source>
        <translation>Rien d’autre ne diffère.</translation>
    </message>
    <message>
        <source>Change, {unit}</source>
        <translation>Changement, {unit}</translation>
    </message>
    <message>
        <source>Change, %</source>
        <translation>Changement, %</translation>
    </message>
    <message>
        <source>{title}: q50, {unit}</source>
        <translation>{title}&#xa0;: q50, {unit}</translation>
    </message>
    <message>
        <source>the zero-flow pressure was taken off in one test only</source>
        <translation>la pression à débit nul n’a été retirée que dans un essai</translation>
    </message>
    <message>
        <source>openings and the stack may have behaved differently; the air itself is accounted for</source>
        <translation>ouvertures et tirage ont pu se comporter autrement&#x202f;; l’air lui-même est pris en compte</translation>
    </message>
    <message>
        <source>another building, or the same one under another name</source>
        <translation>un autre bâtiment, ou le même sous un autre nom</translation>
    </message>
    <message>
        <source>air changes are not comparable; flows are</source>
        <translation>les renouvellements ne sont pas comparables&#x202f;; les débits le sont</translation>
    </message>
    <message>
        <source>rates per envelope area are not comparable; flows are</source>
        <translation>les valeurs par surface d’enveloppe ne sont pas comparables&#x202f;; les débits le sont</translation>
    </message>
    <message>
        <source>rates per floor area are not comparable; flows are</source>
        <translation>les valeurs par surface de plancher ne sont pas comparables&#x202f;; les débits le sont</translation>
    </message>
    <message>
        <source>the expected stack pressure is not the same</source>
        <translation>le tirage attendu n’est pas le même</translation>
    </message>
    <message>
        <source>the density of the air is not the same where no barometer was read</source>
        <translation>la masse volumique de l’air n’est pas la même là où aucun baromètre n’a été lu</translation>
    </message>
    <message>
        <source>flaps and membranes leak differently in each direction: compare the direction that both have</source>
        <translation>clapets et membranes fuient autrement dans chaque sens&#xa0;: comparez le sens que les deux ont</translation>
    </message>
    <message>
        <source>the density was taken from another source</source>
        <translation>la masse volumique vient d’une autre source</translation>
    </message>
    <message>
        <source>Zero-flow pressure</source>
        <translation>Pression à débit nul</translation>
    </message>
    <message>
        <source>stack and wind pushed differently on the house</source>
        <translation>tirage et vent ont poussé autrement sur la maison</translation>
    </message>
    <message>
        <source>Zero-flow record before</source>
        <translation>Relevé à débit nul avant</translation>
    </message>
    <message>
        <source>Zero-flow record after</source>
        <translation>Relevé à débit nul après</translation>
    </message>
    <message>
        <source>the intervals are not equally wide</source>
        <translation>les intervalles n’ont pas la même largeur</translation>
    </message>
    <message>
        <source>Lowest pressure</source>
        <translation>Pression la plus basse</translation>
    </message>
    <message>
        <source>a bend of the line shows in one test and not in the other</source>
        <translation>une courbure de la droite se voit dans un essai et pas dans l’autre</translation>
    </message>
    <message>
        <source>Highest pressure</source>
        <translation>Pression la plus haute</translation>
    </message>
    <message>
        <source>flaps and seals may have moved in one test only</source>
        <translation>clapets et obturations ont pu bouger dans un seul essai</translation>
    </message>
    <message>
        <source>Average of a point</source>
        <translation>Moyenne d’un point</translation>
    </message>
    <message>
        <source>what was built or sealed between is part of the change</source>
        <translation>ce qui a été construit ou colmaté entre-temps fait partie du changement</translation>
    </message>
    <message>
        <source>part of the change may come from it</source>
        <translation>une part du changement peut en venir</translation>
    </message>
    <message>
        <source>Effective leakage area at 4 Pa, discharge coefficient 1. Averages over many buildings: a single component may leak many times as much.</source>
        <translation>Surface de fuite effective à 4 Pa, coefficient de décharge 1. Moyennes sur beaucoup de bâtiments&#xa0;: un composant seul peut fuir bien davantage.</translation>
    </message>
    <message>
        <source>Leakage of components</source>
        <translation>Fuites de composants</translation>
    </message>
    <message>
        <source>Components together</source>
        <translation>Composants ensemble</translation>
    </message>
    <message>
        <source>With a flow exponent of 0.65.</source>
        <translation>Avec un exposant de débit de 0,65.</translation>
    </message>
    <message>
        <source>Together, {unit}</source>
        <translation>Ensemble, {unit}</translation>
    </message>
    <message>
        <source>All at the lower end, {unit}</source>
        <translation>Tous au bas, {unit}</translation>
    </message>
    <message>
        <source>All at the upper end, {unit}</source>
        <translation>Tous au haut, {unit}</translation>
    </message>
    <message>
        <source>Flow at 50 Pa, {unit}</source>
        <translation>Débit à 50 Pa, {unit}</translation>
    </message>
    <message>
        <source>per metre</source>
        <translation>par mètre</translation>
    </message>
    <message>
        <source>per square metre</source>
        <translation>par mètre carré</translation>
    </message>
    <message>
        <source>Air factor</source>
        <translation>Facteur d’air</translation>
    </message>
    <message>
        <source>Off the line</source>
        <translation>Écart à la droite</translation>
    </message>
    <message>
        <source>Corrections, {direction}</source>
        <translation>Corrections, {direction}</translation>
    </message>
    <message>
        <source>Read, Pa</source>
        <translation>Lu, Pa</translation>
    </message>
    <message>
        <source>Induced, Pa</source>
        <translation>Induite, Pa</translation>
    </message>
    <message>
        <source>Fan, {unit}</source>
        <translation>Ventilateur, {unit}</translation>
    </message>
    <message>
        <source>Envelope, {unit}</source>
        <translation>Enveloppe, {unit}</translation>
    </message>
    <message>
        <source>Line, {unit}</source>
        <translation>Droite, {unit}</translation>
    </message>
    <message>
        <source>air pressure {value} {unit}</source>
        <translation>pression de l’air {value} {unit}</translation>
    </message>
    <message>
        <source>Fan {number} joins: the others move too little air.</source>
        <translation>Le ventilateur {number} s’ajoute&#xa0;: les autres déplacent trop peu d’air.</translation>
    </message>
    <message>
        <source>Worked out with flow range {name}; {old} had been entered.</source>
        <translation>Calculé avec la gamme {name} ; {old} avait été saisi.</translation>
    </message>
    <message>
        <source>Worked out with flow range {name} on fan {fan}; {old} had been entered.</source>
        <translation>Calculé avec la gamme {name} au ventilateur {fan} ; {old} avait été saisi.</translation>
    </message>
    <message>
        <source>Points worked out anew with flow range {name}: {numbers}.</source>
        <translation>Points recalculés avec la gamme {name} : {numbers}.</translation>
    </message>
    <message>
        <source>Points worked out anew with the flow range as entered: {numbers}.</source>
        <translation>Points recalculés avec la gamme saisie : {numbers}.</translation>
    </message>
    <message>
        <source>With flow range {name} instead of {old} the points at {targets} Pa would lie on the line of the others: which range were they read with?</source>
        <translation>Avec la gamme {name} au lieu de {old}, les points à {targets} Pa seraient sur la droite des autres : avec quelle gamme ont-ils été lus ?</translation>
    </message>
    <message>
        <source>the flow of fan 3</source>
        <translation>le débit du ventilateur 3</translation>
    </message>
    <message>
        <source>the flow of fan 4</source>
        <translation>le débit du ventilateur 4</translation>
    </message>
    <message>
        <source>the flow-element pressure of fan 3</source>
        <translation>la pression de l’élément de débit du ventilateur 3</translation>
    </message>
    <message>
        <source>the flow-element pressure of fan 4</source>
        <translation>la pression de l’élément de débit du ventilateur 4</translation>
    </message>
    <message>
        <source>air pressure by the altitude of {height} m</source>
        <translation>pression de l’air selon l’altitude de {height} m</translation>
    </message>
    <message>
        <source>indoor {indoor}, outdoor {outdoor}, {air}</source>
        <translation>intérieur {indoor}, extérieur {outdoor}, {air}</translation>
    </message>
    <message>
        <source>Zero-flow pressure taken off, mean of the records before and after: {zero} Pa.</source>
        <translation>Pression à débit nul retirée, moyenne des relevés avant et après&#xa0;: {zero} Pa.</translation>
    </message>
    <message>
        <source>Air factor: from fan flow to flow through the envelope, by the densities of both airs ({airs}).</source>
        <translation>Facteur d’air&#xa0;: du débit du ventilateur au débit à travers l’enveloppe, par les masses volumiques des deux airs ({airs}).</translation>
    </message>
    <message>
        <source>To reference air (20 °C, 101 325 Pa) the coefficient is multiplied by {factor}.</source>
        <translation>Pour l’air de référence (20 °C, 101 325 Pa) le coefficient est multiplié par {factor}.</translation>
    </message>
    <message>
        <source>Pressurizing leaks {share} against depressurizing. {cause}</source>
        <translation>La surpression fuit {share} par rapport à la dépression. {cause}</translation>
    </message>
    <message>
        <source>Effective leakage area at 4 Pa, Cd 1</source>
        <translation>Surface de fuite effective à 4 Pa, Cd 1</translation>
    </message>
    <message>
        <source>Equivalent leakage area at 10 Pa, Cd 0.611</source>
        <translation>Surface de fuite équivalente à 10 Pa, Cd 0,611</translation>
    </message>
    <message>
        <source>Leakage coefficient, air of the test</source>
        <translation>Coefficient de fuite, air de l’essai</translation>
    </message>
    <message>
        <source>Leakage coefficient, reference air</source>
        <translation>Coefficient de fuite, air de référence</translation>
    </message>
    <message>
        <source>Not stated, so what is counted per it is missing: {what}.</source>
        <translation>Non indiqué, donc ce qui s’y rapporte manque&#xa0;: {what}.</translation>
    </message>
    <message>
        <source>Normalised leakage NL (ASHRAE 62.2)</source>
        <translation>Fuite normalisée NL (ASHRAE 62.2)</translation>
    </message>
    <message>
        <source>Both directions leak alike.</source>
        <translation>Les deux sens fuient de même.</translation>
    </message>
    <message>
        <source>The exponents part in opposite ways: the signature of a membrane or sheet that bellies and opens or closes its leaks. Look for loose sheeting, fix it, or keep the pressure low.</source>
        <translation>Les exposants s’écartent en sens opposés&#xa0;: la signature d’une membrane qui se gonfle et ouvre ou ferme ses fuites. Cherchez une membrane lâche, fixez-la, ou gardez la pression basse.</translation>
    </message>
    <message>
        <source>One direction leaks more at a like exponent: a flap, damper or seal that opens one way, the outdoor hose in the jet while the fan blew out, or something that changed between the runs. Look at flaps, temporary seals and the hose, then repeat.</source>
        <translation>Un sens fuit plus à exposant égal&#xa0;: un clapet, un registre ou une obturation qui s’ouvre d’un côté, le tube extérieur dans le jet quand le ventilateur soufflait dehors, ou un changement entre les séries. Vérifiez clapets, obturations et tube, puis recommencez.</translation>
    </message>
    <message>
        <source>Issued, UTC</source>
        <translation>Émis, UTC</translation>
    </message>
    <message>
        <source>Issued reports</source>
        <translation>Rapports émis</translation>
    </message>
    <message>
        <source>None was issued yet.</source>
        <translation>Aucun n’est encore émis.</translation>
    </message>
    <message>
        <source>Issued again: {reason}</source>
        <translation>Émis de nouveau&#xa0;: {reason}</translation>
    </message>
    <message>
        <source>No job has these words.</source>
        <translation>Aucun dossier n’a ces mots.</translation>
    </message>
    <message>
        <source>Editions and amendments differ; the local authority decides which limit counts. Hold each against its document.</source>
        <translation>Éditions et amendements diffèrent&#x202f;; l’autorité locale décide quelle limite compte. Confrontez chacune à son document.</translation>
    </message>
    <message>
        <source>No limit is known here.</source>
        <translation>Aucune limite n’est connue ici.</translation>
    </message>
    <message>
        <source>No limit was chosen. The Job place and `airseam limits` list those of codes and programmes.</source>
        <translation>Aucune limite n’est choisie. Sous Dossier et avec `airseam limits` figurent celles des règles et programmes.</translation>
    </message>
    <message>
        <source>That is {finding}.</source>
        <translation>C’est {finding}.</translation>
    </message>
    <message>
        <source>within the band of the estimate</source>
        <translation>dans la bande de l’estimation</translation>
    </message>
    <message>
        <source>tighter than assumed</source>
        <translation>plus étanche que supposé</translation>
    </message>
    <message>
        <source>leakier than assumed</source>
        <translation>moins étanche que supposé</translation>
    </message>
    <message>
        <source>Sensible heat of the difference between the expected and the assumed air change; below 0 the design has over.</source>
        <translation>Chaleur sensible de la différence entre renouvellement attendu et supposé&#x202f;; sous 0 le projet a de la marge.</translation>
    </message>
    <message>
        <source>{area} cm² at 4 Pa for each m² of exposed surface; {source}.</source>
        <translation>{area} cm² à 4 Pa par m² de surface exposée&#x202f;; {source}.</translation>
    </message>
    <message>
        <source>Natural air change, {unit}</source>
        <translation>Renouvellement naturel, {unit}</translation>
    </message>
    <message>
        <source>Infiltration credit, {unit}</source>
        <translation>Crédit d’infiltration, {unit}</translation>
    </message>
    <message>
        <source>The design assumed, 1/h</source>
        <translation>Le projet supposait, 1/h</translation>
    </message>
    <message>
        <source>Heating load that the design lacks, W</source>
        <translation>Puissance de chauffage qui manque au projet, W</translation>
    </message>
    <message>
        <source>All leaks together as one hole</source>
        <translation>Toutes les fuites en un seul trou</translation>
    </message>
    <message>
        <source>Its diameter, in</source>
        <translation>Son diamètre, in</translation>
    </message>
    <message>
        <source>Its diameter, cm</source>
        <translation>Son diamètre, cm</translation>
    </message>
    <message>
        <source>Nearest class of construction in load calculations</source>
        <translation>Classe de construction la plus proche des calculs de charge</translation>
    </message>
    <message>
        <source>{what}: at most {limit}</source>
        <translation>{what}&#xa0;: au plus {limit}</translation>
    </message>
    <message>
        <source>one round hole with sharp edges (discharge coefficient 0.611) that passes the same flow at 10 Pa: EqLA10</source>
        <translation>un trou rond à arêtes vives (coefficient de décharge 0,611) qui laisse passer le même débit à 10 Pa&#xa0;: EqLA10</translation>
    </message>
    <message>
        <source>Estimate only, by a model and not measured; it does not belong on a certificate.</source>
        <translation>Estimation seulement, par un modèle et non mesurée&#x202f;; sa place n’est pas sur un certificat.</translation>
    </message>
    <message>
        <source>This is an estimate from the leakage line, far below the pressures of the test, for closed windows and still air. It does not show that an appliance is safe: wind, cold flues, closed doors and blocked supply air are not in it. The local code and the instructions of the appliance govern. Have the worst case tested at every appliance by somebody licensed for it, again after every day of sealing, and resolve a possible backdraught before anything else is sealed.</source>
        <translation>C’est une estimation d’après la droite de fuite, bien au-dessous des pressions de l’essai, fenêtres fermées et air calme. Elle ne montre pas qu’un appareil est sûr&#xa0;: vent, conduits froids, portes fermées et arrivée d’air bouchée n’y sont pas. La règle locale et la notice de l’appareil font foi. Faites vérifier le pire cas à chaque appareil par une personne habilitée, de nouveau après chaque jour de colmatage, et réglez un refoulement possible avant de colmater autre chose.</translation>
    </message>
    <message>
        <source>basement or slab</source>
        <translation>cave ou dalle</translation>
    </message>
    <message>
        <source>crawl space</source>
        <translation>vide sanitaire</translation>
    </message>
    <message>
        <source>No air change per hour: the volume is not stated.</source>
        <translation>Pas de renouvellement par heure&#xa0;: le volume n’est pas indiqué.</translation>
    </message>
    <message>
        <source>No infiltration credit: the height is not stated.</source>
        <translation>Pas de crédit d’infiltration&#xa0;: la hauteur n’est pas indiquée.</translation>
    </message>
    <message>
        <source>No comparison with a design: the expected air change is not known.</source>
        <translation>Pas de comparaison avec un projet&#xa0;: le renouvellement attendu n’est pas connu.</translation>
    </message>
    <message>
        <source>No natural air change: {reason}.</source>
        <translation>Pas de renouvellement naturel&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>No infiltration credit: {reason}.</source>
        <translation>Pas de crédit d’infiltration&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>No comparison with a design: {reason}.</source>
        <translation>Pas de comparaison avec un projet&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>No depressurization by fans: {reason}.</source>
        <translation>Pas de dépression par ventilateurs&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>read in {source}, not checked against the document</source>
        <translation>lu&#xa0;: {source}, non vérifié sur le document</translation>
    </message>
    <message>
        <source>checked against the document: {source}</source>
        <translation>vérifié sur le document&#xa0;: {source}</translation>
    </message>
    <message>
        <source>from memory, not checked against the document</source>
        <translation>de mémoire, non vérifié sur le document</translation>
    </message>
    <message>
        <source>{source}, not checked against the document</source>
        <translation>{source}, non vérifié sur le document</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>de mémoire</translation>
    </message>
    <message>
        <source>our choice</source>
        <translation>notre choix</translation>
    </message>
    <message>
        <source>ELA4: effective leakage area at 4 Pa, discharge coefficient 1; EqLA10: equivalent leakage area at 10 Pa, discharge coefficient 0.611. Both follow the leakage line down from the pressure held: extrapolated.</source>
        <translation>ELA4&#xa0;: surface de fuite effective à 4 Pa, coefficient de décharge 1&#x202f;; EqLA10&#xa0;: surface de fuite équivalente à 10 Pa, coefficient de décharge 0,611. Toutes deux suivent la droite de fuite depuis la pression maintenue&#xa0;: extrapolées.</translation>
    </message>
    <message>
        <source>Flow at {pressure} Pa while the pressure was held</source>
        <translation>Débit à {pressure} Pa pendant le maintien de la pression</translation>
    </message>
    <message>
        <source>The least change that is told in 30 s in this wind: {flow} {unit}, {share} %.</source>
        <translation>Le plus petit changement affirmable en 30 s par ce vent&#xa0;: {flow} {unit}, {share} %.</translation>
    </message>
    <message>
        <source>Nothing changed that stands out from the wind.</source>
        <translation>Rien n’a changé qui se distingue du vent.</translation>
    </message>
    <message>
        <source>The pressure was held for less than a quiet minute: no change can be told yet.</source>
        <translation>La pression a été maintenue moins d’une minute calme&#xa0;: aucun changement ne peut encore être affirmé.</translation>
    </message>
    <message>
        <source>Too early to tell, or nothing was quiet before.</source>
        <translation>Trop tôt, ou rien n’était calme avant.</translation>
    </message>
    <message>
        <source>Before, {unit}</source>
        <translation>Avant, {unit}</translation>
    </message>
    <message>
        <source>After, {unit}</source>
        <translation>Après, {unit}</translation>
    </message>
    <message>
        <source>No test of this job has a result yet.</source>
        <translation>Aucun essai de ce dossier n’a encore de résultat.</translation>
    </message>
    <message>
        <source>The curves</source>
        <translation>Les courbes</translation>
    </message>
    <message>
        <source>At {pressure} Pa, {unit}</source>
        <translation>À {pressure} Pa, {unit}</translation>
    </message>
    <message>
        <source>Leaks found between</source>
        <translation>Fuites trouvées entre-temps</translation>
    </message>
    <message>
        <source>No leak was added to the list between these two tests.</source>
        <translation>Aucune fuite n’a été ajoutée à la liste entre ces deux essais.</translation>
    </message>
    <message>
        <source>in the list it is open again now</source>
        <translation>dans la liste elle est maintenant rouverte</translation>
    </message>
    <message>
        <source>Leaks closed between</source>
        <translation>Fuites fermées entre-temps</translation>
    </message>
    <message>
        <source>No seal was marked between these two tests.</source>
        <translation>Aucun colmatage n’a été marqué entre ces deux essais.</translation>
    </message>
    <message>
        <source>Something got worse between: a seal came off, or something new leaks.</source>
        <translation>Quelque chose s’est dégradé entre-temps&#xa0;: un colmatage s’est défait, ou une nouvelle fuite.</translation>
    </message>
    <message>
        <source>More went than the marked seals brought.</source>
        <translation>Il est parti plus que n’ont apporté les colmatages marqués.</translation>
    </message>
    <message>
        <source>The seals explain the change.</source>
        <translation>Les colmatages expliquent le changement.</translation>
    </message>
    <message>
        <source>on site: {note}</source>
        <translation>sur place&#xa0;: {note}</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation>Tous ensemble</translation>
    </message>
    <message>
        <source>Change that they do not explain</source>
        <translation>Changement qu’ils n’expliquent pas</translation>
    </message>
    <message>
        <source>Brought, {unit}</source>
        <translation>Apporté, {unit}</translation>
    </message>
    <message>
        <source>Highest pressure allowed</source>
        <translation>Pression maximale permise</translation>
    </message>
    <message>
        <source>{sure}, at {pressure} Pa</source>
        <translation>{sure}, à {pressure} Pa</translation>
    </message>
    <message>
        <source>Sizes that nobody measured are guesses, which may be off by a factor of three.</source>
        <translation>Les tailles non mesurées sont estimées, à un facteur trois près.</translation>
    </message>
    <message>
        <source>No seal has been measured yet: mark one with S and D while a pressure is held.</source>
        <translation>Aucun colmatage n’est encore mesuré&#xa0;: marquez-en un avec S et D pendant qu’une pression est maintenue.</translation>
    </message>
    <message>
        <source>The area is that of one sharp-edged hole at 50 Pa, discharge coefficient 0.611.</source>
        <translation>La surface est celle d’un trou à arêtes vives à 50 Pa, coefficient de décharge 0,611.</translation>
    </message>
    <message>
        <source>The leaks of the list hardly bring it: look for more before you go on.</source>
        <translation>Les fuites de la liste n’y suffiront guère&#xa0;: cherchez-en d’autres avant de continuer.</translation>
    </message>
    <message>
        <source>The best leaks come first: the rest is usually slower and dearer than the pace so far.</source>
        <translation>Les meilleures fuites viennent d’abord&#xa0;: le reste est d’ordinaire plus lent et plus cher que jusqu’ici.</translation>
    </message>
    <message>
        <source>No target at 50 Pa is set for the stage: enter one in Job.</source>
        <translation>Aucune cible à 50 Pa n’est fixée pour la phase&#xa0;: saisissez-en une sous Dossier.</translation>
    </message>
    <message>
        <source>Hold a pressure: the flow now is needed to say what is left.</source>
        <translation>Maintenez une pression&#xa0;: il faut le débit actuel pour dire ce qui reste.</translation>
    </message>
    <message>
        <source>The target is met: stop here. Only a test by the method counts.</source>
        <translation>La cible est atteinte&#xa0;: arrêtez ici. Seul un essai selon la méthode compte.</translation>
    </message>
    <message>
        <source>The flow is at the target, but so near that a test by the method may say otherwise: seal a little more.</source>
        <translation>Le débit est à la cible, mais si près qu’un essai selon la méthode peut dire autre chose&#xa0;: colmatez encore un peu.</translation>
    </message>
    <message>
        <source>Go on: the leaks of the list bring it.</source>
        <translation>Continuez&#xa0;: les fuites de la liste y suffisent.</translation>
    </message>
    <message>
        <source>Go on: the leaks of the list may bring it, if their sizes are guessed well.</source>
        <translation>Continuez&#xa0;: les fuites de la liste peuvent y suffire, si leurs tailles sont bien estimées.</translation>
    </message>
    <message>
        <source>The leaks of the list do not bring it, even if larger than guessed: look for more, or stop here.</source>
        <translation>Les fuites de la liste n’y suffisent pas, même plus grandes qu’estimé&#xa0;: cherchez-en d’autres, ou arrêtez ici.</translation>
    </message>
    <message>
        <source>At 50 Pa, {unit}</source>
        <translation>À 50 Pa, {unit}</translation>
    </message>
    <message>
        <source>Hole, {unit}</source>
        <translation>Trou, {unit}</translation>
    </message>
    <message>
        <source>What the work brought</source>
        <translation>Ce que le travail a apporté</translation>
    </message>
    <message>
        <source>Without a size, and therefore not counted: {numbers}.</source>
        <translation>Sans taille, donc non comptées&#xa0;: {numbers}.</translation>
    </message>
    <message>
        <source>Flow now</source>
        <translation>Débit actuel</translation>
    </message>
    <message>
        <source>To go to the target</source>
        <translation>Jusqu’à la cible</translation>
    </message>
    <message>
        <source>All leaks of the list that can be sealed</source>
        <translation>Toutes les fuites de la liste à colmater</translation>
    </message>
    <message>
        <source>The fewest of them that would do</source>
        <translation>Le moins d’entre elles qui suffirait</translation>
    </message>
    <message>
        <source>What stays when all of the list is sealed</source>
        <translation>Ce qui reste quand toute la liste est colmatée</translation>
    </message>
    <message>
        <source>Of that, what no sealing reaches</source>
        <translation>Dont ce qu’aucun colmatage n’atteint</translation>
    </message>
    <message>
        <source>Flow that went with the seals, {unit}</source>
        <translation>Débit parti avec les colmatages, {unit}</translation>
    </message>
    <message>
        <source>Work, minutes</source>
        <translation>Travail, minutes</translation>
    </message>
    <message>
        <source>Flow that went in an hour of work, {unit}</source>
        <translation>Débit parti par heure de travail, {unit}</translation>
    </message>
    <message>
        <source>Flow that went for each unit of money, {unit}</source>
        <translation>Débit parti par unité d’argent, {unit}</translation>
    </message>
    <message>
        <source>Hours for the rest, at this pace</source>
        <translation>Heures pour le reste, à ce rythme</translation>
    </message>
    <message>
        <source>Cost of the rest, at this price</source>
        <translation>Coût du reste, à ce prix</translation>
    </message>
    <message>
        <source>Windows, flaps and vents of the list, and what is left on purpose.</source>
        <translation>Fenêtres, clapets et bouches de la liste, et ce qui est laissé exprès.</translation>
    </message>
    <message>
        <source>Nothing is read yet: begin with everything off.</source>
        <translation>Rien n’est encore lu&#xa0;: commencez avec tout arrêté.</translation>
    </message>
    <message>
        <source>Only the pressure with everything off is read yet.</source>
        <translation>Seule la pression avec tout arrêté est lue.</translation>
    </message>
    <message>
        <source>Split by the added hole</source>
        <translation>Répartition par le trou ajouté</translation>
    </message>
    <message>
        <source>The zone is {side}.</source>
        <translation>La zone est {side}.</translation>
    </message>
    <message>
        <source>rather indoors</source>
        <translation>plutôt à l’intérieur</translation>
    </message>
    <message>
        <source>between indoors and outdoors</source>
        <translation>entre intérieur et extérieur</translation>
    </message>
    <message>
        <source>rather outdoors</source>
        <translation>plutôt à l’extérieur</translation>
    </message>
    <message>
        <source>between zone and outdoors</source>
        <translation>entre zone et extérieur</translation>
    </message>
    <message>
        <source>between house and zone</source>
        <translation>entre maison et zone</translation>
    </message>
    <message>
        <source>Zone pressure</source>
        <translation>Pression de zone</translation>
    </message>
    <message>
        <source>Flow through the zone at this pressure, {unit}</source>
        <translation>Débit à travers la zone à cette pression, {unit}</translation>
    </message>
    <message>
        <source>Leak between house and zone, {unit}</source>
        <translation>Fuite entre maison et zone, {unit}</translation>
    </message>
    <message>
        <source>Leak between zone and outdoors, {unit}</source>
        <translation>Fuite entre zone et extérieur, {unit}</translation>
    </message>
    <message>
        <source>Not every check is met: the numbers are not worth a decision.</source>
        <translation>Tous les contrôles ne sont pas remplis&#xa0;: ces chiffres ne fondent aucune décision.</translation>
    </message>
    <message>
        <source>Leak to the house over leak to outdoors</source>
        <translation>Fuite vers la maison sur fuite vers l’extérieur</translation>
    </message>
    <message>
        <source>Leak between house and garage, {unit}</source>
        <translation>Fuite entre maison et garage, {unit}</translation>
    </message>
    <message>
        <source>not met</source>
        <translation>non rempli</translation>
    </message>
    <message>
        <source>Zone pressure changed by at least {least} Pa: else add a larger hole</source>
        <translation>Pression de zone changée d’au moins {least} Pa&#xa0;: sinon ouvrir un trou plus grand</translation>
    </message>
    <message>
        <source>Flow changed by at least {times} times its own uncertainty</source>
        <translation>Débit changé d’au moins {times} fois sa propre incertitude</translation>
    </message>
    <message>
        <source>More than {least} Pa between house and garage (45 of 50 Pa)</source>
        <translation>Plus de {least} Pa entre maison et garage (45 sur 50 Pa)</translation>
    </message>
    <message>
        <source>Zone pressure at least {least} Pa away from those of house and outdoors</source>
        <translation>Pression de zone à {least} Pa au moins de la maison et de l’extérieur</translation>
    </message>
    <message>
        <source>from memory that it must not be near either; the figure is our choice</source>
        <translation>de mémoire, qu’elle ne doit être proche d’aucune&#x202f;; le chiffre est notre choix</translation>
    </message>
    <message>
        <source>At most {most} Pa between closed room and main space</source>
        <translation>Au plus {most} Pa entre pièce fermée et espace principal</translation>
    </message>
    <message>
        <source>from memory, a programme of the United States</source>
        <translation>de mémoire, un programme des États-Unis</translation>
    </message>
    <message>
        <source>there is no zero-flow record</source>
        <translation>il n’y a pas de relevé à débit nul</translation>
    </message>
    <message>
        <source>how long the readings took is not given</source>
        <translation>la durée des lectures n’est pas indiquée</translation>
    </message>
    <message>
        <source>how long each point was averaged is not given</source>
        <translation>la durée de moyenne de chaque point n’est pas indiquée</translation>
    </message>
    <message>
        <source>the means of the positive and of the negative readings are not given</source>
        <translation>les moyennes des lectures positives et négatives ne sont pas indiquées</translation>
    </message>
    <message>
        <source>{value} so far</source>
        <translation>{value} jusqu’ici</translation>
    </message>
    <message>
        <source>{value} Pa so far</source>
        <translation>{value} Pa jusqu’ici</translation>
    </message>
    <message>
        <source>the height of the building is not given</source>
        <translation>la hauteur du bâtiment n’est pas indiquée</translation>
    </message>
    <message>
        <source>the wind speed is not given</source>
        <translation>la vitesse du vent n’est pas indiquée</translation>
    </message>
    <message>
        <source>a reading from a weather station may be up to {speed} m/s</source>
        <translation>une valeur de station météo peut aller jusqu’à {speed} m/s</translation>
    </message>
    <message>
        <source>two points leave no scatter to tell it</source>
        <translation>deux points ne laissent aucune dispersion pour le dire</translation>
    </message>
    <message>
        <source>effective leakage area at 4 Pa, discharge coefficient 1</source>
        <translation>surface de fuite effective à 4 Pa, coefficient de décharge 1</translation>
    </message>
    <message>
        <source>equivalent leakage area at 10 Pa, discharge coefficient 0.611</source>
        <translation>surface de fuite équivalente à 10 Pa, coefficient de décharge 0,611</translation>
    </message>
    <message>
        <source>the limit</source>
        <translation>la limite</translation>
    </message>
    <message>
        <source>the limit {name}</source>
        <translation>la limite {name}</translation>
    </message>
    <message>
        <source>the budget</source>
        <translation>le bilan</translation>
    </message>
    <message>
        <source>converts to reference air by density and viscosity</source>
        <translation>convertit à l’air de référence par masse volumique et viscosité</translation>
    </message>
    <message>
        <source>takes the outdoor pressure of several taps with weights that cancel gusts, weighs each point by the spread of its readings, lets the zero-flow pressure err for all points alike, and {more}</source>
        <translation>prend la pression extérieure de plusieurs prises avec des poids qui annulent les rafales, pondère chaque point par la dispersion de ses lectures, laisse la pression à débit nul errer pour tous les points ensemble, et {more}</translation>
    </message>
    <message>
        <source>weighs each point by the spread of its readings, lets the zero-flow pressure err for all points alike, and {more}</source>
        <translation>pondère chaque point par la dispersion de ses lectures, laisse la pression à débit nul errer pour tous les points ensemble, et {more}</translation>
    </message>
    <message>
        <source>{what}; the points weigh alike, because the spread of their readings is not recorded</source>
        <translation>{what}&#x202f;; les points pèsent pareil, car la dispersion de leurs lectures n’est pas enregistrée</translation>
    </message>
    <message>
        <source>{what}; the exponent is assumed, because there is one pressure only</source>
        <translation>{what}&#x202f;; l’exposant est supposé, car il n’y a qu’une pression</translation>
    </message>
    <message>
        <source>No test possible</source>
        <translation>Pas d’essai possible</translation>
    </message>
    <message>
        <source>, typed</source>
        <translation>, saisi</translation>
    </message>
    <message>
        <source>Test {number}, {started}{stage}{state}</source>
        <translation>Essai {number}, {started}{stage}{state}</translation>
    </message>
    <message>
        <source>The office has no name to stand on the report.</source>
        <translation>Le bureau n’a pas de nom pour le rapport.</translation>
    </message>
    <message>
        <source>The {name} is not named.</source>
        <translation>{name}&#xa0;: pas indiqué.</translation>
    </message>
    <message>
        <source>tester</source>
        <translation>Opérateur</translation>
    </message>
    <message>
        <source>client</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>site</source>
        <translation>Lieu</translation>
    </message>
    <message>
        <source>This test has no {name}; entered now, it counts from the next test on.</source>
        <translation>Il manque à cet essai&#xa0;: {name}&#x202f;; saisi maintenant, cela compte à partir du suivant.</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>volume</translation>
    </message>
    <message>
        <source>envelope area</source>
        <translation>surface d’enveloppe</translation>
    </message>
    <message>
        <source>floor area</source>
        <translation>surface de plancher</translation>
    </message>
    <message>
        <source>height</source>
        <translation>hauteur</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>vent</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>limite</translation>
    </message>
    <message>
        <source>The test was {state} before its end.</source>
        <translation>L’essai s’est arrêté avant sa fin ({state}).</translation>
    </message>
    <message>
        <source>{direction}: no zero-flow pressure after the points.</source>
        <translation>{direction}&#xa0;: pas de pression à débit nul après les points.</translation>
    </message>
    <message>
        <source>Open a job: the report is made from it.</source>
        <translation>Ouvrez un dossier&#xa0;: le rapport en est tiré.</translation>
    </message>
    <message>
        <source>There is no test yet. The report is made from the first one.</source>
        <translation>Il n’y a pas encore d’essai. Le rapport est tiré du premier.</translation>
    </message>
    <message>
        <source>The test is still running. The report follows when it has ended.</source>
        <translation>L’essai est encore en cours. Le rapport suit quand il est terminé.</translation>
    </message>
    <message>
        <source>This test has no result: {reason}</source>
        <translation>Cet essai n’a pas de résultat&#xa0;: {reason}</translation>
    </message>
    <message>
        <source>There is no line yet to be off.</source>
        <translation>Il n’y a pas encore de droite.</translation>
    </message>
    <message>
        <source>farthest off the line: {share} %</source>
        <translation>écart le plus grand&#xa0;: {share} %</translation>
    </message>
    <message>
        <source>No job</source>
        <translation>Pas de dossier</translation>
    </message>
    <message>
        <source>simulated house, invented data</source>
        <translation>maison simulée, données inventées</translation>
    </message>
    <message>
        <source>Envelope</source>
        <translation>Différence de pression</translation>
    </message>
    <message>
        <source>Fan flow</source>
        <translation>Débit du ventilateur</translation>
    </message>
    <message>
        <source>Fan speed</source>
        <translation>Régime</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>pas de lecture</translation>
    </message>
    <message>
        <source>closing</source>
        <translation>fermeture</translation>
    </message>
    <message>
        <source>no rig</source>
        <translation>pas d’appareil</translation>
    </message>
    <message>
        <source>Connect a rig in Rig (3).</source>
        <translation>Connectez un appareillage sous Appareils (3).</translation>
    </message>
    <message>
        <source>{count} more</source>
        <translation>{count} autres</translation>
    </message>
    <message>
        <source>{name} on {port}: {identity}</source>
        <translation>{name} sur {port}&#xa0;: {identity}</translation>
    </message>
    <message>
        <source>no identity</source>
        <translation>pas d’identité</translation>
    </message>
    <message>
        <source>{name} typed</source>
        <translation>{name} saisi</translation>
    </message>
    <message>
        <source>{name}: a person types what it shows.</source>
        <translation>{name}&#xa0;: une personne saisit ce qu’il montre.</translation>
    </message>
    <message>
        <source>{name} linked</source>
        <translation>{name} prêt</translation>
    </message>
    <message>
        <source>{name} closed</source>
        <translation>{name} fermé</translation>
    </message>
    <message>
        <source>not saved</source>
        <translation>non enregistré</translation>
    </message>
    <message>
        <source>between runs</source>
        <translation>en pause</translation>
    </message>
    <message>
        <source>Readings between the runs are not kept.</source>
        <translation>Les lectures entre les séries ne sont pas conservées.</translation>
    </message>
    <message>
        <source>rec {time}</source>
        <translation>enr. {time}</translation>
    </message>
    <message>
        <source>Every reading goes into the job file.</source>
        <translation>Chaque lecture entre dans le fichier du dossier.</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>pas encore enregistré</translation>
    </message>
    <message>
        <source>saved {time}</source>
        <translation>enregistré {time}</translation>
    </message>
    <message>
        <source>No rig is connected</source>
        <translation>Aucun appareillage connecté</translation>
    </message>
    <message>
        <source>Choose a simulated house, or put your own instruments together.</source>
        <translation>Choisissez une maison simulée, ou assemblez vos propres appareils.</translation>
    </message>
    <message>
        <source>Disconnect</source>
        <translation>Déconnecter</translation>
    </message>
    <message>
        <source>Connect</source>
        <translation>Connecter</translation>
    </message>
    <message>
        <source>{channel}: corrected by the certificate of {calibrated}, {words}.</source>
        <translation>{channel}&#xa0;: corrigé d’après le certificat du {calibrated}, {words}.</translation>
    </message>
    <message>
        <source>linked, not well</source>
        <translation>connecté, avec défaut</translation>
    </message>
    <message>
        <source>opening the port</source>
        <translation>ouverture du port</translation>
    </message>
    <message>
        <source>Port {port}</source>
        <translation>Port {port}</translation>
    </message>
    <message>
        <source>asking who answers</source>
        <translation>identification</translation>
    </message>
    <message>
        <source>lost, trying again</source>
        <translation>perdu, nouvel essai</translation>
    </message>
    <message>
        <source>another instrument answers</source>
        <translation>un autre appareil répond</translation>
    </message>
    <message>
        <source>The command: {command}</source>
        <translation>La commande&#xa0;: {command}</translation>
    </message>
    <message>
        <source>Or for this adapter alone, as a line of {file}: {rule}</source>
        <translation>Ou pour cet adaptateur seul, une ligne de {file}&#xa0;: {rule}</translation>
    </message>
    <message>
        <source>A person reads this gauge and types what it shows, in the Test place.</source>
        <translation>Une personne lit ce manomètre et saisit ce qu’il montre, sous Essai.</translation>
    </message>
    <message>
        <source>{count} commands a second</source>
        <translation>{count} commandes par seconde</translation>
    </message>
    <message>
        <source>{count} readings a second</source>
        <translation>{count} lectures par seconde</translation>
    </message>
    <message>
        <source>answers in {time} ms</source>
        <translation>répond en {time} ms</translation>
    </message>
    <message>
        <source>{count} garbled</source>
        <translation>{count} illisibles</translation>
    </message>
    <message>
        <source>{count} without answer</source>
        <translation>{count} sans réponse</translation>
    </message>
    <message>
        <source>linked again {count}×</source>
        <translation>reconnecté {count}×</translation>
    </message>
    <message>
        <source>Fitted range {name}: {coefficient} {unit}, exponent {exponent}, calibrated from {min_pa} to {max_pa} Pa</source>
        <translation>Plage montée {name}&#xa0;: {coefficient} {unit}, exposant {exponent}, étalonnée de {min_pa} à {max_pa} Pa</translation>
    </message>
    <message>
        <source>Envelope pressure</source>
        <translation>Différence de pression</translation>
    </message>
    <message>
        <source>Envelope pressure, tap 2</source>
        <translation>Différence de pression, prise 2</translation>
    </message>
    <message>
        <source>Envelope pressure, tap 3</source>
        <translation>Différence de pression, prise 3</translation>
    </message>
    <message>
        <source>Envelope pressure, tap 4</source>
        <translation>Différence de pression, prise 4</translation>
    </message>
    <message>
        <source>Flow element pressure</source>
        <translation>Pression de l’élément de débit</translation>
    </message>
    <message>
        <source>Flow element pressure, fan 2</source>
        <translation>Pression de l’élément de débit, ventilateur 2</translation>
    </message>
    <message>
        <source>Flow element pressure, fan 3</source>
        <translation>Pression de l’élément de débit, ventilateur 3</translation>
    </message>
    <message>
        <source>Flow element pressure, fan 4</source>
        <translation>Pression de l’élément de débit, ventilateur 4</translation>
    </message>
    <message>
        <source>Flow, fan 2</source>
        <translation>Débit, ventilateur 2</translation>
    </message>
    <message>
        <source>Flow, fan 3</source>
        <translation>Débit, ventilateur 3</translation>
    </message>
    <message>
        <source>Flow, fan 4</source>
        <translation>Débit, ventilateur 4</translation>
    </message>
    <message>
        <source>Indoors against zone 1</source>
        <translation>Intérieur contre zone 1</translation>
    </message>
    <message>
        <source>Indoors against zone 2</source>
        <translation>Intérieur contre zone 2</translation>
    </message>
    <message>
        <source>Indoors against zone 3</source>
        <translation>Intérieur contre zone 3</translation>
    </message>
    <message>
        <source>Indoors against zone 4</source>
        <translation>Intérieur contre zone 4</translation>
    </message>
    <message>
        <source>Indoor temperature</source>
        <translation>Température intérieure</translation>
    </message>
    <message>
        <source>Indoor temperature, place 2</source>
        <translation>Température intérieure, lieu 2</translation>
    </message>
    <message>
        <source>Indoor temperature, place 3</source>
        <translation>Température intérieure, lieu 3</translation>
    </message>
    <message>
        <source>Outdoor temperature</source>
        <translation>Température extérieure</translation>
    </message>
    <message>
        <source>Outdoor temperature, place 2</source>
        <translation>Température extérieure, lieu 2</translation>
    </message>
    <message>
        <source>Barometric pressure</source>
        <translation>Pression barométrique</translation>
    </message>
    <message>
        <source>Coefficient</source>
        <translation>Coefficient</translation>
    </message>
    <message>
        <source>Exponent</source>
        <translation>Exposant</translation>
    </message>
    <message>
        <source>Calibrated from</source>
        <translation>Étalonné de</translation>
    </message>
    <message>
        <source>Calibrated to</source>
        <translation>Étalonné à</translation>
    </message>
    <message>
        <source>At air density</source>
        <translation>À masse volumique</translation>
    </message>
    <message>
        <source>rig file</source>
        <translation>fichier d’appareillage</translation>
    </message>
    <message>
        <source>Add the instruments of the rig, or load a rig file.</source>
        <translation>Ajoutez les appareils, ou chargez un fichier.</translation>
    </message>
    <message>
        <source>rig name</source>
        <translation>nom de l’appareillage</translation>
    </message>
    <message>
        <source>instruments found</source>
        <translation>appareils trouvés</translation>
    </message>
    <message>
        <source>{name}, whose port is still to be chosen</source>
        <translation>{name}, dont le port reste à choisir</translation>
    </message>
    <message>
        <source>equipment taken</source>
        <translation>appareil repris</translation>
    </message>
    <message>
        <source>Taken into your own rig from {title}: {came}.</source>
        <translation>Repris de {title} dans votre propre appareillage&#xa0;: {came}.</translation>
    </message>
    <message>
        <source>{title} is in your own rig already.</source>
        <translation>{title} figure déjà dans votre propre appareillage.</translation>
    </message>
    <message>
        <source>{title} has neither a profile nor flow ranges: choose its profile first.</source>
        <translation>{title} n’a ni profil ni plages de débit&#xa0;: choisissez d’abord son profil.</translation>
    </message>
    <message>
        <source>instrument added</source>
        <translation>appareil ajouté</translation>
    </message>
    <message>
        <source>instrument removed</source>
        <translation>appareil retiré</translation>
    </message>
    <message>
        <source>an instrument</source>
        <translation>un appareil</translation>
    </message>
    <message>
        <source>channel role</source>
        <translation>rôle d’une voie</translation>
    </message>
    <message>
        <source>range added</source>
        <translation>plage ajoutée</translation>
    </message>
    <message>
        <source>range removed</source>
        <translation>plage retirée</translation>
    </message>
    <message>
        <source>every brace that opens has to close</source>
        <translation>toute accolade ouverte doit être fermée</translation>
    </message>
    <message>
        <source>the names in braces are {names}; a width of digits such as :03 may follow count</source>
        <translation>les noms entre accolades sont {names}&#x202f;; après count peut suivre une largeur en chiffres, comme&#xa0;:03</translation>
    </message>
    <message>
        <source>only count takes a number of digits</source>
        <translation>seul count prend un nombre de chiffres</translation>
    </message>
    <message>
        <source>more than {low} and at most {high} is allowed</source>
        <translation>plus de {low} et au plus {high} est permis</translation>
    </message>
    <message>
        <source>{low} to {high} is allowed</source>
        <translation>de {low} à {high} est permis</translation>
    </message>
    <message>
        <source>only Linux and Windows can be told by a program; elsewhere choose it in the file&apos;s own information</source>
        <translation>seuls Linux et Windows l’acceptent d’un programme&#x202f;; ailleurs choisissez-le dans les informations du fichier</translation>
    </message>
    <message>
        <source>one for all channels, or one for each with its name in front, is needed</source>
        <translation>il en faut une pour toutes les voies, ou une pour chacune précédée de son nom</translation>
    </message>
    <message>
        <source>pairs of shown and true Pa, such as 0 0; 50 50.4, or a polynomial, such as 0.1; 1.002, are needed</source>
        <translation>il faut des paires de Pa affichés et vrais, comme 0 0&#x202f;; 50 50,4, ou un polynôme, comme 0,1&#x202f;; 1,002</translation>
    </message>
    <message>
        <source>{file}: {key}: {allowed}</source>
        <translation>{file}&#xa0;: {key}&#xa0;: {allowed}</translation>
    </message>
    <message>
        <source>{file}, line {line}: {key}: {allowed}</source>
        <translation>{file}, ligne {line}&#xa0;: {key}&#xa0;: {allowed}</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>absent</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>not JSON</source>
        <translation>pas du JSON</translation>
    </message>
    <message>
        <source>not TOML</source>
        <translation>pas du TOML</translation>
    </message>
    <message>
        <source>not text</source>
        <translation>pas du texte</translation>
    </message>
    <message>
        <source>not usable</source>
        <translation>inutilisable</translation>
    </message>
    <message>
        <source>nested too deeply</source>
        <translation>imbriqué trop profondément</translation>
    </message>
    <message>
        <source>there twice</source>
        <translation>présent deux fois</translation>
    </message>
    <message>
        <source>no list</source>
        <translation>pas une liste</translation>
    </message>
    <message>
        <source>no table</source>
        <translation>pas un tableau</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>un objet</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>une liste</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>un texte</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un nombre</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>vrai ou faux</translation>
    </message>
    <message>
        <source>not finite</source>
        <translation>non fini</translation>
    </message>
    <message>
        <source>not above 0</source>
        <translation>pas supérieur à 0</translation>
    </message>
    <message>
        <source>not found</source>
        <translation>introuvable</translation>
    </message>
    <message>
        <source>not refused</source>
        <translation>non refusé</translation>
    </message>
    <message>
        <source>without interval</source>
        <translation>sans intervalle</translation>
    </message>
    <message>
        <source>without a name</source>
        <translation>sans nom</translation>
    </message>
    <message>
        <source>without a number</source>
        <translation>sans numéro</translation>
    </message>
    <message>
        <source>without a flow</source>
        <translation>sans débit</translation>
    </message>
    <message>
        <source>without envelope pressure</source>
        <translation>sans différence de pression</translation>
    </message>
    <message>
        <source>without the flow of fan {number}</source>
        <translation>sans le débit du ventilateur {number}</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>encore aucun</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>non commencé</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>not listed</source>
        <translation>non répertorié</translation>
    </message>
    <message>
        <source>no test</source>
        <translation>aucun essai</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>non mesuré</translation>
    </message>
    <message>
        <source>not on the disk</source>
        <translation>pas sur le disque</translation>
    </message>
    <message>
        <source>another one</source>
        <translation>un autre</translation>
    </message>
    <message>
        <source>several outdoor taps</source>
        <translation>plusieurs prises extérieures</translation>
    </message>
    <message>
        <source>a flow that is read</source>
        <translation>un débit qui est lu</translation>
    </message>
    <message>
        <source>table and polynomial</source>
        <translation>tableau et polynôme</translation>
    </message>
    <message>
        <source>as it was kept last</source>
        <translation>comme conservé en dernier</translation>
    </message>
    <message>
        <source>still, with no temperature difference</source>
        <translation>calme, sans différence de température</translation>
    </message>
    <message>
        <source>of leak {number} begun</source>
        <translation>commencé à la fuite {number}</translation>
    </message>
    <message>
        <source>{count} lines long</source>
        <translation>long de {count} lignes</translation>
    </message>
    <message>
        <source>{count} bytes long</source>
        <translation>long de {count} octets</translation>
    </message>
    <message>
        <source>{size} MiB long</source>
        <translation>long de {size} Mio</translation>
    </message>
    <message>
        <source>{size} MiB large</source>
        <translation>gros de {size} Mio</translation>
    </message>
    <message>
        <source>table of {count} points, {words}</source>
        <translation>tableau de {count} points, {words}</translation>
    </message>
    <message>
        <source>{what} with {count} points</source>
        <translation>{what} avec {count} points</translation>
    </message>
    <message>
        <source>a number is needed</source>
        <translation>il faut un nombre</translation>
    </message>
    <message>
        <source>a number is needed, such as 12.5 or 12,5</source>
        <translation>il faut un nombre, comme 12.5 ou 12,5</translation>
    </message>
    <message>
        <source>a number is needed, alone or with a unit (allowed: {units})</source>
        <translation>il faut un nombre, seul ou avec une unité (possibles&#xa0;: {units})</translation>
    </message>
    <message>
        <source>it can mean two things, write {one} or {other}</source>
        <translation>cela peut se lire de deux façons, écrivez {one} ou {other}</translation>
    </message>
    <message>
        <source>a number greater than 0 is needed</source>
        <translation>il faut un nombre supérieur à 0</translation>
    </message>
    <message>
        <source>a number greater than 0 and at most 1 is needed</source>
        <translation>il faut un nombre supérieur à 0 et d’au plus 1</translation>
    </message>
    <message>
        <source>a number greater than 0 (and below 1e9) is needed</source>
        <translation>il faut un nombre supérieur à 0 (et inférieur à 1e9)</translation>
    </message>
    <message>
        <source>a number of at least 0 (and below 1e9) is needed</source>
        <translation>il faut un nombre d’au moins 0 (et inférieur à 1e9)</translation>
    </message>
    <message>
        <source>a number of at least 0 is needed</source>
        <translation>il faut un nombre d’au moins 0</translation>
    </message>
    <message>
        <source>a number from {low} to {high} is needed</source>
        <translation>il faut un nombre de {low} à {high}</translation>
    </message>
    <message>
        <source>a number from {low} to {high} {unit} is needed</source>
        <translation>il faut un nombre de {low} à {high} {unit}</translation>
    </message>
    <message>
        <source>a number of {low} to {high} is needed</source>
        <translation>il faut un nombre de {low} à {high}</translation>
    </message>
    <message>
        <source>a number greater than {low} is needed</source>
        <translation>il faut un nombre supérieur à {low}</translation>
    </message>
    <message>
        <source>a number greater than {low} and at most {high} is needed</source>
        <translation>il faut un nombre supérieur à {low} et d’au plus {high}</translation>
    </message>
    <message>
        <source>a number greater than min_pa ({low}) is needed</source>
        <translation>il faut un nombre supérieur à min_pa ({low})</translation>
    </message>
    <message>
        <source>a number greater than low ({low}) is needed</source>
        <translation>il faut un nombre supérieur à low ({low})</translation>
    </message>
    <message>
        <source>a finite number is needed</source>
        <translation>il faut un nombre fini</translation>
    </message>
    <message>
        <source>a finite number in Pa is needed</source>
        <translation>il faut un nombre fini en Pa</translation>
    </message>
    <message>
        <source>every number must be finite</source>
        <translation>chaque nombre doit être fini</translation>
    </message>
    <message>
        <source>a number is not finite</source>
        <translation>un nombre n’est pas fini</translation>
    </message>
    <message>
        <source>a number in it has too many digits</source>
        <translation>un nombre y a trop de chiffres</translation>
    </message>
    <message>
        <source>a whole number is needed</source>
        <translation>il faut un nombre entier</translation>
    </message>
    <message>
        <source>a whole number of at least 1 is needed</source>
        <translation>il faut un nombre entier d’au moins 1</translation>
    </message>
    <message>
        <source>a whole number of 1 to {most} is needed</source>
        <translation>il faut un nombre entier de 1 à {most}</translation>
    </message>
    <message>
        <source>a whole number from 0 to 999 999 999 is needed</source>
        <translation>il faut un nombre entier de 0 à 999 999 999</translation>
    </message>
    <message>
        <source>a number of points from 1 to {most} is needed</source>
        <translation>il faut un nombre de points de 1 à {most}</translation>
    </message>
    <message>
        <source>a text is needed</source>
        <translation>il faut un texte</translation>
    </message>
    <message>
        <source>a text in quotes is needed</source>
        <translation>il faut un texte entre guillemets</translation>
    </message>
    <message>
        <source>some words are needed</source>
        <translation>il faut quelques mots</translation>
    </message>
    <message>
        <source>a name is needed</source>
        <translation>il faut un nom</translation>
    </message>
    <message>
        <source>true or false is needed</source>
        <translation>il faut vrai ou faux</translation>
    </message>
    <message>
        <source>a list of texts is needed</source>
        <translation>il faut une liste de textes</translation>
    </message>
    <message>
        <source>a list of numbers is needed</source>
        <translation>il faut une liste de nombres</translation>
    </message>
    <message>
        <source>a list of tables is needed</source>
        <translation>il faut une liste de tableaux</translation>
    </message>
    <message>
        <source>a list of JSON objects is needed</source>
        <translation>il faut une liste d’objets JSON</translation>
    </message>
    <message>
        <source>a JSON object is needed</source>
        <translation>il faut un objet JSON</translation>
    </message>
    <message>
        <source>JSON in UTF-8 is needed</source>
        <translation>il faut du JSON en UTF-8</translation>
    </message>
    <message>
        <source>at most a few levels are needed</source>
        <translation>quelques niveaux au plus suffisent</translation>
    </message>
    <message>
        <source>{what} at line {line}, column {column}</source>
        <translation>{what} à la ligne {line}, colonne {column}</translation>
    </message>
    <message>
        <source>Played back from test {number} of {job}.</source>
        <translation>Joué d’après l’essai {number} de {job}.</translation>
    </message>
    <message>
        <source>every part needs a name of its own</source>
        <translation>chaque partie a besoin d’un nom propre</translation>
    </message>
    <message>
        <source>{name} on {port} sends bytes that make no sense: look at the speed of the port and at the cable.</source>
        <translation>{name} sur {port} envoie des octets sans signification&#xa0;: vérifiez la vitesse du port et le câble.</translation>
    </message>
    <message>
        <source>{name} on {port} does not say who it is: look whether it is switched on, and at the cable.</source>
        <translation>{name} sur {port} ne dit pas qui il est&#xa0;: vérifiez s’il est allumé, et le câble.</translation>
    </message>
    <message>
        <source>{quantity} on {method} needs it</source>
        <translation>{quantity} selon {method} en a besoin</translation>
    </message>
    <message>
        <source>exactly one field named speed, with its digits behind a colon such as .4f, is needed</source>
        <translation>il faut exactement un champ nommé speed, avec ses chiffres après deux-points, comme .4f</translation>
    </message>
    <message>
        <source>the same direction and as many points as the run itself, {count}, are needed</source>
        <translation>il faut le même sens et autant de points que la série, {count}</translation>
    </message>
    <message>
        <source>a corrected run is not corrected again</source>
        <translation>une série corrigée ne se corrige pas de nouveau</translation>
    </message>
    <message>
        <source>Hand-written record</source>
        <translation>Relevé manuscrit</translation>
    </message>
    <message>
        <source>{place} has no zones here</source>
        <translation>{place} n’a pas de zones ici</translation>
    </message>
    <message>
        <source>a field may appear only once in an object</source>
        <translation>un champ ne peut figurer qu’une fois dans un objet</translation>
    </message>
    <message>
        <source>known fields here are {names}</source>
        <translation>les champs connus ici sont {names}</translation>
    </message>
    <message>
        <source>known tables here are {names}</source>
        <translation>les tableaux connus ici sont {names}</translation>
    </message>
    <message>
        <source>every entry needs an id of its own</source>
        <translation>chaque entrée a besoin d’un identifiant propre</translation>
    </message>
    <message>
        <source>at most {size} MiB can be read</source>
        <translation>au plus {size} Mio peuvent être lus</translation>
    </message>
    <message>
        <source>at most {size} MiB</source>
        <translation>au plus {size} Mio</translation>
    </message>
    <message>
        <source>at most {count} bytes are read</source>
        <translation>au plus {count} octets sont lus</translation>
    </message>
    <message>
        <source>at most {count} lines</source>
        <translation>au plus {count} lignes</translation>
    </message>
    <message>
        <source>at most {count} characters fit</source>
        <translation>au plus {count} caractères tiennent</translation>
    </message>
    <message>
        <source>at most {count} characters are kept</source>
        <translation>au plus {count} caractères sont gardés</translation>
    </message>
    <message>
        <source>at most {lines} lines of {count} characters fit</source>
        <translation>au plus {lines} lignes de {count} caractères tiennent</translation>
    </message>
    <message>
        <source>one of {names} is needed</source>
        <translation>il faut l’un de ceux-ci&#xa0;: {names}</translation>
    </message>
    <message>
        <source>one of these is needed: {names}</source>
        <translation>il faut l’un de ceux-ci&#xa0;: {names}</translation>
    </message>
    <message>
        <source>exactly one of these is needed: {names}</source>
        <translation>il faut exactement l’un de ceux-ci&#xa0;: {names}</translation>
    </message>
    <message>
        <source>exactly one of the two is needed</source>
        <translation>il faut exactement l’un des deux</translation>
    </message>
    <message>
        <source>each may occur only once</source>
        <translation>chacun ne peut figurer qu’une fois</translation>
    </message>
    <message>
        <source>shares from 0 to 1 are needed</source>
        <translation>il faut des parts de 0 à 1</translation>
    </message>
    <message>
        <source>1, 1.5, 2 or 3 is needed</source>
        <translation>il faut 1, 1,5, 2 ou 3</translation>
    </message>
    <message>
        <source>1, 2 or 3 is needed: the models were made for low houses</source>
        <translation>il faut 1, 2 ou 3&#xa0;: les modèles sont faits pour des maisons basses</translation>
    </message>
    <message>
        <source>a temperature difference or a wind above 0 is needed</source>
        <translation>il faut une différence de température ou un vent supérieur à 0</translation>
    </message>
    <message>
        <source>a day such as 2026-05-04 is needed</source>
        <translation>il faut un jour comme 2026-05-04</translation>
    </message>
    <message>
        <source>a day such as 2026-05-04 or 2026-05-04 09:12 is needed</source>
        <translation>il faut un jour comme 2026-05-04 ou 2026-05-04 09:12</translation>
    </message>
    <message>
        <source>a date such as 2026-05-04, without quotes, is needed</source>
        <translation>il faut une date comme 2026-05-04, sans guillemets</translation>
    </message>
    <message>
        <source>a date in this calendar is needed</source>
        <translation>il faut une date qui existe</translation>
    </message>
    <message>
        <source>a day after the calibration is needed</source>
        <translation>il faut un jour après l’étalonnage</translation>
    </message>
    <message>
        <source>a time with its zone is needed</source>
        <translation>il faut une heure avec son fuseau</translation>
    </message>
    <message>
        <source>a time with its zone is needed, such as 2026-05-04T09:12:00Z</source>
        <translation>il faut une heure avec son fuseau, comme 2026-05-04T09:12:00Z</translation>
    </message>
    <message>
        <source>the day on the certificate is needed, such as 2026-05-04</source>
        <translation>il faut le jour du certificat, comme 2026-05-04</translation>
    </message>
    <message>
        <source>it cannot be read ({reason})</source>
        <translation>il ne peut être lu ({reason})</translation>
    </message>
    <message>
        <source>it cannot be written ({reason})</source>
        <translation>il ne peut être écrit ({reason})</translation>
    </message>
    <message>
        <source>it cannot be written: {reason}</source>
        <translation>il ne peut être écrit&#xa0;: {reason}</translation>
    </message>
    <message>
        <source>it cannot be copied ({reason})</source>
        <translation>il ne peut être copié ({reason})</translation>
    </message>
    <message>
        <source>it cannot be made ({reason})</source>
        <translation>il ne peut être créé ({reason})</translation>
    </message>
    <message>
        <source>it cannot be opened ({reason})</source>
        <translation>il ne peut être ouvert ({reason})</translation>
    </message>
    <message>
        <source>it cannot be written: the file or its folder is read-only</source>
        <translation>il ne peut être écrit&#xa0;: le fichier ou son dossier est en lecture seule</translation>
    </message>
    <message>
        <source>it is damaged ({reason})</source>
        <translation>il est endommagé ({reason})</translation>
    </message>
    <message>
        <source>it is damaged (its tables are missing)</source>
        <translation>il est endommagé (ses tables manquent)</translation>
    </message>
    <message>
        <source>it is damaged or cut short</source>
        <translation>il est endommagé ou tronqué</translation>
    </message>
    <message>
        <source>it is open in another window of Airseam, close it there first</source>
        <translation>il est ouvert dans une autre fenêtre d’Airseam, fermez-le d’abord là-bas</translation>
    </message>
    <message>
        <source>it was written by a newer Airseam (file version {file}, this one knows up to {known})</source>
        <translation>il vient d’un Airseam plus récent (version {file}, celui-ci connaît jusqu’à {known})</translation>
    </message>
    <message>
        <source>it exists already, open it or choose another name</source>
        <translation>il existe déjà, ouvrez-le ou choisissez un autre nom</translation>
    </message>
    <message>
        <source>it was opened for reading only</source>
        <translation>il est ouvert en lecture seule</translation>
    </message>
    <message>
        <source>it is no job, or damaged ({reason})</source>
        <translation>ce n’est pas un dossier, ou il est endommagé ({reason})</translation>
    </message>
    <message>
        <source>a {format} that this version knows is needed ({reason})</source>
        <translation>il faut un {format} que cette version connaît ({reason})</translation>
    </message>
    <message>
        <source>the disk does not take it</source>
        <translation>le disque ne le prend pas</translation>
    </message>
    <message>
        <source>the copy cannot be written ({reason})</source>
        <translation>la copie ne peut être écrite ({reason})</translation>
    </message>
    <message>
        <source>another folder than that of the job is needed</source>
        <translation>il faut un autre répertoire que celui du dossier</translation>
    </message>
    <message>
        <source>a PNG or JPEG picture is needed</source>
        <translation>il faut une image PNG ou JPEG</translation>
    </message>
    <message>
        <source>a whole PNG or JPEG picture is needed ({reason})</source>
        <translation>il faut une image PNG ou JPEG complète ({reason})</translation>
    </message>
    <message>
        <source>a PNG or JPEG picture of at most {size} MiB is needed</source>
        <translation>il faut une image PNG ou JPEG d’au plus {size} Mio</translation>
    </message>
    <message>
        <source>&quot;{format}&quot; is needed</source>
        <translation>il faut «&#xa0;{format}&#xa0;»</translation>
    </message>
    <message>
        <source>a TOML text file is needed ({reason})</source>
        <translation>il faut un fichier texte TOML ({reason})</translation>
    </message>
    <message>
        <source>a TOML text file in UTF-8 is needed</source>
        <translation>il faut un fichier texte TOML en UTF-8</translation>
    </message>
    <message>
        <source>a TOML table is needed ({reason})</source>
        <translation>il faut un tableau TOML ({reason})</translation>
    </message>
    <message>
        <source>a table is needed</source>
        <translation>il faut un tableau</translation>
    </message>
    <message>
        <source>tables [[{name}]] are needed</source>
        <translation>il faut des tableaux [[{name}]]</translation>
    </message>
    <message>
        <source>at least one [[{name}]] table is needed</source>
        <translation>il faut au moins un tableau [[{name}]]</translation>
    </message>
    <message>
        <source>the keys are: {names}</source>
        <translation>les clés sont&#xa0;: {names}</translation>
    </message>
    <message>
        <source>the keys here are: {names}</source>
        <translation>les clés sont ici&#xa0;: {names}</translation>
    </message>
    <message>
        <source>what was written does not read back alike</source>
        <translation>ce qui a été écrit ne se relit pas pareil</translation>
    </message>
    <message>
        <source>texts of whole characters are needed</source>
        <translation>il faut des textes de caractères entiers</translation>
    </message>
    <message>
        <source>No such file or directory</source>
        <translation>fichier ou répertoire introuvable</translation>
    </message>
    <message>
        <source>Permission denied</source>
        <translation>accès refusé</translation>
    </message>
    <message>
        <source>No space left on device</source>
        <translation>plus de place sur le disque</translation>
    </message>
    <message>
        <source>Read-only file system</source>
        <translation>système de fichiers en lecture seule</translation>
    </message>
    <message>
        <source>Input/output error</source>
        <translation>erreur d’entrée-sortie</translation>
    </message>
    <message>
        <source>Is a directory</source>
        <translation>est un répertoire</translation>
    </message>
    <message>
        <source>Not a directory</source>
        <translation>pas un répertoire</translation>
    </message>
    <message>
        <source>File exists</source>
        <translation>le fichier existe</translation>
    </message>
    <message>
        <source>File name too long</source>
        <translation>nom de fichier trop long</translation>
    </message>
    <message>
        <source>job file</source>
        <translation>fichier du dossier</translation>
    </message>
    <message>
        <source>issued report</source>
        <translation>rapport émis</translation>
    </message>
    <message>
        <source>signed by</source>
        <translation>signé par</translation>
    </message>
    <message>
        <source>backup folder</source>
        <translation>répertoire de sauvegarde</translation>
    </message>
    <message>
        <source>number pattern</source>
        <translation>modèle de numéro</translation>
    </message>
    <message>
        <source>name pattern</source>
        <translation>modèle de nom</translation>
    </message>
    <message>
        <source>opening text</source>
        <translation>texte d’ouverture</translation>
    </message>
    <message>
        <source>closing text</source>
        <translation>texte de fin</translation>
    </message>
    <message>
        <source>name of the office</source>
        <translation>nom du bureau</translation>
    </message>
    <message>
        <source>usual signer</source>
        <translation>signataire habituel</translation>
    </message>
    <message>
        <source>next number</source>
        <translation>prochain numéro</translation>
    </message>
    <message>
        <source>point</source>
        <translation>point</translation>
    </message>
    <message>
        <source>without points</source>
        <translation>sans points</translation>
    </message>
    <message>
        <source>at least one point that is not struck is needed</source>
        <translation>il faut au moins un point non écarté</translation>
    </message>
    <message>
        <source>student</source>
        <translation>élève</translation>
    </message>
    <message>
        <source>program</source>
        <translation>programme</translation>
    </message>
    <message>
        <source>points</source>
        <translation>points</translation>
    </message>
    <message>
        <source>result, {unit}</source>
        <translation>résultat, {unit}</translation>
    </message>
    <message>
        <source>true, {unit}</source>
        <translation>vrai, {unit}</translation>
    </message>
    <message>
        <source>missed</source>
        <translation>manqué</translation>
    </message>
    <message>
        <source>covered</source>
        <translation>masqué</translation>
    </message>
    <message>
        <source>{address}, this network</source>
        <translation>{address}, ce réseau</translation>
    </message>
    <message>
        <source>{address}, this machine alone</source>
        <translation>{address}, cette machine seule</translation>
    </message>
    <message>
        <source>Where the class can be reached</source>
        <translation>Où joindre la classe</translation>
    </message>
    <message>
        <source>port </source>
        <translation>port </translation>
    </message>
    <message>
        <source>houses </source>
        <translation>maisons </translation>
    </message>
    <message>
        <source>Houses</source>
        <translation>Maisons</translation>
    </message>
    <message>
        <source>A house for each</source>
        <translation>Une maison chacun</translation>
    </message>
    <message>
        <source>One house for all</source>
        <translation>Une pour tous</translation>
    </message>
    <message>
        <source>Open the class</source>
        <translation>Ouvrir la classe</translation>
    </message>
    <message>
        <source>Connect the program beside</source>
        <translation>Connecter le programme voisin</translation>
    </message>
    <message>
        <source>The normal window of this machine joins as a student: for the beamer</source>
        <translation>La fenêtre normale de cette machine participe comme élève&#xa0;: pour le projecteur</translation>
    </message>
    <message>
        <source>Rig files…</source>
        <translation>Fichiers…</translation>
    </message>
    <message>
        <source>A rig file for each house: who loads it needs no host and port</source>
        <translation>Un fichier d’appareillage par maison&#xa0;: qui le charge n’a besoin ni d’hôte ni de port</translation>
    </message>
    <message>
        <source>Houses of the class</source>
        <translation>Maisons de la classe</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>Mark jobs…</source>
        <translation>Noter…</translation>
    </message>
    <message>
        <source>Write the sheets…</source>
        <translation>Écrire les fiches…</translation>
    </message>
    <message>
        <source>Close the class</source>
        <translation>Fermer la classe</translation>
    </message>
    <message>
        <source>{points} of {most}</source>
        <translation>{points} sur {most}</translation>
    </message>
    <message>
        <source>test</source>
        <translation>essai</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>motif</translation>
    </message>
    <message>
        <source>number</source>
        <translation>numéro</translation>
    </message>
    <message>
        <source>clipboard</source>
        <translation>presse-papiers</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>pression</translation>
    </message>
    <message>
        <source>direction</source>
        <translation>sens</translation>
    </message>
    <message>
        <source>system</source>
        <translation>système</translation>
    </message>
    <message>
        <source>adjoins</source>
        <translation>donne sur</translation>
    </message>
    <message>
        <source>months</source>
        <translation>mois</translation>
    </message>
    <message>
        <source>schemes</source>
        <translation>programmes</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>correction</translation>
    </message>
    <message>
        <source>calibration</source>
        <translation>étalonnage</translation>
    </message>
    <message>
        <source>profile</source>
        <translation>profil</translation>
    </message>
    <message>
        <source>window</source>
        <translation>fenêtre</translation>
    </message>
    <message>
        <source>calibration date</source>
        <translation>date d’étalonnage</translation>
    </message>
    <message>
        <source>due date</source>
        <translation>échéance</translation>
    </message>
    <message>
        <source>day of the correction</source>
        <translation>jour de la correction</translation>
    </message>
    <message>
        <source>lower end</source>
        <translation>bas de la plage</translation>
    </message>
    <message>
        <source>upper end</source>
        <translation>haut de la plage</translation>
    </message>
    <message>
        <source>air density</source>
        <translation>masse volumique de l’air</translation>
    </message>
    <message>
        <source>line {line}, {what}</source>
        <translation>ligne {line}, {what}</translation>
    </message>
    <message>
        <source>line {line}</source>
        <translation>ligne {line}</translation>
    </message>
    <message>
        <source>area</source>
        <translation>surface</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>débit</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lecture</translation>
    </message>
    <message>
        <source>first gauge</source>
        <translation>premier manomètre</translation>
    </message>
    <message>
        <source>second gauge</source>
        <translation>second manomètre</translation>
    </message>
    <message>
        <source>readings of the {gauge}</source>
        <translation>lectures du {gauge}</translation>
    </message>
    <message>
        <source>typed gauge</source>
        <translation>manomètre saisi</translation>
    </message>
    <message>
        <source>phone page</source>
        <translation>page du téléphone</translation>
    </message>
    <message>
        <source>zone pressure after</source>
        <translation>pression de zone après</translation>
    </message>
    <message>
        <source>flow before</source>
        <translation>débit avant</translation>
    </message>
    <message>
        <source>flow after</source>
        <translation>débit après</translation>
    </message>
    <message>
        <source>zone_pa</source>
        <translation>pression de zone</translation>
    </message>
    <message>
        <source>house_pa</source>
        <translation>pression de la maison</translation>
    </message>
    <message>
        <source>garage_pa with the door open</source>
        <translation>pression du garage porte ouverte</translation>
    </message>
    <message>
        <source>Port of {name}</source>
        <translation>port de {name}</translation>
    </message>
    <message>
        <source>Flow range</source>
        <translation>plage de débit</translation>
    </message>
    <message>
        <source>flow range {name}</source>
        <translation>plage de débit {name}</translation>
    </message>
    <message>
        <source>{field} of “{name}”</source>
        <translation>{field} de «&#xa0;{name}&#xa0;»</translation>
    </message>
    <message>
        <source>the file {path}</source>
        <translation>le fichier {path}</translation>
    </message>
    <message>
        <source>not an Airseam job</source>
        <translation>autre chose qu’un dossier d’Airseam</translation>
    </message>
    <message>
        <source>a database of another program, not an Airseam job</source>
        <translation>une base de données d’un autre programme, pas un dossier d’Airseam</translation>
    </message>
    <message>
        <source>choose one that Airseam saved, its name ends in .airseam</source>
        <translation>choisissez-en un qu’Airseam a enregistré, son nom se termine par .airseam</translation>
    </message>
    <message>
        <source>zone pressure with the hole</source>
        <translation>pression de zone avec le trou</translation>
    </message>
    <message>
        <source>say which one, such as garage or attic</source>
        <translation>dire laquelle, par exemple garage ou combles</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>zone</translation>
    </message>
    <message>
        <source>change of the fan flow</source>
        <translation>changement du débit du ventilateur</translation>
    </message>
    <message>
        <source>Upper end</source>
        <translation>Haut de la plage</translation>
    </message>
    <message>
        <source>check of the hoses</source>
        <translation>contrôle des tubes</translation>
    </message>
    <message>
        <source>the name of who signs is needed</source>
        <translation>il faut le nom de qui signe</translation>
    </message>
    <message>
        <source>say why it is issued again</source>
        <translation>dites pourquoi il est émis de nouveau</translation>
    </message>
    <message>
        <source>a test that was made to find leaks has none</source>
        <translation>un essai fait pour chercher des fuites n’en a pas</translation>
    </message>
    <message>
        <source>another report of this job has it: choose another one</source>
        <translation>un autre rapport de ce dossier l’a&#xa0;: choisissez-en un autre</translation>
    </message>
    <message>
        <source>it is still being recorded</source>
        <translation>il est encore en cours d’enregistrement</translation>
    </message>
    <message>
        <source>the number of a test is needed, there are: {names}</source>
        <translation>il faut le numéro d’un essai, il y a&#xa0;: {names}</translation>
    </message>
    <message>
        <source>the number of a window is needed, there are: {names}</source>
        <translation>il faut le numéro d’une fenêtre, il y a&#xa0;: {names}</translation>
    </message>
    <message>
        <source>the number of a leak is needed, there are: {names}</source>
        <translation>il faut le numéro d’une fuite, il y a&#xa0;: {names}</translation>
    </message>
    <message>
        <source>its number in the job is needed, there are: {names}</source>
        <translation>il faut son numéro dans le dossier, il y a&#xa0;: {names}</translation>
    </message>
    <message>
        <source>an id of the register is needed; there are: {names}</source>
        <translation>il faut un identifiant du registre&#x202f;; il y a&#xa0;: {names}</translation>
    </message>
    <message>
        <source>its file is not the one that was issued</source>
        <translation>son fichier n’est pas celui qui a été émis</translation>
    </message>
    <message>
        <source>revision {number} is the next one of this report</source>
        <translation>la révision {number} est la suivante de ce rapport</translation>
    </message>
    <message>
        <source>say why the geometry is kept or was changed</source>
        <translation>dites pourquoi la géométrie est conservée ou changée</translation>
    </message>
    <message>
        <source>there is none of this number</source>
        <translation>il n’y en a pas de ce numéro</translation>
    </message>
    <message>
        <source>there is nothing new to keep</source>
        <translation>il n’y a rien de nouveau à conserver</translation>
    </message>
    <message>
        <source>a test that was cut short is needed (state of this one: {state})</source>
        <translation>il faut un essai interrompu (état de celui-ci&#xa0;: {state})</translation>
    </message>
    <message>
        <source>say why the point is struck</source>
        <translation>dites pourquoi le point est écarté</translation>
    </message>
    <message>
        <source>it is being recorded, strike there</source>
        <translation>il est en cours d’enregistrement, écartez-le là</translation>
    </message>
    <message>
        <source>say what changed on site since the test before</source>
        <translation>dites ce qui a changé sur place depuis l’essai précédent</translation>
    </message>
    <message>
        <source>there is no test in it yet</source>
        <translation>il n’y a encore aucun essai</translation>
    </message>
    <message>
        <source>a test has at most {count} bytes</source>
        <translation>un essai a au plus {count} octets</translation>
    </message>
    <message>
        <source>say which fans are on and which doors are open</source>
        <translation>dites quels ventilateurs tournent et quelles portes sont ouvertes</translation>
    </message>
    <message>
        <source>one of {names}, each of its kind, is needed</source>
        <translation>il faut l’un de {names}, chacun selon son genre</translation>
    </message>
    <message>
        <source>one test at a time</source>
        <translation>un essai à la fois</translation>
    </message>
    <message>
        <source>a pressure is held where the program reads the gauges</source>
        <translation>une pression est maintenue là où le programme lit les manomètres</translation>
    </message>
    <message>
        <source>a {role} needs at least one usable reading</source>
        <translation>{role} a besoin d’au moins une lecture utilisable</translation>
    </message>
    <message>
        <source>a line needs pressures that differ more</source>
        <translation>une droite demande des pressions plus différentes</translation>
    </message>
    <message>
        <source>with the zero-flow pressure taken off, pressures {side} 0 Pa are needed, and no point has one</source>
        <translation>une fois la pression à débit nul retirée, il faut des pressions {side} 0 Pa, et aucun point n’en a</translation>
    </message>
    <message>
        <source>below</source>
        <translation>en dessous de</translation>
    </message>
    <message>
        <source>above</source>
        <translation>au-dessus de</translation>
    </message>
    <message>
        <source>at least {count} {what} needed</source>
        <translation>il faut au moins {count} {what}</translation>
    </message>
    <message>
        <source>the fit {name} needs a zero-flow record</source>
        <translation>l’ajustement {name} demande un relevé à débit nul</translation>
    </message>
    <message>
        <source>the fit {name} weighs points by the spread of their readings</source>
        <translation>l’ajustement {name} pondère les points par la dispersion de leurs lectures</translation>
    </message>
    <message>
        <source>two regimes need at least {count} points</source>
        <translation>deux régimes demandent au moins {count} points</translation>
    </message>
    <message>
        <source>different pressures are needed before or after the change</source>
        <translation>il faut des pressions différentes avant ou après le changement</translation>
    </message>
    <message>
        <source>pressures and flows above 0 are needed</source>
        <translation>il faut des pressions et débits supérieurs à 0</translation>
    </message>
    <message>
        <source>two stations are needed, at pressures that differ by a factor of {factor} at least</source>
        <translation>il faut deux paliers, à des pressions différant d’un facteur {factor} au moins</translation>
    </message>
    <message>
        <source>one run, or one in each direction, is needed</source>
        <translation>il faut une série, ou une dans chaque sens</translation>
    </message>
    <message>
        <source>only one run in each direction is allowed</source>
        <translation>une seule série par sens est permise</translation>
    </message>
    <message>
        <source>one for each of the {count} points is needed</source>
        <translation>il en faut un pour chacun des {count} points</translation>
    </message>
    <message>
        <source>at least one reading is needed</source>
        <translation>il faut au moins une lecture</translation>
    </message>
    <message>
        <source>a mean between those of the negative and the positive readings, {low} and {high}, is needed</source>
        <translation>il faut une moyenne entre celles des lectures négatives et positives, {low} et {high}</translation>
    </message>
    <message>
        <source>a test with a leakage line is needed to compare it</source>
        <translation>pour comparer il faut un essai avec une droite de fuite</translation>
    </message>
    <message>
        <source>a part of both tests is needed (there are: {names})</source>
        <translation>il faut une partie des deux essais (il y a&#xa0;: {names})</translation>
    </message>
    <message>
        <source>a value above 0 with an interval is needed</source>
        <translation>il faut une valeur supérieure à 0 avec intervalle</translation>
    </message>
    <message>
        <source>a window closes only inside a run</source>
        <translation>une fenêtre ne se ferme que dans une série</translation>
    </message>
    <message>
        <source>this temperature is needed, and the rig does not measure it</source>
        <translation>cette température est nécessaire, et l’appareillage ne la mesure pas</translation>
    </message>
    <message>
        <source>it is complete: there is nothing to go on with</source>
        <translation>il est complet&#xa0;: il n’y a rien à poursuivre</translation>
    </message>
    <message>
        <source>a pressure was held: hold it again instead</source>
        <translation>une pression était maintenue&#xa0;: maintenez-la de nouveau</translation>
    </message>
    <message>
        <source>nothing had been read yet: start the test instead</source>
        <translation>rien n’avait été lu&#xa0;: démarrez plutôt l’essai</translation>
    </message>
    <message>
        <source>the test was begun with other {what}: connect those, or start a new test</source>
        <translation>l’essai a commencé avec autre chose ({what})&#xa0;: connectez cela, ou démarrez un nouvel essai</translation>
    </message>
    <message>
        <source>flow ranges</source>
        <translation>plages de débit</translation>
    </message>
    <message>
        <source>instruments</source>
        <translation>appareils</translation>
    </message>
    <message>
        <source>fans</source>
        <translation>ventilateurs</translation>
    </message>
    <message>
        <source>shutter</source>
        <translation>volet</translation>
    </message>
    <message>
        <source>corrections of gauges</source>
        <translation>corrections des manomètres</translation>
    </message>
    <message>
        <source>its newest test has to be one that was cut short: there is nothing to go on with</source>
        <translation>son dernier essai doit être interrompu&#xa0;: il n’y a rien à poursuivre</translation>
    </message>
    <message>
        <source>the safety answers now allow to pressurize only; the rest of this test depressurizes</source>
        <translation>les réponses de sécurité ne permettent plus que la surpression&#x202f;; le reste de cet essai est en dépression</translation>
    </message>
    <message>
        <source>a test with readings is needed</source>
        <translation>il faut un essai avec des lectures</translation>
    </message>
    <message>
        <source>a test that has ended, with readings, is needed</source>
        <translation>il faut un essai terminé, avec des lectures</translation>
    </message>
    <message>
        <source>its runs were recorded on different clocks: play one of its own</source>
        <translation>ses séries ont été enregistrées sur des horloges différentes&#xa0;: jouez-en une seule</translation>
    </message>
    <message>
        <source>a test with an n50 is needed: give the volume</source>
        <translation>il faut un essai avec n50&#xa0;: indiquez le volume</translation>
    </message>
    <message>
        <source>a report of no test needs an answer that forbids it</source>
        <translation>un rapport sans essai demande une réponse qui l’interdit</translation>
    </message>
    <message>
        <source>there is nothing to hand out</source>
        <translation>il n’y a rien à remettre</translation>
    </message>
    <message>
        <source>nothing was marked as sealed on it</source>
        <translation>rien n’y a été marqué comme colmaté</translation>
    </message>
    <message>
        <source>mark it as done first</source>
        <translation>marquez-le d’abord comme fini</translation>
    </message>
    <message>
        <source>mark first that the sealing starts</source>
        <translation>marquez d’abord le début du colmatage</translation>
    </message>
    <message>
        <source>{low} to {high} Pa can be held</source>
        <translation>de {low} à {high} Pa peuvent être maintenus</translation>
    </message>
    <message>
        <source>the expected air change needs it</source>
        <translation>le renouvellement d’air attendu en a besoin</translation>
    </message>
    <message>
        <source>paste or type the points of one direction at least</source>
        <translation>collez ou saisissez les points d’au moins un sens</translation>
    </message>
    <message>
        <source>at least one direction with points is needed</source>
        <translation>il faut au moins un sens avec des points</translation>
    </message>
    <message>
        <source>lines are needed: {columns}</source>
        <translation>il faut des lignes&#xa0;: {columns}</translation>
    </message>
    <message>
        <source>lines with tabs between are needed: {columns}</source>
        <translation>il faut des lignes séparées par des tabulations&#xa0;: {columns}</translation>
    </message>
    <message>
        <source>the columns are {columns}</source>
        <translation>les colonnes sont {columns}</translation>
    </message>
    <message>
        <source>pressure in Pa, flow</source>
        <translation>pression en Pa, débit</translation>
    </message>
    <message>
        <source>name, floor area, height, volume</source>
        <translation>nom, surface de plancher, hauteur, volume</translation>
    </message>
    <message>
        <source>name, area, adjoins</source>
        <translation>nom, surface, donne sur</translation>
    </message>
    <message>
        <source>two numbers are needed: {columns}</source>
        <translation>il faut deux nombres&#xa0;: {columns}</translation>
    </message>
    <message>
        <source>more than 0 is needed</source>
        <translation>il faut plus de 0</translation>
    </message>
    <message>
        <source>more than {low} Pa is needed</source>
        <translation>il faut plus de {low} Pa</translation>
    </message>
    <message>
        <source>more than 0 and at most {high} Pa is allowed</source>
        <translation>plus de 0 et au plus {high} Pa sont permis</translation>
    </message>
    <message>
        <source>more than 0 and at most {high} s is allowed</source>
        <translation>plus de 0 et au plus {high} s sont permis</translation>
    </message>
    <message>
        <source>a test with pressurizing has no negative pressures</source>
        <translation>un essai en surpression n’a pas de pressions négatives</translation>
    </message>
    <message>
        <source>a flow above 0 is needed</source>
        <translation>il faut un débit supérieur à 0</translation>
    </message>
    <message>
        <source>each from {low} to {high} Pa; the fan is stopped at 80 Pa</source>
        <translation>chacune de {low} à {high} Pa&#x202f;; le ventilateur est arrêté à 80 Pa</translation>
    </message>
    <message>
        <source>{fewest} to {most} pressures with spaces between are needed</source>
        <translation>il faut de {fewest} à {most} pressions séparées par des espaces</translation>
    </message>
    <message>
        <source>“{checked}”, or why it is left out, is needed</source>
        <translation>il faut «&#xa0;{checked}&#xa0;», ou pourquoi il est omis</translation>
    </message>
    <message>
        <source>the pressure of the zone with the hole is needed</source>
        <translation>il faut la pression de la zone avec le trou</translation>
    </message>
    <message>
        <source>the fan flow before and after is needed, at the same house pressure</source>
        <translation>il faut le débit du ventilateur avant et après, à la même pression de la maison</translation>
    </message>
    <message>
        <source>a pressure between 0 and that of the house, {high} Pa, is needed</source>
        <translation>il faut une pression entre 0 et celle de la maison, {high} Pa</translation>
    </message>
    <message>
        <source>a pressure below that of the house, {high} Pa, is needed</source>
        <translation>il faut une pression inférieure à celle de la maison, {high} Pa</translation>
    </message>
    <message>
        <source>a pressure from 0 to below that with the door closed, {high} Pa, is needed</source>
        <translation>il faut une pression de 0 jusqu’à moins que porte fermée, {high} Pa</translation>
    </message>
    <message>
        <source>with the guard at most the flow without it, {flow}, is possible</source>
        <translation>avec la garde, au plus le débit sans elle, {flow}, est possible</translation>
    </message>
    <message>
        <source>the port of the instrument is needed</source>
        <translation>il faut le port de l’appareil</translation>
    </message>
    <message>
        <source>the calibration of the fitted range is needed</source>
        <translation>il faut l’étalonnage de la plage montée</translation>
    </message>
    <message>
        <source>a number from the calibration sheet is needed</source>
        <translation>il faut un nombre de la fiche d’étalonnage</translation>
    </message>
    <message>
        <source>the channels of profile {profile} are: {names}</source>
        <translation>les voies du profil {profile} sont&#xa0;: {names}</translation>
    </message>
    <message>
        <source>channels of {name}</source>
        <translation>voies de {name}</translation>
    </message>
    <message>
        <source>profile of {name}</source>
        <translation>profil de {name}</translation>
    </message>
    <message>
        <source>the name of a fan drive is needed; that instrument is a gauge</source>
        <translation>il faut le nom d’une commande de ventilateur&#x202f;; cet appareil est un manomètre</translation>
    </message>
    <message>
        <source>instrument {name} is a fan drive: name it here</source>
        <translation>l’appareil {name} est une commande de ventilateur&#xa0;: nommez-le ici</translation>
    </message>
    <message>
        <source>one of this rig&apos;s is needed: {names}</source>
        <translation>il faut l’une de cet appareillage&#xa0;: {names}</translation>
    </message>
    <message>
        <source>there are none</source>
        <translation>il n’y en a pas</translation>
    </message>
    <message>
        <source>a zone of {rig} is needed: {names}</source>
        <translation>il faut une zone de {rig}&#xa0;: {names}</translation>
    </message>
    <message>
        <source>one channel needs &quot;{role}&quot;</source>
        <translation>une voie a besoin de «&#xa0;{role}&#xa0;»</translation>
    </message>
    <message>
        <source>one channel needs &quot;{role}&quot; or &quot;{other}&quot;</source>
        <translation>une voie a besoin de «&#xa0;{role}&#xa0;» ou «&#xa0;{other}&#xa0;»</translation>
    </message>
    <message>
        <source>a drive needs gauges that the program reads itself; without it a person turns the fan</source>
        <translation>une commande demande des manomètres que le programme lit lui-même&#x202f;; sans elle une personne règle le ventilateur</translation>
    </message>
    <message>
        <source>where the envelope pressure is typed, the flow has to be typed too</source>
        <translation>là où la différence de pression est saisie, le débit doit l’être aussi</translation>
    </message>
    <message>
        <source>of a gauge that is typed only one can be used</source>
        <translation>d’un manomètre saisi une seule peut servir</translation>
    </message>
    <message>
        <source>only a simulated rig may run faster than real time</source>
        <translation>seul un appareillage simulé peut aller plus vite que le temps</translation>
    </message>
    <message>
        <source>at most {count} fans blow together</source>
        <translation>au plus {count} ventilateurs soufflent ensemble</translation>
    </message>
    <message>
        <source>a list of names of fan drives is needed</source>
        <translation>il faut une liste de noms de commandes de ventilateur</translation>
    </message>
    <message>
        <source>beside fans it can only be the first of them, {name}</source>
        <translation>à côté de ventilateurs ce ne peut être que le premier, {name}</translation>
    </message>
    <message>
        <source>a table of fan = flow range is needed</source>
        <translation>il faut un tableau ventilateur = plage de débit</translation>
    </message>
    <message>
        <source>a table of zone = name is needed, with {names}</source>
        <translation>il faut un tableau zone = nom, avec {names}</translation>
    </message>
    <message>
        <source>a table of channel = role is needed</source>
        <translation>il faut un tableau voie = rôle</translation>
    </message>
    <message>
        <source>a rig file has at most {count} bytes</source>
        <translation>un fichier d’appareillage a au plus {count} octets</translation>
    </message>
    <message>
        <source>the name of a flow range is needed; there are: {names}</source>
        <translation>il faut le nom d’une plage de débit&#x202f;; il y a&#xa0;: {names}</translation>
    </message>
    <message>
        <source>the name of an instrument is needed; there are: {names}</source>
        <translation>il faut le nom d’un appareil&#x202f;; il y a&#xa0;: {names}</translation>
    </message>
    <message>
        <source>the fans beyond the first are: {names}</source>
        <translation>les ventilateurs après le premier sont&#xa0;: {names}</translation>
    </message>
    <message>
        <source>the zones are: {names}</source>
        <translation>les zones sont&#xa0;: {names}</translation>
    </message>
    <message>
        <source>a role is needed, one of: {names}</source>
        <translation>il faut un rôle, l’un de&#xa0;: {names}</translation>
    </message>
    <message>
        <source>role is {role}: its readings are not typed</source>
        <translation>le rôle est {role}&#xa0;: ses lectures ne se saisissent pas</translation>
    </message>
    <message>
        <source>a table that holds for both signs gives 0 at 0; for an offset give negative pressures too</source>
        <translation>un tableau valable pour les deux signes donne 0 à 0&#x202f;; pour un décalage indiquez aussi des pressions négatives</translation>
    </message>
    <message>
        <source>at least two points are needed</source>
        <translation>il faut au moins deux points</translation>
    </message>
    <message>
        <source>at {shown} Pa a true pressure within {most} Pa of it is needed</source>
        <translation>à {shown} Pa il faut une pression vraie à {most} Pa près</translation>
    </message>
    <message>
        <source>shown and true pressures that both rise are needed</source>
        <translation>il faut des pressions affichées et vraies qui montent toutes deux</translation>
    </message>
    <message>
        <source>pressures and flows above 0 that both rise</source>
        <translation>pressions et débits supérieurs à 0 qui montent tous deux</translation>
    </message>
    <message>
        <source>a range within the table, {low} to {high} Pa, is needed</source>
        <translation>il faut une plage dans le tableau, de {low} à {high} Pa</translation>
    </message>
    <message>
        <source>the flow has to rise from {low} to {high} Pa, above 0</source>
        <translation>le débit doit monter de {low} à {high} Pa, au-dessus de 0</translation>
    </message>
    <message>
        <source>one for all channels, or one for each, is needed</source>
        <translation>il en faut une pour toutes les voies, ou une pour chacune</translation>
    </message>
    <message>
        <source>a coefficient above 0 and an exponent of 0 to 1</source>
        <translation>un coefficient supérieur à 0 et un exposant de 0 à 1</translation>
    </message>
    <message>
        <source>coefficient; exponent of 0 to 1, such as 183; 0.5</source>
        <translation>coefficient&#x202f;; exposant de 0 à 1, comme 183&#x202f;; 0,5</translation>
    </message>
    <message>
        <source>pairs are needed, such as 10 580; 20 820</source>
        <translation>il faut des paires, comme 10 580&#x202f;; 20 820</translation>
    </message>
    <message>
        <source>numbers are needed: {what}</source>
        <translation>il faut des nombres&#xa0;: {what}</translation>
    </message>
    <message>
        <source>a name and its months are needed, such as North 24; South 60</source>
        <translation>il faut un nom et ses mois, comme North 24&#x202f;; South 60</translation>
    </message>
    <message>
        <source>a pair {pair} is needed</source>
        <translation>il faut une paire {pair}</translation>
    </message>
    <message>
        <source>a table of scheme = months is needed</source>
        <translation>il faut un tableau programme = mois</translation>
    </message>
    <message>
        <source>a list of [Pa, Pa, allowed Pa] is needed</source>
        <translation>il faut une liste de [Pa, Pa, Pa permis]</translation>
    </message>
    <message>
        <source>three numbers [Pa, Pa, allowed Pa] are needed</source>
        <translation>il faut trois nombres [Pa, Pa, Pa permis]</translation>
    </message>
    <message>
        <source>another gauge than the first is needed</source>
        <translation>il faut un autre manomètre que le premier</translation>
    </message>
    <message>
        <source>{count} pressures or more are needed, one of them near zero</source>
        <translation>il faut {count} pressions ou plus, dont une près de zéro</translation>
    </message>
    <message>
        <source>{count} numbers or more are needed</source>
        <translation>il faut {count} nombres ou plus</translation>
    </message>
    <message>
        <source>your name is needed, with 1 to {count} characters</source>
        <translation>il faut votre nom, de 1 à {count} caractères</translation>
    </message>
    <message>
        <source>no class answers there; ask the trainer for host and port</source>
        <translation>aucune classe n’y répond&#x202f;; demandez au formateur hôte et port</translation>
    </message>
    <message>
        <source>host and port are needed, such as 192.168.1.20:4000</source>
        <translation>il faut hôte et port, comme 192.168.1.20:4000</translation>
    </message>
    <message>
        <source>a port from 1 to {most} is needed behind the host</source>
        <translation>il faut un port de 1 à {most} derrière l’hôte</translation>
    </message>
    <message>
        <source>nobody answers there ({reason})</source>
        <translation>personne n’y répond ({reason})</translation>
    </message>
    <message>
        <source>a private address of this machine is needed</source>
        <translation>il faut une adresse privée de cette machine</translation>
    </message>
    <message>
        <source>this address cannot be listened at ({reason})</source>
        <translation>on ne peut pas écouter à cette adresse ({reason})</translation>
    </message>
    <message>
        <source>at least one of each is needed</source>
        <translation>il en faut au moins un de chaque</translation>
    </message>
    <message>
        <source>point at one number of the line at least</source>
        <translation>montrez au moins un nombre de la ligne</translation>
    </message>
    <message>
        <source>point at one register at least</source>
        <translation>montrez au moins un registre</translation>
    </message>
    <message>
        <source>there is no number at place {place} of the line</source>
        <translation>il n’y a pas de nombre à la place {place} de la ligne</translation>
    </message>
    <message>
        <source>the number {place} is {name} already</source>
        <translation>le nombre {place} est déjà {name}</translation>
    </message>
    <message>
        <source>letters, digits and _ are needed, not {text}</source>
        <translation>il faut des lettres, des chiffres et _, pas {text}</translation>
    </message>
    <message>
        <source>letters, digits, - and _ are needed, not {text}</source>
        <translation>il faut des lettres, des chiffres, - et _, pas {text}</translation>
    </message>
    <message>
        <source>a profile of this id is there already: choose another id</source>
        <translation>un profil de cet identifiant existe déjà&#xa0;: choisissez-en un autre</translation>
    </message>
    <message>
        <source>all numbers of two registers have to be in one order</source>
        <translation>tous les nombres de deux registres doivent avoir le même ordre</translation>
    </message>
    <message>
        <source>all registers have to be input or all holding registers</source>
        <translation>tous les registres doivent être d’entrée, ou tous de maintien</translation>
    </message>
    <message>
        <source>at most {most} registers are read at once, not {count}</source>
        <translation>au plus {most} registres se lisent à la fois, pas {count}</translation>
    </message>
    <message>
        <source>flow range</source>
        <translation>plage de débit</translation>
    </message>
    <message>
        <source>fitted range</source>
        <translation>plage montée</translation>
    </message>
    <message>
        <source>range fitted on {drive}</source>
        <translation>plage montée sur {drive}</translation>
    </message>
    <message>
        <source>zone name</source>
        <translation>nom d’une zone</translation>
    </message>
    <message>
        <source>Indoors against {name}</source>
        <translation>Intérieur contre {name}</translation>
    </message>
    <message>
        <source>In</source>
        <translation>Compte</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Floor area</source>
        <translation>Surface de plancher</translation>
    </message>
    <message>
        <source>Mean height</source>
        <translation>Hauteur moyenne</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volume</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Surface</translation>
    </message>
    <message>
        <source>Adjoins</source>
        <translation>Donne sur</translation>
    </message>
    <message>
        <source>Why it is out</source>
        <translation>Pourquoi exclu</translation>
    </message>
    <message>
        <source>Room {number}</source>
        <translation>Pièce {number}</translation>
    </message>
    <message>
        <source>Surface {number}</source>
        <translation>Surface {number}</translation>
    </message>
    <message>
        <source>a new room</source>
        <translation>une nouvelle pièce</translation>
    </message>
    <message>
        <source>a new surface</source>
        <translation>une nouvelle surface</translation>
    </message>
    <message>
        <source>{name} taken away</source>
        <translation>{name} retiré</translation>
    </message>
    <message>
        <source>Nothing was pasted: {error}.</source>
        <translation>Rien n’a été collé&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>{count} pasted rows</source>
        <translation>{count} lignes collées</translation>
    </message>
    <message>
        <source>how it was measured</source>
        <translation>mode de mesure</translation>
    </message>
    <message>
        <source>And {more} more.</source>
        <translation>Et {more} de plus.</translation>
    </message>
    <message>
        <source>{field} of {name}</source>
        <translation>{field} de {name}</translation>
    </message>
    <message>
        <source>Envelope area</source>
        <translation>Surface d’enveloppe</translation>
    </message>
    <message>
        <source>to {kind}</source>
        <translation>vers {kind}</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Exclu</translation>
    </message>
    <message>
        <source>The job sheet has another {name} ({shown}), and that one counts.</source>
        <translation>La fiche du dossier a une autre valeur ({shown}) pour&#xa0;: {name}&#x202f;; c’est elle qui compte.</translation>
    </message>
    <message>
        <source>Serial line (RTU)</source>
        <translation>Liaison série (RTU)</translation>
    </message>
    <message>
        <source>Network (TCP)</source>
        <translation>Réseau (TCP)</translation>
    </message>
    <message>
        <source>Choose the port, the unit&apos;s number and the settings on its plate, and read its registers.</source>
        <translation>Choisissez le port, le numéro de l’unité et les réglages de sa plaque, et lisez ses registres.</translation>
    </message>
    <message>
        <source>Type what its display shows now, and choose the reading that fits.</source>
        <translation>Saisissez ce que montre maintenant l’afficheur, et choisissez la lecture qui convient.</translation>
    </message>
    <message>
        <source>Choose the reading that fits its display.</source>
        <translation>Choisissez la lecture qui convient à l’afficheur.</translation>
    </message>
    <message>
        <source>My Modbus gauge</source>
        <translation>Mon appareil Modbus</translation>
    </message>
    <message>
        <source>The port of the instrument is needed.</source>
        <translation>Le port de l’appareil est nécessaire.</translation>
    </message>
    <message>
        <source>{share} is read. {sentence}</source>
        <translation>{share} est lu. {sentence}</translation>
    </message>
    <message>
        <source>No register reads {shown} in any usual way. Look at the display again, or read the registers anew.</source>
        <translation>Aucun registre ne donne {shown} d’une façon usuelle. Regardez de nouveau l’afficheur, ou relisez les registres.</translation>
    </message>
    <message>
        <source>A whole number of {low} to {high} is needed.</source>
        <translation>Il faut un nombre entier de {low} à {high}.</translation>
    </message>
    <message>
        <source>, low word first</source>
        <translation>, mot bas d’abord</translation>
    </message>
    <message>
        <source>{value}   {space} register {register}, {words}{order}{scale}</source>
        <translation>{value}   registre {space} {register}, {words}{order}{scale}</translation>
    </message>
    <message>
        <source>Office, as it stands on reports</source>
        <translation>Bureau, tel qu’il figure sur les rapports</translation>
    </message>
    <message>
        <source>Numbers and names</source>
        <translation>Numéros et noms</translation>
    </message>
    <message>
        <source>Folders</source>
        <translation>Répertoires</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unités</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longueur</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Température</translation>
    </message>
    <message>
        <source>Wind speed</source>
        <translation>Vitesse du vent</translation>
    </message>
    <message>
        <source>Leakage area</source>
        <translation>Surface de fuite</translation>
    </message>
    <message>
        <source>Flow per area</source>
        <translation>Débit par surface</translation>
    </message>
    <message>
        <source>Leakage coefficient</source>
        <translation>Coefficient de fuite</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Comme le système</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Sombre</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Clair</translation>
    </message>
    <message>
        <source>Sunlight</source>
        <translation>Plein soleil</translation>
    </message>
    <message>
        <source>As the language</source>
        <translation>Comme la langue</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Point</translation>
    </message>
    <message>
        <source>Comma</source>
        <translation>Virgule</translation>
    </message>
    <message>
        <source>The next certificate is {number}. Names: {{year}} {{month}} {{day}} {{count}} {{job}}.</source>
        <translation>Le prochain certificat est {number}. Noms&#xa0;: {{year}} {{month}} {{day}} {{count}} {{job}}.</translation>
    </message>
    <message>
        <source>Such as {example}.pdf. Names: {names}.</source>
        <translation>Par exemple {example}.pdf. Noms&#xa0;: {names}.</translation>
    </message>
    <message>
        <source>PNG or JPEG; a copy is kept with the settings.</source>
        <translation>PNG ou JPEG&#x202f;; une copie est gardée avec les réglages.</translation>
    </message>
    <message>
        <source>Stands in front of the certificate.</source>
        <translation>Figure en tête du certificat.</translation>
    </message>
    <message>
        <source>Stands at the foot of the certificate.</source>
        <translation>Figure au pied du certificat.</translation>
    </message>
    <message>
        <source>Where “Find a job” looks. Empty: beside the open job.</source>
        <translation>Où «&#xa0;Chercher un dossier&#xa0;» cherche. Vide&#xa0;: à côté du dossier ouvert.</translation>
    </message>
    <message>
        <source>Every job is copied here when it is closed. Empty: no copies.</source>
        <translation>Chaque dossier y est copié à sa fermeture. Vide&#xa0;: pas de copies.</translation>
    </message>
    <message>
        <source>Counts from the next start.</source>
        <translation>Compte à partir du prochain démarrage.</translation>
    </message>
    <message>
        <source>Counts from the next start. Reports have a language of their own.</source>
        <translation>Compte à partir du prochain démarrage. Les rapports ont leur propre langue.</translation>
    </message>
    <message>
        <source>Name of the office</source>
        <translation>Nom du bureau</translation>
    </message>
    <message>
        <source>Usual signer</source>
        <translation>Signataire habituel</translation>
    </message>
    <message>
        <source>Address, at most five lines</source>
        <translation>Adresse, cinq lignes au plus</translation>
    </message>
    <message>
        <source>Logo</source>
        <translation>Logo</translation>
    </message>
    <message>
        <source>Opening text</source>
        <translation>Texte d’ouverture</translation>
    </message>
    <message>
        <source>Closing text</source>
        <translation>Texte de fin</translation>
    </message>
    <message>
        <source>Pattern of certificate numbers</source>
        <translation>Modèle des numéros de certificat</translation>
    </message>
    <message>
        <source>Next count</source>
        <translation>Prochain numéro</translation>
    </message>
    <message>
        <source>Pattern of file names</source>
        <translation>Modèle des noms de fichier</translation>
    </message>
    <message>
        <source>Folder of jobs</source>
        <translation>Répertoire des dossiers</translation>
    </message>
    <message>
        <source>Backup folder</source>
        <translation>Répertoire de sauvegarde</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Thème</translation>
    </message>
    <message>
        <source>Language of the window</source>
        <translation>Langue de la fenêtre</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Signe décimal</translation>
    </message>
    <message>
        <source>Size of everything</source>
        <translation>Taille de tout</translation>
    </message>
    <message>
        <source>Local codes and licensed practice decide who may test and how; this list does not replace them.</source>
        <translation>Les règles locales et la pratique agréée décident qui peut mesurer et comment&#x202f;; cette liste ne les remplace pas.</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Posé</translation>
    </message>
    <message>
        <source>Taken off</source>
        <translation>Retiré</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>As the method wants it: {rule}. {left}</source>
        <translation>Comme la méthode le veut&#xa0;: {rule}. {left}</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>Not present</source>
        <translation>Absent</translation>
    </message>
    <message>
        <source>No: do not test.</source>
        <translation>Non&#xa0;: pas d’essai.</translation>
    </message>
    <message>
        <source>No: pressurize only.</source>
        <translation>Non&#xa0;: surpression seule.</translation>
    </message>
    <message>
        <source>No: at most {cap} Pa.</source>
        <translation>Non&#xa0;: {cap} Pa au plus.</translation>
    </message>
    <message>
        <source> Answered {time}.</source>
        <translation> Répondu le {time}.</translation>
    </message>
    <message>
        <source>Wanted: {wanted}.</source>
        <translation>Voulu&#xa0;: {wanted}.</translation>
    </message>
    <message>
        <source>Everything is as wanted.</source>
        <translation>Tout est comme voulu.</translation>
    </message>
    <message>
        <source>{left} of {count} to look at.</source>
        <translation>{left} sur {count} à regarder.</translation>
    </message>
    <message>
        <source>Nothing was touched yet.</source>
        <translation>Rien n’a encore été touché.</translation>
    </message>
    <message>
        <source>{count} still to be put back.</source>
        <translation>{count} encore à remettre en état.</translation>
    </message>
    <message>
        <source>Everything is put back.</source>
        <translation>Tout est remis en état.</translation>
    </message>
    <message>
        <source>Looked over by {who}, {time}; something was changed since.</source>
        <translation>Revu par {who}, {time}&#xa0;; quelque chose a été modifié depuis.</translation>
    </message>
    <message>
        <source>Looked over by {who}, {time}.</source>
        <translation>Revu par {who}, {time}.</translation>
    </message>
    <message>
        <source>Open, no obstructions</source>
        <translation>Dégagé, sans obstacles</translation>
    </message>
    <message>
        <source>Isolated house</source>
        <translation>Maison isolée</translation>
    </message>
    <message>
        <source>Buildings across the street</source>
        <translation>Bâtiments de l’autre côté de la rue</translation>
    </message>
    <message>
        <source>Urban, larger lots</source>
        <translation>Ville, grandes parcelles</translation>
    </message>
    <message>
        <source>Adjacent buildings</source>
        <translation>Bâtiments contigus</translation>
    </message>
    <message>
        <source>Building</source>
        <translation>Bâtiment</translation>
    </message>
    <message>
        <source>Air by hand</source>
        <translation>Air à la main</translation>
    </message>
    <message>
        <source>Who and where</source>
        <translation>Qui et où</translation>
    </message>
    <message>
        <source>Limits of codes and programmes</source>
        <translation>Limites des règles et programmes</translation>
    </message>
    <message>
        <source>House and season, for what the result means</source>
        <translation>Maison et saison, pour le sens du résultat</translation>
    </message>
    <message>
        <source>How sure the instruments and measures are (standard uncertainty)</source>
        <translation>Sûreté des appareils et des cotes (incertitude type)</translation>
    </message>
    <message>
        <source>Name of the building</source>
        <translation>Nom du bâtiment</translation>
    </message>
    <message>
        <source>Internal volume</source>
        <translation>Volume intérieur</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Hauteur</translation>
    </message>
    <message>
        <source>Altitude above the sea</source>
        <translation>Altitude</translation>
    </message>
    <message>
        <source>Kind of test</source>
        <translation>Type d’essai</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>How far the building is, in a few words</source>
        <translation>Avancement du bâtiment, en quelques mots</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Directions</source>
        <translation>Sens</translation>
    </message>
    <message>
        <source>depressurize</source>
        <translation>dépression</translation>
    </message>
    <message>
        <source>pressurize</source>
        <translation>surpression</translation>
    </message>
    <message>
        <source>Depressurize</source>
        <translation>Dépression</translation>
    </message>
    <message>
        <source>Pressurize</source>
        <translation>Surpression</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>fermé</translation>
    </message>
    <message>
        <source>opening</source>
        <translation>ouverture</translation>
    </message>
    <message>
        <source>identifying</source>
        <translation>identification</translation>
    </message>
    <message>
        <source>linked</source>
        <translation>connecté</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdu</translation>
    </message>
    <message>
        <source>wrong instrument</source>
        <translation>autre appareil</translation>
    </message>
    <message>
        <source>not sure</source>
        <translation>pas sûr</translation>
    </message>
    <message>
        <source>recording</source>
        <translation>en cours</translation>
    </message>
    <message>
        <source>complete</source>
        <translation>complet</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>arrêté</translation>
    </message>
    <message>
        <source>faulted</source>
        <translation>en défaut</translation>
    </message>
    <message>
        <source>interrupted</source>
        <translation>interrompu</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Manomètre</translation>
    </message>
    <message>
        <source>Fan</source>
        <translation>Ventilateur</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Thermomètre</translation>
    </message>
    <message>
        <source>Barometer</source>
        <translation>Baromètre</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Autre</translation>
    </message>
    <message>
        <source>Dampers of stove and flue as they were</source>
        <translation>Clapets de poêle et de conduit comme avant</translation>
    </message>
    <message>
        <source>Bath and kitchen fans switched on again</source>
        <translation>Extracteurs de bain et cuisine remis en marche</translation>
    </message>
    <message>
        <source>Ventilation of the whole building switched on again</source>
        <translation>Ventilation du bâtiment remise en marche</translation>
    </message>
    <message>
        <source>Heating and hot water: pilot lit, appliance on</source>
        <translation>Chauffage et eau chaude&#xa0;: veilleuse allumée, appareil en marche</translation>
    </message>
    <message>
        <source>Pilot flames lit, appliances on and looked at</source>
        <translation>Veilleuses allumées, appareils en marche et vus</translation>
    </message>
    <message>
        <source>Thermostats as they were</source>
        <translation>Thermostats comme avant</translation>
    </message>
    <message>
        <source>Smoke and other alarms reinstated, those who were told are told again</source>
        <translation>Détecteurs de fumée et alarmes remis en service, personnes averties informées</translation>
    </message>
    <message>
        <source>Dampers and registers as they were</source>
        <translation>Clapets et registres comme avant</translation>
    </message>
    <message>
        <source>Keys given back</source>
        <translation>Clés rendues</translation>
    </message>
    <message>
        <source>As is</source>
        <translation>Tel quel</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Fermé</translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation>Obturé</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Ouvert</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Arrêté</translation>
    </message>
    <message>
        <source>Filled</source>
        <translation>Rempli</translation>
    </message>
    <message>
        <source>building in use</source>
        <translation>bâtiment en usage</translation>
    </message>
    <message>
        <source>envelope alone</source>
        <translation>enveloppe seule</translation>
    </message>
    <message>
        <source>closed, dampers not sealed</source>
        <translation>fermé, clapets non obturés</translation>
    </message>
    <message>
        <source>shell closed</source>
        <translation>clos et couvert</translation>
    </message>
    <message>
        <source>services in</source>
        <translation>réseaux posés</translation>
    </message>
    <message>
        <source>boards on</source>
        <translation>plaques posées</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>achevé</translation>
    </message>
    <message>
        <source>Method 1, building in use: openings for ventilation closed, others as they are in use</source>
        <translation>Méthode 1, bâtiment en usage&#xa0;: ouvertures de ventilation fermées, les autres comme en usage</translation>
    </message>
    <message>
        <source>Method 2, building envelope: all intentional openings sealed or closed</source>
        <translation>Méthode 2, enveloppe du bâtiment&#xa0;: toutes les ouvertures volontaires obturées ou fermées</translation>
    </message>
    <message>
        <source>Method 3, specific purpose: as the regulation or programme says</source>
        <translation>Méthode 3, objet particulier&#xa0;: selon la réglementation ou le programme</translation>
    </message>
    <message>
        <source>Building envelope: openings of heating and ventilation are left out (masked)</source>
        <translation>Enveloppe du bâtiment&#xa0;: ouvertures de chauffage et de ventilation exclues (masquées)</translation>
    </message>
    <message>
        <source>Operational envelope: openings of heating and ventilation belong to it, as in operation</source>
        <translation>Enveloppe en service&#xa0;: ouvertures de chauffage et de ventilation incluses, comme en service</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Verdict</translation>
    </message>
    <message>
        <source>Issued as</source>
        <translation>Émis sous</translation>
    </message>
    <message>
        <source>found</source>
        <translation>trouvée</translation>
    </message>
    <message>
        <source>Choose an exercise and open the class.</source>
        <translation>Choisissez un exercice et ouvrez la classe.</translation>
    </message>
    <message>
        <source>{file} is in the editor.</source>
        <translation>{file} est dans l’éditeur.</translation>
    </message>
    <message>
        <source>{file} cannot be read: {error}.</source>
        <translation>{file} ne peut être lu&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>{file} gives no exercise: {error}.</source>
        <translation>{file} ne donne pas d’exercice&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>A house as tight as that of {file}, without names, is in the editor.</source>
        <translation>Une maison aussi étanche que celle de {file}, sans noms, est dans l’éditeur.</translation>
    </message>
    <message>
        <source>{file} is there already: choose another name.</source>
        <translation>{file} existe déjà&#xa0;: choisissez un autre nom.</translation>
    </message>
    <message>
        <source>The exercise is saved as {file}.</source>
        <translation>L’exercice est enregistré sous {file}.</translation>
    </message>
    <message>
        <source>{file} cannot be written: {reason}.</source>
        <translation>{file} ne peut être écrit&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>there are too many drafts</source>
        <translation>il y a trop de brouillons</translation>
    </message>
    <message>
        <source>What you had typed is kept as {file}.</source>
        <translation>Ce que vous aviez saisi est conservé sous {file}.</translation>
    </message>
    <message>
        <source>What you had typed cannot be kept: {reason}.</source>
        <translation>Ce que vous aviez saisi ne peut être conservé&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>The class cannot open: {error}.</source>
        <translation>La classe ne peut ouvrir&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>Students join at {address} in the place Rig.</source>
        <translation>Les élèves rejoignent {address} sous Appareillage.</translation>
    </message>
    <message>
        <source>The class is closed.</source>
        <translation>La classe est fermée.</translation>
    </message>
    <message>
        <source>The cable of the gauge is back.</source>
        <translation>Le câble du manomètre est rebranché.</translation>
    </message>
    <message>
        <source>The cable of the gauge is pulled.</source>
        <translation>Le câble du manomètre est débranché.</translation>
    </message>
    <message>
        <source>Time stands still in the houses.</source>
        <translation>Le temps est arrêté dans les maisons.</translation>
    </message>
    <message>
        <source>Time in the houses: {pace} times.</source>
        <translation>Temps dans les maisons&#xa0;: {pace} fois.</translation>
    </message>
    <message>
        <source>{times} times as large</source>
        <translation>{times} fois plus grande</translation>
    </message>
    <message>
        <source>sealed</source>
        <translation>colmatée</translation>
    </message>
    <message>
        <source>as built</source>
        <translation>d’origine</translation>
    </message>
    <message>
        <source>Wind: {speed}</source>
        <translation>Vent&#xa0;: {speed}</translation>
    </message>
    <message>
        <source>The wind turns to {speed}.</source>
        <translation>Le vent passe à {speed}.</translation>
    </message>
    <message>
        <source>Indoors {indoor}, outdoors {outdoor}</source>
        <translation>Intérieur {indoor}, extérieur {outdoor}</translation>
    </message>
    <message>
        <source>Indoors goes to {indoor}, outdoors to {outdoor}.</source>
        <translation>L’intérieur passe à {indoor}, l’extérieur à {outdoor}.</translation>
    </message>
    <message>
        <source>in {minutes} min</source>
        <translation>dans {minutes} min</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>à venir</translation>
    </message>
    <message>
        <source>thrown</source>
        <translation>lancée</translation>
    </message>
    <message>
        <source>{fault}: put right.</source>
        <translation>{fault}&#xa0;: réparé.</translation>
    </message>
    <message>
        <source>It has happened already.</source>
        <translation>C’est déjà arrivé.</translation>
    </message>
    <message>
        <source>{moment}: taken back.</source>
        <translation>{moment}&#xa0;: annulé.</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation>Fait.</translation>
    </message>
    <message>
        <source>{count} sheets and the table are in {folder}.</source>
        <translation>{count} fiches et le tableau sont dans {folder}.</translation>
    </message>
    <message>
        <source>The rig files cannot be written: {reason}.</source>
        <translation>Les fichiers d’appareillage ne peuvent être écrits&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>{count} rig files are in {folder}.</source>
        <translation>{count} fichiers d’appareillage sont dans {folder}.</translation>
    </message>
    <message>
        <source>cable pulled</source>
        <translation>câble débranché</translation>
    </message>
    <message>
        <source>connected</source>
        <translation>connecté</translation>
    </message>
    <message>
        <source>away</source>
        <translation>parti</translation>
    </message>
    <message>
        <source>free</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>verified</source>
        <translation>vérifiée</translation>
    </message>
    <message>
        <source>left</source>
        <translation>laissée</translation>
    </message>
    <message>
        <source>hand</source>
        <translation>main</translation>
    </message>
    <message>
        <source>fog</source>
        <translation>fumée</translation>
    </message>
    <message>
        <source>smoke pen</source>
        <translation>stylo fumigène</translation>
    </message>
    <message>
        <source>infra-red</source>
        <translation>infrarouge</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>bruit</translation>
    </message>
    <message>
        <source>other</source>
        <translation>autre</translation>
    </message>
    <message>
        <source>By a code or programme</source>
        <translation>Selon une règle ou un programme</translation>
    </message>
    <message>
        <source>For quality, no code</source>
        <translation>Pour la qualité, sans règle</translation>
    </message>
    <message>
        <source>Finding leaks only</source>
        <translation>Recherche de fuites seulement</translation>
    </message>
    <message>
        <source>Quick</source>
        <translation>Rapide</translation>
    </message>
    <message>
        <source>Standard</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>Precision</source>
        <translation>Précis</translation>
    </message>
    <message>
        <source>Windy</source>
        <translation>Venteux</translation>
    </message>
    <message>
        <source>Measured inside, wall to wall</source>
        <translation>Mesuré à l’intérieur, de mur à mur</translation>
    </message>
    <message>
        <source>Taken from drawings</source>
        <translation>D’après les plans</translation>
    </message>
    <message>
        <source>Measured outside, walls taken off</source>
        <translation>Mesuré à l’extérieur, murs déduits</translation>
    </message>
    <message>
        <source>Estimated</source>
        <translation>Estimé</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>extérieur</translation>
    </message>
    <message>
        <source>ground</source>
        <translation>sol</translation>
    </message>
    <message>
        <source>unheated space</source>
        <translation>local non chauffé</translation>
    </message>
    <message>
        <source>neighbour</source>
        <translation>voisin</translation>
    </message>
    <message>
        <source>even</source>
        <translation>paire</translation>
    </message>
    <message>
        <source>odd</source>
        <translation>impaire</translation>
    </message>
    <message>
        <source>By hand (a person reads the gauge and types)</source>
        <translation>À la main (une personne lit et saisit)</translation>
    </message>
    <message>
        <source>Line gauge (two pressures, two temperatures)</source>
        <translation>Manomètre à lignes (deux pressions, deux températures)</translation>
    </message>
    <message>
        <source>Line gauge that is asked (two pressures, two temperatures)</source>
        <translation>Manomètre à lignes, sur demande (deux pressions, deux températures)</translation>
    </message>
    <message>
        <source>Modbus fan (electronically commutated motor)</source>
        <translation>Ventilateur Modbus (moteur à commutation électronique)</translation>
    </message>
    <message>
        <source>Modbus gauge (two pressures, two temperatures, barometer)</source>
        <translation>Manomètre Modbus (deux pressions, deux températures, baromètre)</translation>
    </message>
    <message>
        <source>Modbus pressure transmitter (one register, 0.1 Pa)</source>
        <translation>Capteur de pression Modbus (un registre, 0,1 Pa)</translation>
    </message>
    <message>
        <source>Modbus output 0 to 10 V as fan drive</source>
        <translation>Sortie Modbus 0 à 10 V comme commande de ventilateur</translation>
    </message>
    <message>
        <source>Recorded file (readings played back)</source>
        <translation>Fichier enregistré (lectures rejouées)</translation>
    </message>
    <message>
        <source>SCPI fan drive</source>
        <translation>Commande de ventilateur SCPI</translation>
    </message>
    <message>
        <source>SCPI gauge (four pressures, two temperatures, barometer, humidity)</source>
        <translation>Manomètre SCPI (quatre pressions, deux températures, baromètre, humidité)</translation>
    </message>
    <message>
        <source>SCPI gauge (eight pressures, two temperatures, barometer, humidity)</source>
        <translation>Manomètre SCPI (huit pressions, deux températures, baromètre, humidité)</translation>
    </message>
    <message>
        <source>Thermometer and barometer that send lines</source>
        <translation>Thermomètre et baromètre qui envoient des lignes</translation>
    </message>
    <message>
        <source>before the points</source>
        <translation>avant les points</translation>
    </message>
    <message>
        <source>left out: {reason}</source>
        <translation>omis&#xa0;: {reason}</translation>
    </message>
    <message>
        <source>looked over by hand</source>
        <translation>vérifié à la main</translation>
    </message>
    <message>
        <source>checked in the test before</source>
        <translation>vérifié lors de l’essai précédent</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>sans raison donnée</translation>
    </message>
    <message>
        <source>Both, in this order</source>
        <translation>Les deux, dans cet ordre</translation>
    </message>
    <message>
        <source>State of the building</source>
        <translation>État du bâtiment</translation>
    </message>
    <message>
        <source>Limit on</source>
        <translation>Limite sur</translation>
    </message>
    <message>
        <source>Air changes at 50 Pa</source>
        <translation>Renouvellements d’air à 50 Pa</translation>
    </message>
    <message>
        <source>Flow at 50 Pa per envelope area</source>
        <translation>Débit à 50 Pa par surface d’enveloppe</translation>
    </message>
    <message>
        <source>Flow at 75 Pa per envelope area</source>
        <translation>Débit à 75 Pa par surface d’enveloppe</translation>
    </message>
    <message>
        <source>Flow at 50 Pa per floor area</source>
        <translation>Débit à 50 Pa par surface de plancher</translation>
    </message>
    <message>
        <source>Flow at 50 Pa</source>
        <translation>Débit à 50 Pa</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>empty: no limit</source>
        <translation>vide&#xa0;: pas de limite</translation>
    </message>
    <message>
        <source>Targets</source>
        <translation>Pressions cibles</translation>
    </message>
    <message>
        <source>Check of the hoses</source>
        <translation>Contrôle des tubes</translation>
    </message>
    <message>
        <source>Schedule</source>
        <translation>Programme</translation>
    </message>
    <message>
        <source>Own durations</source>
        <translation>Durées propres</translation>
    </message>
    <message>
        <source>Zero-flow record</source>
        <translation>Relevé à débit nul</translation>
    </message>
    <message>
        <source>Average per point</source>
        <translation>Moyenne par point</translation>
    </message>
    <message>
        <source>Indoor humidity</source>
        <translation>Humidité intérieure</translation>
    </message>
    <message>
        <source>Outdoor humidity</source>
        <translation>Humidité extérieure</translation>
    </message>
    <message>
        <source>Barometric pressure at the site</source>
        <translation>Pression barométrique sur place</translation>
    </message>
    <message>
        <source>empty: by the altitude</source>
        <translation>vide&#xa0;: selon l’altitude</translation>
    </message>
    <message>
        <source>Wind near the ground</source>
        <translation>Vent près du sol</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Lieu</translation>
    </message>
    <message>
        <source>Client</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>Tester</source>
        <translation>Opérateur</translation>
    </message>
    <message>
        <source>Job number</source>
        <translation>Numéro du dossier</translation>
    </message>
    <message>
        <source>Place of the codes</source>
        <translation>Lieu des règles</translation>
    </message>
    <message>
        <source>Climate zone</source>
        <translation>Zone climatique</translation>
    </message>
    <message>
        <source>Language of the report</source>
        <translation>Langue du rapport</translation>
    </message>
    <message>
        <source>Pressure gauge</source>
        <translation>Manomètre</translation>
    </message>
    <message>
        <source>Flow element</source>
        <translation>Élément de débit</translation>
    </message>
    <message>
        <source>Temperatures</source>
        <translation>Températures</translation>
    </message>
    <message>
        <source>Storeys</source>
        <translation>Niveaux</translation>
    </message>
    <message>
        <source>By the height</source>
        <translation>Selon la hauteur</translation>
    </message>
    <message>
        <source>Shelter from the wind</source>
        <translation>Abri du vent</translation>
    </message>
    <message>
        <source>Indoor minus outdoor, mean</source>
        <translation>Intérieur moins extérieur, moyenne</translation>
    </message>
    <message>
        <source>Wind at the station, mean</source>
        <translation>Vent à la station, moyenne</translation>
    </message>
    <message>
        <source>Air change that a design assumed</source>
        <translation>Renouvellement supposé par une étude</translation>
    </message>
    <message>
        <source>Indoor minus outdoor of the design</source>
        <translation>Intérieur moins extérieur de l’étude</translation>
    </message>
    <message>
        <source>Weather factor of ASHRAE 62.2</source>
        <translation>Facteur climatique d’ASHRAE 62.2</translation>
    </message>
    <message>
        <source>empty: no credit</source>
        <translation>vide&#xa0;: pas de crédit</translation>
    </message>
    <message>
        <source>Exhaust fans together</source>
        <translation>Extracteurs ensemble</translation>
    </message>
    <message>
        <source>empty: no estimate</source>
        <translation>vide&#xa0;: pas d’estimation</translation>
    </message>
    <message>
        <source>Why the building data changed</source>
        <translation>Pourquoi les données du bâtiment ont changé</translation>
    </message>
    <message>
        <source>No result yet: the first test begins the list.</source>
        <translation>Pas encore de résultat&#xa0;: le premier essai commence la liste.</translation>
    </message>
    <message>
        <source>One test so far: after the next both stand here.</source>
        <translation>Un essai jusqu’ici&#xa0;: après le suivant, les deux figurent ici.</translation>
    </message>
    <message>
        <source>The two tests are being laid over each other.</source>
        <translation>Les deux essais sont en cours de superposition.</translation>
    </message>
    <message>
        <source>Choose the port of the gauge and listen to it.</source>
        <translation>Choisissez le port du manomètre et écoutez-le.</translation>
    </message>
    <message>
        <source>Click the numbers in the line that you need, one after the other, and say what each is.</source>
        <translation>Cliquez l’un après l’autre sur les nombres de la ligne qu’il vous faut, et dites ce qu’est chacun.</translation>
    </message>
    <message>
        <source>My gauge</source>
        <translation>Mon manomètre</translation>
    </message>
    <message>
        <source>Readings of the run, {direction}</source>
        <translation>Lectures de la série, {direction}</translation>
    </message>
    <message>
        <source>shaded: the readings that are averaged</source>
        <translation>ombré&#xa0;: les lectures moyennées</translation>
    </message>
    <message>
        <source>{count} points, from {first} to {last}.</source>
        <translation>{count} points, de {first} à {last}.</translation>
    </message>
    <message>
        <source>a hole between zone and outdoors</source>
        <translation>un trou entre zone et extérieur</translation>
    </message>
    <message>
        <source>a hole between house and zone</source>
        <translation>un trou entre maison et zone</translation>
    </message>
    <message>
        <source>the overhead door of a garage</source>
        <translation>la porte basculante d’un garage</translation>
    </message>
    <message>
        <source>House against outdoors</source>
        <translation>Maison contre extérieur</translation>
    </message>
    <message>
        <source>Zone against outdoors</source>
        <translation>Zone contre extérieur</translation>
    </message>
    <message>
        <source>Zone, with the hole</source>
        <translation>Zone, avec le trou</translation>
    </message>
    <message>
        <source>Fan flow, with the hole</source>
        <translation>Débit du ventilateur, avec le trou</translation>
    </message>
    <message>
        <source>Kept in this job: {names}.</source>
        <translation>Gardé dans ce dossier : {names}.</translation>
    </message>
    <message>
        <source>1  Hold a pressure. Put a tap into the zone (garage, attic, crawl space), all doors to it closed, and read house and zone against outdoors.</source>
        <translation>1  Maintenez une pression. Posez une prise dans la zone (garage, comble, vide sanitaire), toutes ses portes fermées, et lisez maison et zone contre l’extérieur.</translation>
    </message>
    <message>
        <source>2  Read the fan flow too, if the leaks are to be told in numbers.</source>
        <translation>2  Lisez aussi le débit du ventilateur, si les fuites doivent être chiffrées.</translation>
    </message>
    <message>
        <source>3  Open {hole}, so far that the zone moves by 5 Pa; hold the house where it was, and read again.</source>
        <translation>3  Ouvrez {hole}, jusqu’à ce que la zone bouge de 5 Pa&#x202f;; maintenez la maison où elle était, et lisez de nouveau.</translation>
    </message>
    <message>
        <source>4  Close the hole. The result stands below.</source>
        <translation>4  Fermez le trou. Le résultat figure ci-dessous.</translation>
    </message>
    <message>
        <source>{sentence} Read again.</source>
        <translation>{sentence} Lisez de nouveau.</translation>
    </message>
    <message>
        <source>{name}, wanted now</source>
        <translation>{name}, demandé maintenant</translation>
    </message>
    <message>
        <source>{name} in {unit}</source>
        <translation>{name} en {unit}</translation>
    </message>
    <message>
        <source>type it, then Enter</source>
        <translation>saisir, puis Entrée</translation>
    </message>
    <message>
        <source>Readings by hand</source>
        <translation>Lectures à la main</translation>
    </message>
    <message>
        <source>Requirements of the method</source>
        <translation>Exigences de la méthode</translation>
    </message>
    <message>
        <source>Numbers in detail</source>
        <translation>Nombres en détail</translation>
    </message>
    <message>
        <source>Method to look at the result by</source>
        <translation>Méthode selon laquelle voir le résultat</translation>
    </message>
    <message>
        <source>Fit to look at the result by</source>
        <translation>Ajustement selon lequel voir le résultat</translation>
    </message>
    <message>
        <source>Two gauges on one hose</source>
        <translation>Deux manomètres sur un tube</translation>
    </message>
    <message>
        <source>First channel</source>
        <translation>Première voie</translation>
    </message>
    <message>
        <source>Second channel</source>
        <translation>Seconde voie</translation>
    </message>
    <message>
        <source>First gauge</source>
        <translation>Premier manomètre</translation>
    </message>
    <message>
        <source>Second gauge</source>
        <translation>Second manomètre</translation>
    </message>
    <message>
        <source>Keep this check</source>
        <translation>Conserver ce contrôle</translation>
    </message>
    <message>
        <source>Begin anew</source>
        <translation>Recommencer</translation>
    </message>
    <message>
        <source>Points of the check</source>
        <translation>Points du contrôle</translation>
    </message>
    <message>
        <source>Field check</source>
        <translation>Contrôle sur site</translation>
    </message>
    <message>
        <source>Read only: numbers, no names, no photos, and nothing can be done from a phone. It is not encrypted: anybody in the same network could read it. It ends with the window or after four hours. Guest networks often keep phones apart: use the hotspot of laptop or phone. The system may ask once whether this program may listen.</source>
        <translation>Lecture seule&#xa0;: des nombres, ni noms ni photos, et rien ne se commande depuis un téléphone. La page n’est pas chiffrée&#xa0;: quiconque sur le même réseau pourrait la lire. Elle s’arrête avec la fenêtre ou après quatre heures. Les réseaux invités isolent souvent les téléphones&#xa0;: utilisez le partage de connexion. Le système demandera peut-être une fois si ce programme peut accepter des connexions.</translation>
    </message>
    <message>
        <source>The alarm is isolated</source>
        <translation>L’alarme est isolée</translation>
    </message>
    <message>
        <source>The alarm is reinstated</source>
        <translation>L’alarme est remise en service</translation>
    </message>
    <message>
        <source>Minutes of the timer</source>
        <translation>Minutes du minuteur</translation>
    </message>
    <message>
        <source>{value} min</source>
        <translation>{value} min</translation>
    </message>
    <message>
        <source>Start the timer</source>
        <translation>Lancer le minuteur</translation>
    </message>
    <message>
        <source>isolated, still to be reinstated</source>
        <translation>isolée, encore à remettre en service</translation>
    </message>
    <message>
        <source>reinstated</source>
        <translation>remise en service</translation>
    </message>
    <message>
        <source>Stop the timer</source>
        <translation>Arrêter le minuteur</translation>
    </message>
    <message>
        <source>Read now</source>
        <translation>Lire maintenant</translation>
    </message>
    <message>
        <source>Read with the hole</source>
        <translation>Lire avec le trou</translation>
    </message>
    <message>
        <source>Another zone</source>
        <translation>Autre zone</translation>
    </message>
    <message>
        <source>Name of the zone</source>
        <translation>Nom de la zone</translation>
    </message>
    <message>
        <source>Keep in the job</source>
        <translation>Garder dans le dossier</translation>
    </message>
    <message>
        <source>The hole that is added</source>
        <translation>Le trou ajouté</translation>
    </message>
    <message>
        <source>What the zone tells</source>
        <translation>Ce que dit la zone</translation>
    </message>
    <message>
        <source>QR code of the link for the phone</source>
        <translation>Code QR du lien pour le téléphone</translation>
    </message>
    <message>
        <source>On the phone of the person at the leak</source>
        <translation>Sur le téléphone de la personne à la fuite</translation>
    </message>
    <message>
        <source>Address of this machine</source>
        <translation>Adresse de cette machine</translation>
    </message>
    <message>
        <source>Show it on phones</source>
        <translation>Montrer sur les téléphones</translation>
    </message>
    <message>
        <source>On the phone</source>
        <translation>Sur le téléphone</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>1 phone</source>
        <translation>1 téléphone</translation>
    </message>
    <message>
        <source>{count} phones</source>
        <translation>{count} téléphones</translation>
    </message>
    <message>
        <source>off</source>
        <translation>inactif</translation>
    </message>
    <message>
        <source>on: {phones}</source>
        <translation>actif&#xa0;: {phones}</translation>
    </message>
    <message>
        <source>The flow is drawn here while a pressure is held, with the marks (S, D, N, L) and the level between them.</source>
        <translation>Le débit s’affiche ici pendant qu’une pression est maintenue, avec les repères (S, D, N, L) et le niveau entre eux.</translation>
    </message>
    <message>
        <source>Pressure to hold, Pa</source>
        <translation>Pression à maintenir, Pa</translation>
    </message>
    <message>
        <source>Tone</source>
        <translation>Son</translation>
    </message>
    <message>
        <source>A tone that falls as the flow falls</source>
        <translation>Un son qui baisse avec le débit</translation>
    </message>
    <message>
        <source>From afar (F11)</source>
        <translation>De loin (F11)</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Maintenir</translation>
    </message>
    <message>
        <source>What is left to the target</source>
        <translation>Ce qui reste jusqu’à l’objectif</translation>
    </message>
    <message>
        <source>Note (N), kept with the time at which it was begun</source>
        <translation>Remarque (N), avec l’heure où elle a été commencée</translation>
    </message>
    <message>
        <source>Issue</source>
        <translation>Émettre</translation>
    </message>
    <message>
        <source>Version of the report</source>
        <translation>Version du rapport</translation>
    </message>
    <message>
        <source>Who signs</source>
        <translation>Qui signe</translation>
    </message>
    <message>
        <source>Why it is issued again</source>
        <translation>Pourquoi il est émis de nouveau</translation>
    </message>
    <message>
        <source>Sign and issue</source>
        <translation>Signer et émettre</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rétablir</translation>
    </message>
    <message>
        <source>Job sheet</source>
        <translation>Fiche du dossier</translation>
    </message>
    <message>
        <source>Undo: {undo} (Ctrl+Z)</source>
        <translation>Annuler&#xa0;: {undo} (Ctrl+Z)</translation>
    </message>
    <message>
        <source>There is no edit to undo.</source>
        <translation>Il n’y a pas de modification à annuler.</translation>
    </message>
    <message>
        <source>Redo: {redo} (Ctrl+Shift+Z)</source>
        <translation>Rétablir&#xa0;: {redo} (Ctrl+Maj+Z)</translation>
    </message>
    <message>
        <source>There is no edit to redo.</source>
        <translation>Il n’y a pas de modification à rétablir.</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Fiche</translation>
    </message>
    <message>
        <source>Rooms</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Find a job</source>
        <translation>Chercher un dossier</translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <translation>Choisir le répertoire</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Chercher de nouveau</translation>
    </message>
    <message>
        <source>Street, client, number, date, stage or file name</source>
        <translation>Rue, client, numéro, date, étape ou nom de fichier</translation>
    </message>
    <message>
        <source>Words to look for</source>
        <translation>Mots à chercher</translation>
    </message>
    <message>
        <source>Jobs</source>
        <translation>Dossiers</translation>
    </message>
    <message>
        <source>Open the job</source>
        <translation>Ouvrir le dossier</translation>
    </message>
    <message>
        <source>Table as CSV</source>
        <translation>Tableau en CSV</translation>
    </message>
    <message>
        <source>All tables as CSV</source>
        <translation>Tous les tableaux en CSV</translation>
    </message>
    <message>
        <source>The trainer&apos;s machine gives you a simulated house with a gauge and a fan. Your name brings you back to the same house; it also stands on your sheet.</source>
        <translation>La machine du formateur vous donne une maison simulée avec un manomètre et un ventilateur. Votre nom vous ramène à la même maison&#x202f;; il figure aussi sur votre fiche.</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Votre nom</translation>
    </message>
    <message>
        <source>Join the class</source>
        <translation>Rejoindre le cours</translation>
    </message>
    <message>
        <source>Host and port</source>
        <translation>Hôte et port</translation>
    </message>
    <message>
        <source>The task of the class</source>
        <translation>La tâche du cours</translation>
    </message>
    <message>
        <source>{title}, {minutes} minutes</source>
        <translation>{title}, {minutes} minutes</translation>
    </message>
    <message>
        <source>Back (F1)</source>
        <translation>Retour (F1)</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Attention</translation>
    </message>
    <message>
        <source>No leak is listed. L adds one while you hold the pressure; it can be described later.</source>
        <translation>Aucune fuite n’est notée. L en ajoute une pendant que vous maintenez la pression&#x202f;; vous pourrez la décrire plus tard.</translation>
    </message>
    <message>
        <source>New leak (L)</source>
        <translation>Nouvelle fuite (L)</translation>
    </message>
    <message>
        <source>For each trade…</source>
        <translation>Par corps d’état…</translation>
    </message>
    <message>
        <source>Done today…</source>
        <translation>Fait ce jour…</translation>
    </message>
    <message>
        <source>The leak</source>
        <translation>La fuite</translation>
    </message>
    <message>
        <source>Photo…</source>
        <translation>Photo…</translation>
    </message>
    <message>
        <source>Plan…</source>
        <translation>Plan…</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Coller</translation>
    </message>
    <message>
        <source>Picture before</source>
        <translation>Image précédente</translation>
    </message>
    <message>
        <source>Next picture</source>
        <translation>Image suivante</translation>
    </message>
    <message>
        <source>{at} of {count}</source>
        <translation>{at} sur {count}</translation>
    </message>
    <message>
        <source>It sends or answers lines</source>
        <translation>Il envoie ou répond des lignes</translation>
    </message>
    <message>
        <source>Modbus registers</source>
        <translation>Registres Modbus</translation>
    </message>
    <message>
        <source>Place of the limits</source>
        <translation>Lieu des limites</translation>
    </message>
    <message>
        <source>Limits to hold the result against</source>
        <translation>Limites auxquelles comparer le résultat</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Ensuite</translation>
    </message>
    <message>
        <source>I have read it</source>
        <translation>J’ai lu</translation>
    </message>
    <message>
        <source>{rest} more</source>
        <translation>{rest} autres</translation>
    </message>
    <message>
        <source>No command has these words.</source>
        <translation>Aucune commande ne contient ces mots.</translation>
    </message>
    <message>
        <source>Find a command</source>
        <translation>Chercher une commande</translation>
    </message>
    <message>
        <source>Type a word of the command</source>
        <translation>Saisissez un mot de la commande</translation>
    </message>
    <message>
        <source>Words of the command</source>
        <translation>Mots de la commande</translation>
    </message>
    <message>
        <source>Commands</source>
        <translation>Commandes</translation>
    </message>
    <message>
        <source>Stop the fan</source>
        <translation>Arrêter le ventilateur</translation>
    </message>
    <message>
        <source>Stop the fan, at once (Esc)</source>
        <translation>Arrêter le ventilateur, aussitôt (Échap)</translation>
    </message>
    <message>
        <source>STOP FAN</source>
        <translation>ARRÊT</translation>
    </message>
    <message>
        <source>A photo or a plan: from a file, pasted, or dropped here. A click sets a pin.</source>
        <translation>Une photo ou un plan&#xa0;: d’un fichier, collé ou déposé ici. Un clic pose un repère.</translation>
    </message>
    <message>
        <source>Photo with pins</source>
        <translation>Photo avec repères</translation>
    </message>
    <message>
        <source>Name of the channel</source>
        <translation>Nom de la voie</translation>
    </message>
    <message>
        <source>What the number is</source>
        <translation>Ce qu’est le nombre</translation>
    </message>
    <message>
        <source>Its unit</source>
        <translation>Son unité</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Test on show</source>
        <translation>Essai montré</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Montrer</translation>
    </message>
    <message>
        <source>Show the points</source>
        <translation>Montrer les points</translation>
    </message>
    <message>
        <source>Points, {title}</source>
        <translation>Points, {title}</translation>
    </message>
    <message>
        <source>Restore the point</source>
        <translation>Reprendre le point</translation>
    </message>
    <message>
        <source>Restore the points</source>
        <translation>Reprendre les points</translation>
    </message>
    <message>
        <source>Strike the point…</source>
        <translation>Écarter le point…</translation>
    </message>
    <message>
        <source>Strike the points…</source>
        <translation>Écarter les points…</translation>
    </message>
    <message>
        <source>Take the point again</source>
        <translation>Mesurer de nouveau le point</translation>
    </message>
    <message>
        <source>Correct the flow range…</source>
        <translation>Corriger la gamme de débit…</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Raison</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>année-mois-jour</translation>
    </message>
    <message>
        <source>Add something at the left; what is known of it and its calibration is typed here.</source>
        <translation>Ajoutez quelque chose à gauche&#x202f;; ce que l’on en sait, et son étalonnage, se saisit ici.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Numéro de série</translation>
    </message>
    <message>
        <source>Profile</source>
        <translation>Profil</translation>
    </message>
    <message>
        <source>Calibrated on</source>
        <translation>Étalonné le</translation>
    </message>
    <message>
        <source>Good for</source>
        <translation>Valable pour</translation>
    </message>
    <message>
        <source>Due on, where the certificate says</source>
        <translation>Échéance, si le certificat la dit</translation>
    </message>
    <message>
        <source>Laboratory</source>
        <translation>Laboratoire</translation>
    </message>
    <message>
        <source>Schemes with another term</source>
        <translation>Programmes à autre délai</translation>
    </message>
    <message>
        <source>Correction measured on</source>
        <translation>Correction mesurée le</translation>
    </message>
    <message>
        <source>Correction of the pressures shown</source>
        <translation>Correction des pressions affichées</translation>
    </message>
    <message>
        <source>Name on its sheet</source>
        <translation>Nom sur sa fiche</translation>
    </message>
    <message>
        <source>Kind of curve</source>
        <translation>Type de courbe</translation>
    </message>
    <message>
        <source>Valid from</source>
        <translation>Valable de</translation>
    </message>
    <message>
        <source>Valid to</source>
        <translation>Valable à</translation>
    </message>
    <message>
        <source>from the months</source>
        <translation>d’après les mois</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>name months; …</source>
        <translation>nom mois&#x202f;; …</translation>
    </message>
    <message>
        <source>the day of the calibration</source>
        <translation>le jour de l’étalonnage</translation>
    </message>
    <message>
        <source>shown true; … in Pa, such as 0 0; 50 50.4</source>
        <translation>affiché vrai&#x202f;; … en Pa, comme 0 0; 50 50.4</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Étalonnage</translation>
    </message>
    <message>
        <source>Remove the range</source>
        <translation>Retirer la plage</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Équipement</translation>
    </message>
    <message>
        <source>Keep a certificate file</source>
        <translation>Conserver un certificat</translation>
    </message>
    <message>
        <source>Add a flow range</source>
        <translation>Ajouter une plage</translation>
    </message>
    <message>
        <source>Take into the rig</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>Flow ranges, from their calibration sheets</source>
        <translation>Plages de débit, d’après leurs fiches d’étalonnage</translation>
    </message>
    <message>
        <source>Take back: {undo}</source>
        <translation>Annuler&#xa0;: {undo}</translation>
    </message>
    <message>
        <source>There is nothing to take back</source>
        <translation>Il n’y a rien à annuler</translation>
    </message>
    <message>
        <source>Certificate: {certificate}</source>
        <translation>Certificat&#xa0;: {certificate}</translation>
    </message>
    <message>
        <source>No certificate file is kept.</source>
        <translation>Aucun certificat n’est conservé.</translation>
    </message>
    <message>
        <source>Item of the register</source>
        <translation>Élément du registre</translation>
    </message>
    <message>
        <source>What to add</source>
        <translation>Ce qui est ajouté</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Ajouter</translation>
    </message>
    <message>
        <source>Add equipment</source>
        <translation>Ajouter un équipement</translation>
    </message>
    <message>
        <source>Check two gauges on one hose</source>
        <translation>Contrôler deux manomètres sur un tube</translation>
    </message>
    <message>
        <source>Equipment register</source>
        <translation>Registre des appareils</translation>
    </message>
    <message>
        <source>Page {number} of {count} of the report</source>
        <translation>Page {number} sur {count} du rapport</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Ce qui manque</translation>
    </message>
    <message>
        <source>Nothing is missing.</source>
        <translation>Rien ne manque.</translation>
    </message>
    <message>
        <source>Once there is a report, what it lacks is listed here.</source>
        <translation>Dès qu’il y a un rapport, ce qui lui manque figure ici.</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Saisir</translation>
    </message>
    <message>
        <source>Enter it. {sentence}</source>
        <translation>Saisir. {sentence}</translation>
    </message>
    <message>
        <source>Test of the report</source>
        <translation>Essai du rapport</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Écrire le PDF</translation>
    </message>
    <message>
        <source>CSV</source>
        <translation>CSV</translation>
    </message>
    <message>
        <source>JSON</source>
        <translation>JSON</translation>
    </message>
    <message>
        <source>HPXML</source>
        <translation>HPXML</translation>
    </message>
    <message>
        <source>the tables as CSV</source>
        <translation>les tableaux en CSV</translation>
    </message>
    <message>
        <source>the test as JSON</source>
        <translation>l’essai en JSON</translation>
    </message>
    <message>
        <source>the air infiltration as HPXML</source>
        <translation>l’infiltration d’air en HPXML</translation>
    </message>
    <message>
        <source>Export {words}</source>
        <translation>Exporter {words}</translation>
    </message>
    <message>
        <source>Leaks by trade…</source>
        <translation>Par métier…</translation>
    </message>
    <message>
        <source>Save a page of leaks for each trade, with photos and pins</source>
        <translation>Enregistrer une page de fuites pour chaque corps d’état, avec photos et repères</translation>
    </message>
    <message>
        <source>Save what was sealed today, before and after</source>
        <translation>Enregistrer ce qui a été étanché aujourd’hui, avant et après</translation>
    </message>
    <message>
        <source>Save, issue, and what is missing</source>
        <translation>Enregistrer, émettre, et ce qui manque</translation>
    </message>
    <message>
        <source>As it will be saved</source>
        <translation>Tel qu’il sera enregistré</translation>
    </message>
    <message>
        <source>The page is being set…</source>
        <translation>La page est en composition…</translation>
    </message>
    <message>
        <source>What the report is written in, whatever the language of the window.</source>
        <translation>La langue du rapport, quelle que soit celle de la fenêtre.</translation>
    </message>
    <message>
        <source>An issued report keeps its language.</source>
        <translation>Un rapport émis garde sa langue.</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>non utilisé</translation>
    </message>
    <message>
        <source>Serial number that must answer</source>
        <translation>Numéro de série qui doit répondre</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Port</translation>
    </message>
    <message>
        <source>Role of channel {name}</source>
        <translation>Rôle de la voie {name}</translation>
    </message>
    <message>
        <source>Name of the rig</source>
        <translation>Nom de l’appareillage</translation>
    </message>
    <message>
        <source>Flow range in use</source>
        <translation>Plage de débit montée</translation>
    </message>
    <message>
        <source>The fan closes by itself at rest; nobody covers it</source>
        <translation>Le ventilateur se ferme seul à l’arrêt&#x202f;; personne ne le couvre</translation>
    </message>
    <message>
        <source>Profile of the instrument to add</source>
        <translation>Profil de l’appareil à ajouter</translation>
    </message>
    <message>
        <source>Add an instrument</source>
        <translation>Ajouter un appareil</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Appareils</translation>
    </message>
    <message>
        <source>Rig sheet</source>
        <translation>Fiche de l’appareillage</translation>
    </message>
    <message>
        <source>such as garage or attic</source>
        <translation>comme garage ou comble</translation>
    </message>
    <message>
        <source>Flow range in use on {drive}</source>
        <translation>Plage de débit montée sur {drive}</translation>
    </message>
    <message>
        <source>Name of the zone of “{role}”</source>
        <translation>Nom de la zone de «&#xa0;{role}&#xa0;»</translation>
    </message>
    <message>
        <source>Copy: {text}</source>
        <translation>Copier&#xa0;: {text}</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copier</translation>
    </message>
    <message>
        <source>Connected</source>
        <translation>Connecté</translation>
    </message>
    <message>
        <source>What the channels read now</source>
        <translation>Ce que lisent les voies</translation>
    </message>
    <message>
        <source>Links and channels</source>
        <translation>Liaisons et voies</translation>
    </message>
    <message>
        <source>Simulated house</source>
        <translation>Maison simulée</translation>
    </message>
    <message>
        <source>Own instruments</source>
        <translation>Propres appareils</translation>
    </message>
    <message>
        <source>Teach a gauge</source>
        <translation>Apprendre un appareil</translation>
    </message>
    <message>
        <source>Join a class</source>
        <translation>Rejoindre un cours</translation>
    </message>
    <message>
        <source>Find instruments</source>
        <translation>Chercher les appareils</translation>
    </message>
    <message>
        <source>Ask at every port who is there; only questions are sent</source>
        <translation>Demander à chaque port qui est là&#x202f;; seules des questions sont envoyées</translation>
    </message>
    <message>
        <source>Look for ports</source>
        <translation>Chercher les ports</translation>
    </message>
    <message>
        <source>Save as rig file</source>
        <translation>Enregistrer en fichier</translation>
    </message>
    <message>
        <source>Choose a rig</source>
        <translation>Choisir un appareillage</translation>
    </message>
    <message>
        <source>✓ connected</source>
        <translation>✓ connectée</translation>
    </message>
    <message>
        <source>{factor} times as fast as real time</source>
        <translation>{factor} fois plus vite que le temps réel</translation>
    </message>
    <message>
        <source>Invented houses that leak, with wind, fan and gauges. They run the real program.</source>
        <translation>Maisons inventées qui fuient, avec vent, ventilateur et manomètres. Le programme est le vrai.</translation>
    </message>
    <message>
        <source>Simulated houses</source>
        <translation>Maisons simulées</translation>
    </message>
    <message>
        <source>A recorded test becomes an instrument: its readings come again, each at its time, with its marks. It is kept in a job of its own beside the recorded one. No fan turns.</source>
        <translation>Un essai enregistré devient un instrument&#xa0;: ses lectures reviennent à leur heure, avec ses repères, dans un dossier à part. Aucun ventilateur ne tourne.</translation>
    </message>
    <message>
        <source>No job is chosen.</source>
        <translation>Aucun dossier n’est choisi.</translation>
    </message>
    <message>
        <source>Choose a job…</source>
        <translation>Choisir un dossier…</translation>
    </message>
    <message>
        <source>Recorded test</source>
        <translation>Essai enregistré</translation>
    </message>
    <message>
        <source>How many times faster than real time</source>
        <translation>Combien de fois plus vite que le temps réel</translation>
    </message>
    <message>
        <source>Play it back</source>
        <translation>Rejouer</translation>
    </message>
    <message>
        <source>Speed against real time</source>
        <translation>Vitesse par rapport au temps réel</translation>
    </message>
    <message>
        <source>Surfaces around them</source>
        <translation>Surfaces qui les entourent</translation>
    </message>
    <message>
        <source>No room yet. Add one (Insert), or paste from a spreadsheet: name, floor area, height, volume.</source>
        <translation>Pas encore de pièce. Ajoutez-en une (Inser), ou collez depuis un tableur&#xa0;: nom, surface, hauteur, volume.</translation>
    </message>
    <message>
        <source>No surface yet. Add one (Insert), or paste from a spreadsheet: name, area, what it adjoins.</source>
        <translation>Pas encore de surface. Ajoutez-en une (Inser), ou collez depuis un tableur&#xa0;: nom, surface, sur quoi elle donne.</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Compte</translation>
    </message>
    <message>
        <source>Floor area by height. Type a volume to put it in its place.</source>
        <translation>Surface par hauteur. Saisissez un volume pour le remplacer.</translation>
    </message>
    <message>
        <source>How it was measured</source>
        <translation>Mode de mesure</translation>
    </message>
    <message>
        <source>Sums and versions</source>
        <translation>Sommes et versions</translation>
    </message>
    <message>
        <source>None is kept yet. A test keeps its own sizes.</source>
        <translation>Aucune n’est encore conservée. Un essai garde ses propres cotes.</translation>
    </message>
    <message>
        <source>What it adds up to</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>Versions</source>
        <translation>Versions</translation>
    </message>
    <message>
        <source>Name, such as: as built</source>
        <translation>Nom, comme&#xa0;: tel que construit</translation>
    </message>
    <message>
        <source>Name of the version</source>
        <translation>Nom de la version</translation>
    </message>
    <message>
        <source>Reason of the version</source>
        <translation>Raison de la version</translation>
    </message>
    <message>
        <source>Keep this version</source>
        <translation>Conserver cette version</translation>
    </message>
    <message>
        <source>Port of the instrument</source>
        <translation>Port de l’appareil</translation>
    </message>
    <message>
        <source>Wire</source>
        <translation>Liaison</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Vitesse</translation>
    </message>
    <message>
        <source>Parity</source>
        <translation>Parité</translation>
    </message>
    <message>
        <source>First register</source>
        <translation>Premier registre</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Combien</translation>
    </message>
    <message>
        <source>Read the registers</source>
        <translation>Lire les registres</translation>
    </message>
    <message>
        <source>such as 21.3</source>
        <translation>comme 21.3</translation>
    </message>
    <message>
        <source>What its display shows</source>
        <translation>Ce que montre l’afficheur</translation>
    </message>
    <message>
        <source>Readings of the registers</source>
        <translation>Lectures des registres</translation>
    </message>
    <message>
        <source>Name of the profile</source>
        <translation>Nom du profil</translation>
    </message>
    <message>
        <source>Save the profile and use it</source>
        <translation>Enregistrer le profil et l’utiliser</translation>
    </message>
    <message>
        <source>What its display shows now</source>
        <translation>Ce que montre maintenant l’afficheur</translation>
    </message>
    <message>
        <source>Teach a Modbus instrument</source>
        <translation>Apprendre un appareil Modbus</translation>
    </message>
    <message>
        <source>Choose a picture</source>
        <translation>Choisir une image</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>Photo ({photos})</source>
        <translation>Photo ({photos})</translation>
    </message>
    <message>
        <source>Add a photo: {text}</source>
        <translation>Ajouter une photo&#xa0;: {text}</translation>
    </message>
    <message>
        <source>Before the fan starts</source>
        <translation>Avant que le ventilateur démarre</translation>
    </message>
    <message>
        <source>Openings</source>
        <translation>Ouvertures</translation>
    </message>
    <message>
        <source>Seal board</source>
        <translation>Obturations</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Remise en état</translation>
    </message>
    <message>
        <source>Write why there is no test</source>
        <translation>Écrire pourquoi il n’y a pas d’essai</translation>
    </message>
    <message>
        <source>Where a temporary seal is, such as: dryer outlet</source>
        <translation>Où est une obturation, comme&#xa0;: sortie du sèche-linge</translation>
    </message>
    <message>
        <source>Reason, where something is left as it is</source>
        <translation>Raison, si quelque chose est laissé tel quel</translation>
    </message>
    <message>
        <source>Name of the second person</source>
        <translation>Nom de la deuxième personne</translation>
    </message>
    <message>
        <source>Looked over</source>
        <translation>Revu</translation>
    </message>
    <message>
        <source>Set-up of the building</source>
        <translation>Préparation du bâtiment</translation>
    </message>
    <message>
        <source>Every temporary seal is entered once, and ticked off when it is taken off again.</source>
        <translation>Chaque obturation est notée une fois, et cochée quand elle est retirée.</translation>
    </message>
    <message>
        <source>Nobody else looked it over yet. A second pair of eyes finds most.</source>
        <translation>Personne d’autre ne l’a encore revu. Un second regard trouve le plus.</translation>
    </message>
    <message>
        <source>Second person, client</source>
        <translation>Deuxième personne, client</translation>
    </message>
    <message>
        <source>Preparation sheet for the client</source>
        <translation>Fiche de préparation pour le client</translation>
    </message>
    <message>
        <source>Results of all stages against their targets</source>
        <translation>Résultats de toutes les étapes et leurs objectifs</translation>
    </message>
    <message>
        <source>All stages</source>
        <translation>Toutes les étapes</translation>
    </message>
    <message>
        <source>Earlier test</source>
        <translation>Essai antérieur</translation>
    </message>
    <message>
        <source>Later test</source>
        <translation>Essai ultérieur</translation>
    </message>
    <message>
        <source>What changed on site</source>
        <translation>Ce qui a changé sur le chantier</translation>
    </message>
    <message>
        <source>What changed on site before the later test</source>
        <translation>Ce qui a changé sur le chantier avant l’essai ultérieur</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Conserver</translation>
    </message>
    <message>
        <source>Between the two tests</source>
        <translation>Entre les deux essais</translation>
    </message>
    <message>
        <source>Stages against their targets</source>
        <translation>Étapes et leurs objectifs</translation>
    </message>
    <message>
        <source>Results of all stages</source>
        <translation>Résultats de toutes les étapes</translation>
    </message>
    <message>
        <source>Between two tests</source>
        <translation>Entre deux essais</translation>
    </message>
    <message>
        <source>dot and bar: result with its 95 % interval, {unit}; upright mark: target</source>
        <translation>point et barre&#xa0;: résultat avec son intervalle à 95 %, {unit}&#x202f;; trait vertical&#xa0;: objectif</translation>
    </message>
    <message>
        <source>A line of the gauge: click its numbers</source>
        <translation>Une ligne du manomètre&#xa0;: cliquez sur ses nombres</translation>
    </message>
    <message>
        <source>Port of the gauge</source>
        <translation>Port du manomètre</translation>
    </message>
    <message>
        <source>empty: it sends by itself</source>
        <translation>vide&#xa0;: il envoie seul</translation>
    </message>
    <message>
        <source>What it is asked, if it only answers</source>
        <translation>Ce qu’on lui demande, s’il ne fait que répondre</translation>
    </message>
    <message>
        <source>Listen</source>
        <translation>Écouter</translation>
    </message>
    <message>
        <source>What came over the wire, as text and as bytes</source>
        <translation>Ce qui est venu par la liaison, en texte et en octets</translation>
    </message>
    <message>
        <source>Asked with</source>
        <translation>Demande</translation>
    </message>
    <message>
        <source>What came, as text and as bytes</source>
        <translation>Ce qui est venu, en texte et en octets</translation>
    </message>
    <message>
        <source>Corrections, line by line</source>
        <translation>Corrections, ligne par ligne</translation>
    </message>
    <message>
        <source>Support</source>
        <translation>Assistance</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Ce qui s’est passé</translation>
    </message>
    <message>
        <source>Add the job that is open; it holds names, addresses and photos</source>
        <translation>Ajouter le dossier ouvert&#x202f;; il contient noms, adresses et photos</translation>
    </message>
    <message>
        <source>Copy the text</source>
        <translation>Copier le texte</translation>
    </message>
    <message>
        <source>Save a bundle for support</source>
        <translation>Enregistrer un paquet pour l’assistance</translation>
    </message>
    <message>
        <source>A bundle holds: {names}. It is written where you say; nothing is sent by itself.</source>
        <translation>Un paquet contient&#xa0;: {names}. Il est écrit où vous le dites&#x202f;; rien n’est envoyé tout seul.</translation>
    </message>
    <message>
        <source>Type in a hand-written test</source>
        <translation>Saisir un essai noté à la main</translation>
    </message>
    <message>
        <source>Day and time on the sheet</source>
        <translation>Jour et heure sur la feuille</translation>
    </message>
    <message>
        <source>Seconds that each was averaged</source>
        <translation>Secondes de moyenne pour chacun</translation>
    </message>
    <message>
        <source>Keep as a test</source>
        <translation>Conserver comme essai</translation>
    </message>
    <message>
        <source>One line for each point: pressure in Pa and flow in {unit}, with tab, semicolon or blanks between. Building, air, method and stage are those of the Job place. The test is marked as typed.</source>
        <translation>Une ligne par point&#xa0;: pression en Pa et débit en {unit}, séparés par une tabulation, un point-virgule ou des espaces. Bâtiment, air, méthode et étape sont ceux du Dossier. L’essai est marqué comme saisi.</translation>
    </message>
    <message>
        <source>Points, {way}</source>
        <translation>Points, {way}</translation>
    </message>
    <message>
        <source>Zero-flow pressure after, Pa</source>
        <translation>Pression à débit nul après, Pa</translation>
    </message>
    <message>
        <source>Zero-flow pressure before, Pa</source>
        <translation>Pression à débit nul avant, Pa</translation>
    </message>
    <message>
        <source>A double click on a job file (*{ending}) opens it with this program.</source>
        <translation>Un double clic sur un fichier de dossier (*{ending}) l’ouvre avec ce programme.</translation>
    </message>
    <message>
        <source>Job files are no longer opened with this program by a double click.</source>
        <translation>Les fichiers de dossier ne s’ouvrent plus par double clic avec ce programme.</translation>
    </message>
    <message>
        <source>Play back a job</source>
        <translation>Rejouer un dossier</translation>
    </message>
    <message>
        <source>{name} holds no test that has ended.</source>
        <translation>{name} ne contient aucun essai terminé.</translation>
    </message>
    <message>
        <source>{name} cannot be played back: {error}.</source>
        <translation>{name} ne peut pas être rejoué&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>The test cannot be played back: {error}.</source>
        <translation>L’essai ne peut pas être rejoué&#xa0;: {error}.</translation>
    </message>
    <message>
        <source>The test was not played back to its end.</source>
        <translation>L’essai n’a pas été rejoué jusqu’à la fin.</translation>
    </message>
    <message>
        <source>Played back: the result is the same to the digit as in the record.</source>
        <translation>Rejoué&#xa0;: le résultat est au chiffre près celui de l’enregistrement.</translation>
    </message>
    <message>
        <source>Played back: the result is not that of the record.</source>
        <translation>Rejoué&#xa0;: le résultat n’est pas celui de l’enregistrement.</translation>
    </message>
    <message>
        <source>Read it again</source>
        <translation>La relire</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Plus tard</translation>
    </message>
    <message>
        <source>The temperatures are no longer those at which it was read.</source>
        <translation>Les températures ne sont plus celles de cette lecture.</translation>
    </message>
    <message>
        <source>The wind is no longer that in which it was read.</source>
        <translation>Le vent n’est plus celui de cette lecture.</translation>
    </message>
    <message>
        <source>zero-flow pressure just read</source>
        <translation>pression à débit nul lue à l’instant</translation>
    </message>
    <message>
        <source>zero-flow pressure {minutes} min old</source>
        <translation>pression à débit nul lue il y a {minutes} min</translation>
    </message>
    <message>
        <source>It was read {minutes} min ago.</source>
        <translation>Elle a été lue il y a {minutes} min.</translation>
    </message>
    <message>
        <source>The zero-flow pressure has become old</source>
        <translation>La pression à débit nul a vieilli</translation>
    </message>
    <message>
        <source>It may have moved by {moved}, which looks like {worth}: the intervals carry that.</source>
        <translation>Elle a pu bouger de {moved}, ce qui ressemble à {worth}&#xa0;: les intervalles en tiennent compte.</translation>
    </message>
    <message>
        <source>The fan stops for about a minute. Marks and drops stay; by what it has moved the flows are put right.</source>
        <translation>Le ventilateur s’arrête environ une minute. Repères et baisses restent&#x202f;; les débits sont corrigés de ce qui a bougé.</translation>
    </message>
    <message>
        <source>everything off</source>
        <translation>tout arrêté</translation>
    </message>
    <message>
        <source>kitchen hood</source>
        <translation>hotte de cuisine</translation>
    </message>
    <message>
        <source>bath fan</source>
        <translation>extracteur de salle de bains</translation>
    </message>
    <message>
        <source>dryer</source>
        <translation>sèche-linge</translation>
    </message>
    <message>
        <source>all exhaust fans</source>
        <translation>tous les ventilateurs d’extraction</translation>
    </message>
    <message>
        <source>all exhaust fans, inside doors shut</source>
        <translation>tous les ventilateurs d’extraction, portes intérieures fermées</translation>
    </message>
    <message>
        <source>A test runs or a pressure is held: end it first. Here the test fan is off and covered.</source>
        <translation>Un essai est en cours ou une pression est maintenue : y mettre fin d’abord. Ici, le ventilateur d’essai est arrêté et couvert.</translation>
    </message>
    <message>
        <source>Connect the gauge that reads indoors against outdoors, its hose in the room of the appliance.</source>
        <translation>Connecter le manomètre qui mesure l’intérieur par rapport à l’extérieur, son tuyau dans la pièce de l’appareil.</translation>
    </message>
    <message>
        <source>Close windows and outside doors, cover the test fan, switch every fan and appliance off. Wait until the pressure stands, then read: the last {seconds} s count.</source>
        <translation>Fermer fenêtres et portes extérieures, couvrir le ventilateur d’essai, arrêter tous les ventilateurs et appareils. Attendre que la pression se stabilise, puis relever : les {seconds} dernières secondes comptent.</translation>
    </message>
    <message>
        <source>Switch on, wait until the pressure stands, then read: the last {seconds} s count.</source>
        <translation>Mettre en marche, attendre que la pression se stabilise, puis relever : les {seconds} dernières secondes comptent.</translation>
    </message>
    <message>
        <source>Worst case of the exhaust fans</source>
        <translation>Pire cas des ventilateurs d’extraction</translation>
    </message>
    <message>
        <source>Pressure indoors against outdoors</source>
        <translation>Pression intérieure par rapport à l’extérieur</translation>
    </message>
    <message>
        <source>What is on</source>
        <translation>Ce qui fonctionne</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Relever</translation>
    </message>
    <message>
        <source>What it tells</source>
        <translation>Ce que cela indique</translation>
    </message>
    <message>
        <source>Indoors against outdoors</source>
        <translation>Intérieur par rapport à l’extérieur</translation>
    </message>
    <message>
        <source>Open a job first: the readings are kept in it.</source>
        <translation>Ouvrir d’abord un dossier : les relevés y sont conservés.</translation>
    </message>
    <message>
        <source>Read the pressure with everything off first.</source>
        <translation>Relever d’abord la pression, tout étant arrêté.</translation>
    </message>
    <message>
        <source>The test is complete. Put the building back: seals off, flames on, dampers and alarms as they were.</source>
        <translation>L’essai est complet. Remettez le bâtiment en état&#xa0;: obturations retirées, flammes rallumées, clapets et alarmes comme avant.</translation>
    </message>
    <message>
        <source>The test has ended before it was complete; what was read is kept.</source>
        <translation>L’essai s’est arrêté avant d’être complet&#x202f;; ce qui a été lu est conservé.</translation>
    </message>
    <message>
        <source>Ready to test.</source>
        <translation>Prêt pour l’essai.</translation>
    </message>
    <message>
        <source>Waiting for the instruments to answer.</source>
        <translation>En attente de la réponse des appareils.</translation>
    </message>
    <message>
        <source>Waiting for the building to come to rest.</source>
        <translation>En attente que le bâtiment se stabilise.</translation>
    </message>
    <message>
        <source>Reading the zero-flow pressure before the points: {progress}. Keep the fan covered.</source>
        <translation>Lecture de la pression à débit nul avant les points&#xa0;: {progress}. Gardez le ventilateur couvert.</translation>
    </message>
    <message>
        <source>Reading the zero-flow pressure again: {progress}. Keep the fan covered.</source>
        <translation>Nouvelle lecture de la pression à débit nul&#xa0;: {progress}. Gardez le ventilateur couvert.</translation>
    </message>
    <message>
        <source>Raising the fan gently towards {goal}. Watch sheeting and ceilings.</source>
        <translation>Le ventilateur monte doucement vers {goal}. Surveillez films et plafonds.</translation>
    </message>
    <message>
        <source>Fan at full speed towards {goal}. Look for an open window or door.</source>
        <translation>Ventilateur à plein régime vers {goal}. Cherchez une fenêtre ou une porte ouverte.</translation>
    </message>
    <message>
        <source>Going to {goal}; waiting until the pressure stands.</source>
        <translation>En route vers {goal}&#x202f;; attente d’une pression stable.</translation>
    </message>
    <message>
        <source>Holding {goal}, averaging: {progress}. Keep doors and windows closed.</source>
        <translation>{goal} maintenus, moyenne en cours&#xa0;: {progress}. Gardez portes et fenêtres fermées.</translation>
    </message>
    <message>
        <source>Holding {goal}. Seal, look, or ask for another pressure.</source>
        <translation>{goal} maintenus. Colmatez, cherchez, ou demandez une autre pression.</translation>
    </message>
    <message>
        <source>Bringing the fan to rest.</source>
        <translation>Le ventilateur est mis à l’arrêt.</translation>
    </message>
    <message>
        <source>Going on to the next step.</source>
        <translation>Passage à l’étape suivante.</translation>
    </message>
    <message>
        <source>{done} s of {whole} s</source>
        <translation>{done} s sur {whole} s</translation>
    </message>
    <message>
        <source>The point is begun again.</source>
        <translation>Le point est recommencé.</translation>
    </message>
    <message>
        <source>The test goes on from the beginning of the interrupted step.</source>
        <translation>L’essai reprend au début de l’étape interrompue.</translation>
    </message>
    <message>
        <source>The fan is at rest.</source>
        <translation>Le ventilateur est à l’arrêt.</translation>
    </message>
    <message>
        <source>Turn the fan off.</source>
        <translation>Éteignez le ventilateur.</translation>
    </message>
    <message>
        <source>The test was ended before it began.</source>
        <translation>L’essai a été terminé avant de commencer.</translation>
    </message>
    <message>
        <source>The test was ended by hand; what was read is kept.</source>
        <translation>L’essai a été terminé à la main&#x202f;; ce qui a été lu est conservé.</translation>
    </message>
    <message>
        <source>The gauge went silent; the record begins again.</source>
        <translation>Le manomètre s’est tu&#x202f;; l’enregistrement recommence.</translation>
    </message>
    <message>
        <source>Go on today</source>
        <translation>Continuer aujourd’hui</translation>
    </message>
    <message>
        <source>Cover it each time</source>
        <translation>Le couvrir chaque fois</translation>
    </message>
    <message>
        <source>Leave these records out</source>
        <translation>Omettre ces relevés</translation>
    </message>
    <message>
        <source>It is mended: check again</source>
        <translation>C’est réparé&#xa0;: revérifier</translation>
    </message>
    <message>
        <source>Go on all the same</source>
        <translation>Continuer quand même</translation>
    </message>
    <message>
        <source>All of this is so</source>
        <translation>Tout est ainsi</translation>
    </message>
    <message>
        <source>Do not test</source>
        <translation>Ne pas essayer</translation>
    </message>
    <message>
        <source>Before the fan starts: every flame is out and nothing can fire by itself; ashes are cold, removed or covered; no asbestos, mould or loose sheeting lies in the path of the air; everybody in the building knows of the test.</source>
        <translation>Avant que le ventilateur démarre&#xa0;: toute flamme est éteinte et rien ne peut s’allumer seul&#x202f;; les cendres sont froides, enlevées ou couvertes&#x202f;; ni amiante, ni moisissure, ni film libre sur le passage de l’air&#x202f;; tous dans le bâtiment savent qu’un essai a lieu.</translation>
    </message>
    <message>
        <source>The fan can draw flue gas into rooms and lift ceilings and sheeting. Local codes and licensed practice decide who may do this and how; this list does not replace them.</source>
        <translation>Le ventilateur peut aspirer des fumées dans les pièces et soulever plafonds et films. Les règles locales et la pratique agréée décident qui peut le faire et comment&#x202f;; cette liste ne les remplace pas.</translation>
    </message>
    <message>
        <source>The safety questions were answered: do not test.</source>
        <translation>Les questions de sécurité ont leur réponse&#xa0;: pas d’essai.</translation>
    </message>
    <message>
        <source>Cover the fan so that no air can pass through it.</source>
        <translation>Couvrez le ventilateur pour qu’aucun air ne le traverse.</translation>
    </message>
    <message>
        <source>The fan is covered</source>
        <translation>Le ventilateur est couvert</translation>
    </message>
    <message>
        <source>{doubts} Go on today?</source>
        <translation>{doubts} Continuer aujourd’hui&#x202f;?</translation>
    </message>
    <message>
        <source>The test was ended before the points: today is not the day.</source>
        <translation>L’essai a été terminé avant les points&#xa0;: ce n’est pas le bon jour.</translation>
    </message>
    <message>
        <source>Take the cover off the fan. Keep all doors and windows to the outside closed.</source>
        <translation>Découvrez le ventilateur. Gardez toutes les portes et fenêtres extérieures fermées.</translation>
    </message>
    <message>
        <source>The fan is open</source>
        <translation>Le ventilateur est découvert</translation>
    </message>
    <message>
        <source>Cover the fan again for the closing zero-flow pressure.</source>
        <translation>Couvrez de nouveau le ventilateur pour la pression à débit nul finale.</translation>
    </message>
    <message>
        <source>Take the cover off the fan for the point once more.</source>
        <translation>Découvrez encore le ventilateur pour le point.</translation>
    </message>
    <message>
        <source>Zero-flow records between the points would bring next to nothing today and are left out.</source>
        <translation>Des relevés à débit nul entre les points n’apporteraient presque rien aujourd’hui et sont omises.</translation>
    </message>
    <message>
        <source>In this wind {count} zero-flow records between the points pay. The fan stops for each, and somebody has to cover it and take the cover off again.</source>
        <translation>Par ce vent, {count} relevés à débit nul entre les points sont utiles. Le ventilateur s’arrête pour chacun, et quelqu’un doit le couvrir puis le découvrir.</translation>
    </message>
    <message>
        <source>The fan turns by itself to {direction}. Look whether the outdoor hose lies out of its jet.</source>
        <translation>Le ventilateur passe seul en {direction}. Vérifiez que le tube extérieur est hors de son jet.</translation>
    </message>
    <message>
        <source>The hose lies well</source>
        <translation>Le tube est bien placé</translation>
    </message>
    <message>
        <source>Turn the fan round to {direction}. Lay the hoses for this direction and keep the outdoor end out of the fan&apos;s jet.</source>
        <translation>Retournez le ventilateur pour la {direction}. Posez les tubes pour ce sens, l’extrémité extérieure hors du jet.</translation>
    </message>
    <message>
        <source>The fan is turned</source>
        <translation>Le ventilateur est retourné</translation>
    </message>
    <message>
        <source>The fan reaches {pressure} Pa; higher targets were left out.</source>
        <translation>Le ventilateur atteint {pressure} Pa&#x202f;; les paliers plus hauts sont omis.</translation>
    </message>
    <message>
        <source>The fan reaches {pressure} Pa; the readings that are left are taken at {lower} Pa.</source>
        <translation>Le ventilateur atteint {pressure} Pa ; les relevés restants sont faits à {lower} Pa.</translation>
    </message>
    <message>
        <source>Range {name} is fitted</source>
        <translation>La plage {name} est montée</translation>
    </message>
    <message>
        <source>Range {name} stays fitted</source>
        <translation>La plage {name} reste montée</translation>
    </message>
    <message>
        <source>The points before were read with range {name}</source>
        <translation>Les points précédents ont été lus avec la gamme {name}</translation>
    </message>
    <message>
        <source>{found} Fit range {name} while the fan stands still.</source>
        <translation>{found} Montez la plage {name} pendant que le ventilateur est à l’arrêt.</translation>
    </message>
    <message>
        <source>{found} Range {name} was not fitted.</source>
        <translation>{found} La plage {name} n’a pas été montée.</translation>
    </message>
    <message>
        <source>Cover the fan for a zero-flow record between the points.</source>
        <translation>Couvrez le ventilateur pour un relevé à débit nul entre les points.</translation>
    </message>
    <message>
        <source>Take the cover off the fan again for the next points.</source>
        <translation>Découvrez de nouveau le ventilateur pour les points suivants.</translation>
    </message>
    <message>
        <source>It stays so: strike the points before</source>
        <translation>Cela reste ainsi&#xa0;: écarter les points d’avant</translation>
    </message>
    <message>
        <source>It is put back: strike the points after</source>
        <translation>C’est remis&#xa0;: écarter les points d’après</translation>
    </message>
    <message>
        <source>Keep all points</source>
        <translation>Garder tous les points</translation>
    </message>
    <message>
        <source>Begin this direction again</source>
        <translation>Recommencer ce sens</translation>
    </message>
    <message>
        <source>The computer slept for {time}. Look again: windows and outside doors closed, seals in place, hoses where they were.</source>
        <translation>L’ordinateur a dormi {time}. Revérifiez&#xa0;: fenêtres et portes extérieures fermées, obturations en place, tubes où ils étaient.</translation>
    </message>
    <message>
        <source>All is as it was</source>
        <translation>Tout est comme avant</translation>
    </message>
    <message>
        <source>Cover the fan: the zero-flow pressure is read once more.</source>
        <translation>Couvrez le ventilateur&#xa0;: la pression à débit nul est relue.</translation>
    </message>
    <message>
        <source>The fan was stopped. Fit flow range {name}; the point is then begun again.</source>
        <translation>Le ventilateur a été arrêté. Montez la plage {name}&#x202f;; le point est ensuite recommencé.</translation>
    </message>
    <message>
        <source>{sentence} The fan was stopped: go and look. What became of it?</source>
        <translation>{sentence} Le ventilateur a été arrêté&#xa0;: allez voir. Qu’en est-il advenu&#x202f;?</translation>
    </message>
    <message>
        <source>{sentence} The fan was stopped. It changed before: a flap or damper that opens with the pressure does so, and then all points belong to the house.</source>
        <translation>{sentence} Le ventilateur a été arrêté. Cela avait déjà changé : un clapet qui s’ouvre avec la pression fait cela, et tous les points appartiennent alors à la maison.</translation>
    </message>
    <message>
        <source>{sentence} The fan was stopped: put it right; the point is then begun again.</source>
        <translation>{sentence} Le ventilateur a été arrêté : remettez en ordre ; le point est alors recommencé.</translation>
    </message>
    <message>
        <source>{sentence} The fan was stopped.</source>
        <translation>{sentence} Le ventilateur a été arrêté.</translation>
    </message>
    <message>
        <source>It is put right: go on</source>
        <translation>C’est remis en ordre : continuer</translation>
    </message>
    <message>
        <source>Nothing was wrong: go on</source>
        <translation>Tout était en ordre : continuer</translation>
    </message>
    <message>
        <source>A point without flow through the fan is left out: look at the hose of the flow element.</source>
        <translation>Un point sans débit à travers le ventilateur est laissé de côté : regardez le tuyau de l’élément de débit.</translation>
    </message>
    <message>
        <source>no flow through the fan</source>
        <translation>aucun débit à travers le ventilateur</translation>
    </message>
    <message>
        <source>One point more, at {pressure} Pa: two stand further apart than the method allows.</source>
        <translation>Un point de plus, à {pressure} Pa : deux points sont plus éloignés que la méthode ne le permet.</translation>
    </message>
    <message>
        <source>The pressure comes to {reached} Pa; {goal} Pa was wanted. Is a door, window or damper open, or something before the fan? If not, the points go up to what it reaches, and the flow at 50 Pa is extrapolated.</source>
        <translation>La pression arrive à {reached} Pa ; {goal} Pa étaient voulus. Une porte, une fenêtre ou un registre est-il ouvert, ou quelque chose devant le ventilateur ? Sinon, les points vont jusqu’à ce qu’il atteint, et le débit à 50 Pa est extrapolé.</translation>
    </message>
    <message>
        <source>Take the points up to {pressure} Pa</source>
        <translation>Prendre les points jusqu’à {pressure} Pa</translation>
    </message>
    <message>
        <source>It is shut now: try once more</source>
        <translation>C’est fermé maintenant : réessayer</translation>
    </message>
    <message>
        <source>Flow range {was} was fitted last; the rig now says {fitted}. Which one is fitted?</source>
        <translation>La plage {was} était montée&#x202f;; l’appareillage dit maintenant {fitted}. Laquelle est montée&#x202f;?</translation>
    </message>
    <message>
        <source>Cover the fan: after such a gap the zero-flow pressure is read once more.</source>
        <translation>Couvrez le ventilateur&#xa0;: après une telle pause, la pression à débit nul est relue.</translation>
    </message>
    <message>
        <source>The fan still blows, at {pressure} Pa: turn it down and switch it off.</source>
        <translation>Le ventilateur souffle encore, à {pressure} Pa : le baisser et l’éteindre.</translation>
    </message>
    <message>
        <source>The pressure passed {pressure} Pa. The fan was stopped.</source>
        <translation>La pression a dépassé {pressure} Pa. Le ventilateur a été arrêté.</translation>
    </message>
    <message>
        <source>The pressure stayed above {pressure} Pa. The fan was stopped.</source>
        <translation>La pression est restée au-dessus de {pressure} Pa. Le ventilateur a été arrêté.</translation>
    </message>
    <message>
        <source>The pressure climbed fast towards {pressure} Pa. The fan was stopped.</source>
        <translation>La pression montait vite vers {pressure} Pa. Le ventilateur a été arrêté.</translation>
    </message>
    <message>
        <source>The gauge went silent. The fan was stopped; look at cable and battery.</source>
        <translation>Le manomètre s’est tu. Le ventilateur a été arrêté&#x202f;; vérifiez câble et pile.</translation>
    </message>
    <message>
        <source>The gauge repeats {value} Pa unchanged. The fan was stopped; look at gauge and hose.</source>
        <translation>Le manomètre répète {value} Pa sans changer. Le ventilateur a été arrêté&#x202f;; vérifiez manomètre et tube.</translation>
    </message>
    <message>
        <source>The fan drive does not answer. It stops by itself; look at its cable.</source>
        <translation>La commande du ventilateur ne répond pas. Il s’arrête seul&#x202f;; vérifiez son câble.</translation>
    </message>
    <message>
        <source>The pressure goes the wrong way. The fan was stopped; look whether hoses or fan are turned round.</source>
        <translation>La pression va dans le mauvais sens. Le ventilateur a été arrêté&#x202f;; vérifiez si tubes ou ventilateur sont inversés.</translation>
    </message>
    <message>
        <source>The fan runs and no pressure builds up. It was stopped; look at hoses, doors and the fan&apos;s cover.</source>
        <translation>Le ventilateur tourne et aucune pression ne s’établit. Il a été arrêté&#x202f;; vérifiez tubes, portes et couvercle.</translation>
    </message>
    <message>
        <source>This flow should give far more pressure. The fan was stopped: a hose is off, a door is open, or another flow range is fitted than entered.</source>
        <translation>Ce débit devrait donner bien plus de pression. Le ventilateur a été arrêté : un tuyau est débranché, une porte est ouverte, ou la gamme montée n’est pas celle saisie.</translation>
    </message>
    <message>
        <source>The fan moves what took {pressure} Pa and more before. It was stopped: something was opened, or the gauge does not feel the pressure.</source>
        <translation>Le ventilateur débite ce qui demandait {pressure} Pa et plus auparavant. Il a été arrêté&#xa0;: quelque chose a été ouvert, ou le manomètre ne sent pas la pression.</translation>
    </message>
    <message>
        <source>The battery of this computer is at {left}: the fan was stopped. Plug it in, then go on.</source>
        <translation>La batterie de cet ordinateur est à {left}&#xa0;: le ventilateur a été arrêté. Branchez-le, puis continuez.</translation>
    </message>
    <message>
        <source>The program was held up for {seconds} s and did not steer. The fan was stopped.</source>
        <translation>Le programme a été bloqué {seconds} s et n’a pas réglé. Le ventilateur a été arrêté.</translation>
    </message>
    <message>
        <source>Raising the fan a little to see whether every hose answers.</source>
        <translation>Le ventilateur monte un peu pour voir si chaque tube répond.</translation>
    </message>
    <message>
        <source>The envelope pressure goes the wrong way: its hose is on the wrong input, or the fan is turned.</source>
        <translation>La différence de pression va dans le mauvais sens&#xa0;: son tube est à la mauvaise entrée, ou le ventilateur est retourné.</translation>
    </message>
    <message>
        <source>No pressure moves: the fan is covered, or does not turn, or both hoses are off.</source>
        <translation>Aucune pression ne bouge&#xa0;: le ventilateur est couvert, ou ne tourne pas, ou les deux tubes sont défaits.</translation>
    </message>
    <message>
        <source>Air flows and the envelope pressure does not move: its hose is off, blocked or frozen, or a door is open.</source>
        <translation>L’air passe et la différence de pression ne bouge pas&#xa0;: son tube est défait, bouché ou gelé, ou une porte est ouverte.</translation>
    </message>
    <message>
        <source>The envelope pressure moves and the flow element does not: its hose is off, or the flow range is far too large.</source>
        <translation>La différence de pression bouge et l’élément de débit non&#xa0;: son tube est défait, ou la plage est bien trop grande.</translation>
    </message>
    <message>
        <source>Turn the fan down slowly and switch it off.</source>
        <translation>Baissez lentement le ventilateur et éteignez-le.</translation>
    </message>
    <message>
        <source>The fan was stopped by hand.</source>
        <translation>Le ventilateur a été arrêté à la main.</translation>
    </message>
    <message>
        <source>{missing} of {count} safety questions are not answered.</source>
        <translation>{missing} questions de sécurité sur {count} sont sans réponse.</translation>
    </message>
    <message>
        <source>The answers are older than {hours} hours: answer again.</source>
        <translation>Les réponses datent de plus de {hours} heures&#xa0;: répondez de nouveau.</translation>
    </message>
    <message>
        <source>The fan may start.</source>
        <translation>Le ventilateur peut démarrer.</translation>
    </message>
    <message>
        <source>The fan may start: {limits}.</source>
        <translation>Le ventilateur peut démarrer&#xa0;: {limits}.</translation>
    </message>
    <message>
        <source>pressurize only</source>
        <translation>surpression seule</translation>
    </message>
    <message>
        <source>pressurize only and at most {cap} Pa</source>
        <translation>surpression seule et {cap} Pa au plus</translation>
    </message>
    <message>
        <source>at most {cap} Pa</source>
        <translation>{cap} Pa au plus</translation>
    </message>
    <message>
        <source>Stopped by hand.</source>
        <translation>Arrêté à la main.</translation>
    </message>
    <message>
        <source>No test possible, since this is not so: “{text}”</source>
        <translation>Pas d’essai possible&#xa0;: n’est pas ainsi «&#xa0;{text}&#xa0;»</translation>
    </message>
    <message>
        <source>Holding {goal} for {time} min: {flow}. Seal, look, or ask for another pressure.</source>
        <translation>{goal} maintenus depuis {time} min&#xa0;: {flow}. Colmatez, cherchez, ou demandez une autre pression.</translation>
    </message>
    <message>
        <source>The test ended by a fault of the program ({kind}: {error}).</source>
        <translation>L’essai s’est terminé par une erreur du programme ({kind}&#xa0;: {error}).</translation>
    </message>
    <message>
        <source>It did not come back within {seconds} s.</source>
        <translation>Pas de retour en {seconds} s.</translation>
    </message>
    <message>
        <source>{reason} It did not come back within {seconds} s.</source>
        <translation>{reason} Pas de retour en {seconds} s.</translation>
    </message>
    <message>
        <source>The pressure is kept at or below {cap} Pa; higher targets were left out.</source>
        <translation>La pression reste à {cap} Pa au plus&#x202f;; les paliers plus hauts sont omis.</translation>
    </message>
    <message>
        <source>The lowest target was raised to {target} Pa: five times the zero-flow pressure.</source>
        <translation>Le palier le plus bas a été porté à {target} Pa&#xa0;: cinq fois la pression à débit nul.</translation>
    </message>
    <message>
        <source>The hoses were not checked before the points: {reason}.</source>
        <translation>Les tubes n’ont pas été contrôlés avant les points&#xa0;: {reason}.</translation>
    </message>
    <message>
        <source>{wanted} Pa was asked for; the safety answers allow {allowed} Pa.</source>
        <translation>{wanted} Pa demandés&#x202f;; les réponses de sécurité autorisent {allowed} Pa.</translation>
    </message>
    <message>
        <source>Answered: {choice}.</source>
        <translation>Répondu&#xa0;: {choice}.</translation>
    </message>
    <message>
        <source>Only a point of the running direction can be taken again.</source>
        <translation>Seul un point du sens en cours peut être mesuré de nouveau.</translation>
    </message>
    <message>
        <source>{gap} Look again: windows and outside doors closed, seals in place, hoses where they were, the fan set to {outfit}. If anything is not, put it right or begin again.</source>
        <translation>{gap} Revérifiez&#xa0;: fenêtres et portes extérieures fermées, obturations en place, tubes où ils étaient, ventilateur&#xa0;: {outfit}. Sinon, corrigez ou recommencez.</translation>
    </message>
    <message>
        <source>The test was interrupted with {count} points taken; nothing was recorded for {time}.</source>
        <translation>L’essai a été interrompu avec {count} points mesurés&#x202f;; rien n’a été enregistré pendant {time}.</translation>
    </message>
    <message>
        <source>With more speed the envelope pressure grows as that of a flow element does, and the flow element grows as a house does: their hoses seem to be swapped.</source>
        <translation>Avec la vitesse, la différence de pression croît comme celle d’un élément de débit, et l’élément de débit comme une maison&#xa0;: leurs tubes semblent inversés.</translation>
    </message>
    <message>
        <source>With the fan the pressure at outdoor tap {tap} moves by {moved} Pa, at the others by {others}: its hose lies in the jet of the fan. Move it to the side.</source>
        <translation>Avec le ventilateur, la pression à la prise extérieure {tap} bouge de {moved} Pa, aux autres de {others}&#xa0;: son tube est dans le jet. Écartez-le.</translation>
    </message>
    <message>
        <source>The flow element reads backwards: its hose is on the wrong side of the gauge, or the fan is turned.</source>
        <translation>L’élément de débit lit à l’envers&#xa0;: son tube est du mauvais côté du manomètre, ou le ventilateur est retourné.</translation>
    </message>
    <message>
        <source>The flow element reads {value} Pa with the fan at rest: water in its hose, or the gauge wants zeroing.</source>
        <translation>L’élément de débit lit {value} Pa ventilateur arrêté&#xa0;: de l’eau dans son tube, ou le manomètre est à remettre à zéro.</translation>
    </message>
    <message>
        <source>The hoses of envelope pressure and flow element are swapped.</source>
        <translation>Les tubes de la différence de pression et de l’élément de débit sont inversés.</translation>
    </message>
    <message>
        <source>The pressure at outdoor tap {tap} does not move with the others: its hose is off or blocked.</source>
        <translation>La pression à la prise extérieure {tap} ne suit pas les autres&#xa0;: son tube est défait ou bouché.</translation>
    </message>
    <message>
        <source>The flow element answers too slowly: its hose is pinched, or water is in it.</source>
        <translation>L’élément de débit répond trop lentement&#xa0;: son tube est pincé, ou contient de l’eau.</translation>
    </message>
    <message>
        <source>The envelope pressure answers too slowly: its hose is pinched, as in a door.</source>
        <translation>La différence de pression répond trop lentement&#xa0;: son tube est pincé, comme dans une porte.</translation>
    </message>
    <message>
        <source>It stands at {now}, the target is {target}.</source>
        <translation>Elle est à {now}, le palier est {target}.</translation>
    </message>
    <message>
        <source>Then look at cable and battery of the gauge.</source>
        <translation>Vérifiez ensuite câble et pile du manomètre.</translation>
    </message>
    <message>
        <source>Then look at gauge and hose.</source>
        <translation>Vérifiez ensuite manomètre et tube.</translation>
    </message>
    <message>
        <source>Then look whether hoses or fan are turned round.</source>
        <translation>Vérifiez ensuite si tubes ou ventilateur sont inversés.</translation>
    </message>
    <message>
        <source>Then look whether a hose is off or a door is open.</source>
        <translation>Vérifiez ensuite si un tube est défait ou une porte ouverte.</translation>
    </message>
    <message>
        <source>Waiting for the gauge. Do not change the speed; the target is {target}.</source>
        <translation>En attente du manomètre. Ne changez pas la vitesse&#x202f;; le palier est {target}.</translation>
    </message>
    <message>
        <source>Turn the fan down now. {found}.</source>
        <translation>Baissez le ventilateur maintenant. {found}.</translation>
    </message>
    <message>
        <source>The leakage left the line of the points before, by {change} m³/h at {pressure} Pa: {what}.</source>
        <translation>La fuite a quitté la droite des points précédents, de {change} m³/h à {pressure} Pa&#xa0;: {what}.</translation>
    </message>
    <message>
        <source>a door, a window or a seal</source>
        <translation>une porte, une fenêtre ou une obturation</translation>
    </message>
    <message>
        <source>something was closed, or a hose is at fault</source>
        <translation>quelque chose a été fermé, ou un tube est en cause</translation>
    </message>
    <message>
        <source>Look at the seals, doors and windows.</source>
        <translation>Vérifiez obturations, portes et fenêtres.</translation>
    </message>
    <message>
        <source>Look what was closed, and at the hoses.</source>
        <translation>Vérifiez ce qui a été fermé, et les tubes.</translation>
    </message>
    <message>
        <source>{seen}: a gust, or the outdoor hose: moved, wet, in the wind or in the fan&apos;s jet.</source>
        <translation>{seen}&#xa0;: une rafale, ou le tube extérieur&#xa0;: déplacé, mouillé, au vent ou dans le jet du ventilateur.</translation>
    </message>
    <message>
        <source>{seen}: look at the hose of the flow element, and whether the flow range is the one entered.</source>
        <translation>{seen}&#xa0;: vérifiez le tube de l’élément de débit, et si la plage est celle saisie.</translation>
    </message>
    <message>
        <source>{seen}: a door, a window or a seal let go. Look.</source>
        <translation>{seen}&#xa0;: une porte, une fenêtre ou une obturation a lâché. Regardez.</translation>
    </message>
    <message>
        <source>{seen}: a door or window fell shut, or a leak closed.</source>
        <translation>{seen}&#xa0;: une porte ou fenêtre s’est fermée, ou une fuite s’est bouchée.</translation>
    </message>
    <message>
        <source>{seen}: something lies before the fan, or it turns slower.</source>
        <translation>{seen}&#xa0;: quelque chose est devant le ventilateur, ou il tourne moins vite.</translation>
    </message>
    <message>
        <source>{seen}: the fan turns faster or was cleared.</source>
        <translation>{seen}&#xa0;: le ventilateur tourne plus vite, ou a été dégagé.</translation>
    </message>
    <message>
        <source>With the fan held the pressure changed by {change} Pa and the flow by {share} %</source>
        <translation>Ventilateur maintenu, la pression a changé de {change} Pa et le débit de {share} %</translation>
    </message>
    <message>
        <source>{channel}: noise {noise}.</source>
        <translation>{channel}&#xa0;: bruit {noise}.</translation>
    </message>
    <message>
        <source>{name}: {rate} readings a second.</source>
        <translation>{name}&#xa0;: {rate} lectures par seconde.</translation>
    </message>
    <message>
        <source>Invented data</source>
        <translation>Données inventées</translation>
    </message>
    <message>
        <source>With an attached garage.</source>
        <translation>Avec un garage attenant.</translation>
    </message>
    <message>
        <source>depressurize and pressurize</source>
        <translation>dépression et surpression</translation>
    </message>
    <message>
        <source>weighted line of organic correlation</source>
        <translation>droite pondérée de corrélation organique</translation>
    </message>
    <message>
        <source>generalized least squares with a common zero-flow error</source>
        <translation>moindres carrés généralisés avec erreur de zéro commune</translation>
    </message>
    <message>
        <source>assumed flow exponent of 0.65</source>
        <translation>exposant de débit supposé de 0,65</translation>
    </message>
    <message>
        <source>{method} puts {symbol} in front; it needs the envelope area, which is not stated.</source>
        <translation>{method} met {symbol} en avant&#xa0;; il faut pour cela la surface d’enveloppe, qui n’est pas indiquée.</translation>
    </message>
    <message>
        <source>q50, flow at 50 Pa, {unit}</source>
        <translation>q50, débit à 50 Pa, {unit}</translation>
    </message>
    <message>
        <source>n50, air changes per hour at 50 Pa, {unit}</source>
        <translation>n50, taux de renouvellement à 50 Pa, {unit}</translation>
    </message>
    <message>
        <source>qE50, flow at 50 Pa per envelope area, {unit}</source>
        <translation>qE50, débit à 50 Pa par surface d’enveloppe, {unit}</translation>
    </message>
    <message>
        <source>qF50, flow at 50 Pa per floor area, {unit}</source>
        <translation>qF50, débit à 50 Pa par surface de plancher, {unit}</translation>
    </message>
    <message>
        <source>qE75, flow at 75 Pa per envelope area, {unit}</source>
        <translation>qE75, débit à 75 Pa par surface d’enveloppe, {unit}</translation>
    </message>
    <message>
        <source>qE4, flow at 4 Pa per envelope area, {unit}</source>
        <translation>qE4, débit à 4 Pa par surface d’enveloppe, {unit}</translation>
    </message>
    <message>
        <source>extrapolated: outside the pressures that were measured</source>
        <translation>extrapolé&#xa0;: hors des pressions mesurées</translation>
    </message>
    <message>
        <source>Effective leakage area at 4 Pa, Cd 1, {unit}</source>
        <translation>Surface de fuite effective à 4 Pa, Cd 1, {unit}</translation>
    </message>
    <message>
        <source>Equivalent leakage area at 10 Pa, Cd 0.611, {unit}</source>
        <translation>Surface de fuite équivalente à 10 Pa, Cd 0,611, {unit}</translation>
    </message>
    <message>
        <source>Leakage coefficient, air of the test, {unit}</source>
        <translation>Coefficient de fuite, air de l’essai, {unit}</translation>
    </message>
    <message>
        <source>Leakage coefficient, reference air, {unit}</source>
        <translation>Coefficient de fuite, air de référence, {unit}</translation>
    </message>
    <message>
        <source>Flow exponent</source>
        <translation>Exposant de débit</translation>
    </message>
    <message>
        <source>Probability of meeting it</source>
        <translation>Probabilité de conformité</translation>
    </message>
    <message>
        <source>An adopted edition, amendments and the local authority decide which limit counts.</source>
        <translation>L’édition adoptée, ses amendements et l’autorité locale décident quelle limite compte.</translation>
    </message>
    <message>
        <source>Estimates by named models with their bands, not measured; none of them belongs on a certificate.</source>
        <translation>Estimations par des modèles nommés avec leurs bandes, non mesurées&#x202f;; aucune n’a sa place sur un certificat.</translation>
    </message>
    <message>
        <source>Points is empty: paste or type the points of one direction at least.</source>
        <translation>Pas de points&#xa0;: collez ou saisissez les points d’un sens au moins.</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>intervalle à 95 %</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Moyenne</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>Au plus</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Part</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Ensemble</translation>
    </message>
    <message>
        <source>Test {number}, {day}, {stage}</source>
        <translation>Essai {number}, {day}, {stage}</translation>
    </message>
    <message>
        <source>no stage</source>
        <translation>sans étape</translation>
    </message>
    <message>
        <source>{field} is {shown}: {allowed}</source>
        <translation>{field} est {shown}&#xa0;: {allowed}</translation>
    </message>
    <message>
        <source>{name} is not connected yet: {port} has not been opened.</source>
        <translation>{name} n’est pas encore connecté&#xa0;: {port} n’est pas ouvert.</translation>
    </message>
    <message>
        <source>{name}: the operating system does not come back from {port}. Unplug it.</source>
        <translation>{name}&#xa0;: le système ne revient pas de {port}. Débranchez-le.</translation>
    </message>
    <message>
        <source>The link to {name} failed by a fault of the program ({fault}).</source>
        <translation>La liaison avec {name} a échoué par une faute du programme ({fault}).</translation>
    </message>
    <message>
        <source>The link to {name} ended by a fault of the program ({kind}: {error}).</source>
        <translation>La liaison avec {name} s’est terminée par une faute du programme ({kind}&#xa0;: {error}).</translation>
    </message>
    <message>
        <source>The link to {name} on {port} is closed.</source>
        <translation>La liaison avec {name} sur {port} est fermée.</translation>
    </message>
    <message>
        <source>{port} is being opened.</source>
        <translation>Ouverture de {port}.</translation>
    </message>
    <message>
        <source>{port} is open; {name} gets a moment to be ready.</source>
        <translation>{port} est ouvert&#x202f;; {name} a un instant pour être prêt.</translation>
    </message>
    <message>
        <source>{name} on {port} sends without being asked and does not stop.</source>
        <translation>{name} sur {port} émet sans qu’on lui demande et ne s’arrête pas.</translation>
    </message>
    <message>
        <source>{name} on {port} is asked who it is.</source>
        <translation>On demande à {name} sur {port} qui il est.</translation>
    </message>
    <message>
        <source>{name} on {port} sends replies that make no sense.</source>
        <translation>{name} sur {port} envoie des réponses sans signification.</translation>
    </message>
    <message>
        <source>{name} on {port} does not answer.</source>
        <translation>{name} sur {port} ne répond pas.</translation>
    </message>
    <message>
        <source>{name} on {port} has gone silent.</source>
        <translation>{name} sur {port} s’est tu.</translation>
    </message>
    <message>
        <source>{name} on {port}: another kind of instrument answers: &quot;{line}&quot;.</source>
        <translation>{name} sur {port}&#xa0;: un appareil d’un autre genre répond&#xa0;: «&#xa0;{line}&#xa0;».</translation>
    </message>
    <message>
        <source>{name} on {port}: number {serial} answers, expected was {expected}.</source>
        <translation>{name} sur {port}&#xa0;: le numéro {serial} répond, on attendait {expected}.</translation>
    </message>
    <message>
        <source>another kind of instrument answers: &quot;{line}&quot;</source>
        <translation>un appareil d’un autre genre répond&#xa0;: «&#xa0;{line}&#xa0;»</translation>
    </message>
    <message>
        <source>number {serial} answers, expected was {expected}</source>
        <translation>le numéro {serial} répond, on attendait {expected}</translation>
    </message>
    <message>
        <source>Instrument {name} at {port}: {sentence}</source>
        <translation>Appareil {name} sur {port}&#xa0;: {sentence}</translation>
    </message>
    <message>
        <source>it does not answer (state: {state})</source>
        <translation>il ne répond pas (état&#xa0;: {state})</translation>
    </message>
    <message>
        <source>{port} is not open.</source>
        <translation>{port} n’est pas ouvert.</translation>
    </message>
    <message>
        <source>{port} went away while it was read.</source>
        <translation>{port} a disparu pendant la lecture.</translation>
    </message>
    <message>
        <source>{port} went away while it was read ({reason}).</source>
        <translation>{port} a disparu pendant la lecture ({reason}).</translation>
    </message>
    <message>
        <source>{port} went away while it was written to.</source>
        <translation>{port} a disparu pendant l’écriture.</translation>
    </message>
    <message>
        <source>{port} went away while it was written to ({reason}).</source>
        <translation>{port} a disparu pendant l’écriture ({reason}).</translation>
    </message>
    <message>
        <source>{port} does not take the bytes.</source>
        <translation>{port} ne prend pas les octets.</translation>
    </message>
    <message>
        <source>{port} does not open.</source>
        <translation>{port} ne s’ouvre pas.</translation>
    </message>
    <message>
        <source>{port} does not open ({reason}).</source>
        <translation>{port} ne s’ouvre pas ({reason}).</translation>
    </message>
    <message>
        <source>{port} may not be opened by this user.</source>
        <translation>Cet utilisateur n’a pas le droit d’ouvrir {port}.</translation>
    </message>
    <message>
        <source>{port} may not be opened by this user: only its owner may (group {group}); whoever looks after this computer has to allow it.</source>
        <translation>Cet utilisateur n’a pas le droit d’ouvrir {port}&#xa0;: seul son propriétaire le peut (groupe {group})&#x202f;; la personne qui gère cet ordinateur doit l’autoriser.</translation>
    </message>
    <message>
        <source>{port} may not be opened by this user: it belongs to the group {group}. Run `{command}`, then log out and in.</source>
        <translation>Cet utilisateur n’a pas le droit d’ouvrir {port}&#xa0;: il appartient au groupe {group}. Lancez `{command}`, puis fermez et rouvrez la session.</translation>
    </message>
    <message>
        <source>{port} is not there: adapter unplugged, or another name.</source>
        <translation>{port} n’est pas là&#xa0;: adaptateur débranché, ou autre nom.</translation>
    </message>
    <message>
        <source>{port} is no serial port.</source>
        <translation>{port} n’est pas un port série.</translation>
    </message>
    <message>
        <source>{port} is no port address: a name such as COM3 or /dev/ttyUSB0, or socket://HOST:PORT.</source>
        <translation>{port} n’est pas une adresse de port&#xa0;: un nom comme COM3 ou /dev/ttyUSB0, ou socket://HOST:PORT.</translation>
    </message>
    <message>
        <source>{port} does not answer: nothing listens there, or the address is wrong.</source>
        <translation>{port} ne répond pas&#xa0;: rien n’y écoute, ou l’adresse est fausse.</translation>
    </message>
    <message>
        <source>{port} is in use by another program, or was only just released.</source>
        <translation>{port} est utilisé par un autre programme, ou vient d’être libéré.</translation>
    </message>
    <message>
        <source>The ports could not be listed just now ({reason}); try again.</source>
        <translation>Les ports n’ont pu être listés à l’instant ({reason})&#x202f;; réessayez.</translation>
    </message>
    <message>
        <source>There is no serial port on this machine.</source>
        <translation>Il n’y a pas de port série sur cette machine.</translation>
    </message>
    <message>
        <source>There is no serial port on this machine. {advice}</source>
        <translation>Il n’y a pas de port série sur cette machine. {advice}</translation>
    </message>
    <message>
        <source>If an adapter is plugged in, `journalctl -k -n 20` tells what the system sees; try another cable.</source>
        <translation>Si un adaptateur est branché, `journalctl -k -n 20` dit ce que voit le système&#x202f;; essayez un autre câble.</translation>
    </message>
    <message>
        <source>If an adapter is plugged in, look under USB in the System Report; its driver may have to be allowed.</source>
        <translation>Si un adaptateur est branché, voyez sous USB dans le rapport système&#x202f;; il faut peut-être autoriser son pilote.</translation>
    </message>
    <message>
        <source>If an adapter is plugged in, the Device Manager shows it with a warning when its driver is missing; Windows Update fetches it, which needs a network.</source>
        <translation>Si un adaptateur est branché, le Gestionnaire de périphériques le montre avec un avertissement quand son pilote manque&#x202f;; Windows Update le télécharge, ce qui demande un réseau.</translation>
    </message>
    <message>
        <source>The adapter that was {old} is now {new}.</source>
        <translation>L’adaptateur qui était {old} est maintenant {new}.</translation>
    </message>
    <message>
        <source>{port} appeared and vanished again. {advice}</source>
        <translation>{port} est apparu puis a disparu. {advice}</translation>
    </message>
    <message>
        <source>Try another cable and another socket, without a hub.</source>
        <translation>Essayez un autre câble et une autre prise, sans concentrateur.</translation>
    </message>
    <message>
        <source>On some systems the service for Braille displays takes the adapter: `journalctl -k -g brltty` shows it. Whoever looks after this computer can except the adapter there; people who read Braille need the service. Else try another cable.</source>
        <translation>Sur certains systèmes, le service des afficheurs braille prend l’adaptateur&#xa0;: `journalctl -k -g brltty` le montre. La personne qui gère cet ordinateur peut y excepter l’adaptateur&#x202f;; qui lit le braille a besoin de ce service. Sinon essayez un autre câble.</translation>
    </message>
    <message>
        <source>On some systems the service for Braille displays takes the adapter for {usb}: `journalctl -k -g brltty` shows it. Whoever looks after this computer can except the adapter there; people who read Braille need the service. Else try another cable.</source>
        <translation>Sur certains systèmes, le service des afficheurs braille prend l’adaptateur {usb}&#xa0;: `journalctl -k -g brltty` le montre. La personne qui gère cet ordinateur peut y excepter l’adaptateur&#x202f;; qui lit le braille a besoin de ce service. Sinon essayez un autre câble.</translation>
    </message>
    <message>
        <source>Nobody whom a profile knows answers. Is it switched on, and is there a profile for it?</source>
        <translation>Personne qu’un profil connaisse ne répond. Est-il allumé, et y a-t-il un profil pour lui&#x202f;?</translation>
    </message>
    <message>
        <source>It says “{line}”, which no profile knows.</source>
        <translation>Il dit «&#xa0;{line}&#xa0;», qu’aucun profil ne connaît.</translation>
    </message>
    <message>
        <source>{name}: many damaged messages on {port}. Look at speed and cable; or another program reads the same port.</source>
        <translation>{name}&#xa0;: beaucoup de messages abîmés sur {port}. Vérifiez vitesse et câble&#x202f;; ou un autre programme lit le même port.</translation>
    </message>
    <message>
        <source>The fan drive has not confirmed its communication time-out: stay at its switch.</source>
        <translation>La commande du ventilateur n’a pas confirmé son délai de communication&#xa0;: restez près de son interrupteur.</translation>
    </message>
    <message>
        <source>The fan drive does not turn to {direction}.</source>
        <translation>La commande du ventilateur ne passe pas à {direction}.</translation>
    </message>
    <message>
        <source>none: this fan is turned by hand</source>
        <translation>aucun&#xa0;: ce ventilateur se tourne à la main</translation>
    </message>
    <message>
        <source>{file}, line {line}: a table with commas is needed ({reason}).</source>
        <translation>{file}, ligne {line}&#xa0;: il faut un tableau à virgules ({reason}).</translation>
    </message>
    <message>
        <source>{file}: there are no rows below the heading.</source>
        <translation>{file}&#xa0;: il n’y a pas de lignes sous l’en-tête.</translation>
    </message>
    <message>
        <source>{file}, row {row}: {column}: it goes back, from {from_s} to {to_s}.</source>
        <translation>{file}, ligne {row}&#xa0;: {column}&#xa0;: cela recule, de {from_s} à {to_s}.</translation>
    </message>
    <message>
        <source>{file}: at most {count} rows a second can be played.</source>
        <translation>{file}&#xa0;: au plus {count} lignes par seconde peuvent être jouées.</translation>
    </message>
    <message>
        <source>{file}, line 1: the heading needs {columns}; it reads “{heading}”.</source>
        <translation>{file}, ligne 1&#xa0;: l’en-tête a besoin de {columns}&#x202f;; il dit «&#xa0;{heading}&#xa0;».</translation>
    </message>
    <message>
        <source>{time}, then channels of {names}, each once</source>
        <translation>{time}, puis des voies de {names}, chacune une fois</translation>
    </message>
    <message>
        <source>{where}: {count} cells are needed, there are {found}.</source>
        <translation>{where}&#xa0;: il faut {count} cellules, il y en a {found}.</translation>
    </message>
    <message>
        <source>{where}: {column}: a number is needed, not “{text}”.</source>
        <translation>{where}&#xa0;: {column}&#xa0;: il faut un nombre, pas «&#xa0;{text}&#xa0;».</translation>
    </message>
    <message>
        <source>{file}: a file of readings has at most {size} MB.</source>
        <translation>{file}&#xa0;: un fichier de lectures a au plus {size} Mo.</translation>
    </message>
    <message>
        <source>{file}: the recorded readings cannot be read ({reason}).</source>
        <translation>{file}&#xa0;: les lectures enregistrées ne peuvent être lues ({reason}).</translation>
    </message>
    <message>
        <source>no text in UTF-8</source>
        <translation>pas du texte en UTF-8</translation>
    </message>
    <message>
        <source>channel is {channel}: one of these is needed: {names}</source>
        <translation>la voie est {channel}&#xa0;: il faut l’un de ceux-ci&#xa0;: {names}</translation>
    </message>
    <message>
        <source>{channel} is {value}: a number is needed</source>
        <translation>{channel} est {value}&#xa0;: il faut un nombre</translation>
    </message>
    <message>
        <source>{name}: each value is the mean of {seconds} s.</source>
        <translation>{name}&#xa0;: chaque valeur est la moyenne sur {seconds} s.</translation>
    </message>
    <message>
        <source>{name}: {bad} damaged messages of {count}.</source>
        <translation>{name}&#xa0;: {bad} messages abîmés sur {count}.</translation>
    </message>
    <message>
        <source>{name} was lost and found again {often}.</source>
        <translation>{name} a été perdu et retrouvé {often}.</translation>
    </message>
    <message>
        <source>1 time</source>
        <translation>1 fois</translation>
    </message>
    <message>
        <source>{count} times</source>
        <translation>{count} fois</translation>
    </message>
    <message>
        <source>{name} has read {value} for {seconds} s: it may hang, or its hose is covered.</source>
        <translation>{name} lit {value} depuis {seconds} s&#xa0;: il est peut-être bloqué, ou son tube est couvert.</translation>
    </message>
    <message>
        <source>{name}: {lost} lost.</source>
        <translation>{name}&#xa0;: {lost} perdues.</translation>
    </message>
    <message>
        <source>{name}: {gaps}, the longest {seconds} s.</source>
        <translation>{name}&#xa0;: {gaps}, la plus longue {seconds} s.</translation>
    </message>
    <message>
        <source>{name}: {lost} lost, {gaps}, the longest {seconds} s.</source>
        <translation>{name}&#xa0;: {lost} perdues, {gaps}, la plus longue {seconds} s.</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 lecture</translation>
    </message>
    <message>
        <source>{count} readings</source>
        <translation>{count} lectures</translation>
    </message>
    <message>
        <source>1 gap</source>
        <translation>1 lacune</translation>
    </message>
    <message>
        <source>{count} gaps</source>
        <translation>{count} lacunes</translation>
    </message>
    <message>
        <source>{name}: {rate} readings a second, {expected} are expected.</source>
        <translation>{name}&#xa0;: {rate} lectures par seconde, on en attend {expected}.</translation>
    </message>
    <message>
        <source>{name}: the zero moved by {drift} Pa in {minutes} min.</source>
        <translation>{name}&#xa0;: le zéro a bougé de {drift} Pa en {minutes} min.</translation>
    </message>
    <message>
        <source>Zero it again.</source>
        <translation>Refaites le zéro.</translation>
    </message>
    <message>
        <source>{name}: battery {share}.</source>
        <translation>{name}&#xa0;: pile à {share}.</translation>
    </message>
    <message>
        <source>Charge it soon.</source>
        <translation>Rechargez-la bientôt.</translation>
    </message>
    <message>
        <source>It will not last a test.</source>
        <translation>Elle ne tiendra pas un essai.</translation>
    </message>
    <message>
        <source>All {count} lines are read.</source>
        <translation>Les {count} lignes sont lues.</translation>
    </message>
    <message>
        <source>The line is read.</source>
        <translation>La ligne est lue.</translation>
    </message>
    <message>
        <source>{read} of {count} lines are read; the others look different and will be passed over.</source>
        <translation>{read} lignes sur {count} sont lues&#x202f;; les autres sont différentes et seront ignorées.</translation>
    </message>
    <message>
        <source>{port} is not listened to yet.</source>
        <translation>{port} n’est pas encore écouté.</translation>
    </message>
    <message>
        <source>Listening at {settings}.</source>
        <translation>Écoute à {settings}.</translation>
    </message>
    <message>
        <source>Nothing came from {port}. Is it switched on, does it send by itself, or has it to be asked?</source>
        <translation>Rien n’est venu de {port}. Est-il allumé, émet-il de lui-même, ou faut-il l’interroger&#x202f;?</translation>
    </message>
    <message>
        <source>Bytes came from {port}, but nothing regular: it may not speak in lines of text, or the cable is bad.</source>
        <translation>Des octets sont venus de {port}, mais rien de régulier&#xa0;: il ne parle peut-être pas en lignes de texte, ou le câble est mauvais.</translation>
    </message>
    <message>
        <source>Regular lines at {settings}, {rate} a second.</source>
        <translation>Lignes régulières à {settings}, {rate} par seconde.</translation>
    </message>
    <message>
        <source>{found} were read from unit {unit}.</source>
        <translation>{found} lus sur l’unité {unit}.</translation>
    </message>
    <message>
        <source>{count} input registers</source>
        <translation>{count} registres d’entrée</translation>
    </message>
    <message>
        <source>{count} holding registers</source>
        <translation>{count} registres de maintien</translation>
    </message>
    <message>
        <source>{port} is not read yet.</source>
        <translation>{port} n’est pas encore lu.</translation>
    </message>
    <message>
        <source>Nobody answers on {port} as unit {unit}: look at speed, parity, the unit&apos;s number and the two wires.</source>
        <translation>Personne ne répond sur {port} comme unité {unit}&#xa0;: vérifiez vitesse, parité, numéro d’unité et les deux fils.</translation>
    </message>
    <message>
        <source>it is missing</source>
        <translation>il manque</translation>
    </message>
    <message>
        <source>not {value}</source>
        <translation>pas {value}</translation>
    </message>
    <message>
        <source>a number too long to print</source>
        <translation>un nombre trop long à montrer</translation>
    </message>
    <message>
        <source>a text in quotes is needed, {shown}</source>
        <translation>il faut un texte entre guillemets, {shown}</translation>
    </message>
    <message>
        <source>a list of texts is needed, {shown}</source>
        <translation>il faut une liste de textes, {shown}</translation>
    </message>
    <message>
        <source>true or false is needed, {shown}</source>
        <translation>il faut vrai ou faux, {shown}</translation>
    </message>
    <message>
        <source>a number is needed, {shown}</source>
        <translation>il faut un nombre, {shown}</translation>
    </message>
    <message>
        <source>a number {bounds} is needed, {shown}</source>
        <translation>il faut un nombre {bounds}, {shown}</translation>
    </message>
    <message>
        <source>a whole number is needed, {shown}</source>
        <translation>il faut un nombre entier, {shown}</translation>
    </message>
    <message>
        <source>a whole number {bounds} is needed, {shown}</source>
        <translation>il faut un nombre entier {bounds}, {shown}</translation>
    </message>
    <message>
        <source>greater than {low}</source>
        <translation>supérieur à {low}</translation>
    </message>
    <message>
        <source>at least {low}</source>
        <translation>d’au moins {low}</translation>
    </message>
    <message>
        <source>at most {high}</source>
        <translation>d’au plus {high}</translation>
    </message>
    <message>
        <source>one of these is needed: {names}; {shown}</source>
        <translation>il faut l’un de ceux-ci&#xa0;: {names}&#x202f;; {shown}</translation>
    </message>
    <message>
        <source>a regular expression is needed ({reason})</source>
        <translation>il faut une expression régulière ({reason})</translation>
    </message>
    <message>
        <source>the group (?P&lt;{group}&gt;...) is missing</source>
        <translation>le groupe (?P&lt;{group}&gt;...) manque</translation>
    </message>
    <message>
        <source>a table [{header}] is needed</source>
        <translation>il faut un tableau [{header}]</translation>
    </message>
    <message>
        <source>unknown; the keys here are: {names}</source>
        <translation>inconnu&#x202f;; les clés sont ici&#xa0;: {names}</translation>
    </message>
    <message>
        <source>brackets nested too deeply</source>
        <translation>crochets imbriqués trop profondément</translation>
    </message>
    <message>
        <source>no such file; the shipped ones are: {names}</source>
        <translation>fichier inexistant&#x202f;; ceux livrés sont&#xa0;: {names}</translation>
    </message>
    <message>
        <source>a text file in UTF-8 is needed</source>
        <translation>il faut un fichier texte en UTF-8</translation>
    </message>
    <message>
        <source>a gauge needs at least one [[channel]]</source>
        <translation>un manomètre demande au moins un [[channel]]</translation>
    </message>
    <message>
        <source>a gauge has either a table [poll] or a table [stream]</source>
        <translation>un manomètre a soit un tableau [poll], soit un tableau [stream]</translation>
    </message>
    <message>
        <source>a Modbus gauge is polled: a table [poll] is needed</source>
        <translation>un manomètre Modbus est interrogé&#xa0;: il faut un tableau [poll]</translation>
    </message>
    <message>
        <source>a poll reads registers: read holding FIRST COUNT or read input FIRST COUNT</source>
        <translation>une interrogation lit des registres&#xa0;: read holding FIRST COUNT ou read input FIRST COUNT</translation>
    </message>
    <message>
        <source>PLACE TYPE is needed: a place among the {count} registers that are read, counted from 0, and one of {names}</source>
        <translation>il faut PLACE TYPE&#xa0;: une place parmi les {count} registres lus, comptée de 0, et l’un de {names}</translation>
    </message>
    <message>
        <source>at least two lines ({seconds} s) are needed</source>
        <translation>il faut au moins deux lignes ({seconds} s)</translation>
    </message>
    <message>
        <source>only a gauge with a table [stream] is kept alive: polls do that by themselves</source>
        <translation>seul un manomètre avec un tableau [stream] est tenu éveillé&#xa0;: les interrogations le font d’elles-mêmes</translation>
    </message>
    <message>
        <source>the name {name} may occur only once</source>
        <translation>le nom {name} ne peut figurer qu’une fois</translation>
    </message>
    <message>
        <source>only printable ASCII characters go over the wire; [link] terminator ends each message</source>
        <translation>seuls des caractères ASCII imprimables passent sur le fil&#x202f;; [link] terminator finit chaque message</translation>
    </message>
    <message>
        <source>the channel {name} has to be there exactly once</source>
        <translation>la voie {name} doit figurer exactement une fois</translation>
    </message>
    <message>
        <source>one of these is needed: read holding FIRST COUNT, read input FIRST COUNT, write REGISTER VALUE (0 to 65535), identify</source>
        <translation>il faut l’un de ceux-ci&#xa0;: read holding FIRST COUNT, read input FIRST COUNT, write REGISTER VALUE (0 à 65535), identify</translation>
    </message>
    <message>
        <source>1 to {most} registers are read at once, numbered 0 to 65535</source>
        <translation>de 1 à {most} registres se lisent à la fois, numérotés de 0 à 65535</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} à {high}</translation>
    </message>
    <message>
        <source>Anywhere</source>
        <translation>Partout</translation>
    </message>
    <message>
        <source>California</source>
        <translation>Californie</translation>
    </message>
    <message>
        <source>Canada</source>
        <translation>Canada</translation>
    </message>
    <message>
        <source>England and Wales</source>
        <translation>Angleterre et pays de Galles</translation>
    </message>
    <message>
        <source>France</source>
        <translation>France</translation>
    </message>
    <message>
        <source>Germany</source>
        <translation>Allemagne</translation>
    </message>
    <message>
        <source>Switzerland</source>
        <translation>Suisse</translation>
    </message>
    <message>
        <source>United States</source>
        <translation>États-Unis</translation>
    </message>
    <message>
        <source>IECC climate zone</source>
        <translation>zone climatique IECC</translation>
    </message>
    <message>
        <source>A state amendment (example)</source>
        <translation>Amendement d’un État (exemple)</translation>
    </message>
    <message>
        <source>ASHRAE 90.1-2013 to 2019</source>
        <translation>ASHRAE 90.1-2013 à 2019</translation>
    </message>
    <message>
        <source>California, multifamily units</source>
        <translation>Californie, logements collectifs</translation>
    </message>
    <message>
        <source>DIN 4108-7, large buildings</source>
        <translation>DIN 4108-7, grands bâtiments</translation>
    </message>
    <message>
        <source>GEG § 26, large buildings with ventilation plant</source>
        <translation>GEG § 26, grands bâtiments avec ventilation mécanique</translation>
    </message>
    <message>
        <source>GEG § 26, large buildings without ventilation plant</source>
        <translation>GEG § 26, grands bâtiments sans ventilation mécanique</translation>
    </message>
    <message>
        <source>GEG § 26, with ventilation plant</source>
        <translation>GEG § 26, avec ventilation mécanique</translation>
    </message>
    <message>
        <source>GEG § 26, without ventilation plant</source>
        <translation>GEG § 26, sans ventilation mécanique</translation>
    </message>
    <message>
        <source>IECC 2009, dwellings</source>
        <translation>IECC 2009, logements</translation>
    </message>
    <message>
        <source>IECC 2012 to 2018, dwellings</source>
        <translation>IECC 2012 à 2018, logements</translation>
    </message>
    <message>
        <source>IECC 2021, attached and small dwellings</source>
        <translation>IECC 2021, logements mitoyens et petits</translation>
    </message>
    <message>
        <source>IECC 2021, prescriptive path</source>
        <translation>IECC 2021, voie prescriptive</translation>
    </message>
    <message>
        <source>IECC 2021, upper limit of every path</source>
        <translation>IECC 2021, limite haute de toute voie</translation>
    </message>
    <message>
        <source>IECC 2021, upper limit of every path, per area</source>
        <translation>IECC 2021, limite haute de toute voie, par surface</translation>
    </message>
    <message>
        <source>IECC 2024, dwellings</source>
        <translation>IECC 2024, logements</translation>
    </message>
    <message>
        <source>IECC commercial 2012 to 2018</source>
        <translation>IECC tertiaire 2012 à 2018</translation>
    </message>
    <message>
        <source>IECC commercial 2021</source>
        <translation>IECC tertiaire 2021</translation>
    </message>
    <message>
        <source>IECC commercial 2021, dwelling units</source>
        <translation>IECC tertiaire 2021, logements</translation>
    </message>
    <message>
        <source>IECC commercial 2021, with a report on remedies</source>
        <translation>IECC tertiaire 2021, avec rapport de remèdes</translation>
    </message>
    <message>
        <source>IECC commercial 2024</source>
        <translation>IECC tertiaire 2024</translation>
    </message>
    <message>
        <source>Minergie, new buildings</source>
        <translation>Minergie, constructions neuves</translation>
    </message>
    <message>
        <source>Minergie, renovation</source>
        <translation>Minergie, rénovation</translation>
    </message>
    <message>
        <source>Minergie-P and Minergie-A</source>
        <translation>Minergie-P et Minergie-A</translation>
    </message>
    <message>
        <source>National Building Code, level 1</source>
        <translation>Code national du bâtiment, niveau 1</translation>
    </message>
    <message>
        <source>National Building Code, level 2</source>
        <translation>Code national du bâtiment, niveau 2</translation>
    </message>
    <message>
        <source>National Building Code, level 3</source>
        <translation>Code national du bâtiment, niveau 3</translation>
    </message>
    <message>
        <source>National Building Code, level 4</source>
        <translation>Code national du bâtiment, niveau 4</translation>
    </message>
    <message>
        <source>National Building Code, level 5</source>
        <translation>Code national du bâtiment, niveau 5</translation>
    </message>
    <message>
        <source>Part L, new dwellings</source>
        <translation>Part L, logements neufs</translation>
    </message>
    <message>
        <source>Part L, new dwellings, former limit</source>
        <translation>Part L, logements neufs, ancienne limite</translation>
    </message>
    <message>
        <source>Part L, new dwellings, tested at 4 Pa</source>
        <translation>Part L, logements neufs, mesurés à 4 Pa</translation>
    </message>
    <message>
        <source>Passive House</source>
        <translation>Maison passive</translation>
    </message>
    <message>
        <source>Phius, envelope</source>
        <translation>Phius, enveloppe</translation>
    </message>
    <message>
        <source>Phius, tall buildings</source>
        <translation>Phius, bâtiments hauts</translation>
    </message>
    <message>
        <source>R-2000, per area</source>
        <translation>R-2000, par surface</translation>
    </message>
    <message>
        <source>RE2020, collective housing</source>
        <translation>RE2020, logement collectif</translation>
    </message>
    <message>
        <source>RE2020, single house</source>
        <translation>RE2020, maison individuelle</translation>
    </message>
    <message>
        <source>US Army, new buildings and large renovations</source>
        <translation>US Army, constructions neuves et grandes rénovations</translation>
    </message>
    <message>
        <source>US Army, proposed future level</source>
        <translation>US Army, niveau futur proposé</translation>
    </message>
    <message>
        <source>an older edition</source>
        <translation>une édition ancienne</translation>
    </message>
    <message>
        <source>as amended by one state</source>
        <translation>modifié par un État</translation>
    </message>
    <message>
        <source>before 2021</source>
        <translation>avant 2021</translation>
    </message>
    <message>
        <source>not recalled</source>
        <translation>non remémorée</translation>
    </message>
    <message>
        <source>proposal</source>
        <translation>proposition</translation>
    </message>
    <message>
        <source>air volume above 1500 m3; each of over- and under-pressure has to meet it</source>
        <translation>volume d’air supérieur à 1500 m3&#x202f;; surpression et dépression doivent chacune la respecter</translation>
    </message>
    <message>
        <source>air volume up to 1500 m3; each of over- and under-pressure has to meet it</source>
        <translation>volume d’air jusqu’à 1500 m3&#x202f;; surpression et dépression doivent chacune la respecter</translation>
    </message>
    <message>
        <source>attached or multifamily units, and buildings of up to 1500 ft2</source>
        <translation>logements mitoyens ou collectifs, et bâtiments jusqu’à 1500 ft2</translation>
    </message>
    <message>
        <source>buildings other than low houses</source>
        <translation>bâtiments autres que maisons basses</translation>
    </message>
    <message>
        <source>buildings other than low houses; 2019 allows tests of parts</source>
        <translation>bâtiments autres que maisons basses&#x202f;; 2019 permet des essais partiels</translation>
    </message>
    <message>
        <source>collective housing; per area of loss surfaces without the lowest floor: enter that as envelope area</source>
        <translation>logement collectif&#x202f;; par surface de parois déperditives hors plancher bas&#xa0;: saisir celle-ci comme surface d’enveloppe</translation>
    </message>
    <message>
        <source>commercial buildings above 0.40 whose leaks were looked for, sealed and reported</source>
        <translation>bâtiments tertiaires au-dessus de 0,40 dont les fuites ont été cherchées, colmatées et signalées</translation>
    </message>
    <message>
        <source>commercial buildings</source>
        <translation>bâtiments tertiaires</translation>
    </message>
    <message>
        <source>commercial buildings, optional whole-building test</source>
        <translation>bâtiments tertiaires, essai facultatif du bâtiment entier</translation>
    </message>
    <message>
        <source>detached dwellings, airtightness level 1; any one of air changes, NLA10 and NLR50</source>
        <translation>maisons isolées, niveau d’étanchéité 1&#x202f;; l’un de renouvellement, NLA10 et NLR50</translation>
    </message>
    <message>
        <source>detached dwellings, airtightness level 2; any one of air changes, NLA10 and NLR50</source>
        <translation>maisons isolées, niveau d’étanchéité 2&#x202f;; l’un de renouvellement, NLA10 et NLR50</translation>
    </message>
    <message>
        <source>detached dwellings, airtightness level 3; any one of air changes, NLA10 and NLR50</source>
        <translation>maisons isolées, niveau d’étanchéité 3&#x202f;; l’un de renouvellement, NLA10 et NLR50</translation>
    </message>
    <message>
        <source>detached dwellings, airtightness level 4; any one of air changes, NLA10 and NLR50</source>
        <translation>maisons isolées, niveau d’étanchéité 4&#x202f;; l’un de renouvellement, NLA10 et NLR50</translation>
    </message>
    <message>
        <source>detached dwellings, airtightness level 5; any one of air changes, NLA10 and NLR50</source>
        <translation>maisons isolées, niveau d’étanchéité 5&#x202f;; l’un de renouvellement, NLA10 et NLR50</translation>
    </message>
    <message>
        <source>dwelling and sleeping units</source>
        <translation>logements et unités de couchage</translation>
    </message>
    <message>
        <source>dwellings in that state; ask the local authority</source>
        <translation>logements dans cet État&#x202f;; demandez à l’autorité locale</translation>
    </message>
    <message>
        <source>dwellings under the former edition</source>
        <translation>logements sous l’édition précédente</translation>
    </message>
    <message>
        <source>dwellings</source>
        <translation>logements</translation>
    </message>
    <message>
        <source>dwellings, whatever path is chosen</source>
        <translation>logements, quelle que soit la voie choisie</translation>
    </message>
    <message>
        <source>dwellings, whatever path is chosen; the limit per area may stand in its place</source>
        <translation>logements, quelle que soit la voie choisie&#x202f;; la limite par surface peut en tenir lieu</translation>
    </message>
    <message>
        <source>dwellings; NLA10 may stand in its place</source>
        <translation>logements&#x202f;; NLA10 peut en tenir lieu</translation>
    </message>
    <message>
        <source>dwellings; air changes may stand in its place</source>
        <translation>logements&#x202f;; le renouvellement d’air peut en tenir lieu</translation>
    </message>
    <message>
        <source>dwellings; limits per area exist beside it and are not in this list</source>
        <translation>logements&#x202f;; des limites par surface existent à côté et ne sont pas dans cette liste</translation>
    </message>
    <message>
        <source>dwellings; visual inspection may stand in its place</source>
        <translation>logements&#x202f;; une inspection visuelle peut en tenir lieu</translation>
    </message>
    <message>
        <source>every new dwelling is tested</source>
        <translation>chaque logement neuf est mesuré</translation>
    </message>
    <message>
        <source>for tests that were made at 4 Pa only; a value carried from one pressure to the other is no test result</source>
        <translation>seulement pour des essais à 4 Pa&#x202f;; une valeur reportée d’une pression à l’autre n’est pas un résultat d’essai</translation>
    </message>
    <message>
        <source>large buildings, as a value to comply with under consideration</source>
        <translation>grands bâtiments, comme valeur à respecter à l’étude</translation>
    </message>
    <message>
        <source>large buildings, recommended</source>
        <translation>grands bâtiments, recommandé</translation>
    </message>
    <message>
        <source>multifamily dwelling units; the boundary includes walls and floors between units</source>
        <translation>logements collectifs&#x202f;; la limite comprend murs et planchers entre logements</translation>
    </message>
    <message>
        <source>new buildings</source>
        <translation>constructions neuves</translation>
    </message>
    <message>
        <source>new buildings, and renovations of 25 % of the replacement cost or more; later cycles may be stricter</source>
        <translation>constructions neuves, et rénovations d’au moins 25 % du coût de remplacement&#x202f;; les cycles suivants peuvent être plus stricts</translation>
    </message>
    <message>
        <source>new buildings; mean of both directions, net air volume within the thermal envelope</source>
        <translation>constructions neuves&#x202f;; moyenne des deux sens, volume d’air net dans l’enveloppe thermique</translation>
    </message>
    <message>
        <source>passive buildings of five storeys or more that do not burn</source>
        <translation>bâtiments passifs incombustibles de cinq étages ou plus</translation>
    </message>
    <message>
        <source>passive buildings</source>
        <translation>bâtiments passifs</translation>
    </message>
    <message>
        <source>proposed, not in force as far as known</source>
        <translation>proposé, pas en vigueur à notre connaissance</translation>
    </message>
    <message>
        <source>renovations</source>
        <translation>rénovations</translation>
    </message>
    <message>
        <source>renovations; mean of both directions, net air volume within the thermal envelope</source>
        <translation>rénovations&#x202f;; moyenne des deux sens, volume d’air net dans l’enveloppe thermique</translation>
    </message>
    <message>
        <source>single houses; per area of loss surfaces without the lowest floor: enter that as envelope area</source>
        <translation>maisons individuelles&#x202f;; par surface de parois déperditives hors plancher bas&#xa0;: saisir celle-ci comme surface d’enveloppe</translation>
    </message>
    <message>
        <source>2018 IRC text quoted on two trade pages (builderonline, gomealsgo.com)</source>
        <translation>texte de l’IRC 2018 cité sur deux pages professionnelles (builderonline, gomealsgo.com)</translation>
    </message>
    <message>
        <source>GEG § 26 as printed by two legal publishers (deubner-recht.de, enev-online.com)</source>
        <translation>GEG § 26 imprimé par deux éditeurs juridiques (deubner-recht.de, enev-online.com)</translation>
    </message>
    <message>
        <source>a note in a public repository</source>
        <translation>une note d’un dépôt public</translation>
    </message>
    <message>
        <source>a page on the directive (buildup.eu, node 1895)</source>
        <translation>une page sur la directive (buildup.eu, node 1895)</translation>
    </message>
    <message>
        <source>a state code page (up.codes, testing, prescriptive)</source>
        <translation>une page de code d’un État (up.codes, testing, prescriptive)</translation>
    </message>
    <message>
        <source>a summary of the 2009 code (docslib 471172)</source>
        <translation>un résumé du code de 2009 (docslib 471172)</translation>
    </message>
    <message>
        <source>a trade page (buildzeroconsulting.com)</source>
        <translation>une page professionnelle (buildzeroconsulting.com)</translation>
    </message>
    <message>
        <source>a trade page (reminetwork.com)</source>
        <translation>une page professionnelle (reminetwork.com)</translation>
    </message>
    <message>
        <source>a trade page (scotthomeinspection.com)</source>
        <translation>une page professionnelle (scotthomeinspection.com)</translation>
    </message>
    <message>
        <source>a trade page (walkerconsultants.com)</source>
        <translation>une page professionnelle (walkerconsultants.com)</translation>
    </message>
    <message>
        <source>an abstract of the 33rd AIVC conference (Simons and Rolfsmeier)</source>
        <translation>un résumé de la 33e conférence AIVC (Simons et Rolfsmeier)</translation>
    </message>
    <message>
        <source>from memory; a trade page of metal builders says 0.40 for one edition, not checked against the document</source>
        <translation>de mémoire&#x202f;; une page de constructeurs métalliques dit 0,40 pour une édition&#x202f;; non vérifié sur le document</translation>
    </message>
    <message>
        <source>from memory; one trade page (almostanarchitect.com) still says 3.0, not checked against the document</source>
        <translation>de mémoire&#x202f;; une page professionnelle (almostanarchitect.com) dit encore 3,0&#x202f;; non vérifié sur le document</translation>
    </message>
    <message>
        <source>from memory; that the tables use these quantities was read in a change proposal (PCF 1819), not checked against the document</source>
        <translation>de mémoire&#x202f;; que les tableaux emploient ces grandeurs a été lu dans une proposition (PCF 1819)&#x202f;; non vérifié sur le document</translation>
    </message>
    <message>
        <source>several trade pages (mosart.ie among them)</source>
        <translation>plusieurs pages professionnelles (dont mosart.ie)</translation>
    </message>
    <message>
        <source>two trade pages (partel.ie, futurehomes.org.uk)</source>
        <translation>deux pages professionnelles (partel.ie, futurehomes.org.uk)</translation>
    </message>
    <message>
        <source>two trade pages (septy.fr, ecome-energie.com)</source>
        <translation>deux pages professionnelles (septy.fr, ecome-energie.com)</translation>
    </message>
    <message>
        <source>Zones {zones}</source>
        <translation>Zones {zones}</translation>
    </message>
    <message>
        <source>Exercise</source>
        <translation>Exercice</translation>
    </message>
    <message>
        <source>An exercise of your own</source>
        <translation>Un exercice à vous</translation>
    </message>
    <message>
        <source>The exercise as text</source>
        <translation>L’exercice en texte</translation>
    </message>
    <message>
        <source>Load a file…</source>
        <translation>Charger…</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Enregistrer sous…</translation>
    </message>
    <message>
        <source>A seal comes off</source>
        <translation>Obturation défaite</translation>
    </message>
    <message>
        <source>A window stands ajar</source>
        <translation>Une fenêtre entrouverte</translation>
    </message>
    <message>
        <source>A door stands open</source>
        <translation>Une porte ouverte</translation>
    </message>
    <message>
        <source>The flue is open</source>
        <translation>Le conduit est ouvert</translation>
    </message>
    <message>
        <source>The kitchen hood runs</source>
        <translation>La hotte tourne</translation>
    </message>
    <message>
        <source>Outdoor hose slips off</source>
        <translation>Tube extérieur défait</translation>
    </message>
    <message>
        <source>Outdoor hose kinked</source>
        <translation>Tube extérieur plié</translation>
    </message>
    <message>
        <source>Outdoor hose wet</source>
        <translation>Tube extérieur mouillé</translation>
    </message>
    <message>
        <source>Outdoor hose in the wind</source>
        <translation>Tube extérieur au vent</translation>
    </message>
    <message>
        <source>Outdoor hose in the jet</source>
        <translation>Tube extérieur dans le jet</translation>
    </message>
    <message>
        <source>Hoses swapped</source>
        <translation>Tubes inversés</translation>
    </message>
    <message>
        <source>Flow range {name} fitted</source>
        <translation>Plage {name} montée</translation>
    </message>
    <message>
        <source>Something before the fan</source>
        <translation>Quelque chose devant le ventilateur</translation>
    </message>
    <message>
        <source>The fan drive trips</source>
        <translation>La commande du ventilateur se coupe</translation>
    </message>
    <message>
        <source>The gauge freezes</source>
        <translation>Le manomètre se fige</translation>
    </message>
    <message>
        <source>Readings get lost</source>
        <translation>Des lectures se perdent</translation>
    </message>
    <message>
        <source>A gust</source>
        <translation>Une rafale</translation>
    </message>
    <message>
        <source>Door of the {zone} open</source>
        <translation>Porte ouverte&#xa0;: {zone}</translation>
    </message>
    <message>
        <source> min from now</source>
        <translation> min d’ici</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>When it happens</source>
        <translation>Quand cela arrive</translation>
    </message>
    <message>
        <source>in every house</source>
        <translation>partout</translation>
    </message>
    <message>
        <source>Pull the gauge&apos;s cable</source>
        <translation>Débrancher le manomètre</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Rebrancher</translation>
    </message>
    <message>
        <source>It happens</source>
        <translation>Cela arrive</translation>
    </message>
    <message>
        <source>Faults</source>
        <translation>Pannes</translation>
    </message>
    <message>
        <source>Throw</source>
        <translation>Lancer</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Réparer</translation>
    </message>
    <message>
        <source>Throw: {fault}</source>
        <translation>Lancer&#xa0;: {fault}</translation>
    </message>
    <message>
        <source>Put right: {fault}</source>
        <translation>Réparer&#xa0;: {fault}</translation>
    </message>
    <message>
        <source>from the north</source>
        <translation>du nord</translation>
    </message>
    <message>
        <source>from the north-east</source>
        <translation>du nord-est</translation>
    </message>
    <message>
        <source>from the east</source>
        <translation>de l’est</translation>
    </message>
    <message>
        <source>from the south-east</source>
        <translation>du sud-est</translation>
    </message>
    <message>
        <source>from the south</source>
        <translation>du sud</translation>
    </message>
    <message>
        <source>from the south-west</source>
        <translation>du sud-ouest</translation>
    </message>
    <message>
        <source>from the west</source>
        <translation>de l’ouest</translation>
    </message>
    <message>
        <source>from the north-west</source>
        <translation>du nord-ouest</translation>
    </message>
    <message>
        <source>no wind</source>
        <translation>pas de vent</translation>
    </message>
    <message>
        <source>The truth is covered. T uncovers it.</source>
        <translation>La vérité est masquée. T la découvre.</translation>
    </message>
    <message>
        <source>No class is open. Choose an exercise at the right and open the class.</source>
        <translation>Aucune classe n’est ouverte. Choisissez un exercice à droite et ouvrez la classe.</translation>
    </message>
    <message>
        <source>The house as a section</source>
        <translation>La maison en coupe</translation>
    </message>
    <message>
        <source>fan {flow} into the house</source>
        <translation>ventilateur {flow} vers la maison</translation>
    </message>
    <message>
        <source>fan {flow} out of the house</source>
        <translation>ventilateur {flow} hors de la maison</translation>
    </message>
    <message>
        <source>{fan}, range {name}</source>
        <translation>{fan}, plage {name}</translation>
    </message>
    <message>
        <source>fan at rest</source>
        <translation>ventilateur à l’arrêt</translation>
    </message>
    <message>
        <source>{temperature} outdoors</source>
        <translation>dehors {temperature}</translation>
    </message>
    <message>
        <source>{house}, time stands still</source>
        <translation>{house}, le temps est arrêté</translation>
    </message>
    <message>
        <source>in truth {low} at −50 Pa, {high} at +50 Pa</source>
        <translation>en vérité {low} à −50 Pa, {high} à +50 Pa</translation>
    </message>
    <message>
        <source>{flow}, sealed</source>
        <translation>{flow}, bouchée</translation>
    </message>
    <message>
        <source>Nothing has happened in this house, and nothing is to come.</source>
        <translation>Rien n’est arrivé dans cette maison, et rien n’est prévu.</translation>
    </message>
    <message>
        <source>Times are those of the house. What you throw in the tab Faults for later stands here until it happens.</source>
        <translation>Les temps sont ceux de la maison. Ce que vous lancez sous Pannes pour plus tard figure ici jusque-là.</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Take back: {moment}</source>
        <translation>Annuler&#xa0;: {moment}</translation>
    </message>
    <message>
        <source>Timeline</source>
        <translation>Chronologie</translation>
    </message>
    <message>
        <source>fan + {time}</source>
        <translation>ventil. + {time}</translation>
    </message>
    <message>
        <source>at {time}</source>
        <translation>à {time}</translation>
    </message>
    <message>
        <source>Result and truth</source>
        <translation>Résultat et vérité</translation>
    </message>
    <message>
        <source>Bar: the interval given. Dot: the value given. Line: the truth.</source>
        <translation>Barre&#xa0;: l’intervalle donné. Point&#xa0;: la valeur donnée. Trait&#xa0;: la vérité.</translation>
    </message>
    <message>
        <source> of {most}</source>
        <translation> sur {most}</translation>
    </message>
    <message>
        <source>A simulated house with invented data. Half points for half of what was asked.</source>
        <translation>Une maison simulée, données inventées. La moitié des points pour la moitié de ce qui était demandé.</translation>
    </message>
    <message>
        <source>Exercise {exercise} in {house}</source>
        <translation>Exercice {exercise} dans {house}</translation>
    </message>
    <message>
        <source>Job {job}</source>
        <translation>Dossier {job}</translation>
    </message>
    <message>
        <source>{count} minutes</source>
        <translation>{count} minutes</translation>
    </message>
    <message>
        <source>Noticed</source>
        <translation>Remarqué</translation>
    </message>
    <message>
        <source>Missed</source>
        <translation>Manqué</translation>
    </message>
    <message>
        <source>Wrong steps</source>
        <translation>Fausses étapes</translation>
    </message>
    <message>
        <source>There is no result to hold against the truth.</source>
        <translation>Il n’y a pas de résultat à comparer à la vérité.</translation>
    </message>
    <message>
        <source>Depressurize and pressurize</source>
        <translation>Dépression et surpression</translation>
    </message>
    <message>
        <source>Pressurize and depressurize</source>
        <translation>Surpression et dépression</translation>
    </message>
    <message>
        <source>pressurize and depressurize</source>
        <translation>surpression et dépression</translation>
    </message>
    <message>
        <source>There is no result.</source>
        <translation>Il n’y a pas de résultat.</translation>
    </message>
    <message>
        <source>There is no test.</source>
        <translation>Il n’y a pas d’essai.</translation>
    </message>
    <message>
        <source>No data</source>
        <translation>Pas de données</translation>
    </message>
    <message>
        <source>Data {age} s old</source>
        <translation>Données vieilles de {age} s</translation>
    </message>
    <message>
        <source>Change since the beginning</source>
        <translation>Variation depuis le début</translation>
    </message>
    <message>
        <source>Does the screen go dark? Lengthen the time-out of the phone.</source>
        <translation>L’écran s’éteint ? Allongez le délai de mise en veille du téléphone.</translation>
    </message>
    <message>
        <source>Given {value} ({interval}), in truth {true} {unit} at 50 Pa: {off} %. {direction}.</source>
        <translation>Donné {value} ({interval}), en vérité {true} {unit} à 50 Pa : {off} %. {direction}.</translation>
    </message>
    <message>
        <source>{said}, in truth {true} {unit} at 50 Pa: {off} %, {within} % are allowed.</source>
        <translation>{said}, en vérité {true} {unit} à 50 Pa : {off} %, {within} % sont admis.</translation>
    </message>
    <message>
        <source>{low} to {high}, in truth {true} {unit}.</source>
        <translation>{low} à {high}, en vérité {true} {unit}.</translation>
    </message>
    <message>
        <source>Zero-flow pressure was read before and after the points.</source>
        <translation>La pression à débit nul a été lue avant et après les points.</translation>
    </message>
    <message>
        <source>No zero-flow pressure was read {when}.</source>
        <translation>La pression à débit nul n’a pas été lue {when}.</translation>
    </message>
    <message>
        <source>before the points ({direction})</source>
        <translation>avant les points ({direction})</translation>
    </message>
    <message>
        <source>after the points ({direction})</source>
        <translation>après les points ({direction})</translation>
    </message>
    <message>
        <source>before the points ({direction}), {more}</source>
        <translation>avant les points ({direction}), {more}</translation>
    </message>
    <message>
        <source>after the points ({direction}), {more}</source>
        <translation>après les points ({direction}), {more}</translation>
    </message>
    <message>
        <source>The flow range entered was {entered}, fitted is {fitted}.</source>
        <translation>La plage saisie était {entered}, celle montée est {fitted}.</translation>
    </message>
    <message>
        <source>{count} points lie outside what the flow range {name} can measure.</source>
        <translation>{count} points sont hors de ce que la plage {name} peut mesurer.</translation>
    </message>
    <message>
        <source>The flow range {name} was entered and is fitted; every point lies within it.</source>
        <translation>La plage {name} était saisie et montée&#x202f;; chaque point y est.</translation>
    </message>
    <message>
        <source>Tested: {directions}.</source>
        <translation>Mesuré&#xa0;: {directions}.</translation>
    </message>
    <message>
        <source>No test in too much wind was given as good.</source>
        <translation>Aucun essai par trop de vent n’a été donné pour bon.</translation>
    </message>
    <message>
        <source>Tested in {wind} m/s, and said so: “{text}”</source>
        <translation>Mesuré par {wind} m/s, et l’a dit&#xa0;: «&#xa0;{text}&#xa0;»</translation>
    </message>
    <message>
        <source>A test in {wind} m/s of wind was given as good, without a word about it.</source>
        <translation>Un essai par {wind} m/s de vent a été donné pour bon, sans un mot à ce sujet.</translation>
    </message>
    <message>
        <source>Nothing was written about it: {event}</source>
        <translation>Rien n’a été écrit à ce sujet&#xa0;: {event}</translation>
    </message>
    <message>
        <source>Nothing of the kind was written down.</source>
        <translation>Rien de tel n’a été noté.</translation>
    </message>
    <message>
        <source>No number was written beside “{word}”; right is {value}, give or take {within}.</source>
        <translation>Aucun nombre n’était écrit près de «&#xa0;{word}&#xa0;»&#x202f;; juste est {value}, à {within} près.</translation>
    </message>
    <message>
        <source>{best} was written, right is {value}, give or take {within}.</source>
        <translation>{best} était écrit, juste est {value}, à {within} près.</translation>
    </message>
    <message>
        <source>The questions were answered all at once by the test, not each by itself before it.</source>
        <translation>Les questions ont été répondues d’un coup par l’essai, non chacune avant lui.</translation>
    </message>
    <message>
        <source>Not answered before the fan turned: {names}.</source>
        <translation>Sans réponse avant que le ventilateur tourne&#xa0;: {names}.</translation>
    </message>
    <message>
        <source>Answered otherwise than it is: {names}.</source>
        <translation>Répondu autrement que ce n’est&#xa0;: {names}.</translation>
    </message>
    <message>
        <source>Every question was answered before the fan turned, as it is.</source>
        <translation>Chaque question a eu sa réponse avant que le ventilateur tourne, telle quelle.</translation>
    </message>
    <message>
        <source>{count} minutes, allowed are {allowed}.</source>
        <translation>{count} minutes, {allowed} sont permises.</translation>
    </message>
    <message>
        <source>The result is made of points from before and after the house changed: it is true of neither.</source>
        <translation>Le résultat mêle des points d’avant et d’après le changement de la maison&#xa0;: il n’est vrai d’aucun.</translation>
    </message>
    <message>
        <source>A seal came off: {leak}.</source>
        <translation>Une obturation s’est défaite&#xa0;: {leak}.</translation>
    </message>
    <message>
        <source>A window stood ajar, {wall}.</source>
        <translation>Une fenêtre était entrouverte, {wall}.</translation>
    </message>
    <message>
        <source>A door stood open, {wall}.</source>
        <translation>Une porte était ouverte, {wall}.</translation>
    </message>
    <message>
        <source>The flue was open.</source>
        <translation>Le conduit était ouvert.</translation>
    </message>
    <message>
        <source>The kitchen hood ran.</source>
        <translation>La hotte tournait.</translation>
    </message>
    <message>
        <source>The outdoor hose had slipped off.</source>
        <translation>Le tube extérieur s’était défait.</translation>
    </message>
    <message>
        <source>The outdoor hose was kinked.</source>
        <translation>Le tube extérieur était plié.</translation>
    </message>
    <message>
        <source>There was water in the outdoor hose.</source>
        <translation>Il y avait de l’eau dans le tube extérieur.</translation>
    </message>
    <message>
        <source>The outdoor hose moved in the wind.</source>
        <translation>Le tube extérieur bougeait au vent.</translation>
    </message>
    <message>
        <source>The outdoor hose lay in the jet.</source>
        <translation>Le tube extérieur était dans le jet.</translation>
    </message>
    <message>
        <source>The hoses were swapped.</source>
        <translation>Les tubes étaient inversés.</translation>
    </message>
    <message>
        <source>The flow range {name} was fitted, unsaid.</source>
        <translation>La plage {name} était montée, sans le dire.</translation>
    </message>
    <message>
        <source>Something lay before the fan.</source>
        <translation>Quelque chose gênait le ventilateur.</translation>
    </message>
    <message>
        <source>The fan drive had switched itself off.</source>
        <translation>La commande du ventilateur s’était coupée.</translation>
    </message>
    <message>
        <source>The gauge repeated its last reading.</source>
        <translation>Le manomètre répétait sa dernière lecture.</translation>
    </message>
    <message>
        <source>Three readings in ten got lost.</source>
        <translation>Trois lectures sur dix se perdaient.</translation>
    </message>
    <message>
        <source>The {zone} stood open.</source>
        <translation>Était ouvert&#xa0;: {zone}.</translation>
    </message>
    <message>
        <source>The leak {leak} became {times} times as large.</source>
        <translation>La fuite {leak} est devenue {times} fois plus grande.</translation>
    </message>
    <message>
        <source>address</source>
        <translation>adresse</translation>
    </message>
    <message>
        <source>certificate</source>
        <translation>certificat</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>équipement</translation>
    </message>
    <message>
        <source>file</source>
        <translation>fichier</translation>
    </message>
    <message>
        <source>folder</source>
        <translation>dossier</translation>
    </message>
    <message>
        <source>geometry</source>
        <translation>géométrie</translation>
    </message>
    <message>
        <source>leak</source>
        <translation>fuite</translation>
    </message>
    <message>
        <source>leaks</source>
        <translation>fuites</translation>
    </message>
    <message>
        <source>logo</source>
        <translation>logo</translation>
    </message>
    <message>
        <source>method</source>
        <translation>méthode</translation>
    </message>
    <message>
        <source>office</source>
        <translation>bureau</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>photo</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>repère</translation>
    </message>
    <message>
        <source>register</source>
        <translation>registre</translation>
    </message>
    <message>
        <source>revision</source>
        <translation>révision</translation>
    </message>
    <message>
        <source>safety</source>
        <translation>sécurité</translation>
    </message>
    <message>
        <source>schedule</source>
        <translation>programme</translation>
    </message>
    <message>
        <source>seal</source>
        <translation>obturation</translation>
    </message>
    <message>
        <source>situation</source>
        <translation>situation</translation>
    </message>
    <message>
        <source>storeys</source>
        <translation>niveaux</translation>
    </message>
    <message>
        <source>version</source>
        <translation>version</translation>
    </message>
    <message>
        <source>weather</source>
        <translation>météo</translation>
    </message>
    <message>
        <source>battery empty</source>
        <translation>batterie vide</translation>
    </message>
    <message>
        <source>computer slept</source>
        <translation>ordinateur en veille</translation>
    </message>
    <message>
        <source>fan link lost</source>
        <translation>ventilateur muet</translation>
    </message>
    <message>
        <source>fan still turns</source>
        <translation>ventilateur tourne encore</translation>
    </message>
    <message>
        <source>fan switched off</source>
        <translation>ventilateur éteint</translation>
    </message>
    <message>
        <source>fan stronger</source>
        <translation>ventilateur plus fort</translation>
    </message>
    <message>
        <source>fan weaker</source>
        <translation>ventilateur plus faible</translation>
    </message>
    <message>
        <source>flow alone moved</source>
        <translation>débit seul</translation>
    </message>
    <message>
        <source>flow hose off</source>
        <translation>tuyau de débit ôté</translation>
    </message>
    <message>
        <source>flow hose reversed</source>
        <translation>tuyau de débit inversé</translation>
    </message>
    <message>
        <source>gauge frozen</source>
        <translation>appareil figé</translation>
    </message>
    <message>
        <source>gauge silent</source>
        <translation>appareil muet</translation>
    </message>
    <message>
        <source>hose pinched</source>
        <translation>tuyau pincé</translation>
    </message>
    <message>
        <source>hose dull</source>
        <translation>tuyau sourd</translation>
    </message>
    <message>
        <source>hose restless</source>
        <translation>tuyau agité</translation>
    </message>
    <message>
        <source>hoses swapped</source>
        <translation>tuyaux échangés</translation>
    </message>
    <message>
        <source>knob moved</source>
        <translation>bouton tourné</translation>
    </message>
    <message>
        <source>lasting step</source>
        <translation>changement durable</translation>
    </message>
    <message>
        <source>leakage jumped</source>
        <translation>saut de fuite</translation>
    </message>
    <message>
        <source>noise on the line</source>
        <translation>ligne perturbée</translation>
    </message>
    <message>
        <source>too much flow</source>
        <translation>trop de débit</translation>
    </message>
    <message>
        <source>no flow</source>
        <translation>aucun débit</translation>
    </message>
    <message>
        <source>fan still blows</source>
        <translation>souffle encore</translation>
    </message>
    <message>
        <source>no pressure</source>
        <translation>aucune pression</translation>
    </message>
    <message>
        <source>not settled</source>
        <translation>non stabilisé</translation>
    </message>
    <message>
        <source>out of range</source>
        <translation>hors plage</translation>
    </message>
    <message>
        <source>pressure alone moved</source>
        <translation>pression seule</translation>
    </message>
    <message>
        <source>pressure collapsed</source>
        <translation>pression effondrée</translation>
    </message>
    <message>
        <source>pressure too high</source>
        <translation>pression trop haute</translation>
    </message>
    <message>
        <source>program held up</source>
        <translation>programme bloqué</translation>
    </message>
    <message>
        <source>other range</source>
        <translation>autre plage</translation>
    </message>
    <message>
        <source>range doubtful</source>
        <translation>plage douteuse</translation>
    </message>
    <message>
        <source>readings missing</source>
        <translation>lectures manquantes</translation>
    </message>
    <message>
        <source>readings repeated</source>
        <translation>lectures répétées</translation>
    </message>
    <message>
        <source>gap in time</source>
        <translation>trou de temps</translation>
    </message>
    <message>
        <source>wrong sign</source>
        <translation>mauvais signe</translation>
    </message>
    <message>
        <source>zero high</source>
        <translation>zéro élevé</translation>
    </message>
    <message>
        <source>The flow of these points is worked out anew: {targets} Pa.</source>
        <translation>Le débit de ces points est recalculé : {targets} Pa.</translation>
    </message>
    <message>
        <source>Some points leave the line as a wrong flow range makes them. What was so?</source>
        <translation>Des points s’écartent de la droite comme le fait une gamme fausse. Qu’en était-il ?</translation>
    </message>
    <message>
        <source>With which flow range were they read?</source>
        <translation>Avec quelle gamme ont-ils été lus ?</translation>
    </message>
    <message>
        <source>What had been entered stays in the record, and the report says so. It can be taken back.</source>
        <translation>Ce qui avait été saisi reste dans l’enregistrement, et le rapport le dit. On peut revenir en arrière.</translation>
    </message>
    <message>
        <source>{targets} Pa: range {name}; {line}</source>
        <translation>{targets} Pa : gamme {name} ; {line}</translation>
    </message>
    <message>
        <source>Fan {fan}: range {name}</source>
        <translation>Ventilateur {fan} : gamme {name}</translation>
    </message>
    <message>
        <source>As it was entered</source>
        <translation>Comme saisi</translation>
    </message>
    <message>
        <source>Fan {fan}: as it was entered</source>
        <translation>Ventilateur {fan} : comme saisi</translation>
    </message>
    <message>
        <source>Range {name}</source>
        <translation>Gamme {name}</translation>
    </message>
    <message>
        <source>Range {name}; {line}</source>
        <translation>Gamme {name} ; {line}</translation>
    </message>
    <message>
        <source>{percent} % off the line, n {exponent}</source>
        <translation>{percent} % hors de la droite, n {exponent}</translation>
    </message>
</context>
</TS>
