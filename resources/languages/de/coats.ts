<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>{product}: touch-dry in {minutes} min is far longer than {film} wet at {solids} % solids would take (kappa {kappa}, plausible {low} to {high}); check the times and the thickness on the product's sheet</source>
      <translation>{product}: grifffest in {minutes} min ist viel länger, als {film} nass mit {solids} % Festkörper brauchen würden (kappa {kappa}, plausibel {low} bis {high}); Zeiten und Dicke auf dem Datenblatt prüfen</translation>
    </message>
    <message>
      <source>{product}: touch-dry in {minutes} min is far shorter than {film} wet at {solids} % solids would take (kappa {kappa}, plausible {low} to {high}); check the times and the thickness on the product's sheet</source>
      <translation>{product}: grifffest in {minutes} min ist viel kürzer, als {film} nass mit {solids} % Festkörper brauchen würden (kappa {kappa}, plausibel {low} bis {high}); Zeiten und Dicke auf dem Datenblatt prüfen</translation>
    </message>
    <message>
      <source>c_f = c_sat(T_f), over the film</source>
      <translation>c_f = c_sat(T_f), über dem Film</translation>
    </message>
    <message>
      <source>c_a = RH c_sat(T_a), in the room</source>
      <translation>c_a = RH c_sat(T_a), im Raum</translation>
    </message>
    <message>
      <source>Re = v L / kinematic viscosity</source>
      <translation>Re = v L / kinematische Viskosität</translation>
    </message>
    <message>
      <source>Sc = kinematic viscosity / D</source>
      <translation>Sc = kinematische Viskosität / D</translation>
    </message>
    <message>
      <source>Ra of heat; below 0 the air at the film is heavier</source>
      <translation>Ra der Wärme; unter 0 ist die Luft am Film schwerer</translation>
    </message>
    <message>
      <source>Nu, forced and free flow together</source>
      <translation>Nu, erzwungene und freie Strömung zusammen</translation>
    </message>
    <message>
      <source>Sh, forced and free flow together</source>
      <translation>Sh, erzwungene und freie Strömung zusammen</translation>
    </message>
    <message>
      <source>κ, of this product, from its sheet</source>
      <translation>κ dieses Produkts, aus seinem Datenblatt</translation>
    </message>
    <message>
      <source>s, dry layer over the wet part</source>
      <translation>s, trockene Lage über dem Nassen</translation>
    </message>
    <message>
      <source>D_s, vapour in the dry layer</source>
      <translation>D_s, Dampf in der trockenen Lage</translation>
    </message>
    <message>
      <source>Pe over the largest of the sheet's own run, until packed</source>
      <translation>Pe über dem größten des Datenblattlaufs, bis zur Packung</translation>
    </message>
    <message>
      <source>the largest so far</source>
      <translation>bisher größter Wert</translation>
    </message>
    <message>
      <source>free and bound, as laid</source>
      <translation>frei und gebunden, wie aufgetragen</translation>
    </message>
    <message>
      <source>m_f, free</source>
      <translation>m_f, frei</translation>
    </message>
    <message>
      <source>m_fc, free when the polymer packs</source>
      <translation>m_fc, frei, wenn das Polymer sich packt</translation>
    </message>
    <message>
      <source>dry polymer</source>
      <translation>trockenes Polymer</translation>
    </message>
    <message>
      <source>m_b = w times the polymer</source>
      <translation>m_b = w mal Polymer</translation>
    </message>
    <message>
      <source>w, bound</source>
      <translation>w, gebunden</translation>
    </message>
    <message>
      <source>w_eq, kept by the polymer in this air</source>
      <translation>w_eq, vom Polymer in dieser Luft gehalten</translation>
    </message>
    <message>
      <source>w_eq at 85 % RH; the film is clear below it</source>
      <translation>w_eq bei 85 % RH; darunter ist der Film klar</translation>
    </message>
    <message>
      <source>k_b, in the sheet's film at 23 °C</source>
      <translation>k_b, im Film des Datenblatts bei 23 °C</translation>
    </message>
    <message>
      <source>k_b a_D/(h/h_ref)ⁿ (w - w_eq) times the polymer</source>
      <translation>k_b a_D/(h/h_ref)ⁿ (w - w_eq) mal Polymer</translation>
    </message>
    <message>
      <source>θ_r so far; runs once free water has gone</source>
      <translation>θ_r bisher; läuft, sobald das freie Wasser fort ist</translation>
    </message>
    <message>
      <source>θ_r when dry to recoat, if clear by then</source>
      <translation>θ_r, wenn überarbeitbar, sofern dann klar</translation>
    </message>
    <message>
      <source>θ_c so far; runs once packed</source>
      <translation>θ_c bisher; läuft ab der Packung</translation>
    </message>
    <message>
      <source>θ_c when cured</source>
      <translation>θ_c, wenn ausgehärtet</translation>
    </message>
    <message>
      <source>water left in the layer</source>
      <translation>Wasser noch in der Lage</translation>
    </message>
    <message>
      <source>share of the water still there (Crank's series)</source>
      <translation>Anteil des Wassers, der noch da ist (Reihe nach Crank)</translation>
    </message>
    <message>
      <source>D t/h² so far</source>
      <translation>D t/h² bisher</translation>
    </message>
    <message>
      <source>D t/h² when dry through</source>
      <translation>D t/h², wenn durchgetrocknet</translation>
    </message>
    <message>
      <source>D, in the paint at 23 °C, in air of any humidity</source>
      <translation>D, in der Farbe bei 23 °C, in Luft jeder Feuchte</translation>
    </message>
    <message>
      <source>g(RH), of the top alone, 1 at 50 %</source>
      <translation>g(RH), nur der Oberfläche, 1 bei 50 %</translation>
    </message>
    <message>
      <source>age of the top so far</source>
      <translation>Alter der Oberfläche bisher</translation>
    </message>
    <message>
      <source>age of the top when dry to touch</source>
      <translation>Alter der Oberfläche, wenn grifffest</translation>
    </message>
    <message>
      <source>age of the top to recoat, if dry through by then</source>
      <translation>Alter der Oberfläche, wenn überarbeitbar, sofern dann durchgetrocknet</translation>
    </message>
    <message>
      <source>θ_c so far</source>
      <translation>θ_c bisher</translation>
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
      <source>paint</source>
      <translation>Farbe</translation>
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
      <source>draws is {number}; it must be a whole number from 1 up</source>
      <translation>draws ist {number}; erlaubt ist eine ganze Zahl ab 1</translation>
    </message>
    <message>
      <source>air temperature</source>
      <translation>Lufttemperatur</translation>
    </message>
    <message>
      <source>humidity</source>
      <translation>Luftfeuchte</translation>
    </message>
    <message>
      <source>air speed</source>
      <translation>Luftgeschwindigkeit</translation>
    </message>
    <message>
      <source>pressure</source>
      <translation>Luftdruck</translation>
    </message>
    <message>
      <source>age of the reading</source>
      <translation>Alter des Messwerts</translation>
    </message>
    <message>
      <source>wet film</source>
      <translation>Nassfilm</translation>
    </message>
    <message>
      <source>side of the piece</source>
      <translation>Seite des Bildes</translation>
    </message>
    <message>
      <source>thinning</source>
      <translation>Verdünnung</translation>
    </message>
    <message>
      <source>% of the volume</source>
      <translation>% des Volumens</translation>
    </message>
    <message>
      <source>time step</source>
      <translation>Zeitschritt</translation>
    </message>
    <message>
      <source>horizon</source>
      <translation>Horizont</translation>
    </message>
    <message>
      <source>the room log holds no reading; it must hold at least one</source>
      <translation>der Raumverlauf enthält keinen Messwert; er muss mindestens einen enthalten</translation>
    </message>
    <message>
      <source>the room log begins {first} h after laying; allowed is under {horizon} h, the horizon</source>
      <translation>der Raumverlauf beginnt {first} h nach dem Auftragen; erlaubt sind weniger als {horizon} h, der Horizont</translation>
    </message>
    <message>
      <source>time in the room log</source>
      <translation>Zeit im Raumverlauf</translation>
    </message>
    <message>
      <source>the room log goes from {before} s to {time} s; times must rise</source>
      <translation>der Raumverlauf geht von {before} s auf {time} s; die Zeiten müssen steigen</translation>
    </message>
    <message>
      <source>the water in the wet film would be at or below {freezing} and may freeze, which ruins the film; the model knows no ice, so these times do not hold: lay the coat in a warmer room</source>
      <translation>das Wasser im nassen Film läge bei {freezing} oder darunter und kann gefrieren, was den Film verdirbt; das Modell kennt kein Eis, also gelten diese Zeiten nicht: die Schicht in einem wärmeren Raum auftragen</translation>
    </message>
    <message>
      <source>the room leaves {low} to {high} {degrees} or {dry} to {damp} % RH: the times are extrapolated</source>
      <translation>der Raum verlässt {low} bis {high} {degrees} oder {dry} bis {damp} % RH: Die Zeiten sind hochgerechnet</translation>
    </message>
    <message>
      <source>{grams} g of solvent in a room of {room} m³ with its windows shut.</source>
      <translation>{grams} g Lösemittel in einem Raum von {room} m³ bei geschlossenen Fenstern.</translation>
    </message>
    <message>
      <source>the coat is {times} times as thick as the sheet's ({film} dry, sheet {sheet}): it dries through much later</source>
      <translation>die Schicht ist {times}-mal so dick wie die des Datenblatts ({film} trocken, Datenblatt {sheet}): Sie trocknet viel später durch</translation>
    </message>
    <message>
      <source>the film may blush ({share} % of draws come within {margin} of the dew point while it is wet): wait for drier air, or warm the room before the solvent is opened; it does not mend</source>
      <translation>der Film kann weiß anlaufen ({share} % der Ziehungen kommen dem Taupunkt nass näher als {margin}): auf trockenere Luft warten oder den Raum wärmen, bevor das Lösemittel geöffnet wird; es heilt nicht</translation>
    </message>
    <message>
      <source>mfft_C is not on the sheet, so whether the film may be too cold to form is not known: look for the minimum film-forming temperature on the product's sheet</source>
      <translation>mfft_C steht nicht auf dem Datenblatt, also ist nicht bekannt, ob der Film zu kalt zur Bildung werden kann: nach der Mindestfilmbildetemperatur auf dem Datenblatt suchen</translation>
    </message>
    <message>
      <source>1 draw is the nominal run alone, so the times have no range</source>
      <translation>1 Ziehung ist nur der Nennlauf, also haben die Zeiten keine Spanne</translation>
    </message>
    <message>
      <source>the room log ends {end} h after laying: its last air is carried on</source>
      <translation>der Raumverlauf endet {end} h nach dem Auftragen: Seine letzte Luft ist fortgeführt</translation>
    </message>
    <message>
      <source>the film may be too cold to form ({share} % of draws fall below {least}): warm the room before you lay it; later warmth does not mend it</source>
      <translation>der Film kann zu kalt zur Bildung sein ({share} % der Ziehungen fallen unter {least}): vor dem Auftragen den Raum wärmen; spätere Wärme heilt es nicht</translation>
    </message>
    <message>
      <source>{number} draws are too few for a range, which they only hint at: take {least} or more, or 1 for the nominal run alone</source>
      <translation>{number} Ziehungen sind zu wenige für eine Spanne, die sie nur andeuten: {least} oder mehr nehmen, oder 1 nur für den Nennlauf</translation>
    </message>
    <message>
      <source>no reading for {minutes} min from {start} h after laying: the nearest air is taken to have held</source>
      <translation>kein Messwert für {minutes} min ab {start} h nach dem Auftragen: Angenommen ist, dass die nächstgemessene Luft anhielt</translation>
    </message>
    <message>
      <source>no temperature to lay it at is checked</source>
      <translation>keine Temperatur zum Auftragen wird geprüft</translation>
    </message>
    <message>
      <source>times and thickness disagree: touch_dry_min {minutes} min for {film} µm wet at {solids} % solids gives kappa {kappa}, which must be from {low} to {high}</source>
      <translation>Zeiten und Dicke passen nicht zusammen: touch_dry_min {minutes} min für {film} µm nass mit {solids} % Festkörper ergibt kappa {kappa}, erlaubt sind {low} bis {high}</translation>
    </message>
    <message>
      <source>this film would take {quick} to {slow} min, and this time would fit {thin} to {thick} µm wet</source>
      <translation>dieser Film bräuchte {quick} bis {slow} min, und zu dieser Zeit passten {thin} bis {thick} µm nass</translation>
    </message>
    <message>
      <source>look at both on the product's sheet again</source>
      <translation>beides noch einmal auf dem Datenblatt ansehen</translation>
    </message>
    <message>
      <source>no film of this coat will be called too cold to form</source>
      <translation>kein Film dieser Schicht wird zu kalt zur Bildung genannt</translation>
    </message>
    <message>
      <source>the general limit for damp air is used</source>
      <translation>die allgemeine Grenze für feuchte Luft gilt</translation>
    </message>
    <message>
      <source>take its vapour to catch fire in any room: ventilate, no flame, no spark</source>
      <translation>gehen Sie davon aus, dass sich sein Dampf in jedem Raum entzündet: lüften, keine Flamme, kein Funke</translation>
    </message>
    <message>
      <source>the sheet names no film and {film} µm dry was assumed, so name wet_um or dry_um</source>
      <translation>das Datenblatt nennt keinen Film, und {film} µm trocken wurden angenommen: wet_um oder dry_um angeben</translation>
    </message>
    <message>
      <source>if {film} µm is the dry film, write it as dry_um</source>
      <translation>sind {film} µm der trockene Film, dann als dry_um schreiben</translation>
    </message>
    <message>
      <source>{field} is not on the sheet: {outcome}</source>
      <translation>{field} steht nicht auf dem Datenblatt: {outcome}</translation>
    </message>
    <message>
      <source>if {film} µm is the wet film, write it as wet_um</source>
      <translation>sind {film} µm der Nassfilm, dann als wet_um schreiben</translation>
    </message>
    <message>
      <source>{field} is not a field of a data sheet; {mend}</source>
      <translation>{field} ist kein Feld eines Datenblatts; {mend}</translation>
    </message>
    <message>
      <source>{field} is missing; {needed}</source>
      <translation>{field} fehlt; {needed}</translation>
    </message>
    <message>
      <source>{field} is {value}; it must be text in quotes</source>
      <translation>{field} ist {value}; erlaubt ist Text in Anführungszeichen</translation>
    </message>
    <message>
      <source>{field} is {value}; {allowed}</source>
      <translation>{field} ist {value}; {allowed}</translation>
    </message>
    <message>
      <source>it must be a number from {low} to {high} {unit}</source>
      <translation>erlaubt ist eine Zahl von {low} bis {high} {unit}</translation>
    </message>
    <message>
      <source>the nearest is {field}</source>
      <translation>am nächsten kommt {field}</translation>
    </message>
    <message>
      <source>it must be a whole number from {low} to {high} {unit}</source>
      <translation>erlaubt ist eine ganze Zahl von {low} bis {high} {unit}</translation>
    </message>
    <message>
      <source>the fields are {fields}</source>
      <translation>die Felder sind {fields}</translation>
    </message>
    <message>
      <source>{field} is, and is there already: take this line out</source>
      <translation>{field} ist es und steht schon da: diese Zeile herausnehmen</translation>
    </message>
    <message>
      <source>write {field} = {value}</source>
      <translation>schreiben Sie {field} = {value}</translation>
    </message>
    <message>
      <source>{field} is {value}; it must be one of {choices}</source>
      <translation>{field} ist {value}; erlaubt ist eines von {choices}</translation>
    </message>
    <message>
      <source>{field} is {value}; it must be [least, greatest], both from {low} to {high} {unit}{hint}</source>
      <translation>{field} ist {value}; erlaubt ist [kleinster, größter], beide von {low} bis {high} {unit}{hint}</translation>
    </message>
    <message>
      <source>{field} is {value}; it must be true or false</source>
      <translation>{field} ist {value}; erlaubt ist true oder false</translation>
    </message>
    <message>
      <source>{field} is {value}; it must be a list of sentences in quotes</source>
      <translation>{field} ist {value}; erlaubt ist eine Liste von Sätzen in Anführungszeichen</translation>
    </message>
    <message>
      <source>it must be text in quotes</source>
      <translation>erlaubt ist Text in Anführungszeichen</translation>
    </message>
    <message>
      <source>{field} is {value}; it must be a table [{field}] of field = "where the number comes from"</source>
      <translation>{field} ist {value}; erlaubt ist eine Tabelle [{field}] aus Feld = "woher die Zahl stammt"</translation>
    </message>
    <message>
      <source>name a field of the sheet</source>
      <translation>nennen Sie ein Feld des Datenblatts</translation>
    </message>
    <message>
      <source>{field} is about no field of a data sheet; {mend}</source>
      <translation>{field} betrifft kein Feld eines Datenblatts; {mend}</translation>
    </message>
    <message>
      <source>mend that line and read it again</source>
      <translation>diese Zeile berichtigen und noch einmal lesen</translation>
    </message>
    <message>
      <source>of the volume</source>
      <translation>des Volumens</translation>
    </message>
    <message>
      <source>days</source>
      <translation>Tage</translation>
    </message>
    <message>
      <source>coats</source>
      <translation>Schichten</translation>
    </message>
    <message>
      <source>write {line}</source>
      <translation>schreiben Sie {line}</translation>
    </message>
    <message>
      <source>the film of ASTM D1640</source>
      <translation>der Film von ASTM D1640</translation>
    </message>
    <message>
      <source>usual for a water-borne coat</source>
      <translation>üblich für eine wasserbasierte Schicht</translation>
    </message>
    <message>
      <source>common practice</source>
      <translation>üblich</translation>
    </message>
    <message>
      <source>it must be one of {choices}</source>
      <translation>erlaubt ist eines von {choices}</translation>
    </message>
    <message>
      <source>{field} is {solids} of the volume; a {kind} coat is a liquid only up to {most}</source>
      <translation>{field} ist {solids} des Volumens; eine {kind} Schicht ist nur bis {most} flüssig</translation>
    </message>
    <message>
      <source>{field} is {dry} µm; {wet} µm wet at {solids} solids gives {gives} µm</source>
      <translation>{field} ist {dry} µm; {wet} µm nass mit {solids} Festkörper ergeben {gives} µm</translation>
    </message>
    <message>
      <source>{field} is {dry} µm: at {solids} solids {wet} µm wet; at most {most} can be</source>
      <translation>{field} ist {dry} µm: mit {solids} Festkörper {wet} µm nass; höchstens {most} sind möglich</translation>
    </message>
    <message>
      <source>usual for a solvent-borne coat</source>
      <translation>üblich für eine lösemittelhaltige Schicht</translation>
    </message>
    <message>
      <source>{field} is {hours} h; it must not be shorter than {before} ({least} h)</source>
      <translation>{field} ist {hours} h; es darf nicht kürzer sein als {before} ({least} h)</translation>
    </message>
    <message>
      <source>{field} is not on the sheet: {value} {unit} is assumed ({reason})</source>
      <translation>{field} steht nicht auf dem Datenblatt: {value} {unit} ist angenommen ({reason})</translation>
    </message>
    <message>
      <source>{origin}: this is not a TOML file: {trouble}, in {line}; {mend}</source>
      <translation>{origin}: Das ist keine TOML-Datei: {trouble}, in {line}; {mend}</translation>
    </message>
    <message>
      <source>; if that is {value} {unit}, write {ours}</source>
      <translation>; sind es {value} {unit}, dann {ours} schreiben</translation>
    </message>
    <message>
      <source>weeks</source>
      <translation>Wochen</translation>
    </message>
    <message>
      <source>of 1</source>
      <translation>von 1</translation>
    </message>
    <message>
      <source>{field} is {value} {ours}; usual is {low} to {high} {ours}: if it is in {unit}, write {mended}, else leave it</source>
      <translation>{field} ist {value} {ours}; üblich sind {low} bis {high} {ours}: Ist es in {unit}, dann {mended} schreiben, sonst so lassen</translation>
    </message>
    <message>
      <source>c_sat(T_f), over the solvent alone</source>
      <translation>c_sat(T_f), über dem Lösemittel allein</translation>
    </message>
    <message>
      <source>a, of the solvent over the film (Flory and Huggins)</source>
      <translation>a, des Lösemittels über dem Film (Flory und Huggins)</translation>
    </message>
    <message>
      <source>φ, solvent's share of the volume</source>
      <translation>φ, Anteil des Lösemittels am Volumen</translation>
    </message>
    <message>
      <source>D, solvent vapour in air</source>
      <translation>D, Lösemitteldampf in Luft</translation>
    </message>
    <message>
      <source>J = k_m a c_sat(T_f); the room's air holds none</source>
      <translation>J = k_m a c_sat(T_f); die Raumluft enthält keines</translation>
    </message>
    <message>
      <source>free and retained, as laid</source>
      <translation>frei und zurückgehalten, wie aufgetragen</translation>
    </message>
    <message>
      <source>leaves through the air</source>
      <translation>geht durch die Luft</translation>
    </message>
    <message>
      <source>free when set to touch</source>
      <translation>frei, wenn angezogen</translation>
    </message>
    <message>
      <source>must leave through the resin</source>
      <translation>muss durch das Harz</translation>
    </message>
    <message>
      <source>resin</source>
      <translation>Harz</translation>
    </message>
    <message>
      <source>k_b a_D/(h/h_ref)ⁿ times the retained</source>
      <translation>k_b a_D/(h/h_ref)ⁿ mal Zurückgehaltenes</translation>
    </message>
    <message>
      <source>film over dew point</source>
      <translation>Film über dem Taupunkt</translation>
    </message>
    <message>
      <source>margin under which a wet film takes up water</source>
      <translation>Abstand, unter dem ein nasser Film Wasser aufnimmt</translation>
    </message>
    <message>
      <source>time below that margin while wet, so far</source>
      <translation>Zeit unter diesem Abstand, solange nass, bisher</translation>
    </message>
    <message>
      <source>age when that began</source>
      <translation>Alter, als das begann</translation>
    </message>
    <message>
      <source>θ_r so far; runs once free solvent has gone</source>
      <translation>θ_r bisher; läuft, sobald das freie Lösemittel fort ist</translation>
    </message>
    <message>
      <source>θ_r when dry to recoat</source>
      <translation>θ_r, wenn überarbeitbar</translation>
    </message>
    <message>
      <source>θ_c so far; runs once set</source>
      <translation>θ_c bisher; läuft, sobald angezogen</translation>
    </message>
    <message>
      <source>set to touch</source>
      <translation>angezogen</translation>
    </message>
    <message>
      <source>dust free</source>
      <translation>staubtrocken</translation>
    </message>
    <message>
      <source>tack free</source>
      <translation>klebfrei</translation>
    </message>
    <message>
      <source>dry to touch</source>
      <translation>grifffest</translation>
    </message>
    <message>
      <source>clear</source>
      <translation>klar</translation>
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
      <source>wet</source>
      <translation>nass</translation>
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
      <source>laid straight on bare panel, the coat is taken to lose {lost} g/m² to it at once, up to {share} % of what is free to leave: an assumption; where paint, primer or size lies between, the support is sealed, and nothing is taken up</source>
      <translation>direkt auf rohe Holztafel aufgetragen, verliert die Schicht nach Annahme sofort {lost} g/m² daran, bis zu {share} % dessen, was frei entweichen kann; wo Farbe, Grundierung oder Leimung dazwischen liegt, ist der Bildträger versiegelt und nimmt nichts auf</translation>
    </message>
    <message>
      <source>laid straight on raw canvas, the coat is taken to lose {lost} g/m² to it at once, up to {share} % of what is free to leave: an assumption; where paint, primer or size lies between, the support is sealed, and nothing is taken up</source>
      <translation>direkt auf rohe Leinwand aufgetragen, verliert die Schicht nach Annahme sofort {lost} g/m² daran, bis zu {share} % dessen, was frei entweichen kann; wo Farbe, Grundierung oder Leimung dazwischen liegt, ist der Bildträger versiegelt und nimmt nichts auf</translation>
    </message>
    <message>
      <source>laid straight on bare paper, the coat is taken to lose {lost} g/m² to it at once, up to {share} % of what is free to leave: an assumption; where paint, primer or size lies between, the support is sealed, and nothing is taken up</source>
      <translation>direkt auf rohes Papier aufgetragen, verliert die Schicht nach Annahme sofort {lost} g/m² daran, bis zu {share} % dessen, was frei entweichen kann; wo Farbe, Grundierung oder Leimung dazwischen liegt, ist der Bildträger versiegelt und nimmt nichts auf</translation>
    </message>
    <message>
      <source>T_a, air</source>
      <translation>T_a, Luft</translation>
    </message>
    <message>
      <source>dew point</source>
      <translation>Taupunkt</translation>
    </message>
    <message>
      <source>air speed as read</source>
      <translation>Luftbewegung wie gemessen</translation>
    </message>
    <message>
      <source>v, at the film: at least the sensor's floor, less a cover</source>
      <translation>v, am Film: mindestens der kleinste Wert des Sensors, unter einer Abdeckung weniger</translation>
    </message>
    <message>
      <source>of the moist air</source>
      <translation>der feuchten Luft</translation>
    </message>
    <message>
      <source>of the air</source>
      <translation>der Luft</translation>
    </message>
    <message>
      <source>λ, of the air</source>
      <translation>λ, der Luft</translation>
    </message>
    <message>
      <source>D, water vapour in air</source>
      <translation>D, Wasserdampf in Luft</translation>
    </message>
    <message>
      <source>T_f, film</source>
      <translation>T_f, Film</translation>
    </message>
    <message>
      <source>L, side of the square of the piece's area</source>
      <translation>L, Seite des Quadrats mit der Fläche des Bildes</translation>
    </message>
    <message>
      <source>wet film as laid</source>
      <translation>Nassfilm wie aufgetragen</translation>
    </message>
    <message>
      <source>h, film when dry</source>
      <translation>h, Film, wenn trocken</translation>
    </message>
    <message>
      <source>taken up by a bare support as it was laid</source>
      <translation>beim Auftragen von rohem Bildträger aufgenommen</translation>
    </message>
    <message>
      <source>τ, in which T_f drifts to T_a without free water</source>
      <translation>τ, in der T_f ohne freies Wasser zu T_a treibt</translation>
    </message>
    <message>
      <source>4 ε S T³ (T_a - T_f), T midway, S of Stefan and Boltzmann</source>
      <translation>4 ε S T³ (T_a - T_f), T dazwischen, S von Stefan und Boltzmann</translation>
    </message>
    <message>
      <source>U_b (T_a - T_f), through the back</source>
      <translation>U_b (T_a - T_f), durch die Rückseite</translation>
    </message>
    <message>
      <source>-L_v J, taken by what leaves</source>
      <translation>-L_v J, von dem mitgenommen, was entweicht</translation>
    </message>
    <message>
      <source>C dT_f/dt, the sum of these four</source>
      <translation>C dT_f/dt, die Summe dieser vier</translation>
    </message>
    <message>
      <source>C, of the film and the support that follows it</source>
      <translation>C, des Films und des Bildträgers, der ihm folgt</translation>
    </message>
    <message>
      <source>L_v at T_f</source>
      <translation>L_v bei T_f</translation>
    </message>
    <message>
      <source>(h/h_ref)ⁿ, against the sheet's film</source>
      <translation>(h/h_ref)ⁿ, gegen den Film des Datenblatts</translation>
    </message>
    <message>
      <source>Ventilate first: fresh air through the room without blowing on the piece; no flame, heater or spark; follow the product's own sheet and local codes.</source>
      <translation>Zuerst lüften: frische Luft durch den Raum, ohne auf das Bild zu blasen; keine Flamme, kein Heizgerät, kein Funke; Datenblatt und örtliche Vorschriften befolgen.</translation>
    </message>
    <message>
      <source>Mixed through the room it comes to about {highest} mg/m³, {times} times the limit of {limit} mg/m³ for a working day, and {share} % of what can burn.</source>
      <translation>Im Raum verteilt ergibt das etwa {highest} mg/m³, das {times}-Fache der Grenze von {limit} mg/m³ für einen Arbeitstag, und {share} % dessen, was brennen kann.</translation>
    </message>
    <message>
      <source>It is an estimate: near the piece and the open tin there is far more.</source>
      <translation>Das ist eine Schätzung: Beim Bild und bei der offenen Dose ist es viel mehr.</translation>
    </message>
    <message>
      <source>area</source>
      <translation>Fläche</translation>
    </message>
    <message>
      <source>solvent</source>
      <translation>Lösemittel</translation>
    </message>
    <message>
      <source>time in which it leaves</source>
      <translation>Zeit, in der es entweicht</translation>
    </message>
    <message>
      <source>room</source>
      <translation>Raum</translation>
    </message>
    <message>
      <source>air changes</source>
      <translation>Luftwechsel</translation>
    </message>
    <message>
      <source>per hour</source>
      <translation>je Stunde</translation>
    </message>
    <message>
      <source>This can come near what burns: open the windows, and lay less at a time.</source>
      <translation>Das kann dem nahekommen, was brennt: Fenster öffnen und weniger auf einmal auftragen.</translation>
    </message>
    <message>
      <source>Too much to breathe: more fresh air, or fewer pieces at a time.</source>
      <translation>Zu viel zum Atmen: mehr frische Luft oder weniger Bilder auf einmal.</translation>
    </message>
    <message>
      <source>weighing the bottle would narrow the range of {stage} from {early} to {late} h to about {weighed_early} to {weighed_late} h</source>
      <translation>die Flasche zu wiegen würde die Spanne von {stage} von {early} bis {late} h auf etwa {weighed_early} bis {weighed_late} h verengen</translation>
    </message>
    <message>
      <source>Weigh the bottle: it would narrow the range of {stage} from {early} to {late} h to about {weighed_early} to {weighed_late} h.</source>
      <translation>Wiegen Sie die Flasche: Das würde die Spanne von {stage} von {early} bis {late} h auf etwa {weighed_early} bis {weighed_late} h verengen.</translation>
    </message>
  </context>
</TS>
