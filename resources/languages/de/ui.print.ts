<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>{title}, page {number} of {count}</source>
      <translation>{title}, Seite {number} von {count}</translation>
    </message>
    <message>
      <source>The photo {path} cannot be used ({reason}); the record is made without it.</source>
      <translation>Das Foto {path} lässt sich nicht verwenden ({reason}); das Protokoll entsteht ohne es.</translation>
    </message>
    <message>
      <source>Likely causes, strongest first</source>
      <translation>Wahrscheinliche Ursachen, die stärkste zuerst</translation>
    </message>
    <message>
      <source>What the room did under this coat</source>
      <translation>Was der Raum bei dieser Schicht tat</translation>
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
      <source>What the records do not show</source>
      <translation>Was die Aufzeichnungen nicht zeigen</translation>
    </message>
  </context>
</TS>
