<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>The bead is hot enough to hurt: hold the sensor by its board, and let nothing touch the bead.</source>
      <translation>Die Perle ist heiß genug, um zu verletzen: Halten Sie den Sensor an seiner Platine, und lassen Sie nichts die Perle berühren.</translation>
    </message>
    <message>
      <source>Not in solvent vapour: the bead is hot and contacts spark. The parts' own sheets come first.</source>
      <translation>Nicht in Lösemitteldampf: Die Perle ist heiß, und Kontakte können Funken schlagen. Die Datenblätter der Teile gehen vor.</translation>
    </message>
    <message>
      <source>Clear the way, and carry the cable in your hand so that you do not step on it or pull the plug.</source>
      <translation>Räumen Sie den Weg frei, und tragen Sie das Kabel in der Hand, damit Sie nicht darauf treten oder den Stecker ziehen.</translation>
    </message>
    <message>
      <source>heel to toe</source>
      <translation>Fuß vor Fuß</translation>
    </message>
    <message>
      <source>strolling</source>
      <translation>schlendernd</translation>
    </message>
    <message>
      <source>walking on</source>
      <translation>zügig</translation>
    </message>
    <message>
      <source>Measured for {seconds} s. Start again to replace it.</source>
      <translation>{seconds} s lang gemessen. Starten Sie noch einmal, um das zu ersetzen.</translation>
    </message>
    <message>
      <source>{speed}: {distance} m in {seconds} s</source>
      <translation>{speed}: {distance} m in {seconds} s</translation>
    </message>
    <message>
      <source>{low} to {high} is allowed: remove it</source>
      <translation>{low} bis {high} ist erlaubt: Entfernen Sie diesen Gang</translation>
    </message>
    <message>
      <source>Walk {number}, {pace}: {distance} m in about {seconds} s.</source>
      <translation>Gang {number}, {pace}: {distance} m in etwa {seconds} s.</translation>
    </message>
    <message>
      <source>{seconds} s to go</source>
      <translation>noch {seconds} s</translation>
    </message>
    <message>
      <source>That is enough; more walks narrow the error, slow ones above all.</source>
      <translation>Das genügt; weitere Gänge verkleinern den Fehler, langsame vor allem.</translation>
    </message>
    <message>
      <source>No board is read: plug it in first.</source>
      <translation>Es wird keine Platine gelesen: Stecken Sie sie zuerst ein.</translation>
    </message>
    <message>
      <source>This board's sensor gives air speed itself: there is nothing to calibrate.</source>
      <translation>Der Sensor dieser Platine gibt die Luftgeschwindigkeit selbst an: Es gibt nichts abzugleichen.</translation>
    </message>
    <message>
      <source>This board sends no bead's voltage: there is nothing to calibrate. See its wire to A0.</source>
      <translation>Diese Platine sendet keine Spannung einer Perle: Es gibt nichts abzugleichen. Sehen Sie nach ihrer Leitung zu A0.</translation>
    </message>
    <message>
      <source>Walks beside the law: {walks}.</source>
      <translation>Gänge neben dem Gesetz: {walks}.</translation>
    </message>
    <message>
      <source>V² = A + B vⁿ with n = {exponent}, at {temperature} of air.</source>
      <translation>V² = A + B vⁿ mit n = {exponent}, bei {temperature} Lufttemperatur.</translation>
    </message>
    <message>
      <source>The bead's temperature</source>
      <translation>Die Temperatur der Perle</translation>
    </message>
    <message>
      <source>The distance</source>
      <translation>Die Strecke</translation>
    </message>
    <message>
      <source>What is needed</source>
      <translation>Was gebraucht wird</translation>
    </message>
    <message>
      <source>I have it all</source>
      <translation>Ich habe alles</translation>
    </message>
    <message>
      <source>Under the cup</source>
      <translation>Unter dem Becher</translation>
    </message>
    <message>
      <source>Still air, under the cup</source>
      <translation>Ruhige Luft, unter dem Becher</translation>
    </message>
    <message>
      <source>Go on to the walks</source>
      <translation>Weiter zu den Gängen</translation>
    </message>
    <message>
      <source>Three walks</source>
      <translation>Drei Gänge</translation>
    </message>
    <message>
      <source>Three walks, each at another speed</source>
      <translation>Drei Gänge, jeder anders schnell</translation>
    </message>
    <message>
      <source>Show the fit</source>
      <translation>Ergebnis zeigen</translation>
    </message>
    <message>
      <source>The fit</source>
      <translation>Das Ergebnis</translation>
    </message>
    <message>
      <source>Accept</source>
      <translation>Annehmen</translation>
    </message>
    <message>
      <source>A cup that fits over the bead without touching it, a tape measure, and a straight way of 3 to 6 m through still air: doors and windows shut, heaters and fans off for ten minutes. Ten minutes in all.</source>
      <translation>Ein Becher, der über die Perle passt, ohne sie zu berühren, ein Maßband und ein gerader Weg von 3 bis 6 m durch ruhige Luft: Türen und Fenster zu, Heizungen und Ventilatoren seit zehn Minuten aus. Zehn Minuten insgesamt.</translation>
    </message>
    <message>
      <source>You carry the sensor along the way, three times at another speed: moving it through still air is the same to it as air that moves. A long USB cable helps, or carry a portable computer along.</source>
      <translation>Sie tragen den Sensor den Weg entlang, dreimal verschieden schnell: Durch ruhige Luft bewegt zu werden ist für ihn dasselbe wie bewegte Luft. Ein langes USB-Kabel hilft, oder Sie tragen einen tragbaren Computer mit.</translation>
    </message>
    <message>
      <source>The steps done so far are kept while studiowatch is open, also when you leave this page; they are lost when it is closed.</source>
      <translation>Was bis hierher getan ist, bleibt erhalten, solange studiowatch offen ist, auch wenn Sie diese Seite verlassen; beim Schließen geht es verloren.</translation>
    </message>
    <message>
      <source>Stand the cup over the bead, wait a minute for the air in it to come to rest, then start. It ends by itself after half a minute.</source>
      <translation>Stülpen Sie den Becher über die Perle, warten Sie eine Minute, bis die Luft darin zur Ruhe kommt, und starten Sie dann. Es endet nach einer halben Minute von selbst.</translation>
    </message>
    <message>
      <source>Hold the sensor out before you at arm's length, with the bead turned as it will be at the rack. Walk evenly; start when you pass the first mark, stop when you pass the second. The space bar presses the button.</source>
      <translation>Halten Sie den Sensor mit ausgestrecktem Arm vor sich, die Perle so gedreht, wie sie am Gestell stehen wird. Gehen Sie gleichmäßig; starten Sie an der ersten Marke, halten Sie an der zweiten an. Die Leertaste drückt den Knopf.</translation>
    </message>
    <message>
      <source>Nothing holds yet. Accept it, and air speed is shown from now on; it can be withdrawn at any time.</source>
      <translation>Noch gilt nichts. Nehmen Sie es an, und die Luftgeschwindigkeit wird von nun an gezeigt; es kann jederzeit zurückgenommen werden.</translation>
    </message>
    <message>
      <source>The amount</source>
      <translation>Die Menge</translation>
    </message>
    <message>
      <source>No archived piece has all these words in its title, support, notes or data sheets.</source>
      <translation>Kein Bild im Archiv hat alle diese Wörter in Titel, Bildträger, Notizen oder Datenblättern.</translation>
    </message>
    <message>
      <source>Nothing was taken off the rack yet. What you take off it (in its menu) comes here with all its records.</source>
      <translation>Noch wurde nichts vom Gestell genommen. Was Sie herunternehmen (in seinem Menü), kommt mit allen Aufzeichnungen hierher.</translation>
    </message>
    <message>
      <source>{title} · last coat {day}</source>
      <translation>{title} · letzte Schicht {day}</translation>
    </message>
    <message>
      <source>{title} · no coat was laid</source>
      <translation>{title} · keine Schicht aufgetragen</translation>
    </message>
    <message>
      <source>Last coat laid {day}</source>
      <translation>Letzte Schicht aufgetragen {day}</translation>
    </message>
    <message>
      <source>Was due {day}</source>
      <translation>Liefertermin war {day}</translation>
    </message>
    <message>
      <source>Data sheets: {sheets}</source>
      <translation>Datenblätter: {sheets}</translation>
    </message>
    <message>
      <source>Best hours in the next two days for {title}</source>
      <translation>Beste Stunden der nächsten zwei Tage für {title}</translation>
    </message>
    <message>
      <source>no reading yet</source>
      <translation>noch kein Messwert</translation>
    </message>
    <message>
      <source>room read {ago}</source>
      <translation>Raum abgelesen {ago}</translation>
    </message>
    <message>
      <source>last reading {ago}</source>
      <translation>letzter Messwert {ago}</translation>
    </message>
    <message>
      <source>Board on {port}</source>
      <translation>Platine an {port}</translation>
    </message>
    <message>
      <source>Board connected</source>
      <translation>Platine verbunden</translation>
    </message>
    <message>
      <source>Simulated board</source>
      <translation>Simulierte Platine</translation>
    </message>
    <message>
      <source>No board is connected: plug it in by USB, or type a reading.</source>
      <translation>Keine Platine: per USB einstecken oder einen Messwert eintippen.</translation>
    </message>
    <message>
      <source>air speed not measured</source>
      <translation>Luftgeschwindigkeit nicht gemessen</translation>
    </message>
    <message>
      <source>{count} lost</source>
      <translation>{count} verloren</translation>
    </message>
    <message>
      <source>{count} faulty</source>
      <translation>{count} fehlerhaft</translation>
    </message>
    <message>
      <source>{count} could not be kept up with</source>
      <translation>{count} nicht nachgekommen</translation>
    </message>
    <message>
      <source>none lost</source>
      <translation>keine verloren</translation>
    </message>
    <message>
      <source>unchecked lines</source>
      <translation>ungeprüfte Zeilen</translation>
    </message>
    <message>
      <source>No board</source>
      <translation>Keine Platine</translation>
    </message>
    <message>
      <source>The sensor's readings look right.</source>
      <translation>Die Messwerte des Sensors sehen richtig aus.</translation>
    </message>
    <message>
      <source>No reading has come yet.</source>
      <translation>Noch ist kein Messwert gekommen.</translation>
    </message>
    <message>
      <source>No board is connected: plug it in by USB.</source>
      <translation>Keine Platine ist verbunden: Stecken Sie sie per USB ein.</translation>
    </message>
    <message>
      <source>Unchecked lines: this board's own sketch sends no checksum, so a byte lost on the way can pass for a reading.</source>
      <translation>Ungeprüfte Zeilen: Das eigene Programm dieser Platine sendet keine Prüfsumme; ein unterwegs verlorenes Byte kann so als Messwert durchgehen.</translation>
    </message>
    <message>
      <source>The board fell silent: its last reading came {ago}; check its plug.</source>
      <translation>Die Platine ist verstummt: Ihr letzter Messwert kam {ago}; prüfen Sie ihren Stecker.</translation>
    </message>
    <message>
      <source>Last reading {ago}.</source>
      <translation>Letzter Messwert {ago}.</translation>
    </message>
    <message>
      <source>good lines</source>
      <translation>gute Zeilen</translation>
    </message>
    <message>
      <source>refused</source>
      <translation>abgewiesen</translation>
    </message>
    <message>
      <source>lost on the way</source>
      <translation>unterwegs verloren</translation>
    </message>
    <message>
      <source>restarts</source>
      <translation>Neustarts</translation>
    </message>
    <message>
      <source>not kept up with</source>
      <translation>nicht nachgekommen</translation>
    </message>
    <message>
      <source>No port was found: plug the board in by USB, with a cable that does not only charge.</source>
      <translation>Kein Anschluss wurde gefunden: Stecken Sie die Platine per USB ein, mit einem Kabel, das nicht nur lädt.</translation>
    </message>
    <message>
      <source>Not listened to: a wireless link or a console of the computer itself.</source>
      <translation>Wird nicht abgehört: eine Funkverbindung oder eine Konsole des Computers selbst.</translation>
    </message>
    <message>
      <source>Not tried: another board is read.</source>
      <translation>Nicht versucht: Eine andere Platine wird gelesen.</translation>
    </message>
    <message>
      <source>Not tried yet.</source>
      <translation>Noch nicht versucht.</translation>
    </message>
    <message>
      <source>Read now: {format} at {baud} baud</source>
      <translation>Wird gelesen: {format} mit {baud} Baud</translation>
    </message>
    <message>
      <source>Listening; nothing that can be read has come yet ({baud} baud).</source>
      <translation>Wird abgehört; noch ist nichts Lesbares gekommen ({baud} Baud).</translation>
    </message>
    <message>
      <source>{coat}, planned · {sheet}</source>
      <translation>{coat}, geplant · {sheet}</translation>
    </message>
    <message>
      <source>{whole} makes the sheet's {thickness} on {area} m²</source>
      <translation>{whole} ergeben die {thickness} des Datenblatts auf {area} m²</translation>
    </message>
    <message>
      <source>{each} on each of {panels} panels, {whole} in all, makes the sheet's {thickness} on {area} m²</source>
      <translation>{each} auf jede von {panels} Tafeln, {whole} insgesamt, ergeben die {thickness} des Datenblatts auf {area} m²</translation>
    </message>
    <message>
      <source>{whole} makes the sheet's {thickness} on {area} m², with {share} % for brush and cup</source>
      <translation>{whole} ergeben die {thickness} des Datenblatts auf {area} m², mit {share} % für Pinsel und Becher</translation>
    </message>
    <message>
      <source>{each} on each of {panels} panels, {whole} in all, makes the sheet's {thickness} on {area} m², with {share} % for brush and cup</source>
      <translation>{each} auf jede von {panels} Tafeln, {whole} insgesamt, ergeben die {thickness} des Datenblatts auf {area} m², mit {share} % für Pinsel und Becher</translation>
    </message>
    <message>
      <source>{volume} or {weight}</source>
      <translation>{volume} oder {weight}</translation>
    </message>
    <message>
      <source>{amount} is {times} times the sheet's film; did you mean {usual}? Press again if it is so much.</source>
      <translation>{amount} ist das {times}-Fache des Films auf dem Datenblatt; meinten Sie {usual}? Drücken Sie noch einmal, wenn es so viel ist.</translation>
    </message>
    <message>
      <source>thinner</source>
      <translation>Verdünner</translation>
    </message>
    <message>
      <source>water</source>
      <translation>Wasser</translation>
    </message>
    <message>
      <source>{amount} on the piece: {verdict}</source>
      <translation>{amount} auf dem Bild: {verdict}</translation>
    </message>
    <message>
      <source>The share for brush and cup</source>
      <translation>Der Anteil für Pinsel und Becher</translation>
    </message>
    <message>
      <source>The brush went down in the future: choose a time that has passed, or now.</source>
      <translation>Der Auftrag läge in der Zukunft: Wählen Sie eine vergangene Zeit, oder jetzt.</translation>
    </message>
    <message>
      <source>Left empty: recorded as thick as the sheet says.</source>
      <translation>Leer gelassen: so dick aufgezeichnet, wie das Datenblatt sagt.</translation>
    </message>
    <message>
      <source>The thinner added</source>
      <translation>Der zugegebene Verdünner</translation>
    </message>
    <message>
      <source>The water added</source>
      <translation>Das zugegebene Wasser</translation>
    </message>
    <message>
      <source>Say what each number is, or that it is not used; until then nothing is read.</source>
      <translation>Sagen Sie, was jede Zahl ist, oder dass sie nicht verwendet wird; bis dahin wird nichts gelesen.</translation>
    </message>
    <message>
      <source>Read as below. What you change holds from the next line on.</source>
      <translation>Wird gelesen wie unten. Was Sie ändern, gilt ab der nächsten Zeile.</translation>
    </message>
    <message>
      <source>air temperature</source>
      <translation>Lufttemperatur</translation>
    </message>
    <message>
      <source>surface temperature</source>
      <translation>Oberflächentemperatur</translation>
    </message>
    <message>
      <source>relative humidity</source>
      <translation>relative Luftfeuchte</translation>
    </message>
    <message>
      <source>air speed</source>
      <translation>Luftgeschwindigkeit</translation>
    </message>
    <message>
      <source>air sensor's voltage</source>
      <translation>Spannung des Luftsensors</translation>
    </message>
    <message>
      <source>air pressure</source>
      <translation>Luftdruck</translation>
    </message>
    <message>
      <source>dust</source>
      <translation>Staub</translation>
    </message>
    <message>
      <source>not used</source>
      <translation>nicht verwendet</translation>
    </message>
    <message>
      <source>say what it is</source>
      <translation>sagen Sie, was es ist</translation>
    </message>
    <message>
      <source>{quantity} in {unit}</source>
      <translation>{quantity} in {unit}</translation>
    </message>
    <message numerus="yes">
      <source>Say what {columns} are, or choose “not used”.</source>
      <translation>
        <numerusform>Sagen Sie, was {columns} ist, oder wählen Sie „nicht verwendet“.</numerusform>
        <numerusform>Sagen Sie, was {columns} sind, oder wählen Sie „nicht verwendet“.</numerusform>
      </translation>
    </message>
    <message>
      <source>Breath test</source>
      <translation>Atemprobe</translation>
    </message>
    <message>
      <source>Fan test</source>
      <translation>Ventilatorprobe</translation>
    </message>
    <message>
      <source>Keep your face off the bead: it is hot enough to hurt.</source>
      <translation>Halten Sie Ihr Gesicht von der Perle fern: Sie ist heiß genug, um zu verletzen.</translation>
    </message>
    <message>
      <source>Not beside a wet coat: moving air and dust mark it. A mains fan's own instructions come first.</source>
      <translation>Nicht neben einer nassen Schicht: Bewegte Luft und Staub zeichnen sie. Die Anleitung eines Netzventilators geht vor.</translation>
    </message>
    <message>
      <source>Every column is “not used”: say of one at least what it is.</source>
      <translation>Jede Spalte ist „nicht verwendet“: Sagen Sie wenigstens von einer, was sie ist.</translation>
    </message>
    <message>
      <source>as the sheet says</source>
      <translation>wie das Datenblatt sagt</translation>
    </message>
    <message>
      <source>µm wet</source>
      <translation>µm nass</translation>
    </message>
    <message>
      <source>mil wet</source>
      <translation>mil nass</translation>
    </message>
    <message>
      <source>The brush went down in the future: choose a time that has passed.</source>
      <translation>Der Auftrag läge in der Zukunft: Wählen Sie eine vergangene Zeit.</translation>
    </message>
    <message>
      <source>The cover was set before the coat was laid, or in the future: correct its time.</source>
      <translation>Die Abdeckung wäre vor dem Auftragen der Schicht oder in der Zukunft gesetzt: Berichtigen Sie ihre Zeit.</translation>
    </message>
    <message>
      <source>What it was thinned by</source>
      <translation>Die Verdünnung</translation>
    </message>
    <message>
      <source>% of the volume</source>
      <translation>% des Volumens</translation>
    </message>
    <message>
      <source>Register the first piece (Ctrl+N): title, size, and the coats to come. Ready times start with its first coat.</source>
      <translation>Tragen Sie das erste Bild ein (Strg+N): Titel, Größe und die kommenden Schichten. Mit seiner ersten Schicht beginnen die Bereit-Zeiten.</translation>
    </message>
    <message>
      <source>Nothing to do at the rack.</source>
      <translation>Am Gestell ist nichts zu tun.</translation>
    </message>
    <message>
      <source>Nothing to do at the rack. Once a coat is laid (Ctrl+L), what it needs stands here at its time: the second bubble pass, the cover, the touch test.</source>
      <translation>Am Gestell ist nichts zu tun. Ist eine Schicht aufgetragen (Strg+L), steht hier zu seiner Zeit, was sie braucht: der zweite Gang gegen Blasen, die Abdeckung, die Griffprobe.</translation>
    </message>
    <message>
      <source>No warning so far. Moving air, damp, dew, cold or a silent board stand here as soon as they can harm a wet coat; Ctrl+Shift+S lets you hear how it sounds.</source>
      <translation>Bisher keine Warnung. Bewegte Luft, Feuchte, Tau, Kälte oder eine stumme Platine stehen hier, sobald sie einer nassen Schicht schaden können; mit Strg+Umschalt+S hören Sie, wie das klingt.</translation>
    </message>
    <message>
      <source>Temperature, humidity and air speed appear here: plug the board in, or type a reading (Ctrl+G)</source>
      <translation>Temperatur, Luftfeuchte und Luftgeschwindigkeit erscheinen hier: Stecken Sie die Platine ein, oder tippen Sie einen Messwert ein (Strg+G)</translation>
    </message>
    <message>
      <source>No piece is on the rack yet. Register one (Ctrl+N), and when to lay each of its coats stands here.</source>
      <translation>Noch ist kein Bild im Gestell. Tragen Sie eines ein (Strg+N), und hier steht, wann jede seiner Schichten aufzutragen ist.</translation>
    </message>
    <message>
      <source>Readings or a studio file (*.csv *.txt *.tsv *.toml);;All files (*)</source>
      <translation>Messwerte oder eine Atelierdatei (*.csv *.txt *.tsv *.toml);;Alle Dateien (*)</translation>
    </message>
    <message>
      <source>Cancelled. What was taken until then is kept; take the same file in again to go on from there.</source>
      <translation>Abgebrochen. Was bis dahin übernommen war, bleibt; übernehmen Sie dieselbe Datei noch einmal, um von dort weiterzumachen.</translation>
    </message>
    <message>
      <source>This window has no studio folder behind it, so there is nothing to save.</source>
      <translation>Hinter diesem Fenster steht kein Atelierordner, es gibt also nichts zu speichern.</translation>
    </message>
    <message>
      <source>All of that lies ahead: there are no readings of it yet. Choose a time that is behind now.</source>
      <translation>Das liegt alles in der Zukunft: Davon gibt es noch keine Messwerte. Wählen Sie eine vergangene Zeit.</translation>
    </message>
    <message>
      <source>Room log (*.csv)</source>
      <translation>Raumprotokoll (*.csv)</translation>
    </message>
    <message>
      <source>SenML (*.senml *.json)</source>
      <translation>SenML (*.senml *.json)</translation>
    </message>
    <message>
      <source>Studio file (*.toml)</source>
      <translation>Atelierdatei (*.toml)</translation>
    </message>
    <message>
      <source>Save readings as CSV</source>
      <translation>Messwerte als CSV speichern</translation>
    </message>
    <message>
      <source>Save all records</source>
      <translation>Alle Aufzeichnungen speichern</translation>
    </message>
    <message>
      <source>Save readings as SenML</source>
      <translation>Messwerte als SenML speichern</translation>
    </message>
    <message>
      <source>still</source>
      <translation>ruhig</translation>
    </message>
    <message>
      <source>moving</source>
      <translation>bewegt</translation>
    </message>
    <message>
      <source>wet film {temperature}</source>
      <translation>Nassfilm {temperature}</translation>
    </message>
    <message>
      <source>last heard {time}</source>
      <translation>zuletzt gehört {time}</translation>
    </message>
    <message>
      <source>felt {air} {ago}</source>
      <translation>gefühlt: {air}, {ago}</translation>
    </message>
    <message>
      <source>no wet film</source>
      <translation>kein Nassfilm</translation>
    </message>
    <message>
      <source>dew point {temperature}</source>
      <translation>Taupunkt {temperature}</translation>
    </message>
    <message>
      <source>{difference} above film</source>
      <translation>Film {difference} kälter</translation>
    </message>
    <message>
      <source>{difference} above air</source>
      <translation>Luft {difference} kälter</translation>
    </message>
    <message>
      <source>under {limit}</source>
      <translation>unter {limit}</translation>
    </message>
    <message>
      <source>the air is still</source>
      <translation>die Luft ist ruhig</translation>
    </message>
    <message>
      <source>learning what still air is</source>
      <translation>lernt, was ruhige Luft ist</translation>
    </message>
    <message>
      <source>a fan since {time}</source>
      <translation>ein Ventilator seit {time}</translation>
    </message>
    <message>
      <source>moving since {time}</source>
      <translation>bewegt seit {time}</translation>
    </message>
    <message>
      <source>no calibration</source>
      <translation>kein Abgleich</translation>
    </message>
    <message>
      <source>learning still air</source>
      <translation>lernt ruhige Luft</translation>
    </message>
    <message>
      <source>low</source>
      <comment>dust</comment>
      <translation>wenig</translation>
    </message>
    <message>
      <source>not measured</source>
      <translation>nicht gemessen</translation>
    </message>
    <message>
      <source>Air temperature</source>
      <translation>Lufttemperatur</translation>
    </message>
    <message>
      <source>{film} Above the dew point: {dew}</source>
      <translation>{film} Über dem Taupunkt: {dew}</translation>
    </message>
    <message>
      <source>Relative humidity</source>
      <translation>Relative Luftfeuchte</translation>
    </message>
    <message>
      <source>{difference} below film</source>
      <translation>Film {difference} wärmer</translation>
    </message>
    <message>
      <source>{difference} below air</source>
      <translation>Luft {difference} wärmer</translation>
    </message>
    <message>
      <source>Air</source>
      <translation>Luft</translation>
    </message>
    <message>
      <source>Air speed</source>
      <translation>Luftgeschwindigkeit</translation>
    </message>
    <message>
      <source>a fan</source>
      <translation>ein Ventilator</translation>
    </message>
    <message>
      <source>some</source>
      <comment>dust</comment>
      <translation>etwas</translation>
    </message>
    <message>
      <source>high</source>
      <comment>dust</comment>
      <translation>viel</translation>
    </message>
    <message>
      <source>over 5 µm</source>
      <translation>über 5 µm</translation>
    </message>
    <message>
      <source>Dust</source>
      <translation>Staub</translation>
    </message>
    <message>
      <source>coldest wet film {temperature}</source>
      <translation>kältester Nassfilm {temperature}</translation>
    </message>
    <message>
      <source>read {ago}</source>
      <translation>abgelesen {ago}</translation>
    </message>
    <message>
      <source>Section from the top: {layers}</source>
      <translation>Schnitt von oben: {layers}</translation>
    </message>
    <message>
      <source>{coat}, milky</source>
      <translation>{coat}, milchig</translation>
    </message>
    <message>
      <source>{coat} planned</source>
      <translation>{coat} geplant</translation>
    </message>
    <message>
      <source>{coat}, not watched</source>
      <translation>{coat}, nicht bewacht</translation>
    </message>
    <message>
      <source>support</source>
      <translation>Bildträger</translation>
    </message>
    <message>
      <source>paint</source>
      <translation>Farbe</translation>
    </message>
    <message>
      <source>US Letter</source>
      <translation>US-Briefformat</translation>
    </message>
    <message>
      <source>Save the finishing record as PDF</source>
      <translation>Abschlussprotokoll als PDF speichern</translation>
    </message>
    <message>
      <source>PDF (*.pdf)</source>
      <translation>PDF (*.pdf)</translation>
    </message>
    <message>
      <source>Save the finishing record as a page</source>
      <translation>Abschlussprotokoll als Seite speichern</translation>
    </message>
    <message>
      <source>HTML page (*.html)</source>
      <translation>HTML-Seite (*.html)</translation>
    </message>
    <message>
      <source>{title}-finishing-record</source>
      <translation>{title}-Abschlussprotokoll</translation>
    </message>
    <message>
      <source>piece</source>
      <translation>Bild</translation>
    </message>
    <message>
      <source>It opens in a window of its own, with records of its own: nothing of yours is touched.</source>
      <translation>Es öffnet sich in einem eigenen Fenster, mit eigenen Aufzeichnungen: Von Ihren wird nichts berührt.</translation>
    </message>
    <message>
      <source>Your board</source>
      <translation>Ihre Platine</translation>
    </message>
    <message>
      <source>Plug the board in by USB: it is found by itself, and its readings come every second. Without one you can read any hygrometer and type what it says (Ctrl+G): ready times are then wider, and moving air is not seen.</source>
      <translation>Stecken Sie die Platine per USB ein: Sie wird von selbst gefunden, und ihre Messwerte kommen jede Sekunde. Ohne eine können Sie jedes Hygrometer ablesen und eintippen, was es zeigt (Strg+G): Die Bereit-Zeiten sind dann weiter gefasst, und bewegte Luft wird nicht gesehen.</translation>
    </message>
    <message>
      <source>Your room and hours</source>
      <translation>Ihr Raum und Ihre Zeiten</translation>
    </message>
    <message>
      <source>Lay the board flat beside the pieces, out of the sun and away from the heater. Say when you work, so that coats are planned only then, and when a sound must not wake you.</source>
      <translation>Legen Sie die Platine flach neben die Bilder, nicht in die Sonne und nicht an die Heizung. Sagen Sie, wann Sie arbeiten, damit Schichten nur dann geplant werden, und wann Sie kein Ton wecken darf.</translation>
    </message>
    <message>
      <source>Your first piece</source>
      <translation>Ihr erstes Bild</translation>
    </message>
    <message>
      <source>Register a piece with its title, its size and the coats to come. Press “Lay a coat” (Ctrl+L) when you lay the first one: from then on the rack shows when it will be dry, and you are warned while it is wet.</source>
      <translation>Tragen Sie ein Bild mit Titel, Größe und den kommenden Schichten ein. Drücken Sie „Schicht auftragen“ (Strg+L), wenn Sie die erste auftragen: Von da an zeigt das Gestell, wann sie trocken sein wird, und Sie werden gewarnt, solange sie nass ist.</translation>
    </message>
    <message>
      <source>&amp;Look at the board</source>
      <translation>&amp;Platine ansehen</translation>
    </message>
    <message>
      <source>I have &amp;no board yet: type a reading</source>
      <translation>Noch &amp;keine Platine: Messwert eintippen</translation>
    </message>
    <message>
      <source>Look around with a &amp;made-up studio</source>
      <translation>In einem &amp;erfundenen Atelier umsehen</translation>
    </message>
    <message>
      <source>&amp;Working hours…</source>
      <translation>&amp;Arbeitszeiten…</translation>
    </message>
    <message>
      <source>&amp;Quiet hours…</source>
      <translation>&amp;Ruhezeiten…</translation>
    </message>
    <message>
      <source>&amp;Register a piece…</source>
      <translation>&amp;Bild eintragen…</translation>
    </message>
    <message>
      <source>{signal} millivolts at {speed} metres per second</source>
      <translation>{signal} Millivolt bei {speed} Metern pro Sekunde</translation>
    </message>
    <message>
      <source>{signal} millivolts at {speed} feet per minute</source>
      <translation>{signal} Millivolt bei {speed} Fuß pro Minute</translation>
    </message>
    <message>
      <source>air speed, {unit}</source>
      <translation>Luftgeschwindigkeit, {unit}</translation>
    </message>
    <message>
      <source>bead's voltage at {temperature}, mV</source>
      <translation>Spannung der Perle bei {temperature}, mV</translation>
    </message>
    <message>
      <source>The law through the points measured: {points}.</source>
      <translation>Das Gesetz durch die gemessenen Punkte: {points}.</translation>
    </message>
    <message>
      <source>{name} is “{typed}”: type a number from {low} to {high}, such as {example} {unit}.</source>
      <translation>{name} ist „{typed}“: Tippen Sie eine Zahl von {low} bis {high} ein, etwa {example} {unit}.</translation>
    </message>
    <message>
      <source>{name} is {typed} {unit}: type a number from {low} to {high}, such as {example}.</source>
      <translation>{name} ist {typed} {unit}: Tippen Sie eine Zahl von {low} bis {high} ein, etwa {example}.</translation>
    </message>
    <message>
      <source>{name} is empty: type a number from {low} to {high}, such as {example} {unit}.</source>
      <translation>{name} ist leer: Tippen Sie eine Zahl von {low} bis {high} ein, etwa {example} {unit}.</translation>
    </message>
    <message>
      <source>{day} {time}</source>
      <translation>{day} {time}</translation>
    </message>
    <message>
      <source>{weekday} {day}</source>
      <translation>{weekday} {day}.</translation>
    </message>
    <message>
      <source>wet</source>
      <translation>nass</translation>
    </message>
    <message>
      <source>tacky</source>
      <translation>klebrig</translation>
    </message>
    <message>
      <source>dry, not yet to recoat</source>
      <translation>trocken, noch nicht überarbeitbar</translation>
    </message>
    <message>
      <source>drying through</source>
      <translation>trocknet durch</translation>
    </message>
    <message>
      <source>ready</source>
      <translation>bereit</translation>
    </message>
    <message>
      <source>not watched</source>
      <translation>nicht bewacht</translation>
    </message>
    <message>
      <source>wet by its sheet</source>
      <translation>nass nach seinem Datenblatt</translation>
    </message>
    <message>
      <source>off the rack by now</source>
      <translation>nicht mehr im Gestell</translation>
    </message>
    <message>
      <source>test again from {time}</source>
      <translation>neue Probe ab {time}</translation>
    </message>
    <message>
      <source>no recoat time at these conditions</source>
      <translation>unter diesen Bedingungen nie überarbeitbar</translation>
    </message>
    <message>
      <source>ready since {time}</source>
      <translation>bereit seit {time}</translation>
    </message>
    <message>
      <source>recoat {time}</source>
      <translation>überarbeitbar {time}</translation>
    </message>
    <message>
      <source>{words} (and {number} more)</source>
      <translation>{words} (und {number} weitere)</translation>
    </message>
    <message>
      <source>no reading</source>
      <translation>kein Messwert</translation>
    </message>
    <message>
      <source>to come: with what you mean to do</source>
      <translation>künftig: mit dem, was Sie vorhaben</translation>
    </message>
    <message>
      <source>to come: as meant</source>
      <translation>künftig: wie vorgesehen</translation>
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
      <source>dew point</source>
      <translation>Taupunkt</translation>
    </message>
    <message>
      <source>likely {low}–{high}</source>
      <translation>wahrscheinlich {low}–{high}</translation>
    </message>
    <message>
      <source>air signal mV, no speed until calibrated</source>
      <translation>Luftsignal mV, ohne Abgleich keine Geschwindigkeit</translation>
    </message>
    <message>
      <source>temperature {unit}</source>
      <translation>Temperatur {unit}</translation>
    </message>
    <message>
      <source>relative humidity %</source>
      <translation>relative Luftfeuchte %</translation>
    </message>
    <message>
      <source>air speed {unit}</source>
      <translation>Luftgeschwindigkeit {unit}</translation>
    </message>
    <message>
      <source>moving air</source>
      <translation>bewegte Luft</translation>
    </message>
    <message>
      <source>film must stay above {limit}</source>
      <translation>Film muss über {limit} bleiben</translation>
    </message>
    <message>
      <source>too damp for a wet coat</source>
      <translation>zu feucht für eine nasse Schicht</translation>
    </message>
    <message>
      <source>laid {day} {time}, came out {outcome}</source>
      <translation>aufgetragen {day} {time}, wurde {outcome}</translation>
    </message>
    <message>
      <source>laid {day} {time}</source>
      <translation>aufgetragen {day} {time}</translation>
    </message>
    <message>
      <source>to do: {prompt}</source>
      <translation>zu tun: {prompt}</translation>
    </message>
    <message>
      <source>done: {prompt}</source>
      <translation>getan: {prompt}</translation>
    </message>
    <message>
      <source>not ticked: {prompt}</source>
      <translation>nicht abgehakt: {prompt}</translation>
    </message>
    <message>
      <source>off the rack</source>
      <translation>nicht im Gestell</translation>
    </message>
    <message>
      <source>{first} to {last}, {length}</source>
      <translation>{first} bis {last}, {length}</translation>
    </message>
    <message>
      <source>8 h</source>
      <translation>8 h</translation>
    </message>
    <message>
      <source>day</source>
      <translation>Tag</translation>
    </message>
    <message>
      <source>week</source>
      <translation>Woche</translation>
    </message>
    <message>
      <source>month</source>
      <translation>Monat</translation>
    </message>
    <message>
      <source>all</source>
      <translation>alles</translation>
    </message>
    <message>
      <source>Temperature, humidity and air speed over time, with one lane for each piece. Nothing has been read yet.</source>
      <translation>Temperatur, Luftfeuchte und Luftgeschwindigkeit über der Zeit, mit einer Spur für jedes Bild. Noch wurde nichts gelesen.</translation>
    </message>
    <message>
      <source>Left and right move in time, plus and minus zoom, Home returns to now, up and down choose a piece, Shift with left and right a range.</source>
      <translation>Links und rechts gehen durch die Zeit, Plus und Minus vergrößern und verkleinern, Pos1 kehrt zum Jetzt zurück, auf und ab wählen ein Bild, Umschalt mit links und rechts einen Zeitraum.</translation>
    </message>
    <message>
      <source>What you mean to do with the room is counted in.</source>
      <translation>Was Sie mit dem Raum vorhaben, ist eingerechnet.</translation>
    </message>
    <message>
      <source>In an hour the room is likely at {low} to {high} and {dry} to {damp} % humidity.</source>
      <translation>In einer Stunde ist der Raum wahrscheinlich bei {low} bis {high} und {dry} bis {damp} % Luftfeuchte.</translation>
    </message>
    <message>
      <source>In six hours the room is likely at {low} to {high} and {dry} to {damp} % humidity.</source>
      <translation>In sechs Stunden ist der Raum wahrscheinlich bei {low} bis {high} und {dry} bis {damp} % Luftfeuchte.</translation>
    </message>
    <message>
      <source>In a day the room is likely at {low} to {high} and {dry} to {damp} % humidity.</source>
      <translation>In einem Tag ist der Raum wahrscheinlich bei {low} bis {high} und {dry} bis {damp} % Luftfeuchte.</translation>
    </message>
    <message>
      <source>Temperature, humidity and air speed over time.</source>
      <translation>Temperatur, Luftfeuchte und Luftgeschwindigkeit über der Zeit.</translation>
    </message>
    <message>
      <source>None yet: humidity is shown as the sensor says it, and air speed only where the sensor gives m/s.</source>
      <translation>Noch keiner: Die Luftfeuchte wird gezeigt, wie der Sensor sie angibt, und die Luftgeschwindigkeit nur, wo der Sensor m/s liefert.</translation>
    </message>
    <message>
      <source>What was read since is shown as without it, and the coats are dried anew by that. The readings themselves are stored as the sensor gave them, and stay.</source>
      <translation>Was seither gemessen wurde, wird gezeigt wie ohne den Abgleich, und das Trocknen der Schichten wird danach neu berechnet. Die Messwerte selbst sind gespeichert, wie der Sensor sie lieferte, und bleiben.</translation>
    </message>
    <message>
      <source>Humidity, {sensor}</source>
      <translation>Luftfeuchte, {sensor}</translation>
    </message>
    <message>
      <source>Withdraw the calibration of humidity, {sensor}?</source>
      <translation>Abgleich der Luftfeuchte zurücknehmen, {sensor}?</translation>
    </message>
    <message>
      <source>Air speed, {sensor}</source>
      <translation>Luftgeschwindigkeit, {sensor}</translation>
    </message>
    <message>
      <source>Withdraw the calibration of air speed, {sensor}?</source>
      <translation>Abgleich der Luftgeschwindigkeit zurücknehmen, {sensor}?</translation>
    </message>
    <message>
      <source>Made {time}, on the board now</source>
      <translation>Gemacht {time}, jetzt auf der Platine</translation>
    </message>
    <message>
      <source>Made {time}, not on the board now</source>
      <translation>Gemacht {time}, jetzt nicht auf der Platine</translation>
    </message>
    <message>
      <source>A check is due since {day}</source>
      <translation>Eine Prüfung ist fällig seit {day}</translation>
    </message>
    <message>
      <source>To be checked again from {day}</source>
      <translation>Wieder zu prüfen ab {day}</translation>
    </message>
    <message>
      <source>sensor {name}</source>
      <translation>Sensor {name}</translation>
    </message>
    <message>
      <source>a sensor without a serial number</source>
      <translation>ein Sensor ohne Seriennummer</translation>
    </message>
    <message>
      <source>Board, plugs and salt never touch: stand the slurry low and level, and lift the box by its bottom.</source>
      <translation>Platine, Stecker und Salz berühren sich nie: Stellen Sie den Brei tief und eben, und heben Sie die Dose am Boden an.</translation>
    </message>
    <message>
      <source>The bead is hot enough to hurt: keep fingers, salt and cable off it.</source>
      <translation>Die Perle ist heiß genug, um zu verletzen: Halten Sie Finger, Salz und Kabel von ihr fern.</translation>
    </message>
    <message>
      <source>Not in solvent vapour: the board is not explosion-protected, and vapour shifts the sensor.</source>
      <translation>Nicht in Lösemitteldampf: Die Platine ist nicht explosionsgeschützt, und Dampf verstellt den Sensor.</translation>
    </message>
    <message>
      <source>Put the cup and the humidity chip into the box, the chip above the slurry and not touching it. The bead stays outside, since its heat would dry the air at the chip. Shut and seal the box.</source>
      <translation>Stellen Sie Becher und Feuchtechip in die Dose, den Chip über dem Brei und ohne ihn zu berühren. Die Perle bleibt draußen, denn ihre Wärme würde die Luft am Chip trocknen. Schließen und dichten Sie die Dose.</translation>
    </message>
    <message>
      <source>Keep both salts away from food, mouth and eyes; wash your hands afterwards. The salts' own sheets come first.</source>
      <translation>Halten Sie beide Salze von Lebensmitteln, Mund und Augen fern; waschen Sie sich danach die Hände. Die Datenblätter der Salze gehen vor.</translation>
    </message>
    <message>
      <source>No salt and no drop of slurry on the board or the sensor: it ruins them and conducts.</source>
      <translation>Kein Salz und kein Tropfen Brei auf Platine oder Sensor: Er zerstört sie und leitet Strom.</translation>
    </message>
    <message>
      <source>Flat: {read} %RH at {temperature}; the salt gives {true} %RH.</source>
      <translation>Steht still: {read} % r. F. bei {temperature}; das Salz ergibt {true} % r. F.</translation>
    </message>
    <message>
      <source>The air in the box takes its time. It counts as flat when the sensor has read the same for {minutes} minutes on end; one hour in all is usual.</source>
      <translation>Die Luft in der Dose braucht ihre Zeit. Der Messwert steht still, wenn der Sensor {minutes} Minuten am Stück dasselbe zeigt; insgesamt eine Stunde ist üblich.</translation>
    </message>
    <message>
      <source>Leave the box shut, at an even {low} to {high}, out of the sun, with the board plugged in. You may leave this page meanwhile and come back.</source>
      <translation>Lassen Sie die Dose geschlossen, bei gleichmäßigen {low} bis {high}, nicht in der Sonne, mit eingesteckter Platine. Sie dürfen diese Seite inzwischen verlassen und wiederkommen.</translation>
    </message>
    <message>
      <source>Shut {ago}, read for {minutes} of the {needed} minutes on end that are needed: leave the box shut and the board plugged in.</source>
      <translation>Geschlossen {ago}, gemessen seit {minutes} der nötigen {needed} Minuten am Stück: Lassen Sie die Dose geschlossen und die Platine eingesteckt.</translation>
    </message>
    <message>
      <source>Flat: {read} %RH at {temperature}, but over {salt} the air has {true} %RH: check that the box is tight, the slurry wet, and that it is this salt.</source>
      <translation>Steht still: {read} % r. F. bei {temperature}, aber über {salt} hat die Luft {true} % r. F.: Prüfen Sie, ob die Dose dicht ist, der Brei nass, und ob es dieses Salz ist.</translation>
    </message>
    <message>
      <source>Gain {gain}; {least} to {most} is allowed.</source>
      <translation>Steigung {gain}; {least} bis {most} ist erlaubt.</translation>
    </message>
    <message>
      <source>Readings are put right: {examples}.</source>
      <translation>Messwerte werden berichtigt: {examples}.</translation>
    </message>
    <message>
      <source>Over</source>
      <translation>Über</translation>
    </message>
    <message>
      <source>Sensor read</source>
      <translation>Sensor zeigte</translation>
    </message>
    <message>
      <source>Air had</source>
      <translation>Luft hatte</translation>
    </message>
    <message>
      <source>At</source>
      <translation>Bei</translation>
    </message>
    <message>
      <source>{read} % to {true} %</source>
      <translation>{read} % auf {true} %</translation>
    </message>
    <message>
      <source>Magnesium chloride</source>
      <translation>Magnesiumchlorid</translation>
    </message>
    <message>
      <source>First box: magnesium chloride</source>
      <translation>Erste Dose: Magnesiumchlorid</translation>
    </message>
    <message>
      <source>The box is shut</source>
      <translation>Die Dose ist zu</translation>
    </message>
    <message>
      <source>Wait until flat</source>
      <translation>Warten bis zum Stillstand</translation>
    </message>
    <message>
      <source>Wait until it reads flat over magnesium chloride</source>
      <translation>Warten, bis der Messwert über Magnesiumchlorid stillsteht</translation>
    </message>
    <message>
      <source>Take this reading</source>
      <translation>Diesen Messwert nehmen</translation>
    </message>
    <message>
      <source>Table salt</source>
      <translation>Kochsalz</translation>
    </message>
    <message>
      <source>Second box: sodium chloride (table salt)</source>
      <translation>Zweite Dose: Natriumchlorid (Kochsalz)</translation>
    </message>
    <message>
      <source>Wait until it reads flat over table salt</source>
      <translation>Warten, bis der Messwert über Kochsalz stillsteht</translation>
    </message>
    <message>
      <source>Result</source>
      <translation>Ergebnis</translation>
    </message>
    <message>
      <source>The result</source>
      <translation>Das Ergebnis</translation>
    </message>
    <message>
      <source>Magnesium chloride and table salt without additives, two shallow cups, distilled water, a box that shuts tight and has a hole for the cable (sealed with putty or tape), and about three hours, most of it waiting.</source>
      <translation>Magnesiumchlorid und Kochsalz ohne Zusätze, zwei flache Becher, destilliertes Wasser, eine Dose, die dicht schließt und ein Loch für das Kabel hat (mit Kitt oder Band gedichtet), und etwa drei Stunden, die meisten davon zum Warten.</translation>
    </message>
    <message>
      <source>Over a wet slurry of each salt the air has a humidity that is known: 33 % and 75 %. What the sensor says there puts it right in between.</source>
      <translation>Über einem nassen Brei jedes Salzes hat die Luft eine bekannte Feuchte: 33 % und 75 %. Was der Sensor dort zeigt, berichtigt ihn dazwischen.</translation>
    </message>
    <message>
      <source>Both boxes within {hours} hours. The steps done so far are kept while studiowatch is open, also when you leave this page; they are lost when it is closed.</source>
      <translation>Beide Dosen innerhalb von {hours} Stunden. Was bis hierher getan ist, bleibt erhalten, solange studiowatch offen ist, auch wenn Sie diese Seite verlassen; beim Schließen geht es verloren.</translation>
    </message>
    <message>
      <source>Stir a few drops of water at a time into two spoons of magnesium chloride until it is like wet sand: a slurry with undissolved salt in it, not a clear solution.</source>
      <translation>Rühren Sie in zwei Löffel Magnesiumchlorid jeweils ein paar Tropfen Wasser, bis es wie nasser Sand ist: ein Brei mit ungelöstem Salz darin, keine klare Lösung.</translation>
    </message>
    <message>
      <source>Take the first cup out and wipe the box dry. Stir water into two spoons of table salt in the same way: wet sand, with undissolved salt in it.</source>
      <translation>Nehmen Sie den ersten Becher heraus, und wischen Sie die Dose trocken. Rühren Sie ebenso Wasser in zwei Löffel Kochsalz: nasser Sand, mit ungelöstem Salz darin.</translation>
    </message>
    <message>
      <source>Nothing holds yet. Accept it, and humidity is put right from now on; it can be withdrawn at any time.</source>
      <translation>Noch gilt nichts. Nehmen Sie es an, und die Luftfeuchte wird von nun an berichtigt; es kann jederzeit zurückgenommen werden.</translation>
    </message>
    <message>
      <source>What you mean to do with the room</source>
      <translation>Was Sie mit dem Raum vorhaben</translation>
    </message>
    <message>
      <source>Something you mean to do</source>
      <translation>Etwas, das Sie vorhaben</translation>
    </message>
    <message>
      <source>Nothing is meant so far. Say what you will have on and when: a heater in the evening, a dehumidifier by night, a fan at noon or none at all. Ready times, the plan, the best hours and warnings ahead then count on it.</source>
      <translation>Noch ist nichts vorgesehen. Sagen Sie, was wann laufen soll: abends ein Heizgerät, nachts ein Entfeuchter, mittags ein Ventilator oder gar keiner. Bereit-Zeiten, Plan, beste Stunden und Warnungen im Voraus rechnen dann damit.</translation>
    </message>
    <message>
      <source>studiowatch switches nothing on or off: you do. Take away here what you will not do after all.</source>
      <translation>studiowatch schaltet nichts ein oder aus: Das tun Sie. Streichen Sie hier, was Sie doch nicht tun.</translation>
    </message>
    <message>
      <source>An end that is not later than the beginning is on the next day.</source>
      <translation>Ein Ende, das nicht nach dem Beginn liegt, ist am nächsten Tag.</translation>
    </message>
    <message>
      <source>once</source>
      <translation>einmal</translation>
    </message>
    <message>
      <source>2 days in a row</source>
      <translation>2 Tage hintereinander</translation>
    </message>
    <message>
      <source>3 days in a row</source>
      <translation>3 Tage hintereinander</translation>
    </message>
    <message>
      <source>7 days in a row</source>
      <translation>7 Tage hintereinander</translation>
    </message>
    <message>
      <source>every day from then on</source>
      <translation>von da an jeden Tag</translation>
    </message>
    <message>
      <source>Counted in: {intentions}</source>
      <translation>Eingerechnet: {intentions}</translation>
    </message>
    <message>
      <source>Heater on</source>
      <translation>Heizgerät an</translation>
    </message>
    <message>
      <source>Set to, {unit}</source>
      <translation>Eingestellt auf, {unit}</translation>
    </message>
    <message>
      <source>Dehumidifier on</source>
      <translation>Entfeuchter an</translation>
    </message>
    <message>
      <source>Set to, % humidity</source>
      <translation>Eingestellt auf, % Luftfeuchte</translation>
    </message>
    <message>
      <source>Fan on</source>
      <translation>Ventilator an</translation>
    </message>
    <message>
      <source>Air at the pieces, {unit}</source>
      <translation>Luft an den Bildern, {unit}</translation>
    </message>
    <message>
      <source>Fan stays off</source>
      <translation>Ventilator bleibt aus</translation>
    </message>
    <message>
      <source>It begins and ends at the same time: choose another end.</source>
      <translation>Es beginnt und endet zur selben Zeit: Wählen Sie ein anderes Ende.</translation>
    </message>
    <message>
      <source>The air speed</source>
      <translation>Die Luftgeschwindigkeit</translation>
    </message>
    <message>
      <source>The temperature</source>
      <translation>Die Temperatur</translation>
    </message>
    <message>
      <source>The humidity</source>
      <translation>Die Luftfeuchte</translation>
    </message>
    <message>
      <source>to do</source>
      <translation>zu tun</translation>
    </message>
    <message>
      <source>resting</source>
      <translation>ruht</translation>
    </message>
    <message>
      <source>done</source>
      <translation>getan</translation>
    </message>
    <message>
      <source>do it again</source>
      <translation>noch einmal tun</translation>
    </message>
    <message>
      <source>{missing} of {all} not seen to yet</source>
      <translation>{missing} von {all} noch nicht erledigt</translation>
    </message>
    <message>
      <source>{amount} on {title}</source>
      <translation>{amount} auf {title}</translation>
    </message>
    <message>
      <source>Pour {volume} or {weight} on {title}</source>
      <translation>{volume} oder {weight} auf {title} gießen</translation>
    </message>
    <message>
      <source>Pour {volume} or {weight} on each panel of {title}</source>
      <translation>{volume} oder {weight} auf jede Tafel von {title} gießen</translation>
    </message>
    <message>
      <source>Too long ago: do it again</source>
      <translation>Zu lange her: noch einmal tun</translation>
    </message>
    <message>
      <source>Ready time moved from {earlier} to {later}</source>
      <translation>Bereit-Zeit von {earlier} auf {later} verschoben</translation>
    </message>
    <message numerus="yes">
      <source>{coat}: {times} × the sheet's time here, {n} tests</source>
      <translation>
        <numerusform>{coat}: hier {times} × die Zeit des Datenblatts, {n} Probe</numerusform>
        <numerusform>{coat}: hier {times} × die Zeit des Datenblatts, {n} Proben</numerusform>
      </translation>
    </message>
    <message>
      <source>Ready time in sight now: {time}</source>
      <translation>Bereit-Zeit jetzt in Sicht: {time}</translation>
    </message>
    <message>
      <source>Ready time was {time}, none is in sight now</source>
      <translation>Bereit-Zeit war {time}, jetzt ist keine in Sicht</translation>
    </message>
    <message>
      <source>a grey veil over the dark colours that stays</source>
      <translation>ein grauer Schleier über den dunklen Farben, der bleibt</translation>
    </message>
    <message>
      <source>Touch at the edge, with a clean dry finger. What is it like?</source>
      <translation>Berühren Sie es am Rand, mit einem sauberen, trockenen Finger. Wie ist es?</translation>
    </message>
    <message>
      <source>Tacky</source>
      <translation>Klebrig</translation>
    </message>
    <message>
      <source>Dry</source>
      <translation>Trocken</translation>
    </message>
    <message>
      <source>Still milky</source>
      <translation>Noch milchig</translation>
    </message>
    <message>
      <source>Clear</source>
      <translation>Klar</translation>
    </message>
    <message>
      <source>a light touch at the edge sticks</source>
      <translation>eine leichte Berührung am Rand klebt</translation>
    </message>
    <message>
      <source>a light touch at the edge leaves no mark</source>
      <translation>eine leichte Berührung am Rand lässt keine Spur</translation>
    </message>
    <message>
      <source>a veil over the dark colours</source>
      <translation>ein Schleier über den dunklen Farben</translation>
    </message>
    <message>
      <source>dark colours look as dark as before</source>
      <translation>dunkle Farben sind so dunkel wie zuvor</translation>
    </message>
    <message>
      <source>dry to the touch</source>
      <translation>grifffest</translation>
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
      <source>dull, blushed</source>
      <translation>stumpf, weiß angelaufen</translation>
    </message>
    <message>
      <source>It should still be wet: a fingertip would mark it. Look, do not touch.</source>
      <translation>Sie sollte noch nass sein: Eine Fingerspitze ließe eine Spur. Ansehen, nicht berühren.</translation>
    </message>
    <message>
      <source>It should still be wet until about {time}: a fingertip would mark it. Look, do not touch.</source>
      <translation>Sie sollte noch nass sein bis etwa {time}: Eine Fingerspitze ließe eine Spur. Ansehen, nicht berühren.</translation>
    </message>
    <message>
      <source>since {time}</source>
      <translation>seit {time}</translation>
    </message>
    <message>
      <source>heard</source>
      <translation>gehört</translation>
    </message>
    <message>
      <source>put off until {time}</source>
      <translation>verschoben bis {time}</translation>
    </message>
    <message>
      <source>no coat was wet</source>
      <translation>keine Schicht war nass</translation>
    </message>
    <message>
      <source>Air is moving over</source>
      <translation>Luft bewegt sich über</translation>
    </message>
    <message>
      <source>Air moved over</source>
      <translation>Luft bewegte sich über</translation>
    </message>
    <message>
      <source>It is getting cold</source>
      <translation>Es wird kalt</translation>
    </message>
    <message>
      <source>It was getting cold</source>
      <translation>Es wurde kalt</translation>
    </message>
    <message>
      <source>Too cold</source>
      <translation>Zu kalt</translation>
    </message>
    <message>
      <source>It was too cold</source>
      <translation>Es war zu kalt</translation>
    </message>
    <message>
      <source>It is getting damp</source>
      <translation>Es wird feucht</translation>
    </message>
    <message>
      <source>It was getting damp</source>
      <translation>Es wurde feucht</translation>
    </message>
    <message>
      <source>Too damp</source>
      <translation>Zu feucht</translation>
    </message>
    <message>
      <source>It was too damp</source>
      <translation>Es war zu feucht</translation>
    </message>
    <message>
      <source>The dew point is near</source>
      <translation>Der Taupunkt ist nahe</translation>
    </message>
    <message>
      <source>The dew point was near</source>
      <translation>Der Taupunkt war nahe</translation>
    </message>
    <message>
      <source>Water may settle</source>
      <translation>Wasser kann sich</translation>
    </message>
    <message>
      <source>Water may have settled</source>
      <translation>Wasser konnte sich</translation>
    </message>
    <message>
      <source>The board is silent</source>
      <translation>Die Platine ist stumm</translation>
    </message>
    <message>
      <source>The board was silent</source>
      <translation>Die Platine war stumm</translation>
    </message>
    <message>
      <source>The room was not read since</source>
      <translation>Der Raum wurde seit</translation>
    </message>
    <message>
      <source>The room was not read after</source>
      <translation>Der Raum wurde nach</translation>
    </message>
    <message>
      <source>A reading cannot be right</source>
      <translation>Ein Messwert kann nicht stimmen</translation>
    </message>
    <message>
      <source>A reading could not be right</source>
      <translation>Ein Messwert konnte nicht stimmen</translation>
    </message>
    <message>
      <source>dark colours as deep as before, all over</source>
      <translation>dunkle Farben so tief wie zuvor, überall</translation>
    </message>
    <message>
      <source>a white veil over the whole face</source>
      <translation>ein weißer Schleier über der ganzen Fläche</translation>
    </message>
    <message>
      <source>white veils here and there</source>
      <translation>weiße Schleier hier und da</translation>
    </message>
    <message>
      <source>dark colours greyed, no veil to be seen on the light ones</source>
      <translation>dunkle Farben vergraut, auf den hellen kein Schleier zu sehen</translation>
    </message>
    <message>
      <source>a dusty bloom, or it crumbles under a nail</source>
      <translation>ein staubiger Belag, oder es bröselt unter dem Nagel</translation>
    </message>
    <message>
      <source>dust, hair or bubbles dried in</source>
      <translation>Staub, Haare oder Blasen eingetrocknet</translation>
    </message>
    <message>
      <source>The watch has stopped</source>
      <translation>Die Wache steht still</translation>
    </message>
    <message>
      <source>Nothing new has come from the watch for half a minute: these figures are old.</source>
      <translation>Seit einer halben Minute ist nichts Neues von der Wache gekommen: Diese Werte sind alt.</translation>
    </message>
    <message>
      <source>Close studiowatch and start it again; look after wet coats yourself until then.</source>
      <translation>Schließen Sie studiowatch und starten Sie es neu; sehen Sie bis dahin selbst nach nassen Schichten.</translation>
    </message>
    <message>
      <source>The watch has not started</source>
      <translation>Die Wache ist nicht gestartet</translation>
    </message>
    <message>
      <source>Nothing has come from the watch since the window was opened, half a minute ago or more.</source>
      <translation>Seit das Fenster geöffnet wurde, vor einer halben Minute oder mehr, ist nichts von der Wache gekommen.</translation>
    </message>
    <message>
      <source>No paint layer recorded</source>
      <translation>Keine Farbschicht aufgezeichnet</translation>
    </message>
    <message>
      <source>No coats to come are listed. Add them now, or press again to register without.</source>
      <translation>Es sind keine kommenden Schichten eingetragen. Fügen Sie sie jetzt hinzu, oder drücken Sie noch einmal, um ohne sie einzutragen.</translation>
    </message>
    <message>
      <source>Rectangle</source>
      <translation>Rechteck</translation>
    </message>
    <message>
      <source>Round or oval</source>
      <translation>Rund oder oval</translation>
    </message>
    <message>
      <source>Set of panels</source>
      <translation>Mehrere Tafeln</translation>
    </message>
    <message>
      <source>Laid how thick, {unit}</source>
      <translation>Wie dick aufgetragen, {unit}</translation>
    </message>
    <message>
      <source>{area} m² to be coated</source>
      <translation>{area} m² zu beschichten</translation>
    </message>
    <message>
      <source>Width</source>
      <translation>Breite</translation>
    </message>
    <message>
      <source>Height</source>
      <translation>Höhe</translation>
    </message>
    <message>
      <source>Across</source>
      <translation>Quer</translation>
    </message>
    <message>
      <source>Top to bottom</source>
      <translation>Von oben bis unten</translation>
    </message>
    <message>
      <source>Width of each</source>
      <translation>Breite jeder Tafel</translation>
    </message>
    <message>
      <source>Height of each</source>
      <translation>Höhe jeder Tafel</translation>
    </message>
    <message>
      <source>“{name}”</source>
      <translation>„{name}“</translation>
    </message>
    <message>
      <source>The paint layer is recorded as laid: take it back under Corrections if it was not.</source>
      <translation>Die Farbschicht ist als aufgetragen aufgezeichnet: Nehmen Sie sie unter Berichtigungen zurück, wenn das nicht stimmt.</translation>
    </message>
    <message>
      <source>The title is empty: type what you call the piece, such as Kiln Light.</source>
      <translation>Der Titel ist leer: Tippen Sie ein, wie Sie das Bild nennen, etwa Kiln Light.</translation>
    </message>
    <message>
      <source>The title has {count} letters: shorten it to {most} or fewer.</source>
      <translation>Der Titel hat {count} Zeichen: Kürzen Sie ihn auf {most} oder weniger.</translation>
    </message>
    <message>
      <source>The width</source>
      <translation>Die Breite</translation>
    </message>
    <message>
      <source>The height</source>
      <translation>Die Höhe</translation>
    </message>
    <message>
      <source>The set has {count} panels: choose 1 to {most}.</source>
      <translation>Es sind {count} Tafeln: Wählen Sie 1 bis {most}.</translation>
    </message>
    <message>
      <source>The notes have {count} letters: shorten them to {most} or fewer.</source>
      <translation>Die Notizen haben {count} Zeichen: Kürzen Sie sie auf {most} oder weniger.</translation>
    </message>
    <message>
      <source>The paint was finished in the future: choose a time that has passed.</source>
      <translation>Die Farbe wäre in der Zukunft fertig geworden: Wählen Sie eine vergangene Zeit.</translation>
    </message>
    <message>
      <source>The paint's thickness</source>
      <translation>Die Dicke der Farbe</translation>
    </message>
    <message>
      <source>4 days</source>
      <translation>4 Tage</translation>
    </message>
    <message>
      <source>2 weeks</source>
      <translation>2 Wochen</translation>
    </message>
    <message>
      <source>5 weeks</source>
      <translation>5 Wochen</translation>
    </message>
    <message>
      <source>fit to handle by {time}</source>
      <translation>anfassbar ab {time}</translation>
    </message>
    <message>
      <source>fit to wrap by {time}</source>
      <translation>verpackbar ab {time}</translation>
    </message>
    <message>
      <source>fit to ship by {time}</source>
      <translation>versandfertig ab {time}</translation>
    </message>
    <message>
      <source>lay {coat} {time}</source>
      <translation>{coat} auftragen {time}</translation>
    </message>
    <message>
      <source>{coat} {time}</source>
      <translation>{coat} {time}</translation>
    </message>
    <message>
      <source>due</source>
      <translation>Liefertermin</translation>
    </message>
    <message>
      <source>The plan is being made.</source>
      <translation>Der Plan wird gemacht.</translation>
    </message>
    <message>
      <source>No coat is to come. Add one, or apply a recipe.</source>
      <translation>Keine Schicht steht aus. Fügen Sie eine hinzu, oder wenden Sie ein Rezept an.</translation>
    </message>
    <message>
      <source>Fit to handle, no time in sight</source>
      <translation>Anfassbar: keine Zeit in Sicht</translation>
    </message>
    <message>
      <source>Fit to handle by {time}</source>
      <translation>Anfassbar ab {time}</translation>
    </message>
    <message>
      <source>Fit to handle by {time}, perhaps {early}</source>
      <translation>Anfassbar ab {time}, vielleicht {early}</translation>
    </message>
    <message>
      <source>Fit to wrap, no time in sight</source>
      <translation>Verpackbar: keine Zeit in Sicht</translation>
    </message>
    <message>
      <source>Fit to wrap by {time}</source>
      <translation>Verpackbar ab {time}</translation>
    </message>
    <message>
      <source>Fit to wrap by {time}, perhaps {early}</source>
      <translation>Verpackbar ab {time}, vielleicht {early}</translation>
    </message>
    <message>
      <source>Fit to ship, no time in sight</source>
      <translation>Versandfertig: keine Zeit in Sicht</translation>
    </message>
    <message>
      <source>Fit to ship by {time}</source>
      <translation>Versandfertig ab {time}</translation>
    </message>
    <message>
      <source>Fit to ship by {time}, perhaps {early}</source>
      <translation>Versandfertig ab {time}, vielleicht {early}</translation>
    </message>
    <message>
      <source>no day due</source>
      <translation>kein Liefertermin</translation>
    </message>
    <message>
      <source>due {day}</source>
      <translation>bis {day}</translation>
    </message>
    <message>
      <source>prepare from {time}</source>
      <translation>vorbereiten ab {time}</translation>
    </message>
    <message>
      <source>lay {time}; perhaps ready from {early}</source>
      <translation>auftragen {time}; vielleicht bereit ab {early}</translation>
    </message>
    <message numerus="yes">
      <source>{n} things to look at</source>
      <translation>
        <numerusform>{n} Punkt zum Ansehen</numerusform>
        <numerusform>{n} Punkte zum Ansehen</numerusform>
      </translation>
    </message>
    <message>
      <source>date to come</source>
      <translation>Termin folgt</translation>
    </message>
    <message>
      <source>no time in sight</source>
      <translation>keine Zeit in Sicht</translation>
    </message>
    <message>
      <source>lay {time}</source>
      <translation>auftragen {time}</translation>
    </message>
    <message>
      <source>Prepare to lay a coat</source>
      <translation>Auftragen einer Schicht vorbereiten</translation>
    </message>
    <message>
      <source>all is ready</source>
      <translation>alles ist bereit</translation>
    </message>
    <message>
      <source>missed, was due {time}</source>
      <translation>versäumt, war fällig {time}</translation>
    </message>
    <message>
      <source>now, since {time}</source>
      <translation>jetzt, seit {time}</translation>
    </message>
    <message>
      <source>in {length}, {time}</source>
      <translation>in {length}, {time}</translation>
    </message>
    <message>
      <source>put off, {time}</source>
      <translation>verschoben, {time}</translation>
    </message>
    <message>
      <source>Nothing to do at the rack</source>
      <translation>Am Gestell ist nichts zu tun</translation>
    </message>
    <message>
      <source>Next: lay a coat on {title}</source>
      <translation>Als Nächstes: Schicht auftragen auf {title}</translation>
    </message>
    <message>
      <source>Prepare: lay a coat on {title}</source>
      <translation>Vorbereiten: Schicht auftragen auf {title}</translation>
    </message>
    <message>
      <source>Quiet from {start} to {end}</source>
      <translation>Ruhe von {start} bis {end}</translation>
    </message>
    <message>
      <source>No quiet hours</source>
      <translation>Keine Ruhezeiten</translation>
    </message>
    <message>
      <source>fit to wrap</source>
      <translation>verpackbar</translation>
    </message>
    <message>
      <source>drying, {age}</source>
      <translation>trocknet, {age}</translation>
    </message>
    <message>
      <source>{stage} {time}</source>
      <translation>{stage} {time}</translation>
    </message>
    <message>
      <source>perhaps from {time}</source>
      <translation>vielleicht ab {time}</translation>
    </message>
    <message>
      <source>{coat} · {stage} since {time}</source>
      <translation>{coat} · {stage} seit {time}</translation>
    </message>
    <message>
      <source>drying through, day {number}</source>
      <translation>trocknet durch, Tag {number}</translation>
    </message>
    <message>
      <source>from {time}</source>
      <translation>ab {time}</translation>
    </message>
    <message>
      <source>laid {times} × as thick as the sheet says</source>
      <translation>{times} × so dick aufgetragen, wie das Datenblatt sagt</translation>
    </message>
    <message>
      <source>perhaps ready already</source>
      <translation>vielleicht schon bereit</translation>
    </message>
    <message>
      <source>No coat laid yet</source>
      <translation>Noch keine Schicht aufgetragen</translation>
    </message>
    <message>
      <source>{coat} · not watched</source>
      <translation>{coat} · nicht bewacht</translation>
    </message>
    <message>
      <source>{coat} · {surface} and milky, {age}</source>
      <translation>{coat} · {surface} und milchig, {age}</translation>
    </message>
    <message>
      <source>{coat} · {surface}, {age}</source>
      <translation>{coat} · {surface}, {age}</translation>
    </message>
    <message>
      <source>{coat} · found {finding}, {time}</source>
      <translation>{coat} · {time} befunden: {finding}</translation>
    </message>
    <message>
      <source>{coat} · dry, still milky</source>
      <translation>{coat} · trocken, noch milchig</translation>
    </message>
    <message>
      <source>wrap from {time}</source>
      <translation>verpacken ab {time}</translation>
    </message>
    <message>
      <source>not in this room as it is</source>
      <translation>nicht in diesem Raum, wie er ist</translation>
    </message>
    <message>
      <source>covered</source>
      <translation>abgedeckt</translation>
    </message>
    <message>
      <source>test again now</source>
      <translation>neue Probe jetzt</translation>
    </message>
    <message>
      <source>Hold the hygrometer near the pieces, out of the sun and off the wall, until it stands still. What you type holds until the next reading: the older it is, the wider the ready times.</source>
      <translation>Halten Sie das Hygrometer in die Nähe der Bilder, nicht in die Sonne und nicht an die Wand, bis es stillsteht. Was Sie eintippen, gilt bis zum nächsten Messwert: Je älter es ist, desto weiter sind die Bereit-Zeiten gefasst.</translation>
    </message>
    <message>
      <source>Air speed is not measured: hang a strip of tissue beside the pieces and see whether it moves.</source>
      <translation>Die Luftgeschwindigkeit wird nicht gemessen: Hängen Sie einen Streifen Seidenpapier neben die Bilder, und sehen Sie, ob er sich bewegt.</translation>
    </message>
    <message>
      <source>not looked</source>
      <translation>nicht nachgesehen</translation>
    </message>
    <message>
      <source>the tissue hangs still</source>
      <translation>das Papier hängt still</translation>
    </message>
    <message>
      <source>the tissue moves</source>
      <translation>das Papier bewegt sich</translation>
    </message>
    <message>
      <source>air not looked at</source>
      <translation>Luft nicht beobachtet</translation>
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
      <source>That is {celsius} °C, or {fahrenheit} °F: press again if the room is like that.</source>
      <translation>Das sind {celsius} °C oder {fahrenheit} °F: Drücken Sie noch einmal, wenn der Raum so ist.</translation>
    </message>
    <message>
      <source>Recorded: {temperature}, {humidity} %, {air}</source>
      <translation>Aufgezeichnet: {temperature}, {humidity} %, {air}</translation>
    </message>
    <message>
      <source>The hygrometer was read in the future: choose a time that has passed.</source>
      <translation>Das Hygrometer wäre in der Zukunft abgelesen: Wählen Sie eine vergangene Zeit.</translation>
    </message>
    <message>
      <source>Nothing was recorded on it yet.</source>
      <translation>Zu diesem Bild ist noch nichts aufgezeichnet.</translation>
    </message>
    <message>
      <source>Nothing was corrected so far.</source>
      <translation>Bisher wurde nichts berichtigt.</translation>
    </message>
    <message>
      <source>came out {outcome}, seen {time}</source>
      <translation>wurde {outcome}, gesehen {time}</translation>
    </message>
    <message>
      <source>{thickness} wet</source>
      <translation>{thickness} nass</translation>
    </message>
    <message>
      <source>laid {time}</source>
      <translation>aufgetragen {time}</translation>
    </message>
    <message>
      <source>came out {outcome}</source>
      <translation>wurde {outcome}</translation>
    </message>
    <message>
      <source>as thick as its sheet says</source>
      <translation>so dick, wie das Datenblatt sagt</translation>
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
      <source>corrected {time}: {words}</source>
      <translation>berichtigt {time}: {words}</translation>
    </message>
    <message>
      <source>{found} {time}</source>
      <translation>{found} {time}</translation>
    </message>
    <message>
      <source>In 10 min</source>
      <translation>In 10 min</translation>
    </message>
    <message>
      <source>In 30 min</source>
      <translation>In 30 min</translation>
    </message>
    <message>
      <source>Not until the coat is dry</source>
      <translation>Erst wenn die Schicht trocken ist</translation>
    </message>
    <message>
      <source>coat below was</source>
      <translation>Schicht darunter war</translation>
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
      <source>model says</source>
      <translation>Modell sagt</translation>
    </message>
    <message>
      <source>not known</source>
      <translation>nicht bekannt</translation>
    </message>
    <message numerus="yes">
      <source>Weighed by what {n} coats here taught. Likely is not proven.</source>
      <translation>
        <numerusform>Gewichtet nach dem, was {n} Schicht hier gelehrt hat. Wahrscheinlich ist nicht bewiesen.</numerusform>
        <numerusform>Gewichtet nach dem, was {n} Schichten hier gelehrt haben. Wahrscheinlich ist nicht bewiesen.</numerusform>
      </translation>
    </message>
    <message>
      <source>Would it cloud?</source>
      <translation>Würde sie trüb?</translation>
    </message>
    <message>
      <source>Why did it come out clear?</source>
      <translation>Warum wurde sie klar?</translation>
    </message>
    <message>
      <source>Why did it cloud?</source>
      <translation>Warum trüb?</translation>
    </message>
    <message>
      <source>none</source>
      <comment>coat</comment>
      <translation>keine</translation>
    </message>
    <message>
      <source>Weighed by common judgement alone: no coat here has a recorded outcome yet. Likely is not proven. Record how each came out (Ctrl+O): it learns from that.</source>
      <translation>Nur nach allgemeinem Ermessen gewichtet: Noch hat hier keine Schicht ein aufgezeichnetes Ergebnis. Wahrscheinlich ist nicht bewiesen. Zeichnen Sie auf, wie jede geworden ist (Strg+O): Daraus wird gelernt.</translation>
    </message>
    <message>
      <source>how it came out is not recorded</source>
      <translation>ihr Ergebnis ist nicht aufgezeichnet</translation>
    </message>
    <message>
      <source>recorded {outcome}</source>
      <translation>aufgezeichnet: {outcome}</translation>
    </message>
    <message>
      <source>recorded {outcome} {time}</source>
      <translation>aufgezeichnet: {outcome} {time}</translation>
    </message>
    <message>
      <source>As it was</source>
      <translation>So, wie es war</translation>
    </message>
    <message>
      <source>from {start} to {end}</source>
      <translation>von {start} bis {end}</translation>
    </message>
    <message>
      <source>sheet's least film temperature {limit}</source>
      <translation>kleinste Filmtemperatur des Datenblatts {limit}</translation>
    </message>
    <message>
      <source>damp for it above {limit} %</source>
      <translation>feucht für sie über {limit} %</translation>
    </message>
    <message>
      <source>temperature</source>
      <translation>Temperatur</translation>
    </message>
    <message>
      <source>This coat beside {clear} that came out clear and {clouded} that clouded</source>
      <translation>Diese Schicht neben {clear}, die klar wurden, und {clouded}, die trüb wurden</translation>
    </message>
    <message>
      <source>humidity</source>
      <translation>Luftfeuchte</translation>
    </message>
    <message>
      <source>held in each coat</source>
      <translation>enthalten in jeder Schicht</translation>
    </message>
    <message>
      <source>{hours} h after laying</source>
      <translation>{hours} h nach dem Auftragen</translation>
    </message>
    <message>
      <source>{amount} g/m² sealed in</source>
      <translation>{amount} g/m² eingeschlossen</translation>
    </message>
    <message>
      <source>solvent</source>
      <translation>Lösemittel</translation>
    </message>
    <message>
      <source>water and solvent</source>
      <translation>Wasser und Lösemittel</translation>
    </message>
    <message>
      <source>{amount} g/m² of {fluid} sealed in when laid, {left} left</source>
      <translation>{amount} g/m² {fluid} beim Auftragen eingeschlossen, {left} übrig</translation>
    </message>
    <message>
      <source>may have blushed from {time}</source>
      <translation>kann weiß angelaufen sein ab {time}</translation>
    </message>
    <message>
      <source>A coat now would seal in {amount} g/m² of {fluid}.</source>
      <translation>Eine Schicht jetzt würde {amount} g/m² {fluid} einschließen.</translation>
    </message>
    <message>
      <source>{amount} g/m² of {fluid} sealed in when laid, none left</source>
      <translation>{amount} g/m² {fluid} beim Auftragen eingeschlossen, nichts übrig</translation>
    </message>
    <message>
      <source>about {amount} g/m² of solvent taken up by the bare support when laid</source>
      <translation>etwa {amount} g/m² Lösemittel beim Auftragen vom rohen Bildträger aufgesogen</translation>
    </message>
    <message>
      <source>about {amount} g/m² of water taken up by the bare support when laid</source>
      <translation>etwa {amount} g/m² Wasser beim Auftragen vom rohen Bildträger aufgesogen</translation>
    </message>
    <message>
      <source>set to touch</source>
      <translation>angezogen</translation>
    </message>
    <message>
      <source>dust-free</source>
      <translation>staubtrocken</translation>
    </message>
    <message>
      <source>tack-free</source>
      <translation>klebfrei</translation>
    </message>
    <message>
      <source>dry to touch</source>
      <translation>grifffest</translation>
    </message>
    <message>
      <source>dry to recoat</source>
      <translation>überarbeitbar</translation>
    </message>
    <message>
      <source>dry hard</source>
      <translation>durchgehärtet</translation>
    </message>
    <message>
      <source>dry through</source>
      <translation>durchgetrocknet</translation>
    </message>
    <message>
      <source>cured</source>
      <translation>ausgehärtet</translation>
    </message>
    <message>
      <source>dry</source>
      <translation>trocken</translation>
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
      <source>waterborne</source>
      <translation>wasserbasiert</translation>
    </message>
    <message>
      <source>solventborne</source>
      <translation>lösemittelhaltig</translation>
    </message>
    <message>
      <source>gloss</source>
      <translation>glänzend</translation>
    </message>
    <message>
      <source>satin</source>
      <translation>seidenmatt</translation>
    </message>
    <message>
      <source>matt</source>
      <translation>matt</translation>
    </message>
    <message>
      <source>of 1</source>
      <translation>von 1</translation>
    </message>
    <message>
      <source>min</source>
      <translation>min</translation>
    </message>
    <message>
      <source>h</source>
      <translation>h</translation>
    </message>
    <message>
      <source>days</source>
      <translation>Tage</translation>
    </message>
    <message>
      <source>weeks</source>
      <translation>Wochen</translation>
    </message>
    <message>
      <source>coats</source>
      <translation>Schichten</translation>
    </message>
    <message>
      <source>ft²/gal (US)</source>
      <translation>ft²/gal (US)</translation>
    </message>
    <message>
      <source>lb/US gal</source>
      <translation>lb/US-gal</translation>
    </message>
    <message>
      <source>Solids, of the volume</source>
      <translation>Feststoffe, vom Volumen</translation>
    </message>
    <message>
      <source>Wet film, or how far it spreads</source>
      <translation>Nassfilm, oder wie weit es reicht</translation>
    </message>
    <message>
      <source>one coat as the sheet recommends it</source>
      <translation>eine Schicht, wie das Datenblatt sie empfiehlt</translation>
    </message>
    <message>
      <source>Dry film</source>
      <translation>Trockenfilm</translation>
    </message>
    <message>
      <source>wet or dry, or both</source>
      <translation>nass oder trocken, oder beides</translation>
    </message>
    <message>
      <source>Density</source>
      <translation>Dichte</translation>
    </message>
    <message>
      <source>Dry to touch after</source>
      <translation>Grifffest nach</translation>
    </message>
    <message>
      <source>Clear after</source>
      <translation>Klar nach</translation>
    </message>
    <message>
      <source>water-borne coats</source>
      <translation>wasserbasierte Schichten</translation>
    </message>
    <message>
      <source>Next coat after</source>
      <translation>Nächste Schicht nach</translation>
    </message>
    <message>
      <source>Cured after</source>
      <translation>Ausgehärtet nach</translation>
    </message>
    <message>
      <source>Least film-forming temperature</source>
      <translation>Kleinste Filmbildetemperatur</translation>
    </message>
    <message>
      <source>MFFT, ISO 2115</source>
      <translation>MFFT, ISO 2115</translation>
    </message>
    <message>
      <source>Lay at, from</source>
      <translation>Auftragen bei, von</translation>
    </message>
    <message>
      <source>Lay at, up to</source>
      <translation>Auftragen bei, bis</translation>
    </message>
    <message>
      <source>Relative humidity up to</source>
      <translation>Relative Luftfeuchte bis</translation>
    </message>
    <message>
      <source>Flash point</source>
      <translation>Flammpunkt</translation>
    </message>
    <message>
      <source>solvent-borne</source>
      <translation>lösemittelhaltig</translation>
    </message>
    <message>
      <source>Coats with matting agent, at most</source>
      <translation>Schichten mit Mattierungsmittel, höchstens</translation>
    </message>
    <message>
      <source>Water-borne</source>
      <translation>Wasserbasiert</translation>
    </message>
    <message>
      <source>Solvent-borne</source>
      <translation>Lösemittelhaltig</translation>
    </message>
    <message>
      <source>Paint</source>
      <translation>Farbe</translation>
    </message>
    <message>
      <source>no sheen named</source>
      <translation>kein Glanz genannt</translation>
    </message>
    <message>
      <source>Gloss</source>
      <translation>Glänzend</translation>
    </message>
    <message>
      <source>Satin</source>
      <translation>Seidenmatt</translation>
    </message>
    <message>
      <source>Matt</source>
      <translation>Matt</translation>
    </message>
    <message>
      <source>The title is empty: type what the bottle is called.</source>
      <translation>Der Titel ist leer: Tippen Sie ein, wie die Flasche heißt.</translation>
    </message>
    <message>
      <source>Give both temperatures to lay it at, or neither.</source>
      <translation>Geben Sie beide Temperaturen zum Auftragen an, oder keine.</translation>
    </message>
    <message>
      <source>“{typed}” is no number that can stand here: type one, such as 30.</source>
      <translation>„{typed}“ ist keine Zahl, die hier stehen kann: Tippen Sie eine ein, etwa 30.</translation>
    </message>
    <message>
      <source>one coat {wet} wet, {dry} dry, {solids} % solids</source>
      <translation>eine Schicht {wet} nass, {dry} trocken, {solids} % Feststoffe</translation>
    </message>
    <message>
      <source>next coat after {hours} h, cured after {days} days</source>
      <translation>nächste Schicht nach {hours} h, ausgehärtet nach {days} Tagen</translation>
    </message>
    <message>
      <source>dry to touch after {minutes} min</source>
      <translation>grifffest nach {minutes} min</translation>
    </message>
    <message>
      <source>dry to touch after {minutes} min, clear after {hours} h</source>
      <translation>grifffest nach {minutes} min, klar nach {hours} h</translation>
    </message>
    <message>
      <source>forms a film from {temperature} on</source>
      <translation>bildet einen Film ab {temperature}</translation>
    </message>
    <message>
      <source>to be laid at {low} to {high}</source>
      <translation>aufzutragen bei {low} bis {high}</translation>
    </message>
    <message>
      <source>up to {limit} % relative humidity</source>
      <translation>bis {limit} % relative Luftfeuchte</translation>
    </message>
    <message numerus="yes">
      <source>{n} days</source>
      <translation>
        <numerusform>{n} Tag</numerusform>
        <numerusform>{n} Tage</numerusform>
      </translation>
    </message>
    <message>
      <source>{length} ago</source>
      <translation>vor {length}</translation>
    </message>
    <message>
      <source>{weekday} {time}</source>
      <translation>{weekday} {time}</translation>
    </message>
    <message>
      <source>just now</source>
      <translation>gerade eben</translation>
    </message>
    <message numerus="yes">
      <source>{n} days ago</source>
      <translation>
        <numerusform>vor {n} Tag</numerusform>
        <numerusform>vor {n} Tagen</numerusform>
      </translation>
    </message>
    <message>
      <source>act now</source>
      <translation>jetzt handeln</translation>
    </message>
    <message>
      <source>caution</source>
      <translation>Vorsicht</translation>
    </message>
    <message>
      <source>calm</source>
      <translation>ruhig</translation>
    </message>
    <message>
      <source>{grams} g of solvent, assuming a room of {volume} m³ with its windows shut.</source>
      <translation>{grams} g Lösemittel, in einem angenommenen Raum von {volume} m³ mit geschlossenen Fenstern.</translation>
    </message>
    <message>
      <source>Move a slider: every piece's ready time moves with it. Nothing in the room or the records changes.</source>
      <translation>Schieben Sie einen Regler: Die Bereit-Zeiten aller Bilder gehen mit. Am Raum und an den Aufzeichnungen ändert sich nichts.</translation>
    </message>
    <message>
      <source>No piece on the rack waits for anything. Lay a coat, and ask here what another room would make of it.</source>
      <translation>Kein Bild auf dem Gestell wartet auf etwas. Tragen Sie eine Schicht auf, und fragen Sie hier, was ein anderer Raum daraus machen würde.</translation>
    </message>
    <message>
      <source>Reading how the coats stand…</source>
      <translation>Der Stand der Schichten wird gelesen …</translation>
    </message>
    <message>
      <source>Clear by {time}</source>
      <translation>Klar bis {time}</translation>
    </message>
    <message>
      <source>Dry to touch by {time}</source>
      <translation>Grifffest bis {time}</translation>
    </message>
    <message>
      <source>Next coat from {time}</source>
      <translation>Nächste Schicht ab {time}</translation>
    </message>
    <message>
      <source>Cured by {time}</source>
      <translation>Ausgehärtet bis {time}</translation>
    </message>
    <message>
      <source>Clear: not in sight</source>
      <translation>Klar: nicht in Sicht</translation>
    </message>
    <message>
      <source>Dry to touch: not in sight</source>
      <translation>Grifffest: nicht in Sicht</translation>
    </message>
    <message>
      <source>Next coat: not in sight</source>
      <translation>Nächste Schicht: nicht in Sicht</translation>
    </message>
    <message>
      <source>Cured: not in sight</source>
      <translation>Ausgehärtet: nicht in Sicht</translation>
    </message>
    <message>
      <source>as it comes</source>
      <translation>wie sie kommt</translation>
    </message>
    <message>
      <source>nothing on</source>
      <translation>nichts läuft</translation>
    </message>
    <message>
      <source>a fan on</source>
      <translation>Ventilator läuft</translation>
    </message>
    <message>
      <source>6 h</source>
      <translation>6 h</translation>
    </message>
    <message>
      <source>12 h</source>
      <translation>12 h</translation>
    </message>
    <message>
      <source>a day</source>
      <translation>ein Tag</translation>
    </message>
    <message>
      <source>2 days</source>
      <translation>2 Tage</translation>
    </message>
    <message>
      <source>for good</source>
      <translation>auf Dauer</translation>
    </message>
    <message>
      <source>{length} later</source>
      <translation>{length} später</translation>
    </message>
    <message>
      <source>as it is</source>
      <translation>wie es ist</translation>
    </message>
    <message>
      <source>{length} sooner</source>
      <translation>{length} früher</translation>
    </message>
    <message>
      <source>later than is foretold</source>
      <translation>später, als der Ausblick reicht</translation>
    </message>
    <message>
      <source>Cancelled. Nothing was written.</source>
      <translation>Abgebrochen. Es wurde nichts geschrieben.</translation>
    </message>
    <message>
      <source>{count} to look at:</source>
      <translation>{count} Punkte zum Ansehen:</translation>
    </message>
    <message>
      <source>One thing to look at:</source>
      <translation>Ein Punkt zum Ansehen:</translation>
    </message>
    <message>
      <source>{count} to look at, the first {shown} below:</source>
      <translation>{count} Punkte zum Ansehen, die ersten {shown} unten:</translation>
    </message>
  </context>
</TS>
