<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>The sensor's voltage is {given} mV; a number above 0 is needed: check the bead's wires.</source>
      <translation>Die Spannung des Sensors ist {given} mV; gebraucht wird eine Zahl über 0: Prüfen Sie die Drähte der Perle.</translation>
    </message>
    <message>
      <source>The air is at {given}; {low} to {high} is allowed: check the thermometer.</source>
      <translation>Die Luft hat {given}; erlaubt ist {low} bis {high}: Prüfen Sie das Thermometer.</translation>
    </message>
    <message>
      <source>A walk at {speed}: {low} to {high} is allowed; check distance and time.</source>
      <translation>Ein Gang mit {speed}: erlaubt ist {low} bis {high}; prüfen Sie Strecke und Zeit.</translation>
    </message>
    <message>
      <source>Still air was not measured: hold a cup over the bead for half a minute first.</source>
      <translation>Stille Luft wurde nicht gemessen: Halten Sie zuerst eine halbe Minute einen Becher über die Perle.</translation>
    </message>
    <message>
      <source>{needed} walks of different speed are needed; {made} were made.</source>
      <translation>{needed} Gänge mit verschiedener Geschwindigkeit werden gebraucht; gemacht wurden {made}.</translation>
    </message>
    <message>
      <source>The walks at {speeds} {unit} lie too close together; {needed} speeds are needed, each {apart} times the one before or more, such as {slow}, {middle} and {fast}.</source>
      <translation>Die Gänge mit {speeds} {unit} liegen zu nah beieinander; gebraucht werden {needed} Geschwindigkeiten, jede mindestens das {apart}-Fache der vorigen, etwa {slow}, {middle} und {fast}.</translation>
    </message>
    <message>
      <source>The slowest walk was {speed}; one at {limit} or less is needed, since draughts begin there: walk slowly once more.</source>
      <translation>Der langsamste Gang hatte {speed}; gebraucht wird einer mit {limit} oder weniger, denn dort beginnt Zugluft: Gehen Sie noch einmal langsam.</translation>
    </message>
    <message>
      <source>The voltage rose by {rise} mV only from still air to the fastest walk; {needed} mV are needed: check that the bead is warm and its output is joined to A0.</source>
      <translation>Von stiller Luft zum schnellsten Gang stieg die Spannung nur um {rise} mV; gebraucht werden {needed} mV: prüfen Sie, ob die Perle warm ist und ihr Ausgang an A0 liegt.</translation>
    </message>
    <message>
      <source>Still air read {still} mV and the walk at {speed} no more, {signal} mV: keep the cup over the bead for half a minute, and the bead free on the walk.</source>
      <translation>Stille Luft gab {still} mV und der Gang mit {speed} nicht mehr, {signal} mV: Halten Sie den Becher eine halbe Minute über die Perle, und die Perle beim Gehen frei.</translation>
    </message>
    <message>
      <source>The voltage does not rise: {slow_signal} mV at {slow} and {fast_signal} mV at {fast}; walk these again with the bead turned the same way.</source>
      <translation>Die Spannung steigt nicht: {slow_signal} mV bei {slow} und {fast_signal} mV bei {fast}; gehen Sie diese noch einmal, die Perle gleich gehalten.</translation>
    </message>
    <message>
      <source>Good to {slow_share}% at {slow} and {fast_share}% at {fast}.</source>
      <translation>Auf {slow_share} % genau bei {slow} und auf {fast_share} % bei {fast}.</translation>
    </message>
    <message>
      <source>The bead's temperature is {given}; {low} to {high} is allowed: see the bead's own sheet.</source>
      <translation>Die Temperatur der Perle ist {given}; erlaubt ist {low} bis {high}: Sehen Sie in das Datenblatt der Perle.</translation>
    </message>
    <message>
      <source>The walk at {speed} lies {share}% off the law that fits the walks best; at most {most}% is allowed: walk it again, evenly, away from open doors.</source>
      <translation>Der Gang mit {speed} liegt {share} % neben dem Gesetz, das am besten zu den Gängen passt; erlaubt sind höchstens {most} %: Gehen Sie ihn noch einmal, gleichmäßig und fern von offenen Türen.</translation>
    </message>
    <message>
      <source>More walks would narrow that, slow ones above all.</source>
      <translation>Mehr Gänge machten das enger, vor allem langsame.</translation>
    </message>
    <message>
      <source>magnesium chloride</source>
      <translation>Magnesiumchlorid</translation>
    </message>
    <message>
      <source>sodium chloride (table salt)</source>
      <translation>Natriumchlorid (Kochsalz)</translation>
    </message>
    <message>
      <source>The box with {salt} is at {temperature}; the salts are known here from {low} to {high}: move it to a place of that temperature.</source>
      <translation>Die Dose mit {salt} hat {temperature}; die Salze sind hier von {low} bis {high} bekannt: Stellen Sie sie an einen Ort mit dieser Temperatur.</translation>
    </message>
    <message>
      <source>The sensor read {magnesium} %RH over magnesium chloride and {sodium} %RH over sodium chloride, which is the damper one: the salts seem swapped; name them the other way round.</source>
      <translation>Der Sensor las {magnesium} % r. F. über Magnesiumchlorid und {sodium} % r. F. über Natriumchlorid, das das feuchtere ist: die Salze scheinen vertauscht; benennen Sie sie anders herum.</translation>
    </message>
    <message>
      <source>The two readings, {magnesium} and {sodium} %RH, lie too close together for two different salts, which are 42 %RH apart: check what is in each box, and that it is a wet slurry.</source>
      <translation>Die beiden Messwerte, {magnesium} und {sodium} % r. F., liegen zu nah beieinander für zwei verschiedene Salze, die 42 % r. F. trennen: prüfen Sie, was in jeder Dose ist, und ob es ein nasser Brei ist.</translation>
    </message>
    <message>
      <source>The sensor's gain would be {gain}; {low} to {high} is allowed: check both slurries and the seal of the box, and replace the sensor if it comes out so again.</source>
      <translation>Die Steigung des Sensors wäre {gain}; erlaubt ist {low} bis {high}: Prüfen Sie beide Breie und die Dichtung der Dose, und ersetzen Sie den Sensor, wenn es wieder so ausgeht.</translation>
    </message>
    <message>
      <source>The humidity read over {salt} is {given} %RH; 0 to 100 is allowed.</source>
      <translation>Die über {salt} gelesene Luftfeuchte ist {given} % r. F.; erlaubt ist 0 bis 100.</translation>
    </message>
    <message>
      <source>The reading over {salt} lies in the future; both must be from the last {most} h: take it anew.</source>
      <translation>Der Messwert über {salt} liegt in der Zukunft; beide müssen aus den letzten {most} h sein: Messen Sie ihn neu.</translation>
    </message>
    <message>
      <source>The reading over {salt} is {age} h old; both must be from the last {most} h: take it anew.</source>
      <translation>Der Messwert über {salt} ist {age} h alt; beide müssen aus den letzten {most} h sein: Messen Sie ihn neu.</translation>
    </message>
    <message>
      <source>target of the heater</source>
      <translation>Ziel des Heizgeräts</translation>
    </message>
    <message>
      <source>target of the dehumidifier</source>
      <translation>Ziel des Entfeuchters</translation>
    </message>
    <message>
      <source>target of the fan</source>
      <translation>Ziel des Ventilators</translation>
    </message>
    <message>
      <source>end of what is meant to be on</source>
      <translation>Ende dessen, was laufen soll</translation>
    </message>
    <message>
      <source>h from now</source>
      <translation>h von jetzt an</translation>
    </message>
    <message>
      <source>No more than {most}: common practice, no source; the product's sheet names none.</source>
      <translation>Nicht mehr als {most}: übliche Praxis, ohne Quelle; das Datenblatt des Produkts nennt keine Zahl.</translation>
    </message>
    <message>
      <source>No more than {most}: the product's sheet.</source>
      <translation>Nicht mehr als {most}: das Datenblatt des Produkts.</translation>
    </message>
    <message>
      <source>85 %: coating practice of ISO 12944-7 and ISO 8502-4; 75 %: from memory. The product's sheet comes first.</source>
      <translation>85 %: Beschichtungspraxis nach ISO 12944-7 und ISO 8502-4; 75 %: aus dem Gedächtnis. Das Datenblatt des Produkts geht vor.</translation>
    </message>
    <message>
      <source>{act}: ISO 8502-4; {care}: from memory.</source>
      <translation>{act}: ISO 8502-4; {care}: aus dem Gedächtnis.</translation>
    </message>
    <message>
      <source>Minimum film-forming temperature by ISO 2115 or ASTM D2354, from the product's sheet; {care}: from memory.</source>
      <translation>Mindestfilmbildetemperatur nach ISO 2115 oder ASTM D2354, vom Datenblatt des Produkts; {care}: aus dem Gedächtnis.</translation>
    </message>
    <message>
      <source>Draught rate of ISO 7730: {slow} to {fast} {speed_unit} at {cool} to {warm} {unit}, 20 % dissatisfied, turbulence 40 %; {act}: assumption.</source>
      <translation>Zugluftrate nach ISO 7730: {slow} bis {fast} {speed_unit} bei {cool} bis {warm} {unit}, 20 % Unzufriedene, Turbulenz 40 %; {act}: Annahme.</translation>
    </message>
    <message>
      <source>Péclet number of the wet film over that of its sheet's own run ({temperature}, 50 %, {speed}); above it particles pile up into a skin: A. F. Routh, W. B. Russel (1998), AIChE J. 44, 2088; that twice is too much: assumption.</source>
      <translation>Péclet-Zahl des Nassfilms geteilt durch die im Versuch seines Datenblatts ({temperature}, 50 %, {speed}); darüber häufen sich Teilchen zu einer Haut: A. F. Routh, W. B. Russel (1998), AIChE J. 44, 2088; dass das Doppelte zu viel ist: Annahme.</translation>
    </message>
    <message>
      <source>35 %: from memory; no limit to act on. The product's sheet comes first.</source>
      <translation>35 %: aus dem Gedächtnis; keine Grenze zum Handeln. Das Datenblatt des Produkts geht vor.</translation>
    </message>
    <message>
      <source>{care} and {act}: from memory. The product's sheet comes first.</source>
      <translation>{care} und {act}: aus dem Gedächtnis. Das Datenblatt des Produkts geht vor.</translation>
    </message>
    <message>
      <source>{care} /m³: the limit of class 9, the least clean, of ISO 14644-1:2015; ten times that: assumption. Air under 40 % counts for more, under 30 % for much more, for dust clings then: common practice, no source; how much: assumption.</source>
      <translation>{care} /m³: die Grenze der Klasse 9, der am wenigsten reinen, nach ISO 14644-1:2015; das Zehnfache: Annahme. Luft unter 40 % zählt mehr, unter 30 % viel mehr, denn dann haftet Staub: übliche Praxis, ohne Quelle; wie viel: Annahme.</translation>
    </message>
    <message>
      <source>A coat counts as ready once nine of ten runs of the model are, and not before its sheet's own recoat time.</source>
      <translation>Eine Schicht gilt als bereit, wenn neun von zehn Läufen des Modells es sind, und nicht vor der Überarbeitungszeit ihres Datenblatts.</translation>
    </message>
    <message>
      <source>{limit}: the product's sheet; {more} more: from memory.</source>
      <translation>{limit}: das Datenblatt des Produkts; {more} mehr: aus dem Gedächtnis.</translation>
    </message>
    <message>
      <source>{limit} %: the product's sheet; care {below} % below it: assumption.</source>
      <translation>{limit} %: das Datenblatt des Produkts; Vorsicht {below} % darunter: Annahme.</translation>
    </message>
    <message>
      <source>time to look ahead</source>
      <translation>Zeit der Vorausschau</translation>
    </message>
    <message>
      <source>hours of log with temperature and humidity</source>
      <translation>Stunden des Protokolls mit Temperatur und Luftfeuchte</translation>
    </message>
    <message>
      <source>The humidity rose by {change} %RH in {minutes} minutes; at most {most} %RH counts as flat: wait longer.</source>
      <translation>Die Luftfeuchte stieg in {minutes} Minuten um {change} % r. F.; als ruhig gelten höchstens {most} % r. F.: Warten Sie länger.</translation>
    </message>
    <message>
      <source>The humidity fell by {change} %RH in {minutes} minutes; at most {most} %RH counts as flat: wait longer.</source>
      <translation>Die Luftfeuchte fiel in {minutes} Minuten um {change} % r. F.; als ruhig gelten höchstens {most} % r. F.: Warten Sie länger.</translation>
    </message>
    <message>
      <source>Read for {seen} of the {needed} minutes on end that are needed: leave the box shut and the board plugged in.</source>
      <translation>Gelesen sind {seen} der {needed} Minuten am Stück, die gebraucht werden: Lassen Sie die Dose zu und die Messplatine angesteckt.</translation>
    </message>
    <message>
      <source>The humidity strayed by {strayed} %RH; at most {most} %RH counts as flat: leave the box shut.</source>
      <translation>Die Luftfeuchte schwankte um {strayed} % r. F.; als ruhig gelten höchstens {most} % r. F.: Lassen Sie die Dose zu.</translation>
    </message>
    <message>
      <source>The temperature strayed by {strayed}; at most {most} is allowed: put the box where it keeps its temperature, and wait.</source>
      <translation>Die Temperatur schwankte um {strayed}; erlaubt sind höchstens {most}: Stellen Sie die Dose dorthin, wo sie ihre Temperatur hält, und warten Sie.</translation>
    </message>
    <message numerus="yes">
      <source>{n} hours</source>
      <translation>
        <numerusform>{n} Stunde</numerusform>
        <numerusform>{n} Stunden</numerusform>
      </translation>
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
      <source>{quantity} reads {value} {unit}; a room has {low} to {high} {unit}.</source>
      <translation>{quantity} zeigt {value} {unit}; ein Raum hat {low} bis {high} {unit}.</translation>
    </message>
    <message>
      <source>{quantity} leapt to {value} {unit} faster than {fastest} {unit} a second.</source>
      <translation>{quantity} sprang auf {value} {unit}, schneller als {fastest} {unit} in der Sekunde.</translation>
    </message>
    <message>
      <source>{quantity} has read exactly {value} {unit} for {time}: the sensor seems stuck.</source>
      <translation>{quantity} zeigt seit {time} genau {value} {unit}: der Sensor scheint festzuhängen.</translation>
    </message>
    <message numerus="yes">
      <source>{n} minutes</source>
      <translation>
        <numerusform>{n} Minute</numerusform>
        <numerusform>{n} Minuten</numerusform>
      </translation>
    </message>
    <message>
      <source>The distance walked is {given} m; {low} to {high} m is allowed: measure it anew.</source>
      <translation>Die gegangene Strecke ist {given} m; erlaubt ist {low} bis {high} m: Messen Sie sie neu.</translation>
    </message>
    <message>
      <source>The walk took {given} s; it must be more than 0: take its time anew.</source>
      <translation>Der Gang dauerte {given} s; es muss mehr als 0 sein: Messen Sie die Zeit neu.</translation>
    </message>
    <message>
      <source>The walk at {speed} gave {found} of the {needed} readings of voltage and temperature that it takes after its first {settling} s: make it longer.</source>
      <translation>Der Gang mit {speed} gab {found} der {needed} Messwerte von Spannung und Temperatur, die es nach den ersten {settling} s braucht: Machen Sie ihn länger.</translation>
    </message>
    <message>
      <source>The time under the cup gave {found} of the {needed} readings of voltage and temperature that it takes after its first {settling} s: make it longer.</source>
      <translation>Die Zeit unter dem Becher gab {found} der {needed} Messwerte von Spannung und Temperatur, die es nach den ersten {settling} s braucht: Machen Sie sie länger.</translation>
    </message>
  </context>
</TS>
