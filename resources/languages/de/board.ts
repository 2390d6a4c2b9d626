<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>Stand back from the sensor for 15 seconds.</source>
      <translation>Treten Sie 15 Sekunden vom Sensor zurück.</translation>
    </message>
    <message>
      <source>Breathe slowly on the sensor from a hand's breadth away until the time is up.</source>
      <translation>Hauchen Sie den Sensor aus einer Handbreit Abstand langsam an, bis die Zeit um ist.</translation>
    </message>
    <message>
      <source>Keep the air at the sensor still for 15 seconds.</source>
      <translation>Halten Sie die Luft am Sensor 15 Sekunden lang still.</translation>
    </message>
    <message>
      <source>Turn a fan on the sensor, away from any wet coat, and leave it on until the time is up.</source>
      <translation>Richten Sie einen Ventilator auf den Sensor, fern von jeder nassen Schicht, und lassen Sie ihn laufen, bis die Zeit um ist.</translation>
    </message>
    <message>
      <source>Wait a minute, then breathe on the sensor from nearer.</source>
      <translation>Warten Sie eine Minute, dann hauchen Sie den Sensor aus größerer Nähe an.</translation>
    </message>
    <message>
      <source>Let the air settle, then hold the fan nearer to the air sensor.</source>
      <translation>Lassen Sie die Luft zur Ruhe kommen, dann halten Sie den Ventilator näher an den Luftsensor.</translation>
    </message>
    <message>
      <source>Too few lines came to judge by: see that the board sends a line every few seconds.</source>
      <translation>Es kamen zu wenige Zeilen für ein Urteil: Sorgen Sie dafür, dass die Messplatine alle paar Sekunden eine sendet.</translation>
    </message>
    <message>
      <source>Columns {first} and {second} both rose as humidity does: say which it is.</source>
      <translation>Die Spalten {first} und {second} stiegen beide, wie Luftfeuchte steigt: sagen Sie, welche es ist.</translation>
    </message>
    <message>
      <source>The air may be too damp for this test: say which column is which.</source>
      <translation>Die Luft ist vielleicht zu feucht für diese Probe: sagen Sie, welche Spalte welche ist.</translation>
    </message>
    <message>
      <source>When you breathed on it, {humid} jumped; which is the temperature is not clear.</source>
      <translation>Als Sie hauchten, sprang {humid}; welche die Temperatur ist, ist nicht klar.</translation>
    </message>
    <message>
      <source>When the fan blew on it, {column} moved by far the most.</source>
      <translation>Als der Ventilator blies, bewegte sich {column} bei Weitem am meisten.</translation>
    </message>
    <message>
      <source>When you breathed on it, {humid} jumped and {warm} rose a little.</source>
      <translation>Als Sie hauchten, sprang {humid}, und {warm} stieg ein wenig.</translation>
    </message>
    <message>
      <source>No column rose.</source>
      <translation>Keine Spalte stieg.</translation>
    </message>
    <message>
      <source>No column rose as far as humidity does.</source>
      <translation>Keine Spalte stieg so weit, wie Luftfeuchte steigt.</translation>
    </message>
    <message>
      <source>No column moved clearly.</source>
      <translation>Keine Spalte bewegte sich deutlich.</translation>
    </message>
    <message>
      <source>Columns {first} and {second} moved alike.</source>
      <translation>Die Spalten {first} und {second} bewegten sich gleich.</translation>
    </message>
    <message>
      <source>Say in which unit.</source>
      <translation>Sagen Sie, in welcher Einheit.</translation>
    </message>
    <message>
      <source>{count} columns may be the air temperature: say which one is measured at the rack.</source>
      <translation>{count} Spalten können die Lufttemperatur sein: sagen Sie, welche am Gestell gemessen wird.</translation>
    </message>
    <message>
      <source>{count} columns may be the relative humidity: say which one is measured at the rack.</source>
      <translation>{count} Spalten können die relative Luftfeuchte sein: sagen Sie, welche am Gestell gemessen wird.</translation>
    </message>
    <message>
      <source>{count} columns may be the moving air: say which one is measured at the rack.</source>
      <translation>{count} Spalten können die Luftbewegung sein: sagen Sie, welche am Gestell gemessen wird.</translation>
    </message>
    <message>
      <source>{count} columns may be the surface temperature: say which one is measured at the rack.</source>
      <translation>{count} Spalten können die Oberflächentemperatur sein: sagen Sie, welche am Gestell gemessen wird.</translation>
    </message>
    <message>
      <source>{count} columns may be the air pressure: say which one is measured at the rack.</source>
      <translation>{count} Spalten können der Luftdruck sein: sagen Sie, welche am Gestell gemessen wird.</translation>
    </message>
    <message>
      <source>In {unit} no room is like this: say what the unit is.</source>
      <translation>In {unit} ist kein Raum so: sagen Sie, welche Einheit es ist.</translation>
    </message>
    <message>
      <source>It has no name: breathe on the sensor, then turn a fan on it, to find out.</source>
      <translation>Sie hat keinen Namen: Hauchen Sie den Sensor an, dann richten Sie einen Ventilator darauf, um es herauszufinden.</translation>
    </message>
    <message>
      <source>It is the same temperature in another unit as {column}, and this one is in °C.</source>
      <translation>Es ist dieselbe Temperatur in anderer Einheit wie {column}, und diese ist in °C.</translation>
    </message>
    <message>
      <source>It says {label}, and only in {unit} are its values possible.</source>
      <translation>Dort steht {label}, und nur in {unit} sind die Werte möglich.</translation>
    </message>
    <message>
      <source>It rises with every line: a clock or a counter.</source>
      <translation>Sie steigt mit jeder Zeile: eine Uhr oder ein Zähler.</translation>
    </message>
    <message>
      <source>{label} and its unit or values do not fit together: say what it is.</source>
      <translation>{label} und die Einheit oder die Werte passen nicht zusammen: sagen Sie, was es ist.</translation>
    </message>
    <message>
      <source>The comma may part decimals or thousands: say which value is right.</source>
      <translation>Das Komma trennt vielleicht Dezimalen, vielleicht Tausender: sagen Sie, welcher Wert stimmt.</translation>
    </message>
    <message>
      <source>{label} may be any voltage: say whether it is the air sensor's.</source>
      <translation>{label} kann irgendeine Spannung sein: sagen Sie, ob es die des Luftsensors ist.</translation>
    </message>
    <message>
      <source>{label} names several things: say which it is.</source>
      <translation>{label} nennt mehrere Dinge: sagen Sie, welches es ist.</translation>
    </message>
    <message>
      <source>{label} is not fully understood: say whether it is measured at the rack, and what it is.</source>
      <translation>{label} ist nicht ganz verstanden: sagen Sie, ob es am Gestell gemessen wird, und was es ist.</translation>
    </message>
    <message>
      <source>{label} is only an initial, without a unit: say what it is.</source>
      <translation>{label} ist nur ein Anfangsbuchstabe ohne Einheit: sagen Sie, was es ist.</translation>
    </message>
    <message>
      <source>{label} has no unit, and {first} is as possible as {second}: say which.</source>
      <translation>{label} hat keine Einheit, und {first} ist so gut möglich wie {second}: sagen Sie, welche.</translation>
    </message>
    <message>
      <source>{label} has no unit, and its values are unusual: say what it is.</source>
      <translation>{label} hat keine Einheit, und die Werte sind ungewöhnlich: sagen Sie, was es ist.</translation>
    </message>
    <message>
      <source>It says {label} and {unit}.</source>
      <translation>Dort steht {label} und {unit}.</translation>
    </message>
    <message>
      <source>It says {unit}.</source>
      <translation>Dort steht {unit}.</translation>
    </message>
    <message>
      <source>No sensor that is used here could mean these values.</source>
      <translation>Kein hier verwendeter Sensor könnte diese Werte meinen.</translation>
    </message>
    <message>
      <source>{label} is not used here.</source>
      <translation>{label} wird hier nicht verwendet.</translation>
    </message>
    <message>
      <source>Its unit is not used here.</source>
      <translation>Die Einheit wird hier nicht verwendet.</translation>
    </message>
    <message>
      <source>No value has come yet.</source>
      <translation>Es ist noch kein Wert gekommen.</translation>
    </message>
    <message>
      <source>It is the same temperature as {column}.</source>
      <translation>Es ist dieselbe Temperatur wie {column}.</translation>
    </message>
    <message>
      <source>{column} may be of several sensors in turn: say whether it is of one only.</source>
      <translation>{column} stammt vielleicht abwechselnd von mehreren Sensoren: sagen Sie, ob es nur einer ist.</translation>
    </message>
    <message>
      <source>{label} has no unit, and may be in % or in g/m³: say which.</source>
      <translation>{label} hat keine Einheit und kann in % oder in g/m³ sein: sagen Sie, worin.</translation>
    </message>
    <message>
      <source>The line has {found} columns; this board sends {usual}.</source>
      <translation>Die Zeile hat {found} Spalten; diese Platine sendet {usual}.</translation>
    </message>
    <message>
      <source>The line is longer than {most} bytes.</source>
      <translation>Die Zeile ist länger als {most} Bytes.</translation>
    </message>
    <message>
      <source>a table with a header</source>
      <translation>eine Tabelle mit Kopf</translation>
    </message>
    <message>
      <source>labelled numbers</source>
      <translation>benannte Zahlen</translation>
    </message>
    <message>
      <source>bare columns</source>
      <translation>bloße Spalten</translation>
    </message>
    <message>
      <source>Most bytes are no text: the baud rate is wrong, or the line was damaged.</source>
      <translation>Die meisten Bytes sind kein Text: die Baudrate ist falsch, oder die Zeile wurde beschädigt.</translation>
    </message>
    <message>
      <source>fraction</source>
      <translation>Anteil</translation>
    </message>
    <message>
      <source>10-bit count at 5 V</source>
      <translation>10-Bit-Zählwert bei 5 V</translation>
    </message>
    <message>
      <source>12-bit count at 3.3 V</source>
      <translation>12-Bit-Zählwert bei 3,3 V</translation>
    </message>
    <message>
      <source>unchecked lines</source>
      <translation>ungeprüfte Zeilen</translation>
    </message>
    <message>
      <source>The unit {unit} cannot be of {channel}; allowed: {units}.</source>
      <translation>Die Einheit {unit} passt nicht zu {channel}; erlaubt: {units}.</translation>
    </message>
    <message>
      <source>There is no column {column}; there are: {columns}.</source>
      <translation>Es gibt keine Spalte {column}; es gibt: {columns}.</translation>
    </message>
    <message>
      <source>Column {column} already is {channel}: set that one to “not used” first.</source>
      <translation>Spalte {column} ist schon {channel}: Setzen Sie zuerst diese auf „nicht verwendet“.</translation>
    </message>
    <message>
      <source>You set it.</source>
      <translation>Sie haben es so gesetzt.</translation>
    </message>
    <message>
      <source>You set it to “not used”.</source>
      <translation>Sie haben es auf „nicht verwendet“ gesetzt.</translation>
    </message>
    <message>
      <source>There is no port {port} any more: plug the board in, or choose another port.</source>
      <translation>Den Anschluss {port} gibt es nicht mehr: Stecken Sie die Messplatine an, oder wählen Sie einen anderen Anschluss.</translation>
    </message>
    <message>
      <source>You may not open the port {port}: allow it until the board is unplugged (sudo chmod a+rw {port}).</source>
      <translation>Sie dürfen den Anschluss {port} nicht öffnen: Erlauben Sie es, bis die Messplatine abgezogen wird (sudo chmod a+rw {port}).</translation>
    </message>
    <message>
      <source>The port {port} cannot be opened as a serial port: choose another port.</source>
      <translation>Der Anschluss {port} lässt sich nicht als serieller Anschluss öffnen: Wählen Sie einen anderen.</translation>
    </message>
    <message>
      <source>You may not open the port {port}: join its group {group} (sudo usermod -aG {group} $USER), then log out and in again.</source>
      <translation>Sie dürfen den Anschluss {port} nicht öffnen: Treten Sie seiner Gruppe {group} bei (sudo usermod -aG {group} $USER), dann melden Sie sich ab und wieder an.</translation>
    </message>
    <message>
      <source>There is no port {port}: plug the board in, or choose another port.</source>
      <translation>Es gibt keinen Anschluss {port}: Stecken Sie die Messplatine an, oder wählen Sie einen anderen Anschluss.</translation>
    </message>
    <message>
      <source>The port {port} is in use by another program: close that program.</source>
      <translation>Den Anschluss {port} verwendet ein anderes Programm: schließen Sie es.</translation>
    </message>
    <message>
      <source>You may not open the port {port}: ask whoever looks after this computer for permission.</source>
      <translation>Sie dürfen den Anschluss {port} nicht öffnen: Bitten Sie um Erlaubnis, wer diesen Rechner betreut.</translation>
    </message>
    <message>
      <source>The board on {port} vanished: push its USB plug home.</source>
      <translation>Die Messplatine an {port} ist verschwunden: Drücken Sie ihren USB-Stecker fest hinein.</translation>
    </message>
    <message>
      <source>No board was found: push its USB plug home.</source>
      <translation>Keine Messplatine gefunden: Drücken Sie ihren USB-Stecker fest hinein.</translation>
    </message>
    <message>
      <source>{port} was left: you chose another port.</source>
      <translation>{port} wurde verlassen: Sie haben einen anderen Anschluss gewählt.</translation>
    </message>
    <message>
      <source>{port} sends nothing that can be read.</source>
      <translation>{port} sendet nichts Lesbares.</translation>
    </message>
    <message>
      <source>The board's reader failed and starts again ({fault}).</source>
      <translation>Das Lesen der Messplatine ist gescheitert und beginnt von vorn ({fault}).</translation>
    </message>
    <message>
      <source>No board answers.</source>
      <translation>Keine Messplatine antwortet.</translation>
    </message>
    <message>
      <source>{origin}, line {line}: {clause}</source>
      <translation>{origin}, Zeile {line}: {clause}</translation>
    </message>
    <message>
      <source>{origin} is packed with gzip, which is no room log; unpack it first.</source>
      <translation>{origin} ist mit gzip gepackt und so kein Raumprotokoll; packen Sie es zuerst aus.</translation>
    </message>
    <message>
      <source>{origin} is a ZIP archive or a spreadsheet, which is no room log; save the sheet as CSV in UTF-8.</source>
      <translation>{origin} ist ein ZIP-Archiv oder eine Rechentabelle und so kein Raumprotokoll; speichern Sie das Blatt als CSV in UTF-8.</translation>
    </message>
    <message>
      <source>{origin} is text in UTF-16, which is no room log; save it as UTF-8.</source>
      <translation>{origin} ist Text in UTF-16 und so kein Raumprotokoll; speichern Sie es als UTF-8.</translation>
    </message>
    <message>
      <source>{origin} is text in UTF-32, which is no room log; save it as UTF-8.</source>
      <translation>{origin} ist Text in UTF-32 und so kein Raumprotokoll; speichern Sie es als UTF-8.</translation>
    </message>
    <message>
      <source>{origin} begins with zero bytes, so it is no text in UTF-8; save it as UTF-8.</source>
      <translation>{origin} beginnt mit Nullbytes, ist also kein Text in UTF-8; speichern Sie es als UTF-8.</translation>
    </message>
    <message>
      <source>… and {count} more faults.</source>
      <translation>… und {count} weitere Fehler.</translation>
    </message>
    <message>
      <source>… and {count} more notes.</source>
      <translation>… und {count} weitere Bemerkungen.</translation>
    </message>
    <message>
      <source>… and {more} more with the same fault ({kind}), {count} in all.</source>
      <translation>… und {more} weitere mit demselben Fehler ({kind}), zusammen {count}.</translation>
    </message>
    <message>
      <source>no CSV</source>
      <translation>kein CSV</translation>
    </message>
    <message>
      <source>wrong number of cells</source>
      <translation>falsche Zahl von Feldern</translation>
    </message>
    <message>
      <source>time that cannot be read</source>
      <translation>unlesbare Zeit</translation>
    </message>
    <message>
      <source>local time that is missing or comes twice that night</source>
      <translation>Ortszeit, die in dieser Nacht fehlt oder zweimal kommt</translation>
    </message>
    <message>
      <source>time before that of an earlier row</source>
      <translation>Zeit vor der einer früheren Zeile</translation>
    </message>
    <message>
      <source>time ahead of the clock</source>
      <translation>Zeit, die der Uhr voraus ist</translation>
    </message>
    <message>
      <source>another reading at the same time</source>
      <translation>anderer Messwert zur selben Zeit</translation>
    </message>
    <message>
      <source>no number</source>
      <translation>keine Zahl</translation>
    </message>
    <message>
      <source>another unit</source>
      <translation>andere Einheit</translation>
    </message>
    <message>
      <source>out of range</source>
      <translation>außerhalb des Bereichs</translation>
    </message>
    <message>
      <source>cover that is neither 0 nor 1</source>
      <translation>Abdeckung, die weder 0 noch 1 ist</translation>
    </message>
    <message>
      <source>{low} to {high} {unit}</source>
      <translation>{low} bis {high} {unit}</translation>
    </message>
    <message numerus="yes">
      <source>{columns} and {n} more</source>
      <translation>
        <numerusform>{columns} und 1 weitere</numerusform>
        <numerusform>{columns} und {n} weitere</numerusform>
      </translation>
    </message>
    <message>
      <source>cover "{text}" must be 1 (covered), 0 (not covered) or empty.</source>
      <translation>cover "{text}" muss 1 (abgedeckt), 0 (nicht abgedeckt) oder leer sein.</translation>
    </message>
    <message>
      <source>{column} "{text}" is no number; write digits with a decimal point, or leave the cell empty.</source>
      <translation>{column} "{text}" ist keine Zahl; schreiben Sie Ziffern mit Dezimalpunkt, oder lassen Sie die Zelle leer.</translation>
    </message>
    <message>
      <source>a fraction of 1</source>
      <translation>ein Anteil von 1</translation>
    </message>
    <message>
      <source>ft/min, cm/s or mV</source>
      <translation>ft/min, cm/s oder mV</translation>
    </message>
    <message>
      <source>{column} {text} is outside {range}; correct it, or leave the cell empty if it was not measured.</source>
      <translation>{column} {text} liegt außerhalb von {range}; berichtigen Sie es, oder lassen Sie die Zelle leer, wenn nicht gemessen wurde.</translation>
    </message>
    <message>
      <source>{column} {text} is {value}, which is outside {range}; correct it, or leave the cell empty if it was not measured.</source>
      <translation>{column} {text} ist {value} und liegt außerhalb von {range}; berichtigen Sie es, oder lassen Sie die Zelle leer, wenn nicht gemessen wurde.</translation>
    </message>
    <message>
      <source>{column} "{text}" has a decimal comma; write a point, or put semicolons between the cells.</source>
      <translation>{column} "{text}" hat ein Dezimalkomma; schreiben Sie einen Punkt, oder setzen Sie Semikolons zwischen die Zellen.</translation>
    </message>
    <message>
      <source>{column} {text} looks like {other}; write it in {unit} ({range}), or leave the cell empty if it is a fault of the sensor.</source>
      <translation>{column} {text} sieht nach {other} aus; schreiben Sie es in {unit} ({range}), oder lassen Sie die Zelle leer, wenn es ein Fehler des Sensors ist.</translation>
    </message>
    <message>
      <source>line {line}: no reading for {minutes} min before this row.</source>
      <translation>Zeile {line}: davor {minutes} min lang kein Messwert.</translation>
    </message>
    <message>
      <source>there is no column "{column}" to map; the columns are {columns}.</source>
      <translation>es gibt keine Spalte "{column}" zum Zuordnen; die Spalten sind {columns}.</translation>
    </message>
    <message>
      <source>"{column}" is no name to map to; there are {columns}.</source>
      <translation>"{column}" ist kein Name, dem zugeordnet werden kann; es gibt {columns}.</translation>
    </message>
    <message>
      <source>there must be one column of time: time (ISO 8601 with zone) or time_unix (s).</source>
      <translation>es muss eine Spalte mit Zeiten geben: time (ISO 8601 mit Zeitzone) oder time_unix (s).</translation>
    </message>
    <message>
      <source>the column "{column}" is there {count} times; leave one.</source>
      <translation>die Spalte "{column}" ist {count}-mal da; lassen Sie eine stehen.</translation>
    </message>
    <message>
      <source>the column "{column}" is there in {count} units; leave one.</source>
      <translation>die Spalte "{column}" ist in {count} Einheiten da; lassen Sie eine stehen.</translation>
    </message>
    <message>
      <source>there is no column of values; there may be {columns}: map the log's own with --columns.</source>
      <translation>es gibt keine Spalte mit Werten; möglich sind {columns}: Ordnen Sie die des Protokolls mit --columns zu.</translation>
    </message>
    <message>
      <source>the column "{column}" is missing; if it was not measured, add it with empty cells.</source>
      <translation>die Spalte "{column}" fehlt; wenn nicht gemessen wurde, fügen Sie sie mit leeren Zellen an.</translation>
    </message>
    <message>
      <source>this is no CSV ({fault}); put quotes around the whole cell or leave them out.</source>
      <translation>das ist kein CSV ({fault}); setzen Sie die ganze Zelle in Anführungszeichen, oder lassen Sie sie weg.</translation>
    </message>
    <message>
      <source>time {time} is the same as in line {line}; leave one of the two rows.</source>
      <translation>Zeit {time} ist dieselbe wie in Zeile {line}; lassen Sie eine der beiden stehen.</translation>
    </message>
    <message>
      <source>the log is empty; its first line must be a header with the columns' names.</source>
      <translation>das Protokoll ist leer; seine erste Zeile muss ein Kopf mit den Namen der Spalten sein.</translation>
    </message>
    <message>
      <source>the row has {found} cells; the header has {usual}.</source>
      <translation>die Zeile hat {found} Zellen; der Kopf hat {usual}.</translation>
    </message>
    <message>
      <source>time {time} is before that in line {line}; sort the rows by time.</source>
      <translation>Zeit {time} liegt vor der in Zeile {line}; ordnen Sie die Zeilen nach der Zeit.</translation>
    </message>
    <message>
      <source>these columns are not used: {columns}.</source>
      <translation>diese Spalten werden nicht verwendet: {columns}.</translation>
    </message>
    <message>
      <source>the log has a header and no rows.</source>
      <translation>das Protokoll hat einen Kopf und keine Zeilen.</translation>
    </message>
    <message>
      <source>line {line}: {doubt}.</source>
      <translation>Zeile {line}: {doubt}.</translation>
    </message>
    <message>
      <source>times from {text} on come twice that night in {zone}; by their order the first</source>
      <translation>Zeiten ab {text} kommen in dieser Nacht in {zone} doppelt; nach ihrer Folge die ersten</translation>
    </message>
    <message>
      <source>times from {text} on come twice that night in {zone}; by their order the second</source>
      <translation>Zeiten ab {text} kommen in dieser Nacht in {zone} doppelt; nach ihrer Folge die zweiten</translation>
    </message>
    <message>
      <source>{column} {text} is outside 2000-01-01 to 2100-01-01.</source>
      <translation>{column} {text} liegt außerhalb von 2000-01-01 bis 2100-01-01.</translation>
    </message>
    <message>
      <source>{column} is empty; every row needs its time.</source>
      <translation>{column} ist leer; jede Zeile braucht ihre Zeit.</translation>
    </message>
    <message>
      <source>time_unix {text} looks like milliseconds; write it in seconds, or call it time_unix_ms.</source>
      <translation>time_unix {text} sieht nach Millisekunden aus; schreiben Sie Sekunden, oder nennen Sie die Spalte time_unix_ms.</translation>
    </message>
    <message>
      <source>time "{text}" is not there in {zone}: that night the clock went forward past it; write the offset.</source>
      <translation>Zeit "{text}" gibt es in {zone} nicht: in dieser Nacht wurde die Uhr darüber vorgestellt; schreiben Sie den Abstand zu UTC dazu.</translation>
    </message>
    <message>
      <source>time "{text}" comes twice that night in {zone}, and no row of the hour before tells which it is; write the offset, {first} or {second}.</source>
      <translation>Zeit "{text}" kommt in dieser Nacht in {zone} doppelt, und keine Zeile der Stunde davor sagt, welche es ist; schreiben Sie den Abstand zu UTC dazu, {first} oder {second}.</translation>
    </message>
    <message>
      <source>time "{text}" has no zone; write Z for UTC, or the offset, such as +01:00, or give the log's zone.</source>
      <translation>Zeit "{text}" hat keine Zeitzone; schreiben Sie Z für UTC oder den Abstand dazu, etwa +01:00, oder nennen Sie die Zone des Protokolls.</translation>
    </message>
    <message>
      <source>time "{text}" is no ISO 8601 time such as 2026-03-02T09:00:00Z.</source>
      <translation>Zeit "{text}" ist keine Zeit nach ISO 8601, etwa 2026-03-02T09:00:00Z.</translation>
    </message>
    <message>
      <source>time "{text}" is not written as {form}.</source>
      <translation>Zeit "{text}" ist nicht als {form} geschrieben.</translation>
    </message>
    <message>
      <source>simulated board</source>
      <translation>simulierte Platine</translation>
    </message>
    <message>
      <source>The simulated board is unplugged: plug it in again.</source>
      <translation>Die simulierte Messplatine ist abgezogen: Stecken Sie sie wieder an.</translation>
    </message>
    <message>
      <source>The simulated board was unplugged: plug it in again.</source>
      <translation>Die simulierte Messplatine wurde abgezogen: Stecken Sie sie wieder an.</translation>
    </message>
    <message>
      <source>checked lines</source>
      <translation>geprüfte Zeilen</translation>
    </message>
    <message>
      <source>The line broke off: $ came before its end.</source>
      <translation>Die Zeile brach ab: vor ihrem Ende kam $.</translation>
    </message>
    <message>
      <source>The bytes do not begin with $: noise between lines.</source>
      <translation>Die Bytes beginnen nicht mit $: Rauschen zwischen Zeilen.</translation>
    </message>
    <message>
      <source>The checksum {checksum} was expected: bytes were changed or lost.</source>
      <translation>Erwartet war die Prüfsumme {checksum}: Bytes wurden verändert oder gingen verloren.</translation>
    </message>
    <message>
      <source>The checksum is right, but the line does not follow the wire format.</source>
      <translation>Die Prüfsumme stimmt, aber die Zeile folgt nicht dem Leitungsformat.</translation>
    </message>
    <message>
      <source>The checksum is right, but a key occurs twice in the line.</source>
      <translation>Die Prüfsumme stimmt, aber ein Schlüssel kommt in der Zeile doppelt vor.</translation>
    </message>
  </context>
</TS>
