<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>studiowatch</name>
    <message>
      <source>Mon</source>
      <translation>Mo</translation>
    </message>
    <message>
      <source>Tue</source>
      <translation>Di</translation>
    </message>
    <message>
      <source>Wed</source>
      <translation>Mi</translation>
    </message>
    <message>
      <source>Thu</source>
      <translation>Do</translation>
    </message>
    <message>
      <source>Fri</source>
      <translation>Fr</translation>
    </message>
    <message>
      <source>Sat</source>
      <translation>Sa</translation>
    </message>
    <message>
      <source>Sun</source>
      <translation>So</translation>
    </message>
    <message>
      <source>Monday</source>
      <translation>Montag</translation>
    </message>
    <message>
      <source>Tuesday</source>
      <translation>Dienstag</translation>
    </message>
    <message>
      <source>Wednesday</source>
      <translation>Mittwoch</translation>
    </message>
    <message>
      <source>Thursday</source>
      <translation>Donnerstag</translation>
    </message>
    <message>
      <source>Friday</source>
      <translation>Freitag</translation>
    </message>
    <message>
      <source>Saturday</source>
      <translation>Samstag</translation>
    </message>
    <message>
      <source>Sunday</source>
      <translation>Sonntag</translation>
    </message>
    <message>
      <source>Jan</source>
      <translation>Jan.</translation>
    </message>
    <message>
      <source>Feb</source>
      <translation>Feb.</translation>
    </message>
    <message>
      <source>Mar</source>
      <translation>März</translation>
    </message>
    <message>
      <source>Apr</source>
      <translation>Apr.</translation>
    </message>
    <message>
      <source>May</source>
      <translation>Mai</translation>
    </message>
    <message>
      <source>Jun</source>
      <translation>Juni</translation>
    </message>
    <message>
      <source>Jul</source>
      <translation>Juli</translation>
    </message>
    <message>
      <source>Aug</source>
      <translation>Aug.</translation>
    </message>
    <message>
      <source>Sep</source>
      <translation>Sept.</translation>
    </message>
    <message>
      <source>Oct</source>
      <translation>Okt.</translation>
    </message>
    <message>
      <source>Nov</source>
      <translation>Nov.</translation>
    </message>
    <message>
      <source>Dec</source>
      <translation>Dez.</translation>
    </message>
    <message>
      <source>{weekday} {day} {month}</source>
      <translation>{weekday} {day}. {month}</translation>
    </message>
    <message>
      <source>{day} {year}</source>
      <translation>{day} {year}</translation>
    </message>
    <message>
      <source>{day} {month}</source>
      <translation>{day}. {month}</translation>
    </message>
    <message>
      <source>{day} {month} {year}</source>
      <translation>{day}. {month} {year}</translation>
    </message>
    <message>
      <source>{clock} am</source>
      <translation>{clock} am</translation>
    </message>
    <message>
      <source>{clock} pm</source>
      <translation>{clock} pm</translation>
    </message>
  </context>
</TS>
