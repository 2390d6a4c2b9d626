<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>The amount laid is {value} {unit}; allowed is {low} to {high} {unit}. Correct it.</source>
      <translation>Die aufgetragene Menge ist {value} {unit}; erlaubt sind {low} bis {high} {unit}. Berichtigen Sie sie.</translation>
    </message>
    <message>
      <source>The water added is {value} % of the volume; allowed is {low} to {high} % of the volume. Correct it.</source>
      <translation>Das zugesetzte Wasser ist {value} % des Volumens; erlaubt sind {low} bis {high} % des Volumens. Berichtigen Sie die Angabe.</translation>
    </message>
    <message>
      <source>The time the coat was laid lies {minutes} min ahead of the clock; give a time that has been.</source>
      <translation>Die Zeit des Auftragens liegt {minutes} min vor der Uhr; geben Sie eine Zeit an, die schon war.</translation>
    </message>
    <message>
      <source>The time of covering lies {minutes} min ahead of the clock; give a time that has been.</source>
      <translation>Die Zeit des Abdeckens liegt {minutes} min vor der Uhr; geben Sie eine Zeit an, die schon war.</translation>
    </message>
    <message>
      <source>The time of the look lies {minutes} min ahead of the clock; give a time that has been.</source>
      <translation>Die Zeit der Prüfung liegt {minutes} min vor der Uhr; geben Sie eine Zeit an, die schon war.</translation>
    </message>
    <message>
      <source>That piece is not on the rack any more; choose one from the rack.</source>
      <translation>Dieses Bild steht nicht mehr im Gestell; wählen Sie eines aus dem Gestell.</translation>
    </message>
    <message>
      <source>That coat is not on the rack any more; choose one from the rack.</source>
      <translation>Diese Schicht ist nicht mehr im Gestell; wählen Sie eine aus dem Gestell.</translation>
    </message>
    <message>
      <source>That look is not in the records any more; choose one from the list.</source>
      <translation>Diese Prüfung steht nicht mehr in den Aufzeichnungen; wählen Sie eine aus der Liste.</translation>
    </message>
    <message>
      <source>That time is before the coat was laid; give a later one.</source>
      <translation>Diese Zeit liegt vor dem Auftragen der Schicht; geben Sie eine spätere an.</translation>
    </message>
    <message>
      <source>Give the amount once: in {volume}, or in grams, or as a thickness in {thickness}.</source>
      <translation>Geben Sie die Menge einmal an: in {volume}, in Gramm oder als Dicke in {thickness}.</translation>
    </message>
    <message>
      <source>A look at this coat would be before it was laid; correct or take back that look first.</source>
      <translation>Eine Prüfung dieser Schicht läge vor ihrem Auftragen; berichtigen Sie zuerst diese Prüfung, oder nehmen Sie sie zurück.</translation>
    </message>
    <message>
      <source>That coat of {title} is not on yet; lay it first.</source>
      <translation>Diese Schicht von {title} ist noch nicht aufgetragen; tragen Sie sie zuerst auf.</translation>
    </message>
    <message>
      <source>There is no data sheet {name}; choose one from the list.</source>
      <translation>Es gibt kein Datenblatt {name}; wählen Sie eines aus der Liste.</translation>
    </message>
    <message>
      <source>The board runs a sketch of its own: say on the board page what its numbers are.</source>
      <translation>Auf der Messplatine läuft ein eigenes Programm: Sagen Sie auf der Seite der Platine, was ihre Zahlen bedeuten.</translation>
    </message>
    <message>
      <source>something is wrong; check its sensor and wires</source>
      <translation>etwas stimmt nicht; prüfen Sie Sensor und Leitungen</translation>
    </message>
    <message>
      <source>The board says that {trouble} ({own_words}).</source>
      <translation>Die Messplatine meldet: {trouble} ({own_words}).</translation>
    </message>
    <message>
      <source>the wires to its sensor are stuck; check the sensor's wires</source>
      <translation>die Leitungen zum Sensor hängen fest; prüfen Sie die Leitungen des Sensors</translation>
    </message>
    <message>
      <source>its sensor does not answer; check the sensor's wires</source>
      <translation>der Sensor antwortet nicht; prüfen Sie die Leitungen des Sensors</translation>
    </message>
    <message>
      <source>it finds no sensor; check the sensor's wires</source>
      <translation>sie findet keinen Sensor; prüfen Sie die Leitungen des Sensors</translation>
    </message>
    <message>
      <source>what its sensor sends arrives spoilt; check the sensor's wires, and shorten them</source>
      <translation>was der Sensor sendet, kommt verdorben an; prüfen Sie die Leitungen des Sensors und kürzen Sie sie</translation>
    </message>
    <message>
      <source>its sensor is not ready; if this stays, pull the board's plug and push it home again</source>
      <translation>der Sensor ist nicht bereit; bleibt das so, ziehen Sie den Stecker der Platine und stecken Sie ihn wieder fest ein</translation>
    </message>
    <message>
      <source>its sensor gives numbers that make no sense; check the sensor</source>
      <translation>der Sensor gibt unsinnige Zahlen; prüfen Sie den Sensor</translation>
    </message>
    <message>
      <source>The board says that {trouble}.</source>
      <translation>Die Messplatine meldet: {trouble}.</translation>
    </message>
    <message>
      <source>The board started again.</source>
      <translation>Die Messplatine ist neu angelaufen.</translation>
    </message>
    <message>
      <source>Check the humidity sensor with the two salts</source>
      <translation>Prüfen Sie den Feuchtesensor mit den beiden Salzen</translation>
    </message>
    <message>
      <source>Check the air speed sensor: under a cup it should read still</source>
      <translation>Prüfen Sie den Sensor der Luftbewegung: Unter einem Becher soll er Stille anzeigen</translation>
    </message>
    <message>
      <source>Check the sensors: humidity with the two salts, air speed under a cup</source>
      <translation>Prüfen Sie die Sensoren: Feuchte mit den beiden Salzen, Luftbewegung unter einem Becher</translation>
    </message>
    <message>
      <source>Never in solvent vapour: the bead is hot and contacts spark. The parts' own sheets come first.</source>
      <translation>Nie in Lösemitteldampf: Die Perle ist heiß, und Kontakte funken. Die Datenblätter der Teile selbst gehen vor.</translation>
    </message>
    <message>
      <source>A reading of {reading} % is put right to {corrected} %.</source>
      <translation>Ein Messwert von {reading} % wird auf {corrected} % berichtigt.</translation>
    </message>
    <message>
      <source>That calibration is withdrawn already; choose one that holds.</source>
      <translation>Dieser Abgleich ist schon zurückgezogen; wählen Sie einen, der gilt.</translation>
    </message>
    <message>
      <source>Over {salt}: {why}</source>
      <translation>Über {salt}: {why}</translation>
    </message>
    <message>
      <source>Another sensor was on the board then than now; plug in the one that was measured, or measure this one.</source>
      <translation>Damals war ein anderer Sensor an der Platine als jetzt; stecken Sie den gemessenen ein, oder messen Sie diesen.</translation>
    </message>
    <message>
      <source>The coat was laid more than {years} years ago; check its date.</source>
      <translation>Die Schicht wurde vor mehr als {years} Jahren aufgetragen; prüfen Sie ihr Datum.</translation>
    </message>
    <message>
      <source>{fault}. Check the amount and the size.</source>
      <translation>{fault}. Prüfen Sie Menge und Maße.</translation>
    </message>
    <message>
      <source>Found {finding} {span} after laying, which does not fit its sheet, its amount and this room: test again, and check what was recorded.</source>
      <translation>{span} nach dem Auftragen befunden: {finding}. Das passt nicht zu Datenblatt, Menge und diesem Raum: Prüfen Sie noch einmal, auch das Aufgezeichnete.</translation>
    </message>
    <message>
      <source>Found {finding} {span} after laying, which does not fit its sheet, its amount and this room: test again, and check what was recorded; its range is wider for it.</source>
      <translation>{span} nach dem Auftragen befunden: {finding}. Das passt nicht zu Datenblatt, Menge und diesem Raum: Prüfen Sie noch einmal, auch das Aufgezeichnete; die Spanne ist deshalb weiter.</translation>
    </message>
    <message>
      <source>No board is read and no file is kept here, so that cannot be done.</source>
      <translation>Hier wird keine Messplatine gelesen und keine Datei geführt, darum geht das nicht.</translation>
    </message>
    <message>
      <source>put off “{text}”</source>
      <translation>„{text}“ zurückgestellt</translation>
    </message>
    <message>
      <source>Nothing can be taken in here: this watch keeps no log.</source>
      <translation>Hier lässt sich nichts übernehmen: Diese Wache führt kein Protokoll.</translation>
    </message>
    <message>
      <source>ticked off “{text}”</source>
      <translation>„{text}“ abgehakt</translation>
    </message>
    <message>
      <source>No outcome was recorded for that coat of {title}; there is nothing to take back.</source>
      <translation>Für diese Schicht von {title} wurde kein Ergebnis aufgezeichnet; es gibt nichts zurückzunehmen.</translation>
    </message>
    <message>
      <source>The daily backup failed: {trouble}</source>
      <translation>Die tägliche Sicherung ist misslungen: {trouble}</translation>
    </message>
    <message>
      <source>The daily backup failed, through a fault of ours: {fault}.</source>
      <translation>Die tägliche Sicherung ist durch einen Fehler von uns misslungen: {fault}.</translation>
    </message>
    <message>
      <source>registered {title}</source>
      <translation>{title} angemeldet</translation>
    </message>
    <message>
      <source>took {title} off the rack</source>
      <translation>{title} aus dem Gestell genommen</translation>
    </message>
    <message>
      <source>put {title} back on the rack</source>
      <translation>{title} zurück ins Gestell gestellt</translation>
    </message>
    <message>
      <source>moved {title}</source>
      <translation>{title} umgestellt</translation>
    </message>
    <message>
      <source>planned other coats on {title}</source>
      <translation>andere Schichten auf {title} geplant</translation>
    </message>
    <message>
      <source>took a coat to come off {title}</source>
      <translation>eine geplante Schicht von {title} gestrichen</translation>
    </message>
    <message>
      <source>planned another coat on {title}</source>
      <translation>eine andere Schicht auf {title} geplant</translation>
    </message>
    <message>
      <source>moved a coat to come on {title}</source>
      <translation>eine geplante Schicht auf {title} verschoben</translation>
    </message>
    <message>
      <source>laid {coat} on {title}</source>
      <translation>{coat} auf {title} aufgetragen</translation>
    </message>
    <message>
      <source>planned {coat} on {title}</source>
      <translation>{coat} auf {title} geplant</translation>
    </message>
    <message>
      <source>set the cover over {coat} on {title}</source>
      <translation>{coat} auf {title} abgedeckt</translation>
    </message>
    <message>
      <source>tested {coat} on {title}</source>
      <translation>{coat} auf {title} geprüft</translation>
    </message>
    <message>
      <source>said how {coat} on {title} came out</source>
      <translation>das Ergebnis von {coat} auf {title} angegeben</translation>
    </message>
    <message>
      <source>corrected {coat} on {title}</source>
      <translation>{coat} auf {title} berichtigt</translation>
    </message>
    <message>
      <source>took back {coat} on {title}</source>
      <translation>{coat} auf {title} zurückgenommen</translation>
    </message>
    <message>
      <source>corrected a look at {coat} on {title}</source>
      <translation>eine Prüfung von {coat} auf {title} berichtigt</translation>
    </message>
    <message>
      <source>took back a look at {coat} on {title}</source>
      <translation>eine Prüfung von {coat} auf {title} zurückgenommen</translation>
    </message>
    <message>
      <source>took back how {coat} on {title} came out</source>
      <translation>das Ergebnis von {coat} auf {title} zurückgenommen</translation>
    </message>
    <message>
      <source>a coat</source>
      <translation>eine Schicht</translation>
    </message>
    <message>
      <source>changed {title}</source>
      <translation>{title} geändert</translation>
    </message>
    <message>
      <source>heard “{headline}”</source>
      <translation>„{headline}“ gehört</translation>
    </message>
    <message>
      <source>put off “{headline}”</source>
      <translation>„{headline}“ zurückgestellt</translation>
    </message>
    <message>
      <source>set your working hours</source>
      <translation>Arbeitszeiten gesetzt</translation>
    </message>
    <message>
      <source>kept the recipe {name}</source>
      <translation>Rezept {name} behalten</translation>
    </message>
    <message>
      <source>deleted the recipe {name}</source>
      <translation>Rezept {name} gelöscht</translation>
    </message>
    <message>
      <source>meant for the room: {intention}</source>
      <translation>im Raum vorgehabt: {intention}</translation>
    </message>
    <message>
      <source>no longer meant for the room: {intention}</source>
      <translation>im Raum nicht mehr vorgehabt: {intention}</translation>
    </message>
    <message>
      <source>deleted the sheet {title}</source>
      <translation>Datenblatt {title} gelöscht</translation>
    </message>
    <message>
      <source>made the sheet {title}</source>
      <translation>Datenblatt {title} angelegt</translation>
    </message>
    <message>
      <source>edited the sheet {title}</source>
      <translation>Datenblatt {title} geändert</translation>
    </message>
    <message>
      <source>A fault of ours: {kind}: {fault}. The watch goes on; please report it.</source>
      <translation>Ein Fehler von uns: {kind}: {fault}. Die Wache geht weiter; bitte melden Sie ihn.</translation>
    </message>
    <message>
      <source>A fault of ours ({thread}): {kind}: {fault}. The watch goes on; please report it.</source>
      <translation>Ein Fehler von uns ({thread}): {kind}: {fault}. Die Wache geht weiter; bitte melden Sie ihn.</translation>
    </message>
    <message>
      <source>This piece is not in the records any more.</source>
      <translation>Dieses Bild steht nicht mehr in den Aufzeichnungen.</translation>
    </message>
    <message>
      <source>{title}: {coat} is set to touch</source>
      <translation>{title}: {coat} ist angezogen</translation>
    </message>
    <message>
      <source>{title}: {coat} is dust free</source>
      <translation>{title}: {coat} ist staubtrocken</translation>
    </message>
    <message>
      <source>{title}: {coat} is tack free</source>
      <translation>{title}: {coat} ist klebfrei</translation>
    </message>
    <message>
      <source>{title}: {coat} is dry to touch</source>
      <translation>{title}: {coat} ist grifffest</translation>
    </message>
    <message>
      <source>{title}: {coat} is clear</source>
      <translation>{title}: {coat} ist klar</translation>
    </message>
    <message>
      <source>{title}: {coat} is dry to recoat</source>
      <translation>{title}: {coat} ist überarbeitbar</translation>
    </message>
    <message>
      <source>{title}: {coat} is dry hard</source>
      <translation>{title}: {coat} ist hart trocken</translation>
    </message>
    <message>
      <source>{title}: {coat} is dry through</source>
      <translation>{title}: {coat} ist durchgetrocknet</translation>
    </message>
    <message>
      <source>{title}: {coat} is cured</source>
      <translation>{title}: {coat} ist ausgehärtet</translation>
    </message>
    <message>
      <source>over: {headline}</source>
      <translation>vorbei: {headline}</translation>
    </message>
    <message>
      <source>{taken} readings of {name}, raw as written there, UTC ms {first} to {last}.</source>
      <translation>{taken} Messwerte aus {name}, roh wie dort geschrieben, UTC-ms {first} bis {last}.</translation>
    </message>
    <message>
      <source>Taken: {taken}; there already: {there}; refused: {refused} ({why}).</source>
      <translation>Übernommen: {taken}; schon da: {there}; abgelehnt: {refused} ({why}).</translation>
    </message>
    <message>
      <source>Taken: {taken}; there already: {there}; refused: {refused}.</source>
      <translation>Übernommen: {taken}; schon da: {there}; abgelehnt: {refused}.</translation>
    </message>
    <message>
      <source>{origin}, line {line}: {clause}</source>
      <translation>{origin}, Zeile {line}: {clause}</translation>
    </message>
    <message>
      <source>the records have another reading at this time, which stays; leave one of the two.</source>
      <translation>die Aufzeichnungen haben zu dieser Zeit einen anderen Messwert, der bleibt; lassen Sie einen der beiden stehen.</translation>
    </message>
    <message>
      <source>{origin}, line {last}: the same again ({kind}).</source>
      <translation>{origin}, Zeile {last}: noch einmal dasselbe ({kind}).</translation>
    </message>
    <message>
      <source>{origin}, lines {first} to {last}: the same again ({kind}).</source>
      <translation>{origin}, Zeilen {first} bis {last}: noch einmal dasselbe ({kind}).</translation>
    </message>
    <message>
      <source>studiowatch is closing; start it again and repeat what you asked for.</source>
      <translation>studiowatch wird gerade beendet; starten Sie es neu und wiederholen Sie, was Sie wollten.</translation>
    </message>
    <message>
      <source>That is not meant any more; look at the list again.</source>
      <translation>Das ist nicht mehr vorgesehen; sehen Sie noch einmal in die Liste.</translation>
    </message>
    <message>
      <source>Those hours are over; give hours to come.</source>
      <translation>Diese Stunden sind vorbei; geben Sie kommende an.</translation>
    </message>
    <message>
      <source>{coat} on {title}</source>
      <translation>{coat} auf {title}</translation>
    </message>
    <message>
      <source>Readings lost because the disk refused for too long: {count}.</source>
      <translation>Verlorene Messwerte, weil der Datenträger zu lange nichts annahm: {count}.</translation>
    </message>
    <message>
      <source>Readings that cannot be stored, through a fault of ours: {count}; they go to a room log beside the records when studiowatch ends.</source>
      <translation>Messwerte, die sich durch einen Fehler von uns nicht speichern lassen: {count}; sie kommen beim Beenden von studiowatch in ein Raumprotokoll neben den Aufzeichnungen.</translation>
    </message>
    <message>
      <source>What you said is used until the program ends, but could not be kept: {fault}.</source>
      <translation>Ihre Angabe gilt, bis das Programm endet, ließ sich aber nicht aufbewahren: {fault}.</translation>
    </message>
    <message>
      <source>That could not be done, through a fault of ours: {fault}.</source>
      <translation>Das ging durch einen Fehler von uns nicht: {fault}.</translation>
    </message>
    <message>
      <source>en</source>
      <comment>the tag of this language</comment>
      <translation>de</translation>
    </message>
    <message numerus="yes">
      <source>from {n} tests</source>
      <translation>
        <numerusform>aus {n} Prüfung</numerusform>
        <numerusform>aus {n} Prüfungen</numerusform>
      </translation>
    </message>
    <message>
      <source>{title} dries {middle} times as long here as its sheet says ({low} to {high}), {source}.</source>
      <translation>{title} trocknet hier {middle}-mal so lange, wie das Datenblatt sagt ({low} bis {high}), {source}.</translation>
    </message>
    <message>
      <source>{title} dries here as its sheet says ({low} to {high} times as long), {source}.</source>
      <translation>{title} trocknet hier, wie das Datenblatt sagt ({low}- bis {high}-mal so lange), {source}.</translation>
    </message>
    <message>
      <source>Not stored, and lost: {count} of the readings from {first} to {last}: {folder} takes no file either ({fault}).</source>
      <translation>Nicht gespeichert und verloren: {count} der Messwerte von {first} bis {last}: Auch {folder} nimmt keine Datei an ({fault}).</translation>
    </message>
    <message>
      <source>Not stored, and lost: changes of warnings and prompts, and notes: {count}.</source>
      <translation>Nicht gespeichert und verloren: Änderungen von Warnungen und Hinweisen sowie Notizen: {count}.</translation>
    </message>
    <message>
      <source>Not stored: {count} of the readings from {first} to {last}; they are kept as a room log in {path}.</source>
      <translation>Nicht gespeichert: {count} der Messwerte von {first} bis {last}; sie liegen als Raumprotokoll in {path}.</translation>
    </message>
    <message>
      <source>The disk refused for too long: readings lost: {count}.</source>
      <translation>Der Datenträger nahm zu lange nichts an: verlorene Messwerte: {count}.</translation>
    </message>
    <message>
      <source>What has the records open does not take anything; nothing was done: end it, and ask again.</source>
      <translation>Das Programm, das die Aufzeichnungen offen hat, nimmt nichts an; es wurde nichts getan: Beenden Sie es, und fragen Sie noch einmal.</translation>
    </message>
    <message>
      <source>The watch took what was asked and has not answered yet; look with `studiowatch piece list`.</source>
      <translation>Die Wache hat den Auftrag angenommen und noch nicht geantwortet; sehen Sie nach mit `studiowatch piece list`.</translation>
    </message>
    <message>
      <source>What was asked could not be read; use the same studiowatch for the call as for the watch.</source>
      <translation>Der Auftrag ließ sich nicht lesen; verwenden Sie für den Aufruf dasselbe studiowatch wie für die Wache.</translation>
    </message>
    <message>
      <source>Watches the drying room</source>
      <translation>Wacht über den Trockenraum</translation>
    </message>
    <message>
      <source>The time it was seen lies {minutes} min ahead of the clock; give a time that has been.</source>
      <translation>Die Zeit des Sehens liegt {minutes} min vor der Uhr; geben Sie eine Zeit an, die schon war.</translation>
    </message>
    <message>
      <source>The coat below was laid later than this one; check the time, or lay the lower coat first.</source>
      <translation>Die Schicht darunter wurde später aufgetragen als diese; prüfen Sie die Zeit, oder tragen Sie zuerst die untere auf.</translation>
    </message>
    <message>
      <source>The planned coat is not on {title} any more; choose the sheet and lay it anew.</source>
      <translation>Die geplante Schicht ist nicht mehr bei {title}; wählen Sie das Datenblatt und tragen Sie sie neu ein.</translation>
    </message>
    <message>
      <source>That coat of {title} is on already; choose the next one.</source>
      <translation>Diese Schicht von {title} ist schon aufgetragen; wählen Sie die nächste.</translation>
    </message>
    <message>
      <source>not recorded</source>
      <translation>nicht aufgezeichnet</translation>
    </message>
    <message>
      <source>This coat is not among the records, or has not been laid yet.</source>
      <translation>Diese Schicht steht nicht in den Aufzeichnungen oder ist noch nicht aufgetragen.</translation>
    </message>
    <message>
      <source>The photo {name} does not lie in the folder of photos; the record is made without it.</source>
      <translation>Das Foto {name} liegt nicht im Ordner der Fotos; das Protokoll wird ohne es gemacht.</translation>
    </message>
    <message>
      <source>There is no picture {path}; choose a file that is there.</source>
      <translation>Es gibt kein Foto {path}; wählen Sie eine Datei, die es gibt.</translation>
    </message>
    <message>
      <source>{path} has {size} MB; a picture may have up to {most} MB. Choose another.</source>
      <translation>{path} hat {size} MB; ein Foto darf bis zu {most} MB haben. Wählen Sie ein anderes.</translation>
    </message>
    <message>
      <source>The picture {path} cannot be read: {fault}. Choose another.</source>
      <translation>Das Foto {path} lässt sich nicht lesen: {fault}. Wählen Sie ein anderes.</translation>
    </message>
    <message>
      <source>{path} cannot be shown: {fault}. Choose another picture.</source>
      <translation>{path} lässt sich nicht zeigen: {fault}. Wählen Sie ein anderes Foto.</translation>
    </message>
    <message>
      <source>The picture {path} cannot be read: {fault}.</source>
      <translation>Das Foto {path} lässt sich nicht lesen: {fault}.</translation>
    </message>
    <message>
      <source>The photo could not be kept in {folder}: {fault}.</source>
      <translation>Das Foto ließ sich in {folder} nicht aufbewahren: {fault}.</translation>
    </message>
    <message>
      <source>The time the paint was finished lies {minutes} min ahead of the clock; give a time that has been.</source>
      <translation>Die Zeit, zu der die Farbe fertig war, liegt {minutes} min vor der Uhr; geben Sie eine Zeit an, die schon war.</translation>
    </message>
    <message>
      <source>The thickness of the paint is {value} {unit}; allowed is {low} to {high} {unit}. Correct it.</source>
      <translation>Die Dicke der Farbe ist {value} {unit}; erlaubt sind {low} bis {high} {unit}. Berichtigen Sie sie.</translation>
    </message>
    <message>
      <source>The width is {value} {unit}; allowed is {low} to {high} {unit}. Correct it.</source>
      <translation>Die Breite ist {value} {unit}; erlaubt sind {low} bis {high} {unit}. Berichtigen Sie sie.</translation>
    </message>
    <message>
      <source>The height is {value} {unit}; allowed is {low} to {high} {unit}. Correct it.</source>
      <translation>Die Höhe ist {value} {unit}; erlaubt sind {low} bis {high} {unit}. Berichtigen Sie sie.</translation>
    </message>
    <message>
      <source>The number of panels is {value} panels; allowed is {low} to {high} panels. Correct it.</source>
      <translation>Die Zahl der Tafeln ist {value}; erlaubt sind {low} bis {high} Tafeln. Berichtigen Sie sie.</translation>
    </message>
    <message>
      <source>A piece that is rectangle has 1 panel, not {panels}; choose a set of panels.</source>
      <translation>Ein rechteckiges Bild hat 1 Tafel, nicht {panels}; wählen Sie einen Satz Tafeln.</translation>
    </message>
    <message>
      <source>A piece that is round has 1 panel, not {panels}; choose a set of panels.</source>
      <translation>Ein rundes Bild hat 1 Tafel, nicht {panels}; wählen Sie einen Satz Tafeln.</translation>
    </message>
    <message>
      <source>That piece is not in the records; choose one from the archive.</source>
      <translation>Dieses Bild steht nicht in den Aufzeichnungen; wählen Sie eines aus dem Archiv.</translation>
    </message>
    <message>
      <source>{title} is on the rack already.</source>
      <translation>{title} steht schon im Gestell.</translation>
    </message>
    <message>
      <source>There is another piece called {title} on the rack; give that one another title first.</source>
      <translation>Im Gestell steht ein anderes Bild namens {title}; geben Sie jenem zuerst einen anderen Titel.</translation>
    </message>
    <message>
      <source>The data sheet {sheet} is not of a paint; choose one of a paint.</source>
      <translation>Das Datenblatt {sheet} gehört zu keiner Farbe; wählen Sie eines einer Farbe.</translation>
    </message>
    <message>
      <source>The paint was finished after the first coat on it was laid; correct one of the two times.</source>
      <translation>Die Farbe wurde nach dem Auftragen der ersten Schicht darauf fertig; berichtigen Sie eine der beiden Zeiten.</translation>
    </message>
    <message>
      <source>The title {title} holds signs that cannot be shown; type it with plain letters.</source>
      <translation>Der Titel {title} enthält Zeichen, die sich nicht zeigen lassen; schreiben Sie ihn mit einfachen Buchstaben.</translation>
    </message>
    <message>
      <source>The title has {count} characters; give it 1 to {most}.</source>
      <translation>Der Titel hat {count} Zeichen; geben Sie ihm 1 bis {most}.</translation>
    </message>
    <message>
      <source>There is a piece called {title} on the rack already; give this one another title.</source>
      <translation>Im Gestell steht schon ein Bild namens {title}; geben Sie diesem einen anderen Titel.</translation>
    </message>
    <message>
      <source>The day it is due is {day}; allowed is a day of the years {first} to {last}. Correct it.</source>
      <translation>Der Liefertermin ist {day}; erlaubt ist ein Tag der Jahre {first} bis {last}. Berichtigen Sie ihn.</translation>
    </message>
    <message>
      <source>The support has {count} characters; give it up to {most} that can be shown.</source>
      <translation>Der Bildträger hat {count} Zeichen; geben Sie ihm bis zu {most}, die sich zeigen lassen.</translation>
    </message>
    <message>
      <source>The notes have {count} characters; shorten them to {most}.</source>
      <translation>Die Notizen haben {count} Zeichen; kürzen Sie sie auf {most}.</translation>
    </message>
    <message>
      <source>The notes hold signs that cannot be shown; type them with plain letters.</source>
      <translation>Die Notizen enthalten Zeichen, die sich nicht zeigen lassen; schreiben Sie sie mit einfachen Buchstaben.</translation>
    </message>
    <message>
      <source>{name} is not a photo of this studio; choose the picture again.</source>
      <translation>{name} ist kein Foto dieses Ateliers; wählen Sie das Foto noch einmal.</translation>
    </message>
    <message>
      <source>Finishing plan</source>
      <translation>Abschlussplan</translation>
    </message>
    <message>
      <source>{title}: fit to handle</source>
      <translation>{title}: darf angefasst werden</translation>
    </message>
    <message>
      <source>{title}: fit to wrap</source>
      <translation>{title}: darf eingepackt werden</translation>
    </message>
    <message>
      <source>{title}: wrap and pack</source>
      <translation>{title}: einwickeln und verpacken</translation>
    </message>
    <message>
      <source>Prepare for {minutes} min: wipe and let dry, bottle at rest, level, fans off, cover at hand.</source>
      <translation>{minutes} min vorbereiten: abwischen und trocknen lassen, Flasche in Ruhe, waagrecht, Ventilatoren aus, Abdeckung zur Hand.</translation>
    </message>
    <message>
      <source>A touch test at an edge comes before the coat.</source>
      <translation>Vor der Schicht kommt eine Griffprobe an einer Kante.</translation>
    </message>
    <message>
      <source>{title}: lay {coat}</source>
      <translation>{title}: {coat} auftragen</translation>
    </message>
    <message>
      <source>Basis: {basis}. Nine in ten are ready by then.</source>
      <translation>Grundlage: {basis}. Neun von zehn sind bis dahin bereit.</translation>
    </message>
    <message>
      <source>{title}: due</source>
      <translation>{title}: Liefertermin</translation>
    </message>
    <message>
      <source>Dated for the ways in which this room may go from {temperature} and {humidity} % RH, by its days so far.</source>
      <translation>Datiert für die Wege, die dieser Raum von {temperature} und {humidity} % r. F. aus nehmen kann, nach seinen bisherigen Tagen.</translation>
    </message>
    <message>
      <source>Dated for the room as it was read last: {temperature}, {humidity} % RH.</source>
      <translation>Datiert für den Raum, wie er zuletzt gemessen wurde: {temperature}, {humidity} % r. F.</translation>
    </message>
    <message>
      <source>No reading of the room yet: {temperature} and 50 % RH are taken, as on the sheets.</source>
      <translation>Noch kein Messwert des Raums: Es gelten {temperature} und 50 % r. F., wie auf den Datenblättern.</translation>
    </message>
    <message>
      <source>What you mean to do with the room is counted in.</source>
      <translation>Was Sie mit dem Raum vorhaben, ist eingerechnet.</translation>
    </message>
    <message>
      <source>That preparation is over; begin one from “Lay a coat”.</source>
      <translation>Diese Vorbereitung ist vorbei; beginnen Sie eine über „Schicht auftragen“.</translation>
    </message>
    <message>
      <source>{before} and {title}</source>
      <translation>{before} und {title}</translation>
    </message>
    <message>
      <source>No piece was chosen; choose at least one to prepare for.</source>
      <translation>Es wurde kein Bild gewählt; wählen Sie mindestens eines zum Vorbereiten.</translation>
    </message>
    <message>
      <source>A piece was chosen twice; one coat at a time is laid on it.</source>
      <translation>Ein Bild wurde zweimal gewählt; es wird immer nur eine Schicht darauf aufgetragen.</translation>
    </message>
    <message>
      <source>A check of a sensor stands until it is done: tick it then.</source>
      <translation>Die Prüfung eines Sensors bleibt stehen, bis sie gemacht ist: Haken Sie sie dann ab.</translation>
    </message>
    <message>
      <source>That prompt is gone: the coat has moved on.</source>
      <translation>Diesen Hinweis gibt es nicht mehr: Die Schicht ist weiter.</translation>
    </message>
    <message>
      <source>The prompt would be put off by {minutes} min; allowed is 1 to 360 min. Choose again.</source>
      <translation>Der Hinweis würde um {minutes} min verschoben; erlaubt sind 1 bis 360 min. Wählen Sie noch einmal.</translation>
    </message>
    <message>
      <source>That prompt is of no use any more: tick it, or leave it.</source>
      <translation>Dieser Hinweis nützt nichts mehr: Haken Sie ihn ab, oder lassen Sie ihn.</translation>
    </message>
    <message>
      <source>as they were read: {count} readings.</source>
      <translation>wie gemessen: {count} Messwerte.</translation>
    </message>
    <message>
      <source>{path} holds no readings yet; there is nothing to write.</source>
      <translation>{path} enthält noch keine Messwerte; es gibt nichts zu schreiben.</translation>
    </message>
    <message>
      <source>{count} readings</source>
      <translation>{count} Messwerte</translation>
    </message>
    <message>
      <source>{count} of them share their time with the one before: they came at once, or the clock was set back there.</source>
      <translation>{count} davon haben dieselbe Zeit wie der davor: Sie kamen auf einmal, oder dort wurde die Uhr zurückgestellt.</translation>
    </message>
    <message>
      <source>{count} of them were typed: a room log does not tell that, and an import takes them for a logger's.</source>
      <translation>{count} davon wurden eingetippt: Ein Raumprotokoll sagt das nicht, und ein Import hält sie für die eines Messgeräts.</translation>
    </message>
    <message>
      <source>{count} of them hold no value, and SenML has no record for such.</source>
      <translation>{count} davon enthalten keinen Wert, und SenML kennt dafür keinen Eintrag.</translation>
    </message>
    <message>
      <source>{coat}, {film} dry</source>
      <translation>{coat}, {film} trocken</translation>
    </message>
    <message>
      <source>Section through the coats, to scale</source>
      <translation>Schnitt durch die Schichten, maßstäblich</translation>
    </message>
    <message>
      <source>{coat}, thickness not known</source>
      <translation>{coat}, Dicke nicht bekannt</translation>
    </message>
    <message>
      <source>The room while each coat was wet</source>
      <translation>Der Raum, solange jede Schicht nass war</translation>
    </message>
    <message>
      <source>% RH</source>
      <translation>% r. F.</translation>
    </message>
    <message>
      <source>not read</source>
      <translation>nicht gemessen</translation>
    </message>
    <message>
      <source>What lies on it</source>
      <translation>Was darauf liegt</translation>
    </message>
    <message>
      <source>How each coat dried</source>
      <translation>Wie jede Schicht trocknete</translation>
    </message>
    <message>
      <source>For whoever cleans it</source>
      <translation>Für die Reinigung</translation>
    </message>
    <message>
      <source>Cautions</source>
      <translation>Vorsicht</translation>
    </message>
    <message>
      <source>What is not known</source>
      <translation>Was nicht bekannt ist</translation>
    </message>
    <message>
      <source>Coat</source>
      <translation>Schicht</translation>
    </message>
    <message>
      <source>Product</source>
      <translation>Produkt</translation>
    </message>
    <message>
      <source>Laid</source>
      <translation>Aufgetragen</translation>
    </message>
    <message>
      <source>Amount</source>
      <translation>Menge</translation>
    </message>
    <message>
      <source>Film, wet / dry</source>
      <translation>Film, nass / trocken</translation>
    </message>
    <message>
      <source>Dry to touch, recoat, cured</source>
      <translation>Grifffest, überarbeitbar, ausgehärtet</translation>
    </message>
    <message>
      <source>Tacky when tested {time}.</source>
      <translation>Geprüft {time}: klebrig.</translation>
    </message>
    <message>
      <source>Dry when tested {time}.</source>
      <translation>Geprüft {time}: trocken.</translation>
    </message>
    <message>
      <source>Still milky when tested {time}.</source>
      <translation>Geprüft {time}: noch milchig.</translation>
    </message>
    <message>
      <source>Clear when tested {time}.</source>
      <translation>Geprüft {time}: klar.</translation>
    </message>
    <message>
      <source>{title}: finishing record</source>
      <translation>{title}: Abschlussprotokoll</translation>
    </message>
    <message>
      <source>Times are those of the product's sheet, at {temperature} and 50 % RH, not measured on this piece.</source>
      <translation>Die Zeiten sind die des Datenblatts, bei {temperature} und 50 % r. F., nicht an diesem Bild gemessen.</translation>
    </message>
    <message>
      <source>A clear coat counts as wet here until it is set to touch by the model in the room that was read, for two days at most, and at least until its sheet calls it dry to touch; other coats go by their sheet, or by an hour where the sheet is missing. Figures are minute means: mean, least and greatest; air moves from {air_speed}.</source>
      <translation>Eine klare Schicht gilt hier als nass, bis sie nach dem Modell im gemessenen Raum angezogen hat, längstens zwei Tage lang, und mindestens, bis ihr Datenblatt sie grifffest nennt; andere Schichten nach ihrem Datenblatt, oder eine Stunde lang, wo es fehlt. Die Zahlen sind Minutenmittel: Mittel, kleinster und größter Wert; als bewegt gilt Luft ab {air_speed}.</translation>
    </message>
    <message>
      <source>Times by the model are those of this piece in the room that was read, worked out and not seen: the middle one, and in brackets the range in which eight in ten lie.</source>
      <translation>Die Zeiten nach dem Modell sind die dieses Bildes im gemessenen Raum, gerechnet und nicht gesehen: die mittlere und in Klammern die Spanne, in der acht von zehn liegen.</translation>
    </message>
    <message>
      <source>{touch}, {recoat} h, {cured} days</source>
      <translation>{touch}, {recoat} h, {cured} Tage</translation>
    </message>
    <message>
      <source>Coat {number}, {coat}: while it was wet {temperature}, {humidity}, {movement}; read in {read} of {whole} min.</source>
      <translation>Schicht {number}, {coat}: solange sie nass war, {temperature}, {humidity}, {movement}; gemessen in {read} von {whole} min.</translation>
    </message>
    <message>
      <source>{mean} ({least} to {greatest})</source>
      <translation>{mean} ({least} bis {greatest})</translation>
    </message>
    <message>
      <source>moving air for {minutes} min</source>
      <translation>{minutes} min bewegte Luft</translation>
    </message>
    <message>
      <source>As of {time}: this piece is not finished.</source>
      <translation>Stand {time}: Dieses Bild ist nicht fertig.</translation>
    </message>
    <message>
      <source>{amount}, thinned {share} %</source>
      <translation>{amount}, {share} % verdünnt</translation>
    </message>
    <message>
      <source>not known</source>
      <translation>nicht bekannt</translation>
    </message>
    <message>
      <source>{film}, by the sheet</source>
      <translation>{film}, nach dem Datenblatt</translation>
    </message>
    <message>
      <source>Coat {number}, {coat}: the room was not read while it was wet.</source>
      <translation>Schicht {number}, {coat}: Der Raum wurde nicht gemessen, solange sie nass war.</translation>
    </message>
    <message>
      <source>Coat {number}, {coat}: while it was wet {temperature}, {humidity}, {movement}.</source>
      <translation>Schicht {number}, {coat}: solange sie nass war, {temperature}, {humidity}, {movement}.</translation>
    </message>
    <message>
      <source>temperature not read</source>
      <translation>Temperatur nicht gemessen</translation>
    </message>
    <message>
      <source>humidity not read</source>
      <translation>Luftfeuchte nicht gemessen</translation>
    </message>
    <message>
      <source>air movement not read</source>
      <translation>Luftbewegung nicht gemessen</translation>
    </message>
    <message>
      <source>The piece</source>
      <translation>Das Bild</translation>
    </message>
    <message>
      <source>Finishing record. {size}, on {support}</source>
      <translation>Abschlussprotokoll. {size}, auf {support}</translation>
    </message>
    <message>
      <source>Coat {number}, {label}, is still wet.</source>
      <translation>Schicht {number}, {label}, ist noch nass.</translation>
    </message>
    <message numerus="yes">
      <source>{n} coats are still to come.</source>
      <translation>
        <numerusform>{n} Schicht kommt noch.</numerusform>
        <numerusform>{n} Schichten kommen noch.</numerusform>
      </translation>
    </message>
    <message>
      <source>By the model: {times}.</source>
      <translation>Nach dem Modell: {times}.</translation>
    </message>
    <message>
      <source>Came out {outcome}.</source>
      <translation>Ergebnis: {outcome}.</translation>
    </message>
    <message>
      <source>clear {time} ({earliest} to {latest})</source>
      <translation>klar {time} ({earliest} bis {latest})</translation>
    </message>
    <message>
      <source>dry to recoat {time} ({earliest} to {latest})</source>
      <translation>überarbeitbar {time} ({earliest} bis {latest})</translation>
    </message>
    <message>
      <source>ready for the next coat from {time}</source>
      <translation>bereit für die nächste Schicht ab {time}</translation>
    </message>
    <message>
      <source>{humidity} % RH</source>
      <translation>{humidity} % r. F.</translation>
    </message>
    <message>
      <source>{coat}, by its sheet</source>
      <translation>{coat}, nach dem Datenblatt</translation>
    </message>
    <message>
      <source>Came out {outcome}, seen {time}.</source>
      <translation>Ergebnis: {outcome}, gesehen {time}.</translation>
    </message>
    <message>
      <source>That coat of {title} is on already, so the plan cannot change it; correct the coat instead.</source>
      <translation>Diese Schicht von {title} ist schon aufgetragen, der Plan kann sie nicht mehr ändern; berichtigen Sie stattdessen die Schicht.</translation>
    </message>
    <message>
      <source>{title} would have {count} coats to come; {most} are the most.</source>
      <translation>{title} hätte {count} geplante Schichten; höchstens {most} sind möglich.</translation>
    </message>
    <message>
      <source>none of its coats has been laid</source>
      <translation>keine seiner Schichten ist aufgetragen</translation>
    </message>
    <message>
      <source>it has one laid coat, number 1</source>
      <translation>es hat eine aufgetragene Schicht, Nummer 1</translation>
    </message>
    <message>
      <source>its laid coats are 1, the lowest, to {topmost}</source>
      <translation>seine aufgetragenen Schichten sind 1, die unterste, bis {topmost}</translation>
    </message>
    <message>
      <source>{title} has no coat {number}; {laid}.</source>
      <translation>{title} hat keine Schicht {number}; {laid}.</translation>
    </message>
    <message>
      <source>Coat {number} of {title} has not been laid yet; {laid}.</source>
      <translation>Schicht {number} von {title} ist noch nicht aufgetragen; {laid}.</translation>
    </message>
    <message>
      <source>The data sheet {sheet} is missing; put it back among your sheets.</source>
      <translation>Das Datenblatt {sheet} fehlt; legen Sie es wieder zu Ihren Datenblättern.</translation>
    </message>
    <message>
      <source>Coat {number} of {title} is paint, which does not cloud; ask about a clear coat.</source>
      <translation>Schicht {number} von {title} ist Farbe, und die wird nicht trüb; fragen Sie nach einer klaren Schicht.</translation>
    </message>
    <message>
      <source>That coat of {title} has not been laid yet; {laid}.</source>
      <translation>Diese Schicht von {title} ist noch nicht aufgetragen; {laid}.</translation>
    </message>
    <message>
      <source>First in {times} of {count} clouded coats here.</source>
      <translation>Hier an erster Stelle bei {times} von {count} getrübten Schichten.</translation>
    </message>
    <message>
      <source>the humidity is rising as it did in the last hour</source>
      <translation>die Luftfeuchte steigt wie in der letzten Stunde</translation>
    </message>
    <message>
      <source>the temperature is rising as it did in the last hour</source>
      <translation>die Temperatur steigt wie in der letzten Stunde</translation>
    </message>
    <message>
      <source>the air above its dew point is rising as it did in the last hour</source>
      <translation>der Abstand der Luft vom Taupunkt wächst wie in der letzten Stunde</translation>
    </message>
    <message>
      <source>the humidity is falling as it did in the last hour</source>
      <translation>die Luftfeuchte fällt wie in der letzten Stunde</translation>
    </message>
    <message>
      <source>the temperature is falling as it did in the last hour</source>
      <translation>die Temperatur fällt wie in der letzten Stunde</translation>
    </message>
    <message>
      <source>the air above its dew point is falling as it did in the last hour</source>
      <translation>der Abstand der Luft vom Taupunkt schrumpft wie in der letzten Stunde</translation>
    </message>
    <message>
      <source>so it is in {number} of ten ways that this room may go, by its days so far</source>
      <translation>so ist es in {number} von zehn Verläufen, die dieser Raum nach seinen bisherigen Tagen nehmen kann</translation>
    </message>
    <message>
      <source>{title} has a coat of this sheet; correct that coat first, or keep the sheet.</source>
      <translation>{title} hat eine Schicht mit diesem Datenblatt; berichtigen Sie zuerst diese Schicht, oder behalten Sie das Datenblatt.</translation>
    </message>
    <message>
      <source>The sheet could not be kept in {folder}: {fault}.</source>
      <translation>Das Datenblatt ließ sich in {folder} nicht aufbewahren: {fault}.</translation>
    </message>
    <message>
      <source>{path} was changed or moved by another program since, so it stays as it is; what would have come back is in {aside}.</source>
      <translation>{path} wurde seither von einem anderen Programm geändert oder verschoben und bleibt darum, wie es ist; was zurückgekommen wäre, steht in {aside}.</translation>
    </message>
    <message>
      <source>{path} cannot be deleted: {fault}. Delete it by hand.</source>
      <translation>{path} lässt sich nicht löschen: {fault}. Löschen Sie es von Hand.</translation>
    </message>
    <message>
      <source>{path} was changed or moved by another program since, so it stays as it is.</source>
      <translation>{path} wurde seither von einem anderen Programm geändert oder verschoben und bleibt darum, wie es ist.</translation>
    </message>
    <message>
      <source>The sheet's name is {name}; allowed are up to 61 small letters, digits and hyphens.</source>
      <translation>Der Name des Datenblatts ist {name}; erlaubt sind bis zu 61 Kleinbuchstaben, Ziffern und Bindestriche.</translation>
    </message>
    <message>
      <source>The sheet</source>
      <translation>Das Datenblatt</translation>
    </message>
    <message>
      <source>There is no sheet of yours called {name}; only your own can be deleted.</source>
      <translation>Sie haben kein eigenes Datenblatt namens {name}; nur eigene lassen sich löschen.</translation>
    </message>
    <message>
      <source>The data sheet {path} cannot be read: {fault}.</source>
      <translation>Das Datenblatt {path} lässt sich nicht lesen: {fault}.</translation>
    </message>
    <message>
      <source>There is no data sheet file {path}; give the path of a .toml file.</source>
      <translation>Es gibt keine Datenblattdatei {path}; geben Sie den Pfad einer .toml-Datei an.</translation>
    </message>
    <message>
      <source>The data sheet {path} is not UTF-8 text (byte {start}); save it as UTF-8.</source>
      <translation>Das Datenblatt {path} ist kein UTF-8-Text (Byte {start}); speichern Sie es als UTF-8.</translation>
    </message>
    <message>
      <source>{name} (its sheet is missing)</source>
      <translation>{name} (Datenblatt fehlt)</translation>
    </message>
    <message>
      <source>The data sheet {name} does not lie beside the file that names it; put it there.</source>
      <translation>Das Datenblatt {name} liegt nicht neben der Datei, die es nennt; legen Sie es dorthin.</translation>
    </message>
    <message>
      <source>The data sheet {path} is nested too deep to be one; write plain name = value.</source>
      <translation>Das Datenblatt {path} ist zu tief verschachtelt, um eines zu sein; schreiben Sie einfach name = value.</translation>
    </message>
    <message>
      <source>There is no data sheet {name}; known are {known}.</source>
      <translation>Es gibt kein Datenblatt {name}; bekannt sind {known}.</translation>
    </message>
    <message>
      <source>(generic)</source>
      <translation>(allgemein)</translation>
    </message>
    <message>
      <source>Gloss varnish, solvent-borne (generic)</source>
      <translation>Glanzfirnis, lösemittelhaltig (allgemein)</translation>
    </message>
    <message>
      <source>This sheet is generic. Your product's own sheet, local codes and licensed advice come first.</source>
      <translation>Dieses Datenblatt ist allgemein. Das Datenblatt Ihres Produkts, örtliche Vorschriften und fachkundiger Rat gehen vor.</translation>
    </message>
    <message>
      <source>Ventilate: fresh air through the room without blowing on the piece. It comes before a perfect coat.</source>
      <translation>Lüften: frische Luft durch den Raum, ohne das Bild anzublasen. Das geht einer makellosen Schicht vor.</translation>
    </message>
    <message>
      <source>Flammable: no flame, torch, heater or spark while it is open or wet, and no warming above its flash point.</source>
      <translation>Entzündbar: keine Flamme, kein Brenner, kein Heizgerät und kein Funke, solange es offen oder nass ist, und nicht über den Flammpunkt erwärmen.</translation>
    </message>
    <message>
      <source>Gloves; a respirator as the product's sheet says.</source>
      <translation>Handschuhe; Atemschutz, wie das Datenblatt des Produkts es sagt.</translation>
    </message>
    <message>
      <source>Rags can ignite by themselves: dry them flat outdoors, or keep them in a closed metal container with water.</source>
      <translation>Lappen können sich selbst entzünden: flach im Freien trocknen oder in einem geschlossenen Metallbehälter mit Wasser aufbewahren.</translation>
    </message>
    <message>
      <source>what the product's own sheet names, mostly white spirit</source>
      <translation>was das Datenblatt des Produkts nennt, meist Testbenzin</translation>
    </message>
    <message>
      <source>Gloss varnish, water-borne, thick coat (generic)</source>
      <translation>Glanzfirnis, wasserbasiert, dicke Schicht (allgemein)</translation>
    </message>
    <message>
      <source>Bubbles and a small torch: extinguisher at hand, no solvent or solvent-borne coat in the room, no mesh cover on.</source>
      <translation>Blasen und ein kleiner Brenner: Feuerlöscher zur Hand, kein Lösemittel und keine lösemittelhaltige Schicht im Raum, Netzabdeckung abgenommen.</translation>
    </message>
    <message>
      <source>A thick coat stays open to dust and fingers much longer than a thin one: level, covered, and no fan.</source>
      <translation>Eine dicke Schicht bleibt viel länger empfindlich für Staub und Finger als eine dünne: waagrecht, abgedeckt und ohne Ventilator.</translation>
    </message>
    <message>
      <source>Taking varnish off may need solvent: ventilate, gloves, no flame or spark; do a test patch first.</source>
      <translation>Firnis abzunehmen kann Lösemittel brauchen: lüften, Handschuhe, keine Flamme und kein Funke; zuerst an einer kleinen Stelle probieren.</translation>
    </message>
    <message>
      <source>what the product's own sheet names</source>
      <translation>was das Datenblatt des Produkts nennt</translation>
    </message>
    <message>
      <source>Gloss varnish, water-borne, thin coat (generic)</source>
      <translation>Glanzfirnis, wasserbasiert, dünne Schicht (allgemein)</translation>
    </message>
    <message>
      <source>Gloss varnish, water-borne (generic)</source>
      <translation>Glanzfirnis, wasserbasiert (allgemein)</translation>
    </message>
    <message>
      <source>Isolation coat, water-borne (generic)</source>
      <translation>Trennschicht, wasserbasiert (allgemein)</translation>
    </message>
    <message>
      <source>not meant to be removed: it keeps the paint safe when the varnish over it is taken off</source>
      <translation>nicht zum Abnehmen gedacht: Sie schützt die Farbe, wenn der Firnis darüber abgenommen wird</translation>
    </message>
    <message>
      <source>Matt varnish, water-borne (generic)</source>
      <translation>Mattfirnis, wasserbasiert (allgemein)</translation>
    </message>
    <message>
      <source>Roll the bottle gently before use: matting agent settles. Gloss first, matt last, and no more such coats than named.</source>
      <translation>Die Flasche vor Gebrauch sanft rollen: Mattierungsmittel setzt sich ab. Erst glänzend, zuletzt matt, und nicht mehr solche Schichten als genannt.</translation>
    </message>
    <message>
      <source>Acrylic paint, brushed layer (generic)</source>
      <translation>Acrylfarbe, gestrichen (allgemein)</translation>
    </message>
    <message>
      <source>Dry on top is not dry below: test an edge before the isolation coat.</source>
      <translation>Oben trocken ist nicht durchgetrocknet: vor der Trennschicht an einem Rand prüfen.</translation>
    </message>
    <message>
      <source>Sanding dry paint: a respirator as the product's sheet says, and wipe up the dust damp.</source>
      <translation>Trockene Farbe schleifen: Atemschutz, wie das Datenblatt des Produkts es sagt, und den Staub feucht aufwischen.</translation>
    </message>
    <message>
      <source>not meant to be removed</source>
      <translation>nicht zum Abnehmen gedacht</translation>
    </message>
    <message>
      <source>Acrylic paint, poured layer (generic)</source>
      <translation>Acrylfarbe, gegossen (allgemein)</translation>
    </message>
    <message>
      <source>Satin varnish, solvent-borne (generic)</source>
      <translation>Seidenmattfirnis, lösemittelhaltig (allgemein)</translation>
    </message>
    <message>
      <source>Satin varnish, water-borne (generic)</source>
      <translation>Seidenmattfirnis, wasserbasiert (allgemein)</translation>
    </message>
    <message>
      <source>Roll the bottle gently before use: matting agent settles. Gloss first, satin last, and no more such coats than named.</source>
      <translation>Die Flasche vor Gebrauch sanft rollen: Mattierungsmittel setzt sich ab. Erst glänzend, zuletzt seidenmatt, und nicht mehr solche Schichten als genannt.</translation>
    </message>
    <message>
      <source>It was laid at a time that is still to come by this computer's clock; set the clock.</source>
      <translation>Sie wurde zu einer Zeit aufgetragen, die nach der Uhr dieses Rechners noch kommt; stellen Sie die Uhr.</translation>
    </message>
    <message>
      <source>A studio file changes coats, so it is taken in while nothing is being watched: quit studiowatch (Ctrl+Q), then run `studiowatch import {path}` in a terminal.</source>
      <translation>Eine Atelierdatei ändert Schichten und wird darum übernommen, während nichts bewacht wird: Beenden Sie studiowatch (Strg+Q), und rufen Sie dann in einem Terminal `studiowatch import {path}` auf.</translation>
    </message>
    <message>
      <source>{path} cannot be used: {fault}. Choose another place.</source>
      <translation>{path} lässt sich nicht verwenden: {fault}. Wählen Sie einen anderen Ort.</translation>
    </message>
    <message>
      <source>Written to {path}, {told}</source>
      <translation>Geschrieben in {path}, {told}</translation>
    </message>
    <message>
      <source>Written to {path}: {count} pieces and {rows} rows of what belongs to them.</source>
      <translation>Geschrieben in {path}: {count} Bilder und {rows} Zeilen mit dem, was dazugehört.</translation>
    </message>
    <message>
      <source>Backed up to {path}, and the copy is whole.</source>
      <translation>In {path} gesichert, und die Kopie ist heil.</translation>
    </message>
    <message>
      <source>copying</source>
      <translation>kopieren</translation>
    </message>
    <message>
      <source>{count} pieces</source>
      <translation>{count} Bilder</translation>
    </message>
    <message>
      <source>checking the copy</source>
      <translation>Kopie prüfen</translation>
    </message>
    <message>
      <source>The copy {path} was made, but the records have faults: {faults}</source>
      <translation>Die Kopie {path} wurde gemacht, aber die Aufzeichnungen haben Fehler: {faults}</translation>
    </message>
    <message>
      <source>Nothing could be taken from {path}; the list says what is wrong with its header.</source>
      <translation>Aus {path} ließ sich nichts übernehmen; die Liste sagt, was an der Kopfzeile falsch ist.</translation>
    </message>
    <message>
      <source>its time, {time}, lies ahead of the clock, {now}; correct the log's times or zone or the clock, or import it again once they have been.</source>
      <translation>ihre Zeit, {time}, liegt vor der Uhr, {now}; berichtigen Sie die Zeiten oder die Zeitzone der Messreihe oder die Uhr, oder lesen Sie sie noch einmal ein, wenn sie schon waren.</translation>
    </message>
    <message>
      <source>"{title}", coat {number}: {field} is {time}, which lies ahead of the clock, {now}; give a time that has been, or set the clock.</source>
      <translation>„{title}“, Schicht {number}: {field} ist {time}, und das liegt vor der Uhr, {now}; geben Sie eine Zeit an, die schon war, oder stellen Sie die Uhr.</translation>
    </message>
    <message>
      <source>The time of the reading lies {minutes} min ahead of the clock; give a time that has been.</source>
      <translation>Die Zeit des Messwerts liegt {minutes} min vor der Uhr; geben Sie eine Zeit an, die schon war.</translation>
    </message>
    <message>
      <source>The temperature is {value} {unit}; allowed is {low} to {high} {unit}. Correct it.</source>
      <translation>Die Temperatur ist {value} {unit}; erlaubt sind {low} bis {high} {unit}. Berichtigen Sie sie.</translation>
    </message>
    <message>
      <source>The humidity is {value} {unit}; allowed is {low} to {high} {unit}. Correct it.</source>
      <translation>Die Luftfeuchte ist {value} {unit}; erlaubt sind {low} bis {high} {unit}. Berichtigen Sie sie.</translation>
    </message>
    <message>
      <source>The board reads the room now; a typed reading is for when no board does.</source>
      <translation>Die Messplatine misst den Raum; ein eingetippter Messwert ist für die Zeit, in der keine misst.</translation>
    </message>
    <message>
      <source>The reading is {hours} h old; allowed is 0 to 24 h. Read the hygrometer again.</source>
      <translation>Der Messwert ist {hours} h alt; erlaubt sind 0 bis 24 h. Lesen Sie das Hygrometer noch einmal ab.</translation>
    </message>
    <message>
      <source>The reading lies {minutes} min before the latest one there is; give a later time.</source>
      <translation>Der Messwert liegt {minutes} min vor dem letzten vorhandenen; geben Sie eine spätere Zeit an.</translation>
    </message>
    <message>
      <source>That can no longer be undone: it was changed since.</source>
      <translation>Das lässt sich nicht mehr rückgängig machen: Es wurde seither geändert.</translation>
    </message>
    <message>
      <source>That can no longer be done again: it was changed since.</source>
      <translation>Das lässt sich nicht mehr wiederholen: Es wurde seither geändert.</translation>
    </message>
    <message>
      <source>There is nothing to undo: nothing was done since studiowatch was started.</source>
      <translation>Es gibt nichts rückgängig zu machen: Seit dem Start von studiowatch wurde nichts getan.</translation>
    </message>
    <message>
      <source>There is nothing to do again: nothing was undone.</source>
      <translation>Es gibt nichts zu wiederholen: Es wurde nichts rückgängig gemacht.</translation>
    </message>
    <message>
      <source>The warning would come again in {hours} h; allowed is 0 to 24 h. Choose another time.</source>
      <translation>Die Warnung käme in {hours} h wieder; erlaubt sind 0 bis 24 h. Wählen Sie eine andere Zeit.</translation>
    </message>
    <message>
      <source>{count} readings came faster than they could be kept.</source>
      <translation>{count} Messwerte kamen schneller, als sie sich speichern ließen.</translation>
    </message>
    <message>
      <source>The clock was set by {seconds} s.</source>
      <translation>Die Uhr wurde um {seconds} s verstellt.</translation>
    </message>
  </context>
</TS>
