<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>gui::MainWindow</name>
    <message numerus="yes">
        <source>%n problem(s) in the plan</source>
        <translation>
            <numerusform>%n problem in the plan</numerusform>
            <numerusform>%n problems in the plan</numerusform>
        </translation>
    </message>
</context>
</TS>
