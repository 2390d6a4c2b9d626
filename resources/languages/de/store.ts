<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>the records have piece "{title}" in another form; --replace takes this one and keeps that.</source>
      <translation>die Aufzeichnungen haben das Bild „{title}“ in anderer Form; --replace nimmt dieses und hebt jenes auf.</translation>
    </message>
    <message>
      <source>there would be two pieces called "{title}" on the rack; give this one another title.</source>
      <translation>auf dem Gestell stünden zwei Bilder mit dem Titel „{title}“; geben Sie diesem einen anderen Titel.</translation>
    </message>
    <message>
      <source>"{title}", coat {number}: the records have its key at another piece; give it a new key.</source>
      <translation>„{title}“, Schicht {number}: Die Aufzeichnungen haben ihren Schlüssel bei einem anderen Bild; geben Sie ihr einen neuen.</translation>
    </message>
    <message>
      <source>"{title}", coat {number}: the records have a key of its looks at another coat.</source>
      <translation>„{title}“, Schicht {number}: Die Aufzeichnungen haben den Schlüssel einer ihrer Prüfungen bei einer anderen Schicht.</translation>
    </message>
    <message>
      <source>{heading} of a {owner} that is not there, {lost}; add it, or leave this out.</source>
      <translation>{heading} zu einem nicht vorhandenen {owner}, {lost}; fügen Sie es hinzu, oder lassen Sie dies weg.</translation>
    </message>
    <message>
      <source>the records have {heading} {key} in another form; --replace takes this one.</source>
      <translation>die Aufzeichnungen haben {heading} {key} in anderer Form; --replace nimmt diese hier.</translation>
    </message>
    <message>
      <source>{path} is not there or is empty; there is nothing to back up.</source>
      <translation>{path} fehlt oder ist leer; es gibt nichts zu sichern.</translation>
    </message>
    <message>
      <source>{path} is there already; choose a new name for the backup.</source>
      <translation>{path} gibt es schon; wählen Sie einen neuen Namen für die Sicherung.</translation>
    </message>
    <message>
      <source>The copy {path} did not pass its check ({fault}); the records may be damaged.</source>
      <translation>Die Kopie {path} hat ihre Prüfung nicht bestanden ({fault}); vielleicht sind die Aufzeichnungen beschädigt.</translation>
    </message>
    <message>
      <source>calibration {key} of {sensor} cannot be one ({fault}); export it again, or leave it out.</source>
      <translation>der Abgleich {key} von {sensor} kann keiner sein ({fault}); geben Sie ihn noch einmal aus, oder lassen Sie ihn weg.</translation>
    </message>
    <message>
      <source>not all of it is a number</source>
      <translation>nicht alles darin ist eine Zahl</translation>
    </message>
    <message>
      <source>{first} to {last}</source>
      <translation>{first} bis {last}</translation>
    </message>
    <message>
      <source>{path} lacks {tables}: if it is a copy, its log {name}-wal was left behind, so copy both, or take a backup with `studiowatch backup`; otherwise it is damaged: keep it, and restore a backup beside it.</source>
      <translation>In {path} fehlt {tables}: Ist es eine Kopie, so blieb ihr Protokoll {name}-wal zurück; kopieren Sie beide, oder sichern Sie mit `studiowatch backup`; sonst ist die Datei beschädigt: Behalten Sie sie, und spielen Sie eine Sicherung daneben ein.</translation>
    </message>
    <message>
      <source>{path} is not there or is empty; there is nothing to read.</source>
      <translation>{path} fehlt oder ist leer; es gibt nichts zu lesen.</translation>
    </message>
    <message>
      <source>A watch began to write to {path} meanwhile; do it once more, that works beside a watch.</source>
      <translation>Inzwischen schreibt eine Wache in {path}; versuchen Sie es noch einmal, neben einer Wache geht es.</translation>
    </message>
    <message>
      <source>{path} lies on a disk that cannot keep a write-ahead log; choose a folder on a local disk.</source>
      <translation>{path} liegt auf einem Datenträger, der kein vorauseilendes Protokoll führen kann; wählen Sie einen Ordner auf einem eigenen Datenträger.</translation>
    </message>
    <message>
      <source>{path} is gone: its folder was removed or moved. Put it back, then start again.</source>
      <translation>{path} ist weg: Der Ordner wurde entfernt oder verschoben. Legen Sie ihn zurück, und starten Sie dann neu.</translation>
    </message>
    <message>
      <source>{path} is another file than before: it was replaced meanwhile. Start again.</source>
      <translation>{path} ist eine andere Datei als vorher: Sie wurde inzwischen ersetzt. Starten Sie neu.</translation>
    </message>
    <message>
      <source>{path} is not there or is empty; there are no readings to show yet.</source>
      <translation>{path} fehlt oder ist leer; es gibt noch keine Messwerte zu zeigen.</translation>
    </message>
    <message>
      <source>`studiowatch check --rebuild` makes it anew from them.</source>
      <translation>`studiowatch check --rebuild` macht sie daraus neu.</translation>
    </message>
    <message>
      <source>Keep it as it is; `studiowatch check --salvage NEWFILE` saves what can still be read into a new file.</source>
      <translation>Lassen Sie sie, wie sie ist; `studiowatch check --salvage NEWFILE` rettet, was sich noch lesen lässt, in eine neue Datei.</translation>
    </message>
    <message>
      <source>{path} is not there or is empty; there is nothing to check.</source>
      <translation>{path} fehlt oder ist leer; es gibt nichts zu prüfen.</translation>
    </message>
    <message>
      <source>{path} is damaged: {fault}.</source>
      <translation>{path} ist beschädigt: {fault}.</translation>
    </message>
    <message>
      <source>And {count} more.</source>
      <translation>Und {count} weitere.</translation>
    </message>
    <message>
      <source>a row of {table} belongs to a {parent} that is not there</source>
      <translation>eine Zeile von {table} gehört zu einer fehlenden Zeile von {parent}</translation>
    </message>
    <message>
      <source>{path}: the sealed readings of {span} are damaged in {damaged}.</source>
      <translation>{path}: Die versiegelten Messwerte von {span} sind in {damaged} beschädigt.</translation>
    </message>
    <message>
      <source>The records folder {path} cannot be written: {fault}. Give it back its rights or choose another.</source>
      <translation>In den Ordner der Aufzeichnungen {path} lässt sich nicht schreiben: {fault}. Geben Sie ihm seine Rechte zurück, oder wählen Sie einen anderen.</translation>
    </message>
    <message>
      <source>The records folder {path} cannot be made: {fault}. Choose another.</source>
      <translation>Der Ordner der Aufzeichnungen {path} lässt sich nicht anlegen: {fault}. Wählen Sie einen anderen.</translation>
    </message>
    <message>
      <source>{path} cannot be deleted: {fault}. Delete it by hand.</source>
      <translation>{path} lässt sich nicht löschen: {fault}. Löschen Sie es von Hand.</translation>
    </message>
    <message>
      <source>The records folder {path} cannot be used: {place} is a link to {target}, which is not there. Connect the disk it lies on, or choose another folder.</source>
      <translation>Der Ordner der Aufzeichnungen {path} lässt sich nicht verwenden: {place} ist eine Verknüpfung auf {target}, und das ist nicht da. Schließen Sie den Datenträger an, auf dem es liegt, oder wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
      <source>The records folder {path} cannot be used: {place} is no folder. Choose a folder, or a new name.</source>
      <translation>Der Ordner der Aufzeichnungen {path} lässt sich nicht verwenden: {place} ist kein Ordner. Wählen Sie einen Ordner oder einen neuen Namen.</translation>
    </message>
    <message>
      <source>Another studiowatch is watching this studio already ({path}). Use its window, or close it first.</source>
      <translation>Ein anderes studiowatch wacht schon über dieses Atelier ({path}). Nehmen Sie dessen Fenster, oder schließen Sie es zuerst.</translation>
    </message>
    <message>
      <source>{path} is not a database; choose another file, or restore a backup of this one.</source>
      <translation>{path} ist keine Datenbank; wählen Sie eine andere Datei, oder spielen Sie eine Sicherung von dieser ein.</translation>
    </message>
    <message>
      <source>{path} belongs to another program, or is a copy whose log {name}-wal was left behind; choose another file, or copy both.</source>
      <translation>{path} gehört zu einem anderen Programm oder ist eine Kopie, deren Protokoll {name}-wal zurückblieb; wählen Sie eine andere Datei, oder kopieren Sie beide.</translation>
    </message>
    <message>
      <source>{path} belongs to another program (its mark is {mark}, ours is {ours}); choose another file.</source>
      <translation>{path} gehört zu einem anderen Programm (sein Zeichen ist {mark}, unseres {ours}); wählen Sie eine andere Datei.</translation>
    </message>
    <message>
      <source>{path} has version {version}, made by a newer studiowatch; this one reads up to version {newest}: update it, or choose another file.</source>
      <translation>{path} hat Version {version} von einem neueren studiowatch; dieses liest bis Version {newest}: Erneuern Sie es, oder wählen Sie eine andere Datei.</translation>
    </message>
    <message>
      <source>The folder {folder} is not there; make it, or choose another place for {name}.</source>
      <translation>Den Ordner {folder} gibt es nicht; legen Sie ihn an, oder wählen Sie einen anderen Ort für {name}.</translation>
    </message>
    <message>
      <source>{path} may only be read, not written; allow writing to it, or choose another file.</source>
      <translation>{path} darf nur gelesen, nicht geschrieben werden; erlauben Sie das Schreiben, oder wählen Sie eine andere Datei.</translation>
    </message>
    <message>
      <source>The folder {folder} may only be read, and the log of {name} must be written there; allow writing to it, or choose another folder.</source>
      <translation>Der Ordner {folder} darf nur gelesen werden, aber das Protokoll von {name} muss dort geschrieben werden; erlauben Sie das Schreiben, oder wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
      <source>{path} cannot be read ({fault}); choose a file that may be read.</source>
      <translation>{path} lässt sich nicht lesen ({fault}); wählen Sie eine Datei, die gelesen werden darf.</translation>
    </message>
    <message>
      <source>intention {key}: {fault}</source>
      <translation>Vorhaben {key}: {fault}</translation>
    </message>
    <message>
      <source>a text in quotes that no other has</source>
      <translation>ein Text in Anführungszeichen, den kein anderer hat</translation>
    </message>
    <message>
      <source>from and until, "18:00-23:00"</source>
      <translation>von und bis, "18:00-23:00"</translation>
    </message>
    <message>
      <source>a number: {low_C} to {high_C} °C of a heater, {low_pct} to {high_pct} % of a dehumidifier, {low_m_s} to {high_m_s} m/s of a fan, where 0 is off</source>
      <translation>eine Zahl: {low_C} bis {high_C} °C bei einem Heizgerät, {low_pct} bis {high_pct} % bei einem Entfeuchter, {low_m_s} bis {high_m_s} m/s bei einem Ventilator, wobei 0 aus heißt</translation>
    </message>
    <message>
      <source>a day in quotes, "2026-03-20"</source>
      <translation>ein Tag in Anführungszeichen, "2026-03-20"</translation>
    </message>
    <message>
      <source>a whole number, 1 to {most}, or 0 for every day</source>
      <translation>eine ganze Zahl von 1 bis {most}, oder 0 für jeden Tag</translation>
    </message>
    <message>
      <source>{path} cannot be written: {fault}. Reviews take longer without it.</source>
      <translation>{path} lässt sich nicht schreiben: {fault}. Rückblicke dauern ohne sie länger.</translation>
    </message>
    <message>
      <source>{path} could not be brought to version {number} ({fault}); it was left as it was, at version {version}: go on with the earlier studiowatch and report this.</source>
      <translation>{path} ließ sich nicht auf Version {number} bringen ({fault}); die Datei blieb, wie sie war, bei Version {version}: Arbeiten Sie mit dem früheren studiowatch weiter, und melden Sie das.</translation>
    </message>
    <message>
      <source>a text of 1 to {most} characters that can be shown</source>
      <translation>ein Text von 1 bis {most} Zeichen, die sich zeigen lassen</translation>
    </message>
    <message>
      <source>a list of 1 to {most} names of data sheets in quotes, lowest first</source>
      <translation>eine Liste von 1 bis {most} Namen von Datenblättern in Anführungszeichen, die unterste zuerst</translation>
    </message>
    <message>
      <source>"09:00-18:00", or "off"</source>
      <translation>"09:00-18:00" oder "off"</translation>
    </message>
    <message>
      <source>preparation {key} cannot be one ({fault}); export it again, or leave it out.</source>
      <translation>die Vorbereitung {key} kann keine sein ({fault}); geben Sie sie noch einmal aus, oder lassen Sie sie weg.</translation>
    </message>
    <message>
      <source>not all of it is what it should be</source>
      <translation>nicht alles darin ist, was es sein soll</translation>
    </message>
    <message>
      <source>The overview of {channel} does not sum up its readings between {first} and {last}.</source>
      <translation>Die Übersicht von {channel} fasst ihre Messwerte zwischen {first} und {last} nicht richtig zusammen.</translation>
    </message>
    <message>
      <source>No backup could be made in {folder}: {fault}. Choose another folder with --to.</source>
      <translation>In {folder} ließ sich keine Sicherung anlegen: {fault}. Wählen Sie mit --to einen anderen Ordner.</translation>
    </message>
    <message>
      <source>There are no records in {path}; there is nothing to back up.</source>
      <translation>In {path} gibt es keine Aufzeichnungen; es gibt nichts zu sichern.</translation>
    </message>
    <message>
      <source>{path} is there already; try again in a second.</source>
      <translation>{path} gibt es schon; versuchen Sie es in einer Sekunde noch einmal.</translation>
    </message>
    <message>
      <source>No backup was made: the disk of {folder} has {free} MB free, and {needed} MB are wanted; make room on it.</source>
      <translation>Es wurde nicht gesichert: Der Datenträger von {folder} hat {free} MB frei, gebraucht werden {needed} MB; schaffen Sie darauf Platz.</translation>
    </message>
    <message>
      <source>The old backup {path} cannot be deleted: {fault}.</source>
      <translation>Die alte Sicherung {path} lässt sich nicht löschen: {fault}.</translation>
    </message>
    <message>
      <source>{table}: rows {first} to {last} cannot be read.</source>
      <translation>{table}: Die Zeilen {first} bis {last} lassen sich nicht lesen.</translation>
    </message>
    <message>
      <source>{table}: rows {first} to {last} cannot be read after {after}.</source>
      <translation>{table}: Die Zeilen {first} bis {last}, nach {after}, lassen sich nicht lesen.</translation>
    </message>
    <message>
      <source>{table}: rows {first} to {last} cannot be read before {before}.</source>
      <translation>{table}: Die Zeilen {first} bis {last}, vor {before}, lassen sich nicht lesen.</translation>
    </message>
    <message>
      <source>{table}: rows {first} to {last} cannot be read after {after} before {before}.</source>
      <translation>{table}: Die Zeilen {first} bis {last}, nach {after} und vor {before}, lassen sich nicht lesen.</translation>
    </message>
    <message>
      <source>{table}: all rows from {first} on cannot be read.</source>
      <translation>{table}: Alle Zeilen ab {first} lassen sich nicht lesen.</translation>
    </message>
    <message>
      <source>{table}: all rows from {first} on cannot be read after {after}.</source>
      <translation>{table}: Alle Zeilen ab {first}, nach {after}, lassen sich nicht lesen.</translation>
    </message>
    <message>
      <source>{table}: all rows from {first} on cannot be read before {before}.</source>
      <translation>{table}: Alle Zeilen ab {first}, vor {before}, lassen sich nicht lesen.</translation>
    </message>
    <message>
      <source>{table}: all rows from {first} on cannot be read after {after} before {before}.</source>
      <translation>{table}: Alle Zeilen ab {first}, nach {after} und vor {before}, lassen sich nicht lesen.</translation>
    </message>
    <message>
      <source>{path} is not there or is empty; there is nothing to save.</source>
      <translation>{path} fehlt oder ist leer; es gibt nichts zu retten.</translation>
    </message>
    <message>
      <source>{path} is there already; choose a new name for what is saved.</source>
      <translation>{path} gibt es schon; wählen Sie einen neuen Namen für das Gerettete.</translation>
    </message>
    <message>
      <source>{path} has lost the list of its tables ({error}); nothing in it can be found: restore a backup.</source>
      <translation>{path} hat das Verzeichnis seiner Tabellen verloren ({error}); darin ist nichts mehr zu finden: Spielen Sie eine Sicherung ein.</translation>
    </message>
    <message>
      <source>{table}: rows saved: {rows}.</source>
      <translation>{table}: gerettete Zeilen: {rows}.</translation>
    </message>
    <message>
      <source>What was saved did not pass its check ({fault}); nothing was kept of it.</source>
      <translation>Das Gerettete hat seine Prüfung nicht bestanden ({fault}); davon wurde nichts behalten.</translation>
    </message>
    <message>
      <source>piece: pieces that lost title and size, archived so that their coats are kept: {made}.</source>
      <translation>piece: Bilder, die Titel und Maße verloren haben, archiviert, damit ihre Schichten erhalten bleiben: {made}.</translation>
    </message>
    <message>
      <source>{table}: rows that are damaged and were left out: {refused}.</source>
      <translation>{table}: beschädigte Zeilen, die weggelassen wurden: {refused}.</translation>
    </message>
    <message>
      <source>{table}: rows left out, since the {owner} that they belong to is lost: {gone}.</source>
      <translation>{table}: weggelassene Zeilen, weil {owner}, wozu sie gehören, verloren ist: {gone}.</translation>
    </message>
    <message>
      <source>The head of the sealed readings of {first} to {last} was lost, and made again.</source>
      <translation>Der Kopf der versiegelten Messwerte von {first} bis {last} war verloren und wurde neu gemacht.</translation>
    </message>
    <message>
      <source>Sealed readings of {span}: all {count} are lost.</source>
      <translation>Versiegelte Messwerte von {span}: Alle {count} sind verloren.</translation>
    </message>
    <message>
      <source>Sealed readings of {span}: {columns} of all {count} is lost.</source>
      <translation>Versiegelte Messwerte von {span}: Bei allen {count} ist {columns} verloren.</translation>
    </message>
    <message>
      <source>{field} is {value}; allowed: {allowed}.</source>
      <translation>{field} ist {value}; erlaubt: {allowed}.</translation>
    </message>
    <message>
      <source>{origin}, line {line}</source>
      <translation>{origin}, Zeile {line}</translation>
    </message>
    <message>
      <source>a text in quotes that is not empty</source>
      <translation>ein nicht leerer Text in Anführungszeichen</translation>
    </message>
    <message>
      <source>a text in quotes of 1 to {most} characters that can be shown</source>
      <translation>ein Text in Anführungszeichen von 1 bis {most} Zeichen, die sich zeigen lassen</translation>
    </message>
    <message>
      <source>a text in quotes</source>
      <translation>ein Text in Anführungszeichen</translation>
    </message>
    <message>
      <source>the key of a coat</source>
      <translation>der Schlüssel einer Schicht</translation>
    </message>
    <message>
      <source>a date and time with its zone, 1970 to {year}, like 2026-03-02T09:00:00Z</source>
      <translation>Datum und Uhrzeit mit Zone, 1970 bis {year}, wie 2026-03-02T09:00:00Z</translation>
    </message>
    <message>
      <source>a sensor's serial number in quotes</source>
      <translation>die Seriennummer eines Sensors in Anführungszeichen</translation>
    </message>
    <message>
      <source>a number above 0, up to {most} ({unit})</source>
      <translation>eine Zahl über 0, bis {most} ({unit})</translation>
    </message>
    <message>
      <source>a day of the years {first} to {last}, like 2026-03-20</source>
      <translation>ein Tag der Jahre {first} bis {last}, wie 2026-03-20</translation>
    </message>
    <message>
      <source>a whole number, 0 to {most}</source>
      <translation>eine ganze Zahl, 0 bis {most}</translation>
    </message>
    <message>
      <source>true or false</source>
      <translation>true oder false</translation>
    </message>
    <message>
      <source>a whole number, 1 to {most}</source>
      <translation>eine ganze Zahl, 1 bis {most}</translation>
    </message>
    <message>
      <source>the name of a file, without a folder</source>
      <translation>der Name einer Datei, ohne Ordner</translation>
    </message>
    <message>
      <source>0 to 100 (% of the volume, water added)</source>
      <translation>0 bis 100 (% des Volumens, zugesetztes Wasser)</translation>
    </message>
    <message>
      <source>the key of a prompt</source>
      <translation>der Schlüssel eines Hinweises</translation>
    </message>
    <message>
      <source>what was prepared, as exported</source>
      <translation>was vorbereitet wurde, wie ausgegeben</translation>
    </message>
    <message>
      <source>a whole number from 0</source>
      <translation>eine ganze Zahl ab 0</translation>
    </message>
    <message>
      <source>a list of {{name = number}} tables</source>
      <translation>eine Liste von Tabellen {{Name = Zahl}}</translation>
    </message>
    <message>
      <source>a list of texts in quotes</source>
      <translation>eine Liste von Texten in Anführungszeichen</translation>
    </message>
    <message>
      <source>the key of a warning</source>
      <translation>der Schlüssel einer Warnung</translation>
    </message>
    <message>
      <source>what was measured, as exported</source>
      <translation>was gemessen wurde, wie ausgegeben</translation>
    </message>
    <message>
      <source>the key of a piece</source>
      <translation>der Schlüssel eines Bildes</translation>
    </message>
    <message>
      <source>coats from the lowest to the topmost, planned ones last; coat {number}, below it, is laid {laid}</source>
      <translation>Schichten von der untersten zur obersten, geplante zuletzt; Schicht {number} darunter ist {laid} aufgetragen</translation>
    </message>
    <message>
      <source>{where}, coat {number}</source>
      <translation>{where}, Schicht {number}</translation>
    </message>
    <message>
      <source>coats from the lowest to the topmost, planned ones last; coat {number}, below it, is only planned</source>
      <translation>Schichten von der untersten zur obersten, geplante zuletzt; Schicht {number} darunter ist nur geplant</translation>
    </message>
    <message>
      <source>piece {number}</source>
      <translation>Bild {number}</translation>
    </message>
    <message>
      <source>tables under [[{heading}]] headings</source>
      <translation>Tabellen unter Überschriften [[{heading}]]</translation>
    </message>
    <message>
      <source>a number too long to show</source>
      <translation>eine Zahl, zu lang zum Zeigen</translation>
    </message>
    <message>
      <source>not a field here</source>
      <translation>hier kein Feld</translation>
    </message>
    <message>
      <source>a key that no other {heading} in the file has</source>
      <translation>ein Schlüssel, den kein anderes {heading} der Datei hat</translation>
    </message>
    <message>
      <source>given beside {other}</source>
      <translation>neben {other} angegeben</translation>
    </message>
    <message>
      <source>only one of {fields}</source>
      <translation>nur eines von {fields}</translation>
    </message>
    <message>
      <source>{where}, look {number}</source>
      <translation>{where}, Prüfung {number}</translation>
    </message>
    <message>
      <source>a key that no other {kind} in the file has</source>
      <translation>ein Schlüssel, den kein anderes {kind} der Datei hat</translation>
    </message>
    <message>
      <source>the file</source>
      <translation>die Datei</translation>
    </message>
    <message>
      <source>not TOML ({error})</source>
      <translation>kein TOML ({error})</translation>
    </message>
    <message>
      <source>[[piece]] and [[piece.coat]] tables of name = value</source>
      <translation>Tabellen [[piece]] und [[piece.coat]] aus name = value</translation>
    </message>
    <message>
      <source>not before it was laid, {laid}</source>
      <translation>nicht vor dem Auftragen, {laid}</translation>
    </message>
    <message>
      <source>missing</source>
      <translation>nicht angegeben</translation>
    </message>
    <message>
      <source>imported: its end is not after its start; correct one of them.</source>
      <translation>imported: Das Ende liegt nicht nach dem Anfang; berichtigen Sie eines von beiden.</translation>
    </message>
    <message>
      <source>{path} is in use by another program; close that program and try again.</source>
      <translation>{path} wird von einem anderen Programm benutzt; schließen Sie jenes Programm, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
      <source>{path} may only be read, not written; allow writing to it and to its folder.</source>
      <translation>{path} darf nur gelesen, nicht geschrieben werden; erlauben Sie das Schreiben in die Datei und ihren Ordner.</translation>
    </message>
    <message>
      <source>{path} may not be opened; allow reading and writing to it and to its folder.</source>
      <translation>{path} darf nicht geöffnet werden; erlauben Sie Lesen und Schreiben für die Datei und ihren Ordner.</translation>
    </message>
    <message>
      <source>{path} cannot be opened; check that its folder is there and may be written to.</source>
      <translation>{path} lässt sich nicht öffnen; prüfen Sie, ob der Ordner da ist und geschrieben werden darf.</translation>
    </message>
    <message>
      <source>{path} is damaged ({reason}); keep it as it is and restore a backup beside it.</source>
      <translation>{path} ist beschädigt ({reason}); lassen Sie die Datei, wie sie ist, und spielen Sie eine Sicherung daneben ein.</translation>
    </message>
    <message>
      <source>{path} could not be read or written ({reason}); check the disk, nothing was half written.</source>
      <translation>{path} ließ sich nicht lesen oder schreiben ({reason}); prüfen Sie den Datenträger, nichts wurde halb geschrieben.</translation>
    </message>
    <message>
      <source>The disk of {path} is full; make room on it, nothing was half written.</source>
      <translation>Der Datenträger von {path} ist voll; schaffen Sie darauf Platz, nichts wurde halb geschrieben.</translation>
    </message>
    <message>
      <source>{path} is damaged in its sealed readings ({fault}); `studiowatch check` tells which hours.</source>
      <translation>{path} ist in den versiegelten Messwerten beschädigt ({fault}); `studiowatch check` sagt, in welchen Stunden.</translation>
    </message>
  </context>
</TS>
