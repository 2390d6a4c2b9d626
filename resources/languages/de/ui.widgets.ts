<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>From across the room</source>
      <translation>Aus der Ferne</translation>
    </message>
    <message>
      <source>Back to the whole window</source>
      <translation>Zurück zum ganzen Fenster</translation>
    </message>
    <message>
      <source>Also with F11 or Escape</source>
      <translation>Auch mit F11 oder Escape</translation>
    </message>
    <message>
      <source>It was refused, and nothing was changed. Go back to mend it.</source>
      <translation>Es wurde abgelehnt, und nichts wurde geändert. Gehen Sie zurück, um es zu berichtigen.</translation>
    </message>
    <message>
      <source>Air speed is shown from now on.</source>
      <translation>Die Luftgeschwindigkeit wird von jetzt an gezeigt.</translation>
    </message>
    <message>
      <source>Air speed calibration</source>
      <translation>Abgleich der Luftgeschwindigkeit</translation>
    </message>
    <message>
      <source>The bead is held at, °C (its own sheet says)</source>
      <translation>Die Perle wird gehalten auf, °C (steht in ihrem Datenblatt)</translation>
    </message>
    <message>
      <source>Distance between the marks, m</source>
      <translation>Abstand der Markierungen, m</translation>
    </message>
    <message>
      <source>Start</source>
      <translation>Start</translation>
    </message>
    <message>
      <source>Remove</source>
      <translation>Entfernen</translation>
    </message>
    <message>
      <source>Remove walk {number}</source>
      <translation>Gang {number} entfernen</translation>
    </message>
    <message>
      <source>Stop</source>
      <translation>Halt</translation>
    </message>
    <message>
      <source>Walk {number}: {result}</source>
      <translation>Gang {number}: {result}</translation>
    </message>
    <message>
      <source>Archived pieces</source>
      <translation>Archivierte Bilder</translation>
    </message>
    <message>
      <source>a word of the title, support, notes or data sheet</source>
      <translation>ein Wort aus Titel, Bildträger, Notizen oder Datenblatt</translation>
    </message>
    <message>
      <source>Find an archived piece</source>
      <translation>Ein archiviertes Bild suchen</translation>
    </message>
    <message>
      <source>Put back on the rack</source>
      <translation>Zurück auf das Gestell</translation>
    </message>
    <message>
      <source>Best hours to lay the next coats</source>
      <translation>Die besten Stunden für die nächsten Schichten</translation>
    </message>
    <message>
      <source>What you mean to do with the room…</source>
      <translation>Was Sie mit dem Raum vorhaben …</translation>
    </message>
    <message>
      <source>A heater, a dehumidifier, a fan: these hours then count on it</source>
      <translation>Heizgerät, Entfeuchter, Ventilator: Diese Stunden rechnen dann damit</translation>
    </message>
    <message>
      <source>The board at a glance</source>
      <translation>Die Messplatine auf einen Blick</translation>
    </message>
    <message>
      <source>Ports</source>
      <translation>Anschlüsse</translation>
    </message>
    <message>
      <source>Calibrations</source>
      <translation>Abgleiche</translation>
    </message>
    <message>
      <source>Read whichever answers</source>
      <translation>Lesen, wer antwortet</translation>
    </message>
    <message>
      <source>Look for the board on every port</source>
      <translation>Die Messplatine an jedem Anschluss suchen</translation>
    </message>
    <message>
      <source>Humidity…</source>
      <translation>Luftfeuchte…</translation>
    </message>
    <message>
      <source>Calibrate humidity with two salts</source>
      <translation>Luftfeuchte mit zwei Salzen abgleichen</translation>
    </message>
    <message>
      <source>Air speed…</source>
      <translation>Luftgeschwindigkeit…</translation>
    </message>
    <message>
      <source>Calibrate air speed by a cup and three walks</source>
      <translation>Luftgeschwindigkeit mit einem Becher und drei Gängen abgleichen</translation>
    </message>
    <message>
      <source>Calibrate humidity</source>
      <translation>Luftfeuchte abgleichen</translation>
    </message>
    <message>
      <source>Calibrate air speed</source>
      <translation>Luftgeschwindigkeit abgleichen</translation>
    </message>
    <message>
      <source>What its numbers are…</source>
      <translation>Was ihre Zahlen sind…</translation>
    </message>
    <message>
      <source>Pause</source>
      <translation>Anhalten</translation>
    </message>
    <message>
      <source>The board now</source>
      <translation>Die Messplatine jetzt</translation>
    </message>
    <message>
      <source>Go on</source>
      <translation>Weiter</translation>
    </message>
    <message>
      <source>Let the lines go on</source>
      <translation>Die Zeilen weiterlaufen lassen</translation>
    </message>
    <message>
      <source>Pause the lines</source>
      <translation>Die Zeilen anhalten</translation>
    </message>
    <message>
      <source>Now</source>
      <translation>Jetzt</translation>
    </message>
    <message>
      <source>Live lines</source>
      <translation>Laufende Zeilen</translation>
    </message>
    <message>
      <source>← Back to the rack</source>
      <translation>← Zurück zum Gestell</translation>
    </message>
    <message>
      <source>← Back to the board</source>
      <translation>← Zurück zur Messplatine</translation>
    </message>
    <message>
      <source>The board is looked for on every port.</source>
      <translation>Die Messplatine wird an jedem Anschluss gesucht.</translation>
    </message>
    <message>
      <source>The board</source>
      <translation>Die Messplatine</translation>
    </message>
    <message>
      <source>{port} is read from now on.</source>
      <translation>Von jetzt an wird {port} gelesen.</translation>
    </message>
    <message>
      <source>Withdraw it</source>
      <translation>Zurücknehmen</translation>
    </message>
    <message>
      <source>Keep it</source>
      <translation>Behalten</translation>
    </message>
    <message>
      <source>The calibration was withdrawn.</source>
      <translation>Der Abgleich wurde zurückgenommen.</translation>
    </message>
    <message>
      <source>The studio book</source>
      <translation>Das Atelierbuch</translation>
    </message>
    <message>
      <source>Page</source>
      <translation>Seite</translation>
    </message>
    <message>
      <source>Back</source>
      <translation>Zurück</translation>
    </message>
    <message>
      <source>Contents</source>
      <translation>Inhalt</translation>
    </message>
    <message>
      <source>Close</source>
      <translation>Schließen</translation>
    </message>
    <message>
      <source>{minutes} minutes, from {first} to {last} %</source>
      <translation>{minutes} Minuten, von {first} bis {last} %</translation>
    </message>
    <message>
      <source>0 minutes, none yet</source>
      <translation>0 Minuten, noch keine</translation>
    </message>
    <message>
      <source>Humidity over the last minutes</source>
      <translation>Luftfeuchte in den letzten Minuten</translation>
    </message>
    <message>
      <source>%RH, as the sensor reads it</source>
      <translation>% rel. Feuchte, wie der Sensor sie misst</translation>
    </message>
    <message>
      <source>The first whole minute is still to come.</source>
      <translation>Die erste volle Minute kommt noch.</translation>
    </message>
    <message>
      <source>{minutes} min ago</source>
      <translation>vor {minutes} min</translation>
    </message>
    <message>
      <source>now</source>
      <translation>jetzt</translation>
    </message>
    <message>
      <source>Working it out…</source>
      <translation>Wird berechnet…</translation>
    </message>
    <message>
      <source>What would that look like?</source>
      <translation>Wie sähe das aus?</translation>
    </message>
    <message>
      <source>Likely causes, strongest first</source>
      <translation>Wahrscheinliche Ursachen, die stärkste zuerst</translation>
    </message>
    <message>
      <source>Next to nothing speaks for: {causes}.</source>
      <translation>So gut wie nichts spricht für: {causes}.</translation>
    </message>
    <message>
      <source>See to it first</source>
      <translation>Zuerst erledigen</translation>
    </message>
    <message>
      <source>The brush is down</source>
      <translation>Der Pinsel liegt auf</translation>
    </message>
    <message>
      <source>Prepare</source>
      <translation>Vorbereiten</translation>
    </message>
    <message>
      <source>It is on already…</source>
      <translation>Schon aufgetragen…</translation>
    </message>
    <message>
      <source>Leave it</source>
      <translation>Doch nicht</translation>
    </message>
    <message>
      <source>Later</source>
      <translation>Später</translation>
    </message>
    <message>
      <source>Record it</source>
      <translation>Erfassen</translation>
    </message>
    <message>
      <source>Ends the preparation</source>
      <translation>Beendet die Vorbereitung</translation>
    </message>
    <message>
      <source>Closes this; the timers run on</source>
      <translation>Schließt dies; die Uhren laufen weiter</translation>
    </message>
    <message>
      <source>The brush went down earlier</source>
      <translation>Schon früher aufgetragen</translation>
    </message>
    <message>
      <source>It goes down now</source>
      <translation>Jetzt auftragen</translation>
    </message>
    <message>
      <source>The brush is down on {title}</source>
      <translation>Der Pinsel liegt auf: {title}</translation>
    </message>
    <message>
      <source>Recorded: {coat} laid on {title}</source>
      <translation>Erfasst: {coat} auf {title} aufgetragen</translation>
    </message>
    <message>
      <source>Lay a coat</source>
      <translation>Schicht auftragen</translation>
    </message>
    <message>
      <source>Lay a coat: {title}</source>
      <translation>Schicht auftragen: {title}</translation>
    </message>
    <message>
      <source>I break bubbles with a torch</source>
      <translation>Ich breche Blasen mit dem Brenner</translation>
    </message>
    <message>
      <source>What goes on, and how much</source>
      <translation>Was darauf kommt, und wie viel</translation>
    </message>
    <message>
      <source>The same coat on these too, one after the other</source>
      <translation>Dieselbe Schicht auch auf diese, eines nach dem anderen</translation>
    </message>
    <message>
      <source>Piece</source>
      <translation>Bild</translation>
    </message>
    <message>
      <source>Coat, by its data sheet</source>
      <translation>Schicht, nach ihrem Datenblatt</translation>
    </message>
    <message>
      <source>How much</source>
      <translation>Wie viel</translation>
    </message>
    <message>
      <source>Measured in</source>
      <translation>Gemessen in</translation>
    </message>
    <message>
      <source>Water added, %</source>
      <translation>Wasser dazu, %</translation>
    </message>
    <message>
      <source>For brush and cup, %</source>
      <translation>Für Pinsel und Becher, %</translation>
    </message>
    <message>
      <source>Lay it on {title} too</source>
      <translation>Auch auf {title} auftragen</translation>
    </message>
    <message>
      <source>Thinner added, %</source>
      <translation>Verdünner dazu, %</translation>
    </message>
    <message>
      <source>The amount may stay empty: it can be put right later.</source>
      <translation>Die Menge darf leer bleiben: Sie lässt sich später nachtragen.</translation>
    </message>
    <message>
      <source>10 min ago</source>
      <translation>vor 10 min</translation>
    </message>
    <message>
      <source>30 min ago</source>
      <translation>vor 30 min</translation>
    </message>
    <message>
      <source>1 h ago</source>
      <translation>vor 1 h</translation>
    </message>
    <message>
      <source>When it went on</source>
      <translation>Wann sie aufgetragen wurde</translation>
    </message>
    <message>
      <source>When the brush went down</source>
      <translation>Wann der Pinsel auflag</translation>
    </message>
    <message>
      <source>Coats to come, lowest first</source>
      <translation>Kommende Schichten, die unterste zuerst</translation>
    </message>
    <message>
      <source>Add this coat</source>
      <translation>Diese Schicht dazu</translation>
    </message>
    <message>
      <source>Move up</source>
      <translation>Nach oben</translation>
    </message>
    <message>
      <source>Move down</source>
      <translation>Nach unten</translation>
    </message>
    <message>
      <source>{sheet} (its sheet is missing)</source>
      <translation>{sheet} (das Datenblatt fehlt)</translation>
    </message>
    <message>
      <source>The board is read by what you said.</source>
      <translation>Die Messplatine wird nach Ihren Angaben gelesen.</translation>
    </message>
    <message>
      <source>What {column} is</source>
      <translation>Was {column} ist</translation>
    </message>
    <message>
      <source>What its numbers are</source>
      <translation>Was ihre Zahlen sind</translation>
    </message>
    <message>
      <source>Use these</source>
      <translation>Diese verwenden</translation>
    </message>
    <message>
      <source>{seconds} s left.</source>
      <translation>Noch {seconds} s.</translation>
    </message>
    <message>
      <source>What stood here before is kept in the history of corrections; ready times follow the correction.</source>
      <translation>Was vorher hier stand, bleibt im Verlauf der Berichtigungen; die Bereit-Zeiten folgen der Berichtigung.</translation>
    </message>
    <message>
      <source>Correct {coat} on {title}</source>
      <translation>{coat} auf {title} berichtigen</translation>
    </message>
    <message>
      <source>Corrected: {coat} on {title}</source>
      <translation>Berichtigt: {coat} auf {title}</translation>
    </message>
    <message>
      <source>Add a coat that was forgotten on {title}</source>
      <translation>Eine vergessene Schicht auf {title} nachtragen</translation>
    </message>
    <message>
      <source>Recorded: a forgotten coat on {title}</source>
      <translation>Erfasst: eine vergessene Schicht auf {title}</translation>
    </message>
    <message>
      <source>Correct a look at {coat} on {title}</source>
      <translation>Sichtprüfung berichtigen: {coat} auf {title}</translation>
    </message>
    <message>
      <source>Corrected: a look at {title}</source>
      <translation>Berichtigt: eine Sichtprüfung von {title}</translation>
    </message>
    <message>
      <source>Keep the correction</source>
      <translation>Berichtigung behalten</translation>
    </message>
    <message>
      <source>A mesh cover stands over it since</source>
      <translation>Eine Netzabdeckung steht darüber seit</translation>
    </message>
    <message>
      <source>A mesh cover stands over it</source>
      <translation>Eine Netzabdeckung steht darüber</translation>
    </message>
    <message>
      <source>Covered since</source>
      <translation>Abgedeckt seit</translation>
    </message>
    <message>
      <source>The brush went down</source>
      <translation>Aufgetragen</translation>
    </message>
    <message>
      <source>Data sheet</source>
      <translation>Datenblatt</translation>
    </message>
    <message>
      <source>Amount</source>
      <translation>Menge</translation>
    </message>
    <message>
      <source>Measured</source>
      <translation>Gemessen</translation>
    </message>
    <message>
      <source>Thinned by, %</source>
      <translation>Verdünnt um, %</translation>
    </message>
    <message>
      <source>It was found</source>
      <translation>Der Befund war</translation>
    </message>
    <message>
      <source>When</source>
      <translation>Wann</translation>
    </message>
    <message>
      <source>The look was in the future: choose a time that has passed.</source>
      <translation>Die Prüfung läge in der Zukunft: Wählen Sie eine Zeit, die vorbei ist.</translation>
    </message>
    <message>
      <source>a coat</source>
      <translation>eine Schicht</translation>
    </message>
    <message>
      <source>d MMM yyyy</source>
      <translation>d. MMM yyyy</translation>
    </message>
    <message>
      <source>Cancel</source>
      <translation>Abbrechen</translation>
    </message>
    <message>
      <source>Drop what you typed?</source>
      <translation>Ihre Eingaben verwerfen?</translation>
    </message>
    <message>
      <source>Nothing was recorded yet.</source>
      <translation>Noch wurde nichts erfasst.</translation>
    </message>
    <message>
      <source>Drop it</source>
      <translation>Verwerfen</translation>
    </message>
    <message>
      <source>Keep the form</source>
      <translation>Formular behalten</translation>
    </message>
    <message>
      <source>Section through the coats</source>
      <translation>Schnitt durch die Schichten</translation>
    </message>
    <message>
      <source>Find on the rack</source>
      <translation>Auf dem Gestell suchen</translation>
    </message>
    <message>
      <source>title, support, notes, coat</source>
      <translation>Titel, Bildträger, Notizen, Schicht</translation>
    </message>
    <message>
      <source>Show all</source>
      <translation>Alle zeigen</translation>
    </message>
    <message>
      <source>{found} of {all}</source>
      <translation>{found} von {all}</translation>
    </message>
    <message>
      <source>For the collector, the gallery, and whoever cleans it one day. Nothing leaves this computer until you save it.</source>
      <translation>Für Sammler, Galerie und alle, die es einmal reinigen. Nichts verlässt diesen Computer, bevor Sie es speichern.</translation>
    </message>
    <message>
      <source>Drawing the pages…</source>
      <translation>Die Seiten werden gezeichnet…</translation>
    </message>
    <message numerus="yes">
      <source>{n} pages.</source>
      <translation>
        <numerusform>Eine Seite.</numerusform>
        <numerusform>{n} Seiten.</numerusform>
      </translation>
    </message>
    <message>
      <source>Finishing record: {title}</source>
      <translation>Abschlussprotokoll: {title}</translation>
    </message>
    <message>
      <source>Paper</source>
      <translation>Papier</translation>
    </message>
    <message>
      <source>Leave my notes out</source>
      <translation>Meine Notizen weglassen</translation>
    </message>
    <message>
      <source>Save as &amp;PDF…</source>
      <translation>Als &amp;PDF speichern…</translation>
    </message>
    <message>
      <source>Save as a &amp;web page…</source>
      <translation>Als &amp;Webseite speichern…</translation>
    </message>
    <message>
      <source>Pages</source>
      <translation>Seiten</translation>
    </message>
    <message>
      <source>How it will look</source>
      <translation>Wie es aussehen wird</translation>
    </message>
    <message>
      <source>Save as PDF</source>
      <translation>Als PDF speichern</translation>
    </message>
    <message>
      <source>Save as a web page</source>
      <translation>Als Webseite speichern</translation>
    </message>
    <message>
      <source>Page {number} of {count}</source>
      <translation>Seite {number} von {count}</translation>
    </message>
    <message>
      <source>First steps</source>
      <translation>Erste Schritte</translation>
    </message>
    <message>
      <source>&amp;Skip all of it</source>
      <translation>Alles &amp;überspringen</translation>
    </message>
    <message>
      <source>They are kept in the View menu</source>
      <translation>Sie bleiben im Menü Ansicht</translation>
    </message>
    <message>
      <source>This step</source>
      <translation>Dieser Schritt</translation>
    </message>
    <message>
      <source>Step {number} of {count}</source>
      <translation>Schritt {number} von {count}</translation>
    </message>
    <message>
      <source>&amp;Back</source>
      <translation>&amp;Zurück</translation>
    </message>
    <message>
      <source>&amp;Finish</source>
      <translation>&amp;Fertig</translation>
    </message>
    <message>
      <source>Ne&amp;xt</source>
      <translation>Wei&amp;ter</translation>
    </message>
    <message>
      <source>The fit</source>
      <translation>Das Ergebnis</translation>
    </message>
    <message>
      <source>error, 19 in 20</source>
      <translation>Fehler, 19 von 20</translation>
    </message>
    <message>
      <source>law</source>
      <translation>Gesetz</translation>
    </message>
    <message>
      <source>measured</source>
      <translation>gemessen</translation>
    </message>
    <message>
      <source>Board and actions</source>
      <translation>Messplatine und Handlungen</translation>
    </message>
    <message>
      <source>Board</source>
      <translation>Platine</translation>
    </message>
    <message>
      <source>Ports, live lines and calibration (Ctrl+B)</source>
      <translation>Anschlüsse, laufende Zeilen und Abgleich (Strg+B)</translation>
    </message>
    <message>
      <source>The board: ports, live lines and calibration</source>
      <translation>Die Messplatine: Anschlüsse, laufende Zeilen und Abgleich</translation>
    </message>
    <message>
      <source>Plan</source>
      <translation>Plan</translation>
    </message>
    <message>
      <source>What to lay when, against the days that are due (Ctrl+P)</source>
      <translation>Was wann aufzutragen ist, gemessen an den Lieferterminen (Strg+P)</translation>
    </message>
    <message>
      <source>The finishing plan</source>
      <translation>Der Abschlussplan</translation>
    </message>
    <message>
      <source>Record a touch test</source>
      <translation>Griffprobe erfassen</translation>
    </message>
    <message>
      <source>Why did it cloud?</source>
      <translation>Warum trüb?</translation>
    </message>
    <message>
      <source>Type a reading</source>
      <translation>Messwert eintippen</translation>
    </message>
    <message>
      <source>Cautions</source>
      <translation>Vorsicht</translation>
    </message>
    <message>
      <source>Next</source>
      <translation>Weiter</translation>
    </message>
    <message>
      <source>Steps</source>
      <translation>Schritte</translation>
    </message>
    <message>
      <source>Begin anew</source>
      <translation>Neu beginnen</translation>
    </message>
    <message>
      <source>Room history</source>
      <translation>Raumverlauf</translation>
    </message>
    <message>
      <source>now {time}</source>
      <translation>jetzt {time}</translation>
    </message>
    <message>
      <source>no readings in this stretch</source>
      <translation>keine Messwerte in diesem Zeitraum</translation>
    </message>
    <message>
      <source>coats</source>
      <translation>Schichten</translation>
    </message>
    <message>
      <source>Show the last 8 h</source>
      <translation>Die letzten 8 h zeigen</translation>
    </message>
    <message>
      <source>Show the last day</source>
      <translation>Den letzten Tag zeigen</translation>
    </message>
    <message>
      <source>Show the last week</source>
      <translation>Die letzte Woche zeigen</translation>
    </message>
    <message>
      <source>Show the last month</source>
      <translation>Den letzten Monat zeigen</translation>
    </message>
    <message>
      <source>Show the whole log</source>
      <translation>Die ganze Aufzeichnung zeigen</translation>
    </message>
    <message>
      <source>back to now</source>
      <translation>zurück zu jetzt</translation>
    </message>
    <message>
      <source>Follow the present again (Home)</source>
      <translation>Wieder der Gegenwart folgen (Pos1)</translation>
    </message>
    <message>
      <source>&amp;Go to this coat</source>
      <translation>&amp;Zu dieser Schicht</translation>
    </message>
    <message>
      <source>Coats that dried in the chosen stretch</source>
      <translation>Schichten, die im gewählten Zeitraum trockneten</translation>
    </message>
    <message>
      <source>&amp;Why did it cloud?</source>
      <translation>Warum wurde sie &amp;trüb?</translation>
    </message>
    <message>
      <source>The log cannot be read now: {reason}</source>
      <translation>Die Aufzeichnung lässt sich jetzt nicht lesen: {reason}</translation>
    </message>
    <message>
      <source>Withdraw…</source>
      <translation>Zurücknehmen…</translation>
    </message>
    <message>
      <source>Withdraw: {title}</source>
      <translation>Zurücknehmen: {title}</translation>
    </message>
    <message>
      <source>It was refused, and nothing was changed. Go back to take a reading again.</source>
      <translation>Es wurde abgelehnt, und nichts wurde geändert. Gehen Sie zurück, um den Messwert noch einmal zu nehmen.</translation>
    </message>
    <message>
      <source>Humidity is put right from now on.</source>
      <translation>Die Luftfeuchte wird von jetzt an berichtigt.</translation>
    </message>
    <message>
      <source>Humidity calibration</source>
      <translation>Abgleich der Luftfeuchte</translation>
    </message>
    <message>
      <source>{humidity} %RH</source>
      <translation>{humidity} % rel. F.</translation>
    </message>
    <message>
      <source>No board is read: plug it in; the minutes on end begin anew.</source>
      <translation>Keine Messplatine wird gelesen: Stecken Sie sie ein; die Minuten in Folge beginnen neu.</translation>
    </message>
    <message>
      <source>Count on it</source>
      <translation>Damit rechnen</translation>
    </message>
    <message>
      <source>What</source>
      <translation>Was</translation>
    </message>
    <message>
      <source>From</source>
      <translation>Von</translation>
    </message>
    <message>
      <source>Until</source>
      <translation>Bis</translation>
    </message>
    <message>
      <source>First on</source>
      <translation>Zuerst am</translation>
    </message>
    <message>
      <source>How often</source>
      <translation>Wie oft</translation>
    </message>
    <message>
      <source>Counted in: {intentions}</source>
      <translation>Eingerechnet: {intentions}</translation>
    </message>
    <message>
      <source>midnight</source>
      <translation>Mitternacht</translation>
    </message>
    <message>
      <source>Take it away</source>
      <translation>Streichen</translation>
    </message>
    <message>
      <source>Take away: {intention}</source>
      <translation>Streichen: {intention}</translation>
    </message>
    <message>
      <source>Add…</source>
      <translation>Hinzufügen …</translation>
    </message>
    <message>
      <source>No line has come yet.</source>
      <translation>Noch ist keine Zeile gekommen.</translation>
    </message>
    <message>
      <source>refused: {reason}</source>
      <translation>abgelehnt: {reason}</translation>
    </message>
    <message>
      <source>Touch test or look</source>
      <translation>Griffprobe oder Sichtprüfung</translation>
    </message>
    <message>
      <source>Recorded: {title}, {finding}</source>
      <translation>Erfasst: {title}, {finding}</translation>
    </message>
    <message>
      <source>How did it come out?</source>
      <translation>Wie ist es geworden?</translation>
    </message>
    <message>
      <source>Recorded: {coat} on {title} came out {outcome}</source>
      <translation>Erfasst: {coat} auf {title}, geworden: {outcome}</translation>
    </message>
    <message>
      <source>Coat</source>
      <translation>Schicht</translation>
    </message>
    <message>
      <source>Look across it against the light, then straight on.</source>
      <translation>Schauen Sie flach darüber gegen das Licht, dann gerade darauf.</translation>
    </message>
    <message>
      <source>The studio</source>
      <translation>Das Atelier</translation>
    </message>
    <message>
      <source>Warnings</source>
      <translation>Warnungen</translation>
    </message>
    <message>
      <source>+ register a piece</source>
      <translation>+ Bild eintragen</translation>
    </message>
    <message>
      <source>Put a piece on the rack</source>
      <translation>Ein Bild ins Gestell stellen</translation>
    </message>
    <message>
      <source>show it large</source>
      <translation>groß zeigen</translation>
    </message>
    <message>
      <source>Large, to be read from across the room (F11)</source>
      <translation>Groß, aus der Ferne zu lesen (F11)</translation>
    </message>
    <message>
      <source>Show it large, to be read from across the room</source>
      <translation>Groß zeigen, aus der Ferne zu lesen</translation>
    </message>
    <message>
      <source>Rack</source>
      <translation>Gestell</translation>
    </message>
    <message>
      <source>At the rack and warnings</source>
      <translation>Am Gestell und Warnungen</translation>
    </message>
    <message>
      <source>At the rack</source>
      <translation>Am Gestell</translation>
    </message>
    <message>
      <source>Pictures (*.jpg *.jpeg *.png *.webp *.bmp *.gif *.tif *.tiff);;All files (*)</source>
      <translation>Bilddateien (*.jpg *.jpeg *.png *.webp *.bmp *.gif *.tif *.tiff);;Alle Dateien (*)</translation>
    </message>
    <message>
      <source>Photo</source>
      <translation>Foto</translation>
    </message>
    <message>
      <source>Choose a photo…</source>
      <translation>Foto wählen…</translation>
    </message>
    <message>
      <source>Remove the photo</source>
      <translation>Foto entfernen</translation>
    </message>
    <message>
      <source>Choose a photo</source>
      <translation>Foto wählen</translation>
    </message>
    <message>
      <source>Taking {name} in …</source>
      <translation>{name} wird übernommen …</translation>
    </message>
    <message>
      <source>Scaled down and copied beside the records.</source>
      <translation>Verkleinert und neben die Aufzeichnungen kopiert.</translation>
    </message>
    <message>
      <source>its file
is missing</source>
      <translation>Datei
fehlt</translation>
    </message>
    <message>
      <source>no photo</source>
      <translation>kein Foto</translation>
    </message>
    <message>
      <source>Face up</source>
      <translation>mit dem Bild nach oben</translation>
    </message>
    <message>
      <source>Upright</source>
      <translation>aufrecht</translation>
    </message>
    <message>
      <source>what you call it</source>
      <translation>wie Sie es nennen</translation>
    </message>
    <message>
      <source>not known</source>
      <translation>nicht bekannt</translation>
    </message>
    <message>
      <source>It is due on a day</source>
      <translation>Es hat einen Liefertermin</translation>
    </message>
    <message>
      <source>Due date</source>
      <translation>Liefertermin</translation>
    </message>
    <message>
      <source>Title</source>
      <translation>Titel</translation>
    </message>
    <message>
      <source>Shape</source>
      <translation>Form</translation>
    </message>
    <message>
      <source>Panels</source>
      <translation>Tafeln</translation>
    </message>
    <message>
      <source>Painted on</source>
      <translation>Bildträger</translation>
    </message>
    <message>
      <source>It dries lying</source>
      <translation>Es trocknet</translation>
    </message>
    <message>
      <source>Paint layer</source>
      <translation>Farbschicht</translation>
    </message>
    <message>
      <source>Last of it laid</source>
      <translation>Zuletzt aufgetragen</translation>
    </message>
    <message>
      <source>Notes</source>
      <translation>Notizen</translation>
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
      <source>Register a piece</source>
      <translation>Bild eintragen</translation>
    </message>
    <message>
      <source>Edit the piece: {title}</source>
      <translation>Bild bearbeiten: {title}</translation>
    </message>
    <message>
      <source>Register the piece</source>
      <translation>Bild eintragen</translation>
    </message>
    <message>
      <source>Keep the changes</source>
      <translation>Änderungen behalten</translation>
    </message>
    <message>
      <source>From and until, as 09:00-18:00, or “{off}”. Coats are planned only where they fit in, with their preparation.</source>
      <translation>Von und bis, etwa 09:00-18:00, oder „{off}“. Schichten werden nur dort geplant, wo sie mit ihrer Vorbereitung hineinpassen.</translation>
    </message>
    <message>
      <source>Your working hours are set; the plan is made anew.</source>
      <translation>Ihre Arbeitszeiten sind gesetzt; der Plan entsteht neu.</translation>
    </message>
    <message numerus="yes">
      <source>{n} coats to come, lowest first. A name that is there already gets these coats instead.</source>
      <translation>
        <numerusform>{n} kommende Schicht. Ein Name, den es schon gibt, bekommt stattdessen diese.</numerusform>
        <numerusform>{n} kommende Schichten, die unterste zuerst. Ein Name, den es schon gibt, bekommt stattdessen diese.</numerusform>
      </translation>
    </message>
    <message>
      <source>Working hours</source>
      <translation>Arbeitszeiten</translation>
    </message>
    <message>
      <source>Set the hours</source>
      <translation>Zeiten setzen</translation>
    </message>
    <message>
      <source>Keep as a recipe</source>
      <translation>Als Rezept behalten</translation>
    </message>
    <message>
      <source>Name</source>
      <translation>Name</translation>
    </message>
    <message>
      <source>Keep the recipe</source>
      <translation>Rezept behalten</translation>
    </message>
    <message>
      <source>Kept as the recipe {name}.</source>
      <translation>Als Rezept {name} behalten.</translation>
    </message>
    <message>
      <source>The recipe has no name; type one, such as Panels, satin.</source>
      <translation>Das Rezept hat keinen Namen; geben Sie ihm einen, etwa „Tafeln, seidenmatt“.</translation>
    </message>
    <message>
      <source>Deleted: the recipe {name}. Undo brings it back.</source>
      <translation>Gelöscht: das Rezept {name}. „Rückgängig“ holt es zurück.</translation>
    </message>
    <message>
      <source>The chosen piece's plan</source>
      <translation>Plan des gewählten Bildes</translation>
    </message>
    <message>
      <source>Keep as a recipe…</source>
      <translation>Als Rezept behalten…</translation>
    </message>
    <message>
      <source>Keep these coats to come under a name</source>
      <translation>Diese kommenden Schichten unter einem Namen behalten</translation>
    </message>
    <message>
      <source>Delete a recipe of yours</source>
      <translation>Eigenes Rezept löschen</translation>
    </message>
    <message>
      <source>+ add a coat</source>
      <translation>+ Schicht</translation>
    </message>
    <message>
      <source>Apply a recipe</source>
      <translation>Rezept anwenden</translation>
    </message>
    <message>
      <source>A coat was added to the plan.</source>
      <translation>Eine Schicht kam in den Plan.</translation>
    </message>
    <message>
      <source>{recipe} is planned for {title}.</source>
      <translation>{recipe} ist für {title} geplant.</translation>
    </message>
    <message>
      <source>Coats to come</source>
      <translation>Kommende Schichten</translation>
    </message>
    <message>
      <source>The coat was moved.</source>
      <translation>Die Schicht wurde verschoben.</translation>
    </message>
    <message>
      <source>Another coat is planned.</source>
      <translation>Eine andere Schicht ist geplant.</translation>
    </message>
    <message>
      <source>The coat was taken out of the plan.</source>
      <translation>Die Schicht wurde aus dem Plan genommen.</translation>
    </message>
    <message>
      <source>finishing plan.ics</source>
      <translation>Abschlussplan.ics</translation>
    </message>
    <message>
      <source>Finishing plan</source>
      <translation>Abschlussplan</translation>
    </message>
    <message>
      <source>What if…</source>
      <translation>Was wäre wenn …</translation>
    </message>
    <message>
      <source>What another room would make of it (Ctrl+Shift+W)</source>
      <translation>Was ein anderer Raum daraus machen würde (Strg+Umschalt+W)</translation>
    </message>
    <message>
      <source>Save a calendar file</source>
      <translation>Kalenderdatei speichern</translation>
    </message>
    <message>
      <source>Calendar files (*.ics)</source>
      <translation>Kalenderdateien (*.ics)</translation>
    </message>
    <message>
      <source>The plan was saved as {name}.</source>
      <translation>Der Plan wurde als {name} gespeichert.</translation>
    </message>
    <message>
      <source>{path} cannot be written: {reason}. Choose another folder.</source>
      <translation>{path} lässt sich nicht schreiben: {reason}. Wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
      <source>Change</source>
      <translation>Ändern</translation>
    </message>
    <message>
      <source>Lay earlier</source>
      <translation>Früher auftragen</translation>
    </message>
    <message>
      <source>Lay later</source>
      <translation>Später auftragen</translation>
    </message>
    <message>
      <source>Take out</source>
      <translation>Herausnehmen</translation>
    </message>
    <message>
      <source>▮ coat   ○ fit to handle   ◆ fit to wrap   ▶ fit to ship   ⚑ due   — from when it may be</source>
      <translation>▮ Schicht   ○ anfassbar   ◆ verpackbar   ▶ versandfertig   ⚑ Liefertermin   — ab wann es sein kann</translation>
    </message>
    <message>
      <source>Pieces over the days</source>
      <translation>Bilder über die Tage</translation>
    </message>
    <message>
      <source>Show {span}</source>
      <translation>{span} zeigen</translation>
    </message>
    <message>
      <source>What to do first today</source>
      <translation>Was heute zuerst zu tun ist</translation>
    </message>
    <message>
      <source>Working hours…</source>
      <translation>Arbeitszeiten…</translation>
    </message>
    <message>
      <source>When you work: coats are planned only then</source>
      <translation>Wann Sie arbeiten: Nur dann werden Schichten geplant</translation>
    </message>
    <message>
      <source>Save a calendar file…</source>
      <translation>Kalenderdatei speichern…</translation>
    </message>
    <message>
      <source>For any calendar (iCalendar, RFC 5545)</source>
      <translation>Für jeden Kalender (iCalendar, RFC 5545)</translation>
    </message>
    <message>
      <source>Read this one</source>
      <translation>Diesen lesen</translation>
    </message>
    <message>
      <source>The command that mends it</source>
      <translation>Der Befehl, der das behebt</translation>
    </message>
    <message>
      <source>Copy</source>
      <translation>Kopieren</translation>
    </message>
    <message>
      <source>Copy the command</source>
      <translation>Befehl kopieren</translation>
    </message>
    <message>
      <source>Copy the command that mends it</source>
      <translation>Befehl kopieren, der das behebt</translation>
    </message>
    <message>
      <source>Read {port} instead</source>
      <translation>Stattdessen {port} lesen</translation>
    </message>
    <message>
      <source>In 5 min</source>
      <translation>In 5 min</translation>
    </message>
    <message>
      <source>Said again in five minutes</source>
      <translation>Kommt in fünf Minuten wieder</translation>
    </message>
    <message>
      <source>Done</source>
      <translation>Erledigt</translation>
    </message>
    <message>
      <source>Nobody watches the room until studiowatch is opened again.</source>
      <translation>Niemand wacht über den Raum, bis studiowatch wieder geöffnet wird.</translation>
    </message>
    <message>
      <source>Stop watching?</source>
      <translation>Wache beenden?</translation>
    </message>
    <message>
      <source>Stop watching</source>
      <translation>Wache beenden</translation>
    </message>
    <message>
      <source>Keep watching</source>
      <translation>Weiter wachen</translation>
    </message>
    <message>
      <source>Still wet: {titles}.</source>
      <translation>Noch nass: {titles}.</translation>
    </message>
    <message>
      <source>Quiet hours</source>
      <translation>Ruhezeiten</translation>
    </message>
    <message>
      <source>In quiet hours a caution makes no sound. What must be acted on sounds once, softly, and then only shows. Everything is shown and kept as by day.</source>
      <translation>In Ruhezeiten tönt ein Vorsichtshinweis nicht. Wo gehandelt werden muss, tönt es einmal leise, danach ist es nur zu sehen. Alles wird wie am Tag gezeigt und festgehalten.</translation>
    </message>
    <message>
      <source>Also wake me for a wet coat in moving air</source>
      <translation>Auch wecken, wenn eine nasse Schicht in bewegter Luft liegt</translation>
    </message>
    <message>
      <source>Keep quiet hours</source>
      <translation>Ruhezeiten einhalten</translation>
    </message>
    <message>
      <source>Quiet from</source>
      <translation>Ruhe von</translation>
    </message>
    <message>
      <source>To</source>
      <translation>Bis</translation>
    </message>
    <message>
      <source>Quiet to</source>
      <translation>Ruhe bis</translation>
    </message>
    <message>
      <source>Pieces</source>
      <translation>Bilder</translation>
    </message>
    <message>
      <source>The rack is empty</source>
      <translation>Das Gestell ist leer</translation>
    </message>
    <message>
      <source>No piece on the rack yet</source>
      <translation>Noch kein Bild im Gestell</translation>
    </message>
    <message>
      <source>Take the reading</source>
      <translation>Messwert übernehmen</translation>
    </message>
    <message>
      <source>Temperature</source>
      <translation>Temperatur</translation>
    </message>
    <message>
      <source>Unit</source>
      <translation>Einheit</translation>
    </message>
    <message>
      <source>Relative humidity, %</source>
      <translation>Relative Luftfeuchte, %</translation>
    </message>
    <message>
      <source>Air at the pieces</source>
      <translation>Luft bei den Bildern</translation>
    </message>
    <message>
      <source>Read at</source>
      <translation>Abgelesen um</translation>
    </message>
    <message>
      <source>What was recorded</source>
      <translation>Was festgehalten ist</translation>
    </message>
    <message>
      <source>Take back…</source>
      <translation>Zurücknehmen…</translation>
    </message>
    <message>
      <source>Take back</source>
      <translation>Zurücknehmen</translation>
    </message>
    <message>
      <source>Add a coat that was forgotten…</source>
      <translation>Vergessene Schicht nachtragen…</translation>
    </message>
    <message>
      <source>Correct…</source>
      <translation>Berichtigen…</translation>
    </message>
    <message>
      <source>Corrections</source>
      <translation>Berichtigungen</translation>
    </message>
    <message>
      <source>How often each chance came true</source>
      <translation>Wie oft jede Wahrscheinlichkeit zutraf</translation>
    </message>
    <message>
      <source>told {told} %, came true {came_true} % of {coats} coats</source>
      <translation>gesagt {told} %, eingetroffen {came_true} % von {coats} Schichten</translation>
    </message>
    <message>
      <source>chance told, against how often it clouded</source>
      <translation>gesagt, gegen wie oft sie trüb wurde</translation>
    </message>
    <message>
      <source>What would have changed it</source>
      <translation>Was es geändert hätte</translation>
    </message>
    <message>
      <source>What to do now</source>
      <translation>Was jetzt zu tun ist</translation>
    </message>
    <message>
      <source>This coat and its room are made up, to show what this cause looks like.</source>
      <translation>Diese Schicht und ihr Raum sind erfunden; sie zeigen, wie diese Ursache aussieht.</translation>
    </message>
    <message>
      <source>How often was it right?</source>
      <translation>Wie oft traf es zu?</translation>
    </message>
    <message>
      <source>No other coat of this kind has a recorded outcome yet: record how coats came out, clear ones too.</source>
      <translation>Noch keine andere Schicht dieser Art hat ein festgehaltenes Ergebnis: Halten Sie fest, wie Schichten geworden sind, auch die klaren.</translation>
    </message>
    <message>
      <source>← Back to my coat</source>
      <translation>← Zurück zu meiner Schicht</translation>
    </message>
    <message>
      <source>Beside my other coats</source>
      <translation>Neben meinen anderen Schichten</translation>
    </message>
    <message>
      <source>This coat alone</source>
      <translation>Diese Schicht allein</translation>
    </message>
    <message>
      <source>The review</source>
      <translation>Der Rückblick</translation>
    </message>
    <message>
      <source>Made up: {title}</source>
      <translation>Erfunden: {title}</translation>
    </message>
    <message>
      <source>Save as PDF…</source>
      <translation>Als PDF speichern…</translation>
    </message>
    <message>
      <source>Save as CSV…</source>
      <translation>Als CSV speichern…</translation>
    </message>
    <message>
      <source>What the room did under this coat</source>
      <translation>Was der Raum bei dieser Schicht tat</translation>
    </message>
    <message>
      <source>wet</source>
      <translation>nass</translation>
    </message>
    <message>
      <source>closing and hardening</source>
      <translation>schließt und härtet</translation>
    </message>
    <message>
      <source>this coat</source>
      <translation>diese Schicht</translation>
    </message>
    <message>
      <source>came out clear</source>
      <translation>wurde klar</translation>
    </message>
    <message>
      <source>clouded (dashed)</source>
      <translation>wurde trüb (gestrichelt)</translation>
    </message>
    <message>
      <source>laid</source>
      <translation>aufgetragen</translation>
    </message>
    <message>
      <source>The room now</source>
      <translation>Der Raum jetzt</translation>
    </message>
    <message>
      <source>Why these limits? {basis}</source>
      <translation>Warum diese Grenzen? {basis}</translation>
    </message>
    <message>
      <source>Heard</source>
      <translation>Gehört</translation>
    </message>
    <message>
      <source>Remind me in 10 min</source>
      <translation>In 10 min erinnern</translation>
    </message>
    <message>
      <source>Starting</source>
      <translation>Beginnt</translation>
    </message>
    <message>
      <source>The watch has not spoken yet.</source>
      <translation>Die Wache hat sich noch nicht gemeldet.</translation>
    </message>
    <message>
      <source>No more sound for this warning</source>
      <translation>Diese Warnung tönt nicht mehr</translation>
    </message>
    <message>
      <source>Quiet for ten minutes, then again if it still stands</source>
      <translation>Zehn Minuten Ruhe, dann wieder, falls es noch so ist</translation>
    </message>
    <message>
      <source>Why this limit? {basis}</source>
      <translation>Warum diese Grenze? {basis}</translation>
    </message>
    <message>
      <source>Type what the product's own sheet says. Coats on the rack that were laid by this sheet are dried anew by these figures; a bottle with another recipe gets a sheet of its own.</source>
      <translation>Tippen Sie ein, was das Datenblatt des Produkts sagt. Schichten im Gestell, die nach diesem Datenblatt aufgetragen sind, werden mit diesen Zahlen neu berechnet; eine Flasche mit anderer Rezeptur bekommt ein eigenes Datenblatt.</translation>
    </message>
    <message>
      <source>Kept: the sheet {title}</source>
      <translation>Behalten: das Datenblatt {title}</translation>
    </message>
    <message>
      <source>Edit the sheet: {title}</source>
      <translation>Datenblatt bearbeiten: {title}</translation>
    </message>
    <message>
      <source>A sheet of my own, from: {title}</source>
      <translation>Ein eigenes Datenblatt, nach: {title}</translation>
    </message>
    <message>
      <source>Keep the sheet</source>
      <translation>Datenblatt behalten</translation>
    </message>
    <message>
      <source>It holds matting agent</source>
      <translation>Enthält Mattierungsmittel</translation>
    </message>
    <message>
      <source>What the bottle is called</source>
      <translation>Wie die Flasche heißt</translation>
    </message>
    <message>
      <source>Kind</source>
      <translation>Art</translation>
    </message>
    <message>
      <source>Sheen</source>
      <translation>Glanz</translation>
    </message>
    <message>
      <source>Removable with</source>
      <translation>Abnehmbar mit</translation>
    </message>
    <message>
      <source>Cautions, one a line</source>
      <translation>Vorsicht, ein Hinweis je Zeile</translation>
    </message>
    <message>
      <source>{figure}: unit</source>
      <translation>{figure}: Einheit</translation>
    </message>
    <message>
      <source>Look at the marked lines again, or press again to keep them: {count}.</source>
      <translation>Sehen Sie die markierten Zeilen noch einmal an, oder drücken Sie noch einmal, um sie zu behalten: {count}.</translation>
    </message>
    <message>
      <source>needed</source>
      <translation>nötig</translation>
    </message>
    <message>
      <source>not on the sheet</source>
      <translation>nicht auf dem Blatt</translation>
    </message>
    <message>
      <source>{title}, mine</source>
      <translation>{title}, meines</translation>
    </message>
    <message>
      <source>Built in, generic: it describes no product. Make one of your own from it and type your bottle's figures.</source>
      <translation>Eingebaut und allgemein: Es beschreibt kein Produkt. Machen Sie daraus ein eigenes, und tippen Sie die Zahlen Ihrer Flasche ein.</translation>
    </message>
    <message>
      <source>Yours, from the folder of sheets beside the records.</source>
      <translation>Ihres, aus dem Ordner der Datenblätter neben den Aufzeichnungen.</translation>
    </message>
    <message>
      <source>Data sheets</source>
      <translation>Datenblätter</translation>
    </message>
    <message>
      <source>Edit…</source>
      <translation>Bearbeiten…</translation>
    </message>
    <message>
      <source>Make one of my own from it…</source>
      <translation>Ein eigenes daraus machen…</translation>
    </message>
    <message>
      <source>Delete…</source>
      <translation>Löschen…</translation>
    </message>
    <message>
      <source>yours</source>
      <translation>Ihres</translation>
    </message>
    <message>
      <source>Take it</source>
      <translation>Übernehmen</translation>
    </message>
    <message>
      <source>Units and language</source>
      <translation>Einheiten und Sprache</translation>
    </message>
    <message>
      <source>For all that is shown, said and printed. Files and what is kept of the room stay metric, with a point. A reading may be typed in either unit, as “70 F” or “21,5 C”.</source>
      <translation>Für alles, was gezeigt, gesagt und gedruckt wird. Dateien und was vom Raum behalten wird, bleiben metrisch, mit Punkt. Ein Messwert darf in jeder der Einheiten eingetippt werden, etwa „70 F“ oder „21,5 C“.</translation>
    </message>
    <message>
      <source>Another language is spoken from the next start on.</source>
      <translation>Eine andere Sprache gilt ab dem nächsten Start.</translation>
    </message>
    <message>
      <source>Shown in {degrees} and {speed} from now on.</source>
      <translation>Ab jetzt in {degrees} und {speed} angezeigt.</translation>
    </message>
    <message>
      <source>As the computer</source>
      <translation>Wie der Rechner</translation>
    </message>
    <message>
      <source>&amp;Temperature</source>
      <translation>&amp;Temperatur</translation>
    </message>
    <message>
      <source>&amp;Air speed</source>
      <translation>&amp;Luftbewegung</translation>
    </message>
    <message>
      <source>&amp;Sizes</source>
      <translation>&amp;Größen</translation>
    </message>
    <message>
      <source>&amp;Film</source>
      <translation>&amp;Filmdicke</translation>
    </message>
    <message>
      <source>&amp;Volumes</source>
      <translation>&amp;Mengen</translation>
    </message>
    <message>
      <source>&amp;Clock</source>
      <translation>&amp;Uhrzeit</translation>
    </message>
    <message>
      <source>&amp;Numbers</source>
      <translation>&amp;Zahlen</translation>
    </message>
    <message>
      <source>&amp;Language</source>
      <translation>&amp;Sprache</translation>
    </message>
    <message>
      <source>Taken. Another language is spoken when studiowatch starts again.</source>
      <translation>Übernommen. Die andere Sprache gilt, wenn studiowatch wieder startet.</translation>
    </message>
    <message>
      <source>All &amp;metric</source>
      <translation>Alles met&amp;risch</translation>
    </message>
    <message>
      <source>All &amp;US</source>
      <translation>Alles in US-&amp;Einheiten</translation>
    </message>
    <message>
      <source>Why this limit?</source>
      <translation>Warum?</translation>
    </message>
    <message>
      <source>Choose when to be reminded</source>
      <translation>Wählen, wann wieder erinnert wird</translation>
    </message>
    <message>
      <source>In 10 min</source>
      <translation>In 10 min</translation>
    </message>
    <message>
      <source>Later…</source>
      <translation>Später…</translation>
    </message>
    <message>
      <source>Where the limit of this warning comes from</source>
      <translation>Woher die Grenze dieser Warnung kommt</translation>
    </message>
    <message>
      <source>Remind me in ten minutes if it still stands</source>
      <translation>In zehn Minuten erinnern, falls es noch so ist</translation>
    </message>
    <message>
      <source>The room from now on</source>
      <translation>Der Raum ab jetzt</translation>
    </message>
    <message>
      <source>Temperature kept at</source>
      <translation>Temperatur gehalten auf</translation>
    </message>
    <message>
      <source>Humidity kept at</source>
      <translation>Luftfeuchte gehalten auf</translation>
    </message>
    <message>
      <source>Air</source>
      <translation>Luft</translation>
    </message>
    <message>
      <source>For how long</source>
      <translation>Wie lange</translation>
    </message>
    <message>
      <source>A mesh cover over every coat</source>
      <translation>Netzabdeckung über jeder Schicht</translation>
    </message>
    <message>
      <source>The room as it comes</source>
      <translation>Der Raum, wie er kommt</translation>
    </message>
    <message>
      <source>Hold nothing any more</source>
      <translation>Nichts mehr halten</translation>
    </message>
    <message>
      <source>Vapour stays: warmer air is drier air, unless its humidity is kept too</source>
      <translation>Der Wasserdampf bleibt: Wärmere Luft ist trockenere Luft, wenn nicht auch die Feuchte gehalten wird</translation>
    </message>
    <message>
      <source>As a dehumidifier or a humidifier would</source>
      <translation>Wie es ein Entfeuchter oder Befeuchter täte</translation>
    </message>
    <message>
      <source>What if</source>
      <translation>Was wäre wenn</translation>
    </message>
    <message>
      <source>Every piece in both rooms</source>
      <translation>Jedes Bild in beiden Räumen</translation>
    </message>
    <message>
      <source>In that room: {warning}</source>
      <translation>In diesem Raum: {warning}</translation>
    </message>
    <message>
      <source>under mesh covers</source>
      <translation>unter Netzabdeckungen</translation>
    </message>
    <message>
      <source>Above as it comes, below otherwise; each with its likely range and the time by which it is.</source>
      <translation>Oben wie es kommt, unten anders; jeweils die wahrscheinliche Spanne und die Zeit, bis zu der es so weit ist.</translation>
    </message>
    <message>
      <source>How much is done</source>
      <translation>Wie viel getan ist</translation>
    </message>
    <message>
      <source>What to look at, by line of the file</source>
      <translation>Was anzusehen ist, nach Zeilen der Datei</translation>
    </message>
  </context>
</TS>
