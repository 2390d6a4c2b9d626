<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>Humidity will pass the limit in about {minutes} minutes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The dew point will be too near in about {minutes} minutes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It will be too cold in about {minutes} minutes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>If the room goes on like this it passes {limit} at about {at}, between {low} and {high}: {titles}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>If the room goes on like this the film is less than {limit} above the dew point at about {at}, between {low} and {high}: {titles}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>If the room goes on like this the film is below {limit} at about {at}, between {low} and {high}: {titles}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Foreseen by the room's last hour.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Common practice, no source; the product's own sheet comes first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Fresh air on: a window open, away from the piece</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Keep it open until the vapour is gone: fresh air comes before a perfect coat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No draught over the piece from a window or a door</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Fresh air stays on, led away from the piece</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Another coat in the room gives off solvent vapour: keep the air coming.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Fans and heater fan off</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Dust settles</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The dust has settled</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Fans turned away from the piece; heaters and anything that glows or sparks off</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Solvent vapour is lit by a spark or a hot element.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No solvent, solvent rag or solvent-borne coat in the room: a torch is used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The torch stays far from the mesh cover too.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Extinguisher at hand: a torch is used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Wiped clean of dust and hair</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The surface dries</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The surface is dry</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Bottle rolled gently, not shaken, and set down</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The bottle rests</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The bottle has rested</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Piece level on its supports</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Back edges taped</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Thin, wide synthetic brush, wetted and pressed out</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Wide, soft brush, clean and dry; gloves on</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Mesh cover at hand</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{number} panels of {size}, {shape}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>due {now} instead of {before}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{film} wet</source>
      <translation>{film} nass</translation>
    </message>
    <message>
      <source>due on no day instead of {before}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>as much as its sheet says</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>called {now} instead of {before}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{now} instead of {before}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>painted on {now} instead of {before}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>dries {now} instead of {before}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the notes were changed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the photo was changed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>laid {now} instead of {before}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>thinned by {now} % instead of {before} %</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{label}: not on; it was recorded as laid {time}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>not covered instead of {before}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>covered {now} instead of {before}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>open how it came out, not {before}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{now}, not {before}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>no look {time}; it was recorded as {finding}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>one</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>two</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>three</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>four</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>five</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>six</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>seven</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>eight</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>nine</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ten</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>eleven</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>twelve</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{titles} and {last}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>no</source>
      <comment>number</comment>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>{titles} and {n} more</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A skin may close over what is still wet: {titles}.</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>Drying rather fast: {n} wet coats</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The air is at {humidity} % and takes up water fast.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The air is at {temperature}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It dries {times} times as fast as on its sheet.</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>Dust over {n} sticky coats</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{specks} specks over 5 µm in a cubic metre; it sticks until about {time}: {titles}.</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>Drying too fast: {n} wet coats</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It dries about as fast as on its sheet, and was faster just before.</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>Much dust over {n} sticky coats</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{specks} specks over 5 µm in a cubic metre; it sticks until the film is dust-free: {titles}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Guessed, for nothing counts it; it sticks until about {time}: {titles}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cool the room, or set a bowl of water in it; keep sun and heaters off the pieces.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Set the mesh cover once no more bubbles rise; move little, and stir nothing up.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Guessed, for nothing counts it; it sticks until the film is dust-free: {titles}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>opens a long wait</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>least time to spare</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Removing a varnish is work for a conservator: try it first on the smallest spot at the edge.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Where solvent is used: ventilate, wear gloves, and keep every flame and spark away.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Each product's own sheet, local codes and licensed advice come before this record.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{film} wet, measured</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No isolation coat is recorded: take it that anything that removes the varnish reaches the paint.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Coat {number}, {label}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>not measured</source>
      <translation>nicht gemessen</translation>
    </message>
    <message>
      <source>An isolation coat (coat {number}) lies beneath what was laid after it, to keep the paint safe.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Whether an isolation coat lies on the paint is not known: a data sheet is missing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What was put on the piece before it was first recorded here.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>its data sheet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>how much was laid; the thickness is its sheet's</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>how it came out</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the room while it was wet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the moving air</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>part of the room while it was wet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>round, {size} across</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>oval, {size}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{number} panels, each {size}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>unknown product</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Removal: {how}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Removal: how it can be removed is not known.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No coat has been laid, as far as is recorded.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Torch: extinguisher at hand, far from solvent and its vapour, and the mesh cover off.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No torch for this coat: its vapour burns. Break bubbles with the brush.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The product's own sheet, local codes and licensed advice come before this program.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No torch anywhere near. Wear gloves; a respirator as the product's sheet says.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Rags can catch fire by themselves: dry them flat outdoors, or keep them in a closed metal tin with water.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Flash point {temperature}: away from flame and anything hotter than that.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Flash point {temperature}: it counts as flammable ({limit} or less, UN GHS). Keep it away from heaters, flame and sparks, and never warm it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>paint</source>
      <comment>a coat</comment>
      <translation type="unfinished" />
    </message>
    <message>
      <source>isolation</source>
      <comment>a coat</comment>
      <translation type="unfinished" />
    </message>
    <message>
      <source>varnish</source>
      <comment>a coat</comment>
      <translation type="unfinished" />
    </message>
    <message>
      <source>gloss</source>
      <comment>a coat</comment>
      <translation type="unfinished" />
    </message>
    <message>
      <source>satin</source>
      <comment>a coat</comment>
      <translation type="unfinished" />
    </message>
    <message>
      <source>matt</source>
      <comment>a coat</comment>
      <translation type="unfinished" />
    </message>
    <message>
      <source>recoat: {coat}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lay {coat}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>fit to wrap</source>
      <translation>verpackbar</translation>
    </message>
    <message>
      <source>plan its coats</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The coat below was most likely not ready, and what is in it is sealed in: {titles}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The coat below may not have been ready: {titles}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The sheet of the coat below says {wait} h: {titles}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too many coats with matting agent</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{coats} lie on each other, {limit} are enough: {titles}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Lay no more satin or matt on it: each one dulls the dark colours below.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Laid too early</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Laid rather early</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Lay nothing more on it until it is clear and hard; give it dry air that does not move.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Lay nothing more on it until it is clear and hard; keep fresh air coming in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Test {label} at an edge first: nobody has touched it yet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Go: good to lay a coat</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What is sealed in below clouds the coat above. A touch test at an edge comes before the next coat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Wait until it is ready, or test an edge first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Wait for drier air, or warm the room gently.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Warm the room, and the piece with it, before it is laid.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Still and cool the air first; solvent vapour always needs fresh air, away from the piece.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Not yet: {label} is still wet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Not yet: {label} is still tacky</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Not yet: {label} is not dry through yet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>In this room as it is, no time for the next coat is in sight.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Pour less.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Add less water.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Gloss first, one satin or matt coat last.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Ready from {time}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Ready from {time}, perhaps from {early}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{coat} would likely come out cloudy</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{coat} may come out cloudy</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The film has begun to set; going back now marks the film. Look for drips and bubbles once it is dry.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Only while the film still flows: one light pass. If the brush drags, leave it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Dust sticks until the film is tack-free. Let nothing touch it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The film takes no more dust. Look along it in a low light for specks before the next coat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Milky now is later than this room should take: nothing on it until it is clear.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It is not too late: press at an edge before anything goes on it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Second pass missed: leave it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Second pass is late: a light one, or none</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cover missed: it helps no more</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The cover is late: set it now</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Look now: has the milkiness cleared?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Touch test at an edge before the next coat</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>{titles} are still wet.</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>Air is moving over {n} wet coats</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>The air is calming over {n} wet coats</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>{titles} are still wet under the cover.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The air has moved since {time} ({speed}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Turn it away from the pieces, and keep fresh air coming in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Turn it off or turn it away.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Look for a fan, window or door.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Felt at {time}; air speed is not measured.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A fan came on at {time} ({speed}).</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>Air is moving over {n} covered coats</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A fan came on at {time}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The air has moved since {time}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Leave it so: this stays until the air has been still a little longer.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Once it is still, type a reading that says so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Leave the cover on.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Leave the cover on until the air is still.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The board was silent</source>
      <translation>Die Platine war stumm</translation>
    </message>
    <message>
      <source>A coat was laid early over one that was not ready</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Matting agent was built up</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A reading could not be right</source>
      <translation>Ein Messwert konnte nicht stimmen</translation>
    </message>
    <message>
      <source>The room was not read for long</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>Air was moving over {n} wet coats</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>Air was moving over {n} covered coats</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>It was cold for {n} wet coats</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>It was cold for {n} drying coats</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>The dew point was near for {n} wet coats</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>The dew point was near for {n} drying coats</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>It was damp for {n} wet coats</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>It was damp for {n} drying coats</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>The air was too dry or too warm for {n} wet coats</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>Dust was falling on {n} wet coats</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>rectangle</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>round</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>panels</source>
      <translation type="unfinished" />
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
      <translation type="unfinished" />
    </message>
    <message>
      <source>the product's sheet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Its data sheet is missing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Not in this order: gloss goes below satin and matt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Not in this order: satin or matt wants gloss below</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No isolation coat lies below</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Not in this order: isolation goes below varnish</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Only once the coat below is dry through</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Water-borne over solvent-borne is not advised</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{coat} straight on the paint dulls its darks unevenly: lay isolation, then gloss, below it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{coat} as the first coat dulls its darks unevenly: lay isolation, then gloss, below it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The product's own sheet comes first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{coat} over {below} undoes it: lay gloss first, satin or matt last.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{coat} can be taken off again, but no isolation coat lies below it: taking it off may touch the paint. Lay isolation first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Isolation over varnish locks that in: it belongs on the paint, below all varnish.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{coat} is solvent-borne and {below} below is water-borne: only once that is dry through; the plan waits for it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{coat} is water-borne and {below} below is solvent-borne: not advised, it may bead and not hold. Stay with one kind, unless the product's sheet allows it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is no data sheet {name}: put it among your sheets, or plan another coat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>without its sheet nothing is known of it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{coat} is coat {number} with matting agent, and {most} are the most: more dull the colours below. Build up with gloss instead.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>dry-hard: nine tenths of what makes the film soft have left it (assumption); by its edges, clean hands</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>cured as its sheet says: a film wrapped before sticks to its wrapping (common practice, no source)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>cured, and wrapped in the next working hours (common practice, no source)</source>
      <translation type="unfinished" />
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
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>Cannot be ready by {day}: about {n} days late, because {reason}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the {label} is not ready for the next coat (about {span})</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>{n} coats are still to come, and each waits for the one below (about {span})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing to lay today. Next: {title}, {coat}, {day}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{minutes} min</source>
      <translation>{minutes} min</translation>
    </message>
    <message>
      <source>{hours} h</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>{n} days late</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>no day to spare</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the coat below is not ready for the next coat (about {span})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No day of the week has working hours, so nothing can be dated: set them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No time for {label} after the {top} is in sight, in this room as it is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Plan its coats: there is nothing to date yet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>When it will be cured is not in sight, in this room as it is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>First {title}: {coat}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No coat is to come.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Handed over by hand, unwrapped and with nothing on its face, it can go from {day} (dry-hard).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Longer hours, or one more day a week, save up to {span}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Lay its coats before those of the other pieces.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Tell the client early: {day} is what the plan gives.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No time for {label} is in sight, in this room as it is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the {label} must cure before it may be wrapped (about {span})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>its coats wait for your working hours (about {span})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>other pieces need your hands first (about {span})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{film} wet, {times} × the sheet: thick, it will dry slowly</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{share} % {thinner}: the film may not close, and stay soft or cloudy. Keep to the sheet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{share} % {thinner} is more than most sheets allow: see yours first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{film} wet, {times} × the sheet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{film} wet, {times} × the sheet: far too thick, it will dry slowly and may stay milky</source>
      <translation type="unfinished" />
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
      <translation type="unfinished" />
    </message>
    <message>
      <source>No torch, flame or spark: this coat gives off solvent vapour. Break bubbles with the brush; keep fresh air coming.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No torch or flame near the mesh cover.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No torch, flame or spark: solvent vapour gathers under the cover too. Keep fresh air coming.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Look too: dull or blushed does not clear by itself. If it is, see the product's sheet before the next coat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Solvent-borne: ventilate without blowing on the piece, wear gloves, no flame or spark; dry rags flat outdoors or keep them under water in a closed metal container. The product's sheet comes first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Second bubble pass, scrape drips</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No torch: {coat} gives off solvent vapour in this room. Break bubbles with the brush; keep fresh air.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Laid on {label} without a touch test: if it stays milky, lay nothing more and keep the room dry.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Set the mesh cover when no more bubbles rise</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Recoat: {coat}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Lay {coat}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Has the milkiness cleared?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Read the hygrometer, and type it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The recipe's name has {length} characters; give it 1 to {most} that can be shown.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The recipe has {number} coats; give it 1 to {most}.</source>
      <translation type="unfinished" />
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
      <translation type="unfinished" />
    </message>
    <message>
      <source>Satin, solvent-borne</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>in still air at {least} to {most} and under 60 %</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>in fresh air that does not blow on it, at {least} to {most} and under 60 %</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Then look again in the same light and record what you see: this review learns from it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Stop as soon as a step shows no change on a small test corner: more of it only harms the film.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valuable or irreplaceable piece: do nothing but wait, and ask a conservator before anything touches the film.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No brushing, rubbing, heating or polishing while it may still clear by itself.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Only if waiting has failed: taking the varnish off. Read its sheet first for whether it can be removed, and with what; test a corner; the isolation coat below must be whole, or the paint goes with it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Sanding dust: a respirator as the product's sheet says, and wipe it up damp, never dry.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It is solvent-borne: keep fresh air coming through the room all the time, away from the piece; no flame or spark.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Removal with solvent: open windows and let air through, gloves, no flame, spark or heater, a respirator as the product's sheet says.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Solvent-wet rags can heat up and catch fire by themselves: dry them flat outdoors, or keep them in a closed metal container with water.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The product's own sheet, local rules and licensed advice come first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Leave it uncovered {room}: a fresh coat is milky until its water has left.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Look again after the normal milky time, at the earliest when the next coat may go on.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing needs doing: it came out clear. Leave it in peace until it is fit to wrap.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing needs doing yet: how it came out is not recorded.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Look at it once it should be clear, in slanting light and from the front, and record what you see.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Leave it uncovered {room} for three days; sealed-in water often leaves, and the film clears.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Look for edges that clear first, a sign that it works; then give it up to a week more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Dry the room, then leave it {room} for three days: what is only damp clears.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Look for milkiness that thins evenly; if it has not changed after a week, it will hardly clear by itself.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Keep the room at {least} to {most} for three days: it hardens the film, though what did not knit stays so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Rub a hidden corner with a dry finger: powder comes off a film that never formed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>If no powder comes off: a thin coat of the same gloss, in a warm room, may wet it through; test a corner.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Leave it {room} for two days, the piece as warm as the room.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Look at it in slanting light: rings and runs of droplets stay, an even haze often clears.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Haze that stays: a thin coat of the same product in a dry room, tested on a corner, often takes it in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Leave it {room} for a week: under a skin the rest dries slowly.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Press a gloved fingertip at an edge: while it gives, it is not dry below, and nothing may go on it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Wrinkles stay. Once dry through, they can be levelled by fine wet sanding and another thin coat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Leave it uncovered {room} for a week; twice the thickness takes about four times as long.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Look for thin places that clear first; the thick ones follow in the order of their thickness.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Leave it {room} for three days.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Wipe a corner with a barely damp cloth: if it turns clear while wet and dull again, the film has pores.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A thin coat of the product as it comes from the bottle often closes them; test a corner.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Waiting does not help: the matting agent stays where it is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Look at it in the light that it will hang in: dull darks show most in slanting light.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A last coat of gloss brings some depth back, at the cost of the sheen that was ordered; test a corner.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Leave it to dry through before anything else; a mark in a soft film only grows.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A week later: level the mark by fine wet sanding of that spot, and lay a thin coat over the whole face.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Leave it {room} for three days and look again: most haze of a fresh coat leaves by itself.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Look closely in slanting light: specks and hairs lie in the film, rings come from water or soap below.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Read the hygrometer, and type what it says.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Hold a strip of tissue beside the pieces, and say with the reading how it hangs.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Last read {days} days ago; air speed is not measured.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Last read just now; air speed is not measured.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Last read {minutes} min ago; air speed is not measured.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Last read {hours} h ago; air speed is not measured.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Perhaps: {cause}. Likely is not proven.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Of ten coats like this about {many} would cloud; likeliest then: {cause}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It came out clear; of ten coats like this about {many} cloud.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Most likely: {cause}. Likely is not proven.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>More likely than any other: {cause}. Likely is not proven.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Of ten coats like this about none would cloud; likeliest then: {cause}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It came out clear; of ten coats like this about none cloud.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Its sheet names no least film-forming temperature: {temperature} is taken.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No readings for {span} while it was wet, from {time}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No readings for {span} while it closed, from {time}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No readings for {span} while it hardened, from {time}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>From {time} on the room is still to come: it is taken to stay as it was read last.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The log holds no reading of its time: {temperature}, 65 % and still air are taken, or what was read nearest.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No readings for {span} while the {label} below dried, laid at {time}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>How much was laid is not recorded: {film} wet is taken, as on its sheet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>How it came out is not recorded: these are the causes that it would most likely have.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It is solvent-borne: of its film, only warmth and the dew point are followed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Air speed was not measured at times: a fan or a draught would not show; still air is taken.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Air speed was not measured: a fan or a draught would not show; still air is taken.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>When it was looked at is not recorded: a day after it was laid is taken.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>How each cause looks: our judgement from what painters tell; no published table is known to us.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Laid over a coat still holding water</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Air too damp while it dried</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Film too cool to knit together</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Water settled on the film</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Dried too fast on top</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Coat laid too thick</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Thinned too far</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Matting agent built up</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Touched or covered while wet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Still clearing, as a fresh coat does</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing in the records explains it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>laid over a coat still holding water</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>air too damp while it dried</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>film too cool to knit together</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>water settled on the film</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>dried too fast on top</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>coat laid too thick</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>thinned too far</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>matting agent built up</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>touched or covered while wet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>still clearing, as a fresh coat does</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>nothing in the records explains it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>times the sheet's pace</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>times the sheet's film</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>coats</source>
      <translation>Schichten</translation>
    </message>
    <message>
      <source>of the wait</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>times its age</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Laid at {film}: {poured}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Looked at {time}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Under a mesh cover from {time}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Covered at {time}, not touched before</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Not touched before it was dry</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Waited until {time}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Room kept at {temperature}, {humidity} %</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Laid at {time}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Fan off, still air</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No water added</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Gloss below, this coat alone with matting agent</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Gloss in place of the coats with matting agent</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>3 in 100 coats cloud without a recorded reason: judgement, learnt from her own coats.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Even at 0.45 g/m² that had still to leave, as over a coat at half of its recoat time: judgement.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Even at 1.5 hours at 85 %, or 8 % over the sheet's limit: practice of ISO 8502-4; hours: judgement.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Even at 30 minutes under the minimum film-forming temperature (ISO 2115, ASTM D2354): judgement.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Even at 6 minutes at the dew point; a solvent-borne coat within 3 K of it (ISO 8502-4): judgement.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Péclet number of Routh and Russel (1998) over the sheet's own run; even at 2.3 times: judgement.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Even at 2.2 times the sheet's film; care from 1.5, act from 2: judgement.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Even at 25 % of water added: judgement.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>More than one or two coats with matting agent dull the darks: common practice, no source.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cover after 20 minutes: common practice, no source; the rest: judgement.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Its sheet's clearing time in its own thickness and warmth; about two hours: common practice.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The {label} below was {age} old, and needed about {needed}: it held nothing back.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The {label} below was {age} old; in its room it needed about {needed}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>At its coldest it was {temperature}, at {time}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The film, or what it lies on, was {margin} below the dew point at the closest: no water settled on it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{film} wet, {ratio} times the {sheet} that its sheet's times are for.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Covered {span} after it was laid.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Water left under the new coat: {figure} g/m².</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The {label} below was {age} old: it held nothing back.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The {label} below was {age} old; it was not ready within the time that was followed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It closed under {least}, where a film cannot form, for {span}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It closed little above {least}, where a film begins to form, known to {margin}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The film was never under {temperature}; it can form from {least}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The film, or what it lies on, was {margin} above the dew point at the closest.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The film, or what it lies on, was {margin} below the dew point at the closest.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Water settled on it for about {span}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The film, or what it lies on, was {margin} above the dew point at the closest: no water settled on it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>At its fastest it lost water {pace} times as fast as in its sheet's own room.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>While wet: up to {warmest}, down to {driest} %.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{poured} on {area} m²</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{grams} g on {area} m²</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{share} % of water was added; sheets commonly allow up to {limit} %.</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>{labels} hold matting agent: {n}, where {most} may lie on each other.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A fingertip was on it at {time}, before it was dry to touch.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Covered at once, less than a minute after it was laid.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Covered {span} after it was laid, while wet: 20 minutes are usual.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It was looked at {age} after it was laid; in its warmth a coat of usual thickness is milky for about {span}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What the records cannot show: dust, soap or grease below, a bottle that was shaken or had frozen, or a finger.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No coat of hers lies below it, so nothing was sealed in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Solvent left under the new coat: {figure} g/m².</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Its air is not known.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Humidity reached {dampest} % at most while it dried and cleared.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Humidity above {limit} % for {damp} of {whole}; at most {dampest} %.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Humidity above {limit} % for {damp} of {whole}, from {time}; at most {dampest} %.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Its sheet allows up to {most} %.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Only a water-borne coat has a least temperature at which its film forms.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Its least film-forming temperature is not known.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It was within {margin} of it, while wet, for {span}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Air moved over it, up to {speed}, for {span}, from {time}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>How much was laid is not recorded; its sheet's own {film} is taken.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No water was added.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{share} % of water was added.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No satin or matt coat is in the stack.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The next coat was brushed over it at {time}, before it was dry to touch.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing recorded says that it was touched while wet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Covered at once, less than a minute after it was laid, while wet: 20 minutes are usual.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>When it was looked at is not recorded.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It was looked at {age} after it was laid, long after a fresh coat has cleared.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It was looked at {age} after it was laid; in its warmth a coat of usual thickness is milky for a day or more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What the records cannot show: dust or hair that fell on it, lint of a brush or cloth, or bubbles.</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>Of {n} coats with a recorded outcome {clouded} clouded, where about {expected} were expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No coat with a recorded outcome yet: the chances are our judgement.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{cause} ({figure} g/m² that had still to leave)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{cause} ({minutes} min under its least temperature)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{cause} (about {minutes} min at the dew point)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{cause} ({figure} times as fast as in its sheet's room)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{cause} ({figure} times its sheet's film)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{cause} ({share} % of water added)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{cause} ({hours} h that count as damp)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Of ten like it about {many} cloud: {cause}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing so far that clouds a coat.</source>
      <translation type="unfinished" />
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
      <translation type="unfinished" />
    </message>
    <message>
      <source>cloudy: unlikely</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>cloudy: perhaps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{days} days</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{hours} h {minutes} min</source>
      <translation>{hours} h {minutes} min</translation>
    </message>
    <message numerus="yes">
      <source>The board is silent: {n} coats are not watched</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>{titles} are still drying.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Neither temperature nor humidity is measured</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nobody can say whether it gets too cold or too damp for what is drying.</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>It is getting cold for {n} drying coats</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>The dew point is near for {n} drying coats</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>It is getting damp for {n} drying coats</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The air was at {humidity} % when it was read at {time}; the limit is {limit} %.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The film is {margin} below the dew point ({dew}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The board is silent: the room is not watched</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The temperature is not measured</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nobody can say whether it gets too cold for what is drying.</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>Too cold for {n} drying coats</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>Water may settle on {n} drying coats</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>Too damp for {n} drying coats</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The air is at {humidity} %; the limit is {limit} %.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The film is {margin} above the dew point ({dew}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Check the board's cable and its port, or type what a hygrometer says.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The room was not read since {time}</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>{titles} are still drying, in air that nobody knows: the ready times are the wider for it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A reading cannot be right</source>
      <translation>Ein Messwert kann nicht stimmen</translation>
    </message>
    <message>
      <source>Check the sensor; do not trust the ready times until it reads well again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The humidity is not measured</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nobody can say whether it gets too damp for what is drying.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Check the sensor and its wires; do not trust the ready times until it reads again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The film is at {temperature} and must stay above {limit} until it is clear: {titles}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No reading since {time}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No coat is wet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Warm the room gently; keep the heater's air off the pieces, and the heater clear of fabric.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Warm the room gently, without flame or glowing element, and keep fresh air coming in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{temperature}, {humidity} %, no moving air felt.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Moving since {time}, {speed}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too damp to lay a coat: {now} %, wait for {limit} % or less</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Warm the room gently; keep the heater's air off the pieces.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No board: the room is not watched</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Temperature, humidity and air speed are not known.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Plug the board in, or type what a hygrometer says.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Reading the log</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The coats are not up to date yet; warnings begin when they are.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The board sends nothing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Its port is open, but no reading has come.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It may still be starting; if not, check its cable.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The computer's clock is behind the records</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Something was recorded at a time that is still to come by it, so no drying time can be trusted.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Set the computer's date and time.</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>All is well: {n} coats drying</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Check the sensor before you lay a coat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{temperature}, {humidity} %, no moving air noticed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Read the room again before you lay a coat</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It may have changed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Felt at {time}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Not yet: the air is moving</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Moving since {time}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Turn it away from the piece, and keep fresh air coming in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nobody said what it does at the pieces.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Not known whether the air moves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The air is not measured, or its sensor takes its first ten readings.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Check the air sensor.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too cold to lay a coat: {now}, wait for {limit} or more</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too warm to lay a coat: {now}, wait for {limit} or less</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The sheet of {product} says so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too cold for the film to form: {now}, wait for {limit} or more</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A drying film is up to {cooling} colder than the air; this one needs {least}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>General limit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The product's sheet says so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too near the dew point to lay a coat: {margin}, wait for {limit} or more</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The dew point is {dew}: water may settle on the piece.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Warm the room gently.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Warm the room gently, and put the heater out before the solvent is opened.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The board cannot be understood</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{lines} lines came that cannot be read, and none that can.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Check that its sketch sends checked lines at 9600 baud.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nobody can say whether the room is fit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Check the sensor.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Moving.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Moving, {speed}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Lay it in a cooler hour.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Or type what a hygrometer says.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Good to lay a coat</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Not measured since {time}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>How long that takes is not known.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>That is likely from about {time} ({span}): {reason}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the humidity is rising as it did in the last hour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the humidity is falling as it did in the last hour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the temperature is rising as it did in the last hour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the temperature is falling as it did in the last hour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the air above its dew point is rising as it did in the last hour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the air above its dew point is falling as it did in the last hour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>so it was on {many} of the last {days} days</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{first} to {last}</source>
      <translation>{first} bis {last}</translation>
    </message>
    <message>
      <source>{days} off</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Working hours are {text}; give from and until like 09:00-18:00, or "{off}".</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Working hours are {text}; the end must be later than the start, and 24:00 at most.</source>
      <translation type="unfinished" />
    </message>
  </context>
</TS>
