<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>The program is closing: this was not recorded.</source>
      <translation>Das Programm schließt gerade: Das wurde nicht festgehalten.</translation>
    </message>
    <message>
      <source>This could not be done because of a fault in the program; nothing was recorded.</source>
      <translation>Das ging wegen eines Fehlers im Programm nicht; nichts wurde festgehalten.</translation>
    </message>
    <message>
      <source>{title} was taken off the rack.</source>
      <translation>{title} wurde vom Gestell genommen.</translation>
    </message>
    <message>
      <source>Cover set over {title}.</source>
      <translation>Abdeckung über {title} gestellt.</translation>
    </message>
    <message>
      <source>Take {title} off the rack?</source>
      <translation>{title} vom Gestell nehmen?</translation>
    </message>
    <message>
      <source>Its coats are no longer watched. Its records stay.</source>
      <translation>Seine Schichten werden nicht mehr überwacht. Seine Aufzeichnungen bleiben.</translation>
    </message>
    <message>
      <source>Take it off</source>
      <translation>Herunternehmen</translation>
    </message>
    <message>
      <source>What to do with this piece</source>
      <translation>Was mit diesem Bild zu tun ist</translation>
    </message>
    <message>
      <source>&amp;Lay a coat…</source>
      <translation>&amp;Schicht auftragen…</translation>
    </message>
    <message>
      <source>&amp;Edit the piece…</source>
      <translation>Bild b&amp;earbeiten…</translation>
    </message>
    <message>
      <source>&amp;Corrections…</source>
      <translation>Be&amp;richtigungen…</translation>
    </message>
    <message>
      <source>Finis&amp;hing record…</source>
      <translation>Abschluss&amp;protokoll…</translation>
    </message>
    <message>
      <source>Take off the &amp;rack…</source>
      <translation>Vom Gestell &amp;nehmen…</translation>
    </message>
    <message>
      <source>Choose a piece on the rack first.</source>
      <translation>Wählen Sie zuerst ein Bild im Gestell.</translation>
    </message>
    <message>
      <source>Register a piece first: a coat is laid on a piece.</source>
      <translation>Tragen Sie zuerst ein Bild ein: Eine Schicht wird auf ein Bild aufgetragen.</translation>
    </message>
    <message>
      <source>No coat was laid yet: there is nothing to touch.</source>
      <translation>Noch ist keine Schicht aufgetragen: Es gibt nichts zu berühren.</translation>
    </message>
    <message>
      <source>Choose a piece with a coat on it first.</source>
      <translation>Wählen Sie zuerst ein Bild mit einer Schicht.</translation>
    </message>
    <message>
      <source>The cover stands over {title} already.</source>
      <translation>Die Abdeckung steht schon über {title}.</translation>
    </message>
    <message>
      <source>&amp;Touch test or look…</source>
      <translation>&amp;Griffprobe oder Sichtprüfung…</translation>
    </message>
    <message>
      <source>The &amp;mesh cover is set</source>
      <translation>Die Abdec&amp;kung steht</translation>
    </message>
    <message>
      <source>How did it come &amp;out…</source>
      <translation>Wie ist sie ge&amp;worden…</translation>
    </message>
    <message>
      <source>&amp;Why did it cloud?</source>
      <translation>Warum wurde sie &amp;trüb?</translation>
    </message>
    <message>
      <source>Back up now</source>
      <translation>Jetzt sichern</translation>
    </message>
    <message>
      <source>Take a file in</source>
      <translation>Datei einlesen</translation>
    </message>
    <message>
      <source>Back up now: choose a folder</source>
      <translation>Jetzt sichern: Ordner wählen</translation>
    </message>
    <message>
      <source>Written to {path}.</source>
      <translation>Geschrieben nach {path}.</translation>
    </message>
    <message>
      <source>drawing the pages</source>
      <translation>die Seiten werden gezeichnet</translation>
    </message>
    <message>
      <source>{path} cannot be written: {reason}. Choose another place.</source>
      <translation>{path} lässt sich nicht schreiben: {reason}. Wählen Sie einen anderen Ort.</translation>
    </message>
    <message>
      <source>The made-up studio could not be started; run `studiowatch demo` in a terminal.</source>
      <translation>Das erfundene Atelier ließ sich nicht starten; rufen Sie `studiowatch demo` in einem Terminal auf.</translation>
    </message>
    <message>
      <source>This is the made-up studio already: look around.</source>
      <translation>Das ist schon das erfundene Atelier: Sehen Sie sich um.</translation>
    </message>
    <message>
      <source>The made-up studio is opening.</source>
      <translation>Das erfundene Atelier öffnet sich.</translation>
    </message>
    <message>
      <source>Hel&amp;p</source>
      <translation>&amp;Hilfe</translation>
    </message>
    <message>
      <source>The studio &amp;book</source>
      <translation>Das Atelier&amp;buch</translation>
    </message>
    <message>
      <source>&amp;What clouded coats look like</source>
      <translation>&amp;Wie trübe Schichten aussehen</translation>
    </message>
    <message>
      <source>What clouded coats look like</source>
      <translation>Wie trübe Schichten aussehen</translation>
    </message>
    <message>
      <source>Choose a stretch in which a coat dried first: drag over the room history with Shift held.</source>
      <translation>Wählen Sie zuerst einen Zeitraum, in dem eine Schicht trocknete: Ziehen Sie mit gedrückter Umschalttaste über den Raumverlauf.</translation>
    </message>
    <message>
      <source>&amp;8 h</source>
      <translation>&amp;8 h</translation>
    </message>
    <message>
      <source>&amp;day</source>
      <translation>&amp;Tag</translation>
    </message>
    <message>
      <source>&amp;week</source>
      <translation>&amp;Woche</translation>
    </message>
    <message>
      <source>&amp;month</source>
      <translation>&amp;Monat</translation>
    </message>
    <message>
      <source>&amp;all</source>
      <translation>&amp;alles</translation>
    </message>
    <message>
      <source>Not meant any more: {intention}</source>
      <translation>Nicht mehr vorgehabt: {intention}</translation>
    </message>
    <message>
      <source>A made-up studio does not start at login.</source>
      <translation>Ein erfundenes Atelier startet nicht beim Anmelden.</translation>
    </message>
    <message>
      <source>{path} cannot be changed: {reason}.</source>
      <translation>{path} lässt sich nicht ändern: {reason}.</translation>
    </message>
    <message>
      <source>Opens at login from now on.</source>
      <translation>Öffnet sich von jetzt an beim Anmelden.</translation>
    </message>
    <message>
      <source>No longer opens at login.</source>
      <translation>Öffnet sich nicht mehr beim Anmelden.</translation>
    </message>
    <message>
      <source>This could not be done because of a fault in the program: {fault}. Please report it.</source>
      <translation>Das ging wegen eines Fehlers im Programm nicht: {fault}. Bitte melden Sie ihn.</translation>
    </message>
    <message>
      <source>&amp;Undo</source>
      <translation>&amp;Rückgängig</translation>
    </message>
    <message>
      <source>Do a&amp;gain</source>
      <translation>&amp;Wiederholen</translation>
    </message>
    <message>
      <source>Remind me in &amp;10 min</source>
      <translation>In &amp;10 min erinnern</translation>
    </message>
    <message>
      <source>Remind me in &amp;30 min</source>
      <translation>In &amp;30 min erinnern</translation>
    </message>
    <message>
      <source>Not until the coat is &amp;dry</source>
      <translation>Erst wenn die Schicht &amp;trocken ist</translation>
    </message>
    <message>
      <source>Menus</source>
      <translation>Menüs</translation>
    </message>
    <message>
      <source>&amp;Edit</source>
      <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
      <source>&amp;History</source>
      <translation>&amp;Verlauf</translation>
    </message>
    <message>
      <source>&amp;View</source>
      <translation>&amp;Ansicht</translation>
    </message>
    <message>
      <source>&amp;Night colours</source>
      <translation>&amp;Nachtfarben</translation>
    </message>
    <message>
      <source>High &amp;contrast</source>
      <translation>Hoher &amp;Kontrast</translation>
    </message>
    <message>
      <source>&amp;Larger text</source>
      <translation>&amp;Größere Schrift</translation>
    </message>
    <message>
      <source>&amp;Smaller text</source>
      <translation>K&amp;leinere Schrift</translation>
    </message>
    <message>
      <source>Text at &amp;100 %</source>
      <translation>Schrift auf &amp;100 %</translation>
    </message>
    <message>
      <source>&amp;Units and language…</source>
      <translation>&amp;Einheiten und Sprache…</translation>
    </message>
    <message>
      <source>&amp;From across the room</source>
      <translation>Aus der &amp;Ferne</translation>
    </message>
    <message>
      <source>The finishing &amp;plan</source>
      <translation>Abschluss&amp;plan</translation>
    </message>
    <message>
      <source>&amp;What if…</source>
      <translation>&amp;Was wäre wenn …</translation>
    </message>
    <message>
      <source>The &amp;board</source>
      <translation>&amp;Messplatine</translation>
    </message>
    <message>
      <source>F&amp;irst steps</source>
      <translation>Erste &amp;Schritte</translation>
    </message>
    <message>
      <source>&amp;Rack</source>
      <translation>&amp;Gestell</translation>
    </message>
    <message>
      <source>&amp;Register a piece…</source>
      <translation>&amp;Bild eintragen…</translation>
    </message>
    <message>
      <source>Type a read&amp;ing…</source>
      <translation>&amp;Messwert eintippen…</translation>
    </message>
    <message>
      <source>What &amp;you mean to do with the room…</source>
      <translation>Was Sie mit dem Raum &amp;vorhaben …</translation>
    </message>
    <message>
      <source>Ta&amp;ke off the rack…</source>
      <translation>Vom Gestell &amp;nehmen…</translation>
    </message>
    <message>
      <source>&amp;Find on the rack</source>
      <translation>Im Gestell &amp;finden</translation>
    </message>
    <message>
      <source>&amp;Archived pieces…</source>
      <translation>&amp;Archivierte Bilder…</translation>
    </message>
    <message>
      <source>&amp;Data sheets…</source>
      <translation>Datenb&amp;lätter…</translation>
    </message>
    <message>
      <source>&amp;Start at login</source>
      <translation>Be&amp;im Anmelden starten</translation>
    </message>
    <message>
      <source>&amp;Quit</source>
      <translation>Been&amp;den</translation>
    </message>
    <message>
      <source>&amp;Warnings</source>
      <translation>&amp;Warnungen</translation>
    </message>
    <message>
      <source>&amp;Heard</source>
      <translation>&amp;Gehört</translation>
    </message>
    <message>
      <source>&amp;Quiet hours…</source>
      <translation>&amp;Ruhezeiten…</translation>
    </message>
    <message>
      <source>&amp;Try the sound</source>
      <translation>Ton &amp;probieren</translation>
    </message>
    <message>
      <source>Pages</source>
      <translation>Seiten</translation>
    </message>
    <message>
      <source>no JPEG could be made of it</source>
      <translation>daraus ließ sich kein JPEG machen</translation>
    </message>
    <message>
      <source>it is not a picture of a kind that is known here</source>
      <translation>es ist kein Bild einer hier bekannten Art</translation>
    </message>
    <message>
      <source>it has {width} × {height} pixels, more than {most} million</source>
      <translation>es hat {width} × {height} Pixel, mehr als {most} Millionen</translation>
    </message>
    <message>
      <source>it is broken ({reason})</source>
      <translation>es ist beschädigt ({reason})</translation>
    </message>
    <message>
      <source>Put off until {time}.</source>
      <translation>Aufgeschoben bis {time}.</translation>
    </message>
    <message>
      <source>Ticked off.</source>
      <translation>Abgehakt.</translation>
    </message>
    <message>
      <source>The review weighs what the room did under it, and says what to do now.</source>
      <translation>Der Rückblick wägt ab, was der Raum während des Trocknens tat, und sagt, was jetzt zu tun ist.</translation>
    </message>
    <message>
      <source>Was {coat} not laid on {title}?</source>
      <translation>{title}: Wurde {coat} gar nicht aufgetragen?</translation>
    </message>
    <message>
      <source>Its looks go with it. The history of corrections keeps what stood here.</source>
      <translation>Ihre Prüfungen gehen mit. Die Liste der Berichtigungen behält, was hier stand.</translation>
    </message>
    <message>
      <source>The piece</source>
      <translation>Das Bild</translation>
    </message>
    <message>
      <source>{title} is back on the rack.</source>
      <translation>{title} ist wieder im Gestell.</translation>
    </message>
    <message>
      <source>Look at why it may have clouded?</source>
      <translation>Nachsehen, warum sie trüb geworden sein kann?</translation>
    </message>
    <message>
      <source>Look at why</source>
      <translation>Nachsehen</translation>
    </message>
    <message>
      <source>Not now</source>
      <translation>Jetzt nicht</translation>
    </message>
    <message>
      <source>Taken back: {coat} on {title}.</source>
      <translation>Zurückgenommen: {coat} auf {title}.</translation>
    </message>
    <message>
      <source>Keep it</source>
      <translation>Behalten</translation>
    </message>
    <message>
      <source>That is not in the records any more.</source>
      <translation>Das steht nicht mehr in den Aufzeichnungen.</translation>
    </message>
    <message>
      <source>No coat was laid on that piece yet: nothing came out.</source>
      <translation>Auf dieses Bild ist noch keine Schicht aufgetragen: Es gibt noch kein Ergebnis.</translation>
    </message>
    <message>
      <source>Taken back: {what} ({coat} on {title}).</source>
      <translation>Zurückgenommen: {what} ({coat} auf {title}).</translation>
    </message>
    <message>
      <source>Not laid, still to come</source>
      <translation>Nicht aufgetragen, kommt noch</translation>
    </message>
    <message>
      <source>Not laid, not to come</source>
      <translation>Nicht aufgetragen, entfällt</translation>
    </message>
    <message>
      <source>Undone: {what}.</source>
      <translation>Rückgängig gemacht: {what}.</translation>
    </message>
    <message>
      <source>Done again: {what}.</source>
      <translation>Wiederholt: {what}.</translation>
    </message>
    <message>
      <source>Save readings as &amp;CSV…</source>
      <translation>Messwerte als &amp;CSV speichern…</translation>
    </message>
    <message>
      <source>Save readings as SenM&amp;L…</source>
      <translation>Messwerte als SenM&amp;L speichern…</translation>
    </message>
    <message>
      <source>&amp;Review what dried in the chosen stretch</source>
      <translation>&amp;Rückblick auf den gewählten Zeitraum</translation>
    </message>
    <message>
      <source>Re&amp;cords</source>
      <translation>Auf&amp;zeichnungen</translation>
    </message>
    <message>
      <source>Save all &amp;records…</source>
      <translation>Alle &amp;Aufzeichnungen speichern…</translation>
    </message>
    <message>
      <source>&amp;Take a file in…</source>
      <translation>Datei &amp;einlesen…</translation>
    </message>
    <message>
      <source>&amp;Back up now…</source>
      <translation>Jetzt &amp;sichern…</translation>
    </message>
    <message>
      <source>Choose a piece with a coat on it first: a review is of one coat.</source>
      <translation>Wählen Sie zuerst ein Bild mit einer Schicht: Ein Rückblick gilt einer Schicht.</translation>
    </message>
    <message>
      <source>No coat can be reviewed here: this window has no records to look into.</source>
      <translation>Hier ist kein Rückblick möglich: Dieses Fenster hat keine Aufzeichnungen, in die es sehen kann.</translation>
    </message>
    <message>
      <source>Save the review as PDF</source>
      <translation>Rückblick als PDF speichern</translation>
    </message>
    <message>
      <source>Save the figures as CSV</source>
      <translation>Zahlen als CSV speichern</translation>
    </message>
    <message>
      <source>Saved as {name}.</source>
      <translation>Gespeichert als {name}.</translation>
    </message>
    <message>
      <source>review</source>
      <translation>rückblick</translation>
    </message>
    <message>
      <source>The review cannot be worked out: {reason}</source>
      <translation>Der Rückblick lässt sich nicht berechnen: {reason}</translation>
    </message>
    <message>
      <source>Undo brings it back. Archived pieces keep its name, and what was recorded of their coats.</source>
      <translation>„Rückgängig“ holt es zurück. Archivierte Bilder behalten seinen Namen und was von ihren Schichten aufgezeichnet ist.</translation>
    </message>
    <message>
      <source>Delete the sheet {title}?</source>
      <translation>Das Datenblatt {title} löschen?</translation>
    </message>
    <message>
      <source>Delete it</source>
      <translation>Löschen</translation>
    </message>
    <message>
      <source>Deleted: the sheet {title}. Undo brings it back.</source>
      <translation>Gelöscht: das Datenblatt {title}. „Rückgängig“ holt es zurück.</translation>
    </message>
    <message>
      <source>no sound on this machine</source>
      <translation>kein Ton auf diesem Rechner</translation>
    </message>
    <message>
      <source>the desktop's beep and a flash of the window</source>
      <translation>der Signalton der Arbeitsfläche und ein Aufleuchten des Fensters</translation>
    </message>
    <message>
      <source>the sound device ({names})</source>
      <translation>das Tongerät ({names})</translation>
    </message>
    <message>
      <source>the player {player}</source>
      <translation>das Abspielprogramm {player}</translation>
    </message>
    <message>
      <source>the sound device ({names}), else the player {player}</source>
      <translation>das Tongerät ({names}), sonst das Abspielprogramm {player}</translation>
    </message>
    <message>
      <source> or </source>
      <translation> oder </translation>
    </message>
    <message>
      <source>studiowatch is opening</source>
      <translation>studiowatch öffnet sich</translation>
    </message>
    <message>
      <source>Opening the studio…</source>
      <translation>Das Atelier wird geöffnet…</translation>
    </message>
    <message>
      <source>studiowatch keeps watching</source>
      <translation>studiowatch wacht weiter</translation>
    </message>
    <message>
      <source>The window is closed; the watch goes on from the tray.</source>
      <translation>Das Fenster ist zu; die Wache läuft bei der Uhr weiter.</translation>
    </message>
    <message>
      <source>Quit from the tray's menu.</source>
      <translation>Beenden Sie über das Menü des Symbols bei der Uhr.</translation>
    </message>
    <message>
      <source>Starting</source>
      <translation>Beginnt</translation>
    </message>
    <message>
      <source>Open the window</source>
      <translation>Fenster öffnen</translation>
    </message>
    <message>
      <source>From across the room</source>
      <translation>Aus der Ferne</translation>
    </message>
    <message>
      <source>Quit</source>
      <translation>Beenden</translation>
    </message>
    <message>
      <source>No warning waits for an answer.</source>
      <translation>Keine Warnung wartet auf eine Antwort.</translation>
    </message>
    <message>
      <source>Nothing can be heard on this machine: the window flashes instead.</source>
      <translation>Auf diesem Rechner ist nichts zu hören: Stattdessen leuchtet das Fenster auf.</translation>
    </message>
    <message>
      <source>That is the sound of a warning, as loud as it gets.</source>
      <translation>So klingt eine Warnung, wenn sie am lautesten ist.</translation>
    </message>
    <message>
      <source>Heard: no more sound for this warning.</source>
      <translation>Gehört: Diese Warnung tönt nicht mehr.</translation>
    </message>
    <message>
      <source>When to be reminded</source>
      <translation>Wann wieder erinnert wird</translation>
    </message>
    <message>
      <source>This cannot be worked out: {reason}</source>
      <translation>Das lässt sich nicht ausrechnen: {reason}</translation>
    </message>
  </context>
</TS>
