<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>The studio book</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Page</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Back</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Contents</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Close</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The studio</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Warnings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>+ register a piece</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Put a piece on the rack</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>show it large</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Large, to be read from across the room (F11)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Show it large, to be read from across the room</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Room history</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Rack</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>At the rack and warnings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>At the rack</source>
      <translation>Am Gestell</translation>
    </message>
    <message>
      <source>Pictures (*.jpg *.jpeg *.png *.webp *.bmp *.gif *.tif *.tiff);;All files (*)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Photo</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Choose a photo…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Remove the photo</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Choose a photo</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Taking {name} in …</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Scaled down and copied beside the records.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>its file
is missing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>no photo</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Face up</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Upright</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>what you call it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>not known</source>
      <translation>nicht bekannt</translation>
    </message>
    <message>
      <source>It is due on a day</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Due date</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Title</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Shape</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Panels</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Painted on</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It dries lying</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Paint layer</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Last of it laid</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Notes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Registered: {title}</source>
      <translation>Eingetragen: {title}</translation>
    </message>
    <message>
      <source>Changed: {title}</source>
      <translation>Geändert: {title}</translation>
    </message>
    <message>
      <source>Register a piece</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Edit the piece: {title}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Register the piece</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Keep the changes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>From and until, as 09:00-18:00, or "off". Coats are planned only where they fit in, with their preparation.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Your working hours are set; the plan is made anew.</source>
      <translation type="unfinished" />
    </message>
    <message numerus="yes">
      <source>{n} coats to come, lowest first. A name that is there already gets these coats instead.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Working hours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Set the hours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Keep as a recipe</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Name</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Keep the recipe</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Kept as the recipe {name}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The recipe has no name; type one, such as Panels, satin.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The chosen piece's plan</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Keep as a recipe…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Keep these coats to come under a name</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>+ add a coat</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Apply a recipe</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A coat was added to the plan.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{recipe} is planned for {title}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Coats to come</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The coat was moved.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Another coat is planned.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The coat was taken out of the plan.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>finishing plan.ics</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>▮ coat   ○ fit to handle   ◆ fit to wrap   ▶ fit to ship   ⚑ due   — from when it may be</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Finishing plan</source>
      <translation>Abschlussplan</translation>
    </message>
    <message>
      <source>← Back to the rack</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Working hours…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>When you work: coats are planned only then</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Save a calendar file…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>For any calendar (iCalendar, RFC 5545)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What to do first today</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Pieces over the days</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Save a calendar file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Calendar files (*.ics)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Show {span}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The plan was saved as {name}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} cannot be written: {reason}. Choose another folder.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Change</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Lay earlier</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Lay later</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Take out</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Read this one</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The command that mends it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Copy</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Copy the command</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Copy the command that mends it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Read {port} instead</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>In 5 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Said again in five minutes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Go on</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Done</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nobody watches the room until studiowatch is opened again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Stop watching?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Stop watching</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Keep watching</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cancel</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Still wet: {titles}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Quiet hours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>In quiet hours a caution makes no sound. What must be acted on sounds once, softly, and then only shows. Everything is shown and kept as by day.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Also wake me for a wet coat in moving air</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Keep quiet hours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>From</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Quiet from</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>To</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Quiet to</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Take it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Pieces</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The rack is empty</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No piece on the rack yet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Type a reading</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Take the reading</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Temperature</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Unit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Relative humidity, %</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Air at the pieces</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Read at</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What was recorded</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Take back…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Take back</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Add a coat that was forgotten…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Correct…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Corrections</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>How often each chance came true</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>told {told} %, came true {came_true} % of {coats} coats</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>chance told, against how often it clouded</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What would have changed it</source>
      <translation>Was es geändert hätte</translation>
    </message>
    <message>
      <source>What to do now</source>
      <translation>Was jetzt zu tun ist</translation>
    </message>
    <message>
      <source>Working it out…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This coat and its room are made up, to show what this cause looks like.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>How often was it right?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No other coat of this kind has a recorded outcome yet: record how coats came out, clear ones too.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>← Back to my coat</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Beside my other coats</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This coat alone</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Why did it cloud?</source>
      <translation>Warum wurde sie trüb?</translation>
    </message>
    <message>
      <source>The review</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Made up: {title}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Save as PDF…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Save as CSV…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Likely causes, strongest first</source>
      <translation>Wahrscheinliche Ursachen, die stärkste zuerst</translation>
    </message>
    <message>
      <source>What the room did under this coat</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>this coat</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>came out clear</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>clouded (dashed)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>laid</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The room now</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Why these limits? {basis}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Heard</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Remind me in 10 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Starting</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The watch has not spoken yet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No more sound for this warning</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Quiet for ten minutes, then again if it still stands</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Why this limit? {basis}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Type what the product's own sheet says. Coats on the rack that were laid by this sheet are dried anew by these figures; a bottle with another recipe gets a sheet of its own.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Kept: the sheet {title}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Edit the sheet: {title}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A sheet of my own, from: {title}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Keep the sheet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It holds matting agent</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What the bottle is called</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Kind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Sheen</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Removable with</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cautions, one a line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{figure}: unit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Look at the marked lines again, or press again to keep them: {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>needed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>not on the sheet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{title}, mine</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Data sheets</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Built in, generic: it describes no product. Make one of your own from it and type your bottle's figures.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Yours, from the folder of sheets beside the records.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Edit…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Make one of my own from it…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Delete…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>yours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Units and language</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>For all that is shown, said and printed. Files and what is kept of the room stay metric, with a point. A reading may be typed in either unit, as “70 F” or “21,5 C”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Another language is spoken from the next start on.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Shown in {degrees} and {speed} from now on.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>As the computer</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Temperature</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Air speed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Sizes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Film</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Volumes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Clock</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Numbers</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Language</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Taken. Another language is spoken when studiowatch starts again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>All &amp;metric</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>All &amp;US</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Why this limit?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Choose when to be reminded</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>In 10 min</source>
      <translation>In 10 min</translation>
    </message>
    <message>
      <source>Later…</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Where the limit of this warning comes from</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Remind me in ten minutes if it still stands</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>How much is done</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What to look at, by line of the file</source>
      <translation type="unfinished" />
    </message>
  </context>
</TS>
