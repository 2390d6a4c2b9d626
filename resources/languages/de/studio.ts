<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>Humidity will pass the limit in about {minutes} minutes</source>
      <translation>In etwa {minutes} Minuten überschreitet die Luftfeuchte die Grenze</translation>
    </message>
    <message>
      <source>The dew point will be too near in about {minutes} minutes</source>
      <translation>In etwa {minutes} Minuten ist der Taupunkt zu nahe</translation>
    </message>
    <message>
      <source>It will be too cold in about {minutes} minutes</source>
      <translation>In etwa {minutes} Minuten ist es zu kalt</translation>
    </message>
    <message>
      <source>Humidity will pass the limit in about {hours} hours</source>
      <translation>In etwa {hours} Stunden überschreitet die Luftfeuchte die Grenze</translation>
    </message>
    <message>
      <source>The dew point will be too near in about {hours} hours</source>
      <translation>In etwa {hours} Stunden ist der Taupunkt zu nahe</translation>
    </message>
    <message>
      <source>It will be too cold in about {hours} hours</source>
      <translation>In etwa {hours} Stunden ist es zu kalt</translation>
    </message>
    <message>
      <source>If the room goes on like this it passes {limit} at about {at}, between {low} and {high}: {titles}.</source>
      <translation>Wenn es im Raum so weitergeht, überschreitet er {limit} etwa um {at}, zwischen {low} und {high}: {titles}.</translation>
    </message>
    <message>
      <source>If the room goes on like this the film is less than {limit} above the dew point at about {at}, between {low} and {high}: {titles}.</source>
      <translation>Wenn es im Raum so weitergeht, liegt der Film etwa um {at}, zwischen {low} und {high}, weniger als {limit} über dem Taupunkt: {titles}.</translation>
    </message>
    <message>
      <source>If the room goes on like this the film is below {limit} at about {at}, between {low} and {high}: {titles}.</source>
      <translation>Wenn es im Raum so weitergeht, liegt der Film etwa um {at}, zwischen {low} und {high}, unter {limit}: {titles}.</translation>
    </message>
    <message>
      <source>Foreseen by the room's days so far.</source>
      <translation>Vorhergesehen aus den bisherigen Tagen des Raums.</translation>
    </message>
    <message>
      <source>Foreseen by the room's last hour.</source>
      <translation>Vorausgesehen aus der letzten Stunde des Raums.</translation>
    </message>
    <message>
      <source>{first} to {last}: outside your working hours</source>
      <translation>{first} bis {last}: außerhalb Ihrer Arbeitszeit</translation>
    </message>
    <message>
      <source>{first} to {last}: what lies below is not ready</source>
      <translation>{first} bis {last}: was darunter liegt, ist nicht bereit</translation>
    </message>
    <message>
      <source>{first} to {last}: likely too damp before it is safe</source>
      <translation>{first} bis {last}: wird wohl zu feucht, bevor die Schicht sicher ist</translation>
    </message>
    <message>
      <source>{first} to {last}: likely too cold before it is safe</source>
      <translation>{first} bis {last}: wird wohl zu kalt, bevor die Schicht sicher ist</translation>
    </message>
    <message>
      <source>{first} to {last}: likely too warm before it is safe</source>
      <translation>{first} bis {last}: wird wohl zu warm, bevor die Schicht sicher ist</translation>
    </message>
    <message>
      <source>{first} to {last}: the air likely comes too near its dew point</source>
      <translation>{first} bis {last}: die Luft kommt ihrem Taupunkt wohl zu nahe</translation>
    </message>
    <message>
      <source>{first} to {last}: the air usually moves then, as with a fan on</source>
      <translation>{first} bis {last}: dann bewegt sich die Luft meist, wie bei laufendem Ventilator</translation>
    </message>
    <message>
      <source>{first} to {last}: you mean to have a fan on</source>
      <translation>{first} bis {last}: Sie wollen einen Ventilator laufen lassen</translation>
    </message>
    <message>
      <source>{first}: outside your working hours</source>
      <translation>{first}: außerhalb Ihrer Arbeitszeit</translation>
    </message>
    <message>
      <source>{first}: what lies below is not ready</source>
      <translation>{first}: was darunter liegt, ist nicht bereit</translation>
    </message>
    <message>
      <source>{first}: likely too damp before it is safe</source>
      <translation>{first}: wird wohl zu feucht, bevor die Schicht sicher ist</translation>
    </message>
    <message>
      <source>{first}: likely too cold before it is safe</source>
      <translation>{first}: wird wohl zu kalt, bevor die Schicht sicher ist</translation>
    </message>
    <message>
      <source>{first}: likely too warm before it is safe</source>
      <translation>{first}: wird wohl zu warm, bevor die Schicht sicher ist</translation>
    </message>
    <message>
      <source>{first}: the air likely comes too near its dew point</source>
      <translation>{first}: die Luft kommt ihrem Taupunkt wohl zu nahe</translation>
    </message>
    <message>
      <source>{first}: the air usually moves then, as with a fan on</source>
      <translation>{first}: dann bewegt sich die Luft meist, wie bei laufendem Ventilator</translation>
    </message>
    <message>
      <source>{first}: you mean to have a fan on</source>
      <translation>{first}: Sie wollen einen Ventilator laufen lassen</translation>
    </message>
    <message>
      <source>Not known yet: the best hours are told once the room has been logged for a day.</source>
      <translation>Noch nicht bekannt: Die besten Stunden werden genannt, sobald der Raum einen Tag lang aufgezeichnet ist.</translation>
    </message>
    <message>
      <source>lay from {first} to {last}: good in {number} of ten ways that this room may go</source>
      <translation>auftragen von {first} bis {last}: gut in {number} von zehn Verläufen, die dieser Raum nehmen kann</translation>
    </message>
    <message>
      <source>Fresh air first: lay it only with the room aired all the while, and keep it aired as its sheet says, whatever the hour; no flame, no spark, no heater near.</source>
      <translation>Frischluft zuerst: nur auftragen, während der Raum durchgehend gelüftet wird, und weiter lüften, wie das Datenblatt es sagt, zu welcher Stunde auch immer; keine Flamme, kein Funke, kein Heizgerät in der Nähe.</translation>
    </message>
    <message>
      <source>lay at {first}: good in {number} of ten ways that this room may go</source>
      <translation>auftragen um {first}: gut in {number} von zehn Verläufen, die dieser Raum nehmen kann</translation>
    </message>
    <message>
      <source>before {time}: what lies below is not ready</source>
      <translation>vor {time}: was darunter liegt, ist nicht bereit</translation>
    </message>
    <message>
      <source>No hour of the next two days is likely to be good for it.</source>
      <translation>Keine Stunde der nächsten zwei Tage ist dafür voraussichtlich gut.</translation>
    </message>
    <message>
      <source>Next good hour for it: {first}, in {number} of ten ways that this room may go.</source>
      <translation>Nächste gute Stunde dafür: {first}, bei {number} von zehn Wegen, die dieser Raum gehen kann.</translation>
    </message>
    <message>
      <source>Next good hours for it: {first} to {last}, in {number} of ten ways that this room may go.</source>
      <translation>Nächste gute Stunden dafür: {first} bis {last}, bei {number} von zehn Wegen, die dieser Raum gehen kann.</translation>
    </message>
    <message>
      <source>Fresh air on: a window open, away from the piece</source>
      <translation>Frische Luft an: ein Fenster offen, nicht beim Bild</translation>
    </message>
    <message>
      <source>Keep it open until the vapour is gone: fresh air comes before a perfect coat.</source>
      <translation>Offen lassen, bis der Dampf fort ist: Frische Luft geht vor einer vollkommenen Schicht.</translation>
    </message>
    <message>
      <source>No draught over the piece from a window or a door</source>
      <translation>Kein Zug von Fenster oder Tür über das Bild</translation>
    </message>
    <message>
      <source>Fresh air stays on, led away from the piece</source>
      <translation>Frische Luft bleibt an, am Bild vorbei geführt</translation>
    </message>
    <message>
      <source>Another coat in the room gives off solvent vapour: keep the air coming.</source>
      <translation>Eine andere Schicht im Raum gibt Lösemitteldampf ab: weiter lüften.</translation>
    </message>
    <message>
      <source>Fans and heater fan off</source>
      <translation>Ventilatoren und Heizlüfter aus</translation>
    </message>
    <message>
      <source>Dust settles</source>
      <translation>Staub setzt sich</translation>
    </message>
    <message>
      <source>The dust has settled</source>
      <translation>Der Staub hat sich gesetzt</translation>
    </message>
    <message>
      <source>Fans turned away from the piece; heaters and anything that glows or sparks off</source>
      <translation>Ventilatoren vom Bild weggedreht; Heizgeräte und alles, was glüht oder Funken gibt, aus</translation>
    </message>
    <message>
      <source>Solvent vapour is lit by a spark or a hot element.</source>
      <translation>Ein Funke oder ein heißer Draht entzündet Lösemitteldampf.</translation>
    </message>
    <message>
      <source>No solvent, solvent rag or solvent-borne coat in the room: a torch is used</source>
      <translation>Kein Lösemittel, kein Lappen damit und keine lösemittelhaltige Schicht im Raum: Ein Brenner wird benutzt</translation>
    </message>
    <message>
      <source>The torch stays far from the mesh cover too.</source>
      <translation>Der Brenner bleibt auch fern von der Netzabdeckung.</translation>
    </message>
    <message>
      <source>Extinguisher at hand: a torch is used</source>
      <translation>Feuerlöscher zur Hand: Ein Brenner wird benutzt</translation>
    </message>
    <message>
      <source>Wiped clean of dust and hair</source>
      <translation>Von Staub und Haaren sauber gewischt</translation>
    </message>
    <message>
      <source>The surface dries</source>
      <translation>Die Fläche trocknet</translation>
    </message>
    <message>
      <source>The surface is dry</source>
      <translation>Die Fläche ist trocken</translation>
    </message>
    <message>
      <source>Bottle rolled gently, not shaken, and set down</source>
      <translation>Flasche sanft gerollt, nicht geschüttelt, und abgestellt</translation>
    </message>
    <message>
      <source>The bottle rests</source>
      <translation>Die Flasche ruht</translation>
    </message>
    <message>
      <source>The bottle has rested</source>
      <translation>Die Flasche hat geruht</translation>
    </message>
    <message>
      <source>Piece level on its supports</source>
      <translation>Bild waagrecht auf seinen Stützen</translation>
    </message>
    <message>
      <source>Back edges taped</source>
      <translation>Rückseitige Kanten abgeklebt</translation>
    </message>
    <message>
      <source>Thin, wide synthetic brush, wetted and pressed out</source>
      <translation>Dünner, breiter Synthetikpinsel, angefeuchtet und ausgedrückt</translation>
    </message>
    <message>
      <source>Wide, soft brush, clean and dry; gloves on</source>
      <translation>Breiter, weicher Pinsel, sauber und trocken; Handschuhe an</translation>
    </message>
    <message>
      <source>Mesh cover at hand</source>
      <translation>Netzabdeckung zur Hand</translation>
    </message>
    <message>
      <source>{number} panels of {size}, {shape}</source>
      <translation>{number} Tafeln zu {size}, {shape}</translation>
    </message>
    <message>
      <source>due {now} instead of {before}</source>
      <translation>Liefertermin {now} statt {before}</translation>
    </message>
    <message>
      <source>{film} wet</source>
      <translation>{film} nass</translation>
    </message>
    <message>
      <source>due on no day instead of {before}</source>
      <translation>kein Liefertermin statt {before}</translation>
    </message>
    <message>
      <source>as much as its sheet says</source>
      <translation>so viel, wie das Datenblatt sagt</translation>
    </message>
    <message>
      <source>called {now} instead of {before}</source>
      <translation>Titel {now} statt {before}</translation>
    </message>
    <message>
      <source>{now} instead of {before}</source>
      <translation>{now} statt {before}</translation>
    </message>
    <message>
      <source>painted on {now} instead of {before}</source>
      <translation>gemalt auf {now} statt {before}</translation>
    </message>
    <message>
      <source>dries {now} instead of {before}</source>
      <translation>trocknet {now} statt {before}</translation>
    </message>
    <message>
      <source>the notes were changed</source>
      <translation>die Notizen wurden geändert</translation>
    </message>
    <message>
      <source>the photo was changed</source>
      <translation>das Foto wurde geändert</translation>
    </message>
    <message>
      <source>laid {now} instead of {before}</source>
      <translation>aufgetragen {now} statt {before}</translation>
    </message>
    <message>
      <source>thinned by {now} % instead of {before} %</source>
      <translation>um {now} % verdünnt statt um {before} %</translation>
    </message>
    <message>
      <source>{label}: not on; it was recorded as laid {time}</source>
      <translation>{label}: nicht aufgetragen; verzeichnet war {time}</translation>
    </message>
    <message>
      <source>not covered instead of {before}</source>
      <translation>nicht abgedeckt statt {before}</translation>
    </message>
    <message>
      <source>covered {now} instead of {before}</source>
      <translation>abgedeckt {now} statt {before}</translation>
    </message>
    <message>
      <source>open how it came out, not {before}</source>
      <translation>offen, wie sie geworden ist, nicht {before}</translation>
    </message>
    <message>
      <source>{now}, not {before}</source>
      <translation>{now}, nicht {before}</translation>
    </message>
    <message>
      <source>no look {time}; it was recorded as {finding}</source>
      <translation>kein Blick {time}; verzeichnet war: {finding}</translation>
    </message>
    <message>
      <source>one</source>
      <translation>eine</translation>
    </message>
    <message>
      <source>two</source>
      <translation>zwei</translation>
    </message>
    <message>
      <source>three</source>
      <translation>drei</translation>
    </message>
    <message>
      <source>four</source>
      <translation>vier</translation>
    </message>
    <message>
      <source>five</source>
      <translation>fünf</translation>
    </message>
    <message>
      <source>six</source>
      <translation>sechs</translation>
    </message>
    <message>
      <source>seven</source>
      <translation>sieben</translation>
    </message>
    <message>
      <source>eight</source>
      <translation>acht</translation>
    </message>
    <message>
      <source>nine</source>
      <translation>neun</translation>
    </message>
    <message>
      <source>ten</source>
      <translation>zehn</translation>
    </message>
    <message>
      <source>eleven</source>
      <translation>elf</translation>
    </message>
    <message>
      <source>twelve</source>
      <translation>zwölf</translation>
    </message>
    <message>
      <source>{titles} and {last}</source>
      <translation>{titles} und {last}</translation>
    </message>
    <message>
      <source>no</source>
      <comment>number</comment>
      <translation>keine</translation>
    </message>
    <message numerus="yes">
      <source>{titles} and {n} more</source>
      <translation>
        <numerusform>{titles} und ein weiteres</numerusform>
        <numerusform>{titles} und {n} weitere</numerusform>
      </translation>
    </message>
    <message>
      <source>A skin may close over what is still wet: {titles}.</source>
      <translation>Über noch Nassem kann sich eine Haut schließen: {titles}.</translation>
    </message>
    <message numerus="yes">
      <source>Drying rather fast: {n} wet coats</source>
      <translation>
        <numerusform>Recht schnelles Trocknen: eine nasse Schicht</numerusform>
        <numerusform>Recht schnelles Trocknen: {n} nasse Schichten</numerusform>
      </translation>
    </message>
    <message>
      <source>The air is at {humidity} % and takes up water fast.</source>
      <translation>Die Luft hat {humidity} % und nimmt schnell Wasser auf.</translation>
    </message>
    <message>
      <source>The air is at {temperature}.</source>
      <translation>Die Luft hat {temperature}.</translation>
    </message>
    <message>
      <source>It dries {times} times as fast as on its sheet.</source>
      <translation>Sie trocknet {times}-mal so schnell wie auf dem Datenblatt.</translation>
    </message>
    <message numerus="yes">
      <source>Dust over {n} sticky coats</source>
      <translation>
        <numerusform>Staub über einer klebrigen Schicht</numerusform>
        <numerusform>Staub über {n} klebrigen Schichten</numerusform>
      </translation>
    </message>
    <message>
      <source>{specks} specks over 5 µm in a cubic metre; it sticks until about {time}: {titles}.</source>
      <translation>{specks} Teilchen über 5 µm im Kubikmeter; er haftet bis etwa {time}: {titles}.</translation>
    </message>
    <message numerus="yes">
      <source>Drying too fast: {n} wet coats</source>
      <translation>
        <numerusform>Zu schnelles Trocknen: eine nasse Schicht</numerusform>
        <numerusform>Zu schnelles Trocknen: {n} nasse Schichten</numerusform>
      </translation>
    </message>
    <message>
      <source>It dries about as fast as on its sheet, and was faster just before.</source>
      <translation>Sie trocknet etwa so schnell wie auf dem Datenblatt und war eben noch schneller.</translation>
    </message>
    <message numerus="yes">
      <source>Much dust over {n} sticky coats</source>
      <translation>
        <numerusform>Viel Staub über einer klebrigen Schicht</numerusform>
        <numerusform>Viel Staub über {n} klebrigen Schichten</numerusform>
      </translation>
    </message>
    <message>
      <source>{specks} specks over 5 µm in a cubic metre; it sticks until the film is dust-free: {titles}.</source>
      <translation>{specks} Teilchen über 5 µm im Kubikmeter; er haftet, bis der Film staubtrocken ist: {titles}.</translation>
    </message>
    <message>
      <source>Guessed, for nothing counts it; it sticks until about {time}: {titles}.</source>
      <translation>Geschätzt, denn nichts zählt ihn; er haftet bis etwa {time}: {titles}.</translation>
    </message>
    <message>
      <source>Cool the room, or set a bowl of water in it; keep sun and heaters off the pieces.</source>
      <translation>Raum kühlen oder eine Schale Wasser hineinstellen; Sonne und Heizgeräte von den Bildern fernhalten.</translation>
    </message>
    <message>
      <source>Set the mesh cover once no more bubbles rise; move little, and stir nothing up.</source>
      <translation>Netzabdeckung aufsetzen, sobald keine Blasen mehr steigen; wenig bewegen, nichts aufwirbeln.</translation>
    </message>
    <message>
      <source>Guessed, for nothing counts it; it sticks until the film is dust-free: {titles}.</source>
      <translation>Geschätzt, denn nichts zählt ihn; er haftet, bis der Film staubtrocken ist: {titles}.</translation>
    </message>
    <message>
      <source>At its coldest it was {temperature}, at {time}.</source>
      <translation>Am kältesten waren es {temperature}, um {time}.</translation>
    </message>
    <message>
      <source>The film, or what it lies on, was {margin} below the dew point at the closest: no water settled on it.</source>
      <translation>Der Film, oder worauf er liegt, war im engsten Fall {margin} unter dem Taupunkt: Es schlug sich kein Wasser nieder.</translation>
    </message>
    <message>
      <source>It closed under {least}, where a film cannot form, for {span}.</source>
      <translation>Sie schloss sich unter {least}, wo sich kein Film bilden kann, {span} lang.</translation>
    </message>
    <message>
      <source>It closed little above {least}, where a film begins to form, known to {margin}.</source>
      <translation>Sie schloss sich knapp über {least}, wo die Filmbildung beginnt, auf {margin} genau bekannt.</translation>
    </message>
    <message>
      <source>The film was never under {temperature}; it can form from {least}.</source>
      <translation>Der Film war nie unter {temperature}; bilden kann er sich ab {least}.</translation>
    </message>
    <message>
      <source>The film, or what it lies on, was {margin} above the dew point at the closest.</source>
      <translation>Der Film, oder worauf er liegt, war im engsten Fall {margin} über dem Taupunkt.</translation>
    </message>
    <message>
      <source>The film, or what it lies on, was {margin} below the dew point at the closest.</source>
      <translation>Der Film, oder worauf er liegt, war im engsten Fall {margin} unter dem Taupunkt.</translation>
    </message>
    <message>
      <source>Water settled on it for about {span}.</source>
      <translation>Etwa {span} lang schlug sich Wasser darauf nieder.</translation>
    </message>
    <message>
      <source>The film, or what it lies on, was {margin} above the dew point at the closest: no water settled on it.</source>
      <translation>Der Film, oder worauf er liegt, war im engsten Fall {margin} über dem Taupunkt: Es schlug sich kein Wasser nieder.</translation>
    </message>
    <message>
      <source>While wet: up to {warmest}, down to {driest} %.</source>
      <translation>Solange nass: bis {warmest}, hinab bis {driest} %.</translation>
    </message>
    <message>
      <source>Its air is not known.</source>
      <translation>Ihre Luft ist nicht bekannt.</translation>
    </message>
    <message>
      <source>Humidity reached {dampest} % at most while it dried and cleared.</source>
      <translation>Die Luftfeuchte stieg höchstens auf {dampest} %, während sie trocknete und klar wurde.</translation>
    </message>
    <message>
      <source>Humidity above {limit} % for {damp} of {whole}; at most {dampest} %.</source>
      <translation>Luftfeuchte über {limit} % während {damp} von {whole}; höchstens {dampest} %.</translation>
    </message>
    <message>
      <source>Humidity above {limit} % for {damp} of {whole}, from {time}; at most {dampest} %.</source>
      <translation>Luftfeuchte über {limit} % während {damp} von {whole}, ab {time}; höchstens {dampest} %.</translation>
    </message>
    <message>
      <source>Its sheet allows up to {most} %.</source>
      <translation>Ihr Datenblatt erlaubt bis {most} %.</translation>
    </message>
    <message>
      <source>Only a water-borne coat has a least temperature at which its film forms.</source>
      <translation>Nur eine wasserbasierte Schicht hat eine kleinste Temperatur, bei der sich ihr Film bildet.</translation>
    </message>
    <message>
      <source>Its least film-forming temperature is not known.</source>
      <translation>Ihre Mindestfilmbildetemperatur ist nicht bekannt.</translation>
    </message>
    <message>
      <source>It was within {margin} of it, while wet, for {span}.</source>
      <translation>Sie war nass {span} lang weniger als {margin} davon entfernt.</translation>
    </message>
    <message>
      <source>At its fastest it lost water {pace} times as fast as in its sheet's own room.</source>
      <translation>Im schnellsten Fall verlor sie Wasser {pace}-mal so schnell wie im Raum des Datenblatts.</translation>
    </message>
    <message>
      <source>Air moved over it, up to {speed}, for {span}, from {time}.</source>
      <translation>Luft bewegte sich darüber, bis {speed}, {span} lang, ab {time}.</translation>
    </message>
    <message>
      <source>The {label} below was {age} old, and needed about {needed}: it held nothing back.</source>
      <translation>{label} darunter war {age} alt und brauchte etwa {needed}: Sie hielt nichts zurück.</translation>
    </message>
    <message>
      <source>The {label} below was {age} old; in its room it needed about {needed}.</source>
      <translation>{label} darunter war {age} alt; in ihrem Raum brauchte sie etwa {needed}.</translation>
    </message>
    <message>
      <source>{film} wet, {ratio} times the {sheet} that its sheet's times are for.</source>
      <translation>{film} nass, das {ratio}-Fache der {sheet}, für die die Zeiten des Datenblatts gelten.</translation>
    </message>
    <message>
      <source>Covered {span} after it was laid.</source>
      <translation>{span} nach dem Auftragen abgedeckt.</translation>
    </message>
    <message>
      <source>Water left under the new coat: {figure} g/m².</source>
      <translation>Wasser unter der neuen Schicht: {figure} g/m².</translation>
    </message>
    <message>
      <source>The {label} below was {age} old: it held nothing back.</source>
      <translation>{label} darunter war {age} alt: Sie hielt nichts zurück.</translation>
    </message>
    <message>
      <source>The {label} below was {age} old; it was not ready within the time that was followed.</source>
      <translation>{label} darunter war {age} alt; in der verfolgten Zeit wurde sie nicht bereit.</translation>
    </message>
    <message>
      <source>{poured} on {area} m²</source>
      <translation>{poured} auf {area} m²</translation>
    </message>
    <message>
      <source>{grams} g on {area} m²</source>
      <translation>{grams} g auf {area} m²</translation>
    </message>
    <message>
      <source>It was thinned by {share} %; sheets commonly allow up to {limit} %.</source>
      <translation>Sie wurde um {share} % verdünnt; Datenblätter erlauben meist bis {limit} %.</translation>
    </message>
    <message numerus="yes">
      <source>{labels} hold matting agent: {n}, where {most} may lie on each other.</source>
      <translation>
        <numerusform>{labels} enthält Mattierungsmittel: eine, wo {most} übereinander liegen dürfen.</numerusform>
        <numerusform>{labels} enthalten Mattierungsmittel: {n}, wo {most} übereinander liegen dürfen.</numerusform>
      </translation>
    </message>
    <message>
      <source>A fingertip was on it at {time}, before it was dry to touch.</source>
      <translation>Um {time} war eine Fingerspitze darauf, bevor sie grifffest war.</translation>
    </message>
    <message>
      <source>Covered at once, less than a minute after it was laid.</source>
      <translation>Sofort abgedeckt, keine Minute nach dem Auftragen.</translation>
    </message>
    <message>
      <source>Covered {span} after it was laid, while wet: 20 minutes are usual.</source>
      <translation>{span} nach dem Auftragen abgedeckt, noch nass: 20 Minuten sind üblich.</translation>
    </message>
    <message>
      <source>No coat of hers lies below it, so nothing was sealed in.</source>
      <translation>Keine Schicht liegt darunter, also wurde nichts eingeschlossen.</translation>
    </message>
    <message>
      <source>Solvent left under the new coat: {figure} g/m².</source>
      <translation>Lösemittel unter der neuen Schicht: {figure} g/m².</translation>
    </message>
    <message>
      <source>How much was laid is not recorded; its sheet's own {film} is taken.</source>
      <translation>Wie viel aufgetragen wurde, ist nicht verzeichnet; {film} vom Datenblatt sind angenommen.</translation>
    </message>
    <message>
      <source>It was not thinned.</source>
      <translation>Sie wurde nicht verdünnt.</translation>
    </message>
    <message>
      <source>It was thinned by {share} %.</source>
      <translation>Sie wurde um {share} % verdünnt.</translation>
    </message>
    <message>
      <source>No satin or matt coat is in the stack.</source>
      <translation>Keine seidenmatte oder matte Schicht ist dabei.</translation>
    </message>
    <message>
      <source>The next coat was brushed over it at {time}, before it was dry to touch.</source>
      <translation>Um {time} wurde die nächste Schicht darübergestrichen, bevor sie grifffest war.</translation>
    </message>
    <message>
      <source>Nothing recorded says that it was touched while wet.</source>
      <translation>Nichts Verzeichnetes sagt, dass sie nass berührt wurde.</translation>
    </message>
    <message>
      <source>Covered at once, less than a minute after it was laid, while wet: 20 minutes are usual.</source>
      <translation>Sofort abgedeckt, keine Minute nach dem Auftragen, noch nass: 20 Minuten sind üblich.</translation>
    </message>
    <message numerus="yes">
      <source>You mean to have a fan on from {time}, over {n} wet coats</source>
      <translation>
        <numerusform>Sie wollen ab {time} einen Ventilator über {n} nassen Schicht laufen lassen</numerusform>
        <numerusform>Sie wollen ab {time} einen Ventilator über {n} nassen Schichten laufen lassen</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>{titles} are likely still wet then.</source>
      <translation>
        <numerusform>{titles} ist dann wahrscheinlich noch nass.</numerusform>
        <numerusform>{titles} sind dann wahrscheinlich noch nass.</numerusform>
      </translation>
    </message>
    <message>
      <source>Have it on later, or turn it away from the pieces; change it under what you mean to do.</source>
      <translation>Lassen Sie ihn später laufen, oder drehen Sie ihn von den Bildern weg; ändern Sie es unter dem, was Sie vorhaben.</translation>
    </message>
    <message>
      <source>opens a long wait</source>
      <translation>eröffnet eine lange Wartezeit</translation>
    </message>
    <message>
      <source>least time to spare</source>
      <translation>hat den kleinsten Spielraum</translation>
    </message>
    <message>
      <source>Removing a varnish is work for a conservator: try it first on the smallest spot at the edge.</source>
      <translation>Einen Firnis abzunehmen ist Sache der Restaurierung: zuerst an der kleinsten Stelle am Rand versuchen.</translation>
    </message>
    <message>
      <source>Where solvent is used: ventilate, wear gloves, and keep every flame and spark away.</source>
      <translation>Wo Lösemittel benutzt wird: lüften, Handschuhe tragen, jede Flamme und jeden Funken fernhalten.</translation>
    </message>
    <message>
      <source>Each product's own sheet, local codes and licensed advice come before this record.</source>
      <translation>Das Datenblatt jedes Produkts, örtliche Vorschriften und fachkundiger Rat gehen diesem Protokoll vor.</translation>
    </message>
    <message>
      <source>{film} wet, measured</source>
      <translation>{film} nass, gemessen</translation>
    </message>
    <message>
      <source>No isolation coat is recorded: take it that anything that removes the varnish reaches the paint.</source>
      <translation>Keine Trennschicht ist verzeichnet: Rechnen Sie damit, dass alles, was den Firnis abnimmt, die Farbe erreicht.</translation>
    </message>
    <message>
      <source>Coat {number}, {label}</source>
      <translation>Schicht {number}, {label}</translation>
    </message>
    <message>
      <source>not measured</source>
      <translation>nicht gemessen</translation>
    </message>
    <message>
      <source>An isolation coat (coat {number}) lies beneath what was laid after it, to keep the paint safe.</source>
      <translation>Eine Trennschicht (Schicht {number}) liegt unter dem später Aufgetragenen und schützt die Farbe.</translation>
    </message>
    <message>
      <source>Whether an isolation coat lies on the paint is not known: a data sheet is missing.</source>
      <translation>Ob eine Trennschicht auf der Farbe liegt, ist nicht bekannt: Ein Datenblatt fehlt.</translation>
    </message>
    <message>
      <source>What was put on the piece before it was first recorded here.</source>
      <translation>Was auf das Bild kam, bevor es hier zuerst verzeichnet wurde.</translation>
    </message>
    <message>
      <source>its data sheet</source>
      <translation>das Datenblatt</translation>
    </message>
    <message>
      <source>how much was laid; the thickness is its sheet's</source>
      <translation>wie viel aufgetragen wurde; die Dicke ist die des Datenblatts</translation>
    </message>
    <message>
      <source>how it came out</source>
      <translation>wie sie geworden ist</translation>
    </message>
    <message>
      <source>the room while it was wet</source>
      <translation>der Raum, solange sie nass war</translation>
    </message>
    <message>
      <source>the moving air</source>
      <translation>die Luftbewegung</translation>
    </message>
    <message>
      <source>part of the room while it was wet</source>
      <translation>ein Teil des Raums, solange sie nass war</translation>
    </message>
    <message>
      <source>round, {size} across</source>
      <translation>rund, {size} Durchmesser</translation>
    </message>
    <message>
      <source>oval, {size}</source>
      <translation>oval, {size}</translation>
    </message>
    <message>
      <source>{number} panels, each {size}</source>
      <translation>{number} Tafeln, je {size}</translation>
    </message>
    <message>
      <source>unknown product</source>
      <translation>unbekanntes Produkt</translation>
    </message>
    <message>
      <source>Removal: {how}.</source>
      <translation>Abnehmen: {how}.</translation>
    </message>
    <message>
      <source>Removal: how it can be removed is not known.</source>
      <translation>Abnehmen: Womit, ist nicht bekannt.</translation>
    </message>
    <message>
      <source>No coat has been laid, as far as is recorded.</source>
      <translation>Soweit verzeichnet, wurde keine Schicht aufgetragen.</translation>
    </message>
    <message>
      <source>Torch: extinguisher at hand, far from solvent and its vapour, and the mesh cover off.</source>
      <translation>Brenner: Feuerlöscher zur Hand, fern von Lösemittel und seinem Dampf, Netzabdeckung abgenommen.</translation>
    </message>
    <message>
      <source>No torch for this coat: its vapour burns. Break bubbles with the brush.</source>
      <translation>Kein Brenner für diese Schicht: Ihr Dampf brennt. Blasen mit dem Pinsel brechen.</translation>
    </message>
    <message>
      <source>The product's own sheet, local codes and licensed advice come before this program.</source>
      <translation>Das Datenblatt des Produkts, örtliche Vorschriften und fachkundiger Rat gehen diesem Programm vor.</translation>
    </message>
    <message>
      <source>No torch anywhere near. Wear gloves; a respirator as the product's sheet says.</source>
      <translation>Kein Brenner in der Nähe. Handschuhe tragen; Atemschutz, wie das Datenblatt sagt.</translation>
    </message>
    <message>
      <source>Rags can catch fire by themselves: dry them flat outdoors, or keep them in a closed metal tin with water.</source>
      <translation>Lappen können sich selbst entzünden: flach im Freien trocknen oder in einer geschlossenen Blechdose mit Wasser aufbewahren.</translation>
    </message>
    <message>
      <source>Flash point {temperature}: away from flame and anything hotter than that.</source>
      <translation>Flammpunkt {temperature}: fern von Flammen und allem, was heißer ist.</translation>
    </message>
    <message>
      <source>Flash point {temperature}: it counts as flammable ({limit} or less, UN GHS). Keep it away from heaters, flame and sparks, and never warm it.</source>
      <translation>Flammpunkt {temperature}: Es gilt als entzündbar ({limit} oder weniger, UN GHS). Fern von Heizgeräten, Flammen und Funken halten und nie erwärmen.</translation>
    </message>
    <message>
      <source>paint</source>
      <comment>a coat</comment>
      <translation>Farbe</translation>
    </message>
    <message>
      <source>isolation</source>
      <comment>a coat</comment>
      <translation>Trennschicht</translation>
    </message>
    <message>
      <source>varnish</source>
      <comment>a coat</comment>
      <translation>Firnis</translation>
    </message>
    <message>
      <source>gloss</source>
      <comment>a coat</comment>
      <translation>Glanz</translation>
    </message>
    <message>
      <source>satin</source>
      <comment>a coat</comment>
      <translation>Seidenmatt</translation>
    </message>
    <message>
      <source>matt</source>
      <comment>a coat</comment>
      <translation>Matt</translation>
    </message>
    <message>
      <source>recoat: {coat}</source>
      <translation>überarbeiten: {coat}</translation>
    </message>
    <message>
      <source>lay {coat}</source>
      <translation>{coat} auftragen</translation>
    </message>
    <message>
      <source>fit to wrap</source>
      <translation>verpackbar</translation>
    </message>
    <message>
      <source>plan its coats</source>
      <translation>Schichten planen</translation>
    </message>
    <message>
      <source>The coat below was most likely not ready, and what is in it is sealed in: {titles}.</source>
      <translation>Die Schicht darunter war höchstwahrscheinlich nicht bereit, und was in ihr ist, ist eingeschlossen: {titles}.</translation>
    </message>
    <message>
      <source>The coat below may not have been ready: {titles}.</source>
      <translation>Die Schicht darunter war vielleicht nicht bereit: {titles}.</translation>
    </message>
    <message>
      <source>The sheet of the coat below says {wait} h: {titles}.</source>
      <translation>Das Datenblatt der Schicht darunter sagt {wait} h: {titles}.</translation>
    </message>
    <message>
      <source>Too many coats with matting agent</source>
      <translation>Zu viele Schichten mit Mattierungsmittel</translation>
    </message>
    <message>
      <source>{coats} lie on each other, {limit} are enough: {titles}.</source>
      <translation>{coats} liegen übereinander, {limit} genügen: {titles}.</translation>
    </message>
    <message>
      <source>Lay no more satin or matt on it: each one dulls the dark colours below.</source>
      <translation>Nichts Seidenmattes oder Mattes mehr darauf: Jede solche Schicht macht die dunklen Farben darunter stumpf.</translation>
    </message>
    <message>
      <source>Laid too early</source>
      <translation>Zu früh aufgetragen</translation>
    </message>
    <message>
      <source>Laid rather early</source>
      <translation>Recht früh aufgetragen</translation>
    </message>
    <message>
      <source>Lay nothing more on it until it is clear and hard; give it dry air that does not move.</source>
      <translation>Nichts mehr darauf, bis sie klar und hart ist; trockene Luft, die sich nicht bewegt.</translation>
    </message>
    <message>
      <source>Lay nothing more on it until it is clear and hard; keep fresh air coming in.</source>
      <translation>Nichts mehr darauf, bis sie klar und hart ist; weiter lüften.</translation>
    </message>
    <message>
      <source>Test {label} at an edge first: nobody has touched it yet.</source>
      <translation>Prüfen Sie {label} zuerst am Rand: Noch niemand hat sie berührt.</translation>
    </message>
    <message>
      <source>Go: good to lay a coat</source>
      <translation>Los: gut, um eine Schicht aufzutragen</translation>
    </message>
    <message>
      <source>What is sealed in below clouds the coat above. A touch test at an edge comes before the next coat.</source>
      <translation>Was darunter eingeschlossen ist, trübt die Schicht darüber. Eine Griffprobe am Rand kommt vor der nächsten Schicht.</translation>
    </message>
    <message>
      <source>Wait until it is ready, or test an edge first.</source>
      <translation>Warten, bis sie bereit ist, oder zuerst am Rand prüfen.</translation>
    </message>
    <message>
      <source>Wait for drier air, or warm the room gently.</source>
      <translation>Auf trockenere Luft warten oder den Raum sanft wärmen.</translation>
    </message>
    <message>
      <source>Warm the room, and the piece with it, before it is laid.</source>
      <translation>Vor dem Auftragen den Raum wärmen, und das Bild mit ihm.</translation>
    </message>
    <message>
      <source>Still and cool the air first; solvent vapour always needs fresh air, away from the piece.</source>
      <translation>Zuerst die Luft beruhigen und kühlen; Lösemitteldampf braucht immer frische Luft, am Bild vorbei.</translation>
    </message>
    <message>
      <source>Not yet: {label} is still wet</source>
      <translation>Noch nicht: {label} ist noch nass</translation>
    </message>
    <message>
      <source>Not yet: {label} is still tacky</source>
      <translation>Noch nicht: {label} ist noch klebrig</translation>
    </message>
    <message>
      <source>Not yet: {label} is not ready for the next coat</source>
      <translation>Noch nicht: {label} ist noch nicht überarbeitbar</translation>
    </message>
    <message>
      <source>Test it again from {time}: a new test decides.</source>
      <translation>Prüfen Sie noch einmal ab {time}: Die neue Probe entscheidet.</translation>
    </message>
    <message>
      <source>Not yet: {label} was found {finding}, {time}</source>
      <translation>Noch nicht: {label} {time} befunden: {finding}</translation>
    </message>
    <message>
      <source>Not yet: {label} is not surely ready for the next coat</source>
      <translation>Noch nicht: {label} ist noch nicht sicher überarbeitbar</translation>
    </message>
    <message>
      <source>Pour less.</source>
      <translation>Weniger gießen.</translation>
    </message>
    <message>
      <source>Add less water.</source>
      <translation>Weniger Wasser zugeben.</translation>
    </message>
    <message>
      <source>Gloss first, one satin or matt coat last.</source>
      <translation>Erst glänzend, zuletzt eine seidenmatte oder matte Schicht.</translation>
    </message>
    <message>
      <source>In this room as it is, no time for the next coat is in sight.</source>
      <translation>In diesem Raum, wie er ist, ist keine Zeit für die nächste Schicht in Sicht.</translation>
    </message>
    <message>
      <source>Ready from {time}.</source>
      <translation>Bereit ab {time}.</translation>
    </message>
    <message>
      <source>Ready from {time}, perhaps from {early}.</source>
      <translation>Bereit ab {time}, vielleicht ab {early}.</translation>
    </message>
    <message>
      <source>{coat} would likely come out cloudy</source>
      <translation>{coat} würde wahrscheinlich trüb</translation>
    </message>
    <message>
      <source>{coat} may come out cloudy</source>
      <translation>{coat} könnte trüb werden</translation>
    </message>
    <message>
      <source>Days in a row are {given}; allowed is 1 to {most}.</source>
      <translation>Tage hintereinander: {given}; erlaubt sind 1 bis {most}.</translation>
    </message>
    <message>
      <source>The hours must begin and end at two times of the day, as 18:00-23:00.</source>
      <translation>Die Stunden müssen zu zwei Uhrzeiten beginnen und enden, wie 18:00-23:00.</translation>
    </message>
    <message>
      <source>The hours are {text}; give from and until, as 18:00-23:00, or 22:00-06:00 overnight.</source>
      <translation>Die Stunden sind {text}; geben Sie von und bis an, wie 18:00-23:00, oder 22:00-06:00 über Nacht.</translation>
    </message>
    <message>
      <source>Mains: dry hands, a sound cable, no coiled or chained extension lead, and nothing left on alone beyond what its maker allows.</source>
      <translation>Netzstrom: trockene Hände, ein unbeschädigtes Kabel, keine aufgerollte oder verkettete Verlängerung, und nichts länger unbeaufsichtigt laufen lassen, als der Hersteller erlaubt.</translation>
    </message>
    <message>
      <source>Still air is for the coat alone: while anything gives off solvent vapour, keep the room aired.</source>
      <translation>Ruhige Luft dient nur der Schicht: Solange etwas Lösemitteldampf abgibt, den Raum weiter lüften.</translation>
    </message>
    <message>
      <source>Fresh air comes before a perfect coat. Product sheets and local codes come before this program.</source>
      <translation>Frischluft geht vor einer makellosen Schicht. Datenblätter der Produkte und örtliche Vorschriften gehen diesem Programm vor.</translation>
    </message>
    <message>
      <source>heater {hours} to {target}</source>
      <translation>Heizgerät {hours} auf {target}</translation>
    </message>
    <message>
      <source>dehumidifier {hours} to {target}</source>
      <translation>Entfeuchter {hours} auf {target}</translation>
    </message>
    <message>
      <source>fan on {hours}, {target} at the pieces</source>
      <translation>Ventilator an {hours}, {target} an den Bildern</translation>
    </message>
    <message>
      <source>Use the heater by its own instructions: clear of fabric, paper and rags, clear of solvent and its vapour, and not left alone if they say so. Never use it to dry a coat that gives off flammable vapour.</source>
      <translation>Das Heizgerät nach seiner eigenen Anleitung betreiben: fern von Stoff, Papier und Lappen, fern von Lösemittel und dessen Dampf, und nicht unbeaufsichtigt, wenn sie das verlangt. Nie damit eine Schicht trocknen, die brennbaren Dampf abgibt.</translation>
    </message>
    <message>
      <source>Use the dryer by its own instructions: clear of fabric, clear of solvent and its vapour. Never use it to dry a coat that gives off flammable vapour: that needs fresh air, and a dryer wants the room shut.</source>
      <translation>Den Entfeuchter nach seiner eigenen Anleitung betreiben: fern von Stoff, fern von Lösemittel und dessen Dampf. Nie damit eine Schicht trocknen, die brennbaren Dampf abgibt: Die braucht Frischluft, und ein Entfeuchter will einen geschlossenen Raum.</translation>
    </message>
    <message>
      <source>Use the fan by its own instructions, clear of solvent and its vapour.</source>
      <translation>Den Ventilator nach seiner eigenen Anleitung betreiben, fern von Lösemittel und dessen Dampf.</translation>
    </message>
    <message numerus="yes">
      <source>{what}, from {day} on, {n} days</source>
      <translation>
        <numerusform>{what}, ab {day}, {n} Tag</numerusform>
        <numerusform>{what}, ab {day}, {n} Tage</numerusform>
      </translation>
    </message>
    <message>
      <source>{coat} still gives off flammable vapour: no heater and no dryer now, air the room. Say it again when that coat is ready.</source>
      <translation>{coat} gibt noch brennbaren Dampf ab: jetzt kein Heizgerät und kein Entfeuchter, den Raum lüften. Geben Sie es noch einmal ein, wenn diese Schicht bereit ist.</translation>
    </message>
    <message>
      <source>{coat} still gives off flammable vapour: this is not counted on until that coat is ready. No heater and no dryer now; air the room.</source>
      <translation>{coat} gibt noch brennbaren Dampf ab: Damit wird nicht gerechnet, bis diese Schicht bereit ist. Jetzt kein Heizgerät und kein Entfeuchter; den Raum lüften.</translation>
    </message>
    <message>
      <source>{what}, every day from {day} on</source>
      <translation>{what}, jeden Tag ab {day}</translation>
    </message>
    <message>
      <source>fan off {hours}</source>
      <translation>Ventilator aus {hours}</translation>
    </message>
    <message>
      <source>all day</source>
      <translation>ganztags</translation>
    </message>
    <message>
      <source>{coat} still gives off flammable vapour: air the room, with no fan that is not made for such vapour. Say it again when that coat is ready.</source>
      <translation>{coat} gibt noch brennbare Dämpfe ab: Lüften Sie den Raum, ohne einen Ventilator, der nicht für solche Dämpfe gebaut ist. Sagen Sie es wieder, wenn diese Schicht bereit ist.</translation>
    </message>
    <message>
      <source>{coat} still gives off flammable vapour: this is not counted on until that coat is ready. Air the room, with no fan that is not made for such vapour.</source>
      <translation>{coat} gibt noch brennbare Dämpfe ab: Hiermit wird nicht gerechnet, bis diese Schicht bereit ist. Lüften Sie den Raum, ohne einen Ventilator, der nicht für solche Dämpfe gebaut ist.</translation>
    </message>
    <message>
      <source>The film has begun to set; going back now marks the film. Look for drips and bubbles once it is dry.</source>
      <translation>Der Film zieht an; jetzt noch einmal darüberzugehen hinterlässt Spuren. Nach Tropfen und Blasen sehen, wenn er trocken ist.</translation>
    </message>
    <message>
      <source>Only while the film still flows: one light pass. If the brush drags, leave it.</source>
      <translation>Nur solange der Film noch fließt: ein leichter Strich. Zieht der Pinsel, lassen Sie es.</translation>
    </message>
    <message>
      <source>Dust sticks until the film is tack-free. Let nothing touch it.</source>
      <translation>Staub haftet, bis der Film nicht mehr klebt. Nichts darf ihn berühren.</translation>
    </message>
    <message>
      <source>The film takes no more dust. Look along it in a low light for specks before the next coat.</source>
      <translation>Der Film nimmt keinen Staub mehr an. Vor der nächsten Schicht im Streiflicht nach Einschlüssen sehen.</translation>
    </message>
    <message>
      <source>Milky now is later than this room should take: nothing on it until it is clear.</source>
      <translation>Jetzt noch milchig ist später, als dieser Raum es erwarten lässt: nichts darauf, bis sie klar ist.</translation>
    </message>
    <message>
      <source>It is not too late: press at an edge before anything goes on it.</source>
      <translation>Es ist nicht zu spät: am Rand drücken, bevor etwas darauf kommt.</translation>
    </message>
    <message>
      <source>Second pass missed: leave it</source>
      <translation>Zweiter Durchgang versäumt: so lassen</translation>
    </message>
    <message>
      <source>Second pass is late: a light one, or none</source>
      <translation>Zweiter Durchgang ist spät: ein leichter oder keiner</translation>
    </message>
    <message>
      <source>Cover missed: it helps no more</source>
      <translation>Abdeckung versäumt: Sie hilft nicht mehr</translation>
    </message>
    <message>
      <source>The cover is late: set it now</source>
      <translation>Die Abdeckung ist spät: jetzt aufsetzen</translation>
    </message>
    <message>
      <source>Look now: has the milkiness cleared?</source>
      <translation>Jetzt hinsehen: Ist die Milchigkeit verschwunden?</translation>
    </message>
    <message numerus="yes">
      <source>{titles} are still wet.</source>
      <translation>
        <numerusform>{titles} ist noch nass.</numerusform>
        <numerusform>{titles} sind noch nass.</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>Air is moving over {n} wet coats</source>
      <translation>
        <numerusform>Luft bewegt sich über einer nassen Schicht</numerusform>
        <numerusform>Luft bewegt sich über {n} nassen Schichten</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>The air is calming over {n} wet coats</source>
      <translation>
        <numerusform>Die Luft beruhigt sich über einer nassen Schicht</numerusform>
        <numerusform>Die Luft beruhigt sich über {n} nassen Schichten</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>{titles} are still wet under the cover.</source>
      <translation>
        <numerusform>{titles} ist unter der Abdeckung noch nass.</numerusform>
        <numerusform>{titles} sind unter der Abdeckung noch nass.</numerusform>
      </translation>
    </message>
    <message>
      <source>The air has moved since {time} ({speed}).</source>
      <translation>Die Luft bewegt sich seit {time} ({speed}).</translation>
    </message>
    <message>
      <source>The air has moved since {time}; it is down to {speed} now.</source>
      <translation>Luft bewegt sich seit {time}; jetzt sind es noch {speed}.</translation>
    </message>
    <message>
      <source>Turn what moves the air away from the pieces, and keep fresh air coming in.</source>
      <translation>Was die Luft bewegt, von den Bildern wegdrehen und weiter lüften.</translation>
    </message>
    <message>
      <source>Turn the fan off or turn it away.</source>
      <translation>Den Ventilator ausschalten oder wegdrehen.</translation>
    </message>
    <message>
      <source>Look for a fan, window or door.</source>
      <translation>Nach Ventilator, Fenster oder Tür sehen.</translation>
    </message>
    <message>
      <source>Felt at {time}; air speed is not measured.</source>
      <translation>Um {time} gespürt; die Luftbewegung wird nicht gemessen.</translation>
    </message>
    <message>
      <source>A fan came on at {time} ({speed}).</source>
      <translation>Um {time} ging ein Ventilator an ({speed}).</translation>
    </message>
    <message>
      <source>A fan came on at {time}; the air is down to {speed} now.</source>
      <translation>Um {time} ging ein Ventilator an; jetzt sind es noch {speed}.</translation>
    </message>
    <message numerus="yes">
      <source>Air is moving over {n} covered coats</source>
      <translation>
        <numerusform>Luft bewegt sich über einer abgedeckten Schicht</numerusform>
        <numerusform>Luft bewegt sich über {n} abgedeckten Schichten</numerusform>
      </translation>
    </message>
    <message>
      <source>A fan came on at {time}.</source>
      <translation>Um {time} ging ein Ventilator an.</translation>
    </message>
    <message>
      <source>The air has moved since {time}.</source>
      <translation>Die Luft bewegt sich seit {time}.</translation>
    </message>
    <message>
      <source>Leave it so: this stays until the air has been still a little longer.</source>
      <translation>So lassen: Dies bleibt stehen, bis die Luft noch etwas länger ruhig war.</translation>
    </message>
    <message>
      <source>Once the air is still, type a reading that says so.</source>
      <translation>Sobald die Luft ruhig ist, einen Messwert eintippen, der das sagt.</translation>
    </message>
    <message>
      <source>Leave the cover on.</source>
      <translation>Abdeckung aufgesetzt lassen.</translation>
    </message>
    <message>
      <source>Leave the cover on until the air is still.</source>
      <translation>Abdeckung aufgesetzt lassen, bis die Luft ruhig ist.</translation>
    </message>
    <message>
      <source>Humidity kept at {humidity} %</source>
      <translation>Luftfeuchte auf {humidity} % gehalten</translation>
    </message>
    <message>
      <source>Room kept at {temperature}, {humidity} %</source>
      <translation>Raum auf {temperature}, {humidity} % gehalten</translation>
    </message>
    <message>
      <source>Air moving at {speed}</source>
      <translation>Luft bewegt sich mit {speed}</translation>
    </message>
    <message>
      <source>Fan off, still air</source>
      <translation>Ventilator aus, stille Luft</translation>
    </message>
    <message>
      <source>temperature of the room</source>
      <translation>Temperatur des Raums</translation>
    </message>
    <message>
      <source>humidity of the room</source>
      <translation>Luftfeuchte des Raums</translation>
    </message>
    <message>
      <source>speed of the air</source>
      <translation>Geschwindigkeit der Luft</translation>
    </message>
    <message>
      <source>The room cannot be held until a time that comes before it begins; give a later one.</source>
      <translation>Der Raum kann nicht bis zu einer Zeit gehalten werden, die vor dem Beginn liegt; geben Sie eine spätere an.</translation>
    </message>
    <message>
      <source>Room kept at {temperature}</source>
      <translation>Raum auf {temperature} gehalten</translation>
    </message>
    <message>
      <source>Room kept at {temperature}, at most {humidity} %</source>
      <translation>Raum auf {temperature} gehalten, höchstens {humidity} %</translation>
    </message>
    <message>
      <source>Humidity kept at {humidity} % at most</source>
      <translation>Luftfeuchte auf höchstens {humidity} % gehalten</translation>
    </message>
    <message>
      <source>The board was silent</source>
      <translation>Die Platine war stumm</translation>
    </message>
    <message>
      <source>A coat was laid early over one that was not ready</source>
      <translation>Eine Schicht wurde früh auf eine gelegt, die nicht bereit war</translation>
    </message>
    <message>
      <source>Matting agent was built up</source>
      <translation>Mattierungsmittel hat sich gehäuft</translation>
    </message>
    <message>
      <source>A reading could not be right</source>
      <translation>Ein Messwert konnte nicht stimmen</translation>
    </message>
    <message>
      <source>The room was not read for long</source>
      <translation>Der Raum wurde lange nicht gemessen</translation>
    </message>
    <message>
      <source>A fan was meant to be on</source>
      <translation>Ein Ventilator sollte laufen</translation>
    </message>
    <message>
      <source>Cold was foreseen</source>
      <translation>Kälte war vorausgesehen</translation>
    </message>
    <message>
      <source>A dew point too near was foreseen</source>
      <translation>Ein zu naher Taupunkt war vorausgesehen</translation>
    </message>
    <message>
      <source>Damp air was foreseen</source>
      <translation>Feuchte Luft war vorausgesehen</translation>
    </message>
    <message numerus="yes">
      <source>Air was moving over {n} wet coats</source>
      <translation>
        <numerusform>Luft bewegte sich über einer nassen Schicht</numerusform>
        <numerusform>Luft bewegte sich über {n} nassen Schichten</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>Air was moving over {n} covered coats</source>
      <translation>
        <numerusform>Luft bewegte sich über einer abgedeckten Schicht</numerusform>
        <numerusform>Luft bewegte sich über {n} abgedeckten Schichten</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>It was cold for {n} wet coats</source>
      <translation>
        <numerusform>Für eine nasse Schicht war es kalt</numerusform>
        <numerusform>Für {n} nasse Schichten war es kalt</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>It was cold for {n} drying coats</source>
      <translation>
        <numerusform>Für eine trocknende Schicht war es kalt</numerusform>
        <numerusform>Für {n} trocknende Schichten war es kalt</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>The dew point was near for {n} wet coats</source>
      <translation>
        <numerusform>Für eine nasse Schicht war der Taupunkt nahe</numerusform>
        <numerusform>Für {n} nasse Schichten war der Taupunkt nahe</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>The dew point was near for {n} drying coats</source>
      <translation>
        <numerusform>Für eine trocknende Schicht war der Taupunkt nahe</numerusform>
        <numerusform>Für {n} trocknende Schichten war der Taupunkt nahe</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>It was damp for {n} wet coats</source>
      <translation>
        <numerusform>Für eine nasse Schicht war es feucht</numerusform>
        <numerusform>Für {n} nasse Schichten war es feucht</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>It was damp for {n} drying coats</source>
      <translation>
        <numerusform>Für eine trocknende Schicht war es feucht</numerusform>
        <numerusform>Für {n} trocknende Schichten war es feucht</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>The air was too dry or too warm for {n} wet coats</source>
      <translation>
        <numerusform>Für eine nasse Schicht war die Luft zu trocken oder zu warm</numerusform>
        <numerusform>Für {n} nasse Schichten war die Luft zu trocken oder zu warm</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>Dust was falling on {n} wet coats</source>
      <translation>
        <numerusform>Staub fiel auf eine nasse Schicht</numerusform>
        <numerusform>Staub fiel auf {n} nasse Schichten</numerusform>
      </translation>
    </message>
    <message>
      <source>rectangle</source>
      <translation>rechteckig</translation>
    </message>
    <message>
      <source>round</source>
      <translation>rund</translation>
    </message>
    <message>
      <source>panels</source>
      <translation>Tafeln</translation>
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
      <source>common practice, no source</source>
      <translation>üblich, ohne Quelle</translation>
    </message>
    <message>
      <source>the product's sheet</source>
      <translation>das Datenblatt des Produkts</translation>
    </message>
    <message>
      <source>Its data sheet is missing</source>
      <translation>Ihr Datenblatt fehlt</translation>
    </message>
    <message>
      <source>Not in this order: gloss goes below satin and matt</source>
      <translation>Nicht in dieser Folge: Glänzendes gehört unter Seidenmattes und Mattes</translation>
    </message>
    <message>
      <source>Not in this order: satin or matt wants gloss below</source>
      <translation>Nicht in dieser Folge: Seidenmatt und Matt brauchen Glanz darunter</translation>
    </message>
    <message>
      <source>No isolation coat lies below</source>
      <translation>Darunter liegt keine Trennschicht</translation>
    </message>
    <message>
      <source>Not in this order: isolation goes below varnish</source>
      <translation>Nicht in dieser Folge: Die Trennschicht gehört unter den Firnis</translation>
    </message>
    <message>
      <source>Only once the coat below is dry through</source>
      <translation>Erst, wenn die Schicht darunter durchgetrocknet ist</translation>
    </message>
    <message>
      <source>Water-borne over solvent-borne is not advised</source>
      <translation>Wasserbasiert auf lösemittelhaltig ist nicht ratsam</translation>
    </message>
    <message>
      <source>{coat} straight on the paint dulls its darks unevenly: lay isolation, then gloss, below it.</source>
      <translation>{coat} direkt auf der Farbe macht ihre Tiefen ungleich stumpf: darunter erst Trennschicht, dann Glanz.</translation>
    </message>
    <message>
      <source>{coat} as the first coat dulls its darks unevenly: lay isolation, then gloss, below it.</source>
      <translation>{coat} als erste Schicht macht die Tiefen ungleich stumpf: darunter erst Trennschicht, dann Glanz.</translation>
    </message>
    <message>
      <source>The product's own sheet comes first.</source>
      <translation>Das Datenblatt des Produkts geht vor.</translation>
    </message>
    <message>
      <source>{coat} over {below} undoes it: lay gloss first, satin or matt last.</source>
      <translation>{coat} auf {below} hebt dessen Wirkung auf: erst glänzend, zuletzt seidenmatt oder matt.</translation>
    </message>
    <message>
      <source>{coat} can be taken off again, but no isolation coat lies below it: taking it off may touch the paint. Lay isolation first.</source>
      <translation>{coat} lässt sich wieder abnehmen, aber darunter liegt keine Trennschicht: Das Abnehmen könnte die Farbe angreifen. Zuerst die Trennschicht auftragen.</translation>
    </message>
    <message>
      <source>Isolation over varnish locks that in: it belongs on the paint, below all varnish.</source>
      <translation>Eine Trennschicht über Firnis schließt ihn ein: Sie gehört auf die Farbe, unter allen Firnis.</translation>
    </message>
    <message>
      <source>{coat} is solvent-borne and {below} below is water-borne: only once that is dry through; the plan waits for it.</source>
      <translation>{coat} ist lösemittelhaltig und {below} darunter wasserbasiert: erst, wenn das durchgetrocknet ist; der Plan wartet darauf.</translation>
    </message>
    <message>
      <source>{coat} is water-borne and {below} below is solvent-borne: not advised, it may bead and not hold. Stay with one kind, unless the product's sheet allows it.</source>
      <translation>{coat} ist wasserbasiert und {below} darunter lösemittelhaltig: nicht ratsam, es kann abperlen und nicht haften. Bei einer Art bleiben, außer das Datenblatt erlaubt es.</translation>
    </message>
    <message>
      <source>There is no data sheet {name}: put it among your sheets, or plan another coat.</source>
      <translation>Es gibt kein Datenblatt {name}: Legen Sie es zu Ihren Datenblättern oder planen Sie eine andere Schicht.</translation>
    </message>
    <message>
      <source>without its sheet nothing is known of it</source>
      <translation>ohne ihr Datenblatt ist nichts über sie bekannt</translation>
    </message>
    <message>
      <source>{coat} is coat {number} with matting agent, and {most} are the most: more dull the colours below. Build up with gloss instead.</source>
      <translation>{coat} ist die {number}. Schicht mit Mattierungsmittel, und {most} sind das Höchste: Mehr machen die Farben darunter stumpf. Stattdessen mit Glanz aufbauen.</translation>
    </message>
    <message>
      <source>dry-hard: nine tenths of what makes the film soft have left it (assumption); by its edges, clean hands</source>
      <translation>hart: neun Zehntel dessen, was den Film weich macht, sind fort (Annahme); an den Kanten, mit sauberen Händen</translation>
    </message>
    <message>
      <source>cured as its sheet says: a film wrapped before sticks to its wrapping (common practice, no source)</source>
      <translation>ausgehärtet nach Datenblatt: Ein früher eingepackter Film klebt an seiner Hülle (üblich, ohne Quelle)</translation>
    </message>
    <message>
      <source>cured, and wrapped in the next working hours (common practice, no source)</source>
      <translation>ausgehärtet und in der nächsten Arbeitszeit eingepackt (üblich, ohne Quelle)</translation>
    </message>
    <message numerus="yes">
      <source>{n} days</source>
      <translation>
        <numerusform>{n} Tag</numerusform>
        <numerusform>{n} Tage</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>{n} days to spare</source>
      <translation>
        <numerusform>1 Tag Spielraum</numerusform>
        <numerusform>{n} Tage Spielraum</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>Cannot be ready by {day}: about {n} days late, because {reason}.</source>
      <translation>
        <numerusform>Wird bis {day} nicht fertig: etwa einen Tag zu spät, denn {reason}.</numerusform>
        <numerusform>Wird bis {day} nicht fertig: etwa {n} Tage zu spät, denn {reason}.</numerusform>
      </translation>
    </message>
    <message>
      <source>the {label} is not ready for the next coat (about {span})</source>
      <translation>{label} ist noch nicht überarbeitbar (etwa {span})</translation>
    </message>
    <message numerus="yes">
      <source>{n} coats are still to come, and each waits for the one below (about {span})</source>
      <translation>
        <numerusform>eine Schicht kommt noch, und sie wartet auf die darunter (etwa {span})</numerusform>
        <numerusform>{n} Schichten kommen noch, und jede wartet auf die darunter (etwa {span})</numerusform>
      </translation>
    </message>
    <message>
      <source>No time for {label} after the {top} is in sight, in this room as it is.</source>
      <translation>Für {label} nach {top} ist in diesem Raum, wie er ist, keine Zeit in Sicht.</translation>
    </message>
    <message>
      <source>Nothing to lay today. Next: {title}, {coat}, {day}.</source>
      <translation>Heute ist nichts aufzutragen. Als Nächstes: {title}, {coat}, {day}.</translation>
    </message>
    <message>
      <source>{minutes} min</source>
      <translation>{minutes} min</translation>
    </message>
    <message>
      <source>{hours} h</source>
      <translation>{hours} h</translation>
    </message>
    <message numerus="yes">
      <source>{n} days late</source>
      <translation>
        <numerusform>1 Tag zu spät</numerusform>
        <numerusform>{n} Tage zu spät</numerusform>
      </translation>
    </message>
    <message>
      <source>no day to spare</source>
      <translation>kein Spielraum</translation>
    </message>
    <message>
      <source>the coat below is not ready for the next coat (about {span})</source>
      <translation>die Schicht darunter ist noch nicht überarbeitbar (etwa {span})</translation>
    </message>
    <message>
      <source>No day of the week has working hours, so nothing can be dated: set them.</source>
      <translation>Kein Wochentag hat Arbeitszeiten, also lässt sich nichts datieren: Legen Sie sie fest.</translation>
    </message>
    <message>
      <source>The {top} was found {finding}: nothing is dated before a new test.</source>
      <translation>{top} zuletzt befunden: {finding}. Vor einer neuen Probe wird nichts datiert.</translation>
    </message>
    <message>
      <source>Plan its coats: there is nothing to date yet.</source>
      <translation>Planen Sie die Schichten: Noch gibt es nichts zu datieren.</translation>
    </message>
    <message>
      <source>When it will be cured is not in sight, in this room as it is.</source>
      <translation>Wann es ausgehärtet ist, ist in diesem Raum, wie er ist, nicht in Sicht.</translation>
    </message>
    <message>
      <source>No time for {label} is in sight, in this room as it is.</source>
      <translation>Für {label} ist in diesem Raum, wie er ist, keine Zeit in Sicht.</translation>
    </message>
    <message>
      <source>First {title}: {coat}.</source>
      <translation>Zuerst {title}: {coat}.</translation>
    </message>
    <message>
      <source>Handed over by hand, unwrapped and with nothing on its face, it can go from {day} (dry-hard).</source>
      <translation>Von Hand übergeben, ohne Hülle und ohne etwas auf der Fläche, kann es ab {day} gehen (hart).</translation>
    </message>
    <message>
      <source>Longer hours, or one more day a week, save up to {span}.</source>
      <translation>Längere Arbeitszeiten oder ein Tag mehr in der Woche sparen bis zu {span}.</translation>
    </message>
    <message>
      <source>Lay its coats before those of the other pieces.</source>
      <translation>Tragen Sie seine Schichten vor denen der anderen Bilder auf.</translation>
    </message>
    <message>
      <source>Tell the client early: {day} is what the plan gives.</source>
      <translation>Sagen Sie es dem Kunden früh: Der Plan ergibt {day}.</translation>
    </message>
    <message>
      <source>No coat to come can be dated yet.</source>
      <translation>Noch lässt sich keine kommende Schicht datieren.</translation>
    </message>
    <message>
      <source>No coat is to come.</source>
      <translation>Keine Schicht kommt mehr.</translation>
    </message>
    <message>
      <source>the {label} must cure before it may be wrapped (about {span})</source>
      <translation>{label} muss vor dem Einpacken aushärten (etwa {span})</translation>
    </message>
    <message>
      <source>its coats wait for your working hours (about {span})</source>
      <translation>seine Schichten warten auf Ihre Arbeitszeiten (etwa {span})</translation>
    </message>
    <message>
      <source>other pieces need your hands first (about {span})</source>
      <translation>andere Bilder brauchen Sie zuerst (etwa {span})</translation>
    </message>
    <message>
      <source>{film} wet, {times} × the sheet: thick, it will dry slowly</source>
      <translation>{film} nass, {times} × Datenblatt: dick, sie trocknet langsam</translation>
    </message>
    <message>
      <source>{share} % {thinner}: the film may not close, and stay soft or cloudy. Keep to the sheet.</source>
      <translation>{share} % {thinner}: Der Film schließt sich vielleicht nicht und bleibt weich oder trüb. Ans Datenblatt halten.</translation>
    </message>
    <message>
      <source>{share} % {thinner} is more than most sheets allow: see yours first.</source>
      <translation>{share} % {thinner} ist mehr, als die meisten Datenblätter erlauben: zuerst in Ihres sehen.</translation>
    </message>
    <message>
      <source>{film} wet, {times} × the sheet</source>
      <translation>{film} nass, {times} × Datenblatt</translation>
    </message>
    <message>
      <source>{film} wet, {times} × the sheet: far too thick, it will dry slowly and may stay milky</source>
      <translation>{film} nass, {times} × Datenblatt: viel zu dick, sie trocknet langsam und kann milchig bleiben</translation>
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
      <source>Torch only far from solvent, its vapour and the mesh cover, extinguisher at hand; the product's sheet comes first.</source>
      <translation>Brenner nur fern von Lösemittel, seinem Dampf und der Netzabdeckung, Feuerlöscher zur Hand; das Datenblatt geht vor.</translation>
    </message>
    <message>
      <source>No torch, flame or spark: this coat gives off solvent vapour. Break bubbles with the brush; keep fresh air coming.</source>
      <translation>Kein Brenner, keine Flamme, kein Funke: Diese Schicht gibt Lösemitteldampf ab. Blasen mit dem Pinsel brechen; weiter lüften.</translation>
    </message>
    <message>
      <source>No torch or flame near the mesh cover.</source>
      <translation>Kein Brenner und keine Flamme nahe der Netzabdeckung.</translation>
    </message>
    <message>
      <source>No torch, flame or spark: solvent vapour gathers under the cover too. Keep fresh air coming.</source>
      <translation>Kein Brenner, keine Flamme, kein Funke: Auch unter der Abdeckung sammelt sich Lösemitteldampf. Weiter lüften.</translation>
    </message>
    <message>
      <source>Look too: dull or blushed does not clear by itself. If it is, see the product's sheet before the next coat.</source>
      <translation>Auch hinsehen: Stumpf oder weiß angelaufen klärt sich nicht von selbst. Wenn ja, vor der nächsten Schicht ins Datenblatt sehen.</translation>
    </message>
    <message>
      <source>Solvent-borne: ventilate without blowing on the piece, wear gloves, no flame or spark; dry rags flat outdoors or keep them under water in a closed metal container. The product's sheet comes first.</source>
      <translation>Lösemittelhaltig: lüften, ohne auf das Bild zu blasen, Handschuhe, keine Flamme, kein Funke; Lappen flach im Freien trocknen oder unter Wasser in einem geschlossenen Metallbehälter aufbewahren. Das Datenblatt geht vor.</translation>
    </message>
    <message>
      <source>Second bubble pass, scrape drips</source>
      <translation>Zweiter Durchgang für Blasen, Tropfen abziehen</translation>
    </message>
    <message>
      <source>No torch: {coat} gives off solvent vapour in this room. Break bubbles with the brush; keep fresh air.</source>
      <translation>Kein Brenner: {coat} gibt in diesem Raum Lösemitteldampf ab. Blasen mit dem Pinsel brechen; weiter lüften.</translation>
    </message>
    <message>
      <source>Laid on {label} without a touch test: if it stays milky, lay nothing more and keep the room dry.</source>
      <translation>Ohne Griffprobe auf {label} aufgetragen: Bleibt sie milchig, nichts mehr auftragen und den Raum trocken halten.</translation>
    </message>
    <message>
      <source>Touch test at an edge before the next coat</source>
      <translation>Griffprobe am Rand vor der nächsten Schicht</translation>
    </message>
    <message>
      <source>Set the mesh cover when no more bubbles rise</source>
      <translation>Netzabdeckung aufsetzen, wenn keine Blasen mehr steigen</translation>
    </message>
    <message>
      <source>Recoat: {coat}</source>
      <translation>Nächste Schicht: {coat}</translation>
    </message>
    <message>
      <source>Lay {coat}</source>
      <translation>{coat} auftragen</translation>
    </message>
    <message>
      <source>Has the milkiness cleared?</source>
      <translation>Ist die Milchigkeit verschwunden?</translation>
    </message>
    <message>
      <source>Touch test at an edge before it is wrapped</source>
      <translation>Griffprobe am Rand vor dem Einpacken</translation>
    </message>
    <message>
      <source>Read the hygrometer, and type it</source>
      <translation>Hygrometer ablesen und eintippen</translation>
    </message>
    <message>
      <source>The recipe's name has {length} characters; give it 1 to {most} that can be shown.</source>
      <translation>Der Name des Rezepts hat {length} Zeichen; geben Sie ihm 1 bis {most}, die sich zeigen lassen.</translation>
    </message>
    <message>
      <source>The recipe has {number} coats; give it 1 to {most}.</source>
      <translation>Das Rezept hat {number} Schichten; geben Sie ihm 1 bis {most}.</translation>
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
      <source>Gloss, solvent-borne</source>
      <translation>Glanz, lösemittelhaltig</translation>
    </message>
    <message>
      <source>Satin, solvent-borne</source>
      <translation>Seidenmatt, lösemittelhaltig</translation>
    </message>
    <message>
      <source>in still air at {least} to {most} and under 60 %</source>
      <translation>in stiller Luft bei {least} bis {most} und unter 60 %</translation>
    </message>
    <message>
      <source>in fresh air that does not blow on it, at {least} to {most} and under 60 %</source>
      <translation>in frischer Luft, die nicht darauf bläst, bei {least} bis {most} und unter 60 %</translation>
    </message>
    <message>
      <source>Then look again in the same light and record what you see: this review learns from it.</source>
      <translation>Dann im selben Licht wieder hinsehen und festhalten, was Sie sehen: Dieser Rückblick lernt daraus.</translation>
    </message>
    <message>
      <source>Stop as soon as a step shows no change on a small test corner: more of it only harms the film.</source>
      <translation>Aufhören, sobald ein Schritt an einer kleinen Probeecke nichts ändert: Mehr davon schadet dem Film nur.</translation>
    </message>
    <message>
      <source>A valuable or irreplaceable piece: do nothing but wait, and ask a conservator before anything touches the film.</source>
      <translation>Ein wertvolles oder unersetzliches Bild: nichts tun als warten, und eine Restauratorin fragen, bevor irgendetwas den Film berührt.</translation>
    </message>
    <message>
      <source>No brushing, rubbing, heating or polishing while it may still clear by itself.</source>
      <translation>Nicht pinseln, reiben, erwärmen oder polieren, solange es sich noch von selbst klären kann.</translation>
    </message>
    <message>
      <source>Only if waiting has failed: taking the varnish off. Read its sheet first for whether it can be removed, and with what; test a corner; the isolation coat below must be whole, or the paint goes with it.</source>
      <translation>Nur, wenn Warten nichts geholfen hat: den Firnis abnehmen. Erst im Datenblatt lesen, ob und womit er abnehmbar ist; an einer Ecke proben; die Trennschicht darunter muss heil sein, sonst geht die Farbe mit.</translation>
    </message>
    <message>
      <source>Sanding dust: a respirator as the product's sheet says, and wipe it up damp, never dry.</source>
      <translation>Schleifstaub: Atemschutz, wie das Datenblatt sagt, und feucht aufwischen, nie trocken.</translation>
    </message>
    <message>
      <source>It is solvent-borne: keep fresh air coming through the room all the time, away from the piece; no flame or spark.</source>
      <translation>Sie ist lösemittelhaltig: die ganze Zeit frische Luft durch den Raum, am Bild vorbei; keine Flamme, kein Funke.</translation>
    </message>
    <message>
      <source>Removal with solvent: open windows and let air through, gloves, no flame, spark or heater, a respirator as the product's sheet says.</source>
      <translation>Abnehmen mit Lösemittel: Fenster auf und durchlüften, Handschuhe, keine Flamme, kein Funke, kein Heizgerät, Atemschutz, wie das Datenblatt sagt.</translation>
    </message>
    <message>
      <source>Solvent-wet rags can heat up and catch fire by themselves: dry them flat outdoors, or keep them in a closed metal container with water.</source>
      <translation>Lappen mit Lösemittel können sich erhitzen und selbst entzünden: flach im Freien trocknen oder in einem geschlossenen Metallbehälter mit Wasser aufbewahren.</translation>
    </message>
    <message>
      <source>The product's own sheet, local rules and licensed advice come first.</source>
      <translation>Das Datenblatt des Produkts, örtliche Vorschriften und fachkundiger Rat gehen vor.</translation>
    </message>
    <message>
      <source>Leave it uncovered {room}: a fresh coat is milky until its water has left.</source>
      <translation>Offen stehen lassen, {room}: Eine frische Schicht ist milchig, bis ihr Wasser fort ist.</translation>
    </message>
    <message>
      <source>Look again after the normal milky time, at the earliest when the next coat may go on.</source>
      <translation>Nach der üblichen milchigen Zeit wieder hinsehen, frühestens, wenn die nächste Schicht darauf dürfte.</translation>
    </message>
    <message>
      <source>Nothing needs doing: it came out clear. Leave it in peace until it is fit to wrap.</source>
      <translation>Es ist nichts zu tun: Sie ist klar geworden. In Ruhe lassen, bis sie sich einpacken lässt.</translation>
    </message>
    <message>
      <source>Nothing needs doing yet: how it came out is not recorded.</source>
      <translation>Noch ist nichts zu tun: Wie sie geworden ist, ist nicht verzeichnet.</translation>
    </message>
    <message>
      <source>Look at it once it should be clear, in slanting light and from the front, and record what you see.</source>
      <translation>Hinsehen, wenn sie klar sein sollte, im Streiflicht und von vorn, und festhalten, was Sie sehen.</translation>
    </message>
    <message>
      <source>Leave it uncovered {room} for three days; sealed-in water often leaves, and the film clears.</source>
      <translation>Drei Tage offen stehen lassen, {room}; eingeschlossenes Wasser geht oft, und der Film klärt sich.</translation>
    </message>
    <message>
      <source>Look for edges that clear first, a sign that it works; then give it up to a week more.</source>
      <translation>Auf Ränder achten, die zuerst klar werden, ein Zeichen, dass es wirkt; dann bis zu einer Woche mehr geben.</translation>
    </message>
    <message>
      <source>Dry the room, then leave it {room} for three days: what is only damp clears.</source>
      <translation>Den Raum trocknen, dann drei Tage stehen lassen, {room}: Was nur feucht ist, klärt sich.</translation>
    </message>
    <message>
      <source>Look for milkiness that thins evenly; if it has not changed after a week, it will hardly clear by itself.</source>
      <translation>Auf Milchigkeit achten, die gleichmäßig abnimmt; hat sie sich nach einer Woche nicht geändert, klärt sie sich kaum von selbst.</translation>
    </message>
    <message>
      <source>Keep the room at {least} to {most} for three days: it hardens the film, though what did not knit stays so.</source>
      <translation>Den Raum drei Tage auf {least} bis {most} halten: Das härtet den Film, doch was sich nicht verbunden hat, bleibt so.</translation>
    </message>
    <message>
      <source>Rub a hidden corner with a dry finger: powder comes off a film that never formed.</source>
      <translation>Eine verdeckte Ecke mit trockenem Finger reiben: Von einem Film, der sich nie gebildet hat, löst sich Pulver.</translation>
    </message>
    <message>
      <source>If no powder comes off: a thin coat of the same gloss, in a warm room, may wet it through; test a corner.</source>
      <translation>Löst sich keines: Eine dünne Schicht desselben glänzenden Firnisses, in einem warmen Raum, kann ihn durchnetzen; an einer Ecke proben.</translation>
    </message>
    <message>
      <source>Leave it {room} for two days, the piece as warm as the room.</source>
      <translation>Zwei Tage stehen lassen, {room}, das Bild so warm wie der Raum.</translation>
    </message>
    <message>
      <source>Look at it in slanting light: rings and runs of droplets stay, an even haze often clears.</source>
      <translation>Im Streiflicht ansehen: Ringe und Tropfenspuren bleiben, ein gleichmäßiger Schleier klärt sich oft.</translation>
    </message>
    <message>
      <source>Haze that stays: a thin coat of the same product in a dry room, tested on a corner, often takes it in.</source>
      <translation>Ein Schleier, der bleibt: Eine dünne Schicht desselben Produkts in einem trockenen Raum, an einer Ecke geprobt, nimmt ihn oft auf.</translation>
    </message>
    <message>
      <source>Leave it {room} for a week: under a skin the rest dries slowly.</source>
      <translation>Eine Woche stehen lassen, {room}: Unter einer Haut trocknet der Rest langsam.</translation>
    </message>
    <message>
      <source>Press a gloved fingertip at an edge: while it gives, it is not dry below, and nothing may go on it.</source>
      <translation>Mit behandschuhter Fingerspitze am Rand drücken: Solange es nachgibt, ist es darunter nicht trocken, und nichts darf darauf.</translation>
    </message>
    <message>
      <source>Wrinkles stay. Once dry through, they can be levelled by fine wet sanding and another thin coat.</source>
      <translation>Runzeln bleiben. Durchgetrocknet lassen sie sich durch feines Nassschleifen und eine weitere dünne Schicht einebnen.</translation>
    </message>
    <message>
      <source>Leave it uncovered {room} for a week; twice the thickness takes about four times as long.</source>
      <translation>Eine Woche offen stehen lassen, {room}; die doppelte Dicke braucht etwa viermal so lange.</translation>
    </message>
    <message>
      <source>Look for thin places that clear first; the thick ones follow in the order of their thickness.</source>
      <translation>Auf dünne Stellen achten, die zuerst klar werden; die dicken folgen der Dicke nach.</translation>
    </message>
    <message>
      <source>Leave it {room} for three days.</source>
      <translation>Drei Tage stehen lassen, {room}.</translation>
    </message>
    <message>
      <source>Wipe a corner with a barely damp cloth: if it turns clear while wet and dull again, the film has pores.</source>
      <translation>Eine Ecke mit kaum feuchtem Tuch wischen: Wird sie nass klar und dann wieder stumpf, hat der Film Poren.</translation>
    </message>
    <message>
      <source>A thin coat of the product as it comes from the bottle often closes them; test a corner.</source>
      <translation>Eine dünne Schicht des unverdünnten Produkts schließt sie oft; an einer Ecke proben.</translation>
    </message>
    <message>
      <source>Waiting does not help: the matting agent stays where it is.</source>
      <translation>Warten hilft nicht: Das Mattierungsmittel bleibt, wo es ist.</translation>
    </message>
    <message>
      <source>Look at it in the light that it will hang in: dull darks show most in slanting light.</source>
      <translation>In dem Licht ansehen, in dem es hängen wird: Stumpfe Tiefen zeigen sich im Streiflicht am stärksten.</translation>
    </message>
    <message>
      <source>A last coat of gloss brings some depth back, at the cost of the sheen that was ordered; test a corner.</source>
      <translation>Eine letzte glänzende Schicht bringt etwas Tiefe zurück, auf Kosten des bestellten Glanzgrads; an einer Ecke proben.</translation>
    </message>
    <message>
      <source>Leave it to dry through before anything else; a mark in a soft film only grows.</source>
      <translation>Vor allem anderen durchtrocknen lassen; eine Spur in einem weichen Film wird nur größer.</translation>
    </message>
    <message>
      <source>A week later: level the mark by fine wet sanding of that spot, and lay a thin coat over the whole face.</source>
      <translation>Eine Woche später: die Stelle fein nass schleifen und eine dünne Schicht über die ganze Fläche legen.</translation>
    </message>
    <message>
      <source>Leave it {room} for three days and look again: most haze of a fresh coat leaves by itself.</source>
      <translation>Drei Tage stehen lassen, {room}, und wieder hinsehen: Der meiste Schleier einer frischen Schicht vergeht von selbst.</translation>
    </message>
    <message>
      <source>Look closely in slanting light: specks and hairs lie in the film, rings come from water or soap below.</source>
      <translation>Im Streiflicht genau hinsehen: Einschlüsse und Haare liegen im Film, Ringe kommen von Wasser oder Seife darunter.</translation>
    </message>
    <message>
      <source>Read the hygrometer, and type what it says.</source>
      <translation>Hygrometer ablesen und eintippen, was es zeigt.</translation>
    </message>
    <message>
      <source>Hold a strip of tissue beside the pieces, and say with the reading how it hangs.</source>
      <translation>Einen Streifen Seidenpapier neben die Bilder halten und zum Messwert angeben, wie er hängt.</translation>
    </message>
    <message>
      <source>Last read {days} days ago; air speed is not measured.</source>
      <translation>Zuletzt vor {days} Tagen gemessen; die Luftbewegung wird nicht gemessen.</translation>
    </message>
    <message>
      <source>Last read just now; air speed is not measured.</source>
      <translation>Eben gemessen; die Luftbewegung wird nicht gemessen.</translation>
    </message>
    <message>
      <source>Last read {minutes} min ago; air speed is not measured.</source>
      <translation>Zuletzt vor {minutes} min gemessen; die Luftbewegung wird nicht gemessen.</translation>
    </message>
    <message>
      <source>Last read {hours} h ago; air speed is not measured.</source>
      <translation>Zuletzt vor {hours} h gemessen; die Luftbewegung wird nicht gemessen.</translation>
    </message>
    <message>
      <source>Perhaps: {cause}. Likely is not proven.</source>
      <translation>Vielleicht: {cause}. Wahrscheinlich ist nicht bewiesen.</translation>
    </message>
    <message>
      <source>Of ten coats like this about {many} would cloud; likeliest then: {cause}.</source>
      <translation>Von zehn solchen Schichten würden etwa {many} trüb; am ehesten dann: {cause}.</translation>
    </message>
    <message>
      <source>It came out clear; of ten coats like this about {many} cloud.</source>
      <translation>Sie ist klar geworden; von zehn solchen Schichten werden etwa {many} trüb.</translation>
    </message>
    <message>
      <source>Most likely: {cause}. Likely is not proven.</source>
      <translation>Höchstwahrscheinlich: {cause}. Wahrscheinlich ist nicht bewiesen.</translation>
    </message>
    <message>
      <source>More likely than any other: {cause}. Likely is not proven.</source>
      <translation>Wahrscheinlicher als alles andere: {cause}. Wahrscheinlich ist nicht bewiesen.</translation>
    </message>
    <message>
      <source>Of ten coats like this about none would cloud; likeliest then: {cause}.</source>
      <translation>Von zehn solchen Schichten würde etwa keine trüb; am ehesten dann: {cause}.</translation>
    </message>
    <message>
      <source>It came out clear; of ten coats like this about none cloud.</source>
      <translation>Sie ist klar geworden; von zehn solchen Schichten wird etwa keine trüb.</translation>
    </message>
    <message>
      <source>Its sheet names no least film-forming temperature: {temperature} is taken.</source>
      <translation>Ihr Datenblatt nennt keine Mindestfilmbildetemperatur: {temperature} ist angenommen.</translation>
    </message>
    <message>
      <source>No readings for {span} while it was wet, from {time}.</source>
      <translation>Keine Messwerte für {span}, solange sie nass war, ab {time}.</translation>
    </message>
    <message>
      <source>No readings for {span} while it closed, from {time}.</source>
      <translation>Keine Messwerte für {span}, während sie sich schloss, ab {time}.</translation>
    </message>
    <message>
      <source>No readings for {span} while it hardened, from {time}.</source>
      <translation>Keine Messwerte für {span}, während sie härtete, ab {time}.</translation>
    </message>
    <message>
      <source>From {time} on the room is still to come: it is taken to stay as it was read last.</source>
      <translation>Ab {time} kommt der Raum erst noch: Angenommen ist, dass er bleibt wie zuletzt gemessen.</translation>
    </message>
    <message>
      <source>The log holds no reading of its time: {temperature}, 65 % and still air are taken, or what was read nearest.</source>
      <translation>Aus ihrer Zeit gibt es keinen Messwert: Angenommen sind {temperature}, 65 % und stille Luft, oder was am nächsten gemessen wurde.</translation>
    </message>
    <message>
      <source>No readings for {span} while the {label} below dried, laid at {time}.</source>
      <translation>Keine Messwerte für {span}, während {label} darunter trocknete, aufgetragen {time}.</translation>
    </message>
    <message>
      <source>How much was laid is not recorded: {film} wet is taken, as on its sheet.</source>
      <translation>Wie viel aufgetragen wurde, ist nicht verzeichnet: {film} nass ist angenommen, wie auf dem Datenblatt.</translation>
    </message>
    <message>
      <source>How it came out is not recorded: these are the causes that it would most likely have.</source>
      <translation>Wie sie geworden ist, ist nicht verzeichnet: Dies sind die Ursachen, die sie am ehesten hätte.</translation>
    </message>
    <message>
      <source>It is solvent-borne: of its film, only warmth and the dew point are followed.</source>
      <translation>Sie ist lösemittelhaltig: Von ihrem Film werden nur Wärme und Taupunkt verfolgt.</translation>
    </message>
    <message>
      <source>Air speed was not measured at times: a fan or a draught would not show; still air is taken.</source>
      <translation>Die Luftbewegung wurde zeitweise nicht gemessen: Ein Ventilator oder Zug zeigte sich nicht; stille Luft ist angenommen.</translation>
    </message>
    <message>
      <source>Air speed was not measured: a fan or a draught would not show; still air is taken.</source>
      <translation>Die Luftbewegung wurde nicht gemessen: Ein Ventilator oder Zug zeigte sich nicht; stille Luft ist angenommen.</translation>
    </message>
    <message>
      <source>When it was looked at is not recorded: a day after it was laid is taken.</source>
      <translation>Wann hingesehen wurde, ist nicht verzeichnet: Angenommen ist ein Tag nach dem Auftragen.</translation>
    </message>
    <message>
      <source>Laid over a coat still holding water</source>
      <translation>Auf eine noch feuchte Schicht aufgetragen</translation>
    </message>
    <message>
      <source>Air too damp while it dried</source>
      <translation>Zu feuchte Luft beim Trocknen</translation>
    </message>
    <message>
      <source>Film too cool to knit together</source>
      <translation>Film zu kühl, um sich zu schließen</translation>
    </message>
    <message>
      <source>Water settled on the film</source>
      <translation>Wasser auf dem Film niedergeschlagen</translation>
    </message>
    <message>
      <source>Dried too fast on top</source>
      <translation>Oben zu schnell getrocknet</translation>
    </message>
    <message>
      <source>Coat laid too thick</source>
      <translation>Schicht zu dick aufgetragen</translation>
    </message>
    <message>
      <source>Thinned too far</source>
      <translation>Zu stark verdünnt</translation>
    </message>
    <message>
      <source>Matting agent built up</source>
      <translation>Mattierungsmittel angehäuft</translation>
    </message>
    <message>
      <source>Touched or covered while wet</source>
      <translation>Nass berührt oder abgedeckt</translation>
    </message>
    <message>
      <source>Still clearing, as a fresh coat does</source>
      <translation>Wird noch klar, wie jede frische Schicht</translation>
    </message>
    <message>
      <source>Nothing in the records explains it</source>
      <translation>Nichts Verzeichnetes erklärt es</translation>
    </message>
    <message>
      <source>laid over a coat still holding water</source>
      <translation>auf eine noch feuchte Schicht aufgetragen</translation>
    </message>
    <message>
      <source>air too damp while it dried</source>
      <translation>zu feuchte Luft beim Trocknen</translation>
    </message>
    <message>
      <source>film too cool to knit together</source>
      <translation>Film zu kühl, um sich zu schließen</translation>
    </message>
    <message>
      <source>water settled on the film</source>
      <translation>Wasser auf dem Film niedergeschlagen</translation>
    </message>
    <message>
      <source>dried too fast on top</source>
      <translation>oben zu schnell getrocknet</translation>
    </message>
    <message>
      <source>coat laid too thick</source>
      <translation>Schicht zu dick aufgetragen</translation>
    </message>
    <message>
      <source>thinned too far</source>
      <translation>zu stark verdünnt</translation>
    </message>
    <message>
      <source>matting agent built up</source>
      <translation>Mattierungsmittel angehäuft</translation>
    </message>
    <message>
      <source>touched or covered while wet</source>
      <translation>nass berührt oder abgedeckt</translation>
    </message>
    <message>
      <source>still clearing, as a fresh coat does</source>
      <translation>wird noch klar, wie jede frische Schicht</translation>
    </message>
    <message>
      <source>nothing in the records explains it</source>
      <translation>nichts Verzeichnetes erklärt es</translation>
    </message>
    <message>
      <source>times the sheet's pace</source>
      <translation>-mal das Tempo des Datenblatts</translation>
    </message>
    <message>
      <source>times the sheet's film</source>
      <translation>-mal der Film des Datenblatts</translation>
    </message>
    <message>
      <source>coats</source>
      <translation>Schichten</translation>
    </message>
    <message>
      <source>of the wait</source>
      <translation>der Wartezeit</translation>
    </message>
    <message>
      <source>times its age</source>
      <translation>-mal ihr Alter</translation>
    </message>
    <message>
      <source>Laid at {film}: {poured}</source>
      <translation>Mit {film} aufgetragen: {poured}</translation>
    </message>
    <message>
      <source>Looked at {time}</source>
      <translation>{time} hingesehen</translation>
    </message>
    <message>
      <source>Under a mesh cover from {time}</source>
      <translation>Unter einer Netzabdeckung ab {time}</translation>
    </message>
    <message>
      <source>Covered at {time}, not touched before</source>
      <translation>{time} abgedeckt, vorher nicht berührt</translation>
    </message>
    <message>
      <source>Not touched before it was dry</source>
      <translation>Nicht berührt, bevor sie trocken war</translation>
    </message>
    <message>
      <source>Waited until {time}</source>
      <translation>Bis {time} gewartet</translation>
    </message>
    <message>
      <source>Laid at {time}</source>
      <translation>{time} aufgetragen</translation>
    </message>
    <message>
      <source>Not thinned</source>
      <translation>Nicht verdünnt</translation>
    </message>
    <message>
      <source>Gloss below, this coat alone with matting agent</source>
      <translation>Darunter Glanz, nur diese Schicht mit Mattierungsmittel</translation>
    </message>
    <message>
      <source>Gloss in place of the coats with matting agent</source>
      <translation>Glanz statt der Schichten mit Mattierungsmittel</translation>
    </message>
    <message>
      <source>3 in 100 coats cloud without a recorded reason: judgement, learnt from her own coats.</source>
      <translation>3 von 100 Schichten werden ohne verzeichneten Grund trüb: Urteil, gelernt aus ihren eigenen Schichten.</translation>
    </message>
    <message>
      <source>Even at 0.45 g/m² that had still to leave, as over a coat at half of its recoat time: judgement.</source>
      <translation>Halb und halb bei 0,45 g/m², die noch entweichen mussten, wie auf einer Schicht zur halben Wartezeit: Urteil.</translation>
    </message>
    <message>
      <source>Even at 1.5 hours at 85 %, or 8 % over the sheet's limit: practice of ISO 8502-4; hours: judgement.</source>
      <translation>Halb und halb bei 1,5 Stunden mit 85 % oder 8 % über der Grenze des Datenblatts: Praxis der ISO 8502-4; Stunden: Urteil.</translation>
    </message>
    <message>
      <source>Even at 30 minutes under the minimum film-forming temperature (ISO 2115, ASTM D2354): judgement.</source>
      <translation>Halb und halb bei 30 Minuten unter der Mindestfilmbildetemperatur (ISO 2115, ASTM D2354): Urteil.</translation>
    </message>
    <message>
      <source>Even at 6 minutes at the dew point; a solvent-borne coat within 3 K of it (ISO 8502-4): judgement.</source>
      <translation>Halb und halb bei 6 Minuten am Taupunkt; lösemittelhaltig näher als 3 K daran (ISO 8502-4): Urteil.</translation>
    </message>
    <message>
      <source>Péclet number of Routh and Russel (1998) over the sheet's own run; even at 2.3 times: judgement.</source>
      <translation>Péclet-Zahl nach Routh und Russel (1998) gegen den Lauf des Datenblatts; halb und halb beim 2,3-Fachen: Urteil.</translation>
    </message>
    <message>
      <source>Even at 2.2 times the sheet's film; care from 1.5, act from 2: judgement.</source>
      <translation>Halb und halb beim 2,2-Fachen des Datenblatts; Achtung ab 1,5, handeln ab 2: Urteil.</translation>
    </message>
    <message>
      <source>Even where it was thinned by 25 %: judgement.</source>
      <translation>Halb und halb bei 25 % Verdünnung: Urteil.</translation>
    </message>
    <message>
      <source>More than one or two coats with matting agent dull the darks: common practice, no source.</source>
      <translation>Mehr als ein oder zwei Schichten mit Mattierungsmittel machen die Tiefen stumpf: üblich, ohne Quelle.</translation>
    </message>
    <message>
      <source>Cover after 20 minutes: common practice, no source; the rest: judgement.</source>
      <translation>Abdeckung nach 20 Minuten: üblich, ohne Quelle; das Übrige: Urteil.</translation>
    </message>
    <message>
      <source>Its sheet's clearing time in its own thickness and warmth; about two hours: common practice.</source>
      <translation>Die Klärzeit des Datenblatts bei ihrer Dicke und Wärme; etwa zwei Stunden: üblich.</translation>
    </message>
    <message>
      <source>It was looked at {age} after it was laid; in its warmth a coat of usual thickness is milky for about {span}.</source>
      <translation>{age} nach dem Auftragen wurde hingesehen; bei ihrer Wärme ist eine Schicht üblicher Dicke etwa {span} lang milchig.</translation>
    </message>
    <message>
      <source>What the records cannot show: dust, soap or grease below, a bottle that was shaken or had frozen, or a finger.</source>
      <translation>Was die Aufzeichnungen nicht zeigen können: Staub, Seife oder Fett darunter, eine geschüttelte oder gefrorene Flasche, oder ein Finger.</translation>
    </message>
    <message>
      <source>When it was looked at is not recorded.</source>
      <translation>Wann hingesehen wurde, ist nicht verzeichnet.</translation>
    </message>
    <message>
      <source>It was looked at {age} after it was laid, long after a fresh coat has cleared.</source>
      <translation>{age} nach dem Auftragen wurde hingesehen, lange nachdem eine frische Schicht klar ist.</translation>
    </message>
    <message>
      <source>It was looked at {age} after it was laid; in its warmth a coat of usual thickness is milky for a day or more.</source>
      <translation>{age} nach dem Auftragen wurde hingesehen; bei ihrer Wärme ist eine Schicht üblicher Dicke einen Tag oder länger milchig.</translation>
    </message>
    <message>
      <source>What the records cannot show: dust or hair that fell on it, lint of a brush or cloth, or bubbles.</source>
      <translation>Was die Aufzeichnungen nicht zeigen können: Staub oder Haare, die darauf fielen, Fasern von Pinsel oder Tuch, oder Blasen.</translation>
    </message>
    <message numerus="yes">
      <source>Of {n} coats with a recorded outcome {clouded} clouded, where about {expected} were expected.</source>
      <translation>
        <numerusform>Von einer Schicht mit verzeichnetem Ergebnis wurden {clouded} trüb, wo etwa {expected} zu erwarten waren.</numerusform>
        <numerusform>Von {n} Schichten mit verzeichnetem Ergebnis wurden {clouded} trüb, wo etwa {expected} zu erwarten waren.</numerusform>
      </translation>
    </message>
    <message>
      <source>No coat with a recorded outcome yet: the chances are our judgement.</source>
      <translation>Noch keine Schicht mit verzeichnetem Ergebnis: Die Chancen sind unser Urteil.</translation>
    </message>
    <message>
      <source>{cause} ({figure} g/m² that had still to leave)</source>
      <translation>{cause} ({figure} g/m², die noch entweichen mussten)</translation>
    </message>
    <message>
      <source>{cause} ({minutes} min under its least temperature)</source>
      <translation>{cause} ({minutes} min unter der kleinsten Temperatur)</translation>
    </message>
    <message>
      <source>{cause} (about {minutes} min at the dew point)</source>
      <translation>{cause} (etwa {minutes} min am Taupunkt)</translation>
    </message>
    <message>
      <source>{cause} ({figure} times as fast as in its sheet's room)</source>
      <translation>{cause} ({figure}-mal so schnell wie im Raum des Datenblatts)</translation>
    </message>
    <message>
      <source>{cause} ({figure} times its sheet's film)</source>
      <translation>{cause} (das {figure}-Fache des Datenblatts)</translation>
    </message>
    <message>
      <source>{cause} ({share} % added)</source>
      <translation>{cause} ({share} % zugegeben)</translation>
    </message>
    <message>
      <source>{cause} ({hours} h that count as damp)</source>
      <translation>{cause} ({hours} h, die als feucht zählen)</translation>
    </message>
    <message>
      <source>Of ten like it about {many} cloud: {cause}.</source>
      <translation>Von zehn wie dieser werden etwa {many} trüb: {cause}.</translation>
    </message>
    <message>
      <source>Nothing so far that clouds a coat.</source>
      <translation>Bisher nichts, was eine Schicht trübt.</translation>
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
      <source>cloudy: likely</source>
      <translation>trüb: wahrscheinlich</translation>
    </message>
    <message>
      <source>cloudy: unlikely</source>
      <translation>trüb: unwahrscheinlich</translation>
    </message>
    <message>
      <source>cloudy: perhaps</source>
      <translation>trüb: vielleicht</translation>
    </message>
    <message>
      <source>{days} days</source>
      <translation>{days} Tage</translation>
    </message>
    <message>
      <source>{hours} h {minutes} min</source>
      <translation>{hours} h {minutes} min</translation>
    </message>
    <message numerus="yes">
      <source>The board is silent: {n} coats are not watched</source>
      <translation>
        <numerusform>Die Platine ist stumm: Eine Schicht wird nicht bewacht</numerusform>
        <numerusform>Die Platine ist stumm: {n} Schichten werden nicht bewacht</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>{titles} are still drying.</source>
      <translation>
        <numerusform>{titles} trocknet noch.</numerusform>
        <numerusform>{titles} trocknen noch.</numerusform>
      </translation>
    </message>
    <message>
      <source>Neither temperature nor humidity is measured</source>
      <translation>Weder Temperatur noch Luftfeuchte wird gemessen</translation>
    </message>
    <message>
      <source>Nobody can say whether it gets too cold or too damp for what is drying.</source>
      <translation>Niemand kann sagen, ob es für das, was trocknet, zu kalt oder zu feucht wird.</translation>
    </message>
    <message numerus="yes">
      <source>It is getting cold for {n} drying coats</source>
      <translation>
        <numerusform>Es wird kalt für eine trocknende Schicht</numerusform>
        <numerusform>Es wird kalt für {n} trocknende Schichten</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>The dew point is near for {n} drying coats</source>
      <translation>
        <numerusform>Der Taupunkt ist nahe für eine trocknende Schicht</numerusform>
        <numerusform>Der Taupunkt ist nahe für {n} trocknende Schichten</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>It is getting damp for {n} drying coats</source>
      <translation>
        <numerusform>Es wird feucht für eine trocknende Schicht</numerusform>
        <numerusform>Es wird feucht für {n} trocknende Schichten</numerusform>
      </translation>
    </message>
    <message>
      <source>The air was at {humidity} % when it was read at {time}; the limit is {limit} %.</source>
      <translation>Die Luft hatte {humidity} %, als sie um {time} gemessen wurde; die Grenze ist {limit} %.</translation>
    </message>
    <message>
      <source>The air was at {humidity} % when it was read at {time}, within the limit of {limit} % again; this stays until it is at {end} %.</source>
      <translation>Die Luft hatte {humidity} %, als sie um {time} abgelesen wurde, wieder innerhalb der Grenze von {limit} %; dies bleibt, bis sie {end} % hat.</translation>
    </message>
    <message>
      <source>The film is {margin} below the dew point ({dew}).</source>
      <translation>Der Film liegt {margin} unter dem Taupunkt ({dew}).</translation>
    </message>
    <message>
      <source>The board is silent: the room is not watched</source>
      <translation>Die Platine ist stumm: Der Raum wird nicht bewacht</translation>
    </message>
    <message>
      <source>The temperature is not measured</source>
      <translation>Die Temperatur wird nicht gemessen</translation>
    </message>
    <message>
      <source>Nobody can say whether it gets too cold for what is drying.</source>
      <translation>Niemand kann sagen, ob es für das, was trocknet, zu kalt wird.</translation>
    </message>
    <message numerus="yes">
      <source>Too cold for {n} drying coats</source>
      <translation>
        <numerusform>Zu kalt für eine trocknende Schicht</numerusform>
        <numerusform>Zu kalt für {n} trocknende Schichten</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>Water may settle on {n} drying coats</source>
      <translation>
        <numerusform>Wasser kann sich auf einer trocknenden Schicht niederschlagen</numerusform>
        <numerusform>Wasser kann sich auf {n} trocknenden Schichten niederschlagen</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <source>Too damp for {n} drying coats</source>
      <translation>
        <numerusform>Zu feucht für eine trocknende Schicht</numerusform>
        <numerusform>Zu feucht für {n} trocknende Schichten</numerusform>
      </translation>
    </message>
    <message>
      <source>The air is at {humidity} %; the limit is {limit} %.</source>
      <translation>Die Luft hat {humidity} %; die Grenze ist {limit} %.</translation>
    </message>
    <message>
      <source>The air is at {humidity} %, within the limit of {limit} % again; this stays until it is at {end} %.</source>
      <translation>Die Luft hat {humidity} %, wieder innerhalb der Grenze von {limit} %; dies bleibt, bis sie {end} % hat.</translation>
    </message>
    <message>
      <source>The film is {margin} above the dew point ({dew}).</source>
      <translation>Der Film liegt {margin} über dem Taupunkt ({dew}).</translation>
    </message>
    <message>
      <source>Check the board's cable and its port, or type what a hygrometer says.</source>
      <translation>Kabel und Anschluss der Platine prüfen oder eintippen, was ein Hygrometer zeigt.</translation>
    </message>
    <message>
      <source>The room was not read since {time}</source>
      <translation>Der Raum wurde seit {time} nicht gemessen</translation>
    </message>
    <message numerus="yes">
      <source>{titles} are still drying, in air that nobody knows: the ready times are the wider for it.</source>
      <translation>
        <numerusform>{titles} trocknet noch, in Luft, die niemand kennt: Die Bereit-Zeiten sind dafür weiter.</numerusform>
        <numerusform>{titles} trocknen noch, in Luft, die niemand kennt: Die Bereit-Zeiten sind dafür weiter.</numerusform>
      </translation>
    </message>
    <message>
      <source>A reading cannot be right</source>
      <translation>Ein Messwert kann nicht stimmen</translation>
    </message>
    <message>
      <source>Check the sensor; do not trust the ready times until it reads well again.</source>
      <translation>Sensor prüfen; den Bereit-Zeiten nicht trauen, bis er wieder richtig misst.</translation>
    </message>
    <message>
      <source>The humidity is not measured</source>
      <translation>Die Luftfeuchte wird nicht gemessen</translation>
    </message>
    <message>
      <source>Nobody can say whether it gets too damp for what is drying.</source>
      <translation>Niemand kann sagen, ob es für das, was trocknet, zu feucht wird.</translation>
    </message>
    <message>
      <source>Check the sensor and its wires; do not trust the ready times until it reads again.</source>
      <translation>Sensor und Drähte prüfen; den Bereit-Zeiten nicht trauen, bis er wieder misst.</translation>
    </message>
    <message>
      <source>The film is at {temperature} and must stay above {limit} until it is clear: {titles}.</source>
      <translation>Der Film hat {temperature} und muss über {limit} bleiben, bis er klar ist: {titles}.</translation>
    </message>
    <message>
      <source>No reading since {time}.</source>
      <translation>Kein Messwert seit {time}.</translation>
    </message>
    <message>
      <source>No coat is wet.</source>
      <translation>Keine Schicht ist nass.</translation>
    </message>
    <message>
      <source>Warm the room gently; keep the heater's air off the pieces, and the heater clear of fabric.</source>
      <translation>Den Raum sanft wärmen; die Luft des Heizgeräts nicht auf die Bilder, das Heizgerät fern von Stoff.</translation>
    </message>
    <message>
      <source>Warm the room gently, without flame or glowing element, and keep fresh air coming in.</source>
      <translation>Den Raum sanft wärmen, ohne Flamme oder glühenden Draht, und weiter lüften.</translation>
    </message>
    <message>
      <source>{temperature}, {humidity} %, no moving air felt.</source>
      <translation>{temperature}, {humidity} %, keine bewegte Luft zu spüren.</translation>
    </message>
    <message>
      <source>Moving since {time}, {speed}.</source>
      <translation>Bewegt seit {time}, {speed}.</translation>
    </message>
    <message>
      <source>Turn off what moves the air, or turn it away.</source>
      <translation>Was die Luft bewegt, ausschalten oder wegdrehen.</translation>
    </message>
    <message>
      <source>Too damp to lay a coat: {now} %, wait for {limit} % or less</source>
      <translation>Zu feucht für eine Schicht: {now} %, auf {limit} % oder weniger warten</translation>
    </message>
    <message>
      <source>Warm the room gently; keep the heater's air off the pieces.</source>
      <translation>Den Raum sanft wärmen; die Luft des Heizgeräts nicht auf die Bilder.</translation>
    </message>
    <message>
      <source>No board: the room is not watched</source>
      <translation>Keine Platine: Der Raum wird nicht bewacht</translation>
    </message>
    <message>
      <source>Temperature, humidity and air speed are not known.</source>
      <translation>Temperatur, Luftfeuchte und Luftbewegung sind nicht bekannt.</translation>
    </message>
    <message>
      <source>Plug the board in, or type what a hygrometer says.</source>
      <translation>Platine einstecken oder eintippen, was ein Hygrometer zeigt.</translation>
    </message>
    <message>
      <source>Reading the log</source>
      <translation>Der Verlauf wird gelesen</translation>
    </message>
    <message>
      <source>The coats are not up to date yet; warnings begin when they are.</source>
      <translation>Die Schichten sind noch nicht auf dem Stand; dann beginnen die Warnungen.</translation>
    </message>
    <message>
      <source>The board sends nothing</source>
      <translation>Die Platine sendet nichts</translation>
    </message>
    <message>
      <source>Its port is open, but no reading has come.</source>
      <translation>Ihr Anschluss ist offen, aber es kam kein Messwert.</translation>
    </message>
    <message>
      <source>It may still be starting; if not, check its cable.</source>
      <translation>Vielleicht startet sie noch; wenn nicht, das Kabel prüfen.</translation>
    </message>
    <message>
      <source>The computer's clock is behind the records</source>
      <translation>Die Uhr des Computers geht den Aufzeichnungen nach</translation>
    </message>
    <message>
      <source>Something was recorded at a time that is still to come by it, so no drying time can be trusted.</source>
      <translation>Etwas ist zu einer Zeit verzeichnet, die nach ihr erst kommt; keiner Trockenzeit ist zu trauen.</translation>
    </message>
    <message>
      <source>Set the computer's date and time.</source>
      <translation>Datum und Uhrzeit des Computers stellen.</translation>
    </message>
    <message numerus="yes">
      <source>All is well: {n} coats drying</source>
      <translation>
        <numerusform>Alles in Ordnung: eine Schicht trocknet</numerusform>
        <numerusform>Alles in Ordnung: {n} Schichten trocknen</numerusform>
      </translation>
    </message>
    <message>
      <source>Check the sensor before you lay a coat.</source>
      <translation>Vor dem Auftragen den Sensor prüfen.</translation>
    </message>
    <message>
      <source>{temperature}, {humidity} %, no moving air noticed.</source>
      <translation>{temperature}, {humidity} %, keine bewegte Luft bemerkt.</translation>
    </message>
    <message>
      <source>Read the room again before you lay a coat</source>
      <translation>Vor dem Auftragen den Raum noch einmal messen</translation>
    </message>
    <message>
      <source>It may have changed.</source>
      <translation>Er kann sich geändert haben.</translation>
    </message>
    <message>
      <source>Felt at {time}.</source>
      <translation>Um {time} gespürt.</translation>
    </message>
    <message>
      <source>Not yet: the air is moving</source>
      <translation>Noch nicht: Die Luft bewegt sich</translation>
    </message>
    <message>
      <source>Moving since {time}.</source>
      <translation>Bewegt seit {time}.</translation>
    </message>
    <message>
      <source>Turn what moves the air away from the piece, and keep fresh air coming in.</source>
      <translation>Was die Luft bewegt, vom Bild wegdrehen und weiter lüften.</translation>
    </message>
    <message>
      <source>Nobody said what it does at the pieces.</source>
      <translation>Niemand hat gesagt, wie sie sich bei den Bildern bewegt.</translation>
    </message>
    <message>
      <source>Not known whether the air moves</source>
      <translation>Ob die Luft sich bewegt, ist nicht bekannt</translation>
    </message>
    <message>
      <source>The air is not measured, or its sensor takes its first ten readings.</source>
      <translation>Die Luftbewegung wird nicht gemessen, oder ihr Sensor nimmt seine ersten zehn Messwerte.</translation>
    </message>
    <message>
      <source>Check the air sensor.</source>
      <translation>Den Luftsensor prüfen.</translation>
    </message>
    <message>
      <source>Too cold to lay a coat: {now}, wait for {limit} or more</source>
      <translation>Zu kalt für eine Schicht: {now}, auf {limit} oder mehr warten</translation>
    </message>
    <message>
      <source>Too warm to lay a coat: {now}, wait for {limit} or less</source>
      <translation>Zu warm für eine Schicht: {now}, auf {limit} oder weniger warten</translation>
    </message>
    <message>
      <source>The sheet of {product} says so.</source>
      <translation>So sagt es das Datenblatt von {product}.</translation>
    </message>
    <message>
      <source>Too cold for the film to form: {now}, wait for {limit} or more</source>
      <translation>Zu kalt für die Filmbildung: {now}, auf {limit} oder mehr warten</translation>
    </message>
    <message>
      <source>A drying film is up to {cooling} colder than the air; this one needs {least}.</source>
      <translation>Ein trocknender Film ist bis zu {cooling} kälter als die Luft; dieser braucht {least}.</translation>
    </message>
    <message>
      <source>General limit.</source>
      <translation>Allgemeine Grenze.</translation>
    </message>
    <message>
      <source>The product's sheet says so.</source>
      <translation>So sagt es das Datenblatt des Produkts.</translation>
    </message>
    <message>
      <source>Too near the dew point to lay a coat: {margin}, wait for {limit} or more</source>
      <translation>Zu nahe am Taupunkt für eine Schicht: {margin}, auf {limit} oder mehr warten</translation>
    </message>
    <message>
      <source>The dew point is {dew}: water may settle on the piece.</source>
      <translation>Der Taupunkt ist {dew}: Wasser kann sich auf dem Bild niederschlagen.</translation>
    </message>
    <message>
      <source>Warm the room gently.</source>
      <translation>Den Raum sanft wärmen.</translation>
    </message>
    <message>
      <source>Warm the room gently, and put the heater out before the solvent is opened.</source>
      <translation>Den Raum sanft wärmen und das Heizgerät ausschalten, bevor das Lösemittel geöffnet wird.</translation>
    </message>
    <message>
      <source>The board cannot be understood</source>
      <translation>Die Platine ist nicht zu verstehen</translation>
    </message>
    <message>
      <source>{lines} lines came that cannot be read, and none that can.</source>
      <translation>Es kamen {lines} Zeilen, die nicht lesbar sind, und keine lesbare.</translation>
    </message>
    <message>
      <source>Check that its sketch sends checked lines at 9600 baud.</source>
      <translation>Prüfen, ob ihr Sketch geprüfte Zeilen mit 9600 Baud sendet.</translation>
    </message>
    <message>
      <source>Nobody can say whether the room is fit.</source>
      <translation>Niemand kann sagen, ob der Raum taugt.</translation>
    </message>
    <message>
      <source>Check the sensor.</source>
      <translation>Den Sensor prüfen.</translation>
    </message>
    <message>
      <source>Moving.</source>
      <translation>Bewegt.</translation>
    </message>
    <message>
      <source>Moving, {speed}.</source>
      <translation>Bewegt, {speed}.</translation>
    </message>
    <message>
      <source>Lay it in a cooler hour.</source>
      <translation>In einer kühleren Stunde auftragen.</translation>
    </message>
    <message>
      <source>Or type what a hygrometer says.</source>
      <translation>Oder eintippen, was ein Hygrometer zeigt.</translation>
    </message>
    <message>
      <source>Good to lay a coat</source>
      <translation>Gut, um eine Schicht aufzutragen</translation>
    </message>
    <message>
      <source>canvas</source>
      <translation>Leinwand</translation>
    </message>
    <message>
      <source>panel</source>
      <translation>Holztafel</translation>
    </message>
    <message>
      <source>paper on panel</source>
      <translation>Papier auf Holztafel</translation>
    </message>
    <message>
      <source>paper</source>
      <translation>Papier</translation>
    </message>
    <message>
      <source>bare panel</source>
      <translation>rohe Holztafel</translation>
    </message>
    <message>
      <source>raw canvas</source>
      <translation>rohe Leinwand</translation>
    </message>
    <message>
      <source>bare paper</source>
      <translation>rohes Papier</translation>
    </message>
    <message>
      <source>board</source>
      <comment>support</comment>
      <translation>Malkarton</translation>
    </message>
    <message>
      <source>Not measured since {time}.</source>
      <translation>Nicht gemessen seit {time}.</translation>
    </message>
    <message>
      <source>How long that takes is not known.</source>
      <translation>Wie lange das dauert, ist nicht bekannt.</translation>
    </message>
    <message>
      <source>That is likely from about {time} ({span}): {reason}.</source>
      <translation>Das ist wahrscheinlich ab etwa {time} ({span}): {reason}.</translation>
    </message>
    <message>
      <source>off</source>
      <comment>a day</comment>
      <translation>frei</translation>
    </message>
    <message>
      <source>{first} to {last}</source>
      <translation>{first} bis {last}</translation>
    </message>
    <message>
      <source>{days} off</source>
      <translation>{days} frei</translation>
    </message>
    <message>
      <source>Working hours are {text}; give from and until like 09:00-18:00, or "{off}".</source>
      <translation>Die Arbeitszeit ist {text}; geben Sie von und bis an wie 09:00-18:00, oder „{off}“.</translation>
    </message>
    <message>
      <source>Working hours are {text}; the end must be later than the start, and 24:00 at most.</source>
      <translation>Die Arbeitszeit ist {text}; das Ende muss nach dem Anfang liegen, höchstens 24:00.</translation>
    </message>
  </context>
</TS>
