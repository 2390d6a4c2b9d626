<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>The program is closing: this was not recorded.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This could not be done because of a fault in the program; nothing was recorded.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Put off until {time}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{title} was taken off the rack.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Heard: no more sound for this warning.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cover set over {title}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Take {title} off the rack?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Its coats are no longer watched. Its records stay.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Take it off</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What to do with this piece</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Lay a coat…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Edit the piece…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Corrections…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Finis&amp;hing record…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Take off the &amp;rack…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Choose a piece on the rack first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Register a piece first: a coat is laid on a piece.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No coat was laid yet: there is nothing to touch.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Ticked off.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Choose a piece with a coat on it first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The cover stands over {title} already.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Touch test or look…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The &amp;mesh cover is set</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>How did it come &amp;out…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Why did it cloud?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Back up now</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Take a file in</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Back up now: choose a folder</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Written to {path}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>drawing the pages</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} cannot be written: {reason}. Choose another place.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The made-up studio could not be started; run `studiowatch demo` in a terminal.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This is the made-up studio already: look around.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The made-up studio is opening.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Hel&amp;p</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;What clouded coats look like</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What clouded coats look like</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This could not be done because of a fault in the program: {fault}. Please report it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Undo</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Do a&amp;gain</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Remind me in &amp;10 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Remind me in &amp;30 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Not until the coat is &amp;dry</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Menus</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Edit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;History</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;View</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Night colours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>High &amp;contrast</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Larger text</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Smaller text</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Text at &amp;100 %</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Units and language…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;From across the room</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The finishing &amp;plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The &amp;board</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>F&amp;irst steps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Rack</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Register a piece…</source>
      <translation>&amp;Bild eintragen…</translation>
    </message>
    <message>
      <source>Type a read&amp;ing…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Ta&amp;ke off the rack…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Find on the rack</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Archived pieces…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Data sheets…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Start at login</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Quit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Warnings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Heard</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Quiet hours…</source>
      <translation>&amp;Ruhezeiten…</translation>
    </message>
    <message>
      <source>&amp;Try the sound</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A fault of ours{where}: {kind}: {fault}. The watch goes on; please report it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>no JPEG could be made of it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it is not a picture of a kind that is known here</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it has {width} × {height} pixels, more than {most} million</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it is broken ({reason})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The review weighs what the room did under it, and says what to do now.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Was {coat} not laid on {title}?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The piece</source>
      <translation>Das Bild</translation>
    </message>
    <message>
      <source>{title} is back on the rack.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Look at why it may have clouded?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Look at why</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Not now</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Its looks go with it. The history of corrections keeps what stood here.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Taken back: {coat} on {title}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Keep it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>That is not in the records any more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No coat was laid on that piece yet: nothing came out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Taken back: {what} ({coat} on {title}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Not laid, still to come</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Not laid, not to come</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Undone: {what}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Done again: {what}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Save readings as &amp;CSV…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Save readings as SenM&amp;L…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Review what dried in the chosen stretch</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Re&amp;cords</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Save all &amp;records…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Take a file in…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Back up now…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Choose a piece with a coat on it first: a review is of one coat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No coat can be reviewed here: this window has no records to look into.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Save the review as PDF</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Save the figures as CSV</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Saved as {name}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>review</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The review cannot be worked out: {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Archived pieces keep its name, and what was recorded of their coats.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Delete the sheet {title}?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Delete it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Deleted: the sheet {title}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>no sound on this machine</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the desktop's beep and a flash of the window</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the sound device ({names})</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the player {player}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the sound device ({names}), else the player {player}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source> or </source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>studiowatch keeps watching</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The window is closed; the watch goes on from the tray.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Quit from the tray's menu.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Starting</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Open the window</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>From across the room</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Quit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No warning waits for an answer.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing can be heard on this machine: the window flashes instead.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>That is the sound of a warning, as loud as it gets.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>When to be reminded</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Choose a stretch in which a coat dried first: drag over the room history with Shift held.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;8 h</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;day</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;week</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;month</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;all</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A made-up studio does not start at login.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} cannot be changed: {reason}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Opens at login from now on.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No longer opens at login.</source>
      <translation type="unfinished" />
    </message>
  </context>
</TS>
