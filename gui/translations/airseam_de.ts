<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE">
<context>
    <name></name>
    <message>
        <source>Theme as the system</source>
        <translation>Darstellung wie das System</translation>
    </message>
    <message>
        <source>Dark theme</source>
        <translation>Dunkle Darstellung</translation>
    </message>
    <message>
        <source>Light theme (daylight)</source>
        <translation>Helle Darstellung (Tageslicht)</translation>
    </message>
    <message>
        <source>Sunlight theme (black on white)</source>
        <translation>Darstellung für Sonne (schwarz auf weiß)</translation>
    </message>
    <message>
        <source>SI units</source>
        <translation>SI-Einheiten</translation>
    </message>
    <message>
        <source>US units</source>
        <translation>US-Einheiten</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Test</source>
        <translation>&amp;Messung</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>New job…</source>
        <translation>Neuer Auftrag …</translation>
    </message>
    <message>
        <source>Open a job…</source>
        <translation>Auftrag öffnen …</translation>
    </message>
    <message>
        <source>Recent jobs</source>
        <translation>Zuletzt geöffnete Aufträge</translation>
    </message>
    <message>
        <source>Undo the last edit</source>
        <translation>Letzte Änderung zurücknehmen</translation>
    </message>
    <message>
        <source>Redo it</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Save the report as PDF…</source>
        <translation>Bericht als PDF sichern …</translation>
    </message>
    <message>
        <source>Export the tables as CSV…</source>
        <translation>Tabellen als CSV ausgeben …</translation>
    </message>
    <message>
        <source>Export the test as JSON…</source>
        <translation>Messung als JSON ausgeben …</translation>
    </message>
    <message>
        <source>Close Airseam</source>
        <translation>Airseam beenden</translation>
    </message>
    <message>
        <source>How far the points lie off the line</source>
        <translation>Wie weit die Punkte neben der Linie liegen</translation>
    </message>
    <message>
        <source>From the readings to the line</source>
        <translation>Von den Messwerten zur Linie</translation>
    </message>
    <message>
        <source>Show all in the plots</source>
        <translation>In den Diagrammen alles zeigen</translation>
    </message>
    <message>
        <source>Strike or restore the chosen point</source>
        <translation>Gewählten Punkt streichen oder wieder aufnehmen</translation>
    </message>
    <message>
        <source>Decimal comma</source>
        <translation>Dezimalkomma</translation>
    </message>
    <message>
        <source>Change the units</source>
        <translation>Einheiten wechseln</translation>
    </message>
    <message>
        <source>Next theme</source>
        <translation>Nächste Darstellung</translation>
    </message>
    <message>
        <source>Whole screen, in Hunt the distance view</source>
        <translation>Ganzer Bildschirm, in der Lecksuche die Fernansicht</translation>
    </message>
    <message>
        <source>Window of the trainer of a class</source>
        <translation>Fenster der Kursleitung</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Find a command…</source>
        <translation>Befehl suchen …</translation>
    </message>
    <message>
        <source>Press the big button</source>
        <translation>Große Taste drücken</translation>
    </message>
    <message>
        <source>Export the air infiltration as HPXML…</source>
        <translation>Luftinfiltration als HPXML ausgeben …</translation>
    </message>
    <message>
        <source>Copy the points for a spreadsheet</source>
        <translation>Punkte für eine Tabellenkalkulation kopieren</translation>
    </message>
    <message>
        <source>Copy the results for a spreadsheet</source>
        <translation>Ergebnisse für eine Tabellenkalkulation kopieren</translation>
    </message>
    <message>
        <source>Find a job in a folder…</source>
        <translation>Auftrag in einem Ordner suchen …</translation>
    </message>
    <message>
        <source>Copy the job into the backup folder</source>
        <translation>Auftrag in den Sicherungsordner kopieren</translation>
    </message>
    <message>
        <source>Worst case of the exhaust fans…</source>
        <translation>Ungünstigster Fall der Abluftventilatoren …</translation>
    </message>
    <message>
        <source>Type in a hand-written test…</source>
        <translation>Handschriftliche Messung eingeben …</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Open job files with this program</source>
        <translation>Auftragsdateien mit diesem Programm öffnen</translation>
    </message>
    <message>
        <source>Save the key sheet for printing…</source>
        <translation>Tastenblatt zum Drucken sichern …</translation>
    </message>
    <message>
        <source>Save a bundle for support…</source>
        <translation>Paket für den Support sichern …</translation>
    </message>
    <message>
        <source>Hold a pressure</source>
        <translation>Druck halten</translation>
    </message>
    <message>
        <source>Hold 5 Pa more</source>
        <translation>5 Pa mehr halten</translation>
    </message>
    <message>
        <source>Hold 5 Pa less</source>
        <translation>5 Pa weniger halten</translation>
    </message>
    <message>
        <source>Hold it in the other direction</source>
        <translation>In der anderen Richtung halten</translation>
    </message>
    <message>
        <source>Read the zero-flow pressure again</source>
        <translation>Natürliche Druckdifferenz neu messen</translation>
    </message>
    <message>
        <source>End the hold</source>
        <translation>Halten beenden</translation>
    </message>
    <message>
        <source>Sealing starts</source>
        <translation>Abdichten beginnt</translation>
    </message>
    <message>
        <source>Sealing is done</source>
        <translation>Abdichten ist fertig</translation>
    </message>
    <message>
        <source>Note of this moment</source>
        <translation>Notiz zu diesem Augenblick</translation>
    </message>
    <message>
        <source>New leak</source>
        <translation>Neue Leckage</translation>
    </message>
    <message>
        <source>Count the change from here</source>
        <translation>Änderung ab hier zählen</translation>
    </message>
    <message>
        <source>Take the chosen point again</source>
        <translation>Gewählten Punkt noch einmal messen</translation>
    </message>
    <message>
        <source>Another flow range is fitted…</source>
        <translation>Ein anderer Messbereich ist eingesetzt …</translation>
    </message>
    <message>
        <source>Correct the flow range of points…</source>
        <translation>Messbereich von Messpunkten berichtigen …</translation>
    </message>
    <message>
        <source>Go on with the test that was cut short</source>
        <translation>Unterbrochene Messung fortsetzen</translation>
    </message>
    <message>
        <source>Play a recorded test back</source>
        <translation>Aufgezeichnete Messung abspielen</translation>
    </message>
    <message>
        <source>The folder for jobs cannot be made ({reason}): {folder}.</source>
        <translation>Der Ordner für Aufträge lässt sich nicht anlegen ({reason}): {folder}.</translation>
    </message>
    <message>
        <source>This is a sample job, kept as {path}. Make one of your own with Ctrl+N.</source>
        <translation>Dies ist ein Beispielauftrag, gesichert als {path}. Einen eigenen legen Sie mit Strg+N an.</translation>
    </message>
    <message>
        <source>The program made a mistake ({kind}: {error}). What was read is kept.</source>
        <translation>Das Programm hat einen Fehler gemacht ({kind}: {error}). Was gemessen wurde, bleibt erhalten.</translation>
    </message>
    <message>
        <source>Everything is saved as you type.</source>
        <translation>Alles wird beim Eingeben gesichert.</translation>
    </message>
    <message>
        <source>A test is running: what you change here counts from the next test on.</source>
        <translation>Eine Messung läuft: Was Sie hier ändern, gilt ab der nächsten.</translation>
    </message>
    <message>
        <source>There is no simulated house {name}.</source>
        <translation>Es gibt kein simuliertes Haus {name}.</translation>
    </message>
    <message>
        <source>The fan did not confirm that it is at rest. Look at it, and pull its plug if it turns.</source>
        <translation>Das Gebläse hat nicht bestätigt, dass es steht. Sehen Sie nach, und ziehen Sie den Stecker, wenn es dreht.</translation>
    </message>
    <message>
        <source>The rig could not be closed cleanly ({error}). Look whether the fan stands still.</source>
        <translation>Der Messaufbau ließ sich nicht sauber schließen ({error}). Sehen Sie nach, ob das Gebläse steht.</translation>
    </message>
    <message>
        <source>A test is running: end it before another rig is connected.</source>
        <translation>Eine Messung läuft: Beenden Sie sie, bevor ein anderer Messaufbau verbunden wird.</translation>
    </message>
    <message>
        <source>The rig could not be connected: {error}.</source>
        <translation>Der Messaufbau ließ sich nicht verbinden: {error}.</translation>
    </message>
    <message>
        <source>The test ended by a fault of the program.</source>
        <translation>Die Messung endete durch einen Fehler des Programms.</translation>
    </message>
    <message>
        <source>Say why it is left as it is.</source>
        <translation>Sagen Sie, warum es so bleibt.</translation>
    </message>
    <message>
        <source>The name of the second person is needed.</source>
        <translation>Der Name der zweiten Person fehlt.</translation>
    </message>
    <message>
        <source>The picture cannot be read ({reason}): {path}.</source>
        <translation>Das Bild lässt sich nicht lesen ({reason}): {path}.</translation>
    </message>
    <message>
        <source>A test is running: end it before another job is opened.</source>
        <translation>Eine Messung läuft: Beenden Sie sie, bevor ein anderer Auftrag geöffnet wird.</translation>
    </message>
    <message>
        <source>Not put back in {name}: {what}.</source>
        <translation>Nicht zurückgestellt bei {name}: {what}.</translation>
    </message>
    <message>
        <source>Test {number} could not be read: {error}.</source>
        <translation>Messung {number} ließ sich nicht lesen: {error}.</translation>
    </message>
    <message>
        <source>The test cannot start: {error}.</source>
        <translation>Die Messung kann nicht beginnen: {error}.</translation>
    </message>
    <message>
        <source>The safety answers do not allow to depressurize: the house is pressurized.</source>
        <translation>Die Sicherheitsantworten erlauben keinen Unterdruck: Es wird Überdruck erzeugt.</translation>
    </message>
    <message>
        <source>The point could not be changed: {error}.</source>
        <translation>Der Punkt ließ sich nicht ändern: {error}.</translation>
    </message>
    <message>
        <source>Reading the jobs…</source>
        <translation>Die Aufträge werden gelesen …</translation>
    </message>
    <message>
        <source>The folder cannot be read: {reason}.</source>
        <translation>Der Ordner lässt sich nicht lesen: {reason}.</translation>
    </message>
    <message>
        <source>The folder in which the jobs are kept</source>
        <translation>Der Ordner, in dem die Aufträge liegen</translation>
    </message>
    <message>
        <source>Export the table</source>
        <translation>Tabelle ausgeben</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>{count} tables of {jobs} jobs are saved in {folder}.</source>
        <translation>{count} Tabellen von {jobs} Aufträgen sind in {folder} gesichert.</translation>
    </message>
    <message>
        <source>The tables could not be saved: {reason}.</source>
        <translation>Die Tabellen ließen sich nicht sichern: {reason}.</translation>
    </message>
    <message>
        <source>Export all tables into a folder</source>
        <translation>Alle Tabellen in einen Ordner ausgeben</translation>
    </message>
    <message>
        <source>Open a job first: it is the one that is copied.</source>
        <translation>Öffnen Sie zuerst einen Auftrag: Er wird kopiert.</translation>
    </message>
    <message>
        <source>A folder for backup copies</source>
        <translation>Ein Ordner für Sicherungskopien</translation>
    </message>
    <message>
        <source>The job was not copied. {sentence}</source>
        <translation>Der Auftrag wurde nicht kopiert. {sentence}</translation>
    </message>
    <message>
        <source>The job is copied as {written}.</source>
        <translation>Der Auftrag ist kopiert als {written}.</translation>
    </message>
    <message>
        <source>Open a job first: the test is kept in it.</source>
        <translation>Öffnen Sie zuerst einen Auftrag: Darin wird die Messung gesichert.</translation>
    </message>
    <message>
        <source>A test is running: end it before another one is kept.</source>
        <translation>Eine Messung läuft: Beenden Sie sie, bevor eine andere gesichert wird.</translation>
    </message>
    <message>
        <source>Kept as test {number}, marked as typed from a hand-written record.</source>
        <translation>Gesichert als Messung {number}, gekennzeichnet als aus einer Handschrift eingegeben.</translation>
    </message>
    <message>
        <source>There are no points to copy.</source>
        <translation>Es gibt keine Punkte zu kopieren.</translation>
    </message>
    <message>
        <source>The points are in the clipboard, ready for a spreadsheet.</source>
        <translation>Die Punkte sind in der Zwischenablage, bereit für eine Tabellenkalkulation.</translation>
    </message>
    <message>
        <source>There is no result to copy.</source>
        <translation>Es gibt kein Ergebnis zu kopieren.</translation>
    </message>
    <message>
        <source>The results are in the clipboard, ready for a spreadsheet.</source>
        <translation>Die Ergebnisse sind in der Zwischenablage, bereit für eine Tabellenkalkulation.</translation>
    </message>
    <message>
        <source>Written: {path}.</source>
        <translation>Geschrieben: {path}.</translation>
    </message>
    <message>
        <source>It could not be written: {reason}.</source>
        <translation>Das ließ sich nicht schreiben: {reason}.</translation>
    </message>
    <message>
        <source>Save the report</source>
        <translation>Bericht sichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Export the test</source>
        <translation>Messung ausgeben</translation>
    </message>
    <message>
        <source>JSON (*.json)</source>
        <translation>JSON (*.json)</translation>
    </message>
    <message>
        <source>Export as HPXML</source>
        <translation>Als HPXML ausgeben</translation>
    </message>
    <message>
        <source>HPXML (*.xml)</source>
        <translation>HPXML (*.xml)</translation>
    </message>
    <message>
        <source>Export the tables into a folder</source>
        <translation>Tabellen in einen Ordner ausgeben</translation>
    </message>
    <message>
        <source>Preparation sheet</source>
        <translation>Vorbereitungsblatt</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>Text (*.txt)</translation>
    </message>
    <message>
        <source>Save the plot</source>
        <translation>Diagramm sichern</translation>
    </message>
    <message>
        <source>The plot could not be saved: {reason}.</source>
        <translation>Das Diagramm ließ sich nicht sichern: {reason}.</translation>
    </message>
    <message>
        <source>The plot is saved as {written}.</source>
        <translation>Das Diagramm ist gesichert als {written}.</translation>
    </message>
    <message>
        <source>There is no test yet to make a report of.</source>
        <translation>Es gibt noch keine Messung für einen Bericht.</translation>
    </message>
    <message>
        <source>The test is still running; the report follows when it has ended.</source>
        <translation>Die Messung läuft noch; der Bericht folgt, wenn sie beendet ist.</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>Bilder (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <source>A photo of it</source>
        <translation>Ein Foto davon</translation>
    </message>
    <message>
        <source>{word}: on, {phones}</source>
        <translation>{word}: an, {phones}</translation>
    </message>
    <message>
        <source>The time is up: stop the fog, look once more.</source>
        <translation>Die Zeit ist um: Nebel abstellen, noch einmal hinsehen.</translation>
    </message>
    <message>
        <source>{time} left</source>
        <translation>noch {time}</translation>
    </message>
    <message>
        <source>This machine has no program that plays a sound (paplay or aplay).</source>
        <translation>Dieser Rechner hat kein Programm, das einen Ton abspielt (paplay oder aplay).</translation>
    </message>
    <message>
        <source>Hold a pressure first: the house has to stand while a zone is read.</source>
        <translation>Halten Sie zuerst einen Druck: Das Haus muss ruhig stehen, während eine Zone gemessen wird.</translation>
    </message>
    <message>
        <source>No gauge of the rig reads a zone: type what your gauge shows.</source>
        <translation>Kein Gerät des Messaufbaus misst eine Zone: Geben Sie ein, was Ihr Gerät zeigt.</translation>
    </message>
    <message>
        <source>Leak {leak}</source>
        <translation>Leckage {leak}</translation>
    </message>
    <message>
        <source>What was held cannot be judged: {error}.</source>
        <translation>Was gehalten wurde, lässt sich nicht beurteilen: {error}.</translation>
    </message>
    <message>
        <source>No pressure is held: begin to hold one first (H).</source>
        <translation>Es wird kein Druck gehalten: Beginnen Sie zuerst damit (H).</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>House</source>
        <translation>Haus</translation>
    </message>
    <message>
        <source>Exercises (*.toml)</source>
        <translation>Übungen (*.toml)</translation>
    </message>
    <message>
        <source>Exercises and jobs (*.toml *.airseam)</source>
        <translation>Übungen und Aufträge (*.toml *.airseam)</translation>
    </message>
    <message>
        <source>Airseam class</source>
        <translation>Airseam Klasse</translation>
    </message>
    <message>
        <source>Cover the truth (T)</source>
        <translation>Wahrheit verdecken (T)</translation>
    </message>
    <message>
        <source>Freeze the picture (F)</source>
        <translation>Bild anhalten (F)</translation>
    </message>
    <message>
        <source>Host and port for the students: {address}</source>
        <translation>Adresse und Anschluss für die Teilnehmer: {address}</translation>
    </message>
    <message>
        <source>The class ended by a mistake of the program ({error}).</source>
        <translation>Die Klasse endete durch einen Fehler des Programms ({error}).</translation>
    </message>
    <message>
        <source>{title}: {minutes} minutes, {points} points.</source>
        <translation>{title}: {minutes} Minuten, {points} Punkte.</translation>
    </message>
    <message>
        <source>The truth of the houses cannot be kept: {reason}.</source>
        <translation>Die Wahrheit der Häuser kann nicht gesichert werden: {reason}.</translation>
    </message>
    <message>
        <source>The job of a student</source>
        <translation>Der Auftrag eines Teilnehmers</translation>
    </message>
    <message>
        <source>Jobs (*.airseam)</source>
        <translation>Aufträge (*.airseam)</translation>
    </message>
    <message>
        <source>The jobs could not be marked: {error}.</source>
        <translation>Die Aufträge konnten nicht bewertet werden: {error}.</translation>
    </message>
    <message>
        <source>1 job in {folder} marked.</source>
        <translation>1 Auftrag in {folder} bewertet.</translation>
    </message>
    <message>
        <source>{count} jobs in {folder} marked.</source>
        <translation>{count} Aufträge in {folder} bewertet.</translation>
    </message>
    <message>
        <source>The sheets could not be written: {error}.</source>
        <translation>Die Bewertungsblätter konnten nicht geschrieben werden: {error}.</translation>
    </message>
    <message>
        <source>The program beside drives the fan; the students watch.</source>
        <translation>Das Programm daneben steuert das Gebläse; die Teilnehmer sehen zu.</translation>
    </message>
    <message>
        <source>The program beside joins as Beamer.</source>
        <translation>Das Programm daneben nimmt als Beamer teil.</translation>
    </message>
    <message>
        <source>Load an exercise, or a job as one</source>
        <translation>Eine Übung laden, oder einen Auftrag als solche</translation>
    </message>
    <message>
        <source>Save the exercise</source>
        <translation>Übung sichern</translation>
    </message>
    <message>
        <source>Write the sheets into a folder</source>
        <translation>Bewertungsblätter in einen Ordner schreiben</translation>
    </message>
    <message>
        <source>Write the rig files into a folder</source>
        <translation>Messaufbau-Dateien in einen Ordner schreiben</translation>
    </message>
    <message>
        <source>The house</source>
        <translation>Das Haus</translation>
    </message>
    <message>
        <source>The class</source>
        <translation>Die Klasse</translation>
    </message>
    <message>
        <source>New job: where is it kept?</source>
        <translation>Neuer Auftrag: Wo soll er liegen?</translation>
    </message>
    <message>
        <source>Open a job</source>
        <translation>Auftrag öffnen</translation>
    </message>
    <message>
        <source>A photo of the leak</source>
        <translation>Ein Foto der Leckage</translation>
    </message>
    <message>
        <source>A plan for the pins</source>
        <translation>Ein Plan für die Nadeln</translation>
    </message>
    <message>
        <source>What was copied is no picture.</source>
        <translation>Was kopiert wurde, ist kein Bild.</translation>
    </message>
    <message>
        <source>Choose the leak first that the picture is of.</source>
        <translation>Wählen Sie zuerst die Leckage, die das Bild zeigt.</translation>
    </message>
    <message>
        <source>Hand-outs: into which folder?</source>
        <translation>Handzettel: in welchen Ordner?</translation>
    </message>
    <message>
        <source>Done today: into which folder?</source>
        <translation>Heute erledigt: in welchen Ordner?</translation>
    </message>
    <message>
        <source>Saved in {folder}: {names}.</source>
        <translation>Gesichert in {folder}: {names}.</translation>
    </message>
    <message>
        <source>A logo for the reports</source>
        <translation>Ein Logo für die Berichte</translation>
    </message>
    <message>
        <source>Choose a folder</source>
        <translation>Ordner wählen</translation>
    </message>
    <message>
        <source>(no number: {error})</source>
        <translation>(keine Nummer: {error})</translation>
    </message>
    <message>
        <source>Issued: {version}. Save it as PDF to hand it over.</source>
        <translation>Ausgestellt: {version}. Sichern Sie ihn als PDF, um ihn zu übergeben.</translation>
    </message>
    <message>
        <source>The report was not issued. {words}</source>
        <translation>Der Bericht wurde nicht ausgestellt. {words}</translation>
    </message>
    <message>
        <source>The page for phones has ended after four hours.</source>
        <translation>Die Seite für Telefone endete nach vier Stunden.</translation>
    </message>
    <message>
        <source>Save as PNG…</source>
        <translation>Als PNG sichern …</translation>
    </message>
    <message>
        <source>Save as SVG…</source>
        <translation>Als SVG sichern …</translation>
    </message>
    <message>
        <source>Save the numbers as CSV…</source>
        <translation>Zahlen als CSV sichern …</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Alles zeigen</translation>
    </message>
    <message>
        <source>Field checks over time</source>
        <translation>Vergleiche vor Ort über die Zeit</translation>
    </message>
    <message>
        <source>{day}: {share} of what is allowed</source>
        <translation>{day}: {share} des Erlaubten</translation>
    </message>
    <message>
        <source>difference as a share of what is allowed (dashed)</source>
        <translation>Abweichung als Anteil des Erlaubten (gestrichelt)</translation>
    </message>
    <message>
        <source>● depressurize</source>
        <translation>● Unterdruck</translation>
    </message>
    <message>
        <source>■ pressurize</source>
        <translation>■ Überdruck</translation>
    </message>
    <message>
        <source>Flow against envelope pressure</source>
        <translation>Volumenstrom über Druck</translation>
    </message>
    <message>
        <source>thick: level between changes, with its 95 % band</source>
        <translation>dick: Mittel zwischen Änderungen, mit 95-%-Band</translation>
    </message>
    <message>
        <source>Last 10 minutes</source>
        <translation>Letzte 10 Minuten</translation>
    </message>
    <message>
        <source>leakage flow, {unit}</source>
        <translation>Leckagestrom, {unit}</translation>
    </message>
    <message>
        <source>off the line, %</source>
        <translation>neben der Linie, %</translation>
    </message>
    <message>
        <source>envelope pressure, Pa</source>
        <translation>Druckdifferenz, Pa</translation>
    </message>
    <message>
        <source>Leakage curves</source>
        <translation>Leckagekurven</translation>
    </message>
    <message>
        <source>Last 3 minutes</source>
        <translation>Letzte 3 Minuten</translation>
    </message>
    <message>
        <source>The pressure is drawn here once a rig is connected.</source>
        <translation>Hier erscheint der Druck, sobald ein Messaufbau verbunden ist.</translation>
    </message>
    <message>
        <source>Certificates (*.pdf *.png *.jpg *.jpeg *.txt);;All files (*)</source>
        <translation>Kalibrierscheine (*.pdf *.png *.jpg *.jpeg *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The certificate is kept as {name}.</source>
        <translation>Der Kalibrierschein ist abgelegt als {name}.</translation>
    </message>
    <message>
        <source>Kept in the register. {verdict}</source>
        <translation>Im Verzeichnis gesichert. {verdict}</translation>
    </message>
    <message>
        <source>The calibration certificate</source>
        <translation>Der Kalibrierschein</translation>
    </message>
    <message>
        <source>A test with points, and a rig with more than one flow range, are needed.</source>
        <translation>Nötig sind eine Messung mit Messpunkten und ein Messaufbau mit mehr als einem Messbereich.</translation>
    </message>
    <message>
        <source>A rig with more than one flow range has to be connected.</source>
        <translation>Ein Messaufbau mit mehr als einem Messbereich muss verbunden sein.</translation>
    </message>
    <message>
        <source> with 1 point taken</source>
        <translation> mit 1 gemessenen Punkt</translation>
    </message>
    <message>
        <source> with {count} points taken</source>
        <translation> mit {count} gemessenen Punkten</translation>
    </message>
    <message>
        <source>Test {number} of {when} was interrupted{points}; every reading up to then is safe.</source>
        <translation>Messung {number} vom {when} wurde unterbrochen{points}; jeder Messwert bis dahin ist gesichert.</translation>
    </message>
    <message>
        <source>A rig has to be connected, and no test may be running.</source>
        <translation>Ein Messaufbau muss verbunden sein, und es darf keine Messung laufen.</translation>
    </message>
    <message>
        <source>The test cannot go on: {error}.</source>
        <translation>Die Messung kann nicht weitergehen: {error}.</translation>
    </message>
    <message>
        <source>A point can be taken again only while its test runs.</source>
        <translation>Ein Punkt lässt sich nur während seiner Messung wiederholen.</translation>
    </message>
    <message>
        <source>Choose in the table which point is to be taken again.</source>
        <translation>Wählen Sie in der Tabelle, welcher Punkt noch einmal gemessen wird.</translation>
    </message>
    <message>
        <source>The point is taken again next; the old one is left out and stays in the record.</source>
        <translation>Der Punkt wird als Nächstes noch einmal gemessen; der alte zählt nicht und bleibt in der Aufzeichnung.</translation>
    </message>
    <message>
        <source>No rig is connected.</source>
        <translation>Es ist kein Messaufbau verbunden.</translation>
    </message>
    <message>
        <source>A recorded test is played back: what was measured stays as it was.</source>
        <translation>Eine aufgezeichnete Messung wird abgespielt: Was gemessen wurde, bleibt, wie es war.</translation>
    </message>
    <message>
        <source>The report could not be made: {error}</source>
        <translation>Der Bericht ließ sich nicht erstellen: {error}</translation>
    </message>
    <message>
        <source>The report is saved as {written}.</source>
        <translation>Der Bericht ist gesichert als {written}.</translation>
    </message>
    <message>
        <source>The report could not be saved: {reason}.</source>
        <translation>Der Bericht ließ sich nicht sichern: {reason}.</translation>
    </message>
    <message>
        <source>The test is saved as {written}.</source>
        <translation>Die Messung ist gesichert als {written}.</translation>
    </message>
    <message>
        <source>The test could not be saved: {reason}.</source>
        <translation>Die Messung ließ sich nicht sichern: {reason}.</translation>
    </message>
    <message>
        <source>The fragment is saved as {written}.</source>
        <translation>Der Auszug ist gesichert als {written}.</translation>
    </message>
    <message>
        <source>The fragment could not be saved: {reason}.</source>
        <translation>Der Auszug ließ sich nicht sichern: {reason}.</translation>
    </message>
    <message>
        <source>{count} tables are saved in {folder}.</source>
        <translation>{count} Tabellen sind in {folder} gesichert.</translation>
    </message>
    <message>
        <source>Rig files (*.toml)</source>
        <translation>Messaufbauten (*.toml)</translation>
    </message>
    <message>
        <source>You have joined the class at {place}.</source>
        <translation>Sie sind dem Kurs bei {place} beigetreten.</translation>
    </message>
    <message>
        <source>Copied: {text}</source>
        <translation>Kopiert: {text}</translation>
    </message>
    <message>
        <source>No serial port was found.</source>
        <translation>Es wurde kein serieller Anschluss gefunden.</translation>
    </message>
    <message>
        <source>{count} ports found.</source>
        <translation>{count} Anschlüsse gefunden.</translation>
    </message>
    <message>
        <source>{count} found.</source>
        <translation>{count} gefunden.</translation>
    </message>
    <message>
        <source>No instrument was found.</source>
        <translation>Es wurde kein Gerät gefunden.</translation>
    </message>
    <message>
        <source>There is no serial port.</source>
        <translation>Es gibt keinen seriellen Anschluss.</translation>
    </message>
    <message>
        <source>The rig file could not be saved: {reason}.</source>
        <translation>Der Messaufbau ließ sich nicht sichern: {reason}.</translation>
    </message>
    <message>
        <source>The rig is saved as {written}.</source>
        <translation>Der Messaufbau ist gesichert als {written}.</translation>
    </message>
    <message>
        <source>Load a rig file</source>
        <translation>Messaufbau laden</translation>
    </message>
    <message>
        <source>Save the rig</source>
        <translation>Messaufbau sichern</translation>
    </message>
    <message>
        <source>The ports could not be listed: {error}.</source>
        <translation>Die Anschlüsse ließen sich nicht auflisten: {error}.</translation>
    </message>
    <message>
        <source>The settings could not be read, the defaults are used ({error}).</source>
        <translation>Die Einstellungen ließen sich nicht lesen, es gelten die üblichen ({error}).</translation>
    </message>
    <message>
        <source>The settings could not be kept ({reason}).</source>
        <translation>Die Einstellungen ließen sich nicht sichern ({reason}).</translation>
    </message>
    <message>
        <source>test {number}</source>
        <translation>Messung {number}</translation>
    </message>
    <message>
        <source>The two tests cannot be compared: {error}.</source>
        <translation>Die beiden Messungen lassen sich nicht vergleichen: {error}.</translation>
    </message>
    <message>
        <source>What a bundle for support holds stands below. Look at it before you hand it on.</source>
        <translation>Was ein Paket für den Support enthält, steht unten. Sehen Sie es an, bevor Sie es weitergeben.</translation>
    </message>
    <message>
        <source>Save the key sheet</source>
        <translation>Tastenblatt sichern</translation>
    </message>
    <message>
        <source>The system cannot be told: {error}.</source>
        <translation>Das System lässt sich das nicht sagen: {error}.</translation>
    </message>
    <message>
        <source>The system cannot be told: {reason}.</source>
        <translation>Das System lässt sich das nicht sagen: {reason}.</translation>
    </message>
    <message>
        <source>{told} “airseam associate --remove” takes it back.</source>
        <translation>{told} „airseam associate --remove“ nimmt es zurück.</translation>
    </message>
    <message>
        <source>{sentence} A running test goes on; you may go on too.</source>
        <translation>{sentence} Eine laufende Messung geht weiter; auch Sie können weiterarbeiten.</translation>
    </message>
    <message>
        <source>Save the bundle</source>
        <translation>Paket sichern</translation>
    </message>
    <message>
        <source>ZIP (*.zip)</source>
        <translation>ZIP (*.zip)</translation>
    </message>
    <message>
        <source>Keys of Airseam</source>
        <translation>Tasten von Airseam</translation>
    </message>
    <message>
        <source>Choose the port of the gauge first.</source>
        <translation>Wählen Sie zuerst den Anschluss des Messgeräts.</translation>
    </message>
    <message>
        <source>The profile is not saved: {error}.</source>
        <translation>Das Profil ist nicht gesichert: {error}.</translation>
    </message>
    <message>
        <source>The profile is saved as {path}, and the gauge stands in your own rig.</source>
        <translation>Das Profil ist gesichert als {path}, und das Messgerät steht in Ihrem eigenen Messaufbau.</translation>
    </message>
    <message>
        <source>Type what the gauge shows at any time. A test says when a reading is needed.</source>
        <translation>Geben Sie jederzeit ein, was das Messgerät zeigt. Eine Messung sagt, wann ein Wert gebraucht wird.</translation>
    </message>
    <message>
        <source>nothing typed yet</source>
        <translation>noch nichts eingegeben</translation>
    </message>
    <message>
        <source>typed just now</source>
        <translation>eben eingegeben</translation>
    </message>
    <message>
        <source>typed {seconds} s ago</source>
        <translation>vor {seconds} s eingegeben</translation>
    </message>
    <message>
        <source>typed {minutes} min ago</source>
        <translation>vor {minutes} min eingegeben</translation>
    </message>
    <message>
        <source>Is this test valid?</source>
        <translation>Ist diese Messung gültig?</translation>
    </message>
    <message>
        <source>The requirements of the method are checked from the first point on.</source>
        <translation>Die Anforderungen des Verfahrens werden ab dem ersten Punkt geprüft.</translation>
    </message>
    <message>
        <source>The requirements of the method are checked from two points on.</source>
        <translation>Die Anforderungen des Verfahrens werden ab zwei Punkten geprüft.</translation>
    </message>
    <message>
        <source>{text}. Clause {clause}, {source}.</source>
        <translation>{text}. Abschnitt {clause}, {source}.</translation>
    </message>
    <message>
        <source>{failed} of {total} not met</source>
        <translation>{failed} von {total} nicht erfüllt</translation>
    </message>
    <message>
        <source>could not be checked</source>
        <translation>nicht prüfbar</translation>
    </message>
    <message>
        <source>still to come</source>
        <translation>noch offen</translation>
    </message>
    <message>
        <source>{open_items} of {total} {words}</source>
        <translation>{open_items} von {total} {words}</translation>
    </message>
    <message>
        <source>all {total} met</source>
        <translation>alle {total} erfüllt</translation>
    </message>
    <message>
        <source>From two points on.</source>
        <translation>Ab zwei Punkten.</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Quantities</source>
        <translation>Werte</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Budget</translation>
    </message>
    <message>
        <source>Meaning</source>
        <translation>Deutung</translation>
    </message>
    <message>
        <source>Corrections</source>
        <translation>Korrekturen</translation>
    </message>
    <message>
        <source>Join both gauges to one hose. Take a point with the hose open, then raise the pressure, by the fan or by a syringe, hold it, and take the next.</source>
        <translation>Verbinden Sie beide Messgeräte mit einem Schlauch. Nehmen Sie einen Punkt bei offenem Schlauch auf, erhöhen Sie dann den Druck, mit dem Gebläse oder einer Spritze, halten Sie ihn, und nehmen Sie den nächsten auf.</translation>
    </message>
    <message>
        <source>The rig is no longer connected.</source>
        <translation>Der Messaufbau ist nicht mehr verbunden.</translation>
    </message>
    <message>
        <source>No point: {words}.</source>
        <translation>Kein Punkt: {words}.</translation>
    </message>
    <message>
        <source>Reading for {seconds} s…</source>
        <translation>Es wird {seconds} s lang gemessen …</translation>
    </message>
    <message>
        <source>Take a point</source>
        <translation>Punkt aufnehmen</translation>
    </message>
    <message>
        <source>Connect the rig with both gauges first.</source>
        <translation>Verbinden Sie zuerst den Messaufbau mit beiden Messgeräten.</translation>
    </message>
    <message>
        <source>The rig needs two pressure channels: give the second gauge a role, such as tap 2.</source>
        <translation>Der Messaufbau braucht zwei Druckkanäle: Geben Sie dem zweiten Messgerät eine Aufgabe, etwa Messstelle 2.</translation>
    </message>
    <message>
        <source>Choose another channel for the second gauge.</source>
        <translation>Wählen Sie für das zweite Messgerät einen anderen Kanal.</translation>
    </message>
    <message>
        <source>Register both gauges, and say which is which.</source>
        <translation>Nehmen Sie beide Messgeräte ins Verzeichnis auf, und sagen Sie, welches welches ist.</translation>
    </message>
    <message>
        <source>{count} more points, one of them near zero.</source>
        <translation>Noch {count} Punkte, einer davon nahe null.</translation>
    </message>
    <message>
        <source>1 more point, one of them near zero.</source>
        <translation>Noch 1 Punkt, einer davon nahe null.</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Erstes</translation>
    </message>
    <message>
        <source>Second</source>
        <translation>Zweites</translation>
    </message>
    <message>
        <source>Apart</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation>Erlaubt</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>No point is taken yet.</source>
        <translation>Noch ist kein Punkt aufgenommen.</translation>
    </message>
    <message>
        <source>The line grows here, point by point.</source>
        <translation>Hier wächst die Linie, Punkt für Punkt.</translation>
    </message>
    <message>
        <source>flow, {unit}</source>
        <translation>Volumenstrom, {unit}</translation>
    </message>
    <message>
        <source>Read with another flow range? Shift+F</source>
        <translation>Anderer Messbereich? Umschalt+F</translation>
    </message>
    <message>
        <source>flow, {unit}; dotted: {step} ± {half} at 50 Pa after point {changed_at}</source>
        <translation>Volumenstrom, {unit}; gepunktet: {step} ± {half} bei 50 Pa nach Punkt {changed_at}</translation>
    </message>
    <message>
        <source>1 point is not shown: pressure or flow is not above 0.</source>
        <translation>1 Punkt fehlt im Diagramm: Druck oder Volumenstrom ist nicht größer als 0.</translation>
    </message>
    <message>
        <source>{count} points are not shown: pressure or flow is not above 0.</source>
        <translation>{count} Punkte fehlen im Diagramm: Druck oder Volumenstrom ist nicht größer als 0.</translation>
    </message>
    <message>
        <source>stands still</source>
        <translation>steht still</translation>
    </message>
    <message>
        <source>answers late</source>
        <translation>antwortet spät</translation>
    </message>
    <message>
        <source>zero moved</source>
        <translation>Nullpunkt verschoben</translation>
    </message>
    <message>
        <source>battery low</source>
        <translation>Batterie schwach</translation>
    </message>
    <message>
        <source>{name} answers after {time} ms.</source>
        <translation>{name} antwortet nach {time} ms.</translation>
    </message>
    <message>
        <source>nothing stands still</source>
        <translation>nichts steht still</translation>
    </message>
    <message>
        <source>no drop-outs</source>
        <translation>keine Aussetzer</translation>
    </message>
    <message>
        <source>Without a volume the result is a flow and no air change rate.</source>
        <translation>Ohne Volumen ist das Ergebnis ein Volumenstrom und keine Luftwechselrate.</translation>
    </message>
    <message>
        <source>5 % of volume moves the air change rate by 5 %.</source>
        <translation>5 % am Volumen ändern die Luftwechselrate um 5 %.</translation>
    </message>
    <message>
        <source>5 % of volume moves the result by {step}: {middle} would be {low} or {high}.</source>
        <translation>5 % am Volumen ändern das Ergebnis um {step}: aus {middle} würde {low} oder {high}.</translation>
    </message>
    <message>
        <source>Volume over floor area gives rooms {shown} high. Is one of the two mistyped?</source>
        <translation>Volumen durch Grundfläche ergibt Räume von {shown} Höhe. Ist eines der beiden vertippt?</translation>
    </message>
    <message>
        <source>No body of this volume has less than {shown} of surface.</source>
        <translation>Kein Körper dieses Volumens hat weniger als {shown} Oberfläche.</translation>
    </message>
    <message>
        <source>Very much surface for this volume. Is one of the two mistyped?</source>
        <translation>Sehr viel Hüllfläche für dieses Volumen. Ist eines der beiden vertippt?</translation>
    </message>
    <message>
        <source>Less than the rooms are high ({shown} by volume and floor area).</source>
        <translation>Niedriger als die Räume ({shown} nach Volumen und Grundfläche).</translation>
    </message>
    <message>
        <source>Unusual for the inside of a building. A number with °F or °C is read as such.</source>
        <translation>Ungewöhnlich für das Innere eines Gebäudes. Eine Zahl mit °F oder °C wird so gelesen.</translation>
    </message>
    <message>
        <source>Much warmer outside than inside. Are the two swapped?</source>
        <translation>Draußen viel wärmer als drinnen. Sind die beiden vertauscht?</translation>
    </message>
    <message>
        <source>About {shown} is usual at this altitude; not the value brought to sea level?</source>
        <translation>In dieser Höhe sind etwa {shown} üblich; ist es der auf Meereshöhe umgerechnete Wert?</translation>
    </message>
    <message>
        <source>So much wind makes the interval wide. A calmer hour may be worth waiting for.</source>
        <translation>So viel Wind macht das Intervall breit. Eine ruhigere Stunde lohnt vielleicht das Warten.</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Volumenstrom</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Zu</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>Halb</translation>
    </message>
    <message>
        <source>As built</source>
        <translation>Wie gebaut</translation>
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
        <translation>Wind</translation>
    </message>
    <message>
        <source>Where the wind comes from</source>
        <translation>Woher der Wind kommt</translation>
    </message>
    <message>
        <source>Blow</source>
        <translation>Wehen</translation>
    </message>
    <message>
        <source> in</source>
        <translation> innen</translation>
    </message>
    <message>
        <source>Indoors</source>
        <translation>Innen</translation>
    </message>
    <message>
        <source> out</source>
        <translation> außen</translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translation>Außen</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Einstellen</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Time passes {pace} times as fast</source>
        <translation>Die Zeit läuft {pace}-mal so schnell</translation>
    </message>
    <message>
        <source>Time stands still</source>
        <translation>Die Zeit steht still</translation>
    </message>
    <message>
        <source>Leaks</source>
        <translation>Leckagen</translation>
    </message>
    <message>
        <source>Leaks of the house</source>
        <translation>Leckagen des Hauses</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>Time in the houses</source>
        <translation>Zeit in den Häusern</translation>
    </message>
    <message>
        <source>What is left</source>
        <translation>Was bleibt</translation>
    </message>
    <message>
        <source>How to look</source>
        <translation>Wie suchen</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>Zonen</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>No rig is connected. Connect one in Rig, then hold a pressure here.</source>
        <translation>Es ist kein Messaufbau verbunden. Verbinden Sie einen unter Messaufbau, dann halten Sie hier einen Druck.</translation>
    </message>
    <message>
        <source>No job is open: marks and leaks need one. Make one with Ctrl+N.</source>
        <translation>Es ist kein Auftrag offen: Marken und Leckagen brauchen einen. Legen Sie mit Strg+N einen an.</translation>
    </message>
    <message>
        <source>No pressure is held. Choose one, then hold it (H).</source>
        <translation>Kein Druck wird gehalten. Einen wählen, dann halten (H).</translation>
    </message>
    <message>
        <source>{text} held</source>
        <translation>{text} gehalten</translation>
    </message>
    <message>
        <source>{text}, wanted {target}</source>
        <translation>{text}, gewünscht {target}</translation>
    </message>
    <message>
        <source>Leakage flow at {reference} Pa, now</source>
        <translation>Leckagestrom bei {reference} Pa, jetzt</translation>
    </message>
    <message>
        <source>{caption}: no figure yet</source>
        <translation>{caption}: noch kein Wert</translation>
    </message>
    <message>
        <source>, brought from {held_pa} Pa</source>
        <translation>, umgerechnet von {held_pa} Pa</translation>
    </message>
    <message>
        <source>{text} air changes per hour at 50 Pa{far}</source>
        <translation>{text} Luftwechsel je Stunde bei 50 Pa{far}</translation>
    </message>
    <message>
        <source>The wind at this house is being learnt: {wait} s to go.</source>
        <translation>Der Wind an diesem Haus wird gelernt: noch {wait} s.</translation>
    </message>
    <message>
        <source>No reading to show.</source>
        <translation>Kein Messwert zu zeigen.</translation>
    </message>
    <message>
        <source>± {half} {unit} (95 %) over the last 10 s, each reading brought to {reference} Pa</source>
        <translation>± {half} {unit} (95 %) über die letzten 10 s, jeder Messwert auf {reference} Pa umgerechnet</translation>
    </message>
    <message>
        <source>No target at 50 Pa is set for the stage.</source>
        <translation>Für die Bauphase ist kein Zielwert bei 50 Pa gesetzt.</translation>
    </message>
    <message>
        <source>At the target of {goal}: only a test by the method counts</source>
        <translation>Am Zielwert von {goal}: Nur eine Messung nach dem Verfahren zählt</translation>
    </message>
    <message>
        <source>Above the target of {goal}</source>
        <translation>Über dem Zielwert von {goal}</translation>
    </message>
    <message>
        <source>{share} % of the way from {begun} to the target of {goal}</source>
        <translation>{share} % des Wegs von {begun} zum Zielwert von {goal}</translation>
    </message>
    <message>
        <source>Since the mark at {counted_from}</source>
        <translation>Seit der Marke um {counted_from}</translation>
    </message>
    <message>
        <source>Since you started</source>
        <translation>Seit Beginn</translation>
    </message>
    <message>
        <source>± {half} (95 %) · a hole of {text} {unit} ({reference} Pa, Cd 0.611)</source>
        <translation>± {half} (95 %) · ein Loch von {text} {unit} ({reference} Pa, Cd 0.611)</translation>
    </message>
    <message>
        <source>Least change told in 30 s now: {text} {unit} ({share} %)</source>
        <translation>In 30 s jetzt erkennbar ab: {text} {unit} ({share} %)</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>sicher</translation>
    </message>
    <message>
        <source>not sure: as small as the wind</source>
        <translation>nicht sicher: so klein wie der Wind</translation>
    </message>
    <message>
        <source>too windy to tell</source>
        <translation>zu windig für ein Urteil</translation>
    </message>
    <message>
        <source>{waited} s to go</source>
        <translation>noch {waited} s</translation>
    </message>
    <message>
        <source>nothing quiet before it</source>
        <translation>davor war nichts ruhig</translation>
    </message>
    <message>
        <source>not told from none (± {plus_minus})</source>
        <translation>nicht von null zu unterscheiden (± {plus_minus})</translation>
    </message>
    <message>
        <source>Unnamed</source>
        <translation>Ohne Namen</translation>
    </message>
    <message>
        <source>no data</source>
        <translation>keine Daten</translation>
    </message>
    <message>
        <source>data {seconds} s old</source>
        <translation>Daten {seconds} s alt</translation>
    </message>
    <message>
        <source>data older than 100 s</source>
        <translation>Daten älter als 100 s</translation>
    </message>
    <message>
        <source>from here</source>
        <translation>ab hier</translation>
    </message>
    <message>
        <source>found {leak}</source>
        <translation>gefunden {leak}</translation>
    </message>
    <message>
        <source>looks like a seal</source>
        <translation>sieht aus wie eine Abdichtung</translation>
    </message>
    <message>
        <source>As it is now</source>
        <translation>Wie er jetzt ist</translation>
    </message>
    <message>
        <source>Without a number</source>
        <translation>Ohne Nummer</translation>
    </message>
    <message>
        <source>{number}, revision {revision}</source>
        <translation>{number}, Revision {revision}</translation>
    </message>
    <message>
        <source> Issued again: {reason}.</source>
        <translation> Erneut ausgestellt: {reason}.</translation>
    </message>
    <message>
        <source>Issued {time}, signed by {signed_by}. It never changes.{reason}</source>
        <translation>Ausgestellt am {time}, unterschrieben von {signed_by}. Er ändert sich nicht mehr.{reason}</translation>
    </message>
    <message>
        <source>A draft. Made to find leaks: it is issued without a number.</source>
        <translation>Entwurf zur Lecksuche: Er wird ohne Nummer ausgestellt.</translation>
    </message>
    <message>
        <source>A draft. It has no number yet.</source>
        <translation>Entwurf. Er hat noch keine Nummer.</translation>
    </message>
    <message>
        <source>A draft. It would be issued as {number}.</source>
        <translation>Entwurf. Er würde als {number} ausgestellt.</translation>
    </message>
    <message>
        <source>Edited since the last issue: {changed}.</source>
        <translation>Seit der letzten Ausgabe geändert: {changed}.</translation>
    </message>
    <message>
        <source>As it was issued last.</source>
        <translation>Wie zuletzt ausgestellt.</translation>
    </message>
    <message>
        <source>{what} Another issue would be revision {count}.</source>
        <translation>{what} Eine weitere Ausgabe wäre Revision {count}.</translation>
    </message>
    <message>
        <source>Power law</source>
        <translation>Potenzgesetz</translation>
    </message>
    <message>
        <source>Polynomial in Δp</source>
        <translation>Polynom in Δp</translation>
    </message>
    <message>
        <source>Polynomial in √Δp</source>
        <translation>Polynom in √Δp</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Coefficient in m³/(h·Paⁿ); exponent</source>
        <translation>Koeffizient in m³/(h·Paⁿ); Exponent</translation>
    </message>
    <message>
        <source>c0; c1; c2 … in m³/h</source>
        <translation>c0; c1; c2 … in m³/h</translation>
    </message>
    <message>
        <source>Pa m³/h; Pa m³/h; …</source>
        <translation>Pa m³/h; Pa m³/h; …</translation>
    </message>
    <message>
        <source>Due date is {due}: a day after the calibration is needed.</source>
        <translation>Fällig am {due}: Ein Tag nach der Kalibrierung ist nötig.</translation>
    </message>
    <message>
        <source>Upper end is {high} Pa: more than {low} Pa is needed.</source>
        <translation>Das obere Ende ist {high} Pa: Mehr als {low} Pa ist nötig.</translation>
    </message>
    <message>
        <source>These numbers are no calibration: {words}.</source>
        <translation>Diese Zahlen sind keine Kalibrierung: {words}.</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Nicht angegeben</translation>
    </message>
    <message>
        <source>The rig measures this; the value here counts where it does not read.</source>
        <translation>Der Messaufbau misst das; der Wert hier gilt, wo er nicht misst.</translation>
    </message>
    <message>
        <source>Its report carries no certificate number; leaks come first.</source>
        <translation>Der Bericht trägt keine Zertifikatnummer; Leckagen stehen vorn.</translation>
    </message>
    <message>
        <source>Kind, limits and state of the building are remembered for each stage.</source>
        <translation>Art, Grenzwerte und Zustand des Gebäudes werden zu jeder Bauphase gemerkt.</translation>
    </message>
    <message>
        <source>Highest first: it shows a loose seal at once.</source>
        <translation>Die höchsten zuerst: So zeigt sich eine lose Abklebung sofort.</translation>
    </message>
    <message>
        <source>There is no job in this folder yet. Choose the folder in which your jobs are kept.</source>
        <translation>In diesem Ordner gibt es noch keinen Auftrag. Wählen Sie den Ordner, in dem Ihre Aufträge liegen.</translation>
    </message>
    <message>
        <source>{count} of {known} lines</source>
        <translation>{count} von {known} Zeilen</translation>
    </message>
    <message>
        <source>{known} lines, newest first</source>
        <translation>{known} Zeilen, neueste zuerst</translation>
    </message>
    <message>
        <source>{lines}, one for each test.</source>
        <translation>{lines}, eine für jede Messung.</translation>
    </message>
    <message>
        <source>No job has these words; {known} lines were looked at.</source>
        <translation>Kein Auftrag enthält diese Wörter; {known} Zeilen wurden durchsucht.</translation>
    </message>
    <message>
        <source>Always</source>
        <translation>Immer</translation>
    </message>
    <message>
        <source>Stop the fan, at once, from anywhere. A running test is paused and can go on; nothing is lost.</source>
        <translation>Hält das Gebläse sofort an, von überall. Eine laufende Messung wird unterbrochen und kann weitergehen; nichts geht verloren.</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>Press the big button at the bottom right: it does what the sentence beside it says.</source>
        <translation>Drückt die große Taste unten rechts: Sie tut, was der Satz daneben sagt.</translation>
    </message>
    <message>
        <source>1 to 7</source>
        <translation>1 bis 7</translation>
    </message>
    <message>
        <source>Go to Job, Set-up, Rig, Test, Hunt, Stages, Report.</source>
        <translation>Zu Auftrag, Vorbereitung, Messaufbau, Messung, Lecksuche, Bauphasen, Bericht.</translation>
    </message>
    <message>
        <source>Show this sheet, and go back.</source>
        <translation>Zeigt dieses Blatt, und wieder zurück.</translation>
    </message>
    <message>
        <source>Find a command by its words.</source>
        <translation>Sucht einen Befehl nach seinen Wörtern.</translation>
    </message>
    <message>
        <source>Whole screen, in Hunt few huge figures, and back.</source>
        <translation>Ganzer Bildschirm, in der Lecksuche wenige sehr große Zahlen, und zurück.</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Make a new job.</source>
        <translation>Legt einen neuen Auftrag an.</translation>
    </message>
    <message>
        <source>Open a job; or drop its file on the window, or a rig file.</source>
        <translation>Öffnet einen Auftrag; oder ziehen Sie seine Datei oder einen Messaufbau auf das Fenster.</translation>
    </message>
    <message>
        <source>Find a job in a folder by street, client, number or date.</source>
        <translation>Sucht einen Auftrag in einem Ordner nach Straße, Kunde, Nummer oder Datum.</translation>
    </message>
    <message>
        <source>Copy the job into the backup folder.</source>
        <translation>Kopiert den Auftrag in den Sicherungsordner.</translation>
    </message>
    <message>
        <source>Do it again.</source>
        <translation>Stellt sie wieder her.</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>Show how far the points lie off the line, and back.</source>
        <translation>Zeigt, wie weit die Punkte neben der Linie liegen, und zurück.</translation>
    </message>
    <message>
        <source>Show every correction from the readings to the line, and back.</source>
        <translation>Zeigt jede Korrektur von den Messwerten zur Linie, und zurück.</translation>
    </message>
    <message>
        <source>Take back the last edit, in Test the last change of points; measured data is never taken back.</source>
        <translation>Die letzte Eingabe zurücknehmen, unter Messung die letzte Änderung an Messpunkten; Messwerte werden nie zurückgenommen.</translation>
    </message>
    <message>
        <source>Strike the points that are chosen in the table, or restore them.</source>
        <translation>Die in der Tabelle gewählten Punkte streichen oder wieder aufnehmen.</translation>
    </message>
    <message>
        <source>Take the chosen point again, or begin the one anew that is being taken.</source>
        <translation>Misst den gewählten Punkt noch einmal, oder beginnt den laufenden neu.</translation>
    </message>
    <message>
        <source>Another flow range is fitted: the fan is stopped, the point is begun again.</source>
        <translation>Ein anderer Messbereich ist eingesetzt: Das Gebläse hält an, der Punkt beginnt neu.</translation>
    </message>
    <message>
        <source>Say with which flow range the chosen points were read; with none chosen, those off the line.</source>
        <translation>Sagen, mit welchem Messbereich die gewählten Messpunkte gemessen wurden; ohne Wahl die abseits der Geraden.</translation>
    </message>
    <message>
        <source>Go on with a test that was cut short.</source>
        <translation>Setzt eine unterbrochene Messung fort.</translation>
    </message>
    <message>
        <source>Show all in the plots.</source>
        <translation>Zeigt in den Diagrammen alles.</translation>
    </message>
    <message>
        <source>Wheel, drag</source>
        <translation>Rad, Ziehen</translation>
    </message>
    <message>
        <source>Zoom and move a plot. The right button saves it as PNG, SVG or CSV.</source>
        <translation>Vergrößert und verschiebt ein Diagramm. Die rechte Taste sichert es als PNG, SVG oder CSV.</translation>
    </message>
    <message>
        <source>Hunt</source>
        <translation>Lecksuche</translation>
    </message>
    <message>
        <source>Hold a pressure, and end it.</source>
        <translation>Hält einen Druck, und beendet das.</translation>
    </message>
    <message>
        <source>Hold 5 Pa more or less, or the same pressure in the other direction.</source>
        <translation>Hält 5 Pa mehr oder weniger, oder denselben Druck in der anderen Richtung.</translation>
    </message>
    <message>
        <source>Sealing starts, sealing is done: half a minute later stands here what it brought.</source>
        <translation>Abdichten beginnt, Abdichten ist fertig: Eine halbe Minute später steht hier, was es brachte.</translation>
    </message>
    <message>
        <source>Note of this moment, new leak that was found now.</source>
        <translation>Notiz zu diesem Augenblick, neue Leckage, die eben gefunden wurde.</translation>
    </message>
    <message>
        <source>Count the change from this moment on.</source>
        <translation>Zählt die Änderung von diesem Augenblick an.</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Save the report as PDF.</source>
        <translation>Sichert den Bericht als PDF.</translation>
    </message>
    <message>
        <source>Export the tables as CSV; Ctrl+Shift+E the test as JSON.</source>
        <translation>Gibt die Tabellen als CSV aus; Strg+Umschalt+E die Messung als JSON.</translation>
    </message>
    <message>
        <source>Copy the points for a spreadsheet.</source>
        <translation>Kopiert die Punkte für eine Tabellenkalkulation.</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Change between SI and US units; what is stored stays as it is.</source>
        <translation>Wechselt zwischen SI- und US-Einheiten; was gesichert ist, bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>Settings: office, units, folders, theme, size of everything.</source>
        <translation>Einstellungen: Büro, Einheiten, Ordner, Sprache, Darstellung, Größe von allem.</translation>
    </message>
    <message>
        <source>Next theme: as the system, dark, light, sunlight.</source>
        <translation>Nächste Darstellung: wie das System, dunkel, hell, Sonne.</translation>
    </message>
    <message>
        <source>Before the fan starts every flame is out, ashes are cold and covered, and everybody in the building knows.</source>
        <translation>Bevor das Gebläse anläuft, ist jede Flamme aus, die Asche kalt und abgedeckt, und alle im Gebäude wissen Bescheid.</translation>
    </message>
    <message>
        <source>Local codes and licensed practice decide who may test and how; this program does not replace them.</source>
        <translation>Örtliche Vorschriften und Fachbetriebe bestimmen, wer wie messen darf; dieses Programm ersetzt sie nicht.</translation>
    </message>
    <message>
        <source>If the fan does not stop, pull its plug.</source>
        <translation>Hält das Gebläse nicht an, ziehen Sie den Stecker.</translation>
    </message>
    <message>
        <source>Ctrl</source>
        <translation>Strg</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Umschalt</translation>
    </message>
    <message>
        <source>Part of the building</source>
        <translation>Bauteil</translation>
    </message>
    <message>
        <source>Storey</source>
        <translation>Geschoss</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Found by</source>
        <translation>Gefunden mit</translation>
    </message>
    <message>
        <source>Trade</source>
        <translation>Gewerk</translation>
    </message>
    <message>
        <source>Guess at 50 Pa</source>
        <translation>Schätzung bei 50 Pa</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Sealing brought {flow} at {reference_pa} Pa, {said}</source>
        <translation>Abdichten brachte {flow} bei {reference_pa} Pa, {said}</translation>
    </message>
    <message>
        <source>ELA4 {plus_minus} {area} (4 Pa, Cd 1, extrapolated)</source>
        <translation>ELA4 {plus_minus} {area} (4 Pa, Cd 1, extrapoliert)</translation>
    </message>
    <message>
        <source>EqLA10 {plus_minus} {area} (10 Pa, Cd 0.611, extrapolated)</source>
        <translation>EqLA10 {plus_minus} {area} (10 Pa, Cd 0.611, extrapoliert)</translation>
    </message>
    <message>
        <source>not told from none</source>
        <translation>nicht von null zu unterscheiden</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Vorbereitung</translation>
    </message>
    <message>
        <source>Rig</source>
        <translation>Messaufbau</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Bauphasen</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>Stopping: the fan is brought to its safe state.</source>
        <translation>Anhalten: Das Gebläse kommt in seinen sicheren Zustand.</translation>
    </message>
    <message>
        <source>Please wait</source>
        <translation>Bitte warten</translation>
    </message>
    <message>
        <source>Open a job (Ctrl+O) or make a new one: it keeps every reading.</source>
        <translation>Öffnen Sie einen Auftrag (Strg+O), oder legen Sie einen neuen an: Er hält jeden Messwert fest.</translation>
    </message>
    <message>
        <source>New job</source>
        <translation>Neuer Auftrag</translation>
    </message>
    <message>
        <source>This is the report as it will be saved. Look at what is missing, then save it.</source>
        <translation>So wird der Bericht gesichert. Sehen Sie nach, was fehlt, dann sichern Sie ihn.</translation>
    </message>
    <message>
        <source>The test has ended.</source>
        <translation>Die Messung ist beendet.</translation>
    </message>
    <message>
        <source>Open the report</source>
        <translation>Bericht öffnen</translation>
    </message>
    <message>
        <source>The test asks something and waits for you.</source>
        <translation>Die Messung stellt eine Frage und wartet auf Sie.</translation>
    </message>
    <message>
        <source>Go to the test</source>
        <translation>Zur Messung</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Holding {target} Pa</source>
        <translation>Es werden {target} Pa gehalten</translation>
    </message>
    <message>
        <source>{held}: marks, leaks and figures are in Hunt.</source>
        <translation>{held}: Marken, Leckagen und Zahlen stehen unter Lecksuche.</translation>
    </message>
    <message>
        <source>{held}. {sealing} is being sealed: press D when it is done.</source>
        <translation>{held}. {sealing} wird abgedichtet: D drücken, wenn es fertig ist.</translation>
    </message>
    <message>
        <source>Seal is done (D)</source>
        <translation>Abdichtung fertig (D)</translation>
    </message>
    <message>
        <source>{held}. Press S when sealing starts, D when it is done.</source>
        <translation>{held}. S drücken, wenn das Abdichten beginnt, D, wenn es fertig ist.</translation>
    </message>
    <message>
        <source>Mark sealing (S)</source>
        <translation>Abdichten beginnt (S)</translation>
    </message>
    <message>
        <source>Pause test</source>
        <translation>Unterbrechen</translation>
    </message>
    <message>
        <source>Read the list in the panel. Go on only when all of it is so.</source>
        <translation>Lesen Sie die Liste im Feld. Weiter nur, wenn alles so ist.</translation>
    </message>
    <message>
        <source>The wind speaks against a test today. Read why in the panel.</source>
        <translation>Der Wind spricht heute gegen eine Messung. Warum, steht im Feld.</translation>
    </message>
    <message>
        <source>Will somebody cover the fan between the points? The panel says why it pays.</source>
        <translation>Deckt jemand zwischen den Punkten das Gebläse ab? Im Feld steht, warum es sich lohnt.</translation>
    </message>
    <message>
        <source>{lead}No rig is connected. Connect the simulated one, or choose instruments in Rig.</source>
        <translation>{lead}Es ist kein Messaufbau verbunden. Verbinden Sie den simulierten, oder wählen Sie Geräte unter Messaufbau.</translation>
    </message>
    <message>
        <source>Connect the simulated rig</source>
        <translation>Simulierten verbinden</translation>
    </message>
    <message>
        <source>{lead}No rig is connected. Choose its instruments in Rig.</source>
        <translation>{lead}Es ist kein Messaufbau verbunden. Wählen Sie seine Geräte unter Messaufbau.</translation>
    </message>
    <message>
        <source>Open Rig</source>
        <translation>Zum Messaufbau</translation>
    </message>
    <message>
        <source>Waiting for {name} on {port} to answer.</source>
        <translation>Warten auf Antwort von {name} an {port}.</translation>
    </message>
    <message>
        <source>Look at the rig</source>
        <translation>Messaufbau ansehen</translation>
    </message>
    <message>
        <source>Look at the answers</source>
        <translation>Antworten ansehen</translation>
    </message>
    <message>
        <source>Go on with the test</source>
        <translation>Messung fortsetzen</translation>
    </message>
    <message>
        <source>The building&apos;s volume is missing: without it there is no air change rate.</source>
        <translation>Das Volumen des Gebäudes fehlt: Ohne es gibt es keine Luftwechselrate.</translation>
    </message>
    <message>
        <source>Enter the volume</source>
        <translation>Volumen eingeben</translation>
    </message>
    <message>
        <source>Close windows and outside doors, open inside doors, then hold a pressure and look for leaks.</source>
        <translation>Fenster und Außentüren schließen, Innentüren öffnen, dann einen Druck halten und Leckagen suchen.</translation>
    </message>
    <message>
        <source>Hold the pressure</source>
        <translation>Druck halten</translation>
    </message>
    <message>
        <source>Start the test</source>
        <translation>Messung beginnen</translation>
    </message>
    <message>
        <source>Ready to {ways}. Without a volume the result is a flow and no air change rate.</source>
        <translation>Bereit für {ways}. Ohne Volumen ist das Ergebnis ein Volumenstrom und keine Luftwechselrate.</translation>
    </message>
    <message>
        <source>Ready to {ways}, at most {cap} Pa: close windows and outside doors, open inside doors, then start.</source>
        <translation>Bereit für {ways}, höchstens {cap} Pa: Fenster und Außentüren schließen, Innentüren öffnen, dann beginnen.</translation>
    </message>
    <message>
        <source>Ready to {ways}: close windows and outside doors, open inside doors, then start.</source>
        <translation>Bereit für {ways}: Fenster und Außentüren schließen, Innentüren öffnen, dann beginnen.</translation>
    </message>
    <message>
        <source>air changes per hour at 50&#xa0;Pa</source>
        <translation>Luftwechsel je Stunde bei 50 Pa</translation>
    </message>
    <message>
        <source>at 50&#xa0;Pa</source>
        <translation>bei 50 Pa</translation>
    </message>
    <message>
        <source>at 50 Pa, of envelope</source>
        <translation>bei 50 Pa, der Hüllfläche</translation>
    </message>
    <message>
        <source>at 50 Pa, of floor</source>
        <translation>bei 50 Pa, der Grundfläche</translation>
    </message>
    <message>
        <source>at 75 Pa, of envelope</source>
        <translation>bei 75 Pa, der Hüllfläche</translation>
    </message>
    <message>
        <source>at 4 Pa, of envelope</source>
        <translation>bei 4 Pa, der Hüllfläche</translation>
    </message>
    <message>
        <source>at 10 Pa, of envelope</source>
        <translation>bei 10 Pa, der Hüllfläche</translation>
    </message>
    <message>
        <source>at 4 Pa, of floor</source>
        <translation>bei 4 Pa, der Grundfläche</translation>
    </message>
    <message>
        <source>Nothing has been read yet.</source>
        <translation>Noch ist nichts gemessen.</translation>
    </message>
    <message>
        <source>no interval yet</source>
        <translation>noch kein Intervall</translation>
    </message>
    <message>
        <source>{value} {unit}, plus or minus {plus_minus}. {words}</source>
        <translation>{value} {unit}, plus oder minus {plus_minus}. {words}</translation>
    </message>
    <message>
        <source>± {share} expected</source>
        <translation>± {share} zu erwarten</translation>
    </message>
    <message>
        <source>It takes a few seconds until the flow is known.</source>
        <translation>Es dauert einige Sekunden, bis der Volumenstrom bekannt ist.</translation>
    </message>
    <message>
        <source>What leaks at {target} Pa</source>
        <translation>Was bei {target} Pa leckt</translation>
    </message>
    <message>
        <source>{change} % since the beginning</source>
        <translation>{change} % seit Beginn</translation>
    </message>
    <message>
        <source>Held for {minutes} min.</source>
        <translation>Seit {minutes} min gehalten.</translation>
    </message>
    <message>
        <source>{likely} likely to meet it</source>
        <translation>{likely} wahrscheinlich eingehalten</translation>
    </message>
    <message>
        <source>does not meet: {likely} likely</source>
        <translation>nicht eingehalten: {likely} wahrscheinlich</translation>
    </message>
    <message>
        <source>cannot tell today: {likely} likely</source>
        <translation>heute nicht zu sagen: {likely} wahrscheinlich</translation>
    </message>
    <message>
        <source>{value} ± {plus_minus} by the scatter of the line alone</source>
        <translation>{value} ± {plus_minus} allein nach der Streuung der Linie</translation>
    </message>
    <message>
        <source>Result so far</source>
        <translation>Ergebnis bisher</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>By {method}, {fit}: not as this test was planned</source>
        <translation>Nach {method}, {fit}: nicht wie diese Messung geplant war</translation>
    </message>
    <message>
        <source>If the value stays, the interval has to shrink to {percent} % of its width</source>
        <translation>Bleibt der Wert, so muss das Intervall auf {percent} % seiner Breite schrumpfen</translation>
    </message>
    <message>
        <source>{share}: {ways}.</source>
        <translation>{share}: {ways}.</translation>
    </message>
    <message>
        <source>{share}; no single improvement would do.</source>
        <translation>{share}; eine einzelne Verbesserung reicht nicht.</translation>
    </message>
    <message>
        <source>a smaller uncertainty of {part}</source>
        <translation>eine kleinere Unsicherheit von {part}</translation>
    </message>
    <message>
        <source>the mean of {count} tests like this one</source>
        <translation>das Mittel aus {count} Messungen wie dieser</translation>
    </message>
    <message>
        <source>Extrapolated: {pressure} Pa lies outside the pressures that were measured.</source>
        <translation>Extrapoliert: {pressure} Pa liegt außerhalb der gemessenen Drücke.</translation>
    </message>
    <message>
        <source>No result. {why}</source>
        <translation>Kein Ergebnis. {why}</translation>
    </message>
    <message>
        <source>No limit set for this stage</source>
        <translation>Kein Grenzwert für diese Bauphase</translation>
    </message>
    <message>
        <source>Stage limit</source>
        <translation>Grenzwert der Bauphase</translation>
    </message>
    <message>
        <source>A door or window was opened</source>
        <translation>Eine Tür oder ein Fenster wurde geöffnet</translation>
    </message>
    <message>
        <source>A gust of wind</source>
        <translation>Eine Windböe</translation>
    </message>
    <message>
        <source>A seal came off</source>
        <translation>Eine Abklebung löste sich</translation>
    </message>
    <message>
        <source>The hose was moved</source>
        <translation>Der Schlauch wurde bewegt</translation>
    </message>
    <message>
        <source>The wrong flow range was entered</source>
        <translation>Der falsche Messbereich war eingetragen</translation>
    </message>
    <message>
        <source>Planned; nothing has been read yet.</source>
        <translation>Geplant; noch ist nichts gemessen.</translation>
    </message>
    <message>
        <source>Target Pa</source>
        <translation>Soll Pa</translation>
    </message>
    <message>
        <source>Mean Pa</source>
        <translation>Mittel Pa</translation>
    </message>
    <message>
        <source>Flow {unit}</source>
        <translation>Strom {unit}</translation>
    </message>
    <message>
        <source>Std. error</source>
        <translation>Std.-Fehler</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Struck: {reason}</source>
        <translation>Gestrichen: {reason}</translation>
    </message>
    <message>
        <source>Zero-flow pressure before {before}, after {after}</source>
        <translation>Natürliche Druckdifferenz vorher {before}, nachher {after}</translation>
    </message>
    <message>
        <source>Go on with this instrument</source>
        <translation>Mit diesem Gerät weiter</translation>
    </message>
    <message>
        <source>End the test here</source>
        <translation>Messung hier beenden</translation>
    </message>
    <message>
        <source>Strike the point</source>
        <translation>Punkt streichen</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>Strike the points</source>
        <translation>Messpunkte streichen</translation>
    </message>
    <message>
        <source>Leave them</source>
        <translation>Nicht ändern</translation>
    </message>
    <message>
        <source>Put it back first</source>
        <translation>Erst zurückstellen</translation>
    </message>
    <message>
        <source>Close all the same, with a reason</source>
        <translation>Trotzdem schließen, mit Grund</translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation>Fortsetzen</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Lassen, wie sie ist</translation>
    </message>
    <message>
        <source>Correct the points</source>
        <translation>Messpunkte berichtigen</translation>
    </message>
    <message>
        <source>Fit this range</source>
        <translation>Diesen Bereich einsetzen</translation>
    </message>
    <message>
        <source>Leave the range</source>
        <translation>Bereich so lassen</translation>
    </message>
    <message>
        <source>Stop the fan and close</source>
        <translation>Gebläse anhalten und schließen</translation>
    </message>
    <message>
        <source>Stay</source>
        <translation>Bleiben</translation>
    </message>
    <message>
        <source>The test is paused</source>
        <translation>Die Messung ist unterbrochen</translation>
    </message>
    <message>
        <source>Nothing is lost: the test goes on from the beginning of the interrupted step.</source>
        <translation>Nichts ist verloren: Die Messung geht am Anfang des unterbrochenen Schritts weiter.</translation>
    </message>
    <message>
        <source>Strike {count} points: {targets} Pa</source>
        <translation>{count} Messpunkte streichen: {targets} Pa</translation>
    </message>
    <message>
        <source>Why are they left out of the result? They stay in the record and can be restored.</source>
        <translation>Warum zählen sie nicht? Sie bleiben in der Aufzeichnung und können wieder gezählt werden.</translation>
    </message>
    <message>
        <source>Strike the point at {target} Pa</source>
        <translation>Punkt bei {target} Pa streichen</translation>
    </message>
    <message>
        <source>Why is it left out of the result? It stays in the record and can be restored.</source>
        <translation>Warum zählt er nicht zum Ergebnis? Er bleibt in der Aufzeichnung und kann wieder aufgenommen werden.</translation>
    </message>
    <message>
        <source>A test was interrupted</source>
        <translation>Eine Messung wurde unterbrochen</translation>
    </message>
    <message>
        <source>{interrupted} It can go on with the points that are still missing; the record says for how long it stood.</source>
        <translation>{interrupted} Sie kann mit den noch fehlenden Punkten weitergehen; die Aufzeichnung sagt, wie lange sie stand.</translation>
    </message>
    <message>
        <source>You will be asked to look at the set-up, and at the safety questions where their answers are too old.</source>
        <translation>Sie werden gebeten, die Vorbereitung anzusehen, und die Sicherheitsfragen, wo die Antworten zu alt sind.</translation>
    </message>
    <message>
        <source>Another flow range</source>
        <translation>Ein anderer Messbereich</translation>
    </message>
    <message>
        <source>Range {fitted} is fitted now. Which one comes in its place? A running fan is stopped first, and the point is begun again; each reading keeps the range that was fitted when it was made.</source>
        <translation>Bereich {fitted} ist jetzt eingesetzt. Welcher kommt an seine Stelle? Ein laufendes Gebläse hält zuerst an, und der Punkt beginnt neu; jeder Messwert behält den Bereich, der bei ihm eingesetzt war.</translation>
    </message>
    <message>
        <source>A test is running</source>
        <translation>Eine Messung läuft</translation>
    </message>
    <message>
        <source>Closing stops the fan and ends the test; what was read so far is kept.</source>
        <translation>Schließen hält das Gebläse an und beendet die Messung; was bisher gemessen ist, bleibt.</translation>
    </message>
    <message>
        <source>; and more</source>
        <translation>; und mehr</translation>
    </message>
    <message>
        <source>{count} things are not put back</source>
        <translation>{count} Dinge sind nicht zurückgestellt</translation>
    </message>
    <message>
        <source>A water heater left off or an alarm left isolated harms the people who live here. The job stays open.</source>
        <translation>Ein ausgeschalteter Wasserheizer oder ein stillgelegter Melder gefährdet die Bewohner. Der Auftrag bleibt offen.</translation>
    </message>
    <message>
        <source>Somebody else puts it back</source>
        <translation>Jemand anderes stellt es zurück</translation>
    </message>
    <message>
        <source>The work goes on another day</source>
        <translation>Die Arbeit geht an einem anderen Tag weiter</translation>
    </message>
    <message>
        <source>Safety</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>Cover the fan</source>
        <translation>Gebläse abdecken</translation>
    </message>
    <message>
        <source>Open the fan</source>
        <translation>Gebläse öffnen</translation>
    </message>
    <message>
        <source>The other direction</source>
        <translation>Die andere Richtung</translation>
    </message>
    <message>
        <source>Is today the day?</source>
        <translation>Ist heute der richtige Tag?</translation>
    </message>
    <message>
        <source>Zero-flow records between the points</source>
        <translation>Nullmessungen zwischen den Punkten</translation>
    </message>
    <message>
        <source>Which flow range is fitted?</source>
        <translation>Welcher Messbereich ist eingesetzt?</translation>
    </message>
    <message>
        <source>Look at the set-up again</source>
        <translation>Vorbereitung noch einmal ansehen</translation>
    </message>
    <message>
        <source>Something came off or closed</source>
        <translation>Etwas löste sich oder ging zu</translation>
    </message>
    <message>
        <source>Nothing can be measured so</source>
        <translation>So lässt sich nichts messen</translation>
    </message>
    <message>
        <source>The fan reaches less</source>
        <translation>Das Gebläse erreicht weniger</translation>
    </message>
    <message>
        <source>A question</source>
        <translation>Eine Frage</translation>
    </message>
    <message>
        <source>{place}: all</source>
        <translation>{place}: alle</translation>
    </message>
    <message>
        <source>Zone {zone}</source>
        <translation>Zone {zone}</translation>
    </message>
    <message>
        <source>An instrument does not answer.</source>
        <translation>Ein Gerät antwortet nicht.</translation>
    </message>
    <message>
        <source>The test waits for you.</source>
        <translation>Die Messung wartet auf Sie.</translation>
    </message>
    <message>
        <source>A test is running.</source>
        <translation>Eine Messung läuft.</translation>
    </message>
    <message>
        <source>There is a new result.</source>
        <translation>Es gibt ein neues Ergebnis.</translation>
    </message>
    <message>
        <source>{count} to be put back.</source>
        <translation>{count} zurückzustellen.</translation>
    </message>
    <message>
        <source>No job is open.</source>
        <translation>Es ist kein Auftrag offen.</translation>
    </message>
    <message>
        <source>The volume of the building is missing.</source>
        <translation>Das Volumen des Gebäudes fehlt.</translation>
    </message>
    <message>
        <source>Nothing is registered yet. Add your gauges and fans with the dates on their calibration certificates.</source>
        <translation>Noch ist nichts verzeichnet. Fügen Sie Ihre Messgeräte und Gebläse mit den Tagen ihrer Kalibrierscheine hinzu.</translation>
    </message>
    <message>
        <source>still to be typed</source>
        <translation>noch einzugeben</translation>
    </message>
    <message>
        <source>The register cannot be used, and is left as it is: {error}.</source>
        <translation>Das Verzeichnis lässt sich nicht benutzen und bleibt, wie es ist: {error}.</translation>
    </message>
    <message>
        <source>{kind} added</source>
        <translation>{kind} hinzugefügt</translation>
    </message>
    <message>
        <source>equipment removed</source>
        <translation>Gerät entfernt</translation>
    </message>
    <message>
        <source>equipment changed</source>
        <translation>Gerät geändert</translation>
    </message>
    <message>
        <source>flow range added</source>
        <translation>Messbereich hinzugefügt</translation>
    </message>
    <message>
        <source>flow range removed</source>
        <translation>Messbereich entfernt</translation>
    </message>
    <message>
        <source>field check</source>
        <translation>Vergleich vor Ort</translation>
    </message>
    <message>
        <source>serial {serial}</source>
        <translation>Serie {serial}</translation>
    </message>
    <message>
        <source>calibrated {calibrated}, good until {due_date}</source>
        <translation>kalibriert {calibrated}, gültig bis {due_date}</translation>
    </message>
    <message>
        <source>1 flow range</source>
        <translation>1 Messbereich</translation>
    </message>
    <message>
        <source>{count} flow ranges</source>
        <translation>{count} Messbereiche</translation>
    </message>
    <message>
        <source>certificate kept</source>
        <translation>Kalibrierschein abgelegt</translation>
    </message>
    <message>
        <source>Not kept yet: some fields cannot be used as they stand.</source>
        <translation>Noch nicht gesichert: Einige Felder sind so nicht brauchbar.</translation>
    </message>
    <message>
        <source>Not kept: {error}.</source>
        <translation>Nicht gesichert: {error}.</translation>
    </message>
    <message>
        <source>no calibration</source>
        <translation>keine Kalibrierung</translation>
    </message>
    <message>
        <source>dated in the future</source>
        <translation>Datum in der Zukunft</translation>
    </message>
    <message>
        <source>ran out {time} ago</source>
        <translation>vor {time} abgelaufen</translation>
    </message>
    <message>
        <source>due in {time}</source>
        <translation>fällig in {time}</translation>
    </message>
    <message>
        <source>in date</source>
        <translation>gültig</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Against</source>
        <translation>Gegen</translation>
    </message>
    <message>
        <source>Apart, Pa</source>
        <translation>Abstand, Pa</translation>
    </message>
    <message>
        <source>Allowed, Pa</source>
        <translation>Erlaubt, Pa</translation>
    </message>
    <message>
        <source>Field checks</source>
        <translation>Vergleiche vor Ort</translation>
    </message>
    <message>
        <source>None yet.</source>
        <translation>Noch keine.</translation>
    </message>
    <message>
        <source>A rig uses the power law nearest to it, at worst {share} % of the flow off.</source>
        <translation>Ein Messaufbau nimmt das nächste Potenzgesetz, höchstens {share} % des Volumenstroms daneben.</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>Playing back the recorded test.</source>
        <translation>Die aufgezeichnete Messung wird abgespielt.</translation>
    </message>
    <message>
        <source>Playing back the recorded test: {what}.</source>
        <translation>Die aufgezeichnete Messung wird abgespielt: {what}.</translation>
    </message>
    <message>
        <source>the zero-flow pressure</source>
        <translation>die natürliche Druckdifferenz</translation>
    </message>
    <message>
        <source>a point</source>
        <translation>ein Punkt</translation>
    </message>
    <message>
        <source>the point at {goal}</source>
        <translation>der Punkt bei {goal}</translation>
    </message>
    <message>
        <source>Fan {number} leaves: the others do it alone.</source>
        <translation>Gebläse {number} geht weg: Die anderen schaffen es allein.</translation>
    </message>
    <message>
        <source>The pressure did not settle at {goal} Pa within {seconds} s.</source>
        <translation>Der Druck kam bei {goal} Pa nicht innerhalb von {seconds} s zur Ruhe.</translation>
    </message>
    <message>
        <source>The pressure did not settle at {goal} Pa within {seconds} s. It stands at {now} Pa.</source>
        <translation>Der Druck kam bei {goal} Pa nicht innerhalb von {seconds} s zur Ruhe. Er steht bei {now} Pa.</translation>
    </message>
    <message>
        <source>It stands at {now} Pa.</source>
        <translation>Er steht bei {now} Pa.</translation>
    </message>
    <message>
        <source>Held {goal} Pa for {seconds} s: {flow} m³/h.</source>
        <translation>{goal} Pa für {seconds} s gehalten: {flow} m³/h.</translation>
    </message>
    <message>
        <source>Held {goal} Pa for {seconds} s: {flow} m³/h, at the beginning {first} m³/h.</source>
        <translation>{goal} Pa für {seconds} s gehalten: {flow} m³/h, zu Beginn {first} m³/h.</translation>
    </message>
    <message>
        <source>Flow range {name} is fitted; before it was {old}.</source>
        <translation>Messbereich {name} ist eingesetzt; vorher war es {old}.</translation>
    </message>
    <message>
        <source>Flow range {name} is fitted on fan {fan}; before it was {old}.</source>
        <translation>Messbereich {name} ist an Gebläse {fan} eingesetzt; vorher war es {old}.</translation>
    </message>
    <message>
        <source>The fan was stopped. Fit flow range {name} on fan {fan}; the point is then begun again.</source>
        <translation>Das Gebläse wurde angehalten. Setzen Sie an Gebläse {fan} Messbereich {name} ein; der Punkt wird dann neu begonnen.</translation>
    </message>
    <message>
        <source>No point has been taken yet.</source>
        <translation>Es ist noch kein Punkt gemessen.</translation>
    </message>
    <message>
        <source>Raise the speed slowly.</source>
        <translation>Drehen Sie langsam höher.</translation>
    </message>
    <message>
        <source>Lower the speed slowly.</source>
        <translation>Drehen Sie langsam zurück.</translation>
    </message>
    <message>
        <source>Stop. Hands off the knob.</source>
        <translation>Halt. Hände weg vom Regler.</translation>
    </message>
    <message>
        <source>Go on with range {name}</source>
        <translation>Mit Bereich {name} weitermachen</translation>
    </message>
    <message>
        <source>Lasting step: {change} m³/h at {pressure} Pa against the points before.</source>
        <translation>Bleibender Sprung: {change} m³/h bei {pressure} Pa gegenüber den Punkten davor.</translation>
    </message>
    <message>
        <source>The test went on all the same after the check of the hoses. {sentence}</source>
        <translation>Die Messung ging nach der Prüfung der Schläuche trotzdem weiter. {sentence}</translation>
    </message>
    <message>
        <source>The test has gone on meanwhile: this value was left out.</source>
        <translation>Die Messung ist inzwischen weitergegangen: Dieser Wert blieb weg.</translation>
    </message>
    <message>
        <source>so it was asked on the command line</source>
        <translation>so wurde es auf der Befehlszeile verlangt</translation>
    </message>
    <message>
        <source>as given for an automatic test</source>
        <translation>wie für eine automatische Messung angegeben</translation>
    </message>
    <message>
        <source>the engine failed</source>
        <translation>der Messablauf scheiterte</translation>
    </message>
    <message>
        <source>person at the knob</source>
        <translation>Person am Regler</translation>
    </message>
    <message>
        <source>1 point taken</source>
        <translation>1 Punkt gemessen</translation>
    </message>
    <message>
        <source>{count} points taken</source>
        <translation>{count} Punkte gemessen</translation>
    </message>
    <message>
        <source>one direction is complete</source>
        <translation>eine Richtung ist fertig</translation>
    </message>
    <message>
        <source>{what}, flow range {name} fitted</source>
        <translation>{what}, Messbereich {name} eingesetzt</translation>
    </message>
    <message>
        <source>the envelope pressure</source>
        <translation>die Druckdifferenz</translation>
    </message>
    <message>
        <source>the flow</source>
        <translation>den Volumenstrom</translation>
    </message>
    <message>
        <source>the flow-element pressure</source>
        <translation>den Druck der Messblende</translation>
    </message>
    <message>
        <source>the flow of fan 2</source>
        <translation>den Volumenstrom von Gebläse 2</translation>
    </message>
    <message>
        <source>the flow-element pressure of fan 2</source>
        <translation>den Druck der Messblende von Gebläse 2</translation>
    </message>
    <message>
        <source>With the fan off and covered read the gauge every few seconds and type each value: {count} of {wanted} typed, {seconds} s to go.</source>
        <translation>Lesen Sie bei ausgeschaltetem, abgedecktem Gebläse das Messgerät alle paar Sekunden ab und geben Sie jeden Wert ein: {count} von {wanted} eingegeben, noch {seconds} s.</translation>
    </message>
    <message>
        <source>Set the fan until the gauge shows about {goal}. When it stands, type {what}.</source>
        <translation>Stellen Sie das Gebläse, bis das Messgerät etwa {goal} zeigt. Wenn es steht, geben Sie {what} ein.</translation>
    </message>
    <message>
        <source>Hold the fan as it is, and type {what}.</source>
        <translation>Lassen Sie das Gebläse, wie es ist, und geben Sie {what} ein.</translation>
    </message>
    <message>
        <source>{value} Pa was typed: no test goes beyond {most} Pa.</source>
        <translation>{value} Pa wurden eingegeben: Keine Messung geht über {most} Pa.</translation>
    </message>
    <message>
        <source>{value} Pa was typed: indoors minus outdoors has to be {side} zero in this direction.</source>
        <translation>{value} Pa wurden eingegeben: Innen minus außen muss in dieser Richtung {side} null sein.</translation>
    </message>
    <message>
        <source>{value} Pa was typed, as good as nothing: the target is {goal}.</source>
        <translation>{value} Pa wurden eingegeben, so gut wie nichts: Das Ziel ist {goal}.</translation>
    </message>
    <message>
        <source>Type the values of this point again.</source>
        <translation>Geben Sie die Werte dieses Punkts noch einmal ein.</translation>
    </message>
    <message>
        <source>{name} is left out without a reason.</source>
        <translation>{name} ist ohne Begründung weggelassen.</translation>
    </message>
    <message>
        <source>{name} is there twice.</source>
        <translation>{name} steht zweimal da.</translation>
    </message>
    <message>
        <source>Not known yet: {what}; until then the sum is not used.</source>
        <translation>Noch nicht bekannt: {what}; bis dahin wird die Summe nicht verwendet.</translation>
    </message>
    <message>
        <source>{name}: volume</source>
        <translation>{name}: Volumen</translation>
    </message>
    <message>
        <source>{name}: floor area</source>
        <translation>{name}: Grundfläche</translation>
    </message>
    <message>
        <source>{name}: area</source>
        <translation>{name}: Fläche</translation>
    </message>
    <message>
        <source>{flow}, {change} % since the beginning</source>
        <translation>{flow}, {change} % seit Beginn</translation>
    </message>
    <message>
        <source>{name} would be {height} high. Is a number mistyped, or in another unit?</source>
        <translation>{name} wäre {height} hoch. Ist eine Zahl vertippt, oder in einer anderen Einheit?</translation>
    </message>
    <message>
        <source>No body of this volume has less than {area} of surface. Is a wall, floor or roof missing?</source>
        <translation>Kein Körper dieses Volumens hat weniger als {area} Oberfläche. Fehlt eine Wand, ein Boden oder das Dach?</translation>
    </message>
    <message>
        <source>Very much surface for this volume. Is a number mistyped?</source>
        <translation>Sehr viel Oberfläche für dieses Volumen. Ist eine Zahl vertippt?</translation>
    </message>
    <message>
        <source>The writer of {file} has stopped ({reason}): new data is in memory only.</source>
        <translation>Das Schreiben von {file} ist stehen geblieben ({reason}): Neue Daten sind nur im Arbeitsspeicher.</translation>
    </message>
    <message>
        <source>The disk does not take {file} ({reason}): new data is in memory only. Make room.</source>
        <translation>Der Datenträger nimmt {file} nicht an ({reason}): Neue Daten sind nur im Arbeitsspeicher. Schaffen Sie Platz.</translation>
    </message>
    <message>
        <source>The disk is slow: {file} is {seconds} s behind.</source>
        <translation>Der Datenträger ist langsam: {file} ist {seconds} s im Rückstand.</translation>
    </message>
    <message>
        <source>The disk did not take the last {count} entries of {file} ({reason}): the whole job with them is in {copy}.</source>
        <translation>Der Datenträger nahm die letzten {count} Einträge von {file} nicht an ({reason}): Der ganze Auftrag mit ihnen ist in {copy}.</translation>
    </message>
    <message>
        <source>The disk did not take the last {count} entries of {file} ({reason}), and a copy to {copy} failed too ({error}): they are lost.</source>
        <translation>Der Datenträger nahm die letzten {count} Einträge von {file} nicht an ({reason}), und auch eine Kopie nach {copy} scheiterte ({error}): Sie sind verloren.</translation>
    </message>
    <message>
        <source>Expected before the points: the flow at 50 Pa to ±{readings} by the readings, ±{kit} with gauge and flow element, in about {minutes} min a direction.</source>
        <translation>Vor den Punkten erwartet: Volumenstrom bei 50 Pa auf ±{readings} durch die Messwerte, ±{kit} mit Messgerät und Messblende, in etwa {minutes} min je Richtung.</translation>
    </message>
    <message>
        <source>The first point gives about {guess} and the limit is {limit}: with ±{share} this test will probably not tell on which side the building is.</source>
        <translation>Der erste Punkt gibt etwa {guess}, und der Grenzwert ist {limit}: Mit ±{share} sagt diese Messung wohl nicht, auf welcher Seite das Gebäude liegt.</translation>
    </message>
    <message>
        <source>The {schedule} schedule pays today: ±{share} in {minutes} min.</source>
        <translation>Der Zeitplan „{schedule}“ lohnt heute: ±{share} in {minutes} min.</translation>
    </message>
    <message>
        <source>The {schedule} schedule would do: ±{share} in {minutes} min.</source>
        <translation>Der Zeitplan „{schedule}“ würde genügen: ±{share} in {minutes} min.</translation>
    </message>
    <message>
        <source>quick</source>
        <translation>schnell</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>üblich</translation>
    </message>
    <message>
        <source>precision</source>
        <translation>genau</translation>
    </message>
    <message>
        <source>windy</source>
        <translation>windig</translation>
    </message>
    <message>
        <source>Own</source>
        <translation>Eigener</translation>
    </message>
    <message>
        <source>The interval will be ±{share}: a limit within {same} of the result cannot be decided.</source>
        <translation>Das Intervall wird ±{share} sein: Ein Grenzwert innerhalb von {same} um das Ergebnis lässt sich nicht entscheiden.</translation>
    </message>
    <message>
        <source>The zero-flow pressure is {worst} Pa and {method} allows {limit} Pa: the result will not be valid.</source>
        <translation>Die natürliche Druckdifferenz ist {worst} Pa, und {method} erlaubt {limit} Pa: Das Ergebnis wird nicht gültig sein.</translation>
    </message>
    <message>
        <source>The zero-flow pressure ({worst} Pa) is near the {limit} Pa that {method} allows: in this wind the closing record may well be beyond.</source>
        <translation>Die natürliche Druckdifferenz ({worst} Pa) liegt nahe den {limit} Pa, die {method} erlaubt: Bei diesem Wind kann die abschließende Messung darüber liegen.</translation>
    </message>
    <message>
        <source>At {pressure} Pa the flow will be about {flow} m³/h, below the {bound} m³/h at which range {name} begins.</source>
        <translation>Bei {pressure} Pa wird der Volumenstrom etwa {flow} m³/h sein, unter den {bound} m³/h, bei denen Bereich {name} beginnt.</translation>
    </message>
    <message>
        <source>At {pressure} Pa the flow will be about {flow} m³/h, above the {bound} m³/h at which range {name} ends.</source>
        <translation>Bei {pressure} Pa wird der Volumenstrom etwa {flow} m³/h sein, über den {bound} m³/h, bei denen Bereich {name} endet.</translation>
    </message>
    <message>
        <source>From {pressure} Pa down the flow will be below the {bound} m³/h at which range {name} begins. A smaller range suits this house.</source>
        <translation>Ab {pressure} Pa abwärts wird der Volumenstrom unter den {bound} m³/h liegen, bei denen Bereich {name} beginnt. Zu diesem Haus passt ein kleinerer Bereich.</translation>
    </message>
    <message>
        <source>From {pressure} Pa up the flow will be above the {bound} m³/h at which range {name} ends. A larger range suits this house.</source>
        <translation>Ab {pressure} Pa aufwärts wird der Volumenstrom über den {bound} m³/h liegen, bei denen Bereich {name} endet. Zu diesem Haus passt ein größerer Bereich.</translation>
    </message>
    <message>
        <source>Expected before the points</source>
        <translation>Vor den Punkten erwartet</translation>
    </message>
    <message>
        <source>Expected for q50</source>
        <translation>Erwartet für q50</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>With kit</source>
        <translation>Mit Geräten</translation>
    </message>
    <message>
        <source>{schedule} (chosen)</source>
        <translation>{schedule} (gewählt)</translation>
    </message>
    <message>
        <source>From the first zero-flow record: {mean} Pa, moving by {spread} Pa; {seconds} s of readings count as one.</source>
        <translation>Aus der ersten Nullmessung: {mean} Pa, schwankend um {spread} Pa; {seconds} s Messwerte zählen als einer.</translation>
    </message>
    <message>
        <source>{item}, range {name}</source>
        <translation>{item}, Bereich {name}</translation>
    </message>
    <message>
        <source>{item}: no calibration is registered.</source>
        <translation>{item}: Es ist keine Kalibrierung eingetragen.</translation>
    </message>
    <message>
        <source>{item}: the calibration is dated {day}, which is still to come.</source>
        <translation>{item}: Die Kalibrierung trägt das Datum {day}, das noch kommt.</translation>
    </message>
    <message>
        <source>{item}: calibration overdue since {day}, {days}.</source>
        <translation>{item}: Kalibrierung überfällig seit {day}, {days}.</translation>
    </message>
    <message>
        <source>{item}: calibration overdue by {scheme} since {day}, {days}.</source>
        <translation>{item}: Kalibrierung nach {scheme} überfällig seit {day}, {days}.</translation>
    </message>
    <message>
        <source>{item}: calibration due on {day}, in {days}.</source>
        <translation>{item}: Kalibrierung fällig am {day}, Frist: {days}.</translation>
    </message>
    <message>
        <source>{item}: calibration due by {scheme} on {day}, in {days}.</source>
        <translation>{item}: Kalibrierung nach {scheme} fällig am {day}, Frist: {days}.</translation>
    </message>
    <message>
        <source>{item}: calibration good until {day}.</source>
        <translation>{item}: Kalibrierung gültig bis {day}.</translation>
    </message>
    <message>
        <source>{item}: calibration good by {scheme} until {day}.</source>
        <translation>{item}: Kalibrierung nach {scheme} gültig bis {day}.</translation>
    </message>
    <message>
        <source>{count} days</source>
        <translation>{count} Tage</translation>
    </message>
    <message>
        <source>{first} and {second} agree: at most {apart} Pa apart at {pressure} Pa; {allowed} Pa are allowed.</source>
        <translation>{first} und {second} stimmen überein: höchstens {apart} Pa Unterschied bei {pressure} Pa; {allowed} Pa sind erlaubt.</translation>
    </message>
    <message>
        <source>{first} and {second} do not agree: {apart} Pa apart at {pressure} Pa; {allowed} Pa are allowed. One of them needs calibration.</source>
        <translation>{first} und {second} stimmen nicht überein: {apart} Pa Unterschied bei {pressure} Pa; {allowed} Pa sind erlaubt. Eines davon braucht eine Kalibrierung.</translation>
    </message>
    <message>
        <source>{count} checks since {day}: the difference has grown from {was} to {now} of what is allowed.</source>
        <translation>{count} Vergleiche seit {day}: Der Unterschied wuchs von {was} auf {now} des Erlaubten.</translation>
    </message>
    <message>
        <source>{count} checks since {day}: the difference has not grown.</source>
        <translation>{count} Vergleiche seit {day}: Der Unterschied ist nicht gewachsen.</translation>
    </message>
    <message>
        <source>There is no flow-element pressure.</source>
        <translation>Es gibt keinen Druck der Messblende.</translation>
    </message>
    <message>
        <source>{pressure} Pa at the flow element is {side} the {bound} Pa that range {name} is calibrated to.</source>
        <translation>{pressure} Pa an der Messblende liegen {side} den {bound} Pa, bis zu denen Bereich {name} kalibriert ist.</translation>
    </message>
    <message>
        <source>Fit range {name}.</source>
        <translation>Setzen Sie Bereich {name} ein.</translation>
    </message>
    <message>
        <source>No other range of this rig measures such a flow.</source>
        <translation>Kein anderer Bereich dieses Messaufbaus misst einen solchen Volumenstrom.</translation>
    </message>
    <message>
        <source>Fire alarm, isolated for fog</source>
        <translation>Brandmelder, für den Nebel abgeschaltet</translation>
    </message>
    <message>
        <source>Fog sets off smoke alarms and those that call the fire service: have them isolated by somebody who may, tell whoever looks after them, tick both here. Local codes decide. Use fog that people may breathe, on nothing that is hot; tell the neighbours before it comes out of the walls. Depressurizing draws flue gas and dust into the house: no flame burns, ashes are covered, as in Set-up.</source>
        <translation>Nebel löst Rauchmelder aus, auch solche, die die Feuerwehr rufen: Lassen Sie sie von jemandem abschalten, der es darf, sagen Sie es denen, die sie betreuen, und haken Sie hier beides ab. Örtliche Vorschriften entscheiden. Nehmen Sie Nebel, den man atmen darf, auf nichts Heißem; sagen Sie es den Nachbarn, bevor er aus den Wänden kommt. Unterdruck zieht Abgas und Staub ins Haus: Keine Flamme brennt, Asche ist abgedeckt, wie unter Vorbereitung.</translation>
    </message>
    <message>
        <source>from inside: outdoor air comes in at the leaks</source>
        <translation>von innen: Außenluft kommt an den Leckagen herein</translation>
    </message>
    <message>
        <source>from outside: indoor air comes out at the leaks</source>
        <translation>von außen: Innenluft kommt an den Leckagen heraus</translation>
    </message>
    <message>
        <source>Fog or a smoke pen: stand inside and watch where it is blown away from the wall.</source>
        <translation>Nebel oder Rauchstift: Stehen Sie innen und sehen Sie, wo er von der Wand weggeblasen wird.</translation>
    </message>
    <message>
        <source>Fog: make it inside and look from outside where it comes out.</source>
        <translation>Nebel: Machen Sie ihn innen, und sehen Sie von außen, wo er herauskommt.</translation>
    </message>
    <message>
        <source>It lasts longer at {pressure} Pa or less.</source>
        <translation>Bei {pressure} Pa oder weniger hält er länger.</translation>
    </message>
    <message>
        <source>{difference} K between indoors and outdoors</source>
        <translation>{difference} K zwischen innen und außen</translation>
    </message>
    <message>
        <source>Infra-red: no temperatures are known, enter them in Job.</source>
        <translation>Infrarot: Es sind keine Temperaturen bekannt, geben Sie sie unter Auftrag ein.</translation>
    </message>
    <message>
        <source>Infra-red works: {known}. Look {where}.</source>
        <translation>Infrarot geht: {known}. Schauen Sie {where}.</translation>
    </message>
    <message>
        <source>Infra-red may show large leaks only: {known}, 10 K are wanted. Look {where}.</source>
        <translation>Infrarot zeigt vielleicht nur große Leckagen: {known}, 10 K sind gewünscht. Schauen Sie {where}.</translation>
    </message>
    <message>
        <source>Infra-red shows nothing: {known}. Heat the house first, or use fog and the hand.</source>
        <translation>Infrarot zeigt nichts: {known}. Heizen Sie zuerst, oder nehmen Sie Nebel und die Hand.</translation>
    </message>
    <message>
        <source>counted from here</source>
        <translation>ab hier gezählt</translation>
    </message>
    <message>
        <source>sealing starts</source>
        <translation>Abdichten beginnt</translation>
    </message>
    <message>
        <source>sealing done</source>
        <translation>Abdichten fertig</translation>
    </message>
    <message>
        <source>new leak</source>
        <translation>neue Leckage</translation>
    </message>
    <message>
        <source>something came open</source>
        <translation>etwas ging auf</translation>
    </message>
    <message>
        <source>something was shut</source>
        <translation>etwas wurde geschlossen</translation>
    </message>
    <message>
        <source>a door or a gust</source>
        <translation>eine Tür oder eine Bö</translation>
    </message>
    <message>
        <source>windows and doors</source>
        <translation>Fenster und Türen</translation>
    </message>
    <message>
        <source>No change can be told; the smallest that could be is {share} %.</source>
        <translation>Es lässt sich keine Änderung sagen; die kleinste, die sich sagen ließe, ist {share} %.</translation>
    </message>
    <message>
        <source>It is tighter now.</source>
        <translation>Es ist jetzt dichter.</translation>
    </message>
    <message>
        <source>It leaks more now.</source>
        <translation>Es leckt jetzt mehr.</translation>
    </message>
    <message>
        <source>Probability of a true fall: {share}.</source>
        <translation>Wahrscheinlichkeit einer wahren Abnahme: {share}.</translation>
    </message>
    <message>
        <source>Both tests with the same instruments: their calibration is one error in both and cancels in the change.</source>
        <translation>Beide Messungen mit denselben Geräten: Ihre Kalibrierung ist in beiden derselbe Fehler und hebt sich in der Änderung auf.</translation>
    </message>
    <message>
        <source>Different instruments: their calibration does not cancel in the change.</source>
        <translation>Verschiedene Geräte: Ihre Kalibrierung hebt sich in der Änderung nicht auf.</translation>
    </message>
    <message>
        <source>What else differs</source>
        <translation>Was sonst verschieden ist</translation>
    </message>
    <message>
        <source>Nothing else differs.</source>
        <translation>Sonst ist nichts verschieden.</translation>
    </message>
    <message>
        <source>Change, {unit}</source>
        <translation>Änderung, {unit}</translation>
    </message>
    <message>
        <source>Change, %</source>
        <translation>Änderung, %</translation>
    </message>
    <message>
        <source>{title}: q50, {unit}</source>
        <translation>{title}: q50, {unit}</translation>
    </message>
    <message>
        <source>the zero-flow pressure was taken off in one test only</source>
        <translation>die natürliche Druckdifferenz wurde nur in einer Messung abgezogen</translation>
    </message>
    <message>
        <source>openings and the stack may have behaved differently; the air itself is accounted for</source>
        <translation>Öffnungen und Auftrieb können sich anders verhalten haben; die Luft selbst ist berücksichtigt</translation>
    </message>
    <message>
        <source>another building, or the same one under another name</source>
        <translation>ein anderes Gebäude, oder dasselbe unter anderem Namen</translation>
    </message>
    <message>
        <source>air changes are not comparable; flows are</source>
        <translation>Luftwechsel sind nicht vergleichbar; Volumenströme sind es</translation>
    </message>
    <message>
        <source>rates per envelope area are not comparable; flows are</source>
        <translation>Werte je Hüllfläche sind nicht vergleichbar; Volumenströme sind es</translation>
    </message>
    <message>
        <source>rates per floor area are not comparable; flows are</source>
        <translation>Werte je Grundfläche sind nicht vergleichbar; Volumenströme sind es</translation>
    </message>
    <message>
        <source>the expected stack pressure is not the same</source>
        <translation>der erwartete Auftrieb ist nicht derselbe</translation>
    </message>
    <message>
        <source>the density of the air is not the same where no barometer was read</source>
        <translation>die Luftdichte ist nicht dieselbe, wo kein Barometer abgelesen wurde</translation>
    </message>
    <message>
        <source>flaps and membranes leak differently in each direction: compare the direction that both have</source>
        <translation>Klappen und Bahnen lecken in jeder Richtung anders: vergleichen Sie die Richtung, die beide haben</translation>
    </message>
    <message>
        <source>the density was taken from another source</source>
        <translation>die Dichte stammt aus anderer Quelle</translation>
    </message>
    <message>
        <source>Zero-flow pressure</source>
        <translation>Natürliche Druckdifferenz</translation>
    </message>
    <message>
        <source>stack and wind pushed differently on the house</source>
        <translation>Auftrieb und Wind drückten anders auf das Haus</translation>
    </message>
    <message>
        <source>Zero-flow record before</source>
        <translation>Nullmessung vorher</translation>
    </message>
    <message>
        <source>Zero-flow record after</source>
        <translation>Nullmessung nachher</translation>
    </message>
    <message>
        <source>the intervals are not equally wide</source>
        <translation>die Intervalle sind nicht gleich breit</translation>
    </message>
    <message>
        <source>Lowest pressure</source>
        <translation>Niedrigster Druck</translation>
    </message>
    <message>
        <source>a bend of the line shows in one test and not in the other</source>
        <translation>ein Knick der Geraden zeigt sich in einer Messung und in der anderen nicht</translation>
    </message>
    <message>
        <source>Highest pressure</source>
        <translation>Höchster Druck</translation>
    </message>
    <message>
        <source>flaps and seals may have moved in one test only</source>
        <translation>Klappen und Abklebungen können sich nur in einer Messung bewegt haben</translation>
    </message>
    <message>
        <source>Average of a point</source>
        <translation>Mittelung eines Punkts</translation>
    </message>
    <message>
        <source>what was built or sealed between is part of the change</source>
        <translation>was dazwischen gebaut oder abgedichtet wurde, ist Teil der Änderung</translation>
    </message>
    <message>
        <source>part of the change may come from it</source>
        <translation>ein Teil der Änderung kann daher kommen</translation>
    </message>
    <message>
        <source>Effective leakage area at 4 Pa, discharge coefficient 1. Averages over many buildings: a single component may leak many times as much.</source>
        <translation>Wirksame Leckagefläche bei 4 Pa, Durchflusszahl 1. Mittel über viele Gebäude: Ein einzelnes Bauteil kann ein Vielfaches lecken.</translation>
    </message>
    <message>
        <source>Leakage of components</source>
        <translation>Leckage von Bauteilen</translation>
    </message>
    <message>
        <source>Components together</source>
        <translation>Bauteile zusammen</translation>
    </message>
    <message>
        <source>With a flow exponent of 0.65.</source>
        <translation>Mit einem Strömungsexponenten von 0,65.</translation>
    </message>
    <message>
        <source>Together, {unit}</source>
        <translation>Zusammen, {unit}</translation>
    </message>
    <message>
        <source>All at the lower end, {unit}</source>
        <translation>Alle am unteren Ende, {unit}</translation>
    </message>
    <message>
        <source>All at the upper end, {unit}</source>
        <translation>Alle am oberen Ende, {unit}</translation>
    </message>
    <message>
        <source>Flow at 50 Pa, {unit}</source>
        <translation>Volumenstrom bei 50 Pa, {unit}</translation>
    </message>
    <message>
        <source>per metre</source>
        <translation>je Meter</translation>
    </message>
    <message>
        <source>per square metre</source>
        <translation>je Quadratmeter</translation>
    </message>
    <message>
        <source>Air factor</source>
        <translation>Luftfaktor</translation>
    </message>
    <message>
        <source>Off the line</source>
        <translation>Neben der Geraden</translation>
    </message>
    <message>
        <source>Corrections, {direction}</source>
        <translation>Korrekturen, {direction}</translation>
    </message>
    <message>
        <source>Read, Pa</source>
        <translation>Gelesen, Pa</translation>
    </message>
    <message>
        <source>Induced, Pa</source>
        <translation>Erzeugt, Pa</translation>
    </message>
    <message>
        <source>Fan, {unit}</source>
        <translation>Gebläse, {unit}</translation>
    </message>
    <message>
        <source>Envelope, {unit}</source>
        <translation>Hülle, {unit}</translation>
    </message>
    <message>
        <source>Line, {unit}</source>
        <translation>Gerade, {unit}</translation>
    </message>
    <message>
        <source>air pressure {value} {unit}</source>
        <translation>Luftdruck {value} {unit}</translation>
    </message>
    <message>
        <source>Fan {number} joins: the others move too little air.</source>
        <translation>Gebläse {number} kommt dazu: Die anderen fördern zu wenig Luft.</translation>
    </message>
    <message>
        <source>Worked out with flow range {name}; {old} had been entered.</source>
        <translation>Ausgewertet mit Messbereich {name}; eingetragen war {old}.</translation>
    </message>
    <message>
        <source>Worked out with flow range {name} on fan {fan}; {old} had been entered.</source>
        <translation>Ausgewertet mit Messbereich {name} an Gebläse {fan}; eingetragen war {old}.</translation>
    </message>
    <message>
        <source>Points worked out anew with flow range {name}: {numbers}.</source>
        <translation>Messpunkte neu ausgewertet mit Messbereich {name}: {numbers}.</translation>
    </message>
    <message>
        <source>Points worked out anew with the flow range as entered: {numbers}.</source>
        <translation>Messpunkte neu ausgewertet mit dem eingetragenen Messbereich: {numbers}.</translation>
    </message>
    <message>
        <source>With flow range {name} instead of {old} the points at {targets} Pa would lie on the line of the others: which range were they read with?</source>
        <translation>Mit Messbereich {name} statt {old} lägen die Messpunkte bei {targets} Pa auf der Geraden der übrigen: Mit welchem Messbereich wurden sie gemessen?</translation>
    </message>
    <message>
        <source>the flow of fan 3</source>
        <translation>den Volumenstrom von Gebläse 3</translation>
    </message>
    <message>
        <source>the flow of fan 4</source>
        <translation>den Volumenstrom von Gebläse 4</translation>
    </message>
    <message>
        <source>the flow-element pressure of fan 3</source>
        <translation>den Druck der Messblende von Gebläse 3</translation>
    </message>
    <message>
        <source>the flow-element pressure of fan 4</source>
        <translation>den Druck der Messblende von Gebläse 4</translation>
    </message>
    <message>
        <source>air pressure by the altitude of {height} m</source>
        <translation>Luftdruck nach der Höhe von {height} m</translation>
    </message>
    <message>
        <source>indoor {indoor}, outdoor {outdoor}, {air}</source>
        <translation>innen {indoor}, außen {outdoor}, {air}</translation>
    </message>
    <message>
        <source>Zero-flow pressure taken off, mean of the records before and after: {zero} Pa.</source>
        <translation>Abgezogene natürliche Druckdifferenz, Mittel der Messungen vorher und nachher: {zero} Pa.</translation>
    </message>
    <message>
        <source>Air factor: from fan flow to flow through the envelope, by the densities of both airs ({airs}).</source>
        <translation>Luftfaktor: vom Gebläsestrom zum Strom durch die Hülle, nach den Dichten beider Lüfte ({airs}).</translation>
    </message>
    <message>
        <source>To reference air (20 °C, 101 325 Pa) the coefficient is multiplied by {factor}.</source>
        <translation>Auf Bezugsluft (20 °C, 101 325 Pa) wird der Koeffizient mit {factor} multipliziert.</translation>
    </message>
    <message>
        <source>Pressurizing leaks {share} against depressurizing. {cause}</source>
        <translation>Überdruck leckt {share} gegenüber Unterdruck. {cause}</translation>
    </message>
    <message>
        <source>Effective leakage area at 4 Pa, Cd 1</source>
        <translation>Wirksame Leckagefläche bei 4 Pa, Cd 1</translation>
    </message>
    <message>
        <source>Equivalent leakage area at 10 Pa, Cd 0.611</source>
        <translation>Äquivalente Leckagefläche bei 10 Pa, Cd 0,611</translation>
    </message>
    <message>
        <source>Leakage coefficient, air of the test</source>
        <translation>Leckagekoeffizient, Luft der Messung</translation>
    </message>
    <message>
        <source>Leakage coefficient, reference air</source>
        <translation>Leckagekoeffizient, Bezugsluft</translation>
    </message>
    <message>
        <source>Not stated, so what is counted per it is missing: {what}.</source>
        <translation>Nicht angegeben, daher fehlt, was darauf bezogen wird: {what}.</translation>
    </message>
    <message>
        <source>Normalised leakage NL (ASHRAE 62.2)</source>
        <translation>Normierte Leckage NL (ASHRAE 62.2)</translation>
    </message>
    <message>
        <source>Both directions leak alike.</source>
        <translation>Beide Richtungen lecken gleich.</translation>
    </message>
    <message>
        <source>The exponents part in opposite ways: the signature of a membrane or sheet that bellies and opens or closes its leaks. Look for loose sheeting, fix it, or keep the pressure low.</source>
        <translation>Die Exponenten gehen gegenläufig auseinander: das Zeichen einer Bahn oder Folie, die sich bläht und ihre Leckagen öffnet oder schließt. Suchen Sie lose Folien, befestigen Sie sie, oder halten Sie den Druck niedrig.</translation>
    </message>
    <message>
        <source>One direction leaks more at a like exponent: a flap, damper or seal that opens one way, the outdoor hose in the jet while the fan blew out, or something that changed between the runs. Look at flaps, temporary seals and the hose, then repeat.</source>
        <translation>Eine Richtung leckt bei gleichem Exponenten mehr: eine Klappe oder Abklebung, die nach einer Seite aufgeht, der Außenschlauch im Strahl, während das Gebläse hinausblies, oder etwas, das sich zwischen den Läufen änderte. Sehen Sie nach Klappen, Abklebungen und dem Schlauch, dann wiederholen Sie.</translation>
    </message>
    <message>
        <source>Issued, UTC</source>
        <translation>Ausgestellt, UTC</translation>
    </message>
    <message>
        <source>Issued reports</source>
        <translation>Ausgestellte Berichte</translation>
    </message>
    <message>
        <source>None was issued yet.</source>
        <translation>Noch keiner wurde ausgestellt.</translation>
    </message>
    <message>
        <source>Issued again: {reason}</source>
        <translation>Erneut ausgestellt: {reason}</translation>
    </message>
    <message>
        <source>No job has these words.</source>
        <translation>Kein Auftrag hat diese Wörter.</translation>
    </message>
    <message>
        <source>Editions and amendments differ; the local authority decides which limit counts. Hold each against its document.</source>
        <translation>Ausgaben und Änderungen unterscheiden sich; die örtliche Behörde entscheidet, welcher Grenzwert gilt. Halten Sie jeden gegen sein Dokument.</translation>
    </message>
    <message>
        <source>No limit is known here.</source>
        <translation>Hier ist kein Grenzwert bekannt.</translation>
    </message>
    <message>
        <source>No limit was chosen. The Job place and `airseam limits` list those of codes and programmes.</source>
        <translation>Es ist kein Grenzwert gewählt. Unter Auftrag und mit `airseam limits` stehen die der Vorschriften und Programme.</translation>
    </message>
    <message>
        <source>That is {finding}.</source>
        <translation>Das ist {finding}.</translation>
    </message>
    <message>
        <source>within the band of the estimate</source>
        <translation>innerhalb des Bandes der Schätzung</translation>
    </message>
    <message>
        <source>tighter than assumed</source>
        <translation>dichter als angenommen</translation>
    </message>
    <message>
        <source>leakier than assumed</source>
        <translation>undichter als angenommen</translation>
    </message>
    <message>
        <source>Sensible heat of the difference between the expected and the assumed air change; below 0 the design has over.</source>
        <translation>Fühlbare Wärme des Unterschieds zwischen erwartetem und angenommenem Luftwechsel; unter 0 hat die Auslegung Reserve.</translation>
    </message>
    <message>
        <source>{area} cm² at 4 Pa for each m² of exposed surface; {source}.</source>
        <translation>{area} cm² bei 4 Pa je m² Außenfläche; {source}.</translation>
    </message>
    <message>
        <source>Natural air change, {unit}</source>
        <translation>Natürlicher Luftwechsel, {unit}</translation>
    </message>
    <message>
        <source>Infiltration credit, {unit}</source>
        <translation>Angerechnete Infiltration, {unit}</translation>
    </message>
    <message>
        <source>The design assumed, 1/h</source>
        <translation>Die Auslegung nahm an, 1/h</translation>
    </message>
    <message>
        <source>Heating load that the design lacks, W</source>
        <translation>Heizlast, die der Auslegung fehlt, W</translation>
    </message>
    <message>
        <source>All leaks together as one hole</source>
        <translation>Alle Leckagen zusammen als ein Loch</translation>
    </message>
    <message>
        <source>Its diameter, in</source>
        <translation>Sein Durchmesser, in</translation>
    </message>
    <message>
        <source>Its diameter, cm</source>
        <translation>Sein Durchmesser, cm</translation>
    </message>
    <message>
        <source>Nearest class of construction in load calculations</source>
        <translation>Nächste Bauklasse der Lastberechnungen</translation>
    </message>
    <message>
        <source>{what}: at most {limit}</source>
        <translation>{what}: höchstens {limit}</translation>
    </message>
    <message>
        <source>one round hole with sharp edges (discharge coefficient 0.611) that passes the same flow at 10 Pa: EqLA10</source>
        <translation>ein rundes Loch mit scharfen Kanten (Durchflusszahl 0,611), das bei 10 Pa denselben Strom durchlässt: EqLA10</translation>
    </message>
    <message>
        <source>Estimate only, by a model and not measured; it does not belong on a certificate.</source>
        <translation>Nur eine Schätzung nach einem Modell, nicht gemessen; sie gehört nicht auf ein Zertifikat.</translation>
    </message>
    <message>
        <source>This is an estimate from the leakage line, far below the pressures of the test, for closed windows and still air. It does not show that an appliance is safe: wind, cold flues, closed doors and blocked supply air are not in it. The local code and the instructions of the appliance govern. Have the worst case tested at every appliance by somebody licensed for it, again after every day of sealing, and resolve a possible backdraught before anything else is sealed.</source>
        <translation>Dies ist eine Schätzung aus der Leckagegeraden, weit unter den Drücken der Messung, für geschlossene Fenster und ruhige Luft. Sie zeigt nicht, dass ein Gerät sicher ist: Wind, kalte Züge, geschlossene Türen und versperrte Zuluft sind nicht darin. Örtliche Vorschrift und Anleitung des Geräts gelten. Lassen Sie den schlimmsten Fall an jedem Gerät von jemandem prüfen, der dazu befugt ist, nach jedem Tag des Abdichtens erneut, und klären Sie einen möglichen Rückstrom, bevor weiter abgedichtet wird.</translation>
    </message>
    <message>
        <source>basement or slab</source>
        <translation>Keller oder Bodenplatte</translation>
    </message>
    <message>
        <source>crawl space</source>
        <translation>Kriechkeller</translation>
    </message>
    <message>
        <source>No air change per hour: the volume is not stated.</source>
        <translation>Kein Luftwechsel je Stunde: Das Volumen ist nicht angegeben.</translation>
    </message>
    <message>
        <source>No infiltration credit: the height is not stated.</source>
        <translation>Keine angerechnete Infiltration: Die Höhe ist nicht angegeben.</translation>
    </message>
    <message>
        <source>No comparison with a design: the expected air change is not known.</source>
        <translation>Kein Vergleich mit einer Auslegung: Der erwartete Luftwechsel ist nicht bekannt.</translation>
    </message>
    <message>
        <source>No natural air change: {reason}.</source>
        <translation>Kein natürlicher Luftwechsel: {reason}.</translation>
    </message>
    <message>
        <source>No infiltration credit: {reason}.</source>
        <translation>Keine angerechnete Infiltration: {reason}.</translation>
    </message>
    <message>
        <source>No comparison with a design: {reason}.</source>
        <translation>Kein Vergleich mit einer Auslegung: {reason}.</translation>
    </message>
    <message>
        <source>No depressurization by fans: {reason}.</source>
        <translation>Kein Unterdruck durch Lüfter: {reason}.</translation>
    </message>
    <message>
        <source>read in {source}, not checked against the document</source>
        <translation>gelesen: {source}, nicht am Dokument geprüft</translation>
    </message>
    <message>
        <source>checked against the document: {source}</source>
        <translation>am Dokument geprüft: {source}</translation>
    </message>
    <message>
        <source>from memory, not checked against the document</source>
        <translation>aus dem Gedächtnis, nicht am Dokument geprüft</translation>
    </message>
    <message>
        <source>{source}, not checked against the document</source>
        <translation>{source}, nicht am Dokument geprüft</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>our choice</source>
        <translation>unsere Wahl</translation>
    </message>
    <message>
        <source>ELA4: effective leakage area at 4 Pa, discharge coefficient 1; EqLA10: equivalent leakage area at 10 Pa, discharge coefficient 0.611. Both follow the leakage line down from the pressure held: extrapolated.</source>
        <translation>ELA4: wirksame Leckagefläche bei 4 Pa, Durchflusszahl 1; EqLA10: äquivalente Leckagefläche bei 10 Pa, Durchflusszahl 0,611. Beide folgen der Leckagegeraden vom gehaltenen Druck abwärts: extrapoliert.</translation>
    </message>
    <message>
        <source>Flow at {pressure} Pa while the pressure was held</source>
        <translation>Volumenstrom bei {pressure} Pa, während der Druck gehalten wurde</translation>
    </message>
    <message>
        <source>The least change that is told in 30 s in this wind: {flow} {unit}, {share} %.</source>
        <translation>Die kleinste Änderung, die sich bei diesem Wind in 30 s sagen lässt: {flow} {unit}, {share} %.</translation>
    </message>
    <message>
        <source>Nothing changed that stands out from the wind.</source>
        <translation>Nichts änderte sich, das aus dem Wind heraussticht.</translation>
    </message>
    <message>
        <source>The pressure was held for less than a quiet minute: no change can be told yet.</source>
        <translation>Der Druck wurde weniger als eine ruhige Minute gehalten: Noch lässt sich keine Änderung sagen.</translation>
    </message>
    <message>
        <source>Too early to tell, or nothing was quiet before.</source>
        <translation>Zu früh, oder vorher war nichts ruhig.</translation>
    </message>
    <message>
        <source>Before, {unit}</source>
        <translation>Vorher, {unit}</translation>
    </message>
    <message>
        <source>After, {unit}</source>
        <translation>Nachher, {unit}</translation>
    </message>
    <message>
        <source>No test of this job has a result yet.</source>
        <translation>Keine Messung dieses Auftrags hat schon ein Ergebnis.</translation>
    </message>
    <message>
        <source>The curves</source>
        <translation>Die Kurven</translation>
    </message>
    <message>
        <source>At {pressure} Pa, {unit}</source>
        <translation>Bei {pressure} Pa, {unit}</translation>
    </message>
    <message>
        <source>Leaks found between</source>
        <translation>Dazwischen gefundene Leckagen</translation>
    </message>
    <message>
        <source>No leak was added to the list between these two tests.</source>
        <translation>Zwischen diesen beiden Messungen kam keine Leckage auf die Liste.</translation>
    </message>
    <message>
        <source>in the list it is open again now</source>
        <translation>in der Liste ist sie jetzt wieder offen</translation>
    </message>
    <message>
        <source>Leaks closed between</source>
        <translation>Dazwischen geschlossene Leckagen</translation>
    </message>
    <message>
        <source>No seal was marked between these two tests.</source>
        <translation>Zwischen diesen beiden Messungen wurde keine Abdichtung markiert.</translation>
    </message>
    <message>
        <source>Something got worse between: a seal came off, or something new leaks.</source>
        <translation>Dazwischen wurde etwas schlechter: Eine Abdichtung löste sich, oder etwas Neues leckt.</translation>
    </message>
    <message>
        <source>More went than the marked seals brought.</source>
        <translation>Es ging mehr weg, als die markierten Abdichtungen brachten.</translation>
    </message>
    <message>
        <source>The seals explain the change.</source>
        <translation>Die Abdichtungen erklären die Änderung.</translation>
    </message>
    <message>
        <source>on site: {note}</source>
        <translation>auf der Baustelle: {note}</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation>Alle zusammen</translation>
    </message>
    <message>
        <source>Change that they do not explain</source>
        <translation>Änderung, die sie nicht erklären</translation>
    </message>
    <message>
        <source>Brought, {unit}</source>
        <translation>Brachte, {unit}</translation>
    </message>
    <message>
        <source>Highest pressure allowed</source>
        <translation>Höchster erlaubter Druck</translation>
    </message>
    <message>
        <source>{sure}, at {pressure} Pa</source>
        <translation>{sure}, bei {pressure} Pa</translation>
    </message>
    <message>
        <source>Sizes that nobody measured are guesses, which may be off by a factor of three.</source>
        <translation>Größen, die niemand maß, sind geschätzt und können um den Faktor drei danebenliegen.</translation>
    </message>
    <message>
        <source>No seal has been measured yet: mark one with S and D while a pressure is held.</source>
        <translation>Noch ist keine Abdichtung gemessen: Markieren Sie eine mit S und D, während ein Druck gehalten wird.</translation>
    </message>
    <message>
        <source>The area is that of one sharp-edged hole at 50 Pa, discharge coefficient 0.611.</source>
        <translation>Die Fläche ist die eines scharfkantigen Lochs bei 50 Pa, Durchflusszahl 0,611.</translation>
    </message>
    <message>
        <source>The leaks of the list hardly bring it: look for more before you go on.</source>
        <translation>Die Leckagen der Liste bringen es kaum: Suchen Sie weitere, bevor Sie weitermachen.</translation>
    </message>
    <message>
        <source>The best leaks come first: the rest is usually slower and dearer than the pace so far.</source>
        <translation>Die besten Leckagen kommen zuerst: Der Rest ist meist langsamer und teurer als bisher.</translation>
    </message>
    <message>
        <source>No target at 50 Pa is set for the stage: enter one in Job.</source>
        <translation>Für die Bauphase ist kein Zielwert bei 50 Pa gesetzt: Geben Sie unter Auftrag einen ein.</translation>
    </message>
    <message>
        <source>Hold a pressure: the flow now is needed to say what is left.</source>
        <translation>Halten Sie einen Druck: Um zu sagen, was bleibt, ist der Volumenstrom jetzt nötig.</translation>
    </message>
    <message>
        <source>The target is met: stop here. Only a test by the method counts.</source>
        <translation>Der Zielwert ist erreicht: Hören Sie hier auf. Es zählt nur eine Messung nach dem Verfahren.</translation>
    </message>
    <message>
        <source>The flow is at the target, but so near that a test by the method may say otherwise: seal a little more.</source>
        <translation>Der Volumenstrom ist am Zielwert, aber so knapp, dass eine Messung nach dem Verfahren anderes sagen kann: Dichten Sie noch etwas mehr ab.</translation>
    </message>
    <message>
        <source>Go on: the leaks of the list bring it.</source>
        <translation>Machen Sie weiter: Die Leckagen der Liste bringen es.</translation>
    </message>
    <message>
        <source>Go on: the leaks of the list may bring it, if their sizes are guessed well.</source>
        <translation>Machen Sie weiter: Die Leckagen der Liste können es bringen, wenn ihre Größen gut geschätzt sind.</translation>
    </message>
    <message>
        <source>The leaks of the list do not bring it, even if larger than guessed: look for more, or stop here.</source>
        <translation>Die Leckagen der Liste bringen es nicht, selbst wenn sie größer als geschätzt sind: Suchen Sie weitere, oder hören Sie hier auf.</translation>
    </message>
    <message>
        <source>At 50 Pa, {unit}</source>
        <translation>Bei 50 Pa, {unit}</translation>
    </message>
    <message>
        <source>Hole, {unit}</source>
        <translation>Loch, {unit}</translation>
    </message>
    <message>
        <source>What the work brought</source>
        <translation>Was die Arbeit brachte</translation>
    </message>
    <message>
        <source>Without a size, and therefore not counted: {numbers}.</source>
        <translation>Ohne Größe, und darum nicht gezählt: {numbers}.</translation>
    </message>
    <message>
        <source>Flow now</source>
        <translation>Volumenstrom jetzt</translation>
    </message>
    <message>
        <source>To go to the target</source>
        <translation>Bis zum Zielwert</translation>
    </message>
    <message>
        <source>All leaks of the list that can be sealed</source>
        <translation>Alle Leckagen der Liste, die sich abdichten lassen</translation>
    </message>
    <message>
        <source>The fewest of them that would do</source>
        <translation>Die wenigsten davon, die genügen würden</translation>
    </message>
    <message>
        <source>What stays when all of the list is sealed</source>
        <translation>Was bleibt, wenn alles aus der Liste abgedichtet ist</translation>
    </message>
    <message>
        <source>Of that, what no sealing reaches</source>
        <translation>Davon, was kein Abdichten erreicht</translation>
    </message>
    <message>
        <source>Flow that went with the seals, {unit}</source>
        <translation>Volumenstrom, der mit den Abdichtungen wegging, {unit}</translation>
    </message>
    <message>
        <source>Work, minutes</source>
        <translation>Arbeit, Minuten</translation>
    </message>
    <message>
        <source>Flow that went in an hour of work, {unit}</source>
        <translation>Volumenstrom, der in einer Arbeitsstunde wegging, {unit}</translation>
    </message>
    <message>
        <source>Flow that went for each unit of money, {unit}</source>
        <translation>Volumenstrom, der je Geldeinheit wegging, {unit}</translation>
    </message>
    <message>
        <source>Hours for the rest, at this pace</source>
        <translation>Stunden für den Rest, bei diesem Tempo</translation>
    </message>
    <message>
        <source>Cost of the rest, at this price</source>
        <translation>Kosten für den Rest, zu diesem Preis</translation>
    </message>
    <message>
        <source>Windows, flaps and vents of the list, and what is left on purpose.</source>
        <translation>Fenster, Klappen und Lüftungsöffnungen der Liste, und was mit Absicht bleibt.</translation>
    </message>
    <message>
        <source>Nothing is read yet: begin with everything off.</source>
        <translation>Noch ist nichts abgelesen: Beginnen Sie mit allem ausgeschaltet.</translation>
    </message>
    <message>
        <source>Only the pressure with everything off is read yet.</source>
        <translation>Erst der Druck mit allem ausgeschaltet ist abgelesen.</translation>
    </message>
    <message>
        <source>Split by the added hole</source>
        <translation>Aufteilung durch das zusätzliche Loch</translation>
    </message>
    <message>
        <source>The zone is {side}.</source>
        <translation>Die Zone liegt {side}.</translation>
    </message>
    <message>
        <source>rather indoors</source>
        <translation>eher innen</translation>
    </message>
    <message>
        <source>between indoors and outdoors</source>
        <translation>zwischen innen und außen</translation>
    </message>
    <message>
        <source>rather outdoors</source>
        <translation>eher außen</translation>
    </message>
    <message>
        <source>between zone and outdoors</source>
        <translation>zwischen Zone und außen</translation>
    </message>
    <message>
        <source>between house and zone</source>
        <translation>zwischen Haus und Zone</translation>
    </message>
    <message>
        <source>Zone pressure</source>
        <translation>Zonendruck</translation>
    </message>
    <message>
        <source>Flow through the zone at this pressure, {unit}</source>
        <translation>Volumenstrom durch die Zone bei diesem Druck, {unit}</translation>
    </message>
    <message>
        <source>Leak between house and zone, {unit}</source>
        <translation>Leckage zwischen Haus und Zone, {unit}</translation>
    </message>
    <message>
        <source>Leak between zone and outdoors, {unit}</source>
        <translation>Leckage zwischen Zone und außen, {unit}</translation>
    </message>
    <message>
        <source>Not every check is met: the numbers are not worth a decision.</source>
        <translation>Nicht jede Prüfung ist erfüllt: Auf diese Zahlen lässt sich keine Entscheidung bauen.</translation>
    </message>
    <message>
        <source>Leak to the house over leak to outdoors</source>
        <translation>Leckage zum Haus geteilt durch Leckage nach außen</translation>
    </message>
    <message>
        <source>Leak between house and garage, {unit}</source>
        <translation>Leckage zwischen Haus und Garage, {unit}</translation>
    </message>
    <message>
        <source>not met</source>
        <translation>nicht erfüllt</translation>
    </message>
    <message>
        <source>Zone pressure changed by at least {least} Pa: else add a larger hole</source>
        <translation>Zonendruck um mindestens {least} Pa verändert: sonst ein größeres Loch öffnen</translation>
    </message>
    <message>
        <source>Flow changed by at least {times} times its own uncertainty</source>
        <translation>Volumenstrom um mindestens das {times}-Fache seiner Unsicherheit verändert</translation>
    </message>
    <message>
        <source>More than {least} Pa between house and garage (45 of 50 Pa)</source>
        <translation>Mehr als {least} Pa zwischen Haus und Garage (45 von 50 Pa)</translation>
    </message>
    <message>
        <source>Zone pressure at least {least} Pa away from those of house and outdoors</source>
        <translation>Zonendruck mindestens {least} Pa von Haus und außen entfernt</translation>
    </message>
    <message>
        <source>from memory that it must not be near either; the figure is our choice</source>
        <translation>aus dem Gedächtnis, dass er keinem nahe sein darf; die Zahl ist unsere Wahl</translation>
    </message>
    <message>
        <source>At most {most} Pa between closed room and main space</source>
        <translation>Höchstens {most} Pa zwischen geschlossenem Raum und Hauptraum</translation>
    </message>
    <message>
        <source>from memory, a programme of the United States</source>
        <translation>aus dem Gedächtnis, ein Programm der Vereinigten Staaten</translation>
    </message>
    <message>
        <source>there is no zero-flow record</source>
        <translation>es gibt keine Nullmessung</translation>
    </message>
    <message>
        <source>how long the readings took is not given</source>
        <translation>wie lange die Messwerte dauerten, ist nicht angegeben</translation>
    </message>
    <message>
        <source>how long each point was averaged is not given</source>
        <translation>wie lange jeder Punkt gemittelt wurde, ist nicht angegeben</translation>
    </message>
    <message>
        <source>the means of the positive and of the negative readings are not given</source>
        <translation>die Mittel der positiven und der negativen Messwerte sind nicht angegeben</translation>
    </message>
    <message>
        <source>{value} so far</source>
        <translation>bisher {value}</translation>
    </message>
    <message>
        <source>{value} Pa so far</source>
        <translation>bisher {value} Pa</translation>
    </message>
    <message>
        <source>the height of the building is not given</source>
        <translation>die Höhe des Gebäudes ist nicht angegeben</translation>
    </message>
    <message>
        <source>the wind speed is not given</source>
        <translation>die Windgeschwindigkeit ist nicht angegeben</translation>
    </message>
    <message>
        <source>a reading from a weather station may be up to {speed} m/s</source>
        <translation>ein Wert einer Wetterstation darf bis {speed} m/s sein</translation>
    </message>
    <message>
        <source>two points leave no scatter to tell it</source>
        <translation>zwei Punkte lassen keine Streuung, um es zu sagen</translation>
    </message>
    <message>
        <source>effective leakage area at 4 Pa, discharge coefficient 1</source>
        <translation>wirksame Leckagefläche bei 4 Pa, Durchflusszahl 1</translation>
    </message>
    <message>
        <source>equivalent leakage area at 10 Pa, discharge coefficient 0.611</source>
        <translation>äquivalente Leckagefläche bei 10 Pa, Durchflusszahl 0,611</translation>
    </message>
    <message>
        <source>the limit</source>
        <translation>der Grenzwert</translation>
    </message>
    <message>
        <source>the limit {name}</source>
        <translation>der Grenzwert {name}</translation>
    </message>
    <message>
        <source>the budget</source>
        <translation>das Budget</translation>
    </message>
    <message>
        <source>converts to reference air by density and viscosity</source>
        <translation>rechnet nach Dichte und Zähigkeit auf Bezugsluft um</translation>
    </message>
    <message>
        <source>takes the outdoor pressure of several taps with weights that cancel gusts, weighs each point by the spread of its readings, lets the zero-flow pressure err for all points alike, and {more}</source>
        <translation>nimmt den Außendruck mehrerer Messstellen mit Gewichten, die Böen aufheben, gewichtet jeden Punkt nach der Streuung seiner Messwerte, lässt die natürliche Druckdifferenz für alle Punkte gemeinsam irren, und {more}</translation>
    </message>
    <message>
        <source>weighs each point by the spread of its readings, lets the zero-flow pressure err for all points alike, and {more}</source>
        <translation>gewichtet jeden Punkt nach der Streuung seiner Messwerte, lässt die natürliche Druckdifferenz für alle Punkte gemeinsam irren, und {more}</translation>
    </message>
    <message>
        <source>{what}; the points weigh alike, because the spread of their readings is not recorded</source>
        <translation>{what}; die Punkte wiegen gleich, weil die Streuung ihrer Messwerte nicht erfasst ist</translation>
    </message>
    <message>
        <source>{what}; the exponent is assumed, because there is one pressure only</source>
        <translation>{what}; der Exponent ist angenommen, weil es nur einen Druck gibt</translation>
    </message>
    <message>
        <source>No test possible</source>
        <translation>Keine Messung möglich</translation>
    </message>
    <message>
        <source>, typed</source>
        <translation>, eingegeben</translation>
    </message>
    <message>
        <source>Test {number}, {started}{stage}{state}</source>
        <translation>Messung {number}, {started}{stage}{state}</translation>
    </message>
    <message>
        <source>The office has no name to stand on the report.</source>
        <translation>Das Büro hat keinen Namen für den Bericht.</translation>
    </message>
    <message>
        <source>The {name} is not named.</source>
        <translation>{name}: nicht genannt.</translation>
    </message>
    <message>
        <source>tester</source>
        <translation>Wer misst</translation>
    </message>
    <message>
        <source>client</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>site</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>This test has no {name}; entered now, it counts from the next test on.</source>
        <translation>Dieser Messung fehlt: {name}; jetzt eingegeben, gilt es ab der nächsten.</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>envelope area</source>
        <translation>Hüllfläche</translation>
    </message>
    <message>
        <source>floor area</source>
        <translation>Grundfläche</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>The test was {state} before its end.</source>
        <translation>Die Messung endete vor ihrem Schluss ({state}).</translation>
    </message>
    <message>
        <source>{direction}: no zero-flow pressure after the points.</source>
        <translation>{direction}: keine natürliche Druckdifferenz nach den Punkten.</translation>
    </message>
    <message>
        <source>Open a job: the report is made from it.</source>
        <translation>Öffnen Sie einen Auftrag: Aus ihm entsteht der Bericht.</translation>
    </message>
    <message>
        <source>There is no test yet. The report is made from the first one.</source>
        <translation>Es gibt noch keine Messung. Der Bericht entsteht aus der ersten.</translation>
    </message>
    <message>
        <source>The test is still running. The report follows when it has ended.</source>
        <translation>Die Messung läuft noch. Der Bericht folgt, wenn sie beendet ist.</translation>
    </message>
    <message>
        <source>This test has no result: {reason}</source>
        <translation>Diese Messung hat kein Ergebnis: {reason}</translation>
    </message>
    <message>
        <source>There is no line yet to be off.</source>
        <translation>Es gibt noch keine Linie.</translation>
    </message>
    <message>
        <source>farthest off the line: {share} %</source>
        <translation>am weitesten neben der Linie: {share} %</translation>
    </message>
    <message>
        <source>No job</source>
        <translation>Kein Auftrag</translation>
    </message>
    <message>
        <source>simulated house, invented data</source>
        <translation>simuliertes Haus, erfundene Daten</translation>
    </message>
    <message>
        <source>Envelope</source>
        <translation>Druckdifferenz</translation>
    </message>
    <message>
        <source>Fan flow</source>
        <translation>Gebläsestrom</translation>
    </message>
    <message>
        <source>Fan speed</source>
        <translation>Gebläse</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>kein Messwert</translation>
    </message>
    <message>
        <source>closing</source>
        <translation>schließt</translation>
    </message>
    <message>
        <source>no rig</source>
        <translation>kein Aufbau</translation>
    </message>
    <message>
        <source>Connect a rig in Rig (3).</source>
        <translation>Verbinden Sie einen Messaufbau unter Messaufbau (3).</translation>
    </message>
    <message>
        <source>{count} more</source>
        <translation>{count} weitere</translation>
    </message>
    <message>
        <source>{name} on {port}: {identity}</source>
        <translation>{name} an {port}: {identity}</translation>
    </message>
    <message>
        <source>no identity</source>
        <translation>keine Kennung</translation>
    </message>
    <message>
        <source>{name} typed</source>
        <translation>{name} getippt</translation>
    </message>
    <message>
        <source>{name}: a person types what it shows.</source>
        <translation>{name}: Eine Person gibt ein, was es zeigt.</translation>
    </message>
    <message>
        <source>{name} linked</source>
        <translation>{name} bereit</translation>
    </message>
    <message>
        <source>{name} closed</source>
        <translation>{name} geschlossen</translation>
    </message>
    <message>
        <source>not saved</source>
        <translation>nicht gesichert</translation>
    </message>
    <message>
        <source>between runs</source>
        <translation>ruht</translation>
    </message>
    <message>
        <source>Readings between the runs are not kept.</source>
        <translation>Messwerte zwischen den Läufen werden nicht gesichert.</translation>
    </message>
    <message>
        <source>rec {time}</source>
        <translation>läuft {time}</translation>
    </message>
    <message>
        <source>Every reading goes into the job file.</source>
        <translation>Jeder Messwert kommt in die Auftragsdatei.</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>noch nicht gesichert</translation>
    </message>
    <message>
        <source>saved {time}</source>
        <translation>gesichert {time}</translation>
    </message>
    <message>
        <source>No rig is connected</source>
        <translation>Kein Messaufbau verbunden</translation>
    </message>
    <message>
        <source>Choose a simulated house, or put your own instruments together.</source>
        <translation>Wählen Sie ein simuliertes Haus, oder stellen Sie eigene Geräte zusammen.</translation>
    </message>
    <message>
        <source>Disconnect</source>
        <translation>Trennen</translation>
    </message>
    <message>
        <source>Connect</source>
        <translation>Verbinden</translation>
    </message>
    <message>
        <source>{channel}: corrected by the certificate of {calibrated}, {words}.</source>
        <translation>{channel}: korrigiert nach dem Kalibrierschein vom {calibrated}, {words}.</translation>
    </message>
    <message>
        <source>linked, not well</source>
        <translation>verbunden, gestört</translation>
    </message>
    <message>
        <source>opening the port</source>
        <translation>öffnet den Anschluss</translation>
    </message>
    <message>
        <source>Port {port}</source>
        <translation>Anschluss {port}</translation>
    </message>
    <message>
        <source>asking who answers</source>
        <translation>fragt, wer antwortet</translation>
    </message>
    <message>
        <source>lost, trying again</source>
        <translation>verloren, neuer Versuch</translation>
    </message>
    <message>
        <source>another instrument answers</source>
        <translation>ein anderes Gerät antwortet</translation>
    </message>
    <message>
        <source>The command: {command}</source>
        <translation>Der Befehl: {command}</translation>
    </message>
    <message>
        <source>Or for this adapter alone, as a line of {file}: {rule}</source>
        <translation>Oder nur für diesen Adapter, als Zeile von {file}: {rule}</translation>
    </message>
    <message>
        <source>A person reads this gauge and types what it shows, in the Test place.</source>
        <translation>Eine Person liest dieses Messgerät ab und gibt unter Messung ein, was es zeigt.</translation>
    </message>
    <message>
        <source>{count} commands a second</source>
        <translation>{count} Befehle je Sekunde</translation>
    </message>
    <message>
        <source>{count} readings a second</source>
        <translation>{count} Messwerte je Sekunde</translation>
    </message>
    <message>
        <source>answers in {time} ms</source>
        <translation>antwortet in {time} ms</translation>
    </message>
    <message>
        <source>{count} garbled</source>
        <translation>{count} verstümmelt</translation>
    </message>
    <message>
        <source>{count} without answer</source>
        <translation>{count} ohne Antwort</translation>
    </message>
    <message>
        <source>linked again {count}×</source>
        <translation>{count}× neu verbunden</translation>
    </message>
    <message>
        <source>Fitted range {name}: {coefficient} {unit}, exponent {exponent}, calibrated from {min_pa} to {max_pa} Pa</source>
        <translation>Eingesetzter Bereich {name}: {coefficient} {unit}, Exponent {exponent}, kalibriert von {min_pa} bis {max_pa} Pa</translation>
    </message>
    <message>
        <source>Envelope pressure</source>
        <translation>Druckdifferenz des Gebäudes</translation>
    </message>
    <message>
        <source>Envelope pressure, tap 2</source>
        <translation>Druckdifferenz, Messstelle 2</translation>
    </message>
    <message>
        <source>Envelope pressure, tap 3</source>
        <translation>Druckdifferenz, Messstelle 3</translation>
    </message>
    <message>
        <source>Envelope pressure, tap 4</source>
        <translation>Druckdifferenz, Messstelle 4</translation>
    </message>
    <message>
        <source>Flow element pressure</source>
        <translation>Druck der Messblende</translation>
    </message>
    <message>
        <source>Flow element pressure, fan 2</source>
        <translation>Druck der Messblende, Gebläse 2</translation>
    </message>
    <message>
        <source>Flow element pressure, fan 3</source>
        <translation>Druck der Messblende, Gebläse 3</translation>
    </message>
    <message>
        <source>Flow element pressure, fan 4</source>
        <translation>Druck der Messblende, Gebläse 4</translation>
    </message>
    <message>
        <source>Flow, fan 2</source>
        <translation>Volumenstrom, Gebläse 2</translation>
    </message>
    <message>
        <source>Flow, fan 3</source>
        <translation>Volumenstrom, Gebläse 3</translation>
    </message>
    <message>
        <source>Flow, fan 4</source>
        <translation>Volumenstrom, Gebläse 4</translation>
    </message>
    <message>
        <source>Indoors against zone 1</source>
        <translation>Innen gegen Zone 1</translation>
    </message>
    <message>
        <source>Indoors against zone 2</source>
        <translation>Innen gegen Zone 2</translation>
    </message>
    <message>
        <source>Indoors against zone 3</source>
        <translation>Innen gegen Zone 3</translation>
    </message>
    <message>
        <source>Indoors against zone 4</source>
        <translation>Innen gegen Zone 4</translation>
    </message>
    <message>
        <source>Indoor temperature</source>
        <translation>Innentemperatur</translation>
    </message>
    <message>
        <source>Indoor temperature, place 2</source>
        <translation>Innentemperatur, Ort 2</translation>
    </message>
    <message>
        <source>Indoor temperature, place 3</source>
        <translation>Innentemperatur, Ort 3</translation>
    </message>
    <message>
        <source>Outdoor temperature</source>
        <translation>Außentemperatur</translation>
    </message>
    <message>
        <source>Outdoor temperature, place 2</source>
        <translation>Außentemperatur, Ort 2</translation>
    </message>
    <message>
        <source>Barometric pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>Coefficient</source>
        <translation>Koeffizient</translation>
    </message>
    <message>
        <source>Exponent</source>
        <translation>Exponent</translation>
    </message>
    <message>
        <source>Calibrated from</source>
        <translation>Kalibriert von</translation>
    </message>
    <message>
        <source>Calibrated to</source>
        <translation>Kalibriert bis</translation>
    </message>
    <message>
        <source>At air density</source>
        <translation>Bei Luftdichte</translation>
    </message>
    <message>
        <source>rig file</source>
        <translation>Datei des Messaufbaus</translation>
    </message>
    <message>
        <source>Add the instruments of the rig, or load a rig file.</source>
        <translation>Fügen Sie die Geräte des Messaufbaus hinzu, oder laden Sie eine Datei.</translation>
    </message>
    <message>
        <source>rig name</source>
        <translation>Name des Messaufbaus</translation>
    </message>
    <message>
        <source>instruments found</source>
        <translation>gefundene Geräte</translation>
    </message>
    <message>
        <source>{name}, whose port is still to be chosen</source>
        <translation>{name}, dessen Anschluss noch zu wählen ist</translation>
    </message>
    <message>
        <source>equipment taken</source>
        <translation>Gerät übernommen</translation>
    </message>
    <message>
        <source>Taken into your own rig from {title}: {came}.</source>
        <translation>Aus {title} in Ihren eigenen Messaufbau übernommen: {came}.</translation>
    </message>
    <message>
        <source>{title} is in your own rig already.</source>
        <translation>{title} steht schon in Ihrem eigenen Messaufbau.</translation>
    </message>
    <message>
        <source>{title} has neither a profile nor flow ranges: choose its profile first.</source>
        <translation>{title} hat weder Profil noch Messbereiche: Wählen Sie zuerst sein Profil.</translation>
    </message>
    <message>
        <source>instrument added</source>
        <translation>Gerät hinzugefügt</translation>
    </message>
    <message>
        <source>instrument removed</source>
        <translation>Gerät entfernt</translation>
    </message>
    <message>
        <source>an instrument</source>
        <translation>ein Gerät</translation>
    </message>
    <message>
        <source>channel role</source>
        <translation>Aufgabe eines Kanals</translation>
    </message>
    <message>
        <source>range added</source>
        <translation>Bereich hinzugefügt</translation>
    </message>
    <message>
        <source>range removed</source>
        <translation>Bereich entfernt</translation>
    </message>
    <message>
        <source>every brace that opens has to close</source>
        <translation>jede öffnende Klammer muss geschlossen werden</translation>
    </message>
    <message>
        <source>the names in braces are {names}; a width of digits such as :03 may follow count</source>
        <translation>die Namen in Klammern sind {names}; hinter count darf eine Breite in Ziffern stehen, etwa :03</translation>
    </message>
    <message>
        <source>only count takes a number of digits</source>
        <translation>nur count nimmt eine Zahl von Ziffern</translation>
    </message>
    <message>
        <source>more than {low} and at most {high} is allowed</source>
        <translation>mehr als {low} und höchstens {high} ist erlaubt</translation>
    </message>
    <message>
        <source>{low} to {high} is allowed</source>
        <translation>{low} bis {high} ist erlaubt</translation>
    </message>
    <message>
        <source>only Linux and Windows can be told by a program; elsewhere choose it in the file&apos;s own information</source>
        <translation>nur Linux und Windows lassen es sich von einem Programm sagen; wählen Sie es sonst in den Informationen der Datei</translation>
    </message>
    <message>
        <source>one for all channels, or one for each with its name in front, is needed</source>
        <translation>eine für alle Kanäle, oder eine für jeden mit seinem Namen davor, ist nötig</translation>
    </message>
    <message>
        <source>pairs of shown and true Pa, such as 0 0; 50 50.4, or a polynomial, such as 0.1; 1.002, are needed</source>
        <translation>Paare aus angezeigten und wahren Pa, etwa 0 0; 50 50,4, oder ein Polynom, etwa 0,1; 1,002, sind nötig</translation>
    </message>
    <message>
        <source>{file}: {key}: {allowed}</source>
        <translation>{file}: {key}: {allowed}</translation>
    </message>
    <message>
        <source>{file}, line {line}: {key}: {allowed}</source>
        <translation>{file}, Zeile {line}: {key}: {allowed}</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>not JSON</source>
        <translation>kein JSON</translation>
    </message>
    <message>
        <source>not TOML</source>
        <translation>kein TOML</translation>
    </message>
    <message>
        <source>not text</source>
        <translation>kein Text</translation>
    </message>
    <message>
        <source>not usable</source>
        <translation>nicht brauchbar</translation>
    </message>
    <message>
        <source>nested too deeply</source>
        <translation>zu tief geschachtelt</translation>
    </message>
    <message>
        <source>there twice</source>
        <translation>zweimal da</translation>
    </message>
    <message>
        <source>no list</source>
        <translation>keine Liste</translation>
    </message>
    <message>
        <source>no table</source>
        <translation>keine Tabelle</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>ein Objekt</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>wahr oder falsch</translation>
    </message>
    <message>
        <source>not finite</source>
        <translation>nicht endlich</translation>
    </message>
    <message>
        <source>not above 0</source>
        <translation>nicht größer als 0</translation>
    </message>
    <message>
        <source>not found</source>
        <translation>nicht gefunden</translation>
    </message>
    <message>
        <source>not refused</source>
        <translation>nicht verweigert</translation>
    </message>
    <message>
        <source>without interval</source>
        <translation>ohne Intervall</translation>
    </message>
    <message>
        <source>without a name</source>
        <translation>ohne Namen</translation>
    </message>
    <message>
        <source>without a number</source>
        <translation>ohne Nummer</translation>
    </message>
    <message>
        <source>without a flow</source>
        <translation>ohne Volumenstrom</translation>
    </message>
    <message>
        <source>without envelope pressure</source>
        <translation>ohne Druckdifferenz</translation>
    </message>
    <message>
        <source>without the flow of fan {number}</source>
        <translation>ohne den Volumenstrom von Gebläse {number}</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keiner</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>nicht begonnen</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>not listed</source>
        <translation>nicht aufgeführt</translation>
    </message>
    <message>
        <source>no test</source>
        <translation>keine Messung</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>not on the disk</source>
        <translation>nicht auf dem Datenträger</translation>
    </message>
    <message>
        <source>another one</source>
        <translation>ein anderer</translation>
    </message>
    <message>
        <source>several outdoor taps</source>
        <translation>mehrere Messstellen außen</translation>
    </message>
    <message>
        <source>a flow that is read</source>
        <translation>ein Volumenstrom, der gelesen wird</translation>
    </message>
    <message>
        <source>table and polynomial</source>
        <translation>Tabelle und Polynom</translation>
    </message>
    <message>
        <source>as it was kept last</source>
        <translation>wie zuletzt gesichert</translation>
    </message>
    <message>
        <source>still, with no temperature difference</source>
        <translation>windstill, ohne Temperaturdifferenz</translation>
    </message>
    <message>
        <source>of leak {number} begun</source>
        <translation>bei Leckage {number} begonnen</translation>
    </message>
    <message>
        <source>{count} lines long</source>
        <translation>{count} Zeilen lang</translation>
    </message>
    <message>
        <source>{count} bytes long</source>
        <translation>{count} Byte lang</translation>
    </message>
    <message>
        <source>{size} MiB long</source>
        <translation>{size} MiB lang</translation>
    </message>
    <message>
        <source>{size} MiB large</source>
        <translation>{size} MiB groß</translation>
    </message>
    <message>
        <source>table of {count} points, {words}</source>
        <translation>Tabelle mit {count} Punkten, {words}</translation>
    </message>
    <message>
        <source>{what} with {count} points</source>
        <translation>{what} mit {count} Punkten</translation>
    </message>
    <message>
        <source>a number is needed</source>
        <translation>eine Zahl ist nötig</translation>
    </message>
    <message>
        <source>a number is needed, such as 12.5 or 12,5</source>
        <translation>eine Zahl ist nötig, etwa 12.5 oder 12,5</translation>
    </message>
    <message>
        <source>a number is needed, alone or with a unit (allowed: {units})</source>
        <translation>eine Zahl ist nötig, allein oder mit Einheit (möglich: {units})</translation>
    </message>
    <message>
        <source>it can mean two things, write {one} or {other}</source>
        <translation>es kann zweierlei heißen, schreiben Sie {one} oder {other}</translation>
    </message>
    <message>
        <source>a number greater than 0 is needed</source>
        <translation>eine Zahl größer als 0 ist nötig</translation>
    </message>
    <message>
        <source>a number greater than 0 and at most 1 is needed</source>
        <translation>eine Zahl größer als 0 und höchstens 1 ist nötig</translation>
    </message>
    <message>
        <source>a number greater than 0 (and below 1e9) is needed</source>
        <translation>eine Zahl größer als 0 (und kleiner als 1e9) ist nötig</translation>
    </message>
    <message>
        <source>a number of at least 0 (and below 1e9) is needed</source>
        <translation>eine Zahl von mindestens 0 (und kleiner als 1e9) ist nötig</translation>
    </message>
    <message>
        <source>a number of at least 0 is needed</source>
        <translation>eine Zahl von mindestens 0 ist nötig</translation>
    </message>
    <message>
        <source>a number from {low} to {high} is needed</source>
        <translation>eine Zahl von {low} bis {high} ist nötig</translation>
    </message>
    <message>
        <source>a number from {low} to {high} {unit} is needed</source>
        <translation>eine Zahl von {low} bis {high} {unit} ist nötig</translation>
    </message>
    <message>
        <source>a number of {low} to {high} is needed</source>
        <translation>eine Zahl von {low} bis {high} ist nötig</translation>
    </message>
    <message>
        <source>a number greater than {low} is needed</source>
        <translation>eine Zahl größer als {low} ist nötig</translation>
    </message>
    <message>
        <source>a number greater than {low} and at most {high} is needed</source>
        <translation>eine Zahl größer als {low} und höchstens {high} ist nötig</translation>
    </message>
    <message>
        <source>a number greater than min_pa ({low}) is needed</source>
        <translation>eine Zahl größer als min_pa ({low}) ist nötig</translation>
    </message>
    <message>
        <source>a number greater than low ({low}) is needed</source>
        <translation>eine Zahl größer als low ({low}) ist nötig</translation>
    </message>
    <message>
        <source>a finite number is needed</source>
        <translation>eine endliche Zahl ist nötig</translation>
    </message>
    <message>
        <source>a finite number in Pa is needed</source>
        <translation>eine endliche Zahl in Pa ist nötig</translation>
    </message>
    <message>
        <source>every number must be finite</source>
        <translation>jede Zahl muss endlich sein</translation>
    </message>
    <message>
        <source>a number is not finite</source>
        <translation>eine Zahl ist nicht endlich</translation>
    </message>
    <message>
        <source>a number in it has too many digits</source>
        <translation>eine Zahl darin hat zu viele Stellen</translation>
    </message>
    <message>
        <source>a whole number is needed</source>
        <translation>eine ganze Zahl ist nötig</translation>
    </message>
    <message>
        <source>a whole number of at least 1 is needed</source>
        <translation>eine ganze Zahl von mindestens 1 ist nötig</translation>
    </message>
    <message>
        <source>a whole number of 1 to {most} is needed</source>
        <translation>eine ganze Zahl von 1 bis {most} ist nötig</translation>
    </message>
    <message>
        <source>a whole number from 0 to 999 999 999 is needed</source>
        <translation>eine ganze Zahl von 0 bis 999 999 999 ist nötig</translation>
    </message>
    <message>
        <source>a number of points from 1 to {most} is needed</source>
        <translation>eine Anzahl Punkte von 1 bis {most} ist nötig</translation>
    </message>
    <message>
        <source>a text is needed</source>
        <translation>ein Text ist nötig</translation>
    </message>
    <message>
        <source>a text in quotes is needed</source>
        <translation>ein Text in Anführungszeichen ist nötig</translation>
    </message>
    <message>
        <source>some words are needed</source>
        <translation>einige Worte sind nötig</translation>
    </message>
    <message>
        <source>a name is needed</source>
        <translation>ein Name ist nötig</translation>
    </message>
    <message>
        <source>true or false is needed</source>
        <translation>wahr oder falsch ist nötig</translation>
    </message>
    <message>
        <source>a list of texts is needed</source>
        <translation>eine Liste von Texten ist nötig</translation>
    </message>
    <message>
        <source>a list of numbers is needed</source>
        <translation>eine Liste von Zahlen ist nötig</translation>
    </message>
    <message>
        <source>a list of tables is needed</source>
        <translation>eine Liste von Tabellen ist nötig</translation>
    </message>
    <message>
        <source>a list of JSON objects is needed</source>
        <translation>eine Liste von JSON-Objekten ist nötig</translation>
    </message>
    <message>
        <source>a JSON object is needed</source>
        <translation>ein JSON-Objekt ist nötig</translation>
    </message>
    <message>
        <source>JSON in UTF-8 is needed</source>
        <translation>JSON in UTF-8 ist nötig</translation>
    </message>
    <message>
        <source>at most a few levels are needed</source>
        <translation>höchstens wenige Ebenen sind nötig</translation>
    </message>
    <message>
        <source>{what} at line {line}, column {column}</source>
        <translation>{what} in Zeile {line}, Spalte {column}</translation>
    </message>
    <message>
        <source>Played back from test {number} of {job}.</source>
        <translation>Abgespielt aus Messung {number} von {job}.</translation>
    </message>
    <message>
        <source>every part needs a name of its own</source>
        <translation>jeder Teil braucht einen eigenen Namen</translation>
    </message>
    <message>
        <source>{name} on {port} sends bytes that make no sense: look at the speed of the port and at the cable.</source>
        <translation>{name} an {port} sendet Bytes ohne Sinn: Sehen Sie nach der Geschwindigkeit des Anschlusses und nach dem Kabel.</translation>
    </message>
    <message>
        <source>{name} on {port} does not say who it is: look whether it is switched on, and at the cable.</source>
        <translation>{name} an {port} sagt nicht, wer es ist: Sehen Sie nach, ob es eingeschaltet ist, und nach dem Kabel.</translation>
    </message>
    <message>
        <source>{quantity} on {method} needs it</source>
        <translation>{quantity} nach {method} braucht es</translation>
    </message>
    <message>
        <source>exactly one field named speed, with its digits behind a colon such as .4f, is needed</source>
        <translation>genau ein Feld namens speed, mit seinen Stellen nach einem Doppelpunkt, etwa .4f, ist nötig</translation>
    </message>
    <message>
        <source>the same direction and as many points as the run itself, {count}, are needed</source>
        <translation>dieselbe Richtung und so viele Punkte wie der Lauf selbst, {count}, sind nötig</translation>
    </message>
    <message>
        <source>a corrected run is not corrected again</source>
        <translation>ein korrigierter Lauf wird nicht noch einmal korrigiert</translation>
    </message>
    <message>
        <source>Hand-written record</source>
        <translation>Handschriftliches Protokoll</translation>
    </message>
    <message>
        <source>{place} has no zones here</source>
        <translation>{place} hat hier keine Zonen</translation>
    </message>
    <message>
        <source>a field may appear only once in an object</source>
        <translation>ein Feld darf in einem Objekt nur einmal vorkommen</translation>
    </message>
    <message>
        <source>known fields here are {names}</source>
        <translation>bekannte Felder sind hier {names}</translation>
    </message>
    <message>
        <source>known tables here are {names}</source>
        <translation>bekannte Tabellen sind hier {names}</translation>
    </message>
    <message>
        <source>every entry needs an id of its own</source>
        <translation>jeder Eintrag braucht eine eigene Kennung</translation>
    </message>
    <message>
        <source>at most {size} MiB can be read</source>
        <translation>höchstens {size} MiB können gelesen werden</translation>
    </message>
    <message>
        <source>at most {size} MiB</source>
        <translation>höchstens {size} MiB</translation>
    </message>
    <message>
        <source>at most {count} bytes are read</source>
        <translation>höchstens {count} Byte werden gelesen</translation>
    </message>
    <message>
        <source>at most {count} lines</source>
        <translation>höchstens {count} Zeilen</translation>
    </message>
    <message>
        <source>at most {count} characters fit</source>
        <translation>höchstens {count} Zeichen passen</translation>
    </message>
    <message>
        <source>at most {count} characters are kept</source>
        <translation>höchstens {count} Zeichen werden aufgehoben</translation>
    </message>
    <message>
        <source>at most {lines} lines of {count} characters fit</source>
        <translation>höchstens {lines} Zeilen zu {count} Zeichen passen</translation>
    </message>
    <message>
        <source>one of {names} is needed</source>
        <translation>eines von diesen ist nötig: {names}</translation>
    </message>
    <message>
        <source>one of these is needed: {names}</source>
        <translation>eines von diesen ist nötig: {names}</translation>
    </message>
    <message>
        <source>exactly one of these is needed: {names}</source>
        <translation>genau eines von diesen ist nötig: {names}</translation>
    </message>
    <message>
        <source>exactly one of the two is needed</source>
        <translation>genau eines von beiden ist nötig</translation>
    </message>
    <message>
        <source>each may occur only once</source>
        <translation>jedes darf nur einmal vorkommen</translation>
    </message>
    <message>
        <source>shares from 0 to 1 are needed</source>
        <translation>Anteile von 0 bis 1 sind nötig</translation>
    </message>
    <message>
        <source>1, 1.5, 2 or 3 is needed</source>
        <translation>1, 1,5, 2 oder 3 ist nötig</translation>
    </message>
    <message>
        <source>1, 2 or 3 is needed: the models were made for low houses</source>
        <translation>1, 2 oder 3 ist nötig: Die Modelle sind für niedrige Häuser gemacht</translation>
    </message>
    <message>
        <source>a temperature difference or a wind above 0 is needed</source>
        <translation>eine Temperaturdifferenz oder ein Wind über 0 ist nötig</translation>
    </message>
    <message>
        <source>a day such as 2026-05-04 is needed</source>
        <translation>ein Tag wie 2026-05-04 ist nötig</translation>
    </message>
    <message>
        <source>a day such as 2026-05-04 or 2026-05-04 09:12 is needed</source>
        <translation>ein Tag wie 2026-05-04 oder 2026-05-04 09:12 ist nötig</translation>
    </message>
    <message>
        <source>a date such as 2026-05-04, without quotes, is needed</source>
        <translation>ein Datum wie 2026-05-04, ohne Anführungszeichen, ist nötig</translation>
    </message>
    <message>
        <source>a date in this calendar is needed</source>
        <translation>ein Datum, das es gibt, ist nötig</translation>
    </message>
    <message>
        <source>a day after the calibration is needed</source>
        <translation>ein Tag nach der Kalibrierung ist nötig</translation>
    </message>
    <message>
        <source>a time with its zone is needed</source>
        <translation>eine Zeit mit ihrer Zone ist nötig</translation>
    </message>
    <message>
        <source>a time with its zone is needed, such as 2026-05-04T09:12:00Z</source>
        <translation>eine Zeit mit ihrer Zone ist nötig, etwa 2026-05-04T09:12:00Z</translation>
    </message>
    <message>
        <source>the day on the certificate is needed, such as 2026-05-04</source>
        <translation>der Tag auf dem Kalibrierschein ist nötig, etwa 2026-05-04</translation>
    </message>
    <message>
        <source>it cannot be read ({reason})</source>
        <translation>es kann nicht gelesen werden ({reason})</translation>
    </message>
    <message>
        <source>it cannot be written ({reason})</source>
        <translation>es kann nicht geschrieben werden ({reason})</translation>
    </message>
    <message>
        <source>it cannot be written: {reason}</source>
        <translation>es kann nicht geschrieben werden: {reason}</translation>
    </message>
    <message>
        <source>it cannot be copied ({reason})</source>
        <translation>es kann nicht kopiert werden ({reason})</translation>
    </message>
    <message>
        <source>it cannot be made ({reason})</source>
        <translation>sie kann nicht angelegt werden ({reason})</translation>
    </message>
    <message>
        <source>it cannot be opened ({reason})</source>
        <translation>sie kann nicht geöffnet werden ({reason})</translation>
    </message>
    <message>
        <source>it cannot be written: the file or its folder is read-only</source>
        <translation>sie kann nicht geschrieben werden: Datei oder Ordner sind schreibgeschützt</translation>
    </message>
    <message>
        <source>it is damaged ({reason})</source>
        <translation>sie ist beschädigt ({reason})</translation>
    </message>
    <message>
        <source>it is damaged (its tables are missing)</source>
        <translation>sie ist beschädigt (ihre Tabellen fehlen)</translation>
    </message>
    <message>
        <source>it is damaged or cut short</source>
        <translation>sie ist beschädigt oder abgeschnitten</translation>
    </message>
    <message>
        <source>it is open in another window of Airseam, close it there first</source>
        <translation>sie ist in einem anderen Fenster von Airseam offen, schließen Sie sie dort zuerst</translation>
    </message>
    <message>
        <source>it was written by a newer Airseam (file version {file}, this one knows up to {known})</source>
        <translation>sie stammt von einem neueren Airseam (Dateiversion {file}, dieses kennt bis {known})</translation>
    </message>
    <message>
        <source>it exists already, open it or choose another name</source>
        <translation>sie ist schon da, öffnen Sie sie oder wählen Sie einen anderen Namen</translation>
    </message>
    <message>
        <source>it was opened for reading only</source>
        <translation>sie wurde nur zum Lesen geöffnet</translation>
    </message>
    <message>
        <source>it is no job, or damaged ({reason})</source>
        <translation>es ist kein Auftrag, oder beschädigt ({reason})</translation>
    </message>
    <message>
        <source>a {format} that this version knows is needed ({reason})</source>
        <translation>ein {format}, das diese Version kennt, ist nötig ({reason})</translation>
    </message>
    <message>
        <source>the disk does not take it</source>
        <translation>der Datenträger nimmt ihn nicht an</translation>
    </message>
    <message>
        <source>the copy cannot be written ({reason})</source>
        <translation>die Kopie kann nicht geschrieben werden ({reason})</translation>
    </message>
    <message>
        <source>another folder than that of the job is needed</source>
        <translation>ein anderer Ordner als der des Auftrags ist nötig</translation>
    </message>
    <message>
        <source>a PNG or JPEG picture is needed</source>
        <translation>ein PNG- oder JPEG-Bild ist nötig</translation>
    </message>
    <message>
        <source>a whole PNG or JPEG picture is needed ({reason})</source>
        <translation>ein vollständiges PNG- oder JPEG-Bild ist nötig ({reason})</translation>
    </message>
    <message>
        <source>a PNG or JPEG picture of at most {size} MiB is needed</source>
        <translation>ein PNG- oder JPEG-Bild von höchstens {size} MiB ist nötig</translation>
    </message>
    <message>
        <source>&quot;{format}&quot; is needed</source>
        <translation>„{format}“ ist nötig</translation>
    </message>
    <message>
        <source>a TOML text file is needed ({reason})</source>
        <translation>eine TOML-Textdatei ist nötig ({reason})</translation>
    </message>
    <message>
        <source>a TOML text file in UTF-8 is needed</source>
        <translation>eine TOML-Textdatei in UTF-8 ist nötig</translation>
    </message>
    <message>
        <source>a TOML table is needed ({reason})</source>
        <translation>eine TOML-Tabelle ist nötig ({reason})</translation>
    </message>
    <message>
        <source>a table is needed</source>
        <translation>eine Tabelle ist nötig</translation>
    </message>
    <message>
        <source>tables [[{name}]] are needed</source>
        <translation>Tabellen [[{name}]] sind nötig</translation>
    </message>
    <message>
        <source>at least one [[{name}]] table is needed</source>
        <translation>mindestens eine Tabelle [[{name}]] ist nötig</translation>
    </message>
    <message>
        <source>the keys are: {names}</source>
        <translation>die Schlüssel sind: {names}</translation>
    </message>
    <message>
        <source>the keys here are: {names}</source>
        <translation>die Schlüssel sind hier: {names}</translation>
    </message>
    <message>
        <source>what was written does not read back alike</source>
        <translation>was geschrieben wurde, liest sich nicht gleich zurück</translation>
    </message>
    <message>
        <source>texts of whole characters are needed</source>
        <translation>Texte aus ganzen Zeichen sind nötig</translation>
    </message>
    <message>
        <source>No such file or directory</source>
        <translation>Datei oder Ordner nicht vorhanden</translation>
    </message>
    <message>
        <source>Permission denied</source>
        <translation>keine Berechtigung</translation>
    </message>
    <message>
        <source>No space left on device</source>
        <translation>kein Platz mehr auf dem Datenträger</translation>
    </message>
    <message>
        <source>Read-only file system</source>
        <translation>Dateisystem schreibgeschützt</translation>
    </message>
    <message>
        <source>Input/output error</source>
        <translation>Ein-/Ausgabefehler</translation>
    </message>
    <message>
        <source>Is a directory</source>
        <translation>ist ein Ordner</translation>
    </message>
    <message>
        <source>Not a directory</source>
        <translation>kein Ordner</translation>
    </message>
    <message>
        <source>File exists</source>
        <translation>Datei ist schon da</translation>
    </message>
    <message>
        <source>File name too long</source>
        <translation>Dateiname zu lang</translation>
    </message>
    <message>
        <source>job file</source>
        <translation>Auftragsdatei</translation>
    </message>
    <message>
        <source>issued report</source>
        <translation>ausgestellter Bericht</translation>
    </message>
    <message>
        <source>signed by</source>
        <translation>unterschrieben von</translation>
    </message>
    <message>
        <source>backup folder</source>
        <translation>Sicherungsordner</translation>
    </message>
    <message>
        <source>number pattern</source>
        <translation>Nummernmuster</translation>
    </message>
    <message>
        <source>name pattern</source>
        <translation>Namensmuster</translation>
    </message>
    <message>
        <source>opening text</source>
        <translation>Einleitungstext</translation>
    </message>
    <message>
        <source>closing text</source>
        <translation>Schlusstext</translation>
    </message>
    <message>
        <source>name of the office</source>
        <translation>Name des Büros</translation>
    </message>
    <message>
        <source>usual signer</source>
        <translation>üblicher Unterzeichner</translation>
    </message>
    <message>
        <source>next number</source>
        <translation>nächste Nummer</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>without points</source>
        <translation>ohne Punkte</translation>
    </message>
    <message>
        <source>at least one point that is not struck is needed</source>
        <translation>mindestens ein nicht gestrichener Punkt ist nötig</translation>
    </message>
    <message>
        <source>student</source>
        <translation>Teilnehmer</translation>
    </message>
    <message>
        <source>program</source>
        <translation>Programm</translation>
    </message>
    <message>
        <source>points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>result, {unit}</source>
        <translation>Ergebnis, {unit}</translation>
    </message>
    <message>
        <source>true, {unit}</source>
        <translation>wahr, {unit}</translation>
    </message>
    <message>
        <source>missed</source>
        <translation>übersehen</translation>
    </message>
    <message>
        <source>covered</source>
        <translation>verdeckt</translation>
    </message>
    <message>
        <source>{address}, this network</source>
        <translation>{address}, dieses Netz</translation>
    </message>
    <message>
        <source>{address}, this machine alone</source>
        <translation>{address}, nur dieser Rechner</translation>
    </message>
    <message>
        <source>Where the class can be reached</source>
        <translation>Wo die Klasse zu erreichen ist</translation>
    </message>
    <message>
        <source>port </source>
        <translation>Anschluss </translation>
    </message>
    <message>
        <source>houses </source>
        <translation>Häuser </translation>
    </message>
    <message>
        <source>Houses</source>
        <translation>Häuser</translation>
    </message>
    <message>
        <source>A house for each</source>
        <translation>Ein Haus für jeden</translation>
    </message>
    <message>
        <source>One house for all</source>
        <translation>Ein Haus für alle</translation>
    </message>
    <message>
        <source>Open the class</source>
        <translation>Klasse öffnen</translation>
    </message>
    <message>
        <source>Connect the program beside</source>
        <translation>Programm daneben verbinden</translation>
    </message>
    <message>
        <source>The normal window of this machine joins as a student: for the beamer</source>
        <translation>Das normale Fenster dieses Rechners nimmt als Teilnehmer teil: für den Beamer</translation>
    </message>
    <message>
        <source>Rig files…</source>
        <translation>Dateien …</translation>
    </message>
    <message>
        <source>A rig file for each house: who loads it needs no host and port</source>
        <translation>Für jedes Haus eine Messaufbau-Datei: Wer sie lädt, braucht keine Adresse und keinen Anschluss</translation>
    </message>
    <message>
        <source>Houses of the class</source>
        <translation>Häuser der Klasse</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>Mark jobs…</source>
        <translation>Bewerten …</translation>
    </message>
    <message>
        <source>Write the sheets…</source>
        <translation>Blätter schreiben …</translation>
    </message>
    <message>
        <source>Close the class</source>
        <translation>Klasse schließen</translation>
    </message>
    <message>
        <source>{points} of {most}</source>
        <translation>{points} von {most}</translation>
    </message>
    <message>
        <source>test</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>clipboard</source>
        <translation>Zwischenablage</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>direction</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>system</source>
        <translation>System</translation>
    </message>
    <message>
        <source>adjoins</source>
        <translation>grenzt an</translation>
    </message>
    <message>
        <source>months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <source>schemes</source>
        <translation>Programme</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>Korrektur</translation>
    </message>
    <message>
        <source>calibration</source>
        <translation>Kalibrierung</translation>
    </message>
    <message>
        <source>profile</source>
        <translation>Profil</translation>
    </message>
    <message>
        <source>window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>calibration date</source>
        <translation>Kalibrierdatum</translation>
    </message>
    <message>
        <source>due date</source>
        <translation>fällig am</translation>
    </message>
    <message>
        <source>day of the correction</source>
        <translation>Tag der Korrektur</translation>
    </message>
    <message>
        <source>lower end</source>
        <translation>unteres Ende</translation>
    </message>
    <message>
        <source>upper end</source>
        <translation>oberes Ende</translation>
    </message>
    <message>
        <source>air density</source>
        <translation>Luftdichte</translation>
    </message>
    <message>
        <source>line {line}, {what}</source>
        <translation>Zeile {line}, {what}</translation>
    </message>
    <message>
        <source>line {line}</source>
        <translation>Zeile {line}</translation>
    </message>
    <message>
        <source>area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>Volumenstrom</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>first gauge</source>
        <translation>erstes Messgerät</translation>
    </message>
    <message>
        <source>second gauge</source>
        <translation>zweites Messgerät</translation>
    </message>
    <message>
        <source>readings of the {gauge}</source>
        <translation>Messwerte: {gauge}</translation>
    </message>
    <message>
        <source>typed gauge</source>
        <translation>eingegebenes Messgerät</translation>
    </message>
    <message>
        <source>phone page</source>
        <translation>Telefonseite</translation>
    </message>
    <message>
        <source>zone pressure after</source>
        <translation>Zonendruck danach</translation>
    </message>
    <message>
        <source>flow before</source>
        <translation>Volumenstrom vorher</translation>
    </message>
    <message>
        <source>flow after</source>
        <translation>Volumenstrom nachher</translation>
    </message>
    <message>
        <source>zone_pa</source>
        <translation>Zonendruck</translation>
    </message>
    <message>
        <source>house_pa</source>
        <translation>Hausdruck</translation>
    </message>
    <message>
        <source>garage_pa with the door open</source>
        <translation>Garagendruck bei offener Tür</translation>
    </message>
    <message>
        <source>Port of {name}</source>
        <translation>Anschluss von {name}</translation>
    </message>
    <message>
        <source>Flow range</source>
        <translation>Messbereich</translation>
    </message>
    <message>
        <source>flow range {name}</source>
        <translation>Messbereich {name}</translation>
    </message>
    <message>
        <source>{field} of “{name}”</source>
        <translation>{field} von „{name}“</translation>
    </message>
    <message>
        <source>the file {path}</source>
        <translation>die Datei {path}</translation>
    </message>
    <message>
        <source>not an Airseam job</source>
        <translation>kein Auftrag von Airseam</translation>
    </message>
    <message>
        <source>a database of another program, not an Airseam job</source>
        <translation>eine Datenbank eines anderen Programms, kein Auftrag von Airseam</translation>
    </message>
    <message>
        <source>choose one that Airseam saved, its name ends in .airseam</source>
        <translation>Wählen Sie eine, die Airseam gespeichert hat, ihr Name endet auf .airseam</translation>
    </message>
    <message>
        <source>zone pressure with the hole</source>
        <translation>Zonendruck mit dem Loch</translation>
    </message>
    <message>
        <source>say which one, such as garage or attic</source>
        <translation>angeben, welche, etwa Garage oder Dachboden</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>change of the fan flow</source>
        <translation>Änderung des Gebläse-Volumenstroms</translation>
    </message>
    <message>
        <source>Upper end</source>
        <translation>Oberes Ende</translation>
    </message>
    <message>
        <source>check of the hoses</source>
        <translation>Prüfung der Schläuche</translation>
    </message>
    <message>
        <source>the name of who signs is needed</source>
        <translation>der Name dessen, der unterschreibt, ist nötig</translation>
    </message>
    <message>
        <source>say why it is issued again</source>
        <translation>sagen Sie, warum er erneut ausgestellt wird</translation>
    </message>
    <message>
        <source>a test that was made to find leaks has none</source>
        <translation>eine Messung zur Leckagesuche hat keine</translation>
    </message>
    <message>
        <source>another report of this job has it: choose another one</source>
        <translation>ein anderer Bericht dieses Auftrags hat sie: wählen Sie eine andere</translation>
    </message>
    <message>
        <source>it is still being recorded</source>
        <translation>sie wird noch aufgezeichnet</translation>
    </message>
    <message>
        <source>the number of a test is needed, there are: {names}</source>
        <translation>die Nummer einer Messung ist nötig, es gibt: {names}</translation>
    </message>
    <message>
        <source>the number of a window is needed, there are: {names}</source>
        <translation>die Nummer eines Zeitfensters ist nötig, es gibt: {names}</translation>
    </message>
    <message>
        <source>the number of a leak is needed, there are: {names}</source>
        <translation>die Nummer einer Leckage ist nötig, es gibt: {names}</translation>
    </message>
    <message>
        <source>its number in the job is needed, there are: {names}</source>
        <translation>seine Nummer im Auftrag ist nötig, es gibt: {names}</translation>
    </message>
    <message>
        <source>an id of the register is needed; there are: {names}</source>
        <translation>eine Kennung aus dem Verzeichnis ist nötig; es gibt: {names}</translation>
    </message>
    <message>
        <source>its file is not the one that was issued</source>
        <translation>seine Datei ist nicht die ausgestellte</translation>
    </message>
    <message>
        <source>revision {number} is the next one of this report</source>
        <translation>Revision {number} ist die nächste dieses Berichts</translation>
    </message>
    <message>
        <source>say why the geometry is kept or was changed</source>
        <translation>sagen Sie, warum die Geometrie gesichert wird oder geändert wurde</translation>
    </message>
    <message>
        <source>there is none of this number</source>
        <translation>unter dieser Nummer gibt es keines</translation>
    </message>
    <message>
        <source>there is nothing new to keep</source>
        <translation>es gibt nichts Neues zu sichern</translation>
    </message>
    <message>
        <source>a test that was cut short is needed (state of this one: {state})</source>
        <translation>eine abgebrochene Messung ist nötig (Zustand dieser: {state})</translation>
    </message>
    <message>
        <source>say why the point is struck</source>
        <translation>sagen Sie, warum der Punkt gestrichen wird</translation>
    </message>
    <message>
        <source>it is being recorded, strike there</source>
        <translation>er wird gerade aufgezeichnet, streichen Sie dort</translation>
    </message>
    <message>
        <source>say what changed on site since the test before</source>
        <translation>sagen Sie, was sich auf der Baustelle seit der vorigen Messung geändert hat</translation>
    </message>
    <message>
        <source>there is no test in it yet</source>
        <translation>es ist noch keine Messung darin</translation>
    </message>
    <message>
        <source>a test has at most {count} bytes</source>
        <translation>eine Messung hat höchstens {count} Byte</translation>
    </message>
    <message>
        <source>say which fans are on and which doors are open</source>
        <translation>sagen Sie, welche Lüfter laufen und welche Türen offen sind</translation>
    </message>
    <message>
        <source>one of {names}, each of its kind, is needed</source>
        <translation>eines von {names}, jedes in seiner Art, ist nötig</translation>
    </message>
    <message>
        <source>one test at a time</source>
        <translation>eine Messung auf einmal</translation>
    </message>
    <message>
        <source>a pressure is held where the program reads the gauges</source>
        <translation>ein Druck wird gehalten, wo das Programm die Messgeräte liest</translation>
    </message>
    <message>
        <source>a {role} needs at least one usable reading</source>
        <translation>{role} braucht mindestens einen brauchbaren Messwert</translation>
    </message>
    <message>
        <source>a line needs pressures that differ more</source>
        <translation>eine Gerade braucht Drücke, die sich mehr unterscheiden</translation>
    </message>
    <message>
        <source>with the zero-flow pressure taken off, pressures {side} 0 Pa are needed, and no point has one</source>
        <translation>nach Abzug der natürlichen Druckdifferenz sind Drücke {side} 0 Pa nötig, und kein Punkt hat einen</translation>
    </message>
    <message>
        <source>below</source>
        <translation>unter</translation>
    </message>
    <message>
        <source>above</source>
        <translation>über</translation>
    </message>
    <message>
        <source>at least {count} {what} needed</source>
        <translation>mindestens {count} {what} nötig</translation>
    </message>
    <message>
        <source>the fit {name} needs a zero-flow record</source>
        <translation>die Ausgleichung {name} braucht eine Nullmessung</translation>
    </message>
    <message>
        <source>the fit {name} weighs points by the spread of their readings</source>
        <translation>die Ausgleichung {name} gewichtet Punkte nach der Streuung ihrer Messwerte</translation>
    </message>
    <message>
        <source>two regimes need at least {count} points</source>
        <translation>zwei Zustände brauchen mindestens {count} Punkte</translation>
    </message>
    <message>
        <source>different pressures are needed before or after the change</source>
        <translation>vor oder nach der Änderung sind verschiedene Drücke nötig</translation>
    </message>
    <message>
        <source>pressures and flows above 0 are needed</source>
        <translation>Drücke und Volumenströme über 0 sind nötig</translation>
    </message>
    <message>
        <source>two stations are needed, at pressures that differ by a factor of {factor} at least</source>
        <translation>zwei Druckstufen sind nötig, deren Drücke sich mindestens um den Faktor {factor} unterscheiden</translation>
    </message>
    <message>
        <source>one run, or one in each direction, is needed</source>
        <translation>ein Lauf, oder einer in jeder Richtung, ist nötig</translation>
    </message>
    <message>
        <source>only one run in each direction is allowed</source>
        <translation>nur ein Lauf je Richtung ist erlaubt</translation>
    </message>
    <message>
        <source>one for each of the {count} points is needed</source>
        <translation>einer für jeden der {count} Punkte ist nötig</translation>
    </message>
    <message>
        <source>at least one reading is needed</source>
        <translation>mindestens ein Messwert ist nötig</translation>
    </message>
    <message>
        <source>a mean between those of the negative and the positive readings, {low} and {high}, is needed</source>
        <translation>ein Mittel zwischen dem der negativen und dem der positiven Messwerte, {low} und {high}, ist nötig</translation>
    </message>
    <message>
        <source>a test with a leakage line is needed to compare it</source>
        <translation>zum Vergleichen ist eine Messung mit Leckagegerade nötig</translation>
    </message>
    <message>
        <source>a part of both tests is needed (there are: {names})</source>
        <translation>ein Teil beider Messungen ist nötig (es gibt: {names})</translation>
    </message>
    <message>
        <source>a value above 0 with an interval is needed</source>
        <translation>ein Wert über 0 mit Intervall ist nötig</translation>
    </message>
    <message>
        <source>a window closes only inside a run</source>
        <translation>ein Zeitfenster schließt nur in einem Lauf</translation>
    </message>
    <message>
        <source>this temperature is needed, and the rig does not measure it</source>
        <translation>diese Temperatur ist nötig, und der Messaufbau misst sie nicht</translation>
    </message>
    <message>
        <source>it is complete: there is nothing to go on with</source>
        <translation>sie ist vollständig: es gibt nichts fortzusetzen</translation>
    </message>
    <message>
        <source>a pressure was held: hold it again instead</source>
        <translation>es wurde ein Druck gehalten: halten Sie ihn stattdessen erneut</translation>
    </message>
    <message>
        <source>nothing had been read yet: start the test instead</source>
        <translation>es war noch nichts gemessen: beginnen Sie stattdessen die Messung</translation>
    </message>
    <message>
        <source>the test was begun with other {what}: connect those, or start a new test</source>
        <translation>die Messung wurde mit anderen Dingen begonnen ({what}): verbinden Sie diese, oder beginnen Sie eine neue Messung</translation>
    </message>
    <message>
        <source>flow ranges</source>
        <translation>Messbereiche</translation>
    </message>
    <message>
        <source>instruments</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>fans</source>
        <translation>Gebläse</translation>
    </message>
    <message>
        <source>shutter</source>
        <translation>Verschluss</translation>
    </message>
    <message>
        <source>corrections of gauges</source>
        <translation>Korrekturen der Messgeräte</translation>
    </message>
    <message>
        <source>its newest test has to be one that was cut short: there is nothing to go on with</source>
        <translation>seine neueste Messung muss eine abgebrochene sein: es gibt nichts fortzusetzen</translation>
    </message>
    <message>
        <source>the safety answers now allow to pressurize only; the rest of this test depressurizes</source>
        <translation>die Sicherheitsantworten erlauben jetzt nur Überdruck; der Rest dieser Messung ist Unterdruck</translation>
    </message>
    <message>
        <source>a test with readings is needed</source>
        <translation>eine Messung mit Messwerten ist nötig</translation>
    </message>
    <message>
        <source>a test that has ended, with readings, is needed</source>
        <translation>eine beendete Messung mit Messwerten ist nötig</translation>
    </message>
    <message>
        <source>its runs were recorded on different clocks: play one of its own</source>
        <translation>ihre Läufe wurden nach verschiedenen Uhren aufgezeichnet: spielen Sie einen allein ab</translation>
    </message>
    <message>
        <source>a test with an n50 is needed: give the volume</source>
        <translation>eine Messung mit n50 ist nötig: geben Sie das Volumen an</translation>
    </message>
    <message>
        <source>a report of no test needs an answer that forbids it</source>
        <translation>ein Bericht ohne Messung braucht eine Antwort, die sie verbietet</translation>
    </message>
    <message>
        <source>there is nothing to hand out</source>
        <translation>es gibt nichts auszuhändigen</translation>
    </message>
    <message>
        <source>nothing was marked as sealed on it</source>
        <translation>an diesem Tag wurde nichts als abgedichtet markiert</translation>
    </message>
    <message>
        <source>mark it as done first</source>
        <translation>markieren Sie sie zuerst als fertig</translation>
    </message>
    <message>
        <source>mark first that the sealing starts</source>
        <translation>markieren Sie zuerst, dass das Abdichten beginnt</translation>
    </message>
    <message>
        <source>{low} to {high} Pa can be held</source>
        <translation>{low} bis {high} Pa können gehalten werden</translation>
    </message>
    <message>
        <source>the expected air change needs it</source>
        <translation>der erwartete Luftwechsel braucht es</translation>
    </message>
    <message>
        <source>paste or type the points of one direction at least</source>
        <translation>fügen Sie die Punkte mindestens einer Richtung ein, oder tippen Sie sie</translation>
    </message>
    <message>
        <source>at least one direction with points is needed</source>
        <translation>mindestens eine Richtung mit Punkten ist nötig</translation>
    </message>
    <message>
        <source>lines are needed: {columns}</source>
        <translation>Zeilen sind nötig: {columns}</translation>
    </message>
    <message>
        <source>lines with tabs between are needed: {columns}</source>
        <translation>Zeilen mit Tabulatoren dazwischen sind nötig: {columns}</translation>
    </message>
    <message>
        <source>the columns are {columns}</source>
        <translation>die Spalten sind {columns}</translation>
    </message>
    <message>
        <source>pressure in Pa, flow</source>
        <translation>Druck in Pa, Volumenstrom</translation>
    </message>
    <message>
        <source>name, floor area, height, volume</source>
        <translation>Name, Grundfläche, Höhe, Volumen</translation>
    </message>
    <message>
        <source>name, area, adjoins</source>
        <translation>Name, Fläche, grenzt an</translation>
    </message>
    <message>
        <source>two numbers are needed: {columns}</source>
        <translation>zwei Zahlen sind nötig: {columns}</translation>
    </message>
    <message>
        <source>more than 0 is needed</source>
        <translation>mehr als 0 ist nötig</translation>
    </message>
    <message>
        <source>more than {low} Pa is needed</source>
        <translation>mehr als {low} Pa ist nötig</translation>
    </message>
    <message>
        <source>more than 0 and at most {high} Pa is allowed</source>
        <translation>mehr als 0 und höchstens {high} Pa sind erlaubt</translation>
    </message>
    <message>
        <source>more than 0 and at most {high} s is allowed</source>
        <translation>mehr als 0 und höchstens {high} s sind erlaubt</translation>
    </message>
    <message>
        <source>a test with pressurizing has no negative pressures</source>
        <translation>eine Messung mit Überdruck hat keine negativen Drücke</translation>
    </message>
    <message>
        <source>a flow above 0 is needed</source>
        <translation>ein Volumenstrom über 0 ist nötig</translation>
    </message>
    <message>
        <source>each from {low} to {high} Pa; the fan is stopped at 80 Pa</source>
        <translation>jeder von {low} bis {high} Pa; das Gebläse wird bei 80 Pa angehalten</translation>
    </message>
    <message>
        <source>{fewest} to {most} pressures with spaces between are needed</source>
        <translation>{fewest} bis {most} Drücke mit Leerzeichen dazwischen sind nötig</translation>
    </message>
    <message>
        <source>“{checked}”, or why it is left out, is needed</source>
        <translation>„{checked}“, oder warum sie entfällt, ist nötig</translation>
    </message>
    <message>
        <source>the pressure of the zone with the hole is needed</source>
        <translation>der Druck der Zone mit dem Loch ist nötig</translation>
    </message>
    <message>
        <source>the fan flow before and after is needed, at the same house pressure</source>
        <translation>der Gebläsestrom vorher und nachher ist nötig, beim selben Hausdruck</translation>
    </message>
    <message>
        <source>a pressure between 0 and that of the house, {high} Pa, is needed</source>
        <translation>ein Druck zwischen 0 und dem des Hauses, {high} Pa, ist nötig</translation>
    </message>
    <message>
        <source>a pressure below that of the house, {high} Pa, is needed</source>
        <translation>ein Druck unter dem des Hauses, {high} Pa, ist nötig</translation>
    </message>
    <message>
        <source>a pressure from 0 to below that with the door closed, {high} Pa, is needed</source>
        <translation>ein Druck von 0 bis unter den bei geschlossener Tür, {high} Pa, ist nötig</translation>
    </message>
    <message>
        <source>with the guard at most the flow without it, {flow}, is possible</source>
        <translation>mit Schutzdruck ist höchstens der Volumenstrom ohne ihn, {flow}, möglich</translation>
    </message>
    <message>
        <source>the port of the instrument is needed</source>
        <translation>der Anschluss des Geräts ist nötig</translation>
    </message>
    <message>
        <source>the calibration of the fitted range is needed</source>
        <translation>die Kalibrierung des eingesetzten Bereichs ist nötig</translation>
    </message>
    <message>
        <source>a number from the calibration sheet is needed</source>
        <translation>eine Zahl vom Kalibrierblatt ist nötig</translation>
    </message>
    <message>
        <source>the channels of profile {profile} are: {names}</source>
        <translation>die Kanäle des Profils {profile} sind: {names}</translation>
    </message>
    <message>
        <source>channels of {name}</source>
        <translation>Kanäle von {name}</translation>
    </message>
    <message>
        <source>profile of {name}</source>
        <translation>Profil von {name}</translation>
    </message>
    <message>
        <source>the name of a fan drive is needed; that instrument is a gauge</source>
        <translation>der Name eines Gebläseantriebs ist nötig; dieses Gerät ist ein Messgerät</translation>
    </message>
    <message>
        <source>instrument {name} is a fan drive: name it here</source>
        <translation>Gerät {name} ist ein Gebläseantrieb: nennen Sie ihn hier</translation>
    </message>
    <message>
        <source>one of this rig&apos;s is needed: {names}</source>
        <translation>einer dieses Messaufbaus ist nötig: {names}</translation>
    </message>
    <message>
        <source>there are none</source>
        <translation>es gibt keine</translation>
    </message>
    <message>
        <source>a zone of {rig} is needed: {names}</source>
        <translation>eine Zone von {rig} ist nötig: {names}</translation>
    </message>
    <message>
        <source>one channel needs &quot;{role}&quot;</source>
        <translation>ein Kanal braucht „{role}“</translation>
    </message>
    <message>
        <source>one channel needs &quot;{role}&quot; or &quot;{other}&quot;</source>
        <translation>ein Kanal braucht „{role}“ oder „{other}“</translation>
    </message>
    <message>
        <source>a drive needs gauges that the program reads itself; without it a person turns the fan</source>
        <translation>ein Antrieb braucht Messgeräte, die das Programm selbst liest; ohne ihn dreht eine Person am Gebläse</translation>
    </message>
    <message>
        <source>where the envelope pressure is typed, the flow has to be typed too</source>
        <translation>wo die Druckdifferenz eingegeben wird, muss es auch der Volumenstrom sein</translation>
    </message>
    <message>
        <source>of a gauge that is typed only one can be used</source>
        <translation>von eingegebenen Messgeräten kann nur eines benutzt werden</translation>
    </message>
    <message>
        <source>only a simulated rig may run faster than real time</source>
        <translation>nur ein simulierter Messaufbau darf schneller als die Zeit laufen</translation>
    </message>
    <message>
        <source>at most {count} fans blow together</source>
        <translation>höchstens {count} Gebläse blasen zusammen</translation>
    </message>
    <message>
        <source>a list of names of fan drives is needed</source>
        <translation>eine Liste von Namen von Gebläseantrieben ist nötig</translation>
    </message>
    <message>
        <source>beside fans it can only be the first of them, {name}</source>
        <translation>neben Gebläsen kann es nur das erste davon sein, {name}</translation>
    </message>
    <message>
        <source>a table of fan = flow range is needed</source>
        <translation>eine Tabelle Gebläse = Messbereich ist nötig</translation>
    </message>
    <message>
        <source>a table of zone = name is needed, with {names}</source>
        <translation>eine Tabelle Zone = Name ist nötig, mit {names}</translation>
    </message>
    <message>
        <source>a table of channel = role is needed</source>
        <translation>eine Tabelle Kanal = Aufgabe ist nötig</translation>
    </message>
    <message>
        <source>a rig file has at most {count} bytes</source>
        <translation>eine Messaufbau-Datei hat höchstens {count} Byte</translation>
    </message>
    <message>
        <source>the name of a flow range is needed; there are: {names}</source>
        <translation>der Name eines Messbereichs ist nötig; es gibt: {names}</translation>
    </message>
    <message>
        <source>the name of an instrument is needed; there are: {names}</source>
        <translation>der Name eines Geräts ist nötig; es gibt: {names}</translation>
    </message>
    <message>
        <source>the fans beyond the first are: {names}</source>
        <translation>die Gebläse nach dem ersten sind: {names}</translation>
    </message>
    <message>
        <source>the zones are: {names}</source>
        <translation>die Zonen sind: {names}</translation>
    </message>
    <message>
        <source>a role is needed, one of: {names}</source>
        <translation>eine Aufgabe ist nötig, eine von: {names}</translation>
    </message>
    <message>
        <source>role is {role}: its readings are not typed</source>
        <translation>Aufgabe ist {role}: ihre Messwerte werden nicht eingegeben</translation>
    </message>
    <message>
        <source>a table that holds for both signs gives 0 at 0; for an offset give negative pressures too</source>
        <translation>eine Tabelle, die für beide Vorzeichen gilt, gibt 0 bei 0; für einen Versatz geben Sie auch negative Drücke an</translation>
    </message>
    <message>
        <source>at least two points are needed</source>
        <translation>mindestens zwei Punkte sind nötig</translation>
    </message>
    <message>
        <source>at {shown} Pa a true pressure within {most} Pa of it is needed</source>
        <translation>bei {shown} Pa ist ein wahrer Druck nötig, der höchstens {most} Pa davon abweicht</translation>
    </message>
    <message>
        <source>shown and true pressures that both rise are needed</source>
        <translation>angezeigte und wahre Drücke, die beide steigen, sind nötig</translation>
    </message>
    <message>
        <source>pressures and flows above 0 that both rise</source>
        <translation>Drücke und Volumenströme über 0, die beide steigen</translation>
    </message>
    <message>
        <source>a range within the table, {low} to {high} Pa, is needed</source>
        <translation>ein Bereich innerhalb der Tabelle, {low} bis {high} Pa, ist nötig</translation>
    </message>
    <message>
        <source>the flow has to rise from {low} to {high} Pa, above 0</source>
        <translation>der Volumenstrom muss von {low} bis {high} Pa steigen, über 0</translation>
    </message>
    <message>
        <source>one for all channels, or one for each, is needed</source>
        <translation>eine für alle Kanäle, oder eine für jeden, ist nötig</translation>
    </message>
    <message>
        <source>a coefficient above 0 and an exponent of 0 to 1</source>
        <translation>ein Koeffizient über 0 und ein Exponent von 0 bis 1</translation>
    </message>
    <message>
        <source>coefficient; exponent of 0 to 1, such as 183; 0.5</source>
        <translation>Koeffizient; Exponent von 0 bis 1, etwa 183; 0,5</translation>
    </message>
    <message>
        <source>pairs are needed, such as 10 580; 20 820</source>
        <translation>Paare sind nötig, etwa 10 580; 20 820</translation>
    </message>
    <message>
        <source>numbers are needed: {what}</source>
        <translation>Zahlen sind nötig: {what}</translation>
    </message>
    <message>
        <source>a name and its months are needed, such as North 24; South 60</source>
        <translation>ein Name und seine Monate sind nötig, etwa North 24; South 60</translation>
    </message>
    <message>
        <source>a pair {pair} is needed</source>
        <translation>ein Paar {pair} ist nötig</translation>
    </message>
    <message>
        <source>a table of scheme = months is needed</source>
        <translation>eine Tabelle Programm = Monate ist nötig</translation>
    </message>
    <message>
        <source>a list of [Pa, Pa, allowed Pa] is needed</source>
        <translation>eine Liste von [Pa, Pa, erlaubte Pa] ist nötig</translation>
    </message>
    <message>
        <source>three numbers [Pa, Pa, allowed Pa] are needed</source>
        <translation>drei Zahlen [Pa, Pa, erlaubte Pa] sind nötig</translation>
    </message>
    <message>
        <source>another gauge than the first is needed</source>
        <translation>ein anderes Messgerät als das erste ist nötig</translation>
    </message>
    <message>
        <source>{count} pressures or more are needed, one of them near zero</source>
        <translation>{count} Drücke oder mehr sind nötig, einer davon nahe null</translation>
    </message>
    <message>
        <source>{count} numbers or more are needed</source>
        <translation>{count} Zahlen oder mehr sind nötig</translation>
    </message>
    <message>
        <source>your name is needed, with 1 to {count} characters</source>
        <translation>Ihr Name ist nötig, mit 1 bis {count} Zeichen</translation>
    </message>
    <message>
        <source>no class answers there; ask the trainer for host and port</source>
        <translation>dort antwortet keine Klasse; fragen Sie die Lehrkraft nach Adresse und Anschluss</translation>
    </message>
    <message>
        <source>host and port are needed, such as 192.168.1.20:4000</source>
        <translation>Adresse und Anschluss sind nötig, etwa 192.168.1.20:4000</translation>
    </message>
    <message>
        <source>a port from 1 to {most} is needed behind the host</source>
        <translation>hinter der Adresse ist ein Anschluss von 1 bis {most} nötig</translation>
    </message>
    <message>
        <source>nobody answers there ({reason})</source>
        <translation>dort antwortet niemand ({reason})</translation>
    </message>
    <message>
        <source>a private address of this machine is needed</source>
        <translation>eine private Adresse dieses Rechners ist nötig</translation>
    </message>
    <message>
        <source>this address cannot be listened at ({reason})</source>
        <translation>an dieser Adresse kann nicht zugehört werden ({reason})</translation>
    </message>
    <message>
        <source>at least one of each is needed</source>
        <translation>mindestens eines von jedem ist nötig</translation>
    </message>
    <message>
        <source>point at one number of the line at least</source>
        <translation>zeigen Sie auf mindestens eine Zahl der Zeile</translation>
    </message>
    <message>
        <source>point at one register at least</source>
        <translation>zeigen Sie auf mindestens ein Register</translation>
    </message>
    <message>
        <source>there is no number at place {place} of the line</source>
        <translation>an Stelle {place} der Zeile steht keine Zahl</translation>
    </message>
    <message>
        <source>the number {place} is {name} already</source>
        <translation>die Zahl {place} ist schon {name}</translation>
    </message>
    <message>
        <source>letters, digits and _ are needed, not {text}</source>
        <translation>Buchstaben, Ziffern und _ sind nötig, nicht {text}</translation>
    </message>
    <message>
        <source>letters, digits, - and _ are needed, not {text}</source>
        <translation>Buchstaben, Ziffern, - und _ sind nötig, nicht {text}</translation>
    </message>
    <message>
        <source>a profile of this id is there already: choose another id</source>
        <translation>ein Profil dieser Kennung gibt es schon: wählen Sie eine andere</translation>
    </message>
    <message>
        <source>all numbers of two registers have to be in one order</source>
        <translation>alle Zahlen aus zwei Registern müssen dieselbe Reihenfolge haben</translation>
    </message>
    <message>
        <source>all registers have to be input or all holding registers</source>
        <translation>alle Register müssen Eingangs- oder alle Halteregister sein</translation>
    </message>
    <message>
        <source>at most {most} registers are read at once, not {count}</source>
        <translation>höchstens {most} Register werden auf einmal gelesen, nicht {count}</translation>
    </message>
    <message>
        <source>flow range</source>
        <translation>Messbereich</translation>
    </message>
    <message>
        <source>fitted range</source>
        <translation>eingesetzter Bereich</translation>
    </message>
    <message>
        <source>range fitted on {drive}</source>
        <translation>eingesetzter Bereich an {drive}</translation>
    </message>
    <message>
        <source>zone name</source>
        <translation>Name einer Zone</translation>
    </message>
    <message>
        <source>Indoors against {name}</source>
        <translation>Innen gegen {name}</translation>
    </message>
    <message>
        <source>In</source>
        <translation>Zählt</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Floor area</source>
        <translation>Grundfläche</translation>
    </message>
    <message>
        <source>Mean height</source>
        <translation>Mittlere Höhe</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>Adjoins</source>
        <translation>Grenzt an</translation>
    </message>
    <message>
        <source>Why it is out</source>
        <translation>Warum ausgenommen</translation>
    </message>
    <message>
        <source>Room {number}</source>
        <translation>Raum {number}</translation>
    </message>
    <message>
        <source>Surface {number}</source>
        <translation>Fläche {number}</translation>
    </message>
    <message>
        <source>a new room</source>
        <translation>ein neuer Raum</translation>
    </message>
    <message>
        <source>a new surface</source>
        <translation>eine neue Fläche</translation>
    </message>
    <message>
        <source>{name} taken away</source>
        <translation>{name} weggenommen</translation>
    </message>
    <message>
        <source>Nothing was pasted: {error}.</source>
        <translation>Nichts wurde eingefügt: {error}.</translation>
    </message>
    <message>
        <source>{count} pasted rows</source>
        <translation>{count} eingefügte Zeilen</translation>
    </message>
    <message>
        <source>how it was measured</source>
        <translation>wie gemessen wurde</translation>
    </message>
    <message>
        <source>And {more} more.</source>
        <translation>Und {more} weitere.</translation>
    </message>
    <message>
        <source>{field} of {name}</source>
        <translation>{field} von {name}</translation>
    </message>
    <message>
        <source>Envelope area</source>
        <translation>Hüllfläche</translation>
    </message>
    <message>
        <source>to {kind}</source>
        <translation>gegen {kind}</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Ausgenommen</translation>
    </message>
    <message>
        <source>The job sheet has another {name} ({shown}), and that one counts.</source>
        <translation>Im Auftragsblatt steht ein anderer Wert ({shown}) für: {name}; dieser zählt.</translation>
    </message>
    <message>
        <source>Serial line (RTU)</source>
        <translation>Serielle Leitung (RTU)</translation>
    </message>
    <message>
        <source>Network (TCP)</source>
        <translation>Netz (TCP)</translation>
    </message>
    <message>
        <source>Choose the port, the unit&apos;s number and the settings on its plate, and read its registers.</source>
        <translation>Wählen Sie den Anschluss, die Nummer der Einheit und die Einstellungen auf ihrem Schild, und lesen Sie ihre Register.</translation>
    </message>
    <message>
        <source>Type what its display shows now, and choose the reading that fits.</source>
        <translation>Geben Sie ein, was die Anzeige jetzt zeigt, und wählen Sie den passenden Wert.</translation>
    </message>
    <message>
        <source>Choose the reading that fits its display.</source>
        <translation>Wählen Sie den Wert, der zur Anzeige passt.</translation>
    </message>
    <message>
        <source>My Modbus gauge</source>
        <translation>Mein Modbus-Gerät</translation>
    </message>
    <message>
        <source>The port of the instrument is needed.</source>
        <translation>Der Anschluss des Geräts fehlt.</translation>
    </message>
    <message>
        <source>{share} is read. {sentence}</source>
        <translation>{share} sind gelesen. {sentence}</translation>
    </message>
    <message>
        <source>No register reads {shown} in any usual way. Look at the display again, or read the registers anew.</source>
        <translation>Kein Register ergibt {shown} auf eine übliche Weise. Sehen Sie noch einmal auf die Anzeige, oder lesen Sie die Register neu.</translation>
    </message>
    <message>
        <source>A whole number of {low} to {high} is needed.</source>
        <translation>Eine ganze Zahl von {low} bis {high} ist nötig.</translation>
    </message>
    <message>
        <source>, low word first</source>
        <translation>, niedriges Wort zuerst</translation>
    </message>
    <message>
        <source>{value}   {space} register {register}, {words}{order}{scale}</source>
        <translation>{value}   {space}-Register {register}, {words}{order}{scale}</translation>
    </message>
    <message>
        <source>Office, as it stands on reports</source>
        <translation>Büro, wie es auf Berichten steht</translation>
    </message>
    <message>
        <source>Numbers and names</source>
        <translation>Nummern und Namen</translation>
    </message>
    <message>
        <source>Folders</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Wind speed</source>
        <translation>Windgeschwindigkeit</translation>
    </message>
    <message>
        <source>Leakage area</source>
        <translation>Leckagefläche</translation>
    </message>
    <message>
        <source>Flow per area</source>
        <translation>Volumenstrom je Fläche</translation>
    </message>
    <message>
        <source>Leakage coefficient</source>
        <translation>Leckagekoeffizient</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Sunlight</source>
        <translation>Sonne</translation>
    </message>
    <message>
        <source>As the language</source>
        <translation>Wie die Sprache</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>Comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>The next certificate is {number}. Names: {{year}} {{month}} {{day}} {{count}} {{job}}.</source>
        <translation>Das nächste Zertifikat ist {number}. Namen: {{year}} {{month}} {{day}} {{count}} {{job}}.</translation>
    </message>
    <message>
        <source>Such as {example}.pdf. Names: {names}.</source>
        <translation>Etwa {example}.pdf. Namen: {names}.</translation>
    </message>
    <message>
        <source>PNG or JPEG; a copy is kept with the settings.</source>
        <translation>PNG oder JPEG; eine Kopie liegt bei den Einstellungen.</translation>
    </message>
    <message>
        <source>Stands in front of the certificate.</source>
        <translation>Steht vorn auf dem Zertifikat.</translation>
    </message>
    <message>
        <source>Stands at the foot of the certificate.</source>
        <translation>Steht am Fuß des Zertifikats.</translation>
    </message>
    <message>
        <source>Where “Find a job” looks. Empty: beside the open job.</source>
        <translation>Wo „Auftrag suchen“ sucht. Leer: neben dem offenen Auftrag.</translation>
    </message>
    <message>
        <source>Every job is copied here when it is closed. Empty: no copies.</source>
        <translation>Jeder Auftrag wird beim Schließen hierher kopiert. Leer: keine Kopien.</translation>
    </message>
    <message>
        <source>Counts from the next start.</source>
        <translation>Gilt ab dem nächsten Start.</translation>
    </message>
    <message>
        <source>Counts from the next start. Reports have a language of their own.</source>
        <translation>Gilt ab dem nächsten Start. Berichte haben ihre eigene Sprache.</translation>
    </message>
    <message>
        <source>Name of the office</source>
        <translation>Name des Büros</translation>
    </message>
    <message>
        <source>Usual signer</source>
        <translation>Wer meist unterschreibt</translation>
    </message>
    <message>
        <source>Address, at most five lines</source>
        <translation>Anschrift, höchstens fünf Zeilen</translation>
    </message>
    <message>
        <source>Logo</source>
        <translation>Logo</translation>
    </message>
    <message>
        <source>Opening text</source>
        <translation>Einleitung</translation>
    </message>
    <message>
        <source>Closing text</source>
        <translation>Schlusstext</translation>
    </message>
    <message>
        <source>Pattern of certificate numbers</source>
        <translation>Muster der Zertifikatnummern</translation>
    </message>
    <message>
        <source>Next count</source>
        <translation>Nächste Nummer</translation>
    </message>
    <message>
        <source>Pattern of file names</source>
        <translation>Muster der Dateinamen</translation>
    </message>
    <message>
        <source>Folder of jobs</source>
        <translation>Ordner der Aufträge</translation>
    </message>
    <message>
        <source>Backup folder</source>
        <translation>Sicherungsordner</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Darstellung</translation>
    </message>
    <message>
        <source>Language of the window</source>
        <translation>Sprache des Fensters</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>Size of everything</source>
        <translation>Größe von allem</translation>
    </message>
    <message>
        <source>Local codes and licensed practice decide who may test and how; this list does not replace them.</source>
        <translation>Örtliche Vorschriften und Fachbetriebe bestimmen, wer wie messen darf; diese Liste ersetzt sie nicht.</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Dran</translation>
    </message>
    <message>
        <source>Taken off</source>
        <translation>Abgenommen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>As the method wants it: {rule}. {left}</source>
        <translation>Wie das Verfahren es verlangt: {rule}. {left}</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Not present</source>
        <translation>Entfällt</translation>
    </message>
    <message>
        <source>No: do not test.</source>
        <translation>Nein: nicht messen.</translation>
    </message>
    <message>
        <source>No: pressurize only.</source>
        <translation>Nein: nur Überdruck.</translation>
    </message>
    <message>
        <source>No: at most {cap} Pa.</source>
        <translation>Nein: höchstens {cap} Pa.</translation>
    </message>
    <message>
        <source> Answered {time}.</source>
        <translation> Beantwortet {time}.</translation>
    </message>
    <message>
        <source>Wanted: {wanted}.</source>
        <translation>Verlangt: {wanted}.</translation>
    </message>
    <message>
        <source>Everything is as wanted.</source>
        <translation>Alles ist wie verlangt.</translation>
    </message>
    <message>
        <source>{left} of {count} to look at.</source>
        <translation>{left} von {count} noch anzusehen.</translation>
    </message>
    <message>
        <source>Nothing was touched yet.</source>
        <translation>Noch wurde nichts angerührt.</translation>
    </message>
    <message>
        <source>{count} still to be put back.</source>
        <translation>{count} noch zurückzustellen.</translation>
    </message>
    <message>
        <source>Everything is put back.</source>
        <translation>Alles ist zurückgestellt.</translation>
    </message>
    <message>
        <source>Looked over by {who}, {time}; something was changed since.</source>
        <translation>Durchgesehen von {who}, {time}; seitdem wurde etwas geändert.</translation>
    </message>
    <message>
        <source>Looked over by {who}, {time}.</source>
        <translation>Angesehen von {who}, {time}.</translation>
    </message>
    <message>
        <source>Open, no obstructions</source>
        <translation>Offen, ohne Hindernisse</translation>
    </message>
    <message>
        <source>Isolated house</source>
        <translation>Einzelnes Haus</translation>
    </message>
    <message>
        <source>Buildings across the street</source>
        <translation>Gebäude auf der anderen Straßenseite</translation>
    </message>
    <message>
        <source>Urban, larger lots</source>
        <translation>Stadt, größere Grundstücke</translation>
    </message>
    <message>
        <source>Adjacent buildings</source>
        <translation>Angrenzende Gebäude</translation>
    </message>
    <message>
        <source>Building</source>
        <translation>Gebäude</translation>
    </message>
    <message>
        <source>Air by hand</source>
        <translation>Luft von Hand</translation>
    </message>
    <message>
        <source>Who and where</source>
        <translation>Wer und wo</translation>
    </message>
    <message>
        <source>Limits of codes and programmes</source>
        <translation>Grenzwerte von Normen und Programmen</translation>
    </message>
    <message>
        <source>House and season, for what the result means</source>
        <translation>Haus und Saison, für die Bedeutung des Ergebnisses</translation>
    </message>
    <message>
        <source>How sure the instruments and measures are (standard uncertainty)</source>
        <translation>Wie sicher Geräte und Maße sind (Standardunsicherheit)</translation>
    </message>
    <message>
        <source>Name of the building</source>
        <translation>Name des Gebäudes</translation>
    </message>
    <message>
        <source>Internal volume</source>
        <translation>Innenvolumen</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Altitude above the sea</source>
        <translation>Höhe über dem Meer</translation>
    </message>
    <message>
        <source>Kind of test</source>
        <translation>Art der Messung</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Bauphase</translation>
    </message>
    <message>
        <source>How far the building is, in a few words</source>
        <translation>Wie weit der Bau ist, in wenigen Worten</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>Directions</source>
        <translation>Richtungen</translation>
    </message>
    <message>
        <source>depressurize</source>
        <translation>Unterdruck</translation>
    </message>
    <message>
        <source>pressurize</source>
        <translation>Überdruck</translation>
    </message>
    <message>
        <source>Depressurize</source>
        <translation>Unterdruck</translation>
    </message>
    <message>
        <source>Pressurize</source>
        <translation>Überdruck</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>opening</source>
        <translation>öffnet</translation>
    </message>
    <message>
        <source>identifying</source>
        <translation>wird erkannt</translation>
    </message>
    <message>
        <source>linked</source>
        <translation>verbunden</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>wrong instrument</source>
        <translation>falsches Gerät</translation>
    </message>
    <message>
        <source>not sure</source>
        <translation>nicht sicher</translation>
    </message>
    <message>
        <source>recording</source>
        <translation>zeichnet auf</translation>
    </message>
    <message>
        <source>complete</source>
        <translation>vollständig</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>angehalten</translation>
    </message>
    <message>
        <source>faulted</source>
        <translation>gestört</translation>
    </message>
    <message>
        <source>interrupted</source>
        <translation>unterbrochen</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Druckmessgerät</translation>
    </message>
    <message>
        <source>Fan</source>
        <translation>Gebläse</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>Barometer</source>
        <translation>Barometer</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Anderes</translation>
    </message>
    <message>
        <source>Dampers of stove and flue as they were</source>
        <translation>Klappen von Ofen und Abgas wie vorher</translation>
    </message>
    <message>
        <source>Bath and kitchen fans switched on again</source>
        <translation>Bad- und Küchenlüfter wieder eingeschaltet</translation>
    </message>
    <message>
        <source>Ventilation of the whole building switched on again</source>
        <translation>Lüftungsanlage des Gebäudes wieder eingeschaltet</translation>
    </message>
    <message>
        <source>Heating and hot water: pilot lit, appliance on</source>
        <translation>Heizung und Warmwasser: Zündflamme an, Gerät an</translation>
    </message>
    <message>
        <source>Pilot flames lit, appliances on and looked at</source>
        <translation>Zündflammen brennen, Geräte an und angesehen</translation>
    </message>
    <message>
        <source>Thermostats as they were</source>
        <translation>Thermostate wie vorher</translation>
    </message>
    <message>
        <source>Smoke and other alarms reinstated, those who were told are told again</source>
        <translation>Rauch- und andere Melder wieder aktiv, Benachrichtigte wieder benachrichtigt</translation>
    </message>
    <message>
        <source>Dampers and registers as they were</source>
        <translation>Klappen und Luftauslässe wie vorher</translation>
    </message>
    <message>
        <source>Keys given back</source>
        <translation>Schlüssel zurückgegeben</translation>
    </message>
    <message>
        <source>As is</source>
        <translation>Wie es ist</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Geschlossen</translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation>Abgeklebt</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Aus</translation>
    </message>
    <message>
        <source>Filled</source>
        <translation>Gefüllt</translation>
    </message>
    <message>
        <source>building in use</source>
        <translation>Gebäude in Nutzung</translation>
    </message>
    <message>
        <source>envelope alone</source>
        <translation>nur die Hülle</translation>
    </message>
    <message>
        <source>closed, dampers not sealed</source>
        <translation>geschlossen, Klappen nicht abgeklebt</translation>
    </message>
    <message>
        <source>shell closed</source>
        <translation>Rohbau geschlossen</translation>
    </message>
    <message>
        <source>services in</source>
        <translation>Installationen fertig</translation>
    </message>
    <message>
        <source>boards on</source>
        <translation>Platten montiert</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>fertiggestellt</translation>
    </message>
    <message>
        <source>Method 1, building in use: openings for ventilation closed, others as they are in use</source>
        <translation>Verfahren 1, Gebäude in Nutzung: Lüftungsöffnungen geschlossen, andere wie in der Nutzung</translation>
    </message>
    <message>
        <source>Method 2, building envelope: all intentional openings sealed or closed</source>
        <translation>Verfahren 2, Gebäudehülle: alle absichtlichen Öffnungen abgedichtet oder geschlossen</translation>
    </message>
    <message>
        <source>Method 3, specific purpose: as the regulation or programme says</source>
        <translation>Verfahren 3, besonderer Zweck: wie Vorschrift oder Programm es sagt</translation>
    </message>
    <message>
        <source>Building envelope: openings of heating and ventilation are left out (masked)</source>
        <translation>Gebäudehülle: Öffnungen von Heizung und Lüftung zählen nicht (abgedeckt)</translation>
    </message>
    <message>
        <source>Operational envelope: openings of heating and ventilation belong to it, as in operation</source>
        <translation>Hülle im Betrieb: Öffnungen von Heizung und Lüftung gehören dazu, wie im Betrieb</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Issued as</source>
        <translation>Ausgestellt als</translation>
    </message>
    <message>
        <source>found</source>
        <translation>gefunden</translation>
    </message>
    <message>
        <source>Choose an exercise and open the class.</source>
        <translation>Wählen Sie eine Übung, und öffnen Sie die Klasse.</translation>
    </message>
    <message>
        <source>{file} is in the editor.</source>
        <translation>{file} steht im Editor.</translation>
    </message>
    <message>
        <source>{file} cannot be read: {error}.</source>
        <translation>{file} kann nicht gelesen werden: {error}.</translation>
    </message>
    <message>
        <source>{file} gives no exercise: {error}.</source>
        <translation>{file} ergibt keine Übung: {error}.</translation>
    </message>
    <message>
        <source>A house as tight as that of {file}, without names, is in the editor.</source>
        <translation>Ein Haus, so dicht wie das von {file}, ohne Namen, steht im Editor.</translation>
    </message>
    <message>
        <source>{file} is there already: choose another name.</source>
        <translation>{file} gibt es schon: Wählen Sie einen anderen Namen.</translation>
    </message>
    <message>
        <source>The exercise is saved as {file}.</source>
        <translation>Die Übung ist gesichert als {file}.</translation>
    </message>
    <message>
        <source>{file} cannot be written: {reason}.</source>
        <translation>{file} kann nicht geschrieben werden: {reason}.</translation>
    </message>
    <message>
        <source>there are too many drafts</source>
        <translation>es gibt zu viele Entwürfe</translation>
    </message>
    <message>
        <source>What you had typed is kept as {file}.</source>
        <translation>Was Sie getippt hatten, ist gesichert als {file}.</translation>
    </message>
    <message>
        <source>What you had typed cannot be kept: {reason}.</source>
        <translation>Was Sie getippt hatten, kann nicht gesichert werden: {reason}.</translation>
    </message>
    <message>
        <source>The class cannot open: {error}.</source>
        <translation>Die Klasse kann nicht öffnen: {error}.</translation>
    </message>
    <message>
        <source>Students join at {address} in the place Rig.</source>
        <translation>Teilnehmer kommen unter {address} dazu, in ihrem Fenster unter Messaufbau.</translation>
    </message>
    <message>
        <source>The class is closed.</source>
        <translation>Die Klasse ist geschlossen.</translation>
    </message>
    <message>
        <source>The cable of the gauge is back.</source>
        <translation>Das Kabel des Messgeräts steckt wieder.</translation>
    </message>
    <message>
        <source>The cable of the gauge is pulled.</source>
        <translation>Das Kabel des Messgeräts ist gezogen.</translation>
    </message>
    <message>
        <source>Time stands still in the houses.</source>
        <translation>In den Häusern steht die Zeit still.</translation>
    </message>
    <message>
        <source>Time in the houses: {pace} times.</source>
        <translation>Zeit in den Häusern: {pace}-fach.</translation>
    </message>
    <message>
        <source>{times} times as large</source>
        <translation>{times}-mal so groß</translation>
    </message>
    <message>
        <source>sealed</source>
        <translation>abgedichtet</translation>
    </message>
    <message>
        <source>as built</source>
        <translation>wie gebaut</translation>
    </message>
    <message>
        <source>Wind: {speed}</source>
        <translation>Wind: {speed}</translation>
    </message>
    <message>
        <source>The wind turns to {speed}.</source>
        <translation>Der Wind geht auf {speed}.</translation>
    </message>
    <message>
        <source>Indoors {indoor}, outdoors {outdoor}</source>
        <translation>Innen {indoor}, außen {outdoor}</translation>
    </message>
    <message>
        <source>Indoors goes to {indoor}, outdoors to {outdoor}.</source>
        <translation>Innen geht auf {indoor}, außen auf {outdoor}.</translation>
    </message>
    <message>
        <source>in {minutes} min</source>
        <translation>in {minutes} min</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>steht bevor</translation>
    </message>
    <message>
        <source>thrown</source>
        <translation>ausgelöst</translation>
    </message>
    <message>
        <source>{fault}: put right.</source>
        <translation>{fault}: behoben.</translation>
    </message>
    <message>
        <source>It has happened already.</source>
        <translation>Es ist schon geschehen.</translation>
    </message>
    <message>
        <source>{moment}: taken back.</source>
        <translation>{moment}: zurückgenommen.</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation>Erledigt.</translation>
    </message>
    <message>
        <source>{count} sheets and the table are in {folder}.</source>
        <translation>{count} Blätter und die Tabelle sind in {folder}.</translation>
    </message>
    <message>
        <source>The rig files cannot be written: {reason}.</source>
        <translation>Die Messaufbau-Dateien können nicht geschrieben werden: {reason}.</translation>
    </message>
    <message>
        <source>{count} rig files are in {folder}.</source>
        <translation>{count} Messaufbau-Dateien sind in {folder}.</translation>
    </message>
    <message>
        <source>cable pulled</source>
        <translation>Kabel gezogen</translation>
    </message>
    <message>
        <source>connected</source>
        <translation>verbunden</translation>
    </message>
    <message>
        <source>away</source>
        <translation>weg</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>verified</source>
        <translation>geprüft</translation>
    </message>
    <message>
        <source>left</source>
        <translation>so gelassen</translation>
    </message>
    <message>
        <source>hand</source>
        <translation>Hand</translation>
    </message>
    <message>
        <source>fog</source>
        <translation>Nebel</translation>
    </message>
    <message>
        <source>smoke pen</source>
        <translation>Rauchstift</translation>
    </message>
    <message>
        <source>infra-red</source>
        <translation>Infrarot</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>Geräusch</translation>
    </message>
    <message>
        <source>other</source>
        <translation>anders</translation>
    </message>
    <message>
        <source>By a code or programme</source>
        <translation>Nach einer Norm oder einem Programm</translation>
    </message>
    <message>
        <source>For quality, no code</source>
        <translation>Zur Qualität, ohne Norm</translation>
    </message>
    <message>
        <source>Finding leaks only</source>
        <translation>Nur zur Lecksuche</translation>
    </message>
    <message>
        <source>Quick</source>
        <translation>Schnell</translation>
    </message>
    <message>
        <source>Standard</source>
        <translation>Üblich</translation>
    </message>
    <message>
        <source>Precision</source>
        <translation>Genau</translation>
    </message>
    <message>
        <source>Windy</source>
        <translation>Windig</translation>
    </message>
    <message>
        <source>Measured inside, wall to wall</source>
        <translation>Innen gemessen, von Wand zu Wand</translation>
    </message>
    <message>
        <source>Taken from drawings</source>
        <translation>Aus Plänen</translation>
    </message>
    <message>
        <source>Measured outside, walls taken off</source>
        <translation>Außen gemessen, Wände abgezogen</translation>
    </message>
    <message>
        <source>Estimated</source>
        <translation>Geschätzt</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außen</translation>
    </message>
    <message>
        <source>ground</source>
        <translation>Erdreich</translation>
    </message>
    <message>
        <source>unheated space</source>
        <translation>unbeheizter Raum</translation>
    </message>
    <message>
        <source>neighbour</source>
        <translation>Nachbar</translation>
    </message>
    <message>
        <source>even</source>
        <translation>gerade</translation>
    </message>
    <message>
        <source>odd</source>
        <translation>ungerade</translation>
    </message>
    <message>
        <source>By hand (a person reads the gauge and types)</source>
        <translation>Von Hand (eine Person liest ab und gibt ein)</translation>
    </message>
    <message>
        <source>Line gauge (two pressures, two temperatures)</source>
        <translation>Messgerät mit Zeilen (zwei Drücke, zwei Temperaturen)</translation>
    </message>
    <message>
        <source>Line gauge that is asked (two pressures, two temperatures)</source>
        <translation>Messgerät mit Zeilen, auf Anfrage (zwei Drücke, zwei Temperaturen)</translation>
    </message>
    <message>
        <source>Modbus fan (electronically commutated motor)</source>
        <translation>Modbus-Gebläse (elektronisch kommutierter Motor)</translation>
    </message>
    <message>
        <source>Modbus gauge (two pressures, two temperatures, barometer)</source>
        <translation>Modbus-Messgerät (zwei Drücke, zwei Temperaturen, Barometer)</translation>
    </message>
    <message>
        <source>Modbus pressure transmitter (one register, 0.1 Pa)</source>
        <translation>Modbus-Druckaufnehmer (ein Register, 0,1 Pa)</translation>
    </message>
    <message>
        <source>Modbus output 0 to 10 V as fan drive</source>
        <translation>Modbus-Ausgang 0 bis 10 V als Gebläseantrieb</translation>
    </message>
    <message>
        <source>Recorded file (readings played back)</source>
        <translation>Aufgezeichnete Datei (Messwerte werden abgespielt)</translation>
    </message>
    <message>
        <source>SCPI fan drive</source>
        <translation>SCPI-Gebläseantrieb</translation>
    </message>
    <message>
        <source>SCPI gauge (four pressures, two temperatures, barometer, humidity)</source>
        <translation>SCPI-Messgerät (vier Drücke, zwei Temperaturen, Barometer, Feuchte)</translation>
    </message>
    <message>
        <source>SCPI gauge (eight pressures, two temperatures, barometer, humidity)</source>
        <translation>SCPI-Messgerät (acht Drücke, zwei Temperaturen, Barometer, Feuchte)</translation>
    </message>
    <message>
        <source>Thermometer and barometer that send lines</source>
        <translation>Thermometer und Barometer, die Zeilen senden</translation>
    </message>
    <message>
        <source>before the points</source>
        <translation>vor den Punkten</translation>
    </message>
    <message>
        <source>left out: {reason}</source>
        <translation>weggelassen: {reason}</translation>
    </message>
    <message>
        <source>looked over by hand</source>
        <translation>von Hand angesehen</translation>
    </message>
    <message>
        <source>checked in the test before</source>
        <translation>in der Messung davor geprüft</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>kein Grund angegeben</translation>
    </message>
    <message>
        <source>Both, in this order</source>
        <translation>Beide, in dieser Reihenfolge</translation>
    </message>
    <message>
        <source>State of the building</source>
        <translation>Zustand des Gebäudes</translation>
    </message>
    <message>
        <source>Limit on</source>
        <translation>Grenzwert für</translation>
    </message>
    <message>
        <source>Air changes at 50 Pa</source>
        <translation>Luftwechsel bei 50 Pa</translation>
    </message>
    <message>
        <source>Flow at 50 Pa per envelope area</source>
        <translation>Volumenstrom bei 50 Pa je Hüllfläche</translation>
    </message>
    <message>
        <source>Flow at 75 Pa per envelope area</source>
        <translation>Volumenstrom bei 75 Pa je Hüllfläche</translation>
    </message>
    <message>
        <source>Flow at 50 Pa per floor area</source>
        <translation>Volumenstrom bei 50 Pa je Grundfläche</translation>
    </message>
    <message>
        <source>Flow at 50 Pa</source>
        <translation>Volumenstrom bei 50 Pa</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>empty: no limit</source>
        <translation>leer: kein Grenzwert</translation>
    </message>
    <message>
        <source>Targets</source>
        <translation>Zieldrücke</translation>
    </message>
    <message>
        <source>Check of the hoses</source>
        <translation>Prüfung der Schläuche</translation>
    </message>
    <message>
        <source>Schedule</source>
        <translation>Zeitplan</translation>
    </message>
    <message>
        <source>Own durations</source>
        <translation>Eigene Dauern</translation>
    </message>
    <message>
        <source>Zero-flow record</source>
        <translation>Nullmessung</translation>
    </message>
    <message>
        <source>Average per point</source>
        <translation>Mittelung je Punkt</translation>
    </message>
    <message>
        <source>Indoor humidity</source>
        <translation>Luftfeuchte innen</translation>
    </message>
    <message>
        <source>Outdoor humidity</source>
        <translation>Luftfeuchte außen</translation>
    </message>
    <message>
        <source>Barometric pressure at the site</source>
        <translation>Luftdruck am Ort</translation>
    </message>
    <message>
        <source>empty: by the altitude</source>
        <translation>leer: nach der Höhe</translation>
    </message>
    <message>
        <source>Wind near the ground</source>
        <translation>Wind nahe dem Boden</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Client</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>Tester</source>
        <translation>Wer misst</translation>
    </message>
    <message>
        <source>Job number</source>
        <translation>Auftragsnummer</translation>
    </message>
    <message>
        <source>Place of the codes</source>
        <translation>Ort der Vorschriften</translation>
    </message>
    <message>
        <source>Climate zone</source>
        <translation>Klimazone</translation>
    </message>
    <message>
        <source>Language of the report</source>
        <translation>Sprache des Berichts</translation>
    </message>
    <message>
        <source>Pressure gauge</source>
        <translation>Druckmessgerät</translation>
    </message>
    <message>
        <source>Flow element</source>
        <translation>Messblende</translation>
    </message>
    <message>
        <source>Temperatures</source>
        <translation>Temperaturen</translation>
    </message>
    <message>
        <source>Storeys</source>
        <translation>Geschosse</translation>
    </message>
    <message>
        <source>By the height</source>
        <translation>Nach der Höhe</translation>
    </message>
    <message>
        <source>Shelter from the wind</source>
        <translation>Schutz vor dem Wind</translation>
    </message>
    <message>
        <source>Indoor minus outdoor, mean</source>
        <translation>Innen minus außen, Mittel</translation>
    </message>
    <message>
        <source>Wind at the station, mean</source>
        <translation>Wind an der Wetterstation, Mittel</translation>
    </message>
    <message>
        <source>Air change that a design assumed</source>
        <translation>Luftwechsel, den eine Planung annahm</translation>
    </message>
    <message>
        <source>Indoor minus outdoor of the design</source>
        <translation>Innen minus außen der Planung</translation>
    </message>
    <message>
        <source>Weather factor of ASHRAE 62.2</source>
        <translation>Wetterfaktor nach ASHRAE 62.2</translation>
    </message>
    <message>
        <source>empty: no credit</source>
        <translation>leer: keine Anrechnung</translation>
    </message>
    <message>
        <source>Exhaust fans together</source>
        <translation>Abluftventilatoren zusammen</translation>
    </message>
    <message>
        <source>empty: no estimate</source>
        <translation>leer: keine Schätzung</translation>
    </message>
    <message>
        <source>Why the building data changed</source>
        <translation>Warum sich die Gebäudedaten änderten</translation>
    </message>
    <message>
        <source>No result yet: the first test begins the list.</source>
        <translation>Noch kein Ergebnis: Die erste Messung beginnt die Liste.</translation>
    </message>
    <message>
        <source>One test so far: after the next both stand here.</source>
        <translation>Bisher eine Messung: Nach der nächsten stehen beide hier.</translation>
    </message>
    <message>
        <source>The two tests are being laid over each other.</source>
        <translation>Die beiden Messungen werden übereinandergelegt.</translation>
    </message>
    <message>
        <source>Choose the port of the gauge and listen to it.</source>
        <translation>Wählen Sie den Anschluss des Messgeräts, und hören Sie ihm zu.</translation>
    </message>
    <message>
        <source>Click the numbers in the line that you need, one after the other, and say what each is.</source>
        <translation>Klicken Sie nacheinander auf die Zahlen der Zeile, die Sie brauchen, und sagen Sie, was jede ist.</translation>
    </message>
    <message>
        <source>My gauge</source>
        <translation>Mein Messgerät</translation>
    </message>
    <message>
        <source>Readings of the run, {direction}</source>
        <translation>Messwerte des Laufs, {direction}</translation>
    </message>
    <message>
        <source>shaded: the readings that are averaged</source>
        <translation>getönt: die gemittelten Messwerte</translation>
    </message>
    <message>
        <source>{count} points, from {first} to {last}.</source>
        <translation>{count} Punkte, von {first} bis {last}.</translation>
    </message>
    <message>
        <source>a hole between zone and outdoors</source>
        <translation>ein Loch zwischen Zone und draußen</translation>
    </message>
    <message>
        <source>a hole between house and zone</source>
        <translation>ein Loch zwischen Haus und Zone</translation>
    </message>
    <message>
        <source>the overhead door of a garage</source>
        <translation>das Tor einer Garage</translation>
    </message>
    <message>
        <source>House against outdoors</source>
        <translation>Haus gegen draußen</translation>
    </message>
    <message>
        <source>Zone against outdoors</source>
        <translation>Zone gegen draußen</translation>
    </message>
    <message>
        <source>Zone, with the hole</source>
        <translation>Zone, mit dem Loch</translation>
    </message>
    <message>
        <source>Fan flow, with the hole</source>
        <translation>Gebläsestrom, mit dem Loch</translation>
    </message>
    <message>
        <source>Kept in this job: {names}.</source>
        <translation>In diesem Auftrag festgehalten: {names}.</translation>
    </message>
    <message>
        <source>1  Hold a pressure. Put a tap into the zone (garage, attic, crawl space), all doors to it closed, and read house and zone against outdoors.</source>
        <translation>1  Halten Sie einen Druck. Legen Sie eine Messstelle in die Zone (Garage, Dachboden, Kriechkeller), alle Türen dorthin zu, und lesen Sie Haus und Zone gegen draußen ab.</translation>
    </message>
    <message>
        <source>2  Read the fan flow too, if the leaks are to be told in numbers.</source>
        <translation>2  Lesen Sie auch den Gebläsestrom ab, wenn die Leckagen in Zahlen gesagt werden sollen.</translation>
    </message>
    <message>
        <source>3  Open {hole}, so far that the zone moves by 5 Pa; hold the house where it was, and read again.</source>
        <translation>3  Öffnen Sie {hole}, so weit, dass sich die Zone um 5 Pa bewegt; halten Sie das Haus, wo es war, und lesen Sie noch einmal ab.</translation>
    </message>
    <message>
        <source>4  Close the hole. The result stands below.</source>
        <translation>4  Schließen Sie das Loch. Das Ergebnis steht unten.</translation>
    </message>
    <message>
        <source>{sentence} Read again.</source>
        <translation>{sentence} Lesen Sie noch einmal ab.</translation>
    </message>
    <message>
        <source>{name}, wanted now</source>
        <translation>{name}, jetzt gebraucht</translation>
    </message>
    <message>
        <source>{name} in {unit}</source>
        <translation>{name} in {unit}</translation>
    </message>
    <message>
        <source>type it, then Enter</source>
        <translation>eingeben, dann Eingabetaste</translation>
    </message>
    <message>
        <source>Readings by hand</source>
        <translation>Messwerte von Hand</translation>
    </message>
    <message>
        <source>Requirements of the method</source>
        <translation>Anforderungen des Verfahrens</translation>
    </message>
    <message>
        <source>Numbers in detail</source>
        <translation>Zahlen im Einzelnen</translation>
    </message>
    <message>
        <source>Method to look at the result by</source>
        <translation>Verfahren, nach dem das Ergebnis gezeigt wird</translation>
    </message>
    <message>
        <source>Fit to look at the result by</source>
        <translation>Ausgleich, nach dem das Ergebnis gezeigt wird</translation>
    </message>
    <message>
        <source>Two gauges on one hose</source>
        <translation>Zwei Messgeräte an einem Schlauch</translation>
    </message>
    <message>
        <source>First channel</source>
        <translation>Erster Kanal</translation>
    </message>
    <message>
        <source>Second channel</source>
        <translation>Zweiter Kanal</translation>
    </message>
    <message>
        <source>First gauge</source>
        <translation>Erstes Messgerät</translation>
    </message>
    <message>
        <source>Second gauge</source>
        <translation>Zweites Messgerät</translation>
    </message>
    <message>
        <source>Keep this check</source>
        <translation>Vergleich sichern</translation>
    </message>
    <message>
        <source>Begin anew</source>
        <translation>Neu beginnen</translation>
    </message>
    <message>
        <source>Points of the check</source>
        <translation>Punkte des Vergleichs</translation>
    </message>
    <message>
        <source>Field check</source>
        <translation>Vergleich vor Ort</translation>
    </message>
    <message>
        <source>Read only: numbers, no names, no photos, and nothing can be done from a phone. It is not encrypted: anybody in the same network could read it. It ends with the window or after four hours. Guest networks often keep phones apart: use the hotspot of laptop or phone. The system may ask once whether this program may listen.</source>
        <translation>Nur zum Lesen: Zahlen, keine Namen, keine Fotos, und vom Telefon aus lässt sich nichts bedienen. Die Seite ist nicht verschlüsselt: Jeder im selben Netz könnte sie lesen. Sie endet mit dem Fenster oder nach vier Stunden. Gastnetze halten Telefone oft auseinander: Nehmen Sie den Hotspot von Laptop oder Telefon. Das System fragt vielleicht einmal, ob dieses Programm Verbindungen annehmen darf.</translation>
    </message>
    <message>
        <source>The alarm is isolated</source>
        <translation>Der Melder ist stillgelegt</translation>
    </message>
    <message>
        <source>The alarm is reinstated</source>
        <translation>Der Melder ist wieder aktiv</translation>
    </message>
    <message>
        <source>Minutes of the timer</source>
        <translation>Minuten der Uhr</translation>
    </message>
    <message>
        <source>{value} min</source>
        <translation>{value} min</translation>
    </message>
    <message>
        <source>Start the timer</source>
        <translation>Uhr starten</translation>
    </message>
    <message>
        <source>isolated, still to be reinstated</source>
        <translation>stillgelegt, noch wieder zu aktivieren</translation>
    </message>
    <message>
        <source>reinstated</source>
        <translation>wieder aktiv</translation>
    </message>
    <message>
        <source>Stop the timer</source>
        <translation>Uhr anhalten</translation>
    </message>
    <message>
        <source>Read now</source>
        <translation>Jetzt ablesen</translation>
    </message>
    <message>
        <source>Read with the hole</source>
        <translation>Mit dem Loch ablesen</translation>
    </message>
    <message>
        <source>Another zone</source>
        <translation>Andere Zone</translation>
    </message>
    <message>
        <source>Name of the zone</source>
        <translation>Name der Zone</translation>
    </message>
    <message>
        <source>Keep in the job</source>
        <translation>Im Auftrag festhalten</translation>
    </message>
    <message>
        <source>The hole that is added</source>
        <translation>Das zusätzliche Loch</translation>
    </message>
    <message>
        <source>What the zone tells</source>
        <translation>Was die Zone sagt</translation>
    </message>
    <message>
        <source>QR code of the link for the phone</source>
        <translation>QR-Code der Adresse für das Telefon</translation>
    </message>
    <message>
        <source>On the phone of the person at the leak</source>
        <translation>Auf dem Telefon der Person an der Leckage</translation>
    </message>
    <message>
        <source>Address of this machine</source>
        <translation>Adresse dieses Rechners</translation>
    </message>
    <message>
        <source>Show it on phones</source>
        <translation>Auf Telefonen zeigen</translation>
    </message>
    <message>
        <source>On the phone</source>
        <translation>Auf dem Telefon</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>1 phone</source>
        <translation>1 Telefon</translation>
    </message>
    <message>
        <source>{count} phones</source>
        <translation>{count} Telefone</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>on: {phones}</source>
        <translation>an: {phones}</translation>
    </message>
    <message>
        <source>The flow is drawn here while a pressure is held, with the marks (S, D, N, L) and the level between them.</source>
        <translation>Hier erscheint der Volumenstrom, während ein Druck gehalten wird, mit den Marken (S, D, N, L) und dem Mittel dazwischen.</translation>
    </message>
    <message>
        <source>Pressure to hold, Pa</source>
        <translation>Zu haltender Druck, Pa</translation>
    </message>
    <message>
        <source>Tone</source>
        <translation>Ton</translation>
    </message>
    <message>
        <source>A tone that falls as the flow falls</source>
        <translation>Ein Ton, der mit dem Volumenstrom fällt</translation>
    </message>
    <message>
        <source>From afar (F11)</source>
        <translation>Von fern (F11)</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Halten</translation>
    </message>
    <message>
        <source>What is left to the target</source>
        <translation>Was bis zum Zielwert bleibt</translation>
    </message>
    <message>
        <source>Note (N), kept with the time at which it was begun</source>
        <translation>Notiz (N), mit der Zeit, zu der sie begonnen wurde</translation>
    </message>
    <message>
        <source>Issue</source>
        <translation>Ausstellen</translation>
    </message>
    <message>
        <source>Version of the report</source>
        <translation>Ausgabe des Berichts</translation>
    </message>
    <message>
        <source>Who signs</source>
        <translation>Wer unterschreibt</translation>
    </message>
    <message>
        <source>Why it is issued again</source>
        <translation>Warum er erneut ausgestellt wird</translation>
    </message>
    <message>
        <source>Sign and issue</source>
        <translation>Unterschreiben und ausstellen</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Job sheet</source>
        <translation>Auftragsblatt</translation>
    </message>
    <message>
        <source>Undo: {undo} (Ctrl+Z)</source>
        <translation>Zurücknehmen: {undo} (Strg+Z)</translation>
    </message>
    <message>
        <source>There is no edit to undo.</source>
        <translation>Es gibt keine Änderung zurückzunehmen.</translation>
    </message>
    <message>
        <source>Redo: {redo} (Ctrl+Shift+Z)</source>
        <translation>Wiederherstellen: {redo} (Strg+Umschalt+Z)</translation>
    </message>
    <message>
        <source>There is no edit to redo.</source>
        <translation>Es gibt keine Änderung wiederherzustellen.</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>Rooms</source>
        <translation>Räume</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Find a job</source>
        <translation>Auftrag suchen</translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <translation>Ordner wählen</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Noch einmal suchen</translation>
    </message>
    <message>
        <source>Street, client, number, date, stage or file name</source>
        <translation>Straße, Kunde, Nummer, Datum, Bauphase oder Dateiname</translation>
    </message>
    <message>
        <source>Words to look for</source>
        <translation>Gesuchte Wörter</translation>
    </message>
    <message>
        <source>Jobs</source>
        <translation>Aufträge</translation>
    </message>
    <message>
        <source>Open the job</source>
        <translation>Auftrag öffnen</translation>
    </message>
    <message>
        <source>Table as CSV</source>
        <translation>Tabelle als CSV</translation>
    </message>
    <message>
        <source>All tables as CSV</source>
        <translation>Alle Tabellen als CSV</translation>
    </message>
    <message>
        <source>The trainer&apos;s machine gives you a simulated house with a gauge and a fan. Your name brings you back to the same house; it also stands on your sheet.</source>
        <translation>Der Rechner der Kursleitung gibt Ihnen ein simuliertes Haus mit Messgerät und Gebläse. Ihr Name bringt Sie zum selben Haus zurück; er steht auch auf Ihrem Blatt.</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Ihr Name</translation>
    </message>
    <message>
        <source>Join the class</source>
        <translation>Dem Kurs beitreten</translation>
    </message>
    <message>
        <source>Host and port</source>
        <translation>Rechner und Anschluss</translation>
    </message>
    <message>
        <source>The task of the class</source>
        <translation>Die Aufgabe des Kurses</translation>
    </message>
    <message>
        <source>{title}, {minutes} minutes</source>
        <translation>{title}, {minutes} Minuten</translation>
    </message>
    <message>
        <source>Back (F1)</source>
        <translation>Zurück (F1)</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>No leak is listed. L adds one while you hold the pressure; it can be described later.</source>
        <translation>Noch ist keine Leckage verzeichnet. L fügt eine hinzu, während Sie den Druck halten; beschreiben können Sie sie später.</translation>
    </message>
    <message>
        <source>New leak (L)</source>
        <translation>Neue Leckage (L)</translation>
    </message>
    <message>
        <source>For each trade…</source>
        <translation>Je Gewerk …</translation>
    </message>
    <message>
        <source>Done today…</source>
        <translation>Erledigt …</translation>
    </message>
    <message>
        <source>The leak</source>
        <translation>Die Leckage</translation>
    </message>
    <message>
        <source>Photo…</source>
        <translation>Foto …</translation>
    </message>
    <message>
        <source>Plan…</source>
        <translation>Plan …</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Einfügen</translation>
    </message>
    <message>
        <source>Picture before</source>
        <translation>Bild davor</translation>
    </message>
    <message>
        <source>Next picture</source>
        <translation>Nächstes Bild</translation>
    </message>
    <message>
        <source>{at} of {count}</source>
        <translation>{at} von {count}</translation>
    </message>
    <message>
        <source>It sends or answers lines</source>
        <translation>Es sendet oder beantwortet Zeilen</translation>
    </message>
    <message>
        <source>Modbus registers</source>
        <translation>Modbus-Register</translation>
    </message>
    <message>
        <source>Place of the limits</source>
        <translation>Ort der Grenzwerte</translation>
    </message>
    <message>
        <source>Limits to hold the result against</source>
        <translation>Grenzwerte, mit denen das Ergebnis verglichen wird</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Als Nächstes</translation>
    </message>
    <message>
        <source>I have read it</source>
        <translation>Gelesen</translation>
    </message>
    <message>
        <source>{rest} more</source>
        <translation>{rest} weitere</translation>
    </message>
    <message>
        <source>No command has these words.</source>
        <translation>Kein Befehl enthält diese Wörter.</translation>
    </message>
    <message>
        <source>Find a command</source>
        <translation>Befehl suchen</translation>
    </message>
    <message>
        <source>Type a word of the command</source>
        <translation>Ein Wort des Befehls eingeben</translation>
    </message>
    <message>
        <source>Words of the command</source>
        <translation>Wörter des Befehls</translation>
    </message>
    <message>
        <source>Commands</source>
        <translation>Befehle</translation>
    </message>
    <message>
        <source>Stop the fan</source>
        <translation>Gebläse anhalten</translation>
    </message>
    <message>
        <source>Stop the fan, at once (Esc)</source>
        <translation>Gebläse anhalten, sofort (Esc)</translation>
    </message>
    <message>
        <source>STOP FAN</source>
        <translation>GEBLÄSE AUS</translation>
    </message>
    <message>
        <source>A photo or a plan: from a file, pasted, or dropped here. A click sets a pin.</source>
        <translation>Ein Foto oder ein Plan: aus einer Datei, eingefügt oder hierher gezogen. Ein Klick setzt eine Nadel.</translation>
    </message>
    <message>
        <source>Photo with pins</source>
        <translation>Foto mit Nadeln</translation>
    </message>
    <message>
        <source>Name of the channel</source>
        <translation>Name des Kanals</translation>
    </message>
    <message>
        <source>What the number is</source>
        <translation>Was die Zahl ist</translation>
    </message>
    <message>
        <source>Its unit</source>
        <translation>Ihre Einheit</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Test on show</source>
        <translation>Gezeigte Messung</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Show the points</source>
        <translation>Punkte zeigen</translation>
    </message>
    <message>
        <source>Points, {title}</source>
        <translation>Punkte, {title}</translation>
    </message>
    <message>
        <source>Restore the point</source>
        <translation>Punkt wieder aufnehmen</translation>
    </message>
    <message>
        <source>Restore the points</source>
        <translation>Punkte wieder aufnehmen</translation>
    </message>
    <message>
        <source>Strike the point…</source>
        <translation>Punkt streichen …</translation>
    </message>
    <message>
        <source>Strike the points…</source>
        <translation>Punkte streichen …</translation>
    </message>
    <message>
        <source>Take the point again</source>
        <translation>Punkt noch einmal messen</translation>
    </message>
    <message>
        <source>Correct the flow range…</source>
        <translation>Messbereich berichtigen …</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>Add something at the left; what is known of it and its calibration is typed here.</source>
        <translation>Fügen Sie links etwas hinzu; was darüber und über seine Kalibrierung bekannt ist, geben Sie hier ein.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Profile</source>
        <translation>Profil</translation>
    </message>
    <message>
        <source>Calibrated on</source>
        <translation>Kalibriert am</translation>
    </message>
    <message>
        <source>Good for</source>
        <translation>Gültig für</translation>
    </message>
    <message>
        <source>Due on, where the certificate says</source>
        <translation>Fällig am, wenn der Schein es sagt</translation>
    </message>
    <message>
        <source>Laboratory</source>
        <translation>Labor</translation>
    </message>
    <message>
        <source>Schemes with another term</source>
        <translation>Programme mit anderer Frist</translation>
    </message>
    <message>
        <source>Correction measured on</source>
        <translation>Korrektur gemessen am</translation>
    </message>
    <message>
        <source>Correction of the pressures shown</source>
        <translation>Korrektur der angezeigten Drücke</translation>
    </message>
    <message>
        <source>Name on its sheet</source>
        <translation>Name auf dem Kalibrierblatt</translation>
    </message>
    <message>
        <source>Kind of curve</source>
        <translation>Art der Kurve</translation>
    </message>
    <message>
        <source>Valid from</source>
        <translation>Gültig von</translation>
    </message>
    <message>
        <source>Valid to</source>
        <translation>Gültig bis</translation>
    </message>
    <message>
        <source>from the months</source>
        <translation>nach den Monaten</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>name months; …</source>
        <translation>Name Monate; …</translation>
    </message>
    <message>
        <source>the day of the calibration</source>
        <translation>der Tag der Kalibrierung</translation>
    </message>
    <message>
        <source>shown true; … in Pa, such as 0 0; 50 50.4</source>
        <translation>angezeigt wahr; … in Pa, etwa 0 0; 50 50.4</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Kalibrierung</translation>
    </message>
    <message>
        <source>Remove the range</source>
        <translation>Bereich entfernen</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>Keep a certificate file</source>
        <translation>Kalibrierschein ablegen</translation>
    </message>
    <message>
        <source>Add a flow range</source>
        <translation>Messbereich hinzufügen</translation>
    </message>
    <message>
        <source>Take into the rig</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Flow ranges, from their calibration sheets</source>
        <translation>Messbereiche, von ihren Kalibrierblättern</translation>
    </message>
    <message>
        <source>Take back: {undo}</source>
        <translation>Zurücknehmen: {undo}</translation>
    </message>
    <message>
        <source>There is nothing to take back</source>
        <translation>Es gibt nichts zurückzunehmen</translation>
    </message>
    <message>
        <source>Certificate: {certificate}</source>
        <translation>Kalibrierschein: {certificate}</translation>
    </message>
    <message>
        <source>No certificate file is kept.</source>
        <translation>Kein Kalibrierschein abgelegt.</translation>
    </message>
    <message>
        <source>Item of the register</source>
        <translation>Gerät des Verzeichnisses</translation>
    </message>
    <message>
        <source>What to add</source>
        <translation>Was hinzukommt</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Add equipment</source>
        <translation>Gerät hinzufügen</translation>
    </message>
    <message>
        <source>Check two gauges on one hose</source>
        <translation>Zwei Messgeräte an einem Schlauch vergleichen</translation>
    </message>
    <message>
        <source>Equipment register</source>
        <translation>Geräteverzeichnis</translation>
    </message>
    <message>
        <source>Page {number} of {count} of the report</source>
        <translation>Seite {number} von {count} des Berichts</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Was fehlt</translation>
    </message>
    <message>
        <source>Nothing is missing.</source>
        <translation>Nichts fehlt.</translation>
    </message>
    <message>
        <source>Once there is a report, what it lacks is listed here.</source>
        <translation>Sobald es einen Bericht gibt, steht hier, was ihm fehlt.</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingeben</translation>
    </message>
    <message>
        <source>Enter it. {sentence}</source>
        <translation>Eingeben. {sentence}</translation>
    </message>
    <message>
        <source>Test of the report</source>
        <translation>Messung des Berichts</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Als PDF sichern</translation>
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
        <translation>die Tabellen als CSV</translation>
    </message>
    <message>
        <source>the test as JSON</source>
        <translation>die Messung als JSON</translation>
    </message>
    <message>
        <source>the air infiltration as HPXML</source>
        <translation>die Luftinfiltration als HPXML</translation>
    </message>
    <message>
        <source>Export {words}</source>
        <translation>Ausgeben: {words}</translation>
    </message>
    <message>
        <source>Leaks by trade…</source>
        <translation>Je Gewerk …</translation>
    </message>
    <message>
        <source>Save a page of leaks for each trade, with photos and pins</source>
        <translation>Für jedes Gewerk eine Seite mit seinen Leckagen speichern, mit Fotos und Markierungen</translation>
    </message>
    <message>
        <source>Save what was sealed today, before and after</source>
        <translation>Speichern, was heute abgedichtet wurde, vorher und nachher</translation>
    </message>
    <message>
        <source>Save, issue, and what is missing</source>
        <translation>Sichern, ausstellen, und was fehlt</translation>
    </message>
    <message>
        <source>As it will be saved</source>
        <translation>So wird er gesichert</translation>
    </message>
    <message>
        <source>The page is being set…</source>
        <translation>Die Seite wird gesetzt …</translation>
    </message>
    <message>
        <source>What the report is written in, whatever the language of the window.</source>
        <translation>In welcher Sprache der Bericht geschrieben wird, gleich welche das Fenster spricht.</translation>
    </message>
    <message>
        <source>An issued report keeps its language.</source>
        <translation>Ein ausgestellter Bericht behält seine Sprache.</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>nicht benutzt</translation>
    </message>
    <message>
        <source>Serial number that must answer</source>
        <translation>Seriennummer, die antworten muss</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>Role of channel {name}</source>
        <translation>Aufgabe des Kanals {name}</translation>
    </message>
    <message>
        <source>Name of the rig</source>
        <translation>Name des Messaufbaus</translation>
    </message>
    <message>
        <source>Flow range in use</source>
        <translation>Eingesetzter Messbereich</translation>
    </message>
    <message>
        <source>The fan closes by itself at rest; nobody covers it</source>
        <translation>Das Gebläse schließt sich im Stillstand selbst; niemand deckt es ab</translation>
    </message>
    <message>
        <source>Profile of the instrument to add</source>
        <translation>Profil des neuen Geräts</translation>
    </message>
    <message>
        <source>Add an instrument</source>
        <translation>Gerät hinzufügen</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>Rig sheet</source>
        <translation>Blatt des Messaufbaus</translation>
    </message>
    <message>
        <source>such as garage or attic</source>
        <translation>etwa Garage oder Dachboden</translation>
    </message>
    <message>
        <source>Flow range in use on {drive}</source>
        <translation>Eingesetzter Messbereich an {drive}</translation>
    </message>
    <message>
        <source>Name of the zone of “{role}”</source>
        <translation>Name der Zone von „{role}“</translation>
    </message>
    <message>
        <source>Copy: {text}</source>
        <translation>Kopieren: {text}</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Connected</source>
        <translation>Verbunden</translation>
    </message>
    <message>
        <source>What the channels read now</source>
        <translation>Was die Kanäle jetzt messen</translation>
    </message>
    <message>
        <source>Links and channels</source>
        <translation>Verbindungen und Kanäle</translation>
    </message>
    <message>
        <source>Simulated house</source>
        <translation>Simuliertes Haus</translation>
    </message>
    <message>
        <source>Own instruments</source>
        <translation>Eigene Geräte</translation>
    </message>
    <message>
        <source>Teach a gauge</source>
        <translation>Gerät anlernen</translation>
    </message>
    <message>
        <source>Join a class</source>
        <translation>Kurs beitreten</translation>
    </message>
    <message>
        <source>Find instruments</source>
        <translation>Geräte suchen</translation>
    </message>
    <message>
        <source>Ask at every port who is there; only questions are sent</source>
        <translation>An jedem Anschluss fragen, wer da ist; nur Fragen werden gesendet</translation>
    </message>
    <message>
        <source>Look for ports</source>
        <translation>Anschlüsse suchen</translation>
    </message>
    <message>
        <source>Save as rig file</source>
        <translation>Als Datei sichern</translation>
    </message>
    <message>
        <source>Choose a rig</source>
        <translation>Messaufbau wählen</translation>
    </message>
    <message>
        <source>✓ connected</source>
        <translation>✓ verbunden</translation>
    </message>
    <message>
        <source>{factor} times as fast as real time</source>
        <translation>{factor}-mal so schnell wie die Wirklichkeit</translation>
    </message>
    <message>
        <source>Invented houses that leak, with wind, fan and gauges. They run the real program.</source>
        <translation>Erfundene Häuser, die lecken, mit Wind, Gebläse und Messgeräten. Das Programm ist das echte.</translation>
    </message>
    <message>
        <source>Simulated houses</source>
        <translation>Simulierte Häuser</translation>
    </message>
    <message>
        <source>A recorded test becomes an instrument: its readings come again, each at its time, with its marks. It is kept in a job of its own beside the recorded one. No fan turns.</source>
        <translation>Eine aufgezeichnete Messung wird zum Instrument: Die Messwerte kommen zu ihrer Zeit wieder, mit ihren Marken, in einem eigenen Auftrag. Kein Gebläse dreht.</translation>
    </message>
    <message>
        <source>No job is chosen.</source>
        <translation>Kein Auftrag ist gewählt.</translation>
    </message>
    <message>
        <source>Choose a job…</source>
        <translation>Auftrag wählen …</translation>
    </message>
    <message>
        <source>Recorded test</source>
        <translation>Aufgezeichnete Messung</translation>
    </message>
    <message>
        <source>How many times faster than real time</source>
        <translation>Wie viel schneller als die Wirklichkeit</translation>
    </message>
    <message>
        <source>Play it back</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <source>Speed against real time</source>
        <translation>Tempo gegenüber der Wirklichkeit</translation>
    </message>
    <message>
        <source>Surfaces around them</source>
        <translation>Flächen um sie herum</translation>
    </message>
    <message>
        <source>No room yet. Add one (Insert), or paste from a spreadsheet: name, floor area, height, volume.</source>
        <translation>Noch kein Raum. Fügen Sie einen hinzu (Einfg), oder fügen Sie aus einer Tabellenkalkulation ein: Name, Grundfläche, Höhe, Volumen.</translation>
    </message>
    <message>
        <source>No surface yet. Add one (Insert), or paste from a spreadsheet: name, area, what it adjoins.</source>
        <translation>Noch keine Fläche. Fügen Sie eine hinzu (Einfg), oder fügen Sie aus einer Tabellenkalkulation ein: Name, Fläche, woran sie grenzt.</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Zählt</translation>
    </message>
    <message>
        <source>Floor area by height. Type a volume to put it in its place.</source>
        <translation>Grundfläche mal Höhe. Geben Sie ein Volumen ein, das an seine Stelle tritt.</translation>
    </message>
    <message>
        <source>How it was measured</source>
        <translation>Wie gemessen wurde</translation>
    </message>
    <message>
        <source>Sums and versions</source>
        <translation>Summen und Fassungen</translation>
    </message>
    <message>
        <source>None is kept yet. A test keeps its own sizes.</source>
        <translation>Noch keine gesichert. Eine Messung behält ihre eigenen Maße.</translation>
    </message>
    <message>
        <source>What it adds up to</source>
        <translation>Was es zusammen ergibt</translation>
    </message>
    <message>
        <source>Versions</source>
        <translation>Fassungen</translation>
    </message>
    <message>
        <source>Name, such as: as built</source>
        <translation>Name, etwa: wie gebaut</translation>
    </message>
    <message>
        <source>Name of the version</source>
        <translation>Name der Fassung</translation>
    </message>
    <message>
        <source>Reason of the version</source>
        <translation>Grund der Fassung</translation>
    </message>
    <message>
        <source>Keep this version</source>
        <translation>Fassung sichern</translation>
    </message>
    <message>
        <source>Port of the instrument</source>
        <translation>Anschluss des Geräts</translation>
    </message>
    <message>
        <source>Wire</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>Parity</source>
        <translation>Parität</translation>
    </message>
    <message>
        <source>First register</source>
        <translation>Erstes Register</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>Read the registers</source>
        <translation>Register lesen</translation>
    </message>
    <message>
        <source>such as 21.3</source>
        <translation>etwa 21.3</translation>
    </message>
    <message>
        <source>What its display shows</source>
        <translation>Was die Anzeige zeigt</translation>
    </message>
    <message>
        <source>Readings of the registers</source>
        <translation>Werte der Register</translation>
    </message>
    <message>
        <source>Name of the profile</source>
        <translation>Name des Profils</translation>
    </message>
    <message>
        <source>Save the profile and use it</source>
        <translation>Profil sichern und benutzen</translation>
    </message>
    <message>
        <source>What its display shows now</source>
        <translation>Was die Anzeige jetzt zeigt</translation>
    </message>
    <message>
        <source>Teach a Modbus instrument</source>
        <translation>Ein Modbus-Gerät anlernen</translation>
    </message>
    <message>
        <source>Choose a picture</source>
        <translation>Bild wählen</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Photo ({photos})</source>
        <translation>Foto ({photos})</translation>
    </message>
    <message>
        <source>Add a photo: {text}</source>
        <translation>Foto hinzufügen: {text}</translation>
    </message>
    <message>
        <source>Before the fan starts</source>
        <translation>Bevor das Gebläse anläuft</translation>
    </message>
    <message>
        <source>Openings</source>
        <translation>Öffnungen</translation>
    </message>
    <message>
        <source>Seal board</source>
        <translation>Abklebungen</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Zurückstellen</translation>
    </message>
    <message>
        <source>Write why there is no test</source>
        <translation>Schreiben, warum keine Messung möglich ist</translation>
    </message>
    <message>
        <source>Where a temporary seal is, such as: dryer outlet</source>
        <translation>Wo eine Abklebung ist, etwa: Abluft des Trockners</translation>
    </message>
    <message>
        <source>Reason, where something is left as it is</source>
        <translation>Grund, wo etwas so bleibt, wie es ist</translation>
    </message>
    <message>
        <source>Name of the second person</source>
        <translation>Name der zweiten Person</translation>
    </message>
    <message>
        <source>Looked over</source>
        <translation>Angesehen</translation>
    </message>
    <message>
        <source>Set-up of the building</source>
        <translation>Vorbereitung des Gebäudes</translation>
    </message>
    <message>
        <source>Every temporary seal is entered once, and ticked off when it is taken off again.</source>
        <translation>Jede Abklebung wird einmal eingetragen, und abgehakt, wenn sie wieder abgenommen ist.</translation>
    </message>
    <message>
        <source>Nobody else looked it over yet. A second pair of eyes finds most.</source>
        <translation>Noch hat niemand sonst hingesehen. Vier Augen finden am meisten.</translation>
    </message>
    <message>
        <source>Second person, client</source>
        <translation>Zweite Person, Kunde</translation>
    </message>
    <message>
        <source>Preparation sheet for the client</source>
        <translation>Vorbereitungsblatt für den Kunden</translation>
    </message>
    <message>
        <source>Results of all stages against their targets</source>
        <translation>Ergebnisse aller Bauphasen gegen ihre Zielwerte</translation>
    </message>
    <message>
        <source>All stages</source>
        <translation>Alle Bauphasen</translation>
    </message>
    <message>
        <source>Earlier test</source>
        <translation>Frühere Messung</translation>
    </message>
    <message>
        <source>Later test</source>
        <translation>Spätere Messung</translation>
    </message>
    <message>
        <source>What changed on site</source>
        <translation>Was sich am Bau geändert hat</translation>
    </message>
    <message>
        <source>What changed on site before the later test</source>
        <translation>Was sich am Bau vor der späteren Messung geändert hat</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>Between the two tests</source>
        <translation>Zwischen den beiden Messungen</translation>
    </message>
    <message>
        <source>Stages against their targets</source>
        <translation>Bauphasen gegen ihre Zielwerte</translation>
    </message>
    <message>
        <source>Results of all stages</source>
        <translation>Ergebnisse aller Bauphasen</translation>
    </message>
    <message>
        <source>Between two tests</source>
        <translation>Zwischen zwei Messungen</translation>
    </message>
    <message>
        <source>dot and bar: result with its 95 % interval, {unit}; upright mark: target</source>
        <translation>Punkt und Balken: Ergebnis mit 95-%-Intervall, {unit}; senkrechte Marke: Zielwert</translation>
    </message>
    <message>
        <source>A line of the gauge: click its numbers</source>
        <translation>Eine Zeile des Messgeräts: Klicken Sie auf ihre Zahlen</translation>
    </message>
    <message>
        <source>Port of the gauge</source>
        <translation>Anschluss des Messgeräts</translation>
    </message>
    <message>
        <source>empty: it sends by itself</source>
        <translation>leer: Es sendet von selbst</translation>
    </message>
    <message>
        <source>What it is asked, if it only answers</source>
        <translation>Was es gefragt wird, wenn es nur antwortet</translation>
    </message>
    <message>
        <source>Listen</source>
        <translation>Zuhören</translation>
    </message>
    <message>
        <source>What came over the wire, as text and as bytes</source>
        <translation>Was über die Leitung kam, als Text und als Bytes</translation>
    </message>
    <message>
        <source>Asked with</source>
        <translation>Gefragt mit</translation>
    </message>
    <message>
        <source>What came, as text and as bytes</source>
        <translation>Was kam, als Text und als Bytes</translation>
    </message>
    <message>
        <source>Corrections, line by line</source>
        <translation>Korrekturen, Zeile für Zeile</translation>
    </message>
    <message>
        <source>Support</source>
        <translation>Support</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschehen ist</translation>
    </message>
    <message>
        <source>Add the job that is open; it holds names, addresses and photos</source>
        <translation>Den offenen Auftrag hinzufügen; er enthält Namen, Anschriften und Fotos</translation>
    </message>
    <message>
        <source>Copy the text</source>
        <translation>Text kopieren</translation>
    </message>
    <message>
        <source>Save a bundle for support</source>
        <translation>Paket für den Support sichern</translation>
    </message>
    <message>
        <source>A bundle holds: {names}. It is written where you say; nothing is sent by itself.</source>
        <translation>Ein Paket enthält: {names}. Es wird dorthin geschrieben, wo Sie sagen; nichts wird von selbst gesendet.</translation>
    </message>
    <message>
        <source>Type in a hand-written test</source>
        <translation>Handschriftliche Messung eingeben</translation>
    </message>
    <message>
        <source>Day and time on the sheet</source>
        <translation>Tag und Uhrzeit auf dem Blatt</translation>
    </message>
    <message>
        <source>Seconds that each was averaged</source>
        <translation>Sekunden, über die je gemittelt wurde</translation>
    </message>
    <message>
        <source>Keep as a test</source>
        <translation>Als Messung sichern</translation>
    </message>
    <message>
        <source>One line for each point: pressure in Pa and flow in {unit}, with tab, semicolon or blanks between. Building, air, method and stage are those of the Job place. The test is marked as typed.</source>
        <translation>Eine Zeile für jeden Punkt: Druck in Pa und Volumenstrom in {unit}, mit Tabulator, Semikolon oder Leerzeichen dazwischen. Gebäude, Luft, Verfahren und Bauphase sind die des Auftrags. Die Messung wird als eingegeben gekennzeichnet.</translation>
    </message>
    <message>
        <source>Points, {way}</source>
        <translation>Punkte, {way}</translation>
    </message>
    <message>
        <source>Zero-flow pressure after, Pa</source>
        <translation>Natürliche Druckdifferenz nachher, Pa</translation>
    </message>
    <message>
        <source>Zero-flow pressure before, Pa</source>
        <translation>Natürliche Druckdifferenz vorher, Pa</translation>
    </message>
    <message>
        <source>A double click on a job file (*{ending}) opens it with this program.</source>
        <translation>Ein Doppelklick auf eine Auftragsdatei (*{ending}) öffnet sie mit diesem Programm.</translation>
    </message>
    <message>
        <source>Job files are no longer opened with this program by a double click.</source>
        <translation>Auftragsdateien werden nicht mehr durch Doppelklick mit diesem Programm geöffnet.</translation>
    </message>
    <message>
        <source>Play back a job</source>
        <translation>Auftrag abspielen</translation>
    </message>
    <message>
        <source>{name} holds no test that has ended.</source>
        <translation>{name} enthält keine beendete Messung.</translation>
    </message>
    <message>
        <source>{name} cannot be played back: {error}.</source>
        <translation>{name} lässt sich nicht abspielen: {error}.</translation>
    </message>
    <message>
        <source>The test cannot be played back: {error}.</source>
        <translation>Die Messung lässt sich nicht abspielen: {error}.</translation>
    </message>
    <message>
        <source>The test was not played back to its end.</source>
        <translation>Die Messung wurde nicht bis zum Ende abgespielt.</translation>
    </message>
    <message>
        <source>Played back: the result is the same to the digit as in the record.</source>
        <translation>Abgespielt: Das Ergebnis ist bis auf die letzte Stelle das der Aufzeichnung.</translation>
    </message>
    <message>
        <source>Played back: the result is not that of the record.</source>
        <translation>Abgespielt: Das Ergebnis ist nicht das der Aufzeichnung.</translation>
    </message>
    <message>
        <source>Read it again</source>
        <translation>Neu messen</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>The temperatures are no longer those at which it was read.</source>
        <translation>Die Temperaturen sind nicht mehr die von damals.</translation>
    </message>
    <message>
        <source>The wind is no longer that in which it was read.</source>
        <translation>Der Wind ist nicht mehr der von damals.</translation>
    </message>
    <message>
        <source>zero-flow pressure just read</source>
        <translation>natürliche Druckdifferenz eben gemessen</translation>
    </message>
    <message>
        <source>zero-flow pressure {minutes} min old</source>
        <translation>natürliche Druckdifferenz {minutes} min alt</translation>
    </message>
    <message>
        <source>It was read {minutes} min ago.</source>
        <translation>Sie wurde vor {minutes} min gemessen.</translation>
    </message>
    <message>
        <source>The zero-flow pressure has become old</source>
        <translation>Die natürliche Druckdifferenz ist alt geworden</translation>
    </message>
    <message>
        <source>It may have moved by {moved}, which looks like {worth}: the intervals carry that.</source>
        <translation>Sie kann sich um {moved} bewegt haben, was wie {worth} aussieht: Die Intervalle enthalten das.</translation>
    </message>
    <message>
        <source>The fan stops for about a minute. Marks and drops stay; by what it has moved the flows are put right.</source>
        <translation>Das Gebläse hält etwa eine Minute lang an. Marken und Änderungen bleiben; die Volumenströme werden um das Bewegte berichtigt.</translation>
    </message>
    <message>
        <source>everything off</source>
        <translation>alles aus</translation>
    </message>
    <message>
        <source>kitchen hood</source>
        <translation>Dunstabzug</translation>
    </message>
    <message>
        <source>bath fan</source>
        <translation>Badlüfter</translation>
    </message>
    <message>
        <source>dryer</source>
        <translation>Wäschetrockner</translation>
    </message>
    <message>
        <source>all exhaust fans</source>
        <translation>alle Abluftventilatoren</translation>
    </message>
    <message>
        <source>all exhaust fans, inside doors shut</source>
        <translation>alle Abluftventilatoren, Innentüren zu</translation>
    </message>
    <message>
        <source>A test runs or a pressure is held: end it first. Here the test fan is off and covered.</source>
        <translation>Eine Messung läuft oder ein Druck wird gehalten: erst beenden. Hier ist das Messgebläse aus und abgedeckt.</translation>
    </message>
    <message>
        <source>Connect the gauge that reads indoors against outdoors, its hose in the room of the appliance.</source>
        <translation>Das Messgerät verbinden, das innen gegen außen misst; sein Schlauch liegt im Raum der Feuerstätte.</translation>
    </message>
    <message>
        <source>Close windows and outside doors, cover the test fan, switch every fan and appliance off. Wait until the pressure stands, then read: the last {seconds} s count.</source>
        <translation>Fenster und Außentüren schließen, das Messgebläse abdecken, alle Ventilatoren und Feuerstätten ausschalten. Warten, bis der Druck steht, dann ablesen: Es zählen die letzten {seconds} s.</translation>
    </message>
    <message>
        <source>Switch on, wait until the pressure stands, then read: the last {seconds} s count.</source>
        <translation>Einschalten, warten, bis der Druck steht, dann ablesen: Es zählen die letzten {seconds} s.</translation>
    </message>
    <message>
        <source>Worst case of the exhaust fans</source>
        <translation>Ungünstigster Fall der Abluftventilatoren</translation>
    </message>
    <message>
        <source>Pressure indoors against outdoors</source>
        <translation>Druck innen gegen außen</translation>
    </message>
    <message>
        <source>What is on</source>
        <translation>Was läuft</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Ablesen</translation>
    </message>
    <message>
        <source>What it tells</source>
        <translation>Was es besagt</translation>
    </message>
    <message>
        <source>Indoors against outdoors</source>
        <translation>Innen gegen außen</translation>
    </message>
    <message>
        <source>Open a job first: the readings are kept in it.</source>
        <translation>Erst einen Auftrag öffnen: Die Ablesungen werden darin aufbewahrt.</translation>
    </message>
    <message>
        <source>Read the pressure with everything off first.</source>
        <translation>Erst den Druck ablesen, während alles aus ist.</translation>
    </message>
    <message>
        <source>The test is complete. Put the building back: seals off, flames on, dampers and alarms as they were.</source>
        <translation>Die Messung ist vollständig. Stellen Sie das Gebäude zurück: Abklebungen ab, Flammen an, Klappen und Melder wie vorher.</translation>
    </message>
    <message>
        <source>The test has ended before it was complete; what was read is kept.</source>
        <translation>Die Messung endete, bevor sie vollständig war; was gemessen wurde, bleibt.</translation>
    </message>
    <message>
        <source>Ready to test.</source>
        <translation>Bereit zur Messung.</translation>
    </message>
    <message>
        <source>Waiting for the instruments to answer.</source>
        <translation>Warten auf Antwort der Geräte.</translation>
    </message>
    <message>
        <source>Waiting for the building to come to rest.</source>
        <translation>Warten, bis das Gebäude zur Ruhe kommt.</translation>
    </message>
    <message>
        <source>Reading the zero-flow pressure before the points: {progress}. Keep the fan covered.</source>
        <translation>Die natürliche Druckdifferenz vor den Punkten wird gemessen: {progress}. Gebläse abgedeckt lassen.</translation>
    </message>
    <message>
        <source>Reading the zero-flow pressure again: {progress}. Keep the fan covered.</source>
        <translation>Die natürliche Druckdifferenz wird noch einmal gemessen: {progress}. Gebläse abgedeckt lassen.</translation>
    </message>
    <message>
        <source>Raising the fan gently towards {goal}. Watch sheeting and ceilings.</source>
        <translation>Das Gebläse wird sanft auf {goal} gebracht. Auf Folien und Decken achten.</translation>
    </message>
    <message>
        <source>Fan at full speed towards {goal}. Look for an open window or door.</source>
        <translation>Gebläse mit voller Drehzahl auf dem Weg zu {goal}. Nach einem offenen Fenster oder einer offenen Tür suchen.</translation>
    </message>
    <message>
        <source>Going to {goal}; waiting until the pressure stands.</source>
        <translation>Auf dem Weg zu {goal}; warten, bis der Druck steht.</translation>
    </message>
    <message>
        <source>Holding {goal}, averaging: {progress}. Keep doors and windows closed.</source>
        <translation>{goal} werden gehalten und gemittelt: {progress}. Türen und Fenster geschlossen lassen.</translation>
    </message>
    <message>
        <source>Holding {goal}. Seal, look, or ask for another pressure.</source>
        <translation>{goal} werden gehalten. Abdichten, suchen, oder einen anderen Druck wählen.</translation>
    </message>
    <message>
        <source>Bringing the fan to rest.</source>
        <translation>Das Gebläse wird angehalten.</translation>
    </message>
    <message>
        <source>Going on to the next step.</source>
        <translation>Weiter zum nächsten Schritt.</translation>
    </message>
    <message>
        <source>{done} s of {whole} s</source>
        <translation>{done} s von {whole} s</translation>
    </message>
    <message>
        <source>The point is begun again.</source>
        <translation>Der Punkt beginnt neu.</translation>
    </message>
    <message>
        <source>The test goes on from the beginning of the interrupted step.</source>
        <translation>Die Messung geht am Anfang des unterbrochenen Schritts weiter.</translation>
    </message>
    <message>
        <source>The fan is at rest.</source>
        <translation>Das Gebläse steht.</translation>
    </message>
    <message>
        <source>Turn the fan off.</source>
        <translation>Schalten Sie das Gebläse aus.</translation>
    </message>
    <message>
        <source>The test was ended before it began.</source>
        <translation>Die Messung wurde beendet, bevor sie begann.</translation>
    </message>
    <message>
        <source>The test was ended by hand; what was read is kept.</source>
        <translation>Die Messung wurde von Hand beendet; was gemessen wurde, bleibt.</translation>
    </message>
    <message>
        <source>The gauge went silent; the record begins again.</source>
        <translation>Das Messgerät verstummte; die Aufzeichnung beginnt neu.</translation>
    </message>
    <message>
        <source>Go on today</source>
        <translation>Heute weiter</translation>
    </message>
    <message>
        <source>Cover it each time</source>
        <translation>Jedes Mal abdecken</translation>
    </message>
    <message>
        <source>Leave these records out</source>
        <translation>Diese Nullmessungen weglassen</translation>
    </message>
    <message>
        <source>It is mended: check again</source>
        <translation>Behoben: noch einmal prüfen</translation>
    </message>
    <message>
        <source>Go on all the same</source>
        <translation>Trotzdem weiter</translation>
    </message>
    <message>
        <source>All of this is so</source>
        <translation>All das ist so</translation>
    </message>
    <message>
        <source>Do not test</source>
        <translation>Nicht messen</translation>
    </message>
    <message>
        <source>Before the fan starts: every flame is out and nothing can fire by itself; ashes are cold, removed or covered; no asbestos, mould or loose sheeting lies in the path of the air; everybody in the building knows of the test.</source>
        <translation>Bevor das Gebläse anläuft: Jede Flamme ist aus, und nichts kann von selbst zünden; die Asche ist kalt, entfernt oder abgedeckt; weder Asbest noch Schimmel noch lose Folien liegen im Weg der Luft; alle im Gebäude wissen von der Messung.</translation>
    </message>
    <message>
        <source>The fan can draw flue gas into rooms and lift ceilings and sheeting. Local codes and licensed practice decide who may do this and how; this list does not replace them.</source>
        <translation>Das Gebläse kann Abgas in Räume ziehen und Decken und Folien heben. Örtliche Vorschriften und Fachbetriebe bestimmen, wer das wie tun darf; diese Liste ersetzt sie nicht.</translation>
    </message>
    <message>
        <source>The safety questions were answered: do not test.</source>
        <translation>Die Sicherheitsfragen sind beantwortet: nicht messen.</translation>
    </message>
    <message>
        <source>Cover the fan so that no air can pass through it.</source>
        <translation>Decken Sie das Gebläse ab, so dass keine Luft hindurch kann.</translation>
    </message>
    <message>
        <source>The fan is covered</source>
        <translation>Das Gebläse ist abgedeckt</translation>
    </message>
    <message>
        <source>{doubts} Go on today?</source>
        <translation>{doubts} Heute weiter?</translation>
    </message>
    <message>
        <source>The test was ended before the points: today is not the day.</source>
        <translation>Die Messung wurde vor den Punkten beendet: Heute ist nicht der Tag.</translation>
    </message>
    <message>
        <source>Take the cover off the fan. Keep all doors and windows to the outside closed.</source>
        <translation>Nehmen Sie die Abdeckung vom Gebläse. Alle Türen und Fenster nach draußen geschlossen lassen.</translation>
    </message>
    <message>
        <source>The fan is open</source>
        <translation>Das Gebläse ist offen</translation>
    </message>
    <message>
        <source>Cover the fan again for the closing zero-flow pressure.</source>
        <translation>Decken Sie das Gebläse für die abschließende natürliche Druckdifferenz wieder ab.</translation>
    </message>
    <message>
        <source>Take the cover off the fan for the point once more.</source>
        <translation>Nehmen Sie die Abdeckung für den Punkt noch einmal ab.</translation>
    </message>
    <message>
        <source>Zero-flow records between the points would bring next to nothing today and are left out.</source>
        <translation>Nullmessungen zwischen den Punkten brächten heute so gut wie nichts und entfallen.</translation>
    </message>
    <message>
        <source>In this wind {count} zero-flow records between the points pay. The fan stops for each, and somebody has to cover it and take the cover off again.</source>
        <translation>Bei diesem Wind lohnen sich {count} Nullmessungen zwischen den Punkten. Das Gebläse hält für jede an, und jemand muss es abdecken und wieder öffnen.</translation>
    </message>
    <message>
        <source>The fan turns by itself to {direction}. Look whether the outdoor hose lies out of its jet.</source>
        <translation>Das Gebläse stellt sich selbst auf {direction}. Sehen Sie nach, ob der Außenschlauch außerhalb seines Strahls liegt.</translation>
    </message>
    <message>
        <source>The hose lies well</source>
        <translation>Der Schlauch liegt gut</translation>
    </message>
    <message>
        <source>Turn the fan round to {direction}. Lay the hoses for this direction and keep the outdoor end out of the fan&apos;s jet.</source>
        <translation>Drehen Sie das Gebläse auf {direction}. Legen Sie die Schläuche für diese Richtung, das äußere Ende außerhalb des Strahls.</translation>
    </message>
    <message>
        <source>The fan is turned</source>
        <translation>Das Gebläse ist gedreht</translation>
    </message>
    <message>
        <source>The fan reaches {pressure} Pa; higher targets were left out.</source>
        <translation>Das Gebläse erreicht {pressure} Pa; höhere Druckstufen entfallen.</translation>
    </message>
    <message>
        <source>The fan reaches {pressure} Pa; the readings that are left are taken at {lower} Pa.</source>
        <translation>Das Gebläse erreicht {pressure} Pa; die übrigen Ablesungen werden bei {lower} Pa gemacht.</translation>
    </message>
    <message>
        <source>Range {name} is fitted</source>
        <translation>Bereich {name} ist eingesetzt</translation>
    </message>
    <message>
        <source>Range {name} stays fitted</source>
        <translation>Bereich {name} bleibt eingesetzt</translation>
    </message>
    <message>
        <source>The points before were read with range {name}</source>
        <translation>Die Punkte davor wurden mit Messbereich {name} gemessen</translation>
    </message>
    <message>
        <source>{found} Fit range {name} while the fan stands still.</source>
        <translation>{found} Setzen Sie Bereich {name} ein, während das Gebläse steht.</translation>
    </message>
    <message>
        <source>{found} Range {name} was not fitted.</source>
        <translation>{found} Bereich {name} wurde nicht eingesetzt.</translation>
    </message>
    <message>
        <source>Cover the fan for a zero-flow record between the points.</source>
        <translation>Decken Sie das Gebläse für eine Nullmessung zwischen den Punkten ab.</translation>
    </message>
    <message>
        <source>Take the cover off the fan again for the next points.</source>
        <translation>Nehmen Sie die Abdeckung für die nächsten Punkte wieder ab.</translation>
    </message>
    <message>
        <source>It stays so: strike the points before</source>
        <translation>Es bleibt so: Punkte davor streichen</translation>
    </message>
    <message>
        <source>It is put back: strike the points after</source>
        <translation>Zurückgestellt: Punkte danach streichen</translation>
    </message>
    <message>
        <source>Keep all points</source>
        <translation>Alle Punkte behalten</translation>
    </message>
    <message>
        <source>Begin this direction again</source>
        <translation>Diese Richtung neu beginnen</translation>
    </message>
    <message>
        <source>The computer slept for {time}. Look again: windows and outside doors closed, seals in place, hoses where they were.</source>
        <translation>Der Rechner schlief {time}. Sehen Sie noch einmal nach: Fenster und Außentüren zu, Abklebungen dran, Schläuche, wo sie waren.</translation>
    </message>
    <message>
        <source>All is as it was</source>
        <translation>Alles ist wie vorher</translation>
    </message>
    <message>
        <source>Cover the fan: the zero-flow pressure is read once more.</source>
        <translation>Decken Sie das Gebläse ab: Die natürliche Druckdifferenz wird noch einmal gemessen.</translation>
    </message>
    <message>
        <source>The fan was stopped. Fit flow range {name}; the point is then begun again.</source>
        <translation>Das Gebläse wurde angehalten. Setzen Sie Messbereich {name} ein; der Punkt beginnt dann neu.</translation>
    </message>
    <message>
        <source>{sentence} The fan was stopped: go and look. What became of it?</source>
        <translation>{sentence} Das Gebläse wurde angehalten: Sehen Sie nach. Was wurde daraus?</translation>
    </message>
    <message>
        <source>{sentence} The fan was stopped. It changed before: a flap or damper that opens with the pressure does so, and then all points belong to the house.</source>
        <translation>{sentence} Das Gebläse wurde angehalten. Es änderte sich schon einmal: So verhält sich eine Klappe, die sich mit dem Druck öffnet, und dann gehören alle Messpunkte zum Haus.</translation>
    </message>
    <message>
        <source>{sentence} The fan was stopped: put it right; the point is then begun again.</source>
        <translation>{sentence} Das Gebläse wurde angehalten: Bringen Sie es in Ordnung; der Punkt beginnt dann neu.</translation>
    </message>
    <message>
        <source>{sentence} The fan was stopped.</source>
        <translation>{sentence} Das Gebläse wurde angehalten.</translation>
    </message>
    <message>
        <source>It is put right: go on</source>
        <translation>Es ist in Ordnung gebracht: weiter</translation>
    </message>
    <message>
        <source>Nothing was wrong: go on</source>
        <translation>Alles war in Ordnung: weiter</translation>
    </message>
    <message>
        <source>A point without flow through the fan is left out: look at the hose of the flow element.</source>
        <translation>Ein Messpunkt ohne Volumenstrom durch das Gebläse wird ausgelassen: Sehen Sie nach dem Schlauch der Messblende.</translation>
    </message>
    <message>
        <source>no flow through the fan</source>
        <translation>kein Volumenstrom durch das Gebläse</translation>
    </message>
    <message>
        <source>One point more, at {pressure} Pa: two stand further apart than the method allows.</source>
        <translation>Ein Messpunkt mehr, bei {pressure} Pa: Zwei liegen weiter auseinander, als das Verfahren erlaubt.</translation>
    </message>
    <message>
        <source>The pressure comes to {reached} Pa; {goal} Pa was wanted. Is a door, window or damper open, or something before the fan? If not, the points go up to what it reaches, and the flow at 50 Pa is extrapolated.</source>
        <translation>Der Druck kommt auf {reached} Pa; gewünscht waren {goal} Pa. Ist eine Tür, ein Fenster oder eine Klappe offen, oder liegt etwas vor dem Gebläse? Wenn nicht, gehen die Messpunkte bis zu dem, was es erreicht, und der Volumenstrom bei 50 Pa wird extrapoliert.</translation>
    </message>
    <message>
        <source>Take the points up to {pressure} Pa</source>
        <translation>Messpunkte bis {pressure} Pa nehmen</translation>
    </message>
    <message>
        <source>It is shut now: try once more</source>
        <translation>Jetzt ist es zu: noch einmal versuchen</translation>
    </message>
    <message>
        <source>Flow range {was} was fitted last; the rig now says {fitted}. Which one is fitted?</source>
        <translation>Zuletzt war Messbereich {was} eingesetzt; der Messaufbau sagt jetzt {fitted}. Welcher ist eingesetzt?</translation>
    </message>
    <message>
        <source>Cover the fan: after such a gap the zero-flow pressure is read once more.</source>
        <translation>Decken Sie das Gebläse ab: Nach so langer Pause wird die natürliche Druckdifferenz noch einmal gemessen.</translation>
    </message>
    <message>
        <source>The fan still blows, at {pressure} Pa: turn it down and switch it off.</source>
        <translation>Das Gebläse bläst noch, bei {pressure} Pa: zurückdrehen und ausschalten.</translation>
    </message>
    <message>
        <source>The pressure passed {pressure} Pa. The fan was stopped.</source>
        <translation>Der Druck überschritt {pressure} Pa. Das Gebläse wurde angehalten.</translation>
    </message>
    <message>
        <source>The pressure stayed above {pressure} Pa. The fan was stopped.</source>
        <translation>Der Druck blieb über {pressure} Pa. Das Gebläse wurde angehalten.</translation>
    </message>
    <message>
        <source>The pressure climbed fast towards {pressure} Pa. The fan was stopped.</source>
        <translation>Der Druck stieg schnell auf {pressure} Pa zu. Das Gebläse wurde angehalten.</translation>
    </message>
    <message>
        <source>The gauge went silent. The fan was stopped; look at cable and battery.</source>
        <translation>Das Messgerät verstummte. Das Gebläse wurde angehalten; sehen Sie nach Kabel und Batterie.</translation>
    </message>
    <message>
        <source>The gauge repeats {value} Pa unchanged. The fan was stopped; look at gauge and hose.</source>
        <translation>Das Messgerät wiederholt {value} Pa unverändert. Das Gebläse wurde angehalten; sehen Sie nach Gerät und Schlauch.</translation>
    </message>
    <message>
        <source>The fan drive does not answer. It stops by itself; look at its cable.</source>
        <translation>Der Gebläseantrieb antwortet nicht. Er hält von selbst an; sehen Sie nach seinem Kabel.</translation>
    </message>
    <message>
        <source>The pressure goes the wrong way. The fan was stopped; look whether hoses or fan are turned round.</source>
        <translation>Der Druck geht in die falsche Richtung. Das Gebläse wurde angehalten; sehen Sie nach, ob Schläuche oder Gebläse verdreht sind.</translation>
    </message>
    <message>
        <source>The fan runs and no pressure builds up. It was stopped; look at hoses, doors and the fan&apos;s cover.</source>
        <translation>Das Gebläse läuft, und kein Druck baut sich auf. Es wurde angehalten; sehen Sie nach Schläuchen, Türen und der Abdeckung.</translation>
    </message>
    <message>
        <source>This flow should give far more pressure. The fan was stopped: a hose is off, a door is open, or another flow range is fitted than entered.</source>
        <translation>Dieser Volumenstrom müsste eine viel höhere Druckdifferenz ergeben. Das Gebläse wurde angehalten: Ein Schlauch ist ab, eine Tür ist offen, oder ein anderer Messbereich ist eingesetzt als eingetragen.</translation>
    </message>
    <message>
        <source>The fan moves what took {pressure} Pa and more before. It was stopped: something was opened, or the gauge does not feel the pressure.</source>
        <translation>Das Gebläse fördert, was vorher {pressure} Pa und mehr brauchte. Es wurde angehalten: Etwas wurde geöffnet, oder das Messgerät fühlt den Druck nicht.</translation>
    </message>
    <message>
        <source>The battery of this computer is at {left}: the fan was stopped. Plug it in, then go on.</source>
        <translation>Der Akku dieses Rechners ist bei {left}: Das Gebläse wurde angehalten. Schließen Sie ihn an, dann weiter.</translation>
    </message>
    <message>
        <source>The program was held up for {seconds} s and did not steer. The fan was stopped.</source>
        <translation>Das Programm stand {seconds} s lang und regelte nicht. Das Gebläse wurde angehalten.</translation>
    </message>
    <message>
        <source>Raising the fan a little to see whether every hose answers.</source>
        <translation>Das Gebläse wird etwas erhöht, um zu sehen, ob jeder Schlauch antwortet.</translation>
    </message>
    <message>
        <source>The envelope pressure goes the wrong way: its hose is on the wrong input, or the fan is turned.</source>
        <translation>Die Druckdifferenz geht in die falsche Richtung: Ihr Schlauch sitzt am falschen Eingang, oder das Gebläse ist verdreht.</translation>
    </message>
    <message>
        <source>No pressure moves: the fan is covered, or does not turn, or both hoses are off.</source>
        <translation>Kein Druck bewegt sich: Das Gebläse ist abgedeckt, oder dreht nicht, oder beide Schläuche sind ab.</translation>
    </message>
    <message>
        <source>Air flows and the envelope pressure does not move: its hose is off, blocked or frozen, or a door is open.</source>
        <translation>Luft strömt, und die Druckdifferenz bewegt sich nicht: Ihr Schlauch ist ab, verstopft oder vereist, oder eine Tür ist offen.</translation>
    </message>
    <message>
        <source>The envelope pressure moves and the flow element does not: its hose is off, or the flow range is far too large.</source>
        <translation>Die Druckdifferenz bewegt sich, und die Messblende nicht: Ihr Schlauch ist ab, oder der Messbereich ist viel zu groß.</translation>
    </message>
    <message>
        <source>Turn the fan down slowly and switch it off.</source>
        <translation>Drehen Sie das Gebläse langsam herunter, und schalten Sie es aus.</translation>
    </message>
    <message>
        <source>The fan was stopped by hand.</source>
        <translation>Das Gebläse wurde von Hand angehalten.</translation>
    </message>
    <message>
        <source>{missing} of {count} safety questions are not answered.</source>
        <translation>{missing} von {count} Sicherheitsfragen sind nicht beantwortet.</translation>
    </message>
    <message>
        <source>The answers are older than {hours} hours: answer again.</source>
        <translation>Die Antworten sind älter als {hours} Stunden: Antworten Sie neu.</translation>
    </message>
    <message>
        <source>The fan may start.</source>
        <translation>Das Gebläse darf anlaufen.</translation>
    </message>
    <message>
        <source>The fan may start: {limits}.</source>
        <translation>Das Gebläse darf anlaufen: {limits}.</translation>
    </message>
    <message>
        <source>pressurize only</source>
        <translation>nur Überdruck</translation>
    </message>
    <message>
        <source>pressurize only and at most {cap} Pa</source>
        <translation>nur Überdruck und höchstens {cap} Pa</translation>
    </message>
    <message>
        <source>at most {cap} Pa</source>
        <translation>höchstens {cap} Pa</translation>
    </message>
    <message>
        <source>Stopped by hand.</source>
        <translation>Von Hand angehalten.</translation>
    </message>
    <message>
        <source>No test possible, since this is not so: “{text}”</source>
        <translation>Keine Messung möglich: Nicht erfüllt ist „{text}“</translation>
    </message>
    <message>
        <source>Holding {goal} for {time} min: {flow}. Seal, look, or ask for another pressure.</source>
        <translation>{goal} werden seit {time} min gehalten: {flow}. Abdichten, suchen, oder einen anderen Druck wählen.</translation>
    </message>
    <message>
        <source>The test ended by a fault of the program ({kind}: {error}).</source>
        <translation>Die Messung endete durch einen Fehler des Programms ({kind}: {error}).</translation>
    </message>
    <message>
        <source>It did not come back within {seconds} s.</source>
        <translation>Es kam innerhalb von {seconds} s nicht zurück.</translation>
    </message>
    <message>
        <source>{reason} It did not come back within {seconds} s.</source>
        <translation>{reason} Das kam innerhalb von {seconds} s nicht zurück.</translation>
    </message>
    <message>
        <source>The pressure is kept at or below {cap} Pa; higher targets were left out.</source>
        <translation>Der Druck bleibt bei höchstens {cap} Pa; höhere Druckstufen entfallen.</translation>
    </message>
    <message>
        <source>The lowest target was raised to {target} Pa: five times the zero-flow pressure.</source>
        <translation>Die niedrigste Druckstufe wurde auf {target} Pa erhöht: das Fünffache der natürlichen Druckdifferenz.</translation>
    </message>
    <message>
        <source>The hoses were not checked before the points: {reason}.</source>
        <translation>Die Schläuche wurden vor den Punkten nicht geprüft: {reason}.</translation>
    </message>
    <message>
        <source>{wanted} Pa was asked for; the safety answers allow {allowed} Pa.</source>
        <translation>Verlangt waren {wanted} Pa; die Sicherheitsantworten erlauben {allowed} Pa.</translation>
    </message>
    <message>
        <source>Answered: {choice}.</source>
        <translation>Beantwortet: {choice}.</translation>
    </message>
    <message>
        <source>Only a point of the running direction can be taken again.</source>
        <translation>Nur ein Punkt der laufenden Richtung lässt sich noch einmal messen.</translation>
    </message>
    <message>
        <source>{gap} Look again: windows and outside doors closed, seals in place, hoses where they were, the fan set to {outfit}. If anything is not, put it right or begin again.</source>
        <translation>{gap} Sehen Sie noch einmal nach: Fenster und Außentüren zu, Abklebungen dran, Schläuche, wo sie waren, Gebläse: {outfit}. Ist etwas nicht so, bringen Sie es in Ordnung, oder beginnen Sie neu.</translation>
    </message>
    <message>
        <source>The test was interrupted with {count} points taken; nothing was recorded for {time}.</source>
        <translation>Die Messung wurde mit {count} gemessenen Punkten unterbrochen; {time} lang wurde nichts aufgezeichnet.</translation>
    </message>
    <message>
        <source>With more speed the envelope pressure grows as that of a flow element does, and the flow element grows as a house does: their hoses seem to be swapped.</source>
        <translation>Mit der Drehzahl wächst die Druckdifferenz wie die einer Messblende, und die Messblende wie ein Haus: Ihre Schläuche scheinen vertauscht.</translation>
    </message>
    <message>
        <source>With the fan the pressure at outdoor tap {tap} moves by {moved} Pa, at the others by {others}: its hose lies in the jet of the fan. Move it to the side.</source>
        <translation>Mit dem Gebläse bewegt sich der Druck an der Außenmessstelle {tap} um {moved} Pa, an den anderen um {others}: Ihr Schlauch liegt im Strahl des Gebläses. Legen Sie ihn zur Seite.</translation>
    </message>
    <message>
        <source>The flow element reads backwards: its hose is on the wrong side of the gauge, or the fan is turned.</source>
        <translation>Die Messblende misst verkehrt: Ihr Schlauch sitzt auf der falschen Seite des Messgeräts, oder das Gebläse ist verdreht.</translation>
    </message>
    <message>
        <source>The flow element reads {value} Pa with the fan at rest: water in its hose, or the gauge wants zeroing.</source>
        <translation>Die Messblende zeigt {value} Pa bei stehendem Gebläse: Wasser im Schlauch, oder das Messgerät braucht einen Nullabgleich.</translation>
    </message>
    <message>
        <source>The hoses of envelope pressure and flow element are swapped.</source>
        <translation>Die Schläuche von Druckdifferenz und Messblende sind vertauscht.</translation>
    </message>
    <message>
        <source>The pressure at outdoor tap {tap} does not move with the others: its hose is off or blocked.</source>
        <translation>Der Druck an der Außenmessstelle {tap} bewegt sich nicht mit den anderen: Ihr Schlauch ist ab oder verstopft.</translation>
    </message>
    <message>
        <source>The flow element answers too slowly: its hose is pinched, or water is in it.</source>
        <translation>Die Messblende antwortet zu langsam: Ihr Schlauch ist geknickt, oder Wasser ist darin.</translation>
    </message>
    <message>
        <source>The envelope pressure answers too slowly: its hose is pinched, as in a door.</source>
        <translation>Die Druckdifferenz antwortet zu langsam: Ihr Schlauch ist geknickt, etwa in einer Tür.</translation>
    </message>
    <message>
        <source>It stands at {now}, the target is {target}.</source>
        <translation>Er steht bei {now}, das Ziel ist {target}.</translation>
    </message>
    <message>
        <source>Then look at cable and battery of the gauge.</source>
        <translation>Sehen Sie dann nach Kabel und Batterie des Messgeräts.</translation>
    </message>
    <message>
        <source>Then look at gauge and hose.</source>
        <translation>Sehen Sie dann nach Messgerät und Schlauch.</translation>
    </message>
    <message>
        <source>Then look whether hoses or fan are turned round.</source>
        <translation>Sehen Sie dann nach, ob Schläuche oder Gebläse verdreht sind.</translation>
    </message>
    <message>
        <source>Then look whether a hose is off or a door is open.</source>
        <translation>Sehen Sie dann nach, ob ein Schlauch ab oder eine Tür offen ist.</translation>
    </message>
    <message>
        <source>Waiting for the gauge. Do not change the speed; the target is {target}.</source>
        <translation>Warten auf das Messgerät. Drehzahl nicht ändern; das Ziel ist {target}.</translation>
    </message>
    <message>
        <source>Turn the fan down now. {found}.</source>
        <translation>Drehen Sie das Gebläse jetzt herunter. {found}.</translation>
    </message>
    <message>
        <source>The leakage left the line of the points before, by {change} m³/h at {pressure} Pa: {what}.</source>
        <translation>Die Leckage verließ die Linie der Punkte davor, um {change} m³/h bei {pressure} Pa: {what}.</translation>
    </message>
    <message>
        <source>a door, a window or a seal</source>
        <translation>eine Tür, ein Fenster oder eine Abklebung</translation>
    </message>
    <message>
        <source>something was closed, or a hose is at fault</source>
        <translation>etwas wurde geschlossen, oder ein Schlauch ist schuld</translation>
    </message>
    <message>
        <source>Look at the seals, doors and windows.</source>
        <translation>Sehen Sie nach Abklebungen, Türen und Fenstern.</translation>
    </message>
    <message>
        <source>Look what was closed, and at the hoses.</source>
        <translation>Sehen Sie nach, was geschlossen wurde, und nach den Schläuchen.</translation>
    </message>
    <message>
        <source>{seen}: a gust, or the outdoor hose: moved, wet, in the wind or in the fan&apos;s jet.</source>
        <translation>{seen}: eine Böe, oder der Außenschlauch: bewegt, nass, im Wind oder im Strahl des Gebläses.</translation>
    </message>
    <message>
        <source>{seen}: look at the hose of the flow element, and whether the flow range is the one entered.</source>
        <translation>{seen}: Sehen Sie nach dem Schlauch der Messblende, und ob der Messbereich der eingetragene ist.</translation>
    </message>
    <message>
        <source>{seen}: a door, a window or a seal let go. Look.</source>
        <translation>{seen}: Eine Tür, ein Fenster oder eine Abklebung gab nach. Sehen Sie nach.</translation>
    </message>
    <message>
        <source>{seen}: a door or window fell shut, or a leak closed.</source>
        <translation>{seen}: Eine Tür oder ein Fenster fiel zu, oder eine Leckage schloss sich.</translation>
    </message>
    <message>
        <source>{seen}: something lies before the fan, or it turns slower.</source>
        <translation>{seen}: Etwas liegt vor dem Gebläse, oder es dreht langsamer.</translation>
    </message>
    <message>
        <source>{seen}: the fan turns faster or was cleared.</source>
        <translation>{seen}: Das Gebläse dreht schneller, oder wurde freigeräumt.</translation>
    </message>
    <message>
        <source>With the fan held the pressure changed by {change} Pa and the flow by {share} %</source>
        <translation>Bei gehaltenem Gebläse änderte sich der Druck um {change} Pa und der Volumenstrom um {share} %</translation>
    </message>
    <message>
        <source>{channel}: noise {noise}.</source>
        <translation>{channel}: Rauschen {noise}.</translation>
    </message>
    <message>
        <source>{name}: {rate} readings a second.</source>
        <translation>{name}: {rate} Messwerte je Sekunde.</translation>
    </message>
    <message>
        <source>Invented data</source>
        <translation>Erfundene Daten</translation>
    </message>
    <message>
        <source>With an attached garage.</source>
        <translation>Mit angebauter Garage.</translation>
    </message>
    <message>
        <source>depressurize and pressurize</source>
        <translation>Unterdruck und Überdruck</translation>
    </message>
    <message>
        <source>weighted line of organic correlation</source>
        <translation>gewichtete Linie der organischen Korrelation</translation>
    </message>
    <message>
        <source>generalized least squares with a common zero-flow error</source>
        <translation>verallgemeinerte kleinste Quadrate mit gemeinsamem Nullfehler</translation>
    </message>
    <message>
        <source>assumed flow exponent of 0.65</source>
        <translation>angenommener Strömungsexponent 0,65</translation>
    </message>
    <message>
        <source>{method} puts {symbol} in front; it needs the envelope area, which is not stated.</source>
        <translation>{method} stellt {symbol} voran; dafür fehlt die Hüllfläche.</translation>
    </message>
    <message>
        <source>q50, flow at 50 Pa, {unit}</source>
        <translation>q50, Volumenstrom bei 50 Pa, {unit}</translation>
    </message>
    <message>
        <source>n50, air changes per hour at 50 Pa, {unit}</source>
        <translation>n50, Luftwechselrate bei 50 Pa, {unit}</translation>
    </message>
    <message>
        <source>qE50, flow at 50 Pa per envelope area, {unit}</source>
        <translation>qE50, Volumenstrom bei 50 Pa je Hüllfläche, {unit}</translation>
    </message>
    <message>
        <source>qF50, flow at 50 Pa per floor area, {unit}</source>
        <translation>qF50, Volumenstrom bei 50 Pa je Grundfläche, {unit}</translation>
    </message>
    <message>
        <source>qE75, flow at 75 Pa per envelope area, {unit}</source>
        <translation>qE75, Volumenstrom bei 75 Pa je Hüllfläche, {unit}</translation>
    </message>
    <message>
        <source>qE4, flow at 4 Pa per envelope area, {unit}</source>
        <translation>qE4, Volumenstrom bei 4 Pa je Hüllfläche, {unit}</translation>
    </message>
    <message>
        <source>extrapolated: outside the pressures that were measured</source>
        <translation>extrapoliert: außerhalb der gemessenen Drücke</translation>
    </message>
    <message>
        <source>Effective leakage area at 4 Pa, Cd 1, {unit}</source>
        <translation>Wirksame Leckagefläche bei 4 Pa, Cd 1, {unit}</translation>
    </message>
    <message>
        <source>Equivalent leakage area at 10 Pa, Cd 0.611, {unit}</source>
        <translation>Äquivalente Leckagefläche bei 10 Pa, Cd 0,611, {unit}</translation>
    </message>
    <message>
        <source>Leakage coefficient, air of the test, {unit}</source>
        <translation>Leckagekoeffizient, Luft der Messung, {unit}</translation>
    </message>
    <message>
        <source>Leakage coefficient, reference air, {unit}</source>
        <translation>Leckagekoeffizient, Bezugsluft, {unit}</translation>
    </message>
    <message>
        <source>Flow exponent</source>
        <translation>Strömungsexponent</translation>
    </message>
    <message>
        <source>Probability of meeting it</source>
        <translation>Wahrscheinlichkeit, ihn einzuhalten</translation>
    </message>
    <message>
        <source>An adopted edition, amendments and the local authority decide which limit counts.</source>
        <translation>Welcher Grenzwert gilt, bestimmen eingeführte Ausgabe, Änderungen und örtliche Behörde.</translation>
    </message>
    <message>
        <source>Estimates by named models with their bands, not measured; none of them belongs on a certificate.</source>
        <translation>Schätzungen nach benannten Modellen mit ihren Bändern, nicht gemessen; keine gehört auf ein Zertifikat.</translation>
    </message>
    <message>
        <source>Points is empty: paste or type the points of one direction at least.</source>
        <translation>Keine Punkte: Fügen Sie die Punkte mindestens einer Richtung ein.</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>95-%-Intervall</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>Höchstens</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>Test {number}, {day}, {stage}</source>
        <translation>Messung {number}, {day}, {stage}</translation>
    </message>
    <message>
        <source>no stage</source>
        <translation>ohne Bauphase</translation>
    </message>
    <message>
        <source>{field} is {shown}: {allowed}</source>
        <translation>{field} ist {shown}: {allowed}</translation>
    </message>
    <message>
        <source>{name} is not connected yet: {port} has not been opened.</source>
        <translation>{name} ist noch nicht verbunden: {port} ist nicht geöffnet.</translation>
    </message>
    <message>
        <source>{name}: the operating system does not come back from {port}. Unplug it.</source>
        <translation>{name}: Das Betriebssystem kommt von {port} nicht zurück. Ziehen Sie den Stecker.</translation>
    </message>
    <message>
        <source>The link to {name} failed by a fault of the program ({fault}).</source>
        <translation>Die Verbindung zu {name} scheiterte an einem Fehler des Programms ({fault}).</translation>
    </message>
    <message>
        <source>The link to {name} ended by a fault of the program ({kind}: {error}).</source>
        <translation>Die Verbindung zu {name} endete durch einen Fehler des Programms ({kind}: {error}).</translation>
    </message>
    <message>
        <source>The link to {name} on {port} is closed.</source>
        <translation>Die Verbindung zu {name} an {port} ist geschlossen.</translation>
    </message>
    <message>
        <source>{port} is being opened.</source>
        <translation>{port} wird geöffnet.</translation>
    </message>
    <message>
        <source>{port} is open; {name} gets a moment to be ready.</source>
        <translation>{port} ist offen; {name} bekommt einen Augenblick, um bereit zu sein.</translation>
    </message>
    <message>
        <source>{name} on {port} sends without being asked and does not stop.</source>
        <translation>{name} an {port} sendet ungefragt und hört nicht auf.</translation>
    </message>
    <message>
        <source>{name} on {port} is asked who it is.</source>
        <translation>{name} an {port} wird gefragt, wer es ist.</translation>
    </message>
    <message>
        <source>{name} on {port} sends replies that make no sense.</source>
        <translation>{name} an {port} sendet Antworten ohne Sinn.</translation>
    </message>
    <message>
        <source>{name} on {port} does not answer.</source>
        <translation>{name} an {port} antwortet nicht.</translation>
    </message>
    <message>
        <source>{name} on {port} has gone silent.</source>
        <translation>{name} an {port} ist verstummt.</translation>
    </message>
    <message>
        <source>{name} on {port}: another kind of instrument answers: &quot;{line}&quot;.</source>
        <translation>{name} an {port}: Ein Gerät anderer Art antwortet: „{line}“.</translation>
    </message>
    <message>
        <source>{name} on {port}: number {serial} answers, expected was {expected}.</source>
        <translation>{name} an {port}: Nummer {serial} antwortet, erwartet war {expected}.</translation>
    </message>
    <message>
        <source>another kind of instrument answers: &quot;{line}&quot;</source>
        <translation>ein Gerät anderer Art antwortet: „{line}“</translation>
    </message>
    <message>
        <source>number {serial} answers, expected was {expected}</source>
        <translation>Nummer {serial} antwortet, erwartet war {expected}</translation>
    </message>
    <message>
        <source>Instrument {name} at {port}: {sentence}</source>
        <translation>Gerät {name} an {port}: {sentence}</translation>
    </message>
    <message>
        <source>it does not answer (state: {state})</source>
        <translation>es antwortet nicht (Zustand: {state})</translation>
    </message>
    <message>
        <source>{port} is not open.</source>
        <translation>{port} ist nicht offen.</translation>
    </message>
    <message>
        <source>{port} went away while it was read.</source>
        <translation>{port} verschwand beim Lesen.</translation>
    </message>
    <message>
        <source>{port} went away while it was read ({reason}).</source>
        <translation>{port} verschwand beim Lesen ({reason}).</translation>
    </message>
    <message>
        <source>{port} went away while it was written to.</source>
        <translation>{port} verschwand beim Schreiben.</translation>
    </message>
    <message>
        <source>{port} went away while it was written to ({reason}).</source>
        <translation>{port} verschwand beim Schreiben ({reason}).</translation>
    </message>
    <message>
        <source>{port} does not take the bytes.</source>
        <translation>{port} nimmt die Bytes nicht an.</translation>
    </message>
    <message>
        <source>{port} does not open.</source>
        <translation>{port} lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>{port} does not open ({reason}).</source>
        <translation>{port} lässt sich nicht öffnen ({reason}).</translation>
    </message>
    <message>
        <source>{port} may not be opened by this user.</source>
        <translation>Dieser Benutzer darf {port} nicht öffnen.</translation>
    </message>
    <message>
        <source>{port} may not be opened by this user: only its owner may (group {group}); whoever looks after this computer has to allow it.</source>
        <translation>Dieser Benutzer darf {port} nicht öffnen: Nur der Besitzer darf es (Gruppe {group}); wer diesen Rechner betreut, muss es erlauben.</translation>
    </message>
    <message>
        <source>{port} may not be opened by this user: it belongs to the group {group}. Run `{command}`, then log out and in.</source>
        <translation>Dieser Benutzer darf {port} nicht öffnen: Er gehört der Gruppe {group}. Führen Sie `{command}` aus, melden Sie sich dann ab und wieder an.</translation>
    </message>
    <message>
        <source>{port} is not there: adapter unplugged, or another name.</source>
        <translation>{port} ist nicht da: Adapter abgezogen, oder ein anderer Name.</translation>
    </message>
    <message>
        <source>{port} is no serial port.</source>
        <translation>{port} ist kein serieller Anschluss.</translation>
    </message>
    <message>
        <source>{port} is no port address: a name such as COM3 or /dev/ttyUSB0, or socket://HOST:PORT.</source>
        <translation>{port} ist keine Adresse eines Anschlusses: ein Name wie COM3 oder /dev/ttyUSB0, oder socket://HOST:PORT.</translation>
    </message>
    <message>
        <source>{port} does not answer: nothing listens there, or the address is wrong.</source>
        <translation>{port} antwortet nicht: Dort hört niemand zu, oder die Adresse ist falsch.</translation>
    </message>
    <message>
        <source>{port} is in use by another program, or was only just released.</source>
        <translation>{port} wird von einem anderen Programm benutzt, oder wurde eben erst freigegeben.</translation>
    </message>
    <message>
        <source>The ports could not be listed just now ({reason}); try again.</source>
        <translation>Die Anschlüsse ließen sich eben nicht auflisten ({reason}); versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>There is no serial port on this machine.</source>
        <translation>An diesem Rechner gibt es keinen seriellen Anschluss.</translation>
    </message>
    <message>
        <source>There is no serial port on this machine. {advice}</source>
        <translation>An diesem Rechner gibt es keinen seriellen Anschluss. {advice}</translation>
    </message>
    <message>
        <source>If an adapter is plugged in, `journalctl -k -n 20` tells what the system sees; try another cable.</source>
        <translation>Ist ein Adapter angesteckt, zeigt `journalctl -k -n 20`, was das System sieht; versuchen Sie ein anderes Kabel.</translation>
    </message>
    <message>
        <source>If an adapter is plugged in, look under USB in the System Report; its driver may have to be allowed.</source>
        <translation>Ist ein Adapter angesteckt, sehen Sie im Systembericht unter USB nach; sein Treiber muss vielleicht erlaubt werden.</translation>
    </message>
    <message>
        <source>If an adapter is plugged in, the Device Manager shows it with a warning when its driver is missing; Windows Update fetches it, which needs a network.</source>
        <translation>Ist ein Adapter angesteckt, zeigt ihn der Geräte-Manager mit einer Warnung, wenn sein Treiber fehlt; Windows Update holt ihn, wozu ein Netz nötig ist.</translation>
    </message>
    <message>
        <source>The adapter that was {old} is now {new}.</source>
        <translation>Der Adapter, der {old} war, ist jetzt {new}.</translation>
    </message>
    <message>
        <source>{port} appeared and vanished again. {advice}</source>
        <translation>{port} erschien und verschwand wieder. {advice}</translation>
    </message>
    <message>
        <source>Try another cable and another socket, without a hub.</source>
        <translation>Versuchen Sie ein anderes Kabel und eine andere Buchse, ohne Verteiler.</translation>
    </message>
    <message>
        <source>On some systems the service for Braille displays takes the adapter: `journalctl -k -g brltty` shows it. Whoever looks after this computer can except the adapter there; people who read Braille need the service. Else try another cable.</source>
        <translation>Auf manchen Systemen nimmt der Dienst für Braillezeilen den Adapter: `journalctl -k -g brltty` zeigt es. Wer diesen Rechner betreut, kann den Adapter dort ausnehmen; wer Braille liest, braucht den Dienst. Sonst versuchen Sie ein anderes Kabel.</translation>
    </message>
    <message>
        <source>On some systems the service for Braille displays takes the adapter for {usb}: `journalctl -k -g brltty` shows it. Whoever looks after this computer can except the adapter there; people who read Braille need the service. Else try another cable.</source>
        <translation>Auf manchen Systemen nimmt der Dienst für Braillezeilen den Adapter {usb}: `journalctl -k -g brltty` zeigt es. Wer diesen Rechner betreut, kann den Adapter dort ausnehmen; wer Braille liest, braucht den Dienst. Sonst versuchen Sie ein anderes Kabel.</translation>
    </message>
    <message>
        <source>Nobody whom a profile knows answers. Is it switched on, and is there a profile for it?</source>
        <translation>Niemand antwortet, den ein Profil kennt. Ist es eingeschaltet, und gibt es ein Profil dafür?</translation>
    </message>
    <message>
        <source>It says “{line}”, which no profile knows.</source>
        <translation>Es sagt „{line}“, was kein Profil kennt.</translation>
    </message>
    <message>
        <source>{name}: many damaged messages on {port}. Look at speed and cable; or another program reads the same port.</source>
        <translation>{name}: viele beschädigte Nachrichten an {port}. Sehen Sie nach Geschwindigkeit und Kabel; oder ein anderes Programm liest denselben Anschluss.</translation>
    </message>
    <message>
        <source>The fan drive has not confirmed its communication time-out: stay at its switch.</source>
        <translation>Der Gebläseantrieb hat seine Zeitüberwachung nicht bestätigt: Bleiben Sie an seinem Schalter.</translation>
    </message>
    <message>
        <source>The fan drive does not turn to {direction}.</source>
        <translation>Der Gebläseantrieb dreht nicht auf {direction}.</translation>
    </message>
    <message>
        <source>none: this fan is turned by hand</source>
        <translation>keine: dieses Gebläse wird von Hand gedreht</translation>
    </message>
    <message>
        <source>{file}, line {line}: a table with commas is needed ({reason}).</source>
        <translation>{file}, Zeile {line}: Eine Tabelle mit Kommas ist nötig ({reason}).</translation>
    </message>
    <message>
        <source>{file}: there are no rows below the heading.</source>
        <translation>{file}: Unter der Kopfzeile stehen keine Zeilen.</translation>
    </message>
    <message>
        <source>{file}, row {row}: {column}: it goes back, from {from_s} to {to_s}.</source>
        <translation>{file}, Zeile {row}: {column}: Sie läuft zurück, von {from_s} auf {to_s}.</translation>
    </message>
    <message>
        <source>{file}: at most {count} rows a second can be played.</source>
        <translation>{file}: Höchstens {count} Zeilen in der Sekunde können abgespielt werden.</translation>
    </message>
    <message>
        <source>{file}, line 1: the heading needs {columns}; it reads “{heading}”.</source>
        <translation>{file}, Zeile 1: Die Kopfzeile braucht {columns}; sie lautet „{heading}“.</translation>
    </message>
    <message>
        <source>{time}, then channels of {names}, each once</source>
        <translation>{time}, dann Kanäle aus {names}, jeder einmal</translation>
    </message>
    <message>
        <source>{where}: {count} cells are needed, there are {found}.</source>
        <translation>{where}: {count} Zellen sind nötig, da sind {found}.</translation>
    </message>
    <message>
        <source>{where}: {column}: a number is needed, not “{text}”.</source>
        <translation>{where}: {column}: Eine Zahl ist nötig, nicht „{text}“.</translation>
    </message>
    <message>
        <source>{file}: a file of readings has at most {size} MB.</source>
        <translation>{file}: Eine Datei mit Messwerten hat höchstens {size} MB.</translation>
    </message>
    <message>
        <source>{file}: the recorded readings cannot be read ({reason}).</source>
        <translation>{file}: Die aufgezeichneten Messwerte können nicht gelesen werden ({reason}).</translation>
    </message>
    <message>
        <source>no text in UTF-8</source>
        <translation>kein Text in UTF-8</translation>
    </message>
    <message>
        <source>channel is {channel}: one of these is needed: {names}</source>
        <translation>Kanal ist {channel}: eines von diesen ist nötig: {names}</translation>
    </message>
    <message>
        <source>{channel} is {value}: a number is needed</source>
        <translation>{channel} ist {value}: eine Zahl ist nötig</translation>
    </message>
    <message>
        <source>{name}: each value is the mean of {seconds} s.</source>
        <translation>{name}: Jeder Wert ist das Mittel über {seconds} s.</translation>
    </message>
    <message>
        <source>{name}: {bad} damaged messages of {count}.</source>
        <translation>{name}: {bad} von {count} Nachrichten beschädigt.</translation>
    </message>
    <message>
        <source>{name} was lost and found again {often}.</source>
        <translation>{name} ging verloren und wurde wiedergefunden: {often}.</translation>
    </message>
    <message>
        <source>1 time</source>
        <translation>1-mal</translation>
    </message>
    <message>
        <source>{count} times</source>
        <translation>{count}-mal</translation>
    </message>
    <message>
        <source>{name} has read {value} for {seconds} s: it may hang, or its hose is covered.</source>
        <translation>{name} zeigt seit {seconds} s {value}: Es hängt vielleicht, oder sein Schlauch ist verdeckt.</translation>
    </message>
    <message>
        <source>{name}: {lost} lost.</source>
        <translation>{name}: {lost} verloren.</translation>
    </message>
    <message>
        <source>{name}: {gaps}, the longest {seconds} s.</source>
        <translation>{name}: {gaps}, die längste {seconds} s.</translation>
    </message>
    <message>
        <source>{name}: {lost} lost, {gaps}, the longest {seconds} s.</source>
        <translation>{name}: {lost} verloren, {gaps}, die längste {seconds} s.</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 Messwert</translation>
    </message>
    <message>
        <source>{count} readings</source>
        <translation>{count} Messwerte</translation>
    </message>
    <message>
        <source>1 gap</source>
        <translation>1 Lücke</translation>
    </message>
    <message>
        <source>{count} gaps</source>
        <translation>{count} Lücken</translation>
    </message>
    <message>
        <source>{name}: {rate} readings a second, {expected} are expected.</source>
        <translation>{name}: {rate} Messwerte in der Sekunde, erwartet sind {expected}.</translation>
    </message>
    <message>
        <source>{name}: the zero moved by {drift} Pa in {minutes} min.</source>
        <translation>{name}: Der Nullpunkt wanderte um {drift} Pa in {minutes} min.</translation>
    </message>
    <message>
        <source>Zero it again.</source>
        <translation>Nullen Sie es erneut.</translation>
    </message>
    <message>
        <source>{name}: battery {share}.</source>
        <translation>{name}: Batterie {share}.</translation>
    </message>
    <message>
        <source>Charge it soon.</source>
        <translation>Laden Sie sie bald.</translation>
    </message>
    <message>
        <source>It will not last a test.</source>
        <translation>Sie reicht nicht für eine Messung.</translation>
    </message>
    <message>
        <source>All {count} lines are read.</source>
        <translation>Alle {count} Zeilen werden gelesen.</translation>
    </message>
    <message>
        <source>The line is read.</source>
        <translation>Die Zeile wird gelesen.</translation>
    </message>
    <message>
        <source>{read} of {count} lines are read; the others look different and will be passed over.</source>
        <translation>{read} von {count} Zeilen werden gelesen; die anderen sehen anders aus und werden übergangen.</translation>
    </message>
    <message>
        <source>{port} is not listened to yet.</source>
        <translation>{port} wird noch nicht zugehört.</translation>
    </message>
    <message>
        <source>Listening at {settings}.</source>
        <translation>Es wird zugehört mit {settings}.</translation>
    </message>
    <message>
        <source>Nothing came from {port}. Is it switched on, does it send by itself, or has it to be asked?</source>
        <translation>Von {port} kam nichts. Ist es eingeschaltet, sendet es von selbst, oder muss es gefragt werden?</translation>
    </message>
    <message>
        <source>Bytes came from {port}, but nothing regular: it may not speak in lines of text, or the cable is bad.</source>
        <translation>Von {port} kamen Bytes, aber nichts Regelmäßiges: Es spricht vielleicht nicht in Textzeilen, oder das Kabel ist schlecht.</translation>
    </message>
    <message>
        <source>Regular lines at {settings}, {rate} a second.</source>
        <translation>Regelmäßige Zeilen mit {settings}, {rate} in der Sekunde.</translation>
    </message>
    <message>
        <source>{found} were read from unit {unit}.</source>
        <translation>{found} wurden von Teilnehmer {unit} gelesen.</translation>
    </message>
    <message>
        <source>{count} input registers</source>
        <translation>{count} Eingangsregister</translation>
    </message>
    <message>
        <source>{count} holding registers</source>
        <translation>{count} Halteregister</translation>
    </message>
    <message>
        <source>{port} is not read yet.</source>
        <translation>{port} wird noch nicht gelesen.</translation>
    </message>
    <message>
        <source>Nobody answers on {port} as unit {unit}: look at speed, parity, the unit&apos;s number and the two wires.</source>
        <translation>An {port} antwortet niemand als Teilnehmer {unit}: Sehen Sie nach Geschwindigkeit, Parität, Teilnehmernummer und den beiden Drähten.</translation>
    </message>
    <message>
        <source>it is missing</source>
        <translation>es fehlt</translation>
    </message>
    <message>
        <source>not {value}</source>
        <translation>nicht {value}</translation>
    </message>
    <message>
        <source>a number too long to print</source>
        <translation>eine Zahl, zu lang zum Zeigen</translation>
    </message>
    <message>
        <source>a text in quotes is needed, {shown}</source>
        <translation>ein Text in Anführungszeichen ist nötig, {shown}</translation>
    </message>
    <message>
        <source>a list of texts is needed, {shown}</source>
        <translation>eine Liste von Texten ist nötig, {shown}</translation>
    </message>
    <message>
        <source>true or false is needed, {shown}</source>
        <translation>wahr oder falsch ist nötig, {shown}</translation>
    </message>
    <message>
        <source>a number is needed, {shown}</source>
        <translation>eine Zahl ist nötig, {shown}</translation>
    </message>
    <message>
        <source>a number {bounds} is needed, {shown}</source>
        <translation>eine Zahl {bounds} ist nötig, {shown}</translation>
    </message>
    <message>
        <source>a whole number is needed, {shown}</source>
        <translation>eine ganze Zahl ist nötig, {shown}</translation>
    </message>
    <message>
        <source>a whole number {bounds} is needed, {shown}</source>
        <translation>eine ganze Zahl {bounds} ist nötig, {shown}</translation>
    </message>
    <message>
        <source>greater than {low}</source>
        <translation>größer als {low}</translation>
    </message>
    <message>
        <source>at least {low}</source>
        <translation>mindestens {low}</translation>
    </message>
    <message>
        <source>at most {high}</source>
        <translation>höchstens {high}</translation>
    </message>
    <message>
        <source>one of these is needed: {names}; {shown}</source>
        <translation>eines von diesen ist nötig: {names}; {shown}</translation>
    </message>
    <message>
        <source>a regular expression is needed ({reason})</source>
        <translation>ein regulärer Ausdruck ist nötig ({reason})</translation>
    </message>
    <message>
        <source>the group (?P&lt;{group}&gt;...) is missing</source>
        <translation>die Gruppe (?P&lt;{group}&gt;...) fehlt</translation>
    </message>
    <message>
        <source>a table [{header}] is needed</source>
        <translation>eine Tabelle [{header}] ist nötig</translation>
    </message>
    <message>
        <source>unknown; the keys here are: {names}</source>
        <translation>unbekannt; die Schlüssel sind hier: {names}</translation>
    </message>
    <message>
        <source>brackets nested too deeply</source>
        <translation>Klammern zu tief geschachtelt</translation>
    </message>
    <message>
        <source>no such file; the shipped ones are: {names}</source>
        <translation>keine solche Datei; mitgeliefert sind: {names}</translation>
    </message>
    <message>
        <source>a text file in UTF-8 is needed</source>
        <translation>eine Textdatei in UTF-8 ist nötig</translation>
    </message>
    <message>
        <source>a gauge needs at least one [[channel]]</source>
        <translation>ein Messgerät braucht mindestens ein [[channel]]</translation>
    </message>
    <message>
        <source>a gauge has either a table [poll] or a table [stream]</source>
        <translation>ein Messgerät hat entweder eine Tabelle [poll] oder eine Tabelle [stream]</translation>
    </message>
    <message>
        <source>a Modbus gauge is polled: a table [poll] is needed</source>
        <translation>ein Modbus-Messgerät wird gefragt: eine Tabelle [poll] ist nötig</translation>
    </message>
    <message>
        <source>a poll reads registers: read holding FIRST COUNT or read input FIRST COUNT</source>
        <translation>eine Anfrage liest Register: read holding FIRST COUNT oder read input FIRST COUNT</translation>
    </message>
    <message>
        <source>PLACE TYPE is needed: a place among the {count} registers that are read, counted from 0, and one of {names}</source>
        <translation>PLACE TYPE ist nötig: eine Stelle unter den {count} gelesenen Registern, von 0 gezählt, und eines von {names}</translation>
    </message>
    <message>
        <source>at least two lines ({seconds} s) are needed</source>
        <translation>mindestens zwei Zeilen ({seconds} s) sind nötig</translation>
    </message>
    <message>
        <source>only a gauge with a table [stream] is kept alive: polls do that by themselves</source>
        <translation>nur ein Messgerät mit einer Tabelle [stream] wird wachgehalten: Anfragen tun das von selbst</translation>
    </message>
    <message>
        <source>the name {name} may occur only once</source>
        <translation>der Name {name} darf nur einmal vorkommen</translation>
    </message>
    <message>
        <source>only printable ASCII characters go over the wire; [link] terminator ends each message</source>
        <translation>nur druckbare ASCII-Zeichen gehen über die Leitung; [link] terminator beendet jede Nachricht</translation>
    </message>
    <message>
        <source>the channel {name} has to be there exactly once</source>
        <translation>der Kanal {name} muss genau einmal da sein</translation>
    </message>
    <message>
        <source>one of these is needed: read holding FIRST COUNT, read input FIRST COUNT, write REGISTER VALUE (0 to 65535), identify</source>
        <translation>eines von diesen ist nötig: read holding FIRST COUNT, read input FIRST COUNT, write REGISTER VALUE (0 bis 65535), identify</translation>
    </message>
    <message>
        <source>1 to {most} registers are read at once, numbered 0 to 65535</source>
        <translation>1 bis {most} Register werden auf einmal gelesen, mit Nummern von 0 bis 65535</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} bis {high}</translation>
    </message>
    <message>
        <source>Anywhere</source>
        <translation>Überall</translation>
    </message>
    <message>
        <source>California</source>
        <translation>Kalifornien</translation>
    </message>
    <message>
        <source>Canada</source>
        <translation>Kanada</translation>
    </message>
    <message>
        <source>England and Wales</source>
        <translation>England und Wales</translation>
    </message>
    <message>
        <source>France</source>
        <translation>Frankreich</translation>
    </message>
    <message>
        <source>Germany</source>
        <translation>Deutschland</translation>
    </message>
    <message>
        <source>Switzerland</source>
        <translation>Schweiz</translation>
    </message>
    <message>
        <source>United States</source>
        <translation>Vereinigte Staaten</translation>
    </message>
    <message>
        <source>IECC climate zone</source>
        <translation>Klimazone nach IECC</translation>
    </message>
    <message>
        <source>A state amendment (example)</source>
        <translation>Änderung eines Bundesstaats (Beispiel)</translation>
    </message>
    <message>
        <source>ASHRAE 90.1-2013 to 2019</source>
        <translation>ASHRAE 90.1-2013 bis 2019</translation>
    </message>
    <message>
        <source>California, multifamily units</source>
        <translation>Kalifornien, Wohnungen in Mehrfamilienhäusern</translation>
    </message>
    <message>
        <source>DIN 4108-7, large buildings</source>
        <translation>DIN 4108-7, große Gebäude</translation>
    </message>
    <message>
        <source>GEG § 26, large buildings with ventilation plant</source>
        <translation>GEG § 26, große Gebäude mit raumlufttechnischer Anlage</translation>
    </message>
    <message>
        <source>GEG § 26, large buildings without ventilation plant</source>
        <translation>GEG § 26, große Gebäude ohne raumlufttechnische Anlage</translation>
    </message>
    <message>
        <source>GEG § 26, with ventilation plant</source>
        <translation>GEG § 26, mit raumlufttechnischer Anlage</translation>
    </message>
    <message>
        <source>GEG § 26, without ventilation plant</source>
        <translation>GEG § 26, ohne raumlufttechnische Anlage</translation>
    </message>
    <message>
        <source>IECC 2009, dwellings</source>
        <translation>IECC 2009, Wohnungen</translation>
    </message>
    <message>
        <source>IECC 2012 to 2018, dwellings</source>
        <translation>IECC 2012 bis 2018, Wohnungen</translation>
    </message>
    <message>
        <source>IECC 2021, attached and small dwellings</source>
        <translation>IECC 2021, angebaute und kleine Wohnungen</translation>
    </message>
    <message>
        <source>IECC 2021, prescriptive path</source>
        <translation>IECC 2021, vorgeschriebener Weg</translation>
    </message>
    <message>
        <source>IECC 2021, upper limit of every path</source>
        <translation>IECC 2021, Obergrenze jedes Wegs</translation>
    </message>
    <message>
        <source>IECC 2021, upper limit of every path, per area</source>
        <translation>IECC 2021, Obergrenze jedes Wegs, je Fläche</translation>
    </message>
    <message>
        <source>IECC 2024, dwellings</source>
        <translation>IECC 2024, Wohnungen</translation>
    </message>
    <message>
        <source>IECC commercial 2012 to 2018</source>
        <translation>IECC Gewerbe 2012 bis 2018</translation>
    </message>
    <message>
        <source>IECC commercial 2021</source>
        <translation>IECC Gewerbe 2021</translation>
    </message>
    <message>
        <source>IECC commercial 2021, dwelling units</source>
        <translation>IECC Gewerbe 2021, Wohnungen</translation>
    </message>
    <message>
        <source>IECC commercial 2021, with a report on remedies</source>
        <translation>IECC Gewerbe 2021, mit Bericht über Abhilfe</translation>
    </message>
    <message>
        <source>IECC commercial 2024</source>
        <translation>IECC Gewerbe 2024</translation>
    </message>
    <message>
        <source>Minergie, new buildings</source>
        <translation>Minergie, Neubauten</translation>
    </message>
    <message>
        <source>Minergie, renovation</source>
        <translation>Minergie, Erneuerung</translation>
    </message>
    <message>
        <source>Minergie-P and Minergie-A</source>
        <translation>Minergie-P und Minergie-A</translation>
    </message>
    <message>
        <source>National Building Code, level 1</source>
        <translation>National Building Code, Stufe 1</translation>
    </message>
    <message>
        <source>National Building Code, level 2</source>
        <translation>National Building Code, Stufe 2</translation>
    </message>
    <message>
        <source>National Building Code, level 3</source>
        <translation>National Building Code, Stufe 3</translation>
    </message>
    <message>
        <source>National Building Code, level 4</source>
        <translation>National Building Code, Stufe 4</translation>
    </message>
    <message>
        <source>National Building Code, level 5</source>
        <translation>National Building Code, Stufe 5</translation>
    </message>
    <message>
        <source>Part L, new dwellings</source>
        <translation>Part L, neue Wohnungen</translation>
    </message>
    <message>
        <source>Part L, new dwellings, former limit</source>
        <translation>Part L, neue Wohnungen, früherer Grenzwert</translation>
    </message>
    <message>
        <source>Part L, new dwellings, tested at 4 Pa</source>
        <translation>Part L, neue Wohnungen, bei 4 Pa gemessen</translation>
    </message>
    <message>
        <source>Passive House</source>
        <translation>Passivhaus</translation>
    </message>
    <message>
        <source>Phius, envelope</source>
        <translation>Phius, Hülle</translation>
    </message>
    <message>
        <source>Phius, tall buildings</source>
        <translation>Phius, hohe Gebäude</translation>
    </message>
    <message>
        <source>R-2000, per area</source>
        <translation>R-2000, je Fläche</translation>
    </message>
    <message>
        <source>RE2020, collective housing</source>
        <translation>RE2020, Mehrfamilienhaus</translation>
    </message>
    <message>
        <source>RE2020, single house</source>
        <translation>RE2020, Einfamilienhaus</translation>
    </message>
    <message>
        <source>US Army, new buildings and large renovations</source>
        <translation>US Army, Neubauten und große Erneuerungen</translation>
    </message>
    <message>
        <source>US Army, proposed future level</source>
        <translation>US Army, vorgeschlagene künftige Stufe</translation>
    </message>
    <message>
        <source>an older edition</source>
        <translation>eine ältere Ausgabe</translation>
    </message>
    <message>
        <source>as amended by one state</source>
        <translation>wie von einem Bundesstaat geändert</translation>
    </message>
    <message>
        <source>before 2021</source>
        <translation>vor 2021</translation>
    </message>
    <message>
        <source>not recalled</source>
        <translation>nicht erinnert</translation>
    </message>
    <message>
        <source>proposal</source>
        <translation>Vorschlag</translation>
    </message>
    <message>
        <source>air volume above 1500 m3; each of over- and under-pressure has to meet it</source>
        <translation>Luftvolumen über 1500 m3; Über- und Unterdruck müssen ihn jeder für sich einhalten</translation>
    </message>
    <message>
        <source>air volume up to 1500 m3; each of over- and under-pressure has to meet it</source>
        <translation>Luftvolumen bis 1500 m3; Über- und Unterdruck müssen ihn jeder für sich einhalten</translation>
    </message>
    <message>
        <source>attached or multifamily units, and buildings of up to 1500 ft2</source>
        <translation>angebaute oder Mehrfamilien-Wohnungen, und Gebäude bis 1500 ft2</translation>
    </message>
    <message>
        <source>buildings other than low houses</source>
        <translation>andere Gebäude als niedrige Wohnhäuser</translation>
    </message>
    <message>
        <source>buildings other than low houses; 2019 allows tests of parts</source>
        <translation>andere Gebäude als niedrige Wohnhäuser; 2019 erlaubt Messungen von Teilen</translation>
    </message>
    <message>
        <source>collective housing; per area of loss surfaces without the lowest floor: enter that as envelope area</source>
        <translation>Mehrfamilienhaus; je Fläche der Verlustflächen ohne untersten Boden: diese als Hüllfläche eingeben</translation>
    </message>
    <message>
        <source>commercial buildings above 0.40 whose leaks were looked for, sealed and reported</source>
        <translation>Gewerbebauten über 0,40, deren Leckagen gesucht, abgedichtet und berichtet wurden</translation>
    </message>
    <message>
        <source>commercial buildings</source>
        <translation>Gewerbebauten</translation>
    </message>
    <message>
        <source>commercial buildings, optional whole-building test</source>
        <translation>Gewerbebauten, freiwillige Messung des ganzen Gebäudes</translation>
    </message>
    <message>
        <source>detached dwellings, airtightness level 1; any one of air changes, NLA10 and NLR50</source>
        <translation>freistehende Häuser, Dichtheitsstufe 1; eines von Luftwechsel, NLA10 und NLR50</translation>
    </message>
    <message>
        <source>detached dwellings, airtightness level 2; any one of air changes, NLA10 and NLR50</source>
        <translation>freistehende Häuser, Dichtheitsstufe 2; eines von Luftwechsel, NLA10 und NLR50</translation>
    </message>
    <message>
        <source>detached dwellings, airtightness level 3; any one of air changes, NLA10 and NLR50</source>
        <translation>freistehende Häuser, Dichtheitsstufe 3; eines von Luftwechsel, NLA10 und NLR50</translation>
    </message>
    <message>
        <source>detached dwellings, airtightness level 4; any one of air changes, NLA10 and NLR50</source>
        <translation>freistehende Häuser, Dichtheitsstufe 4; eines von Luftwechsel, NLA10 und NLR50</translation>
    </message>
    <message>
        <source>detached dwellings, airtightness level 5; any one of air changes, NLA10 and NLR50</source>
        <translation>freistehende Häuser, Dichtheitsstufe 5; eines von Luftwechsel, NLA10 und NLR50</translation>
    </message>
    <message>
        <source>dwelling and sleeping units</source>
        <translation>Wohn- und Schlafeinheiten</translation>
    </message>
    <message>
        <source>dwellings in that state; ask the local authority</source>
        <translation>Wohnungen in diesem Bundesstaat; fragen Sie die örtliche Behörde</translation>
    </message>
    <message>
        <source>dwellings under the former edition</source>
        <translation>Wohnungen nach der früheren Ausgabe</translation>
    </message>
    <message>
        <source>dwellings</source>
        <translation>Wohnungen</translation>
    </message>
    <message>
        <source>dwellings, whatever path is chosen</source>
        <translation>Wohnungen, gleich welcher Weg gewählt ist</translation>
    </message>
    <message>
        <source>dwellings, whatever path is chosen; the limit per area may stand in its place</source>
        <translation>Wohnungen, gleich welcher Weg gewählt ist; der Grenzwert je Fläche darf an seiner Stelle stehen</translation>
    </message>
    <message>
        <source>dwellings; NLA10 may stand in its place</source>
        <translation>Wohnungen; NLA10 darf an seiner Stelle stehen</translation>
    </message>
    <message>
        <source>dwellings; air changes may stand in its place</source>
        <translation>Wohnungen; der Luftwechsel darf an seiner Stelle stehen</translation>
    </message>
    <message>
        <source>dwellings; limits per area exist beside it and are not in this list</source>
        <translation>Wohnungen; daneben gibt es Grenzwerte je Fläche, die nicht in dieser Liste stehen</translation>
    </message>
    <message>
        <source>dwellings; visual inspection may stand in its place</source>
        <translation>Wohnungen; eine Besichtigung darf an seiner Stelle stehen</translation>
    </message>
    <message>
        <source>every new dwelling is tested</source>
        <translation>jede neue Wohnung wird gemessen</translation>
    </message>
    <message>
        <source>for tests that were made at 4 Pa only; a value carried from one pressure to the other is no test result</source>
        <translation>nur für Messungen bei 4 Pa; ein von einem Druck auf den anderen übertragener Wert ist kein Messergebnis</translation>
    </message>
    <message>
        <source>large buildings, as a value to comply with under consideration</source>
        <translation>große Gebäude, als einzuhaltender Wert in Erwägung</translation>
    </message>
    <message>
        <source>large buildings, recommended</source>
        <translation>große Gebäude, empfohlen</translation>
    </message>
    <message>
        <source>multifamily dwelling units; the boundary includes walls and floors between units</source>
        <translation>Wohnungen in Mehrfamilienhäusern; zur Grenze gehören Wände und Decken zwischen den Wohnungen</translation>
    </message>
    <message>
        <source>new buildings</source>
        <translation>Neubauten</translation>
    </message>
    <message>
        <source>new buildings, and renovations of 25 % of the replacement cost or more; later cycles may be stricter</source>
        <translation>Neubauten, und Erneuerungen ab 25 % des Wiederherstellungswerts; spätere Ausgaben können strenger sein</translation>
    </message>
    <message>
        <source>new buildings; mean of both directions, net air volume within the thermal envelope</source>
        <translation>Neubauten; Mittel beider Richtungen, Nettoluftvolumen innerhalb der thermischen Hülle</translation>
    </message>
    <message>
        <source>passive buildings of five storeys or more that do not burn</source>
        <translation>Passivhäuser mit fünf oder mehr Geschossen, die nicht brennen</translation>
    </message>
    <message>
        <source>passive buildings</source>
        <translation>Passivhäuser</translation>
    </message>
    <message>
        <source>proposed, not in force as far as known</source>
        <translation>vorgeschlagen, soweit bekannt nicht in Kraft</translation>
    </message>
    <message>
        <source>renovations</source>
        <translation>Erneuerungen</translation>
    </message>
    <message>
        <source>renovations; mean of both directions, net air volume within the thermal envelope</source>
        <translation>Erneuerungen; Mittel beider Richtungen, Nettoluftvolumen innerhalb der thermischen Hülle</translation>
    </message>
    <message>
        <source>single houses; per area of loss surfaces without the lowest floor: enter that as envelope area</source>
        <translation>Einfamilienhäuser; je Fläche der Verlustflächen ohne untersten Boden: diese als Hüllfläche eingeben</translation>
    </message>
    <message>
        <source>2018 IRC text quoted on two trade pages (builderonline, gomealsgo.com)</source>
        <translation>Text des IRC 2018, zitiert auf zwei Fachseiten (builderonline, gomealsgo.com)</translation>
    </message>
    <message>
        <source>GEG § 26 as printed by two legal publishers (deubner-recht.de, enev-online.com)</source>
        <translation>GEG § 26, abgedruckt bei zwei Rechtsverlagen (deubner-recht.de, enev-online.com)</translation>
    </message>
    <message>
        <source>a note in a public repository</source>
        <translation>eine Notiz in einem öffentlichen Verzeichnis</translation>
    </message>
    <message>
        <source>a page on the directive (buildup.eu, node 1895)</source>
        <translation>eine Seite zur Richtlinie (buildup.eu, node 1895)</translation>
    </message>
    <message>
        <source>a state code page (up.codes, testing, prescriptive)</source>
        <translation>eine Seite zu Vorschriften eines Bundesstaats (up.codes, testing, prescriptive)</translation>
    </message>
    <message>
        <source>a summary of the 2009 code (docslib 471172)</source>
        <translation>eine Zusammenfassung der Vorschrift von 2009 (docslib 471172)</translation>
    </message>
    <message>
        <source>a trade page (buildzeroconsulting.com)</source>
        <translation>eine Fachseite (buildzeroconsulting.com)</translation>
    </message>
    <message>
        <source>a trade page (reminetwork.com)</source>
        <translation>eine Fachseite (reminetwork.com)</translation>
    </message>
    <message>
        <source>a trade page (scotthomeinspection.com)</source>
        <translation>eine Fachseite (scotthomeinspection.com)</translation>
    </message>
    <message>
        <source>a trade page (walkerconsultants.com)</source>
        <translation>eine Fachseite (walkerconsultants.com)</translation>
    </message>
    <message>
        <source>an abstract of the 33rd AIVC conference (Simons and Rolfsmeier)</source>
        <translation>eine Kurzfassung der 33. AIVC-Tagung (Simons und Rolfsmeier)</translation>
    </message>
    <message>
        <source>from memory; a trade page of metal builders says 0.40 for one edition, not checked against the document</source>
        <translation>aus dem Gedächtnis; eine Fachseite des Metallbaus sagt 0,40 für eine Ausgabe; nicht am Dokument geprüft</translation>
    </message>
    <message>
        <source>from memory; one trade page (almostanarchitect.com) still says 3.0, not checked against the document</source>
        <translation>aus dem Gedächtnis; eine Fachseite (almostanarchitect.com) sagt noch 3,0; nicht am Dokument geprüft</translation>
    </message>
    <message>
        <source>from memory; that the tables use these quantities was read in a change proposal (PCF 1819), not checked against the document</source>
        <translation>aus dem Gedächtnis; dass die Tabellen diese Größen verwenden, stand in einem Änderungsvorschlag (PCF 1819); nicht am Dokument geprüft</translation>
    </message>
    <message>
        <source>several trade pages (mosart.ie among them)</source>
        <translation>mehrere Fachseiten (darunter mosart.ie)</translation>
    </message>
    <message>
        <source>two trade pages (partel.ie, futurehomes.org.uk)</source>
        <translation>zwei Fachseiten (partel.ie, futurehomes.org.uk)</translation>
    </message>
    <message>
        <source>two trade pages (septy.fr, ecome-energie.com)</source>
        <translation>zwei Fachseiten (septy.fr, ecome-energie.com)</translation>
    </message>
    <message>
        <source>Zones {zones}</source>
        <translation>Zonen {zones}</translation>
    </message>
    <message>
        <source>Exercise</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>An exercise of your own</source>
        <translation>Eine eigene Übung</translation>
    </message>
    <message>
        <source>The exercise as text</source>
        <translation>Die Übung als Text</translation>
    </message>
    <message>
        <source>Load a file…</source>
        <translation>Datei laden …</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Sichern unter …</translation>
    </message>
    <message>
        <source>A seal comes off</source>
        <translation>Abklebung löst sich</translation>
    </message>
    <message>
        <source>A window stands ajar</source>
        <translation>Fenster einen Spalt offen</translation>
    </message>
    <message>
        <source>A door stands open</source>
        <translation>Tür offen</translation>
    </message>
    <message>
        <source>The flue is open</source>
        <translation>Der Abgasweg ist offen</translation>
    </message>
    <message>
        <source>The kitchen hood runs</source>
        <translation>Die Dunstabzugshaube läuft</translation>
    </message>
    <message>
        <source>Outdoor hose slips off</source>
        <translation>Außenschlauch rutscht ab</translation>
    </message>
    <message>
        <source>Outdoor hose kinked</source>
        <translation>Außenschlauch geknickt</translation>
    </message>
    <message>
        <source>Outdoor hose wet</source>
        <translation>Wasser im Außenschlauch</translation>
    </message>
    <message>
        <source>Outdoor hose in the wind</source>
        <translation>Außenschlauch im Wind</translation>
    </message>
    <message>
        <source>Outdoor hose in the jet</source>
        <translation>Außenschlauch im Strahl</translation>
    </message>
    <message>
        <source>Hoses swapped</source>
        <translation>Schläuche vertauscht</translation>
    </message>
    <message>
        <source>Flow range {name} fitted</source>
        <translation>Messbereich {name} eingesetzt</translation>
    </message>
    <message>
        <source>Something before the fan</source>
        <translation>Etwas vor dem Gebläse</translation>
    </message>
    <message>
        <source>The fan drive trips</source>
        <translation>Gebläseantrieb schaltet ab</translation>
    </message>
    <message>
        <source>The gauge freezes</source>
        <translation>Messgerät bleibt stehen</translation>
    </message>
    <message>
        <source>Readings get lost</source>
        <translation>Messwerte gehen verloren</translation>
    </message>
    <message>
        <source>A gust</source>
        <translation>Eine Bö</translation>
    </message>
    <message>
        <source>Door of the {zone} open</source>
        <translation>Tür offen: {zone}</translation>
    </message>
    <message>
        <source> min from now</source>
        <translation> min ab jetzt</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>When it happens</source>
        <translation>Wann es geschieht</translation>
    </message>
    <message>
        <source>in every house</source>
        <translation>in jedem Haus</translation>
    </message>
    <message>
        <source>Pull the gauge&apos;s cable</source>
        <translation>Messgerätekabel ziehen</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Wieder anstecken</translation>
    </message>
    <message>
        <source>It happens</source>
        <translation>Es geschieht</translation>
    </message>
    <message>
        <source>Faults</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Throw</source>
        <translation>Auslösen</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Beheben</translation>
    </message>
    <message>
        <source>Throw: {fault}</source>
        <translation>Auslösen: {fault}</translation>
    </message>
    <message>
        <source>Put right: {fault}</source>
        <translation>Beheben: {fault}</translation>
    </message>
    <message>
        <source>from the north</source>
        <translation>aus Norden</translation>
    </message>
    <message>
        <source>from the north-east</source>
        <translation>aus Nordosten</translation>
    </message>
    <message>
        <source>from the east</source>
        <translation>aus Osten</translation>
    </message>
    <message>
        <source>from the south-east</source>
        <translation>aus Südosten</translation>
    </message>
    <message>
        <source>from the south</source>
        <translation>aus Süden</translation>
    </message>
    <message>
        <source>from the south-west</source>
        <translation>aus Südwesten</translation>
    </message>
    <message>
        <source>from the west</source>
        <translation>aus Westen</translation>
    </message>
    <message>
        <source>from the north-west</source>
        <translation>aus Nordwesten</translation>
    </message>
    <message>
        <source>no wind</source>
        <translation>kein Wind</translation>
    </message>
    <message>
        <source>The truth is covered. T uncovers it.</source>
        <translation>Die Wahrheit ist verdeckt. T deckt sie auf.</translation>
    </message>
    <message>
        <source>No class is open. Choose an exercise at the right and open the class.</source>
        <translation>Keine Klasse ist offen. Wählen Sie rechts eine Übung und öffnen Sie die Klasse.</translation>
    </message>
    <message>
        <source>The house as a section</source>
        <translation>Das Haus im Schnitt</translation>
    </message>
    <message>
        <source>fan {flow} into the house</source>
        <translation>Gebläse {flow} ins Haus</translation>
    </message>
    <message>
        <source>fan {flow} out of the house</source>
        <translation>Gebläse {flow} aus dem Haus</translation>
    </message>
    <message>
        <source>{fan}, range {name}</source>
        <translation>{fan}, Bereich {name}</translation>
    </message>
    <message>
        <source>fan at rest</source>
        <translation>Gebläse steht</translation>
    </message>
    <message>
        <source>{temperature} outdoors</source>
        <translation>außen {temperature}</translation>
    </message>
    <message>
        <source>{house}, time stands still</source>
        <translation>{house}, die Zeit steht still</translation>
    </message>
    <message>
        <source>in truth {low} at −50 Pa, {high} at +50 Pa</source>
        <translation>in Wahrheit {low} bei −50 Pa, {high} bei +50 Pa</translation>
    </message>
    <message>
        <source>{flow}, sealed</source>
        <translation>{flow}, zu</translation>
    </message>
    <message>
        <source>Nothing has happened in this house, and nothing is to come.</source>
        <translation>In diesem Haus ist nichts geschehen, und es steht nichts bevor.</translation>
    </message>
    <message>
        <source>Times are those of the house. What you throw in the tab Faults for later stands here until it happens.</source>
        <translation>Die Zeiten sind die des Hauses. Was Sie unter Fehler für später auslösen, steht hier, bis es geschieht.</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Take back: {moment}</source>
        <translation>Zurücknehmen: {moment}</translation>
    </message>
    <message>
        <source>Timeline</source>
        <translation>Zeitleiste</translation>
    </message>
    <message>
        <source>fan + {time}</source>
        <translation>Gebläse + {time}</translation>
    </message>
    <message>
        <source>at {time}</source>
        <translation>um {time}</translation>
    </message>
    <message>
        <source>Result and truth</source>
        <translation>Ergebnis und Wahrheit</translation>
    </message>
    <message>
        <source>Bar: the interval given. Dot: the value given. Line: the truth.</source>
        <translation>Balken: das angegebene Intervall. Punkt: der angegebene Wert. Strich: die Wahrheit.</translation>
    </message>
    <message>
        <source> of {most}</source>
        <translation> von {most}</translation>
    </message>
    <message>
        <source>A simulated house with invented data. Half points for half of what was asked.</source>
        <translation>Ein simuliertes Haus mit erfundenen Daten. Halbe Punkte für die Hälfte des Verlangten.</translation>
    </message>
    <message>
        <source>Exercise {exercise} in {house}</source>
        <translation>Übung {exercise} in {house}</translation>
    </message>
    <message>
        <source>Job {job}</source>
        <translation>Auftrag {job}</translation>
    </message>
    <message>
        <source>{count} minutes</source>
        <translation>{count} Minuten</translation>
    </message>
    <message>
        <source>Noticed</source>
        <translation>Bemerkt</translation>
    </message>
    <message>
        <source>Missed</source>
        <translation>Übersehen</translation>
    </message>
    <message>
        <source>Wrong steps</source>
        <translation>Falsche Schritte</translation>
    </message>
    <message>
        <source>There is no result to hold against the truth.</source>
        <translation>Es gibt kein Ergebnis, das sich mit der Wahrheit vergleichen ließe.</translation>
    </message>
    <message>
        <source>Depressurize and pressurize</source>
        <translation>Unterdruck und Überdruck</translation>
    </message>
    <message>
        <source>Pressurize and depressurize</source>
        <translation>Überdruck und Unterdruck</translation>
    </message>
    <message>
        <source>pressurize and depressurize</source>
        <translation>Überdruck und Unterdruck</translation>
    </message>
    <message>
        <source>There is no result.</source>
        <translation>Es gibt kein Ergebnis.</translation>
    </message>
    <message>
        <source>There is no test.</source>
        <translation>Es gibt keine Messung.</translation>
    </message>
    <message>
        <source>No data</source>
        <translation>Keine Daten</translation>
    </message>
    <message>
        <source>Data {age} s old</source>
        <translation>Daten {age} s alt</translation>
    </message>
    <message>
        <source>Change since the beginning</source>
        <translation>Änderung seit Beginn</translation>
    </message>
    <message>
        <source>Does the screen go dark? Lengthen the time-out of the phone.</source>
        <translation>Wird der Bildschirm dunkel? Die Bildschirmsperre des Telefons verlängern.</translation>
    </message>
    <message>
        <source>Given {value} ({interval}), in truth {true} {unit} at 50 Pa: {off} %. {direction}.</source>
        <translation>Angegeben {value} ({interval}), in Wahrheit {true} {unit} bei 50 Pa: {off} %. {direction}.</translation>
    </message>
    <message>
        <source>{said}, in truth {true} {unit} at 50 Pa: {off} %, {within} % are allowed.</source>
        <translation>{said}, in Wahrheit {true} {unit} bei 50 Pa: {off} %, erlaubt sind {within} %.</translation>
    </message>
    <message>
        <source>{low} to {high}, in truth {true} {unit}.</source>
        <translation>{low} bis {high}, in Wahrheit {true} {unit}.</translation>
    </message>
    <message>
        <source>Zero-flow pressure was read before and after the points.</source>
        <translation>Die natürliche Druckdifferenz wurde vor und nach den Punkten gemessen.</translation>
    </message>
    <message>
        <source>No zero-flow pressure was read {when}.</source>
        <translation>Es wurde keine natürliche Druckdifferenz gemessen: {when}.</translation>
    </message>
    <message>
        <source>before the points ({direction})</source>
        <translation>vor den Punkten ({direction})</translation>
    </message>
    <message>
        <source>after the points ({direction})</source>
        <translation>nach den Punkten ({direction})</translation>
    </message>
    <message>
        <source>before the points ({direction}), {more}</source>
        <translation>vor den Punkten ({direction}), {more}</translation>
    </message>
    <message>
        <source>after the points ({direction}), {more}</source>
        <translation>nach den Punkten ({direction}), {more}</translation>
    </message>
    <message>
        <source>The flow range entered was {entered}, fitted is {fitted}.</source>
        <translation>Eingetragen war Messbereich {entered}, eingesetzt ist {fitted}.</translation>
    </message>
    <message>
        <source>{count} points lie outside what the flow range {name} can measure.</source>
        <translation>{count} Punkte liegen außerhalb dessen, was Messbereich {name} messen kann.</translation>
    </message>
    <message>
        <source>The flow range {name} was entered and is fitted; every point lies within it.</source>
        <translation>Messbereich {name} war eingetragen und ist eingesetzt; jeder Punkt liegt darin.</translation>
    </message>
    <message>
        <source>Tested: {directions}.</source>
        <translation>Gemessen: {directions}.</translation>
    </message>
    <message>
        <source>No test in too much wind was given as good.</source>
        <translation>Keine Messung bei zu viel Wind wurde als gut ausgegeben.</translation>
    </message>
    <message>
        <source>Tested in {wind} m/s, and said so: “{text}”</source>
        <translation>Bei {wind} m/s gemessen, und es gesagt: „{text}“</translation>
    </message>
    <message>
        <source>A test in {wind} m/s of wind was given as good, without a word about it.</source>
        <translation>Eine Messung bei {wind} m/s Wind wurde als gut ausgegeben, ohne ein Wort darüber.</translation>
    </message>
    <message>
        <source>Nothing was written about it: {event}</source>
        <translation>Darüber wurde nichts geschrieben: {event}</translation>
    </message>
    <message>
        <source>Nothing of the kind was written down.</source>
        <translation>Nichts dergleichen wurde aufgeschrieben.</translation>
    </message>
    <message>
        <source>No number was written beside “{word}”; right is {value}, give or take {within}.</source>
        <translation>Neben „{word}“ stand keine Zahl; richtig ist {value}, auf {within} genau.</translation>
    </message>
    <message>
        <source>{best} was written, right is {value}, give or take {within}.</source>
        <translation>Geschrieben wurde {best}, richtig ist {value}, auf {within} genau.</translation>
    </message>
    <message>
        <source>The questions were answered all at once by the test, not each by itself before it.</source>
        <translation>Die Fragen wurden in der Messung alle auf einmal beantwortet, nicht jede für sich vorher.</translation>
    </message>
    <message>
        <source>Not answered before the fan turned: {names}.</source>
        <translation>Nicht beantwortet, bevor das Gebläse lief: {names}.</translation>
    </message>
    <message>
        <source>Answered otherwise than it is: {names}.</source>
        <translation>Anders beantwortet, als es ist: {names}.</translation>
    </message>
    <message>
        <source>Every question was answered before the fan turned, as it is.</source>
        <translation>Jede Frage wurde beantwortet, bevor das Gebläse lief, so wie es ist.</translation>
    </message>
    <message>
        <source>{count} minutes, allowed are {allowed}.</source>
        <translation>{count} Minuten, erlaubt sind {allowed}.</translation>
    </message>
    <message>
        <source>The result is made of points from before and after the house changed: it is true of neither.</source>
        <translation>Das Ergebnis besteht aus Punkten von vor und nach der Änderung am Haus: Es stimmt für keines von beiden.</translation>
    </message>
    <message>
        <source>A seal came off: {leak}.</source>
        <translation>Eine Abklebung löste sich: {leak}.</translation>
    </message>
    <message>
        <source>A window stood ajar, {wall}.</source>
        <translation>Ein Fenster stand einen Spalt offen, {wall}.</translation>
    </message>
    <message>
        <source>A door stood open, {wall}.</source>
        <translation>Eine Tür stand offen, {wall}.</translation>
    </message>
    <message>
        <source>The flue was open.</source>
        <translation>Der Abgasweg war offen.</translation>
    </message>
    <message>
        <source>The kitchen hood ran.</source>
        <translation>Die Dunstabzugshaube lief.</translation>
    </message>
    <message>
        <source>The outdoor hose had slipped off.</source>
        <translation>Der Außenschlauch war abgerutscht.</translation>
    </message>
    <message>
        <source>The outdoor hose was kinked.</source>
        <translation>Der Außenschlauch war geknickt.</translation>
    </message>
    <message>
        <source>There was water in the outdoor hose.</source>
        <translation>Im Außenschlauch war Wasser.</translation>
    </message>
    <message>
        <source>The outdoor hose moved in the wind.</source>
        <translation>Der Außenschlauch bewegte sich im Wind.</translation>
    </message>
    <message>
        <source>The outdoor hose lay in the jet.</source>
        <translation>Der Außenschlauch lag im Strahl.</translation>
    </message>
    <message>
        <source>The hoses were swapped.</source>
        <translation>Die Schläuche waren vertauscht.</translation>
    </message>
    <message>
        <source>The flow range {name} was fitted, unsaid.</source>
        <translation>Messbereich {name} war eingesetzt, ohne dass es gesagt wurde.</translation>
    </message>
    <message>
        <source>Something lay before the fan.</source>
        <translation>Vor dem Gebläse lag etwas.</translation>
    </message>
    <message>
        <source>The fan drive had switched itself off.</source>
        <translation>Der Gebläseantrieb hatte sich abgeschaltet.</translation>
    </message>
    <message>
        <source>The gauge repeated its last reading.</source>
        <translation>Das Messgerät wiederholte seinen letzten Wert.</translation>
    </message>
    <message>
        <source>Three readings in ten got lost.</source>
        <translation>Drei von zehn Messwerten gingen verloren.</translation>
    </message>
    <message>
        <source>The {zone} stood open.</source>
        <translation>Offen stand: {zone}.</translation>
    </message>
    <message>
        <source>The leak {leak} became {times} times as large.</source>
        <translation>Die Leckage {leak} wurde {times}-mal so groß.</translation>
    </message>
    <message>
        <source>address</source>
        <translation>Anschrift</translation>
    </message>
    <message>
        <source>certificate</source>
        <translation>Kalibrierschein</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>file</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>folder</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>geometry</source>
        <translation>Geometrie</translation>
    </message>
    <message>
        <source>leak</source>
        <translation>Leckage</translation>
    </message>
    <message>
        <source>leaks</source>
        <translation>Leckagen</translation>
    </message>
    <message>
        <source>logo</source>
        <translation>Logo</translation>
    </message>
    <message>
        <source>method</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>office</source>
        <translation>Büro</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>Markierung</translation>
    </message>
    <message>
        <source>register</source>
        <translation>Geräteverzeichnis</translation>
    </message>
    <message>
        <source>revision</source>
        <translation>Revision</translation>
    </message>
    <message>
        <source>safety</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>schedule</source>
        <translation>Zeitplan</translation>
    </message>
    <message>
        <source>seal</source>
        <translation>Abdichtung</translation>
    </message>
    <message>
        <source>situation</source>
        <translation>Betriebszustand</translation>
    </message>
    <message>
        <source>storeys</source>
        <translation>Geschosse</translation>
    </message>
    <message>
        <source>version</source>
        <translation>Fassung</translation>
    </message>
    <message>
        <source>weather</source>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>battery empty</source>
        <translation>Akku leer</translation>
    </message>
    <message>
        <source>computer slept</source>
        <translation>Rechner schlief</translation>
    </message>
    <message>
        <source>fan link lost</source>
        <translation>Gebläse antwortet nicht</translation>
    </message>
    <message>
        <source>fan still turns</source>
        <translation>Gebläse dreht noch</translation>
    </message>
    <message>
        <source>fan switched off</source>
        <translation>Gebläse ging aus</translation>
    </message>
    <message>
        <source>fan stronger</source>
        <translation>Gebläse stärker</translation>
    </message>
    <message>
        <source>fan weaker</source>
        <translation>Gebläse schwächer</translation>
    </message>
    <message>
        <source>flow alone moved</source>
        <translation>nur Volumenstrom</translation>
    </message>
    <message>
        <source>flow hose off</source>
        <translation>Messblende: Schlauch ab</translation>
    </message>
    <message>
        <source>flow hose reversed</source>
        <translation>Messblende: Schlauch verkehrt</translation>
    </message>
    <message>
        <source>gauge frozen</source>
        <translation>Gerät eingefroren</translation>
    </message>
    <message>
        <source>gauge silent</source>
        <translation>Gerät stumm</translation>
    </message>
    <message>
        <source>hose pinched</source>
        <translation>Schlauch geknickt</translation>
    </message>
    <message>
        <source>hose dull</source>
        <translation>Schlauch stumpf</translation>
    </message>
    <message>
        <source>hose restless</source>
        <translation>Schlauch unruhig</translation>
    </message>
    <message>
        <source>hoses swapped</source>
        <translation>Schläuche vertauscht</translation>
    </message>
    <message>
        <source>knob moved</source>
        <translation>Knopf bewegt</translation>
    </message>
    <message>
        <source>lasting step</source>
        <translation>bleibende Änderung</translation>
    </message>
    <message>
        <source>leakage jumped</source>
        <translation>Leckage sprang</translation>
    </message>
    <message>
        <source>noise on the line</source>
        <translation>Leitung gestört</translation>
    </message>
    <message>
        <source>too much flow</source>
        <translation>zu viel Volumenstrom</translation>
    </message>
    <message>
        <source>no flow</source>
        <translation>kein Volumenstrom</translation>
    </message>
    <message>
        <source>fan still blows</source>
        <translation>bläst noch</translation>
    </message>
    <message>
        <source>no pressure</source>
        <translation>kein Druck</translation>
    </message>
    <message>
        <source>not settled</source>
        <translation>nicht beruhigt</translation>
    </message>
    <message>
        <source>out of range</source>
        <translation>außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>pressure alone moved</source>
        <translation>nur Druck</translation>
    </message>
    <message>
        <source>pressure collapsed</source>
        <translation>Druck brach ein</translation>
    </message>
    <message>
        <source>pressure too high</source>
        <translation>Druck zu hoch</translation>
    </message>
    <message>
        <source>program held up</source>
        <translation>Programm hing</translation>
    </message>
    <message>
        <source>other range</source>
        <translation>anderer Bereich</translation>
    </message>
    <message>
        <source>range doubtful</source>
        <translation>Bereich zweifelhaft</translation>
    </message>
    <message>
        <source>readings missing</source>
        <translation>Messwerte fehlen</translation>
    </message>
    <message>
        <source>readings repeated</source>
        <translation>Messwerte wiederholt</translation>
    </message>
    <message>
        <source>gap in time</source>
        <translation>Zeitlücke</translation>
    </message>
    <message>
        <source>wrong sign</source>
        <translation>falsches Vorzeichen</translation>
    </message>
    <message>
        <source>zero high</source>
        <translation>Nulldruck hoch</translation>
    </message>
    <message>
        <source>The flow of these points is worked out anew: {targets} Pa.</source>
        <translation>Der Volumenstrom dieser Messpunkte wird neu berechnet: {targets} Pa.</translation>
    </message>
    <message>
        <source>Some points leave the line as a wrong flow range makes them. What was so?</source>
        <translation>Einige Messpunkte liegen so neben der Geraden, wie ein falscher Messbereich es macht. Was trifft zu?</translation>
    </message>
    <message>
        <source>With which flow range were they read?</source>
        <translation>Mit welchem Messbereich gemessen?</translation>
    </message>
    <message>
        <source>What had been entered stays in the record, and the report says so. It can be taken back.</source>
        <translation>Was eingetragen war, bleibt in der Aufzeichnung, und der Bericht sagt es. Es kann zurückgenommen werden.</translation>
    </message>
    <message>
        <source>{targets} Pa: range {name}; {line}</source>
        <translation>{targets} Pa: Bereich {name}; {line}</translation>
    </message>
    <message>
        <source>Fan {fan}: range {name}</source>
        <translation>Gebläse {fan}: Bereich {name}</translation>
    </message>
    <message>
        <source>As it was entered</source>
        <translation>Wie eingetragen</translation>
    </message>
    <message>
        <source>Fan {fan}: as it was entered</source>
        <translation>Gebläse {fan}: wie eingetragen</translation>
    </message>
    <message>
        <source>Range {name}</source>
        <translation>Bereich {name}</translation>
    </message>
    <message>
        <source>Range {name}; {line}</source>
        <translation>Bereich {name}; {line}</translation>
    </message>
    <message>
        <source>{percent} % off the line, n {exponent}</source>
        <translation>{percent} % neben der Geraden, n {exponent}</translation>
    </message>
</context>
</TS>
