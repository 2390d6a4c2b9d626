<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>There is no data sheet {name}; known are {known}.</source>
      <translation>Es gibt kein Datenblatt {name}; bekannt sind {known}.</translation>
    </message>
    <message>
      <source>Backed up and checked; `studiowatch --folder {folder}` opens it.</source>
      <translation>Gesichert und geprüft; `studiowatch --folder {folder}` öffnet die Sicherung.</translation>
    </message>
    <message>
      <source>The copy was made, but the records have faults: {faults}</source>
      <translation>Die Sicherung ist gemacht, aber die Aufzeichnungen haben Fehler: {faults}</translation>
    </message>
    <message>
      <source>not listened to: a wireless link or a console of the computer itself</source>
      <translation>nicht abgehört: eine Funkverbindung oder eine Konsole des Rechners selbst</translation>
    </message>
    <message>
      <source>{channel} in {unit}</source>
      <translation>{channel} in {unit}</translation>
    </message>
    <message>
      <source>not used</source>
      <translation>nicht verwendet</translation>
    </message>
    <message>
      <source>not known</source>
      <translation>nicht bekannt</translation>
    </message>
    <message>
      <source>{format} at {baud} baud</source>
      <translation>{format} mit {baud} Baud</translation>
    </message>
    <message>
      <source>--column goes with --accept PORT: say on which port the column is.</source>
      <translation>--column gehört zu --accept PORT: Nennen Sie den Anschluss, an dem die Spalte ist.</translation>
    </message>
    <message>
      <source>--listen-s is {given} s; allowed is {low} to {high} s.</source>
      <translation>--listen-s ist {given} s; erlaubt ist {low} bis {high} s.</translation>
    </message>
    <message>
      <source>No unchecked lines with numbers came from {port}; `studiowatch boards` shows what comes.</source>
      <translation>Von {port} kamen keine ungeprüften Zeilen mit Zahlen; `studiowatch boards` zeigt, was kommt.</translation>
    </message>
    <message>
      <source>Say what column {key} is: --column {key}=CHANNEL:UNIT, or --column {key}=none.</source>
      <translation>Sagen Sie, was Spalte {key} ist: --column {key}=CHANNEL:UNIT, oder --column {key}=none.</translation>
    </message>
    <message>
      <source>No column of {port} would be read; say what one of them is: --column KEY=CHANNEL:UNIT.</source>
      <translation>Keine Spalte von {port} würde gelesen; sagen Sie, was eine davon ist: --column KEY=CHANNEL:UNIT.</translation>
    </message>
    <message>
      <source>No port was found. Plug the board in; on Linux `dmesg` shows whether the computer saw it.</source>
      <translation>Kein Anschluss gefunden. Stecken Sie die Messplatine an; unter Linux zeigt `dmesg`, ob der Rechner sie gesehen hat.</translation>
    </message>
    <message>
      <source>silent</source>
      <translation>stumm</translation>
    </message>
    <message>
      <source>--column {given}: {fault}; channels are {channels}.</source>
      <translation>--column {given}: {fault}; die Messgrößen sind {channels}.</translation>
    </message>
    <message>
      <source>board {name}</source>
      <translation>Platine {name}</translation>
    </message>
    <message>
      <source>sends what cannot be read at {baud} baud: {bytes}</source>
      <translation>sendet mit {baud} Baud nichts Lesbares: {bytes}</translation>
    </message>
    <message>
      <source>{column} is {channel}</source>
      <translation>{column} ist {channel}</translation>
    </message>
    <message>
      <source>{number} pieces in {origin} are called {given}; give all but one another title first.</source>
      <translation>{number} Bilder in {origin} heißen {given}; geben Sie zuerst allen bis auf eines einen anderen Titel.</translation>
    </message>
    <message>
      <source>Watches a painter's drying room: ready times for wet coats, and warnings before the air spoils one.</source>
      <translation>Wacht über den Trockenraum eines Ateliers: Bereit-Zeiten für nasse Schichten, und Warnungen, bevor die Luft eine verdirbt.</translation>
    </message>
    <message>
      <source>show program's version number and exit</source>
      <translation>die Version des Programms zeigen, sonst nichts</translation>
    </message>
    <message>
      <source>the studio's records; default: the user's data folder</source>
      <translation>die Aufzeichnungen des Ateliers; ohne Angabe: der Datenordner des Benutzers</translation>
    </message>
    <message>
      <source>what figures for people are in; default: as the window shows them</source>
      <translation>Einheiten der Zahlen für Menschen; ohne Angabe: wie im Fenster</translation>
    </message>
    <message>
      <source>look around: a made-up studio and the built-in simulated board</source>
      <translation>zum Umsehen: ein erfundenes Atelier mit der eingebauten simulierten Messplatine</translation>
    </message>
    <message>
      <source>print instead of opening a window</source>
      <translation>in die Konsole schreiben statt ein Fenster zu öffnen</translation>
    </message>
    <message>
      <source>end by itself after so long</source>
      <translation>nach so vielen Sekunden von selbst enden</translation>
    </message>
    <message>
      <source>watch without a window: store, and print warnings</source>
      <translation>ohne Fenster wachen: speichern und Warnungen ausgeben</translation>
    </message>
    <message>
      <source>the board's port; default: the one that answers, the last one first</source>
      <translation>der Anschluss der Messplatine; ohne Angabe: der antwortet, der letzte zuerst</translation>
    </message>
    <message>
      <source>use the built-in simulated board</source>
      <translation>die eingebaute simulierte Messplatine verwenden</translation>
    </message>
    <message>
      <source>sound warnings too, until Enter is pressed; quiet hours hold</source>
      <translation>Warnungen auch hören lassen, bis die Eingabetaste gedrückt wird; Ruhezeiten gelten</translation>
    </message>
    <message>
      <source>run the whole watch over a room log, faster than life</source>
      <translation>die ganze Wache über ein Raumprotokoll laufen lassen, schneller als in Wirklichkeit</translation>
    </message>
    <message>
      <source>one JSON object a line</source>
      <translation>ein JSON-Objekt je Zeile</translation>
    </message>
    <message>
      <source>ports seen, and what answers on each</source>
      <translation>welche Anschlüsse es gibt und was an jedem antwortet</translation>
    </message>
    <message>
      <source>how long to listen on each port in each format, s</source>
      <translation>wie lange an jedem Anschluss je Format gehorcht wird, s</translation>
    </message>
    <message>
      <source>read the unchecked lines of this port as shown from now on</source>
      <translation>die ungeprüften Zeilen dieses Anschlusses ab jetzt wie gezeigt lesen</translation>
    </message>
    <message>
      <source>with --accept, what a column is: 2=humidity_pct:%%, or 3=none</source>
      <translation>mit --accept: was eine Spalte ist: 2=humidity_pct:%%, oder 3=none</translation>
    </message>
    <message>
      <source>diagnose board, database, clock and sound, or a data sheet</source>
      <translation>Messplatine, Datenbank, Uhr und Ton prüfen, oder ein Datenblatt</translation>
    </message>
    <message>
      <source>look at this data sheet instead</source>
      <translation>stattdessen dieses Datenblatt ansehen</translation>
    </message>
    <message>
      <source>make the history's overview anew from its readings</source>
      <translation>die Übersicht des Verlaufs aus seinen Messwerten neu machen</translation>
    </message>
    <message>
      <source>save what damaged records still hold into this</source>
      <translation>hierhin retten, was beschädigte Aufzeichnungen noch enthalten</translation>
    </message>
    <message>
      <source>whether the window opens when you log in</source>
      <translation>ob das Fenster beim Anmelden aufgeht</translation>
    </message>
    <message>
      <source>open it at login from now on</source>
      <translation>ab jetzt beim Anmelden öffnen</translation>
    </message>
    <message>
      <source>do not</source>
      <translation>nicht öffnen</translation>
    </message>
    <message>
      <source>only say whether it does</source>
      <translation>nur sagen, ob es so ist</translation>
    </message>
    <message>
      <source>what to do at the rack: list it, tick it off, or put it off</source>
      <translation>was am Gestell zu tun ist: auflisten, abhaken oder aufschieben</translation>
    </message>
    <message>
      <source>open prompts, soonest first, each with its number</source>
      <translation>offene Hinweise, der nächste zuerst, jeder mit seiner Nummer</translation>
    </message>
    <message>
      <source>one JSON document, with keys</source>
      <translation>ein JSON-Dokument, mit Schlüsseln</translation>
    </message>
    <message>
      <source>these were done</source>
      <translation>diese sind erledigt</translation>
    </message>
    <message>
      <source>say these again later</source>
      <translation>an diese später erinnern</translation>
    </message>
    <message>
      <source>readings out, as they were read: a room log (CSV), or SenML</source>
      <translation>Messwerte ausgeben, wie sie gelesen wurden: als Raumprotokoll (CSV) oder als SenML</translation>
    </message>
    <message>
      <source>with zone, or a day; default: the first reading</source>
      <translation>mit Zeitzone, oder ein Tag; ohne Angabe: der erste Messwert</translation>
    </message>
    <message>
      <source>up to here, with zone, or a day; default: the last</source>
      <translation>bis hierher, mit Zeitzone, oder ein Tag; ohne Angabe: der letzte</translation>
    </message>
    <message>
      <source>a room log; - for stdout</source>
      <translation>ein Raumprotokoll; - für die Standardausgabe</translation>
    </message>
    <message>
      <source>one pack of RFC 8428 in JSON; - for stdout</source>
      <translation>ein Paket nach RFC 8428 in JSON; - für die Standardausgabe</translation>
    </message>
    <message>
      <source>for SenML: what its names begin with; default: one of this machine and folder</source>
      <translation>für SenML: womit die Namen beginnen; ohne Angabe: einer für diesen Rechner und Ordner</translation>
    </message>
    <message>
      <source>copy records, readings and sheets, and check the copy; a watch may go on</source>
      <translation>Aufzeichnungen, Messwerte und Datenblätter sichern und die Sicherung prüfen; eine Wache darf weiterlaufen</translation>
    </message>
    <message>
      <source>default: the studio's own folder of backups</source>
      <translation>ohne Angabe: der Sicherungsordner des Ateliers</translation>
    </message>
    <message>
      <source>all records out, as one studio file</source>
      <translation>alle Aufzeichnungen als eine Atelierdatei ausgeben</translation>
    </message>
    <message>
      <source>- for stdout</source>
      <translation>- für die Standardausgabe</translation>
    </message>
    <message>
      <source>a room log, or the records of a studio file, into the records</source>
      <translation>ein Raumprotokoll oder den Inhalt einer Atelierdatei in die Aufzeichnungen übernehmen</translation>
    </message>
    <message>
      <source>of a studio file: also what the records have otherwise</source>
      <translation>aus einer Atelierdatei: auch das, was in den Aufzeichnungen anders steht</translation>
    </message>
    <message>
      <source>why a coat clouded, what would have changed it, and what to do now</source>
      <translation>warum eine Schicht trüb wurde, was es geändert hätte und was jetzt zu tun ist</translation>
    </message>
    <message>
      <source>among its laid coats, paint too, from 1</source>
      <translation>unter seinen aufgetragenen Schichten, auch der Farbe, ab 1</translation>
    </message>
    <message>
      <source>with --room; without both, the records</source>
      <translation>mit --room; ohne beide die Aufzeichnungen</translation>
    </message>
    <message>
      <source>one JSON document</source>
      <translation>ein JSON-Dokument</translation>
    </message>
    <message>
      <source>the finishing record of a piece, for the client and the conservator</source>
      <translation>das Abschlussprotokoll eines Bildes, für Auftraggeber und Restauratoren</translation>
    </message>
    <message>
      <source>its title</source>
      <translation>sein Titel</translation>
    </message>
    <message>
      <source>one page that needs no other file</source>
      <translation>eine Seite, die keine weitere Datei braucht</translation>
    </message>
    <message>
      <source>default: a4</source>
      <translation>ohne Angabe: a4</translation>
    </message>
    <message>
      <source>leave out the notes on the piece</source>
      <translation>die Notizen zum Bild weglassen</translation>
    </message>
    <message>
      <source>instead of the records</source>
      <translation>statt der Aufzeichnungen</translation>
    </message>
    <message>
      <source>with --studio</source>
      <translation>mit --studio</translation>
    </message>
    <message>
      <source>finishing plan and prompts, from the records or of a studio file</source>
      <translation>Abschlussplan und Hinweise, aus den Aufzeichnungen oder aus einer Atelierdatei</translation>
    </message>
    <message>
      <source>set them: monday=09:00-18:00, sunday=off</source>
      <translation>Arbeitszeiten setzen: monday=09:00-18:00, sunday=off</translation>
    </message>
    <message>
      <source>keep coats, lowest first, under a name</source>
      <translation>Schichten, die unterste zuerst, unter einem Namen behalten</translation>
    </message>
    <message>
      <source>forget a recipe of your own</source>
      <translation>ein eigenes Rezept vergessen</translation>
    </message>
    <message>
      <source>plan a recipe's coats for a piece</source>
      <translation>die Schichten eines Rezepts für ein Bild einplanen</translation>
    </message>
    <message>
      <source>also write a calendar file (RFC 5545); - for stdout, alone</source>
      <translation>auch eine Kalenderdatei (RFC 5545) schreiben; - für die Standardausgabe, dann nur diese</translation>
    </message>
    <message>
      <source>what you mean to do with the room; without options, what is meant so far</source>
      <translation>was Sie mit dem Raum vorhaben; ohne Optionen, was bisher vorgesehen ist</translation>
    </message>
    <message>
      <source>a heater is on then, each day; needs --to-C</source>
      <translation>dann läuft täglich ein Heizgerät; braucht --to-C</translation>
    </message>
    <message>
      <source>a dehumidifier is on then, each day; needs --to-pct</source>
      <translation>dann läuft täglich ein Entfeuchter; braucht --to-pct</translation>
    </message>
    <message>
      <source>a fan is on then, each day</source>
      <translation>dann läuft ein Ventilator, an jedem der Tage</translation>
    </message>
    <message>
      <source>the fan stays off then; without hours, at any time until you forget it</source>
      <translation>dann bleibt der Ventilator aus; ohne Stunden jederzeit, bis Sie es vergessen lassen</translation>
    </message>
    <message>
      <source>this one is not meant any more</source>
      <translation>dieses ist nicht mehr vorgesehen</translation>
    </message>
    <message>
      <source>what the heater is set to, °C</source>
      <translation>worauf das Heizgerät gestellt ist, °C</translation>
    </message>
    <message>
      <source>what the dehumidifier is set to, %% RH</source>
      <translation>worauf der Entfeuchter gestellt ist, %% r. F.</translation>
    </message>
    <message>
      <source>how the fan moves the air at the pieces, m/s; default: 0.5</source>
      <translation>wie der Ventilator die Luft an den Bildern bewegt, m/s; Vorgabe: 0.5</translation>
    </message>
    <message>
      <source>on every day until you forget it</source>
      <translation>an jedem Tag, bis Sie es vergessen lassen</translation>
    </message>
    <message>
      <source>on how many days in a row; default: 1</source>
      <translation>an wie vielen Tagen hintereinander; sonst: 1</translation>
    </message>
    <message>
      <source>when the pieces would be ready in a room held otherwise from now on</source>
      <translation>wann die Bilder bereit wären, wenn der Raum ab jetzt anders gehalten würde</translation>
    </message>
    <message>
      <source>kept at this, °C</source>
      <translation>darauf gehalten, °C</translation>
    </message>
    <message>
      <source>kept at this, %% RH; else vapour stays</source>
      <translation>darauf gehalten, %% r. F.; sonst bleibt der Wasserdampf im Raum</translation>
    </message>
    <message>
      <source>air moving at this, m/s; 0: nothing is on</source>
      <translation>Luft bewegt sich so schnell, m/s; 0: nichts läuft</translation>
    </message>
    <message>
      <source>a mesh cover over every coat from now on</source>
      <translation>ab jetzt eine Netzabdeckung über jeder Schicht</translation>
    </message>
    <message>
      <source>for so long; default: for good</source>
      <translation>so lange; Vorgabe: auf Dauer</translation>
    </message>
    <message>
      <source>this studio instead of the records</source>
      <translation>dieses Atelier statt der Aufzeichnungen</translation>
    </message>
    <message>
      <source>with --studio, its room log; it is told of its end</source>
      <translation>mit --studio: sein Raumprotokoll; es geht um dessen Ende</translation>
    </message>
    <message>
      <source>with --studio, °C, %%, m/s held all the time; default: 23,50,0.1</source>
      <translation>mit --studio: °C, %%, m/s, durchgehend gehalten; ohne Angabe: 23,50,0.1</translation>
    </message>
    <message>
      <source>with --studio, the moment to tell of, with zone; default: now</source>
      <translation>mit --studio: der Zeitpunkt, um den es geht, mit Zone; Vorgabe: jetzt</translation>
    </message>
    <message>
      <source>name=header pairs for logs of other loggers: temperature_F=Temp,time=When</source>
      <translation>Paare name=Kopf für Protokolle anderer Messgeräte: temperature_F=Temp,time=Wann</translation>
    </message>
    <message>
      <source>what times without a zone are in, such as Europe/Berlin</source>
      <translation>Zone der Zeiten ohne Zeitzone, etwa Europe/Berlin</translation>
    </message>
    <message>
      <source>how times are written if not as ISO 8601, such as '%%d.%%m.%%Y %%H:%%M'</source>
      <translation>wie Zeiten geschrieben sind, wenn nicht nach ISO 8601, etwa '%%d.%%m.%%Y %%H:%%M'</translation>
    </message>
    <message>
      <source>stage times of one coat in a given room</source>
      <translation>wann eine Schicht in einem gegebenen Raum welche Trockenstufe erreicht</translation>
    </message>
    <message>
      <source>wet film thickness, µm</source>
      <translation>Dicke des Nassfilms, µm</translation>
    </message>
    <message>
      <source>side of the square of the piece's area, m</source>
      <translation>Seite des Quadrats von der Fläche des Bildes, m</translation>
    </message>
    <message>
      <source>what the coat is laid straight on; default: sealed</source>
      <translation>worauf die Schicht unmittelbar liegt; ohne Angabe: sealed</translation>
    </message>
    <message>
      <source>water or thinner added, %% of the volume</source>
      <translation>zugegebenes Wasser oder Verdünner, %% des Volumens</translation>
    </message>
    <message>
      <source>a mesh cover stands over the coat from the laying on</source>
      <translation>ab dem Auftragen steht eine Abdeckung aus Gewebe über der Schicht</translation>
    </message>
    <message>
      <source>the film follows from mL or grams: a narrower range</source>
      <translation>der Film folgt aus mL oder Gramm: eine engere Spanne</translation>
    </message>
    <message>
      <source>°C, %%, m/s held all the time</source>
      <translation>°C, %%, m/s, durchgehend gehalten</translation>
    </message>
    <message>
      <source>a room log; needs --laid</source>
      <translation>ein Raumprotokoll; braucht --laid</translation>
    </message>
    <message>
      <source>when the brush went down, with zone</source>
      <translation>wann der Pinsel ansetzte, mit Zeitzone</translation>
    </message>
    <message>
      <source>draws of the range</source>
      <translation>Ziehungen für die Spanne</translation>
    </message>
    <message>
      <source>how far to look, h</source>
      <translation>wie weit vorausgeschaut wird, h</translation>
    </message>
    <message>
      <source>also print each term of the balance so long after laying; without HOURS at a quarter of an hour</source>
      <translation>auch jedes Glied der Bilanz so lange nach dem Auftragen ausgeben; ohne HOURS nach einer Viertelstunde</translation>
    </message>
    <message>
      <source>for how long; default: 5</source>
      <translation>für wie lange; ohne Angabe: 5</translation>
    </message>
    <message>
      <source>board</source>
      <translation>Platine</translation>
    </message>
    <message>
      <source>database</source>
      <translation>Datenbank</translation>
    </message>
    <message>
      <source>clock</source>
      <translation>Uhr</translation>
    </message>
    <message>
      <source>sound</source>
      <translation>Ton</translation>
    </message>
    <message>
      <source>no fault; kappa is {kappa}, plausible is {low} to {high}</source>
      <translation>kein Fehler; Kappa ist {kappa}, plausibel ist {low} bis {high}</translation>
    </message>
    <message>
      <source>A board may be on {ports}; `studiowatch boards` listens to it.</source>
      <translation>An {ports} kann eine Messplatine sein; `studiowatch boards` horcht hin.</translation>
    </message>
    <message>
      <source>{file} is whole: pages, tables, sealed hours ({hours}) and their overview; {last}.</source>
      <translation>{file} ist heil: Seiten, Tabellen, abgeschlossene Stunden ({hours}) und ihre Übersicht; {last}.</translation>
    </message>
    <message>
      <source>The overview of {file} was made anew from its readings.</source>
      <translation>Die Übersicht von {file} wurde aus den Messwerten neu gemacht.</translation>
    </message>
    <message>
      <source>Warnings are heard through {way}; try the sound in the window, under Warnings.</source>
      <translation>So sind Warnungen zu hören: {way}. Probieren Sie den Ton im Fenster aus, unter Warnungen.</translation>
    </message>
    <message>
      <source>no fault</source>
      <translation>kein Fehler</translation>
    </message>
    <message>
      <source>There are no records yet; they will lie in {file}.</source>
      <translation>Es gibt noch keine Aufzeichnungen; sie werden in {file} liegen.</translation>
    </message>
    <message>
      <source>there is no reading yet</source>
      <translation>es gibt noch keinen Messwert</translation>
    </message>
    <message>
      <source>the last reading is of {moment}</source>
      <translation>der letzte Messwert ist von {moment}</translation>
    </message>
    <message>
      <source>The clock says {moment}, which cannot be; set it, or ready times will be wrong.</source>
      <translation>Die Uhr zeigt {moment}, was nicht sein kann; stellen Sie sie, sonst sind die Bereit-Zeiten falsch.</translation>
    </message>
    <message>
      <source>Warnings cannot be heard: {trouble}. What is left: {way}. Connect a loudspeaker.</source>
      <translation>Warnungen sind nicht zu hören: {trouble}. Was bleibt: {way}. Schließen Sie einen Lautsprecher an.</translation>
    </message>
    <message>
      <source>--{first} and --{second} exclude each other; leave one out.</source>
      <translation>--{first} und --{second} schließen einander aus; lassen Sie eines weg.</translation>
    </message>
    <message>
      <source>There are no records in {folder}; there is nothing to rebuild.</source>
      <translation>In {folder} sind keine Aufzeichnungen; es gibt nichts neu zu machen.</translation>
    </message>
    <message>
      <source>What could be read is in {new}; keep {old} as it is until you have looked at it.</source>
      <translation>Was zu lesen war, steht in {new}; lassen Sie {old}, wie es ist, bis Sie es angesehen haben.</translation>
    </message>
    <message>
      <source>The data sheet {file} cannot be read: {fault}.</source>
      <translation>Das Datenblatt {file} lässt sich nicht lesen: {fault}.</translation>
    </message>
    <message>
      <source>The data sheet {file} is not UTF-8 text (byte {place}); save it as UTF-8.</source>
      <translation>Das Datenblatt {file} ist kein Text in UTF-8 (Byte {place}); speichern Sie es als UTF-8.</translation>
    </message>
    <message>
      <source>fine</source>
      <translation>gut</translation>
    </message>
    <message>
      <source>LOOK</source>
      <translation>SIEHE</translation>
    </message>
    <message>
      <source>No USB port with a board was found; plug it in.</source>
      <translation>Kein USB-Anschluss mit einer Messplatine gefunden; stecken Sie sie an.</translation>
    </message>
    <message>
      <source>note</source>
      <translation>dazu</translation>
    </message>
    <message>
      <source>{file} cannot be used before its faults are mended</source>
      <translation>{file} ist nicht brauchbar, bevor seine Fehler behoben sind</translation>
    </message>
    <message>
      <source>{file} can be used as it stands</source>
      <translation>{file} ist brauchbar, wie es ist</translation>
    </message>
    <message>
      <source>kept</source>
      <translation>da</translation>
    </message>
    <message>
      <source>LOST</source>
      <translation>FEHLT</translation>
    </message>
    <message>
      <source>Recorded: a coat laid on {title}</source>
      <translation>Festgehalten: eine Schicht aufgetragen auf {title}</translation>
    </message>
    <message>
      <source>Recorded: a coat to come on {title}</source>
      <translation>Festgehalten: eine kommende Schicht auf {title}</translation>
    </message>
    <message>
      <source>Recorded: a correction on {title}</source>
      <translation>Festgehalten: eine Berichtigung bei {title}</translation>
    </message>
    <message>
      <source>Recorded: a coat taken back on {title}</source>
      <translation>Festgehalten: eine Schicht zurückgenommen bei {title}</translation>
    </message>
    <message>
      <source>Recorded: a cover set on {title}</source>
      <translation>Festgehalten: eine Abdeckung gestellt über {title}</translation>
    </message>
    <message>
      <source>Recorded: a look on {title}</source>
      <translation>Festgehalten: eine Prüfung bei {title}</translation>
    </message>
    <message>
      <source>Recorded: a look taken back on {title}</source>
      <translation>Festgehalten: eine Prüfung zurückgenommen bei {title}</translation>
    </message>
    <message>
      <source>Recorded: how a coat came out on {title}</source>
      <translation>Festgehalten: wie eine Schicht geworden ist bei {title}</translation>
    </message>
    <message>
      <source>Coat {number} of {title} is not on yet; there is nothing to correct.</source>
      <translation>Schicht {number} von {title} ist noch nicht aufgetragen; es gibt nichts zu berichtigen.</translation>
    </message>
    <message>
      <source>There is no coat {number} on {title}; allowed is none: it has no coat.</source>
      <translation>Auf {title} gibt es keine Schicht {number}; erlaubt ist keine: das Bild hat keine Schicht.</translation>
    </message>
    <message>
      <source>There is no coat {number} on {title}; allowed is 1 to {last}.</source>
      <translation>Auf {title} gibt es keine Schicht {number}; erlaubt ist 1 bis {last}.</translation>
    </message>
    <message>
      <source>There is no look {number} at that coat; allowed is none: nobody has looked at it.</source>
      <translation>Für diese Schicht gibt es keine Prüfung {number}; erlaubt ist keine: niemand hat sie geprüft.</translation>
    </message>
    <message>
      <source>There is no look {number} at that coat; allowed is 1 to {last}.</source>
      <translation>Für diese Schicht gibt es keine Prüfung {number}; erlaubt ist 1 bis {last}.</translation>
    </message>
    <message>
      <source>{first} and {second} exclude each other; leave one out</source>
      <translation>{first} und {second} schließen einander aus; lassen Sie eines weg</translation>
    </message>
    <message>
      <source>demo has a folder of its own and takes no --folder; leave it out.</source>
      <translation>demo hat einen eigenen Ordner und nimmt kein --folder; lassen Sie es weg.</translation>
    </message>
    <message>
      <source>{file} cannot be used: {fault}.</source>
      <translation>{file} lässt sich nicht verwenden: {fault}.</translation>
    </message>
    <message>
      <source>studiowatch is open on this studio already; its window was brought to the front.</source>
      <translation>studiowatch ist für dieses Atelier schon offen; sein Fenster wurde nach vorn geholt.</translation>
    </message>
    <message>
      <source>--units is for what a command prints; in the window, choose under View, Units.</source>
      <translation>--units gilt für das, was ein Befehl ausgibt; im Fenster wählen Sie unter Ansicht, Einheiten.</translation>
    </message>
    <message>
      <source>The output</source>
      <translation>Die Ausgabe</translation>
    </message>
    <message>
      <source>a made-up studio</source>
      <translation>ein erfundenes Atelier</translation>
    </message>
    <message>
      <source>--seconds belongs to --headless: a window stays open until you close it.</source>
      <translation>--seconds gehört zu --headless: Ein Fenster bleibt offen, bis Sie es schließen.</translation>
    </message>
    <message>
      <source>wet: the polymer is not packed yet, and water leaves as from a plate of water</source>
      <translation>nass: das Polymer liegt noch nicht dicht, Wasser geht wie von einer Wasserfläche</translation>
    </message>
    <message>
      <source>packed: free water leaves through a dry layer that grows from the top</source>
      <translation>dicht: freies Wasser geht durch eine trockene Lage, die von oben wächst</translation>
    </message>
    <message>
      <source>touch-dry: free water has gone, and bound water leaves through the film</source>
      <translation>grifffest: das freie Wasser ist fort, gebundenes geht durch den Film</translation>
    </message>
    <message>
      <source>wet: free solvent leaves through the air</source>
      <translation>nass: freies Lösemittel geht in die Luft</translation>
    </message>
    <message>
      <source>touch-dry: free solvent has gone, and what is retained leaves through the resin</source>
      <translation>grifffest: das freie Lösemittel ist fort, das zurückgehaltene geht durch das Harz</translation>
    </message>
    <message>
      <source>paint: water leaves by diffusion</source>
      <translation>Farbe: Wasser geht durch Diffusion</translation>
    </message>
    <message>
      <source>air</source>
      <translation>Luft</translation>
    </message>
    <message>
      <source>film</source>
      <translation>Film</translation>
    </message>
    <message>
      <source>vapour</source>
      <translation>Dampf</translation>
    </message>
    <message>
      <source>transfer</source>
      <translation>Übergang</translation>
    </message>
    <message>
      <source>heat</source>
      <translation>Wärme</translation>
    </message>
    <message>
      <source>skinning</source>
      <translation>Hautbildung</translation>
    </message>
    <message>
      <source>water</source>
      <translation>Wasser</translation>
    </message>
    <message>
      <source>solvent</source>
      <translation>Lösemittel</translation>
    </message>
    <message>
      <source>blush</source>
      <translation>Weißanlaufen</translation>
    </message>
    <message>
      <source>ages</source>
      <translation>Alter</translation>
    </message>
    <message>
      <source>the moment to explain</source>
      <translation>der zu erklärende Zeitpunkt</translation>
    </message>
    <message>
      <source>h after laying</source>
      <translation>h nach dem Auftragen</translation>
    </message>
    <message>
      <source>The balance {length} after laying, nominal run</source>
      <translation>Die Bilanz {length} nach dem Auftragen, Nennlauf</translation>
    </message>
    <message>
      <source>not in play: nothing free is left</source>
      <translation>ohne Wirkung: nichts Freies ist mehr da</translation>
    </message>
    <message>
      <source>Written to {file}: pieces: {pieces}; rows of what belongs to them: {rows}.</source>
      <translation>Geschrieben nach {file}: Bilder: {pieces}; Zeilen dazu: {rows}.</translation>
    </message>
    <message>
      <source>{temperature}, {humidity} % RH, {speed}, held all the time</source>
      <translation>{temperature}, {humidity} % r. F., {speed}, durchgehend gehalten</translation>
    </message>
    <message>
      <source>--laid belongs to --room; with --air the same air is held from the laying on.</source>
      <translation>--laid gehört zu --room; mit --air bleibt die Luft ab dem Auftragen gleich.</translation>
    </message>
    <message>
      <source>--room needs --laid: when the brush went down, as 2026-03-02T09:00:00Z.</source>
      <translation>--room braucht --laid: wann der Pinsel ansetzte, etwa 2026-03-02T09:00:00Z.</translation>
    </message>
    <message>
      <source>The room log {file} has no temperature with humidity at or after {moment}.</source>
      <translation>Das Raumprotokoll {file} hat ab {moment} keine Temperatur mit Luftfeuchte.</translation>
    </message>
    <message>
      <source>{file}, from {moment} on</source>
      <translation>{file}, ab {moment}</translation>
    </message>
    <message>
      <source>{some} of {all} readings have no air speed: still air of {speed} is taken</source>
      <translation>{some} von {all} Messwerten haben keine Luftbewegung: genommen wird stille Luft mit {speed}</translation>
    </message>
    <message>
      <source>{some} of {all} readings are from under a cover, left out here: --covered takes it for all</source>
      <translation>{some} von {all} Messwerten stammen unter einer Abdeckung, hier nicht berücksichtigt: --covered nimmt sie für alle an</translation>
    </message>
    <message>
      <source>the room log has one reading from the laying on: its air is carried on</source>
      <translation>das Raumprotokoll hat ab dem Auftragen nur einen Messwert: seine Luft gilt weiter</translation>
    </message>
    <message>
      <source>Written to {file}, {what}</source>
      <translation>Geschrieben nach {file}, {what}</translation>
    </message>
    <message>
      <source>--name belongs to --senml: it is what the names in there begin with.</source>
      <translation>--name gehört zu --senml: damit beginnen dort die Namen.</translation>
    </message>
    <message>
      <source>{hours} h {minutes} min</source>
      <translation>{hours} h {minutes} min</translation>
    </message>
    <message>
      <source>{days} d {hours} h</source>
      <translation>{days} T {hours} h</translation>
    </message>
    <message>
      <source>{minutes} min</source>
      <translation>{minutes} min</translation>
    </message>
    <message>
      <source>the temperature in °C in --air</source>
      <translation>die Temperatur in °C in --air</translation>
    </message>
    <message>
      <source>the relative humidity in % in --air</source>
      <translation>die relative Luftfeuchte in % in --air</translation>
    </message>
    <message>
      <source>the air speed in m/s in --air</source>
      <translation>die Luftgeschwindigkeit in m/s in --air</translation>
    </message>
    <message>
      <source>{file}: {title}, coat {number}: {sentence}</source>
      <translation>{file}: {title}, Schicht {number}: {sentence}</translation>
    </message>
    <message>
      <source>{file} holds more than {limit} MB of text; give the file that was meant.</source>
      <translation>{file} enthält mehr als {limit} MB Text; nennen Sie die Datei, die gemeint war.</translation>
    </message>
    <message>
      <source>{option} is {given}, which is no serial port; `studiowatch boards` lists those there are.</source>
      <translation>{option} ist {given}, das ist kein serieller Anschluss; `studiowatch boards` nennt die vorhandenen.</translation>
    </message>
    <message>
      <source>--seconds is {given} s; give a number above 0.</source>
      <translation>--seconds ist {given} s; geben Sie eine Zahl über 0 an.</translation>
    </message>
    <message>
      <source>--air has {given}; give temperature in °C, relative humidity in %, air speed in m/s, as 20,55,0.05.</source>
      <translation>--air hat {given}; geben Sie Temperatur in °C, relative Luftfeuchte in %, Luftgeschwindigkeit in m/s an, etwa 20,55,0.05.</translation>
    </message>
    <message>
      <source>{what} is {given}; a finite number is needed.</source>
      <translation>{what} ist {given}; gebraucht wird eine endliche Zahl.</translation>
    </message>
    <message>
      <source>{option} is {given} without a zone; add Z or an offset, as 2026-03-02T09:00:00Z.</source>
      <translation>{option} ist {given} ohne Zeitzone; fügen Sie Z oder den Abstand zu UTC an, etwa 2026-03-02T09:00:00Z.</translation>
    </message>
    <message>
      <source>--to is {end}, which is before any reading; give a later end.</source>
      <translation>--to ist {end}, das liegt vor jedem Messwert; geben Sie ein späteres Ende an.</translation>
    </message>
    <message>
      <source>--to is {end}, which is not after --from, {start}; give a later end.</source>
      <translation>--to ist {end}, das liegt nicht nach --from, {start}; geben Sie ein späteres Ende an.</translation>
    </message>
    <message>
      <source>The room log {file} cannot be read: {fault}.</source>
      <translation>Das Raumprotokoll {file} lässt sich nicht lesen: {fault}.</translation>
    </message>
    <message>
      <source>{option} belongs to --room: it says how a room log is written.</source>
      <translation>{option} gehört zu --room: es sagt, wie ein Raumprotokoll geschrieben ist.</translation>
    </message>
    <message>
      <source>--zone is {given}, which is not known here; give one such as Europe/Berlin, or UTC.</source>
      <translation>--zone ist {given}, das ist hier nicht bekannt; geben Sie etwa Europe/Berlin an, oder UTC.</translation>
    </message>
    <message>
      <source>--columns has {given}; give name=header pairs with commas between, as temperature_C=Temp.</source>
      <translation>--columns hat {given}; geben Sie Paare name=Kopf mit Kommas dazwischen an, etwa temperature_C=Temp.</translation>
    </message>
    <message>
      <source>{file} cannot be read: {fault}.</source>
      <translation>{file} lässt sich nicht lesen: {fault}.</translation>
    </message>
    <message>
      <source>The studio file {file} cannot be read: {fault}.</source>
      <translation>Die Atelierdatei {file} lässt sich nicht lesen: {fault}.</translation>
    </message>
    <message>
      <source>The studio file {file} is not UTF-8 text (byte {place}); save it as UTF-8.</source>
      <translation>Die Atelierdatei {file} ist kein Text in UTF-8 (Byte {place}); speichern Sie sie als UTF-8.</translation>
    </message>
    <message>
      <source>{what} is {given}; a number is needed, with a point for decimals.</source>
      <translation>{what} ist {given}; gebraucht wird eine Zahl, mit Punkt vor den Dezimalen.</translation>
    </message>
    <message>
      <source>{option} is {given}; give date and time with zone, as 2026-03-02T09:00:00Z.</source>
      <translation>{option} ist {given}; geben Sie Tag und Zeit mit Zeitzone an, etwa 2026-03-02T09:00:00Z.</translation>
    </message>
    <message>
      <source>{option} is {given}; allowed is up to 9999-12-30.</source>
      <translation>{option} ist {given}; erlaubt ist bis 9999-12-30.</translation>
    </message>
    <message>
      <source>A heater is set with --to-C, as --to-C 21; give that.</source>
      <translation>Ein Heizgerät wird mit --to-C gestellt, wie --to-C 21; geben Sie das an.</translation>
    </message>
    <message>
      <source>A dehumidifier is set with --to-pct, as --to-pct 50; give that.</source>
      <translation>Ein Entfeuchter wird mit --to-pct gestellt, wie --to-pct 50; geben Sie das an.</translation>
    </message>
    <message>
      <source>A fan is set with --at-m-s, as --at-m-s 0.5, or with nothing; leave the others out.</source>
      <translation>Ein Ventilator wird mit --at-m-s eingestellt, etwa --at-m-s 0.5, oder gar nicht; lassen Sie die anderen weg.</translation>
    </message>
    <message>
      <source>A fan that stays off is set to nothing; leave --to-C, --to-pct and --at-m-s out.</source>
      <translation>Ein Ventilator, der aus bleibt, wird auf nichts eingestellt; lassen Sie --to-C, --to-pct und --at-m-s weg.</translation>
    </message>
    <message>
      <source>Forgotten: {intention}</source>
      <translation>Nicht mehr vorgesehen: {intention}</translation>
    </message>
    <message>
      <source>Meant: {intention}</source>
      <translation>Vorgesehen: {intention}</translation>
    </message>
    <message>
      <source>{option} goes with --heater, --dehumidifier, --fan or --fan-off; give one.</source>
      <translation>{option} gehört zu --heater, --dehumidifier, --fan oder --fan-off; geben Sie eines davon an.</translation>
    </message>
    <message>
      <source>Nothing is meant for the room.</source>
      <translation>Für den Raum ist nichts vorgesehen.</translation>
    </message>
    <message>
      <source>none</source>
      <translation>keine</translation>
    </message>
    <message>
      <source>There is no intention {given}; allowed is {known}, as `intend` lists them.</source>
      <translation>Es gibt kein Vorhaben {given}; erlaubt ist {known}, wie `intend` sie aufzählt.</translation>
    </message>
    <message>
      <source>--drop stands alone; leave the others out.</source>
      <translation>--drop steht allein; lassen Sie die anderen weg.</translation>
    </message>
    <message>
      <source>--json goes with the list; leave it out.</source>
      <translation>--json gehört zur Liste; lassen Sie es weg.</translation>
    </message>
    <message>
      <source>Give --days or --every-day, not both.</source>
      <translation>Geben Sie --days oder --every-day an, nicht beides.</translation>
    </message>
    <message>
      <source>A fan that is on moves the air; give --at-m-s more than 0, or --fan-off.</source>
      <translation>Ein Ventilator, der läuft, bewegt die Luft; geben Sie bei --at-m-s mehr als 0 an, oder --fan-off.</translation>
    </message>
    <message>
      <source>studiowatch starts at login ({file}).</source>
      <translation>studiowatch startet beim Anmelden ({file}).</translation>
    </message>
    <message>
      <source>studiowatch does not start at login ({file}).</source>
      <translation>studiowatch startet nicht beim Anmelden ({file}).</translation>
    </message>
    <message>
      <source>{file} is there already; choose a new name, or move it away first.</source>
      <translation>{file} gibt es schon; wählen Sie einen neuen Namen, oder räumen Sie die Datei vorher weg.</translation>
    </message>
    <message>
      <source>The output is closed, so that nothing can be written to it; give the name of a file.</source>
      <translation>Die Ausgabe ist geschlossen, sodass sich nichts in sie schreiben lässt; geben Sie den Namen einer Datei an.</translation>
    </message>
    <message>
      <source>{file} is a folder; give the name of a file.</source>
      <translation>{file} ist ein Ordner; nennen Sie eine Datei.</translation>
    </message>
    <message>
      <source>one of {options} must be given</source>
      <translation>eines von {options} muss angegeben werden</translation>
    </message>
    <message>
      <source>positional arguments</source>
      <translation>Angaben der Reihe nach</translation>
    </message>
    <message>
      <source>options</source>
      <translation>Optionen</translation>
    </message>
    <message>
      <source>{first} or {second}</source>
      <translation>{first} oder {second}</translation>
    </message>
    <message>
      <source>{fault}; `{program} --help` shows what it takes.</source>
      <translation>{fault}; `{program} --help` zeigt, was möglich ist.</translation>
    </message>
    <message>
      <source>usage: </source>
      <translation>Aufruf: </translation>
    </message>
    <message>
      <source>show this help message and exit</source>
      <translation>diese Hilfe zeigen, sonst nichts</translation>
    </message>
    <message>
      <source>{option} must be given</source>
      <translation>{option} muss angegeben werden</translation>
    </message>
    <message>
      <source>{words} is not known here</source>
      <translation>{words} ist hier nicht bekannt</translation>
    </message>
    <message>
      <source>there is no command {given}; there are {commands}</source>
      <translation>es gibt keinen Befehl {given}; es gibt {commands}</translation>
    </message>
    <message>
      <source>{option} is {given}; allowed is {allowed}</source>
      <translation>{option} ist {given}; erlaubt ist {allowed}</translation>
    </message>
    <message>
      <source>{option} is {given}; give a number</source>
      <translation>{option} ist {given}; geben Sie eine Zahl an</translation>
    </message>
    <message>
      <source>{option} is {given}; give a whole number</source>
      <translation>{option} ist {given}; geben Sie eine ganze Zahl an</translation>
    </message>
    <message>
      <source>--air needs a value behind it, one below zero joined to it, as --air=-5,80,0.05</source>
      <translation>--air braucht einen Wert dahinter, einen unter null angehängt, etwa --air=-5,80,0.05</translation>
    </message>
    <message>
      <source>{option} needs a value behind it</source>
      <translation>{option} braucht einen Wert dahinter</translation>
    </message>
    <message>
      <source>{option} needs {count} values behind it</source>
      <translation>{option} braucht {count} Werte dahinter</translation>
    </message>
    <message>
      <source>{option} takes no value, and was given {given}</source>
      <translation>{option} nimmt keinen Wert und bekam {given}</translation>
    </message>
    <message>
      <source>There is no piece {given} on the rack; there are {titles}.</source>
      <translation>Auf dem Gestell gibt es kein Bild {given}; dort sind: {titles}.</translation>
    </message>
    <message>
      <source>No piece on the rack has the words {words}.</source>
      <translation>Kein Bild auf dem Gestell hat die Wörter {words}.</translation>
    </message>
    <message>
      <source>The piece {given} is in the archive; `piece restore` brings it back.</source>
      <translation>Das Bild {given} ist im Archiv; `piece restore` holt es zurück.</translation>
    </message>
    <message>
      <source>There is no piece {given} in the archive; there are {titles}.</source>
      <translation>Im Archiv gibt es kein Bild {given}; dort sind: {titles}.</translation>
    </message>
    <message>
      <source>No piece in the archive has the words {words}.</source>
      <translation>Kein Bild im Archiv hat die Wörter {words}.</translation>
    </message>
    <message>
      <source>Registered: {title}</source>
      <translation>Eingetragen: {title}</translation>
    </message>
    <message>
      <source>Changed: {title}</source>
      <translation>Geändert: {title}</translation>
    </message>
    <message>
      <source>Taken off the rack: {title}</source>
      <translation>Vom Gestell genommen: {title}</translation>
    </message>
    <message>
      <source>Back on the rack: {title}</source>
      <translation>Wieder auf dem Gestell: {title}</translation>
    </message>
    <message>
      <source>At place {place}: {title}</source>
      <translation>Auf Platz {place}: {title}</translation>
    </message>
    <message>
      <source>The piece {given} is on the rack already.</source>
      <translation>Das Bild {given} ist schon auf dem Gestell.</translation>
    </message>
    <message>
      <source>There is no piece {given} on the rack or in the archive; there are {titles}.</source>
      <translation>Weder auf dem Gestell noch im Archiv gibt es ein Bild {given}; dort sind: {titles}.</translation>
    </message>
    <message>
      <source>No piece in the archive.</source>
      <translation>Kein Bild im Archiv.</translation>
    </message>
    <message>
      <source>No piece on the rack.</source>
      <translation>Kein Bild auf dem Gestell.</translation>
    </message>
    <message>
      <source>The place is {place}; allowed is 1 to {last}. Choose one of these.</source>
      <translation>Der Platz ist {place}; erlaubt ist 1 bis {last}. Wählen Sie einen davon.</translation>
    </message>
    <message>
      <source>--paint and --painted belong together: the sheet of the paint, and when the last of it was laid.</source>
      <translation>--paint und --painted gehören zusammen: das Datenblatt der Farbe, und wann die letzte Farbe aufgetragen wurde.</translation>
    </message>
    <message>
      <source>--due is {given}; give a day like 2026-03-20.</source>
      <translation>--due ist {given}; geben Sie einen Tag wie 2026-03-20 an.</translation>
    </message>
    <message>
      <source>correct what was recorded of a coat; what is not given stays</source>
      <translation>berichtigen, was zu einer Schicht festgehalten ist; was nicht genannt wird, bleibt</translation>
    </message>
    <message>
      <source>take a coat back: it was not laid, or is not to come</source>
      <translation>eine Schicht zurücknehmen: sie wurde nicht aufgetragen, oder soll nicht kommen</translation>
    </message>
    <message>
      <source>a mesh cover was set over a coat</source>
      <translation>über eine Schicht wurde eine Abdeckung aus Gewebe gestellt</translation>
    </message>
    <message>
      <source>a touch test or look</source>
      <translation>eine Griffprobe oder Sichtprüfung</translation>
    </message>
    <message>
      <source>take a look back</source>
      <translation>eine Prüfung zurücknehmen</translation>
    </message>
    <message>
      <source>how a coat came out</source>
      <translation>wie eine Schicht geworden ist</translation>
    </message>
    <message>
      <source>the pieces on the rack</source>
      <translation>die Bilder auf dem Gestell</translation>
    </message>
    <message>
      <source>those off the rack instead</source>
      <translation>stattdessen die archivierten</translation>
    </message>
    <message>
      <source>only those with all these words</source>
      <translation>nur die mit allen diesen Wörtern</translation>
    </message>
    <message>
      <source>all that was recorded of a piece, and its corrections</source>
      <translation>alles, was zu einem Bild festgehalten ist, mit den Berichtigungen</translation>
    </message>
    <message>
      <source>register a piece</source>
      <translation>ein Bild eintragen</translation>
    </message>
    <message>
      <source>change what is registered of a piece; what is not given stays</source>
      <translation>ändern, was zu einem Bild eingetragen ist; was nicht genannt wird, bleibt</translation>
    </message>
    <message>
      <source>take a piece off the rack</source>
      <translation>ein Bild vom Gestell nehmen</translation>
    </message>
    <message>
      <source>put an archived piece back</source>
      <translation>ein archiviertes Bild zurückstellen</translation>
    </message>
    <message>
      <source>put a piece at another place on the rack</source>
      <translation>ein Bild auf einen anderen Platz im Gestell stellen</translation>
    </message>
    <message>
      <source>1 is the first</source>
      <translation>1 ist der erste</translation>
    </message>
    <message>
      <source>like 2026-03-20</source>
      <translation>wie 2026-03-20</translation>
    </message>
    <message>
      <source>copied beside the records, scaled down</source>
      <translation>wird verkleinert neben die Aufzeichnungen gelegt</translation>
    </message>
    <message>
      <source>of one panel, where it is a set</source>
      <translation>die einer Tafel, wenn es mehrere sind</translation>
    </message>
    <message>
      <source>how many equal panels a set has</source>
      <translation>aus wie vielen gleichen Tafeln es besteht</translation>
    </message>
    <message>
      <source>what it is painted on</source>
      <translation>worauf es gemalt ist</translation>
    </message>
    <message>
      <source>the data sheet of the paint layer; needs --painted</source>
      <translation>das Datenblatt der Farbe; braucht --painted</translation>
    </message>
    <message>
      <source>when the last of the paint was laid, with zone</source>
      <translation>wann die letzte Farbe aufgetragen wurde, mit Zeitzone</translation>
    </message>
    <message>
      <source>how thick it was laid, µm; default: not known</source>
      <translation>wie dick sie aufgetragen wurde, µm; ohne Angabe: nicht bekannt</translation>
    </message>
    <message>
      <source>a coat to come, lowest first; edit replaces all of them</source>
      <translation>eine kommende Schicht, die unterste zuerst; edit ersetzt sie alle</translation>
    </message>
    <message>
      <source>a coat was laid; the one planned next, if that is of the sheet</source>
      <translation>eine Schicht wurde aufgetragen; die nächste geplante, wenn sie von diesem Datenblatt ist</translation>
    </message>
    <message>
      <source>when the brush went down, with zone; default: now</source>
      <translation>wann der Pinsel ansetzte, mit Zeitzone; ohne Angabe: jetzt</translation>
    </message>
    <message>
      <source>it was forgotten: coats laid later lie on it already</source>
      <translation>sie wurde vergessen: spätere Schichten liegen schon darauf</translation>
    </message>
    <message>
      <source>add a coat to come</source>
      <translation>eine kommende Schicht anfügen</translation>
    </message>
    <message>
      <source>the amount was not measured</source>
      <translation>die Menge wurde nicht gemessen</translation>
    </message>
    <message>
      <source>when the mesh cover was set over it, with zone</source>
      <translation>wann die Abdeckung darüber gestellt wurde, mit Zeitzone</translation>
    </message>
    <message>
      <source>it is still to come</source>
      <translation>sie soll noch kommen</translation>
    </message>
    <message>
      <source>correct this look, as `piece show` numbers them</source>
      <translation>diese Prüfung berichtigen, wie `piece show` sie nummeriert</translation>
    </message>
    <message>
      <source>as `piece show` numbers them</source>
      <translation>wie `piece show` sie nummeriert</translation>
    </message>
    <message>
      <source>{outcome}: not known after all</source>
      <translation>{outcome}: doch nicht bekannt</translation>
    </message>
    <message>
      <source>1 is the lowest, as `piece show` numbers them</source>
      <translation>1 ist die unterste, wie `piece show` sie nummeriert</translation>
    </message>
    <message>
      <source>how much was laid</source>
      <translation>wie viel aufgetragen wurde</translation>
    </message>
    <message>
      <source>how thick it was laid, µm</source>
      <translation>wie dick sie aufgetragen wurde, µm</translation>
    </message>
    <message>
      <source>list, add, edit, archive and restore pieces; a watch may be on</source>
      <translation>Bilder auflisten, eintragen, ändern, archivieren und zurückholen; eine Wache darf laufen</translation>
    </message>
    <message>
      <source>record, correct and take back coats, looks and outcomes; a watch may be on</source>
      <translation>Schichten, Prüfungen und Ergebnisse festhalten, berichtigen und zurücknehmen; eine Wache darf laufen</translation>
    </message>
    <message>
      <source>it is due on no day</source>
      <translation>es hat keinen Liefertermin</translation>
    </message>
    <message>
      <source>when, with zone; default: now</source>
      <translation>wann, mit Zeitzone; ohne Angabe: jetzt</translation>
    </message>
    <message>
      <source>{laid} of {all} coats laid</source>
      <translation>{laid} von {all} Schichten aufgetragen</translation>
    </message>
    <message>
      <source>painted on {support}, dries {orientation}</source>
      <translation>gemalt auf {support}, trocknet {orientation}</translation>
    </message>
    <message>
      <source>{number} panels of {size}</source>
      <translation>{number} Tafeln von {size}</translation>
    </message>
    <message>
      <source>round, {size}</source>
      <translation>rund, {size}</translation>
    </message>
    <message>
      <source>{sheet}, to come</source>
      <translation>{sheet}, kommt noch</translation>
    </message>
    <message>
      <source>laid {time}</source>
      <translation>aufgetragen {time}</translation>
    </message>
    <message>
      <source>{film} wet</source>
      <translation>{film} nass</translation>
    </message>
    <message>
      <source>coat {number} ({sheet})</source>
      <translation>Schicht {number} ({sheet})</translation>
    </message>
    <message>
      <source>due {day}</source>
      <translation>bis {day}</translation>
    </message>
    <message>
      <source>notes: {notes}</source>
      <translation>Notizen: {notes}</translation>
    </message>
    <message>
      <source>photo: {file}</source>
      <translation>Foto: {file}</translation>
    </message>
    <message>
      <source>look {number}: {finding} {time}</source>
      <translation>Prüfung {number}: {finding} {time}</translation>
    </message>
    <message>
      <source>corrected {time}: {correction}</source>
      <translation>berichtigt {time}: {correction}</translation>
    </message>
    <message>
      <source>thinned by {share} %</source>
      <translation>um {share} % verdünnt</translation>
    </message>
    <message>
      <source>covered {time}</source>
      <translation>abgedeckt {time}</translation>
    </message>
    <message>
      <source>came out {outcome}</source>
      <translation>wurde {outcome}</translation>
    </message>
    <message>
      <source>Written to {file}: the plan as a calendar file.</source>
      <translation>Geschrieben nach {file}: der Plan als Kalenderdatei.</translation>
    </message>
    <message>
      <source>--json and --ics - both write to stdout; give --ics the name of a file.</source>
      <translation>--json und --ics - schreiben beide auf die Standardausgabe; geben Sie --ics den Namen einer Datei.</translation>
    </message>
    <message>
      <source>--studio is only planned; hours, recipes and coats to come are changed in the file itself.</source>
      <translation>--studio wird nur geplant; Arbeitszeiten, Rezepte und kommende Schichten ändert man in der Datei selbst.</translation>
    </message>
    <message>
      <source>A change is not asked for together with the plan; call `plan` again for that.</source>
      <translation>Eine Änderung und der Plan gehen nicht in einem Aufruf; rufen Sie `plan` dafür noch einmal auf.</translation>
    </message>
    <message>
      <source>There is no recipe {given}; there are: {recipes}.</source>
      <translation>Es gibt kein Rezept {given}; es gibt: {recipes}.</translation>
    </message>
    <message>
      <source>Recorded: {recipe}, to come on {title}</source>
      <translation>Festgehalten: {recipe}, kommt auf {title}</translation>
    </message>
    <message>
      <source>--keep-recipe is {given}; give a name and its sheets, as Panels=gloss,satin.</source>
      <translation>--keep-recipe ist {given}; geben Sie einen Namen und seine Datenblätter an, etwa Panels=gloss,satin.</translation>
    </message>
    <message>
      <source>There is no recipe {given} of your own; there are: {recipes}.</source>
      <translation>Es gibt kein eigenes Rezept {given}; es gibt: {recipes}.</translation>
    </message>
    <message>
      <source>--hours is {given}; give a day and its hours, as monday=09:00-18:00 or sunday=off.</source>
      <translation>--hours ist {given}; geben Sie einen Tag und seine Zeiten an, etwa monday=09:00-18:00 oder sunday=off.</translation>
    </message>
    <message>
      <source>Recorded: working hours, {week}</source>
      <translation>Festgehalten: Arbeitszeiten, {week}</translation>
    </message>
    <message>
      <source>Recorded: the recipe {recipe}</source>
      <translation>Festgehalten: das Rezept {recipe}</translation>
    </message>
    <message>
      <source>Recorded: {recipe} is forgotten</source>
      <translation>Festgehalten: {recipe} ist vergessen</translation>
    </message>
    <message>
      <source>fit to handle</source>
      <translation>anfassbar</translation>
    </message>
    <message>
      <source>fit to wrap</source>
      <translation>verpackbar</translation>
    </message>
    <message>
      <source>fit to ship</source>
      <translation>versandfertig</translation>
    </message>
    <message>
      <source>Finishing plan of {day}, {time}</source>
      <translation>Abschlussplan vom {day}, {time}</translation>
    </message>
    <message>
      <source>Working hours: {week}</source>
      <translation>Arbeitszeiten: {week}</translation>
    </message>
    <message>
      <source>prepare from {time}</source>
      <translation>vorbereiten ab {time}</translation>
    </message>
    <message>
      <source>no day due</source>
      <translation>kein Liefertermin</translation>
    </message>
    <message>
      <source>not in sight</source>
      <translation>nicht in Sicht</translation>
    </message>
    <message>
      <source>by {time}</source>
      <translation>bis {time}</translation>
    </message>
    <message>
      <source>At the rack</source>
      <translation>Am Gestell</translation>
    </message>
    <message>
      <source>Best hours in the next two days for {title}</source>
      <translation>Beste Stunden der nächsten zwei Tage für {title}</translation>
    </message>
    <message>
      <source>lay {time}</source>
      <translation>auftragen {time}</translation>
    </message>
    <message>
      <source>perhaps from {time}</source>
      <translation>vielleicht ab {time}</translation>
    </message>
    <message>
      <source>perhaps ready {time}</source>
      <translation>vielleicht bereit {time}</translation>
    </message>
    <message>
      <source>{share} % of the draws</source>
      <translation>{share} % der Ziehungen</translation>
    </message>
    <message>
      <source>Room: {air}</source>
      <translation>Raum: {air}</translation>
    </message>
    <message>
      <source>one in ten</source>
      <translation>eine von zehn</translation>
    </message>
    <message>
      <source>half of them</source>
      <translation>die Hälfte</translation>
    </message>
    <message>
      <source>ready by</source>
      <translation>bereit nach</translation>
    </message>
    <message>
      <source>ready by: nine in ten of the studios that fit what is known have got there, and no next coat before the sheet's own {recoat}</source>
      <translation>bereit nach: in neun von zehn Ateliers, die zum Bekannten passen, ist es so weit, und keine nächste Schicht vor den {recoat} des Datenblatts</translation>
    </message>
    <message>
      <source>{film} wet on {size}</source>
      <translation>{film} nass auf {size}</translation>
    </message>
    <message>
      <source>not known, for the sheet names no minimum film-forming temperature</source>
      <translation>nicht bekannt, denn das Datenblatt nennt keine Mindestfilmbildetemperatur</translation>
    </message>
    <message>
      <source>not reached</source>
      <translation>nicht erreicht</translation>
    </message>
    <message>
      <source>--draws is {given}; allowed is 1 to {most}.</source>
      <translation>--draws ist {given}; erlaubt ist 1 bis {most}.</translation>
    </message>
    <message>
      <source>--seed is {given}; allowed is 0 to {most}.</source>
      <translation>--seed ist {given}; erlaubt ist 0 bis {most}.</translation>
    </message>
    <message>
      <source>ready by {by} for the next coat: nine draws in ten are there after {drawn}, but it is never called ready before the sheet's own recoat time</source>
      <translation>bereit für die nächste Schicht nach {by}: neun von zehn Ziehungen sind nach {drawn} so weit, aber vor der Überarbeitungszeit des Datenblatts heißt sie nie bereit</translation>
    </message>
    <message>
      <source>EXTRAPOLATED times after laying:</source>
      <translation>HOCHGERECHNETE Zeiten nach dem Auftragen:</translation>
    </message>
    <message>
      <source>Times after laying:</source>
      <translation>Zeiten nach dem Auftragen:</translation>
    </message>
    <message>
      <source>too cold to form: {chance}</source>
      <translation>zu kalt für einen Film: {chance}</translation>
    </message>
    <message>
      <source>under a mesh cover</source>
      <translation>unter einer Abdeckung aus Gewebe</translation>
    </message>
    <message>
      <source>measured</source>
      <translation>gemessen</translation>
    </message>
    <message>
      <source>note: {note}</source>
      <translation>dazu: {note}</translation>
    </message>
    <message>
      <source>{time}, put off</source>
      <translation>{time}, aufgeschoben</translation>
    </message>
    <message>
      <source>Nothing to do at the rack.</source>
      <translation>Am Gestell ist nichts zu tun.</translation>
    </message>
    <message>
      <source>now, since {time}, put off</source>
      <translation>jetzt, seit {time}, aufgeschoben</translation>
    </message>
    <message>
      <source>now, since {time}</source>
      <translation>jetzt, seit {time}</translation>
    </message>
    <message>
      <source>--minutes is {given}; allowed is 1 to {most} min. Give another.</source>
      <translation>--minutes ist {given}; erlaubt ist 1 bis {most} min. Geben Sie einen anderen Wert an.</translation>
    </message>
    <message>
      <source>There is no prompt {given}; allowed is a number from 1 to {last}, or a key, as `prompts list` shows.</source>
      <translation>Es gibt keinen Hinweis {given}; erlaubt ist eine Nummer von 1 bis {last} oder ein Schlüssel, wie `prompts list` sie zeigt.</translation>
    </message>
    <message>
      <source>There is no prompt {given}; allowed is none: nothing is open.</source>
      <translation>Es gibt keinen Hinweis {given}; erlaubt ist keiner: nichts ist offen.</translation>
    </message>
    <message>
      <source>Ticked off: {title}: {prompt}</source>
      <translation>Abgehakt: {title}: {prompt}</translation>
    </message>
    <message>
      <source>Put off until {time}: {title}: {prompt}</source>
      <translation>Aufgeschoben bis {time}: {title}: {prompt}</translation>
    </message>
    <message>
      <source>record-sheet needs --pdf FILE or --html FILE.</source>
      <translation>record-sheet braucht --pdf FILE oder --html FILE.</translation>
    </message>
    <message>
      <source>{given} needs {lacking} beside it; without both, the records are asked.</source>
      <translation>{given} braucht {lacking} daneben; ohne beide werden die Aufzeichnungen gefragt.</translation>
    </message>
    <message>
      <source>There is no piece {given} in {origin}; near it: {titles}.</source>
      <translation>In {origin} gibt es kein Bild {given}; ähnlich: {titles}.</translation>
    </message>
    <message>
      <source>There is no piece {given} in {origin}; it has {titles}.</source>
      <translation>In {origin} gibt es kein Bild {given}; dort sind: {titles}.</translation>
    </message>
    <message>
      <source>face-up</source>
      <translation>Bildseite oben</translation>
    </message>
    <message>
      <source>face-down</source>
      <translation>Bildseite unten</translation>
    </message>
    <message>
      <source>vertical</source>
      <translation>stehend</translation>
    </message>
    <message>
      <source>tacky</source>
      <translation>klebrig</translation>
    </message>
    <message>
      <source>dry</source>
      <translation>trocken</translation>
    </message>
    <message>
      <source>still milky</source>
      <translation>noch milchig</translation>
    </message>
    <message>
      <source>clear</source>
      <translation>klar</translation>
    </message>
    <message>
      <source>milky all over</source>
      <translation>überall milchig</translation>
    </message>
    <message>
      <source>milky in patches</source>
      <translation>fleckig milchig</translation>
    </message>
    <message>
      <source>dull in darks</source>
      <translation>in dunklen Stellen stumpf</translation>
    </message>
    <message>
      <source>powdery</source>
      <translation>pudrig</translation>
    </message>
    <message>
      <source>specks</source>
      <translation>mit Einschlüssen</translation>
    </message>
    <message>
      <source>wet</source>
      <translation>nass</translation>
    </message>
    <message>
      <source>straight on bare panel</source>
      <translation>unmittelbar auf roher Tafel</translation>
    </message>
    <message>
      <source>straight on raw canvas</source>
      <translation>unmittelbar auf roher Leinwand</translation>
    </message>
    <message>
      <source>straight on bare paper</source>
      <translation>unmittelbar auf rohem Papier</translation>
    </message>
    <message>
      <source>air unknown</source>
      <translation>Luft unbekannt</translation>
    </message>
    <message>
      <source>air still</source>
      <translation>Luft still</translation>
    </message>
    <message>
      <source>air moving</source>
      <translation>Luft bewegt</translation>
    </message>
    <message>
      <source>air fan</source>
      <translation>Luft vom Ventilator</translation>
    </message>
    <message>
      <source>Warnings are printed, but not heard: {trouble}. `studiowatch check` tells of the sound.</source>
      <translation>Warnungen werden ausgegeben, sind aber nicht zu hören: {trouble}. `studiowatch check` sagt, wie es um den Ton steht.</translation>
    </message>
    <message>
      <source>--now does not go with --room: its log ends at the moment that is told of; cut it, or give --air.</source>
      <translation>--now passt nicht zu --room: dessen Protokoll endet zu dem Zeitpunkt, um den es geht; kürzen Sie es, oder geben Sie --air an.</translation>
    </message>
    <message>
      <source>--now is {given}; allowed is a moment of the years {first} to {last}.</source>
      <translation>--now ist {given}; erlaubt ist ein Zeitpunkt der Jahre {first} bis {last}.</translation>
    </message>
    <message>
      <source>air temperature</source>
      <translation>Lufttemperatur</translation>
    </message>
    <message>
      <source>{option} belongs to --studio: the records have a room and a clock of their own.</source>
      <translation>{option} gehört zu --studio: die Aufzeichnungen haben ihren eigenen Raum und ihre eigene Uhr.</translation>
    </message>
    <message>
      <source>The room log {file} has no reading to go by.</source>
      <translation>Das Raumprotokoll {file} hat keinen Messwert, nach dem man gehen könnte.</translation>
    </message>
    <message>
      <source>{file}: new: {new}; there already: {there}; replaced: {replaced}.</source>
      <translation>{file}: neu: {new}; schon da: {there}; ersetzt: {replaced}.</translation>
    </message>
    <message>
      <source>--replace belongs to a studio file: a reading that is there is never replaced.</source>
      <translation>--replace gehört zu einer Atelierdatei: ein vorhandener Messwert wird nie ersetzt.</translation>
    </message>
    <message>
      <source>{file}: there is no data sheet {sheet}; its coats are kept, and dry once it is in {folder}.</source>
      <translation>{file}: es gibt kein Datenblatt {sheet}; die Schichten davon bleiben und trocknen, sobald es in {folder} liegt.</translation>
    </message>
    <message>
      <source>{option} belongs to a room log, and {file} is a studio file.</source>
      <translation>{option} gehört zu einem Raumprotokoll, und {file} ist eine Atelierdatei.</translation>
    </message>
    <message>
      <source>{file}: {sheet} is a sheet beside it; put it into {folder}, and write its name instead.</source>
      <translation>{file}: {sheet} ist ein Datenblatt daneben; legen Sie es in {folder}, und schreiben Sie stattdessen seinen Namen.</translation>
    </message>
    <message>
      <source>{file}: nothing was taken over.</source>
      <translation>{file}: nichts wurde übernommen.</translation>
    </message>
    <message numerus="yes">
      <source>{n} readings</source>
      <translation>
        <numerusform>{n} Messwert</numerusform>
        <numerusform>{n} Messwerte</numerusform>
      </translation>
    </message>
    <message>
      <source>{coat} {surface}</source>
      <translation>{coat} {surface}</translation>
    </message>
    <message>
      <source>not measured</source>
      <translation>nicht gemessen</translation>
    </message>
    <message>
      <source>{coat} not watched</source>
      <translation>{coat} nicht überwacht</translation>
    </message>
    <message>
      <source>nothing laid yet</source>
      <translation>noch nichts aufgetragen</translation>
    </message>
    <message>
      <source>{step} by {day} {time}</source>
      <translation>{step} ab {day} {time}</translation>
    </message>
    <message>
      <source>Press Enter once you have heard a warning; it is then silent.</source>
      <translation>Drücken Sie die Eingabetaste, sobald Sie eine Warnung gehört haben; dann ist sie still.</translation>
    </message>
    <message>
      <source>The terminal takes no more lines ({fault}); the watch goes on.</source>
      <translation>Die Konsole nimmt keine Zeilen mehr an ({fault}); die Wache läuft weiter.</translation>
    </message>
    <message>
      <source>dry to touch</source>
      <translation>grifffest</translation>
    </message>
    <message>
      <source>ready for the next coat</source>
      <translation>bereit für die nächste Schicht</translation>
    </message>
    <message>
      <source>cured</source>
      <translation>ausgehärtet</translation>
    </message>
    <message>
      <source>{goal} by {time}, {length} later than {before}</source>
      <translation>{goal} bis {time}, {length} später als {before}</translation>
    </message>
    <message>
      <source>What if: {room}</source>
      <translation>Was wäre wenn: {room}</translation>
    </message>
    <message>
      <source>{goal}: not in sight</source>
      <translation>{goal}: nicht in Sicht</translation>
    </message>
    <message>
      <source>{goal} by {time}, which is not in sight else</source>
      <translation>{goal} bis {time}, was sonst nicht in Sicht ist</translation>
    </message>
    <message>
      <source>{goal} by {time}, as it is</source>
      <translation>{goal} bis {time}, wie es ist</translation>
    </message>
    <message>
      <source>{goal} by {time}, {length} sooner than {before}</source>
      <translation>{goal} bis {time}, {length} früher als {before}</translation>
    </message>
    <message>
      <source>--hours is {given}; allowed is over 0, up to {most}.</source>
      <translation>--hours ist {given}; erlaubt ist über 0 bis {most}.</translation>
    </message>
    <message>
      <source>Say what would be otherwise: --temperature-C, --humidity-pct, --air-m-s or --cover.</source>
      <translation>Sagen Sie, was anders wäre: --temperature-C, --humidity-pct, --air-m-s oder --cover.</translation>
    </message>
    <message>
      <source>every coat under a mesh cover</source>
      <translation>jede Schicht unter einer Netzabdeckung</translation>
    </message>
    <message>
      <source>until {time}</source>
      <translation>bis {time}</translation>
    </message>
    <message>
      <source>No piece on the rack waits for anything.</source>
      <translation>Kein Bild auf dem Gestell wartet auf etwas.</translation>
    </message>
    <message>
      <source>! In that room: {warning}</source>
      <translation>! In diesem Raum: {warning}</translation>
    </message>
    <message>
      <source>recorded as {outcome} {time}</source>
      <translation>festgehalten als {outcome} {time}</translation>
    </message>
    <message>
      <source>{title}, coat {number} ({coat}), laid {time}, {outcome}</source>
      <translation>{title}, Schicht {number} ({coat}), aufgetragen {time}, {outcome}</translation>
    </message>
    <message>
      <source>Likely causes, strongest first</source>
      <translation>Wahrscheinliche Ursachen, die stärkste zuerst</translation>
    </message>
    <message>
      <source>outcome not recorded</source>
      <translation>Ergebnis nicht festgehalten</translation>
    </message>
    <message>
      <source>recorded as {outcome}</source>
      <translation>festgehalten als {outcome}</translation>
    </message>
    <message>
      <source>coat below</source>
      <translation>darunter</translation>
    </message>
    <message>
      <source>room while wet</source>
      <translation>Raum, nass</translation>
    </message>
    <message>
      <source>sealed in</source>
      <translation>im Film</translation>
    </message>
    <message>
      <source>What to do now</source>
      <translation>Was jetzt zu tun ist</translation>
    </message>
    <message>
      <source>What the records do not show</source>
      <translation>Was die Aufzeichnungen nicht zeigen</translation>
    </message>
    <message>
      <source>As it was</source>
      <translation>So, wie es war</translation>
    </message>
    <message>
      <source>What would have changed it</source>
      <translation>Was es geändert hätte</translation>
    </message>
    <message>
      <source>chance</source>
      <translation>Risiko</translation>
    </message>
  </context>
</TS>
