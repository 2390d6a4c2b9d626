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
      <translation>Luftdruck</translation>
    </message>
    <message>
      <source>temperature</source>
      <translation>Temperatur</translation>
    </message>
    <message>
      <source>{name} is {value} {unit}; it must be a number from {low} to {high} {unit}</source>
      <translation>{name} ist {value} {unit}; erlaubt ist eine Zahl von {low} bis {high} {unit}</translation>
    </message>
    <message>
      <source>density of dust</source>
      <translation>Dichte des Staubs</translation>
    </message>
    <message>
      <source>diameter of dust</source>
      <translation>Durchmesser des Staubs</translation>
    </message>
  </context>
</TS>
