<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
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
  </context>
</TS>
