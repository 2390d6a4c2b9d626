<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>humidity</source>
      <translation>Luftfeuchte</translation>
    </message>
    <message>
      <source>pressure</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>temperature</source>
      <translation>Temperatur</translation>
    </message>
    <message>
      <source>{name} is {value} {unit}; it must be a number from {low} to {high} {unit}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>density of dust</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>diameter of dust</source>
      <translation type="unfinished" />
    </message>
  </context>
</TS>
