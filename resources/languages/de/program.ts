<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>There is no screen for a window; `studiowatch record` watches without one, `demo --headless` shows how.</source>
      <translation>Für ein Fenster ist kein Bildschirm da; `studiowatch record` wacht ohne eines, `demo --headless` zeigt, wie.</translation>
    </message>
  </context>
</TS>
