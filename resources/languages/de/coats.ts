<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>{product}: touch-dry in {minutes} min is far longer than {film} wet at {solids} % solids would take (kappa {kappa}, plausible {low} to {high}); check the times and the thickness on the product's sheet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{product}: touch-dry in {minutes} min is far shorter than {film} wet at {solids} % solids would take (kappa {kappa}, plausible {low} to {high}); check the times and the thickness on the product's sheet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>c_f = c_sat(T_f), over the film</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>c_a = RH c_sat(T_a), in the room</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Re = v L / kinematic viscosity</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Sc = kinematic viscosity / D</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Ra of heat; below 0 the air at the film is heavier</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nu, forced and free flow together</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Sh, forced and free flow together</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>κ, of this product, from its sheet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>s, dry layer over the wet part</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>D_s, vapour in the dry layer</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Pe over the largest of the sheet's own run, until packed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the largest so far</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>free and bound, as laid</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>m_f, free</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>m_fc, free when the polymer packs</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>dry polymer</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>m_b = w times the polymer</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>w, bound</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>w_eq, kept by the polymer in this air</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>w_eq at 85 % RH; the film is clear below it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>k_b, in the sheet's film at 23 °C</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>k_b a_D/(h/h_ref)ⁿ (w - w_eq) times the polymer</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>θ_r so far; runs once free water has gone</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>θ_r when dry to recoat, if clear by then</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>θ_c so far; runs once packed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>θ_c when cured</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>water left in the layer</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>share of the water still there (Crank's series)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>D t/h² so far</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>D t/h² when dry through</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>D, in the paint at 23 °C, in air of any humidity</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>g(RH), of the top alone, 1 at 50 %</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>age of the top so far</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>age of the top when dry to touch</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>age of the top to recoat, if dry through by then</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>θ_c so far</source>
      <translation type="unfinished" />
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
      <source>mend that line and read it again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>of the volume</source>
      <translation type="unfinished" />
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
      <translation type="unfinished" />
    </message>
    <message>
      <source>the film of ASTM D1640</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>usual for a water-borne coat</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>common practice</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it must be one of {choices}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is {solids} of the volume; a {kind} coat is a liquid only up to {most}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is {dry} µm; {wet} µm wet at {solids} solids gives {gives} µm</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is {dry} µm: at {solids} solids {wet} µm wet; at most {most} can be</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>usual for a solvent-borne coat</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is {hours} h; it must not be shorter than {before} ({least} h)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is not on the sheet: {value} {unit} is assumed ({reason})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{origin}: this is not a TOML file: {trouble}, in {line}; {mend}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>draws is {number}; it must be a whole number from 1 up</source>
      <translation type="unfinished" />
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
      <translation type="unfinished" />
    </message>
    <message>
      <source>age of the reading</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>wet film</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>side of the piece</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>thinning</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>% of the volume</source>
      <translation>% des Volumens</translation>
    </message>
    <message>
      <source>time step</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>horizon</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the room log holds no reading; it must hold at least one</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the room log begins {first} h after laying; allowed is under {horizon} h, the horizon</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>time in the room log</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the room log goes from {before} s to {time} s; times must rise</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the water in the wet film would be at or below 0 °C and may freeze, which ruins the film; the model knows no ice, so these times do not hold: lay the coat in a warmer room</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the room leaves {low} to {high} {degrees} or {dry} to {damp} % RH: the times are extrapolated</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{grams} g of solvent in a room of {room} m³ with its windows shut.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the coat is {times} times as thick as the sheet's ({film} dry, sheet {sheet}): it dries through much later</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the film may blush ({share} % of draws come within 3 K of the dew point while it is wet): wait for drier air, or warm the room before the solvent is opened; it does not mend</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>mfft_C is not on the sheet, so whether the film may be too cold to form is not known: look for the minimum film-forming temperature on the product's sheet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>1 draw is the nominal run alone, so the times have no range</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the room log ends {end} h after laying: its last air is carried on</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the film may be too cold to form ({share} % of draws fall below {least}): warm the room before you lay it; later warmth does not mend it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{number} draws are too few for a range, which they only hint at: take {least} or more, or 1 for the nominal run alone</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>no reading for {minutes} min from {start} h after laying: the nearest air is taken to have held</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>no temperature to lay it at is checked</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>times and thickness disagree: touch_dry_min {minutes} min for {film} µm wet at {solids} % solids gives kappa {kappa}, which must be from {low} to {high}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>this film would take {quick} to {slow} min, and this time would fit {thin} to {thick} µm wet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>look at both on the product's sheet again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>no film of this coat will be called too cold to form</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the general limit for damp air is used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>take its vapour to catch fire in any room: ventilate, no flame, no spark</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the sheet names no film and {film} µm dry was assumed, so name wet_um or dry_um</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>if {film} µm is the dry film, write it as dry_um</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is not on the sheet: {outcome}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>if {film} µm is the wet film, write it as wet_um</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is not a field of a data sheet; {mend}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is missing; {needed}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is {value}; it must be text in quotes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is {value}; {allowed}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it must be a number from {low} to {high} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the nearest is {field}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it must be a whole number from {low} to {high} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the fields are {fields}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is, and is there already: take this line out</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>write {field} = {value}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is {value}; it must be one of {choices}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is {value}; it must be [least, greatest], both from {low} to {high} {unit}{hint}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is {value}; it must be true or false</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is {value}; it must be a list of sentences in quotes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it must be text in quotes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is {value}; it must be a table [{field}] of field = "where the number comes from"</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>name a field of the sheet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{field} is about no field of a data sheet; {mend}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>; if that is {value} {unit}, write {ours}</source>
      <translation type="unfinished" />
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
      <translation type="unfinished" />
    </message>
    <message>
      <source>c_sat(T_f), over the solvent alone</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a, of the solvent over the film (Flory and Huggins)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>φ, solvent's share of the volume</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>D, solvent vapour in air</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>J = k_m a c_sat(T_f); the room's air holds none</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>free and retained, as laid</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>leaves through the air</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>free when set to touch</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>must leave through the resin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>resin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>k_b a_D/(h/h_ref)ⁿ times the retained</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>film over dew point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>margin under which a wet film takes up water</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>time below that margin while wet, so far</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>age when that began</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>θ_r so far; runs once free solvent has gone</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>θ_r when dry to recoat</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>θ_c so far; runs once set</source>
      <translation type="unfinished" />
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
      <translation type="unfinished" />
    </message>
    <message>
      <source>laid straight on raw canvas, the coat is taken to lose {lost} g/m² to it at once, up to {share} % of what is free to leave: an assumption; where paint, primer or size lies between, the support is sealed, and nothing is taken up</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>laid straight on bare paper, the coat is taken to lose {lost} g/m² to it at once, up to {share} % of what is free to leave: an assumption; where paint, primer or size lies between, the support is sealed, and nothing is taken up</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>T_a, air</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>dew point</source>
      <translation>Taupunkt</translation>
    </message>
    <message>
      <source>air speed as read</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>v, at the film: at least the sensor's floor, less a cover</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>of the moist air</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>of the air</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>λ, of the air</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>D, water vapour in air</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>T_f, film</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>L, side of the square of the piece's area</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>wet film as laid</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>h, film when dry</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>taken up by a bare support as it was laid</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>τ, in which T_f drifts to T_a without free water</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>4 ε S T³ (T_a - T_f), T midway, S of Stefan and Boltzmann</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>U_b (T_a - T_f), through the back</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>-L_v J, taken by what leaves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>C dT_f/dt, the sum of these four</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>C, of the film and the support that follows it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>L_v at T_f</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>(h/h_ref)ⁿ, against the sheet's film</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Ventilate first: fresh air through the room without blowing on the piece; no flame, heater or spark; follow the product's own sheet and local codes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Mixed through the room it comes to about {highest} mg/m³, {times} times the limit of {limit} mg/m³ for a working day, and {share} % of what can burn.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It is an estimate: near the piece and the open tin there is far more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>area</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>solvent</source>
      <translation>Lösungsmittel</translation>
    </message>
    <message>
      <source>time in which it leaves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>room</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>air changes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>per hour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This can come near what burns: open the windows, and lay less at a time.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too much to breathe: more fresh air, or fewer pieces at a time.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>weighing the bottle would narrow the range of {stage} from {early} to {late} h to about {weighed_early} to {weighed_late} h</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Weigh the bottle: it would narrow the range of {stage} from {early} to {late} h to about {weighed_early} to {weighed_late} h.</source>
      <translation type="unfinished" />
    </message>
  </context>
</TS>
